# SPDX-License-Identifier: LGPL-2.1-or-later
"""A panel built up in a document: solids that fit, what follows what, its bill."""

import csv
import itertools

import FreeCAD
import Part
import pytest

from veneerwb.host import bills, panels, solids, values
from veneerwb.host.objects import add_build_up, add_match, add_stock, parts_of
from veneerwb.host.objects.buildup import take_down

FIRST_ROW = 5
"""Where the headings of a bill stand in its sheet."""

ALL = {
    "CoreThickness": 16.0, "CrossbandAbove": 1.5, "CrossbandBelow": 1.5, "BackerThickness": 0.5,
    "LippingWidth": 8.0, "BorderWidth": 40.0, "LineWidth": 3.0,
}  # fmt: skip
TOPS = {
    "round": (
        {"Ways": 4, "Diameter": 600.0},
        {"BorderKind": "following", "BorderSegments": 8, "Inlay": "disc"},
    ),
    "eight-sided": (
        {"Ways": 8, "Top": "Polygon", "Sides": 8, "AcrossFlats": 600.0},
        {"LippingWhen": "after veneering", "Inlay": "star", "InlayPoints": 5},
    ),
    "rectangle": (
        {"Kind": "Side by side", "Top": "Rectangle", "Length": 700.0, "Width": 500.0},
        {"BorderKind": "straight"},
    ),
    "boat": (
        {"Ways": 4, "Top": "Boat", "Length": 900.0, "Width": 500.0, "Ends": 300.0},
        {"BorderKind": "following", "BorderSegments": 2, "LineSegments": 2},
    ),
}


@pytest.fixture
def match(doc, stock):
    made = add_match(doc, stock, Ways=4, Diameter=600.0)
    doc.recompute()
    return made


@pytest.fixture
def built(doc, match):
    """A build-up with a border of 50 mm and a backer."""
    how = add_build_up(doc, match, BorderWidth=50.0, BorderKind="following", BackerThickness=0.5)
    doc.recompute()
    return how


def area(match):
    return match.Shape.Volume / 0.5


def touched(doc):
    return [obj.Name for obj in doc.Objects if "Touched" in obj.State]


def lies_at(obj, place):
    away = (obj.Placement.inverse() * place).Matrix.A
    return away == pytest.approx(FreeCAD.Matrix().A, abs=1e-9)


def meet(a, b):
    return a.BoundBox.intersect(b.BoundBox)


@pytest.mark.parametrize("top", TOPS)
def test_the_solids_fit_without_gap_or_overlap(doc, stock, top):
    laid, built_of = TOPS[top]
    match = add_match(doc, stock, **laid)
    add_build_up(doc, match, **ALL, **built_of)
    doc.recompute()
    parts = parts_of(match)
    assert (match.Message, parts.Message) == ("", "")
    assert parts.Thickness.Value == pytest.approx(20.0)
    found = [*parts.Shape.Solids, *match.Shape.Solids]
    assert len(parts.Shape.Solids) == len(parts.Names) == len(set(parts.Names))
    assert all(solid.isValid() for solid in found)
    of_core = [part.volume for part in panels.panel_of(match).solid_parts]
    assert [solid.Volume for solid in parts.Shape.Solids] == pytest.approx(of_core, rel=1e-6)
    whole = solids.solid_of(values.finished_top(match).region, 20.0)
    whole.translate(FreeCAD.Vector(0.0, 0.0, -19.5))
    assert sum(solid.Volume for solid in found) == pytest.approx(whole.Volume, rel=1e-6)
    pairs = [pair for pair in itertools.combinations(found, 2) if meet(*pair)]
    assert len(pairs) > len(found)
    assert max(a.common(b).Volume for a, b in pairs) < 1.0
    assert Part.Compound(found).BoundBox.ZMax == pytest.approx(0.5)
    assert Part.Compound(found).BoundBox.ZMin == pytest.approx(-19.5)


def test_one_recompute_brings_a_change_to_the_match_and_to_the_parts(doc, match, built):
    parts, before = parts_of(match), match.Revision
    assert area(match) == pytest.approx(3.141592653589793 * 250.0**2, rel=1e-6)
    built.BorderWidth = 100.0
    doc.recompute()
    assert area(match) == pytest.approx(3.141592653589793 * 200.0**2, rel=1e-6)
    assert match.Revision != before and touched(doc) == []
    border = parts.Shape.Solids[parts.Names.index("border")]
    assert border.Volume == pytest.approx(0.5 * 3.141592653589793 * (300.0**2 - 200.0**2), 1e-6)
    match.Diameter = 700.0
    doc.recompute()
    assert area(match) == pytest.approx(3.141592653589793 * 250.0**2, rel=1e-6)
    assert parts.Shape.BoundBox.XLength == pytest.approx(700.0) and touched(doc) == []


def test_an_expression_may_set_a_width(doc, match, built):
    match.setExpression("Oversize", "1 mm")
    built.setExpression("BorderWidth", f"{match.Bundle.Name}.Width / 9")
    doc.recompute()
    assert area(match) == pytest.approx(3.141592653589793 * 200.0**2, rel=1e-6)


def test_what_does_not_fit_is_refused_and_all_stays(doc, match, built):
    parts = parts_of(match)
    before = (match.Shape.Volume, match.Revision, parts.Shape.Volume, parts.Names)
    built.BorderWidth = 400.0
    doc.recompute()
    assert "leave nothing of this top" in match.Message and parts.Message == match.Message
    assert (match.Shape.Volume, match.Revision, parts.Shape.Volume, parts.Names) == before
    built.BorderWidth = 50.0
    doc.recompute()
    assert (match.Message, parts.Message) == ("", "")


@pytest.mark.parametrize(("name", "value", "says"), [
    ("CoreThickness", 0.0, "thickness of the core"),
    ("CoreMoves", "a lot", "cannot be read"),
    ("BorderSegments", 0, "segments of the border"),
    ("MadeHumidity", 100, "humidity"),
])  # fmt: skip
def test_what_no_top_could_have_is_said_by_the_build_up(doc, built, name, value, says):
    built.ClimateKnown = True
    setattr(built, name, value)
    doc.recompute()
    assert says in built.Message and built.Message.count(".") >= 1


def test_parts_come_and_go(doc, match, built):
    parts = parts_of(match)
    assert parts.Names == ["backer", "core", "border"]
    built.BorderWidth, built.Inlay, built.LippingWidth = 0.0, "star", 10.0
    doc.recompute()
    assert parts.Names == ["backer", "core", "lipping", "inlay"]


def test_drawn_apart_the_parts_move_up_and_down_alone(doc, match, built):
    parts = parts_of(match)
    before, revision = parts.Shape.Solids, match.Revision
    parts.Explode = 30.0
    doc.recompute()
    lifts = [b.BoundBox.ZMin - a.BoundBox.ZMin for a, b in zip(before, parts.Shape.Solids)]
    assert dict(zip(parts.Names, lifts)) == pytest.approx(
        {"backer": -60.0, "core": -30.0, "border": 30.0}
    )
    assert match.Revision == revision and match.Shape.BoundBox.ZMin == pytest.approx(0.0)
    parts.Explode = 0.0
    doc.recompute()
    assert parts.Shape.BoundBox.ZMin == pytest.approx(-18.5)


def test_the_parts_lie_where_the_match_lies(doc, match, built):
    place = FreeCAD.Placement(FreeCAD.Vector(10, 20, 700), FreeCAD.Rotation(0, 30, 90))
    match.Placement = place
    doc.recompute()
    assert lies_at(parts_of(match), place)
    built.CoreThickness = 22.0
    doc.recompute()
    assert lies_at(parts_of(match), place)


def test_a_backer_may_come_from_another_stock(doc, match, built):
    built.BackerFrom = add_stock(doc, 700.0, 700.0, 2, 0.9)
    doc.recompute()
    parts = parts_of(match)
    assert parts.Thickness.Value == pytest.approx(0.5 + 18.0 + 0.9)
    assert any("unlike the show veneer" in line for line in parts.Findings)


def test_findings_follow_the_build_up(doc, match, built):
    parts = parts_of(match)
    assert not any("no backer" in line for line in parts.Findings)
    built.BackerThickness, built.CoreKind = 0.0, "solid wood"
    built.CoreMaterial, built.ClimateKnown = "White oak", True
    built.MadeHumidity, built.StandsHumidity = 50, 35
    doc.recompute()
    assert "no backer" in parts.Findings[0]
    (moves,) = [line for line in parts.Findings if "shrinks by" in line]
    assert "600 mm across its grain" in moves
    assert [str(one) for one in panels.found_on(parts)] == parts.Findings
    built.CoreMoves = "0,0010 0,0020"
    doc.recompute()
    assert moves not in parts.Findings


# --- the bill ----------------------------------------------------------------------------------


def rows_of(sheet, first=FIRST_ROW + 1):
    found = []
    while sheet.getContents(f"A{first + len(found)}"):
        row = first + len(found)
        found.append([str(sheet.get(f"{c}{row}")) for c in "AD"])
    return found


def test_the_bill_stands_in_a_sheet_and_is_renewed_in_place(doc, match, built):
    built.BorderSegments = 4
    doc.recompute()
    parts = parts_of(match)
    sheet = bills.fill_sheet(parts)
    sheet.set("L6", "12.50")
    doc.recompute()
    assert [row[0] for row in rows_of(sheet)] == ["backer", "core", "field", "border"]
    assert [row[1] for row in rows_of(sheet)] == ["1", "1", "1", "4"]
    area_m2 = 3.141592653589793 * 0.3**2
    assert abs(sheet.H6 - area_m2) < 1e-6 and sheet.get("H5") == "area m2"
    assert abs(sheet.J7 - 18.0 * area_m2) < 1e-5 and sheet.get("J5") == "volume l"
    built.BorderWidth = 0.0
    doc.recompute()
    assert any("older than this panel" in line for line in parts.Findings)
    assert bills.fill_sheet(parts) == sheet
    doc.recompute()
    assert [row[0] for row in rows_of(sheet)] == ["backer", "core", "field"]
    assert not any("older than this panel" in line for line in parts.Findings)
    assert sheet.L6 == 12.5 and touched(doc) == []


def test_no_text_becomes_a_formula(doc, match, built, tmp_path):
    built.CoreMaterial, built.BackerMaterial = "=1+1", "12 mm"
    doc.recompute()
    sheet = bills.fill_sheet(parts_of(match))
    doc.recompute()
    assert sheet.get("C7").endswith("=1+1") and sheet.get("C6") == "12 mm"
    path = tmp_path / "bill.csv"
    bills.write_file(parts_of(match), path)
    lines = list(csv.reader(path.read_text(encoding="utf-8").splitlines()))
    assert lines[6][2] == "'=1+1" and lines[1][1].startswith("Match: round, 600 mm")


def test_there_is_no_bill_of_a_panel_that_is_refused(doc, match, built, tmp_path):
    built.BorderWidth = 400.0
    doc.recompute()
    path = tmp_path / "bill.csv"
    path.write_text("old")
    for action in (
        lambda: bills.fill_sheet(parts_of(match)),
        lambda: bills.write_file(parts_of(match), path),
    ):
        with pytest.raises(Exception, match="leave nothing of this top"):
            action()
    assert path.read_text() == "old" and bills.sheet_of(parts_of(match)) is None


# --- the document ------------------------------------------------------------------------------


def test_a_saved_panel_opens_as_it_was(doc, match, built, tmp_path):
    built.Inlay = "star"
    doc.recompute()
    bills.fill_sheet(parts_of(match))
    doc.recompute()
    names, volume = list(parts_of(match).Names), parts_of(match).Shape.Volume
    findings = list(parts_of(match).Findings)
    path = str(tmp_path / "panel.FCStd")
    doc.saveAs(path)
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(path)
    found = again.Match
    parts = parts_of(found)
    assert (parts.Names, parts.Findings) == (names, findings)
    assert parts.Shape.Volume == pytest.approx(volume) and touched(again) == []
    assert bills.sheet_of(parts).Label == "Bill of Match"
    found.BuildUp.BorderWidth = 70.0
    again.recompute()
    assert area(found) == pytest.approx(3.141592653589793 * 230.0**2 - hole(found), rel=1e-6)


def hole(match):
    return sum(part.area for part in panels.panel_of(match).parts if part.item == "inlay")


def test_a_build_up_serves_two_matches(doc, stock, match, built):
    other = add_match(doc, stock, Ways=6, Diameter=400.0, BuildUp=built)
    doc.recompute()
    assert area(other) == pytest.approx(3.141592653589793 * 150.0**2, rel=1e-6)
    name = built.Name
    take_down(match)
    doc.recompute()
    assert doc.getObject(name) is not None and parts_of(match) is None
    take_down(other)
    doc.recompute()
    assert doc.getObject(name) is None
    assert area(other) == pytest.approx(3.141592653589793 * 200.0**2, rel=1e-6)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a user may ask of a match in a document that cannot be: each is told in one sentence with
what does work, the last good state stays, and what is told to work works."""

import re

import FreeCAD
import Part
import pytest
from FreeCAD import Rotation, Vector

from veneerwb.host import bills
from veneerwb.host.objects import add_build_up, add_match, add_run, add_stock, parts_of

UP = Vector(0.0, 0.0, 1.0)


def ring(x, y, radius):
    return Part.Circle(Vector(x, y, 0.0), UP, radius)


def sketch(doc, *parts):
    made = doc.addObject("Sketcher::SketchObject", "Sketch")
    for part in parts:
        made.addGeometry(part)
    return made


def told(match, before):
    """The one sentence with which the last change was refused."""
    text = match.Message
    assert text[0].isupper() or text[0].isdigit()
    assert text.endswith(".") and text.count(". ") == 0 and "\n" not in text
    assert "Error" not in text and "{" not in text and len(text) < 200
    assert (match.Revision, match.Shape.Volume) == before
    return text


def state(match):
    return match.Revision, match.Shape.Volume


@pytest.fixture
def match(doc, stock):
    made = add_match(doc, stock, Kind="Side by side", Top="Square", Length=800.0, Count=4)
    doc.recompute()
    assert made.Message == ""
    return made


COUNTS = {
    "joint on the centre": ({"Face": "centre balance", "Count": 5}, "Count", r"take (4) or 6"),
    "mirrored at the centre": ({"Face": "slip-centre-book", "Turn": "slip", "Count": 3}, "Count",
                               r"take (4)"),
    "rows": ({"Kind": "End match", "Count": 7}, "Count", r"take (6) or 8"),
    "too many leaves": ({"Count": 70}, "Count", r"take (\d+) leaves or fewer"),
    "slivers": ({"Top": "Round", "Diameter": 100.0, "Count": 12}, "Count", r"take (\d+) or fewer"),
    "rows that are slivers": ({"Kind": "End match", "EndKind": "continuous", "Count": 0,
                               "StripWidth": 400.0, "Top": "Rectangle", "Length": 300.0,
                               "Width": 50.0, "Rows": 6}, "Rows", r"take (\d+) or fewer"),
    "a last strip that is a sliver": ({"Face": "running", "Count": 0, "StripWidth": 399.0},
                                      "StripWidth", r"strips of ([\d.]+) mm"),
    "strips of a herringbone": ({"Kind": "Herringbone", "StripWidth": 12.0}, "StripWidth",
                                r"take strips of (\d+) mm"),
    "odd book ring": ({"Kind": "Radial", "Ways": 7}, "Ways", r"take (6) or 8"),
    "strips of a wedge": ({"Kind": "Radial", "Ways": 4, "Strips": 12, "Top": "Round",
                           "Diameter": 90.0}, "Strips", r"take at most (\d+)"),
    "a disc": ({"Kind": "Radial", "DiscDiameter": 900.0}, "DiscDiameter", r"has ([\d.]+) mm"),
    "an inner ring": ({"Kind": "Two rings", "InnerDiameter": 900.0}, "InnerDiameter",
                      r"it ([\d.]+) mm or less"),
}  # fmt: skip


@pytest.mark.parametrize("name", COUNTS)
def test_the_nearest_that_works_is_told_and_works(doc, match, name):
    asked, which, pattern = COUNTS[name]
    before = state(match)
    for prop, value in asked.items():
        setattr(match, prop, value)
    doc.recompute()
    found = re.search(pattern, told(match, before))
    assert found, match.Message
    unit = " mm" if hasattr(getattr(match, which), "Value") else ""
    value = found[1] + unit if unit else int(found[1])
    setattr(match, which, value)
    doc.recompute()
    assert match.Message == "" and match.Shape.isValid()


def test_no_leaves_and_no_bundle_are_told(doc, match):
    before = state(match)
    for change, word in (
        (lambda: setattr(match.Bundle, "Leaves", 0), "leaves"),
        (lambda: setattr(match, "Bundle", None), "no bundle"),
    ):
        change()
        doc.recompute()
        assert word in told(match, before)


def test_an_outline_smaller_than_its_inlay_is_told_the_largest_inlay(doc, stock):
    outline = sketch(doc, ring(0, 0, 100))
    match = add_match(doc, stock, Ways=8, Top="Outline", OutlineOf=outline)
    how = add_build_up(doc, match, Inlay="disc", InlayDiameter=120.0)
    doc.recompute()
    parts, before = parts_of(match), state(match)
    volume = parts.Shape.Volume
    how.InlayDiameter = 300.0
    doc.recompute()
    most = float(re.search(r"less than ([\d.]+) mm", told(match, before))[1])
    assert 199.0 < most <= 200.0 and parts.Shape.Volume == volume
    how.InlayDiameter = f"{most - 0.1} mm"
    doc.recompute()
    assert (match.Message, parts.Message) == ("", "")


def test_a_border_wider_than_the_top_is_told_the_widest(doc, stock):
    match = add_match(doc, stock, Ways=8, Diameter=600.0)
    how = add_build_up(doc, match, BorderKind="following", BorderWidth=50.0)
    doc.recompute()
    before = state(match)
    how.BorderWidth = 400.0
    doc.recompute()
    most = float(re.findall(r"([\d.]+) mm", told(match, before))[-1])
    how.BorderWidth = f"{most} mm"
    doc.recompute()
    assert match.Message == "" and 250.0 < most <= 300.0


def test_an_island_in_an_opening_is_told(doc, match):
    before = state(match)
    match.OutlineOf = sketch(doc, ring(0, 0, 400), ring(0, 0, 200), ring(0, 0, 50))
    match.Top = "Outline"
    doc.recompute()
    assert "within an opening" in told(match, before)


def test_a_top_that_rests_on_its_own_panel_is_taken_back_and_told(doc, match):
    """However far it rests on it: the host orders nothing any more in a document with a circle."""
    add_build_up(doc, match)
    outline = sketch(doc, ring(0, 0, 300))
    match.OutlineOf, match.Top = outline, "Outline"
    doc.recompute()
    before = state(match)
    parts = parts_of(match)
    around = doc.addObject("Part::Compound", "Around")
    around.Links = [parts]
    doc.recompute()
    for source in ((parts, ["Face1"]), parts, (around, ["Face1"]), match):
        match.OutlineOf = source
        doc.recompute()
        assert "cannot follow itself" in told(match, before)
        assert match.OutlineOf[0] == outline
        assert [one.Name for one in doc.Objects if "Touched" in one.State] == []
        doc.recompute()
        match.touch()
        doc.recompute()
        assert (match.Message, parts.Message) == ("", "")


def test_undo_of_a_refused_circle_leaves_the_outline(doc, match):
    add_build_up(doc, match)
    outline = sketch(doc, ring(0, 0, 300))
    match.OutlineOf, match.Top = outline, "Outline"
    doc.recompute()
    before = state(match)
    doc.openTransaction("Outline")
    match.OutlineOf = (parts_of(match), ["Face1"])
    doc.recompute()
    doc.commitTransaction()
    doc.undo()
    doc.recompute()
    assert match.OutlineOf[0] == outline and state(match) == before and match.Message == ""


def test_a_match_copied_without_its_bundle_says_that_it_has_none(doc, stock, match):
    add_build_up(doc, match)
    run = add_run(doc, stock)
    doc.recompute()
    for one, word in ((match, "no bundle"), (parts_of(match), "no match"), (run, "no faces")):
        copy = FreeCAD.newDocument("Other").copyObject(one, False)
        assert word in copy.Message and copy.Message.endswith(".")
    again = doc.copyObject(match, False)
    assert (again.Bundle, again.Message) == (stock, "")


def test_a_bill_that_is_deleted_is_no_longer_called_old(doc, match):
    how = add_build_up(doc, match, CoreThickness=18.0)
    doc.recompute()
    parts = parts_of(match)
    for _ in range(2):
        sheet = bills.fill_sheet(parts)
        how.CoreThickness = how.CoreThickness.Value + 1.0
        doc.recompute()
        assert any("older than this panel" in line for line in parts.Findings)
        doc.removeObject(sheet.Name)
        doc.recompute()
        assert not any("older than this panel" in line for line in parts.Findings)
    doc.removeObject(bills.fill_sheet(parts).Name)
    doc.removeObject(parts.Name)


def test_a_door_that_is_out_of_the_plane_by_less_than_counts_is_laid(doc):
    """It bulges by up to 0.01 mm, or is tilted by as little."""
    leaves = add_stock(doc, 300.0, 900.0, 40, 0.6)
    doors = []
    for k in range(2):
        door = doc.addObject("Part::Box", "Door")
        door.Length, door.Width, door.Height = 400.0, 18.0, 600.0
        door.Placement.Base = Vector(403.0 * k, 0.0, 0.0)
        doors.append(door)
    doors[1].Placement.Rotation = Rotation(Vector(1.0, 0.0, 0.0), 0.0008)  # 8 um at the top
    doc.recompute()
    run = add_run(doc, leaves, [(door, "Face3") for door in doors], Count=2)
    doc.recompute()
    assert run.Message == "" and len(run.Shape.Solids) == 4
    corners = [Vector(*at) for at in ((0, 0, 0), (500, 0, 0), (500, 400, 0.006), (0, 400, 0))]
    wire = doc.addObject("Part::Feature", "Wire")
    wire.Shape = Part.makePolygon([*corners, corners[0]])
    match = add_match(doc, leaves, Kind="Side by side", Top="Outline", OutlineOf=wire, Count=4)
    doc.recompute()
    assert match.Message == ""

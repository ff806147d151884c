# SPDX-License-Identifier: LGPL-2.1-or-later
"""A match in a document: driven, refused, undone, copied, attached."""

import math

import FreeCAD
import pytest

from veneerwb.core import VeneerError
from veneerwb.host import compat
from veneerwb.host.objects import add_bundle, add_match, add_stock, core_bundle, layout

OUTPUTS = ("Findings", "Revision", "LeafOrder", "TurnedPositions", "ChangedPieces")


def state(match):
    """All that a refused change must leave as it was."""
    volumes = [solid.Volume for solid in match.Shape.Solids]
    return volumes, {name: list(getattr(match, name)) for name in OUTPUTS}


@pytest.fixture
def said(monkeypatch):
    lines = []
    monkeypatch.setattr(compat, "say", lines.append)
    return lines


@pytest.fixture
def bundle(doc, sawn):
    return add_bundle(doc, sawn)


@pytest.fixture
def match(doc, bundle):
    made = add_match(doc, bundle, Ways=4, Diameter=300.0)
    doc.recompute()
    return made


def test_a_match_shows_what_was_found(match):
    assert match.Message == ""
    assert match.LeafOrder == [1, 2, 3, 4]
    assert match.TurnedPositions == [1, 3]
    assert match.Revision == layout(match).revision
    assert all(line.split(":")[0] in ("stop", "warn", "note") for line in match.Findings)
    assert len(match.Findings) > 0


def test_only_the_pieces_that_a_change_altered_are_named(doc, match):
    assert match.ChangedPieces == [1, 2, 3, 4]
    match.AutoPlacement, match.TipX, match.TipY = False, 100.0, 100.0
    doc.recompute()
    match.Order = "1, 2, 5, 4"
    doc.recompute()
    assert match.ChangedPieces == [3]
    assert match.LeafOrder == [1, 2, 5, 4]


def test_a_change_of_leaves_alone_keeps_the_shape(doc, match):
    before = match.Shape
    match.First = 2
    doc.recompute()
    assert match.LeafOrder == [2, 3, 4, 5]
    assert match.Shape.isSame(before)


BAD = [
    ("Ways", 0),
    ("Ways", 1),
    ("Ways", 2),
    ("Ways", 5),
    ("Ways", -8),
    ("Ways", 65),
    ("Ways", 10**6),
    ("Ways", 8),
    ("Diameter", 0.0),
    ("Diameter", 1e300),
    ("Bundle", None),
    ("Order", "a, b"),
    ("Order", "1, 1, 2, 3"),
    ("Order", "1, 2, 3, 99"),
    ("Order", "99999999999999999999"),
    ("First", 0),
    ("First", 90),
    ("Turned", "all"),
    ("Spares", -1),
    ("Oversize", 1e9),
    ("Margin", math.nan),
]


@pytest.mark.parametrize(("name", "value"), BAD, ids=[f"{name} {value}" for name, value in BAD])
def test_a_bad_value_is_refused_with_one_sentence(doc, match, said, name, value):
    before = state(match)
    setattr(match, name, value)
    doc.recompute()
    if name == "Margin" and not math.isnan(match.Margin.Value):
        pytest.skip("this host does not take it in")
    assert said == [f"Match: {match.Message}"]
    assert (
        match.Message.endswith(".") and "\n" not in match.Message and "Error" not in match.Message
    )
    assert len(match.Message) < 300
    assert state(match) == before


def test_a_match_works_again_once_the_value_is_good(doc, match):
    match.Ways = 5
    doc.recompute()
    assert "even" in match.Message
    match.Ways = 6
    doc.recompute()
    assert match.Message == ""
    assert len(match.Shape.Solids) == 6


@pytest.mark.parametrize(("name", "value"), [("Thickness", 0.0), ("Leaves", [])])
def test_a_bad_bundle_is_refused_and_the_match_stays(doc, bundle, match, said, name, value):
    before = state(match)
    setattr(bundle, name, value)
    doc.recompute()
    assert bundle.Message.endswith(".")
    assert match.Message.endswith(".")
    assert len(said) == 2
    assert state(match) == before


@pytest.mark.parametrize(
    ("name", "value"),
    [("Thickness", 0.0), ("Width", 0.0), ("Leaves", 0), ("Leaves", 10**6), ("Length", 1e300)],
)
def test_a_bad_stock_is_refused_with_a_sentence(doc, stock, said, name, value):
    match = add_match(doc, stock)
    doc.recompute()
    before = state(match)
    setattr(stock, name, value)
    doc.recompute()
    assert stock.Message.endswith(".") and len(stock.Message) < 300
    assert state(match) == before


def test_unforeseen_errors_reach_the_user_as_one_sentence_too(doc, match, monkeypatch, said):
    from veneerwb.host import solids

    def fails(laid):
        raise RuntimeError("the kernel\ngave up")

    monkeypatch.setattr(solids, "compound", fails)
    before = state(match)
    match.Diameter = 280.0
    doc.recompute()
    assert said == [f"Match: {match.Message}"]
    assert "the kernel" in match.Message
    assert state(match) == before


def test_adding_what_cannot_be_leaves_the_document_as_it_was(doc, stock):
    count = len(doc.Objects)
    with pytest.raises(AttributeError):
        add_match(doc, stock, Wais=8)
    with pytest.raises(VeneerError):
        add_stock(doc, 0.0, 1000.0, 5)
    assert len(doc.Objects) == count


# --- driven by cells and expressions -------------------------------------------------------------


def test_a_cell_drives_the_ways_and_past_the_limit_it_is_refused(doc, stock):
    match = add_match(doc, stock, Ways=8)
    cells = doc.addObject("Spreadsheet::Sheet", "Table")
    cells.set("A1", "12")
    cells.setAlias("A1", "ways")
    match.setExpression("Ways", "Table.ways")
    doc.recompute()
    assert len(match.Shape.Solids) == 12
    before = state(match)
    cells.set("A1", "100")
    doc.recompute()
    assert match.Ways == 100
    assert "64" in match.Message
    assert state(match) == before
    cells.set("A1", "16")
    doc.recompute()
    assert match.Message == ""
    assert len(match.Shape.Solids) == 16


def test_expressions_drive_sizes_and_choices(doc, stock):
    match = add_match(doc, stock, Ways=8)
    cells = doc.addObject("Spreadsheet::Sheet", "Table")
    cells.set("A1", "=500 mm")
    cells.set("A2", "slip")
    match.setExpression("Diameter", "Table.A1 * 2")
    match.setExpression("Turn", "Table.A2")
    doc.recompute()
    assert match.Turn == "slip"
    assert match.TurnedPositions == []
    assert match.Shape.BoundBox.XMax == pytest.approx(500.0, abs=1e-6)


# --- undo, copy, delete --------------------------------------------------------------------------


def test_undo_and_redo_restore_value_and_shape(doc, match):
    before = state(match)
    doc.openTransaction("Ways")
    match.Ways = 6
    doc.recompute()
    doc.commitTransaction()
    after = state(match)
    doc.undo()
    assert match.Ways == 4
    assert state(match) == before
    doc.recompute()
    assert (match.Message, state(match)[0]) == ("", before[0])
    doc.redo()
    assert match.Ways == 6
    assert state(match)[0] == after[0]


def test_undo_takes_a_new_bundle_out_and_redo_brings_it_back(doc, sawn):
    doc.openTransaction("Bundle")
    bundle = add_bundle(doc, sawn)
    add_match(doc, bundle, Ways=4, Diameter=300.0)
    doc.recompute()
    doc.commitTransaction()
    count = len(doc.Objects)
    doc.undo()
    assert len(doc.Objects) == 0
    doc.redo()
    assert len(doc.Objects) == count
    match = doc.getObject("Match")
    match.touch()
    doc.recompute()
    assert (match.Message, len(match.Shape.Solids)) == ("", 4)
    face = core_bundle(match.Bundle).leaves[0].photo
    assert face.shape == sawn.leaves[0].photo.shape


@pytest.mark.parametrize("with_all", [False, True])
def test_a_copied_match_is_a_match_of_its_own(doc, match, with_all):
    copy = doc.copyObject(match, with_all)
    doc.recompute()
    assert copy.Proxy is not None and type(copy.Proxy) is type(match.Proxy)
    if not with_all and copy.Bundle is None:  # links are not followed
        copy.Bundle = match.Bundle
    copy.Ways = 6
    doc.recompute()
    assert copy.Message == ""
    assert (len(copy.Shape.Solids), len(match.Shape.Solids)) == (6, 4)


def test_a_match_pasted_into_another_document_brings_its_photographs(doc, match, tmp_path):
    """Copy and paste in the window export the objects to a file and import them."""
    doc.saveAs(str(tmp_path / "source.FCStd"))
    other = FreeCAD.newDocument("Other")
    other.mergeProject(doc.FileName)
    FreeCAD.closeDocument(doc.Name)
    pasted = next(obj for obj in other.Objects if obj.Name.startswith("Match"))
    pasted.Diameter = 280.0
    other.recompute()
    assert pasted.Message == ""
    assert core_bundle(pasted.Bundle).leaf(2).photo.any()


def test_a_leaf_in_use_that_goes_is_named_and_the_shape_stays(doc, bundle, match, said):
    before = state(match)
    doc.removeObject(bundle.Leaves[1].Name)
    doc.recompute()
    assert match.Message.startswith("Leaf 2 is missing")
    assert state(match) == before
    match.Order = "1, 3, 4, 5"
    doc.recompute()
    assert (match.Message, match.LeafOrder) == ("", [1, 3, 4, 5])


def test_a_leaf_brought_back_by_undo_is_there_again(doc, bundle, match):
    doc.openTransaction("Delete")
    doc.removeObject(bundle.Leaves[1].Name)
    doc.recompute()
    doc.commitTransaction()
    assert match.Message
    doc.undo()
    match.touch()
    doc.recompute()
    assert (match.Message, match.LeafOrder) == ("", [1, 2, 3, 4])


def test_a_leaf_not_in_use_may_go(doc, bundle, match):
    before = state(match)
    doc.removeObject(bundle.Leaves[5].Name)
    doc.recompute()
    assert match.Message == ""
    assert state(match)[0] == before[0]


def test_without_its_bundle_a_match_keeps_its_shape(doc, bundle, match):
    before = state(match)
    doc.removeObject(bundle.Name)
    doc.recompute()
    assert "no bundle" in match.Message
    assert state(match) == before


# --- places --------------------------------------------------------------------------------------


def test_a_match_follows_the_face_that_it_is_attached_to(doc, stock):
    box = doc.addObject("Part::Box", "Table")
    box.Length, box.Width, box.Height = 1400.0, 1400.0, 18.0
    match = add_match(doc, stock, Ways=8)
    compat.attach(match, box, ["Face6"])
    doc.recompute()
    assert match.Shape.BoundBox.ZMin == pytest.approx(18.0, abs=1e-6)
    assert match.Shape.BoundBox.ZMax == pytest.approx(18.5, abs=1e-6)
    box.Placement.Base = FreeCAD.Vector(0.0, 0.0, 700.0)
    doc.recompute()
    assert match.Shape.BoundBox.ZMin == pytest.approx(718.0, abs=1e-6)
    match.Ways = 12
    doc.recompute()
    assert len(match.Shape.Solids) == 12
    assert match.Shape.BoundBox.ZMin == pytest.approx(718.0, abs=1e-6)


def test_a_match_that_was_moved_by_hand_stays_there(doc, match):
    match.Placement.Base = FreeCAD.Vector(500.0, 0.0, 0.0)
    match.Ways = 6
    doc.recompute()
    assert match.Shape.BoundBox.Center.x == pytest.approx(500.0, abs=1e-6)


def test_several_panels_come_from_one_bundle(doc, bundle, match):
    other = add_match(doc, bundle, Ways=6, Top="Polygon", Sides=6, AcrossFlats=200.0, Turn="slip")
    doc.recompute()
    assert (match.Message, other.Message) == ("", "")
    assert (len(match.Shape.Solids), len(other.Shape.Solids)) == (4, 6)
    bundle.Thickness = 1.0
    doc.recompute()
    assert [m.Shape.BoundBox.ZLength for m in (match, other)] == pytest.approx([1.0, 1.0], abs=1e-6)


def test_the_place_on_the_bundle_can_be_set(doc, match):
    match.AutoPlacement = False
    match.TipX, match.TipY, match.Axis = 90.0, 30.0, 80.0
    doc.recompute()
    placement = layout(match).recipe.placement
    assert (placement.x, placement.y, placement.angle) == (90.0, 30.0, 80.0)
    assert match.ChangedPieces == [1, 2, 3, 4]


def test_margin_spares_and_template_are_checked(doc, match):
    match.Margin, match.Spares, match.WedgeAngle = 500.0, 20, 89.0
    doc.recompute()
    stops = [line for line in match.Findings if line.startswith("stop")]
    assert any("89" in line for line in stops)
    assert len(stops) >= 2

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a match of any kind: kinds and tops are changed in its own boxes."""

import math

import FreeCAD
import FreeCADGui
import Part
import pytest
from PySide import QtCore, QtGui

from veneerwb.core.matches.kinds import MATCHES
from veneerwb.gui import match_drawings
from veneerwb.host import kinds
from veneerwb.host.objects import add_match, add_stock, layout
from veneerwb.host.objects.base import kind_of

IMPERIAL, STANDARD = 3, 0


@pytest.fixture
def stock(fresh):
    """Sixteen leaves that are large enough for all tops here."""
    made = add_stock(fresh, 420.0, 900.0, 16)
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    return made


@pytest.fixture
def old(fresh, stock):
    """A radial match, cut where somebody chose."""
    made = add_match(
        fresh, stock, Top="Rectangle", Length=600.0, Width=500.0, Ways=6, Turn="slip",
        Order="1, 3, 2, 5, 4, 6", AutoPlacement=False, TipX=200.0, TipY=150.0, Axis=80.0,
    )  # fmt: skip
    fresh.recompute()
    fresh.clearUndos()
    return made


@pytest.fixture
def opened(user, old):
    """The panel open on that match; what a test leaves open is cancelled."""
    user.double_click(old, "Kind")
    yield old
    if FreeCADGui.Control.activeDialog():
        user.cancel()
        user.wait_closed()


def settled(user, match, check, what):
    """Waits until the match is laid so, without a word against it."""
    user.wait_for(lambda: check() and not match.Message, what)


def the_match(doc):
    (found,) = [one for one in doc.Objects if kind_of(one) == "Match"]
    return found


def sketched(doc, with_hole=True):
    """A sketch of an oblong, with a round opening."""
    made = doc.addObject("Sketcher::SketchObject", "Sketch")
    corners = [FreeCAD.Vector(*at, 0.0) for at in ((0, 0), (600, 0), (600, 400), (0, 400))]
    for a, b in zip(corners, corners[1:] + corners[:1]):
        made.addGeometry(Part.LineSegment(a, b), False)
    if with_hole:
        up = FreeCAD.Vector(0.0, 0.0, 1.0)
        made.addGeometry(Part.Circle(FreeCAD.Vector(450.0, 100.0, 0.0), up, 40.0), False)
    doc.recompute()
    doc.clearUndos()
    return made


# --- kinds --------------------------------------------------------------------------------------


def test_every_kind_is_laid_in_place_and_one_undo_brings_the_first_back(user, fresh, opened):
    before = {name: getattr(opened, name) for name in ("Bundle", "Top", "TipX", "TipY", "Axis")}
    seen = {}
    for kind in (*kinds.KINDS, "Radial"):
        user.fill("Kind", kind)
        settled(user, opened, lambda kind=kind: opened.Kind == kind, f"{kind} is laid")
        seen[kind] = len(opened.Shape.Solids)
        assert {name: getattr(opened, name) for name in before} == before
        assert sum(solid.Volume for solid in opened.Shape.Solids) == pytest.approx(
            600.0 * 500.0 * opened.Bundle.Thickness.Value
        )
    assert seen["Box"] == seen["Centre and butt"] == 4 and seen["Radial"] == 6
    assert seen["Two rings"] == 6 + 8 and opened.Order == "sequence"
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1
    fresh.undo()
    assert (opened.Kind, opened.Order, opened.Turn) == ("Radial", "1, 3, 2, 5, 4, 6", "slip")


def test_cancel_takes_back_kind_top_and_all(user, fresh, opened):
    before = user.state(fresh)
    user.fill("Kind", "Side by side")
    user.fill("Turn", "random")
    user.fill("Top", "Oval")
    settled(user, opened, lambda: (opened.Turn, opened.Top) == ("random", "Oval"), "it is laid")
    assert opened.LeafOrder != sorted(opened.LeafOrder)
    user.cancel()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0
    assert len(opened.Shape.Solids) == 6


def test_only_what_the_kind_and_the_top_use_is_asked(user, opened, panel):
    boxes = {name for table in (kinds.KINDS, kinds.TOPS) for row in table.values()
             for name in row} & set(panel().names)  # fmt: skip
    sometimes = {"Seed", "Rows"}  # only out of order, only row upon row
    for kind, top in (("Side by side", "Square"), ("Herringbone", "Boat"), ("End match", "Round"),
                      ("Two rings", "Polygon"), ("Box", "Outline")):  # fmt: skip
        user.fill("Kind", kind)
        user.fill("Top", top)
        seen = {name for name in boxes if user.visible(QtGui.QWidget, name)}
        wanted = boxes & {*kinds.KINDS[kind], *kinds.TOPS[top]}
        assert seen == wanted - sometimes, (kind, top)
        for name in boxes:
            assert len(user.visible(QtGui.QLabel, f"{name}_label")) == (
                name in seen and name != "OnOutline"
            ), name
        assert bool(user.visible(QtGui.QPushButton, "take_outline")) == (top == "Outline")
    user.fill("Kind", "Side by side")
    user.fill("Turn", "random")
    assert user.visible(QtGui.QSpinBox, "Seed")
    user.fill("Kind", "End match")
    user.fill("EndKind", "continuous")
    assert user.visible(QtGui.QSpinBox, "Rows") and not user.visible(QtGui.QSpinBox, "Seed")


def test_a_kind_offers_only_the_turns_that_it_can_have(user, opened):
    box = user.box("Turn")
    assert [box.itemData(row) for row in range(box.count())] == ["book", "slip"]
    user.fill("Kind", "Side by side")
    assert [box.itemData(row) for row in range(box.count())] == list(kinds.turns("Side by side"))
    assert box.currentData() == "slip"
    user.fill("Turn", "reverse slip")
    settled(user, opened, lambda: opened.Turn == "reverse slip", "it is laid")
    assert not any(piece.turned for piece in layout(opened).pieces)
    user.fill("Kind", "Diamond")
    settled(user, opened, lambda: opened.Kind == "Diamond", "the kind is taken")
    assert box.currentData() == opened.Turn == "book"


def test_how_many_leaves_are_to_be_left_over_is_asked(user, opened):
    user.fill("Spares", "11")
    user.wait_for(lambda: opened.Spares == 11, "it is read")
    assert any("spare" in line for line in user.lines())


def test_a_wrong_count_is_said_and_a_right_one_is_laid(user, opened):
    user.fill("Kind", "Side by side")
    user.fill("Face", "slip-centre-book")
    user.fill("Turn", "slip")
    assert user.box("Count").text() == "as needed"
    user.fill("Count", "5")
    user.wait_for(lambda: opened.Message, "five strips cannot mirror at the centre")
    assert "even" in opened.Message and user.box("trouble").text() == opened.Message
    user.ok()
    assert FreeCADGui.Control.activeDialog()
    user.fill("Count", "6")
    settled(user, opened, lambda: len(opened.Shape.Solids) == 6, "six will do")
    assert opened.LeafOrder == [1, 2, 3, 4, 5, 6]


def test_ways_are_stepped_by_two_where_book_needs_even_ones(user, opened, panel):
    assert user.box("Ways").singleStep() == 1
    user.fill("Turn", "book")
    assert user.box("Ways").singleStep() == panel().form.InnerWays.singleStep() == 2
    user.box("Ways").stepUp()
    user.wait_for(lambda: opened.Ways == 8, "the next even count is taken")


# --- lengths ------------------------------------------------------------------------------------


def test_a_strip_is_as_wide_as_was_typed_in_the_users_unit(user, opened):
    FreeCAD.Units.setSchema(IMPERIAL)
    try:
        user.fill("Kind", "Side by side")
        user.fill("StripWidth", '4 1/2"')
        settled(user, opened, lambda: opened.StripWidth.Value == pytest.approx(114.3), "it is read")
        assert len(opened.Shape.Solids) == 6  # 600 mm by 114.3 mm at the most
        user.fill("Top", "Boat")
        user.fill("Ends", "10 in")
        settled(user, opened, lambda: opened.Ends.Value == pytest.approx(254.0), "the ends too")
    finally:
        FreeCAD.Units.setSchema(STANDARD)


# --- outlines -----------------------------------------------------------------------------------


def test_the_selected_sketch_becomes_the_top_and_cancel_gives_it_back(
    user, fresh, opened, capfd
):
    sketch = sketched(fresh)
    before = user.state(fresh)[opened.Name]  # newer hosts show a sketch's lines by their address
    user.fill("Top", "Outline")
    user.wait_for(lambda: opened.Message, "no outline is chosen yet")
    user.box("take_outline").click()
    assert "select" in user.box("trouble").text()
    FreeCADGui.Selection.addSelection(sketch)
    user.box("take_outline").click()
    settled(user, opened, lambda: opened.OutlineOf is not None, "the sketch is taken")
    user.wait_for(lambda: "Sketch" in user.box("outline_name").text(), "it is named")
    area = 600.0 * 400.0 - math.pi * 40.0**2
    assert layout(opened).top.region.area == pytest.approx(area)
    user.cancel()
    user.wait_closed()
    assert user.state(fresh)[opened.Name] == before and opened.OutlineOf is None
    assert "Traceback" not in capfd.readouterr().err  # what undo restores one by one is no outline


def test_a_new_match_takes_the_selected_face_and_any_kind(user, fresh, stock):
    box = fresh.addObject("Part::Box", "Box")
    box.Length, box.Width, box.Height = 500.0, 400.0, 20.0
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.addSelection(fresh.Name, box.Name, "Face6")
    user.open_panel("Veneer_NewMatch", "Kind")
    match = the_match(fresh)
    settled(user, match, lambda: match.Shape.Solids, "the match is laid")
    assert (match.Kind, match.Top, match.OutlineOf[0]) == ("Side by side", "Outline", box)
    assert match.Placement.Base.z == pytest.approx(20.0)
    user.fill("Kind", "Diamond")
    settled(user, match, lambda: len(match.Shape.Solids) == 4, "another kind on the same face")
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1
    fresh.undo()
    assert [one.Name for one in fresh.Objects] == [stock.Name, "Box"]


@pytest.mark.parametrize(("part", "taken"), [("Edge2", []), ("Vertex1", []), ("Edge5", ["Edge5"])])
def test_one_line_of_a_sketch_stands_for_the_sketch_and_a_circle_for_itself(
    user, fresh, opened, part, taken
):
    sketch = sketched(fresh)
    FreeCADGui.Selection.addSelection(fresh.Name, sketch.Name, part)
    user.fill("Top", "Outline")
    user.box("take_outline").click()
    settled(user, opened, lambda: opened.Top == "Outline", "the outline is laid")
    assert opened.OutlineOf[0] == sketch and list(opened.OutlineOf[1]) in (taken, taken or [""])
    assert bool(layout(opened).top.holes) == (not taken)


@pytest.mark.parametrize(("wide", "long", "count"), [(180.0, 420.0, 7), (60.0, 90.0, 3)])
def test_a_new_match_begins_with_a_size_that_its_leaves_allow(user, fresh, wide, long, count):
    few = add_stock(fresh, wide, long, count)
    fresh.recompute()
    for command in ("Veneer_NewMatch", *(["Veneer_NewRadialMatch"] if count > 3 else [])):
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(few)
        user.open_panel(command, "Kind")
        match = the_match(fresh)
        settled(user, match, lambda match=match: match.Shape.Solids, "the match is laid")
        assert not any(one.startswith("stop") for one in match.Findings), match.Findings
        assert match.Length.Value <= 0.9 * count * wide and match.Width.Value <= 0.9 * long
        user.cancel()
        user.wait_closed()


def test_a_new_match_from_many_large_leaves_is_of_the_usual_size(user, fresh, stock):
    large = add_stock(fresh, 900.0, 2500.0, 24)
    fresh.recompute()
    FreeCADGui.Selection.addSelection(large)
    user.open_panel("Veneer_NewMatch", "Kind")
    match = the_match(fresh)
    assert (match.Length.Value, match.Width.Value, match.Diameter.Value) == (1800.0, 900.0, 1200.0)
    assert match.Ways == 8
    user.cancel()
    user.wait_closed()


def test_a_new_match_leaves_alone_what_is_selected_and_no_outline(user, fresh, stock):
    solid = fresh.addObject("Part::Box", "Box")
    fresh.recompute()
    FreeCADGui.Selection.addSelection(solid)
    user.open_panel("Veneer_NewMatch", "Kind")
    match = the_match(fresh)
    settled(user, match, lambda: match.Shape.Solids, "the match is laid")
    assert match.Top == "Rectangle"
    user.cancel()
    user.wait_closed()


def test_what_is_made_from_the_match_cannot_be_its_outline(user, fresh, opened):
    copy = fresh.addObject("Part::Offset", "Copy")
    copy.Source = opened
    FreeCADGui.Selection.addSelection(copy)
    user.fill("Top", "Outline")
    user.wait_for(lambda: opened.Top == "Outline", "the top is taken")
    user.box("take_outline").click()
    assert "made from this match" in user.box("trouble").text() and opened.OutlineOf is None


# --- what is shown ------------------------------------------------------------------------------


def test_every_match_and_every_top_has_a_drawing_of_its_own(user):
    names = [match.key for match in MATCHES] + [f"top {top}" for top in kinds.TOPS]
    seen = set()
    for name in names:
        icon = match_drawings.drawing(name)
        for size in (match_drawings.IN_LINE, match_drawings.BY_ITSELF):
            image = icon.pixmap(size, size).toImage()
            assert image.width() >= size
            data = QtCore.QByteArray()
            buffer = QtCore.QBuffer(data)
            buffer.open(QtCore.QIODevice.WriteOnly)
            image.save(buffer, "PNG")
            seen.add((size, bytes(data)))
    assert len(seen) == 2 * len(names)


def test_the_drawing_and_its_line_follow_what_is_chosen(user, opened):
    said = {match.key: match.kind.line for match in MATCHES}
    assert user.box("line").text() == said["radial slip"]
    for name, choice, key in (("Strips", "3", "radial in strips"), ("Strips", "1", "radial slip"),
                              ("DiscDiameter", "50 mm", "radial round a disc"),
                              ("Kind", "End match", "architectural"),
                              ("EndKind", "panel", "panel"), ("Kind", "Box", "box")):  # fmt: skip
        user.fill(name, choice)
        user.wait_for(lambda key=key: user.box("line").text() == said[key], f"{key} is shown")
        assert match_drawings.line((key,)) == said[key]


def test_spots_are_refused_for_other_kinds_in_one_sentence(user, fresh, bundle, monkeypatch):
    match = add_match(fresh, bundle, Kind="Reverse box", Top="Square", Length=300.0)
    fresh.recompute()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(match)
    said = []
    monkeypatch.setattr(QtGui.QMessageBox, "warning", lambda *given: said.append(given[-1]))
    FreeCADGui.runCommand("Veneer_ChooseSpot")
    assert len(said) == 1 and "reverse box" in said[0] and said[0].endswith(".")
    assert "\n" not in said[0] and not FreeCADGui.Control.activeDialog()

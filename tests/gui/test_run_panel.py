# SPDX-License-Identifier: LGPL-2.1-or-later
"""Panels laid in sequence by the command and its panel, and how they look in the view."""

import FreeCAD
import FreeCADGui
import pytest
from FreeCAD import Vector
from pivy import coin
from PySide import QtGui

from veneerwb.core.matches.kinds import MATCHES
from veneerwb.gui.facing import selected_faces
from veneerwb.host.objects import add_run, add_stock, run_of


@pytest.fixture
def doors(fresh, bundle):
    """Three doors of 200 x 300 mm with gaps of 3 mm, from the right one on; Face3 is the front."""
    made = []
    for k in (2, 1, 0):
        one = fresh.addObject("Part::Box", f"Door{k + 1}")
        one.Length, one.Width, one.Height = 200.0, 18.0, 300.0
        one.Placement.Base = Vector(k * 203.0, 0.0, 0.0)
        made.append(one)
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    return made


def choose(*objects, part="Face3"):
    FreeCADGui.Selection.clearSelection()
    for one in objects:
        FreeCADGui.Selection.addSelection(one.Document.Name, one.Name, part)


def shown(run):
    return [[piece.leaf for piece in layout.pieces] for layout in run_of(run).laid.layouts]


def trouble(user):
    """What the panel says is wrong."""
    return "".join(label.text() for label in user.visible(QtGui.QLabel, "trouble"))


def named(run, start):
    """The names of the nodes in a run's pictures that begin so."""
    search = coin.SoSearchAction()
    search.setInterest(coin.SoSearchAction.ALL)
    search.setType(coin.SoSeparator.getClassTypeId())
    search.apply(run.ViewObject.Proxy.pictures)
    paths = search.getPaths()
    names = [paths[k].getTail().getName().getString() for k in range(paths.getLength())]
    return [name for name in names if name.startswith(start)]


def test_the_selected_doors_are_laid_in_one_step(user, fresh, doors):
    choose(*doors)
    user.open_panel("Veneer_RunOnFaces", "Mode")
    run = user.only(fresh, "Run")
    assert run.Message == "" and shown(run) == [[1], [2], [3]]
    assert [line[:17] for line in user.lines("panels")] == [
        f"{k}: Face3 of Door{k}" for k in (1, 2, 3)
    ]
    user.box("Count").setValue(2)
    user.wait_for(lambda: shown(run) == [[1, 2], [3, 4], [5, 6]], "each door has two leaves")
    assert len(user.lines()) == len(run.Findings) > 1
    assert all(text.endswith(line) for text, line in zip(run.Findings, user.lines()))
    user.ok()
    user.wait_closed()
    assert len(run.Shape.Solids) == 6 and fresh.UndoCount == 1
    fresh.undo()
    assert not [obj for obj in fresh.Objects if obj.Name.startswith("Run")]
    fresh.redo()
    fresh.recompute()
    assert len(user.only(fresh, "Run").Shape.Solids) == 6


def test_one_field_over_all_with_gaps_closed_or_laid_through(user, fresh, doors):
    choose(*doors)
    user.open_panel("Veneer_RunOnFaces", "Mode")
    run = user.only(fresh, "Run")
    user.box("Count").setValue(2)
    assert not user.visible(object, "Gaps")
    user.fill("Mode", "blueprint")
    assert user.box("Count").value() == 0  # two on each are not two over all
    user.box("Count").setValue(5)
    user.wait_for(lambda: shown(run) == [[1, 2], [2, 3, 4], [4, 5]], "one field lies over all")
    assert run_of(run).laid.field.width == pytest.approx(600.0)
    user.fill("Gaps", "laid through")
    user.wait_for(lambda: run.Gaps == "laid through", "the gaps are laid through")
    assert run_of(run).laid.field.width == pytest.approx(606.0)
    user.ok()
    user.wait_closed()
    assert (run.Mode, run.Count, run.Message) == ("blueprint", 5, "")


def test_only_the_rows_of_the_match_are_seen_and_turns_that_it_has(user, fresh, doors):
    choose(*doors[:1])
    user.open_panel("Veneer_RunOnFaces", "Mode")
    run = user.only(fresh, "Run")
    user.fill("Turn", "random")
    user.wait_for(lambda: run.Turn == "random", "the leaves are put out of order")
    assert user.visible(object, "Seed") and not user.visible(object, "Ways")
    user.fill("Kind", "Radial")
    user.wait_for(lambda: run.Kind == "Radial", "the match is another")
    assert run.Message == "" and run.Turn == "book" and shown(run) == [list(range(1, 9))]
    assert user.visible(object, "Ways") and not user.visible(object, "Face")
    assert user.box("Turn").count() == 2
    user.fill("Kind", "Side by side")
    user.fill("Face", "running")
    user.wait_for(lambda: run.Face == "running", "full strips are laid")
    assert not user.visible(object, "Count") and user.visible(object, "StripWidth")
    user.cancel()
    user.wait_closed()


def test_margin_spares_and_the_order_of_wedges_are_asked(user, fresh, doors):
    choose(*doors[:1])
    user.open_panel("Veneer_RunOnFaces", "Mode")
    run = user.only(fresh, "Run")
    assert not user.visible(object, "Order")
    user.fill("Margin", "1 in")
    user.fill("Spares", "20")
    user.wait_for(lambda: run.Margin.Value == pytest.approx(25.4), "the margin is read")
    user.wait_for(lambda: any("spare" in one for one in user.lines()), "too few are left over")
    user.fill("Kind", "Radial")
    user.fill("Order", "spread")
    user.wait_for(lambda: run.Order == "spread", "the wedges are spread")
    assert shown(run) == [[1, 2, 3, 6, 7, 8, 5, 4]]
    user.fill("Kind", "Box")
    user.wait_for(lambda: run.Kind == "Box", "the match is another")
    assert run.Message == "" and run.Order == "sequence"
    assert not user.visible(object, "Order")
    user.ok()
    user.wait_closed()


def test_each_match_of_a_run_is_shown_by_its_drawing(user, fresh, doors):
    said = {match.key: match.kind.line for match in MATCHES}
    choose(*doors[:1])
    user.open_panel("Veneer_RunOnFaces", "Mode")
    for name in ("Kind", "Turn", "Face"):
        box = user.box(name)
        assert not any(box.itemIcon(row).isNull() for row in range(box.count())), name
    for kind, key in (("Diamond", "diamond"), ("Radial", "radial book"), ("Side by side", "book")):
        user.fill("Kind", kind)
        assert user.box("line").text() == said[key]
    user.cancel()
    user.wait_closed()


def test_nothing_is_left_of_a_run_that_is_not_wanted(user, fresh, doors):
    choose(*doors)
    before = user.state(fresh)
    user.open_panel("Veneer_RunOnFaces", "Mode")
    user.box("Count").setValue(2)
    user.fill("Second", user.box("Second").itemData(1))
    user.escape(user.box("Mode"))
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


@pytest.mark.parametrize(("end", "count", "undos"), [("ok", 2, 1), ("cancel", 1, 0)])
def test_a_run_is_edited_in_one_step_or_left_as_it_was(user, fresh, doors, end, count, undos):
    run = add_run(fresh, fresh.getObject("Bundle"), [(one, "Face3") for one in doors], Count=1)
    fresh.recompute()
    fresh.clearUndos()
    before = user.state(fresh)
    user.double_click(run, "Mode")
    user.box("Count").setValue(2)
    user.wait_for(lambda: len(run.Shape.Solids) == 6, "the run follows")
    getattr(user, end)()
    user.wait_closed()
    assert run.Count == count and fresh.UndoCount == undos
    assert len(named(run, "piece_")) == 3 * count
    assert undos or user.state(fresh) == before


def test_too_few_leaves_and_faces_out_of_plane_are_said_in_the_panel(user, fresh, doors):
    choose(*doors)
    user.open_panel("Veneer_RunOnFaces", "Mode")
    user.box("Count").setValue(3)
    user.wait_for(lambda: "enough for 2 of 3" in trouble(user), "it is said")
    user.ok()
    assert FreeCADGui.Control.activeDialog()
    user.box("Count").setValue(2)
    user.wait_for(lambda: not trouble(user), "it is well again")
    FreeCADGui.Selection.clearSelection()
    user.box("take").click()
    assert "Select the flat faces of one plane" in trouble(user)
    choose(*doors[:2])
    FreeCADGui.Selection.addSelection(fresh.Name, "Door1", "Face4")
    user.box("take").click()
    user.wait_for(lambda: "looks the other way" in trouble(user), "it is said")
    choose(*doors[1:])
    user.box("take").click()
    run = user.only(fresh, "Run")
    user.wait_for(lambda: len(run.Shape.Solids) == 4, "two doors are laid")
    assert len(user.lines("panels")) == 2
    user.ok()
    user.wait_closed()


def test_pictures_carry_the_panels_numbers_and_can_be_picked_and_chosen(user, fresh, doors):
    run = add_run(fresh, fresh.getObject("Bundle"), [(one, "Face3") for one in doors], Count=2)
    fresh.recompute()
    assert named(run, "panel_") == ["panel_1", "panel_2", "panel_3"]
    assert named(run, "piece_") == ["piece_1", "piece_2"] * 3
    with_numbers = len(named(run, ""))
    run.ViewObject.Numbers = False
    assert len(named(run, "")) < with_numbers and len(named(run, "piece_")) == 6
    user.double_click(run, "Mode")
    user.click(user.box("panels"), 1)
    (one,) = FreeCADGui.Selection.getSelectionEx()
    assert one.Object == run and len(one.SubElementNames) == 2
    # What is chosen on the veneer stands for the door under it.
    assert selected_faces(fresh.Name) == [(fresh.getObject("Door2"), "Face3")]
    assert run.ViewObject.Proxy.marks.getNumChildren() == 1
    user.ok()
    user.wait_closed()


def test_where_two_bundles_meet_is_shown_on_the_panel(user, fresh, doors):
    bundle, more = fresh.getObject("Bundle"), add_stock(fresh, 240.0, 500.0, 9, 0.6)
    faces = [(one, "Face3") for one in doors]
    run = add_run(fresh, bundle, faces, Count=2, Second=more, First=6)
    fresh.recompute()
    assert run.Message == "" and shown(run) == [[6, 7], [8, 10], [11, 12]]
    assert named(run, "bundle_joint") == ["bundle_joint"]
    run.First = 7
    fresh.recompute()
    assert shown(run)[1] == [10, 11] and named(run, "bundle_joint") == []


def test_pictures_follow_the_doors_and_come_back_with_undo(user, fresh, doors):
    run = add_run(fresh, fresh.getObject("Bundle"), [(one, "Face3") for one in doors], Count=2)
    fresh.recompute()
    fresh.clearUndos()

    def left():
        """Where the first panel is drawn."""
        box = coin.SoGetBoundingBoxAction(coin.SbViewportRegion(100, 100))
        box.apply(run.ViewObject.Proxy.pictures)
        found = box.getBoundingBox()  # the corner does not outlive it
        return found.getMin()[0]

    assert left() == pytest.approx(0.0, abs=0.5)
    fresh.openTransaction("Move")
    fresh.getObject("Door1").Placement.Base.x = -50.0
    fresh.recompute()
    fresh.commitTransaction()
    assert left() == pytest.approx(-50.0, abs=0.5)
    fresh.undo()
    user.wait_for(lambda: left() == pytest.approx(0.0, abs=0.5), "the picture is back")


def test_a_saved_run_is_shown_with_its_pictures_again(user, fresh, doors, tmp_path):
    run = add_run(fresh, fresh.getObject("Bundle"), [(one, "Face3") for one in doors], Count=2)
    fresh.recompute()
    assert not FreeCADGui.getIcon(run.ViewObject.Proxy.getIcon()).isNull()
    fresh.saveAs(str(tmp_path / "run.FCStd"))
    FreeCAD.closeDocument(fresh.Name)
    again = FreeCAD.openDocument(str(tmp_path / "run.FCStd"))
    run = user.only(again, "Run")
    assert type(run.ViewObject.Proxy).__module__ == "veneerwb.gui.run"
    assert len(named(run, "piece_")) == 6

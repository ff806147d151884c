# SPDX-License-Identifier: LGPL-2.1-or-later
"""What becomes of a spot that is being chosen when the panel ends, or the document changes."""

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.core import Placement
from veneerwb.gui.panels import base
from veneerwb.host.objects import add_match, add_stock

Qt = QtCore.Qt
THERE = Placement(100.0, 200.0, 80.0)


@pytest.fixture
def warned(monkeypatch):
    """What the user was told in a box."""
    said = []
    monkeypatch.setattr(QtGui.QMessageBox, "warning", lambda *given: said.append(given[2]))
    return said


def test_cancel_leaves_the_document_as_it_was(user, spot, match):
    doc = match.Document
    before = user.state(doc)
    spot.state.go(THERE)
    spot.state.go(ways=6, turn="slip", size=250.0)
    spot.state.go(Placement(90.0, 210.0, 90.0), run=True)  # not written yet
    user.cancel()
    user.wait_closed()
    assert user.state(doc) == before
    assert not doc.UndoNames


def test_cancel_takes_back_more_steps_than_the_host_keeps(user, spot, match):
    doc = match.Document
    before = user.state(doc)
    for k in range(25):
        spot.state.go(Placement(100.0 + k, 200.0, 80.0))
    user.cancel()
    user.wait_closed()
    assert user.state(doc) == before


def test_cancel_keeps_what_others_did_meanwhile(user, spot, match, bundle):
    doc = match.Document
    spot.state.go(THERE)
    doc.openTransaction("Other")
    bundle.Species = "walnut"
    doc.commitTransaction()
    user.cancel()
    user.wait_closed()
    assert bundle.Species == "walnut"
    assert match.AutoPlacement and match.TipX.Value == 0.0


def test_ok_keeps_it(user, spot, match, tip):
    spot.state.go(THERE, run=True)
    user.ok()
    user.wait_closed()
    assert tip(match) == (100.0, 200.0, 80.0)
    assert len(match.Document.UndoNames) == 1
    assert not user.visible(QtGui.QTabWidget, "tabs")


def test_closing_the_window_keeps_it_too(user, spot, match, tip):
    spot.state.go(THERE, run=True)
    spot.window._frame.close()
    user.wait_closed()
    assert tip(match) == (100.0, 200.0, 80.0)


def test_nothing_moved_is_nothing_done(user, spot, match):
    user.ok()
    user.wait_closed()
    assert match.AutoPlacement and not match.Document.UndoNames


def test_undo_from_outside_moves_the_wedge_and_the_panel_stays(user, spot, match):
    here = spot.state.placement
    spot.state.go(THERE)
    match.Document.undo()
    user.wait_for(lambda: spot.state.placement == here, "the wedge is back")
    match.Document.redo()
    user.wait_for(lambda: spot.state.placement == THERE, "the wedge is on again")
    assert spot.form is not None
    user.cancel()
    user.wait_closed()
    assert match.AutoPlacement


def test_undo_of_the_match_itself_closes_the_panel(user, fresh, bundle, panel):
    fresh.openTransaction("Make")
    add_match(fresh, bundle, Ways=8, Diameter=300.0)
    fresh.recompute()
    fresh.commitTransaction()
    user.open_panel("Veneer_ChooseSpot", "TipX")
    fresh.undo()
    user.wait_closed()
    assert not fresh.findObjects("Part::FeaturePython")


def test_a_match_that_is_deleted_closes_the_panel(user, spot, match):
    spot.state.go(THERE, run=True)
    match.Document.removeObject(match.Name)
    user.wait_closed()


def test_a_document_that_is_closed_closes_the_panel(user, spot, match):
    spot.state.go(THERE, run=True)
    FreeCAD.closeDocument(match.Document.Name)
    user.wait_closed()
    assert not base.shown()


def test_another_document_gets_no_part_of_the_step(user, spot, match, tip):
    spot.state.go(THERE, run=True)
    spot.write()  # the step is open
    other = FreeCAD.newDocument("Other")
    other.UndoMode = 1
    other.addObject("App::FeaturePython", "Thing")
    assert list(match.Document.UndoNames) == ["Choose spot"]
    match.Document.undo()
    assert other.getObject("Thing") is not None
    user.wait_for(lambda: spot.state.placement != THERE, "the wedge is back")


def test_another_workbench_keeps_what_was_chosen(user, spot, match, tip):
    spot.state.go(THERE, run=True)
    FreeCADGui.activateWorkbench("PartWorkbench")
    user.wait_closed()
    assert tip(match) == (100.0, 200.0, 80.0)
    FreeCADGui.activateWorkbench("VeneerWorkbench")


def test_another_change_of_the_match_is_taken_over(user, spot, match):
    match.Diameter = 250.0
    match.Document.recompute()
    user.wait_for(lambda: spot.state.size == 250.0, "the panel follows")
    assert spot.value("Diameter") == 250.0


def test_an_expression_keeps_its_value(user, match, panel, tip):
    match.AutoPlacement = False
    match.TipY = 200.0
    match.setExpression("TipX", "110 mm")
    match.Document.recompute()
    user.open_panel("Veneer_ChooseSpot", "TipX")
    assert not user.box("TipX").isEnabled()
    panel().state.go(THERE)
    assert tip(match) == (110.0, 200.0, 80.0)
    assert panel().state.placement.x == 110.0


# --- what cannot be -------------------------------------------------------------------------------


def test_fewer_leaves_than_ways_is_said_and_not_written(user, spot, match):
    before = match.Document.UndoNames
    spot.state.go(ways=12)
    assert "12 ways need 12 leaves" in spot.form.trouble.text()
    assert match.Ways == 8 and match.Document.UndoNames == before
    spot.state.look(mirrored=True)
    assert len(spot.state.shown().pieces) == 12  # two mirrors need one leaf
    user.ok()
    assert spot.form is not None, "OK refuses"
    user.cancel()
    user.wait_closed()
    assert match.Ways == 8


def test_odd_ways_of_a_book_ring_go_back_in_the_box(user, spot):
    box = user.box("Ways")
    box.setValue(7)
    user.wait_for(lambda: box.value() == 8, "the box is back")
    assert "even number of ways" in spot.form.trouble.text()
    assert spot.state.recipe.ways == 8


def test_a_refused_match_says_why_and_can_be_mended(user, match, panel):
    match.Ways = 12
    match.Document.recompute()
    assert match.Message
    user.open_panel("Veneer_ChooseSpot", "TipX")
    assert panel().form.trouble.text() == match.Message
    panel().state.go(ways=6)
    assert (match.Ways, match.Message) == (6, "")
    assert not panel().form.trouble.text()


def test_a_stock_is_refused_in_a_sentence(user, fresh, warned):
    add_match(fresh, add_stock(fresh, width=300.0, length=900.0, leaves=12, thickness=0.6), Ways=8)
    fresh.recompute()
    FreeCADGui.runCommand("Veneer_ChooseSpot")
    assert len(warned) == 1 and "photographs" in warned[0]
    assert not FreeCADGui.Control.activeDialog()


def test_of_several_matches_the_selected_one_is_meant(user, match, bundle, panel, warned):
    doc = match.Document
    second = add_match(doc, bundle, Ways=6, Diameter=200.0)
    doc.recompute()
    FreeCADGui.runCommand("Veneer_ChooseSpot")
    assert len(warned) == 1 and "select" in warned[0]
    FreeCADGui.Selection.addSelection(doc.Name, second.Name)
    user.open_panel("Veneer_ChooseSpot", "TipX")
    assert panel().state.match == second


def test_a_bundle_without_registers_is_said_in_a_line(user, spot, match, bundle):
    assert user.box("registers").text().startswith("Not registered")
    bundle.Leaves[1].RegisterX = 3.0
    match.Document.recompute()
    user.wait_for(lambda: not user.visible(QtGui.QLabel, "registers"), "the line goes")


def test_lengths_are_in_the_users_unit(user, spot, hand, on_picture, in_inches):
    hand.move(on_picture(spot, 127.0, 254.0))
    assert "5.0" in user.box("place").text() and "in" in user.box("place").text()

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of faults: suggestions, wires of the document, ways in and out."""

from types import SimpleNamespace

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from PySide import QtCore, QtGui
from shapely.geometry import Point, Polygon, box

from veneerwb.core import Bundle, Leaf, Side, sawn_bundle
from veneerwb.core.photos.reading import Photo
from veneerwb.gui.books import faults as fault_book
from veneerwb.gui.panels import base
from veneerwb.host.objects import add_bundle

Qt = QtCore.Qt
SQUARE = [(20.0, 20.0), (60.0, 20.0), (60.0, 80.0), (20.0, 80.0)]
"""Leaf mm."""


@pytest.fixture
def panel(faults):
    return faults.panel


@pytest.fixture
def hand(faults):
    return faults.hand


# --- suggestions and sketches -------------------------------------------------------------------


@pytest.fixture
def suggested(monkeypatch):
    """Two spots, whatever the leaf."""
    spots = [
        SimpleNamespace(outline=outline, kind=kind, template=why, values={})
        for outline, kind, why in (
            (box(20, 200, 40, 220), "knot", "It is dark."),
            (box(150, 100, 160, 180), "split", "It is a line."),
        )
    ]
    asked = []
    monkeypatch.setattr(fault_book, "suggested", lambda leaf, progress: asked.append(leaf) or spots)
    return asked


def test_a_dark_spot_is_suggested_unless_it_is_a_fault_already(user, fresh):
    spotted = sawn_bundle(
        leaves=1, width=200, length=400, thickness=0.6, mm_per_px=1.0, figure="stripe", seed=3,
        knots=0,
    ).leaves[0]  # fmt: skip
    pixels = spotted.photo.copy()
    y, x = np.indices(pixels.shape[:2])
    pixels[np.hypot(x - 100, y - 150) < 8] = (40, 25, 15)
    dark = Leaf(1, Side(Photo.of(pixels, 1.0)))
    add_bundle(fresh, Bundle((dark,), 0.6))
    fresh.recompute()
    user.open_panel("Veneer_Faults", "faults")
    (panel,) = base._shown
    user.box("suggest").click()
    found = [one for one in panel.book.entries if one.outline.contains(Point(100.0, 250.0))]
    assert len(found) == 1 and found[0].suggested
    user.click(user.box("faults"), panel.book.entries.index(found[0]))
    assert found[0].why in user.box("hint").text()
    user.box("take").click()
    user.box("suggest").click()
    spots = [one for one in panel.book.entries if one.outline.contains(Point(100.0, 250.0))]
    assert spots == found


def test_suggestions_are_taken_one_by_one_and_the_others_forgotten(
    user, fresh, bundle, panel, hand, suggested, faults
):
    user.box("suggest").click()
    assert [fault.kind for fault in suggested[0].faults] == ["patch"]
    assert user.lines("faults") == ["patch, leaf 1", "knot?, leaf 1", "split?, leaf 1"]
    assert user.box("hint").text().startswith("It is dark.")
    looks = [one.kind for one in faults.pointing.areas if one.held]
    assert looks == ["suggested", "suggested"]
    faults.choose((155.0, 150.0))
    hand.key(Qt.Key_Delete)  # held: only the panel removes it
    user.box("take").click()
    assert user.lines("faults")[2] == "split, leaf 1" and not user.box("take").isEnabled()
    user.ok()
    user.wait_closed()
    assert [fault.kind for fault in faults.on(bundle, 1)] == ["patch", "split"]
    assert fresh.UndoCount == 1


def test_suggestions_that_nobody_takes_change_nothing(user, fresh, bundle, panel, suggested):
    before = user.state(fresh)
    user.box("suggest").click()
    user.box("suggest").click()
    assert len(user.lines("faults")) == 3
    user.box("remove").click()
    assert len(user.lines("faults")) == 2
    user.ok()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


def wire(doc, label, corners):
    import Part

    made = doc.addObject("Part::Feature", "Wire")
    made.Label = label
    made.Shape = Part.makePolygon([FreeCAD.Vector(x, y, 0) for x, y in (*corners, corners[0])])
    return made


def test_wires_of_the_document_become_faults(user, fresh, bundle, open_faults):
    drawn = wire(fresh, "Split at the edge", SQUARE)
    fresh.recompute()
    fresh.clearUndos()
    faults = open_faults()
    user.box("add_shapes").click()
    assert "Select" in user.box("trouble").text()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(drawn)
    user.box("add_shapes").click()
    user.box("add_shapes").click()
    user.fill("kind", "knot")
    user.fill("through", False)
    assert user.lines("faults") == ["patch, leaf 1", "split, all leaves, Split at the edge"]
    assert not user.box("kind").isEnabled() and not user.box("through").isEnabled()
    user.ok()
    user.wait_closed()
    assert bundle.FaultShapes == [drawn] and fresh.UndoCount == 1
    (found,) = faults.on(bundle, 3)
    assert found.kind == "split" and faults.near(found.outline, Polygon(SQUARE))
    faults = open_faults()
    user.click(user.box("faults"), 1)
    user.box("remove").click()
    user.ok()
    user.wait_closed()
    assert bundle.FaultShapes == [] and faults.on(bundle, 3) == ()


def test_what_is_no_outline_is_refused(user, fresh, bundle):
    block = fresh.addObject("Part::Box", "Block")
    fresh.recompute()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(block)
    user.open_panel("Veneer_Faults", "faults")
    user.box("add_shapes").click()
    assert "solid" in user.box("trouble").text() and len(user.lines("faults")) == 1
    user.cancel()
    user.wait_closed()


# --- ways in and out ----------------------------------------------------------------------------


def cancel(user, doc, panel):
    user.cancel()


def escape(user, doc, panel):
    user.escape(panel.form)


@pytest.mark.parametrize("way_out", [cancel, escape])
def test_every_way_out_leaves_nothing(user, fresh, bundle, panel, hand, way_out, faults):
    before = user.state(fresh)
    faults.draw(SQUARE)
    faults.choose((110.0, 310.0))
    hand.key(Qt.Key_Delete)
    way_out(user, fresh, panel)
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0
    assert not user.visible(QtGui.QWidget, "canvas")


def test_another_workbench_closes_what_is_only_looked_at_and_leaves_work_alone(
    user, bundle, faults
):
    faults.draw(SQUARE)
    FreeCADGui.activateWorkbench("PartWorkbench")
    for _ in range(5):
        QtGui.QApplication.processEvents()
    assert len(user.lines("faults")) == 2 and faults.panel.window is not None
    user.ok()
    user.wait_closed()
    assert bundle.FaultKinds == ["knot"]
    FreeCADGui.activateWorkbench("VeneerWorkbench")
    user.open_panel("Veneer_Faults", "faults")
    FreeCADGui.activateWorkbench("PartWorkbench")
    user.wait_closed()


def test_another_bundle_keeps_what_was_drawn_on_the_first(user, fresh, bundle, plain_leaf,
                                                           open_faults):
    other = add_bundle(fresh, Bundle((plain_leaf(4), plain_leaf(5)), 0.6))
    fresh.recompute()
    fresh.clearUndos()
    faults = open_faults()
    faults.draw(SQUARE)
    user.fill("bundle", other.Name)
    user.fill("kind", "stain")
    faults.panel.window.view.zoom_to(2.0)
    faults.draw(SQUARE)
    user.fill("bundle", bundle.Name)
    assert user.lines("faults") == ["patch, leaf 1", "knot, all leaves"]
    user.fill("bundle", other.Name)
    user.ok()
    user.wait_closed()
    assert (bundle.FaultKinds, other.FaultKinds) == (["knot"], ["stain"])
    assert fresh.UndoCount == 1
    fresh.undo()
    assert bundle.FaultKinds == other.FaultKinds == []


def test_trouble_in_a_bundle_that_is_not_shown_is_shown(user, fresh, bundle, plain_leaf,
                                                         open_faults):
    other = add_bundle(fresh, Bundle((plain_leaf(4),), 0.6))
    fresh.recompute()
    faults = open_faults()
    faults.draw([(20.0, 20.0), (80.0, 80.0), (80.0, 20.0), (20.0, 90.0)])
    user.fill("bundle", other.Name)
    user.ok()
    assert user.box("bundle").currentData() == bundle.Name
    assert "crosses" in user.box("trouble").text() and len(user.lines("faults")) == 2


def test_an_undo_elsewhere_takes_nothing_that_was_drawn(user, fresh, bundle, faults):
    fresh.openTransaction("Elsewhere")
    bundle.Leaves[1].RegisterX = 20.0
    bundle.Leaves[0].FaultOutlines, bundle.Leaves[0].FaultKinds = [], []
    fresh.recompute()
    fresh.commitTransaction()
    faults.draw(SQUARE)
    user.fill("through", False)
    faults.draw([(100.0, 100.0), (140.0, 100.0), (120.0, 150.0)])
    faults.hand.click(faults.px((50.0, 200.0)))  # half drawn
    fresh.undo()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "it is told")
    assert "kept" in user.box("trouble").text()
    assert user.lines("faults") == ["patch, leaf 1", "knot, all leaves", "knot, leaf 1"]
    assert len(faults.pointing.drawn.corners) == 1
    assert faults.panel.book.bundle.leaf(2).register.dx == pytest.approx(6.0)
    user.ok()
    user.wait_closed()
    assert bundle.FaultKinds == ["knot"] and bundle.Leaves[0].FaultKinds == ["patch", "knot"]


def test_without_work_an_undo_closes_the_panel(user, fresh, bundle, faults):
    fresh.openTransaction("Elsewhere")
    bundle.Species = "oak"
    fresh.commitTransaction()
    fresh.undo()
    user.wait_closed()


@pytest.mark.parametrize("where", ["faults", "kind"])
def test_delete_is_the_lists_and_never_the_documents(user, fresh, bundle, faults, where):
    faults.draw(SQUARE)
    user.click(user.box("faults"), 0)
    user.box("faults").setCurrentRow(1)  # as an arrow key does
    FreeCADGui.Selection.addSelection(bundle)
    user.box(where).setFocus()
    user.wait_for(user.box(where).hasFocus, "it has the keys")
    taken = []
    for kind in (QtCore.QEvent.ShortcutOverride, QtCore.QEvent.KeyPress):
        event = QtGui.QKeyEvent(kind, Qt.Key_Delete, Qt.NoModifier)
        event.ignore()
        QtGui.QApplication.sendEvent(user.box(where), event)
        taken.append(event.isAccepted())
    assert taken[0]
    left = ["patch, leaf 1", "knot, all leaves"]
    assert user.lines("faults") == (left[:1] if where == "faults" else left)
    assert fresh.getObject(bundle.Name) is not None


def test_an_error_that_nobody_foresaw_is_told_truly(user, bundle, faults, monkeypatch):
    def fails(number, progress):
        raise ValueError("no light\nat all")

    monkeypatch.setattr(faults.panel.book, "suggest", fails)
    user.box("suggest").click()
    said = user.box("trouble").text()
    assert "ValueError: no light)" in said and "cancel" in said
    assert "recomputed" not in said and "undo" not in said


def test_looking_changes_nothing(user, fresh, bundle, faults):
    before = user.state(fresh)
    for number in (1, 2, 3):
        user.fill("leaf", number)
    faults.choose((110.0, 310.0))
    user.ok()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


def test_it_goes_with_its_document(user, fresh, hand, faults):
    hand.click(faults.px(SQUARE[0]))
    FreeCAD.closeDocument(fresh.Name)
    user.wait_closed()
    assert not user.visible(QtGui.QWidget, "canvas")


def test_a_bundle_that_goes_is_said_to_be_gone(user, fresh, bundle, faults):
    faults.draw(SQUARE)
    fresh.removeObject(bundle.Name)
    user.ok()
    assert "gone" in user.box("trouble").text()
    user.cancel()
    user.wait_closed()


def test_a_leaf_that_goes_is_said_to_be_gone(user, fresh, bundle, faults):
    user.fill("through", False)
    faults.draw(SQUARE)
    fresh.removeObject(bundle.Leaves[0].Name)
    user.ok()
    assert "Leaf 1 is gone" in user.box("trouble").text()
    assert fresh.HasPendingTransaction is False and bundle.FaultOutlines == []
    user.cancel()
    user.wait_closed()


def test_the_window_and_the_panel_turn_together(user, panel, faults):
    panel.window.turn_to(2)
    assert user.box("leaf").currentData() == 3
    user.fill("leaf", 1)
    assert panel.window.page == 0
    assert [one.kind for one in faults.pointing.areas] == ["usable", "patch"]


def test_the_window_is_closed_and_opened_again(user, bundle, panel, faults):
    faults.draw(SQUARE)
    panel.window._frame.close()
    user.wait_for(lambda: panel.window is None, "the panel hears of it")
    user.click(user.box("faults"), 0)
    user.box("remove").click()
    user.box("look").click()
    assert [one.kind for one in faults.pointing.areas] == ["usable", "knot"]
    user.ok()
    user.wait_closed()
    assert faults.on(bundle, 1)[0].kind == "knot"


def test_the_selected_leaf_is_shown_first(user, fresh, bundle, plain_leaf):
    other = add_bundle(fresh, Bundle((plain_leaf(4), plain_leaf(5)), 0.6))
    fresh.recompute()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(other.Leaves[1])
    user.open_panel("Veneer_Faults", "faults")
    assert user.box("bundle").currentData() == other.Name
    assert user.box("leaf").currentData() == 5
    user.fill("bundle", bundle.Name)
    assert user.box("leaf").currentData() == 1 and len(user.lines("faults")) == 1


def test_it_opens_and_closes_again_and_again(user, bundle, open_faults):
    for _ in range(12):
        faults = open_faults()
        faults.hand.click(faults.px(SQUARE[0]))
        faults.hand.wheel((60.0, 60.0), 1)
        user.fill("leaf", 2)
        user.cancel()
        user.wait_closed()
        assert not user.visible(QtGui.QWidget, "canvas")

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Marks that were located and are not in the document yet are not lost by what happens to it."""

import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.core import Bundle
from veneerwb.host.areas import marks_of
from veneerwb.host.objects import add_bundle
from veneerwb.host.sequence import renumber

A, B = (30.3, 40.2), (170.6, 60.1)
"""Where they are stuck on leaf 1 (leaf mm), as in conftest."""


def test_another_bundle_another_workbench_and_an_undo_keep_marks(
    user, fresh, bundle, opened, sawn
):
    other = add_bundle(fresh, Bundle(sawn.leaves[:1], 0.6))
    fresh.recompute()
    fresh.clearUndos()
    fresh.openTransaction("Elsewhere")
    bundle.Leaves[0].RegisterX = 7.0
    fresh.commitTransaction()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(bundle)
    marks = opened()
    marks.click(A)
    user.fill("bundle", other.Name)
    assert user.lines("marks") == []
    FreeCADGui.activateWorkbench("PartWorkbench")
    user.fill("bundle", bundle.Name)
    assert len(user.lines("marks")) == 1
    marks.panel.window.view.zoom_to(1.5)
    marks.click(B)
    fresh.undo()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "it is told")
    assert "kept" in user.box("trouble").text() and len(user.lines("marks")) == 2
    user.ok()
    user.wait_closed()
    assert sorted(marks_of(bundle.Leaves[0])) == [0, 1] and bundle.Leaves[0].RegisterX == 0


def test_delete_in_the_list_takes_the_mark_of_its_row(user, fresh, bundle, marks):
    for mm in (A, B):
        marks.click(mm)
    FreeCADGui.Selection.addSelection(bundle)
    user.box("marks").setCurrentRow(0)
    user.presses(user.box("marks"), QtCore.Qt.Key_Delete)
    assert [text[0] for text in marks.texts()] == ["B"] and fresh.getObject(bundle.Name)


def test_a_mark_goes_with_its_leaf_when_a_renumbering_is_undone(user, fresh, bundle, opened):
    for leaf in bundle.Leaves:
        leaf.Marks = []
    fresh.recompute()
    fresh.clearUndos()
    renumber(bundle, {1: 2, 2: 1})
    fresh.recompute()
    first = next(leaf for leaf in bundle.Leaves if leaf.Number == 2)
    marks = opened()
    user.fill("leaf", 2)
    marks.click(A)
    assert len(user.lines("marks")) == 1
    fresh.undo()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "it is told")
    user.ok()
    user.wait_closed()
    assert first.Number == 1 and sorted(marks_of(first)) == [0]
    assert [leaf.Name for leaf in bundle.Leaves if marks_of(leaf)] == [first.Name]


def test_what_was_clicked_to_confirm_outlives_an_undo_and_another_workbench(
    user, fresh, pinned, confirming, shot
):
    fresh.openTransaction("Elsewhere")
    renumber(pinned, {1: 2, 2: 1})
    fresh.commitTransaction()
    fresh.recompute()
    confirming.take(shot())
    confirming.click_on(1, 0)  # which the panel knows as a mark of leaf 1 as it was read
    FreeCADGui.activateWorkbench("PartWorkbench")
    fresh.undo()
    for _ in range(20):
        QtGui.QApplication.processEvents()
    assert FreeCADGui.Control.activeDialog() and len(user.lines("sightings")) == 1
    assert "kept" in user.box("trouble").text()

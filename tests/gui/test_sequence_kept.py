# SPDX-License-Identifier: LGPL-2.1-or-later
"""Marks picked for the sequence, and what was done to its leaves, are not lost by what happens
elsewhere."""

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from PySide import QtGui

from veneerwb.gui.sequence import work as sequence_work
from veneerwb.host.objects import core_bundle
from veneerwb.host.objects.base import Refused

PLACES = ((100.0, 80.0), (110.0, 430.0))


@pytest.fixture
def picked(user, fresh, mixed, panel):
    """Two marks on leaf 1, picked and not kept; a step of another command can be undone."""
    fresh.openTransaction("Elsewhere")
    mixed.Label = "Other"
    fresh.commitTransaction()
    user.open_panel("Veneer_Sequence", "prove")
    user.fill("follow", "marks")
    window = panel().window
    window.go(1)
    for place in PLACES:
        window.change(window.state.marked(place))
    assert panel().work.marks_differ
    return panel()


def pass_time():
    for _ in range(20):
        QtGui.QApplication.processEvents()


def kept(bundle):
    return [len(leaf.Picked) for leaf in sorted(bundle.Leaves, key=lambda one: one.Number)]


def test_another_workbench_leaves_picked_marks(user, mixed, picked):
    FreeCADGui.activateWorkbench("PartWorkbench")
    pass_time()
    user.ok()
    user.wait_closed()
    assert kept(mixed) == [2] + 7 * [0]


def test_an_undo_elsewhere_leaves_picked_marks(user, fresh, mixed, picked):
    fresh.undo()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "it is told")
    assert "kept here" in user.box("trouble").text()
    user.ok()
    user.wait_closed()
    assert kept(mixed) == [2] + 7 * [0]


def test_ok_that_cannot_keep_the_marks_says_so_and_stays(user, mixed, picked, monkeypatch):
    def refuse(*_):
        raise Refused("The disk is full.")

    monkeypatch.setattr(sequence_work, "set_picked", refuse)
    user.ok()
    pass_time()
    assert FreeCADGui.Control.activeDialog()
    assert user.box("trouble").text() == "The disk is full." and picked.work.marks_differ
    monkeypatch.undo()
    user.ok()
    user.wait_closed()
    assert kept(mixed) == [2] + 7 * [0]


def test_another_workbench_takes_nothing_back_that_was_done(user, fresh, mixed, panel):
    before = core_bundle(mixed).leaf(1).photo
    user.open_panel("Veneer_Sequence", "prove")
    user.box("turn_end").click()
    FreeCADGui.activateWorkbench("PartWorkbench")
    pass_time()
    assert FreeCADGui.Control.activeDialog() and panel().step.goes_on
    assert np.array_equal(core_bundle(mixed).leaf(1).photo, before[::-1, ::-1])
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1 and FreeCAD.getActiveTransaction() is None

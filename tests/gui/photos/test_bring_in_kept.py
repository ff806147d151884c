# SPDX-License-Identifier: LGPL-2.1-or-later
"""What was clicked on photographs that are to be brought in is not lost by what happens
elsewhere."""

import FreeCADGui
from PySide import QtGui

CORNERS = ((50.0, 50.0), (50.0, 250.0))


def test_another_workbench_and_an_undo_leave_clicks(user, fresh, bring_in, three):
    note = fresh.addObject("App::FeaturePython", "Note")
    fresh.clearUndos()
    fresh.openTransaction("Elsewhere")
    note.Label = "Other"
    fresh.commitTransaction()
    panel = bring_in(three, scale="points", known="200 mm")
    hand = bring_in.window("click_scale")
    assert not panel.unsaved()
    for place in CORNERS:
        hand.click(place)
    assert len(panel.clicks.points[None]) == 2
    for happens in (lambda: FreeCADGui.activateWorkbench("PartWorkbench"), fresh.undo):
        happens()
        for _ in range(20):
            QtGui.QApplication.processEvents()
        assert FreeCADGui.Control.activeDialog() and len(panel.clicks.points[None]) == 2
    user.cancel()
    user.wait_closed()

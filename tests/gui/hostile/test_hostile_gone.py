# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a panel works on goes while it is open, or is more than can be shown: it closes, or says so
in a sentence."""

import FreeCAD
import FreeCADGui
import pytest

from veneerwb.gui.panels import base
from veneerwb.host.objects.base import kind_of

GOING = {
    "Veneer_CheckMatch": "Match", "Veneer_CloseRing": "Closing", "Veneer_Bench": "Bench",
    "Veneer_ChooseSpot": "Match", "Veneer_Particulars": "Bundle", "Veneer_Faults": "Bundle",
    "Veneer_Marks": "Bundle", "Veneer_Sequence": "Bundle", "Veneer_Backs": "Bundle",
}  # fmt: skip


def open_panel(doc, command, settled):
    kind = "Bundle" if GOING[command] == "Bundle" else "Match"
    FreeCADGui.activateWorkbench("VeneerWorkbench")
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(doc.getObject(kind))
    FreeCADGui.runCommand(command)
    settled()
    (panel,) = base.shown()
    return panel


@pytest.mark.parametrize("command", GOING)
def test_what_a_panel_is_open_on_is_deleted(opened, settled, command):
    doc = opened()
    panel = open_panel(doc, command, settled)
    doc.removeObject(doc.getObject(GOING[command]).Name)
    doc.recompute()
    settled()
    if panel in base.shown():
        said = panel.form.trouble.text()
        assert "does not know" not in said
        panel.reject()
        FreeCADGui.Control.closeDialog()
    settled()
    assert not base.shown()


@pytest.mark.parametrize("command", ["Veneer_ChooseSpot", "Veneer_Faults", "Veneer_Sequence",
                                     "Veneer_Bench"])  # fmt: skip
def test_a_document_closed_under_a_panel_takes_it_and_its_window_along(opened, settled, command):
    doc = opened()
    open_panel(doc, command, settled)
    FreeCAD.closeDocument(doc.Name)
    settled()
    assert not base.shown() and not FreeCADGui.Control.activeDialog()


def test_a_ring_of_more_ways_than_can_be_is_no_table(opened, panels):
    """It once took all memory."""
    doc = opened()
    match = next(obj for obj in doc.Objects if kind_of(obj) == "Match")
    match.Ways = 2**31 - 1
    doc.recompute()
    assert panels(doc, lambda panel: None, (), "CloseRing")
    assert match.Message.endswith(".")

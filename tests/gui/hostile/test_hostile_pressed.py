# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a panel works on or rests on goes while it is open, comes back by undo, goes with its
document; then each of its buttons is pressed, and each list's first row: what cannot be done is
said in a sentence."""

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from veneerwb.gui.panels import base

LONG = ("compare", "seams", "find_leaf")
"""These take their time, and are tried by others."""
ALL = ""


def command(name, *selected):
    """Runs a command with these selected ("Block.Face3")."""

    def go(doc):
        FreeCADGui.Selection.clearSelection()
        for one in selected:
            obj, _, part = one.partition(".")
            FreeCADGui.Selection.addSelection(doc.Name, obj, part)
        FreeCADGui.runCommand(name)

    return go


def double(name):
    """Double clicks on an object."""

    def go(doc):
        view = doc.getObject(name).ViewObject
        view.Proxy.doubleClicked(view)

    return go


PANELS = {
    "match": (double("Match"), "Bundle", ALL),
    "run": (double("Run"), "Stock", "Block"),
    "facing": (double("Facing"), "Block", "Facing"),
    "drawing": (double("Drawing"), "Match", "Drawing"),
    "bench": (double("Bench"), "Match", "Bench"),
    "closing": (double("Closing"), "Match", "Closing"),
    "build-up": (double("PanelParts"), "Stock", "PanelParts"),
    "particulars": (double("Bundle"), "Leaf", "Bundle"),
    "spot": (command("Veneer_ChooseSpot", "Match"), "Bundle", "Match"),
    "check": (command("Veneer_CheckMatch", "Match"), "Bundle", "Match"),
    "sequence": (command("Veneer_Sequence", "Bundle"), "Leaf", "Bundle"),
    "backs": (command("Veneer_Backs", "Bundle"), "Leaf", "Bundle"),
    "faults": (command("Veneer_Faults", "Bundle"), "Leaf", "Bundle"),
    "marks": (command("Veneer_Marks", "Bundle"), "Leaf", "Bundle"),
    "bring in": (command("Veneer_BringInLeaves"), ALL),
}  # fmt: skip
"""What opens each, and what goes under it."""


def forms(panel):
    """Those that are open: the panel's and its window's."""
    window = getattr(panel, "window", None)
    return [one for one in (panel.form, getattr(window, "form", None)) if one is not None]


@pytest.fixture
def pressed(settled):
    """Presses all there is to press; what the panel said meanwhile."""

    def press(panel, form, name):
        """Whether there was something of that name to press."""
        one = vars(form).get(name)
        if not isinstance(one, QtGui.QWidget) or one.isHidden() or not one.isEnabled():
            return False
        if isinstance(one, QtGui.QAbstractButton):
            one.click()
        elif isinstance(one, QtGui.QAbstractItemView) and one.model().rowCount():
            one.setCurrentIndex(one.model().index(0, 0))
            one.clicked.emit(one.model().index(0, 0))
            panel.delete()
        else:
            return False
        return True

    def pressed(panel):
        said = []
        for k, form in enumerate(forms(panel)):
            for name in [*vars(form)]:
                there = forms(panel)
                if k < len(there) and name not in LONG and press(panel, there[k], name):
                    settled(1)
                    said.append(panel.form.trouble.text() if panel.form is not None else "")
        return [text for text in said if text]

    return pressed


def deleted(doc, names):
    """In a step of its own, as the host deletes."""
    doc.openTransaction("Delete")
    for name in names:
        if doc.getObject(name) is not None:
            doc.removeObject(name)
    doc.commitTransaction()


@pytest.mark.parametrize("what", PANELS)
def test_each_button_after_what_it_needs_has_gone(user, opened, settled, pressed, boxes, what):
    open_it, *victims = PANELS[what]
    doc = opened()
    doc.UndoMode = 1
    names = {obj.Name for obj in doc.Objects}
    for victim in victims:
        open_it(doc)
        settled()
        (panel,) = base.shown()
        deleted(doc, [victim] if victim else [obj.Name for obj in doc.Objects])
        settled()
        said = pressed(panel) if panel in base.shown() else []
        doc.undo()
        settled()
        if panel in base.shown():
            said += pressed(panel)
        if panel in base.shown() and not panel.accept():
            said.append(panel.form.trouble.text())
            assert said[-1], "refused without a word"
            panel.reject()
        FreeCADGui.Control.closeDialog()
        settled()
        while doc.UndoCount and not names <= {obj.Name for obj in doc.Objects}:
            doc.undo()
        settled()
        assert names <= {obj.Name for obj in doc.Objects}, victim
        for text in (*said, *boxes):
            assert "does not know" not in text and text.endswith("."), (victim, text)
    open_it(doc)
    settled()
    assert base.shown()
    FreeCAD.closeDocument(doc.Name)
    if what == "bring in":  # which makes a document where there is none
        base.shown()[0].reject()
        FreeCADGui.Control.closeDialog()
    user.wait_for(lambda: not base.shown(), "the panel goes with its document")
    settled()

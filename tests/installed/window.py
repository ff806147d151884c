# SPDX-License-Identifier: LGPL-2.1-or-later
"""What an installed addon does in a window, for tests/gui/test_install.py: chooses the workbench,
opens the example and runs every command on it, then double clicks every object."""

import faulthandler
import json
import os
import sys
import traceback

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

FOLDER = os.environ["HOME"]
boxes = []


def answered(parent, title, text, *more):
    """In place of a box that waits for the user."""
    boxes.append(text)
    return QtGui.QMessageBox.Ok


def settle():
    for _ in range(40):
        QtGui.QApplication.processEvents()


def report():
    """All that is in the report view."""
    (view,) = [
        one
        for one in QtGui.QApplication.allWidgets()
        if "ReportOutput" in one.metaObject().className()
    ]
    return view.toPlainText()


def troubles():
    """What the form of the panel that is open says."""
    return [
        one.text()
        for one in QtGui.QApplication.allWidgets()
        if isinstance(one, QtGui.QLabel) and one.objectName() == "trouble" and one.isVisible()
    ]


def told(act):
    """What a user sees of something that is done: boxes, or the panel and what it says."""
    boxes.clear()
    act()
    settle()
    seen = {"boxes": list(boxes), "panel": bool(FreeCADGui.Control.activeDialog())}
    seen["troubles"] = [text for text in troubles() if text]
    if seen["panel"]:
        FreeCADGui.Control.closeDialog()
        settle()
    return seen


def run(command, doc):
    if not FreeCADGui.Command.get(command).isActive():
        return None
    seen = told(lambda: FreeCADGui.runCommand(command))
    FreeCAD.setActiveDocument(doc.Name)
    FreeCADGui.setActiveDocument(doc.Name)
    return seen


def found():
    result = {"started": sorted(one for one in sys.modules if one.split(".")[0] == "veneerwb")}
    result["workbench"] = FreeCADGui.activeWorkbench().name()
    for kind in ("warning", "critical", "information"):
        setattr(QtGui.QMessageBox, kind, staticmethod(answered))
    QtGui.QFileDialog.getExistingDirectory = staticmethod(lambda *_: FOLDER)
    QtGui.QFileDialog.getSaveFileName = staticmethod(
        lambda *_, **__: (os.path.join(FOLDER, "drawing.pdf"), "")
    )
    FreeCADGui.activateWorkbench("VeneerWorkbench")
    settle()
    import veneerwb

    root = os.path.dirname(os.path.dirname(os.path.abspath(veneerwb.__file__)))
    doc = FreeCAD.openDocument(os.path.join(root, "resources", "examples", "round-top.FCStd"))
    settle()
    match = doc.getObject("Match")
    result |= {"chosen": FreeCADGui.activeWorkbench().name(), "solids": [len(match.Shape.Solids)]}
    from veneerwb.gui.commands import COMMANDS

    names = [one.name for one in COMMANDS if one is not None]
    result["commands"] = {name: run(name, doc) for name in names}
    views = {one.Name: one.ViewObject for one in doc.Objects}
    result["double clicks"] = {
        name: told(lambda view=view: view.Proxy.doubleClicked(view))
        for name, view in views.items()
        if hasattr(getattr(view, "Proxy", None), "doubleClicked")
    }
    match.touch()
    doc.recompute()
    settle()
    result["solids"].append(len(match.Shape.Solids))
    return result | {"report": report(), "message": match.Message}


def when_ready():
    window = FreeCADGui.getMainWindow()
    if window is None or not window.isVisible():
        QtCore.QTimer.singleShot(50, when_ready)
        return
    try:
        result = found()
    except BaseException:
        result = {"failed": traceback.format_exc()}
    with open(os.environ["VENEERWB_TOLD"], "w", encoding="utf-8") as file:
        json.dump(result, file)
    os._exit(0)


faulthandler.dump_traceback_later(80, file=sys.__stderr__)  # where it hangs, if it does
QtCore.QTimer.singleShot(0, when_ready)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A document with one of each of our objects, opened as somebody's hand has changed it, and a user
who goes through every panel on it; no test leaves a traceback behind, or takes long."""

import re
import time
import zipfile

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.gui.commands import COMMANDS
from veneerwb.gui.panels import base
from veneerwb.host import spots
from veneerwb.host.objects import (
    add_bench,
    add_build_up,
    add_bundle,
    add_closing,
    add_drawing,
    add_facing,
    add_match,
    add_run,
    add_stock,
    layout,
)
from veneerwb.host.objects.base import kind_of

MOST_SECONDS = 10.0
"""Of the processor, for a panel."""
ELSEWHERE = (
    "Veneer_OpenExample", "Veneer_Help", "Veneer_BringInLeaves", "Veneer_NewRadialMatch",
    "Veneer_DrawMatch",
)  # fmt: skip
"""What these commands open is no document's, or is opened by others as well."""


@pytest.fixture(scope="session")
def kept(tmp_path_factory, eight_leaves):
    """The path of the document."""
    FreeCADGui.activateWorkbench("VeneerWorkbench")
    doc = FreeCAD.newDocument("Kept")
    bundle, stock = add_bundle(doc, eight_leaves), add_stock(doc, 300.0, 600.0, 16, 0.6)
    match = add_match(doc, bundle, Ways=6, Diameter=200.0)
    doc.recompute()
    spots.keep(match, layout(match), "Kept")
    add_closing(doc, match, Reading="each wedge", Wedges=[60.05] * 6, WedgesUnsure=[0.05] * 6)
    add_drawing(doc, match)
    add_bench(doc, match, Title="Six ways")
    built = add_match(doc, stock, Ways=8, Diameter=400.0)
    add_build_up(doc, built, CoreThickness=16.0, BorderWidth=30.0, BorderKind="following")
    block = doc.addObject("Part::Box", "Block")
    block.Length, block.Width, block.Height = 250.0, 19.0, 300.0
    doc.recompute()
    add_facing(doc, bundle.Leaves[0], [(block, "Face3")])
    add_run(doc, stock, [(block, "Face4")], Kind="Side by side")
    doc.recompute()
    assert [obj.Message for obj in doc.Objects if kind_of(obj) and obj.Message] == []
    path = tmp_path_factory.mktemp("kept") / "Kept.FCStd"
    doc.saveAs(str(path))
    FreeCAD.closeDocument(doc.Name)
    return path


@pytest.fixture
def opened(user, kept, tmp_path):
    """Opens the document; each keyword is a file in it, without its ending, and the function that
    changes its text, or gives None to leave it out."""

    def opened(**changes):
        path = tmp_path / "Kept.FCStd"
        with zipfile.ZipFile(kept) as old, zipfile.ZipFile(path, "w") as new:
            for one in old.infolist():
                data, change = old.read(one), changes.get(one.filename.removesuffix(".xml"))
                data = change(data.decode()) if change else data
                if data is not None:
                    new.writestr(one, data)
        return FreeCAD.openDocument(str(path))

    return opened


@pytest.fixture
def edited():
    """Changes what a file of a document says of a property: the function for `opened`."""

    def edited(obj, prop, old, new):
        def change(text):
            start = re.search(rf'<(?:Object|ViewProvider) name="{obj}"', text).start()
            start = text.index(f'<Property name="{prop}" type=', start)
            end = text.index("</Property>", start)
            found = re.sub(old, new, text[start:end], count=1, flags=re.DOTALL)
            assert found != text[start:end], (obj, prop)
            return text[:start] + found + text[end:]

        return change

    return edited


@pytest.fixture(autouse=True)
def boxes(monkeypatch):
    """What boxes of ours said; questions are answered with No. Nobody chooses a file."""
    said = []
    for kind in ("critical", "warning", "information", "question"):
        def box(*given):
            said.append(given[2])
            return QtGui.QMessageBox.No

        monkeypatch.setattr(QtGui.QMessageBox, kind, box)
    for name in ("getSaveFileName", "getOpenFileName"):
        monkeypatch.setattr(QtGui.QFileDialog, name, lambda *_: ("", ""))
    monkeypatch.setattr(QtGui.QFileDialog, "getOpenFileNames", lambda *_: ([], ""))
    monkeypatch.setattr(QtGui.QFileDialog, "getExistingDirectory", lambda *_: "")
    return said


@pytest.fixture(scope="session")
def report():
    """The host's report, when it is asked for."""

    def report():
        (found,) = [
            one for one in QtGui.QApplication.allWidgets()
            if isinstance(one, QtGui.QTextEdit) and one.objectName() == "Report view"
        ]  # fmt: skip
        return found

    return report


@pytest.fixture(autouse=True)
def quiet(report, capfd):
    """No traceback, in the host's report or elsewhere."""
    report().clear()
    yield
    for _ in range(5):
        QtGui.QApplication.processEvents()
    shown = report().toPlainText() + "".join(capfd.readouterr())
    assert "Traceback" not in shown and "Error:" not in shown, shown[-3000:]


@pytest.fixture
def settled():
    """Lets what was begun come to its end."""

    def settled(times=6):
        for _ in range(times):
            QtGui.QApplication.processEvents()
            QtCore.QThread.msleep(1)

    return settled


@pytest.fixture
def panels(user, settled):
    """Opens what the commands, and double clicks on objects named, open on a document, one after
    the other, and each of its tabs; `look` is called with what is open. What was looked at."""

    def leave():
        for panel in base.shown():
            panel.reject()
        if FreeCADGui.Control.activeDialog():
            FreeCADGui.Control.closeDialog()
        settled()

    def through(name, open_it, look):
        began = time.process_time()  # not by the clock, which runs on while others have the machine
        open_it()
        for _ in range(20):  # it opens once the host has done with the command
            settled()
            if base.shown():
                break
        settled()
        shown = base.shown()
        for panel in shown:
            look(panel)
            for tabs in [one for one in vars(panel.form).values() if type(one) is QtGui.QTabWidget]:
                for k in range(tabs.count()):
                    tabs.setCurrentIndex(k)
                    settled(2)
                look(panel)
        leave()
        assert time.process_time() - began < MOST_SECONDS, name
        return [name] * len(shown)

    def panels(doc, look=lambda panel: None, names=("Facing", "Run", "Drawing"), commands=""):
        looked = []
        for command in filter(None, COMMANDS):
            meant = [obj for obj in doc.Objects if kind_of(obj) in command.needs]
            if command.name in ELSEWHERE or commands not in command.name or not meant:
                continue
            FreeCADGui.Selection.clearSelection()
            for obj in meant[:1]:
                FreeCADGui.Selection.addSelection(obj)
            looked += through(command.name, lambda c=command: FreeCADGui.runCommand(c.name), look)
        for name in names:
            view = doc.getObject(name).ViewObject
            looked += through(name, lambda v=view: v.Proxy.doubleClicked(v), look)
        return looked

    return panels

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Asking where to save, and saying in a window of its own what went wrong."""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtGui

from veneerwb.gui.later import later
from veneerwb.gui.told import in_a_box, show_box
from veneerwb.host import compat, keeping
from veneerwb.host.objects.base import Refused, kind_of

translate = FreeCAD.Qt.translate
HERE = "VeneerSaving"


def save_drawing(obj: Any) -> None:
    """Asks for a file, saves the page of a Drawing there as PDF and says where that is, or why it
    was not saved."""
    title = translate(HERE, "Save drawing as PDF")
    name = obj.Label.replace("/", "-").replace("\\", "-")
    start = os.path.join(os.path.dirname(obj.Document.FileName), f"{name}.pdf")
    path, _ = QtGui.QFileDialog.getSaveFileName(
        FreeCADGui.getMainWindow(), title, start, "PDF (*.pdf)"
    )
    if not path:
        return
    if not path.lower().endswith(".pdf"):
        path += ".pdf"
        if os.path.exists(path) and not _may_replace(path, title):  # nobody asked about this one
            return
    with in_a_box(title):
        write(obj, path)
        text = translate(HERE, "The drawing was saved:\n{file}")
        show_box(title, text.format(file=path), "information")


def in_danger(doc: Any, text: str, path: str) -> None:
    """Says it in a window of its own, and that the document is not saved, so that closing it asks:
    later, for the host is still busy with saving it, perhaps before it closes it or ends. For that
    case it is set aside at once."""
    name, aside = doc.Name, keeping.set_aside(doc, path)

    def tell() -> None:
        if name in FreeCAD.listDocuments():
            said, document = text, FreeCAD.getDocument(name)
            for obj in document.Objects:
                if kind_of(obj) == "Bundle":
                    compat.count_as_unsaved(document, obj)
            if aside:
                shutil.rmtree(os.path.dirname(aside), ignore_errors=True)
        else:
            said = _closed(path, aside)
        show_box(translate(HERE, "Save document"), said, "critical")

    if not _ending:
        _ending.append(QtGui.QApplication.instance())
        _ending[0].aboutToQuit.connect(_tell)
    _untold.append(tell)
    later(_tell)


_untold: list[Callable[[], None]] = []
_ending: list[Any] = []
"""The application, whose end is waited for: nothing comes later then."""


def _tell() -> None:
    while _untold:
        _untold.pop(0)()


def _closed(path: str, aside: str) -> str:
    """What to say of a document that was closed and could not be saved."""
    text = translate(
        HERE,
        "{file} could not be saved, there was no room for all of it, and FreeCAD has closed it. "
        "What was new in it is lost.",
    )
    if aside:
        text = translate(
            HERE,
            "{file} could not be saved, there was no room for all of it, and FreeCAD has closed "
            "it. All that was in it was saved as {copy}; open that, make room, and save it under "
            "its own name.",
        )
    return text.format(file=os.path.basename(path), copy=aside)


def with_ending(path: str, ending: str) -> str:
    """The path with that ending. Refused where that names a file that is there already, for nobody
    was asked about that one."""
    if path.lower().endswith(ending):
        return path
    path += ending
    if os.path.exists(path):
        text = translate(HERE, "{file} is there already; give its whole name to replace it.")
        raise Refused(text.format(file=os.path.basename(path)))
    return path


def _may_replace(path: str, title: str) -> bool:
    asked = translate(HERE, "{name} is there already. Replace it?")
    answer = show_box(title, asked.format(name=os.path.basename(path)), "question")
    return answer == QtGui.QMessageBox.Yes


def write(obj: Any, path: str) -> None:
    """Brings the document up to date and saves the page of a Drawing as PDF. Raises Refused for a
    drawing that shows what is no longer so, VeneerError for a file that cannot be written."""
    from veneerwb.gui.drawing import save_pdf
    from veneerwb.host.objects.drawing import page_of

    obj.touch()
    compat.recompute(obj.Document)
    page = page_of(obj)
    if obj.Message or page is None:
        text = translate(HERE, "{name} is not up to date, and was not saved: {why}")
        raise Refused(text.format(name=obj.Label, why=obj.Message))
    save_pdf(page, path)

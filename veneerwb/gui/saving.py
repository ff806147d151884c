# SPDX-License-Identifier: LGPL-2.1-or-later
"""Asking where to save, and saying in a window of its own what went wrong."""

from __future__ import annotations

import os
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtGui

from veneerwb.host.objects.base import sentence

translate = FreeCAD.Qt.translate
HERE = "VeneerSaving"


def save_drawing(obj: Any) -> None:
    """Asks for a file and saves the page of a Drawing there as PDF."""
    title = translate(HERE, "Save drawing as PDF")
    start = os.path.join(os.path.dirname(obj.Document.FileName), f"{obj.Label}.pdf")
    path, _ = QtGui.QFileDialog.getSaveFileName(
        FreeCADGui.getMainWindow(), title, start, "PDF (*.pdf)"
    )
    if not path:
        return
    if not path.lower().endswith(".pdf"):
        path += ".pdf"
    try:
        write(obj, path)
    except Exception as error:
        QtGui.QMessageBox.warning(FreeCADGui.getMainWindow(), title, sentence(error))


def write(obj: Any, path: str) -> None:
    """Brings the document up to date and saves the page of a Drawing as PDF. Raises Refused for a
    drawing that shows what is no longer so, VeneerError for a file that cannot be written."""
    from veneerwb.gui.drawing import save_pdf
    from veneerwb.host.objects.base import Refused
    from veneerwb.host.objects.drawing import page_of

    obj.Document.recompute()
    if obj.Message:
        raise Refused(f"{obj.Label} is not up to date, and was not saved: {obj.Message}")
    save_pdf(page_of(obj), path)

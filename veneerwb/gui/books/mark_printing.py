# SPDX-License-Identifier: LGPL-2.1-or-later
"""Asking where to save the paper marks of a bundle, and writing them."""

from __future__ import annotations

import os
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtGui

from veneerwb.gui.saving import with_ending

translate = FreeCAD.Qt.translate
HERE = "VeneerMarksPanel"


def save_marks(obj: Any, per_leaf: int, paper: str) -> str:
    """Asks for a file and writes the marks for the leaves of a Bundle object there as PDF; what was
    written, in a sentence, "" if the user thought better of it. Raises VeneerError."""
    from veneerwb.paint.paper import targets_sheet

    title = translate(HERE, "Save the paper marks as PDF")
    name = obj.Label.replace("/", "-").replace("\\", "-")
    start = os.path.join(os.path.dirname(obj.Document.FileName), f"{name} marks.pdf")
    path, _ = QtGui.QFileDialog.getSaveFileName(
        FreeCADGui.getMainWindow(), title, start, "PDF (*.pdf)"
    )
    if not path:
        return ""
    path = with_ending(path, ".pdf")
    pages = targets_sheet(path, list(obj.Numbers), per_leaf, paper)
    said = translate(HERE, "Written: {file}, one page. Print it at 100 %.")
    if pages > 1:
        said = translate(HERE, "Written: {file}, {pages} pages. Print it at 100 %.")
    return said.format(file=os.path.basename(path), pages=pages)

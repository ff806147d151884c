# SPDX-License-Identifier: LGPL-2.1-or-later
"""Asking where to save the list by which the real stack is chalked."""

from __future__ import annotations

import os
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtGui

from veneerwb.gui.saving import with_ending

translate = FreeCAD.Qt.translate
HERE = "VeneerSaving"
ENDINGS = (".pdf", ".csv", ".txt")


def save_list(obj: Any, bundle: Any, proof: Any) -> None:
    """Asks for a file and writes the list for a Bundle object there, as its ending says: PDF, CSV
    or text. Raises VeneerError."""
    title = translate(HERE, "Save the list to chalk the stack by")
    name = obj.Label.replace("/", "-").replace("\\", "-")
    start = os.path.join(os.path.dirname(obj.Document.FileName), f"{name} to chalk.pdf")
    path, kind = QtGui.QFileDialog.getSaveFileName(
        FreeCADGui.getMainWindow(), title, start, ";;".join(kinds())
    )
    if path:
        write(obj, bundle, proof, ended(path, kind))


def kinds() -> tuple[str, ...]:
    """What the kinds of file are called, in the order of ENDINGS."""
    return "PDF (*.pdf)", "CSV (*.csv)", translate(HERE, "Text (*.txt)")


def ended(path: str, kind: str) -> str:
    """The path with the ending of the kind chosen, unless it has one of ours."""
    if os.path.splitext(path)[1].lower() in ENDINGS:
        return path
    ending = next((one for one in ENDINGS if f"*{one}" in kind), ENDINGS[0])
    return with_ending(path, ending)


def write(obj: Any, bundle: Any, proof: Any, path: str) -> None:
    """Writes the list: what to chalk on each leaf, and what the proof says of it."""
    from veneerwb.core import chalk
    from veneerwb.core.files import write_beside

    names = {leaf.Number: leaf.OriginalName for leaf in obj.Leaves if leaf.OriginalName}
    marks = chalk.chalk_list(bundle, proof, names, obj.TightSide)
    ending = os.path.splitext(path)[1].lower()
    if ending == ".csv":
        chalk.write_csv(marks, path)
    elif ending == ".txt":
        text = chalk.as_text(marks)
        write_beside(path, lambda stream: stream.write(text.encode("utf-8")))
    else:
        from veneerwb.paint.chalk import write_pdf

        title = translate(HERE, "{name}: what to chalk on the leaves").format(name=obj.Label)
        write_pdf(marks, title, path)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The shop drawing of the document that demo.py wrote, as PDF: runs in FreeCAD's window."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD

from veneerwb.core import VeneerError
from veneerwb.gui.drawing import save_pdf
from veneerwb.host.objects import add_drawing
from veneerwb.host.objects.drawing import page_of

OUT = Path(__file__).resolve().parents[2] / "out"


def main() -> None:
    doc = FreeCAD.openDocument(str(OUT / "round-top.FCStd"))
    drawing = add_drawing(doc, doc.getObject("Match"), Title="Round table top")
    doc.recompute()
    if drawing.Message:
        sys.exit(drawing.Message)
    save_pdf(page_of(drawing), OUT / "drawing.pdf")
    FreeCAD.closeDocument(doc.Name)


if __name__ == "__main__":
    try:
        main()
    except VeneerError as refused:
        sys.exit(str(refused))

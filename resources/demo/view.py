# SPDX-License-Identifier: LGPL-2.1-or-later
"""The 3-D view of the document that demo.py wrote, as a picture: runs in FreeCAD's window."""

from __future__ import annotations

from pathlib import Path

import FreeCAD
import FreeCADGui
from PySide import QtGui

OUT = Path(__file__).resolve().parents[2] / "out"


def main() -> None:
    doc = FreeCAD.openDocument(str(OUT / "round-top.FCStd"))
    view = FreeCADGui.getDocument(doc.Name).ActiveView
    view.viewIsometric()
    for _ in range(20):  # lets the window take its size and draw
        FreeCADGui.updateGui()
        QtGui.QApplication.processEvents()
    view.fitAll()
    view.saveImage(str(OUT / "view.png"), 1200, 800, "White")


if __name__ == "__main__":
    main()

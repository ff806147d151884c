# SPDX-License-Identifier: LGPL-2.1-or-later
"""The 3-D view of the document that demo.py wrote, as a picture: runs in FreeCAD's window."""

from __future__ import annotations

import math
from pathlib import Path

import FreeCAD
import FreeCADGui
import numpy as np
from PIL import Image
from pivy import coin
from PySide import QtGui

from veneerwb.core.photos.reading import save_png

OUT = Path(__file__).resolve().parents[2] / "out"


TILT = 40.0
"""Degrees that the view is tilted away from straight down."""


def main() -> None:
    doc = FreeCAD.openDocument(str(OUT / "round-top.FCStd"))
    view = FreeCADGui.getDocument(doc.Name).ActiveView
    for _ in range(20):  # lets the window take its size and draw
        FreeCADGui.updateGui()
        QtGui.QApplication.processEvents()
    across = doc.getObject("Match").Shape.BoundBox.XLength
    camera = view.getCameraNode()
    tilt = math.radians(TILT)
    camera.orientation.setValue(coin.SbVec3f(1.0, 0.0, 0.0), tilt)
    camera.position.setValue(0.0, -2.0 * across * math.sin(tilt), 2.0 * across * math.cos(tilt))
    camera.nearDistance, camera.farDistance = 0.1 * across, 4.0 * across
    camera.height = 1.08 * across * math.cos(tilt)
    view.saveImage(str(OUT / "view.png"), 810, 600, "White")
    with Image.open(OUT / "view.png") as image:  # the host notes the file's path in it
        pixels = np.asarray(image.convert("RGB"))
    save_png(OUT / "view.png", pixels)


if __name__ == "__main__":
    main()

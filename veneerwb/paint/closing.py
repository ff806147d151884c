# SPDX-License-Identifier: LGPL-2.1-or-later
"""The closing of a ring as pictures for a screen: drawn enlarged or to scale, or with its leaves'
own figure as it will look."""

from __future__ import annotations

from veneerwb.core.leaf import Bundle
from veneerwb.core.shop.closing import Closing
from veneerwb.core.shop.drawing.drawn import Drawing
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages import closing_figures as figures
from veneerwb.paint.gallery import pictured
from veneerwb.paint.pdf import draw
from veneerwb.paint.qt import QtCore, QtGui, application
from veneerwb.words import marked, say

SIDE = 72.0
"""mm of the drawing that fill the picture: its letters are of 2.5 mm."""
KINDS = marked("enlarged"), marked("to scale"), marked("as it will look")


def kinds(closing: Closing) -> tuple[str, ...]:
    """The pictures that there are of it."""
    return KINDS if isinstance(closing.layout.bundle, Bundle) else KINDS[:2]


def image(closing: Closing, kind: str, pixels: int) -> tuple[QtGui.QImage, str]:
    """The picture, `pixels` wide and high, and how large it is drawn: "10 times", "1:20"."""
    application()
    if kind == KINDS[2]:
        found = pictured(closing.trued, pixels)
        return found, ""
    drawing, box = Drawing(SIDE, SIDE), Box(0.0, 0.0, SIDE, SIDE)
    if kind == KINDS[0]:
        times = figures.enlarged(drawing, box, closing.at, closing.angles)
        said = say("{times} times", times=times)
    else:
        said = str(figures.to_scale(drawing, box, closing))
    canvas = QtGui.QImage(pixels, pixels, QtGui.QImage.Format_ARGB32_Premultiplied)
    canvas.fill(QtCore.Qt.white)
    painter = QtGui.QPainter(canvas)
    try:
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        draw(painter, drawing, pixels / SIDE)
    finally:
        painter.end()
    return canvas, said

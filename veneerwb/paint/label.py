# SPDX-License-Identifier: LGPL-2.1-or-later
"""Small labels as pixels, to be put on things in the 3-D view."""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from veneerwb.paint import ink
from veneerwb.paint.qt import QtCore, QtGui, application, to_pixels

HEIGHT = 96
"""Pixels of a line; the width follows from the text."""
SMALL = 0.62
"""The height of a second line, as a share of that."""
INK, PAPER = (20, 20, 20), (255, 255, 255)
MIDDLE = 128
"""Letters at least so light stand on dark."""


@lru_cache(maxsize=256)
def label(
    text: str, underlined: bool = False, below: str = "", rgb: tuple[int, int, int] = INK
) -> np.ndarray:
    """Bold letters on white (light ones on black), and a line of smaller ones below if there is to
    be one: uint8 rows x columns x 3, read-only."""
    application()
    font, small = _font(0.72 * HEIGHT), _font(0.84 * SMALL * HEIGHT)
    box = QtGui.QFontMetricsF(font).boundingRect(text)
    under = QtGui.QFontMetricsF(small).boundingRect(below)
    wide = max(box.width() + 0.45 * HEIGHT, under.width() + 0.25 * HEIGHT)
    high = round((1.0 + SMALL) * HEIGHT) if below else HEIGHT
    image = QtGui.QImage(max(HEIGHT, round(wide)), high, QtGui.QImage.Format_RGB32)
    image.fill(QtGui.QColor(*(PAPER if ink.lightness(rgb) < MIDDLE else INK)))
    painter = QtGui.QPainter(image)
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    painter.setRenderHint(QtGui.QPainter.TextAntialiasing)
    painter.setPen(QtGui.QPen(QtGui.QColor(*rgb), 4))
    painter.drawRect(QtCore.QRectF(2, 2, image.width() - 4, high - 4))
    painter.setFont(font)
    middle = QtCore.QRectF(0, -0.03 * HEIGHT, image.width(), HEIGHT)
    painter.drawText(middle, QtCore.Qt.AlignCenter, text)
    if underlined:
        half, y = 0.5 * box.width() + 2, 0.86 * HEIGHT
        painter.fillRect(
            QtCore.QRectF(0.5 * image.width() - half, y, 2 * half, 0.08 * HEIGHT),
            QtGui.QColor(*rgb),
        )
    painter.setFont(small)
    rest = QtCore.QRectF(0, 0.96 * HEIGHT, image.width(), SMALL * HEIGHT)
    painter.drawText(rest, QtCore.Qt.AlignCenter, below)
    painter.end()
    pixels = np.ascontiguousarray(to_pixels(image)[..., :3])
    pixels.setflags(write=False)
    return pixels


def _font(high: float) -> QtGui.QFont:
    font = QtGui.QFont("sans-serif")
    font.setPixelSize(round(high))
    font.setBold(True)
    return font

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Small labels as pixels, to be put on things in the 3-D view."""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from veneerwb.paint.qt import QtCore, QtGui, application, to_pixels

HEIGHT = 96
"""Pixels; the width follows from the text."""
INK, PAPER = (20, 20, 20), (255, 255, 255)


@lru_cache(maxsize=256)
def label(text: str, underlined: bool = False) -> np.ndarray:
    """Dark bold letters on white, uint8 HEIGHT x columns x 3, read-only."""
    application()
    font = QtGui.QFont("sans-serif")
    font.setPixelSize(round(0.72 * HEIGHT))
    font.setBold(True)
    box = QtGui.QFontMetricsF(font).boundingRect(text)
    image = QtGui.QImage(
        max(HEIGHT, round(box.width() + 0.45 * HEIGHT)), HEIGHT, QtGui.QImage.Format_RGB32
    )
    image.fill(QtGui.QColor(*PAPER))
    painter = QtGui.QPainter(image)
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    painter.setRenderHint(QtGui.QPainter.TextAntialiasing)
    painter.setPen(QtGui.QPen(QtGui.QColor(*INK), 4))
    painter.drawRect(QtCore.QRectF(2, 2, image.width() - 4, HEIGHT - 4))
    painter.setFont(font)
    middle = QtCore.QRectF(0, -0.03 * HEIGHT, image.width(), HEIGHT)
    painter.drawText(middle, QtCore.Qt.AlignCenter, text)
    if underlined:
        half, y = 0.5 * box.width() + 2, 0.86 * HEIGHT
        painter.fillRect(
            QtCore.QRectF(0.5 * image.width() - half, y, 2 * half, 0.08 * HEIGHT),
            QtGui.QColor(*INK),
        )
    painter.end()
    pixels = np.ascontiguousarray(to_pixels(image)[..., :3])
    pixels.setflags(write=False)
    return pixels

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A top as it is laid, on a picture of a window."""

from __future__ import annotations

from typing import Any

import FreeCAD
from PySide import QtCore, QtGui

from veneerwb.gui.canvas import Hand
from veneerwb.paint import ink

translate = FreeCAD.Qt.translate
HERE = "VeneerChoices"


class RingHand(Hand):
    """The picture of a layout, as large as its place."""

    def __init__(self, layout: Any) -> None:
        self.layout = layout
        self._made: tuple[float, QtGui.QImage] | None = None

    def scale(self, size: tuple[int, int]) -> float:
        """Pixels of the window for a mm; the top's origin is in the middle."""
        x0, y0, x1, y1 = self.layout.top.polygon_mm.bounds
        return 0.485 * min(size[0] / max(-x0, x1), size[1] / max(-y0, y1))

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        if self.layout is None:
            ink.say(painter, size, translate(HERE, "Too few leaves for a ring."))
            return
        ratio = ink.ratio_of(painter)
        scale = self.scale(size) * ratio
        if self._made is None or self._made[0] != scale:
            self._made = scale, self._picture(scale)
        image = self._made[1]
        image.setDevicePixelRatio(ratio)
        left, top = (size[0] - image.width() / ratio) / 2, (size[1] - image.height() / ratio) / 2
        painter.drawImage(QtCore.QPointF(left, top), image)

    def _picture(self, scale: float) -> QtGui.QImage:
        from veneerwb.paint import picture

        pixels = picture(self.layout, scale)
        rows, columns = pixels.shape[:2]
        return QtGui.QImage(
            pixels.data, columns, rows, pixels.strides[0], QtGui.QImage.Format_RGBA8888
        ).copy()

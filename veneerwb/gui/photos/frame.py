# SPDX-License-Identifier: LGPL-2.1-or-later
"""A picture in several sizes, and where it lies in the widget that shows it.

Places on a picture are (column, row), pixel centres at half-integers: the picture of R rows and C
columns reaches from (0, 0) to (C, R). Nothing here knows of events or widgets.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from PIL import Image
from PySide import QtCore, QtGui

Place = tuple[float, float]

SMALL = 500_000
"""Pixels: no size smaller than about this is kept."""
CLOSEST = 40.0
"""Widget pixels that a picture's pixel has at most."""
FURTHEST = 0.25
"""How much smaller than the widget a picture may become."""
STILL_SMOOTH = 3.0
"""Widget pixels from which on a picture's pixels are shown as the squares they are."""


class Picture:
    """Pixels, uint8 rows x columns x 3, and smaller copies of them, each half the one before, so
    that drawing takes as long as what is seen needs, not what was photographed.

    `mm_per_px` is the scale, if it is known. The pixels are kept, not copied. A picture may lie on
    a `paper` (columns, rows) of its own, on which several are laid over each other: `onto` is then
    (a, b, c, d, e, f), the place (x, y) of the picture lying at (a x + b y + c, d x + e y + f), and
    places are those on the paper throughout, as is the scale.
    """

    def __init__(
        self,
        pixels: np.ndarray,
        mm_per_px: float | None = None,
        paper: tuple[int, int] | None = None,
        onto: tuple[float, ...] = (1.0, 0.0, 0.0, 0.0, 1.0, 0.0),
    ) -> None:
        self.pixels = np.ascontiguousarray(pixels)
        self.mm_per_px = mm_per_px
        rows, columns = self.pixels.shape[:2]
        self.size = paper or (columns, rows)
        a, b, c, d, e, f = onto
        self.onto = QtGui.QTransform(a, d, b, e, c, f)
        self._memory: list[object] = []  # what the images lie in

    def nearest(self, place: Place) -> Place:
        """The place itself, or the nearest on the picture."""
        columns, rows = self.size
        return min(max(place[0], 0.0), float(columns)), min(max(place[1], 0.0), float(rows))

    def mm(self, place: Place) -> Place | None:
        """The place in mm from the picture's lower left, if its scale is known."""
        if self.mm_per_px is None:
            return None
        return place[0] * self.mm_per_px, (self.size[1] - place[1]) * self.mm_per_px

    def place(self, mm: Place) -> Place:
        """The place (column, row) of a point in mm. The scale must be known."""
        return mm[0] / self.mm_per_px, self.size[1] - mm[1] / self.mm_per_px

    @cached_property
    def images(self) -> list[QtGui.QImage]:
        """The sizes as Qt's images; a pixel of the k-th is 2^k of the picture's."""
        made, pixels = [self._image(self.pixels)], Image.fromarray(self.pixels)
        while pixels.width * pixels.height > 4 * SMALL:
            pixels = pixels.reduce(2)
            made.append(self._image(np.asarray(pixels)))
        return made

    def _image(self, pixels: np.ndarray) -> QtGui.QImage:
        self._memory.append(pixels)
        rows, columns = pixels.shape[:2]
        return QtGui.QImage(pixels.data, columns, rows, 3 * columns, QtGui.QImage.Format_RGB888)

    def draw(self, painter: QtGui.QPainter, frame: Frame, width: float, height: float) -> None:
        """Draws what a widget `width` x `height` sees of the picture."""
        images = self.images
        level = min(len(images) - 1, max(0, math.floor(-math.log2(frame.zoom) + 1e-9)))
        image, factor = images[level], 2**level
        to_widget = QtGui.QTransform.fromScale(factor, factor) * self.onto * frame.transform
        seen = to_widget.inverted()[0].mapRect(QtCore.QRectF(0.0, 0.0, width, height))
        left, top = max(0, math.floor(seen.left()) - 1), max(0, math.floor(seen.top()) - 1)
        right = min(image.width(), math.ceil(seen.right()) + 1)
        bottom = min(image.height(), math.ceil(seen.bottom()) + 1)
        if right <= left or bottom <= top:
            return
        painter.save()
        painter.setRenderHint(QtGui.QPainter.SmoothPixmapTransform, frame.zoom < STILL_SMOOTH)
        painter.setTransform(to_widget, True)
        window = QtCore.QRectF(left, top, right - left, bottom - top)
        painter.drawImage(window.topLeft(), image, window)
        painter.restore()


@dataclass
class Frame:
    """Where the picture lies: `zoom` widget pixels for each of its pixels, and the place
    (`column`, `row`) that is seen at the widget's upper left."""

    zoom: float = 1.0
    column: float = 0.0
    row: float = 0.0
    fitted: bool = True
    """Whether the whole picture is to stay in sight when the widget changes its size."""

    @property
    def transform(self) -> QtGui.QTransform:
        """From the picture to the widget."""
        zoom = self.zoom
        return QtGui.QTransform(zoom, 0.0, 0.0, zoom, -self.column * zoom, -self.row * zoom)

    def to_widget(self, place: Place) -> Place:
        return (place[0] - self.column) * self.zoom, (place[1] - self.row) * self.zoom

    def to_picture(self, at: Place) -> Place:
        return self.column + at[0] / self.zoom, self.row + at[1] / self.zoom

    def fit(self, picture: Place, widget: Place) -> None:
        """Shows the whole of a picture (columns, rows) in the middle of a widget."""
        self.zoom = self._fitting(picture, widget)
        self.column = (picture[0] - widget[0] / self.zoom) / 2
        self.row = (picture[1] - widget[1] / self.zoom) / 2
        self.fitted = True

    def zoom_to(self, zoom: float, at: Place, picture: Place, widget: Place) -> None:
        """Another zoom, with what lies at `at` on the widget staying there."""
        least = FURTHEST * self._fitting(picture, widget)
        there = self.to_picture(at)
        self.zoom = min(max(zoom, least), max(CLOSEST, least))
        self.column, self.row = there[0] - at[0] / self.zoom, there[1] - at[1] / self.zoom
        self.fitted = False
        self._keep_in_sight(picture, widget)

    def move(self, across: float, down: float, picture: Place, widget: Place) -> None:
        """Moves the picture by so many widget pixels."""
        self.column -= across / self.zoom
        self.row -= down / self.zoom
        self.fitted = False
        self._keep_in_sight(picture, widget)

    def show(self, place: Place, picture: Place, widget: Place) -> None:
        """Moves the picture, if it must, so that a place is seen well away from the edge."""
        at = self.to_widget(place)
        edge = [0.1 * side for side in widget]
        if all(e <= a <= side - e for a, e, side in zip(at, edge, widget)):
            return
        self.column, self.row = (p - side / 2 / self.zoom for p, side in zip(place, widget))
        self.fitted = False
        self._keep_in_sight(picture, widget)

    @staticmethod
    def _fitting(picture: Place, widget: Place) -> float:
        return max(1e-6, min(0.98 * side / most for side, most in zip(widget, picture)))

    def _keep_in_sight(self, picture: Place, widget: Place) -> None:
        """The middle of the widget stays on the picture, so that it cannot be lost."""
        middle = self.to_picture((widget[0] / 2, widget[1] / 2))
        self.column += min(max(middle[0], 0.0), picture[0]) - middle[0]
        self.row += min(max(middle[1], 0.0), picture[1]) - middle[1]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Leaves laid on each other, as one pages through them: what a window of a given size shows."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from veneerwb.core.leaf import Side
from veneerwb.core.plane import Motion
from veneerwb.paint import ink
from veneerwb.paint.qt import QtCore, QtGui, application, from_pixels
from veneerwb.paint.texture import texture

MOST_ZOOM = 40.0
"""Pixels of the window per mm: nobody needs to see more."""
TABLE = (236, 236, 234)
"""Beyond the leaf."""
HALO = 255, 255, 255
GAIN = 3
"""How much more strongly a difference is shown than it is."""


@dataclass(frozen=True)
class Viewport:
    """What is seen: the point `centre` (mm) in the middle of a window of `size` pixels (columns,
    rows), at `px_per_mm`."""

    centre: tuple[float, float]
    px_per_mm: float
    size: tuple[int, int]

    @staticmethod
    def fitting(bounds: Sequence[float], size: tuple[int, int], air: float = 0.03) -> Viewport:
        """All that lies within `bounds` (x0, y0, x1, y1 in mm), with a little air round it."""
        x0, y0, x1, y1 = bounds
        scale = min(size[0] / max(x1 - x0, 1.0), size[1] / max(y1 - y0, 1.0)) * (1.0 - 2.0 * air)
        return Viewport(((x0 + x1) / 2, (y0 + y1) / 2), min(MOST_ZOOM, scale), size)

    def to_px(self, point: Sequence[float]) -> tuple[float, float]:
        """Where a point (mm) lies in the window."""
        x, y = point
        return (
            self.size[0] / 2 + (x - self.centre[0]) * self.px_per_mm,
            self.size[1] / 2 - (y - self.centre[1]) * self.px_per_mm,
        )

    def to_mm(self, at: Sequence[float]) -> tuple[float, float]:
        """The point (mm) under a pixel of the window."""
        column, row = at
        return (
            self.centre[0] + (column - self.size[0] / 2) / self.px_per_mm,
            self.centre[1] - (row - self.size[1] / 2) / self.px_per_mm,
        )

    def resized(self, size: tuple[int, int]) -> Viewport:
        """The same middle at the same scale in another window."""
        return replace(self, size=size)

    def panned(self, across: float, down: float) -> Viewport:
        """As after dragging the picture by so many pixels."""
        x, y = self.centre
        return replace(self, centre=(x - across / self.px_per_mm, y + down / self.px_per_mm))

    def zoomed(self, factor: float, at: Sequence[float]) -> Viewport:
        """Larger by `factor`, the point under the pixel `at` kept there."""
        scale = min(MOST_ZOOM, max(1e-3, self.px_per_mm * factor))
        x, y = self.to_mm(at)
        share = self.px_per_mm / scale
        centre = x + (self.centre[0] - x) * share, y + (self.centre[1] - y) * share
        return replace(self, centre=centre, px_per_mm=scale)

    @property
    def transform(self) -> QtGui.QTransform:
        """mm to pixels of the window (down)."""
        x, y = self.to_px((0.0, 0.0))
        return QtGui.QTransform(self.px_per_mm, 0.0, 0.0, -self.px_per_mm, x, y)


@dataclass(frozen=True)
class Sheet:
    """A side of a leaf as it is laid: `view` takes mm of the stack to mm on the photograph."""

    side: Side
    view: Motion


def draw_page(painter: QtGui.QPainter, sheet: Sheet, viewport: Viewport) -> None:
    """One leaf alone."""
    _table(painter, viewport)
    _lay(painter, sheet, viewport)


def draw_halves(
    painter: QtGui.QPainter, left: Sheet, right: Sheet, viewport: Viewport, split: float = 0.5
) -> None:
    """Two leaves side by side on the same place: one left of the line at the share `split` of the
    window's width, the other right of it."""
    _table(painter, viewport)
    width, height = viewport.size
    middle = round(width * split)
    for sheet, x, columns in ((left, 0, middle), (right, middle, width - middle)):
        painter.setClipRect(QtCore.QRect(x, 0, columns, height))
        _lay(painter, sheet, viewport)
    painter.setClipping(False)
    for colour, pen in ((HALO, 3.0), (ink.mark(), 1.0)):
        painter.setPen(QtGui.QPen(QtGui.QColor(*colour), pen))
        painter.drawLine(middle, 0, middle, height)


def draw_difference(
    painter: QtGui.QPainter, one: Sheet, other: Sheet, viewport: Viewport
) -> None:
    """Where two leaves differ in lightness: white where they are alike, dark where they are not,
    GAIN times as strongly; grey where only one of them lies."""
    (a, in_a), (b, in_b) = (_lightness(sheet, viewport) for sheet in (one, other))
    apart = np.clip(255 - GAIN * np.abs(a - b), 0, 255)
    apart[in_a != in_b] = 200
    apart[~(in_a | in_b)] = TABLE[0]
    grey = apart.astype(np.uint8)
    pixels = np.dstack((grey, grey, grey, np.full_like(grey, 255)))
    painter.drawImage(0, 0, from_pixels(np.ascontiguousarray(pixels)).copy())


def _lightness(sheet: Sheet, viewport: Viewport) -> tuple[np.ndarray, np.ndarray]:
    """The lightness of a page, int16, and where the leaf lies."""
    width, height = viewport.size
    pixels = np.zeros((height, width, 4), np.uint8)
    image = QtGui.QImage(
        pixels.data, width, height, 4 * width, QtGui.QImage.Format_ARGB32_Premultiplied
    )
    painter = QtGui.QPainter(image)
    _lay(painter, sheet, viewport)
    painter.end()
    blue, green, red, there = (pixels[..., k].astype(np.int32) for k in range(4))
    return ((29 * blue + 150 * green + 77 * red) >> 8).astype(np.int16), there > 250


def _table(painter: QtGui.QPainter, viewport: Viewport) -> None:
    painter.fillRect(QtCore.QRect(0, 0, *viewport.size), QtGui.QColor(*TABLE))


def _lay(painter: QtGui.QPainter, sheet: Sheet, viewport: Viewport) -> None:
    photo = sheet.side.image
    seen = viewport.px_per_mm * ink.ratio_of(painter) * photo.mm_per_px
    factor = max(1, int(1.0 / seen))
    texel = photo.mm_per_px * factor
    shown = texture(photo, factor).image
    to_mm = QtGui.QTransform(texel, 0.0, 0.0, -texel, 0.0, photo.size[1])
    back = sheet.view.inverse()
    a, b, d, e = back.matrix
    onto_stack = QtGui.QTransform(a, d, b, e, back.dx, back.dy)
    # Seen much larger than it is, a photograph shows its own pixels.
    painter.setRenderHint(QtGui.QPainter.SmoothPixmapTransform, seen < 4.0)
    painter.setTransform(to_mm * onto_stack * viewport.transform)
    painter.drawImage(0, 0, shown)
    painter.resetTransform()


def cross(
    painter: QtGui.QPainter, at: Sequence[float], reach: float = 14.0, gap: float = 4.0
) -> None:
    """An open cross at a pixel, seen on light and on dark wood; it lies aslant, so that it does not
    cover a drift along the grain or across."""
    x, y = at
    lines = [
        QtCore.QLineF(x + s * gap * dx, y + s * gap * dy, x + s * reach * dx, y + s * reach * dy)
        for dx, dy in ((0.7, 0.7), (0.7, -0.7)) for s in (-1, 1)
    ]
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    for colour, width in ((HALO, 5.0), (ink.mark(), 2.0)):
        painter.setPen(QtGui.QPen(QtGui.QColor(*colour), width))
        painter.drawLines(lines)


def trail(painter: QtGui.QPainter, places: Sequence[Sequence[float]]) -> None:
    """The way of a point from leaf to leaf, in pixels: a thin line with a dot for each leaf."""
    points = [QtCore.QPointF(*place) for place in places]
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    for colour, width in ((HALO, 3.0), (ink.mark(), 1.0)):
        painter.setPen(QtGui.QPen(QtGui.QColor(*colour), width))
        painter.drawPolyline(QtGui.QPolygonF(points))
    painter.setBrush(ink.colour(ink.mark()))
    for point in points:
        painter.drawEllipse(point, 2.0, 2.0)
    painter.setBrush(QtCore.Qt.NoBrush)


def name(painter: QtGui.QPainter, at: Sequence[float], text: str) -> None:
    """A letter or two beside a cross at a pixel."""
    application()
    path = QtGui.QPainterPath()
    path.addText(QtCore.QPointF(at[0] + 8, at[1] - 8), ink.font(16, bold=True), text)
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    painter.strokePath(path, QtGui.QPen(QtGui.QColor(*HALO), 4.0))
    painter.fillPath(path, ink.colour(ink.mark()))

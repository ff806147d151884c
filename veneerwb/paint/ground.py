# SPDX-License-Identifier: LGPL-2.1-or-later
"""A leaf seen whole, in grey, to draw on: where the good spots lie, and what is cut where."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from veneerwb.core.leaf import Bundle, Leaves
from veneerwb.core.raster import Frame
from veneerwb.paint import ink
from veneerwb.paint.picture import qt_polygon, qt_transform
from veneerwb.paint.qt import QtCore, QtGui
from veneerwb.paint.texture import texture

RAMP = np.array([(8, 29, 88), (61, 78, 112), (118, 121, 119), (181, 170, 104), (255, 236, 74)])
"""Weak to strong: dark blue to yellow, ever lighter, so that it reads without red and green, and
without any colour."""
OPAQUE = 205
DIM = (255, 255, 255, 120)
AIR = 6.0
CUT = ((0, 114, 178), (213, 94, 0), (0, 158, 115), (204, 121, 167), (86, 180, 233), (230, 159, 0))
"""Colours told apart by all eyes, for cuts through sub-stacks."""


@dataclass(frozen=True)
class Ground:
    """A leaf's rectangle of `width` x `length` mm in `size` pixels, lying on its side where it is
    larger so: then along the grain is to the right, across is down."""

    width: float
    length: float
    size: tuple[int, int]
    margins: tuple[float, float, float, float] = (AIR, AIR, AIR, AIR)
    """Pixels left free at the left, the top, the right, the bottom."""

    @property
    def _room(self) -> tuple[float, float, float, float]:
        left, top, right, bottom = self.margins
        width, height = self.size
        return left, top, max(1.0, width - left - right), max(1.0, height - top - bottom)

    @property
    def lying(self) -> bool:
        *_, width, height = self._room
        upright = min(width / self.width, height / self.length)
        return min(width / self.length, height / self.width) > upright

    @property
    def to_canvas(self) -> QtGui.QTransform:
        """Bundle mm to pixels."""
        left, top, width, height = self._room
        if self.lying:
            scale = min(width / self.length, height / self.width)
            left += (width - scale * self.length) / 2
            top += (height - scale * self.width) / 2
            return QtGui.QTransform(0.0, scale, scale, 0.0, left, top)
        scale = min(width / self.width, height / self.length)
        left += (width - scale * self.width) / 2
        bottom = top + (height + scale * self.length) / 2
        return QtGui.QTransform(scale, 0.0, 0.0, -scale, left, bottom)

    def mm(self, x: float, y: float) -> tuple[float, float]:
        """The place of the bundle at a pixel."""
        at = self.to_canvas.inverted()[0].map(QtCore.QPointF(x, y))
        return at.x(), at.y()

    def pixel(self, x: float, y: float) -> tuple[float, float]:
        at = self.to_canvas.map(QtCore.QPointF(x, y))
        return at.x(), at.y()


def ground_of(bundle: Leaves, size: tuple[int, int], margins: Sequence[float]) -> Ground:
    width, length = bundle.size
    return Ground(float(width), float(length), size, tuple(margins))


def draw_leaf(painter: QtGui.QPainter, ground: Ground, bundle: Leaves, number: int) -> None:
    """A leaf's face in grey, or plain where there is no photograph."""
    corners = [(0, 0), (ground.width, 0), (ground.width, ground.length), (0, ground.length)]
    outline = qt_polygon(corners, ground.to_canvas)
    painter.setPen(QtGui.QPen(ink.colour(ink.FAINT), 1))
    painter.setBrush(ink.colour((214, 210, 204)))
    painter.drawPolygon(outline)
    if not isinstance(bundle, Bundle):
        return
    side = bundle.leaf(number).side(False)
    px_per_mm = abs(ground.to_canvas.determinant()) ** 0.5 * ink.ratio_of(painter)
    factor = max(1, int(1.0 / (px_per_mm * side.mm_per_px)))
    made = texture(side.image, factor)
    texel = side.mm_per_px * factor
    to_mm = QtGui.QTransform(texel, 0.0, 0.0, -texel, 0.0, side.image.size[1])
    painter.save()
    painter.setRenderHint(QtGui.QPainter.SmoothPixmapTransform)
    place = to_mm * qt_transform(side.view.inverse()) * ground.to_canvas
    painter.setTransform(place, True)
    painter.drawImage(0, 0, made.image.convertToFormat(QtGui.QImage.Format_Grayscale8))
    painter.restore()


def shade(share: Any) -> np.ndarray:
    """Colours (..., 3) of shares from 0, weak, to 1, strong."""
    at = np.clip(np.asarray(share, float), 0.0, 1.0)
    stops = np.linspace(0.0, 1.0, len(RAMP))
    return np.stack([np.interp(at, stops, RAMP[:, k]) for k in range(3)], axis=-1)


def shares_of(scores: np.ndarray) -> np.ndarray:
    """Scores as shares of the range from that which a tenth of them stay below to the best, which
    is 1; NaN where nothing fits."""
    fits = np.isfinite(scores)
    out = np.full(scores.shape, np.nan)
    if fits.any():
        low, high = np.quantile(scores[fits], 0.1), scores[fits].max()
        out[fits] = np.clip(1.0 - (high - scores[fits]) / max(high - low, 1e-9), 0.0, 1.0)
    return out


def heat(scores: np.ndarray) -> QtGui.QImage:
    """Scores (rows x columns, row 0 at the bottom; -inf: nothing fits) as an image, row 0 at the
    bottom too: clear where nothing fits."""
    shares = shares_of(scores)
    fits = np.isfinite(shares)
    out = np.zeros((*shares.shape, 4), np.uint8)
    out[..., :3] = shade(np.where(fits, shares, 0.0))[..., ::-1].round()
    out[..., 3] = np.where(fits, OPAQUE, 0)
    out = np.ascontiguousarray(out)
    rows, columns = shares.shape
    image = QtGui.QImage(out.data, columns, rows, 4 * columns, QtGui.QImage.Format_ARGB32)
    return image.copy()


def draw_heat(painter: QtGui.QPainter, ground: Ground, image: QtGui.QImage, frame: Frame) -> None:
    """The image of scores on the cells of `frame` over a leaf, whose rest is veiled."""
    painter.save()
    corners = [(0, 0), (ground.width, 0), (ground.width, ground.length), (0, ground.length)]
    clip = QtGui.QPainterPath()
    clip.addPolygon(qt_polygon(corners, ground.to_canvas))
    painter.setClipPath(clip)
    painter.fillPath(clip, QtGui.QColor(*DIM))
    cells = QtGui.QTransform(frame.cell, 0.0, 0.0, frame.cell, frame.x0, frame.y0)
    painter.setTransform(cells * ground.to_canvas, True)
    painter.drawImage(0, 0, image)
    painter.restore()


def draw_dots(
    painter: QtGui.QPainter, ground: Ground, places: Iterable[tuple[float, float]],
    chosen: int | None = None,
) -> None:
    """Numbered dots at places of the bundle (mm), the first on top."""
    painter.setFont(ink.font(10, bold=True))
    for k, place in reversed(list(enumerate(places))):
        x, y = ground.pixel(*place)
        painter.setPen(QtGui.QPen(ink.colour(ink.INK), 1.2))
        painter.setBrush(ink.colour(ink.mark() if k == chosen else ink.PAPER))
        painter.drawEllipse(QtCore.QPointF(x, y), 8.0, 8.0)
        painter.setPen(ink.colour(ink.PAPER if k == chosen else ink.INK))
        ink.write(painter, str(k + 1), (x - 12, y - 9, 24, 18))


def draw_legend(
    painter: QtGui.QPainter, box: tuple[float, float, float, float], weak: str, strong: str,
) -> None:
    """The ramp, a word at either end."""
    x, y, width, height = box
    painter.setFont(ink.font())
    painter.setPen(ink.colour(ink.INK))
    left, right = (ink.width_of(painter, f" {word} ") for word in (weak, strong))
    ink.write(painter, weak, (x, y, left, height), "left")
    ink.write(painter, strong, (x + width - right, y, right, height), "right")
    bar = QtCore.QRectF(x + left, y + 2, max(10.0, width - left - right), height - 4)
    ramp = QtGui.QLinearGradient(bar.left(), 0.0, bar.right(), 0.0)
    for k, rgb in enumerate(RAMP.tolist()):
        ramp.setColorAt(k / (len(RAMP) - 1), QtGui.QColor(*rgb))
    painter.fillRect(bar, QtGui.QBrush(ramp))


def draw_cuts(
    painter: QtGui.QPainter, ground: Ground, outlines: Sequence[Any], groups: Sequence[int],
    names: Sequence[str],
) -> None:
    """Cuts (shapely, bundle mm), coloured by their group and named in their middles."""
    for outline, group, name in zip(outlines, groups, names):
        rgb = CUT[group % len(CUT)]
        painter.setPen(QtGui.QPen(ink.colour(rgb), 2))
        painter.setBrush(QtGui.QColor(*rgb, 70))
        for part in getattr(outline, "geoms", [outline]):
            painter.drawPolygon(qt_polygon(part.exterior.coords, ground.to_canvas))
        _draw_tag(painter, ground, outline, name, rgb if group % len(CUT) < 3 else ink.INK)


def _draw_tag(
    painter: QtGui.QPainter, ground: Ground, outline: Any, name: str, rgb: tuple[int, int, int]
) -> None:
    """A cut's name about its centre, no larger than the cut lets it be."""
    x, y = ground.pixel(*outline.centroid.coords[0])
    across = (abs(ground.to_canvas.determinant()) * outline.area) ** 0.5
    pixels = round(min(12.0, max(7.0, across / 4.0)))
    painter.setFont(ink.font(pixels, bold=True))
    wide, high = ink.width_of(painter, name) + 0.5 * pixels, 1.25 * pixels
    painter.setPen(QtCore.Qt.NoPen)
    painter.setBrush(ink.colour(ink.PAPER))
    painter.drawRoundedRect(QtCore.QRectF(x - wide / 2, y - high / 2, wide, high), 3, 3)
    painter.setPen(ink.colour(rgb))
    ink.write(painter, name, (x - wide / 2 - 4, y - high / 2 - 2, wide + 8, high + 4))

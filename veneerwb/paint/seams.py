# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the registers leave along the seams, as pictures: a bar for each seam, and spots on the top.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import NamedTuple

from veneerwb.core.sequence.residual import VISIBLE, Residual, SeamResidual
from veneerwb.paint import ink
from veneerwb.paint.qt import QtCore, QtGui
from veneerwb.words import figure

SMALL, LARGE = (0, 110, 120), (190, 40, 0)
"""Misses up to VISIBLE and beyond; beyond it the bar is hatched and the spot filled, so that grey
paper and every eye tell them apart."""
_LEFT, _RIGHT, _HEAD, _FOOT = 54, 14, 22, 20
_TALLEST = 22
_LEAST, _MOST = 2.5, 11.0
"""Pixels of a spot's radius."""

Place = tuple[float, float]


class Words(NamedTuple):
    """What stands beside the bars."""

    mean: str = "rms"
    worst: str = "worst"
    shows: str = "from here on it shows"
    same: str = "one photograph"
    plain: str = "not told"
    unit: str = "mm"


PLAIN = Words()


class Spot(NamedTuple):
    """A place on the top (mm) where the figure misses by so many mm."""

    place: Place
    mm: float


@dataclass(frozen=True)
class Rows:
    """Where the seams stand in a picture of `size` pixels, one below the other."""

    size: tuple[int, int]
    count: int

    @property
    def tall(self) -> float:
        return min(_TALLEST, (self.size[1] - _HEAD - _FOOT) / max(1, self.count))

    def top(self, row: int) -> float:
        return _HEAD + row * self.tall

    def row_at(self, y: float) -> int | None:
        row = int((y - _HEAD) // self.tall)
        return row if 0 <= row < self.count else None


def draw_bars(
    painter: QtGui.QPainter, found: Residual, size: tuple[int, int], mm: float = 1.0,
    current: int | None = None, words: Words = PLAIN,
) -> None:
    """A bar for the rms of each seam and a line to its worst place, on an axis in units of `mm`;
    the seam in row `current` is marked."""
    ink.begin(painter, size)
    rows = Rows(size, len(found.seams))
    worst = max((s.worst for s in found.seams if s.patches), default=0.0)
    most = max(worst, 1.2 * VISIBLE) / mm
    wide = size[0] - _LEFT - _RIGHT

    def x_of(value: float) -> float:
        return _LEFT + value / mm / most * wide

    foot = rows.top(rows.count)
    _axis(painter, x_of, most, mm, foot, words)
    _legend(painter, words)
    every = ink.thinned(rows.count, rows.tall / 13)
    for row, seam in enumerate(found.seams):
        box = QtCore.QRectF(_LEFT, rows.top(row), wide, rows.tall)
        if row == current:
            painter.fillRect(box.adjusted(-_LEFT, 0, _RIGHT, 0), ink.colour((255, 236, 200)))
        if row % every == 0 or row == current:
            painter.setPen(ink.colour(ink.INK))
            name = f"{seam.a} | {seam.b}"
            ink.write(painter, name, (0, box.top(), _LEFT - 6, box.height()), "right")
        _bar(painter, seam, box, x_of, words, every == 1)


def _axis(
    painter: QtGui.QPainter, x_of: Callable[[float], float], most: float, mm: float, foot: float,
    words: Words,
) -> None:
    for value in ink.ticks(0.0, most, 6):
        x = x_of(value * mm)
        painter.setPen(ink.colour(ink.RULE))
        painter.drawLine(QtCore.QPointF(x, _HEAD), QtCore.QPointF(x, foot))
        painter.setPen(ink.colour(ink.FAINT))
        ink.write(painter, figure(value, "g"), (x - 24, foot + 2, 48, 14))
    ink.write(painter, words.unit, (4, foot + 2, _LEFT - 10, 14), "right")
    painter.setPen(_dashed())
    x = x_of(VISIBLE)
    painter.drawLine(QtCore.QPointF(x, _HEAD), QtCore.QPointF(x, foot))


def _dashed() -> QtGui.QPen:
    return QtGui.QPen(ink.colour(ink.MARK), 1.2, QtCore.Qt.DashLine)


def _legend(painter: QtGui.QPainter, words: Words) -> None:
    x = float(_LEFT)
    for text, pen in (
        (words.mean, QtGui.QPen(ink.colour(SMALL), 8.0)),
        (words.worst, QtGui.QPen(ink.colour(SMALL), 1.5)),
        (words.shows, _dashed()),
    ):
        pen.setCapStyle(QtCore.Qt.FlatCap)
        painter.setPen(pen)
        painter.drawLine(QtCore.QPointF(x, 10), QtCore.QPointF(x + 22, 10))
        painter.setPen(ink.colour(ink.INK))
        wide = ink.width_of(painter, text) + 4
        ink.write(painter, text, (x + 27, 1, wide, 18), "left")
        x += wide + 38


def _bar(
    painter: QtGui.QPainter, seam: SeamResidual, box: QtCore.QRectF,
    x_of: Callable[[float], float], words: Words, wordy: bool,
) -> None:
    middle = box.center().y()
    if not seam.patches:
        if wordy:
            painter.setPen(ink.colour(ink.FAINT))
            why = words.same if seam.one_photo else words.plain
            place = box.left() + 4, middle - 8, ink.width_of(painter, why) + 4, 16.0
            painter.fillRect(QtCore.QRectF(*place), ink.colour(ink.PAPER))
            ink.write(painter, why, place, "left")
        return
    thick = min(11.0, 0.64 * box.height())
    bar = QtCore.QRectF(box.left(), middle - thick / 2, x_of(seam.rms) - box.left(), thick)
    rgb = _rgb(seam.rms)
    painter.fillRect(bar, ink.colour(rgb))
    if seam.rms > VISIBLE:
        painter.fillRect(bar, QtGui.QBrush(ink.colour(ink.PAPER), QtCore.Qt.BDiagPattern))
    painter.setPen(QtGui.QPen(ink.colour(_rgb(seam.worst)), 1.5))
    x, cap = x_of(seam.worst), max(2.0, thick / 2 - 1)
    painter.drawLine(QtCore.QPointF(bar.right(), middle), QtCore.QPointF(x, middle))
    painter.drawLine(QtCore.QPointF(x, middle - cap), QtCore.QPointF(x, middle + cap))


def _rgb(mm: float) -> tuple[int, int, int]:
    return LARGE if mm > VISIBLE else SMALL


def draw_spots(
    painter: QtGui.QPainter, seams: Sequence[Iterable[Spot]], to_px: Callable[[Place], Place],
    current: int | None = None,
) -> None:
    """A spot at each place, the larger the miss; an empty ring up to VISIBLE, full beyond. Of a
    seam in row `current` the others are left out."""
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    for row, spots in enumerate(seams):
        if current is not None and row != current:
            continue
        for spot in spots:
            _spot(painter, to_px(spot.place), spot.mm)


def spot_legend(painter: QtGui.QPainter, size: tuple[int, int], words: Sequence[str]) -> None:
    """In the lower left corner: what an empty and a full spot stand for."""
    painter.setFont(ink.font())
    for row, (text, mm) in enumerate(zip(words, (0.5 * VISIBLE, 1.5 * VISIBLE))):
        y = size[1] - 12.0 - 18.0 * (len(words) - 1 - row)
        _spot(painter, (14.0, y), mm)
        painter.setPen(ink.colour(ink.INK))
        ink.write(painter, text, (28, y - 8, 200, 16), "left")


def _spot(painter: QtGui.QPainter, place: Place, mm: float) -> None:
    at, radius = QtCore.QPointF(*place), min(_MOST, _LEAST + 3.0 * mm)
    painter.setBrush(QtCore.Qt.NoBrush)
    painter.setPen(QtGui.QPen(ink.colour(ink.PAPER), 4.0))
    painter.drawEllipse(at, radius, radius)
    painter.setPen(QtGui.QPen(ink.colour(_rgb(mm)), 2.0))
    if mm > VISIBLE:
        painter.setBrush(ink.colour(LARGE))
    painter.drawEllipse(at, radius, radius)
    painter.setBrush(QtCore.Qt.NoBrush)

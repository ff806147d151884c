# SPDX-License-Identifier: LGPL-2.1-or-later
"""The leaves of a bundle as a row of small pictures, suspects marked by shape and text."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import accumulate

from veneerwb.core.photos.reading import Photo
from veneerwb.paint import ink
from veneerwb.paint.qt import QtCore, QtGui
from veneerwb.paint.texture import texture

HEAD, FOOT, GAP = 17, 15, 6
NARROW, WORDY = 26, 66
"""Pixels of a place's width at least, and of one over which more than a number is written."""


@dataclass(frozen=True)
class Row:
    """Where the leaves stand in a row `height` pixels high: `numbers` from left to right, each in a
    place as wide as `shape` (width by length of the leaves) asks, or what is said of those in
    `marked`."""

    numbers: tuple[int, ...]
    height: int
    shape: float
    marked: frozenset[int] = frozenset()

    @property
    def picture(self) -> tuple[int, int]:
        """Pixels of a small picture."""
        tall = max(8, self.height - HEAD - FOOT - 2)
        return max(4, min(round(tall * self.shape), 3 * tall)), tall

    @cached_property
    def _edges(self) -> list[int]:
        room = self.picture[0] + GAP
        wide = (max(WORDY if n in self.marked else NARROW, room) for n in self.numbers)
        return list(accumulate(wide, initial=GAP // 2))

    @property
    def width(self) -> int:
        return self._edges[-1] + GAP // 2

    def place(self, number: int) -> tuple[int, int]:
        """Where a leaf's place begins, and its width."""
        k = self.numbers.index(number)
        return self._edges[k], self._edges[k + 1] - self._edges[k]

    def leaf_at(self, x: float) -> int | None:
        """The leaf at a column of pixels; None beyond the last."""
        k = bisect_right(self._edges, x) - 1
        return self.numbers[k] if 0 <= k < len(self.numbers) else None


def small(photo: Photo, size: tuple[int, int]) -> QtGui.QImage:
    """A photograph in `size` pixels."""
    factor = max(1, int(min(photo.shape[1] / size[0], photo.shape[0] / size[1])))
    shown = texture(photo, factor).image
    return shown.scaled(*size, QtCore.Qt.IgnoreAspectRatio, QtCore.Qt.SmoothTransformation)


def draw_strip(
    painter: QtGui.QPainter, row: Row, pictures: Mapping[int, QtGui.QImage],
    current: int | None = None, marks: Mapping[int, str] | None = None,
    gaps: Mapping[int, str] | None = None,
) -> None:
    """The row; leaves without a picture yet stand as empty frames.

    `marks`: what is said of suspects, in a word or two, under a triangle; `gaps`: what is said of
    the place after a leaf, where one may be missing.
    """
    ink.begin(painter, (row.width, row.height))
    painter.setRenderHint(QtGui.QPainter.SmoothPixmapTransform)
    marks, gaps = marks or {}, gaps or {}
    for number in row.numbers:
        _leaf(painter, row, number, pictures.get(number), number == current, marks.get(number))
    for number, text in gaps.items():
        if number in row.numbers:
            _gap(painter, row, number, text)


def _leaf(
    painter: QtGui.QPainter, row: Row, number: int, picture: QtGui.QImage | None, current: bool,
    mark: str | None,
) -> None:
    width, tall = row.picture
    left, room = row.place(number)
    box = QtCore.QRectF(left + (room - width) / 2, HEAD, width, tall)
    if picture is not None:
        painter.drawImage(box, picture)
    else:
        painter.fillRect(box, ink.colour(ink.RULE))
    if current:
        painter.setPen(QtGui.QPen(ink.colour(ink.mark()), 3.0))
        painter.drawRect(box.adjusted(-2, -2, 2, 2))
    if mark is not None:
        _warn(painter, box)
    painter.setFont(ink.font(bold=current or mark is not None))
    painter.setPen(ink.colour(ink.INK))
    ink.write(painter, str(number), (left, 1, room, HEAD - 3))
    if mark:
        painter.setFont(ink.font(10))
        ink.write(painter, _short(painter, mark, room - 2), (left, HEAD + tall + 1, room, FOOT))


def _warn(painter: QtGui.QPainter, box: QtCore.QRectF) -> None:
    """A triangle with a stroke in it, on the leaf's foot."""
    x, y = box.center().x(), box.bottom() - 4
    corners = [QtCore.QPointF(x + a, y + b) for a, b in ((-9, 0), (9, 0), (0, -16))]
    painter.setPen(QtGui.QPen(ink.colour(ink.INK), 1.5))
    painter.setBrush(ink.colour(ink.suspect()))
    painter.drawPolygon(QtGui.QPolygonF(corners))
    painter.setBrush(QtCore.Qt.NoBrush)
    painter.setPen(QtGui.QPen(ink.colour(ink.INK), 2.0))
    painter.drawLine(QtCore.QPointF(x, y - 11), QtCore.QPointF(x, y - 5.5))
    painter.drawPoint(QtCore.QPointF(x, y - 2.5))


def _gap(painter: QtGui.QPainter, row: Row, number: int, text: str) -> None:
    """A broken line after a leaf, and what may be missing there."""
    x = sum(row.place(number))
    painter.setPen(QtGui.QPen(ink.colour(ink.mark()), 2.0, QtCore.Qt.DashLine))
    painter.drawLine(QtCore.QPointF(x, HEAD - 2), QtCore.QPointF(x, row.height - FOOT))
    painter.setFont(ink.font(10))
    painter.setPen(ink.colour(ink.INK))
    wide = ink.width_of(painter, text) + 6
    ink.write(painter, text, (x - wide / 2, row.height - FOOT + 1, wide, FOOT - 1))


def _short(painter: QtGui.QPainter, text: str, room: float) -> str:
    return QtGui.QFontMetricsF(painter.font()).elidedText(text, QtCore.Qt.ElideRight, room)


def proven(order: Sequence[int], numbers: Sequence[int]) -> tuple[int, ...]:
    """The numbers in the proven order, those that it leaves out behind them."""
    kept = [number for number in order if number in numbers]
    return (*kept, *(number for number in numbers if number not in kept))

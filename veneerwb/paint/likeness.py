# SPDX-License-Identifier: LGPL-2.1-or-later
"""The likeness of all pairs of leaves as a picture: light where two leaves are alike."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass

import numpy as np

from veneerwb.paint import ink
from veneerwb.paint.qt import QtCore, QtGui, from_pixels
from veneerwb.words import figure

SHADES = (
    (16, 20, 52), (24, 70, 108), (44, 124, 116), (140, 172, 86), (232, 206, 104), (255, 250, 226),
)
"""From unlike to alike. Each is lighter than the one before, so that grey paper and every eye tell
them apart."""
HATCH = (150, 150, 150)
_HEAD, _EDGE, _SCALE = 22, 6, 30
"""Pixels for the numbers above, the air round it, and the scale of shades below or beside it."""


def shade(share: float) -> tuple[int, int, int]:
    """The colour of a share from 0 (unlike) to 1 (alike)."""
    place = min(1.0, max(0.0, float(share))) * (len(SHADES) - 1)
    low = min(int(place), len(SHADES) - 2)
    part = place - low
    pairs = zip(SHADES[low], SHADES[low + 1])
    return tuple(round(a + (b - a) * part) for a, b in pairs)  # type: ignore[return-value]


@dataclass(frozen=True)
class Board:
    """Where the cells of n x n pairs lie in a picture of `size` pixels: row and column k stand for
    the leaf numbers[k], the first in the upper left corner."""

    size: tuple[int, int]
    numbers: tuple[int, ...]

    @property
    def beside(self) -> bool:
        """Whether the scale of shades stands beside the cells, and not below."""
        return self.size[0] - self._left > self.size[1] - _HEAD

    @property
    def room(self) -> tuple[float, float]:
        """Pixels for the cells, across and down."""
        across, down = self.size[0] - self._left - _EDGE, self.size[1] - _HEAD - _EDGE
        return (across - 2 * _SCALE, down) if self.beside else (across, down - _SCALE)

    @property
    def cell(self) -> float:
        """Pixels of a cell's side."""
        return max(1.0, min(self.room) / max(1, len(self.numbers)))

    @property
    def _left(self) -> float:
        return 12.0 + 7.0 * max(len(str(n)) for n in self.numbers or (0,))

    @property
    def corner(self) -> tuple[float, float]:
        """The upper left corner of the first cell."""
        spare = self.room[0] - self.cell * len(self.numbers)
        return self._left + max(0.0, spare / 2), float(_HEAD)

    def box(self, row: int, column: int) -> tuple[float, float, float, float]:
        """(x, y, width, height) of a cell."""
        x, y = self.corner
        return x + column * self.cell, y + row * self.cell, self.cell, self.cell

    def pair_at(self, x: float, y: float) -> tuple[int, int] | None:
        """The two leaf numbers of the cell at a pixel; None off the cells and for a leaf with
        itself."""
        left, top = self.corner
        column, row = int((x - left) // self.cell), int((y - top) // self.cell)
        count = len(self.numbers)
        if not (0 <= row < count and 0 <= column < count) or row == column:
            return None
        return self.numbers[row], self.numbers[column]


def span(likeness: np.ndarray) -> tuple[float, float]:
    """The values that the darkest and the lightest shade stand for: those of the pairs, to a
    tenth."""
    n = len(likeness)
    pairs = likeness[~np.eye(n, dtype=bool)]
    pairs = pairs[np.isfinite(pairs)]
    if not pairs.size:
        return 0.0, 1.0
    low = max(0.0, np.floor(10 * pairs.min() + 1e-9) / 10)
    high = np.ceil(10 * pairs.max() - 1e-9) / 10
    return float(low), float(max(high, low + 0.1))


def draw_likeness(
    painter: QtGui.QPainter, likeness: np.ndarray, board: Board,
    pair: tuple[int, int] | None = None, suspects: Collection[int] = (),
    words: Sequence[str] = ("unlike", "alike"),
) -> None:
    """The matrix (rows and columns as board.numbers) with the numbers at its axes; those of
    `suspects` in bold with a triangle. `pair` is framed. A leaf with itself is hatched."""
    ink.begin(painter, board.size)
    low, high = span(likeness)
    _cells(painter, board, (likeness - low) / (high - low))
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    _axes(painter, board, suspects)
    if pair and set(pair) <= set(board.numbers) and pair[0] != pair[1]:
        a, b = (board.numbers.index(number) for number in pair)
        for cell in ((a, b), (b, a)):
            _frame(painter, board.box(*cell))
    _scale(painter, board, (low, high), words)


def _cells(painter: QtGui.QPainter, board: Board, shares: np.ndarray) -> None:
    """All cells at once, as a picture of a pixel each; what is not known is hatched."""
    n = len(board.numbers)
    known = np.isfinite(shares) & ~np.eye(n, dtype=bool)
    places = np.linspace(0.0, 1.0, len(SHADES))
    pixels = np.full((n, n, 4), 255, np.uint8)
    for k, values in enumerate(zip(*SHADES)):  # blue, green, red in memory
        of = np.interp(np.where(known, shares, 0.0), places, values)
        pixels[..., 2 - k] = np.where(known, np.rint(of), ink.PAPER[k])
    x, y = board.corner
    extent = board.cell * n
    painter.setRenderHint(QtGui.QPainter.Antialiasing, False)
    painter.setRenderHint(QtGui.QPainter.SmoothPixmapTransform, False)
    painter.drawImage(QtCore.QRectF(x, y, extent, extent), from_pixels(pixels))
    hatch = QtGui.QBrush(ink.colour(HATCH), QtCore.Qt.BDiagPattern)
    for row, column in np.argwhere(~known).tolist():
        painter.fillRect(QtCore.QRectF(*board.box(row, column)), hatch)


def _axes(painter: QtGui.QPainter, board: Board, suspects: Collection[int]) -> None:
    size = min(ink.TEXT, max(8, int(board.cell)))
    widest = 4.0 + 6.2 * max(len(str(n)) for n in board.numbers or (0,)) * size / ink.TEXT
    left, top = board.corner
    painter.setPen(ink.colour(ink.INK))
    for k, number in enumerate(board.numbers):
        suspect = number in suspects
        x, y, cell, _ = board.box(k, k)
        painter.setFont(ink.font(size, suspect))
        if suspect:
            _triangle(painter, x + cell / 2, top - 1)
        if k in _written(board.numbers, suspects, widest / cell):
            ink.write(painter, str(number), (x + cell / 2 - 20, top - 18, 40, 13))
        if k in _written(board.numbers, suspects, (size + 3) / cell):
            ink.write(painter, str(number), (left - 46, y, 42, cell), "right")
    painter.setFont(ink.font())


def _written(numbers: Sequence[int], suspects: Collection[int], room: float) -> set[int]:
    """Which numbers are written where one needs `room` cells: the suspects, and of the others as
    many as do not run into those."""
    said = [k for k, number in enumerate(numbers) if number in suspects]
    every = ink.thinned(len(numbers), 1.0 / room)
    plain = range(0, len(numbers), every)
    return {*said, *(k for k in plain if all(abs(k - other) >= room for other in said))}


def _triangle(painter: QtGui.QPainter, x: float, foot: float) -> None:
    shape = QtGui.QPolygonF([QtCore.QPointF(x + dx, foot + dy) for dx, dy in
                             ((-4, -6), (4, -6), (0, 0))])
    painter.setBrush(ink.colour(ink.mark()))
    painter.setPen(QtCore.Qt.NoPen)
    painter.drawPolygon(shape)
    painter.setBrush(QtCore.Qt.NoBrush)
    painter.setPen(ink.colour(ink.INK))


def _frame(painter: QtGui.QPainter, box: tuple[float, float, float, float]) -> None:
    for rgb, width in ((ink.PAPER, 4.0), (ink.mark(), 2.0)):
        painter.setPen(QtGui.QPen(ink.colour(rgb), width))
        painter.drawRect(QtCore.QRectF(*box))


def _scale(
    painter: QtGui.QPainter, board: Board, ends: tuple[float, float], words: Sequence[str]
) -> None:
    (left, top), extent = board.corner, board.cell * len(board.numbers)
    painter.setPen(ink.colour(ink.FAINT))
    low, high = (figure(value, ".1f") for value in ends)
    if board.beside:
        x = left + extent + 10
        _shades(painter, (x + 6, top + 30, 12, max(10.0, extent - 60)), upwards=True)
        ink.write(painter, words[1], (x - 4, top, 70, 14), "left")
        ink.write(painter, high, (x - 4, top + 14, 32, 14))
        ink.write(painter, low, (x - 4, top + extent - 28, 32, 14))
        ink.write(painter, words[0], (x - 4, top + extent - 14, 70, 14), "left")
        return
    y, width = top + extent + 10, max(60.0, extent)
    texts = f"{words[0]} {low}", f"{high} {words[1]}"
    first, last = (ink.width_of(painter, text) + 8 for text in texts)
    ink.write(painter, texts[0], (left, y, first, 14), "left")
    ink.write(painter, texts[1], (left + width - last, y, last, 14), "right")
    _shades(painter, (left + first, y + 2, max(10.0, width - first - last), 10))


def _shades(
    painter: QtGui.QPainter, box: tuple[float, float, float, float], upwards: bool = False
) -> None:
    x, y, width, height = box
    fade = QtGui.QLinearGradient(x, y + height, x, y) if upwards else (
        QtGui.QLinearGradient(x, y, x + width, y)
    )
    for k, rgb in enumerate(SHADES):
        fade.setColorAt(k / (len(SHADES) - 1), ink.colour(rgb))
    painter.fillRect(QtCore.QRectF(*box), QtGui.QBrush(fade))

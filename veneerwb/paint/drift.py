# SPDX-License-Identifier: LGPL-2.1-or-later
"""How a point drifts from leaf to leaf, plotted: across above, along below."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

import numpy as np

from veneerwb.core.sequence.point import PointDrift
from veneerwb.paint import ink
from veneerwb.paint.qt import QtCore, QtGui
from veneerwb.words import figure

_LEFT, _RIGHT, _ROW, _FOOT, _TITLE = 44, 10, 18, 30, 17
LEAST = 0.5
"""mm that an axis spans at least, so that noise does not look like drift."""


class Words(NamedTuple):
    """What the legend and the axes say."""

    combined: str = "drift: figure and photograph together"
    figure: str = "figure on the leaf"
    shift: str = "photograph"
    across: str = "across, mm"
    along: str = "along, mm"
    leaf: str = "leaf"


@dataclass(frozen=True)
class Line:
    """One curve: its name, values N x 2, colour, shape of its points, and whether it is dashed."""

    name: str
    values: np.ndarray
    rgb: tuple[int, int, int]
    shape: str
    dashed: bool = False


PLAIN = Words()


def lines(way: PointDrift, words: Words) -> list[Line]:
    """One combined curve, or its two parts where they are known."""
    if way.figure is None or way.shift is None:
        return [Line(words.combined, way.combined, (30, 60, 140), "diamond")]
    return [
        Line(words.figure, way.figure, (150, 60, 0), "disc"),
        Line(words.shift, way.shift, (0, 110, 120), "square", dashed=True),
    ]


@dataclass(frozen=True)
class Plot:
    """Where the leaves stand in a plot of `size` pixels."""

    size: tuple[int, int]
    numbers: tuple[int, ...]

    def x_of(self, number: float) -> float:
        first, last = self.numbers[0], self.numbers[-1]
        share = 0.5 if first == last else (number - first) / (last - first)
        return _LEFT + 6 + share * (self.size[0] - _LEFT - _RIGHT - 12)

    def leaf_at(self, x: float) -> int:
        """The leaf nearest to a column of pixels."""
        return min(self.numbers, key=lambda number: abs(self.x_of(number) - x))


def draw_drift(
    painter: QtGui.QPainter, way: PointDrift, size: tuple[int, int], current: int | None = None,
    words: Words = PLAIN, mm: float = 1.0,
) -> None:
    """Both directions one above the other, each on its own scale in units of `mm`, `current` marked
    by a line."""
    ink.begin(painter, size)
    plot, curves = Plot(size, way.numbers), lines(way, words)
    curves = [replace(line, values=line.values / mm) for line in curves]
    below = _legend(painter, curves, size[0])
    height = (size[1] - below - _FOOT) / 2 - _TITLE
    for axis, name in enumerate((words.across, words.along)):
        top = below + _TITLE + axis * (height + _TITLE)
        span = _range([line.values[:, axis] for line in curves], LEAST / mm)
        _half(painter, plot, curves, axis, name, (top, height), span, current)
    _numbers(painter, plot, words.leaf)


def _legend(painter: QtGui.QPainter, curves: Sequence[Line], width: int) -> float:
    """In as many lines as it takes; where the next thing may begin."""
    x, y = 6.0, 2.0
    for line in curves:
        wide = 31 + ink.width_of(painter, line.name)
        if x > 6.0 and x + wide > width:
            x, y = 6.0, y + _ROW
        painter.setPen(_pen(line))
        painter.drawLine(QtCore.QPointF(x, y + 8), QtCore.QPointF(x + 26, y + 8))
        _point(painter, line, x + 13, y + 8)
        painter.setPen(ink.colour(ink.INK))
        ink.write(painter, line.name, (x + 31, y, width - x - 31, 16), "left")
        x += wide + 14
    return y + _ROW


def _half(
    painter: QtGui.QPainter, plot: Plot, curves: Sequence[Line], axis: int, name: str,
    place: tuple[float, float], span: tuple[float, float], current: int | None,
) -> None:
    """In a band of the plot that begins at and is as high as `place` says."""
    (top, height), (low, high) = place, span
    right = plot.size[0] - _RIGHT

    def y_of(value: float) -> float:
        return top + (high - value) / (high - low) * height

    for value in ink.ticks(low, high, max(3, int(height / 15))):
        y = y_of(value)
        strong = abs(value) < 1e-9
        painter.setPen(QtGui.QPen(ink.colour(ink.FAINT if strong else ink.RULE), 1.0))
        painter.drawLine(QtCore.QPointF(_LEFT, y), QtCore.QPointF(right, y))
        painter.setPen(ink.colour(ink.FAINT))
        ink.write(painter, figure(value, "g"), (0, y - 8, _LEFT - 5, 16), "right")
    if current in plot.numbers:
        painter.setPen(QtGui.QPen(ink.colour(ink.mark()), 1.5))
        x = plot.x_of(current)
        painter.drawLine(QtCore.QPointF(x, top), QtCore.QPointF(x, top + height))
    for line in curves:
        values = zip(plot.numbers, line.values[:, axis])
        places = [QtCore.QPointF(plot.x_of(n), y_of(v)) for n, v in values]
        painter.setPen(_pen(line))
        painter.drawPolyline(QtGui.QPolygonF(places))
        for place in places:
            _point(painter, line, place.x(), place.y())
    painter.setPen(ink.colour(ink.INK))
    painter.setFont(ink.font(bold=True))
    ink.write(painter, name, (_LEFT, top - 16, right - _LEFT, 14), "left")
    painter.setFont(ink.font())


def _range(values: Sequence[np.ndarray], least: float) -> tuple[float, float]:
    """What an axis spans: nought and all values, with air for the points."""
    low = min(0.0, *(float(v.min()) for v in values))
    high = max(0.0, *(float(v.max()) for v in values))
    short = max(0.0, least - (high - low)) / 2
    low, high = low - short, high + short
    air = 0.1 * (high - low)
    return low - air, high + air


def _numbers(painter: QtGui.QPainter, plot: Plot, leaf: str) -> None:
    y = plot.size[1] - _FOOT
    numbers = plot.numbers
    room = (plot.size[0] - _LEFT - _RIGHT) / max(1, len(numbers)) / 18.0
    every = ink.thinned(len(numbers), room)
    painter.setPen(ink.colour(ink.FAINT))
    for k, number in enumerate(numbers):
        if k % every == 0:
            ink.write(painter, str(number), (plot.x_of(number) - 20, y + 1, 40, 13))
    middle = (plot.size[0] + _LEFT - _RIGHT) / 2
    ink.write(painter, leaf, (middle - 60, y + 14, 120, 14))


def _pen(line: Line) -> QtGui.QPen:
    pen = QtGui.QPen(ink.colour(line.rgb), 1.8)
    if line.dashed:
        pen.setStyle(QtCore.Qt.DashLine)
    return pen


def _point(painter: QtGui.QPainter, line: Line, x: float, y: float) -> None:
    painter.setPen(QtGui.QPen(ink.colour(line.rgb), 1.4))
    painter.setBrush(ink.colour(ink.PAPER if line.shape == "square" else line.rgb))
    if line.shape == "disc":
        painter.drawEllipse(QtCore.QPointF(x, y), 2.6, 2.6)
    elif line.shape == "square":
        painter.drawRect(QtCore.QRectF(x - 2.6, y - 2.6, 5.2, 5.2))
    else:
        ends = ((0, -3.6), (3.6, 0), (0, 3.6), (-3.6, 0))
        corners = [QtCore.QPointF(x + a, y + b) for a, b in ends]
        painter.drawPolygon(QtGui.QPolygonF(corners))
    painter.setBrush(QtCore.Qt.NoBrush)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A drawing as plain data: lines, edges, letters and dimensions in mm of the paper, y up.

It is a list of marks, which `svg` and `paint.pdf` put on paper. Lines are as in ISO 128,
dimensions as in ISO 129-1: text above its line, to be read from below or from the right; where
there is no room between the arrows, they point inwards and the text stands outside.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from veneerwb.core.outlines.edge import Edge, Line, Point, straights
from veneerwb.core.plane import Motion, polar
from veneerwb.core.shop.drawing.lettering import SMALL, width
from veneerwb.core.shop.drawing.paper import Box

THIN, MEDIUM, THICK = 0.25, 0.35, 0.5
DASHED, CHAIN = (3.0, 1.5), (8.0, 1.5, 0.7, 1.5)
ARROW, ARROW_HALF = 3.0, 0.5
BEYOND, GAP = 1.5, 1.0
"""mm: how far extension lines reach beyond the dimension line, and start off the thing."""
BLACK, GREY, RED = "#000000", "#808080", "#c01818"
ANCHORS = ("start", "middle", "end")


@dataclass(frozen=True)
class Stroke:
    """A run of segments, drawn with a line of `weight` mm (0: none) and filled with a colour where
    one is named."""

    edge: Edge
    weight: float = THIN
    dashes: tuple[float, ...] = ()
    colour: str = BLACK
    fill: str = ""

    def moved(self, by: Motion) -> Stroke:
        return replace(self, edge=tuple(segment.moved(by) for segment in self.edge))


@dataclass(frozen=True)
class Letters:
    """A line of letters, capitals `height` mm high, standing on `at`, turned by `turn` degrees."""

    at: Point
    text: str
    height: float = SMALL
    anchor: str = "middle"
    turn: float = 0.0
    colour: str = BLACK

    @property
    def wide(self) -> float:
        """How wide they are at most, mm."""
        return width(self.text, self.height)

    def moved(self, by: Motion) -> Letters:
        return replace(self, at=by.point(self.at))


@dataclass(frozen=True)
class Image:
    """A picture that fills `box`: the bytes of a JPEG or PNG file."""

    box: Box
    data: bytes

    def moved(self, by: Motion) -> Image:
        x, y = by.point((self.box.x, self.box.y))
        return replace(self, box=replace(self.box, x=x, y=y))


Mark = Stroke | Letters | Image


class Drawing:
    """Collects marks; the lower left corner is (0, 0)."""

    def __init__(self, wide: float, high: float) -> None:
        self.wide, self.high = wide, high
        self.marks: list[Mark] = []

    def svg(self, wide: float = 0.0, shift: float = 0.0) -> str:
        """The whole as an SVG file of exactly its size in mm; or `wide` mm wide, `shift` mm from
        its left."""
        from veneerwb.core.shop.drawing.svg import svg

        return svg(self, wide, shift)

    def put(self, other: Drawing, x: float, y: float) -> None:
        """Another drawing with its lower left corner at (x, y)."""
        by = Motion(dx=x, dy=y)
        self.marks += [mark.moved(by) for mark in other.marks]

    def line(
        self,
        a: Point,
        b: Point,
        weight: float = THIN,
        dashes: tuple[float, ...] = (),
        colour: str = BLACK,
    ) -> None:
        self.marks.append(Stroke((Line(a, b),), weight, dashes, colour))

    def edge(
        self,
        edge: Edge,
        weight: float,
        dashes: tuple[float, ...] = (),
        colour: str = BLACK,
        fill: str = "",
    ) -> None:
        """A run of true segments, already in mm of the paper."""
        self.marks.append(Stroke(tuple(edge), weight, dashes, colour, fill))

    def area(self, corners: Sequence[Point], fill: str) -> None:
        """A filled polygon without a line."""
        self.marks.append(Stroke(straights(list(corners)), 0.0, fill=fill))

    def rectangle(self, box: Box, weight: float = THIN, fill: str = "") -> None:
        corners = [(box.x, box.y), (box.right, box.y), (box.right, box.top), (box.x, box.top)]
        self.marks.append(Stroke(straights(corners), weight, fill=fill))

    def text(
        self,
        at: Point,
        text: str,
        height: float = SMALL,
        anchor: str = "middle",
        turn: float = 0.0,
        underlined: bool = False,
        colour: str = BLACK,
    ) -> None:
        """Letters of `height` mm standing on `at`, turned by `turn` degrees."""
        self.marks.append(Letters(at, text, height, anchor, turn, colour))
        if underlined:
            half, low = 0.5 * width(text, height), at[1] - 0.25 * height
            self.line((at[0] - half, low), (at[0] + half, low), colour=colour)

    def arrow(self, tip: Point, degrees: float, colour: str = BLACK) -> None:
        """A filled arrowhead at `tip`, pointing in that direction."""
        back = _moved(tip, polar(-ARROW, degrees))
        side = polar(ARROW_HALF, degrees + 90.0)
        self.area((tip, _moved(back, side), _moved(back, side, -1.0)), colour)

    def picture(self, data: bytes, box: Box | None = None) -> None:
        """A picture (the bytes of a JPEG or PNG file) that fills `box`, or the whole drawing."""
        self.marks.append(Image(box or Box(0.0, 0.0, self.wide, self.high), data))

    def distance(self, a: Point, b: Point, text: str, off: float, start: float = 0.0) -> None:
        """A dimension from `a` to `b`, its line `off` mm to the left of the way from a to b
        (negative: to the right); extension lines begin `start` mm further off than usual."""
        way = math.degrees(math.atan2(b[1] - a[1], b[0] - a[0]))
        out = polar(math.copysign(1.0, off), way + 90.0)
        foot_a, foot_b = _moved(a, out, abs(off)), _moved(b, out, abs(off))
        for p in (a, b):
            self.line(_moved(p, out, GAP + start), _moved(p, out, abs(off) + BEYOND))
        self._measured(foot_a, foot_b, way, text, out)

    def _measured(self, a: Point, b: Point, way: float, text: str, out: Point) -> None:
        gap, wide = math.dist(a, b), width(text, SMALL)
        u = polar(1.0, way)
        inside = gap >= 2.0 * ARROW + 2.0
        self.line(a if inside else _moved(a, u, -ARROW - 2.0), b)
        self.arrow(a, way + (180.0 if inside else 0.0))
        self.arrow(b, way + (0.0 if inside else 180.0))
        middle = ((a[0] + b[0]) / 2.0, (a[1] + b[1]) / 2.0)
        if gap >= wide + 2.0:
            self._above(middle, way, text)
        elif abs(u[1]) > 0.9:  # beside its line on the outer side, level
            if not inside:
                self.line(b, _moved(b, u, ARROW + 2.0))
            side, anchor = (-2.0, "end") if out[0] < 0.0 else (2.0, "start")
            self.text((middle[0] + side, middle[1] - SMALL / 2.0), text, anchor=anchor)
        else:  # beyond its end
            self.line(b, _moved(b, u, ARROW + 2.0 + wide))
            self._above(_moved(b, u, ARROW + 1.0 + wide / 2.0), way, text)

    def leader(self, tip: Point, shelf: Point, text: str) -> None:
        """A text that stands on a shelf from which an arrow points at `tip`."""
        way = math.degrees(math.atan2(tip[1] - shelf[1], tip[0] - shelf[0]))
        self.line(tip, shelf)
        self.line(shelf, (shelf[0] + width(text, SMALL) + 1.0, shelf[1]))
        self.arrow(tip, way)
        self.text((shelf[0] + 1.0, shelf[1] + 0.8), text, anchor="start")

    def _above(self, middle: Point, way: float, text: str) -> None:
        """A text along a line, readable from below or from the right."""
        turn = math.remainder(way, 180.0)
        turn = turn + 180.0 if turn <= -90.0 + 1e-6 else turn
        self.text(_moved(middle, polar(0.8, turn + 90.0)), text, turn=turn)


def _moved(p: Point, by: Point, times: float = 1.0) -> Point:
    return p[0] + times * by[0], p[1] + times * by[1]


def placed(edge: Edge, factor: float, at: Point) -> Edge:
    """An edge in true mm, `factor` times as large, its origin at a point of the paper."""
    shift = Motion(dx=at[0], dy=at[1])
    return tuple(segment.scaled(factor).moved(shift) for segment in edge)

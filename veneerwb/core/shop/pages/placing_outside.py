# SPDX-License-Identifier: LGPL-2.1-or-later
"""Marks that stand outside a plan, in rows round the top, with lines to their pieces."""

from __future__ import annotations

import math
from bisect import bisect
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

import numpy as np
from shapely.geometry import LineString, Polygon, box

from veneerwb.core.layout import Piece
from veneerwb.core.outlines.edge import Point
from veneerwb.core.plane import polar
from veneerwb.core.shop.drawing.lettering import SMALL, width
from veneerwb.core.shop.pages.placing import Shape, Widest, leaf_text

FIRST, STEP_OUT, MOST_ROWS = 4.2, 6.0, 5
"""mm from the top to the first row of numbers and from row to row; and how many there are at
most."""
ASIDE = (0.0, 2.0, -2.0, 4.0, -4.0, 6.5, -6.5, 9.5, -9.5, 13.0, -13.0)
"""mm along a row by which a number may stand beside where it would stand best."""


@dataclass(frozen=True)
class Outside:
    """A mark outside: where its middle stands, and the place in its piece that a line leads to."""

    piece: Piece
    at: Point
    tip: Point


def text_of(piece: Piece, leaves: bool) -> str:
    return f"{piece.position} {leaf_text(piece)}" if leaves else str(piece.position)


def outside_marks(
    pieces: Sequence[Piece], wide: Sequence[Widest], edge: Any, factor: float, leaves: bool,
    meeting: Point = (0.0, 0.0), taken: Sequence[Any] = (),
) -> tuple[list[Outside], float] | None:  # fmt: skip
    """Marks outside the top in rows round its outline `edge` (shapely, mm of the paper), each as
    near to its piece as the others and what is `taken` leave room; and how far out they reach, mm.
    None where there is no room for all."""
    shapes = [Shape(piece, one, factor, meeting) for piece, one in zip(pieces, wide)]
    tips = [shape.along(0.93) if shape.is_wedge else shape.label for shape in shapes]
    centre = (edge.centroid.x, edge.centroid.y)
    order = sorted(range(len(tips)), key=lambda k: _turn(centre, tips[k]))
    size = max(width(text_of(p, leaves), SMALL) for p in pieces) + 1.6, SMALL + 2.2
    for rows in range(1, MOST_ROWS + 1):
        rings = [_Row(edge.buffer(FIRST + row * STEP_OUT).exterior) for row in range(rows)]
        if sum(ring.far[-1] for ring in rings) < len(tips) * min(size):
            continue
        found = _dealt(order, tips, rings, centre, size, taken)
        if found:
            reach = FIRST + (rows - 1) * STEP_OUT + max(size) / 2.0
            return [Outside(pieces[k], found[k], tips[k]) for k in order], reach
    return None


def _turn(centre: Point, p: Point) -> float:
    return math.degrees(math.atan2(p[1] - centre[1], p[0] - centre[0])) % 360.0


def _dealt(
    order: Sequence[int], tips: Sequence[Point], rings: Sequence[_Row], centre: Point,
    size: tuple[float, float], taken: Sequence[Any],
) -> dict[int, Point] | None:  # fmt: skip
    """A place for each mark where it lies on no other and on no other's line; None if one finds
    none."""
    places: dict[int, Point] = {}
    boxes: list[Any] = [(one, one.bounds) for one in taken if not one.is_empty]
    lines: list[Any] = []
    for k in order:
        for at in _candidates(tips[k], rings, centre):
            if _is_clear(at, tips[k], size, boxes, lines):
                break
        else:
            return None
        places[k] = at
        boxes.append((_box(at, *size), _reach(at, size)))
        lines.append((LineString([tips[k], at]), _between(tips[k], at)))
    return places


def _is_clear(
    at: Point, tip: Point, size: tuple[float, float], boxes: Sequence[Any], lines: Sequence[Any]
) -> bool:
    """Whether a mark and its line keep off what lies there and off each other's lines."""
    of_area, of_line = _reach(at, size), _between(tip, at)
    area, line = cache(lambda: _box(at, *size)), cache(lambda: LineString([tip, at]))
    return not any(
        (_meet(of_area, reach) and area().intersects(b))
        or (_meet(of_line, reach) and line().intersects(b))
        for b, reach in boxes
    ) and not any(
        (_meet(of_area, reach) and area().intersects(other))
        or (_meet(of_line, reach) and line().crosses(other))
        for other, reach in lines
    )


def _reach(at: Point, size: tuple[float, float]) -> tuple[float, float, float, float]:
    """The bounds of a mark; shapely takes much longer to tell."""
    wide, high = size[0] / 2.0, size[1] / 2.0
    return at[0] - wide, at[1] - high, at[0] + wide, at[1] + high


def _between(a: Point, b: Point) -> tuple[float, float, float, float]:
    return min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1])


def _meet(a: Sequence[float], b: Sequence[float]) -> bool:
    """Whether boxes meet; only then can what is in them, and asking that takes longer."""
    return a[0] <= b[2] and b[0] <= a[2] and a[1] <= b[3] and b[1] <= a[3]


def _candidates(tip: Point, rows: Sequence[_Row], centre: Point) -> Iterator[Point]:
    """Places for a mark, the best first: straight out from the centre or level and upright from its
    piece, where that is nearer; then a little beside those."""
    ways = dict.fromkeys((_turn(centre, tip), 90.0, 270.0, 0.0, 180.0))
    starts = []
    for row in rows:
        hits = [(row, hit) for way in ways if (hit := row.hit(tip, way)) is not None]
        starts += sorted(hits, key=lambda one: round(one[1][0], 1))
    for aside in ASIDE:
        for row, (_, far) in starts:
            yield row.at(far + aside)


class _Row:
    """A closed line round the top that marks stand on. It reckons for itself, for shapely takes ten
    times as long to tell a place, and thousands are asked."""

    def __init__(self, ring: Any) -> None:
        self.corners = np.asarray(ring.coords)[:, :2]
        self.long = np.hypot(*np.diff(self.corners, axis=0).T)
        self.far = [0.0, *np.cumsum(self.long).tolist()]

    def at(self, far: float) -> Point:
        """The place so many mm along the line."""
        far %= self.far[-1]
        k = bisect(self.far, far, 0, len(self.far) - 1) - 1
        (ax, ay), (bx, by) = self.corners[k : k + 2].tolist()
        share = (far - self.far[k]) / (self.far[k + 1] - self.far[k])
        return ax + share * (bx - ax), ay + share * (by - ay)

    def hit(self, tip: Point, way: float) -> tuple[float, float] | None:
        """How far out a ray meets the line first, and how far along the line that is."""
        dx, dy = polar(1.0, way)
        x, y = (self.corners - tip).T
        out, off = dx * x + dy * y, dx * y - dy * x
        met = np.flatnonzero((off[:-1] < 0.0) != (off[1:] < 0.0))
        share = off[met] / (off[met] - off[met + 1])
        outs = out[met] + share * (out[met + 1] - out[met])
        ahead = np.flatnonzero(outs >= 0.0)
        if not len(ahead):
            return None
        k = ahead[outs[ahead].argmin()]
        return float(outs[k]), self.far[met[k]] + float(share[k] * self.long[met[k]])


def _box(at: Point, wide: float, high: float) -> Polygon:
    x, y = at
    return box(x - wide / 2.0, y - high / 2.0, x + wide / 2.0, y + high / 2.0)

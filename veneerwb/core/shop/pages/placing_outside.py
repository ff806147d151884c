# SPDX-License-Identifier: LGPL-2.1-or-later
"""Marks that stand outside a plan, in rows round the top, with lines to their pieces."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from shapely.geometry import LineString, Polygon, box
from shapely.geometry import Point as ShapelyPoint

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
        rings = [edge.buffer(FIRST + row * STEP_OUT).exterior for row in range(rows)]
        if sum(ring.length for ring in rings) < len(tips) * min(size):
            continue
        found = _dealt(order, tips, rings, centre, size, taken)
        if found:
            reach = FIRST + (rows - 1) * STEP_OUT + max(size) / 2.0
            return [Outside(pieces[k], found[k], tips[k]) for k in order], reach
    return None


def _turn(centre: Point, p: Point) -> float:
    return math.degrees(math.atan2(p[1] - centre[1], p[0] - centre[0])) % 360.0


def _dealt(
    order: Sequence[int], tips: Sequence[Point], rings: Sequence[Any], centre: Point,
    size: tuple[float, float], taken: Sequence[Any],
) -> dict[int, Point] | None:  # fmt: skip
    """A place for each mark where it lies on no other and on no other's line; None if one finds
    none."""
    places: dict[int, Point] = {}
    boxes: list[Any] = [(one, one.bounds) for one in taken if not one.is_empty]
    lines: list[Any] = []
    for k in order:
        for at in _candidates(tips[k], rings, centre):
            area, line = _box(at, *size), LineString([tips[k], at])
            of_area, of_line = area.bounds, line.bounds
            if not any(
                (_meet(of_area, reach) and area.intersects(b))
                or (_meet(of_line, reach) and line.intersects(b))
                for b, reach in boxes
            ) and not any(
                (_meet(of_area, reach) and area.intersects(other))
                or (_meet(of_line, reach) and line.crosses(other))
                for other, reach in lines
            ):
                break
        else:
            return None
        places[k] = at
        boxes.append((area, of_area))
        lines.append((line, of_line))
    return places


def _meet(a: Sequence[float], b: Sequence[float]) -> bool:
    """Whether boxes meet; only then can what is in them, and asking that takes longer."""
    return a[0] <= b[2] and b[0] <= a[2] and a[1] <= b[3] and b[1] <= a[3]


def _candidates(tip: Point, rings: Sequence[Any], centre: Point) -> Iterator[Point]:
    """Places for a mark, the best first: straight out from the centre or level and upright from its
    piece, where that is nearer; then a little beside those."""
    ways = dict.fromkeys((_turn(centre, tip), 90.0, 270.0, 0.0, 180.0))
    starts = []
    for ring in rings:
        hits = [(ring, hit) for way in ways if (hit := _hit(ring, tip, way)) is not None]
        starts.append(sorted(hits, key=lambda pair: round(math.dist(pair[1], tip), 1)))
    for aside in ASIDE:
        for row in starts:
            for ring, hit in row:
                yield _along(ring, hit, aside) if aside else hit


def _hit(ring: Any, tip: Point, way: float) -> Point | None:
    """Where a ray meets a ring first."""
    dx, dy = polar(1e4, way)
    hit = ring.intersection(LineString([tip, (tip[0] + dx, tip[1] + dy)]))
    points = [g for g in getattr(hit, "geoms", [hit]) if isinstance(g, ShapelyPoint)]
    points = [p for p in points if not p.is_empty]
    if not points:
        return None
    near = min(points, key=lambda p: math.dist((p.x, p.y), tip))
    return near.x, near.y


def _along(ring: Any, at: Point, aside: float) -> Point:
    place = ring.interpolate((ring.project(ShapelyPoint(at)) + aside) % ring.length)
    return place.x, place.y


def _box(at: Point, wide: float, high: float) -> Polygon:
    x, y = at
    return box(x - wide / 2.0, y - high / 2.0, x + wide / 2.0, y + high / 2.0)

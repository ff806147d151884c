# SPDX-License-Identifier: LGPL-2.1-or-later
"""Straights of a blade that cuts boards from edge to edge, and how it parts a stack with several
cuts in it before each is cut out by itself."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from shapely.geometry import LineString, Polygon
from shapely.ops import nearest_points

from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import TOUCH, Point

FAR = 1e6
"""mm: further than any leaf reaches."""
TURNS = 24
"""Directions besides those of the shortest ways between cuts in which a parting line is sought."""

Straight = tuple[Point, Point]


@dataclass(frozen=True)
class Part:
    """What is left of a stack when it is parted: its `area` (bundle mm), and which cut lies in it
    (its place in the pile)."""

    area: Any
    cut: int


@dataclass(frozen=True)
class Parting:
    """A straight between cuts, along which a stack's `area` is parted."""

    line: Straight
    area: Any


def left_of(line: Straight, area: Any) -> Any:
    """What of an area lies on the left of a straight."""
    return _largest(area.intersection(_half(line)))


def right_of(line: Straight, area: Any) -> Any:
    """What of it lies on the right, all parts."""
    return area.intersection(_half((line[1], line[0])))


def across(line: Straight, area: Any) -> Straight:
    """The straight from edge to edge of an area, in the line's direction; the line itself where it
    does not meet it."""
    (ax, ay), (bx, by) = line
    length = math.dist(*line)
    ux, uy = FAR * (bx - ax) / length, FAR * (by - ay) / length
    met = LineString([(ax - ux, ay - uy), (bx + ux, by + uy)]).intersection(area)
    points = [p for one in getattr(met, "geoms", [met]) for p in one.coords] or list(line)
    points.sort(key=lambda p: (p[0] - ax) * ux + (p[1] - ay) * uy)
    return tuple(points[0]), tuple(points[-1])


def is_left(line: Straight, area: Any, within: float) -> bool:
    """Whether all of an area lies on the left of a straight, but for `within` mm."""
    (ax, ay), (bx, by) = line
    corners = np.asarray(area.convex_hull.exterior.coords)
    over = (corners - (ax, ay)) @ (by - ay, ax - bx)
    return float(over.max()) <= within * math.dist(*line)


def parted(
    area: Any, outlines: Sequence[Polygon], room: float
) -> tuple[tuple[Parting, ...], tuple[Part, ...]]:
    """How a stack is parted by straights so that one outline lies in each part, `room` mm from
    every straight at least. Raises VeneerError where no straight does it."""
    return _parted(area, [(k, one.convex_hull) for k, one in enumerate(outlines)], room)


def _parted(
    area: Any, hulls: Sequence[tuple[int, Any]], room: float
) -> tuple[tuple[Parting, ...], tuple[Part, ...]]:
    if len(hulls) == 1:
        return (), (Part(area, hulls[0][0]),)
    line = _between(hulls, room)
    if line is None:
        raise VeneerError(
            "cuts-not-parted",
            "No straight cut from edge to edge parts the {count} cuts on these leaves with {room} "
            "mm to spare, as a saw would need; move them further apart, or cut by knife or on a "
            "machine.",
            count=len(hulls), room=room,
        )
    (ax, ay), (bx, by) = line
    left = [(k, h) for k, h in hulls if (bx - ax) * (h.centroid.y - ay)
            - (by - ay) * (h.centroid.x - ax) > 0]
    right = [one for one in hulls if one not in left]
    found = [_parted(left_of(line, area), left, room),
             _parted(left_of((line[1], line[0]), area), right, room)]
    cuts = (Parting(line, area), *found[0][0], *found[1][0])
    return cuts, (*found[0][1], *found[1][1])


def _between(hulls: Sequence[tuple[int, Any]], room: float) -> Straight | None:
    """The straight that parts outlines with most room on both sides, the most even of several."""
    best: tuple[tuple[float, ...], Straight] | None = None
    for turn in _turns(hulls):
        out = math.cos(math.radians(turn)), math.sin(math.radians(turn))
        spans = sorted(_span(h, out) for _, h in hulls)
        high = spans[0][1]
        for k, (low, upper) in enumerate(spans[1:], start=1):
            gap = low - high
            if gap >= 2.0 * room - TOUCH:
                middle = (low + high) / 2.0
                at = (out[0] * middle, out[1] * middle)
                line = (at, (at[0] - out[1], at[1] + out[0]))
                even = -abs(len(hulls) - 2 * k)
                rank = (even, round(gap, 3), -turn)
                if best is None or rank > best[0]:
                    best = rank, line
            high = max(high, upper)
    return best and best[1]


def _turns(hulls: Sequence[tuple[int, Any]]) -> list[float]:
    turns = [180.0 * k / TURNS for k in range(TURNS)]
    for i, (_, a) in enumerate(hulls):
        for _, b in hulls[i + 1 :]:
            p, q = nearest_points(a, b)
            if p.distance(q) > TOUCH:
                turns.append(math.degrees(math.atan2(q.y - p.y, q.x - p.x)) % 180.0)
    return sorted(set(turns))


def _span(hull: Any, out: Point) -> tuple[float, float]:
    along = np.asarray(hull.exterior.coords) @ out
    return float(along.min()), float(along.max())


def _half(line: Straight) -> Polygon:
    (ax, ay), (bx, by) = line
    length = math.dist(*line)
    ux, uy = FAR * (bx - ax) / length, FAR * (by - ay) / length
    a, b = (ax - ux, ay - uy), (ax + ux, ay + uy)
    return Polygon([a, b, (b[0] - uy, b[1] + ux), (a[0] - uy, a[1] + ux)])


def _largest(area: Any) -> Any:
    return max(getattr(area, "geoms", [area]), key=lambda part: part.area, default=area)

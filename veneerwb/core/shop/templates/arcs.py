# SPDX-License-Identifier: LGPL-2.1-or-later
"""An edge as straights and arcs alone: the vertices of a polyline with bulges.

A bulge is tan(a / 4) of the angle a that an arc turns through, positive counter-clockwise, 0 for a
straight. Straights and arcs are exact. Elliptical arcs and cubic curves become pairs of arcs that
run within TOLERANCE of them, in their directions where the pairs meet, because a polyline holds
nothing else and one closed line is what a machine follows without joining.

A pair from p to q with the unit directions u and v: with t = u + v and w = q - p they meet in
(p + q + d (u - v)) / 2, where d = (sqrt((w.t)2 + 2 (1 - u.v) w.w) - w.t) / (2 (1 - u.v)).
"""

from __future__ import annotations

import math
from collections.abc import Iterable

import numpy as np

from veneerwb.core.outlines.curves import Curve, EllipseArc
from veneerwb.core.outlines.edge import Arc, Line, Point, Segment

TOLERANCE = 1e-4
"""mm."""
_LEAST = 1e-6  # a share of a curve that is parted no more
_SAMPLES = np.linspace(0.0, 1.0, 9)[1:-1]

Vertex = tuple[float, float, float]
"""x, y and the bulge of what leaves there."""


def vertices(edge: Iterable[Segment], tolerance: float = TOLERANCE) -> list[Vertex]:
    """The vertices of a run, the end of the last segment left out."""
    found: list[Vertex] = []
    for segment in edge:
        if isinstance(segment, Line):
            found.append((*segment.a, 0.0))
        elif isinstance(segment, Arc):
            found += _of_arc(segment)
        else:
            found += _of_bent(segment, 0.0, 1.0, tolerance)
    return found


def _of_arc(arc: Arc) -> list[Vertex]:
    parts = max(1, math.ceil(abs(arc.sweep) / 180.0 - 1e-9))
    bulge = math.tan(math.radians(arc.sweep / parts / 4.0))
    return [(*arc.at(k / parts), bulge) for k in range(parts)]


def _of_bent(
    bent: EllipseArc | Curve, first: float, last: float, tolerance: float
) -> list[Vertex]:
    p, q, u, v = bent.at(first), bent.at(last), bent.slope(first), bent.slope(last)
    if last - first < _LEAST:
        return [(*p, 0.0)]
    joint = _joint(p, q, u, v)
    if joint is not None:
        turns = _turn(u, p, joint), -_turn((-v[0], -v[1]), q, joint)
        shares = first + _SAMPLES * (last - first)
        places = bent.path(shares)[0]
        off = np.minimum(
            _off(places, p, u, turns[0], joint), _off(places, joint, None, turns[1], q)
        )
        if max(map(abs, turns)) < math.pi / 4.0 and off.max() <= tolerance:
            return [(*p, math.tan(turns[0] / 2.0)), (*joint, math.tan(turns[1] / 2.0))]
    middle = 0.5 * (first + last)
    return [
        *_of_bent(bent, first, middle, tolerance), *_of_bent(bent, middle, last, tolerance)
    ]


def _joint(p: Point, q: Point, u: Point, v: Point) -> Point | None:
    wx, wy, tx, ty = q[0] - p[0], q[1] - p[1], u[0] + v[0], u[1] + v[1]
    across, along, square = 1.0 - (u[0] * v[0] + u[1] * v[1]), wx * tx + wy * ty, wx * wx + wy * wy
    if along <= 0.0:
        return None
    # The root's conjugate, which is right for directions that are nearly one, too.
    d = square / (math.sqrt(along * along + 2.0 * across * square) + along)
    return (
        (p[0] + q[0] + d * (u[0] - v[0])) / 2.0, (p[1] + q[1] + d * (u[1] - v[1])) / 2.0
    )


def _turn(way: Point, start: Point, end: Point) -> float:
    """The angle from a direction to the chord: half of what an arc turns through, radians."""
    x, y = end[0] - start[0], end[1] - start[1]
    return math.atan2(way[0] * y - way[1] * x, way[0] * x + way[1] * y)


def _off(
    places: np.ndarray, start: Point, way: Point | None, turn: float, end: Point
) -> np.ndarray:
    """How far places lie off an arc's circle (or a straight), mm."""
    x, y = end[0] - start[0], end[1] - start[1]
    chord = math.hypot(x, y)
    if way is None:  # the direction at the start, from the chord's
        c, s = math.cos(turn), math.sin(turn)
        way = ((x * c + y * s) / chord, (y * c - x * s) / chord)
    offset = places - start
    square = -way[1] * offset[:, 0] + way[0] * offset[:, 1]
    along = way[0] * offset[:, 0] + way[1] * offset[:, 1]
    # Off a circle of curvature k through the origin: s - k (s2 + a2) / 2, to first order.
    return np.abs(square - math.sin(turn) / chord * (square**2 + along**2))

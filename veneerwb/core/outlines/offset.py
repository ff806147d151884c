# SPDX-License-Identifier: LGPL-2.1-or-later
"""The edge a distance inside or outside another: exact for straights and arcs, within 0.001 mm for
other curves.

Each segment is moved aside, and those that no longer meet are lengthened (corners stay sharp) or
trimmed to where they do. What is trimmed away altogether is left out. Where the result would cross
itself, straights stand for it: those of the polygon's parallel.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache

import numpy as np
from shapely.geometry import Polygon

from veneerwb.core.errors import VeneerError
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.corners import meeting, nearest_crossing
from veneerwb.core.outlines.curves import Curve, EllipseArc, Path, fitted
from veneerwb.core.outlines.edge import Arc, Edge, Line, Point, Segment
from veneerwb.core.outlines.region import joined
from veneerwb.core.plane import SAGITTA, SHORTEST, TOUCH, sind

SHARPEST = 150.0
"""Degrees: where an edge turns by more, its parallel outside is cut square instead of running out
to a spike."""
LEAST_AREA = 1.0
"""mm2: where less is left, nothing is."""
_MITRE = 1.0 / math.cos(math.radians(SHARPEST / 2.0))
_FURTHEST = 45.0  # degrees: an arc goes on over no more to meet its neighbour, then straight on
_ALIKE = 0.01  # share of the area by which corners along arcs may differ from those along straights
_FINEST = 1e-3  # mm: no polygon need follow an edge more nearly
_STEEPEST = 1e-3  # a curve that shrinks to less than this of its length comes to a point

Run = list[Segment]


@lru_cache(maxsize=128)
def parallel(edge: Edge, by: float) -> Edge:
    """The edge `by` mm outside a closed counter-clockwise one (inside where it is less than 0).

    VeneerError where nothing is left inside, or not in one piece.
    """
    if abs(by) <= TOUCH:
        return edge
    found = _true(edge, by)
    return found if found is not None else _of_straights(edge, by)


def widest(edge: Edge) -> float:
    """How far inside an edge its parallel may lie and be in one piece, mm, rounded down to 0.1 (or
    to a hundredth of itself)."""
    shape = edges.polygon(edge)
    left, low, right, high = shape.bounds
    works, fails = 0.0, min(right - left, high - low) / 2.0 + SHORTEST
    while fails - works > max(1e-5 * works, SHORTEST):
        middle = 0.5 * (works + fails)
        if _left(_buffered(shape, -middle)):
            works = middle
        else:
            fails = middle
    step = 0.1 if works >= 10.0 else 10.0 ** (math.floor(math.log10(max(works, SHORTEST))) - 1)
    return round(math.floor(works / step) * step, 6)


def _true(edge: Edge, by: float) -> Edge | None:
    """The parallel as true segments, if that neither crosses itself nor comes too near."""
    sides: list[Run] = []
    for segment in edge:
        side = aside(segment, by)
        if side is None:
            return None
        if side:
            sides.append(side)
    while sides:
        runs = _met([list(side) for side in sides], by)
        if runs is None:
            return None
        kept = [side for side, run in zip(sides, runs) if run]
        if len(kept) == len(sides):
            found = joined([segment for run in runs for segment in run])
            return found if _sound(edge, found, by) else None
        sides = kept
    return None


def aside(segment: Segment, by: float) -> Run | None:
    """A segment moved `by` to its right; empty where an arc shrinks away, None where a curve comes
    to a point."""
    if isinstance(segment, Line):
        x, y = segment.slope(0.0)
        (ax, ay), (bx, by_) = segment.a, segment.b
        dx, dy = by * y, -by * x
        return [replace(segment, a=(ax + dx, ay + dy), b=(bx + dx, by_ + dy))]
    if isinstance(segment, Arc):
        radius = segment.radius + math.copysign(by, by * segment.sweep)
        return [replace(segment, radius=radius)] if radius > TOUCH else []
    path, shares = _path_aside(segment, by), np.linspace(0.0, 1.0, 257)
    _, before = segment.path(shares)
    with np.errstate(all="ignore"):  # a curve that stands still is no number there, and refused
        _, slopes = path(shares)
    if not ((slopes * before).sum(axis=1) > _STEEPEST * (before**2).sum(axis=1)).all():
        return None
    return list(fitted(path, 0.0, 1.0, segment.role))


def _path_aside(segment: EllipseArc | Curve, by: float) -> Path:
    """Q = P + by N with N to the right of P', so that Q' = (1 + by k) P', k its curvature."""

    def path(shares: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        places, slopes = segment.path(shares)
        (x, y), (u, v), size = slopes.T, segment.bends(shares).T, np.hypot(*slopes.T)
        factor = 1.0 + by * (x * v - y * u) / size**3
        return places + by * np.column_stack((y, -x)) / size[:, None], slopes * factor[:, None]

    return path


def _met(runs: list[Run], by: float) -> list[Run] | None:
    """Runs made to meet one another round the edge; one that is trimmed away is left empty. None
    where two do not meet."""
    first = [run[0] for run in runs]
    corners = []
    for k, run in enumerate(runs):
        following = runs[(k + 1) % len(runs)]
        corner = _corner(run, following, by, alone=len(runs) == 1)
        if corner is None:
            return None
        corners.append(corner)
    out = []
    for k, run in enumerate(runs):
        begin, finish = corners[k - 1], corners[k]
        if len(run) == 1 and isinstance(run[0], Line | Arc):
            run = _between(first[k], begin[-1], finish[0])
        out.append(run + _links(finish) if run else run)
    return out


def _corner(run: Run, following: Run, by: float, alone: bool) -> list[Point] | None:
    """The points by which a run goes on into the following one; curves are trimmed in place."""
    a, b = run[-1], following[0]
    gap = math.dist(a.end, b.start)
    if gap <= TOUCH:
        return [a.end] if alone else [a.end, b.start]
    (ux, uy), (vx, vy) = a.slope(1.0), b.slope(0.0)
    across, ahead = ux * vy - uy * vx, ux * vx + uy * vy
    opening = across * by > 0.0
    plain = isinstance(a, Line | Arc) and isinstance(b, Line | Arc)
    if opening and math.degrees(math.atan2(abs(across), ahead)) > SHARPEST:
        return _square(a, b, by)
    if plain and not alone:
        point = meeting(a, b)
        if point is not None and not (opening and (_far_round(a, point) or _far_round(b, point))):
            return [point]
    if opening:
        middle = meeting(Line(_back(a.end, (ux, uy)), a.end), Line(b.start, _on(b.start, (vx, vy))))
        return [a.end, *([middle] if middle else []), b.start]
    if gap <= SHORTEST:
        return [a.end, b.start]
    return None if alone or plain else nearest_crossing(run, following)


def _far_round(segment: Line | Arc, point: Point) -> bool:
    """Whether an arc would have to go on over more than _FURTHEST degrees to a point."""
    if isinstance(segment, Line):
        return False
    away = min(math.dist(segment.start, point), math.dist(segment.end, point))
    return away > 2.0 * segment.radius * sind(_FURTHEST / 2.0)


def _square(a: Segment, b: Segment, by: float) -> list[Point]:
    """A spike cut off square: both sides go on until a straight `by` from the corner joins them."""
    (ux, uy), (vx, vy) = a.slope(1.0), b.slope(0.0)
    turn = math.atan2(abs(ux * vy - uy * vx), ux * vx + uy * vy)
    far = abs(by) * math.tan(turn / 4.0)
    return [a.end, _on(a.end, (ux, uy), far), _on(b.start, (vx, vy), -far), b.start]


def _on(point: Point, slope: Point, far: float = 1.0) -> Point:
    return point[0] + far * slope[0], point[1] + far * slope[1]


def _back(point: Point, slope: Point) -> Point:
    return _on(point, slope, -1.0)


def _between(segment: Line | Arc, start: Point, end: Point) -> Run:
    """A straight or an arc lengthened or trimmed to two points on it; empty if it would run
    backwards."""
    if isinstance(segment, Line):
        x, y = segment.slope(0.0)
        if (end[0] - start[0]) * x + (end[1] - start[1]) * y <= TOUCH:
            return []
        return [replace(segment, a=start, b=end)]
    begin = _turned(segment, start, segment.begin)
    sweep = _turned(segment, end, segment.begin + segment.sweep) - begin
    if sweep * segment.sweep <= 0.0 or abs(sweep) > 360.0:
        return []
    return [replace(segment, begin=begin, sweep=sweep)]


def _turned(arc: Arc, point: Point, near: float) -> float:
    """The direction of a point from an arc's centre, within half a turn of `near`."""
    if math.dist(point, arc.centre) == 0.0:
        return near
    turn = math.degrees(math.atan2(point[1] - arc.centre[1], point[0] - arc.centre[0]))
    away = math.remainder(turn - near, 360.0)
    return near + away if arc.radius * math.radians(abs(away)) > TOUCH / 100.0 else near


def _links(points: Sequence[Point]) -> Run:
    return [Line(p, q) for p, q in zip(points, points[1:]) if math.dist(p, q) > TOUCH]


def _sound(edge: Edge, found: Edge, by: float) -> bool:
    """Whether a parallel is simple, runs the right way round, lies as far away as it should and
    holds about what the polygon's does."""
    if edges.area(found) < LEAST_AREA:
        return False
    if len(edge) == len(found) == 1 and isinstance(found[0], Arc):
        return True
    fine = min(SAGITTA, max(abs(by) / 20.0, _FINEST))
    before, after = edges.polygon(edge, fine), edges.polygon(found, fine)
    if not (after.is_valid and after.exterior.is_ccw):
        return False
    if before.exterior.distance(after.exterior) < abs(by) - 3.0 * fine:
        return False
    other, spike = _buffered(before, by), max(by, 0.0) * _MITRE
    room = _ALIKE * after.area + spike * spike
    return _left(other) and abs(Polygon(other.exterior).area - after.area) < room


def _buffered(shape: Polygon, by: float) -> Polygon:
    return shape.buffer(by, join_style=2, mitre_limit=_MITRE)


def _left(shape: Polygon) -> bool:
    return shape.geom_type == "Polygon" and shape.area >= LEAST_AREA


def _of_straights(edge: Edge, by: float) -> Edge:
    shape = _buffered(edges.polygon(edge), by)
    if not _left(shape):
        raise VeneerError(
            "too-wide",
            "A border {width} mm wide leaves nothing of this top within it in one piece: the "
            "widest is {most} mm.",
            width=-by,
            most=widest(edge),
        )
    ring = list(shape.exterior.coords)[:-1]
    return joined(edges.straights(ring if shape.exterior.is_ccw else ring[::-1]))

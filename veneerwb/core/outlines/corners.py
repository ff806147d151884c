# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where two neighbouring segments of a parallel edge meet."""

from __future__ import annotations

import math
from collections.abc import Iterator

import numpy as np
from shapely.geometry import LineString

from veneerwb.core.outlines.edge import Arc, Line, Point, Segment
from veneerwb.core.plane import TOUCH

_FINE = 0.001  # mm: how near polylines follow curves whose crossing is looked for


def meeting(a: Line | Arc, b: Line | Arc) -> Point | None:
    """Where the whole straight or circle of `a` meets that of `b`, nearest to the end of the one
    and the start of the other; None if nowhere."""
    (x, y), (u, v) = a.end, b.start
    middle = 0.5 * (x + u), 0.5 * (y + v)
    return min(_common(a, b), key=lambda p: math.dist(p, middle), default=None)


def _common(a: Line | Arc, b: Line | Arc) -> list[Point]:
    if isinstance(a, Line) and isinstance(b, Line):
        (ux, uy), (vx, vy) = a.slope(0.0), b.slope(0.0)
        across = ux * vy - uy * vx
        if abs(across) < 1e-12:
            return []
        far = ((b.a[0] - a.b[0]) * vy - (b.a[1] - a.b[1]) * vx) / across
        return [(a.b[0] + far * ux, a.b[1] + far * uy)]
    if isinstance(a, Line):
        return _common(b, a)
    return _on_circle(a, *(_normal(b) if isinstance(b, Line) else _chord(a, b)))


def _normal(line: Line) -> tuple[Point, float]:
    """The straight as the points p with p . n = offset."""
    x, y = line.slope(0.0)
    return (y, -x), y * line.a[0] - x * line.a[1]


def _chord(a: Arc, b: Arc) -> tuple[Point, float]:
    """The straight through the places where two circles meet."""
    (ax, ay), (bx, by) = a.centre, b.centre
    apart = math.dist(a.centre, b.centre)
    if apart <= TOUCH:
        return (1.0, 0.0), math.inf
    n = (bx - ax) / apart, (by - ay) / apart
    away = (apart**2 + a.radius**2 - b.radius**2) / (2.0 * apart)
    return n, n[0] * ax + n[1] * ay + away


def _on_circle(arc: Arc, n: Point, offset: float) -> list[Point]:
    away = offset - (n[0] * arc.centre[0] + n[1] * arc.centre[1])
    if abs(away) > arc.radius:
        return []
    half = math.sqrt(arc.radius**2 - away**2)
    (cx, cy), (nx, ny) = arc.centre, n
    return [(cx + away * nx - s * half * ny, cy + away * ny + s * half * nx) for s in (1.0, -1.0)]


def nearest_crossing(run: list[Segment], following: list[Segment]) -> list[Point] | None:
    """Where two runs cross that overlap at a corner, the nearest place to it; both are trimmed to
    it in place. None if they do not."""
    pairs = ((i, j) for i in range(len(run)) for j in range(len(following)))
    for i, j in sorted(pairs, key=sum):
        found = _crossing(run[-1 - i], following[j])
        if found is not None:
            s, t = found
            end, start = run[-1 - i].part(0.0, s), following[j].part(t, 1.0)
            run[len(run) - 1 - i :] = [end]
            following[: j + 1] = [start]
            return [end.end, start.start]
    return None


def _crossing(a: Segment, b: Segment) -> tuple[float, float] | None:
    """Shares at which two segments cross, the last of `a`'s."""
    places = sorted(_places(a, b), reverse=True)
    for s, t in places:
        found = _sharpened(a, b, s, t)
        if found is not None:
            return found
    return None


def _places(a: Segment, b: Segment) -> Iterator[tuple[float, float]]:
    """About where the polylines of two segments cross."""
    common = _polyline(a).intersection(_polyline(b))
    for point in getattr(common, "geoms", [common]):
        if not point.is_empty and point.geom_type == "Point":
            place = point.x, point.y
            yield _nearest_share(a, place), _nearest_share(b, place)


def _polyline(segment: Segment) -> LineString:
    return LineString([*segment.points(_FINE), segment.end])


def _nearest_share(segment: Segment, point: Point) -> float:
    shares = np.linspace(0.0, 1.0, 65)
    away = [math.dist(segment.at(float(s)), point) for s in shares]
    return float(shares[int(np.argmin(away))])


def _sharpened(a: Segment, b: Segment, s: float, t: float) -> tuple[float, float] | None:
    """Newton's way to a.at(s) == b.at(t)."""
    for _ in range(30):
        (ax, ay), (bx, by) = a.at(s), b.at(t)
        (ux, uy), (vx, vy) = _slope(a, s), _slope(b, t)
        across = ux * vy - uy * vx
        if across == 0.0:
            return None
        x, y = bx - ax, by - ay
        s, t = s + (x * vy - y * vx) / across, t + (x * uy - y * ux) / across
        if not (-0.1 < s < 1.1 and -0.1 < t < 1.1):
            return None
    close = math.dist(a.at(s), b.at(t)) <= TOUCH
    return (s, t) if close and 0.0 < s < 1.0 and 0.0 < t < 1.0 else None


def crossing_at(a: Segment, b: Segment, near: Point) -> tuple[float, float] | None:
    """Shares at which two segments cross, about at a point; None if they do not between their
    ends."""
    return _sharpened(a, b, _nearest_share(a, near), _nearest_share(b, near))


def share_at(segment: Segment, point: Point) -> float:
    """The share at which a segment passes nearest to a point."""
    share = _nearest_share(segment, point)
    for _ in range(10):
        (x, y), (u, v) = segment.at(share), _slope(segment, share)
        share += ((point[0] - x) * u + (point[1] - y) * v) / max(u * u + v * v, TOUCH)
        share = min(1.0, max(0.0, share))
    return share


def _slope(segment: Segment, share: float) -> Point:
    """mm a share."""
    if isinstance(segment, Line | Arc):
        x, y = segment.slope(share)
        return segment.length * x, segment.length * y
    _, ((x, y),) = segment.path(np.array([share]))
    return float(x), float(y)

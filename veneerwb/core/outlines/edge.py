# SPDX-License-Identifier: LGPL-2.1-or-later
"""True edges: closed runs of segments, counter-clockwise, each marked seam or rim.

Segments are straights and arcs (here) and elliptical arcs and cubic curves (`curves`). Solids and
drawings use them; polygons for shapely are derived from them at plane.SAGITTA.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from shapely.geometry import Polygon

from veneerwb.core.outlines.curves import Curve, EllipseArc, Ends
from veneerwb.core.outlines.quicker import carry_signatures
from veneerwb.core.plane import SAGITTA, TOUCH, Motion, Point, cosd, polar, sind, snapped

carry_signatures()


@dataclass(frozen=True)
class Line:
    """The straight from `a` to `b` (mm)."""

    a: Point
    b: Point
    role: str = "rim"

    @property
    def start(self) -> Point:
        return self.a

    @property
    def end(self) -> Point:
        return self.b

    @property
    def length(self) -> float:
        return math.dist(self.a, self.b)

    @property
    def swept(self) -> float:
        """Half the integral of x dy - y dx along it (Green's theorem), mm2."""
        return 0.5 * (self.a[0] * self.b[1] - self.b[0] * self.a[1])

    @property
    def reach(self) -> float:
        """The furthest that it lies from the origin, mm."""
        return max(math.hypot(*self.a), math.hypot(*self.b))

    def scaled(self, factor: float) -> Line:
        (ax, ay), (bx, by) = self.a, self.b
        return replace(self, a=(ax * factor, ay * factor), b=(bx * factor, by * factor))

    def moved(self, motion: Motion) -> Line:
        return Line(motion.point(self.a), motion.point(self.b), self.role)

    def reversed(self) -> Line:
        return replace(self, a=self.b, b=self.a)

    def points(self, sagitta: float = SAGITTA) -> list[Point]:
        """The points from its start on, its end left out."""
        return [self.a]

    def hit(self, degrees: float) -> float | None:
        """Where the ray from the origin meets it, as a share 0..1 of its length; None if
        nowhere."""
        ux, uy = polar(1.0, degrees)
        across_a = ux * self.a[1] - uy * self.a[0]
        across_b = ux * self.b[1] - uy * self.b[0]
        if across_a == across_b:
            return None
        share = snapped(across_a / (across_a - across_b), self.length)
        if not 0.0 <= share <= 1.0:
            return None
        x, y = self.at(share)
        return share if ux * x + uy * y > 0.0 else None

    def at(self, share: float) -> Point:
        """The point at a share 0..1 of its length; the ends exactly."""
        if share in (0.0, 1.0):
            return self.b if share else self.a
        (ax, ay), (bx, by) = self.a, self.b
        return ax + share * (bx - ax), ay + share * (by - ay)

    def slope(self, share: float) -> Point:
        """The unit vector along it at a share."""
        return (self.b[0] - self.a[0]) / self.length, (self.b[1] - self.a[1]) / self.length

    def extremes(self, degrees: float) -> list[Point]:
        """The points between its ends that lie furthest or least far in a direction."""
        return []

    def part(self, first: float, last: float) -> Line:
        return replace(self, a=self.at(first), b=self.at(last))

    def crossings(self, normal: float, offset: float) -> list[float]:
        """The shares, rising, between its ends where it crosses the straight of the points p with
        p . (cos normal, sin normal) = offset (degrees, mm)."""
        ux, uy = polar(1.0, normal)
        a, b = (ux * x + uy * y - offset for x, y in (self.a, self.b))
        if min(abs(a), abs(b)) <= TOUCH or (a > 0.0) == (b > 0.0):
            return []
        return [a / (a - b)]


@dataclass(frozen=True)
class Arc(Ends):
    """The arc about `centre` from direction `begin` over `sweep` degrees (positive:
    counter-clockwise)."""

    centre: Point
    radius: float
    begin: float
    sweep: float
    role: str = "rim"

    @property
    def length(self) -> float:
        return self.radius * math.radians(abs(self.sweep))

    @property
    def swept(self) -> float:
        """Half the integral of x dy - y dx along it (Green's theorem), mm2."""
        (ax, ay), (bx, by), (cx, cy) = self.start, self.end, self.centre
        about_centre = 0.5 * self.radius**2 * math.radians(self.sweep)
        return about_centre + 0.5 * (cx * (by - ay) - cy * (bx - ax))

    @property
    def reach(self) -> float:
        """The furthest that it lies from the origin, mm."""
        away = math.hypot(*self.centre)
        if away <= TOUCH:
            return self.radius + away
        if self._share(math.degrees(math.atan2(self.centre[1], self.centre[0]))) is not None:
            return away + self.radius
        return max(math.hypot(*self.start), math.hypot(*self.end))

    def scaled(self, factor: float) -> Arc:
        cx, cy = self.centre
        return replace(self, centre=(cx * factor, cy * factor), radius=self.radius * factor)

    def moved(self, motion: Motion) -> Arc:
        begin = motion.angle + (180.0 - self.begin if motion.mirrored else self.begin)
        sweep = -self.sweep if motion.mirrored else self.sweep
        return replace(self, centre=motion.point(self.centre), begin=begin, sweep=sweep)

    def reversed(self) -> Arc:
        return replace(self, begin=self.begin + self.sweep, sweep=-self.sweep)

    def points(self, sagitta: float = SAGITTA) -> list[Point]:
        """Points from its start on, its end left out, chords nowhere deeper than `sagitta` mm: a
        circle has four at least, or a tiny one would enclose nothing."""
        deep = max(math.sqrt(0.5), 1.0 - sagitta / self.radius)
        widest = 2.0 * math.degrees(math.acos(deep))
        count = max(1, math.ceil(abs(self.sweep) / max(widest, 1e-3)))
        turns = np.radians(self.begin + np.arange(1, count) * (self.sweep / count))
        x = self.centre[0] + self.radius * np.cos(turns)
        y = self.centre[1] + self.radius * np.sin(turns)
        return [self.start, *zip(x.tolist(), y.tolist())]

    def hit(self, degrees: float) -> float | None:
        """Where the ray from the origin meets it (the further place), as a share 0..1; None if
        nowhere."""
        ux, uy = polar(1.0, degrees)
        cx, cy = self.centre
        along, off = ux * cx + uy * cy, ux * cy - uy * cx
        if abs(off) > self.radius:
            return None
        reach = along + math.sqrt(self.radius**2 - off**2)
        if reach <= 0.0:
            return None
        if cx == cy == 0.0:
            return self._share(degrees)
        return self._share(math.degrees(math.atan2(reach * uy - cy, reach * ux - cx)))

    def _share(self, direction: float) -> float | None:
        turn = (direction - self.begin) * (1.0 if self.sweep > 0.0 else -1.0) % 360.0
        whole = abs(self.sweep)
        for candidate in (turn, turn - 360.0):
            share = snapped(candidate / whole, self.length)
            if 0.0 <= share <= 1.0:
                return share
        return None

    def at(self, share: float) -> Point:
        """The point at a share 0..1 of its sweep."""
        x, y = polar(self.radius, self.begin + share * self.sweep)
        return self.centre[0] + x, self.centre[1] + y

    def slope(self, share: float) -> Point:
        """The unit vector along it at a share."""
        turn = self.begin + share * self.sweep + math.copysign(90.0, self.sweep)
        return cosd(turn), sind(turn)

    def extremes(self, degrees: float) -> list[Point]:
        """The points between its ends that lie furthest or least far in a direction."""
        shares = (self._share(degrees), self._share(degrees + 180.0))
        return [self.at(share) for share in shares if share is not None]

    def part(self, first: float, last: float) -> Arc:
        return replace(
            self, begin=self.begin + first * self.sweep, sweep=(last - first) * self.sweep
        )

    def crossings(self, normal: float, offset: float) -> list[float]:
        """As those of a Line; a straight that only touches it does not cross."""
        ux, uy = polar(1.0, normal)
        away = offset - (ux * self.centre[0] + uy * self.centre[1])
        if abs(away) >= self.radius - 1e-12:
            return []
        half = math.degrees(math.acos(away / self.radius))
        shares = (self._share(normal + turn) for turn in (half, -half))
        return sorted(s for s in shares if s is not None and 0.0 < s < 1.0)


Segment = Line | Arc | EllipseArc | Curve
Edge = tuple[Segment, ...]


def straights(points: Sequence[Point], role: str = "rim") -> Edge:
    """The closed run of straights through `points`."""
    return tuple(Line(a, b, role) for a, b in zip(points, [*points[1:], points[0]]))


def moved(edge: Iterable[Segment], motion: Motion) -> Edge:
    """The edge under `motion`, still counter-clockwise."""
    run = tuple(segment.moved(motion) for segment in edge)
    return tuple(s.reversed() for s in reversed(run)) if motion.mirrored else run


def area(edge: Iterable[Segment]) -> float:
    """Exact area in mm2 of a closed counter-clockwise edge (Green's theorem)."""
    return math.fsum(segment.swept for segment in edge)


def polygon(edge: Iterable[Segment], sagitta: float = SAGITTA) -> Polygon:
    """The shapely polygon inscribed in a closed edge."""
    return Polygon(points(edge, sagitta))


def points(edge: Iterable[Segment], sagitta: float = SAGITTA) -> list[Point]:
    """The corners of that polygon; three at least, however flat what lies between two segments."""
    run = tuple(edge)
    found = [p for segment in run for p in segment.points(sagitta)]
    if len(found) < 3:
        found = [p for segment in run for p in (segment.start, segment.at(0.5))]
    return found


def run_between(edge: Edge, first: float, last: float) -> Edge:
    """The run of a closed edge, seen from the origin, from direction `first` to direction `last`.

    The edge goes counter-clockwise round the origin and every ray meets it once. Directions in
    degrees.
    """
    if len(edge) == 1:
        return _round_between(edge[0], first, last)
    begin, share_begin = _hit(edge, first, leaving=True)
    end, share_end = _hit(edge, last, leaving=False)
    if begin == end and share_end > share_begin:
        return (edge[begin].part(share_begin, share_end),)
    run = [edge[begin].part(share_begin, 1.0)]
    k = (begin + 1) % len(edge)
    while k != end:
        run.append(edge[k])
        k = (k + 1) % len(edge)
    run.append(edge[end].part(0.0, share_end))
    return tuple(run)


def _round_between(closed: Segment, first: float, last: float) -> Edge:
    """The same of one segment that is closed in itself, wherever that closes."""
    if isinstance(closed, Arc) and closed.centre == (0.0, 0.0):
        return (replace(closed, begin=first, sweep=last - first),)
    (_, begin), (_, end) = _hit((closed,), first, True), _hit((closed,), last, False)
    if end - begin > TOUCH / closed.length:
        return (closed.part(begin, end),)
    if isinstance(closed, Curve):
        return closed.part(begin, 1.0), closed.part(0.0, end)
    return (closed.part(begin, end + 1.0),)


def _hit(edge: Edge, degrees: float, leaving: bool) -> tuple[int, float]:
    """The segment that a ray meets and the share along it; at a corner the one that leaves or
    arrives."""
    hits = [(k, s) for k, segment in enumerate(edge) if (s := segment.hit(degrees)) is not None]
    wanted = [(k, s) for k, s in hits if s != (1.0 if leaving else 0.0)]
    if wanted:
        return wanted[0]
    if not hits:
        raise ArithmeticError(f"no segment lies in direction {degrees}")
    # The ray passes so near a corner that only one of its two segments was met.
    k = hits[0][0] + (1 if leaving else -1)
    return k % len(edge), 0.0 if leaving else 1.0


def extent(edge: Iterable[Segment], degrees: float) -> tuple[float, float]:
    """(least, most) of the edge's points along direction `degrees`, mm, exact."""
    ux, uy = polar(1.0, degrees)
    places = [p for s in edge for p in (s.start, s.end, *s.extremes(degrees))]
    values = [ux * x + uy * y for x, y in places]
    return min(values), max(values)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Regions of the top: a true outline with holes, cut along straights without losing its curves."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from shapely.geometry import Point as ShapelyPoint
from shapely.geometry import Polygon

from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.curves import EllipseArc
from veneerwb.core.outlines.edge import Arc, Edge, Line, Point, Segment
from veneerwb.core.plane import TOUCH, Motion, cosd, polar, sind

NOTHING = 5e-7
"""mm2: less is what rounding leaves of a cut."""


@dataclass(frozen=True)
class Half:
    """The half plane of the points p with p . (cos `normal`, sin `normal`) <= `offset`: what lies
    behind a straight. `normal` in degrees, `offset` in mm from the origin."""

    normal: float
    offset: float

    @staticmethod
    def left_of(point: Point, direction: float) -> Half:
        """What lies to the left of the straight through `point` in `direction` (degrees)."""
        ux, uy = polar(1.0, direction - 90.0)
        return Half(direction - 90.0, ux * point[0] + uy * point[1])

    @property
    def other(self) -> Half:
        """What lies on the other side of the same straight."""
        return Half(self.normal + 180.0, -self.offset)

    def beyond(self, point: Point) -> float:
        """How far in mm a point lies outside (inside: less than 0)."""
        ux, uy = polar(1.0, self.normal)
        return ux * point[0] + uy * point[1] - self.offset

    def along(self, point: Point) -> float:
        """Where a point lies along the straight, rising with the inside on the left (mm)."""
        ux, uy = polar(1.0, self.normal + 90.0)
        return ux * point[0] + uy * point[1]

    def meets(self, other: Half) -> Point | None:
        """Where its straight meets that of another; None where they are as good as parallel."""
        across = sind(other.normal - self.normal)
        if abs(across) < 1e-6:
            return None
        along = (other.offset - self.offset * cosd(other.normal - self.normal)) / across
        (x, y), (u, v) = polar(self.offset, self.normal), polar(along, self.normal + 90.0)
        return x + u, y + v


@dataclass(frozen=True)
class Region:
    """A connected piece of the plane: `outer` runs counter-clockwise, `holes` run clockwise."""

    outer: Edge
    holes: tuple[Edge, ...] = ()

    @property
    def loops(self) -> tuple[Edge, ...]:
        return (self.outer, *self.holes)

    @property
    def area(self) -> float:
        """Exact area in mm2."""
        return math.fsum(edges.area(loop) for loop in self.loops)

    @property
    def polygon(self) -> Polygon:
        """The shapely polygon derived from the loops."""
        return Polygon(edges.points(self.outer), [edges.points(hole) for hole in self.holes])

    def extent(self, degrees: float) -> tuple[float, float]:
        """(least, most) of its points along a direction in degrees, mm, exact."""
        return edges.extent(self.outer, degrees)

    def moved(self, motion: Motion) -> Region:
        """The region under `motion`; the outline stays counter-clockwise, the holes clockwise."""
        return Region(*_pair([edges.moved(loop, motion) for loop in self.loops]))

    def cut(self, halves: Iterable[Half]) -> tuple[Region, ...]:
        """The connected parts of it that lie in all the half planes, in the order of their loops;
        straights that are cut are seams."""
        loops = self.loops
        for half in halves:
            loops = _behind(loops, half)
        return regions([part for loop in loops for part in _parted(_plain(loop))])


def _pair(loops: Sequence[Edge]) -> tuple[Edge, tuple[Edge, ...]]:
    return loops[0], tuple(loops[1:])


def regions(loops: Sequence[Edge]) -> tuple[Region, ...]:
    """Loops sorted into regions: the counter-clockwise ones, each with the clockwise ones that lie
    in it."""
    outer = [loop for loop in loops if edges.area(loop) > NOTHING]
    inner = [loop for loop in loops if edges.area(loop) < -NOTHING]
    if not inner:
        return tuple(Region(loop) for loop in outer)
    areas = [edges.polygon(loop) for loop in outer]
    holes: list[list[Edge]] = [[] for _ in outer]
    for loop in inner:
        inside = ShapelyPoint(*_within(loop))
        homes = [k for k, area in enumerate(areas) if area.contains(inside)]
        if homes:
            holes[min(homes, key=lambda k: areas[k].area)].append(loop)
    return tuple(Region(loop, tuple(more)) for loop, more in zip(outer, holes))


def _within(loop: Edge) -> Point:
    """A point within a loop."""
    area = Polygon(edges.points(loop))
    point = (area if area.is_valid else area.buffer(0.0)).representative_point()
    return point.x, point.y


@dataclass(frozen=True)
class _Joint(Line):
    """A straight that closes what lies `behind` a half plane. Its ends may be corners that lie a
    hair off that; where it is cut again, it is cut where the two straights meet, so that it has the
    same ends on both sides."""

    behind: Half = Half(0.0, 0.0)

    def cut(self, half: Half, share: float) -> tuple[_Joint, _Joint]:
        point = self.behind.meets(half) or self.at(share)
        return replace(self, b=point), replace(self, a=point)


def _plain(loop: Edge) -> Edge:
    return tuple(Line(s.a, s.b, s.role) if isinstance(s, _Joint) else s for s in loop)


@dataclass(frozen=True)
class _Chain:
    """A run of segments that stay behind the straight."""

    run: tuple[Segment, ...]

    @property
    def start(self) -> Point:
        return self.run[0].start

    @property
    def end(self) -> Point:
        return self.run[-1].end


def _behind(loops: Sequence[Edge], half: Half) -> tuple[Edge, ...]:
    """What of a region's loops lies in a half plane, closed along the straight.

    Whether a part lies within is told by its middle, and what meets what by its place in the loop,
    so that corners on the straight do no harm. Along the straight the ends of the chains and their
    beginnings alternate, since the region's inside lies always on the left.
    """
    whole: list[Edge] = []
    chains: list[_Chain] = []
    for loop in loops:
        parts = [part for segment in loop for part in _split(segment, half)]
        kept = [_is_behind(part, half) for part in parts]
        # What lies behind a straight through a hollow corner, or a hole's, is parted there.
        begins = [
            kept[k] and (not kept[k - 1] or abs(half.beyond(parts[k].start)) <= TOUCH)
            for k in range(len(parts))
        ]
        if all(kept) and (len(parts) == 1 or not any(begins)):
            whole.append(loop)
        elif any(kept):
            chains += _chains(parts, kept, begins)
    return (*whole, *_closed(chains, half))


def _split(segment: Segment, half: Half) -> list[Segment]:
    """A segment parted where it crosses the straight."""
    shares = [0.0, *segment.crossings(half.normal, half.offset), 1.0]
    if len(shares) == 2:
        return [segment]
    if isinstance(segment, _Joint):
        return list(segment.cut(half, shares[1]))
    return [segment.part(a, b) for a, b in zip(shares, shares[1:])]


def _is_behind(part: Segment, half: Half) -> bool:
    """A straight that lies on the cutting one belongs to the side on its left."""
    if isinstance(part, Line) and max(map(abs, map(half.beyond, (part.a, part.b)))) <= TOUCH:
        return half.along(part.b) > half.along(part.a)
    return half.beyond(part.at(0.5)) <= 0.0


def _chains(
    parts: Sequence[Segment], kept: Sequence[bool], begins: Sequence[bool]
) -> list[_Chain]:
    first = begins.index(True)
    found: list[list[Segment]] = []
    for k in range(first, first + len(parts)):
        k %= len(parts)
        if begins[k]:
            found.append([])
        if kept[k]:
            found[-1].append(parts[k])
    return [_Chain(tuple(run)) for run in found]


def _closed(chains: Sequence[_Chain], half: Half) -> list[Edge]:
    """The chains joined into loops along the straight: each end to the next beginning."""
    by_end = sorted(range(len(chains)), key=lambda k: half.along(chains[k].end))
    by_start = sorted(range(len(chains)), key=lambda k: half.along(chains[k].start))
    follows = dict(zip(by_end, by_start))
    loops: list[Edge] = []
    while follows:
        k = min(follows)
        run: list[Segment] = []
        while k in follows:
            following = follows.pop(k)
            run += chains[k].run
            joint = _Joint(chains[k].end, chains[following].start, "seam", half)
            if joint.length > TOUCH:
                run.append(joint)
            k = following
        loop = joined(run)
        if len(loop) > 1 or not isinstance(loop[0], Line):
            loops.append(loop)
    return loops


def _parted(loop: Edge) -> list[Edge]:
    """A loop parted where it comes back to a point that it has passed."""
    found: list[Edge] = []
    run: list[Segment] = []
    passed: dict[Point, int] = {}
    for segment in loop:
        passed[_key(segment.start)] = len(run)
        run.append(segment)
        begin = passed.get(_key(segment.end))
        if begin is not None and segment is not loop[-1]:
            found.append(tuple(run[begin:]))
            for gone in run[begin + 1 :]:
                passed.pop(_key(gone.start), None)
            del run[begin:]
    return [*found, tuple(run)]


def _key(point: Point) -> Point:
    return round(point[0], 6), round(point[1], 6)


def joined(run: Sequence[Segment]) -> Edge:
    """The closed run with segments that go on in one another made one."""
    out: list[Segment] = []
    for segment in run:
        whole = _one(out[-1], segment) if out else None
        out[-1:] = [whole] if whole else [*out[-1:], segment]
    whole = _one(out[-1], out[0]) if len(out) > 2 else None
    if whole:
        out = [whole, *out[1:-1]]
    return tuple(out)


def _one(a: Segment, b: Segment) -> Segment | None:
    """The segment that two are parts of, if they are."""
    if type(a) is not type(b) or a.role != b.role:
        return None
    if isinstance(a, Line):
        return replace(a, b=b.b) if _goes_on(a, b) else None
    if isinstance(a, Arc | EllipseArc) and replace(b, begin=a.begin, sweep=a.sweep) == a:
        away = math.remainder(a.begin + a.sweep - b.begin, 360.0)
        if a.sweep * b.sweep > 0.0 and abs(away) < 1e-9:
            return replace(a, sweep=a.sweep + b.sweep)
    return None


def _goes_on(a: Line, b: Line) -> bool:
    """Whether one straight takes the place of both and loses less than NOTHING of the area."""
    (ax, ay), (bx, by), (cx, cy) = a.a, a.b, b.b
    across = (bx - ax) * (cy - by) - (by - ay) * (cx - bx)
    ahead = (bx - ax) * (cx - bx) + (by - ay) * (cy - by)
    return ahead > 0.0 and abs(across) <= 2.0 * NOTHING

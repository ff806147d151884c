# SPDX-License-Identifier: LGPL-2.1-or-later
"""The edge round outlines that overlap, of true segments: what one cut through a stack must hold.

Two outlines are parted where they cross, what of the one lies in the other is left out, and the
rest is joined; where it runs along the other, it is kept once. Should that not close, the polygons'
union stands for it, within the sagitta.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace

from shapely.geometry import LineString, Point, Polygon
from shapely.ops import unary_union

from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.corners import crossing_at, share_at
from veneerwb.core.outlines.edge import Edge, Line, Segment
from veneerwb.core.outlines.region import joined
from veneerwb.core.plane import SHORTEST, TOUCH

FINE = 0.001
"""mm: how near polygons follow edges here."""
_BESIDE = 3.0 * FINE  # what lies nearer to the other outline runs along it


def unions(outlines: Sequence[Edge]) -> list[tuple[Edge, tuple[int, ...]]]:
    """The edges round connected groups of counter-clockwise outlines, each with the numbers (from
    0) of the outlines in it."""
    groups: list[tuple[Edge, tuple[int, ...]]] = []
    for k, outline in enumerate(outlines):
        members: tuple[int, ...] = (k,)
        apart = []
        for edge, others in groups:
            if _overlap(edge, outline):
                outline, members = _union(edge, outline), (*others, *members)
            else:
                apart.append((edge, others))
        groups = [*apart, (outline, tuple(sorted(members)))]
    return sorted(groups, key=lambda group: group[1])


def _overlap(a: Edge, b: Edge) -> bool:
    return _polygon(a).intersection(_polygon(b)).area > SHORTEST


def _polygon(edge: Edge) -> Polygon:
    shape = edges.polygon(edge, FINE)
    return shape if shape.is_valid else shape.buffer(0.0)


def _union(a: Edge, b: Edge) -> Edge:
    area_a, area_b = _polygon(a), _polygon(b)
    if _within(area_b, area_a):
        return a
    if _within(area_a, area_b):
        return b
    kept = [
        *(part for part in _split(a, b) if _counts(part, area_b, along=True)),
        *(part for part in _split(b, a) if _counts(part, area_a, along=False)),
    ]
    whole = unary_union([area_a, area_b])
    found = _chained(kept)
    if found is not None and _is_round(found, whole):
        return found
    return _of_straights(whole, (*a, *b))


def _within(inner: Polygon, outer: Polygon) -> bool:
    return outer.buffer(_BESIDE / 3.0).contains(inner)


def _is_round(edge: Edge, whole: Polygon) -> bool:
    """Whether an edge is the outline of a polygon, within what both are good to."""
    shape = edges.polygon(edge, FINE)
    return shape.is_valid and shape.symmetric_difference(whole).area < _BESIDE * whole.length


def _split(a: Edge, b: Edge) -> Iterator[Segment]:
    """The parts of `a` between the places where it meets `b`."""
    lines = [_polyline(other) for other in b]
    for segment in a:
        line, shares = _polyline(segment), {0.0, 1.0}
        for other, other_line in zip(b, lines):
            if line.distance(other_line) <= _BESIDE:
                shares |= set(_meetings(segment, line, other, other_line))
        near = TOUCH / max(segment.length, TOUCH)
        kept = [0.0]
        for share in sorted(shares)[1:]:
            if share - kept[-1] > near:
                kept.append(share)
        kept[-1] = 1.0
        yield from (segment.part(p, q) for p, q in zip(kept, kept[1:]))


def _polyline(segment: Segment) -> LineString:
    return LineString([*segment.points(FINE), segment.end])


def _meetings(
    segment: Segment, line: LineString, other: Segment, other_line: LineString
) -> Iterator[float]:
    """The shares at which a segment crosses another, or passes an end of it."""
    common = line.intersection(other_line)
    for place in getattr(common, "geoms", [common]):
        if place.geom_type == "Point" and not place.is_empty:
            found = crossing_at(segment, other, (place.x, place.y))
            if found is not None:
                yield found[0]
    for end in (other.start, other.end):
        if line.distance(Point(end)) <= _BESIDE:
            share = share_at(segment, end)
            if math.dist(segment.at(share), end) <= 100.0 * TOUCH:
                yield share


def _counts(part: Segment, other: Polygon, along: bool) -> bool:
    """Whether a part lies outside the other outline; where it runs along that, `along` says."""
    middle = Point(part.at(0.5))
    if other.exterior.distance(middle) > _BESIDE:
        return not other.contains(middle)
    u, v = part.slope(0.5)
    left = Point(middle.x - 10.0 * _BESIDE * v, middle.y + 10.0 * _BESIDE * u)
    return along and other.contains(left)


def _chained(parts: Sequence[Segment]) -> Edge | None:
    """The parts in the order of one closed run; None if they are none."""
    left = list(parts)
    if not left:
        return None
    run = [left.pop(0)]
    while left:
        k = min(range(len(left)), key=lambda k: math.dist(run[-1].end, left[k].start))
        gap = math.dist(run[-1].end, left[k].start)
        if gap > 2.0 * _BESIDE:
            return None
        run += _link(run[-1], left[k])
        run.append(left.pop(k))
    if math.dist(run[-1].end, run[0].start) > 2.0 * _BESIDE:
        return None
    return joined([*run, *_link(run[-1], run[0])])


def _link(a: Segment, b: Segment) -> list[Segment]:
    return [Line(a.end, b.start, a.role)] if math.dist(a.end, b.start) > TOUCH else []


def _of_straights(whole: Polygon, segments: Sequence[Segment]) -> Edge:
    """A polygon's outline, each straight with the role of the segment that it stands for."""
    if whole.geom_type != "Polygon":
        whole = max(whole.geoms, key=lambda part: part.area)
    ring = list(whole.exterior.coords)[:-1]
    ring = ring if whole.exterior.is_ccw else ring[::-1]
    lines = [_polyline(segment) for segment in segments]
    run = []
    for straight in edges.straights(ring):
        middle = Point(straight.at(0.5))
        k = min(range(len(lines)), key=lambda k: lines[k].distance(middle))
        run.append(replace(straight, role=segments[k].role))
    return joined(run)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The ring between an edge and its inset, parted into strips by mitres, butts or square joints.

A joint runs from a place on the outer edge to one on the inner; a strip lies between two joints and
keeps the true segments of both edges, so that strips fit one another and what lies beside them.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from veneerwb.core.errors import VeneerError
from veneerwb.core.outlines.edge import Edge, Line, Point, Segment
from veneerwb.core.outlines.offset import parallel
from veneerwb.core.outlines.region import Region, joined
from veneerwb.core.plane import TOUCH, cosd, polar, sind
from veneerwb.words import word

CORNER = 3.0
"""Degrees: where an edge turns by less it goes on smoothly (a 64-sided top turns by 5.6)."""


@dataclass(frozen=True)
class Stretch:
    """A strip as it is cut: its region, the run of the outer edge that it takes, and that run's
    direction in degrees (from its first joint to its last; None for a ring in one)."""

    region: Region
    run: Edge
    direction: float | None

    @property
    def length(self) -> float:
        """Of its outer side, mm."""
        return math.fsum(segment.length for segment in self.run)

    @property
    def curved(self) -> bool:
        return not all(isinstance(segment, Line) for segment in self.run)


@dataclass(frozen=True)
class _Place:
    """A place on an edge: the segment and the share along it, below 1."""

    index: int
    share: float


_Joint = tuple[_Place, _Place]


def reversed_edge(edge: Edge) -> Edge:
    """The closed run the other way about: an outline as a hole."""
    return tuple(segment.reversed() for segment in reversed(edge))


def ring(outer: Edge, inner: Edge) -> Region:
    """What lies between two edges, in one."""
    return Region(outer, (reversed_edge(inner),))


def strips(
    outer: Edge, inner: Edge, width: float, what: str, kind: str = "following", segments: int = 1
) -> list[Stretch]:
    """The ring of `width` mm between `outer` and `inner` as strips, counter-clockwise from the
    outer edge's start. `what` names it; `kind` and `segments` as those of a Border. VeneerError
    where such joints cannot be made."""
    corners = _corners(outer)
    if kind == "straight" and not (len(corners) == len(outer) and _all_straight(outer)):
        raise VeneerError(
            "not-straight",
            "A straight {what} needs a top with straight sides and corners; take a mitred one, or "
            "let it follow the edge.",
            what=word(what),
        )
    if kind == "mitred" and not corners:
        raise VeneerError(
            "no-corners",
            "The {what} has no corner to mitre on this top; let it follow the edge, in a number of "
            "segments.",
            what=word(what),
        )
    parts = segments if kind == "following" else 1
    try:
        return _cut(outer, inner, corners, width, kind, parts)
    except _NoJointError:
        raise _too_wide(outer, width, what, kind, parts) from None


class _NoJointError(Exception):
    """A joint that cannot be made; never seen outside."""


def _cut(
    outer: Edge, inner: Edge, corners: Sequence[int], width: float, kind: str, segments: int
) -> list[Stretch]:
    straight = kind == "straight"
    joints = (
        _butts(outer, inner, corners, width)
        if straight
        else _mitres(outer, inner, corners, width, segments)
    )
    whole = ring(outer, inner)
    if not joints:
        return [Stretch(whole, outer, None)]
    found = [_strip(outer, inner, a, b) for a, b in pairwise([*joints, joints[0]])]
    if straight:  # the end of one that runs through lies on its neighbour's side
        found = [replace(one, direction=_of_longest(one.run)) for one in found]
    if not _fits(found, whole):
        raise _NoJointError
    return found


def _too_wide(outer: Edge, width: float, what: str, kind: str, segments: int) -> VeneerError:
    """What is said of it, with the greatest width that works, to 0.1 mm."""
    corners = _corners(outer)

    def works(tenths: int) -> bool:
        try:
            _cut(outer, parallel(outer, -0.1 * tenths), corners, 0.1 * tenths, kind, segments)
        except (_NoJointError, VeneerError):
            return False
        return True

    least, most = 0, math.ceil(10.0 * width)
    while most - least > 1:
        middle = (least + most) // 2
        least, most = (middle, most) if works(middle) else (least, middle)
    if not least and kind == "straight":
        return VeneerError(
            "hollow-corner",
            "A straight {what} cannot turn this edge's hollow corner; take a mitred one.",
            what=word(what),
        )
    if not least:
        return VeneerError(
            "no-joint",
            "The {what} cannot be parted in {segments} on this edge; take fewer segments.",
            what=word(what), segments=segments,
        )  # fmt: skip
    return VeneerError(
        "no-joint",
        "The joints of a {kind} {what} {width} mm wide cannot be made on this edge; make it at "
        "most {most} mm wide.",
        kind=word(kind), what=word(what), width=width, most=least / 10.0,
    )  # fmt: skip


def _all_straight(edge: Edge) -> bool:
    return all(isinstance(segment, Line) for segment in edge)


def _of_longest(run: Sequence[Segment]) -> float:
    return _direction(max(run, key=lambda segment: segment.length), 0.5)


def _fits(found: Sequence[Stretch], whole: Region) -> bool:
    """Whether the strips make up the ring, none of them crossing itself."""
    total = math.fsum(one.region.area for one in found)
    return abs(total - whole.area) <= 1e-9 * whole.area and all(
        one.region.area > 0.0 and one.region.polygon.is_valid for one in found
    )


# --- where the joints are ----------------------------------------------------------------------


def _direction(segment: Segment, share: float) -> float:
    """The direction in degrees of an edge at a share of a segment."""
    x, y = segment.slope(share)
    return math.degrees(math.atan2(y, x))


def _turn(before: float, after: float) -> float:
    return math.remainder(after - before, 360.0)


def _corners(edge: Edge) -> list[int]:
    """The segments at whose start the edge turns."""
    if len(edge) == 1:
        return []
    ways = [(_direction(s, 0.0), _direction(s, 1.0)) for s in edge]
    return [k for k in range(len(edge)) if abs(_turn(ways[k - 1][1], ways[k][0])) > CORNER]


def _mitres(
    outer: Edge, inner: Edge, corners: Sequence[int], width: float, segments: int
) -> list[_Joint]:
    """A joint from each corner to the inner corner, and square ones that part the runs between."""
    if not corners:
        if segments == 1:
            return []
        places = _parted(outer, _indices(outer, 0, 0), segments)
        return [(place, _across(outer, inner, place, width)) for place in places]
    if len(corners) == 1:
        segments = max(2, segments)  # a ring with one joint would be a slit outline
    hollows = _inner_corners(outer, inner, corners, width)
    joints: list[_Joint] = []
    for n, corner in enumerate(corners):
        after = (n + 1) % len(corners)
        joints.append((_Place(corner, 0.0), hollows[n]))
        out = _indices(outer, corner, corners[after])
        within = _indices(inner, hollows[n].index, hollows[after].index)
        if hollows[n] == hollows[after] and len(corners) > 1:
            continue  # the inner side has run out
        joints += _between(outer, inner, out, within, width, segments)
    return joints


def _between(
    outer: Edge, inner: Edge, out: Sequence[int], within: Sequence[int], width: float, segments: int
) -> list[_Joint]:
    """The joints that part a run between two corners: square to it, even on its shorter side;
    where some would miss the other side (beside a hollow corner) even on both."""
    outside, inside = _parted(outer, out, segments)[1:], _parted(inner, within, segments)[1:]
    try:
        if _length(inner, within) <= _length(outer, out):
            return [(_across(inner, outer, place, -width), place) for place in inside]
        return [(place, _across(outer, inner, place, width)) for place in outside]
    except _NoJointError:
        return list(zip(outside, inside))


def _indices(edge: Edge, first: int, stop: int) -> list[int]:
    """The segments of a closed edge from one on, up to another (all of them where it is one)."""
    return [(first + k) % len(edge) for k in range((stop - first - 1) % len(edge) + 1)]


def _length(edge: Edge, run: Sequence[int]) -> float:
    return math.fsum(edge[k].length for k in run)


def _inner_corners(
    outer: Edge, inner: Edge, corners: Sequence[int], width: float
) -> list[_Place]:
    """To each outer corner its inner one (the same to two where the side between has run out): the
    beginning of the first inner segment that lies across from what follows the corner."""
    across = (_across(inner, outer, _Place(k, 0.5), -width) for k in range(len(inner)))
    along = [place.index + place.share for place in across]

    def after(corner: int) -> int:
        return min(range(len(inner)), key=lambda k: (along[k] - corner) % len(outer))

    return [_Place(after(corner), 0.0) for corner in corners]


def _parted(edge: Edge, run: Sequence[int], segments: int) -> list[_Place]:
    """The places where `segments` parts of even length of a run of segments begin."""
    lengths = [edge[k].length for k in run]
    total = math.fsum(lengths)
    places = [_Place(run[0], 0.0)]
    for n in range(1, segments):
        left = total * n / segments
        j = 0
        while j < len(run) - 1 and left >= lengths[j] - TOUCH:
            left -= lengths[j]
            j += 1
        left = max(0.0, left)
        share = 0.0 if left <= TOUCH else _share_at(edge[run[j]], left)
        places.append(_Place(run[j], share))
    return places


def _share_at(segment: Segment, length: float) -> float:
    """The share of a segment that is `length` mm long, by halving: not every kind of segment runs
    evenly."""
    share = length / segment.length
    if abs(segment.part(0.0, share).length - length) <= TOUCH:
        return share
    low, high = 0.0, 1.0
    while high - low > 1e-12:
        share = (low + high) / 2.0
        low, high = (share, high) if segment.part(0.0, share).length < length else (low, share)
    return share


def _across(edge: Edge, other: Edge, place: _Place, width: float) -> _Place:
    """The place of the other edge square across from a smooth place of one; `width`: how far it is
    to the left (to the right: below 0)."""
    segment = edge[place.index]
    heading = _direction(segment, place.share)
    if place.share == 0.0:
        before = _direction(edge[place.index - 1], 1.0)
        heading = before + _turn(before, heading) / 2.0
    point = segment.at(place.share)
    nx, ny = polar(1.0, heading + 90.0)
    wanted = (point[0] + width * nx, point[1] + width * ny)
    offset = cosd(heading) * point[0] + sind(heading) * point[1]
    found = (
        _Place(k, share)
        for k, part in enumerate(other)
        for share in (0.0, *part.crossings(heading, offset))
    )

    def apart(found: _Place) -> float:
        return math.dist(_at(other, found), wanted)

    # Of a corner and a place beside it the corner, or a crumb of a segment would be left.
    best = min(found, key=lambda one: (round(apart(one), 5), one.share > 0.0))
    if apart(best) > 0.1 * abs(width):
        raise _NoJointError
    return best


def _butts(outer: Edge, inner: Edge, corners: Sequence[int], width: float) -> list[_Joint]:
    """Joints along the inner sides of the strips that run through, out to the outer edge: those of
    the even sides at both their ends, with an odd number of sides each at its last end."""
    count = len(outer)
    ends = _inner_corners(outer, inner, corners, width)
    joints: list[_Joint] = []
    for k in range(count):
        before, after = outer[k - 1], outer[k]
        turn = _turn(_direction(before, 0.5), _direction(after, 0.5))
        away = width / sind(turn) if 0.0 < turn < 180.0 else math.inf
        first_through = count % 2 == 1 or k % 2 == 1
        side = after if first_through else before
        share = away / side.length
        if not share < 1.0:
            raise _NoJointError
        place = _Place(k, share) if first_through else _Place((k - 1) % count, 1.0 - share)
        joints.append((place, ends[k]))
    return joints


# --- what lies between them --------------------------------------------------------------------


def _strip(outer: Edge, inner: Edge, first: _Joint, last: _Joint) -> Stretch:
    (a, c), (b, d) = first, last
    out = _run(outer, a, b)
    back = _run(inner, c, d)
    far = (_at(outer, b), _at(inner, d))
    near = (_at(inner, c), _at(outer, a))
    loop = joined([
        *out, Line(*far, "seam"), *(s.reversed() for s in reversed(back)), Line(*near, "seam")
    ])  # fmt: skip
    (ax, ay), (bx, by) = near[1], far[0]
    return Stretch(Region(loop), tuple(out), math.degrees(math.atan2(by - ay, bx - ax)))


def _at(edge: Edge, place: _Place) -> Point:
    return edge[place.index].at(place.share)


def _run(edge: Edge, first: _Place, last: _Place) -> list[Segment]:
    """The run of an edge from one place on to another; none where they are one."""
    if first == last:
        return []
    if first.index == last.index and first.share < last.share:
        return [edge[first.index].part(first.share, last.share)]
    head = edge[first.index]
    run = [head if first.share == 0.0 else head.part(first.share, 1.0)]
    k = (first.index + 1) % len(edge)
    while k != last.index:
        run.append(edge[k])
        k = (k + 1) % len(edge)
    if last.share > 0.0:
        run.append(edge[k].part(0.0, last.share))
    return run

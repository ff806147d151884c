# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pieces as they are cut: their shapes on the leaf, corner by corner, and which are alike.

A shape is looked at from the face of its leaf. A wedge of a ring lies with its tip at the origin
and its axis along x; any other shape with its grain upright and its finished outline in the corner
of x and y, so that corners are measured from its left and lower ends.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from veneerwb.core.layout import Layout, Piece
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Edge, Line, Point, Segment
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import IDENTITY, TOUCH, Motion, polar
from veneerwb.core.shop.wedge import Wedge, is_ring, kinds

SHARES = (0.25, 0.5, 0.75)
"""Where along a curve that is no arc points are measured."""
ALIKE = 100.0 * TOUCH


@dataclass(frozen=True)
class Corner:
    """A corner of an outline, or a point on a curve (`number` 0): its place in mm, the `angle`
    within the outline in degrees (of a corner), and the side that runs on from it."""

    number: int
    x: float
    y: float
    angle: float = 0.0
    side: Side | None = None


@dataclass(frozen=True)
class Side:
    """What runs from a corner to the next: "seam", "rim" or "opening"; "straight", "arc" or
    "curve"; its `length`, the `chord` between its ends, an arc's `radius` and how far it rises over
    its chord (hollow: below 0), mm."""

    role: str
    form: str
    length: float
    chord: float
    radius: float = 0.0
    rise: float = 0.0


@dataclass(frozen=True)
class Shape:
    """A shape: its finished `net` outline and the `blank` that is cut, `holes` that are cut after
    pressing, the direction of the `grain` (degrees), the `positions` that are cut like it, and the
    `wedge` where it is one."""

    net: Edge
    blank: Edge
    holes: tuple[Edge, ...]
    grain: float
    positions: tuple[int, ...]
    size: tuple[float, float]
    blank_size: tuple[float, float]
    wedge: Wedge | None = None

    @property
    def oversized(self) -> bool:
        """Whether the blank is more than what is left in the end."""
        return edges.area(self.blank) - edges.area(self.net) > 1e-3

    @property
    def corners(self) -> tuple[Corner, ...]:
        """Those of the finished outline, counter-clockwise from the lowest (of several the one
        furthest left); of a wedge from its tip."""
        return corners_of(self.net)

    @property
    def blank_corners(self) -> tuple[Corner, ...]:
        """Those of the blank, in the same order where it has as many sides of the same kinds."""
        return corners_of(self.blank)

    @property
    def over(self) -> float:
        """How far the blank reaches beyond the finished outline at most, mm."""
        spans = [
            (edges.extent(self.blank, turn), edges.extent(self.net, turn)) for turn in (0.0, 90.0)
        ]
        return max(
            max(outer[1] - inner[1], inner[0] - outer[0]) for outer, inner in spans
        )


def shapes(layout: Layout) -> list[Shape]:
    """The shapes that differ, the largest first, each with all positions that are cut alike."""
    if is_ring(layout):
        return [_of_wedge(one, layout) for one in kinds(layout.pieces)]
    found: list[Shape] = []
    for piece in layout.pieces:
        shape = _shape(piece)
        for k, known in enumerate(found):
            if _alike(known, shape):
                found[k] = replace(known, positions=(*known.positions, piece.position))
                break
        else:
            found.append(shape)
    return sorted(found, key=lambda s: (-round(edges.area(s.net), 2), s.positions))


def _of_wedge(one: Wedge, layout: Layout) -> Shape:
    piece = layout.pieces[one.positions[0] - 1]
    return Shape(
        one.net, one.blank, (), one.grain, one.positions, _size(piece.edge, piece.onto_bundle),
        _size(piece.blank_edge, piece.onto_bundle), one,
    )  # fmt: skip


def _size(edge: Edge, motion: Motion = IDENTITY) -> tuple[float, float]:
    """Across the leaf and along the grain, mm."""
    drawn = edges.moved(edge, motion)
    spans = (edges.extent(drawn, turn) for turn in (0.0, 90.0))
    across, along = (most - least for least, most in spans)
    return across, along


def _shape(piece: Piece) -> Shape:
    region = Region(piece.edge, piece.holes).moved(piece.onto_bundle)
    blank = edges.moved(piece.blank_edge, piece.onto_bundle)
    (x0, _), (y0, _) = (region.extent(turn) for turn in (0.0, 90.0))
    to_corner = Motion(dx=-x0, dy=-y0)
    net = _from_lowest(edges.moved(region.outer, to_corner))
    blank = _like(edges.moved(blank, to_corner), net)
    holes = tuple(edges.moved(hole, to_corner) for hole in region.holes)
    return Shape(net, blank, holes, 90.0, (piece.position,), _size(net), _size(blank))


def _from_lowest(edge: Edge) -> Edge:
    first = min(
        range(len(edge)), key=lambda k: (round(edge[k].start[1], 4), round(edge[k].start[0], 4))
    )
    return (*edge[first:], *edge[:first])


def _like(blank: Edge, net: Edge) -> Edge:
    """The blank begun where its sides are of the same kinds as those of the net and lie nearest to
    them; from its lowest corner where none is like it."""
    turns = [(*blank[k:], *blank[:k]) for k in range(len(blank))]
    alike = [t for t in turns if _kinds(t) == _kinds(net)]
    if not alike:
        return _from_lowest(blank)
    return min(
        alike, key=lambda t: round(sum(math.dist(a.start, b.start) for a, b in zip(t, net)), 6)
    )


def _kinds(edge: Edge) -> list[tuple[str, str]]:
    return [(type(s).__name__, s.role) for s in edge]


def _alike(a: Shape, b: Shape) -> bool:
    runs = ((a.net, b.net), (a.blank, b.blank), *zip(a.holes, b.holes))
    return len(a.holes) == len(b.holes) and all(
        len(one) == len(other)
        and all(
            type(s) is type(t)
            and all(math.dist(s.at(share), t.at(share)) <= ALIKE for share in (0.0, 0.5))
            for s, t in zip(one, other)
        )
        for one, other in runs
    )


# --- corners --------------------------------------------------------------------------------------


def corners_of(edge: Edge, role: str = "") -> tuple[Corner, ...]:
    """The corners of a closed outline, numbered, with points on curves between them. `role`: what
    its sides are, if not what they say."""
    found: list[Corner] = []
    for k, segment in enumerate(edge):
        x, y = segment.start
        side = _side(segment, role)
        found.append(Corner(k + 1, x, y, _angle(edge[k - 1], segment), side))
        if side.form == "curve":
            found += [Corner(0, *segment.at(share)) for share in SHARES]
    return tuple(found)


def _angle(before: Segment, after: Segment) -> float:
    (ax, ay), (bx, by) = before.slope(1.0), after.slope(0.0)
    return 180.0 - math.degrees(math.atan2(ax * by - ay * bx, ax * bx + ay * by))


def _side(segment: Segment, role: str) -> Side:
    chord = math.dist(segment.start, segment.end)
    role = role or segment.role
    if isinstance(segment, Line):
        return Side(role, "straight", segment.length, chord)
    if isinstance(segment, Arc):
        rise = segment.radius * (1.0 - math.cos(math.radians(segment.sweep) / 2.0))
        return Side(
            role, "arc", segment.length, chord, segment.radius, math.copysign(rise, segment.sweep)
        )
    return Side(role, "curve", segment.length, chord)


def outward(edge: Edge, k: int) -> Point:
    """The direction, as a unit vector, that points away from an outline at its corner `k`."""
    before, after = edge[k - 1].slope(1.0), edge[k].slope(0.0)
    turn = math.degrees(math.atan2(before[1], before[0]))
    way = turn + math.remainder(math.degrees(math.atan2(after[1], after[0])) - turn, 360.0) / 2.0
    return polar(1.0, way - 90.0)


def seam_lines(layout: Layout) -> list[Segment]:
    """The seams of all pieces, those that have the same ends once."""
    found: dict[tuple[Point, ...], Segment] = {}
    for piece in layout.pieces:
        for segment in piece.edge:
            if segment.role == "seam":
                marks = (segment.start, segment.at(0.5), segment.end)
                rounded = [(round(x, 3) + 0.0, round(y, 3) + 0.0) for x, y in marks]
                found.setdefault(tuple(sorted(rounded)), segment)
    return list(found.values())

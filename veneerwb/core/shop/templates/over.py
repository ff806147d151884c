# SPDX-License-Identifier: LGPL-2.1-or-later
"""Seams cut over: an outline whose seam edges are moved out, each by its own measure.

Over by an angle turns a seam out about the tip, where the two straight seams of a piece meet, by
half of the angle; over by a width moves it out parallel. Its neighbours are lengthened until they
meet it. Moving both seams of a tip of angle a out by w moves the tip out along its axis by
w / sin(a / 2): pieces slide along their axes by as much and the ring still closes.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from veneerwb.core.errors import VeneerError
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.corners import meeting, share_at
from veneerwb.core.outlines.curves import Curve, EllipseArc
from veneerwb.core.outlines.edge import Arc, Edge, Line, Point, Segment
from veneerwb.core.outlines.offset import aside
from veneerwb.core.plane import SAGITTA, TOUCH, Motion, finite
from veneerwb.words import marked

MOST_ANGLE, MOST_WIDTH = 10.0, 50.0
"""Degrees and mm: more is a slip of the keyboard."""
PARALLEL = 0.01
"""Degrees: seams that differ by less in direction have no tip."""
_FURTHER = 0.25  # by this share of itself a curve may go on to meet a seam
_ROUND = 45.0  # degrees: an arc by no more


ANGLE = marked(
    "The angle that a seam is cut over cannot be {value}; give a number from 0 to {most}. Cut "
    "over, never under."
)
WIDTH = marked(
    "The width that a seam is cut over cannot be {value}; give a number from 0 to {most}. Cut "
    "over, never under."
)


@dataclass(frozen=True)
class Over:
    """How much over a seam is cut: by an `angle` (degrees that the tip is larger in all where both
    its seams are cut so; each is turned out by half), or by a `width` in mm. Neither: exactly."""

    angle: float = 0.0
    width: float = 0.0

    def __post_init__(self) -> None:
        for angle, value, most in (
            (True, self.angle, MOST_ANGLE),
            (False, self.width, MOST_WIDTH),
        ):
            name = marked("angle over") if angle else marked("width over")
            if not 0.0 <= finite(name, value) <= most:
                raise VeneerError(
                    "out-of-range",
                    ANGLE if angle else WIDTH,
                    value=float(value),
                    most=most,
                )
        if self.angle and self.width:
            raise VeneerError(
                "two-overs",
                "A seam is cut over by an angle or by a width, not by both; give 0 for one of "
                "them.",
            )

    @property
    def exact(self) -> bool:
        return not (self.angle or self.width)


EXACT = Over()


def seams_of(edge: Edge) -> list[int]:
    """The places of the seam edges in an outline."""
    return [k for k, segment in enumerate(edge) if segment.role == "seam"]


def tip_of(edge: Edge) -> Point | None:
    """Where the two straight seams of an outline meet, on it or (where the tip is cut off) beyond;
    None where it has not two, or where they are parallel."""
    straight = [s for s in edge if s.role == "seam" and isinstance(s, Line)]
    if len(straight) != 2:
        return None
    (ux, uy), (vx, vy) = (s.slope(0.0) for s in straight)
    if abs(ux * vy - uy * vx) < math.sin(math.radians(PARALLEL)):
        return None
    return meeting(straight[1], straight[0])


def overs_for(edge: Edge, overs: Over | Sequence[Over], what: str) -> list[Over]:
    """The Over of each seam edge of an outline, from one for all or from a list. `what` names the
    outline in the VeneerError for a list that does not fit."""
    count = len(seams_of(edge))
    if isinstance(overs, Over):
        return [overs] * count
    if len(overs) != count:
        raise VeneerError(
            "wrong-overs",
            "{what} has {count} seam edges and {given} overs are given; give one for all, or one "
            "for each seam edge, counter-clockwise.",
            what=what,
            count=count,
            given=len(overs),
        )
    return list(overs)


def cut_over(edge: Edge, overs: Sequence[Over], tip: Point | None, what: str) -> Edge:
    """An outline (counter-clockwise) with its seam edges moved out, each by its Over, about `tip`
    where it has one.

    VeneerError for an angle where there is no tip to turn about, and for what would make the
    outline cross itself.
    """
    places = seams_of(edge)
    sides, moved = list(edge), [False] * len(edge)
    for k, over in zip(places, overs):
        if over.exact:
            continue
        side = _moved_out(edge[k], over, tip, what)
        moved[k] = side is not edge[k]
        sides[k] = side
    if not any(moved):
        return edge
    found = _met(sides, moved)
    shape = edges.polygon(found)
    if not (shape.is_valid and shape.buffer(SAGITTA).contains(edges.polygon(edge))):
        raise VeneerError(
            "over-too-large",
            "{what} cannot be cut so much over: its outline would cross itself; give less.",
            what=what,
        )
    return found


def _moved_out(segment: Segment, over: Over, tip: Point | None, what: str) -> Segment:
    if over.width:
        run = aside(segment, over.width)
        if not run or len(run) != 1:
            raise VeneerError(
                "over-too-large",
                "{what} has a curved seam that cannot be moved out by {width} mm; give less.",
                what=what,
                width=over.width,
            )
        return run[0]
    if not isinstance(segment, Line):
        return segment  # a tip is opened at its straight seams
    if tip is None:
        raise VeneerError(
            "no-tip",
            "{what} does not run to the point where the pieces meet, so that no angle can be added "
            "there; give a width that its seams are cut over by.",
            what=what,
        )
    away = math.dist(segment.end, tip) > math.dist(segment.start, tip)
    turn = -over.angle / 2.0 if away else over.angle / 2.0
    return segment.moved(Motion.turn_about(*tip, turn))


def _met(sides: Sequence[Segment], moved: Sequence[bool]) -> Edge:
    """The sides made to meet where one of two has been moved."""
    count = len(sides)
    starts = [side.start for side in sides]
    ends = [side.end for side in sides]
    links: list[tuple[Line, ...]] = [()] * count
    for k in range(count):
        following = (k + 1) % count
        if not (moved[k] or moved[following]) or math.dist(ends[k], starts[following]) <= TOUCH:
            continue
        end, start = _corner(sides[k], sides[following])
        ends[k], starts[following] = end, start
        if math.dist(end, start) > TOUCH:
            rim = sides[k] if moved[following] else sides[following]
            links[k] = (Line(end, start, rim.role),)
    run: list[Segment] = []
    for k, side in enumerate(sides):
        run += [_between(side, starts[k], ends[k]), *links[k]]
    return tuple(run)


def _corner(a: Segment, b: Segment) -> tuple[Point, Point]:
    """Where a side, going on, ends, and where the following one begins: at one point where they
    meet, else a straight along the bent one's direction is to link them."""
    point = _meeting(a, b)
    if point is not None:
        return point, point
    ahead, behind = _along(a, 1.0), _along(b, 0.0)
    point = meeting(ahead, behind)
    if point is None or not (isinstance(a, Line) or isinstance(b, Line)):
        return a.end, b.start
    return (point, b.start) if isinstance(a, Line) else (a.end, point)


def _along(segment: Segment, share: float) -> Line:
    """The straight that touches a segment at one of its ends."""
    (x, y), (ux, uy) = segment.at(share), segment.slope(share)
    return Line((x - ux, y - uy), (x, y)) if share else Line((x, y), (x + ux, y + uy))


def _meeting(a: Segment, b: Segment) -> Point | None:
    """Where a side, going on, meets the following one."""
    if isinstance(a, Line | Arc) and isinstance(b, Line | Arc):
        point = meeting(a, b)
        far = point is None or any(_far_round(s, point) for s in (a, b))
        return None if far else point
    if isinstance(a, Line) and isinstance(b, EllipseArc | Curve):
        return _on_bent(b.part(-_FURTHER, 1.0), a, b.start)
    if isinstance(b, Line) and isinstance(a, EllipseArc | Curve):
        return _on_bent(a.part(0.0, 1.0 + _FURTHER), b, a.end)
    return None


def _on_bent(bent: EllipseArc | Curve, line: Line, near: Point) -> Point | None:
    """Where a curve crosses a straight, nearest to a point."""
    x, y = line.slope(0.0)
    normal = math.degrees(math.atan2(-x, y))
    shares = bent.crossings(normal, y * line.a[0] - x * line.a[1])
    return min(map(bent.at, shares), key=lambda p: math.dist(p, near), default=None)


def _far_round(segment: Line | Arc, point: Point) -> bool:
    """Whether an arc would have to go on over more than _ROUND degrees to a point."""
    if isinstance(segment, Line):
        return False
    away = min(math.dist(segment.start, point), math.dist(segment.end, point))
    return away > 2.0 * segment.radius * math.sin(math.radians(_ROUND / 2.0))


def _between(side: Segment, start: Point, end: Point) -> Segment:
    """A side lengthened or trimmed to two points on it."""
    if isinstance(side, Line):
        return replace(side, a=start, b=end)
    first = 0.0 if math.dist(start, side.start) <= TOUCH else _share_on(side, start)
    last = 1.0 if math.dist(end, side.end) <= TOUCH else _share_on(side, end)
    return side if (first, last) == (0.0, 1.0) else side.part(first, last)


def _share_on(side: Arc | EllipseArc | Curve, point: Point) -> float:
    """The share of a point on a side or beyond its ends."""
    if isinstance(side, Arc):
        turn = math.degrees(math.atan2(point[1] - side.centre[1], point[0] - side.centre[0]))
        middle = side.begin + side.sweep / 2.0
        return 0.5 + math.remainder(turn - middle, 360.0) / side.sweep
    wider = side.part(-_FURTHER, 1.0 + _FURTHER)
    return share_at(wider, point) * (1.0 + 2.0 * _FURTHER) - _FURTHER

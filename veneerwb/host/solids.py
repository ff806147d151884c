# SPDX-License-Identifier: LGPL-2.1-or-later
"""Solids of pieces: the finished outline raised by the leaf's thickness, true segments all.

The back of the veneer lies at z = 0, the show face at z = thickness. The faces of a piece come in
this order: one for each segment of its outline counter-clockwise (of a wedge: its first seam, the
rim, its last seam), those of its openings, back, show face.
"""

from __future__ import annotations

import hashlib
import math
import re
from typing import Any

import Part
from FreeCAD import Vector

from veneerwb.core.layout import Layout, Piece
from veneerwb.core.leaf import Bundle, Leaves
from veneerwb.core.outlines.curves import Curve, EllipseArc
from veneerwb.core.outlines.edge import Arc, Edge, Segment
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import TOUCH, Motion, polar

SHOW_FACE, BACK, FIRST_SEAM, LAST_SEAM = -1, -2, 0, -3
"""Places in a wedge's list of faces."""
_NUMBER = re.compile(r"-?\d+\.\d+(?:e[-+]?\d+)?")


def wedge_solid(piece: Piece, thickness: float) -> Any:
    """The solid of one piece. Where it has openings, their sides follow the outline's."""
    return solid_of(Region(piece.edge, piece.holes), thickness)


def solid_of(region: Region, thickness: float) -> Any:
    """A region raised from z = 0."""
    return face_of(region).extrude(Vector(0.0, 0.0, thickness))


def face_of(region: Region) -> Any:
    """A region as a face in the plane z = 0, its normal up."""
    return Part.Face([wire_of(loop) for loop in region.loops])


def wire_of(loop: Edge) -> Any:
    """A closed run of segments as a wire in the plane z = 0."""
    corners = _corners(loop)
    ends = [*corners[1:], corners[0]]
    return Part.Wire([_edge(*part) for part in zip(loop, corners, ends)])


def _corners(loop: Edge) -> list[Vector]:
    """Where the segments begin. Ends of segments may lie a hair apart; a straight, an arc and a
    cubic curve can be drawn from wherever its neighbour ends, a part of an ellipse cannot."""
    corners = [Vector(*segment.start, 0.0) for segment in loop]
    for k, segment in enumerate(loop):
        if isinstance(loop[k - 1], EllipseArc) and not isinstance(segment, EllipseArc):
            corners[k] = Vector(*loop[k - 1].end, 0.0)
    return corners


def _edge(segment: Segment, start: Vector, end: Vector) -> Any:
    if isinstance(segment, Arc):
        return _arc(segment, start, end)
    if isinstance(segment, EllipseArc):
        return _ellipse_arc(segment)
    if isinstance(segment, Curve):
        curve = Part.BezierCurve()
        curve.setPoles([start, Vector(*segment.c, 0.0), Vector(*segment.d, 0.0), end])
        return curve.toShape()
    return Part.LineSegment(start, end).toShape()


def _arc(arc: Arc, start: Vector, end: Vector) -> Any:
    if (end - start).Length > TOUCH or abs(arc.sweep) < 180.0:
        return Part.Arc(start, Vector(*arc.middle, 0.0), end).toShape()
    way = Vector(0.0, 0.0, math.copysign(1.0, arc.sweep))
    return Part.Circle(Vector(*arc.centre, 0.0), way, arc.radius).toShape()


def _ellipse_arc(arc: EllipseArc) -> Any:
    """The host wants the longer axis first, and a parameter that rises."""
    long, short, tilt, begin = arc.along, arc.across, arc.tilt, arc.begin
    if long < short:
        long, short, tilt, begin = short, long, tilt + 90.0, begin - 90.0
    sense = math.copysign(1.0, arc.sweep)
    centre = Vector(*arc.centre, 0.0)
    along, across = (Vector(*polar(*axis), 0.0) for axis in ((long, tilt), (short, tilt + 90.0)))
    ellipse = Part.Ellipse(centre + along, centre + across * sense, centre)
    first = math.radians(math.fmod(sense * begin, 360.0))
    return ellipse.toShape(first, first + math.radians(abs(arc.sweep)))


def compound(layout: Layout) -> Any:
    """One compound, one solid a piece, in the order of positions.

    Pieces that are one another's rotations about the centre share one solid's geometry.
    """
    made: dict[tuple[Any, ...], tuple[Any, float]] = {}
    solids = []
    for piece in layout.pieces:
        outline, direction = _turned_to_x(piece)
        if outline in made:
            solid, begin = made[outline]
            solids.append(solid.rotated(Vector(), Vector(0.0, 0.0, 1.0), direction - begin))
        else:
            solids.append(wedge_solid(piece, layout.bundle.thickness))
            made[outline] = solids[-1], direction
    return Part.Compound(solids)


def _turned_to_x(piece: Piece) -> tuple[tuple[Any, ...], float]:
    """The outline turned about the centre until its first segment's end points along x (starts,
    quarters and middles of its segments to 1e-7 mm, and their kinds), and the direction in degrees
    that this end has."""
    x, y = piece.edge[0].end
    direction = math.degrees(math.atan2(y, x))
    loops = (piece.edge, *piece.holes)
    kinds = tuple(type(s).__name__ for loop in loops for s in (*loop, None))
    points = [p for loop in loops for s in loop for p in (s.start, s.at(0.25), s.at(0.5))]
    turned = Motion(-direction).apply(points)
    return (kinds, *(turned.round(7) + 0.0).ravel()), direction


def shape_mark(layout: Layout) -> str:
    """A mark of everything that `compound` reads, so that equal marks mean equal shapes."""
    pieces = layout.pieces
    holes = [piece.holes for piece in pieces]
    return mark(
        layout.bundle.thickness, [piece.edge for piece in pieces], *([holes] if any(holes) else [])
    )


def piece_marks(layout: Layout) -> list[str]:
    """A mark of each piece: its outline, blank, leaf, side, place on the bundle and leaf, and what
    picture it shows where."""
    registers = [layout.bundle.register(p.leaf, p.turned) for p in layout.pieces]
    shown = [_shown(layout.bundle, piece) for piece in layout.pieces]
    told = [_Told(repr(piece).replace(", holes=(), cut=0)", ")")) for piece in layout.pieces]
    return [mark(*parts) for parts in zip(told, registers, shown)]


class _Told(str):
    """A piece as older documents have told of it."""

    __repr__ = str.__str__


def _shown(bundle: Leaves, piece: Piece) -> tuple[Any, ...]:
    if not isinstance(bundle, Bundle):
        return ()
    side = bundle.leaf(piece.leaf).side(piece.turned)
    return side.view, side.mm_per_px, side.image.sha256, side.image.gains


def mark(*values: Any) -> str:
    """A short mark of values; of numbers to 1e-6, for a saved document may lose the last digits."""
    text = _NUMBER.sub(lambda found: f"{round(float(found[0]), 6) + 0.0}", repr(values))
    return hashlib.sha256(text.encode()).hexdigest()[:16]

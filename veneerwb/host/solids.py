# SPDX-License-Identifier: LGPL-2.1-or-later
"""Solids of pieces: the finished outline raised by the leaf's thickness, true lines and arcs.

The back of the veneer lies at z = 0, the show face at z = thickness. The faces of a wedge come in
this order: its first seam, the rim's segments counter-clockwise, its last seam, back, show face.
"""

from __future__ import annotations

import hashlib
import math
import re
from collections.abc import Sequence
from typing import Any

import Part
from FreeCAD import Vector

from veneerwb.core.edge import Arc, Segment
from veneerwb.core.layout import Layout, Piece
from veneerwb.core.leaf import Bundle, Leaves
from veneerwb.core.plane import Motion

SHOW_FACE, BACK, FIRST_SEAM, LAST_SEAM = -1, -2, 0, -3
"""Places in a wedge's list of faces."""
_NUMBER = re.compile(r"-?\d+\.\d+(?:e[-+]?\d+)?")


def wedge_solid(piece: Piece, thickness: float) -> Any:
    """The solid of one piece."""
    corners = [Vector(*segment.start, 0.0) for segment in piece.edge]
    ends = [*corners[1:], corners[0]]
    wire = Part.Wire([_edge(*part) for part in zip(piece.edge, corners, ends)])
    return Part.Face(wire).extrude(Vector(0.0, 0.0, thickness))


def _edge(segment: Segment, start: Vector, end: Vector) -> Any:
    if isinstance(segment, Arc):
        return Part.Arc(start, Vector(*segment.middle, 0.0), end).toShape()
    return Part.LineSegment(start, end).toShape()


def compound(layout: Layout) -> Any:
    """One compound, one solid a piece, in the order of positions.

    Pieces that are one another's rotations about the centre share one solid's geometry.
    """
    made: dict[tuple[float, ...], tuple[Any, float]] = {}
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


def _turned_to_x(piece: Piece) -> tuple[tuple[float, ...], float]:
    """The outline turned about the centre until its first seam points along x (starts and middles
    of its segments, to 1e-7 mm), and the direction in degrees that this seam has."""
    x, y = piece.edge[0].end
    direction = math.degrees(math.atan2(y, x))
    points = [point for s in piece.edge for point in (s.start, s.at(0.5))]
    turned = Motion(-direction).apply(points)
    return tuple((turned.round(7) + 0.0).ravel()), direction


def shape_mark(layout: Layout) -> str:
    """A mark of everything that `compound` reads, so that equal marks mean equal shapes."""
    return mark(layout.bundle.thickness, [piece.edge for piece in layout.pieces])


def piece_marks(layout: Layout) -> list[str]:
    """A mark of each piece: its outline, blank, leaf, side, place on the bundle and leaf, and what
    picture it shows where."""
    registers = [layout.bundle.register(p.leaf, p.turned) for p in layout.pieces]
    shown = [_shown(layout.bundle, piece) for piece in layout.pieces]
    return [mark(*parts) for parts in zip(layout.pieces, registers, shown)]


def _shown(bundle: Leaves, piece: Piece) -> tuple[Any, ...]:
    if not isinstance(bundle, Bundle):
        return ()
    side = bundle.leaf(piece.leaf).side(piece.turned)
    return side.view, side.mm_per_px, side.image.sha256, side.image.gains


def mark(*values: Any) -> str:
    """A short mark of values; of numbers to 1e-6, for a saved document may lose the last digits."""
    text = _NUMBER.sub(lambda found: f"{round(float(found[0]), 6) + 0.0}", repr(values))
    return hashlib.sha256(text.encode()).hexdigest()[:16]


def show_faces(shape: Any) -> Sequence[Any]:
    """The show face of every piece of a compound, in the order of positions."""
    return [solid.Faces[SHOW_FACE] for solid in shape.Solids]

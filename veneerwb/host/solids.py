# SPDX-License-Identifier: LGPL-2.1-or-later
"""Solids of pieces: the finished outline raised by the leaf's thickness, true lines and arcs.

The back of the veneer lies at z = 0, the show face at z = thickness. The faces of a wedge come in
this order: its first seam, the rim's segments counter-clockwise, its last seam, back, show face.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from typing import Any

import Part
from FreeCAD import Vector

from veneerwb.core.edge import Arc, Segment
from veneerwb.core.layout import Layout, Piece

SHOW_FACE, BACK, FIRST_SEAM, LAST_SEAM = -1, -2, 0, -3
"""Places in a wedge's list of faces."""


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
    """One compound, one solid a piece, in the order of positions."""
    return Part.Compound([wedge_solid(piece, layout.bundle.thickness) for piece in layout.pieces])


def shape_mark(layout: Layout) -> str:
    """A mark of everything that `compound` reads, so that equal marks mean equal shapes."""
    return mark(layout.bundle.thickness, [piece.edge for piece in layout.pieces])


def piece_marks(layout: Layout) -> list[str]:
    """A mark of each piece: its outline, blank, leaf, side, place on the bundle and leaf."""
    registers = [layout.bundle.register(p.leaf, p.turned) for p in layout.pieces]
    return [mark(piece, register) for piece, register in zip(layout.pieces, registers)]


def mark(*values: Any) -> str:
    return hashlib.sha256(repr(values).encode()).hexdigest()[:16]


def show_faces(shape: Any) -> Sequence[Any]:
    """The show face of every piece of a compound, in the order of positions."""
    return [solid.Faces[SHOW_FACE] for solid in shape.Solids]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where in a piece its number is written."""

from __future__ import annotations

import math

from shapely.geometry import Point as ShapelyPoint
from shapely.ops import polylabel

from veneerwb.core.layout import Layout, Piece
from veneerwb.core.plane import Point

NEAR = 1e-3
"""mm: a corner so near to the middle of the top is a tip."""


def number_places(layout: Layout) -> list[Point]:
    """A point inside each piece, top mm: in a ring of wedges towards the rim, where they are wide,
    else in the middle, and where that is no part of the piece in its widest place."""
    share = 1.2 if all(map(_is_wedge, layout.pieces)) else 1.0
    return [_place(piece, share) for piece in layout.pieces]


def _is_wedge(piece: Piece) -> bool:
    """Whether it comes to a point in the middle of the top."""
    return min(math.hypot(*segment.start) for segment in piece.edge) <= NEAR


def _place(piece: Piece, share: float) -> Point:
    outline = piece.outline
    place = ShapelyPoint(share * outline.centroid.x, share * outline.centroid.y)
    if not outline.contains(place):
        place = polylabel(outline.simplify(1.0), 1.0)
    return place.x, place.y


def room_at(piece: Piece, place: Point) -> float:
    """How far a place in a piece is from the piece's edge and openings, mm."""
    return piece.outline.boundary.distance(ShapelyPoint(place))

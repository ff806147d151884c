# SPDX-License-Identifier: LGPL-2.1-or-later
"""Wedges of a ring: its pieces where each wedge is one leaf from tip to rim, else its cells.

A wedge may be made of strips, slip matched: it is then parted by straights along its axis (which
is where its grain runs, so that each strip keeps the grain along its leaf) into strips that are
equally wide across the widest wedge. Every strip lies on the middle of its leaf and is a cut of its
own; cut places count from the left of the wedge as it is drawn in the bundle.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from shapely.geometry import LineString, Point

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Piece, Seam
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.cells import Cell
from veneerwb.core.matches.placement import Placement
from veneerwb.core.matches.rows import LEAST_STRIP
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Edge, Line
from veneerwb.core.outlines.region import Half, Region
from veneerwb.core.plane import SAGITTA, TOUCH, Motion, cosd, polar
from veneerwb.core.top import Top

DISC = "disc"
"""The role of the edge that an inlaid disc leaves."""


# --- a plain ring -------------------------------------------------------------------------------


def is_plain(recipe: Any, top: Top) -> bool:
    """Whether the ring's centre is the top's and each ray from it meets the edge once, each wedge
    is one leaf, and there is no opening but the disc: the ring needs no cells then."""
    if recipe.strips > 1 or recipe.centre != (0.0, 0.0):
        return False
    return all(hole[0].role == DISC for hole in top.holes) and _is_star(top.edge)


def _is_star(edge: Edge) -> bool:
    """Whether an edge runs once round the origin without turning back."""
    if len(edge) == 1 and isinstance(edge[0], Arc) and edge[0].centre == (0.0, 0.0):
        return True
    points = edges.points(edge)
    return all(
        ax * by - ay * bx > TOUCH for (ax, ay), (bx, by) in zip(points, [*points[1:], points[0]])
    )


def ring(recipe: Any, leaves: Sequence[int], top: Top) -> tuple[Piece, ...]:
    """The pieces of a plain ring."""
    grown = top.grown(recipe.oversize)
    return tuple(
        _piece(recipe, position, leaf, top.edge, grown)
        for position, leaf in enumerate(leaves, start=1)
    )


def ring_seams(pieces: Sequence[Piece], bundle: Leaves) -> tuple[Seam, ...]:
    """The seams of a plain ring, each from the centre (or the disc) to the rim."""
    seams = []
    for a, b in zip(pieces, [*pieces[1:], pieces[0]]):
        step = abs(bundle.surface(a.leaf, a.turned) - bundle.surface(b.leaf, b.turned))
        joint = next(s for s in reversed(a.edge) if s.role == "seam")
        seams.append(Seam(a.position, b.position, LineString([joint.end, joint.start]), step))
    return tuple(seams)


def ring_middle(recipe: Any, bundle: Leaves, top: Top, leaves: Sequence[int]) -> Placement:
    """The wedge of a plain ring along the grain in the middle of what the leaves have in common."""
    area = bundle.common_area(leaves)
    x0, y0, x1, y1 = (0.0, 0.0, *bundle.size) if area.is_empty else area.bounds
    reach = top.reach + recipe.oversize
    return Placement((x0 + x1) / 2.0, (y0 + y1 - reach) / 2.0, 90.0)


def _piece(recipe: Any, position: int, leaf: int, rim: Edge, grown: Edge) -> Piece:
    first, last = recipe.direction(position - 1), recipe.direction(position)
    turned = recipe.is_turned(position)
    net = edges.run_between(rim, first, last)
    outer = edges.run_between(grown, first, last)
    if recipe.rim == "straight":
        outer = straight_rim(recipe, outer, position)
    onto = _onto_bundle(recipe, position, turned)
    net = _less_disc(recipe, _wedge(net), first, last) if recipe.disc else _wedge(net)
    return Piece(position, leaf, turned, net, _wedge(outer), onto)


def _less_disc(recipe: Any, wedge: Edge, first: float, last: float) -> Edge:
    """A wedge without its tip."""
    radius = recipe.disc / 2.0
    up, *rim, down = wedge
    return (
        replace(up, a=polar(radius, first)),
        *rim,
        replace(down, b=polar(radius, last)),
        Arc((0.0, 0.0), radius, last, first - last, DISC),
    )


def straight_rim(recipe: Any, run: Edge, position: int) -> Edge:
    """The straight square to a wedge's axis that touches `run` from outside, from seam to seam; the
    wedge's tip lies on the origin."""
    _, far = edges.extent(run, recipe.axis(position))
    corner = far / cosd(180.0 / recipe.ways)
    first, last = recipe.direction(position - 1), recipe.direction(position)
    return (Line(polar(corner, first), polar(corner, last)),)


def _wedge(rim: Edge) -> Edge:
    """Tip to rim, along it, and back to the tip."""
    tip = (0.0, 0.0)
    return (Line(tip, rim[0].start, "seam"), *rim, Line(rim[-1].end, tip, "seam"))


def _onto_bundle(recipe: Any, position: int, turned: bool) -> Motion:
    place, axis = recipe.placement, recipe.axis(position)
    if turned:
        return Motion(place.angle + axis - 180.0, place.x, place.y, True)
    return Motion(place.angle - axis, place.x, place.y)


# --- any top ------------------------------------------------------------------------------------


def wedge_cells(recipe: Any, leaves: Sequence[int], region: Region) -> list[Cell]:
    """The cells of a ring, counter-clockwise from its first wedge, strip by strip."""
    half = _half_width(recipe, region) if recipe.strips > 1 else 0.0
    cells = []
    for position in range(1, recipe.ways + 1):
        turned = recipe.is_turned(position)
        halves, frame = wedge_halves(recipe, position), _frame(recipe, position, turned)
        for k in range(recipe.strips):
            place = k if turned else recipe.strips - 1 - k
            middle = half * ((2 * place + 1) / recipe.strips - 1.0)
            cells.append(Cell(
                (*halves, *_strip(recipe, position, half, k)),
                leaves[(position - 1) * recipe.strips + k],
                turned, Motion(dx=-middle) @ frame, place,
            ))  # fmt: skip
    return cells


def wedge_halves(recipe: Any, position: int) -> tuple[Half, Half]:
    """What lies between the seams of a wedge."""
    first, last = recipe.direction(position - 1), recipe.direction(position)
    return Half.left_of(recipe.centre, first), Half.left_of(recipe.centre, last).other


def _frame(recipe: Any, position: int, turned: bool) -> Motion:
    """Top mm to mm in the cut's own frame: the tip on its origin, the axis up."""
    axis = recipe.axis(position)
    turn = Motion(axis - 90.0, mirrored=True) if turned else Motion(90.0 - axis)
    return turn @ _to_tip(recipe)


def _to_tip(recipe: Any) -> Motion:
    """Moves the ring's centre to the origin."""
    return Motion(dx=-recipe.centre[0], dy=-recipe.centre[1])


def _strip(recipe: Any, position: int, half: float, k: int) -> tuple[Half, ...]:
    """The k-th strip of a wedge counter-clockwise, between straights along its axis."""
    axis, (cx, cy) = recipe.axis(position), recipe.centre

    def left_of(place: int) -> Half:
        x, y = polar(half * (1.0 - 2.0 * place / recipe.strips), axis - 90.0)
        return Half.left_of((cx + x, cy + y), axis)

    found = () if k == 0 else (left_of(k),)
    return found if k == recipe.strips - 1 else (*found, left_of(k + 1).other)


def _half_width(recipe: Any, region: Region) -> float:
    """The furthest that any wedge reaches from its axis; VeneerError where that makes slivers of
    the strips."""
    half = 0.0
    for position in range(1, recipe.ways + 1):
        across = recipe.axis(position) - 90.0
        ux, uy = polar(1.0, across)
        centre = ux * recipe.centre[0] + uy * recipe.centre[1]
        for part in region.cut(wedge_halves(recipe, position)):
            half = max(half, *(abs(end - centre) for end in part.extent(across)))
    width = 2.0 * half / recipe.strips
    if 0.0 < width < LEAST_STRIP:
        raise VeneerError(
            "slivers",
            "With {strips} strips in each wedge a strip is only {width} mm wide; take at most "
            "{most}.",
            strips=recipe.strips,
            width=width,
            most=max(1, int(2.0 * half / LEAST_STRIP)),
        )
    return half


def with_disc(top: Top, diameter: float, centre: tuple[float, float]) -> Top:
    """The top less an inlaid disc about `centre` that hides the tips (in place of one that it had).
    Blanks keep their tips, since openings are cut after pressing."""
    holes = tuple(hole for hole in top.holes if hole[0].role != DISC)
    top = replace(top, holes=holes) if len(holes) < len(top.holes) else top
    if not diameter:
        return top
    area, tip = top.polygon_mm, Point(centre)
    most = 2.0 * (area.boundary.distance(tip) - 2.0 * SAGITTA) if area.contains(tip) else 0.0
    if diameter > most:
        raise VeneerError(
            "disc-too-large",
            "A disc of {diameter} mm about the ring's centre does not lie within the top; the "
            "largest that does has {most} mm."
            if most > 0.0
            else "There is no room for a disc: the ring's centre does not lie within the top.",
            diameter=diameter,
            most=max(0.0, most),
        )
    hole = (Arc(centre, diameter / 2.0, 0.0, -360.0, DISC),)
    return replace(top, holes=(*top.holes, hole))


def in_ring_order(seams: Sequence[Seam], count: int) -> tuple[Seam, ...]:
    """The seams of a ring of `count` pieces with those that close it, from the last wedge to the
    first, behind all others, as `ring_seams` has them. Within and between neighbouring wedges
    positions differ by less than half of `count`, across the close by more."""
    closing = sorted((s for s in seams if 2 * (s.b - s.a) > count), key=lambda s: (s.b, -s.a))
    others = (seam for seam in seams if 2 * (seam.b - seam.a) <= count)
    return (*others, *(replace(seam, a=seam.b, b=seam.a) for seam in closing))


def straightened(recipe: Any, pieces: Sequence[Piece]) -> tuple[Piece, ...]:
    """The pieces with blanks that end in one straight; VeneerError where a wedge is not one
    piece, for there is no such blank then."""
    if recipe.strips > 1 or len(pieces) != recipe.ways or _parted(recipe, pieces):
        raise VeneerError(
            "rim-unfit",
            "A straight rim needs wedges of one piece each; keep the blank's rim parallel to the "
            "edge.",
        )
    away = _to_tip(recipe)
    found = []
    for piece in pieces:
        run = straight_rim(recipe, edges.moved(piece.blank_edge, away), piece.position)
        blank = edges.moved(_wedge(run), away.inverse())
        found.append(replace(piece, blank_edge=blank))
    return tuple(found)


def _parted(recipe: Any, pieces: Sequence[Piece]) -> bool:
    """Whether some wedge has two pieces (and then another none)."""
    return any(
        half.beyond(point) > SAGITTA
        for piece in pieces
        for half in wedge_halves(recipe, piece.position)
        for point in [segment.start for segment in piece.edge]
    )

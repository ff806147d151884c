# SPDX-License-Identifier: LGPL-2.1-or-later
"""Radial match in two rings: an inner field and an outer band, each a ring of its own.

Both are radial recipes with ways, turn, order, placement and first leaf of their own. The line
between them is a seam, so no oversize is cut along it. The pieces of the inner field come first.
"""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from dataclasses import dataclass, replace

from shapely.geometry import Point, Polygon

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import CUTS, Layout, Piece, cuts_of
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.asked import CutBy
from veneerwb.core.matches.cells import Cell, middle_of, pieces_of, seams_of
from veneerwb.core.matches.radial import Radial
from veneerwb.core.matches.rows import Kind
from veneerwb.core.matches.wedges import with_disc
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.curves import EllipseArc
from veneerwb.core.outlines.edge import Arc, Edge, Line, Segment
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import SAGITTA, TOUCH, Motion, positive
from veneerwb.core.top import Top
from veneerwb.words import marked

RING_KINDS = (
    Kind("radial", marked("Radial match"),
         marked("Wedges meet at a point; every second one may be turned over, and they are even "
                "then."), 3, "any"),
    Kind("radial in strips", marked("Radial match in strips"),
         marked("Each wedge is laid from several leaves side by side, slip matched."), 6, "any"),
    Kind("rings", marked("Radial match in two rings"),
         marked("An inner field and an outer band, each with ways of its own, meet along a line."),
         6, "any"),
)  # fmt: skip


@dataclass(frozen=True)
class Rings(CutBy):
    """The recipe of a radial match in two rings; see `rings`."""

    inner: Radial
    outer: Radial
    within: float | Top

    def __post_init__(self) -> None:
        for name in ("inner", "outer"):
            ring = getattr(self, name)
            if not isinstance(ring, Radial):
                object.__setattr__(self, name, Radial(ring))
            elif ring.rim == "straight":
                raise VeneerError(
                    "rim-unfit",
                    "A straight rim needs wedges from the tip to the edge; in two rings keep the "
                    "blank's rim parallel to the edge.",
                )
        if self.outer.disc:
            raise VeneerError(
                "disc-unfit",
                "A disc hides the tips of the inner field; give it there and not to the outer "
                "band.",
            )
        if self.inner.oversize:
            raise VeneerError(
                "oversize-unfit",
                "The edge of the inner field is a seam, along which no oversize is cut; give the "
                "oversize to the outer band.",
            )
        if not isinstance(self.within, Top):
            size = positive("diameter of the inner field", self.within)
            object.__setattr__(self, "within", size)

    def lay(self, bundle: Leaves, top: Top) -> Layout:
        """The layout of `top` from `bundle`."""
        top = with_disc(top, self.inner.disc, self.inner.centre)
        line = self._line()
        inside, outside = _sorted_holes(line, top)
        back = tuple(segment.reversed() for segment in reversed(line))
        field, band = Region(line, inside), Region(top.edge, (back, *outside))
        plain = Region(line) if inside else field
        grown = Region(top.grown(self.outer.oversize), (back,))
        if not (self.outer.oversize or outside):
            grown = band
        inner, first = _laid(self.inner, bundle, field, plain, (0, 0))
        after = (len(first), self.inner.strips)
        outer, second = _laid(self.outer, bundle, band, grown, after)
        pieces = (
            *_parted(first, line, outer.cells(bundle, band)),
            *_parted(second, line, inner.cells(bundle, field)),
        )
        recipe = replace(self, inner=inner, outer=outer)
        cuts = cuts_of(pieces, self.cuts)
        return Layout(pieces, seams_of(pieces, bundle), cuts, top, bundle, recipe)

    def meets(self, a: Piece, b: Piece) -> bool:
        """Whether figure is to meet between two pieces: across the line between the rings none
        is."""
        return (a.cut < self.inner.strips) == (b.cut < self.inner.strips)

    def _line(self) -> Edge:
        """The line between the rings, counter-clockwise."""
        if isinstance(self.within, Top):
            dx, dy = self.inner.centre
            edge = edges.moved(self.within.edge, Motion(dx=dx, dy=dy))
        else:
            edge = (Arc(self.inner.centre, self.within / 2.0, -90.0, 360.0),)
        return tuple(replace(segment, role="seam") for segment in edge)


def _parted(pieces: Sequence[Piece], line: Edge, cells: Sequence[Cell]) -> tuple[Piece, ...]:
    """The pieces of one ring with their curved seams parted where seams of the other ring end on
    them, so that the pieces on both sides have the same curves between the same corners."""
    turns = {_whole(s): _turns_on(s, cells) for s in line if isinstance(s, Arc | EllipseArc)}

    def parted(edge: Edge) -> Edge:
        run: list[Segment] = []
        for segment in edge:
            shares: Sequence[float] = (0.0, 1.0)
            if segment.role == "seam" and not isinstance(segment, Line):
                known = turns.get(_whole(segment))
                found = _ends_on(segment, cells) if known is None else _between(segment, known)
                shares = _apart(found, segment)
            run += (segment.part(a, b) for a, b in zip(shares, shares[1:]))
        return tuple(run)

    return tuple(
        replace(piece, edge=parted(piece.edge), blank_edge=parted(piece.blank_edge))
        for piece in pieces
    )


def _whole(segment: Segment) -> Segment:
    """What all arcs of one circle or ellipse have in common."""
    return replace(segment, begin=0.0, sweep=0.0) if hasattr(segment, "sweep") else segment


def _turns_on(arc: Arc | EllipseArc, cells: Sequence[Cell]) -> list[float]:
    """Where on an arc the sides of cells end, 0 to less than 720 degrees, rising, each twice: so
    that all that lie in a part of it follow each other."""
    once = {(arc.begin + share * arc.sweep) % 360.0 for share in _ends_on(arc, cells)}
    return sorted([*once, *(turn + 360.0 for turn in once)])


def _between(part: Arc | EllipseArc, turns: Sequence[float]) -> list[float]:
    """The shares of a part of an arc at which those turns lie."""
    low, span = min(part.begin, part.begin + part.sweep) % 360.0, abs(part.sweep)
    inside = turns[bisect_left(turns, low) : bisect_right(turns, low + span)]
    shares = [(turn - low) / span for turn in inside]
    return shares if part.sweep > 0.0 else [1.0 - share for share in shares]


def _ends_on(segment: Segment, cells: Sequence[Cell]) -> list[float]:
    """The shares of a segment where the sides of cells end on it."""
    found = []
    for cell in cells:
        for half in cell.halves:
            ends = (share for share in (0.0, 1.0) if abs(half.beyond(segment.at(share))) <= TOUCH)
            for share in (*ends, *segment.crossings(half.normal, half.offset)):
                if all(h.beyond(segment.at(share)) <= TOUCH for h in cell.halves):
                    found.append(share)
    return found


def _apart(shares: Sequence[float], segment: Segment) -> list[float]:
    """The ends of a segment and between them those of the shares that are no place twice."""
    near, kept = TOUCH / segment.length, [0.0]
    kept += (share for share, before in zip(sorted(shares), [0.0, *sorted(shares)])
             if near < share < 1.0 - near and share - before > near)  # fmt: skip
    return [*kept, 1.0]


def _sorted_holes(line: Edge, top: Top) -> tuple[tuple[Edge, ...], tuple[Edge, ...]]:
    """The openings inside the line and those outside it; VeneerError where the line leaves the top
    or crosses one of them."""
    field = edges.polygon(line)
    whole = Polygon(edges.points(top.edge))
    if not whole.buffer(-SAGITTA).contains(field):
        raise _too_large(line, whole, top)
    inside, outside = [], []
    for hole in top.holes:
        area = Polygon(edges.points(hole))
        home = inside if field.contains(area) else None if field.intersects(area) else outside
        if home is None:
            raise VeneerError(
                "opening-crossed",
                "The line between the rings crosses an opening or the disc; make the inner field "
                "larger or smaller.",
            )
        home.append(hole)
    return tuple(inside), tuple(outside)


def _too_large(line: Edge, whole: Polygon, top: Top) -> VeneerError:
    """What says how large a circle may be, or that another line is to be smaller."""
    most, tip = 0.0, Point(line[0].centre) if len(line) == 1 and isinstance(line[0], Arc) else None
    if tip is not None and whole.contains(tip):
        most = math.floor(20.0 * (whole.exterior.distance(tip) - 2.0 * SAGITTA)) / 10.0
    told = marked(
        "The inner field does not lie within the top ({top}); make it smaller, or move its centre."
    )
    if most > 0.0:
        told = marked(
            "The inner field does not lie within the top ({top}); make it {most} mm or less."
        )
    return VeneerError("field-too-large", told, top=top.name, most=most)


def _laid(
    ring: Radial, bundle: Leaves, region: Region, grown: Region, after: tuple[int, int]
) -> tuple[Radial, tuple[Piece, ...]]:
    """A ring with its placement settled and its pieces, numbered after so many positions and cut
    places."""
    ring = replace(ring, placement=ring.placement or middle_of(ring, bundle, region, grown))
    positions, cuts = after
    return ring, tuple(
        replace(piece, position=piece.position + positions, cut=piece.cut + cuts)
        for piece in pieces_of(ring, bundle, region, grown)
    )


def rings(
    bundle: Leaves,
    top: Top,
    inner: int | Radial = 8,
    outer: int | Radial = 16,
    within: float | Top = 400.0,
    cuts: str = CUTS[0],
) -> Layout:
    """A radial match in two rings on `top`.

    bundle: a Bundle, or a Stock where no picture is needed.
    inner:  the inner field: a Radial, or its number of ways. Its edge is a seam, so that only the
            outer band has an oversize.
    outer:  the outer band, likewise; a mere number of ways takes the leaves after the inner ones.
    within: the line between them: the diameter in mm of a circle about the inner ring's centre, or
            a Top about it.
    cuts:   how what differs is cut: see `layout.lots_of`; what the two rings say of it counts for
            nothing.

    Raises VeneerError for counts and choices that cannot be; a wedge that does not fit its leaf is
    left to `check`.
    """
    inner = inner if isinstance(inner, Radial) else Radial(inner)
    if not isinstance(outer, Radial):
        last = max(inner.leaf_numbers(bundle))
        if last == max(bundle.numbers):
            raise VeneerError(
                "too-few-leaves",
                "The inner field takes the leaves up to the last one, {last}, and none is left for "
                "the outer band; take fewer ways, or a larger bundle.",
                last=last,
            )
        outer = Radial(outer, first=last + 1)
    return Rings(inner, outer, within, cuts=cuts).lay(bundle, top)

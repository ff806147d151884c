# SPDX-License-Identifier: LGPL-2.1-or-later
"""Ways to cut the pieces of a layout, side by side: what each takes of the leaves, and its work.

A lot is the leaves that are cut through at once, by one outline that is set out on them once. What
its pieces need less than that outline is lost with the trim; a seam that lies within it is cut
piece by piece.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from shapely.geometry import Point
from shapely.ops import unary_union

from veneerwb.core.checks.sufficiency import in_rectangle, overhang
from veneerwb.core.layout import CUTS, Cut, Layout, Piece, cuts_of, lots_of
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Line, Segment
from veneerwb.core.plane import SAGITTA, stepped

FINE = 1e-4
"""mm: the sagitta of the polygons whose union is measured: about 1e-7 of a usual piece."""
ON_LINE = 5.0 * SAGITTA
"""mm: what lies nearer to an outline derived from curves lies on it."""
APART = 0.01
"""mm: sides on straights that lie nearer together are cut in one stroke."""


@dataclass(frozen=True)
class Lot:
    """Leaves that are cut through at once: the `cut`, the numbers of its `leaves`, and its
    `pieces`, one for each outline on each leaf."""

    cut: Cut
    leaves: tuple[int, ...]
    pieces: tuple[Piece, ...]

    @cached_property
    def area(self) -> float:
        """What is cut out of one leaf, mm2: exact where all pieces have one outline."""
        drawn = [
            edges.moved(first.blank_edge, first.onto_bundle)
            for first, *_ in lots_of(self.pieces, "shape")
        ]
        if len(drawn) == 1:
            return edges.area(drawn[0])
        return unary_union([edges.polygon(edge, FINE).buffer(0) for edge in drawn]).area

    @property
    def strokes(self) -> int:
        """How many cuts along seams it takes: one through all its leaves for each straight or curve
        on its outline, and one more for each side of a piece that lies within it."""
        return sum(self._seams)

    @property
    def within(self) -> int:
        """How many sides of its pieces lie within its outline, and are cut singly."""
        return self._seams[1]

    @cached_property
    def _seams(self) -> tuple[int, int]:
        rim, through, single = self.cut.outline.boundary, set(), 0
        for piece in self.pieces:
            for side in edges.moved(piece.blank_edge, piece.onto_bundle):
                if side.role != "seam":
                    continue
                places = [Point(side.at(share)) for share in (0.1, 0.5, 0.9)]
                if max(map(rim.distance, places)) <= ON_LINE:
                    through.add(_line_of(side))
                else:
                    single += 1
        return len(through), single


@dataclass(frozen=True)
class Cutting:
    """One way to cut a layout: `how`, one of CUTS, with its `lots`. Areas in mm2."""

    how: str
    lots: tuple[Lot, ...]
    net: float
    """The area of the finished pieces."""
    leaf_area: float
    """The usable area of the leaves that they come from."""
    over: dict[int, float]
    """The leaves whose usable area, less the margin, an outline leaves, and by how many mm."""

    @cached_property
    def area(self) -> float:
        """What is cut out of all leaves."""
        return math.fsum(lot.area * len(lot.leaves) for lot in self.lots)

    @property
    def used(self) -> float:
        """The share of what is cut out that the finished pieces have."""
        return self.net / self.area

    @property
    def taken(self) -> float:
        """The share of the leaves' usable area that is cut out of them."""
        return self.area / self.leaf_area if self.leaf_area else math.inf

    @property
    def leaves(self) -> tuple[int, ...]:
        """How many leaves each lot has."""
        return tuple(len(lot.leaves) for lot in self.lots)

    @property
    def strokes(self) -> int:
        """How many cuts along seams it takes in all."""
        return sum(lot.strokes for lot in self.lots)

    @property
    def fits(self) -> bool:
        """Whether every outline lies on every leaf that it is cut from."""
        return not self.over


def pieces_differ(layout: Layout) -> bool:
    """Whether pieces that could be cut as one stack have unlike outlines."""
    return len(lots_of(layout.pieces, "shape")) > len(lots_of(layout.pieces, "stack"))


def cutting(layout: Layout, how: str | None = None, margin: float = 0.0) -> Cutting:
    """The way `how` to cut a layout; the one that it was laid for if not given."""
    how = layout.cut_as if how is None else how
    cuts = layout.cuts if how == layout.cut_as else cuts_of(layout.pieces, how)
    by_position = {piece.position: piece for piece in layout.pieces}
    lots = tuple(_lot(cut, [by_position[n] for n in cut.pieces]) for cut in cuts)
    used = {piece.leaf for piece in layout.pieces}
    return Cutting(
        how,
        lots,
        math.fsum(piece.area for piece in layout.pieces),
        math.fsum(layout.bundle.usable(leaf).area for leaf in used),
        _over(layout, lots, margin),
    )


def cuttings(layout: Layout, margin: float = 0.0) -> tuple[Cutting, ...]:
    """All ways to cut a layout, in the order of CUTS."""
    return tuple(cutting(layout, how, margin) for how in CUTS)


def _lot(cut: Cut, pieces: Sequence[Piece]) -> Lot:
    leaves = tuple(sorted({piece.leaf for piece in pieces}))
    apart = {(piece.leaf, piece.blank_edge): piece for piece in reversed(pieces)}
    return Lot(cut, leaves, tuple(sorted(apart.values(), key=lambda piece: piece.position)))


def _over(layout: Layout, lots: Sequence[Lot], margin: float) -> dict[int, float]:
    found: dict[int, float] = {}
    for lot in lots:
        outline = lot.cut.outline
        parts = getattr(outline, "geoms", [outline])
        corners = np.concatenate([np.asarray(part.exterior.coords) for part in parts])
        for leaf, turned in {(piece.leaf, piece.turned) for piece in lot.pieces}:
            usable = layout.bundle.usable(leaf)
            motion = layout.bundle.register(leaf, turned)
            if not in_rectangle(motion.apply(corners), usable, margin):
                over = overhang(motion.apply_to(outline), usable, margin)
                if over is not None:
                    found[leaf] = max(over, found.get(leaf, 0.0))
    return dict(sorted(found.items()))


def _line_of(side: Segment) -> tuple[Any, ...]:
    """What is the same for all sides that one stroke cuts: a straight, a circle, else a curve."""
    if isinstance(side, Line):
        (ax, ay), (bx, by) = side.a, side.b
        turn = math.degrees(math.atan2(by - ay, bx - ax)) % 180.0
        if turn > 180.0 - 1e-6:
            turn = 0.0
        ux, uy = -math.sin(math.radians(turn)), math.cos(math.radians(turn))
        return ("straight", *_steps((turn, 1e-4), (ux * ax + uy * ay, APART)))
    if isinstance(side, Arc):
        return ("circle", *_steps(*((value, APART) for value in (*side.centre, side.radius))))
    ends = sorted((side.start, side.end))
    return ("curve", *_steps(*((value, APART) for point in (*ends, side.at(0.5))
                               for value in point)))  # fmt: skip


def _steps(*values: tuple[float, float]) -> list[float]:
    return [float(stepped(value, step)) for value, step in values]

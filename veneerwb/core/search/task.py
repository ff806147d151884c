# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is searched: a bundle, a top and a recipe, and what of the top will be seen."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any

import numpy as np
from shapely.geometry import Polygon
from shapely.ops import unary_union

from veneerwb.core.checks.sufficiency import off_leaf, onto_leaf, seen_of
from veneerwb.core.layout import Layout, Piece, alike
from veneerwb.core.leaf import Bundle
from veneerwb.core.matches.radial import Placement, Radial
from veneerwb.core.plane import Motion
from veneerwb.core.search.stand import Stand, fault_seen, plain
from veneerwb.core.top import Top

ORIGIN = Placement(0.0, 0.0, 0.0)
FINEST = 0.01
"""mm to which a placement at the edge of a leaf is known."""


@dataclass(frozen=True)
class Task:
    """A radial top sought on a bundle: blanks must lie on their leaves' usable area less `margin`
    (mm), and what of a piece is seen, all but `hidden` (shapely, top mm: what a disc in the centre,
    a border or an inlay covers), must be clear of faults."""

    bundle: Bundle
    top: Top
    recipe: Radial
    margin: float = 0.0
    hidden: Any = None

    def __post_init__(self) -> None:
        if self.hidden is not None:
            object.__setattr__(self, "hidden", plain(self.hidden))

    def layout(self, placement: Placement, first: int) -> Layout:
        """The top laid with its wedge at `placement`, from leaf `first` on."""
        return replace(self.recipe, placement=placement, first=first).lay(self.bundle, self.top)

    def at_origin(self, first: int) -> Layout:
        """The top laid with its wedge at ORIGIN; kept."""
        if first not in self._laid:
            self._laid[first] = self.layout(ORIGIN, first)
        return self._laid[first]

    @cached_property
    def _laid(self) -> dict[int, Layout]:
        return {}

    def counted(self) -> None:
        """Raises VeneerError where there are too few leaves for the ways."""
        if isinstance(self.recipe.order, str):
            replace(self.recipe, first=min(self.bundle.numbers)).leaf_numbers(self.bundle)
        else:
            self.recipe.leaf_numbers(self.bundle)

    @cached_property
    def firsts(self) -> tuple[int, ...]:
        """The leaves that the top may start with; VeneerError where there are too few leaves."""
        self.counted()
        if not isinstance(self.recipe.order, str):
            return (self.recipe.first,)
        return self.bundle.numbers[: len(self.bundle.numbers) - self.recipe.ways + 1]

    def used(self, first: int) -> tuple[tuple[int, bool], ...]:
        """The sides that a top shows which starts with that leaf: (leaf, turned) by position."""
        leaves = replace(self.recipe, first=first).leaf_numbers(self.bundle)
        return tuple((n, self.recipe.is_turned(k)) for k, n in enumerate(leaves, start=1))

    @cached_property
    def shapes(self) -> tuple[tuple[Polygon, ...], Polygon, Polygon]:
        """At the bundle's origin with the axis along x: the finished outlines of the pieces (one if
        all are alike, as in a round top), all blanks, and all that is seen."""
        pieces = self.at_origin(self.firsts[0]).pieces
        shown = pieces[:1] if alike(pieces) else pieces
        net = tuple(plain(p.onto_bundle.apply_to(p.outline)) for p in shown)
        blanks = unary_union([plain(p.onto_bundle.apply_to(p.blank)) for p in pieces])
        seen = unary_union([plain(p.onto_bundle.apply_to(self._seen(p))) for p in pieces])
        return net, blanks, seen

    def _seen(self, piece: Piece) -> Any:
        return seen_of(piece, self.hidden)

    def fits(self, layout: Layout) -> bool:
        """Whether a layout may be cut, exactly: as `check` has it."""
        if next(off_leaf(layout, self.margin), None) is not None:
            return False
        return not any(
            fault_seen(onto_leaf(piece, self.bundle).apply_to(self._seen(piece)), fault.outline)
            for piece in layout.pieces
            for fault in self.bundle.faults(piece.leaf)
        )

    def standing(self, placement: Placement, firsts: tuple[int, ...]) -> tuple[int, ...]:
        """Those of the first leaves whose layout there fits, without laying it."""
        index = [self.firsts.index(first) for first in firsts]
        fit = self._stand.at(motion_to(placement), index)
        return tuple(first for first, good in zip(firsts, fit) if good)

    def pushed(self, placements: Sequence[Placement], first: int) -> list[Placement]:
        """Placements shifted so that blanks come to lie on their leaves; where these are upright
        rectangles and have the room that is sure."""
        moves = [motion_to(place) for place in placements]
        need = self._stand.push(moves, self.firsts.index(first))
        by = np.sign(need) * np.ceil(np.abs(need) / FINEST - 1e-3) * FINEST
        by = np.where(np.isfinite(by), by, 0.0).tolist()
        return [
            replace(p, x=round(p.x + dx, 3), y=round(p.y + dy, 3)) if dx or dy else p
            for p, (dx, dy) in zip(placements, by)
        ]

    @cached_property
    def _stand(self) -> Stand:
        shown = [(piece, self._seen(piece)) for piece in self.at_origin(self.firsts[0]).pieces]
        return Stand(shown, [self.used(n) for n in self.firsts], self.bundle, self.margin)


def motion_to(placement: Placement) -> Motion:
    """What takes a wedge from the bundle's origin, its axis along x, to its placement."""
    return Motion(placement.angle, placement.x, placement.y)

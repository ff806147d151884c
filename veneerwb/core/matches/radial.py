# SPDX-License-Identifier: LGPL-2.1-or-later
"""Radial match: n wedges ("ways") that meet at a point, from n leaves.

Piece i lies between the directions start + (2i - 3) 180/n and start + (2i - 1) 180/n. Every piece
is cut from the same wedge of the bundle: an upright one by the rotation that lays its axis on the
wedge's axis, a turned one by the mirror image of that about the axis.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import CUTS, Layout, Piece, cuts_of
from veneerwb.core.leaf import Leaves
from veneerwb.core.listing import one_of
from veneerwb.core.matches import asked, wedges
from veneerwb.core.matches.cells import Cell, from_first, middle, pieces_of, seams_of
from veneerwb.core.matches.order import as_listed, grouped_zigzag, paired_zigzag, zigzag
from veneerwb.core.matches.placement import Placement
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import LONGEST, TOUCH, choice, finite, whole
from veneerwb.core.top import Top
from veneerwb.words import marked, say

LEAST_WAYS, MOST_WAYS = 3, 64
MOST_STRIPS = 12
TURNS = ("book", "slip")
RIMS = ("arc", "straight")
TURNED = {"book": ("odd", "even"), "slip": ("none", "all")}
ORDERS = ("sequence", "spread")


@dataclass(frozen=True)
class Radial(asked.CutBy):
    """The recipe of a radial match; see `radial`. `lay` makes the layout."""

    ways: int
    turn: str = "book"
    placement: Placement | None = None
    first: int = 1
    order: str | tuple[int, ...] = "sequence"
    turned: str | None = None
    rim: str = "arc"
    start: float = 90.0
    oversize: float = 0.0
    strips: int = 1
    centre: tuple[float, float] = (0.0, 0.0)
    disc: float = 0.0

    def __post_init__(self) -> None:
        ways = whole("number of ways", self.ways, LEAST_WAYS, MOST_WAYS)
        choice("turn", self.turn, TURNS)
        if self.turn == "book" and ways % 2:
            raise VeneerError(
                "odd-book",
                "A book ring turns every second piece, so it needs an even number of ways; {ways} "
                "is odd: "
                "take {nearest}, or a slip ring.",
                ways=ways,
                nearest=one_of([str(n) for n in (ways - 1, ways + 1) if n > 2]),
            )
        turned = asked.turned_of(marked("ring"), self.turn, self.turned, TURNED[self.turn])
        choice("rim", self.rim, RIMS)
        order = self.order
        if not isinstance(order, str):
            order = asked.listed(marked("order"), order, marked("the leaf of each position"))
        x, y = asked.listed(marked("centre"), self.centre, marked("its x and y on the top"), (2,))
        disc = asked.between(marked("diameter of the disc"), self.disc, 0.0, LONGEST)
        settled = {
            "ways": ways,
            "turned": turned,
            "placement": asked.placement_of(self.placement),
            "oversize": asked.oversize_of(self.oversize),
            "order": order,
            "start": math.fmod(finite("start direction", self.start), 360.0),
            "strips": whole("number of strips in a wedge", self.strips, 1, MOST_STRIPS),
            "centre": (
                asked.between(marked("centre's x"), x, -LONGEST, LONGEST),
                asked.between(marked("centre's y"), y, -LONGEST, LONGEST),
            ),
            "disc": disc if disc > TOUCH else 0.0,  # less than a point is none
        }
        for name, value in settled.items():
            object.__setattr__(self, name, value)

    def with_ways(self, ways: int) -> Radial:
        """The same with another number of ways (a list of leaves then counts as in sequence)."""
        order = self.order if isinstance(self.order, str) else "sequence"
        return replace(self, ways=ways, order=order)

    def direction(self, k: int) -> float:
        """The direction in degrees of the seam that ends piece k (k = 0 begins piece 1)."""
        return self.start + (2 * k - 1) * 180.0 / self.ways

    def axis(self, position: int) -> float:
        """The direction in degrees of a piece's axis on the top."""
        return self.start + (position - 1) * 360.0 / self.ways

    def is_turned(self, position: int) -> bool:
        """Whether the piece at `position` shows its leaf's back."""
        return self.turned == "all" or self.turned == ("odd" if position % 2 else "even")

    def leaf_numbers(self, bundle: Leaves) -> list[int]:
        """The leaf of each position."""
        if not isinstance(self.order, str):
            return self._listed(bundle)
        choice("order", self.order, ORDERS)
        chosen = self._from_first(bundle)
        if self.order == "sequence":
            return chosen
        if self.strips > 1:
            ring = grouped_zigzag(self.ways, self.strips)
        elif self.turn == "slip":
            ring = zigzag(self.ways)
        else:
            ring = paired_zigzag(self.ways)
            above = bundle.surface(1, self.is_turned(1)) == 0
            if above:
                ring = [ring[1], ring[0], *reversed(ring[2:])]
        return [chosen[k] for k in ring]

    @property
    def all_book(self) -> bool:
        """Whether every joint is to be a book joint where leaves are turned."""
        return self.strips == 1

    @property
    def count(self) -> int:
        """How many leaves it takes."""
        return self.ways * self.strips

    @property
    def _needs(self) -> str:
        if self.strips == 1:
            return say("{ways} ways", ways=self.ways)
        return say("{ways} ways of {strips} strips", ways=self.ways, strips=self.strips)

    def _from_first(self, bundle: Leaves) -> list[int]:
        first = whole("first leaf", self.first, 1, max(bundle.numbers))
        step = self.strips * (2 if self.turn == "book" else 1)
        return from_first(bundle, first, self.count, self._needs, step, LEAST_WAYS * self.strips)

    def _listed(self, bundle: Leaves) -> list[int]:
        listed = [whole("listed leaf", n, 1, asked.LAST_LEAF) for n in self.order]
        return as_listed(listed, bundle, self.count, self._needs)

    def cells(self, bundle: Leaves, region: Region) -> Sequence[Cell]:
        return wedges.wedge_cells(self, self.leaf_numbers(bundle), region)

    def lay(self, bundle: Leaves, top: Top) -> Layout:
        """The layout of `top` from `bundle`."""
        top = wedges.with_disc(top, self.disc, self.centre)
        recipe, pieces = self._laid(bundle, top)
        if wedges.is_plain(self, top):
            seams = wedges.ring_seams(pieces, bundle)
        else:
            seams = wedges.in_ring_order(seams_of(pieces, bundle), len(pieces))
        return Layout(pieces, seams, cuts_of(pieces, self.cuts), top, bundle, recipe)

    def pieces(self, bundle: Leaves, top: Top) -> tuple[Piece, ...]:
        """The pieces alone, where neither seams nor cuts are asked for."""
        return self._laid(bundle, wedges.with_disc(top, self.disc, self.centre))[1]

    def _laid(self, bundle: Leaves, top: Top) -> tuple[Radial, tuple[Piece, ...]]:
        """The recipe with its placement settled, and its pieces."""
        if wedges.is_plain(self, top):
            leaves = self.leaf_numbers(bundle)
            placement = self.placement or wedges.ring_middle(self, bundle, top, leaves)
            recipe = replace(self, placement=placement)
            return recipe, wedges.ring(recipe, leaves, top)
        recipe = replace(self, placement=self.placement or middle(self, bundle, top))
        pieces = pieces_of(recipe, bundle, top.region, top.blank_region(self.oversize))
        return recipe, wedges.straightened(self, pieces) if self.rim == "straight" else pieces


def radial(
    bundle: Leaves,
    top: Top,
    ways: int,
    turn: str = "book",
    placement: Placement | None = None,
    first: int = 1,
    order: str | Sequence[int] = "sequence",
    turned: str | None = None,
    rim: str = "arc",
    start: float = 90.0,
    oversize: float = 0.0,
    strips: int = 1,
    centre: Sequence[float] = (0.0, 0.0),
    disc: float = 0.0,
    cuts: str = CUTS[0],
) -> Layout:
    """A radial match of `ways` wedges (3 to 64, even for book) on `top`.

    bundle:    a Bundle, or a Stock where no picture is needed.
    turn:      "book" (every second leaf turned over) or "slip" (none, or all).
    placement: where on the bundle the wedge lies; in the middle of the leaves if not given.
    first:     the first leaf; ways leaves from it on are used.
    order:     "sequence", "spread" (the order whose largest step between the surfaces that meet is
               least; with gaps in the numbers, near the least), or the leaf number of each
               position.
    turned:    which positions are turned: "odd" or "even" (book), "none" or "all" (slip).
    rim:       the blank's rim parallel to the finished edge ("arc") or one straight ("straight").
    start:     direction in degrees of the first wedge's axis on the top.
    oversize:  mm that the blank reaches beyond the finished edge.
    strips:    leaves side by side in each wedge, slip matched (1 to 12); ways x strips leaves, in
               sequence one by one round the ring, spread with those of a wedge kept together.
    centre:    where on the top the wedges meet (x, y in mm).
    disc:      diameter in mm of an inlaid disc about that centre, which hides the tips; 0: none.
    cuts:      how what differs is cut: "stack" (all at once, by what all of it takes together),
               "shape" (a lot of leaves for each outline) or "own" (each piece by itself).

    Raises VeneerError for counts and choices that cannot be; a wedge that does not fit its leaf is
    left to `check`.
    """
    recipe = Radial(
        ways, turn, placement, first, order, turned, rim, start, oversize, strips, centre, disc,
        cuts=cuts,
    )  # fmt: skip
    return recipe.lay(bundle, top)

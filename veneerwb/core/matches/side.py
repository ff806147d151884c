# SPDX-License-Identifier: LGPL-2.1-or-later
"""Side matches: leaves laid side by side across a face, in strips along the grain.

`turn` says how each leaf lies to the one beside it, `face` how the strips share the face. Strips
are counted left to right with the grain upright. Every strip is cut from the same field of the
bundle, whose foot has its middle on the placement's point: so a leaf that is turned over or end for
end stays on that field. Words and rules: Architectural Woodwork Standards, 1st ed. (2009), 1.2.19
to 1.2.22, pp. 73-76.
"""

from __future__ import annotations

import random
from collections.abc import Sequence
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import CUTS, Layout
from veneerwb.core.leaf import Leaves
from veneerwb.core.listing import one_of
from veneerwb.core.matches import asked, rows
from veneerwb.core.matches.cells import Cell, laid
from veneerwb.core.matches.placement import Placement
from veneerwb.core.matches.rows import Field, Kind
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import choice, whole
from veneerwb.core.top import Top
from veneerwb.words import marked, word

TURN_KINDS = (
    Kind(marked("book"), marked("Book match"),
         marked("Every second leaf is turned over, so that each joint mirrors."), 2, "any"),
    Kind(marked("slip"), marked("Slip match"),
         marked("Leaves lie side by side in order, none turned."), 2, "any"),
    Kind(marked("reverse slip"), marked("Reverse slip match"),
         marked("Every second leaf is turned end for end, its face still up."), 2, "any"),
    Kind(marked("random"), marked("Random match"),
         marked("Leaves are joined out of their order on purpose."), 2, "any"),
)  # fmt: skip
FACE_KINDS = (
    Kind(marked("balance"), marked("Balance match"),
         marked("All strips are of one width; any number of them."), 1, "any"),
    Kind(marked("running"), marked("Running match"),
         marked("Full strips from the left, as many as it takes; the last is cut to what is left."),
         1, "any"),
    Kind(marked("centre balance"), marked("Centre balance match"),
         marked("All strips are of one width, with a joint on the centre line."), 2, "even"),
    Kind(marked("slip-centre-book"), marked("Slip, centre book match"),
         marked("Each half is slipped, and the halves mirror at the centre."), 4, "even"),
)  # fmt: skip
TURNS = tuple(kind.key for kind in TURN_KINDS)
FACES = tuple(kind.key for kind in FACE_KINDS)
TURNED = {
    "book": ("odd", "even"),
    "slip": ("none", "all"),
    "reverse slip": ("even", "odd"),
    "random": ("none", "all", "random"),
    "slip-centre-book": ("left", "right"),
}
"""Which strips are turned (over, or in a reverse slip end for end), the usual first. Where the left
one of two leaves in order is turned, as a page is, both show the surface that lay between them."""
FREE = 4
"""Leaves: of so many or more, some order keeps all that were neighbours apart."""


@dataclass(frozen=True)
class SideMatch(asked.CutBy):
    """The recipe of a side match; see `side`. `lay` makes the layout."""

    turn: str = "book"
    face: str = "balance"
    count: int | None = None
    width: float | None = None
    placement: Placement | None = None
    first: int = 1
    order: str | tuple[int, ...] = "sequence"
    turned: str | None = None
    seed: int = 1
    grain: float = 90.0
    oversize: float = 0.0

    def __post_init__(self) -> None:
        choice("turn", self.turn, TURNS)
        choice("face", self.face, FACES)
        rows.settle(self)
        self._check_count()
        if self.centre_book and self.turn not in ("book", "slip"):
            raise VeneerError(
                "turn-unfit",
                "A slip-centre-book face is slipped and booked at its centre, so it cannot be "
                "{turn}: take book or slip, or another face.",
                turn=word(self.turn),
            )
        match = self.face if self.centre_book else self.turn
        turned = TURNED[match][0] if self.turned is None else self.turned
        if not isinstance(turned, str) or turned not in TURNED[match]:
            raise VeneerError(
                "turned-unfit",
                "In a {match} match the turned strips cannot be {turned!r:.40}; choose {allowed}.",
                match=word(match),
                turned=turned,
                allowed=one_of(TURNED[match]),
            )
        object.__setattr__(self, "turned", turned)
        object.__setattr__(self, "seed", whole("seed", self.seed, 0, 2**31 - 1))

    def _check_count(self) -> None:
        if self.count is None:
            return
        if self.face == "running":
            if isinstance(self.order, str):
                raise VeneerError(
                    "running-count",
                    "A running face takes as many leaves as it needs; give the width of a strip "
                    "instead of their number, or take a balance face.",
                )
            return
        kind = FACE_KINDS[FACES.index(self.face)]
        if self.count < kind.least or self.count % self._step:
            told = marked(
                "A {face} face has a joint on its centre, so it needs an even number of leaves, "
                "{least} or more, and {count} will not do: take {nearest}."
            )
            if self.centre_book:
                told = marked(
                    "A {face} face mirrors at its centre, so it needs an even number of leaves, "
                    "{least} or more, and {count} will not do: take {nearest}."
                )
            raise VeneerError(
                "wrong-count",
                told,
                face=word(self.face),
                least=kind.least,
                count=self.count,
                nearest=rows.nearest(self.count, kind.least, self._step),
            )

    @property
    def centre_book(self) -> bool:
        return self.face == "slip-centre-book"

    @property
    def all_book(self) -> bool:
        """Whether every joint is to mirror."""
        return self.turn == "book" and not self.centre_book

    @property
    def _step(self) -> int:
        return 2 if FACE_KINDS[FACES.index(self.face)].parity == "even" else 1

    def strips(self, bundle: Leaves, field: Field) -> tuple[int, float]:
        """How many strips a field takes, and their full width in mm."""
        if self.face == "running":
            width = self.width or rows.leaf_width(bundle, self.first, self.oversize)
            return rows.running_count(field.width, width), width
        count = self.count
        if count is None:
            most = self.width or rows.leaf_width(bundle, self.first, self.oversize)
            least = FACE_KINDS[FACES.index(self.face)].least
            count = rows.even_count(field.width, most, least, self._step)
        return count, rows.equal_width(field.width, count)

    def put(self, count: int) -> list[tuple[bool, bool]]:
        """Of each strip whether it is turned over, and whether end for end."""
        if self.turned == "random":
            chance = random.Random(f"over {self.seed}")
            return [(chance.random() < 0.5, False) for _ in range(count)]
        half = count // 2
        chosen = {
            "none": [False] * count,
            "all": [True] * count,
            "odd": [k % 2 == 0 for k in range(count)],
            "even": [k % 2 == 1 for k in range(count)],
            "left": [k < half for k in range(count)],
            "right": [k >= half for k in range(count)],
        }[self.turned]
        ended = self.turn == "reverse slip"
        return [(one and not ended, one and ended) for one in chosen]

    def leaf_numbers(self, bundle: Leaves, count: int) -> list[int]:
        """The leaf of each strip."""
        least = FACE_KINDS[FACES.index(self.face)].least
        chosen = rows.leaves_for(self, bundle, count, rows.STRIPS, self._step, least)
        if self.turn == "random" and isinstance(self.order, str):
            return [chosen[k] for k in shuffled(count, self.seed)]
        return chosen

    def cells(self, bundle: Leaves, region: Region) -> list[Cell]:
        field = Field.of(region, self.grain)
        count, width = self.strips(bundle, field)
        leaves = self.leaf_numbers(bundle, count)
        full = count * width if self.face == "running" else field.width
        lines = [field.before(field.left + full * k / count) for k in range(1, count)]
        cells = []
        for k, (leaf, (over, ended)) in enumerate(zip(leaves, self.put(count))):
            middle = field.left + full * (k + 0.5) / count
            frame = field.frame(middle, field.foot, field.length, over, ended)
            cells.append(Cell(rows.between(lines, k), leaf, over, frame))
        return cells

    def lay(self, bundle: Leaves, top: Top) -> Layout:
        """The layout of `top` from `bundle`."""
        return laid(self, bundle, top)


def shuffled(count: int, seed: int) -> list[int]:
    """0 .. count - 1 out of order, the same for the same seed everywhere: of FREE or more no two
    that follow each other lie side by side, and fewer are at least not in order."""
    chance = random.Random(f"order {seed}")
    while True:
        keys = [chance.random() for _ in range(count)]
        order = sorted(range(count), key=keys.__getitem__)
        steps = [b - a for a, b in zip(order, order[1:])]
        least = 2 if count >= FREE else 1
        if all(abs(s) >= least for s in steps) and (count < 2 or min(steps) < 0):
            return order


def side(
    bundle: Leaves,
    top: Top,
    turn: str = "book",
    face: str = "balance",
    count: int | None = None,
    width: float | None = None,
    placement: Placement | None = None,
    first: int = 1,
    order: str | Sequence[int] = "sequence",
    turned: str | None = None,
    seed: int = 1,
    grain: float = 90.0,
    oversize: float = 0.0,
    cuts: str = CUTS[0],
) -> Layout:
    """Leaves side by side across `top`, strips counted left to right with the grain upright.

    bundle:    a Bundle, or a Stock where no picture is needed.
    turn:      "book" (every second leaf turned over), "slip" (none, or all), "reverse slip" (every
               second leaf turned end for end) or "random" (out of order on purpose, by `seed`).
    face:      "balance" (strips of one width), "running" (full strips, the last one cut narrower),
               "centre balance" (one width, a joint on the centre line) or "slip-centre-book" (each
               half slipped, the halves mirrored at the centre).
    count:     how many strips (not for running); an even number for the faces with a joint on the
               centre, 4 or more for slip-centre-book.
    width:     instead of a count: mm that a strip may be wide from seam to seam; the least number
               of strips that are no wider. With neither, what the leaves from `first` on have room
               for.
    placement: where on the bundle the middle of a strip's foot lies, and the way its grain points
               (90: along the leaf); in the middle of the leaves if not given.
    first:     the first leaf; as many as there are strips are used from it on.
    order:     "sequence", or the leaf number of each strip (also for random: then as listed).
    turned:    which strips are turned: "odd" or "even" (book), "even" or "odd" (reverse slip: end
               for end), "none" or "all" (slip), "none", "all" or "random" (random, by `seed`),
               "left" or "right" (slip-centre-book: the half).
    grain:     direction in degrees of the strips on the top; 90 is upright.
    oversize:  mm that the blanks reach beyond the finished edge.
    cuts:      how what differs is cut: "stack" (all at once, by what all of it takes together),
               "shape" (a lot of leaves for each outline) or "own" (each piece by itself).

    Raises VeneerError for counts and choices that cannot be, and for slivers; a strip that does not
    fit its leaf is left to `check`.
    """
    recipe = SideMatch(
        turn, face, count, width, placement, first, order, turned, seed, grain, oversize,
        cuts=cuts,
    )  # fmt: skip
    return recipe.lay(bundle, top)

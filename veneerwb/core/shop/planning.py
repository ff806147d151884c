# SPDX-License-Identifier: LGPL-2.1-or-later
"""Before a bundle is bought: how many leaves of which least size a top takes.

All leaves are cut at one place, so the least leaf is the rectangle round all blanks drawn back into
the bundle, with a margin round it. That is found from the true edges of the blanks, not searched.
A longer leaf leaves room to choose the spot.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from shapely.geometry import Polygon

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.leaf import MOST_LEAVES, Stock
from veneerwb.core.matches.asked import MOST_OVERSIZE, between
from veneerwb.core.outlines import edge as edges
from veneerwb.core.plane import LONGEST, TOUCH, Motion, positive, whole
from veneerwb.core.shop.cost import MM2, MOST_TOPS, Factors
from veneerwb.core.shop.room import ROOM
from veneerwb.core.top import Top
from veneerwb.words import marked

BUNDLES = (24, 32)
"""Leaves of a usual bundle (two trade lexicons, secondary)."""
THIN = 0.6
"""mm: a usual sliced leaf (two trade lexicons, secondary); nothing here rests on it."""


@dataclass(frozen=True)
class Planning:
    """What to buy for `tops` tops: `needed` leaves and `spares`, each at least `width` x `length`
    mm, `per_leaf` tops from each leaf along its length; a top takes `each` leaves that follow each
    other.

    `cut` is what one top takes of a leaf (mm, across and along the grain), `place` where on the
    least leaf its placement lies (a wedge's tip; mm from the lower left corner; None of a match
    with several), `cuts` the outlines that are cut there, `top` and `blanks` m2 of one finished top
    and of its blanks.
    """

    cut: tuple[float, float]
    width: float
    length: float
    each: int
    needed: int
    spares: int
    tops: int
    per_leaf: int
    margin: float
    top: float
    blanks: float
    place: tuple[float, float] | None = None
    cuts: tuple[Polygon, ...] = ()

    @property
    def leaves(self) -> int:
        return self.needed + self.spares

    @property
    def leaf_area(self) -> float:
        """m2 of the least leaf."""
        return self.width * self.length * MM2

    @property
    def area(self) -> float:
        """m2 of all leaves, of the least size."""
        return self.leaves * self.leaf_area

    @property
    def factors(self) -> Factors:
        """The finished tops against what is bought."""
        return Factors(self.tops * self.top, self.area)

    def bundles(self, size: int) -> int | None:
        """How many bundles of `size` leaves do, no top laid across two of them; None where a bundle
        is too small for one top."""
        size = whole(marked("leaves of a bundle"), size, 1, MOST_LEAVES)
        if self.each > size:
            return None
        runs = self.needed // self.each
        return max(-(-runs // (size // self.each)), -(-self.leaves // size))

    def left_over(self, size: int) -> int | None:
        """Leaves that those bundles have more than are asked for."""
        bundles = self.bundles(size)
        return None if bundles is None else bundles * size - self.leaves


def planned(
    recipe: Any,
    top: Top,
    spares: int = 0,
    margin: float = 10.0,
    tops: int = 1,
    per_leaf: int = 1,
    leaf_width: float | None = None,
) -> Planning:
    """What to buy for a match (its recipe) on a top.

    spares:     leaves beside those that are used.
    margin:     mm round what is cut on every leaf.
    tops:       how many alike.
    per_leaf:   how many of them are cut from each leaf, one behind the other along the grain, with
                ROOM between.
    leaf_width: mm of the leaves to be had: needed by matches whose number of leaves follows from it
                (side and end matches without a count), and held against what is found.

    Raises VeneerError where the match cannot be laid, and where leaves of that width will not do.
    """
    if leaf_width is None and _follows_width(recipe):
        raise VeneerError(
            "width-needed",
            "How many leaves this match takes follows from their width: give the width of the "
            "leaves to be had, or the number of strips.",
        )
    wide = LONGEST if leaf_width is None else positive(marked("leaf width"), leaf_width)
    layout = recipe.lay(Stock(wide, LONGEST, MOST_LEAVES, THIN), top)
    found = planned_for(layout, spares, margin, tops, per_leaf)
    if leaf_width is not None and found.width > wide + TOUCH:
        raise VeneerError(
            "leaves-too-narrow",
            "This top takes leaves {needed} mm wide, the margin of {margin} mm included, and those "
            "to be had are {width} mm: take wider leaves, more pieces, or a smaller top.",
            needed=found.width,
            margin=found.margin,
            width=wide,
        )
    return found


def _follows_width(recipe: Any) -> bool:
    """Whether its number of pieces follows from the leaves."""
    return all(getattr(recipe, name, 0) is None for name in ("count", "width"))


def planned_for(
    layout: Layout, spares: int = 0, margin: float = 10.0, tops: int = 1, per_leaf: int = 1
) -> Planning:
    """The same for a layout that is there, whatever its leaves measure."""
    spares = whole(marked("number of spare leaves"), spares, 0, MOST_LEAVES)
    margin = between(marked("margin"), margin, 0.0, MOST_OVERSIZE)
    tops = whole(marked("number of tops"), tops, 1, MOST_TOPS)
    per_leaf = whole(marked("tops from each leaf"), per_leaf, 1, tops)
    spans = [_span(layout, way) for way in (0.0, 90.0)]
    across, along = (high - low for low, high in spans)
    at = getattr(layout.recipe, "placement", None)
    place = None if at is None else tuple(
        value - low + margin for value, (low, _) in zip((at.x, at.y), spans)
    )  # fmt: skip
    leaves = len({piece.leaf for piece in layout.pieces})
    return Planning(
        (across, along),
        across + 2.0 * margin,
        per_leaf * along + (per_leaf - 1) * ROOM + 2.0 * margin,
        leaves,
        leaves * -(-tops // per_leaf),
        spares,
        tops,
        per_leaf,
        margin,
        layout.top.area * MM2,
        math.fsum(edges.area(piece.blank_edge) for piece in layout.pieces) * MM2,
        place,
        tuple(Motion(dx=margin - spans[0][0], dy=margin - spans[1][0]).apply_to(cut.outline)
              for cut in layout.cuts),
    )  # fmt: skip


def _span(layout: Layout, way: float) -> tuple[float, float]:
    """(least, most) of all blanks drawn back into the bundle, mm, exact."""
    drawn = (edges.moved(piece.blank_edge, piece.onto_bundle) for piece in layout.pieces)
    spans = [edges.extent(edge, way) for edge in drawn]
    return min(low for low, _ in spans), max(high for _, high in spans)

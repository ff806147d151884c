# SPDX-License-Identifier: LGPL-2.1-or-later
"""The stacks of a job: which leaves are laid on each other, and what is cut through them.

A lot (`core.lots`) is what one outline of one layout is cut from; a pile is what lies on the bench:
lots that share a leaf, of all tops, with the spare leaves. Tops that share no leaf are piles of
their own.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from shapely.geometry import Polygon
from shapely.ops import unary_union

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Cut, Layout, Piece, cuts_of
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.radial import Radial
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge
from veneerwb.core.plane import TOUCH
from veneerwb.core.shop.cutting.sides import Side, sides_along, sides_of
from veneerwb.core.shop.templates.make import outlines_over
from veneerwb.core.shop.templates.over import EXACT, Over
from veneerwb.core.top import Top
from veneerwb.core.yields.packing import Position

LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ"


@dataclass(frozen=True)
class PileCut:
    """One outline (bundle mm) cut through a stack: the `top` it is for (1 for the first), the
    `positions` it serves there, its `sides`, and the positions in `again` that are cut from it to
    an outline of their own afterwards, since a seam of theirs lies within it. `trimmed`: those
    whose rim lies within it, which is cut back when the top is taped. `turned`: those that show the
    back."""

    outline: Polygon
    top: int
    positions: tuple[int, ...]
    sides: tuple[Side, ...]
    again: tuple[int, ...] = ()
    trimmed: tuple[int, ...] = ()
    turned: tuple[int, ...] = ()


@dataclass(frozen=True)
class Pile:
    """A stack: its letter, its `leaves` and the `spares` that are cut with them, by number, and the
    cuts. `laid`: by which side's register each leaf is laid, (leaf, by its back's); a leaf twice
    where its pieces show both sides and these lie otherwise."""

    name: str
    leaves: tuple[int, ...]
    spares: tuple[int, ...]
    cuts: tuple[PileCut, ...]
    laid: tuple[tuple[int, bool], ...]

    @property
    def stacked(self) -> tuple[int, ...]:
        """All leaves that lie in it, rising."""
        return tuple(sorted((*self.leaves, *self.spares)))

    @property
    def outlines(self) -> Any:
        return unary_union([cut.outline for cut in self.cuts])


def as_layouts(layouts: Layout | Sequence[Layout]) -> tuple[Layout, ...]:
    """One or several layouts of one bundle; VeneerError for none and for several bundles."""
    given = (layouts,) if isinstance(layouts, Layout) else tuple(layouts)
    if not given:
        raise VeneerError("no-layout", "There is nothing to cut; lay a match first.")
    if any(one.bundle is not given[0].bundle for one in given):
        raise VeneerError(
            "several-bundles",
            "The tops come from several bundles, which do not lie in one stack; plan each "
            "bundle's cuts by itself.",
        )
    return given


def piles(
    layouts: Layout | Sequence[Layout], spares: int = 0, by_shape: bool | None = None,
    over: Over = EXACT,
) -> tuple[Pile, ...]:
    """The stacks of a layout, or of several from one bundle.

    `by_shape`: a stack for each outline that there is, or one outline for all; None: as the layout
    is cut (`Layout.cut_as`). `spares`: how many leaves that no piece is cut from lie in the first
    stack too, those next to it in number. `over`: how much over seams are cut; the outlines are
    then those of the templates. Raises VeneerError where there are fewer leaves, and for what
    cannot be cut over so.
    """
    given = as_layouts(layouts)
    found: list[tuple[set[int], PileCut]] = []
    for top, one in enumerate(given, start=1):
        found += [(leaves, cut) for leaves, cut in _cuts(one, top, by_shape, over)]
    groups: list[tuple[set[int], list[PileCut]]] = []
    for leaves, cut in found:
        joined, cuts = set(leaves), [cut]
        for group in [g for g in groups if g[0] & joined]:
            groups.remove(group)
            joined, cuts = joined | group[0], group[1] + cuts
        groups.append((joined, cuts))
    groups.sort(key=lambda g: min((c.top, c.positions) for c in g[1]))
    used = set().union(*(leaves for leaves, _ in groups))
    chosen = _spares(given[0].bundle, used, groups[0][0], spares)
    shown = {(p.leaf, p.turned) for one in given for p in one.pieces}
    made = []
    for k, (leaves, cuts) in enumerate(groups):
        extra = chosen if k == 0 else ()
        laid = _laid(given[0].bundle, (*leaves, *extra), shown)
        made.append(Pile(_letter(k), tuple(sorted(leaves)), extra, tuple(cuts), laid))
    return tuple(made)


def _laid(
    bundle: Leaves, numbers: Sequence[int], shown: set[tuple[int, bool]]
) -> tuple[tuple[int, bool], ...]:
    found = []
    for n in sorted(numbers):
        one = bundle.register(n, True) == bundle.register(n, False)
        turned = [False] if one else [t for t in (False, True) if (n, t) in shown] or [False]
        found += [(n, t) for t in turned]
    return tuple(found)


def tops_laid(
    bundle: Leaves, top: Top, ways: int, positions: Sequence[Position], turn: str = "book",
    **more: Any,
) -> tuple[Layout, ...]:
    """The layouts of several tops of one size from a bundle, where `yields.packing.tops_from` found
    room for them; arguments as there."""
    return tuple(
        Radial(ways, turn, one.placement, one.first, **more).lay(bundle, top) for one in positions
    )


def _cuts(
    layout: Layout, top: int, by_shape: bool | None, over: Over
) -> list[tuple[set[int], PileCut]]:
    pieces = {piece.position: piece for piece in layout.pieces}

    def made(cuts: Sequence[Cut]) -> list[tuple[set[int], PileCut]]:
        served = [(cut, [pieces[p] for p in cut.pieces]) for cut in cuts]
        if over.exact:
            return [one for cut, some in served for one in _made(cut, some, top)]
        return [_part(edges.polygon(exact), group, top, edge) for _, some in served
                for exact, edge, group in outlines_over(layout, some, over)]

    if by_shape is None:
        return made(layout.cuts)
    return made(cuts_of(layout.pieces, "shape" if by_shape else "stack"))


def _made(cut: Cut, pieces: Sequence[Piece], top: int) -> list[tuple[set[int], PileCut]]:
    """One for each part of an outline: pieces of a top that is not convex may lie apart."""
    parts = [p for p in getattr(cut.outline, "geoms", [cut.outline]) if p.area > TOUCH]
    return [_part(part, _within(part, pieces) if len(parts) > 1 else pieces, top)
            for part in parts]


def _within(part: Polygon, pieces: Sequence[Piece]) -> list[Piece]:
    drawn = [(p, p.onto_bundle.apply_to(p.blank)) for p in pieces]
    return [p for p, blank in drawn if part.intersection(blank).area > 0.5 * blank.area]


def _part(
    outline: Polygon, pieces: Sequence[Piece], top: int, over: Edge | None = None
) -> tuple[set[int], PileCut]:
    """A cut round pieces; `over`: what is cut instead of their outline, with seams over."""
    sides, again = sides_of(outline, pieces)
    trimmed = tuple(p.position for p in pieces if p.position not in again
                    and outline.area - p.blank.area > 1e-6 * outline.area + TOUCH)
    turned = tuple(p.position for p in pieces if p.turned)
    if over:
        outline = edges.polygon(over)
        sides = sides_along(over, outline)
    made = PileCut(
        outline, top, tuple(p.position for p in pieces), sides, again, trimmed, turned
    )
    return {piece.leaf for piece in pieces}, made


def _spares(bundle: Leaves, used: set[int], near: set[int], count: int) -> tuple[int, ...]:
    free = [n for n in bundle.numbers if n not in used]
    if count < 0 or count > len(free):
        raise VeneerError(
            "spares-lacking",
            "{count} spare leaves are to lie in the stack, and {free} are left over; take fewer "
            "spares.",
            count=count, free=len(free),
        )
    low, high = min(near), max(near)
    away = {n: max(n - high, low - n, 0) for n in free}
    return tuple(sorted(sorted(free, key=lambda n: (away[n], n))[:count]))


def _letter(k: int) -> str:
    more, one = divmod(k, len(LETTERS))
    return (LETTERS[more - 1] if more else "") + LETTERS[one]

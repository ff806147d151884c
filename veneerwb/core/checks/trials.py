# SPDX-License-Identifier: LGPL-2.1-or-later
"""Rings that are laid only to see whether they would fit.

Where a ring's pieces lie does not hang on its leaves, so that what is tried for one panel of a run
is known for all that are like it.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from functools import lru_cache

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import CUTS, Piece
from veneerwb.core.leaf import Leaves, Stock
from veneerwb.core.matches.radial import Radial
from veneerwb.core.plane import stepped
from veneerwb.core.top import Top


def tried(recipe: Radial, bundle: Leaves, top: Top) -> tuple[Piece, ...] | None:
    """The pieces of a ring whose placement is settled; None where it cannot be laid."""
    try:
        leaves = recipe.leaf_numbers(bundle)
        plain = replace(recipe, first=1, order="sequence", cuts=CUTS[0])
        pieces = _from_any(plain, _Outline.of(top))
    except VeneerError:
        return None
    return tuple(replace(piece, leaf=leaves[piece.leaf - 1]) for piece in pieces)


@dataclass(frozen=True)
class _Outline:
    """A top that is the same as another if they differ by rounding only."""

    marks: tuple[float, ...]
    top: Top = field(compare=False)

    @staticmethod
    def of(top: Top) -> _Outline:
        runs = [segment for loop in (top.edge, *top.holes) for segment in loop]
        points = [segment.at(share) for segment in runs for share in (0.0, 0.25, 0.5)]
        return _Outline(tuple(stepped(points, 1e-5).ravel().tolist()), top)


@lru_cache(maxsize=128)
def _from_any(recipe: Radial, outline: _Outline) -> tuple[Piece, ...]:
    """The same from leaves 1, 2, 3 ... of no size."""
    return recipe.pieces(Stock(1.0, 1.0, recipe.count, 1.0), outline.top)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""How the leaves of a top are parted and cut, in lines for paper; nothing where all pieces are cut
alike."""

from __future__ import annotations

from veneerwb.core.errors import number
from veneerwb.core.layout import Layout
from veneerwb.core.leaf import ranges
from veneerwb.core.lots import Lot, cutting, pieces_differ

MOST = 8
"""Lots that are named in one line."""


def lot_line(layout: Layout) -> str:
    """The whole in one line, or ""."""
    if not pieces_differ(layout):
        return ""
    lots = cutting(layout).lots
    if layout.cut_as == "own":
        return f"Cut as single pieces, set out {len(lots)} times."
    if layout.cut_as == "shape":
        named = "; ".join(_positions(lot) for lot in lots[:MOST])
        more = " and others, see the cut list" if len(lots) > MOST else ""
        return f"Cut in {len(lots)} lots by shape, each set out by itself: {named}{more}."
    outlines = ", ".join(_size(lot) for lot in lots)
    word = "one stack to an outline" if len(lots) == 1 else f"{len(lots)} stacks to outlines"
    then = "longer rims are cut back when the top is taped"
    if any(lot.within for lot in lots):
        then = "each piece is then cut to its own seams"
    return f"Cut as {word} of {outlines}, across x along the grain; {then}."


def lot_lines(layout: Layout) -> list[tuple[str, str]]:
    """For a list: how it is cut, and each lot with its outline's size, positions and leaves."""
    if not pieces_differ(layout):
        return []
    word = {"stack": "one stack", "shape": "lots by shape", "own": "single pieces"}[layout.cut_as]
    lines = [("cut as", word)]
    for k, lot in enumerate(cutting(layout).lots, start=1):
        text = f"{_size(lot)} mm across x along the grain; positions {_positions(lot)}; leaves "
        lines.append((f"lot {k}", text + ranges(lot.leaves)))
    return lines


def _positions(lot: Lot) -> str:
    return ranges(lot.cut.pieces)


def _size(lot: Lot) -> str:
    x0, y0, x1, y1 = lot.cut.outline.bounds
    return f"{number(round(x1 - x0, 1))} x {number(round(y1 - y0, 1))}"

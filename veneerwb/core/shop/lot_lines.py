# SPDX-License-Identifier: LGPL-2.1-or-later
"""How the leaves of a top are parted and cut, in lines for paper; nothing where all pieces are cut
alike."""

from __future__ import annotations

from veneerwb.core.layout import Layout
from veneerwb.core.leaf import ranges
from veneerwb.core.lots import Lot, cutting, pieces_differ
from veneerwb.words import figure, marked, say, word

MOST = 8
"""Lots that are named in one line."""


def lot_line(layout: Layout) -> str:
    """The whole in one line, or ""."""
    if not pieces_differ(layout):
        return ""
    lots = cutting(layout).lots
    if layout.cut_as == "own":
        return say("Cut as single pieces, set out {count} times.", count=len(lots))
    if layout.cut_as == "shape":
        named = "; ".join(_positions(lot) for lot in lots[:MOST])
        if len(lots) > MOST:
            return say(
                "Cut in {count} lots by shape, each set out by itself: {named} and others, see the "
                "cut list.", count=len(lots), named=named,
            )  # fmt: skip
        return say(
            "Cut in {count} lots by shape, each set out by itself: {named}.", count=len(lots),
            named=named,
        )  # fmt: skip
    outlines = ", ".join(_size(lot) for lot in lots)
    own = any(lot.within for lot in lots)
    return say(ONE[own] if len(lots) == 1 else SEVERAL[own], count=len(lots), outlines=outlines)


ONE = {
    False: marked(
        "Cut as one stack to an outline of {outlines}, across x along the grain; longer rims are "
        "cut back when the top is taped."
    ),
    True: marked(
        "Cut as one stack to an outline of {outlines}, across x along the grain; each piece is "
        "then cut to its own seams."
    ),
}
SEVERAL = {
    False: marked(
        "Cut as {count} stacks to outlines of {outlines}, across x along the grain; longer rims "
        "are cut back when the top is taped."
    ),
    True: marked(
        "Cut as {count} stacks to outlines of {outlines}, across x along the grain; each piece is "
        "then cut to its own seams."
    ),
}
"""By whether pieces are cut again to their own seams."""
CUT_AS = {
    "stack": marked("one stack"), "shape": marked("lots by shape"), "own": marked("single pieces")
}


def lot_lines(layout: Layout) -> list[tuple[str, str]]:
    """For a list: how it is cut, and each lot with its outline's size, positions and leaves."""
    if not pieces_differ(layout):
        return []
    lines = [(word("cut as"), word(CUT_AS[layout.cut_as]))]
    for k, lot in enumerate(cutting(layout).lots, start=1):
        text = say(
            "{size} mm across x along the grain; positions {positions}; leaves {leaves}",
            size=_size(lot), positions=_positions(lot), leaves=ranges(lot.leaves),
        )
        lines.append((say("lot {number}", number=k), text))
    return lines


def _positions(lot: Lot) -> str:
    return ranges(lot.cut.pieces)


def _size(lot: Lot) -> str:
    x0, y0, x1, y1 = lot.cut.outline.bounds
    return f"{figure(round(x1 - x0, 1))} x {figure(round(y1 - y0, 1))}"

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which way the positions of a match are counted, in words."""

from __future__ import annotations

from veneerwb.core.layout import Layout
from veneerwb.core.matches.end import End
from veneerwb.core.matches.quarters import BOXES, Quarters
from veneerwb.core.matches.rings import Rings
from veneerwb.core.matches.side import SideMatch
from veneerwb.words import word


def counted(layout: Layout) -> str:
    """How its positions run, as seen from the show face: "counter-clockwise"."""
    how = layout.recipe
    if isinstance(how, Rings):
        return word("counter-clockwise, the inner field first")
    if isinstance(how, SideMatch):
        return word("left to right with the grain upright")
    if isinstance(how, End):
        return (
            word("row by row from the lowest up, each left to right with the grain upright")
            if how.kind == "continuous"
            else word("row by row from the upper one down, each left to right with the grain "
                      "upright")
        )  # fmt: skip
    if isinstance(how, Quarters):
        if how.kind == "herringbone":
            return word("in pairs, right and left of the centre line, from the bottom up")
        if how.kind in BOXES:
            return word("counter-clockwise from the upper field")
        return word("counter-clockwise from the upper right quarter")
    return word("counter-clockwise")

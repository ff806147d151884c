# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which way the positions of a match are counted, in words."""

from __future__ import annotations

from veneerwb.core.layout import Layout
from veneerwb.core.matches.end import End
from veneerwb.core.matches.quarters import BOXES, Quarters
from veneerwb.core.matches.rings import Rings
from veneerwb.core.matches.side import SideMatch


def counted(layout: Layout) -> str:
    """How its positions run, as seen from the show face: "counter-clockwise"."""
    how = layout.recipe
    if isinstance(how, Rings):
        return "counter-clockwise, the inner field first"
    if isinstance(how, SideMatch):
        return "left to right with the grain upright"
    if isinstance(how, End):
        rows = "the lowest up" if how.kind == "continuous" else "the upper one down"
        return f"row by row from {rows}, each left to right with the grain upright"
    if isinstance(how, Quarters):
        if how.kind == "herringbone":
            return "in pairs, right and left of the centre line, from the bottom up"
        first = "upper field" if how.kind in BOXES else "upper right quarter"
        return f"counter-clockwise from the {first}"
    return "counter-clockwise"

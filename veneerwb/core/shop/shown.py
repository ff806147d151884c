# SPDX-License-Identifier: LGPL-2.1-or-later
"""Values that people read on paper: each goes through `word` where it is written."""

from __future__ import annotations

from veneerwb.words import marked, say

SIDES = marked("face"), marked("back")
WAYS = (
    marked("right"), marked("up right"), marked("up"), marked("up left"), marked("left"),
    marked("down left"), marked("down"), marked("down right"),
)
EDGES = marked("seam"), marked("rim"), marked("opening"), marked("straight"), marked("curve")
PLACES = (
    marked("tip"), marked("axis at the rim"), marked("lowest corner"), marked("far corner")
)
PARTS = (
    marked("field"), marked("border"), marked("stringing line"), marked("inlay"),
    marked("lipping"), marked("core"), marked("backer"), marked("crossband below"),
    marked("crossband above"), marked("show face"), marked("all layers"),
)


def lettered(leaf: int) -> str:
    """How a leaf is named beside a position."""
    return say("L{leaf}", leaf=leaf)

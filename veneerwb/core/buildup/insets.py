# SPDX-License-Identifier: LGPL-2.1-or-later
"""Insets of a top's edge, and whether there is room for them."""

from __future__ import annotations

import math
from collections.abc import Mapping

from veneerwb.core.errors import VeneerError
from veneerwb.core.listing import all_of
from veneerwb.core.outlines.edge import Edge
from veneerwb.core.outlines.offset import parallel, widest
from veneerwb.core.top import Top
from veneerwb.words import say, word


def inset(top: Top, by: float) -> Edge:
    """The top's edge `by` mm further in."""
    return parallel(top.edge, -by)


def room_for(top: Top, widths: Mapping[str, float]) -> float:
    """What strips of these widths, by what they are, take from every side in mm; VeneerError where
    they leave nothing of the top in one piece."""
    there = {what: width for what, width in widths.items() if width}
    taken = math.fsum(there.values())
    try:
        inset(top, taken)
    except VeneerError as error:
        names = all_of([say("the {what}", what=word(what)) for what in there])
        raise VeneerError(
            "too-wide",
            "{names} would take {taken} mm from every side and leave nothing of this top in one "
            "piece; give at most {most} mm in all.",
            names=names[0].upper() + names[1:], taken=taken, most=widest(top.edge),
        ) from error  # fmt: skip
    return taken

# SPDX-License-Identifier: LGPL-2.1-or-later
"""With which sizes a new match begins: such as its leaves have room for."""

from __future__ import annotations

from math import floor, pi, sin
from typing import Any

from veneerwb.gui.panels import fields

USUAL = {"Diameter": 1200.0, "AcrossFlats": 1200.0, "Length": 1800.0, "Width": 900.0}
"""mm: no new top is larger than that."""
SHARE = 0.9
"""How much of the room is taken, so that the first spot may be off the middle."""
WAYS, FEWEST = 8, 4
STEP = 10.0
"""mm; where the user's unit is larger that is the step."""


def fitting(bundle: Any) -> dict[str, Any]:
    """Sizes and ways, by the names of a Match's properties, that the leaves of a Bundle or Stock
    have room for; none where its leaves cannot be read, which the match itself will say."""
    from veneerwb.core import VeneerError
    from veneerwb.host.values import leaves_of

    try:
        leaves = leaves_of(bundle)
        return _fitting(leaves.common_area(leaves.numbers).bounds, len(leaves.numbers))
    except (VeneerError, ImportError):
        return {}


def _fitting(bounds: tuple[float, ...], count: int) -> dict[str, Any]:
    """The same from the bounds of what may be used of every leaf (mm; empty: nothing may) and from
    how many leaves there are."""
    if not bounds or count < 1:
        return {}
    wide, long = SHARE * (bounds[2] - bounds[0]), SHARE * (bounds[3] - bounds[1])
    found: dict[str, Any] = {"Length": count * wide, "Width": long}
    ways = min(WAYS, count - count % 2)
    if ways >= FEWEST:
        across = 2.0 * min(long, wide / (2.0 * sin(pi / ways)))
        found |= {"Diameter": across, "AcrossFlats": across}
    found = {name: _rounded(min(size, USUAL[name])) for name, size in found.items()}
    found["Ends"] = _rounded(2.0 / 3.0 * found["Width"])
    found["InnerDiameter"] = _rounded(min(found.values()) / 2.0)
    return found | ({"Ways": ways} if ways >= FEWEST else {})


def _rounded(mm: float) -> float:
    """Down to whole steps; a size of less than one stays."""
    step = max(STEP, fields.unit().mm)
    return floor(mm / step) * step or mm

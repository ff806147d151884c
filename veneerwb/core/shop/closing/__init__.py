# SPDX-License-Identifier: LGPL-2.1-or-later
"""Closing the ring: how much over to cut, and along which diameter to true what was cut."""

from __future__ import annotations

from veneerwb.core.shop.closing.advice import Before, Closing, Offer
from veneerwb.core.shop.closing.expected import Errors, Expected
from veneerwb.core.shop.closing.measured import (
    Diameter,
    Measured,
    broken_of,
    point_moves,
    tips_move,
)
from veneerwb.core.shop.closing.moisture import Moisture
from veneerwb.core.shop.closing.over import Over, chance, hows, least_over, replayed
from veneerwb.core.shop.closing.readings import Angle, Gap, Trial
from veneerwb.core.shop.closing.ring import Ring
from veneerwb.core.shop.closing.swaps import Swap, swaps
from veneerwb.core.shop.closing.trued import Bent, Costs, Places, as_trued, bent, costs, places

__all__ = [
    "Angle",
    "Before",
    "Bent",
    "Closing",
    "Costs",
    "Diameter",
    "Errors",
    "Expected",
    "Gap",
    "Measured",
    "Moisture",
    "Offer",
    "Over",
    "Places",
    "Ring",
    "Swap",
    "Trial",
    "as_trued",
    "bent",
    "broken_of",
    "chance",
    "costs",
    "hows",
    "least_over",
    "places",
    "point_moves",
    "replayed",
    "swaps",
    "tips_move",
]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Placement: where on the bundle a match is cut."""

from __future__ import annotations

import math
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import LONGEST, finite
from veneerwb.words import marked, word

_CALLED = {
    "x": marked("placement's x"), "y": marked("placement's y"),
    "angle": marked("placement's angle"),
}  # fmt: skip


@dataclass(frozen=True)
class Placement:
    """Where on the bundle a wedge's tip lies (`x`, `y` in mm) and which way its axis points
    (`angle` in degrees; 90 is along the grain)."""

    x: float
    y: float
    angle: float = 90.0

    def __post_init__(self) -> None:
        for name in ("x", "y", "angle"):
            value = finite(_CALLED[name], getattr(self, name))
            if name != "angle" and abs(value) > LONGEST:
                raise VeneerError(
                    "out-of-range",
                    "The {name} cannot be {value}; give a number from -{most} to {most}.",
                    name=word(_CALLED[name]),
                    value=value,
                    most=LONGEST,
                )
            # Whole turns go, for they cost decimals.
            object.__setattr__(self, name, math.fmod(value, 360.0) if name == "angle" else value)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Setting out a wedge by an offset at the end of a long base.

A protractor is good to half a degree, which at the rim of a table is some millimetres; a rule at
the end of a long base is good to a few hundredths of a degree. On the wedge's axis mark `base` from
the tip, square off `offset` = base tan(angle / 2) to both sides: the seams run from the tip through
the two marks.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import LONGEST, positive, tand
from veneerwb.words import marked

STEP = 500.0
"""mm: a chosen base is a multiple of this."""


@dataclass(frozen=True)
class SetOut:
    """A tip `angle` in degrees, under 180, set out over a `base` in mm."""

    angle: float
    base: float

    @property
    def offset(self) -> float:
        """What is squared off to each side at the end of the base, mm."""
        return self.base * tand(self.angle / 2.0)


def set_out(angle: float, side: float, base: float = 0.0) -> SetOut:
    """The set-out of a wedge whose longer seam is `side` mm, over `base` mm; 0 for the shortest
    multiple of STEP that reaches as far as the seam."""
    if base < 0.0 or base > LONGEST:
        raise VeneerError(
            "out-of-range",
            "The base of the set-out cannot be {value}; give a length up to {most}, or 0 to have "
            "it chosen.",
            value=base,
            most=LONGEST,
        )
    chosen = positive(marked(
        "base of the set-out"
    ), base) if base else STEP * math.ceil(side / STEP - 1e-9)
    return SetOut(angle, chosen)

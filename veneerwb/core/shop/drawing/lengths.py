# SPDX-License-Identifier: LGPL-2.1-or-later
"""How lengths are written on paper: millimetres, inches with fractions, or both."""

from __future__ import annotations

import math
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.inventory import square_feet
from veneerwb.core.plane import choice
from veneerwb.words import figure, marked, say

INCH = 25.4
UNITS = ("mm", "inch", "both")
FRACTIONS = (16, 32, 64)
"""Into how many parts an inch is divided."""


@dataclass(frozen=True)
class Lengths:
    """`unit` "mm", "inch" or "both"; inches to the nearest `fraction`-th."""

    unit: str = "mm"
    fraction: int = 32

    def __post_init__(self) -> None:
        choice(marked("unit"), self.unit, UNITS)
        if self.fraction not in FRACTIONS:
            raise VeneerError(
                "unknown-choice",
                "An inch cannot be parted into {value!r:.40} here; choose one of: {allowed}.",
                value=self.fraction,
                allowed=", ".join(map(str, FRACTIONS)),
            )

    def length(self, mm: float) -> str:
        """Such as 600.0, or 23 5/8 in, or 600.0 (23 5/8 in): mm to a tenth, without a unit."""
        plain, inches = _mm(mm), f"{self.inches(mm)} in"
        return {"mm": plain, "inch": inches, "both": f"{plain} ({inches})"}[self.unit]

    def cell(self, mm: float) -> str:
        """As it stands in a table whose page names the unit: 600.0, or 23 5/8, or both on two
        lines."""
        plain, inches = _mm(mm), self.inches(mm)
        return {"mm": plain, "inch": inches, "both": f"{plain}\n({inches})"}[self.unit]

    def cell_size(self, across: float, along: float) -> str:
        """Two lengths in a table."""
        plain, inches = (
            " x ".join(map(write, (across, along))) for write in (_mm, self.inches)
        )
        return {"mm": plain, "inch": inches, "both": f"{plain}\n({inches})"}[self.unit]

    def size(self, across: float, along: float) -> str:
        """Two lengths: 100.0 x 600.0."""
        pair = (across, along)
        plain = " x ".join(map(_mm, pair))
        inches = " x ".join(self.inches(v) for v in pair) + " in"
        return {"mm": plain, "inch": inches, "both": f"{plain} ({inches})"}[self.unit]

    def area(self, m2: float) -> str:
        """Such as 1.131 m2, or 12.17 sq ft."""
        plain = f"{figure(m2, '.3f')} m2"
        feet = say("{area} sq ft", area=figure(square_feet(m2), ".2f"))
        return {"mm": plain, "inch": feet, "both": f"{plain} ({feet})"}[self.unit]

    def inches(self, mm: float) -> str:
        """The number of inches, with a fraction in its lowest terms: 23 5/8."""
        parts = round(abs(mm) / INCH * self.fraction)
        sign = "-" if mm < 0.0 and parts else ""
        full, rest = divmod(parts, self.fraction)
        if not rest:
            return f"{sign}{full}"
        common = math.gcd(rest, self.fraction)
        share = f"{rest // common}/{self.fraction // common}"
        return f"{sign}{full} {share}" if full else f"{sign}{share}"

    @property
    def said(self) -> str:
        """For the title block."""
        inches = say("in, to 1/{fraction}", fraction=self.fraction)
        return {"mm": "mm", "inch": inches, "both": "mm (in)"}[self.unit]


def _mm(value: float) -> str:
    return figure(round(value, 1) + 0.0, ".1f")

# SPDX-License-Identifier: LGPL-2.1-or-later
"""How thicknesses are written: a leaf is told from another by hundredths of a millimetre."""

from __future__ import annotations

from veneerwb.core.shop.drawing.lengths import INCH, Lengths
from veneerwb.words import figure


def thickness(lengths: Lengths, mm: float, in_table: bool = False) -> str:
    """Such as 0.6 mm, or 0.024 in: mm to a hundredth, inches to a thousandth. In a table without
    the unit, both on two lines."""
    plain, inches = _figures(mm)
    if in_table:
        return {"mm": plain, "inch": inches, "both": f"{plain}\n({inches})"}[lengths.unit]
    return {"mm": f"{plain} mm", "inch": f"{inches} in", "both": f"{plain} mm ({inches} in)"}[
        lengths.unit
    ]


def on_drawing(lengths: Lengths, mm: float) -> str:
    """As `Lengths.length` writes it, mm without a unit: 0.6, or 0.024 in, or 0.6 (0.024 in)."""
    plain, inches = _figures(mm)
    return {"mm": plain, "inch": f"{inches} in", "both": f"{plain} ({inches} in)"}[lengths.unit]


def _figures(mm: float) -> tuple[str, str]:
    """So many mm, and inches."""
    return figure(round(mm, 2)), figure(mm / INCH, ".3f")

# SPDX-License-Identifier: LGPL-2.1-or-later
"""How thicknesses are written: a leaf is told from another by hundredths of a millimetre."""

from __future__ import annotations

from veneerwb.core.shop.drawing.lengths import INCH, Lengths


def thickness(lengths: Lengths, mm: float, in_table: bool = False) -> str:
    """Such as 0.6 mm, or 0.024 in: mm to a hundredth, inches to a thousandth. In a table without
    the unit, both on two lines."""
    plain, inches = f"{mm:.2f}".rstrip("0").rstrip("."), f"{mm / INCH:.3f}"
    if in_table:
        return {"mm": plain, "inch": inches, "both": f"{plain}\n({inches})"}[lengths.unit]
    return {"mm": f"{plain} mm", "inch": f"{inches} in", "both": f"{plain} mm ({inches} in)"}[
        lengths.unit
    ]

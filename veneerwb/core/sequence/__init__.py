# SPDX-License-Identifier: LGPL-2.1-or-later
"""A bundle as a sequence: how its photographs lie on each other, and whether the order is true.

Here belongs what compares the pictures of leaves: aligning two (`align`), and the chain of
neighbours through a bundle (`chain`). One working scale, mm and degrees, no colour.
"""

from __future__ import annotations

from veneerwb.core.sequence.align import WORKING_SCALE, Alignment, Grid, aligned, grids
from veneerwb.core.sequence.chain import Chain, Check, Step, chained, register, registered

__all__ = [
    "WORKING_SCALE",
    "Alignment",
    "Chain",
    "Check",
    "Grid",
    "Step",
    "aligned",
    "chained",
    "grids",
    "register",
    "registered",
]

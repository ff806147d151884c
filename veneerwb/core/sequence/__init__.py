# SPDX-License-Identifier: LGPL-2.1-or-later
"""A bundle as a sequence: how its photographs lie on each other, and whether the order is true.

Here belongs what compares the pictures of leaves: aligning two (`align`, on a `grid`), the chain of
neighbours through a bundle (`chain`), what the stack follows (`follow`) and how far it misses
(`residual`, `trust`), and the proof of the order (`proof`). One working scale, mm and degrees, no
colour.
"""

from __future__ import annotations

from veneerwb.core.sequence.align import WORKING_SCALE, Alignment, Grid, aligned, grids
from veneerwb.core.sequence.chain import Chain, Check, Step, chained, register, registered
from veneerwb.core.sequence.proof import SequenceProof, prove_sequence
from veneerwb.core.sequence.suspects import Suspect

__all__ = [
    "WORKING_SCALE",
    "Alignment",
    "Chain",
    "Check",
    "Grid",
    "SequenceProof",
    "Step",
    "Suspect",
    "aligned",
    "chained",
    "grids",
    "prove_sequence",
    "register",
    "registered",
]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The job itself, without FreeCAD and without Qt: leaves, layouts, checks, lists. mm and
degrees."""

from __future__ import annotations

from veneerwb.core.checks import check
from veneerwb.core.checks.closure import Closure, closure
from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Cut, Layout, Piece, Seam
from veneerwb.core.leaf import Bundle, Fault, Leaf, Side, Stock
from veneerwb.core.log import Disturbance, sawn_bundle
from veneerwb.core.matches.radial import Placement, radial
from veneerwb.core.plane import Motion
from veneerwb.core.search import Candidate, find_placements
from veneerwb.core.sequence import SequenceProof, Suspect, prove_sequence, register
from veneerwb.core.top import Top
from veneerwb.core.yields.largest import largest_tops
from veneerwb.core.yields.packing import tops_from

__all__ = [
    "Bundle",
    "Candidate",
    "Closure",
    "Cut",
    "Disturbance",
    "Fault",
    "Finding",
    "Layout",
    "Leaf",
    "Motion",
    "Piece",
    "Placement",
    "Seam",
    "SequenceProof",
    "Side",
    "Stock",
    "Suspect",
    "Top",
    "VeneerError",
    "check",
    "closure",
    "find_placements",
    "largest_tops",
    "prove_sequence",
    "radial",
    "register",
    "sawn_bundle",
    "tops_from",
]

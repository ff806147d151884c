# SPDX-License-Identifier: LGPL-2.1-or-later
"""The job itself, without FreeCAD and without Qt: leaves, layouts, checks, lists. mm and
degrees."""

from __future__ import annotations

from veneerwb.core.buildup import (
    Backer,
    Border,
    BuildUp,
    Core,
    Crossband,
    Disc,
    Lipping,
    PanelPart,
    Show,
    Star,
    Stringing,
    bill,
    write_bill,
)
from veneerwb.core.checks import check
from veneerwb.core.checks.buildup import buildup_findings
from veneerwb.core.checks.closure import Closure, closure
from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Cut, Layout, Piece, Seam, cuts_by_shape
from veneerwb.core.leaf import Bundle, Fault, Leaf, Side, Stock
from veneerwb.core.log.sawn import Disturbance, sawn_bundle
from veneerwb.core.lots import Cutting, Lot, cutting, cuttings
from veneerwb.core.matches.end import End, end
from veneerwb.core.matches.placement import Placement
from veneerwb.core.matches.quarters import Quarters, quarters
from veneerwb.core.matches.radial import Radial, radial
from veneerwb.core.matches.rings import Rings, rings
from veneerwb.core.matches.side import SideMatch, side
from veneerwb.core.plane import Motion
from veneerwb.core.runs import LaidRun, Panel, Run, elevation, joined, run_findings
from veneerwb.core.search import Candidate, find_placements
from veneerwb.core.sequence import SequenceProof, Suspect, prove_sequence, register
from veneerwb.core.shop.closing import Closing
from veneerwb.core.shop.cost import Price, cost, yields
from veneerwb.core.shop.cutting.methods import METHODS, Method, method
from veneerwb.core.shop.cutting.offcuts import offcuts
from veneerwb.core.shop.cutting.piles import tops_laid
from veneerwb.core.shop.cutting.plan import cutting_plan
from veneerwb.core.shop.pinning.plan import pinning
from veneerwb.core.shop.planning import planned
from veneerwb.core.shop.press.day import Adhesive, Bag, Platen, press_day
from veneerwb.core.shop.taping.plan import taping
from veneerwb.core.shop.templates.dxf import write_dxf
from veneerwb.core.shop.templates.make import templates
from veneerwb.core.shop.templates.over import Over
from veneerwb.core.shop.templates.svg import write_svg
from veneerwb.core.shop.templates.template import Template
from veneerwb.core.top import Top
from veneerwb.core.wood import Climate, Coefficients, movement
from veneerwb.core.yields.largest import largest_tops
from veneerwb.core.yields.packing import tops_from

__all__ = [
    "METHODS",
    "Adhesive",
    "Backer",
    "Bag",
    "Border",
    "BuildUp",
    "Bundle",
    "Candidate",
    "Climate",
    "Closing",
    "Closure",
    "Coefficients",
    "Core",
    "Crossband",
    "Cut",
    "Cutting",
    "Disc",
    "Disturbance",
    "End",
    "Fault",
    "Finding",
    "LaidRun",
    "Layout",
    "Leaf",
    "Lipping",
    "Lot",
    "Method",
    "Motion",
    "Over",
    "Panel",
    "PanelPart",
    "Piece",
    "Placement",
    "Platen",
    "Price",
    "Quarters",
    "Radial",
    "Rings",
    "Run",
    "Seam",
    "SequenceProof",
    "Show",
    "Side",
    "SideMatch",
    "Star",
    "Stock",
    "Stringing",
    "Suspect",
    "Template",
    "Top",
    "VeneerError",
    "bill",
    "buildup_findings",
    "check",
    "closure",
    "cost",
    "cuts_by_shape",
    "cutting",
    "cutting_plan",
    "cuttings",
    "elevation",
    "end",
    "find_placements",
    "joined",
    "largest_tops",
    "method",
    "movement",
    "offcuts",
    "pinning",
    "planned",
    "press_day",
    "prove_sequence",
    "quarters",
    "radial",
    "register",
    "rings",
    "run_findings",
    "sawn_bundle",
    "side",
    "taping",
    "templates",
    "tops_from",
    "tops_laid",
    "write_bill",
    "write_dxf",
    "write_svg",
    "yields",
]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel built up: what it is of, its parts on a top, and its bill of materials."""

from __future__ import annotations

from veneerwb.core.buildup.bill import Row, bill, bill_csv, write_bill
from veneerwb.core.buildup.kinds import (
    Backer,
    Border,
    Core,
    Crossband,
    Disc,
    Lipping,
    Show,
    Star,
    Stringing,
)
from veneerwb.core.buildup.panel import BuildUp, PanelPart

__all__ = [
    "Backer",
    "Border",
    "BuildUp",
    "Core",
    "Crossband",
    "Disc",
    "Lipping",
    "PanelPart",
    "Row",
    "Show",
    "Star",
    "Stringing",
    "bill",
    "bill_csv",
    "write_bill",
]

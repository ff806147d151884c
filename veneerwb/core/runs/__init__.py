# SPDX-License-Identifier: LGPL-2.1-or-later
"""Runs of panels: doors, drawer fronts, wall panels laid one after another from one sequence."""

from __future__ import annotations

from veneerwb.core.runs.bundles import joined
from veneerwb.core.runs.findings import run_findings
from veneerwb.core.runs.panels import Panel, elevation
from veneerwb.core.runs.run import GAPS, MODES, LaidRun, Run

__all__ = [
    "GAPS",
    "MODES",
    "LaidRun",
    "Panel",
    "Run",
    "elevation",
    "joined",
    "run_findings",
]

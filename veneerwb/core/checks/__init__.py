# SPDX-License-Identifier: LGPL-2.1-or-later
"""Checks: what stands against cutting a layout, found from its pieces. One file a subject."""

from __future__ import annotations

from typing import Any

from veneerwb.core.checks.closure import wedge_findings
from veneerwb.core.checks.cuts import cut_findings
from veneerwb.core.checks.faces import face_findings
from veneerwb.core.checks.finding import LEVELS, Finding
from veneerwb.core.checks.panel import panel_findings
from veneerwb.core.checks.ring import ring_findings
from veneerwb.core.checks.sufficiency import sufficiency_findings
from veneerwb.core.checks.wider import wider_findings
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.plane import finite, whole


def check(
    layout: Layout, margin: float = 0.0, spares: int = 0, wedge_angle: float | None = None,
    hidden: Any = None,
) -> list[Finding]:
    """All findings on a layout, the gravest first.

    margin:      mm to keep between every blank and the edge of its leaf's usable area.
    spares:      unused leaves that should be left over.
    wedge_angle: the angle in degrees that the template will have, if it is not 360/n.
    hidden:      what of the top will be covered (shapely, top mm) and may hide a fault.
    """
    margin = finite("margin", margin)
    if margin < 0.0:
        raise VeneerError(
            "out-of-range", "The margin cannot be {value}; give 0 or more.", value=margin
        )
    spares = whole("number of spare leaves", spares, 0, 1000)
    findings = [
        *sufficiency_findings(layout, margin, spares, hidden),
        *ring_findings(layout, hidden),
        *cut_findings(layout, margin),
        *wedge_findings(layout, wedge_angle),
        *wider_findings(layout, wedge_angle, margin),
        *panel_findings(layout),
        *face_findings(layout),
    ]
    return sorted(findings, key=lambda finding: LEVELS.index(finding.level))

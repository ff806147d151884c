# SPDX-License-Identifier: LGPL-2.1-or-later
"""A panel in the document: the core's parts of a built-up match as solids, and its bill."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import Part
from FreeCAD import Vector

from veneerwb.core.buildup import BuildUp, PanelPart, Row, bill
from veneerwb.core.checks.buildup import buildup_findings
from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError
from veneerwb.host import bills, buildups, solids, values

RANK = {"stop": 0, "warn": 1, "note": 2}


@dataclass(frozen=True)
class Panel:
    """A build-up and all its parts on a top, from below."""

    how: BuildUp
    parts: tuple[PanelPart, ...]

    @property
    def thickness(self) -> float:
        return self.how.thickness

    @property
    def solid_parts(self) -> list[PanelPart]:
        """Those that are solids of their own: the field is the match's pieces."""
        return [part for part in self.parts if part.item != "field"]

    @property
    def rows(self) -> list[Row]:
        """The bill of materials, field and all."""
        return bill(self.parts)

    @property
    def bill_mark(self) -> str:
        return solids.mark(self.rows)

    def lifts(self, explode: float) -> dict[str, float]:
        """By how much each item is lifted in the exploded view, mm; the field stays."""
        lifts = self.how.exploded(explode)
        return {item: lift - lifts["field"] for item, lift in lifts.items()}

    def mark(self, explode: float) -> str:
        """A mark of everything that `compound` reads."""
        return solids.mark(explode, [(part.region, part.z, part.item) for part in self.parts])

    def compound(self, explode: float) -> Any:
        """One compound, one solid for each of `solid_parts`."""
        lifts = self.lifts(explode)
        return Part.Compound([part_solid(p, lifts[p.item]) for p in self.solid_parts])


def part_solid(part: PanelPart, lift: float = 0.0) -> Any:
    """The solid of a part, `lift` mm higher than it is built."""
    solid = solids.solid_of(part.region, part.thickness)
    solid.translate(Vector(0.0, 0.0, part.z[0] + lift))
    return solid


def panel_of(match: Any) -> Panel:
    """The panel of a Match. Raises VeneerError where it has no build-up, or does not fit."""
    how = buildups.built(match)
    if how is None:
        raise VeneerError(
            "no-build-up", "The match has no build-up; select it and build up its panel first."
        )
    return Panel(how, how.parts(values.finished_top(match)))


def findings(obj: Any, panel: Panel | None = None) -> list[Finding]:
    """What the checks find on the panel of a Parts object, the gravest first."""
    match = obj.Match
    panel = panel or panel_of(match)
    top, air = values.finished_top(match), buildups.climates(match.BuildUp)
    found = buildup_findings(panel.how, top, air, panel.parts)
    if bills.is_old(obj, panel.bill_mark):
        found.append(
            Finding(
                "bill-old",
                "warn",
                "The bill of materials in the spreadsheet is older than this panel.",
                "Make it again before anything is bought or cut by it.",
            )
        )
    return sorted(found, key=lambda one: RANK[one.level])


def found_on(obj: Any) -> list[Finding]:
    """The findings on a Parts object as it stands; none where it refuses."""
    if obj is None or obj.Message:
        return []
    found = getattr(obj.Proxy, "found", ())
    if [str(finding) for finding in found] == obj.Findings:
        return list(found)
    return findings(obj)

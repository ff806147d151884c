# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a ring is by its count: parity, fineness of the tips, sunburst."""

from __future__ import annotations

from collections.abc import Iterator

from veneerwb.core.checks.finding import Finding
from veneerwb.core.layout import Layout
from veneerwb.core.matches.radial import Radial
from veneerwb.core.plane import tand

TIP_AT = 10.0
FINE_TIP = 2.0
"""mm: a tip narrower than this at TIP_AT mm breaks and tears in the hand (common practice, no
source)."""
SUNBURST = 6
"""Leaves: Architectural Woodwork Standards, 1st ed. (2009), 1.2.22: sunburst, six or more
leaves."""


def ring_findings(layout: Layout) -> list[Finding]:
    return [*_parity(layout), *_tips(layout), *_sunburst(layout)]


def _parity(layout: Layout) -> Iterator[Finding]:
    """In a layout with turned pieces every seam joins a turned one to an upright one, or it is no
    book joint."""
    by_position = {piece.position: piece for piece in layout.pieces}
    turned = [piece for piece in layout.pieces if piece.turned]
    if len(turned) in (0, len(layout.pieces)):
        return
    alike = [s for s in layout.seams if by_position[s.a].turned == by_position[s.b].turned]
    if alike:
        first = alike[0]
        yield Finding(
            "parity",
            "stop",
            "{count} of the seams join two pieces of the same side up (the first between positions "
            "{a} and "
            "{b}), so they are no book joints.",
            "Take an even number of ways, with every second piece turned.",
            {"count": len(alike), "a": first.a, "b": first.b},
            tuple(sorted({n for seam in alike for n in (seam.a, seam.b)})),
        )


def _tips(layout: Layout) -> Iterator[Finding]:
    if not isinstance(layout.recipe, Radial):
        return
    width = 2.0 * TIP_AT * tand(180.0 / layout.recipe.ways)
    if width < FINE_TIP:
        yield Finding(
            "fine-tips",
            "warn",
            "The tips are fine: {width} mm wide at {at} mm from the point.",
            "Take fewer ways, or plan a disc at the centre that hides the tips.",
            {"width": width, "at": TIP_AT, "ways": layout.recipe.ways},
        )


def _sunburst(layout: Layout) -> Iterator[Finding]:
    if isinstance(layout.recipe, Radial) and layout.recipe.ways < SUNBURST:
        yield Finding(
            "not-sunburst",
            "note",
            "With {ways} ways the top is not a sunburst, which has six leaves or more "
            "(Architectural Woodwork Standards, 2009).",
            "",
            {"ways": layout.recipe.ways},
        )

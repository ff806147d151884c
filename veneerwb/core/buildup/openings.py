# SPDX-License-Identifier: LGPL-2.1-or-later
"""Openings through a panel: each lies in one part of every layer."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from veneerwb.core.errors import VeneerError
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge
from veneerwb.core.outlines.region import Region
from veneerwb.words import word


def opened(parts: Sequence[Any], openings: Sequence[Edge]) -> list[Any]:
    """The parts of a layer with the openings (clockwise) cut in them; VeneerError for one that does
    not lie within a single part."""
    found = list(parts)
    for opening in openings:
        area = edges.polygon(opening)
        home = [k for k, part in enumerate(parts) if part.region.polygon.contains(area)]
        if not home:
            middle = area.representative_point()
            raise VeneerError(
                "opening-crosses",
                "The opening about {x}, {y} mm does not lie within a single part of the {layer}; "
                "move it, or change the widths of the strips or the size of the inlay.",
                x=middle.x, y=middle.y, layer=word(parts[0].layer),
            )  # fmt: skip
        part = found[home[0]]
        region = Region(part.region.outer, (*part.region.holes, opening))
        found[home[0]] = replace(part, region=region)
    return found

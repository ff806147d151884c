# SPDX-License-Identifier: LGPL-2.1-or-later
"""Table tops: outlines about the match's centre, as true segments."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from shapely.geometry import Polygon

from veneerwb.core import edge as edges
from veneerwb.core.edge import Arc, Edge
from veneerwb.core.errors import sentence
from veneerwb.core.plane import cosd, finite, polar, positive, whole

SIDES = (3, 64)


@dataclass(frozen=True)
class Top:
    """The outline of a finished top: `edge` counter-clockwise round the origin, in mm.

    `size` is what it is ordered by, in mm (diameter, width across flats), `name` that in words with
    the template `words`; `grown(d)` is the same top with its edge d mm further out.
    """

    words: str
    size: float
    edge: Edge
    _grow: Callable[[float], Edge]

    @staticmethod
    def round(diameter: float) -> Top:
        """A round top of that diameter in mm."""
        radius = positive("diameter", diameter) / 2.0

        def grow(by: float) -> Edge:
            return (Arc((0.0, 0.0), radius + by, -90.0, 360.0),)

        return Top("round, {size} mm", 2.0 * radius, grow(0.0), grow)

    @staticmethod
    def polygon(sides: int, across_flats: float) -> Top:
        """A regular polygon with a flat at the bottom; `across_flats` is twice the distance in mm
        from the centre to a flat, for odd numbers of sides too."""
        count = whole("number of sides", sides, *SIDES)
        apothem = positive("width across flats", across_flats) / 2.0

        def grow(by: float) -> Edge:
            corner = (apothem + by) / cosd(180.0 / count)
            turns = [-90.0 + (2 * k - 1) * 180.0 / count for k in range(count)]
            return edges.straights([polar(corner, turn) for turn in turns])

        words = f"{count}-sided, {{size}} mm across flats"
        return Top(words, 2.0 * apothem, grow(0.0), grow)

    def grown(self, by: float) -> Edge:
        """The edge `by` mm outside this one (parallel, corners sharp)."""
        return self._grow(finite("oversize", by))

    def scaled(self, factor: float) -> Top:
        """The same shape, `factor` times as large."""

        def grow(by: float) -> Edge:
            return tuple(segment.scaled(factor) for segment in self._grow(by / factor))

        return Top(self.words, self.size * factor, grow(0.0), grow)

    @property
    def name(self) -> str:
        """What it is in words."""
        return sentence(self.words, {"size": self.size})

    @property
    def polygon_mm(self) -> Polygon:
        """The outline as a shapely polygon, derived from `edge`."""
        return edges.polygon(self.edge)

    @property
    def area(self) -> float:
        """Exact area in mm2."""
        return edges.area(self.edge)

    @property
    def reach(self) -> float:
        """The furthest that the edge lies from the centre, mm."""
        return max(segment.reach for segment in self.edge)

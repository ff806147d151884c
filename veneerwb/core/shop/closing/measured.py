# SPDX-License-Identifier: LGPL-2.1-or-later
"""The ring as measured: does it close, which diameter to leave open, what truing takes.

Of n/2 diameters the one is taken along which truing costs least: first, that both halves reach 180,
so that no tip is lost (else the least of the tips lost); of those, that least is trued off (the
area 1/2 L^2 d at its ends, L the seams' real lengths); of those that are sure to reach 180 by what
the readings leave open, the one where truing shows least, for most surfaces lie between the leaves
that meet there; else the most even halves, which are the surest. Where all seams are of one length
every diameter along which both halves reach 180 takes the same area.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from scipy.special import ndtr

from veneerwb.core.checks.closure import closure
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.matches.asked import between
from veneerwb.core.plane import sind
from veneerwb.core.shop.closing.over import hows
from veneerwb.core.shop.closing.readings import MOST_UNCERTAIN, Angle, Told, summed
from veneerwb.core.shop.closing.ring import Ring
from veneerwb.core.shop.closing.trued import Costs, Part, Places, costs, places
from veneerwb.words import marked

SURE = 0.99
"""The chance from which on a diameter is sure to do."""
_ENDS, _GRID = 8.0, 801


@dataclass(frozen=True)
class Diameter:
    """One diameter to leave open: it begins the half of position `first`. `halves`: their sums;
    `at`: how the ring lies when it is trued there; `sure`: the chance that both halves reach 180 by
    what was measured; `broken`: see `broken_of`."""

    first: int
    halves: tuple[Told, Told]
    at: Places
    sure: float
    broken: float = 0.0

    @cached_property
    def costs(self) -> Costs:
        """What truing along it takes."""
        return costs(self.at)

    @property
    def uneven(self) -> float:
        """The difference of the halves, degrees."""
        return abs(self.halves[0].value - self.halves[1].value)

    @property
    def rank(self) -> tuple[float, ...]:
        """The lower the better."""
        lost = math.fsum(part.tip_lost for part in self.at.parts)
        area = math.fsum(part.area for part in self.at.parts)
        hides = self.broken if self.sure >= SURE else -1.0
        return round(lost, 3), round(area, 1), -hides, round(self.uneven, 6), self.first


@dataclass(frozen=True)
class Measured:
    """A ring with the angle of each piece by position (`wedges`), or of the two halves that begin
    with positions `first` and n/2 further (`halves`). `common`: the instrument's own standard error
    in each reading, alike in all, degrees. `how` it is to be trued. `broken`: what `broken_of` has
    of the layout; nothing: evenness alone decides."""

    ring: Ring
    wedges: tuple[Angle, ...] = ()
    halves: tuple[Angle, ...] = ()
    first: int = 1
    common: float = 0.0
    how: str = ""
    broken: tuple[float, ...] = ()

    def __post_init__(self) -> None:
        ways = self.ring.ways
        between(marked("instrument's standard error"), self.common, 0.0, MOST_UNCERTAIN)
        wanted = ways if self.wedges or not self.halves else 2
        given = len(self.wedges or self.halves)
        if given != wanted or (self.wedges and self.halves):
            raise VeneerError(
                "wrong-count",
                "To close a ring of {ways} pieces give the angle of each of the {ways}, or of its "
                "two halves; these are {count}.",
                ways=ways, count=given + (len(self.halves) if self.wedges else 0),
            )  # fmt: skip
        if not self.wedges:
            self.ring.parts(1, 2)  # an odd ring has no halves
        object.__setattr__(self, "how", self.how or hows(ways)[0])

    @property
    def readings(self) -> tuple[Angle, ...]:
        return self.wedges or self.halves

    @cached_property
    def total(self) -> Told:
        """The sum of all, degrees."""
        return summed(self.readings, self.common)

    @property
    def error(self) -> float:
        """Over 360 (under: less than 0), degrees."""
        return self.total.value - 360.0

    @property
    def rim_gap(self) -> float:
        """What it opens at the longest seam (overlaps: less than 0), mm."""
        return closure(self.angles, self.ring.reach).rim_gap

    @property
    def rim_gap_uncertainty(self) -> float:
        """Its standard uncertainty, mm."""
        return self.ring.reach * math.radians(self.total.uncertainty)

    @property
    def angles(self) -> tuple[float, ...]:
        """The angle of each piece, degrees; where only halves were measured, evenly shared."""
        if self.wedges:
            return tuple(angle.value for angle in self.wedges)
        found = {}
        for positions, half in zip(self.ring.parts(self.first, 2), self.halves):
            found.update({p: half.value / len(positions) for p in positions})
        return tuple(found[p] for p in range(1, self.ring.ways + 1))

    @cached_property
    def diameters(self) -> tuple[Diameter, ...]:
        """All that are known, the best first; none of an odd ring."""
        known = self.ring.diameters if self.wedges else ((self.first - 1) % self.ring.ways + 1,)
        return tuple(sorted((self._along(first) for first in known), key=lambda one: one.rank))

    @property
    def best(self) -> Diameter:
        """The diameter to leave open; VeneerError for an odd ring."""
        self.ring.parts(1, 2)
        return self.diameters[0]

    @cached_property
    def trued(self) -> Places:
        """How the ring lies when it is trued: along the best diameter, an odd one at its last
        joint."""
        if self.ring.ways % 2:
            return places(self.ring, self.angles, "last joint")
        return self.best.at

    def _along(self, first: int) -> Diameter:
        halves = tuple(self._half(positions) for positions in self.ring.parts(first, 2))
        at = places(self.ring, self.angles, self.how, first)
        half = self.ring.ways // 2
        broken = self.broken[(first - 1) % half] if self.broken else 0.0
        return Diameter(first, halves, at, both_reach(halves, self._shared), broken)

    def _half(self, positions: Sequence[int]) -> Told:
        if self.wedges:
            return summed([self.wedges[p - 1] for p in positions], self.common)
        which = 0 if positions[0] == (self.first - 1) % self.ring.ways + 1 else 1
        return summed([self.halves[which]], self.common)

    @property
    def _shared(self) -> float:
        """The standard error that both halves share, degrees."""
        return self.common * (self.ring.ways // 2 if self.wedges else 1)


def broken_of(layout: Layout) -> tuple[float, ...]:
    """For each diameter of a ring how many surfaces lie between the leaves that meet at its two
    seams, on the mean; nothing of an odd ring, and of one whose wedges are several pieces."""
    ways = len(layout.pieces)
    if ways != layout.recipe.ways or ways % 2:
        return ()
    steps = {seam.b: seam.step for seam in layout.seams}  # by the piece that a seam begins
    half = ways // 2
    return tuple((steps[k] + steps[k + half]) / 2.0 for k in range(1, half + 1))


def both_reach(halves: Sequence[Angle], shared: float = 0.0) -> float:
    """The chance that two halves are both 180 or more: the mean over what they share."""
    z = np.linspace(-_ENDS, _ENDS, _GRID)
    density = np.exp(-0.5 * z * z)
    found = density / density.sum()
    for half in halves:
        own = math.sqrt(max(0.0, half.uncertainty**2 - shared**2))
        over = half.value - 180.0 + shared * z
        found = found * (ndtr(over / own) if own > 1e-9 else over >= -1e-9)
    return float(found.sum())


def tips_move(ways: int, width: float) -> float:
    """How far the pieces slide along their axes where all edges are off by the same width (mm,
    square to the edge): w / sin(180 / n). The ring still closes."""
    return width / sind(180.0 / ways)


def point_moves(parts: Sequence[Part]) -> float:
    """How far the points of the parts come to lie from one another, mm: 0 where all tips meet."""
    shifts = [(part.tip_lost, (part.begin + part.end) / 2.0) for part in parts]
    ends = [(s * math.cos(math.radians(d)), s * math.sin(math.radians(d))) for s, d in shifts]
    return max((math.dist(a, b) for a in ends for b in ends), default=0.0)

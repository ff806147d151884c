# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is measured on the bench, as angles with their standard uncertainty.

A straightedge tells a half's angle better than a protractor. Laid across the half's long edge it
rests on the two ends of an edge that is hollow (over 180) and shows a gap at the tip, or rocks on
the tip of one that is not: held along one side it shows a gap at the other end. With the gap g at
the distance r from the tip along the edge: 180 + 2 asin(g / r) where it rests on both ends r from
the tip, 180 - asin(g / r) where it is held along one side.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.matches.asked import between
from veneerwb.core.plane import choice, positive, tand
from veneerwb.core.shop.setout import SetOut
from veneerwb.words import marked

MOST_UNCERTAIN = 10.0
"""Degrees."""
PLACES = ("tip", "end")


@dataclass(frozen=True)
class Angle:
    """An angle in degrees and its standard `uncertainty` (degrees)."""

    value: float
    uncertainty: float = 0.0

    def __post_init__(self) -> None:
        object.__setattr__(self, "value", positive(marked("measured angle"), self.value, 360.0))
        sure = between(marked("uncertainty of an angle"), self.uncertainty, 0.0, MOST_UNCERTAIN)
        object.__setattr__(self, "uncertainty", sure)


@dataclass(frozen=True)
class Told(Angle):
    """What comes of angles: a sum or a difference, of any size."""

    def __post_init__(self) -> None:
        pass


@dataclass(frozen=True)
class Gap:
    """A gap of `size` mm under a straightedge on a half, `at` its tip or at an end, seen `distance`
    mm from the tip (at the tip: so far away it rests); both with their standard uncertainty, mm."""

    size: float
    distance: float
    at: str = "end"
    uncertainty: float = 0.0
    distance_uncertainty: float = 0.0

    def __post_init__(self) -> None:
        far = positive(marked("distance from the tip"), self.distance)
        choice(marked("place of the gap"), self.at, PLACES)
        for name, said in (
            ("size", marked("gap's size")), ("uncertainty", marked("gap's uncertainty")),
            ("distance_uncertainty", marked("gap's distance uncertainty")),
        ):  # fmt: skip
            value = between(said, getattr(self, name), 0.0, far / 2.0)
            object.__setattr__(self, name, value)
        object.__setattr__(self, "distance", far)

    @property
    def half(self) -> Angle:
        """The half's angle. d(asin(g/r)) = (dg - g dr / r) / (r cos(asin(g/r)))."""
        share = self.size / self.distance
        turn = math.degrees(math.asin(share))
        spread = math.hypot(self.uncertainty, share * self.distance_uncertainty)
        sure = math.degrees(spread / (self.distance * math.sqrt(1.0 - share * share)))
        sides = 2.0 if self.at == "tip" else -1.0
        return Angle(180.0 + sides * turn, abs(sides) * sure)


def set_out_error(set_out: SetOut, reading: float) -> float:
    """The standard error in degrees of an angle whose two offsets are each read to `reading` mm:
    the angle is atan(o1 / b) + atan(o2 / b), so that it is sqrt(2) cos^2(a / 2) reading / b."""
    off = between(marked("reading of an offset"), reading, 0.0, set_out.base)
    slope = 1.0 / (1.0 + tand(set_out.angle / 2.0) ** 2)
    return math.degrees(math.sqrt(2.0) * slope * off / set_out.base)


@dataclass(frozen=True)
class Trial:
    """`count` wedges cut by the template from waste, laid tip to tip, and their measured `sum`
    (degrees); `cut` is the angle that the template should have, `piece` each wedge's own standard
    error."""

    count: int
    sum: Angle
    cut: float
    piece: float = 0.0

    def __post_init__(self) -> None:
        if not 1 <= self.count <= 64:
            raise VeneerError(
                "out-of-range",
                "A test cut cannot have {count} wedges; cut 1 to 64, best half a ring of them.",
                count=self.count,
            )
        between(marked("piece's standard error"), self.piece, 0.0, MOST_UNCERTAIN)

    @property
    def angle(self) -> Told:
        """What the template cuts, and how surely that is known: sum / k, with
        sqrt(u^2 + k s^2) / k."""
        sure = trial_error(self.count, self.sum.uncertainty, self.piece)
        return Told(self.sum.value / self.count, sure)

    @property
    def error(self) -> Told:
        """What the template is off: (sum - k a) / k, known as surely."""
        return Told(self.angle.value - self.cut, self.angle.uncertainty)


def trial_error(count: int, uncertainty: float, piece: float) -> float:
    """How surely a test cut of `count` wedges tells the template's error, degrees (standard)."""
    return math.sqrt(uncertainty**2 + count * piece**2) / count


def summed(angles: Sequence[Angle], common: float = 0.0) -> Told:
    """Their sum. `common`: the instrument's own standard error in each reading, alike in all."""
    total = math.fsum(angle.value for angle in angles)
    own = math.sqrt(math.fsum(angle.uncertainty**2 for angle in angles))
    return Told(total, math.hypot(own, len(angles) * common))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a ring of n wedges is to be expected to sum to, before a wedge is cut.

A wedge that is cut to the angle a has at taping the angle a' + c + p: a' by the moisture that is
expected, c common to the whole stack (the template's error, and the change of moisture that nobody
foresaw), p its own (knife, lean, edge). With standard deviations s_c and s_p, each normal and on
its own, g wedges sum to g a' with the variance (g s_c)^2 + g s_p^2: the common error adds up, the
own one goes with the root. Two parts share the common error, so that they are alike by
r = (g s_c)^2 / ((g s_c)^2 + g s_p^2).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from veneerwb.core.matches.asked import between
from veneerwb.core.plane import positive, whole
from veneerwb.core.shop.closing.moisture import Moisture
from veneerwb.words import marked

MOST = 5.0
"""Degrees: no template and no knife is off by more; larger numbers are slips of the keyboard."""


@dataclass(frozen=True)
class Errors:
    """Standard errors in degrees: of the `template`, common to all wedges, and of each `piece` for
    itself; and the `moisture`, if it changes."""

    template: float
    piece: float
    moisture: Moisture | None = None

    def __post_init__(self) -> None:
        for name, said in (
            ("template", marked("template's standard error")),
            ("piece", marked("piece's standard error")),
        ):
            value = between(said, getattr(self, name), 0.0, MOST)
            object.__setattr__(self, name, value)

    def taped(self, cut: float) -> float:
        """The mean angle at taping of wedges cut to `cut` degrees."""
        return self.moisture.taped(cut) if self.moisture else cut

    def damp(self, cut: float) -> float:
        """The common standard error that comes of the moisture alone, degrees."""
        return self.moisture.uncertainty * self.moisture.slope(cut) if self.moisture else 0.0

    def common(self, cut: float) -> float:
        """The standard error that all wedges share, degrees."""
        return math.hypot(self.template, self.damp(cut))


@dataclass(frozen=True)
class Sum:
    """Of `count` wedges: the `mean` of their sum in degrees, its standard deviation by what they
    share (`common`) and by what each has for itself (`own`)."""

    count: int
    mean: float
    common: float
    own: float

    @property
    def spread(self) -> float:
        """The standard deviation of the sum, degrees."""
        return math.hypot(self.common, self.own)

    @property
    def alike(self) -> float:
        """The correlation of two such sums of one stack (0 where nothing spreads)."""
        return self.common**2 / self.spread**2 if self.spread else 0.0


@dataclass(frozen=True)
class Expected:
    """Of `ways` wedges cut to `cut` degrees each with those `errors`."""

    ways: int
    cut: float
    errors: Errors

    def __post_init__(self) -> None:
        object.__setattr__(self, "ways", whole(marked("number of ways"), self.ways, 3, 64))
        object.__setattr__(self, "cut", positive(marked("wedge angle"), self.cut, 179.0))

    @property
    def angle(self) -> float:
        """The mean angle of a wedge at taping, degrees."""
        return self.errors.taped(self.cut)

    def sum(self, count: int) -> Sum:
        """Of so many wedges."""
        return Sum(
            count,
            count * self.angle,
            count * self.errors.common(self.cut),
            math.sqrt(count) * self.errors.piece,
        )

    @property
    def ring(self) -> Sum:
        """Of all."""
        return self.sum(self.ways)

    @property
    def half(self) -> Sum:
        """Of n/2 wedges (of an odd ring the smaller number: it has no halves)."""
        return self.sum(self.ways // 2)

    @property
    def error(self) -> float:
        """By how much the mean ring is over 360, degrees."""
        return self.ring.mean - 360.0

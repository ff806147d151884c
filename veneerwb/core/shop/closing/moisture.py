# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a change of moisture does to a wedge of loose veneer before it is glued.

Across its grain wood grows by the factor f = 1 + C dM, along it hardly (Wood Handbook, FPL-GTR-190,
2010, Eq. 13-2; the tool takes it as still). So a direction at an angle p from the grain goes to
atan(f tan p), and a wedge whose grain runs along its axis goes from the angle a to
2 atan(f tan(a / 2)).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.matches.asked import between
from veneerwb.core.plane import finite
from veneerwb.core.wood import LARGEST, beyond
from veneerwb.words import figure, marked

MOST = 30.0
"""% of moisture: wood that is wetter no longer moves."""
STEP = 1e-4  # % of moisture over which a slope is taken


def grown(angle: float, factor: float, grain: float = 0.0) -> float:
    """The angle in degrees of a wedge of `angle` that grows by `factor` across its grain, which
    lies `grain` degrees from its axis."""
    first, last = (_turned(end - grain, factor) for end in (-angle / 2.0, angle / 2.0))
    return (last - first) % 360.0


def _turned(degrees: float, factor: float) -> float:
    """Where a direction, from the grain, goes."""
    turn = math.radians(degrees)
    return math.degrees(math.atan2(factor * math.sin(turn), math.cos(turn)))


@dataclass(frozen=True)
class Moisture:
    """The moisture in % of the veneer when it was photographed, is cut and is taped, and the
    standard `uncertainty` of the change from cut to taping (%). `coefficient`: change of width for
    each %, as a share (core/wood.py). `grain`: degrees from a wedge's axis."""

    photograph: float
    cut: float
    taping: float
    coefficient: float
    uncertainty: float = 0.0
    grain: float = 0.0

    def __post_init__(self) -> None:
        for name, said in (
            ("photograph", marked("moisture (photograph)")), ("cut", marked("moisture (cut)")),
            ("taping", marked("moisture (taping)")),
        ):  # fmt: skip
            value = between(said, getattr(self, name), 0.0, MOST)
            object.__setattr__(self, name, value)
        share = finite(marked("coefficient"), self.coefficient)
        if not 0.0 <= share <= LARGEST:
            raise VeneerError(
                "out-of-range",
                "The coefficient of movement cannot be {shown}; give 0 to {most} for each % of "
                "moisture.",
                shown=figure(share, "g"), most=figure(LARGEST, "g"),
            )  # fmt: skip
        object.__setattr__(self, "coefficient", share)
        spread = between(marked(
            "uncertainty of the change of moisture"
        ), self.uncertainty, 0.0, 10.0)
        object.__setattr__(self, "uncertainty", spread)

    @property
    def change(self) -> float:
        """From cut to taping, %."""
        return self.taping - self.cut

    @property
    def beyond(self) -> tuple[float, ...]:
        """Those moistures at which the coefficients no longer hold."""
        return tuple(beyond(self.photograph, self.cut, self.taping))

    def taped(self, angle: float, more: float = 0.0) -> float:
        """The angle at taping of a wedge cut to `angle`, with `more` % of moisture than meant."""
        return grown(angle, 1.0 + self.coefficient * (self.change + more), self.grain)

    def slope(self, angle: float) -> float:
        """Degrees that the taped angle gains for each % more."""
        return (self.taped(angle, STEP) - self.taped(angle, -STEP)) / (2.0 * STEP)

    def figure(self, width: float) -> float:
        """By how many mm figure that the photograph shows `width` mm across the grain from the axis
        lies further out (nearer: less than 0) when the wedge is cut."""
        return width * self.coefficient * (self.cut - self.photograph)

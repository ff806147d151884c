# SPDX-License-Identifier: LGPL-2.1-or-later
"""Scales of a drawing, from ISO 5455:1979."""

from __future__ import annotations

from dataclasses import dataclass

ENLARGED = (50, 20, 10, 5, 2)
REDUCED = (2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000)


@dataclass(frozen=True)
class Scale:
    """`paper` mm on the sheet for `true` mm of the thing."""

    paper: int
    true: int

    @property
    def factor(self) -> float:
        return self.paper / self.true

    def __str__(self) -> str:
        return f"{self.paper}:{self.true}"


SCALES = (*(Scale(n, 1) for n in ENLARGED), Scale(1, 1), *(Scale(1, n) for n in REDUCED))
"""All that the standard recommends, the largest first."""


def scale_for(size: tuple[float, float], room: tuple[float, float]) -> Scale:
    """The largest scale at which a thing of `size` (width, height in mm) fits the `room` on the
    paper; the smallest there is if none does."""
    for scale in SCALES:
        if all(have * scale.factor <= most + 1e-9 for have, most in zip(size, room)):
            return scale
    return SCALES[-1]


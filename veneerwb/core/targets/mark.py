# SPDX-License-Identifier: LGPL-2.1-or-later
"""The paper mark: what is printed on it, as plain data.

A black ring on white paper, a fine cross in the white within it, and an arrowhead that points up
along the grain. The ring gives the centre: it has two round edges about one point, so that it can
be centred from any side and perspective can be told from a shift. The cross is what a pin pricks
and a rule is laid to; the arrow tells a leaf's ends apart; leaf and letter stand below.

Millimetres; origin at the ring's centre, x right, y up along the grain.
"""

from __future__ import annotations

from dataclasses import dataclass

from veneerwb.core.plane import whole

LETTERS = "ABCDEF"
"""The marks of one leaf, in order."""


@dataclass(frozen=True)
class Mark:
    """`outer` and `inner`: the ring's diameters. `clear`: the diameter within which nothing else is
    printed outside the ring; `around`: within which there is nothing but the arrow. `cross`: its
    lines' length, `line`: their thickness. `arrow`: its corners. `paper`: (left, lower, right,
    upper) of what is cut out. `caption`: likewise, where leaf and letter stand."""

    outer: float = 20.0
    inner: float = 10.0
    clear: float = 26.0
    around: float = 32.0
    cross: float = 5.0
    line: float = 0.2
    arrow: tuple[tuple[float, float], ...] = ((-3.5, 13.0), (3.5, 13.0), (0.0, 17.5))
    paper: tuple[float, float, float, float] = (-17.0, -25.0, 17.0, 19.0)
    caption: tuple[float, float, float, float] = (-16.0, -24.0, 16.0, -16.5)

    @property
    def size(self) -> tuple[float, float]:
        """(width, height) of the paper."""
        left, lower, right, upper = self.paper
        return right - left, upper - lower


MARK = Mark()


def letter(index: int) -> str:
    """The letter of a leaf's mark, 0 for the first; VeneerError beyond the last letter."""
    return LETTERS[whole("number of the mark on its leaf", index + 1, 1, len(LETTERS)) - 1]

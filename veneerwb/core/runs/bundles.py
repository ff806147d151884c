# SPDX-License-Identifier: LGPL-2.1-or-later
"""Two bundles used as one: the second's leaves go on after a gap in the numbers.

By that gap every seam between the two counts the leaves that are missing, as it does within one
bundle.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import MOST_LEAVES, Bundle, Fault, Leaf, Leaves
from veneerwb.core.plane import Motion, whole

THICKER = 0.05
"""mm: veneers that differ by more do not lie flush (common practice, no source)."""


@dataclass(frozen=True)
class JoinedBundle(Bundle):
    """The leaves of two bundles, each with its back as its own bundle has it. `joint`: the numbers
    of the first's last leaf and of the second's first one."""

    joint: tuple[int, int] = (0, 0)
    missed: float = 0.0

    def _with_back(self, leaf: Leaf, known: dict[int, Leaf]) -> Leaf:
        return leaf

    def wander(self) -> float:
        """The larger one of the two."""
        return self.missed


@dataclass(frozen=True)
class JoinedLeaves(Leaves):
    """The same for leaves of which one lot or both are known by their size alone."""

    one: Leaves
    other: Leaves
    joint: tuple[int, int]

    @property
    def back(self) -> str:
        return self.one.back

    @property
    def thickness(self) -> float:
        return self.one.thickness

    @cached_property
    def numbers(self) -> tuple[int, ...]:
        after = self.joint[1] - self.other.numbers[0]
        return (*self.one.numbers, *(n + after for n in self.other.numbers))

    @property
    def size(self) -> tuple[float, float]:
        (a, b), (c, d) = self.one.size, self.other.size
        return min(a, c), min(b, d)

    def usable(self, number: int) -> Any:
        leaves, n = self._home(number)
        return leaves.usable(n)

    def faults(self, number: int) -> tuple[Fault, ...]:
        leaves, n = self._home(number)
        return leaves.faults(n)

    def register(self, number: int, turned: bool) -> Motion:
        leaves, n = self._home(number)
        return leaves.register(n, turned)

    def _home(self, number: int) -> tuple[Leaves, int]:
        """Which lot a leaf is from, and its number there."""
        if number <= self.joint[0]:
            return self.one, number
        return self.other, number - self.joint[1] + self.other.numbers[0]


def joined(first: Leaves, second: Leaves, missing: int = 1) -> Leaves:
    """The leaves of `first`, and after them those of `second` with numbers that go on after a gap
    of `missing` leaves (1 or more: as many as are thought to be lost between the two).

    first, second: bundles, or stocks where no picture is needed.

    Raises VeneerError where they are not of one thickness or lie in opposite senses.
    """
    missing = whole("number of missing leaves", missing, 1, MOST_LEAVES)
    _alike(first, second)
    joint = first.numbers[-1], first.numbers[-1] + missing + 1
    if not (isinstance(first, Bundle) and isinstance(second, Bundle)):
        return JoinedLeaves(first, second, joint)
    after = joint[1] - second.numbers[0]
    leaves = (*first.leaves, *_renumbered(second.leaves, after))
    slope = first.slope if first.slope == second.slope else None
    return JoinedBundle(
        leaves, first.thickness, first.back, slope, first.edition + second.edition,
        joint, max(first.wander(), second.wander()),
    )  # fmt: skip


def _renumbered(leaves: Sequence[Leaf], after: int) -> list[Leaf]:
    return [replace(leaf, number=leaf.number + after) for leaf in leaves]


def _alike(first: Leaves, second: Leaves) -> None:
    if abs(first.thickness - second.thickness) > THICKER:
        raise VeneerError(
            "unlike-thickness",
            "The leaves of the first bundle are {first} mm thick and those of the second {second} "
            "mm, which would not lie flush; take two bundles of one thickness.",
            first=first.thickness,
            second=second.thickness,
        )
    if first.back != second.back:
        raise VeneerError(
            "opposite-senses",
            "The two bundles do not lie in one sense (the surface behind a leaf is the {first} "
            "leaf's in the first and the {second} leaf's in the second); turn one of them over.",
            first=first.back,
            second=second.back,
        )

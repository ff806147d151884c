# SPDX-License-Identifier: LGPL-2.1-or-later
"""Registers from marks that the maker picked: two or more points of the figure on every leaf.

The motion is the rigid one (no mirror, no scale) with the least squares between the marks of the
first leaf, moved, and those of the leaf.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.fitting import rigid
from veneerwb.core.leaf import Bundle
from veneerwb.core.plane import IDENTITY, Motion

MARKS_APART = 20.0
"""mm: marks nearer than this to each other count as one, for they would not hold the turn."""
MARKS_AGREE = 3.0
"""mm by which the distance between two marks may differ from leaf to leaf: hands, moisture and a
camera not quite square make a little; more is another point of the figure."""
PICKED = 0.5
"""mm by which a mark is taken to be picked off; how well people point is our guess."""

Marks = Mapping[int, Sequence[Any]]


@dataclass(frozen=True)
class Marked:
    """`registers`: bundle mm to leaf mm, the first leaf the identity. `apart`: for each leaf the mm
    by which the distances between its marks differ most from the first leaf's; `left` the rms mm
    that the rigid motion leaves. `swing`: mm that a leaf's corner may be off if a mark was picked
    PICKED mm off."""

    registers: Mapping[int, Motion]
    apart: Mapping[int, float]
    left: Mapping[int, float]
    swing: float


def by_marks(bundle: Bundle, marks: Marks) -> Marked:
    """The registers that the marks (leaf mm, by leaf number) give.

    Raises VeneerError for a leaf without marks or with another number of them, for marks off their
    photograph, on one spot, or that lie otherwise from each other than on the first leaf.
    """
    places = {n: _places(bundle, marks, n) for n in bundle.numbers}
    first = bundle.numbers[0]
    base = places[first]
    registers, apart, left = {first: IDENTITY}, {first: 0.0}, {first: 0.0}
    for n in bundle.numbers[1:]:
        if len(places[n]) != len(base):
            raise VeneerError(
                "marks-missing",
                "Leaf {leaf} has {count} marks and leaf {first} has {wanted}; pick the same points "
                "of the figure on every leaf.",
                leaf=n, count=len(places[n]), first=first, wanted=len(base),
            )
        apart[n] = _agreeing(base, places[n], first, n)
        registers[n], left[n] = rigid(base, places[n])
    return Marked(registers, apart, left, _swing(base, bundle.leaf(first).size))


def _places(bundle: Bundle, marks: Marks, number: int) -> np.ndarray:
    try:
        places = np.array([tuple(p) for p in marks.get(number, ())], float).reshape(-1, 2)
    except (AttributeError, TypeError, ValueError):
        raise VeneerError(
            "marks-missing",
            "The marks of leaf {leaf} cannot be read; give each as x and y in mm.", leaf=number,
        ) from None
    if len(places) < 2:
        raise VeneerError(
            "marks-missing",
            "Leaf {leaf} has {count} marks; pick at least two on every leaf.",
            leaf=number, count=len(places),
        )
    size = bundle.leaf(number).size
    for k, place in enumerate(places, start=1):
        if not ((place >= 0) & (place <= size)).all():  # not a number fails this too
            raise VeneerError(
                "mark-off-leaf",
                "Mark {mark} of leaf {leaf} lies off its photograph; pick it again.",
                mark=k, leaf=number,
            )
    for a, b in combinations(range(len(places)), 2):
        distance = math.dist(places[a], places[b])
        if distance < MARKS_APART:
            raise VeneerError(
                "marks-coincide",
                "Marks {a} and {b} of leaf {leaf} lie {distance} mm apart; pick marks at least "
                "{least} mm from each other, better near both ends of the leaf.",
                a=a + 1, b=b + 1, leaf=number, distance=round(distance, 1), least=MARKS_APART,
            )
    return places


def _agreeing(base: np.ndarray, here: np.ndarray, first: int, number: int) -> float:
    """mm by which distances differ most; VeneerError if by more than MARKS_AGREE."""
    pairs = [
        (abs(math.dist(here[a], here[b]) - math.dist(base[a], base[b])), a, b)
        for a, b in combinations(range(len(base)), 2)
    ]
    worst, a, b = max(pairs)
    if worst > MARKS_AGREE:
        raise VeneerError(
            "marks-disagree",
            "Marks {a} and {b} lie {there} mm apart on leaf {first} and {here} mm on leaf {leaf}, "
            "{worst} mm more or less; up to {most} mm is a matter of picking, so pick the same "
            "points again.",
            a=a + 1, b=b + 1, first=first, leaf=number, worst=round(worst, 1), most=MARKS_AGREE,
            there=round(math.dist(base[a], base[b]), 1), here=round(math.dist(here[a], here[b]), 1),
        )
    return worst


def _swing(base: np.ndarray, size: tuple[float, float]) -> float:
    """Standard error in mm of the leaf's worst corner, each mark off by PICKED both on the first
    leaf and on another (least squares: the turn's variance is that over the sum of squared arms).
    """
    middle = base.mean(axis=0)
    arms = float(np.sum((base - middle) ** 2))
    corners = np.array([(0, 0), (size[0], 0), (0, size[1]), size])
    far = float(np.max(np.sum((corners - middle) ** 2, axis=1)))
    return PICKED * math.sqrt(2 * (1 / len(base) + far / arms / 2))

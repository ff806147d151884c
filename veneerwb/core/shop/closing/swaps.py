# SPDX-License-Identifier: LGPL-2.1-or-later
"""What swapping two neighbours would do: to the halves, and to the figure.

Pieces of a matched ring keep their places. A swap can only even the halves where it crosses the
diameter that is left open, and every swap changes what meets at the seams about it: three of them,
of which the one between the two stays.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.shop.closing.measured import Measured
from veneerwb.core.shop.closing.over import differences
from veneerwb.core.shop.closing.readings import Angle

LEAST = 0.005
"""Degrees: what evens the halves by less is not worth a swap."""


@dataclass(frozen=True)
class Swap:
    """Pieces at positions `a` and `b` = a + 1 change places: the best diameter's halves then differ
    by `uneven` degrees instead of `uneven_now`. `steps_now` and `steps`: the surfaces between those
    that meet at the seams before a, between, and after b. `broken`: seams where a turned piece met
    an upright one and no longer does (they are no book joints then)."""

    a: int
    b: int
    uneven_now: float
    uneven: float
    steps_now: tuple[int, ...]
    steps: tuple[int, ...]
    broken: int


def swaps(measured: Measured, layout: Layout) -> tuple[Swap, ...]:
    """The swaps of neighbours that would even the halves, the best first; none where wedges were
    not measured one by one, or the ring is odd. VeneerError where a wedge is not one piece."""
    ways = measured.ring.ways
    if len(layout.pieces) != ways:
        raise VeneerError(
            "no-swap",
            "Wedges of several strips are not swapped: keep them in their places.",
        )
    if ways % 2 or not measured.wedges:
        return ()
    now = measured.best.uneven
    found = []
    for a in range(1, ways + 1):
        b = a % ways + 1
        wedges = _swapped(measured.wedges, a, b)
        if now - _most_even(wedges) < LEAST:
            continue
        best = replace(measured, wedges=wedges).best
        if now - best.uneven >= LEAST and best.rank < measured.best.rank:
            found.append(_swap(layout, a, b, now, best.uneven))
    return tuple(sorted(found, key=lambda one: (one.broken, round(one.uneven, 6), one.a)))


def _most_even(wedges: Sequence[Angle]) -> float:
    return float(np.abs(differences(np.array([[w.value for w in wedges]]))).min())


def _swapped(values: Sequence, a: int, b: int) -> tuple:
    out = list(values)
    out[a - 1], out[b - 1] = out[b - 1], out[a - 1]
    return tuple(out)


def _swap(layout: Layout, a: int, b: int, now: float, then: float) -> Swap:
    """With what the two seams beside the pair and the one between show before and after."""
    ways = len(layout.pieces)
    before, after = (a - 2) % ways + 1, b % ways + 1
    pieces = {piece.position: piece for piece in layout.pieces}

    def step(one: int, other: int) -> int:
        p, q = pieces[one], pieces[other]
        surface = layout.bundle.surface
        return abs(surface(p.leaf, p.turned) - surface(q.leaf, q.turned))

    def alike(pairs: Sequence[tuple[int, int]]) -> int:
        return sum(pieces[one].turned == pieces[other].turned for one, other in pairs)

    old, new = [(before, a), (a, b), (b, after)], [(before, b), (b, a), (a, after)]
    return Swap(
        a, b, now, then,
        tuple(step(*pair) for pair in old), tuple(step(*pair) for pair in new),
        max(0, alike(new) - alike(old)),
    )  # fmt: skip

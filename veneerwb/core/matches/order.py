# SPDX-License-Identifier: LGPL-2.1-or-later
"""Ring orders: which leaf lies at which position."""

from __future__ import annotations

from collections.abc import Sequence

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Leaves, ranges


def as_listed(listed: Sequence[int], bundle: Leaves, count: int, what: str) -> list[int]:
    """The leaves of `what`, as listed. Raises VeneerError where they are not `count` different
    leaves of the bundle."""
    if len(listed) != count or len(set(listed)) != count:
        raise VeneerError(
            "wrong-order",
            "{what} need a list of {count} different leaves; this one has {listed}, "
            "{different} of them different.",
            what=what,
            count=count,
            listed=len(listed),
            different=len(set(listed)),
        )
    unknown = sorted(set(listed) - set(bundle.numbers))
    if unknown:
        raise VeneerError(
            "no-such-leaf",
            "The bundle has no leaf {leaf}; it has {numbers}.",
            leaf=unknown[0],
            numbers=ranges(bundle.numbers),
        )
    return list(listed)


def zigzag(count: int) -> list[int]:
    """Indices 0.. up one side and down the other: 0 2 4 .. 5 3 1. No jump over 2 (Graves, Veneer
    Sequence for the "Starburst" Pattern, gives it for eight as 1 3 5 7 8 6 4 2)."""
    return [*range(0, count, 2), *reversed(range(1, count, 2))]


def paired_zigzag(count: int) -> list[int]:
    """Indices 0.. for a ring in which every second position shows the surface below its leaf.

    The first position shows surface k + 1 of its index k, the second surface k, and so on. Even
    indices on odd positions and odd indices on even ones then meet on the surfaces 1, 3, 5 ..:
    each of them twice, so that the ring climbs on one and comes back on the other: no step over 2
    (plane counting; for eight leaves 1 2 3 6 7 8 5 4).
    """
    up, down = [0, 1], []
    for level, even in enumerate(range(2, count, 2), start=1):
        first, second = (even, even + 1) if level % 2 else (even + 1, even)
        up.append(first)
        down.append(second)
    return [*up, *reversed(down)]


def grouped_zigzag(groups: int, size: int) -> list[int]:
    """Indices 0.. of groups of `size` that stay together: the groups as in `zigzag`, those on the
    way back in falling order within, so that no jump is over `size` + 1 (plane counting)."""
    up = range(0, groups, 2)
    ring: list[int] = []
    for k, group in enumerate(zigzag(groups)):
        inside = range(group * size, (group + 1) * size)
        ring += inside if k < len(up) else reversed(inside)
    return ring

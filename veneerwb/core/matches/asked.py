# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is asked of a match, brought into form or refused in one sentence."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import islice
from typing import Any

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import CUTS
from veneerwb.core.leaf import MOST_LEAVES
from veneerwb.core.listing import one_of
from veneerwb.core.matches.placement import Placement
from veneerwb.core.plane import choice, finite, whole
from veneerwb.words import marked, word

EVERY = ("odd", "even", "none", "all")
MOST_OVERSIZE = 1000.0
"""mm."""
LAST_LEAF = 10**6
"""The highest number that a leaf may have."""


@dataclass(frozen=True, kw_only=True)
class CutBy:
    """What every recipe has: how what differs is cut from the stack, one of layout.CUTS, which says
    what each means."""

    cuts: str = CUTS[0]


def between(name: str, value: float, least: float, most: float) -> float:
    """`value` as a number from `least` to `most`; else VeneerError."""
    number = finite(name, value)
    if not least <= number <= most:
        raise VeneerError(
            "out-of-range",
            "The {name} cannot be {value}; give a number from {least} to {most}.",
            name=word(name),
            value=number,
            least=least,
            most=most,
        )
    return number


def listed(name: str, values: Any, what: str, counts: Sequence[int] = ()) -> tuple[Any, ...]:
    """`values` as a tuple, of as many as `counts` allows if given (else of MOST_LEAVES or fewer);
    else VeneerError."""
    most = max(counts, default=MOST_LEAVES)
    plain = isinstance(values, Iterable) and not isinstance(values, str)
    found = tuple(islice(values, most + 1)) if plain else None
    if found is None or len(found) > most or (counts and len(found) not in counts):
        raise VeneerError(
            "not-a-list",
            "The {name} cannot be {value!r:.40}; give {what}.",
            name=word(name),
            value=values,
            what=word(what),
        )
    return found


def order_of(order: Any) -> str | tuple[int, ...]:
    """"sequence", or a list of leaf numbers as a tuple; else VeneerError."""
    if isinstance(order, str) and order == "sequence":
        return order
    leaves = listed(marked("order"), order, marked('"sequence" or the leaf of each piece'))
    return tuple(whole("listed leaf", n, 1, LAST_LEAF) for n in leaves)


def oversize_of(value: Any) -> float:
    """An oversize in mm; else VeneerError."""
    return between(marked("oversize"), value, 0.0, MOST_OVERSIZE)


def placement_of(value: Any) -> Placement | None:
    """A Placement from one, from two or three numbers, or None."""
    if value is None or isinstance(value, Placement):
        return value
    asked = listed(marked("placement"), value, marked("x, y and the axis's angle"), (2, 3))
    return Placement(*asked)


def turned_of(what: str, turn: str, turned: str | None, allowed: tuple[str, ...]) -> str:
    """Which positions of a ring or match (`what`) are turned: the first of `allowed` if none is
    named; else VeneerError."""
    turned = allowed[0] if turned is None else choice("turned pieces", turned, EVERY)
    if turned not in allowed:
        raise VeneerError(
            "turned-unfit",
            "In a {turn} {what} the turned pieces cannot be {turned!r}; choose {allowed}.",
            turn=word(turn),
            what=word(what),
            turned=turned,
            allowed=one_of(allowed),
        )
    return turned

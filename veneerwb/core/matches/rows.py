# SPDX-License-Identifier: LGPL-2.1-or-later
"""What matches of parallel strips share: the strips' frame on the top, counts, widths and leaves.

Strips run along the grain. In their frame u runs across them, left to right with the grain upright,
and v along the grain; both are measured in mm from the top's origin.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any, NamedTuple

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import MOST_LEAVES, Leaves
from veneerwb.core.listing import one_of
from veneerwb.core.matches import asked
from veneerwb.core.matches.cells import from_first
from veneerwb.core.matches.order import as_listed
from veneerwb.core.outlines.region import Half, Region
from veneerwb.core.plane import TOUCH, Motion, finite, positive, whole
from veneerwb.words import filled, marked, word

LEAST_STRIP = 10.0
"""mm: a narrower strip is a sliver that breaks in the hand (common practice, no source)."""
FINE = 0.1
"""mm: how finely a width that would do is named."""


class Kind(NamedTuple):
    """A match as it is shown to be chosen: its `key`, its `title` in the trade's words, one `line`
    on it, the `least` number of leaves, and whether their number may be "any", must be "even" or
    "four", or the same in every row ("rows")."""

    key: str
    title: str
    line: str
    least: int
    parity: str


@dataclass(frozen=True)
class Field:
    """A region in the frame of its strips: it reaches from `left` to `right` across the grain, and
    from `foot` to `head` along it."""

    grain: float
    left: float
    right: float
    foot: float
    head: float

    @staticmethod
    def of(region: Region, grain: float) -> Field:
        field = Field(grain, *region.extent(grain - 90.0), *region.extent(grain))
        if field.width < LEAST_STRIP:
            raise VeneerError(
                "top-too-narrow",
                "Across the grain the top is {width} mm wide and the least strip is {least} mm; "
                "make it wider.",
                width=field.width,
                least=LEAST_STRIP,
            )
        return field

    @property
    def width(self) -> float:
        return self.right - self.left

    @property
    def length(self) -> float:
        return self.head - self.foot

    def before(self, u: float) -> Half:
        """What lies on the left of the straight along the grain at `u`."""
        return Half(self.grain - 90.0, u)

    def below(self, v: float) -> Half:
        """What lies below the straight across the grain at `v`."""
        return Half(self.grain, v)

    def frame(self, u: float, v: float, length: float, over: bool, ended: bool) -> Motion:
        """Top mm to the cut's own frame, for a piece whose foot has its middle at (u, v): turned
        over about its own middle line, and end for end within its `length`."""
        put = Motion(180.0, 0.0, length, over) if ended else Motion(mirrored=over)
        return put @ Motion(90.0 - self.grain, -u, -v)


def between(lines: list[Half], k: int) -> tuple[Half, ...]:
    """What lies between the straights k - 1 and k of parallel ones; beyond the first and the last
    nothing bounds it, so that the oversize belongs to the outer pieces."""
    after = (lines[k - 1].other,) if k else ()
    return (*after, *lines[k : k + 1])


def even_count(width: float, most: float, least: int, step: int) -> int:
    """The least number of equal strips, a multiple of `step`, that are no wider than `most` mm."""
    count = max(least, math.ceil((width - TOUCH) / most))
    return -(-count // step) * step


def equal_width(width: float, count: int) -> float:
    """The width in mm of `count` equal strips; VeneerError for slivers."""
    if width / count < LEAST_STRIP - TOUCH:
        raise VeneerError(
            "slivers",
            "{count} strips side by side would be {strip} mm wide each, slivers under {least} mm: "
            "take {most} or fewer.",
            count=count,
            strip=width / count,
            least=LEAST_STRIP,
            most=int((width + TOUCH) / LEAST_STRIP),
        )
    return width / count


def running_count(width: float, strip: float) -> int:
    """How many strips of that width it takes, the last one cut narrower; VeneerError where that is
    a sliver, with the widths next to it that do."""
    count = max(1, math.ceil((width - TOUCH) / strip))
    last = width - (count - 1) * strip
    if last < LEAST_STRIP - TOUCH:
        raise VeneerError(
            "slivers",
            "The last of the strips would be {last} mm wide, a sliver under {least} mm: take "
            "strips of {narrower} mm or of {wider} mm.",
            last=last,
            least=LEAST_STRIP,
            narrower=_to(FINE, (width - LEAST_STRIP) / (count - 1), math.floor),
            wider=_to(FINE, width / (count - 1), math.ceil),
        )
    return count


def _to(step: float, value: float, way: Any) -> float:
    return round(way(round(value / step, 6)) * step, 6)


def nearest(count: int, least: int, step: int) -> str:
    """The multiples of `step` next to a count, in words: "4 or 6"."""
    below = count // step * step
    return one_of([str(n) for n in (below, below + step)]) if below >= least else str(
        -(-least // step) * step
    )


def leaf_width(bundle: Leaves, first: int, oversize: float) -> float:
    """The widest strip that all leaves from `first` on have room for, the oversize on both sides of
    it."""
    area = bundle.common_area([n for n in bundle.numbers if n >= first] or bundle.numbers)
    x0, _, x1, _ = (0.0, 0.0, *bundle.size) if area.is_empty else area.bounds
    width = x1 - x0 - 2.0 * oversize
    if width < LEAST_STRIP:
        raise VeneerError(
            "leaves-too-narrow",
            "The leaves have {room} mm in common, which with an oversize of {oversize} mm on both "
            "sides leaves no strip; take less oversize or wider leaves.",
            room=x1 - x0,
            oversize=oversize,
        )
    return width


STRIPS = marked("{count} strips")


def leaves_for(
    recipe: Any, bundle: Leaves, count: int, what: str = STRIPS, step: int = 1, least: int = 1
) -> list[int]:
    """The leaf of each of `count` strips (or of what the template `what` says), as `recipe` lists
    them (`order`), or in order from its `first`; VeneerError where they are not to be had, with
    what would do: a multiple of `step`, at least `least`."""
    what = filled(word(what), {"count": count})
    if isinstance(recipe.order, str):
        first = whole("first leaf", recipe.first, 1, max(bundle.numbers))
        return from_first(bundle, first, count, what, step, least)
    return as_listed(recipe.order, bundle, count, what)


def settle(recipe: Any) -> None:
    """Brings what all recipes of strips have in common into form; VeneerError for what cannot
    be."""
    first = whole("first leaf", recipe.first, 1, asked.LAST_LEAF)
    oversize = asked.oversize_of(recipe.oversize)
    grain = math.fmod(finite("grain direction", recipe.grain), 360.0)
    place = asked.placement_of(recipe.placement)
    order = asked.order_of(recipe.order)
    settled = {"first": first, "oversize": oversize, "grain": grain, "placement": place}
    settled["order"] = order
    if not isinstance(order, str) and recipe.count is None and recipe.width is None:
        settled["count"] = whole("number of leaves", len(order), 1, MOST_LEAVES)
    if recipe.count is not None:
        settled["count"] = whole("number of leaves", recipe.count, 1, MOST_LEAVES)
    if recipe.width is not None:
        settled["width"] = _strip_width(recipe)
    for name, value in settled.items():
        object.__setattr__(recipe, name, value)


def _strip_width(recipe: Any) -> float:
    width = positive("strip width", recipe.width)
    if recipe.count is not None:
        raise VeneerError(
            "count-and-width",
            "Give the number of leaves or the width of a strip, not both: the other follows.",
        )
    if width < LEAST_STRIP:
        raise VeneerError(
            "slivers",
            "Strips {strip} mm wide are slivers; take {least} mm or more.",
            strip=width,
            least=LEAST_STRIP,
        )
    return width

# SPDX-License-Identifier: LGPL-2.1-or-later
"""How many tops of one size a bundle gives: wedges side by side on the leaves.

Wedges are laid one after another, each as far towards one side of the leaf as those before it
allow, in two opposite directions, so that they nest tip to rim. Where the tip of the next may lie
is exact: the place less, for every edge and every wedge that lies there, all tips from which a
wedge would touch it (their Minkowski sums, convex). Several directions and sides are tried. The
best is a good packing, not proved to be the best there is: a bundle gives at least so many tops.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any

import numpy as np
from shapely import affinity
from shapely.geometry import Polygon
from shapely.ops import unary_union

from veneerwb.core.appeal.maps import Progress, tell
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.radial import Placement, Radial
from veneerwb.core.plane import TOUCH, finite
from veneerwb.core.search.stand import plain
from veneerwb.core.search.task import Task
from veneerwb.core.shop.room import ROOM
from veneerwb.core.top import Top
from veneerwb.core.yields.largest import standing
from veneerwb.core.yields.places import Place, Places, edges_of
from veneerwb.core.yields.wedge import Wedge, outer, summed

SLACK = 0.002
"""mm that cuts lie further apart, so that tips may be told in few decimals."""
DIGITS = (3, 9)
"""Decimals of a tip: few where it has room for it."""
THIN = 0.1 * TOUCH
"""mm: what is left between two areas and thinner is rounding."""
MOST_TOPS = 200
"""Wedges on one leaf; more are not looked for."""
MORE_TURNS = tuple(range(0, 360, 30))
"""Directions in which wedges are fitted into what is left over."""
BOTH = 2
"""The best directions are filled from the other sides too."""
FULL = 1.1
"""A fault whose hull is hardly larger than itself is taken for its hull."""
ARC = 4
"""Straights to a quarter of the round corners that the room makes."""


@dataclass(frozen=True)
class Position:
    """Where one top is cut: its wedge on the bundle, and the first of its leaves."""

    placement: Placement
    first: int


def tops_from(
    bundle: Leaves, top: Top, ways: int, turn: str = "book", room: float = ROOM,
    margin: float = 0.0, hidden: Any = None, progress: Progress | None = None, **more: Any,
) -> list[Position]:
    """Positions of tops of one size, at least so many as a bundle or a stock gives.

    The bundle is parted into sub-stacks of `ways` leaves one after another; on each of them cuts
    lie side by side, `room` mm apart, `margin` mm from the edge of the usable area, clear of
    faults. hidden: what covers the top (shapely, top mm) and may hide a fault. more: order, turned,
    rim, start, oversize, as for `radial`. Empty where no such top fits. `progress` as in the
    search. Raises VeneerError for too few leaves and counts that cannot be.
    """
    recipe = Radial(ways, turn, first=min(bundle.numbers), **more)
    task = Task(bundle, top, recipe, max(0.0, finite("margin", margin)), hidden)
    task.counted()
    apart = max(0.0, finite("room", room))
    listed = not isinstance(recipe.order, str)
    starts = bundle.numbers[:: recipe.ways]
    firsts = task.firsts if listed else [n for n in starts if n in task.firsts]
    places, known = Places(bundle, task.margin), {}
    found: list[Position] = []
    for k, first in enumerate(firsts):
        tell(progress, k, len(firsts), "")
        for place in places.of(task, (first,)):
            if place.key not in known:
                told = partial(tell, progress, k, len(firsts), "")
                known[place.key] = _Packing(task, place, apart, told).best()
            found += [Position(placement, first) for placement in known[place.key]]
    tell(progress, 1, 1, "")
    return found


class _Packing:
    """Wedges on one place."""

    def __init__(
        self, task: Task, place: Place, apart: float, told: Callable[[], None]
    ) -> None:
        """`told` is called before every wedge, and may stop the work."""
        self._task, self._place, self._apart, self._told = task, place, apart, told
        self._wedge = Wedge.of(task)
        self._outer = outer(self._wedge.blank, self._wedge.sides)
        self._seen = outer(self._wedge.seen, self._wedge.sides)
        self._whole = task.shapes[1]
        self._cuts: dict[Placement, Any] = {}
        self._free: dict[float, Any] = {}
        self._barred: dict[tuple[float, float], Polygon] = {}

    def best(self) -> list[Placement]:
        half = self._wedge.half_angle
        turns = [(a, a + 180.0) for a in (90.0, 0.0, 90.0 - half, 90.0 + half, half, -half)]
        tried = [(self._filled(pair, SIDES[0]), pair) for pair in turns]
        tried.sort(key=lambda one: -len(one[0]))
        for _, pair in tried[:BOTH]:
            tried += [(self._filled(pair, side), pair) for side in SIDES[1:]]
        best = max((placed for placed, _ in tried), key=len)
        best = self._filled(MORE_TURNS, SIDES[0], best)
        return best or self._one()

    def _one(self) -> list[Placement]:
        """One wedge where there is hardly room for it."""
        return [place for place, _ in standing(self._task, None, (self._place.first,))][:1]

    def _filled(
        self, turns: Iterable[float], side: Side, begun: Sequence[Placement] = ()
    ) -> list[Placement]:
        """The wedges of `begun` and all that fit beside them in those directions, pushed to a
        side."""
        placed = list(begun)
        free = {turn % 360.0: self._less(turn % 360.0, placed) for turn in turns}
        while len(placed) < MOST_TOPS:
            self._told()
            next_one = self._next(free, side, placed)
            if next_one is None:
                break
            placed.append(next_one)
            for turn, area in free.items():
                free[turn] = area.difference(self._about(next_one, turn))
        return placed

    def _less(self, turn: float, placed: Sequence[Placement]) -> Any:
        """Where tips of wedges of that direction may lie beside those that are placed."""
        if turn not in self._free:
            self._free[turn] = self._tips(turn)
        return self._free[turn].difference(unary_union([self._about(p, turn) for p in placed]))

    def _tips(self, turn: float) -> Any:
        """Where they may lie on the place: nowhere where an edge would lie in the wedge."""
        blank, seen = _turned(self._wedge.blank, turn), _turned(self._seen, turn)
        barred = [Polygon(summed(edge, -blank)) for edge in edges_of(self._place.area)]
        for mark in self._place.marks.geoms:
            hull = mark.convex_hull
            if hull.area <= FULL * mark.area:
                barred.append(Polygon(summed(np.asarray(hull.exterior.coords), -seen)))
                continue
            barred += [Polygon(summed(edge, -seen)) for edge in edges_of(mark)]
            barred.append(affinity.translate(mark, *-seen[0]))  # the wedge within the fault
        return self._place.area.difference(unary_union(barred))

    def _about(self, placed: Placement, turn: float) -> Polygon:
        """Tips from which a wedge of that direction would come too near one that is placed."""
        key = (placed.angle, turn)
        if key not in self._barred:
            there, here = _turned(self._outer, placed.angle), _turned(self._outer, turn)
            both = Polygon(summed(there, -here))
            # The corners of a buffer lie on its arcs; the straights must not come nearer.
            grown = self._apart / np.cos(np.pi / (4 * ARC)) + SLACK
            self._barred[key] = both.buffer(grown, ARC)
        return plain(affinity.translate(self._barred[key], placed.x, placed.y))

    def _next(
        self, free: dict[float, Any], side: Side, placed: Sequence[Placement]
    ) -> Placement | None:
        """The wedge that lies nearest to the side, of those that truly fit."""
        spots = []
        for turn, area in free.items():
            tips = _corners(area)
            low, high = (fun(_turned(self._wedge.blank, turn), axis=0) for fun in (np.min, np.max))
            box = np.column_stack([tips + low, tips + high])
            spots += [
                (round(float(one @ side[0]), 2), round(float(one @ side[1]), 2), turn, *tip)
                for one, tip in zip(box, tips)
            ]
        for *_, turn, x, y in sorted(spots):
            for digits in DIGITS:
                place = Placement(round(float(x), digits), round(float(y), digits), turn)
                if self._fits(place, placed):
                    return place
        return None

    def _fits(self, place: Placement, placed: Sequence[Placement]) -> bool:
        cut = self._cut(place)
        if any(cut.distance(self._cut(other)) < self._apart - TOUCH for other in placed):
            return False
        if not self._apart and any(cut.intersection(self._cut(p)).area > TOUCH for p in placed):
            return False
        return self._task.fits(self._task.layout(place, self._place.first))

    def _cut(self, place: Placement) -> Any:
        if place not in self._cuts:
            turned = affinity.rotate(self._whole, place.angle, origin=(0.0, 0.0))
            self._cuts[place] = affinity.translate(turned, place.x, place.y)
        return self._cuts[place]


Side = tuple[np.ndarray, np.ndarray]
"""What is to be least, first and then, of a wedge's box (x0, y0, x1, y1): weights."""
SIDES: tuple[Side, ...] = tuple(
    (np.array(first), np.array(then))
    for first, then in (
        ((0, 0, 0, 1), (1, 0, 0, 0)), ((0, 0, 1, 0), (0, 1, 0, 0)),
        ((0, -1, 0, 0), (1, 0, 0, 0)), ((-1, 0, 0, 0), (0, 1, 0, 0)),
    )
)


def _turned(corners: np.ndarray, degrees: float) -> np.ndarray:
    c, s = np.cos(np.radians(degrees)), np.sin(np.radians(degrees))
    return corners @ np.array([(c, s), (-s, c)])


def _corners(area: Any) -> np.ndarray:
    found = [np.empty((0, 2))]
    for part in () if area.is_empty else getattr(area, "geoms", [area]):
        if part.geom_type == "Polygon" and part.area > THIN * part.length:
            found += [np.asarray(r.coords)[:-1, :2] for r in (part.exterior, *part.interiors)]
    return np.concatenate(found)

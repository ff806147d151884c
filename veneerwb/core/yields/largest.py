# SPDX-License-Identifier: LGPL-2.1-or-later
"""The largest top of one shape that a bundle gives, for every number of ways."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Any

from shapely import affinity

from veneerwb.core.appeal.maps import Progress, tell
from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.radial import LEAST_WAYS, MOST_WAYS, Placement, Radial
from veneerwb.core.plane import TOUCH, finite, whole
from veneerwb.core.search.task import Task
from veneerwb.core.top import Top
from veneerwb.core.yields.growing import MOST_ROUNDS, Grown, grown_from, in_convex
from veneerwb.core.yields.places import Places
from veneerwb.core.yields.rays import Rays
from veneerwb.core.yields.wedge import Wedge
from veneerwb.words import word

STEP = 0.1
"""mm: tops are told to so much of their size, rounded down."""
SMALLEST = 10.0
"""mm of size: smaller is no top."""
SOME_WAYS = 4
DIGITS = (2, 9)
"""Decimals of a spot: few where it has room for it."""
STAGES = ((5, 6), (2, MOST_ROUNDS))
"""So many of the wedges that do best are grown on, by so many rounds."""


@dataclass(frozen=True)
class Largest:
    """The largest top in so many ways: the top, where its wedge lies, the leaf it starts with; all
    None where not even a small one fits."""

    ways: int
    top: Top | None = None
    placement: Placement | None = None
    first: int | None = None

    @property
    def reach(self) -> float:
        """mm; 0 where none fits."""
        return self.top.reach if self.top else 0.0

    @property
    def size(self) -> float:
        """mm in the top's own measure (diameter, width across flats); 0 where none fits."""
        return self.top.size if self.top else 0.0


def largest_tops(
    bundle: Leaves, top: Top, turn: str = "book", margin: float = 0.0, hidden: Any = None,
    ways: int | Iterable[int] | None = None, progress: Progress | None = None, **more: Any,
) -> list[Largest]:
    """For each number of ways the largest top of this shape that a bundle or a stock gives, over
    all spots, directions and first leaves.

    ways:     one or several numbers; all that the leaves allow (3 to 64, even for book) if None.
    margin:   mm that blanks keep from the edge of the usable area.
    hidden:   what covers the top (shapely, top mm) and may hide a fault; it is taken to grow with
              the top.
    more:     order, turned, rim, start, oversize, as for `radial`; a listed order is for as many
              ways as it has leaves.
    progress: as in the search; returning False raises Stopped.

    Where the leaves' common area is convex and without faults the result is exact plane geometry
    (as far as polygons stand for arcs), else the best of some spots grown until they touch: such
    tops fit, and a larger one may be missed. Where all outlines of a ring's pieces are not alike
    one cut through the stack is meant, their hull. Raises VeneerError for ways that cannot be.
    """
    recipe = Radial(SOME_WAYS, turn, first=min(bundle.numbers), **more)
    task = Task(bundle, top, recipe, max(0.0, finite("margin", margin)), hidden)
    if ways is None and not isinstance(recipe.order, str):
        ways = len(recipe.order)
    asked = _asked(task, ways)
    if not isinstance(recipe.order, str):
        task = _listed(task, asked)
    return tops_of(task, asked, progress)


def _listed(task: Task, ways: Sequence[int]) -> Task:
    """A task for as many ways as its order lists leaves; VeneerError if others are asked."""
    count = len(task.recipe.order)
    if any(n != count for n in ways):
        raise VeneerError(
            "wrong-order",
            "An order that lists {count} leaves is for {count} ways; ask for those alone, or take "
            "the leaves in sequence.",
            count=count,
        )
    return replace(task, recipe=replace(task.recipe, ways=count))


def _asked(task: Task, ways: int | Iterable[int] | None) -> list[int]:
    if ways is not None:
        found = list(ways) if isinstance(ways, Iterable) else [ways]
        return [whole("number of ways", n, LEAST_WAYS, MOST_WAYS) for n in found]
    turn, have = task.recipe.turn, len(task.bundle.numbers)
    least, step = (4, 2) if turn == "book" else (LEAST_WAYS, 1)
    if have < least:
        raise VeneerError(
            "too-few-for-any",
            "A {turn} ring needs {least} leaves or more and there are {have}; take a larger "
            "bundle.",
            turn=word(turn), least=least, have=have,
        )
    return list(range(least, min(MOST_WAYS, have) + 1, step))


def all_ways(task: Task, progress: Progress | None = None) -> list[Largest]:
    """The whole table for a task, whatever its ways."""
    return tops_of(task, _asked(task, None), progress)


def tops_of(
    task: Task, ways: Iterable[int], progress: Progress | None = None
) -> list[Largest]:
    """The rows for these numbers of ways of a task."""
    return [_settled(one, grown) for one, grown in _grown(task, ways, progress)]


def standing(
    task: Task, progress: Progress | None = None, firsts: Sequence[int] | None = None
) -> list[tuple[Placement, int]]:
    """Some spots, with their first leaves (of those given, or of any), where a task's top fits,
    however little room it has."""
    found = []
    for one, grown in _grown(task, [task.recipe.ways], progress, firsts):
        for g in grown:
            places = (_placed(g, digits) for digits in DIGITS)
            fitting = (p for p in places if one.fits(one.layout(p, g.first)))
            found += [(place, g.first) for place in itertools.islice(fitting, 1)]
    return found


def _grown(
    base: Task, ways: Iterable[int], progress: Progress | None,
    firsts: Sequence[int] | None = None,
) -> Iterator[tuple[Task, list[Grown]]]:
    """The wedges for each number of ways, largest first."""
    tasks = [_in_ways(base, n) for n in ways]
    places = Places(base.bundle, base.margin)
    known = []
    for task in tasks:
        tell(progress, 0, 1, "")
        known.append(places.of(task, firsts))
    rays = None
    for k, (task, found) in enumerate(zip(tasks, known)):
        tell(progress, k, len(tasks), "")
        wedge = Wedge.of(task)
        grown = in_convex(wedge, [place for place in found if place.convex])
        bent = [place for place in found if not place.convex]
        if bent:
            rays = rays or Rays(places, wedge.oversize, _hidden_within(task), progress)
            grown += _from_seeds(wedge, rays, bent)
        yield task, sorted(grown, key=lambda g: g.rank)
    tell(progress, 1, 1, "")


def _in_ways(task: Task, ways: int) -> Task:
    """The same task in other ways; VeneerError where there are too few leaves."""
    if ways != task.recipe.ways:
        task = replace(task, recipe=task.recipe.with_ways(ways))
    task.counted()
    return task


def _hidden_within(task: Task) -> float:
    """mm from the centre within which nothing is seen."""
    if task.hidden is None:
        return 0.0
    *_, seen = task.shapes
    return 0.0 if seen.is_empty else math.hypot(*_nearest_to_tip(seen))


def _nearest_to_tip(seen: Any) -> tuple[float, float]:
    parts = getattr(seen, "geoms", [seen])
    return min((p for part in parts for p in part.exterior.coords), key=lambda p: math.hypot(*p))


def _from_seeds(wedge: Wedge, rays: Rays, places: list[Any]) -> list[Grown]:
    """Wedges grown from the most promising spots: all a little, the best to the end."""
    by_leaf = {place.first: place for place in places}

    def grown(starts: Iterable[Grown], rounds: int) -> list[Grown]:
        found = (grown_from(g, wedge, by_leaf[g.first], rounds) for g in starts)
        return sorted((g for g in found if g), key=lambda g: g.rank)

    found = grown(rays.seeds(wedge, places), 0)
    for count, rounds in STAGES:
        found = grown(found[:count], rounds)
    return found


def _settled(task: Task, grown: list[Grown]) -> Largest:
    """The first of the wedges that truly fits, its size rounded down."""
    for g in grown:
        size = task.top.size * (g.reach + TOUCH / 4.0) / task.top.reach
        size = math.floor(size / STEP + TOUCH) * STEP
        for less, digits in itertools.product((0, 1, 2, 5), DIGITS):
            if size - less * STEP < SMALLEST:
                break
            place = _placed(g, digits)
            smaller = sized(task, round(size - less * STEP, 6) / task.top.size)
            if smaller.fits(smaller.layout(place, g.first)):
                return Largest(task.recipe.ways, smaller.top, place, g.first)
    return Largest(task.recipe.ways)


def _placed(g: Grown, digits: int) -> Placement:
    return Placement(*(round(value, digits) + 0.0 for value in (g.x, g.y, g.angle)))


def sized(task: Task, factor: float) -> Task:
    """The same task with its top, and what covers it, so many times as large."""
    hidden = task.hidden
    if hidden is not None:
        hidden = affinity.scale(hidden, factor, factor, origin=(0.0, 0.0))
    return replace(task, top=task.top.scaled(factor), hidden=hidden)

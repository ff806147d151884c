# SPDX-License-Identifier: LGPL-2.1-or-later
"""The search from end to end: maps, sweep, first leaves, refining, different results."""

from __future__ import annotations

import itertools
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import partial
from typing import Any

from veneerwb.core.appeal.maps import Maps, Progress, cell_for, maps_of, tell
from veneerwb.core.appeal.measures import Appeal, weighed
from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Leaves
from veneerwb.core.matches.radial import Placement, Radial
from veneerwb.core.plane import finite, whole
from veneerwb.core.search.refine import NEAR, NEAR_TURN, Judge, Spot, closely, crowded, refined
from veneerwb.core.search.room import room_of
from veneerwb.core.search.sweep import TURN_STEP, Sweep, swept
from veneerwb.core.search.task import Task
from veneerwb.core.top import Top
from veneerwb.core.yields.largest import standing
from veneerwb.core.yields.nowhere import fits_nowhere

MOST_CANDIDATES = 60
JUDGED = 240
"""Spots whose seams are judged on true leaves, with every first leaf."""
AT_ONCE = 60
"""Spots between two reports of progress."""
LEAST_REFINED = 12
"""Spots that are refined however few are wanted, so that more results do not change the first."""
FEW = 3
"""The best results, that are looked at closely in the end."""


@dataclass(frozen=True)
class Candidate:
    """A spot that was found: where the wedge lies, the leaf to start with, its measures, and the
    score by which it is ranked."""

    placement: Placement
    appeal: Appeal
    score: float
    first: int = 1


@dataclass(frozen=True)
class Found:
    """What a search found: candidates, best first, and the sweep (scores of every spot)."""

    candidates: tuple[Candidate, ...]
    sweep: Sweep


def find_placements(
    bundle: Bundle, top: Top, ways: int, turn: str = "book", count: int = 12,
    weights: Mapping[str, float] | None = None, progress: Progress | None = None,
    **more: Any,
) -> list[Candidate]:
    """The best spots of a radial match on a bundle, best first, at most `count` and all different.

    Tips at most 4 mm apart and axes at most 2 degrees apart are tried over the whole bundle, where
    the blank lies on every leaf it needs and what is seen is clear of faults (where the outlines of
    pieces are not alike, one cut through the stack is meant that serves all); the best are refined
    by steps down to 0.5 mm and 0.25 degrees. `weights` of the measures by name (see
    `appeal.WEIGHTS`). `progress` is called as progress(done, total, text); when it returns False,
    `Stopped` is raised. `more` is as in `searched`. Equal input gives equal results. Raises
    VeneerError where no wedge fits.
    """
    recipe = Radial(ways, turn, **{k: more.pop(k) for k in RECIPE if k in more})
    return list(
        searched(bundle, top, recipe, count, weights, progress=progress, **more).candidates
    )


RECIPE = ("order", "turned", "rim", "start", "oversize")


def searched(
    bundle: Bundle, top: Top, recipe: Radial, count: int = 12,
    weights: Mapping[str, float] | None = None, margin: float = 0.0, hidden: Any = None,
    maps: Maps | None = None, progress: Progress | None = None,
) -> Found:
    """As `find_placements`, for a recipe (its placement and first leaf are what is sought).

    margin: mm that blanks keep from the edge of the usable area.
    hidden: what of the top will be covered (shapely, top mm) and may hold a fault.
    maps:   those of the bundle from an earlier search, on cells of `cell_for(top.reach)` mm.
    """
    _pictured(bundle)
    count = whole("number of results", count, 1, MOST_CANDIDATES)
    use, progress = weighed(weights), _onward(progress)
    task = Task(bundle, top, recipe, max(0.0, finite("margin", margin)), hidden)
    task.counted()  # too few leaves are told before photographs are read
    if maps is None:
        maps = maps_of(bundle, cell_for(top.reach), _within(progress, 0.0, 0.6))
    room = room_of(task, maps)
    sweep = swept(task, maps, room, use, _within(progress, 0.6, 0.85))
    judge = Judge(task, maps, use)
    spots = _judged(task, sweep, judge, count, _within(progress, 0.85, 0.92))
    last = _within(progress, 0.92, 1.0)
    best = _refined(spots, judge, count, last)
    best = best or _refined(_tight(task, judge, last), judge, count, last)
    if not best:
        raise fits_nowhere(task, last)
    tell(progress, 1, 1, "")
    return Found(tuple(Candidate(s.placement, s.appeal, s.score, s.first) for s in best), sweep)


def _pictured(bundle: Any) -> None:
    """Raises VeneerError for what has no photographs."""
    if isinstance(bundle, Bundle):
        return
    if isinstance(bundle, Leaves):
        raise VeneerError(
            "no-pictures", "A stock of plain sizes has no photographs; search in a bundle."
        )
    raise VeneerError(
        "no-bundle", "A search needs a bundle of leaves, and {value!r:.40} is none.", value=bundle
    )


def _tight(task: Task, judge: Judge, progress: Progress | None) -> list[Spot]:
    """Spots with less room than the steps of the sweep."""
    found = standing(task, progress)
    spots = judge.each([place for place, _ in found], [first for _, first in found])
    return sorted(spots, key=lambda spot: spot.rank)


def _onward(progress: Progress | None) -> Progress | None:
    """A progress of 1000 steps that stands still while work that was told of is done again."""
    if progress is None:
        return None
    far = 0

    def told(done: int, total: int, text: str) -> object:
        nonlocal far
        far = max(far, round(1000 * done / max(1, total)))
        return progress(far, 1000, text)

    return told


def _within(progress: Progress | None, low: float, high: float) -> Progress | None:
    """A progress that fills the part from `low` to `high` of another's 1000 steps."""
    if progress is None:
        return None
    return lambda done, total, text: progress(
        round(1000 * (low + (high - low) * done / max(1, total))), 1000, text
    )


def _judged(
    task: Task, sweep: Sweep, judge: Judge, count: int, progress: Progress | None
) -> list[Spot]:
    """The best spots of the sweep, each with the first leaf that suits it best, seams counted."""
    most = max(JUDGED, 4 * count)
    together: dict[tuple[int, ...], list[Placement]] = {}
    for placement, firsts in itertools.islice(_standing(task, sweep, progress), most):
        together.setdefault(firsts, []).append(placement)
    found: list[Spot] = []
    for firsts, places in together.items():
        for k in range(0, len(places), AT_ONCE):
            tell(progress, most + len(found), 2 * most, "")
            tops = judge.spots(places[k : k + AT_ONCE], firsts)
            found += [min(spots, key=lambda spot: spot.rank) for spots in tops]
    return sorted(found, key=lambda spot: spot.rank)


def _standing(
    task: Task, sweep: Sweep, progress: Progress | None
) -> Iterator[tuple[Placement, tuple[int, ...]]]:
    """Spots, best first, the best of each neighbourhood that fits, with the first leaves from which
    it does."""
    x, y = sweep.frame.centres()
    looked = itertools.count()

    def standing(k: int, row: int, column: int) -> tuple[Placement, tuple[int, ...]] | None:
        if next(looked) % AT_ONCE == 0:
            tell(progress, 0, 1, "")
        place = Placement(float(x[column]), float(y[row]), float(sweep.angles[k]))
        firsts = task.standing(place, task.firsts)
        return (place, firsts) if firsts else None

    near = max(1, round(NEAR * task.top.reach / sweep.frame.cell))
    return sweep.picked(near, max(1, round(NEAR_TURN / TURN_STEP)), standing)


def _refined(
    spots: list[Spot], judge: Judge, count: int, progress: Progress | None
) -> list[Spot]:
    """The best spots refined, no two of them nearly the same."""
    reach = judge.task.top.reach
    starts: list[Spot] = []
    for spot in spots:
        if not crowded(spot, starts, reach):
            starts.append(spot)
    best: list[Spot] = []
    together = max(LEAST_REFINED, count + count // 6)
    for k in range(0, len(starts), together):
        tell(progress, len(best), count, "")
        for spot in refined(
            starts[k : k + together], judge, partial(tell, progress, len(best), count, "")
        ):
            if not crowded(spot, best, reach):
                best.append(spot)
        if len(best) >= count:
            break
    best.sort(key=lambda spot: spot.rank)
    tell(progress, count, count, "")
    best[:FEW] = [closely(spot, judge) for spot in best[:FEW]]
    return sorted(best, key=lambda spot: spot.rank)[:count]

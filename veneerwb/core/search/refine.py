# SPDX-License-Identifier: LGPL-2.1-or-later
"""The best spots moved, step by step, to where they are best."""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np

from veneerwb.core.appeal.maps import Maps
from veneerwb.core.appeal.measures import Appeal, Appraiser
from veneerwb.core.matches.radial import Placement
from veneerwb.core.plane import polar
from veneerwb.core.search.task import ORIGIN, Task, motion_to

STEPS = ((4.0, 2.0, 1e-2), (1.0, 0.5, 2e-4), (0.5, 0.25, 1e-4))
"""mm and degrees of the steps, coarse to fine, and the score that one must gain; the last are what
a spot is known to."""
MOST_MOVES = 20
"""Steps that one spot is moved at most with each size of step."""
AROUND = np.array([
    *np.eye(3), *-np.eye(3), *itertools.product((-1.0, 1.0), repeat=3),
])
"""14 x 3: neighbours, in steps of the wedge's middle along x and y and of the angle about it. (A
turn about the tip would move all that is seen.)"""
FURTHEST = 3.0
"""Steps that are taken at once at most."""
JUMPS = (1.0, 0.4)
"""Parts of a jump that are tried: at the edge of a leaf the whole of it may not fit."""
NEAR, NEAR_TURN = 0.12, 12.0
"""Two tops are nearly the same if the middles of their wedges lie within that share of the reach
and their axes within so many degrees."""


@dataclass(frozen=True)
class Spot:
    """Where a wedge lies, the leaf that its top starts with, and how good that is."""

    placement: Placement
    first: int
    appeal: Appeal
    score: float

    @property
    def rank(self) -> tuple[float, ...]:
        """Best first; ties by x, y, angle and first leaf."""
        place = self.placement
        return (-round(self.score, 6), place.x, place.y, place.angle, self.first)


@dataclass(eq=False)
class Judge:
    """Judges the spots of a task."""

    task: Task
    maps: Maps
    weights: Mapping[str, float]
    _known: dict[tuple[int, ...], Appraiser] = field(default_factory=dict, init=False)

    def spots(
        self, placements: Sequence[Placement], firsts: tuple[int, ...]
    ) -> list[list[Spot]]:
        """For each placement the tops that start with each of those leaves."""
        if firsts not in self._known:
            layouts = [self.task.layout(ORIGIN, first) for first in firsts]
            self._known[firsts] = Appraiser(layouts, self.maps)
        found = self._known[firsts].at([motion_to(place) for place in placements])
        return [
            [
                Spot(place, first, appeal, appeal.score(self.weights))
                for first, appeal in zip(firsts, appeals)
            ]
            for place, appeals in zip(placements, found)
        ]

    def each(self, places: Sequence[tuple[Placement, int]]) -> list[Spot]:
        """The tops at those placements that start with those leaves, in the same order."""
        found: dict[int, Spot] = {}
        for first in sorted({first for _, first in places}):
            index = [k for k, (_, own) in enumerate(places) if own == first]
            tops = self.spots([places[k][0] for k in index], (first,))
            found.update((k, spot) for k, (spot,) in zip(index, tops))
        return [found[k] for k in range(len(places))]

    def stands(self, spot: Spot) -> bool:
        return bool(self.task.standing(spot.placement, (spot.first,)))


def refined(
    spots: Iterable[Spot], judge: Judge, each_round: Callable[[], object] = lambda: None
) -> list[Spot]:
    """Spots moved uphill until no step of the finest size betters them: all at once, round by
    round, best first; of several that become nearly the same the best is kept. `each_round` is
    called before every round; what it raises ends the work."""
    paths = [_Path(spot) for spot in spots]
    while moving := [path for path in paths if path.step < len(STEPS)]:
        each_round()
        around = judge.each([place for path in moving for place in path.around(judge)])
        tried = [around[k : k + len(AROUND)] for k in range(0, len(around), len(AROUND))]
        jumps = judge.each(
            [place for path, others in zip(moving, tried) for place in path.jumps(others, judge)]
        )
        for k, (path, others) in enumerate(zip(moving, tried)):
            path.go([*others, *jumps[k * len(JUMPS) : (k + 1) * len(JUMPS)]], judge)
        paths = _apart(paths, judge.task.top.reach)
    return [path.spot for path in paths]


@dataclass(eq=False)
class _Path:
    """Where a spot has come to: with steps of which size, after how many moves of that size."""

    spot: Spot
    step: int = 0
    moves: int = 0

    def around(self, judge: Judge) -> list[tuple[Placement, int]]:
        return self._off(AROUND * self._size, judge)

    def jumps(self, tried: Sequence[Spot], judge: Judge) -> list[tuple[Placement, int]]:
        """To the top of the hill that spot and neighbours lie on, were it quadratic, and on the way
        there; where it is no hill, uphill."""
        change = np.array([other.score for other in tried]) - self.spot.score
        slope, bend = np.split(_FIT @ change, [3])
        curve = np.zeros((3, 3))
        curve[np.triu_indices(3)] = bend
        curve += curve.T
        if np.linalg.eigvalsh(curve)[-1] < -1e-9:
            by = np.clip(np.linalg.solve(curve, -slope), -FURTHEST, FURTHEST)
        else:
            by = FURTHEST * slope / max(1e-12, np.abs(slope).max())
        return self._off(np.outer(JUMPS, by * self._size), judge)

    def go(self, others: list[Spot], judge: Judge) -> None:
        """To the best that fits, if that is better; with smaller steps once none is."""
        self.moves += 1
        for other in sorted(others, key=lambda spot: spot.rank):
            if other.score < self.spot.score + STEPS[self.step][2]:
                break
            if judge.stands(other):
                self.spot = other
                if self.moves < MOST_MOVES:
                    return
                break
        self.step, self.moves = self.step + 1, 0

    @property
    def _size(self) -> np.ndarray:
        return np.array(_sizes(self.step))

    def _off(self, steps: np.ndarray, judge: Judge) -> list[tuple[Placement, int]]:
        """The wedge's middle so far off (N x 3, mm and degrees), and turned about it; back onto the
        leaves, where it would reach over their edges, so that a wedge can slide along them."""
        place, least = self.spot.placement, STEPS[-1][1]
        arm = 2.0 / 3.0 * judge.task.top.reach
        middle = np.array((place.x, place.y)) + arm * np.array(polar(1.0, place.angle))
        there = []
        for dx, dy, turn in steps.tolist():
            angle = (place.angle + least * round(turn / least)) % 360.0
            x, y = (middle - arm * np.array(polar(1.0, angle))).tolist()
            there.append(Placement(round(x + dx, 2), round(y + dy, 2), angle))
        return [(p, self.spot.first) for p in judge.task.pushed(there, self.spot.first)]


def _apart(paths: list[_Path], reach: float) -> list[_Path]:
    """Paths, best first, but those nearly at a better one's spot."""
    kept: list[_Path] = []
    for path in sorted(paths, key=lambda path: path.spot.rank):
        if not crowded(path.spot, [other.spot for other in kept], reach):
            kept.append(path)
    return kept


def crowded(spot: Spot, others: Iterable[Spot], reach: float) -> bool:
    """Whether a top of that reach is nearly the same as one of others."""
    return any(_nearly_same(spot.placement, o.placement, reach) for o in others)


def _nearly_same(a: Placement, b: Placement, reach: float) -> bool:
    """Whether two wedges show nearly the same: their middles near, their axes nearly one."""
    if abs(math.remainder(a.angle - b.angle, 360.0)) > NEAR_TURN:
        return False
    (ax, ay), (bx, by) = (polar(2.0 / 3.0 * reach, p.angle) for p in (a, b))
    return math.hypot(a.x + ax - b.x - bx, a.y + ay - b.y - by) <= NEAR * reach


def _sizes(step: int) -> tuple[float, float, float]:
    shift, turn, _ = STEPS[step]
    return shift, shift, turn


def _terms(by: np.ndarray) -> np.ndarray:
    """N x 9: what a quadratic without constant is made of: x, and x times x."""
    i, j = np.triu_indices(3)
    return np.hstack([by, by[:, i] * by[:, j]])


_FIT = np.linalg.pinv(_terms(AROUND))
"""From the changes of score at the neighbours to slope (3) and bend (6, as `_terms` has them)."""

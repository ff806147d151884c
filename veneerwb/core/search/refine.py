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
from veneerwb.core.search.task import Task, motion_to

STEPS = ((4.0, 2.0, 1e-2), (1.0, 0.5, 2e-4), (0.5, 0.25, 1e-5))
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
ALONG = (1.0, 3.0)
"""Steps uphill along a ridge."""
ON = (1.0, 3.0)
"""Times that the last move is tried again."""
JUMPS = (1.0, 0.4)
"""Parts of a jump that are tried: at the edge of a leaf the whole of it may not fit."""
CLOSE = np.array(list(itertools.product((-2.0, -1.0, 0.0, 1.0, 2.0), repeat=3)))
"""125 x 3: all steps that the best results are looked at with in the end."""
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
            layouts = [self.task.at_origin(first) for first in firsts]
            self._known[firsts] = Appraiser(layouts, self.maps)
        found = self._known[firsts].at([motion_to(place) for place in placements])
        return [
            [
                Spot(place, first, appeal, appeal.scored(self.weights))
                for first, appeal in zip(firsts, appeals)
            ]
            for place, appeals in zip(placements, found)
        ]

    def each(self, places: Sequence[Placement], firsts: Sequence[int]) -> list[Spot]:
        """The tops that start with those leaves at those placements, pushed onto the leaves, in the
        same order."""
        found: dict[int, Spot] = {}
        for first in sorted(set(firsts)):
            index = [k for k, own in enumerate(firsts) if own == first]
            there = self.task.pushed([places[k] for k in index], first)
            found.update((k, spot) for k, (spot,) in zip(index, self.spots(there, (first,))))
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
        around = _tried(moving, [path.around for path in moving], judge)
        jumps = [path.jumps(tried) for path, tried in zip(moving, around)]
        for path, *tried in zip(moving, around, _tried(moving, jumps, judge)):
            path.go([spot for some in tried for spot in some], judge)
        paths = _apart(paths, judge.task.top.reach)
    return [path.spot for path in paths]


def closely(spot: Spot, judge: Judge) -> Spot:
    """The best of all spots within two of the finest steps, again until none is better: at the edge
    of a leaf a ridge may run between the neighbours."""
    path = _Path(spot, len(STEPS) - 1)
    while path.step < len(STEPS):
        (tried,) = _tried([path], [CLOSE * path.size], judge)
        path.go(tried, judge)
    return path.spot


@dataclass(eq=False)
class _Path:
    """Where a spot has come to: with steps of which size, after how many moves of that size."""

    spot: Spot
    step: int = 0
    moves: int = 0
    last: tuple[float, float, float] = (0.0, 0.0, 0.0)

    @property
    def around(self) -> np.ndarray:
        return AROUND * self.size

    def jumps(self, tried: Sequence[Spot]) -> np.ndarray:
        """To the top of the hill that spot and neighbours lie on, were it quadratic, and on the way
        there; where it is no hill, uphill. And along a ridge: where that is flattest, and on along
        the last move."""
        change = np.array([other.score for other in tried]) - self.spot.score
        slope, bend = np.split(_FIT @ change, [3])
        curve = np.zeros((3, 3))
        curve[np.triu_indices(3)] = bend
        curve += curve.T
        bends, axes = np.linalg.eigh(curve)
        if bends[-1] < -1e-9:
            by = np.clip(np.linalg.solve(curve, -slope), -FURTHEST, FURTHEST)
        else:
            by = FURTHEST * slope / max(1e-12, np.abs(slope).max())
        flat = axes[:, np.abs(bends).argmin()]
        flat = flat / np.abs(flat).max() * np.copysign(1.0, flat @ slope)
        steps = np.concatenate([np.outer(JUMPS, by), np.outer(ALONG, flat)]) * self.size
        return np.concatenate([steps, np.outer(ON, self.last)])

    def go(self, others: list[Spot], judge: Judge) -> None:
        """To the best that fits, if that is better; with smaller steps once none is."""
        self.moves += 1
        for other in sorted(others, key=lambda spot: spot.rank):
            if other.score < self.spot.score + STEPS[self.step][2]:
                break
            if judge.stands(other):
                self.last = between(self.spot.placement, other.placement, judge.task.top.reach)
                self.spot = other
                if self.moves < MOST_MOVES:
                    return
                break
        self.step, self.moves = self.step + 1, 0

    @property
    def size(self) -> np.ndarray:
        return np.array(_sizes(self.step))


def _tried(
    paths: Sequence[_Path], steps: Sequence[np.ndarray], judge: Judge
) -> list[list[Spot]]:
    """For each path the spots with the wedge's middle so far off (N x 3, mm and degrees) and turned
    about it; back onto the leaves, where it would reach over their edges, so that a wedge can slide
    along them."""
    least, arm = STEPS[-1][1], 2.0 / 3.0 * judge.task.top.reach
    by = np.stack(steps)
    here = np.array([(p.x, p.y, p.angle) for p in (path.spot.placement for path in paths)])
    angle = here[:, None, 2]
    turned = (angle + least * np.rint(by[..., 2] / least)) % 360.0
    tip = here[:, None, :2] + arm * (_unit(angle) - _unit(turned)) + by[..., :2]
    there = [Placement(*at) for at in np.dstack([np.round(tip, 2), turned]).reshape(-1, 3).tolist()]
    count = by.shape[1]
    found = judge.each(there, [path.spot.first for path in paths for _ in range(count)])
    return [found[k : k + count] for k in range(0, len(found), count)]


def between(a: Placement, b: Placement, reach: float) -> tuple[float, float, float]:
    """How far the wedge's middle moves from a to b, and the turn."""
    (ax, ay), (bx, by) = (polar(2.0 / 3.0 * reach, p.angle) for p in (a, b))
    turn = math.remainder(b.angle - a.angle, 360.0)
    return b.x + bx - a.x - ax, b.y + by - a.y - ay, turn


def _unit(angle: np.ndarray) -> np.ndarray:
    return np.stack([np.cos(np.radians(angle)), np.sin(np.radians(angle))], axis=-1)


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
    return math.hypot(*between(a, b, reach)[:2]) <= NEAR * reach


def _sizes(step: int) -> tuple[float, float, float]:
    shift, turn, _ = STEPS[step]
    return shift, shift, turn


def _terms(by: np.ndarray) -> np.ndarray:
    """N x 9: what a quadratic without constant is made of: x, and x times x."""
    i, j = np.triu_indices(3)
    return np.hstack([by, by[:, i] * by[:, j]])


_FIT = np.linalg.pinv(_terms(AROUND))
"""From the changes of score at the neighbours to slope (3) and bend (6, as `_terms` has them)."""

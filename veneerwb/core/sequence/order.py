# SPDX-License-Identifier: LGPL-2.1-or-later
"""The order that best explains how unlike the leaves are, and how far apart they then lie.

Unlikeness (1 - likeness) grows with the number of slices between two leaves. The order is the path
through all leaves along which neighbours, and to a lesser part the next but one, are least unlike.
Distances along it are counted in slices: how unlike leaves are that lie one, two, three slices
apart is taken from this very bundle.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

SECOND = 0.3
"""How much a step of two counts beside a step of one."""
UNUSUAL = 0.3
"""What two neighbours cost who are not neighbours by number, as a share of the usual step: the
order given stands unless the photographs clearly speak against it."""
LAGS = 4
"""Steps of more leaves tell nothing of how far apart they lie: figure recurs."""
_RISING = 0.25
"""A step of one leaf more that adds less than this share of the usual step adds nothing."""
_NEARER = 0.87
"""The unlikeness of neighbours, as a share of that of leaves three and more apart, up to which it
tells."""
_APART, _MOST, _SOME = 1.08, 0.7, 0.2
"""So many times as unlike as to a leaf its neighbours must be to each other, for those shares of
the leaves: where the order is otherwise than the numbers, and where not (where leaves are missing
or thick the figure may have changed altogether)."""
_FEW = 8
"""Fewer leaves are easily in some order by chance."""
_FAR = 0.05
"""The share of far pairs that recurring figure makes more alike than what counts as unlike."""
_ROUNDS = 60
_ALIKE = 0.3
"""The unlikeness of two photographs of one leaf as a share of that of neighbours, where the step
of two tells no less."""


def proven(likeness: np.ndarray, given: Sequence[int]) -> list[int]:
    """The order of the places `given`, in the direction nearest to theirs.

    Found twice: what the far pairs of the first order show is how unlike leaves are that tell
    nothing of their distance, and nothing more unlike than that counts.
    """
    if len(given) < 3:
        return list(given)
    unlike = 1 - likeness
    path = _best(unlike, given)
    if len(path) > LAGS:
        far = [unlike[path[i], path[j]] for i in range(len(path))
               for j in range(i + LAGS, len(path))]
        path = _best(np.minimum(unlike, np.quantile(far, _FAR)), given)
    return path[::-1] if _backwards(path) else path


def _backwards(path: Sequence[int]) -> bool:
    centred = np.asarray(path) - np.mean(path)
    return float(centred @ (np.arange(len(path)) - (len(path) - 1) / 2)) < 0


def _best(unlike: np.ndarray, given: Sequence[int]) -> list[int]:
    """The path of least cost that moves and reversals of runs find from the given order, from
    nearest neighbours and from the first eigenvector."""
    table = _Costs.of(unlike, given)
    starts = [list(given), _by_eigenvector(unlike, given)]
    starts += [_by_nearest(unlike, given, first) for first in given[: 2 * LAGS]]
    found = [_improved(table, start) for start in starts]
    return min(found, key=lambda path: round(table.cost(path), 9))


@dataclass(frozen=True)
class _Costs:
    """What two leaves cost as neighbours of a path and as next but one."""

    first: np.ndarray
    second: np.ndarray

    @staticmethod
    def of(unlike: np.ndarray, given: Sequence[int]) -> _Costs:
        usual = np.median([unlike[a, b] for a, b in zip(given, given[1:])])
        known = np.zeros(unlike.shape, bool)
        known[given[:-1], given[1:]] = known[given[1:], given[:-1]] = True
        return _Costs(unlike + UNUSUAL * usual * ~known, SECOND * unlike)

    def cost(self, path: Sequence[int]) -> float:
        p = np.asarray(path)
        return float(self.first[p[:-1], p[1:]].sum() + self.second[p[:-2], p[2:]].sum())


def _by_nearest(unlike: np.ndarray, given: Sequence[int], first: int) -> list[int]:
    """A path that grows at whichever end a leaf lies nearest to."""
    path, rest = [first], [n for n in given if n != first]
    while rest:
        ends = [(round(unlike[end, n], 9), k, n) for k, end in enumerate((path[0], path[-1]))
                for n in rest]
        _, k, n = min(ends)
        path.insert(len(path) * k, n)
        rest.remove(n)
    return path


def _by_eigenvector(unlike: np.ndarray, given: Sequence[int]) -> list[int]:
    """Spectral seriation (Atkins, Boman & Hendrickson, SIAM J. Comput. 28(1), 1998)."""
    places = np.asarray(given)
    alike = np.clip(1 - unlike[np.ix_(places, places)], 0, 1) ** 2
    laplacian = np.diag(alike.sum(axis=1)) - alike
    fiedler = np.linalg.eigh(laplacian)[1][:, 1]
    return [int(places[k]) for k in np.argsort(np.round(fiedler, 9), kind="stable")]


def _improved(table: _Costs, path: list[int]) -> list[int]:
    """The path after the best reversal or move of a run, as long as one gains."""
    now = table.cost(path)
    for _ in range(_ROUNDS):
        changed = np.array(_changed(path))
        costs = table.first[changed[:, :-1], changed[:, 1:]].sum(axis=1)
        costs += table.second[changed[:, :-2], changed[:, 2:]].sum(axis=1)
        least = int(np.round(costs, 9).argmin())
        if costs[least] >= now - 1e-9:
            break
        now, path = float(costs[least]), changed[least].tolist()
    return path


def _changed(path: list[int]) -> list[list[int]]:
    count, out = len(path), []
    for i in range(count):
        for j in range(i + 2, count + 1):
            out.append(path[:i] + path[i:j][::-1] + path[j:])
    for size in (1, 2, 3):
        for i in range(count - size + 1):
            run, rest = path[i : i + size], path[:i] + path[i + size :]
            out += [rest[:k] + run + rest[k:] for k in range(len(rest) + 1) if k != i]
    return out


def slices(likeness: np.ndarray, path: Sequence[int], unheard: int = -1) -> np.ndarray:
    """How many slices lie from each leaf of a path to the next, in units of the usual step: the
    least squares over all steps of up to LAGS leaves that tell. What the two leaves of step
    `unheard` say of each other does not count."""
    count = len(path)
    table = 1 - likeness[np.ix_(path, path)]
    told = _rising(table)
    lags = len(told) - 1
    curve = np.array(told if lags > 1 else [*told, 2 * told[1]])
    rise, places = np.diff(curve), np.arange(len(curve))
    rows, wanted = [], []
    for lag in range(1, min(lags, count - 1) + 1):
        for i in range(count - lag):
            apart = float(np.interp(table[i, i + lag], curve, places))
            if (lag == 1 and i == unheard) or (lag > 1 and apart > lags - 0.5):
                continue
            # Where the curve is flat, unlikeness says little of the distance.
            weight = rise[min(int(apart), len(rise) - 1)] / rise.max()
            row = np.zeros(count - 1)
            row[i : i + lag] = weight
            rows.append(row)
            wanted.append(weight * apart)
    found = np.linalg.lstsq(np.array(rows), np.array(wanted), rcond=None)[0]
    return np.maximum(found, 0.0)


def tells(likeness: np.ndarray, path: Sequence[int], otherwise: bool = False) -> bool:
    """Whether unlikeness grows along the path, as an order needs that is to be proved.

    Neighbours must be less unlike than leaves further apart, and the two neighbours of a leaf more
    unlike each other than either is to the leaf. Some path looks as if it were so among any
    leaves: one that is `otherwise` than the numbers say must show it throughout.
    """
    table = 1 - likeness[np.ix_(path, path)]
    if len(table) < 4:
        return False
    first, second = np.diag(table, 1), np.diag(table, 2)
    near, far = np.median(first), np.median(table[np.triu_indices(len(table), 3)])
    between = np.mean(second > _APART * np.maximum(first[1:], first[:-1]))
    least = _MOST if otherwise or len(path) < _FEW else _SOME
    return bool(near < _NEARER * far and between >= least)


def _rising(table: np.ndarray) -> list[float]:
    """How unlike leaves are that lie 0, 1, 2 ... slices apart, as long as that rises."""
    lags = range(1, min(LAGS, len(table) - 1) + 1)
    usual = [max(1e-3, float(np.median(np.diag(table, lag)))) for lag in lags]
    curve = [_ALIKE * usual[0], usual[0]]
    for value in usual[1:]:
        if value - curve[-1] < _RISING * usual[0]:
            break
        curve.append(value)
    return curve

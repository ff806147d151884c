# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the steps of an order tell, in slices: a leaf photographed twice, a lone larger step, a
step that grows and stays grown.

Figure changes faster in one part of a log than in another, so that a step is only ever compared
with those near it.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass

import numpy as np

NONE, FEW = 0.38, 0.6
"""A step of a smaller share of those near it, by what the other leaves say, leads to a photograph
of the same leaf; if it is small by what all say, too."""
EQUAL, EQUAL_END = 1.3, 1.45
"""Two photographs of one leaf are so equally unlike to the leaves beside them; to the one leaf
beside them at an end of the path."""
LARGER, LARGER_END = 1.38, 1.5
"""A lone step so many times those near it is a gap; the same for the first and the last step, which
have a neighbour on one side only."""
MORE, MORE_ON = 1.22, 1.14
"""A gap's leaves are at least so many times as unlike as those near it, too; and those after a
change of thickness as those before."""
GROWN, GROWN_FEW, GROWN_HIDDEN = 1.32, 1.36, 1.5
"""Steps so many times those before them are grown; the same where two are all there is on one
side, and where a gap hides the place."""
GROWN_FAR = 1.28
"""The same where more steps on either side are looked at."""
SUDDEN = 0.75
"""The share of the growth over more steps that the nearest must show: what grows slowly, as figure
does in a log, shows half of it there, a change of thickness all."""
SHRUNK = 1.7
"""Steps so many times smaller than those before them, three at least on either side, have
shrunk."""
ENOUGH = 5
"""Fewer steps than this say nothing of each other."""
_LIKE = 1.2
"""Steps that differ by less than so many times are about as large."""
_NEAR, _FAR = 2, 4
"""So many steps on either side are near, and so many the others looked at."""


@dataclass(frozen=True)
class Step:
    """Step `at` (0: the first), `times` as large as those near it, or as all before it if it and
    those after it have grown."""

    at: int
    times: float


def near(steps: Sequence[float], at: int, leave: Collection[int] = ()) -> float:
    """The usual step beside step `at`: the median of those near it, those of `leave` left out."""
    rest = [k for k in range(len(steps)) if k != at and k not in leave]
    rest.sort(key=lambda k: (abs(k - at), k))
    return float(np.median([steps[k] for k in rest[:_FAR]])) if rest else float(steps[at])


def lone(steps: Sequence[float], leave: Collection[int] = ()) -> list[Step]:
    """The steps that are larger than those near them and than those on both sides. Those of `leave`
    say nothing of what is usual."""
    found: dict[int, Step] = {}
    for k in sorted(range(len(steps)), key=lambda k: (-round(steps[k], 9), k)):
        out = {*leave, *found}  # a gap must not count as what is usual near another
        times = steps[k] / max(_beside(steps, k, out), 1e-9)
        least = LARGER_END if k in (0, len(steps) - 1) else LARGER
        if times > least and not _recurs(steps, k, out):
            found[k] = Step(k, times)
    return [found[k] for k in sorted(found)]


def _beside(steps: Sequence[float], at: int, leave: Collection[int]) -> float:
    """The larger of what is usual near step `at` and of the two steps beside it."""
    beside = [steps[k] for k in (at - 1, at + 1) if 0 <= k < len(steps) and k not in leave]
    return max([near(steps, at, leave), *beside])


def _recurs(steps: Sequence[float], at: int, leave: Collection[int]) -> bool:
    """Whether there are other steps about as large near step `at`, as where every other step shows
    a new layer of fibres."""
    others = [steps[k] for k in range(max(0, at - _FAR), min(len(steps), at + _FAR + 1))
              if k != at and k not in leave]
    return sum(steps[at] < _LIKE * other for other in others) > 1


def change(steps: Sequence[float], leave: Collection[int] = ()) -> Step | None:
    """The clearest change of thickness that the steps tell, if any; those of `leave` do not count,
    and are taken to lie between those beside them."""
    y = np.log(np.maximum(steps, 0.05))
    told = [k for k in range(len(y)) if k not in leave]
    if not told:
        return None
    y = np.interp(np.arange(len(y)), told, y[told])
    found = []
    for at in range(_NEAR, len(y) - _NEAR + 1):
        before, after = y[max(0, at - _FAR) : at], y[at : at + _FAR]
        growth = float(after[:_NEAR].mean() - before[-_NEAR:].mean())
        far = float(np.median(after) - np.median(before))
        few = min(sum(k < at for k in told), sum(k >= at for k in told))
        if _changed(growth, far, few, hidden=at in leave or at - 1 in leave):
            at_once = float(abs(y[at] - y[at - 1]))  # which tells where it begins
            found.append((round(abs(growth) + at_once, 9), -at, growth))
    if not found:
        return None
    _, at, growth = max(found)
    return Step(-at, float(np.exp(growth)))


def _changed(growth: float, far: float, told: int, hidden: bool) -> bool:
    """By what the logarithm of the steps has grown, near and further off; `told`: the number of
    steps on that side which has fewer; `hidden`: whether it begins behind a step that does not
    count."""
    if told < _NEAR or abs(growth) < SUDDEN * abs(far):
        return False
    if growth < 0:
        return max(growth, far) < -np.log(SHRUNK) and told > _NEAR
    least = GROWN_HIDDEN if hidden else GROWN_FEW if told <= _NEAR else GROWN
    return growth > np.log(least) and far > np.log(GROWN_FAR)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""From likeness to suspects: which leaves are out of place, double or missing."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from veneerwb.core.sequence import order, steps
from veneerwb.core.sequence import suspects as said
from veneerwb.core.sequence.orientation import Lying
from veneerwb.core.sequence.suspects import Suspect


@dataclass(frozen=True)
class Verdict:
    """`path`: the places that belong, in the order shown, without those of `doubles`, which are
    photographs of the same leaf as another place. `numbers` of the places; `copies`: the numbers
    that have the same photograph as another. `tells`: whether unlikeness grows with distance."""

    path: list[int]
    doubles: dict[int, int]
    numbers: list[int]
    copies: dict[int, int]
    suspects: list[Suspect]
    tells: bool

    @property
    def order(self) -> list[int]:
        """All numbers that belong, doubles and copies beside the leaf that they show."""
        out = [self.numbers[p] for p in self.path]
        again = [(self.numbers[p], self.numbers[q]) for p, q in reversed(self.doubles.items())]
        for n, m in [*again, *self.copies.items()]:
            if m in out:
                out.insert(out.index(m) + (n > m), n)
        return out


def verdict(numbers: Sequence[int], found: Lying, copies: Mapping[int, int]) -> Verdict:
    """`numbers` of the places; `copies`: numbers of photographs that were left out because another
    is the same."""
    path = order.proven(found.likeness, found.belong)
    numbers, copies = _fitting(path, list(numbers), dict(copies))
    path, doubles = _singled(found, path, numbers)
    sound = [p for p in path if p not in found.ways]
    left_out = [n for p, n in enumerate(numbers) if p not in sound] + list(copies)
    gaps: set[int] = set()
    accused: list[Suspect] = []
    if len(sound) > steps.ENOUGH:
        accused = _from_steps(found.likeness, sound, numbers, left_out, gaps)
    accused += _misplaced([numbers[p] for p in path])
    accused += _named(found, numbers, doubles, copies, gaps)
    accused.sort(key=lambda s: (s.leaf, said.KINDS.index(s.kind)))
    otherwise = len(accused) > 1 or bool(_moved([numbers[p] for p in path]))
    tells = order.tells(found.likeness, sound, otherwise)
    return Verdict(path, doubles, numbers, copies, accused, tells)


def _named(
    found: Lying, numbers: Sequence[int], doubles: Mapping[int, int], copies: Mapping[int, int],
    gaps: Collection[int],
) -> list[Suspect]:
    """Leaves that lie wrong, are there twice or do not belong; those of `gaps` are in the place of
    a leaf that is missing."""
    twice = {numbers[p]: numbers[q] for p, q in doubles.items()}
    return [
        *(said.lying(numbers[p], way, p in found.unsure) for p, way in found.ways.items()),
        *(said.foreign(numbers[p], numbers[p] in gaps) for p in found.foreign),
        *(said.duplicate(n, m, False, n in gaps) for n, m in twice.items()),
        *(said.duplicate(n, m, True, n in gaps) for n, m in copies.items()),
    ]


def _fitting(
    path: Sequence[int], numbers: list[int], copies: dict[int, int]
) -> tuple[list[int], dict[int, int]]:
    """Of numbers with one photograph the one that fits its place best, the rest as its copies."""
    for first in sorted(set(copies.values())):
        alike = [first, *(n for n, m in copies.items() if m == first)]
        tried = {n: [n if k == first else k for k in numbers] for n in alike}
        best = min(alike, key=lambda n: len(_moved([tried[n][p] for p in path])))
        numbers = tried[best]
        others = {n: m for n, m in copies.items() if m != first}
        copies = others | {n: best for n in alike if n != best}
    return numbers, dict(sorted(copies.items()))


def _singled(
    found: Lying, path: list[int], numbers: Sequence[int]
) -> tuple[list[int], dict[int, int]]:
    """The path without second photographs of a leaf, and which leaf each of those shows."""
    doubles: dict[int, int] = {}
    while len(path) > steps.ENOUGH:
        apart = order.slices(found.likeness, path)
        shares = [_apart(found, path, k, apart) for k in range(len(apart))]
        k = int(np.argmin(np.round(shares, 9)))
        if shares[k] >= steps.NONE:
            break
        one, other = sorted(path[k : k + 2])
        without = {p: [q for q in path if q != p] for p in (one, other)}
        moved = {p: len(_moved([numbers[q] for q in without[p]])) for p in (one, other)}
        gone = one if moved[one] < moved[other] else other
        doubles[gone] = other if gone == one else one
        path = order.proven(found.likeness, sorted(without[gone]))
    return path, doubles


def _apart(found: Lying, path: Sequence[int], k: int, apart: np.ndarray) -> float:
    """How far apart a leaf of the path and the next lie by what all others are to them, as a share
    of the steps near; 1 where they cannot be one leaf. How unlike two photographs of one leaf are
    to each other tells more of light and noise than of slices (`apart`, with it)."""
    if not _alike(found, path, k) or apart[k] >= steps.FEW * steps.near(apart, k):
        return 1.0
    by_others = order.slices(found.likeness, path, unheard=k)
    return float(by_others[k] / max(steps.near(by_others, k), 1e-9))


def _alike(found: Lying, path: Sequence[int], k: int) -> bool:
    """Whether a leaf of the path and the next are about equally unlike the leaf before and the leaf
    after them, as two photographs of one leaf are, whichever is the poorer. A leaf turned over
    shows its neighbour's surface and says nothing."""
    one, other = path[k : k + 2]
    if one in found.ways or other in found.ways:
        return False
    unlike = np.maximum(1 - found.likeness, 1e-6)
    nearer = [unlike[other, p] / unlike[one, p] for p in path[max(0, k - 1) : k]]
    nearer += [unlike[one, p] / unlike[other, p] for p in path[k + 2 : k + 3]]
    # At an end of the path nothing tells a poorer photograph from one further off.
    return float(np.prod(nearer)) ** (1 / len(nearer)) < (
        steps.EQUAL if len(nearer) > 1 else steps.EQUAL_END
    )


def _from_steps(
    likeness: np.ndarray, sound: list[int], numbers: Sequence[int], left_out: Sequence[int],
    gaps: set[int],
) -> list[Suspect]:
    """Gaps and changes of thickness. Into `gaps` go the numbers of `left_out` in whose place a leaf
    is missing."""
    apart = order.slices(likeness, sound)
    between = []
    for a, b in zip(sound, sound[1:]):
        low, high = sorted((numbers[a], numbers[b]))
        between.append([n for n in left_out if low < n < high])
    # In the place of a leaf that was left out one may be missing, or none.
    unsure = {k for k, others in enumerate(between) if others}
    large = steps.lone(apart, unsure)
    unlike = [1 - likeness[a, b] for a, b in zip(sound, sound[1:])]
    leave = {*unsure, *(step.at for step in large)}
    # Steps of several leaves level what neighbours tell alone, and where they tell least, too much.
    turn = steps.change(apart, leave) or steps.change(unlike, leave)
    out = []
    for step in large:
        k = step.at
        a, b = (numbers[p] for p in sound[k : k + 2])
        usual = steps.near(unlike, k, {*unsure, *(other.at for other in large)})
        if unlike[k] < steps.MORE * usual:
            continue
        if between[k] and step.times <= steps.LARGER * (1 + len(between[k])):
            gaps.update(between[k])
        else:
            out.append(said.missing(a, b, unlike[k] / usual))
    if turn is not None:
        sides = (unlike[: turn.at], unlike[turn.at :])
        before, after = (float(np.median(side)) for side in sides)
        if max(after / before, before / after) > steps.MORE_ON:
            out.append(said.thickness(numbers[sound[turn.at]], after / before))
    return out


def _moved(numbers: Sequence[int]) -> list[int]:
    """The fewest numbers without which the others rise."""
    tails: list[int] = []  # places: the least end of a rising run of each length
    before: list[int] = []
    for k, n in enumerate(numbers):
        length = bisect_left([numbers[t] for t in tails], n)
        before.append(tails[length - 1] if length else -1)
        tails[length : length + 1] = [k]
    kept, k = set(), tails[-1] if tails else -1
    while k >= 0:
        kept.add(k)
        k = before[k]
    return [n for k, n in enumerate(numbers) if k not in kept]


def _misplaced(numbers: Sequence[int]) -> list[Suspect]:
    moved = _moved(numbers)
    out = []
    for n in moved:
        k = numbers.index(n)
        before = numbers[k - 1] if k else None
        after = numbers[k + 1] if k + 1 < len(numbers) else None
        wrong = [m for j, m in enumerate(numbers) if (j < k) == (m > n) and m != n]
        if len(wrong) == 1:  # with a neighbour only
            other = wrong[0]
            first = min(k, numbers.index(other))
            ends = (numbers[first - 1] if first else None,
                    numbers[first + 2] if first + 2 < len(numbers) else None)
            out += [said.swapped(n, other, *ends), said.swapped(other, n, *ends)]
        else:
            out.append(said.out_of_place(n, before, after))
    return out

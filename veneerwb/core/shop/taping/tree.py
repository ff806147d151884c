# SPDX-License-Identifier: LGPL-2.1-or-later
"""How a top grows from its pieces: which assemblies are joined to which, along which seams.

The tree is found from above. What is whole is parted along a straight that runs right through it,
so that two assemblies always meet edge to edge along one line that a straightedge can true; of such
lines the one that keeps the two sides equal is taken, and within a half the one that leaves pairs.
Where no straight runs through (an odd ring, a box of unequal sides, the line between two rings),
the assemblies meet along a bent or a curved joint. Whatever falls apart on the way (the prongs of a
top with a hollow) is joined where it meets the rest.

Pairs, quarters, halves: common practice, no source; what is new here is only that it is worked out.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from veneerwb.core.layout import Layout
from veneerwb.core.matches.end import End
from veneerwb.core.matches.radial import Radial
from veneerwb.core.matches.rings import Rings
from veneerwb.core.outlines import edge as edges
from veneerwb.core.plane import polar

NEAR = 0.05
"""mm: a piece that reaches less far over a straight lies beside it (outlines are polygons here)."""
COARSE = 0.02
"""mm: sagitta of those polygons."""
STRAIGHT, BENT, CURVED = "straight", "bent", "curved"
Score = Callable[[tuple[int, ...]], tuple[float, ...]]
"""How much a joint along these seams (places in the layout's list) is broken already; the most is
taken."""


@dataclass(frozen=True)
class Assembly:
    """What lies at `positions`, in the order in which they run, made of `parts` (none: one piece)
    by closing `seams` (places in the layout's list) along a `joint`: straight, bent or curved.

    An assembly of one part closes upon itself: the last seam of an odd ring. `pairs` is how many
    pairs of pieces meet along the joint.
    """

    positions: tuple[int, ...]
    parts: tuple[Assembly, ...] = ()
    seams: tuple[int, ...] = ()
    joint: str = ""
    pairs: int = 0

    @cached_property
    def height(self) -> int:
        """How many joints it takes, one upon another."""
        return 1 + max(part.height for part in self.parts) if self.parts else 0

    @property
    def trued(self) -> bool:
        """Whether its joint is one straight over the edges of several pieces, which are trued
        together before it is closed."""
        return self.joint == STRAIGHT and self.pairs > 1

    def every(self) -> Iterable[Assembly]:
        """It and all that it is made of, pieces too, the smallest first."""
        for part in self.parts:
            yield from part.every()
        yield self


@dataclass(frozen=True)
class Candidate:
    """A last joint that could be: its `seams`, and the positions of either side."""

    seams: tuple[int, ...]
    sides: tuple[tuple[int, ...], tuple[int, ...]]


class Tree:
    """The trees of a layout. `score` says how much a joint is broken already; `close` is a pair of
    positions whose seam is to be in the last joint (of the outer ring where there are two)."""

    def __init__(
        self, layout: Layout, score: Score, close: tuple[int, int] | None = None
    ) -> None:
        self._layout, self._score, self._close = layout, score, close
        self._units = units_of(layout)
        self._seams = [(seam.a, seam.b) for seam in layout.seams]
        self._bent = [len(seam.line.coords) > 2 for seam in layout.seams]
        ends = np.array([np.asarray(s.line.coords)[[0, -1]] for s in layout.seams])
        self._lines = _lines(ends.reshape(-1, 2, 2))
        runs = [np.array(edges.points(p.edge, COARSE)) for p in layout.pieces]
        self._points = np.concatenate(runs)
        self._starts = np.cumsum([0, *map(len, runs[:-1])])
        self._middles = np.array([np.asarray(p.outline.centroid.coords)[0] for p in layout.pieces])
        self._place = {piece.position: k for k, piece in enumerate(layout.pieces)}
        self._rank = dict(self._place)
        self._cross = self._cross_lines()
        self.choices: list[tuple[Candidate, ...]] = []
        """The last joints that could be, the chosen one first; of each ring where there are two."""

    def roots(self) -> tuple[Assembly, ...]:
        """The finished assemblies: one, but for a top whose parts nowhere meet along a seam."""
        return tuple(self._built([piece.position for piece in self._layout.pieces], True))

    # --- parting -------------------------------------------------------------------------------

    def _built(
        self, group: Sequence[int], whole: bool = False, square: bool = False
    ) -> list[Assembly]:
        """The assemblies of a group, one for each part of it that hangs together. `whole`: the
        last joint may be chosen; `square`: it is half a ring that has quarters."""
        parts = self._connected(group)
        if len(parts) > 1:
            found = [one for part in parts for one in self._built(part, whole)]
            return sorted(found, key=lambda one: self._rank[one.positions[0]])
        if len(group) == 1:
            return [Assembly(tuple(group))]
        rings = _by(self._units, group, 0)
        if len(rings) > 1:
            return [self._joined([one for ring in rings for one in self._built(ring, True)])]
        ring = self._is_ring(group) if whole else 0
        if ring % 2 and (odd := self._odd_ring(group)):
            return [odd]
        sides = self._sides(group, whole, square) or self._halved(group)
        half = ring > 2 and ring % 4 == 0
        return [self._joined([one for side in sides for one in self._built(side, False, half)])]

    def _joined(self, parts: Sequence[Assembly]) -> Assembly:
        parts = sorted(parts, key=lambda one: self._rank[one.positions[0]])
        home = {p: k for k, part in enumerate(parts) for p in part.positions}
        seams = tuple(
            k for k, (a, b) in enumerate(self._seams)
            if a in home and b in home and home[a] != home[b]
        )  # fmt: skip
        return self._assembly(parts, seams)

    def _assembly(self, parts: Sequence[Assembly], seams: tuple[int, ...]) -> Assembly:
        pairs = len({frozenset(self._seams[k]) for k in seams})
        positions = tuple(p for part in parts for p in part.positions)
        return Assembly(positions, tuple(parts), seams, self._joint(seams), pairs)

    def _joint(self, seams: Sequence[int]) -> str:
        if any(self._bent[k] for k in seams):
            return CURVED
        if not seams:
            return BENT
        normal, offset = self._lines[seams[0]]
        ends = np.array([self._layout.seams[k].line.coords for k in seams]).reshape(-1, 2)
        return STRAIGHT if np.abs(ends @ normal - offset).max() <= NEAR else BENT

    # --- straights -----------------------------------------------------------------------------

    def _sides(
        self, group: Sequence[int], whole: bool, square: bool
    ) -> tuple[tuple[int, ...], tuple[int, ...]] | None:
        """The two sides of the best straight through a group, the one of the lowest rank first."""
        found = self._straights(group)
        if not found:
            return None
        across = [c for c in found if self._cross[list(c.seams)].all()]
        found = across or found
        count = self._counter(group)
        best = _even_key if whole or square else _pair_key
        keys = [best(*map(count, self._ordered(c))) for c in found]
        found = [c for c, key in zip(found, keys) if key == min(keys)]
        chosen = self._chosen(found) if whole else min(found, key=self._first)
        if whole and self._is_ring(group):
            self._count_from(group, chosen)
        return tuple(tuple(sorted(side, key=self._rank.get)) for side in self._ordered(chosen))

    def _ordered(self, one: Candidate) -> list[tuple[int, ...]]:
        return sorted(one.sides, key=lambda side: min(self._rank[p] for p in side))

    def _first(self, one: Candidate) -> tuple[int, ...]:
        return tuple(sorted(self._rank[p] for p in self._ordered(one)[0]))

    def _straights(self, group: Sequence[int]) -> list[Candidate]:
        """All straights along seams that part a group in two."""
        inside = set(group)
        own = [k for k, (a, b) in enumerate(self._seams)
               if a in inside and b in inside and not self._bent[k]]  # fmt: skip
        rows = np.array([self._place[p] for p in group])
        found: dict[frozenset[int], Candidate] = {}
        for k in own:
            beyond = self._beyond(k, rows)
            if beyond is None:
                continue
            one = tuple(p for p, over in zip(group, beyond) if over)
            other = tuple(p for p, over in zip(group, beyond) if not over)
            key = frozenset(one if group[0] in one else other)
            if one and other and key not in found:
                there = set(one)
                seams = tuple(j for j in self._between(inside)
                              if (self._seams[j][0] in there) != (self._seams[j][1] in there))
                found[key] = Candidate(seams, (one, other))
        return list(found.values())

    def _between(self, inside: set[int]) -> Iterable[int]:
        return (k for k, (a, b) in enumerate(self._seams) if a in inside and b in inside)

    def _beyond(self, seam: int, rows: np.ndarray) -> np.ndarray | None:
        """Which pieces lie beyond the straight of a seam; None where it runs through one."""
        normal, offset = self._lines[seam]
        away = self._points @ normal - offset
        low = np.minimum.reduceat(away, self._starts)[rows]
        high = np.maximum.reduceat(away, self._starts)[rows]
        beyond = self._middles[rows] @ normal > offset
        clear = np.where(beyond, low >= -NEAR, high <= NEAR)
        return beyond if clear.all() else None

    def _counter(self, group: Sequence[int]) -> Callable[[Sequence[int]], int]:
        """Counts what is joined: wedges while there are several, else pieces."""
        several = len({self._units[p] for p in group}) > 1
        return lambda side: len({self._units[p] for p in side}) if several else len(side)

    def _cross_lines(self) -> np.ndarray:
        """Which seams run across the grain of an end match: its rows are joined along them last."""
        how = self._layout.recipe
        if not isinstance(how, End):
            return np.zeros(len(self._seams), bool)
        along = np.array(polar(1.0, how.grain))
        return np.array([abs(normal @ along) > 0.999 for normal, _ in self._lines], bool)

    # --- the last joint ------------------------------------------------------------------------

    def _chosen(self, found: Sequence[Candidate]) -> Candidate:
        """The one that is asked for, else the one that is broken most."""
        ranked = sorted(
            found,
            key=lambda c: (not self._has(c), [-s for s in self._score(c.seams)], min(c.seams)),
        )
        self.choices.append(tuple(ranked))
        return ranked[0]

    def _has(self, one: Candidate) -> bool:
        asked = set(self._close or ())
        return any(set(self._seams[k]) == asked for k in one.seams)

    def _is_ring(self, group: Sequence[int]) -> int:
        """How many wedges a group has that lie all round a centre; 0 where it is no ring."""
        ways = {self._units[p][2] for p in group}
        units = {self._units[p] for p in group}
        return len(units) if ways == {len(units)} else 0

    def _count_from(self, group: Sequence[int], chosen: Candidate) -> None:
        """Ranks count round the ring from the last joint on."""
        ways = self._units[group[0]][2]
        sides = [{self._units[p][1] for p in side} for side in chosen.sides]
        begin = min(w for side in sides for w in side if (w - 1) % ways not in side)
        self._turn(group, begin, ways)

    def _turn(self, group: Sequence[int], begin: int, ways: int) -> None:
        order = sorted(group, key=lambda p: ((self._units[p][1] - begin) % ways, self._place[p]))
        first = min(self._rank[p] for p in group)
        self._rank.update({p: first + k for k, p in enumerate(order)})

    def _odd_ring(self, group: Sequence[int]) -> Assembly | None:
        """Two runs of wedges, joined along one seam; the last seam closes them. None where some
        wedge does not meet the next, so that nothing has to close."""
        ways = self._units[group[0]][2]
        meeting = self._meeting(group, ways)
        if len(meeting) < ways:
            return None
        everyone = tuple(group)
        last = self._chosen([Candidate(seams, (everyone, ())) for seams in meeting.values()])
        begin = next(w for w, seams in meeting.items() if seams == last.seams) + 1
        self._turn(group, begin % ways, ways)
        run = [[p for p in group if self._units[p][1] == (begin + k) % ways] for k in range(ways)]
        first = _pairs_first(ways)
        sides = ([p for w in run[:first] for p in w], [p for w in run[first:] for p in w])
        whole = self._joined([one for side in sides for one in self._built(side)])
        left = tuple(k for k in whole.seams if k not in last.seams)
        return self._assembly((self._assembly(whole.parts, left),), last.seams)

    def _meeting(self, group: Sequence[int], ways: int) -> dict[int, tuple[int, ...]]:
        """The seams between each wedge of a ring and the next."""
        found: dict[int, tuple[int, ...]] = {}
        for k in self._between(set(group)):
            a, b = (self._units[p][1] for p in self._seams[k])
            for w, after in ((a, b), (b, a)):
                if (after - w) % ways == 1:
                    found[w] = (*found.get(w, ()), k)
        return dict(sorted(found.items()))

    # --- where no straight runs through -------------------------------------------------------

    def _connected(self, group: Sequence[int]) -> list[tuple[int, ...]]:
        """The parts of a group that hang together by seams."""
        left, found = set(group), []
        near = self._neighbours(left)
        for p in group:
            if p in left:
                part = _grown(p, near, len(group))
                left -= set(part)
                found.append(tuple(q for q in group if q in set(part)))
        return found

    def _neighbours(self, inside: set[int]) -> dict[int, list[int]]:
        near: dict[int, list[int]] = {p: [] for p in inside}
        for k in self._between(inside):
            a, b = self._seams[k]
            near[a].append(b)
            near[b].append(a)
        return {p: sorted(set(found)) for p, found in near.items()}

    def _halved(self, group: Sequence[int]) -> tuple[tuple[int, ...], ...]:
        """Two parts as equal as can be that each hang together, grown from either end."""
        near, best = self._neighbours(set(group)), None
        for seed in (group[0], group[-1]):
            run = _grown(seed, near, len(group))
            for size in sorted(range(1, len(group)), key=lambda n: abs(2 * n - len(group))):
                if best and abs(2 * size - len(group)) >= best[0]:
                    break
                rest = [p for p in group if p not in set(run[:size])]
                if len(self._connected(rest)) == 1:
                    best = (abs(2 * size - len(group)), tuple(sorted(run[:size])), tuple(rest))
        return best[1:]


def _grown(seed: int, near: dict[int, list[int]], most: int) -> list[int]:
    """Those that hang together with a piece, the nearest first."""
    run, seen = [seed], {seed}
    for p in run:
        for q in near[p]:
            if q not in seen and len(run) < most:
                seen.add(q)
                run.append(q)
    return run


def _lines(ends: np.ndarray) -> list[tuple[np.ndarray, float]]:
    """The straights through pairs of points: unit normal and offset."""
    found = []
    for a, b in ends:
        way = (b - a) / np.hypot(*(b - a))
        normal = np.array((-way[1], way[0]))
        found.append((normal, float(normal @ (a + b) / 2.0)))
    return found


def _joints(count: int) -> int:
    """How many joints upon another it takes to make one of so many: the logarithm to 2, upwards."""
    return (count - 1).bit_length()


def _even_key(one: int, other: int) -> tuple[int, ...]:
    return _joints(max(one, other)), abs(one - other)


def _pair_key(one: int, other: int) -> tuple[int, ...]:
    """As few joints upon another as can be, then pairs, then equal sides."""
    return _joints(max(one, other)), one % 2 + other % 2, one % 2, abs(one - other)


def _pairs_first(ways: int) -> int:
    """How many wedges of an odd ring the first of its two runs has: an even number next to half of
    them, or the one of three."""
    half = ways // 2
    return half + half % 2 if ways > 3 else 1


def _by(
    units: dict[int, tuple[int, int, int]], group: Sequence[int], what: int
) -> list[list[int]]:
    lots: dict[int, list[int]] = {}
    for p in group:
        lots.setdefault(units[p][what], []).append(p)
    return [lots[key] for key in sorted(lots)]


def units_of(layout: Layout) -> dict[int, tuple[int, int, int]]:
    """For each position (ring, wedge, ways of its ring): which wedge its piece is of, counted
    counter-clockwise from 0; outside of rings each piece is a wedge of its own, of 0 ways."""
    how = layout.recipe
    rings = {Radial: lambda: (how,), Rings: lambda: (how.inner, how.outer)}.get(type(how))
    found = {}
    for piece in layout.pieces:
        if rings is None:
            found[piece.position] = (0, piece.position, 0)
            continue
        k = int(isinstance(how, Rings) and piece.cut >= how.inner.strips)
        ring = rings()[k]
        inside = piece.outline.representative_point()
        x, y = inside.x - ring.centre[0], inside.y - ring.centre[1]
        turn = math.degrees(math.atan2(y, x)) - ring.direction(0)
        found[piece.position] = (k, int(turn % 360.0 / (360.0 / ring.ways)) % ring.ways, ring.ways)
    return found

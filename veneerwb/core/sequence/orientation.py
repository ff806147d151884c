# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which leaves belong together as they lie, which would if they were turned over or end for end,
and which belong to none.

Turned ways are tried only for leaves that match badly as they lie.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np

from veneerwb.core.plane import Motion
from veneerwb.core.sequence.likeness import Album
from veneerwb.core.sequence.picture import FLIPS, Picture

CLEARLY = 0.1
"""Likeness by which one way to lie must surpass all others."""
_LINKED = 0.5
"""Leaves match whose likeness falls short of the usual by no more than so many times as the usual
falls short of 1."""
_OWN = 0.8
"""A figure whose mirror image reaches this share of its likeness equals its mirror."""
_LEAST = 0.3
"""Likeness that some leaves must reach, else no two show the same figure."""
_STRANGE, _STRANGER = 0.6, 0.25
"""A leaf that lies in no way clearly better than in the others is foreign, if it is less like the
others than these shares of the likeness of leaves two slices apart and of neighbours."""
_USUAL = 0.6
"""The quantile of the leaves' likeness to that which they are most like that counts as usual."""
_NEAREST = 4
"""So many leaves nearest by number are tried before the others."""
_PROMISING = 2
"""Of those tried, so many that look most promising on the coarse grid are compared on the fine."""
_TELLING = 0.05
"""Likeness by which neighbours must surpass leaves two slices apart, to tell these apart."""
_FOREIGN = "foreign"


@dataclass(frozen=True)
class Lying:
    """Places in the album. `belong`: those of the bundle; `ways`: how some of them must be laid;
    `foreign`: those that belong in no way; `same`: ways that look the same to this figure, so that
    nothing can be said of them; `unsure`: those of `ways` that may be turned over or end for end;
    `usual`: the likeness of neighbours. Likeness and motions are those with the leaves laid right
    (motions from photograph to photograph)."""

    belong: tuple[int, ...]
    ways: dict[int, str]
    foreign: tuple[int, ...]
    same: tuple[str, ...]
    usual: float
    likeness: np.ndarray
    motions: dict[tuple[int, int], Motion]
    unsure: frozenset[int] = frozenset()


def lying(album: Album, likeness: np.ndarray, motions: dict[tuple[int, int], Motion]) -> Lying:
    """Looks into every group of leaves that does not hang together with the largest."""
    likeness, motions = likeness.copy(), dict(motions)
    count = len(likeness)
    nearest = np.max(likeness - 2 * np.eye(count), axis=1)
    usual = float(np.quantile(nearest, _USUAL))
    if usual < _LEAST:
        return Lying((), {}, (), (), usual, likeness, motions)
    level = usual - max(_LINKED * (1 - usual), CLEARLY)
    same, chance = _by_chance(album, likeness, _main(likeness, level))
    level = min(level, chance + 2 * CLEARLY)
    main = _main(likeness, level)
    rest = [g for g in _groups(likeness > level) if g[0] not in main]
    found = _Sorting(album, likeness, motions, level, same, usual, main, rest)
    found.sort()
    belong = tuple(n for n in range(count) if n not in found.foreign)
    foreign = tuple(sorted(found.foreign))
    unsure = frozenset(found.unsure)
    return Lying(belong, found.ways, foreign, same, usual, likeness, motions, unsure)


@dataclass
class _Sorting:
    """The leaves of `main` belong together, laid as `ways` says; the groups of `rest` are still to
    be looked into."""

    album: Album
    likeness: np.ndarray
    motions: dict[tuple[int, int], Motion]
    level: float
    same: tuple[str, ...]
    usual: float
    main: list[int]
    rest: list[list[int]]
    ways: dict[int, str] = field(default_factory=dict)
    foreign: list[int] = field(default_factory=list)
    unsure: set[int] = field(default_factory=set)

    def sort(self) -> None:
        while self.rest:
            group, way = self._clear() or self._nearest()
            self.rest.remove(group)
            if way == _FOREIGN:
                self.foreign += group
                continue
            self.main = sorted([*self.main, *group])
            if way:
                self.ways.update((n, way) for n in group)
                for n in group:
                    _lay(self.album, n, self.ways, self.likeness, self.motions)

    def _clear(self) -> tuple[list[int], str] | None:
        """A group that hangs together with the others by now, or else one whose way is clear beside
        those nearest to it by number. The least alike first: what lies wrong is less like the
        others than what it parts from them, which needs no look once it is laid right."""
        self._tried: dict[int, dict[str, float]] = {}
        for group in sorted(self.rest, key=lambda g: (round(self._alike(g), 6), g[0])):
            if self._alike(group) > self.level:
                return group, ""
            n = self._foremost(group)
            found = self._tried[n] = {"": self._alike(group)}
            self._try(n, self._by_number(n)[:_NEAREST], found)
            best, clear = _best(found)
            if clear and found[best] > self.usual - CLEARLY:
                return group, self._told(group, n, best)
        return None

    def _nearest(self) -> tuple[list[int], str]:
        """The group that is most like the others, which may be what joins the next to them, and how
        it must be laid: "" as it lies, one of FLIPS, or _FOREIGN."""
        group = max(self.rest, key=lambda g: (round(self._alike(g), 6), -g[0]))
        n = self._foremost(group)
        found = self._tried[n]
        # Of neighbours, which are alike, one will do.
        self._try(n, self._by_number(n)[_NEAREST::2], found)
        best, clear = _best(found)
        if clear:
            return group, self._told(group, n, best)
        far = max(_STRANGE * _second(self.likeness, self.main), _STRANGER * self.usual)
        return group, _FOREIGN if len(group) == 1 and found[best] < far else ""

    def _alike(self, group: Sequence[int]) -> float:
        return float(self.likeness[np.ix_(group, self.main)].max())

    def _foremost(self, group: Sequence[int]) -> int:
        """That of a group which is most like the others."""
        table = self.likeness[np.ix_(group, self.main)]
        return group[int(np.round(table.max(axis=1), 9).argmax())]

    def _by_number(self, n: int) -> list[int]:
        return sorted(self.main, key=lambda k: (abs(k - n), k))

    def _try(self, n: int, keep: Sequence[int], found: dict[str, float]) -> None:
        """Into `found`, how like leaves of `keep` a leaf is in each way that can be told."""
        for way in told_apart(self.same):
            alike = _laid(self.album, n, way, keep, self.ways)
            found[way] = max(found.get(way, 0.0), alike)

    def _told(self, group: Sequence[int], n: int, way: str) -> str:
        """The way of a group as leaf n of it lies: turned over and end for end, where they look
        alike, are told apart by the leaves beside it, or else it is unsure."""
        if not way or "both" not in self.same:
            return way
        main = [k for k in self.main if k not in self.ways]
        told = _either(self.album, self.likeness, main, n, self.usual)
        if not told:
            self.unsure.update(group)
        return told or "turned"


def _best(found: Mapping[str, float]) -> tuple[str, bool]:
    """The way in which a leaf is most like the others, and whether it clearly is."""
    ranked = sorted(found, key=lambda way: (-round(found[way], 6), way))
    second = found[ranked[1]] if len(ranked) > 1 else 0.0
    return ranked[0], found[ranked[0]] - second >= CLEARLY


def _main(likeness: np.ndarray, level: float) -> list[int]:
    return min(_groups(likeness > level), key=lambda group: (-len(group), group[0]))


def _groups(linked: np.ndarray) -> list[list[int]]:
    """The connected parts of a graph, given as a matrix."""
    left, groups = set(range(len(linked))), []
    while left:
        part, edge = set(), {min(left)}
        while edge:
            part |= edge
            edge = {int(n) for k in edge for n in np.flatnonzero(linked[k])} - part
        groups.append(sorted(part))
        left -= part
    return groups


def _by_chance(
    album: Album, likeness: np.ndarray, main: Sequence[int]
) -> tuple[tuple[str, ...], float]:
    """The ways to lie that look the same to this figure, and how alike the others make two leaves
    by chance: from the two that are most alike."""
    if len(main) < 2:
        return (), 0.0
    table = likeness[np.ix_(main, main)] - 2 * np.eye(len(main))
    a, b = (main[k] for k in np.unravel_index(int(np.round(table, 9).argmax()), table.shape))
    found = {way: _nearest(album, album.pictures[a].flipped(way), [b]) for way in FLIPS}
    same = tuple(way for way in FLIPS if found[way] > _OWN * likeness[a, b])
    return same, max((v for way, v in found.items() if way not in same), default=0.0)


def told_apart(same: Sequence[str]) -> tuple[str, ...]:
    """Ways to lie that can be told from each other: where one of the three looks the same, the
    other two look alike."""
    rest = tuple(way for way in FLIPS if way not in same)
    return rest[:1] if same else rest


def _either(
    album: Album, likeness: np.ndarray, main: Sequence[int], n: int, usual: float
) -> str:
    """Turned over or end for end, where both look alike: a leaf turned over shows the surface of
    its neighbour, and to the leaf on its other side lies a step further. "" where no leaf beside it
    tells, or leaves two apart are about as alike as neighbours."""
    beside = [k for k in (n - 1, n + 1) if k in main]
    if not beside or usual - _second(likeness, main) < _TELLING:
        return ""
    row = album.row(album.pictures[n].flipped("end for end"), beside)
    furthest = min(pair.likeness for pair in row.values())
    return "end for end" if furthest > (usual + _second(likeness, main)) / 2 else "turned"


def _nearest(album: Album, picture: Picture, keep: Sequence[int]) -> float:
    """The likeness of a picture to that of `keep` which it is most like."""
    row = album.row(picture, keep, _PROMISING)
    return max((pair.likeness for pair in row.values()), default=0.0)


def _laid(
    album: Album, n: int, way: str, keep: Sequence[int], ways: Mapping[int, str]
) -> float:
    """The same of leaf n, laid `way`, and leaves that are laid as `ways` says."""
    best = 0.0
    for lies in sorted({ways.get(k, "") for k in keep}):
        picture = _flipped(album.pictures[n], _between(way, lies))
        best = max(best, _nearest(album, picture, [k for k in keep if ways.get(k, "") == lies]))
    return best


def _between(one: str, other: str) -> str:
    """The way in which a leaf that lies in one way lies against one that lies in the other: any two
    of FLIPS make the third."""
    if one == other:
        return ""
    return one or other if not (one and other) else next(w for w in FLIPS if w not in (one, other))


def _flipped(picture: Picture, way: str) -> Picture:
    return picture.flipped(way) if way else picture


def _second(likeness: np.ndarray, main: Sequence[int]) -> float:
    """How alike leaves usually are to that which is second nearest on either side."""
    if len(main) < 4:
        return 1.0
    table = np.sort(likeness[np.ix_(main, main)], axis=1)
    return float(np.median(table[:, -4]))  # itself, two neighbours, and then


def _lay(
    album: Album, n: int, ways: Mapping[int, str], likeness: np.ndarray,
    motions: dict[tuple[int, int], Motion],
) -> None:
    """Puts the likeness and motions of leaf n, laid right, in place of those as it lies; with
    leaves that lie wrong in the same way they are right already."""
    against = {j: _between(ways[n], ways.get(j, "")) for j in range(len(likeness)) if j != n}
    for way in FLIPS:
        keep = sorted((j for j in against if against[j] == way), key=lambda j: abs(j - n))
        if not keep:
            continue
        picture, back = album.pictures[n].flipped(way), album.pictures[n].unflipped(way)
        for j, pair in album.row(picture, keep).items():
            likeness[n, j] = likeness[j, n] = pair.likeness
            onto = pair.motion @ back.inverse()
            motions[min(n, j), max(n, j)] = onto if n < j else onto.inverse()

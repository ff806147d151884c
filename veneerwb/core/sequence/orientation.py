# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which leaves belong together as they lie, which would if they were turned over or end for end,
and which belong to none.

Turned ways are tried only for leaves that match badly as they lie.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

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
"""So many leaves nearest by number are tried before the others, and of those only so many that look
most promising on the coarse grid."""
_FOREIGN = "foreign"


@dataclass(frozen=True)
class Lying:
    """Places in the album. `belong`: those of the bundle; `ways`: how some of them must be laid;
    `foreign`: those that belong in no way; `same`: ways that look the same to this figure, so that
    nothing can be said of them; `usual`: the likeness of neighbours. Likeness and motions are those
    with the leaves laid right (motions from photograph to photograph)."""

    belong: tuple[int, ...]
    ways: dict[int, str]
    foreign: tuple[int, ...]
    same: tuple[str, ...]
    usual: float
    likeness: np.ndarray
    motions: dict[tuple[int, int], Motion]


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
    ways: dict[int, str] = {}
    foreign: list[int] = []
    while rest:
        # The nearest first: it may be what joins the next to the others.
        group = max(rest, key=lambda g: (round(likeness[np.ix_(g, main)].max(), 6), -g[0]))
        rest.remove(group)
        way = _way(album, likeness, main, group, same, usual, ways)
        if way == _FOREIGN:
            foreign += group
            continue
        main = sorted([*main, *group])
        if way:
            ways.update((n, way) for n in group)
            for n in group:
                _lay(album, n, ways, likeness, motions)
    belong = tuple(n for n in range(count) if n not in foreign)
    return Lying(belong, ways, tuple(sorted(foreign)), same, usual, likeness, motions)


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


def _way(
    album: Album, likeness: np.ndarray, main: Sequence[int], group: Sequence[int],
    same: Sequence[str], usual: float, ways: Mapping[int, str],
) -> str:
    """How a group must be laid, beside those of main, which lie as `ways` says: "" as it lies, one
    of FLIPS, or _FOREIGN."""
    table = likeness[np.ix_(group, main)]
    n = group[int(np.round(table.max(axis=1), 9).argmax())]
    flipped = told_apart(same)
    close = sorted(main, key=lambda k: (abs(k - n), k))[:_NEAREST]
    rest = [k for k in main if k not in close]
    found = {"": float(table.max()), **dict.fromkeys(flipped, 0.0)}
    for keep in (close, rest):
        for way in flipped:
            found[way] = max(found[way], _laid(album, n, way, keep, ways))
        ranked = sorted(found.items(), key=lambda item: (-round(item[1], 6), item[0]))
        best, second = ranked[0], ranked[1] if len(ranked) > 1 else ("", 0.0)
        clear = best[1] - second[1] >= CLEARLY
        if clear and best[1] > usual - CLEARLY:
            break
    if clear:
        if not best[0] or "both" not in same:
            return best[0]
        return _either(album, likeness, [k for k in main if k not in ways], n, usual)
    far = max(_STRANGE * _second(likeness, main), _STRANGER * usual)
    return _FOREIGN if len(group) == 1 and best[1] < far else ""


def told_apart(same: Sequence[str]) -> tuple[str, ...]:
    """Ways to lie that can be told from each other: where one of the three looks the same, the
    other two look alike."""
    rest = tuple(way for way in FLIPS if way not in same)
    return rest[:1] if same else rest


def _either(
    album: Album, likeness: np.ndarray, main: Sequence[int], n: int, usual: float
) -> str:
    """Turned over or end for end, where both look alike: a leaf turned over shows the surface of
    its neighbour, and to the leaf on its other side lies a step further."""
    beside = [k for k in (n - 1, n + 1) if k in main]
    if not beside:
        return "turned"
    row = album.row(album.pictures[n].flipped("end for end"), beside)
    furthest = min(pair.likeness for pair in row.values())
    return "end for end" if furthest > (usual + _second(likeness, main)) / 2 else "turned"


def _nearest(album: Album, picture: Picture, keep: Sequence[int]) -> float:
    """The likeness of a picture to that of `keep` which it is most like."""
    row = album.row(picture, keep, _NEAREST)
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
        keep = [j for j, step in against.items() if step == way]
        if not keep:
            continue
        picture, back = album.pictures[n].flipped(way), album.pictures[n].unflipped(way)
        for j, pair in album.row(picture, keep).items():
            likeness[n, j] = likeness[j, n] = pair.likeness
            onto = pair.motion @ back.inverse()
            motions[min(n, j), max(n, j)] = onto if n < j else onto.inverse()

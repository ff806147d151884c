# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where a wedge that follows the hand leaves what may be used, and what it would show of faults: as
the checks have it, but quickly, from what does not change while only the wedge moves."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, NamedTuple

from shapely.ops import unary_union
from shapely.prepared import prep

from veneerwb.core import Layout, Piece
from veneerwb.core.checks.sufficiency import seen_of
from veneerwb.core.layout import alike
from veneerwb.core.plane import TOUCH

NEAR = 20.0
"""mm between outlines of one fault on leaves that follow each other."""
ROUND = 6
"""Decimals of a mm to which outlines are compared."""


class Misfit(NamedTuple):
    """An `area` (shapely, bundle mm) of the wedge that cannot be, the `leaves` that forbid it, and
    the `fault` there; "" where it is off what may be used."""

    area: Any
    leaves: tuple[int, ...]
    fault: str = ""


class _Ground(NamedTuple):
    """An outline on the bundle that leaves have in common."""

    area: Any
    quick: Any
    leaves: frozenset[int]
    fault: str = ""


class Fit:
    """What the leaves of a ring allow, kept for as long as the ring and the margin are the same."""

    def __init__(self) -> None:
        self._key: Any = None
        self._alike: tuple[Any, bool] = None, True

    def of(self, layout: Layout, margin: float, hidden: Any = None) -> list[Misfit]:
        """What forbids the wedge where it lies; under `hidden` (shapely, top mm) no fault does."""
        ring = tuple((piece.leaf, piece.turned) for piece in layout.pieces)
        key = layout.bundle, ring, margin
        if self._key is None or self._key[0] is not key[0] or self._key[1:] != key[1:]:
            self._survey(layout, margin)
            self._key = key
        found = [*self._off(layout), *self._seen(layout, hidden)]
        return [one for one in found if one.area.area > TOUCH]

    def _survey(self, layout: Layout, margin: float) -> None:
        bundle = layout.bundle
        rooms: list[tuple[Any, int, str]] = []
        faults: list[tuple[Any, int, str]] = []
        for piece in layout.pieces:
            back = bundle.register(piece.leaf, piece.turned).inverse()
            usable = bundle.usable(piece.leaf).buffer(TOUCH - margin, join_style=2)
            rooms.append((back.apply_to(usable), piece.leaf, ""))
            for fault in bundle.faults(piece.leaf):
                faults.append((back.apply_to(fault.outline), piece.leaf, fault.kind))
        self._rooms, self._faults = _grouped(rooms), _grouped(faults)
        self._common = self._rooms[0].area
        for room in self._rooms[1:]:
            self._common = self._common.intersection(room.area)
        self._quick = prep(self._common)

    def _wedges(
        self, layout: Layout, part: Callable[[Piece], Any]
    ) -> list[tuple[Any, frozenset[int]]]:
        """A part of each piece on the bundle, and on which leaves: one where all pieces are alike.
        """
        shape = layout.top.name, layout.recipe.ways, layout.recipe.start, layout.recipe.oversize
        if self._alike[0] != shape:
            self._alike = shape, alike(layout.pieces)
        pieces = layout.pieces[:1] if self._alike[1] else layout.pieces
        every = frozenset(piece.leaf for piece in layout.pieces)
        return [
            (_drawn(piece, part), every if self._alike[1] else frozenset((piece.leaf,)))
            for piece in pieces
        ]

    def _off(self, layout: Layout) -> list[Misfit]:
        parts, leaves = [], set()
        for wedge, numbers in self._wedges(layout, lambda piece: piece.blank):
            if self._quick.covers(wedge):
                continue
            off = {
                number for room in self._rooms if not room.quick.covers(wedge)
                for number in room.leaves & numbers
            }
            if off:
                rooms = [room.area for room in self._rooms if room.leaves & numbers]
                parts += [wedge.difference(room) for room in rooms]
                leaves |= off
        return [Misfit(unary_union(parts), tuple(sorted(leaves)))] if parts else []

    def _seen(self, layout: Layout, hidden: Any) -> list[Misfit]:
        if not self._faults:
            return []
        found = []
        for wedge, numbers in self._wedges(layout, lambda piece: seen_of(piece, hidden)):
            quick = prep(wedge)
            for fault in self._faults:
                leaves = fault.leaves & numbers
                if not (leaves and quick.intersects(fault.area)):
                    continue
                area = wedge.intersection(fault.area)
                if area.area > TOUCH:
                    found.append(Misfit(area, tuple(sorted(leaves)), fault.fault))
        return _joined(found)


def _joined(faults: Sequence[Misfit]) -> list[Misfit]:
    """Faults of a kind at one place, which is one fault through several leaves, in one."""
    joined: list[Misfit] = []
    for one in faults:
        near, far = [one], []
        for other in joined:
            same = other.fault == one.fault and other.area.distance(one.area) < NEAR
            (near if same else far).append(other)
        leaves = sorted({leaf for part in near for leaf in part.leaves})
        whole = unary_union([part.area for part in near])
        joined = [*far, Misfit(whole, tuple(leaves), one.fault)]
    return joined


def _drawn(piece: Piece, part: Callable[[Piece], Any]) -> Any:
    area = piece.onto_bundle.apply_to(part(piece))
    return area if area.is_valid else area.buffer(0)


def _grouped(outlines: Sequence[tuple[Any, int, str]]) -> list[_Ground]:
    """The outlines, each once, with all leaves that have it."""
    known: dict[Any, tuple[Any, set[int], str]] = {}
    for area, leaf, fault in outlines:
        key = fault, _mark(area)
        known.setdefault(key, (area, set(), fault))[1].add(leaf)
    return [
        _Ground(area, prep(area), frozenset(leaves), fault)
        for area, leaves, fault in known.values()
    ]


def _mark(area: Any) -> tuple[float, ...]:
    if area.is_empty:
        return ()
    middle = area.centroid
    figures = (*area.bounds, area.area, area.length, middle.x, middle.y)
    return tuple(round(figure, ROUND) for figure in figures)

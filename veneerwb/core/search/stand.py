# SPDX-License-Identifier: LGPL-2.1-or-later
"""Whether tops may be cut at a spot: what does not change from spot to spot is made ready once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from shapely.geometry import Polygon
from shapely.prepared import prep

from veneerwb.core.checks.sufficiency import room_on
from veneerwb.core.layout import Piece
from veneerwb.core.leaf import Leaves
from veneerwb.core.outlines import edge as edges
from veneerwb.core.plane import TOUCH, Motion
from veneerwb.core.raster import outlines


class Stand:
    """Tops laid with their wedge at the bundle's origin, the axis along x, that differ in their
    leaves alone: `pieces` with what is seen of each (shapely, top mm), and for each top the sides
    (leaf, turned) that it shows, by position. Blanks must lie on their leaves' usable area less
    `margin` (mm), and what is seen must be clear of faults."""

    def __init__(
        self, pieces: Sequence[tuple[Piece, Any]], tops: Sequence[Sequence[tuple[int, bool]]],
        bundle: Leaves, margin: float,
    ) -> None:
        rooms = {n: room_on(bundle.usable(n), margin) for n in {n for top in tops for n, _ in top}}
        bounds = {n: _bounds(room) for n, room in rooms.items()}
        shapes = _different([_Shape.of(piece, seen) for piece, seen in pieces])
        known: dict[Any, int] = {}  # a leaf lies in many tops in the same way
        like: dict[Any, int] = {}  # and leaves may lie alike
        cuts: list[_Cut] = []
        self._tops = np.empty((len(tops), len(pieces)), int)
        for index, top in zip(self._tops, tops):
            for k, (shape, (leaf, turned)) in enumerate(zip(shapes, top)):
                register = bundle.register(leaf, turned)
                index[k] = known.setdefault((leaf, register, shape), len(cuts))
                if index[k] == len(cuts):
                    kind = like.setdefault((bounds[leaf], register, shape), len(like))
                    cuts.append(_Cut(leaf, register, shape.seen, kind))
        self._cuts = cuts
        self._kinds = np.array([cut.kind for cut in cuts])
        self._bounds = np.array([around for around, _, _ in like])
        self._corners = _stacked([shape.corners for _, _, shape in like])
        self._turns = np.array([register.matrix for _, register, _ in like]).reshape(-1, 2, 2)
        self._shifts = np.array([(register.dx, register.dy) for _, register, _ in like])
        bent = {n: prep(room) for n, room in rooms.items() if not _upright(room)}
        self._bent = [(k, bent[cut.leaf]) for k, cut in enumerate(cuts) if cut.leaf in bent]
        self._faults = [
            (k, plain(fault.outline))
            for k, cut in enumerate(cuts) for fault in bundle.faults(cut.leaf)
        ]  # fmt: skip
        self._owner = np.array([k for k, _ in self._faults], int)
        self._around = np.array([_bounds(f) for _, f in self._faults]).reshape(-1, 4)

    def at(self, moved: Motion, tops: Sequence[int]) -> list[bool]:
        """Which of those tops (by index) may be cut with the wedge moved so from the bundle's
        origin."""
        wanted = self._tops[tops]
        on_bundle = moved.apply(self._corners)
        blanks = on_bundle @ self._turns.transpose(0, 2, 1) + self._shifts[:, None]
        low, high = blanks.min(axis=1), blanks.max(axis=1)
        well = (low >= self._bounds[:, :2]).all(axis=1) & (high <= self._bounds[:, 2:]).all(axis=1)
        good = np.zeros(len(self._cuts), bool)
        good[wanted] = well[self._kinds[wanted]]
        live = good[wanted].all(axis=1)
        if not live.any():
            return live.tolist()
        good[:] = False
        good[wanted[live]] = True
        for k, room in self._bent:
            good[k] = good[k] and room.covers(Polygon(blanks[self._kinds[k]]))
        around, kinds = self._around, self._kinds[self._owner]
        near = (around[:, :2] <= high[kinds]) & (around[:, 2:] >= low[kinds])
        seen: dict[int, Any] = {}  # by kind: cuts of one kind lie alike
        for n in np.flatnonzero(near.all(axis=1) & good[self._owner]):
            k, fault = self._faults[n]
            cut = self._cuts[k]
            if not good[k]:
                continue
            if cut.kind not in seen:
                seen[cut.kind] = (cut.register @ moved).apply_to(cut.seen)
            if _overlap(seen[cut.kind], fault):
                good[k] = False
                if not good[wanted].all(axis=1).any():
                    break
        return good[wanted].all(axis=1).tolist()

    def push(self, moves: Sequence[Motion], top: int) -> np.ndarray:
        """By how much (moves x 2, bundle mm) that top must be shifted after each to lie within the
        rectangles round the usable areas, where that is enough."""
        index = np.unique(self._kinds[self._tops[top]])
        bounds, turns = self._bounds[index], self._turns[index]
        matrices = np.array([m.matrix for m in moves]).reshape(-1, 1, 2, 2)
        on_bundle = self._corners[index] @ matrices.swapaxes(2, 3)
        on_bundle += np.array([(m.dx, m.dy) for m in moves])[:, None, None]
        blanks = on_bundle @ turns.transpose(0, 2, 1) + self._shifts[index, None]
        short = np.maximum(bounds[:, :2] - blanks.min(axis=2), 0.0)
        over = np.maximum(blanks.max(axis=2) - bounds[:, 2:], 0.0)
        back = np.einsum("mki,kij->mkj", short - over, turns)
        return back.max(axis=1).clip(min=0.0) + back.min(axis=1).clip(max=0.0)


@dataclass(frozen=True, eq=False)
class _Shape:
    """What a piece takes of the bundle, drawn at its origin: the corners of the blank (N x 2), and
    what will be seen (shapely)."""

    corners: np.ndarray
    seen: Any

    @staticmethod
    def of(piece: Piece, seen: Any) -> _Shape:
        onto = piece.onto_bundle
        return _Shape(onto.apply(edges.points(piece.blank_edge)), onto.apply_to(seen))

    @property
    def marks(self) -> tuple[Any, ...]:
        """Equal for pieces that take the same."""
        drawn = [self.corners, *(ring[:-1] for ring in outlines(self.seen))]
        marks = (sorted(map(tuple, (np.round(points, 6) + 0.0).tolist())) for points in drawn)
        return tuple(map(tuple, marks))


def _different(shapes: Sequence[_Shape]) -> list[_Shape]:
    """The same shapes; of those that are equal the first for all."""
    first: dict[Any, _Shape] = {}
    return [first.setdefault(shape.marks, shape) for shape in shapes]


@dataclass(frozen=True)
class _Cut:
    """What is taken of a leaf: what will be seen (shapely, at the bundle's origin), and which of
    the different ways to lie on a leaf it is."""

    leaf: int
    register: Motion
    seen: Any
    kind: int


def fault_seen(seen: Any, fault: Any) -> bool:
    """Whether a fault's outline lies in what is seen (both in leaf mm)."""
    return _overlap(seen, plain(fault))


def _overlap(seen: Any, fault: Any) -> bool:
    return bool(seen.intersection(fault).area > TOUCH)


def plain(area: Any) -> Any:
    """An area whose outline may cross itself, as one that does not."""
    return area if area.is_valid else area.buffer(0)


def _stacked(corners: Sequence[np.ndarray]) -> np.ndarray:
    """pieces x N x 2, the last corner repeated where one has fewer."""
    most = max(map(len, corners))
    return np.stack([np.concatenate([c, np.repeat(c[-1:], most - len(c), 0)]) for c in corners])


def _bounds(area: Any) -> tuple[float, float, float, float]:
    return (np.inf, np.inf, -np.inf, -np.inf) if area.is_empty else area.bounds


def _upright(area: Any) -> bool:
    """Whether an area is an upright rectangle, or nothing."""
    x0, y0, x1, y1 = area.bounds or (0.0, 0.0, 0.0, 0.0)
    return bool(area.area >= (x1 - x0) * (y1 - y0) * (1.0 - 1e-12))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The measures of every spot and direction of a bundle, by correlation.

Means over a wedge whose tip lies on a cell are, for all cells at once, one correlation of a map
with the wedge's cells, which the fast Fourier transform gives. The transforms of the maps are made
once, that of the wedge once for every direction.
"""

from __future__ import annotations

import heapq
import os
from collections.abc import Callable, Iterator, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from functools import cached_property
from typing import TypeVar

import numpy as np
from scipy import fft

from veneerwb.core.appeal.maps import Maps, Progress, tell
from veneerwb.core.appeal.measures import UNITS, of_means
from veneerwb.core.plane import Motion
from veneerwb.core.raster import Frame, outlines, within
from veneerwb.core.search.room import THIN, Room
from veneerwb.core.search.task import Task

TURN_STEP = 2.0
"""Degrees between the directions that are tried."""
WELL_SHAPED = 60
"""Cells that a wedge must reach to be known by the centres of cells alone."""
MOST_REFUSED = 30_000
"""Spots that are looked at in vain before the sweep is taken to know of nothing better."""
Picked = TypeVar("Picked")
NONE = -np.inf
"""The score of a spot where no wedge fits."""


@dataclass(frozen=True)
class Sweep:
    """Scores (float32, directions x rows x columns) of a wedge with its tip at the centres of the
    cells of `frame`; `angles` in degrees. Seams are not in them."""

    frame: Frame
    angles: np.ndarray
    scores: np.ndarray

    @cached_property
    def best(self) -> np.ndarray:
        """rows x columns: the best score over all directions, NONE where no wedge fits."""
        return self.scores.max(axis=0)

    def picked(
        self, near: int, turn: int, take: Callable[[int, int, int], Picked | None]
    ) -> Iterator[Picked]:
        """What `take` makes of the best spot (direction, row, column) of each block of `turn`
        directions and `near` x `near` cells; where that is None, of the next best of the block.
        Best first, ties by their place. Ends when `take` refuses MOST_REFUSED in a row."""
        steps = (turn, near, near)
        best = self.scores
        for axis, step in enumerate(steps):
            best = np.maximum.reduceat(best, np.arange(0, best.shape[axis], step), axis=axis)
        blocks = np.flatnonzero(best > NONE)
        # Rounded, so that the same spots come first whatever the last bits of a transform are.
        high = np.round(best.ravel()[blocks].astype(float), 4)
        order = np.argsort(-high, kind="stable")
        fresh = ((-high[n], blocks[n]) for n in order)  # there may be millions
        ahead, refused = next(fresh, None), 0
        again: list[tuple[float, int]] = []
        left: dict[int, Iterator[tuple[float, tuple[int, int, int]]]] = {}
        waiting: dict[int, tuple[int, int, int]] = {}
        while (again or ahead is not None) and refused < MOST_REFUSED:
            if again and (ahead is None or again[0] < ahead):
                _, k = heapq.heappop(again)
            else:
                k, ahead = int(ahead[1]), next(fresh, None)
                index = np.unravel_index(k, best.shape)
                left[k] = _spots(self.scores, tuple(
                    slice(int(i) * n, (int(i) + 1) * n) for i, n in zip(index, steps)))
                waiting[k] = next(left[k])[1]
            made = take(*waiting[k])
            if made is not None:
                del left[k], waiting[k]
                refused = 0
                yield made
                continue
            refused += 1
            score, waiting[k] = next(left[k], (NONE, waiting[k]))
            if score > NONE:
                heapq.heappush(again, (-round(score, 4), k))


def _spots(
    scores: np.ndarray, at: tuple[slice, slice, slice]
) -> Iterator[tuple[float, tuple[int, int, int]]]:
    """Score and place of the spots of a block, best first."""
    part = scores[at]
    flat = np.round(part.ravel().astype(float), 4)
    for place in np.argsort(-flat, kind="stable"):
        index = np.unravel_index(place, part.shape)
        yield float(flat[place]), tuple(int(n) + s.start for n, s in zip(index, at))


def swept(
    task: Task, maps: Maps, room: Room, weights: Mapping[str, float],
    progress: Progress | None = None,
) -> Sweep:
    """Every spot and direction; two threads share the directions. `progress` may stop it."""
    windows = [[n for n, _ in task.used(first)] for first in task.firsts]
    sides = [side for first in task.firsts for side in task.used(first)]
    angles = np.arange(0.0, 360.0, TURN_STEP)
    scores = np.empty((len(angles), *maps.frame.shape), np.float32)
    work = _Directions(task, maps.frame, maps.over(sides), room, windows, weights)
    with ThreadPoolExecutor(min(2, os.cpu_count() or 1)) as workers:
        waiting = [workers.submit(work.into, scores[k], angle) for k, angle in enumerate(angles)]
        try:
            for k, job in enumerate(waiting):
                job.result()
                tell(progress, k + 1, len(angles), "")
        finally:
            for job in waiting:
                job.cancel()
    return Sweep(maps.frame, angles, scores)


_Shape = list[np.ndarray]
"""Closed outlines and holes, N x 2 each."""


class _Directions:
    """Scores of all spots in one direction."""

    def __init__(
        self, task: Task, frame: Frame, mean: np.ndarray, room: Room, windows: list[list[int]],
        weights: Mapping[str, float],
    ) -> None:
        self._frame = frame
        net, blank, seen = task.shapes
        self._hides = blank.symmetric_difference(seen).area > 1.0
        # As plain points: shapely 1.8 does not bear two threads.
        self._net = [outlines(shape) for shape in net]
        self._blank, self._seen = outlines(blank), outlines(seen)
        self._weights = weights
        self._parts = int(np.clip(np.ceil(WELL_SHAPED * frame.cell / task.top.reach), 1, 4))
        self._size = tuple(fft.next_fast_len(n, real=True) for n in frame.shape)
        self._maps = self._transformed(np.ascontiguousarray(np.moveaxis(mean, -1, 0)))
        off, faults = room.never(windows, "off"), room.never(windows, "faults")
        self._bars = [self._transformed(b) for b in self._barred(off, faults)]
        self._shapes = [self._blank, self._seen] if self._hides else [self._blank]
        thin = room.never(windows, "thin")
        if thin.any():
            self._bars.append(self._transformed(thin))
            # A little more than THIN, so that what it reaches of a fault is truly seen.
            self._shapes.append(outlines(seen.buffer(-(THIN + 0.03) * frame.cell)))

    def _barred(self, off: np.ndarray, faults: np.ndarray) -> tuple[np.ndarray, ...]:
        """What bars the blank, and what bars what is seen: one map where these are the same."""
        return (off, faults) if self._hides else (np.maximum(off, faults),)

    def _transformed(self, values: np.ndarray) -> np.ndarray:
        """Transforms of maps (... x rows x columns), rows last to come back: see `_sums`."""
        return fft.rfft2(values, self._size[::-1], axes=(-1, -2))

    def into(self, out: np.ndarray, angle: float) -> None:
        """Fills `out` with the scores for axes in that direction."""
        out[...] = NONE
        place = self._inside(angle)
        if place is None:
            return
        free = None
        for shape, barred in zip(self._shapes, self._bars):
            clear = self._sums(barred, self._cells([shape], angle), place) < 0.5
            free = clear if free is None else free & clear
            if not free.any():
                return
        cells = self._cells(self._net, angle, self._parts)
        means = self._sums(self._maps, cells, place)[:, free] / cells.sum()
        contrast, variety = of_means(means)
        out[place][free] = (
            self._weights["contrast"] * contrast / UNITS["contrast"]
            + self._weights["variety"] * variety / UNITS["variety"]
        )

    def _inside(self, angle: float) -> tuple[slice, slice] | None:
        """Rows and columns of tips whose wedge lies within the grid."""
        drawn = np.concatenate(turned(self._blank, angle))
        (x0, y0), (x1, y1) = drawn.min(axis=0), drawn.max(axis=0)
        cell, (rows, columns) = self._frame.cell, self._frame.shape
        # Centres of cells: a wedge may reach half a cell beyond the outermost.
        low = [max(0, int(np.ceil(-n / cell - 0.5 - 1e-9))) for n in (y0, x0)]
        high = [
            min(count, count - int(np.ceil(n / cell - 0.5 - 1e-9)))
            for n, count in ((y1, rows), (x1, columns))
        ]
        if low[0] >= high[0] or low[1] >= high[1]:
            return None
        return slice(low[0], high[0]), slice(low[1], high[1])

    def _cells(self, shapes: Sequence[_Shape], angle: float, parts: int = 1) -> np.ndarray:
        """How far shapes cover a cell (see `cells_of`), summed, the tip on the centre of the cell
        (0, 0), cells before it at the end of the grid."""
        rows, columns = self._size
        out = np.zeros((rows, columns), np.float32)
        for shape in shapes:
            row, column, share = cells_of(turned(shape, angle), self._frame.cell, parts)
            out[row % rows, column % columns] += share  # it fits the grid: a cell comes once
        return out

    def _sums(
        self, transformed: np.ndarray, cells: np.ndarray, place: tuple[slice, slice]
    ) -> np.ndarray:
        """Sums of maps over the cells, for tips on the cells of `place` (rows, columns): only
        columns in it are brought back to the end."""
        rows, columns = place
        product = transformed * np.conj(self._transformed(cells))
        wanted = fft.ifft(product, axis=-1, overwrite_x=True)[..., columns]
        return fft.irfft(wanted, self._size[0], axis=-2)[..., rows, :]


def turned(shape: _Shape, angle: float) -> _Shape:
    motion = Motion(angle)
    return [motion.apply(ring) for ring in shape]


def cells_of(
    shape: _Shape, cell: float, parts: int = 1
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Rows and columns, counted from the cell on whose centre the origin lies, of the cells that a
    shape covers, and the share of each that it does: by its centre, or by those of parts x parts
    parts of it."""
    points = np.concatenate([*shape, np.zeros((0, 2))])
    if not len(points):
        return np.zeros(0, int), np.zeros(0, int), np.zeros(0, np.float32)
    (x0, y0), (x1, y1) = points.min(axis=0), points.max(axis=0)
    left, low = int(np.floor(x0 / cell)) - 1, int(np.floor(y0 / cell)) - 1
    rows, columns = int(np.ceil(y1 / cell)) + 2 - low, int(np.ceil(x1 / cell)) + 2 - left
    size = (rows * parts, columns * parts)
    inside = within(shape, Frame((left - 0.5) * cell, (low - 0.5) * cell, cell / parts, size))
    share = inside.reshape(rows, parts, columns, parts).mean(axis=(1, 3), dtype=np.float32)
    row, column = np.nonzero(share)
    return row + low, column + left, share[row, column]

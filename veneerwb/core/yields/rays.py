# SPDX-License-Identifier: LGPL-2.1-or-later
"""Spots worth growing from: how far one sees from every cell of a leaf before something bars.

A wedge reaches as far as the nearest bar within its angle. The distances are found once for every
leaf, by shearing its grid so that rays of one direction are columns; for a top the distances on
its leaves are taken together, and for any number of ways the least within the angle.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from shapely.ops import unary_union

from veneerwb.core.appeal.maps import Progress, tell
from veneerwb.core.raster import Frame, covered
from veneerwb.core.yields.growing import Grown
from veneerwb.core.yields.places import Place, Places
from veneerwb.core.yields.wedge import Wedge

TURN = 2.5
"""Degrees between rays."""
CELLS = 4000
"""About so many cells make up a leaf."""
SPOTS = 8
"""Spots grown for each number of ways."""
NEAR, NEAR_TURN = 0.15, 15.0
"""Two spots are one within that share of the reach and so many degrees."""
PARTS = 4
"""Distances are kept in so many parts of a cell."""
MOST_PARTS = np.iinfo(np.uint16).max


class Rays:
    """How far finished wedges may reach: uint16 sheets x directions x rows x columns, in parts of a
    cell."""

    def __init__(
        self, places: Places, oversize: float, hidden: float, progress: Progress | None = None
    ) -> None:
        """oversize: mm that blanks reach further; hidden: mm from the tip within which a fault is
        not seen."""
        bounds = np.array([area.bounds for area in places.areas if not area.is_empty])
        low, high = bounds[:, :2].min(axis=0), bounds[:, 2:].max(axis=0)
        cell = max(0.1, float(np.sqrt(np.prod(high - low) / CELLS)))
        columns, rows = (max(1, int(np.ceil(n))) for n in (high - low) / cell)
        self.frame = Frame(float(low[0]), float(low[1]), cell, (rows, columns))
        off = np.array([~covered(area, self.frame) for area in places.areas])
        # Wider by half a cell, so that none slips between cells and rays.
        marks = np.array([
            covered(unary_union([p.buffer(0.5 * cell) for p in faults]), self.frame)
            for faults in places.faults
        ])
        self.angles = np.arange(0.0, 360.0, TURN)
        self._known: dict[tuple[int, ...], np.ndarray] = {}
        self._sizes = np.empty((len(off), len(self.angles), rows, columns), np.uint16)
        same = not oversize and not hidden
        less = np.uint16(round(oversize / cell * PARTS))
        for k, angle in enumerate(self.angles):
            tell(progress, k, len(self.angles), "")
            free = self._seen(off | marks if same else off, angle, 0.0)
            self._sizes[:, k] = np.maximum(free, less) - less
            if not same and marks.any():
                clear = self._seen(marks, angle, hidden / cell)
                np.minimum(self._sizes[:, k], clear, out=self._sizes[:, k])

    def _seen(self, barred: np.ndarray, angle: float, start: float) -> np.ndarray:
        """Distances in one direction; bars nearer than `start` cells do not count."""
        dx, dy = np.cos(np.radians(angle)), np.sin(np.radians(angle))
        crosswise = abs(dx) > abs(dy)
        grid, up, across = (barred.swapaxes(1, 2), dx, dy) if crosswise else (barred, dy, dx)
        grid = grid[:, ::-1] if up < 0 else grid
        out = _sheared(grid, across / abs(up), 1.0 / abs(up), start)
        out = out[:, ::-1] if up < 0 else out
        return out.swapaxes(1, 2) if crosswise else out

    def _over(self, sheets: tuple[int, ...]) -> np.ndarray:
        """directions x rows x columns: the least of those sheets."""
        for more in range(3):  # of the ways before, most are known
            if sheets[: len(sheets) - more] in self._known:
                out = self._known[sheets[: len(sheets) - more]]
                break
        else:
            out, more = self._sizes[sheets[0]], len(sheets) - 1
        for k in sheets[len(sheets) - more :]:
            out = np.minimum(out, self._sizes[k])
        return out

    def seeds(self, wedge: Wedge, places: Sequence[Place]) -> list[Grown]:
        """The spots where the largest wedges seem to lie, each on the places where it is best."""
        self._known = {place.sheets: self._over(place.sheets) for place in places}
        sizes = np.array([_within(self._known[place.sheets], wedge) for place in places])
        best = sizes.max(axis=0)
        x, y = self.frame.centres()
        unit = self.frame.cell / PARTS
        found = []
        for _ in range(SPOTS):
            k, row, column = np.unravel_index(int(best.argmax()), best.shape)
            reach = float(best[k, row, column]) * unit
            if reach < self.frame.cell:
                break
            here = sizes[:, k, row, column]
            # The earliest leaf of those that are best by a cell's worth.
            place = places[int(np.argmax(here + PARTS // 2 >= here.max()))]
            at = Grown(float(x[column]), float(y[row]), float(self.angles[k]), reach, place.first)
            found.append(at)
            turn = np.abs((self.angles - at.angle + 180.0) % 360.0 - 180.0) <= NEAR_TURN
            near = np.hypot(x - at.x, (y - at.y)[:, None]) <= max(NEAR * reach, 1.5 * unit * PARTS)
            best[np.ix_(turn, *(range(n) for n in near.shape))] *= ~near
        return found


def _sheared(grid: np.ndarray, slant: float, long: float, start: float) -> np.ndarray:
    """Distances up the rows of `grid` (sheets x rows x columns), a ray moving `slant` columns and
    being `long` cells for every row."""
    _, rows, columns = grid.shape
    shift = np.arange(rows) * slant
    left = int(np.floor(-max(0.0, shift[-1]))) - 1
    lanes = np.arange(left, columns + int(np.ceil(max(0.0, -shift[-1]))) + 1)
    column = np.rint(lanes + shift[:, None]).astype(int)
    outside = (column < 0) | (column >= columns)
    barred = grid[:, np.arange(rows)[:, None], np.clip(column, 0, columns - 1)] | outside
    nearest = np.where(barred, np.arange(rows, dtype=np.int16)[:, None], np.int16(rows))
    nearest = np.minimum.accumulate(nearest[:, ::-1], axis=1)[:, ::-1]
    nearest = np.concatenate([nearest, np.full_like(nearest[:, :1], rows)], axis=1)
    skipped = np.minimum(np.arange(rows) + int(start / long), rows)[:, None]
    lane = np.rint(np.arange(columns) - shift[:, None]).astype(int) - left
    away = (nearest[:, skipped, lane] - np.arange(rows)[:, None]) * long - 0.5
    return np.clip(np.rint(away * PARTS), 0, MOST_PARTS).astype(np.uint16)


def _within(seen: np.ndarray, wedge: Wedge) -> np.ndarray:
    """uint16: how far a wedge reaches in each direction."""
    half = wedge.half_angle
    width = int(half / TURN)
    turns = np.arange(-width, width + 1)
    rim = _rim(wedge, turns * TURN)
    if rim.min() > 0.97 * wedge.reach:
        return _least(seen, width)
    out = np.full(seen.shape, np.inf, np.float32)
    for turn, reach in zip(turns, rim):
        # np.roll by -turn: what is seen `turn` steps on.
        np.minimum(out, np.roll(seen, -turn, axis=0) * np.float32(wedge.reach / reach), out=out)
    return np.minimum(out, MOST_PARTS).astype(np.uint16)


def _least(values: np.ndarray, width: int) -> np.ndarray:
    """The least of the `width` directions to both sides, by doubling."""
    count = 2 * width + 1
    out = np.concatenate([values[len(values) - width :], values, values[:width]])
    have = 1
    while have < count:
        step = min(have, count - have)
        out = np.minimum(out[: len(out) - step], out[step:])
        have += step
    return out


def _rim(wedge: Wedge, turns: np.ndarray) -> np.ndarray:
    """How far the wedge itself reaches in those directions from its axis."""
    normals, corners = np.radians(turns), wedge.blank * (wedge.reach / wedge.grown)
    ahead, behind = np.roll(corners, -1, axis=0), corners
    u = np.column_stack([np.cos(normals), np.sin(normals)])
    cross = lambda a, b: a[..., 0] * b[..., 1] - a[..., 1] * b[..., 0]  # noqa: E731
    edge = ahead - behind
    with np.errstate(divide="ignore", invalid="ignore"):
        far = cross(behind, edge) / cross(u[:, None], edge[None])
        share = cross(behind[None], u[:, None]) / cross(u[:, None], edge[None])
    hit = (share >= -1e-6) & (share <= 1.0 + 1e-6) & np.isfinite(far)
    return np.maximum(np.where(hit, far, 0.0).max(axis=1), 1e-3 * wedge.reach)

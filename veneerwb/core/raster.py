# SPDX-License-Identifier: LGPL-2.1-or-later
"""Areas on grids of square cells: a cell is covered where its centre lies inside.

Row 0 is at the bottom, so that rows run with y; the cell (row i, column j) of a grid that starts at
(x0, y0) has its centre at x0 + (j + 0.5) cell, y0 + (i + 0.5) cell.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np


@dataclass(frozen=True)
class Frame:
    """A grid in the plane: its lower left corner (mm), the size of a cell (mm), rows and columns.
    """

    x0: float
    y0: float
    cell: float
    shape: tuple[int, int]

    def centres(self) -> tuple[np.ndarray, np.ndarray]:
        """x of the columns and y of the rows, in mm."""
        rows, columns = self.shape
        x = self.x0 + (np.arange(columns) + 0.5) * self.cell
        return x, self.y0 + (np.arange(rows) + 0.5) * self.cell

    def places(self, points: np.ndarray) -> np.ndarray:
        """Columns and rows (N x 2, with fractions; whole at centres of cells) of points in mm."""
        return (points - (self.x0, self.y0)) / self.cell - 0.5


def covered(area: Any, frame: Frame) -> np.ndarray:
    """bool, rows x columns: the cells whose centre lies in `area` (shapely polygons, mm)."""
    return within(outlines(area), frame)


def within(rings: Sequence[np.ndarray], frame: Frame) -> np.ndarray:
    """bool, rows x columns: the cells whose centre lies within closed outlines (N x 2 each, mm, the
    first point repeated at the end), holes among them.

    Along every row the outlines are crossed from left to right, and what lies behind an odd number
    of crossings is inside.
    """
    rows, columns = frame.shape
    places = [frame.places(ring) for ring in rings]
    begun = np.concatenate([at[:-1] for at in places]) if places else np.zeros((0, 2))
    ended = np.concatenate([at[1:] for at in places]) if places else begun
    low, high = np.minimum(begun[:, 1], ended[:, 1]), np.maximum(begun[:, 1], ended[:, 1])
    first, last = (np.ceil(n).clip(0, rows).astype(int) for n in (low, high))
    times = last - first
    edge = np.repeat(np.arange(len(times)), times)  # once for every row that it crosses
    row = np.arange(len(edge)) - np.repeat(np.cumsum(times) - times - first, times)
    xa, ya = begun[edge].T
    xb, yb = ended[edge].T
    column = np.ceil(xa + (row - ya) * ((xb - xa) / (yb - ya))).clip(0, columns).astype(int)
    crossed = np.bincount(row * (columns + 1) + column, minlength=rows * (columns + 1))
    behind = np.cumsum(crossed.reshape(rows, columns + 1), axis=1)
    return (behind[:, :columns] & 1).astype(bool)


def outlines(area: Any) -> list[np.ndarray]:
    """The outlines of polygons and those of their holes, N x 2 each, closed."""
    parts = [p for p in getattr(area, "geoms", [area]) if p.geom_type == "Polygon"]
    rings = (ring for p in parts if not p.is_empty for ring in (p.exterior, *p.interiors))
    return [np.asarray(ring.coords)[:, :2] for ring in rings]

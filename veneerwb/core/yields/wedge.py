# SPDX-License-Identifier: LGPL-2.1-or-later
"""The wedge that is cut for a top, at any size, by how far it reaches in each direction."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
from shapely.geometry import Polygon

from veneerwb.core.search.task import Task


@dataclass(frozen=True, eq=False)
class Wedge:
    """The convex hulls of blank and of what is seen (N x 2, mm; tip at the origin, axis along x)
    of a top that reaches `reach`, its blanks `grown`.

    Round tops and regular polygons keep their shape as they grow: of a top that reaches r the blank
    is these points times (r + grown - reach) / grown, what is seen (and what covers the top, which
    is taken to grow with it) times r / reach.
    """

    blank: np.ndarray
    seen: np.ndarray
    reach: float
    grown: float
    bare: float

    @staticmethod
    def of(task: Task) -> Wedge:
        _, blank, seen = task.shapes
        bare, reach = blank, task.top.reach
        if task.recipe.oversize:
            bare = replace(task, recipe=replace(task.recipe, oversize=0.0)).shapes[1]
        far = [max(reach, *np.hypot(*_corners(area).T).tolist()) for area in (blank, bare)]
        return Wedge(_corners(blank), _corners(seen), reach, *far)

    @property
    def oversize(self) -> float:
        return self.grown - self.bare

    @property
    def longer(self) -> float:
        return self.bare / self.reach

    @cached_property
    def half_angle(self) -> float:
        """Degrees from the axis to the outer side of the blank."""
        away = self.blank[np.hypot(*self.blank.T) > 1e-6 * self.grown]
        return float(np.degrees(np.abs(np.arctan2(away[:, 1], away[:, 0])).max()))

    def lines(
        self, normals: np.ndarray, angles: np.ndarray, limits: np.ndarray, faults: np.ndarray
    ) -> tuple[np.ndarray, np.ndarray]:
        """Rises and limits (B x M) of `program.largest` for wedges at `angles` (B, degrees) kept
        behind lines (normals B x M x 2, limits B x M); `faults` (bool, M) says which lines only
        what is seen must keep to."""
        along, across = _turned_back(normals, angles)
        rises, least = np.empty(limits.shape), np.zeros(limits.shape)
        if not faults.all():
            most = _support(*self._blank, along[:, ~faults], across[:, ~faults])
            rises[:, ~faults] = most * (self.longer / self.grown)
            least[:, ~faults] = most * (self.oversize / self.grown)
        if faults.any():
            most = _support(*self._seen, along[:, faults], across[:, faults])
            rises[:, faults] = most / self.reach
        return rises, limits - least

    @cached_property
    def _blank(self) -> tuple[np.ndarray, np.ndarray]:
        return self.blank, _outward(self.blank)

    @cached_property
    def _seen(self) -> tuple[np.ndarray, np.ndarray]:
        return self.seen, _outward(self.seen)

    @cached_property
    def sides(self) -> np.ndarray:
        """Outward directions (degrees from the axis) of the edges of the blank and of what is
        seen, a few of those along a rim."""
        found = []
        for corners in (self.blank, self.seen):
            edges = np.diff(np.vstack([corners, corners[:1]]), axis=0)
            turns = np.degrees(np.arctan2(-edges[:, 0], edges[:, 1]))
            long = np.hypot(*edges.T) > 0.05 * self.reach
            found += [turns[long], turns[~long][:: max(1, int((~long).sum()) // 12)]]
        return np.unique(np.round(np.concatenate(found), 6))


def _corners(area: Polygon) -> np.ndarray:
    """Those of the convex hull, counter-clockwise."""
    if area.is_empty:  # all is covered
        return np.zeros((1, 2))
    ring = np.asarray(area.convex_hull.exterior.coords)[:-1, :2]
    x, y = ring.T
    return ring if np.dot(x, np.roll(y, -1)) > np.dot(y, np.roll(x, -1)) else ring[::-1]


def _turned_back(normals: np.ndarray, angles: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    c, s = np.cos(np.radians(angles))[:, None], np.sin(np.radians(angles))[:, None]
    x, y = normals[..., 0], normals[..., 1]
    return c * x + s * y, c * y - s * x


def _outward(corners: np.ndarray) -> np.ndarray:
    """The directions (radians, rising) square to the edges of a convex outline."""
    edges = np.roll(corners, -1, axis=0) - corners
    return np.unwrap(np.arctan2(-edges[:, 0], edges[:, 1]))


def _support(
    corners: np.ndarray, turns: np.ndarray, along: np.ndarray, across: np.ndarray
) -> np.ndarray:
    """How far a convex outline reaches in each direction: its corner there is found by the
    directions of the edges that meet at it (`_outward`)."""
    wanted = (np.arctan2(across, along) - turns[0]) % (2.0 * np.pi)
    corner = (np.searchsorted(turns - turns[0], wanted) % len(corners)).astype(np.intp)
    return along * corners[corner, 0] + across * corners[corner, 1]


def outer(corners: np.ndarray, sides: np.ndarray) -> np.ndarray:
    """The outline of few corners round a convex outline, its sides square to the directions given
    (degrees) and touching it."""
    normals = np.stack([np.cos(np.radians(sides)), np.sin(np.radians(sides))], axis=1)
    limits = (normals @ corners.T).max(axis=1)
    ahead = np.roll(np.arange(len(sides)), -1)
    pairs = np.stack([normals, normals[ahead]], axis=1)
    found = np.linalg.solve(pairs, np.stack([limits, limits[ahead]], axis=1)[..., None])
    return found[..., 0]


def summed(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    """The Minkowski sum of two convex outlines (or a straight of two points): from the lowest
    corner on, the edges of both in order of their directions."""
    begun, edges = np.zeros(2), []
    for corners in (a, b):
        lowest = corners[np.lexsort(corners.T)[0]]
        along = np.diff(np.vstack([corners, corners[:1]]), axis=0)
        turning = along[:-1, 0] * along[1:, 1] - along[:-1, 1] * along[1:, 0]
        edges.append(along if turning.sum() >= 0.0 else -along)
        begun = begun + lowest
    run = np.concatenate(edges)
    run = run[np.hypot(*run.T) > 0.0]
    turns = np.arctan2(run[:, 1], run[:, 0]) % (2.0 * np.pi)
    return begun + np.cumsum(run[np.argsort(turns, kind="stable")], axis=0)

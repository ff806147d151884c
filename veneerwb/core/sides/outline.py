# SPDX-License-Identifier: LGPL-2.1-or-later
"""One leaf's outline on two photographs: the rigid motions under which it lies on itself.

Points along the first outline are drawn to the nearest of the second, square to its edge (Chen &
Medioni, Image and Vision Computing 10(3), 1992), with Tukey's weights, so that a torn corner or
what a shadow adds counts for nothing. A leaf is nearly a rectangle: the motions come in twos, end
for end.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

import numpy as np
from scipy.ndimage import uniform_filter1d
from scipy.spatial import cKDTree

from veneerwb.core.plane import Motion

STEP = 1.0
"""mm from point to point along an outline."""
FURTHEST = 10.0
"""mm: a point of an outline that is further off counts as that far."""
AGREE = 3.0
"""mm: points of two outlines that lie further apart do not agree."""
SQUARISH = 1.3
"""An outline that is fewer times longer than wide may also lie across."""
_TANGENT = 5.0  # mm along which the direction of an edge is taken
_BLOCK = 25.0  # mm: errors of an outline further apart are taken to be independent
_FRAME = 2.0  # mm from the picture's edge: what ends there was cut off by it
_ROUNDS = 60
_STILL = 1e-4  # mm
_SPREADS = 4.685  # Tukey's biweight, 95 % efficient for normal errors


@dataclass(frozen=True)
class Fit:
    """`motion` lays the first outline on the second. `rms` (mm) is how far they lie apart where
    they agree, `share` how much of the first does, `misfit` the rms over all of it, each point
    FURTHEST at most. `error_mm` and `error_deg`: standard errors of the middle (the worse
    direction) and of the turn, from how the residuals scatter."""

    motion: Motion
    rms: float
    share: float
    misfit: float
    error_mm: float
    error_deg: float


@dataclass(frozen=True)
class Edge:
    """Points along an outline, STEP apart, and the directions square to it (N x 2 each)."""

    points: np.ndarray
    normals: np.ndarray
    box: tuple[float, float, float]
    """Middle x, y and the angle (degrees) of the long side of the least rectangle round it."""
    slimness: float

    @staticmethod
    def of(outline: Any, frame: tuple[float, float] | None = None) -> Edge:
        """The edge of a polygon (mm); with `frame` (width, length of the photo) without what lies
        along the photo's own edge."""
        ring = np.asarray(outline.exterior.coords)[:, :2]
        gone = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(ring, axis=0).T))])
        at = np.arange(0.0, gone[-1], gone[-1] / max(16, round(gone[-1] / STEP)))[:, None]
        points = np.column_stack([np.interp(at[:, 0], gone, ring[:, k]) for k in (0, 1)])
        wide = max(3, round(_TANGENT / STEP))
        along = uniform_filter1d(np.gradient(points, axis=0), wide, axis=0, mode="wrap")
        along[[0, -1]] = along[[1, -2]]
        along /= np.maximum(np.hypot(*along.T), 1e-9)[:, None]
        normals = np.column_stack([along[:, 1], -along[:, 0]])
        if frame is not None:
            clear = ((points > _FRAME) & (points < np.array(frame) - _FRAME)).all(axis=1)
            points, normals = points[clear], normals[clear]
        return Edge(points, normals, *_box(outline))


def _box(outline: Any) -> tuple[tuple[float, float, float], float]:
    corners = np.asarray(outline.minimum_rotated_rectangle.exterior.coords)[:4]
    sides = np.diff(corners[:3], axis=0)
    lengths = np.hypot(*sides.T)
    x, y = corners.mean(axis=0)
    dx, dy = sides[lengths.argmax()]
    angle = math.degrees(math.atan2(dy, dx))
    return (float(x), float(y), angle), float(lengths.max() / max(lengths.min(), 1e-9))


def fits(first: Edge, second: Edge) -> list[Fit]:
    """The motions from the first outline to the second, one for each way round that it may lie; the
    least misfit first, ties by the smaller turn."""
    turns = (0, 180) if max(first.slimness, second.slimness) > SQUARISH else (0, 90, 180, 270)
    tree = cKDTree(second.points)
    (x, y, angle), (to_x, to_y, to_angle) = first.box, second.box
    found = []
    for turn in turns:
        lying = Motion(to_angle - angle + turn)
        dx, dy = np.array((to_x, to_y)) - lying.apply((x, y))
        found.append(_settled(first, second, tree, Motion(lying.angle, float(dx), float(dy))))
    return sorted(found, key=lambda fit: (round(fit.misfit, 3), abs(fit.motion.angle)))


def _settled(first: Edge, second: Edge, tree: cKDTree, motion: Motion) -> Fit:
    middle = first.points.mean(axis=0)
    for done in range(_ROUNDS):
        off, slopes = _residuals(first, second, tree, motion, middle)
        # The start is a few millimetres off, and then no point is an outlier yet.
        weights = _weights(off, least=FURTHEST if done < 5 else 0.1)
        step = np.linalg.solve(_normal(slopes, weights), slopes.T @ (weights * off))
        at = motion.apply(middle)
        turn = Motion.turn_about(*at, -math.degrees(step[2]))
        motion = Motion(dx=-step[0], dy=-step[1]) @ turn @ motion
        if done > 5 and np.abs(step * (1, 1, np.abs(first.points - middle).max())).max() < _STILL:
            break
    off, slopes = _residuals(first, second, tree, motion, middle)
    weights = _weights(off, least=0.1)
    agree = (weights > 0.1) & (np.abs(off) < AGREE)
    rms = math.sqrt(float(np.mean(off[agree if agree.any() else slice(None)] ** 2)))
    apart = np.minimum(tree.query(motion.apply(first.points))[0], FURTHEST)
    inverse = np.linalg.inv(_normal(slopes, weights))
    pulls = slopes * (weights * off)[:, None]
    blocks = range(0, len(pulls), max(1, round(_BLOCK / STEP)))
    sums = np.add.reduceat(pulls, blocks, axis=0)
    spread = inverse @ (sums.T @ sums) @ inverse
    return Fit(
        motion, rms, float(agree.mean()), math.sqrt(float(np.mean(apart**2))),
        math.sqrt(float(np.linalg.eigvalsh(spread[:2, :2])[-1])),
        math.degrees(math.sqrt(float(spread[2, 2]))),
    )


def _residuals(
    first: Edge, second: Edge, tree: cKDTree, motion: Motion, middle: np.ndarray
) -> tuple[np.ndarray, np.ndarray]:
    """How far each point lies beyond the second outline, and how that changes with dx, dy and a
    turn (radians) about the middle."""
    points = motion.apply(first.points)
    nearest = tree.query(points)[1]
    normals = second.normals[nearest]
    off = ((points - second.points[nearest]) * normals).sum(axis=1)
    arm = points - motion.apply(middle)
    swing = arm[:, 0] * normals[:, 1] - arm[:, 1] * normals[:, 0]
    return off, np.column_stack([normals, swing])


def _weights(off: np.ndarray, least: float) -> np.ndarray:
    limit = _SPREADS * max(least, 1.4826 * float(np.median(np.abs(off))))
    return np.clip(1 - (off / limit) ** 2, 0, None) ** 2


def _normal(slopes: np.ndarray, weights: np.ndarray) -> np.ndarray:
    ridge = 1e-9 * len(slopes) * np.eye(3)
    return slopes.T @ (weights[:, None] * slopes) + ridge

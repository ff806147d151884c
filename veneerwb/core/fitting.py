# SPDX-License-Identifier: LGPL-2.1-or-later
"""The motion that takes points to points best, rigid or with a scale."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import Motion

NEAREST = 1.0
"""mm: points that all lie within this tell no turn."""


@dataclass(frozen=True)
class Scaled:
    """p -> scale R(angle) p + (dx, dy), angle and offset those of `motion`."""

    scale: float
    motion: Motion

    def apply(self, points: Any) -> np.ndarray:
        return self.motion.apply(self.scale * np.asarray(points, float))


def rigid(from_points: Any, to_points: Any, weights: Any = None) -> tuple[Motion, float]:
    """The motion M of least sum w |M(a) - b|^2 and the root of that sum over the sum of weights.

    `from_points` a and `to_points` b, N x 2 in mm; `weights` w, N, not negative. Never mirrored.
    With a, b measured from their weighted means, the turn is atan2(sum w a x b, sum w a . b) (the
    least-squares rotation of the plane). Raises VeneerError for fewer than two points, lists of
    different length, numbers that are none, and points that all lie in one place.
    """
    a, b, w = _paired(from_points, to_points, weights)
    motion = _fitted(a, b, w, scaled=False).motion
    left = motion.apply(a) - b
    return motion, math.sqrt(float(w @ (left**2).sum(axis=1)))


def similar(from_points: Any, to_points: Any, weights: Any = None) -> Scaled:
    """The same with a scale of its own: that is the length of (sum w a . b, sum w a x b) over
    sum w a . a, which makes the sum least for any turn."""
    return _fitted(*_paired(from_points, to_points, weights), scaled=True)


def _paired(from_points: Any, to_points: Any, weights: Any) -> tuple[np.ndarray, ...]:
    """Points and weights that can be fitted, the weights' sum 1."""
    a, b = (np.asarray(p, dtype=float).reshape(-1, 2) for p in (from_points, to_points))
    w = np.ones(len(a)) if weights is None else np.asarray(weights, dtype=float).ravel()
    if not len(a) == len(b) == len(w):
        raise VeneerError(
            "unpaired-points",
            "There are {here} marks on one side and {there} on the other; give the same marks, in "
            "the same order.",
            here=len(a), there=len(b),
        )
    if not all(np.isfinite(part).all() for part in (a, b, w)) or (w < 0).any():
        raise VeneerError("not-a-number", "The place of a mark is no number; mark it again.")
    if (w > 0).sum() < 2:
        raise VeneerError(
            "too-few-marks", "{count} marks do not tell how the leaf is turned; give two or more.",
            count=int((w > 0).sum()),
        )
    return a, b, w / w.sum()


def _fitted(a: np.ndarray, b: np.ndarray, w: np.ndarray, scaled: bool) -> Scaled:
    middle_a, middle_b = w @ a, w @ b
    off_a, off_b = a - middle_a, b - middle_b
    spread = float(w @ (off_a**2).sum(axis=1))
    if math.sqrt(min(spread, w @ (off_b**2).sum(axis=1))) < NEAREST / 2:
        raise VeneerError(
            "marks-in-one-place",
            "The marks lie in one place and do not tell how the leaf is turned; take marks that "
            "lie further apart.",
        )
    dot = float(w @ (off_a * off_b).sum(axis=1))
    cross = float(w @ (off_a[:, 0] * off_b[:, 1] - off_a[:, 1] * off_b[:, 0]))
    scale = math.hypot(dot, cross) / spread if scaled else 1.0
    turn = Motion(math.degrees(math.atan2(cross, dot)))
    dx, dy = middle_b - turn.apply(scale * middle_a)
    return Scaled(scale, Motion(turn.angle, float(dx), float(dy)))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The rigid motion that takes points to points best."""

from __future__ import annotations

import math
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import Motion

NEAREST = 1.0
"""mm: points that all lie within this tell no turn."""


def rigid(from_points: Any, to_points: Any, weights: Any = None) -> tuple[Motion, float]:
    """The motion M of least sum w |M(a) - b|^2 and the root of that sum over the sum of weights.

    `from_points` a and `to_points` b, N x 2 in mm; `weights` w, N, not negative. Never mirrored.
    With a, b measured from their weighted means, the turn is atan2(sum w a x b, sum w a . b) (the
    least-squares rotation of the plane). Raises VeneerError for fewer than two points, lists of
    different length, numbers that are none, and points that all lie in one place.
    """
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
    w = w / w.sum()
    middle_a, middle_b = w @ a, w @ b
    off_a, off_b = a - middle_a, b - middle_b
    if min(math.sqrt(w @ (off**2).sum(axis=1)) for off in (off_a, off_b)) < NEAREST / 2:
        raise VeneerError(
            "marks-in-one-place",
            "The marks lie in one place and do not tell how the leaf is turned; take marks that "
            "lie further apart.",
        )
    dot = w @ (off_a * off_b).sum(axis=1)
    cross = w @ (off_a[:, 0] * off_b[:, 1] - off_a[:, 1] * off_b[:, 0])
    turn = Motion(math.degrees(math.atan2(cross, dot)))
    dx, dy = middle_b - turn.apply(middle_a)
    motion = Motion(turn.angle, float(dx), float(dy))
    left = motion.apply(a) - b
    return motion, math.sqrt(float(w @ (left**2).sum(axis=1)))

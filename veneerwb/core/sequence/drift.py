# SPDX-License-Identifier: LGPL-2.1-or-later
"""The drift of the figure through a bundle: what its registers have in common, leaf after leaf.

The register of a face holds the shift of its photograph, which is any number, and the wander of the
figure, which adds up. One by one they cannot be told apart; but what grows steadily from leaf to
leaf is the wander. It is fitted by a line, or a parabola where that is clearly needed, with
Huber's weights (P. J. Huber, Robust Statistics, 1981), so that a leaf laid down far off pulls
little.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from veneerwb.core.plane import Motion

CLEAR = 3.0
"""Standard errors that a drift must reach to be more than chance."""
LEAST_LEAVES, LEAST_TO_BEND = 5, 10
"""Leaves from which on a drift is looked for, and a drift that grows."""
_HUBER = 1.345  # the usual tuning: as good as least squares, all but 5 %, where nothing is astray
_ROUNDS = 12

Place = tuple[float, float]


@dataclass(frozen=True)
class Drift:
    """mm across and along, in the bundle: `per_leaf` at the first leaf and `growth` of that from
    each leaf to the next (0 unless clear), `error` the standard error of the mean drift per leaf,
    `clear` which of the two directions drift more than by chance."""

    per_leaf: Place
    growth: Place
    error: Place
    clear: tuple[bool, bool]

    def after(self, steps: float) -> Place:
        """mm that the figure has gone after so many leaves, where that is clear; else 0."""
        x, y = (
            (v * steps + g * steps * steps / 2) if clear else 0.0
            for v, g, clear in zip(self.per_leaf, self.growth, self.clear)
        )
        return x, y


def drifted(registers: Mapping[int, Motion], middle: Place) -> Drift | None:
    """The drift that these registers (bundle mm to leaf mm, by leaf number) share at `middle` (mm);
    None for too few leaves."""
    numbers = sorted(registers)
    if len(numbers) < LEAST_LEAVES:
        return None
    steps = np.array([n - numbers[0] for n in numbers], float)
    places = np.array([shifted(registers[n], middle) for n in numbers])
    fits = [_fitted(steps, places[:, k]) for k in (0, 1)]
    per_leaf, growth, error, clear = zip(*fits)
    return Drift(per_leaf, growth, error, clear)


def shifted(register: Motion, middle: Place) -> Place:
    """mm that a register moves the middle, seen in the bundle's own directions: the turn of the
    photograph taken out."""
    x, y = np.asarray(middle, float) - register.inverse().apply(middle)
    return float(x), float(y)


def _fitted(steps: np.ndarray, gone: np.ndarray) -> tuple[float, float, float, bool]:
    """Drift at the first leaf, its growth, the standard error of the drift, and if it is clear."""
    line, errors = _robust(steps, gone, 1)
    clear = abs(line[1]) > CLEAR * errors[1]
    if len(steps) >= LEAST_TO_BEND:
        bent, bent_errors = _robust(steps, gone, 2)
        if abs(bent[2]) > CLEAR * bent_errors[2]:
            return float(bent[1]), float(2 * bent[2]), float(errors[1]), True
    return float(line[1]), 0.0, float(errors[1]), bool(clear)


def _robust(steps: np.ndarray, gone: np.ndarray, degree: int) -> tuple[np.ndarray, np.ndarray]:
    """Coefficients of the polynomial and their standard errors, by reweighted least squares."""
    powers = np.vander(steps, degree + 1, increasing=True)
    weight = np.ones(len(steps))
    for _ in range(_ROUNDS):
        normal = np.linalg.inv(powers.T @ (powers * weight[:, None]))
        found = normal @ (powers.T @ (weight * gone))
        rest = gone - powers @ found
        size = max(1.4826 * float(np.median(np.abs(rest))), 1e-6)  # of a normal distribution
        weight = np.minimum(1.0, _HUBER * size / np.maximum(np.abs(rest), 1e-9))
    free = max(float(weight.sum()) - degree - 1, 1.0)
    spread = float(np.sum(weight * rest * rest)) / free
    return found, np.sqrt(np.maximum(spread * np.diag(normal), 0.0)) + 1e-9

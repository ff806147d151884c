# SPDX-License-Identifier: LGPL-2.1-or-later
"""Aligning two pictures of leaves by their figure: the rigid motion from one to the other, and how
far it can be trusted.

Pictures are grids of figure (see `grid`). The start is the best of all shifts (by FFT) at a row of
turns on the coarsest grid; from there Gauss-Newton steps, coarse to fine, raise the weighted
correlation of the two pictures (the aim of Evangelidis & Psarakis, IEEE PAMI 30(10), 2008), with
the mean of both pictures' slopes (Benhimane & Malis, IROS 2004), so that swapping the two pictures
gives the inverse.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from scipy import fft
from scipy.ndimage import affine_transform, uniform_filter

from veneerwb.core.plane import IDENTITY, Motion, cosd, sind
from veneerwb.core.sequence.grid import (
    BORDER,
    LEAST_CONTRAST,
    LEVELS,
    WORKING_SCALE,
    Grid,
    grid_of,
    grids,
    mask,
    softened,
    steepness,
)

__all__ = [
    "BORDER", "LEAST_CONTRAST", "LEVELS", "REACH", "SWING", "WORKING_SCALE", "Alignment", "Grid",
    "aligned", "grid_of", "grids", "likeness", "mask", "refine", "softened", "start",
]

REACH = 64.0
"""mm: the largest shift looked for between two photographs."""
SWING = 5.0
"""Degrees: the largest turn looked for between two photographs."""
_MOST, _APART, _NEARLY, _TRIED = 5, 10.0, 0.85, 6
"""At most so many starts are tried, that many mm from each other, each scoring that share of the
best, by that many steps."""
_STILL, _NEARLY_STILL = 0.01, 0.05
"""mm on the finest grid, and pixels on the others: a step that moves no corner further is the
last."""
_LEVEL = 1e-4
"""Correlation by which a step may fall without being taken back."""
_SAFE = 0.4
"""Share of the slopes' power that must be common to both pictures for a step to rest on that; else
it is a plain Gauss-Newton step, which falls short but leads the right way."""
_BLOCK = 32
"""Pixels: residuals further apart are taken to be independent."""


@dataclass(frozen=True)
class Alignment:
    """`motion` takes mm on the first leaf to mm on the second. `likeness` is the correlation
    reached (-1 to 1); `error_mm` and `error_deg` the standard errors that the residuals of the
    photographs predict, of the place of the middle (the worse direction) and of the angle."""

    motion: Motion
    likeness: float
    error_mm: float
    error_deg: float


# --- start -------------------------------------------------------------------------------------


def start(first: Grid, second: Grid) -> Motion:
    """The motion, with a shift up to REACH and a turn up to SWING, under which two coarse grids are
    most alike.

    The best of the candidates, each refined a little: figure that recurs is almost as alike one bar
    on, and the true place tells itself only once the turn fits.
    """
    candidates = _candidates(first, second)
    if len(candidates) == 1:
        return candidates[0]
    tried = [refine(first, second, motion, steps=_TRIED) for motion in candidates]
    return max(tried, key=lambda found: round(found.likeness, 6)).motion


def _candidates(first: Grid, second: Grid) -> list[Motion]:
    """The likeliest shifts, at the best turn of each about the middle of the first, _APART mm from
    each other; the best first, ties by the smaller turn."""
    middle = _middle(first)
    turns = _turns(max(first.figure.shape) * first.scale)
    pad = round(REACH / first.scale)
    shape = tuple(fft.next_fast_len(n + pad, real=True) for n in first.figure.shape)
    ours = fft.rfft2(np.stack([first.weight * first.figure, first.weight]), shape)
    score = np.full((2 * pad + 1, 2 * pad + 1), -np.inf)
    turn = np.zeros(score.shape)
    for angle in turns:
        turning = Motion.turn_about(*middle, angle)
        figure, weight = (
            _moved(second, values, 1, turning, first.figure.shape)
            for values in (second.figure, second.weight)
        )
        theirs = fft.rfft2(np.stack([weight * figure, weight]), shape)
        product, overlap = fft.irfft2(ours.conj() * theirs, shape)
        here = product / np.maximum(overlap, max(1.0, 0.4 * float(first.weight.sum())))
        near = np.concatenate([here[-pad:], here[: pad + 1]])
        near = np.concatenate([near[:, -pad:], near[:, : pad + 1]], axis=1)
        better = near > score
        score[better], turn[better] = near[better], angle
    found: list[Motion] = []
    if score.max() < 1e-6:  # nothing in common
        return [IDENTITY]
    least = _NEARLY * score.max()
    apart = round(_APART / first.scale)
    while len(found) < _MOST and (not found or score.max() >= max(least, 1e-6)):
        row, column = np.unravel_index(int(score.argmax()), score.shape)
        shift = Motion(dx=(column - pad) * first.scale, dy=(row - pad) * first.scale)
        found.append(Motion.turn_about(*middle, float(turn[row, column])) @ shift)
        rows = slice(max(0, row - apart), row + apart + 1)
        score[rows, max(0, column - apart) : column + apart + 1] = -np.inf
    return found


def _turns(length: float) -> list[float]:
    """Turns to try, the smallest first: so dense that between two the ends move 2.5 mm at most."""
    step = min(0.5, math.degrees(5.0 / (length / 2)))
    count = math.ceil(SWING / step)
    return sorted((k * SWING / count for k in range(-count, count + 1)), key=lambda t: (abs(t), t))


def _middle(grid: Grid) -> tuple[float, float]:
    rows, columns = grid.figure.shape
    return columns * grid.scale / 2, rows * grid.scale / 2


def _moved(
    grid: Grid, values: np.ndarray, order: int, motion: Motion, shape: tuple[int, int]
) -> np.ndarray:
    """Values of a grid (for order 3 its spline) where `motion` (mm to mm on it) looks them up."""
    c, s = cosd(motion.angle), sind(motion.angle)
    x, y = motion.apply((grid.scale / 2, grid.scale / 2)) / grid.scale - 0.5
    turned = [[c, s], [-s, c]]
    return affine_transform(values, turned, (y, x), shape, np.float32, order, prefilter=False)


# --- refinement --------------------------------------------------------------------------------


def refine(
    first: Grid, second: Grid, motion: Motion, focus: np.ndarray | None = None, steps: int = 30
) -> Alignment:
    """The motion near `motion` under which two grids correlate best, after `steps` at most.

    `focus`: weights on the first grid, or None for the whole leaf.
    """
    shape = first.figure.shape
    weight = _shared(first, second, motion, focus)
    corners = np.array([(0, 0), (shape[1], 0), (0, shape[0]), shape[::-1]]) * first.scale
    still = _STILL if first.scale <= WORKING_SCALE else _NEARLY_STILL * first.scale
    best, share = None, 1.0
    for _ in range(steps):
        fit = _Fit.of(first, second, motion, weight)
        if fit is None and best is None:
            return Alignment(motion, 0.0, math.inf, math.inf)
        if best is None or (fit is not None and fit.likeness > best.likeness - _LEVEL):
            best, at, share = fit, motion, min(1.0, 2 * share)
        else:
            share /= 4  # too far: bars of few pixels look less steep than they are
        motion = at @ best.correction(share)
        if np.abs(motion.apply(corners) - at.apply(corners)).max() < still:
            break
    return Alignment(motion, best.likeness, *best.errors())


def likeness(first: Grid, second: Grid, motion: Motion) -> float:
    """The correlation of two grids under a motion; 0 where they show nothing in common."""
    fit = _Fit.of(first, second, motion, _shared(first, second, motion, None))
    return 0.0 if fit is None else fit.likeness


def _shared(
    first: Grid, second: Grid, motion: Motion, focus: np.ndarray | None
) -> np.ndarray | None:
    """The weight that both grids have, on the first; None where they hardly overlap. It changes
    little on the way to the best motion, and a correlation is one thing only if it stays."""
    ours = first.weight if focus is None else first.weight * focus
    weight = ours * _moved(second, second.weight, 1, motion, first.figure.shape)
    total = float(weight.sum())
    return None if total < 0.05 * float(ours.sum()) or total < 64 else weight


@dataclass(frozen=True)
class _Fit:
    """One Newton step for (dx, dy, turn), in pixels at `arm` pixels from `centre` (mm).

    `normal` is the matrix of the mean slopes; `bend`, how the correlation bends, that of one
    picture's slopes with the other's, which is `normal` less the matrix of half their difference.
    Noise has slopes of its own in each picture, and so counts in `normal` but not in `bend`.
    """

    normal: np.ndarray
    bend: np.ndarray
    scores: np.ndarray
    likeness: float
    centre: tuple[float, float]
    scale: float
    arm: float

    @staticmethod
    def of(first: Grid, second: Grid, motion: Motion, weight: np.ndarray | None) -> _Fit | None:
        """None where the pictures do not overlap or show nothing there."""
        if weight is None:
            return None
        figure = _moved(second, second.spline, 3, motion, first.figure.shape)
        total = float(weight.sum())
        a, b = _standard(first.figure, weight, total), _standard(figure, weight, total)
        if a is None or b is None:
            return None
        (a, size_a), (b, size_b) = a, b
        likeness = float((weight * a * b).sum()) / total
        rows, columns = first.figure.shape
        x, y = np.arange(columns, dtype=np.float32), np.arange(rows, dtype=np.float32)
        cx, cy = float(weight.sum(0) @ x) / total, float(weight.sum(1) @ y) / total
        arm = math.hypot(rows, columns) / 4

        def slopes(gx: np.ndarray, gy: np.ndarray) -> tuple[np.ndarray, ...]:
            return gx, gy, gy * ((x - cx) / arm) - gx * ((y - cy) / arm)[:, None]

        def normal(parts: tuple[np.ndarray, ...]) -> np.ndarray:
            weighed = [weight * p for p in parts]
            return np.array([[float(np.vdot(p, q)) for q in parts] for p in weighed])

        one, other = [g / size_a for g in first.slopes], [g / size_b for g in steepness(figure)]
        mean = slopes(*((p + q) / 2 for p, q in zip(one, other)))
        apart = slopes(*((p - q) / 2 for p, q in zip(one, other)))
        pull = weight * (a - b)
        scores = np.stack([_by_block(pull * g) for g in mean])
        held = normal(mean)
        centre = ((cx + 0.5) * first.scale, (cy + 0.5) * first.scale)
        return _Fit(held, held - normal(apart), scores, likeness, centre, first.scale, arm)

    def _inverse(self, least: float, instead: float) -> np.ndarray:
        """Inverse of `bend`; in directions where that is less than the share `least` of `normal`,
        of the share `instead`."""
        ridge = 1e-6 * np.trace(self.normal) * np.eye(3)
        root = np.linalg.inv(np.linalg.cholesky(self.normal + ridge))
        shares, turned = np.linalg.eigh(root @ self.bend @ root.T)
        basis = root.T @ turned
        return basis / np.where(shares < least, instead, shares) @ basis.T

    def correction(self, share: float) -> Motion:
        """That share of the step, two pixels at most."""
        dx, dy, turn = self._inverse(_SAFE, 1.0) @ self.scores.sum(axis=1)
        far = max(abs(dx), abs(dy), abs(turn))
        dx, dy, turn = np.array((dx, dy, turn)) * min(share, 2.0 / max(far, 1e-9))
        shift = Motion(dx=float(dx) * self.scale, dy=float(dy) * self.scale)
        return shift @ Motion.turn_about(*self.centre, math.degrees(turn / self.arm))

    def errors(self) -> tuple[float, float]:
        """Standard errors in mm and degrees from how the scores of blocks scatter, so that
        residuals may be alike within a block (the sandwich estimate of clustered data)."""
        inverse = self._inverse(1e-4, 1e-4)
        spread = inverse @ (self.scores @ self.scores.T) @ inverse
        place = math.sqrt(max(0.0, float(np.linalg.eigvalsh(spread[:2, :2])[-1])))
        return place * self.scale, math.degrees(math.sqrt(max(0.0, spread[2, 2])) / self.arm)


def _standard(
    figure: np.ndarray, weight: np.ndarray, total: float
) -> tuple[np.ndarray, float] | None:
    """The figure with weighted mean 0 and deviation 1, and its deviation."""
    mean = float(np.vdot(weight, figure)) / total
    rest = figure - np.float32(mean)
    size = math.sqrt(max(0.0, float((weight * rest * rest).sum()) / total))
    return (rest / np.float32(size), size) if size > 1e-3 else None


def _by_block(values: np.ndarray) -> np.ndarray:
    """Sums over square blocks."""
    down = np.add.reduceat(values, range(0, values.shape[0], _BLOCK), axis=0)
    return np.add.reduceat(down, range(0, values.shape[1], _BLOCK), axis=1).astype(float).ravel()


def aligned(
    first: Sequence[Grid], second: Sequence[Grid], focus: Any = None, at: Motion | None = None
) -> Alignment:
    """The motion from one leaf to another, from the coarsest grid to the finest given.

    `focus` (shapely, mm on the first leaf) weights it to what lies there; `at`: where to start, if
    known.
    """
    motion = start(first[0], second[0]) if at is None else at
    found = Alignment(motion, 0.0, math.inf, math.inf)
    for a, b in zip(first, second):
        found = refine(a, b, found.motion, None if focus is None else _focus(focus, a))
    return found


def _focus(area: Any, grid: Grid) -> np.ndarray:
    inside = mask(area, grid.figure.shape, grid.scale)
    return uniform_filter(inside, 2 * max(1, round(BORDER / grid.scale)) + 1, mode="constant")

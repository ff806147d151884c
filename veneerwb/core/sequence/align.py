# SPDX-License-Identifier: LGPL-2.1-or-later
"""Aligning two pictures of leaves by their figure: the rigid motion from one to the other, and how
far it can be trusted.

A picture is single-channel, on grids of LEVELS mm per pixel (area averages of the photograph; row
0 at the bottom, so that rows run with y), each value the luminance less its surroundings, divided
by the contrast of its neighbourhood: what is left is figure, whatever the light. The start is the
best of all shifts (by FFT) at a row of turns on the coarsest grid; from there Gauss-Newton steps,
coarse to fine, raise the weighted correlation of the two pictures (the aim of Evangelidis &
Psarakis, IEEE PAMI 30(10), 2008), with the mean of both pictures' slopes (Benhimane & Malis, IROS
2004), so that swapping the two pictures gives the inverse.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from PIL import Image, ImageDraw
from scipy import fft
from scipy.ndimage import affine_transform, gaussian_filter, spline_filter, uniform_filter

from veneerwb.core.leaf import Leaf
from veneerwb.core.plane import Motion, cosd, sind

WORKING_SCALE = 1.0
"""mm per pixel of the finest grid: the registers' working scale."""
LEVELS = (4.0, 2.0, WORKING_SCALE)
"""mm per pixel of the grids, coarse to fine."""
REACH = 64.0
"""mm: the largest shift looked for between two photographs."""
SWING = 5.0
"""Degrees: the largest turn looked for between two photographs."""
BORDER = 16.0
"""mm over which the weight rises from 0 at an edge, so that what it cuts off hardly matters."""
LEAST_CONTRAST = 0.4
"""Grey levels of 255: what varies less than this is noise and no figure."""
_NEAR, _WIDE = 1, 4
"""Pixels: deviation of the blur, and reach of what counts as surroundings."""
_LIMIT = 3.0
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
_LUMA = np.array((0.299, 0.587, 0.114), np.float32)


@dataclass(frozen=True)
class Grid:
    """Figure and weight (float32, rows x columns, row 0 at the bottom) at `scale` mm per pixel;
    `contrast`: grey levels by which the figure varies."""

    figure: np.ndarray
    weight: np.ndarray
    scale: float
    contrast: float

    @cached_property
    def slopes(self) -> tuple[np.ndarray, np.ndarray]:
        """Change of the figure per pixel along x and y."""
        return _slopes(self.figure)

    @cached_property
    def spline(self) -> np.ndarray:
        """Coefficients of the cubic spline through the figure: a straight line between pixels
        blurs what is shifted by half a pixel, and so favours fibres over rings by the shift."""
        return spline_filter(self.figure, order=3, output=np.float32)


@dataclass(frozen=True)
class Alignment:
    """`motion` takes mm on the first leaf to mm on the second. `likeness` is the correlation
    reached (-1 to 1); `error_mm` and `error_deg` the standard errors that the residuals of the
    photographs predict, of the place of the middle (the worse direction) and of the angle."""

    motion: Motion
    likeness: float
    error_mm: float
    error_deg: float


def grids(leaf: Leaf) -> tuple[Grid, ...]:
    """The face of a leaf on the grids of LEVELS; its faults and what lies off its usable area have
    no weight."""
    light = leaf.photo @ _LUMA
    area = leaf.usable
    return tuple(_grid(light, leaf, area, scale) for scale in LEVELS)


def _grid(light: np.ndarray, leaf: Leaf, area: Any, scale: float) -> Grid:
    width, length = leaf.size
    shape = max(4, int(length / scale)), max(4, int(width / scale))
    here = _averaged(light, leaf.mm_per_px, scale, shape)
    inside = mask(area, shape, scale)
    for fault in leaf.faults:
        inside *= 1 - mask(fault.outline, shape, scale)
    figure, contrast = _normalised(here, inside)
    return Grid(figure, softened(inside, BORDER / scale), scale, contrast)


def _averaged(
    light: np.ndarray, mm_per_px: float, scale: float, shape: tuple[int, int]
) -> np.ndarray:
    """The photograph averaged over the cells of a grid that starts at its lower left."""
    rows, columns = shape
    ratio = scale / mm_per_px
    left_off = max(0.0, light.shape[0] - rows * ratio)
    box = (0.0, left_off, min(light.shape[1], columns * ratio), light.shape[0])
    how = Image.Resampling.BOX if ratio >= 1 else Image.Resampling.BICUBIC
    return np.asarray(Image.fromarray(light).resize((columns, rows), how, box))[::-1]


def mask(area: Any, shape: tuple[int, int], scale: float) -> np.ndarray:
    """1 where a pixel of a grid lies in `area` (shapely polygons, mm), else 0."""
    image = Image.new("L", shape[::-1], 0)
    draw = ImageDraw.Draw(image)
    for part in getattr(area, "geoms", [area]):
        if part.geom_type != "Polygon" or part.is_empty:
            continue
        for ring, value in ((part.exterior, 1), *((hole, 0) for hole in part.interiors)):
            corners = np.asarray(ring.coords)[:, :2] / scale - 0.5
            draw.polygon([tuple(c) for c in corners], fill=value)
    return np.asarray(image).astype(np.float32)


def softened(inside: np.ndarray, border: float) -> np.ndarray:
    """A mask that rises from 0 at its edge to 1 within `border` pixels."""
    size = 2 * max(1, round(border)) + 1
    return np.clip(2 * uniform_filter(inside, size, mode="constant") - 1, 0, 1) * inside


def _normalised(light: np.ndarray, inside: np.ndarray) -> tuple[np.ndarray, float]:
    """Luminance less its surroundings over the local contrast, taken within the mask only, and the
    contrast over all."""
    size = 2 * _WIDE + 1
    share = np.maximum(_wide(inside, size), 1e-3)
    calm = np.where(inside > 0, light, 0)
    level = _wide(calm * inside, size) / share
    rest = (light - level) * inside
    rest = gaussian_filter(rest, _NEAR) * inside
    power = _wide(rest * rest, 2 * size) / np.maximum(_wide(inside, 2 * size), 1e-3)
    over_all = math.sqrt(float((rest * rest).sum()) / max(1.0, float(inside.sum())))
    floor = max(LEAST_CONTRAST, 0.3 * over_all)
    figure = rest / np.sqrt(power + np.float32(floor**2))
    return np.clip(figure, -_LIMIT, _LIMIT).astype(np.float32), over_all


def _wide(values: np.ndarray, size: int) -> np.ndarray:
    return uniform_filter(uniform_filter(values, size, mode="constant"), size, mode="constant")


def _slopes(figure: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    along, across = np.gradient(figure)
    return across, along


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
        figure, weight = _moved(second, turning, first.figure.shape, False)
        theirs = fft.rfft2(np.stack([weight * figure, weight]), shape)
        product, overlap = fft.irfft2(ours.conj() * theirs, shape)
        here = product / np.maximum(overlap, max(1.0, 0.4 * float(first.weight.sum())))
        near = np.concatenate([here[-pad:], here[: pad + 1]])
        near = np.concatenate([near[:, -pad:], near[:, : pad + 1]], axis=1)
        better = near > score
        score[better], turn[better] = near[better], angle
    found: list[Motion] = []
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
    grid: Grid, motion: Motion, shape: tuple[int, int], finely: bool = True
) -> tuple[np.ndarray, np.ndarray]:
    """Figure and weight of a grid where `motion` (mm to mm on it) looks them up."""
    c, s = cosd(motion.angle), sind(motion.angle)
    x, y = motion.apply((grid.scale / 2, grid.scale / 2)) / grid.scale - 0.5

    def looked_up(values: np.ndarray, order: int) -> np.ndarray:
        return affine_transform(
            values, [[c, s], [-s, c]], (y, x), shape, np.float32, order, prefilter=False
        )

    figure = looked_up(grid.spline, 3) if finely else looked_up(grid.figure, 1)
    return figure, looked_up(grid.weight, 1)


# --- refinement --------------------------------------------------------------------------------


def refine(
    first: Grid, second: Grid, motion: Motion, focus: np.ndarray | None = None, steps: int = 30
) -> Alignment:
    """The motion near `motion` under which two grids correlate best, after `steps` at most.

    `focus`: weights on the first grid, or None for the whole leaf.
    """
    shape = first.figure.shape
    ours = first.weight if focus is None else first.weight * focus
    corners = np.array([(0, 0), (shape[1], 0), (0, shape[0]), shape[::-1]]) * first.scale
    still = _STILL if first.scale <= WORKING_SCALE else _NEARLY_STILL * first.scale
    best, share = None, 1.0
    for _ in range(steps):
        fit = _Fit.of(first, second, motion, ours)
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
    fit = _Fit.of(first, second, motion, first.weight)
    return 0.0 if fit is None else fit.likeness


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
    def of(first: Grid, second: Grid, motion: Motion, ours: np.ndarray) -> _Fit | None:
        """None where the pictures do not overlap or show nothing there."""
        figure, theirs = _moved(second, motion, first.figure.shape)
        weight = ours * theirs
        total = float(weight.sum())
        if total < 0.05 * float(ours.sum()) or total < 64:
            return None
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

        one, other = [g / size_a for g in first.slopes], [g / size_b for g in _slopes(figure)]
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

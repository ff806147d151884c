# SPDX-License-Identifier: LGPL-2.1-or-later
"""How alike the leaves of a bundle are, each with each.

The likeness of two leaves is the correlation of their figure on the fine grid, at the rigid motion
under which it is greatest: the best of all shifts and turns on the coarse grid (by FFT), refined by
Gauss-Newton steps that move the template (Baker & Matthews, IJCV 56(3), 2004).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from PIL import Image
from scipy import fft

from veneerwb.core.plane import Motion
from veneerwb.core.sequence.picture import COARSE, FINE, Field, Picture

REACH = 64.0
"""mm: the largest shift looked for between two photographs."""
SWING = 4.5
"""Degrees: the largest turn looked for between two photographs."""
TURN = 0.5
"""Degrees from one turn tried to the next."""
_TURNS = np.arange(-round(SWING / TURN), round(SWING / TURN) + 1) * TURN
_TRUSTED = 0.4
"""Likeness above which two photographs are surely turned as was found."""
SLIDES = 24.0, 64.0
"""mm, from and to."""
_STEPS, _STILL, _SHORT = 3, 0.2, 0.5
"""At most so many steps refine a pair; one of fewer pixels is the last; what counts as short."""
_UNLIKE = 0.2
"""Likeness below which a second step is not worth its time."""
_COMMON = 0.1
"""The share of a leaf's weight that must lie on the other leaf."""
_NEAREST, _LINEAR, _CUBIC = (
    Image.Resampling.NEAREST, Image.Resampling.BILINEAR, Image.Resampling.BICUBIC
)


@dataclass(frozen=True)
class Pair:
    """`likeness` from -1 to 1, and the motion from mm on the first to mm on the second."""

    likeness: float
    motion: Motion


class Album:
    """Pictures ready to be compared."""

    def __init__(self, pictures: Sequence[Picture]) -> None:
        self.pictures = tuple(pictures)
        sizes = [p.coarse.figure.shape for p in pictures]
        self._pad = round(REACH / COARSE)
        self._shape = tuple(fft.next_fast_len(max(n) + self._pad, real=True) for n in zip(*sizes))
        self._spectra = [_Spectra.of(p.coarse, self._shape) for p in pictures]
        self._turned = [
            fft.rfft2(np.stack([_turned(p.coarse, t) for t in _TURNS]), self._shape)
            for p in pictures
        ]
        self._turns = _Turns(len(self.pictures))

    def all_pairs(
        self, progress: Callable[[float], None] | None = None
    ) -> tuple[np.ndarray, dict[tuple[int, int], Motion]]:
        """The likeness of all (n x n, symmetric, 1 on the diagonal), and the motion from i to j for
        every i < j (places in the album). Neighbours first: what they tell of how each photograph
        is turned need not be looked for again."""
        count = len(self.pictures)
        likeness, motions, turns = np.eye(count), {}, self._turns
        templates = [_Template(p.fine) for p in self.pictures]
        for lag in range(1, count):
            for i in range(count - lag):
                j = i + lag
                begin = self._found(self._spectra[i], j, turns.between(i, j))
                pair = templates[i].refined(self.pictures[j].fine, begin.motion)
                likeness[i, j] = likeness[j, i] = pair.likeness
                motions[i, j] = pair.motion
                if pair.likeness > _TRUSTED:
                    turns.learn(i, j, pair.motion.angle)
            if progress is not None:
                progress(1 - (count - lag - 1) * (count - lag) / (count * (count - 1)))
        return likeness, motions

    def row(
        self, other: Picture, keep: Sequence[int], most: int | None = None
    ) -> dict[int, Pair]:
        """How alike a picture is to each of those at the places `keep`, the likeliest first; or
        only to the `most` that it is most like on the coarse grid. Once it is surely like one, what
        is known of how the others are turned against that one need not be looked for again."""
        spectra, template = _Spectra.of(other.coarse, self._shape), _Template(other.fine)
        rough: dict[int, Pair] = {}
        sure: int | None = None
        for j in keep:
            step = None if sure is None else self._turns.between(sure, j)
            turn = None if step is None else rough[sure].motion.angle + step
            rough[j] = self._found(spectra, j, turn)
            if sure is None and rough[j].likeness > _TRUSTED:
                sure = j
        best = sorted(keep, key=lambda j: (-round(rough[j].likeness, 6), j))[:most]
        return {
            j: template.refined(self.pictures[j].fine, rough[j].motion) for j in sorted(best)
        }

    def slid(self, place: int) -> float:
        """How alike a picture is to itself slid along the grain, by SLIDES mm: near 1 where figure
        runs straight along the leaf."""
        field = self.pictures[place].fine
        far = min(field.figure.shape[0] // 3, round(SLIDES[1] / FINE))
        near = min(far, round(SLIDES[0] / FINE))
        shape = tuple(fft.next_fast_len(n + far, real=True) for n in field.figure.shape)
        power = np.abs(fft.rfft2(np.stack([field.weighed, field.weight]), shape)) ** 2
        product, overlap = fft.irfft2(power, shape)
        score = product[: far + 1] / np.maximum(overlap[: far + 1], 1.0)
        return float(np.median(score[near:, [-1, 0, 1]].max(axis=1)) / max(score[0, 0], 1e-9))

    def _found(self, spectra: _Spectra, j: int, turn: float | None = None) -> Pair:
        """The best shift and turn to picture j, between the pixels by parabolas; `turn`: about
        which, if known."""
        turns = slice(None)
        if turn is not None:
            k = int(np.clip(np.abs(_TURNS - turn).argmin(), 1, len(_TURNS) - 2))
            turns = slice(k - 1, k + 2)
        product = self._near(spectra.weighed.conj() * self._turned[j][turns])
        overlap = self._near(spectra.weight.conj() * self._spectra[j].weight)
        score = product / np.maximum(overlap, 0.4 * spectra.total)
        k, row, column = np.unravel_index(int(score.argmax()), score.shape)
        angle = float(_TURNS[turns][k]) + TURN * _top(score[:, row, column], k)
        dx = column + _top(score[k, row], column) - self._pad
        dy = row + _top(score[k, :, column], row) - self._pad
        shift = Motion(dx=dx * COARSE, dy=dy * COARSE)
        middle = (n / 2 for n in self.pictures[j].coarse.size)
        return Pair(float(score[k, row, column]), Motion.turn_about(*middle, angle) @ shift)

    def _near(self, spectra: np.ndarray) -> np.ndarray:
        """The inverse of spectra at shifts from -pad to pad along the last two axes; other rows are
        left out half way, which saves half the time."""
        pad = self._pad
        rows = fft.ifft(spectra, axis=-2)
        rows = np.concatenate([rows[..., -pad:, :], rows[..., : pad + 1, :]], axis=-2)
        near = fft.irfft(rows, self._shape[1], axis=-1)
        return np.concatenate([near[..., -pad:], near[..., : pad + 1]], axis=-1)


@dataclass(frozen=True)
class _Spectra:
    weighed: np.ndarray
    weight: np.ndarray
    total: float

    @staticmethod
    def of(field: Field, shape: tuple[int, ...]) -> _Spectra:
        both = fft.rfft2(np.stack([field.weighed, field.weight]), shape)
        return _Spectra(both[0], both[1], max(1.0, float(field.weight.sum())))


def _turned(field: Field, turn: float) -> np.ndarray:
    """The weighed figure looked up where a turn about the field's middle takes each place."""
    about = Motion.turn_about(*(n / 2 for n in field.size), turn)
    image = Image.fromarray(field.weighed)
    return np.asarray(_looked_up(image, about, field.scale, field.figure.shape, _LINEAR))


class _Turns:
    """How pictures are turned against each other, as far as pairs have told."""

    def __init__(self, count: int) -> None:
        self._group = list(range(count))
        self._turn = [0.0] * count

    def between(self, i: int, j: int) -> float | None:
        return self._turn[j] - self._turn[i] if self._group[i] == self._group[j] else None

    def learn(self, i: int, j: int, turn: float) -> None:
        old, change = self._group[j], self._turn[i] + turn - self._turn[j]
        for k in range(len(self._group)):
            if old != self._group[i] and self._group[k] == old:
                self._group[k], self._turn[k] = -1, self._turn[k] + change
        self._group = [self._group[i] if group == -1 else group for group in self._group]


def _top(values: np.ndarray, at: int) -> float:
    """How far beside `at`, in steps, the parabola through it and its two neighbours peaks."""
    if not 0 < at < len(values) - 1:
        return 0.0
    low, mid, high = (float(v) for v in values[at - 1 : at + 2])
    bend = low - 2 * mid + high
    return 0.5 * (low - high) / bend if bend < 0 else 0.0


class _Template:
    """A field to which others are aligned."""

    def __init__(self, field: Field) -> None:
        self.field = field
        along, across = np.gradient(field.figure)
        rows, columns = field.figure.shape
        x = np.arange(columns, dtype=np.float32) - np.float32((columns - 1) / 2)
        y = (np.arange(rows, dtype=np.float32) - np.float32((rows - 1) / 2))[:, None]
        self._arm = math.hypot(rows, columns) / 4
        turning = (along * x - across * y) / np.float32(self._arm)
        self._slopes = np.stack([across, along, turning]).reshape(3, -1)
        normal = (self._slopes * field.weight.ravel()) @ self._slopes.T
        self._inverse = np.linalg.inv(normal + (1e-4 * np.trace(normal) + 1e-9) * np.eye(3))
        self._total = float(field.weight.sum())

    def refined(self, other: Field, motion: Motion) -> Pair:
        best, step, (width, length) = Pair(-math.inf, motion), np.zeros(3), self.field.size
        for _ in range(_STEPS):
            found = _compared(self.field, other, motion, _LINEAR)
            if found is None or found.likeness < best.likeness:
                break
            best = Pair(found.likeness, motion)
            step = self._inverse @ (self._slopes @ found.apart) * self._total / found.total
            across, along, turn = np.clip(step, -2, 2)
            back = Motion.turn_about(width / 2, length / 2, math.degrees(turn / self._arm))
            motion = motion @ Motion(dx=float(across) * FINE, dy=float(along) * FINE) @ back
            if np.abs(step).max() < _STILL or found.likeness < _UNLIKE:
                break
        if 0 < best.likeness < _UNLIKE:
            return best  # which need not be known exactly
        # A short last step is surely a gain; a long one may be none.
        ends = [motion] if np.abs(step).max() < _SHORT else [motion, best.motion]
        seen = [(_compared(self.field, other, end, _CUBIC), end) for end in ends]
        pairs = [Pair(found.likeness, end) for found, end in seen if found is not None]
        return max(pairs, key=lambda pair: pair.likeness, default=Pair(0.0, motion))


@dataclass(frozen=True)
class _Compared:
    """`apart`: weight times how far the template lies above the other, in the template's units;
    `total`: the weight in common."""

    likeness: float
    apart: np.ndarray
    total: float


def _compared(first: Field, second: Field, motion: Motion, how: int) -> _Compared | None:
    """None where the two do not overlap or show nothing there."""
    figure, weight = _moved(second, motion, first.figure.shape, how)
    weight *= first.weight
    total = float(weight.sum())
    if total < max(1.0, _COMMON * float(first.weight.sum())):
        return None
    ours, theirs = (_standard(f, weight, total) for f in (first.figure, figure))
    if ours is None or theirs is None:
        return None
    likeness = float(np.vdot(weight * ours[0], theirs[0])) / total
    apart = weight * (ours[0] - theirs[0]) * np.float32(ours[1])
    return _Compared(likeness, apart.ravel(), total)


def _standard(
    figure: np.ndarray, weight: np.ndarray, total: float
) -> tuple[np.ndarray, float] | None:
    rest = figure - np.float32(np.vdot(weight, figure) / total)
    size = math.sqrt(max(0.0, float(np.vdot(weight * rest, rest)) / total))
    return (rest / np.float32(size), size) if size > 1e-3 else None


def _moved(
    field: Field, motion: Motion, shape: tuple[int, int], how: int
) -> tuple[np.ndarray, np.ndarray]:
    """Figure and weight of a field where `motion` (mm to mm on it) looks them up."""
    image, weight = field.images
    return (
        np.asarray(_looked_up(image, motion, field.scale, shape, how)),
        np.array(_looked_up(weight, motion, field.scale, shape, _NEAREST)),  # it is smooth
    )


def _looked_up(
    image: Image.Image, motion: Motion, scale: float, shape: tuple[int, int], how: int
) -> Image.Image:
    a, b, d, e = motion.matrix
    # Pillow, too, has pixel centres at half-integers.
    place = (a, b, motion.dx / scale, d, e, motion.dy / scale)
    return image.transform(shape[::-1], Image.Transform.AFFINE, place, how)

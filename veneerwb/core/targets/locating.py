# SPDX-License-Identifier: LGPL-2.1-or-later
"""A mark found near a rough click on a photograph, and centred.

Places on a picture are (column, row), row 0 at the top, pixel centres at half-integers, as in
`squaring`. The search compares the neighbourhood of the click with rings of all sizes (normalised
correlation in means of blocks); `ring` then centres what it found.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

import numpy as np
from scipy.ndimage import uniform_filter1d
from scipy.signal import fftconvolve

from veneerwb.core.errors import VeneerError
from veneerwb.core.photos.reading import COARSEST
from veneerwb.core.plane import positive
from veneerwb.core.targets.mark import MARK
from veneerwb.core.targets.ring import INNER, Ring, fitted
from veneerwb.words import word

LEAST = 12.0
"""px: a ring that is smaller across is not centred."""
MOST = 600.0
"""px: nor one that is larger."""
REACH = 2.1
"""Outer radii: how far off the click may be, a ring's diameter and a little."""
ALIKE = 0.55
"""Correlation with a ring below which nothing is tried."""
EXPLAINED = 0.8
"""The least share of the light's variance that the fitted ring explains."""
SOUND = 0.75
"""The least share of the ring's pixels that fit it."""
FLATTEST = 0.6
"""The least ratio of the ellipse's axes: some 50 degrees."""
THICKEST, THINNEST = 0.35, 0.68
"""The ring's inner by its outer radius; printed, it is a half."""
FAINTEST = 0.1
"""The least difference in brightness between paper and ink, of 1."""
BLURRED = 0.3
"""Blur by outer radius: beyond, the ring is not sharp enough to be centred."""
_FINE = 40.0  # px: a ring with a larger radius is fitted in means of blocks
_COARSE = 5.0  # px: the least radius that is searched for in blocks; six sizes to the next octave
_FLOOR = 4.0  # levels: what differs less is no ring but noise
_SPOKES = 180  # directions in which the arrow is looked for
_SYSTEM = 0.01  # px: what pixels and JPEG leave uncertain whatever the noise


@dataclass(frozen=True)
class Located:
    """A mark on a picture.

    `centre` (column, row). `radius`: px, of the outer ring along the longer axis, which a slant
    leaves as it is, as if the ring were as wide as printed. `error`: px, one standard deviation of
    the centre along the worse of column and row, from the residuals of the fit to this picture.
    `trust`: 0 to 1, the share of its pixels that look like a ring, times the share of their light
    that the ring explains. `up`: the direction (column, row) of the arrow, of length 1, or None
    where none is seen.
    """

    centre: tuple[float, float]
    radius: float
    error: float
    trust: float
    up: tuple[float, float] | None = None

    @property
    def mm_per_px(self) -> float:
        """About: as if the sheet had been printed at 100 %."""
        return MARK.outer / 2 / self.radius


def located(
    pixels: np.ndarray, rough: Any, mm_per_px: float | None = None, photo: str = ""
) -> Located:
    """The mark nearest to the click `rough` (column, row) on `pixels`, uint8 rows x columns x 3.

    The click may be a ring's diameter off. `mm_per_px`, if it is known to within a third, makes the
    search shorter. `photo` names the picture in messages. Perspective is undone as far as the
    picture tells it, see `ring`. Raises VeneerError where no whole mark is there, or one too
    small, too blurred or too bright to be centred.
    """
    return _Search(np.asarray(pixels), rough, mm_per_px, photo or word("in memory")).found()


class _Search:
    """One click on one picture."""

    def __init__(self, pixels: np.ndarray, rough: Any, mm_per_px: float | None, photo: str) -> None:
        self.pixels, self.photo = pixels, photo
        self.rows, self.columns = pixels.shape[:2]
        self.click = self._clicked(rough)
        self.radii = 0.3 * LEAST, MOST / 2
        if mm_per_px is not None:
            scale = positive("scale of the photo in mm per pixel", mm_per_px, COARSEST)
            expected = MARK.outer / 2 / scale
            self.radii = max(self.radii[0], expected / 1.5), min(self.radii[1], 1.5 * expected)

    def _clicked(self, rough: Any) -> tuple[float, float]:
        try:
            column, row = (float(value) for value in rough)
        except (TypeError, ValueError):
            column = row = math.nan
        if not (0.0 <= column <= self.columns and 0.0 <= row <= self.rows):
            raise VeneerError(
                "mark-outside",
                "The place of the mark lies outside the photo {photo} of {columns} x {rows} "
                "pixels; click on the mark.",
                photo=self.photo, columns=self.columns, rows=self.rows,
            )
        return column, row

    def found(self) -> Located:
        """The best candidate that a ring fits; else why there is none."""
        candidates = self.candidates()
        refusals = []
        for _, centre, radius in candidates[:6]:
            ring = self.ring(centre, radius)
            if ring is None:
                continue
            refusal = self.refusal(ring)
            if refusal is None:
                return self.described(ring)
            refusals.append(refusal)
        raise next((r for r in refusals if r.code != "no-mark"), None) or self.nothing()

    # --- search ---

    def candidates(self) -> list[tuple[float, tuple[float, float], float]]:
        """(likeness, centre, outer radius), the likeliest first."""
        least, most = self.radii
        found, block = [], 1
        while block * _COARSE <= most:
            low = _COARSE if block > 1 else 0.6 * _COARSE
            sizes = low * 2.0 ** (np.arange(0, 6 * math.log2(2 * _COARSE / low) - 0.01) / 6)
            sizes = [s for s in sizes if least / 1.1 <= s * block <= most * 1.1]
            if sizes:
                found += self._octave(block, sizes)
            block *= 2
        return sorted(found, key=lambda one: -one[0])

    def _octave(self, block: int, sizes: list[float]) -> list[tuple]:
        """The likeliest place for each radius, in blocks."""
        far = block * (REACH + 1.4) * sizes[-1]
        left, top = (math.floor((at - far) / block) * block for at in self.click)
        count = math.ceil(2 * far / block) + 1
        grey = self._means(left, top, block, count)
        found = []
        for size in sizes:
            alike, margin = _likeness(grey, size)
            y, x = np.mgrid[: alike.shape[0], : alike.shape[1]] + margin + 0.5
            off = np.hypot(left + x * block - self.click[0], top + y * block - self.click[1])
            alike = np.where(off <= REACH * size * block, alike, -1.0)
            place = np.unravel_index(alike.argmax(), alike.shape)
            if alike[place] >= ALIKE:
                centre = left + x[place] * block, top + y[place] * block
                found.append((float(alike[place]), centre, size * block))
        return found

    def _means(self, left: int, top: int, block: int, count: int) -> np.ndarray:
        """Brightness, count x count means of blocks; off the picture its edge is repeated."""
        right, low = left + count * block, top + count * block
        inside = self.pixels[max(0, top) : max(0, low), max(0, left) : max(0, right)]
        grey = inside.astype(np.float32) @ np.float32([0.3, 0.59, 0.11])
        above, before = max(0, -top), max(0, -left)
        below, behind = max(0, low - self.rows), max(0, right - self.columns)
        grey = np.pad(grey, ((above, below), (before, behind)), mode="edge")
        return grey.reshape(count, block, count, block).mean(axis=(1, 3))

    # --- centring ---

    def ring(self, centre: tuple[float, float], radius: float) -> Ring | None:
        block = max(1, round(radius / _FINE))
        far = 2.0 * radius
        left, top = (max(0, math.floor((at - far) / block) * block) for at in centre)
        part = self.pixels[top : math.ceil(centre[1] + far), left : math.ceil(centre[0] + far)]
        if min(part.shape[:2]) < 2 * block:
            return None
        rows, columns = (n // block * block for n in part.shape[:2])
        light = _brightness(part[:rows, :columns])
        light = light.reshape(rows // block, block, columns // block, block).mean(axis=(1, 3))
        start = (centre[0] - left) / block, (centre[1] - top) / block
        ring = fitted(light, start, radius / block)
        if ring is None:
            return None
        return Ring(
            (left + ring.centre[0] * block, top + ring.centre[1] * block), ring.shape / block,
            ring.slant / block, ring.blur * block, tuple(d * block for d in ring.deviation),
            ring.paper, ring.ink, ring.explained, ring.sound, ring.inner,
        )

    def refusal(self, ring: Ring) -> VeneerError | None:
        """Why this is no mark, or none that can be centred; None if it is one."""
        longer, shorter = ring.radii
        column, row = ring.centre
        values = {"photo": self.photo, "column": round(column), "row": round(row)}
        if (
            ring.explained < EXPLAINED or ring.sound < SOUND or ring.ink < FAINTEST
            or shorter < FLATTEST * longer or not THICKEST < ring.inner < THINNEST
            or math.dist(ring.centre, self.click) > 1.1 * REACH * longer
        ):
            return self.nothing()
        if not (1.05 * longer <= column <= self.columns - 1.05 * longer
                and 1.05 * longer <= row <= self.rows - 1.05 * longer):
            return VeneerError(
                "mark-cut-off",
                "The mark at column {column}, row {row} of the photo {photo} runs out of the "
                "picture; use another mark, or photograph the leaf again with all marks in view.",
                **values,
            )
        if longer + shorter < LEAST:
            return VeneerError(
                "mark-too-small",
                "The mark at column {column}, row {row} of the photo {photo} is {size} pixels "
                "across, and {least} are needed; photograph from nearer or with more pixels.",
                size=math.floor(10 * (longer + shorter)) / 10, least=LEAST, **values,
            )
        if ring.blur > BLURRED * shorter:
            return VeneerError(
                "mark-blurred",
                "The mark at column {column}, row {row} of the photo {photo} is too blurred to be "
                "centred; photograph again with the leaf in focus and the camera at rest.",
                **values,
            )
        return None

    def nothing(self) -> VeneerError:
        """That nothing is there, or nothing but light."""
        column, row = self.click
        far = max(20, round(self.radii[0]))
        part = self.pixels[max(0, int(row) - far) : int(row) + far,
                           max(0, int(column) - far) : int(column) + far]
        values = {"photo": self.photo, "column": round(column), "row": round(row)}
        if (part.min(axis=-1) >= 250).mean() > 0.6:
            return VeneerError(
                "burnt-out",
                "The photo {photo} is burnt out at column {column}, row {row}, so that no mark is "
                "seen; photograph again with less exposure or without glare.",
                **values,
            )
        return VeneerError(
            "no-mark",
            "There is no whole mark near column {column}, row {row} of the photo {photo}; click "
            "within a ring's width of its centre.",
            **values,
        )

    def described(self, ring: Ring) -> Located:
        up = _arrow(self.pixels, ring)
        # Light eats into the ring from both of its edges alike: half-way between them it does not.
        radius = ring.radii[0] * (1.0 + ring.inner) / (1.0 + INNER)
        return Located(
            (float(ring.centre[0]), float(ring.centre[1])), radius,
            math.hypot(max(ring.deviation), _SYSTEM), ring.explained * ring.sound, up,
        )


def _brightness(pixels: np.ndarray) -> np.ndarray:
    """0..1, as the picture has it: there noise is alike in light and dark."""
    return pixels.astype(np.float32) @ np.float32([0.3 / 255, 0.59 / 255, 0.11 / 255])


def _likeness(grey: np.ndarray, radius: float) -> tuple[np.ndarray, int]:
    """Normalised correlation with a ring of `radius`, and how far within `grey` it begins."""
    margin = math.ceil(1.25 * radius)
    y, x = np.mgrid[-margin : margin + 1, -margin : margin + 1]
    rho = np.hypot(x, y) / radius
    support = ((rho > 0.3) & (rho < 1.25)).astype(float)
    soft = 0.1
    ring = -np.clip((1 - rho) / soft + 0.5, 0, 1) + np.clip((INNER - rho) / soft + 0.5, 0, 1)
    ring = (ring - (ring * support).sum() / support.sum()) * support
    ring /= np.sqrt((ring**2).sum())
    grey = grey - grey.mean()
    high = fftconvolve(grey, ring, mode="valid")  # the ring is the same turned by half a turn
    mean = fftconvolve(grey, support, mode="valid")
    square = fftconvolve(grey**2, support, mode="valid")
    spread = np.maximum(square - mean**2 / support.sum(), 0.0)
    return high / np.sqrt(spread + support.sum() * _FLOOR**2), margin


def _arrow(pixels: np.ndarray, ring: Ring) -> tuple[float, float] | None:
    """Where the arrow points, if there is one outside the ring and only one: a peak of darkness
    round the ring, within `MARK.around`."""
    radii = np.linspace(1.03 * MARK.clear, 0.97 * MARK.around, 5) / MARK.outer
    angles = np.arange(0.0, 2 * np.pi, 2 * np.pi / _SPOKES)
    round_ = np.column_stack([np.cos(angles), np.sin(angles)])
    column, row = np.concatenate([ring.to_pixels(radius * round_) for radius in radii]).T
    if min(column.min(), row.min()) < 0 or column.max() >= pixels.shape[1] or (
        row.max() >= pixels.shape[0]
    ):
        return None
    seen = _brightness(pixels[row.astype(int), column.astype(int)])
    dark = np.clip((ring.paper - seen) / ring.ink, 0, 1).reshape(len(radii), -1).mean(axis=0)
    dark = uniform_filter1d(dark, 7, mode="wrap")  # 14 degrees, narrower than the arrow
    best = int(dark.argmax())
    away = np.abs((np.arange(_SPOKES) - best + _SPOKES // 2) % _SPOKES - _SPOKES // 2)
    if dark[best] < 0.3 or dark[away > _SPOKES // 8].max() > 0.6 * dark[best]:
        return None
    peak = away <= _SPOKES // 18
    up = np.linalg.solve(ring.shape, dark[peak] @ round_[peak])
    return tuple(float(part) for part in up / np.hypot(*up))

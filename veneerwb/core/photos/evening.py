# SPDX-License-Identifier: LGPL-2.1-or-later
"""Exposure and white balance evened over a bundle, from the background or a grey patch.

A photo's light over an area that should look the same in every photo is measured (`measured`), one
photo at a time; `evenings` then gives each photo three gains, which `evened` applies in linear
light (sRGB decoded). The photos themselves stay as they are, and `Evening.inverse` leads back.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from PIL import Image

from veneerwb.core.colour import decode, encode, srgb_to_lab
from veneerwb.core.errors import VeneerError
from veneerwb.core.listing import all_of
from veneerwb.core.photos.background import fitted_to, mask, shading
from veneerwb.words import figure, filled, marked, say, word

DARKEST, BRIGHTEST = 8.0, 254.0
"""Levels of 255 between which a patch's middle must lie for its light to be known."""
FIGURED = 4.0
"""CIELAB units of lightness (half of what the middle two thirds span) by which a patch may depart
from smooth shading; what is figured does so by more."""
FEWEST = 100
"""Pixels that a patch needs at least."""
MOST_GAIN = 4.0
"""Two stops: more brings out nothing but noise, or the photo is of something else."""
UNNOTICED = 0.005
"""A share of the light that nobody sees."""
_LUMINANCE = np.array([0.2126, 0.7152, 0.0722])  # of linear sRGB (IEC 61966-2-1)
_LINEAR = decode(np.arange(256) / 255.0)
_SAMPLES = 250_000

Three = tuple[float, float, float]


@dataclass(frozen=True)
class Light:
    """The light measured on one photo: `level`, linear red, green and blue (0..1) in the middle of
    its patch; `counts`, 3 x 256, how many of the photo's pixels have each level."""

    level: Three
    counts: tuple[tuple[int, ...], ...]
    name: str = ""


@dataclass(frozen=True)
class Evening:
    """What evens one photo: linear red, green and blue are multiplied by `gains`.

    `burnt`: the share of the photo's values, by channel, that were at full scale already; what they
    were is lost. `clipped`: the share that the gains put beyond it, lost in the evened copy only.
    """

    gains: Three
    burnt: Three = (0.0, 0.0, 0.0)
    clipped: Three = (0.0, 0.0, 0.0)
    name: str = ""

    @property
    def exposure(self) -> float:
        """How many times more light the evened photo has (the mean of the gains by luminance)."""
        return float(_LUMINANCE @ self.gains)

    @property
    def warmth(self) -> float:
        """How many times more red against blue it has: above 1 it has become warmer."""
        return self.gains[0] / self.gains[2]

    @property
    def text(self) -> str:
        """What was done, in a sentence or two."""
        did = [
            filled(word(template), {"share": _percent(share)})
            for share, template in (
                (self.exposure - 1, marked("{share} lighter")),
                (1 - self.exposure, marked("{share} darker")),
                (self.warmth - 1, marked("{share} warmer")),
                (1 / self.warmth - 1, marked("{share} cooler")),
            )
            if share > UNNOTICED
        ]
        name = _named(self.name)
        said = say("{name} is left as it is.", name=name)
        if did:
            said = say("{name} was made {what}.", name=name, what=all_of(did))
        lost = (
            (self.clipped, marked("{share} of it is now brighter than a picture can show.")),
            (self.burnt, marked("{share} of it was too bright when it was photographed.")),
        )
        for shares, template in lost:
            if max(shares) > 0.0:
                said += " " + filled(word(template), {"share": _percent(max(shares))})
        return said

    def inverse(self) -> Evening:
        """What undoes it: to a level for gains of 1/2 to 2, where nothing was clipped."""
        return Evening(tuple(1.0 / g for g in self.gains), name=self.name)


def measured(pixels: np.ndarray, area: Any, name: str = "") -> Light:
    """The light on a patch of a photo, uint8 rows x columns x 3.

    `area`: a shapely area in pixels (column, row): a grey card, or the background around the leaf
    (`background.around`). Its median by channel counts, so that specks, a shadow and highlights may
    cover almost half of it. Raises VeneerError, naming the photo, for a patch outside it, too
    small, black, burnt out, or full of figure.
    """
    rows, columns = pixels.shape[:2]
    left, top, right, bottom = area.bounds or (np.inf,) * 4  # an empty area has none
    # A click may fall a little beside the picture. (nan, which shapely 2 gives, is not within.)
    if not (left >= -1 and top >= -1 and right <= columns + 1 and bottom <= rows + 1):
        raise VeneerError(
            "patch-outside", "{photo}: the patch for the light lies outside the picture of "
            "{columns} x {rows} pixels; draw it on the picture.",
            photo=_named(name), columns=columns, rows=rows,
        )
    row, column = _sample(mask(area, (rows, columns)), _SAMPLES)
    if len(row) < FEWEST:
        raise VeneerError(
            "patch-too-small", "{photo}: the patch for the light covers only {count} pixels; draw "
            "it larger, at least {least} pixels.",
            photo=_named(name), count=len(row), least=FEWEST,
        )
    sample = pixels[row, column]
    middle = np.array([_median(sample[:, k]) for k in range(3)])
    if middle.min() < DARKEST:
        raise VeneerError(
            "patch-black", "{photo} is black where its light is measured; photograph the leaf "
            "again with more light, or choose another patch.", photo=_named(name),
        )
    if middle.max() >= BRIGHTEST:
        raise VeneerError(
            "patch-burnt", "{photo} is burnt out where its light is measured; photograph the leaf "
            "again with less light, or choose a darker patch.", photo=_named(name),
        )
    if _figure(sample, shading(column, row, rows, columns)) > FIGURED:
        raise VeneerError(
            "patch-figured", "{photo} is not plain where its light is measured; choose a patch of "
            "one colour, without figure, edges or deep shadow.", photo=_named(name),
        )
    counts = Image.fromarray(np.ascontiguousarray(pixels)).histogram()
    channels = tuple(tuple(counts[k : k + 256]) for k in (0, 256, 512))
    return Light(tuple(map(float, decode(middle / 255.0))), channels, name)


def evenings(
    lights: Sequence[Light], grey: bool = False, target: Sequence[float] | None = None
) -> tuple[Evening, ...]:
    """What evens each photo, so that its patch shows the bundle's light: the median of all photos
    by channel, which few photos that are off do not move.

    `grey`: the patch is known to be grey, and is made so, as light as it was. `target`: that light
    instead, linear red, green and blue (of another bundle's photos, say). Raises VeneerError for a
    photo whose light is more than MOST_GAIN times off.
    """
    if not lights:
        raise VeneerError("no-photos-to-even", "There are no photos to even; add at least one.")
    aim = np.median([light.level for light in lights], axis=0)
    if target is not None:
        aim = np.asarray(target, dtype=float)
        if aim.shape != (3,) or not ((aim > 0.0) & (aim <= 1.0)).all():
            raise VeneerError(
                "no-such-light", "The light to even to must be red, green and blue, each above 0 "
                "and not above 1.",
            )
    if grey:
        aim = np.full(3, _LUMINANCE @ aim)
    return tuple(_evening(light, aim) for light in lights)


def evened(pixels: np.ndarray, evening: Evening) -> np.ndarray:
    """`pixels`, uint8 rows x columns x 3, with the gains applied in linear light; what comes out
    beyond full scale is cut to it."""
    out = np.empty_like(pixels, order="C")
    for k, gain in enumerate(evening.gains):
        out[:, :, k] = _levels(gain)[pixels[:, :, k]]
    return out


# --- parts -------------------------------------------------------------------------------------


def _sample(inside: np.ndarray, most: int) -> tuple[np.ndarray, np.ndarray]:
    """Rows and columns of the pixels inside, of so many rows and columns that there are about
    `most`."""
    step = max(1, int(np.sqrt(np.count_nonzero(inside) / most)))
    row, column = np.nonzero(inside[::step, ::step])
    return row * step, column * step


def _figure(sample: np.ndarray, terms: np.ndarray) -> float:
    """How far the lightness of a patch departs from smooth shading, as FIGURED counts it."""
    lightness = srgb_to_lab(sample)[:, 0]
    low, high = np.quantile(lightness - terms @ fitted_to(terms, lightness), (1 / 6, 5 / 6))
    return float(high - low) / 2


def _evening(light: Light, aim: np.ndarray) -> Evening:
    gains = aim / light.level
    if gains.max() > MOST_GAIN or gains.min() < 1 / MOST_GAIN:
        raise VeneerError(
            "light-too-far-off", "{photo} has more than {most} times more or less light than the "
            "others; photograph the leaf again, or leave the photo out.",
            photo=_named(light.name), most=MOST_GAIN,
        )
    counts = np.array(light.counts)
    every = counts.sum(axis=1)
    beyond = gains[:, None] * _LINEAR > decode(255.5 / 255.0)
    beyond[:, 255] = False  # it was lost before
    return Evening(
        tuple(map(float, gains)),
        tuple(map(float, counts[:, 255] / every)),
        tuple(map(float, (counts * beyond).sum(axis=1) / every)),
        light.name,
    )


def _levels(gain: float) -> np.ndarray:
    """The level, 0..255, that each level becomes: the nearest."""
    return np.rint(np.clip(encode(gain * _LINEAR), 0.0, 1.0) * 255.0).astype(np.uint8)


def _median(values: np.ndarray) -> float:
    """The median of whole levels to a part of one: each counts as spread evenly over v - 1/2 to
    v + 1/2 (the median of grouped data)."""
    counts = np.bincount(values, minlength=256)
    below = np.cumsum(counts)
    half = below[-1] / 2.0
    level = int(np.searchsorted(below, half))
    return level - 0.5 + (half - (below[level] - counts[level])) / counts[level]


def _percent(share: float) -> str:
    percent = 100.0 * share
    if percent < 0.05:
        return f"< {figure(0.1)} %"
    return f"{figure(round(percent, 1 if percent < 1 else 0))} %"


def _named(name: str) -> str:
    return name or word("The photo")

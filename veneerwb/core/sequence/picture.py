# SPDX-License-Identifier: LGPL-2.1-or-later
"""A leaf's figure at two coarse scales, for comparing every leaf of a bundle with every other.

What is compared is luminance less its surroundings over the contrast of its neighbourhood, on grids
of FINE and COARSE mm per pixel, row 0 at the bottom. The table that shows beside a leaf is left
out: flat colour that reaches the photograph's edge holds no figure, and the leaf's edge, which
lies elsewhere on every photograph, would drown it.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from PIL import Image
from scipy import ndimage

from veneerwb.core.leaf import Leaf
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence.grid import LEAST_CONTRAST, mask

FINE = 2.0
"""mm per pixel of the grid on which leaves are compared: figure, and not fibre or noise."""
COARSE = 2 * FINE
"""mm per pixel of the grid on which a pair's shift and turn are looked for."""
BORDER = 10.0
"""mm over which the weight rises from 0 at an edge."""
FLIPS = {"turned": (1, -1), "end for end": (-1, -1), "both": (-1, 1)}
"""How a leaf can lie wrong: photographed from its other side (mirrored left-right), turned by 180
degrees in its plane, or both; and the steps through rows and columns that show it so."""
_NEAR, _WIDE = 0.8, 9
"""Pixels: deviation of the blur, and side of the window that counts as surroundings."""
_LIMIT = 2.5
_FLAT, _SPECK, _EDGE = 7.0, 12, 3
"""Grey levels by which the table varies between neighbouring pixels; fewer pixels than _SPECK are
no table; so many pixels beside it are the leaf's edge."""
_UNSEEN = ("margin", "split", "patch", "stain")
"""Faults that say nothing of the figure; a knot runs on from leaf to leaf."""


@dataclass(frozen=True)
class Field:
    """Figure and weight (float32, rows x columns) at `scale` mm per pixel."""

    figure: np.ndarray
    weight: np.ndarray
    scale: float

    @cached_property
    def images(self) -> tuple[Image.Image, Image.Image]:
        return Image.fromarray(self.figure), Image.fromarray(self.weight)

    @property
    def weighed(self) -> np.ndarray:
        return self.figure * self.weight

    @property
    def size(self) -> tuple[float, float]:
        """mm across and along."""
        rows, columns = self.figure.shape
        return columns * self.scale, rows * self.scale

    def flipped(self, how: str) -> Field:
        """The field as the leaf would show it, lying in one of FLIPS."""
        along, across = FLIPS[how]
        figure, weight = (
            np.ascontiguousarray(v[::along, ::across]) for v in (self.figure, self.weight)
        )
        return Field(figure, weight, self.scale)


@dataclass(frozen=True)
class Picture:
    """The face of leaf `number`. `contrast`: grey levels by which its figure varies."""

    number: int
    coarse: Field
    fine: Field
    contrast: float

    def flipped(self, how: str) -> Picture:
        return Picture(
            self.number, self.coarse.flipped(how), self.fine.flipped(how), self.contrast
        )

    def unflipped(self, how: str) -> Motion:
        """From mm on `flipped(how)` to mm on this picture."""
        return unflipped(how, *self.fine.size)


def unflipped(how: str, width: float, length: float) -> Motion:
    """From mm on a picture of that size flipped as FLIPS has it ("": not) to mm on it as it is."""
    return {
        "": IDENTITY,
        "turned": Motion(0.0, width, 0.0, mirrored=True),
        "end for end": Motion(180.0, width, length),
        "both": Motion(180.0, 0.0, length, mirrored=True),
    }[how]


def picture(leaf: Leaf) -> Picture:
    """The face of a leaf without the table, faults that hide the figure, and what lies off the
    usable area."""
    light = _light(leaf)
    inside = 1 - _table(light).astype(np.float32)
    inside *= mask(leaf.usable, light.shape, FINE)
    for fault in leaf.faults:
        if fault.kind in _UNSEEN:
            inside *= 1 - mask(fault.outline, light.shape, FINE)
    figure, contrast = _normalised(light, inside)
    fine = Field(figure, _softened(inside, BORDER / FINE), FINE)
    inside = (_halved(inside) > 0.99).astype(np.float32)
    figure, _ = _normalised(_halved(light), inside)
    coarse = Field(figure, _softened(inside, BORDER / COARSE), COARSE)
    return Picture(leaf.number, coarse, fine, contrast)


def _light(leaf: Leaf) -> np.ndarray:
    """Luminance on the fine grid, an even number of rows and columns. What is finer than the grid
    is left out as sharply as can be: averaged over cells it would show as figure that no two
    photographs of one leaf have in common."""
    grey = Image.fromarray(leaf.photo).convert("L")
    ratio = FINE / leaf.mm_per_px
    shrink = max(1, int(ratio / 2))
    if shrink > 1:  # large photographs: half way in whole numbers, which needs little memory
        grey = grey.reduce(shrink)
    ratio /= shrink
    columns, rows = (max(4, int(n / ratio / 2) * 2) for n in grey.size)
    box = (0.0, max(0.0, grey.height - rows * ratio), min(grey.width, columns * ratio), grey.height)
    fine = grey.convert("F").resize((columns, rows), Image.Resampling.LANCZOS, box)
    return np.asarray(fine)[::-1].copy()


def _table(light: np.ndarray) -> np.ndarray:
    """Where flat colour reaches in from the photograph's edge; nowhere if that is most of it."""
    calm = ndimage.gaussian_filter(light, 0.5, mode="nearest")
    flat = ndimage.maximum_filter(calm, 3) - ndimage.minimum_filter(calm, 3) < _FLAT
    labels, count = ndimage.label(flat)
    rim = np.unique(np.concatenate([labels[0], labels[-1], labels[:, 0], labels[:, -1]]))
    table = np.zeros(count + 1, bool)
    table[rim] = True
    table[0] = False
    table &= np.bincount(labels.ravel(), minlength=count + 1) >= _SPECK
    found = ndimage.binary_dilation(table[labels], np.ones((3, 3)), iterations=_EDGE)
    return found if found.mean() < 0.5 else np.zeros_like(found)


def _halved(values: np.ndarray) -> np.ndarray:
    rows, columns = values.shape
    return values.reshape(rows // 2, 2, columns // 2, 2).mean(axis=(1, 3))


def _normalised(light: np.ndarray, inside: np.ndarray) -> tuple[np.ndarray, float]:
    """Luminance less its surroundings over the local contrast, within the mask only, and the
    contrast over all."""
    share = np.maximum(_wide(inside, _WIDE), 1e-3)
    rest = (light - _wide(light * inside, _WIDE) / share) * inside
    rest = ndimage.gaussian_filter(rest, _NEAR) * inside
    power = _wide(rest * rest, 2 * _WIDE) / np.maximum(_wide(inside, 2 * _WIDE), 1e-3)
    over_all = math.sqrt(float((rest * rest).sum()) / max(1.0, float(inside.sum())))
    floor = max(LEAST_CONTRAST, 0.3 * over_all)
    figure = rest / np.sqrt(np.maximum(power, 0) + np.float32(floor**2))
    return np.clip(figure, -_LIMIT, _LIMIT).astype(np.float32), over_all


def _softened(inside: np.ndarray, border: float) -> np.ndarray:
    size = 2 * max(1, round(border)) + 1
    even = ndimage.uniform_filter(inside, size, mode="constant")
    return (np.clip(2 * even - 1, 0, 1) * inside).astype(np.float32)


def _wide(values: Any, size: int) -> np.ndarray:
    once = ndimage.uniform_filter(values, size, mode="constant")
    return ndimage.uniform_filter(once, size, mode="constant")

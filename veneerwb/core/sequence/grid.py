# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pictures of leaves as they are aligned: figure and weight on grids of LEVELS mm per pixel.

A grid is single-channel, of area averages of the photograph, row 0 at the bottom, so that rows run
with y. Each value is the luminance less its surroundings, divided by the contrast of its
neighbourhood: what is left is figure, whatever the light. Faults, spots of dirt and what lies off
the usable area have no weight.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from PIL import Image, ImageDraw
from scipy.ndimage import gaussian_filter, spline_filter, uniform_filter

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Leaf
from veneerwb.core.photos.reading import too_large

WORKING_SCALE = 1.0
"""mm per pixel of the finest grid: the registers' working scale."""
LEVELS = (4.0, 2.0, WORKING_SCALE)
"""mm per pixel of the grids, coarse to fine."""
BORDER = 16.0
"""mm over which the weight rises from 0 at an edge, so that what it cuts off hardly matters."""
LEAST_CONTRAST = 0.4
"""Grey levels of 255: what varies less than this is noise and no figure."""
_NEAR, _WIDE = 1, 4
"""Pixels: deviation of the blur, and reach of what counts as surroundings."""
_LIMIT = 3.0
_SPOT, _FEW, _AROUND = 5.0, 1e-3, 40.0
"""Deviations from which on a pixel is dirt and not figure, the share of such that is none, and the
mm about it that it is compared with."""
_FLAT, _FLAT_SCALE, _FLAT_REACH, _BEYOND = 0.1, 2.0, 14.0, 6.0
"""Where a photograph changes less than that share of what it does in its liveliest tenth, it is
flat; looked for at that many mm per pixel, within squares of that many mm, and so many mm beyond
count with it."""
_BLOCK_ROWS = 256
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
        return steepness(self.figure)

    @cached_property
    def spline(self) -> np.ndarray:
        """Coefficients of the cubic spline through the figure: a straight line between pixels
        blurs what is shifted by half a pixel, and so favours fibres over rings by the shift."""
        return spline_filter(self.figure, order=3, output=np.float32)


def no_figure(number: int) -> VeneerError:
    """What is to be said of leaf `number` if it varies less than LEAST_CONTRAST."""
    return VeneerError(
        "no-figure",
        "The photograph of leaf {leaf} shows no figure within its usable area (it is black, white "
        "or even); photograph it again or leave it out.",
        leaf=number,
    )


def check_scale(leaf: Leaf) -> None:
    """VeneerError for a leaf so large that its scale must be wrong, before its grids fill the
    memory."""
    if too_large(*leaf.size):
        width, length = (side / 1000 for side in leaf.size)
        raise VeneerError(
            "scale-too-large",
            "By its scale of {scale} mm per pixel leaf {leaf} would be {width} x {length} m large; "
            "set the scale of its photograph again.",
            leaf=leaf.number, scale=leaf.mm_per_px, width=round(width, 1), length=round(length, 1),
        )


def grids(leaf: Leaf) -> tuple[Grid, ...]:
    """The face of a leaf on the grids of LEVELS; its faults and what lies off its usable area have
    no weight."""
    check_scale(leaf)
    light = _light(leaf.photo)
    areas = _areas(light, leaf)
    return tuple(_grid(light, leaf, areas, scale) for scale in LEVELS)


def grid_of(leaf: Leaf) -> Grid:
    """The face of a leaf on its finest grid; see `grids`."""
    check_scale(leaf)
    light = _light(leaf.photo)
    return _grid(light, leaf, _areas(light, leaf), WORKING_SCALE)


def _light(photo: np.ndarray) -> np.ndarray:
    """Luminance, float32: by blocks, for the product makes three numbers of a photo's every byte.
    """
    light = np.empty(photo.shape[:2], np.float32)
    for top in range(0, len(photo), _BLOCK_ROWS):
        np.matmul(photo[top : top + _BLOCK_ROWS], _LUMA, out=light[top : top + _BLOCK_ROWS])
    return light


def _grid(light: np.ndarray, leaf: Leaf, areas: Image.Image | None, scale: float) -> Grid:
    shape = _shape(leaf, scale)
    here = _averaged(light, leaf.mm_per_px, scale, shape)
    inside = _inside(leaf, scale)
    if areas is not None:
        inside *= np.asarray(areas.resize(shape[::-1], Image.Resampling.NEAREST))
    figure, clean, contrast = _normalised(here, inside, _AROUND / scale)
    return Grid(figure, softened(inside, BORDER / scale) * clean, scale, contrast)


def _shape(leaf: Leaf, scale: float) -> tuple[int, int]:
    width, length = leaf.size
    return max(4, int(length / scale)), max(4, int(width / scale))


def _inside(leaf: Leaf, scale: float) -> np.ndarray:
    """1 on the usable area and off the faults, else 0."""
    inside = mask(leaf.usable, _shape(leaf, scale), scale)
    for fault in leaf.faults:
        inside *= 1 - mask(fault.outline, inside.shape, scale)
    return inside


def _areas(light: np.ndarray, leaf: Leaf) -> Image.Image | None:
    """1 where a photograph shows anything, 0 in flat areas (a white frame, a table, a leaf's plain
    part) and near them: their edges are no figure, and where they lie still while leaves move, they
    would hold the register fast. None if there are none."""
    here = _averaged(light, leaf.mm_per_px, _FLAT_SCALE, _shape(leaf, _FLAT_SCALE))
    inside = _inside(leaf, _FLAT_SCALE)
    if not inside.any():
        return None
    size = 2 * round(_FLAT_REACH / _FLAT_SCALE / 2) + 1
    steep = np.hypot(*np.gradient(here)).astype(np.float32) * inside
    near = uniform_filter(inside, size, mode="constant")
    lively = uniform_filter(steep, size, mode="constant") / np.maximum(near, 1e-3)
    flat = inside * (lively < _FLAT * np.percentile(lively[inside > 0], 90))
    if flat.mean() < _FEW:
        return None
    grown = uniform_filter(flat, size + 2 * round(_BEYOND / _FLAT_SCALE), mode="constant")
    return Image.fromarray((grown < 1e-4).astype(np.float32))


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


def _normalised(
    light: np.ndarray, inside: np.ndarray, around: float
) -> tuple[np.ndarray, np.ndarray, float]:
    """Luminance less its surroundings over the local contrast, taken within the mask only and
    without spots, which stand out too much from what lies `around` pixels about to be figure; the
    mask less those, and the contrast over all."""
    rest = _detail(light, inside)
    stain = np.abs(rest) > _SPOT * _deviation(rest, inside, around)
    if stain.mean() > _FEW:
        inside = inside * (uniform_filter(stain.astype(np.float32), 3) < 0.1)
        rest = _detail(light, inside)
    size = 2 * _WIDE + 1
    power = _wide(rest * rest, 2 * size) / np.maximum(_wide(inside, 2 * size), 1e-3)
    over_all = math.sqrt(float((rest * rest).sum()) / max(1.0, float(inside.sum())))
    floor = max(LEAST_CONTRAST, 0.3 * over_all)
    figure = rest / np.sqrt(power + np.float32(floor**2))
    return np.clip(figure, -_LIMIT, _LIMIT).astype(np.float32), inside, over_all


def _detail(light: np.ndarray, inside: np.ndarray) -> np.ndarray:
    size = 2 * _WIDE + 1
    calm = np.where(inside > 0, light, 0)
    level = _wide(calm * inside, size) / np.maximum(_wide(inside, size), 1e-3)
    return gaussian_filter((light - level) * inside, _NEAR) * inside


def _deviation(rest: np.ndarray, inside: np.ndarray, around: float) -> np.ndarray:
    """Over all, from the median, which spots hardly change, or round a pixel if that is more: where
    a plain leaf shows figure in one place, that is no dirt. Factors: for a normal distribution."""
    some = np.abs(rest[::2, ::2][inside[::2, ::2] > 0])
    over_all = 1.4826 * float(np.median(some)) if some.size else 0.0
    size = 2 * round(around) + 1
    near = uniform_filter(np.abs(rest), size, mode="constant")
    share = uniform_filter(inside, size, mode="constant")
    return np.maximum(1.2533 * near / np.maximum(share, 1e-3), max(LEAST_CONTRAST, over_all))


def _wide(values: np.ndarray, size: int) -> np.ndarray:
    return uniform_filter(uniform_filter(values, size, mode="constant"), size, mode="constant")


def steepness(figure: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    along, across = np.gradient(figure)
    return across, along

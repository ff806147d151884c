# SPDX-License-Identifier: LGPL-2.1-or-later
"""The leaf found on a plain background, and areas of a picture as masks.

Places on a picture are (column, row), row 0 at the top, pixel centres at half-integers: the picture
of R rows and C columns reaches from (0, 0) to (C, R).
"""

from __future__ import annotations

from typing import Any

import numpy as np
from PIL import Image, ImageDraw
from scipy import ndimage
from shapely.geometry import MultiLineString, Polygon, box
from shapely.ops import polygonize

from veneerwb.core.colour import srgb_to_lab
from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import positive

WORKING = 1.5e6
"""Pixels: larger pictures are searched in means of blocks, not larger than this."""
BORDER = 0.03
"""The strip along the picture's edge where the background is looked for, as a share of the
picture's shorter side."""
UNEVEN = 3.0
"""CIELAB units that a plain background may depart from its smooth shading (a deviation)."""
SHADED = 15.0
"""CIELAB units (see `_difference`) that the light may change it by over the picture."""
SHOWN = 0.6
"""The share of that strip which must be background; a leaf may run out of the picture elsewhere."""
FAINTEST = 6.0
"""CIELAB units: what differs less from the background is none of a leaf."""
LITTERED = 0.25
"""The share of what is not the leaf that other things and shadows may cover."""
SHADOW = 0.3
"""How much mere darkness counts as a difference from the background."""
SMALLEST = 0.02
"""The least share of the picture that a leaf takes."""
_RIM = 3  # pixels: how far within its outer edge a leaf shows its colour
_SMOOTH = 0.7  # pixels: noise is evened before colours are compared


def leaf_on_background(pixels: np.ndarray, tolerance: float = 1.0) -> Any:
    """The outline of the leaf on a plain background of any colour, as a shapely Polygon.

    `pixels` uint8 rows x columns x 3; the outline without holes, simplified to `tolerance` pixels.
    The background is what most of the picture's border shows: a colour in CIELAB that may shade
    smoothly (a quadratic over the picture, fitted again to what lies near it). The leaf is the
    largest connected region that differs by more than a shadow; its edge runs where the difference
    is half of what it is just inside. A leaf that runs out of the picture ends at the
    picture's edge. Raises VeneerError where the background is not plain, or nothing lies on it.
    """
    tolerance = positive("tolerance of the outline in pixels", tolerance)
    rows, columns = pixels.shape[:2]
    block = max(1, int(np.ceil(np.sqrt(rows * columns / WORKING))))
    small = np.asarray(Image.fromarray(np.ascontiguousarray(pixels)).reduce(block))
    if min(small.shape[:2]) < 20:
        raise VeneerError(
            "picture-too-small",
            "The picture of {columns} x {rows} pixels is too small to find a leaf on it; give the "
            "photograph itself.",
            columns=columns, rows=rows,
        )
    lab = ndimage.gaussian_filter(srgb_to_lab(small), (_SMOOTH, _SMOOTH, 0), mode="nearest")
    apart, noise = _differences(lab)
    outline = _largest(_contours(_leaf(apart, noise)))
    scaled = np.minimum(np.array(outline.exterior.coords) * block, (columns, rows))
    found = Polygon(scaled).simplify(tolerance)
    return found if found.is_valid else _largest([found.buffer(0)])


def around(leaf: Any, shape: tuple[int, ...], clear: float) -> Any:
    """The background (shapely, pixels): the picture of (rows, columns) without the leaf and what
    lies within `clear` pixels of it, where its shadow falls."""
    return box(0.0, 0.0, shape[1], shape[0]).difference(leaf.buffer(clear))


def mask(area: Any, shape: tuple[int, ...]) -> np.ndarray:
    """bool, rows x columns: the pixels of a picture that `area` (shapely, pixels) covers, to within
    a pixel at its edge."""
    image = Image.new("1", (shape[1], shape[0]))
    draw = ImageDraw.Draw(image)
    parts = [p for p in getattr(area, "geoms", [area]) if isinstance(p, Polygon) and not p.is_empty]
    for part in parts:
        for ring, inside in ((part.exterior, 1), *((r, 0) for r in part.interiors)):
            draw.polygon([(x - 0.5, y - 0.5) for x, y in ring.coords], fill=inside)
    return np.array(image)


def shading(x: np.ndarray, y: np.ndarray, rows: int, columns: int) -> np.ndarray:
    """What light may do smoothly over a picture, at the pixels of columns x and rows y: 1, x, y,
    x^2, x y, y^2 with x and y from -1 to 1 over it, along a last axis of 6."""
    x, y = 2 * (x + 0.5) / columns - 1, 2 * (y + 0.5) / rows - 1
    return np.stack([np.ones_like(x), x, y, x * x, x * y, y * y], axis=-1)


def fitted_to(terms: np.ndarray, values: np.ndarray) -> np.ndarray:
    """The coefficients by which `terms` (N x 6, see `shading`) come nearest to `values`, by least
    squares: of the 6 x 6 normal equations, for N may be a quarter of a million."""
    return np.linalg.lstsq(terms.T @ terms, terms.T @ values, rcond=None)[0]


# --- colour ------------------------------------------------------------------------------------


def _differences(lab: np.ndarray) -> tuple[np.ndarray, float]:
    """How far each pixel's colour lies from the background's there, and how far that itself
    scatters, in CIELAB units."""
    rows, columns = lab.shape[:2]
    wide = max(2, round(BORDER * min(rows, columns)))
    strip = np.ones((rows, columns), bool)
    strip[wide:-wide, wide:-wide] = False
    y, x = np.nonzero(strip)
    terms, colours = shading(x, y, rows, columns), lab[strip]
    expected = np.median(colours, axis=0)
    off = np.linalg.norm(colours - expected, axis=1)
    near = off <= np.quantile(off, SHOWN)
    for _ in range(8):
        fitted = fitted_to(terms[near], colours[near])
        off = np.linalg.norm(colours - terms @ fitted, axis=1)
        scatter = float(np.quantile(off, SHOWN / 2))  # of the better half of what must be plain
        near = off <= max(4.0 * scatter, FAINTEST / 2)
    shaded = terms[near] @ fitted
    change = _difference(shaded, shaded[shaded[:, 0].argmax()]).max()
    if scatter > UNEVEN or near.mean() < SHOWN or change > SHADED:
        raise _not_plain()
    y, x = np.indices((rows, columns))
    return _difference(lab, shading(x, y, rows, columns) @ fitted), scatter


def _not_plain() -> VeneerError:
    return VeneerError(
        "background-not-plain",
        "The picture shows no plain background; photograph the leaf on a sheet or table of one "
        "colour that shows all round it, or draw its outline by hand.",
    )


def _difference(lab: np.ndarray, background: np.ndarray) -> np.ndarray:
    """CIELAB distance in which what only darkens the background counts by SHADOW.

    Light k times as strong multiplies L + 16, a and b by the cube root of k (CIE 15, above the
    knee), so that a shadow moves a colour along (L + 16, a, b).
    """
    toward = background + (16.0, 0.0, 0.0)
    toward /= np.linalg.norm(toward, axis=-1, keepdims=True)
    off = lab - background
    along = (off * toward).sum(axis=-1)
    beside = np.maximum((off**2).sum(axis=-1) - along**2, 0.0)
    return np.sqrt(beside + (along * np.where(along < 0.0, SHADOW, 1.0)) ** 2)


def _leaf(apart: np.ndarray, noise: float) -> np.ndarray:
    """The leaf as a field from 0 to 1 that passes 1/2 at its edge."""
    faintest = max(FAINTEST, 4.0 * noise)
    region = _one_region(apart > faintest)
    if region.mean() < SMALLEST:
        raise VeneerError(
            "no-leaf-found",
            "No leaf stands out from the background; photograph it on a sheet or table of another "
            "colour, or draw its outline by hand.",
        )
    beside = ~ndimage.binary_dilation(region, iterations=2 * _RIM)
    if (apart[beside] > faintest).sum() > LITTERED * beside.sum():
        raise _not_plain()
    peak = ndimage.maximum_filter(np.where(region, apart, 0.0), 2 * _RIM + 1)
    field = np.clip(apart / np.maximum(peak, 2 * faintest), 0.0, 1.0)
    field[ndimage.binary_erosion(region, iterations=_RIM, border_value=1)] = 1.0
    rim = ndimage.binary_dilation(region)  # further out there is none
    return np.where(rim & (region | (apart <= faintest)), field, 0.0)


def _one_region(other: np.ndarray) -> np.ndarray:
    """The largest connected region, without what hangs on it by a thread."""
    core = ndimage.binary_opening(other, iterations=2)
    labels, count = ndimage.label(core)
    if not count:
        return np.zeros_like(other)
    sizes = np.bincount(labels.ravel())
    sizes[0] = 0
    return ndimage.binary_dilation(labels == sizes.argmax(), iterations=3) & other


# --- outline -----------------------------------------------------------------------------------


def _contours(field: np.ndarray) -> list[Any]:
    """Polygons of the lines on which `field` is 1/2, linear between pixel centres, off the picture
    0: the squares between four centres, each cut by a line or two (marching squares)."""
    f = np.pad(field, 1) - 0.5
    above = f > 0
    corners = (above[:-1, :-1], above[:-1, 1:], above[1:, 1:], above[1:, :-1])  # clockwise
    case = sum(corner.astype(int) << k for k, corner in enumerate(corners))
    with np.errstate(divide="ignore", invalid="ignore"):
        along = f[:, :-1] / (f[:, :-1] - f[:, 1:])  # the share of the way to the next column
        down = f[:-1] / (f[:-1] - f[1:])
    lines = []
    for number, cuts in _CUTS.items():
        r, c = np.nonzero(case == number)
        at = {  # a padded centre (r, c) lies at (c - 1/2, r - 1/2) on the picture
            "top": (c + along[r, c] - 0.5, r - 0.5), "bottom": (c + along[r + 1, c] - 0.5, r + 0.5),
            "left": (c - 0.5, r + down[r, c] - 0.5), "right": (c + 0.5, r + down[r, c + 1] - 0.5),
        }
        for one, other in cuts:
            ends = np.stack([np.stack(at[one], axis=-1), np.stack(at[other], axis=-1)], axis=1)
            lines += ends[(ends[:, 0] != ends[:, 1]).any(axis=1)].tolist()
    return list(polygonize(MultiLineString(lines)))


_CUTS = {
    1: [("left", "top")], 2: [("top", "right")], 3: [("left", "right")], 4: [("right", "bottom")],
    5: [("left", "top"), ("right", "bottom")], 6: [("top", "bottom")], 7: [("left", "bottom")],
    8: [("bottom", "left")], 9: [("top", "bottom")], 10: [("top", "right"), ("bottom", "left")],
    11: [("right", "bottom")], 12: [("left", "right")], 13: [("top", "right")],
    14: [("left", "top")],
}
"""Which sides of a square the line joins, by which corners lie inside (1 upper left, then
clockwise 2, 4, 8)."""


def _largest(polygons: list[Any]) -> Any:
    parts = [part for p in polygons for part in getattr(p, "geoms", [p])]
    return Polygon(max((Polygon(p.exterior) for p in parts), key=lambda p: p.area).exterior)

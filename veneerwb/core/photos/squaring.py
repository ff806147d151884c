# SPDX-License-Identifier: LGPL-2.1-or-later
"""Squaring up a photograph from the four corners of a known rectangle, and its scale from two
points.

Pixels are uint8 rows x columns x 3, row 0 at the top. Places on a picture are (column, row), pixel
centres at half-integers: the picture of R rows and C columns reaches from (0, 0) to (C, R).
Millimetres are those of the rectangle's plane: origin at its lower left, x right, y up.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from PIL import Image

from veneerwb.core.errors import VeneerError
from veneerwb.core.photos.decode import MOST_MEGAPIXELS
from veneerwb.core.photos.reading import COARSEST
from veneerwb.core.plane import positive

NEAREST = 20.0
"""px: corners, or the two points of a scale, are not nearer; a click is a pixel or so off."""
FLATTEST = 0.1
"""Least sine of an angle at a corner (some 6 degrees): flatter, the three lie on a line."""
STEEPEST = 10.0
"""How many times further than the nearest part the furthest may be: beyond, nothing is seen."""
DOUBTFUL = 1.1
"""A rectangle that fits so well as it stands is not turned: an almost square one never is."""
UNLIKE = 2.0
"""A rectangle that seems so many times longer or shorter than it was said to be is another one."""
APART = 4 / 3
"""px: from sample to sample, at most; a bilinear sample sees two pixels."""
MOST_SAMPLES = 8
"""Samples along one side of a pixel, at most."""
_BAND = 1 << 21  # samples taken at a time
_NONE = np.float32(1e-6)

Box = tuple[float, float, float, float]


@dataclass(frozen=True)
class Squaring:
    """How a picture shows the plane of a rectangle `width` x `length` mm.

    `corners` are (column, row) of its lower left, lower right, upper right and upper left. With
    homogeneous H from mm to pixels, (u, v, w) = H (x, y, 1) is seen at column u / w, row v / w; w
    is as the distance from the camera. Made by `squaring`.
    """

    corners: tuple[tuple[float, float], ...]
    width: float
    length: float

    @cached_property
    def matrix(self) -> np.ndarray:
        """H, 3 x 3, from mm to (column, row)."""
        return _homography(_rectangle(self.width, self.length), self.corners)

    def to_pixels(self, points: Any) -> np.ndarray:
        """Points, N x 2 in mm, as (column, row)."""
        return _carried(self.matrix, points)

    def to_mm(self, points: Any) -> np.ndarray:
        """Points, N x 2 as (column, row), in mm."""
        return _carried(np.linalg.inv(self.matrix), points)

    def around(self, margin: float = 0.0) -> Box:
        """(left, lower, right, upper) in mm: the rectangle and `margin` mm round it."""
        margin = positive("margin", margin) if margin else 0.0
        return -margin, -margin, self.width + margin, self.length + margin

    def whole(self, shape: tuple[int, ...]) -> Box:
        """(left, lower, right, upper) in mm: all that a picture of (rows, columns) shows.

        Raises VeneerError where it shows the plane up to its horizon.
        """
        seen = np.column_stack([_frame(shape), np.ones(4)]) @ np.linalg.inv(self.matrix).T
        _not_too_steep(seen[:, 2])  # 1 / w
        places = seen[:, :2] / seen[:, 2:]
        (left, lower), (right, upper) = places.min(axis=0), places.max(axis=0)
        return float(left), float(lower), float(right), float(upper)

    def picture(self, pixels: np.ndarray, mm_per_px: float, area: Box) -> np.ndarray:
        """What lies within `area` (mm), squared: uint8 rows x columns x 3 at `mm_per_px`.

        The lower left of the result is exactly that of `area`; its size is rounded to pixels.
        A pixel of the result is the mean over its area of the photo, in bilinear samples at most
        APART; a result no coarser than that is bicubic. Where one part of the photo is more than
        MOST_SAMPLES times coarser than another, samples lie wider apart. Off the photo its edge is
        repeated. Raises VeneerError for a result that is too large, or seen too slanted.
        """
        scale = positive("scale of the photo in mm per pixel", mm_per_px, COARSEST)
        left, lower, right, upper = area
        columns = max(2, round((right - left) / scale))
        rows = max(2, round((upper - lower) / scale))
        if rows * columns > MOST_MEGAPIXELS * 1e6:
            raise VeneerError(
                "squared-too-large",
                "The squared picture would have {columns} x {rows} pixels, more than {most} "
                "megapixels; give more mm per pixel or a smaller margin.",
                columns=columns, rows=rows, most=MOST_MEGAPIXELS,
            )
        grid = np.array([[scale, 0, left], [0, -scale, lower + rows * scale], [0, 0, 1.0]])
        return _resampled(np.asarray(pixels), self.matrix @ grid, rows, columns)

    def trust(self, shape: tuple[int, ...] | None = None) -> float:
        """How many mm a click that is one pixel off moves the corner that it moves furthest: of the
        rectangle, or of the whole picture too, if its `shape` (rows, columns) is given.

        With P(c1 .. c4; q) the place in mm of the pixel q when the corners are clicked at c1 .. c4,
        it is the largest over i and q of the spectral norm of dP/dci (2 x 2, mm per pixel). A sheet
        that fills a quarter of the picture's width does several times worse at the picture's
        corners than at its own.
        """
        places, step, worst = np.array(self.corners), 1e-3, 0.0
        if shape is not None:
            self.whole(shape)  # a horizon in the picture has no place in mm
            places = np.concatenate([places, _frame(shape)])
        for corner in range(4):
            slopes = []
            for axis in range(2):
                ends = []
                for off in (step, -step):
                    clicks = np.array(self.corners)
                    clicks[corner, axis] += off
                    back = _homography(clicks, _rectangle(self.width, self.length))
                    ends.append(_carried(back, places))
                slopes.append((ends[0] - ends[1]) / (2 * step))
            worst = max(worst, *np.linalg.norm(np.stack(slopes, axis=-1), 2, axis=(1, 2)))
        return float(worst)


def squaring(
    corners: Any, width: float, length: float, shape: tuple[int, ...], turn: bool = True
) -> Squaring:
    """The Squaring of a picture of `shape` (rows, columns, ...) from four clicked corners, 4 x 2
    (column, row) in any order, of a rectangle `width` x `length` mm.

    The picture's own up is the rectangle's, unless the rectangle then seems to lie on its side:
    with `turn` the picture is turned a quarter clockwise (its left becomes the top), without it
    stays as it is and width and length change places (a sheet beside the leaf). Raises VeneerError
    for corners that no rectangle has.
    """
    width, length = positive("width", width), positive("length", length)
    clicks = _clicked(corners, shape)
    ring = _from_lower_left(_in_order(clicks))
    shown = _proportion(ring, shape)  # width by length, as the camera saw it
    upright, turned = (abs(math.log(shown / side)) for side in (width / length, length / width))
    lying = upright > math.log(DOUBTFUL) and turned < upright
    if min(upright, turned) > math.log(UNLIKE):
        raise VeneerError(
            "not-that-rectangle",
            "The corners do not look like a rectangle of {width} x {length} mm; check both sizes, "
            "and that each corner is clicked once.",
            width=width, length=length,
        )
    if lying and turn:
        ring = np.roll(ring, -1, axis=0)  # what was at the lower right is now at the lower left
    elif lying:
        width, length = length, width
    return Squaring(tuple((float(c), float(r)) for c, r in ring), width, length)


def squared(
    pixels: np.ndarray, corners: Any, width: float, length: float, mm_per_px: float,
    margin: float = 0.0, whole: bool = False,
) -> np.ndarray:
    """`pixels` squared up from four corners (column, row), clicked in any order, of a rectangle
    `width` x `length` mm, at `mm_per_px`; uint8 rows x columns x 3.

    The result is the rectangle, standing as its width and length say, and `margin` mm round it; or
    with `whole` all of the picture with its own side up. Raises VeneerError (see `squaring`).
    """
    found = squaring(corners, width, length, pixels.shape, turn=not whole)
    area = found.whole(pixels.shape) if whole else found.around(margin)
    return found.picture(pixels, mm_per_px, area)


def scale_between(a: Any, b: Any, distance: float, shape: tuple[int, ...] | None = None) -> float:
    """mm per pixel from two points (column, row) that lie `distance` mm apart.

    One pixel's error in a click changes it by its share 1 / d, with d the pixels from a to b. Holds
    for a photo taken square on; points must lie within the picture, if its `shape` is given. Raises
    VeneerError for points too near each other or a scale that shows no figure.
    """
    distance = positive("distance between the two points", distance)
    ends = _points([a, b], 2)
    if shape is not None:
        _within(ends, shape)
    apart = math.dist(*ends)
    if apart < NEAREST:
        raise VeneerError(
            "points-too-near",
            "The two points are only {apart} pixels apart; choose two at least {least} apart, the "
            "further the better.",
            apart=round(apart, 1), least=NEAREST,
        )
    return positive("scale of the photo in mm per pixel", distance / apart, COARSEST)


# --- the clicked corners -----------------------------------------------------------------------


def _points(points: Any, count: int) -> np.ndarray:
    try:
        array = np.asarray(points, dtype=float)
    except (TypeError, ValueError):
        array = np.empty(0)
    if array.shape != (count, 2) or not np.isfinite(array).all():
        raise VeneerError(
            "not-points", "Click {count} points on the picture, each once.", count=count
        )
    return array


def _within(points: np.ndarray, shape: tuple[int, ...]) -> None:
    for number, (column, row) in enumerate(points, start=1):
        if not (0.0 <= column <= shape[1] and 0.0 <= row <= shape[0]):
            raise VeneerError(
                "point-outside",
                "Point {number} (column {column}, row {row}) lies outside the picture of {columns} "
                "x {rows} pixels; click it on the picture.",
                number=number, column=round(float(column), 1), row=round(float(row), 1),
                columns=shape[1], rows=shape[0],
            )


def _clicked(corners: Any, shape: tuple[int, ...]) -> np.ndarray:
    clicks = _points(corners, 4)
    _within(clicks, shape)
    for one in range(4):
        for other in range(one):
            if math.dist(clicks[one], clicks[other]) < NEAREST:
                raise VeneerError(
                    "corners-coincide",
                    "Corners {one} and {other} lie in one place; click four corners that are at "
                    "least {least} pixels apart.",
                    one=other + 1, other=one + 1, least=NEAREST,
                )
    return clicks


def _in_order(clicks: np.ndarray) -> np.ndarray:
    """The corners in one round, counter-clockwise as seen; VeneerError unless it is convex."""
    out = clicks - clicks.mean(axis=0)
    ring = clicks[np.argsort(np.arctan2(-out[:, 1], out[:, 0]))]
    ahead = np.roll(ring, -1, axis=0) - ring
    behind = np.roll(ahead, 1, axis=0)
    cross = behind[:, 1] * ahead[:, 0] - behind[:, 0] * ahead[:, 1]
    sines = cross / np.hypot(*ahead.T) / np.hypot(*behind.T)  # above 0: a turn to the left, as seen
    if (np.abs(sines) < FLATTEST).any():
        raise VeneerError(
            "corners-on-a-line",
            "Three of the corners lie almost on a line; click the four corners of the rectangle, "
            "each once.",
        )
    if (sines < 0.0).any():
        raise VeneerError(
            "corners-dented",
            "One corner lies inside the other three, as no rectangle's does; click the four "
            "corners of the rectangle, each once.",
        )
    return ring


def _from_lower_left(ring: np.ndarray) -> np.ndarray:
    """The round begun at the corner with which the sides lie nearest to the picture's own."""
    def upright(start: int) -> tuple[float, float]:
        p = np.roll(ring, -start, axis=0)
        across, up = p[1] - p[0] + p[2] - p[3], p[3] - p[0] + p[2] - p[1]
        return round(float(across[0] - up[1]), 6), float(-p[0, 0])  # at 45 degrees: the left one

    return np.roll(ring, -max(range(4), key=upright), axis=0)


def _proportion(ring: np.ndarray, shape: tuple[int, ...]) -> float:
    """Width by length of the rectangle seen at `ring`, through a camera that looks at the middle
    of the picture from as far as its longer side.

    With H from the unit square to the picture and K such a camera's matrix, the first two columns
    of inv(K) H are the rectangle's sides, to one factor (R. Hartley, A. Zisserman, Multiple View
    Geometry, 2nd ed. 2004, section 8.8 has the relation). No lens is known here; between a wide
    one and a long one the answer changes little, and nothing rests on it but which side is longer.
    """
    sides = _homography(_rectangle(1.0, 1.0), ring)
    rows, columns = shape[:2]
    far = float(max(rows, columns))
    camera = np.array([[far, 0, columns / 2], [0, far, rows / 2], [0, 0, 1.0]])
    across, along, _ = np.linalg.solve(camera, sides).T
    return float(np.linalg.norm(across) / np.linalg.norm(along))


# --- the plane and the picture -----------------------------------------------------------------


def _rectangle(width: float, length: float) -> np.ndarray:
    return np.array([(0.0, 0.0), (width, 0.0), (width, length), (0.0, length)])


def _frame(shape: tuple[int, ...]) -> np.ndarray:
    """The corners of a picture of (rows, columns)."""
    return _rectangle(float(shape[1]), float(shape[0]))


def _homography(places: Any, seen: Any) -> np.ndarray:
    """H, 3 x 3, that takes four places to those seen, no three on a line, w = 1 at the first.

    The columns of M are three points, each so long that their sum is the fourth, so that M takes
    the axes and their sum to the four; H = M(seen) inv(M(places)).
    """
    bases = []
    for points in (places, seen):
        p = np.column_stack([np.asarray(points, float), np.ones(4)]).T
        bases.append(p[:, :3] * np.linalg.solve(p[:, :3], p[:, 3]))
    h = bases[1] @ np.linalg.inv(bases[0])
    return h / (h[2] @ np.append(places[0], 1.0))


def _carried(matrix: np.ndarray, points: Any) -> np.ndarray:
    p = np.asarray(points, dtype=float)
    seen = p @ matrix[:, :2].T + matrix[:, 2]
    return seen[..., :2] / seen[..., 2:]


def _not_too_steep(distances: np.ndarray) -> None:
    if distances.min() * STEEPEST < distances.max():
        raise VeneerError(
            "too-slanted",
            "The picture is too slanted to be squared so far from the rectangle; keep less margin, "
            "or photograph from straight above.",
        )


def _resampled(pixels: np.ndarray, onto: np.ndarray, rows: int, columns: int) -> np.ndarray:
    """The picture of rows x columns whose place (c, r) is seen at onto (c, r, 1) in `pixels`."""
    frame = np.column_stack([_frame((rows, columns)), np.ones(4)]) @ onto.T
    seen, distances = frame[:, :2] / frame[:, 2:], frame[:, 2, None]
    _not_too_steep(distances)
    # Photo pixels to one of the result, along both of its directions, at its corners.
    slopes = (onto[:2, :2] - seen[:, :, None] * onto[2, :2]) / distances[:, None]
    shrink = np.linalg.norm(slopes, axis=1)
    # Means of whole blocks first (at most half a pixel of the result), then samples of those.
    block = max(1, math.floor(shrink.min() / 2))
    most = shrink.max(axis=0) / (APART * block)
    nx, ny = (min(MOST_SAMPLES, max(1, math.ceil(s - 1e-9))) for s in most)
    smooth = Image.BICUBIC if nx == ny == 1 else Image.BILINEAR
    out = np.empty((rows, columns, 3), np.uint8)
    step = max(1, _BAND // (columns * nx * ny))
    for first in range(0, rows, step):
        band = out[first : first + step]
        ends = [(c, r) for c in (0, columns) for r in (first, first + len(band))]
        source, shift = _needed(pixels, _carried(onto, ends), block)
        start = np.array([[1 / nx, 0, 0], [0, 1 / ny, first], [0, 0, 1.0]])
        fine = shift @ onto @ start

        def mean(plane: np.ndarray, fine: np.ndarray = fine, count: int = len(band)) -> np.ndarray:
            image = Image.fromarray(plane.astype(np.float32))
            samples = np.asarray(_transformed(image, fine, (columns * nx, count * ny), smooth))
            return samples.reshape(count, ny, columns, nx).mean(axis=(1, 3))

        share = np.maximum(mean(np.ones(source.shape[:2])), _NONE)  # samples that hit the photo
        for k in range(3):
            band[:, :, k] = np.clip(mean(source[:, :, k]) / share + 0.5, 0, 255)
        row, column = np.nonzero(share == _NONE)
        places = _carried(onto, np.column_stack([column, row + first]) + 0.5)
        column, row = np.clip(places.astype(int), 0, np.subtract(pixels.shape[1::-1], 1)).T
        band[share == _NONE] = pixels[row, column]
    return out


def _needed(pixels: np.ndarray, seen: np.ndarray, block: int) -> tuple[np.ndarray, np.ndarray]:
    """The part of `pixels` that shows the places within the hull of `seen`, a little more on each
    side, in means of block x block; and the matrix that takes places on `pixels` to it."""
    size = np.array(pixels.shape[1::-1])
    low = np.clip(np.floor(seen.min(axis=0)).astype(int) - 3 * block, 0, size - 1)
    low -= low % block  # the same blocks in every band
    high = np.clip(np.ceil(seen.max(axis=0)).astype(int) + 3 * block, low + 1, size)
    part = pixels[low[1] : high[1], low[0] : high[0]]
    if block > 1:
        part = np.asarray(Image.fromarray(np.ascontiguousarray(part)).reduce(block))
    left, top = -low / block
    return part, np.array([[1 / block, 0, left], [0, 1 / block, top], [0, 0, 1.0]])


def _transformed(
    plane: Image.Image, onto: np.ndarray, size: tuple[int, int], smooth: int
) -> Image.Image:
    """The plane as seen through `onto`, 0 off it; Pillow too counts pixel centres from
    half-integers, and wants the last coefficient to be 1."""
    coefficients = (onto / onto[2, 2]).ravel()[:8]
    return plane.transform(size, Image.PERSPECTIVE, tuple(coefficients), smooth)

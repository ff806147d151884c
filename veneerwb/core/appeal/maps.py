# SPDX-License-Identifier: LGPL-2.1-or-later
"""Maps of what the eye judges on every surface of a bundle: colour and grain, on cells of one size.

All maps lie in the bundle's frame, so that a point of the bundle is one place on all of them.

Colour: linear light averaged over a cell and blurred by SEEN_AS_ONE, as from VIEWED_FROM, in CIELAB
(D65; see `core.colour`). Grain: the structure tensor of the lightness at FINE mm per pixel,
averaged over GRAIN_REACH. Its direction is doubled, so that up and down the grain are one; its
clarity is (q - CHANCE) / (1 - CHANCE), at least 0, with q = (l1 - l2) / (l1 + l2 + FAINT^2) of the
tensor's eigenvalues: 1 where all grain runs one way, 0 where it swirls within the reach or where
there is none.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass

import numpy as np
from PIL import Image
from scipy.ndimage import gaussian_filter

from veneerwb.core.colour import decode, light_to_lab
from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Side
from veneerwb.core.plane import Motion, tand
from veneerwb.core.raster import Frame
from veneerwb.words import marked

VIEWED_FROM = 2000.0
"""mm from which a top is judged: common practice, no source."""
BLUR_ANGLE = 0.17
"""Degrees within which the eye takes colours together when it looks at the pattern as a whole (a
deviation; two bars of light and dark fade where they are within some five of these): chosen."""
SEEN_AS_ONE = VIEWED_FROM * tand(BLUR_ANGLE)
"""mm: deviation of the blur of the viewing distance."""
GRAIN_REACH = 20.0
"""mm (a deviation) over which grain must keep its direction to be seen to have one: chosen."""
FINE = 1.0
"""mm per pixel at which grain is looked for."""
FAINT = 1.2
"""Grey levels a mm: grain that changes less is noise of the camera."""
CHANCE = 0.2
"""What grain without direction comes to within the reach by chance."""
CELL = 4.0
"""mm: size of a cell where a top is large."""
LEAST_CELL = 2.0
MOST_CELLS = 50_000_000
"""Of all surfaces and what a search makes of them: some 1.4 GB."""
SWEPT = 32
"""Surfaces whose maps take the room of a search's scores, one for each of 180 directions, and of
what is worked out beside them."""
CHANNELS = 7
"""L, a, b, the square of (L, a, b) less the bundle's mean, clarity, and clarity times cosine and
sine of the doubled direction."""
Progress = Callable[[int, int, str], object]
"""progress(done, total, text): False stops the work."""
_LINEAR = decode(np.arange(256) / 255.0).astype(np.float32)
_LUMA = np.array((0.299, 0.587, 0.114), np.float32)


class Stopped(VeneerError):
    """The work was stopped by its progress; nothing of it is left."""

    def __init__(self) -> None:
        super().__init__("stopped", marked("The search was stopped; nothing has changed."))


def tell(progress: Progress | None, done: int, total: int, text: str) -> None:
    """Reports progress; raises Stopped if that says so."""
    if progress is not None and progress(done, total, text) is False:
        raise Stopped


@dataclass(frozen=True, eq=False)
class Maps:
    """Maps of the surfaces of a bundle, float32, surfaces x rows x columns x CHANNELS, on `frame`
    (bundle mm); `planes` gives the surface that a side of a leaf shows: (number, turned)."""

    frame: Frame
    values: np.ndarray
    planes: dict[tuple[int, bool], int]
    mean: np.ndarray
    """L, a, b of the bundle: what the squares are taken from."""

    def over(self, sides: Iterable[tuple[int, bool]]) -> np.ndarray:
        """rows x columns x CHANNELS: the mean of the surfaces that these sides show."""
        index, times = np.unique([self.planes[side] for side in sides], return_counts=True)
        out = np.zeros(self.values.shape[1:], np.float32)
        for k, share in zip(index, times / times.sum()):
            out += np.float32(share) * self.values[k]
        return out


def cell_for(reach: float) -> float:
    """mm: the cells for a wedge of that reach; where it is large, CELL."""
    return CELL if reach >= 150.0 else LEAST_CELL


def maps_of(bundle: Bundle, cell: float = CELL, progress: Progress | None = None) -> Maps:
    """The maps of every surface that the sides of `bundle` show, on cells of `cell` mm.

    Photographs are read one after another. `progress` is called before each; when it returns False
    Stopped is raised. Raises VeneerError for a bundle too large for the memory.
    """
    sides, planes = _sides(bundle)
    frame = _frame(bundle, cell)
    if frame.shape[0] * frame.shape[1] * (len(sides) + SWEPT) > MOST_CELLS:
        raise VeneerError(
            "bundle-too-large",
            "The leaves are {width} x {length} mm together, which is too much to search; take "
            "fewer leaves or a larger top, or check the scale of the photographs.",
            width=frame.shape[1] * cell, length=frame.shape[0] * cell,
        )
    values = np.empty((len(sides), *frame.shape, CHANNELS), np.float32)
    with ThreadPoolExecutor(1) as beside:  # the next photograph is read while one is worked on
        waiting = beside.submit(_seen, sides[0], frame)
        for k in range(len(sides)):
            tell(progress, k, len(sides), "")
            seen = waiting.result()
            if k + 1 < len(sides):
                waiting = beside.submit(_seen, sides[k + 1], frame)
            values[k] = _charted(seen, frame.cell)
    tell(progress, len(sides), len(sides), "")
    mean = np.mean([plane[..., :3].mean(axis=(0, 1), dtype=float) for plane in values], axis=0)
    for plane in values:
        plane[..., :3] -= mean.astype(np.float32)
        plane[..., 3] = (plane[..., :3] ** 2).sum(axis=-1)
    return Maps(frame, values, planes, mean)


def _sides(bundle: Bundle) -> tuple[list[Side], dict[tuple[int, bool], int]]:
    """The sides whose pictures differ, and which of them each side of each leaf shows."""
    found: dict[tuple[int, Motion], int] = {}
    sides, planes = [], {}
    for leaf in bundle.leaves:
        for turned in (False, True):
            side = leaf.side(turned)
            key = (id(side.image), side.view)
            if key not in found:
                found[key] = len(sides)
                sides.append(side)
            planes[leaf.number, turned] = found[key]
    return sides, planes


def _frame(bundle: Bundle, cell: float) -> Frame:
    """A grid over all usable areas, in bundle mm."""
    bounds = [
        bundle.register(n, False).inverse().apply_to(bundle.usable(n)).bounds
        for n in bundle.numbers if not bundle.usable(n).is_empty
    ]
    if not bounds:
        raise VeneerError(
            "nothing-usable", "No leaf has a usable area; draw what may be used on the leaves."
        )
    low, high = np.min(bounds, axis=0)[:2], np.max(bounds, axis=0)[2:]
    first = np.floor(low / cell + 1e-9) * cell
    columns, rows = (max(1, int(np.ceil(n - 1e-9))) for n in (high - first) / cell)
    return Frame(float(first[0]), float(first[1]), cell, (rows, columns))


def _seen(side: Side, frame: Frame) -> np.ndarray:
    """uint8 rows x columns x 3, row 0 at the bottom: a side's picture in the bundle's frame, some
    FINE mm per pixel, a whole number of pixels to a cell. Off the photo its edge goes on."""
    per_cell = max(1, round(frame.cell / FINE))
    fine = frame.cell / per_cell
    factor = max(1, int(fine / side.mm_per_px))
    image = Image.fromarray(side.photo)
    image = image.reduce(factor) if factor > 1 else image
    texel = side.mm_per_px * factor
    rows, columns = (n * per_cell for n in frame.shape)
    a, b, d, e = side.view.matrix
    ox, oy = side.view.apply((frame.x0, frame.y0))
    height = side.image.size[1]
    # Output pixels count from the bottom, those of the photo from the top.
    onto = (
        a * fine / texel, b * fine / texel, ox / texel,
        -d * fine / texel, -e * fine / texel, (height - oy) / texel,
    )
    return _filled(image, onto, (columns, rows))


def _filled(
    image: Image.Image, onto: Sequence[float], size: tuple[int, int]
) -> np.ndarray:
    """The image under an affine map; where that leaves the image, the colour at its edge."""
    seen = np.array(image.transform(size, Image.AFFINE, tuple(onto), Image.BILINEAR))
    columns, rows = (np.arange(n) + 0.5 for n in size)
    if _off(image, onto, columns[[0, -1]], rows[[0, -1]])[0].any():  # only then is any pixel
        off, u, v = _off(image, onto, columns, rows)
        column = np.clip(u[off], 0, image.width - 1).astype(int)
        row = np.clip(v[off], 0, image.height - 1).astype(int)
        seen[off] = np.asarray(image)[row, column]
    return seen


def _off(
    image: Image.Image, onto: Sequence[float], x: np.ndarray, y: np.ndarray
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Which pixels (rows y, columns x) look off the image, or past the middles of its outermost
    pixels; and where on it they look."""
    u, v = (onto[k] * x + onto[k + 1] * y[:, None] + onto[k + 2] for k in (0, 3))
    off = (u < 0.5) | (v < 0.5) | (u > image.width - 0.5) | (v > image.height - 0.5)
    return off, u, v


def _charted(seen: np.ndarray, cell: float) -> np.ndarray:
    """rows x columns x CHANNELS of a picture; the place of the squares is left for later."""
    per_cell = max(1, round(cell / FINE))
    out = np.empty((*(n // per_cell for n in seen.shape[:2]), CHANNELS), np.float32)
    light = [_pooled(_LINEAR[seen[..., k]], per_cell) for k in range(3)]
    blurred = [gaussian_filter(one, SEEN_AS_ONE / cell, mode="nearest") for one in light]
    out[..., :3] = light_to_lab(np.stack(blurred, axis=-1))
    out[..., 4:] = _grain(seen @ _LUMA, per_cell, cell)
    return out


def _grain(lightness: np.ndarray, per_cell: int, cell: float) -> np.ndarray:
    """Clarity, and clarity times cosine and sine of the doubled direction, rows x columns x 3."""
    along, across = np.empty_like(lightness), np.empty_like(lightness)
    for out, axis in ((along, 0), (across, 1)):
        out[...] = np.gradient(lightness, axis=axis)
    step = cell / per_cell
    both = [across * across, along * along, across * along]
    xx, yy, xy = (
        gaussian_filter(_pooled(part, per_cell), GRAIN_REACH / cell, mode="nearest") / step**2
        for part in both
    )
    power = xx + yy + np.float32(FAINT**2)
    cosine, sine = (xx - yy) / power, 2 * xy / power
    coherence = np.hypot(cosine, sine)
    clarity = np.maximum(coherence - np.float32(CHANCE), 0) / np.float32(1 - CHANCE)
    share = clarity / np.maximum(coherence, np.float32(CHANCE))
    return np.stack([clarity, share * cosine, share * sine], axis=-1)


def _pooled(values: np.ndarray, per_cell: int) -> np.ndarray:
    """Means over cells of per_cell x per_cell pixels."""
    rows, columns = (n // per_cell for n in values.shape)
    within = values[: rows * per_cell].reshape(rows, per_cell, -1).mean(axis=1)
    return within[:, : columns * per_cell].reshape(rows, columns, per_cell).mean(axis=2)

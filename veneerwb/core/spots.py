# SPDX-License-Identifier: LGPL-2.1-or-later
"""Faults that a leaf's photograph suggests: dark spots, and splits along the grain.

An aid and no judge: nothing is applied. What stands out is measured against the leaf's own figure,
so that rings, bars and eyes, of which a leaf has many, suggest little. Darkness is the logarithm of
the luminance, so that light and shade over the leaf do not count.

A spot is darker than what lies round it on all eight sides; a ring or a streak runs on at two. A
split is a line within SWING degrees of the grain that is darker, or lighter where light falls
through, than the leaf on both sides of it, and so on both halves of a stretch of 30 mm.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np
from PIL import Image
from scipy import ndimage
from shapely.geometry import LineString, MultiPoint

from veneerwb.core.errors import sentence
from veneerwb.core.leaf import Fault, Leaf
from veneerwb.core.progress import Progress, part, unheard
from veneerwb.core.sequence.align import mask
from veneerwb.words import marked

SWING = 8
"""Degrees off the grain that a split may run."""
SIZES = (4.5, 7.0, 10.0, 15.0, 22.0)
"""mm: the sizes of spots looked for (about their radius)."""
SPOT_OVER_FIGURE = 4.0
"""How many times darker than all but 1 in 200 places of the leaf a spot must be."""
LEAST_DARK = 0.12
"""Difference of natural logarithms (11 % darker) that a spot must have at least."""
LINE_OVER_FIGURE = 2.1
"""How many times clearer than all but 1 in 100 lines of the leaf a split must be."""
LEAST_LINE = {"dark": 0.27, "light": 0.13}
"""Difference of natural logarithms that a split must have at least, over a cell of the grid."""
SHORTEST, WIDEST = 20.0, 4.0
"""mm: a split is no shorter and no wider."""
LONGEST_KNOT = 1.8
"""A spot that is more times longer than wide, or larger than LARGEST_KNOT, is called a stain."""
LARGEST_KNOT = 40.0
"""mm across."""
FEW = 8
"""So many of the darkest spots of a size are taken for faults when the figure is measured; what a
leaf has more of is figure."""
MOST = 40
"""Suggestions of a leaf at most: more are figure, whatever they are."""
_FINE, _ALONG, _COARSE = 0.5, 2.0, 1.0  # mm: cells across and along for lines, and for spots
_HALF = 14.0  # mm: half of the stretch of a line
_FAINT, _GAP = 0.35, 5  # of how clear a line is, and cells of it that may be fainter than that
_OVER_ALL = 0.9  # of the least that a place of a split must have, its mean must have
_BESIDE = 2.0  # mm from a line to what lies beside it
_ROUND = 2.4  # a spot's surroundings lie so many sizes away
_LUMA = np.array((0.299, 0.587, 0.114), np.float32)
_SPOTTED = 0.25  # the share of the work that spots are
_DARKEST = 4.0  # levels of 255 added before the logarithm, so that noise in black is none


@dataclass(frozen=True)
class Suggestion:
    """What may be a fault: `outline` (shapely polygon, leaf mm), `kind` ("knot", "stain", "split").

    `darker` is the share by which it is darker than what lies round it (lighter where negative),
    `length` and `width` in mm, `strength` how many times over the threshold it stands out. `text`
    gives the reason from `template` and `values`.
    """

    kind: str
    outline: Any
    darker: float
    length: float
    width: float
    strength: float
    template: str = field(repr=False)
    values: Mapping[str, Any] = field(repr=False)

    @property
    def fault(self) -> Fault:
        return Fault(self.outline, self.kind)

    @property
    def text(self) -> str:
        return sentence(self.template, dict(self.values))


def suggested(leaf: Leaf, progress: Progress = unheard) -> tuple[Suggestion, ...]:
    """What the face of a leaf suggests within its usable area, the strongest first; nothing that
    its faults cover already. `progress` is told the share done, and may raise to end it."""
    known = [fault.outline for fault in leaf.faults]
    progress(0.0)
    found = [*_spots(leaf), *_splits(leaf, part(progress, _SPOTTED, 1.0))]
    found = [
        s for s in found
        if s.outline.intersects(leaf.usable) and not any(s.outline.intersects(k) for k in known)
    ]
    found.sort(key=lambda s: (-round(s.strength, 6), s.outline.bounds))
    kept: list[Suggestion] = []
    for one in found:
        if not any(one.outline.intersects(other.outline) for other in kept):
            kept.append(one)
    return tuple(kept[:MOST])


def _cells(leaf: Leaf, across: float, along: float) -> np.ndarray:
    """Logarithm of the luminance in cells of that many mm, row 0 at the bottom; off the usable area
    as at its nearest place."""
    image = Image.fromarray(leaf.photo)
    fewer = max(1, int(min(across, along) / leaf.mm_per_px + 1e-9))
    image = image.reduce(fewer) if fewer > 1 else image
    light = np.log(np.asarray(image) @ _LUMA + np.float32(_DARKEST))
    width, length = leaf.size
    shape = max(8, round(length / along)), max(8, round(width / across))
    cells = np.asarray(Image.fromarray(light).resize(shape[::-1], Image.Resampling.BOX))[::-1]
    square = leaf.usable.area >= 0.9999 * width * length
    if square:
        return cells
    fine = max(1, round(along / across))
    inside = mask(leaf.usable, (shape[0] * fine, shape[1]), across)[fine // 2 :: fine] > 0
    if not inside.any():
        return cells
    nearest = ndimage.distance_transform_edt(
        ~inside, (along, across), return_distances=False, return_indices=True
    )
    return cells[tuple(nearest)]


# --- spots -------------------------------------------------------------------------------------


def _spots(leaf: Leaf) -> Iterator[Suggestion]:
    light = _cells(leaf, _COARSE, _COARSE)
    calm = ndimage.gaussian_filter(light, 1.0)
    width, length = leaf.size
    for size in SIZES:
        if 4 * _ROUND * size > max(width, length) or 2 * _ROUND * size > min(width, length):
            continue
        dark = _all_round(light, size / _COARSE)
        reach = round(size / _COARSE)
        peaks = (dark == ndimage.maximum_filter(dark, 2 * reach + 1)) & (dark > LEAST_DARK)
        rows, columns = np.nonzero(peaks)
        order = np.lexsort((columns, rows, -np.round(dark[rows, columns], 6)))[:MOST]
        places = list(zip(rows[order].tolist(), columns[order].tolist()))
        spots = [(place, _spot(calm, *place, size)) for place in places]
        closed = [(place, spot) for place, spot in spots if spot is not None]
        figure = np.ones(dark.shape, bool)
        for (row, column), _ in closed[:FEW]:
            near = slice(max(0, row - reach), row + reach + 1)
            figure[near, max(0, column - reach) : column + reach + 1] = False
        least = max(LEAST_DARK, SPOT_OVER_FIGURE * float(np.quantile(dark[figure], 0.995)))
        for place, spot in closed:
            if dark[place] > least:
                yield replace(spot, strength=float(dark[place]) / least)


def _all_round(light: np.ndarray, size: float) -> np.ndarray:
    """By how much the least dark of eight places round each is lighter than it."""
    soft = ndimage.gaussian_filter(light, 0.6 * size)
    far, slant = round(_ROUND * size), round(_ROUND * size * math.sqrt(0.5))
    padded = np.pad(soft, far, mode="symmetric")
    rows, columns = soft.shape
    least = np.full(soft.shape, np.inf, np.float32)
    for down, right in (
        (far, 0), (-far, 0), (0, far), (0, -far),
        (slant, slant), (slant, -slant), (-slant, slant), (-slant, -slant),
    ):
        there = padded[far + down : far + down + rows, far + right : far + right + columns]
        np.minimum(least, there, out=least)
    return least - soft


def _spot(calm: np.ndarray, row: int, column: int, size: float) -> Suggestion | None:
    """The region round a peak that is darker than half way to its surroundings; None where that
    runs on, as a ring does, or is drawn out."""
    reach = math.ceil(1.3 * _ROUND * size / _COARSE)
    top, left = max(0, row - reach), max(0, column - reach)
    window = calm[top : row + reach + 1, left : column + reach + 1]
    y, x = np.indices(window.shape)
    far = np.hypot(y - (row - top), x - (column - left)) * _COARSE
    round_it = float(np.median(window[(far > 0.8 * _ROUND * size) & (far < 1.2 * _ROUND * size)]))
    centre = np.where(far <= 0.5 * size, window, np.inf)
    darkest = np.unravel_index(int(centre.argmin()), window.shape)
    regions, _ = ndimage.label(window < (round_it + float(window[darkest])) / 2)
    region = regions == regions[darkest]
    if not regions[darkest] or (far[region] > 1.2 * _ROUND * size).any():
        return None
    points = np.column_stack([x[region] + left, y[region] + top]) + 0.5
    long, short = _axes(points * _COARSE)
    hull = MultiPoint(points * _COARSE).convex_hull.buffer(_COARSE, 4)
    if long > 3 * short or len(points) * _COARSE**2 < 0.6 * hull.buffer(-_COARSE).area:
        return None
    darker = 1 - math.exp(float(window[region].mean()) - round_it)
    knot = long <= LONGEST_KNOT * short and long <= LARGEST_KNOT
    values = {
        "darker": f"{darker:.0%}", "length": round(long, 1), "width": round(short, 1),
    }
    return Suggestion(
        "knot" if knot else "stain", hull.simplify(0.3), darker, long, short, 0.0,
        marked("A spot of {length} x {width} mm, {darker} darker than what lies round it."),
        values,
    )


def _axes(points: np.ndarray) -> tuple[float, float]:
    """Length and width of a region (mm) as of the ellipse with the same second moments."""
    if len(points) < 3:
        return _COARSE, _COARSE
    spread = np.linalg.eigvalsh(np.cov(points.T) + np.eye(2) * _COARSE**2 / 12)
    short, long = 4 * np.sqrt(np.maximum(spread, 1e-9))
    return float(long), float(short)


# --- splits ------------------------------------------------------------------------------------


def _splits(leaf: Leaf, progress: Progress) -> Iterator[Suggestion]:
    progress(0.0)
    across = max(_FINE, leaf.mm_per_px)
    light = _cells(leaf, across, _ALONG)
    if light.shape[0] * _ALONG < 3 * _HALF or light.shape[1] * across < 6 * _BESIDE:
        return
    for shade, sign in (("dark", 1.0), ("light", -1.0)):
        progress(0.25 if shade == "dark" else 0.6)
        stands_out = _beside(sign * light, across)
        lines, slope = _lines(stands_out, across)
        least = max(LEAST_LINE[shade], LINE_OVER_FIGURE * float(np.quantile(lines, 0.99)))
        regions, count = ndimage.label(lines > 0.7 * least, np.ones((3, 3)))
        if not count:
            continue
        peaks = ndimage.maximum_position(lines, regions, range(1, count + 1))
        for peak in peaks:
            if lines[peak] <= least:
                continue
            split = _split(
                stands_out, peak, float(slope[peak]), across, shade, float(lines[peak]), least
            )
            if split is not None:
                yield split


def _beside(dark: np.ndarray, across: float) -> np.ndarray:
    """By how much the less light of what lies on both sides of each cell is lighter than it."""
    off = round(_BESIDE / across)
    wide = max(3, 2 * round(_BESIDE / across / 2) + 1)
    mean = ndimage.uniform_filter1d(dark, wide, axis=1, mode="nearest")
    padded = np.pad(mean, ((0, 0), (off, off)), mode="edge")
    return np.minimum(padded[:, : -2 * off], padded[:, 2 * off :]) - dark


def _lines(stands_out: np.ndarray, across: float) -> tuple[np.ndarray, np.ndarray]:
    """The best line through each cell: the lesser mean of its two halves, and its slope (across
    over along)."""
    rows, columns = stands_out.shape
    half = round(_HALF / _ALONG)
    off = half // 2 + 1
    # What stands out wildly in a cell or two shall not make a line.
    held = np.clip(stands_out, -0.25, 1.0).astype(np.float32)
    best, slope = np.full(held.shape, -np.inf, np.float32), np.zeros(held.shape, np.float32)
    down, right = np.arange(rows), np.arange(columns)
    for angle in sorted(range(-SWING, SWING + 1), key=abs):
        lean = math.tan(math.radians(angle))
        shift = np.round(lean * down * _ALONG / across).astype(int)
        wide = int(np.abs(shift).max()) + 1
        there = right[None] + wide + shift[:, None]
        sheared = np.take_along_axis(np.pad(held, ((0, 0), (wide, wide)), mode="edge"), there, 1)
        mean = ndimage.uniform_filter1d(sheared, half, axis=0, mode="nearest")
        padded = np.pad(mean, ((off, off), (0, 0)), mode="edge")
        both = np.minimum(padded[: -2 * off], padded[2 * off :])
        back = np.pad(both, ((0, 0), (wide, wide)), constant_values=-np.inf)
        here = np.take_along_axis(back, right[None] + wide - shift[:, None], 1)
        better = here > best
        np.copyto(best, here, where=better)
        np.copyto(slope, lean, where=better)
    return best, slope


def _split(
    stands_out: np.ndarray, peak: tuple[int, ...], lean: float, across: float, shade: str,
    height: float, least: float,
) -> Suggestion | None:
    """The line followed from its clearest place as far as it stands out; None where it is too
    short, too wide, or over its length hardly clear."""
    rows, columns = stands_out.shape
    row, column = peak
    near = round(2.0 / across)
    path = _followed(stands_out, row, column, lean, across, near)
    if len(path) * _ALONG < SHORTEST:
        return None
    places = np.array(path)
    offs = np.arange(-2 * near, 2 * near + 1)
    beside = np.clip(places[:, 1:2] + offs, 0, columns - 1)
    profile = stands_out[places[:, :1], beside].mean(axis=0)
    clear = float(profile[2 * near])
    width = float((profile > clear / 2).sum()) * across
    if width > WIDEST or clear < _OVER_ALL * least:
        return None
    line = (places[:, ::-1] + 0.5) * (across, _ALONG)
    line[:, 0] = ndimage.uniform_filter1d(line[:, 0], 5, mode="nearest")
    line = np.array([line[0] - (0, _ALONG / 2), *line, line[-1] + (0, _ALONG / 2)])
    drawn = LineString(line).simplify(0.3)
    length, darker = float(drawn.length), 1 - math.exp(-clear)
    if shade == "light":
        darker = 1 - math.exp(clear)
    values = {
        "darker": f"{abs(darker):.0%}", "length": round(length), "width": round(width, 1),
    }
    template = marked(
        "A line of {length} mm along the grain, some {width} mm wide, {darker} lighter than the "
        "leaf on both sides of it."
    )
    if shade == "dark":
        template = marked(
            "A line of {length} mm along the grain, some {width} mm wide, {darker} darker than the "
            "leaf on both sides of it."
        )
    outline = drawn.buffer(width / 2 + across, 4, cap_style=2)
    return Suggestion("split", outline, darker, length, width, height / least, template, values)


def _followed(
    stands_out: np.ndarray, row: int, column: int, lean: float, across: float, near: int
) -> list[tuple[int, int]]:
    """(row, column) of a line's cells from its lower end to its upper: from row to row the clearest
    cell near where it leads, until _GAP cells running hardly stand out."""
    rows, columns = stands_out.shape

    def clearest(row: int, expected: float) -> int:
        left = int(np.clip(round(expected) - near, 0, columns - 1))
        return left + int(stands_out[row, left : left + 2 * near + 1].argmax())

    start = clearest(row, column)
    typical = float(np.median([
        stands_out[r, clearest(r, start + lean * (r - row) * _ALONG / across)]
        for r in range(max(0, row - 5), min(rows, row + 6))
    ]))
    path = [(row, start)]
    for way in (1, -1):
        at, expected, faint = row + way, float(start), 0
        found: list[tuple[int, int]] = []
        while 0 <= at < rows and faint < _GAP:
            expected += way * lean * _ALONG / across
            here = clearest(at, expected)
            if stands_out[at, here] > _FAINT * typical:
                found.append((at, here))
                expected, faint = 0.7 * expected + 0.3 * here, 0
            else:
                faint += 1
            at += way
        path = path + found if way == 1 else found[::-1] + path
    return path

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is left of each leaf when the cuts and their kerf are taken from its usable area, and what
in this job it can serve.

Sizes are those of the largest rectangle along the grain that was found in an offcut: it fits, and
a little larger one may be missed. From which size on an offcut is worth keeping, and for what, is
the maker's to say: the defaults are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np
from PIL import Image, ImageDraw
from shapely import wkb
from shapely.geometry import box
from shapely.ops import unary_union

from veneerwb.core.layout import Layout
from veneerwb.core.plane import TOUCH
from veneerwb.core.shop.cutting.methods import KNIFE, Method
from veneerwb.core.shop.cutting.piles import Pile, as_layouts, piles
from veneerwb.core.shop.templates.over import EXACT, Over
from veneerwb.words import marked

CELLS = 64
"""Cells along the longer side of what is sought in for the largest rectangle."""
GROWN = 0.1
"""mm: how finely its sides are then moved out."""


@dataclass(frozen=True)
class Worth:
    """What offcuts are kept for, and from which size on (mm, the shorter and the longer side)."""

    use: str
    short: float
    long: float


WORTH = (
    Worth(marked("test cuts and trials of press and finish"), 100.0, 200.0),
    Worth(marked("border strips"), 40.0, 300.0),
    Worth(marked("repair patches"), 40.0, 60.0),
    Worth(marked("stringing and edge strips"), 5.0, 300.0),
)
MOST_KEPT = 4
"""Rectangles that are looked for in one offcut."""


@dataclass(frozen=True)
class Kept:
    """A rectangle worth keeping (x0, y0, x1, y1, leaf mm) and all that it can serve in this job."""

    rectangle: tuple[float, float, float, float]
    uses: tuple[str, ...]

    @property
    def size(self) -> tuple[float, float]:
        """(across the leaf, along the grain), mm."""
        x0, y0, x1, y1 = self.rectangle
        return x1 - x0, y1 - y0


@dataclass(frozen=True)
class Offcut:
    """One offcut: its `area` (shapely, leaf mm), and what is kept of it, clear of faults, the
    largest first; nothing where it is too small to keep."""

    area: Any
    kept: tuple[Kept, ...]


@dataclass(frozen=True)
class LeafRest:
    """A leaf that was cut: mm2 of its `usable` area, of the cuts, of their `kerf`; and the offcuts,
    the largest first. Together cuts, kerf and offcuts are the usable area."""

    leaf: int
    stack: str
    spare: bool
    usable: float
    cuts: float
    kerf: float
    offcuts: tuple[Offcut, ...]

    @property
    def left(self) -> float:
        """mm2 of all offcuts."""
        return sum(one.area.area for one in self.offcuts)


def offcuts(
    layouts: Layout | Sequence[Layout], how: Method = KNIFE, spares: int = 0,
    by_shape: bool | None = None, worth: Sequence[Worth] = WORTH, over: Over = EXACT,
) -> tuple[LeafRest, ...]:
    """What is left of every leaf that is cut, in the order of numbers. Arguments as for `piles`;
    `worth`: what offcuts are kept for."""
    given = as_layouts(layouts)
    found = []
    for pile in piles(given, spares, by_shape, over):
        cuts = pile.outlines
        kerfs = unary_union([cut.outline.buffer(how.kerf, join_style=2) for cut in pile.cuts])
        done = set()
        for n, turned in pile.laid:
            if n in done:  # cut by two registers: told for the first
                continue
            done.add(n)
            register = given[0].bundle.register(n, turned)
            usable = given[0].bundle.usable(n)
            here = register.apply_to(cuts), register.apply_to(kerfs)
            faults = unary_union([f.outline for f in given[0].bundle.faults(n)])
            found.append(_rest(n, pile, usable, here, faults, worth))
    return tuple(sorted(found, key=lambda rest: rest.leaf))


def _rest(
    leaf: int, pile: Pile, usable: Any, cut: tuple[Any, Any], faults: Any, worth: Sequence[Worth]
) -> LeafRest:
    inside, taken = (usable.intersection(one) for one in cut)
    left = usable.difference(cut[1])
    parts = [p for p in getattr(left, "geoms", [left]) if p.geom_type == "Polygon" and p.area > 0.0]
    parts.sort(key=lambda p: (-round(p.area, 3), p.bounds))
    made = tuple(_offcut(part, faults, worth) for part in parts)
    return LeafRest(
        leaf, pile.name, leaf in pile.spares, usable.area, inside.area, taken.area - inside.area,
        made,
    )


def _offcut(area: Any, faults: Any, worth: Sequence[Worth]) -> Offcut:
    kept: list[Kept] = []
    sound = area.difference(faults)
    left = [p for p in getattr(sound, "geoms", [sound]) if p.geom_type == "Polygon"]
    while left and worth and len(kept) < MOST_KEPT:
        found = [(largest_rectangle(part), part) for part in left]
        rectangle, part = max(found, key=lambda one: round(box(*one[0]).area, 1))
        uses = _uses(rectangle, worth)
        if not uses:
            break
        kept.append(Kept(rectangle, uses))
        rest = part.difference(box(*rectangle))
        left.remove(part)
        left += [p for p in getattr(rest, "geoms", [rest])
                 if p.geom_type == "Polygon" and p.area > 1.0]
    return Offcut(area, tuple(kept))


def _uses(
    rectangle: tuple[float, float, float, float], worth: Sequence[Worth]
) -> tuple[str, ...]:
    x0, y0, x1, y1 = rectangle
    short, long = sorted((x1 - x0, y1 - y0))
    return tuple(w.use for w in worth if short >= w.short - TOUCH and long >= w.long - TOUCH)


def largest_rectangle(area: Any) -> tuple[float, float, float, float]:
    """A large upright rectangle within a polygon: the largest of whole cells of a grid, its sides
    then moved out while it stays within. All noughts from the centroid where none is found."""
    return _largest(area.wkb)


@lru_cache(maxsize=256)
def _largest(known: bytes) -> tuple[float, float, float, float]:
    area = wkb.loads(known)
    x0, y0, x1, y1 = area.bounds
    best = (0.0, (area.centroid.x,) * 2 + (area.centroid.y,) * 2)
    for turn in (1, 2):  # square cells, and as many each way for what is long and thin
        wide, high = x1 - x0, y1 - y0
        step = max(wide, high) / CELLS
        cells = (max(4, round(wide / step)), max(4, round(high / step))) if turn == 1 else (
            CELLS, CELLS)
        found = _of_cells(area, cells)
        if found:
            grown = _grown(area, found)
            size = (grown[2] - grown[0]) * (grown[3] - grown[1])
            best = max(best, (round(size, 3), grown))
    a = best[1]
    return a if best[0] else (a[0], a[2], a[0], a[2])


def _of_cells(area: Any, cells: tuple[int, int]) -> tuple[float, float, float, float] | None:
    x0, y0, x1, y1 = area.bounds
    across, down = cells
    sx, sy = (x1 - x0) / across, (y1 - y0) / down
    outside = Image.new("1", (across, down), 0)
    drawing = ImageDraw.Draw(outside)
    for ring in (area.exterior, *area.interiors):
        points = (np.asarray(ring.coords) - (x0, y0)) / (sx, sy)
        drawing.line([tuple(p) for p in points], fill=1)
    border = np.asarray(outside)
    inside = Image.new("1", (across, down), 0)
    drawing = ImageDraw.Draw(inside)
    for k, ring in enumerate((area.exterior, *area.interiors)):
        points = (np.asarray(ring.coords) - (x0, y0)) / (sx, sy) - 0.5
        drawing.polygon([tuple(p) for p in points], fill=int(k == 0))
    full = np.asarray(inside) & ~border
    best, heights = (0, None), np.zeros(across, int)
    for row in range(down):
        heights = np.where(full[row], heights + 1, 0)
        best = max(best, _under(heights, row), key=lambda one: one[0])
    if best[1] is None:
        return None
    left, low, right, high = best[1]
    return x0 + left * sx, y0 + low * sy, x0 + right * sx, y0 + high * sy


def _under(heights: np.ndarray, row: int) -> tuple[int, Any]:
    """The largest rectangle that stands on a row under a skyline: (cells, its corners)."""
    best: tuple[int, Any] = (0, None)
    rising: list[tuple[int, int]] = []
    for k, h in enumerate([*heights.tolist(), 0]):
        start = k
        while rising and rising[-1][1] >= h:
            start, tall = rising.pop()
            if tall * (k - start) > best[0]:
                best = tall * (k - start), (start, row + 1 - tall, k, row + 1)
        rising.append((start, h))
    return best


def _grown(
    area: Any, corners: tuple[float, float, float, float]
) -> tuple[float, float, float, float]:
    """Sides moved out in turn by halving steps while the rectangle stays within; first made smaller
    about its middle where it does not."""
    room = area.buffer(TOUCH, join_style=2)
    found = list(corners)
    while not room.covers(box(*found)):
        middle = (found[0] + found[2]) / 2.0, (found[1] + found[3]) / 2.0
        found = [0.9 * v + 0.1 * m for v, m in zip(found, middle * 2)]
        if min(found[2] - found[0], found[3] - found[1]) < GROWN:
            return (*middle, *middle)
    step = max(found[2] - found[0], found[3] - found[1]) / 4.0
    while step > GROWN / 2.0:
        for k, sign in enumerate((-1.0, -1.0, 1.0, 1.0)):
            tried = found.copy()
            tried[k] += sign * step
            if room.covers(box(*tried)):
                found = tried
        step /= 2.0
    return tuple(found)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A generated log, sliced into consecutive leaves; how far their photographs are off is known.

The log is a field colour = f(x, y, depth). Surface S_j lies at the depth j x thickness; leaf k
shows S(k-1) on its face and S(k) on its back, so that leaf k + 1 really is the next slice of the
log. Ring planes at an angle a to the leaf move along y by thickness / tan(a) from surface to
surface (plane geometry; towards -y for a positive slope).
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from PIL import Image
from shapely import affinity
from shapely.geometry import Point, box

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import MOST_LEAVES, THICKEST, Bundle, Fault, Leaf, Side
from veneerwb.core.log.disturb import Disturbance, Optics, bent, disturbance, shown
from veneerwb.core.log.figures import FIGURES
from veneerwb.core.log.grain import (
    HUES,
    RING_STEP,
    TONES,
    Fibre,
    Knot,
    Rings,
    Sheet,
    Stem,
    exposed,
    palette,
)
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY, Motion, choice, finite, positive, tand, whole

WIDEST, LONGEST_LEAF = 2000.0, 8000.0
STEEPEST = 60.0
MOST_PIXELS = 100e6
MOST_BYTES = 6e9
DEEPEST = 600.0
"""mm of leaves that one log gives: its rings are known that far."""
GRID = 1.0
"""mm: between its nodes the slow part of the field (radius, tone, hue) is linear along x and y."""
MARGIN = 3
"""Nodes that the grids reach beyond the leaf."""
TABLE = (214, 214, 212)
"""The light grey that the leaves lie on when they are photographed (sRGB)."""
_ROWS = 192


class Log:
    """A stem, `width` x `length` mm as sliced, in leaves of `thickness` mm.

    `figure` is one of FIGURES, `slope` the angle in degrees between ring planes and leaf along the
    grain, `knots` how many (by default what suits the figure). Equal arguments give equal logs.
    Raises VeneerError for sizes, figures and slopes that no log has.
    """

    def __init__(
        self, width: float = 600.0, length: float = 2400.0, thickness: float = 0.6,
        figure: str = "cathedral", seed: int = 1, slope: float = 0.0, knots: int | None = None,
    ) -> None:
        self.width = positive("leaf width", width, WIDEST)
        self.length = positive("leaf length", length, LONGEST_LEAF)
        self.thickness = positive("leaf thickness", thickness, THICKEST)
        self.figure = choice("figure", str(figure).removesuffix("-like"), tuple(FIGURES))
        self.slope = finite("slope", slope)
        if abs(self.slope) > STEEPEST:
            raise VeneerError(
                "out-of-range",
                "The slope is {value} degrees; give an angle from -{most} to {most}.",
                value=self.slope, most=STEEPEST,
            )
        self._wood = FIGURES[self.figure]
        seed = whole("seed", seed, 0, 2**31 - 1)
        self._stem = Stem(self.width, self.length, self.slope, seed)
        self._fibre = Fibre(self._wood, self._stem)
        self._knots = self._branches(
            self._wood.knots if knots is None else whole("knots", knots, 0, 50)
        )
        self._seen: dict[int, _Surface] = {}

    @property
    def area(self) -> Any:
        """The leaf's outline in bundle mm (shapely)."""
        return box(0.0, 0.0, self.width, self.length)

    def colours(self, points: Any, surface: int) -> np.ndarray:
        """uint8 N x 3 (sRGB): the colour of a surface at `points`, N x 2 in bundle mm.

        Off the leaf: the colour at its edge.
        """
        points = np.clip(np.asarray(points, float).reshape(-1, 2), 0, (self.width, self.length))
        seen = self._surface(surface)
        maps = [_at(grid, cell, points) for grid, cell in seen.grids]
        return self._colour(maps, self._palette)

    def picture(
        self, surface: int, mm_per_px: float, frame: Motion = IDENTITY, exposure: float = 0.0,
        optics: Optics | None = None,
    ) -> np.ndarray:
        """uint8 rows x columns x 3 (sRGB): a surface photographed in a frame of the leaf's size,
        the leaf moved in it by `frame` (bundle mm -> mm on the photo).

        Every pixel is the field at its own centre. `exposure` brightens the light by that share;
        `optics` is how lens and buckle bend the picture.
        """
        rows, columns = self.pixels(mm_per_px)
        colours = exposed(self._palette, exposure)
        images = [(Image.fromarray(g), cell) for g, cell in self._surface(surface).grids]
        out = np.empty((rows, columns, 3), np.uint8)
        for top in range(0, rows, _ROWS):
            high = min(_ROWS, rows - top)
            back = _Looked(frame, mm_per_px, rows - top, optics)
            maps = [back.up(image, cell, (columns, high)) for image, cell in images]
            out[top : top + high] = self._colour(maps, colours)
            if frame != IDENTITY or optics:
                off = self._off(back.middles(columns, high))
                out[top : top + high][off] = exposed(np.array(TABLE, np.uint8), exposure)
        return out

    def pixels(self, mm_per_px: float) -> tuple[int, int]:
        """Rows and columns of a picture of a whole leaf; VeneerError if they are absurd."""
        scale = positive("scale (mm per pixel)", mm_per_px)
        rows, columns = round(self.length / scale), round(self.width / scale)
        if rows < 1 or columns < 1 or rows * columns > MOST_PIXELS:
            raise VeneerError(
                "picture-size",
                "At {scale} mm per pixel a leaf of {width} x {length} mm has {columns} x {rows} "
                "pixels; choose another scale.",
                scale=scale, width=self.width, length=self.length, columns=columns, rows=rows,
            )
        return rows, columns

    def faults(self, surface: int) -> list[Fault]:
        """The knots of a surface, outlines in bundle mm, cut at the leaf's edge."""
        found = []
        for knot in self._knots:
            x, y, radius = knot.place(self._distance + self.depth(surface), tand(self.slope))
            disc = Point(x + self.width / 2, y + self.length / 2).buffer(1.5 * radius, 8)
            stretch = 1 / abs(1 - tand(self.slope) * knot.rise)
            outline = affinity.scale(disc, 1.0, stretch).intersection(self.area)
            if not outline.is_empty:
                found.append(Fault(outline))
        return found

    @property
    def _distance(self) -> float:
        """mm from the plane of the pith to the middle of surface 0, as the branches have it."""
        return 48.0 + self._stem.clearance

    def _branches(self, count: int) -> tuple[Knot, ...]:
        """Knots near the long edges, so that the middle of the leaf stays clear."""
        rng = self._stem.rng("knots")
        found = []
        for k in range(count):
            x = self.width * rng.uniform(0.38, 0.46) * rng.choice((-1, 1))
            y = self.length * ((k + rng.uniform(0.2, 0.8)) / count - 0.5)
            rise = rng.uniform(0.1, 0.4)
            q = self._distance + tand(self.slope) * y
            radius = min(rng.uniform(4.0, 9.0), self.width / 30)
            found.append(Knot(x / q, y - rise * q, rise, radius / q))
        return tuple(found)

    def depth(self, surface: int) -> float:
        """mm from S_0 to a surface; VeneerError where the log ends before it."""
        depth = whole("surface", surface, 0, MOST_LEAVES) * self.thickness
        if depth > DEEPEST:
            raise VeneerError(
                "log-too-small",
                "{leaves} leaves of {thickness} mm make {depth} mm, and a generated log gives "
                "{most} mm; ask for fewer or thinner leaves.",
                leaves=surface, thickness=self.thickness, depth=depth, most=DEEPEST,
            )
        return depth

    def _surface(self, number: int) -> _Surface:
        if number not in self._seen:
            painted = self._painted(self.depth(number))
            while len(self._seen) > 1:
                self._seen.pop(next(iter(self._seen)))
            self._seen[number] = painted
        return self._seen[number]

    def _painted(self, depth: float) -> _Surface:
        """The grids of the surface at `depth` mm."""
        x, y = (_nodes(size, GRID) - size / 2 for size in (self.width, self.length))
        tangent = tand(self.slope)
        sheet = Sheet(self._stem, x, y, depth)
        radius, tone = (m.astype(np.float32) for m in self._wood.paint(sheet))
        hue = np.float32(0.16) * sheet.noise("hue", 140, 600, 50)
        if self._wood.straight:
            # Mineral streaks: narrow, few and far between, where this noise is at its highest.
            hue -= np.clip(0.6 * (sheet.noise("mineral", 11, 260, 12) - 2.1), 0, 0.7)
            hue += np.clip((radius - self._sap_radius) / 5, 0, 1.2)
        for knot in self._knots:
            knot.grow(sheet, self._distance, radius, tone, hue)
        across, along = self._wood.grain
        down = _nodes(self.length, along) - self.length / 2
        fine = self._fibre.map(_nodes(self.width, across).size, depth + tangent * down)
        slow = tuple((m, (GRID, GRID)) for m in (radius, tone, hue))
        return _Surface((*slow, (fine, (across, along))))

    @cached_property
    def _sap_radius(self) -> float:
        """mm: where sapwood begins, some 25 mm within the edge of the leaf that is furthest out."""
        half = self.width / 2
        if self.figure in ("cathedral", "crotch"):
            return math.hypot(0.92 * half, self._distance + self._stem.clearance)
        return 140 + 0.955 * self.width + self._stem.clearance

    def _colour(self, maps: Sequence[np.ndarray], colours: np.ndarray) -> np.ndarray:
        """uint8 ... x 3 from radius, tone, hue and fine noise."""
        radius, tone, hue, fine = maps
        index = ((radius + fine) * np.float32(1 / RING_STEP)).astype(np.int32)
        dark = np.take(self._rings.tone, index, mode="clip")
        dark += tone
        dark += fine * np.take(self._rings.pores, index, mode="clip")
        dark *= TONES
        np.clip(dark, 0, TONES - 1, out=dark)
        row = (hue + np.float32(1)) * np.float32(HUES / 2)
        np.clip(row, 0, HUES - 1, out=row)
        place = row.astype(np.int32) * TONES + dark.astype(np.int32)
        packed = colours.view(np.uint32).ravel()
        return np.take(packed, place).view(np.uint8).reshape(*place.shape, 4)[..., :3]

    @cached_property
    def _rings(self) -> Rings:
        reach = math.hypot(self.width, 300 + 2 * self._stem.clearance) + 600
        return Rings(self._wood, self._stem, reach)

    @cached_property
    def _palette(self) -> np.ndarray:
        return palette(self._wood)

    def _off(self, at: np.ndarray) -> np.ndarray:
        """Which pixels, at `at` (... x 2, bundle mm), show no leaf."""
        x, y = at[..., 0], at[..., 1]
        return (x < 0) | (x > self.width) | (y < 0) | (y > self.length)


@dataclass(frozen=True)
class _Surface:
    """Radius, tone, hue and fine noise of one surface: each a grid and its cell, across and along,
    in mm."""

    grids: tuple[tuple[np.ndarray, tuple[float, float]], ...]


def _nodes(size: float, cell: float) -> np.ndarray:
    """mm of the grid's nodes along one edge of the leaf."""
    return (np.arange(math.ceil(size / cell) + 1 + 2 * MARGIN) - MARGIN) * cell


def _at(grid: np.ndarray, cell: tuple[float, float], points: np.ndarray) -> np.ndarray:
    """The grid, linear between its nodes, at points in bundle mm."""
    u, v = (points / cell + MARGIN).T
    i, j = np.floor(v).astype(int), np.floor(u).astype(int)
    s, t = u - j, v - i
    low = grid[i, j] * (1 - s) + grid[i, j + 1] * s
    high = grid[i + 1, j] * (1 - s) + grid[i + 1, j + 1] * s
    return (low * (1 - t) + high * t).astype(np.float32)


@dataclass(frozen=True)
class _Looked:
    """Where a block of a photo's pixels, whose upper edge lies `rows` pixels up, looks up what it
    shows: bundle mm."""

    frame: Motion
    scale: float
    rows: int
    optics: Optics | None

    @cached_property
    def straight(self) -> np.ndarray:
        """2 x 3, for straight pictures: x = a column + b row + e and y likewise, from pixels
        (centres at half-integers, row 0 at the top)."""
        a, b, d, e = self.frame.inverse().matrix
        off = self.frame.inverse().apply((0.0, self.rows * self.scale))
        s = self.scale
        return np.array([[a * s, -b * s, off[0]], [d * s, -e * s, off[1]]])

    def at(self, columns: np.ndarray, rows: np.ndarray) -> np.ndarray:
        if self.optics:
            return shown(self.optics, self.frame, self.scale, columns, self.rows - rows)
        return np.stack([a * columns + b * rows + e for a, b, e in self.straight], axis=-1)

    def middles(self, columns: int, rows: int) -> np.ndarray:
        """rows x columns x 2: at the centres of pixels."""
        return self.at(np.arange(columns) + 0.5, (np.arange(rows) + 0.5)[:, None])

    def up(
        self, image: Image.Image, cell: tuple[float, float], size: tuple[int, int]
    ) -> np.ndarray:
        """A grid at the pixel centres of a block; Pillow counts from half-integers too."""
        if self.optics:
            return bent(image, lambda c, r: self.at(c, r) / cell + MARGIN + 0.5, size[::-1])
        onto = self.straight / np.array(cell)[:, None]
        onto[:, 2] += MARGIN + 0.5
        return np.asarray(image.transform(size, Image.AFFINE, tuple(onto.ravel()), Image.BILINEAR))


def _photographed(
    log: Log, surface: int, mm_per_px: float, off: Disturbance | None, seed: list[int]
) -> tuple[np.ndarray, Motion]:
    """A photograph of a surface and the motion that the leaf was given under the camera."""
    if off is None:
        return log.picture(surface, mm_per_px), IDENTITY
    rng = np.random.default_rng(seed)
    dx, dy, turn, exposure = rng.uniform(-1, 1, 4) * (off.shift, off.shift, off.turn, off.exposure)
    frame = Motion(dx=dx, dy=dy) @ Motion.turn_about(log.width / 2, log.length / 2, turn)
    if surface == 0:
        frame, exposure = IDENTITY, 0.0
    optics = off.optics((log.width, log.length), seed)
    picture = log.picture(surface, mm_per_px, frame, exposure, optics)
    for top in range(0, len(picture) if off.noise else 0, _ROWS):
        block = picture[top : top + _ROWS]
        grain = rng.standard_normal(block.shape, dtype=np.float32) * np.float32(255 * off.noise)
        block[...] = np.clip(block + grain + np.float32(0.5), 0, 255)
    return picture, frame


def _backs(backs: bool | Sequence[int], count: int) -> frozenset[int]:
    """The leaves whose backs are photographed."""
    if isinstance(backs, bool):
        return frozenset(range(1, count + 1) if backs else ())
    return frozenset(whole("leaf whose back is photographed", k, 1, count) for k in backs)


def _affordable(log: Log, mm_per_px: float, photos: int) -> None:
    """Raises VeneerError if so many photographs would not fit a workshop's computer."""
    rows, columns = log.pixels(mm_per_px)
    size = 3.0 * rows * columns * photos
    if size > MOST_BYTES:
        raise VeneerError(
            "bundle-too-large",
            "{photos} photographs of {columns} x {rows} pixels take {size} GB; give fewer leaves "
            "or more mm per pixel.",
            photos=photos, columns=columns, rows=rows, size=round(size / 1e9, 1),
        )


def sawn_bundle(
    leaves: int = 24, width: float = 600.0, length: float = 2400.0, thickness: float = 0.6,
    mm_per_px: float = 0.5, figure: str = "cathedral", seed: int = 1, slope: float = 0.0,
    disturb: Disturbance | Mapping[str, float] | None = None, backs: bool | Sequence[int] = False,
    knots: int | None = None,
) -> Bundle:
    """A bundle sliced from a generated log; sizes in mm, `slope` in degrees (see Log).

    With `disturb` every photograph but the face of leaf 1 is moved and exposed at random, and
    registers are the exact motions (a usable area is the leaf's as if lens and buckle were none).
    `backs`: whether backs are photographed too, or the numbers of
    the leaves whose backs are; a back's view is its own motion, its register the leaf's. Raises
    VeneerError.
    """
    count = whole("leaves", leaves, 1, MOST_LEAVES)
    log = Log(width, length, thickness, figure, seed, slope, knots)
    rear = _backs(backs, count)
    log.depth(count)
    _affordable(log, mm_per_px, count + len(rear))
    off = disturbance(disturb)
    found = []
    for k in range(1, count + 1):
        pixels, register = _photographed(log, k - 1, mm_per_px, off, [seed, k, 0])
        face = Photo.of(pixels, mm_per_px)
        back = None
        if k in rear:
            pixels, view = _photographed(log, k, mm_per_px, off, [seed, k, 1])
            back = Side(Photo.of(pixels, mm_per_px), register, view)
        usable = register.apply_to(log.area).intersection(box(0.0, 0.0, *face.size))
        outlines = [register.apply_to(f.outline).intersection(usable) for f in log.faults(k - 1)]
        faults = tuple(Fault(outline) for outline in outlines if not outline.is_empty)
        found.append(Leaf(k, Side(face, register, register), back, usable, faults))
    return Bundle(tuple(found), log.thickness, "next", log.slope or None)

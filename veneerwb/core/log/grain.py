# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a generated log is made of: smooth noise, annual rings, fibres, knots and colours.

All are continuous functions of x, y and depth, so that neighbouring surfaces belong to one log. How
wood looks is judged by eye: no source.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, field
from functools import cached_property, lru_cache

import numpy as np
from scipy.ndimage import gaussian_filter, gaussian_filter1d

from veneerwb.core.colour import decode, encode
from veneerwb.core.plane import tand

LAYERS = 32
TONES, HUES = 512, 64
RING_STEP = 0.0125
"""mm of radius from one entry of the ring table to the next."""
_RATES = np.array([0.082, 0.247, 0.419, 0.603, 0.808, 1.051, 1.371, 1.938])
"""Of the swings in depth, as shares of a quarter turn: spread as the normal distribution is, their
mean square 1."""
_SPLINE_VARIANCE = 151.0 / 315.0
"""Integral of the squared cubic B-spline: the mean variance that interpolating by it leaves."""

Colour = tuple[int, int, int]


@dataclass(frozen=True)
class Wood:
    """The look of a figure: how rings, pores and colours are set.

    `ring` mean ring width in mm, `contrast` of the rings and `band` of neighbouring rings in tone,
    `grain` the cell of the fine noise (across, along) in mm, `pores` its strength, `knots` how many
    by default, `light` to `dark` the colours of the heartwood (sRGB) at tones 0 and 1, `sap` the
    lightest of the sapwood. Only wood of `straight` grain has sapwood at its edges and mineral
    streaks.
    """

    paint: Callable[[Sheet], tuple[np.ndarray, np.ndarray]]
    ring: float
    contrast: float
    band: float
    grain: tuple[float, float]
    pores: float
    knots: int
    light: Colour
    dark: Colour
    sap: Colour
    straight: bool = True


@dataclass(frozen=True)
class Stem:
    """What recipes ask of the log: leaf `width` and `length` in mm, `slope` in degrees, `seed`."""

    width: float
    length: float
    slope: float
    seed: int
    _lattices: dict[str, np.ndarray] = field(default_factory=dict, repr=False, compare=False)

    def rng(self, name: str) -> np.random.Generator:
        """A generator of its own for each use, so that one recipe does not disturb another."""
        return _rng(self.seed, name)

    def lattice(self, name: str, rows: int, columns: int) -> np.ndarray:
        """Random values, LAYERS x rows x columns, drawn once for each name."""
        if name not in self._lattices:
            shape = (LAYERS, rows, columns)
            drawn = self.rng(name).standard_normal(shape, dtype=np.float32)
            self._lattices[name] = drawn
        return self._lattices[name]

    @cached_property
    def clearance(self) -> float:
        """mm added to the distance from the pith, so that no sloping leaf cuts through it."""
        return abs(tand(self.slope)) * self.length / 2


@dataclass(frozen=True)
class Sheet:
    """The grid of one surface, which lies `surface` mm under S_0: `x` (columns) and `y` (rows) in
    mm from the middle of the leaf."""

    stem: Stem
    x: np.ndarray
    y: np.ndarray
    surface: float

    @cached_property
    def depth(self) -> np.ndarray:
        """mm across the figure, one value a row: surface + tan(slope) y."""
        return self.surface + tand(self.stem.slope) * self.y

    @cached_property
    def march(self) -> np.ndarray:
        """mm by which the rings lie further out than on S_0, one value a row; 0 on a stem without
        slope, where the figure as a whole neither shifts nor turns from surface to surface."""
        return self.depth if self.stem.slope else np.zeros(self.y.size)

    def lay(self, name: str, across: float, along: float, deep: float) -> np.ndarray:
        """Noise that lays the rings: as `noise`, but the same on all surfaces of a stem without
        slope, for the few large cells of it would shift and turn the figure as a whole."""
        return self.noise(name, across, along, deep if self.stem.slope else math.inf)

    def stir(self, name: str, across: float, along: float, deep: float) -> np.ndarray | float:
        """Noise of small cells that on a stem without slope tells leaves apart in place of what
        `lay` keeps still: so many that, taken together, they leave the figure where it is.

        Its lattice swings in depth at many rates at once, so that it changes as fast at one depth
        as at another. `noise` goes from layer to layer, and changes half as fast across one.
        """
        if self.stem.slope:
            return 0.0
        lattice, (row, wy), (column, wx) = self._lattice(name, across, along)
        turns = np.pi / 2 * self.surface / deep * _RATES
        shares = np.concatenate([np.cos(turns), np.sin(turns)]) / math.sqrt(len(_RATES))
        level = np.tensordot(shares.astype(np.float32), lattice[: len(shares)], 1)
        strips = _across(level[None], column, wx)[0] / np.float32(_SPLINE_VARIANCE)
        return sum(strips[row + k] * wy[k][:, None] for k in range(4))

    def noise(self, name: str, across: float, along: float, deep: float) -> np.ndarray:
        """Smooth noise of deviation about 1, rows x columns; cells in mm."""
        lattice, (row, wy), (column, wx) = self._lattice(name, across, along)
        layer = np.floor(self.depth / deep).astype(int)
        part = (self.depth / deep - layer).astype(np.float32)
        # By an angle that goes evenly from one layer to the next, leaves are evenly unlike.
        turn = part * np.float32(math.pi / 2)
        shares = np.cos(turn), np.sin(turn)
        out = np.zeros((self.y.size, self.x.size), np.float32)
        for lift, share in enumerate(s / np.float32(_SPLINE_VARIANCE) for s in shares):
            level = (layer + lift) % LAYERS
            used, level = np.unique(level, return_inverse=True)
            strips = _across(lattice[used], column, wx)
            for k in range(4):
                out += strips[level, row + k] * (share * wy[k])[:, None]
        return out

    def _lattice(
        self, name: str, across: float, along: float
    ) -> tuple[np.ndarray, tuple[np.ndarray, np.ndarray], tuple[np.ndarray, np.ndarray]]:
        """A lattice that covers the leaf, and the first node and weights of each row and column."""
        column, wx = _spline(self.x + self.stem.width / 2, across)
        row, wy = _spline(self.y + self.stem.length / 2, along)
        row, column = row - row.min(), column - column.min()
        lattice = self.stem.lattice(name, int(row.max()) + 4, int(column.max()) + 4)
        return lattice, (row, wy), (column, wx)


def _spline(position: np.ndarray, cell: float) -> tuple[np.ndarray, np.ndarray]:
    """First node and the four cubic B-spline weights (4 x N) of positions in mm."""
    at = position / cell
    node = np.floor(at).astype(int)
    u = (at - node).astype(np.float32)
    v = 1 - u
    inner = 4 - 6 * u * u + 3 * u**3, 4 - 6 * v * v + 3 * v**3
    return node, np.stack([v**3, *inner, u**3]) / np.float32(6)


def _across(lattice: np.ndarray, column: np.ndarray, weights: np.ndarray) -> np.ndarray:
    """Layers x rows x N: every row of the lattice interpolated at the grid's columns."""
    return sum(np.take(lattice, column + k, axis=2) * weights[k] for k in range(4))


class Rings:
    """Tone and strength of the pores as tables over the radius, RING_STEP mm a step."""

    def __init__(self, wood: Wood, stem: Stem, reach: float) -> None:
        rng = stem.rng("rings")
        count = int(2.5 * reach / wood.ring) + 20
        slow = gaussian_filter1d(rng.standard_normal((3, count)), 1.2, axis=1) * 2.0
        widths = wood.ring * np.exp(np.clip(0.32 * slow[0], -0.9, 0.8))
        edges = np.concatenate([[0.0], np.cumsum(widths)])
        radius = np.arange(int(reach / RING_STEP)) * RING_STEP
        ring = np.clip(np.searchsorted(edges, radius, side="right") - 1, 0, count - 1)
        part = np.clip((radius - edges[ring]) / widths[ring], 0.0, 1.0)
        strength = wood.contrast * np.exp(0.3 * slow[1])
        tone = strength[ring] * (0.25 * part + 0.75 * part**5) + wood.band * slow[2][ring]
        # Latewood ends within a fifth of a millimetre, not at a mathematical edge.
        self.tone = gaussian_filter1d(tone, 0.12 / RING_STEP).astype(np.float32)
        self.pores = (0.45 + 0.9 * (1 - part) ** 2).astype(np.float32)


class Fibre:
    """Fine noise along the grain: its layers lie 1.2 mm apart, so that neighbouring surfaces share
    most of it and surfaces some millimetres apart none."""

    SPACING = 1.2

    def __init__(self, wood: Wood, stem: Stem) -> None:
        self.tiles, self.pick = _fibres(stem.seed)
        self.pores = wood.pores

    def map(self, columns: int, depth: np.ndarray) -> np.ndarray:
        """Rows x columns of tone on the fine grid, at one depth (mm) a row: the mean of two sets of
        layers, those of one midway between the other's. With one set, surfaces would change three
        times as much between two layers as across one, as in no log."""
        out = np.zeros((depth.size, columns), np.float32)
        for half in (0, 1):
            at = depth / self.SPACING + half / 2
            layer = np.floor(at).astype(int)
            part = (at - layer).astype(np.float32)
            even = np.hypot(part, 1 - part) * np.float32(math.sqrt(2))
            for lift, share in ((0, (1 - part) / even), (1, part / even)):
                for level in np.unique(layer):
                    rows = np.flatnonzero(layer == level)
                    tile, down, right = self.pick[(2 * (level + lift) + half) % len(self.pick)]
                    band = self.tiles[tile][(rows + down) % 509]
                    out[rows] += band[:, (np.arange(columns) + right) % 512] * share[rows, None]
        return np.float32(self.pores) * (out * np.float32(0.3) + np.maximum(out - 0.7, 0))


@lru_cache(maxsize=4)
def _fibres(seed: int) -> tuple[np.ndarray, np.ndarray]:
    """Tiles of fibres, and which tile each layer is of and how far it is shifted: alike for all
    logs of one seed."""
    rng = _rng(seed, "fibre")
    noise = rng.standard_normal((8, 509, 512), dtype=np.float32)
    blurred = gaussian_filter(noise, (0, 1.2, 0.7), mode="wrap")
    # Each layer is a tile shifted at random, and the tiles take turns: one tile in two layers near
    # each other, by chance shifted nearly alike, would look like fibres that slide.
    pick = rng.integers(0, (8, 509, 512), (4096, 3))
    pick[:, 0] = np.arange(4096) % 8
    tiles = blurred / blurred.std()
    tiles.flags.writeable = pick.flags.writeable = False
    return tiles, pick


def _rng(seed: int, name: str) -> np.random.Generator:
    return np.random.default_rng([seed, *name.encode()])


@dataclass(frozen=True)
class Knot:
    """A branch: a cone from the pith, x = lean q, y = root + rise q, radius = taper q, with q the
    distance in mm from the pith's plane."""

    lean: float
    root: float
    rise: float
    taper: float

    def place(self, distance: float, tangent: float) -> tuple[float, float, float]:
        """Centre x, y and radius in mm where the axis meets a leaf q = distance + tangent y."""
        q = (distance + tangent * self.root) / (1 - tangent * self.rise)
        return self.lean * q, self.root + self.rise * q, self.taper * q

    def grow(
        self, sheet: Sheet, distance: float, radius: np.ndarray, tone: np.ndarray, hue: np.ndarray
    ) -> None:
        """Lets the knot part the rings around it and shows its own; changes the maps in place.

        `distance` is mm from the pith's plane to the depth 0 of the sheet.
        """
        x, y, size = self.place(distance + sheet.surface, tand(sheet.stem.slope))
        rows, columns = np.abs(sheet.y - y) < 9 * size, np.abs(sheet.x - x) < 6 * size
        if not rows.any() or not columns.any():
            return
        part = np.ix_(rows, columns)
        q = (distance + sheet.depth[rows])[:, None]
        dx = sheet.x[columns] - self.lean * q
        dy = sheet.y[rows][:, None] - self.root - self.rise * q
        far = np.hypot(dx, dy) / (self.taper * q)
        flow = np.hypot(dx, dy / 1.6) / (self.taper * q)
        radius[part] += 2.2 * size * np.clip(1 - flow / 5, 0, 1) ** 2
        inside = np.clip((1.05 - far) / 0.2, 0, 1)
        radius[part] += inside * (far * size * 2.4 + 40 - radius[part])
        tone[part] += 0.30 * inside + 0.30 * np.exp(-(((far - 1.05) / 0.14) ** 2))
        tone[part] += 0.12 * np.clip(1 - flow / 3, 0, 1)
        hue[part] *= 1 - inside


def palette(wood: Wood) -> np.ndarray:
    """uint8 HUES x TONES x 4: mineral (hue -1), heartwood (0), sapwood (1), from light to dark."""
    light, dark, sap = (np.array(c, float) for c in (wood.light, wood.dark, wood.sap))
    mineral = [light * (0.66, 0.72, 0.73), dark * (0.74, 0.80, 0.82)]
    ends = np.array([mineral, [light, dark], [sap, 0.5 * dark + 0.45 * light]])
    hue = (np.arange(HUES) + 0.5) * 2 / HUES
    low = np.minimum(hue.astype(int), 1)
    share = (hue - low)[:, None, None]
    pair = ends[low] * (1 - share) + ends[low + 1] * share
    tone = ((np.arange(TONES) + 0.5) / TONES)[:, None]
    table = np.full((HUES, TONES, 4), 255, np.uint8)
    table[..., :3] = np.round(pair[:, :1] * (1 - tone) + pair[:, 1:] * tone)
    return table


def exposed(colours: np.ndarray, exposure: float) -> np.ndarray:
    """uint8 sRGB with its light multiplied by 1 + exposure."""
    if not exposure:
        return colours
    light = np.clip(decode(colours / 255) * (1 + exposure), 0, 1)
    return np.ascontiguousarray(np.round(255 * encode(light)).astype(np.uint8))

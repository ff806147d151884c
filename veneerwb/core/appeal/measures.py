# SPDX-License-Identifier: LGPL-2.1-or-later
"""How strong a pattern is: measures of a layout on true leaves, and one score from them.

What they are for is common practice, no source: broad change of colour and of grain makes a strong
radial match, straight stripes and fine burl make little of it, and seams should not be seen.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from types import MappingProxyType
from typing import Any

import numpy as np
from scipy.sparse import csr_matrix

from veneerwb.core.appeal.maps import CHANNELS, FINE, Maps
from veneerwb.core.colour import ciede2000
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout, Piece, Seam, alike
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge
from veneerwb.core.plane import IDENTITY, Motion, finite
from veneerwb.core.raster import Frame, covered
from veneerwb.words import marked, say, word

UNITS: Mapping[str, float] = MappingProxyType(
    {
        marked("contrast"): 10.0, marked("variety"): 5.0, marked("seams"): -5.0,
        marked("closing"): -5.0,
    }
)  # fmt: skip
"""One unit of score is so much of each measure; what speaks against a pattern counts below 0. A
colour difference of 2 reads as another colour (see `core.colour`); the rest is chosen."""
WEIGHTS: Mapping[str, float] = MappingProxyType(
    {"contrast": 1.0, "variety": 1.0, "seams": 0.5, "closing": 0.25}
)
MOST_WEIGHT = 1000.0
POINTS = 450
"""Points at which a top is looked at where all its pieces are cut from one place, or all pieces of
any other together."""
AT_ONCE = 64
"""Motions."""
DIGITS = 4
"""Decimals of measures."""
ALONG = 32
"""Points at which a seam is, at most."""


@dataclass(frozen=True)
class Appeal:
    """Measures of a top, each on colours as seen from the viewing distance (see `maps`).

    contrast: the root of the mean squared distance of the top's colours from their mean, CIELAB.
    variety:  c s: with d the direction of grain on the leaf and c its clarity, the mean clarity
              times the angular deviation of the directions about theirs, each weighing as it is
              clear, s = sqrt(2 (1 - R)) / 2 in degrees, R = |sum c exp(2 i d)| / sum c (E.
              Batschelet, Circular Statistics in Biology, 1981, from memory; doubled angles). 0
              where grain runs one way or has none, to 40.5.
    seams:    the mean of CIEDE2000 between both sides of every seam but the closing one, along
              their whole length.
    closing:  the same for the closing seam: where the most surfaces lie between those that meet.
    """

    contrast: float
    variety: float
    seams: float
    closing: float

    def score(self, weights: Mapping[str, float] | None = None) -> float:
        """The measures in their UNITS, each times its weight."""
        return self.scored(weighed(weights))

    def scored(self, weights: Mapping[str, float]) -> float:
        """As `score`, with weights from `weighed`."""
        return sum(weights[name] * getattr(self, name) / unit for name, unit in UNITS.items())


def weighed(weights: Mapping[str, float] | None) -> dict[str, float]:
    """WEIGHTS, with those given instead; VeneerError for a measure that is none, or no weight."""
    use = dict(WEIGHTS)
    if not isinstance(weights, Mapping | None):
        raise VeneerError(
            "not-weights", "Weights cannot be {value!r:.40}; give one by name for any of {known}.",
            value=weights, known=", ".join(UNITS),
        )
    for name, value in (weights or {}).items():
        if name not in UNITS:
            raise VeneerError(
                "no-such-measure", "There is no measure called {name!r}; weights are for {known}.",
                name=name, known=", ".join(UNITS),
            )
        weight = finite(say("weight of {name}", name=word(name)), value)
        if not 0.0 <= weight <= MOST_WEIGHT:
            raise VeneerError(
                "out-of-range", "The weight of {name} cannot be {value}; give 0 to {most}.",
                name=word(name), value=weight, most=MOST_WEIGHT,
            )
        use[name] = weight
    if not any(use.values()):
        raise VeneerError(
            "no-weight", "All weights are 0, so that all spots are alike; give one of them more."
        )
    return use


def appraised(layout: Layout, maps: Maps) -> Appeal:
    """The measures of a layout, from the maps of its bundle."""
    return Appraiser((layout,), maps).at([IDENTITY])[0][0]


def across_seams(layout: Layout, maps: Maps) -> list[float]:
    """The mean of CIEDE2000 between both sides of each seam, in the order of the layout's seams."""
    return _Joints((layout,), maps).each(layout)


class Appraiser:
    """Measures of layouts that differ in their leaves alone, moved about on their bundle: what does
    not move is made ready once."""

    def __init__(self, layouts: Sequence[Layout], maps: Maps) -> None:
        self._face = _Face(layouts, maps)
        self._joints = _Joints(layouts, maps)

    def at(self, motions: Sequence[Motion]) -> list[list[Appeal]]:
        """For each motion the measures of each layout with all its pieces moved by it on the
        bundle: many at once cost less."""
        found = []
        for k in range(0, len(motions), AT_ONCE):  # so that little memory is held
            some = motions[k : k + AT_ONCE]
            figures = np.stack([*self._face.at(some), *self._joints.at(some)], axis=-1)
            # Rounded, for last bits come and go with how much is reckoned at once.
            rows = np.round(figures, DIGITS).tolist()
            found += [[Appeal(*figure) for figure in row] for row in rows]
        return found


class _Face:
    """What is seen of layouts: points of outlines on the bundle, on the surfaces shown there."""

    def __init__(self, layouts: Sequence[Layout], maps: Maps) -> None:
        self._frame, pieces = maps.frame, layouts[0].pieces
        one = alike(pieces)
        shown = pieces[:1] if one else pieces
        cell = _spacing(sum(piece.area for piece in shown))
        self._points = [p.onto_bundle.apply(_points(p.edge, cell)) for p in shown]
        self._planes = [_by_cell(plane) for plane in maps.values]
        self._mix = np.zeros((len(shown), len(layouts), len(self._planes)))
        for k, layout in enumerate(layouts):
            for p in layout.pieces:
                at = 0 if one else p.position - 1
                self._mix[at, k, maps.planes[p.leaf, p.turned]] += 1.0
        if one and len(layouts) == 1:  # then the mean of its surfaces is enough
            self._planes = [_by_cell(maps.over((p.leaf, p.turned) for p in layouts[0].pieces))]
            self._mix = np.ones((1, 1, 1))
        self._mix /= self._mix.sum(axis=2, keepdims=True) * max(1, sum(map(len, self._points)))

    def at(self, motions: Sequence[Motion]) -> tuple[np.ndarray, np.ndarray]:
        """Contrast and variety, motions x layouts each."""
        means = np.zeros((self._mix.shape[1], len(motions), CHANNELS))
        for points, mix in zip(self._points, self._mix):
            shares = _shares(self._frame, _moved(points, motions), len(points))
            for k in np.flatnonzero(mix.any(axis=0)):
                means += mix[:, k, None, None] * (shares @ self._planes[k])
        return of_means(means.transpose(2, 1, 0))


class _Joints:
    """The seams of layouts: what is the same in several of them once."""

    def __init__(self, layouts: Sequence[Layout], maps: Maps) -> None:
        self._maps = maps
        longest = max((s.line.length for layout in layouts for s in layout.seams), default=0.0)
        self._count = min(ALONG, max(1, int(np.ceil(longest / FINE))))
        self._lines: dict[tuple[float, ...], np.ndarray] = {}
        self._sides: dict[tuple[tuple[float, ...], int], int] = {}
        self._pairs: dict[tuple[int, int], int] = {}
        self._rows = [self._row(layout) for layout in layouts]

    def _row(self, layout: Layout) -> tuple[list[int], int, list[int]]:
        """The pairs of sides at a layout's seams but the closing one, how many seams these are, and
        the pair at the closing one; a side that meets itself is left out."""
        closing = closing_seam(layout.seams)
        rest = [seam for seam in layout.seams if seam is not closing]
        last = [] if closing is None else [closing]
        pairs = [
            [pair for pair in (self._pair(layout, s) for s in seams) if pair is not None]
            for seams in (rest, last)
        ]
        return pairs[0], len(rest), pairs[1]

    def _pair(self, layout: Layout, seam: Seam) -> int | None:
        pieces = (layout.pieces[position - 1] for position in (seam.a, seam.b))
        a, b = sorted(self._side(piece, seam) for piece in pieces)
        return None if a == b else self._pairs.setdefault((a, b), len(self._pairs))

    def _side(self, piece: Piece, seam: Seam) -> int:
        points = piece.onto_bundle.apply(_along(seam, self._count))
        line = tuple((np.round(points[[0, -1]], 6) + 0.0).ravel().tolist())
        self._lines.setdefault(line, points)
        plane = self._maps.planes[piece.leaf, piece.turned]
        return self._sides.setdefault((line, plane), len(self._sides))

    def at(self, motions: Sequence[Motion]) -> tuple[np.ndarray, np.ndarray]:
        """The mean difference across the seams but the closing one, and across that, motions x
        layouts each."""
        out = np.zeros((2, len(motions), len(self._rows)))
        if self._pairs:
            sides = self._colours(motions)
            a, b = np.array(list(self._pairs)).T
            each = ciede2000(sides[a], sides[b]).reshape(len(a), len(motions), -1).mean(axis=2)
            for k, (rest, count, last) in enumerate(self._rows):
                out[0, :, k] = each[rest].sum(axis=0) / max(1, count)
                out[1, :, k] = each[last].sum(axis=0)
        return out[0], out[1]

    def each(self, layout: Layout) -> list[float]:
        """The mean difference across each seam of a layout, where it stands."""
        pairs = [self._pair(layout, seam) for seam in layout.seams]
        if not self._pairs:
            return [0.0] * len(pairs)
        sides = self._colours([IDENTITY])
        a, b = np.array(list(self._pairs)).T
        means = np.round(ciede2000(sides[a], sides[b]).mean(axis=1), DIGITS).tolist()
        return [0.0 if pair is None else means[pair] for pair in pairs]

    def _colours(self, motions: Sequence[Motion]) -> np.ndarray:
        """sides x points of all motions x 3: CIELAB."""
        moved = {line: _moved(points, motions) for line, points in self._lines.items()}
        shares = {line: _shares(self._maps.frame, at, 1) for line, at in moved.items()}
        seen = [shares[at] @ _by_cell(self._maps.values[plane]) for at, plane in self._sides]
        return np.stack(seen)[..., :3] + self._maps.mean


def _moved(points: np.ndarray, motions: Sequence[Motion]) -> np.ndarray:
    """The points moved by each motion, one set after another."""
    rows = np.array([(*motion.matrix, motion.dx, motion.dy) for motion in motions])
    a, b, d, e, dx, dy = rows.T[..., None]
    x, y = points.T
    return np.stack([a * x + b * y + dx, d * x + e * y + dy], axis=-1).reshape(-1, 2)


def _by_cell(plane: np.ndarray) -> np.ndarray:
    return plane.reshape(-1, CHANNELS)


def of_means(mean: Any) -> tuple[Any, Any]:
    """Contrast and variety from the means of all CHANNELS (the first axis) over a top."""
    colour, square, clarity = mean[:3], mean[3], mean[4]
    contrast = np.sqrt(np.maximum(square - (colour * colour).sum(axis=0), 0.0))
    common = np.hypot(mean[5], mean[6])
    # c sqrt(2 (1 - R)) / 2 = sqrt(c (c - common) / 2)
    return contrast, np.degrees(np.sqrt(np.maximum(clarity * (clarity - common) / 2, 0.0)))


def closing_seam(seams: tuple[Seam, ...]) -> Seam | None:
    """The seam between whose sides the most surfaces lie; the last of those that are alike."""
    return max(reversed(seams), key=lambda seam: seam.step, default=None)


def _shares(frame: Frame, points: np.ndarray, together: int) -> csr_matrix:
    """What every cell of `frame` adds to a map's value at points (N x 2, mm), linear between the
    centres of cells and beyond the outermost as there; the values of so many points `together` are
    added up. Rows for sums, columns for cells."""
    rows, columns = frame.shape
    at = frame.places(points)
    u, v = np.clip(at[:, 0], 0, columns - 1), np.clip(at[:, 1], 0, rows - 1)
    column = np.minimum(u.astype(np.int32), max(0, columns - 2))
    row = np.minimum(v.astype(np.int32), max(0, rows - 2))
    s, t = (u - column).astype(np.float32), (v - row).astype(np.float32)
    here, right, up = row * columns + column, min(1, columns - 1), columns if rows > 1 else 0
    cells = np.stack([here, here + right, here + up, here + up + right], axis=1)
    share = np.stack([(1 - s) * (1 - t), s * (1 - t), (1 - s) * t, s * t], axis=1)
    starts = np.arange(0, 4 * len(points) + 1, 4 * together)
    return csr_matrix((share.ravel(), cells.ravel(), starts), (len(starts) - 1, rows * columns))


def _along(seam: Seam, count: int) -> np.ndarray:
    """Points in the middles of `count` equal parts of a seam (N x 2, top mm)."""
    ends = np.asarray(seam.line.coords)[[0, -1]]
    share = (np.arange(count) + 0.5)[:, None] / count
    return ends[0] + share * (ends[1] - ends[0])


def _spacing(area: float) -> float:
    """mm between points of so large an area; colours and grain hardly change between them."""
    return max(FINE, float(np.sqrt(area / POINTS)))


@lru_cache(maxsize=256)
def _points(edge: Edge, cell: float) -> np.ndarray:
    """The centres (N x 2, top mm) of cells of a grid about the origin that lie within an outline.
    """
    outline = edges.polygon(edge)
    x0, y0, x1, y1 = outline.bounds
    low = np.floor(np.array([x0, y0]) / cell)
    columns, rows = (int(n) for n in np.ceil(np.array([x1, y1]) / cell) - low)
    frame = Frame(low[0] * cell, low[1] * cell, cell, (max(1, rows), max(1, columns)))
    x, y = frame.centres()
    row, column = np.nonzero(covered(outline, frame))
    return np.stack([x[column], y[row]], axis=1)

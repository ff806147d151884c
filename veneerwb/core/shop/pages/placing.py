# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where in the pieces of a plan their marks go: number, leaf, and an arrow along the grain.

All in mm of the paper. Numbers have one height and leaves stand with all of them or with none;
pieces in which there is no room for theirs get them outside.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from shapely.geometry import Point as ShapelyPoint
from shapely.geometry import Polygon, box
from shapely.ops import polylabel
from shapely.prepared import prep

from veneerwb.core.layout import Piece
from veneerwb.core.outlines.edge import Point
from veneerwb.core.outlines.inside import NEAR
from veneerwb.core.plane import Motion, polar
from veneerwb.core.shop.drawing.lettering import LARGE, PLAIN, SMALL, width
from veneerwb.core.shop.shown import lettered

LEVELS = tuple(
    (height, leaves, in_a_circle)
    for leaves in (True, False) for in_a_circle in (True, False) for height in (LARGE, PLAIN, SMALL)
)  # fmt: skip
"""Height of the numbers, whether the leaf stands with them, and whether all wedges have theirs as
far out: the best first."""
FEW = 0.2
"""At most so many of the pieces have their marks outside while the others have them inside."""
OFF = 0.7
"""mm between marks and the edge of their piece."""
CROSS = 4.0
"""mm: half of the cross at the match's centre."""
ARROWS = (16.0, 12.0, 9.0, 7.0)
BROAD = 1.3
"""mm: half of what an arrow takes up across."""


def leaf_text(piece: Piece) -> str:
    return lettered(piece.leaf)


def leaf_height(height: float) -> float:
    """Of a leaf's letters below a number of that height, mm."""
    return PLAIN if height > PLAIN else SMALL


@dataclass(frozen=True)
class Spot:
    """Marks of one piece: the middle of the `block` of number and leaf, and the middle, length and
    direction of its arrow; None where there is no room for it."""

    piece: Piece
    block: Point
    arrow: tuple[Point, float, float] | None


@dataclass(frozen=True)
class Marks:
    """All of a plan: height of the numbers, whether leaves stand with them, and the pieces that
    have theirs inside and outside."""

    height: float
    leaves: bool
    inside: tuple[Spot, ...]
    outside: tuple[Piece, ...]


def moved(marks: Marks, onto: Motion) -> Marks:
    """Marks laid out about the origin, moved to their place on the paper."""
    return replace(
        marks,
        inside=tuple(
            replace(
                spot,
                block=onto.point(spot.block),
                arrow=spot.arrow and (onto.point(spot.arrow[0]), *spot.arrow[1:]),
            )
            for spot in marks.inside
        ),
    )


def block_size(piece: Piece, height: float, leaves: bool) -> tuple[float, float]:
    """Width and height of a number with what stands below it."""
    wide = width(str(piece.position), height)
    if not leaves:
        return wide, height + 0.3 * height * piece.turned
    low = leaf_height(height)
    return max(wide, width(leaf_text(piece), low)), 1.25 * height + 1.9 + low  # with its underline


@dataclass(frozen=True)
class Widest:
    """Where a piece is widest, and how wide: the largest circle in it, top mm."""

    at: Point
    radius: float


def widest(piece: Piece) -> Widest:
    """Within a fiftieth of the piece's extent."""
    outline = piece.outline
    x0, y0, x1, y1 = outline.bounds
    fine = max(x1 - x0, y1 - y0) / 50.0
    label = polylabel(outline.simplify(fine / 10.0), fine)
    return Widest((label.x, label.y), outline.boundary.distance(label))


def placed_marks(
    pieces: Sequence[Piece], wide: Sequence[Widest], factor: float,
    centre: Point = (0.0, 0.0), crossed: bool = False,
) -> Marks:  # fmt: skip
    """The marks of pieces, each the `widest` where it is told, on a plan that is `factor` times as
    large, about the origin. `centre`: where wedges meet (top mm); `crossed`: a cross is drawn
    there."""
    shapes = [Shape(piece, one, factor, centre) for piece, one in zip(pieces, wide)]
    if crossed:
        cross = ShapelyPoint(factor * centre[0], factor * centre[1]).buffer(CROSS + 0.5)
        for shape in shapes:
            shape.keep_off(cross)
    for height, leaves, in_a_circle in LEVELS:
        share = _common_share(shapes, height, leaves) if in_a_circle else None
        if in_a_circle and share is None:
            continue
        blocks = [shape.block(height, leaves, share) for shape in shapes]
        if sum(block is None for block in blocks) <= FEW * len(blocks):
            break
    else:
        return Marks(SMALL, False, (), tuple(pieces))
    inside = tuple(
        Spot(s.piece, b, s.arrow(b, height, leaves)) for s, b in zip(shapes, blocks) if b
    )
    return Marks(
        height, leaves, inside, tuple(s.piece for s, b in zip(shapes, blocks) if b is None)
    )


SHARES = tuple(k / 40.0 for k in range(33, 11, -1))


def _common_share(shapes: Sequence[Shape], height: float, leaves: bool) -> float | None:
    """How far out all wedges of a ring have room for their marks, so that they stand on one
    circle."""
    if not all(shape.is_wedge for shape in shapes):
        return None
    for share in SHARES:
        if all(shape.holds(shape.along(share), height, leaves) for shape in shapes):
            return share
    return None


class Shape:
    """A piece on paper."""

    def __init__(self, piece: Piece, wide: Widest, factor: float, centre: Point) -> None:
        self.piece = piece
        corners = [
            factor * np.asarray(ring.coords)
            for ring in (piece.outline.exterior, *piece.outline.interiors)
        ]
        self.whole = Polygon(corners[0], corners[1:])
        inner = self.whole.buffer(-OFF)
        self.inner = max(getattr(inner, "geoms", [inner]), key=lambda part: part.area)
        self.room = prep(self.inner)
        self.is_wedge = any(math.dist(s.start, centre) <= NEAR for s in piece.edge)
        self.tip = (factor * centre[0], factor * centre[1])
        middle = self.whole.centroid
        self.middle = (middle.x, middle.y)
        self.label = (factor * wide.at[0], factor * wide.at[1])
        self.radius = 1.1 * factor * wide.radius - OFF

    def keep_off(self, area: Any) -> None:
        """Nothing is to stand there."""
        inner = self.inner.difference(area)
        self.inner = max(getattr(inner, "geoms", [inner]), key=lambda part: part.area)
        self.room = prep(self.inner)

    def along(self, share: float) -> Point:
        """A point of a wedge's axis, the rim at 1."""
        (ax, ay), (bx, by) = self.tip, self.middle
        return ax + 1.5 * share * (bx - ax), ay + 1.5 * share * (by - ay)

    def candidates(self) -> Iterator[Point]:
        if self.is_wedge:
            yield from map(self.along, SHARES)
        yield self.middle
        if self.inner.is_empty:
            return
        yield self.label
        x0, y0, x1, y1 = self.inner.bounds
        places = [
            (x0 + (k + 0.5) * (x1 - x0) / 7.0, y0 + (j + 0.5) * (y1 - y0) / 7.0)
            for k in range(7) for j in range(7)
        ]  # fmt: skip
        yield from sorted(places, key=lambda p: round(math.dist(p, self.label), 6))

    def holds(self, at: Point, height: float, leaves: bool) -> bool:
        return self.room.contains(_box(at, *block_size(self.piece, height, leaves)))

    def block(self, height: float, leaves: bool, share: float | None) -> Point | None:
        if share is not None:
            return self.along(share)
        wide, high = block_size(self.piece, height, leaves)
        if min(wide, high) / 2.0 > self.radius or wide * high > self.inner.area:
            return None
        return next((p for p in self.candidates() if self.holds(p, height, leaves)), None)

    def arrow(
        self, block: Point, height: float, leaves: bool
    ) -> tuple[Point, float, float] | None:
        """The longest arrow along the grain that there is room for beside the block."""
        if self.radius < BROAD:
            return None
        grain = _on_top(self.piece)
        taken = _box(block, *block_size(self.piece, height, leaves)).buffer(0.8)
        free = prep(self.inner.difference(taken))
        for long in ARROWS:
            for at in self._about(block, grain, long, taken):
                if free.contains(_arrow_area(at, long, grain)):
                    return at, long, grain
        return None

    def _about(self, block: Point, grain: float, long: float, taken: Any) -> Iterator[Point]:
        """Places for an arrow: in a wedge further in, elsewhere below, above and beside the
        block, then anywhere."""
        if self.is_wedge:
            yield from (self.along(share) for share in SHARES)
        x0, y0, x1, y1 = taken.bounds
        across, along = (x1 - x0) / 2.0 + BROAD + 0.2, (y1 - y0) / 2.0 + BROAD + 0.2
        far = long / 2.0
        for turn in (grain - 90.0, grain + 90.0, grain + 180.0, grain):
            ux, uy = polar(1.0, turn)
            reach = min(
                across / abs(ux) if abs(ux) > 1e-9 else math.inf,
                along / abs(uy) if abs(uy) > 1e-9 else math.inf,
            )
            for more in (0.2, 1.5, 3.0, far, far + 3.0):
                yield block[0] + ux * (reach + more), block[1] + uy * (reach + more)
        yield from self.candidates()


def _on_top(piece: Piece) -> float:
    """The direction of a piece's grain on the top, degrees."""
    back = piece.onto_bundle.inverse()
    (ax, ay), (bx, by) = back.point((0.0, 0.0)), back.point((0.0, 1.0))
    return round(math.degrees(math.atan2(by - ay, bx - ax)), 6)


def block_area(spot: Spot, height: float, leaves: bool) -> Polygon:
    """What the marks of a piece cover."""
    return _box(spot.block, *block_size(spot.piece, height, leaves))


def _box(at: Point, wide: float, high: float) -> Polygon:
    x, y = at
    return box(x - wide / 2.0, y - high / 2.0, x + wide / 2.0, y + high / 2.0)


def _arrow_area(at: Point, long: float, turn: float) -> Polygon:
    (dx, dy), (ux, uy) = polar(long / 2.0, turn), polar(BROAD, turn + 90.0)
    ends = ((-dx - ux, -dy - uy), (dx - ux, dy - uy), (dx + ux, dy + uy), (-dx + ux, -dy + uy))
    return Polygon([(at[0] + x, at[1] + y) for x, y in ends])

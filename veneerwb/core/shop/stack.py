# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where on the stack each cut goes, as a person measures it on the leaf that lies on top.

Two marks of that leaf are a line: its paper marks that stand furthest apart, or the lower and the
upper left corner of its outline. A place is measured along the line from the first mark to the
second, and square off it. All in leaf mm, seen from the face.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from veneerwb.core.layout import Cut, Layout, Piece
from veneerwb.core.leaf import Fault
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge, Point
from veneerwb.core.plane import Motion, polar
from veneerwb.core.shop.pinning.marks import Reference, references
from veneerwb.core.shop.wedge import is_ring

SEEN = 10.0
"""Degrees by which an outline turns at a corner that can be seen."""


@dataclass(frozen=True)
class Place:
    """A place of the cut: what it is called, where it lies on the leaf, and how far `along` the
    line between the marks and `beside` it (to the left above 0), mm; and how far from each mark."""

    name: str
    at: Point
    along: float
    beside: float
    near: float
    far: float

    @property
    def side(self) -> str:
        return "left" if self.beside > 0.0 else "right"


@dataclass(frozen=True)
class CutOnLeaf:
    """A cut through the stack as it lies on its top leaf: `number` of `count` cuts, the outline
    that is cut (shapely), the finished `net` of the position `shown`, the `leaf`, the
    `positions` served, the two `marks`, the `places` measured from them, and the direction of the
    second place from the first against the line between the marks (degrees); `size` of the leaf's
    picture, its `usable` area and its `faults`."""

    number: int
    count: int
    outline: Any
    net: Edge
    leaf: int
    positions: tuple[int, ...]
    shown: int
    marks: tuple[Reference, Reference]
    places: tuple[Place, ...]
    turn: float
    size: tuple[float, float]
    usable: Any
    faults: tuple[Fault, ...]

    @property
    def wedge(self) -> bool:
        return self.places[0].name == "tip"

    @property
    def laid(self) -> CutOnLeaf:
        """The same with the leaf on its side, its lower end to the left."""
        wide, long = self.size
        turn = Motion(-90.0, 0.0, wide)
        return replace(
            self,
            outline=turn.apply_to(self.outline),
            net=edges.moved(self.net, turn),
            marks=tuple(replace(m, place=turn.point(m.place)) for m in self.marks),
            places=tuple(replace(p, at=turn.point(p.at)) for p in self.places),
            size=(long, wide),
            usable=turn.apply_to(self.usable),
            faults=tuple(replace(f, outline=turn.apply_to(f.outline)) for f in self.faults),
        )


def cuts_on_leaf(layout: Layout, marks: Mapping[int, Any] | None = None) -> list[CutOnLeaf]:
    """Every cut of a layout on the leaf that lies on top of its stack. `marks`: by leaf, its paper
    marks (leaf mm, as `targets.measuring.numbered` takes them)."""
    count = len(layout.cuts)
    return [_on_leaf(layout, cut, k, count, marks or {}) for k, cut in enumerate(layout.cuts, 1)]


def top_piece(layout: Layout, cut: Cut) -> Piece:
    """The piece whose leaf the cut is measured on: an upright one if there is any, of the lowest
    leaf."""
    pieces = [layout.pieces[position - 1] for position in cut.pieces]
    return min(pieces, key=lambda piece: (piece.turned, piece.leaf))


def _on_leaf(
    layout: Layout, cut: Cut, number: int, count: int, marks: Mapping[int, Any]
) -> CutOnLeaf:
    piece, bundle = top_piece(layout, cut), layout.bundle
    register = bundle.register(piece.leaf, piece.turned)
    usable = bundle.usable(piece.leaf)
    a, b = _pair(references(usable, marks.get(piece.leaf, ())))
    first, second = _points(layout, cut, piece, register)
    places = tuple(_place(name, at, a.place, b.place) for name, at in (first, second))
    line, way = (_direction(p, q) for p, q in ((a.place, b.place), (first[1], second[1])))
    onto = register @ piece.onto_bundle
    size = layout.bundle.leaf(piece.leaf).size if hasattr(bundle, "leaf") else bundle.size
    return CutOnLeaf(
        number, count, register.apply_to(cut.outline), edges.moved(piece.edge, onto), piece.leaf,
        cut.pieces, piece.position, (a, b), places, math.remainder(way - line, 360.0), size, usable,
        bundle.faults(piece.leaf),
    )  # fmt: skip


def _pair(found: tuple[Reference, ...]) -> tuple[Reference, Reference]:
    """The left corners; of other marks the two that stand furthest apart, the lower one first."""
    if found[0].kind == "corner":
        return found[0], found[3]
    pairs = [(a, b) for k, a in enumerate(found) for b in found[k + 1 :]]
    best = max(pairs, key=lambda pair: round(math.dist(pair[0].place, pair[1].place), 3))
    a, b = sorted(best, key=lambda one: (round(one.place[1], 3), one.place[0]))
    return a, b


def _points(
    layout: Layout, cut: Cut, piece: Piece, register: Motion
) -> tuple[tuple[str, Point], tuple[str, Point]]:
    """Two places that fix the cut: a wedge's tip and the end of its axis; else the lowest corner of
    the outline and the corner furthest from that."""
    outline = register.apply_to(cut.outline)
    if is_ring(layout):
        net = edges.moved(piece.edge, register @ piece.onto_bundle)
        tip = net[0].start
        first, last = _direction(tip, net[0].end), _direction(tip, net[-1].start)
        axis = first + ((last - first) % 360.0) / 2.0
        reach = _reach(outline, tip, axis)
        x, y = polar(reach, axis)
        return ("tip", tip), ("axis at the rim", (tip[0] + x, tip[1] + y))
    sharp = _sharp(outline)
    lowest = min(sharp, key=lambda p: (round(p[1], 3), p[0]))
    far = max(sharp, key=lambda p: round(math.dist(p, lowest), 3))
    return ("lowest corner", lowest), ("far corner", far)


def _sharp(outline: Any) -> list[Point]:
    """The corners of an outline's hull at which it turns so much that they are seen; all of them
    where there are not two."""
    hull = np.asarray(outline.convex_hull.exterior.coords)[:-1]
    after, before = np.roll(hull, -1, axis=0) - hull, hull - np.roll(hull, 1, axis=0)
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    turn = np.degrees(np.arctan2(cross, (before * after).sum(axis=1)))
    seen = hull[np.abs(turn) >= SEEN]
    return [tuple(p) for p in (seen if len(seen) > 1 else hull).tolist()]


def _reach(outline: Any, tip: Point, axis: float) -> float:
    """How far a ray from the tip lies in the outline."""
    corners = np.asarray(outline.convex_hull.exterior.coords)
    ends = np.column_stack([corners[:-1], corners[1:]]) - np.array([*tip, *tip])
    ux, uy = polar(1.0, axis)
    across_a, across_b = ux * ends[:, 1] - uy * ends[:, 0], ux * ends[:, 3] - uy * ends[:, 2]
    crosses = (across_a > 0.0) != (across_b > 0.0)
    share = across_a[crosses] / (across_a[crosses] - across_b[crosses])
    hit = ends[crosses, :2] + share[:, None] * (ends[crosses, 2:] - ends[crosses, :2])
    return float((hit @ np.array([ux, uy])).max())


def _direction(a: Point, b: Point) -> float:
    return math.degrees(math.atan2(b[1] - a[1], b[0] - a[0]))


def _place(name: str, at: Point, a: Point, b: Point) -> Place:
    line = complex(b[0] - a[0], b[1] - a[1])
    off = complex(at[0] - a[0], at[1] - a[1]) / (line / abs(line))
    return Place(
        name, (float(at[0]), float(at[1])), off.real, off.imag, math.dist(at, a), math.dist(at, b)
    )

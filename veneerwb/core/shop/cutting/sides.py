# SPDX-License-Identifier: LGPL-2.1-or-later
"""The sides of a cut: its seams, each one straight, and its rims, each what lies between them."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from shapely.geometry import LineString, Polygon
from shapely.geometry import Point as ShapelyPoint
from shapely.ops import linemerge, unary_union
from shapely.prepared import prep

from veneerwb.core.layout import Piece
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge, Line
from veneerwb.core.plane import Point

ON = 0.02
"""mm: a seam that lies no further from an outline lies on it (the outline's arcs are polygons)."""
OVER = 25.0
"""mm: a straight cut outside a rim leaves no more than that over it, or the rim is cut by several
straights."""
SHORT = 0.5
"""mm: shorter bits between seams are what polygons leave, and no side."""


@dataclass(frozen=True)
class Side:
    """A side of an outline (bundle mm, the piece on the left): a "seam", cut exactly, or a "rim",
    cut with oversize and trimmed to its curve later. `points`: along it."""

    kind: str
    points: tuple[Point, ...]

    @property
    def ends(self) -> tuple[Point, Point]:
        return self.points[0], self.points[-1]

    @property
    def length(self) -> float:
        return math.fsum(math.dist(a, b) for a, b in zip(self.points, self.points[1:]))

    @property
    def closed(self) -> bool:
        """Whether it is all of an outline without seams."""
        return math.dist(*self.ends) < SHORT

    def straights(self, outline: Any) -> list[tuple[Point, Point]]:
        """Straights that leave all of a convex outline on their left and touch it: a seam itself;
        round a rim as many as leave no more than OVER mm over it, in its direction."""
        if self.kind == "seam":
            return [self.ends]
        hull = outline.convex_hull.exterior
        near = hull.buffer(ON)
        chain = [p for p in self.points if near.covers(ShapelyPoint(p))]
        return [_touching(part) for part in _parted(chain)] if len(chain) > 1 else []


def _parted(chain: Sequence[Point]) -> list[Sequence[Point]]:
    """A convex chain of points in parts that bulge no more than OVER over their chords, parted at
    corners."""
    a, b = np.asarray(chain[0]), np.asarray(chain[-1])
    length = float(np.hypot(*(b - a)))
    if len(chain) < 3 or length < SHORT:
        return [chain]
    ux, uy = (b - a) / length
    out = (np.asarray(chain) - a) @ (uy, -ux)
    k = int(np.round(out, 6).argmax())
    if out[k] <= OVER or k in (0, len(chain) - 1):
        return [chain]
    return [*_parted(chain[: k + 1]), *_parted(chain[k:])]


def _touching(chain: Sequence[Point]) -> tuple[Point, Point]:
    """The chord of a convex chain, moved out until it touches it."""
    (ax, ay), (bx, by) = chain[0], chain[-1]
    length = math.dist(chain[0], chain[-1])
    ux, uy = (bx - ax) / length, (by - ay) / length
    off = max(0.0, float(((np.asarray(chain) - (ax, ay)) @ (uy, -ux)).max()))
    return (ax + off * uy, ay - off * ux), (bx + off * uy, by - off * ux)


def sides_of(outline: Polygon, pieces: Sequence[Piece]) -> tuple[tuple[Side, ...], tuple[int, ...]]:
    """The sides of a cut's outline, counter-clockwise, and the positions of the pieces with a seam
    within it, which need another cut of their own."""
    drawn = [(p.position, edges.moved(p.blank_edge, p.onto_bundle)) for p in pieces]
    found: list[tuple[Point, Point]] = []
    within, near = set(), prep(outline.exterior.buffer(ON))
    for position, edge in drawn:
        for segment in edge:
            if segment.role != "seam" or not isinstance(segment, Line) or segment.length < SHORT:
                continue
            if near.covers(LineString([segment.a, segment.b])):
                found.append((segment.a, segment.b))
            else:
                within.add(position)
    return _sides(outline, found), tuple(sorted(within))


def sides_along(edge: Edge, outline: Polygon) -> tuple[Side, ...]:
    """The sides of an outline whose `edge` says which of it are seams, counter-clockwise."""
    return _sides(outline, [(s.a, s.b) for s in edge if s.role == "seam" and isinstance(s, Line)
                            and s.length >= SHORT])


def _sides(outline: Polygon, found: Sequence[tuple[Point, Point]]) -> tuple[Side, ...]:
    border, seams = outline.exterior, _joined(found)
    rest = border
    if seams:
        rest = border.difference(unary_union([LineString(s).buffer(ON) for s in seams]))
    runs = linemerge(rest) if rest.geom_type == "MultiLineString" else rest
    rims = [r for r in getattr(runs, "geoms", [runs]) if not r.is_empty and r.length > SHORT]
    sides = [Side("seam", seam) for seam in seams]
    sides += [Side("rim", tuple(map(tuple, np.asarray(r.coords).tolist()))) for r in rims]
    turned = [_leftwards(side, outline) for side in sides]
    return tuple(sorted(turned, key=lambda side: _around(side, border)))


def _joined(seams: Sequence[tuple[Point, Point]]) -> list[tuple[Point, Point]]:
    """Seams that lie on one straight as one, from the furthest end to the furthest."""
    groups: list[list[Point]] = []
    for a, b in sorted(seams, key=lambda s: -math.dist(*s)):
        for group in groups:
            if all(_off(p, group[0], group[1]) <= ON for p in (a, b)):
                group += [a, b]
                break
        else:
            groups.append([a, b])
    return [_furthest(group) for group in groups]


def _off(p: Point, a: Point, b: Point) -> float:
    return abs((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / math.dist(a, b)


def _furthest(group: Sequence[Point]) -> tuple[Point, Point]:
    (ax, ay), (bx, by) = group[:2]

    def along(p: Point) -> float:
        return (p[0] - ax) * (bx - ax) + (p[1] - ay) * (by - ay)

    return min(group, key=along), max(group, key=along)


def _leftwards(side: Side, outline: Polygon) -> Side:
    """The side in the direction in which the outline lies on its left."""
    ring = outline.exterior
    first, second = (ring.project(LineString(side.points).interpolate(share, normalized=True))
                     for share in (0.4, 0.6))
    forward = (second - first) % ring.length < ring.length / 2.0
    with_ring = forward == ring.is_ccw
    return side if with_ring else Side(side.kind, side.points[::-1])


def _around(side: Side, border: Any) -> float:
    at = border.project(LineString(side.points).interpolate(0.5, normalized=True))
    return at if border.is_ccw else border.length - at

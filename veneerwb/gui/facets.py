# SPDX-License-Identifier: LGPL-2.1-or-later
"""Polygons of any shape as convex facets, which every graphics card draws alike."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import numpy as np
from scipy.spatial import Delaunay
from shapely.geometry import Polygon
from shapely.geometry.polygon import orient
from shapely.prepared import prep

HOLLOW = 1e-6
"""Share of its area by which a polygon's hull may be larger and the polygon still be convex."""
DUST = 1e-6
"""mm2: what is smaller is not drawn."""
DEEPEST = 6
"""How often what is left is parted anew."""


def facets(polygon: Polygon) -> tuple[np.ndarray, list[int]]:
    """Corners N x 2 and, as an indexed face set has them, the corners of each convex facet
    counter-clockwise, ended by -1: one facet of a convex polygon, else triangles."""
    places: dict[tuple[float, float], int] = {}
    indices: list[int] = []
    for ring in _convex(polygon, DEEPEST):
        indices += [*(places.setdefault((x, y), len(places)) for x, y in ring), -1]
    return np.array(list(places)).reshape(-1, 2), indices


def _convex(polygon: Polygon, depth: int) -> Iterator[Any]:
    """The corners of convex polygons, counter-clockwise."""
    hull = polygon.convex_hull
    if depth == 0 or (not polygon.interiors and hull.area - polygon.area <= HOLLOW * hull.area):
        yield orient(polygon).exterior.coords[:-1]
        return
    corners, triangles, whole = _triangles(polygon)
    if whole:
        yield from corners[triangles].tolist()
        return
    inside = prep(polygon)
    for triangle in map(Polygon, corners[triangles]):
        if inside.covers(triangle):
            yield triangle.exterior.coords[:-1]
        else:
            for part in _polygons(polygon.intersection(triangle)):
                yield from _convex(part, depth - 1)


def _triangles(polygon: Polygon) -> tuple[np.ndarray, np.ndarray, bool]:
    """The corners of a polygon, Delaunay's triangles of them, and whether these keep to all of its
    sides, so that each lies inside or outside: then only those inside."""
    rings = [np.array(r.coords)[:-1] for r in (polygon.exterior, *polygon.interiors)]
    corners = np.concatenate(rings)
    triangles = Delaunay(corners).simplices
    a, b, c = np.moveaxis(corners[triangles], 1, 0)
    (ux, uy), (vx, vy) = (b - a).T, (c - a).T
    turned = ux * vy - uy * vx
    triangles = np.where(turned[:, None] < 0.0, triangles[:, ::-1], triangles)
    triangles = triangles[np.abs(turned) > 2.0 * DUST]
    ends = np.cumsum([len(ring) for ring in rings])
    following = np.arange(1, len(corners) + 1)
    following[ends - 1] = [0, *ends[:-1]]
    there = {tuple(sorted(pair)) for t in triangles.tolist() for pair in zip(t, (*t[1:], t[0]))}
    if any(tuple(sorted(side)) not in there for side in enumerate(following.tolist())):
        return corners, triangles, False
    middles = corners[triangles].mean(axis=1)
    return corners, triangles[_inside(middles, corners, corners[following])], True


def _inside(points: np.ndarray, starts: np.ndarray, ends: np.ndarray) -> np.ndarray:
    """Which points lie within the sides from `starts` to `ends`: a ray to the right crosses an odd
    number of them."""
    x, y = points.T[:, :, None]
    (ax, ay), (bx, by) = starts.T, ends.T
    spans = (ay > y) != (by > y)
    rise = np.where(spans.any(axis=0), by - ay, 1.0)
    return (spans & (x < ax + (y - ay) * (bx - ax) / rise)).sum(axis=1) % 2 == 1


def _polygons(shape: Any) -> list[Polygon]:
    parts = getattr(shape, "geoms", [shape])
    return [part for part in parts if part.geom_type == "Polygon" and part.area > DUST]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The letters of a plan, and where they stand."""

from __future__ import annotations

import math
from collections.abc import Sequence

from shapely.geometry import LineString, Polygon
from shapely.geometry import Point as ShapelyPoint

from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Edge, Point
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import Motion, polar
from veneerwb.core.shop.drawing.drawn import THIN, Drawing
from veneerwb.core.shop.drawing.legible import area, line
from veneerwb.core.shop.drawing.lettering import PLAIN
from veneerwb.core.shop.pages.plan_words import Item, with_letters

BALLOON = 2.9
"""mm: half of a letter's circle."""


def lettered(
    drawing: Drawing, items: Sequence[Item], whole: Edge, f: float, onto: Motion, before: int
) -> None:
    """A letter in a circle for each item: in it where there is room, else outside the top's edge
    `whole` with a line to it that crosses no mark drawn since the first `before`."""
    taken = [area(m) if hasattr(m, "text") else line(m) for m in drawing.marks[before:]]
    outline = Polygon([onto.point((f * x, f * y)) for x, y in edges.points(whole)])
    for k, (letter, item) in enumerate(with_letters(items)):
        regions = [_on_paper(region, f, onto) for region in item.regions]
        inside = regions[0].buffer(-BALLOON - 0.5)
        middle = inside.representative_point() if not inside.is_empty else None
        if middle and not any(
            middle.buffer(BALLOON + 0.6).intersects(other) for other in taken
        ):
            _balloon(drawing, (middle.x, middle.y), letter)
            taken.append(middle.buffer(BALLOON))
            continue
        found = _balloon_place(regions, outline, taken, k)
        if found:
            target, at = found
            way = math.degrees(math.atan2(target[1] - at[1], target[0] - at[0]))
            dx, dy = polar(BALLOON, way)
            drawing.line(target, (at[0] + dx, at[1] + dy))
            drawing.arrow(target, way)
            _balloon(drawing, at, letter)
            taken += [LineString([target, at]).buffer(0.4), ShapelyPoint(at).buffer(BALLOON)]


def _on_paper(region: Region, f: float, onto: Motion) -> Polygon:
    loops = [[onto.point((f * x, f * y)) for x, y in edges.points(e)] for e in region.loops]
    return Polygon(loops[0], loops[1:])


def _balloon(drawing: Drawing, at: Point, text: str) -> None:
    drawing.edge((Arc(at, BALLOON, 0.0, 360.0),), THIN, fill="#ffffff")
    drawing.text((at[0], at[1] - PLAIN / 2.0), text, PLAIN)


def _balloon_place(
    regions: Sequence[Polygon], outline: Polygon, taken: Sequence[object], k: int
) -> tuple[Point, Point] | None:
    """Where a line begins in one of the regions, and the middle of its circle outside."""
    centre = (outline.centroid.x, outline.centroid.y)
    turns = sorted(range(0, 360), key=lambda t: abs(math.remainder(t - (128 + 16 * k), 360)))
    for off in (BALLOON + 4.0, BALLOON + 9.0):
        ring = outline.buffer(off).exterior
        for turn in turns:
            dx, dy = polar(1e4, turn)
            ray = LineString([centre, (centre[0] + dx, centre[1] + dy)])
            at = _furthest(ring.intersection(ray), centre)
            for region in regions:
                hit = region.intersection(ray)
                if at is None or hit.is_empty or hit.length < 1e-6:
                    continue
                middle = hit.interpolate(0.5, normalized=True) if hit.geom_type == "LineString" \
                    else hit.representative_point()  # fmt: skip
                target = (middle.x, middle.y)
                path = LineString([target, at]).buffer(0.7).union(
                    ShapelyPoint(at).buffer(BALLOON + 0.8)
                )
                if not any(path.intersects(other) for other in taken):
                    return target, at
    return None


def _furthest(hit: object, centre: Point) -> Point | None:
    found = getattr(hit, "geoms", [hit])
    points = [g for g in found if isinstance(g, ShapelyPoint) and not g.is_empty]
    if not points:
        return None
    far = max(points, key=lambda p: math.dist((p.x, p.y), centre))
    return far.x, far.y

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A piece that is no wedge, from its leaf's face with its grain upright: corners numbered, its size
over all."""

from __future__ import annotations

import math
from collections.abc import Sequence

from shapely.geometry import Polygon, box

from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge, Point
from veneerwb.core.shop.drawing.drawn import CHAIN, DASHED, THICK, THIN, Drawing, placed
from veneerwb.core.shop.drawing.legible import area, line
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.lettering import SMALL, width
from veneerwb.core.shop.pages.wedge_figure import grain_arrow
from veneerwb.core.shop.shapes import Shape, outward


def draw_piece(drawing: Drawing, shape: Shape, f: float, lengths: Lengths) -> None:
    """A piece with its grain upright: corners numbered, its size over all."""
    net, blank = placed(shape.net, f, (0.0, 0.0)), placed(shape.blank, f, (0.0, 0.0))
    wide, high = (f * v for v in shape.size)
    drawing.line((0.0, 0.0), (wide, 0.0), THIN, CHAIN)
    drawing.line((0.0, 0.0), (0.0, high), THIN, CHAIN)
    drawing.edge(net, THICK)
    for hole in shape.holes:
        drawing.edge(placed(hole, f, (0.0, 0.0)), THICK)
    if shape.oversized:
        drawing.edge(blank, THIN, DASHED)
    y0 = min(edges.extent(run, 90.0)[0] for run in (net, blank))
    beyond = max(edges.extent(run, 0.0)[1] for run in (net, blank)) - wide
    drawing.distance((0.0, 0.0), (wide, 0.0), lengths.length(shape.size[0]), y0 - 11.0, -y0)
    drawing.distance(
        (wide, 0.0), (wide, high), lengths.length(shape.size[1]), -11.0 - beyond, beyond
    )
    _grain_in(drawing, net, [placed(hole, f, (0.0, 0.0)) for hole in shape.holes])
    _numbered(drawing, net, blank)


def _grain_in(drawing: Drawing, net: Edge, holes: Sequence[Edge]) -> None:
    """The grain's arrow in the piece where there is room, else left of it."""
    inside = Polygon(edges.points(net), [edges.points(hole) for hole in holes]).buffer(-1.0)
    place = inside.representative_point() if not inside.is_empty else None
    if place is not None and inside.contains(
        box(place.x - 4.5, place.y - 8.0, place.x + 1.0, place.y + 8.0)
    ):
        grain_arrow(drawing, (place.x, place.y), 90.0)
        return
    grain_arrow(drawing, (-11.0, edges.extent(net, 90.0)[1] / 2.0), 90.0)


def _numbered(drawing: Drawing, net: Edge, blank: Edge) -> None:
    """The corners' numbers, outside each corner, where they lie on nothing."""
    taken = [area(m) if hasattr(m, "text") else line(m) for m in drawing.marks]
    for k, segment in enumerate(net):
        text = str(k + 1)
        at = _number_place(segment.start, outward(net, k), width(text, SMALL), taken)
        drawing.text((at[0], at[1] - SMALL / 2.0), text, SMALL)
        if math.dist(at, segment.start) > 7.0:
            way = math.atan2(segment.start[1] - at[1], segment.start[0] - at[0])
            off = 2.6
            drawing.line(
                segment.start, (at[0] + off * math.cos(way), at[1] + off * math.sin(way)), THIN
            )
        taken.append(area(drawing.marks[-1]) if hasattr(drawing.marks[-1], "text")
                     else area(drawing.marks[-2]))  # fmt: skip


def _number_place(corner: Point, out: Point, wide: float, taken: Sequence[object]) -> Point:
    """The nearest place outside a corner where a number of that width lies on nothing."""
    start = math.degrees(math.atan2(out[1], out[0]))
    first = None
    for far in (3.4, 4.6, 6.0, 8.0, 10.0):
        for turn in (0.0, 20.0, -20.0, 40.0, -40.0, 60.0, -60.0, 90.0, -90.0):
            way = math.radians(start + turn)
            x, y = corner[0] + far * math.cos(way), corner[1] + far * math.sin(way)
            first = first or (x, y)
            half, high = wide / 2.0 + 0.4, SMALL / 2.0 + 0.4
            here = box(x - half, y - high, x + half, y + high)
            if not any(here.intersects(other) for other in taken):
                return x, y
    assert first is not None
    return first

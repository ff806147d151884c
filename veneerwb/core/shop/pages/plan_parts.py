# SPDX-License-Identifier: LGPL-2.1-or-later
"""Parts of a plan drawn larger, where its pieces are too small for their numbers."""

from __future__ import annotations

import math
from collections.abc import Sequence

from shapely.geometry import LineString, Polygon, box
from shapely.geometry import Point as ShapelyPoint

from veneerwb.core.layout import Layout, Piece
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Line, Point
from veneerwb.core.plane import Motion, polar
from veneerwb.core.shop.drawing.drawn import MEDIUM, THIN, Drawing
from veneerwb.core.shop.drawing.lettering import SMALL, width
from veneerwb.core.shop.drawing.page import Look, Page, blank_page
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.drawing.scales import SCALES, Scale
from veneerwb.core.shop.pages import placing
from veneerwb.core.shop.pages.kit import HEAD, free, heading
from veneerwb.core.shop.pages.plan_words import centre_of
from veneerwb.words import say

CODE = "plan"
OVERLAP = 0.08
"""Share of a part that its neighbours show too."""
LARGEST = 1.0
"""The largest scale that parts are drawn at."""


_Tile = tuple[Box, dict[str, int]]
"""What is seen, and where it lies."""


def part_pages(layout: Layout, look: Look, scale: Scale) -> list[Page]:
    """Parts of the plan at the smallest scale above that of the whole at which nearly all numbers
    stand in their pieces, and the others beside theirs."""
    wide = [placing.widest(piece) for piece in layout.pieces]
    larger = [one for one in reversed(SCALES) if scale.factor < one.factor <= LARGEST]
    for one in larger or [scale]:
        marks = placing.placed_marks(layout.pieces, wide, one.factor, centre_of(layout))
        if marks.inside:
            break
    whole = free(look)
    tiles = _tiles(layout, one.factor, whole.below(whole.top - HEAD))
    return [
        _page(layout, look, one, marks, tile, (k, len(tiles))) for k, tile in enumerate(tiles, 1)
    ]


def _tiles(layout: Layout, f: float, field: Box) -> list[_Tile]:
    """What of the plan (mm of the paper, about its origin) each page shows, and where it lies, row
    by row from the top."""
    spans = [edges.extent(layout.top.edge, turn) for turn in (0.0, 90.0)]
    (x0, x1), (y0, y1) = ((f * a - 2.0, f * b + 2.0) for a, b in spans)
    columns, rows = (
        1 if have <= room else math.ceil((have - room) / (room * (1.0 - OVERLAP))) + 1
        for have, room in ((x1 - x0, field.wide), (y1 - y0, field.high))
    )
    xs, ys = _starts(x0, x1, field.wide, columns), _starts(y0, y1, field.high, rows)
    found = []
    for r, y in enumerate(reversed(ys), 1):
        for c, x in enumerate(xs, 1):
            seen = box(x / f, y / f, (x + field.wide) / f, (y + field.high) / f)
            if layout.top.polygon_mm.intersects(seen):
                place = {"column": c, "columns": columns, "row": r, "rows": rows}
                found.append((Box(x, y, field.wide, field.high), place))
    return found


def _starts(low: float, high: float, room: float, count: int) -> list[float]:
    if count == 1:
        return [(low + high - room) / 2.0]
    return [low + k * (high - low - room) / (count - 1) for k in range(count)]


def _page(
    layout: Layout, look: Look, scale: Scale, marks: placing.Marks, tile: _Tile,
    number: tuple[int, int],
) -> Page:  # fmt: skip
    seen, where = tile
    k, count = number
    title = say("Plan in parts {number} of {count}", number=k, count=count)
    page, field = blank_page(look, CODE, title, str(scale))
    body = heading(page.drawing, field, say(
        "Plan, part {number} of {count}: column {column} of {columns} from the left, row {row} of "
        "{rows} from the top", number=k, count=count, **where,
    ))  # fmt: skip
    onto, f = Motion(dx=body.x - seen.x, dy=body.y - seen.y), scale.factor
    window = box(body.x, body.y, body.right, body.top)
    for piece in layout.pieces:
        for ring in (piece.outline.exterior, *piece.outline.interiors):
            _clipped(page.drawing, [onto.point((f * x, f * y)) for x, y in ring.coords], body)
    page.drawing.rectangle(body, MEDIUM)
    here = placing.moved(marks, onto)
    for spot in here.inside:
        if window.buffer(-1.0).contains(placing.block_area(spot, here.height, here.leaves)):
            draw_spot(page.drawing, spot, here, window)
    taken = [placing.block_area(spot, here.height, here.leaves) for spot in here.inside]
    for piece in marks.outside:
        tip = onto.point(tuple(f * v for v in placing.widest(piece).at))
        if window.buffer(-4.0).contains(ShapelyPoint(tip)):
            _beside(page.drawing, piece, tip, window, taken)
    return page


def _beside(
    drawing: Drawing, piece: Piece, tip: Point, window: Polygon, taken: list[Polygon]
) -> None:
    """The number of a piece on white beside it, with a line to it, where it covers no other."""
    half, high = width(str(piece.position), SMALL) / 2.0 + 0.5, SMALL / 2.0 + 0.9
    for far in (4.0, 5.5, 7.0, 9.0, 12.0, 16.0, 21.0):
        for turn in range(0, 360, 20):
            dx, dy = polar(far, turn)
            x, y = tip[0] + dx, tip[1] + dy
            area = box(x - half, y - high, x + half, y + high)
            path = LineString([tip, (x, y)])
            if window.contains(area) and not any(
                area.intersects(other) or path.intersects(other) for other in taken
            ):
                drawing.line(tip, (x, y), THIN)
                drawing.edge((Arc(tip, 0.4, 0.0, 360.0),), 0.0, fill="#000000")
                drawing.rectangle(Box(x - half, y - high, 2.0 * half, 2.0 * high), 0.0, "#ffffff")
                drawing.text((x, y - SMALL / 2.0), str(piece.position), SMALL,
                             underlined=piece.turned)  # fmt: skip
                taken += [area, path.buffer(0.3)]
                return


def _clipped(drawing: Drawing, points: Sequence[Point], window: Box) -> None:
    """The straights between points, as far as they lie in a window."""
    for a, b in zip(points, points[1:]):
        low, high = 0.0, 1.0
        for p, d, least, most in (
            (a[0], b[0] - a[0], window.x, window.right), (a[1], b[1] - a[1], window.y, window.top)
        ):  # fmt: skip
            if abs(d) < 1e-12:
                high = high if least <= p <= most else -1.0
                continue
            first, last = sorted(((least - p) / d, (most - p) / d))
            low, high = max(low, first), min(high, last)
        if high - low > 1e-9:
            drawing.edge((Line(a, b).part(low, high),), THIN)


def draw_spot(
    drawing: Drawing, spot: placing.Spot, marks: placing.Marks, window: Polygon | None = None
) -> None:
    """Number, leaf and grain of a piece; the grain only if it lies in a window."""
    (x, y), piece = spot.block, spot.piece
    _, high = placing.block_size(piece, marks.height, marks.leaves)
    foot = (x, y + high / 2.0 - marks.height)
    drawing.text(foot, str(piece.position), marks.height, underlined=piece.turned)
    if marks.leaves:
        low = placing.leaf_height(marks.height)
        drawing.text((x, y - high / 2.0), placing.leaf_text(piece), low)
    if spot.arrow:
        middle, long, turn = spot.arrow
        dx, dy = polar(long / 2.0, turn)
        a, b = (middle[0] - dx, middle[1] - dy), (middle[0] + dx, middle[1] + dy)
        corners = box(min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1]))
        if window is None or window.contains(corners.buffer(1.0)):
            drawing.line(a, b, THIN)
            drawing.arrow(a, turn + 180.0)
            drawing.arrow(b, turn)

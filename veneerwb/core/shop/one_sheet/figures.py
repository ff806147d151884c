# SPDX-License-Identifier: LGPL-2.1-or-later
"""The figures of a sheet: the plan, a wedge with its dimensions, its set-out."""

from __future__ import annotations

import math

from veneerwb.core.layout import Layout, Piece
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Line, Point
from veneerwb.core.outlines.inside import number_places, room_at
from veneerwb.core.plane import polar, tand
from veneerwb.core.shop.drawing.drawn import (
    CHAIN,
    DASHED,
    MEDIUM,
    THICK,
    THIN,
    Drawing,
    placed,
)
from veneerwb.core.shop.drawing.lettering import PLAIN, SMALL, length, width
from veneerwb.core.shop.drawing.scales import Scale, scale_for
from veneerwb.core.shop.pages.wedge_figure import (
    STEEP,
    grain_arrow,
    offset_at,
    on_axis,
    tip_angle,
)
from veneerwb.core.shop.setout import SetOut
from veneerwb.core.shop.shapes import seam_lines
from veneerwb.core.shop.wedge import Wedge, is_ring
from veneerwb.words import say

# --- plan ---------------------------------------------------------------------------------------

AROUND, BELOW = 3.0, 12.0
"""mm of the paper that the plan leaves free around the top, and below it for its size."""
BESIDE = 12.0
"""Likewise to the right of a top that is not round, for its other size."""
CROWDED = 24
"""More seams than this are drawn thin."""
OUTSIDE = 9.5
"""mm that numbers outside the rim take up, on every side."""


def plan(layout: Layout, wide: float, high: float, below: float = 0.0) -> tuple[Drawing, Scale]:
    """The top from its show face with seams, numbers and size, in a field of that size at most,
    of which `below` mm are wanted for other things: the drawing is as high as it needs to be."""
    (x0, x1), (y0, y1) = (edges.extent(layout.top.edge, turn) for turn in (0.0, 90.0))
    size = (x1 - x0, y1 - y0)
    beside = 0.0 if _is_round(layout) else BESIDE
    room = (wide - 2.0 * AROUND - beside, high - below - BELOW - AROUND)
    scale = scale_for(size, room)
    wedges = is_ring(layout)
    ring = OUTSIDE if wedges and _room_inside(layout, scale.factor) < 1.0 else 0.0
    if ring:
        scale = scale_for(size, tuple(r - 2.0 * ring for r in room))
    f = scale.factor
    high = f * size[1] + BELOW + AROUND + 2.0 * ring
    drawing = Drawing(wide, high)
    at = ((wide - beside - f * (x0 + x1)) / 2.0, high - AROUND - f * y1 - ring)
    for seam in seam_lines(layout):
        weight = MEDIUM if len(layout.pieces) <= CROWDED else THIN
        drawing.edge(placed((seam,), f, at), weight)
    for loop in layout.top.region.loops:
        drawing.edge(placed(loop, f, at), THICK)
    (_numbers if wedges else _numbers_within)(drawing, layout, f, at, ring > 0.0)
    _overall(drawing, layout, (at[0] + f * x0, at[0] + f * x1, at[1] + f * y0, at[1]), ring)
    if beside:
        right = at[0] + f * x1
        drawing.distance(
            (right, at[1] + f * y0), (right, at[1] + f * y1), length(size[1]), -8.0 - ring, ring
        )
    return drawing, scale


def _overall(
    drawing: Drawing, layout: Layout, ends: tuple[float, float, float, float], ring: float
) -> None:
    """The size of the top below it: a diameter from its middle's height, else from its bottom."""
    x0, x1, low, middle = ends
    least, most = edges.extent(layout.top.edge, 0.0)
    if _is_round(layout):
        text, start, down = "\N{LATIN CAPITAL LETTER O WITH STROKE} ", middle, middle - low
    else:
        text, start, down = "", low, 0.0
    off = -(down + 8.0 + ring)
    drawing.distance((x0, start), (x1, start), text + length(most - least), off, start=down + ring)


def _is_round(layout: Layout) -> bool:
    return len(layout.top.edge) == 1 and isinstance(layout.top.edge[0], Arc)


def _on_paper(p: Point, factor: float, at: Point) -> Point:
    return at[0] + factor * p[0], at[1] + factor * p[1]


def _outer_middle(piece: Piece) -> Point:
    """A point well inside the piece, towards the rim where a wedge is wide."""
    centre = piece.outline.centroid
    return 1.2 * centre.x, 1.2 * centre.y


def _room_inside(layout: Layout, factor: float, height: float = SMALL) -> float:
    """By how many mm of the paper the numbers have more room inside than they need."""
    room = math.inf
    for piece in layout.pieces:
        away = math.hypot(*_outer_middle(piece)) * factor
        across = 2.0 * away * math.tan(math.radians(_angle(piece)) / 2.0)
        room = min(room, across - width(str(piece.position), height))
    return room


def _angle(piece: Piece) -> float:
    first, last = (math.atan2(*reversed(p)) for p in (piece.edge[0].end, piece.edge[-1].start))
    return min(math.degrees(last - first) % 360.0, 120.0)


def _rim_at(piece: Piece, turn: float) -> float:
    """How far from the centre the rim of a piece lies in a direction, mm."""
    hits = [(segment, segment.hit(turn)) for segment in piece.edge[1:-1]]
    return max(math.hypot(*segment.at(hit)) for segment, hit in hits if hit is not None)


def _numbers(
    drawing: Drawing, layout: Layout, factor: float, at: Point, outside: bool
) -> None:
    """The positions, all in one height: in the pieces, or on two rings outside the rim."""
    large = not outside and _room_inside(layout, factor, PLAIN) >= PLAIN
    height = PLAIN if large else SMALL
    for piece in layout.pieces:
        x, y = _outer_middle(piece)
        if outside:
            turn = math.degrees(math.atan2(y, x))
            rim = _rim_at(piece, turn)
            ring = rim * factor + (3.4 if piece.position % 2 else 7.2)
            x, y = polar(ring / factor, turn)
        px, py = _on_paper((x, y), factor, at)
        middle = (px, py - height / 2.0)
        drawing.text(middle, str(piece.position), height, underlined=piece.turned)


def _numbers_within(
    drawing: Drawing, layout: Layout, factor: float, at: Point, outside: bool
) -> None:
    """The positions inside pieces of any shape, all in one height."""
    places = number_places(layout)
    high = [2.0 * room_at(*one) * factor for one in zip(layout.pieces, places)]
    large = all(
        room >= max(1.5 * PLAIN, width(str(piece.position), PLAIN))
        for room, piece in zip(high, layout.pieces)
    )
    height = PLAIN if large else SMALL
    for piece, place in zip(layout.pieces, places):
        px, py = _on_paper(place, factor, at)
        middle = (px, py - height / 2.0)
        drawing.text(middle, str(piece.position), height, underlined=piece.turned)


# --- wedge --------------------------------------------------------------------------------------

LEFT, RIGHT, UNDER, OVER = 14.0, 24.0, 9.5, 10.5
"""mm of the paper that the wedge leaves free around its blank for dimensions."""
NARROW, ASIDE = 18.0, 18.0
"""mm of the paper: a chord shorter than the one is measured further out by the other, beyond all
that is written at the rim."""


def wedge(one: Wedge, wide: float, high: float) -> tuple[Drawing, Scale]:
    """A wedge from its leaf's face, tip to the left, with its dimensions."""
    x0, y0, x1, y1 = one.extents
    size, room = (x1 - x0, y1 - y0), (wide - LEFT - RIGHT, high - UNDER - OVER)
    scale = scale_for(size, room)
    if one.chord * scale.factor < NARROW:
        scale = scale_for(size, (room[0] - ASIDE, room[1]))
    f = scale.factor
    drawing = Drawing(wide, high)
    spare = max(room[0] - ASIDE - f * (x1 - x0), 0.0)
    at = (LEFT + spare / 3.0 - f * x0, UNDER + room[1] / 2.0 - f * (y0 + y1) / 2.0)
    net, blank = placed(one.net, f, at), placed(one.blank, f, at)
    drawing.edge(net, THICK)
    if edges.area(one.blank) - edges.area(one.net) > 1e-3:
        drawing.edge(blank[1:-1], THIN, DASHED)
        for corner, end in ((net[0].end, blank[0].end), (net[-1].start, blank[-1].start)):
            drawing.line(corner, end, THIN, DASHED)
    drawing.line((at[0] - 3.0, at[1]), (at[0] + f * on_axis(one) + 2.5, at[1]), THIN, CHAIN)
    radius = min(max(14.0 / math.radians(one.angle), 10.0), 0.6 * math.dist(at, net[0].end))
    below = tip_angle(drawing, one, at, radius)
    _sides(drawing, one, net, below)
    _rim(drawing, one, net, blank)
    grain_arrow(drawing, (11.0, 9.0), one.grain)
    return drawing, scale


def _sides(drawing: Drawing, one: Wedge, net: edges.Edge, below: float) -> None:
    lower, upper = one.sides
    drawing.distance(net[-1].end, net[-1].start, length(upper), 7.0)
    if length(lower) != length(upper):
        drawing.distance(net[0].start, net[0].end, length(lower), -below)


def _rim(drawing: Drawing, one: Wedge, net: edges.Edge, blank: edges.Edge) -> None:
    low, high = net[0].end, net[-1].start
    way = math.degrees(math.atan2(high[1] - low[1], high[0] - low[0]))
    beyond = edges.extent(blank, way - 90.0)[1] - edges.extent((Line(low, high),), way - 90.0)[1]
    narrow = math.dist(low, high) < NARROW
    drawing.distance(low, high, length(one.chord), -beyond - 8.0 - (ASIDE if narrow else 0.0))
    if one.rise > 0.0:
        level = edges.extent(blank, 90.0)[1]
        apex = edges.extent(net, 0.0)[1]
        drawing.line((apex, (low[1] + high[1]) / 2.0 + 1.0), (apex, level + 1.0))
        drawing.distance(
            (high[0], level), (apex, level), say("rise {length}", length=length(one.rise)), 6.0
        )
    if one.oversize > 1e-6:
        above = low[0] < high[0] - 0.1  # or the shelf would meet the chord's extension line
        x, y = blank[-1].start if above else blank[0].end
        shelf = (x + 3.5, y + (7.0 if above else -7.0))
        drawing.leader((x, y), shelf, say("oversize {length}", length=length(one.oversize)))


# --- set-out ------------------------------------------------------------------------------------


def set_out(one: SetOut, wide: float, high: float) -> Drawing:
    """The set-out, not to scale: the base on the axis, the offsets to both sides at its end."""
    drawing = Drawing(wide, high)
    slope, middle = tand(min(one.angle, 170.0) / 2.0), high / 2.0 + 3.0
    base = wide - 30.0 if slope < STEEP else 45.0
    tip, end = (6.0, middle), (6.0 + base, middle)
    rise = min(max(base * slope, 6.0), high / 2.0 - 6.0)
    drawing.line((tip[0] - 4.0, middle), (end[0] + 4.0, middle), THIN, CHAIN)
    drawing.line((end[0], middle - rise - 2.0), (end[0], middle + rise + 2.0))
    for sign in (-1.0, 1.0):
        mark = (end[0], middle + sign * rise)
        drawing.line(tip, mark, THICK)
        offset_at(drawing, (end[0] + 8.0, middle), sign * rise, mark, length(one.offset))
    drawing.line((tip[0], middle - 1.0), (tip[0], middle - rise - 1.0), THIN)
    low = middle - rise
    drawing.distance(
        (tip[0], low), (end[0], low), say("base {length}", length=length(one.base)), -6.0
    )
    return drawing

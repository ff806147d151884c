# SPDX-License-Identifier: LGPL-2.1-or-later
"""A wedge with its dimensions, from its leaf's face, tip at the origin; and its set-out."""

from __future__ import annotations

import math

from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Edge, Line, Point
from veneerwb.core.plane import polar, tand
from veneerwb.core.shop.drawing.drawn import (
    ARROW,
    CHAIN,
    DASHED,
    MEDIUM,
    THICK,
    THIN,
    Drawing,
    placed,
)
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.lettering import SMALL, degrees, width
from veneerwb.core.shop.setout import SetOut
from veneerwb.core.shop.wedge import Wedge
from veneerwb.words import say, word

ORIGIN = (0.0, 0.0)


def draw_wedge(drawing: Drawing, one: Wedge, f: float, lengths: Lengths) -> None:
    """The wedge `f` times as large: seams, tip angle, chord, rise, oversize, grain."""
    net, blank = placed(one.net, f, ORIGIN), placed(one.blank, f, ORIGIN)
    drawing.edge(net, THICK)
    if edges.area(one.blank) - edges.area(one.net) > 1e-3:
        drawing.edge(blank[1:-1], THIN, DASHED)
        for corner, end in ((net[0].end, blank[0].end), (net[-1].start, blank[-1].start)):
            drawing.line(corner, end, THIN, DASHED)
    drawing.line((-3.0, 0.0), (f * on_axis(one) + 2.5, 0.0), THIN, CHAIN)
    sides = tuple(math.dist(ORIGIN, p) for p in (net[0].end, net[-1].start))
    texts = max(width(lengths.length(side), SMALL) for side in one.sides)
    below = tip_angle(drawing, one, ORIGIN, _radius(one.angle, sides, texts))
    _sides(drawing, one, net, below, lengths)
    _rim(drawing, one, net, blank, lengths)
    grain_arrow(drawing, (-18.0, 0.0), one.grain)


def on_axis(one: Wedge) -> float:
    """How far from the tip the axis leaves the blank, mm."""
    hits = [(segment, segment.hit(0.0)) for segment in one.blank[1:-1]]
    return max((segment.at(hit)[0] for segment, hit in hits if hit is not None), default=0.0)


def _sides(drawing: Drawing, one: Wedge, net: Edge, below: float, lengths: Lengths) -> None:
    lower, upper = (lengths.length(side) for side in one.sides)
    drawing.distance(net[-1].end, net[-1].start, upper, 7.0)
    if lower != upper:
        drawing.distance(net[0].start, net[0].end, lower, -below)


def _rim(drawing: Drawing, one: Wedge, net: Edge, blank: Edge, lengths: Lengths) -> None:
    low, high = net[0].end, net[-1].start
    text = lengths.length(one.chord)
    way = math.degrees(math.atan2(high[1] - low[1], high[0] - low[0]))
    beyond = edges.extent(blank, way - 90.0)[1] - edges.extent((Line(low, high),), way - 90.0)[1]
    narrow = math.dist(low, high) < max(18.0, width(text, SMALL) + 4.0)
    rises = one.rise > 0.0 and abs(low[0] - high[0]) < 0.05  # the chord square to the axis
    rise = say("rise {length}", length=lengths.length(one.rise))
    aside = width(rise, SMALL) + 8.0 if narrow and rises else 0.0
    drawing.distance(low, high, text, -beyond - 8.0 - aside)
    if rises:
        level = edges.extent(blank, 90.0)[1]
        apex = edges.extent(net, 0.0)[1]
        drawing.line((apex, (low[1] + high[1]) / 2.0 + 1.0), (apex, level + 1.0))
        drawing.distance((high[0], level), (apex, level), rise, 6.0)
    if one.oversize > 1e-6 and not narrow:  # then it is said in words alone
        over = say("oversize {length}", length=lengths.length(one.oversize))
        above = low[0] < high[0] - 0.1  # or the shelf would meet the chord's extension line
        x, y = blank[-1].start if above else blank[0].end
        drawing.leader((x, y), (x + 3.5, y + (7.0 if above else -7.0)), over)


def _radius(angle: float, sides: tuple[float, ...], wide: float) -> float:
    """How far from the tip its angle is measured, mm: where a narrow one is marked from outside,
    clear of the seams' texts, which are so `wide` in the middle of the seams; 0 where it can only
    be told in words."""
    clear = wide / 2.0 + 5.0
    first = min(max(14.0 / math.radians(angle), 10.0), 0.6 * min(sides))
    if math.radians(angle) * first >= INSIDE:
        return first
    choices = (first, *(s / 2.0 + clear for s in sides), *(s / 2.0 - clear for s in sides))
    for radius in choices:
        if 10.0 <= radius <= 0.92 * min(sides) and all(
            abs(radius - s / 2.0) >= clear - 1e-9 for s in sides
        ):
            return radius
    return 0.0


INSIDE = 2.0 * ARROW + 4.0
"""mm: the least arc in which both arrows have room."""


def tip_angle(drawing: Drawing, one: Wedge, tip: Point, radius: float) -> float:
    """The tip's angle, so far from it, 0 for none; how far below the lower seam there is room for
    the next dimension."""
    if not radius:
        return 7.0
    half, text = one.angle / 2.0, degrees(one.angle)
    arc = math.radians(one.angle) * radius
    within = arc >= INSIDE
    more = 0.0 if within else math.degrees(6.0 / radius)
    drawing.edge((Arc(tip, radius, -half - more, one.angle + 2.0 * more),), THIN)
    _angle_arrows(drawing, tip, radius, half, inwards=not within)
    if arc >= 2.0 * SMALL + 3.0:
        drawing.text((tip[0] + radius + 1.0, tip[1] + 0.8), text, anchor="start")
        return 7.0
    low = polar(radius, -half - more)
    drawing.text((tip[0] + low[0] - 1.0, tip[1] + low[1] - 1.0), text, anchor="end")
    return 13.0


def _angle_arrows(
    drawing: Drawing, tip: Point, radius: float, half: float, inwards: bool
) -> None:
    lean = math.degrees(1.5 / radius)  # half an arrow's length round the arc
    for sign in (-1.0, 1.0):
        x, y = polar(radius, sign * half)
        along = sign * (half - lean if not inwards else half + lean) + sign * 90.0
        drawing.arrow((tip[0] + x, tip[1] + y), along + (180.0 if inwards else 0.0))


def grain_arrow(drawing: Drawing, middle: Point, turn: float, half: float = 7.0) -> None:
    """Which way the grain runs: a line with an arrowhead at both ends and its word above it."""
    dx, dy = polar(half, turn)
    a, b = (middle[0] - dx, middle[1] - dy), (middle[0] + dx, middle[1] + dy)
    drawing.line(a, b, MEDIUM)
    drawing.arrow(b, turn)
    drawing.arrow(a, turn + 180.0)
    level = math.remainder(turn, 180.0)
    level = level + 180.0 if level <= -90.0 + 1e-6 else level
    x, y = polar(1.2, level + 90.0)
    drawing.text((middle[0] + x, middle[1] + y), word("grain"), turn=level)


# --- set-out --------------------------------------------------------------------------------------

STEEP = 0.6
"""Tangent of the half angle from which on the base is drawn short."""


def draw_set_out(
    drawing: Drawing, one: SetOut, lengths: Lengths, wide: float, high: float
) -> None:
    """The set-out, not to scale, some `wide` and at most `high` mm large: the base on the axis,
    the offsets to both sides at its end."""
    text = lengths.length(one.offset)
    slope = tand(min(one.angle, 170.0) / 2.0)
    base = wide - 24.0 - width(text, SMALL) if slope < STEEP else 45.0
    end = (base, 0.0)
    rise = min(max(base * slope, 6.0), high / 2.0 - 8.0)
    drawing.line((-4.0, 0.0), (end[0] + 4.0, 0.0), THIN, CHAIN)
    drawing.line((end[0], -rise - 2.0), (end[0], rise + 2.0))
    for sign in (-1.0, 1.0):
        mark = (end[0], sign * rise)
        drawing.line(ORIGIN, mark, THICK)
        offset_at(drawing, (end[0] + 8.0, 0.0), sign * rise, mark, text)
    drawing.line((0.0, -1.0), (0.0, -rise - 1.0), THIN)
    said = say("base {length}", length=lengths.length(one.base))
    drawing.distance((0.0, -rise), (end[0], -rise), said, -6.0)


def offset_at(drawing: Drawing, foot: Point, rise: float, mark: Point, text: str) -> None:
    """From the axis at `foot` to the level of `mark`: a measure with its text beside it."""
    x, y = foot
    top = y + rise
    drawing.line((mark[0] + 1.0, mark[1]), (x + 1.5, top))
    drawing.line((x - 4.0, y), (x + 1.5, y))
    drawing.line((x, y), (x, top))
    turn = 90.0 if rise > 0.0 else -90.0
    if abs(rise) >= 8.0:
        drawing.arrow((x, y), turn + 180.0)
    drawing.arrow((x, top), turn)
    drawing.text((x + 2.0, y + rise / 2.0 - SMALL / 2.0), text, anchor="start")

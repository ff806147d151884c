# SPDX-License-Identifier: LGPL-2.1-or-later
"""Two figures of a ring that is trued: the top to scale with its seams as they come to lie, and the
parts apart before they are trued, with all that is off enlarged."""

from __future__ import annotations

import math
from dataclasses import replace

from veneerwb.core.layout import Layout
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Line, Point
from veneerwb.core.plane import Motion, polar, sind
from veneerwb.core.shop.closing import Closing, Places
from veneerwb.core.shop.closing.ring import Ring
from veneerwb.core.shop.closing.said import NAMES
from veneerwb.core.shop.closing.trued import Part, Placed, places
from veneerwb.core.shop.drawing.drawn import DASHED, GREY, MEDIUM, RED, THICK, THIN, Drawing, placed
from veneerwb.core.shop.drawing.lettering import PITCH, PLAIN, SMALL, width, wrapped
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.drawing.scales import Scale, scale_for

TIMES = (1, 2, 5, 10, 20, 50, 100, 200, 500)
"""By what angles are enlarged in the second figure."""
WIDEST = 14.0
"""Degrees: what a part is off is drawn no larger."""
SHARE = 0.6
"""Of the end wedge: no more of it is drawn as trued off."""
ASIDE = 3.6
"""mm: how far outside the edge numbers and letters stand."""
APART = 3.0
"""mm: half of what stays free between two parts."""
LOST = "#d8d8d8"


def to_scale(drawing: Drawing, box: Box, closing: Closing) -> Scale:
    """The top with its seams as trued (planned: dashed), the joints that are trued in red, and the
    number of every piece outside where there is room for all, else of those at the joints."""
    layout, ring = closing.layout, closing.ring
    (x0, x1), (y0, y1) = (edges.extent(layout.top.edge, turn) for turn in (0.0, 90.0))
    margin = 2.0 * (ASIDE + PLAIN)
    scale = scale_for((x1 - x0, y1 - y0), (box.wide - margin, box.high - margin))
    f = scale.factor
    cx, cy = box.centre
    at = (cx - f * (x0 + x1) / 2.0, cy - f * (y0 + y1) / 2.0)
    onto = Motion(dx=at[0], dy=at[1])
    _seams(drawing, layout, f, onto, GREY, DASHED)
    _seams(drawing, closing.trued, f, onto)
    centre = layout.recipe.centre
    for part in closing.at.parts:
        for way in (part.begin,) if part.trued else part.sides:
            run = ((0.0, 0.0), ring.meets((0.0, 0.0), way))
            ends = [onto.point((f * (x + centre[0]), f * (y + centre[1]))) for x, y in run]
            drawing.line(*ends, THICK if part.trued else THIN, colour=RED)
    for loop in layout.top.region.loops:
        drawing.edge(placed(loop, f, at), MEDIUM)
    _numbers(drawing, closing, f, onto)
    return scale


def _seams(
    drawing: Drawing, layout: Layout, f: float, onto: Motion, colour: str = "#000000",
    dashes: tuple[float, ...] = (),
) -> None:  # fmt: skip
    for seam in layout.seams:
        ends = [onto.point((f * x, f * y)) for x, y in seam.line.coords]
        drawing.edge(tuple(map(Line, ends, ends[1:])), THIN, dashes, colour)


def _numbers(drawing: Drawing, closing: Closing, f: float, onto: Motion) -> None:
    spots = {
        position: (_outside(closing, (piece.first + piece.last) / 2.0, f, onto), position)
        for position, piece in enumerate(closing.at.pieces, start=1)
    }
    if _crowded([spot for spot, _ in spots.values()]):
        spots = {}
        for part in closing.at.parts:
            for k, (way, position) in enumerate(zip((part.begin, part.end), _ends(part))):
                aside = width(str(position), SMALL) / 2.0 + 0.8
                spot = _outside(closing, way, f, onto)
                spots[2 * part.positions[0] + k] = (
                    _out(spot, aside, way + (90.0 if k == 0 else -90.0)), position
                )  # fmt: skip
    for (x, y), position in spots.values():
        drawing.text((x, y - SMALL / 2.0), str(position), SMALL)


def _outside(closing: Closing, way: float, f: float, onto: Motion) -> Point:
    """Where a number stands outside the edge in a direction from the ring's centre."""
    end, centre = closing.ring.meets((0.0, 0.0), way), closing.layout.recipe.centre
    x, y = onto.point((f * (end[0] + centre[0]), f * (end[1] + centre[1])))
    return _out((x, y), ASIDE, way)


def _ends(part: Part) -> tuple[int, int]:
    return part.positions[0], part.positions[-1]


def _crowded(spots: list[Point]) -> bool:
    apart = min(math.dist(a, b) for a, b in zip(spots, [*spots[1:], spots[0]]))
    return apart < width("00", SMALL) + 0.8


# --- enlarged -------------------------------------------------------------------------------------


def times(at: Places) -> int:
    """By how much the angles are enlarged."""
    ring = at.ring
    off = max(abs(part.over) for part in at.parts)
    trim = max(abs(trim) for part in at.parts for trim in part.trims)
    if off < 1e-9:
        return TIMES[0]
    most = min(WIDEST / off, SHARE * ring.angle / trim)
    return max((one for one in TIMES if one <= most), default=1)


def enlarged(drawing: Drawing, box: Box, at: Places, angles: tuple[float, ...]) -> int:
    """The parts apart as they come from the tape, the first level and above, what is off enlarged,
    what is trued off grey, the lines to true along red, their ends lettered; by how much."""
    factor = times(at)
    true = at.ring.angle
    circle = (Arc((0.0, 0.0), 1.0, -90.0, 360.0),)
    ring = Ring(at.ring.ways, at.ring.start - at.parts[0].begin, circle)
    grown = places(ring, [true + factor * (a - true) for a in angles], at.how, at.first)
    trim = max(max(*part.trims, 0.0) for part in grown.parts)
    lost = max(part.tip_lost for part in grown.parts)
    half = min(box.wide, box.high) / 2.0 - ASIDE - PLAIN
    # Each part moves out along its middle until what sticks out of it meets no other.
    out = sind(180.0 / len(grown.parts)) if len(grown.parts) > 1 else math.inf
    beyond = max(sind(trim) / out, lost)
    radius = (half - APART / out) / (1.0 + beyond)
    apart = radius * beyond + APART / out
    for k, part in enumerate(grown.parts):
        (dx, dy), (cx, cy) = polar(apart, (part.begin + part.end) / 2.0), box.centre
        names = NAMES[2 * k : 2 * k + 2]
        _part(drawing, part, grown, radius, (cx + dx, cy + dy), names)
    return factor


def _part(
    drawing: Drawing, part: Part, at: Places, radius: float, corner: Point, names: str
) -> None:
    pieces = [at.pieces[p - 1] for p in part.positions]
    lost = polar(-radius * part.tip_lost, (part.begin + part.end) / 2.0)
    tip = (corner[0] + lost[0], corner[1] + lost[1])
    begin, end = part.sides
    _lost(drawing, part, radius, corner, tip)
    rim = Arc(tip, radius, begin, end - begin)
    drawing.edge((replace(rim, sweep=min(rim.sweep, 360.0)),), MEDIUM)
    for side in part.sides:
        drawing.line(tip, _out(tip, radius, side), MEDIUM)
    for piece in pieces[:-1]:
        drawing.line(tip, _out(tip, radius, piece.last), THIN)
    _piece_numbers(drawing, part, pieces, radius, tip)
    if not part.trued:
        return
    for direction, name, turn in ((part.begin, names[0], 1.0), (part.end, names[1], -1.0)):
        drawing.line(corner, _out(corner, radius, direction), THICK, colour=RED)
        aside = 1.5 if len(at.parts) > 1 else PLAIN
        x, y = _out(_out(corner, radius + ASIDE, direction), aside, direction + 90.0 * turn)
        drawing.text((x, y - SMALL / 2.0), name, PLAIN)


def _lost(drawing: Drawing, part: Part, radius: float, corner: Point, tip: Point) -> None:
    """What is trued off, grey."""
    if not part.trued:
        return
    if part.over < 0.0:
        ends = [_out(tip, radius, side) for side in part.sides]
        drawing.area([tip, ends[0], corner, ends[1]], LOST)
        return
    for begin, sweep in ((part.sides[0], part.trims[0]), (part.end, part.trims[1])):
        if sweep > 1e-9:
            arc = Arc(tip, radius, begin, sweep)
            run = (Line(tip, arc.start), arc, Line(arc.end, tip))
            drawing.edge(run, 0.0, fill=LOST)


def _piece_numbers(
    drawing: Drawing, part: Part, pieces: list[Placed], radius: float, tip: Point
) -> None:
    at = 0.82 * radius
    rooms = [2.0 * at * sind((piece.last - piece.first) / 2.0) for piece in pieces]
    if min(rooms) < math.hypot(width("00", SMALL), SMALL) + 1.0:
        return
    for position, piece in zip(part.positions, pieces):
        x, y = _out(tip, at, (piece.first + piece.last) / 2.0)
        drawing.text((x, y - SMALL / 2.0), str(position), SMALL)


def _out(point: Point, far: float, direction: float) -> Point:
    dx, dy = polar(far, direction)
    return point[0] + dx, point[1] + dy


def both(box: Box) -> tuple[Box, Box]:
    """The field parted for the two, beside or below each other, as they come out larger; each with
    room for a line of words above it."""
    beside, below = box.columns(2, 6.0), box.rows(2, 4.0)
    head = PLAIN + 2.0

    def size(boxes: list[Box]) -> float:
        return min(boxes[0].wide, boxes[0].high - head)

    chosen = beside if size(beside) >= size(below) else below
    return chosen[0], chosen[1]


def headed(drawing: Drawing, box: Box, text: str) -> Box:
    """What is left of a field below some words, which stand in its middle."""
    y = box.top
    for line in wrapped(text, box.wide, SMALL):
        y -= PITCH * SMALL
        drawing.text((box.centre[0], y + 0.25 * SMALL), line, SMALL)
    return box.below(y - 1.0)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a template's file holds, layer by layer, whichever format it is written in.

Only CUT (or TOOL, for a machine that does not reckon its own width) is there to be cut; all other
layers are to be looked at.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shapely.geometry import LineString, Polygon
from shapely.geometry import Point as ShapelyPoint
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union
from shapely.prepared import prep

from veneerwb.core.outlines.edge import Arc, Edge, Line, Point
from veneerwb.core.outlines.region import joined
from veneerwb.core.plane import Motion, polar
from veneerwb.core.shop.drawing.drawn import Letters
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.lettering import (
    LARGE,
    PITCH,
    PLAIN,
    SMALL,
    paragraphs,
    width,
    wrapped,
)
from veneerwb.core.shop.templates.template import Template
from veneerwb.core.shop.templates.words import BAR, called, heading, said, side_up
from veneerwb.words import marked, say, word

CUT, NET, SEAM, RIM, TOOL = "CUT", "NET", "SEAM", "RIM", "TOOL"
AXIS, GRAIN, HOLES, PINS, BARS, TEXT = "AXIS", "GRAIN", "HOLES", "PINS", "BAR", "TEXT"
LAYERS = {
    CUT: marked("the outline to cut"),
    NET: marked("the finished outline"),
    SEAM: marked("the seams of the finished outline"),
    RIM: marked("its rim"),
    TOOL: marked("the line of the tool's middle"),
    AXIS: marked("the axis from the tip"),
    GRAIN: marked("the direction of the grain"),
    HOLES: marked("openings, cut after pressing"),
    PINS: marked("holes for pins"),
    BARS: marked("100 mm in both directions"),
    TEXT: marked("words"),
}
HIDDEN = (SEAM, RIM)
"""Layers that are switched off, for what they show lies on NET."""
BESIDE, COLUMN = 20.0, 150.0
"""mm: how far beside the outline the words stand, and how wide they are set."""
CLEAR = 2.0
"""mm: between letters and lines."""
HEIGHTS, COLUMNS, ARROWS = (LARGE, PLAIN, SMALL), (150.0, 90.0, 60.0, 40.0), (60.0, 30.0, 18.0)
"""mm: what is tried for letters, for the length of their lines and for the grain's arrow."""
_STROKE = 3.0  # half a bar's end stroke
_PLACES = 16


@dataclass(frozen=True)
class Lines:
    """A run of segments on a layer."""

    layer: str
    edge: Edge
    closed: bool = False


def marks(template: Template, lengths: Lengths, note: str = "") -> list[Lines | Letters]:
    """All that is drawn of a template, in its frame; letters belong on the layer TEXT. `note`: a
    sentence on the file itself."""
    found: list[Lines | Letters] = [Lines(CUT, template.cut, True)]
    found += (Lines(NET, net, True) for net in template.nets)
    for net in template.nets:
        found += (Lines(layer, run) for layer, run in _by_role(net))
    if template.tool_line:
        found.append(Lines(TOOL, template.tool_line, True))
    found += (Lines(HOLES, hole, True) for hole in template.holes)
    if template.axis:
        found.append(Lines(AXIS, (template.axis,)))
    for pin in template.pins:
        circle = Arc(pin.at, pin.diameter / 2.0, 0.0, 360.0)
        found.append(Lines(PINS, (circle,), True))
        found.append(_start((pin.at[0] + pin.diameter, pin.at[1]), pin.name or "pin"))
    return [*found, *inside(template), *_beside(template, lengths, note)]


def _by_role(edge: Edge) -> Iterator[tuple[str, Edge]]:
    """The runs of seams and those of rim in an outline."""
    start = next((k for k in range(len(edge)) if edge[k].role != edge[k - 1].role), 0)
    run = [*edge[start:], *edge[:start]]
    while run:
        role = run[0].role
        count = next((k for k, s in enumerate(run) if s.role != role), len(run))
        if role in ("seam", "rim"):
            yield SEAM if role == "seam" else RIM, joined(run[:count])
        del run[:count]


# --- words ----------------------------------------------------------------------------------------


def inside(template: Template) -> list[Lines | Letters]:
    """What stands within the outline: the grain's arrow, then which template it is, of what and
    which side is up, off all lines where there is room for that; and TIP at the tip."""
    whole = template.shape.buffer(-CLEAR)
    free = whole.difference(kept_off(unary_union(_in_the_way(template))))
    x0, y0, x1, y1 = template.shape.bounds
    near = ((x0 + x1) / 2.0, y0 + 0.6 * (y1 - y0))
    found: list[Lines | Letters] = []
    arrow = grain_arrow((free, whole), template.grain, near)
    if arrow:
        found += arrow
        taken = unary_union([_line(m.edge) for m in arrow if isinstance(m, Lines)])
        free, whole = (room.difference(taken.buffer(3.0 * CLEAR)) for room in (free, whole))
    found += label((free, whole), short(template), near)
    if template.tip is not None:
        x, y = template.tip_cut or template.tip
        found.append(Letters((x, y - PLAIN - 3.0), word("TIP"), PLAIN))
    return found


def _in_the_way(template: Template) -> list[LineString]:
    runs = [*template.nets, *template.holes, *([(template.axis,)] if template.axis else [])]
    return [_line(run) for run in runs]


def kept_off(lines: BaseGeometry) -> BaseGeometry:
    """Where no letters stand, for lines that run there."""
    return lines.simplify(0.1 * CLEAR).buffer(CLEAR, 2)


def _line(edge: Edge) -> LineString:
    return LineString([*(p for s in edge for p in s.points()), edge[-1].end])


def short(template: Template) -> list[str]:
    """What a template must say of itself wherever it lies: which it is, of what, which side up."""
    return [template.shown, called(template), side_up(template)]


def label(
    rooms: Sequence[Polygon], texts: Sequence[str], near: Point, heights: Sequence[float] = HEIGHTS
) -> list[Letters]:
    """Texts as a block in the first of some rooms that has place, letters as large and lines as
    long as can be; none where there is none."""
    for room in rooms:
        for height in heights:
            for column in COLUMNS:
                lines = paragraphs(texts, column, height)
                place = placed(room, *block_size(lines, height), near)
                if place is not None:
                    return set_lines(lines, height, *place)
    return []


def grain_arrow(
    rooms: Sequence[Polygon], grain: float, near: Point
) -> list[Lines | Letters]:
    """An arrow along the grain with its name, in the first of some rooms that has place."""
    for room in rooms:
        for far in ARROWS:
            place = placed(room, far, 2.0 * SMALL + 2.0, near, (grain,))
            if place is not None:
                return _arrow(place[0], grain, far)
    return []


def _arrow(middle: Point, grain: float, far: float) -> list[Lines | Letters]:
    (x, y), (ux, uy) = middle, polar(1.0, grain)
    x, y = x + 0.5 * SMALL * uy, y - 0.5 * SMALL * ux
    tip, tail = (x + far / 2 * ux, y + far / 2 * uy), (x - far / 2 * ux, y - far / 2 * uy)
    a, b = (
        (tip[0] + dx, tip[1] + dy) for dx, dy in (polar(5.0, grain + turn) for turn in (165, -165))
    )
    turn = math.remainder(grain, 360.0)
    upright = -90.0 < turn <= 90.0 + 1e-9
    off, back = (1.0 if upright else 1.0 + SMALL), 2.5  # clear of the arrow's head
    return [
        Lines(GRAIN, (Line(tail, tip),)),
        Lines(GRAIN, (Line(a, tip), Line(tip, b))),
        Letters((x - back * ux - off * uy, y - back * uy + off * ux), word("GRAIN"), SMALL,
                "middle", turn if upright else turn + 180.0),
    ]  # fmt: skip


def block_size(lines: Sequence[str], height: float) -> tuple[float, float]:
    """How wide and how high lines are, set under one another."""
    wide = max(width(line, height) for line in lines)
    return wide, height * (PITCH * (len(lines) - 1) + 1.0)


def placed(
    room: Polygon, wide: float, high: float, near: Point, turns: Sequence[float] = (0.0, 90.0)
) -> tuple[Point, float] | None:
    """Where a block fits in a room: its middle, nearest to a point, and the direction in which it
    reads, the first of `turns` that will do. None where it fits nowhere."""
    if room.is_empty or room.area < wide * high:
        return None
    within, (x0, y0, x1, y1) = prep(room), room.bounds
    steps = [k / _PLACES for k in range(_PLACES + 1)]
    middles = [near, *((x0 + s * (x1 - x0), y0 + t * (y1 - y0)) for s in steps for t in steps)]
    middles.sort(key=lambda p: math.dist(p, near))
    inside: dict[Point, bool] = {}  # a point is asked for sooner than a block
    for turn in turns:
        corners = [Motion(turn).point((s * wide / 2.0, t * high / 2.0)) for s, t in _CORNERS]
        for x, y in middles:
            if (x, y) not in inside:
                inside[x, y] = within.contains(ShapelyPoint(x, y))
            if inside[x, y] and within.contains(Polygon([(x + u, y + v) for u, v in corners])):
                return (x, y), turn
    return None


_CORNERS = ((-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0))


def set_lines(
    lines: Sequence[str], height: float, middle: Point, turn: float
) -> list[Letters]:
    """Lines under one another about a middle."""
    _, high = block_size(lines, height)
    found = []
    for k, line in enumerate(lines):
        dx, dy = Motion(turn).point((0.0, high / 2.0 - height - k * PITCH * height))
        found.append(Letters((middle[0] + dx, middle[1] + dy), line, height, "middle", turn))
    return found


def _start(at: Point, text: str, height: float = PLAIN) -> Letters:
    return Letters(at, text, height, "start")


def _beside(template: Template, lengths: Lengths, note: str) -> list[Lines | Letters]:
    """All sentences to the right of the outline, and the bars under them."""
    _, y0, x1, y1 = template.extents
    x = x1 + BESIDE
    lines = [(line, LARGE) for line in wrapped(heading(template), COLUMN, LARGE)]
    for sentence in filter(None, (*said(template, lengths), _for_machines(template), note)):
        lines += [("", PLAIN / 2.0), *((line, PLAIN) for line in wrapped(sentence, COLUMN, PLAIN))]
    high = sum(PITCH * height for _, height in lines)
    low = (y0 + y1) / 2.0 - (BAR + 15.0 + high) / 2.0
    found, y = bars((x, low)), low + BAR + 15.0 + high
    for line, height in lines:
        y -= PITCH * height
        if line:
            found.append(_start((x, y), line, height))
    return found


def _for_machines(template: Template) -> str:
    if template.tool:
        return say(
            "Of the layers of this file only {cut} is cut along, or {tool} by a machine that does "
            "not reckon the width of its tool.", cut=CUT, tool=TOOL,
        )  # fmt: skip
    return say("Of the layers of this file only {cut} is cut along.", cut=CUT)


def bars(corner: Point) -> list[Lines | Letters]:
    """Two bars of 100 mm from a corner, to the right and upwards."""
    x, y = corner
    found: list[Lines | Letters] = []
    for dx, dy in ((1.0, 0.0), (0.0, 1.0)):
        far = x + BAR * dx, y + BAR * dy
        found.append(Lines(BARS, (Line(corner, far),)))
        for px, py in (corner, far):
            a, b = ((px + s * _STROKE * dy, py + s * _STROKE * dx) for s in (-1.0, 1.0))
            found.append(Lines(BARS, (Line(a, b),)))
    text, half = f"{BAR:g} mm", BAR / 2.0
    found.append(Letters((x + half, y + 2.0), text, PLAIN))
    found.append(Letters((x - 2.0, y + half), text, PLAIN, turn=90.0))
    return found

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A template as pages at 1:1: a page that maps the sheets and says all, then the sheets."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

from shapely.geometry import LineString, Polygon, box
from shapely.geometry import Point as ShapelyPoint
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from veneerwb.core.listing import all_of
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Edge, Line, Point, Segment
from veneerwb.core.plane import TOUCH, Motion, polar
from veneerwb.core.shop.drawing.drawn import (
    CHAIN,
    DASHED,
    GREY,
    MEDIUM,
    THIN,
    Drawing,
    Stroke,
)
from veneerwb.core.shop.drawing.legible import area
from veneerwb.core.shop.drawing.lettering import PLAIN, SMALL, fitted, width
from veneerwb.core.shop.drawing.page import (
    Look,
    Page,
    numbered,
)
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages.template_map import map_pages
from veneerwb.core.shop.pages.template_marks import bars, corners
from veneerwb.core.shop.templates.marks import (
    CLEAR,
    Lines,
    grain_arrow,
    kept_off,
    label,
    short,
)
from veneerwb.core.shop.templates.template import Template
from veneerwb.core.shop.templates.tiles import (
    FOOT,
    MARGIN,
    REACH,
    Tile,
    Tiling,
    clipped,
    drawn_lines,
    row_name,
    tiled,
)
from veneerwb.core.shop.templates.words import heading
from veneerwb.words import marked, say, word

FINE = 0.18
"""mm: a line to cut along, no wider than a knife follows it."""
NAME = 7.0
_RING, _CROSS = 2.0, 3.5  # of a register mark: its radius, half its cross
_TICK = 5.0  # mm
_PRINT = marked("Print at 100 %: fit to page shrinks a sheet. Both bars measure 100 mm (3.937 in).")
_ON = 0.02  # mm: a line that lies nearer to another is the same on paper
_HEIGHTS = (PLAIN, SMALL)


def pages(template: Template, look: Look) -> list[Page]:
    """The pages on the paper of `look`: the map and the words, then the sheets row by row. They are
    numbered already."""
    tiling = tiled(template, look.paper)
    first = map_pages(tiling, look)
    count = len(first) + len(tiling.tiles)
    lines = _lines(template)
    sheets = [
        _sheet(tiling, lines, tile, say("page {page} of {count}", page=k, count=count))
        for k, tile in enumerate(tiling.tiles, start=len(first) + 1)
    ]
    return [*numbered([*first, *sheets])[: len(first)], *sheets]


# --- a sheet --------------------------------------------------------------------------------------


def _sheet(tiling: Tiling, lines: Sequence[Stroke], tile: Tile, number: str) -> Page:
    paper, template = tiling.paper, tiling.template
    drawing = Drawing(paper.wide, paper.high)
    shift = Motion(dx=tiling.field.x - tile.shown.x, dy=tiling.field.y - tile.shown.y)
    way = tiling.onto(tile)
    for line in lines:
        for run in clipped(line.moved(way).edge, tiling.field):
            drawing.marks.append(replace(line, edge=run))
    for pin in (pin.moved(way) for pin in template.pins):
        circle = (Arc(pin.at, pin.diameter / 2.0, 0.0, 360.0),)
        for run in clipped(circle, tiling.field):
            drawing.edge(run, FINE)
        left = pin.at[0] + pin.diameter / 2.0 + 1.0
        name = Box(left, pin.at[1] - SMALL / 2.0, width(pin.name, SMALL), SMALL)
        if pin.name and tiling.field.holds(name):
            drawing.text((left, name.y), pin.name, SMALL, "start")
    cell = Box(tile.cell.x + shift.dx, tile.cell.y + shift.dy, tile.cell.wide, tile.cell.high)
    _trim_lines(drawing, tiling, tile, cell)
    for mark in tiling.marks_on(tile):
        _register(drawing, shift.point(mark.at), mark.name)
    _words(drawing, tiling, tile, cell)
    bars(drawing, (tiling.field.x, MARGIN + FOOT - 6.0), (MARGIN + 5.0, tiling.field.y))
    _foot(drawing, tiling, tile, number)
    return Page(f"{template.code}-{tile.name}", f"{template.shown}, {tile.name}", drawing, paper)


def _lines(template: Template) -> list[Stroke]:
    """What is drawn of a template, in its frame. A line that lies on another is left out, or broken
    lines would make a solid one."""
    found = [Stroke(template.cut, FINE)]
    drawn = [LineString(corners(template.cut))]
    nets = sorted(template.nets, key=edges.area, reverse=True)
    for loop in (*nets, *template.holes):
        run = [s for s in loop if not any(_lies_on(s, line) for line in drawn)]
        if run:
            found += (Stroke(edge, FINE, DASHED) for edge in _runs(run))
            drawn += (LineString(corners(edge)) for edge in _runs(run))
    if template.tool_line:
        found.append(Stroke(template.tool_line, FINE, CHAIN))
    if template.axis:
        found.append(Stroke((template.axis,), FINE, CHAIN))
    return found


def _lies_on(segment: Segment, line: LineString) -> bool:
    return all(line.distance(ShapelyPoint(segment.at(s))) < _ON for s in (0.0, 0.3, 0.7, 1.0))


def _runs(segments: Sequence[Segment]) -> list[Edge]:
    """Segments joined where one begins at another's end."""
    runs: list[list[Segment]] = []
    for segment in segments:
        if runs and math.dist(runs[-1][-1].end, segment.start) < TOUCH:
            runs[-1].append(segment)
        else:
            runs.append([segment])
    return [tuple(run) for run in runs]


def _trim_lines(drawing: Drawing, tiling: Tiling, tile: Tile, cell: Box) -> None:
    """The lines between this page and its neighbours; solid ends are where it is trimmed."""
    shown = tiling.field
    for down, right in ((0, -1), (-1, 0), (0, 1), (1, 0)):
        if tiling.neighbour(tile, down, right) is None:
            continue
        if right:
            x = cell.x if right < 0 else cell.right
            line = Line((x, shown.y), (x, shown.top))
        else:
            y = cell.top if down < 0 else cell.y
            line = Line((shown.x, y), (shown.right, y))
        drawing.line(line.a, line.b, THIN, DASHED, GREY)
        if down < 0 or right < 0:
            share = _TICK / line.length
            drawing.line(line.a, line.at(share), MEDIUM)
            drawing.line(line.at(1.0 - share), line.b, MEDIUM)


def _register(drawing: Drawing, at: Point, name: str) -> None:
    x, y = at
    drawing.edge((Arc(at, _RING, 0.0, 360.0),), FINE)
    drawing.line((x - _CROSS, y), (x + _CROSS, y), FINE)
    drawing.line((x, y - _CROSS), (x, y + _CROSS), FINE)
    drawing.text((x + _RING + 0.4, y + 0.8), name, SMALL, "start")


def _words(drawing: Drawing, tiling: Tiling, tile: Tile, cell: Box) -> None:
    """What the template says of itself on every page that has room for it: off all lines."""
    template, way = tiling.template, tiling.onto(tile)
    within = box(cell.x, cell.y, cell.right, cell.top)
    shape = way.apply_to(template.shape)
    lines = way.apply_to(drawn_lines(template))
    taken = [kept_off(lines)]
    shift = Motion(dx=tiling.field.x - tile.shown.x, dy=tiling.field.y - tile.shown.y)
    for mark in tiling.marks_on(tile):
        x, y = shift.point(mark.at)
        taken.append(box(x - REACH, y - REACH, x + 2.0 * REACH, y + REACH))
    covered = unary_union(taken)
    if template.tip is not None:
        _name_tip(drawing, way.point(template.tip_cut or template.tip), within, shape, covered)
    free = within.intersection(shape).buffer(-CLEAR).difference(covered)
    rooms = [part for part in getattr(free, "geoms", [free]) if not part.is_empty]
    rooms.sort(key=lambda part: -part.area)
    for room in rooms:
        middle = room.representative_point()
        found = label([room], [*short(template), tile.name], (middle.x, middle.y), _HEIGHTS)
        if found:
            drawing.marks += found
            covered = unary_union([area(letters) for letters in found]).buffer(CLEAR)
            _arrow(drawing, room.difference(covered), template.grain + tiling.turn)
            return
    for room in rooms:
        if _arrow(drawing, room, template.grain + tiling.turn):
            return


def _arrow(drawing: Drawing, room: Polygon, grain: float) -> bool:
    """The grain's arrow, where there is room; whether there is."""
    middle = room.representative_point()
    found = grain_arrow([room], grain, (middle.x, middle.y))
    drawing.marks += (Stroke(m.edge, THIN) if isinstance(m, Lines) else m for m in found)
    return bool(found)


def _name_tip(
    drawing: Drawing, at: Point, within: Polygon, shape: Polygon, covered: BaseGeometry
) -> None:
    """TIP beside the tip, outside the outline where it can be."""
    wide = width(word("TIP"), PLAIN)
    for room in (within.difference(shape), within):
        room = room.difference(covered)
        for far in (1.0, 1.5, 2.0, 3.0):
            for turn in range(0, 360, 15):
                (x, y), (dx, dy) = at, polar(far, turn)
                left, low = x + 8.0 * dx - wide / 2.0, y + 6.0 * dy - PLAIN / 2.0
                if room.contains(box(left, low, left + wide, low + PLAIN)):
                    drawing.text((left, low), word("TIP"), PLAIN, "start")
                    return


def _foot(drawing: Drawing, tiling: Tiling, tile: Tile, number: str) -> None:
    field = tiling.field
    left, wide = MARGIN, field.right - MARGIN
    rows, columns = (1 + max(values) for values in zip(*((t.row, t.column) for t in tiling.tiles)))
    drawing.text((field.right, MARGIN + FOOT - 8.5), tile.name, NAME, "end")
    where = say(
        "Sheet {sheet}: row {row} of {rows}, column {column} of {columns}, {page}.",
        sheet=tile.name, row=row_name(tile.row), rows=rows, column=tile.column + 1,
        columns=columns, page=number,
    )
    where = f"{where} {_joined_to(tiling, tile)}"
    for k, text in enumerate((heading(tiling.template), where, word(_PRINT))):
        drawing.text((left, MARGIN + 11.0 - 5.0 * k), fitted(text, wide, SMALL)[0], SMALL, "start")


def _joined_to(tiling: Tiling, tile: Tile) -> str:
    left, above = tiling.neighbour(tile, 0, -1), tiling.neighbour(tile, -1, 0)
    names = [other.name for other in (left, above) if other]
    if not names:
        return ""
    if left and above:
        return say("Trim the left and top, lay it on {sheets}.", sheets=all_of(names))
    return (
        say("Trim the left, lay it on {sheet}.", sheet=names[0]) if left
        else say("Trim the top, lay it on {sheet}.", sheet=names[0])
    )  # fmt: skip

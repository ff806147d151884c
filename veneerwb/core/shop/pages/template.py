# SPDX-License-Identifier: LGPL-2.1-or-later
"""A template as pages at 1:1: a page that maps the sheets and says all, then the sheets."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import replace

from shapely.geometry import LineString, Polygon, box
from shapely.geometry import Point as ShapelyPoint
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from veneerwb.core import edge as edges
from veneerwb.core.edge import Arc, Edge, Line, Point, Segment
from veneerwb.core.listing import all_of
from veneerwb.core.plane import TOUCH, Motion, polar
from veneerwb.core.shop.drawn import CHAIN, DASHED, GREY, MEDIUM, THICK, THIN, Drawing, Stroke
from veneerwb.core.shop.legible import LEAST, area
from veneerwb.core.shop.lettering import LARGE, PLAIN, SMALL, fitted, width
from veneerwb.core.shop.page import Look, Page, blank_page, numbered, text_block, text_height
from veneerwb.core.shop.paper import Box
from veneerwb.core.shop.scales import scale_for
from veneerwb.core.shop.template import Template
from veneerwb.core.shop.template_marks import (
    CLEAR,
    Lines,
    block_size,
    grain_arrow,
    kept_off,
    label,
    placed,
    set_lines,
    short,
)
from veneerwb.core.shop.template_words import BAR, DRY, heading, said
from veneerwb.core.shop.tiles import (
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
from veneerwb.words import marked, say, word

FINE = 0.18
"""mm: a line to cut along, no wider than a knife follows it."""
NAME = 7.0
_RING, _CROSS = 2.0, 3.5  # of a register mark: its radius, half its cross
_TICK, _STROKE = 5.0, 2.0  # mm
_HOLE = 0.9  # mm: half of a pin's hole on the map
_PRINT = marked("Print at 100 %: fit to page shrinks a sheet. Both bars measure 100 mm (3.937 in).")
_ON = 0.02  # mm: a line that lies nearer to another is the same on paper
_HEIGHTS = (PLAIN, SMALL)
_FIGURE = 112.0  # mm: the least height of the map, beside the upright bar


def pages(template: Template, look: Look) -> list[Page]:
    """The pages on the paper of `look`: the map and the words, then the sheets row by row. They are
    numbered already."""
    tiling = tiled(template, look.paper)
    first = _map(tiling, look)
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
    drawn = [LineString(_corners(template.cut))]
    nets = sorted(template.nets, key=edges.area, reverse=True)
    for loop in (*nets, *template.holes):
        run = [s for s in loop if not any(_lies_on(s, line) for line in drawn)]
        if run:
            found += (Stroke(edge, FINE, DASHED) for edge in _runs(run))
            drawn += (LineString(_corners(edge)) for edge in _runs(run))
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


def _corners(edge: Edge) -> list[Point]:
    return [*(p for s in edge for p in s.points()), edge[-1].end]


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


def bars(drawing: Drawing, level: Point, upright: Point) -> None:
    """A bar of 100 mm to the right of one point and another upwards from a second; a rule is laid
    to the outer edges of their end strokes, which are exactly that far apart."""
    text, half = f"{BAR:g} mm", THIN / 2.0
    for (x, y), ux, uy in ((level, 1.0, 0.0), (upright, 0.0, 1.0)):
        drawing.line((x, y), (x + BAR * ux, y + BAR * uy), THIN)
        for k in range(11):
            at = min(max(10.0 * k, half), BAR - half)
            high = _STROKE if k in (0, 10) else _STROKE / 2.5
            cx, cy = x + at * ux, y + at * uy
            drawing.line((cx - high * uy, cy - high * ux), (cx + high * uy, cy + high * ux), THIN)
    drawing.text((level[0] + BAR + 2.0, level[1] - SMALL / 2.0), text, SMALL, "start")
    drawing.text((upright[0] - _STROKE - 0.3, upright[1] + BAR / 2.0), text, SMALL, turn=90.0)


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


# --- the map --------------------------------------------------------------------------------------


def _map(tiling: Tiling, look: Look) -> list[Page]:
    """The map with as many of the words as there is room for, and pages for the rest."""
    template = tiling.template
    page, field = blank_page(look, say("{code}-map", code=template.code), template.shown, "1:1")
    standing = (word(DRY), look.rests)
    texts = [text for text in said(template, look.lengths) if text not in standing]
    texts = [heading(template), *_joining(tiling), _legend(template), *texts]
    figure, words = _parted(field, texts)
    texts = _set(page.drawing, words, texts)
    corner = figure.x + 6.0, figure.y + 4.0
    bars(page.drawing, (corner[0] + 4.0, corner[1]), (corner[0], corner[1] + 4.0))
    _draw_map(page.drawing, tiling, Box(
        figure.x + 14.0, figure.y + 10.0, figure.wide - 14.0, figure.high - 10.0))
    found = [page]
    while texts:
        page, field = blank_page(look, say(
            "{code}-words",
            code=template.code,
        ), template.shown, "1:1")
        texts = _set(page.drawing, field, texts)
        found.append(page)
    return found


def _set(drawing: Drawing, field: Box, texts: Sequence[str]) -> list[str]:
    """Sets as many texts as a field holds whole; those that it does not."""
    count = len(texts)
    while count > 1 and text_height(texts[:count], field.wide) > field.high:
        count -= 1
    text_block(drawing, field, texts[:count])
    return list(texts[count:])


def _joining(tiling: Tiling) -> list[str]:
    count = len(tiling.tiles)
    if count == 1:
        return [say("One sheet, {name}.", name=tiling.tiles[0].name)]
    return [
        say(
            "{count} sheets, joined as the map shows; row A is the uppermost. Trim each at its "
            "left and upper broken lines, through the middle of the marks; lay it on its "
            "neighbours so that the halves of the marks meet the whole ones of the same number; "
            "tape. Cut out with knife and straightedge, away from the hand.",
            count=count,
        ),
    ]


def _legend(template: Template) -> str:
    parts = [
        word("Full line: cut"),
        word("broken line: finished edges of the pieces, each of which has a template of its own")
        if len(template.nets) > 1
        else word("broken line: finished edge"),
    ]
    if template.axis and template.tool:
        parts.append(word("dash and dot: the axis and the tool's middle"))
    elif template.axis:
        parts.append(word("dash and dot: the axis"))
    elif template.tool:
        parts.append(word("dash and dot: the tool's middle"))
    if template.pins:
        parts.append(word("circles: holes for the pins"))
    return "; ".join(parts) + "."


def _parted(field: Box, texts: Sequence[str]) -> tuple[Box, Box]:
    """The fields for the figure and for the words: beside each other on paper that lies."""
    if field.wide > 1.2 * field.high:
        figure, words = field.columns(2, 8.0)
        return figure, words
    high = min(text_height(texts, field.wide) + 0.1, field.high - _FIGURE - 4.0)
    return field.below(field.top - high - 4.0), field.above(field.top - high)


def _draw_map(drawing: Drawing, tiling: Tiling, room: Box) -> None:
    cells = [tile.cell for tile in tiling.tiles]
    left, low = min(c.x for c in cells), min(c.y for c in cells)
    right, top = max(c.right for c in cells), max(c.top for c in cells)
    head = SMALL + 3.0
    scale = scale_for((right - left, top - low), (room.wide - 2.0 * head, room.high - 3.0 * head))
    factor = scale.factor
    x0 = room.x + head + (room.wide - head - factor * (right - left)) / 2.0
    y0 = room.y + (room.high - 2.0 * head - factor * (top - low)) / 2.0

    def at(p: Point) -> Point:
        return x0 + factor * (p[0] - left), y0 + factor * (p[1] - low)

    outline = tuple(
        segment.moved(tiling.turned).scaled(factor).moved(Motion(dx=x0 - factor * left,
                                                                 dy=y0 - factor * low))
        for segment in tiling.template.cut
    )
    for tile in tiling.tiles:
        (x, y), (r, t) = at((tile.cell.x, tile.cell.y)), at((tile.cell.right, tile.cell.top))
        drawing.rectangle(Box(x, y, r - x, t - y), THIN)
    drawing.edge(outline, THICK)
    for pin in tiling.template.pins:
        drawing.edge((Arc(at(tiling.turned.point(pin.at)), _HOLE, 0.0, 360.0),), MEDIUM)
    _name_cells(drawing, tiling, outline, at)
    text = say("Map of the sheets, {scale}", scale=scale)
    drawing.text((room.x + room.wide / 2.0, y0 + factor * (top - low) + head + 1.0), text, PLAIN)


def _name_cells(
    drawing: Drawing, tiling: Tiling, outline: Edge, at: Callable[[Point], Point]
) -> None:
    """The name in each cell, off the outline where it can be, all in the largest letters that
    do."""
    line = LineString(_corners(outline)).buffer(0.8)
    holes = [ShapelyPoint(at(tiling.turned.point(pin.at))) for pin in tiling.template.pins]
    line = unary_union([line, *(hole.buffer(_HOLE + 0.8) for hole in holes)])
    cells = []
    for tile in tiling.tiles:
        corners = (tile.cell.x, tile.cell.y), (tile.cell.right, tile.cell.top)
        cells.append(box(*(v for corner in corners for v in at(corner))).buffer(-0.8))
    for height in (LARGE, PLAIN, SMALL, LEAST):
        places = [
            placed(cell.difference(line), *block_size([tile.name], height),
                   (cell.centroid.x, cell.centroid.y), (0.0,))
            for tile, cell in zip(tiling.tiles, cells)
        ]  # fmt: skip
        if all(places) or height == LEAST:
            for tile, cell, place in zip(tiling.tiles, cells, places):
                middle = place[0] if place else (cell.centroid.x, cell.centroid.y)
                drawing.marks += set_lines([tile.name], height, middle, 0.0)
            return

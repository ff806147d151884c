# SPDX-License-Identifier: LGPL-2.1-or-later
"""The map of a template's sheets: how they are joined, what the lines are, and all that is said."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from shapely.geometry import LineString, box
from shapely.geometry import Point as ShapelyPoint
from shapely.ops import unary_union

from veneerwb.core.outlines.edge import Arc, Edge, Point
from veneerwb.core.plane import Motion
from veneerwb.core.shop.drawing.drawn import (
    MEDIUM,
    THICK,
    THIN,
    Drawing,
)
from veneerwb.core.shop.drawing.legible import LEAST
from veneerwb.core.shop.drawing.lettering import LARGE, PLAIN, SMALL
from veneerwb.core.shop.drawing.page import (
    Look,
    Page,
    blank_page,
    text_block,
    text_height,
)
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.drawing.scales import scale_for
from veneerwb.core.shop.pages.template_marks import bars, corners
from veneerwb.core.shop.templates.marks import (
    block_size,
    placed,
    set_lines,
)
from veneerwb.core.shop.templates.template import Template
from veneerwb.core.shop.templates.tiles import (
    Tiling,
)
from veneerwb.core.shop.templates.words import DRY, heading, said
from veneerwb.words import say, word

_HOLE = 0.9  # mm: half of a pin's hole on the map
_FIGURE = 112.0  # mm: the least height of the map, beside the upright bar


def map_pages(tiling: Tiling, look: Look) -> list[Page]:
    """The map with as many of the words as there is room for, and pages for the rest."""
    template = tiling.template
    page, field = blank_page(look, f"{template.code}-map", template.shown, "1:1")
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
        page, field = blank_page(look, f"{template.code}-words", template.shown, "1:1")
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
    line = LineString(corners(outline)).buffer(0.8)
    holes = [ShapelyPoint(at(tiling.turned.point(pin.at))) for pin in tiling.template.pins]
    line = unary_union([line, *(hole.buffer(_HOLE + 0.8) for hole in holes)])
    cells = []
    for tile in tiling.tiles:
        ends = (tile.cell.x, tile.cell.y), (tile.cell.right, tile.cell.top)
        cells.append(box(*(v for end in ends for v in at(end))).buffer(-0.8))
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

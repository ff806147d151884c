# SPDX-License-Identifier: LGPL-2.1-or-later
"""A template on sheets of the shop's paper at 1:1: what lies on which, as plain data.

The plane of the template is parted by trim lines into cells, rows A, B, ... from the top down and
columns 1, 2, ... from the left; cells in which nothing lies are left out. A page shows its cell and
OVERLAP / 2 more all round, so that neighbours share a strip with the trim line in its middle. On
the trim line lie register marks, printed on both pages: each page is trimmed at its left and its
upper line, through the middle of its marks, and laid on its neighbours so that the halves meet the
whole ones.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shapely.geometry import MultiLineString, Polygon, box
from shapely.geometry import Point as ShapelyPoint
from shapely.ops import unary_union
from shapely.prepared import prep

from veneerwb.core.errors import VeneerError
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge, Line, Point, Segment
from veneerwb.core.plane import TOUCH, Motion
from veneerwb.core.shop.drawing.paper import Box, Paper
from veneerwb.core.shop.templates.template import Template

OVERLAP = 15.0
MARGIN = 10.0
"""mm: printers leave up to some 6 mm blank."""
LEFT, FOOT = 10.0, 25.0
"""mm: the strips for the bars and the words of a page, left of and below what it shows."""
AIR = 3.0
"""mm: free all round what is drawn."""
MOST = 400
"""Sheets: more is a slip of the keyboard."""
REACH = 5.0
"""mm: half the room of a register mark, which keeps off all lines where it can."""
_SHARES = ((0.25, 0.2, 0.3, 0.15, 0.35, 0.1, 0.4), (0.75, 0.8, 0.7, 0.85, 0.65, 0.9, 0.6))
"""Where on a cell's side its two register marks may lie, the best first."""
_LONG = 100.0  # mm: straights that a template is tried to be laid level by


@dataclass(frozen=True)
class Tile:
    """A page: its `row` and `column` from 0, its `cell` and what it shows (`shown`), in mm of the
    turned template."""

    row: int
    column: int
    cell: Box
    shown: Box

    @property
    def name(self) -> str:
        return f"{row_name(self.row)}{self.column + 1}"


@dataclass(frozen=True)
class Register:
    """A mark on the trim line between two pages."""

    at: Point
    name: str
    tiles: tuple[str, str]


@dataclass(frozen=True)
class Tiling:
    """A template on sheets of `paper`: turned by `turn` degrees, shown on the field `field` of each
    page. `tiles` row by row."""

    template: Template
    paper: Paper
    turn: float
    field: Box
    tiles: tuple[Tile, ...]
    registers: tuple[Register, ...]

    @property
    def turned(self) -> Motion:
        """Template mm to mm of the turned template."""
        return Motion(self.turn)

    def onto(self, tile: Tile) -> Motion:
        """Template mm to mm of that page's paper."""
        dx, dy = self.field.x - tile.shown.x, self.field.y - tile.shown.y
        return Motion(dx=dx, dy=dy) @ self.turned

    def neighbour(self, tile: Tile, down: int, right: int) -> Tile | None:
        """The page so many rows below and columns to the right, if there is one."""
        place = tile.row + down, tile.column + right
        return next((t for t in self.tiles if (t.row, t.column) == place), None)

    def marks_on(self, tile: Tile) -> list[Register]:
        return [mark for mark in self.registers if tile.name in mark.tiles]


def row_name(row: int) -> str:
    """A to Z, then AA, AB ..."""
    text = ""
    while row >= 0:
        text = chr(ord("A") + row % 26) + text
        row = row // 26 - 1
    return text


def field_of(paper: Paper) -> Box:
    """What of a page shows the template."""
    return Box(
        MARGIN + LEFT, MARGIN + FOOT,
        paper.wide - 2.0 * MARGIN - LEFT, paper.high - 2.0 * MARGIN - FOOT,
    )  # fmt: skip


def tiled(template: Template, paper: Paper) -> Tiling:
    """The template on as few sheets of the paper as its turns by straights and right angles allow.

    VeneerError where that would be more than MOST.
    """
    field = field_of(paper)
    tries = [(turn, _tiles(template, turn, field)) for turn in _turns(template)]
    turn, tiles = min(tries, key=lambda one: (len(one[1]), tries.index(one)))
    if len(tiles) > MOST:
        raise VeneerError(
            "too-many-sheets",
            "At 1:1 this template takes {count} sheets of {paper}; the most is {most}: take larger "
            "paper.",
            count=len(tiles),
            paper=paper.called,
            most=MOST,
        )
    return Tiling(template, paper, turn, field, tiles, tuple(_registers(template, turn, tiles)))


def _turns(template: Template) -> list[float]:
    """As it is, on its side, and with each long straight level or upright."""
    found = [0.0, 90.0]
    for segment in template.cut:
        if isinstance(segment, Line) and segment.length >= _LONG:
            x, y = segment.slope(0.0)
            way = math.degrees(math.atan2(y, x))
            for turn in (-way, 90.0 - way):
                turn = math.remainder(turn, 180.0)
                if all(abs(math.remainder(turn - known, 180.0)) > 0.01 for known in found):
                    found.append(turn)
    return found


def drawn_area(template: Template) -> Polygon:
    """All that must be on some page (template mm)."""
    outer = edges.polygon(template.tool_line or template.cut)
    pins = [box(x - r, y - r, x + r, y + r)
            for (x, y), r in ((pin.at, pin.diameter / 2.0) for pin in template.pins)]
    return unary_union([outer, *pins]).buffer(AIR)


def drawn_lines(template: Template) -> MultiLineString:
    """All lines that a page shows (template mm), but the grain's arrow."""
    loops = [template.cut, *template.nets, *template.holes]
    loops += [template.tool_line] if template.tool_line else []
    runs = [[*edges.points(loop), loop[0].start] for loop in loops]
    if template.axis:
        runs.append([template.axis.a, template.axis.b])
    return MultiLineString(runs)


def _tiles(template: Template, turn: float, field: Box) -> tuple[Tile, ...]:
    area = Motion(turn).apply_to(drawn_area(template))
    x0, y0, x1, y1 = area.bounds
    across, down = field.wide - OVERLAP, field.high - OVERLAP
    columns, rows = _count(x1 - x0, across), _count(y1 - y0, down)
    left, top = (x0 + x1 - columns * across) / 2.0, (y0 + y1 + rows * down) / 2.0
    needed = prep(area)
    cells = {
        (row, column): Box(left + column * across, top - (row + 1) * down, across, down)
        for row in range(rows) for column in range(columns)
    }
    used = {place for place, cell in cells.items() if needed.intersects(_shape(cell))}
    if not _connected(used):  # a pin far off could not be joined to the rest
        used = set(cells)
    return tuple(
        Tile(*place, cell, cell.inset(-OVERLAP / 2.0))
        for place, cell in cells.items() if place in used
    )


def _count(size: float, step: float) -> int:
    """How many cells cover a size; the outermost show half an overlap more."""
    return max(1, math.ceil((size - OVERLAP) / step - 1e-9))


def _shape(cell: Box) -> Polygon:
    return box(cell.x, cell.y, cell.right, cell.top)


def _connected(places: set[tuple[int, int]]) -> bool:
    seen: set[tuple[int, int]] = set()
    ahead = [min(places)]
    while ahead:
        row, column = ahead.pop()
        if (row, column) in places and (row, column) not in seen:
            seen.add((row, column))
            ahead += [(row + 1, column), (row - 1, column), (row, column + 1), (row, column - 1)]
    return seen == places


def _registers(
    template: Template, turn: float, tiles: tuple[Tile, ...]
) -> Iterator[Register]:
    """Two marks on each side that two pages share."""
    by_place = {(tile.row, tile.column): tile for tile in tiles}
    lines = Motion(turn).apply_to(drawn_lines(template))
    number = 0
    for (row, column), tile in by_place.items():
        cell = tile.cell
        right, below = by_place.get((row, column + 1)), by_place.get((row + 1, column))
        sides = [
            (right, (cell.right, cell.top), (cell.right, cell.y)),
            (below, (cell.x, cell.y), (cell.right, cell.y)),
        ]
        for other, a, b in sides:
            for shares in _SHARES if other else ():
                number += 1
                at = _clear_place(lines, Line(a, b), shares)
                yield Register(at, str(number), (tile.name, other.name))


def _clear_place(lines: MultiLineString, side: Line, shares: Sequence[float]) -> Point:
    places = [side.at(share) for share in shares]
    clear = (p for p in places if lines.distance(ShapelyPoint(p)) > 1.5 * REACH)
    return next(clear, places[0])


def clipped(edge: Edge, field: Box) -> list[Edge]:
    """The runs of an edge that lie within a field, true segments still."""
    runs: list[list[Segment]] = []
    for segment in edge:
        for part in _split(segment, field):
            x, y = part.at(0.5)
            if not (field.x <= x <= field.right and field.y <= y <= field.top):
                continue
            if runs and math.dist(runs[-1][-1].end, part.start) <= TOUCH:
                runs[-1].append(part)
            else:
                runs.append([part])
    if len(runs) > 1 and math.dist(runs[-1][-1].end, runs[0][0].start) <= TOUCH:
        runs[0] = [*runs.pop(), *runs[0]]
    return [tuple(run) for run in runs]


def _split(segment: Segment, field: Box) -> list[Segment]:
    sides = ((0.0, field.x), (0.0, field.right), (90.0, field.y), (90.0, field.top))
    shares = {share for normal, offset in sides for share in segment.crossings(normal, offset)}
    if not shares:
        return [segment]
    ordered = [0.0, *sorted(shares), 1.0]
    return [segment.part(a, b) for a, b in zip(ordered, ordered[1:])]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the pages share: the field that is free, and a figure beside its words."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from veneerwb.core.shop.drawing.drawn import Drawing
from veneerwb.core.shop.drawing.legible import bounds
from veneerwb.core.shop.drawing.lettering import PITCH, PLAIN, SMALL, fitted, width
from veneerwb.core.shop.drawing.page import DRY_LAY, Look, Page, blank_page, text_block, text_height
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.drawing.scales import SCALES, Scale
from veneerwb.words import marked, word

SHOW = marked("Seen from the show face.")
LEAST_WORDS, MOST_WORDS = 58.0, 96.0
"""mm: how wide the words beside a figure are."""
LARGE_FIELD = 500.0
"""mm: in wider fields words are written larger."""
BETWEEN = 8.0


def free(look: Look, standing: Sequence[str] = (DRY_LAY,)) -> Box:
    """The field that a page has for its contents."""
    return blank_page(look, "", "", "", standing)[1]


@dataclass(frozen=True)
class Parted:
    """A field parted in one for the figure and one for the words, which stand `beside` it or below
    it in letters of `height` mm."""

    figure: Box
    words: Box
    beside: bool
    height: float

    def write(self, drawing: Drawing, title: str, texts: Sequence[str]) -> Box:
        """The words, beside a figure under their title; what is left of their field."""
        box = heading(drawing, self.words, title) if self.beside else self.words
        return self.words.below(text_block(drawing, box, texts, self.height, self.beside))


def partings(field: Box, texts: Sequence[str], extra: float = 0.0) -> list[Parted]:
    """How a field may be parted: words left of the figure, words below it. `extra`: mm of height
    that more than the texts is wanted below them."""
    height = PLAIN if field.wide >= LARGE_FIELD else SMALL
    found = []
    wide = min(MOST_WORDS * height / SMALL, max(LEAST_WORDS, 0.27 * field.wide))
    taken = text_height(texts, wide, height) + HEAD + extra
    if taken <= field.high and field.wide - wide >= 90.0:
        figure_ = Box(field.x + wide + BETWEEN, field.y, field.wide - wide - BETWEEN, field.high)
        found.append(Parted(figure_, Box(field.x, field.y, wide, field.high), True, height))
    high = text_height(texts, field.wide, height, between=False) + extra + 2.0
    if field.high - high >= 60.0:
        words = Box(field.x, field.y, field.wide, high)
        found.append(Parted(field.above(words.top + 4.0), words, False, height))
    if field.high > field.wide:
        found.reverse()
    return found or [Parted(field, Box(field.x, field.y, field.wide, 0.0), False, height)]


HEAD = PLAIN + PITCH * SMALL
"""mm: how high a heading is."""


def heading(drawing: Drawing, box: Box, text: str) -> Box:
    """A heading at the top of a field, made smaller where it is too long; what is left below
    it."""
    line, height = word(text), PLAIN
    if width(line, height) > box.wide:
        line, height = fitted(line, box.wide, PLAIN)
    drawing.text((box.x, box.top - PLAIN), line, height, "start")
    return box.below(box.top - HEAD)


@dataclass(frozen=True)
class Figure:
    """A figure drawn at its scale, and the box that it fills on its drawing."""

    drawing: Drawing
    box: Box
    scale: Scale

    def put(self, on: Drawing, x: float, y: float) -> None:
        """Its lower left corner at (x, y)."""
        on.put(self.drawing, x - self.box.x, y - self.box.y)

    def centred(self, on: Drawing, box: Box, share: float = 0.5) -> None:
        """In the middle of a field, `share` of what is left over below it."""
        spare = box.high - self.box.high
        self.put(on, box.x + (box.wide - self.box.wide) / 2.0, box.y + share * spare)


def figure(
    draw: Callable[[Drawing, float], None], size: tuple[float, float], room: tuple[float, float]
) -> Figure:
    """What `draw` draws at the largest scale (its second argument, mm of the paper for one) at
    which it fits the room with all its words; the smallest there is if it fits at none. `size`:
    of the thing itself, mm."""
    made = None
    for scale in SCALES:
        if any(have * scale.factor > most + 1e-9 for have, most in zip(size, room)):
            continue
        drawing = Drawing(*room)
        draw(drawing, scale.factor)
        made = Figure(drawing, bounds(drawing.marks), scale)
        if made.box.wide <= room[0] + 1e-9 and made.box.high <= room[1] + 1e-9:
            break
        if scale.factor * max(size) < 1.0:
            break
    assert made is not None
    return made


@dataclass(frozen=True)
class Cell:
    """Part of a page: `least` tells how high it is at least where it is so wide (mm); `draw` draws
    it in a box and tells its scale ("" for none), and what found no room."""

    least: Callable[[float], float]
    draw: Callable[[Drawing, Box], tuple[str, list[Cell]]]


NARROWEST = 168.0
"""mm: a column of cells is at least as wide."""
GAP = 10.0


def cell_pages(
    look: Look, code: str, title: str, cells: Sequence[Cell],
    standing: Sequence[str] = (DRY_LAY,),
) -> list[Page]:  # fmt: skip
    """Cells in columns and rows over as many pages as they need, as large as those have room
    for."""
    field = free(look, standing)
    columns = min(max(1, int((field.wide + GAP) / (NARROWEST + GAP))), len(cells))
    wide = (field.wide - (columns - 1) * GAP) / columns
    left, found = list(cells), []
    while left:
        rows = _rows(left, columns, wide, field.high)
        here, left = left[: columns * rows], left[columns * rows :]
        page, more = _cell_page(look, code, title, here, (columns, rows), standing)
        found.append(page)
        left = [*more, *left]
    return found


def _rows(cells: Sequence[Cell], columns: int, wide: float, high: float) -> int:
    """In how many rows the next cells go on a page: no more than what is left needs."""

    def fits(rows: int) -> bool:
        least = max(cell.least(wide) for cell in cells[: rows * columns])
        return rows * least + (rows - 1) * GAP <= high

    most = 1
    while most * columns < len(cells) and fits(most + 1):
        most += 1
    pages = math.ceil(len(cells) / (most * columns))
    return math.ceil(len(cells) / (pages * columns))


def _cell_page(
    look: Look, code: str, title: str, cells: Sequence[Cell], grid: tuple[int, int],
    standing: Sequence[str],
) -> tuple[Page, list[Cell]]:  # fmt: skip
    field, made = free(look, standing), Drawing(look.paper.wide, look.paper.high)
    columns, rows = grid
    boxes = [box for row in field.rows(rows, GAP) for box in row.columns(columns, GAP)]
    drawn = [cell.draw(made, box) for cell, box in zip(cells, boxes)]
    page, _ = blank_page(look, code, title, one_scale(scale for scale, _ in drawn), standing)
    page.drawing.put(made, 0.0, 0.0)
    return page, [cell for _, more in drawn for cell in more]


def one_scale(scales: Iterable[str]) -> str:
    """What stands in the title block where a page has several figures."""
    there = {scale for scale in scales if scale}
    return there.pop() if len(there) == 1 else word("as shown") if there else ""

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pages of pictures with their words beside them, and of tables, set row by row."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from veneerwb.core.shop.drawing.drawn import Drawing
from veneerwb.core.shop.drawing.lettering import PLAIN, fitted
from veneerwb.core.shop.drawing.page import (
    DRY_LAY,
    Look,
    Page,
    blank_page,
    table,
    text_block,
    text_height,
)
from veneerwb.core.shop.drawing.paper import Box

NARROWEST = 165.0
"""mm: a column is at least as wide."""
PICTURE, LEAST, MOST = 0.38, 46.0, 1.6
"""The picture's share of a cell's width, how high it is at least (mm), and how many times as high
as it is wide at most."""
BETWEEN, GAP, ROW_GAP = 5.0, 10.0, 7.0
WIDEST = 240.0
"""mm: a cell over a table is no wider."""
HEAD = PLAIN + 2.5


@dataclass(frozen=True)
class Told:
    """A cell: its `heading`, what is said, what draws its `picture` in a box, and how high that is
    at least, mm."""

    heading: str
    texts: tuple[str, ...]
    picture: Callable[[Drawing, Box], None]
    tall: float = LEAST

    def least(self, wide: float) -> float:
        return HEAD + max(self.tall, text_height(self.texts, _words(wide)))

    def draw(self, drawing: Drawing, box: Box) -> None:
        line, height = fitted(self.heading, box.wide, PLAIN)
        drawing.text((box.x, box.top - PLAIN), line, height, "start")
        field = box.below(box.top - HEAD)
        words = _words(box.wide)
        wide = field.wide - words - BETWEEN
        high = min(field.high, MOST * wide)
        self.picture(drawing, Box(field.x, field.top - high, wide, high))
        text_block(drawing, Box(field.right - words, field.y, words, field.high), self.texts)


def _words(wide: float) -> float:
    return wide * (1.0 - PICTURE) - BETWEEN


def told_pages(look: Look, code: str, title: str, cells: Sequence[Told]) -> list[Page]:
    """Cells from left to right and row by row, each row as high as it must be; what is left over on
    a page makes its rows higher alike."""
    return [page for page, _ in _told(look, code, title, cells, (DRY_LAY,), True)]


def _told(
    look: Look, code: str, title: str, cells: Sequence[Told], standing: Sequence[str],
    stretched: bool,
) -> list[tuple[Page, Box]]:  # fmt: skip
    """The pages, and what of the field is free below the last row of each."""
    found: list[tuple[Page, Box]] = []
    left = list(cells)
    while left:
        page, field = blank_page(look, code, title, "", standing)
        columns = min(max(1, int((field.wide + GAP) / (NARROWEST + GAP))), len(cells))
        wide = min(WIDEST, (field.wide - (columns - 1) * GAP) / columns)
        rows: list[tuple[float, list[Told]]] = []
        used = 0.0
        while left:
            row = left[:columns]
            high = max(cell.least(wide) for cell in row)
            if rows and used + high + ROW_GAP > field.high:
                break
            used += high + (ROW_GAP if rows else 0.0)
            rows.append((min(high, field.high), row))
            left = left[columns:]
        spread = stretched and (left or len(rows) > 2)
        more = max(0.0, field.high - used) / len(rows) if spread else 0.0
        top = field.top
        for high, row in rows:
            for k, cell in enumerate(row):
                box = Box(field.x + k * (wide + GAP), top - high - more, wide, high + more)
                cell.draw(page.drawing, box)
            top -= high + more + ROW_GAP
        found.append((page, field.below(max(top, field.y))))
    return found


def table_pages(
    look: Look, code: str, title: str, headings: Sequence[str], rows: Sequence[Sequence[str]],
    before: Sequence[Told] = (), standing: Sequence[str] = (DRY_LAY,), columns: int = 1,
) -> list[Page]:  # fmt: skip
    """A table over as many pages as it needs, in `columns` beside each other; `before`: cells that
    stand above it on the first."""
    pages = _told(look, code, title, before, standing, False)
    found = [page for page, _ in pages]
    fields = [pages[-1]] if pages and pages[-1][1].high >= LEAST else []
    left = list(rows)
    while left:
        page, field = fields.pop() if fields else blank_page(look, code, title, "", standing)
        for box in field.columns(columns, GAP):
            if left:
                _, rest = table(page.drawing, box, headings, left)
                if len(rest) == len(left) and field.high > 4 * LEAST:
                    rest = left[1:]  # a row higher than the page
                left = list(rest)
        if page not in found:
            found.append(page)
    return found

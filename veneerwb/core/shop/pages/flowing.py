# SPDX-License-Identifier: LGPL-2.1-or-later
"""Sections of words and tables that flow through the columns of as many pages as they need, beside
a figure on the first where there is one."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from veneerwb.core.shop.drawing.drawn import Drawing
from veneerwb.core.shop.drawing.lettering import PITCH, PLAIN, SMALL, fitted
from veneerwb.core.shop.drawing.page import (
    DRY_LAY,
    Look,
    Page,
    blank_page,
    row_height,
    table,
    text_block,
    text_height,
)
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages.kit import free

COLUMN, BETWEEN = 108.0, 8.0
"""mm: columns are at least so wide, and so far apart."""
HALF = PITCH * SMALL / 2.0
HEAD = PLAIN + PITCH * SMALL
LEAST_ROWS = 3
"""Rows of a table that are not parted from its headings."""
SHORTER = tuple(k / 20.0 for k in range(19, 5, -1))
"""Shares of the page's height to which columns may be shortened, so that they are alike."""
FIGURE_HIGH = 0.55
"""Of a page with one column: the figure above its words."""


@dataclass(frozen=True)
class Table:
    """Headings and rows."""

    headings: Sequence[str]
    rows: Sequence[Sequence[str]]


@dataclass(frozen=True)
class Picture:
    """What is drawn in a field as wide as the column and `high` mm high."""

    high: float
    draw: Callable[[Drawing, Box], None]


Item = str | Table | Picture


@dataclass(frozen=True)
class Section:
    """A heading and what stands under it."""

    title: str
    items: Sequence[Item]


Drawn = Callable[[Drawing, Box], str]
"""Draws a figure in a field and tells its scale."""


def flowed(
    look: Look,
    code: str,
    title: str,
    sections: Sequence[Section],
    figure: Drawn | None = None,
    standing: Sequence[str] = (DRY_LAY,),
) -> list[Page]:
    """The sections on pages, columns about equally long; pages after the first are called
    `code`-2 ..."""

    def made(share: float) -> list[Page]:
        return _Flow(look, code, title, tuple(standing), figure, share).pages(sections)

    found = made(1.0)
    for share in SHORTER:
        fewer = made(share)
        if len(fewer) > len(found):
            break
        found = fewer
    return found


class _Flow:
    def __init__(
        self, look: Look, code: str, title: str, standing: tuple[str, ...],
        figure: Drawn | None, share: float,
    ) -> None:  # fmt: skip
        self._look, self._code, self._title, self._standing = look, code, title, standing
        self._figure, self._share = figure, share
        self._pages: list[Page] = []
        self._columns: list[Box] = []
        self._y = 0.0

    def pages(self, sections: Iterable[Section]) -> list[Page]:
        self._begin()
        for section in sections:
            self._section(section)
        return self._pages

    # --- where ---------------------------------------------------------------------------------

    @property
    def _drawing(self) -> Drawing:
        return self._pages[-1].drawing

    @property
    def _box(self) -> Box:
        return self._columns[0].below(self._y)

    def _begin(self) -> None:
        """A page with its columns."""
        field = free(self._look, self._standing)
        count = max(1, int((field.wide + BETWEEN) / (COLUMN + BETWEEN)))
        columns, scale, made = field.columns(count, BETWEEN), "", None
        if self._figure and not self._pages:
            made = Drawing(self._look.paper.wide, self._look.paper.high)
            place = Box(field.x, field.y, columns[-1].x - BETWEEN - field.x, field.high)
            columns = columns[-1:]
            if count == 1:
                place = field.above(field.top - FIGURE_HIGH * field.high)
                columns = [field.below(place.y - BETWEEN)]
            scale = self._figure(made, place)
        else:
            columns = [box.above(box.top - self._share * box.high) for box in columns]
        code = f"{self._code}-{len(self._pages) + 1}" if self._pages else self._code
        page, _ = blank_page(self._look, code, self._title, scale, self._standing)
        if made:
            page.drawing.put(made, 0.0, 0.0)
        self._pages.append(page)
        self._columns, self._y = columns, columns[0].top

    def _next(self) -> None:
        """The next column, on the next page where there is none."""
        self._columns = self._columns[1:]
        if self._columns:
            self._y = self._columns[0].top
        else:
            self._begin()

    @property
    def _fresh(self) -> bool:
        return self._y >= self._columns[0].top - 1e-9

    # --- what ----------------------------------------------------------------------------------

    def _section(self, section: Section) -> None:
        if not self._fresh:
            self._y -= HALF
        if self._box.high < HEAD + self._least(section.items[0]) and not self._fresh:
            self._next()
        line, height = fitted(section.title, self._box.wide, PLAIN)
        self._drawing.text((self._box.x, self._y - PLAIN), line, height, "start")
        self._y -= HEAD
        for item in section.items:
            self._item(item)

    def _least(self, item: Item) -> float:
        """mm that the item needs, or its beginning."""
        if isinstance(item, str):
            return text_height([item], self._columns[0].wide)
        if isinstance(item, Picture):
            return item.high
        return row_height() * (1 + min(LEAST_ROWS, len(item.rows)))

    def _item(self, item: Item) -> None:
        if self._least(item) > self._box.high and not self._fresh:
            self._next()
        if isinstance(item, str):
            self._y = text_block(self._drawing, self._box, [item]) - HALF
        elif isinstance(item, Picture):
            item.draw(self._drawing, self._box.above(self._y - item.high))
            self._y -= item.high + HALF
        else:
            self._table(item)

    def _table(self, item: Table) -> None:
        low, left = table(self._drawing, self._box, item.headings, item.rows)
        while left:
            before = len(left)
            self._next()
            low, left = table(self._drawing, self._box, item.headings, left)
            if len(left) == before:  # a row higher than a column: nothing more can be done
                break
        self._y = low - 2.0 * HALF

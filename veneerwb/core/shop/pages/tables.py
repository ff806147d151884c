# SPDX-License-Identifier: LGPL-2.1-or-later
"""Tables over as many columns and pages as they need, each beginning with the headings."""

from __future__ import annotations

from collections.abc import Sequence

from veneerwb.core.shop.drawing.lettering import PLAIN, SMALL
from veneerwb.core.shop.drawing.page import (
    DRY_LAY,
    Look,
    Page,
    blank_page,
    table,
    table_height,
    table_width,
    text_block,
)
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages.kit import heading
from veneerwb.words import say, word

BETWEEN = 8.0


def table_pages(
    look: Look, code: str, title: str, headings: Sequence[str], rows: Sequence[Sequence[str]],
    texts: Sequence[str] = (), standing: Sequence[str] = (DRY_LAY,), height: float = 0.0,
    widest: float = 400.0,
) -> list[Page]:  # fmt: skip
    """The rows of a table, in letters of `height` mm (0: larger ones where all fit one column) and
    no wider than `widest` mm, below its `texts`, which stand on the first page only."""
    found: list[Page] = []
    left = list(rows)
    while left or not found:
        page, field = blank_page(look, code, title, "", standing)
        named = say("{title}, continued", title=word(title)) if found else title
        rest = heading(page.drawing, field, named)
        y = rest.top
        if not found and any(texts):
            y = text_block(page.drawing, rest, texts, between=False) - 3.0
        body = rest.below(y)
        height = height or _height(body, headings, rows)
        wide = table_width(headings, rows, min(field.wide, widest), height)
        columns = max(1, int((field.wide + BETWEEN) / (wide + BETWEEN)))
        for box in body.columns(columns, BETWEEN):
            before = len(left)
            if left:
                _, left = table(page.drawing, box, headings, left, height)
            if len(left) == before:
                break
        found.append(page)
        if len(found) > 1 and len(left) == len(rows):
            raise ArithmeticError("a row of the table is higher than the page")
    return found


def _height(box: Box, headings: Sequence[str], rows: Sequence[Sequence[str]]) -> float:
    large = table_width(headings, rows, 1e4, PLAIN) <= box.wide
    return PLAIN if large and table_height(headings, rows, box.wide, PLAIN) <= box.high else SMALL

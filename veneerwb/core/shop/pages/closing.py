# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages on closing the ring: how much over to cut, and how to true what was cut. Words and
tables stand in columns beside the figures, or on a page of their own where there is no room."""

from __future__ import annotations

from collections.abc import Sequence

from veneerwb.core.shop.closing import Closing, said
from veneerwb.core.shop.drawing.drawn import Drawing
from veneerwb.core.shop.drawing.lettering import PITCH, SMALL
from veneerwb.core.shop.drawing.page import (
    DRY_LAY,
    Look,
    Page,
    blank_page,
    table,
    table_least,
    text_block,
    text_height,
)
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages import closing_figures as figures
from veneerwb.words import marked, say, word

COLUMN, BETWEEN = 92.0, 6.0
"""mm: how wide a column of words is at least, and what lies between two."""
LEAST_FIGURE = 88.0
"""mm: narrower fields hold no figure."""
HALF = PITCH * SMALL / 2.0
HEAD = marked("To scale {scale}: as trued; dashed: as planned; red: trued")
SEEN = marked("Seen from the show face, positions counter-clockwise.")
STANDING = (SEEN, DRY_LAY)
Item = str | said.Table


def pages(closing: Closing, look: Look) -> list[Page]:
    """The page on what to cut, and, where the ring has been measured, that on truing it."""

    plain = look.lengths.length

    def length(mm: float) -> str:
        return plain(mm) if look.lengths.unit == "inch" else _with_unit(plain(mm))

    found = _pages(_before_only(closing), look, "closing", word("Closing the ring: before cutting"),
                   _before(closing, length, plain))  # fmt: skip
    if closing.after is not None:
        found += _pages(closing, look, "closing-cut", word("Closing the ring: as cut"),
                        _after(closing, length, plain))  # fmt: skip
    return found


def _with_unit(text: str) -> str:
    """600.0 mm, 600.0 mm (23 5/8 in)."""
    first, _, rest = text.partition(" ")
    return f"{first} mm {rest}".rstrip()


def _before_only(closing: Closing) -> Closing:
    return Closing(closing.before)


def _before(closing: Closing, length: said.Length, plain: said.Length) -> list[Item]:
    before = closing.before
    return [
        *said.steps_before(before, length), *said.price(before, length),
        said.offers(before, plain), *said.expect(before, length), said.caution(),
    ]  # fmt: skip


def _after(closing: Closing, length: said.Length, plain: said.Length) -> list[Item]:
    items: list[Item] = [
        *said.found_after(closing, length), *said.steps_after(closing, length),
    ]  # fmt: skip
    if closing.at.parts[0].trued:
        items.append(said.ends(closing.at, plain))
    if len(closing.after.diameters) > 1:
        items.append(said.diameters(closing, plain))
    return [*items, said.wedges(closing), said.caution()]


def _pages(
    closing: Closing, look: Look, code: str, title: str, items: Sequence[Item]
) -> list[Page]:
    field = blank_page(look, code, title, standing=STANDING)[1]
    needed = [table_least(*item) for item in items if not isinstance(item, str)]
    column = max([COLUMN, *needed])
    for count in (1, 2, 3):
        wide = count * column + (count - 1) * BETWEEN
        if field.wide - wide - BETWEEN < LEAST_FIGURE:
            break
        if not _flowed(Drawing(1.0, 1.0), _columns(field, wide, count), items):
            figure = Box(field.x + wide + BETWEEN, field.y, field.wide - wide - BETWEEN, field.high)
            page = _figured(closing, look, code, title, figure)
            _flowed(page.drawing, _columns(field, wide, count), items)
            return [page]
    found, left = [_figured(closing, look, code, title, field)], list(items)
    while left:
        page, box = blank_page(look, f"{code}-{len(found) + 1}", title, standing=STANDING)
        count = max(1, int((box.wide + BETWEEN) // (column + BETWEEN)))
        left = _flowed(page.drawing, box.columns(count, BETWEEN), left)
        found.append(page)
    return found


def _columns(field: Box, wide: float, count: int) -> list[Box]:
    return Box(field.x, field.y, wide, field.high).columns(count, BETWEEN)


def _figured(closing: Closing, look: Look, code: str, title: str, box: Box) -> Page:
    """A page with the two figures in `box`."""
    one, two = figures.both(box)
    trial = Drawing(1.0, 1.0)
    scale = figures.to_scale(trial, figures.headed(trial, one, say(HEAD, scale="1:00")), closing)
    page, _ = blank_page(look, code, title, str(scale), STANDING)
    drawing = page.drawing
    head = figures.headed(drawing, one, say(HEAD, scale=str(scale)))
    figures.to_scale(drawing, head, closing)
    factor = figures.times(closing.at)
    head = say("As taped, apart, what is off {factor} times as large; grey: off", factor=factor)
    figures.enlarged(drawing, figures.headed(drawing, two, head), closing.at, closing.angles)
    return page


# --- columns --------------------------------------------------------------------------------------


def _flowed(drawing: Drawing, columns: Sequence[Box], items: Sequence[Item]) -> list[Item]:
    """Words and tables set from the top of the first column on; those that found no room."""
    left = list(items)
    for column in columns:
        y = column.top
        while left:
            box, item = column.below(y), left[0]
            if isinstance(item, str):
                if text_height([item], box.wide) > box.high + 1e-9:
                    break
                y = text_block(drawing, box, [item]) - HALF
            else:
                y, rest = _table(drawing, box, item)
                if rest:
                    left[0] = (item[0], rest)
                    break
            left.pop(0)
    return left


def _table(drawing: Drawing, box: Box, item: said.Table) -> tuple[float, list]:
    """A table, or as many of its rows as fit, at least one with its headings."""
    heads, rows = item
    trial = Drawing(1.0, 1.0)
    _, rest = table(trial, box, heads, rows)
    if len(rest) == len(rows):
        return box.top, list(rows)
    y, rest = table(drawing, box, heads, rows)
    return y - 2.0 * HALF, rest

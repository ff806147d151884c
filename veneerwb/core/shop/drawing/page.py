# SPDX-License-Identifier: LGPL-2.1-or-later
"""A page for the shop: a drawing that fills the paper, with its frame and title block.

The fields of the title block follow ISO 7200:2004 (owner, identification number, date, sheet,
title, approved by, created by, document type); those of the layout are ours.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace

from veneerwb.core.shop.drawing.drawn import MEDIUM, THICK, THIN, Drawing, Letters
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.lettering import (
    PITCH,
    PLAIN,
    SMALL,
    clean,
    fitted,
    unbroken,
    width,
    wrapped,
)
from veneerwb.core.shop.drawing.paper import PAPERS, Box, Paper
from veneerwb.words import marked, word

DRY_LAY = marked(
    "Dry-lay before glue: all pieces in order, show face up, every seam in raking light."
)
LABEL = 2.5
"""mm: height of the letters that say what a field of the title block holds."""
ROW, BLOCK = 12.0, 180.0
HEAVY = 0.7
"""mm: the line of the frame (ISO 5457)."""
CELLS = {
    "title": (marked("Title"), 0, 0.0, 80.0),
    "kind": (marked("Document type"), 0, 80.0, 56.0),
    "number": (marked("Identification number"), 0, 136.0, 44.0),
    "top": (marked("Top"), 1, 0.0, 52.0),
    "bundle": (marked("Bundle"), 1, 52.0, 32.0),
    "owner": (marked("Owner"), 1, 84.0, 36.0),
    "drawn_by": (marked("Created by"), 1, 120.0, 30.0),
    "approved_by": (marked("Approved by"), 1, 150.0, 30.0),
    "revision": (marked("Revision mark"), 2, 0.0, 32.0),
    "date": (marked("Date"), 2, 32.0, 26.0),
    "scale": (marked("Scale"), 2, 58.0, 28.0),
    "unit": (marked("Dimensions in"), 2, 86.0, 34.0),
    "paper": (marked("Paper"), 2, 120.0, 30.0),
    "sheet": (marked("Sheet"), 2, 150.0, 30.0),
}
"""Fields of the title block by role: label, row from the top, place and width, mm."""


@dataclass(frozen=True)
class Look:
    """How all pages of a layout look, and what their title blocks say. `rests` is the sentence on
    what the registers of the bundle rest, empty where there are none."""

    paper: Paper = PAPERS["A3"]
    lengths: Lengths = field(default_factory=Lengths)
    title: str = ""
    number: str = ""
    owner: str = ""
    drawn_by: str = ""
    approved_by: str = ""
    date: str = ""
    revision: str = ""
    top: str = ""
    bundle: str = ""
    rests: str = ""


@dataclass(frozen=True)
class Page:
    """One page: `code` is a short name for files ("plan"), `title` what the sheet shows, `drawing`
    the whole paper."""

    code: str
    title: str
    drawing: Drawing
    paper: Paper


def blank_page(
    look: Look, code: str, title: str, scale: str = "", standing: Sequence[str] = (DRY_LAY,)
) -> tuple[Page, Box]:
    """A page with frame, title block and standing words (`look.rests` first), and the field that is
    free. `title` and `standing` may be marked texts."""
    paper, title = look.paper, word(title)
    drawing = Drawing(paper.wide, paper.high)
    drawing.rectangle(paper.frame, HEAVY)
    block = Box(paper.frame.right - BLOCK, paper.frame.y, BLOCK, 3.0 * ROW)
    _title_block(drawing, block, look, title, scale)
    inner = paper.frame.inset(4.0)
    foot = _standing(drawing, paper.frame, block, [look.rests, *map(word, standing)])
    return Page(code, title, drawing, paper), inner.above(foot + 4.0)


def _standing(drawing: Drawing, frame: Box, block: Box, texts: Iterable[str]) -> float:
    """Words left of the title block where there is room, else above it; the height below which the
    paper is taken."""
    texts = [text for text in texts if text]
    left = Box(frame.x + 4.0, frame.y + 2.0, block.x - frame.x - 8.0, block.high - 4.0)
    if left.wide >= 90.0:
        text_block(drawing, left, texts)
        return block.top
    wide = Box(frame.x + 4.0, block.top, frame.wide - 8.0, 40.0)
    high = text_height(texts, wide.wide, between=False)
    text_block(drawing, replace(wide, high=high + 3.0), texts, between=False)
    return block.top + high + 3.0


def _title_block(drawing: Drawing, block: Box, look: Look, title: str, scale: str) -> None:
    values = {
        "title": look.title, "kind": title, "number": look.number, "top": look.top,
        "bundle": look.bundle, "owner": look.owner, "drawn_by": look.drawn_by,
        "approved_by": look.approved_by, "revision": look.revision, "date": look.date,
        "scale": scale, "unit": look.lengths.said, "paper": look.paper.called, "sheet": "",
    }  # fmt: skip
    drawing.rectangle(block, THICK)
    for row in (1, 2):
        y = block.top - ROW * row
        drawing.line((block.x, y), (block.right, y), THIN)
    for role, (label, _, x, _) in CELLS.items():
        box = _cell(block, role)
        if x:
            drawing.line((box.x, box.y), (box.x, box.top), THIN)
        line, height = fitted(word(label), box.wide - 2.4, LABEL)
        drawing.text((box.x + 1.2, box.top - 0.9 - LABEL), line, height, "start")
        _enter(drawing, box, values[role])


def _cell(block: Box, role: str) -> Box:
    _, row, x, wide = CELLS[role]
    return Box(block.x + x, block.top - ROW * (row + 1), wide, ROW)


def _enter(drawing: Drawing, box: Box, text: str) -> None:
    """A field's text: on one line, or on two of small letters where it is long."""
    room = box.wide - 2.4
    broken = wrapped(text, room, SMALL)
    if not broken:
        return
    if len(broken) == 1:
        line, height = fitted(text, room, PLAIN)
        drawing.text((box.x + 1.2, box.y + 2.0), line, height, "start")
        return
    second = fitted(" ".join(broken[1:]), room, SMALL)[0]
    for k, line in enumerate((second, fitted(broken[0], room, SMALL)[0])):
        drawing.text((box.x + 1.2, box.y + 0.9 + k * (SMALL + 0.9)), line, SMALL, "start")


def numbered(pages: Sequence[Page]) -> list[Page]:
    """The pages with their numbers (1/5 ...) in the title block; the drawings given are kept."""
    return [_numbered(page, f"{k}/{len(pages)}") for k, page in enumerate(pages, start=1)]


def _numbered(page: Page, text: str) -> Page:
    copy = Drawing(page.drawing.wide, page.drawing.high)
    copy.marks = list(page.drawing.marks)
    frame = page.paper.frame
    block = Box(frame.right - BLOCK, frame.y, BLOCK, 3.0 * ROW)
    _enter(copy, _cell(block, "sheet"), text)
    return replace(page, drawing=copy)


# --- words and tables -----------------------------------------------------------------------------


def text_height(
    texts: Iterable[str], wide: float, height: float = SMALL, between: bool = True
) -> float:
    """How high `text_block` sets the paragraphs `wide` mm wide, mm."""
    blocks = [wrapped(text, wide, height) for text in texts if text]
    lines = sum(map(len, blocks)) + (max(0, len(blocks) - 1) * 0.5 if between else 0.0)
    return PITCH * height * lines


def text_block(
    drawing: Drawing, box: Box, texts: Iterable[str], height: float = SMALL, between: bool = True
) -> float:
    """Sets paragraphs from the top of `box` down, half a line between them; returns the height of
    the paper below which it is free. What does not fit ends in "..." on the last line: ask
    `text_height` first where all must be read."""
    y, pitch = box.top, PITCH * height
    for k, text in enumerate(text for text in texts if text):
        y -= 0.5 * pitch if k and between else 0.0
        for line in wrapped(text, box.wide, height):
            if y - pitch < box.y - 1e-9:
                _cut_off(drawing)
                return y
            y -= pitch
            drawing.text((box.x, y + 0.25 * height), line, height, "start")
    return y


def _cut_off(drawing: Drawing) -> None:
    """Marks the line written last as going on."""
    last = drawing.marks[-1] if drawing.marks else None
    if isinstance(last, Letters) and not last.text.endswith("..."):
        drawing.marks[-1] = replace(last, text=last.text.rstrip(" .,;") + " ...")


def table(
    drawing: Drawing,
    box: Box,
    headings: Sequence[str],
    rows: Sequence[Sequence[str]],
    height: float = SMALL,
) -> tuple[float, list[Sequence[str]]]:
    """Sets a table from the top of `box` down, its `headings` translated; returns the height of the
    paper below which it is free, and the rows that found no room. Columns are as wide as their
    words want, narrower and in several lines where the box is too narrow for that."""
    headings = list(map(word, headings))
    widths = _widths(headings, rows, box.wide, height)
    y = box.top
    left: list[Sequence[str]] = [headings, *rows]
    while left:
        cells = [_lines(c, w - 2.0, height) for c, w in zip(left[0], widths)]
        high = row_height(max(1, max(map(len, cells), default=1)), height)
        if y - high < box.y - 1e-9:
            break
        if y == box.top:
            drawing.line((box.x, y), (box.x + sum(widths), y), MEDIUM)
        x = box.x
        for lines, wide in zip(cells, widths):
            for k, line in enumerate(lines):
                foot = y - 0.6 - PITCH * height * (k + 1) + 0.3 * height
                drawing.text((x + 1.0, foot), fitted(line, wide - 1.0, height)[0], height, "start")
            x += wide
        y -= high
        weight = MEDIUM if len(left) == len(rows) + 1 else THIN
        drawing.line((box.x, y), (box.x + sum(widths), y), weight)
        left = left[1:]
    return y, list(left) if len(left) <= len(rows) else list(rows)


def table_width(
    headings: Sequence[str], rows: Sequence[Sequence[str]], room: float, height: float = SMALL
) -> float:
    """How wide `table` makes itself where it has so much room, mm."""
    return sum(_widths(list(map(word, headings)), rows, room, height))


def row_height(lines: int = 1, height: float = SMALL) -> float:
    """How high `table` makes a row of so many lines, mm."""
    return PITCH * height * lines + 1.2


def _lines(cell: str, room: float, height: float) -> list[str]:
    return [line for part in cell.split("\n") for line in wrapped(part, room, height)]


def table_height(
    headings: Sequence[str], rows: Sequence[Sequence[str]], room: float, height: float = SMALL
) -> float:
    """How high `table` makes itself where it has so much width, mm."""
    headings = list(map(word, headings))
    widths = _widths(headings, rows, room, height)
    return sum(
        row_height(max(len(_lines(c, w - 2.0, height)) for c, w in zip(row, widths)) or 1, height)
        for row in (headings, *rows)
    )


def _widths(
    headings: Sequence[str], rows: Sequence[Sequence[str]], room: float, height: float
) -> list[float]:
    """mm for each column: what its longest cell wants; where that is too much in all, the widest
    are cut down alike, but not below their longest word."""
    columns = list(zip(headings, *rows)) if rows else [(h,) for h in headings]
    wants = [
        max(width(clean(line), height) for c in column for line in c.split("\n")) + 3.6
        for column in columns
    ]
    least = _least(columns, height)
    while sum(wants) > room + 1e-9:
        free = [k for k in range(len(wants)) if wants[k] > least[k] + 1e-9]
        if not free:
            return [w * room / sum(wants) for w in wants]
        most = max(wants[k] for k in free)
        widest = [k for k in free if wants[k] > most - 1e-9]
        lower = [wants[k] for k in free if wants[k] <= most - 1e-9]
        floor = max([*lower, *(least[k] for k in widest)])
        cut = min(most - floor, (sum(wants) - room) / len(widest))
        for k in widest:
            wants[k] = max(wants[k] - max(cut, 1e-6), least[k])
    return wants


def _least(columns: Sequence[Sequence[str]], height: float) -> list[float]:
    """mm for the longest word of each column."""
    return [
        max((width(w, height) for c in column for w in unbroken(clean(c))), default=0.0) + 2.4
        for column in columns
    ]


def table_least(
    headings: Sequence[str], rows: Sequence[Sequence[str]], height: float = SMALL
) -> float:
    """How much width `table` needs for all of its words, mm."""
    return sum(_least(list(zip(map(word, headings), *rows)), height))

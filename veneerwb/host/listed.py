# SPDX-License-Identifier: LGPL-2.1-or-later
"""Lists in spreadsheets of the document.

A sheet is the host's own, so that it opens without this addon. It has a hidden link to what it is a
list of, by which that finds it, and a mark of what it was made from. It is filled on command only;
what else stands in it, right of the list or below an empty line, stays.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from veneerwb.core.inventory import guarded
from veneerwb.host import compat


def sheet_of(owner: Any, link: str) -> Any:
    """The sheet that links to `owner` by the property `link`; None where there is none."""
    return next((one for one in owner.InList if getattr(one, link, None) == owner), None)


def new_sheet(
    owner: Any, name: str, label: str, link: str, mark: str, widths: Sequence[int]
) -> Any:
    """An empty sheet that links to `owner`, its columns `widths` pixels wide."""
    doc = owner.Document
    sheet = doc.addObject("Spreadsheet::Sheet", name)
    try:
        sheet.Label = label
        compat.add_property(sheet, "Link", link, "List", "What it is a list of", compat.HIDDEN)
        text = "What the list was made from"
        compat.add_property(sheet, "String", mark, "List", text, compat.HIDDEN)
        setattr(sheet, link, owner)
        for column, width in enumerate(widths):
            sheet.setColumnWidth(_column(column), width)
    except Exception:
        doc.removeObject(sheet.Name)
        raise
    return sheet


def write(sheet: Any, lines: Sequence[Sequence[Any]], headings: int) -> None:
    """Puts the lines into the sheet, in place of an older list; the headings stand in the line of
    that number, and above them lines of a name and what is to be said of it."""
    last = _column(max(map(len, lines)) - 1)
    _clear(sheet, headings, last)
    for row, cells in enumerate(lines, start=1):
        for column, value in enumerate(cells):
            sheet.set(f"{_column(column)}{row}", _cell(value))
    for cells in ("A1", f"A{headings}:{last}{headings}"):
        sheet.setStyle(cells, "bold")
    for row, cells in enumerate(lines[: headings - 1], start=1):
        if len(cells) == 2:
            sheet.mergeCells(f"B{row}:{last}{row}")


def _column(k: int) -> str:
    return chr(ord("A") + k)


def _clear(sheet: Any, headings: int, last: str) -> None:
    """Takes away an older list, which ends with the first empty cell under the headings."""
    row = headings
    while sheet.getContents(f"A{row}"):
        row += 1
    sheet.clear(f"A1:{last}{row}")


def _cell(value: str | float) -> str:
    """A number plainly; a text so that no sheet, and no program it is copied into, takes it for a
    formula."""
    return f"'{guarded(value)}" if isinstance(value, str) else repr(value)

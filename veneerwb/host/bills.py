# SPDX-License-Identifier: LGPL-2.1-or-later
"""The bill of materials of a panel, in a spreadsheet of the document and as a file.

The sheet is the host's own, so that it opens without this addon. It has a hidden link to its panel,
by which the panel finds it, and is filled on command only.
"""

from __future__ import annotations

import os
from typing import Any

from veneerwb.core.buildup.bill import CAUTION, HEADINGS, write_bill
from veneerwb.core.inventory import guarded
from veneerwb.host import compat
from veneerwb.host.objects.base import Refused
from veneerwb.host.objects.buildup import SHEET_OF

OWNER, MARK = SHEET_OF, "BillMark"
LAST = chr(ord("A") + len(HEADINGS) - 1)
WIDTHS = (120, 120, 120, 60, 110, 90, 90, 80, 90, 80, 260)
"""Of the columns, in pixels."""
VOLUME = HEADINGS.index("volume m3")
FIRST_ROW = 5
"""Where the headings stand."""


def fill_sheet(parts: Any) -> Any:
    """The sheet of a Parts object, made if there is none, with its bill as it is now. What else
    stands in the sheet, right of the bill, stays."""
    panel, name = _panel(parts)
    sheet = sheet_of(parts)
    if sheet is None:
        sheet = _new(parts)
    _write(sheet, name, panel.rows)
    setattr(sheet, MARK, panel.bill_mark)
    parts.touch()  # for it looks at the sheet, and does not hang on it
    return sheet


def write_file(parts: Any, path: str | os.PathLike[str]) -> None:
    """Writes the bill of a Parts object as CSV. Raises VeneerError, and leaves the old file, if
    that cannot be done."""
    panel, name = _panel(parts)
    write_bill(panel.rows, name, path)


def sheet_of(parts: Any) -> Any:
    """The sheet of a Parts object; None where there is none."""
    mine = (one for one in parts.InList if getattr(one, OWNER, None) == parts)
    return next(mine, None)


def is_old(parts: Any, mark: str) -> bool:
    """Whether the sheet of a Parts object was made from another bill than that of `mark`."""
    sheet = sheet_of(parts)
    return sheet is not None and getattr(sheet, MARK) != mark


def _panel(parts: Any) -> tuple[Any, str]:
    from veneerwb.host import panels, values

    if parts.Message:
        raise Refused(parts.Message)
    top = values.finished_top(parts.Match)
    return panels.panel_of(parts.Match), f"{parts.Match.Label}: {top.name}"


def _new(parts: Any) -> Any:
    doc = parts.Document
    sheet = doc.addObject("Spreadsheet::Sheet", "BillOfMaterials")
    try:
        sheet.Label = f"Bill of {parts.Match.Label}"
        text = "The panel that the bill is of"
        compat.add_property(sheet, "Link", OWNER, "Bill", text, compat.HIDDEN)
        text = "What the bill was made from"
        compat.add_property(sheet, "String", MARK, "Bill", text, compat.HIDDEN)
        setattr(sheet, OWNER, parts)
        for column, width in enumerate(WIDTHS):
            sheet.setColumnWidth(chr(ord("A") + column), width)
    except Exception:
        doc.removeObject(sheet.Name)
        raise
    return sheet


def _write(sheet: Any, name: str, rows: list[Any]) -> None:
    _clear(sheet)
    head = (("bill of materials",), ("top", name), ("caution", CAUTION), (), _in_litres(HEADINGS))
    lines = (_in_litres(one.cells) for one in rows)
    for row, cells in enumerate((*head, *lines), start=1):
        for column, value in enumerate(cells):
            sheet.set(f"{chr(ord('A') + column)}{row}", _cell(value))
    for cells in ("A1", f"A{FIRST_ROW}:{LAST}{FIRST_ROW}"):
        sheet.setStyle(cells, "bold")
    for row in (2, 3):
        sheet.mergeCells(f"B{row}:{LAST}{row}")


def _in_litres(cells: tuple[Any, ...]) -> tuple[Any, ...]:
    """A line of the bill with its volume in litres: a sheet shows two decimals."""
    volume = cells[VOLUME]
    litres = "volume l" if isinstance(volume, str) else round(1000.0 * volume, 6)
    return (*cells[:VOLUME], litres, *cells[VOLUME + 1 :])


def _clear(sheet: Any) -> None:
    """Takes away an older bill, which ends with the first empty cell under the headings."""
    row = FIRST_ROW
    while sheet.getContents(f"A{row}"):
        row += 1
    sheet.clear(f"A1:{LAST}{row}")


def _cell(value: str | float) -> str:
    """A number plainly; a text so that no sheet, and no program it is copied into, takes it for a
    formula."""
    return f"'{guarded(value)}" if isinstance(value, str) else repr(value)

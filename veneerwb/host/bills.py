# SPDX-License-Identifier: LGPL-2.1-or-later
"""The bill of materials of a panel, in a spreadsheet of the document and as a file.

The sheet is the host's own, so that it opens without this addon. It has a hidden link to its panel,
by which the panel finds it, and is filled on command only.
"""

from __future__ import annotations

import os
from typing import Any

from veneerwb.core.buildup.bill import CAUTION, HEADINGS, write_bill
from veneerwb.host import listed
from veneerwb.host.objects.base import Refused
from veneerwb.host.objects.buildup import SHEET_OF
from veneerwb.words import word

OWNER, MARK = SHEET_OF, "BillMark"
WIDTHS = (120, 120, 120, 60, 110, 90, 90, 80, 90, 80, 260)
"""Of the columns, in pixels."""
VOLUME = HEADINGS.index("volume m3")


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
    return listed.sheet_of(parts, OWNER)


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
    return listed.new_sheet(
        parts, "BillOfMaterials", f"Bill of {parts.Match.Label}", OWNER, MARK, WIDTHS
    )


def _write(sheet: Any, name: str, rows: list[Any]) -> None:
    head = (
        (word("bill of materials"),), (word("top"), name), (word("caution"), word(CAUTION)), (),
        _in_litres(tuple(map(word, HEADINGS))),
    )  # fmt: skip
    listed.write(sheet, [*head, *(_in_litres(one.cells) for one in rows)], len(head))


def _in_litres(cells: tuple[Any, ...]) -> tuple[Any, ...]:
    """A line of the bill with its volume in litres: a sheet shows two decimals."""
    volume = cells[VOLUME]
    litres = word("volume l") if isinstance(volume, str) else round(1000.0 * volume, 6)
    return (*cells[:VOLUME], litres, *cells[VOLUME + 1 :])

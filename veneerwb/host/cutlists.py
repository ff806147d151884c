# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cut list of a bench in a spreadsheet of its document, filled with its sheets."""

from __future__ import annotations

from typing import Any

from veneerwb.core.layout import Layout
from veneerwb.core.shop import cutlist
from veneerwb.core.shop.drawing.page import Look
from veneerwb.host import listed

OWNER, MARK = "CutListOf", "CutListMark"
WIDTHS = (130, 70, 90, 170, 170, 170, 170, 150, 150)
"""Of the columns, in pixels."""


def fill_sheet(bench: Any, layout: Layout, look: Look) -> Any:
    """The sheet of a Bench object, made if there is none, with the layout's cut list."""
    sheet = listed.sheet_of(bench, OWNER)
    mark = f"{layout.revision} {look.title} {look.rests}"
    if sheet is None:
        label = f"Cut list of {bench.Match.Label}"
        sheet = listed.new_sheet(bench, "CutList", label, OWNER, MARK, WIDTHS)
    if getattr(sheet, MARK) != mark:
        lines = cutlist.lines(layout, look.title, look.rests)
        listed.write(sheet, lines, lines.index(()) + 2)
        setattr(sheet, MARK, mark)
    return sheet

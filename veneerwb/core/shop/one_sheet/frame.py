# SPDX-License-Identifier: LGPL-2.1-or-later
"""The form that a sheet is drawn on: A3 lying, its frame, its title block, and where things go.

A3 is 420 x 297 mm (ISO 216); the frame leaves 20 mm for binding on the left and 10 mm elsewhere
(ISO 5457). Places are in mm from the lower left corner of the paper, y up.
"""

from __future__ import annotations

from xml.sax.saxutils import escape

from veneerwb.core.shop.drawing.drawn import (
    THICK,
    THIN,
)
from veneerwb.core.shop.drawing.lettering import FONT
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.drawing.svg import CAPITAL
from veneerwb.words import marked

PAPER = Box(0.0, 0.0, 420.0, 297.0)
FRAME = Box(20.0, 10.0, 390.0, 277.0)
TITLE_BLOCK = Box(230.0, 10.0, 180.0, 36.0)

AXIS = 225.0
"""Every view is centred on this x, figures by free room on one side, texts by the width that they
are set in. Newer hosts shift a view in x or y when it nearly lines up with another; a view that
lines up exactly with all others stays where it is put. So a text must begin left of this."""

STALE = Box(24.0, 278.5, 176.0, 7.2)
LIST = Box(24.0, 47.0, 176.0, 229.0)
"""The cut list from the top on; the wedge has what is left below it."""
SET_OUT = Box(24.0, 12.0, 120.0, 34.5)
SET_OUT_NOTE = Box(146.0, 12.0, 54.0, 33.0)
HEADING = Box(204.0, 277.0, 40.0, 7.0)
NOTES = Box(204.0, 50.0, 38.0, 222.0)
PLAN = Box(247.0, 50.0, 160.0, 235.0)
"""The plan from the top on; the picture has what is left below it."""

LABEL = 1.8
"""mm: height of the letters that say what a field of the title block holds."""
ROW = 12.0
CELLS = {
    "title": (marked("Title"), 0, 0.0, 112.0),
    "drawn by": (marked("Drawn by"), 0, 112.0, 40.0),
    "date": (marked("Date of this layout"), 0, 152.0, 28.0),
    "top": (marked("Top"), 1, 0.0, 66.0),
    "ways": (marked("Ways"), 1, 66.0, 16.0),
    "match": (marked("Match, order"), 1, 82.0, 44.0),
    "bundle": (marked("Bundle"), 1, 126.0, 54.0),
    "thickness": (marked("Leaf thickness"), 2, 0.0, 30.0),
    "scale": (marked("Scale of plan"), 2, 30.0, 26.0),
    "wedge scale": (marked("Scale of wedge"), 2, 56.0, 26.0),
    "units": (marked("Dimensions in"), 2, 82.0, 26.0),
    "revision": (marked("Revision mark"), 2, 108.0, 36.0),
    "sheet": (marked("Sheet"), 2, 144.0, 36.0),
}
"""Fields of the title block by role: label, row from the top, place and width, mm."""


def cell(role: str) -> Box:
    """The field of the title block that `role` is written in."""
    _, row, x, wide = CELLS[role]
    return Box(TITLE_BLOCK.x + x, TITLE_BLOCK.top - ROW * (row + 1), wide, ROW)


def template() -> str:
    """The form as SVG, as it lies in resources/templates."""
    parts = [
        _rect(PAPER, 0.0, "#ffffff"),  # or a host shows its own grey through
        _rect(FRAME, 0.7),
        _rect(TITLE_BLOCK, THICK),
        *_centre_marks(),
    ]
    for role, (label, row, x, _) in CELLS.items():
        box = cell(role)
        if x:
            parts.append(_line(box.x, box.y, box.x, box.top, THIN))
        elif row:
            parts.append(_line(box.x, box.top, TITLE_BLOCK.right, box.top, THIN))
        parts.append(_text(box.x + 1.2, box.top - 1.2 - LABEL, label))
    return "\n".join(
        [
            '<?xml version="1.0" encoding="UTF-8"?>',
            "<!-- SPDX-License-Identifier: LGPL-2.1-or-later -->",
            '<svg xmlns="http://www.w3.org/2000/svg" version="1.1" '
            'xmlns:freecad="http://www.freecadweb.org/wiki/index.php?title=Svg_Namespace" '
            f'width="{PAPER.wide:g}mm" height="{PAPER.high:g}mm" '
            f'viewBox="0 0 {100 * PAPER.wide:g} {100 * PAPER.high:g}">',
            *parts,
            "</svg>",
            "",
        ]
    )


def _rect(box: Box, weight: float, fill: str = "none") -> str:
    line = f'stroke="#000000" stroke-width="{100 * weight:g}"' if weight else 'stroke="none"'
    return (
        f'<rect x="{100 * box.x:g}" y="{100 * (PAPER.high - box.top):g}" '
        f'width="{100 * box.wide:g}" height="{100 * box.high:g}" fill="{fill}" {line}/>'
    )


def _line(x0: float, y0: float, x1: float, y1: float, weight: float) -> str:
    a, b = (f"{100 * x:g} {100 * (PAPER.high - y):g}" for x, y in ((x0, y0), (x1, y1)))
    return (
        f'<path d="M{a} L{b}" fill="none" stroke="#000000" stroke-width="{100 * weight:g}"/>'
    )


def _centre_marks() -> list[str]:
    """Marks at the middle of each side, for filing and copying."""
    x, y = PAPER.centre
    return [
        _line(FRAME.x - 10.0, y, FRAME.x, y, 0.7),
        _line(FRAME.right, y, FRAME.right + 5.0, y, 0.7),
        _line(x, FRAME.y - 5.0, x, FRAME.y, 0.7),
        _line(x, FRAME.top, x, FRAME.top + 5.0, 0.7),
    ]


def _text(x: float, y: float, text: str) -> str:
    return (
        f'<text x="{100 * x:g}" y="{100 * (PAPER.high - y):g}" font-family="{FONT}" '
        f'font-size="{100 * LABEL / CAPITAL:.0f}" fill="#000000">{escape(text)}</text>'
    )

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cut list and the bill of materials, as tables."""

from __future__ import annotations

from veneerwb.core.buildup import bill
from veneerwb.core.buildup.bill import CAUTION as FINISHED
from veneerwb.core.layout import Layout
from veneerwb.core.shop.built import Built
from veneerwb.core.shop.counted import counted
from veneerwb.core.shop.cutlist import CAUTION, rows
from veneerwb.core.shop.drawing.page import DRY_LAY, Look, Page
from veneerwb.core.shop.drawing.thickness import thickness
from veneerwb.core.shop.pages.tables import table_pages
from veneerwb.core.shop.wedge import is_ring
from veneerwb.words import marked, say, word

CUTS, CUT_TITLE = "cut-list", marked("Cut list")
BILL, BILL_TITLE = "bill", marked("Bill of materials")


HEADINGS = (
    marked("pos."), marked("leaf"), marked("side up"), marked("finished size"),
    marked("size as cut"),
)
TIP, CORNER = (
    (marked("tip x"), marked("tip y")), (marked("lowest corner x"), marked("lowest corner y"))
)
MEASURED = {
    (True, True): marked(
        "The tip is measured from the lower left corner of the leaf's own photograph, seen from "
        "its face: x across, y along the grain."
    ),
    (True, False): marked(
        "The tip is measured from the lower left corner of the leaf, seen from its face: x across, "
        "y along the grain."
    ),
    (False, True): marked(
        "The lowest corner is measured from the lower left corner of the leaf's own photograph, "
        "seen from its face: x across, y along the grain."
    ),
    (False, False): marked(
        "The lowest corner is measured from the lower left corner of the leaf, seen from its face: "
        "x across, y along the grain."
    ),
}
"""By whether pieces have a tip, and whether there are photographs."""


def pages(layout: Layout, look: Look, built: Built | None = None) -> list[Page]:
    """The cut list, and the bill of a panel that is built up."""
    return [*cut_list(layout, look), *(bill_pages(built, look) if built else [])]


def cut_list(layout: Layout, look: Look) -> list[Page]:
    """A row for each position, in their order."""
    cell, cell_size = look.lengths.cell, look.lengths.cell_size
    headings = (*HEADINGS, *(TIP if is_ring(layout) else CORNER))
    listed = [
        (
            str(row.position), str(row.leaf), word(row.side_up),
            cell_size(row.net_across, row.net_along), cell_size(row.blank_across, row.blank_along),
            cell(row.tip_x), cell(row.tip_y),
        )
        for row in rows(layout)
    ]  # fmt: skip
    texts = [
        say(
            "{count} pieces of {thickness}. Positions run {way}, seen from the show face.",
            count=len(listed), thickness=thickness(look.lengths, layout.bundle.thickness),
            way=counted(layout),
        ),
        word("Sizes are across the leaf x along the grain. Side up: what is seen of the leaf on "
             "the finished top."),
        word(MEASURED[is_ring(layout), bool(look.rests)]),
    ]  # fmt: skip
    return table_pages(look, CUTS, CUT_TITLE, headings, listed, texts, (CAUTION,))


def bill_pages(built: Built, look: Look) -> list[Page]:
    """What a panel takes, finished sizes."""
    headings = (
        marked("item"), marked("layer"), marked("material"), marked("count"), marked("thick"),
        marked("length"), marked("width"), marked("area"), marked("note"),
    )  # fmt: skip
    cell = look.lengths.cell
    listed = [
        (
            word(row.item), word(row.layer), row.material, str(row.count),
            thickness(look.lengths, row.thickness, True), cell(row.length), cell(row.width),
            look.lengths.area(row.area_m2), word(row.note),
        )
        for row in bill(built.parts)
    ]  # fmt: skip
    texts = [word(FINISHED), word(
        "Length is along the grain. The area is that of all parts of a row."
    )]
    return table_pages(look, BILL, BILL_TITLE, headings, listed, texts, (DRY_LAY,))

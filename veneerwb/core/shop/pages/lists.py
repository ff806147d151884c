# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cut list and the bill of materials, as tables."""

from __future__ import annotations

from veneerwb.core.buildup import bill
from veneerwb.core.buildup.bill import CAUTION as FINISHED
from veneerwb.core.layout import Layout
from veneerwb.core.shop.built import Built
from veneerwb.core.shop.counted import counted
from veneerwb.core.shop.cutlist import CAUTION, rows
from veneerwb.core.shop.page import DRY_LAY, Look, Page
from veneerwb.core.shop.pages.tables import table_pages
from veneerwb.core.shop.thickness import thickness
from veneerwb.core.shop.wedge import is_ring

CUTS, CUT_TITLE = "cut-list", "Cut list"
BILL, BILL_TITLE = "bill", "Bill of materials"


def pages(layout: Layout, look: Look, built: Built | None = None) -> list[Page]:
    """The cut list, and the bill of a panel that is built up."""
    return [*cut_list(layout, look), *(bill_pages(built, look) if built else [])]


def cut_list(layout: Layout, look: Look) -> list[Page]:
    """A row for each position, in their order."""
    cell, cell_size = look.lengths.cell, look.lengths.cell_size
    what = "tip" if is_ring(layout) else "lowest corner"
    headings = ("pos.", "leaf", "side up", "finished size", "size as cut", f"{what} x", f"{what} y")
    listed = [
        (
            str(row.position), str(row.leaf), row.side_up,
            cell_size(row.net_across, row.net_along), cell_size(row.blank_across, row.blank_along),
            cell(row.tip_x), cell(row.tip_y),
        )
        for row in rows(layout)
    ]  # fmt: skip
    texts = [
        f"{len(listed)} pieces of {thickness(look.lengths, layout.bundle.thickness)}. Positions "
        f"run {counted(layout)}, seen from the show face.",
        "Sizes are across the leaf x along the grain. Side up: what is seen of the leaf on the "
        "finished top.",
        f"The {what} is measured from the lower left corner of the leaf's own photograph, seen "
        "from its face: x across, y along the grain."
        if look.rests
        else f"The {what} is measured from the lower left corner of the leaf, seen from its face: "
        "x across, y along the grain.",
    ]
    return table_pages(look, CUTS, CUT_TITLE, headings, listed, texts, (CAUTION,))


def bill_pages(built: Built, look: Look) -> list[Page]:
    """What a panel takes, finished sizes."""
    headings = (
        "item", "layer", "material", "count", "thick", "length", "width", "area", "note"
    )  # fmt: skip
    cell = look.lengths.cell
    listed = [
        (
            row.item, row.layer, row.material, str(row.count),
            thickness(look.lengths, row.thickness, True), cell(row.length), cell(row.width),
            look.lengths.area(row.area_m2), row.note,
        )
        for row in bill(built.parts)
    ]  # fmt: skip
    texts = [FINISHED, "Length is along the grain. The area is that of all parts of a row."]
    return table_pages(look, BILL, BILL_TITLE, headings, listed, texts, (DRY_LAY,))

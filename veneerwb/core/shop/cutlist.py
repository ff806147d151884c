# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cut list: a row for each piece, with the revision mark of the layout it was made from."""

from __future__ import annotations

import csv
import io
import os
from collections.abc import Iterable
from dataclasses import astuple, dataclass, replace

from veneerwb.core.checks.sufficiency import onto_leaf
from veneerwb.core.errors import number
from veneerwb.core.files import write_beside
from veneerwb.core.inventory import guarded
from veneerwb.core.layout import Layout, Piece
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge
from veneerwb.core.plane import Motion
from veneerwb.core.shop.counted import counted
from veneerwb.core.shop.lot_lines import lot_lines
from veneerwb.core.shop.wedge import is_ring
from veneerwb.words import marked, say, word

HEADINGS = (
    marked("position"),
    marked("leaf"),
    marked("side up"),
    marked("net across the leaf mm"),
    marked("net along the grain mm"),
    marked("blank across the leaf mm"),
    marked("blank along the grain mm"),
    marked("tip on leaf x mm"),
    marked("tip on leaf y mm"),
)
CORNER = marked("lowest corner on leaf x mm"), marked("lowest corner on leaf y mm")
"""The last two where pieces have no tip."""
CAUTION = marked(
    "Dry-lay before glue. Cut away from the hand, with the stack held; follow local rules and the "
    "makers' sheets for dust, blades and adhesives."
)


def headings(layout: Layout) -> tuple[str, ...]:
    """The headings of a layout's list: only wedges have a tip, for other pieces it is the lowest
    corner (the left one of several) whose place is given."""
    return tuple(map(word, HEADINGS if is_ring(layout) else (*HEADINGS[:-2], *CORNER)))


@dataclass(frozen=True)
class Row:
    """A piece of the list; sizes are the extents in mm across the leaf and along the grain, the
    tip (see `headings`) is in mm on the piece's own leaf as seen from its face."""

    position: int
    leaf: int
    side_up: str
    net_across: float
    net_along: float
    blank_across: float
    blank_along: float
    tip_x: float
    tip_y: float


def rows(layout: Layout) -> list[Row]:
    """The rows in the order of positions."""
    ring = is_ring(layout)
    return [_row(layout, piece, ring) for piece in layout.pieces]


def _row(layout: Layout, piece: Piece, ring: bool) -> Row:
    corners = onto_leaf(piece, layout.bundle).apply([segment.start for segment in piece.edge])
    tip = corners[0] if ring else min(corners, key=lambda c: (round(float(c[1]), 4), float(c[0])))
    return Row(
        piece.position,
        piece.leaf,
        "back" if piece.turned else "face",
        *_extents(piece.edge, piece.onto_bundle),
        *_extents(piece.blank_edge, piece.onto_bundle),
        float(tip[0]),
        float(tip[1]),
    )


def _extents(edge: Edge, motion: Motion) -> tuple[float, float]:
    drawn = edges.moved(edge, motion)
    spans = (edges.extent(drawn, degrees) for degrees in (0.0, 90.0))
    across, along = (most - least for least, most in spans)
    return across, along


def as_csv(layout: Layout, name: str = "", rests: str = "") -> str:
    """The list as comma-separated text, numbers in mm with a decimal point, no cell that a
    spreadsheet takes for a formula. `name` is the layout's; `rests`: on what its registers rest."""
    out = io.StringIO()
    table = csv.writer(out, lineterminator="\n")
    for cells in lines(layout, name, rests):
        table.writerow([number(c) if isinstance(c, float) else guarded(str(c)) for c in cells])
    return out.getvalue()


def lines(
    layout: Layout, name: str = "", rests: str = ""
) -> list[tuple[str | int | float, ...]]:
    """What stands in the list, line by line: its head, an empty line, headings, pieces."""
    body = (astuple(replace(row, side_up=word(row.side_up))) for row in rows(layout))
    return [*_head(layout, name, rests), (), headings(layout), *body]


def _head(layout: Layout, name: str, rests: str) -> Iterable[tuple[str, ...]]:
    yield word("cut list, revision"), layout.revision
    if name:
        yield word("layout"), name
    yield word("top"), layout.top.name
    yield word("pieces"), str(len(layout.pieces))
    yield word("leaf thickness mm"), number(float(layout.bundle.thickness))
    yield word("positions run"), say("{way}, seen from the show face", way=counted(layout))
    if rests:
        yield word("rests on"), rests
    yield from lot_lines(layout)
    yield word("caution"), word(CAUTION)


def write_csv(layout: Layout, path: str | os.PathLike[str]) -> None:
    """Write the list to `path`; VeneerError, and the old file untouched, if that cannot be done."""
    write_beside(path, lambda file: file.write(as_csv(layout).encode("utf-8")))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A way of cutting on the leaves: one leaf for each lot, what is cut and what its pieces need."""

from __future__ import annotations

from collections.abc import Callable

from veneerwb.core.layout import Layout
from veneerwb.core.leaf import ranges
from veneerwb.core.lots import Cutting, Lot
from veneerwb.paint import ink
from veneerwb.paint.ground import Ground, draw_cuts, draw_leaf
from veneerwb.paint.picture import qt_polygon
from veneerwb.paint.qt import QtGui

GAP, CAPTION = 6.0, 15.0
"""Pixels between leaves, and below each for what it stands for."""
UPRIGHT = 0.75
"""How much smaller leaves may be so that they stand and do not lie."""
LEAST = 30.0
"""Pixels: no leaf is drawn in a narrower field."""

Box = tuple[float, float, float, float]


def draw_lots(
    painter: QtGui.QPainter, size: tuple[int, int], layout: Layout, way: Cutting,
    words: Callable[[int], str], more: Callable[[int], str],
) -> None:
    """The lots of `way`, each on the first of its leaves: filled is what is cut, thin lines are the
    pieces that it serves. `words` says how many leaves a lot has, `more` how many lots are not
    shown."""
    ink.begin(painter, size)
    width, length = layout.bundle.size
    columns, rows = grid(len(way.lots), size, width / length)
    shown = len(way.lots) if columns * rows >= len(way.lots) else columns * rows - 1
    boxes = fields(columns, rows, size)
    for k, (lot, box) in enumerate(zip(way.lots[:shown], boxes)):
        on = Ground(float(width), float(length), (round(box[2]), round(box[3] - CAPTION)),
                    (1.0, 1.0, 1.0, 1.0))  # fmt: skip
        painter.save()
        painter.translate(box[0], box[1])
        draw_leaf(painter, on, layout.bundle, lot.leaves[0])
        _draw_lot(painter, on, lot, k)
        painter.setFont(ink.font())
        painter.setPen(ink.colour(ink.INK))
        caption = _fitting(painter, words(len(lot.leaves)), str(len(lot.leaves)), box[2])
        foot = max(on.pixel(*corner)[1] for corner in ((0.0, 0.0), (width, length)))
        ink.write(painter, caption, (0.0, foot, box[2], CAPTION))
        painter.restore()
    if shown < len(way.lots):
        painter.setPen(ink.colour(ink.FAINT))
        ink.write(painter, more(len(way.lots) - shown), boxes[shown], wrap=True)


def grid(count: int, size: tuple[int, int], shape: float) -> tuple[int, int]:
    """Columns and rows that show `count` leaves, as wide as `shape` of their length, the largest;
    fewer fields than that where they would be narrower than LEAST."""
    best, found = -1.0, (1, 1)
    for columns in range(1, count + 1):
        rows = -(-count // columns)
        wide, high = _field(columns, rows, size)
        if min(wide, high) < LEAST:
            continue
        scale = max(min(wide / shape, high), UPRIGHT * min(wide, high / shape))
        if scale > best:
            best, found = scale, (columns, rows)
    if best < 0.0:
        found = tuple(max(1, int((span + GAP) // (LEAST + GAP))) for span in
                      (size[0], size[1] - CAPTION))  # fmt: skip
    return found


def _field(columns: int, rows: int, size: tuple[int, int]) -> tuple[float, float]:
    """The room for a leaf."""
    wide = (size[0] - (columns + 1) * GAP) / columns
    high = (size[1] - (rows + 1) * GAP) / rows - CAPTION
    return wide, high


def fields(columns: int, rows: int, size: tuple[int, int]) -> list[Box]:
    """The fields row by row: x, y, width and height with the caption."""
    wide, high = (max(one, 4.0) for one in _field(columns, rows, size))
    return [
        (GAP + c * (wide + GAP), GAP + r * (high + CAPTION + GAP), wide, high + CAPTION)
        for r in range(rows)
        for c in range(columns)
    ]


def _draw_lot(painter: QtGui.QPainter, on: Ground, lot: Lot, group: int) -> None:
    if len(lot.pieces) > 1:
        painter.setPen(QtGui.QPen(ink.colour(ink.PAPER), 1))
        for piece in lot.pieces:
            drawn = piece.onto_bundle.apply_to(piece.blank)
            painter.drawPolyline(qt_polygon(drawn.exterior.coords, on.to_canvas))
    draw_cuts(painter, on, [lot.cut.outline], [group], [ranges(lot.cut.pieces)])


def _fitting(painter: QtGui.QPainter, long: str, short: str, room: float) -> str:
    return long if ink.width_of(painter, long) <= room else short

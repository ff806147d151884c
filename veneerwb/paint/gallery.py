# SPDX-License-Identifier: LGPL-2.1-or-later
"""Small pictures of tops side by side, with words below them."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import NamedTuple

from veneerwb.core.layout import Layout
from veneerwb.paint import ink
from veneerwb.paint.live import LivePicture
from veneerwb.paint.qt import QtCore, QtGui

CHOSEN, TROUBLE = (0, 114, 178), (176, 42, 0)
AIR = 6
"""Pixels between tiles, and between a tile's edge and what is in it."""
TITLE, LINE = 17, 15
"""Pixels of a line of either kind of words."""
TICK = 17
WIDE = 1.6
"""Width by height from which a tile's words stand beside its picture."""
BESIDE = 1.9
"""Width by height of such a tile."""
SHARE = 0.485
"""How much of its place's half a top's reach takes."""


def pictured(layout: Layout, pixels: int) -> QtGui.QImage:
    """The true top in a square of so many pixels, on white; the layout's bundle has photographs."""
    x0, y0, x1, y1 = layout.top.polygon_mm.bounds
    scale = SHARE * pixels / max(-x0, -y0, x1, y1)
    return LivePicture(pixels, pixels, scale).paint(layout)


class Box(NamedTuple):
    """A rectangle of pixels."""

    x: float
    y: float
    width: float
    height: float

    def holds(self, x: float, y: float) -> bool:
        return 0 <= x - self.x < self.width and 0 <= y - self.y < self.height

    @property
    def middle(self) -> tuple[float, float]:
        return self.x + self.width / 2, self.y + self.height / 2


@dataclass
class Tile:
    """A top in a gallery: its `layout` (or an `image` where it cannot be laid), what it is called,
    what is said of it, what is wrong with it, and whether it is ticked (None: it cannot be)."""

    layout: Layout | None
    title: str
    words: str = ""
    trouble: str = ""
    ticked: bool | None = None
    image: QtGui.QImage | None = None
    _made: tuple[int, QtGui.QImage] | None = field(default=None, repr=False)

    def picture(self, pixels: int) -> QtGui.QImage | None:
        """Painted once for each size."""
        if self.layout is None and self.image is None:
            return None
        if self._made is None or self._made[0] != pixels:
            self._made = pixels, self._painted(pixels)
        return self._made[1]

    def _painted(self, pixels: int) -> QtGui.QImage:
        if self.layout is not None:
            return pictured(self.layout, pixels)
        return self.image.scaled(
            pixels, pixels, QtCore.Qt.KeepAspectRatio, QtCore.Qt.SmoothTransformation
        )


def draw_tile(
    painter: QtGui.QPainter, box: Box, tile: Tile, chosen: bool = False, lines: int = 2
) -> None:
    """One tile with room for its title and so many lines of words: below the picture, or beside it
    where the place is wide."""
    painter.setPen(QtGui.QPen(ink.colour(CHOSEN if chosen else ink.RULE), 3 if chosen else 1))
    painter.setBrush(ink.colour(ink.PAPER))
    painter.drawRoundedRect(QtCore.QRectF(*box).adjusted(1.5, 1.5, -1.5, -1.5), 4, 4)
    side = picture_side(box.width, box.height, lines)
    if is_wide(box.width, box.height):
        _picture(painter, tile, box.x + AIR, box.y + AIR, side)
        beside = 2 * AIR + side
        words = Box(box.x + beside, box.y, box.width - beside - AIR, box.height)
        _words_beside(painter, words, tile)
    else:
        _picture(painter, tile, box.x + (box.width - side) / 2, box.y + AIR, side)
        _words(painter, box, tile, box.y + AIR + side + 2, lines)
    if tile.ticked is not None:
        _tick(painter, tick_of(box), tile.ticked)


def is_wide(width: float, height: float) -> bool:
    """Whether words stand beside the picture."""
    return width > WIDE * height


def picture_side(width: float, height: float, lines: int) -> float:
    """Pixels of the picture in a tile of that size."""
    below = 0.0 if is_wide(width, height) else words_height(lines)
    return max(8.0, min(width - 2 * AIR, height - below - 2 * AIR))


def _words_beside(painter: QtGui.QPainter, box: Box, tile: Tile) -> None:
    """Title and words, in the middle of the place's height."""
    said = tile.trouble or tile.words
    where = QtCore.QRectF(*box)
    flags = int(QtCore.Qt.TextWordWrap | QtCore.Qt.AlignLeft | QtCore.Qt.AlignTop)
    parts = [(tile.title, ink.font(12, bold=True), ink.INK)]
    if said:
        parts.append((said, ink.font(), TROUBLE if tile.trouble else ink.FAINT))
    heights = [
        QtGui.QFontMetricsF(font).boundingRect(where, flags, text).height()
        for text, font, _ in parts
    ]
    y = box.y + max(0.0, (box.height - sum(heights)) / 2)
    for (text, font, rgb), high in zip(parts, heights):
        painter.setFont(font)
        painter.setPen(ink.colour(rgb))
        ink.write(painter, text, (box.x, y, box.width, high + 2), "top left", wrap=True)
        y += high


def words_height(lines: int) -> float:
    """Pixels that a title and so many lines take."""
    return TITLE + lines * LINE + 2


def _picture(painter: QtGui.QPainter, tile: Tile, x: float, y: float, side: float) -> None:
    image = tile.picture(max(8, round(side * ink.ratio_of(painter))))
    if image is None:
        return
    painter.setRenderHint(QtGui.QPainter.SmoothPixmapTransform)
    painter.drawImage(QtCore.QRectF(x, y, side, side), image)


def _words(painter: QtGui.QPainter, box: Box, tile: Tile, y: float, lines: int) -> None:
    x, width = box.x + AIR, box.width - 2 * AIR
    painter.setFont(ink.font(12, bold=True))
    painter.setPen(ink.colour(ink.INK))
    said = tile.trouble or tile.words
    if not tile.words and ink.width_of(painter, tile.title) > width:
        painter.setFont(ink.font())
        painter.setPen(ink.colour(TROUBLE if tile.trouble else ink.INK))
        room = (x, y, width, TITLE + lines * LINE + 2)
        ink.write(painter, f"{tile.title} {tile.trouble}".strip(), room, "top", wrap=True)
        return
    metrics = QtGui.QFontMetricsF(painter.font())
    title = metrics.elidedText(tile.title, QtCore.Qt.ElideRight, width)
    ink.write(painter, title, (x, y, width, TITLE), "top")
    painter.setFont(ink.font())
    painter.setPen(ink.colour(TROUBLE if tile.trouble else ink.FAINT))
    ink.write(painter, said, (x, y + TITLE, width, lines * LINE + 2), "top", wrap=True)


def tick_of(box: Box) -> Box:
    """Where a tile's tick stands."""
    return Box(box.x + box.width - TICK - AIR, box.y + AIR, TICK, TICK)


def _tick(painter: QtGui.QPainter, box: Box, ticked: bool) -> None:
    painter.setPen(QtGui.QPen(ink.colour(CHOSEN if ticked else ink.FAINT), 1.5))
    painter.setBrush(ink.colour(CHOSEN if ticked else ink.PAPER))
    painter.drawRoundedRect(QtCore.QRectF(*box), 3, 3)
    if ticked:
        painter.setPen(QtGui.QPen(ink.colour(ink.PAPER), 2.2))
        points = ((0.22, 0.52), (0.43, 0.74), (0.8, 0.28))
        painter.drawPolyline(QtGui.QPolygonF([
            QtCore.QPointF(box.x + u * box.width, box.y + v * box.height) for u, v in points
        ]))  # fmt: skip


# --- where tiles stand -------------------------------------------------------------------------


def rows_of(
    count: int, width: float, least: float, lines: int = 2, height: float = math.inf
) -> list[Box]:
    """`count` tiles in rows across a width, each picture at least so many pixels; words stand
    beside the pictures where `height`, what is seen of the rows, would else cut them off."""
    columns = max(1, int((width - AIR) // (least + 3 * AIR)))
    across = min((width - AIR) / columns - AIR, 1.5 * least + 2 * AIR)
    down = across + words_height(lines)
    if down + 2 * AIR > height:
        columns = max(1, int((width - AIR) // (BESIDE * least)))
        across = (width - AIR) / columns - AIR
        down = max(0.5 * least, min(across / BESIDE, height - 2 * AIR))
    return [
        Box(AIR + (k % columns) * (across + AIR), AIR + (k // columns) * (down + AIR), across, down)
        for k in range(count)
    ]


def filling(count: int, size: tuple[float, float], lines: int = 2) -> list[Box]:
    """`count` tiles as large as a place lets all of them be."""
    def side(columns: int) -> float:
        rows = math.ceil(count / columns)
        across = (size[0] - AIR) / columns - 3 * AIR
        return min(across, (size[1] - AIR) / rows - 3 * AIR - words_height(lines))

    columns = max(range(1, max(1, count) + 1), key=side)
    rows = math.ceil(count / columns)
    wide = side(columns) + 2 * AIR
    high = wide + words_height(lines)
    left, top = ((room - n * each - (n + 1) * AIR) / 2 + AIR for room, n, each in (
        (size[0], columns, wide), (size[1], rows, high)))
    return [
        Box(left + (k % columns) * (wide + AIR), top + (k // columns) * (high + AIR), wide, high)
        for k in range(count)
    ]


def box_at(boxes: Sequence[Box], x: float, y: float) -> int | None:
    """Which of the boxes holds a point."""
    return next((k for k, box in enumerate(boxes) if box.holds(x, y)), None)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Two to six kept spots side by side, as large as the window lets them be."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

import FreeCAD
from PySide import QtCore, QtGui

from veneerwb.gui.canvas import Canvas, Hand, Place
from veneerwb.gui.side_window import Window
from veneerwb.paint import ink
from veneerwb.paint.gallery import Tile, box_at, draw_tile, filling

translate = FreeCAD.Qt.translate
HERE = "VeneerSpotCompare"
LEAST, MOST = 2, 6
LINES = 3


class CompareWindow(Window):
    """`taken` is called with the number of the tile that is clicked."""

    def __init__(
        self, tiles: Sequence[Tile], taken: Callable[[int], None], closed: Callable[[], None]
    ) -> None:
        super().__init__("spot_compare", translate(HERE, "Kept spots"), "veneer-kept", closed)
        self.hand = CompareHand(tiles, taken)
        self.hand.canvas = Canvas(self.form.tops, self.hand)
        self.canvases.append(self.hand.canvas)

    def show_tiles(self, tiles: Sequence[Tile]) -> None:
        """The same spots as they are now."""
        self.hand.tiles = tiles
        self.hand.canvas.refresh()

    def let_go(self) -> None:
        self.hand.taken = lambda k: None
        super().let_go()


class CompareHand(Hand):
    """Paints the tops; a click takes one."""

    def __init__(self, tiles: Sequence[Tile], taken: Callable[[int], None]) -> None:
        self.tiles, self.taken = tiles, taken
        self.canvas: Canvas | None = None
        self._over: int | None = None

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        ink.begin(painter, size)
        for k, (box, tile) in enumerate(zip(filling(len(self.tiles), size, LINES), self.tiles)):
            draw_tile(painter, box, tile, k == self._over, LINES)

    def at(self, at: Place) -> int | None:
        return box_at(filling(len(self.tiles), self.canvas.size, LINES), at.x, at.y)

    def over(self, at: Place | None) -> None:
        found = None if at is None else self.at(at)
        if found != self._over:
            self._over = found
            self.canvas.refresh()

    def clicked(self, at: Place) -> None:
        k = self.at(at)
        if k is not None:
            self.taken(k)

    def cursor(self, at: Place) -> Any:
        return QtCore.Qt.ArrowCursor if self.at(at) is None else QtCore.Qt.PointingHandCursor

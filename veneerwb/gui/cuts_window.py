# SPDX-License-Identifier: LGPL-2.1-or-later
"""The ways of cutting what differs, side by side on the leaves, each with what it takes."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any

import FreeCAD
from PySide import QtGui

from veneerwb.core.layout import CUTS
from veneerwb.gui import cuts_words as words
from veneerwb.gui.canvas import Canvas, Hand
from veneerwb.gui.side_window import Window
from veneerwb.paint import ink

translate = FreeCAD.Qt.translate
HERE = "VeneerCuts"


class CutsWindow(Window):
    """A picture, words and a button for each way of cutting a layout."""

    def __init__(self, taken: Callable[[str], None] | None, closed: Callable[[], None]) -> None:
        """`taken` hears which of CUTS is chosen; None where none may be."""
        super().__init__("cuts", translate(HERE, "How the leaves are cut"), "veneer-match", closed)
        self.taken = taken
        self.hands = {how: LotsHand() for how in CUTS}
        for how in CUTS:
            self._part("take", how).clicked.connect(partial(self._take, how))
            self.canvases.append(Canvas(self._part("picture", how), self.hands[how]))

    def _part(self, kind: str, how: str) -> Any:
        return getattr(self.form, f"{kind}_{how}")

    def _take(self, how: str, *_: Any) -> None:
        if self.taken is not None:
            self.taken(how)

    def show(self, layout: Any, ways: Any) -> None:
        """Shows the ways of cutting `layout`; the one that it is laid for is marked."""
        for way in ways:
            chosen = way.how == layout.cut_as
            title = translate(HERE, "{name} (chosen)") if chosen else "{name}"
            self._part("title", way.how).setText(title.format(name=words.name_of(way.how)))
            self._part("text", way.how).setPlainText(words.in_full(way))
            self._part("take", way.how).setEnabled(not chosen and self.taken is not None)
            self.hands[way.how].show(layout, way, chosen)
        for canvas in self.canvases:
            canvas.refresh()

    def let_go(self) -> None:
        self.taken, self.hands = None, {}
        super().let_go()


class LotsHand(Hand):
    """The lots of one way on their leaves, painted once for a size."""

    def __init__(self) -> None:
        self.layout = self.way = None
        self.chosen = False
        self._made: tuple[Any, QtGui.QImage] | None = None

    def show(self, layout: Any, way: Any, chosen: bool) -> None:
        self.layout, self.way, self.chosen, self._made = layout, way, chosen, None

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        if self.layout is None:
            return
        ratio = ink.ratio_of(painter)
        if self._made is None or self._made[0] != (size, ratio):
            self._made = (size, ratio), self._picture(size, ratio)
        painter.drawImage(0, 0, self._made[1])
        painter.setPen(QtGui.QPen(ink.colour(ink.mark() if self.chosen else ink.RULE), 2))
        painter.drawRect(1, 1, size[0] - 2, size[1] - 2)

    def _picture(self, size: tuple[int, int], ratio: float) -> QtGui.QImage:
        from veneerwb.paint.lots import draw_lots

        image = QtGui.QImage(
            *(max(1, round(side * ratio)) for side in size), QtGui.QImage.Format_RGB32
        )
        image.setDevicePixelRatio(ratio)
        painter = QtGui.QPainter(image)
        try:
            draw_lots(painter, size, self.layout, self.way, words.leaves, words.more)
        finally:
            painter.end()
        return image

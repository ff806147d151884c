# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the stack may follow, side by side: the same top laid by each choice, and what it costs."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any

import FreeCAD
from PySide import QtCore, QtGui

from veneerwb.gui.canvas import Canvas, Hand
from veneerwb.gui.sequence_words import followed_as
from veneerwb.gui.side_window import SideWindow
from veneerwb.paint import ink

translate = FreeCAD.Qt.translate
HERE = "VeneerChoices"
FEWEST, USUAL = 4, 12
"""Ways of the ring that is laid where the document has no match of the bundle."""
SHARE = 0.8
"""Of the leaves' shorter half, the reach of that ring."""


def shown_on(obj: Any, bundle: Any) -> Any:
    """The layout on which the choices are seen; None for a bundle that is too small for any."""
    from veneerwb.core import Top, VeneerError, radial
    from veneerwb.gui.commands import of_kind
    from veneerwb.host.objects import layout

    for match in of_kind(obj.Document, "Match"):
        if match.Bundle == obj and not match.Message:
            return layout(match)
    ways = min(USUAL, len(bundle.numbers) // 2 * 2)
    if ways < FEWEST:
        return None
    width, length = bundle.size
    try:
        return radial(bundle, Top.round(SHARE * min(width, length)), ways, first=bundle.numbers[0])
    except VeneerError:
        return None


class ChoicesWindow(SideWindow):
    """A picture, words and a button for each choice."""

    def __init__(
        self, choices: Any, taken: Callable[[str], None], closed: Callable[[], None]
    ) -> None:
        title = translate(HERE, "What the stack follows")
        super().__init__("choices", title, "veneer-sequence", closed)
        self.taken = taken
        there = {choice.what: choice for choice in choices}
        for what in ("figure", "log", "marks", "photographs"):
            part = partial(self._part, what)
            part("choice").setVisible(what in there)
            if what in there:
                self._fill(part, there[what])

    def _part(self, what: str, kind: str) -> Any:
        return getattr(self.form, f"{kind}_{what}")

    def _fill(self, part: Callable[[str], Any], choice: Any) -> None:
        across, along = (f"{value:.0f}" for value in choice.followed.cost.lost)
        cost = translate(HERE, "{name}: costs {along} mm of length, {across} mm of width")
        name = followed_as(choice.what)
        part("title").setText(cost.format(name=name, along=along, across=across))
        part("text").setPlainText(choice.followed.text)
        part("take").clicked.connect(lambda *_: self.taken(choice.what))
        self.canvases.append(Canvas(part("picture"), RingHand(choice.layout)))

    def let_go(self) -> None:
        self.taken = lambda what: None
        super().let_go()


class RingHand(Hand):
    """The picture of a layout, as large as its place."""

    def __init__(self, layout: Any) -> None:
        self.layout = layout
        self._made: tuple[float, QtGui.QImage] | None = None

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        if self.layout is None:
            ink.say(painter, size, translate(HERE, "Too few leaves for a ring."))
            return
        x0, y0, x1, y1 = self.layout.top.polygon_mm.bounds
        ratio = ink.ratio_of(painter)
        scale = min(size[0] / (x1 - x0), size[1] / (y1 - y0)) * 0.97 * ratio
        if self._made is None or self._made[0] != scale:
            self._made = scale, self._picture(scale)
        image = self._made[1]
        image.setDevicePixelRatio(ratio)
        left, top = (size[0] - image.width() / ratio) / 2, (size[1] - image.height() / ratio) / 2
        painter.drawImage(QtCore.QPointF(left, top), image)

    def _picture(self, scale: float) -> QtGui.QImage:
        from veneerwb.paint import picture

        pixels = picture(self.layout, scale)
        rows, columns = pixels.shape[:2]
        return QtGui.QImage(
            pixels.data, columns, rows, pixels.strides[0], QtGui.QImage.Format_RGBA8888
        ).copy()

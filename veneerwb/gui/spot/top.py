# SPDX-License-Identifier: LGPL-2.1-or-later
"""The top as it comes out, painted anew as fast as the wedge is moved.

wheel: more and fewer ways · click: looks at that piece's leaf · for the keys see keys.py
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from typing import Any

from PySide import QtCore, QtGui

from veneerwb.core import Layout, Piece, Top, VeneerError
from veneerwb.gui.canvas import Action, Canvas, Hand, Place
from veneerwb.gui.panels import fields
from veneerwb.gui.spot.keys import SpotKeys
from veneerwb.gui.spot.state import SpotState
from veneerwb.paint import ink
from veneerwb.paint.live import LivePicture
from veneerwb.paint.picture import qt_polygon

Qt = QtCore.Qt

AROUND, PALE = (58, 58, 58), (235, 235, 235)
AIR = 12
"""Pixels round the top."""


class TopView(SpotKeys, Hand):
    """`hovered` is called with the piece under the pointer, or None. `painted` counts paintings."""

    def __init__(self, widget: Any, state: SpotState) -> None:
        self.events = Canvas(widget, self)
        widget.setAttribute(Qt.WA_OpaquePaintEvent)
        self.listen(state)
        self.hovered: Callable[[Piece | None], None] = lambda piece: None
        self.painted = 0
        self._turned = 0.0
        self._live: tuple[Any, LivePicture] | None = None

    def refresh(self) -> None:
        """Paints anew, soon."""
        self.events.refresh()

    def let_go(self) -> None:
        self.events.forget()
        self.hovered, self._live = (lambda piece: None), None
        self.forget_spot()

    # --- painting -----------------------------------------------------------------------------

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        self.painted += 1
        try:
            layout = self.state.shown()
        except VeneerError as error:
            painter.fillRect(QtCore.QRectF(0, 0, *size), QtGui.QColor(*AROUND))
            painter.setPen(QtGui.QColor(*PALE))
            room = (2 * AIR, 2 * AIR, size[0] - 4 * AIR, size[1] - 4 * AIR)
            ink.write(painter, fields.in_words(error), room, wrap=True)
            return
        scale, ratio = self._scale(layout.top, size), ink.ratio_of(painter)
        key = (*size, scale, ratio)
        if self._live is None or self._live[0] != key:
            pixels = (round(side * ratio) for side in size)
            self._live = key, LivePicture(*pixels, scale * ratio)
        live = self._live[1]
        live.image.setDevicePixelRatio(1.0)  # it is painted in its own pixels, and shown in the
        image = live.paint(layout, QtGui.QColor(*AROUND))  # screen's
        image.setDevicePixelRatio(ratio)
        painter.drawImage(0, 0, image)
        self._smooth(painter, layout, scale, size)
        self._cover(painter, scale, size)

    @staticmethod
    def _scale(top: Top, size: tuple[int, int]) -> float:
        """Pixels for a mm, the top's origin in the middle."""
        x0, y0, x1, y1 = top.polygon_mm.bounds
        half = max(-x0, x1), max(-y0, y1)
        return min(max(1.0, side / 2 - AIR) / most for side, most in zip(size, half))

    @staticmethod
    def _smooth(
        painter: QtGui.QPainter, layout: Layout, scale: float, size: tuple[int, int]
    ) -> None:
        """Takes the steps off the rim."""
        onto = QtGui.QTransform(scale, 0.0, 0.0, -scale, size[0] / 2, size[1] / 2)
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        painter.setPen(QtGui.QPen(QtGui.QColor(*AROUND), 2.0))
        painter.setBrush(Qt.NoBrush)
        painter.drawPolygon(qt_polygon(layout.top.polygon_mm.exterior.coords, onto))

    def _cover(self, painter: QtGui.QPainter, scale: float, size: tuple[int, int]) -> None:
        """The edge of what will cover the centre."""
        reach = self.state.hidden / 2.0 * scale
        if reach > 0.0:
            middle = QtCore.QPointF(size[0] / 2, size[1] / 2)
            for colour, width, dashes in ((AROUND, 3.0, None), (PALE, 1.5, [4.0, 3.0])):
                pen = QtGui.QPen(QtGui.QColor(*colour), width)
                if dashes:
                    pen.setDashPattern(dashes)
                painter.setPen(pen)
                painter.drawEllipse(middle, reach, reach)

    # --- the mouse and the keys ---------------------------------------------------------------

    def piece_at(self, at: Place) -> Piece | None:
        """The piece that is seen at a point of the widget."""
        try:
            layout = self.state.shown()
        except VeneerError:
            return None
        size = self.events.size
        scale = self._scale(layout.top, size)
        x, y = (at.x - size[0] / 2) / scale, (size[1] / 2 - at.y) / scale
        if math.hypot(x, y) > layout.top.reach:
            return None
        ways, recipe = layout.recipe.ways, layout.recipe
        turn = (math.degrees(math.atan2(y, x)) - recipe.direction(0)) % 360.0
        return layout.pieces[min(int(turn * ways / 360.0), ways - 1)]

    def clicked(self, at: Place) -> None:
        piece = self.piece_at(at)
        if piece is not None and not self.state.mirrored:
            self.state.look(number=piece.leaf)

    def over(self, at: Place | None) -> None:
        self.hovered(None if at is None else self.piece_at(at))

    def wheel(self, steps: float, at: Place) -> bool:
        self._turned += steps  # a fine wheel turns less than a notch at a time
        whole = int(self._turned)
        self._turned -= whole
        if whole:
            self.step_ways(whole)
        return True

    @property
    def keys(self) -> Mapping[Any, Action]:
        more, fewer = (lambda: self.step_ways(1)), (lambda: self.step_ways(-1))
        return {
            **self.spot_keys, Qt.Key_Plus: more, Qt.Key_Equal: more, Qt.Key_Minus: fewer,
            Qt.Key_PageUp: lambda: self.paged(-1), Qt.Key_PageDown: lambda: self.paged(1),
            Qt.Key_Escape: lambda: self.escaped(),
        }  # fmt: skip

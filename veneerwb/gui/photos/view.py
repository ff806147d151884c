# SPDX-License-Identifier: LGPL-2.1-or-later
"""A photograph on a canvas: looked at, and pointed at. Beside what every canvas does (see there):

G: lines of mm · click: place or choose · drag a mark, a corner or what has handles: move it
double click on an edge: another corner · Enter or the first corner: close the area
Esc and Ctrl+Z: take the last corner back · Delete: take away what is chosen
without a mouse: N: the next mark or area · C: its next corner, which the arrows move
Ctrl and arrows: move the picture · Insert: a click in the middle of what is seen, or another corner
of the edge there
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial
from typing import Any

from PySide import QtCore, QtGui

from veneerwb.gui.canvas import ARROWS, Action, Canvas, Looking
from veneerwb.gui.photos import looks
from veneerwb.gui.photos.frame import Frame, Picture, Place
from veneerwb.gui.photos.items import Pointing
from veneerwb.paint import ink

Qt = QtCore.Qt

REACH = 8.0
"""Widget pixels: what is nearer to the pointer is meant."""
AROUND = (58, 58, 58)
"""The colour round the picture."""


class PhotoView(Looking):
    """Shows `picture` in `canvas`, with the marks and areas of `pointing` on it.

    After changing either by hand call `refresh`. `hovered` is called with the place under the
    pointer, or None where there is none; `escaped` when Esc has nothing to take back; `paged` with
    the pages to turn.
    """

    def __init__(self, widget: Any) -> None:
        self.events = Canvas(widget, self)
        widget.setAttribute(Qt.WA_OpaquePaintEvent)
        self.picture: Picture | None = None
        self.frame = Frame()
        self.pointing = Pointing(within=self._within)
        self.grid = False
        self.hovered: Callable[[Place | None], None] = lambda place: None
        self.escaped: Callable[[], None] = lambda: None
        self.paged: Callable[[int], None] = lambda steps: None
        self._magnified: Place | None = None
        self._pointer: Place | None = None
        self._dragging = False
        self._behind: tuple[Any, QtGui.QImage] | None = None

    @property
    def canvas(self) -> Any:
        """The widget; None when it has gone."""
        return self.events.widget

    @property
    def size(self) -> tuple[int, int]:
        """The widget's width and height."""
        return self.events.size

    def refresh(self) -> None:
        """Paints anew, soon."""
        self.events.refresh()

    def let_go(self) -> None:
        """Forgets the picture and whoever was told of it."""
        self.events.forget()
        self.picture = self._behind = None
        self.pointing = Pointing()
        self.hovered, self.escaped = (lambda place: None), (lambda: None)
        self.paged = lambda steps: None

    # --- what is shown ------------------------------------------------------------------------

    def show(self, picture: Picture | None, keep: bool = False) -> None:
        """Another picture; with `keep` it is seen where the one before was, if it is as large."""
        same = keep and picture and self.picture and picture.size == self.picture.size
        self.picture = picture
        if not same:
            self.fit()
        self.refresh()

    def fit(self) -> None:
        if self.picture is not None:
            self.frame.fit(self.picture.size, self.size)
            self.refresh()

    def plain(self) -> None:
        self.zoom_to(1.0)

    def zoom(self, factor: float, at: Place | None = None) -> None:
        self.zoom_to(self.frame.zoom * factor, at)

    def zoom_to(self, zoom: float, at: Place | None = None) -> None:
        """So many widget pixels for each of the picture, about a point of the widget (or its
        middle)."""
        if self.picture is not None:
            middle = (self.size[0] / 2, self.size[1] / 2)
            self.frame.zoom_to(zoom, at or middle, self.picture.size, self.size)
            self.refresh()

    def pan(self, across: float, down: float) -> None:
        if self.picture is not None:
            self.frame.move(across, down, self.picture.size, self.size)
            self.refresh()

    def page(self, steps: int) -> None:
        self.paged(steps)

    def resized(self) -> None:
        if self.frame.fitted:
            self.fit()

    def show_place(self, place: Place) -> None:
        """Moves the picture so that a place is well in sight."""
        if self.picture is not None:
            self.frame.show(place, self.picture.size, self.size)
            self.refresh()

    @property
    def step(self) -> float | None:
        """mm between the lines of the grid, if the scale is known."""
        scale = self.picture.mm_per_px if self.picture is not None else None
        return None if scale is None else looks.grid_step(self.frame.zoom, scale)

    # --- the mouse ----------------------------------------------------------------------------

    def _within(self, place: Place) -> Place:
        return self.picture.nearest(place) if self.picture else place

    def _on_picture(self, at: Place) -> Place | None:
        """The place of the picture at a point of the widget, if it is on it."""
        place = self.frame.to_picture(at)
        return place if self.picture is not None and self._within(place) == place else None

    @property
    def _reach(self) -> float:
        return REACH / self.frame.zoom

    def pressed(self, at: Place) -> bool:
        if self.picture is not None:
            self._dragging = self.pointing.press(self.frame.to_picture(at), self._reach)
            self._magnify(at)
        return self._dragging

    def dragged(self, at: Place) -> None:
        self.pointing.drag(self.frame.to_picture(at))

    def released(self) -> None:
        self._dragging = False
        self.pointing.release()

    def doubled(self, at: Place) -> None:
        """On an edge: another corner. While an area is drawn: the first click was its last one."""
        if self.picture is None:
            return
        place = self.frame.to_picture(at)
        if self.pointing.drawn is not None:
            self.pointing.close()
        elif not self._on_corner(place):
            self.pointing.insert(place, self._reach)

    def _on_corner(self, place: Place) -> bool:
        grip = self.pointing.at(place, self._reach)
        return grip is not None and grip.corner is not None

    def over(self, at: Place | None) -> None:
        self._pointer = None if at is None else self._on_picture(at)
        self._magnify(at)
        self.hovered(self._pointer)
        self.refresh()

    def _magnify(self, at: Place | None) -> None:
        """While something is placed or dragged, what lies under the pointer is shown larger."""
        place = None if at is None else self._on_picture(at)
        if self._dragging and at is not None:
            place = self._within(self.frame.to_picture(at))
        placing = self._dragging or self.pointing.places_more or self.pointing.drawn is not None
        wanted = placing and not self.events.pulling and self.frame.zoom < looks.PLAIN
        self._magnified = place if wanted else None

    def cursor(self, at: Place) -> Any:
        grip = self.pointing.at(self.frame.to_picture(at), self._reach)
        if grip is not None:
            return Qt.PointingHandCursor if grip.corner is None else Qt.SizeAllCursor
        return Qt.CrossCursor if self.pointing.places_more else Qt.ArrowCursor

    # --- keys ---------------------------------------------------------------------------------

    @property
    def keys(self) -> Mapping[Any, Action]:
        pointing = self.pointing
        return {
            **super().keys, Qt.Key_G: self._switch_grid,
            Qt.Key_Return: pointing.close, Qt.Key_Enter: pointing.close,
            Qt.Key_Delete: pointing.delete, Qt.Key_Backspace: pointing.delete,
            Qt.Key_Escape: self._escape, Qt.Key_Insert: self._click_middle,
            Qt.Key_N: pointing.choose_next, Qt.Key_C: pointing.choose_next_corner,
        }  # fmt: skip

    @property
    def keys_with_ctrl(self) -> Mapping[Any, Action]:
        """The host's undo would take back a step that is not ours."""
        moves = {key: partial(self._pull, *way) for key, way in ARROWS.items()}
        return {Qt.Key_Z: self.pointing.step_back, **moves}

    def _pull(self, across: int, down: int) -> None:
        """Moves the picture, whatever is chosen, and says what is in the middle then."""
        super().arrow(across, down, 1)
        self.over(self._middle)

    @property
    def _middle(self) -> Place:
        return self.size[0] / 2, self.size[1] / 2

    def _click_middle(self) -> None:
        """What the mouse would do there: place or choose; on an edge make another corner."""
        pointing, at = self.pointing, self._middle
        placing = pointing.places_more or pointing.drawn is not None
        if self.picture is None:
            return
        made = not placing and pointing.insert(self.frame.to_picture(at), self._reach)
        if not made and self.pressed(at):
            self.released()
        self.over(at)

    def _switch_grid(self) -> None:
        self.grid = not self.grid

    def arrow(self, across: int, down: int, steps: int) -> None:
        pointing = self.pointing
        if not pointing.nudge(across * steps, down * steps):
            super().arrow(across, down, steps)
        elif pointing.grip.corner is not None:
            self.show_place(pointing.grip.item.corners[pointing.grip.corner])

    def _escape(self) -> None:
        if self._dragging:
            self._dragging = False
            self.events.let_fall()
            self.pointing.put_back()
        elif self.pointing.step_back():
            pass
        elif self.pointing.grip is not None:
            self.pointing.choose(None)
        else:
            self.escaped()

    # --- painting -----------------------------------------------------------------------------

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        painter.drawImage(0, 0, self._photograph(size, ink.ratio_of(painter)))
        if self.picture is None:
            return
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        pointing = self.pointing
        for area in pointing.areas:
            looks.draw_area(painter, self.frame, area, pointing.grip)
        if pointing.drawn is not None:
            looks.draw_area(painter, self.frame, pointing.drawn, pointing.grip, closed=False)
            if self._pointer is not None:
                looks.draw_next(painter, self.frame, pointing.drawn, self._pointer)
        for item in pointing.marks:
            chosen = pointing.grip is not None and pointing.grip.item is item
            looks.draw_mark(painter, self.frame, item, chosen)
        if self._magnified is not None:
            looks.draw_magnifier(painter, self.picture, self.frame, self._magnified, size)

    def _photograph(self, size: tuple[int, int], ratio: float) -> QtGui.QImage:
        """What lies behind all that is pointed at, painted once for as long as it stays: what is
        dragged over it costs no more than itself."""
        frame, picture = self.frame, self.picture
        scale = None if picture is None else picture.mm_per_px
        seen = picture, scale, frame.zoom, frame.column, frame.row, size, ratio, self.grid
        if self._behind is None or self._behind[0] != seen:
            width, height = size
            format = QtGui.QImage.Format_RGB32
            image = QtGui.QImage(round(width * ratio), round(height * ratio), format)
            image.setDevicePixelRatio(ratio)
            image.fill(QtGui.QColor(*AROUND))
            painter = QtGui.QPainter(image)
            try:
                if picture is not None:
                    picture.draw(painter, frame, width, height)
                    if self.grid:
                        painter.setRenderHint(QtGui.QPainter.Antialiasing)
                        looks.draw_grid(painter, frame, picture, width, height)
            finally:
                painter.end()
            self._behind = seen, image
        return self._behind[1]

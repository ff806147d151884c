# SPDX-License-Identifier: LGPL-2.1-or-later
"""A photograph in a widget: looked at, and pointed at.

The widget is a plain one that the host made from a form. It is watched, not subclassed, and is
painted when it is about to be: no class of Python's stands behind a widget, so none can be missing
when Qt asks for it late (see DEVELOPERS.md, "A new panel").

wheel: zoom about the pointer · middle button, Space and drag, or drag where nothing is placed: move
F: the whole picture · 1: one to one · + and -: zoom · G: lines of mm
click: place or choose · drag a mark or corner: move it · arrows: by a pixel, with Shift by ten
double click on an edge: another corner · Enter or the first corner: close the area
Esc: take the last corner back · Delete: take away what is chosen · Page Up and Down: other photos
"""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

from PySide import QtCore, QtGui

from veneerwb.gui import photo_looks as looks
from veneerwb.gui.photo_frame import Frame, Picture, Place
from veneerwb.gui.photo_items import Pointing

Qt, Kind = QtCore.Qt, QtCore.QEvent

REACH = 8.0
"""Widget pixels: what is nearer to the pointer is meant."""
STILL = 4.0
"""Widget pixels: a press that moves less is a click."""
NOTCH = 1.25
"""What a notch of the wheel does to the zoom."""
AROUND = (58, 58, 58)
"""The colour round the picture."""
ARROWS = {
    Qt.Key_Left: (-1, 0), Qt.Key_Right: (1, 0), Qt.Key_Up: (0, -1), Qt.Key_Down: (0, 1),
}  # fmt: skip
KEYS = {
    *ARROWS, Qt.Key_F, Qt.Key_G, Qt.Key_1, Qt.Key_Plus, Qt.Key_Equal, Qt.Key_Minus, Qt.Key_Space,
    Qt.Key_Return, Qt.Key_Enter, Qt.Key_Escape, Qt.Key_Delete, Qt.Key_Backspace,
    Qt.Key_PageUp, Qt.Key_PageDown,
}  # fmt: skip
"""What the view takes for itself before the host's shortcuts see it."""


class PhotoView(QtCore.QObject):
    """Shows `picture` in `canvas`, with the marks and areas of `pointing` on it.

    After changing either by hand call `refresh`. `hovered` is called with the place under the
    pointer, or None where there is none; `escaped` when Esc has nothing to take back; `paged` with
    -1 or 1; `free` gives the width and height, from the upper left, that nothing lies over.
    """

    def __init__(self, canvas: Any) -> None:
        super().__init__()
        self.canvas = canvas
        self.picture: Picture | None = None
        self.frame = Frame()
        self.pointing = Pointing(within=self._within)
        self.grid = False
        self.hovered: Callable[[Place | None], None] = lambda place: None
        self.escaped: Callable[[], None] = lambda: None
        self.paged: Callable[[int], None] = lambda step: None
        self.free: Callable[[], Place] = lambda: self.size
        self._magnified: Place | None = None
        self._pointer: Place | None = None
        self._fitted_to: Place | None = None
        self._moved_from: tuple[Place, bool] | None = None
        self._dragging = self._space = False
        canvas.setMouseTracking(True)
        canvas.setFocusPolicy(Qt.StrongFocus)
        canvas.setAttribute(Qt.WA_OpaquePaintEvent)
        canvas.installEventFilter(self)
        self._does = {
            Kind.Paint: self._paint,
            Kind.Resize: self._resized,
            Kind.Wheel: self._wheel,
            Kind.MouseButtonPress: self._press,
            Kind.MouseButtonDblClick: self._double,
            Kind.MouseMove: self._move,
            Kind.MouseButtonRelease: self._release,
            Kind.Leave: self._left,
            Kind.ShortcutOverride: self._claim,
            Kind.KeyPress: self._key,
            Kind.KeyRelease: self._key_up,
            Kind.FocusOut: self._unfocused,
        }

    # --- what is shown ------------------------------------------------------------------------

    def show(self, picture: Picture | None, keep: bool = False) -> None:
        """Another picture; with `keep` it is seen where the one before was, if it is as large."""
        same = keep and picture and self.picture and picture.size == self.picture.size
        self.picture = picture
        if not same:
            self.fit()
        self.refresh()

    def fit(self) -> None:
        """The whole picture in the middle of the widget, or of what is seen of it."""
        if self.picture is not None:
            self._fitted_to = self.free()
            self.frame.fit(self.picture.size, self._fitted_to)
            self.refresh()

    def zoom_to(self, zoom: float, at: Place | None = None) -> None:
        """So many widget pixels for each of the picture, about a point of the widget (or its
        middle)."""
        if self.picture is not None:
            middle = (self.size[0] / 2, self.size[1] / 2)
            self.frame.zoom_to(zoom, at or middle, self.picture.size, self.size)
            self.refresh()

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

    def refresh(self) -> None:
        """Paints anew, soon."""
        if self.canvas is not None:
            self.canvas.update()

    @property
    def size(self) -> Place:
        """The widget's width and height."""
        return float(max(1, self.canvas.width())), float(max(1, self.canvas.height()))

    def let_go(self) -> None:
        """Watches the widget no more, which is about to go."""
        if self.canvas is not None:
            self.canvas.removeEventFilter(self)
            self.canvas, self.picture, self._does = None, None, {}
            self.pointing = Pointing()
            self.hovered, self.escaped = (lambda place: None), (lambda: None)
            self.paged, self.free = (lambda step: None), (lambda: (1.0, 1.0))

    # --- events -------------------------------------------------------------------------------

    def eventFilter(self, watched: Any, event: Any) -> bool:
        """Qt's; what is ours goes no further."""
        does = self._does.get(event.type()) if self.canvas is not None else None
        return bool(does and does(event))

    def _within(self, place: Place) -> Place:
        return self.picture.nearest(place) if self.picture else place

    def _place(self, event: Any) -> Place:
        return self.frame.to_picture(where(event))

    @property
    def _reach(self) -> float:
        return REACH / self.frame.zoom

    def _resized(self, event: Any) -> bool:
        if self.frame.fitted:
            self.fit()
        return False

    def _wheel(self, event: Any) -> bool:
        self.zoom_to(self.frame.zoom * NOTCH ** (event.angleDelta().y() / 120.0), where(event))
        return True

    def _press(self, event: Any) -> bool:
        self.canvas.setFocus()
        if self.picture is None:
            return True
        if event.button() == Qt.MiddleButton or (event.button() == Qt.LeftButton and self._space):
            self._moved_from = where(event), True
            self.canvas.setCursor(Qt.ClosedHandCursor)
        elif event.button() == Qt.LeftButton:
            self._dragging = self.pointing.press(self._place(event), self._reach)
            if not self._dragging:
                self._moved_from = where(event), False
            self._magnify(event)
            self.refresh()
        return True

    def _double(self, event: Any) -> bool:
        """On an edge: another corner. While an area is drawn: the first click was its last one."""
        if event.button() != Qt.LeftButton or self.picture is None:
            return True
        place = self._place(event)
        if self.pointing.drawn is not None:
            self.pointing.close()
        elif not self._on_corner(place):
            self.pointing.insert(place, self._reach)
        self.refresh()
        return True

    def _on_corner(self, place: Place) -> bool:
        grip = self.pointing.at(place, self._reach)
        return grip is not None and grip.corner is not None

    def _move(self, event: Any) -> bool:
        at = where(event)
        if self._moved_from is not None:
            self._pull(at)
        elif self._dragging:
            self.pointing.drag(self._place(event))
        if self.picture is not None:
            self._magnify(event)
            self._show_cursor(event)
            self._pointer = self._on_picture(self._place(event))
            self.hovered(self._pointer)
            self.refresh()
        return True

    def _pull(self, at: Place) -> None:
        start, pulling = self._moved_from
        if pulling or math.dist(start, at) >= STILL:
            across, down = at[0] - start[0], at[1] - start[1]
            self.frame.move(across, down, self.picture.size, self.size)
            self._moved_from = at, True

    def _release(self, event: Any) -> bool:
        self._moved_from = None
        if self._dragging:
            self._dragging = False
            self.pointing.release()
        self._magnify(event)
        self._show_cursor(event)
        self.refresh()
        return True

    def _left(self, event: Any) -> bool:
        self._magnified = self._pointer = None
        self.hovered(None)
        self.refresh()
        return False

    def _unfocused(self, event: Any) -> bool:
        self._space = False
        self.refresh()
        return False

    def _on_picture(self, place: Place) -> Place | None:
        return place if self.picture is not None and self._within(place) == place else None

    def _magnify(self, event: Any) -> None:
        """While something is placed or dragged, what lies under the pointer is shown larger."""
        place = self._on_picture(self._place(event))
        if self._dragging:
            place = self._within(self._place(event))
        placing = self._dragging or self.pointing.places_more or self.pointing.drawn is not None
        wanted = placing and self._moved_from is None and self.frame.zoom < looks.PLAIN
        self._magnified = place if wanted else None

    def _show_cursor(self, event: Any) -> None:
        grip = self.pointing.at(self._place(event), self._reach)
        if self._moved_from is not None:
            shape = Qt.ClosedHandCursor
        elif self._space:
            shape = Qt.OpenHandCursor
        elif grip is not None:
            shape = Qt.PointingHandCursor if grip.corner is None else Qt.SizeAllCursor
        else:
            shape = Qt.CrossCursor if self.pointing.places_more else Qt.ArrowCursor
        self.canvas.setCursor(shape)

    # --- keys ---------------------------------------------------------------------------------

    def _claim(self, event: Any) -> bool:
        """A key that is ours is not a shortcut of the host's; nor is its undo, which would take
        back a step that is not ours and close the panel with all that is drawn."""
        if event.key() == Qt.Key_Z and event.modifiers() & Qt.ControlModifier:
            event.accept()
            return True
        if event.key() in KEYS and not event.modifiers() & (Qt.ControlModifier | Qt.AltModifier):
            event.accept()
            return True
        return False

    def _key(self, event: Any) -> bool:
        key = event.key()
        if key == Qt.Key_Z and event.modifiers() & Qt.ControlModifier:
            self.pointing.step_back()
            self.refresh()
            return True
        if key not in KEYS or self.picture is None:
            return False
        if event.modifiers() & (Qt.ControlModifier | Qt.AltModifier):
            return False
        if key in ARROWS:
            self._arrow(ARROWS[key], 10 if event.modifiers() & Qt.ShiftModifier else 1)
        elif key == Qt.Key_F:
            self.fit()
        elif key == Qt.Key_1:
            self.zoom_to(1.0)
        elif key in (Qt.Key_Plus, Qt.Key_Equal, Qt.Key_Minus):
            self.zoom_to(self.frame.zoom * (1 / NOTCH if key == Qt.Key_Minus else NOTCH))
        elif key == Qt.Key_G:
            self.grid = not self.grid
        elif key == Qt.Key_Space:
            self._space = True
            self.canvas.setCursor(Qt.OpenHandCursor)
        elif key in (Qt.Key_Return, Qt.Key_Enter):
            self.pointing.close()
        elif key == Qt.Key_Escape:
            self._escape()
        elif key in (Qt.Key_Delete, Qt.Key_Backspace):
            self.pointing.delete()
        elif key in (Qt.Key_PageUp, Qt.Key_PageDown):
            self.paged(1 if key == Qt.Key_PageDown else -1)
        self.refresh()
        return True

    def _key_up(self, event: Any) -> bool:
        if event.key() == Qt.Key_Space and not event.isAutoRepeat():
            self._space = False
            self.canvas.setCursor(Qt.ArrowCursor)
        return event.key() in KEYS

    def _arrow(self, way: Place, steps: int) -> None:
        if self.pointing.nudge(way[0] * steps, way[1] * steps):
            self.show_place(self.pointing.grip.item.corners[self.pointing.grip.corner])
        else:
            far = 40.0 * steps ** 0.5
            self.frame.move(-far * way[0], -far * way[1], self.picture.size, self.size)

    def _escape(self) -> None:
        if self._dragging:
            self._dragging = False
            self.pointing.put_back()
        elif self.pointing.step_back():
            pass
        elif self.pointing.grip is not None:
            self.pointing.choose(None)
        else:
            self.escaped()

    # --- painting -----------------------------------------------------------------------------

    def _paint(self, event: Any) -> bool:
        if self.frame.fitted and self._fitted_to != self.free():
            self.fit()  # something has been laid over the widget, or taken away
        painter = QtGui.QPainter(self.canvas)
        try:
            self._draw(painter)
        finally:
            painter.end()
        return True

    def _draw(self, painter: QtGui.QPainter) -> None:
        width, height = self.size
        painter.fillRect(QtCore.QRectF(0.0, 0.0, width, height), QtGui.QColor(*AROUND))
        if self.picture is None:
            return
        self.picture.draw(painter, self.frame, width, height)
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        if self.grid:
            looks.draw_grid(painter, self.frame, self.picture, width, height)
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
            looks.draw_magnifier(
                painter, self.picture, self.frame, self._magnified, (width, height)
            )


def where(event: Any) -> Place:
    """The point of the widget that an event of the mouse or wheel happened at."""
    at = event.position() if hasattr(event, "position") else event.localPos()
    return at.x(), at.y()

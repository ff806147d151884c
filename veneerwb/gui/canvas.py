# SPDX-License-Identifier: LGPL-2.1-or-later
"""A widget of a form as a place to paint on, and to use the mouse and the keys on.

The host makes the widget; a filter of ours hears its events, so that no widget is Python's (see
DEVELOPERS.md, "A new panel"). What is done with them is a hand's, which knows no events: `Hand` for
a chart or a button, `Looking` for a picture that is larger than its place. On every picture:

wheel: zoom about the pointer · with Ctrl: turn the page · middle button, Space and drag, or drag
where nothing is held: move · F: all of it · 1: one to one · + and -: zoom · Page Up and Down: page
arrows: move what is chosen, or the picture; with Shift further
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from typing import Any, ClassVar, NamedTuple
from weakref import WeakSet

from PySide import QtCore, QtGui

from veneerwb.gui.keys import Action, Keys, plainly
from veneerwb.gui.panels import fields
from veneerwb.host import compat, settings
from veneerwb.paint import ink

Qt, Kind = QtCore.Qt, QtCore.QEvent

STILL = 4.0
"""Pixels that the mouse may move between press and release of a click."""
NOTCH = 1.25
"""How much larger a notch of the wheel makes a picture."""
FAR = 40.0
"""Pixels that an arrow key moves a picture by."""
ink.use(settings.colour)
ARROWS = {
    Qt.Key_Left: (-1, 0), Qt.Key_Right: (1, 0), Qt.Key_Up: (0, -1), Qt.Key_Down: (0, 1),
}  # fmt: skip
"""Across and down."""


class Place(NamedTuple):
    """Where the mouse is, in pixels of the widget."""

    x: float
    y: float


class Hand:
    """What is painted on a canvas, and done with the mouse and the keys there; those who use one
    override what they need."""

    looks = False
    """Whether Space, held, lets the picture be moved."""

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        """Paints so many pixels."""

    def pressed(self, at: Place) -> bool:
        """The left button went down; whether something follows the pointer from now on."""
        return False

    def dragged(self, at: Place) -> None:
        """What follows the pointer is here now."""

    def released(self) -> None:
        """What followed the pointer stays where it is."""

    def clicked(self, at: Place) -> None:
        """The left button was pressed and let go at a place, and nothing followed."""

    def doubled(self, at: Place) -> None:
        """A double click; its first click was told already."""

    def over(self, at: Place | None) -> None:
        """The mouse moved, perhaps with a button held; None when it has left."""

    def pan(self, across: float, down: float) -> None:
        """The picture is pulled by so many pixels."""

    def wheel(self, steps: float, at: Place) -> bool:
        """The wheel turned; up is positive, a notch is 1. Whether it was taken."""
        return False

    def turn(self, steps: float) -> bool:
        """The wheel turned with Ctrl held."""
        return False

    def resized(self) -> None:
        """The canvas has another size."""

    def cursor(self, at: Place) -> Any:
        """What the pointer looks like there."""
        return Qt.ArrowCursor

    @property
    def keys(self) -> Mapping[Any, Action]:
        """What keys do that are pressed without Ctrl and Alt."""
        return {}

    @property
    def keys_with_ctrl(self) -> Mapping[Any, Action]:
        """What keys do that are pressed with Ctrl."""
        return {}

    def arrow(self, across: int, down: int, steps: int) -> None:
        """An arrow key that `keys` lacks; `steps` is 10 with Shift."""

    arrow_with_alt: Callable[[int, int, int], None] | None = None
    """The same with Alt, for hands that take it."""


class Looking(Hand):
    """Looks at a picture that is larger than its place. `zoom`, `pan`, `fit` and `plain` say how;
    `page` how another is turned to."""

    looks = True
    _turned = 0.0

    def zoom(self, factor: float, at: Place | None = None) -> None:
        """Larger by `factor`, what lies at `at` (None: in the middle) staying there."""

    def fit(self) -> None:
        """Shows all of it."""

    def plain(self) -> None:
        """A pixel of the photograph on each of the screen."""

    def page(self, steps: int) -> None:
        """Turns so many pages on."""

    def wheel(self, steps: float, at: Place) -> bool:
        self.zoom(NOTCH**steps, at)
        return True

    def turn(self, steps: float) -> bool:
        self._turned -= steps  # a fine wheel turns less than a notch at a time
        whole = int(self._turned)
        self._turned -= whole
        if whole:
            self.page(whole)
        return True

    @property
    def keys(self) -> Mapping[Any, Action]:
        return {
            Qt.Key_F: self.fit, Qt.Key_1: self.plain,
            Qt.Key_Plus: lambda: self.zoom(NOTCH), Qt.Key_Equal: lambda: self.zoom(NOTCH),
            Qt.Key_Minus: lambda: self.zoom(1 / NOTCH),
            Qt.Key_PageUp: lambda: self.page(-1), Qt.Key_PageDown: lambda: self.page(1),
        }  # fmt: skip

    def arrow(self, across: int, down: int, steps: int) -> None:
        far = FAR * math.sqrt(steps)
        self.pan(-far * across, -far * down)


class Canvas(Keys):
    """Paints a widget by `hand`, and gives that the widget's events as plain values."""

    there: ClassVar[WeakSet[Canvas]] = WeakSet()
    """All that there are."""
    _does: Mapping[Any, Callable[[Any], Any]] = {}

    def __init__(self, widget: Any, hand: Hand) -> None:
        super().__init__(widget)
        self.there.add(self)
        self.hand = hand
        self._start: Place | None = None
        """Where the button went down, or where the picture was pulled to last."""
        self.pulling = False
        """Whether the picture follows the pointer."""
        self._held = self._space = False
        widget.setMouseTracking(True)
        widget.setFocusPolicy(Qt.StrongFocus)
        self._does = {
            Kind.Paint: self._paint,
            Kind.Resize: lambda event: self.hand.resized(),
            Kind.Wheel: self._wheel,
            Kind.MouseButtonPress: self._press,
            Kind.MouseButtonDblClick: self._double,
            Kind.MouseMove: self._move,
            Kind.MouseButtonRelease: self._release,
            Kind.Leave: lambda event: self.hand.over(None),
            Kind.KeyRelease: self._key_up,
            Kind.FocusOut: lambda event: self._let_space_go(),
        }

    def forget(self) -> None:
        super().forget()
        self.hand, self._does = None, {}

    @property
    def size(self) -> tuple[int, int]:
        return max(1, self.widget.width()), max(1, self.widget.height())

    def refresh(self) -> None:
        """Paints anew, soon: however often it is asked for, once for each turn of the events."""
        if self.widget is not None:
            self.widget.update()

    def eventFilter(self, watched: Any, event: Any) -> bool:
        does = self._does.get(event.type()) if self.widget is not None else None
        if does is not None:
            return bool(does(event))
        return super().eventFilter(watched, event)

    def _paint(self, event: Any) -> bool:
        """What cannot be painted is said instead."""
        painter = QtGui.QPainter(self.widget)
        try:
            self.hand.draw(painter, self.size)
        except Exception as error:
            painter.resetTransform()
            painter.setClipping(False)
            ink.say(painter, self.size, fields.told(error))
        finally:
            painter.end()
        return True

    # --- the mouse ----------------------------------------------------------------------------

    def _wheel(self, event: Any) -> bool:
        steps = (event.angleDelta().y() or event.angleDelta().x()) / 120.0
        if event.modifiers() & Qt.ControlModifier:
            return self.hand.turn(steps)
        return self.hand.wheel(steps, Place(*compat.pointer(event)))

    def _press(self, event: Any) -> bool:
        if self._held:  # another button meanwhile does nothing
            return True
        self.widget.setFocus()
        at, left = Place(*compat.pointer(event)), event.button() == Qt.LeftButton
        self.pulling = event.button() == Qt.MiddleButton or (left and self._space)
        if not (left or self.pulling):
            return False
        self._start, self._held = at, not self.pulling and self.hand.pressed(at)
        self._show_cursor(at)
        self.refresh()
        return True

    def _move(self, event: Any) -> bool:
        at = Place(*compat.pointer(event))
        if self._held:
            self.hand.dragged(at)
        elif self._start is not None and (
            self.pulling or math.dist(self._start, at) >= STILL
        ):
            self.hand.pan(at.x - self._start.x, at.y - self._start.y)
            self._start, self.pulling = at, True
        self.hand.over(at)
        self._show_cursor(at)
        return True

    def _release(self, event: Any) -> bool:
        if self._held and event.button() != Qt.LeftButton:
            return True
        start, held, pulling = self._start, self._held, self.pulling
        self._start, self._held, self.pulling = None, False, False
        if held:
            self.hand.released()
        elif start is not None and not pulling:
            self.hand.clicked(start)
        if self.widget is not None:  # a click may close the window
            self._show_cursor(Place(*compat.pointer(event)))
            self.refresh()
        return True

    def let_fall(self) -> None:
        """What follows the pointer does so no more."""
        self._start, self._held = None, False

    def _double(self, event: Any) -> bool:
        if event.button() == Qt.LeftButton:
            self.hand.doubled(Place(*compat.pointer(event)))
            self.refresh()
        return True

    def _show_cursor(self, at: Place) -> None:
        if self.pulling:
            shape = Qt.ClosedHandCursor
        else:
            shape = Qt.OpenHandCursor if self._space else self.hand.cursor(at)
        self.widget.setCursor(shape)

    # --- keys ---------------------------------------------------------------------------------

    def _action(self, event: Any) -> Action | None:
        key, keys = event.key(), self.hand.keys
        if not plainly(event):
            if event.modifiers() & Qt.ControlModifier:
                return self.hand.keys_with_ctrl.get(key)
            return self._arrow(event, self.hand.arrow_with_alt)
        if key in keys:
            return keys[key]
        if key in ARROWS:
            return self._arrow(event, self.hand.arrow)
        return self._take_space if key == Qt.Key_Space and self.hand.looks else None

    @staticmethod
    def _arrow(event: Any, does: Callable[[int, int, int], None] | None) -> Action | None:
        if does is None or event.key() not in ARROWS:
            return None
        steps = 10 if event.modifiers() & Qt.ShiftModifier else 1
        return lambda: does(*ARROWS[event.key()], steps)

    def _pressed_key(self, event: Any) -> bool:
        done = super()._pressed_key(event)
        if done:
            self.refresh()
        return done

    def _take_space(self) -> None:
        self._space = True
        self.widget.setCursor(Qt.OpenHandCursor)

    def _key_up(self, event: Any) -> bool:
        if event.key() == Qt.Key_Space and not event.isAutoRepeat():
            self._let_space_go()
        return False

    def _let_space_go(self) -> None:
        if self._space:
            self._space = False
            self.widget.setCursor(Qt.ArrowCursor)

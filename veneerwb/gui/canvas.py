# SPDX-License-Identifier: LGPL-2.1-or-later
"""A label of a form as a place to paint on and to use the mouse on.

The host makes the label; a filter of ours hears its events, so that no widget is Python's.
"""

from __future__ import annotations

from typing import Any, NamedTuple

from PySide import QtCore, QtGui

from veneerwb.host.objects.base import sentence
from veneerwb.paint import ink

STILL = 4
"""Pixels that the mouse may move between press and release of a click."""


class Place(NamedTuple):
    """Where the mouse is, in pixels, and whether Ctrl is held."""

    x: float
    y: float
    ctrl: bool = False


class Hand:
    """What a canvas does with the mouse and the keys; those who use one override what they need.
    `key` and `wheel` say whether they took it."""

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        """Paints so many pixels."""

    def clicked(self, at: Place) -> None:
        """The left button was pressed and let go at a place."""

    def dragged(self, by: tuple[float, float]) -> None:
        """The mouse moved so many pixels with the left button held."""

    def over(self, at: Place | None) -> None:
        """The mouse moved with no button held; None when it has left."""

    def wheel(self, steps: float, at: Place) -> bool:
        """The wheel turned; up is positive, a notch is 1."""
        return False

    def takes(self, key: Any) -> bool:
        """Whether a key is for the canvas, and not for the host."""
        return False

    def key(self, key: Any) -> bool:
        """A key was pressed."""
        return False


class Canvas(QtCore.QObject):
    """Paints a label by `hand`, and gives that the label's events."""

    def __init__(self, label: Any, hand: Hand) -> None:
        super().__init__()
        self.label, self.hand = label, hand
        self._pressed: Place | None = None
        self._last = Place(0.0, 0.0)
        self._dragging = False
        self.label.installEventFilter(self)

    def forget(self) -> None:
        """Lets go of the label, before it dies."""
        if self.label is not None:
            self.label.removeEventFilter(self)
            self.label = self.hand = None

    @property
    def size(self) -> tuple[int, int]:
        return max(1, self.label.width()), max(1, self.label.height())

    def refresh(self) -> None:
        """Paints anew, soon."""
        if self.label is not None:
            self.label.update()

    def _paint(self) -> bool:
        """What cannot be painted is said instead."""
        painter = QtGui.QPainter(self.label)
        try:
            self.hand.draw(painter, self.size)
        except Exception as error:
            ink.say(painter, self.size, sentence(error))
        finally:
            painter.end()
        return True

    def eventFilter(self, watched: Any, event: Any) -> bool:
        if self.label is None:
            return False
        kind = event.type()
        if kind == QtCore.QEvent.Paint:
            return self._paint()
        if kind == QtCore.QEvent.MouseButtonPress:
            return self._press(event)
        elif kind == QtCore.QEvent.MouseMove:
            return self._move(event)
        elif kind == QtCore.QEvent.MouseButtonRelease:
            return self._release(event)
        elif kind == QtCore.QEvent.Leave:
            self.hand.over(None)
        elif kind == QtCore.QEvent.Wheel:
            steps = (event.angleDelta().y() or event.angleDelta().x()) / 120.0
            return self.hand.wheel(steps, _place(event))
        elif kind == QtCore.QEvent.ShortcutOverride:
            return self._claim(event)
        elif kind == QtCore.QEvent.KeyPress:
            return self.hand.key(event.key()) if _plain(event) else False
        return False

    def _claim(self, event: Any) -> bool:
        """A key that is ours is not a shortcut of the host's."""
        if not _plain(event) or not self.hand.takes(event.key()):
            return False
        event.accept()
        return True

    def _press(self, event: Any) -> bool:
        if event.button() != QtCore.Qt.LeftButton:
            return False
        self._pressed = self._last = _place(event)
        self._dragging = False
        return True

    def _move(self, event: Any) -> bool:
        at = _place(event)
        if self._pressed is None:
            self.hand.over(at)
            return False
        far = abs(at.x - self._pressed.x) + abs(at.y - self._pressed.y) > STILL
        self._dragging = self._dragging or far
        if self._dragging:
            self.hand.dragged((at.x - self._last.x, at.y - self._last.y))
            self._last = at
        return True

    def _release(self, event: Any) -> bool:
        if self._pressed is None or event.button() != QtCore.Qt.LeftButton:
            return False
        pressed, self._pressed = self._pressed, None
        if not self._dragging:
            self.hand.clicked(pressed)
        return True


def _place(event: Any) -> Place:
    at = event.position() if hasattr(event, "position") else event.localPos()
    return Place(at.x(), at.y(), bool(event.modifiers() & QtCore.Qt.ControlModifier))


def _plain(event: Any) -> bool:
    """Whether a key is pressed without Ctrl and Alt."""
    return not event.modifiers() & (QtCore.Qt.ControlModifier | QtCore.Qt.AltModifier)

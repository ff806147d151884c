# SPDX-License-Identifier: LGPL-2.1-or-later
"""Keys of a widget of the host's, heard before its shortcuts. Needs no package, so that panels and
windows without a picture open where one is missing."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from PySide import QtCore

Qt, Kind = QtCore.Qt, QtCore.QEvent
Action = Callable[[], Any]


class Keys(QtCore.QObject):
    """Takes keys that are pressed on a widget, before the host's shortcuts do."""

    def __init__(self, widget: Any, keys: Mapping[Any, Action] | None = None) -> None:
        super().__init__()
        self.widget, self._keys = widget, keys or {}
        widget.installEventFilter(self)

    @classmethod
    def without_delete(cls, form: Any, action: Action = lambda: None) -> Keys:
        """Keeps Delete and Backspace in a form from the host, which would take away what is
        selected in the tree; `action` is what they do instead."""
        return cls(form, dict.fromkeys((Qt.Key_Delete, Qt.Key_Backspace), action))

    def forget(self) -> None:
        """Lets go of the widget, which may be dead already."""
        self.widget, self._keys = None, {}

    def _action(self, event: Any) -> Action | None:
        return self._keys.get(event.key()) if plainly(event) else None

    def _pressed_key(self, event: Any) -> bool:
        action = self._action(event)
        if action is None:
            return False
        event.accept()  # or it would go on to what the widget lies in
        action()
        return True

    def eventFilter(self, watched: Any, event: Any) -> bool:
        """Qt's; what is ours goes no further."""
        if self.widget is None:
            return False
        if event.type() == Kind.ShortcutOverride and self._action(event) is not None:
            event.accept()
            return True
        return event.type() == Kind.KeyPress and self._pressed_key(event)


def plainly(event: Any) -> bool:
    """Whether a key is pressed without Ctrl and Alt."""
    return not event.modifiers() & (Qt.ControlModifier | Qt.AltModifier)

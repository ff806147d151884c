# SPDX-License-Identifier: LGPL-2.1-or-later
"""A window beside a panel, made from a form: one of those in the middle of the host's window."""

from __future__ import annotations

import gc
import os
from collections.abc import Callable
from typing import Any

import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.gui import resources, themes
from veneerwb.gui.keys import Keys
from veneerwb.gui.later import later
from veneerwb.gui.panels import base
from veneerwb.host import compat

MARGIN, AIR = 4, 24
"""Pixels round the contents, and between them and a panel that lies over the window."""

OFTEN = 250
"""Milliseconds from one look at where the panel lies to the next."""

AT_FIRST = 4
"""Looks, a second in all, in which newer hosts may bring the 3-D view before a window that has just
been opened; then it is brought to the front again, unless it is a hand that does it."""

_last: list[Window] = []
"""The window that was brought to the front last: two would fight."""


class _Ear(QtCore.QObject):
    """Hears that a widget is being closed, which is deleted later, perhaps much later; and has it
    follow the host's style."""

    def __init__(self, widget: Any, heard: Callable[[], None]) -> None:
        super().__init__()
        self.heard = heard
        widget.installEventFilter(self)

    def eventFilter(self, watched: Any, event: Any) -> bool:
        if event.type() == QtCore.QEvent.Close:
            later(self.heard)
        elif event.type() in (QtCore.QEvent.Show, QtCore.QEvent.StyleChange):
            themes.fill(watched, FreeCADGui.getMainWindow())
        return False


def _on_screen(widget: Any) -> QtCore.QRect:
    return QtCore.QRect(widget.mapToGlobal(QtCore.QPoint(0, 0)), widget.size())


def in_a_panel(widget: Any) -> bool:
    """Whether a widget, or None, is a panel's that is open."""
    forms = [panel.form for panel in base.shown() if panel.form is not None]
    return widget is not None and any(form.isAncestorOf(widget) for form in forms)


def beside_panel(widget: Any) -> tuple[int, int]:
    """Pixels to leave free on the left and right of a widget in the middle of the host's window:
    newer hosts lay the panel over it. A margin where nothing lies over it."""
    margins = MARGIN, MARGIN
    for panel in base.shown():
        if panel.form is not None and panel.form.isVisible():
            margins = _beside(_on_screen(widget), _on_screen(panel.form))
    return margins


def _beside(ours: QtCore.QRect, theirs: QtCore.QRect) -> tuple[int, int]:
    """The margins, left and right, that leave what lies over a window alone."""
    if not ours.intersects(theirs):
        return MARGIN, MARGIN
    most = ours.width() // 2
    if theirs.center().x() > ours.center().x():
        return MARGIN, min(most, ours.right() - theirs.left() + AIR)
    return min(most, theirs.right() - ours.left() + AIR), MARGIN


class Window:
    """Closed by whoever opened it, or by the user, of which `closed` hears. Its widgets are the
    host's: when it closes, every name for one is dropped, and `form` is None from then on."""

    def __init__(
        self, drawn: str, title: str, picture: str, closed: Callable[[], None] = lambda: None
    ) -> None:
        """`drawn` is the form's file, `picture` its icon."""
        self.closed = closed
        self.form = FreeCADGui.UiLoader().load(os.path.join(resources("ui"), f"{drawn}.ui"))
        self.canvases: list[Any] = []
        self._made, self._frame = self.form, None
        self.form.setWindowTitle(title)
        self.form.setWindowIcon(FreeCADGui.getIcon(picture))
        self._ear = _Ear(self.form, self._gone)
        self._keys = Keys.without_delete(self.form)
        self.form.destroyed.connect(self._gone)
        self._watch = QtCore.QTimer()  # the host moves panels about without a word
        self._watch.timeout.connect(self._look)
        self._looks = 0

    def to_front(self) -> None:
        """Opens the window over the views, or brings it before them, and the keyboard to it."""
        area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
        if self._frame is None:
            self._frame = area.addSubWindow(self.form)
            self._frame.setWindowIcon(self.form.windowIcon())
            self._frame.showMaximized()
        area.setActiveSubWindow(self._frame)
        if self.canvases:
            self.canvases[0].widget.setFocus()
        self.keep_clear()
        self._looks, _last[:] = AT_FIRST, [self]
        self._watch.start(OFTEN)

    def _look(self) -> None:
        if self._looks and self._frame is not None and self in _last:
            if QtGui.QApplication.mouseButtons() != QtCore.Qt.NoButton:
                self._looks = 0
            else:
                self.stay_in_front()
            self._looks = max(0, self._looks - 1)
        self.keep_clear()

    def stay_in_front(self) -> None:
        """Brings the window there again where the host has put another view before it. Nobody has
        asked for that: the keyboard stays with a panel's box that it is in, for to leave it would
        read, and write anew, what is half typed."""
        area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
        if self._frame is None or area.activeSubWindow() is self._frame:
            return
        if in_a_panel(QtGui.QApplication.focusWidget()):
            self._frame.raise_()
        else:
            area.setActiveSubWindow(self._frame)

    def keep_clear(self) -> None:
        """Newer hosts lay the panel over the views: what is in the window makes room for it."""
        if self.form is None:
            return
        left, right = beside_panel(self.form)
        layout = self.form.layout()
        if layout.getContentsMargins()[::2] != (left, right):
            layout.setContentsMargins(left, MARGIN, right, MARGIN)

    def close(self) -> None:
        """Closes the window, unless the user has."""
        if self._made is not None:
            made, frame = self._made, self._frame
            if frame is None:
                made.deleteLater()
            else:
                frame.close()  # hidden now, deleted later
            self.let_go()
            if frame is not None:
                compat.forget(frame)

    def _gone(self, *_: Any) -> None:
        """The user closed the window, or the host did."""
        if self._made is not None:
            closed = self.closed
            self.let_go()
            closed()

    def let_go(self) -> None:
        """Forgets every widget."""
        self._watch.stop()
        self._watch.timeout.disconnect(self._look)
        _last[:] = [one for one in _last if one is not self]
        self._keys.forget()
        for canvas in self.canvases:
            canvas.forget()
        form, self.form, self._made, self._frame = self._made, None, None, None
        self.canvases, self.closed, self._ear = [], lambda: None, None
        compat.forget(form)
        gc.collect()

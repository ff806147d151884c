# SPDX-License-Identifier: LGPL-2.1-or-later
"""A window beside a panel, made from a form: one of those in the middle of the host's window."""

from __future__ import annotations

import gc
import os
from collections.abc import Callable
from typing import Any

import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.gui import resources
from veneerwb.gui.canvas import Canvas
from veneerwb.host import compat

MARGIN, AIR = 6, 24
"""Pixels round the contents, and between them and a panel that lies over the window."""

OFTEN = 250
"""Milliseconds from one look at where the panel lies to the next."""


def _on_screen(widget: Any) -> QtCore.QRect:
    return QtCore.QRect(widget.mapToGlobal(QtCore.QPoint(0, 0)), widget.size())


class SideWindow:
    """Closed by whoever opened it, or by the user, of which `closed` hears. Its widgets are the
    host's: when it closes, every name for one is dropped, and `form` is None from then on."""

    def __init__(
        self, drawn: str, title: str, picture: str, closed: Callable[[], None] = lambda: None
    ) -> None:
        """`drawn` is the form's file, `picture` its icon."""
        self.closed = closed
        self.form = FreeCADGui.UiLoader().load(os.path.join(resources("ui"), f"{drawn}.ui"))
        self.canvases: list[Canvas] = []
        self._made, self._frame, self._beside = self.form, None, None
        self.form.setWindowTitle(title)
        self.form.setWindowIcon(FreeCADGui.getIcon(picture))
        self.form.destroyed.connect(self._gone)
        self._watch = QtCore.QTimer()  # the host moves panels about without a word
        self._watch.timeout.connect(self.keep_clear)

    def show(self, beside: Any = None) -> None:
        """Opens the window over the views, or brings it before them; `beside`: the panel that its
        contents are to keep clear of."""
        self._beside = beside
        area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
        if self._frame is None:
            self._frame = area.addSubWindow(self.form)
            self._frame.setWindowIcon(self.form.windowIcon())
            self._frame.showMaximized()
        area.setActiveSubWindow(self._frame)
        self._watch.start(OFTEN)

    def keep_clear(self) -> None:
        """Newer hosts lay the panel over the views: what is in the window makes room for it."""
        if self.form is None or self._beside is None:
            return
        ours, theirs = _on_screen(self.form), _on_screen(self._beside)
        left = right = MARGIN
        if ours.intersects(theirs):
            most = ours.width() // 2
            if theirs.center().x() > ours.center().x():
                right = min(most, ours.right() - theirs.left() + AIR)
            else:
                left = min(most, theirs.right() - ours.left() + AIR)
        layout = self.form.layout()
        if layout.getContentsMargins()[::2] != (left, right):
            layout.setContentsMargins(left, MARGIN, right, MARGIN)

    def close(self) -> None:
        """Closes the window, unless the user has."""
        if self._made is not None:
            made, frame = self._made, self._frame
            if frame is None:
                made.deleteLater()
            self.let_go()
            if frame is not None:
                frame.close()
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
        self._watch.timeout.disconnect(self.keep_clear)
        for canvas in self.canvases:
            canvas.forget()
        form, self.form, self._made, self._frame = self._made, None, None, None
        self._beside = None
        self.canvases, self.closed = [], lambda: None
        compat.forget(form)
        gc.collect()

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A window for photographs beside a panel: one of those in the middle of the host's window, closed
by whoever opened it, or by the user."""

from __future__ import annotations

import gc
import os
from collections.abc import Callable, Sequence
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.gui import resources
from veneerwb.gui.later import later
from veneerwb.gui.panels import base
from veneerwb.gui.photo_frame import Picture, Place
from veneerwb.gui.photo_view import NOTCH, PhotoView
from veneerwb.host import compat

translate = FreeCAD.Qt.translate
HERE = "VeneerPhoto"
ASIDE = 24
"""Widget pixels that a panel's frame is wider than its form."""


class _Ear(QtCore.QObject):
    """Hears that a widget is being closed; it is deleted later, which may be much later."""

    def __init__(self, widget: Any, heard: Callable[[], None]) -> None:
        super().__init__()
        self.heard = heard
        widget.installEventFilter(self)

    def eventFilter(self, watched: Any, event: Any) -> bool:
        if event.type() == QtCore.QEvent.Close:
            later(self.heard)
        return False


class PhotoWindow:
    """`view` is the photograph in it. `turned` is called with the number of the page that the user
    turns to; `closed` when the user closes the window.

    Its widgets are the host's. When it closes, or is closed, every name for one is dropped.
    """

    def __init__(
        self,
        title: str,
        pages: Sequence[str] = (),
        turned: Callable[[int], None] = lambda page: None,
        closed: Callable[[], None] = lambda: None,
    ) -> None:
        self.turned, self.closed = turned, closed
        self.form = FreeCADGui.UiLoader().load(os.path.join(resources("ui"), "photo.ui"))
        self._made = self.form
        self.view = PhotoView(self.form.canvas)
        self.view.hovered, self.view.free = self._tell, self._free
        self.view.paged = self._turn
        self.form.setWindowTitle(title)
        self.form.setWindowIcon(FreeCADGui.getIcon("veneer-leaf"))
        self._listen()
        self._ear = _Ear(self.form, self._gone)
        self.offer(pages)
        self.say("")
        area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
        self._frame = area.addSubWindow(self.form)
        self._frame.setWindowIcon(self.form.windowIcon())
        self.form.destroyed.connect(self._gone)
        self._frame.showMaximized()
        self.form.canvas.setFocus()

    def _listen(self) -> None:
        form, view = self.form, self.view
        form.fit.clicked.connect(view.fit)
        form.plain.clicked.connect(lambda: view.zoom_to(1.0))
        form.closer.clicked.connect(lambda: view.zoom_to(view.frame.zoom * NOTCH))
        form.further.clicked.connect(lambda: view.zoom_to(view.frame.zoom / NOTCH))
        form.grid.toggled.connect(self._show_grid)
        form.before.clicked.connect(lambda: self._turn(-1))
        form.after.clicked.connect(lambda: self._turn(1))
        form.page.currentIndexChanged.connect(self._turned)

    # --- pages --------------------------------------------------------------------------------

    def offer(self, pages: Sequence[str], page: int = 0) -> None:
        """The names of the photographs that can be turned to; `page` is the one that is shown."""
        form = self.form
        form.page.blockSignals(True)
        form.page.clear()
        for name in pages:
            form.page.addItem(name)
        form.page.setCurrentIndex(page if pages else -1)
        form.page.blockSignals(False)
        for button in (form.before, form.page, form.after):
            button.setVisible(len(pages) > 1)
        self._bound()

    @property
    def page(self) -> int:
        """The number of the page that is shown, from 0."""
        return max(0, self.form.page.currentIndex())

    def turn_to(self, page: int) -> None:
        """Turns to a page, as the user does."""
        self.form.page.setCurrentIndex(page)

    def _turn(self, step: int) -> None:
        page = self.page + step
        if 0 <= page < self.form.page.count():
            self.form.page.setCurrentIndex(page)

    def _turned(self, page: int) -> None:
        self._bound()
        if page >= 0:
            self.turned(page)

    def _bound(self) -> None:
        form = self.form
        form.before.setEnabled(form.page.currentIndex() > 0)
        form.after.setEnabled(form.page.currentIndex() < form.page.count() - 1)

    # --- what is shown and said ---------------------------------------------------------------

    def show(self, picture: Picture | None, keep: bool = False) -> None:
        """Another photograph; with `keep` seen where the one before was."""
        self.view.show(picture, keep)
        self.form.grid.setEnabled(picture is not None and picture.mm_per_px is not None)

    def say(self, hint: str) -> None:
        """What the user is to do now."""
        self.form.hint.setText(hint)

    def to_front(self) -> None:
        """Shows the window above the others of its kind."""
        FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea).setActiveSubWindow(self._frame)
        self.form.canvas.setFocus()

    def _show_grid(self, shown: bool) -> None:
        self.view.grid = shown
        self.view.refresh()

    def _tell(self, place: Place | None) -> None:
        """Says where the pointer is, in pixels and, if they are known, in the user's lengths."""
        if self.form is None:
            return
        if self.view.grid != self.form.grid.isChecked():  # by its key
            self.form.grid.setChecked(self.view.grid)
        text = ""
        if place is not None:
            text = translate(HERE, "Column {column}, row {row}").format(
                column=f"{place[0]:.1f}", row=f"{place[1]:.1f}"
            )
            mm = self.view.picture.mm(place)
            if mm is not None:
                lengths = [FreeCAD.Units.Quantity(one, FreeCAD.Units.Length) for one in mm]
                text += translate(HERE, "; {across} across, {along} along").format(
                    across=lengths[0].UserString, along=lengths[1].UserString
                )
            text += f"; {100 * self.view.frame.zoom:.0f} %"
        if self.view.grid and self.view.step is not None:
            step = FreeCAD.Units.Quantity(self.view.step, FreeCAD.Units.Length)
            grid = translate(HERE, "lines every {step}").format(step=step.UserString)
            text = f"{text}; {grid}" if text else grid
        self.form.place.setText(text)

    def _free(self) -> Place:
        """What of the photograph is seen: newer hosts lay panels over the right of the window."""
        width, height = self.view.size
        for panel in base.shown():
            if panel.form is not None and panel.form.isVisible():
                corner = panel.form.mapToGlobal(QtCore.QPoint(0, 0))
                left = self.form.canvas.mapFromGlobal(corner).x() - ASIDE
                if 0.4 * width < left < width:
                    width = float(left)
        return width, height

    # --- the end ------------------------------------------------------------------------------

    def close(self) -> None:
        """Closes the window, if the user has not."""
        if self._made is not None:
            self._frame.close()  # hidden now, deleted later
            self.let_go()

    def _gone(self, *_: Any) -> None:
        """The user has closed the window, or the host did."""
        if self._made is not None:
            self.let_go()
            self.closed()

    def let_go(self) -> None:
        """Forgets every widget."""
        form, self.form, self._made = self._made, None, None
        frame, self._frame = self._frame, None
        form.removeEventFilter(self._ear)
        self._ear = None
        self.view.let_go()
        compat.forget(form)
        compat.forget(frame)
        gc.collect()

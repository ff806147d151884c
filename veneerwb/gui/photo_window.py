# SPDX-License-Identifier: LGPL-2.1-or-later
"""A window for photographs beside a panel, to be looked at and pointed at."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import FreeCAD

from veneerwb.gui.canvas import NOTCH
from veneerwb.gui.photo_frame import Picture, Place
from veneerwb.gui.photo_view import PhotoView
from veneerwb.gui.side_window import Window

translate = FreeCAD.Qt.translate
HERE = "VeneerPhoto"


class PhotoWindow(Window):
    """`view` is the photograph in it. `turned` is called with the number of the page that the user
    turns to; `closed` when the user closes the window. It opens at once."""

    def __init__(
        self,
        title: str,
        pages: Sequence[str] = (),
        turned: Callable[[int], None] = lambda page: None,
        closed: Callable[[], None] = lambda: None,
    ) -> None:
        super().__init__("photo", title, "veneer-leaf", closed)
        self.turned = turned
        self.view = PhotoView(self.form.canvas)
        self.view.hovered, self.view.paged = self._tell, self._turn
        self.canvases = [self.view.events]
        self._listen()
        self.offer(pages)
        self.say("")
        self.to_front()

    def _listen(self) -> None:
        form, view = self.form, self.view
        form.fit.clicked.connect(view.fit)
        form.plain.clicked.connect(view.plain)
        form.closer.clicked.connect(lambda: view.zoom(NOTCH))
        form.further.clicked.connect(lambda: view.zoom(1 / NOTCH))
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

    def _turn(self, steps: int) -> None:
        """So many pages on, or as far as there are any."""
        last = self.form.page.count() - 1
        if last >= 0:
            self.form.page.setCurrentIndex(min(last, max(0, self.page + steps)))

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

    def let_go(self) -> None:
        super().let_go()
        self.view.let_go()
        self.turned = lambda page: None

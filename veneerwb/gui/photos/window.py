# SPDX-License-Identifier: LGPL-2.1-or-later
"""Windows for photographs beside a panel, to be looked at and pointed at."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import FreeCAD

from veneerwb.gui.canvas import NOTCH
from veneerwb.gui.panels import fields
from veneerwb.gui.photos.frame import Picture, Place
from veneerwb.gui.photos.view import PhotoView
from veneerwb.gui.side_window import Window
from veneerwb.words import figure

translate = FreeCAD.Qt.translate
HERE = "VeneerPhoto"


class ViewWindow(Window):
    """A window on a photograph: its buttons bring `view`, which shows it, closer and lay a grid
    over it; its label `place` says where the pointer is."""

    view: PhotoView

    def _listen(self) -> None:
        form, view = self.form, self.view
        form.fit.clicked.connect(view.fit)
        form.closer.clicked.connect(lambda: view.zoom(NOTCH))
        form.further.clicked.connect(lambda: view.zoom(1 / NOTCH))
        form.grid.toggled.connect(self._show_grid)
        form.before.clicked.connect(lambda: self.turn(-1))
        form.after.clicked.connect(lambda: self.turn(1))

    def turn(self, steps: int) -> None:
        """Turns so many photographs on, or as far as there are any."""

    def _show_grid(self, shown: bool) -> None:
        self.view.grid = shown
        self.view.refresh()

    def _tell_place(self, *parts: str) -> None:
        """Says what is under the pointer, and how far the lines of the grid are apart."""
        if self.form is None:
            return
        if self.view.grid != self.form.grid.isChecked():  # by its key
            self.form.grid.setChecked(self.view.grid)
        if self.view.grid and self.view.step is not None:
            step = fields.length(self.view.step, 0 if self.view.step >= 1.0 else 1)
            parts += (translate(HERE, "lines every {step}").format(step=step),)
        self.form.place.setText("; ".join(filter(None, parts)))

    def where(self, place: Place) -> str:
        """A place of the photograph in the user's lengths; "" where its scale is not known."""
        mm = self.view.picture.mm(place)
        if mm is None:
            return ""
        across, along = (fields.length(value, 2) for value in mm)
        return translate(HERE, "{across} across, {along} along").format(across=across, along=along)


class PhotoWindow(ViewWindow):
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
        self.view.hovered, self.view.paged = self._tell, self.turn
        self.canvases = [self.view.events]
        self._listen()
        self.offer(pages)
        self.say("")
        self.to_front()

    def _listen(self) -> None:
        super()._listen()
        self.form.plain.clicked.connect(self.view.plain)
        self.form.page.currentIndexChanged.connect(self._turned)

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

    def turn(self, steps: int) -> None:
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

    def _tell(self, place: Place | None) -> None:
        """Says where the pointer is, in pixels and, if they are known, in the user's lengths."""
        if place is None:
            self._tell_place()
            return
        pixel = translate(HERE, "Column {column}, row {row}").format(
            column=figure(place[0], ".1f"), row=figure(place[1], ".1f")
        )
        self._tell_place(pixel, self.where(place), f"{100 * self.view.frame.zoom:.0f} %")

    def let_go(self) -> None:
        super().let_go()
        self.view.let_go()
        self.turned = lambda page: None

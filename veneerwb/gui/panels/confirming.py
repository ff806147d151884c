# SPDX-License-Identifier: LGPL-2.1-or-later
"""The page of the marks' panel on which a photograph of a pinned leaf, or of a whole stack, bears
out the registers or does not. Nothing of it goes into the document."""

from __future__ import annotations

import os
from typing import Any

import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.findings import LOOKS
from veneerwb.gui.photos.items import Grip, Item
from veneerwb.gui.photos.window import PhotoWindow

HERE = "VeneerMarksPanel"
STAND = ("pin_x", "pin_y")


class Confirming:
    """`panel` is the marks' panel, whose form has the page; `book` is made anew for each bundle."""

    def __init__(self, panel: Any) -> None:
        self.panel = panel
        self.window: PhotoWindow | None = None
        self.book: Any = None
        self.chosen: Any = None
        """A Sighting of the book, or None."""
        self._name = ""
        self._filling = False
        self._names: list[Any] = []
        self._next: Any = None  # the name that the next click takes
        form = panel.form
        form.photograph.clicked.connect(lambda *_: panel.attempt(self._ask))
        form.see.clicked.connect(lambda *_: self.look())
        form.drop.clicked.connect(lambda *_: self.drop())
        form.sightings.clicked.connect(self.pick)
        form.sightings.activated.connect(self.pick)
        fields.watch(form.clicked, self._renamed)
        for name in ("top", "camera"):
            fields.watch(getattr(form, name), self._changed)
        for name in STAND:
            fields.watch(getattr(form, name), self._pin_moved)
        for name in ("camera", *STAND):
            panel.take_mixed_numbers(name)

    def open(self, bundle: Any, places: Any = None, name: str = "") -> None:
        """For a bundle (None: for none) of that name; of the one that is open already, read anew,
        what was clicked is kept. `places` gives a leaf's marks."""
        if bundle is not None and self.book is not None and name == self._name:
            self.book.read_again(bundle, places)
        else:
            self.close()
            self.book = self.chosen = self._next = None
        self._name = name
        if bundle is not None:
            if self.book is None:
                from veneerwb.gui.books.stack import StackBook

                self.book = StackBook(bundle, places)
            self._fill(bundle)
        self.lay_out()

    def _fill(self, bundle: Any) -> None:
        form, numbers = self.panel.form, list(bundle.numbers)
        self._filling = True
        form.top.clear()
        texts = [translate(HERE, "Leaf {number}").format(number=one) for one in numbers]
        fields.offer(form.top, numbers, texts)
        fields.fill(form.top, self.book.top)
        self.panel.fill("camera", self.book.camera)
        self._filling = False

    @property
    def clicked(self) -> bool:
        """Whether anything was."""
        return self.book is not None and bool(self.book.sightings)

    # --- the window ---------------------------------------------------------------------------

    def _ask(self) -> None:
        from veneerwb.core.photos.reading import SUFFIXES

        kinds = " ".join(f"*{suffix} *{suffix.upper()}" for suffix in SUFFIXES)
        title = translate(HERE, "Photograph of what is pinned")
        start = os.path.dirname(self.panel.doc.FileName)
        path, _ = QtGui.QFileDialog.getOpenFileName(
            FreeCADGui.getMainWindow(), title, start, f"{title} ({kinds})"
        )
        if path and self.book is not None:
            self.take(path)

    def take(self, path: str) -> None:
        """Shows a photograph to be clicked on. Raises VeneerError for one that cannot be read."""
        self.book.read(path)
        self.chosen = self._next = None
        self.look()
        self.window.show(self.book.picture)
        self.lay_out()

    def look(self) -> None:
        """Opens the window with the photograph, or brings it to the front."""
        if self.book is None or self.book.picture is None:
            return
        if self.window is None:
            title = translate(HERE, "What Is Pinned")
            self.window = PhotoWindow(title, (), closed=self._closed)
            pointing = self.window.view.pointing
            pointing.changed, pointing.chosen = self._item_changed, self._item_chosen
            self.window.show(self.book.picture)
            self.lay_out(self.chosen)
        self.window.to_front()

    def _closed(self) -> None:
        self.window = None

    def close(self) -> None:
        window, self.window = self.window, None
        if window is not None:
            window.close()

    def let_go(self) -> None:
        """The panel is through."""
        self.close()
        self.book = self.chosen = self._next = None

    # --- what is seen -------------------------------------------------------------------------

    def lay_out(self, chosen: Any = None) -> None:
        """The items, the lists and the verdict anew; `chosen` is chosen then."""
        form, book, self.chosen = self.panel.form, self.book, chosen
        photographed = book is not None and book.picture is not None
        form.sightings.clear()
        for one in book.sightings if book is not None else ():
            form.sightings.addItem(one.told())
        for name in ("see", "sightings", "clicked", "drop"):
            getattr(form, name).setEnabled(photographed)
        form.file.setText(book.file if photographed else translate(
            HERE, "Choose a photograph of the pinned leaf, its marks and both pins in sight, or of "
                  "the stack, marks of its leaves in sight."))
        if self.window is not None:
            pointing = self.window.view.pointing
            pointing.marks = book.items()
            pointing.most = len(book.names())
            item = next((one for one in pointing.marks if one.meant is chosen), None)
            pointing.grip = None if item is None else Grip(item, 0)
        self.arrange()
        self.judge()

    def arrange(self) -> None:
        """Boxes and hint as what is chosen needs them."""
        if self.book is None:
            return
        form, book = self.panel.form, self.book
        self._filling = True
        self._names = book.names()
        form.clicked.clear()
        for name in self._names:
            form.clicked.addItem(name.text)
        self._next = book.following(self._next)
        shown = self._shown()
        form.clicked.setCurrentIndex(self._names.index(shown) if shown in self._names else -1)
        pin = shown is not None and shown.is_pin
        for box in (form.pin_x, form.pin_y):
            for one in (box, form.confirming.layout().labelForField(box)):
                one.setVisible(pin)
        if pin:
            for name, value in zip(STAND, book.stand[shown.which]):
                self.panel.fill(name, value)
        rows = book.sightings
        form.sightings.setCurrentRow(rows.index(self.chosen) if self.chosen in rows else -1)
        form.drop.setEnabled(self.chosen is not None)
        self._filling = False
        if self.window is not None:
            self.window.say(self._hint())
            self.window.view.refresh()

    def _shown(self) -> Any:
        """The name of what is chosen, else of the next click; None where all are clicked."""
        return self.chosen.name if self.chosen is not None else self._next

    def _hint(self) -> str:
        if all(name.is_pin for name in self._names):
            return translate(HERE, "No leaf has marks yet: locate them on the page before.")
        if self._next is None:
            return translate(HERE, "All are clicked on.")
        text = translate(HERE, "Click on mark {name}, roughly; it is centred by itself.")
        if self._next.is_pin:
            text = translate(HERE, "Zoom in and click on the middle of {name}.")
        more = translate(HERE, "Not in sight? Choose another one in the panel.")
        return f"{text.format(name=self._next.text)} {more}"

    def judge(self) -> None:
        """What the photograph says, in the list."""
        form, book = self.panel.form, self.book
        form.verdict.clear()
        form.source.setText("")
        if book is None or book.picture is None or not book.sightings:
            return
        from veneerwb.core import VeneerError
        from veneerwb.core.targets import together

        try:
            findings = book.verdict()
        except VeneerError as error:
            form.verdict.addItem(fields.in_words(error))
            return
        model, style = form.verdict.model(), form.verdict.style()
        for row, finding in enumerate(together(findings)):
            told = fields.in_units(finding)
            form.verdict.addItem(" ".join(filter(None, (told.text, told.remedy))))
            looks = style.standardIcon(LOOKS[finding.level])
            model.setData(model.index(row, 0), looks, QtCore.Qt.DecorationRole)
        form.source.setText(book.source(findings))

    # --- what the user does -------------------------------------------------------------------

    def _changed(self, *_: Any) -> None:
        """Another leaf lies topmost, or the camera was elsewhere."""
        if self._filling or self.book is None:
            return
        self.book.top = self.panel.form.top.currentData()
        self.book.camera = self.panel.value("camera")
        self.panel.attempt(self.judge)

    def _pin_moved(self, *_: Any) -> None:
        """The pin that is shown stands elsewhere in the bundle."""
        name = self._shown()
        if self._filling or name is None or not name.is_pin:
            return
        self.book.stand[name.which] = tuple(self.panel.value(one) for one in STAND)
        self.panel.attempt(self.judge)

    def _renamed(self, row: int) -> None:
        """A name for what is chosen; else, and where that cannot be, for the next click."""
        if self._filling or not 0 <= row < len(self._names):
            return
        name = self._names[row]
        if self.chosen is not None and self.chosen.name.is_pin == name.is_pin:
            self.book.rename(self.chosen, name)
            self.panel.attempt(lambda: self.lay_out(self.chosen))
        else:
            self._next = name
            self.panel.attempt(lambda: self.lay_out(self.book.on(name)))

    def pick(self, index: Any) -> None:
        """Chooses what stands in that row of the list."""
        if self.book is None or index.row() >= len(self.book.sightings):
            return
        entry = self.book.sightings[index.row()]
        if self.panel.attempt(lambda: self.lay_out(entry)) and self.window is not None:
            self.window.view.show_place(entry.place)

    def _item_chosen(self, item: Item | None) -> None:
        """Something was chosen by the mouse; what is being placed is nothing yet."""
        if item is not None and item.meant is None:
            return
        self.chosen = None if item is None else item.meant
        self.arrange()

    def _item_changed(self, item: Item) -> None:
        """The user placed, moved or deleted something on the photograph."""
        if item in self.window.view.pointing.marks:
            self.panel.attempt(lambda: self._click(item))
        else:
            self.chosen = item.meant
            self.drop()

    def _click(self, item: Item) -> None:
        entry = item.meant
        name = entry.name if entry is not None else self._next
        try:
            if name is not None:
                self.book.click(item.place, name, entry, self.window.view.frame.zoom)
        finally:  # a mark that is none goes, one that was moved goes back
            self.lay_out(entry)  # what is new is not chosen: the box names the next one

    def drop(self) -> None:
        """Takes what is chosen away."""
        if self.chosen is not None:
            self._next = self.chosen.name
            self.book.sightings.remove(self.chosen)
            self.panel.attempt(self.lay_out)

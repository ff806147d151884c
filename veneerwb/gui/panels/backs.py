# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel in which photographs of backs are added and tied to their faces, and asked how the
leaves lay and how far the figure wanders through a leaf."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import FreeCADGui
from PySide import QtGui

from veneerwb.gui.books.back_words import sense_told, wander_told
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.at_work import AtWork, Progress
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.leaf_by_leaf import LeafByLeaf
from veneerwb.gui.photos.items import Grip, Item
from veneerwb.host import compat
from veneerwb.host.objects.base import Refused

HERE = "VeneerBacksPanel"
SIDES = ("face", "back", "both")
SCALES = ("face", "pixel")
MOST = 6
"""Marks on a side."""
MOST_LOW = 110
"""Pixels that the list of backs takes at most."""


def look(doc: Any, bundles: list[Any], number: int | None = None) -> BacksPanel:
    """Opens the panel on the bundles of a document, the first of them shown, at a leaf."""
    panel = BacksPanel(doc, bundles, number)
    panel.show()
    panel.look()
    return panel


class BacksPanel(LeafByLeaf, AtWork):
    """What is added, tied and found out goes into the document with OK, in one step; until then it
    is the panel's."""

    lists = ("backs",)
    locked = (
        "bundle", "leaf", "side", "backs", "pin", "add", "add_one", "outline", "by_marks", "turn",
        "take", "prove", "say_so", "measure",
    )  # fmt: skip

    def __init__(self, doc: Any, bundles: list[Any], number: int | None = None) -> None:
        self.title = translate(HERE, "Backs")
        self.done = translate(HERE, "Tie backs")
        super().__init__(doc, "backs", "veneer-backs", bundles, number)

    def prepare(self) -> None:
        form = self.form
        fields.offer(form.side, SIDES)
        fields.offer(form.scale, SCALES)
        fields.offer(form.pin, ("face", "figure"))
        self.fill("per_pixel", 0.5)
        self.take_mixed_numbers("per_pixel")
        for box, heard in (
            (form.side, self._turned), (form.scale, self._arrange), (form.pin, self._pinned),
        ):  # fmt: skip
            fields.watch(box, heard)
        for button, action in (
            ("add", self._add), ("add_one", self._add_one), ("outline", self._by_outline),
            ("by_marks", self._by_marks), ("turn", self._turn), ("take", self._take),
            ("prove", self._prove), ("say_so", self._say_so), ("measure", self._measure),
            ("look", self.look),
        ):  # fmt: skip
            self.connect(button, action)
        form.backs.clicked.connect(self.pick)
        form.backs.activated.connect(self.pick)

    def read(self) -> Any:
        from veneerwb.gui.books.backs import BackBook

        return BackBook(self.obj)

    def point_out(self, view: Any) -> None:
        view.pointing.changed, view.pointing.chosen = self._item_changed, self._item_chosen

    # --- what is shown ------------------------------------------------------------------------

    @property
    def side(self) -> str:
        return self.form.side.currentData()

    def _show(self) -> None:
        """The chosen side of the leaf; where its back was not photographed, its face."""
        if self.number not in self.book.numbers and self.side != "face":
            self._silently(self.form.side, "face")
        self.picture = self.book.picture(self.number, self.side)
        if self.window is not None:
            if self.window.page != self.form.leaf.currentIndex():
                self.window.turn_to(self.form.leaf.currentIndex())
            self.window.show(self.picture, keep=True)
        self.lay_out()

    @staticmethod
    def _silently(box: Any, wanted: Any) -> None:
        box.blockSignals(True)
        fields.fill(box, wanted)
        box.blockSignals(False)

    def clear(self) -> None:
        self.form.backs.clear()
        for label in (self.form.told, self.form.sense, self.form.wander, self.form.counted):
            label.setText("")

    def lay_out(self, chosen: Any = None) -> None:
        form, book = self.form, self.book
        self.chosen = chosen
        form.backs.clear()
        for number in book.numbers:
            form.backs.addItem(book.listed(number))
        here = book.numbers.index(self.number) if self.number in book.numbers else -1
        form.backs.setCurrentRow(here)
        row = max(form.backs.sizeHintForRow(0), 16)  # no taller than needed: the panel is low
        form.backs.setFixedHeight(min(MOST_LOW, max(2, len(book.numbers)) * row + 8))
        count = translate(HERE, "{backs} of {leaves} backs are photographed.")
        form.counted.setText(
            count.format(backs=len(book.numbers), leaves=len(book.bundle.numbers))
        )
        form.told.setText(book.told(self.number))
        form.sense.setText(sense_told(book))
        form.wander.setText(wander_told(book))
        self._silently(form.pin, book.pin)
        if self.window is not None:
            pointing = self.window.view.pointing
            pointing.marks = book.items(self.number, self.side, self.picture)
            item = next((one for one in pointing.marks if one.meant is chosen), None)
            pointing.grip = None if item is None or chosen is None else Grip(item, 0)
        self._arrange()

    def _arrange(self, *_: Any) -> None:
        form, book = self.form, self.book
        apart = form.scale.currentData() == "pixel"
        for box in (form.per_pixel, form.per_pixel_label):
            box.setVisible(apart)
        if book is None:
            return
        here, some = self.number in book.numbers, bool(book.numbers)
        for button in (form.outline, form.by_marks, form.prove, form.measure):
            button.setEnabled(some)
        form.turn.setEnabled(here and self.number in book.ties)
        form.take.setVisible(here and book.doubted(self.number))
        form.say_so.setVisible(
            book.sense is not None and book.sense.back not in (None, book.bundle.back)
        )
        for box in (form.pin, form.pin_label):
            box.setVisible(bool(book.kept))
        self._hint()

    def _hint(self) -> None:
        if self.window is None:
            return
        pointing = self.window.view.pointing
        pointing.most, pointing.letters = 0, ""
        if self.side == "both":
            text = translate(HERE, "Strips of face and back in turn: their edges should meet.")
        elif self.number not in self.book.numbers:
            text = translate(HERE, "The back of this leaf is not photographed.")
        else:
            free = self.book.free(self.number, self.side)
            pointing.most, pointing.letters = MOST, free
            text = translate(
                HERE, "To tie by marks, click {letter}: a paper mark, or a hole or tear that shows "
                "on both sides.",
            ).format(letter=free[0]) if free else translate(HERE, "All letters are used.")
        self.window.say(text)
        self.window.view.refresh()

    def pick(self, index: Any) -> None:
        """A back of the list is shown."""
        number = self.book.numbers[index.row()]
        if self.side == "face":
            self._silently(self.form.side, "back")
        row = self.book.bundle.numbers.index(number)
        if row == self.form.leaf.currentIndex():
            self._turned()
        else:
            self.form.leaf.setCurrentIndex(row)

    # --- marks on the photograph --------------------------------------------------------------

    def _item_chosen(self, item: Item | None) -> None:
        self.chosen = None if item is None else item.meant

    def _item_changed(self, item: Item) -> None:
        """The user placed, moved or deleted a mark on the photograph."""
        if item in self.window.view.pointing.marks:
            self.attempt(lambda: self._point(item))
        elif item.meant is not None:
            self.book.remove(self.number, self.side, item.meant)
            self.attempt(self.lay_out)

    def _point(self, item: Item) -> None:
        from veneerwb.core.targets.mark import LETTERS

        point = None
        which = LETTERS.index(item.text) if item.meant is None else item.meant.which
        try:
            point = self.book.point(
                self.number, self.side, self.picture, item.place, which, item.meant
            )
        finally:
            self.lay_out(point)

    # --- photographs --------------------------------------------------------------------------

    def _asked(self, title: str, one: bool) -> list[str]:
        from veneerwb.core.photos.reading import SUFFIXES

        kinds = " ".join(f"*{suffix} *{suffix.upper()}" for suffix in SUFFIXES)
        kinds = f"{translate(HERE, 'Photographs')} ({kinds})"
        window = FreeCADGui.getMainWindow()
        if one:
            name, _ = QtGui.QFileDialog.getOpenFileName(window, title, "", kinds)
            return [name] if name else []
        return list(QtGui.QFileDialog.getOpenFileNames(window, title, "", kinds)[0])

    def _add(self) -> None:
        names = self._asked(translate(HERE, "Photographs of backs"), one=False)
        if names:
            self.at_work("add", lambda told: self._take_in(names, told))

    def _take_in(self, names: list[str], told: Progress) -> None:
        from veneerwb.host.backs import numbered

        self._read_in(numbered([Path(name) for name in names], self.book.bundle.numbers), told)

    def _add_one(self) -> None:
        title = translate(HERE, "Photograph of the back of leaf {leaf}")
        names = self._asked(title.format(leaf=self.number), one=True)
        if names:
            paths = {self.number: Path(names[0])}
            self.at_work("add_one", lambda told: self._read_in(paths, told))

    def _read_in(self, paths: dict[int, Path], told: Progress) -> None:
        scale = self.value("per_pixel") if self.form.scale.currentData() == "pixel" else None
        if scale is not None:
            from veneerwb.core.plane import positive

            positive("size of a pixel", scale)
        self.book.add(paths, scale, lambda done, total, _: told(done / total) is None)
        self._silently(self.form.side, "back")
        if self.number in paths:
            self._show()
        else:
            self.form.leaf.setCurrentIndex(self.book.bundle.numbers.index(min(paths)))

    def remove(self) -> None:
        """The photograph that is shown was not to be added."""
        self.book.take_out(self.number)
        self._show()

    # --- ties ---------------------------------------------------------------------------------

    def _by_outline(self) -> None:
        self._tie_all("outline")

    def _by_marks(self) -> None:
        self._tie_all("by_marks")

    def _tie_all(self, button: str) -> None:
        wrong: list[str] = []

        def tie(told: Progress) -> None:
            by = "outline" if button == "outline" else "marks"
            wrong.extend(self.book.tie_all(by, told))
            self._show()

        if self.at_work(button, tie):
            self.say(" ".join(wrong))

    def _turn(self) -> None:
        def turn() -> None:
            self.book.turn(self.number)
            self._show()

        self.attempt(turn)

    def _take(self) -> None:
        self.book.taken.add(self.number)
        self.attempt(self.lay_out)

    # --- what they tell -----------------------------------------------------------------------

    def _prove(self) -> None:
        self.at_work("prove", lambda told: (self.book.prove(told), self.lay_out()))

    def _say_so(self) -> None:
        self.at_work("say_so", lambda told: (self.book.say_so(told), self.lay_out()))

    def _measure(self) -> None:
        self.at_work("measure", lambda told: (self.book.measure(told), self.lay_out()))

    def _pinned(self, *_: Any) -> None:
        if self.book is not None:
            self.book.pin = self.form.pin.currentData()
            self.form.wander.setText(wander_told(self.book))

    def _lock(self, locked: bool) -> None:
        super()._lock(locked)
        if not locked:
            self._arrange()

    # --- the end ------------------------------------------------------------------------------

    def changed(self) -> bool:
        there = {leaf.Number for leaf in self.obj.Leaves}
        gone = [number for number in self.book.bundle.numbers if number not in there]
        if gone:
            text = translate(HERE, "Leaf {number} is gone; close this panel.")
            raise Refused(text.format(number=gone[0]))
        return self.book.changed()

    def begun(self) -> bool:
        return bool(self.book.pointed())

    def write(self) -> None:
        self.book.write()
        compat.recompute(self.doc)

    def let_go(self) -> None:
        for book in self._books.values():
            book.discard()
        super().let_go()

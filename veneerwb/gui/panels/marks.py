# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel in which paper marks are printed, found on the photographs of a bundle's leaves and
measured from, and in which a photograph of what was pinned by them is judged."""

from __future__ import annotations

from typing import Any

from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.confirming import Confirming
from veneerwb.gui.panels.leaf_by_leaf import LeafByLeaf
from veneerwb.gui.photos.frame import Place
from veneerwb.gui.photos.items import Grip, Item
from veneerwb.host import compat
from veneerwb.host.objects.base import Refused, kind_of

HERE = "VeneerMarksPanel"
PAPERS = ("A4", "Letter")
POINT = 3.0
"""mm: half of what shows the point that is measured."""


def look(doc: Any, bundles: list[Any], number: int | None = None) -> MarksPanel:
    """Opens the panel on the bundles of a document, the first of them shown, at a leaf."""
    panel = MarksPanel(doc, bundles, number)
    panel.show()
    panel.look()
    return panel


class MarksPanel(LeafByLeaf):
    """What is found goes into the document with OK, in one step; until then it is the panel's."""

    lists = ("marks", "sightings")

    def __init__(self, doc: Any, bundles: list[Any], number: int | None = None) -> None:
        self.title = translate(HERE, "Paper Marks")
        self.done = translate(HERE, "Locate marks")
        self._next = 0  # the mark from which on the next click takes a letter
        self._tips: list[tuple[str, list[int], Place]] = []
        super().__init__(doc, "marks", "veneer-marks", bundles, number)

    def prepare(self) -> None:
        form = self.form
        fields.offer(form.paper, PAPERS)
        fields.offer(form.letter, range(form.letter.count()))
        form.written.setVisible(False)
        fields.watch(form.letter, self._lettered)
        for rows, picked in ((form.marks, self.pick), (form.leaves, self._leaf_picked)):
            rows.clicked.connect(picked)
            rows.activated.connect(picked)
        form.remove.clicked.connect(lambda *_: self.remove())
        form.print_marks.clicked.connect(lambda *_: self.attempt(self._print))
        form.look.clicked.connect(lambda *_: self.look())
        form.tasks.currentChanged.connect(self._task_turned)
        self.confirming = Confirming(self)

    def read(self) -> Any:
        from veneerwb.gui.books.marks import MarkBook
        from veneerwb.host import areas, values

        marks = {leaf.Number: areas.marks_of(leaf) for leaf in self.obj.Leaves}
        return MarkBook(values.plain_bundle(self.obj), marks)

    def opened(self) -> None:
        """The matches are laid once: that takes longer than to show a leaf."""
        self._tips, book = [], self.book
        if book is None:
            self.confirming.open(None)
            return
        self.confirming.open(book.bundle, book.places, self._name)
        self.attempt(lambda: self._tips.extend(self._laid(self.obj)))

    def _task_turned(self, page: int) -> None:
        """The photograph that belongs to the page comes to the front."""
        if page:
            self.confirming.lay_out(self.confirming.chosen)  # marks may have been located
            self.confirming.look()
        elif self.window is not None:
            self.window.to_front()

    def point_out(self, view: Any) -> None:
        pointing = view.pointing
        pointing.changed, pointing.chosen = self._item_changed, self._item_chosen
        pointing.most = self.form.letter.count()

    def _turned(self, *_: Any) -> None:
        self._next = 0
        super()._turned()

    def clear(self) -> None:
        for rows in (self.form.marks, self.form.leaves):
            rows.clear()
        self.form.measured.setText("")

    def lay_out(self, chosen: Any = None) -> None:
        form, book = self.form, self.book
        self.chosen = chosen
        form.marks.clear()
        for entry in book.on(self.number):
            form.marks.addItem(entry.told())
        form.leaves.clear()
        for number in book.bundle.numbers:
            form.leaves.addItem(book.told(number))
        form.leaves.setCurrentRow(book.bundle.numbers.index(self.number))
        self._measure()
        if self.window is not None:
            pointing = self.window.view.pointing
            pointing.marks = book.items(self.number, self.picture)
            item = next((one for one in pointing.marks if one.meant is chosen), None)
            pointing.grip = None if item is None else Grip(item, 0)
        self._arrange()

    def _arrange(self) -> None:
        """Boxes, list, letters and hint as what is chosen needs them."""
        form, listed = self.form, self.book.on(self.number)
        free = self.book.free(self.number, self._next)
        self._filling = True
        if self.chosen is not None:
            fields.fill(form.letter, self.chosen.which)
        elif free:
            form.letter.setCurrentIndex(form.letter.findText(free[0]))
        self._filling = False
        form.remove.setEnabled(self.chosen is not None)
        form.letter.setEnabled(self.chosen is not None or bool(free))
        form.marks.setCurrentRow(listed.index(self.chosen) if self.chosen in listed else -1)
        if self.window is not None:
            self.window.view.pointing.letters = free
            self.window.say(self._hint(free))
            self.window.view.refresh()

    def _hint(self, free: str) -> str:
        said = []
        if self.chosen is not None and self.chosen.error is not None:
            said.append(translate(HERE, "Centred: {mark}.").format(mark=self.chosen.text))
        if free:
            text = translate(HERE, "Click on mark {letter}, roughly; it is centred by itself.")
            said.append(text.format(letter=free[0]))
        else:
            said.append(translate(HERE, "All letters are used; drag a mark, or remove one."))
        return " ".join(said)

    # --- what is measured ---------------------------------------------------------------------

    def _laid(self, obj: Any) -> list[tuple[str, list[int], Place]]:
        """The matches that are laid from a bundle: label, leaves, and the tip (bundle mm)."""
        from veneerwb.host.objects import layout
        from veneerwb.host.values import place_of

        matches = [one for one in self.doc.Objects
                   if kind_of(one) == "Match" and one.Bundle == obj and not one.Message]
        found = []
        for one in matches:
            place = place_of(layout(one).recipe)
            found.append((one.Label, list(one.LeafOrder), (place.x, place.y)))
        return found

    def points(self) -> list[tuple[str, Place | None]]:
        """What is measured from the marks of the leaf that is shown: the tips of the matches that
        it is in (bundle mm), else its middle (None)."""
        return [(label, tip) for label, leaves, tip in self._tips if self.number in leaves] or [
            ("", None)
        ]

    def _measure(self) -> None:
        """Where the points lie, in words and on the photograph."""
        from veneerwb.core import VeneerError

        lines, areas = [], []
        leaf = self.book.bundle.leaf(self.number)
        for label, point in self.points():
            try:
                text = self.book.measured(self.number, point)
            except VeneerError:
                text = translate(HERE, "locate two marks of this leaf to measure it from them")
            lines.append(f"{self._named(label, point)}: {text}.")
            place = leaf.register.apply([point])[0] if point else self.book.middle(self.number)
            areas.append(self._shown(label, place))
        self.form.measured.setText("\n".join(lines))
        if self.window is not None:
            self.window.view.pointing.areas = areas

    def _named(self, label: str, point: Place | None) -> str:
        if point is None:
            return translate(HERE, "The middle of the leaf")
        if all(leaf.register == self.book.bundle.leaves[0].register
               for leaf in self.book.bundle.leaves):
            text = translate(HERE, "The tip of {match}, as photographed, with no registers")
        else:
            text = translate(HERE, "The tip of {match}, by the leaf's register")
        return text.format(match=label)

    def _shown(self, label: str, place: Place) -> Item:
        x, y = map(float, place)
        corners = [(x - POINT, y), (x, y - POINT), (x + POINT, y), (x, y + POINT)]
        seen = [self.book.on_photo(self.number, self.picture, corner) for corner in corners]
        text = translate(HERE, "tip") if label else translate(HERE, "middle")
        return Item(seen, "frame", text, held=True)

    # --- on the photograph --------------------------------------------------------------------

    def _item_chosen(self, item: Item | None) -> None:
        """Something was chosen by the mouse; what is being placed is nothing yet."""
        if item is not None and item.meant is None:
            return
        self.chosen = None if item is None else item.meant
        self._arrange()

    def _item_changed(self, item: Item) -> None:
        """The user placed, moved or deleted a mark on the photograph."""
        if item in self.window.view.pointing.marks:
            self.attempt(lambda: self._locate(item))
        else:
            self.chosen = item.meant
            self.remove()

    def _locate(self, item: Item) -> None:
        entry, chosen = item.meant, item.meant
        which = self.form.letter.findText(item.text) if entry is None else entry.which
        try:
            chosen = self.book.locate(self.number, self.picture, item.place, which, entry)
        finally:  # a mark that is none goes, one that was moved goes back
            self.lay_out(chosen)

    # --- in the panel -------------------------------------------------------------------------

    def _lettered(self, *_: Any) -> None:
        which = self.form.letter.currentData()
        if self._filling or self.book is None or self.picture is None:
            return
        if self.chosen is not None:
            self.book.reletter(self.number, self.chosen, which)
        self._next = which
        has = (one for one in self.book.on(self.number) if one.which == which)
        self.attempt(lambda: self.lay_out(next(has, None)))

    def remove(self) -> None:
        if self.form.sightings.hasFocus():
            self.confirming.drop()
        elif self.chosen is not None:
            self._next = self.chosen.which
            self.book.remove(self.number, self.chosen)
            self.attempt(self.lay_out)

    def pick(self, index: Any) -> None:
        if self.form.sightings.hasFocus():
            self.confirming.pick(index)
            return
        listed = self.book.on(self.number) if self.picture is not None else []
        if index.row() >= len(listed):
            return
        entry = listed[index.row()]
        if self.attempt(lambda: self.lay_out(entry)) and self.window is not None:
            self.window.view.show_place(self.window.view.pointing.grip.item.place)

    def _leaf_picked(self, index: Any) -> None:
        self.form.leaf.setCurrentIndex(index.row())

    def _print(self) -> None:
        from veneerwb.gui.books.mark_printing import save_marks

        said = save_marks(self.obj, self.form.per_leaf.value(), self.form.paper.currentData())
        self.form.written.setText(said)
        self.form.written.setVisible(bool(said))

    # --- the end ------------------------------------------------------------------------------

    def let_go(self) -> None:
        self.confirming.let_go()
        super().let_go()

    def unsaved(self) -> bool:
        return super().unsaved() or self.confirming.clicked

    def changed(self) -> bool:
        there = {leaf.Number for leaf in self.obj.Leaves}
        gone = [number for number in self.book.changed() if number not in there]
        if gone:
            text = translate(HERE, "Leaf {number} is gone; close this panel.")
            raise Refused(text.format(number=gone[0]))
        return bool(self.book.changed())

    def write(self) -> None:
        from veneerwb.host import areas

        leaves = {leaf.Number: leaf for leaf in self.obj.Leaves}
        for number, marks in self.book.changed().items():
            every = range(self.form.letter.count())
            areas.set_marks(leaves[number], [marks.get(k) for k in every])
        compat.recompute(self.doc)

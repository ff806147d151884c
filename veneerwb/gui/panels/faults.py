# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel in which faults and usable areas are drawn on the photographs of a bundle's leaves."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCADGui

from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import Panel, translate
from veneerwb.gui.panels.step import Step
from veneerwb.gui.photo_frame import Picture
from veneerwb.gui.photo_items import Grip, Item
from veneerwb.gui.photo_window import PhotoWindow
from veneerwb.host.objects.base import Refused, kind_of

HERE = "VeneerFaultsPanel"
KINDS = ("knot", "split", "stain", "patch", "margin", "usable")


def look(doc: Any, bundles: list[Any], number: int | None = None) -> FaultsPanel:
    """Opens the panel on the bundles of a document, the first of them shown, at a leaf."""
    panel = FaultsPanel(doc, bundles, number)
    panel.show()
    panel.look()
    return panel


class FaultsPanel(Panel):
    """What is drawn goes into the document with OK, in one step; until then it is the panel's.

    With Draw on, the boxes say what is drawn next; with Draw off, what the chosen fault is. To
    choose something, on the photograph or in the list, switches Draw off.
    """

    def __init__(self, doc: Any, bundles: list[Any], number: int | None = None) -> None:
        super().__init__(doc, "faults", "veneer-faults")
        self.window: PhotoWindow | None = None
        self.picture: Picture | None = None
        self.book: Any = None
        self.chosen: Any = None
        """An entry of the book, "usable", or None."""
        self._filling = False
        form = self.form
        fields.offer(form.bundle, [one.Name for one in bundles], [one.Label for one in bundles])
        self.show_row(form.bundle, len(bundles) > 1)
        fields.offer(form.kind, KINDS)
        fields.offer(form.through, (True, False))
        form.draw.setChecked(True)
        fields.watch(form.bundle, lambda *_: self._open_book())
        fields.watch(form.leaf, self._turned)
        fields.watch(form.kind, self._kind_picked)
        fields.watch(form.through, self._through_picked)
        form.draw.toggled.connect(self._draw_switched)
        form.faults.clicked.connect(self._row_picked)
        form.faults.activated.connect(self._row_picked)
        for button, action in (
            (form.take, self._take), (form.remove, self._remove), (form.suggest, self._suggest),
            (form.add_shapes, self._add_shapes), (form.find_leaf, self._find),
            (form.use_all, self._use_all), (form.look, self.look),
        ):  # fmt: skip
            button.clicked.connect(lambda _=False, action=action: self._do(action))
        self._open_book(number)

    # --- the bundle and its leaves ------------------------------------------------------------

    @property
    def obj(self) -> Any:
        """The Bundle object. Refused if it is gone."""
        found = self.doc.getObject(self.form.bundle.currentData() or "") if self.doc else None
        if kind_of(found) != "Bundle":
            raise Refused(translate(HERE, "The bundle is gone; close this panel."))
        return found

    @property
    def number(self) -> int | None:
        """The number of the leaf that is shown."""
        return self.form.leaf.currentData()

    def _open_book(self, number: int | None = None) -> None:
        self.chosen = self.book = None
        self.form.leaf.blockSignals(True)
        self.form.leaf.clear()
        if self.attempt(self._read):
            numbers = list(self.book.bundle.numbers)
            fields.offer(self.form.leaf, numbers, [self._leaf(one) for one in numbers])
            self.form.leaf.setCurrentIndex(numbers.index(number) if number in numbers else 0)
        self.form.leaf.blockSignals(False)
        if self.window is not None:
            self._offer_pages()
        self._turned()

    def _read(self) -> None:
        from veneerwb.gui.fault_book import Entry, FaultBook
        from veneerwb.host import outlines, values

        obj = self.obj
        through, drawn = values.through_faults(obj), outlines.faults_of(obj.FaultShapes)
        self.book = FaultBook(values.plain_bundle(obj), through[: len(through) - len(drawn)])
        for shape in obj.FaultShapes:
            for fault in outlines.faults_of([shape]):
                self.book.entries.append(Entry(fault.outline, fault.kind, source=shape))

    @staticmethod
    def _leaf(number: int) -> str:
        return translate(HERE, "Leaf {number}").format(number=number)

    # --- the window ---------------------------------------------------------------------------

    def look(self) -> None:
        """Opens the window with the leaf's photograph, or brings it to the front."""
        if self.book is None:
            return
        if self.window is None:
            self.window = PhotoWindow(
                translate(HERE, "Faults"), (), self._page_turned, self._window_closed
            )
            pointing = self.window.view.pointing
            pointing.changed, pointing.chosen = self._item_changed, self._item_chosen
            pointing.lines = ("split",)
            self.window.view.escaped = self._stop_drawing
            self._offer_pages()
            self._turned()
        self.window.to_front()

    def _window_closed(self) -> None:
        self.window = None

    def _stop_drawing(self) -> None:
        self.form.draw.setChecked(False)

    def _offer_pages(self) -> None:
        numbers = list(self.book.bundle.numbers) if self.book is not None else []
        self.window.offer(
            [self._leaf(one) for one in numbers], max(0, self.form.leaf.currentIndex())
        )

    def _page_turned(self, page: int) -> None:
        self.form.leaf.setCurrentIndex(page)

    def _turned(self, *_: Any) -> None:
        """Another leaf is shown."""
        self.chosen = self.picture = None
        if self.book is not None and self.attempt(self._show):
            return
        self.form.faults.clear()
        if self.window is not None:
            self.window.view.pointing.areas = []
            self.window.show(None)

    def _show(self) -> None:
        face = self.book.bundle.leaf(self.number).face
        self.picture = Picture(face.photo, face.mm_per_px)
        if self.window is not None:
            if self.window.page != self.form.leaf.currentIndex():
                self.window.turn_to(self.form.leaf.currentIndex())
            self.window.show(self.picture, keep=True)
        self._lay_out()

    def _lay_out(self, chosen: Any = None) -> None:
        """The items and the list anew, from the book; `chosen` is chosen then."""
        self.chosen = chosen
        self.form.faults.clear()
        for entry in self._listed:
            self.form.faults.addItem(entry.told())
        if self.window is not None:
            pointing = self.window.view.pointing
            pointing.areas = self.book.items(self.number, self.picture)
            pointing.drawn = None
            meant = (one for one in pointing.areas if chosen is not None and one.meant is chosen)
            item = next(meant, None)
            pointing.grip = None if item is None else Grip(item)
        self._arrange()

    @property
    def _listed(self) -> list[Any]:
        """The faults in the list, row by row."""
        return self.book.on(self.number) if self.book is not None else []

    def _arrange(self) -> None:
        """Boxes, buttons, list and hint as what is chosen and drawn needs them."""
        form, entry = self.form, self._entry
        drawing = form.draw.isChecked()
        self._filling = True
        if not drawing and self.chosen is not None:
            fields.fill(form.kind, "usable" if entry is None else entry.kind)
            fields.fill(form.through, entry is not None and entry.leaf is None)
        self._filling = False
        form.kind.setEnabled(drawing or self._changeable)
        areas = form.kind.currentData() != "usable"
        form.through.setEnabled(areas if drawing else self._changeable)
        form.take.setEnabled(entry is not None and entry.suggested)
        form.remove.setEnabled(self.chosen is not None)
        form.faults.setCurrentRow(self._listed.index(entry) if entry in self._listed else -1)
        if self.window is not None:
            self.window.view.pointing.kind = form.kind.currentData() if drawing else ""
            self.window.say(self._hint(drawing))
            self.window.view.refresh()

    def _hint(self, drawing: bool) -> str:
        if self._entry is not None and self._entry.suggested:
            return self._entry.why + " " + translate(HERE, "Take it, or leave it.")
        if not drawing:
            return translate(HERE, "Click a fault to change it; Draw starts a new one.")
        if self.form.kind.currentData() == "split":
            return translate(HERE, "Click along the split, then Enter; or all round it.")
        return translate(HERE, "Click round it, back to the first corner or Enter.")

    @property
    def _entry(self) -> Any:
        """The chosen fault; None for the usable area or nothing."""
        return None if self.chosen == "usable" else self.chosen

    # --- on the photograph --------------------------------------------------------------------

    @property
    def _changeable(self) -> bool:
        """Whether the boxes change what is chosen: a sketch is changed where it is drawn."""
        entry = self._entry
        return not self.form.draw.isChecked() and entry is not None and entry.source is None

    def _item_chosen(self, item: Item | None) -> None:
        """Something was chosen by the mouse; what is being drawn is nothing yet."""
        if item is not None and item.meant is None:
            return
        self.chosen = None if item is None else item.meant
        self._choose()

    def _choose(self) -> None:
        """To choose something ends drawing."""
        if self.chosen is not None:
            self.form.draw.blockSignals(True)
            self.form.draw.setChecked(False)
            self.form.draw.blockSignals(False)
        self._arrange()

    def _item_changed(self, item: Item) -> None:
        """The user drew, moved or deleted something on the photograph."""
        self.attempt(lambda: self._take_over(item))

    def _take_over(self, item: Item) -> None:
        areas = self.window.view.pointing.areas
        there, drawn = item in areas, item.meant is None
        if item.kind == "usable":
            rings = [one for one in areas if one.kind == "usable"]
            self.book.set_usable([item] if drawn else rings, self.number, self.picture)
        elif drawn:
            through = bool(self.form.through.currentData())
            self.book.draw(item, self.number, self.picture, through)
        elif there:
            self.book.reshape(item, self.number, self.picture)
        else:
            self.book.entries.remove(item.meant)
        if drawn or not there:
            self._lay_out()
        self._refuse_unsound()

    def _refuse_unsound(self) -> None:
        said = self.book.trouble()
        if said:
            raise Refused(said)

    # --- in the panel -------------------------------------------------------------------------

    def _draw_switched(self, drawing: bool) -> None:
        if drawing:
            self.chosen = None
        if self.window is not None:
            self.window.view.pointing.drawn = None
            if drawing:
                self.window.view.pointing.grip = None
        self._arrange()

    def _kind_picked(self, *_: Any) -> None:
        kind, entry = self.form.kind.currentData(), self._entry
        if self._filling:
            return
        if self._changeable and kind != "usable":
            entry.kind = kind
            self._lay_out(entry)
        else:
            self._arrange()

    def _through_picked(self, *_: Any) -> None:
        entry = self._entry
        if not self._filling and self._changeable:
            self.book.move(entry, self.number, bool(self.form.through.currentData()))
            self._lay_out(entry)

    def _row_picked(self, index: Any) -> None:
        if index.row() < len(self._listed):
            entry = self._listed[index.row()]
            self._lay_out(entry)
            self._choose()
            if self.window is not None and self.window.view.pointing.grip is not None:
                self.window.view.show_place(self.window.view.pointing.grip.item.corners[0])

    def _do(self, action: Callable[[], None]) -> None:
        if self.book is not None and self.picture is not None:
            self.attempt(action)

    def _take(self) -> None:
        self._entry.suggested = False
        self._lay_out(self._entry)

    def _remove(self) -> None:
        entry = self._entry
        if entry is None:
            self.book.set_outline(None, self.number)
        elif entry.source is not None:
            self.book.entries = [e for e in self.book.entries if e.source is not entry.source]
        else:
            self.book.entries.remove(entry)
        self._lay_out()
        self._refuse_unsound()

    def _suggest(self) -> None:
        found = self.book.suggest(self.number)
        self._lay_out(found[0] if found else None)
        self._choose()
        if not found:
            raise Refused(translate(HERE, "Nothing stands out on this leaf."))

    def _add_shapes(self) -> None:
        from veneerwb.gui.fault_book import Entry
        from veneerwb.host import outlines

        there = {id(entry.source) for entry in self.book.entries}
        chosen = [
            one for one in FreeCADGui.Selection.getSelection(self.doc.Name) if not kind_of(one)
        ]
        if not chosen:
            raise Refused(
                translate(HERE, "Select sketches, wires or flat faces in the tree first.")
            )
        found = [
            Entry(fault.outline, fault.kind, source=shape)
            for shape in chosen
            if id(shape) not in there
            for fault in outlines.faults_of([shape])
        ]
        self.book.entries += found
        self._lay_out(found[0] if found else None)
        self._choose()

    def _find(self) -> None:
        from veneerwb.core.faults import leaf_outline

        face = self.book.bundle.leaf(self.number).face
        motion = face.register @ face.view.inverse()
        self.book.set_outline(motion.apply_to(leaf_outline(face.image)), self.number)
        self._lay_out("usable")
        self._choose()

    def _use_all(self) -> None:
        self.book.set_outline(None, self.number)
        self._lay_out()

    # --- the end ------------------------------------------------------------------------------

    def finish(self) -> None:
        from veneerwb.gui import fault_writing

        if self.book is None:
            return
        self._refuse_unsound()
        obj = self.obj
        if not fault_writing.differs(self.book, obj):
            return
        self.step = Step(self.doc, translate(HERE, "Draw faults"))
        try:
            fault_writing.write(self.book, obj)
        except Exception:
            super().take_back()
            self.step = None
            raise

    def let_go(self) -> None:
        window, self.window = self.window, None
        self.book = self.picture = self.chosen = None
        super().let_go()
        if window is not None:
            window.close()

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel in which faults and usable areas are drawn on the photographs of a bundle's leaves."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCADGui

from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.leaf_by_leaf import LeafByLeaf
from veneerwb.gui.photos.items import Grip, Item
from veneerwb.gui.progress import stoppable
from veneerwb.host.objects.base import Refused, kind_of

HERE = "VeneerFaultsPanel"
KINDS = ("knot", "split", "stain", "patch", "margin", "usable")


def look(doc: Any, bundles: list[Any], number: int | None = None) -> FaultsPanel:
    """Opens the panel on the bundles of a document, the first of them shown, at a leaf."""
    panel = FaultsPanel(doc, bundles, number)
    panel.show()
    panel.look()
    return panel


class FaultsPanel(LeafByLeaf):
    """What is drawn goes into the document with OK, in one step; until then it is the panel's.

    With Draw on, the boxes say what is drawn next; with Draw off, what the chosen fault is. To
    choose something, on the photograph or in the list, switches Draw off.
    """

    lists = ("faults",)

    def __init__(self, doc: Any, bundles: list[Any], number: int | None = None) -> None:
        self.title = translate(HERE, "Faults")
        self.done = translate(HERE, "Draw faults")
        super().__init__(doc, "faults", "veneer-faults", bundles, number)

    def prepare(self) -> None:
        form = self.form
        fields.offer(form.kind, KINDS)
        fields.offer(form.through, (True, False))
        form.draw.setChecked(True)
        fields.watch(form.kind, self._kind_picked)
        fields.watch(form.through, self._through_picked)
        form.draw.toggled.connect(self._draw_switched)
        form.faults.clicked.connect(self.pick)
        form.faults.activated.connect(self.pick)
        for button, action in (
            (form.take, self._take), (form.remove, self.remove), (form.suggest, self._suggest),
            (form.add_shapes, self._add_shapes), (form.find_leaf, self._find),
            (form.use_all, self._use_all), (form.look, self.look),
        ):  # fmt: skip
            button.clicked.connect(lambda _=False, action=action: self._do(action))

    def read(self) -> Any:
        from veneerwb.gui.books.faults import FaultBook
        from veneerwb.host import outlines, values

        obj = self.obj
        through = values.through_faults(obj)
        drawn = [(one, fault) for one in obj.FaultShapes for fault in outlines.faults_of([one])]
        return FaultBook(
            values.plain_bundle(obj), through[: len(through) - len(drawn)], drawn
        )

    def point_out(self, view: Any) -> None:
        pointing = view.pointing
        pointing.changed, pointing.chosen = self._item_changed, self._item_chosen
        pointing.lines = ("split",)
        view.escaped = self._stop_drawing

    def _stop_drawing(self) -> None:
        self.form.draw.setChecked(False)

    def clear(self) -> None:
        self.form.faults.clear()

    def lay_out(self, chosen: Any = None) -> None:
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
        if self.form.through.currentData() and self._loose:
            text = translate(HERE, "Not registered: register first, or draw it on leaf {number}.")
            return text.format(number=self.book.bundle.numbers[0])
        if self.form.kind.currentData() == "split":
            return translate(HERE, "Click along the split, then Enter; or all round it.")
        return translate(HERE, "Click round it, back to the first corner or Enter.")

    @property
    def _loose(self) -> bool:
        """Whether what is drawn through all leaves would move on this one once the leaves are laid
        on each other."""
        leaves = self.book.bundle.leaves if self.book is not None else ()
        return bool(leaves) and self.number != leaves[0].number and all(
            leaf.register == leaves[0].register for leaf in leaves
        )

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
            self.lay_out()
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
            self.lay_out(entry)
        else:
            self._arrange()

    def _through_picked(self, *_: Any) -> None:
        entry = self._entry
        if not self._filling and self._changeable:
            self.book.move(entry, self.number, bool(self.form.through.currentData()))
            self.lay_out(entry)

    def pick(self, index: Any) -> None:
        if index.row() < len(self._listed):
            entry = self._listed[index.row()]
            self.lay_out(entry)
            self._choose()
            if self.window is not None and self.window.view.pointing.grip is not None:
                self.window.view.show_place(self.window.view.pointing.grip.item.corners[0])

    def _do(self, action: Callable[[], None]) -> None:
        if self.book is not None and self.picture is not None:
            self.attempt(action)

    def _take(self) -> None:
        self._entry.suggested = False
        self.lay_out(self._entry)

    def remove(self) -> None:
        entry = self._entry
        if self.chosen is None:
            return
        if entry is None:
            self.book.set_outline(None, self.number)
        elif entry.source is not None:
            self.book.entries = [e for e in self.book.entries if e.source is not entry.source]
        else:
            self.book.entries.remove(entry)
        self.lay_out()
        self._refuse_unsound()

    def _suggest(self) -> None:
        with stoppable(translate(HERE, "Suggest spots and splits")) as progress:
            found = self.book.suggest(self.number, progress)
        self.lay_out(found[0] if found else None)
        self._choose()
        if not found:
            raise Refused(translate(HERE, "Nothing stands out on this leaf."))

    def _add_shapes(self) -> None:
        from veneerwb.gui.books.faults import Entry
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
        self.lay_out(found[0] if found else None)
        self._choose()

    def _find(self) -> None:
        from veneerwb.core.faults import leaf_outline

        face = self.book.bundle.leaf(self.number).face
        motion = face.register @ face.view.inverse()
        self.book.set_outline(motion.apply_to(leaf_outline(face.image)), self.number)
        self.lay_out("usable")
        self._choose()

    def _use_all(self) -> None:
        self.book.set_outline(None, self.number)
        self.lay_out()

    # --- the end ------------------------------------------------------------------------------

    def changed(self) -> bool:
        from veneerwb.gui.books import fault_writing

        self._refuse_unsound()
        return fault_writing.differs(self.book, self.obj)

    def write(self) -> None:
        from veneerwb.gui.books import fault_writing

        fault_writing.write(self.book, self.obj)

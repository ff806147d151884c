# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a run: doors, drawer fronts or wall panels laid from one sequence, live on them."""

from __future__ import annotations

from collections.abc import Iterable
from functools import partial
from typing import Any

from PySide import QtCore

from veneerwb.gui import match_drawings
from veneerwb.gui.chosen import sources
from veneerwb.gui.facing import selected_faces
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.findings import Findings, only
from veneerwb.gui.panels.live import SPOT, PlacedPanel, start
from veneerwb.gui.view import show_face
from veneerwb.host import kinds
from veneerwb.host.objects.base import Refused, kind_of

HERE = "VeneerRunPanel"
TURNS = {
    "book": QtCore.QT_TRANSLATE_NOOP(HERE, "Book"),
    "slip": QtCore.QT_TRANSLATE_NOOP(HERE, "Slip"),
    "reverse slip": QtCore.QT_TRANSLATE_NOOP(HERE, "Reverse slip"),
    "random": QtCore.QT_TRANSLATE_NOOP(HERE, "Random"),
}
ROWS = (
    "Turn", "Face", "EndKind", "Rows", "Ways", "Count", "StripWidth", "Slant", "CornerWay", "Seed",
    "Grain",
)  # fmt: skip
"""What only some kinds of match make use of."""


def new(doc: Any, bundle: Any) -> None:
    """Opens the panel on a new run of the faces selected now, from `bundle`."""
    from veneerwb.host.objects import add_run

    faces = selected_faces(doc.Name)
    first = (list(getattr(bundle, "Numbers", [])) or [1])[0]
    step = translate(HERE, "Lay panels in sequence")
    start(RunPanel, doc, step, lambda: add_run(doc, bundle, faces, First=first), fresh=True)


class RunPanel(PlacedPanel):
    """Asks which faces are laid from which bundles, and how; each change is seen at once."""

    names = (
        "Bundle", "Second", "Missing", "Mode", "Gaps", "Kind", *ROWS, "Order", "First", "Oversize",
        "Margin", "Spares", "AutoPlacement", *SPOT,
    )  # fmt: skip
    drawn, picture = "run", "veneer-run"
    radial = False
    """Whether the turns are drawn as wedges."""

    def offer(self) -> None:
        self.drawing = None
        there = {one.Name: one.Label for one in sources(self.doc)}
        fields.offer(self.form.Bundle, there, there.values())
        fields.offer(self.form.Second, ("",))
        for name, label in there.items():
            self.form.Second.addItem(label, name)
        for name in ("Mode", "Gaps", "Kind", "Face", "EndKind", "CornerWay"):
            fields.offer(getattr(self.form, name), self.obj.getEnumerationsOfProperty(name))
        for name in ("Kind", "Face", "EndKind"):
            match_drawings.give(getattr(self.form, name))
        fields.offer(self.form.Order, ("sequence", "spread"))
        self._offer_turns(self.obj.Kind)
        self.form.Mode.currentIndexChanged.connect(self._count_anew)
        self.form.take.clicked.connect(lambda: self.after(self._take))
        self.form.panels.clicked.connect(self._show_panel)
        self.findings = Findings(self.form.findings, partial(_found, self.obj), self._choose)

    def _offer_turns(self, kind: str) -> None:
        """The ways to turn that a kind of match has; what is chosen stays, if it is one of them."""
        box, chosen = self.form.Turn, self.form.Turn.currentData()
        turns = kinds.turns(kind)
        if box.count() == len(turns) and self.radial == (kind == "Radial"):
            return
        self.radial = kind == "Radial"
        box.blockSignals(True)
        box.clear()
        for turn in turns:
            box.addItem(translate(HERE, TURNS[turn]), turn)
        match_drawings.give(box, "radial {}" if self.radial else "{}")
        box.setCurrentIndex(max(0, box.findData(chosen)))
        box.blockSignals(False)

    def _count_anew(self, *_: Any) -> None:
        """A number of strips on each panel is none for all of them, and the other way about."""
        self.form.Count.setValue(0)

    def arrange(self) -> None:
        """Only what the chosen match, mode and bundles need."""
        form, kind = self.form, self.form.Kind.currentData()
        self._offer_turns(kind)
        used = set(kinds.KINDS[kind])
        rows = {name: name in used for name in ROWS}
        rows["Rows"] &= form.EndKind.currentData() == "continuous"
        rows["Seed"] &= form.Turn.currentData() == "random"
        rows["Count"] &= not self._running()
        rows["StripWidth"] &= not self._counted()
        rows["Order"] = self._ordered()
        for name, shown in rows.items():
            self.show_row(getattr(form, name), shown)
        self.show_row(form.Missing, bool(form.Second.currentData()))
        self.show_row(form.Gaps, form.Mode.currentData() == "blueprint")
        for name in SPOT:
            self.show_row(getattr(form, name), not form.AutoPlacement.isChecked())
        form.Ways.setSingleStep(2 if form.Turn.currentData() == "book" else 1)
        chosen = (getattr(form, name).currentData() for name in ("Kind", "Turn", "Face", "EndKind"))
        drawing = match_drawings.key_of(*chosen, self.obj.Strips, 0.0, False)
        if drawing != self.drawing:
            self.drawing = drawing
            match_drawings.show(form, drawing)

    def _ordered(self) -> bool:
        """Whether the leaves of a panel may lie in another order than that of the sequence."""
        return "Ways" in kinds.KINDS[self.form.Kind.currentData()]

    def _running(self) -> bool:
        """Whether there are as many strips as it takes."""
        form = self.form
        return form.Kind.currentData() == "Side by side" and form.Face.currentData() == "running"

    def _counted(self) -> bool:
        """Whether the number of strips is given."""
        counts = "Count" in kinds.KINDS[self.form.Kind.currentData()]
        return counts and not self._running() and self.form.Count.value() > 0

    def value(self, name: str) -> Any:
        """What a box holds; what is not asked for is as it is where nobody says otherwise."""
        if (name == "Count" and self._running()) or (name == "StripWidth" and self._counted()):
            return 0
        if name == "Order" and not self._ordered():
            return "sequence"
        return super().value(name)

    def held(self, name: str) -> Any:
        found = super().held(name)
        return "" if name == "Second" and found is None else found

    def wanted(self, name: str, shown: Any) -> Any:
        links = name in ("Bundle", "Second")
        return self.doc.getObject(shown or "") if links else shown

    def middle(self) -> Any:
        from veneerwb.host.objects.run import last_run

        return last_run(self.obj).laid.run.recipe.placement

    # --- faces --------------------------------------------------------------------------------

    def _take(self) -> None:
        from veneerwb.host.objects import set_faces

        faces = selected_faces(self.doc.Name)
        if not faces:
            raise Refused(translate(
                HERE, "Select the flat faces of one plane in the 3-D view, then press this again."
            ))  # fmt: skip
        set_faces(self.obj, faces)

    def tell(self) -> None:
        super().tell()
        self.form.panels.clear()
        self.form.panels.addItems(list(self.obj.Panels))
        self.findings.tell()

    def _show_panel(self, index: Any) -> None:
        self._choose([index.row() + 1], [])

    def _choose(self, numbers: Iterable[int], leaves: Iterable[int]) -> None:
        """Selects the pieces on the panels of those numbers (the run for none), and leaves."""
        from veneerwb.host.objects.run import last_run

        try:
            run = last_run(self.obj)
        except Exception as error:  # what it was laid from has gone since
            self.say(fields.told(error))
            return
        there = range(1, len(run.laid.panels) + 1)
        solids = [k for number in numbers if number in there for k in run.solids_of(number)]
        chosen = [(self.obj.Name, show_face(self.obj, k)) for k in solids]
        wanted = set(leaves)
        if kind_of(self.obj.Bundle) == "Bundle" and self.obj.Second is None:
            chosen += [(one.Name, "") for one in self.obj.Bundle.Leaves if one.Number in wanted]
        only(self.doc, chosen or [(self.obj.Name, "")])

    def let_go(self) -> None:
        self.findings = None
        super().let_go()


def _found(obj: Any) -> list[Any]:
    from veneerwb.host.objects.run import found_on

    return found_on(obj)

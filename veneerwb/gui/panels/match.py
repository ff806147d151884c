# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a match of any kind: the top is laid anew in the 3-D view with every change."""

from __future__ import annotations

from contextlib import suppress
from functools import partial
from typing import Any

import FreeCADGui

from veneerwb.gui import match_drawings
from veneerwb.gui.chosen import sources
from veneerwb.gui.framing import look_at
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.cut_choice import CutChoice
from veneerwb.gui.panels.findings import Findings, found_on, select
from veneerwb.gui.panels.live import SPOT, PlacedPanel, start
from veneerwb.gui.sizes import fitting
from veneerwb.host import kinds
from veneerwb.host.objects.base import Refused, kind_of

HERE = "VeneerMatchPanel"


def new(doc: Any, bundle: Any) -> None:
    """Opens the panel on a new radial match of `bundle`, a Bundle or Stock object."""
    _new(doc, bundle, translate(HERE, "New radial match"))


def choose(doc: Any, bundle: Any) -> None:
    """Opens the panel on a new match of which the kind is still to be chosen; its top is what
    outline is selected."""
    found, top = outline_chosen(doc), {"Top": "Rectangle"}
    if found is not None and _may_be_top(found):
        top = {"Top": "Outline", "OutlineOf": found}
    _new(doc, bundle, translate(HERE, "New match"), Kind="Side by side", **top)


def _new(doc: Any, bundle: Any, step: str, **properties: Any) -> None:
    from veneerwb.host.objects import add_match

    first = (list(getattr(bundle, "Numbers", [])) or [1])[0]
    make = partial(add_match, doc, bundle, First=first, **fitting(bundle), **properties)
    panel = start(MatchPanel, doc, step, make, fresh=True)
    if panel is not None:
        look_at(panel, panel.obj)


def outline_chosen(doc: Any) -> tuple[Any, list[str]] | None:
    """What is selected in a document that may be an outline, as a link; None where nothing is. One
    open edge, or a corner, stands for all that it is picked on."""
    for one in FreeCADGui.Selection.getSelectionEx(doc.Name):
        if kind_of(one.Object) or getattr(one.Object, "Shape", None) is None:
            continue
        picked = dict(zip(one.SubElementNames, one.SubObjects))
        parts = [name for name, part in picked.items() if part.ShapeType != "Vertex"]
        if len(parts) == 1 and picked[parts[0]].ShapeType == "Edge":
            parts = parts if picked[parts[0]].isClosed() else []
        return one.Object, parts
    return None


def _may_be_top(found: tuple[Any, list[str]]) -> bool:
    """Whether an outline is likely meant to be one, and not selected for something else."""
    shape, parts = found[0].Shape, found[1]
    return bool(parts) or (bool(shape.Edges) and len(shape.Faces) < 2)


class MatchPanel(PlacedPanel):
    """Asks for the kind of match, the top and how it is laid; each change goes to the match at
    once. Only what the kind and the top make use of is asked."""

    names = (
        "Bundle", "Kind", "Top", "Diameter", "Sides", "AcrossFlats", "Length", "Width", "Ends",
        "OutlineCentre", "OnOutline", "Ways", "InnerWays", "InnerDiameter", "Turn", "Face",
        "EndKind", "Rows", "CornerWay", "Slant", "Strips", "Count", "StripWidth", "Grain", "Seed",
        "Start", "CentreX", "CentreY", "DiscDiameter", "Order", "First", "Oversize", "Margin",
        "Spares", "CutAs", "AutoPlacement", *SPOT,
    )  # fmt: skip
    drawn, picture = "match", "veneer-match"
    drawn_turns = ""
    """With what the drawings of the turns begin, once there are any."""

    def offer(self) -> None:
        self.ready, self.textures, self.drawing = None, iter(()), ""
        form = self.form
        there = {one.Name: one.Label for one in sources(self.doc)}
        fields.offer(form.Bundle, there, there.values())
        for name in ("Kind", "Top", "Face", "EndKind", "OutlineCentre", "CornerWay", "CutAs"):
            fields.offer(getattr(form, name), self.obj.getEnumerationsOfProperty(name))
        for name in ("Kind", "Face", "EndKind"):
            match_drawings.give(getattr(form, name))
        match_drawings.give(form.Top, "top {}")
        self._offer_turns(self.obj.Kind)
        fields.offer(form.Order, ("sequence", "spread"))
        self.cuts = CutChoice(self)
        form.take_outline.clicked.connect(lambda: self.attempt(self._take_outline))
        self.findings = Findings(
            form.findings, partial(found_on, self.obj), partial(select, self.obj)
        )

    def _offer_turns(self, kind: str) -> None:
        """How leaves may be turned in a kind of match; what was chosen stays if it can."""
        box, turns = self.form.Turn, kinds.turns(kind)
        there = [box.itemData(row) for row in range(box.count())]
        prefix = "radial {}" if kind in ("Radial", "Two rings") else "{}"
        if (there, self.drawn_turns) == (list(turns), prefix):
            return
        words = {
            "book": translate(HERE, "Book"), "slip": translate(HERE, "Slip"),
            "reverse slip": translate(HERE, "Reverse slip"), "random": translate(HERE, "Random"),
        }  # fmt: skip
        if self.obj.Turn == "slip" and self.obj.Turned == "all":
            words["slip"] = translate(HERE, "Slip, all turned over")
        chosen = box.currentData()
        box.blockSignals(True)
        box.clear()
        fields.offer(box, turns, [words[turn] for turn in turns])
        match_drawings.give(box, prefix)
        box.setCurrentIndex(max(0, box.findData(chosen)))
        box.blockSignals(False)
        self.drawn_turns = prefix

    def middle(self) -> Any:
        from veneerwb.host.objects import layout
        from veneerwb.host.values import place_of

        return place_of(layout(self.obj).recipe)

    def arrange(self) -> None:
        """Only what the chosen kind and top need; odd ways are stepped over where book cannot take
        them."""
        form, kind, top = self.form, self.value("Kind"), self.value("Top")
        self._offer_turns(kind)
        used = {*kinds.KINDS[kind], *kinds.TOPS[top]}
        if self.value("Turn") != "random":
            used.discard("Seed")
        if self.value("EndKind") != "continuous":
            used.discard("Rows")
        known = {name for table in (kinds.KINDS, kinds.TOPS) for row in table.values()
                 for name in row}  # fmt: skip
        for name in known.intersection(self.names):
            self._show(name, name in used)
        for name in ("take_outline", "outline_name"):
            self._show(name, "OutlineOf" in used)
        for name in SPOT:
            self._show(name, not form.AutoPlacement.isChecked())
        across = translate(HERE, "S&ide") if top == "Square" else translate(HERE, "&Length")
        form.Length_label.setText(across)
        for box in (form.Ways, form.InnerWays):
            box.setSingleStep(2 if self.value("Turn") == "book" else 1)
        self._draw()

    def _show(self, name: str, shown: bool) -> None:
        """Shows or hides a box and its label, if it has one. The form is a grid, because a layout
        of rows leaves gaps where rows are hidden."""
        for one in (getattr(self.form, name), getattr(self.form, f"{name}_label", None)):
            if one is not None:
                one.setVisible(shown)

    def _draw(self) -> None:
        """Shows what is chosen as a drawing, with a line on it."""
        names = ("Kind", "Turn", "Face", "EndKind", "Strips", "DiscDiameter")
        away = bool(self.value("CentreX") or self.value("CentreY"))
        keys = match_drawings.key_of(*(self.value(name) for name in names), away)
        if keys != self.drawing:
            self.drawing = keys
            size = match_drawings.BY_ITSELF
            self.form.drawing.setPixmap(match_drawings.drawing(keys[0]).pixmap(size, size))
            self.form.line.setText(match_drawings.line(keys))

    def wanted(self, name: str, shown: Any) -> Any:
        return self.doc.getObject(shown or "") if name == "Bundle" else shown

    # --- the outline --------------------------------------------------------------------------

    def _take_outline(self) -> None:
        """The top follows what is selected."""
        found = outline_chosen(self.doc)
        if found is None:
            raise Refused(translate(
                HERE, "No outline is selected; select a closed sketch, a wire or a flat face, then "
                "take it."
            ))  # fmt: skip
        if self.obj in found[0].OutListRecursive:
            raise Refused(translate(
                HERE, "{name} is made from this match; choose an outline that is not."
            ).format(name=found[0].Label))  # fmt: skip
        if not self.step.goes_on:
            self.step.begin()
        self.obj.OutlineOf = found
        self._lay()
        self.soon(self.tell_safely)

    def _lay(self) -> None:
        """A kind that takes back what the one before could have is asked what it left."""
        if not self.step.goes_on:
            self.step.begin()
        kind = self.value("Kind")
        if "Kind" in self.offered and kind != self.obj.Kind:
            before = {name: self.held(name) for name in ("Turn", "Order")}
            self.obj.Kind = kind
            for name, held in before.items():
                if self.held(name) != held and name in self.offered:
                    self.fill(name, self.held(name))
        super()._lay()

    # --- what came of it ----------------------------------------------------------------------

    def tell(self) -> None:
        super().tell()
        self.findings.tell()
        self.cuts.tell()
        source, parts = (self.obj.OutlineOf or (None, ()))[:2]
        said = [source.Label if source else "", *filter(None, parts)]
        self.form.outline_name.setText(" ".join(said))
        if not self.obj.Message and self.obj.Bundle != self.ready:
            from veneerwb.gui import scene
            from veneerwb.host.objects import layout

            self.ready, self.textures = self.obj.Bundle, scene.textures(layout(self.obj).bundle)
            self.soon(self._load)

    def _load(self) -> None:
        """Makes one more texture, so that those of further ways are there when they are wanted."""
        from veneerwb.core import VeneerError

        with suppress(StopIteration, VeneerError):  # what cannot be read is told of when drawn
            next(self.textures)
            self.soon(self._load)

    def let_go(self) -> None:
        self.findings = None
        self.cuts.let_go()
        super().let_go()

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a radial match: the top is laid anew in the 3-D view with every change."""

from __future__ import annotations

from contextlib import suppress
from functools import partial
from typing import Any

import FreeCADGui

from veneerwb.gui.commands import sources
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.findings import Findings, found_on, select
from veneerwb.gui.panels.live import LivePanel, start

HERE = "VeneerMatchPanel"


def new(doc: Any, bundle: Any) -> None:
    """Opens the panel on a new match of `bundle`, a Bundle or Stock object."""
    from veneerwb.host.objects import add_match

    first = (list(getattr(bundle, "Numbers", [])) or [1])[0]
    step = translate(HERE, "New radial match")
    start(MatchPanel, doc, step, lambda: add_match(doc, bundle, First=first), fresh=True)
    for view in FreeCADGui.getDocument(doc.Name).mdiViewsOfType("Gui::View3DInventor"):
        view.fitAll()


class MatchPanel(LivePanel):
    """Asks for the top and how it is laid; each change goes to the match at once."""

    names = (
        "Bundle", "Top", "Diameter", "Sides", "AcrossFlats", "Ways", "Turn", "Order", "First",
        "Oversize", "Margin", "AutoPlacement", "TipX", "TipY", "Axis",
    )  # fmt: skip
    drawn, picture = "match", "veneer-radial"

    def offer(self) -> None:
        self.ready, self.textures = None, iter(())
        there = {one.Name: one.Label for one in sources(self.doc)}
        fields.offer(self.form.Bundle, there, there.values())
        fields.offer(self.form.Top, ("Round", "Polygon"))
        fields.offer(self.form.Turn, ("book", "slip"))
        if self.obj.Turn == "slip" and self.obj.Turned == "all":
            self.form.Turn.setItemText(1, translate(HERE, "Every one (slip)"))
        fields.offer(self.form.Order, ("sequence", "spread"))
        self.findings = Findings(
            self.form.findings, partial(found_on, self.obj), partial(select, self.obj)
        )

    def changed(self, *what: Any) -> None:
        """A wedge that is taken out of the middle starts from there."""
        middle = self.obj.AutoPlacement and not self.obj.Message
        if self.form is not None and middle and not self.form.AutoPlacement.isChecked():
            self._start_from_middle()
        super().changed(*what)

    def _start_from_middle(self) -> None:
        from veneerwb.host.objects import layout

        place = layout(self.obj).recipe.placement
        for name, middle in (("TipX", place.x), ("TipY", place.y), ("Axis", place.angle)):
            if name in self.offered:
                self.fill(name, middle)

    def arrange(self) -> None:
        """Only what the chosen top needs; odd ways are stepped over where book cannot take them."""
        polygon = self.form.Top.currentData() == "Polygon"
        self.show_row(self.form.Diameter, not polygon)
        self.show_row(self.form.Sides, polygon)
        self.show_row(self.form.AcrossFlats, polygon)
        for box in (self.form.TipX, self.form.TipY, self.form.Axis):
            self.show_row(box, not self.form.AutoPlacement.isChecked())
        self.form.Ways.setSingleStep(2 if self.form.Turn.currentData() == "book" else 1)

    def wanted(self, name: str, shown: Any) -> Any:
        return self.doc.getObject(shown or "") if name == "Bundle" else shown

    def tell(self) -> None:
        super().tell()
        self.findings.tell()
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
        super().let_go()

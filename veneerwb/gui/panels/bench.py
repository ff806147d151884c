# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a bench: the sheets' paper and words, how the shop cuts, tapes, presses and buys."""

from __future__ import annotations

from functools import partial
from typing import Any

import FreeCAD

from veneerwb.gui.chosen import of_kind
from veneerwb.gui.later import later
from veneerwb.gui.panels import fields, live
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.live import LivePanel, start
from veneerwb.host import shop_pages
from veneerwb.words import figure

HERE = "VeneerBenchPanel"
CHOICES = (
    "Paper", "Unit", "Fraction", "CutBy", "SeamsCut", "FileUnit", "TilePaper", "Press", "Gauge",
    "PricePer",
)  # fmt: skip
METHOD = {
    "Kerf": "kerf", "Lean": "lean", "AtOnce": "most", "Boards": "board",
    "BoardsBeyond": "around", "PinsClear": "clear",
}  # fmt: skip
"""The boxes of a way of cutting, and what the core calls them."""
PRESSED = ("PressWidth", "PressLength", "PressMargin", "PressThickness", "MostPressure")
RAMS, BAG = ("Rams", "RamDiameter"), ("Altitude",)


def look(match: Any) -> None:
    """Opens the panel on the bench of a match, a new one where it has none."""
    from veneerwb.host.bench import bench_of_match
    from veneerwb.host.objects.bench import add_bench

    bench = bench_of_match(match)
    if bench is not None:
        live.edit(BenchPanel, bench)
        return
    step = translate(HERE, "{name} to the bench").format(name=match.Label)
    start(BenchPanel, match.Document, step, lambda: add_bench(match.Document, match), fresh=True)


class BenchPanel(LivePanel):
    """Asks how a match goes to the bench; its sheets are made anew when it is left by OK."""

    names = (
        "Match", "Paper", "Unit", "Fraction", "Base", "Title", "Number", "Owner", "CreatedBy",
        "ApprovedBy", "CutBy", *METHOD, "PinMargin", "SeamsCut", "SeamAngle", "SeamWidth", "Tool",
        "FileUnit", "TilePaper", "FaceDown", "Press", *PRESSED, "Gauge", *RAMS, *BAG, "Adhesive",
        "Pressure", "OpenTime", "PressTime", "Spread", "Price", "PricePer", "Currency", "Tops",
    )  # fmt: skip
    drawn, picture = "bench", "veneer-bench"

    def offer(self) -> None:
        there = {one.Name: one.Label for one in of_kind(self.doc, "Match")}
        fields.offer(self.form.Match, there, there.values())
        for name in CHOICES:
            fields.offer(getattr(self.form, name), self.obj.getEnumerationsOfProperty(name))
        self.form.usual.clicked.connect(lambda: self.attempt(self._usual))
        self.form.refresh.clicked.connect(lambda: self.attempt(self._refresh))
        self.form.packet.clicked.connect(lambda: self.attempt(self._packet))

    def wanted(self, name: str, shown: Any) -> Any:
        return self.doc.getObject(shown or "") if name == "Match" else shown

    def arrange(self) -> None:
        """Only what is asked of the present choices."""
        seams, press = self.value("SeamsCut"), self.value("Press")
        shown = {
            "Fraction": self.value("Unit") != "mm",
            "SeamAngle": seams == "over by an angle",
            "SeamWidth": seams == "over by a width",
            "BoardsBeyond": bool(self.value("Boards")) or self.value("CutBy") == "saw",
            **dict.fromkeys(PRESSED, press != "not said"),
            **dict.fromkeys(RAMS, press == "press"),
            **dict.fromkeys(BAG, press == "vacuum bag"),
        }
        for name, here in shown.items():
            self.show_row(getattr(self.form, name), here)

    def _usual(self) -> None:
        """What is common practice for the way of cutting that is chosen."""
        from veneerwb.core.shop.cutting.methods import METHODS

        how = METHODS[self.value("CutBy")]
        for box, name in METHOD.items():
            self.fill(box, getattr(how, name))
        self.changed()

    # --- what came of it ----------------------------------------------------------------------

    def tell(self) -> None:
        super().tell()
        self.form.state.setText(self._state())
        self.form.yields.setText(self._yields())

    def _state(self) -> str:
        if self.obj.State:
            return translate(HERE, "The sheets are not up to date: {why}").format(
                why=self.obj.State
            )
        if not shop_pages.pages_of(self.obj):
            return translate(HERE, "No sheets yet: OK makes them.")
        return translate(HERE, "The sheets show revision {mark}.").format(mark=self.obj.Revision)

    def _yields(self) -> str:
        """What is used, and what would do if it were still to be bought."""
        from veneerwb.core.shop.cost import yields
        from veneerwb.core.shop.planning import planned_for
        from veneerwb.host.bench import layout_of

        layout, match = layout_of(self.obj), self.obj.Match
        found = yields(layout)
        least = planned_for(layout, match.Spares, match.Margin.Value, self.value("Tops"))
        text = translate(
            HERE,
            "Used: {used} m2 of {bought} m2 bought, {share} %.\n\nStill to buy? {leaves} leaves in "
            "sequence, {spares} of them spare, each at least {width} x {length}.",
        )
        return text.format(
            used=figure(found.used, ".3f"), bought=figure(found.bought, ".3f"),
            share=figure(100.0 * found.of_bundle.used_of_bought, ".1f"), leaves=least.leaves,
            spares=least.spares, width=fields.length(least.width),
            length=fields.length(least.length),
        )  # fmt: skip

    def _refresh(self) -> None:
        from veneerwb.gui import packet

        self._lay()
        packet.refresh_in_step(self.obj)
        self.tell()

    def _packet(self) -> None:
        from veneerwb.gui import packet

        folder = packet.ask(self.obj)
        if folder:
            self._lay()
            written = packet.written_anew(self.obj, folder)
            self.tell()
            self.form.state.setText(packet.said(written))

    def show_row(self, box: Any, shown: bool) -> None:
        for one in (box, getattr(self.form, f"{box.objectName()}_label")):
            one.setVisible(shown)

    def finish(self) -> None:
        super().finish()
        fresh = not shop_pages.pages_of(self.obj)
        if self.obj.State or fresh:
            self._refresh()
        if fresh:
            later(partial(_show_first, self.doc.Name, self.obj.Name))


def _show_first(document: str, name: str) -> None:
    """Opens the first sheet of a bench, if that is still there when its panel has closed."""
    from veneerwb.gui.drawing import open_page

    doc = FreeCAD.listDocuments().get(document)
    bench = doc.getObject(name) if doc is not None else None
    for page in list(shop_pages.pages_of(bench).values())[:1] if bench is not None else ():
        open_page(page)

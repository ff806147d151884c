# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a build-up: parts come and go in the 3-D view with every change."""

from __future__ import annotations

import os
from collections.abc import Callable
from functools import partial
from typing import Any

import FreeCADGui
from PySide import QtGui

from veneerwb.gui.framing import look_at
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.findings import Findings, only
from veneerwb.gui.panels.live import LivePanel, start
from veneerwb.gui.saving import with_ending
from veneerwb.host import compat
from veneerwb.host.objects.base import Refused, set_if_new
from veneerwb.host.steps import Step

HERE = "VeneerBuildUpPanel"
SOLID = ("CoreSawn", "CoreMoves")
ROWS = {
    "LippingWidth": ("LippingWhen", "LippingMaterial", "LippingSegments", "LippingSawn",
                     "LippingMoves"),
    "BorderWidth": ("BorderKind", "BorderGrain", "BorderMaterial", "BorderSegments"),
    "LineWidth": ("LineMaterial", "LineSegments"),
}  # fmt: skip
"""What is asked of a part that there is, by the box that says whether."""
DISC, STAR = ("InlayDiameter",), ("InlayPoints", "InlayOuter", "InlayInner", "InlayTurn")
CROSSBANDS = ("CrossbandMaterial", "CrossbandGrain")
CLIMATE = ("MadeTemperature", "MadeHumidity", "StandsTemperature", "StandsHumidity")


def look(match: Any) -> None:
    """Opens the panel on the build-up of a match, a new one where it has none."""
    from veneerwb.gui.panels import live
    from veneerwb.host.objects.buildup import parts_of

    if match.BuildUp is not None and parts_of(match) is not None:
        live.edit(partial(BuildUpPanel, match=match), match.BuildUp)
        return
    step = translate(HERE, "Build up {name}").format(name=match.Label)
    panel = start(BuildUpPanel, match.Document, step, lambda: _made(match), fresh=True)
    if panel is not None:
        look_at(panel, parts_of(match))


def _made(match: Any) -> Any:
    """What is wanted for a panel and is not there; a new one starts with a backer like the show
    veneer, so that it is balanced."""
    from veneerwb.host.objects.buildup import add_build_up, add_parts

    if match.BuildUp is None:
        thick, wood = match.Bundle.Thickness.Value, getattr(match.Bundle, "Species", "")
        return add_build_up(match.Document, match, BackerThickness=thick, BackerMaterial=wood)
    add_parts(match.Document, match)
    return match.BuildUp


class BuildUpPanel(LivePanel):
    """Asks what a panel is built of, lists what the checks find on it, makes its bill."""

    names = (
        "CoreThickness", "CoreKind", "CoreMaterial", "CoreGrain", "CoreSawn", "CoreMoves",
        "CrossbandAbove", "CrossbandBelow", "CrossbandMaterial", "CrossbandGrain",
        "BackerFrom", "BackerThickness", "BackerMaterial", "BackerGrain",
        "LippingWidth", "LippingWhen", "LippingMaterial", "LippingSegments", "LippingSawn",
        "LippingMoves", "BorderWidth", "BorderKind", "BorderGrain", "BorderMaterial",
        "BorderSegments", "LineWidth", "LineMaterial", "LineSegments", "Inlay", "InlayDiameter",
        "InlayPoints", "InlayOuter", "InlayInner", "InlayTurn", "InlayMaterial", "InlayGrain",
        "ClimateKnown", *CLIMATE,
    )  # fmt: skip
    drawn, picture = "buildup", "veneer-buildup"

    def __init__(self, obj: Any, step: Step, match: Any = None) -> None:
        """`match`: the one to show, of those that are built up so."""
        from veneerwb.host.objects.buildup import matches_of, parts_of

        self.match = match or next(iter(matches_of(obj)), None)
        self.parts = parts_of(self.match) if self.match is not None else None
        super().__init__(obj, step)
        self._offer_distance()

    def _offer_distance(self) -> None:
        """That is the parts' own, so that drawing them apart does not lay the match anew."""
        box, parts = self.form.Explode, self.parts
        self.apart = parts is not None and not parts.ExpressionEngine
        self.fill("Explode", parts.Explode.Value if parts is not None else 0.0)
        box.setEnabled(self.apart)
        if parts is not None:
            box.setToolTip(fields.purpose(parts, "Explode"))
        fields.watch(box, self.changed)
        self.take_mixed_numbers("Explode")

    def works_on(self) -> tuple[Any, ...]:
        return self.obj, self.match, self.parts

    def offer(self) -> None:
        from veneerwb.gui.chosen import sources
        from veneerwb.host import panels

        there = {"": translate(HERE, "Other veneer")}
        there |= {one.Name: one.Label for one in sources(self.doc)}
        fields.offer(self.form.BackerFrom, there, there.values())
        for box in ("CoreKind", "CoreSawn", "LippingWhen", "LippingSawn", "BorderKind",
                    "BorderGrain", "Inlay"):  # fmt: skip
            fields.offer(getattr(self.form, box), self.obj.getEnumerationsOfProperty(box))
        self.form.sheet.clicked.connect(lambda: self._try(self._sheet))
        self.form.save.clicked.connect(lambda: self._try(self._save))
        self.findings = Findings(
            self.form.findings, lambda: panels.found_on(self.parts), self._choose
        )

    def _choose(self, *_: Any) -> None:
        if self.parts is not None:
            only(self.doc, [(self.parts.Name, "")])

    # --- boxes --------------------------------------------------------------------------------

    def arrange(self) -> None:
        """Only what is asked of the parts that there are."""
        shown = {box: bool(self.value(size)) for size, boxes in ROWS.items() for box in boxes}
        shown |= dict.fromkeys(SOLID, self.value("CoreKind") == "solid wood")
        above, below = self.value("CrossbandAbove"), self.value("CrossbandBelow")
        shown |= dict.fromkeys(CROSSBANDS, bool(above or below))
        own = not self.value("BackerFrom")
        there = not own or bool(self.value("BackerThickness"))
        shown |= {"BackerThickness": own, "BackerMaterial": own and there, "BackerGrain": there}
        inlay = self.value("Inlay")
        shown |= dict.fromkeys(DISC, inlay == "disc") | dict.fromkeys(STAR, inlay == "star")
        shown |= dict.fromkeys(("InlayMaterial", "InlayGrain"), inlay != "none")
        shown |= dict.fromkeys(CLIMATE, self.value("ClimateKnown"))
        for name, here in shown.items():
            self.show_row(getattr(self.form, name), here)

    def held(self, name: str) -> Any:
        found = super().held(name)
        return found or "" if name == "BackerFrom" else found

    def wanted(self, name: str, shown: Any) -> Any:
        if name != "BackerFrom":
            return shown
        return self.doc.getObject(shown) if shown else None

    def _lay(self) -> None:
        if not self.step.goes_on:
            self.step.begin()
        if self.apart:
            set_if_new(self.parts, Explode=self.value("Explode"))
        super()._lay()

    # --- what came of it ----------------------------------------------------------------------

    def tell(self) -> None:
        self.say(self._refusal())
        self.findings.tell()
        self.form.summary.setText("" if self._refusal() else self._summary())

    def _refusal(self) -> str:
        """Why the build-up, the match on it or its parts refuse; in the order in which they hang
        on one another."""
        those = (self.obj, self.match, self.parts)
        return next((fields.refusal(one) for one in those if one is not None and one.Message), "")

    def _summary(self) -> str:
        if self.parts is None:
            return translate(HERE, "No match is built up so.")
        from veneerwb.host import bills

        text = translate(HERE, "{thick} thick in all; {count} parts beside the match's pieces.")
        thick = fields.length(self.parts.Thickness.Value, 2)
        text = text.format(thick=thick, count=len(self.parts.Names))
        sheet = bills.sheet_of(self.parts)
        if sheet is not None:
            said = translate(HERE, "The bill is in the sheet {name}.")
            text = f"{text} {said.format(name=sheet.Label)}"
        return text

    def finish(self) -> None:
        super().finish()
        if self._refusal():
            raise Refused(self._refusal())

    # --- the bill -----------------------------------------------------------------------------

    def _try(self, action: Callable[[], None]) -> None:
        """Does something with the bill; why it fails is said beside its buttons too, for the top of
        the panel may be out of sight."""
        if self.attempt(action):
            self.tell_safely()
        else:
            self.form.summary.setText(self.form.trouble.text())

    def _settled(self) -> None:
        """The document as the boxes have it."""
        self._lay()
        if self.parts is None:
            raise Refused(translate(HERE, "No match is built up so, and there is nothing to buy."))

    def _sheet(self) -> None:
        """Makes the sheet or renews it; it is a part of the panel's step."""
        from veneerwb.host import bills

        self._settled()
        bills.fill_sheet(self.parts)
        compat.recompute(self.doc)

    def _save(self) -> None:
        """Asks for a file, and whether it may be replaced."""
        from veneerwb.host import bills

        self._settled()
        title = translate(HERE, "Save the bill of materials as CSV")
        name = self.match.Label.replace("/", "-").replace("\\", "-")
        start_at = os.path.join(os.path.dirname(self.doc.FileName), f"{name} bill.csv")
        path, _ = QtGui.QFileDialog.getSaveFileName(
            FreeCADGui.getMainWindow(), title, start_at, "CSV (*.csv)"
        )
        if path:
            bills.write_file(self.parts, with_ending(path, ".csv"))

    def let_go(self) -> None:
        self.findings = None
        super().let_go()

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel on closing the ring: how much over to cut, and how to true what was cut."""

from __future__ import annotations

from typing import Any

from PySide import QtGui

from veneerwb.core.matches.radial import LEAST_WAYS, MOST_WAYS
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.closing_readings import Readings
from veneerwb.gui.panels.live import LivePanel, edit, start
from veneerwb.host.objects.base import Refused, set_if_new
from veneerwb.words import word

HERE = "VeneerClosingPanel"
WET = ("Photographed", "WhenCut", "WhenTaped", "MoistureUnsure", "Moves", "Sawn")
TRIED = ("TrialSum", "TrialUnsure")
BEFORE = ("TemplateError", "PieceError", "Confidence", "WedgesTo", "Base", "TrialCount", *TRIED,
          "MoistureKnown", *WET)  # fmt: skip
AFTER = ("Reading", "FirstPiece", "Common", "How", "Shifted", "readings")
PICTURE = ("shown", "picture", "caption")
PIXELS = 210


def look(match: Any) -> None:
    """Opens the panel on the closing of a match, a new one where it has none."""
    from veneerwb.host.objects.closing import add_closing, closings_of

    there = closings_of(match)
    if there:
        edit(ClosingPanel, there[0])
        return
    name = translate(HERE, "Close the ring of {name}").format(name=match.Label)

    def made() -> Any:
        if match.Kind != "Radial":
            raise Refused(translate(
                HERE, "Only a radial match is a ring that closes; select one of those."
            ))  # fmt: skip
        return add_closing(match.Document, match)

    start(ClosingPanel, match.Document, name, made, fresh=True)


class ClosingPanel(LivePanel):
    """Before cutting it asks for the errors to expect and tells how much over to cut; after cutting
    it takes what was measured and tells what to true."""

    names = tuple(name for name in (*BEFORE, *AFTER) if name != "readings")
    drawn, picture = "closing", "veneer-closing"

    def offer(self) -> None:
        from veneerwb.core.wood import SPECIES
        from veneerwb.host.objects.closing import HOWS, READINGS
        from veneerwb.paint.closing import KINDS

        form = self.form
        fields.offer(form.stage, ("before", "after"))
        fields.offer(form.Confidence, self.obj.getEnumerationsOfProperty("Confidence"))
        fields.offer(form.Sawn, ("plain", "quarter"))
        fields.offer(form.Reading, READINGS)
        fields.offer(form.How, HOWS)
        fields.offer(form.shown, KINDS)
        woods = ("", *SPECIES)
        fields.offer(form.Moves, woods, map(word, woods))
        form.Moves.lineEdit().setPlaceholderText(translate(HERE, "The bundle's"))
        form.stage.setCurrentIndex(int(self.obj.Reading != "nothing yet"))
        self.table = Readings(self)
        fields.watch(form.stage, self._turned)
        fields.watch(form.shown, self._turned)

    @property
    def after(self) -> bool:
        return fields.value(self.form.stage) == "after"

    def arrange(self) -> None:
        """Only what is asked at this stage, of what was measured."""
        wet, reading = self.value("MoistureKnown"), self.value("Reading")
        shown = dict.fromkeys(BEFORE, not self.after) | dict.fromkeys(AFTER, self.after)
        if not wet:
            shown |= dict.fromkeys(WET, False)
        if not self.value("TrialCount"):
            shown |= dict.fromkeys(TRIED, False)
        tried = self.value("TrialCount") and self.value("TrialSum")
        self.form.TemplateError.setEnabled("TemplateError" in self.offered and not tried)
        some = self.after and reading != "nothing yet"
        odd = bool(self._ways() % 2)
        shown["FirstPiece"] = some and reading in ("halves", "gaps")
        shown["Common"] = some and reading != "gaps"
        shown["readings"] = some
        shown["How"] = some and not odd
        for name, here in shown.items():
            self.show_row(getattr(self.form, name), here)
        if some:
            self.table.show(reading, self._ways(), self.value("FirstPiece"))

    def show_row(self, box: Any, shown: bool) -> None:
        box.setVisible(shown)
        label = getattr(self.form, f"{box.objectName()}_label", None)
        if label is not None:
            label.setVisible(shown)

    def _ways(self) -> int:
        """0 where there is no ring: a row for each of whatever a document says would take all
        memory."""
        ways = getattr(self.obj.Match, "Ways", 0)
        return ways if LEAST_WAYS <= ways <= MOST_WAYS else 0

    def straightedge(self, row: int, at: str) -> float:
        """How far from the tip a gap on the half of a row is seen, mm: at the ends of the blanks,
        unless it is told."""
        from veneerwb.core.shop.closing import Ring
        from veneerwb.host.objects import layout

        laid = layout(self.obj.Match)
        first = self.value("FirstPiece") + row * (self._ways() // 2)
        return Ring.of(laid, laid.recipe.oversize).straightedge(first, at)

    def _turned(self, *_: Any) -> None:
        """Another stage or picture: nothing is to be reckoned anew."""
        if self.form is not None:
            self.arrange()
            self.soon(self.tell_safely)

    def _lay(self) -> None:
        if not self.step.goes_on:
            self.step.begin()
        set_if_new(self.obj, **self.table.kept)
        super()._lay()

    # --- what came of it ----------------------------------------------------------------------

    def tell(self) -> None:
        super().tell()
        form = self.form
        form.summary.clear()
        for name in PICTURE:
            self.show_row(getattr(form, name), False)
        if not self.obj.Message:
            self._tell()

    def _tell(self) -> None:
        from veneerwb.core.shop.closing import Closing, said
        from veneerwb.host.objects.closing import closing_of

        found = closing_of(self.obj)
        if not self.after:
            before = found.before
            found = Closing(before)
            offers = self._offers(before)
            texts = [*said.steps_before(before, fields.length),
                     *said.price(before, fields.length), offers,
                     *said.expect(before, fields.length), said.caution()]  # fmt: skip
        elif found.after is None:
            self.form.summary.setText(self._still())
            return
        else:
            texts = [*said.found_after(found, fields.length),
                     *said.steps_after(found, fields.length), self._ends(found),
                     said.caution()]  # fmt: skip
        self.form.summary.setText("\n\n".join(filter(None, texts)))
        self._show(found)

    def _still(self) -> str:
        if self.obj.Missing < 0:
            return translate(HERE, "There are more readings than pieces; measure the ring anew.")
        if not self.obj.Missing:
            return translate(HERE, "Measure the pieces, the halves, or the gaps under a "
                                   "straightedge laid across them, and enter them here.")
        return translate(HERE, "Readings still missing: {count}.").format(count=self.obj.Missing)

    def _offers(self, before: Any) -> str:
        """The ways of truing, a line each."""
        from veneerwb.core.shop.closing import said

        _, rows = said.offers(before, fields.length)
        line = translate(HERE, "{how}, {sure}: {over} deg over, seams {off} off, {lost} lost")
        lines = [
            line.format(how=how, sure=sure, over=over, off=off, lost=lost)
            for how, sure, over, off, lost, *_ in rows
        ]
        return "\n".join([translate(HERE, "Ways of truing, the advised one with a star:"), *lines])

    def _ends(self, found: Any) -> str:
        """The line of every end, a line each."""
        from veneerwb.core.shop.closing import said

        if not found.at.parts[0].trued:
            return ""
        line = translate(
            HERE, "{end}: piece {piece}, its edge to {other}: {tip} at the tip, {rim} at the rim, "
                  "{far} from it"
        )
        return "\n".join(
            line.format(end=end, piece=piece, other=other, tip=tip, rim=rim, far=far)
            for end, piece, other, tip, rim, far in said.ends(found.at, fields.length)[1]
        )

    def _show(self, found: Any) -> None:
        """The picture that is chosen."""
        for name in PICTURE:
            self.show_row(getattr(self.form, name), True)
        from veneerwb.paint import closing

        kind = fields.value(self.form.shown)
        if kind not in closing.kinds(found):
            kind = closing.KINDS[0]
        ratio = self.form.devicePixelRatioF()
        image, large = closing.image(found, kind, round(PIXELS * ratio))
        image.setDevicePixelRatio(ratio)
        self.form.picture.setPixmap(QtGui.QPixmap.fromImage(image))
        caption = {
            "enlarged": translate(
                HERE, "As taped, apart; what is off {large} as large. Grey: off. Red: true here."
            ),
            "to scale": translate(HERE, "{large}; red: trued, dashed: as planned."),
            "as it will look": translate(HERE, "As it will look when it is trued."),
        }[kind]
        self.form.caption.setText(caption.format(large=large))

    def let_go(self) -> None:
        self.table = None
        super().let_go()

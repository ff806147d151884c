# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel that lists what the checks find on a match, as it is now and as it changes."""

from __future__ import annotations

from collections import Counter
from functools import partial
from typing import Any

from PySide import QtGui

from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.findings import Findings, found_on, select
from veneerwb.gui.panels.seams import MeasuresSeams
from veneerwb.host import compat

HERE = "VeneerCheckPanel"
RANK = {"stop": 0, "warn": 1, "note": 2}


def look(doc: Any, matches: list[Any]) -> CheckPanel:
    """Opens the panel on the matches of a document, the first of them shown."""
    panel = CheckPanel(doc, matches)
    panel.show()
    return panel


class CheckPanel(MeasuresSeams):
    """Has no more than Close: it changes nothing."""

    locked = ("match",)

    def __init__(self, doc: Any, matches: list[Any]) -> None:
        super().__init__(doc, "check", "veneer-check")
        names = [match.Name for match in matches]
        fields.offer(self.form.match, names, [match.Label for match in matches])
        self.match = matches[0]
        self.findings = Findings(
            self.form.findings, self._found, lambda *what: select(self.match, *what)
        )
        self.connect("measure", self._measure)
        fields.watch(self.form.match, self.tell)
        self.tell()

    def getStandardButtons(self) -> int:
        return compat.whole(QtGui.QDialogButtonBox.Close)

    def slotRecomputedDocument(self, doc: Any) -> None:
        if self._open and doc == self.doc:
            self.tell()

    def slotDeletedObject(self, obj: Any) -> None:
        """A match that goes takes its line with it."""
        row = self.form.match.findData(obj.Name) if self._open and obj.Document == self.doc else -1
        if row >= 0:
            self.form.match.removeItem(row)
            self.tell()

    def tell(self, *_: Any) -> None:
        """Shows what is found on the chosen match now."""
        match = self.doc.getObject(fields.value(self.form.match) or "")
        if match != self.match or not self.date_seams():
            self.forget_seams()
        self.match = match
        self.form.measure.setEnabled(match is not None)
        self.form.summary.setText("")
        if self.attempt(self.findings.tell):
            self.form.summary.setText(self._summary())
        else:
            self.form.findings.clear()

    def _measure(self) -> None:
        """Adds what the registers leave along the seams, until the match changes."""
        from veneerwb.host.objects import layout

        if self.measure("measure", partial(layout, self.match), self.match.Label):
            self.attempt(self.findings.tell)

    def _found(self) -> list[Any]:
        """What the checks find, and what was measured; the gravest first."""
        measured = self.measured.residual.findings if self.measured is not None else ()
        return sorted([*found_on(self.match), *measured], key=lambda one: RANK[one.level])

    def _summary(self) -> str:
        match = self.match
        if match is None:
            return translate(HERE, "The match is gone.")
        if match.Message:
            return fields.refusal(match)
        levels = Counter(finding.level for finding in found_on(match))
        if levels["stop"]:
            return translate(HERE, "Do not cut yet: {count} against it.").format(
                count=levels["stop"]
            )
        if levels["warn"]:
            return translate(HERE, "It can be cut, knowing this.")
        return translate(HERE, "Nothing stands against cutting.")

    def let_go(self) -> None:
        self.findings = None
        super().let_go()

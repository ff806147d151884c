# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a bundle's particulars: what it is, for the shelf and the bill."""

from __future__ import annotations

import os
from typing import Any

import FreeCADGui
from PySide import QtGui

from veneerwb.gui.panels import fields
from veneerwb.gui.panels.at_work import AtWork, Progress
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.live import LivePanel
from veneerwb.gui.saving import with_ending
from veneerwb.words import figure

HERE = "VeneerParticularsPanel"
CUTS = (
    "", "Sliced flat", "Sliced on the quarter", "Sliced on the rift", "Half round", "Peeled",
    "Sawn",
)  # fmt: skip
"""What documents and files hold for the choices of that box, in any language; other words may be
typed."""
IN_THE_FILE = {
    "Label": "name", "Species": "species", "Cut": "cut", "Thickness": "thickness",
    "TightSide": "tight_side", "Flitch": "flitch", "LotMark": "lot", "Moisture": "moisture",
    "Cost": "cost", "Currency": "currency", "Origin": "origin",
}  # fmt: skip
"""The boxes, and the names of what they show in an inventory."""


class ParticularsPanel(LivePanel, AtWork):
    """Asks what a bundle is; says how much there is of it; writes and reads it as CSV."""

    names = (*IN_THE_FILE, "EvenLight")
    drawn, picture = "particulars", "veneer-particulars"
    locked = ("save", "read", "EvenLight")

    def offer(self) -> None:
        from veneerwb.host.objects.bundle import TIGHT_SIDES

        form = self.form
        fields.offer(form.TightSide, TIGHT_SIDES)
        fields.offer(form.Cut, CUTS)
        form.save.clicked.connect(lambda: self.attempt(self._save))
        form.read.clicked.connect(lambda: self.attempt(self._read))
        self.connect("even", lambda: self.at_work("even", self._even))

    def tell(self) -> None:
        super().tell()
        self.form.summary.setText(self._summary())
        self._tell_light()

    def _summary(self) -> str:
        obj = self.obj
        width, length = obj.LeastWidth.UserString, obj.LeastLength.UserString
        leaves = translate(HERE, "{count} leaves, at least {width} by {length}.")
        area = translate(
            HERE, "In full {full_m2} m² ({full_ft} sq ft), usable {m2} m² ({ft} sq ft)."
        )
        return leaves.format(count=obj.Count, width=width, length=length) + " " + area.format(
            full_m2=figure(obj.FullM2, ".3f"), full_ft=figure(obj.FullSqFt, ".2f"),
            m2=figure(obj.UsableM2, ".3f"), ft=figure(obj.UsableSqFt, ".2f"),
        )

    # --- the light ----------------------------------------------------------------------------

    def _tell_light(self) -> None:
        """What the gains do to each leaf; without any there is nothing to switch."""
        from veneerwb.host.light import told

        done = told(self.obj)
        form = self.form
        form.EvenLight.setEnabled(
            bool(done) and "EvenLight" in self.offered and not self.working
        )
        form.light.setVisible(bool(done))
        form.light.clear()
        for line in done:
            form.light.addItem(line)

    def _lock(self, locked: bool) -> None:
        super()._lock(locked)
        if not locked:
            self._tell_light()

    def _even(self, told: Progress) -> None:
        """Measures the light on the background, and shows it evened."""
        from veneerwb.host.light import even_light

        self._lay()
        even_light(self.obj, progress=told)
        self.fill("EvenLight", True)
        self.changed()

    # --- the file -----------------------------------------------------------------------------

    def _save(self) -> None:
        """Writes all bundles of the document as they stand in the boxes and properties now."""
        title = translate(HERE, "Save the particulars as CSV")
        start = os.path.join(os.path.dirname(self.doc.FileName), "bundles.csv")
        path, _ = QtGui.QFileDialog.getSaveFileName(
            FreeCADGui.getMainWindow(), title, start, "CSV (*.csv)"
        )
        if path:
            self._lay_if_due()
            write(self.doc, with_ending(path, ".csv"))

    def _read(self) -> None:
        """Fills the boxes from the line of a file that has this bundle's name, or its only one."""
        title = translate(HERE, "Read particulars from a CSV file")
        start = os.path.dirname(self.doc.FileName)
        path, _ = QtGui.QFileDialog.getOpenFileName(
            FreeCADGui.getMainWindow(), title, start, "CSV (*.csv)"
        )
        if not path:
            return
        found = entry_for(path, self.obj.Label).particulars
        for box in [one for one in self.offered if one in IN_THE_FILE and one != "Label"]:
            value = getattr(found, IN_THE_FILE[box])
            if value not in (None, "", "not known"):
                self.fill(box, value)  # which keeps what a box would round
        self.changed()


def write(doc: Any, path: str) -> None:
    """Writes the particulars of all bundles of a document. Raises VeneerError."""
    from veneerwb.host import inventory

    inventory.write_inventory(inventory.bundles(doc), path)


def entry_for(path: str, name: str) -> Any:
    """The entry of a file that has a name, or its only one if it names none. Raises
    VeneerError."""
    from veneerwb.core import VeneerError, inventory

    entries = inventory.read_csv(path).entries
    named = [one for one in entries if one.particulars.name.casefold() == name.casefold()]
    if len(named) == 1 or (len(entries) == 1 and not entries[0].particulars.name):
        return (named or entries)[0]
    raise VeneerError(
        "no-such-bundle",
        "The file {file} has {count} lines for a bundle called {name}; give one line that name.",
        file=os.path.basename(path), count=len(named), name=name,
    )

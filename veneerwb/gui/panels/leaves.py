# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel that brings photographs of leaves into the document as a bundle."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtGui

from veneerwb.gui.later import later
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import Panel, translate
from veneerwb.gui.panels.step import Step

HERE = "VeneerLeavesPanel"


def bring_in() -> LeavesPanel:
    """Opens the panel on the active document; on a new one where there is none, since 1.1 shows no
    panel without, and Cancel closes it again."""
    there = FreeCAD.ActiveDocument
    panel = LeavesPanel(there or FreeCAD.newDocument(), fresh=there is None)
    panel.show()
    return panel


class LeavesPanel(Panel):
    """Asks which photographs, their scale, the leaves' thickness and the stack's sense."""

    def __init__(self, doc: Any, fresh: bool = False) -> None:
        super().__init__(doc, "leaves", "veneer-bring-in")
        self.fresh, self.files = fresh, []
        form = self.form
        fields.offer(form.scale, ("length", "width", "pixel"))
        fields.offer(form.back, ("next", "previous", "own"))
        for name, start in (("known", 2400.0), ("per_pixel", 0.5), ("thickness", 0.6)):
            self.fill(name, start)
        form.pick_folder.clicked.connect(self._ask_folder)
        form.pick_files.clicked.connect(self._ask_files)
        form.folder.textEdited.connect(self._forget_files)
        for box in (form.folder, form.scale, form.known, form.per_pixel):
            fields.watch(box, self._sum_up)
        for name in ("known", "per_pixel", "thickness"):
            self.take_mixed_numbers(name)
        self._scale_chosen()
        form.scale.currentIndexChanged.connect(self._scale_chosen)

    # --- which photographs --------------------------------------------------------------------

    def _ask_folder(self) -> None:
        title = translate(HERE, "Folder of photographs")
        chosen = QtGui.QFileDialog.getExistingDirectory(
            FreeCADGui.getMainWindow(), title, self.form.folder.text()
        )
        if chosen:
            self.files = []
            self.form.folder.setText(chosen)
            self._sum_up()

    def _ask_files(self) -> None:
        from veneerwb.core.photos import SUFFIXES

        kinds = " ".join(f"*{suffix} *{suffix.upper()}" for suffix in SUFFIXES)
        title = translate(HERE, "Photographs of leaves")
        names, _ = QtGui.QFileDialog.getOpenFileNames(
            FreeCADGui.getMainWindow(), title, self.form.folder.text(), f"{title} ({kinds})"
        )
        if names:
            self.files = [Path(name) for name in names]
            self.form.folder.setText(str(self.files[0].parent))
            self._sum_up()

    def _forget_files(self) -> None:
        self.files = []

    def photos(self) -> dict[int, Path]:
        """The photographs by their leaves' numbers. Raises VeneerError."""
        from veneerwb.core import VeneerError
        from veneerwb.core.photos import by_number, photo_files

        folder = self.form.folder.text().strip()
        if not self.files and not folder:
            raise VeneerError(
                "nothing-chosen", "Choose the folder that holds the photographs of the leaves."
            )
        return by_number(self.files or photo_files(Path(folder).expanduser()))

    def _sum_up(self, *_: Any) -> None:
        """Says under the folder what is in it and how large that is, or why it will not do."""
        self.form.summary.setText("")
        self.attempt(lambda: self.form.summary.setText(self._summary()))

    def _summary(self) -> str:
        numbered = self.photos()
        numbers = list(numbered)
        text = translate(HERE, "{count} photographs, leaves {first} to {last}.").format(
            count=len(numbers), first=numbers[0], last=numbers[-1]
        )
        missing = numbers[-1] - numbers[0] + 1 - len(numbers)
        if missing:
            text += " " + translate(HERE, "{count} in between are missing.").format(count=missing)
        first = self._first(numbered)
        width, length = (
            FreeCAD.Units.Quantity(pixels * self._scale(first), FreeCAD.Units.Length).UserString
            for pixels in reversed(first)
        )
        return f"{text} " + translate(HERE, "The first is {width} across, {length} along.").format(
            width=width, length=length
        )

    # --- scale --------------------------------------------------------------------------------

    def _scale_chosen(self, *_: Any) -> None:
        pixel = self.form.scale.currentData() == "pixel"
        self.show_row(self.form.known, not pixel)
        self.show_row(self.form.per_pixel, pixel)

    def _first(self, numbered: dict[int, Path]) -> tuple[int, int]:
        """Rows and columns of the first photograph. Raises VeneerError if it cannot be read."""
        from veneerwb.host.photos import shape_of

        return shape_of(next(iter(numbered.values())))

    def _scale(self, first: tuple[int, int]) -> float:
        """mm per pixel, with the rows and columns of the first photograph. Raises VeneerError."""
        from veneerwb.core.plane import positive

        how = self.form.scale.currentData()
        if how == "pixel":
            return positive("size of a pixel", self.value("per_pixel"))
        known = positive(f"{how} of the first photograph", self.value("known"))
        rows, columns = first
        return known / (rows if how == "length" else columns)

    # --- OK -----------------------------------------------------------------------------------

    def finish(self) -> None:
        numbered = self.photos()
        scale = self._scale(self._first(numbered))
        self.step = Step(self.doc, translate(HERE, "Bring in leaves"))
        try:
            bundle = self._make(numbered, scale)
        except Exception:
            super().take_back()
            self.step = None
            raise
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(bundle)

    def take_back(self) -> None:
        super().take_back()
        if self.fresh and self.doc is not None and not self.doc.Objects:
            name, self.doc = self.doc.Name, None
            later(lambda: _close(name))

    def _make(self, numbered: dict[int, Path], scale: float) -> Any:
        from veneerwb.host.objects import add_bundle_from_photos, core_bundle

        bundle = add_bundle_from_photos(
            self.doc,
            list(numbered.values()),
            scale,
            self.value("thickness"),
            self.value("back"),
        )
        # From the last, so that no label is still taken: the host would make it another.
        for leaf, number in reversed(list(zip(bundle.Leaves, numbered))):
            leaf.Number, leaf.Label = number, f"Leaf {number}"
        core_bundle(bundle)  # refuses what the numbers may not be
        self.doc.recompute()
        return bundle


def _close(document: str) -> None:
    if document in FreeCAD.listDocuments():
        FreeCAD.closeDocument(document)

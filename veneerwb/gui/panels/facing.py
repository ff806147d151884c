# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel that lays a leaf on flat faces of any objects, and moves it there."""

from __future__ import annotations

from typing import Any

from veneerwb.gui.chosen import chosen_first, of_kind
from veneerwb.gui.facing import selected_faces
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.findings import Findings, only
from veneerwb.gui.panels.live import LivePanel, start
from veneerwb.host.objects.base import Refused

HERE = "VeneerFacingPanel"


def new(doc: Any) -> None:
    """Opens the panel on a new facing of the faces selected now."""
    from veneerwb.host.objects import add_facing

    faces = selected_faces(doc.Name)
    leaf = chosen_first(of_kind(doc, "Leaf"))[0]
    step = translate(HERE, "Lay a leaf on faces")
    start(FacingPanel, doc, step, lambda: add_facing(doc, leaf, faces), fresh=True)


class FacingPanel(LivePanel):
    """Asks which leaf lies on which faces, and how; each change is seen at once."""

    names = ("Leaf", "Turned", "Grain", "Across", "Along")
    drawn, picture = "facing", "veneer-facing"

    def offer(self) -> None:
        there = {one.Name: one.Label for one in of_kind(self.doc, "Leaf")}
        fields.offer(self.form.Leaf, there, there.values())
        fields.offer(self.form.Turned, (False, True))
        self.form.take.clicked.connect(lambda: self.after(self._take))
        self.findings = Findings(self.form.findings, self._found, self._choose)
        self._list()

    def wanted(self, name: str, shown: Any) -> Any:
        return self.doc.getObject(shown or "") if name == "Leaf" else shown

    def _take(self) -> None:
        from veneerwb.host.objects import set_faces

        faces = selected_faces(self.doc.Name)
        if not faces:
            raise Refused(translate(
                HERE, "Select one or more flat faces in the 3-D view, then press this again."
            ))  # fmt: skip
        set_faces(self.obj, faces)
        self._list()

    def _list(self) -> None:
        self.form.faces.clear()
        for one, parts in self.obj.Faces:
            self.form.faces.addItems([f"{one.Label}, {part}" for part in parts])

    def tell(self) -> None:
        super().tell()
        self.findings.tell()

    def _found(self) -> list[Any]:
        from veneerwb.host.objects import faced

        return [] if self.obj.Message else faced(self.obj).findings

    def _choose(self, numbers: list[int], leaves: list[int]) -> None:
        only(self.doc, [(self.obj.Name, f"Face{number}") for number in numbers])

    def let_go(self) -> None:
        self.findings = None
        super().let_go()

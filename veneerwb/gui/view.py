# SPDX-License-Identifier: LGPL-2.1-or-later
"""How document objects look in the 3-D view and the tree. Documents hold these names."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import FreeCAD

from veneerwb.gui.later import later
from veneerwb.gui.pictured import PICTURES, Pictured
from veneerwb.gui.told import opens
from veneerwb.host import compat, settings
from veneerwb.host.objects.base import Property, kind_of

BELOW = ("Spot", "Closing")
"""What hangs below a match."""
SWITCHES = {one.name: one for one in (
    Property("Bool", "Seams", PICTURES, "Whether the seams are drawn on the pictures", True),
    Property(
        "Bool", "Numbers", PICTURES,
        "Whether positions and leaves are written on the pictures, underlined for a turned leaf",
        True,
    ),
)}  # fmt: skip


def register() -> None:
    """From now on matches are shown with their leaves' pictures, in documents that are open too."""
    import FreeCADGui

    from veneerwb.gui.buildup import BuildUpView, PartsView
    from veneerwb.gui.facing import FacingView
    from veneerwb.gui.items import ICONS, ItemView
    from veneerwb.gui.run import RunView
    from veneerwb.gui.saving import in_danger

    compat.viewers.update(Match=MatchView, Facing=FacingView, Run=RunView)
    compat.viewers.update(BuildUp=BuildUpView, Parts=PartsView)
    compat.viewers.update(dict.fromkeys(ICONS, ItemView))
    if not _watching:
        _watching.append(Chosen())
        FreeCADGui.Selection.addObserver(_watching[0])
        _watching.append(Kept())
        FreeCAD.addDocumentObserver(_watching[1])
        compat.alarms.append(in_danger)


_watching: list[Any] = []


class Kept:
    """The tree asks a match what hangs below it when the match changes, not when that does: so it
    is told of a change."""

    def slotChangedObject(self, obj: Any, name: str) -> None:
        if name == "Match" and kind_of(obj) in BELOW and not obj.Document.Restoring:
            self._tell(obj.Match)

    def slotDeletedObject(self, obj: Any) -> None:
        """Later, when it has gone: else the tree would not see a change when undo brings it back.
        """
        if kind_of(obj) in BELOW:
            self.slotUndoDocument(obj.Document)

    def slotUndoDocument(self, doc: Any) -> None:
        """Later, for what is undone comes back before the tree knows of it."""
        later(lambda name=doc.Name: self._tell_all(name))

    slotRedoDocument = slotUndoDocument

    def _tell_all(self, name: str) -> None:
        doc = FreeCAD.listDocuments().get(name)
        for obj in doc.findObjects("Part::FeaturePython") if doc is not None else ():
            if kind_of(obj) == "Match":
                self._tell(obj)
            elif kind_of(obj) == "Run":  # its faces may have come back after it
                compat.redraw(obj)

    @staticmethod
    def _tell(match: Any) -> None:
        """By an output, which touches nothing."""
        if match is not None and "ChangedPieces" in match.PropertiesList:
            match.ChangedPieces = match.ChangedPieces


class Chosen:
    """Outlines the selected pieces: the host marks nothing in a display mode of our own."""

    def addSelection(self, document: str, name: str, part: str, point: Any) -> None:
        self._mark(document, name)

    def removeSelection(self, document: str, name: str, part: str) -> None:
        self._mark(document, name)

    def setSelection(self, document: str) -> None:
        self._mark_all()

    def clearSelection(self, document: str) -> None:
        self._mark_all()

    def _mark_all(self) -> None:
        for document in FreeCAD.listDocuments():
            self._mark(document)

    def _mark(self, document: str, name: str = "") -> None:
        """Marks what shows leaves in a document (or the one of that name) as it is selected now."""
        import FreeCADGui

        if document not in FreeCAD.listDocuments():
            return
        chosen = {
            one.Object.Name: one.SubElementNames
            for one in FreeCADGui.Selection.getSelectionEx(document)
        }
        for obj in FreeCAD.getDocument(document).findObjects("Part::FeaturePython"):
            proxy = getattr(obj.ViewObject, "Proxy", None)
            if kind_of(obj) and hasattr(proxy, "mark") and name in ("", obj.Name):
                proxy.mark(obj, chosen.get(obj.Name))


def positions_of(obj: Any, parts: Sequence[str]) -> set[int]:
    """The positions of the pieces that parts of a match's shape ("Face12") belong to."""
    found, faces = set(), 0
    numbers = {int(part[4:]) for part in parts if part.startswith("Face")}
    for position, solid in enumerate(obj.Shape.Solids, start=1):
        below, faces = faces, faces + len(solid.Faces)
        if any(below < number <= faces for number in numbers):
            found.add(position)
    return found


def show_face(obj: Any, position: int) -> str:
    """The host's name of the show face at a position, the last face of its solid: "Face5"."""
    return f"Face{sum(len(solid.Faces) for solid in obj.Shape.Solids[:position])}"


def add_switches(view: Any) -> None:
    """Gives a view the properties that say what is drawn on its pictures."""
    for switch in SWITCHES.values():
        if compat.add_property(view, *switch[:4]):
            setattr(view, switch.name, switch.value)


class MatchView(Pictured):
    """Shows a Match as its leaves' pictures, beside the host's own display modes."""

    icon = "veneer-layup"
    kind = "Match"

    def __init__(self, view: Any) -> None:
        self.ensure_properties(view)
        super().__init__(view)

    def ensure_properties(self, view: Any) -> None:
        add_switches(view)

    def attach(self, view: Any) -> None:
        self.ensure_properties(view)
        super().attach(view)

    def start(self) -> None:
        self.laid = self.drawn_from = None

    def claimChildren(self) -> list[Any]:
        """The spots that are kept of it, and the closing of its ring."""
        from veneerwb.host.objects.closing import closings_of
        from veneerwb.host.objects.spot import kept

        return [*kept(self.obj), *closings_of(self.obj)]

    def onDelete(self, view: Any, parts: Any) -> bool:
        """A match takes what hangs below it and the panel round it with it, in the same undo
        step."""
        from veneerwb.host.objects.buildup import take_down

        take_down(view.Object)
        for one in self.claimChildren():
            one.Document.removeObject(one.Name)
        return True

    @opens
    def doubleClicked(self, view: Any) -> bool:
        """Opens the panel; true, so that the host does nothing of its own."""
        from veneerwb.gui.panels import live, match

        live.edit(match.MatchPanel, view.Object)
        return True

    def getElementPicked(self, point: Any) -> str:
        """The show face of the piece under the mouse, as the host names it: "Face5"."""
        from veneerwb.gui import scene

        position = scene.position_picked(point.getPath())
        return show_face(self.obj, position) if position else ""

    def onChanged(self, view: Any, name: str) -> None:
        super().onChanged(view, name)
        if name in SWITCHES:
            self.draw(view.Object)

    def _draw(self, obj: Any) -> None:
        """Builds the scene anew if anything that it shows has changed. A match that cannot be laid
        keeps its last pictures, or is shown in one colour if it never had any."""
        if "PieceMarks" not in obj.PropertiesList:
            return
        if getattr(obj.Proxy, "busy", False):
            return
        switches = [bool(getattr(obj.ViewObject, name, True)) for name in SWITCHES]
        mark = (tuple(obj.PieceMarks), obj.ShapeMark, obj.Revision, *switches, settings.in_view())
        if mark == self.drawn_from or not obj.PieceMarks:
            return
        if obj.Message:  # refused: what could be laid now is not what was drawn and listed
            self._draw_plainly(obj, obj.Message)
            return
        try:
            from veneerwb.gui import scene
            from veneerwb.host.objects import layout

            laid = layout(obj)
            nodes = scene.drawn(laid, float(laid.bundle.thickness), *switches)
        except Exception as error:  # among them what a file edited by hand holds until it is mended
            self._draw_plainly(obj, self.why(obj, error))
            return
        self._show(nodes)
        # Undo brings properties back one by one: what is drawn half-way is drawn again at the next.
        self.laid, self.drawn_from = laid, mark if laid.revision == obj.Revision else None

    def _draw_plainly(self, obj: Any, why: str) -> None:
        if self.laid is None:
            self._show_plainly(obj, why)

    def mark(self, obj: Any, parts: Sequence[str] | None) -> None:
        """Outlines the pieces that `parts` belong to, all for an empty list, none for None."""
        from veneerwb.gui import scene

        self.marks.removeAllChildren()
        if self.laid is None or parts is None:
            return
        positions = positions_of(obj, parts)
        pieces = [p for p in self.laid.pieces if not parts or p.position in positions]
        self.marks.addChild(scene.outlined(pieces, float(self.laid.bundle.thickness)))

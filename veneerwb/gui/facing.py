# SPDX-License-Identifier: LGPL-2.1-or-later
"""How a leaf on faces looks in the 3-D view, and which faces are chosen there. Documents hold the
name of the view provider."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from veneerwb.gui.pictured import Pictured
from veneerwb.gui.told import opens


class FacingView(Pictured):
    """Shows a Facing as its leaf's picture, beside the host's own display modes."""

    icon = "veneer-facing"
    kind = "Facing"

    def start(self) -> None:
        self.faced = self.shape = None
        self.revision = ""

    @opens
    def doubleClicked(self, view: Any) -> bool:
        """Opens the panel; true, so that the host does nothing of its own."""
        from veneerwb.gui.panels import facing, live

        live.edit(facing.FacingPanel, view.Object)
        return True

    def getElementPicked(self, point: Any) -> str:
        """The face under the mouse, as the host names it: "Face2"."""
        from veneerwb.gui import facing_scene

        number = facing_scene.number_picked(point.getPath())
        return f"Face{number}" if number else ""

    def _draw(self, obj: Any) -> None:
        """Builds the scene anew if anything that it shows has changed. What is not as it was last
        recomputed (half undone, or refused) keeps its last picture, or one colour if it had none.
        """
        if not getattr(obj, "Revision", ""):
            return
        shape = obj.Shape
        if obj.Revision == self.revision and shape.isSame(self.shape):
            return
        try:
            from veneerwb.gui import facing_scene
            from veneerwb.host.objects import faced, facing

            found = faced(obj)
            if facing.revision(found) != obj.Revision:
                self._draw_plainly(obj, obj.Message)
                return
            nodes = facing_scene.drawn(obj, found)
        except Exception as error:
            self._draw_plainly(obj, self.why(obj, error))
            return
        self._show(nodes)
        self.faced, self.shape, self.revision = found, shape, obj.Revision

    def _draw_plainly(self, obj: Any, why: str) -> None:
        if self.faced is None:
            self._show_plainly(obj, why)

    def mark(self, obj: Any, parts: Sequence[str] | None) -> None:
        """Outlines the faces named by `parts`, all for an empty list, none for None."""
        self.marks.removeAllChildren()
        if self.faced is None or parts is None:
            return
        from veneerwb.gui import facing_scene

        numbers = {int(part[4:]) for part in parts if part.startswith("Face")}
        if numbers or not parts:
            self.marks.addChild(facing_scene.outlined(obj, self.faced, numbers))


# --- what is chosen ----------------------------------------------------------------------------


def selected_faces(document: str = "") -> list[tuple[Any, str]]:
    """The faces that are selected in a document ("": the active one), in the order of selection, as
    add_facing takes them: the body or the outermost link that a face belongs to, and its name
    there. A face of a Facing or a Run stands for the face under it."""
    import FreeCADGui

    found = []
    for one in FreeCADGui.Selection.getSelectionEx(document, 0):
        for name in one.SubElementNames:
            link = _resolved(one.Object, name)
            if link is not None and link not in found:
                found.append(link)
    return found


def _resolved(top: Any, path: str) -> tuple[Any, str] | None:
    from veneerwb.host import faces
    from veneerwb.host.objects.base import kind_of

    *_, element = path.split(".")
    if not element.startswith("Face"):
        return None
    owners = top.getSubObjectList(path) or [top]
    steps = path.split(".")[:-1]
    for k, owner in enumerate(owners):
        if owner.TypeId.startswith("App::Link"):
            return owner, ".".join([*steps[k:], element])
        if owner.TypeId == "PartDesign::Body":
            return owner, element
    if kind_of(owners[-1]) == "Run":
        return _under(owners[-1], element)
    if kind_of(owners[-1]) == "Facing":
        links = faces.chosen(owners[-1].Faces)
        number = int(element[4:])
        return links[number - 1] if number <= len(links) else None
    return owners[-1], element


def _under(run: Any, element: str) -> tuple[Any, str] | None:
    """The face under a piece of a Run."""
    from veneerwb.gui.view import positions_of
    from veneerwb.host.objects.run import last_run

    solids = positions_of(run, [element])
    return last_run(run).source_of(min(solids)) if solids else None

# SPDX-License-Identifier: LGPL-2.1-or-later
"""How a build-up and the parts of a panel look in the 3-D view and the tree. Documents hold these
names."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import FreeCAD

from veneerwb.gui import tree_icon
from veneerwb.gui.items import ItemView
from veneerwb.gui.later import later
from veneerwb.gui.told import opens
from veneerwb.host import compat
from veneerwb.host.objects.base import kind_of

ICON = "veneer-buildup"
COLOURS = {
    "backer": (0.74, 0.52, 0.33),
    "crossband below": (0.96, 0.90, 0.78),
    "core": (0.88, 0.82, 0.70),
    "lipping": (0.66, 0.42, 0.24),
    "crossband above": (0.96, 0.90, 0.78),
    "border": (0.48, 0.29, 0.16),
    "stringing line": (1.00, 0.97, 0.88),
    "inlay": (0.95, 0.72, 0.32),
}
"""By what a part is, to tell parts from one another; no wood is meant."""


def _open(match: Any) -> None:
    from veneerwb.gui.panels import buildup

    buildup.look(match)


class BuildUpView(ItemView):
    """A BuildUp in the tree; a double click opens its panel."""

    def getIcon(self) -> str:
        return tree_icon(ICON)

    @opens
    def doubleClicked(self, view: Any) -> bool:
        from veneerwb.host.objects.buildup import matches_of

        for match in matches_of(view.Object)[:1]:
            _open(match)
        return True

    def onDelete(self, view: Any, parts: Any) -> bool:
        """A build-up takes the parts that are made by it along, in the same undo step."""
        from veneerwb.host.objects.buildup import matches_of, parts_of

        for match in matches_of(view.Object):
            one = parts_of(match)
            if one is not None:
                one.Document.removeObject(one.Name)
        return True


class PartsView:
    """The parts of a panel as the host shows shapes, each kind in a colour of its own."""

    def __init__(self, view: Any) -> None:
        self.obj = view.Object  # a host that had another proxy here does not attach again
        view.Proxy = self
        view.LineWidth = 1.0  # or a stringing line would be hidden by its own edges
        self.attach(view)

    def attach(self, view: Any) -> None:
        compat.keep_meshable(view)
        self.obj = view.Object
        self._colour_soon()

    def onChanged(self, view: Any, name: str) -> None:
        if name in compat.MESHED:
            compat.keep_meshable(view)

    def getIcon(self) -> str:
        return tree_icon(ICON)

    def claimChildren(self) -> list[Any]:
        """The match that shows on it, and what it is built of."""
        match = getattr(self.obj, "Match", None)
        return [one for one in (match, getattr(match, "BuildUp", None)) if one is not None]

    @opens
    def doubleClicked(self, view: Any) -> bool:
        """Opens the panel; true, so that the host does nothing of its own."""
        if kind_of(view.Object.Match) == "Match":
            _open(view.Object.Match)
        return True

    def onDelete(self, view: Any, parts: Any) -> bool:
        """The parts take the build-up with them, in the same undo step: else the match would stay
        laid within a border that is no more."""
        from veneerwb.host.objects.buildup import part_from

        if kind_of(view.Object.Match) == "Match":
            part_from(view.Object.Match)
        return True

    def updateData(self, obj: Any, name: str) -> None:
        if name in ("Shape", "Items"):
            self._colour_soon()

    def mark(self, obj: Any, parts: Sequence[str] | None) -> None:
        """What is selected the host marks by itself."""

    def _colour_soon(self) -> None:
        """Later, for the host has not drawn the new faces yet, and would forget their colours."""
        document, name = self.obj.Document.Name, self.obj.Name
        later(lambda: self._colour(document, name))

    def _colour(self, document: str, name: str) -> None:
        """While a change is under way solids and their kinds may not fit together yet."""
        doc = FreeCAD.listDocuments().get(document)
        obj = doc.getObject(name) if doc is not None else None
        if obj is None or "Items" not in obj.PropertiesList or obj.Shape.isNull():
            return
        solids, items = obj.Shape.Solids, obj.Items
        if len(solids) != len(items):
            return
        colours = [COLOURS.get(item, COLOURS["core"]) for item in items]
        faces = [rgb for rgb, solid in zip(colours, solids) for _ in solid.Faces]
        compat.colour_faces(obj.ViewObject, faces)

    def dumps(self) -> None:
        return None

    def loads(self, state: Any) -> None:
        """Nothing to take back."""

    __getstate__ = dumps  # what 0.20 calls them
    __setstate__ = loads

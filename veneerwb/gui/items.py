# SPDX-License-Identifier: LGPL-2.1-or-later
"""How the objects without a shape look in the tree. Documents hold the name of the class."""

from __future__ import annotations

from typing import Any

from veneerwb.gui import tree_icon
from veneerwb.host.objects.base import kind_of

ICONS = {
    "Leaf": "veneer-leaf",
    "Bundle": "veneer-bundle",
    "Stock": "veneer-stock",
    "Drawing": "veneer-drawing",
    "Spot": "veneer-kept",
}


class ItemView:
    """An icon for each kind; what belongs to an object hangs below it; a double click opens what
    there is to open."""

    def __init__(self, view: Any) -> None:
        self.obj = view.Object  # a host that had another proxy here does not attach again
        view.Proxy = self

    def attach(self, view: Any) -> None:
        self.obj = view.Object

    def getIcon(self) -> str:
        return tree_icon(ICONS.get(kind_of(self.obj), "veneer-layup"))

    def isShow(self) -> bool:
        """Always, so that the tree does not grey what has nothing to hide."""
        return True

    def claimChildren(self) -> list[Any]:
        kind = kind_of(self.obj)
        if kind == "Bundle":
            return list(self.obj.Leaves)
        if kind == "Drawing":
            from veneerwb.host.objects.drawing import page_of

            page = page_of(self.obj)
            return [page] if page is not None else []
        return []

    def doubleClicked(self, view: Any) -> bool:
        """Opens a drawing's panel, or a bundle's, or goes to a kept spot; true, so that the host
        does nothing of its own."""
        if kind_of(view.Object) == "Spot":
            from veneerwb.gui.spot_tabs import take_up

            take_up(view.Object)
            return True
        from veneerwb.gui.panels import drawing, live, particulars

        panels = {"Drawing": drawing.DrawingPanel, "Bundle": particulars.ParticularsPanel}
        panel = panels.get(kind_of(view.Object))
        if panel is not None:
            live.edit(panel, view.Object)
        return panel is not None

    def onDelete(self, view: Any, parts: Any) -> bool:
        """A drawing takes its page with it, in the same undo step."""
        if kind_of(view.Object) == "Drawing":
            from veneerwb.host import sheets

            sheets.remove_page(view.Object)
        return True

    def dumps(self) -> None:
        return None

    def loads(self, state: Any) -> None:
        """Nothing to take back."""

    __getstate__ = dumps  # what 0.20 calls them
    __setstate__ = loads

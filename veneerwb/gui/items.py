# SPDX-License-Identifier: LGPL-2.1-or-later
"""How the objects without a shape look in the tree. Documents hold the name of the class."""

from __future__ import annotations

from typing import Any

from veneerwb.gui import tree_icon
from veneerwb.gui.told import opens
from veneerwb.host.objects.base import kind_of

ICONS = {
    "Leaf": "veneer-leaf",
    "Bundle": "veneer-bundle",
    "Stock": "veneer-stock",
    "Drawing": "veneer-drawing",
    "Bench": "veneer-bench",
    "Spot": "veneer-kept",
    "Closing": "veneer-closing",
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
        if kind == "Bench":
            from veneerwb.host import shop_pages

            return list(shop_pages.pages_of(self.obj).values())
        return []

    @opens
    def doubleClicked(self, view: Any) -> bool:
        """Opens the panel of a drawing, a bench or a bundle, or goes to a kept spot; true, so that
        the host does nothing of its own."""
        if kind_of(view.Object) == "Spot":
            from veneerwb.gui.spot.tabs import take_up

            take_up(view.Object)
            return True
        from veneerwb.gui.panels import bench, closing, drawing, live, particulars

        panels = {
            "Drawing": drawing.DrawingPanel,
            "Bench": bench.BenchPanel,
            "Closing": closing.ClosingPanel,
            "Bundle": particulars.ParticularsPanel,
        }
        panel = panels.get(kind_of(view.Object))
        if panel is not None:
            live.edit(panel, view.Object)
        return panel is not None

    def onDelete(self, view: Any, parts: Any) -> bool:
        """A drawing or a bench takes its pages with it, in the same undo step."""
        from veneerwb.host import sheets, shop_pages

        if kind_of(view.Object) == "Drawing":
            sheets.remove_page(view.Object)
        elif kind_of(view.Object) == "Bench":
            shop_pages.remove_pages(view.Object)
        return True

    def dumps(self) -> None:
        return None

    def loads(self, state: Any) -> None:
        """Nothing to take back."""

    __getstate__ = dumps  # what 0.20 calls them
    __setstate__ = loads

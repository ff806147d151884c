# SPDX-License-Identifier: LGPL-2.1-or-later
"""How document objects look in the 3-D view and the tree. Documents hold these names."""

from __future__ import annotations

from typing import Any

from veneerwb.host import compat

PICTURES = "Leaf pictures"
SWITCHES = {
    "Seams": "Whether the seams are drawn on the pictures",
    "Numbers": "Whether the positions are written on the pictures, underlined for a turned leaf",
}


def register() -> None:
    """From now on matches are shown with their leaves' pictures, in documents that are open too."""
    compat.viewers["Match"] = MatchView


class MatchView:
    """Shows a Match as its leaves' pictures, beside the host's own display modes."""

    def __init__(self, view: Any) -> None:
        view.Proxy = self
        self.ensure_properties(view)
        view.DisplayMode = PICTURES

    def ensure_properties(self, view: Any) -> None:
        for name, text in SWITCHES.items():
            if compat.add_property(view, "Bool", name, PICTURES, text):
                setattr(view, name, True)

    def attach(self, view: Any) -> None:
        from pivy import coin

        self.ensure_properties(view)
        self.root = coin.SoGroup()
        self.obj = view.Object
        self.drawn_from = None
        view.addDisplayMode(self.root, PICTURES)
        self._draw(view.Object)

    def getDisplayModes(self, view: Any) -> list[str]:
        return [PICTURES]

    def getDefaultDisplayMode(self) -> str:
        return PICTURES

    def setDisplayMode(self, mode: str) -> str:
        return mode

    def getIcon(self) -> str:
        import os

        import veneerwb

        root = os.path.dirname(os.path.dirname(veneerwb.__file__))
        return os.path.join(root, "resources", "icons", "veneer-layup.svg")

    def getElementPicked(self, point: Any) -> str:
        """The show face of the piece under the mouse, as the host names it: "Face5"."""
        from veneerwb.gui import scene

        position = scene.position_picked(point.getPath())
        solids = self.obj.Shape.Solids[:position]
        return f"Face{sum(len(solid.Faces) for solid in solids)}" if solids else ""

    def updateData(self, obj: Any, name: str) -> None:
        if name in ("Shape", "PieceMarks", "Bundle"):
            self._draw(obj)

    def onChanged(self, view: Any, name: str) -> None:
        if name in SWITCHES:
            self._draw(view.Object)

    def _draw(self, obj: Any) -> None:
        """Builds the scene anew if anything that it shows has changed; an empty one where the match
        cannot be laid (its Message says why)."""
        if not hasattr(self, "root") or "PieceMarks" not in obj.PropertiesList:
            return
        switches = [bool(getattr(obj.ViewObject, name, True)) for name in SWITCHES]
        mark = (tuple(obj.PieceMarks), obj.ShapeMark, *switches)
        if mark == self.drawn_from or not obj.PieceMarks:
            return
        from veneerwb.core import VeneerError
        from veneerwb.gui import scene
        from veneerwb.host.objects import layout

        try:
            laid = layout(obj)
            nodes = scene.drawn(laid, float(laid.bundle.thickness), *switches)
        except (VeneerError, ImportError) as error:
            compat.say(f"{obj.Label}: {error}")
            return
        self.root.removeAllChildren()
        self.root.addChild(nodes)
        self.drawn_from = mark

    def dumps(self) -> None:
        return None

    def loads(self, state: Any) -> None:
        return None

    __getstate__ = dumps  # what 0.20 calls them
    __setstate__ = loads

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the view providers share that show leaves: a display mode of our own beside the host's."""

from __future__ import annotations

from typing import Any, ClassVar

from PySide import QtCore

from veneerwb.gui import tree_icon
from veneerwb.host import compat
from veneerwb.host.objects.base import Refused, kind_of
from veneerwb.words import say

PICTURES = QtCore.QT_TRANSLATE_NOOP("App::Property", "Leaf pictures")


class Pictured:
    """The base of view providers whose scene is made by `_draw`; it is called at every change and
    returns at once while nothing that it shows has changed."""

    icon: ClassVar[str] = ""
    kind: ClassVar[str] = ""
    """Of the objects that it draws; a document edited by hand may show others by it."""

    def __init__(self, view: Any) -> None:
        view.Proxy = self
        if not hasattr(self, "root"):  # a host that had another proxy here does not attach again
            self.attach(view)
        if PICTURES not in view.getEnumerationsOfProperty("DisplayMode"):  # nor ask for the modes
            view.DisplayMode = view.listDisplayModes()
        view.DisplayMode = PICTURES

    def attach(self, view: Any) -> None:
        from pivy import coin

        compat.keep_meshable(view)
        self.root, self.pictures, self.marks = (coin.SoGroup() for _ in range(3))
        self.root.addChild(self.pictures)
        self.root.addChild(self.marks)
        self.said = ""
        self.obj = view.Object
        self.start()
        view.addDisplayMode(self.root, PICTURES)
        self.draw(view.Object)

    def start(self) -> None:
        """Nothing has been drawn yet."""

    def getDisplayModes(self, view: Any) -> list[str]:
        return [PICTURES]

    def getDefaultDisplayMode(self) -> str:
        return PICTURES

    def setDisplayMode(self, mode: str) -> str:
        return mode

    def getIcon(self) -> str:
        return tree_icon(self.icon)

    def onChanged(self, view: Any, name: str) -> None:
        if name in compat.MESHED:
            compat.keep_meshable(view)

    def updateData(self, obj: Any, name: str) -> None:
        self.draw(obj)

    def draw(self, obj: Any) -> None:
        """Shows what there is to show by now."""
        if hasattr(self, "root") and kind_of(obj) == self.kind:
            self._draw(obj)

    def _draw(self, obj: Any) -> None:
        """Builds the scene anew if anything that it shows has changed."""

    def _show(self, nodes: Any) -> None:
        self.marks.removeAllChildren()
        self.pictures.removeAllChildren()
        self.pictures.addChild(nodes)

    def why(self, obj: Any, error: Exception) -> str:
        """What to say of an error; nothing of one that nobody foresaw while the document is being
        opened, for what a file edited by hand holds is mended after its views are made."""
        from veneerwb.gui.panels import fields

        foreseen = hasattr(error, "template") or isinstance(error, (Refused, ImportError))
        return fields.told(error) if foreseen or not obj.Document.Restoring else ""

    def _show_plainly(self, obj: Any, why: str) -> None:
        """In one colour, and says why once; for what never had a picture."""
        from veneerwb.gui import plain

        if obj.Shape.isNull():
            return
        if why and why != self.said:
            self.said = why
            compat.say(say("{name} is shown without pictures: {why}", name=obj.Label, why=why))
        self.pictures.removeAllChildren()
        self.pictures.addChild(plain.drawn(obj.Shape))

    def dumps(self) -> None:
        return None

    def loads(self, state: Any) -> None:
        """Nothing to take back."""

    __getstate__ = dumps  # what 0.20 calls them
    __setstate__ = loads

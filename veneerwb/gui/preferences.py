# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages among the host's preferences. The host itself fills their boxes and keeps what they
say, by the names on the forms; `host.settings` reads it."""

from __future__ import annotations

import os
from typing import Any

import FreeCAD
from PySide import QtCore

from veneerwb.gui.later import later
from veneerwb.host import compat, settings

PAGES = ("preferences", "preferences_colours")
GROUP = QtCore.QT_TRANSLATE_NOOP("QObject", "Veneer Layup")
"""The host asks for its icon by this name: preferences-veneer_layup.svg."""


def add_pages() -> None:
    """Tells the host where the pages are, which it reads when its preferences are first opened."""
    import FreeCADGui

    from veneerwb.gui import resources

    for page in PAGES:
        FreeCADGui.addPreferencePage(os.path.join(resources("ui"), f"{page}.ui"), GROUP)


def follow_colours() -> None:
    """From now on what is shown follows the colours."""
    if not _watching:
        _watching.append((FreeCAD.ParamGet(settings.PATH), Colours()))
        _watching[0][0].Attach(_watching[0][1])


_watching: list[Any] = []


class Colours:
    """Has what is open drawn anew, once for all colours that are changed together."""

    waiting = False

    def onChange(self, group: Any, name: Any) -> None:
        """The host's; of a setting that is not a colour nothing follows."""
        if name in settings.COLOURS and not self.waiting:
            self.waiting = True
            later(self._draw)

    def _draw(self) -> None:
        from veneerwb.gui.canvas import Canvas
        from veneerwb.host.objects.base import kind_of

        self.waiting = False
        for canvas in list(Canvas.there):
            canvas.refresh()
        for doc in FreeCAD.listDocuments().values():
            for obj in doc.findObjects("Part::FeaturePython"):
                if kind_of(obj) in ("Match", "Run"):
                    compat.redraw(obj)

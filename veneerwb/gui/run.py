# SPDX-License-Identifier: LGPL-2.1-or-later
"""How a run of panels looks in the 3-D view. Documents hold the name of the view provider."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from veneerwb.gui.pictured import Pictured
from veneerwb.gui.told import opens
from veneerwb.gui.view import SWITCHES, add_switches, positions_of, show_face
from veneerwb.host import settings


class RunView(Pictured):
    """Shows a Run as its leaves' pictures on the panels, beside the host's own display modes."""

    icon = "veneer-run"
    kind = "Run"

    def __init__(self, view: Any) -> None:
        add_switches(view)
        super().__init__(view)

    def attach(self, view: Any) -> None:
        add_switches(view)
        super().attach(view)

    def start(self) -> None:
        self.run = self.drawn_from = None

    @opens
    def doubleClicked(self, view: Any) -> bool:
        """Opens the panel; true, so that the host does nothing of its own."""
        from veneerwb.gui.panels import live, run

        live.edit(run.RunPanel, view.Object)
        return True

    def getElementPicked(self, point: Any) -> str:
        """The show face of the piece under the mouse, as the host names it: "Face5"."""
        from veneerwb.gui import run_scene

        number, position = run_scene.picked(point.getPath())
        if not position or self.run is None:
            return ""
        return show_face(self.obj, self.run.solids_of(number)[position - 1])

    def onChanged(self, view: Any, name: str) -> None:
        super().onChanged(view, name)
        if name in SWITCHES:
            self.draw(view.Object)

    def _draw(self, obj: Any) -> None:
        """Builds the scene anew if anything that it shows has changed. What is not as it was last
        recomputed (half undone, or refused) keeps its last picture, or one colour if it had none.
        """
        if getattr(obj.Proxy, "busy", False):
            return
        switches = [bool(getattr(obj.ViewObject, name, True)) for name in SWITCHES]
        revision = getattr(obj, "Revision", "")
        mark = (revision, getattr(obj, "ShapeMark", ""), *switches, settings.in_view())
        if mark == self.drawn_from or not revision:
            return
        if obj.Message:
            self._draw_plainly(obj, obj.Message)
            return
        try:
            from veneerwb.gui import run_scene
            from veneerwb.host.objects.run import last_run

            found = last_run(obj)
            if found.revision != revision:
                self._draw_plainly(obj, "")
                return
            nodes = run_scene.drawn(obj, found, *switches)
        except Exception as error:
            self._draw_plainly(obj, self.why(obj, error))
            return
        self._show(nodes)
        self.run, self.drawn_from = found, mark

    def _draw_plainly(self, obj: Any, why: str) -> None:
        if self.run is None:
            self._show_plainly(obj, why)

    def mark(self, obj: Any, parts: Sequence[str] | None) -> None:
        """Outlines the pieces that `parts` belong to, all for an empty list, none for None."""
        self.marks.removeAllChildren()
        if self.run is None or parts is None:
            return
        from veneerwb.gui import run_scene

        solids = positions_of(obj, parts)
        if solids or not parts:
            self.marks.addChild(run_scene.outlined(obj, self.run, solids))

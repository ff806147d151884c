# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a drawing: what its sheet says beside the match itself."""

from __future__ import annotations

from typing import Any

from veneerwb.gui.ahead import read_ahead
from veneerwb.gui.chosen import of_kind
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.live import LivePanel, start

HERE = "VeneerDrawingPanel"


def new(doc: Any, match: Any) -> None:
    """Opens the panel on a new drawing of a Match, and its page."""
    from veneerwb.host.objects import add_drawing, layout

    step = translate(HERE, "New drawing")
    read_ahead(step, lambda: layout(match))
    panel = start(DrawingPanel, doc, step, lambda: add_drawing(doc, match), fresh=True)
    if panel is not None:
        panel.open_page()


class DrawingPanel(LivePanel):
    """Asks what is drawn and for the words of the title block."""

    names = ("Match", "Title", "DrawnBy", "Base")
    drawn, picture = "drawing", "veneer-drawing"

    def offer(self) -> None:
        there = {one.Name: one.Label for one in of_kind(self.doc, "Match")}
        fields.offer(self.form.Match, there, there.values())

    def wanted(self, name: str, shown: Any) -> Any:
        return self.doc.getObject(shown or "") if name == "Match" else shown

    def open_page(self) -> None:
        """Shows the page in a window of its own."""
        from veneerwb.gui import drawing
        from veneerwb.host.objects.drawing import page_of

        page = page_of(self.obj)
        if page is not None:
            drawing.open_page(page)

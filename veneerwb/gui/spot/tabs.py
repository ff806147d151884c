# SPDX-License-Identifier: LGPL-2.1-or-later
"""The tabs below the leaf: Nearby, Found, Kept, What This Bundle Makes."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCAD
import FreeCADGui

from veneerwb.gui.later import later
from veneerwb.gui.panels import base
from veneerwb.gui.spot.found import FoundTab
from veneerwb.gui.spot.kept import KeptTab
from veneerwb.gui.spot.makes import MakesTab
from veneerwb.gui.spot.nearby import NearbyTab

translate = FreeCAD.Qt.translate
HERE = "VeneerSpotTabs"


class Tabs:
    """The tabs of one window, which go when it does."""

    def __init__(self, state: Any, show: Callable[[], None]) -> None:
        """`show` has leaf and top seen."""
        self.nearby, self.kept, self.makes = NearbyTab(state), KeptTab(state), MakesTab(state)
        self.found = FoundTab(state, self.kept.keep)
        self.kept.went, self.found.hand.took = show, lambda k: show()

    @property
    def all(self) -> dict[str, Any]:
        """By their titles, from left to right."""
        return {
            translate(HERE, "Nearby"): self.nearby,
            translate(HERE, "Found"): self.found,
            translate(HERE, "Kept"): self.kept,
            translate(HERE, "What This Bundle Makes"): self.makes,
        }

    def arrange(self, tall: bool) -> None:
        """Lays the tabs out for a place that is high, or for one that is low and wide."""
        for tab in (self.nearby, self.found):
            tab.arrange(tall)

    def let_go(self) -> None:
        for tab in self.all.values():
            tab.let_go()


def add(window: Any) -> Tabs:
    """Adds the tabs to a SpotWindow."""
    tabs = Tabs(window.state, window.show_pictures)
    for title, tab in tabs.all.items():
        window.add_tab(title, tab.form)
    window.when_closed(tabs.let_go)
    return tabs


def take_up(obj: Any) -> None:
    """Goes to a kept spot in the panel of its match, which is opened unless it is, once the host
    has done with the double click."""
    document, name = obj.Document.Name, obj.Name
    later(lambda: _take_up(document, name))


def _take_up(document: str, name: str) -> None:
    from veneerwb.gui.panels import spot

    doc = FreeCAD.listDocuments().get(document)
    obj = doc.getObject(name) if doc is not None else None
    if obj is None or obj.Match is None:
        return
    panel = next((one for one in base.shown() if isinstance(one, spot.SpotPanel)), None)
    if panel is None and not FreeCADGui.Control.activeDialog():
        panel = spot.choose([obj.Match])
    if panel is not None and panel.window is not None and panel.state.match == obj.Match:
        panel.window.added[0].kept.take_up(obj)

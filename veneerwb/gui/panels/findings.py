# SPDX-License-Identifier: LGPL-2.1-or-later
"""A list of what the checks find on a match; a click selects what a finding speaks of."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.host.objects.base import kind_of

LOOKS = {
    "stop": QtGui.QStyle.SP_MessageBoxCritical,
    "warn": QtGui.QStyle.SP_MessageBoxWarning,
    "note": QtGui.QStyle.SP_MessageBoxInformation,
}
WHAT = QtCore.Qt.UserRole


class Findings:
    """Fills a list widget with the findings on a match, the gravest first."""

    def __init__(self, widget: Any, match: Any) -> None:
        self.widget, self.match = widget, match
        widget.clicked.connect(self.choose)
        widget.activated.connect(self.choose)

    def tell(self) -> None:
        """Lists what is found now; nothing where the match refuses."""
        self.widget.clear()
        model = self.widget.model()  # Qt deletes items behind Python's back: none is named here
        for row, finding in enumerate(found_on(self.match)):
            self.widget.addItem(" ".join(filter(None, (finding.text, finding.remedy))))
            looks = self.widget.style().standardIcon(LOOKS[finding.level])
            what = [list(finding.pieces), list(finding.values.get("leaves", ()))]
            model.setData(model.index(row, 0), looks, QtCore.Qt.DecorationRole)
            model.setData(model.index(row, 0), what, WHAT)

    def choose(self, index: Any) -> None:
        """Selects the wedges that a finding speaks of, and its leaves where it names them."""
        select(self.match, *index.data(WHAT))


def found_on(match: Any) -> list[Any]:
    """The core's findings on a Match as it stands; none where there is none, or where it refuses.

    Raises VeneerError where the match has changed since and can no longer be laid.
    """
    from veneerwb.host import values
    from veneerwb.host.objects import layout

    if match is None or match.Message:
        return []
    return values.findings(match, layout(match))


def select(match: Any, positions: Iterable[int], leaves: Iterable[int] = ()) -> None:
    """Selects the show faces at `positions` and the Leaf objects of those numbers, and nothing
    else; the whole match where neither is given."""
    document = match.Document.Name
    chosen = [(match.Name, part) for part in show_faces(match, positions)]
    numbers = set(leaves)
    if kind_of(match.Bundle) == "Bundle":
        chosen += [(leaf.Name, "") for leaf in match.Bundle.Leaves if leaf.Number in numbers]
    FreeCADGui.Selection.clearSelection()
    for name, part in chosen or [(match.Name, "")]:
        FreeCADGui.Selection.addSelection(document, name, part)


def show_faces(match: Any, positions: Iterable[int]) -> list[str]:
    """The host's names of the show faces at `positions`: the last face of each solid."""
    counts = [len(solid.Faces) for solid in match.Shape.Solids]
    return [f"Face{sum(counts[:position])}" for position in positions if position <= len(counts)]

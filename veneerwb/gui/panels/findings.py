# SPDX-License-Identifier: LGPL-2.1-or-later
"""A list of what the checks find; a click selects what a finding speaks of."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any

import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.gui.panels import fields
from veneerwb.gui.view import show_face
from veneerwb.host.objects.base import kind_of

LOOKS = {
    "stop": QtGui.QStyle.SP_MessageBoxCritical,
    "warn": QtGui.QStyle.SP_MessageBoxWarning,
    "note": QtGui.QStyle.SP_MessageBoxInformation,
}
WHAT = QtCore.Qt.UserRole


class Findings:
    """Fills a list widget with findings, the gravest first."""

    def __init__(
        self, widget: Any, found: Callable[[], list[Any]], choose: Callable[..., None]
    ) -> None:
        """`found` gives the core's findings as they are now; `choose` takes the pieces that one
        speaks of and the numbers of the leaves that it names."""
        self.widget, self.found, self.choose = widget, found, choose
        widget.clicked.connect(self._chosen)
        widget.activated.connect(self._chosen)

    def tell(self) -> None:
        """Lists what is found now."""
        self.widget.clear()
        model = self.widget.model()  # Qt deletes items behind Python's back: none is named here
        for row, finding in enumerate(map(fields.in_units, self.found())):
            self.widget.addItem(" ".join(filter(None, (finding.text, finding.remedy))))
            looks = self.widget.style().standardIcon(LOOKS[finding.level])
            what = [list(finding.pieces), list(finding.values.get("leaves", ()))]
            model.setData(model.index(row, 0), looks, QtCore.Qt.DecorationRole)
            model.setData(model.index(row, 0), what, WHAT)

    def _chosen(self, index: Any) -> None:
        self.choose(*index.data(WHAT))


def found_on(match: Any) -> list[Any]:
    """The core's findings on a Match as it stands; none where there is none, or where it refuses.

    Raises VeneerError where the match has changed since and can no longer be laid.
    """
    from veneerwb.host import values
    from veneerwb.host.objects import layout

    if match is None or match.Message:
        return []
    found = getattr(match.Proxy, "found", ())
    if [str(finding) for finding in found] == match.Findings:
        return list(found)
    return values.findings(match, layout(match))


def select(match: Any, positions: Iterable[int], leaves: Iterable[int] = ()) -> None:
    """Selects the show faces at `positions` and the Leaf objects of those numbers, and nothing
    else; the whole match where neither is given."""
    if match is None:
        return
    laid = range(1, len(match.Shape.Solids) + 1)
    chosen = [(match.Name, show_face(match, one)) for one in positions if one in laid]
    numbers = set(leaves)
    if kind_of(match.Bundle) == "Bundle":
        chosen += [(leaf.Name, "") for leaf in match.Bundle.Leaves if leaf.Number in numbers]
    only(match.Document, chosen or [(match.Name, "")])


def only(doc: Any, chosen: Iterable[tuple[str, str]]) -> None:
    """Selects these parts of a document's objects, and nothing else."""
    FreeCADGui.Selection.clearSelection()
    for name, part in chosen:
        FreeCADGui.Selection.addSelection(doc.Name, name, part)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What was drawn in the book of faults, written into the Bundle object and its leaves: only what
has changed, so that the rest stays exactly as it was."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import FreeCAD

from veneerwb.gui.books.faults import FaultBook
from veneerwb.host import compat
from veneerwb.host.objects.base import Refused


def differs(book: FaultBook, obj: Any) -> bool:
    """Whether anything is to be written."""
    drawn = book.sources() != list(obj.FaultShapes)
    return drawn or bool(book.changed_faults() or book.changed_usable())


def write(book: FaultBook, obj: Any) -> None:
    """Writes it, and recomputes. Refused, with some of it written, for what the bundle refuses."""
    leaves = {leaf.Number: leaf for leaf in obj.Leaves}
    gone = [k for k in (*book.changed_faults(), *book.changed_usable()) if k not in (None, *leaves)]
    if gone:
        text = FreeCAD.Qt.translate("VeneerFaultsPanel", "Leaf {number} is gone; close this panel.")
        raise Refused(text.format(number=gone[0]))
    for number, entries in book.changed_faults().items():
        holder = obj if number is None else leaves[number]
        holder.FaultOutlines = _corners(e.outline.exterior.coords[:-1] for e in entries)
        holder.FaultKinds = [entry.kind for entry in entries]
    for number, rings in book.changed_usable().items():
        leaves[number].Usable = _corners(rings)
    if book.sources() != list(obj.FaultShapes):
        obj.FaultShapes = book.sources()
    compat.recompute(obj.Document)
    if obj.Message:
        raise Refused(obj.Message)


def _corners(rings: Iterable[Any]) -> list[Any]:
    """Rings as a document keeps them: the third coordinate numbers the ring."""
    return [
        FreeCAD.Vector(float(x), float(y), float(k))
        for k, ring in enumerate(rings)
        for x, y in ring
    ]

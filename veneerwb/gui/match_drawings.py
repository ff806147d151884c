# SPDX-License-Identifier: LGPL-2.1-or-later
"""Drawings of matches and tops, shown beside their names: names differ by region."""

from __future__ import annotations

import os
from typing import Any

import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.gui import resources

IN_LINE, BY_ITSELF = 24, 72
"""Pixels of a drawing in a box or a list, and by itself."""
KINDS = {
    "Radial": "radial book", "Two rings": "rings", "Side by side": "book",
    "End match": "architectural",
}  # fmt: skip
"""What stands for a kind of match that has several drawings; others have the drawing of their
name."""


def drawing(name: str) -> Any:
    """A drawing as an icon: a plain one where it is small, one with the leaves' numbers where there
    is room (of a top there is only one). `name` is a key of the core's table of matches, or "top"
    and a top."""
    path = os.path.join(resources("icons"), "matches", name.replace(" ", "-").lower())
    plain = FreeCADGui.getIcon(f"{path}.svg").pixmap(96, 96)
    icon = QtGui.QIcon(_scaled(plain, IN_LINE))
    large = f"{path}-large.svg"
    full = FreeCADGui.getIcon(large).pixmap(96, 96) if os.path.exists(large) else plain
    icon.addPixmap(_scaled(full, BY_ITSELF))
    return icon


def _scaled(pixmap: Any, size: int) -> Any:
    """So many pixels of a screen with one pixel a point, more on a finer one."""
    ratio = QtGui.QApplication.instance().devicePixelRatio()
    wide = round(size * ratio)
    found = pixmap.scaled(
        wide, wide, QtCore.Qt.KeepAspectRatio, QtCore.Qt.SmoothTransformation
    )
    found.setDevicePixelRatio(ratio)
    return found


def give(box: Any, name: str = "{}") -> None:
    """Gives every choice of a box its drawing: `name` with what the choice stands for in it."""
    for row in range(box.count()):
        choice = box.itemData(row)
        box.setItemIcon(row, drawing(KINDS.get(choice, name.format(choice))))


def key_of(
    kind: str, turn: str, face: str, end: str, strips: int, disc: float, away: bool
) -> tuple[str, ...]:
    """The keys, in the core's table, of what a match is; the first has its drawing. `away`: its
    wedges meet off the middle."""
    if kind == "Side by side":
        plain = face in ("balance", "slip-centre-book")  # what one word says
        return (turn if face == "balance" else face,) if plain else (face, turn)
    if kind == "Radial":
        if strips > 1:
            return ("radial in strips",)
        if disc:
            return ("radial round a disc",)
        return ("radial off the middle",) if away else (f"radial {turn}",)
    return ({"End match": end, "Two rings": "rings"}.get(kind, kind.lower()),)


def show(form: Any, keys: tuple[str, ...]) -> None:
    """Shows what a match is in a form's labels `drawing` and `line`: the drawing of the first key,
    and what is said of them all."""
    form.drawing.setPixmap(drawing(keys[0]).pixmap(BY_ITSELF, BY_ITSELF))
    form.line.setText(line(keys))


def line(keys: tuple[str, ...]) -> str:
    """What the core says of the matches of these keys."""
    from veneerwb.core.matches.kinds import MATCHES

    said = {match.key: match.line for match in MATCHES}
    return " ".join(said[key] for key in keys)

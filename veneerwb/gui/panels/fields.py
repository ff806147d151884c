# SPDX-License-Identifier: LGPL-2.1-or-later
"""One way to read, fill and watch every kind of box that a panel has."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from typing import Any

from PySide import QtGui

MIXED = re.compile(r"""(?<![\d/.,])(\d+)(?:\s+|\s*\+\s*)(\d+)/(\d+)\s*(in|")$""")
"""12 1/2 in, 12+1/2 in, 12 1/2": how a rule is read."""


def one_fraction(text: str) -> str:
    """A mixed number of inches as one fraction: 12 1/2 in becomes 25/2 in. Other texts are returned
    as they are. The host's boxes take 12 1/2 in for 12 mm, and newer ones 12+1/2 in for 12 mm and
    half an inch."""

    def improper(found: re.Match[str]) -> str:
        whole, over, under = map(int, found.group(1, 2, 3))
        return f"{whole * under + over}/{under} {found.group(4)}"

    return MIXED.sub(improper, text)


def is_quantity(box: Any) -> bool:
    """Whether `box` is the host's own for a value with a unit, which Qt's Python knows only in
    part."""
    return box.property("rawValue") is not None


def value(box: Any) -> Any:
    """What a box holds: mm or degrees, a whole number, a text, whether it is ticked, or the data of
    the choice (of a choice typed in: its text)."""
    if is_quantity(box):
        return float(box.property("rawValue"))
    if isinstance(box, QtGui.QComboBox):
        typed = box.isEditable() and box.currentText() != box.itemText(box.currentIndex())
        return box.currentText() if typed else box.currentData()
    if isinstance(box, QtGui.QSpinBox):
        return box.value()
    if isinstance(box, QtGui.QCheckBox):
        return box.isChecked()
    from veneerwb.core.shop.sheet_text import clean

    return clean(box.text())  # a clipboard may bring what a document cannot hold


def fill(box: Any, wanted: Any) -> None:
    """Shows `wanted` in a box; what is none of its choices is shown as text where it may be typed,
    and as nothing where it may not."""
    if is_quantity(box):
        box.setProperty("rawValue", float(wanted))
    elif isinstance(box, QtGui.QComboBox):
        row = box.findData(wanted)
        box.setCurrentIndex(row)
        if row < 0 and box.isEditable():
            box.setEditText(str(wanted))
    elif isinstance(box, QtGui.QSpinBox):
        box.setRange(min(box.minimum(), wanted), max(box.maximum(), wanted))
        box.setValue(wanted)
    elif isinstance(box, QtGui.QCheckBox):
        box.setChecked(wanted)
    else:
        box.setText(wanted)


def watch(box: Any, heard: Callable[..., None]) -> None:
    """Calls `heard` when the user has changed a box; a text only when it is entered whole."""
    if is_quantity(box):
        # Its own signal carries a type that Qt for Python does not know. The box reads its text
        # before we do.
        box.findChild(QtGui.QLineEdit).textChanged.connect(heard)
    elif isinstance(box, QtGui.QComboBox):
        box.currentIndexChanged.connect(heard)
        if box.isEditable():
            box.lineEdit().editingFinished.connect(heard)
    elif isinstance(box, QtGui.QCheckBox):
        box.toggled.connect(heard)
    elif isinstance(box, QtGui.QLineEdit):
        box.editingFinished.connect(heard)
    else:
        box.valueChanged.connect(heard)


def offer(box: Any, data: Iterable[Any], texts: Iterable[str] = ()) -> None:
    """Gives a box its choices: the texts it was drawn with, or `texts`, stand for `data`."""
    for text in texts:
        box.addItem(text)
    for row, one in enumerate(data):
        box.setItemData(row, one)

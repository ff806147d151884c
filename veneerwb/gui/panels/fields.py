# SPDX-License-Identifier: LGPL-2.1-or-later
"""One way to read, fill and watch every kind of box that a panel has."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterable
from dataclasses import replace
from numbers import Real
from typing import Any, NamedTuple

import FreeCAD
from PySide import QtCore, QtGui

from veneerwb.gui.told import as_written
from veneerwb.host.objects.base import sentence
from veneerwb.words import word

MIXED = re.compile(r"""(?<![\d/.,])(\d+)(?:\s+|\s*\+\s*)(\d+)/(\d+)\s*(in|")$""")
"""12 1/2 in, 12+1/2 in, 12 1/2": how a rule is read."""

GROUPED = re.compile(r"(?<![\d/.,])\d{1,3}(?:[ \N{NO-BREAK SPACE}\N{NARROW NO-BREAK SPACE}]\d{3})+"
                     r"(?=[.,]\d|\s*(?:[A-Za-z]|$))")  # fmt: skip
"""1 234, 1 234,5 and 1 234 mm: how thousands are written where a comma is the decimal sign."""

_MIDDLING = 50.0
"""mm: by such a length the user's unit is asked; for very short and long ones hosts take others."""
_FINEST = 0.01
"""mm: what is finer is not shown in units other than that."""
_NAMES = {'"': "in", "'": "ft"}


class Unit(NamedTuple):
    """The user's unit of length: its name, and the mm that it has."""

    name: str
    mm: float

    def figure(self, mm: float, decimals: int = 1, signed: bool = False) -> str:
        """A length without its unit, about as exact as so many decimals of a mm, written as the
        host's boxes write numbers."""
        finest = math.floor(math.log10(self.mm / _FINEST))
        places = max(decimals, min(decimals + math.ceil(math.log10(self.mm)), finest))
        value = round(mm / self.mm, places) + 0.0  # and no -0
        locale = QtCore.QLocale()
        locale.setNumberOptions(QtCore.QLocale.OmitGroupSeparator)
        sign = "+" if signed and value >= 0 else ""
        return sign + locale.toString(value, "f", places)


def unit() -> Unit:
    """The unit in which the user is shown lengths."""
    middling = FreeCAD.Units.Quantity(_MIDDLING, FreeCAD.Units.Length)
    _, mm, name = middling.getUserPreferred()
    return Unit(_NAMES.get(name, name), float(mm))


def length(mm: float, decimals: int = 1, signed: bool = False) -> str:
    """A length in the user's unit, about as exact as so many decimals of a mm."""
    user = unit()
    return f"{user.figure(mm, decimals, signed)} {user.name}"


def as_exact(mm: float) -> str:
    """A length in the user's unit, as exact as the mm were rounded."""
    user = unit()
    return f"{_figure(user, mm)} {user.name}"


def in_units(finding: Any) -> Any:
    """The same finding with its lengths in the user's unit."""
    from veneerwb.core.checks.finding import LENGTHS

    user = unit()
    if user.mm == 1.0:
        return finding

    def told(found: re.Match[str]) -> str:
        names = re.findall(r"\{(\w+)\}", found[1])
        if not all(isinstance(finding.values[name], Real) for name in names):
            return found[0]  # said by the core already
        figures = re.sub(
            r"\{(\w+)\}", lambda name: _figure(user, finding.values[name[1]]), found[1]
        )
        return f"{figures} {user.name}"

    texts = (finding.template, finding.remedy_template)
    plain = (LENGTHS.sub(told, word(text)) for text in texts)
    return replace(finding, **dict(zip(("template", "remedy_template"), plain)))


def in_words(told: Any) -> str:
    """Anything of the core's with a template and values, such as an error, in the user's units."""
    from veneerwb.core import Finding

    return in_units(Finding("told", "note", told.template, values=told.values)).text


def told(error: Exception) -> str:
    """What to tell the user of an error; the core's lengths in the user's unit."""
    return in_words(error) if hasattr(error, "template") else sentence(error)


def refusal(obj: Any) -> str:
    """Why the last change of a document object was refused, in the user's units; empty if it was
    not. What was refused before the document was opened is told in mm, as it was kept."""
    error = getattr(obj.Proxy, "refused", None)
    known = hasattr(error, "template") and str(error) == obj.Message
    return in_words(error) if known else obj.Message


def _figure(user: Unit, mm: float) -> str:
    """As exact as the core has rounded it."""
    from veneerwb.core.errors import number

    return user.figure(mm, len(number(float(mm)).partition(".")[2]))


def purpose(obj: Any, name: str) -> str:
    """What a property of a document object is for, as the host's own editor says it: a tool tip.
    A document has it as well, and may have something else."""
    return as_written(
        FreeCAD.Qt.translate("App::Property", obj.getDocumentationOfProperty(name))
    )


def one_fraction(text: str) -> str:
    """A mixed number of inches as one fraction: 12 1/2 in becomes 25/2 in; 1 234,5 mm without its
    space. Other texts are returned as they are. The host's boxes take 12 1/2 in for 12 mm, newer
    ones 12+1/2 in for 12 mm and half an inch, and 1 234 or 1 234,5 mm for 1 mm."""

    def improper(found: re.Match[str]) -> str:
        whole, over, under = map(int, found.group(1, 2, 3))
        return f"{whole * under + over}/{under} {found.group(4)}"

    return GROUPED.sub(lambda found: re.sub(r"\s", "", found[0]), MIXED.sub(improper, text))


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
    if isinstance(box, (QtGui.QSpinBox, QtGui.QDoubleSpinBox)):
        return box.value()
    if isinstance(box, QtGui.QCheckBox):
        return box.isChecked()
    from veneerwb.core.shop.drawing.lettering import clean

    return clean(box.text())  # a clipboard may bring what a document cannot hold


def fill(box: Any, wanted: Any) -> None:
    """Shows `wanted` in a box; what is none of its choices is shown as text where it may be typed,
    and as nothing where it may not."""
    if is_quantity(box):
        box.setProperty("rawValue", float(wanted))
        _to_the_start(box)
    elif isinstance(box, QtGui.QComboBox):
        row = box.findData(wanted)
        box.setCurrentIndex(row)
        if row < 0 and box.isEditable():
            box.setEditText(str(wanted))
    elif isinstance(box, (QtGui.QSpinBox, QtGui.QDoubleSpinBox)):
        box.setRange(min(box.minimum(), wanted), max(box.maximum(), wanted))
        box.setValue(wanted)
    elif isinstance(box, QtGui.QCheckBox):
        box.setChecked(wanted)
    else:
        box.setText(wanted)


def from_the_start(form: Any) -> None:
    """Has every box of a form that is shown begin with its first figure: where it is narrow the
    unit is cut off, and not the thousands, which the host does when it shows one."""
    for box in vars(form).values():
        if isinstance(box, QtGui.QAbstractSpinBox) and is_quantity(box):
            _to_the_start(box)


def _to_the_start(box: Any) -> None:
    if not box.hasFocus():
        box.findChild(QtGui.QLineEdit).setCursorPosition(0)


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

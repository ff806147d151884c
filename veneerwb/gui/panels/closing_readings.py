# SPDX-License-Identifier: LGPL-2.1-or-later
"""The table of what was measured on a ring: a row a piece or a half. What is typed is kept in lists
of the document's, an empty reading as 0."""

from __future__ import annotations

from typing import Any

import FreeCAD
from PySide import QtCore

from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import translate
from veneerwb.host.objects.base import Refused

HERE = "VeneerClosingPanel"
LISTS = (
    "Wedges", "WedgesUnsure", "Halves", "HalvesUnsure", "Gaps", "GapsAt", "GapsUnsure",
)  # fmt: skip
UNSURE = {"WedgesUnsure": 0.05, "HalvesUnsure": 0.05, "GapsUnsure": 0.2}
"""Degrees and mm: what a reading is taken to be sure to until its own is typed."""
COLUMNS = {
    "each wedge": ("Wedges", "WedgesUnsure"),
    "halves": ("Halves", "HalvesUnsure"),
    "gaps": ("Gaps", "Gaps", "GapsAt", "GapsUnsure"),
}
"""The lists in the columns; a gap stands in the first where it is at the tip, in the second where
it is at an end (and is kept as less than 0)."""
PLACES = 3
ROW, MOST_ROWS = 31, 7
"""Pixels of a row, and how many are seen at once."""
WIDE = 172
"""Pixels of all columns."""


class Readings:
    """Fills the table of a ClosingPanel and hears what is typed; `kept` are the lists."""

    def __init__(self, panel: Any) -> None:
        self.panel = panel
        self.kept = {name: list(getattr(panel.obj, name)) for name in LISTS}
        self.shown: tuple[Any, ...] = ()
        self.filling = False
        panel.form.readings.cellChanged.connect(self._typed)

    # --- filling ------------------------------------------------------------------------------

    def show(self, reading: str, ways: int, first: int) -> None:
        """Shows the lists of one kind of reading, unless they are shown already."""
        wanted = (reading, ways, first if reading != "each wedge" else 0)
        if wanted == self.shown:
            return
        self.shown = wanted
        self.lists = COLUMNS[reading]
        rows = self._rows(*wanted)
        for name in set(self.lists):
            self._lengthen(name, len(rows))
        table = self.panel.form.readings
        self.filling = True
        try:
            table.setRowCount(len(rows))
            table.setColumnCount(len(self.lists))
            table.setVerticalHeaderLabels(rows)
            table.setHorizontalHeaderLabels(self._heads(reading))
            for row in range(len(rows)):
                self._write(row)
        finally:
            self.filling = False
        table.setFixedHeight(ROW * (min(len(rows), MOST_ROWS) + 1))
        for column in range(len(self.lists)):
            table.setColumnWidth(column, WIDE // len(self.lists))

    def _rows(self, reading: str, ways: int, first: int) -> list[str]:
        if reading == "each wedge":
            return [str(k) for k in range(1, ways + 1)]
        half = max(1, ways // 2)
        name = "{first}-{last}"
        return [
            name.format(first=(begin - 1) % ways + 1, last=(begin + half - 2) % ways + 1)
            for begin in (first, first + half)
        ]

    def _heads(self, reading: str) -> list[str]:
        if reading != "gaps":
            return [translate(HERE, "Angle"), translate(HERE, "Sure to")]
        return [translate(HERE, "Tip"), translate(HERE, "End"), translate(HERE, "Far"),
                translate(HERE, "Sure")]  # fmt: skip

    def _lengthen(self, name: str, count: int) -> None:
        held = self.kept[name]
        held += [UNSURE.get(name, 0.0)] * (count - len(held))

    def _write(self, row: int) -> None:
        """Shows a row as it is kept."""
        model = self.panel.form.readings.model()
        for column, name in enumerate(self.lists):
            model.setData(model.index(row, column), self._text(row, column, name))

    def _text(self, row: int, column: int, name: str) -> str:
        value = self.kept[name][row]
        if name == "Gaps":
            if (value < 0.0) != (column == 1) or not self.kept["GapsAt"][row]:
                return ""
            return fields.unit().figure(abs(value), 2)
        if name.startswith("Gaps"):
            return fields.unit().figure(value, 2 if name == "GapsUnsure" else 1) if value else ""
        return _number(value) if value else ""

    # --- hearing ------------------------------------------------------------------------------

    def _typed(self, row: int, column: int) -> None:
        if self.filling or self.panel.form is None:
            return
        model = self.panel.form.readings.model()
        text = str(model.index(row, column).data() or "").strip()
        self.panel.attempt(lambda: self._take(row, column, text))
        self.filling = True
        try:
            self._write(row)
        finally:
            self.filling = False

    def _take(self, row: int, column: int, text: str) -> None:
        name = self.lists[column]
        value = read(text, length=name.startswith("Gaps"))
        if name == "Gaps":
            if value < 0.0:
                raise Refused(translate(
                    HERE, "A gap cannot be less than nothing; a half that is over gapes at its "
                    "tip, one that is under at an end."
                ))  # fmt: skip
            value = -value if column == 1 else value
            far = self.kept["GapsAt"]
            if not far[row]:
                far[row] = self.panel.straightedge(row, "end" if column == 1 else "tip")
        self.kept[name][row] = value
        if name.startswith("Wedges"):  # those of a ring of more pieces go with the first new one
            for one in ("Wedges", "WedgesUnsure"):
                del self.kept[one][self.shown[1] :]
        self.panel.changed()


def read(text: str, length: bool) -> float:
    """Degrees, or mm (in the user's unit where none is given); nothing is 0."""
    if not text:
        return 0.0
    try:
        if not length:
            return float(text.replace(",", ".").rstrip("\N{DEGREE SIGN} deg"))
        found = FreeCAD.Units.Quantity(fields.one_fraction(text))
        if found.Unit == FreeCAD.Units.Length:
            return float(found.Value)
        if found.Unit == FreeCAD.Units.Unit():
            return float(found.Value) * fields.unit().mm
    except (ValueError, ArithmeticError, SyntaxError, RuntimeError):
        pass
    why = (
        translate(HERE, "{text} cannot be read; write a length such as 0.4 mm.")
        if length
        else translate(HERE, "{text} cannot be read; write degrees such as 30.15.")
    )
    raise Refused(why.format(text=text))


def _number(value: float) -> str:
    """As the host's boxes write numbers, without trailing noughts."""
    locale = QtCore.QLocale()
    locale.setNumberOptions(QtCore.QLocale.OmitGroupSeparator)
    return locale.toString(round(value, PLACES) + 0.0, "f", PLACES).rstrip("0").rstrip(".,")

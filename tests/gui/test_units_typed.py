# SPDX-License-Identifier: LGPL-2.1-or-later
"""Lengths typed key by key into the real panels, in each of the host's units, and with a comma for
the decimal sign: the millimetres that arrive, and what is shown of them."""

import re

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.gui.panels import base, fields
from veneerwb.host import compat
from veneerwb.host.objects import add_match, add_stock, closings_of, parts_of

Qt = QtCore.Qt
METRIC, INCHES, BUILDING = 0, 3, 5
"""FreeCAD's schemes: mm; decimal inches; feet, inches and fractions of them."""
TYPED = [
    (METRIC, "C", "600", 600.0), (METRIC, "C", "600.5 mm", 600.5), (METRIC, "C", "1,234.5", 1234.5),
    (METRIC, "C", "24 in", 609.6), (METRIC, "de_DE", "12,5", 12.5),
    (METRIC, "de_DE", "1.234,5 mm", 1234.5), (METRIC, "de_DE", "60,5 cm", 605.0),
    (METRIC, "fr_FR", "12,5", 12.5), (METRIC, "fr_FR", "1 234,5 mm", 1234.5),
    (METRIC, "fr_FR", "1 234", 1234.0),
    (METRIC, "fr_FR", "1\N{NARROW NO-BREAK SPACE}234,5 mm", 1234.5),
    (INCHES, "C", "24.5", 622.3), (INCHES, "C", "600 mm", 600.0),
    (INCHES, "C", "12 1/2 in", 317.5), (INCHES, "de_DE", "24,5", 622.3),
    (INCHES, "fr_FR", "3/8 in", 9.525), (BUILDING, "C", "24", 609.6),
    (BUILDING, "C", '12 1/2"', 317.5), (BUILDING, "C", "2' 6\"", 762.0),
    (BUILDING, "C", "3/8 in", 9.525), (BUILDING, "de_DE", "24,5 in", 622.3),
]
SOME = [TYPED[k] for k in (1, 8, 17)]
"""One of each kind."""


@pytest.fixture
def speak():
    """Chooses units and decimal sign; mm and what there was again afterwards."""
    before = QtCore.QLocale()

    def spoken(schema, locale, doc=None):
        FreeCAD.Units.setSchema(schema)
        if doc is not None and "UnitSystem" in doc.PropertiesList:  # newer hosts go by the document
            doc.UnitSystem = schema
        QtCore.QLocale.setDefault(QtCore.QLocale(locale))

    yield spoken
    FreeCAD.Units.setSchema(METRIC)
    QtCore.QLocale.setDefault(before)


def bring_forward(box):
    """Turns to the page of tabs that a box of the open panel lies on."""
    tabs = getattr(base.shown()[0].form, "tabs", None)
    for page in range(tabs.count() if tabs is not None else 0):
        if tabs.widget(page).isAncestorOf(box):
            tabs.setCurrentIndex(page)


def key(widget, code, text=""):
    event = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, code, Qt.NoModifier, text)
    QtGui.QApplication.sendEvent(widget, event)


def typed(box, text):
    """Types a text over what a box holds, and leaves it by Tab."""
    bring_forward(box)
    box.setFocus()
    box.selectAll()
    for letter in text:
        key(box, ord(letter.upper()), letter)
        QtGui.QApplication.processEvents()  # as between a person's keys
    QtGui.QApplication.processEvents()
    key(box, Qt.Key_Tab)
    QtGui.QApplication.processEvents()


def shown(box):
    return box.findChild(QtGui.QLineEdit).text()


@pytest.fixture
def stock(fresh):
    made = add_stock(fresh, 500.0, 1600.0, 24, 0.6)
    fresh.recompute()
    FreeCADGui.Selection.clearSelection()
    return made


@pytest.fixture
def match(fresh, stock):
    made = add_match(fresh, stock, Ways=8, Diameter=800.0)
    fresh.recompute()
    FreeCADGui.Selection.clearSelection()
    return made


def arrives(user, box, text, mm, held):
    """Types a text into a box: so many mm arrive where `held` looks."""
    typed(box, text)
    finest = 1e-6 * mm
    if compat.version() >= (1, 1) and FreeCAD.Units.getSchema() == INCHES:
        finest = 0.005 * 25.4  # every box of the host's rounds to what it shows when it is left
    wanted = pytest.approx(mm, abs=finest + 1e-9)
    assert fields.value(box) == wanted
    user.wait_for(lambda: held() == wanted, f"{text} arrives")


@pytest.mark.parametrize("schema, locale, text, mm", TYPED)
def test_a_length_typed_into_a_match_arrives(user, stock, speak, panel, schema, locale, text, mm):
    speak(schema, locale, stock.Document)
    user.open_panel("Veneer_NewRadialMatch", "Oversize")
    match = user.only(stock.Document, "Match")
    box = panel().form.Oversize
    arrives(user, box, text, mm, lambda: match.Oversize.Value)
    fields.fill(box, 12.7)
    number = re.search(r"[\d.,/]+", shown(box))[0]
    decimal = "," if locale != "C" else "."
    wanted = {METRIC: f"12{decimal}70", INCHES: f"0{decimal}50", BUILDING: "1/2"}
    assert number == wanted[schema]
    user.cancel()
    user.wait_closed()


@pytest.mark.parametrize("schema, locale, text, mm", SOME)
def test_a_length_typed_into_bring_in_arrives(user, fresh, speak, panel, schema, locale, text, mm):
    speak(schema, locale, fresh)
    user.open_panel("Veneer_BringInLeaves", "folder")
    made = panel()
    for name, by in (("known", "length"), ("per_pixel", "pixel"), ("thickness", "length")):
        made.form.scale.setCurrentIndex(made.form.scale.findData(by))
        box = getattr(made.form, name)
        typed(box, text)
        assert made.value(name) == pytest.approx(mm), name
    user.cancel()
    user.wait_closed()


@pytest.mark.parametrize("schema, locale, text, mm", SOME)
def test_a_length_typed_at_the_bench_arrives(user, match, speak, panel, schema, locale, text, mm):
    speak(schema, locale, match.Document)
    user.open_panel("Veneer_Bench", "Title")
    bench = user.only(match.Document, "Bench")
    form = panel().form
    for name in ("Base", "Kerf", "Tool"):
        arrives(user, getattr(form, name), text, mm, lambda at=name: getattr(bench, at).Value)
    user.cancel()
    user.wait_closed()


@pytest.mark.parametrize("schema, locale, text, mm", SOME)
def test_a_length_typed_for_a_ring_arrives(user, match, speak, panel, schema, locale, text, mm):
    speak(schema, locale, match.Document)
    user.open_panel("Veneer_CloseRing", "TemplateError")
    (closing,) = closings_of(match)
    arrives(user, panel().form.Base, text, mm, lambda: closing.Base.Value)
    user.cancel()
    user.wait_closed()


@pytest.mark.parametrize("schema, locale, text, mm, said", [
    (METRIC, "C", "0.4", 0.4, "0.40"), (METRIC, "de_DE", "0,4 mm", 0.4, "0,40"),
    (METRIC, "fr_FR", "1,25", 1.25, "1,25"), (INCHES, "C", "1/64 in", 25.4 / 64, "0.016"),
    (INCHES, "de_DE", "0,02", 0.508, "0,020"), (BUILDING, "C", '1/32"', 25.4 / 32, "0.031"),
])  # fmt: skip
def test_a_gap_typed_into_the_readings_arrives(
    user, match, speak, panel, schema, locale, text, mm, said
):
    speak(schema, locale, match.Document)
    user.open_panel("Veneer_CloseRing", "TemplateError")
    (closing,) = closings_of(match)
    form = panel().form
    form.stage.setCurrentIndex(form.stage.findData("after"))
    form.Reading.setCurrentIndex(form.Reading.findData("gaps"))
    user.wait_for(lambda: user.visible(QtGui.QTableWidget, "readings"), "they are asked")
    table = form.readings
    table.setFocus()
    table.edit(table.model().index(0, 0))
    (line,) = [one for one in user.visible(QtGui.QLineEdit) if table.isAncestorOf(one)]
    for letter in text:
        key(line, ord(letter.upper()), letter)
    key(line, Qt.Key_Return, "\r")
    user.wait_for(lambda: list(closing.Gaps)[:1] == [pytest.approx(mm)], "the reading arrives")
    assert form.trouble.text() == "" and panel().form is form  # Enter in a cell is no OK
    cell = table.model().index(0, 0).data()
    assert cell == said
    user.cancel()
    user.wait_closed()


@pytest.mark.parametrize("schema, locale, text, mm", SOME)
def test_a_length_typed_for_a_panel_arrives(user, match, speak, panel, schema, locale, text, mm):
    speak(schema, locale, match.Document)
    user.open_panel("Veneer_BuildUp", "CoreThickness")
    user.wait_for(lambda: parts_of(match) is not None, "parts are made")
    arrives(user, panel().form.CoreThickness, text, mm, lambda: match.BuildUp.CoreThickness.Value)
    user.cancel()
    user.wait_closed()

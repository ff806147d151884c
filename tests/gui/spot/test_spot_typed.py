# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where the wedge lies, typed key by key: what is typed arrives, and nothing writes over it."""

import FreeCAD
import pytest
from PySide import QtCore, QtGui

Qt = QtCore.Qt
METRIC, INCHES = 0, 3
"""FreeCAD's schemes."""


@pytest.fixture
def speak(match):
    """Chooses units and decimal sign; mm and what there was again afterwards."""
    before = QtCore.QLocale()

    def spoken(schema, locale):
        FreeCAD.Units.setSchema(schema)
        if "UnitSystem" in match.Document.PropertiesList:  # newer hosts go by the document
            match.Document.UnitSystem = schema
        QtCore.QLocale.setDefault(QtCore.QLocale(locale))

    yield spoken
    FreeCAD.Units.setSchema(METRIC)
    QtCore.QLocale.setDefault(before)


def typed(box, text):
    """Types a text over what a box holds, at leisure, and leaves it by Tab."""
    box.setFocus()
    box.selectAll()
    for letter in text:
        event = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, ord(letter.upper()), Qt.NoModifier, letter)
        QtGui.QApplication.sendEvent(box, event)
        for _ in range(5):
            QtGui.QApplication.processEvents()
    tab = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, Qt.Key_Tab, Qt.NoModifier)
    QtGui.QApplication.sendEvent(box, tab)
    QtGui.QApplication.processEvents()


@pytest.mark.parametrize(
    "schema, locale, text, mm",
    [
        (METRIC, "C", "200.5 mm", 200.5), (METRIC, "de_DE", "212,5", 212.5),
        (INCHES, "C", "9.5", 241.3),
    ],
)  # fmt: skip
def test_a_place_typed_arrives(user, speak, match, panel, schema, locale, text, mm):
    speak(schema, locale)
    user.open_panel("Veneer_ChooseSpot", "TipX")
    user.wait_for(lambda: panel().window.top.painted, "the top is painted")
    settle = QtCore.QElapsedTimer()
    settle.start()  # a window that opens is brought to the front for a second
    user.wait_for(lambda: settle.elapsed() > 1100, "the window is in front")
    typed(panel().form.TipY, text)
    user.wait_for(lambda: match.TipY.Value == pytest.approx(mm), f"{text} arrives")
    assert panel().value("TipY") == pytest.approx(mm)


def test_what_cannot_be_goes_back_once_the_box_is_left(user, spot, match):
    before = match.Diameter.Value
    box = spot.form.Diameter
    typed(box, "0 mm")
    user.wait_for(lambda: spot.value("Diameter") == pytest.approx(before), "what is comes back")
    typed(box, "210 mm")
    user.wait_for(lambda: match.Diameter.Value == pytest.approx(210.0), "what is typed arrives")

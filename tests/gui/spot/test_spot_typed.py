# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where the wedge lies, typed key by key: what is typed arrives, and nothing writes over it."""

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.gui.spot import window as spot_window

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


def press(key, text=""):
    """A key goes to where the keyboard is, wherever that is by now."""
    event = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, key, Qt.NoModifier, text)
    QtGui.QApplication.sendEvent(QtGui.QApplication.focusWidget(), event)


def typed(box, text, pause=0):
    """Types a text over what a box holds, so many ms from key to key, and leaves it by Tab."""
    box.setFocus()
    box.selectAll()
    for letter in text:
        press(ord(letter.upper()), letter)
        passed = QtCore.QElapsedTimer()
        passed.start()
        for _ in range(5):
            QtGui.QApplication.processEvents()
        while passed.elapsed() < pause:
            QtGui.QApplication.processEvents()
    assert box.hasFocus()
    press(Qt.Key_Tab)
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
    typed(panel().form.TipY, text)  # at once, for nobody waits
    user.wait_for(lambda: match.TipY.Value == pytest.approx(mm), f"{text} arrives")
    assert panel().value("TipY") == pytest.approx(mm)


def test_a_host_that_brings_its_view_forward_takes_no_key_away(user, match, panel):
    user.open_panel("Veneer_ChooseSpot", "TipX")
    area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
    (ours,) = [one for one in area.subWindowList() if one.widget() is panel().window.form]
    (view, *_) = [one for one in area.subWindowList() if one is not ours]
    area.setActiveSubWindow(view)  # as newer hosts do after the window has opened
    typed(panel().form.TipY, "200.5", pause=150)  # over several looks at what is in front
    assert area.subWindowList(QtGui.QMdiArea.StackingOrder)[-1] is ours
    user.wait_for(lambda: match.TipY.Value == pytest.approx(200.5), "what is typed arrives")


def test_the_leaf_keeps_the_keyboard_when_the_window_is_laid_out_anew(spot, monkeypatch):
    window = spot.window
    keyboard = QtGui.QApplication.focusWidget
    for room in ((9999, 9999), (1, 1)):
        monkeypatch.setattr(spot_window, "ROOM", room)
        window.keep_clear()
        assert window.paged == (room[0] > 1)
        assert keyboard() is window.canvases[0].widget


def test_what_cannot_be_goes_back_once_the_box_is_left(user, spot, match):
    before = match.Diameter.Value
    box = spot.form.Diameter
    typed(box, "0 mm")
    user.wait_for(lambda: spot.value("Diameter") == pytest.approx(before), "what is comes back")
    typed(box, "210 mm")
    user.wait_for(lambda: match.Diameter.Value == pytest.approx(210.0), "what is typed arrives")

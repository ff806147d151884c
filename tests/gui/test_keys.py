# SPDX-License-Identifier: LGPL-2.1-or-later
"""Commands and panels by the keyboard alone: letters of menus and labels, Tab, Enter and Escape."""

import re
from collections import Counter
from pathlib import Path
from xml.etree import ElementTree

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.gui import commands, resources
from veneerwb.host import kinds
from veneerwb.host.objects import add_stock

Qt = QtCore.Qt
LANGUAGES = {"English": "", "German": "de", "French": "fr"}


@pytest.fixture(scope="module")
def known():
    """Each language's catalogue: (context, English) to the translation."""
    return {
        language: {
            (context.findtext("name"), message.findtext("source")):
                message.findtext("translation")
            for file in Path(resources("translations")).glob(f"*_{short}.ts") if short
            for context in ElementTree.parse(file).iter("context")
            for message in context.iter("message")
        }
        for language, short in LANGUAGES.items()
    }  # fmt: skip


def letter(text):
    found = re.search("&([^&])", text.replace("&&", ""))
    return found and found[1].lower()


def twice(texts):
    """The letters that several texts have."""
    return {key for key, count in Counter(map(letter, texts)).items() if key and count > 1}


def press(widget, key, text="", keys=Qt.NoModifier):
    """A key goes down on a widget."""
    event = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, key, keys, text)
    QtGui.QApplication.sendEvent(widget, event)
    QtGui.QApplication.processEvents()


# --- menus --------------------------------------------------------------------------------------


def our_menu():
    """Our menu's own entry and its entries, as the host shows them."""
    (menu,) = [
        one for one in FreeCADGui.getMainWindow().menuBar().actions()
        if one.text().replace("&", "") == commands.TITLE
    ]  # fmt: skip
    return menu, [one for one in menu.menu().actions() if not one.isSeparator()]


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_command_has_a_letter_of_its_own_in_the_menu(user, language):
    FreeCADGui.setLocale(language)
    try:
        QtGui.QApplication.processEvents()
        menu, entries = our_menu()
        texts = [one.text() for one in entries]
        assert len(texts) == len([one for one in commands.COMMANDS if one is not None])
        assert all(map(letter, texts)) and twice(texts) == set()
        others = [one.text() for one in FreeCADGui.getMainWindow().menuBar().actions()]
        assert letter(menu.text()) and letter(menu.text()) not in twice(others)
    finally:
        FreeCADGui.setLocale("English")
        QtGui.QApplication.processEvents()


def test_the_host_can_give_every_command_a_shortcut(user):
    """The host's dialog for the keyboard lists what has an action and a name."""
    for command in filter(None, commands.COMMANDS):
        found = FreeCADGui.Command.get(command.name)
        assert found.getInfo()["menuText"] and found.getAction()
        assert found.getShortcut() == ""  # so that it clashes with nothing


def test_tips_show_no_marks_of_letters(user):
    _, entries = our_menu()
    for one in entries:
        assert "&" not in one.toolTip() and "&" not in one.statusTip()


# --- the letters of a form whose rows depend on the kind of match ---------------------------------


def letters_seen(form, words, context):
    """The texts with letters that are seen in a form, in a language."""
    shown = [
        one.text() for one in vars(form).values()
        if isinstance(one, (QtGui.QLabel, QtGui.QAbstractButton)) and one.isVisibleTo(form)
        and letter(one.text())
    ]  # fmt: skip
    return [words.get((context, text), text) for text in shown]


@pytest.mark.parametrize("command, tops", [("NewMatch", tuple(kinds.TOPS)), ("RunOnFaces", ())])
def test_whatever_kind_is_asked_for_no_letter_leads_to_two_boxes(
    user, fresh, known, panel, command, tops
):
    add_stock(fresh, 400.0, 900.0, 16)
    box = fresh.addObject("Part::Box", "Door")
    fresh.recompute()
    FreeCADGui.Selection.addSelection(fresh.Name, box.Name, "Face6")
    user.open_panel(f"Veneer_{command}", "Kind")
    made, form = panel(), panel().form
    made.changed = made.arrange  # rows are what counts here
    form.AutoPlacement.setChecked(False)
    for kind in kinds.KINDS:
        if form.Kind.findData(kind) < 0:
            continue
        form.Kind.setCurrentIndex(form.Kind.findData(kind))
        for top in tops or (None,):
            if top is not None:
                form.Top.setCurrentIndex(form.Top.findData(top))
            made.arrange()
            for language, words in known.items():
                texts = letters_seen(form, words, form.objectName())
                assert len(texts) > 8
                assert twice(texts) == set(), (kind, top, language, texts)
    user.cancel()
    user.wait_closed()


# --- Tab, Enter, Escape -------------------------------------------------------------------------


def boxes_seen(form):
    kinds_of_box = (QtGui.QComboBox, QtGui.QAbstractSpinBox, QtGui.QCheckBox, QtGui.QPushButton)
    return {
        name for name, one in vars(form).items()
        if isinstance(one, kinds_of_box) and one.isVisibleTo(form) and one.isEnabled()
    }  # fmt: skip


def test_tab_reaches_every_box_of_a_panel_and_shift_tab_goes_back(user, bundle, panel):
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    form = panel().form
    window = form.window()
    form.Bundle.setFocus()
    reached = [window.focusWidget().objectName()]
    for _ in range(60):
        press(window.focusWidget(), Qt.Key_Tab)
        reached.append(window.focusWidget().objectName())
    assert boxes_seen(form) <= set(reached)
    assert reached[0] == "Bundle" and reached[1] == "Kind"
    form.Kind.setFocus()
    press(window.focusWidget(), Qt.Key_Backtab, keys=Qt.ShiftModifier)
    assert window.focusWidget().objectName() == "Bundle"
    user.cancel()
    user.wait_closed()


def test_enter_in_a_box_takes_what_was_typed_and_leaves_the_rest_to_the_host(user, bundle, panel):
    """Whether Enter is OK too is the host's to say: ours are its panels."""
    doc = bundle.Document
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    box = panel().form.Ways
    box.setFocus()
    box.selectAll()
    for figure in "6":
        press(box, ord(figure), figure)
    press(box, Qt.Key_Return, "\r")
    user.wait_for(lambda: user.only(doc, "Match").Ways == 6, "it is laid")
    if FreeCADGui.Control.activeDialog():
        user.ok()
    user.wait_closed()
    assert len(user.only(doc, "Match").Shape.Solids) == 6
    doc.undo()
    assert [one.Name for one in doc.Objects if one.Name == "Match"] == []


def test_escape_in_a_box_takes_all_back(user, bundle, panel):
    before = user.state(bundle.Document)
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    box = panel().form.Ways
    box.setFocus()
    box.setValue(8)
    press(box, Qt.Key_Escape)
    user.wait_closed()
    assert user.state(bundle.Document) == before
    assert FreeCAD.ActiveDocument.Name == bundle.Document.Name

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The screens in German and French, as the running host speaks them, and in English again."""

import re
from pathlib import Path
from xml.etree import ElementTree

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.gui import resources
from veneerwb.gui.panels import base, fields
from veneerwb.gui.panels.findings import found_on
from veneerwb.host.objects import add_match
from veneerwb.words import filled, say

LANGUAGES = {"German": "de", "French": "fr"}
FORMS = sorted(Path(resources("ui")).glob("*.ui"))
SHOWN = ("text", "toolTip", "windowTitle", "title", "placeholderText", "specialValueText")


def catalogue(language):
    """(context, English): the translation; tests/core hold that there is one of everything."""
    return {
        (context.findtext("name"), message.findtext("source")):
            message.findtext("translation") or message.findtext("source")
        for file in Path(resources("translations")).glob(f"*_{LANGUAGES[language]}.ts")
        for context in ElementTree.parse(file).iter("context")
        for message in context.iter("message")
    }  # fmt: skip


@pytest.fixture(scope="session")
def known():
    """Each language's catalogue."""
    return {language: catalogue(language) for language in LANGUAGES}


@pytest.fixture
def speak():
    """Has the host speak a language and write numbers as there; English again afterwards."""

    def spoken(language, locale=None):
        FreeCADGui.setLocale(language)
        QtCore.QLocale.setDefault(QtCore.QLocale(locale or LANGUAGES.get(language, "C")))
        QtGui.QApplication.processEvents()

    before = QtCore.QLocale()
    yield spoken
    FreeCADGui.setLocale("English")
    QtCore.QLocale.setDefault(before)
    QtGui.QApplication.processEvents()


def drawn_texts(form):
    """Of a form's file: (widget, property, English) for each of its texts; a choice's property is
    its row."""
    for widget in ElementTree.parse(form).iter("widget"):
        for one in widget.findall("property"):
            string = one.find("string")
            if string is not None and string.text and string.get("notr") != "true":
                yield widget.get("name"), one.get("name"), string.text
        if widget.get("class") == "QComboBox":
            for row, item in enumerate(widget.findall("item")):
                string = item.find("property[@name='text']/string")
                if string is not None and string.text and string.get("notr") != "true":
                    yield widget.get("name"), row, string.text


def read(form, name, what):
    """What a widget of a loaded form shows."""
    widget = form if name == form.objectName() else getattr(form, name)
    return widget.itemText(what) if isinstance(what, int) else widget.property(what)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_form_is_in_the_language(user, drawn, speak, known, language):
    speak(language)
    seen = 0
    for file in FORMS:
        context = ElementTree.parse(file).findtext("class")
        with drawn(file) as form:
            for name, what, english in drawn_texts(file):
                if isinstance(what, int) or what in SHOWN:
                    there = known[language][context, english]
                    assert read(form, name, what) == there, (file, name)
                    seen += 1
    assert seen > 400


@pytest.mark.parametrize("language", LANGUAGES)
def test_commands_and_menus_are_in_the_language(user, speak, known, language):
    speak(language)
    texts = {
        widget.defaultAction().text()
        for widget in QtGui.QApplication.allWidgets()
        if isinstance(widget, QtGui.QToolButton) and widget.defaultAction() is not None
    }
    for command, english in (("Veneer_Backs", "Bac&ks"), ("Veneer_CheckMatch", "&Check Match")):
        there = known[language][command, english]
        assert there != english and there in texts
    menus = [one.text() for one in FreeCADGui.getMainWindow().menuBar().actions()]
    assert known[language]["Workbench", "Veneer &Layup"] in menus


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_panel_its_findings_and_its_refusals_are_in_the_language(
    user, bundle, speak, known, language
):
    speak(language)
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    words = known[language]
    assert user.box("Ways_label").text() == words["VeneerMatchPanel", "&Ways"]
    match = user.only(bundle.Document, "Match")
    user.box("Ways").setValue(8)
    user.wait_for(lambda: not base.shown()[0].due and match.Ways == 8, "it is laid")
    said = user.lines()
    assert said
    expected = [
        " ".join(filled(words["Veneer", template], one._words())
                 for template in (one.template, one.remedy_template) if template)
        for one in found_on(match)
    ]  # fmt: skip
    assert said == expected
    assert any(re.search(r"\d,\d", line) for line in said)
    assert not any(re.search(r"\d\.\d", line) for line in said)
    user.box("Ways").setValue(7)
    user.wait_for(lambda: match.Message, "seven ways are refused")
    error = match.Proxy.refused
    assert user.box("trouble").text() == filled(words["Veneer", error.template], error.values)
    user.cancel()
    user.wait_closed()


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_stands_against_cutting_is_counted_in_every_language(
    user, fresh, bundle, speak, known, language
):
    speak(language)
    match = add_match(fresh, bundle, Diameter=800.0, Ways=8)
    fresh.recompute()
    stops = sum(one.level == "stop" for one in found_on(match))
    template = known[language]["VeneerCheckPanel", "Do not cut yet: {count} against it."]
    user.open_panel("Veneer_CheckMatch", "findings")
    assert stops and user.box("summary").text() == template.format(count=stops)
    user.close()
    user.wait_closed()


def test_what_a_property_is_for_is_said_in_the_language(user, fresh, bundle, speak, known):
    match = add_match(fresh, bundle)
    english = fields.purpose(match, "Ways")
    speak("German")
    assert fields.purpose(match, "Ways") == known["German"]["App::Property", english]
    assert match.getDocumentationOfProperty("Ways") == english


def test_documents_hold_the_same_in_every_language(user, bundle, speak):
    speak("German")
    user.open_panel("Veneer_Particulars", "Cut")
    user.box("Cut").setCurrentIndex(2)
    assert user.box("Cut").currentText() != "Sliced on the quarter"
    user.ok()
    user.wait_closed()
    assert bundle.Cut == "Sliced on the quarter"
    user.open_panel("Veneer_NewMatch", "Kind")
    user.box("Kind").setCurrentIndex(user.box("Kind").findData("Box"))
    match = user.only(bundle.Document, "Match")
    user.wait_for(lambda: match.Kind == "Box", "the match follows")
    assert "Box" not in [user.box("Kind").currentText()]
    user.cancel()


def test_the_choices_that_are_kept_as_text_are_those_of_the_form():
    from veneerwb.gui.panels.particulars import CUTS

    (file,) = [one for one in FORMS if one.stem == "particulars"]
    rows = [item for widget in ElementTree.parse(file).iter("widget")
            if widget.get("name") == "Cut" for item in widget.findall("item")]  # fmt: skip
    assert tuple(row.findtext("property/string") or "" for row in rows) == CUTS


def test_numbers_are_written_as_the_host_writes_them_not_as_the_language(user, speak):
    assert say("{a} and {b:.1f}", a=3.5, b=0.25) == "3.5 and 0.2"
    speak("French", "C")
    assert say("{a}", a=3.5) == "3.5"
    speak("German", "de")
    assert say("{a} and {b:.1f}", a=3.5, b=0.25) == "3,5 and 0,2"
    assert fields.length(3.5) == "3,5 mm"


def test_english_comes_back(user, bundle, speak):
    speak("German")
    speak("English", "C")
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    assert user.box("Ways_label").text() == "&Ways"
    assert FreeCAD.Qt.translate("Veneer_Backs", "Bac&ks") == "Bac&ks"
    user.cancel()

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The catalogues of translations are in step with the sources, whole, and sound."""

import sys
from importlib import import_module
from pathlib import Path

import pytest

FOLDER = Path(__file__).parents[2] / "resources/translations"
LANGUAGES = ("de", "fr")
PARTS = ("forms", "screens", "core", "shop", "host")


def module(name):
    """One of the script's own files, which lie in no package."""
    sys.path.insert(0, str(FOLDER))
    try:
        return import_module(name)
    finally:
        sys.path.remove(str(FOLDER))


catalogue, gathering = module("catalogue"), module("gathering")


@pytest.fixture(scope="module")
def gathered():
    return gathering.gathered()


def sources(tmp_path, text):
    file = tmp_path / "one.py"
    file.write_text(text, "utf-8")
    return gathering.of_python(file, "one.py")


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("part", PARTS)
def test_every_text_is_in_the_catalogue_and_none_is_there_that_is_gone(gathered, part, language):
    """`resources/translations/texts.py` brings them in step."""
    have, texts = catalogue.read(part, language), gathered.parts[part]
    assert len(texts) > 300
    assert [text for text in texts if text not in have] == []
    assert [text for text in have if text not in texts] == []


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("part", PARTS)
def test_every_text_is_translated(part, language):
    lacking = [text for text, entry in catalogue.read(part, language).items() if not entry.text]
    assert lacking == []


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("part", PARTS)
def test_translations_can_be_filled_and_shown_as_the_english(part, language):
    assert [
        (text.source, trouble)
        for text, entry in catalogue.read(part, language).items()
        for trouble in catalogue.troubles(text.source, entry.text)
    ] == []


def test_no_text_is_hidden_from_the_catalogue(gathered):
    """Whatever is said has a constant text, or one that is known from the source."""
    assert [f"{place}: {call}" for place, call in gathered.unknown] == []


# --- what is found ------------------------------------------------------------------------------


def test_every_way_of_saying_is_found(tmp_path):
    found = sources(tmp_path, '''
from veneerwb.words import marked, say, word
HERE = "Panel"
NAMES = {"a": marked("left"), "b": marked("right")}

def _refused(template, **values):
    return VeneerError("code", template, **values)

def told(which, many):
    text = "Cut them." if many else "Cut it."
    yield say("Leaf {leaf} is " "gone.", leaf=3), word(NAMES[which]), say(text)
    yield translate(HERE, "Here"), FreeCAD.Qt.translate("There", "This " + "too")
    yield QT_TRANSLATE_NOOP("Veneer_Command", "Do it"), painter.translate(3, 4)
    yield Finding("code", "warn", "So it is.", remedy_template="Mend it.")
    yield _refused("No {what} here.", what=word("leaf")), console.say("not for people")
    yield Property("Length", "CutWidth", "Cut", "How wide it is cut")
''')  # fmt: skip
    assert {(text.context, text.source) for text, _ in found.found} == {
        ("Veneer", "left"), ("Veneer", "right"), ("Veneer", "Leaf {leaf} is gone."),
        ("Veneer", "Cut them."), ("Veneer", "Cut it."), ("Panel", "Here"), ("There", "This too"),
        ("Veneer_Command", "Do it"), ("Veneer", "So it is."), ("Veneer", "Mend it."),
        ("Veneer", "No {what} here."), ("Veneer", "leaf"), ("App::Property", "Cut Width"),
        ("App::Property", "Cut"), ("App::Property", "How wide it is cut"),
    }  # fmt: skip
    assert found.unknown == []


@pytest.mark.parametrize("said", [
    'say(f"Leaf {k} is gone.")', 'say("Leaf " + name)', 'VeneerError("code", made())',
    'Finding("code", "warn", "So.", made())', 'translate(HERE, "It" + name)',
])  # fmt: skip
def test_what_cannot_be_known_is_told(tmp_path, said):
    found = sources(tmp_path, f"from veneerwb.words import say\nHERE = 'Panel'\n\n{said}\n")
    assert [place.line for place, _ in found.unknown] == [4]


def test_the_words_of_forms_are_found_but_not_their_names_and_styles(tmp_path):
    file = tmp_path / "one.ui"
    file.write_text('''<ui><class>Form</class><widget class="QWidget" name="Form">
<property name="text"><string>&amp;Ways</string></property>
<property name="styleSheet"><string notr="true">color: red</string></property>
<property name="toolTip"><string comment="of a saw">Cut</string></property>
</widget></ui>''', "utf-8")  # fmt: skip
    found = list(gathering.of_form(file, "one.ui"))
    assert [(*text, place.line) for text, place in found] == [
        ("Form", "&Ways", "", 2), ("Form", "Cut", "of a saw", 4),
    ]  # fmt: skip


# --- what is sound ------------------------------------------------------------------------------


@pytest.mark.parametrize(("source", "text"), [
    ("Leaf {leaf} is {off} mm off.", "{off} mm daneben liegt Blatt {leaf}."),
    ("{a} x {b} mm, at most {c} mm", "{a} x {b} mm, höchstens {c} mm"),
    ("{least} to {most} mm", "{least} bis {most} mm"),
    ("{least} to {most} mm", "{least} à {most} mm"),
    ("&Ways", "T&eile"), ("Save && close...", "Sichern && schließen..."),
    ("Stop ({percent} %)", "Halt ({percent} %)"), ("<b>So</b>", "<b>Ainsi</b>"),
])  # fmt: skip
def test_sound_translations_are_taken(source, text):
    assert catalogue.troubles(source, text) == []


@pytest.mark.parametrize(("source", "text"), [
    ("Leaf {leaf} is off.", "Blatt {blatt} liegt daneben."),
    ("Leaf {leaf} is off.", "Ein Blatt liegt daneben."),
    ("{share:.1f} % of it", "{share} % davon"),
    ("{least} to {most} mm", "{least} - {most} mm"),
    ("{off} mm off", "{off} Millimeter daneben"), ("Cut it.", "Schneiden"),
    ("Cut it", " Schneiden"), ("&Ways", "Teile"), ("Ways", "&Teile"), ("%1 of %2", "%1 von"),
    ("<b>So</b>", "So"), ("Leaf {leaf}", "Blatt {leaf"),
])  # fmt: skip
def test_translations_that_would_break_are_refused(source, text):
    assert catalogue.troubles(source, text)


def test_a_catalogue_is_read_as_it_was_written(tmp_path, monkeypatch):
    monkeypatch.setattr(catalogue, "HERE", tmp_path)
    there = {
        gathering.Text("A", "One & <two>\nlines"): catalogue.Entry("Eins & <zwei>\nZeilen", "a.py"),
        gathering.Text("A", "Cut", "of a saw"): catalogue.Entry("Schnitt", "b.ui"),
        gathering.Text("B", "\u00a0new"): catalogue.Entry("", "c.py"),
    }
    catalogue.write("core", "de", there)
    assert catalogue.read("core", "de") == there

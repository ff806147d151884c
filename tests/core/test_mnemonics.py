# SPDX-License-Identifier: LGPL-2.1-or-later
"""Alt and a letter lead to one box: no two labels seen at once have the same letter, in any
language. Forms whose rows depend on the kind of match are gone through by tests/gui/test_keys.py.
"""

import re
from collections import defaultdict
from pathlib import Path
from xml.etree import ElementTree

import pytest

RESOURCES = Path(__file__).parents[2] / "resources"
FORMS = sorted((RESOURCES / "ui").glob("*.ui"))
BY_KIND = ("match", "run")
INSTEAD = {
    ("leaves", "known_label"): "&Apart",
    ("sequence", "turn_end"): "Turn leaf {leaf} &end for end",
    ("sequence", "turn_over"): "Turn leaf {leaf} &over",
    ("sequence_window", "play"): "&Stop",
}
"""What a panel writes on a widget instead of what the form has."""


def catalogue(language):
    """(context, English): translation; English stands for itself."""
    return {
        (context.findtext("name"), message.findtext("source")): message.findtext("translation")
        for file in (RESOURCES / "translations").glob(f"*_{language}.ts")
        for context in ElementTree.parse(file).iter("context")
        for message in context.iter("message")
    }


KNOWN = {"en": {}, "de": catalogue("de"), "fr": catalogue("fr")}


def letter(text):
    """The letter that is pressed with Alt; none where nothing is marked."""
    found = re.search("&([^&])", text.replace("&&", ""))
    return found and found[1].lower()


def within(place):
    """The widgets right in a widget or a layout."""
    for one in place:
        if one.tag == "widget":
            yield one
        elif one.tag in ("layout", "item"):
            yield from within(one)


def marked(widget, page=""):
    """Of everything in a widget that has a letter: its name, its English text, and the page of tabs
    that it is on."""
    for one in within(widget):
        here = one.get("name") if widget.get("class") == "QTabWidget" else page
        text = one.findtext("property[@name='text']/string") or ""
        title = one.findtext("property[@name='title']/string") or ""
        for said in filter(letter, (text, title)):
            yield one.get("name"), said, here
        yield from marked(one, here)


def seen_at_once(form):
    """The texts with letters that each page of a form shows, as drawn and as panels write them."""
    found = list(marked(ElementTree.parse(form).find("widget")))
    for instead in (False, True):
        for page in {page for *_, page in found}:
            yield [
                INSTEAD.get((form.stem, name), text) if instead else text
                for name, text, where in found
                if where in ("", page)
            ]


@pytest.mark.parametrize("language", KNOWN)
@pytest.mark.parametrize("form", [f for f in FORMS if f.stem not in BY_KIND], ids=lambda f: f.stem)
def test_no_letter_leads_to_two_boxes(form, language):
    context = ElementTree.parse(form).findtext("class")
    for english in seen_at_once(form):
        by_letter = defaultdict(list)
        for text in english:
            shown = text if language == "en" else KNOWN[language][context, text]
            by_letter[letter(shown)].append(shown)
        assert None not in by_letter, by_letter[None]
        assert {key: texts for key, texts in by_letter.items() if len(texts) > 1} == {}


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.stem)
def test_a_letter_on_a_label_leads_to_a_box(form):
    root = ElementTree.parse(form)
    for widget in root.iter("widget"):
        text = widget.findtext("property[@name='text']/string") or ""
        if widget.get("class") == "QLabel" and letter(text):
            assert widget.find("property[@name='buddy']") is not None, widget.get("name")


def test_what_panels_write_instead_is_there():
    files = RESOURCES.parent.glob("veneerwb/gui/**/*.py")
    panels = "\n".join(path.read_text("utf-8") for path in files)
    for (stem, name), text in INSTEAD.items():
        assert f'"{text}"' in panels
        assert f'name="{name}"' in (RESOURCES / f"ui/{stem}.ui").read_text("utf-8")


def test_forms_have_letters():
    count = sum(1 for form in FORMS for _ in marked(ElementTree.parse(form).find("widget")))
    assert count > 250

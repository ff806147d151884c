# SPDX-License-Identifier: LGPL-2.1-or-later
"""The forms in resources/ui, as far as their files tell."""

import re
from collections import Counter
from pathlib import Path
from xml.etree import ElementTree

import pytest

FORMS = sorted((Path(__file__).parents[2] / "resources/ui").glob("*.ui"))


def said(widget, name):
    """A property of a widget as text; None where the form leaves it."""
    found = widget.find(f"property[@name='{name}']")
    return None if found is None else "".join(found.itertext()).strip()


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.stem)
def test_lists_of_whole_sentences_have_no_gaps_between(form):
    """With gaps Qt measures how a sentence wraps in more width than it has, and cuts its last line
    off."""
    for widget in ElementTree.parse(form).iter("widget"):
        if widget.get("class") == "QListWidget" and said(widget, "wordWrap") == "true":
            assert said(widget, "spacing") in (None, "0"), widget.get("name")


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.stem)
def test_nothing_lies_on_another_and_labels_name_what_is_there(form):
    root = ElementTree.parse(form)
    widgets = {one.get("name"): one for one in root.iter("widget")}
    for layout in root.iter("layout"):
        cells = Counter((item.get("row"), item.get("column")) for item in layout.findall("item"))
        cells.pop((None, None), None)  # of boxes in a row or a column
        assert set(cells.values()) <= {1}, layout.get("name")
    for name, widget in widgets.items():
        buddy = said(widget, "buddy")
        assert buddy is None or buddy in widgets, name
    tabs = [one.text for one in root.iter("tabstop")]
    assert set(tabs) <= set(widgets) and len(tabs) == len(set(tabs))


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.stem)
def test_no_label_takes_a_name_for_markup(form):
    """Left to itself Qt shows what looks like HTML as such, and fetches the pictures in it."""
    for widget in ElementTree.parse(form).iter("widget"):
        if widget.get("class") == "QLabel":
            assert said(widget, "textFormat") == "Qt::PlainText", widget.get("name")
        assert said(widget, "openExternalLinks") is None, widget.get("name")


def test_boxes_are_shown_and_texts_set_in_one_plain_way():
    """told.show_box leaves no markup; nothing else shows a box, and nothing is set as HTML."""
    gui = FORMS[0].parents[2] / "veneerwb/gui"
    shown = re.compile(r"QMessageBox\.\w+\(|QMessageBox, |\.(setHtml|insertHtml|setMarkdown)\(")
    using = {path.name for path in gui.rglob("*.py") if shown.search(path.read_text("utf-8"))}
    assert using == {"told.py"}

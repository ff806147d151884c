# SPDX-License-Identifier: LGPL-2.1-or-later
"""The forms in resources/ui, as far as their files tell."""

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

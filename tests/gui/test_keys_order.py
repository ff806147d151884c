# SPDX-License-Identifier: LGPL-2.1-or-later
"""Tab walks through every form as one reads it: from above, and from left to right in a row."""

from pathlib import Path
from xml.etree import ElementTree

import pytest
from PySide import QtCore, QtGui

from veneerwb.gui import resources

FORMS = sorted(Path(resources("ui")).glob("*.ui"))
WIDTH, HEIGHT = 800, 900
"""Pixels in which a form is laid out: wide enough for all windows."""
INPUTS = (
    "Button", "CheckBox", "ComboBox", "LineEdit", "SpinBox", "Slider", "ListWidget", "TableWidget",
    "TabWidget",
)  # fmt: skip


def name_of(widget):
    """As its form calls it; what a widget of the host's is made of belongs to that."""
    if isinstance(widget, QtGui.QTabBar):
        return widget.parentWidget().objectName()
    return widget.objectName()


def stops(form, known):
    """The widgets at which Tab stops, in its order."""
    found, one = [], form.nextInFocusChain()
    while one != form:
        stop = one.focusPolicy() & QtCore.Qt.TabFocus and one.focusProxy() is None
        if stop and form.isAncestorOf(one) and name_of(one) in known:
            found.append(one)
        one = one.nextInFocusChain()
    return found


def bring_forward(widget, form):
    """Turns to the pages of tabs on which a widget lies."""
    while widget != form:
        above = widget.parentWidget()
        if isinstance(above, QtGui.QStackedWidget):
            above.setCurrentWidget(widget)
        widget = above


def page_of(widget, form):
    """The page of tabs that a widget lies on, by its name; empty for none."""
    while widget != form:
        above = widget.parentWidget()
        if isinstance(above, QtGui.QStackedWidget):
            return widget.objectName()
        widget = above
    return ""


def place_of(widget, form):
    return QtCore.QRect(widget.mapTo(form, QtCore.QPoint()), widget.size())


def follows(first, second):
    """Whether one goes on from one place to the other in reading: to the right in a row, to a row
    below, or to the top of a column beside."""
    if second.top() > first.center().y():
        return True
    return second.left() >= first.right()


@pytest.mark.parametrize("file", FORMS, ids=lambda file: file.stem)
def test_tab_goes_from_box_to_box_as_they_are_read(user, drawn, file):
    root = ElementTree.parse(file)
    known = {
        one.get("name"): one.get("class") for one in root.iter("widget")
        if one.get("class").endswith(INPUTS)
    }  # fmt: skip
    with drawn(file) as form:
        form.resize(WIDTH, HEIGHT)
        form.show()
        way = []
        for widget in stops(form, known):
            bring_forward(widget, form)
            QtGui.QApplication.processEvents()
            way.append((name_of(widget), page_of(widget, form), place_of(widget, form)))
        reached = [name for name, *_ in way]
        assert sorted(reached) == sorted(known)  # each once
        for (a, page_a, first), (b, page_b, second) in zip(way, way[1:]):
            assert page_a != page_b or follows(first, second), (a, b)


@pytest.mark.parametrize("file", FORMS, ids=lambda file: file.stem)
def test_tab_leaves_every_table(file):
    """A table keeps Tab to itself unless its form says otherwise."""
    for widget in ElementTree.parse(file).iter("widget"):
        if widget.get("class") == "QTableWidget":
            keeps = widget.findtext("property[@name='tabKeyNavigation']/bool")
            assert keeps == "false", widget.get("name")

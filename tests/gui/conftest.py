# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the tests in the window share: a user who types and clicks, a document, leaves, a bundle."""

import time

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.core import sawn_bundle
from veneerwb.host.objects import add_bundle
from veneerwb.host.objects.base import kind_of

WAIT = 20.0


class User:
    """Runs commands and uses the widgets that are seen, as far as a script can."""

    def wait_for(self, predicate, what):
        until = time.monotonic() + WAIT
        while not predicate():
            assert time.monotonic() < until, f"waited in vain: {what}"
            QtGui.QApplication.processEvents()

    def visible(self, kind, name=""):
        """The widgets of that kind (and name) that are seen now. Not by findChildren: the window's
        Python name would keep theirs for ever, and Qt for Python would give them to later widgets
        at the same places in memory."""
        return [
            one
            for one in QtGui.QApplication.allWidgets()
            if isinstance(one, kind) and name in ("", one.objectName()) and one.isVisible()
        ]

    def open_panel(self, command, first):
        """Runs the command and waits until the widget named `first` is seen."""
        assert FreeCADGui.Command.get(command).isActive()
        FreeCADGui.runCommand(command)
        self.wait_for(lambda: self.visible(QtGui.QWidget, first), "the panel opens")

    def double_click(self, obj, first):
        """What the host does for a double click in the tree."""
        obj.ViewObject.Proxy.doubleClicked(obj.ViewObject)
        self.wait_for(lambda: self.visible(QtGui.QWidget, first), "the panel opens")

    def box(self, name):
        (found,) = self.visible(QtGui.QWidget, name)
        return found

    def fill(self, name, text):
        widget = self.box(name)
        if isinstance(widget, QtGui.QComboBox):
            index = widget.findData(text)
            if index < 0 and widget.isEditable():
                widget.setEditText(text)
                widget.lineEdit().editingFinished.emit()  # as when the keyboard leaves it
                return
            assert index >= 0, f"{name} has no {text}"
            widget.setCurrentIndex(index)
        elif isinstance(widget, QtGui.QLineEdit):
            widget.clear()
            widget.insert(text)
            widget.editingFinished.emit()
        elif isinstance(widget, QtGui.QCheckBox):
            widget.setChecked(text)
        else:
            line = widget.findChild(QtGui.QLineEdit)
            line.selectAll()
            for letter in text:
                line.insert(letter)

    def press(self, button):
        (buttons,) = [b for b in self.visible(QtGui.QDialogButtonBox) if b.button(button)]
        buttons.button(button).click()
        QtGui.QApplication.processEvents()

    def close(self):
        self.press(QtGui.QDialogButtonBox.Close)

    def ok(self):
        self.press(QtGui.QDialogButtonBox.Ok)

    def cancel(self):
        self.press(QtGui.QDialogButtonBox.Cancel)

    def escape(self, widget):
        key, plain = QtCore.Qt.Key_Escape, QtCore.Qt.NoModifier
        event = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, key, plain)
        QtGui.QApplication.sendEvent(widget, event)

    def click(self, widget, row):
        """The mouse on a row of a list."""
        index = widget.model().index(row, 0)
        widget.scrollTo(index)
        place = QtCore.QPointF(widget.visualRect(index).center())
        everywhere = QtCore.QPointF(widget.viewport().mapToGlobal(place.toPoint()))
        left, none = QtCore.Qt.LeftButton, QtCore.Qt.NoButton
        for kind, held in (
            (QtCore.QEvent.MouseButtonPress, left),
            (QtCore.QEvent.MouseButtonRelease, none),
        ):
            event = QtGui.QMouseEvent(
                kind, place, everywhere, left, held, QtCore.Qt.NoModifier
            )
            QtGui.QApplication.sendEvent(widget.viewport(), event)

    def answer_yes(self):
        """Presses Yes in the next question that the host asks, which stops everything else."""

        def look():
            asked = QtGui.QApplication.activeModalWidget()
            if asked is None:
                QtCore.QTimer.singleShot(50, look)
            else:
                asked.button(QtGui.QMessageBox.Yes).click()

        QtCore.QTimer.singleShot(50, look)

    def lines(self, name="findings"):
        """The texts of a list."""
        model = self.box(name).model()
        return [model.index(row, 0).data() for row in range(model.rowCount())]

    def wait_closed(self):
        """Waits until no panel is open; then no undo step may be left open either."""
        self.wait_for(lambda: not FreeCADGui.Control.activeDialog(), "the panel closes")
        assert FreeCAD.getActiveTransaction() is None

    def state(self, doc):
        """All that could be told apart in a document."""
        return {
            obj.Name: {
                name: repr(getattr(obj, name))
                for name in obj.PropertiesList
                if name not in ("Shape", "ShapeMaterial", "Proxy", "ExpressionEngine")
            }
            for obj in doc.Objects
        }

    def only(self, doc, kind):
        """The one object of that kind."""
        (found,) = [obj for obj in doc.Objects if kind_of(obj) == kind]
        return found


@pytest.fixture
def user():
    """The workbench chosen; afterwards no panel and no document is left."""
    FreeCADGui.activateWorkbench("VeneerWorkbench")
    someone = User()
    yield someone
    if FreeCADGui.Control.activeDialog():
        FreeCADGui.Control.closeDialog()
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)
    someone.wait_closed()


@pytest.fixture
def fresh(user):
    """An empty document that counts undo steps."""
    made = FreeCAD.newDocument("Commands")
    made.UndoMode = 1
    return made


@pytest.fixture(scope="session")
def eight_leaves():
    return sawn_bundle(
        leaves=8,
        width=240,
        length=500,
        thickness=0.6,
        mm_per_px=2.0,
        figure="cathedral",
        seed=3,
        knots=0,
    )


@pytest.fixture
def bundle(fresh, eight_leaves):
    made = add_bundle(fresh, eight_leaves)
    fresh.recompute()
    fresh.clearUndos()
    return made

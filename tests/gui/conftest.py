# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the tests in the window share: a user who types and clicks, a document, leaves, a bundle."""

import gc
import os
import time
from contextlib import contextmanager

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from PySide import QtCore, QtGui

from veneerwb.core import sawn_bundle
from veneerwb.core.plane import IDENTITY
from veneerwb.core.renumbering import renumbered
from veneerwb.core.sequence import registered
from veneerwb.gui.panels import base
from veneerwb.host import compat
from veneerwb.host.objects import add_bundle, core_bundle
from veneerwb.host.objects.base import kind_of

WAIT = 20.0


class Hand:
    """The mouse and the keys on a photograph; places are on the picture unless said otherwise."""

    def __init__(self, view):
        self.view = view

    def _mouse(self, kind, at, button, held, keys=QtCore.Qt.NoModifier):
        point = QtCore.QPointF(*at)
        canvas = self.view.canvas
        everywhere = QtCore.QPointF(canvas.mapToGlobal(point.toPoint()))
        event = QtGui.QMouseEvent(kind, point, everywhere, button, held, keys)
        QtGui.QApplication.sendEvent(canvas, event)

    def at(self, place):
        """The nearest whole point of the widget, as a screen's pointer has it."""
        return tuple(float(round(one)) for one in self.view.frame.to_widget(place))

    def move(self, place, held=QtCore.Qt.NoButton):
        event, at = QtCore.QEvent.MouseMove, self.view.frame.to_widget(place)
        self._mouse(event, at, QtCore.Qt.NoButton, held)

    def press(self, place, button=QtCore.Qt.LeftButton):
        self._mouse(QtCore.QEvent.MouseButtonPress, self.at(place), button, button)

    def release(self, place, button=QtCore.Qt.LeftButton):
        none = QtCore.Qt.NoButton
        self._mouse(QtCore.QEvent.MouseButtonRelease, self.at(place), button, none)

    def click(self, place):
        self.press(place)
        self.release(place)

    def double_click(self, place):
        """Press, release, double click, release: what Qt makes of it."""
        at, left = self.at(place), QtCore.Qt.LeftButton
        self.click(place)
        self._mouse(QtCore.QEvent.MouseButtonDblClick, at, left, left)
        self._mouse(QtCore.QEvent.MouseButtonRelease, at, left, QtCore.Qt.NoButton)

    def drag(self, start, end):
        self.drag_widget(self.at(start), self.at(end), QtCore.Qt.LeftButton)

    def drag_widget(self, start, end, button):
        """From one point of the widget to another, in four moves."""
        none = QtCore.Qt.NoButton
        self._mouse(QtCore.QEvent.MouseButtonPress, start, button, button)
        for step in range(1, 5):
            at = tuple(a + (b - a) * step / 4 for a, b in zip(start, end))
            self._mouse(QtCore.QEvent.MouseMove, at, none, button)
        self._mouse(QtCore.QEvent.MouseButtonRelease, end, button, none)

    def wheel(self, at, notches, keys=QtCore.Qt.NoModifier):
        """The wheel over a point of the widget."""
        point, canvas = QtCore.QPointF(*at), self.view.canvas
        event = QtGui.QWheelEvent(
            point, QtCore.QPointF(canvas.mapToGlobal(point.toPoint())), QtCore.QPoint(),
            QtCore.QPoint(0, 120 * notches), QtCore.Qt.NoButton, keys,
            QtCore.Qt.NoScrollPhase, False,
        )  # fmt: skip
        QtGui.QApplication.sendEvent(canvas, event)

    def leave(self):
        QtGui.QApplication.sendEvent(self.view.canvas, QtCore.QEvent(QtCore.QEvent.Leave))

    def key_down(self, key, keys=QtCore.Qt.NoModifier):
        event = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, key, keys)
        QtGui.QApplication.sendEvent(self.view.canvas, event)

    def key_up(self, key, keys=QtCore.Qt.NoModifier):
        event = QtGui.QKeyEvent(QtCore.QEvent.KeyRelease, key, keys)
        QtGui.QApplication.sendEvent(self.view.canvas, event)

    def key(self, key, keys=QtCore.Qt.NoModifier):
        self.key_down(key, keys)
        self.key_up(key, keys)


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

    def presses(self, widget, key):
        """A key on a widget, offered first to the shortcuts as Qt does; it must be taken each
        time."""
        widget.setFocus()
        self.wait_for(widget.hasFocus, "it has the keys")
        for kind in (QtCore.QEvent.ShortcutOverride, QtCore.QEvent.KeyPress):
            event = QtGui.QKeyEvent(kind, key, QtCore.Qt.NoModifier)
            event.ignore()
            QtGui.QApplication.sendEvent(widget, event)
            assert event.isAccepted()

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

    def hand(self, view):
        """The mouse and the keys on a PhotoView."""
        return Hand(view)

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


@pytest.fixture(scope="session", autouse=True)
def plain_views():
    """Nothing in a view but what the document shows: cube, cross and shaded ground take longer to
    draw than all else of a document, and newer hosts turn a view for half a second."""
    group = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/View")
    for name in ("ShowNaviCube", "CornerCoordSystem", "Gradient", "UseNavigationAnimations"):
        group.SetBool(name, False)
    group.SetBool("Simple", True)


@pytest.fixture(scope="module", autouse=True)
def little_to_collect():
    """A panel that closes collects what hangs in circles; what was there before these tests is not
    looked through again each time."""
    gc.collect()
    gc.freeze()


@pytest.fixture
def drawn():
    """`with drawn(file) as form`: what a file draws. Nothing of it is left afterwards, or each
    style sheet would take longer to set than the one before."""

    @contextmanager
    def drawn(file):
        form = FreeCADGui.UiLoader().load(os.fspath(file))
        try:
            yield form
        finally:
            form.close()
            form.deleteLater()
            compat.forget(form)
            QtCore.QCoreApplication.sendPostedEvents(None, QtCore.QEvent.DeferredDelete)

    return drawn


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


# --- a bundle to prove -------------------------------------------------------------------------


@pytest.fixture(scope="session")
def swapped():
    """Eight leaves, shifted and turned under the camera, leaves 3 and 6 in each other's place; how
    they lay is in `registers` by the numbers that they were given."""
    true = sawn_bundle(
        leaves=8, width=200, length=500, mm_per_px=1.5, figure="burl", seed=5, knots=0,
        disturb={"shift": 8.0, "turn": 1.0},
    )  # fmt: skip
    mixed = renumbered(true, {3: 6, 6: 3})
    lying = {leaf.number: leaf.register for leaf in mixed.leaves}
    return registered(mixed, dict.fromkeys(mixed.numbers, IDENTITY)), lying


@pytest.fixture(scope="session")
def in_document():
    """Puts a core bundle into a document, nothing selected and nothing to undo."""

    def made(doc, bundle):
        made = add_bundle(doc, bundle)
        doc.recompute()
        doc.clearUndos()
        FreeCADGui.Selection.clearSelection()
        return made

    return made


@pytest.fixture
def mixed(fresh, swapped, in_document):
    return in_document(fresh, swapped[0])


@pytest.fixture
def panel(user):
    """The panel that is open, when it is asked for."""
    return lambda: base._shown[0]


@pytest.fixture(scope="session")
def corners_apart():
    """mm rms by which the registers of an object put the corners of the first leaf elsewhere than
    those of `lying`."""

    def made(obj, lying, numbers):
        corners = np.array([(0, 0), (200, 0), (0, 500), (200, 500)])
        found = core_bundle(obj)
        apart = [
            found.register(n, False).apply(corners) - lying[n].apply(corners) for n in numbers
        ]
        return float(np.sqrt(np.mean(np.sum(np.square(apart), axis=2))))

    return made


@pytest.fixture(scope="session")
def grabbed():
    """What a label shows, as plain numbers."""

    def made(label):
        image = QtGui.QImage(label.size(), QtGui.QImage.Format_RGB32)
        label.render(image, QtCore.QPoint())
        return np.frombuffer(bytes(image.constBits()), np.uint8).astype(int)

    return made

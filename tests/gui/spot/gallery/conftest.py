# SPDX-License-Identifier: LGPL-2.1-or-later
"""The tabs below the leaf, and the mouse on the pictures in them."""

import FreeCADGui
import pytest
from PySide import QtCore, QtGui


@pytest.fixture
def tabs(user, spot):
    """The tabs of the window, by their names; `open` shows one as the user does."""
    made = spot.window.added[0]

    def open_tab(tab):
        bar = spot.window.form.tabs
        (k,) = [k for k in range(bar.count()) if bar.widget(k) is tab.form]
        bar.setCurrentIndex(k)
        area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
        user.wait_for(
            lambda: tab.form.isVisible() and area.activeSubWindow().widget() is spot.window.form,
            "the tab is seen",
        )
        return tab

    made.open = open_tab
    return made


@pytest.fixture
def click():
    """The left button on a point of a canvas, and once more for a double click."""

    def made(canvas, at, twice=False):
        point = QtCore.QPointF(*(float(round(one)) for one in at))
        everywhere = QtCore.QPointF(canvas.widget.mapToGlobal(point.toPoint()))
        left, none = QtCore.Qt.LeftButton, QtCore.Qt.NoButton
        kinds = [(QtCore.QEvent.MouseButtonPress, left), (QtCore.QEvent.MouseButtonRelease, none)]
        if twice:
            kinds += [
                (QtCore.QEvent.MouseButtonDblClick, left), (QtCore.QEvent.MouseButtonRelease, none),
            ]  # fmt: skip
        for kind, held in kinds:
            event = QtGui.QMouseEvent(kind, point, everywhere, left, held, QtCore.Qt.NoModifier)
            QtGui.QApplication.sendEvent(canvas.widget, event)
        QtGui.QApplication.processEvents()

    return made


@pytest.fixture
def tile(click):
    """A click on a tile of a gallery, or on its tick."""

    def made(hand, k, twice=False, tick=False):
        from veneerwb.paint.gallery import tick_of

        box = hand.boxes(hand.canvas.size)[k]
        click(hand.canvas, (tick_of(box) if tick else box).middle, twice)

    return made

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Delete in a panel or a window of ours never takes what is selected in the tree."""

import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.host.objects import add_match

KEYS = (QtCore.Qt.Key_Delete, QtCore.Qt.Key_Backspace)


def reaches_the_host(widget, key):
    """Whether a key on a widget is left to the host's shortcuts."""
    event = QtGui.QKeyEvent(QtCore.QEvent.ShortcutOverride, key, QtCore.Qt.NoModifier)
    event.ignore()
    QtGui.QApplication.sendEvent(widget, event)
    return not event.isAccepted()


@pytest.mark.parametrize(
    ("command", "first", "names"),
    [
        ("Veneer_CheckMatch", "findings", ("findings", "match")),
        ("Veneer_Sequence", "prove", ("picture", "follow", "prove")),
        ("Veneer_Particulars", "Species", ("save", "TightSide")),
        ("Veneer_Marks", "marks", ("page", "fit", "grid", "canvas", "look")),
    ],
)
def test_delete_goes_no_further(user, fresh, bundle, command, first, names):
    add_match(fresh, bundle, Diameter=200.0, Ways=4)
    fresh.recompute()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(bundle)
    user.open_panel(command, first)
    for name in names:
        for key in KEYS:
            assert not reaches_the_host(user.box(name), key), name
    assert fresh.getObject(bundle.Name) is not None
    FreeCADGui.activateWorkbench("PartWorkbench")  # which closes what is only looked at
    user.wait_closed()


def test_delete_in_the_tree_is_still_the_hosts(user, fresh, bundle):
    user.open_panel("Veneer_Particulars", "Species")
    assert reaches_the_host(FreeCADGui.getMainWindow(), KEYS[0])
    user.cancel()
    user.wait_closed()

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A window of its own that says how far something is, and stops it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.core.progress import Progress
from veneerwb.host.objects.base import Refused

translate = FreeCAD.Qt.translate
HERE = "VeneerProgress"
AFTER = 500
"""Milliseconds after which the window is shown."""


@contextmanager
def stoppable(title: str, stopped: str = "") -> Iterator[Progress]:
    """What hears the share that is done; it raises Refused, with `stopped` or that nothing was
    changed, when the user has stopped it. Until the window is seen no event comes through, and then
    none but what is meant for it: nobody changes a document that is half made."""
    main = FreeCADGui.getMainWindow()
    shown = QtGui.QProgressDialog(title, translate(HERE, "Stop"), 0, 100, main)
    shown.setWindowTitle(title)
    shown.setWindowModality(QtCore.Qt.ApplicationModal)
    shown.setMinimumDuration(AFTER)
    shown.setValue(0)

    def progress(share: float) -> None:
        shown.setValue(min(99, round(100 * share)))
        if shown.isVisible():
            QtGui.QApplication.processEvents()
        if shown.wasCanceled():
            raise Refused(stopped or translate(HERE, "Stopped; nothing was changed."))

    try:
        yield progress
    finally:
        shown.reset()
        shown.deleteLater()

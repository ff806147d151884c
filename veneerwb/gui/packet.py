# SPDX-License-Identifier: LGPL-2.1-or-later
"""Asking where the packet goes, and writing it with its progress shown."""

from __future__ import annotations

import os
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.gui.panels import fields
from veneerwb.gui.told import show_box
from veneerwb.host.objects.base import Refused
from veneerwb.host.steps import one_step

translate = FreeCAD.Qt.translate
HERE = "VeneerPacket"


def ask(bench: Any) -> str:
    """The folder that the user chooses for the packet of a bench; empty for none."""
    title = translate(HERE, "Folder for the packet")
    start = os.path.dirname(bench.Document.FileName)
    return QtGui.QFileDialog.getExistingDirectory(FreeCADGui.getMainWindow(), title, start)


def refresh_sheets(bench: Any) -> None:
    """Makes the sheets of a bench anew, in one step; says in a window of its own why not."""
    from veneerwb.host import bench as benches

    title = translate(HERE, "Refresh sheets")
    try:
        with one_step(bench.Document, title):
            benches.refresh(bench)
            bench.Document.recompute()
    except Exception as error:
        show_box(title, fields.told(error))


def write_packet(bench: Any) -> None:
    """Asks for a folder, refreshes the sheets and writes the packet; says where it is, or why
    not."""
    from veneerwb.host import bench as benches
    from veneerwb.host import packet

    folder = ask(bench)
    if not folder:
        return
    title, main = translate(HERE, "Write packet"), FreeCADGui.getMainWindow()
    shown = QtGui.QProgressDialog(title, translate(HERE, "Stop"), 0, 100, main)
    shown.setWindowModality(QtCore.Qt.WindowModal)
    shown.setMinimumDuration(500)

    def progress(share: float) -> None:
        shown.setValue(min(99, round(100 * share)))
        QtGui.QApplication.processEvents()
        if shown.wasCanceled():
            raise Refused(translate(HERE, "Stopped; nothing was written."))

    try:
        with one_step(bench.Document, title):
            benches.refresh(bench)
            bench.Document.recompute()
        written = packet.write(bench, folder, progress)
    except Exception as error:
        shown.reset()
        show_box(title, fields.told(error))
        return
    finally:
        shown.deleteLater()
    shown.reset()
    show_box(title, said(written), "warning" if written.left_out else "information")


def said(written: Any) -> str:
    """Where a packet is, and what it lacks."""
    text = translate(HERE, "The packet was written:\n{folder}").format(folder=written.folder)
    if not written.left_out:
        return text
    lacks = translate(HERE, "Left out, as its contents page says:")
    return "\n".join([text, "", lacks, *(f"{one.name}: {one.why}" for one in written.left_out)])

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Asking where the packet goes, and writing it with its progress shown."""

from __future__ import annotations

import os
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtGui

from veneerwb.core.progress import part
from veneerwb.gui.progress import stoppable
from veneerwb.gui.told import in_a_box, show_box
from veneerwb.host import compat
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
    with in_a_box(title), stoppable(title) as progress, one_step(bench.Document, title):
        benches.refresh(bench, progress)
        compat.recompute(bench.Document)


def refresh_in_step(bench: Any) -> None:
    """The same as a part of a step that is open and could not be taken back by itself: so it can be
    stopped until the sheets are drawn and go into the document. Raises what goes wrong."""
    from veneerwb.host import bench as benches

    with stoppable(translate(HERE, "Refresh sheets")) as progress:
        benches.put(benches.drawn(bench, progress))
        compat.recompute(bench.Document)


def write_packet(bench: Any) -> None:
    """Asks for a folder, refreshes the sheets and writes the packet; says where it is, or why
    not."""
    folder = ask(bench)
    if not folder:
        return
    title = translate(HERE, "Write packet")
    with in_a_box(title):
        with one_step(bench.Document, title):
            written = written_anew(bench, folder)
        show_box(title, said(written), "warning" if written.left_out else "information")


def written_anew(bench: Any, folder: str) -> Any:
    """Draws the sheets of a bench, writes the packet with them, and then puts them into the
    document too: what stops before leaves both as they were."""
    from veneerwb.host import bench as benches
    from veneerwb.host import packet

    stopped = translate(HERE, "Stopped; nothing was written.")
    with stoppable(translate(HERE, "Write packet"), stopped) as progress:
        drawn = benches.drawn(bench, part(progress, 0.0, packet.SHEETS))
        written = packet.write(bench, folder, progress, drawn)
        benches.put(drawn)
        compat.recompute(bench.Document)
    return written


def said(written: Any) -> str:
    """Where a packet is, and what it lacks."""
    text = translate(HERE, "The packet was written:\n{folder}").format(folder=written.folder)
    if not written.left_out:
        return text
    lacks = translate(HERE, "Left out, as its contents page says:")
    return "\n".join([text, "", lacks, *(f"{one.name}: {one.why}" for one in written.left_out)])

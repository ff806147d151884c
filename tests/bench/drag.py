# SPDX-License-Identifier: LGPL-2.1-or-later
"""Times a change of placement in the panel that chooses a spot: from the mouse's move until leaf
and top are painted. Run inside FreeCAD's window; what it says goes to the file VENEERWB_REPORT."""

from __future__ import annotations

import os
import statistics
import time
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.core import sawn_bundle
from veneerwb.gui.panels import base
from veneerwb.host.objects import add_bundle, add_match
from veneerwb.host.photos import _read

WAYS, ACROSS, SIDE, MOVES, LONGEST = 24, 1000.0, 800, 120, 2.0
Point = tuple[float, float]
CLOCKS = time.perf_counter, time.process_time, time.thread_time


def pump(seconds: float) -> None:
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        QtGui.QApplication.processEvents()


def mouse(canvas: Any, kind: Any, at: Point, held: Any, button: Any = QtCore.Qt.NoButton) -> None:
    point = QtCore.QPointF(*at)
    everywhere = QtCore.QPointF(canvas.mapToGlobal(point.toPoint()))
    event = QtGui.QMouseEvent(kind, point, everywhere, button, held, QtCore.Qt.NoModifier)
    QtGui.QApplication.sendEvent(canvas, event)


def opened() -> Any:
    """The panel's window, its top SIDE x SIDE pixels of the screen."""
    FreeCADGui.getMainWindow().setGeometry(QtGui.QApplication.primaryScreen().geometry())
    FreeCADGui.activateWorkbench("VeneerWorkbench")
    doc = FreeCAD.newDocument("Drag")
    bundle = add_bundle(doc, sawn_bundle(
        leaves=WAYS, width=600, length=1500, thickness=0.6, mm_per_px=1.0, figure="cathedral",
        seed=3, knots=2,
    ))  # fmt: skip
    add_match(doc, bundle, Ways=WAYS, Diameter=ACROSS)
    doc.recompute()
    FreeCADGui.runCommand("Veneer_ChooseSpot")
    pump(1.0)
    window = base.shown()[0].window
    window.form.tabs.setVisible(False)
    ratio = window.top._live[1].image.width() / window.top.events.size[0]
    window.form.top.setFixedSize(*[round(SIDE / ratio)] * 2)
    pump(1.0)
    return window


def timed(window: Any, start: Point) -> list[tuple[float, ...]]:
    """Seconds of each move of a drag, by each of the clocks."""

    def path(k: int) -> Point:
        return start[0] + k % 40, start[1] - k % 30

    view, left = window.view, QtCore.Qt.LeftButton
    mouse(view.canvas, QtCore.QEvent.MouseButtonPress, start, left, left)
    taken = []
    for k in range(MOVES):
        before, begun = window.top.painted, [clock() for clock in CLOCKS]
        mouse(view.canvas, QtCore.QEvent.MouseMove, path(k), left)
        while window.top.painted == before and time.perf_counter() - begun[0] < LONGEST:
            QtGui.QApplication.processEvents()
        taken.append([clock() - first for clock, first in zip(CLOCKS, begun)])
    mouse(view.canvas, QtCore.QEvent.MouseButtonRelease, path(MOVES - 1), QtCore.Qt.NoButton, left)
    pump(1.5)
    return list(zip(*taken))


def main() -> None:
    window = opened()
    view = window.view
    image = window.top._live[1].image
    read = _read.cache_info().misses
    lines = [f"the top: {image.width()} x {image.height()} pixels, {WAYS} ways"]
    grips = dict(zip(("moved", "turned", "made larger"), view._wedge.grips))
    for name, grip in grips.items():
        start = view.frame.to_widget(view._wedge.corners[grip])
        wall, processor, ours = ([1e3 * one for one in sorted(t)] for t in timed(window, start))
        lines.append(
            f"{name}, {MOVES} times: median {statistics.median(wall):.1f} ms, 95 % under "
            f"{wall[int(0.95 * MOVES)]:.1f} ms by the clock; of the processor "
            f"{statistics.median(processor):.1f} and {processor[int(0.95 * MOVES)]:.1f} ms, "
            f"{statistics.median(ours):.1f} of it in the window's own thread"
        )
    lines.append(f"photographs decoded meanwhile: {_read.cache_info().misses - read}")
    with open(os.environ["VENEERWB_REPORT"], "w", encoding="utf-8") as report:
        report.write("\n".join(lines) + "\n")


main()

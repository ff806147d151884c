# SPDX-License-Identifier: LGPL-2.1-or-later
"""Times a change of placement in the panel that chooses a spot: from the mouse's move until leaf
and top are painted. Run inside FreeCAD's window. The peer paints the same top, and nothing else.
"""

from __future__ import annotations

import statistics
import sys
import time
from pathlib import Path
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.core import sawn_bundle
from veneerwb.gui.panels import base
from veneerwb.host.objects import add_bundle, add_match, layout
from veneerwb.host.photos import _read

sys.path.insert(0, str(Path(__file__).parent))
from bench import OPENCV, opencv, remapped
from table import Row, give, seconds, tell

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


def peer(size: int) -> float | None:
    """Milliseconds of painting the top from the photographs, by OpenCV."""
    if not opencv():
        return None
    laid = layout(FreeCAD.ActiveDocument.getObject("Match"))
    return 1e3 * seconds(lambda: remapped(laid, size / ACROSS, size), 15)


def main() -> None:
    window = opened()
    view = window.view
    image = window.top._live[1].image
    read = _read.cache_info().misses
    tell(f"the top: {image.width()} x {image.height()} pixels, {WAYS} ways")
    theirs = peer(image.width())
    grips = dict(zip(("moved", "turned", "made larger"), view._wedge.grips))
    for name, grip in grips.items():
        start = view.frame.to_widget(view._wedge.corners[grip])
        wall, processor, ours = ([1e3 * one for one in sorted(t)] for t in timed(window, start))
        tell(
            f"{name}: of the processor median {statistics.median(processor):.1f} and 95 % under "
            f"{processor[int(0.95 * MOVES)]:.1f} ms, {statistics.median(ours):.1f} of it in the "
            "window's own thread"
        )
        what = f"wedge {name} in the panel, {WAYS} ways, leaf and top painted"
        give(Row(
            "drag", f"{what}: median of {MOVES}", statistics.median(wall), "ms",
            f"{OPENCV}, the top alone", theirs, "ours <= 33", chosen=name == "moved",
        ))  # fmt: skip
        give(Row("drag", f"{what}: 95 %", wall[int(0.95 * MOVES)], "ms", aim="ours <= 60"))
    tell(f"photographs decoded meanwhile: {_read.cache_info().misses - read}")


main()

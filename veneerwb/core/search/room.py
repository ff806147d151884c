# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which leaves a wedge lies well on, cell by cell of the bundle.

A wedge that truly fits a leaf covers no centre of a cell that lies off it, nor one in a fault that
would be seen; and what is seen of it reaches no fault too thin to hold a centre. So what is ruled
out here is ruled out truly (where the pieces of a top are not alike: for one cut through the stack
that serves all); what is not is checked exactly before it is offered.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from veneerwb.core.appeal.maps import Maps
from veneerwb.core.checks.sufficiency import room_on
from veneerwb.core.raster import Frame, covered
from veneerwb.core.search.stand import plain
from veneerwb.core.search.task import Task

THIN = 0.72
"""Cells: every point lies nearer to the centre of some cell (half a diagonal, 0.707)."""


@dataclass(frozen=True, eq=False)
class Room:
    """Per leaf (first axis, in order of numbers), bool rows x columns on `frame`: cells `off` it,
    cells of its `faults`, and cells by those that are `thin`: no point of these is further than
    THIN cells from one of their centres."""

    frame: Frame
    numbers: tuple[int, ...]
    off: np.ndarray
    faults: np.ndarray
    thin: np.ndarray

    def never(self, windows: list[list[int]], which: str) -> np.ndarray:
        """float32 rows x columns: 1 where a cell bars every one of the windows (leaf numbers)."""
        barred = getattr(self, which)
        index = {n: k for k, n in enumerate(self.numbers)}
        by_window = (barred[[index[n] for n in window]].any(axis=0) for window in windows)
        return np.logical_and.reduce(list(by_window)).astype(np.float32)


def room_of(task: Task, maps: Maps) -> Room:
    """The room that the leaves of a task's bundle have."""
    bundle, frame = task.bundle, maps.frame
    off = np.empty((len(bundle.numbers), *frame.shape), bool)
    faults, thin = np.zeros_like(off), np.zeros_like(off)
    for k, number in enumerate(bundle.numbers):
        onto = bundle.register(number, False).inverse()
        usable = onto.apply_to(room_on(bundle.usable(number), task.margin))
        off[k] = ~covered(usable, frame)
        for fault in bundle.faults(number):
            outline = onto.apply_to(plain(fault.outline))
            faults[k] |= covered(outline, frame)
            if outline.buffer(-0.5 * frame.cell).is_empty:  # may lie between the centres
                thin[k] |= covered(outline.buffer(THIN * frame.cell), frame)
    return Room(frame, bundle.numbers, off, faults, thin)

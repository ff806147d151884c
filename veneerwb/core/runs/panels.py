# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panels of a run: outlines in one plane, numbered as an elevation is read."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations
from typing import Any

from veneerwb.core.errors import VeneerError
from veneerwb.core.listing import all_of, put_in
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.given import LEAST_AREA
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import Motion, Point
from veneerwb.core.top import Top
from veneerwb.words import word

LIKE = 0.01
"""mm: panels whose widths and heights differ by less are of one size."""
MOST_PANELS = 500


@dataclass(frozen=True)
class Panel:
    """One panel: its `number` by elevation, its outline as a `top` about its own middle, and its
    `place`, where in the run's plane (x right, y up, mm) that middle lies. `source` is which of the
    outlines given it is, counted from 0."""

    number: int
    top: Top
    place: Point
    source: int = 0

    @property
    def region(self) -> Region:
        """Its outline in the run's plane."""
        return self.top.region.moved(Motion(dx=self.place[0], dy=self.place[1]))

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Left, low, right, high in the run's plane."""
        return _box(self.top, self.place)

    @property
    def size(self) -> tuple[float, float]:
        left, low, right, high = self.box
        return right - left, high - low


def _box(top: Top, place: Point = (0.0, 0.0)) -> tuple[float, float, float, float]:
    (left, right), (low, high) = (edges.extent(top.edge, turn) for turn in (0.0, 90.0))
    x, y = place
    return left + x, low + y, right + x, high + y


def elevation(outlines: Sequence[Top]) -> tuple[Panel, ...]:
    """Outlines in the run's plane (x right, y up, mm) as panels, numbered in rows from the top,
    each row left to right; VeneerError where there are none, or where two lie over each other.

    A row begins with what lies highest; all whose upper edge lies above its middle belong to it. Of
    a tall panel beside a stack of others, the highest of the stack so makes the first row with it.
    """
    if not 0 < len(outlines) <= MOST_PANELS:
        raise VeneerError(
            "panel-count",
            "A run has 1 to {most} panels, and these are {count}; choose its faces again.",
            most=MOST_PANELS,
            count=len(outlines),
        )
    boxes = [_box(top) for top in outlines]
    left = list(range(len(outlines)))
    order: list[int] = []
    while left:
        row = _row(boxes, left)
        order += row
        left = [k for k in left if k not in row]
    panels = tuple(_panel(n, outlines[k], boxes[k], k) for n, k in enumerate(order, start=1))
    _apart(panels)
    return panels


def _row(boxes: Sequence[tuple[float, ...]], left: Sequence[int]) -> list[int]:
    """Those of the outlines that are left that make the next row, left to right."""
    lead = max(left, key=lambda k: round(boxes[k][3], 3))
    beside = [k for k in left if boxes[k][3] > _middle(boxes[lead])]
    lead = max(beside, key=lambda k: round(_middle(boxes[k]), 3))
    row = [k for k in beside if boxes[k][3] > _middle(boxes[lead])]
    return sorted(row, key=lambda k: (round(boxes[k][0], 3), k))


def _middle(box: tuple[float, ...]) -> float:
    return (box[1] + box[3]) / 2.0


def _panel(n: int, top: Top, box: tuple[float, ...], source: int) -> Panel:
    x, y = (box[0] + box[2]) / 2.0, (box[1] + box[3]) / 2.0
    region = top.region.moved(Motion(dx=-x, dy=-y))
    return Panel(n, Top.of_edges(region.outer, region.holes), (x, y), source)


def _apart(panels: Sequence[Panel]) -> None:
    """Two faces chosen for one place are a slip."""
    areas: dict[int, Any] = {}
    for a, b in combinations(panels, 2):
        if not _near(a.box, b.box):
            continue
        over = _area(a, areas).intersection(_area(b, areas)).area
        if over > LEAST_AREA:
            raise VeneerError(
                "panels-overlap",
                "Panels {a} and {b} lie over each other by {over} mm2; choose each place once.",
                a=a.number,
                b=b.number,
                over=round(over, 1),
            )


def _near(a: tuple[float, ...], b: tuple[float, ...]) -> bool:
    return all(a[k] < b[k + 2] and b[k] < a[k + 2] for k in (0, 1))


def _area(panel: Panel, known: dict[int, Any]) -> Any:
    return known.setdefault(panel.number, panel.region.polygon)


def of_one_size(panels: Sequence[Panel]) -> None:
    """VeneerError names the first panel that differs from the first one, and by how much."""
    wide, high = panels[0].size
    for panel in panels[1:]:
        wider, higher = (a - b for a, b in zip(panel.size, (wide, high)))
        if max(abs(wider), abs(higher)) > LIKE:
            told = word(
                "Panels in sequence are of one size, and panel {panel} is {by} than panel 1 "
                "({width} by {height} mm): make them alike, leave it out, or lay one field over "
                "all of them."
            )
            raise VeneerError(
                "unlike-size",
                word(put_in(told, by=_by(wider, higher))),
                panel=panel.number,
                across=round(abs(wider), 3),
                up=round(abs(higher), 3),
                width=round(wide, 3),
                height=round(high, 3),
            )


def _by(wider: float, higher: float) -> str:
    """How much one panel is larger: "{across} mm wider and {up} mm lower"."""
    across = word("{across} mm wider") if wider > 0.0 else word("{across} mm narrower")
    up = word("{up} mm higher") if higher > 0.0 else word("{up} mm lower")
    return all_of([said for said, by in ((across, wider), (up, higher)) if abs(by) > LIKE])

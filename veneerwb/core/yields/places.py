# SPDX-License-Identifier: LGPL-2.1-or-later
"""What bounds a wedge on all the leaves of a top: usable areas laid over each other, and faults."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from shapely.geometry import MultiPolygon, Polygon
from shapely.ops import unary_union

from veneerwb.core.leaf import Leaves
from veneerwb.core.plane import TOUCH
from veneerwb.core.search.task import Task

EASED = 0.02
"""mm by which faults are taken larger, so that their outlines may be told in fewer corners."""
BENT = 1e-9
"""Share of its convex hull that an area may lack and still be convex: rounding."""


@dataclass(frozen=True, eq=False)
class Place:
    """Where a top that starts with leaf `first` may be cut: the area (shapely, bundle mm) that all
    its leaves have in common, and the faults in it."""

    first: int
    area: MultiPolygon
    faults: tuple[Polygon, ...]
    sheets: tuple[int, ...]
    """Which of `Places.areas` it is made of."""

    @cached_property
    def key(self) -> tuple[Any, ...]:
        """Equal for places that are one but for the leaf."""
        return self.area.wkb, tuple(sorted(fault.wkb for fault in self.faults))

    @cached_property
    def convex(self) -> bool:
        hull = self.area.convex_hull
        return not self.faults and hull.area - self.area.area <= BENT * max(hull.area, 1.0)

    @cached_property
    def marks(self) -> MultiPolygon:
        """Its faults laid over each other, in few corners and hardly larger."""
        marks = unary_union([fault.buffer(EASED) for fault in self.faults]).simplify(EASED)
        return _plain(marks)

    @cached_property
    def lines(self) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Starts and ends (M x 2) of all edges, and which of them are those of faults (bool)."""
        edges = edges_of(self.area)
        whole = np.concatenate([edges, edges_of(self.marks)])
        of_fault = np.arange(len(whole)) >= len(edges)
        return whole[:, 0], whole[:, 1], of_fault


class Places:
    """The places of a bundle or stock; sides of leaves that lie alike are looked at once."""

    def __init__(self, bundle: Leaves, margin: float) -> None:
        self._bundle, self._margin = bundle, margin
        self._known: dict[Any, int] = {}
        self._sheet: dict[tuple[int, bool], int] = {}
        self._common: dict[tuple[int, ...], MultiPolygon] = {}
        self.areas: list[MultiPolygon] = []
        self.faults: list[tuple[Polygon, ...]] = []

    def of(self, task: Task, firsts: Sequence[int] | None = None) -> list[Place]:
        """The places for each first leaf of a task (or those given); where several are one, the
        first of them."""
        found: dict[Any, Place] = {}
        for first in task.firsts if firsts is None else firsts:
            sheets = tuple(sorted({self._index(side) for side in task.used(first)}))
            if sheets not in found:
                area = self._over(sheets)
                marks = {m.wkb: m for k in sheets for m in self.faults[k] if m.intersects(area)}
                found[sheets] = Place(first, area, tuple(marks.values()), sheets)
        different = {}
        for place in found.values():
            different.setdefault(place.key, place)
        return [place for place in different.values() if place.area.area > 1.0]

    def _index(self, side: tuple[int, bool]) -> int:
        if side not in self._sheet:
            number, turned = side
            bundle, usable = self._bundle, self._bundle.usable(number)
            register, faults = bundle.register(number, turned), bundle.faults(number)
            key = (register, usable.wkb, tuple(fault.outline.wkb for fault in faults))
            if key not in self._known:
                self._known[key] = len(self.areas)
                onto = register.inverse()
                room = usable.buffer(TOUCH / 2.0 - self._margin, join_style=2)
                self.areas.append(_plain(onto.apply_to(room)))
                marks = [_plain(onto.apply_to(fault.outline)) for fault in faults]
                self.faults.append(tuple(p for mark in marks for p in mark.geoms))
            self._sheet[side] = self._known[key]
        return self._sheet[side]

    def _over(self, sheets: Sequence[int]) -> MultiPolygon:
        """What the areas of those sheets have in common."""
        key = tuple(sheets)
        if len(key) == 1:
            return self.areas[key[0]]
        if key not in self._common:
            self._common[key] = _plain(self._over(key[:-1]).intersection(self.areas[key[-1]]))
        return self._common[key]


def _plain(area: Any) -> MultiPolygon:
    """The polygons of an area, valid, without slivers."""
    area = area if area.is_valid else area.buffer(0)
    parts = [p for p in getattr(area, "geoms", [area]) if p.geom_type == "Polygon"]
    return MultiPolygon([p for p in parts if p.area > TOUCH])


def edges_of(area: Any) -> np.ndarray:
    """The edges of polygons, M x 2 (start, end) x 2."""
    found = [np.empty((0, 2, 2))]
    for part in () if area.is_empty else getattr(area, "geoms", [area]):
        for ring in (part.exterior, *part.interiors):
            points = np.asarray(ring.coords)[:, :2]
            kept = np.hypot(*np.diff(points, axis=0).T) > TOUCH
            found.append(np.stack([points[:-1], points[1:]], axis=1)[kept])
    return np.concatenate(found)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Joints: the straights and curves along which closed outlines meet."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shapely.geometry import LineString
from shapely.ops import linemerge

from veneerwb.core.outlines.edge import Arc, Edge, Line, Point, Segment
from veneerwb.core.plane import SAGITTA, TOUCH

NEAR = 1e-4
"""mm: how far the straights of two sides of one joint may lie apart."""
SHORT = 0.01
"""mm: what meets over less only touches at a corner."""
BESIDE = 1.0
"""mm: curves that run beside each other for less only cross."""
ROW, ROW_TURN = 10.0 * NEAR, 0.01
"""mm and degrees: sides of straights that differ by less lie in the same row or one beside it."""


@dataclass(frozen=True)
class _Side:
    """One straight of an outline: its owner, its direction and offset, and from where to where it
    runs along that."""

    owner: int
    ux: float
    uy: float
    offset: float
    low: float
    high: float
    forward: bool


def joints(outlines: Sequence[Edge]) -> list[tuple[int, int, LineString]]:
    """Pairs of outlines (by index, the lower first) with the line along which they meet, in the
    order of the pairs. Outlines lie beside each other, so that two that meet run along it in
    opposite directions."""
    found = [*_straight(outlines), *_bent(outlines)]
    return sorted(found, key=lambda one: (*one[:2], *one[2].coords))


def _straight(outlines: Sequence[Edge]) -> list[tuple[int, int, LineString]]:
    back: defaultdict[tuple[int, int], list[_Side]] = defaultdict(list)
    forth: list[_Side] = []
    for side in _sides(outlines):
        if side.forward:
            forth.append(side)
        else:
            back[_row(side)].append(side)
    found = []
    for a in forth:
        for b in (side for row in _rows_about(_row(a)) for side in back.get(row, ())):
            line = _common(a, b) if a.owner != b.owner else None
            if line is not None:
                found.append((min(a.owner, b.owner), max(a.owner, b.owner), line))
    return found


def _sides(outlines: Sequence[Edge]) -> Iterator[_Side]:
    for owner, outline in enumerate(outlines):
        for segment in outline:
            if isinstance(segment, Line) and segment.length > SHORT:
                yield _side(owner, segment.a, segment.b, segment.length)


def _side(owner: int, a: Point, b: Point, length: float) -> _Side:
    ux, uy = (b[0] - a[0]) / length, (b[1] - a[1]) / length
    forward = ux > TOUCH or (abs(ux) <= TOUCH and uy > 0.0)
    if not forward:
        ux, uy = -ux, -uy
    offset = 0.5 * (ux * (a[1] + b[1]) - uy * (a[0] + b[0]))
    low, high = sorted(ux * p[0] + uy * p[1] for p in (a, b))
    return _Side(owner, ux, uy, offset, low, high, forward)


def _row(side: _Side) -> tuple[int, int]:
    """Where sides of about the same straight are kept together."""
    turn = math.degrees(math.atan2(side.uy, side.ux))
    return round(turn / ROW_TURN), math.floor(side.offset / ROW)


def _rows_about(row: tuple[int, int]) -> Iterator[tuple[int, int]]:
    turn, offset = row
    for turned in (-1, 0, 1):
        for shifted in (-1, 0, 1):
            yield turn + turned, offset + shifted


def _common(a: _Side, b: _Side) -> LineString | None:
    """What two sides have in common, if they lie on one straight."""
    low, high = max(a.low, b.low), min(a.high, b.high)
    if high - low <= SHORT:
        return None
    ends = [(a.ux * s - a.uy * a.offset, a.uy * s + a.ux * a.offset) for s in (low, high)]
    apart = max(abs(b.ux * y - b.uy * x - b.offset) for x, y in ends)
    return LineString(ends) if apart <= NEAR else None


def _bent(outlines: Sequence[Edge]) -> Iterator[tuple[int, int, LineString]]:
    """The same along curves; only what is marked a seam can be one."""
    bent = [
        (owner, segment)
        for owner, outline in enumerate(outlines)
        for segment in outline
        if not isinstance(segment, Line) and segment.role == "seam"
    ]
    boxes = [LineString([*s.points(), s.end]).bounds for _, s in bent]
    for k, m in _near_pairs(boxes):
        (i, a), (j, b) = bent[k], bent[m]
        if i != j:
            for line in _common_bent(a, b):
                yield min(i, j), max(i, j), line


def _near_pairs(boxes: Sequence[Sequence[float]]) -> Iterator[tuple[int, int]]:
    """Pairs of boxes that touch, the lower index first; swept from left to right, so that boxes
    all round a ring are not held against each other."""
    order = sorted(range(len(boxes)), key=lambda k: boxes[k][0])
    for place, k in enumerate(order):
        for m in order[place + 1 :]:
            if boxes[m][0] > boxes[k][2] + SAGITTA:
                break
            if _near(boxes[k], boxes[m]):
                yield min(k, m), max(k, m)


def _near(a: Sequence[float], b: Sequence[float]) -> bool:
    return all(a[k] <= b[k + 2] + SAGITTA and b[k] <= a[k + 2] + SAGITTA for k in (0, 1))


def _common_bent(a: Segment, b: Segment) -> list[LineString]:
    if isinstance(a, Arc) and isinstance(b, Arc):
        return _common_arcs(a, b) if (a.sweep > 0.0) != (b.sweep > 0.0) else []
    return _common_curves(a, b)


def _common_arcs(a: Arc, b: Arc) -> list[LineString]:
    """What two arcs have in common, if they lie on one circle, counter-clockwise."""
    a, b = (arc if arc.sweep > 0.0 else arc.reversed() for arc in (a, b))
    if max(math.dist(a.centre, b.centre), abs(a.radius - b.radius)) > NEAR:
        return []
    begin = a.begin + (b.begin - a.begin) % 360.0
    found = []
    for shifted in (begin - 360.0, begin):
        low, high = max(a.begin, shifted), min(a.begin + a.sweep, shifted + b.sweep)
        if math.radians(high - low) * a.radius > SHORT:
            arc = Arc(a.centre, a.radius, low, high - low)
            found.append(LineString([*arc.points(), arc.end]))
    return found


def _common_curves(a: Segment, b: Segment) -> list[LineString]:
    """What two parts of one curve have in common, on a's polygon: both are kept within the sagitta,
    and what only crosses is shorter than BESIDE."""
    band = LineString([*b.points(), b.end]).buffer(2.0 * SAGITTA)
    common = LineString([*a.points(), a.end]).intersection(band)
    merged = linemerge(common) if common.geom_type == "MultiLineString" else common
    return [
        line for line in getattr(merged, "geoms", [merged])
        if isinstance(line, LineString) and line.length > BESIDE
    ]  # fmt: skip

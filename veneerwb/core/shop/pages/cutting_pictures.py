# SPDX-License-Identifier: LGPL-2.1-or-later
"""Small pictures of the cutting plan: a stack from above at each cut, and from the side.

From above they are to one scale each, the grain upright, seen from the face. From the side heights
are not to scale.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from shapely.geometry import Point as ShapelyPoint
from shapely.ops import polylabel

from veneerwb.core.outlines.edge import Arc, straights
from veneerwb.core.plane import Point, polar
from veneerwb.core.shop.cutting.methods import Method
from veneerwb.core.shop.cutting.piles import PileCut
from veneerwb.core.shop.cutting.plan import StackPlan
from veneerwb.core.shop.cutting.steps import Step, side_names
from veneerwb.core.shop.drawing.drawn import DASHED, GREY, MEDIUM, RED, THIN, Drawing
from veneerwb.core.shop.drawing.lettering import SMALL, width
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.words import say

KEPT, WOOD, BOARD, STEEL = "#ececec", "#f6e3c0", "#d8d8d8", "#b8c4d0"
PIN = 0.9
"""mm of the paper: half of a pin's dot."""
SCREW = 1.2
"""mm of the paper: half of a screw's head."""
FINE = 0.1
"""mm of the paper that an outline's corners may be left out by."""
MOST_LEAVES = 8
"""Leaves drawn one by one in a stack seen from the side; of more, the first and the last."""


@dataclass(frozen=True)
class View:
    """What takes bundle mm to mm of the paper."""

    factor: float
    at: Point

    @staticmethod
    def of(bounds: Sequence[float], box: Box) -> View:
        """All within `bounds` as large as the box allows, in its middle."""
        x0, y0, x1, y1 = bounds
        factor = min(box.wide / max(x1 - x0, 1.0), box.high / max(y1 - y0, 1.0))
        x, y = box.centre
        return View(factor, (x - factor * (x0 + x1) / 2.0, y - factor * (y0 + y1) / 2.0))

    def point(self, p: Sequence[float]) -> Point:
        return self.at[0] + self.factor * p[0], self.at[1] + self.factor * p[1]

    def area(self, drawing: Drawing, area: Any, weight: float = THIN, fill: str = "",
             dashes: tuple[float, ...] = (), colour: str = "#000000") -> None:  # fmt: skip
        """Every polygon of an area; holes are white where it is filled."""
        for part in getattr(area, "geoms", [area]):
            if part.geom_type != "Polygon" or part.is_empty:
                continue
            for k, ring in enumerate((part.exterior, *part.interiors)):
                points = ring.simplify(FINE / self.factor).coords[:-1]
                edge = straights([self.point(p) for p in points])
                drawing.edge(edge, weight, dashes, colour,
                             fill and (fill if k == 0 else "#ffffff"))


def all_of(stack: StackPlan) -> tuple[float, ...]:
    """The bounds of boards and cuts (bundle mm), also where these do not lie on the leaves."""
    both = zip(stack.board.bounds, stack.pile.outlines.bounds)
    return tuple(f(pair) for f, pair in zip((min, min, max, max), both))


def dot(drawing: Drawing, at: Point, radius: float = PIN, fill: str = "#000000") -> None:
    drawing.edge((Arc(at, radius, 0.0, 360.0),), THIN, fill=fill)


def screw(drawing: Drawing, at: Point) -> None:
    x, y = at
    drawing.edge((Arc(at, SCREW, 0.0, 360.0),), THIN, fill="#ffffff")
    for sign in (1.0, -1.0):
        d = 0.7 * SCREW
        drawing.line((x - d, y - sign * d), (x + d, y + sign * d), MEDIUM)


def blade(drawing: Drawing, line: Sequence[Point]) -> None:
    """The way of a blade, thick and red, an arrow at its end."""
    for a, b in zip(line, line[1:]):
        drawing.line(a, b, 0.7, colour=RED)
    last = next((p for p in reversed(line[:-1]) if math.dist(p, line[-1]) > 1.0), line[0])
    way = math.degrees(math.atan2(line[-1][1] - last[1], line[-1][0] - last[0]))
    ahead = polar(2.5, way)
    drawing.arrow((line[-1][0] + ahead[0], line[-1][1] + ahead[1]), way, RED)


# --- from above -----------------------------------------------------------------------------------


def above(drawing: Drawing, box: Box, stack: StackPlan, step: Step | None, how: Method) -> View:
    """A stack from above: what is kept is grey, what falls is dashed, the cut red."""
    room = 16.0 if step is None and len(stack.pile.cuts) == 1 else 4.0
    view = View.of(all_of(stack), Box(box.x + room, box.y + 4.0, box.wide - 2.0 * room,
                                      box.high - 8.0))
    view.area(drawing, stack.board, THIN, colour=GREY if step is not None else "#000000")
    if step is not None and step.kept is not None:
        if step.falls is not None:
            view.area(drawing, step.falls, MEDIUM, "#ffffff", DASHED)
        view.area(drawing, step.kept, MEDIUM, KEPT)
    for cut in stack.pile.cuts:
        view.area(drawing, cut.outline, THIN if step is not None else MEDIUM)
    if step is not None and step.line:
        if how.key == "knife" and any(hold.by == "straightedge" for hold in step.piece):
            _straightedge(drawing, view, stack, step)
        line = [view.point(p) for p in step.line]
        blade(drawing, line)
        if step.kind == "round":
            _way_round(drawing, line)
        if any(hold.by == "clamps" for hold in step.piece):
            for at in _clamps(stack, step):
                _clamp(drawing, view.point(at), min(1.6, 12.0 * view.factor))
    there = [] if step is None else [a for a in (step.kept, step.falls) if a is not None]
    for place in stack.pins:
        if not there or any(a.buffer(1e-3).covers(ShapelyPoint(place)) for a in there):
            dot(drawing, view.point(place))
    for one in stack.steps if step is None else (step,):
        for place in (p for hold in one.waste if hold.by == "screw" for p in hold.places):
            screw(drawing, view.point(place))
    return view


def _way_round(drawing: Drawing, line: Sequence[Point]) -> None:
    """An arrow outside a closed way, on its right, from where it begins."""
    start = line[0]
    ahead = next((p for p in line if math.dist(p, start) > 1.0), line[-1])
    way = math.degrees(math.atan2(ahead[1] - start[1], ahead[0] - start[0]))
    (dx, dy), (ux, uy) = polar(2.2, way - 90.0), polar(4.5, way)
    tail, tip = (start[0] + dx - ux, start[1] + dy - uy), (start[0] + dx + ux, start[1] + dy + uy)
    drawing.line(tail, tip, MEDIUM, colour=RED)
    drawing.arrow(tip, way, RED)
    drawing.line(start, (start[0] + 1.6 * dx, start[1] + 1.6 * dy), MEDIUM, colour=RED)


def _straightedge(drawing: Drawing, view: View, stack: StackPlan, step: Step) -> None:
    """A strip beside the cut, on the piece."""
    a, b = (view.point(p) for p in (step.line[0], step.line[-1]))
    if math.dist(a, b) < 1.0 or step.kind != "seam":
        return
    middle = stack.pile.outlines.centroid if len(stack.pile.cuts) == 1 else _cut_at(stack, step)
    inside = view.point((middle.x, middle.y))
    side = (b[0] - a[0]) * (inside[1] - a[1]) - (b[1] - a[1]) * (inside[0] - a[0])
    way = math.degrees(math.atan2(b[1] - a[1], b[0] - a[0]))
    off = polar(3.0, way + (90.0 if side > 0.0 else -90.0))
    corners = [a, b, (b[0] + off[0], b[1] + off[1]), (a[0] + off[0], a[1] + off[1])]
    drawing.edge(straights(corners), THIN, fill=STEEL)


def _cut_at(stack: StackPlan, step: Step) -> Any:
    x, y = (sum(p[k] for p in (step.line[0], step.line[-1])) / 2.0 for k in (0, 1))
    here = ShapelyPoint(x, y)
    return min(stack.pile.cuts, key=lambda cut: cut.outline.distance(here)).outline.centroid


def _clamps(stack: StackPlan, step: Step) -> list[Point]:
    """Two places on every piece that is kept, along its longest way."""
    places = []
    for cut in stack.pile.cuts:
        if not step.kept.buffer(1.0).covers(cut.outline):
            continue
        inner = cut.outline.buffer(-0.25 * math.sqrt(cut.outline.area / 6.0))
        inner = cut.outline if inner.is_empty else inner
        inner = max(getattr(inner, "geoms", [inner]), key=lambda part: part.area)
        x, y = inner.centroid.coords[0]
        far = max(inner.exterior.coords, key=lambda p: (round(math.dist(p, (x, y)), 3), p))
        near = inner.representative_point()
        for share in (0.55, -0.35):
            p = (x + share * (far[0] - x), y + share * (far[1] - y))
            places.append(p if inner.covers(ShapelyPoint(p)) else (near.x, near.y))
    return places


def _clamp(drawing: Drawing, at: Point, half: float) -> None:
    x, y = at
    drawing.rectangle(Box(x - half, y - half, 2.0 * half, 2.0 * half), MEDIUM, STEEL)


def chalk(drawing: Drawing, view: View, cut: PileCut, to_tip: bool) -> None:
    """A number and an arrow in the widest place of a cut: towards the tip, the corner furthest from
    there, or up the grain."""
    place = polylabel(cut.outline.simplify(1.0), 5.0)
    turn = 90.0
    if to_tip:
        far = max(cut.outline.exterior.coords, key=lambda p: math.dist(p, (place.x, place.y)))
        turn = math.degrees(math.atan2(far[1] - place.y, far[0] - place.x))
    x, y = view.point((place.x, place.y))
    drawing.text((x, y - SMALL / 2.0), str(cut.positions[0]))
    near, end = polar(3.2, turn), polar(8.0, turn)
    drawing.line((x + near[0], y + near[1]), (x + end[0], y + end[1]), THIN)
    drawing.arrow((x + end[0], y + end[1]), turn)


def named(drawing: Drawing, view: View, stack: StackPlan) -> None:
    """The names of the sides of the cut, beside the boards; of several cuts their numbers."""
    cuts = stack.pile.cuts
    if len(cuts) > 1:
        for k, cut in enumerate(cuts, start=1):
            x, y = view.point(cut.outline.representative_point().coords[0])
            drawing.text((x, y - SMALL / 2.0), str(k))
        return
    names, middle = side_names(cuts[0]), view.point(cuts[0].outline.centroid.coords[0])
    x0, _, x1, _ = all_of(stack)
    edges = {"end": view.point((x0, 0.0))[0] - 2.0, "start": view.point((x1, 0.0))[0] + 2.0}
    placed: dict[str, list[float]] = {"start": [], "end": []}
    tips = [_middle(side.points) for side in cuts[0].sides]
    for tip, name in sorted(zip(map(view.point, tips), names), key=lambda one: -one[0][1]):
        anchor = "end" if tip[0] < middle[0] - 0.5 else "start"
        y = min([tip[1], *(at - 4.5 for at in placed[anchor])])
        placed[anchor].append(y)
        x = edges[anchor]
        drawing.text((x, y - SMALL / 2.0), name, SMALL, anchor)
        drawing.line((x + (0.8 if anchor == "end" else -0.8), y), tip)
        dot(drawing, tip, 0.4)


def _middle(points: Sequence[Point]) -> Point:
    """Half way along a run of points."""
    half = sum(math.dist(a, b) for a, b in zip(points, points[1:])) / 2.0
    for a, b in zip(points, points[1:]):
        long = math.dist(a, b)
        if long >= half:
            share = half / long if long else 0.0
            return a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])
        half -= long
    return points[-1]


# --- from the side --------------------------------------------------------------------------------


def beside(
    drawing: Drawing, box: Box, stack: StackPlan, how: Method, closed: bool = True,
    numbers: bool = True,
) -> None:
    """The first lift from the side, heights not to scale: boards, leaves, pins; with what lies on
    it where it is `closed`."""
    lift = stack.lifts[0]
    shown = lift if len(lift) <= MOST_LEAVES else (*lift[:3], None, *lift[-3:])
    names = [say("leaf {leaf}", leaf=n) if n is not None else "..." for n in shown]
    label = max(width(name, SMALL) for name in names) + 3.0 if numbers else 0.0
    board = 6.0
    room = box.high - 2.0 * board - 8.0
    pitch = min(4.4, room / len(shown))
    left, right = box.x + 2.0, box.right - 2.0 - label
    high = 2.0 * board + pitch * len(shown)
    low = box.y + (box.high - high) / 2.0
    drawing.rectangle(Box(left, low, right - left, board), THIN, BOARD)
    y = low + board
    for name in reversed(names):
        if name != "...":
            drawing.rectangle(
                Box(left + 3.0, y + 0.25 * pitch, right - left - 6.0, 0.5 * pitch), THIN, WOOD)
        if numbers and pitch >= 0.9 * SMALL + 0.7:
            drawing.text((right + 2.0, y + pitch / 2.0 - SMALL / 2.0), name, SMALL, "start")
        y += pitch
    pins = [left + 0.18 * (right - left), left + 0.82 * (right - left)]
    if closed and how.key != "machine":
        thick = board if how.board else 2.0
        drawing.rectangle(Box(left, y, right - left, thick), THIN, BOARD if how.board else STEEL)
        y += thick
    for x in pins:
        drawing.line((x, low + 1.0), (x, y + 2.5), 0.9)
    if closed and how.board:
        for x in (left + 0.08 * (right - left), left + 0.92 * (right - left)):
            drawing.line((x, low + 1.5), (x, y), MEDIUM, (1.0, 0.8))
            drawing.line((x - 1.5, y + 0.3), (x + 1.5, y + 0.3), 0.7)


def leaning(drawing: Drawing, box: Box) -> None:
    """A stack with a blade that leans, exaggerated."""
    low, high = box.y + 0.2 * box.high, box.y + 0.8 * box.high
    middle = box.x + 0.5 * box.wide
    count = 5
    step = (high - low) / count
    for k in range(count):
        y = low + k * step
        edge = middle + (count - k - 1) * 1.6
        drawing.rectangle(Box(box.x + 4.0, y, edge - box.x - 4.0, 0.8 * step), THIN, WOOD)
    drawing.line((middle, high + 2.0), (middle, low - 2.0), THIN, DASHED)
    blade(drawing, [(middle - 0.8, high + 1.5), (middle + (count - 0.5) * 1.6, low)])

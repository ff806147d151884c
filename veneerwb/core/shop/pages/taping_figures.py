# SPDX-License-Identifier: LGPL-2.1-or-later
"""Small pictures of the steps of taping: what lies apart is drawn apart, tape is drawn as a band
along its seam, edges to be trued are red."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from shapely import affinity
from shapely.geometry import Polygon, box
from shapely.ops import polylabel, unary_union

from veneerwb.core.layout import Layout, Piece
from veneerwb.core.matches.radial import Radial
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge, Line, Point
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.shop.drawing.drawn import DASHED, MEDIUM, RED, THICK, THIN, Drawing
from veneerwb.core.shop.drawing.lettering import LARGE, PLAIN, SMALL, width
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.shown import lettered
from veneerwb.core.shop.taping.plan import LAY, TRUE, Step, TapingPlan, named

GAP, LEAST_GAP, GAPS = 3.0, 1.0, 24.0
"""mm between assemblies: at most, at least, and about so much in all."""
MANY = 16
TAPE, BAND = "#e6c58c", 1.6
"""The colour of gum tape, and how wide it is drawn, mm."""
SHORT_OF = 0.1
"""Of a seam's length: by so much tape is drawn short of its ends."""
MADE = "#eef2f4"
CLEAR = 0.35
"""mm between a number and the edge of its piece."""
OUTSIDE = 12.0
"""mm round a picture whose assemblies have their numbers outside."""
LEAD = 1.2
"""mm between a number and the leaf below it."""
SHARES = tuple(k / 20.0 for k in range(18, 8, -1))
MIRROR = Motion(mirrored=True)


@dataclass(frozen=True)
class _Pose:
    """Pieces on paper: by position what takes top mm to mm of the paper, all `factor` times."""

    factor: float
    onto: dict[int, Motion]

    def edge(self, run: Edge, position: int) -> Edge:
        onto = self.onto[position]
        return tuple(segment.scaled(self.factor).moved(onto) for segment in run)

    def point(self, point: Point, position: int) -> Point:
        return self.onto[position].point((self.factor * point[0], self.factor * point[1]))


def draw_step(drawing: Drawing, field: Box, plan: TapingPlan, step: Step) -> None:
    """One step in a field of the paper, mirrored where the plan is for pieces that lie face
    down."""
    layout = plan.layout
    shown = {p for group in step.groups for p in group}
    pieces = [piece for piece in layout.pieces if piece.position in shown]
    pose, rooms, spots = _arranged(field, plan, step, pieces)
    fresh = {p for one in step.made for p in one.positions if step.kind != TRUE}
    for piece in pieces:
        fill = MADE if piece.position in fresh else "#ffffff"
        drawing.edge(pose.edge(piece.edge, piece.position), 0.0, fill=fill)
    if step.kind not in (LAY, TRUE):
        for k in step.closes:
            _tape(drawing, pose, layout, k)
    for piece in pieces:
        _outline(drawing, pose, piece, len(pieces))
    _open_seams(drawing, pose, plan, step, shown)
    for label, at, turn in spots or ():
        label.write(drawing, at, turn)
    if spots is None and len(step.groups) > 1:
        _group_labels(drawing, pose, rooms, step)


def _arranged(
    field: Box, plan: TapingPlan, step: Step, pieces: Sequence[Piece]
) -> tuple[_Pose, list[_Room], _Spots | None]:
    """Where all lies; smaller where assemblies have their numbers outside."""
    for margin in (0.0, OUTSIDE):
        pose = _posed(field.inset(margin), plan, step, pieces)
        rooms = [_room(pose, plan.layout, piece) for piece in pieces]
        spots = _spots(rooms, plan, step)
        if spots is not None:
            break
    return pose, rooms, spots


# --- where pieces lie ---------------------------------------------------------------------------


def _posed(field: Box, plan: TapingPlan, step: Step, pieces: Sequence[Piece]) -> _Pose:
    """Assemblies moved out from the middle until those that will meet are a gap apart, at the
    largest factor at which all fits."""
    home = {p: k for k, group in enumerate(step.groups) for p in group}
    outlines = {piece.position: _coarse(piece.edge) for piece in pieces}
    middles = _middles(step.groups, outlines)
    centre = unary_union(list(outlines.values())).centroid
    away = middles - (centre.x, centre.y)
    normals = _open(plan.layout, home, away)
    gap = min(GAP, max(LEAST_GAP, GAPS / len(step.groups)))
    flip = -1.0 if plan.face_down else 1.0
    corners = np.array([
        unary_union([outlines[p] for p in group]).bounds for group in step.groups
    ]).reshape(-1, 2, 2) * (flip, 1.0)  # fmt: skip
    away = away * (flip, 1.0)
    factor, k = 0.0, 0.0
    for _ in range(20):  # the gap is in mm of the paper: share and factor settle soon
        lying = (corners + k * away[:, None, :]).reshape(-1, 2)
        low, high = lying.min(axis=0), lying.max(axis=0)
        factor = min((field.wide - 1.0) / (high - low)[0], (field.high - 1.0) / (high - low)[1])
        if not normals or abs(k - gap / (factor * min(normals))) < 1e-9:
            break
        k = gap / (factor * min(normals))
    cx, cy = np.array(field.centre) - factor * (low + high) / 2.0
    turned = MIRROR if plan.face_down else IDENTITY
    moves = {p: factor * k * away[home[p]] for p in outlines}
    return _Pose(factor, {
        p: Motion(dx=float(cx + dx), dy=float(cy + dy)) @ turned for p, (dx, dy) in moves.items()
    })  # fmt: skip


@lru_cache(maxsize=2048)
def _coarse(edge: Edge) -> Polygon:
    return edges.polygon(edge, 0.5)


def _middles(
    groups: Sequence[Sequence[int]], outlines: dict[int, Polygon]
) -> np.ndarray:
    found = []
    for group in groups:
        areas = np.array([outlines[p].area for p in group])
        spots = np.array([outlines[p].centroid.coords[0] for p in group])
        found.append((areas[:, None] * spots).sum(axis=0) / areas.sum())
    return np.array(found)


def _open(layout: Layout, home: dict[int, int], away: np.ndarray) -> list[float]:
    """For each seam between two assemblies by how many mm its sides part for each share that they
    are moved out; those that do not part (one lies round the other) left out."""
    found = []
    for seam in layout.seams:
        if seam.a in home and seam.b in home and home[seam.a] != home[seam.b]:
            (ax, ay), (bx, by) = np.asarray(seam.line.coords)[[0, -1]]
            long = math.hypot(bx - ax, by - ay)
            dx, dy = away[home[seam.a]] - away[home[seam.b]]
            parts = abs(dx * (ay - by) + dy * (bx - ax)) / long if long else 0.0
            if parts > 0.05 * math.hypot(dx, dy) and len(seam.line.coords) == 2:
                found.append(parts)
    return found


# --- lines --------------------------------------------------------------------------------------


def _outline(drawing: Drawing, pose: _Pose, piece: Piece, count: int) -> None:
    """The rim thicker than the seams."""
    for run in (piece.edge, *piece.holes):
        for segment in run:
            thin = segment.role == "seam"
            weight = (THIN if thin else MEDIUM) * (0.7 if count > MANY and thin else 1.0)
            drawing.edge(pose.edge((segment,), piece.position), weight)


def _seam_lines(pose: _Pose, layout: Layout, seam: int, position: int) -> list[Point]:
    return [pose.point(p, position) for p in layout.seams[seam].line.coords]


def _tape(drawing: Drawing, pose: _Pose, layout: Layout, seam: int) -> None:
    line = layout.seams[seam].line
    long = line.length
    points = [line.interpolate(share * long) for share in _shares(line.coords)]
    on = [pose.point((p.x, p.y), layout.seams[seam].a) for p in points]
    drawing.edge(tuple(map(Line, on, on[1:])), BAND, colour=TAPE)


def _shares(coords: Sequence[Point]) -> list[float]:
    count = 1 if len(coords) == 2 else 12
    return [SHORT_OF + (1.0 - 2.0 * SHORT_OF) * k / count for k in range(count + 1)]


def _open_seams(
    drawing: Drawing, pose: _Pose, plan: TapingPlan, step: Step, shown: set[int]
) -> None:
    """Edges that are trued in the step, red on both sides; and a last seam that lies open within
    one run, dashed."""
    layout = plan.layout
    if step.kind == TRUE:
        for k in step.closes:
            for position in (layout.seams[k].a, layout.seams[k].b):
                on = _seam_lines(pose, layout, k, position)
                drawing.edge(tuple(map(Line, on, on[1:])), THICK, colour=RED)
        return
    done = {*step.closes, *step.closed}
    home = {p: k for k, group in enumerate(step.groups) for p in group}
    for k, seam in enumerate(layout.seams):
        if k not in done and seam.a in shown and home.get(seam.a) == home.get(seam.b):
            on = _seam_lines(pose, layout, k, seam.a)
            drawing.edge(tuple(map(Line, on, on[1:])), THICK, DASHED, RED)


# --- numbers ------------------------------------------------------------------------------------


@dataclass(frozen=True)
class _Label:
    """What stands in a piece, about its middle: the position, `high` mm, underlined where it is
    marked, and its leaf below it where there is one to be named."""

    position: int
    high: float
    marked: bool = False
    leaf: str = ""

    @property
    def size(self) -> tuple[float, float]:
        wide = max(width(str(self.position), self.high), width(self.leaf, SMALL))
        more = 0.3 * self.high if self.marked else 0.0
        return wide, self.high + (more + SMALL + LEAD if self.leaf else more)

    def area(self, at: Point, turn: float) -> Polygon:
        wide, high = self.size
        flat = box(at[0] - wide / 2, at[1] - high / 2, at[0] + wide / 2, at[1] + high / 2)
        return affinity.rotate(flat, turn, origin=at)

    def write(self, drawing: Drawing, at: Point, turn: float) -> None:
        up, foot = Motion(turn, *at), self.size[1] / 2.0 - self.high
        drawing.text(up.point((0.0, foot)), str(self.position), self.high, turn=turn)
        if self.marked:
            half, low = width(str(self.position), self.high) / 2.0, foot - 0.25 * self.high
            drawing.line(up.point((-half, low)), up.point((half, low)))
        if self.leaf:
            low = up.point((0.0, -self.size[1] / 2.0))
            drawing.text(low, self.leaf, SMALL, turn=turn)


@dataclass(frozen=True)
class _Room:
    """A piece on paper, where its label may stand."""

    position: int
    inner: Polygon
    tip: Point | None
    middle: Point

    def along(self, share: float) -> Point:
        (ax, ay), (bx, by) = self.tip, self.middle
        return ax + 1.5 * share * (bx - ax), ay + 1.5 * share * (by - ay)

    @property
    def turn(self) -> float:
        return _readable(self.tip, self.middle)


def _readable(a: Point, b: Point) -> float:
    """The direction of a straight, to be read from below or from the right."""
    way = math.remainder(math.degrees(math.atan2(b[1] - a[1], b[0] - a[0])), 180.0)
    return way + 180.0 if way <= -90.0 + 1e-6 else way


_Spots = list[tuple[_Label, Point, float]]


def _spots(rooms: Sequence[_Room], plan: TapingPlan, step: Step) -> _Spots | None:
    """A place for the label of every piece, as large as there is room for: those of wedges on one
    circle, level or along their axes. None where not all have one."""
    known = {piece.position: piece for piece in plan.pieces}
    lay = step.kind == LAY
    for with_leaf in (True, False) if lay else (False,):
        for high in (LARGE, PLAIN, SMALL) if lay else (PLAIN, SMALL):
            labels = [
                _Label(r.position, high, lay and known[r.position].side_up == "back",
                       lettered(known[r.position].leaf) if with_leaf else "")
                for r in rooms
            ]  # fmt: skip
            found = _on_a_circle(rooms, labels) or _each(rooms, labels)
            if found is not None:
                return found
    return None


def _on_a_circle(rooms: Sequence[_Room], labels: Sequence[_Label]) -> _Spots | None:
    if any(room.tip is None for room in rooms):
        return None
    for turned in (False, True):
        for share in SHARES:
            found = [
                (label, room.along(share), room.turn if turned else 0.0)
                for room, label in zip(rooms, labels)
            ]
            if all(r.inner.contains(label.area(*at)) for r, (label, *at) in zip(rooms, found)):
                return found
    return None


def _each(rooms: Sequence[_Room], labels: Sequence[_Label]) -> _Spots | None:
    found = []
    for room, label in zip(rooms, labels):
        at = next((at for at in _places(room) if room.inner.contains(label.area(*at))), None)
        if at is None:
            return None
        found.append((label, *at))
    return found


def _places(room: _Room) -> Iterable[tuple[Point, float]]:
    yield room.middle, 0.0
    if room.inner.area < SMALL**2:
        return
    corners = np.asarray(room.inner.minimum_rotated_rectangle.exterior.coords)
    sides = sorted(zip(corners, corners[1:]), key=lambda side: math.dist(*side))
    if math.dist(*sides[0]) < SMALL:  # a sliver has no room, and its middle takes for ever
        return
    label = polylabel(room.inner, 0.2)
    long = _readable(*(tuple(map(float, p)) for p in sides[-1]))
    for turn in (0.0, long):
        yield (label.x, label.y), turn
        yield room.middle, turn


def _group_labels(drawing: Drawing, pose: _Pose, rooms: Sequence[_Room], step: Step) -> None:
    """Of wedges too narrow for their numbers those of the assemblies, outside the rim along their
    axes."""
    by = {room.position: room for room in rooms}
    whole = unary_union([room.inner for room in rooms])
    middle = whole.centroid
    for group in step.groups:
        inner = unary_union([by[p].inner for p in group])
        way = math.atan2(inner.centroid.y - middle.y, inner.centroid.x - middle.x)
        u = (math.cos(way), math.sin(way))
        far = max(
            (x - middle.x) * u[0] + (y - middle.y) * u[1]
            for part in getattr(inner, "geoms", [inner]) for x, y in part.exterior.coords
        )  # fmt: skip
        text = named(group)
        at = far + 1.6 + width(text, SMALL) / 2.0
        spot = (middle.x + at * u[0], middle.y + at * u[1])
        turn = _readable((middle.x, middle.y), spot)
        drawing.text(Motion(turn, *spot).point((0.0, -SMALL / 2.0)), text, SMALL, turn=turn)


def _room(pose: _Pose, layout: Layout, piece: Piece) -> _Room:
    onto = pose.onto[piece.position]
    whole = onto.apply_to(affinity.scale(_coarse(piece.edge), *[pose.factor] * 2, origin=(0, 0)))
    inner = whole.buffer(-CLEAR)
    if inner.geom_type == "MultiPolygon":
        inner = max(inner.geoms, key=lambda part: part.area)
    how, tip = layout.recipe, None
    if isinstance(how, Radial) and how.strips == 1:
        tip = pose.point(how.centre, piece.position)
    return _Room(piece.position, inner, tip, whole.centroid.coords[0])

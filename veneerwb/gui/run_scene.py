# SPDX-License-Identifier: LGPL-2.1-or-later
"""A run of panels in the 3-D view: each panel's layout where the panel is, with its number, the way
of its grain and the leaf of each piece."""

from __future__ import annotations

import math
from collections.abc import Collection, Iterator
from typing import Any

import FreeCAD
from pivy import coin
from shapely.geometry import Point as ShapelyPoint
from shapely.ops import polylabel

from veneerwb.core.layout import Layout, Piece
from veneerwb.core.outlines.inside import number_places, room_at
from veneerwb.core.plane import Motion, Point, sind
from veneerwb.core.runs import Panel
from veneerwb.core.runs.findings import bundle_seams
from veneerwb.core.runs.grain import grain_of, grain_on
from veneerwb.gui import scene
from veneerwb.host import settings
from veneerwb.host.runs import OnFaces

translate = FreeCAD.Qt.translate
HERE = "VeneerScene"
HEIGHT = 0.06
"""Half the height of a panel's number, as a share of the lesser side of the smallest panel."""
SHAFT = 3.2
"""Half the length of the grain's arrow, in such half heights."""
PANEL, LEAF, LEAF_ROOM = 1.3, 1.1, 0.55
"""Half the height of a panel's and of a leaf's tag, in such half heights; a leaf's takes at most
that share of the room that its piece has there."""
LIFT = 0.03
"""How far the marks lie over the show faces, and over each other, likewise: in the view of a whole
wall less would not keep them apart."""


def drawn(obj: Any, run: OnFaces, seams: bool = True, numbers: bool = True) -> coin.SoSeparator:
    """The nodes that draw a run; `numbers` are those of the panels and of the leaves, underlined
    where a leaf is turned over, with the grain's direction."""
    root, light = coin.SoSeparator(), coin.SoLightModel()
    light.model = coin.SoLightModel.BASE_COLOR
    for node in (light, scene.material(scene.PAPER)):
        root.addChild(node)
    thickness = float(run.laid.bundle.thickness)
    half = HEIGHT * min(min(panel.size) for panel in run.laid.panels)
    for panel, layout, here in _panels(root, obj, run):
        here.addChild(scene.drawn(layout, thickness, seams, False))
        joints = [list(seam.line.coords) for seam in bundle_seams(layout)] if seams else []
        if joints:
            points, counts = [p for line in joints for p in line], [len(line) for line in joints]
            over = thickness + 0.5 * LIFT * half
            lines = scene.lines_at(points, counts, over, settings.shade("JointColour"), 4.0)
            lines.setName("bundle_joint")
            here.addChild(lines)
        if numbers:
            for node in _marks(panel, layout, thickness, half):
                here.addChild(node)
    return root


def _panels(
    root: coin.SoSeparator, obj: Any, run: OnFaces
) -> Iterator[tuple[Panel, Layout, coin.SoSeparator]]:
    """Each panel and its layout with a separator under `root` in which the panel's own coordinates
    are x and y."""
    for panel, layout in zip(run.laid.panels, run.laid.layouts):
        place = run.place(obj, panel)
        here, move = coin.SoSeparator(), coin.SoTransform()
        here.setName(f"panel_{panel.number}")
        move.translation = tuple(place.Base)
        move.rotation = tuple(place.Rotation.Q)
        here.addChild(move)
        root.addChild(here)
        yield panel, layout, here


def _marks(
    panel: Panel, layout: Layout, thickness: float, half: float
) -> Iterator[coin.SoSeparator]:
    """The panel's number, and the way of the grain: once below it, or on each piece where it goes
    several ways. The leaves stand on the arrow, or beside it as high."""
    grain, places = grain_of(layout), number_places(layout)
    place = _free_place(panel)
    if grain is not None:  # on a piece and not on a seam, then
        near = min(panel.size) / 3.0
        place = min(places, key=lambda one: round(math.dist(one, place) / near))
    word = translate(HERE, "panel")
    yield scene.tag(str(panel.number), place, PANEL * half, thickness + LIFT * half, below=word)
    if grain is not None:
        below = half * (PANEL + 0.8 + SHAFT * abs(sind(grain)))
        yield from _arrow((place[0], place[1] - below), grain, half, thickness)
        for piece, there in zip(layout.pieces, places):
            lower = there[0], there[1] - below
            fits = there == place or _holds(piece, lower, LEAF * half / LEAF_ROOM)
            yield _leaf(piece, lower if fits else there, half, thickness)
        return
    for piece, there in zip(layout.pieces, places):
        least = min(0.6 * half, room_at(piece, there) / SHAFT)
        yield from _arrow(there, grain_on(piece), least, thickness)
        yield _leaf(piece, there, half, thickness)


def _holds(piece: Piece, place: Point, room: float) -> bool:
    """Whether a place is in a piece and has so much room there."""
    return piece.outline.contains(ShapelyPoint(place)) and room_at(piece, place) >= room


def _leaf(piece: Piece, place: Point, half: float, thickness: float) -> coin.SoSeparator:
    """The number of a piece's leaf, underlined if that is turned over."""
    high = min(LEAF * half, LEAF_ROOM * room_at(piece, place))
    over, word = thickness + 3 * LIFT * half, translate(HERE, "leaf")
    node = scene.tag(str(piece.leaf), place, high, over, piece.turned, word)
    node.setName(f"leaf_{piece.leaf}")
    return node


def _free_place(panel: Panel) -> Point:
    """The middle of a panel, or where that is no part of it the middle of its widest place."""
    outline = panel.top.polygon_mm
    place = outline.centroid
    if not outline.contains(place):
        place = polylabel(outline.simplify(1.0), 1.0)
    return place.x, place.y


def _arrow(
    middle: Point, grain: float, half: float, thickness: float
) -> Iterator[coin.SoSeparator]:
    """A thin arrow with a head at both ends, light behind dark, so that it is seen on any wood."""
    long, head = SHAFT * half, 0.55 * half
    shape = [
        (-long, 0.0), (long, 0.0),
        (long - head, head), (long, 0.0), (long - head, -head),
        (head - long, head), (-long, 0.0), (head - long, -head),
    ]  # fmt: skip
    onto = Motion(grain, *middle)
    points = onto.apply(shape).tolist()
    for over, colour, width in ((1, scene.PAPER, 5.0), (2, scene.INK, 2.0)):
        yield scene.lines_at(points, [2, 3, 3], thickness + over * LIFT * half, colour, width)


def outlined(obj: Any, run: OnFaces, solids: Collection[int]) -> coin.SoSeparator:
    """Bright outlines of pieces, by their solids counted from 1; of all if there are none."""
    root = coin.SoSeparator()
    thickness = float(run.laid.bundle.thickness)
    for panel, layout, here in _panels(root, obj, run):
        numbers = run.solids_of(panel.number)
        chosen = [p for k, p in zip(numbers, layout.pieces) if not solids or k in solids]
        here.addChild(scene.outlined(chosen, thickness))
    return root


def picked(path: Any) -> tuple[int, int]:
    """The number of the panel on a picked path, and the position on it; noughts for none."""
    for k in range(path.getLength()):
        name = path.getNode(k).getName().getString()
        if name.startswith("panel_"):
            return int(name.removeprefix("panel_")), scene.position_picked(path)
    return 0, 0

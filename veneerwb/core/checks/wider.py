# SPDX-License-Identifier: LGPL-2.1-or-later
"""Have the leaves room for wedges that are cut over? A template that is wider by d turns each edge
of a wedge d / 2 outwards about its tip, which stays where it is on the bundle (plane geometry)."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Any

from shapely import affinity
from shapely.ops import unary_union

from veneerwb.core.checks.finding import Finding
from veneerwb.core.checks.sufficiency import off_leaf, onto_leaf, overhang
from veneerwb.core.layout import Layout, Piece
from veneerwb.core.matches.radial import Radial
from veneerwb.core.plane import TOUCH, sind

STEP = 0.01
"""Degrees: how finely the largest angle that has room is sought."""


def too_wide(layout: Layout, angle: float, margin: float = 0.0) -> list[tuple[Piece, float]]:
    """The pieces of a ring whose leaf has room for its blank, and not for the same one cut to
    `angle` degrees, with the mm by which that reaches off."""
    recipe: Radial = layout.recipe
    turn = (angle - 360.0 / recipe.ways) / 2.0
    if turn <= 0.0:
        return []
    known = {piece.position for piece, _ in off_leaf(layout, margin)}
    found = []
    for piece in layout.pieces:
        if piece.position in known:
            continue
        blank = onto_leaf(piece, layout.bundle).apply_to(_wider(piece, recipe, turn))
        over = overhang(blank, layout.bundle.usable(piece.leaf), margin)
        if over is not None:
            found.append((piece, over))
    return found


def _wider(piece: Piece, recipe: Radial, turn: float) -> Any:
    """A blank whose edges along the wedge's sides are turned outwards; of a wedge of strips only
    the outer two have such edges."""
    turns = [0.0, *(turn * side for side in _sides(piece, recipe))]
    return unary_union([affinity.rotate(piece.blank, t, recipe.centre) for t in turns])


def _sides(piece: Piece, recipe: Radial) -> set[float]:
    """On which sides (1.0: counter-clockwise) a piece has its wedge's side up to the rim."""
    inside = piece.outline.representative_point()
    sides = set()
    edge = piece.edge
    for before, segment, after in zip((edge[-1], *edge), edge, (*edge[1:], edge[0])):
        if segment.role != "seam" or "seam" == before.role == after.role:
            continue
        (ux, uy), (vx, vy) = (
            (x - recipe.centre[0], y - recipe.centre[1]) for x, y in (segment.start, segment.end)
        )
        far = max((ux, uy), (vx, vy), key=lambda end: math.hypot(*end))
        way = math.degrees(math.atan2(far[1], far[0])) - recipe.direction(0)
        aside = math.remainder(way, 360.0 / recipe.ways)  # seams between strips are no sides
        through = abs(ux * vy - uy * vx) <= TOUCH * math.hypot(*far)
        if through and abs(aside) < STEP:
            x, y = inside.x - recipe.centre[0], inside.y - recipe.centre[1]
            sides.add(-1.0 if far[0] * y - far[1] * x > 0.0 else 1.0)
    return sides


def widest(layout: Layout, angle: float, margin: float = 0.0) -> float:
    """The largest angle up to `angle` (degrees, to STEP) for which all those leaves have room."""
    true = 360.0 / layout.recipe.ways
    fits, fails = 0, int((angle - true) / STEP) + 1
    while fails - fits > 1:
        middle = (fits + fails) // 2
        none = not too_wide(layout, true + middle * STEP, margin)
        fits, fails = (middle, fails) if none else (fits, middle)
    return true + fits * STEP


def wider_findings(
    layout: Layout, wedge_angle: float | None, margin: float
) -> Iterator[Finding]:
    """What a template of `wedge_angle` degrees asks of the leaves (nothing of other matches)."""
    if wedge_angle is None or not isinstance(layout.recipe, Radial):
        return
    off = too_wide(layout, float(wedge_angle), margin)
    if not off:
        return
    true = 360.0 / layout.recipe.ways
    positions = tuple(piece.position for piece, _ in off)
    room = widest(layout, float(wedge_angle), margin)
    yield Finding(
        "wider-off-leaf",
        "stop",
        "Cut to {angle} deg the blanks at positions {pieces} reach up to {overhang} mm off the "
        "usable area of their leaves ({leaves}), with a margin of {margin} mm; cut to {true_angle} "
        "deg they fit.",
        "At this spot there is room for {room} deg. Move the wedge, take less oversize or wider "
        "leaves, or make a surer template that needs less over.",
        {
            "angle": float(wedge_angle), "true_angle": true, "room": room, "margin": margin,
            "overhang": max(over for _, over in off),
            "more": 2.0 * layout.top.reach * (sind(wedge_angle / 2.0) - sind(true / 2.0)),
            "pieces": positions, "leaves": tuple(piece.leaf for piece, _ in off),
        },
        positions,
    )  # fmt: skip

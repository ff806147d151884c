# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where in a bundle two pins may stand: in the waste of all cuts, on every leaf, in no fault."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

import numpy as np
from scipy.spatial import ConvexHull, QhullError
from scipy.spatial.distance import pdist, squareform
from shapely.geometry import LineString, box
from shapely.geometry import Point as ShapelyPoint
from shapely.ops import unary_union

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Leaves
from veneerwb.core.plane import Point
from veneerwb.core.shop.cutting.methods import Method
from veneerwb.core.shop.cutting.parts import across, is_left, parted
from veneerwb.core.shop.cutting.piles import Pile

LEAST_APART = 100.0
"""mm: pins nearer than this hardly tell how a leaf is turned."""
EASED = 0.5
"""mm by which outlines of what pins must avoid may be told in fewer corners."""
STEP = 0.5
"""mm: how finely the distance is told that would leave room."""


def board_of(bundle: Leaves, pile: Pile, method: Method) -> Any:
    """The rectangle of a stack's boards (bundle mm): as wide as what its leaves have in common,
    along the grain `method.around` beyond its cuts where the leaves are so long."""
    area = bundle.common_area(pile.stacked)
    if area.is_empty:
        raise VeneerError(
            "leaves-apart",
            "The usable areas of the leaves in stack {stack} do not lie over each other; see how "
            "they are registered.",
            stack=pile.name,
        )
    if not pile.outlines.intersects(area):
        raise VeneerError(
            "cut-off-leaves",
            "What is cut from stack {stack} does not lie on its leaves; move the cut.",
            stack=pile.name,
        )
    x0, y0, x1, y1 = area.bounds
    _, low, _, high = pile.outlines.bounds
    return box(x0, max(y0, low - method.around), x1, min(y1, high + method.around))


def blade_lines(bundle: Leaves, pile: Pile, method: Method) -> list[LineString]:
    """Where a blade that cuts from edge to edge runs through a stack's boards (bundle mm); empty
    for one that stops."""
    if not method.through:
        return []
    board = board_of(bundle, pile, method)
    partings, parts = parted(board, [cut.outline for cut in pile.cuts], method.kerf)
    lines = [across(one.line, one.area) for one in partings]
    for part in parts:
        outline = pile.cuts[part.cut].outline
        straights = [s for side in pile.cuts[part.cut].sides if not side.closed
                     for s in side.straights(outline)]
        lines += [across(s, part.area) for s in straights if is_left(s, outline, EASED)]
    return [LineString(line) for line in lines]


def free_area(bundle: Leaves, pile: Pile, method: Method, margin: float, clear: float) -> Any:
    """Where pins may stand (bundle mm): `margin` mm inside the usable area of every leaf in the
    stack, `clear` mm from every cut, and so far from faults as from the leaf's edge."""
    area = board_of(bundle, pile, method).buffer(-margin, join_style=2)
    faults = []
    for n, turned in pile.laid:
        onto = bundle.register(n, turned).inverse()
        here = onto.apply_to(bundle.usable(n)).buffer(-margin, join_style=2)
        area = area.intersection(here)
        faults += [onto.apply_to(f.outline).buffer(margin) for f in bundle.faults(n)]
    cuts = [cut.outline.buffer(clear) for cut in pile.cuts]
    lines = [line.buffer(clear) for line in blade_lines(bundle, pile, method)]
    barred = unary_union([*cuts, *lines, *faults]).buffer(EASED).simplify(EASED)
    return area.difference(barred)


def two_places(
    bundle: Leaves, pile: Pile, method: Method, margin: float, clear: float
) -> tuple[Point, Point]:
    """The two places furthest apart, the lower one first. Raises VeneerError, with what would do,
    where there are none LEAST_APART mm apart."""
    found = _furthest(free_area(bundle, pile, method, margin, clear))
    if found is not None and math.dist(*found) >= LEAST_APART:
        return found
    raise _no_room(bundle, pile, method, margin, clear)


def _furthest(area: Any) -> tuple[Point, Point] | None:
    parts = [p for p in getattr(area, "geoms", [area]) if p.geom_type == "Polygon" and p.area > 0.0]
    if not parts:
        return None
    corners = np.concatenate([np.asarray(part.exterior.coords)[:-1] for part in parts])
    corners = np.unique(np.round(corners, 3), axis=0)
    try:
        hull = corners[ConvexHull(corners).vertices]
    except QhullError:  # all on a line
        hull = corners
    apart = squareform(pdist(hull))
    a, b = np.unravel_index(int(np.round(apart, 3).argmax()), apart.shape)
    pair = sorted((tuple(hull[a].tolist()), tuple(hull[b].tolist())), key=lambda p: (p[1], p[0]))
    return pair[0], pair[1]


def _no_room(
    bundle: Leaves, pile: Pile, method: Method, margin: float, clear: float
) -> VeneerError:
    """How much less would do: the largest distance, from cuts and from edges alike, with which
    there is room."""
    steps = int(max(margin, clear) / STEP)
    low, high = -1, steps
    while high - low > 1:
        middle = (low + high) // 2
        less = middle * STEP
        pair = _furthest(free_area(bundle, pile, method, min(margin, less), min(clear, less)))
        fits = pair is not None and math.dist(*pair) >= LEAST_APART
        low, high = (middle, high) if fits else (low, middle)
    values = {"stack": pile.name, "margin": margin, "clear": clear, "apart": LEAST_APART}
    if low > 0:
        return VeneerError(
            "no-room-for-pins",
            "In stack {stack} no two pins {apart} mm apart find room {margin} mm inside all leaves "
            "and {clear} mm from the cuts; with {less} mm for both there is room: ask for that, "
            "move the cut, or glue tabs of veneer or card to the ends of every leaf and pin "
            "through them.",
            **values, less=low * STEP,
        )
    return VeneerError(
        "no-room-for-pins",
        "In stack {stack} no two pins {apart} mm apart find room {margin} mm inside all leaves and "
        "{clear} mm from the cuts; move the cut, or glue tabs of veneer or card to the ends of "
        "every leaf and pin through them.",
        **values,
    )


def from_cuts(place: Point, pile: Pile, lines: Sequence[LineString]) -> float:
    """How far a place is from the nearest cut, mm."""
    here = ShapelyPoint(place)
    return min([cut.outline.distance(here) for cut in pile.cuts]
               + [line.distance(here) for line in lines])

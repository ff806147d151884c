# SPDX-License-Identifier: LGPL-2.1-or-later
"""Are the leaves enough: in number, in size at this spot, and free of faults where it will be
seen."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import numpy as np
from shapely.geometry import Point

from veneerwb.core import edge as edges
from veneerwb.core.checks.finding import Finding
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout, Piece
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.radial import LEAST_WAYS, MOST_WAYS, Radial
from veneerwb.core.plane import TOUCH, Motion

STEP = 0.1
"""mm: how finely the largest reach is sought."""


def sufficiency_findings(
    layout: Layout, margin: float, spares: int, hidden: Any = None
) -> list[Finding]:
    return [*_count(layout, spares), *_fit(layout, margin), *_faults(layout, hidden)]


def seen_of(piece: Piece, hidden: Any) -> Any:
    """What of a piece will be seen (shapely, top mm): all of it but what is hidden."""
    return piece.outline if hidden is None else piece.outline.difference(hidden)


def _count(layout: Layout, spares: int) -> Iterator[Finding]:
    used = {piece.leaf for piece in layout.pieces}
    left = sorted(set(layout.bundle.numbers) - used)
    values = {
        "used": len(used),
        "left": len(left),
        "spares": spares,
        "missing": max(0, spares - len(left)),
        "leaves_left": tuple(left),
    }
    if len(left) < spares:
        yield Finding(
            "spares-missing",
            "warn",
            "The top uses {used} leaves and leaves {left} spare where {spares} are asked for.",
            "Take fewer ways, or a bundle with {missing} more.",
            values,
        )
    else:
        yield Finding(
            "leaves-used", "note", "The top uses {used} leaves; {left} stay over.", "", values
        )


def onto_leaf(piece: Piece, bundle: Leaves) -> Motion:
    """Top mm to mm on the piece's own leaf, through the register of the side that shows."""
    return bundle.register(piece.leaf, piece.turned) @ piece.onto_bundle


def room_on(usable: Any, margin: float) -> Any:
    """The usable area less the margin; edges that just touch count as inside."""
    return usable.buffer(TOUCH - margin, join_style=2)


def off_leaf(layout: Layout, margin: float) -> Iterator[tuple[Piece, float]]:
    """The pieces whose blank leaves its leaf's usable area less `margin`, and by how many mm."""
    for piece in layout.pieces:
        usable = layout.bundle.usable(piece.leaf)
        motion = onto_leaf(piece, layout.bundle)
        if _in_rectangle(motion.apply(edges.points(piece.blank_edge)), usable, margin):
            continue
        room = room_on(usable, margin)
        blank = motion.apply_to(piece.blank)
        if not room.covers(blank):
            yield piece, _overhang(blank, room, usable)


def _in_rectangle(corners: np.ndarray, usable: Any, margin: float) -> bool:
    """Whether `usable` is an upright rectangle and holds the corners: quick, and true of most
    leaves."""
    x0, y0, x1, y1 = usable.bounds
    if usable.area < (x1 - x0) * (y1 - y0) * (1.0 - 1e-12):
        return False
    low, high = corners.min(axis=0), corners.max(axis=0)
    inner = margin - TOUCH
    return bool(
        (low >= (x0 + inner, y0 + inner)).all() and (high <= (x1 - inner, y1 - inner)).all()
    )


def _overhang(blank: Any, room: Any, usable: Any) -> float:
    """How far the blank reaches beyond `room` (beyond the usable area where the margin leaves
    none)."""
    area = usable if room.is_empty else room
    points = [Point(p) for p in blank.exterior.coords]
    beyond = blank.difference(area)
    if not beyond.is_empty:  # over a hole or a notch every corner may lie inside
        points.append(beyond.representative_point())
    return max(area.distance(point) for point in points)


def _fit(layout: Layout, margin: float) -> Iterator[Finding]:
    off = list(off_leaf(layout, margin))
    if not off:
        return
    values: dict[str, Any] = {
        "pieces": tuple(piece.position for piece, _ in off),
        "leaves": tuple(piece.leaf for piece, _ in off),
        "overhang": max(over for _, over in off),
        "margin": margin,
    }
    remedy = "Move the wedge."
    if isinstance(layout.recipe, Radial):
        values["reach"] = largest_reach(layout, margin)
        values["ways"] = tuple(fitting_ways(layout, margin))
        reach = "the largest reach is {reach} mm" if values["reach"] else "no size of this top fits"
        ways = (
            "this top fits in {ways} ways" if values["ways"] else "no number of ways fits this top"
        )
        remedy = f"At this spot {reach} and {ways}; or move the wedge."
    yield Finding(
        "off-leaf",
        "stop",
        "The blanks at positions {pieces} reach up to {overhang} mm off the usable area of their "
        "leaves "
        "({leaves}), with a margin of {margin} mm.",
        remedy,
        values,
        values["pieces"],
    )


def _fits(layout: Layout, margin: float) -> bool:
    return next(off_leaf(layout, margin), None) is None


def largest_reach(layout: Layout, margin: float) -> float:
    """The largest reach in mm, to STEP, that this shape of top has at this spot (0 where even a tip
    does not lie on its leaf)."""
    full = layout.top.reach
    fits, fails = 0, int(full / STEP) + 1
    while fails - fits > 1:
        middle = (fits + fails) // 2
        smaller = layout.recipe.lay(layout.bundle, layout.top.scaled(middle * STEP / full))
        fits, fails = (middle, fails) if _fits(smaller, margin) else (fits, middle)
    return fits * STEP


def fitting_ways(layout: Layout, margin: float) -> Iterator[int]:
    """The numbers of ways that fit these leaves with this top at this spot."""
    recipe: Radial = layout.recipe
    for ways in range(LEAST_WAYS, MOST_WAYS + 1):
        try:
            other = recipe.with_ways(ways).lay(layout.bundle, layout.top)
        except VeneerError:
            continue
        if _fits(other, margin):
            yield ways


def _faults(layout: Layout, hidden: Any) -> Iterator[Finding]:
    seen, covered, trimmed = [], [], []
    for piece in layout.pieces:
        faults = layout.bundle.faults(piece.leaf)
        if not faults:
            continue
        motion = onto_leaf(piece, layout.bundle)
        shown, net, blank = (
            motion.apply_to(area)
            for area in (seen_of(piece, hidden), piece.outline, piece.blank)
        )
        for fault in faults:
            if shown.intersection(fault.outline).area > TOUCH:
                seen.append((piece, fault))
            elif net.intersection(fault.outline).area > TOUCH:
                covered.append((piece, fault))
            elif blank.intersection(fault.outline).area > TOUCH:
                trimmed.append((piece, fault))
    if seen:
        yield _fault_finding(
            "fault-seen",
            "stop",
            "Faults ({kinds}) will be seen at positions {pieces} (leaves {leaves}).",
            "Move the wedge, or take other leaves.",
            seen,
        )
    if covered:
        yield _fault_finding(
            "fault-covered",
            "note",
            "Faults ({kinds}) at positions {pieces} (leaves {leaves}) lie where the top will be "
            "covered.",
            "",
            covered,
        )
    if trimmed:
        yield _fault_finding(
            "fault-in-trim",
            "note",
            "Faults ({kinds}) lie in the oversize at positions {pieces} (leaves {leaves}) and go "
            "with the "
            "trim.",
            "",
            trimmed,
        )


def _fault_finding(
    code: str, level: str, template: str, remedy: str, found: list[tuple[Piece, Any]]
) -> Finding:
    pieces = tuple(sorted({piece.position for piece, _ in found}))
    values = {
        "pieces": pieces,
        "leaves": tuple(sorted({piece.leaf for piece, _ in found})),
        "kinds": ", ".join(sorted({fault.kind for _, fault in found})),
    }
    return Finding(code, level, template, remedy, values, pieces)

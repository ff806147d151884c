# SPDX-License-Identifier: LGPL-2.1-or-later
"""Are the leaves enough: in number, in size at this spot, and free of faults where it will be
seen."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Any

import numpy as np
from shapely.geometry import Point

from veneerwb.core.checks.finding import Finding
from veneerwb.core.checks.trials import tried
from veneerwb.core.layout import Layout, Piece
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.radial import LEAST_WAYS, MOST_WAYS, Radial
from veneerwb.core.outlines import edge as edges
from veneerwb.core.plane import TOUCH, Motion
from veneerwb.core.top import Top
from veneerwb.words import marked, word

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
        remedy = marked("Take fewer pieces, or a bundle with {missing} more.")
        if isinstance(layout.recipe, Radial):
            remedy = marked("Take fewer ways, or a bundle with {missing} more.")
        yield Finding(
            "spares-missing",
            "warn",
            "The top uses {used} leaves and leaves {left} spare where {spares} are asked for.",
            remedy,
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
    return _off(layout.pieces, layout.bundle, margin)


def _off(pieces: Sequence[Piece], bundle: Leaves, margin: float) -> Iterator[tuple[Piece, float]]:
    for piece in pieces:
        usable = bundle.usable(piece.leaf)
        motion = onto_leaf(piece, bundle)
        if in_rectangle(motion.apply(edges.points(piece.blank_edge)), usable, margin):
            continue
        over = overhang(motion.apply_to(piece.blank), usable, margin)
        if over is not None:
            yield piece, over


def overhang(outline: Any, usable: Any, margin: float) -> float | None:
    """By how many mm an outline (shapely, leaf mm) reaches off the usable area (where the margin
    leaves nothing of it 0 mm, else off that); None where it lies within the margin."""
    room = room_on(usable, margin)
    if room.covers(outline):
        return None
    return max(_overhang(part, room, usable) for part in getattr(outline, "geoms", [outline]))


def in_rectangle(corners: np.ndarray, usable: Any, margin: float) -> bool:
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


_WOULD_DO = {
    (True, True): marked(
        "At this spot the largest reach is {reach} mm and this top fits in {ways} ways; or move "
        "the wedge."
    ),
    (True, False): marked(
        "At this spot the largest reach is {reach} mm and no number of ways fits this top; or move "
        "the wedge."
    ),
    (False, True): marked(
        "At this spot no size of this top fits and this top fits in {ways} ways; or move the wedge."
    ),
    (False, False): marked(
        "At this spot no size of this top fits and no number of ways fits this top; or move the "
        "wedge."
    ),
}
"""Whether some reach and some number of ways fit a ring's leaves: what is said."""


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
    if isinstance(layout.recipe, Radial):
        values["reach"] = largest_reach(layout, margin)
        values["ways"] = tuple(fitting_ways(layout, margin))
        remedy = _WOULD_DO[bool(values["reach"]), bool(values["ways"])]
    else:
        remedy = _remedy(layout, margin, values)
    yield Finding(
        "off-leaf",
        "stop",
        "The blanks at positions {pieces} reach up to {overhang} mm off the usable area of their "
        "leaves "
        "({leaves}), with a margin of {margin} mm.",
        word(remedy),
        values,
        values["pieces"],
    )


def _remedy(layout: Layout, margin: float, values: dict[str, Any]) -> str:
    """What helps a match of straight pieces: a move, or how much narrower and shorter they must be.
    Fills `values`."""
    if getattr(layout.recipe, "placement", None) is None:  # it has several
        return marked("Move the cuts, or take other leaves.")
    drawn = [edges.moved(piece.blank_edge, piece.onto_bundle) for piece in layout.pieces]
    spans = np.array([[edges.extent(edge, turn) for turn in (0.0, 90.0)] for edge in drawn])
    low, high = spans[:, :, 0].min(axis=0), spans[:, :, 1].max(axis=0)
    room = layout.bundle.common_area(sorted({piece.leaf for piece in layout.pieces}))
    room = room.buffer(-margin, join_style=2)
    if room.is_empty:
        return marked("Take other leaves, or less margin.")
    have = np.array(room.bounds)
    narrower, shorter = (high - low - (have[2:] - have[:2])).tolist()
    over = [narrower > TOUCH, shorter > TOUCH]
    values.update(narrower=max(0.0, narrower), shorter=max(0.0, shorter))
    if any(over):
        return _too_large(layout.recipe, *over)
    across, along = (np.maximum(have[:2] - low, 0) + np.minimum(have[2:] - high, 0)).tolist()
    values.update(across=across, along=along)
    if _fits(_shifted(layout, across, along), margin):
        return marked("Moved by {across} mm across the leaves and {along} mm along them it fits.")
    return marked("Move the cut, or take other leaves.")


def _too_large(recipe: Any, wide: bool, long: bool) -> str:
    """What helps where the cut is too wide, too long or both."""
    free = hasattr(recipe, "width")  # four quarters stay four
    rows = hasattr(recipe, "face")
    if not long:
        return _WIDER[free]
    return _BOTH[free, rows] if wide else _LONGER[rows]


_WIDER = {
    True: marked(
        "What is cut is {narrower} mm too wide for these leaves: take more pieces, or wider "
        "leaves, or make the top smaller."
    ),
    False: marked(
        "What is cut is {narrower} mm too wide for these leaves: take wider leaves, or make the "
        "top smaller."
    ),
}
_LONGER = {
    True: marked(
        "What is cut is {shorter} mm too long for these leaves: lay them end to end, or make the "
        "top smaller."
    ),
    False: marked(
        "What is cut is {shorter} mm too long for these leaves: take longer leaves, or make the "
        "top smaller."
    ),
}
_BOTH = {
    (True, True): marked(
        "What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take "
        "more pieces, or wider leaves, and lay them end to end, or make the top smaller."
    ),
    (True, False): marked(
        "What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take "
        "more pieces, or wider leaves, and take longer leaves, or make the top smaller."
    ),
    (False, True): marked(
        "What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take "
        "wider leaves, and lay them end to end, or make the top smaller."
    ),
    (False, False): marked(
        "What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take "
        "wider leaves, and take longer leaves, or make the top smaller."
    ),
}


def _shifted(layout: Layout, dx: float, dy: float) -> Layout:
    """The same with its cut moved on the bundle."""
    place = layout.recipe.placement
    place = replace(place, x=place.x + dx, y=place.y + dy)
    return replace(layout.recipe, placement=place).lay(layout.bundle, layout.top)


def _fits(layout: Layout, margin: float) -> bool:
    return next(off_leaf(layout, margin), None) is None


def largest_reach(layout: Layout, margin: float) -> float:
    """The largest reach in mm, to STEP, that this shape of top has at this spot (0 where even a tip
    does not lie on its leaf)."""
    full = layout.top.reach
    fits, fails = 0, int(full / STEP) + 1
    while fails - fits > 1:
        middle = (fits + fails) // 2
        fit = _fits_at(layout, middle * STEP / full, margin)
        fits, fails = (middle, fails) if fit else (fits, middle)
    return fits * STEP


def _fits_at(layout: Layout, scale: float, margin: float) -> bool:
    """Whether a smaller top of that shape fits, if it can be laid at all."""
    return _would_fit(layout.recipe, layout.bundle, layout.top.scaled(scale), margin)


def _would_fit(recipe: Radial, bundle: Leaves, top: Top, margin: float) -> bool:
    pieces = tried(recipe, bundle, top)
    return pieces is not None and next(_off(pieces, bundle, margin), None) is None


def fitting_ways(layout: Layout, margin: float) -> Iterator[int]:
    """The numbers of ways that fit these leaves with this top at this spot."""
    for ways in range(LEAST_WAYS, MOST_WAYS + 1):
        if layout.recipe.turn == "book" and ways % 2:
            continue
        if _would_fit(layout.recipe.with_ways(ways), layout.bundle, layout.top, margin):
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
            marked("Faults ({kinds}) will be seen at positions {pieces} (leaves {leaves})."),
            marked("Move the wedge, or take other leaves.")
            if isinstance(layout.recipe, Radial)
            else marked("Move the cut, or take other leaves."),
            seen,
        )
    if covered:
        yield _fault_finding(
            "fault-covered",
            "note",
            marked(
                "Faults ({kinds}) at positions {pieces} (leaves {leaves}) lie where the top will "
                "be covered."
            ),
            "",
            covered,
        )
    if trimmed:
        yield _fault_finding(
            "fault-in-trim",
            "note",
            marked(
                "Faults ({kinds}) lie in the oversize at positions {pieces} (leaves {leaves}) and "
                "go with the trim."
            ),
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
        "kinds": ", ".join(word(kind) for kind in sorted({fault.kind for _, fault in found})),
    }
    return Finding(code, level, template, remedy, values, pieces)

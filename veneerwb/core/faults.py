# SPDX-License-Identifier: LGPL-2.1-or-later
"""Faults drawn, checked and carried through a bundle, and what of each leaf may be used.

Outlines are shapely polygons in mm: of a leaf (as seen from its face), of the photo of one of its
sides, or of the bundle; each function says which. Nothing is changed in place.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Any

import numpy as np
from shapely.geometry import LineString, MultiPolygon, Polygon, box
from shapely.ops import unary_union
from shapely.validation import explain_validity

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Fault, Leaf
from veneerwb.core.photos.background import leaf_on_background
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import TOUCH, choice, positive
from veneerwb.words import marked, word

KINDS = marked("margin"), marked("split"), marked("knot"), marked("patch"), marked("stain")
"""margin: wood at an edge that is not to be used; patch: a repair let into the leaf."""
SMALLEST = 0.01
"""mm2: an area that is smaller is a slip of the hand."""
SPLIT_WIDTH = 3.0
"""mm: how wide a split is taken where only its line was drawn."""
_FINE = 0.5  # pixels: what a leaf's outline may lose when it is simplified


# --- drawing -----------------------------------------------------------------------------------


def along(points: Any, width: float = SPLIT_WIDTH, kind: str = "split") -> Fault:
    """A fault along a line through points, N x 2 in mm, `width` mm wide: a split."""
    line = _points(points)
    if len(line) < 2:
        raise VeneerError(
            "line-too-short", "The line of the {kind} has one point; draw at least two.",
            kind=word(choice("kind of fault", kind, KINDS)),
        )
    wide = positive("width of the fault", width)
    return checked(Fault(LineString(line).buffer(wide / 2, cap_style=3, join_style=2), kind))


def checked(fault: Fault, leaf: Leaf | None = None) -> Fault:
    """The fault, if its kind is one of KINDS and its outline (leaf mm) a sound area; with `leaf`,
    what of it lies on the leaf's photo.

    Raises VeneerError for one that crosses itself, has no area or lies off the leaf.
    """
    kind, outline = choice("kind of fault", fault.kind, KINDS), fault.outline
    if not isinstance(outline, (Polygon, MultiPolygon)) or outline.is_empty:
        raise VeneerError(
            "no-outline", "The {kind} has no outline; draw a closed line round it.", kind=word(kind)
        )
    if not np.isfinite(outline.bounds).all():
        raise VeneerError("not-a-number", "A corner of the {kind} is no number.", kind=word(kind))
    if not outline.is_valid:
        x, y = _crossing(outline)
        raise VeneerError(
            "outline-crosses",
            "The outline of the {kind} crosses or touches itself near x {x}, y {y} mm; draw it "
            "again without crossing.",
            kind=word(kind), x=x, y=y,
        )
    if outline.area < SMALLEST:
        raise VeneerError(
            "no-outline", "The outline of the {kind} encloses nothing; draw it round the fault.",
            kind=word(kind),
        )
    if leaf is None:
        return fault
    here = _cut(leaf, fault)
    if here is None:
        raise VeneerError(
            "fault-off-leaf",
            "The {kind} lies off the photograph of leaf {leaf}; draw it on the leaf.",
            kind=word(kind), leaf=leaf.number,
        )
    return here


def with_faults(leaf: Leaf, faults: Sequence[Fault]) -> Leaf:
    """The leaf with these faults too (leaf mm), each checked and cut at the photo's edge; those
    that it has already are not added again."""
    added: list[Fault] = []
    for fault in (checked(fault, leaf) for fault in faults):
        if not any(_same(fault, other) for other in added):
            added.append(fault)
    return _with(leaf, added)


# --- carrying ----------------------------------------------------------------------------------


def onto_leaf(bundle: Bundle, number: int, fault: Fault) -> Fault:
    """A fault in bundle mm in mm on leaf `number`, by the leaf's register."""
    return replace(fault, outline=bundle.leaf(number).register.apply_to(fault.outline))


def carried(
    bundle: Bundle, faults: Sequence[Fault], numbers: Sequence[int] | None = None
) -> Bundle:
    """The bundle with these faults (bundle mm) on the leaves of those numbers (all by default).

    Where one falls off a leaf's photo that leaf stays without it. Raises VeneerError for an outline
    that is none, and for a leaf that the bundle lacks.
    """
    sound: list[Fault] = []
    for fault in map(checked, faults):  # a register keeps what is sound sound, and two alike alike
        if not any(_same(fault, other) for other in sound):
            sound.append(fault)

    def added(leaf: Leaf) -> Leaf:
        there = [f for f in (_cut(leaf, onto_leaf(bundle, leaf.number, s)) for s in sound) if f]
        return _with(leaf, there)

    return _changed(bundle, numbers, added)


# --- usable area -------------------------------------------------------------------------------


def leaf_outline(photo: Photo) -> Any:
    """The outline of the leaf on the plain background of its photo (shapely polygon, mm on the
    photo). Raises VeneerError where there is none to be found."""
    found = leaf_on_background(photo.pixels, _FINE)
    scale, rows = photo.mm_per_px, photo.shape[0]
    columns, down = np.array(found.exterior.coords).T
    return Polygon(np.column_stack([columns, rows - down]) * scale)


def outlined(leaf: Leaf, outline: Any = None) -> Leaf:
    """The leaf whose usable area is `outline` (shapely polygon, leaf mm), or the outline found on
    the plain background of its photo. Raises VeneerError for one that is no area on the photo."""
    if outline is None:
        return replace(leaf, usable=leaf_outline(leaf.face.image))
    return replace(leaf, usable=_on_photo(leaf, outline))


def trimmed(bundle: Bundle, area: Any, numbers: Sequence[int] | None = None) -> Bundle:
    """The bundle whose leaves of those numbers (all by default) are used only within `area`
    (shapely, bundle mm). Raises VeneerError, naming the leaf, where nothing is left of one."""
    area = checked(Fault(area, "margin")).outline
    return _changed(
        bundle, numbers,
        lambda leaf: _kept(leaf, leaf.usable.intersection(leaf.register.apply_to(area))),
    )


def remains(leaf: Leaf) -> Any:
    """What of the usable area is free of faults (shapely, leaf mm; perhaps in several parts)."""
    return _areas(leaf.usable.difference(unary_union([fault.outline for fault in leaf.faults])))


# --- helpers -----------------------------------------------------------------------------------


def _changed(
    bundle: Bundle, numbers: Sequence[int] | None, change: Callable[[Leaf], Leaf]
) -> Bundle:
    chosen = {bundle.leaf(n).number for n in (bundle.numbers if numbers is None else numbers)}
    leaves = tuple(change(leaf) if leaf.number in chosen else leaf for leaf in bundle.leaves)
    return replace(bundle, leaves=leaves)


def _kept(leaf: Leaf, area: Any) -> Leaf:
    area = _areas(area)
    if area.area < SMALLEST:
        left, low, right, high = leaf.usable.bounds
        raise VeneerError(
            "nothing-left",
            "That leaves nothing of leaf {leaf}, whose usable area is {width} x {length} mm; take "
            "off less.",
            leaf=leaf.number, width=right - left, length=high - low,
        )
    return replace(leaf, usable=area)


def _on_photo(leaf: Leaf, outline: Any) -> Any:
    try:
        return checked(Fault(outline, "margin"), leaf).outline
    except VeneerError as error:
        raise VeneerError(
            "no-usable-area",
            "The outline of leaf {leaf} is no area on its photograph; draw it round the leaf, "
            "without crossing.",
            leaf=leaf.number,
        ) from error


def _points(points: Any) -> np.ndarray:
    """N x 2, without those that repeat the one before, or at the end the first."""
    try:
        found = np.asarray(points, dtype=float).reshape(-1, 2)
    except (TypeError, ValueError):
        found = np.full((1, 2), np.nan)
    if not np.isfinite(found).all():
        raise VeneerError(
            "not-a-number", "A corner of the outline is no number; draw it again."
        )
    apart = np.abs(np.diff(found, axis=0, prepend=found[:1] + 1)).max(axis=1) > TOUCH
    found = found[apart]
    return found[:-1] if len(found) > 1 and np.abs(found[0] - found[-1]).max() <= TOUCH else found


def _crossing(outline: Any) -> tuple[float, float]:
    """Where an outline crosses itself; the middle of it where that is not told."""
    told = re.search(r"\[(\S+) (\S+)\]", explain_validity(outline))
    if told is None:
        left, low, right, high = outline.bounds
        return (left + right) / 2, (low + high) / 2
    return float(told[1]), float(told[2])


def _areas(geometry: Any) -> Any:
    """A geometry without points and lines, of which a cut may leave some."""
    if isinstance(geometry, (Polygon, MultiPolygon)):
        return geometry
    parts = [g for g in getattr(geometry, "geoms", []) if isinstance(g, (Polygon, MultiPolygon))]
    return unary_union(parts) if parts else MultiPolygon()


def _cut(leaf: Leaf, fault: Fault) -> Fault | None:
    """What of a sound fault (leaf mm) lies on the leaf's photo; None for next to nothing."""
    width, length = leaf.size
    left, low, right, high = fault.outline.bounds
    if left >= 0.0 and low >= 0.0 and right <= width and high <= length:
        return fault
    here = _areas(fault.outline.intersection(box(0.0, 0.0, width, length)))
    return None if here.area < SMALLEST else replace(fault, outline=here)


def _with(leaf: Leaf, faults: Sequence[Fault]) -> Leaf:
    """The leaf with those of sound faults that it has not yet."""
    new = [f for f in faults if not any(_same(f, other) for other in leaf.faults)]
    return replace(leaf, faults=(*leaf.faults, *new)) if new else leaf


def _same(one: Fault, other: Fault) -> bool:
    a, b = one.outline, other.outline
    if one.kind != other.kind or abs(a.area - b.area) >= SMALLEST or not a.intersects(b):
        return False
    return a.symmetric_difference(b).area < SMALLEST

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Core values from document objects. All raise VeneerError for what the core would refuse."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from shapely.geometry import Polygon

from veneerwb.core import (
    Bundle,
    Fault,
    Finding,
    Layout,
    Leaf,
    Motion,
    Side,
    Stock,
    Top,
    VeneerError,
    check,
)
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.radial import Placement, Radial
from veneerwb.host.objects.base import kind_of
from veneerwb.host.photos import included

WORDS = ("sequence", "spread")


# --- leaves ------------------------------------------------------------------------------------


def core_leaf(obj: Any) -> Leaf:
    """The leaf that a Leaf object stands for; no picture is decoded."""
    register = Motion(obj.RegisterAngle.Value, obj.RegisterX.Value, obj.RegisterY.Value)
    face = Side(included(obj.Photo, obj.MmPerPx), register, _motion(obj.View, register))
    back = None
    if obj.BackPhoto:
        behind = _motion(obj.BackRegister, register)
        back = Side(included(obj.BackPhoto, obj.BackMmPerPx), behind, _motion(obj.BackView, behind))
    return Leaf(
        obj.Number, face, back, _area(obj.Usable), _faults(obj.FaultOutlines, obj.FaultKinds)
    )


def _motion(numbers: Sequence[float], otherwise: Motion) -> Motion:
    return Motion(*numbers[:3], len(numbers) > 3 and bool(numbers[3])) if numbers else otherwise


def numbers_of(motion: Motion) -> list[float]:
    """A motion as a FloatList: angle, x, y, and 1 if it mirrors."""
    return [motion.angle, motion.dx, motion.dy, float(motion.mirrored)]


def _rings(corners: Sequence[Any]) -> list[Polygon]:
    """Polygons of corners whose third coordinate numbers the ring."""
    rings: dict[int, list[tuple[float, float]]] = {}
    for corner in corners:
        rings.setdefault(round(corner.z), []).append((corner.x, corner.y))
    short = next((ring for ring in rings.values() if len(ring) < 3), None)
    if short:
        raise VeneerError(
            "outline-too-short",
            "An outline on a leaf has only {corners} corners; give at least 3.",
            corners=len(short),
        )
    return [Polygon(rings[k]) for k in sorted(rings)]


def _area(corners: Sequence[Any]) -> Any:
    area = None
    for ring in _rings(corners):
        ring = ring if ring.is_valid else ring.buffer(0)
        area = ring if area is None else area.symmetric_difference(ring)
    return area


def _faults(corners: Sequence[Any], kinds: Sequence[str]) -> tuple[Fault, ...]:
    outlines = [ring if ring.is_valid else ring.buffer(0) for ring in _rings(corners)]
    named = [*kinds, *["fault"] * (len(outlines) - len(kinds))]
    return tuple(
        Fault(outline, kind) for outline, kind in zip(outlines, named) if not outline.is_empty
    )


def core_bundle(obj: Any) -> Bundle:
    """The bundle that a Bundle object stands for; no picture is decoded."""
    leaves = [leaf for leaf in obj.Leaves if kind_of(leaf) == "Leaf"]
    slope = obj.Slope.Value
    return Bundle(
        tuple(core_leaf(leaf) for leaf in leaves),
        obj.Thickness.Value,
        obj.Back,
        slope if slope or obj.SlopeKnown else None,
    )


def core_stock(obj: Any) -> Stock:
    """The stock that a Stock object stands for."""
    return Stock(obj.Width.Value, obj.Length.Value, obj.Leaves, obj.Thickness.Value, obj.Back)


def leaves_of(obj: Any) -> Leaves:
    """The core's bundle or stock of what a Match links to."""
    read = {"Bundle": core_bundle, "Stock": core_stock}.get(kind_of(obj))
    if read is None:
        raise VeneerError("no-bundle", "The match has no bundle; link it to a bundle or a stock.")
    return read(obj)


# --- matches -----------------------------------------------------------------------------------


def order_of(text: str) -> str | tuple[int, ...]:
    """sequence, spread, or the leaf numbers in `text`."""
    word = text.strip().lower() or WORDS[0]
    if word in WORDS:
        return word
    try:
        return tuple(int(part) for part in word.replace(",", " ").replace(";", " ").split())
    except ValueError:
        raise VeneerError(
            "order-unreadable",
            "The order {text!r} cannot be read; write sequence, spread, "
            "or leaf numbers such as 1, 3, 4, 2.",
            text=text,
        ) from None


def recipe(obj: Any) -> Radial:
    """How a Match is laid."""
    placement = None
    if not obj.AutoPlacement:
        placement = Placement(obj.TipX.Value, obj.TipY.Value, obj.Axis.Value)
    return Radial(
        ways=obj.Ways,
        turn=obj.Turn,
        placement=placement,
        first=obj.First,
        order=order_of(obj.Order),
        turned=None if obj.Turned == "auto" else obj.Turned,
        rim=obj.Rim,
        start=obj.Start.Value,
        oversize=obj.Oversize.Value,
    )


def top(obj: Any) -> Top:
    """The top of a Match."""
    if obj.Top == "Polygon":
        return Top.polygon(obj.Sides, obj.AcrossFlats.Value)
    return Top.round(obj.Diameter.Value)


def layout_on(obj: Any, bundle: Leaves) -> Layout:
    """The layout of a Match from `bundle`."""
    return recipe(obj).lay(bundle, top(obj))


def findings(obj: Any, laid: Layout) -> list[Finding]:
    """What the checks find on the layout of a Match."""
    return check(laid, obj.Margin.Value, obj.Spares, obj.WedgeAngle.Value or None)

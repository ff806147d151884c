# SPDX-License-Identifier: LGPL-2.1-or-later
"""Core values from document objects. All raise VeneerError for what the core would refuse."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from shapely.geometry import Point, Polygon

from veneerwb.core import (
    Bundle,
    Fault,
    Finding,
    Layout,
    Leaf,
    Motion,
    Side,
    Stock,
    VeneerError,
    check,
)
from veneerwb.core.faults import carried, trimmed
from veneerwb.core.inventory import Extent, Particulars, extent
from veneerwb.core.leaf import Leaves
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY
from veneerwb.host import outlines
from veneerwb.host.keeping import gone, put_back
from veneerwb.host.kinds import newer
from veneerwb.host.laying import (
    centre_of,
    finished_top,
    order_of,
    place_of,
    place_on_outline,
    radial_recipe,
    recipe,
    shape,
    top,
    top_of,
)
from veneerwb.host.objects.base import kind_of
from veneerwb.host.photos import included

__all__ = [
    "Latest", "bundles_of", "core_bundle", "core_leaf", "core_stock", "extents", "findings",
    "finished_top", "kept_numbers", "layout_on", "leaves_of", "numbers_of", "order_of",
    "particulars", "place_of", "place_on_outline", "plain_bundle", "radial_recipe", "recipe",
    "shape", "through_faults", "top", "top_of",
]  # fmt: skip

FARTHEST = 1e6
"""mm, or degrees: what a document says to lie further off was never on a leaf."""
MOST_RINGS = 500
"""Of the outlines on a leaf: with thousands each recompute would take minutes."""
_REGISTER = ("RegisterAngle", "RegisterX", "RegisterY")


# --- leaves ------------------------------------------------------------------------------------


def core_leaf(obj: Any, even: bool | None = None) -> Leaf:
    """The leaf that a Leaf object stands for, by itself; no picture is decoded.

    `even`: its light is evened by its gains; None: unless a bundle that it is in says no.
    """
    if even is None:
        even = all(_newer(one, "EvenLight", True) for one in bundles_of(obj))
    register = _motion(obj, [getattr(obj, name).Value for name in _REGISTER], IDENTITY)
    image = _image(obj, "Photo", obj.MmPerPx, _newer(obj, "Gains", ()) if even else None)
    face = Side(image, register, _motion(obj, obj.View, register))
    back = None
    if obj.BackPhoto:
        behind = _motion(obj, obj.BackRegister, register)
        gains = _newer(obj, "BackGains", ()) if even else None
        image = _image(obj, "BackPhoto", obj.BackMmPerPx, gains)
        back = Side(image, behind, _motion(obj, obj.BackView, behind))
    return Leaf(
        obj.Number, face, back, _area(obj.Usable), _faults(obj.FaultOutlines, obj.FaultKinds)
    )


def _image(obj: Any, name: str, mm_per_px: float, gains: Any) -> Photo:
    """The photograph that a Leaf object keeps; one that has gone is looked for in the document as
    it was saved."""
    if gone(obj, name) and not put_back(obj, name):
        raise VeneerError(
            "photo-gone",
            "{leaf} has no photograph; choose one in its property {property}, or bring its "
            "leaves in again.",
            leaf=obj.Label, property=name,
        )  # fmt: skip
    return included(getattr(obj, name), mm_per_px, gains)


def _newer(obj: Any, name: str, otherwise: Any) -> Any:
    """A property that older documents lack: views ask for what they show while a document is being
    opened, when not every object of it has been brought up to date."""
    return getattr(obj, name, otherwise)


def bundles_of(obj: Any) -> list[Any]:
    """The Bundle objects that a Leaf object is in."""
    return [one for one in obj.InList if kind_of(one) == "Bundle" and obj in one.Leaves]


def _motion(obj: Any, numbers: Sequence[float], otherwise: Motion) -> Motion:
    if not numbers:
        return otherwise
    if not _near(numbers):
        raise VeneerError(
            "lies-nowhere",
            "{leaf} has a register of numbers that cannot be; undo, or register its bundle again.",
            leaf=obj.Label,
        )
    return Motion(*numbers[:3], len(numbers) > 3 and bool(numbers[3]))


def _near(numbers: Sequence[float]) -> bool:
    """Whether all are numbers, and none of a place further off than any."""
    return all(abs(one) <= FARTHEST for one in numbers)


def numbers_of(motion: Motion) -> list[float]:
    """A motion as a FloatList: angle, x, y, and 1 if it mirrors."""
    return [motion.angle, motion.dx, motion.dy, float(motion.mirrored)]


def _rings(corners: Sequence[Any]) -> list[Polygon]:
    """Polygons of corners whose third coordinate numbers the ring."""
    rings: dict[int, list[tuple[float, float]]] = {}
    if not all(map(_near, corners)):
        raise VeneerError(
            "corner-nowhere",
            "An outline on a leaf has a corner whose place cannot be; undo, or draw it again.",
        )
    for corner in corners:
        rings.setdefault(round(corner.z), []).append((corner.x, corner.y))
    if len(rings) > MOST_RINGS:
        raise VeneerError(
            "too-many-outlines",
            "There are {count} outlines on a leaf, and at most {most} can be kept; leave some out, "
            "or draw one round several.",
            count=len(rings), most=MOST_RINGS,
        )
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
    if area is not None and not area.area > 0.0:
        raise VeneerError(
            "nothing-usable",
            "The outline of what may be used of a leaf encloses nothing; undo, or draw it again.",
        )
    return area


def _faults(
    corners: Sequence[Any], kinds: Sequence[str], otherwise: str = "fault"
) -> tuple[Fault, ...]:
    found = [ring if ring.is_valid else ring.buffer(0) for ring in _rings(corners)]
    named = [*kinds, *[otherwise] * (len(found) - len(kinds))]
    return tuple(
        Fault(outline, kind) for outline, kind in zip(found, named) if not outline.is_empty
    )


class Latest:
    """What was made last for each object, made again only of other things. Things are compared by
    what they hold, so that nobody needs to say when they have changed."""

    MOST = 16

    def __init__(self, make: Callable[..., Any]) -> None:
        self._make = make
        self._made: dict[tuple[str, str], tuple[Any, Any]] = {}

    def of(self, obj: Any, *things: Any) -> Any:
        """What is made of `things`: the same as last time for `obj`, if they are the same."""
        key = obj.Document.Name, obj.Name
        known = self._made.pop(key, None)
        if known is None or known[0] != things:
            known = things, self._make(*things)
        while len(self._made) >= self.MOST:
            del self._made[next(iter(self._made))]
        self._made[key] = known
        return known[1]


def core_bundle(obj: Any) -> Bundle:
    """The bundle that a Bundle object stands for: its faults are on every leaf, and every leaf is
    used only within its outline; no picture is decoded. One object for as long as it is the same.
    """
    shape = _newer(obj, "UsableShape", None)
    area = None if shape is None else outlines.area_of(shape)
    return _WHOLE.of(obj, plain_bundle(obj), through_faults(obj), area)


def _whole(bundle: Bundle, through: tuple[Fault, ...], area: Any) -> Bundle:
    bundle = carried(bundle, through) if through else bundle
    return bundle if area is None else trimmed(bundle, area)


def plain_bundle(obj: Any) -> Bundle:
    """The bundle of a Bundle object's leaves as they are by themselves; one object for as long as
    it is the same."""
    leaves = [leaf for leaf in obj.Leaves if kind_of(leaf) == "Leaf"]
    slope = obj.Slope.Value
    return _PLAIN.of(
        obj,
        tuple(core_leaf(leaf, bool(_newer(obj, "EvenLight", True))) for leaf in leaves),
        obj.Thickness.Value,
        obj.Back,
        slope if slope or obj.SlopeKnown else None,
        _newer(obj, "Edition", 0),
        _wander(obj),
    )


def extents(obj: Any) -> tuple[Extent, Extent]:
    """How much there is of a Bundle object's leaves as they are, and with the faults and the
    outline that are drawn for all: a leaf's width and length are its own."""
    return _EXTENTS.of(obj, plain_bundle(obj), core_bundle(obj))


def kept_numbers(obj: Any) -> tuple[float, ...]:
    """The wander that a Bundle object keeps: across, along, left (mm). Nothing where it is not
    known, or where what somebody wrote there by hand is none."""
    kept = tuple(_newer(obj, "Wander", ()))
    return kept if len(kept) == 3 and _near(kept) else ()


def _wander(obj: Any) -> tuple[Any, ...]:
    """What is kept of a measured wander, what the registers follow, how backs are pinned; nothing
    where it is not known."""
    kept = kept_numbers(obj)
    return (kept, obj.Follows, obj.PinBacks) if kept else ()


def _bundle(
    leaves: tuple[Leaf, ...], thickness: float, back: str, slope: float | None, edition: int,
    wander: tuple[Any, ...],
) -> Bundle:
    bundle = Bundle(leaves, thickness, back, slope, edition)
    if not wander:
        return bundle
    from veneerwb.core.sides.wander import kept_wander

    (across, along, left), follows, pin = wander
    return kept_wander(bundle, (across, along), left, follows, pin)


_PLAIN, _WHOLE = Latest(_bundle), Latest(_whole)
_EXTENTS = Latest(lambda plain, whole: (extent(plain), extent(whole)))


def through_faults(obj: Any) -> tuple[Fault, ...]:
    """The faults that run through a whole bundle (bundle mm): those written down and those drawn.
    """
    corners, kinds = _newer(obj, "FaultOutlines", ()), _newer(obj, "FaultKinds", ())
    written = _faults(corners, kinds, outlines.WHERE_NOT_SAID)
    return written + outlines.faults_of(_newer(obj, "FaultShapes", ()))


def particulars(obj: Any) -> Particulars:
    """What is known of a Bundle object beside its leaves."""
    return Particulars(
        name=obj.Label,
        species=obj.Species,
        cut=obj.Cut,
        thickness=obj.Thickness.Value,
        tight_side=obj.TightSide,
        flitch=obj.Flitch,
        lot=obj.LotMark,
        moisture=obj.Moisture or None,
        cost=obj.Cost or None,
        currency=obj.Currency,
        origin=obj.Origin,
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


def layout_on(obj: Any, bundle: Leaves) -> Layout:
    """The layout of a Match from `bundle`."""
    return recipe(obj, bundle).lay(bundle, top(obj))


def findings(obj: Any, laid: Layout) -> list[Finding]:
    """What the checks find on the layout of a Match."""
    angle = obj.WedgeAngle.Value if newer(obj, "Kind") == "Radial" else 0.0
    return check(laid, obj.Margin.Value, obj.Spares, angle or None, hidden(obj))


def hidden(obj: Any) -> Any:
    """What of the top of a Match will be covered (shapely, top mm); None where nothing is."""
    across = _newer(obj, "HiddenDisc", None)
    return None if across is None else disc(across.Value, centre_of(obj))


def disc(diameter: float, centre: tuple[float, float] = (0.0, 0.0)) -> Any:
    """A disc on a top (shapely, top mm), its corners on the circle; None where it has no size."""
    return Point(centre).buffer(diameter / 2.0, 64) if diameter > 0.0 else None

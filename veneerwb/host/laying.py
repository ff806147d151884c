# SPDX-License-Identifier: LGPL-2.1-or-later
"""How a Match object is laid: the core's recipe and top from its properties, whichever it is.

The point TipX, TipY and the direction Axis are the core's placement in every match: the same point
of the bundle, however the match is changed. In two rings both rings are cut there, the outer one
from the leaves after the inner one's.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from veneerwb.core import Top, VeneerError
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.end import End
from veneerwb.core.matches.placement import Placement
from veneerwb.core.matches.quarters import Quarters
from veneerwb.core.matches.radial import Radial
from veneerwb.core.matches.rings import Rings
from veneerwb.core.matches.side import SideMatch
from veneerwb.host import buildups, sketches
from veneerwb.host.kinds import CUTS, KINDS, TOPS, newer

WORDS = ("sequence", "spread")


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


# --- recipes -----------------------------------------------------------------------------------


def recipe(obj: Any, bundle: Leaves) -> Any:
    """How a Match is laid from `bundle`: a recipe of the core's."""
    kind = newer(obj, "Kind")
    make = {
        "Radial": _radial, "Two rings": _rings, "Side by side": _side, "End match": _end,
    }.get(kind, _quarters)  # fmt: skip
    return make(obj, bundle)


def radial_recipe(obj: Any) -> Radial:
    """The recipe of a match that spots can be chosen for; VeneerError for any other."""
    kind = newer(obj, "Kind")
    if kind != "Radial":
        raise VeneerError(
            "no-spots",
            "Spots are chosen for radial matches, and {match} is another ({kind}); say where it is "
            "cut by the numbers of its panel.",
            match=obj.Label,
            kind=kind.lower(),
        )
    how, size = _radial(obj), obj.Top in ("Round", "Polygon")
    if how.strips > 1 or how.disc or how.centre != (0.0, 0.0) or not size or buildups.built(obj):
        raise VeneerError(
            "no-spots",
            "Spots are chosen for wedges of one leaf on a plain round or many-sided top, and "
            "{match} is more than that; say where it is cut by the numbers of its panel.",
            match=obj.Label,
        )
    return how


def place_of(recipe: Any) -> Placement | None:
    """Where on the bundle a recipe is cut; None: in the middle of the leaves."""
    return recipe.outer.placement if isinstance(recipe, Rings) else recipe.placement


def _radial(obj: Any, bundle: Leaves | None = None) -> Radial:
    return Radial(ways=obj.Ways, rim=obj.Rim, **_common(obj), **_ring(obj), **_tips(obj))


def _rings(obj: Any, bundle: Leaves) -> Rings:
    """The outer ring takes the leaves after the inner one's, or in a list of leaves the rest."""
    common = _common(obj)
    order, after = common["order"], {}
    inner = {"order": order} if isinstance(order, str) else {"order": order[: obj.InnerWays]}
    field = Radial(ways=obj.InnerWays, **{**common, **inner, "oversize": 0.0},
                   **{**_ring(obj), "strips": 1}, **_tips(obj))  # fmt: skip
    if isinstance(order, str):
        used = max(field.leaf_numbers(bundle))
        after["first"] = min(used + 1, max(bundle.numbers))
    else:
        after["order"] = order[obj.InnerWays :]
    band = Radial(ways=obj.Ways, **{**common, **after}, **_ring(obj))
    if not isinstance(order, str):
        _refuse_other_count(len(order), field, band)
    return Rings(field, band, obj.InnerDiameter.Value, cuts=common["cuts"])


def _refuse_other_count(count: int, field: Radial, band: Radial) -> None:
    """The rings share one list, of which either would count its own part only."""
    inner, outer = field.count, band.count
    if count != inner + outer:
        raise VeneerError(
            "wrong-order",
            "Two rings of {inner} and {outer} leaves need a list of {leaves}, those of the inner "
            "ring first; this one has {count}.",
            inner=inner,
            outer=outer,
            leaves=inner + outer,
            count=count,
        )


def _ring(obj: Any) -> dict[str, Any]:
    """What only rings have."""
    return {
        "turn": obj.Turn, "start": obj.Start.Value, "strips": newer(obj, "Strips"),
        "centre": centre_of(obj),
    }  # fmt: skip


def centre_of(obj: Any) -> tuple[float, float]:
    """Where on the top the match has its centre, mm: only rings have it elsewhere than in the
    middle."""
    if "CentreX" not in KINDS[newer(obj, "Kind")]:
        return 0.0, 0.0
    return _mm(obj, "CentreX"), _mm(obj, "CentreY")


def _tips(obj: Any) -> dict[str, Any]:
    return {"disc": _mm(obj, "DiscDiameter")}


def _side(obj: Any, bundle: Leaves) -> SideMatch:
    return SideMatch(
        turn=obj.Turn, face=obj.Face, seed=obj.Seed, **_common(obj), **_strips(obj)
    )  # fmt: skip


def _end(obj: Any, bundle: Leaves) -> End:
    """Only a continuous one has another number of rows than two."""
    common = _common(obj)
    turned = common.pop("turned") or "odd"
    rows = obj.Rows if obj.EndKind == "continuous" else 2
    return End(kind=obj.EndKind, rows=rows, turned=turned, **common, **_strips(obj))


def _strips(obj: Any) -> dict[str, Any]:
    """What strips have; without a number and a width the core chooses."""
    return {
        "count": obj.Count or None,
        "width": obj.StripWidth.Value or None,
        "grain": obj.Grain.Value,
    }


def _quarters(obj: Any, bundle: Leaves) -> Quarters:
    more = {"strip": obj.StripWidth.Value} if obj.StripWidth.Value else {}
    return Quarters(
        kind=obj.Kind.lower(), turn=obj.Turn, slant=obj.Slant.Value, corners=obj.CornerWay,
        **_common(obj), **more,
    )  # fmt: skip


def _common(obj: Any) -> dict[str, Any]:
    """What every recipe has."""
    place = None
    if not obj.AutoPlacement:
        place = Placement(obj.TipX.Value, obj.TipY.Value, obj.Axis.Value)
    return {
        "placement": place,
        "first": obj.First,
        "order": order_of(obj.Order),
        "turned": None if obj.Turned == "auto" else obj.Turned,
        "oversize": obj.Oversize.Value,
        "cuts": CUTS[newer(obj, "CutAs")],
    }


def _mm(obj: Any, name: str) -> float:
    """A length that older documents lack, mm."""
    value = newer(obj, name)
    return float(getattr(value, "Value", value))


# --- tops --------------------------------------------------------------------------------------

_TOPS: dict[str, Callable[..., Top]] = {
    "Round": Top.round,
    "Polygon": Top.polygon,
    "Oval": Top.oval,
    "Square": Top.square,
    "Rectangle": Top.rectangle,
    "Racetrack": Top.racetrack,
    "Boat": Top.boat,
    "Outline": Top.of_edges,
}


def shape(obj: Any) -> tuple[Any, ...]:
    """What the top of a Match is made from, by value: its build-up or None, its kind, and its sizes
    (mm) or, for an outline, its edge and its openings."""
    return (buildups.built(obj), *_finished(obj))


def _finished(obj: Any) -> tuple[Any, ...]:
    if obj.Top == "Outline":
        return ("Outline", *sketches.outline_of(obj).loops)
    sizes = (getattr(obj, name) for name in TOPS[obj.Top])
    return (obj.Top, *(getattr(size, "Value", size) for size in sizes))


def top_of(how: Any, kind: str, *what: Any) -> Top:
    """The top of that shape: what a build-up leaves of it for the match."""
    whole = _TOPS[kind](*what)
    return how.field(whole) if how is not None else whole


def top(obj: Any) -> Top:
    """The top of a Match, less the border of its build-up."""
    return top_of(*shape(obj))


def finished_top(obj: Any) -> Top:
    """The whole top of a Match, border and all."""
    return top_of(None, *_finished(obj))


def place_on_outline(obj: Any) -> Any:
    """Where a Match is to lie so that it lies on the outline it follows; None where it follows none
    or is attached to something else."""
    if obj.Top != "Outline" or not obj.OnOutline or obj.MapMode != "Deactivated":
        return None
    holder = obj.getGlobalPlacement().multiply(obj.Placement.inverse())
    return holder.inverse().multiply(sketches.outline_of(obj).placement)

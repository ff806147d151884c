# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which properties of a Match belong to which kind of match and which top. Imports nothing heavy.
"""

from __future__ import annotations

from typing import Any

from veneerwb.host import compat

_RING = ("Ways", "Turn", "Start", "Strips", "CentreX", "CentreY", "DiscDiameter")
_STRIPS = ("Count", "StripWidth", "Grain")
KINDS = {
    "Radial": (*_RING, "Rim", "WedgeAngle"),
    "Two rings": (*_RING, "InnerWays", "InnerDiameter"),
    "Side by side": ("Turn", "Face", "Seed", *_STRIPS),
    "End match": ("EndKind", "Rows", *_STRIPS),
    "Centre and butt": ("Turn",),
    "Box": ("Turn", "CornerWay"),
    "Reverse box": ("Turn", "CornerWay"),
    "Diamond": ("Turn", "Slant"),
    "Reverse diamond": ("Turn", "Slant"),
    "Herringbone": ("Turn", "Slant", "StripWidth"),
}
"""The kinds of match, each with those of its properties that not all have."""
TOPS = {
    "Round": ("Diameter",),
    "Polygon": ("Sides", "AcrossFlats"),
    "Oval": ("Length", "Width"),
    "Square": ("Length",),
    "Rectangle": ("Length", "Width"),
    "Racetrack": ("Length", "Width"),
    "Boat": ("Length", "Width", "Ends"),
    "Outline": ("OutlineOf", "OutlineCentre", "OnOutline"),
}
"""The tops, likewise."""
NEW = {
    "Kind": "Radial", "Strips": 1, "CentreX": 0.0, "CentreY": 0.0, "DiscDiameter": 0.0,
}  # fmt: skip
"""What a radial match has that older documents lack."""


def newer(obj: Any, name: str) -> Any:
    """A property in NEW: views ask while a document is being opened, when not every object of it
    has been brought up to date."""
    return getattr(obj, name, NEW[name])


def turns(kind: str) -> tuple[str, ...]:
    """How leaves may be turned in a kind of match."""
    return ("book", "slip", "reverse slip", "random") if kind == "Side by side" else TURNS


TURNS = ("book", "slip")


def used(obj: Any) -> set[str]:
    """Those of the properties in KINDS and TOPS that a Match as it is makes use of."""
    return {*KINDS[obj.Kind], *TOPS[obj.Top]}


def hide_unused(obj: Any) -> None:
    """Shows in the property editor only what the kind of match and the top make use of."""
    wanted = used(obj)
    for name in {name for names in (*KINDS.values(), *TOPS.values()) for name in names}:
        compat.set_hidden(obj, name, name not in wanted)


def settle(obj: Any) -> None:
    """Takes back what the kind of a Match cannot have: how its leaves are turned and in what order
    they lie. Bundle, placement and top stay, and so does all that only other kinds use."""
    if obj.Turn not in turns(obj.Kind):
        obj.Turn = "book"
    if obj.Turned != "auto":
        obj.Turned = "auto"
    order = obj.Order.strip().lower()
    if order not in ("", "sequence") and not (order == "spread" and "Ways" in KINDS[obj.Kind]):
        obj.Order = "sequence"

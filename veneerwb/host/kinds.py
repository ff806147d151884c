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
CUTS = {"one stack": "stack", "lots by shape": "shape", "single pieces": "own"}
"""How what differs is cut, and what the core calls it."""
NEW = {
    "Kind": "Radial", "Strips": 1, "CentreX": 0.0, "CentreY": 0.0, "DiscDiameter": 0.0,
    "CutAs": "one stack",
}  # fmt: skip
"""What a match has that older documents lack, and a run or another object may."""


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
    let_in = "DiscDiameter" in wanted and obj.DiscDiameter.Value > 0.0
    compat.set_hidden(obj, "HiddenDisc", let_in and not obj.HiddenDisc.Value)


def settle(obj: Any) -> None:
    """Takes back what the kind of a Match cannot have: how its leaves are turned, in what order
    they lie, and a number of them that does not go into its rows. Bundle, placement and top stay,
    and so does all that only other kinds use."""
    if obj.Turn not in turns(obj.Kind):
        ways = [getattr(obj, name) for name in ("Ways", "InnerWays") if name in KINDS[obj.Kind]]
        obj.Turn = "slip" if any(count % 2 for count in ways) else "book"
    if obj.Kind == "End match" and obj.Count % (obj.Rows if obj.EndKind == "continuous" else 2):
        obj.Count = 0
    if obj.Turned != "auto":
        obj.Turned = "auto"
    order = obj.Order.strip().lower()
    if order not in ("", "sequence") and not (order == "spread" and "Ways" in KINDS[obj.Kind]):
        obj.Order = "sequence"

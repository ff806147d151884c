# SPDX-License-Identifier: LGPL-2.1-or-later
"""The section through a panel from its left end to the match's centre: what lies where, layer by
layer, as rectangles of true width and thickness."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from shapely.geometry import LineString

from veneerwb.core.buildup import PanelPart
from veneerwb.core.buildup.panel import THROUGH
from veneerwb.core.outlines import edge as edges
from veneerwb.core.shop.built import Built
from veneerwb.words import marked, say, word

ASIDE = 0.013
"""Share of the top's height by which the cut runs beside the centre, so as to run in no joint."""
CRUMB, ONE_JOINT = 1e-3, 0.1
"""mm: what is met over less is none, and joints that lie nearer are one; outlines are polygons
here."""


@dataclass(frozen=True)
class Slice:
    """What of a part is met: from x[0] to x[1], mm from the panel's left end, and from z[0] to
    z[1], mm from the underside of the panel."""

    part: PanelPart
    x: tuple[float, float]
    z: tuple[float, float]


@dataclass(frozen=True)
class Layer:
    """A row of the section's list: what it is, of what, how thick (mm), how its grain runs, and its
    own parts."""

    name: str
    material: str
    thickness: float
    grain: str
    item: str
    z: tuple[float, float]


@dataclass(frozen=True)
class Section:
    """A section: `slices` from below and from the left, the `layers` from the show face down, the
    `widths` of its strips by item, how `thick` the panel is (mm), and whether its core is of solid
    wood."""

    slices: tuple[Slice, ...]
    layers: tuple[Layer, ...]
    widths: Mapping[str, float]
    thick: float
    solid: bool


def section(built: Built) -> Section:
    """The section along x through the match's centre, or a little beside it."""
    (x0, _), (y0, y1) = (edges.extent(built.top.edge, turn) for turn in (0.0, 90.0))
    cut = LineString([(x0 - 1.0, ASIDE * (y1 - y0)), (0.0, ASIDE * (y1 - y0))])
    bottom = min(part.z[0] for part in built.parts)
    hits = [(part, part.region.polygon.intersection(cut)) for part in built.parts]
    left = min(hit.bounds[0] for _, hit in hits if not hit.is_empty)
    found = []
    for part, hit in hits:
        for line in getattr(hit, "geoms", [hit]):
            if not line.is_empty and line.length > CRUMB:
                a, b = line.bounds[0] - left, line.bounds[2] - left
                found.append(Slice(part, (a, b), (part.z[0] - bottom, part.z[1] - bottom)))
    joints = _joints(x for s in found for x in s.x)
    found = [replace(s, x=(joints[s.x[0]], joints[s.x[1]])) for s in found]
    found = sorted((s for s in found if s.x[0] < s.x[1]), key=lambda s: (s.z, s.x))
    top = max(part.z[1] for part in built.parts)
    of = built.build_up
    strips = {"lipping": of.lipping, "border": of.border, "stringing line": of.stringing}
    widths = {item: strip.width for item, strip in strips.items() if strip}
    layers = tuple(_layers(built, bottom))
    return Section(tuple(found), layers, widths, top - bottom, of.core.solid)


def _joints(places: Iterable[float]) -> dict[float, float]:
    """Places that are one within ONE_JOINT, each with the first of its lot."""
    found: dict[float, float] = {}
    first = None
    for place in sorted(places):
        first = place if first is None or place - first > ONE_JOINT else first
        found[place] = first
    return found


def _layers(built: Built, bottom: float) -> list[Layer]:
    """One row for each item of each layer, from the show face down; what goes through all last."""
    rows: dict[tuple[str, str], Layer] = {}
    for part in sorted(built.parts, key=lambda p: (p.layer == THROUGH, -p.z[1])):
        name = word(part.item)
        if part.item in ("field", "border", "stringing line", "inlay"):
            name = say("show face: {part}", part=name)
        if part.layer == THROUGH:
            name = say("{part}, over all layers", part=word(part.item))
        z = (part.z[0] - bottom, part.z[1] - bottom)
        row = Layer(name, part.material, part.thickness, _grain(built, part), part.item, z)
        rows.setdefault((part.item, part.layer), row)
    return list(rows.values())


def _grain(built: Built, part: PanelPart) -> str:
    border = built.build_up.border
    if part.item == "border" and border:
        return word(ALONG if border.grain == "along" else ACROSS)
    if part.item in ("lipping", "stringing line"):
        return word(ALONG)
    if part.grain is None:
        return word("see the plan")
    if part.item == "core" and not built.build_up.core.solid:
        return word("sheet goods")
    turn = part.grain % 180.0
    if round(turn, 6) in (0.0, 90.0):
        return word("across x") if turn > 45.0 else word("along x")
    return say("{turn:.4g}\N{DEGREE SIGN} from x", turn=turn)


ALONG, ACROSS = marked("along the edge"), marked("across the edge")

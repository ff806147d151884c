# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel built up: its layers from the backer to the show face, and the parts of each.

The show veneer stands on z = 0, as the pieces of a match do; all else lies below. Parts of a layer
lie side by side on true edges that they share, layers on planes that they share: no gap, no
overlap.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

from shapely.geometry import Point

from veneerwb.core.buildup.insets import inset, room_for
from veneerwb.core.buildup.kinds import (
    Backer,
    Border,
    Core,
    Crossband,
    Disc,
    Inlay,
    Lipping,
    Show,
    Star,
    Stringing,
    Strip,
)
from veneerwb.core.buildup.openings import opened
from veneerwb.core.buildup.ring import reversed_edge, strips
from veneerwb.core.errors import VeneerError
from veneerwb.core.listing import one_of
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge
from veneerwb.core.outlines.region import Region
from veneerwb.core.plane import finite
from veneerwb.core.top import Top
from veneerwb.words import marked, word

ITEMS = (
    marked("backer"), marked("crossband below"), marked("core"), marked("lipping"),
    marked("crossband above"), marked("field"), marked("border"), marked("stringing line"),
    marked("inlay"),
)  # fmt: skip
"""What parts are, in the order in which an exploded view lifts them."""
LAYERS = (*ITEMS[:3], ITEMS[4], marked("show face"))
"""From below."""
_KINDS = {
    "show": (Show,), "core": (Core,), "backer": (Backer,), "crossband_above": (Crossband,),
    "crossband_below": (Crossband,), "lipping": (Lipping,), "border": (Border,),
    "stringing": (Stringing,), "inlay": (Disc, Star),
}  # fmt: skip
_NEEDED = ("show", "core")
_CENTRE = Point(0.0, 0.0)
THROUGH = marked("all layers")
"""The layer of a lipping that was glued on after veneering."""


@dataclass(frozen=True)
class PanelPart:
    """A part of a panel: `region` (top mm) from z[0] to z[1] mm. `item` is one of ITEMS, `name`
    that with a number where there are several, `layer` one of LAYERS or THROUGH.

    `grain`: its direction in degrees 0..180; None for a field (its match says) and for a strip that
    is bent round. `bent`: length on its outer side and width in mm of such a strip.
    """

    name: str
    item: str
    layer: str
    material: str
    region: Region
    z: tuple[float, float]
    grain: float | None = None
    bent: tuple[float, float] | None = None

    @property
    def thickness(self) -> float:
        return self.z[1] - self.z[0]

    @property
    def area(self) -> float:
        """Exact, mm2."""
        return self.region.area

    @property
    def volume(self) -> float:
        """Exact, mm3."""
        return self.area * self.thickness

    @property
    def size(self) -> tuple[float, float]:
        """(length along the grain, width across it) in mm of the least rectangle that holds it; of
        a bent strip its length and its own width."""
        if self.bent:
            return self.bent
        along = 0.0 if self.grain is None else self.grain
        spans = (self.region.extent(degrees) for degrees in (along, along + 90.0))
        length, width = (most - least for least, most in spans)
        return length, width


@dataclass(frozen=True)
class BuildUp:
    """What a panel is built of. What is None is left out.

    show, core:  the show veneer and its ground.
    crossband_above, crossband_below: usually a pair.
    backer:      the veneer of the under side.
    lipping:     a strip of solid wood round the core, or round the whole panel.
    border, stringing: from the edge inwards; within them lies the field, which the match is laid
                 on.
    inlay:       a Disc or a Star about the match's centre.
    """

    show: Show
    core: Core
    backer: Backer | None = None
    crossband_above: Crossband | None = None
    crossband_below: Crossband | None = None
    lipping: Lipping | None = None
    border: Border | None = None
    stringing: Stringing | None = None
    inlay: Inlay | None = None

    def __post_init__(self) -> None:
        for name, kinds in _KINDS.items():
            part = getattr(self, name)
            if not isinstance(part, kinds) and (part is not None or name in _NEEDED):
                told = marked(
                    "The {name} of a build-up cannot be {value!r:.40}; give a {kinds}, or leave it "
                    "out."
                )
                if name in _NEEDED:
                    told = marked(
                        "The {name} of a build-up cannot be {value!r:.40}; give a {kinds}."
                    )
                raise VeneerError(
                    "no-part", told, name=name.replace("_", " "), value=part,
                    kinds=one_of([kind.__name__ for kind in kinds]),
                )  # fmt: skip

    @property
    def thickness(self) -> float:
        """Of the panel, mm."""
        return self.levels["show face"][1] - next(iter(self.levels.values()))[0]

    @property
    def levels(self) -> dict[str, tuple[float, float]]:
        """(bottom, top) in mm of each layer that there is, from below."""
        plies = (self.backer, self.crossband_below, self.core, self.crossband_above)
        found = {"show face": (0.0, self.show.thickness)}
        z = 0.0
        for layer, ply in reversed(list(zip(LAYERS, plies))):
            if ply is not None:
                found[layer] = (z - ply.thickness, z)
                z -= ply.thickness
        return {layer: found[layer] for layer in LAYERS if layer in found}

    def field(self, top: Top) -> Top:
        """The top on which the match is laid: within border and stringing line, the inlay and the
        openings its holes. VeneerError where there is no room for it."""
        edge, taken = self._field_edge(top)
        face = opened(self._face(top), top.holes)
        holes = next(part for part in face if part.item == "field").region.holes
        plain = replace(top, holes=())
        return replace(plain.inset(taken) if taken else plain, edge=edge, holes=holes)

    def parts(self, top: Top) -> tuple[PanelPart, ...]:
        """Every part of the panel on `top` (its finished size), from below. VeneerError where it
        does not fit."""
        panel, (low, high) = self._panel(top), (self._bottom, self.show.thickness)
        found: list[PanelPart] = []
        for layer in self.levels:
            here = self._face(top) if layer == "show face" else self._ply(layer, top, panel)
            found += opened(here, top.holes)
        if self.lipping and self.lipping.shows:
            found += self._strips(self.lipping, "lipping", THROUGH, top.edge, panel, (low, high))
        return tuple(found)

    def exploded(self, distance: float) -> dict[str, float]:
        """By how many mm each item is lifted in an exploded view, `distance` from one to the next;
        the core stays."""
        step = finite("distance", distance)
        there = [item for item in ITEMS if self._has(item)]
        return {item: (k - there.index("core")) * step for k, item in enumerate(there)}

    def _has(self, item: str) -> bool:
        names = {"field": "show", "stringing line": "stringing"}
        return getattr(self, names.get(item, item.replace(" ", "_"))) is not None

    # --- edges ---------------------------------------------------------------------------------

    @property
    def _bottom(self) -> float:
        return next(iter(self.levels.values()))[0]

    def _panel(self, top: Top) -> Edge:
        """The edge of what is veneered."""
        return inset(top, self._showing(top))

    def _showing(self, top: Top) -> float:
        """The width of a lipping that shows."""
        if self.lipping is None:
            return 0.0
        taken = room_for(top, {"lipping": self.lipping.width})
        return taken if self.lipping.shows else 0.0

    def _field_edge(self, top: Top) -> tuple[Edge, float]:
        """The edge of the field, and how far it lies within the top's, mm."""
        widths = {"lipping": self._showing(top)}
        widths |= {s.what: s.width for s in (self.border, self.stringing) if s is not None}
        taken = room_for(top, widths)
        return inset(top, taken), taken

    def _inlay(self, field: Edge) -> Edge:
        """The inlay's outline, if it lies within the field."""
        assert self.inlay is not None
        outline = self.inlay.outline
        within = edges.polygon(field)
        if within.contains(edges.polygon(outline)):
            return outline
        room = within.exterior.distance(_CENTRE) if within.contains(_CENTRE) else 0.0
        if room <= 0.0:
            raise VeneerError(
                "inlay-off",
                "The match's centre lies outside the field, so no inlay can be set there; move it "
                "or leave the inlay out.",
            )
        told, most = self.inlay.would_do(room)
        raise VeneerError(
            "inlay-too-large", word(told), reach=self.inlay.reach, room=room, most=most
        )

    # --- parts ---------------------------------------------------------------------------------

    def _ply(self, layer: str, top: Top, panel: Edge) -> list[PanelPart]:
        """The parts of a layer below the show face."""
        ply = getattr(self, layer.replace(" ", "_"))
        z, edge = self.levels[layer], panel
        lipping = self.lipping if layer == "core" else None
        round_it: list[PanelPart] = []
        if lipping and not lipping.shows:
            edge = inset(top, lipping.width)
            round_it = self._strips(lipping, "lipping", layer, panel, edge, z)
        flat = PanelPart(layer, layer, layer, ply.material, Region(edge), z, ply.grain % 180.0)
        return [flat, *round_it]

    def _face(self, top: Top) -> list[PanelPart]:
        """The parts of the show face, its openings left out."""
        z, layer = self.levels["show face"], "show face"
        field, _ = self._field_edge(top)
        hole = (self._inlay(field),) if self.inlay else ()
        region = Region(field, tuple(reversed_edge(edge) for edge in hole))
        found = [PanelPart("field", "field", layer, self.show.material, region, z)]
        found += self._bands(top, z)
        if self.inlay:
            grain = self.inlay.grain % 180.0
            inlay = Region(*hole)
            found.append(PanelPart("inlay", "inlay", layer, self.inlay.material, inlay, z, grain))
        return found

    def _bands(self, top: Top, z: tuple[float, float]) -> Iterator[PanelPart]:
        """Border and stringing line."""
        taken = self._showing(top)
        outer = inset(top, taken)
        for strip in (self.border, self.stringing):
            if strip is not None:
                taken = math.fsum((taken, strip.width))
                inner = inset(top, taken)
                yield from self._strips(strip, strip.what, "show face", outer, inner, z)
                outer = inner

    def _strips(
        self, strip: Strip, item: str, layer: str, outer: Edge, inner: Edge,
        z: tuple[float, float],
    ) -> list[PanelPart]:  # fmt: skip
        """The parts of a strip between two edges."""
        kind = strip.kind if isinstance(strip, Border) else "following"
        cut = strips(outer, inner, strip.width, item, kind, strip.segments)
        bends = not isinstance(strip, Border)
        across = 90.0 if isinstance(strip, Border) and strip.grain == "across" else 0.0
        found = []
        for n, one in enumerate(cut, 1):
            name = item if len(cut) == 1 else f"{item} {n}"
            part = PanelPart(name, item, layer, strip.material, one.region, z)
            if bends and one.curved:
                part = replace(part, bent=(one.length, strip.width))
            else:
                part = replace(part, grain=round((one.direction or 0.0) + across, 9) % 180.0)
            found.append(part)
        return found


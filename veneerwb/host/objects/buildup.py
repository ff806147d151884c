# SPDX-License-Identifier: LGPL-2.1-or-later
"""Build-up: what a panel is built of; Panel parts: its solids on the top of a match.

Two objects, so that nothing runs in a circle: a match links to its build-up and is laid within the
border that this leaves; the parts link to the match, and lie on its finished top. A change of the
build-up is thus followed by the match first and by the parts after it. A build-up may serve several
matches.
"""

from __future__ import annotations

from typing import Any

from veneerwb.host import watching
from veneerwb.host.objects.base import (
    OUT,
    SECRET,
    Property,
    Proxy,
    Refused,
    added,
    give,
    kind_of,
    set_if_new,
)
from veneerwb.words import word

SHEET_OF = "BuiltUpPanel"
"""The property by which a bill in a spreadsheet says which parts it is of."""
OWN = (
    "radial and tangential movement for each % of moisture, such as 0.0019 0.00274; empty: by "
    "the material's name"
)


class BuildUp(Proxy):
    """What a panel is built of. A thickness or width of 0 leaves that part out."""

    kind = "BuildUp"
    properties = (
        Property("Length", "CoreThickness", "Core", "Thickness of the core", 18.0),
        Property("Enumeration", "CoreKind", "Core", "Sheet goods keep still, solid wood moves",
                 ("sheet goods", "solid wood")),
        Property("String", "CoreMaterial", "Core", "What the core is of", ""),
        Property("Angle", "CoreGrain", "Core", "Direction of the core's grain on the top", 0.0),
        Property("Enumeration", "CoreSawn", "Core", "How a solid core was sawn",
                 ("plain", "quarter")),
        Property("String", "CoreMoves", "Core", f"The core's {OWN}", ""),
        Property("Length", "CrossbandAbove", "Crossbands",
                 "Thickness of the layer between core and show veneer; 0: none", 0.0),
        Property("Length", "CrossbandBelow", "Crossbands",
                 "Thickness of the layer between core and backer; 0: none", 0.0),
        Property("String", "CrossbandMaterial", "Crossbands", "What the crossbands are of", ""),
        Property("Angle", "CrossbandGrain", "Crossbands",
                 "Direction of the crossbands' grain on the top; across the core's", 90.0),
        Property("Link", "BackerFrom", "Backer",
                 "The bundle or stock that the backer is taken from; none: give its thickness"),
        Property("Length", "BackerThickness", "Backer",
                 "Thickness of the veneer on the under side; 0: none", 0.0),
        Property("String", "BackerMaterial", "Backer", "What the backer is of", ""),
        Property("Angle", "BackerGrain", "Backer", "Direction of the backer's grain on the top",
                 0.0),
        Property("Length", "LippingWidth", "Lipping",
                 "Width of the strip of solid wood round the core; 0: none", 0.0),
        Property("Enumeration", "LippingWhen", "Lipping",
                 "Before veneering it lies under the veneer; after, it is as high as the panel",
                 ("before veneering", "after veneering")),
        Property("String", "LippingMaterial", "Lipping", "What the lipping is of", ""),
        Property("Integer", "LippingSegments", "Lipping",
                 "Parts between two corners, or all round where there are none", 1),
        Property("Enumeration", "LippingSawn", "Lipping", "How the lipping was sawn",
                 ("plain", "quarter")),
        Property("String", "LippingMoves", "Lipping", f"The lipping's {OWN}", ""),
        Property("Length", "BorderWidth", "Border",
                 "Width of the band of veneer round the field; 0: none", 0.0),
        Property("Enumeration", "BorderKind", "Border",
                 "Mitred at corners, straight and butted, or following the edge",
                 ("mitred", "straight", "following")),
        Property("Enumeration", "BorderGrain", "Border", "Grain along the edge or across it",
                 ("along", "across")),
        Property("String", "BorderMaterial", "Border", "What the border is of", ""),
        Property("Integer", "BorderSegments", "Border",
                 "Parts between two corners, or all round where there are none", 1),
        Property("Length", "LineWidth", "Stringing line",
                 "Width of the line between border and field; 0: none", 0.0),
        Property("String", "LineMaterial", "Stringing line", "What the line is of", ""),
        Property("Integer", "LineSegments", "Stringing line",
                 "Parts between two corners, or all round where there are none", 1),
        Property("Enumeration", "Inlay", "Inlay", "What is let in about the match's centre",
                 ("none", "disc", "star")),
        Property("Length", "InlayDiameter", "Inlay", "Diameter of the disc", 80.0),
        Property("Integer", "InlayPoints", "Inlay", "Points of the star", 8),
        Property("Length", "InlayOuter", "Inlay", "From the centre to the star's tips", 80.0),
        Property("Length", "InlayInner", "Inlay", "From the centre to the star's hollows", 30.0),
        Property("Angle", "InlayTurn", "Inlay", "Direction of the star's first tip", 90.0),
        Property("String", "InlayMaterial", "Inlay", "What the inlay is of", ""),
        Property("Angle", "InlayGrain", "Inlay", "Direction of the inlay's grain on the top", 0.0),
        Property("Bool", "ClimateKnown", "Climate",
                 "Whether it is known in which air the panel is made and will stand", False),
        Property("Integer", "MadeTemperature", "Climate", "Of the workshop, degrees C", 20),
        Property("Integer", "MadeHumidity", "Climate", "Of the workshop, % relative humidity", 50),
        Property("Integer", "StandsTemperature", "Climate",
                 "Where the panel will stand, degrees C", 21),
        Property("Integer", "StandsHumidity", "Climate",
                 "Where the panel will stand, % relative humidity: the worst of the year", 35),
    )  # fmt: skip

    def update(self, obj: Any) -> None:
        """Sets nothing: says what cannot be built whatever the top."""
        from veneerwb.host import buildups

        buildups.core_build_up(obj)
        buildups.climates(obj)


class Parts(Proxy):
    """The parts of a panel that is built up under and round a match: its Shape is a compound of one
    solid a part, from below. The show veneer's field is not among them, for the pieces of the match
    are that. The match keeps its place in the exploded view."""

    kind = "Parts"
    needs = ("Match",)
    found: tuple[Any, ...] = ()
    """The core's findings, as last listed in Findings."""
    properties = (
        Property("Link", "Match", "Panel", "The match that shows on the panel"),
        Property("Length", "Explode", "Panel", "How far apart the parts are drawn; 0: as built",
                 0.0),
        Property("Length", "Thickness", "Result", "Thickness of the panel, veneers and all", 0.0,
                 OUT),
        Property("StringList", "Names", "Result", "What each solid is, in their order", [], OUT),
        Property("StringList", "Items", "Result", "Of which kind each solid is", [], SECRET),
        Property("StringList", "Findings", "Result", "What the checks found, the gravest first", [],
                 OUT),
        Property("String", "ShapeMark", "Result", "What the shape was made from", "", SECRET),
    )  # fmt: skip

    def __init__(self, obj: Any) -> None:
        super().__init__(obj)
        watch()

    def onDocumentRestored(self, obj: Any) -> None:
        super().onDocumentRestored(obj)
        watch()

    def update(self, obj: Any) -> None:
        from veneerwb.host import panels

        match = obj.Match
        if kind_of(match) != "Match" or kind_of(match.BuildUp) != "BuildUp":
            raise Refused(word("These parts belong to no match with a build-up; delete them."))
        if match.Message:
            raise Refused(match.Message)
        panel = panels.panel_of(match)
        found = tuple(panels.findings(obj, panel))
        mark = panel.mark(obj.Explode.Value)
        shape = None
        if mark != obj.ShapeMark or obj.Shape.isNull():
            shape = panel.compound(obj.Explode.Value)
        set_if_new(
            obj,
            ShapeMark=mark,
            Thickness=panel.thickness,
            Names=[part.name for part in panel.solid_parts],
            Items=[part.item for part in panel.solid_parts],
            Findings=[str(finding) for finding in found],
        )
        if shape is not None:
            obj.Shape = shape
        set_if_new(obj, Placement=match.Placement)
        self.found = found


class Sheets:
    """Has parts recomputed whose bill is deleted: the sheet hangs on them and not they on it."""

    def slotDeletedObject(self, obj: Any) -> None:
        parts = getattr(obj, SHEET_OF, None)
        if kind_of(parts) == "Parts":
            parts.touch()


def watch() -> None:
    """From the first parts on, their sheets are watched."""
    watching.watch(Sheets)


def add_build_up(doc: Any, match: Any, **properties: Any) -> Any:
    """A BuildUp of a Match, with the properties given by name, and its Parts. Recompute to see
    them."""
    before = match.BuildUp
    with added(doc, "App", BuildUp) as obj:
        obj.Label = f"Build-up of {match.Label}"
        give(obj, properties)
        _beside(match, obj)
        match.BuildUp = obj
        try:
            if parts_of(match) is None:
                add_parts(doc, match)
        except Exception:
            match.BuildUp = before
            raise
    return obj


def add_parts(doc: Any, match: Any) -> Any:
    """The Parts of a Match that has a BuildUp. Recompute to see them."""
    with added(doc, "Part", Parts, "PanelParts") as obj:
        obj.Label = f"Panel of {match.Label}"
        _beside(match, obj)
        obj.Match = match
    return obj


def _beside(match: Any, obj: Any) -> None:
    """Into the container that the match is in, whose placement both then have."""
    group = match.getParentGeoFeatureGroup()
    if group is not None:
        group.addObject(obj)


def take_down(match: Any) -> None:
    """Removes the parts of a Match, and its build-up as `part_from` does."""
    parts = parts_of(match)
    if parts is not None:
        match.Document.removeObject(parts.Name)
    part_from(match)


def part_from(match: Any) -> None:
    """Lays a Match on its whole top again; a build-up that no other match has goes."""
    how, match.BuildUp = match.BuildUp, None
    if how is not None and not matches_of(how):
        match.Document.removeObject(how.Name)


def parts_of(match: Any) -> Any:
    """The Parts of a Match; None where it has none."""
    mine = (one for one in match.InList if kind_of(one) == "Parts" and one.Match == match)
    return next(mine, None)


def matches_of(build_up: Any) -> list[Any]:
    """The matches that are built up so."""
    return [one for one in build_up.InList if kind_of(one) == "Match" and one.BuildUp == build_up]

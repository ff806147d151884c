# SPDX-License-Identifier: LGPL-2.1-or-later
"""Match: a top laid up from a bundle, one solid a piece."""

from __future__ import annotations

from typing import Any

from veneerwb.host import compat, kinds, settings
from veneerwb.host.objects.base import (
    OUT,
    SECRET,
    Property,
    Proxy,
    Refused,
    added,
    give,
    rests_on,
    set_if_new,
)
from veneerwb.words import marked, say, word


class Match(Proxy):
    """A match of any kind. Its Shape is a compound of one solid a piece in the order of positions;
    for the order of faces see host.solids. The back of the veneer lies on the plane it is attached
    to."""

    kind = "Match"
    starting = False
    """Its properties are being added."""
    busy = False
    """Its results are being set one by one, and do not fit together yet."""
    found: tuple[Any, ...] = ()
    """The core's findings, as last listed in Findings."""
    circle = False
    """An outline that rests on the match itself was just taken back."""
    needs = ("Bundle",)
    properties = (
        Property("Link", "Bundle", "Match", "The bundle or stock that the top is cut from"),
        Property("Enumeration", "Kind", "Match", "How the leaves are laid", tuple(kinds.KINDS)),
        Property("Enumeration", "Top", "Top", "The top's outline", tuple(kinds.TOPS)),
        Property("Length", "Diameter", "Top", "Diameter of a round top", 1200.0),
        Property("Integer", "Sides", "Top", "Sides of a polygon", 8),
        Property(
            "Length",
            "AcrossFlats",
            "Top",
            "Twice the distance from the centre to a polygon's flat",
            1200.0,
        ),
        Property(
            "Link",
            "BuildUp",
            "Top",
            "What the panel is built up of; the match is laid within its border",
        ),
        Property("Length", "Length", "Top", "Length of the top along x; side of a square", 1800.0),
        Property("Length", "Width", "Top", "Width of the top in its middle", 900.0),
        Property("Length", "Ends", "Top", "Width of a boat shape at its ends", 600.0),
        Property(
            "LinkSubGlobal",
            "OutlineOf",
            "Top",
            "A closed sketch, a wire or a planar face that is the top; holes are openings",
        ),
        Property(
            "Enumeration",
            "OutlineCentre",
            "Top",
            "Where the match's centre lies: the centroid of the outline without its openings, or "
            "the origin of the sketch",
            ("centroid", "origin"),
        ),
        Property(
            "Bool", "OnOutline", "Top", "The top lies where its outline lies, as it is moved", True
        ),
        Property(
            "Integer",
            "Ways",
            "Match",
            "How many wedges meet at the centre: 3 to 64, even for book",
            8,
        ),
        Property(
            "Enumeration",
            "Turn",
            "Match",
            "Book: every second leaf turned over; slip: none or all; side by side also end for "
            "end, or out of order",
            kinds.turns("Side by side"),
        ),
        Property(
            "String",
            "Order",
            "Match",
            "sequence, spread, or the leaf of each position: 1, 3, 2, 4",
            "sequence",
        ),
        Property(
            "Enumeration",
            "Turned",
            "Match",
            "Which positions show their leaf's back",
            ("auto", "odd", "even", "none", "all", "random", "left", "right"),
        ),
        Property(
            "Integer", "Strips", "Match", "Leaves side by side in each wedge, slip matched", 1
        ),
        Property("Distance", "CentreX", "Match", "Where on the top the wedges meet, along x", 0.0),
        Property("Distance", "CentreY", "Match", "Where on the top the wedges meet, along y", 0.0),
        Property(
            "Length",
            "DiscDiameter",
            "Match",
            "Diameter of a disc that is let in about the centre: the wedges end at it; 0: none",
            0.0,
        ),
        Property("Integer", "InnerWays", "Match", "How many wedges the inner ring has", 8),
        Property("Length", "InnerDiameter", "Match", "Diameter of the inner ring", 400.0),
        Property(
            "Enumeration",
            "Face",
            "Match",
            "How strips share the face: of one width, full ones and a rest, with a joint in the "
            "centre, or mirrored there",
            ("balance", "running", "centre balance", "slip-centre-book"),
        ),
        Property(
            "Enumeration",
            "EndKind",
            "Match",
            "In which order the leaves of an end match lie",
            ("architectural", "panel", "continuous"),
        ),
        Property(
            "Integer", "Count", "Match", "How many leaves; 0: as many as the width needs", 0
        ),
        Property(
            "Length",
            "StripWidth",
            "Match",
            "How wide a strip may be from seam to seam; 0: as the leaves have room (herringbone: "
            "100 mm)",
            0.0,
        ),
        Property("Integer", "Rows", "Match", "Rows of a continuous end match", 2),
        Property(
            "Angle", "Grain", "Match", "Direction of the strips on the top; 90 is upright", 90.0
        ),
        Property(
            "Angle",
            "Slant",
            "Match",
            "Degrees between the grain (in a herringbone the strips) and the level",
            45.0,
        ),
        Property(
            "Enumeration",
            "CornerWay",
            "Match",
            "A box's joints: at 45 degrees, or from corner to corner",
            ("mitre", "diagonal"),
        ),
        Property("Integer", "Seed", "Match", "Which of the random orders; the same number gives "
                 "the same", 1),
        Property("Integer", "First", "Match", "The first leaf that is used", 1),
        Property(
            "Enumeration",
            "Rim",
            "Match",
            "The blank's rim: parallel to the edge, or one straight",
            ("arc", "straight"),
        ),
        Property("Angle", "Start", "Match", "Direction of the first wedge's axis on the top", 90.0),
        Property(
            "Length", "Oversize", "Match", "How far the blanks reach beyond the finished edge", 0.0
        ),
        Property(
            "Enumeration",
            "CutAs",
            "Match",
            "Where pieces differ: all cut as one stack by what they take together, in lots by "
            "shape, or each piece by itself",
            tuple(kinds.CUTS),
        ),
        Property(
            "Bool",
            "AutoPlacement",
            "Placement on bundle",
            "Cut from the middle of the leaves",
            True,
        ),
        Property(
            "Distance",
            "TipX",
            "Placement on bundle",
            "Where on the bundle the match is cut (a wedge's tip), across the leaf",
            0.0,
        ),
        Property(
            "Distance",
            "TipY",
            "Placement on bundle",
            "Where on the bundle the match is cut (a wedge's tip), along the grain",
            0.0,
        ),
        Property(
            "Angle",
            "Axis",
            "Placement on bundle",
            "Which way the cut (a wedge's axis) points; 90 is along the grain",
            90.0,
        ),
        Property(
            "Length",
            "Margin",
            "Checks",
            "To keep between a blank and the edge of what may be used",
            0.0,
        ),
        Property("Integer", "Spares", "Checks", "How many unused leaves should be left over", 0),
        Property("Angle", "WedgeAngle", "Checks", "The template's angle; 0 if it is exact", 0.0),
        Property(
            "Length",
            "HiddenDisc",
            "Checks",
            "Diameter of what will lie on the centre and cover it, where no disc is let in: faults "
            "may lie under it; 0: none",
            0.0,
        ),
        Property(
            "StringList", "Findings", "Result", "What the checks found, the gravest first", [], OUT
        ),
        Property("String", "Revision", "Result", "A mark that changes with the layout", "", OUT),
        Property("IntegerList", "LeafOrder", "Result", "The leaf of each position", [], OUT),
        Property(
            "IntegerList",
            "TurnedPositions",
            "Result",
            "The positions that show their leaf's back",
            [],
            OUT,
        ),
        Property(
            "IntegerList",
            "ChangedPieces",
            "Result",
            "The positions that the last change altered",
            [],
            OUT,
        ),
        Property("StringList", "PieceMarks", "Result", "A mark of each piece", [], SECRET),
        Property("String", "ShapeMark", "Result", "What the shape was made from", "", SECRET),
        Property("String", "ChosenBy", "Result", "What the leaves were chosen by", "", SECRET),
    )

    def ensure_properties(self, obj: Any) -> None:
        self.starting = True
        try:
            super().ensure_properties(obj)
        finally:
            del self.starting
        compat.make_attachable(obj)
        kinds.hide_unused(obj)

    def onBeforeChange(self, obj: Any, name: str) -> None:
        if name in ("Kind", "OutlineOf") and not self.starting:
            self.was = getattr(obj, name)

    def onChanged(self, obj: Any, name: str) -> None:
        """Another kind of match takes over what it can have. What undo brings back is whole."""
        if self.starting or name not in ("Kind", "Top", "OutlineOf", "DiscDiameter"):
            return
        was = vars(self).pop("was", None)
        if obj.Document is None or obj.Document.Restoring or "Restore" in obj.State:
            return
        if name == "OutlineOf":
            self._refuse_circle(obj, was)
            return
        if was not in (None, obj.Kind) and not obj.Document.Transacting:
            kinds.settle(obj)
        kinds.hide_unused(obj)

    def _refuse_circle(self, obj: Any, was: Any) -> None:
        """An outline that rests on the match is taken back at once: the host orders nothing any
        more in a document with a circle. Undo and redo bring back what was allowed."""
        source = (obj.OutlineOf or (None,))[0]
        if source is not None and not obj.Document.Transacting and rests_on(source, obj):
            self.circle = True
            obj.OutlineOf = was

    def update(self, obj: Any) -> None:
        from veneerwb.host import solids, values

        if vars(self).pop("circle", False):
            raise Refused(word(CIRCLE))
        compat.follow_support(obj)
        bundle = values.leaves_of(obj.Bundle)
        chosen_by = _chosen_by(obj)
        _refuse_missing(obj, bundle.numbers, chosen_by)
        laid = values.layout_on(obj, bundle)
        found = tuple(values.findings(obj, laid))
        mark = solids.shape_mark(laid)
        shape = None
        if mark != obj.ShapeMark or obj.Shape.isNull():
            shape = solids.compound(laid)
        place = values.place_on_outline(obj)
        marks, before = solids.piece_marks(laid), list(obj.PieceMarks)
        before += [""] * (len(marks) - len(before))
        changed = [k for k, (new, old) in enumerate(zip(marks, before), start=1) if new != old]
        self.busy = True
        try:
            if shape is not None:
                obj.Shape = shape
            if place is not None and _differ(place, obj.Placement):
                obj.Placement = place
            set_if_new(
                obj,
                ShapeMark=mark,
                Findings=[str(finding) for finding in found],
                Revision=laid.revision,
                ChosenBy=chosen_by,
                LeafOrder=[piece.leaf for piece in laid.pieces],
                PieceMarks=marks,
                ChangedPieces=changed,
                TurnedPositions=[piece.position for piece in laid.pieces if piece.turned],
            )
            self.found = found
        finally:
            self.busy = False
        compat.redraw(obj)


CIRCLE = marked(
    "The top cannot follow itself or what lies on it; choose another outline."
)


def _differ(a: Any, b: Any) -> bool:
    return any(abs(x - y) > 1e-9 for x, y in zip(a.Matrix.A, b.Matrix.A))


def _chosen_by(obj: Any) -> str:
    """All that decides which leaves are used, apart from which there are."""
    link = obj.Bundle.Name if obj.Bundle else ""
    chosen = [link, obj.Ways, obj.Turn, obj.Turned, obj.Order, obj.First]
    if obj.Kind != "Radial" or obj.Strips != 1:  # else as older documents have it
        names = (*kinds.KINDS[obj.Kind], *kinds.TOPS[obj.Top])
        values = (getattr(obj, name) for name in names if name != "OutlineOf")
        chosen += [obj.Kind, *(getattr(value, "Value", value) for value in values)]
    return "|".join(map(str, chosen))


def _refuse_missing(obj: Any, numbers: tuple[int, ...], chosen_by: str) -> None:
    """A leaf that was in use and has gone must not be replaced by another without a word."""
    gone = sorted(set(obj.LeafOrder) - set(numbers))
    if gone and chosen_by == obj.ChosenBy:
        names = ", ".join(map(str, gone))
        raise Refused(
            say("Leaf {leaf} is missing from the bundle; undo, add it again, or choose other "
                "leaves by First or Order.", leaf=names)
            if len(gone) == 1
            else say("Leaves {leaves} are missing from the bundle; undo, add them again, or choose "
                     "other leaves by First or Order.", leaves=names)
        )  # fmt: skip


def add_match(doc: Any, bundle: Any, **properties: Any) -> Any:
    """A Match on a Bundle or Stock object, with the properties given by name, else as the user has
    set. Recompute to see it."""
    with added(doc, "Part", Match) as obj:
        obj.Bundle = bundle
        kind = properties.pop("Kind", obj.Kind)  # before all else, for it takes some of it back
        give(obj, {"Kind": kind, **settings.for_match(), **properties})
    return obj


def layout(obj: Any) -> Any:
    """The veneerwb.core.Layout of a Match. Raises VeneerError where execute would refuse."""
    from veneerwb.host import values

    return values.layout_on(obj, values.leaves_of(obj.Bundle))

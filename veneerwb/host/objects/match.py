# SPDX-License-Identifier: LGPL-2.1-or-later
"""Match: a top laid up from a bundle, one solid a piece."""

from __future__ import annotations

from typing import Any

from veneerwb.host import compat
from veneerwb.host.objects.base import OUT, SECRET, Property, Proxy, Refused, set_if_new


class Match(Proxy):
    """A radial match. Its Shape is a compound of one solid a piece in the order of positions; for
    the order of faces see host.solids. The back of the veneer lies on the plane it is attached
    to."""

    kind = "Match"
    busy = False
    """Its results are being set one by one, and do not fit together yet."""
    found: tuple[Any, ...] = ()
    """The core's findings, as last listed in Findings."""
    properties = (
        Property("Link", "Bundle", "Match", "The bundle or stock that the top is cut from"),
        Property("Enumeration", "Top", "Top", "The top's outline", ("Round", "Polygon")),
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
            "Book: every second leaf turned over; slip: none or all",
            ("book", "slip"),
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
            ("auto", "odd", "even", "none", "all"),
        ),
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
            "Where the wedges' tip lies, across the leaf",
            0.0,
        ),
        Property(
            "Distance",
            "TipY",
            "Placement on bundle",
            "Where the wedges' tip lies, along the grain",
            0.0,
        ),
        Property(
            "Angle",
            "Axis",
            "Placement on bundle",
            "Which way the wedges' axis points; 90 is along the grain",
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
            "Diameter of what will cover the centre: faults may lie under it; 0 for none",
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
        super().ensure_properties(obj)
        compat.make_attachable(obj)

    def update(self, obj: Any) -> None:
        from veneerwb.host import solids, values

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
        marks, before = solids.piece_marks(laid), list(obj.PieceMarks)
        before += [""] * (len(marks) - len(before))
        changed = [k for k, (new, old) in enumerate(zip(marks, before), start=1) if new != old]
        self.busy = True
        try:
            if shape is not None:
                obj.Shape = shape
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


def _chosen_by(obj: Any) -> str:
    """All that decides which leaves are used, apart from which there are."""
    link = obj.Bundle.Name if obj.Bundle else ""
    return "|".join(map(str, (link, obj.Ways, obj.Turn, obj.Turned, obj.Order, obj.First)))


def _refuse_missing(obj: Any, numbers: tuple[int, ...], chosen_by: str) -> None:
    """A leaf that was in use and has gone must not be replaced by another without a word."""
    gone = sorted(set(obj.LeafOrder) - set(numbers))
    if gone and chosen_by == obj.ChosenBy:
        names = ", ".join(map(str, gone))
        raise Refused(
            f"Leaf {names} is missing from the bundle; undo, add it again, or choose other leaves "
            "by First or Order."
        )


def add_match(doc: Any, bundle: Any, **properties: Any) -> Any:
    """A Match on a Bundle or Stock object, with the properties given by name. Recompute to see
    it."""
    obj = doc.addObject("Part::FeaturePython", "Match")
    try:
        Match(obj)
        obj.Bundle = bundle
        for name, value in properties.items():
            setattr(obj, name, value)
    except Exception:
        doc.removeObject(obj.Name)
        raise
    return obj


def layout(obj: Any) -> Any:
    """The veneerwb.core.Layout of a Match. Raises VeneerError where execute would refuse."""
    from veneerwb.host import values

    return values.layout_on(obj, values.leaves_of(obj.Bundle))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Bundle: consecutive leaves, their thickness and the stack's sense."""

from __future__ import annotations

import os
from collections.abc import Sequence
from typing import Any

import FreeCAD

from veneerwb.host import watching
from veneerwb.host.objects.base import OUT, Property, Proxy, kind_of, set_if_new
from veneerwb.words import marked, word

BACKS = ("next", "previous", "own")
FOLLOWS = ("as photographed", "figure", "log", "marks")
PINS = ("face", "figure")
TIGHT_SIDES = ("not known", "face", "back")


class Bundle(Proxy):
    """A bundle of leaves; everyone else links to it.

    FaultOutlines are corners in bundle mm as a Leaf's are in leaf mm. What is drawn (FaultShapes,
    UsableShape) is looked at from above: global x across, y along the grain.
    """

    kind = "Bundle"
    version = 2
    upgrades = {1: lambda obj: None}  # what it lacks is added as it was understood
    properties = (
        Property("LinkList", "Leaves", "Bundle", "The leaves, in any order: their numbers count"),
        Property("Length", "Thickness", "Bundle", "Thickness of a leaf", 0.6),
        Property(
            "Enumeration",
            "Back",
            "Bundle",
            "Whose photograph shows a leaf's back: the next leaf's, the previous one's, or its own",
            BACKS,
        ),
        Property(
            "Angle", "Slope", "Bundle", "Angle between figure and leaf; 0 if it is not known", 0.0
        ),
        Property("Bool", "SlopeKnown", "Bundle", "A slope of 0 is known, not unknown", False),
        Property(
            "Bool",
            "EvenLight",
            "Bundle",
            "Photographs are shown with the gains that even their light, where they have any",
            True,
        ),
        Property(
            "Enumeration",
            "Follows",
            "Bundle",
            "What the leaves' registers follow: nothing, the figure, the log, or picked marks",
            FOLLOWS,
        ),
        Property(
            "FloatList",
            "Wander",
            "Bundle",
            "How far the figure wanders from face to back, measured on photographed backs: mm "
            "across, mm along, and mm that this may be off; empty while it is not known",
            [],
        ),
        Property(
            "Enumeration",
            "PinBacks",
            "Bundle",
            "How turned leaves are pinned once the wander is known: as their faces are, or by the "
            "figure of their backs",
            PINS,
        ),
        Property(
            "Integer",
            "Edition",
            "Bundle",
            "How often leaves were renumbered or turned: paper made before is stale",
            0,
            OUT,
        ),
        Property(
            "VectorList", "FaultOutlines", "Faults", "Outlines of faults through all leaves, mm", []
        ),
        Property("StringList", "FaultKinds", "Faults", "What each of those faults is", []),
        Property(
            "LinkListGlobal",
            "FaultShapes",
            "Faults",
            "Sketches, wires and flat faces drawn round faults through all leaves; what each is "
            "its name says: margin, split, knot, patch or stain",
            [],
        ),
        Property(
            "LinkGlobal",
            "UsableShape",
            "Faults",
            "A sketch, wire or flat face: no leaf is used outside it",
        ),
        Property("String", "Species", "Inventory", "The wood", ""),
        Property("String", "Cut", "Inventory", "How it was cut: sliced flat, on the quarter", ""),
        Property(
            "Enumeration", "TightSide", "Inventory", "Which side is the tight one", TIGHT_SIDES
        ),
        Property("String", "Flitch", "Inventory", "The flitch that it came from", ""),
        Property("String", "LotMark", "Inventory", "The mark of its lot", ""),
        Property("Float", "Moisture", "Inventory", "In % when photographed; 0 if not known", 0.0),
        Property("Float", "Cost", "Inventory", "Of the whole bundle; 0 if not known", 0.0),
        Property("String", "Currency", "Inventory", "What the cost is in", ""),
        Property("String", "Origin", "Inventory", "Where it comes from, and its papers", ""),
        Property("IntegerList", "Numbers", "Result", "The leaves' numbers", [], OUT),
        Property("Integer", "Count", "Result", "How many leaves there are", 0, OUT),
        Property("Length", "LeastWidth", "Result", "Of the narrowest leaf's outline", 0.0, OUT),
        Property("Length", "LeastLength", "Result", "Of the shortest leaf's outline", 0.0, OUT),
        Property(
            "Float", "FullM2", "Result", "m2 of the rectangles round all leaves' outlines", 0.0, OUT
        ),
        Property("Float", "FullSqFt", "Result", "The same in square feet", 0.0, OUT),
        Property(
            "Float", "UsableM2", "Result", "m2 of the leaves that may be used, no faults", 0.0, OUT
        ),
        Property("Float", "UsableSqFt", "Result", "The same in square feet", 0.0, OUT),
        Property("String", "Registers", "Result", "How the leaves lie on each other", "", OUT),
        Property(
            "StringList", "Report", "Result", "What was said of the photographs brought in", [], OUT
        ),
    )

    def __init__(self, obj: Any) -> None:
        super().__init__(obj)
        _watch()

    def onDocumentRestored(self, obj: Any) -> None:
        super().onDocumentRestored(obj)
        _watch()

    def update(self, obj: Any) -> None:
        from veneerwb.host import values

        bundle = values.core_bundle(obj)
        values.particulars(obj)  # refuses what cannot be
        whole, usable = values.extents(obj)
        set_if_new(
            obj,
            Numbers=list(bundle.numbers),
            Count=whole.leaves,
            LeastWidth=_length(whole.width),
            LeastLength=_length(whole.length),
            FullM2=round(whole.full_m2, 6),  # as a document keeps it
            FullSqFt=round(whole.full_sq_ft, 4),
            UsableM2=round(usable.usable_m2, 6),
            UsableSqFt=round(usable.usable_sq_ft, 4),
            Registers=_registers(obj.Follows, [leaf.register for leaf in bundle.leaves]),
        )

    def onChanged(self, obj: Any, name: str) -> None:
        """What shows a leaf by itself follows its bundle's light."""
        if name == "EvenLight" and "Restore" not in obj.State:
            for leaf in getattr(obj, "Leaves", ()):
                leaf.touch()


class Moves:
    """Has bundles recomputed for what the host does not count as a change of theirs: the part that
    an outline lies in is moved, or it is put into a part or taken out of one, or it is given
    another name, which says what kind of fault it is."""

    def slotChangedObject(self, obj: Any, name: str) -> None:
        if name not in ("Group", "Placement", "Label"):
            return
        if obj.Document is None or obj.Document.Restoring:
            return
        if name == "Label":
            for one in obj.InList:
                if kind_of(one) == "Bundle" and obj in one.FaultShapes:
                    one.touch()
            return
        if not obj.hasExtension("App::GeoFeatureGroupExtension"):
            return
        for one in obj.Document.findObjects("App::FeaturePython"):
            if kind_of(one) == "Bundle" and _draws_in(one, obj, anywhere=name == "Group"):
                one.touch()


def _draws_in(bundle_obj: Any, container: Any, anywhere: bool) -> bool:
    """Whether outlines of a bundle lie in a part, or `anywhere` at all."""
    from veneerwb.host.faces import containers

    drawn = [one for one in (*bundle_obj.FaultShapes, bundle_obj.UsableShape) if one is not None]
    return any(anywhere or container in containers(one) for one in drawn)


def _watch() -> None:
    """From the first bundle on, moves are watched."""
    watching.watch(Moves)


def _length(millimetres: float) -> Any:
    return FreeCAD.Units.Quantity(round(millimetres, 6), FreeCAD.Units.Length)


def _registers(follows: str, registers: Sequence[Any]) -> str:
    """How the leaves lie on each other, in a sentence."""
    placed = any((r.angle, r.dx, r.dy) != (0.0, 0.0, 0.0) for r in registers)
    if follows != FOLLOWS[0]:
        return word(REGISTERED[follows])
    if placed:
        return word("The leaves have registers; it is not said what they follow.")
    return word(
        "The leaves lie as photographed: a photograph that is shifted against the others shifts "
        "its piece."
    )


REGISTERED = {
    "figure": marked("The leaves are registered and follow the figure."),
    "log": marked("The leaves are registered and follow the log."),
    "marks": marked("The leaves are registered and follow the marks."),
}


def add_bundle(doc: Any, bundle: Any) -> Any:
    """A Bundle with its leaves from a core Bundle."""
    from veneerwb.core.files import scratch
    from veneerwb.host import imports

    with scratch("leaves") as folder:
        ready = [imports.from_leaf(leaf, folder) for leaf in bundle.leaves]
        return imports.make_bundle(doc, ready, bundle.thickness, bundle.back, bundle.slope)


def add_bundle_from_photos(
    doc: Any,
    paths: Sequence[str | os.PathLike[str]],
    mm_per_px: float,
    thickness: float,
    back: str = "next",
    slope: float | None = None,
) -> Any:
    """A Bundle whose leaf k is photographed in paths[k-1]. Raises VeneerError, and the document
    stays as it was, for a photograph that cannot be read and for values that cannot be."""
    from veneerwb.core.files import scratch
    from veneerwb.host import imports

    imports.check_bundle(len(paths), thickness, back)
    with scratch("leaves") as folder:
        ready = [imports.from_file(p, folder, k, mm_per_px) for k, p in enumerate(paths, start=1)]
        return imports.make_bundle(doc, ready, thickness, back, slope)


def core_bundle(obj: Any) -> Any:
    """The veneerwb.core.Bundle that a Bundle object stands for; its photographs are read when asked
    for."""
    from veneerwb.host import values

    return values.core_bundle(obj)

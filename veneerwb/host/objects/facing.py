# SPDX-License-Identifier: LGPL-2.1-or-later
"""Facing: one leaf shown on flat faces of other objects."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import FreeCAD

from veneerwb.host.objects.base import OUT, SECRET, Property, Proxy, Refused, kind_of, set_if_new


class Facing(Proxy):
    """A leaf on faces. Its Shape holds copies of the faces in the order chosen, each outwards up,
    where they are in the world; the picture itself is drawn by the view.

    Faces in one plane share the figure; on each other plane the leaf's middle lies on the middle of
    that plane's faces.
    """

    kind = "Facing"
    properties = (
        Property("LinkGlobal", "Leaf", "Facing", "The leaf that is shown"),
        Property("LinkSubListGlobal", "Faces", "Facing", "The flat faces that it is shown on"),
        Property("Bool", "Turned", "Facing", "The leaf is turned over and shows its back", False),
        Property(
            "Angle",
            "Grain",
            "Position",
            "Direction of the grain, counter-clockwise from up; from global y on a level face",
            0.0,
        ),
        Property(
            "Distance",
            "Across",
            "Position",
            "How far the leaf is moved to the right, seen with the grain upright",
            0.0,
        ),
        Property(
            "Distance",
            "Along",
            "Position",
            "How far the leaf is moved along its grain",
            0.0,
        ),
        Property(
            "StringList", "Findings", "Result", "What is to be said, the gravest first", [], OUT
        ),
        Property("String", "Revision", "Result", "A mark that changes with the picture", "", OUT),
        Property(
            "LinkListGlobal",
            "Watched",
            "Result",
            "What the faces lie in and where the back's picture comes from",
            [],
            SECRET,
        ),
        Property("StringList", "FaceNames", "Result", "The faces, as last seen", [], SECRET),
        Property("IntegerList", "FaceCounts", "Result", "How many faces there were", [], SECRET),
        Property("VectorList", "FacePlanes", "Result", "A normal and a point each", [], SECRET),
    )

    def __init__(self, obj: Any) -> None:
        super().__init__(obj)
        _watch()

    def onDocumentRestored(self, obj: Any) -> None:
        super().onDocumentRestored(obj)
        _watch()

    def update(self, obj: Any) -> None:
        import Part

        from veneerwb.host import faces

        links = faces.chosen(obj.Faces)
        _refuse_deleted(obj, links)
        if not links:
            raise Refused("It has no faces; choose flat faces.")
        copies = [faces.found(*link, before) for link, before in zip(links, _seen(obj, links))]
        faced = _faced(obj, copies, links)
        findings = [str(finding) for finding in faced.findings]
        back = faces.above(obj).inverse()
        for copy in copies:
            copy.Placement = back.multiply(copy.Placement)
        now = [faces.seen(*link) for link in links]
        if not obj.Placement.isIdentity():  # moved by hand; the host would add it to the shape
            obj.Placement = type(obj.Placement)()
        obj.Shape = Part.Compound(copies)
        set_if_new(
            obj,
            Findings=findings,
            Revision=revision(faced),
            Watched=_watched(obj, links),
            FaceNames=_names(links),
            FaceCounts=[one.count for one in now],
            FacePlanes=[vector for one in now for vector in (one.normal, one.point)],
        )


class Moves:
    """Has facings recomputed for what the host does not count as a change of theirs: something is
    put into a part or taken out of it, or the part that a facing itself lies in is moved."""

    def slotChangedObject(self, obj: Any, name: str) -> None:
        if name not in ("Group", "Placement") or obj.Document is None or obj.Document.Restoring:
            return
        if not obj.hasExtension("App::GeoFeatureGroupExtension"):
            return
        for one in obj.Document.findObjects("Part::FeaturePython"):
            if kind_of(one) == "Facing":
                _moved(one, obj, name)


def _moved(facing: Any, container: Any, name: str) -> None:
    holders = facing.InListRecursive
    if name == "Group":  # it may have been put into what it watches
        watched = [one for one in facing.Watched if one not in holders]
        set_if_new(facing, Watched=watched)
    if name == "Group" or container in holders:
        facing.touch()


_watching: list[Moves] = []


def _watch() -> None:
    """From the first facing on, moves are watched."""
    if not _watching:
        _watching.append(Moves())
        FreeCAD.addDocumentObserver(_watching[0])


def _names(links: Sequence[tuple[Any, str]]) -> list[str]:
    return [f"{obj.Name}.{name}" for obj, name in links]


def _seen(obj: Any, links: Sequence[tuple[Any, str]]) -> list[Any]:
    """How each face looked when it was last taken; None for all where others were chosen since, or
    the host, if it keeps track of faces, gave them new names itself."""
    from veneerwb.host import faces

    planes = obj.FacePlanes
    seen = [faces.Seen(*one) for one in zip(obj.FaceCounts, planes[::2], planes[1::2])]
    same = list(obj.FaceNames) == _names(links) and len(seen) == len(links)
    return seen if same else [None] * len(links)


def _refuse_deleted(obj: Any, links: Sequence[tuple[Any, str]]) -> None:
    """The host takes a deleted object's faces out of the list without a word."""
    left = [
        name for name in obj.FaceNames if obj.Document.getObject(name.split(".")[0]) is not None
    ]
    if len(left) < len(obj.FaceNames) and left == _names(links):
        gone = [name.partition(".") for name in obj.FaceNames if name not in left]
        words = ", ".join(f"{name.split('.')[-1]} of {base}" for base, _, name in gone)
        raise Refused(f"{words} is gone with what it belonged to; undo, or choose the faces again.")


def _watched(obj: Any, links: Sequence[tuple[Any, str]]) -> list[Any]:
    """What must be recomputed first and is linked to by no other property. Nothing that holds `obj`
    itself: the host takes no circles."""
    from veneerwb.host import faces

    around = [one for base, _ in links for one in faces.containers(base)]
    bundle = _bundle(obj)
    around += [bundle] if bundle is not None else []
    holders = obj.InListRecursive
    found: list[Any] = []
    for one in around:
        if one not in found and one not in holders:
            found.append(one)
    return found


def _bundle(obj: Any) -> Any:
    """The bundle that shows what the leaf's back looks like; None where it is not needed."""
    if not obj.Turned or obj.Leaf.BackPhoto:
        return None
    bundles = [one for one in obj.Leaf.InList if kind_of(one) == "Bundle"]
    return min(bundles, key=lambda one: one.Name, default=None)


def _faced(obj: Any, shapes: Sequence[Any], links: Sequence[tuple[Any, str]]) -> Any:
    """The core's value for faces in the world."""
    from veneerwb.core.facing import Faced, Lie, planes
    from veneerwb.host import faces, values

    if kind_of(obj.Leaf) != "Leaf":
        raise Refused("It has no leaf, or the leaf is gone; choose a leaf.")
    leaf, bundle = values.core_leaf(obj.Leaf), _bundle(obj)
    if bundle is not None:
        leaf = values.core_bundle(bundle).leaf(leaf.number)
    lie = Lie(obj.Grain.Value, obj.Across.Value, obj.Along.Value, bool(obj.Turned))
    flat = [faces.flat_face(shape, *link) for shape, link in zip(shapes, links)]
    return Faced(leaf, leaf.side(lie.turned), lie, planes(flat))


def faced(obj: Any) -> Any:
    """The veneerwb.core.facing.Faced of a Facing as it was last recomputed: its planes, and the
    motions onto leaf and photograph. Raises VeneerError or Refused."""
    from veneerwb.host import faces

    links = faces.chosen(obj.Faces)
    shapes = faces.in_world(obj)
    if len(links) != len(shapes):  # others are chosen, or some are gone: those last taken are shown
        links = [(obj, f"Face{k}") for k in range(1, len(shapes) + 1)]
    return _faced(obj, shapes, links)


def revision(faced: Any) -> str:
    """A mark of all that the picture shows but the faces themselves."""
    from veneerwb.host.solids import mark

    side = faced.side
    gains = (side.image.gains,) if side.image.gains else ()  # as before there were any
    return mark(
        faced.lie,
        faced.leaf.usable.bounds,
        (side.register, side.view, side.mm_per_px, side.image.shape),
        side.image.sha256,
        *gains,
    )


def set_faces(obj: Any, faces: Sequence[tuple[Any, str]]) -> None:
    """Chooses the faces of a Facing: [(box, "Face6"), ...]. Unlike a change of its property, this
    forgets what was chosen before, and with it any fear that a face is another one now."""
    obj.Faces = list(faces)
    obj.FaceNames, obj.FaceCounts, obj.FacePlanes = [], [], []


def add_facing(
    doc: Any, leaf: Any, faces: Sequence[tuple[Any, str]] = (), **properties: Any
) -> Any:
    """A Facing of a Leaf object on faces [(box, "Face6"), ...], with the properties given by name.
    Recompute to see it."""
    obj = doc.addObject("Part::FeaturePython", "Facing")
    try:
        Facing(obj)
        obj.Leaf = leaf
        set_faces(obj, faces)
        for name, value in properties.items():
            setattr(obj, name, value)
    except Exception:
        doc.removeObject(obj.Name)
        raise
    return obj

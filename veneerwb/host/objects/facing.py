# SPDX-License-Identifier: LGPL-2.1-or-later
"""Facing: one leaf shown on flat faces of other objects."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from veneerwb.host import known_faces
from veneerwb.host.known_faces import OnFaces, set_faces
from veneerwb.host.objects.base import OUT, Property, Refused, added, give, kind_of, set_if_new
from veneerwb.words import word


class Facing(OnFaces):
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
        *known_faces.PROPERTIES,
    )

    def update(self, obj: Any) -> None:
        import Part

        from veneerwb.host import faces

        links, copies = known_faces.taken(obj)
        faced = _faced(obj, copies, links)
        findings = [str(finding) for finding in faced.findings]
        back = faces.above(obj).inverse()
        for copy in copies:
            copy.Placement = back.multiply(copy.Placement)
        known_faces.put_shape(obj, Part.Compound(copies))
        set_if_new(obj, Findings=findings, Revision=revision(faced))
        bundle = _bundle(obj)
        known_faces.keep(obj, links, [] if bundle is None else [bundle])


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
        raise Refused(word("It has no leaf, or the leaf is gone; choose a leaf."))
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


def add_facing(
    doc: Any, leaf: Any, faces: Sequence[tuple[Any, str]] = (), **properties: Any
) -> Any:
    """A Facing of a Leaf object on faces [(box, "Face6"), ...], with the properties given by name.
    Recompute to see it."""
    with added(doc, "Part", Facing) as obj:
        obj.Leaf = leaf
        set_faces(obj, faces)
        give(obj, properties)
    return obj

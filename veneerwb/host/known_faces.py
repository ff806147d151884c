# SPDX-License-Identifier: LGPL-2.1-or-later
"""Faces that an object of ours lies on: known again at each recompute, and watched as they move.

Such an object has a Faces list and the results Watched, FaceNames, FaceCounts and FacePlanes.
Nothing here imports the core at its top, as no file of document objects does.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from veneerwb.host import watching
from veneerwb.host.objects.base import SECRET, Property, Proxy, Refused, kind_of, set_if_new
from veneerwb.words import say, word

KINDS = ("Facing", "Run")
"""The objects that lie on faces."""
PROPERTIES = (
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

Links = Sequence[tuple[Any, str]]


class OnFaces(Proxy):
    """The base of the proxies of objects that lie on faces: moves are watched while there is one.
    """

    def __init__(self, obj: Any) -> None:
        super().__init__(obj)
        watch()

    def onDocumentRestored(self, obj: Any) -> None:
        super().onDocumentRestored(obj)
        watch()


def taken(obj: Any) -> tuple[Links, list[Any]]:
    """The faces that are chosen, one link each, and copies of them in the world, outwards up.
    Refused where there are none, or where one is gone or by all signs another one now."""
    from veneerwb.host import faces

    links = faces.chosen(obj.Faces)
    _refuse_deleted(obj, links)
    if not links:
        raise Refused(word("It has no faces; choose flat faces."))
    return links, [faces.found(*link, before) for link, before in zip(links, _seen(obj, links))]


def keep(obj: Any, links: Links, more: Iterable[Any] = ()) -> None:
    """Writes down how the faces look now, and watches what they lie in and `more` objects."""
    from veneerwb.host import faces

    now = [faces.seen(*link) for link in links]
    set_if_new(
        obj,
        Watched=_watched(obj, links, more),
        FaceNames=_names(links),
        FaceCounts=[one.count for one in now],
        FacePlanes=[vector for one in now for vector in (one.normal, one.point)],
    )


def set_faces(obj: Any, faces: Links) -> None:
    """Chooses the faces of a Facing or a Run: [(box, "Face6"), ...]. Unlike a change of its
    property, this forgets what was chosen before, and with it any fear that a face is another one
    now."""
    obj.Faces = list(faces)
    obj.FaceNames, obj.FaceCounts, obj.FacePlanes = [], [], []


def put_shape(obj: Any, shape: Any) -> None:
    """Gives it a shape that lies right in the world as it is: moved by hand it would lie apart."""
    if not obj.Placement.isIdentity():
        obj.Placement = type(obj.Placement)()
    obj.Shape = shape


def _names(links: Links) -> list[str]:
    return [f"{obj.Name}.{name}" for obj, name in links]


def _seen(obj: Any, links: Links) -> list[Any]:
    """How each face looked when it was last taken; None for all where others were chosen since, or
    the host, if it keeps track of faces, gave them new names itself."""
    from veneerwb.host import faces

    planes = obj.FacePlanes
    seen = [faces.Seen(*one) for one in zip(obj.FaceCounts, planes[::2], planes[1::2])]
    same = list(obj.FaceNames) == _names(links) and len(seen) == len(links)
    return seen if same else [None] * len(links)


def _refuse_deleted(obj: Any, links: Links) -> None:
    """The host takes a deleted object's faces out of the list without a word."""
    left = [
        name for name in obj.FaceNames if obj.Document.getObject(name.split(".")[0]) is not None
    ]
    if len(left) < len(obj.FaceNames) and left == _names(links):
        gone = [name.partition(".") for name in obj.FaceNames if name not in left]
        lost = ", ".join(
            say("{face} of {owner}", face=name.split(".")[-1], owner=base) for base, _, name in gone
        )
        raise Refused(say(
            "{faces} is gone with what it belonged to; undo, or choose the faces again.",
            faces=lost,
        ))


def _watched(obj: Any, links: Links, more: Iterable[Any]) -> list[Any]:
    """What must be recomputed first and is linked to by no other property. Nothing that holds `obj`
    itself: the host takes no circles."""
    from veneerwb.host import faces

    around = [one for base, _ in links for one in faces.containers(base)]
    holders = obj.InListRecursive
    found: list[Any] = []
    for one in (*around, *more):
        if one not in found and one not in holders:
            found.append(one)
    return found


# --- moves -------------------------------------------------------------------------------------


class Moves:
    """Has what lies on faces recomputed for what the host does not count as a change of theirs:
    something is put into a part or taken out of it, or the part that it lies in itself is moved."""

    def slotChangedObject(self, obj: Any, name: str) -> None:
        if name not in ("Group", "Placement") or obj.Document is None or obj.Document.Restoring:
            return
        if not obj.hasExtension("App::GeoFeatureGroupExtension"):
            return
        for one in obj.Document.findObjects("Part::FeaturePython"):
            if kind_of(one) in KINDS:
                _moved(one, obj, name)


def _moved(one: Any, container: Any, name: str) -> None:
    holders = one.InListRecursive
    if name == "Group":  # it may have been put into what it watches
        set_if_new(one, Watched=[other for other in one.Watched if other not in holders])
    if name == "Group" or container in holders:
        one.touch()


def watch() -> None:
    """From the first object that lies on faces on, moves are watched."""
    watching.watch(Moves)

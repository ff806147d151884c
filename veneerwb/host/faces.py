# SPDX-License-Identifier: LGPL-2.1-or-later
"""Faces of other people's solids: found by name, brought into the world, seen from outside."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import Part
from FreeCAD import Matrix, Placement, Vector

from veneerwb.core.facing import SAME_PLANE, Face, Frame
from veneerwb.core.listing import all_of
from veneerwb.core.plane import SAGITTA
from veneerwb.host.objects.base import Refused
from veneerwb.words import say, word

SMALLEST = 1e-4
"""mm2: a smaller face is a slip of the model."""
FURTHEST = 1e6
"""mm: so is anything that reaches further."""

Chosen = tuple[Any, str]
"""An object and the name of one of its faces: (box, "Face6"), (part, "Body.Pad.Face6")."""


def chosen(links: Sequence[tuple[Any, Any]]) -> list[Chosen]:
    """A LinkSubList's value, one face each, none twice."""
    found: list[Chosen] = []
    for obj, names in links:
        for name in (names,) if isinstance(names, str) else names:
            if (obj, name) not in found:
                found.append((obj, name))
    return found


def words(obj: Any, name: str) -> str:
    """ "Face6 of Box" """
    return of_owner(element_of(name), obj.Label)


def of_owner(face: str, owner: str) -> str:
    return say("{face} of {owner}", face=face, owner=owner)


def element_of(name: str) -> str:
    """ "Face6" of "Body.Pad.?Face6" (1.x writes a lost one so)."""
    return name.rpartition(".")[2].lstrip("?")


# --- where things are --------------------------------------------------------------------------


def containers(obj: Any) -> list[Any]:
    """The parts and bodies that `obj` lies in, the nearest first."""
    found, above = [], obj.getParentGeoFeatureGroup()
    while above is not None and above not in found:
        found.append(above)
        above = above.getParentGeoFeatureGroup()
    return found


def above(obj: Any) -> Placement:
    """The placement in the world of what `obj` lies in."""
    place = Placement()
    for one in containers(obj):
        place = one.Placement.multiply(place)
    return place


def in_world(obj: Any) -> list[Any]:
    """The faces of an object's shape, in the world."""
    place, found = above(obj), obj.Shape.Faces
    for face in found:
        face.Placement = place.multiply(face.Placement)
    return found


def place_of(obj: Any, frame: Frame) -> Placement:
    """Where a plane's frame lies as `obj` sees it: without the placements that the host adds."""
    columns = zip(frame.right, frame.up, frame.normal, frame.origin)
    numbers = [float(number) for row in columns for number in row]
    here = above(obj).multiply(obj.Placement)
    return here.inverse().multiply(Placement(Matrix(*numbers, 0.0, 0.0, 0.0, 1.0)))


# --- a face ------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Seen:
    """How a face looked to its object, placements apart: by it a face is known for another one
    where the host only counts faces, and so names them anew with each edge that is cut."""

    count: int
    normal: Vector
    point: Vector

    def shows(self, face: Any, whole: Any) -> bool:
        """Whether a face of `whole` lies in the plane that was seen."""
        if not is_flat(face):
            return False
        normal, point = _local(face, whole)
        frame = Frame.facing(tuple(self.normal), tuple(self.point))
        return frame.holds(tuple(normal), [tuple(point)])


def _local(face: Any, whole: Any) -> tuple[Vector, Vector]:
    """Normal and middle of a face as its whole shape has them without its placement."""
    back = whole.Placement.inverse()
    return back.Rotation.multVec(normal_of(face)), back.multVec(face.CenterOfMass)


def seen(obj: Any, name: str) -> Seen:
    """How a face that is there looks now."""
    whole, element = _whole(obj, name)
    return Seen(len(whole.Faces), *_local(_element(whole, element), whole))


def found(obj: Any, name: str, before: Seen | None = None) -> Any:
    """A copy of that face in the world, turned so that its normal points outwards. Refused if it
    is gone, no face, not flat or of no size, or if by all signs it is not the one seen before."""
    whole, element = _whole(obj, name)
    face = _element(whole, element)
    if face is None:
        raise Refused(say(
            "{face} is gone; {instead}.",
            face=words(obj, name), instead=_instead(whole, before),
        ))
    if face.ShapeType != "Face":
        raise Refused(say("{face} is no face; choose flat faces.", face=words(obj, name)))
    if face.Area < SMALLEST:
        raise Refused(say("{face} has no size; choose a larger face.", face=words(obj, name)))
    refuse_endless(obj, face)
    if not is_flat(face):
        raise Refused(say("{face} is not flat; choose flat faces.", face=words(obj, name)))
    if before and before.count != len(whole.Faces) and not before.shows(face, whole):
        now = _now(whole, before)
        if now:
            raise Refused(say(
                "{face} is another face now; {instead}.",
                face=words(obj, name), instead=_instead(whole, before),
            ))
    copy = face.copy()
    if _inside_out(face, whole):
        copy.reverse()
    copy.Placement = above(obj).multiply(copy.Placement)
    return copy


def _now(whole: Any, before: Seen | None) -> list[str]:
    """The names of the faces that lie in the plane that was seen before."""
    if before is None or whole.isNull():
        return []
    return [f"Face{k}" for k, one in enumerate(whole.Faces, 1) if before.shows(one, whole)]


def _instead(whole: Any, before: Seen | None) -> str:
    now = _now(whole, before)
    if now:
        return say(
            "choose the faces again (in its place there is {faces})", faces=all_of(now)
        )
    return word("choose the faces again")


def _whole(obj: Any, name: str) -> tuple[Any, str]:
    """The shape that a face belongs to, in the coordinates of what `obj` lies in, and the face's
    own name."""
    path, _, element = name.rpartition(".")
    return _shape(obj, f"{path}." if path else ""), element


def _shape(obj: Any, path: str) -> Any:
    try:
        return Part.getShape(obj, path, needSubElement=True)
    except Exception:  # the host raises what it likes where a path leads nowhere
        return Part.Shape()


def _element(whole: Any, name: str) -> Any:
    """That part of a shape; None if there is none."""
    if whole.isNull() or name.startswith("?"):
        return None
    try:
        part = whole.getElement(name)
    except Exception:
        return None
    return None if part is None or part.isNull() else part


def is_flat(face: Any) -> bool:
    """Whether all of a face lies in a plane: the host looks at its edges alone, and those of a ball
    do."""
    if isinstance(face.Surface, Part.Plane):
        return True
    plane, (u0, u1, v0, v1) = face.findPlane(SAME_PLANE), face.ParameterRange
    if plane is None:
        return False
    on_it = [face.valueAt(u, v) for u in (u0, (u0 + u1) / 2, u1) for v in (v0, (v0 + v1) / 2, v1)]
    return all(abs(plane.Axis.dot(one - plane.Position)) <= SAME_PLANE for one in on_it)


def refuse_endless(obj: Any, shape: Any) -> None:
    """Raises Refused for a shape that has no end, as of a line or a plane alone, or one so large
    that to divide its curves would take as long."""
    if not shape.BoundBox.DiagonalLength <= FURTHEST:
        raise Refused(say(
            "{name} has no end, or is larger than any piece of furniture; draw it smaller.",
            name=obj.Label,
        ))


def _inside_out(face: Any, whole: Any) -> bool:
    """Whether the face belongs to a solid that is turned inside out, as some imports are."""
    owner = next((s for s in whole.Solids if any(face.isSame(one) for one in s.Faces)), None)
    return owner is not None and owner.Volume < 0.0


def normal_of(face: Any) -> Vector:
    """The face's normal, outwards for what `found` gives."""
    u0, u1, v0, v1 = face.ParameterRange
    return face.normalAt((u0 + u1) / 2, (v0 + v1) / 2)


def flat_face(face: Any, obj: Any, name: str) -> Face:
    """The core's face of a face in the world, which is the one of that name of `obj`."""
    rings = [corners_of(wire) for wire in face.Wires]
    return Face(element_of(name), obj.Label, tuple(normal_of(face)), rings)


def corners_of(wire: Any) -> np.ndarray:
    """The corners of a wire, its curves divided to SAGITTA."""
    runs = [_points(edge) for edge in wire.OrderedEdges]
    ring: list[Any] = []
    for k, run in enumerate(runs):
        if ring:
            backwards = _apart(ring[-1], run[-1]) < _apart(ring[-1], run[0])
        else:  # the first edge ends where the next one has an end
            ends = runs[(k + 1) % len(runs)]
            far = min(_apart(run[-1], ends[0]), _apart(run[-1], ends[-1]))
            backwards = min(_apart(run[0], ends[0]), _apart(run[0], ends[-1])) < far
        ring += (run[::-1] if backwards else run)[bool(ring) :]
    return np.array([tuple(point) for point in ring])


def _points(edge: Any) -> list[Vector]:
    if isinstance(edge.Curve, (Part.Line, Part.LineSegment)):
        return [vertex.Point for vertex in edge.Vertexes]
    return edge.discretize(QuasiDeflection=SAGITTA)


def _apart(a: Vector, b: Vector) -> float:
    return a.distanceToPoint(b)

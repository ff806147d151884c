# SPDX-License-Identifier: LGPL-2.1-or-later
"""Outlines drawn in the document (sketches, wires, flat faces) as areas in bundle mm.

They are looked at from above: global x across the leaves, y along the grain, the origin at the
bundle's own. Curves become polygons to the core's SAGITTA.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import Part
from shapely.geometry import Polygon
from shapely.ops import unary_union

from veneerwb.core import Fault
from veneerwb.core.facing import SAME_PLANE
from veneerwb.core.faults import KINDS, SMALLEST
from veneerwb.core.plane import TOUCH
from veneerwb.host.faces import above, corners_of, refuse_endless
from veneerwb.host.objects.base import Refused
from veneerwb.words import say

WHERE_NOT_SAID = "knot"
"""The kind of a fault whose object's label begins with none."""


def kind_of_label(label: str) -> str:
    """The kind of fault that a label begins with: "Split", "knot 3", "Stain at the edge"."""
    word = label.strip().casefold()
    return next((kind for kind in KINDS if word.startswith(kind)), WHERE_NOT_SAID)


def faults_of(objects: Sequence[Any]) -> tuple[Fault, ...]:
    """The faults drawn by objects, in bundle mm; each outline is filled. Refused, naming the
    object, for what is no closed flat outline."""
    found = []
    for obj in objects:
        filled = unary_union([Polygon(one) for one in _rings(obj)])
        for part in getattr(filled, "geoms", [filled]):
            found.append(Fault(part, kind_of_label(obj.Label)))
    return tuple(found)


def area_of(obj: Any) -> Any:
    """The area drawn by an object, in bundle mm; an outline within another is a hole. Refused as
    `faults_of`."""
    area = None
    for one in map(Polygon, _rings(obj)):
        area = one if area is None else area.symmetric_difference(one)
    return area


def _rings(obj: Any) -> list[Any]:
    """The corners of an object's outlines, N x 2 each, every one a sound area."""
    shape = getattr(obj, "Shape", None)
    if shape is None or shape.isNull() or not shape.Edges:
        raise Refused(say(
            "{name} shows no outline; choose a sketch, a wire or a flat face.",
            name=obj.Label,
        ))
    if shape.Solids:
        raise Refused(say(
            "{name} is a solid; choose a sketch, a wire or a flat face.",
            name=obj.Label,
        ))
    refuse_endless(obj, shape)
    shape = shape.copy()
    shape.Placement = above(obj).multiply(shape.Placement)
    wires = _wires(shape)
    if not all(wire.isClosed() for wire in wires):
        raise Refused(say("{name} is not closed; join the ends of its lines.", name=obj.Label))
    if shape.findPlane(SAME_PLANE) is None:
        raise Refused(say("{name} does not lie in one plane; draw it flat.", name=obj.Label))
    return [_sound(obj, wire) for wire in wires]


def _wires(shape: Any) -> list[Any]:
    if shape.Faces:
        return [wire for face in shape.Faces for wire in face.Wires]
    return [Part.Wire(edges) for edges in Part.sortEdges(shape.Edges)]


def _sound(obj: Any, wire: Any) -> Any:
    corners = corners_of(wire)[:, :2]
    if np.abs(corners[0] - corners[-1]).max() < TOUCH:  # nearly: that would cross
        corners = corners[:-1]
    outline = Polygon(corners) if len(corners) > 2 else Polygon()
    if outline.convex_hull.area < SMALLEST:
        raise Refused(say(
            "{name} encloses nothing, seen from above; draw it on the XY plane.",
            name=obj.Label,
        ))
    if not outline.is_valid:
        raise Refused(say("{name} crosses itself; draw it without crossing.", name=obj.Label))
    return corners

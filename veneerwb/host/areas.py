# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is drawn on a leaf or through a bundle, written into its document object: usable area,
faults, marks, picked points. Each is one undo step, and raises VeneerError before the document is
touched; whoever calls recomputes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from FreeCAD import Vector

from veneerwb.core import Fault, Motion
from veneerwb.core.faults import checked, outlined, with_faults
from veneerwb.core.plane import finite
from veneerwb.host import imports, values
from veneerwb.host.objects.base import set_if_new
from veneerwb.host.sequence import leaf_objects
from veneerwb.host.steps import one_step
from veneerwb.words import marked, word


def set_usable(leaf_obj: Any, area: Any = None) -> None:
    """Sets the usable area of a Leaf object (shapely, leaf mm); None for the whole photograph."""
    leaf = replace(values.core_leaf(leaf_obj), usable=None)
    if area is not None:
        leaf = outlined(leaf, area)
    with one_step(leaf_obj.Document, word("Set usable area")):
        imports.place_areas(leaf_obj, leaf)


def set_faults(leaf_obj: Any, faults: Sequence[Fault]) -> None:
    """Sets the faults of a Leaf object (leaf mm) in place of those that it has."""
    bare = replace(values.core_leaf(leaf_obj), faults=())
    leaf = with_faults(bare, faults)
    with one_step(leaf_obj.Document, word("Set faults")):
        imports.place_areas(leaf_obj, leaf)


def set_through_faults(bundle_obj: Any, faults: Sequence[Fault]) -> None:
    """Sets the faults that run through all leaves of a Bundle object (bundle mm) in place of those
    written down before; what sketches and wires show stays."""
    outlines = imports.fault_rings([checked(fault) for fault in faults])
    with one_step(bundle_obj.Document, word("Set faults through the bundle")):
        set_if_new(
            bundle_obj,
            FaultOutlines=imports.corners([ring for ring, _ in outlines]),
            FaultKinds=[kind for _, kind in outlines],
        )


Place = tuple[float, float]


def set_marks(leaf_obj: Any, places: Sequence[Place | None]) -> None:
    """Sets where the paper marks A, B .. of a Leaf object lie (leaf mm); None for one that is not
    on it."""
    marks = [_vector(place, k) for k, place in enumerate(places) if place is not None]
    with one_step(leaf_obj.Document, word("Set marks")):
        set_if_new(leaf_obj, Marks=marks)


def marks_of(leaf_obj: Any) -> dict[int, Place]:
    """Where the paper marks of a Leaf object lie (leaf mm), 0 for mark A."""
    return {round(mark.z): (mark.x, mark.y) for mark in leaf_obj.Marks}


def set_picked(bundle_obj: Any, marks: Mapping[int, Sequence[Place]]) -> None:
    """Keeps the points of the figure that were picked on the leaves of a Bundle object to lay them
    by, mm on the photographs, by leaf number; a leaf that has none loses what it had."""
    kept = {}
    for number, leaf in leaf_objects(bundle_obj).items():
        places = [_from_photo(leaf).apply(place) for place in marks.get(number, ())]
        kept[leaf] = [_vector(place, k) for k, place in enumerate(places)]
    with one_step(bundle_obj.Document, word("Pick marks")):
        for leaf, places in kept.items():
            set_if_new(leaf, Picked=places)


def picked(bundle_obj: Any) -> dict[int, tuple[Place, ...]]:
    """The points that are picked on the leaves of a Bundle object, mm on the photographs."""
    found = {}
    for number, leaf in leaf_objects(bundle_obj).items():
        if leaf.Picked:
            onto = _from_photo(leaf).inverse()
            places = (onto.apply((point.x, point.y)) for point in leaf.Picked)
            found[number] = tuple((float(x), float(y)) for x, y in places)
    return found


def _from_photo(leaf_obj: Any) -> Motion:
    """From mm on the photograph of a Leaf object's face to mm on the leaf."""
    face = values.core_leaf(leaf_obj).face
    return face.register @ face.view.inverse()


def _vector(place: Place, number: int) -> Vector:
    x, y = (finite(marked("place of a mark"), one) for one in place)
    return Vector(x, y, float(number))

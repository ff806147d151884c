# SPDX-License-Identifier: LGPL-2.1-or-later
"""Leaves on their way into a document: everything is read and written to files first, so that a bad
photograph leaves the document as it was."""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

from FreeCAD import Units, Vector
from shapely.geometry import Polygon, box

from veneerwb.core import Fault, Leaf, Side, VeneerError
from veneerwb.core.leaf import BACKS, THICKEST
from veneerwb.core.photos.preparation import check_leaf_size
from veneerwb.core.photos.preparing import Prepared
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import choice, positive
from veneerwb.host.keeping import keep
from veneerwb.host.objects import bundle as bundles
from veneerwb.host.objects import leaf as leaves
from veneerwb.host.objects.base import set_if_new
from veneerwb.host.photos import WorkingCopy, copied
from veneerwb.host.values import numbers_of
from veneerwb.words import marked


@dataclass(frozen=True)
class Ready:
    """A leaf whose pictures lie in files, ready to be put into a document."""

    leaf: Leaf
    face: WorkingCopy
    back: WorkingCopy | None
    notes: tuple[str, ...] = ()


def from_file(path: str | os.PathLike[str], folder: str, number: int, mm_per_px: float) -> Ready:
    """A leaf from the photograph of its face, its working copy in `folder`."""
    photo = Photo.read(path, mm_per_px)
    check_leaf_size((0.0, 0.0, *photo.size), name=photo.name)
    return from_leaf(Leaf(number, Side(photo)), folder)


def from_leaf(leaf: Leaf, folder: str) -> Ready:
    """A core leaf, its working copies in `folder`."""
    face = copied(leaf.face.image, folder, f"leaf-{leaf.number:03d}")
    back = None
    if leaf.back is not None and leaf.back.source == "photo":
        # A name of its own: two properties on one file can lose it.
        back = copied(leaf.back.image, folder, f"leaf-{leaf.number:03d}-back")
    return Ready(leaf, face, back)


def copy_of(one: Prepared) -> WorkingCopy:
    """The working copy that was made ready of a photograph."""
    name = os.path.basename(one.name)  # without the folder by which it may be told from others
    return WorkingCopy(str(one.file), one.mm_per_px, name, one.sha256, one.original_mm_per_px)


def check_bundle(count: int, thickness: float, back: str) -> None:
    """Raises what a bundle of `count` leaves would raise, before photographs are read."""
    if count == 0:
        raise VeneerError("no-leaves", "The bundle has no leaves; add at least one photograph.")
    positive(marked("leaf thickness"), thickness, THICKEST)
    choice(marked("back"), back, BACKS)


@contextmanager
def _all_or_nothing(doc: Any) -> Iterator[None]:
    """Takes out again what was added to a document before something failed."""
    before = {obj.Name for obj in doc.Objects}
    try:
        yield
    except BaseException:
        for name in [obj.Name for obj in reversed(doc.Objects) if obj.Name not in before]:
            doc.removeObject(name)
        raise


def make_leaf(doc: Any, ready: Ready) -> Any:
    """The Leaf object in `doc`; nothing is added if its picture cannot be kept there."""
    with _all_or_nothing(doc):
        return _leaf(doc, ready)


def _leaf(doc: Any, ready: Ready) -> Any:
    leaf = ready.leaf
    obj = doc.addObject("App::FeaturePython", "Leaf")
    leaves.Leaf(obj)
    obj.Label = f"Leaf {leaf.number}"
    obj.Number = leaf.number
    put(obj, "", ready.face, "Photo", "MmPerPx")
    obj.Gains = list(leaf.face.image.gains or ())
    if ready.back is not None:
        put(obj, "Back", ready.back, "BackPhoto", "BackMmPerPx")
        obj.BackGains = list(leaf.back.image.gains or ())
    place(obj, leaf)
    set_if_new(obj, Notes=list(ready.notes))
    return obj


def place(obj: Any, leaf: Leaf) -> None:
    """Sets what a Leaf object says of where things lie on it: registers, views, areas."""
    place_registers(obj, leaf)
    place_areas(obj, leaf)


def place_areas(obj: Any, leaf: Leaf) -> None:
    """Sets the usable area and the faults of a Leaf object."""
    everything = leaf.usable.equals(box(0.0, 0.0, *leaf.size))
    outlines = fault_rings(leaf.faults)
    set_if_new(
        obj,
        Usable=[] if everything else corners(_rings(leaf.usable)),
        FaultOutlines=corners([ring for ring, _ in outlines]),
        FaultKinds=[kind for _, kind in outlines],
    )


def fault_rings(faults: Sequence[Fault]) -> list[tuple[Any, str]]:
    """The outer rings of faults, and what each is; holes in them are not kept."""
    return [(part.exterior, one.kind) for one in faults for part in _parts(one.outline)]


def place_registers(obj: Any, leaf: Leaf) -> None:
    """Sets the registers and views of a Leaf object."""
    register, back = leaf.register, leaf.back
    set_if_new(
        obj,
        RegisterX=_length(register.dx),
        RegisterY=_length(register.dy),
        RegisterAngle=Units.Quantity(register.angle, Units.Angle),
        View=numbers_of(leaf.face.view) if leaf.face.view != register else [],
    )
    if back is not None and back.source == "photo":
        set_if_new(
            obj,
            BackRegister=numbers_of(back.register) if back.register != register else [],
            BackView=numbers_of(back.view) if back.view != back.register else [],
        )


def _length(millimetres: float) -> Any:
    return Units.Quantity(millimetres, Units.Length)


def put(obj: Any, prefix: str, copy: WorkingCopy, photo: str, scale: str) -> None:
    """Gives a Leaf object a working copy, and what is said of where it came from."""
    keep(obj, **{photo: copy.path})
    setattr(obj, scale, copy.mm_per_px)
    setattr(obj, f"{prefix}OriginalName", copy.name)
    setattr(obj, f"{prefix}OriginalSha256", copy.sha256)
    setattr(obj, f"{prefix}OriginalMmPerPx", copy.original_mm_per_px)


def _parts(area: Any) -> list[Polygon]:
    """The polygons of a shapely geometry; lines and points in it are no areas."""
    found = []
    for part in getattr(area, "geoms", [area]):
        found += _parts(part) if hasattr(part, "geoms") else [part] * (part.geom_type == "Polygon")
    return [part for part in found if not part.is_empty]


def _rings(area: Any) -> list[Any]:
    return [ring for part in _parts(area) for ring in (part.exterior, *part.interiors)]


def corners(rings: Sequence[Any]) -> list[Vector]:
    """The corners of rings, the third coordinate numbering the ring."""
    return [
        Vector(point[0], point[1], float(k))
        for k, ring in enumerate(rings)
        for point in list(ring.coords)[:-1]
    ]


def make_bundle(
    doc: Any, ready: Sequence[Ready], thickness: float, back: str, slope: float | None
) -> Any:
    """The Bundle object in `doc`, with its leaves; nothing is added if one of them fails."""
    with _all_or_nothing(doc):
        made = [_leaf(doc, one) for one in ready]
        obj = doc.addObject("App::FeaturePython", "Bundle")
        bundles.Bundle(obj)
        obj.Leaves, obj.Thickness, obj.Back = made, thickness, back
        obj.Slope, obj.SlopeKnown = slope or 0.0, slope is not None
        return obj

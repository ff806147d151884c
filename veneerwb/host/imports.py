# SPDX-License-Identifier: LGPL-2.1-or-later
"""Leaves on their way into a document: everything is read and written to files first, so that a bad
photograph leaves the document as it was."""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from FreeCAD import Vector
from shapely.geometry import Polygon, box

from veneerwb.core import Leaf, Side, VeneerError
from veneerwb.core.leaf import BACKS, THICKEST
from veneerwb.core.photos import Photo
from veneerwb.core.plane import choice, positive
from veneerwb.host.objects import bundle as bundles
from veneerwb.host.objects import leaf as leaves
from veneerwb.host.photos import WorkingCopy, copied
from veneerwb.host.values import numbers_of


@dataclass(frozen=True)
class Ready:
    """A leaf whose pictures lie in files, ready to be put into a document."""

    leaf: Leaf
    face: WorkingCopy
    back: WorkingCopy | None


def from_file(path: str | os.PathLike[str], folder: str, number: int, mm_per_px: float) -> Ready:
    """A leaf from the photograph of its face, its working copy in `folder`."""
    return from_leaf(Leaf(number, Side(Photo.read(path, mm_per_px))), folder)


def from_leaf(leaf: Leaf, folder: str, number: int = 0, mm_per_px: float = 0.0) -> Ready:
    """A core leaf, its working copies in `folder` (its own number and scale count)."""
    face = copied(leaf.face.image, folder, f"leaf-{leaf.number:03d}")
    back = None
    if leaf.back is not None and leaf.back.source == "photo":
        # A name of its own: two properties on one file can lose it.
        back = copied(leaf.back.image, folder, f"leaf-{leaf.number:03d}-back")
    return Ready(leaf, face, back)


def check_bundle(count: int, thickness: float, back: str) -> None:
    """Raises what a bundle of `count` leaves would raise, before photographs are read."""
    if count == 0:
        raise VeneerError("no-leaves", "The bundle has no leaves; add at least one photograph.")
    positive("leaf thickness", thickness, THICKEST)
    choice("back", back, BACKS)


def make_leaf(doc: Any, ready: Ready) -> Any:
    """The Leaf object in `doc`."""
    leaf, register = ready.leaf, ready.leaf.register
    obj = doc.addObject("App::FeaturePython", "Leaf")
    leaves.Leaf(obj)
    obj.Label = f"Leaf {leaf.number}"
    obj.Number = leaf.number
    obj.RegisterX, obj.RegisterY, obj.RegisterAngle = register.dx, register.dy, register.angle
    if leaf.face.view != register:
        obj.View = numbers_of(leaf.face.view)
    if not leaf.usable.equals(box(0.0, 0.0, *leaf.size)):
        obj.Usable = _corners(_rings(leaf.usable))
    outlines = [(part, fault.kind) for fault in leaf.faults for part in _parts(fault.outline)]
    obj.FaultOutlines = _corners([part.exterior for part, _ in outlines])
    obj.FaultKinds = [kind for _, kind in outlines]
    _put(obj, "", ready.face, "Photo", "MmPerPx")
    if ready.back is not None:
        _put(obj, "Back", ready.back, "BackPhoto", "BackMmPerPx")
        if leaf.back.register != register:
            obj.BackRegister = numbers_of(leaf.back.register)
        if leaf.back.view != leaf.back.register:
            obj.BackView = numbers_of(leaf.back.view)
    return obj


def _put(obj: Any, prefix: str, copy: WorkingCopy, photo: str, scale: str) -> None:
    setattr(obj, photo, copy.path)
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


def _corners(rings: Sequence[Any]) -> list[Vector]:
    return [
        Vector(point[0], point[1], float(k))
        for k, ring in enumerate(rings)
        for point in list(ring.coords)[:-1]
    ]


def make_bundle(
    doc: Any, ready: Sequence[Ready], thickness: float, back: str, slope: float | None
) -> Any:
    """The Bundle object in `doc`, with its leaves."""
    made = [make_leaf(doc, one) for one in ready]
    obj = doc.addObject("App::FeaturePython", "Bundle")
    bundles.Bundle(obj)
    obj.Leaves, obj.Thickness, obj.Back = made, thickness, back
    obj.Slope, obj.SlopeKnown = slope or 0.0, slope is not None
    return obj

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Leaf: owns the photographs of one leaf inside the document."""

from __future__ import annotations

import os
import shutil
import tempfile
from typing import Any

from veneerwb.host import keeping
from veneerwb.host.objects.base import OUT, Property, Proxy, kind_of, set_if_new

_HIDDEN = 4
PICTURES = ("Photo", "BackPhoto")


class Leaf(Proxy):
    """A leaf. Its pictures are working copies as seen from the face; the originals stay with the
    user.

    Usable and FaultOutlines are corners in mm on the leaf as seen from its face, the third
    coordinate numbering the ring (areas that lie in an even number of Usable's rings are holes) or
    the fault. Gains are kept beside the picture, which stays as it was photographed.
    """

    kind = "Leaf"
    version = 2
    upgrades = {1: lambda obj: None}  # what it lacks is added empty
    properties = (
        Property(
            "Integer", "Number", "Leaf", "The leaf's place in the bundle as it came off the log", 1
        ),
        Property("FileIncluded", "Photo", "Leaf", "Working copy of the photograph of the face"),
        Property("Float", "MmPerPx", "Leaf", "Scale of the working copy: mm per pixel", 0.0),
        Property("Length", "Width", "Leaf", "Size across the leaf", 0.0, OUT),
        Property("Length", "Length", "Leaf", "Size along the grain", 0.0, OUT),
        Property(
            "Distance",
            "RegisterX",
            "Register",
            "Where the bundle's origin lies on this leaf, across",
            0.0,
        ),
        Property(
            "Distance",
            "RegisterY",
            "Register",
            "Where the bundle's origin lies on this leaf, along",
            0.0,
        ),
        Property(
            "Angle", "RegisterAngle", "Register", "How far the figure is turned on this leaf", 0.0
        ),
        Property(
            "FloatList",
            "View",
            "Register",
            "Angle, x and y of the bundle on the photo of the face, where it is not the register",
            [],
            _HIDDEN,
        ),
        Property(
            "VectorList",
            "Usable",
            "Leaf",
            "Outline of what may be used, mm; empty for the whole leaf",
            [],
        ),
        Property("VectorList", "FaultOutlines", "Leaf", "Outlines of faults, mm", []),
        Property("StringList", "FaultKinds", "Leaf", "What each fault is", []),
        Property(
            "VectorList",
            "Marks",
            "Leaf",
            "Centres of the paper marks on it, mm; the third coordinate is 0 for mark A, 1 for B",
            [],
        ),
        Property(
            "VectorList",
            "Picked",
            "Leaf",
            "Points of the figure that were picked on it to lay the leaves by, mm",
            [],
        ),
        Property(
            "FloatList",
            "Gains",
            "Light",
            "What evens the light of the photograph: red, green, blue; empty for nothing",
            [],
        ),
        Property("StringList", "Notes", "Original", "What was said when it was brought in", []),
        Property(
            "String", "OriginalName", "Original", "Name of the photograph's own file", "", OUT
        ),
        Property(
            "String", "OriginalSha256", "Original", "SHA-256 of the photograph's own file", "", OUT
        ),
        Property(
            "Float", "OriginalMmPerPx", "Original", "Scale of the original: mm per pixel", 0.0, OUT
        ),
        Property(
            "FileIncluded",
            "BackPhoto",
            "Back",
            "Working copy of the photograph of the back, as seen from the face",
        ),
        Property(
            "Float", "BackMmPerPx", "Back", "Scale of the back's working copy: mm per pixel", 0.0
        ),
        Property(
            "FloatList",
            "BackRegister",
            "Back",
            "Angle, x and y of the bundle on the back, where it was photographed",
            [],
            _HIDDEN,
        ),
        Property(
            "FloatList",
            "BackView",
            "Back",
            "Angle, x and y of the bundle on the photo of the back, where it is not the register",
            [],
            _HIDDEN,
        ),
        Property(
            "String", "BackTie", "Back", "What ties the back to the face: outline or marks", "", OUT
        ),
        Property("Float", "BackTieRms", "Back", "mm rms that the two then lie apart", 0.0, OUT),
        Property(
            "Float", "BackTieError", "Back", "mm that the middle may be off by that", 0.0, OUT
        ),
        Property(
            "FloatList",
            "BackGains",
            "Light",
            "What evens the light of the back's photograph: red, green, blue; empty for nothing",
            [],
        ),
        Property("String", "BackOriginalName", "Original", "Name of the back's own file", "", OUT),
        Property(
            "String", "BackOriginalSha256", "Original", "SHA-256 of the back's own file", "", OUT
        ),
        Property(
            "Float",
            "BackOriginalMmPerPx",
            "Original",
            "Scale of the back's original: mm per pixel",
            0.0,
            OUT,
        ),
    )

    def __init__(self, obj: Any) -> None:
        super().__init__(obj)
        keeping.watch()

    def onDocumentRestored(self, obj: Any) -> None:
        super().onDocumentRestored(obj)
        keeping.watch()
        for name in PICTURES:
            part_from_copies(obj, name)
        if any(getattr(obj, name) and keeping.gone(obj, name) for name in PICTURES):
            self.execute(obj)  # says so

    def update(self, obj: Any) -> None:
        from veneerwb.host import values

        width, length = values.core_leaf(obj).size
        if (obj.Width.Value, obj.Length.Value) != (width, length):
            set_if_new(obj, Width=width, Length=length)


def part_from_copies(obj: Any, name: str) -> None:
    """Gives an object copied within its document a file of its own.

    The host lets the copy share the original's file and removes it with the first of the two; a
    document that lacks it cannot be saved. Giving the copy another file removes the shared one too,
    so it is put back; the original's property is not touched, for undo would then empty it.
    """
    shared = getattr(obj, name)
    if not shared or not os.path.exists(shared):
        return
    kind = kind_of(obj)
    others = (one for one in obj.Document.Objects if one is not obj and kind_of(one) == kind)
    if all(getattr(one, name, "") != shared for one in others):
        return
    with tempfile.TemporaryDirectory(prefix="veneerwb-leaves-") as folder:
        kept = shutil.copy2(shared, folder)
        stem, suffix = os.path.splitext(os.path.basename(shared))
        # With a name, or it would take the one that it had.
        setattr(obj, name, (kept, f"{stem}-{obj.Name}{suffix}"))
        if not os.path.exists(shared):
            shutil.copy2(kept, shared)


def add_leaf(doc: Any, source: Any, number: int = 1, mm_per_px: float = 0.0) -> Any:
    """A Leaf from the path of a photograph of its face at `mm_per_px`, or from a core Leaf (whose
    own number and scale then count). Raises VeneerError before the document is touched."""
    from veneerwb.core.files import scratch
    from veneerwb.host import imports

    with scratch("leaves") as folder:
        if hasattr(source, "face"):
            return imports.make_leaf(doc, imports.from_leaf(source, folder))
        return imports.make_leaf(doc, imports.from_file(source, folder, number, mm_per_px))

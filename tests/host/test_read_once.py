# SPDX-License-Identifier: LGPL-2.1-or-later
"""A Bundle object is read into a core bundle once, for as long as nothing of it changes."""

import FreeCAD
import numpy as np
import pytest

from veneerwb.core import Bundle, Leaf, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.host import values
from veneerwb.host.objects import add_bundle, core_bundle

OUTLINE = [FreeCAD.Vector(x, y, 0) for x, y in ((20, 20), (60, 20), (60, 80))]


def leaf(number):
    return Leaf(number, Side(Photo.of(np.full((40, 20, 3), 90 + number, np.uint8), 10.0)))


@pytest.fixture
def bundle(doc):
    made = add_bundle(doc, Bundle((leaf(1), leaf(2)), 0.6))
    made.FaultOutlines = OUTLINE
    made.FaultKinds = ["knot"]
    doc.recompute()
    return made


def test_what_does_not_touch_the_leaves_is_no_reason_to_read_them_again(doc, bundle, monkeypatch):
    first = core_bundle(bundle)
    told = []
    monkeypatch.setattr(values, "carried", lambda *args: told.append(args))
    bundle.Species = "oak"
    bundle.Cost = 40.0
    doc.recompute()
    assert core_bundle(bundle) is first and not told and bundle.Message == ""


CHANGES = {
    "a fault": lambda obj: setattr(obj, "FaultOutlines", []),
    "its kind": lambda obj: setattr(obj, "FaultKinds", ["stain"]),
    "a register": lambda obj: setattr(obj.Leaves[1], "RegisterX", 3.0),
    "a leaf's fault": lambda obj: (
        setattr(obj.Leaves[0], "FaultOutlines", [v + FreeCAD.Vector(60) for v in OUTLINE]),
        setattr(obj.Leaves[0], "FaultKinds", ["split"]),
    ),
    "what may be used": lambda obj: setattr(obj.Leaves[0], "Usable", OUTLINE),
    "the thickness": lambda obj: setattr(obj, "Thickness", 0.9),
    "a leaf": lambda obj: setattr(obj, "Leaves", obj.Leaves[:1]),
    "a number": lambda obj: setattr(obj.Leaves[1], "Number", 5),
    "the scale": lambda obj: setattr(obj.Leaves[0], "MmPerPx", 9.0),
}


@pytest.mark.parametrize("what", CHANGES)
def test_whatever_changes_is_seen_at_once(doc, bundle, what):
    first, usable = core_bundle(bundle), bundle.UsableM2
    CHANGES[what](bundle)
    changed = core_bundle(bundle)
    assert changed is not first and changed != first
    doc.recompute()
    whole, free = values.extents(bundle)
    assert (bundle.Count, bundle.UsableM2) == (whole.leaves, round(free.usable_m2, 6))
    if what in ("a fault", "a leaf's fault", "what may be used", "a leaf", "the scale"):
        assert bundle.UsableM2 != usable


def test_documents_do_not_mix(doc, bundle):
    first = core_bundle(bundle)
    other = FreeCAD.newDocument("Other")
    twin = add_bundle(other, Bundle((leaf(1),), 0.6))
    other.recompute()
    assert twin.Name == bundle.Name and core_bundle(twin).numbers == (1,)
    assert core_bundle(bundle) is first
    FreeCAD.closeDocument(other.Name)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A leaf on faces that go away, that become others, or that never would do: what is said. And what
must not change."""

import os
import sys

import numpy as np
import Part
import pytest
from PIL import Image

from veneerwb.core import Leaf, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.host.objects import add_facing, add_leaf, faced, set_faces


@pytest.fixture
def leaf(doc):
    return add_leaf(doc, Leaf(1, Side(Photo.of(np.full((200, 100, 3), 90, np.uint8), 2.0))))


def facing_of(doc, leaf, *faces, **properties):
    made = add_facing(doc, leaf, faces, **properties)
    doc.recompute()
    return made


def test_it_says_so_when_a_face_is_gone_and_keeps_its_shape(doc, leaf):
    base = doc.addObject("Part::Feature", "Thing")
    base.Shape = Part.makeBox(60, 80, 100)
    top = facing_of(doc, leaf, (base, "Face6"))
    base.Shape = Part.makeCylinder(30, 50)
    doc.recompute()
    assert top.Message.startswith("Face6 of Thing is gone; choose the faces again")
    assert top.Shape.BoundBox.ZMax == pytest.approx(100)
    assert len(faced(top).planes) == 1  # what is shown can still be asked for
    set_faces(top, [(base, "Face2")])
    doc.recompute()
    assert top.Message == "" and top.Shape.BoundBox.ZMax == pytest.approx(50)


def test_it_says_so_when_the_name_went_to_another_face(doc, leaf):
    """Where the host counts faces, cutting an edge gives old names to other faces; where it keeps
    track of them, it renames or loses them itself. In no case is the leaf shown on another face
    without a word."""
    body = doc.addObject("PartDesign::Body", "Body")
    block = body.newObject("PartDesign::AdditiveBox", "Block")
    doc.recompute()
    top = facing_of(doc, leaf, (body, "Face6"))
    assert top.Message == ""
    cut = body.newObject("PartDesign::Chamfer", "Chamfer")
    cut.Base, cut.Size = (block, ["Edge4", "Edge8"]), 1.0
    doc.recompute()
    assert body.Shape.getElement("Face6").CenterOfMass.z == pytest.approx(0)  # not the top now
    if top.Message:
        assert "Face6 of Body is another face now" in top.Message
        place = next(
            f"Face{k}" for k, f in enumerate(body.Shape.Faces, 1) if f.CenterOfMass.z > 9.9
        )
        assert f"in its place there is {place}" in top.Message
        set_faces(top, [(body, place)])
        doc.recompute()
    assert top.Message == ""
    assert top.Shape.BoundBox.ZMin == pytest.approx(10)


def test_a_deleted_solid_is_missed_and_undone(doc, leaf, crate):
    top = facing_of(doc, leaf, (crate, "Face6"), (crate, "Face3"))
    doc.openTransaction("delete")
    doc.removeObject("Crate")
    doc.recompute()
    doc.commitTransaction()
    assert "Face6 of Crate" in top.Message and "gone" in top.Message
    assert len(top.Shape.Faces) == 2
    doc.undo()
    doc.recompute()
    assert top.Message == "" and len(top.Shape.Faces) == 2


@pytest.mark.parametrize("lost", ["Leaf", "Photo"])
def test_a_lost_leaf_or_photograph_is_said(doc, leaf, crate, lost):
    top = facing_of(doc, leaf, (crate, "Face6"))
    if lost == "Leaf":
        doc.removeObject(leaf.Name)
    else:
        os.remove(leaf.Photo)
        leaf.touch()
    doc.recompute()
    assert ("leaf is gone" if lost == "Leaf" else "no photograph") in top.Message
    assert len(top.Shape.Faces) == 1


@pytest.mark.parametrize(
    ("name", "why"), [("Face1", "is not flat"), ("Edge1", "is no face"), ("Face9", "is gone")]
)
def test_what_is_no_flat_face_is_refused(doc, leaf, name, why):
    drill = doc.addObject("Part::Cylinder", "Drill")
    doc.recompute()
    assert why in facing_of(doc, leaf, (drill, name)).Message




def test_what_is_wrong_when_it_is_made_leaves_the_document_as_it_was(doc, leaf, crate):
    before = [obj.Name for obj in doc.Objects]
    with pytest.raises(AttributeError):
        add_facing(doc, leaf, [(crate, "Face6")], Nonsense=1)
    assert [obj.Name for obj in doc.Objects] == before


def test_it_has_to_have_faces(doc, leaf):
    assert facing_of(doc, leaf).Message == "It has no faces; choose flat faces."


def test_without_shapely_the_shape_stays_and_the_package_is_named(doc, leaf, crate, monkeypatch):
    top = facing_of(doc, leaf, (crate, "Face6"))
    for name in ("veneerwb.host.faces", "veneerwb.core.facing", "shapely", "shapely.geometry"):
        monkeypatch.setitem(sys.modules, name, None)
    monkeypatch.delattr("veneerwb.host.faces", raising=False)
    crate.Height = 50.0
    doc.recompute()
    assert "needs shapely" in top.Message and top.Shape.BoundBox.ZMax == pytest.approx(100)


def test_another_photograph_is_another_picture(doc, leaf, crate, tmp_path):
    top = facing_of(doc, leaf, (crate, "Face6"))
    before = top.Revision
    Image.fromarray(np.full((200, 100, 3), 91, np.uint8)).save(tmp_path / "other.png")
    leaf.Photo = str(tmp_path / "other.png")
    doc.recompute()
    assert top.Message == "" and top.Revision != before


def test_names_are_frozen():
    """They are in every saved document."""
    from veneerwb.host.objects.facing import Facing

    found = (Facing.__module__, Facing.__qualname__, Facing.kind)
    assert found == ("veneerwb.host.objects.facing", "Facing", "Facing")

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which faces are chosen in the 3-D view, and the name that documents hold."""

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from FreeCAD import Vector

from veneerwb.core import Leaf, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.gui.facing import selected_faces
from veneerwb.host.objects import add_facing, add_leaf


@pytest.fixture
def doc():
    made = FreeCAD.newDocument("Chosen")
    yield made
    FreeCADGui.Selection.clearSelection()
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)


@pytest.fixture
def leaf(doc):
    return add_leaf(doc, Leaf(1, Side(Photo.of(np.full((40, 20, 3), 90, np.uint8), 10.0))))


def test_selected_faces_are_those_of_bodies_links_and_plain_solids(doc, leaf):
    plain = doc.addObject("Part::Box", "Plain")
    body = doc.addObject("PartDesign::Body", "Body")
    body.newObject("PartDesign::AdditiveBox", "Block")
    part = doc.addObject("App::Part", "Carcase")
    part.addObject(body)
    link = doc.addObject("App::Link", "Copy")
    link.LinkedObject = part
    doc.recompute()
    choose = FreeCADGui.Selection.addSelection
    choose(doc.Name, "Plain", "Face2")
    choose(doc.Name, "Plain", "Edge1")
    choose(doc.Name, "Carcase", "Body.Block.Face6")
    choose(doc.Name, "Copy", "Body.Block.Face6")
    found = selected_faces()
    assert found == selected_faces(doc.Name) and len(found) == 3
    assert found[:2] == [(plain, "Face2"), (body, "Face6")]
    (owner, path) = found[2]
    assert owner is link and path.endswith("Face6")
    link.Placement.Base = Vector(0, 0, 77)
    facing = add_facing(doc, leaf, found)
    doc.recompute()
    assert facing.Message == "" and facing.Shape.Faces[2].CenterOfMass.z == pytest.approx(87)


def test_names_are_frozen():
    """They are in every saved document."""
    from veneerwb.gui.facing import FacingView

    found = (FacingView.__module__, FacingView.__qualname__)
    assert found == ("veneerwb.gui.facing", "FacingView")

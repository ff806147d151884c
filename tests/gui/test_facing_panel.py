# SPDX-License-Identifier: LGPL-2.1-or-later
"""A leaf laid on faces by the command and its panel, and the objects in the tree."""

import FreeCAD
import FreeCADGui
import pytest

from veneerwb.host.objects import add_facing, add_stock


@pytest.fixture
def block(fresh, bundle):
    """A block that is not ours: Face6 is its top, Face1 a side."""
    made = fresh.addObject("Part::Box", "Block")
    made.Length, made.Width, made.Height = 120.0, 200.0, 30.0
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    return made


def choose(block, *faces):
    FreeCADGui.Selection.clearSelection()
    for face in faces:
        FreeCADGui.Selection.addSelection(block.Document.Name, block.Name, face)


def faces_of(facing):
    return [(one.Name, part) for one, parts in facing.Faces for part in parts]


def test_a_leaf_is_laid_on_the_selected_faces_in_one_step(user, fresh, block):
    choose(block, "Face6", "Face1")
    user.open_panel("Veneer_LeafOnFaces", "Grain")
    facing = user.only(fresh, "Facing")
    assert faces_of(facing) == [("Block", "Face6"), ("Block", "Face1")]
    assert user.lines("faces") == ["Block, Face6", "Block, Face1"]
    user.fill("Leaf", "Leaf002")
    user.fill("Turned", True)
    user.fill("Grain", "30 deg")
    user.fill("Across", "1 in")
    user.fill("Along", "-12.5 mm")
    user.wait_for(lambda: facing.Along.Value == pytest.approx(-12.5), "the facing follows")
    assert user.lines() and len(user.lines()) == len(facing.Findings)
    assert all(text.endswith(line) for text, line in zip(facing.Findings, user.lines()))
    user.click(user.box("findings"), 0)
    (one,) = FreeCADGui.Selection.getSelectionEx()
    assert one.Object == facing and "Face1" in one.SubElementNames
    user.ok()
    user.wait_closed()
    assert facing.Leaf.Name == "Leaf002" and facing.Turned and facing.Message == ""
    assert facing.Grain.Value == pytest.approx(30.0)
    assert facing.Across.Value == pytest.approx(25.4)
    assert len(facing.Shape.Faces) == 2 and fresh.UndoCount == 1
    fresh.undo()
    assert not [obj for obj in fresh.Objects if obj.Name.startswith("Facing")]
    fresh.redo()
    fresh.recompute()
    assert len(user.only(fresh, "Facing").Shape.Faces) == 2


def test_faces_can_be_chosen_while_the_panel_is_open(user, fresh, block):
    user.open_panel("Veneer_LeafOnFaces", "Grain")
    facing = user.only(fresh, "Facing")
    assert "choose flat faces" in user.box("trouble").text()
    user.ok()
    assert FreeCADGui.Control.activeDialog()
    user.box("take").click()
    assert "Select one or more" in user.box("trouble").text()
    choose(block, "Face6")
    user.box("take").click()
    user.wait_for(lambda: len(facing.Shape.Faces) == 1, "the leaf is laid")
    assert user.lines("faces") == ["Block, Face6"]
    user.ok()
    user.wait_closed()
    assert facing.Message == "" and fresh.UndoCount == 1


def test_nothing_is_left_of_a_facing_that_is_not_wanted(user, fresh, block):
    choose(block, "Face6")
    before = user.state(fresh)
    user.open_panel("Veneer_LeafOnFaces", "Grain")
    user.fill("Grain", "45 deg")
    user.escape(user.box("Grain"))
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


@pytest.mark.parametrize(("end", "grain", "undos"), [("ok", 20.0, 1), ("cancel", 0.0, 0)])
def test_a_facing_is_edited_in_one_step_or_left_as_it_was(user, fresh, block, end, grain, undos):
    facing = add_facing(fresh, fresh.getObject("Leaf003"), [(block, "Face6")])
    fresh.recompute()
    fresh.clearUndos()
    before = user.state(fresh)
    user.double_click(facing, "Grain")
    assert user.box("Leaf").currentData() == "Leaf003"
    user.fill("Grain", "20 deg")
    user.wait_for(lambda: facing.Grain.Value == pytest.approx(20.0), "the facing follows")
    getattr(user, end)()
    user.wait_closed()
    assert facing.Grain.Value == pytest.approx(grain) and fresh.UndoCount == undos
    assert undos or user.state(fresh) == before


def test_a_curved_face_is_refused_in_a_sentence(user, fresh, block):
    post = fresh.addObject("Part::Cylinder", "Post")
    fresh.recompute()
    choose(post, "Face1")
    user.open_panel("Veneer_LeafOnFaces", "Grain")
    user.wait_for(lambda: user.visible(object, "trouble"), "it is said")
    assert "Face1 of Post" in user.box("trouble").text()
    user.cancel()
    user.wait_closed()


def test_leaves_hang_below_their_bundle_and_all_have_icons(user, fresh, block, bundle):
    stock = add_stock(fresh, 200.0, 400.0, 6)
    facing = add_facing(fresh, bundle.Leaves[0], [(block, "Face6")])
    fresh.recompute()
    assert bundle.ViewObject.Proxy.claimChildren() == list(bundle.Leaves)
    names = [obj.ViewObject.Proxy.getIcon() for obj in (bundle, bundle.Leaves[0], stock, facing)]
    assert len(set(names)) == 4
    assert not any(FreeCADGui.getIcon(name).isNull() for name in names)


def test_a_plain_document_of_an_older_addon_gets_the_icons_too(user, fresh, bundle, tmp_path):
    bundle.ViewObject.Proxy = 0  # what was saved before there were any
    fresh.saveAs(str(tmp_path / "old.FCStd"))
    FreeCAD.closeDocument(fresh.Name)
    again = FreeCAD.openDocument(str(tmp_path / "old.FCStd"))
    opened = user.only(again, "Bundle")
    assert opened.ViewObject.Proxy.claimChildren() == list(opened.Leaves)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The workbench's commands, run as a user runs them: the panels' own widgets, the real OK and
Cancel."""

import FreeCAD
import FreeCADGui
import pytest
from PIL import Image
from PySide import QtGui

from veneerwb.host.objects import add_match, add_stock, layout
from veneerwb.host.objects.base import kind_of


@pytest.fixture
def doc(fresh):
    return fresh


@pytest.fixture
def folder(eight_leaves, tmp_path):
    """The leaves photographed, 120 x 250 pixels each, numbered from 3."""
    made = tmp_path / "leaves é"
    made.mkdir()
    for leaf in eight_leaves.leaves:
        Image.fromarray(leaf.photo).save(made / f"oak 7 leaf-{leaf.number + 2}.png")
    return made


# --- bring in leaves ---------------------------------------------------------------------------


def bring_in(user, folder):
    user.open_panel("Veneer_BringInLeaves", "folder")
    user.fill("folder", str(folder))


def test_leaves_come_in_from_a_folder_in_one_step(user, doc, folder):
    bring_in(user, folder)
    assert "8 photographs, leaves 3 to 10" in user.box("summary").text()
    user.fill("known", "500 mm")
    user.fill("thickness", "1/32 in")
    user.fill("back", "previous")
    user.fill("side", "face")
    user.ok()
    user.wait_closed()
    (bundle,) = [obj for obj in doc.Objects if kind_of(obj) == "Bundle"]
    assert list(bundle.Numbers) == list(range(3, 11)) and bundle.Message == ""
    assert bundle.Leaves[0].Width.Value == pytest.approx(240.0)
    assert bundle.Leaves[0].Length.Value == pytest.approx(500.0)
    assert bundle.Leaves[0].Label == "Leaf 3"
    assert bundle.Thickness.Value == pytest.approx(25.4 / 32)
    assert bundle.Back == "previous"
    assert doc.UndoCount == 1
    doc.undo()
    assert doc.Objects == []
    doc.redo()
    assert len(doc.Objects) == 9
    assert FreeCADGui.Command.get("Veneer_NewRadialMatch").isActive()


def test_leaves_come_in_from_files_picked_one_by_one(user, doc, folder, monkeypatch):
    picked = [str(folder / f"oak 7 leaf-{number}.png") for number in (9, 4, 7)]
    monkeypatch.setattr(QtGui.QFileDialog, "getOpenFileNames", lambda *_: (picked, ""))
    user.open_panel("Veneer_BringInLeaves", "folder")
    user.box("pick_files").click()
    said = user.box("summary").text()
    assert "3 photographs, leaves 4 to 9" in said and "3 in between are missing" in said
    user.fill("known", "500 mm")
    assert "240" in user.box("summary").text()
    user.ok()
    user.wait_closed()
    assert list(user.only(doc, "Bundle").Numbers) == [4, 7, 9]


@pytest.mark.parametrize(("how", "box_name", "typed"), [
    ("width", "known", "120 mm"), ("pixel", "per_pixel", None),
])
def test_the_scale_comes_from_a_width_or_from_pixels(user, doc, folder, how, box_name, typed):
    bring_in(user, folder)
    user.fill("scale", how)
    if typed:
        user.fill(box_name, typed)
    else:
        user.fill("per_pixel", "1 mm")
    user.ok()
    user.wait_closed()
    (bundle,) = [obj for obj in doc.Objects if kind_of(obj) == "Bundle"]
    assert bundle.Leaves[0].Width.Value == pytest.approx(120.0)


def test_leaves_come_in_without_a_document(user, folder):
    bring_in(user, folder)
    user.ok()
    user.wait_closed()
    assert len(FreeCAD.ActiveDocument.Objects) == 9


def spoilt(folder, how):
    if how == "gone":
        return folder / "elsewhere"
    if how == "twice":
        copy = folder / "other 4.png"
        copy.write_bytes((folder / "oak 7 leaf-4.png").read_bytes())
    else:
        (folder / "oak 7 leaf-9.png").write_text("no picture")
    return folder


@pytest.mark.parametrize("how", ["gone", "twice", "no picture"])
def test_photos_that_will_not_do_give_a_sentence_and_change_nothing(user, doc, folder, how):
    add_stock(doc, 200.0, 400.0, 6)
    doc.recompute()
    before, undos = user.state(doc), doc.UndoCount
    bring_in(user, spoilt(folder, how))
    user.ok()
    assert FreeCADGui.Control.activeDialog()
    said = user.box("trouble").text()
    assert said.endswith(".") and "Traceback" not in said and "(" not in said[:1]
    assert user.state(doc) == before and doc.UndoCount == undos
    user.cancel()
    user.wait_closed()
    assert user.state(doc) == before and doc.UndoCount == undos


def test_nothing_chosen_is_said_so_and_no_document_is_left(user):
    user.open_panel("Veneer_BringInLeaves", "folder")
    user.ok()
    assert "folder" in user.box("trouble").text()
    user.cancel()
    user.wait_closed()
    user.wait_for(lambda: not FreeCAD.listDocuments(), "the new document goes")


# --- new radial match --------------------------------------------------------------------------


def the_match(doc):
    (found,) = [obj for obj in doc.Objects if kind_of(obj) == "Match"]
    return found


def open_match(user, doc, ways="6", diameter="300 mm"):
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    user.fill("Diameter", diameter)
    user.fill("Ways", ways)
    match = the_match(doc)
    user.wait_for(lambda: len(match.Shape.Solids) == int(ways), "the match follows the boxes")
    return match


def test_a_match_is_laid_while_the_boxes_change_and_is_one_step(user, doc, bundle):
    match = open_match(user, doc)
    assert match.Diameter.Value == pytest.approx(300.0) and match.Message == ""
    assert user.box("findings").count() == len(match.Findings)
    user.fill("Top", "Polygon")
    user.fill("Sides", "4")
    user.fill("AcrossFlats", "10 in")
    user.fill("Turn", "slip")
    user.fill("Order", "spread")
    user.fill("First", "2")
    user.fill("Oversize", "1/8 in")
    user.fill("Margin", "2 mm")
    user.wait_for(lambda: match.Margin.Value == pytest.approx(2.0), "the last box is read")
    user.ok()
    user.wait_closed()
    assert match.Message == "" and len(match.Shape.Solids) == 6
    assert (match.Top, match.Sides, match.Turn, match.Order) == ("Polygon", 4, "slip", "spread")
    assert match.AcrossFlats.Value == pytest.approx(254.0)
    assert (match.First, match.Oversize.Value) == (2, pytest.approx(25.4 / 8))
    assert doc.UndoCount == 1
    doc.undo()
    assert not [obj for obj in doc.Objects if kind_of(obj) == "Match"]
    doc.redo()
    doc.recompute()
    assert len(the_match(doc).Shape.Solids) == 6


def test_the_selected_stock_is_taken(user, doc, bundle):
    stock = add_stock(doc, 200.0, 400.0, 6)
    doc.recompute()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(stock)
    match = open_match(user, doc)
    assert match.Bundle == stock
    user.fill("Bundle", bundle.Name)
    user.wait_for(lambda: match.Bundle == bundle, "another bundle is taken")


@pytest.mark.parametrize("how", ["cancel", "escape"])
def test_nothing_is_left_of_a_match_that_is_not_wanted(user, doc, bundle, how):
    before, undos = user.state(doc), doc.UndoCount
    open_match(user, doc)
    if how == "cancel":
        user.cancel()
    else:
        user.escape(user.box("Ways"))
    user.wait_closed()
    assert user.state(doc) == before and doc.UndoCount == undos
    assert not doc.HasPendingTransaction


def test_what_cannot_be_laid_is_said_in_the_panel_which_stays_open(user, doc, bundle):
    match = open_match(user, doc)
    user.fill("Ways", "7")
    user.wait_for(lambda: match.Message, "book refuses seven ways")
    assert user.box("trouble").text() == match.Message
    assert len(match.Shape.Solids) == 6
    user.ok()
    assert FreeCADGui.Control.activeDialog() and user.box("trouble").text() == match.Message
    user.fill("Ways", "8")
    user.wait_for(lambda: not match.Message, "eight will do")
    assert not user.visible(QtGui.QLabel, "trouble")
    user.ok()
    user.wait_closed()
    assert len(the_match(doc).Shape.Solids) == 8


def test_a_wedge_taken_out_of_the_middle_starts_from_there(user, doc, bundle):
    match = open_match(user, doc)
    middle = layout(match).recipe.placement
    user.fill("AutoPlacement", False)
    user.wait_for(lambda: not match.AutoPlacement, "the placement is the user's")
    assert (match.TipX.Value, match.TipY.Value, match.Axis.Value) == pytest.approx(
        (middle.x, middle.y, middle.angle)
    )
    user.fill("TipX", "90 mm")
    user.wait_for(lambda: match.TipX.Value == pytest.approx(90.0), "the wedge moves")
    assert layout(match).recipe.placement.x == pytest.approx(90.0)
    user.ok()
    user.wait_closed()
    assert match.TipY.Value == pytest.approx(middle.y) and doc.UndoCount == 1


@pytest.fixture
def old(doc, bundle):
    made = add_match(doc, bundle, Diameter=300.0, Ways=6, Order="1, 3, 2, 5, 4, 6", Turn="slip")
    doc.recompute()
    doc.clearUndos()
    return made


def open_old(user, old):
    old.ViewObject.Proxy.doubleClicked(old.ViewObject)
    user.wait_for(lambda: user.visible(QtGui.QWidget, "Ways"), "the panel opens")


@pytest.mark.parametrize(("button", "ways", "undos"), [("ok", 8, 1), ("cancel", 6, 0)])
def test_a_match_is_edited_in_one_step_or_left_as_it_was(user, doc, old, button, ways, undos):
    before = user.state(doc)
    open_old(user, old)
    assert user.box("Order").currentText() == "1, 3, 2, 5, 4, 6"
    user.fill("Order", "sequence")
    user.fill("Ways", "8")
    user.wait_for(lambda: len(old.Shape.Solids) == 8, "the match follows the boxes")
    getattr(user, button)()
    user.wait_closed()
    assert len(old.Shape.Solids) == ways and doc.UndoCount == undos
    assert len(old.ViewObject.Proxy.laid.pieces) == ways
    assert "Touched" not in old.State
    if undos:
        doc.undo()
        doc.recompute()
        assert len(old.Shape.Solids) == 6
    else:
        assert user.state(doc) == before


def test_looking_at_a_match_changes_nothing(user, doc, old):
    before = user.state(doc)
    open_old(user, old)
    user.ok()
    user.wait_closed()
    assert user.state(doc) == before and doc.UndoCount == 0


def test_a_value_that_an_expression_sets_is_not_offered(user, doc, old):
    old.setExpression("Ways", "2 * 4")
    old.Order = "sequence"
    doc.recompute()
    open_old(user, old)
    assert not user.box("Ways").isEnabled() and user.box("Ways").value() == 8
    user.fill("Diameter", "250 mm")
    user.wait_for(lambda: old.Diameter.Value == pytest.approx(250.0), "the diameter is taken")
    assert len(old.Shape.Solids) == 8


def test_a_panel_goes_with_its_document(user, doc, bundle):
    open_match(user, doc)
    FreeCAD.closeDocument(doc.Name)
    user.wait_closed()
    assert not FreeCAD.listDocuments()


def test_the_tabulator_walks_down_the_panel(user, doc, bundle):
    open_match(user, doc)
    user.box("Bundle").setFocus()
    user.wait_for(lambda: user.box("Bundle").hasFocus(), "the first box has the keyboard")
    walked = []
    for _ in range(15):
        walked.append(QtGui.QApplication.focusWidget().objectName())
        FreeCADGui.getMainWindow().focusNextChild()
    wanted = ["Bundle", "Kind", "Top", "Diameter", "Ways", "Turn", "Strips", "Start", "CentreX",
              "CentreY", "DiscDiameter", "Order", "First", "Oversize", "Margin"]
    assert walked == wanted

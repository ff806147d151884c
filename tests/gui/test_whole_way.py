# SPDX-License-Identifier: LGPL-2.1-or-later
"""From photographs to a printed drawing as a user goes, and every way out of every panel."""

import FreeCAD
import FreeCADGui
import pytest
from PIL import Image
from PySide import QtCore, QtGui

from veneerwb.gui.panels import fields
from veneerwb.host.objects import add_match

PANELS = {
    "Veneer_BringInLeaves": "folder",
    "Veneer_NewRadialMatch": "Ways",
    "Veneer_LeafOnFaces": "Grain",
    "Veneer_CheckMatch": "findings",
    "Veneer_DrawMatch": "Title",
}


@pytest.fixture
def full(fresh, bundle):
    """A document in which every command can be run."""
    add_match(fresh, bundle, Diameter=300.0, Ways=6)
    block = fresh.addObject("Part::Box", "Block")
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(fresh.Name, block.Name, "Face6")
    return fresh


def report():
    (found,) = [
        one
        for one in QtGui.QApplication.allWidgets()
        if isinstance(one, QtGui.QTextEdit) and one.objectName() == "Report view"
    ]
    return found.toPlainText()


def test_from_photographs_to_a_pdf_nothing_is_reported(user, eight_leaves, tmp_path, monkeypatch):
    for leaf in eight_leaves.leaves:
        Image.fromarray(leaf.photo).save(tmp_path / f"leaf {leaf.number}.png")
    answer = str(tmp_path / "top.pdf")
    monkeypatch.setattr(QtGui.QFileDialog, "getSaveFileName", lambda *_: (answer, ""))
    monkeypatch.setattr(QtGui.QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path))
    monkeypatch.setattr(QtGui.QMessageBox, "information", lambda *_: None)
    before = report()
    user.open_panel("Veneer_BringInLeaves", "folder")
    user.box("pick_folder").click()
    user.fill("known", "500 mm")
    user.ok()
    user.wait_closed()
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    user.fill("Diameter", "400 mm")
    user.fill("Ways", "8")
    match = user.only(FreeCAD.ActiveDocument, "Match")
    user.wait_for(lambda: match.Diameter.Value == pytest.approx(400.0), "the match follows")
    user.ok()
    user.wait_closed()
    user.open_panel("Veneer_CheckMatch", "findings")
    user.close()
    user.wait_closed()
    user.open_panel("Veneer_DrawMatch", "Title")
    user.ok()
    user.wait_closed()
    FreeCADGui.runCommand("Veneer_SaveDrawing")
    doc = FreeCAD.ActiveDocument
    assert (tmp_path / "top.pdf").exists() and doc.UndoCount == 3
    assert report() == before
    for _ in range(3):
        doc.undo()
    assert doc.Objects == []
    for _ in range(3):
        doc.redo()
    doc.recompute()
    assert len(user.only(doc, "Match").Shape.Solids) == 8
    assert user.only(doc, "Drawing").Message == "" and report() == before


def cancel(user, doc, first):
    user.close() if first == "findings" else user.cancel()


def escape(user, doc, first):
    user.escape(user.box(first))


def other_workbench(user, doc, first):
    FreeCADGui.activateWorkbench("PartWorkbench")


def other_document(user, doc, first):
    FreeCAD.setActiveDocument(FreeCAD.newDocument("Other").Name)
    if first == "findings":  # it has no step that the other's changes could go into
        user.close()


@pytest.mark.parametrize("way_out", [cancel, escape, other_workbench, other_document])
@pytest.mark.parametrize("command", PANELS)
def test_every_way_out_leaves_nothing(user, full, command, way_out):
    before, undos = user.state(full), full.UndoCount
    user.open_panel(command, PANELS[command])
    if way_out is other_document and command == "Veneer_BringInLeaves":
        user.cancel()  # nor has this before OK
    way_out(user, full, PANELS[command])
    user.wait_closed()
    for obj in full.Objects:
        obj.purgeTouched()
    assert user.state(full) == before and full.UndoCount == undos
    assert not full.HasPendingTransaction


@pytest.mark.parametrize(("way_out", "edited"), [
    (way_out, edited)
    for way_out in (cancel, escape, other_workbench, other_document)
    for edited in (False, True)
])  # fmt: skip
def test_every_way_out_of_editing_leaves_the_match_as_it_was(user, full, way_out, edited):
    match = user.only(full, "Match")
    before, undos = user.state(full), full.UndoCount
    user.double_click(match, "Ways")
    if edited:
        user.fill("Ways", "8")
        user.wait_for(lambda: match.Ways == 8, "the match follows")
    way_out(user, full, "Ways")
    user.wait_closed()
    assert user.state(full) == before and full.UndoCount == undos
    assert not full.HasPendingTransaction


def test_undo_ends_an_open_panel(user, full):
    match = user.only(full, "Match")
    user.double_click(match, "Ways")
    user.fill("Ways", "8")
    user.wait_for(lambda: match.Ways == 8, "the match follows")
    FreeCADGui.runCommand("Std_Undo")
    user.wait_closed()
    full.recompute()
    assert match.Ways == 6 and len(match.Shape.Solids) == 6


def test_another_step_in_between_leaves_the_panel_with_one_of_its_own(user, full):
    match = user.only(full, "Match")
    user.double_click(match, "Ways")
    user.fill("Ways", "8")
    user.wait_for(lambda: match.Ways == 8, "the match follows")
    full.openTransaction("Something else")
    full.addObject("App::FeaturePython", "Else")
    full.commitTransaction()
    user.fill("Ways", "4")
    user.wait_for(lambda: match.Ways == 4, "the match follows")
    user.cancel()
    user.wait_closed()
    assert match.Ways == 8 and full.getObject("Else") is not None


@pytest.mark.parametrize("schema", [0, 2, 3, 5, 7])
def test_a_box_that_nobody_touched_changes_nothing(user, full, schema):
    match = user.only(full, "Match")
    match.Diameter, match.Axis, match.Oversize = 1000.0 / 3.0, 90.333333, 1.23456
    match.AutoPlacement = False
    full.recompute()
    full.clearUndos()
    before = user.state(full)
    FreeCAD.Units.setSchema(schema)
    try:
        user.double_click(match, "Ways")
        user.ok()
        user.wait_closed()
        assert user.state(full) == before and full.UndoCount == 0
        user.double_click(match, "Ways")
        user.fill("Ways", "8")
        user.wait_for(lambda: match.Ways == 8, "the match follows")
        user.ok()
        user.wait_closed()
    finally:
        FreeCAD.Units.setSchema(0)
    assert match.Diameter.Value == 1000.0 / 3.0 and match.Axis.Value == 90.333333


def test_what_can_no_longer_be_laid_still_opens_and_says_why(user, full):
    match = user.only(full, "Match")
    match.Ways = 7
    user.double_click(match, "Ways")
    assert "even" in user.box("trouble").text()
    user.cancel()
    user.wait_closed()
    full.removeObject(match.Bundle.Name)
    user.double_click(match, "Ways")
    assert user.box("Bundle").currentIndex() == -1
    user.cancel()
    user.wait_closed()


def test_typing_reports_nothing_while_the_panel_says_it(user, full):
    before = report()
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    user.fill("Ways", "7")
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "it is said")
    user.fill("Ways", "8")
    user.wait_for(lambda: not user.visible(QtGui.QLabel, "trouble"), "all is well again")
    user.cancel()
    user.wait_closed()
    assert report() == before


def test_characters_that_nobody_sees_do_not_come_into_a_document(user, full):
    user.open_panel("Veneer_DrawMatch", "Title")
    user.fill("Title", "Hall\x01table")
    user.ok()
    user.wait_closed()
    assert user.only(full, "Drawing").Title == "Hall table"


@pytest.mark.parametrize("command", PANELS)
def test_every_panel_goes_with_its_document(user, full, command):
    user.open_panel(command, PANELS[command])
    FreeCAD.closeDocument(full.Name)
    user.wait_closed()
    assert not FreeCAD.listDocuments()


@pytest.fixture
def comma():
    """A user whose decimals have a comma."""
    QtCore.QLocale.setDefault(QtCore.QLocale(QtCore.QLocale.German))
    yield
    QtCore.QLocale.setDefault(QtCore.QLocale.c())


@pytest.mark.parametrize(("typed", "mm"), [
    ("312,5 mm", 312.5),
    ("31,25 cm", 312.5),
    ("15/2 in", 190.5),
    ("12 1/2 in", 317.5),
    ("12+1/2 in", 317.5),
    ("7 15/16\"", 201.6125),
    ("1' 6\"", 457.2),
    ("300", 300.0),
])  # fmt: skip
def test_lengths_are_taken_in_the_users_ways_of_writing(user, full, comma, typed, mm):
    match = user.only(full, "Match")
    user.double_click(match, "Diameter")
    user.fill("Diameter", typed)
    user.wait_for(lambda: match.Diameter.Value == pytest.approx(mm), f"{typed} is taken")
    user.ok()
    user.wait_closed()
    assert match.Diameter.Value == pytest.approx(mm)


@pytest.mark.parametrize("text", ["1/2 in", "12.5 in", "1/2 1/2 in", "12 1/2", "12 mm", "3 1/2 mm"])
def test_what_is_no_mixed_number_of_inches_is_left_alone(text):
    assert fields.one_fraction(text) == text

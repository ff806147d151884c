# SPDX-License-Identifier: LGPL-2.1-or-later
"""A match drawn by the command and its panel, and saved as PDF by the command."""

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from veneerwb.host.objects import add_drawing, add_match
from veneerwb.host.objects.drawing import page_of


@pytest.fixture
def match(fresh, bundle):
    made = add_match(fresh, bundle, Diameter=300.0, Ways=6)
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    return made


@pytest.fixture
def drawing(fresh, match):
    made = add_drawing(fresh, match)
    fresh.recompute()
    fresh.clearUndos()
    return made


def page(doc):
    found = doc.findObjects("TechDraw::DrawPage")
    return found[0] if found else None


def texts(doc):
    """All that stands on the page's annotation and symbol views."""
    notes = doc.findObjects("TechDraw::DrawViewAnnotation")
    figures = doc.findObjects("TechDraw::DrawViewSymbol")
    return "\n".join(["\n".join(v.Text) for v in notes] + [v.Symbol for v in figures])


def test_a_match_is_drawn_in_one_step(user, fresh, match):
    user.open_panel("Veneer_DrawMatch", "Title")
    drawing = user.only(fresh, "Drawing")
    user.fill("Title", "Table for the hall")
    user.fill("DrawnBy", "The shop")
    user.fill("Base", "2 m")
    user.wait_for(lambda: drawing.SetOutBase.Value == pytest.approx(2000.0), "the page follows")
    assert "Table for the hall" in texts(fresh) and "The shop" in texts(fresh)
    user.ok()
    user.wait_closed()
    assert drawing.Message == "" and fresh.UndoCount == 1
    assert drawing.ViewObject.Proxy.claimChildren() == [page(fresh)]
    fresh.undo()
    assert page(fresh) is None and len(fresh.Objects) == len(match.Bundle.Leaves) + 2
    fresh.redo()
    fresh.recompute()
    assert "Table for the hall" in texts(fresh)


@pytest.mark.parametrize("how", ["cancel", "escape"])
def test_nothing_is_left_of_a_drawing_that_is_not_wanted(user, fresh, match, how):
    before = user.state(fresh)
    user.open_panel("Veneer_DrawMatch", "Title")
    user.fill("Title", "Something")
    if how == "cancel":
        user.cancel()
    else:
        user.escape(user.box("Title"))
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


def test_a_drawing_is_edited_in_one_step(user, fresh, drawing):
    user.double_click(drawing, "Title")
    user.fill("Title", "Another name")
    user.wait_for(lambda: "Another name" in texts(fresh), "the page follows")
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1
    fresh.undo()
    fresh.recompute()
    assert "Another name" not in texts(fresh)


def test_a_drawing_takes_its_page_with_it_and_undo_brings_both_back(user, fresh, drawing):
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(drawing)
    user.answer_yes()  # the host asks since the views on the page hang on it
    FreeCADGui.runCommand("Std_Delete")
    user.wait_for(lambda: page(fresh) is None, "both are gone")
    assert not fresh.findObjects("TechDraw::DrawViewAnnotation")
    fresh.undo()
    assert page(fresh) is not None and "Match" in texts(fresh)


def answer(monkeypatch, path):
    """What the user answers when asked for a file; what the user is told is kept."""
    told = []
    monkeypatch.setattr(QtGui.QFileDialog, "getSaveFileName", lambda *_: (str(path), ""))
    for kind in ("warning", "information"):
        monkeypatch.setattr(QtGui.QMessageBox, kind, lambda *words: told.append(words[-1]))
    return told


def test_a_drawing_is_saved_as_pdf_and_its_place_told(
    user, fresh, drawing, tmp_path, monkeypatch
):
    told = answer(monkeypatch, tmp_path / "top")
    assert FreeCADGui.Command.get("Veneer_SaveDrawing").isActive()
    FreeCADGui.runCommand("Veneer_SaveDrawing")
    assert (tmp_path / "top.pdf").read_bytes()[:5] == b"%PDF-"
    assert told == [f"The drawing was saved:\n{tmp_path / 'top.pdf'}"]


def test_no_pdf_is_written_of_what_is_no_longer_so(
    user, fresh, match, drawing, tmp_path, monkeypatch
):
    match.Ways = 7
    told = answer(monkeypatch, tmp_path / "top.pdf")
    FreeCADGui.runCommand("Veneer_SaveDrawing")
    (said,) = told
    assert "not up to date" in said and not list(tmp_path.iterdir())


def test_a_file_that_cannot_be_written_is_told_of(user, fresh, drawing, tmp_path, monkeypatch):
    told = answer(monkeypatch, tmp_path / "no such folder" / "top.pdf")
    FreeCADGui.runCommand("Veneer_SaveDrawing")
    (said,) = told
    assert "could not be written" in said


def test_asking_and_not_answering_does_nothing(user, fresh, drawing, tmp_path, monkeypatch):
    before = user.state(fresh)
    told = answer(monkeypatch, "")
    FreeCADGui.runCommand("Veneer_SaveDrawing")
    assert not told and user.state(fresh) == before


def test_a_drawing_survives_saving(user, fresh, drawing, tmp_path):
    said = texts(fresh)
    fresh.saveAs(str(tmp_path / "top.FCStd"))
    FreeCAD.closeDocument(fresh.Name)
    again = FreeCAD.openDocument(str(tmp_path / "top.FCStd"))
    assert texts(again) == said
    user.double_click(user.only(again, "Drawing"), "Title")
    user.cancel()
    user.wait_closed()


@pytest.mark.parametrize("replace", [True, False])
def test_a_file_that_nobody_was_asked_about_is_asked_about(
    user, fresh, drawing, tmp_path, monkeypatch, replace
):
    (tmp_path / "top.pdf").write_text("something else")
    told = answer(monkeypatch, tmp_path / "top")
    yes, no = QtGui.QMessageBox.Yes, QtGui.QMessageBox.No
    monkeypatch.setattr(QtGui.QMessageBox, "question", lambda *_: yes if replace else no)
    FreeCADGui.runCommand("Veneer_SaveDrawing")
    written = (tmp_path / "top.pdf").read_bytes()[:5] == b"%PDF-"
    assert written == replace and len(told) == replace


def test_the_drawing_whose_page_is_selected_is_saved(
    user, fresh, match, drawing, tmp_path, monkeypatch
):
    other = add_drawing(fresh, match, Title="The other one")
    fresh.recompute()
    saved = []
    monkeypatch.setattr("veneerwb.gui.saving.write", lambda obj, path: saved.append(obj))
    answer(monkeypatch, tmp_path / "top.pdf")
    for wanted in (other, drawing):
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(page_of(wanted))
        FreeCADGui.runCommand("Veneer_SaveDrawing")
    assert saved == [other, drawing]


def test_a_new_name_reaches_the_page(user, fresh, match, drawing):
    match.Label = "Renamed since"
    fresh.recompute()
    assert "Renamed since" in texts(fresh)


def test_a_copy_of_the_page_says_that_it_is_one(user, fresh, match, drawing):
    page = page_of(drawing)
    copied = fresh.copyObject([page, page.Template, *page.Views], False)
    match.Ways = 8
    fresh.recompute()
    notes = {view.Name: "\n".join(view.Text) for view in page.Views if hasattr(view, "Text")}
    assert "8 ways" in notes.values() and not any("NOT UP" in text for text in notes.values())
    others = [one for one in copied if hasattr(one, "SheetRole") and hasattr(one, "Text")]
    assert any("NOT UP TO DATE" in "".join(one.Text) for one in others)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A match goes to the bench by its command and panel: sheets made, refreshed, written as packet."""

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from veneerwb.host import shop_pages
from veneerwb.host.objects import add_match, add_stock


@pytest.fixture
def match(fresh):
    made = add_match(fresh, add_stock(fresh, 400.0, 600.0, 10), Diameter=300.0, Ways=4)
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    return made


@pytest.fixture
def benched(user, fresh, match):
    user.open_panel("Veneer_Bench", "Title")
    user.ok()
    user.wait_closed()
    return user.only(fresh, "Bench")


def said(bench):
    """All that stands on the sheets' annotations and figures."""
    found = []
    for page in shop_pages.pages_of(bench).values():
        for view in page.Views:
            found += list(view.Text) if "Text" in view.PropertiesList else [view.Symbol]
    return "\n".join(found)


def test_sheets_are_made_in_one_step_and_go_in_one(user, fresh, match):
    before = user.state(fresh)
    user.open_panel("Veneer_Bench", "Title")
    user.fill("Title", "Table for the hall")
    user.fill("Owner", "The shop")
    user.ok()
    user.wait_closed()
    bench = user.only(fresh, "Bench")
    assert bench.Message == "" and bench.State == "" and bench.Revision == match.Revision
    assert "Table for the hall" in said(bench) and "The shop" in said(bench)
    assert {"notes", "plan", "pieces", "cut-list", "taping"} <= set(shop_pages.pages_of(bench))
    pages = list(shop_pages.pages_of(bench).values())
    assert bench.ViewObject.Proxy.claimChildren() == pages
    assert fresh.UndoCount == 1
    fresh.undo()
    assert user.state(fresh) == before
    assert not fresh.findObjects("TechDraw::DrawPage")


def in_front():
    area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
    shown = area.activeSubWindow()
    return shown.windowTitle() if shown else ""


def test_the_first_sheet_is_seen_when_sheets_were_made_and_only_then(user, fresh, match, benched):
    pages = list(shop_pages.pages_of(benched).values())
    user.wait_for(lambda: in_front().startswith(pages[0].Label), "the first sheet is in front")
    area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
    for window in area.subWindowList():
        if not window.windowTitle().startswith(pages[0].Label):
            area.setActiveSubWindow(window)
    before = in_front()
    user.open_panel("Veneer_Bench", "Title")
    user.fill("Title", "Another")
    user.ok()
    user.wait_closed()
    QtGui.QApplication.processEvents()
    assert in_front() == before and "Another" in said(benched)


def test_cancel_leaves_nothing(user, fresh, match):
    before = user.state(fresh)
    user.open_panel("Veneer_Bench", "Title")
    user.fill("Title", "Something")
    user.box("refresh").click()
    user.cancel()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


def test_the_command_refreshes_in_one_step(user, fresh, match, benched):
    fresh.clearUndos()
    match.Ways = 8
    fresh.recompute()
    assert benched.State and "NOT UP TO DATE" in said(benched)
    FreeCADGui.runCommand("Veneer_RefreshSheets")
    assert benched.State == "" and benched.Revision == match.Revision
    assert "NOT UP TO DATE" not in said(benched)
    assert fresh.UndoCount >= 1


def test_the_same_bench_is_opened_again(user, fresh, match, benched):
    FreeCADGui.Selection.addSelection(match)
    user.open_panel("Veneer_Bench", "Title")
    user.fill("Number", "T-12")
    user.ok()
    user.wait_closed()
    assert user.only(fresh, "Bench").Number == "T-12" and "T-12" in said(benched)


def test_a_way_of_cutting_has_its_usual_figures(user, fresh, match):
    user.open_panel("Veneer_Bench", "Title")
    user.box("tabs").setCurrentIndex(1)
    user.fill("CutBy", "saw")
    user.box("usual").click()
    user.ok()
    user.wait_closed()
    bench = user.only(fresh, "Bench")
    assert (bench.CutBy, bench.Kerf.Value, bench.Boards.Value) == ("saw", 2.0, 12.0)


def test_a_packet_is_written_where_the_user_says(
    user, fresh, match, benched, tmp_path, monkeypatch
):
    told = []
    monkeypatch.setattr(QtGui.QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path))
    monkeypatch.setattr(QtGui.QMessageBox, "information", lambda *words: told.append(words[-1]))
    monkeypatch.setattr(QtGui.QMessageBox, "warning", lambda *words: told.append(words[-1]))
    match.Ways = 8
    fresh.recompute()
    FreeCADGui.runCommand("Veneer_WritePacket")
    (folder,) = tmp_path.iterdir()
    assert str(folder) in told[0] and match.Revision in folder.name
    names = [one.name for one in folder.iterdir()]
    assert "01 Contents.pdf" in names and any(name.endswith(".dxf") for name in names)
    assert benched.Revision == match.Revision


def test_a_folder_that_cannot_be_written_is_told_of(
    user, fresh, match, benched, tmp_path, monkeypatch
):
    told = []
    monkeypatch.setattr(QtGui.QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path / "no"))
    monkeypatch.setattr(QtGui.QMessageBox, "warning", lambda *words: told.append(words[-1]))
    FreeCADGui.runCommand("Veneer_WritePacket")
    assert len(told) == 1 and "could not be written" in told[0]
    assert not list(tmp_path.iterdir())


def test_sheets_go_with_their_bench_and_come_back(user, fresh, benched):
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(benched)
    user.answer_yes()
    FreeCADGui.runCommand("Std_Delete")
    user.wait_for(lambda: not fresh.findObjects("TechDraw::DrawPage"), "the pages are gone")
    fresh.undo()
    assert shop_pages.pages_of(fresh.getObject("Bench"))


def test_a_page_that_was_deleted_by_hand_comes_back_with_a_refresh(user, fresh, benched):
    codes = sorted(shop_pages.pages_of(benched))
    page = shop_pages.pages_of(benched)["plan"]
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(page)
    user.answer_yes()
    FreeCADGui.runCommand("Std_Delete")
    user.wait_for(lambda: "plan" not in shop_pages.pages_of(benched), "the page is gone")
    FreeCADGui.runCommand("Veneer_RefreshSheets")
    assert sorted(shop_pages.pages_of(benched)) == codes and benched.State == ""


def test_what_a_packet_lacks_is_told(user, fresh, match, benched, tmp_path, monkeypatch):
    told = []
    monkeypatch.setattr(QtGui.QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path))
    monkeypatch.setattr(QtGui.QMessageBox, "warning", lambda *words: told.append(words[-1]))
    benched.Press = "press"
    FreeCADGui.runCommand("Veneer_WritePacket")
    assert len(told) == 1 and "Left out" in told[0] and "Press day: " in told[0]


def test_a_bench_survives_saving(user, fresh, benched, tmp_path):
    shown = said(benched)
    fresh.saveAs(str(tmp_path / "top.FCStd"))
    FreeCAD.closeDocument(fresh.Name)
    again = FreeCAD.openDocument(str(tmp_path / "top.FCStd"))
    assert said(again.getObject("Bench")) == shown
    user.double_click(user.only(again, "Bench"), "Title")
    user.cancel()
    user.wait_closed()

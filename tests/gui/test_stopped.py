# SPDX-License-Identifier: LGPL-2.1-or-later
"""What takes its time says how far it is, and is stopped by a hand: then all is as it was."""

import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.gui import progress
from veneerwb.host import shop_pages
from veneerwb.host.objects import add_bench, add_match, add_stock

NOTHING = "Stopped; nothing was changed."
OFTEN = 0
"""ms from look to look of a hand that waits for its moment."""


@pytest.fixture
def match(fresh):
    made = add_match(fresh, add_stock(fresh, 400.0, 600.0, 10), Diameter=300.0, Ways=4)
    fresh.recompute()
    return made


@pytest.fixture
def old(user, fresh, match):
    """A bench whose sheets are old; nothing to undo."""
    bench = add_bench(fresh, match, Title="Four ways")
    fresh.recompute()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.runCommand("Veneer_RefreshSheets")
    match.Ways = 8
    fresh.recompute()
    fresh.clearUndos()
    assert bench.State and shop_pages.pages_of(bench)
    return bench


@pytest.fixture
def said(monkeypatch):
    """What boxes said."""
    found = []
    for kind in ("information", "warning"):
        monkeypatch.setattr(QtGui.QMessageBox, kind, lambda *words: found.append(words[-1]))
    return found


@pytest.fixture
def stopping(monkeypatch):
    """A hand that presses Stop when so many percent are told; what it has seen."""
    monkeypatch.setattr(progress, "AFTER", 0)
    timer, seen = QtCore.QTimer(), []

    def stopping(percent):
        def look():
            for one in QtGui.QApplication.topLevelWidgets():
                if isinstance(one, QtGui.QProgressDialog) and one.isVisible():
                    assert QtGui.QApplication.activeModalWidget() is one
                    seen.append(one.value())
                    if one.value() >= percent:
                        one.findChild(QtGui.QPushButton).click()

        timer.timeout.connect(look)
        timer.start(OFTEN)
        return seen

    yield stopping
    timer.stop()


@pytest.mark.parametrize("percent", [5, 90])
def test_sheets_that_are_stopped_are_as_they_were(
    user, fresh, match, old, said, stopping, percent
):
    before, steps = user.state(fresh), fresh.UndoCount
    seen = stopping(percent)
    FreeCADGui.runCommand("Veneer_RefreshSheets")
    assert said == [NOTHING] and seen[-1] >= percent
    assert user.state(fresh) == before and fresh.UndoCount == steps
    assert [obj.Name for obj in fresh.Objects if "Touched" in obj.State] == []


def test_sheets_are_told_of_from_first_to_last(user, fresh, match, old, said, stopping):
    seen = stopping(101)
    FreeCADGui.runCommand("Veneer_RefreshSheets")
    assert said == [] and old.State == "" and old.Revision == match.Revision
    assert seen == sorted(seen) and seen[0] < 80 and seen[-1] > 90 and fresh.UndoCount == 1


def test_a_packet_that_is_stopped_leaves_no_file_and_old_sheets(
    user, fresh, match, old, said, stopping, tmp_path, monkeypatch
):
    monkeypatch.setattr(QtGui.QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path))
    before = user.state(fresh)
    stopping(60)
    FreeCADGui.runCommand("Veneer_WritePacket")
    assert said == ["Stopped; nothing was written."] and list(tmp_path.iterdir()) == []
    assert user.state(fresh) == before and fresh.UndoCount == 0


def test_a_panel_whose_sheets_are_stopped_stays_and_makes_them_at_the_next_ok(
    user, fresh, match, panel, stopping, monkeypatch
):
    FreeCADGui.Selection.clearSelection()
    user.open_panel("Veneer_Bench", "Title")
    user.fill("Title", "Hall")
    seen = stopping(5)
    user.ok()
    bench = user.only(fresh, "Bench")
    assert user.box("trouble").text() == NOTHING and bench.Title == "Hall" and seen
    assert shop_pages.pages_of(bench) == {} and panel().obj == bench
    monkeypatch.setattr(progress, "AFTER", 60_000)
    user.ok()
    user.wait_closed()
    assert shop_pages.pages_of(bench) and bench.State == "" and fresh.UndoCount == 1


def test_suggested_faults_that_are_stopped_leave_those_before(user, bundle, panel, stopping):
    user.open_panel("Veneer_Faults", "suggest")
    before = panel().book.entries
    seen = stopping(5)
    user.box("suggest").click()
    assert user.box("trouble").text() == NOTHING and seen
    assert panel().book.entries is before
    user.cancel()


@pytest.mark.parametrize("command", ["Veneer_ChooseSpot", "Veneer_DrawMatch"])
def test_photographs_whose_reading_is_stopped_open_no_panel(
    user, fresh, bundle, said, stopping, command
):
    add_match(fresh, bundle, Ways=8, Diameter=300.0)
    fresh.recompute()
    before, steps = user.state(fresh), fresh.UndoCount
    FreeCADGui.Selection.clearSelection()
    seen = stopping(10)
    FreeCADGui.runCommand(command)
    assert said == [NOTHING] and seen and not FreeCADGui.Control.activeDialog()
    assert user.state(fresh) == before and fresh.UndoCount == steps


def test_what_is_soon_done_shows_no_window(user, fresh, match, old, said, monkeypatch):
    shown = []
    monkeypatch.setattr(progress, "AFTER", 60_000)
    monkeypatch.setattr(
        QtGui.QApplication, "processEvents", lambda *_: shown.append("events come through")
    )
    FreeCADGui.runCommand("Veneer_RefreshSheets")
    monkeypatch.undo()
    assert shown == [] and old.State == ""

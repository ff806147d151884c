# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a build-up: boxes, rows, refusals, its bill; the tree and the colours."""

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from veneerwb.gui.buildup import COLOURS
from veneerwb.host import bills
from veneerwb.host.objects import add_build_up, add_match, add_stock, parts_of
from veneerwb.host.objects.base import kind_of
from veneerwb.host.objects.buildup import add_parts

OPEN = ("Veneer_BuildUp", "CoreThickness")


@pytest.fixture
def match(fresh):
    """Four wedges of a top of 400 mm, from a stock of leaves 0.5 mm thick."""
    made = add_match(fresh, add_stock(fresh, 500.0, 800.0, 8, 0.5), Ways=4, Diameter=400.0)
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    return made


@pytest.fixture
def built(fresh, match):
    how = add_build_up(fresh, match, BackerThickness=0.5, BorderWidth=40.0, BorderKind="following")
    fresh.recompute()
    fresh.clearUndos()
    return how


def saved_as(monkeypatch, path):
    monkeypatch.setattr(QtGui.QFileDialog, "getSaveFileName", lambda *_: (str(path), ""))


def radius(match):
    return (match.Shape.Volume / 0.5 / 3.141592653589793) ** 0.5


def test_a_match_is_built_up_in_one_step(user, fresh, match):
    before = user.state(fresh)
    user.open_panel(*OPEN)
    user.wait_for(lambda: parts_of(match) is not None, "parts are made")
    user.wait_for(lambda: parts_of(match).Names == ["backer", "core"], "a balanced panel")
    user.fill("BorderWidth", "2 1/2 in")
    user.fill("BorderKind", "following")
    user.fill("Inlay", "disc")
    user.fill("Explode", "20 mm")
    wanted = ["backer", "core", "border", "inlay"]
    user.wait_for(lambda: parts_of(match).Names == wanted, "the parts follow")
    user.wait_for(lambda: match.BuildUp.BorderWidth.Value == 63.5, "the width is read")
    user.wait_for(lambda: parts_of(match).Explode.Value == 20.0, "drawn apart")
    assert user.box("summary").text().startswith("19.00 mm thick in all; 4 parts")
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1 and parts_of(match).Message == ""
    fresh.undo()
    assert user.state(fresh) == before
    fresh.recompute()
    assert radius(match) == pytest.approx(200.0)


def test_cancel_leaves_nothing(user, fresh, match):
    before = user.state(fresh)
    user.open_panel(*OPEN)
    user.fill("BorderWidth", "50 mm")
    user.fill("BorderKind", "following")
    user.wait_for(lambda: match.Message == "" and radius(match) < 151.0, "the match follows")
    user.cancel()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0
    assert radius(match) == pytest.approx(200.0)


def test_only_what_there_is_is_asked_for(user, match, built):
    user.double_click(built, "CoreThickness")

    def asked(name):
        return bool(user.visible(QtGui.QWidget, name))

    def follows(name, seen):
        user.wait_for(lambda: asked(name) == seen, f"{name} is seen: {seen}")

    assert asked("BorderKind") and asked("BackerMaterial")
    assert not any(map(asked, ("CoreSawn", "LippingWhen", "LineMaterial", "InlayPoints")))
    for name, text, row, seen in (
        ("BorderWidth", "0 mm", "BorderKind", False), ("CoreKind", "solid wood", "CoreSawn", True),
        ("LippingWidth", "8 mm", "LippingWhen", True), ("LineWidth", "2 mm", "LineMaterial", True),
        ("CrossbandBelow", "1 mm", "CrossbandGrain", True), ("Inlay", "star", "InlayPoints", True),
        ("Inlay", "disc", "InlayPoints", False), ("ClimateKnown", True, "MadeHumidity", True),
        ("BackerFrom", match.Bundle.Name, "BackerThickness", False),
    ):  # fmt: skip
        user.fill(name, text)
        follows(row, seen)
    user.cancel()
    user.wait_closed()


def test_why_there_is_no_bill_is_said_beside_its_buttons(user, fresh, match, built):
    user.double_click(built, "CoreThickness")
    user.fill("BorderWidth", "300 mm")
    user.box("sheet").click()
    assert "leave nothing of this top" in user.box("summary").text()
    assert bills.sheet_of(parts_of(match)) is None
    user.fill("BorderWidth", "30 mm")
    user.box("sheet").click()
    sheet = bills.sheet_of(parts_of(match))
    assert user.box("summary").text().endswith(f"The bill is in the sheet {sheet.Label}.")
    user.cancel()
    user.wait_closed()


def test_what_does_not_fit_is_said_and_not_taken(user, fresh, match, built):
    user.double_click(built, "CoreThickness")
    user.fill("BorderWidth", "300 mm")
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "the panel says why")
    assert "leave nothing of this top" in user.box("trouble").text()
    user.ok()
    assert FreeCADGui.Control.activeDialog()
    user.fill("BorderWidth", "60 mm")
    user.wait_for(lambda: not user.visible(QtGui.QLabel, "trouble"), "it fits again")
    user.ok()
    user.wait_closed()
    assert radius(match) == pytest.approx(140.0) and fresh.UndoCount == 1


def test_findings_follow_and_a_click_chooses_the_panel(user, fresh, match, built):
    user.double_click(built, "CoreThickness")
    user.fill("BackerThickness", "0 mm")
    user.wait_for(lambda: any("no backer" in one for one in user.lines()), "it is found")
    user.click(user.box("findings"), 0)
    assert FreeCADGui.Selection.getSelection() == [parts_of(match)]
    user.fill("BackerThickness", "0.5 mm")
    user.wait_for(lambda: not any("no backer" in one for one in user.lines()), "it is mended")
    user.cancel()
    user.wait_closed()


def test_the_bill_is_made_in_the_panels_step(user, fresh, match, built):
    user.double_click(built, "CoreThickness")
    user.fill("BorderWidth", "30 mm")
    user.box("sheet").click()
    sheet = bills.sheet_of(parts_of(match))
    assert [sheet.get(f"A{row}") for row in (6, 7, 8, 9)] == ["backer", "core", "field", "border"]
    assert abs(sheet.G6 - 400.0) < 0.01
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1
    fresh.undo()
    assert bills.sheet_of(parts_of(match)) is None and built.BorderWidth.Value == 40.0


def test_the_bill_is_saved_and_no_file_is_lost_unasked(user, match, built, tmp_path, monkeypatch):
    user.double_click(built, "CoreThickness")
    saved_as(monkeypatch, tmp_path / "bill")
    user.box("save").click()
    text = (tmp_path / "bill.csv").read_text(encoding="utf-8")
    assert "border" in text and "Finished sizes" in text
    (tmp_path / "bill.csv").write_text("another")
    user.box("save").click()
    assert "is there already" in user.box("trouble").text()
    assert (tmp_path / "bill.csv").read_text() == "another"
    user.cancel()
    user.wait_closed()


def test_parts_are_told_apart_by_colour(user, match, built):
    parts = parts_of(match)
    first = [sum(len(s.Faces) for s in parts.Shape.Solids[:k]) for k in range(3)]

    def colours():
        there = parts.ViewObject.DiffuseColor
        return [there[k] for k in first] if len(there) == len(parts.Shape.Faces) else []

    opaque = parts.ViewObject.LineColor[3]  # 0 or 1: hosts differ
    wanted = [(*COLOURS[item], opaque) for item in ("backer", "core", "border")]
    user.wait_for(lambda: colours() == [pytest.approx(one) for one in wanted], "the colours")


def test_a_match_takes_its_panel_along(user, fresh, match, built):
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(match)
    user.answer_yes()  # the parts hang on it
    FreeCADGui.runCommand("Std_Delete")
    assert [kind_of(obj) for obj in fresh.Objects] == ["Stock"]
    fresh.undo()
    assert sorted(map(kind_of, fresh.Objects)) == ["BuildUp", "Match", "Parts", "Stock"]
    fresh.recompute()
    assert radius(fresh.Match) == pytest.approx(160.0)


def test_of_a_shared_build_up_the_chosen_match_is_shown(user, fresh, match, built):
    other = add_match(fresh, match.Bundle, Ways=4, Diameter=600.0, BuildUp=built)
    fresh.recompute()
    add_parts(fresh, other)
    fresh.recompute()
    FreeCADGui.Selection.addSelection(other)
    user.open_panel(*OPEN)
    user.fill("Explode", "15 mm")
    user.wait_for(lambda: parts_of(other).Explode.Value == 15.0, "the other's parts")
    assert parts_of(match).Explode.Value == 0.0
    user.fill("BorderWidth", "20 mm")
    user.wait_for(lambda: radius(other) > 279.0 and radius(match) > 179.0, "both follow")
    user.cancel()
    user.wait_closed()


def test_with_its_parts_a_panel_goes_and_comes_back(user, fresh, match, built):
    parts = parts_of(match)
    assert parts.ViewObject.Proxy.claimChildren() == [match, built]
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(parts)
    FreeCADGui.runCommand("Std_Delete")
    fresh.recompute()
    assert [kind_of(obj) for obj in fresh.Objects] == ["Stock", "Match"]
    assert radius(match) == pytest.approx(200.0)
    fresh.undo()
    fresh.recompute()
    assert radius(match) == pytest.approx(160.0) and parts_of(match).Message == ""
    assert FreeCAD.getActiveTransaction() is None

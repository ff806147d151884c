# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel on closing the ring, used as a user uses it."""

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from veneerwb.host.objects import add_closing, add_match, add_stock, closing_of, closings_of

OPEN = ("Veneer_CloseRing", "TemplateError")
ANGLES = ("30.15", "30,2", "30.1", "29.99", "30.21", "30.16 deg", "30.07", "30.18", "30.16",
          "30.15", "30.12", "30.17")  # fmt: skip


@pytest.fixture
def match(fresh):
    stock = add_stock(fresh, 900.0, 1200.0, 24, 0.6)
    made = add_match(fresh, stock, Ways=12, Diameter=1000.0)
    fresh.recompute()
    fresh.clearUndos()
    return made


def type_in(user, row, column, text):
    model = user.box("readings").model()
    model.setData(model.index(row, column), text)


def cell(user, row, column):
    model = user.box("readings").model()
    return model.index(row, column).data()


def has_picture(user):
    """Whether the picture shows more than white."""
    image = user.box("picture").grab().toImage()
    colours = {image.pixel(x, y) for x in range(0, image.width(), 3)
               for y in range(0, image.height(), 3)}  # fmt: skip
    return len(colours) > 3


def test_before_cutting_it_tells_how_much_over_in_one_step(user, fresh, match):
    user.open_panel(*OPEN)
    (obj,) = closings_of(match)
    assert f"{obj.Over:.2f} deg over, never under" in user.box("summary").text()
    assert "the advised one with a star" in user.box("summary").text() and has_picture(user)
    first = obj.Over
    user.fill("PieceError", "0.2 deg")
    user.wait_for(lambda: obj.Over > first, "the advice follows")
    assert f"{obj.Over:.2f} deg over, never under" in user.box("summary").text()
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1 and obj.PieceError.Value == pytest.approx(0.2)
    fresh.undo()
    assert closings_of(match) == []


def test_nothing_is_left_of_what_is_not_wanted(user, fresh, match):
    before = user.state(fresh)
    user.open_panel(*OPEN)
    user.fill("stage", "after")
    user.fill("Reading", "each wedge")
    type_in(user, 0, 0, "30.2")
    user.cancel()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


def test_measured_wedges_tell_what_to_true(user, fresh, match):
    user.open_panel(*OPEN)
    (obj,) = closings_of(match)
    user.fill("stage", "after")
    user.fill("Reading", "each wedge")
    user.wait_for(lambda: user.visible(QtGui.QTableWidget, "readings"), "the table is there")
    assert user.box("readings").rowCount() == 12
    for row, text in enumerate(ANGLES):
        type_in(user, row, 0, text)
    user.wait_for(lambda: obj.Diameter > 0, "the diameter is told")
    text = user.box("summary").text()
    assert "361.66 deg" in text and "Leave the diameter open" in text and has_picture(user)
    best = closing_of(obj).after.best
    assert all(f"{half.value:.2f} deg" in text for half in best.halves)
    user.fill("shown", "to scale")
    user.wait_for(lambda: "1:" in user.box("caption").text(), "the other picture")
    type_in(user, 3, 0, "what")
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "it says what is wrong")
    assert "degrees such as" in user.box("trouble").text() and cell(user, 3, 0) == "29.99"
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1 and len(obj.Wedges) == 12
    assert obj.Wedges[5] == pytest.approx(30.16)


def test_it_opens_on_what_was_measured_and_takes_gaps_in_any_unit(user, fresh, match):
    user.open_panel(*OPEN)
    (obj,) = closings_of(match)
    user.fill("stage", "after")
    user.fill("Reading", "gaps")
    user.wait_for(lambda: user.visible(QtGui.QTableWidget, "readings"), "the table is there")
    type_in(user, 0, 0, "2.618")
    user.wait_for(lambda: obj.Missing == 1, "one is missing")
    assert "still missing: 1" in user.box("summary").text()
    type_in(user, 1, 1, "1/8 in")
    user.wait_for(lambda: obj.Diameter > 0, "the diameter is told")
    assert list(obj.Gaps) == pytest.approx([2.618, -3.175])
    assert list(obj.GapsAt) == pytest.approx([500.0, 500.0])
    user.ok()
    user.wait_closed()
    user.double_click(obj, "readings")
    assert cell(user, 0, 0).startswith("2.6") and cell(user, 1, 1).startswith("3.1")
    assert "no longer meet" in user.box("summary").text()
    user.cancel()
    user.wait_closed()
    user.open_panel("Veneer_CloseRing", "readings")  # the same, not another
    assert closings_of(match) == [obj]
    user.cancel()
    user.wait_closed()


def test_a_gap_is_taken_to_be_seen_at_the_ends_of_its_own_halves_blanks(user, fresh, match):
    match.Oversize, match.Diameter = 10.0, 900.0
    fresh.recompute()
    user.open_panel(*OPEN)
    (obj,) = closings_of(match)
    user.fill("stage", "after")
    user.fill("Reading", "gaps")
    user.wait_for(lambda: user.visible(QtGui.QTableWidget, "readings"), "the table is there")
    type_in(user, 0, 0, "1 mm")
    type_in(user, 1, 1, "1 mm")
    user.wait_for(lambda: obj.Missing == 0 and obj.Diameter > 0, "the diameter is told")
    assert list(obj.GapsAt) == pytest.approx([460.0, 460.0])
    user.cancel()
    user.wait_closed()


def test_readings_of_a_ring_of_more_pieces_go_with_the_first_new_one(user, fresh, match):
    obj = add_closing(fresh, match, Reading="each wedge", Wedges=[30.1] * 12,
                      WedgesUnsure=[0.1] * 12)  # fmt: skip
    match.Ways = 8
    fresh.recompute()
    user.double_click(obj, "readings")
    assert "more readings than pieces" in user.box("summary").text()
    type_in(user, 0, 0, "45.1")
    user.wait_for(lambda: len(obj.Wedges) == 8 and obj.Missing == 0, "the ring is whole")
    user.cancel()
    user.wait_closed()
    assert len(obj.Wedges) == 12


def test_an_odd_ring_offers_no_diameter(user, fresh, match):
    match.Turn, match.Ways = "slip", 7
    fresh.recompute()
    fresh.clearUndos()
    user.open_panel(*OPEN)
    assert "odd number" in user.box("summary").text()
    user.fill("stage", "after")
    user.fill("Reading", "each wedge")
    user.wait_for(lambda: user.visible(QtGui.QTableWidget, "readings"), "the table is there")
    assert not user.visible(QtGui.QComboBox, "How")
    for row in range(7):
        type_in(user, row, 0, "51.5")
    (obj,) = closings_of(match)
    user.wait_for(lambda: obj.Missing == 0 and obj.Error > 0.4, "it is measured")
    assert "only the last joint" in user.box("summary").text()
    user.cancel()
    user.wait_closed()


def test_moisture_asks_for_the_wood(user, fresh, match):
    user.open_panel(*OPEN)
    (obj,) = closings_of(match)
    assert not user.visible(QtGui.QComboBox, "Moves")
    user.fill("MoistureKnown", True)
    user.wait_for(lambda: "Say which wood" in obj.Message, "the wood is asked for")
    assert "Say which wood" in user.box("trouble").text()
    assert not user.visible(QtGui.QLabel, "picture")
    user.fill("WhenTaped", "8")
    user.fill("Moves", "walnut, black")
    user.wait_for(lambda: not obj.Message, "it is known")
    assert "would open by" in user.box("summary").text() and has_picture(user)
    user.cancel()
    user.wait_closed()


def test_a_match_takes_its_closing_with_it_and_shows_it_below(user, fresh, match):
    user.open_panel(*OPEN)
    user.ok()
    user.wait_closed()
    (obj,) = closings_of(match)
    assert obj in match.ViewObject.Proxy.claimChildren()
    FreeCADGui.Selection.addSelection(match)
    user.answer_yes()
    FreeCADGui.runCommand("Std_Delete")
    user.wait_for(lambda: fresh.getObject("Match") is None, "it is gone")
    assert not [one for one in fresh.Objects if one.Name.startswith("Closing")]
    fresh.undo()
    assert closings_of(fresh.getObject("Match"))
    assert FreeCAD.getActiveTransaction() is None


def test_a_test_cut_tells_whether_the_template_may_stay(user, fresh, match):
    user.open_panel(*OPEN)
    (obj,) = closings_of(match)
    assert not user.visible(QtGui.QWidget, "TrialSum")
    assert user.box("TrialCount").text() == "None yet"
    first = obj.Over
    user.box("TrialCount").setValue(6)
    user.wait_for(lambda: user.visible(QtGui.QWidget, "TrialSum"), "its sum is asked for")
    assert obj.Over == first and "Test cut: 6 wedges of waste" in user.box("summary").text()
    user.fill("TrialSum", "180.9 deg")
    user.fill("TrialUnsure", "0.02 deg")
    user.wait_for(lambda: obj.TemplateStays, "the template will do")
    text = user.box("summary").text()
    assert not user.box("TemplateError").isEnabled()  # the test cut tells it
    assert "cuts 30.150 deg" in text and "It may stay as it is." in text and obj.Over < first
    user.fill("TrialSum", "180 deg")
    user.wait_for(lambda: not obj.TemplateStays, "it will not do any more")
    assert "Do not cut with it yet" in user.box("summary").text() and obj.Message == ""
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1 and obj.TrialCount == 6


def test_another_match_is_refused_in_a_sentence(user, fresh, match, monkeypatch):
    match.Kind, match.Top, match.Length = "Diamond", "Square", 600.0
    fresh.recompute()
    told = []
    monkeypatch.setattr(QtGui.QMessageBox, "warning", lambda *args: told.append(args[-1]))
    FreeCADGui.runCommand("Veneer_CloseRing")
    assert told and "radial match" in told[0] and not FreeCADGui.Control.activeDialog()
    assert closings_of(match) == []

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The closing of a ring in a document: reckoned, measured, refused, saved, undone."""

import FreeCAD
import numpy as np
import pytest

from veneerwb.core.shop.closing import (
    Angle,
    Before,
    Errors,
    Measured,
    Moisture,
    Ring,
    broken_of,
    least_over,
)
from veneerwb.host.objects import add_closing, add_match, add_stock, closing_of, closings_of, layout
from veneerwb.host.steps import one_step

ANGLES = [30.15, 30.2, 30.1, 29.99, 30.21, 30.16, 30.07, 30.18, 30.16, 30.15, 30.12, 30.17]


@pytest.fixture
def match(doc, stock):
    made = add_match(doc, stock, Ways=12, Diameter=1000.0)
    doc.recompute()
    return made


@pytest.fixture
def made(doc, match):
    obj = add_closing(doc, match)
    doc.recompute()
    return obj


def measure(doc, obj, angles=ANGLES, unsure=0.05):
    obj.Reading = "each wedge"
    obj.Wedges, obj.WedgesUnsure = angles, [unsure] * len(angles)
    doc.recompute()


def test_what_is_advised_is_the_cores(doc, match, made):
    before = Before(layout(match), Errors(0.03, 0.05))
    assert made.Message == ""
    assert made.Over == pytest.approx(before.advised.over.degrees)
    assert made.CutTo == pytest.approx(30.0 + made.Over)
    assert made.Claimed == pytest.approx(before.advised.over.claimed)
    assert closing_of(made).after is None and made.Diameter == 0
    made.Confidence, made.WedgesTo = "99 %", 0.02
    doc.recompute()
    wanted = least_over(12, Errors(0.03, 0.05), 0.99, "both ends", 0.02)
    assert made.Over == pytest.approx(wanted.degrees) and made.Message == ""


def test_moisture_goes_by_the_wood_a_number_or_the_bundle(doc, match, made):
    made.MoistureKnown, made.WhenTaped = True, 8.0
    doc.recompute()
    assert "Say which wood" in made.Message
    for moves, coefficient in (("Black walnut", 0.00274), ("0,003", 0.003)):
        made.Moves = moves
        doc.recompute()
        wet = Moisture(9.0, 9.0, 8.0, coefficient, 0.5)
        wanted = least_over(12, Errors(0.03, 0.05, wet), 0.95, "both ends")
        assert made.Message == "" and made.Over == pytest.approx(wanted.degrees)
    made.Moves, made.Sawn = "Black walnut", "quarter"
    doc.recompute()
    assert closing_of(made).before.errors.moisture.coefficient == 0.0019
    made.Moves = "teak of the moon"
    doc.recompute()
    assert "not known here" in made.Message
    assert made.Over == pytest.approx(made.CutTo - 30.0)  # the last good state stays


def test_the_grain_of_the_wedge_is_reckoned_with(doc, match, made):
    made.MoistureKnown, made.WhenTaped, made.Moves, made.MoistureUnsure = True, 8.0, "0.003", 0.0
    doc.recompute()
    along = made.Over
    match.AutoPlacement, match.TipX, match.TipY, match.Axis = False, 450.0, 600.0, 0.0
    doc.recompute()
    assert closing_of(made).before.errors.moisture.grain == pytest.approx(90.0)
    assert made.Over < along


def test_measured_wedges_tell_the_diameter(doc, match, made):
    measure(doc, made)
    wedges = tuple(Angle(a, 0.05) for a in ANGLES)
    laid = layout(match)
    wanted = Measured(Ring.of(laid), wedges, broken=broken_of(laid))
    assert made.Error == pytest.approx(wanted.error)
    assert made.Diameter == wanted.best.first and made.Missing == 0
    assert closing_of(made).at.how == "both ends"
    made.How = "quarters"
    doc.recompute()
    assert closing_of(made).at.how == "quarters" and made.Message == ""


def test_readings_that_are_missing_are_counted(doc, match, made):
    measure(doc, made, [30.1, 0.0, 30.2])
    assert (made.Missing, made.Diameter, made.Message) == (10, 0, "")
    measure(doc, made)
    match.Ways = 8
    doc.recompute()
    assert made.Missing < 0 and closing_of(made).after is None
    match.Ways = 16
    doc.recompute()
    assert made.Missing == 4


@pytest.mark.parametrize("reading", ["halves", "gaps"])
def test_halves_and_gaps_tell_the_ring(doc, made, reading):
    made.Reading, made.FirstPiece = reading, 3
    made.Halves, made.HalvesUnsure = [180.6, 179.7], [0.05, 0.05]
    made.Gaps, made.GapsAt, made.GapsUnsure = [2.618, -2.618], [500.0, 500.0], [0.2, 0.2]
    doc.recompute()
    found = closing_of(made).after
    assert made.Message == "" and found.best.first == 3
    halves = [half.value for half in found.best.halves]
    assert halves == pytest.approx([180.6, 179.7], abs=2e-4)
    assert found.best.costs.tips > 0.5


def test_an_odd_ring_and_another_match_are_told_in_a_sentence(doc, stock):
    odd = add_closing(doc, add_match(doc, stock, Ways=7, Turn="slip", Diameter=900.0))
    measure(doc, odd, [51.5] * 7)
    assert odd.Message == "" and odd.Diameter == 0 and odd.Error == pytest.approx(0.5)
    odd.Reading, odd.Halves, odd.HalvesUnsure = "halves", [180.0, 180.0], [0.1, 0.1]
    doc.recompute()
    assert "odd" in odd.Message
    other = add_closing(doc, add_match(doc, stock, Kind="Diamond", Top="Square", Length=600.0))
    alone = add_closing(doc, None)
    doc.recompute()
    assert "radial" in other.Message and "{" not in other.Message
    assert "belongs to no match" in alone.Message


def test_the_mark_changes_with_the_layout_and_with_what_was_measured(doc, match, made):
    marks = [made.Revision]
    measure(doc, made)
    marks.append(made.Revision)
    made.Wedges = [*ANGLES[:-1], 30.18]
    doc.recompute()
    marks.append(made.Revision)
    match.First = 2
    doc.recompute()
    marks.append(made.Revision)
    made.PieceError = 0.06
    doc.recompute()
    marks.append(made.Revision)
    assert len(set(marks)) == 5


def test_it_comes_back_from_a_saved_document_and_from_undo(doc, made, tmp_path):
    measure(doc, made)
    held = {name: repr(getattr(made, name)) for name in made.PropertiesList if name != "Proxy"}
    doc.saveAs(str(tmp_path / "top.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "top.FCStd"))
    (obj,) = closings_of(again.getObject("Match"))
    again.UndoMode = 1
    for name, value in held.items():
        if name not in ("Match", "ExpressionEngine"):
            assert repr(getattr(obj, name)) == value, name
    with one_step(again, "Measure"):
        measure(again, obj, list(np.add(ANGLES, 0.1)))
    error = obj.Error
    again.undo()
    again.recompute()
    assert list(obj.Wedges) == pytest.approx(ANGLES) and obj.Error == pytest.approx(error - 1.2)


def test_a_test_cut_says_what_the_template_is(doc, match, made):
    before = made.Over
    made.TrialCount = 6
    doc.recompute()
    assert made.Over == before and not made.TemplateStays  # its sum is not there yet
    mark = made.Revision
    made.TrialSum, made.TrialUnsure = 180.9, 0.02
    doc.recompute()
    found = closing_of(made).before
    assert made.Message == "" and found.trial.angle.value == pytest.approx(30.15)
    assert found.trial.piece == made.PieceError.Value and made.Revision != mark
    assert made.TemplateStays and made.Claimed == pytest.approx(found.as_tried.over.claimed)
    assert made.Over == pytest.approx(found.least.over.degrees) and made.Over < before
    made.TrialSum = 179.9
    doc.recompute()
    assert not made.TemplateStays and made.Message == ""
    made.TrialCount = 5
    doc.recompute()
    assert "mend the number of wedges of the test cut" in made.Message


def test_leaves_without_room_for_the_over_are_named(doc):
    stock = add_stock(doc, 2.0 * 500.0 * np.sin(np.radians(15.0)) + 0.3, 1200.0, 24, 0.6)
    match = add_match(doc, stock, Ways=12, Diameter=1000.0)
    doc.recompute()
    made = add_closing(doc, match)
    doc.recompute()
    assert list(made.NoRoom) == list(range(1, 13)) and made.Message == ""
    stock.Width = 300.0
    doc.recompute()
    assert list(made.NoRoom) == []

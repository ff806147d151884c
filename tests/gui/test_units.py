# SPDX-License-Identifier: LGPL-2.1-or-later
"""Lengths that are said in words, in the user's unit."""

import FreeCAD
import pytest
from PySide import QtGui

from veneerwb.core import VeneerError
from veneerwb.core.checks.finding import Finding
from veneerwb.gui.panels import fields
from veneerwb.host.objects import add_stock
from veneerwb.words import in_unit

STANDARD, IMPERIAL, US, CENTIMETRES, BUILDING = 0, 3, 2, 4, 5


@pytest.fixture
def schema():
    """Chooses the units, and mm again afterwards."""
    yield FreeCAD.Units.setSchema
    FreeCAD.Units.setSchema(STANDARD)


@pytest.mark.parametrize(
    "chosen, mm, decimals, text",
    [
        (STANDARD, 0.04, 2, "0.04 mm"), (STANDARD, 12345.6, 1, "12345.6 mm"),
        (STANDARD, -0.04, 1, "0.0 mm"), (IMPERIAL, 25.4, 1, "1.000 in"),
        (IMPERIAL, 0.3, 1, "0.012 in"), (US, 2540.0, 0, "100.00 in"),
        (BUILDING, 0.3, 2, "0.012 in"), (CENTIMETRES, 12.3, 1, "1.23 cm"),
    ],
)  # fmt: skip
def test_a_length_is_said_in_the_users_unit_as_exactly_as_it_is_known(
    schema, chosen, mm, decimals, text
):
    schema(chosen)
    assert fields.length(mm, decimals) == text


def test_a_drift_says_its_direction(schema):
    assert fields.length(2.54, signed=True) == "+2.5 mm"
    schema(IMPERIAL)
    assert fields.length(2.54, signed=True) == "+0.100 in"
    assert fields.length(-2.54, signed=True) == "-0.100 in"


def test_a_sentence_that_is_kept_as_text_is_in_the_users_unit_too(user, schema):
    assert (in_unit(2.5412), in_unit(4.0, 3)) == ("2.5 mm", "4 mm")
    schema(IMPERIAL)
    assert (in_unit(2.54), in_unit(0.254, 2)) == ("0.098 in", "0.010 in")


def test_findings_of_the_core_are_told_in_the_users_unit(schema):
    finding = Finding(
        "size", "note", "{a} x {b} mm in common on leaves {leaves}, {a} mm2, give or take {c} mm.",
        "Keep {c} to {b} mm away.", {"a": 254, "b": 508.0, "c": 0.25, "leaves": (1, 2, 3)},
    )  # fmt: skip
    assert fields.in_units(finding) == finding
    schema(IMPERIAL)
    told = fields.in_units(finding)
    assert told.text == (
        "10.00 x 20.00 in in common on leaves 1-3, 254 mm2, give or take 0.010 in."
    )
    assert told.remedy == "Keep 0.010 to 20.00 in away."
    assert (told.code, told.values, told.pieces) == (finding.code, finding.values, ())


def test_the_windows_of_the_sequence_speak_the_users_unit(user, fresh, mixed, panel, schema):
    schema(IMPERIAL)
    user.open_panel("Veneer_Sequence", "prove")
    window = panel().window
    window.change(window.state.picked((100.0, 250.0)))
    assert " in along" in user.box("point").text() and "mm" not in user.box("point").text()
    assert window.hands[2]._words(fields.unit().name).across == "across, in"
    user.box("compare").click()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "title_log"), "the choices are shown")
    assert " in of length" in user.box("title_log").text()
    assert " mm" not in user.box("text_log").toPlainText().split("In our tests")[0]


def test_what_goes_wrong_is_said_in_the_users_unit_and_by_whoever_knows(
    user, bundle, panel, schema
):
    def fails():
        raise VeneerError("too-long", "It is {a} mm long.", a=254.0)

    schema(IMPERIAL)
    user.open_panel("Veneer_Particulars", "Species")
    made = panel()
    assert not made.attempt(fails) and made.form.trouble.text() == "It is 10.00 in long."
    assert made.attempt(lambda: made.attempt(fails))
    assert made.form.trouble.text() == "It is 10.00 in long."
    assert made.attempt(lambda: None) and made.form.trouble.text() == ""
    user.cancel()
    user.wait_closed()


def test_what_a_match_refuses_is_said_in_the_users_unit(user, fresh, schema):
    stock = add_stock(fresh, 400.0, 900.0, 16)
    fresh.recompute()
    if "UnitSystem" in fresh.PropertiesList:  # newer hosts go back to the document's own
        fresh.UnitSystem = IMPERIAL
    schema(IMPERIAL)
    user.open_panel("Veneer_NewMatch", "Kind")
    user.fill("Kind", "Two rings")
    user.fill("InnerDiameter", "100 in")
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "it is refused")
    said, match = user.box("trouble").text(), user.only(fresh, "Match")
    assert " in or less" in said
    assert "mm or less" in match.Message  # as documents keep it
    user.ok()
    assert user.box("trouble").text() == said
    user.cancel()
    user.wait_closed()
    assert [one.Name for one in fresh.Objects] == [stock.Name]

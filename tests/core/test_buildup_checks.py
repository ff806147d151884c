# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is found on a build-up: one-sided panels, what moves, grain at borders."""

import pytest

from veneerwb.core import Top
from veneerwb.core.buildup import Backer, Border, BuildUp, Core, Crossband, Lipping, Show
from veneerwb.core.checks.buildup import buildup_findings
from veneerwb.core.wood import HELD, Climate, Coefficients, movement

TOP = Top.polygon(4, 1000.0)
WINTER, SUMMER = Climate(21.0, 35.0), Climate(21.0, 65.0)
SHOW, SHEET = Show(0.6, "walnut, black"), Core(18.0, "birch ply")
ALIKE = Backer(0.6, "Black walnut")


def found(panel, climates=(WINTER, SUMMER), top=TOP):
    return {finding.code: finding for finding in buildup_findings(panel, top, climates)}


def test_a_balanced_panel_on_sheet_goods_has_no_findings():
    band = Crossband(1.5, "poplar")
    assert found(BuildUp(SHOW, SHEET, ALIKE)) == {}
    assert found(BuildUp(SHOW, SHEET, ALIKE, band, band)) == {}


def test_a_panel_without_backer_will_cup():
    (finding,) = found(BuildUp(SHOW, SHEET)).values()
    assert (finding.code, finding.level) == ("one-sided", "warn")
    assert "cup" in finding.text and "backer" in finding.remedy


@pytest.mark.parametrize("backer", [Backer(0.9, "walnut, black"), Backer(0.6, "beech, American")])
def test_a_backer_of_other_thickness_or_wood_is_found(backer):
    finding = found(BuildUp(SHOW, SHEET, backer))["unlike-backer"]
    assert f"{backer.thickness} mm" in finding.text and backer.material in finding.text


def test_a_backer_of_an_unnamed_wood_is_judged_by_its_thickness():
    assert found(BuildUp(SHOW, SHEET, Backer(0.6))) == {}
    assert set(found(BuildUp(SHOW, SHEET, Backer(1.0)))) == {"unlike-backer"}


@pytest.mark.parametrize(("above", "below", "code"), [
    (Crossband(1.5), None, "crossband-alone"),
    (None, Crossband(1.5), "crossband-alone"),
    (Crossband(1.5), Crossband(2.5), "unlike-crossbands"),
    (Crossband(1.5, "poplar"), Crossband(1.5, "limba"), "unlike-crossbands"),
    (Crossband(1.5, grain=90.0), Crossband(1.5, grain=70.0), "unlike-crossbands"),
    (Crossband(1.5, grain=180.0), Crossband(1.5, grain=0.0), "crossband-along"),
])  # fmt: skip
def test_crossbands_come_in_pairs_across_the_core(above, below, code):
    assert set(found(BuildUp(SHOW, SHEET, ALIKE, above, below))) == {code}


# --- movement ----------------------------------------------------------------------------------


def test_a_solid_core_moves_across_its_grain_by_the_handbook():
    top = Top.rectangle(1500.0, 700.0)
    for grain, width in ((0.0, 700.0), (90.0, 1500.0)):
        core = Core(25.0, "oak, red", grain, "solid wood")
        finding = found(BuildUp(SHOW, core, ALIKE), top=top)["core-moves"]
        before, after = round(WINTER.moisture, 1), round(SUMMER.moisture, 1)
        # Wood Handbook (2010), Table 13-5: red oak, tangential .00369; Eq. 13-2
        change = width * 0.00369 * (after - before)
        assert finding.values["change"] == pytest.approx(change, abs=0.006)
        assert finding.values["width"] == pytest.approx(width)
        assert "grows by" in finding.text


def test_a_quarter_sawn_core_moves_less_and_a_drier_room_shrinks_it():
    core = Core(25.0, "oak, red", 0.0, "solid wood", "quarter")
    finding = found(BuildUp(SHOW, core, ALIKE), (SUMMER, WINTER))["core-moves"]
    before, after = round(SUMMER.moisture, 1), round(WINTER.moisture, 1)
    change = 1000.0 * 0.00158 * (before - after)  # Table 13-5: red oak, radial .00158
    assert finding.values["change"] == pytest.approx(change, abs=0.006)
    assert "shrinks by" in finding.text


def test_coefficients_of_ones_own_come_before_those_of_the_table():
    own = Coefficients(0.001, 0.002)
    core = Core(25.0, "oak, red", 0.0, "solid wood", "plain", own)
    finding = found(BuildUp(SHOW, core, ALIKE))["core-moves"]
    gain = round(SUMMER.moisture, 1) - round(WINTER.moisture, 1)
    assert finding.values["change"] == pytest.approx(2.0 * gain, abs=0.006)


@pytest.mark.parametrize("panel", [
    BuildUp(SHOW, Core(25.0, "oak, red", kind="solid wood"), ALIKE),
    BuildUp(SHOW, SHEET, ALIKE, lipping=Lipping(20.0, "oak, red")),
])  # fmt: skip
def test_movement_is_never_printed_without_the_warning_that_veneer_is_held(panel):
    moving = [f for f in buildup_findings(panel, TOP, (WINTER, SUMMER)) if "moves" in f.code]
    assert len(moving) == 1
    assert HELD in moving[0].text and "were it free" in moving[0].text
    assert "gap" not in moving[0].text.replace(HELD, "")


def test_a_lipping_moves_in_width_and_height_and_shows_only_under_veneer():
    lipping = Lipping(20.0, "oak, red")
    finding = found(BuildUp(SHOW, SHEET, ALIKE, lipping=lipping))["lipping-moves"]
    moistures = round(WINTER.moisture, 1), round(SUMMER.moisture, 1)
    across, up = movement(20.0, 0.00369, *moistures), movement(18.0, 0.00158, *moistures)
    assert finding.values["across"] == pytest.approx(across, abs=0.006)
    assert finding.values["up"] == pytest.approx(up, abs=0.006)
    assert "may show through" in finding.text
    shows = Lipping(20.0, "oak, red", when="after veneering")
    finding = found(BuildUp(SHOW, SHEET, ALIKE, lipping=shows))["lipping-moves"]
    assert "may show through" not in finding.text
    assert finding.values["height"] == pytest.approx(19.2)


def test_a_lipping_round_a_solid_core_crosses_its_grain():
    core = Core(25.0, "oak, red", kind="solid wood")
    lipping = Lipping(20.0, "oak, red")
    assert "lipping-across-core" in found(BuildUp(SHOW, core, ALIKE, lipping=lipping))
    assert "lipping-across-core" not in found(BuildUp(SHOW, SHEET, ALIKE, lipping=lipping))


def test_without_two_climates_it_asks_for_them():
    core = Core(25.0, "oak, red", kind="solid wood")
    assert set(found(BuildUp(SHOW, core, ALIKE), None)) == {"no-climates"}
    assert found(BuildUp(SHOW, SHEET, ALIKE), None) == {}


def test_an_unknown_wood_is_told_the_known_ones():
    core = Core(25.0, "ebony", kind="solid wood")
    finding = found(BuildUp(SHOW, core, ALIKE))["species-unknown"]
    assert "ebony" in finding.text and "walnut, black" in finding.remedy


def test_air_beyond_the_range_of_the_coefficients_is_noted():
    core = Core(25.0, "oak, red", kind="solid wood")
    assert "moisture-outside" not in found(BuildUp(SHOW, core, ALIKE))
    finding = found(BuildUp(SHOW, core, ALIKE), (Climate(21.0, 20.0), SUMMER))["moisture-outside"]
    assert "6 to 14 %" in finding.text


# --- border ------------------------------------------------------------------------------------


@pytest.mark.parametrize(("border", "codes"), [
    (Border(60.0), {"continuous-grain"}),
    (Border(60.0, grain="across"), {"short-grain"}),
])  # fmt: skip
def test_grain_at_borders(border, codes):
    assert set(found(BuildUp(SHOW, SHEET, ALIKE, border=border))) == codes


def test_a_border_in_one_has_one_grain():
    top = Top.round(1000.0)
    panel = BuildUp(SHOW, SHEET, ALIKE, border=Border(50.0, "", 1, "following"))
    assert set(found(panel, top=top)) == {"border-in-one"}
    parted = BuildUp(SHOW, SHEET, ALIKE, border=Border(50.0, "", 6, "following"))
    finding = found(parted, top=top)["continuous-grain"]
    assert finding.values["count"] == 6


def test_every_finding_is_a_sentence_with_all_its_values():
    core = Core(25.0, "oak, red", kind="solid wood")
    panel = BuildUp(
        SHOW, core, Backer(1.0), Crossband(1.0, grain=10.0), None, Lipping(20.0, "ebony"),
        Border(60.0, grain="across"),
    )  # fmt: skip
    findings = buildup_findings(panel, TOP, (Climate(21.0, 20.0), SUMMER))
    assert len(findings) == 8
    assert all("{" not in str(f) and f.text.endswith(".") for f in findings)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Press day: marks and pins, whether it goes in, pressure at the gauge, adhesive, cautions."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Point, box

from veneerwb.core import Backer, BuildUp, Core, Crossband, Show, Stock, Top, VeneerError, radial
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.outlines import edge as edges
from veneerwb.core.shop.press.day import (
    BAND,
    OFF_SEAM,
    Adhesive,
    Bag,
    Platen,
    press_day,
)
from veneerwb.core.shop.press.dust import dust_caution, named_as
from veneerwb.core.shop.press.said import (
    ADHESIVE_CAUTION,
    PRESSURE_CAUTION,
    TAPES,
    WINS,
    edge_cut,
    order_of_the_day,
    pressure_words,
)
from veneerwb.core.shop.press.units import UNITS, in_unit, kpa, of_the_air, written
from veneerwb.words import speak

STOCK = Stock(900.0, 3000.0, 64, 0.6)
ROUND = Top.round(1200.0)


def day(top=ROUND, ways=12, oversize=10.0, **more):
    return press_day(radial(STOCK, top, ways, oversize=oversize), **more)


# --- centre, axes, pins ------------------------------------------------------------------------


@pytest.mark.parametrize(
    "top", [ROUND, Top.oval(1500, 900), Top.rectangle(1400, 800), Top.polygon(6, 900)],
    ids=lambda top: top.name,
)  # fmt: skip
def test_axes_meet_the_edges_where_they_are(top):
    found = day(top, core_over=6.0)
    assert [mark.name for mark in found.axes] == ["right", "up", "left", "down"]
    for mark in found.axes:
        for far, over in ((mark.net, 0.0), (mark.face, 10.0), (mark.core, 6.0)):
            run = edges.polygon(top.grown(over))
            tip = (far * math.cos(math.radians(mark.direction)),
                   far * math.sin(math.radians(mark.direction)))  # fmt: skip
            assert run.exterior.distance(Point(tip)) < 0.02


@pytest.mark.parametrize("ways", [4, 8, 12, 16, 24, 64])
def test_the_ring_is_pinned_in_the_oversize_off_the_seams(ways):
    found = day(ways=ways)
    assert found.pinned
    net, seams = ROUND.polygon_mm, found.layout.seams
    for pin in found.pins:
        spot = Point(pin.at)
        assert net.distance(spot) > 4.9 and math.hypot(*pin.at) == pytest.approx(605.0)
        home = [p for p in found.layout.pieces if p.blank.contains(spot)]
        assert len(home) == 1 and home[0].blank.exterior.distance(spot) > 4.9
        assert all(seam.line.distance(spot) > OFF_SEAM - 0.1 for seam in seams)


def test_an_axis_along_a_seam_is_named_and_its_pin_stands_aside():
    layout = radial(STOCK, ROUND, 12, start=75.0, oversize=10.0)
    found = press_day(layout)
    assert set(found.axes[1].seam) == {1, 2}
    assert found.pinned
    for pin, mark in zip(found.pins, found.axes):
        away = abs((pin.direction - mark.direction + 180.0) % 360.0 - 180.0)
        assert 0.0 < away <= 20.0


def test_a_narrow_oversize_holds_no_pin():
    assert not day(oversize=BAND - 0.5).pins
    assert len(day(oversize=BAND).pins) == 4
    assert not day(oversize=10.0, core_over=2.0).pins


@pytest.mark.parametrize("match", MATCHES, ids=lambda match: match.key)
def test_every_match_has_a_press_day(match):
    found = press_day(match.sample(STOCK, Top.rectangle(900.0, 600.0)), core_over=12.0)
    assert found.blank == pytest.approx((924.0, 624.0))
    assert found.area == pytest.approx(0.924 * 0.624)
    assert len(found.axes) == 4


def test_off_the_middle_the_centre_is_the_rings():
    layout = radial(STOCK, ROUND, 12, centre=(100.0, 0.0), oversize=10.0)
    found = press_day(layout)
    assert found.centre == (100.0, 0.0) and found.trammel is None
    assert [round(mark.net, 6) for mark in found.axes] == [
        500.0, round(math.sqrt(600.0**2 - 100.0**2), 6), 700.0,
        round(math.sqrt(600.0**2 - 100.0**2), 6),
    ]  # fmt: skip
    assert day().trammel == 600.0


# --- does it go in -----------------------------------------------------------------------------


@given(st.integers(900, 2000), st.integers(900, 2600), st.integers(0, 60))
def test_a_platen_holds_the_blank_with_its_margin_or_says_how_much_is_missing(w, h, margin):
    found = day(Top.rectangle(1400.0, 800.0), ways=4, press=Platen(w, h), margin=margin)
    blank = box(0.0, 0.0, 1420.0 + 2 * margin, 820.0 + 2 * margin)
    x, y = blank.bounds[2:]
    fits = (x <= w and y <= h) or (y <= w and x <= h)
    assert found.fit.ok == fits
    assert found.fit.spare == pytest.approx(max(min(w - x, h - y), min(h - x, w - y)))


def test_a_bag_needs_the_thickness_too():
    plain = {"margin": 25.0, "thickness": 40.0}
    assert day(press=Bag(1310.0, 1310.0), **plain).fit.spare == pytest.approx(0.0)
    assert not day(press=Bag(1309.0, 2000.0), **plain).fit.ok
    assert day(press=Platen(1270.0, 1270.0), **plain).fit.ok
    assert day().fit is None


def test_the_build_up_says_how_thick_it_is_and_how_many_glue_lines_there_are():
    built = BuildUp(
        Show(0.6), Core(60.0), Backer(0.6), Crossband(1.0), Crossband(1.0)
    )
    found = day(build_up=built, press=Bag(1400.0, 1400.0))
    assert found.lines == 4 and found.thickness == pytest.approx(63.2) and found.backer
    assert day(build_up=BuildUp(Show(0.6), Core(20.0))).lines == 1
    assert (day().lines, day(backer=False).lines) == (2, 1)


# --- pressure and adhesive ---------------------------------------------------------------------


def test_force_is_pressure_times_area_and_the_gauge_follows_from_the_rams():
    press = Platen(1300.0, 1300.0, rams=4, ram=80.0, most=20_000.0)
    found = day(adhesive=Adhesive(pressure=500.0), press=press)
    area, rams = math.pi * 0.61**2, 4 * math.pi * 0.04**2
    assert found.pressing.force == pytest.approx(500.0 * area)
    assert found.pressing.gauge == pytest.approx(500.0 * area / rams)
    assert found.pressing.most == pytest.approx(20_000.0 * rams / area)
    assert found.pressing.ok is False
    assert any("not enough" in line for line in pressure_words(found, "psi"))
    weaker = day(adhesive=Adhesive(pressure=340.0), press=press)
    assert weaker.pressing.ok and weaker.pressing.gauge < 20_000.0


def test_no_bag_presses_with_more_than_the_air():
    assert day(press=Bag(1, 1)).press.most == pytest.approx(101.325)
    assert Bag(1, 1, pulls=85.0).most == 85.0
    assert Bag(1, 1, pulls=500.0).most == pytest.approx(101.325)
    high = Bag(1400.0, 1400.0, altitude=2000.0)
    assert high.most < 80.0
    assert day(adhesive=Adhesive(pressure=84.0), press=high).pressing.ok is False
    assert day(adhesive=Adhesive(pressure=84.0), press=Bag(1400, 1400)).pressing.ok is True


def test_a_bags_gauge_shows_what_is_wanted_on_the_face():
    bag = Bag(1400.0, 1400.0, pulls=90.0, altitude=500.0)
    found = day(adhesive=Adhesive(pressure=70.0), press=bag)
    assert found.pressing.gauge == 70.0 and found.pressing.ok
    text = " ".join(pressure_words(found, "inHg"))
    assert "vacuum gauge shows 20.7 inHg below the air" in text and "hydraulic" not in text
    assert "28.2 inHg at 500 m" in text and "26.6 inHg at most" in text
    weak = day(adhesive=Adhesive(pressure=95.0), press=bag)
    assert "not enough" in " ".join(pressure_words(weak, "inHg"))
    assert "vacuum gauge" not in " ".join(pressure_words(weak, "inHg"))
    unknown = " ".join(pressure_words(day(press=Bag(1400.0, 1400.0)), "kPa"))
    assert "101 kPa at 0 m" in unknown and "no pump reaches all of it" in unknown


def test_a_press_whose_limit_is_not_known_sends_to_its_plate():
    press = Platen(1300.0, 1300.0, rams=4, ram=80.0)
    text = " ".join(pressure_words(day(adhesive=Adhesive(pressure=500.0), press=press), "bar"))
    assert "see its plate" in text and "not enough" not in text


@pytest.mark.parametrize(
    ("metres", "kpa_there"),
    [(0.0, 101.325), (1000.0, 89.875), (2000.0, 79.495), (5000.0, 54.020)],
)
def test_the_air_is_that_of_the_standard_atmosphere(metres, kpa_there):
    """U.S. Standard Atmosphere (1976), by geopotential height (from memory, not read again)."""
    assert of_the_air(metres) == pytest.approx(kpa_there, abs=0.002)


def test_what_the_sheet_does_not_say_is_left_open():
    found = day(press=Bag(1400.0, 1400.0))
    assert found.pressing.ok is None and found.grams is None
    assert Adhesive().missing == ("pressure", "open time", "time in the press", "spread")
    assert "look it up" in pressure_words(found, "kPa")[0]
    assert Adhesive(pressure=1, open_time=5, press_time=60, spread=100).missing == ()


def test_adhesive_is_for_all_glue_lines():
    found = day(adhesive=Adhesive(spread=150.0))
    assert found.grams == pytest.approx(150.0 * 2.0 * math.pi * 0.61**2)
    assert found.glued == pytest.approx(2.0 * math.pi * 0.61**2)


@given(st.floats(0.0, 1e4), st.sampled_from(UNITS))
def test_units_go_there_and_back(value, unit):
    assert in_unit(kpa(value, unit), unit) == pytest.approx(value)


def test_pressures_are_written_as_gauges_show_them():
    assert [written(84.0, unit) for unit in UNITS] == [
        "84 kPa", "0.84 bar", "0.084 MPa", "12.2 psi", "24.8 inHg", "1754 lb/ft2",
    ]  # fmt: skip


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: Adhesive(pressure=-1.0), lambda: Adhesive(spread=1e9), lambda: Platen(0.0, 5.0),
        lambda: Platen(5.0, 5.0, rams=2), lambda: Bag(5.0, 5.0, altitude=9000.0),
        lambda: kpa(5.0, "ell"), lambda: day(margin=-1.0), lambda: day(core_over=-1.0),
        lambda: of_the_air(math.nan), lambda: day(thickness=0.0),
    ],
)  # fmt: skip
def test_what_cannot_be_is_refused(wrong):
    with pytest.raises(VeneerError):
        wrong()


# --- words -------------------------------------------------------------------------------------


def test_every_step_and_tape_is_said_in_sentences():
    found = day(press=Bag(1400.0, 1400.0))
    for line in (*order_of_the_day(found), *edge_cut(found, "600.0"), WINS, PRESSURE_CAUTION,
                 ADHESIVE_CAUTION):  # fmt: skip
        assert line[0].isupper() and line.endswith(".")
    assert "trammel of 600.0" in edge_cut(found, "600.0")[1]
    assert "template" in edge_cut(day(Top.rectangle(900, 700)))[1]
    for when in ("after pressing", "before glue"):
        assert any(f"off {when};" in tape for tape in TAPES)


def test_species_named_as_sensitising_are_named():
    assert named_as("Walnut, black") == named_as("Black walnut") == "walnut, black"
    assert named_as("Santos rosewood") == "rosewood" and named_as("oak, white") == "oak"
    assert named_as("sugar maple") == "" == named_as("")
    assert "sensitising ones (walnut, black)" in dust_caution("Black walnut")
    assert "not complete" in dust_caution("sugar maple")
    assert "not entered" in dust_caution("")


def test_a_species_is_known_by_its_name_in_the_language_spoken():
    german = {"oak": "Eiche", "walnut, black": "Nussbaum, schwarz",
              "western red cedar": "Riesenlebensbaum (Western Red Cedar)"}  # fmt: skip
    speak(lambda text: german.get(text, text))
    try:
        assert named_as("Räuchereiche") == named_as("white oak") == "Eiche"
        assert named_as("Schwarzer Nussbaum") == "Nussbaum, schwarz"
        assert named_as("Riesenlebensbaum") == named_as("red cedar, western") == "Riesenlebensbaum"
        assert named_as("Ahorn") == named_as("Nussbaum") == "" and named_as("Teak") == "teak"
        assert "ones (Eiche)" in dust_caution("Eiche")
    finally:
        speak()


def test_a_border_makes_the_panel_larger_than_its_field():
    field, panel = Top.round(1000.0), Top.round(1200.0)
    layout = radial(STOCK, field, 12)
    found = press_day(layout, panel=panel, core_over=10.0)
    assert found.trammel == 600.0 and found.blank == pytest.approx((1220.0, 1220.0))
    assert {(m.net, m.face, m.core) for m in found.axes} == {(600.0, 610.0, 610.0)}
    assert found.pinned and found.area == pytest.approx(math.pi * 0.61**2)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Movement of wood and thickness of veneer, against the published figures named beside each."""

import math

import numpy as np
import pytest

from veneerwb.core import VeneerError
from veneerwb.core.inventory import SQUARE_FOOT
from veneerwb.core.leaf import Bundle, Leaf, Side, Stock
from veneerwb.core.photos.reading import Photo
from veneerwb.core.wood import (
    DRIEST,
    HELD,
    SPECIES,
    WETTEST,
    Climate,
    Coefficients,
    beyond,
    coefficients,
    moisture_in,
    movement,
)

# Wood Handbook, FPL-GTR-190 (2010), Table 13-5: (radial, tangential) per 1 % of moisture.
TABLE_13_5 = {
    "alder, red": (0.00151, 0.00256), "maple, sugar": (0.00165, 0.00353),
    "ash, white": (0.00169, 0.00274), "oak, red": (0.00158, 0.00369),
    "beech, American": (0.00190, 0.00431), "oak, white": (0.00180, 0.00365),
    "birch, yellow": (0.00256, 0.00338), "sweetgum": (0.00183, 0.00365),
    "cherry, black": (0.00126, 0.00248), "sycamore": (0.00172, 0.00296),
    "elm, American": (0.00144, 0.00338), "walnut, black": (0.00190, 0.00274),
}  # fmt: skip

# Wood Handbook, FPL-GTR-190 (2010), Table 4-2: moisture at 70 F, by relative humidity.
TABLE_4_2_AT_70_F = {30: 6.2, 40: 7.7, 50: 9.2, 60: 11.0, 65: 12.0, 80: 16.0}


def celsius(fahrenheit):
    return (fahrenheit - 32.0) / 1.8


@pytest.mark.parametrize("species", TABLE_13_5)
def test_the_coefficients_of_the_table(species):
    known = coefficients(species)
    assert (known.radial, known.tangential) == TABLE_13_5[species]


def test_the_table_holds_these_species_and_no_other():
    assert set(SPECIES) == set(TABLE_13_5)


def test_the_worked_example_of_the_handbook():
    # Wood Handbook (2010), chapter 13: 232 mm wide, 8 -> 11 %: + 1.7 mm (with C .00245, 1.705)
    assert movement(232.0, 0.00245, 8.0, 11.0) == pytest.approx(1.705, abs=0.0005)
    assert round(movement(232.0, 0.00245, 8.0, 11.0), 1) == 1.7
    assert movement(232.0, 0.00245, 11.0, 8.0) == -movement(232.0, 0.00245, 8.0, 11.0)


@pytest.mark.parametrize("humidity", TABLE_4_2_AT_70_F)
def test_moisture_at_70_fahrenheit(humidity):
    # Simpson, FPL-RN-0268 (1998), whose equation gives the table within 0.06
    found = moisture_in(celsius(70.0), humidity)
    assert found == pytest.approx(TABLE_4_2_AT_70_F[humidity], abs=0.06)
    assert Climate(celsius(70.0), humidity).moisture == found


def test_moisture_at_140_fahrenheit():
    # Wood Handbook (2010), Table 4-2: 140 F, 55 %: 8.4
    assert moisture_in(celsius(140.0), 55.0) == pytest.approx(8.4, abs=0.06)


def test_dry_air_takes_all_moisture_and_damper_air_leaves_more():
    # plain arithmetic: with h = 0 both terms of the equation vanish
    assert moisture_in(20.0, 0.0) == 0.0
    found = [moisture_in(20.0, h) for h in range(0, 96, 5)]
    assert found == sorted(found) and len(set(found)) == len(found)
    assert moisture_in(40.0, 50.0) < moisture_in(20.0, 50.0)  # Table 4-2: warmer air, drier wood


def test_the_coefficients_hold_from_6_to_14_percent():
    # Wood Handbook (2010), Eq. 13-2
    assert (DRIEST, WETTEST) == (6.0, 14.0)
    assert list(beyond(6.0, 14.0, 9.0)) == []
    assert list(beyond(5.9, 10.0, 14.1)) == [5.9, 14.1]


def test_a_free_wedge_of_walnut_one_percent_drier_opens_its_ring():
    # plain geometry on the coefficient .00274 of Table 13-5: a wedge with its grain along its axis
    # has 2 atan(tan(180 / n) (1 - C)); the ring opens about 0.95 degrees, 10 mm at R 600 with many
    walnut = coefficients("walnut, black").across("plain")
    for ways in (16, 24, 48):
        shrunk = 2.0 * math.degrees(
            math.atan(math.tan(math.pi / ways) * (1.0 + movement(1.0, walnut, 8.0, 7.0)))
        )
        opened = 360.0 - ways * shrunk
        assert opened == pytest.approx(0.97, abs=0.03)
        assert math.radians(opened) * 600.0 == pytest.approx(10.0, abs=0.4)


def test_plain_sawn_moves_by_the_tangential_and_quarter_sawn_by_the_radial_coefficient():
    # Wood Handbook (2010), chapter 13
    assert coefficients("oak, red").across("plain") == 0.00369
    assert coefficients("oak, red").across("quarter") == 0.00158


# --- veneer ------------------------------------------------------------------------------------


def test_a_forty_second_of_an_inch():
    # plain arithmetic: 25.4 / 42 = 0.6048 mm; within the usual 0.5 to 0.7 mm of two trade lexicons
    assert Stock(300.0, 1000.0, 8, 25.4 / 42.0).thickness == pytest.approx(0.6048, abs=5e-5)
    assert 0.5 <= Stock(300.0, 1000.0, 8, 25.4 / 42.0).thickness <= 0.7


def test_leaves_of_a_cubic_metre_of_oak():
    # trade lexicon (secondary): 750 m2 of 0.7 mm leaf from 1 m3 of oak; arithmetic: 52.5 %
    stock = Stock(1000.0, 1000.0, 750, 0.7)
    width, length = stock.size
    volume = len(stock.numbers) * width * length * stock.thickness * 1e-9
    assert volume == pytest.approx(0.525, rel=1e-12)


def test_figure_at_ten_degrees_wanders_3_40_mm_a_leaf():
    # plain geometry: t / tan a, 0.6 mm, 10 degrees
    photo = Photo.of(np.zeros((40, 20, 3), np.uint8), 10.0)
    bundle = Bundle((Leaf(1, Side(photo)),), 0.6, slope=10.0)
    assert bundle.wander() == pytest.approx(3.40, abs=0.005)


def test_a_square_foot():
    # NIST Special Publication 811 (2008), appendix B.8
    assert SQUARE_FOOT == 0.09290304


# --- what is refused ---------------------------------------------------------------------------


@pytest.mark.parametrize("name", ["White oak", "OAK, WHITE", " oak  white "])
def test_a_species_is_known_by_its_words(name):
    assert coefficients(name) is SPECIES["oak, white"]


@pytest.mark.parametrize("name", ["oak", "", "ebony", "birch ply", None])
def test_an_unknown_species_is_told_the_known_ones(name):
    with pytest.raises(VeneerError, match="coefficients of your own or one of these: alder, red; "):
        coefficients(name)


@pytest.mark.parametrize(("temperature", "humidity"), [
    (20, -1), (20, 96), (20, math.nan), (-5, 50), (70, 50), ("warm", 50),
])  # fmt: skip
def test_air_of_no_workshop_is_refused(temperature, humidity):
    with pytest.raises(VeneerError, match="give a (plain )?number"):
        Climate(temperature, humidity)


@pytest.mark.parametrize("pair", [(0.0, 0.003), (0.002, -1.0), (0.3, 0.3), (math.nan, 0.003)])
def test_coefficients_that_cannot_be_are_refused(pair):
    with pytest.raises(VeneerError, match="coefficient cannot be"):
        Coefficients(*pair)


def test_the_warning_says_that_veneer_is_held():
    assert "held by its ground" in HELD and "not the gap of a joint" in HELD

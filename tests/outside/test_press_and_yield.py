# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pressure, yield and planning against figures published elsewhere."""

from __future__ import annotations

import pytest

from veneerwb.core import Radial, Top
from veneerwb.core.shop.planning import planned
from veneerwb.core.shop.press.units import in_unit, kpa, of_the_air


def test_inches_of_mercury_in_pounds_a_square_foot():
    # A published workshop figure for vacuum bags: 1 inHg is 70.73 lb/ft2.
    assert in_unit(kpa(1.0, "inHg"), "lb/ft2") == pytest.approx(70.73, abs=0.005)


def test_a_published_pressure_in_three_units():
    # The same source: 1750 lb/ft2 is 83.8 kPa, 24.7 inHg.
    pressure = kpa(1750.0, "lb/ft2")
    assert pressure == pytest.approx(83.8, abs=0.05)
    assert in_unit(pressure, "inHg") == pytest.approx(24.7, abs=0.05)


@pytest.mark.parametrize(
    ("metres", "pascals"),
    [(0.0, 101325.3), (304.8, 97733.2), (1524.0, 84322.9), (3048.0, 69692.2)],
)
def test_the_air_thins_with_altitude(metres, pascals):
    # Standard air by altitude, a table on the web after the U.S. Standard Atmosphere, 1976
    # (secondary; it is reckoned with other roundings, up to 0.02 % off).
    assert of_the_air(metres) * 1000.0 == pytest.approx(pascals, rel=3e-4)


@pytest.mark.parametrize(("ways", "share"), [(6, 0.5236), (8, 0.5131), (12, 0.5058), (24, 0.5014)])
def test_a_wedge_uses_half_of_its_rectangle(ways, share):
    # Plain geometry: sector over the rectangle R by 2 R sin(180/n).
    found = planned(Radial(ways), Top.round(1000.0), margin=0.0)
    assert found.factors.used_of_bought == pytest.approx(share, abs=5e-5)
    assert found.leaves == ways


@pytest.mark.parametrize("rim", ["arc", "straight"])
def test_a_leaf_of_eight_inches_serves_eight_ways(rim):
    # Published example: 8 ways, a 20 in field, leaves of 8 in. By geometry they reach R = 10.453 in
    # with the rim on the arc (2 R sin 22.5), and 9.657 in with a straight rim outside it
    # (2 R tan 22.5).
    reach = {"arc": 10.453, "straight": 9.657}[rim]
    for inches, fits in ((reach - 0.001, True), (reach + 0.001, False)):
        top = Top.round(2.0 * 25.4 * inches)
        found = planned(Radial(8, rim=rim), top, margin=0.0)
        assert (found.width <= 8.0 * 25.4) == fits


def test_seven_feet_in_eight_ways_of_three_leaves():
    # Graves: a top of 7 ft, 8 ways of 3 slip-matched leaves: R 42 in, chord 32.15 in, 10.72 in net
    # a leaf, 24 leaves.
    found = planned(Radial(8, strips=3), Top.round(84.0 * 25.4), margin=0.0)
    assert found.leaves == 24 and found.bundles(24) == 1 and found.left_over(24) == 0
    assert found.cut[0] / 25.4 == pytest.approx(10.72, abs=0.005)

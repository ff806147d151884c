# SPDX-License-Identifier: LGPL-2.1-or-later
"""Tops: outlines about the origin, grown and scaled."""

from __future__ import annotations

import math

import pytest

from veneerwb.core import Top, VeneerError
from veneerwb.core.outlines import edge as edges


def polygon_area(sides, apothem):
    return sides * apothem**2 * math.tan(math.pi / sides)


def test_a_round_top_is_one_true_circle():
    top = Top.round(1200.0)
    (circle,) = top.edge
    assert (circle.radius, circle.sweep) == (600.0, 360.0)
    assert top.area == pytest.approx(math.pi * 600.0**2, rel=1e-15)
    assert top.reach == 600.0


@pytest.mark.parametrize("sides", [3, 4, 5, 8, 12, 64])
def test_a_polygon_has_a_flat_at_the_bottom_and_runs_counter_clockwise(sides):
    top = Top.polygon(sides, 1000.0)
    bottom = top.edge[0]
    assert bottom.a[1] == pytest.approx(-500.0) and bottom.b[1] == pytest.approx(-500.0)
    assert bottom.a[0] == pytest.approx(-bottom.b[0]) and bottom.b[0] > 0.0
    assert top.area == pytest.approx(polygon_area(sides, 500.0), rel=1e-13)
    assert top.reach == pytest.approx(500.0 / math.cos(math.pi / sides), rel=1e-13)
    assert top.polygon_mm.exterior.is_ccw


@pytest.mark.parametrize("by", [0.0, 10.0, 123.4])
def test_a_grown_top_lies_that_far_outside(by):
    assert edges.area(Top.round(1000.0).grown(by)) == pytest.approx(math.pi * (500.0 + by) ** 2)
    grown = edges.area(Top.polygon(7, 1000.0).grown(by))
    assert grown == pytest.approx(polygon_area(7, 500.0 + by), rel=1e-13)


@pytest.mark.parametrize("top", [Top.round(1000.0), Top.polygon(6, 1000.0)])
def test_a_scaled_top_keeps_its_shape_and_the_width_of_its_oversize(top):
    half = top.scaled(0.5)
    assert half.area == pytest.approx(top.area / 4.0, rel=1e-13)
    assert half.reach == pytest.approx(top.reach / 2.0, rel=1e-13)
    _, lowest = edges.extent(half.grown(10.0), -90.0)
    assert lowest == pytest.approx(260.0)


def test_the_derived_polygon_of_a_round_top_is_near_and_inside():
    top = Top.round(1000.0)
    assert 0.0 < top.area - top.polygon_mm.area < 0.01 * math.pi * 1000.0
    assert all(math.hypot(x, y) <= 500.0 + 1e-9 for x, y in top.polygon_mm.exterior.coords)


def test_names_say_what_the_top_is():
    assert Top.round(1200).name == "round, 1200 mm"
    assert Top.polygon(8, 900.5).name == "8-sided, 900.5 mm across flats"


@pytest.mark.parametrize("size", [0, -1, math.nan, math.inf, 1e300, 1e-9, "x", None])
def test_absurd_sizes_are_refused(size):
    with pytest.raises(VeneerError, match="diameter cannot be"):
        Top.round(size)
    with pytest.raises(VeneerError, match="width across flats cannot be"):
        Top.polygon(8, size)


@pytest.mark.parametrize("sides", [0, 2, -8, 65, 3.5, 10**9, math.nan, "x"])
def test_absurd_numbers_of_sides_are_refused(sides):
    with pytest.raises(VeneerError, match="number of sides cannot be"):
        Top.polygon(sides, 1000.0)

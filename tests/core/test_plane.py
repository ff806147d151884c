# SPDX-License-Identifier: LGPL-2.1-or-later
"""Rigid motions obey their laws; numbers are taken or refused with a sentence."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Polygon

from veneerwb.core import Motion, VeneerError
from veneerwb.core.plane import choice, cosd, finite, positive, sind, tand, whole

LENGTHS = st.floats(-5000.0, 5000.0)
MOTIONS = st.builds(Motion, st.floats(-720.0, 720.0), LENGTHS, LENGTHS, st.booleans())
POINTS = st.lists(st.tuples(LENGTHS, LENGTHS), min_size=2, max_size=5)


@given(MOTIONS, POINTS)
def test_the_inverse_takes_every_point_back(motion, points):
    assert np.allclose(motion.inverse().apply(motion.apply(points)), points, atol=1e-8)
    assert np.allclose(motion.apply(motion.inverse().apply(points)), points, atol=1e-8)


@given(MOTIONS, MOTIONS, POINTS)
def test_a_product_moves_first_by_the_second_factor(a, b, points):
    assert np.allclose((a @ b).apply(points), a.apply(b.apply(points)), atol=1e-8)
    assert (a @ b).mirrored == (a.mirrored != b.mirrored)


@given(MOTIONS, MOTIONS, MOTIONS, POINTS)
def test_products_may_be_bracketed_either_way(a, b, c, points):
    assert np.allclose(((a @ b) @ c).apply(points), (a @ (b @ c)).apply(points), atol=1e-8)


@given(MOTIONS, POINTS)
def test_distances_are_kept(motion, points):
    moved = motion.apply(points)
    for (p, q), (r, s) in zip(zip(points, points[1:]), zip(moved, moved[1:])):
        assert math.dist(p, q) == pytest.approx(math.dist(r, s), abs=1e-8)


@given(MOTIONS)
def test_only_a_mirrored_motion_turns_the_sense_of_a_triangle(motion):
    (ax, ay), (bx, by), (cx, cy) = motion.apply([(0.0, 0.0), (1000.0, 0.0), (0.0, 1000.0)])
    twice_area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax)
    assert twice_area == pytest.approx(-1e6 if motion.mirrored else 1e6, rel=1e-9)


def test_a_motion_turns_then_shifts():
    assert Motion(90.0, 5.0, 7.0).apply((2.0, 0.0)).tolist() == [5.0, 9.0]


def test_a_mirrored_motion_flips_left_and_right_first():
    assert Motion(0.0, 10.0, 0.0, True).apply((3.0, 4.0)).tolist() == [7.0, 4.0]
    assert Motion(90.0, 0.0, 0.0, True).apply((3.0, 4.0)).tolist() == [-4.0, -3.0]


def test_turning_about_a_point_leaves_it_in_place():
    motion = Motion.turn_about(30.0, -20.0, 90.0)
    assert motion.apply((30.0, -20.0)) == pytest.approx((30.0, -20.0))
    assert motion.apply((31.0, -20.0)) == pytest.approx((30.0, -19.0))


@given(MOTIONS)
def test_points_and_geometry_move_alike(motion):
    corners = [(0.0, 0.0), (30.0, 0.0), (0.0, 40.0)]
    moved = motion.apply_to(Polygon(corners))
    assert np.allclose(moved.exterior.coords[:3], motion.apply(corners), atol=1e-9)
    assert moved.area == pytest.approx(600.0, rel=1e-6)


def test_many_points_keep_their_shape():
    assert Motion(30.0).apply(np.zeros((4, 5, 2))).shape == (4, 5, 2)
    assert Motion(30.0).apply(np.zeros((0, 2))).shape == (0, 2)


def test_right_angles_are_exact():
    quarter = [0, 90, 180, 270, 360, -90, -450]
    assert [cosd(a) for a in quarter] == [1, 0, -1, 0, 1, 0, 0]
    assert [sind(a) for a in quarter] == [0, 1, 0, -1, 0, -1, -1]


@given(st.floats(-1000.0, 1000.0))
def test_sine_and_cosine_agree_with_radians(degrees):
    assert sind(degrees) == pytest.approx(math.sin(math.radians(degrees)), abs=1e-12)
    assert cosd(degrees) == pytest.approx(math.cos(math.radians(degrees)), abs=1e-12)
    assert sind(degrees) ** 2 + cosd(degrees) ** 2 == pytest.approx(1.0, abs=1e-12)


def test_tangent_of_45_degrees():
    assert tand(45.0) == pytest.approx(1.0, abs=1e-15)


@pytest.mark.parametrize(
    "value", [math.nan, math.inf, -math.inf, "x", "", None, [8], 10**400, "y" * 5000]
)
def test_what_is_no_number_is_refused(value):
    for take in (lambda: finite("width", value), lambda: positive("width", value),
                 lambda: whole("width", value, 1, 9)):
        with pytest.raises(VeneerError) as caught:
            take()
        assert caught.value.code == "not-a-number"
        assert str(caught.value).startswith("The width cannot be ")
        assert len(str(caught.value)) < 120


@pytest.mark.parametrize("value", [0, -1, 1e-9, 100_001, 1e300])
def test_lengths_out_of_range_are_refused(value):
    with pytest.raises(VeneerError) as caught:
        positive("width", value)
    assert caught.value.code == "out-of-range"
    assert caught.value.values["value"] == value
    assert len(str(caught.value)) < 120


@pytest.mark.parametrize("value", [0, 10, 3.5, -2, 1e300])
def test_whole_numbers_out_of_range_are_refused(value):
    with pytest.raises(VeneerError) as caught:
        whole("number of ways", value, 1, 9)
    assert "give a whole number from 1 to 9." in str(caught.value)


def test_good_numbers_come_back_as_numbers():
    assert finite("width", "12.5") == 12.5
    assert positive("width", np.float32(2.0)) == 2.0
    taken = whole("number of ways", 8.0, 1, 9)
    assert taken == 8 and isinstance(taken, int)


def test_an_unknown_word_is_answered_with_the_choices():
    with pytest.raises(VeneerError, match="choose one of: book, slip"):
        choice("turn", "up", ("book", "slip"))

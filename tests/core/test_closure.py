# SPDX-License-Identifier: LGPL-2.1-or-later
"""Closure: sums of angles, gaps, and which finding a template's angle gives."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from veneerwb.core import Stock, Top, VeneerError, check, closure, radial


def found(ways, angle, turn="slip"):
    stock = Stock(1200.0, 3000.0, ways, 0.6)
    findings = check(radial(stock, Top.round(1000.0), ways, turn=turn), wedge_angle=angle)
    return [f for f in findings if f.code.startswith("clos")]


@given(st.lists(st.floats(1.0, 60.0), min_size=3, max_size=64), st.floats(1.0, 5000.0))
def test_the_gap_is_the_chord_of_what_is_missing(angles, reach):
    result = closure(angles, reach)
    assert result.total == pytest.approx(sum(angles))
    assert result.error == pytest.approx(sum(angles) - 360.0)
    missing = 360.0 - sum(angles)
    if abs(missing) <= 360.0:
        chord = math.dist(
            (reach, 0.0),
            (reach * math.cos(math.radians(missing)), reach * math.sin(math.radians(missing))),
        )
        assert abs(result.rim_gap) == pytest.approx(chord, abs=1e-6)
    assert (result.rim_gap > 0.0) == (missing > 0.0) or result.rim_gap == 0.0


def test_unlike_angles_are_summed():
    result = closure([100.0, 100.0, 100.0, 59.0], reach=1000.0)
    assert result.error == pytest.approx(-1.0)
    assert result.rim_gap == pytest.approx(17.453, abs=5e-4)


def test_no_finding_when_no_template_angle_is_given():
    assert found(12, None) == []


@pytest.mark.parametrize("ways", [3, 7, 11, 12, 23, 64])
def test_the_true_angle_closes(ways):
    (only,) = found(ways, 360.0 / ways)
    assert (only.code, only.level) == ("closes", "note")


def test_under_is_a_stop_and_over_a_warning():
    assert [(f.code, f.level) for f in found(12, 29.9)] == [("closure-under", "stop")]
    assert [(f.code, f.level) for f in found(12, 30.1)] == [("closure-over", "warn")]


def test_an_odd_ring_has_no_halves_to_true():
    for angle in (51.0, 52.0):
        (only,) = found(7, angle)
        assert "halves" not in only.text and "half" not in only.text


def test_what_over_costs_at_the_rim():
    # Six pieces of 30.2 are 1.2 over; 0.6 off both ends is 500 sin 0.6 = 5.236 mm at the rim.
    (only,) = found(12, 30.2)
    assert only.values["rim_lost"] == pytest.approx(5.236, abs=5e-4)
    assert only.values["overlap"] == pytest.approx(2 * 500 * math.sin(math.radians(1.2)))


@pytest.mark.parametrize("angle", [0.0, -30.0, 361.0, math.nan, math.inf, "x", 1e300])
def test_angles_that_cannot_be_are_refused(angle):
    with pytest.raises(VeneerError, match="wedge angle cannot be"):
        closure([30.0, angle], reach=500.0)
    with pytest.raises(VeneerError, match="wedge angle cannot be"):
        found(12, angle)


@pytest.mark.parametrize("reach", [0.0, -1.0, math.nan, 1e300, "x"])
def test_a_reach_that_cannot_be_is_refused(reach):
    with pytest.raises(VeneerError, match="reach cannot be"):
        closure([90.0] * 4, reach=reach)


def test_no_angles_are_refused():
    with pytest.raises(VeneerError) as caught:
        closure([], reach=500.0)
    assert caught.value.code == "no-angles"

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Elliptical arcs and cubic curves: what they answer, against their own finely sampled points."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from scipy.spatial import cKDTree

from veneerwb.core import Motion
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.curves import FIT, Curve, EllipseArc, fitted
from veneerwb.core.outlines.edge import Arc, Line
from veneerwb.core.outlines.region import Half, Region
from veneerwb.core.plane import polar

SHARES = np.linspace(0.0, 1.0, 8001)
mm, degrees = st.floats(-500.0, 500.0), st.floats(-400.0, 400.0)
points = st.tuples(mm, mm)
sizes = st.floats(5.0, 500.0)
arcs = st.builds(
    EllipseArc, points, sizes, sizes, degrees, degrees,
    st.floats(10.0, 360.0) | st.floats(-360.0, -10.0), st.sampled_from(["rim", "seam"]),
)  # fmt: skip
curves = st.builds(Curve, points, points, points, points, st.sampled_from(["rim", "seam"]))
kinds = arcs | curves
few = settings(max_examples=40)
OVAL = EllipseArc((0.0, 0.0), 600.0, 400.0, 0.0, -90.0, 360.0)
DROP = Curve((0.0, -200.0), (900.0, 500.0), (-900.0, 500.0), (0.0, -200.0))


def sampled(segment, count=8001):
    return segment.path(np.linspace(0.0, 1.0, count))[0]


@few
@given(kinds)
def test_area_and_length_are_those_of_the_points(segment):
    at = sampled(segment)
    swept = 0.5 * float(np.sum(at[:-1, 0] * at[1:, 1] - at[1:, 0] * at[:-1, 1]))
    length = float(np.hypot(*np.diff(at, axis=0).T).sum())
    assert segment.swept == pytest.approx(swept, abs=1e-6 * (length + 1.0) ** 2)
    assert segment.length == pytest.approx(length, rel=2e-5, abs=1e-6)


@few
@given(kinds)
@example(Curve((0.0, 0.0), (0.0, 1.0), (0.0, 1.0), (0.0, 1e-38)))
def test_reach_is_the_furthest_of_the_points(segment):
    far = np.hypot(*sampled(segment).T).max()
    assert far - 1e-9 <= segment.reach <= far + 1e-3


@few
@given(kinds, degrees)
def test_extents_are_exact(segment, direction):
    along = sampled(segment) @ polar(1.0, direction)
    low, high = edges.extent([segment], direction)
    assert along.min() - 1e-3 <= low <= along.min() + 1e-9
    assert along.max() - 1e-9 <= high <= along.max() + 1e-3


@few
@given(kinds, degrees, st.floats(-100, 100), st.booleans(), st.floats(0.1, 5.0))
def test_moved_reversed_and_scaled_run_through_the_same_points(
    segment, angle, shift, mirrored, factor
):
    at, motion = sampled(segment, 101), Motion(angle, shift, -2.0 * shift, mirrored)
    assert np.allclose(sampled(segment.moved(motion), 101), motion.apply(at), atol=1e-8)
    assert np.allclose(sampled(segment.reversed(), 101), at[::-1], atol=1e-8)
    assert np.allclose(sampled(segment.scaled(factor), 101), factor * at, atol=1e-8)
    for other in (segment.moved(motion), segment.reversed(), segment.scaled(factor)):
        assert other.role == segment.role


@few
@given(kinds, st.floats(0.0, 0.49), st.floats(0.51, 1.0))
def test_parts_run_between_their_shares_and_meet_exactly(segment, first, last):
    part = segment.part(first, last)
    shares = first + np.linspace(0.0, 1.0, 101) * (last - first)
    assert np.allclose(sampled(part, 101), segment.path(shares)[0], atol=1e-8)
    one, other = segment.part(0.0, last), segment.part(last, 1.0)
    assert math.dist(one.end, other.start) < 1e-9
    assert one.swept + other.swept == pytest.approx(segment.swept, abs=1e-7)


@few
@given(kinds, degrees, st.floats(0.05, 0.95))
def test_a_straight_crosses_wherever_the_side_changes(segment, normal, share):
    low, high = edges.extent([segment], normal)
    offset = low + share * (high - low)
    away = sampled(segment) @ polar(1.0, normal) - offset
    changes = np.flatnonzero(np.diff(np.sign(away)))
    found = segment.crossings(normal, offset)
    assert len(found) == len(changes)
    for place, k in zip(found, changes):
        assert SHARES[k] - 1e-9 <= place <= SHARES[k + 1] + 1e-9
        assert np.dot(segment.at(place), polar(1.0, normal)) == pytest.approx(offset, abs=1e-7)


@pytest.mark.parametrize("segment", [OVAL, DROP, DROP.part(0.1, 0.9)])
def test_a_straight_that_only_touches_does_not_cross(segment):
    _, high = edges.extent([segment], 90.0)
    assert segment.crossings(90.0, high) == []
    assert len(segment.crossings(90.0, high - 1.0)) == 2


def test_a_straight_through_an_inflection_along_it_crosses_once():
    bent = Curve((-1.0, -1.0), (-1.0 / 3.0, 1.0), (1.0 / 3.0, -1.0), (1.0, 1.0))  # y = x3 about 0
    cubic = Curve((-300.0, -100.0), (-100.0, 100.0), (100.0, -100.0), (300.0, 100.0))
    assert bent.crossings(90.0, 0.0) == pytest.approx([0.5], abs=1e-9)
    assert cubic.crossings(90.0, 0.0) == pytest.approx([0.5], abs=1e-9)


def test_ends_on_the_straight_are_no_crossings():
    half = OVAL.part(0.25, 0.75)
    assert half.crossings(90.0, 0.0) == []
    assert DROP.crossings(0.0, 0.0) == pytest.approx([0.5])


@few
@given(kinds, degrees)
def test_a_ray_meets_the_furthest_place(segment, direction):
    share = segment.hit(direction)
    ux, uy = polar(1.0, direction)
    at = sampled(segment)
    along, off = at @ (ux, uy), at @ (-uy, ux)
    cross = np.flatnonzero(np.diff(np.sign(off)))
    met = [along[k] for k in cross if min(along[k], along[k + 1]) > 1.0]
    if share is None:
        assert not met
        return
    x, y = segment.at(share)
    assert ux * y - uy * x == pytest.approx(0.0, abs=1e-5)
    assert not met or ux * x + uy * y >= max(met) - 1.0


@given(kinds, st.floats(0.0, 1.0))
def test_slopes_are_unit_vectors_along_it(segment, share):
    near = [segment.at(min(max(share + d, 0.0), 1.0)) for d in (-1e-5, 1e-5)]
    far = math.dist(*near)
    u, v = segment.slope(share)
    assert math.hypot(u, v) == pytest.approx(1.0)
    if far > 1e-3:
        (ax, ay), (bx, by) = near
        assert ((bx - ax) * u + (by - ay) * v) / far == pytest.approx(1.0, abs=1e-3)


def test_a_curve_whose_handle_lies_on_its_end_still_has_a_slope():
    flat = Curve((0.0, 0.0), (0.0, 0.0), (50.0, 100.0), (100.0, 100.0))
    assert flat.slope(0.0) == pytest.approx((math.sqrt(0.2), math.sqrt(0.8)), abs=1e-5)


@few
@given(kinds)
def test_polygons_follow_within_the_sagitta(segment):
    line = np.array([*segment.points(0.05), segment.end])
    middles = 0.5 * (line[:-1] + line[1:])
    away, _ = cKDTree(sampled(segment, 40001)).query(middles)
    assert away.max() <= 0.05 + 0.05


@few
@given(arcs)
def test_curves_fitted_to_an_ellipse_lie_within_what_they_promise(arc):
    run = fitted(arc.path, 0.0, 1.0)
    for one, following in zip(run, run[1:]):
        assert math.dist(one.end, following.start) < 1e-9
    at = np.concatenate([sampled(curve, 201) for curve in run]) - arc.centre
    c, s = polar(1.0, arc.tilt)
    u, v = at @ (c, s), at @ (-s, c)
    level = np.hypot(u / arc.along, v / arc.across)
    slope = np.hypot(u / arc.along**2, v / arc.across**2) / level
    assert np.abs((level - 1.0) / slope).max() <= 1.5 * FIT
    assert len(run) <= 64


@pytest.mark.parametrize("start", [0.0, 90.0, -90.0, 17.3])
@pytest.mark.parametrize("count", [3, 4, 8, 24])
def test_wedges_of_an_oval_have_one_true_arc_each(start, count):
    turns = [start + k * 360.0 / count for k in range(count + 1)]
    runs = [edges.run_between((OVAL,), a, b) for a, b in zip(turns, turns[1:])]
    assert all(len(run) == 1 and isinstance(run[0], EllipseArc) for run in runs)
    assert math.fsum(run[0].swept for run in runs) == pytest.approx(OVAL.swept, rel=1e-13)
    for (arc,), turn in zip(runs, turns):
        x, y = arc.start
        assert math.remainder(math.degrees(math.atan2(y, x)) - turn, 360.0) == pytest.approx(0.0)


def test_a_run_all_round_an_oval_or_past_where_a_curve_closes():
    (whole,) = edges.run_between((OVAL,), 33.0, 393.0)
    assert abs(whole.sweep) == pytest.approx(360.0)
    past = edges.run_between((DROP,), -120.0, -60.0)
    assert [type(part) for part in past] == [Curve, Curve]
    round_it = edges.run_between((DROP,), -60.0, 240.0)
    total = sum(part.length for part in (*past, *round_it))
    assert total == pytest.approx(DROP.length, rel=1e-6)


MIXED = (
    Curve((400.0, 0.0), (400.0, 300.0), (100.0, 400.0), (0.0, 250.0)),
    EllipseArc((-200.0, 250.0), 200.0, 100.0, 0.0, 0.0, 180.0),
    Line((-400.0, 250.0), (-400.0, 0.0)),
    Arc((0.0, 0.0), 400.0, 180.0, 180.0),
)


@given(degrees, st.floats(-390.0, 390.0), degrees, st.floats(-390.0, 390.0), st.booleans())
def test_half_planes_part_true_curves_without_loss(normal, offset, other, beyond, mirrored):
    region = Region(MIXED).moved(Motion(other, 3.0, -7.0, mirrored))
    one, two = Half(normal, offset), Half(other, beyond)
    quarters = [(one, two), (one, two.other), (one.other, two), (one.other, two.other)]
    parts = [part for halves in quarters for part in region.cut(halves)]
    assert math.fsum(part.area for part in parts) == pytest.approx(region.area, rel=1e-9)
    for part in parts:
        for segment, following in zip(part.outer, [*part.outer[1:], part.outer[0]]):
            assert math.dist(segment.end, following.start) < 2e-6


def test_what_was_one_arc_is_one_arc_after_the_cut():
    for closed in (OVAL, Arc((0.0, 0.0), 500.0, -90.0, 360.0)):
        halves = [Half.left_of((0.0, 0.0), -112.5), Half.left_of((0.0, 0.0), -67.5).other]
        (wedge,) = Region((closed,)).cut(halves)  # the arc closes at -90
        assert sorted(type(s).__name__ for s in wedge.outer if not isinstance(s, Line)) == [
            type(closed).__name__
        ]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""True edges: exact areas, runs between directions, extents."""

from __future__ import annotations

import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from veneerwb.core import Motion
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.curves import EllipseArc
from veneerwb.core.outlines.edge import Arc, Line

CIRCLE = (Arc((0.0, 0.0), 500.0, -90.0, 360.0),)
OBLONG = edges.straights([(300.0, -100.0), (300.0, 100.0), (-300.0, 100.0), (-300.0, -100.0)])
# Two straights of 400 and two half circles of 150, so 700 x 300.
CAPSULE = (
    Line((-200.0, -150.0), (200.0, -150.0)),
    Arc((200.0, 0.0), 150.0, -90.0, 180.0),
    Line((200.0, 150.0), (-200.0, 150.0)),
    Arc((-200.0, 0.0), 150.0, 90.0, 180.0),
)
AREAS = {
    "circle": (CIRCLE, math.pi * 500.0**2),
    "oblong": (OBLONG, 600.0 * 200.0),
    "capsule": (CAPSULE, 400.0 * 300.0 + math.pi * 150.0**2),
}
EDGES = [edge for edge, _ in AREAS.values()]
OBLONG_CORNERS = [math.degrees(math.atan2(y, x)) for x, y in (s.start for s in OBLONG)]


def sector(edge, first, last):
    """The exact area between two directions, from the origin out."""
    run = edges.run_between(edge, first, last)
    tip = (0.0, 0.0)
    return edges.area((Line(tip, run[0].start), *run, Line(run[-1].end, tip)))


def direction(point):
    return math.degrees(math.atan2(point[1], point[0]))


def apart(one, other):
    return abs(math.remainder(one - other, 360.0))


@pytest.mark.parametrize("name", AREAS)
def test_areas_are_exact(name):
    edge, expected = AREAS[name]
    assert edges.area(edge) == pytest.approx(expected, rel=1e-14)


@given(st.sampled_from(list(AREAS)), st.floats(-400, 400), st.floats(-900, 900), st.booleans())
def test_areas_and_sense_survive_a_motion(name, angle, shift, mirrored):
    edge, expected = AREAS[name]
    moved = edges.moved(edge, Motion(angle, shift, -0.7 * shift, mirrored))
    assert edges.area(moved) == pytest.approx(expected, rel=1e-11)
    for one, following in zip(moved, [*moved[1:], moved[0]]):
        assert math.dist(one.end, following.start) < 1e-9


@pytest.mark.parametrize("name", AREAS)
def test_the_derived_polygon_lies_inside_by_less_than_the_sagitta(name):
    edge, expected = AREAS[name]
    shape = edges.polygon(edge, sagitta=0.01)
    assert shape.is_valid
    length = sum(segment.length for segment in edge)
    assert 0.0 <= expected - shape.area + 1e-6 <= 0.01 * length


@pytest.mark.parametrize("edge", EDGES)
@pytest.mark.parametrize("count", [3, 4, 5, 7, 8, 12, 64])
@pytest.mark.parametrize("start", [0.0, 90.0, -90.0, 17.3, 1234.5])
def test_runs_between_directions_follow_each_other_and_fill_the_edge(edge, count, start):
    turns = [start + k * 360.0 / count for k in range(count + 1)]
    runs = [edges.run_between(edge, a, b) for a, b in itertools.pairwise(turns)]
    for run, first, last in zip(runs, turns, turns[1:]):
        assert apart(direction(run[0].start), first) < 1e-9
        assert apart(direction(run[-1].end), last) < 1e-9
        for one, following in itertools.pairwise(run):
            assert math.dist(one.end, following.start) < 1e-9
    total = math.fsum(segment.length for run in runs for segment in run)
    assert total == pytest.approx(sum(segment.length for segment in edge), rel=1e-12)
    areas = math.fsum(sector(edge, a, b) for a, b in itertools.pairwise(turns))
    assert areas == pytest.approx(edges.area(edge), rel=1e-12)


@given(st.sampled_from(EDGES), st.floats(-720, 720), st.floats(1.0, 359.0))
def test_two_runs_that_share_their_directions_fill_the_edge(edge, first, sweep):
    both = sector(edge, first, first + sweep) + sector(edge, first + sweep, first + 360.0)
    assert both == pytest.approx(edges.area(edge), rel=1e-11)


@pytest.mark.parametrize("corner", range(4))
@pytest.mark.parametrize("off", [0.0, 1e-13, 1e-11, 1e-9, 5e-8, 9.6e-8, 2e-7, 1e-6, 1e-5])
@pytest.mark.parametrize("side", [-1.0, 1.0])
def test_a_direction_through_or_close_by_a_corner(corner, off, side):
    through = OBLONG_CORNERS[corner] + side * off
    here = sector(OBLONG, through - 40.0, through) + sector(OBLONG, through, through + 320.0)
    assert here == pytest.approx(120_000.0, rel=1e-8)


def test_a_direction_that_meets_only_one_segment_of_a_corner():
    # the oblong's sides are 3 to 1, so one is snapped before the other
    for ulps in range(-400, 401):
        through = OBLONG_CORNERS[1] + ulps * 5e-10
        run = edges.run_between(OBLONG, through, through + 90.0)
        assert run[0].start == pytest.approx((300.0, 100.0), abs=2e-5)


def test_a_run_from_corner_to_corner_is_one_whole_side():
    (top_side,) = edges.run_between(OBLONG, OBLONG_CORNERS[1], OBLONG_CORNERS[2])
    assert (top_side.start, top_side.end) == ((300.0, 100.0), (-300.0, 100.0))


def test_a_run_past_the_place_where_the_circle_closes():
    (arc,) = edges.run_between(CIRCLE, -120.0, -60.0)
    assert arc.sweep == pytest.approx(60.0, abs=1e-12)
    assert arc.middle == pytest.approx((0.0, -500.0), abs=1e-9)
    assert sector(CIRCLE, -120.0, -60.0) == pytest.approx(math.pi * 500.0**2 / 6.0, rel=1e-12)


@pytest.mark.parametrize("first", [-90.0, 0.0, 33.0])
def test_a_run_all_round_is_the_whole_circle(first):
    (arc,) = edges.run_between(CIRCLE, first, first + 360.0)
    assert arc.sweep == pytest.approx(360.0, abs=1e-9)
    assert apart(arc.begin, first) < 1e-9


@pytest.mark.parametrize("first, last", [(0.25, 0.75), (0.0, 1.0), (0.1, 0.2)])
def test_a_part_runs_between_its_shares(first, last):
    for segment in (*CIRCLE, *CAPSULE):
        part = segment.part(first, last)
        assert part.start == pytest.approx(segment.at(first), abs=1e-9)
        assert part.end == pytest.approx(segment.at(last), abs=1e-9)
        assert part.length == pytest.approx((last - first) * segment.length, rel=1e-12)


def test_extents_along_the_axes_and_aslant():
    assert edges.extent(CIRCLE, 0.0) == pytest.approx((-500.0, 500.0))
    assert edges.extent(CIRCLE, 33.0) == pytest.approx((-500.0, 500.0))
    assert edges.extent(CAPSULE, 0.0) == pytest.approx((-350.0, 350.0))
    assert edges.extent(CAPSULE, 90.0) == pytest.approx((-150.0, 150.0))
    assert edges.extent(CAPSULE, 45.0)[1] == pytest.approx(200.0 * math.sqrt(0.5) + 150.0)
    assert edges.extent(OBLONG, 45.0)[1] == pytest.approx(400.0 * math.sqrt(0.5))


def test_extent_of_a_quarter_arc_ends_where_the_arc_ends():
    quarter = (Arc((10.0, 0.0), 100.0, 0.0, 90.0),)
    assert edges.extent(quarter, 0.0) == pytest.approx((10.0, 110.0))
    assert edges.extent(quarter, 45.0)[1] == pytest.approx(10.0 * math.sqrt(0.5) + 100.0)


def test_reach_of_arcs_off_the_centre():
    assert max(s.reach for s in CAPSULE) == pytest.approx(350.0)
    away = Arc((200.0, 0.0), 150.0, 90.0, 180.0)  # the half that faces the origin
    assert away.reach == pytest.approx(250.0)


@pytest.mark.parametrize("radius", [5e-4, 5e-3, 0.05])
def test_a_tiny_circle_still_encloses_something(radius):
    circle = (Arc((3.0, 4.0), radius, -90.0, 360.0),)
    oval = (EllipseArc((3.0, 4.0), radius, 0.9 * radius, 0.0, 0.0, 360.0),)
    assert edges.polygon(circle).area > 0.6 * math.pi * radius**2
    assert edges.polygon(oval).area > 0.5 * math.pi * radius**2

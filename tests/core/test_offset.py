# SPDX-License-Identifier: LGPL-2.1-or-later
"""Parallel edges, against closed forms and against shapely's buffer."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.spatial import cKDTree
from shapely.geometry import LinearRing, Polygon
from shapely.geometry import Point as ShapelyPoint

from veneerwb.core import Top, VeneerError
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.curves import Curve, EllipseArc
from veneerwb.core.outlines.edge import Arc, Line
from veneerwb.core.outlines.offset import parallel, widest

ELL = edges.straights(
    [(-600.0, -400.0), (600.0, -400.0), (600.0, 100.0), (100.0, 100.0), (100.0, 400.0),
     (-600.0, 400.0)]
)  # fmt: skip
HALF_ROUND = (Arc((0.0, 0.0), 500.0, 0.0, 180.0), Line((-500.0, 0.0), (500.0, 0.0)))
BITTEN = (
    *edges.straights([(-500.0, -300.0), (500.0, -300.0), (500.0, 300.0), (100.0, 300.0)])[:3],
    Arc((0.0, 300.0), 100.0, 0.0, -180.0),
    Line((-100.0, 300.0), (-500.0, 300.0)),
    Line((-500.0, 300.0), (-500.0, -300.0)),
)
PAINTERS = (
    Curve((400.0, 0.0), (400.0, 300.0), (100.0, 400.0), (0.0, 250.0)),
    Curve((0.0, 250.0), (-100.0, 400.0), (-400.0, 300.0), (-400.0, 0.0)),
    Line((-400.0, 0.0), (-300.0, -300.0)),
    Arc((0.0, -300.0), 300.0, 180.0, 180.0),
    Line((300.0, -300.0), (400.0, 0.0)),
)
OVAL = Top.oval(1200.0, 800.0).edge
OVAL_ROUND = math.fsum(segment.length for segment in OVAL)
EDGES = {
    "ell": ELL,
    "half round": HALF_ROUND,
    "bitten": BITTEN,
    "painters": PAINTERS,
    "oval": OVAL,
    "racetrack": Top.racetrack(1800.0, 900.0).edge,
    "boat": Top.boat(2400.0, 1200.0, 800.0).edge,
    "pointed boat": Top.boat(2400.0, 1200.0, 100.0).edge,
    "triangle": Top.polygon(3, 1000.0).edge,
}


def rounded(x, y, radius):
    """A rectangle 2 x by 2 y with corners of that radius."""
    u, v = x - radius, y - radius
    return (
        Line((-u, -y), (u, -y)), Arc((u, -v), radius, -90.0, 90.0),
        Line((x, -v), (x, v)), Arc((u, v), radius, 0.0, 90.0),
        Line((u, y), (-u, y)), Arc((-u, v), radius, 90.0, 90.0),
        Line((-x, v), (-x, -v)), Arc((-u, -v), radius, 180.0, 90.0),
    )  # fmt: skip


def assert_closed_and_simple(edge):
    for one, following in zip(edge, [*edge[1:], edge[0]]):
        assert math.dist(one.end, following.start) <= 1e-6
    shape = edges.polygon(edge)
    assert shape.is_valid and shape.exterior.is_ccw
    return shape


@pytest.mark.parametrize("by", [-150.0, -50.0, -5.0, 5.0, 50.0])
@pytest.mark.parametrize("name", EDGES)
def test_a_parallel_is_closed_simple_and_what_shapely_makes_of_it(name, by):
    edge = EDGES[name]
    shape = assert_closed_and_simple(parallel(edge, by))
    other = edges.polygon(edge).buffer(by, join_style=2, mitre_limit=5.0)
    # Round corners that are lengthened along their arcs differ from straight ones by a little.
    allowed = 0.02 * shape.length + (0.35 * by * by if by > 0.0 and name == "bitten" else 0.0)
    allowed += 0.05 * by * by if name in ("half round", "painters") else 0.0
    assert shape.symmetric_difference(other).area <= allowed


@pytest.mark.parametrize("by", [-150.0, -50.0, 50.0])
@pytest.mark.parametrize("name", EDGES)
def test_no_place_of_a_parallel_is_nearer_than_it_should_be(name, by):
    before = LinearRing(edges.polygon(EDGES[name], 1e-3).exterior)
    run = parallel(EDGES[name], by)
    places = [segment.at(k / 7.0) for segment in run for k in range(7)]
    away = np.array([before.distance(ShapelyPoint(place)) for place in places])
    # 0.01 where the curves of the painters' edge come to points and straights stand for them
    least = 0.01 if (name, by) == ("painters", -150.0) else 0.0021
    assert away.min() >= abs(by) - least


@pytest.mark.parametrize("by", [-240.0, -20.0, 50.0, 300.0])
def test_the_parallel_of_an_oval_lies_within_a_thousandth(by):
    run = parallel(OVAL, by)
    assert all(isinstance(segment, Curve) for segment in run)
    assert len(run) <= 64
    ring = cKDTree(OVAL[0].path(np.linspace(0.0, 1.0, 50_001))[0])
    places = np.concatenate([segment.path(np.linspace(0.0, 1.0, 33))[0] for segment in run])
    away, _ = ring.query(places)
    assert np.abs(away - abs(by)).max() <= 0.001


@pytest.mark.parametrize("by", [-200.0, -60.0, 25.0, 150.0])
def test_the_parallel_of_an_oval_encloses_what_steiner_says(by):
    # area of a smooth convex outline's parallel: A + L d + pi d2
    expected = math.pi * 600.0 * 400.0 + OVAL_ROUND * by + math.pi * by * by
    assert edges.area(parallel(OVAL, by)) == pytest.approx(expected, abs=0.001 * OVAL_ROUND)


@settings(max_examples=25)
@given(st.floats(-299.0, 500.0).filter(lambda by: abs(by) > 1e-6))
def test_the_parallel_of_a_circle_is_a_circle(by):
    (arc,) = parallel((Arc((7.0, -3.0), 300.0, 12.0, 360.0),), by)
    assert arc == Arc((7.0, -3.0), 300.0 + by, 12.0, 360.0)


@pytest.mark.parametrize("by", [-90.0, 1.0, 70.0])
def test_a_rounded_rectangle_keeps_its_arcs_until_they_shrink_away(by):
    edge = parallel(rounded(500.0, 300.0, 100.0), by)
    x, y, radius = 500.0 + by, 300.0 + by, 100.0 + by
    assert [type(s) for s in edge] == [Line, Arc] * 4
    assert edges.area(edge) == pytest.approx(4 * x * y - (4 - math.pi) * radius**2, rel=1e-12)


@pytest.mark.parametrize("by", [-100.0, -101.0, -250.0])
def test_within_its_radius_a_rounded_rectangle_has_sharp_corners(by):
    edge = parallel(rounded(500.0, 300.0, 100.0), by)
    assert [type(s) for s in edge] == [Line] * 4
    assert edges.area(edge) == pytest.approx(4 * (500.0 + by) * (300.0 + by), rel=1e-12)


@pytest.mark.parametrize("by", [-180.0, -33.0, 20.0])
def test_the_concave_corner_of_an_ell_stays_sharp(by):
    edge = parallel(ELL, by)
    corners = sorted((round(s.a[0], 6), round(s.a[1], 6)) for s in edge)
    x = 600.0 + by
    assert corners == sorted([
        (-x, -400.0 - by), (x, -400.0 - by), (x, 100.0 + by), (100.0 + by, 100.0 + by),
        (100.0 + by, 400.0 + by), (-x, 400.0 + by),
    ])  # fmt: skip


def test_a_side_that_shrinks_away_lets_its_neighbours_meet():
    boat = parallel(EDGES["pointed boat"], -150.0)
    assert [type(s) for s in boat] == [Arc, Arc]
    radius = EDGES["pointed boat"][0].radius - 150.0
    assert [s.radius for s in boat] == pytest.approx([radius, radius])
    chamfered = edges.straights(
        [(-300.0, -200.0), (300.0, -200.0), (300.0, 190.0), (290.0, 200.0), (-300.0, 200.0)]
    )
    square = parallel(chamfered, -100.0)
    assert len(square) == 4
    assert edges.area(square) == pytest.approx(400.0 * 200.0)


def test_a_half_round_goes_on_along_its_arc_to_a_sharp_corner():
    arc, straight = parallel(HALF_ROUND, 30.0)
    assert (type(arc), arc.radius) == (Arc, 530.0)
    assert straight.b == pytest.approx((math.sqrt(530.0**2 - 30.0**2), -30.0))


def test_a_spike_is_cut_off_square():
    needle = edges.straights([(0.0, 0.0), (1000.0, -40.0), (1000.0, 40.0)])
    grown = parallel(needle, 20.0)
    assert len(grown) == 4
    assert edges.extent(grown, 180.0)[1] == pytest.approx(20.0, abs=1e-9)


def test_roles_stay():
    edge = (Arc((0.0, 0.0), 500.0, 0.0, 180.0, "seam"), Line((-500.0, 0.0), (500.0, 0.0)))
    assert [s.role for s in parallel(edge, -10.0)] == ["seam", "rim"]


def test_roots_cross_between_a_straight_and_a_curve():
    edge = (
        EllipseArc((0.0, 0.0), 500.0, 300.0, 0.0, 0.0, 180.0),
        Line((-500.0, 0.0), (500.0, 0.0)),
    )
    inner = parallel(edge, -40.0)
    shape = assert_closed_and_simple(inner)
    other = edges.polygon(edge, 1e-3).buffer(-40.0, join_style=2)
    assert shape.symmetric_difference(other).area < 0.01 * shape.length
    straight = next(s for s in inner if isinstance(s, Line))
    assert straight.a[1] == pytest.approx(40.0) and straight.length < 1000.0


DUMB_BELL = edges.straights([
    (-500.0, -200.0), (-100.0, -200.0), (-100.0, -50.0), (100.0, -50.0), (100.0, -200.0),
    (500.0, -200.0), (500.0, 200.0), (100.0, 200.0), (100.0, 50.0), (-100.0, 50.0),
    (-100.0, 200.0), (-500.0, 200.0),
])  # fmt: skip


@pytest.mark.parametrize(
    ("edge", "width", "most"),
    [(DUMB_BELL, 60.0, 50.0), (OVAL, 400.0, 400.0), (ELL, 351.0, 350.0), (OVAL, 1e5, 400.0),
     (EDGES["racetrack"], 450.0, 450.0), (Top.round(1200.0).edge, 600.0, 600.0),
     (Top.round(10.0).edge, 6.0, 5.0)],
)  # fmt: skip
def test_a_parallel_that_parts_or_vanishes_is_refused_with_the_widest_that_works(edge, width, most):
    with pytest.raises(VeneerError, match="the widest is") as refused:
        parallel(edge, -width)
    named = refused.value.values["most"]
    assert most - 0.7 <= named < most
    assert named == widest(edge)
    assert_closed_and_simple(parallel(edge, -named))


def test_where_a_curve_would_come_to_a_point_straights_stand_for_it():
    inner = parallel(OVAL, -300.0)  # the ends' radius is 266.7
    shape = assert_closed_and_simple(inner)
    assert all(isinstance(s, Line) for s in inner)
    fine = Polygon(edges.points(OVAL, 1e-4)).buffer(-300.0, join_style=2)
    assert shape.symmetric_difference(fine).area < 0.03 * shape.length


def test_a_bay_that_closes_outside_is_covered():
    bay = edges.straights([
        (-300.0, -300.0), (300.0, -300.0), (300.0, 300.0), (10.0, 300.0), (10.0, 200.0),
        (100.0, 200.0), (100.0, -100.0), (-100.0, -100.0), (-100.0, 200.0), (-10.0, 200.0),
        (-10.0, 300.0), (-300.0, 300.0),
    ])  # fmt: skip
    assert edges.area(parallel(bay, 20.0)) == pytest.approx(640.0**2, rel=1e-9)

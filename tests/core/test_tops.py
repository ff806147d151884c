# SPDX-License-Identifier: LGPL-2.1-or-later
"""Tops that are neither round nor regular: ovals, rectangles, racetracks, boats, outlines."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, MultiPolygon, Polygon, box
from shapely.geometry import Point as ShapelyPoint

from veneerwb.core import Top, VeneerError
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.curves import Curve, EllipseArc
from veneerwb.core.outlines.edge import Arc, Line
from veneerwb.core.outlines.region import Half

ELL = Polygon([(0, 0), (1200, 0), (1200, 500), (600, 500), (600, 900), (0, 900)])
HOLED = Polygon(
    box(-600, -400, 600, 400).exterior,
    [box(-50, -50, 50, 50).exterior, box(200, 100, 280, 180).exterior],
)
CABLE = (Arc((300.0, 100.0), 40.0, 0.0, 360.0),)
SKETCH = (
    Curve((400.0, 0.0), (400.0, 300.0), (100.0, 400.0), (0.0, 250.0)),
    EllipseArc((-200.0, 250.0), 200.0, 100.0, 0.0, 0.0, 180.0),
    Line((-400.0, 250.0), (-400.0, 0.0)),
    Arc((0.0, 0.0), 400.0, 180.0, 180.0),
)
R_BOAT = (1200.0**2 + 200.0**2) / 400.0
HALF_BOAT = math.asin(1200.0 / R_BOAT)
AREAS = {
    "oval": (Top.oval(1200.0, 800.0), math.pi * 600.0 * 400.0),
    "upright oval": (Top.oval(800.0, 1200.0), math.pi * 600.0 * 400.0),
    "square": (Top.square(900.0), 900.0**2),
    "rectangle": (Top.rectangle(1800.0, 900.0), 1800.0 * 900.0),
    "racetrack": (Top.racetrack(1800.0, 900.0), 900.0**2 + math.pi * 450.0**2),
    # the straight-sided middle and two segments of circles
    "boat": (
        Top.boat(2400.0, 1200.0, 800.0),
        2400.0 * 800.0 + R_BOAT**2 * (2.0 * HALF_BOAT - math.sin(2.0 * HALF_BOAT)),
    ),
    "ell": (Top.outline(ELL), ELL.area),
    "holed": (Top.outline(HOLED), HOLED.area),
    "sketch": (
        Top.of_edges(SKETCH),
        math.fsum(segment.swept for segment in SKETCH),
    ),
    "bored": (Top.of_edges(Top.oval(1200.0, 800.0).edge, [CABLE]),
              math.pi * (600.0 * 400.0 - 40.0**2)),
}  # fmt: skip
TOPS = {name: top for name, (top, _) in AREAS.items()}


@pytest.mark.parametrize("name", AREAS)
def test_areas_are_exact_and_polygons_near(name):
    top, expected = AREAS[name]
    assert top.area == pytest.approx(expected, rel=1e-12)
    length = sum(s.length for loop in top.region.loops for s in loop)
    assert top.polygon_mm.is_valid
    assert abs(top.polygon_mm.area - expected) <= 0.01 * length
    assert top.polygon_mm.exterior.is_ccw


@pytest.mark.parametrize("name", TOPS)
def test_reach_is_the_furthest_corner(name):
    top = TOPS[name]
    far = max(math.hypot(x, y) for x, y in top.polygon_mm.exterior.coords)
    assert far - 1e-9 <= top.reach <= far + 0.01


@pytest.mark.parametrize("name", TOPS)
def test_a_scaled_top_has_the_same_shape_and_says_its_sizes(name):
    top, half = TOPS[name], TOPS[name].scaled(0.5)
    assert half.area == pytest.approx(top.area / 4.0, rel=1e-12)
    assert half.size == top.size / 2.0
    assert half.values == {key: value / 2.0 for key, value in top.values.items()}
    low, high = edges.extent(half.grown(10.0), 0.0)
    assert high - low == pytest.approx(
        np.ptp(edges.extent(half.edge, 0.0)) + 20.0, abs=0.002 if "ov" in name else 1e-6
    ) or name in ("boat", "sketch", "bored")


@pytest.mark.parametrize("by", [-60.0, 8.0])
@pytest.mark.parametrize("name", TOPS)
def test_a_grown_top_lies_that_far_outside(name, by):
    top = TOPS[name]
    grown = edges.polygon(top.grown(by))
    other = Polygon(top.polygon_mm.exterior).buffer(by, join_style=2, mitre_limit=5.0)
    assert grown.symmetric_difference(other).area <= 0.02 * grown.length


def test_names_say_what_the_top_is():
    assert [top.name for top in TOPS.values()] == [
        "oval, 1200 by 800 mm",
        "oval, 800 by 1200 mm",
        "square, 900 mm",
        "rectangle, 1800 by 900 mm",
        "racetrack, 1800 by 900 mm",
        "boat shape, 2400 by 1200 mm, 800 mm at the ends",
        "outline, 1200 by 900 mm",
        "outline, 1200 by 800 mm",
        "outline, 800 by 750 mm",
        "outline, 1200 by 800 mm",
    ]


def test_a_boat_is_widest_in_the_middle_and_straight_at_its_ends():
    top = Top.boat(2400.0, 1200.0, 800.0)
    assert edges.extent(top.edge, 0.0) == pytest.approx((-1200.0, 1200.0), abs=1e-9)
    assert edges.extent(top.edge, 90.0) == pytest.approx((-600.0, 600.0), abs=1e-9)
    ends = [s for s in top.edge if isinstance(s, Line)]
    assert [end.length for end in ends] == pytest.approx([800.0, 800.0])
    for one, following in zip(top.edge, [*top.edge[1:], top.edge[0]]):
        assert math.dist(one.end, following.start) < 1e-9


@settings(max_examples=60)
@given(
    st.sampled_from(list(TOPS)),
    st.lists(st.tuples(st.floats(-360, 360), st.floats(-350, 350)), min_size=1, max_size=3),
)
def test_random_half_planes_tile_every_top(name, straights):
    region = TOPS[name].region
    cells = [()]
    for normal, offset in straights:
        half = Half(normal, offset)
        cells = [(*cell, side) for cell in cells for side in (half, half.other)]
    parts = [part for cell in cells for part in region.cut(cell)]
    assert math.fsum(part.area for part in parts) == pytest.approx(region.area, rel=1e-9)


@pytest.mark.parametrize("name", TOPS)
def test_a_fan_of_wedges_tiles_every_top(name):
    region = TOPS[name].region
    turns = [11.25 + 22.5 * k for k in range(16)]
    parts = [
        part
        for turn in turns
        for part in region.cut(
            [Half.left_of((10.0, 5.0), turn), Half.left_of((10.0, 5.0), turn + 22.5).other]
        )
    ]
    assert math.fsum(part.area for part in parts) == pytest.approx(region.area, rel=1e-9)


@pytest.mark.parametrize("size", [0, -1, math.nan, math.inf, 1e300, "x", None])
@pytest.mark.parametrize("make", [Top.oval, Top.rectangle, Top.racetrack])
def test_absurd_sizes_are_refused(make, size):
    with pytest.raises(VeneerError, match="length cannot be"):
        make(size, 500.0)
    with pytest.raises(VeneerError, match="width cannot be"):
        make(500.0, size)
    with pytest.raises(VeneerError, match="side cannot be"):
        Top.square(size)
    with pytest.raises(VeneerError, match="width at the ends cannot be"):
        Top.boat(2000.0, 900.0, size)


def said(make, *given):
    with pytest.raises(VeneerError) as refused:
        make(*given)
    assert str(refused.value).endswith(".")
    return str(refused.value)


def test_a_racetrack_as_wide_as_long_is_refused_with_what_would_do():
    assert "swap the two (1200 mm long and 900 mm wide)" in said(Top.racetrack, 900.0, 1200.0)
    assert "take a round top of 900 mm" in said(Top.racetrack, 900.0, 900.0)
    assert Top.racetrack(1200.0, 900.0).area > 0.0


def test_a_boat_that_cannot_be_is_refused_with_what_would_do():
    assert "give less than 900 mm" in said(Top.boat, 2000.0, 900.0, 900.0)
    assert "give less than 900 mm" in said(Top.boat, 2000.0, 900.0, 1000.0)
    assert "longer than 1100 mm, or its ends wider than 200 mm" in said(
        Top.boat, 1000.0, 1200.0, 100.0
    )
    assert Top.boat(1101.0, 1200.0, 100.0).area > 0.0
    assert Top.boat(1000.0, 1200.0, 201.0).area > 0.0


SQUARE = edges.straights([(0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0)])


@pytest.mark.parametrize(
    ("polygon", "sentence"),
    [
        (Polygon([(0, 0), (100, 100), (100, 0), (0, 100)]), r"crosses .* near \(50, 50\)"),
        (Polygon(), "encloses 0 mm2; it must be at least 1 mm2"),
        (Polygon([(0, 0), (100, 0), (200, 0)]), "encloses 0 mm2"),
        (Polygon([(0, 0), (0.5, 0), (0.5, 0.5)]), "encloses 0.125 mm2"),
        (Polygon([(0, 0), (1e6, 0), (0, 1e6)]), "the most is 100000 mm"),
        (Polygon([(0, 0), (math.nan, 0), (0, 100)]), "no plain number"),
        (MultiPolygon([box(0, 0, 1, 1), box(2, 2, 3, 3)]), "these are 2"),
        (LineString([(0, 0), (1, 1)]), "this is a LineString"),
        (None, "this is a NoneType"),
        (Polygon(box(0, 0, 9, 9).exterior, [box(20, 20, 22, 22).exterior]), r"near \(21, 21\)"),
        (Polygon(box(0, 0, 9, 9).exterior, [box(0, 2, 2, 4).exterior]), "outside the outline or"),
        (Polygon(box(0, 0, 9, 9).exterior, [[(0, 5), (4, 4), (4, 6)]]), "touches it"),
        (Polygon(box(0, 0, 9, 9).exterior, [box(2, 2, 5, 5).exterior, box(4, 4, 7, 7).exterior]),
         "another opening"),
        *((Polygon(box(0, 0, 90, 90).exterior, [one.exterior for one in openings]),
           r"near \(38, 38\) lies within an opening")
          for island in [(box(20, 20, 60, 60), box(36, 36, 40, 40))]
          for openings in (island, island[::-1])),
    ],
)  # fmt: skip
def test_what_is_no_outline_is_refused(polygon, sentence):
    with pytest.raises(VeneerError, match=sentence):
        Top.outline(polygon)


@pytest.mark.parametrize(
    ("run", "sentence"),
    [
        ([], "encloses 0 mm2"),
        (SQUARE[:3], r"open by 100 mm near \(0, 100\)"),
        ([SQUARE[0], SQUARE[2], SQUARE[1], SQUARE[3]], "open by"),
        ([*SQUARE[:3], Line((0.0, 100.0), (0.0, 0.5))], r"open by 0.5 mm near \(0, 0.5\)"),
        ([SQUARE[0], "x"], "this is a str"),
        ([Arc((0.0, 0.0), 0.0, 0.0, 360.0)], "radius of 0 mm"),
        ([Arc((0.0, math.inf), 5.0, 0.0, 360.0)], "no plain number"),
        ([Curve((0.0, 0.0), (math.nan, 0.0), (1.0, 1.0), (0.0, 0.0))], "no plain number"),
        ([Arc((0.0, 0.0), 9.0, 0.0, 180.0)], "open by 18 mm"),
        ([Curve((0.0, 0.0), (400.0, 300.0), (-300.0, 300.0), (100.0, 0.0)),
          Line((100.0, 0.0), (0.0, 0.0))], "crosses or touches itself near"),
    ],
)  # fmt: skip
def test_runs_that_are_no_outline_are_refused(run, sentence):
    with pytest.raises(VeneerError, match=sentence):
        Top.of_edges(run)
    with pytest.raises(VeneerError):
        Top.of_edges(Top.rectangle(9000.0, 9000.0).edge, [run])


def test_runs_may_go_either_way_round_and_small_gaps_are_bridged():
    back = [s.reversed() for s in reversed(SKETCH)]
    assert Top.of_edges(back).area == pytest.approx(Top.of_edges(SKETCH).area, rel=1e-12)
    gap = [*SQUARE[:3], Line((0.0, 100.0), (0.0, 0.0005))]
    top = Top.of_edges(gap)
    assert top.area == pytest.approx(100.0**2, rel=1e-5)
    for one, following in zip(top.edge, [*top.edge[1:], top.edge[0]]):
        assert math.dist(one.end, following.start) <= 1e-6
    for hole in (CABLE, [s.reversed() for s in CABLE]):
        bored = Top.of_edges(Top.square(1200.0).edge, [hole])
        assert bored.area == pytest.approx(1200.0**2 - math.pi * 40.0**2, rel=1e-12)


def test_points_within_straights_are_left_out():
    many = Polygon([(0, 0), (50, 0), (100, 0), (100, 100), (0, 100), (0, 40)])
    assert len(Top.outline(many).edge) == 4
    assert Top.outline(box(0, 0, 9, 9)).edge == Top.outline(MultiPolygon([box(0, 0, 9, 9)])).edge


def test_a_centred_top_has_its_centroid_at_the_origin():
    top = Top.outline(HOLED).centred()
    moved = Top.outline(ELL).centred()
    for one in (top, moved):
        middle = one.polygon_mm.centroid
        assert (middle.x, middle.y) == pytest.approx((0.0, 0.0), abs=1e-9)
    assert moved.area == pytest.approx(ELL.area) and moved.name == Top.outline(ELL).name
    assert len(top.holes) == 2


def test_the_blank_has_no_openings():
    blank = TOPS["bored"].blank_region(12.0)
    assert blank.holes == ()
    assert blank.extent(0.0) == pytest.approx((-612.0, 612.0), abs=0.001)
    assert TOPS["bored"].blank_region(0.0).area == pytest.approx(math.pi * 600.0 * 400.0)


@pytest.mark.parametrize("name", TOPS)
def test_a_border_leaves_its_field(name):
    top = TOPS[name]
    field = top.inset(60.0)
    assert field.name == f"{top.name}, less 60 mm all round"
    whole, inner = Polygon(top.polygon_mm.exterior), Polygon(field.polygon_mm.exterior)
    assert whole.exterior.distance(inner) == pytest.approx(60.0, abs=0.01)
    assert field.size == top.size
    assert field.scaled(0.5).values["border"] == 30.0


def test_a_border_of_two_strips_is_named_as_one():
    field = Top.round(1200.0).inset(40.0).inset(10.0)
    assert field.name == "round, 1200 mm, less 50 mm all round"
    assert field.edge[0].radius == 550.0


def test_openings_stay_in_the_field_or_are_left_to_the_border():
    top = Top.of_edges(Top.square(1000.0).edge, [CABLE])  # 300, 100, radius 40: 160 from the edge
    assert len(top.inset(100.0).holes) == 1
    assert top.inset(250.0).holes == ()
    with pytest.raises(VeneerError, match="narrower than 160 mm") as refused:
        top.inset(180.0)
    assert len(top.inset(refused.value.values["most"] - 0.1).holes) == 1


@pytest.mark.parametrize("width", [0, -5, math.nan, "x"])
def test_absurd_borders_are_refused(width):
    with pytest.raises(VeneerError, match="border's width cannot be"):
        Top.round(1000.0).inset(width)


@pytest.mark.parametrize("name", TOPS)
def test_a_border_wider_than_the_top_is_refused_with_the_widest(name):
    top = Top(TOPS[name].words, TOPS[name].size, TOPS[name].edge, (), TOPS[name].others)
    with pytest.raises(VeneerError, match="A border 900 mm wide leaves nothing") as refused:
        top.inset(900.0)
    assert top.inset(refused.value.values["most"]).area >= 1.0


def test_the_origin_may_lie_outside():
    top = Top.outline(box(100, 100, 700, 500))
    assert not top.polygon_mm.contains(ShapelyPoint(0, 0))
    assert top.reach == pytest.approx(math.hypot(700, 500))

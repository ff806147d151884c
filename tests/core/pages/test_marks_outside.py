# SPDX-License-Identifier: LGPL-2.1-or-later
"""The marks of a plan: those outside near their pieces, clear of each other and of what is there;
and the room that an arrow takes."""

from __future__ import annotations

import itertools
import math

import pytest
from shapely import affinity
from shapely.geometry import LineString, Point, box

from veneerwb.core import Stock, Top, radial
from veneerwb.core.plane import polar
from veneerwb.core.shop.pages.placing import BROAD, _arrow_area, widest
from veneerwb.core.shop.pages.placing_outside import _Row, outside_marks

STOCK = Stock(900.0, 3000.0, 64, 0.6)
OUTLINE = Top.oval(300.0, 180.0).polygon_mm.buffer(5.0)


@pytest.mark.parametrize("way", [0.0, 33.0, 90.0, 181.0, 305.5])
def test_a_row_tells_where_a_ray_meets_it_and_what_lies_along_it_as_shapely_does(way):
    ring, tip = OUTLINE.exterior, (40.0, -30.0)
    row = _Row(ring)
    out, far = row.hit(tip, way)
    ray = LineString([tip, [a + b for a, b in zip(tip, polar(1e4, way))]])
    wanted = ring.intersection(ray)
    assert row.at(far) == pytest.approx((wanted.x, wanted.y), abs=1e-9)
    assert out == pytest.approx(math.dist(tip, (wanted.x, wanted.y)))
    for aside in (0.0, 3.0, -3.0, 1e3):
        place = ring.interpolate((ring.project(wanted) + aside) % ring.length)
        assert row.at(far + aside) == pytest.approx((place.x, place.y), abs=1e-6)


def test_a_ray_that_leads_away_meets_no_row_and_the_first_of_several_counts():
    row = _Row(OUTLINE.exterior)
    assert row.hit((500.0, 0.0), 0.0) is None
    out, _ = row.hit((500.0, 0.0), 180.0)
    assert out == pytest.approx(500.0 - OUTLINE.bounds[2], abs=0.01)


NOTHING, BESIDE = box(500.0, 0.0, 501.0, 1.0), box(54.0, -3.0, 90.0, 3.0)


@pytest.mark.parametrize(("ways", "there", "longest"), [
    (48, NOTHING, 25.0), (24, BESIDE, 100.0), (12, BESIDE, 100.0),
])  # fmt: skip
def test_marks_and_their_lines_keep_clear_of_each_other_and_of_what_is_there(ways, there, longest):
    layout = radial(STOCK, Top.round(300.0), ways)
    edge = affinity.scale(layout.top.polygon_mm, 0.35, 0.35, origin=(0.0, 0.0))
    wide = [widest(piece) for piece in layout.pieces]
    marks, reach = outside_marks(layout.pieces, wide, edge, 0.35, False, taken=[there])
    assert sorted(mark.piece.position for mark in marks) == list(range(1, ways + 1))
    areas = [box(m.at[0] - 1.2, m.at[1] - 1.2, m.at[0] + 1.2, m.at[1] + 1.2) for m in marks]
    lines = [LineString([m.tip, m.at]) for m in marks]
    for (area, line), (other, other_line) in itertools.combinations(zip(areas, lines), 2):
        assert not area.intersects(other) and not line.crosses(other_line)
        assert not line.intersects(other) and not other_line.intersects(area)
    for area, line, mark in zip(areas, lines, marks):
        assert not area.intersects(there) and not line.intersects(there)
        assert 3.0 < edge.exterior.distance(Point(mark.at)) < reach + 1.0
        assert line.length < longest


def test_an_arrow_takes_its_length_and_breadth_of_room():
    dx, dy = polar(6.0, 33.0)
    wanted = LineString([(5.0 - dx, 7.0 - dy), (5.0 + dx, 7.0 + dy)]).buffer(BROAD, cap_style=2)
    assert _arrow_area((5.0, 7.0), 12.0, 33.0).symmetric_difference(wanted).area < 1e-9

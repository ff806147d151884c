# SPDX-License-Identifier: LGPL-2.1-or-later
"""Polygons of any shape as convex facets: all of it, once, and nothing else."""

import math

import pytest
from shapely.geometry import Point, Polygon, box

from veneerwb.gui.facets import facets

DISC = Point(700.0, 300.0).buffer(60.0, 16)
SHAPES = {
    "convex": Point(0.0, 0.0).buffer(300.0, 16),
    "angle": Polygon([(0, 0), (9, 0), (9, 1), (1, 1), (1, 9), (0, 9)]),
    "slit": Polygon([(0, 0), (1000, 0), (1000, 500), (600, 500), (599, 2), (598, 500), (0, 500)]),
    "hole": box(0, 0, 1000, 600).difference(DISC),
    "holes": box(0, 0, 1000, 600).difference(DISC).difference(box(100, 100, 300, 500)),
    "band": Point(0, 0).buffer(600, 32).difference(Point(0, 0).buffer(200, 32)).intersection(
        Polygon([(0, 0), (900, 0), (900, 500)])),
}  # fmt: skip


@pytest.mark.parametrize("name", SHAPES)
def test_facets_cover_a_polygon_once_and_are_convex(name):
    corners, indices = facets(SHAPES[name])
    found, facet = [], []
    for k in indices:
        if k < 0:
            found.append(Polygon(corners[facet]))
            facet = []
        else:
            facet.append(k)
    assert facet == [] and (len(found) == 1) == (name == "convex")
    for one in found:
        assert one.exterior.is_ccw and one.convex_hull.area == pytest.approx(one.area, rel=1e-9)
        assert SHAPES[name].buffer(1e-6).covers(one)
    assert math.fsum(one.area for one in found) == pytest.approx(SHAPES[name].area, rel=1e-9)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Leaf width against reach, set-out lengths and regular polygons, against published tables."""

from __future__ import annotations

import math

import pytest

from veneerwb.core import Stock, Top, check, radial
from veneerwb.core.shop import cutlist

INCH = 25.4


def off_leaf(layout):
    """The finding that a blank leaves its leaf, or None."""
    return next((f for f in check(layout) if f.code == "off-leaf"), None)


def eight_ways(radius, rim, across=8.0 * INCH):
    stock = Stock(width=across, length=2000.0, leaves=8, thickness=0.6)
    return radial(stock, Top.round(2.0 * radius), 8, rim=rim)


def rim_corners(piece):
    return piece.blank_edge[0].end, piece.blank_edge[-1].start


# Plain geometry; a published example lays a 20 in field in 8 ways from leaves 8 in wide.
def test_leaves_8_in_wide_serve_a_20_in_field_in_8_ways():
    assert off_leaf(eight_ways(10.0 * INCH, "arc")) is None


# Plain geometry: a rim on the arc needs a leaf 2 R sin(180/n) wide: 8 in serves 8 ways up to 10.453
# in.
def test_with_the_rim_on_the_arc_an_8_in_leaf_serves_8_ways_just_to_its_reach():
    reach = 8.0 * INCH / (2.0 * math.sin(math.radians(22.5)))
    assert reach / INCH == pytest.approx(10.453, abs=6e-4)
    assert off_leaf(eight_ways(reach, "arc")) is None
    found = off_leaf(eight_ways(reach + 0.2, "arc"))
    assert found is not None and found.level == "stop"
    assert found.values["reach"] == pytest.approx(10.453 * INCH, abs=0.13)


# Plain geometry: a straight rim tangent outside needs 2 R tan(180/n), its corners at R /
# cos(180/n): the
# same leaf serves 9.657 in.
def test_with_a_straight_rim_an_8_in_leaf_serves_8_ways_just_to_its_reach():
    reach = 8.0 * INCH / (2.0 * math.tan(math.radians(22.5)))
    assert reach / INCH == pytest.approx(9.657, abs=6e-4)
    fitting = eight_ways(reach, "straight")
    assert off_leaf(fitting) is None
    for corner in rim_corners(fitting.pieces[0]):
        assert math.hypot(*corner) == pytest.approx(reach / math.cos(math.radians(22.5)), abs=1e-9)
    found = off_leaf(eight_ways(reach + 0.2, "straight"))
    assert found is not None
    assert found.values["reach"] == pytest.approx(9.657 * INCH, abs=0.13)


# Graves, Veneer Sequence for the "Starburst" Pattern: a 7 ft top in 8 ways with three leaves in
# each
# wedge: chord 32.15 in, 10.72 in a leaf.
def test_chord_of_a_7_ft_top_in_8_ways():
    row = cutlist.rows(eight_ways(42.0 * INCH, "arc", across=1000.0))[0]
    assert row.net_across / INCH == pytest.approx(32.15, abs=0.005)
    assert row.net_across / INCH / 3.0 == pytest.approx(10.72, abs=0.005)


# Henderson, Making Templates for a Sunburst (2007): tan 22.5 x 22, 24, 20, 18 in.
@pytest.mark.parametrize(
    ("inches", "half"), [(22.0, 9.112698), (24.0, 9.941125), (20.0, 8.284271), (18.0, 7.455844)]
)
def test_template_set_out(inches, half):
    a, b = rim_corners(eight_ways(inches * INCH, "straight").pieces[0])
    assert math.dist(a, b) / 2.0 / INCH == pytest.approx(half, abs=5e-7)


# Machinery's Handbook, 31st ed., p. 82: area over R2 and r2, side over R and r, r over R.
POLYGONS = {
    4: (2.0000, 4.0000, 1.4142, 2.0000, 0.7071),
    6: (2.5981, 3.4641, 1.0000, 1.1547, 0.8660),
    8: (2.8284, 3.3137, 0.7654, 0.8284, 0.9239),
    10: (2.9389, 3.2492, 0.6180, 0.6498, 0.9511),
    12: (3.0000, 3.2154, 0.5176, 0.5359, 0.9659),
    16: (3.0615, 3.1826, 0.3902, 0.3978, 0.9808),
    20: (3.0902, 3.1677, 0.3129, 0.3168, 0.9877),
    24: (3.1058, 3.1597, 0.2611, 0.2633, 0.9914),
    32: (3.1214, 3.1517, 0.1960, 0.1970, 0.9952),
}


# Machinery's Handbook, 31st ed., p. 82.
@pytest.mark.parametrize("sides", POLYGONS)
def test_regular_polygon_tops(sides):
    apothem = 500.0
    top = Top.polygon(sides, 2.0 * apothem)
    side = top.edge[0].length
    ratios = (
        top.area / top.reach**2, top.area / apothem**2, side / top.reach, side / apothem,
        apothem / top.reach,
    )
    assert ratios == pytest.approx(POLYGONS[sides], abs=6e-5)
    assert [s.length for s in top.edge] == pytest.approx([side] * sides, rel=1e-12)


# Machinery's Handbook, 31st ed., p. 82: the same table from the pieces of a match with a wedge for
# each side.
@pytest.mark.parametrize("sides", POLYGONS)
def test_pieces_of_a_regular_polygon_top(sides):
    apothem = 500.0
    layout = radial(Stock(1000.0, 2000.0, 32, 0.6), Top.polygon(sides, 2.0 * apothem), sides)
    tip_to_rim, rim, back = layout.pieces[0].edge  # a wedge for each side: its rim is one side
    a_r2, a_apothem2, s_r, s_apothem, _ = POLYGONS[sides]
    area = sum(piece.area for piece in layout.pieces)
    assert area / apothem**2 == pytest.approx(a_apothem2, abs=6e-5)
    assert rim.length / apothem == pytest.approx(s_apothem, abs=6e-5)
    assert rim.length / tip_to_rim.length == pytest.approx(s_r, abs=6e-5)
    assert sides * layout.pieces[0].area / back.length**2 == pytest.approx(a_r2, abs=6e-5)


# Plain geometry: a sector against the rectangle R long and 2 R sin(180/n) wide that it is cut from.
@pytest.mark.parametrize(("ways", "share"), [(6, 0.5236), (8, 0.5131), (12, 0.5058), (24, 0.5014)])
def test_share_of_its_rectangle_that_a_wedge_uses(ways, share):
    layout = radial(Stock(1500.0, 3000.0, ways, 0.6), Top.round(1200.0), ways)
    row = cutlist.rows(layout)[0]
    used = layout.pieces[0].area / (row.net_across * row.net_along)
    assert used == pytest.approx(share, abs=6e-5)

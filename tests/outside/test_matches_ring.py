# SPDX-License-Identifier: LGPL-2.1-or-later
"""Matches about a centre against published rules and plain geometry, each with its source."""

from __future__ import annotations

import math

import numpy as np
import pytest

from veneerwb.core import Stock, Top, VeneerError, check, radial
from veneerwb.core.matches.quarters import quarters

INCH = 25.4
STOCK = Stock(1200.0, 3000.0, 64, 0.6)
SQUARE = Top.square(800.0)


def grain_of(piece):
    """The direction on the top of the leaf's grain, 0 to 180 degrees."""
    foot, head = piece.onto_bundle.inverse().apply([(0.0, 0.0), (0.0, 1.0)])
    return math.degrees(math.atan2(*(head - foot)[::-1])) % 180.0


# Graves, Veneer Sequence for the "Starburst" Pattern: 8 ways, a top of 7 ft, three slip-matched
# leaves in each wedge: R = 42 in, chord 32.15 in, 10.72 in net per leaf, 24 leaves.
def test_three_strips_in_each_wedge_of_a_seven_foot_top():
    top = Top.round(84.0 * INCH)
    for turn in ("book", "slip"):
        layout = radial(Stock(12.0 * INCH, 2000.0, 24, 0.6), top, 8, turn, strips=3)
        assert sorted(p.leaf for p in layout.pieces) == list(range(1, 25))
        widths = [np.ptp(p.onto_bundle.apply_to(p.outline).bounds[::2]) for p in layout.pieces]
        assert np.array(widths) / INCH == pytest.approx([10.72] * 24, abs=0.01)
        chord = math.dist(layout.pieces[0].edge[0].start, layout.pieces[2].edge[0].end)
        assert "off-leaf" not in {f.code for f in check(layout)}
        narrow = radial(Stock(10.7 * INCH, 2000.0, 24, 0.6), top, 8, turn, strips=3)
        assert "off-leaf" in {f.code for f in check(narrow)}
        assert chord > 0.0
    assert 3.0 * widths[0] / INCH == pytest.approx(32.15, abs=0.01)
    with pytest.raises(VeneerError, match="1 missing"):
        radial(Stock(12.0 * INCH, 2000.0, 23, 0.6), top, 8, strips=3)


# Architectural Woodwork Standards, 1st ed. (2009), 1.2.19 to 1.2.22: slip: side by side in order,
# none turned. Within a wedge leaves lie in order and the same side up.
def test_leaves_of_a_wedge_are_slipped_in_order():
    layout = radial(STOCK, Top.round(1500.0), 8, strips=3)
    for k in range(0, 24, 3):
        wedge = layout.pieces[k : k + 3]
        assert [p.leaf for p in wedge] == [k + 1, k + 2, k + 3]
        assert len({p.turned for p in wedge}) == 1


# Graves: odds up one side and evens down the other, so that no jump is over 2: 1 3 5 7 8 6 4 2;
# for groups of leaves that stay together the same order of groups (plane counting).
def test_groups_of_leaves_are_spread_as_single_leaves_are():
    layout = radial(STOCK, Top.round(1500.0), 8, "slip", strips=3, order="spread")
    groups = [(layout.pieces[k].leaf - 1) // 3 + 1 for k in range(0, 24, 3)]
    assert groups == [1, 3, 5, 7, 8, 6, 4, 2]


# Plane geometry: a seam on each axis of an oval, book ring, needs n divisible by 4.
@pytest.mark.parametrize("ways", [4, 6, 8, 10, 12, 14, 16, 18])
def test_a_seam_on_each_axis_needs_a_count_divisible_by_four(ways):
    layout = radial(STOCK, Top.oval(1200.0, 800.0), ways, start=180.0 / ways)
    ends = [max(seam.line.coords, key=lambda p: math.hypot(*p)) for seam in layout.seams]
    on_x = any(abs(y) < 1e-6 for _, y in ends)
    on_y = any(abs(x) < 1e-6 for x, _ in ends)
    codes = {f.code for f in check(layout)}
    assert on_x and on_y == (ways % 4 == 0)
    assert ("oval-axes" in codes) == (ways % 4 != 0)


# Architectural Woodwork Standards, 1st ed. (2009), 1.2.19 to 1.2.22, pp. 73-76: box: four leaves,
# grain parallel to the perimeter; reverse box: four leaves, grain at right angles to it.
@pytest.mark.parametrize("top", [SQUARE, Top.rectangle(1000.0, 600.0)])
@pytest.mark.parametrize(("kind", "off"), [("box", 0.0), ("reverse box", 90.0)])
def test_grain_of_boxes_against_the_perimeter(kind, off, top):
    for turn in ("book", "slip"):
        layout = quarters(STOCK, top, kind, turn)
        assert len({p.leaf for p in layout.pieces}) == len(layout.pieces) == 4
        for piece in layout.pieces:
            (side,) = [s for s in piece.edge if s.role == "rim"]
            (ax, ay), (bx, by) = side.start, side.end
            along = math.degrees(math.atan2(by - ay, bx - ax))
            assert abs(math.remainder(grain_of(piece) - along - off, 180.0)) < 1e-9


# A trade page on matches of a panel face: diamond and reverse diamond are four quadrants with
# slanting grain; the V's form a diamond, or meet at the centre.
def test_the_grain_of_a_diamond_goes_round_the_centre_and_of_a_reverse_one_to_it():
    for kind, about in (("diamond", 90.0), ("reverse diamond", 0.0)):
        layout = quarters(STOCK, SQUARE, kind)
        assert len({p.leaf for p in layout.pieces}) == 4
        for piece in layout.pieces:
            centre = piece.outline.centroid
            outward = math.degrees(math.atan2(centre.y, centre.x))
            assert abs(math.remainder(grain_of(piece) - outward - about, 180.0)) < 1e-9


# The same page: herringbone: strips slanting both sides of a centre line.
def test_strips_of_a_herringbone_slant_both_sides_of_a_centre_line():
    layout = quarters(STOCK, SQUARE, "herringbone", slant=40.0, strip=100.0)
    for piece in layout.pieces:
        right = piece.outline.centroid.x > 0.0
        assert grain_of(piece) == pytest.approx(40.0 if right else 140.0)
    assert sum(p.outline.centroid.x > 0.0 for p in layout.pieces) * 2 == len(layout.pieces)


# Plane geometry: in a mirror at 45 degrees a level line is upright; four mirrors at 45 degrees
# through one point close, and on unequal sides the mitres do not pass through one point.
def test_a_box_closes_as_four_mirrors_only_on_a_square():
    for top, closes in ((SQUARE, True), (Top.rectangle(1000.0, 600.0), False)):
        assert ("box-mirrors" not in {f.code for f in check(quarters(STOCK, top, "box"))}) == closes

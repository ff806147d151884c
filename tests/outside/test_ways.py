# SPDX-License-Identifier: LGPL-2.1-or-later
"""Wedges, leaves and ring orders against published values, plain geometry and common practice."""

from __future__ import annotations

import itertools
import math

import numpy as np
import pytest

from veneerwb.core import Bundle, Leaf, Side, Stock, Top, VeneerError, check, closure, radial
from veneerwb.core.photos.reading import Photo
from veneerwb.core.shop import cutlist

INCH = 25.4
STOCK = Stock(width=1000.0, length=3000.0, leaves=64, thickness=0.6)
TOP = Top.round(1000.0)


def steps(**settings):
    return [seam.step for seam in radial(STOCK, TOP, **settings).seams]


def leaves(layout):
    return [piece.leaf for piece in layout.pieces]


def seam_angle(piece):
    """The angle in degrees between a piece's two seam edges, measured on the edges themselves."""
    first, last = piece.edge[0], piece.edge[-1]
    ax, ay = first.b[0] - first.a[0], first.b[1] - first.a[1]
    bx, by = last.a[0] - last.b[0], last.a[1] - last.b[1]
    return math.degrees(math.atan2(ax * by - ay * bx, ax * bx + ay * by))


# Common practice, no source; plain geometry.
@pytest.mark.parametrize(("ways", "angle"), [(4, 90), (8, 45), (12, 30), (16, 22.5), (24, 15)])
def test_wedge_angles_and_their_sum(ways, angle):
    angles = [seam_angle(piece) for piece in radial(STOCK, TOP, ways).pieces]
    assert angles == pytest.approx([angle] * ways, abs=1e-9)
    assert closure(angles, reach=500.0).error == pytest.approx(0.0, abs=1e-9)


# A magazine's workshop note on mirror previews.
@pytest.mark.parametrize(("mirrors", "images"), [(90.0, 4), (60.0, 6), (45.0, 8)])
def test_two_hinged_mirrors_show_as_many_images_as_the_ring_has_wedges(mirrors, images):
    codes = {f.code for f in check(radial(STOCK, TOP, images), wedge_angle=mirrors)}
    assert "closes" in codes
    assert seam_angle(radial(STOCK, TOP, images).pieces[0]) == pytest.approx(mirrors, abs=1e-9)


# Common practice, no source.
@pytest.mark.parametrize("ways", [4, 8, 12, 16, 24])
def test_a_radial_match_takes_as_many_consecutive_leaves_as_it_has_ways(ways):
    exact = Stock(1000.0, 3000.0, ways, 0.6)
    assert leaves(radial(exact, TOP, ways)) == list(range(1, ways + 1))
    one_short = Stock(1000.0, 3000.0, ways - 1, 0.6)
    with pytest.raises(VeneerError, match="1 missing"):
        radial(one_short, TOP, ways)


# Plain geometry.
@pytest.mark.parametrize("ways", [3, 5, 7, 13, 63])
def test_an_all_book_ring_needs_an_even_number_of_ways(ways):
    with pytest.raises(VeneerError) as caught:
        radial(STOCK, TOP, ways, turn="book")
    assert caught.value.code == "odd-book"
    assert len(radial(STOCK, TOP, ways, turn="slip").pieces) == ways


# Architectural Woodwork Standards, 1st ed. (2009), 1.2.22, p. 76: six or more leaves.
@pytest.mark.parametrize(("ways", "is_sunburst"), [(4, False), (5, False), (6, True), (8, True)])
def test_sunburst_starts_at_six_leaves(ways, is_sunburst):
    codes = {f.code for f in check(radial(STOCK, TOP, ways, turn="slip"))}
    assert ("not-sunburst" not in codes) == is_sunburst


# Graves, Veneer Sequence for the "Starburst" Pattern.
def test_slip_ring_in_order_jumps_at_the_close():
    assert steps(ways=8, turn="slip") == [1, 1, 1, 1, 1, 1, 1, 7]


# Graves, Veneer Sequence for the "Starburst" Pattern.
def test_slip_ring_spread_runs_odds_up_and_evens_down():
    layout = radial(STOCK, TOP, 8, turn="slip", order="spread")
    assert leaves(layout) == [1, 3, 5, 7, 8, 6, 4, 2]
    for ways in range(3, 65):
        assert max(steps(ways=ways, turn="slip", order="spread")) == 2


# Plain geometry (counting surfaces).
@pytest.mark.parametrize("ways", [4, 8, 12, 24, 64])
def test_book_ring_in_order_steps_0_2_and_closes_n_less_2_or_n(ways):
    assert steps(ways=ways, turned="odd") == [0, 2] * (ways // 2 - 1) + [0, ways - 2]
    assert steps(ways=ways, turned="even") == [2, 0] * (ways // 2 - 1) + [2, ways]


# Plain geometry (counting surfaces).
def test_book_ring_with_odds_and_evens_steps_up_to_3():
    for ways in (8, 12, 16):
        order = [*range(1, ways, 2), *range(ways, 0, -2)]
        assert max(steps(ways=ways, order=order)) == 3


# Plain geometry (counting surfaces).
def test_book_ring_of_eight_listed_so_has_no_step_over_2():
    assert max(steps(ways=8, order=[1, 2, 3, 6, 7, 8, 5, 4], turned="odd")) == 2


# Plain geometry (counting surfaces).
@pytest.mark.parametrize("turned", ["odd", "even"])
@pytest.mark.parametrize("back", ["next", "previous", "own"])
def test_book_ring_spread_has_no_step_over_2(turned, back):
    stock = Stock(1000.0, 3000.0, 64, 0.6, back)
    for ways in range(4, 65, 2):
        layout = radial(stock, TOP, ways, order="spread", turned=turned)
        assert max(seam.step for seam in layout.seams) <= 2
        assert sorted(leaves(layout)) == list(range(1, ways + 1))


def smallest_largest_step(ways, shows_lower):
    """By trying every ring: the least that its largest step can be. `shows_lower[i]` says whether
    position i + 1 shows the surface under its leaf (k), else the one above (k - 1)."""
    rings = np.array(list(itertools.permutations(range(1, ways + 1))))
    surfaces = rings - 1 + np.array(shows_lower)
    return int(np.abs(surfaces - np.roll(surfaces, -1, axis=1)).max(axis=1).min())


# Plain geometry (counting surfaces), by trying every order.
@pytest.mark.parametrize("ways", range(3, 9))
def test_no_slip_order_has_a_smaller_largest_step_than_spread(ways):
    best = smallest_largest_step(ways, [0] * ways)
    assert max(steps(ways=ways, turn="slip", order="spread")) == best


# Plain geometry (counting surfaces), by trying every order.
@pytest.mark.parametrize("ways", [4, 6, 8])
def test_no_book_order_has_a_smaller_largest_step_than_spread(ways):
    odd_turned = [(i + 1) % 2 for i in range(ways)]
    best = smallest_largest_step(ways, odd_turned)
    assert max(steps(ways=ways, order="spread", turned="odd")) == best
    best = smallest_largest_step(ways, odd_turned[1:] + odd_turned[:1])
    assert max(steps(ways=ways, order="spread", turned="even")) == best


# Plain geometry: a leaf is turned by its position in the ring, not by its number.
@pytest.mark.parametrize("order", ["sequence", "spread", [8, 6, 4, 2, 1, 3, 5, 7]])
@pytest.mark.parametrize(("turned", "expected"), [("odd", [1, 3, 5, 7]), ("even", [2, 4, 6, 8])])
def test_pieces_are_turned_by_position(order, turned, expected):
    layout = radial(STOCK, TOP, 8, order=order, turned=turned)
    assert [p.position for p in layout.pieces if p.turned] == expected


# Plain geometry: 1/42 in = 0.6048 mm.
def test_a_leaf_of_a_forty_second_of_an_inch_in_the_cut_list():
    layout = radial(Stock(300.0, 1000.0, 8, INCH / 42.0), Top.round(500.0), 8)
    assert layout.bundle.thickness == pytest.approx(0.6048, abs=5e-5)
    assert "leaf thickness mm,0.605\n" in cutlist.as_csv(layout)


# Plain geometry: figure at 10 degrees to the leaf shifts t / tan 10 each leaf: 0.6 mm -> 3.40 mm.
def test_figure_wanders_from_leaf_to_leaf():
    photo = Photo.of(np.zeros((40, 20, 3), np.uint8), 10.0)
    bundle = Bundle((Leaf(1, Side(photo)),), 0.6, slope=10.0)
    assert bundle.wander() == pytest.approx(3.40, abs=0.005)

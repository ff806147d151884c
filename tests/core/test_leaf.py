# SPDX-License-Identifier: LGPL-2.1-or-later
"""Leaves, bundles and stock: sides, sources, surfaces, areas."""

from __future__ import annotations

import math
import pickle

import numpy as np
import pytest
from shapely import affinity
from shapely.geometry import box

from veneerwb.core import Bundle, Leaf, Motion, Side, Stock, VeneerError
from veneerwb.core.leaf import measures, ranges
from veneerwb.core.photos.reading import Photo


def photo(shade=0, size=(300.0, 1000.0)):
    width, length = size
    return Photo.of(np.full((int(length / 10), int(width / 10), 3), shade, np.uint8), 10.0)


def four(back, photographed=(), numbers=(1, 2, 3, 4)):
    """Leaves with faces n grey and photographed backs 100 + n grey, leaf n shifted n mm."""
    leaves = []
    for n in numbers:
        shift = Motion(dx=float(n))
        rear = Side(photo(100 + n), Motion(dy=float(n)), Motion(dy=float(n)))
        face = Side(photo(n), shift, shift)
        leaves.append(Leaf(n, face, rear if n in photographed else None))
    return Bundle(tuple(leaves), 0.6, back)


def shade(bundle, number, turned=True):
    return int(bundle.leaf(number).side(turned).photo[0, 0, 0])


def sources(bundle):
    return [leaf.side(True).source for leaf in bundle.leaves]


# --- which side shows, and from which photo ----------------------------------------------------


def test_the_face_is_always_its_own_photo():
    bundle = four("next")
    assert [shade(bundle, n, turned=False) for n in (1, 2, 3, 4)] == [1, 2, 3, 4]
    assert all(leaf.side(False).source == "photo" for leaf in bundle.leaves)


def test_the_next_leafs_face_shows_a_backs_surface_where_it_lay_under():
    bundle = four("next")
    assert [shade(bundle, n) for n in (1, 2, 3, 4)] == [2, 3, 4, 4]
    assert sources(bundle) == ["neighbour", "neighbour", "neighbour", "own face"]


def test_the_previous_leafs_face_shows_it_where_the_stack_runs_the_other_way():
    bundle = four("previous")
    assert [shade(bundle, n) for n in (1, 2, 3, 4)] == [1, 1, 2, 3]
    assert sources(bundle) == ["own face", "neighbour", "neighbour", "neighbour"]


def test_sawn_or_unknown_leaves_show_their_own_faces():
    bundle = four("own")
    assert [shade(bundle, n) for n in (1, 2, 3, 4)] == [1, 2, 3, 4]
    assert sources(bundle) == ["own face"] * 4


@pytest.mark.parametrize("back", ["next", "previous", "own"])
def test_a_photographed_back_is_shown_itself(back):
    bundle = four(back, photographed=(2, 3))
    assert [shade(bundle, n) for n in (2, 3)] == [102, 103]
    assert [sources(bundle)[n - 1] for n in (2, 3)] == ["photo", "photo"]
    assert bundle.register(2, True) == Motion(dy=2.0)
    assert bundle.register(2, False) == Motion(dx=2.0)


def test_a_missing_neighbour_leaves_the_own_face():
    bundle = four("next", numbers=(1, 2, 4))
    assert [shade(bundle, n) for n in (1, 2, 4)] == [2, 2, 4]
    assert sources(bundle) == ["neighbour", "own face", "own face"]


def test_an_assumed_back_is_pinned_by_its_own_face_and_seen_through_the_neighbours():
    side = four("next").leaf(2).side(True)
    assert side.register == Motion(dx=2.0)
    assert side.view == Motion(dx=3.0)


def test_assumed_backs_are_found_anew_when_leaves_are_put_together_again():
    before = four("next")
    kept = Bundle(tuple(leaf for leaf in before.leaves if leaf.number != 3), 0.6, "next")
    assert sources(kept) == ["neighbour", "own face", "own face"]
    assert sources(Bundle(before.leaves, 0.6, "own")) == ["own face"] * 4


# --- surfaces ----------------------------------------------------------------------------------


def test_surfaces_of_faces_and_backs():
    following, previous = Stock(300, 1000, 8, 0.6), Stock(300, 1000, 8, 0.6, "previous")
    assert [following.surface(5, turned) for turned in (False, True)] == [4, 5]
    assert [previous.surface(5, turned) for turned in (False, True)] == [5, 4]
    assert [Stock(300, 1000, 8, 0.6, "own").surface(5, t) for t in (False, True)] == [4, 5]


@pytest.mark.parametrize("back", ["next", "previous"])
def test_a_neighbours_photo_is_one_of_the_same_surface(back):
    bundle = four(back)
    for leaf in bundle.leaves:
        if leaf.side(True).source == "neighbour":
            shown_by = shade(bundle, leaf.number)
            assert bundle.surface(leaf.number, True) == bundle.surface(shown_by, False)


# --- areas and sizes ---------------------------------------------------------------------------


def test_a_leafs_size_and_whole_area_come_from_its_photo():
    leaf = Leaf(1, Side(photo(size=(250.0, 700.0))))
    assert leaf.size == (250.0, 700.0)
    assert leaf.usable.equals(box(0.0, 0.0, 250.0, 700.0))


def test_leaves_of_different_sizes_make_a_bundle_of_the_smallest():
    leaves = (Leaf(1, Side(photo(size=(250.0, 900.0)))), Leaf(2, Side(photo(size=(300.0, 700.0)))))
    assert Bundle(leaves, 0.6).size == (250.0, 700.0)


def test_the_common_area_lies_in_bundle_coordinates():
    # Leaf n was photographed n mm to the right: in the bundle its area lies n mm to the left.
    assert four("next").common_area([1, 4]).bounds == pytest.approx((-1.0, 0.0, 296.0, 1000.0))


def test_leaves_are_kept_by_their_numbers():
    bundle = four("next", numbers=(7, 2, 5))
    assert bundle.numbers == (2, 5, 7)
    assert [leaf.number for leaf in bundle.leaves] == [2, 5, 7]


def test_stock_settles_its_numbers():
    stock = Stock("300", 1000, 8.0, "0.6")
    assert (stock.size, stock.numbers, stock.thickness) == (
        (300.0, 1000.0),
        tuple(range(1, 9)),
        0.6,
    )


# --- the figure's wander -----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("slope", "expected"),
    [(10.0, 3.4028), (-10.0, 3.4028), (45.0, 0.6), (0.0, 0.0), (None, 6.8580)],
)
def test_wander_is_thickness_over_the_tangent_of_the_slope(slope, expected):
    bundle = Bundle((Leaf(1, Side(photo())),), 0.6, slope=slope)
    assert bundle.wander() == pytest.approx(expected, abs=1e-4)


# --- what is refused ---------------------------------------------------------------------------


@pytest.mark.parametrize("bad", [0, -1, math.nan, math.inf, 1e300, 1e-9, "x", None])
@pytest.mark.parametrize(("place", "name"), enumerate(["width", "length", "number", "thickness"]))
def test_absurd_stock_is_refused(bad, place, name):
    numbers = [300.0, 1000.0, 8, 0.6]
    numbers[place] = bad
    with pytest.raises(VeneerError) as caught:
        Stock(*numbers)
    assert name in str(caught.value) and len(str(caught.value)) < 120


@pytest.mark.parametrize("bad", [0, -1, math.nan, 1e300, 21.0, "x"])
def test_an_absurd_thickness_is_refused(bad):
    with pytest.raises(VeneerError, match="leaf thickness cannot be"):
        Bundle((Leaf(1, Side(photo())),), bad)


def test_a_bundle_without_leaves_is_refused():
    with pytest.raises(VeneerError, match="no leaves"):
        Bundle((), 0.6)


def test_two_leaves_of_one_number_are_refused_by_number():
    leaf = Leaf(3, Side(photo()))
    with pytest.raises(VeneerError, match="the number 3"):
        Bundle((leaf, Leaf(4, Side(photo())), leaf), 0.6)


def test_an_unknown_sense_of_the_stack_is_refused():
    with pytest.raises(VeneerError, match="next, previous, own"):
        four("under")


def test_a_leaf_that_is_not_there_is_answered_with_those_that_are():
    with pytest.raises(VeneerError, match="no leaf 9; it has 1-2, 4"):
        four("next", numbers=(1, 2, 4)).leaf(9)


def test_errors_survive_pickling_with_their_words():
    with pytest.raises(VeneerError) as caught:
        Stock(0, 1000, 8, 0.6)
    copy = pickle.loads(pickle.dumps(caught.value))
    assert (str(copy), copy.code, copy.values) == (
        str(caught.value),
        caught.value.code,
        caught.value.values,
    )


def test_numbers_are_written_as_a_person_writes_them():
    assert ranges([1, 2, 3, 4, 7, 9, 10]) == "1-4, 7, 9-10"
    assert ranges([5]) == "5"
    assert ranges([]) == ""


def test_an_outline_is_as_large_however_it_lay_under_the_camera():
    for turn in (-30.0, 0.0, 3.0, 40.0):
        assert measures(affinity.rotate(box(10, 20, 610, 2420), turn)) == pytest.approx((600, 2400))

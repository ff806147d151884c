# SPDX-License-Identifier: LGPL-2.1-or-later
"""Ring orders: in sequence, spread, listed, with gaps in the numbers."""

from __future__ import annotations

import numpy as np
import pytest

from veneerwb.core import Bundle, Leaf, Side, Stock, Top, VeneerError, radial
from veneerwb.core.matches.order import paired_zigzag, zigzag
from veneerwb.core.photos.reading import Photo

TOP = Top.round(400.0)
STOCK = Stock(300.0, 1000.0, 24, 0.6)


def bundle_of(numbers, back="next"):
    photo = Photo.of(np.zeros((100, 30, 3), np.uint8), 10.0)
    return Bundle(tuple(Leaf(n, Side(photo)) for n in numbers), 0.6, back)


def leaves(layout):
    return [piece.leaf for piece in layout.pieces]


def steps(layout):
    return [seam.step for seam in layout.seams]


def test_zigzag_goes_up_one_side_and_down_the_other():
    assert zigzag(8) == [0, 2, 4, 6, 7, 5, 3, 1]
    assert zigzag(5) == [0, 2, 4, 3, 1]


@pytest.mark.parametrize("count", range(4, 65, 2))
def test_paired_zigzag_uses_every_index_once_and_its_ends_meet(count):
    ring = paired_zigzag(count)
    assert sorted(ring) == list(range(count))
    shown = [k + 1 - i % 2 for i, k in enumerate(ring)]  # odd positions show the surface below
    assert max(abs(a - b) for a, b in zip(shown, [*shown[1:], shown[0]])) <= 2


def test_in_sequence_from_the_first_leaf_asked_for():
    assert leaves(radial(STOCK, TOP, 6, first=5)) == [5, 6, 7, 8, 9, 10]


def test_gaps_in_the_numbers_are_passed_over():
    bundle = bundle_of([2, 3, 5, 8, 9, 12])
    assert leaves(radial(bundle, TOP, 4, first=3)) == [3, 5, 8, 9]


def test_steps_count_missing_leaves_too():
    layout = radial(bundle_of([1, 2, 5, 6]), TOP, 4, turn="slip")
    assert steps(layout) == [1, 3, 1, 5]


def test_spread_slip_with_gaps_skips_only_over_one_leaf_at_a_time():
    layout = radial(bundle_of([1, 2, 3, 7, 8, 9]), TOP, 6, turn="slip", order="spread")
    assert leaves(layout) == [1, 3, 8, 9, 7, 2]


def test_a_listed_order_is_kept_as_listed():
    listed = (4, 9, 1, 24)
    assert leaves(radial(STOCK, TOP, 4, order=listed)) == list(listed)
    assert leaves(radial(STOCK, TOP, 4, order=np.array(listed))) == list(listed)


@pytest.mark.parametrize(
    ("back", "turned", "expected"),
    [
        # Leaves 1 2 3 4 show, by hand, surfaces (next): face k-1, back k; (previous): face k, back
        # k-1.
        ("next", "odd", [0, 2, 0, 2]),  # 1 1 3 3
        ("next", "even", [2, 0, 2, 4]),  # 0 2 2 4
        ("previous", "odd", [2, 0, 2, 4]),  # 0 2 2 4
        ("previous", "even", [0, 2, 0, 2]),  # 1 1 3 3
        ("own", "odd", [0, 2, 0, 2]),
    ],
)
def test_steps_follow_the_sense_of_the_stack(back, turned, expected):
    layout = radial(Stock(300.0, 1000.0, 4, 0.6, back), TOP, 4, turned=turned)
    assert steps(layout) == expected


@pytest.mark.parametrize(
    ("order", "code"),
    [
        ([1, 2, 3], "wrong-order"),
        ([1, 2, 3, 4, 5], "wrong-order"),
        ([1, 2, 3, 3], "wrong-order"),
        ([], "wrong-order"),
        ([1, 2, 3, 99], "no-such-leaf"),
        ([0, 1, 2, 3], "out-of-range"),
        ([1, 2, 3.5, 4], "out-of-range"),
        (["x", 2, 3, 4], "not-a-number"),
        ("random", "unknown-choice"),
    ],
)
def test_orders_that_cannot_be_are_refused(order, code):
    with pytest.raises(VeneerError) as caught:
        radial(STOCK, TOP, 4, order=order)
    assert caught.value.code == code


def test_too_few_leaves_says_how_many_are_missing():
    with pytest.raises(VeneerError) as caught:
        radial(STOCK, TOP, 8, first=20)
    assert caught.value.code == "too-few-leaves"
    assert (caught.value.values["have"], caught.value.values["missing"]) == (5, 3)


@pytest.mark.parametrize("first", [0, -1, 25, 2.5, "x", 10**9])
def test_a_first_leaf_that_is_not_there_is_refused(first):
    with pytest.raises(VeneerError, match="first leaf cannot be"):
        radial(STOCK, TOP, 4, first=first)

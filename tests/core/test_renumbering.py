# SPDX-License-Identifier: LGPL-2.1-or-later
"""Leaves renumbered, turned end for end and turned over: numbers, pictures, areas, registers."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import box

from veneerwb.core import Bundle, Fault, Leaf, Motion, Side, VeneerError, sawn_bundle
from veneerwb.core.photos.reading import Photo
from veneerwb.core.renumbering import (
    all_numbers,
    lies_end_for_end,
    numbers_now,
    over,
    renumbered,
    turned_end_for_end,
    turned_over,
)
from veneerwb.core.sequence.chain import registered
from veneerwb.core.sequence.proof import prove_sequence

SHAPE = (30, 20)  # rows and columns of 2 mm


def photo(seed, shape=SHAPE):
    return Photo.of(np.random.default_rng(seed).integers(0, 255, (*shape, 3), np.uint8), 2.0)


def leaf(register=None, back=None):
    register = register or Motion()
    faults = (Fault(box(4, 6, 10, 20)),)
    usable = box(2, 2, 38, 50)
    return Leaf(3, Side(photo(1), register, register), back, usable, faults)


def pixel(side, at):
    """The colour that a point of the leaf (mm) shows on a side."""
    x, y = (side.view @ side.register.inverse()).apply(at)
    rows, columns = side.photo.shape[:2]
    row, column = int(rows - y / side.mm_per_px), int(x / side.mm_per_px)
    assert 0 <= row < rows and 0 <= column < columns
    return tuple(side.photo[row, column])


POINTS = [(5.1, 7.3), (20.7, 11.1), (33.3, 41.9)]


# --- numbers -----------------------------------------------------------------------------------


def test_leaves_change_places():
    bundle = Bundle(tuple(Leaf(k, Side(photo(k))) for k in (1, 2, 3)), 0.6, "next")
    swapped = renumbered(bundle, {1: 3, 3: 1})
    assert swapped.leaf(3).face.image is bundle.leaf(1).face.image
    assert swapped.leaf(1).face.image is bundle.leaf(3).face.image
    # What stands for a back follows the new order: now leaf 2's is the old leaf 1's face.
    assert swapped.leaf(2).back.image is bundle.leaf(1).face.image
    assert swapped.leaf(3).back.source == "own face"


@given(st.permutations([2, 3, 5, 8]))
def test_any_exchange_gives_every_leaf_one_number(order):
    proposal = dict(zip([2, 3, 5, 8], order))
    assert all_numbers([2, 3, 5, 8], proposal) == proposal


@pytest.mark.parametrize(
    "proposal", [{1: 2}, {9: 1}, {1: 0}, {1: 2.5}, {1: 7, 2: 7}, {1: "first"}]
)
def test_numbers_that_cannot_be_are_refused(proposal):
    with pytest.raises(VeneerError):
        all_numbers([1, 2, 3], proposal)


# --- end for end -------------------------------------------------------------------------------

REGISTER = Motion(3.0, 1.5, -2.0)
BACK_TIE = Motion(-2.0, 0.7, 1.1)  # leaf mm to mm on the back's photo


def with_back(register=REGISTER, shape=(34, 24)):
    behind = Motion(5.0, 2.0, 1.0) @ register
    return leaf(register, Side(photo(2, shape), behind, BACK_TIE @ behind))


@pytest.mark.parametrize("carry", [True, False])
def test_end_for_end_the_same_wood_shows_the_same_colour(carry):
    before = with_back()
    after = turned_end_for_end(before, carry)
    width, length = before.size
    for x, y in POINTS:
        there = (width - x, length - y)
        for turned in (False, True):
            assert pixel(after.side(turned), there) == pixel(before.side(turned), (x, y))
    assert after.usable.bounds == (2, 10, 38, 58)
    assert after.faults[0].outline.bounds == (30, 40, 36, 54)


def test_end_for_end_a_register_carried_means_the_same_wood():
    before = with_back()
    after = turned_end_for_end(before, carry=True)
    for point in POINTS:
        for turned in (False, True):
            was = before.side(turned).register.apply(point)
            now = after.side(turned).register.apply(point)
            assert now == pytest.approx(np.array(before.size) - was)
            seen = before.side(turned), after.side(turned)
            ends = np.array(seen[0].image.size) - seen[0].view.apply(point)
            assert seen[1].view.apply(point) == pytest.approx(ends)


def test_end_for_end_a_register_that_stays_lies_on_the_turned_photograph():
    before = leaf()
    after = turned_end_for_end(before, carry=False)
    assert (after.register, after.face.view) == (before.register, before.face.view)
    assert after.back is None


def test_end_for_end_twice_is_as_before():
    before = with_back()
    after = turned_end_for_end(turned_end_for_end(before))
    assert np.array_equal(after.photo, before.photo)
    assert after.usable.symmetric_difference(before.usable).area < 1e-9
    for point in POINTS:
        assert after.back.view.apply(point) == pytest.approx(before.back.view.apply(point))
        assert after.register.apply(point) == pytest.approx(before.register.apply(point))


# --- over --------------------------------------------------------------------------------------


def test_over_the_photograph_is_the_backs_and_the_same_wood_shows_the_same_colour():
    before = leaf()
    after = turned_over(before)
    assert after.back.source == "photo"
    for x, y in POINTS:
        for turned in (False, True):  # the one photograph stands for both
            assert pixel(after.side(turned), (before.size[0] - x, y)) == pixel(before.face, (x, y))
    assert after.usable.bounds == (2, 2, 38, 50)
    assert after.faults[0].outline.bounds == (30, 6, 36, 20)


def test_over_with_both_photographs_they_change_places():
    before = with_back()
    after = turned_over(before)
    onto = over(before)
    assert after.size == before.back.image.size and onto.mirrored
    for point in POINTS:
        there = onto.apply(point)
        assert pixel(after.face, there) == pixel(before.back, point)
        assert pixel(after.back, there) == pixel(before.face, point)
    moved = onto.apply_to(before.faults[0].outline)
    assert after.faults[0].outline.symmetric_difference(moved).area < 1e-9


def test_over_a_register_found_on_the_wrong_side_means_the_same_wood():
    before = with_back()
    found = Motion(4.0, 38.0, 1.0, mirrored=True)  # bundle mm to leaf mm as it was, mirrored
    after = turned_over(before, over(before) @ found)
    assert not after.register.mirrored
    for point in POINTS:
        assert pixel_at(after.face, point) == pixel(before.back, found.apply(point))


def pixel_at(side, point):
    """The colour that a point of the bundle (mm) shows on a side."""
    return pixel(side, side.register.apply(point))


def test_over_twice_is_as_before():
    before = with_back(register=Motion())
    after = turned_over(turned_over(before))
    assert np.array_equal(after.photo, before.photo)
    assert np.array_equal(after.back.photo, before.back.photo)
    assert after.usable.symmetric_difference(before.usable).area < 1e-9


# --- a proof -----------------------------------------------------------------------------------


def put_right(bundle, proof):
    """The bundle as a proof proposes it: registered, what lies wrong turned, all renumbered."""
    known = {leaf.number: leaf.register for leaf in bundle.leaves} | proof.registers
    leaves = {leaf.number: leaf for leaf in registered(bundle, known).leaves}
    for suspect in proof.suspects:
        leaf = leaves[suspect.leaf]
        if suspect.kind == "turned":
            leaf = turned_over(leaf, over(leaf) @ leaf.register)
        if lies_end_for_end(suspect):
            leaf = turned_end_for_end(leaf)
        leaves[suspect.leaf] = leaf
    return renumbered(replace(bundle, leaves=tuple(leaves.values())), proof.proposal)


def test_a_proof_is_carried_out():
    """Leaves 2 and 3 have changed places, leaf 4 lies end for end, leaf 6 is turned over: put
    right, every place of the bundle shows on every leaf what it shows on the undisturbed one."""
    good = sawn_bundle(leaves=7, width=160, length=400, mm_per_px=1.0, seed=4, figure="burl")
    pixels = {leaf.number: leaf.photo for leaf in good.leaves}
    pixels[2], pixels[3] = pixels[3], pixels[2]
    pixels[4], pixels[6] = pixels[4][::-1, ::-1], pixels[6][:, ::-1]
    leaves = tuple(Leaf(n, Side(Photo.of(np.array(p), 1.0))) for n, p in pixels.items())
    bundle = Bundle(leaves, 0.6, "next")
    proof = prove_sequence(bundle)
    assert sorted((s.leaf, s.kind) for s in proof.suspects if s.leaf > 3) == [
        (4, "end for end"), (6, "turned"),
    ]
    right = put_right(bundle, proof)
    assert right.numbers == bundle.numbers and right.leaf(6).back.source == "photo"
    for leaf in right.leaves:
        assert np.array_equal(leaf.photo, good.leaf(leaf.number).photo)
        assert not leaf.register.mirrored and abs(leaf.register.angle) < 1.0
        # The figure wanders from leaf to leaf; the frame of the photograph does not.
        assert np.hypot(leaf.register.dx, leaf.register.dy) < 10.0
    assert prove_sequence(right).suspects == []


def test_a_leaf_whose_number_nobody_changes_hinders_no_other():
    """A document may hold a number that would not be given now."""
    assert all_numbers([1, 20001], {1: 5}) == {1: 5, 20001: 20001}
    for wrong in (0, 20002):
        with pytest.raises(VeneerError):
            all_numbers([1, 2], {1: wrong})


def test_leaves_read_anew_are_known_by_their_photographs():
    """Whatever numbers they have by then; a leaf that shows another photograph is another leaf."""
    photos = [photo(seed) for seed in range(4)]
    old = Bundle(tuple(Leaf(k, Side(one)) for k, one in enumerate(photos[:3], start=1)), 0.6)
    assert numbers_now(old, renumbered(old, {1: 2, 2: 1})) == {1: 2, 2: 1, 3: 3}
    shown = (photos[3], photos[2], photos[1])
    new = Bundle(tuple(Leaf(k, Side(one)) for k, one in enumerate(shown, start=1)), 0.6)
    assert numbers_now(old, new) == {2: 3, 3: 2}
    doubled = Bundle((Leaf(1, Side(photos[0])), Leaf(2, Side(photos[0]))), 0.6)
    assert numbers_now(doubled, doubled) == {1: 1, 2: 2}

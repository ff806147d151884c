# SPDX-License-Identifier: LGPL-2.1-or-later
"""Registers along the chain: repeatable, true where the figure does not change, and honest."""

from dataclasses import replace
from functools import cache

import numpy as np
import pytest
from shapely.geometry import Point, box

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.log.sawn import Disturbance, sawn_bundle
from veneerwb.core.photos.preparing import Cancelled
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence import chain as chain_file
from veneerwb.core.sequence import chained, register, registered
from veneerwb.core.sequence.exact import exact

WIDTH, LENGTH = 240.0, 700.0
CORNERS = np.array([(0, 0), (WIDTH, 0), (0, LENGTH), (WIDTH, LENGTH)])
SIZE = {"width": WIDTH, "length": LENGTH, "mm_per_px": 1.0}
FIGURES = ("cathedral", "ripple", "crotch", "burl")


def misses(registers, wanted):
    """mm at the corners of every leaf but the first."""
    return np.concatenate([
        np.hypot(*(registers[n].apply(CORNERS) - wanted[n].apply(CORNERS)).T)
        for n in list(registers)[1:]
    ])


def registers(bundle):
    return {leaf.number: leaf.register for leaf in bundle.leaves}


@cache
def small(leaves=3, figure="burl", **more):
    more = {"disturb": Disturbance(shift=10, turn=1.5), **SIZE, **more}
    return sawn_bundle(leaves, figure=figure, **more)


@cache
def laid(*of, **more):
    """The same, registered."""
    return register(small(*of, **more))


@pytest.mark.parametrize("figure", FIGURES)
def test_registers_are_repeatable_whatever_the_photographs_disturbances(figure):
    calm = registers(register(small(8, figure, disturb=None)))
    shaken = small(8, figure, disturb=Disturbance())
    wanted = {n: motion @ calm[n] for n, motion in registers(shaken).items()}
    off = misses(registers(laid(8, figure, disturb=Disturbance())), wanted)
    assert np.sqrt(np.mean(off**2)) < 0.5
    assert np.percentile(off, 95) < 1.0
    assert misses(registers(shaken), calm).max() > 10  # there was something to find


@pytest.mark.parametrize("figure", FIGURES)
def test_registers_are_true_where_the_figure_does_not_change(figure):
    shaken = small(6, figure, thickness=0.001, disturb=Disturbance())
    off = misses(registers(register(shaken)), registers(shaken))
    assert np.sqrt(np.mean(off**2)) < 0.25 and off.max() < 0.5


@pytest.mark.parametrize("figure", FIGURES)
def test_on_a_stem_without_slope_registers_are_true_although_the_figure_changes(figure):
    shaken = small(8, figure, disturb=Disturbance())
    off = misses(registers(laid(8, figure, disturb=Disturbance())), registers(shaken))
    assert np.sqrt(np.mean(off**2)) < 0.5 and np.percentile(off, 95) < 1.0


def test_exact_registers_say_where_they_could_not_be_made_or_are_in_doubt():
    bundle = small(4)
    rough = {leaf.number: leaf.register for leaf in bundle.leaves}
    assert exact(bundle, [1, 2, 3, 4], rough, {}).refused is None
    leaves = [replace(leaf, back=None) for leaf in bundle.leaves]
    leaves[2] = replace(small(1, seed=9).leaves[0], number=3, back=None)
    found = exact(Bundle(tuple(leaves), 0.6), [1, 2, 4, 3], rough, {})
    assert found.refused is None and (4, 3) in found.doubts
    leaves[2] = Leaf(3, Side(Photo.of(np.zeros((700, 240, 3), np.uint8), 1.0)))
    found = exact(Bundle(tuple(leaves), 0.6), [1, 2, 4, 3], rough, {})
    assert found == rough and "leaf 3 shows no figure" in str(found.refused)


def test_exact_registers_that_are_stopped_are_not_said_to_be_refused():
    def stop(share):
        raise Cancelled

    bundle = small(2)
    rough = {leaf.number: leaf.register for leaf in bundle.leaves}
    with pytest.raises(Cancelled):
        exact(bundle, [1, 2], rough, {}, stop)


def test_the_figure_is_followed_down_a_sloping_stem():
    sloping = small(4, "cathedral", slope=10.0, knots=0, disturb=None)
    found = registers(register(sloping))
    # Plane geometry: t / tan(a) a leaf towards -y.
    middle = np.array((WIDTH / 2, LENGTH / 2))
    gone = found[4].apply(middle) - middle
    assert gone[1] == pytest.approx(-3 * 0.6 / np.tan(np.radians(10)), abs=1.5)


def test_the_first_leaf_is_the_identity_and_old_registers_play_no_part():
    bundle = small()
    moved = registered(bundle, {n: Motion(3.0, 40.0, 5.0) for n in bundle.numbers})
    assert laid().leaf(1).register == IDENTITY
    assert registers(register(moved)) == registers(laid())


def test_equal_bundles_give_equal_registers():
    another = small.__wrapped__()  # made anew
    assert registers(register(another)) == registers(laid())


def test_one_leaf_is_the_identity_whatever_it_shows():
    black = Leaf(7, Side(Photo.of(np.zeros((300, 200, 3), np.uint8), 1.0)))
    done = chained(Bundle((black,), 0.6))
    assert done.registers == {7: IDENTITY} and done.steps == () and done.doubts == ()
    assert register(Bundle((black,), 0.6)).leaf(7).register == IDENTITY


def test_leaves_follow_each_other_by_number_over_a_gap():
    bundle = small(4)
    gap = Bundle(tuple(bundle.leaves[i] for i in (3, 0, 1)), 0.6)
    done = chained(gap)
    assert [(s.first, s.second) for s in done.steps] == [(1, 2), (2, 4)]
    assert misses(done.registers, registers(gap)).max() < 1.0


@pytest.mark.parametrize("pixels", [
    np.zeros((700, 240, 3), np.uint8),
    np.clip(np.random.default_rng(1).normal(8, 2.5, (700, 240, 3)), 0, 255).astype(np.uint8),
    np.full((700, 240, 3), 255, np.uint8),
])
def test_a_photograph_without_figure_is_named(pixels):
    bundle = small(3)
    leaves = [replace(leaf, back=None) for leaf in bundle.leaves]
    leaves[1] = Leaf(2, Side(Photo.of(pixels, 1.0)))
    with pytest.raises(VeneerError, match="leaf 2 shows no figure") as caught:
        register(Bundle(tuple(leaves), 0.6))
    assert caught.value.code == "no-figure" and caught.value.values["leaf"] == 2


def test_a_leaf_from_another_log_is_in_doubt():
    bundle, other = small(4), small(1, seed=9)
    leaves = [replace(leaf, back=None) for leaf in bundle.leaves]
    assert chained(bundle).doubts == ()
    leaves[2] = replace(other.leaves[0], number=3, back=None)
    doubts = {(s.first, s.second) for s in chained(Bundle(tuple(leaves), 0.6)).doubts}
    assert {(2, 3), (3, 4)} <= doubts
    only = chained(Bundle((leaves[0], leaves[2]), 0.6))  # no step of two tells here
    assert only.doubts == only.steps and not only.steps[0].sure


def test_a_step_of_two_contradicts_a_slip_by_one_bar(monkeypatch):
    """Ripple comes every 10 mm or so: the step from 2 to 3 is made to land on the next bar."""
    bundle = small(4, "ripple")
    true = chain_file._step

    def slipped(a, b, area):
        step = true(a, b, area)
        slip = Motion(dy=10.0) if step.first == 2 else IDENTITY
        return replace(step, motion=slip @ step.motion)

    assert chained(bundle).doubts == ()
    monkeypatch.setattr(chain_file, "_step", slipped)
    done = chained(bundle)
    assert [c.agrees for c in done.checks] == [False, False]
    assert min(c.gap for c in done.checks) > 8
    assert (2, 3) in {(s.first, s.second) for s in done.doubts}


def test_a_region_is_followed_in_place_of_the_whole_leaf():
    """Two leaves whose lower half moved one way and whose upper half the other."""
    base = sawn_bundle(1, figure="burl", **SIZE).leaves[0]
    pixels = base.photo
    torn = np.concatenate([np.roll(pixels[:350], 2, axis=1), np.roll(pixels[350:], -2, axis=1)])
    bundle = Bundle((replace(base, back=None), Leaf(2, Side(Photo.of(torn, 1.0)))), 0.6)
    upper = register(bundle, box(20, 420, 220, 680)).leaf(2).register
    lower = register(bundle, Point(120, 170).buffer(110)).leaf(2).register
    assert upper.apply((120, 550)) == pytest.approx((122, 550), abs=0.2)
    assert lower.apply((120, 170)) == pytest.approx((118, 170), abs=0.2)


def test_a_region_is_carried_along_the_chain():
    """Leaf 2 lies 60 mm further up; on leaf 3 what lies above y = 400 moved right, the rest left.
    The region lies below 400 on leaf 1 and above it on leaf 2."""
    base = sawn_bundle(1, figure="burl", **SIZE).leaves[0]
    up = np.roll(base.photo, -60, axis=0)
    torn = np.concatenate([np.roll(up[:300], 2, axis=1), np.roll(up[300:], -2, axis=1)])
    bundle = Bundle(tuple(
        Leaf(k, Side(Photo.of(p, 1.0))) for k, p in enumerate((base.photo, up, torn), start=1)
    ), 0.6)
    region = box(20, 362, 220, 390)
    assert register(bundle, region).leaf(3).register.apply((120, 376)) == pytest.approx(
        (122, 436), abs=0.5
    )


@pytest.mark.parametrize("region, code", [
    (box(5000, 0, 5100, 100), "region-off-leaf"),
    (Point(10, 10), "no-region"),
    (box(0, 0, 0, 0).intersection(box(5, 5, 6, 6)), "no-region"),
    ("everything", "no-region"),
])
def test_a_region_that_is_none_is_refused(region, code):
    with pytest.raises(VeneerError) as caught:
        register(small(2), region)
    assert caught.value.code == code


def test_backs_keep_their_place_on_the_leaf():
    bundle = small(3, backs=(2,))
    done = register(bundle)
    before, after = bundle.leaf(2), done.leaf(2)
    on_face = before.register.inverse() @ Motion(dx=50.0, dy=80.0)
    was = before.back.view @ on_face
    now = after.back.view @ after.register.inverse() @ Motion(dx=50.0, dy=80.0)
    assert now.apply((0, 0)) == pytest.approx(was.apply((0, 0)), abs=1e-6)
    same = after.back.register.apply((9.0, 7.0))
    assert same == pytest.approx(after.register.apply((9.0, 7.0)), abs=1e-6)
    assert after.back.photo is before.back.photo


def test_backs_that_were_not_photographed_follow_the_new_registers():
    done = laid()
    back = done.leaf(1).back
    assert back.source == "neighbour"
    assert back.register == done.leaf(1).register and back.view == done.leaf(2).face.view


def test_a_face_is_viewed_where_it_is_registered():
    assert all(leaf.face.view == leaf.face.register for leaf in laid(2).leaves)


def test_progress_rises_to_one_and_whoever_is_told_may_end_it():
    told = []
    chained(small(), progress=told.append)
    assert told == sorted(told) and told[-1] == 1.0 and len(told) >= 5

    def enough(share):
        if share > 0.4:
            raise InterruptedError

    with pytest.raises(InterruptedError):
        chained(small(), progress=enough)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Aligning two pictures: known motions come back, whatever the light, dirt, faults and scale."""

import math

import numpy as np
import pytest
from shapely.geometry import box

from veneerwb.core.leaf import Fault, Leaf, Side
from veneerwb.core.log.sawn import Log
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence.align import Grid, aligned, grids, mask, start

WIDTH, LENGTH = 200.0, 600.0
CORNERS = np.array([(0, 0), (WIDTH, 0), (0, LENGTH), (WIDTH, LENGTH)])
FIGURES = ("cathedral", "ripple", "crotch", "burl")
TWISTED = Motion(dx=9.3, dy=-13.6) @ Motion.turn_about(WIDTH / 2, LENGTH / 2, 1.7)


def log(figure="burl"):
    return Log(WIDTH, LENGTH, 0.6, figure, 3)


def leaf(pixels, frame=IDENTITY, scale=1.0, faults=()):
    photo = Photo.of(pixels, scale)
    area = box(0, 0, *photo.size)
    return Leaf(1, Side(photo), None, frame.apply_to(area).intersection(area), faults)


def pair(figure="burl", frame=TWISTED, scale=1.0):
    """A surface photographed straight, and moved."""
    wood = log(figure)
    straight, moved = (wood.picture(0, 1.0), wood.picture(0, scale, frame))
    return leaf(straight), leaf(moved, frame, scale)


def off(motion, true=TWISTED):
    """mm by which a motion misses the true one at the worst corner."""
    return np.hypot(*(motion.apply(CORNERS) - true.apply(CORNERS)).T).max()


def found(a, b, **how):
    return aligned(grids(a), grids(b), **how)


@pytest.mark.parametrize("figure", FIGURES)
def test_a_known_motion_comes_back(figure):
    result = found(*pair(figure))
    assert off(result.motion) < 0.1
    assert result.likeness > 0.9
    assert result.error_mm < 0.1 and result.error_deg < 0.05


@pytest.mark.parametrize("frame", [
    Motion(dx=30, dy=-30), Motion(dx=-20) @ Motion.turn_about(100, 300, 4), Motion(-2.5), IDENTITY,
])
@pytest.mark.parametrize("figure", ["ripple", "crotch"])
def test_far_shifts_and_turns_are_found_without_a_start(figure, frame):
    assert off(found(*pair(figure, frame)).motion, frame) < 0.15


def test_the_start_is_within_reach_of_the_refinement():
    a, b = (grids(each)[0] for each in pair("ripple"))
    assert off(start(a, b)) < 8.0  # a turn by half a step, a shift by half a coarse pixel and more
    assert off(IDENTITY) > 15.0


def test_swapping_the_pictures_gives_the_inverse():
    wood = log("burl")
    a, b = leaf(wood.picture(0, 1.0)), leaf(wood.picture(1, 1.0, TWISTED), TWISTED)
    there, back = found(a, b), found(b, a)
    assert off(back.motion @ there.motion, IDENTITY) < 0.05
    assert there.likeness == pytest.approx(back.likeness, abs=0.01)


def test_uneven_light_exposure_and_dirt_hardly_matter():
    a, b = pair("cathedral")
    rng = np.random.default_rng(5)
    rows, columns = b.photo.shape[:2]
    light = np.linspace(0.55, 1.15, rows)[:, None] * np.linspace(0.8, 1.0, columns)
    dirty = b.photo * light[..., None]
    for _ in range(40):
        r, c = rng.integers(0, rows - 9), rng.integers(0, columns - 9)
        dirty[r : r + 9, c : c + 9] = rng.uniform(0, 255)
    dirty += rng.normal(0, 4, dirty.shape)
    worn = leaf(np.clip(dirty, 0, 255).astype(np.uint8), TWISTED)
    assert off(found(a, worn).motion) < 0.3


def test_a_missing_corner_is_left_out_by_the_usable_area():
    a, b = pair("crotch")
    pixels = b.photo.copy()
    pixels[:200, :90] = (30, 30, 30)
    area = b.usable.difference(box(0, LENGTH - 200, 90, LENGTH))
    torn = Leaf(1, Side(Photo.of(pixels, 1.0)), None, area)
    assert off(found(a, torn).motion) < 0.15


def test_what_lies_in_a_fault_has_no_weight():
    a, b = pair("burl", Motion(dx=6.0))
    rng = np.random.default_rng(2)
    blotch = rng.integers(0, 256, (300, 120, 3), dtype=np.uint8)
    first, second = a.photo.copy(), b.photo.copy()
    first[150:450, 40:160] = second[150:450, 40:160] = blotch  # the same where the leaf is not
    fault = (Fault(box(40, 150, 160, 450), "stain"),)
    with_fault = found(leaf(first, faults=fault), leaf(second, Motion(dx=6.0), faults=fault))
    without = found(leaf(first), leaf(second, Motion(dx=6.0)))
    assert off(with_fault.motion, Motion(dx=6.0)) < 0.15
    assert off(without.motion, Motion(dx=6.0)) > 1.0


@pytest.mark.parametrize("scale", [0.4, 0.8, 1.25, 2.0])
def test_photos_of_other_scales_and_sizes_are_aligned_in_mm(scale):
    assert off(found(*pair("crotch", scale=scale)).motion) < 0.3


def test_a_focus_follows_what_lies_in_it():
    wood = log("burl")
    straight = wood.picture(0, 1.0)
    low, high = (wood.picture(0, 1.0, Motion(dx=dx)) for dx in (-2.0, 2.0))
    torn = np.concatenate([high[:300], low[300:]])
    a, b = leaf(straight), leaf(torn)
    upper = found(a, b, focus=box(0, 330, WIDTH, LENGTH)).motion
    lower = found(a, b, focus=box(0, 0, WIDTH, 270)).motion
    assert upper.apply((100, 450)) == pytest.approx((102, 450), abs=0.2)
    assert lower.apply((100, 150)) == pytest.approx((98, 150), abs=0.2)


def test_straight_lines_without_figure_leave_the_place_along_the_grain_unsure():
    rng = np.random.default_rng(4)
    lines = 120 + 30 * rng.standard_normal(200)
    stripes = [lines + rng.normal(0, 6, (600, 200)) for _ in range(2)]
    first, second = (
        leaf(np.repeat(np.clip(p, 0, 255).astype(np.uint8)[..., None], 3, axis=2)) for p in stripes
    )
    lost = found(first, second)
    assert lost.likeness > 0.8  # alike, and yet nobody knows where along the grain
    assert lost.error_mm > 10 * found(*pair("ripple")).error_mm


def test_the_predicted_error_is_of_the_size_of_the_error_made():
    errors, predicted = [], []
    for seed in range(6):
        wood = Log(WIDTH, LENGTH, 0.6, "burl", seed)
        a, b = leaf(wood.picture(0, 1.0)), leaf(wood.picture(1, 1.0, TWISTED), TWISTED)
        result = found(a, b)
        middle = (WIDTH / 2, LENGTH / 2)
        errors.append(math.dist(result.motion.apply(middle), TWISTED.apply(middle)))
        predicted.append(result.error_mm)
    ratio = np.sqrt(np.mean(np.square(errors))) / np.mean(predicted)
    assert 0.3 < ratio < 3.5


def test_pictures_without_overlap_or_figure_are_worth_nothing():
    a, _ = pair()
    even = leaf(np.full((600, 200, 3), 90, np.uint8))
    result = found(a, even)
    assert result.likeness == 0.0 and math.isinf(result.error_mm)


def test_a_mask_covers_the_pixels_whose_centres_lie_in_the_area():
    ring = box(2, 3, 12, 15).difference(box(5, 6, 8, 9))
    got = mask(ring, (20, 16), 1.0)
    y, x = np.mgrid[:20, :16] + 0.5
    inside = (x > 2) & (x < 12) & (y > 3) & (y < 15)
    assert got[inside].mean() > 0.85 and got[4:14, 3:11].sum() > got[4:14, 3:11].size - 20
    assert abs(got.sum() - ring.area) <= 30  # an outline may take or leave a row of pixels
    assert got[0].sum() == got[-1].sum() == 0 and got[7, 6] == 0


def test_grids_run_upwards_at_their_scales():
    pixels = np.full((600, 200, 3), 200, np.uint8)
    pixels[:20, :] = np.random.default_rng(1).integers(0, 255, (20, 200, 3))
    made = grids(leaf(pixels))
    assert [g.scale for g in made] == [4.0, 2.0, 1.0]
    assert all(isinstance(g, Grid) for g in made)
    assert np.abs(made[-1].figure[-15:]).mean() > 5 * np.abs(made[-1].figure[:300]).mean()

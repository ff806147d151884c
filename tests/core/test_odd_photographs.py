# SPDX-License-Identifier: LGPL-2.1-or-later
"""Registers of photographs as they come: dirt, frames, plain parts, other scales, bent by lens and
buckle; a result, a doubt or one sentence."""

from dataclasses import replace
from functools import cache

import numpy as np
import pytest
from PIL import Image
from shapely.geometry import box

from veneerwb.core import Top, check, radial
from veneerwb.core.checks.faces import unregistered
from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.log.sawn import Disturbance, sawn_bundle
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY
from veneerwb.core.sequence import chained, grids, register
from veneerwb.core.sequence.residual import residual

WIDTH, LENGTH = 200.0, 400.0
CORNERS = np.array([(0, 0), (WIDTH, 0), (0, LENGTH), (WIDTH, LENGTH)])
SIZE = {"width": WIDTH, "length": LENGTH, "mm_per_px": 1.0}


@cache
def shaken(figure="burl", leaves=3):
    return sawn_bundle(
        leaves, figure=figure, knots=0, **SIZE, disturb=Disturbance(shift=8, turn=1)
    )


def photographed(pixels, scales=None):
    scales = scales or [1.0] * len(pixels)
    return Bundle(tuple(
        Leaf(k, Side(Photo.of(np.ascontiguousarray(p), s)))
        for k, (p, s) in enumerate(zip(pixels, scales), start=1)
    ), 0.6)


def faces(figure="burl", leaves=3):
    return [leaf.photo for leaf in shaken(figure, leaves).leaves]


def missed(done, figure="burl"):
    """mm at the worst corner of any leaf, against how the photographs really lay."""
    return max(
        np.hypot(*(done.registers[leaf.number].apply(CORNERS) - leaf.register.apply(CORNERS)).T)
        .max()
        for leaf in shaken(figure, len(done.registers)).leaves
    )


def framed(pixels, width, tone):
    out = pixels.copy()
    out[:width] = out[-width:] = tone
    out[:, :width] = out[:, -width:] = tone
    return out


@pytest.mark.parametrize("width, tone", [(20, 255), (30, 0), (30, 230)])
def test_a_frame_that_stays_while_leaves_move_does_not_hold_the_register_fast(width, tone):
    rng = np.random.default_rng(1)
    photos = [
        np.clip(framed(p, width, tone) + rng.normal(0, 2, p.shape), 0, 255).astype(np.uint8)
        for p in faces()
    ]
    done = chained(photographed(photos))
    assert missed(done) < 1.0 and not done.doubts


def test_a_flat_part_has_no_weight_and_its_edge_neither():
    pixels = faces()[0].copy()
    pixels[:200] = (190, 160, 120)
    weight = grids(Leaf(1, Side(Photo.of(pixels, 1.0))))[-1].weight
    assert weight[200:].max() == 0 and weight[195:].max() < 0.1  # the upper 200 mm, and their edge
    assert np.median(weight[40:160, 40:160]) == 1
    assert np.median(grids(shaken().leaf(1))[-1].weight[40:360, 40:160]) == 1


@pytest.mark.parametrize("figure", ["ripple", "burl"])
def test_spots_of_dirt_do_not_pass_for_figure(figure):
    rng = np.random.default_rng(3)
    photos = [p.copy() for p in faces(figure)]
    for pixels in photos:
        for _ in range(40):
            size = rng.integers(3, 12)
            row, column = rng.integers(0, LENGTH - size), rng.integers(0, WIDTH - size)
            pixels[row : row + size, column : column + size] = rng.uniform(20, 230)
    done = chained(photographed(photos))
    assert missed(done, figure) < 1.0 and not done.doubts


def test_strong_vignetting_and_little_light_hardly_matter():
    y, x = np.mgrid[-1:1:400j, -1:1:200j]
    light = (1 - 0.75 * (x * x + y * y) / 2)[..., None]
    assert missed(chained(photographed([(p * light).astype(np.uint8) for p in faces()]))) < 1.0
    assert missed(chained(photographed([p // 10 for p in faces()]))) < 1.0


def test_photographs_of_different_size_and_scale_lie_together_in_mm():
    factors = (1.0, 2.0, 0.5)
    photos = [
        np.asarray(Image.fromarray(p).resize((round(200 * f), round(400 * f)), Image.BICUBIC))
        for p, f in zip(faces(), factors)
    ]
    assert missed(chained(photographed(photos, [1 / f for f in factors]))) < 1.0
    cut = [faces()[0], faces()[1][40:, :180], faces()[2]]  # the lower left corner stays
    assert missed(chained(photographed(cut))) < 1.0


@pytest.mark.parametrize("spoilt, scale", [
    (lambda p: np.rot90(p), 1.0), (lambda p: p[::-1, ::-1], 1.0), (lambda p: p, 1.05),
])
def test_a_photograph_turned_or_at_another_scale_is_in_doubt(spoilt, scale):
    first, second, _ = faces()
    done = chained(photographed([first, spoilt(second)], [1.0, scale]))
    assert [(s.first, s.second) for s in done.doubts] == [(1, 2)]


def test_the_same_file_twice_lies_on_itself():
    first, second, _ = faces()
    done = chained(photographed([first, second, second]))
    assert np.abs(done.steps[1].motion.apply(CORNERS) - CORNERS).max() < 0.01
    assert done.steps[1].likeness > 0.99


@pytest.mark.parametrize("size, scale", [((3, 2), 1.0), ((20, 20), 1.0), ((300, 200), 0.05),
                                         ((600, 12), 1.0)])
def test_leaves_too_small_to_show_figure_are_refused(size, scale):
    noise = [np.random.default_rng(k).integers(0, 255, (*size, 3), np.uint8) for k in range(2)]
    with pytest.raises(VeneerError) as caught:
        register(photographed(noise, [scale] * 2))
    assert caught.value.code in ("too-little-figure", "no-figure")
    assert caught.value.values["leaf"] == 1


def test_leaves_without_a_common_place_are_not_moved_and_in_doubt():
    one, other = (replace(leaf, back=None) for leaf in shaken().leaves[:2])
    apart = Bundle((
        replace(one, usable=box(0, 0, WIDTH, 130)), replace(other, usable=box(0, 270, WIDTH, 400))
    ), 0.6)
    done = chained(apart)
    assert done.registers[2] == IDENTITY and done.doubts == done.steps


def test_a_little_lens_and_buckle_cost_little_and_more_than_none():
    calm = chained(sawn_bundle(3, figure="burl", **SIZE)).registers
    rms = []
    for spoilt in ({}, {"lens": 0.002, "buckle": 5.0}):
        bundle = sawn_bundle(3, figure="burl", **SIZE, disturb=Disturbance(**spoilt))
        done = chained(bundle).registers
        gone = [
            done[leaf.number].apply(CORNERS) - leaf.register.apply(calm[leaf.number].apply(CORNERS))
            for leaf in bundle.leaves[1:]
        ]
        rms.append(np.sqrt(np.mean(np.sum(np.array(gone) ** 2, axis=2))))
    assert rms[0] < 0.3 and rms[0] < rms[1] < 1.5


def test_photographs_simply_stacked_can_be_laid_checked_and_measured():
    stacked = photographed(faces("burl", 4))
    assert unregistered(stacked) is not None
    layout = radial(stacked, Top.round(200), ways=4, turn="slip")
    assert all(finding.text for finding in check(layout))
    before, after = residual(layout), residual(layout, register(stacked))
    assert after.measured > before.measured and after.rms < 1.0

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The residual of the registers along the seams: known misses come back in mm, or nothing does."""

import math
from dataclasses import replace
from functools import cache

import numpy as np
import pytest

from veneerwb.core import Stock, Top, radial, sawn_bundle
from veneerwb.core.checks.faces import unregistered
from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence.chain import registered
from veneerwb.core.sequence.residual import HALF, REACH, residual

SIZE = {"width": 240.0, "length": 500.0, "mm_per_px": 1.0}
TOP = Top.round(440)


@cache
def burl():
    """Leaves so thin that all show one surface."""
    return sawn_bundle(6, figure="burl", thickness=0.001, **SIZE)


def faces(pixels, scale=1.0, backs=None):
    backs = backs or [None] * len(pixels)
    return Bundle(tuple(
        Leaf(k, Side(Photo.of(p, scale)), None if b is None else Side(Photo.of(b, scale)))
        for k, (p, b) in enumerate(zip(pixels, backs), start=1)
    ), 0.6)


def moved(bundle, number, motion):
    return registered(bundle, {
        n: motion if n == number else IDENTITY for n in bundle.numbers
    })


def test_true_registers_leave_nothing():
    found = residual(radial(burl(), TOP, ways=6, turn="slip"))
    assert found.rms < 0.05 and found.worst < 0.2 and found.measured > 0.9 * found.tried
    assert len(found.seams) == 6 and [(s.a, s.b) for s in found.seams][-1] == (6, 1)


def test_progress_is_told_seam_by_seam():
    told = []
    residual(radial(burl(), TOP, ways=6), progress=told.append)
    assert told == pytest.approx([k / 6 for k in range(1, 7)])


@pytest.mark.parametrize("off", [(1.3, -0.8), (0.0, 2.4), (-3.2, 3.1), (0.4, 0.0)])
def test_a_register_that_is_off_shows_at_its_two_seams_by_as_much(off):
    """Leaf 3's figure then lies the other way from where it is looked up."""
    bundle = moved(burl(), 3, Motion(dx=off[0], dy=off[1]))
    found = residual(radial(bundle, TOP, ways=6, turn="slip"))
    for seam in found.seams:
        if 3 not in (seam.a, seam.b):
            assert seam.rms < 0.1
            continue
        sign = -1 if seam.b == 3 else 1
        shifts = np.array([p.shift for p in seam.patches if p.whole])
        assert np.median(shifts, axis=0) == pytest.approx(sign * np.array(off), abs=0.12)
        assert seam.rms == pytest.approx(math.hypot(*off), rel=0.1, abs=0.1)
    assert found.worst == pytest.approx(math.hypot(*off), rel=0.15, abs=0.15)


def test_a_turned_register_misses_more_the_further_out():
    bundle = moved(burl(), 3, Motion.turn_about(120, 30, 0.5))
    layout = radial(bundle, TOP, ways=6, turn="slip", placement=(120, 30))
    (seam,) = [s for s in residual(layout).seams if s.a == 3]
    far = np.array([math.dist(p.place, (120, 30)) for p in seam.patches])
    gone = np.array([p.mm for p in seam.patches])
    assert gone[far.argmax()] == pytest.approx(far.max() * math.radians(0.5), abs=0.2)
    assert np.corrcoef(far, gone)[0, 1] > 0.95


@pytest.mark.parametrize("scale", [0.5, 1.6])
def test_millimetres_hold_at_any_scale_of_the_photographs(scale):
    surface = sawn_bundle(1, 240, 500, mm_per_px=scale, figure="burl").leaf(1).photo
    bundle = moved(faces([surface] * 4, scale), 2, Motion(dx=1.0, dy=2.0))
    found = residual(radial(bundle, TOP, ways=4, turn="slip"))
    (seam,) = [s for s in found.seams if s.a == 2]
    assert seam.rms == pytest.approx(math.hypot(1, 2), abs=0.15)


def test_a_book_joint_on_one_photograph_is_not_measured_and_says_so():
    found = residual(radial(burl(), TOP, ways=6))
    assert [s.one_photo for s in found.seams] == [True, False] * 3
    assert [s.step for s in found.seams][:2] == [0, 2]
    assert found.seams[0].tried == 0 and math.isnan(found.seams[0].rms)
    assert found.seams[1].tried == int(220 / 25)  # one line in the bundle, not two
    (note,) = [f for f in found.findings if f.code == "one-photograph"]
    assert note.values["seams"] == (1, 3, 5) and "not measured" in note.text


def test_a_photographed_back_is_measured_against_the_face_it_meets():
    """Leaf 1's back and leaf 2's face are one surface, the back photographed 3 mm aside, which
    its view does not know."""
    surface = burl().leaf(1).photo
    aside = np.roll(surface, -3, axis=1)
    backs = [aside, None, None, None]
    found = residual(radial(faces([surface] * 4, backs=backs), TOP, ways=4))
    assert not found.seams[0].one_photo
    assert found.seams[0].rms == pytest.approx(3.0, abs=0.1)
    # Seen from the turned leaf, position 1, the face's figure lies 3 mm to the right.
    assert np.median([p.shift[0] for p in found.seams[0].patches]) == pytest.approx(3.0, abs=0.1)


def lines(angle, seed=1):
    """Lines of random shade at an angle: the figure says nothing along them."""
    rng = np.random.default_rng(seed)
    shade = np.convolve(rng.standard_normal(4000), np.hanning(7), "same")
    y, x = np.mgrid[500:0:-1, 0:240] - 0.5
    off = x * math.sin(math.radians(angle)) - y * math.cos(math.radians(angle))
    grey = np.interp(off, np.arange(4000) / 2 - 1000, shade)
    noise = rng.normal(0, 2, grey.shape)
    return np.repeat(np.clip(120 + 18 * grey + noise, 0, 255).astype(np.uint8)[..., None], 3, 2)


def test_only_the_shift_across_lines_counts():
    straight = lines(90.0)  # along the grain: nothing tells where along it
    bundle = moved(faces([straight] * 4), 2, Motion(dx=1.5, dy=4.0))
    (seam,) = [s for s in residual(radial(bundle, TOP, ways=4, turn="slip")).seams if s.a == 2]
    assert len(seam.patches) > 0.7 * seam.tried and not any(p.whole for p in seam.patches)
    shifts = np.array([p.shift for p in seam.patches])
    assert np.abs(shifts[:, 0]) == pytest.approx(1.5, abs=0.2)
    assert np.abs(shifts[:, 1]).max() < 0.2


def test_of_a_shift_askew_to_lines_the_part_across_counts():
    bundle = moved(faces([lines(35.0)] * 4), 2, Motion(dx=3.0))
    (seam,) = [s for s in residual(radial(bundle, TOP, ways=4, turn="slip")).seams if s.a == 2]
    assert len(seam.patches) > 0.7 * seam.tried
    across = np.array((math.sin(math.radians(35)), -math.cos(math.radians(35))))
    wanted = 3.0 * across[0] * across
    for patch in seam.patches:
        assert patch.shift == pytest.approx(wanted, abs=0.2)


def test_leaves_that_have_nothing_in_common_are_not_measured():
    strange = [sawn_bundle(1, figure="burl", seed=s, **SIZE).leaf(1).photo for s in range(4)]
    black = [np.zeros((500, 240, 3), np.uint8)] * 4
    for pixels in (strange, black):
        found = residual(radial(faces(pixels), TOP, ways=4, turn="slip"))
        assert found.measured < 0.1 * found.tried
    assert math.isnan(found.rms) and math.isnan(found.worst)
    assert [f.code for f in found.findings] == ["residual-untold"]
    assert found.findings[0].values["seams"] == (1, 2, 3, 4)


def test_a_miss_beyond_reach_is_not_taken_for_a_small_one():
    bundle = moved(burl(), 3, Motion(dx=REACH + 6.0))
    found = residual(radial(bundle, TOP, ways=6, turn="slip"))
    assert all(len(s.patches) <= 0.3 * s.tried for s in found.seams if 3 in (s.a, s.b))


def test_what_lies_off_the_leaf_or_in_a_fault_is_not_measured():
    layout = radial(burl(), TOP, ways=6, turn="slip", placement=(120, -100))
    seams = residual(layout).seams
    assert all(p.place[1] > -HALF for s in seams for p in s.patches)
    assert seams[0].tried > len(seams[0].patches) > 0


def test_the_text_names_the_figures_the_worst_seam_and_where_they_come_from():
    bundle = moved(burl(), 3, Motion(dx=2.0, dy=1.0))
    found = residual(radial(bundle, TOP, ways=6, turn="slip"))
    (said,) = [f for f in found.findings if f.code == "residual"]
    assert said.level == "warn" and said.values["worst"] == round(found.worst, 2)
    assert 3 in (said.values["a"], said.values["b"]) and said.pieces
    assert found.text.startswith("From the residuals of your photographs")
    assert residual(radial(burl(), TOP, ways=6, turn="slip")).findings[0].level == "note"


def test_another_bundle_of_the_same_leaves_may_be_measured():
    layout = radial(burl(), TOP, ways=6, turn="slip")
    assert residual(layout, moved(burl(), 3, Motion(dx=2.0))).worst > 1.8 > residual(layout).worst


def test_a_stock_has_no_photographs():
    with pytest.raises(VeneerError) as caught:
        residual(radial(Stock(300, 900, 6, 0.6), TOP, ways=6))
    assert caught.value.code == "no-pictures"


def test_photographs_simply_stacked_are_known_as_such():
    assert unregistered(burl()).code == "not-registered"
    assert unregistered(moved(burl(), 2, Motion(dx=1.0))) is None
    one = Bundle((replace(burl().leaf(1), back=None),), 0.6)
    assert unregistered(one) is None

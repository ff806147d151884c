# SPDX-License-Identifier: LGPL-2.1-or-later
"""The generated log: one continuous stem, sliced, photographed with known disturbances."""

import math

import numpy as np
import pytest
from shapely.geometry import Point, box

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle
from veneerwb.core.log.disturb import CAMERA, Optics
from veneerwb.core.log.figures import FIGURES
from veneerwb.core.log.sawn import TABLE, Disturbance, Log, sawn_bundle
from veneerwb.core.plane import IDENTITY, Motion

SMALL = {"width": 120.0, "length": 300.0, "mm_per_px": 1.0}
CALM = Disturbance(shift=8, turn=2, exposure=0, noise=0)


def grey(picture):
    return picture.astype(float).mean(axis=2)


def likeness(a, b):
    """Correlation of two pictures, -1 .. 1."""
    return np.corrcoef(grey(a).ravel(), grey(b).ravel())[0, 1]


def centres(rows, columns, scale):
    """mm of every pixel centre, row by row, straight from the convention."""
    c, r = np.meshgrid(np.arange(columns), np.arange(rows))
    return np.column_stack([((c + 0.5) * scale).ravel(), ((rows - r - 0.5) * scale).ravel()])


def wander(first, second, scale):
    """mm along y that the second picture lies further up: the peak of the phase correlation,
    smoothed to some pixels, with a parabola through its top."""
    window = np.hanning(len(first))[:, None] * np.hanning(first.shape[1])
    a, b = (np.fft.rfft2((grey(p) - grey(p).mean()) * window) for p in (first, second))
    cross = a * b.conj() / (np.abs(a * b) + 1e-6)
    fy, fx = np.fft.fftfreq(len(first))[:, None], np.fft.rfftfreq(first.shape[1])
    peak = np.fft.irfft2(cross * np.exp(-2 * (2.5 * np.pi) ** 2 * (fx**2 + fy**2)), first.shape[:2])
    row, column = np.unravel_index(peak.argmax(), peak.shape)
    below, top, above = (peak[(row + k) % len(peak), column] for k in (-1, 0, 1))
    at = row + (below - above) / (2 * (below - 2 * top + above))
    return scale * ((at + len(peak) / 2) % len(peak) - len(peak) / 2)


@pytest.mark.parametrize("figure", FIGURES)
def test_neighbouring_surfaces_are_alike_and_far_ones_less(figure):
    log = Log(120, 300, 0.6, figure, knots=0)
    first, second, third, far = (log.picture(k, 0.5) for k in (0, 1, 2, 30))
    assert 0.6 < likeness(first, second) < 0.9999
    assert likeness(first, second) > likeness(first, third) > likeness(first, far)
    assert likeness(first, far) < 0.93


@pytest.mark.parametrize("figure", FIGURES)
def test_the_field_changes_continuously_with_depth(figure):
    def step(thickness):
        log = Log(80, 120, thickness, figure, knots=0)
        return np.abs(grey(log.picture(1, 1.0)) - grey(log.picture(0, 1.0))).mean()

    assert step(0.006) < 0.2 * step(0.6)


def test_fine_noise_is_shared_by_neighbours_and_forgotten_within_millimetres():
    """Away from slow changes, what is left of the stripe's picture is fibre and pores."""
    log = Log(60, 120, 0.6, "plain", knots=0)

    def fine(surface):
        picture = grey(log.picture(surface, 0.5))
        return picture - picture.mean(axis=0)

    def alike(a, b):
        return np.corrcoef(fine(a).ravel(), fine(b).ravel())[0, 1]

    assert alike(0, 1) > 0.5
    assert abs(alike(0, 20)) < 0.35


@pytest.mark.parametrize("slope", [10.0, -10.0, 6.0])
def test_crowns_wander_by_thickness_over_the_tangent(slope):
    log = Log(200, 600, 0.6, "cathedral", seed=2, slope=slope, knots=0)
    expected = 0.6 / math.tan(math.radians(slope))
    pictures = [log.picture(k, 0.5) for k in range(3)]
    for first, second in zip(pictures, pictures[1:]):
        # A picture's rows run down and y up: crowns go towards -y for a positive slope.
        assert wander(second, first, 0.5) == pytest.approx(expected, rel=0.1)


@pytest.mark.parametrize("figure", FIGURES)
def test_without_slope_the_figure_stays(figure):
    log = Log(200, 600, 0.6, figure, knots=0)
    assert abs(wander(log.picture(1, 0.5), log.picture(0, 0.5), 0.5)) < 0.3


def test_the_bundle_knows_its_slope_and_thickness():
    assert sawn_bundle(1, **SMALL, slope=10).wander() == pytest.approx(3.4028, abs=1e-4)
    flat = sawn_bundle(1, **SMALL)
    assert flat.slope is None and flat.thickness == 0.6 and flat.back == "next"


@pytest.mark.parametrize("figure", FIGURES)
def test_a_picture_is_the_field_at_its_pixel_centres(figure):
    log = Log(60, 100, 0.6, figure, slope=5)
    frame = Motion(7.0, 6.0, -3.0)
    picture = log.picture(2, 0.5, frame)
    points = frame.inverse().apply(centres(200, 120, 0.5))
    on = (points >= 0).all(axis=1) & (points <= (60, 100)).all(axis=1)
    shown = picture.reshape(-1, 3).astype(int)
    off_by = np.abs(shown[on] - log.colours(points[on], 2))
    # Rounding may fall into the next entry of a table, here and there.
    assert off_by.mean() < 0.05 and np.percentile(off_by, 99.5) <= 2
    assert (shown[~on] == TABLE).all() and 0.02 < (~on).mean() < 0.5


def test_known_disturbances_are_exact():
    log = Log(120, 300)
    bundle = sawn_bundle(4, **SMALL, disturb=CALM)
    for leaf in bundle.leaves[1:]:
        assert leaf.register != IDENTITY and leaf.face.view == leaf.register
        inner = centres(300, 120, 1.0)
        moved = leaf.register.inverse().apply(inner)
        on = (moved > 0.5).all(axis=1) & (moved < (119.5, 299.5)).all(axis=1)
        true = log.colours(moved[on], leaf.number - 1).astype(int)
        assert np.abs(leaf.photo.reshape(-1, 3)[on] - true).mean() < 0.05
        # The test can fail: half a millimetre off is seen.
        off = log.colours(moved[on] + (0.5, 0.0), leaf.number - 1).astype(int)
        assert np.abs(leaf.photo.reshape(-1, 3)[on] - off).mean() > 1


def test_a_bent_picture_shows_every_place_where_lens_and_buckle_put_it():
    log, size = Log(120, 300, figure="burl"), (120.0, 300.0)
    frame = Motion(1.5, 6.0, -3.0)
    optics = Optics(size, 0.01, 8.0, (0.3, 1.2, 0.1))
    picture = log.picture(2, 0.5, frame, 0.0, optics)
    places = centres(600, 240, 0.5)
    true = frame.inverse().apply(optics.ideal(places))
    on = (true > 0.5).all(axis=1) & (true < (119.5, 299.5)).all(axis=1)
    shown = picture.reshape(-1, 3).astype(int)
    assert np.abs(shown[on] - log.colours(true[on], 2)).mean() < 0.15
    straight = frame.inverse().apply(places)
    assert np.abs(shown[on] - log.colours(straight[on], 2)).mean() > 1.5  # the test can fail
    off = (true < -0.5).any(axis=1) | (true > (120.5, 300.5)).any(axis=1)
    assert (shown[off] == TABLE).all() and off.any()
    corner = log.picture(0, 0.5, optics=Optics(size, 0.05, 0.0, (0, 1, 0)))[0, 0]
    assert (corner == TABLE).all()  # also where the leaf itself lies straight


def test_a_lens_draws_corners_in_and_what_stands_up_looks_larger():
    size, middle = (600.0, 800.0), (300.0, 400.0)
    lens, buckle = Optics(size, 0.002, 0.0, (0, 1, 0)), Optics(size, 0.0, 5.0, (0.0, 1.0, 0.5))
    assert lens.ideal(middle) == pytest.approx(middle) == buckle.ideal(middle)
    # The corner lies 500 mm from the middle: 0.2 % of that is 1 mm, along (3, 4) / 5.
    assert lens.ideal(size) == pytest.approx((600.6, 800.8))
    assert lens.ideal((300, 650)) == pytest.approx((300, 650 + 250 * 0.002 / 4))
    # By similar triangles: 5 mm up at 300 mm from the middle is seen 1 mm further out.
    assert buckle.height((600, 400)) == pytest.approx(5.0)
    assert buckle.ideal((600, 400)) == pytest.approx((600 - 300 * 5 / CAMERA, 400))
    assert buckle.height((600, 800)) == pytest.approx(0.0)


def test_lens_and_buckle_spoil_all_photographs_and_change_nothing_else():
    plain = sawn_bundle(3, **SMALL, disturb=CALM)
    same = sawn_bundle(3, **SMALL, disturb={"shift": 8, "turn": 2, "exposure": 0, "noise": 0,
                                            "lens": 0, "buckle": 0})
    spoilt = sawn_bundle(3, **SMALL, disturb=Disturbance(8, 2, 0, 0, lens=0.002, buckle=5))
    for one, other, third in zip(plain.leaves, same.leaves, spoilt.leaves):
        assert np.array_equal(one.photo, other.photo)
        assert not np.array_equal(one.photo, third.photo)
        assert one.register == third.register and one.usable.equals(third.usable)
    again = sawn_bundle(3, **SMALL, disturb=Disturbance(8, 2, 0, 0, lens=0.002, buckle=5))
    assert all(np.array_equal(a.photo, b.photo) for a, b in zip(spoilt.leaves, again.leaves))


def test_leaf_one_is_the_frame_of_the_bundle_and_others_stay_within_their_limits():
    bundle = sawn_bundle(6, **SMALL, disturb={"shift": 5.0, "turn": 1.5})
    assert bundle.leaf(1).register == IDENTITY
    middle = np.array((60.0, 150.0))
    for leaf in bundle.leaves[1:]:
        assert abs(leaf.register.angle) <= 1.5
        assert (np.abs(leaf.register.apply(middle) - middle) <= 5.0 + 1e-9).all()
    assert len({leaf.register for leaf in bundle.leaves}) == 6


def test_noise_and_exposure_are_as_asked():
    plain = sawn_bundle(2, **SMALL).leaf(2).photo.astype(float)
    noisy = sawn_bundle(2, **SMALL, disturb={"shift": 0, "turn": 0, "exposure": 0, "noise": 0.02})
    error = noisy.leaf(2).photo - plain
    assert error.std() == pytest.approx(5.1, rel=0.05) and abs(error.mean()) < 0.2
    lit = sawn_bundle(2, **SMALL, disturb={"shift": 0, "turn": 0, "exposure": 0.5, "noise": 0})
    assert abs(lit.leaf(2).photo.mean() - plain.mean()) > 2


def test_undisturbed_leaves_have_identity_registers_and_share_their_surfaces():
    bundle = sawn_bundle(3, **SMALL, backs=True)
    for leaf in bundle.leaves:
        back = leaf.side(turned=True)
        assert leaf.register == back.register == back.view == IDENTITY and back.source == "photo"
    for k in (1, 2):
        assert np.array_equal(bundle.leaf(k).side(True).photo, bundle.leaf(k + 1).photo)
    assert not np.array_equal(bundle.leaf(3).side(True).photo, bundle.leaf(3).photo)


def test_a_photographed_back_has_its_own_view_and_its_leafs_register():
    log = Log(120, 300)
    bundle = sawn_bundle(3, **SMALL, disturb=CALM, backs=[2, 3])
    assert bundle.leaf(1).side(True).source == "neighbour"
    for k in (2, 3):
        leaf, back = bundle.leaf(k), bundle.leaf(k).side(True)
        assert back.register == leaf.register and back.view != leaf.register
        points = centres(300, 120, 1.0)
        moved = back.view.inverse().apply(points)
        on = (moved > 0.5).all(axis=1) & (moved < (119.5, 299.5)).all(axis=1)
        true = log.colours(moved[on], k).astype(int)
        assert np.abs(back.photo.reshape(-1, 3)[on] - true).mean() < 0.05


def test_usable_is_the_leaf_as_far_as_it_is_on_the_photo():
    bundle = sawn_bundle(3, **SMALL, disturb=CALM)
    assert bundle.leaf(1).usable.equals(box(0, 0, 120, 300))
    leaf = bundle.leaf(2)
    assert leaf.usable.area < 120 * 300 - 100
    on = np.array([leaf.usable.buffer(-1).contains(Point(p)) for p in centres(300, 120, 1.0)[::7]])
    table = (leaf.photo.reshape(-1, 3)[::7] == TABLE).all(axis=1)
    off = np.array([leaf.usable.disjoint(Point(p)) for p in centres(300, 120, 1.0)[::7]])
    assert not table[on].any() and table[off].all() and off.any()


@pytest.mark.parametrize(("figure", "slope"), [("cathedral", 0), ("cathedral", 8), ("stripe", 0)])
def test_knots_are_faults_on_their_leaf_near_its_edges(figure, slope):
    bundle = sawn_bundle(
        4, 300, 500, mm_per_px=1.0, figure=figure, slope=slope, knots=3, disturb=CALM
    )
    bare = Log(300, 500, figure=figure, slope=slope, knots=0)
    for leaf in bundle.leaves:
        assert 1 <= len(leaf.faults) <= 3
        clean = bare.picture(leaf.number - 1, 1.0, leaf.register)
        darker = grey(clean) - grey(leaf.photo)
        points = centres(500, 300, 1.0)[(darker > 25).ravel()]
        near = [min(f.outline.distance(Point(p)) for f in leaf.faults) for p in points]
        core = [min(f.outline.centroid.distance(Point(p)) for f in leaf.faults) for p in points]
        assert min(core) < 3, "a knot is dark at its middle"
        assert np.mean(np.array(near) < 25) > 0.5
        for fault in leaf.faults:
            assert fault.kind == "knot" and leaf.usable.buffer(1e-6).contains(fault.outline)
            x, _ = leaf.register.inverse().apply(np.array(fault.outline.centroid.coords[0]))
            assert abs(x - 150) > 90


def test_figures_differ_and_look_like_wood():
    pictures = [Log(120, 300, figure=figure).picture(0, 1.0) for figure in FIGURES]
    for k, one in enumerate(pictures):
        red, green, blue = one.reshape(-1, 3).mean(axis=0)
        assert red > green > blue and 60 < green < 220
        assert grey(one).std() > 4
        assert all(likeness(one, other) < 0.6 for other in pictures[k + 1 :])


def test_the_same_seed_gives_the_same_bytes_in_any_order():
    log = Log(100, 150, figure="burl", seed=5)
    later, first = log.picture(3, 1.0), log.picture(0, 1.0)
    again = Log(100, 150, figure="burl", seed=5)
    assert np.array_equal(first, again.picture(0, 1.0))
    assert np.array_equal(later, again.picture(3, 1.0))
    assert not np.array_equal(first, Log(100, 150, figure="burl", seed=6).picture(0, 1.0))
    one, two = (sawn_bundle(2, **SMALL, disturb=Disturbance()).leaf(2) for _ in range(2))
    assert np.array_equal(one.photo, two.photo) and one.register == two.register


def test_the_log_is_the_same_at_every_scale():
    fine, coarse = Log(60, 90).picture(1, 0.5), Log(60, 90).picture(1, 1.5)
    shared = fine[1::3, 1::3].astype(int)
    assert shared.shape == coarse.shape
    assert np.abs(shared - coarse).mean() < 0.05


@pytest.mark.parametrize(
    "wrong",
    [
        {"leaves": 0}, {"leaves": -2}, {"leaves": 2.5}, {"leaves": 10**6}, {"leaves": "many"},
        {"width": 0}, {"width": 1e9}, {"width": math.nan}, {"length": -5}, {"length": math.inf},
        {"thickness": 0}, {"thickness": 500}, {"leaves": 100, "thickness": 20},
        {"mm_per_px": 0}, {"mm_per_px": 1e-4}, {"mm_per_px": 1e4}, {"mm_per_px": "fine"},
        {"figure": "tartan"}, {"seed": -1}, {"slope": 89}, {"slope": "steep"}, {"knots": -1},
        {"backs": [9]}, {"disturb": {"wobble": 3}}, {"disturb": {"shift": -1}},
        {"disturb": {"lens": 0.5}}, {"disturb": {"buckle": -1}},
        {"disturb": {"noise": math.nan}}, {"leaves": 1000, "width": 1000, "length": 4000},
    ],
)
def test_bad_input_is_refused_in_one_sentence(wrong):
    with pytest.raises(VeneerError) as refused:
        sawn_bundle(**{"leaves": 2, "width": 100, "length": 100, "mm_per_px": 0.5, **wrong})
    sentence = str(refused.value)
    assert sentence.endswith(".") and "{" not in sentence and "Traceback" not in sentence


def test_a_surface_that_the_log_has_not_is_refused():
    for surface in (-1, 1.5, 1001):
        with pytest.raises(VeneerError):
            Log(50, 50).picture(surface, 1.0)
    with pytest.raises(VeneerError, match="leaves"):
        Log(50, 50, thickness=10).colours([(1, 1)], 61)


def test_smallest_leaves_are_drawn_too():
    bundle = sawn_bundle(1, 3, 2, mm_per_px=0.5, figure="crotch", slope=-5, backs=True)
    assert isinstance(bundle, Bundle) and bundle.leaf(1).photo.shape == (4, 6, 3)

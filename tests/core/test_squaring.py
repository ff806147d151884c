# SPDX-License-Identifier: LGPL-2.1-or-later
"""Squaring up: a known plane, seen through a camera of the test's own, comes back as it was."""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image

from veneerwb.core.errors import VeneerError
from veneerwb.core.photos import squaring as module
from veneerwb.core.photos.squaring import NEAREST, Squaring, scale_between, squared, squaring

SHAPE = (480, 360)  # rows, columns of the test's photographs
WIDTH, LENGTH = 210.0, 297.0


def plane(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Colours (float, 0..255) of a plane at x, y mm: smooth, unlike itself in any turn."""
    return np.stack([
        128 + 70 * np.sin(x / 5.0 + 0.3) + 40 * np.cos(y / 9.0),
        120 + 60 * np.sin((x + y) / 7.0) + x / 8 + y / 10,
        128 + 50 * np.cos((x - 2 * y) / 12.0) + 60 * np.sin(y / 6.0),
    ], axis=-1)


def camera(tilt: float, turn: float, spin: float, far: float = 500.0, aside: float = 0.0,
           focal: float = 480.0) -> np.ndarray:
    """The 3 x 3 matrix from plane mm to (column, row) of a camera over the rectangle's middle:
    tilted about x, turned about y, spun about its axis (degrees), from `far` mm."""
    a, b, c = np.radians([tilt, turn, spin])
    about_x = np.array([[1, 0, 0], [0, np.cos(a), -np.sin(a)], [0, np.sin(a), np.cos(a)]])
    about_y = np.array([[np.cos(b), 0, np.sin(b)], [0, 1, 0], [-np.sin(b), 0, np.cos(b)]])
    about_z = np.array([[np.cos(c), -np.sin(c), 0], [np.sin(c), np.cos(c), 0], [0, 0, 1]])
    turned = about_z @ about_y @ about_x
    centred = np.array([[1, 0, -WIDTH / 2 + aside], [0, 1, -LENGTH / 2], [0, 0, 1]])
    pose = np.column_stack([turned[:, 0], turned[:, 1], [0, 0, far]])
    lens = np.array([[focal, 0, SHAPE[1] / 2], [0, -focal, SHAPE[0] / 2], [0, 0, 1]])
    return lens @ pose @ centred


def carried(matrix: np.ndarray, points: object) -> np.ndarray:
    p = np.asarray(points, float)
    homogeneous = np.concatenate([p, np.ones((*p.shape[:-1], 1))], axis=-1) @ matrix.T
    return homogeneous[..., :2] / homogeneous[..., 2:]


def photograph(matrix: np.ndarray, shape: tuple[int, int] = SHAPE) -> np.ndarray:
    """The plane seen through the camera, computed at each pixel's centre: nothing resampled."""
    rows, columns = shape
    centres = np.stack(np.meshgrid(np.arange(columns) + 0.5, np.arange(rows) + 0.5), axis=-1)
    x, y = np.moveaxis(carried(np.linalg.inv(matrix), centres), -1, 0)
    return np.clip(np.rint(plane(x, y)), 0, 255).astype(np.uint8)


def wanted(area: tuple[float, float, float, float], scale: float, shape: tuple) -> np.ndarray:
    rows, columns = shape[:2]
    x = area[0] + (np.arange(columns) + 0.5) * scale
    y = area[1] + (rows - np.arange(rows) - 0.5) * scale
    return np.clip(plane(*np.meshgrid(x, y)), 0, 255)


def shift_px(found: np.ndarray, true: np.ndarray) -> float:
    """How many pixels `found` lies beside `true`, by the slope of the picture (least squares)."""
    down, across = np.gradient(true, axis=(0, 1))
    slopes = np.stack([across.ravel(), down.ravel()], axis=1)
    return float(np.hypot(*np.linalg.lstsq(slopes, (found - true).ravel(), rcond=None)[0]))


def corners_of(matrix: np.ndarray, width: float = WIDTH, length: float = LENGTH) -> np.ndarray:
    """Lower left, lower right, upper right, upper left as the camera sees them."""
    return carried(matrix, [(0, 0), (width, 0), (width, length), (0, length)])


POSES = st.tuples(st.floats(-25, 25), st.floats(-20, 20), st.floats(-20, 20))
SLANTED = camera(18, -12, 7)


@settings(max_examples=15)
@given(POSES, st.permutations(range(4)))
def test_a_slanted_photograph_comes_back_square(pose: tuple, order: list[int]) -> None:
    matrix = camera(*pose)
    pixels = photograph(matrix)
    found = squared(pixels, corners_of(matrix)[list(order)], WIDTH, LENGTH, 1.0).astype(float)
    true = wanted((0, 0, WIDTH, LENGTH), 1.0, found.shape)
    assert found.shape == (297, 210, 3)
    assert np.abs(found - true).mean() < 1.0
    assert np.quantile(np.abs(found - true), 0.99) < 4.0
    assert shift_px(found, true) < 0.02


def test_the_order_of_the_clicks_does_not_matter() -> None:
    clicks = corners_of(SLANTED)
    first = squaring(clicks, WIDTH, LENGTH, SHAPE)
    for order in itertools.permutations(range(4)):
        assert squaring(clicks[list(order)], WIDTH, LENGTH, SHAPE) == first
    np.testing.assert_allclose(first.corners, clicks)


def test_places_go_to_the_picture_and_back_as_in_the_camera() -> None:
    found = squaring(corners_of(SLANTED), WIDTH, LENGTH, SHAPE)
    places = np.array([(10.0, 20.0), (150.0, 7.0), (-20.0, 310.0)])
    np.testing.assert_allclose(found.to_pixels(places), carried(SLANTED, places), atol=1e-9)
    np.testing.assert_allclose(found.to_mm(found.to_pixels(places)), places, atol=1e-9)


def test_the_mapping_agrees_with_opencv() -> None:
    cv2 = pytest.importorskip("cv2")
    clicks = corners_of(SLANTED)
    corners = np.float32([(0, 0), (WIDTH, 0), (WIDTH, LENGTH), (0, LENGTH)])
    theirs = cv2.getPerspectiveTransform(corners, np.float32(clicks))
    ours = squaring(clicks, WIDTH, LENGTH, SHAPE).matrix
    np.testing.assert_allclose(ours / ours[2, 2], theirs, rtol=1e-5, atol=1e-6)


def test_the_picture_agrees_with_opencv() -> None:
    cv2 = pytest.importorskip("cv2")
    pixels, clicks, scale = photograph(SLANTED), corners_of(SLANTED), 0.5
    # OpenCV counts pixel centres from whole numbers.
    ends = np.float32([(0, LENGTH), (WIDTH, LENGTH), (WIDTH, 0), (0, 0)]) / scale - 0.5
    theirs = cv2.warpPerspective(
        pixels, cv2.getPerspectiveTransform(np.float32(clicks - 0.5), ends), (420, 594),
        flags=cv2.INTER_CUBIC, borderMode=cv2.BORDER_REPLICATE,
    )
    ours = squared(pixels, clicks, WIDTH, LENGTH, scale)
    assert ours.shape == theirs.shape
    apart = np.abs(ours.astype(int) - theirs)
    assert apart.max() <= 4 and apart.mean() < 0.5  # another cubic, and places to 1/32 px


def test_the_picture_agrees_with_pillow_given_the_same_corners() -> None:
    pixels, clicks = photograph(SLANTED), corners_of(SLANTED)
    rows, right = [], []  # eight equations for Pillow's eight coefficients, for 1 mm/px
    for (x, y), (u, v) in zip([(0, 297), (210, 297), (210, 0), (0, 0)], clicks):
        rows += [[x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]]
        right += [u, v]
    theirs = Image.fromarray(pixels).transform(
        (210, 297), Image.PERSPECTIVE, tuple(np.linalg.solve(rows, right)), Image.BICUBIC
    )
    ours = squared(pixels, clicks, WIDTH, LENGTH, 1.0)
    apart = np.abs(ours.astype(int) - np.asarray(theirs))[2:-2, 2:-2]
    assert apart.mean() < 2.0 and np.quantile(apart, 0.99) < 8.0  # point samples, no area


def test_the_whole_picture_comes_square_too() -> None:
    small, pixels = (60.0, 90.0), photograph(SLANTED)
    clicks = carried(SLANTED, [(70, 90), (130, 90), (130, 180), (70, 180)])
    found = squaring(clicks, *small, SHAPE)
    area = found.whole(SHAPE)
    result = squared(pixels, clicks, *small, 1.0, whole=True).astype(float)
    edge = found.to_mm([(0, 0), (SHAPE[1], 0), (SHAPE[1], SHAPE[0]), (0, SHAPE[0])])
    assert area == (*edge.min(axis=0), *edge.max(axis=0))
    assert abs(result.shape[1] - (area[2] - area[0])) <= 0.5
    moved = (area[0] + 70, area[1] + 90, 0, 0)
    true = wanted(moved, 1.0, result.shape)
    rows, columns = result.shape[:2]
    x, y = np.meshgrid(np.arange(columns) + 0.5, rows - np.arange(rows) - 0.5)
    seen = carried(SLANTED, np.stack([x + moved[0], y + moved[1]], axis=-1))
    inside = ((seen > 2) & (seen < np.array(SHAPE[::-1]) - 2)).all(axis=-1)
    assert inside.mean() > 0.6
    assert np.abs(result - true)[inside].mean() < 1.0
    box = np.s_[rows // 2 - 80 : rows // 2 + 80, columns // 2 - 60 : columns // 2 + 60]
    assert inside[box].all() and shift_px(result[box], true[box]) < 0.02


def test_a_margin_is_kept_round_the_rectangle() -> None:
    pixels, clicks = photograph(SLANTED), carried(SLANTED, [(60, 80), (150, 80), (150, 200),
                                                          (60, 200)])
    bare = squared(pixels, clicks, 90, 120, 1.0)
    wide = squared(pixels, clicks, 90, 120, 1.0, margin=10)
    assert wide.shape == (140, 110, 3)
    assert np.abs(wide[10:-10, 10:-10].astype(int) - bare).max() <= 1


@pytest.mark.parametrize("shrink", [2, 3, 5, 8, 20])
def test_shrinking_takes_means_and_raises_no_ghosts(shrink: int) -> None:
    speckle = np.random.default_rng(1).integers(0, 2, (480, 480)).astype(np.uint8) * 255
    fine = speckle[..., None].repeat(3, axis=2)
    found = squared(fine, [(0, 0), (480, 0), (480, 480), (0, 480)], 240, 240, shrink / 2)
    size = 480 // shrink
    true = fine.reshape(size, shrink, size, shrink, 3).mean(axis=(1, 3))
    assert found.shape == true.shape
    # Bilinear samples reach half a pixel beyond: some blur, and never a single pixel's black.
    assert (found - true).std() < 0.5 * true.std()  # a pixel aside: 1.4 times
    assert abs(found.mean() - true.mean()) < 0.5


def test_a_pattern_finer_than_the_result_turns_grey_under_a_slant() -> None:
    columns, rows = np.meshgrid(np.arange(360), np.arange(480))
    chequers = np.where((columns + rows) % 2, 255, 0).astype(np.uint8)[..., None].repeat(3, axis=2)
    found = squared(chequers, corners_of(SLANTED), WIDTH, LENGTH, 3.0).astype(float)
    assert abs(found.mean() - 127.5) < 2
    assert found.std() < 8  # point samples: 127


def test_at_its_own_scale_a_square_photo_is_returned_as_it_is() -> None:
    pixels = np.random.default_rng(2).integers(0, 256, (90, 60, 3), dtype=np.uint8)
    clicks = [(60, 90), (0, 0), (60, 0), (0, 90)]
    np.testing.assert_array_equal(squared(pixels, clicks, 30, 45, 0.5), pixels)


def test_between_the_photos_pixels_fine_figure_keeps_its_contrast() -> None:
    wave = 128 + 100 * np.sin(2 * np.pi * np.arange(0.5, 120) / 6)
    pixels = np.rint(wave)[None, :, None].repeat(100, axis=0).repeat(3, axis=2).astype(np.uint8)
    clicks = [(10.5, 10), (100.5, 10), (100.5, 90), (10.5, 90)]  # half a pixel aside
    found = squared(pixels, clicks, 90, 80, 1.0)
    true = 128 + 100 * np.sin(2 * np.pi * (10.5 + np.arange(0.5, 90)) / 6)
    assert np.abs(found - true[None, :, None]).max() < 9  # linear between pixels: 13 of 100


def test_a_leaf_on_its_side_is_stood_up_clockwise() -> None:
    pixels = np.random.default_rng(3).integers(0, 256, (60, 90, 3), dtype=np.uint8)
    clicks = [(0, 0), (90, 0), (90, 60), (0, 60)]
    found = squared(pixels, clicks, 30, 45, 0.5)
    np.testing.assert_array_equal(found, np.rot90(pixels, -1))


@pytest.mark.parametrize("spin", [-3.0, 3.0])
def test_leaves_a_little_askew_are_all_stood_up_the_same_way(spin: float) -> None:
    matrix = camera(5, 0, 90 + spin)
    found = squared(photograph(matrix), corners_of(matrix), WIDTH, LENGTH, 1.0).astype(float)
    # Spun by 90 against the clock, so that a turn with the clock brings the leaf upright again.
    assert shift_px(found, wanted((0, 0, 0, 0), 1.0, found.shape)) < 0.05


def test_the_whole_picture_keeps_its_own_up_beside_a_sheet_on_its_side() -> None:
    pixels = np.random.default_rng(4).integers(0, 256, (120, 100, 3), dtype=np.uint8)
    clicks = [(20, 30), (80, 30), (80, 70), (20, 70)]
    np.testing.assert_array_equal(squared(pixels, clicks, 20, 30, 0.5, whole=True), pixels)


def test_a_sheet_far_tilted_is_not_taken_to_lie_on_its_side() -> None:
    matrix = camera(58, 0, 0, far=600)
    clicks = corners_of(matrix)
    across, along = np.ptp(clicks, axis=0)
    assert across > along  # in the picture it is wider than long
    found = squaring(clicks, WIDTH, LENGTH, SHAPE)
    np.testing.assert_allclose(found.corners, clicks)


@pytest.mark.parametrize("tilt", [-12, 0, 12])
def test_an_almost_square_leaf_is_never_turned(tilt: float) -> None:
    clicks = corners_of(camera(tilt, 0, 0), 200, 205)
    for width, length in ((200, 205), (205, 200), (200, 200)):
        found = squaring(clicks, width, length, SHAPE)
        np.testing.assert_allclose(found.corners, clicks)
        assert (found.width, found.length) == (width, length)


def test_off_the_photo_its_edge_is_repeated() -> None:
    pixels = np.full((80, 60, 3), 200, np.uint8)
    pixels[:, -1] = (10, 20, 30)
    result = squared(pixels, [(20, 20), (40, 20), (40, 60), (20, 60)], 20, 40, 1.0, margin=30)
    assert result.shape == (100, 80, 3)
    assert (result[:, 69:] == (10, 20, 30)).all()
    assert (result[:, :69] == 200).all()


def test_a_plain_photo_stays_plain_up_to_its_edge_and_beyond() -> None:
    pixels = np.full((480, 360, 3), 200, np.uint8)
    result = squared(pixels, corners_of(SLANTED), WIDTH, LENGTH, 3.7, margin=80)
    assert (result == 200).all()


@pytest.mark.parametrize("scale", [0.7, 4.9])
def test_the_picture_is_the_same_in_however_many_bands(
    scale: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    pixels = np.random.default_rng(5).integers(0, 256, (*SHAPE, 3), dtype=np.uint8)
    once = squared(pixels, corners_of(SLANTED), WIDTH, LENGTH, scale)
    monkeypatch.setattr(module, "_BAND", 1000)
    banded = squared(pixels, corners_of(SLANTED), WIDTH, LENGTH, scale)
    assert np.abs(once.astype(int) - banded).max() <= 1


# --- how far it can be trusted -----------------------------------------------------------------


def test_a_pixel_amiss_moves_a_corner_by_a_pixel_where_the_photo_is_square() -> None:
    found = squaring([(50, 50), (250, 50), (250, 350), (50, 350)], 100, 150, SHAPE)
    assert found.trust() == pytest.approx(0.5, abs=1e-6)


def test_trust_is_what_a_click_amiss_does() -> None:
    clicks = carried(SLANTED, [(60, 80), (150, 80), (150, 200), (60, 200)])
    found = squaring(clicks, 90, 120, SHAPE)
    frame = np.array([(0, 0), (SHAPE[1], 0), (SHAPE[1], SHAPE[0]), (0, SHAPE[0])], float)
    worst = 0.0
    for corner in range(4):
        for angle in np.arange(0, 360, 5):
            amiss = np.array(found.corners)
            amiss[corner] += 0.01 * np.array([math.cos(math.radians(angle)),
                                              math.sin(math.radians(angle))])
            moved = Squaring(tuple(map(tuple, amiss)), 90, 120).to_mm(frame) - found.to_mm(frame)
            worst = max(worst, np.hypot(*moved.T).max() / 0.01)
    assert found.trust(SHAPE) == pytest.approx(worst, rel=0.01)
    assert found.trust(SHAPE) > 2 * found.trust()


# --- what is refused ---------------------------------------------------------------------------

GOOD = [(50, 50), (250, 55), (245, 350), (40, 340)]


@pytest.mark.parametrize(
    ("code", "clicks"),
    [
        ("corners-coincide", [GOOD[0], GOOD[1], GOOD[1], GOOD[3]]),
        ("corners-coincide", [GOOD[0], GOOD[1], GOOD[2], (GOOD[2][0] + NEAREST - 1, GOOD[2][1])]),
        ("corners-on-a-line", [(50, 50), (100, 101), (150, 150), (300, 50)]),
        ("corners-on-a-line", [(50, 50), (100, 100), (150, 150), (200, 200)]),
        ("corners-dented", [(50, 50), (300, 50), (170, 300), (170, 150)]),
        ("point-outside", [GOOD[0], GOOD[1], GOOD[2], (-1, 340)]),
        ("point-outside", [GOOD[0], GOOD[1], (245, 481), GOOD[3]]),
        ("not-points", GOOD[:3]),
        ("not-points", [*GOOD[:3], (math.nan, 3)]),
        ("not-points", [*GOOD[:3], "corner"]),
        ("not-points", None),
    ],
)
def test_corners_that_no_rectangle_has_are_refused(
    code: str, clicks: object, refused: Callable
) -> None:
    refused(code, squaring, clicks, 200, 300, SHAPE)


def test_the_corner_outside_is_named_by_its_click(refused: Callable) -> None:
    text = refused("point-outside", squaring, [GOOD[0], (400, 55), *GOOD[2:]], 200, 300, SHAPE)
    assert "Point 2" in text and "360 x 480" in text


@settings(max_examples=200)
@given(st.lists(st.tuples(st.integers(-50, 410), st.integers(-50, 530)), min_size=4, max_size=4))
def test_any_four_clicks_give_a_square_picture_or_a_sentence(clicks: list) -> None:
    try:
        found = squaring(clicks, WIDTH, LENGTH, SHAPE)
        result = found.picture(np.zeros((*SHAPE, 3), np.uint8), 3.0, found.around())
    except VeneerError:
        return
    assert result.shape == (99, 70, 3)
    assert sorted(map(tuple, found.corners)) == sorted(map(tuple, np.float64(clicks)))


def test_crossed_clicks_are_uncrossed() -> None:
    crossed = [GOOD[0], GOOD[2], GOOD[1], GOOD[3]]
    assert squaring(crossed, 200, 300, SHAPE) == squaring(GOOD, 200, 300, SHAPE)


def test_sizes_that_the_corners_contradict_are_refused(refused: Callable) -> None:
    refused("not-that-rectangle", squaring, GOOD, 200, 3000, SHAPE)
    refused("not-that-rectangle", squaring, GOOD, 200, 200 / 3, SHAPE)


@pytest.mark.parametrize("sizes", [(0, 300), (200, -1), (math.inf, 300), ("a", 300)])
def test_sizes_must_be_sizes(sizes: tuple) -> None:
    with pytest.raises(VeneerError):
        squaring(GOOD, *sizes, SHAPE)


def test_a_horizon_in_the_picture_is_refused(refused: Callable) -> None:
    clicks = corners_of(camera(65, 0, 0, far=600))
    refused("too-slanted", squared, photograph(SLANTED), clicks, WIDTH, LENGTH, 1.0, whole=True)
    refused("too-slanted", squaring(clicks, WIDTH, LENGTH, SHAPE).trust, SHAPE)
    refused("too-slanted", squared, photograph(SLANTED), clicks, WIDTH, LENGTH, 1.0, margin=2000)


def test_a_result_too_large_is_refused_before_it_is_made(refused: Callable) -> None:
    refused("squared-too-large", squared, photograph(SLANTED), GOOD, 20000, 30000, 0.5)


# --- scale from two points ---------------------------------------------------------------------


def test_two_points_give_the_scale() -> None:
    assert scale_between((10, 20), (310, 420), 250.0, SHAPE) == 0.5
    assert scale_between((310, 420), (10, 20), 250.0) == 0.5


def test_two_points_that_give_no_scale_are_refused(refused: Callable) -> None:
    refused("points-too-near", scale_between, (10, 20), (20, 30), 250.0)
    refused("points-too-near", scale_between, (10, 20), (10, 20), 250.0)
    refused("point-outside", scale_between, (10, 20), (10, 481), 250.0, SHAPE)
    refused("not-points", scale_between, (10, 20), (math.inf, 30), 250.0)
    refused("not-points", scale_between, (10, 20), 7, 250.0)
    refused("out-of-range", scale_between, (10, 20), (310, 420), 0)
    refused("out-of-range", scale_between, (10, 20), (40, 20), 5000.0)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Tops side by side, and what is drawn over a leaf."""

import numpy as np
import pytest
from shapely.geometry import box as area

from veneerwb.core import Placement, Stock, Top, radial, sawn_bundle
from veneerwb.core.colour import decode, light_to_lab
from veneerwb.core.raster import Frame
from veneerwb.paint import ground
from veneerwb.paint.gallery import SHARE, filling, picture_side, pictured, rows_of
from veneerwb.paint.ink import begin, image_of
from veneerwb.paint.picture import picture
from veneerwb.paint.qt import to_pixels

NONE = -np.inf


@pytest.fixture(scope="module")
def bundle():
    return sawn_bundle(leaves=4, width=120, length=300, mm_per_px=1.0, seed=3, knots=0)


def test_a_picture_is_the_true_top(bundle):
    laid = radial(bundle, Top.round(100), 4, placement=Placement(60, 100, 90))
    seen = to_pixels(pictured(laid, 206))[..., :3].astype(float)
    true = picture(laid, SHARE * 206 / 50)[..., :3].astype(float)  # 200 pixels
    lost = (len(seen) - len(true)) // 2
    inner = seen[lost : lost + len(true), lost : lost + len(true)]
    middle = slice(len(true) // 4, 3 * len(true) // 4)
    assert np.abs(inner - true)[middle, middle].mean() < 1.0


def test_the_ramp_grows_lighter_all_the_way():
    lab = light_to_lab(decode(ground.shade(np.linspace(0, 1, 50)) / 255.0))
    steps = np.diff(lab[:, 0])
    assert steps.min() > 0.5  # who sees no colours sees the order
    assert lab[-1, 2] - lab[0, 2] > 80.0  # blue to yellow: told apart without red and green


def test_heat_is_clear_where_nothing_fits_and_lightest_at_the_best():
    scores = np.array([[NONE, 0.1, 0.2], [0.3, 0.9, NONE]])
    pixels = to_pixels(ground.heat(scores)).astype(int)
    assert (pixels[..., 3] == 0).tolist() == (~np.isfinite(scores)).tolist()
    light = np.where(pixels[..., 3] > 0, pixels[..., :3].sum(axis=2), -1)
    assert np.unravel_index(light.argmax(), light.shape) == (1, 1)
    assert light[0, 1] <= light[0, 2] < light[1, 0]


def test_heat_stands_nowhere_where_no_wedge_fits_at_all():
    assert not to_pixels(ground.heat(np.full((2, 3), NONE)))[..., 3].any()


@pytest.mark.parametrize("size", [(200, 500), (500, 200)])
def test_places_are_found_again_whichever_way_a_leaf_lies(size):
    on = ground.Ground(120.0, 300.0, size)
    assert on.lying == (size[0] > size[1])
    assert on.mm(*on.pixel(30.0, 250.0)) == pytest.approx((30.0, 250.0))
    (x0, y0), (x1, y1) = on.pixel(0, 0), on.pixel(0, 300)
    assert (x1 > x0 and y1 == pytest.approx(y0)) if on.lying else (y1 < y0 and x1 == x0)
    corners = [on.pixel(x, y) for x in (0, 120) for y in (0, 300)]
    assert all(0 <= x <= size[0] and 0 <= y <= size[1] for x, y in corners)


@pytest.mark.parametrize("size", [(220, 520), (520, 220)])
def test_scores_lie_where_their_tips_do(bundle, size):
    scores = np.full((30, 12), NONE)
    scores[25, 2] = 1.0  # 20 to 30 mm across, 250 to 260 along
    frame = Frame(0.0, 0.0, 10.0, scores.shape)
    on = ground.ground_of(bundle, size, (6, 6, 6, 6))

    def draw(painter):
        begin(painter, size)
        ground.draw_leaf(painter, on, bundle, 1)
        ground.draw_heat(painter, on, ground.heat(scores), frame)

    drawn = to_pixels(image_of(size, draw)).astype(int)
    yellow = np.argwhere(drawn[..., 0] - drawn[..., 2] > 60)
    assert len(yellow)
    places = [on.mm(column + 0.5, row + 0.5) for row, column in yellow]
    assert np.mean(places, axis=0) == pytest.approx((25.0, 255.0), abs=2.0)


def test_a_stock_has_a_plain_leaf_and_cuts_on_it():
    on = ground.ground_of(Stock(120, 300, 4, 0.6), (220, 520), (6, 6, 6, 6))

    def draw(painter):
        ground.draw_leaf(painter, on, Stock(120, 300, 4, 0.6), 1)
        ground.draw_cuts(painter, on, [area(10, 10, 50, 90)], [0], ["1"])

    pixels = to_pixels(image_of((220, 520), draw)).astype(int)
    column, row = (round(n) for n in on.pixel(14, 14))
    assert pixels[row, column, 2] > pixels[row, column, 0] + 20  # the first cut's blue
    column, row = (round(n) for n in on.pixel(80, 200))
    assert np.ptp(pixels[row, column, :3]) < 20


@pytest.mark.parametrize("count", [1, 2, 3, 6, 12])
def test_tiles_stand_side_by_side_within_their_place(count):
    for boxes, high in (
        (rows_of(count, 500.0, 116.0), None), (filling(count, (640.0, 400.0)), 400.0),
    ):  # fmt: skip
        assert len(boxes) == count
        assert all(b.x >= 0 and b.x + b.width <= (500 if high is None else 640) for b in boxes)
        if high is not None:
            assert all(b.y >= 0 and b.y + b.height <= high for b in boxes)
        for k, one in enumerate(boxes):
            assert picture_side(one.width, one.height, 2) >= 50
            for other in boxes[:k]:
                assert not area(one.x, one.y, one.x + one.width, one.y + one.height).intersects(
                    area(other.x, other.y, other.x + other.width, other.y + other.height)
                )

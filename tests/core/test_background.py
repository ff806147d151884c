# SPDX-License-Identifier: LGPL-2.1-or-later
"""The leaf found on a plain background: polygons that Pillow drew are found where they lie."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image, ImageDraw
from scipy.ndimage import gaussian_filter
from shapely.geometry import LineString, Point, Polygon, box

from veneerwb.core.errors import VeneerError
from veneerwb.core.photos import background
from veneerwb.core.photos.background import around, leaf_on_background, mask

SHAPE = (400, 300)  # rows, columns
LEAF = [(75.2, 50.4), (215.1, 45.3), (235.6, 350.2), (60.4, 360.9)]
GREY, WOOD = (214, 214, 212), (150, 110, 70)


def covered(corners: list, shape: tuple = SHAPE, fine: int = 4) -> np.ndarray:
    """The share of each pixel that lies in the polygon, drawn by Pillow `fine` times finer."""
    image = Image.new("L", (shape[1] * fine, shape[0] * fine))
    ImageDraw.Draw(image).polygon([(x * fine - 0.5, y * fine - 0.5) for x, y in corners], fill=255)
    return np.asarray(image.reduce(fine)) / 255.0


def photograph(
    corners: list = LEAF, table: tuple = GREY, wood: tuple = WOOD, shape: tuple = SHAPE,
    noise: float = 2.5, shade: float = 0.2,
) -> np.ndarray:
    """A figured leaf on a table, one side darker than the other, with noise (levels)."""
    y, x = np.indices(shape)
    figure = np.array(wood) + (12 * np.sin(x / 7 + 3 * np.sin(y / 90)))[..., None]
    part = covered(corners, shape)[..., None]
    light = 1 + shade * (x / shape[1] - 0.5)
    clean = (part * figure + (1 - part) * np.array(table)) * light[..., None]
    return bytes_of(clean + noise * np.random.default_rng(1).standard_normal(clean.shape))


def bytes_of(values: np.ndarray) -> np.ndarray:
    return np.clip(np.rint(values), 0, 255).astype(np.uint8)


def apart(found: Polygon, corners: list) -> float:
    """The furthest that either outline runs from the other, in pixels."""
    one, other = LineString(found.exterior.coords), LineString([*corners, corners[0]])
    ways = np.linspace(0, 1, 1000)
    return max(
        max(a.distance(b.interpolate(w, normalized=True)) for w in ways)
        for a, b in ((one, other), (other, one))
    )


def refused(code: str, pixels: np.ndarray) -> None:
    with pytest.raises(VeneerError) as caught:
        leaf_on_background(pixels)
    text = str(caught.value)
    assert caught.value.code == code
    assert text.endswith(".") and "{" not in text


@pytest.mark.parametrize(
    ("table", "wood"),
    [
        (GREY, WOOD),
        ((20, 20, 22), WOOD),
        ((60, 110, 70), WOOD),
        ((40, 60, 140), WOOD),
        ((235, 235, 233), (225, 205, 170)),  # maple on white
        ((235, 235, 233), (45, 40, 38)),  # ebony on white
        ((25, 25, 25), (80, 55, 40)),  # walnut on black
        (GREY, (120, 120, 119)),  # grey on grey: darkness alone tells them apart
    ],
)
def test_the_leaf_is_found_on_a_table_of_any_colour(table: tuple, wood: tuple) -> None:
    found = leaf_on_background(photograph(table=table, wood=wood))
    assert apart(found, LEAF) < 1.5
    assert found.area == pytest.approx(Polygon(LEAF).area, rel=0.01)
    assert found.is_valid and len(found.exterior.coords) < 20


def test_without_simplifying_or_noise_the_outline_is_good_to_part_of_a_pixel() -> None:
    found = leaf_on_background(photograph(noise=0, shade=0), tolerance=0.05)
    line = LineString([*LEAF, LEAF[0]])
    off = [line.distance(Point(p)) for p in found.exterior.coords]
    assert np.sqrt(np.mean(np.square(off))) < 0.25
    assert max(off) < 1.0


@settings(max_examples=12)
@given(st.lists(st.tuples(st.floats(-25, 25), st.floats(-25, 25)), min_size=4, max_size=4))
def test_any_four_sided_leaf_is_found(moves: list) -> None:
    corners = [(x + dx, y + dy) for (x, y), (dx, dy) in zip(LEAF, moves)]
    assert apart(leaf_on_background(photograph(corners)), corners) < 1.6


def test_turning_the_picture_turns_the_outline() -> None:
    pixels = photograph()
    found = leaf_on_background(np.ascontiguousarray(np.rot90(pixels)))
    turned = [(y, SHAPE[1] - x) for x, y in LEAF]
    assert apart(found, turned) < 1.5


def test_a_large_picture_is_searched_in_blocks_and_found_in_its_own_pixels(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(background, "WORKING", SHAPE[0] * SHAPE[1] / 9.0)
    found = leaf_on_background(photograph(), tolerance=1.0)
    assert apart(found, LEAF) < 3.5
    assert found.area == pytest.approx(Polygon(LEAF).area, rel=0.01)


@pytest.mark.parametrize("depth", [0.15, 0.3])  # sRGB: the deeper takes half of the light
def test_a_shadow_beside_the_leaf_is_not_the_leaf(depth: float) -> None:
    part = covered(LEAF)
    cast = depth * np.roll(gaussian_filter(part, 3), (6, 6), (0, 1)) * (1 - part)
    found = leaf_on_background(bytes_of(photograph() * (1 - cast[..., None])))
    assert apart(found, LEAF) < 2.5
    assert found.area == pytest.approx(Polygon(LEAF).area, rel=0.01)


def test_knots_of_the_tables_colour_cards_and_cords_are_told_from_the_leaf() -> None:
    pixels = photograph().copy()
    y, x = np.indices(SHAPE)
    pixels[(y - 200) ** 2 + (x - 150) ** 2 < 200] = GREY  # a hole
    pixels[375:385, 10:40] = 30  # a pencil
    pixels[150:250, 260:285] = (120, 60, 60)  # a card
    pixels[198:201, 220:265] = (40, 40, 40)  # a cord from the leaf to the card
    found = leaf_on_background(pixels)
    assert apart(found, LEAF) < 6.5  # the cord leaves a stump
    assert found.area == pytest.approx(Polygon(LEAF).area, rel=0.01)
    assert not found.interiors and found.contains(Point(150, 200))


def test_a_pale_edge_belongs_to_the_leaf() -> None:
    pixels = photograph().astype(int)
    sapwood = (covered(LEAF) > 0.5) & (np.indices(SHAPE)[1] < 95)
    pixels[sapwood] += (50, 70, 90)
    assert apart(leaf_on_background(bytes_of(pixels)), LEAF) < 3.0


def test_a_leaf_that_runs_out_of_the_picture_ends_at_its_edge() -> None:
    found = leaf_on_background(photograph([(75, -20), (225, -20), (230, 350), (65, 360)]))
    left = 75 - 10 * 20 / 380
    assert apart(found, [(left, 0), (225.3, 0), (230, 350), (65, 360)]) < 1.5
    assert found.bounds[1] == pytest.approx(0.0, abs=0.5)


# --- what is refused ---------------------------------------------------------------------------


def test_an_empty_table_and_a_black_frame_show_no_leaf() -> None:
    refused("no-leaf-found", photograph([(0, 0), (1, 0), (1, 1)]))
    refused("no-leaf-found", np.zeros((*SHAPE, 3), np.uint8))
    refused("no-leaf-found", np.full((*SHAPE, 3), 255, np.uint8))


def test_a_speck_is_no_leaf() -> None:
    refused("no-leaf-found", photograph([(100, 100), (130, 100), (130, 130), (100, 130)]))


def test_a_leaf_of_the_tables_colour_is_not_guessed_at() -> None:
    refused("no-leaf-found", photograph(noise=0, shade=0, table=GREY, wood=GREY)[:, :1].repeat(
        SHAPE[1], axis=1
    ))


def test_a_background_that_is_not_plain_is_refused() -> None:
    speckle = np.random.default_rng(1).integers(0, 256, (*SHAPE, 3), dtype=np.uint8)
    refused("background-not-plain", speckle)
    y, x = np.indices(SHAPE)
    part = covered(LEAF)[..., None]
    board = np.array(WOOD) + (35 * np.sin(y / 9 + 3 * np.sin(x / 60)))[..., None]
    refused("background-not-plain", bytes_of((1 - part) * board + part * np.array(GREY)))


def test_a_leaf_that_fills_the_picture_leaves_no_background_to_find_it_by() -> None:
    refused("background-not-plain", photograph([(-20, 20), (320, 20), (320, 380), (-20, 380)]))


def test_a_littered_table_is_refused() -> None:
    pixels = photograph().copy()
    for top in range(20, 380, 40):  # boards all down both sides, clear of the border
        pixels[top : top + 36, 12:50] = (90, 30, 30)
        pixels[top : top + 36, 245:288] = (90, 30, 30)
    refused("background-not-plain", pixels)


def test_a_picture_too_small_is_refused() -> None:
    refused("picture-too-small", np.zeros((10, 300, 3), np.uint8))


# --- areas -------------------------------------------------------------------------------------


def test_the_background_is_what_lies_clear_of_the_leaf() -> None:
    leaf = box(100, 100, 200, 300)
    area = around(leaf, SHAPE, clear=20)
    assert area.distance(leaf) == pytest.approx(20, abs=0.2)
    assert area.bounds == (0, 0, 300, 400)


def test_a_mask_has_the_areas_pixels_and_not_its_holes() -> None:
    area = box(20, 30, 120, 330).difference(box(40, 100, 80, 200)).union(box(200, 10, 250, 60))
    got = mask(area, SHAPE)
    assert got.shape == SHAPE and got.dtype == bool
    y, x = np.indices(SHAPE) + 0.5
    edge = area.boundary
    for row, column in np.random.default_rng(1).integers(0, SHAPE, (300, 2)):
        centre = Point(x[row, column], y[row, column])
        if edge.distance(centre) > 1.0:
            assert got[row, column] == area.contains(centre)


@pytest.mark.parametrize("mirrored", [False, True])
def test_two_pixels_that_touch_at_a_corner_are_two_outlines(mirrored: bool) -> None:
    field = np.zeros((6, 6))
    field[2, 2] = field[3, 3] = 1.0
    found = background._contours(field[:, ::-1] if mirrored else field)
    assert sorted(p.area for p in found) == pytest.approx([0.5, 0.5])  # diamonds of half a pixel
    centres = {(2.5, 2.5), (3.5, 3.5)} if not mirrored else {(3.5, 2.5), (2.5, 3.5)}
    assert {tuple(p.centroid.coords[0]) for p in found} == centres

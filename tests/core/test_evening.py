# SPDX-License-Identifier: LGPL-2.1-or-later
"""Evening: photographs under known lights are brought back to one light, and back again."""

from __future__ import annotations

import dataclasses
from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon, box

from veneerwb.core.log.sawn import sawn_bundle
from veneerwb.core.photos import evening as module
from veneerwb.core.photos.background import around, leaf_on_background
from veneerwb.core.photos.evening import Evening, evened, evenings, measured

PATCH = box(5, 5, 55, 195)


def linear(levels: np.ndarray) -> np.ndarray:
    """sRGB levels as light, by the standard's own formula (IEC 61966-2-1)."""
    v = np.asarray(levels, float) / 255
    return np.where(v <= 0.04045, v / 12.92, ((v + 0.055) / 1.055) ** 2.4)


def levels(light: np.ndarray) -> np.ndarray:
    v = np.asarray(light, float)
    curved = 1.055 * np.maximum(v, 0) ** (1 / 2.4) - 0.055
    return 255 * np.where(v <= 0.0031308, 12.92 * v, curved)


def scene(table: tuple = (150, 148, 140), seed: int = 1, noise: float = 2.0) -> np.ndarray:
    """Light (float) of a table on the left and a figured leaf on the right."""
    rng = np.random.default_rng(seed)
    y, x = np.indices((200, 160))
    leaf = np.array((140, 100, 60)) + (25 * np.sin(x / 4 + 2 * np.sin(y / 30)))[..., None]
    picture = np.where((x < 60)[..., None], table, leaf)
    return linear(np.clip(picture + noise * rng.standard_normal(picture.shape), 0, 255))


def shot(light: np.ndarray, gains: tuple = (1, 1, 1)) -> np.ndarray:
    return np.rint(np.clip(levels(np.clip(light * gains, 0, 1)), 0, 255)).astype(np.uint8)


@settings(max_examples=25)
@given(st.lists(st.floats(0.6, 1.5), min_size=3, max_size=3))
def test_the_gains_of_the_light_are_found_and_taken_out(gains: list) -> None:
    light = scene()
    plain, lit = shot(light), shot(light, tuple(gains))
    first, second = evenings(
        [measured(plain, PATCH), measured(lit, PATCH)], target=measured(plain, PATCH).level
    )
    np.testing.assert_allclose(first.gains, 1.0, atol=1e-9)
    np.testing.assert_allclose(second.gains, 1 / np.array(gains), rtol=0.01)
    apart = np.abs(evened(lit, second).astype(int) - plain)
    apart = apart[(lit < 255).all(axis=-1)]
    assert apart.max() <= 3 and apart.mean() < 0.7


def test_a_bundle_is_brought_to_its_own_middle_and_one_bad_photo_does_not_move_it() -> None:
    light = scene()
    photos = [shot(light, (g, g, g)) for g in (0.9, 1.0, 1.1, 2.0, 0.95)]
    found = evenings([measured(p, PATCH) for p in photos])
    wanted = [1 / 0.9, 1.0, 1 / 1.1, 0.5, 1 / 0.95]
    np.testing.assert_allclose([e.exposure for e in found], wanted, rtol=0.01)
    tables = [evened(p, e)[:, :60].mean(axis=(0, 1)) for p, e in zip(photos, found)]
    assert np.ptp(tables, axis=0).max() < 1.0


def test_a_grey_patch_becomes_grey_and_stays_as_light() -> None:
    photos = [shot(scene((160, 140, 110)), g) for g in ((1.2, 1, 0.8), (1, 1, 1), (0.9, 1, 1.2))]
    found = evenings([measured(p, PATCH) for p in photos], grey=True)
    as_light = linear(np.array([160, 140, 110])) @ (0.2126, 0.7152, 0.0722)  # IEC 61966-2-1
    for pixels, evening in zip(photos, found):
        table = np.median(evened(pixels, evening)[:, :60].reshape(-1, 3), axis=0)
        assert np.ptp(table) <= 1
        assert linear(table).mean() == pytest.approx(as_light, rel=0.03)


def test_the_light_is_measured_to_a_part_of_a_level() -> None:
    # The light between two levels is told by how many pixels have each of them.
    pixels = np.full((200, 160, 3), 150, np.uint8)
    pixels[::4] = 151  # a quarter at 151: the middle of the grouped values is 150 - 1/2 + 2/3
    middle = linear(150 - 0.5 + 2 / 3)
    np.testing.assert_allclose(measured(pixels, PATCH).level, middle, rtol=2e-4)
    assert abs(linear(150) / middle - 1) > 2e-3  # a whole level would not do


def test_of_a_large_photo_a_part_of_the_rows_and_columns_is_enough(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    pixels, patch = shot(scene()), box(5, 100, 55, 195)
    pixels[:90] = 30  # measured in the wrong place, this would count
    every = measured(pixels, patch)
    monkeypatch.setattr(module, "_SAMPLES", 400)
    np.testing.assert_allclose(measured(pixels, patch).level, every.level, rtol=0.01)
    assert measured(pixels, patch).counts == every.counts


def test_specks_and_a_shadow_over_a_third_of_the_patch_do_not_move_it() -> None:
    clean = shot(scene())
    spoilt = clean.copy()
    spoilt[::7, :60] = 255
    spoilt[1::7, :60] = 20
    ours = evenings([measured(clean, PATCH), measured(spoilt, PATCH)])
    np.testing.assert_allclose(ours[1].gains, ours[0].gains, rtol=0.02)


@settings(max_examples=40)
@given(st.lists(st.floats(0.5, 2.0), min_size=3, max_size=3))
def test_evening_is_undone_to_a_level_where_nothing_was_clipped(gains: list) -> None:
    ramp = np.arange(256, dtype=np.uint8)[:, None, None].repeat(3, axis=2)
    there = evened(ramp, Evening(tuple(gains)))
    back = evened(there, Evening(tuple(gains)).inverse())
    kept = linear(ramp) * gains <= 1.0
    assert np.abs(back.astype(int) - ramp)[kept].max() <= 1


def test_no_gain_changes_no_level() -> None:
    ramp = np.arange(256, dtype=np.uint8)[:, None, None].repeat(3, axis=2)
    np.testing.assert_array_equal(evened(ramp, Evening((1.0, 1.0, 1.0))), ramp)


def test_the_photo_itself_is_left_alone() -> None:
    pixels = shot(scene())
    pixels.flags.writeable = False
    before = pixels.copy()
    result = evened(pixels, Evening((1.2, 1.1, 0.9)))
    np.testing.assert_array_equal(pixels, before)
    assert result.flags.writeable and result.flags.c_contiguous and result.dtype == np.uint8


def test_an_evening_is_a_value() -> None:
    assert Evening((1.0, 1.0, 1.0)) == Evening((1.0, 1.0, 1.0))
    with pytest.raises(dataclasses.FrozenInstanceError):
        Evening((1.0, 1.0, 1.0)).gains = (2.0, 2.0, 2.0)


# --- what is reported --------------------------------------------------------------------------


def test_what_is_burnt_and_what_is_clipped_are_told_apart_and_counted() -> None:
    pixels = np.full((200, 160, 3), 120, np.uint8)
    pixels[:20, 60:] = 255  # burnt: 2000 of 32000
    pixels[20:60, 60:] = 240  # beyond full scale once brightened: 4000
    pixels[:, 159, 2] = 10
    light = measured(pixels, PATCH)
    found, = evenings([light], target=np.array(light.level) * 1.5)
    np.testing.assert_allclose(found.burnt, [0.0625, 0.0625, 0.0625 - 20 / 32000])
    np.testing.assert_allclose(found.clipped, [0.125, 0.125, 0.125 - 40 / 32000])
    after = evened(pixels, found)
    np.testing.assert_allclose((after == 255).mean(axis=(0, 1)), np.add(found.burnt, found.clipped))
    assert "12 % of it is now brighter" in found.text and "6 % of it was too bright" in found.text


def test_an_evening_says_what_it_did() -> None:
    assert Evening((1.2, 1.2, 1.2), name="leaf 7.jpg").text == "leaf 7.jpg was made 20 % lighter."
    assert Evening((1.0, 1.0, 1.0)).text == "The photo is left as it is."
    darker = Evening((0.9, 0.8, 0.7)).text
    assert "19 % darker" in darker and "29 % warmer" in darker
    assert "cooler" in Evening((0.9, 1.0, 1.1)).text


def test_clipping_too_rare_for_a_percent_is_still_said() -> None:
    assert "< 0.1 % of it is now brighter" in Evening((1, 1, 1), clipped=(1e-5, 0, 0)).text


# --- what is refused ---------------------------------------------------------------------------


def test_a_black_frame_is_refused_by_name(refused: Callable) -> None:
    text = refused("patch-black", measured, np.zeros((200, 160, 3), np.uint8), PATCH, "leaf 3.jpg")
    assert "leaf 3.jpg" in text


def test_a_burnt_patch_is_refused(refused: Callable) -> None:
    pixels = np.full((200, 160, 3), 120, np.uint8)
    pixels[..., 1] = 255
    refused("patch-burnt", measured, pixels, PATCH)


@pytest.mark.parametrize(
    "area", [box(100, 100, 170, 150), box(-9, 5, 50, 50), box(500, 500, 600, 600), Polygon()]
)
def test_a_patch_outside_the_picture_is_refused(area: Polygon, refused: Callable) -> None:
    refused("patch-outside", measured, shot(scene()), area)


def test_a_patch_drawn_across_itself_is_measured_where_it_has_an_area(refused: Callable) -> None:
    pixels = shot(scene())
    crossed = Polygon([(5, 5), (55, 195), (55, 5), (5, 195)])
    np.testing.assert_allclose(
        measured(pixels, crossed).level, measured(pixels, PATCH).level, rtol=0.02
    )
    refused("patch-outside", measured, pixels, Polygon([(5, 5), (400, 195), (400, 5), (5, 195)]))


def test_a_patch_too_small_is_refused(refused: Callable) -> None:
    refused("patch-too-small", measured, shot(scene()), box(10, 10, 15, 15))


def test_a_patch_full_of_figure_is_refused(refused: Callable) -> None:
    refused("patch-figured", measured, shot(scene()), box(70, 10, 150, 190))
    refused("patch-figured", measured, shot(scene()), box(30, 10, 95, 190))


def test_a_table_lit_from_one_side_is_measured_all_the_same() -> None:
    lamp = np.linspace(0.6, 1.2, 160)[None, :, None]
    table = linear(np.array([150, 148, 140])) * np.ones((200, 1, 1))
    found = measured(shot(table * lamp), box(0, 0, 160, 200))
    np.testing.assert_allclose(found.level, 0.9 * table[0, 0], rtol=0.02)


@pytest.mark.parametrize("figure", ["cathedral", "stripe", "burl", "crotch"])
def test_a_whole_leaf_is_no_patch(figure: str, refused: Callable) -> None:
    bundle = sawn_bundle(1, 200, 400, mm_per_px=1.0, figure=figure)
    refused("patch-figured", measured, bundle.leaves[0].photo, box(0, 0, 200, 400))


def test_a_photo_of_something_else_is_refused_by_name(refused: Callable) -> None:
    good = shot(scene())
    dark = shot(scene(), (0.1, 0.1, 0.1))
    lights = [measured(good, PATCH, "a"), measured(good, PATCH, "b"), measured(dark, PATCH, "c")]
    assert refused("light-too-far-off", evenings, lights).startswith("c ")
    lights = [measured(dark, PATCH, "d"), measured(dark, PATCH, "e"), measured(good, PATCH, "f")]
    assert refused("light-too-far-off", evenings, lights).startswith("f ")


def test_no_photos_and_no_light_are_refused(refused: Callable) -> None:
    refused("no-photos-to-even", evenings, [])
    lights = [measured(shot(scene()), PATCH)]
    for target in [(0, 0.5, 0.5), (0.5, 0.5), (0.5, 0.5, 2.0), (0.5, 0.5, float("nan"))]:
        refused("no-such-light", evenings, lights, target=target)


# --- with the leaf found -----------------------------------------------------------------------


def test_a_bundle_is_evened_from_its_background() -> None:
    bundle = sawn_bundle(3, 120, 240, mm_per_px=1.0)
    lit = []
    for leaf, gains in zip(bundle.leaves, [(1.15, 1.1, 1.0), (1, 1, 1), (0.85, 0.9, 0.95)]):
        photo = np.full((300, 180, 3), (180, 180, 178), np.uint8)
        photo[30:270, 30:150] = leaf.photo
        lit.append(shot(linear(photo), gains))
    areas = [around(leaf_on_background(p), p.shape, clear=5) for p in lit]
    found = evenings([measured(p, area) for p, area in zip(lit, areas)])
    same = [evened(p, e) for p, e in zip(lit, found)]
    wanted = bundle.leaves[0].photo.astype(int)
    assert np.abs(same[0][30:270, 30:150].astype(int) - wanted).mean() < 1.0
    assert np.ptp([p[5:15, 5:15].mean(axis=(0, 1)) for p in same], axis=0).max() <= 1.0

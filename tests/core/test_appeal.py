# SPDX-License-Identifier: LGPL-2.1-or-later
"""Measures of a pattern: on pictures whose values are known, and on the generated figures."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from veneerwb.core import Bundle, Leaf, Motion, Placement, Side, Top, VeneerError, radial
from veneerwb.core.appeal import UNITS, Appeal, appraised, cell_for, in_words, maps_of, weighed
from veneerwb.core.appeal.maps import SEEN_AS_ONE, Stopped
from veneerwb.core.appeal.words import BANDS
from veneerwb.core.colour import srgb_to_lab
from veneerwb.core.photos.reading import Photo

LIGHT, DARK = (220, 190, 150), (120, 80, 50)


def bundle_of(*pictures: np.ndarray, mm_per_px: float = 1.0, back: str = "next") -> Bundle:
    leaves = (Leaf(k, Side(Photo.of(p, mm_per_px))) for k, p in enumerate(pictures, start=1))
    return Bundle(tuple(leaves), 0.6, back)


def plain(colour=LIGHT, rows: int = 400, columns: int = 300) -> np.ndarray:
    return np.full((rows, columns, 3), colour, np.uint8)


def lined(angle: float, rows: int = 400, columns: int = 300) -> np.ndarray:
    """Fine lines that run in that direction (degrees from x, counter-clockwise)."""
    y, x = -np.mgrid[:rows, :columns][0], np.mgrid[:rows, :columns][1]
    across = x * np.sin(np.radians(angle)) - y * np.cos(np.radians(angle))
    tone = 150 + 40 * np.sin(2 * np.pi * across / 6)
    return np.repeat(tone[..., None], 3, axis=2).astype(np.uint8)


def measured(bundle: Bundle, placement: Placement, ways: int = 4, diameter: float = 200.0, **kw):
    layout = radial(bundle, Top.round(diameter), ways, placement=placement, **kw)
    return appraised(layout, maps_of(bundle))


def test_a_plain_leaf_has_no_contrast_no_variety_and_no_seams():
    found = measured(bundle_of(*[plain()] * 4), Placement(150, 100))
    assert found.contrast == pytest.approx(0, abs=0.02)
    assert (found.variety, found.seams, found.closing) == pytest.approx((0, 0, 0), abs=0.02)


def test_contrast_is_half_the_distance_between_two_halves():
    half = plain()
    half[:, 150:] = DARK
    # The axis runs along the border of light and dark, far longer than the blur is wide.
    found = measured(bundle_of(*[half] * 4), Placement(150, 20), diameter=700.0)
    light, dark = srgb_to_lab(np.array([LIGHT, DARK], np.uint8))
    assert found.contrast == pytest.approx(np.linalg.norm(light - dark) / 2, rel=0.06)


def test_bars_narrower_than_the_eye_parts_have_no_contrast():
    bars = plain()
    bars[:, (np.arange(300) // 3) % 2 == 0] = DARK
    assert 5 * SEEN_AS_ONE > 3 * 2
    assert measured(bundle_of(*[bars] * 4), Placement(150, 100)).contrast < 0.5


def test_grain_that_runs_one_way_has_no_variety_whatever_the_way():
    for angle in (0, 35, 90, 140):
        assert measured(bundle_of(*[lined(angle)] * 4), Placement(150, 150)).variety < 1.0


def test_grain_at_right_angles_in_two_halves_has_the_most_variety():
    half = np.concatenate([lined(45)[:, :150], lined(-45)[:, 150:]], axis=1)
    found = measured(bundle_of(*[half] * 4), Placement(150, 20), diameter=700.0)
    # Half of the cells each way: R = 0, s = sqrt(2) / 2 = 40.5 degrees, times the clarity.
    assert 0.75 * 40.5 < found.variety <= 40.51


def test_a_book_ring_shows_a_difference_only_where_different_surfaces_meet():
    tones = [plain(tuple(c - 6 * k for c in LIGHT)) for k in range(4)]
    found = measured(bundle_of(*tones), Placement(150, 100))
    steps = [radial(bundle_of(*tones), Top.round(200), 4).seams[k].step for k in range(4)]
    assert sorted(steps) == [0, 0, 2, 2]
    # 4 ways: seams on 0, 2, 0 surfaces, and the closing one on 2.
    assert found.closing == pytest.approx(2 * 3 * found.seams / 2, rel=0.2)
    assert found.closing > 2


def test_measures_follow_the_registers():
    half = plain()
    half[:, 150:] = DARK
    shifted = np.roll(half, 30, axis=1)
    shifted[:, :30] = LIGHT
    one = bundle_of(*[half] * 4, back="own")
    moved = tuple(
        replace(leaf, face=Side(Photo.of(shifted, 1.0), Motion(dx=30), Motion(dx=30)), back=None)
        for leaf in one.leaves[1:]
    )
    other = Bundle((one.leaves[0], *moved), 0.6, "own")
    spot = Placement(150, 100)
    assert measured(other, spot).contrast == pytest.approx(measured(one, spot).contrast, rel=0.01)


def test_weights_are_named_and_checked():
    found = measured(bundle_of(*[plain()] * 4), Placement(150, 100))
    some = replace(found, contrast=10.0, variety=5.0, seams=5.0, closing=5.0)
    assert some.score({"contrast": 2, "variety": 0, "seams": 1, "closing": 0}) == pytest.approx(1.0)
    assert set(weighed(None)) == set(UNITS)
    for wrong in ({"beauty": 1}, {"contrast": -1}, {"contrast": "much"}, {"seams": float("nan")}):
        with pytest.raises(VeneerError):
            weighed(wrong)


def test_maps_tell_how_far_they_are_and_can_be_stopped():
    bundle, seen = bundle_of(*[plain()] * 3), []
    maps_of(bundle, progress=lambda done, total, text: seen.append((done, total)))
    assert seen == [(0, 3), (1, 3), (2, 3), (3, 3)]
    with pytest.raises(Stopped):
        maps_of(bundle, progress=lambda done, total, text: done < 1)


def test_small_tops_are_looked_at_on_small_cells():
    assert [cell_for(reach) for reach in (600, 150, 100)] == [4, 4, 2]


def test_measures_are_told_in_words():
    strong, quiet = (
        in_words(Appeal(*values)) for values in ((12.0, 9.5, 0.4, 5.0), (1.0, 0.2, 2.5, 0.3))
    )
    assert [str(said) for said in strong] == [
        "strong colour change", "lively grain", "quiet seams", "closing seam shows clearly",
    ]
    assert [str(said) for said in quiet] == ["little colour change", "even grain", "seams show"]
    # As with errors and findings a screen finds the case by its code and has the figure.
    assert [said.code for said in quiet] == ["little-contrast", "little-variety", "clear-seams"]
    assert strong[3].values == {"closing": 5.0}


def test_the_words_for_more_are_never_those_for_less():
    codes = [code for _, words in BANDS.values() for code, _ in words]
    assert len(codes) == len(set(codes))
    for name, (limits, words) in BANDS.items():
        assert len(words) == len(limits) + 1 == len({text for _, text in words})
        assert list(limits) == sorted(limits)
        at = Appeal(**{**dict.fromkeys(BANDS, 0.0), name: limits[-1]})  # a limit is the next band
        assert words[-1][0] in {said.code for said in in_words(at)}


def test_pieces_that_are_not_alike_count_by_their_area():
    """A pentagon in 5 ways from leaves of which one is dark: a fifth of what is seen."""
    leaves = [plain()] * 4 + [plain(DARK)]
    found = measured_top(bundle_of(*leaves, back="own"), Top.polygon(5, 160), 5)
    light, dark = srgb_to_lab(np.array([LIGHT, DARK], np.uint8))
    assert found.contrast == pytest.approx(0.4 * np.linalg.norm(light - dark), rel=0.03)


def measured_top(bundle: Bundle, top: Top, ways: int):
    layout = radial(bundle, top, ways, "slip", placement=Placement(150, 150, 70))
    return appraised(layout, maps_of(bundle))

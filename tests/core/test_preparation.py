# SPDX-License-Identifier: LGPL-2.1-or-later
"""Ways to prepare a photograph that cannot be are refused before any is read."""

from dataclasses import replace

import numpy as np
import pytest

from veneerwb.core import Leaf, Side, VeneerError
from veneerwb.core.photos.preparation import check_leaf_size, made
from veneerwb.core.photos.preparing import Preparation, prepared
from veneerwb.core.photos.reading import Photo
from veneerwb.core.sequence.grid import check_scale

CORNERS = ((52.0, 395.0), (250.0, 380.0), (228.0, 40.0), (80.0, 30.0))


@pytest.mark.parametrize(
    ("values", "code"),
    [
        ({}, "scale-not-said"),
        ({"mm_per_px": 1.0, "points": ((0, 0), (50, 50)), "distance": 9.0}, "scale-not-said"),
        ({"corners": CORNERS}, "scale-not-said"),
        ({"rectangle": (1, 2)}, "scale-not-said"),
        ({"distance": 3.0}, "scale-not-said"),
        ({"mm_per_px": 0.0}, "out-of-range"),
        ({"mm_per_px": 1.0, "turn": 45}, "not-a-quarter-turn"),
        ({"mm_per_px": 1.0, "margin": -3.0}, "out-of-range"),
        ({"mm_per_px": 1.0, "outline": ((1, 1), (2, 2))}, "too-few-clicks"),
        ({"mm_per_px": 1.0, "outline": ((1, 1), (2, 2), (3, 4)), "find": True}, "found-or-drawn"),
        ({"mm_per_px": 1.0, "light": "patch"}, "patch-or-not"),
        ({"mm_per_px": 1.0, "patch": ((1, 1), (2, 2), (3, 1))}, "patch-or-not"),
        ({"mm_per_px": 1.0, "light": "sun"}, "unknown-choice"),
        ({"mm_per_px": 1.0, "light": "background"}, "no-background"),
        ({"mm_per_px": 1.0, "outline": "here"}, "not-points"),
        ({"rectangle": (1.0, -2.0), "corners": CORNERS}, "out-of-range"),
    ],
)
def test_ways_that_cannot_be_are_refused(values, code):
    with pytest.raises(VeneerError) as caught:
        Preparation(**values)
    assert caught.value.code == code


def test_lists_that_do_not_match_are_refused():
    paths, how = ["leaf 1.png", "leaf 2.png"], Preparation(mm_per_px=1.0)
    for wrong, code in (
        ([how], "as-many-ways"), ([how, replace(how, light="background", find=True)], "one-light"),
    ):
        with pytest.raises(VeneerError) as caught:
            prepared(paths, wrong)
        assert caught.value.code == code
    for nothing in ([], paths[0]):
        with pytest.raises(VeneerError) as caught:
            prepared(nothing, how)
        assert caught.value.code == "no-photos-given"


@pytest.mark.parametrize(("width", "length", "fits"), [
    (2800.0, 4200.0, True), (1200.0, 7900.0, True),
    (3000.0, 9000.0, False), (1500.0, 9000.0, False), (3000.0, 7000.0, False),
])
def test_a_scale_ten_times_too_large_is_refused_wherever_it_is_asked(width, length, fits):
    """A leaf of 0.3 x 0.9 m would be 27 m2; one of 4 m is photographed on some 2.8 x 4.2 m."""
    pixels = np.zeros((round(length / 10), round(width / 10), 3), np.uint8)
    for check, thing, code in (
        (check_leaf_size, (0.0, 0.0, width, length), "leaf-too-large"),
        (check_scale, Leaf(1, Side(Photo.of(pixels, 10.0))), "scale-too-large"),
    ):
        if fits:
            check(thing)
            continue
        with pytest.raises(VeneerError) as caught:
            check(thing)
        assert caught.value.code == code


def test_a_slanting_photograph_that_shows_much_of_the_table_is_not_called_a_leaf():
    """A sheet of 0.6 x 0.4 m from 1.2 m above the table, the camera 55 degrees off straight down:
    up the picture the table runs away from it."""
    pixels = np.random.default_rng(0).integers(90, 180, (300, 400, 3)).astype(np.uint8)
    down, away = 1200.0 * np.array([np.cos(np.radians(55)), np.sin(np.radians(55))])
    sheet = []
    for x, y in ((-300, -200), (300, -200), (300, 200), (-300, 200)):
        up, far = y * down / 1200.0, 1200.0**2 / down + y * away / 1200.0
        sheet.append((200.0 + 350.0 * x / far, 150.0 - 350.0 * up / far))
    sheet = tuple(sheet)
    how = Preparation(corners=sheet, rectangle=(600.0, 400.0), beside=True, margin=None)
    with pytest.raises(VeneerError) as caught:
        made(pixels, how)
    assert caught.value.code == "shows-more-than-a-leaf" and "outline" in str(caught.value)
    drawn = made(pixels, replace(how, outline=sheet, margin=5.0))
    rows, columns = drawn.pixels.shape[:2]
    assert rows * drawn.mm_per_px < 450.0 and columns * drawn.mm_per_px < 650.0

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs that are scaled or squared up by the paper marks on them as they are prepared."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import pytest
from PIL import Image

from veneerwb.core.photos.preparation import Preparation, made
from veneerwb.core.photos.preparing import Troubles, prepared
from veneerwb.core.targets import located
from veneerwb.core.targets.scaling import PAIRS

ROUND = np.array([(-70.0, -110.0), (75.0, -105.0), (70.0, 115.0), (-75.0, 105.0)])
"""A to D on a board, mm from its middle, counter-clockwise from the lower left."""
SHAPE = (400, 300)


def camera(scale: float, tilt: float = 0.0, spin: float = 0.0) -> np.ndarray:
    """H from mm on the board to (column, row), seen from 900 mm; the board's middle in the
    picture's, its far end tilted away, spun counter-clockwise (degrees)."""
    a, c = math.radians(tilt), math.radians(spin)
    about_x = np.array([[1, 0, 0], [0, math.cos(a), 0], [0, math.sin(a), 900.0]])
    spun = np.array([[math.cos(c), -math.sin(c), 0], [math.sin(c), math.cos(c), 0], [0, 0, 1]])
    lens = np.array([
        [900 / scale, 0, SHAPE[1] / 2], [0, -900 / scale, SHAPE[0] / 2], [0, 0, 1],
    ])
    return lens @ about_x @ spun


def through(matrix: np.ndarray, places: np.ndarray) -> np.ndarray:
    seen = np.asarray(places) @ matrix[:, :2].T + matrix[:, 2]
    return seen[..., :2] / seen[..., 2:]


def photograph(matrix: np.ndarray, places: np.ndarray, printed: float = 1.0) -> np.ndarray:
    """Marks on plain wood: rings of 20 and 10 mm with an arrow above, on paper of 34 x 44 mm; 4 x 4
    samples to a pixel, a little noise. `printed`: the size they were printed at, 1 as meant."""
    fine = (np.arange(4) + 0.5) / 4
    column, row = ((np.arange(n)[:, None] + fine).ravel() for n in SHAPE[::-1])
    mm = through(np.linalg.inv(matrix), np.stack(np.meshgrid(column, row), axis=-1))
    light = np.full(mm.shape[:2], 140.0)
    for place in places:
        x, y = np.moveaxis((mm - place) / printed, -1, 0)
        r = np.hypot(x, y)
        light[(abs(x) < 17) & (y > -25) & (y < 19)] = 225.0
        light[((r > 5) & (r < 10)) | ((y > 13) & (abs(x) < 3.5 * (17.5 - y) / 4.5))] = 40.0
    light = light.reshape(SHAPE[0], 4, SHAPE[1], 4).mean(axis=(1, 3))
    light += np.random.default_rng(7).normal(0, 2, light.shape)
    return np.repeat(np.clip(light, 0, 255).astype(np.uint8)[..., None], 3, axis=2)


def clicks(matrix: np.ndarray, places: np.ndarray) -> tuple:
    """Each some 6 mm off."""
    return tuple(map(tuple, through(matrix, np.asarray(places) + (5, -3))))


def apart(places: np.ndarray, pairs: tuple[str, ...] = PAIRS) -> tuple[float, ...]:
    return tuple(math.dist(*(places["ABCD".index(one)] for one in pair)) for pair in pairs)


def test_rings_as_printed_give_the_scale_of_the_photograph() -> None:
    for scale in (0.8, 0.95):
        seen = camera(scale, spin=12)
        for count in (2, 3):
            how = Preparation(marks=clicks(seen, ROUND[:count]))
            leaf = made(photograph(seen, ROUND), how)
            print(f"{count} rings at {scale}: {leaf.mm_per_px / scale - 1:+.5f}")
            assert leaf.mm_per_px == pytest.approx(scale, rel=0.003)
            assert leaf.pixels.shape[:2] == SHAPE and leaf.notes == ()


def test_a_distance_outdoes_a_print_that_is_too_small() -> None:
    seen = camera(0.8)
    pixels, marks = photograph(seen, ROUND, 0.97), clicks(seen, ROUND[[0, 2]])
    by_rings = made(pixels, Preparation(marks=marks))
    measured = made(pixels, Preparation(marks=marks, distances=(math.dist(*ROUND[[0, 2]]),)))
    assert by_rings.mm_per_px == pytest.approx(0.8 / 0.97, rel=0.003)
    assert measured.mm_per_px == pytest.approx(0.8, rel=0.0005)


def test_a_slanted_photograph_is_said_to_be_slanted() -> None:
    seen = camera(0.8, tilt=20)
    leaf = made(photograph(seen, ROUND), Preparation(marks=clicks(seen, ROUND)))
    (said,) = leaf.notes
    assert "photograph it square on" in said


@pytest.mark.parametrize("order", [(0, 1, 2, 3), (0, 3, 2, 1), (2, 3, 0, 1)])
def test_four_marks_and_six_distances_square_up_whichever_way_round(order: tuple) -> None:
    """The picture's own up stays up and it is never mirrored, wherever A stands."""
    seen = camera(0.8, tilt=15, spin=6)
    pixels, places = photograph(seen, ROUND), ROUND[list(order)]
    how = Preparation(marks=clicks(seen, places), distances=apart(places), margin=None)
    leaf = made(pixels, how)
    s, rows = leaf.mm_per_px, len(leaf.pixels)
    # Where a mark lies on the squared picture is found on it, near where a mark of 0.8 mm/px did.
    found = [_on(leaf, place, seen) for place in places]
    lies = np.array([(one.centre[0] * s, (rows - one.centre[1]) * s) for one in found])
    off = np.subtract(apart(lies), apart(places))
    print(f"squared by six distances: at most {abs(off).max():.3f} mm off")
    assert abs(off).max() < 0.3 and leaf.notes == ()
    for one in found:
        assert one.up is not None and one.up[1] < -0.98
        assert 10 / one.radius == pytest.approx(s, rel=0.01), "rings are round and as printed"


def test_distances_that_disagree_a_little_are_said_to() -> None:
    """A misread distance that no ring would show."""
    seen, six = camera(0.8), apart(ROUND)
    how = Preparation(marks=clicks(seen, ROUND), distances=(*six[:4], six[4] + 3, six[5]))
    (said,) = made(photograph(seen, ROUND), how).notes
    assert "disagree by 0." in said


def _on(leaf: object, place: np.ndarray, seen: np.ndarray) -> object:
    """The mark at a `place` of the board on the squared picture, by its turn of 6 degrees and the
    board's middle, which lies in the middle of the marks."""
    c, s = math.cos(math.radians(6)), math.sin(math.radians(6))
    x, y = place[0] * c - place[1] * s, place[0] * s + place[1] * c
    rows, columns = leaf.pixels.shape[:2]
    return located(leaf.pixels, (columns / 2 + x / leaf.mm_per_px, rows / 2 - y / leaf.mm_per_px))


def test_what_was_clicked_or_measured_wrong_is_said(refused: Callable) -> None:
    seen = camera(0.8)
    pixels = photograph(seen, ROUND)
    four, six = clicks(seen, ROUND), apart(ROUND)
    a = four[0]

    def refuse(code: str, *marks: tuple, distances: tuple = ()) -> str:
        return refused(code, made, pixels, Preparation(marks=marks, distances=distances), "x.png")

    assert "A and B" in refuse("mark-twice", a, (a[0] + 4, a[1]))
    assert "x.png" in refuse("no-mark", a, (150.0, 200.0))
    refuse("ring-size", a, four[1], distances=(200.0,))
    refuse("distances-disagree", *four, distances=(six[0] + 20, *six[1:]))
    refuse("ring-size", *four, distances=tuple(1.2 * one for one in six))


@pytest.mark.parametrize(("count", "distances"), [
    (1, ()), (7, ()), (3, (100.0,)), (2, (1.0, 2.0)), (3, (1.0,) * 6), (0, (100.0,)),
])
def test_marks_and_distances_that_do_not_go_together_are_refused(
    count: int, distances: tuple, refused: Callable
) -> None:
    marks = tuple((50.0 * k, 10.0) for k in range(count))
    refused("marks-or-distances", Preparation, marks=marks, distances=distances)
    if count > 1:
        refused("scale-not-said", Preparation, marks=marks[:2], mm_per_px=1.0)
        refused("out-of-range", Preparation, marks=marks[:2], distances=(-1.0,))


def test_a_batch_names_the_photograph_that_shows_no_mark(tmp_path) -> None:
    paths = []
    for k, places in ((1, ROUND), (2, ROUND[2:]), (3, ROUND + 3)):
        paths.append(tmp_path / f"leaf {k}.png")
        Image.fromarray(photograph(camera(0.8), places)).save(paths[-1])
    how = Preparation(marks=clicks(camera(0.8), ROUND[:2]))
    with pytest.raises(Troubles) as caught:
        prepared(paths, how)
    ((name, said),) = caught.value.each
    assert name == "leaf 2.png" and "leaf 2.png" in said and "no whole mark" in said
    batch = prepared(paths[::2], how)
    assert [one.mm_per_px for one in batch.photos] == pytest.approx([0.8, 0.8], rel=0.003)
    batch.discard()


def test_what_holds_for_all_photographs_is_said_once(tmp_path) -> None:
    paths = []
    for k, tilt in ((1, 0.0), (2, 5.0)):
        paths.append(tmp_path / f"leaf {k}.png")
        Image.fromarray(photograph(camera(0.8, tilt), ROUND)).save(paths[-1])
    six = apart(ROUND)
    how = Preparation(
        marks=clicks(camera(0.8, 2.5), ROUND), distances=(*six[:4], six[4] + 3, six[5])
    )
    batch = prepared(paths, how)
    assert batch.report.count("disagree") == 1 and "All photographs: The six" in batch.report
    batch.discard()

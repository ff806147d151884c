# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the registers leave along the seams, as bars and as spots on the top."""

from __future__ import annotations

import numpy as np
import pytest

from veneerwb.core.sequence.residual import Patch, Residual, SeamResidual

pytest.importorskip("veneerwb.paint.qt", reason="no Qt for this Python")
from veneerwb.paint import ink  # noqa: E402
from veneerwb.paint.qt import QtGui, to_pixels  # noqa: E402
from veneerwb.paint.seams import (  # noqa: E402
    LARGE,
    PLAIN,
    SMALL,
    Rows,
    Spot,
    draw_bars,
    draw_spots,
)  # fmt: skip

SIZE = (420, 200)


def seam(a: int, *misses: float, one_photo: bool = False) -> SeamResidual:
    patches = tuple(Patch((0.0, 20.0 * k), (mm, 0.0), True) for k, mm in enumerate(misses))
    return SeamResidual(a, a + 1, 2, patches, 3, one_photo)


FOUND = Residual((seam(1, 0.2, 0.3), seam(2, one_photo=True), seam(3, 2.0, 4.0), seam(4, 0.5)))


def rgb(image: QtGui.QImage) -> np.ndarray:
    return to_pixels(image)[..., :3].astype(int)


def has(pixels: np.ndarray, colour: tuple[int, int, int]) -> np.ndarray:
    return (np.abs(pixels - colour) <= 12).all(axis=-1)


def bars(found: Residual = FOUND, *more: object) -> np.ndarray:
    return rgb(ink.image_of(SIZE, lambda p: draw_bars(p, found, SIZE, *more)))


def row(pixels: np.ndarray, number: int) -> np.ndarray:
    rows = Rows(SIZE, len(FOUND.seams))
    top = round(rows.top(number))
    return pixels[top + 1 : top + round(rows.tall) - 1]


def test_a_bar_is_as_long_as_its_seam_misses_and_other_where_it_shows() -> None:
    pixels = bars()
    widths = [np.count_nonzero(has(row(pixels, k), SMALL).any(axis=0)) for k in (0, 3)]
    assert 20 < widths[0] < widths[1]  # with the line to the worst place
    assert not has(row(pixels, 2), SMALL).any() and has(row(pixels, 2), LARGE).any()
    assert not has(row(pixels, 0), LARGE).any()
    for colour in (SMALL, LARGE):
        assert not has(row(pixels, 1), colour).any()


def test_the_seam_that_is_pointed_at_is_the_one_under_the_pointer() -> None:
    rows = Rows(SIZE, 4)
    assert [rows.row_at(rows.top(k) + 3) for k in range(4)] == [0, 1, 2, 3]
    assert rows.row_at(2) is None and rows.row_at(rows.top(4) + 2) is None
    changed = (bars() != bars(FOUND, 1.0, 2)).any(axis=2)
    assert row(changed, 2).any() and not row(changed, 0).any()


@pytest.mark.parametrize("count", [1, 64])
def test_all_seams_have_room(count: int) -> None:
    rows = Rows(SIZE, count)
    assert rows.top(count) <= SIZE[1] - 18
    bars(Residual(tuple(seam(k, 0.4) for k in range(1, count + 1))))


def test_the_axis_is_in_the_units_asked_for() -> None:
    words = PLAIN._replace(unit="in")
    assert (bars(FOUND, 25.4, None, words) != bars()).any()
    middle = slice(60, 400)  # the bars themselves are as long
    bar = [row(b, 2)[7:14, middle] for b in (bars(), bars(FOUND, 25.4))]
    assert (has(bar[0], LARGE) == has(bar[1], LARGE)).mean() > 0.97


def test_nothing_measured_is_drawn_too() -> None:
    bars(Residual((seam(1, one_photo=True), seam(2))))


def test_spots_stand_at_their_places_and_grow_with_the_miss() -> None:
    spots = [[Spot((40, 40), 0.2), Spot((100, 40), 0.9)], [Spot((160, 40), 3.0)]]

    def draw(painter: QtGui.QPainter, current: int | None) -> None:
        ink.begin(painter, (200, 80))
        draw_spots(painter, spots, lambda at: at, current)

    seen = rgb(ink.image_of((200, 80), lambda p: draw(p, None)))
    small, medium = (has(seen[:, x - 20 : x + 20], SMALL) for x in (40, 100))
    assert 0 < np.count_nonzero(small.any(axis=0)) < np.count_nonzero(medium.any(axis=0))
    assert has(seen[40:41, 160:161], LARGE).all() and not has(seen[40:41, 100:101], SMALL).any()
    alone = rgb(ink.image_of((200, 80), lambda p: draw(p, 1)))
    assert not has(alone, SMALL).any() and has(alone, LARGE).any()

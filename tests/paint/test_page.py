# SPDX-License-Identifier: LGPL-2.1-or-later
"""Leaves laid on each other in a window: what is seen where."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest

from veneerwb.core import Motion, Side
from veneerwb.core.log.sawn import Log
from veneerwb.core.photos.reading import Photo

pytest.importorskip("veneerwb.paint.qt", reason="no Qt for this Python")
from veneerwb.paint import ink  # noqa: E402
from veneerwb.paint.page import (  # noqa: E402
    TABLE,
    Sheet,
    Viewport,
    cross,
    draw_difference,
    draw_halves,
    draw_page,
)
from veneerwb.paint.qt import QtGui, to_pixels  # noqa: E402

SIZE = (300, 200)


def plain(rgb: tuple[int, int, int], view: Motion = Motion()) -> Sheet:  # noqa: B008
    return Sheet(Side(Photo.of(np.full((400, 200, 3), rgb, np.uint8), 0.5)), view)


def page(sheet: Sheet, seen: Viewport) -> QtGui.QImage:
    return ink.image_of(seen.size, lambda painter: draw_page(painter, sheet, seen))


def halves(*what: Any) -> QtGui.QImage:
    return ink.image_of(SIZE, lambda painter: draw_halves(painter, *what))


def difference(*what: Any) -> QtGui.QImage:
    return ink.image_of(SIZE, lambda painter: draw_difference(painter, *what))


def rgb(image: QtGui.QImage) -> np.ndarray:
    return to_pixels(image)[..., :3].astype(int)


@pytest.fixture
def seen() -> Viewport:
    return Viewport.fitting((0.0, 0.0, 100.0, 200.0), SIZE)


def test_the_whole_leaf_is_seen_in_the_middle(seen: Viewport) -> None:
    left, low = seen.to_px((0.0, 0.0))
    right, high = seen.to_px((100.0, 200.0))
    assert left == pytest.approx(300 - right) and high == pytest.approx(200 - low)
    assert 180 < low - high <= 200
    pixels = rgb(page(plain((90, 60, 30)), seen))
    assert tuple(pixels[100, 150]) == (90, 60, 30) and tuple(pixels[100, 10]) == TABLE
    assert (pixels[100] != TABLE).any(axis=1).sum() == pytest.approx(right - left, abs=2)


def test_zoom_keeps_the_point_under_the_pointer_and_a_drag_takes_it_along(seen: Viewport) -> None:
    under = seen.to_mm((70.0, 40.0))
    for factor in (3.0, 0.2):
        assert seen.zoomed(factor, (70.0, 40.0)).to_mm((70.0, 40.0)) == pytest.approx(under)
    assert seen.panned(25.0, -10.0).to_mm((95.0, 30.0)) == pytest.approx(under)
    assert seen.zoomed(1e9, (0.0, 0.0)).px_per_mm <= 40.0


def test_a_place_of_the_leaf_stays_where_it_is_however_it_was_photographed() -> None:
    log = Log(100, 200, 0.6, "cathedral", 2, knots=0)
    lying = Motion.turn_about(50, 100, 2.0) @ Motion(dx=6.0, dy=-4.0)
    straight = Sheet(Side(Photo.of(log.picture(0, 0.5), 0.5)), Motion())
    moved = Side(Photo.of(log.picture(0, 0.5, lying), 0.5))
    inside = Viewport.fitting((20.0, 40.0, 80.0, 160.0), SIZE, air=0.0)
    first, laid, loose = (
        rgb(page(sheet, inside))[20:180, 110:190]
        for sheet in (straight, Sheet(moved, lying), Sheet(moved, Motion()))
    )
    assert np.abs(first - laid).mean() < 0.25 * np.abs(first - loose).mean()


def test_halves_show_one_leaf_left_of_the_line_and_the_other_right_of_it(seen: Viewport) -> None:
    close = seen.zoomed(4.0, (150.0, 100.0))
    pixels = rgb(halves(plain((200, 10, 10)), plain((10, 10, 200)), close, 0.4))
    assert (pixels[:, :110] == (200, 10, 10)).all() and (pixels[:, 130:] == (10, 10, 200)).all()


def test_a_difference_is_white_where_leaves_are_alike_and_dark_where_not(seen: Viewport) -> None:
    alike = rgb(difference(plain((120, 100, 80)), plain((120, 100, 80)), seen))
    assert tuple(alike[100, 150]) == (255, 255, 255)
    apart = rgb(difference(plain((120, 120, 120)), plain((80, 80, 80)), seen))
    assert tuple(apart[100, 150]) == (135, 135, 135)  # 255 - 3 x 40
    moved = plain((120, 100, 80), Motion(dx=50.0))
    only_one = rgb(difference(plain((120, 100, 80)), moved, seen))
    assert tuple(only_one[100, round(seen.to_px((75.0, 0))[0])]) == (200, 200, 200)


def test_a_cross_is_open_in_the_middle_and_marks_its_place(seen: Viewport) -> None:
    image = page(plain((90, 60, 30)), seen)
    painter = QtGui.QPainter(image)
    cross(painter, (150.0, 100.0))
    painter.end()
    pixels = rgb(image)
    assert tuple(pixels[100, 150]) == (90, 60, 30)
    marked = np.argwhere((np.abs(pixels - ink.MARK) < 40).all(axis=2))
    assert marked.mean(axis=0) == pytest.approx((99.5, 149.5), abs=1.0)


def test_a_photograph_is_shown_from_a_copy_as_small_as_will_do() -> None:
    """Paging must not hold whole photographs as textures."""
    from veneerwb.paint import texture

    side = Side(Photo.of(np.zeros((1600, 800, 3), np.uint8), 0.25))
    texture._shelf._kept.clear()
    page(Sheet(side, Motion()), Viewport.fitting((0, 0, 200, 400), (200, 200)))
    kept = [t for (key, _), (_, t) in texture._shelf._kept.items() if key == id(side.image)]
    assert [t.factor for t in kept] == [8]

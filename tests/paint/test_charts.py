# SPDX-License-Identifier: LGPL-2.1-or-later
"""The likeness of all pairs, the drift of a point and the row of leaves, as pictures."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest

from veneerwb.core import Motion, sawn_bundle
from veneerwb.core.sequence.point import point_drift

pytest.importorskip("veneerwb.paint.qt", reason="no Qt for this Python")
from veneerwb.paint import ink, strip  # noqa: E402
from veneerwb.paint.drift import PLAIN, Plot, draw_drift, lines  # noqa: E402
from veneerwb.paint.likeness import Board, draw_likeness, shade, span  # noqa: E402
from veneerwb.paint.qt import QtGui, to_pixels  # noqa: E402


def rgb(image: QtGui.QImage) -> np.ndarray:
    return to_pixels(image)[..., :3].astype(int)


def has(pixels: np.ndarray, colour: tuple[int, int, int], near: int = 12) -> np.ndarray:
    return (np.abs(pixels - colour) <= near).all(axis=-1)


def likeness_picture(likeness: np.ndarray, board: Board, *more: Any) -> QtGui.QImage:
    return ink.image_of(board.size, lambda p: draw_likeness(p, likeness, board, *more))


def drift_plot(way: Any, size: tuple[int, int], *more: Any) -> QtGui.QImage:
    return ink.image_of(size, lambda p: draw_drift(p, way, size, *more))


def strip_picture(row: strip.Row, *more: Any) -> QtGui.QImage:
    return ink.image_of((row.width, row.height), lambda p: strip.draw_strip(p, row, *more))


# --- likeness ----------------------------------------------------------------------------------


@pytest.fixture
def alike() -> np.ndarray:
    """Ten leaves, less alike the further apart."""
    apart = np.abs(np.subtract.outer(np.arange(10), np.arange(10)))
    return np.exp(-apart / 3.0)


def test_shades_rise_in_lightness_so_that_grey_tells_them_apart() -> None:
    luma = [np.dot(shade(k / 20), (0.299, 0.587, 0.114)) for k in range(21)]
    assert min(np.diff(luma)) > 2.0 and luma[-1] - luma[0] > 200


def test_every_pair_stands_in_its_cell(alike: np.ndarray) -> None:
    board = Board((320, 300), tuple(range(3, 13)))
    pixels = rgb(likeness_picture(alike, board))
    low, high = span(alike)
    for row, column in ((0, 1), (2, 7), (9, 0), (5, 4)):
        x, y, width, height = board.box(row, column)
        here = pixels[round(y + height / 2), round(x + width / 2)]
        assert tuple(here) == shade((alike[row, column] - low) / (high - low))


def test_the_pointer_finds_the_pair_and_no_leaf_with_itself() -> None:
    board = Board((320, 300), (1, 2, 5, 9))
    for row in range(4):
        for column in range(4):
            x, y, width, height = board.box(row, column)
            found = board.pair_at(x + 0.9 * width, y + 0.1 * height)
            assert found == (None if row == column else (board.numbers[row], board.numbers[column]))
    assert board.pair_at(1, 1) is None and board.pair_at(319, 299) is None


@pytest.mark.parametrize("size", [(200, 160), (420, 200), (200, 420), (350, 350)])
@pytest.mark.parametrize("count", [2, 12, 48])
def test_cells_and_scale_have_room_in_any_window(size: tuple[int, int], count: int) -> None:
    board = Board(size, tuple(range(1, count + 1)))
    left, top = board.corner
    extent = board.cell * count
    assert left >= 0 and top >= 0
    assert left + extent <= size[0] and top + extent <= size[1]
    assert extent > 0.5 * min(size) - 20
    likeness_picture(np.eye(count), board, (1, 2), (2,))


def test_a_pair_is_framed_and_suspects_carry_a_triangle(alike: np.ndarray) -> None:
    board = Board((320, 300), tuple(range(1, 11)))
    plain, marked = (
        rgb(likeness_picture(alike, board, *more)) for more in ((), ((3, 7), (5,)))
    )
    assert not has(plain, ink.MARK).any()
    x, y, width, height = board.box(2, 6)
    assert has(marked[round(y + height / 2), round(x) - 2 : round(x) + 3], ink.MARK).any()
    x, y, width, _ = board.box(4, 4)
    over = marked[int(board.corner[1]) - 7 : int(board.corner[1]), round(x) : round(x + width)]
    assert has(over, ink.MARK).sum() > 8


def test_the_span_is_that_of_the_pairs_to_a_tenth() -> None:
    likeness = np.array([[1.0, 0.42, 0.77], [0.42, 1.0, 0.5], [0.77, 0.5, 1.0]])
    assert span(likeness) == pytest.approx((0.4, 0.8))
    assert span(np.ones((1, 1))) == (0.0, 1.0)
    assert span(np.full((2, 2), np.nan)) == (0.0, 1.0)


@pytest.mark.parametrize(("count", "room"), [(24, 0.4), (48, 0.13), (10, 3.0), (1000, 0.01)])
def test_as_many_numbers_are_written_as_have_room(count: int, room: float) -> None:
    every = ink.thinned(count, room)
    assert every * room >= 1.0 or every >= count
    smaller = [m * 10**k for k in range(4) for m in (1, 2, 5) if m * 10**k < every]
    assert all(one * room < 1.0 for one in smaller)


@pytest.mark.parametrize(
    ("low", "high"), [(-8, 10), (0, 100), (-95, 0), (-0.6, 0.6), (-0.03, 0.03), (0, 9.9)]
)
def test_an_axis_has_at_least_two_round_values(low: float, high: float) -> None:
    found = ink.ticks(low, high, 4)
    assert 2 <= len(found) <= 6 and min(found) >= low and max(found) <= high
    steps = np.diff(found)
    assert steps == pytest.approx(steps[0])
    assert f"{steps[0]:.0e}"[0] in "125"


# --- drift -------------------------------------------------------------------------------------

VIEWS = {k: Motion(dx=1.5 * k, dy=-6.0 * k) for k in range(1, 13)}
FRAMES = {k: Motion(dx=1.5 * k) for k in range(1, 13)}


def test_the_legend_says_whether_the_causes_are_parted() -> None:
    one = lines(point_drift((0, 0), VIEWS), PLAIN)
    assert [line.name for line in one] == ["drift: figure and photograph together"]
    two = lines(point_drift((0, 0), VIEWS, FRAMES), PLAIN)
    assert [line.name for line in two] == ["figure on the leaf", "photograph"]
    assert len({line.rgb for line in two}) == len({line.shape for line in two}) == 2
    assert len({line.dashed for line in two}) == 2  # told apart without colours
    assert two[0].values[-1] == pytest.approx((0.0, -66.0))
    assert two[1].values[-1] == pytest.approx((16.5, 0.0))


def test_both_names_of_the_legend_are_seen_in_a_narrow_plot() -> None:
    way = point_drift((0, 0), VIEWS, FRAMES)
    figure, shift = lines(way, PLAIN)
    for width in (150, 500):
        pixels = rgb(drift_plot(way, (width, 200)))[:40, :170 if width < 200 else None]
        assert has(pixels, figure.rgb, 30).any() and has(pixels, shift.rgb, 30).any()


def test_the_plot_falls_where_the_point_does() -> None:
    size = (420, 300)
    way = point_drift((0, 0), VIEWS)
    pixels = rgb(drift_plot(way, size))
    plot = Plot(size, way.numbers)
    (line,) = lines(way, PLAIN)
    along = has(pixels[160:], line.rgb, 30)  # the lower half
    heights = [np.argwhere(along[:, round(plot.x_of(k))])[:, 0].mean() for k in way.numbers]
    steps = np.diff(heights)
    assert (steps > 0).all() and np.ptp(steps) < 2.0


def test_the_plot_is_in_the_units_asked_for() -> None:
    views = {n: Motion(dx=20.0 * n, dy=-35.0 * n) for n in range(1, 7)}
    inches = {n: Motion(dx=20.0 * n / 25.4, dy=-35.0 * n / 25.4) for n in views}
    size = (300, 240)
    ways = [point_drift((50, 50), places) for places in (views, inches)]
    seen = rgb(drift_plot(ways[0], size, 3, PLAIN, 25.4))
    assert (seen == rgb(drift_plot(ways[1], size, 3))).all()
    assert (seen != rgb(drift_plot(ways[0], size, 3))).any()  # other numbers stand at the axes


def test_the_leaf_that_is_shown_is_marked_and_a_click_finds_it() -> None:
    size = (420, 300)
    way = point_drift((0, 0), VIEWS)
    plot = Plot(size, way.numbers)
    pixels = rgb(drift_plot(way, size, 7))
    columns = np.argwhere(has(pixels, ink.MARK, 60))[:, 1]
    assert columns.min() > plot.x_of(6) and columns.max() < plot.x_of(8)
    for number in way.numbers:
        assert plot.leaf_at(plot.x_of(number) + 3) == number
    assert plot.leaf_at(-50) == 1 and plot.leaf_at(5000) == 12


def test_one_leaf_is_plotted_too() -> None:
    way = point_drift((5, 5), {4: Motion()})
    assert drift_plot(way, (300, 200), 4).width() == 300


# --- the row -----------------------------------------------------------------------------------


def test_a_click_finds_the_leaf_and_marks_make_room_for_their_words() -> None:
    numbers = (1, 2, 4, 3, 5)
    row = strip.Row(numbers, 108, 0.3, frozenset((4,)))
    for number in numbers:
        left, wide = row.place(number)
        assert row.leaf_at(left) == row.leaf_at(left + wide - 1) == number
    assert row.place(4)[1] >= strip.WORDY > row.place(3)[1] >= strip.NARROW
    assert row.leaf_at(-1) is None and row.leaf_at(row.width) is None


def test_the_row_shows_pictures_the_shown_leaf_suspects_and_gaps() -> None:
    bundle = sawn_bundle(leaves=3, width=60, length=200, mm_per_px=1.0, seed=5)
    row = strip.Row((1, 2, 3), 108, 0.3, frozenset((2, 3)))
    pictures = {k: strip.small(bundle.leaf(k).face.image, row.picture) for k in (1, 2)}
    assert (pictures[1].width(), pictures[1].height()) == row.picture
    pixels = rgb(strip_picture(row, pictures, 1, {2: "turned over"}, {2: "missing?"}))
    assert pixels.shape[:2] == (108, row.width)

    def part(number: int) -> np.ndarray:
        left, wide = row.place(number)
        return pixels[:, left : left + wide]

    assert has(part(1), ink.MARK).sum() > 100 > has(part(2)[:, :-4], ink.MARK).sum()
    assert has(part(2), (255, 214, 64)).sum() > 30 and not has(part(1), (255, 214, 64)).any()
    assert has(part(2)[-strip.FOOT :], ink.INK, 90).any()
    edge = sum(row.place(2))
    assert has(pixels[20:90, edge - 2 : edge + 2], ink.MARK, 60).sum() > 40
    assert has(part(3), ink.RULE).sum() > 500  # no picture yet


def test_the_proven_order_leaves_no_leaf_out() -> None:
    assert strip.proven((3, 1, 9), (1, 2, 3, 4)) == (3, 1, 2, 4)

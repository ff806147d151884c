# SPDX-License-Identifier: LGPL-2.1-or-later
"""A way of cutting on the leaves: a leaf for each lot, as many as there is room for."""

import numpy as np
import pytest

from veneerwb.core import Stock, Top, radial
from veneerwb.core.lots import cutting

pytest.importorskip("veneerwb.paint.qt", reason="no Qt for this Python")
from veneerwb.paint import ground, ink, lots  # noqa: E402

STOCK = Stock(400.0, 1200.0, 64, 0.6)


@pytest.mark.parametrize("count", [1, 2, 6, 12, 40, 64])
@pytest.mark.parametrize("size", [(300, 330), (500, 150), (120, 110)])
def test_leaves_lie_beside_each_other_and_inside(count, size):
    columns, rows = lots.grid(count, size, 1.0 / 3.0)
    boxes = lots.fields(columns, rows, size)
    assert len(boxes) == columns * rows
    fits = columns * rows >= count
    assert fits or (columns + 1) * (lots.LEAST + lots.GAP) > size[0] - 2 * lots.GAP
    assert count > 12 or size == (120, 110) or fits
    for k, (x, y, wide, high) in enumerate(boxes):
        assert x >= 0.0 and y >= 0.0 and x + wide <= size[0] and y + high <= size[1] + 1e-9
        for u, v, across, _ in boxes[:k]:
            assert x >= u + across or y > v or x + wide <= u


def painted(ways, how, size=(320, 340)):
    layout = radial(STOCK, Top.oval(900.0, 600.0), ways, cuts=how)
    said = []

    def words(count):
        said.append(count)
        return "x"

    def more(count):
        said.append(-count)
        return "more"

    image = ink.image_of(
        size, lambda painter: lots.draw_lots(painter, size, layout, cutting(layout), words, more)
    )
    data = np.frombuffer(bytes(image.constBits()), np.uint8)
    return data.reshape(size[1], size[0], 4)[..., 2::-1].astype(int), said


def patches(pixels, rgb):
    """Whether a colour is seen, as a line or a tag has it."""
    return int((np.abs(pixels - rgb) < 12).all(axis=-1).sum())


def test_every_lot_has_its_colour_and_its_number_of_leaves():
    pixels, said = painted(12, "shape")
    assert said == [2] * 6
    assert all(patches(pixels, rgb) > 20 for rgb in ground.CUT)
    pixels, said = painted(12, "stack")
    assert said == [12]
    assert patches(pixels, ground.CUT[0]) > 20 and patches(pixels, ground.CUT[1]) == 0


def test_lots_without_room_are_counted():
    _, said = painted(64, "own", (160, 120))
    shown = [count for count in said if count > 0]
    assert said[-1] == len(shown) - 64 < 0 and set(shown) == {1}

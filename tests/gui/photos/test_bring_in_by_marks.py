# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs brought in that are scaled or squared up by the paper marks on them."""

import math

import numpy as np
import pytest
from PIL import Image
from PySide import QtGui

from veneerwb.gui.panels import base
from veneerwb.host.objects import core_bundle

SCALE = 0.8
"""mm per pixel of a photograph: a ring of 20 mm is 25 pixels across."""
A, B, C, D = MARKS = (28.0, 262.3), (131.6, 258.0), (128.2, 42.7), (30.4, 36.1)
SIX = {"ab": (A, B), "bc": (B, C), "cd": (C, D), "da": (D, A), "ac": (A, C), "bd": (B, D)}


def stuck(pixels, places):
    """The photograph with marks on it: rings on white paper."""
    picture = pixels.astype(float)
    row, column = np.mgrid[: pixels.shape[0], : pixels.shape[1]] + 0.5
    for x, y in places:
        dx, dy = (column - x) * SCALE, (row - y) * SCALE
        picture[(abs(dx) < 17) & (abs(dy) < 19)] = 230
        far = np.hypot(dx, dy) / SCALE
        ink = np.clip(10 / SCALE - far + 0.5, 0, 1) * np.clip(far - 5 / SCALE + 0.5, 0, 1)
        picture -= 190 * ink[..., None]
    return np.clip(picture, 0, 255).astype(np.uint8)


def measured(*places):
    return f"{SCALE * math.dist(*places)} mm"


@pytest.fixture
def panel(bring_in):
    return bring_in


@pytest.fixture
def marked(save, photograph):
    """Three photographs; the marks of each lie elsewhere."""
    return save(**{
        f"leaf_{k + 1}": stuck(photograph(k), [(x, y + 3 * k) for x, y in MARKS]) for k in (0, 1, 2)
    })


def leaves(user, doc):
    user.ok()
    assert user.visible(QtGui.QListWidget, "report"), base._shown[0].form.trouble.text()
    made = user.only(doc, "Bundle")
    assert made.Message == ""
    return core_bundle(made).leaves


def test_rings_give_each_photograph_its_scale_and_marks_are_centred(user, fresh, panel, marked):
    made = panel(marked, scale="rings", each=True)
    hand = panel.window("click_scale")
    for k in (0, 1, 2):
        made.photographs.window.turn_to(k)
        for x, y in (A, C, D):
            hand.click((x + 6, y + 3 * k - 5))
        seen = [one.place for one in made.photographs.window.view.pointing.marks]
        np.testing.assert_allclose(seen, [(x, y + 3 * k) for x, y in (A, C, D)], atol=0.1)
    assert "All are clicked on." in user.box("summary").text()
    for leaf in leaves(user, fresh):
        assert leaf.mm_per_px == pytest.approx(SCALE, rel=0.005)
        assert leaf.size == pytest.approx((160 * SCALE, 300 * SCALE), rel=0.005)
    user.box("again").click()  # it is all taken back, and the clicks are still there
    assert fresh.Objects == [] and user.visible(QtGui.QWidget, "scale")
    leaves(user, fresh)
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1


def test_a_distance_between_two_marks_gives_the_scale(user, fresh, panel, marked):
    panel(marked, scale="two marks", known="100 mm")
    hand = panel.window("click_scale")
    hand.click(A)
    hand.click(C)
    assert "a ring is" in user.box("trouble").text()  # 100 mm, and they lie 193 mm apart
    user.fill("known", measured(A, C))
    assert "The first is 12" in user.box("summary").text()
    # Those of the other photographs lie within a ring of where the first one's were clicked.
    for leaf in leaves(user, fresh):
        assert leaf.mm_per_px == pytest.approx(SCALE, rel=0.001)


def test_four_marks_square_a_photograph_up(user, fresh, panel, save, photograph):
    """Seen from the side it is narrower; the marks undo that."""
    pixels = stuck(photograph(1), MARKS)
    squeezed = Image.fromarray(pixels).resize((140, 300), Image.BICUBIC)
    folder = save(leaf_1=np.asarray(squeezed))
    boxes = {name: measured(*pair) for name, pair in SIX.items()}
    panel(folder, scale="four marks", **boxes)
    hand = panel.window("click_scale")
    for x, y in MARKS:
        hand.click((x * 140 / 160 + 3, y + 4))
    (leaf,) = leaves(user, fresh)
    assert leaf.size == pytest.approx((160 * SCALE, 300 * SCALE), rel=0.006)
    user.box("again").click()
    user.fill("ac", "220 mm")
    user.ok()
    assert "misread" in user.box("trouble").text() and fresh.Objects == []


def test_a_click_beside_every_mark_is_said_at_once_and_mended_by_a_drag(user, panel, marked):
    panel(marked, scale="rings")
    hand = panel.window("click_scale")
    hand.click(A)
    hand.click((80, 150))
    assert "no whole mark near column 80" in user.box("trouble").text()
    hand.drag((80, 150), A)
    assert "same mark" in user.box("trouble").text()
    hand.drag(A, C)
    assert not user.visible(QtGui.QLabel, "trouble")

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the tests of paper marks share: photographs with marks on them, a bundle of such leaves, and
a hand that clicks on them."""

import math
from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest
from PySide import QtGui

from veneerwb.core import Bundle, Leaf, Motion, Side, sawn_bundle
from veneerwb.core.photos import Photo
from veneerwb.core.targets import MARK
from veneerwb.gui.panels import base
from veneerwb.host.objects import add_bundle

SCALE = 0.75
"""mm per pixel."""
PLACES = {
    1: ((30.3, 40.2), (170.6, 60.1), (35.2, 350.4)),
    2: ((33.3, 45.2), (173.6, 65.1), (38.2, 355.4)),
}
"""Where A, B and C are stuck (leaf mm); those of leaf 2 lie as on leaf 1, 3 and 5 mm further."""
REGISTER = Motion(1.5, 4.0, -3.0)
"""Where the bundle's figure lies on leaf 2."""


def stuck(pixels, places, turned=0.0):
    """The photograph with paper marks on it, nine samples squared to a pixel; `turned` degrees."""
    fine = 9
    picture = pixels.astype(float)
    rows = len(picture)
    for x, y in places:
        column, row = x / SCALE, rows - y / SCALE
        far = math.ceil(34 / SCALE)
        left, top = int(column) - far, int(row) - far
        at = (np.arange(2 * far * fine) + 0.5) / fine
        dx, dy = np.meshgrid(left + at - column, row - top - at)
        way = math.radians(turned)
        u = SCALE * (dx * math.cos(way) + dy * math.sin(way))
        v = SCALE * (dy * math.cos(way) - dx * math.sin(way))
        r, (left_, low, right, up) = np.hypot(u, v), MARK.paper
        paper = (u > left_) & (u < right) & (v > low) & (v < up)
        foot, tip = MARK.arrow[0][1], MARK.arrow[2][1]
        arrow = (v > foot) & (abs(u) < MARK.arrow[1][0] * (tip - v) / (tip - foot))
        cross = (np.minimum(abs(u), abs(v)) < MARK.line / 2) & (r < MARK.cross / 2)
        ink = ((r > MARK.inner / 2) & (r < MARK.outer / 2)) | arrow | cross
        share, dark = (
            one.reshape(2 * far, fine, 2 * far, fine).mean(axis=(1, 3)) for one in (paper, ink)
        )
        c0, c1 = max(0, left), min(picture.shape[1], left + 2 * far)
        r0, r1 = max(0, top), min(rows, top + 2 * far)
        part = np.s_[r0 - top : r1 - top, c0 - left : c1 - left]
        light = (230 - 195 * dark[part] / np.maximum(share[part], 1e-9))[..., None]
        under = picture[r0:r1, c0:c1]
        share = share[part][..., None]
        picture[r0:r1, c0:c1] = np.where(share > 0, share * light + (1 - share) * under, under)
    return np.clip(picture + 0.5, 0, 255).astype(np.uint8)


def with_marks(leaf, places, register, turned=0.0):
    side = Side(Photo.of(stuck(leaf.photo, places, turned), SCALE), register, register)
    return Leaf(leaf.number, side)


@pytest.fixture(scope="session")
def sawn():
    return sawn_bundle(
        leaves=3, width=210, length=400, thickness=0.6, mm_per_px=SCALE, figure="cathedral",
        seed=4, knots=0,
    )  # fmt: skip


@pytest.fixture
def bundle(fresh, sawn):
    """Leaves 1 and 2 with three marks each, leaf 3 with none; leaf 2 lies turned and shifted."""
    one, two, three = sawn.leaves
    leaves = (
        with_marks(one, PLACES[1], Motion()), with_marks(two, PLACES[2], REGISTER), replace(three)
    )  # fmt: skip
    made = add_bundle(fresh, Bundle(leaves, 0.6))
    fresh.recompute()
    fresh.clearUndos()
    return made


@pytest.fixture(scope="session", name="stuck")
def stuck_on():
    return stuck


class Marks(SimpleNamespace):
    """The panel and the hand on its photograph; points are in leaf mm."""

    def click(self, mm, off=(5.0, -4.0)):
        """A rough click on a mark, `off` mm beside its centre."""
        place = self.px((mm[0] + off[0], mm[1] + off[1]))
        self.panel.window.view.show_place(place)
        self.hand.click(place)

    def px(self, mm):
        return self.panel.book.on_photo(self.panel.number, self.panel.picture, mm)

    def texts(self):
        return [one.text for one in self.panel.window.view.pointing.marks]


@pytest.fixture
def opened(user):
    def open_it():
        user.open_panel("Veneer_Marks", "marks")
        user.wait_for(lambda: user.visible(QtGui.QWidget, "canvas"), "the photograph opens")
        (panel,) = base.shown()
        panel.window.view.zoom_to(1.5)
        return Marks(panel=panel, hand=user.hand(panel.window.view))

    return open_it


@pytest.fixture
def marks(opened, bundle):
    return opened()

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the tests of paper marks share: photographs with marks on them, a bundle of such leaves, and
a hand that clicks on them."""

import math
from dataclasses import replace
from functools import cache
from types import SimpleNamespace

import numpy as np
import pytest
from PIL import Image
from PySide import QtGui

from veneerwb.core import Bundle, Leaf, Motion, Side, sawn_bundle
from veneerwb.core.photos.reading import Photo
from veneerwb.core.targets import MARK
from veneerwb.gui.panels import base
from veneerwb.host.areas import set_marks
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


def printed(u, v):
    """What of the plane is paper and what is ink of a mark, at places from its centre (mm)."""
    r, (left, low, right, up) = np.hypot(u, v), MARK.paper
    paper = (u > left) & (u < right) & (v > low) & (v < up)
    foot, tip = MARK.arrow[0][1], MARK.arrow[2][1]
    arrow = (v > foot) & (abs(u) < MARK.arrow[1][0] * (tip - v) / (tip - foot))
    cross = (np.minimum(abs(u), abs(v)) < MARK.line / 2) & (r < MARK.cross / 2)
    return paper, ((r > MARK.inner / 2) & (r < MARK.outer / 2)) | arrow | cross


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
        paper, ink = printed(u, v)
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


# --- a photograph of what is pinned ---------------------------------------------------------------

PINNED = {
    1: ((30.0, 60.0), (120.0, 62.0), (118.0, 340.0), (32.0, 338.0)),
    2: ((170.0, 60.0), (171.0, 185.0)),
    3: ((172.0, 275.0), (170.0, 360.0)),
}
"""Where marks are stuck (leaf mm): four on the topmost leaf."""
SHOWN = {1: (150.0, 400.0), 2: (195.0, 225.0), 3: (210.0, 400.0)}
"""What is seen of each leaf from its lower left, in leaf mm: the lower ones stand out."""
PINNED_BY = {1: Motion(), 2: Motion(1.2, 3.0, -2.0), 3: Motion(-0.8, -2.0, 1.5)}
PINS = ((75.0, 30.0), (78.0, 372.0))
"""Where the pins stand (bundle mm)."""
THICK, ABOVE = 3.0, 600.0
"""mm: a leaf, and the camera over the topmost."""
SEEN = 0.5
"""mm per pixel of the photograph."""


class Camera:
    """Hangs ABOVE over the middle of a stack, `tilt` degrees off straight down."""

    size = 512, 896
    middle = 256.0, 448.0
    over = 105.0, 200.0

    def __init__(self, tilt=0.0):
        c, s = math.cos(math.radians(tilt)), math.sin(math.radians(tilt))
        along = np.array([[1, 0, 0], [0, c, -s], [0, s, c]])
        self.turn = along @ [[c, 0, s], [0, 1, 0], [-s, 0, c]]

    def sees(self, mm, below=0.0):
        """(column, row) of a place in the bundle (mm) at a depth."""
        x, y, z = self.turn @ (mm[0] - self.over[0], mm[1] - self.over[1], -ABOVE - below)
        f = ABOVE / SEEN
        return self.middle[0] - f * x / z, self.middle[1] + f * y / z

    def hits(self, column, row, below=0.0):
        """The place in the bundle (mm) at a depth under places of the photograph."""
        f = ABOVE / SEEN
        ray = np.stack([(column - self.middle[0]) / f, (self.middle[1] - row) / f,
                        -np.ones_like(column)], axis=-1) @ self.turn
        far = -(ABOVE + below) / ray[..., 2]
        return self.over[0] + far * ray[..., 0], self.over[1] + far * ray[..., 1]


def photographed(leaves, moved, numbers, tilt):
    """Leaves pinned on each other, `moved` off their registers, through the camera: two samples
    squared to a pixel."""
    camera, fine = Camera(tilt), 2
    columns, rows = camera.size
    at = (np.arange(columns * fine) + 0.5) / fine, (np.arange(rows * fine) + 0.5) / fine
    column, row = np.meshgrid(*at)
    picture = np.full((rows * fine, columns * fine, 3), 150.0)
    for number in sorted(numbers, reverse=True):
        x, y = camera.hits(column, row, THICK * (number - 1))
        lies = PINNED_BY[number] @ moved.get(number, Motion()).inverse()
        x, y = np.moveaxis(lies.apply(np.stack([x, y], axis=-1).reshape(-1, 2)), 1, 0)
        x, y = x.reshape(column.shape), y.reshape(column.shape)
        wide, long = SHOWN[number]
        on = (x > 0) & (x < wide) & (y > 0) & (y < long)
        photo = leaves[number - 1].photo
        place = (len(photo) - y[on] / SCALE).astype(int), (x[on] / SCALE).astype(int)
        picture[on] = photo[np.minimum(place[0], len(photo) - 1), place[1]]
        for u, v in PINNED[number]:
            paper, ink = printed(x - u, y - v)
            picture[paper & on], picture[paper & ink & on] = 230, 35
    for mm in PINS:
        u, v = camera.sees(mm)
        picture[np.hypot(column - u, row - v) < 1.0 / SEEN] = 20
    seen = picture.reshape(rows, fine, columns, fine, 3).mean(axis=(1, 3))
    return np.clip(seen + 0.5, 0, 255).astype(np.uint8)


@pytest.fixture
def pinned(fresh, sawn):
    """Three leaves whose marks are known, thick ones."""
    leaves = tuple(
        Leaf(leaf.number, Side(Photo.of(leaf.photo, SCALE), PINNED_BY[leaf.number]))
        for leaf in sawn.leaves
    )
    made = add_bundle(fresh, Bundle(leaves, THICK))
    for leaf in made.Leaves:
        set_marks(leaf, PINNED[leaf.Number])
    fresh.recompute()
    fresh.clearUndos()
    return made


@pytest.fixture(scope="session")
def shot(sawn, tmp_path_factory):
    """Writes such a photograph, and says where."""

    @cache
    def taken(moved, numbers, tilt):
        path = tmp_path_factory.mktemp("pinned") / "stack.png"
        pixels = photographed(sawn.leaves, dict(moved), numbers, tilt)
        Image.fromarray(pixels).save(path)
        return str(path)

    def made(moved=None, numbers=(1, 2, 3), tilt=0.0):
        return taken(tuple((moved or {}).items()), numbers, tilt)

    return made


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


class Pinned(Marks):
    """The page on which a photograph is judged, and the hand on that photograph."""

    def take(self, path, tilt=0.0):
        self.camera = Camera(tilt)
        self.page.take(path)
        self.page.window.view.zoom_to(2.0)
        self.hand = self.user.hand(self.page.window.view)

    def click_on(self, number, k, moved=None, off=(8.0, -6.0)):
        """A rough click on mark `k` of a leaf that lies `moved` off its register."""
        mm = PINNED_BY[number].inverse().apply([PINNED[number][k]])
        mm = (moved or Motion()).apply(mm)[0]
        column, row = self.camera.sees(mm, THICK * (number - 1))
        self.click_at((column + off[0], row + off[1]))

    def click_pin(self, k):
        self.click_at(self.camera.sees(PINS[k]))

    def click_at(self, place):
        self.page.window.view.show_place(place)
        self.hand.click(place)

    def names(self, which):
        """Chooses what the next click is."""
        box = self.user.box("clicked")
        box.setCurrentIndex(box.findText(which))

    def said(self):
        return self.user.lines("verdict")


@pytest.fixture
def confirming(user, opened, pinned):
    panel = opened().panel
    user.box("tasks").setCurrentIndex(1)
    return Pinned(panel=panel, page=panel.confirming, user=user)

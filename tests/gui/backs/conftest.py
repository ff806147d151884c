# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the tests of backs share: both sides of leaves photographed on a table, a bundle of the
faces, and the panel open on it."""

from types import SimpleNamespace

import numpy as np
import pytest
from PIL import Image, ImageDraw

from veneerwb.core.log.sawn import TABLE, Log
from veneerwb.core.photos.preparing import Preparation, prepared
from veneerwb.core.plane import Motion
from veneerwb.core.sequence import chained
from veneerwb.gui.panels import base
from veneerwb.host.bringing_in import bring_in
from veneerwb.host.sequence import apply_registers

WIDTH, LENGTH, AROUND = 130, 320, 35  # mm, and pixels
SLOPE = 8.0
BACKS = {1: (5, -6, 1.5), 2: (-6, 4, -178.0), 3: (3, 3, -1.0)}
"""Of the leaves whose backs are photographed: how the leaf lies then, as seen from the face."""


def cut(number):
    """The corners of a leaf (mm) as a knife leaves it."""
    rng = np.random.default_rng(number)
    y = np.linspace(6, LENGTH - 6, 8)
    left, right = (np.column_stack([x + rng.normal(0, 2.5, 8), y]) for x in (8, WIDTH - 8))
    return [*left, *right[::-1]]


def on_table(surface, corners, dx=0, dy=0, turn=0.0):
    """A surface of the log cut to `corners` on a grey table, 1 mm per pixel, then moved there."""
    shape = Image.new("L", (4 * WIDTH, 4 * LENGTH))
    ImageDraw.Draw(shape).polygon([(4 * x, 4 * (LENGTH - y)) for x, y in corners], fill=255)
    share = np.asarray(shape.resize((WIDTH, LENGTH), Image.Resampling.BOX))[..., None] / 255.0
    picture = np.empty((LENGTH + 2 * AROUND, WIDTH + 2 * AROUND, 3), np.uint8)
    picture[:] = TABLE
    within = np.s_[AROUND : AROUND + LENGTH, AROUND : AROUND + WIDTH]
    picture[within] = surface * share + np.array(TABLE) * (1 - share)
    return np.asarray(Image.fromarray(picture).rotate(
        turn, Image.Resampling.BICUBIC, translate=(dx, -dy), fillcolor=TABLE
    ))


def lying(dx=0, dy=0, turn=0.0):
    """The motion of `on_table`: mm on the surface to mm on the photograph."""
    middle = AROUND + WIDTH / 2, AROUND + LENGTH / 2
    return Motion(dx=dx, dy=dy) @ Motion.turn_about(*middle, turn) @ Motion(dx=AROUND, dy=AROUND)


@pytest.fixture(scope="session")
def shots(tmp_path_factory):
    """`faces`, paths of four leaves in order, and `backs` by number, as the camera saw them: the
    leaves of a log in which each lay over the one before. `ties` are the true ones."""
    folder = tmp_path_factory.mktemp("leaves")
    log = Log(WIDTH, LENGTH, 0.6, "cathedral", 3, SLOPE, knots=0)
    faces, backs = [], {}
    for number in range(1, 5):
        surfaces = number, number - 1
        faces.append(folder / f"leaf {number}.png")
        Image.fromarray(on_table(log.picture(surfaces[0], 1.0), cut(number))).save(faces[-1])
        if number in BACKS:
            seen = on_table(log.picture(surfaces[1], 1.0), cut(number), *BACKS[number])
            backs[number] = folder / f"behind {number}.png"
            Image.fromarray(np.ascontiguousarray(seen[:, ::-1])).save(backs[number])
    faced = prepared(faces, Preparation(mm_per_px=1.0), folder).bundle(0.6)
    ties = {number: lying(*how) @ lying().inverse() for number, how in BACKS.items()}
    registers = chained(faced).registers
    return SimpleNamespace(faces=faces, backs=backs, ties=ties, registers=registers)


@pytest.fixture
def bundle(fresh, shots):
    """The faces, registered on their figure; it is said that each leaf lay under the one before,
    which is wrong."""
    made = bring_in(fresh, shots.faces, Preparation(mm_per_px=1.0), 0.6, "next")
    apply_registers(made, shots.registers, "figure")
    fresh.recompute()
    fresh.clearUndos()
    return made


class Backs(SimpleNamespace):
    """The panel; files are chosen in it without the host's dialogue."""

    def choose(self, button, *paths):
        self.panel._asked = lambda title, one: [str(path) for path in paths]
        self.user.box(button).click()

    def tell(self):
        """Turns to the second page."""
        self.user.box("tabs").setCurrentIndex(1)

    def click(self, mm):
        """A click on a place of the photograph that is shown, mm on it."""
        place, view = self.panel.picture.place(mm), self.panel.window.view
        view.zoom_to(4.0)  # a click is a whole pixel of the widget
        view.show_place(place)
        self.hand.click(place)


@pytest.fixture
def opened(user):
    def open_it():
        user.open_panel("Veneer_Backs", "outline")
        (panel,) = base.shown()
        return Backs(panel=panel, user=user, hand=user.hand(panel.window.view))

    return open_it


@pytest.fixture
def backs(opened, bundle):
    return opened()

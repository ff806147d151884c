# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the tests of photographs share: a window with a picture, a bundle whose leaves lie shifted,
photographs of leaves on a table, and hands that draw."""

import FreeCADGui
import numpy as np
import pytest
from PIL import Image
from PySide import QtCore, QtGui
from shapely.geometry import box

from veneerwb.core import Bundle, Fault, Leaf, Motion, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY
from veneerwb.gui.panels import base
from veneerwb.gui.photos.frame import Picture
from veneerwb.gui.photos.window import PhotoWindow
from veneerwb.host.objects import add_bundle, core_bundle

# --- a picture in its window --------------------------------------------------------------------


@pytest.fixture(scope="session")
def pixels():
    """A picture whose every pixel tells its own place: red by its column, green by its row."""

    def made(rows=900, columns=600):
        picture = np.empty((rows, columns, 3), np.uint8)
        picture[:, :, 0] = np.linspace(0, 255, columns).astype(np.uint8)
        picture[:, :, 1] = np.linspace(0, 255, rows).astype(np.uint8)[:, None]
        picture[:, :, 2] = 90
        return picture

    return made


@pytest.fixture
def window(fresh, pixels):
    made = PhotoWindow("Photograph", ["Leaf 1", "Leaf 2", "Leaf 3"])
    FreeCADGui.updateGui()
    for _ in range(5):
        QtGui.QApplication.processEvents()
    made.show(Picture(pixels(), 0.5))
    QtGui.QApplication.processEvents()
    yield made
    made.close()
    QtGui.QApplication.processEvents()


@pytest.fixture
def hand(window, user):
    return user.hand(window.view)


@pytest.fixture(scope="session")
def painted():
    """What a view paints, as rows x columns x RGB of its widget, whatever its screen scales by."""

    def made(view):
        image = QtGui.QImage(view.canvas.size(), QtGui.QImage.Format_RGB32)
        view.canvas.render(image, QtCore.QPoint())
        data = bytes(image.constBits())
        array = np.frombuffer(data, np.uint8).reshape(image.height(), image.bytesPerLine() // 4, 4)
        return array[:, : image.width(), 2::-1]

    return made


# --- faults -------------------------------------------------------------------------------------

WIDTH, LENGTH, SCALE = 200.0, 400.0, 2.0


def leaf(number, register=IDENTITY, faults=()):
    rows, columns = int(LENGTH / SCALE), int(WIDTH / SCALE)
    pixels = np.full((rows, columns, 3), (150, 110, 80), np.uint8)
    pixels[:, :: number + 3] -= 20
    side = Side(Photo.of(pixels, SCALE), register, register)
    return Leaf(number, side, None, None, faults)


@pytest.fixture(scope="session")
def plain_leaf():
    """A leaf of 200 x 400 mm of that number."""
    return leaf


@pytest.fixture
def bundle(fresh):
    """Three leaves; the first has a patch, the figure of the second lies turned and shifted."""
    patched = leaf(1, faults=(Fault(box(100, 300, 120, 320), "patch"),))
    made = add_bundle(fresh, Bundle((patched, leaf(2, Motion(2.0, 6.0, -4.0)), leaf(3)), 0.6))
    fresh.recompute()
    fresh.clearUndos()
    return made


class Faults:
    """The panel of faults and the hand on its photograph. Points are in mm on the leaf shown."""

    def __init__(self, user):
        (self.panel,) = base.shown()
        self.hand = user.hand(self.panel.window.view)

    @property
    def pointing(self):
        return self.panel.window.view.pointing

    def px(self, mm):
        """A point as a place on the photo."""
        return self.panel.picture.place(mm)

    def draw(self, points, end="ring"):
        for mm in points:
            self.panel.window.view.show_place(self.px(mm))
            self.hand.click(self.px(mm))
        if end == "ring":
            self.hand.click(self.px(points[0]))
        else:
            self.hand.key(QtCore.Qt.Key_Return)

    def choose(self, mm):
        self.hand.key(QtCore.Qt.Key_Escape)
        self.panel.window.view.show_place(self.px(mm))
        self.hand.click(self.px(mm))

    @staticmethod
    def near(area, wanted, share=0.06):
        return area.symmetric_difference(wanted).area < share * wanted.area

    @staticmethod
    def on(bundle, number):
        """The faults that a leaf of a Bundle object has."""
        return core_bundle(bundle).leaf(number).faults


@pytest.fixture
def open_faults(user):
    """Opens the panel by its command, two pixels of the screen for each of the photograph."""

    def opened():
        user.open_panel("Veneer_Faults", "faults")
        user.wait_for(lambda: user.visible(QtGui.QWidget, "canvas"), "the photograph opens")
        made = Faults(user)
        made.panel.window.view.zoom_to(2.0)
        return made

    return opened


@pytest.fixture
def faults(open_faults, bundle):
    return open_faults()


# --- photographs of leaves on a table -----------------------------------------------------------


BROAD, LONG, LEFT, TOP = 100, 240, 30, 20
"""Pixels of the leaf on its photograph, and where it lies."""


def photograph(k, light=1.0, slant=0):
    """Leaf k on a blue table, 160 x 300 pixels of 1 mm; a slant leans it to the right."""
    x, y = np.meshgrid(np.arange(BROAD) + 0.5, np.arange(LONG)[::-1] + 0.5)
    rings = 150 + 30 * np.sin(x / 5 + np.sin(y / 50 + k) * 2) + x / 4
    leaf = np.stack([rings, rings * 0.8, rings * 0.55], axis=-1)
    picture = np.empty((300, 160, 3))
    picture[:] = (60, 90, 130)
    for row in range(LONG):
        lean = round(slant * (LONG - row) / LONG)
        picture[TOP + row, LEFT + lean : LEFT + lean + BROAD] = leaf[row]
    linear = ((picture / 255) ** 2.2) * light
    return np.clip(linear ** (1 / 2.2) * 255, 0, 255).astype(np.uint8)


@pytest.fixture(scope="session", name="photograph")
def photograph_of_a_leaf():
    return photograph


@pytest.fixture
def save(tmp_path):
    folder = tmp_path / "fotos é"
    folder.mkdir()

    def saved(**pictures):
        for name, pixels in pictures.items():
            file = folder / f"{name.replace('_', ' ')}.png"
            Image.fromarray(np.ascontiguousarray(pixels)).save(file)
        return folder

    return saved


@pytest.fixture
def three(save):
    return save(
        leaf_1=photograph(1), leaf_2=photograph(2, 0.8, 6), leaf_3=photograph(3, 1.2, 12)
    )


class BringIn:
    """Opens the panel by its command and fills its boxes; `panel` is what was opened."""

    def __init__(self, user):
        self.user = user

    def __call__(self, folder, **boxes):
        self.user.open_panel("Veneer_BringInLeaves", "folder")
        self.user.fill("folder", str(folder))
        (self.panel,) = base.shown()
        tabs = self.panel.form.tabs
        for name, value in boxes.items():
            if not self.user.visible(QtGui.QWidget, name):
                tabs.setCurrentIndex(1 - tabs.currentIndex())
            self.user.fill(name, value)
        return self.panel

    def window(self, button):
        """The hand on the photograph that a button opens."""
        getattr(self.panel.form, button).click()
        seen = lambda: self.user.visible(QtGui.QWidget, "canvas")  # noqa: E731
        self.user.wait_for(seen, "the photograph opens")
        assert self.panel.form.trouble.text() == ""
        return self.user.hand(self.panel.photographs.window.view)


@pytest.fixture
def bring_in(user, fresh):
    return BringIn(user)

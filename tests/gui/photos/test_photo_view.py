# SPDX-License-Identifier: LGPL-2.1-or-later
"""A photograph in its window: zoomed, pulled about, painted, closed."""

import gc

import FreeCAD
import numpy as np
import pytest
from PySide import QtCore, QtGui

from veneerwb.gui.photos import looks
from veneerwb.gui.photos.frame import Picture
from veneerwb.gui.photos.items import Item
from veneerwb.gui.photos.window import PhotoWindow

Qt = QtCore.Qt
ROWS, COLUMNS = 900, 600
"""Of the picture in the window."""


def area(corners, kind="knot", **more):
    return Item(list(corners), kind, **more)


SQUARE = [(100.0, 100.0), (300.0, 100.0), (300.0, 300.0), (100.0, 300.0)]


# --- looking ------------------------------------------------------------------------------------


def test_the_whole_picture_is_seen_in_the_middle(window):
    view = window.view
    left, top = view.frame.to_widget((0.0, 0.0))
    right, bottom = view.frame.to_widget((COLUMNS, ROWS))
    width, height = view.size
    assert left >= 0 and top >= 0 and right <= width and bottom <= height
    assert left == pytest.approx(width - right) and top == pytest.approx(height - bottom)
    assert bottom - top > 0.9 * height


@pytest.mark.parametrize("zoom", [0.4, 1.0, 2.3, 9.0])
def test_what_is_painted_is_the_pixel_that_is_said_to_be_there(window, zoom, painted):
    view = window.view
    view.zoom_to(zoom)
    seen = painted(view)
    for across, down in ((0.3, 0.4), (0.5, 0.5), (0.6, 0.55)):
        x, y = int(view.size[0] * across), int(view.size[1] * down)
        column, row = view.frame.to_picture((x + 0.5, y + 0.5))
        if 1 < column < COLUMNS - 1 and 1 < row < ROWS - 1:
            meant = view.picture.pixels[int(row), int(column)].astype(int)
            assert np.abs(seen[y, x].astype(int) - meant).max() <= 3


@pytest.mark.parametrize("zoom", [0.13, 0.2, 0.3, 0.7, 1.0, 3.0])
def test_every_size_of_a_large_picture_lies_where_the_others_do(window, painted, zoom):
    large = np.zeros((2400, 1801, 3), np.uint8)
    large[700:1500, 601:1300] = 255
    window.show(Picture(large))
    assert len(window.view.picture.images) == 2
    for corner, toward in (((601.0, 700.0), 1), ((1300.0, 1500.0), -1)):
        window.view.zoom_to(zoom)
        window.view.show_place(corner)
        x, y = window.view.frame.to_widget(corner)
        bright = painted(window.view)[:, :, 0] > 127
        row, column = int(y + 30 * toward), int(x + 30 * toward)
        edges = np.flatnonzero(np.diff(bright[row])), np.flatnonzero(np.diff(bright[:, column]))
        assert min(abs(edges[0] + 1 - x)) <= 1.0 and min(abs(edges[1] + 1 - y)) <= 1.0


def test_the_wheel_keeps_what_lies_under_the_pointer(window, hand):
    view = window.view
    at = (0.6 * view.size[0], 0.3 * view.size[1])
    before, zoom = view.frame.to_picture(at), view.frame.zoom
    hand.wheel(at, 3)
    assert view.frame.zoom == pytest.approx(zoom * 1.25**3)
    assert view.frame.to_picture(at) == pytest.approx(before)
    hand.wheel(at, -2)
    assert view.frame.to_picture(at) == pytest.approx(before)
    hand.wheel(at, 60)
    assert view.frame.zoom == pytest.approx(40.0)
    hand.wheel(at, -90)
    assert view.frame.zoom > 0.05


@pytest.mark.parametrize("how", ["middle", "space", "left"])
def test_the_picture_is_pulled_about(window, hand, how):
    view = window.view
    view.zoom_to(2.0)
    start, end = (300.0, 200.0), (260.0, 250.0)
    held = view.frame.to_picture(start)
    if how == "space":
        view.pointing.most = 4  # a click would place a mark
        hand.key_down(Qt.Key_Space)
    hand.drag_widget(start, end, Qt.MiddleButton if how == "middle" else Qt.LeftButton)
    if how == "space":
        hand.key_up(Qt.Key_Space)
    assert view.frame.to_picture(end) == pytest.approx(held)
    assert view.pointing.marks == []


def test_the_picture_cannot_be_lost(window, hand):
    view = window.view
    view.zoom_to(1.0)
    for _ in range(10):
        hand.drag_widget((10.0, 10.0), (390.0, 390.0), Qt.MiddleButton)
    column, row = view.frame.to_picture((view.size[0] / 2, view.size[1] / 2))
    assert 0 <= column <= COLUMNS and 0 <= row <= ROWS


def test_keys_and_buttons_zoom_and_fit(window, hand):
    view = window.view
    fitted = view.frame.zoom
    hand.key(Qt.Key_1)
    assert view.frame.zoom == 1.0
    hand.key(Qt.Key_Plus)
    assert view.frame.zoom == pytest.approx(1.25)
    hand.key(Qt.Key_F)
    assert view.frame.zoom == pytest.approx(fitted)
    window.form.plain.click()
    window.form.closer.click()
    window.form.further.click()
    assert view.frame.zoom == pytest.approx(1.0)
    window.form.fit.click()
    assert view.frame.zoom == pytest.approx(fitted)


def test_a_fitted_picture_stays_whole_when_the_window_changes(window):
    view = window.view
    view.canvas.setMinimumHeight(0)
    window._frame.showNormal()
    window._frame.resize(400, 300)
    for _ in range(3):
        QtGui.QApplication.processEvents()
    right, bottom = view.frame.to_widget((COLUMNS, ROWS))
    assert right <= view.size[0] and bottom <= view.size[1]


def test_the_place_under_the_pointer_is_told_in_pixels_and_lengths(window, hand, pixels):
    hand.move((100.5, 899.5))
    said = window.form.place.text()
    assert "Column 100.5, row 899.5" in said and "50.25 mm" in said and "0.25 mm" in said
    window.show(Picture(pixels()))
    hand.move((100.5, 200.5))
    assert "mm" not in window.form.place.text()


def test_what_cannot_be_painted_is_said_instead(window, painted, monkeypatch):
    def broken(*args):
        raise ValueError("no light")

    monkeypatch.setattr(window.view, "_photograph", broken)
    said = painted(window.view)
    assert said.mean() > 230 and said.min() < 160, "white paper with a sentence"
    monkeypatch.undo()
    assert painted(window.view).mean() < 200


def test_the_wheel_with_ctrl_turns_pages(window, hand):
    zoom = window.view.frame.zoom
    hand.wheel((60.0, 60.0), -1, Qt.ControlModifier)
    assert window.page == 1 and window.view.frame.zoom == zoom
    hand.wheel((60.0, 60.0), 4, Qt.ControlModifier)
    assert window.page == 0


def test_pages_are_turned_and_bounded(window, user, hand):
    turned = []
    window.turned = turned.append
    user.box("after").click()
    user.box("after").click()
    assert turned == [1, 2] and not user.box("after").isEnabled()
    user.box("before").click()
    assert turned[-1] == 1 and window.page == 1
    hand.key(Qt.Key_PageDown)
    hand.key(Qt.Key_PageDown)
    assert window.page == 2
    hand.key(Qt.Key_PageUp)
    assert window.page == 1 and turned == [1, 2, 1, 2, 1]
    window.offer(["One"])
    assert not user.visible(QtGui.QToolButton, "after")


def test_another_picture_of_that_size_is_seen_where_the_one_before_was(window, pixels):
    view = window.view
    view.zoom_to(3.0)
    before = view.frame.to_picture((0.0, 0.0))
    window.show(Picture(pixels() // 2, 0.5), keep=True)
    assert view.frame.to_picture((0.0, 0.0)) == before and view.frame.zoom == 3.0
    window.show(Picture(pixels(100, 100), 0.5), keep=True)
    assert view.frame.fitted


def test_a_picture_can_lie_turned_on_a_paper(window, painted, pixels):
    """As registered leaves do that are looked at in turn: (x, y) lies at (600 - y, x)."""
    view = window.view
    turned = Picture(pixels(400, 300), 0.5, (600, 500), (0.0, -1.0, 600.0, 1.0, 0.0, 100.0))
    window.show(turned)
    view.zoom_to(1.0)
    for x, y in ((50.5, 100.5), (250.5, 300.5)):
        across, down = (int(at) for at in view.frame.to_widget((600.0 - y, x + 100.0)))
        meant = turned.pixels[int(y), int(x)].astype(int)
        assert np.abs(painted(view)[down, across].astype(int) - meant).max() <= 3


def test_fifty_megapixels_are_drawn_from_a_smaller_copy(window):
    large = Picture(np.zeros((8400, 6000, 3), np.uint8))
    window.show(large)
    sizes = [image.width() * image.height() for image in large.images]
    assert sizes[0] == 8400 * 6000 and sizes[-1] < 2_000_000
    drawn = []

    class Painter:
        """Notes which image is drawn, and how much of it."""

        def __getattr__(self, name):
            return lambda *_: None

        def drawImage(self, at, image, window):
            drawn.append((image.width(), window.width() * window.height()))

    for zoom in (window.view.frame.zoom, 0.3, 1.0, 5.0):
        window.view.zoom_to(zoom)
        large.draw(Painter(), window.view.frame, *window.view.size)
    canvas = window.view.size[0] * window.view.size[1]
    assert all(area < 5 * canvas + 20_000 for _, area in drawn)
    assert drawn[0][0] < 1600 and drawn[2][0] == 6000


def test_a_magnifier_is_beside_the_pointer_while_something_is_placed(window, hand, painted):
    view = window.view
    plain = painted(view).copy()
    hand.move((300.0, 450.0))
    assert (painted(view) == plain).all()
    view.pointing.most = 1
    hand.move((300.0, 450.0))
    changed = (painted(view) != plain).any(axis=2)
    assert 120 * 120 < changed.sum() < 190 * 190
    x, y = (int(at) for at in view.frame.to_widget((300.0, 450.0)))
    assert not changed[y - 5 : y + 5, x - 5 : x + 5].any()
    hand.leave()
    assert (painted(view) == plain).all()


KINDS = ("usable", "margin", "split", "knot", "patch", "stain", "suggested")


def test_every_kind_differs_without_its_colour(window, painted):
    """Painted in greys, no two kinds look alike."""
    seen = {}
    for kind in KINDS:
        window.view.pointing.areas = [area(SQUARE, kind)]
        x, y = (int(at) for at in window.view.frame.to_widget((100.0, 100.0)))
        w = int(200 * window.view.frame.zoom)
        grey = painted(window.view)[y - 4 : y + w + 4, x - 4 : x + w + 4].mean(axis=2)
        seen[kind] = grey - grey.mean()
    for one in KINDS:
        for other in KINDS[: KINDS.index(one)]:
            assert np.abs(seen[one] - seen[other]).mean() > 2.0, (one, other)


@pytest.mark.parametrize(("zoom", "scale", "step"), [
    (1.0, 1.0, 50.0), (10.0, 1.0, 5.0), (0.2, 0.5, 100.0), (40.0, 0.1, 0.1),
])  # fmt: skip
def test_the_lines_of_the_grid_lie_on_round_millimetres(zoom, scale, step):
    assert looks.grid_step(zoom, scale) == pytest.approx(step)


def test_the_grid_is_drawn_from_the_lower_left(window, hand, painted):
    view = window.view
    plain = painted(view).astype(int)
    hand.key(Qt.Key_G)
    lines = np.abs(painted(view).astype(int) - plain).sum(axis=2)
    step = looks.grid_step(view.frame.zoom, 0.5)
    x, _ = view.frame.to_widget((step / 0.5, 0.0))
    _, y = view.frame.to_widget((0.0, ROWS - step / 0.5))
    middle = view.frame.to_widget((1.5 * step / 0.5, ROWS - 1.5 * step / 0.5))
    across, down = int(middle[0]), int(middle[1])
    assert lines[down, int(x) - 1 : int(x) + 2].max() > 15
    assert lines[int(y) - 1 : int(y) + 2, across].max() > 15
    assert lines[down, across] == 0
    hand.key(Qt.Key_G)
    assert (painted(view) == plain).all()


# --- life ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("way", ["close", "user", "document"])
def test_it_opens_and_closes_again_and_again(fresh, user, way, pixels):
    for _ in range(10):
        closed = []
        made = PhotoWindow("Photograph", ["a", "b"], closed=lambda told=closed: told.append(1))
        made.show(Picture(pixels(300, 200), 0.5))
        made.view.pointing.areas = [area(SQUARE[:3])]
        QtGui.QApplication.processEvents()
        user.hand(made.view).wheel((50.0, 50.0), 1)
        if way == "close":
            made.close()
        elif way == "user":
            made._frame.close()
        else:
            made.close()
            FreeCAD.closeDocument(FreeCAD.newDocument("Passing").Name)
        for _ in range(4):
            QtGui.QApplication.processEvents()
        del made
        gc.collect()
        assert user.visible(QtGui.QWidget, "canvas") == []
        assert closed == ([1] if way == "user" else [])

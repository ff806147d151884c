# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is shown of a spot: any leaf behind the wedge, one leaf mirrored or the true leaves."""

import numpy as np
import pytest
from PySide import QtCore, QtGui

from veneerwb.core import Top, radial
from veneerwb.gui.spot import window as spot_window
from veneerwb.paint import texture
from veneerwb.paint.live import LivePicture

Qt = QtCore.Qt


def pixels(spot):
    """The top as it is painted, as plain numbers."""
    top = spot.window.top
    image = QtGui.QImage(*top.events.size, QtGui.QImage.Format_RGB32)
    painter = QtGui.QPainter(image)
    top.draw(painter, top.events.size)
    painter.end()
    return np.frombuffer(bytes(image.constBits()), np.uint8).astype(int)


def test_page_down_puts_the_next_leaf_behind_the_wedge(user, spot, hand):
    before = spot.window.view.picture
    hand.key(Qt.Key_PageDown)
    hand.key(Qt.Key_PageDown)
    assert spot.state.number == 3
    assert user.box("leaf").currentText() == "Leaf 3"
    shown = spot.window.view.picture
    assert shown is not before
    assert np.array_equal(shown.pixels, spot.state.bundle.leaf(3).photo)
    assert not spot.doc.UndoNames


def test_leaves_that_the_top_does_not_need_are_marked(user, spot):
    spot.state.go(ways=6)
    box = user.box("leaf")
    assert [box.itemText(row) for row in (5, 6)] == ["Leaf 6", "Leaf 7, not used"]


def test_one_leaf_mirrored_is_the_leaf_looked_at_and_not_the_true_top(user, spot, hand, match):
    true = pixels(spot)
    user.box("Mirrored").setCurrentIndex(1)
    shown = spot.state.shown()
    face = spot.state.bundle.leaf(1).face
    sides = [shown.bundle.leaf(piece.leaf).side(piece.turned) for piece in shown.pieces]
    assert all(side.image is face.image for side in sides)
    assert [p.turned for p in shown.pieces] == [p.turned for p in spot.state.layout().pieces]
    mirrored = pixels(spot)
    assert np.abs(mirrored - true).mean() > 0.5
    hand.key(Qt.Key_PageDown)
    assert np.abs(pixels(spot) - mirrored).mean() > 0.5
    hand.key(Qt.Key_M)
    assert np.array_equal(pixels(spot), true)
    assert user.box("Mirrored").currentIndex() == 0
    assert not match.Document.UndoNames


def test_a_click_on_the_top_looks_at_that_leaf(user, spot):
    top = spot.window.top
    width, height = top.events.size
    at = type("At", (), {"x": width / 2, "y": height / 2 - 30})
    assert top.piece_at(at).position == 1
    top.clicked(at)
    assert spot.state.number == spot.state.layout().pieces[0].leaf
    east = type("At", (), {"x": width / 2 + 30, "y": height / 2})
    top.clicked(east)
    assert spot.state.number == spot.state.layout().pieces[6].leaf == 7
    top.over(east)
    assert user.box("place").text() == "Position 7: leaf 7, turned over"


@pytest.mark.parametrize("most", [60_000, 400_000_000])
def test_photographs_too_large_to_be_kept_are_shrunk_and_not_made_anew(
    eight_leaves, monkeypatch, most
):
    monkeypatch.setattr(texture, "MOST_BYTES", most)
    monkeypatch.setattr(texture, "_shelf", texture._Shelf())
    live = LivePicture(400, 400, 2.0)
    layout = radial(eight_leaves, Top.round(190), ways=8)
    live.paint(layout)
    made = []
    make = texture._made
    monkeypatch.setattr(texture, "_made", lambda *what: made.append(what) or make(*what))
    live.paint(layout)
    assert not made


def test_leaf_and_top_stand_above_the_tabs_where_there_is_room(spot, monkeypatch):
    window, form = spot.window, spot.window.form
    tabs, nearby = form.tabs, window.added[0].nearby

    def arranged(room):
        monkeypatch.setattr(spot_window, "ROOM", room)
        window.keep_clear()
        QtGui.QApplication.processEvents()
        return [tabs.tabText(k) for k in range(tabs.count())]

    assert arranged((1, 1)) == ["Nearby", "Found", "Kept", "What This Bundle Makes"]
    tabs.setCurrentWidget(nearby.form)
    assert form.top.isVisible() and form.canvas.isVisible() and nearby.form.isVisible()
    for room in ((9999, 1), (1, 9999)):  # neither a narrow place nor a low one holds both
        assert arranged(room)[:2] == ["Leaf and Top", "Nearby"]
        assert nearby.form.isVisible() and not form.top.isVisible()
        window.show_pictures()
        assert form.top.isVisible() and form.canvas.isVisible() and not nearby.form.isVisible()
        before = window.top.painted
        form.top.grab()
        assert window.top.painted > before
        arranged((1, 1))
        tabs.setCurrentWidget(nearby.form)

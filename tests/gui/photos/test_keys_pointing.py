# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a mouse does on a photograph, done by keys alone."""

import pytest
from PySide import QtCore

from veneerwb.gui.photos.items import Item, mark

Qt = QtCore.Qt
SQUARE = [(100.0, 100.0), (500.0, 100.0), (500.0, 800.0), (100.0, 800.0)]


def middle(view):
    """The place of the picture in the middle of what is seen."""
    return view.frame.to_picture((view.size[0] / 2, view.size[1] / 2))


@pytest.fixture
def closer(window, hand):
    """The window with the picture at one to one, so that it can be moved."""
    hand.key(Qt.Key_1)
    return window.view


def test_marks_are_placed_in_the_middle_of_what_is_seen_and_moved_from_there(closer, hand):
    pointing = closer.pointing
    pointing.most, pointing.letters = 2, "AB"
    first = middle(closer)
    hand.key(Qt.Key_Insert)
    hand.key(Qt.Key_Right, Qt.ControlModifier)
    second = middle(closer)
    assert second[0] > first[0] + 10
    hand.key(Qt.Key_Insert)
    assert [one.text for one in pointing.marks] == ["A", "B"]
    for one, place in zip(pointing.marks, (first, second)):
        assert one.place == pytest.approx(place, abs=1.0)
    hand.key(Qt.Key_Left)
    assert pointing.marks[1].place[0] == pytest.approx(second[0] - 1, abs=1.0)


def test_an_area_is_drawn_and_closed(closer, hand):
    pointing = closer.pointing
    pointing.kind, made = "knot", []
    pointing.changed = made.append
    for key in (Qt.Key_Right, Qt.Key_Down, Qt.Key_Left):
        hand.key(Qt.Key_Insert)
        hand.key(key, Qt.ControlModifier)
    hand.key(Qt.Key_Return)
    (area,) = pointing.areas
    assert made == [area] and len(area.corners) == 3
    (a, b), (c, d), (e, f) = area.corners
    assert c > a + 10 and d == pytest.approx(b, abs=1)
    assert e == pytest.approx(c, abs=1) and f > d + 10


def test_the_next_item_and_its_next_corner_are_chosen_changed_and_taken_away(window, hand):
    pointing = window.view.pointing
    area, held = Item(list(SQUARE), "knot"), mark((30.0, 30.0), "A", held=True)
    pointing.areas, pointing.marks = [area], [held]
    hand.key(Qt.Key_N)
    assert pointing.grip.item is held and pointing.grip.corner is None
    hand.key(Qt.Key_C)  # a mark has no corners
    assert pointing.grip.item is held
    hand.key(Qt.Key_N)
    assert pointing.grip.item is area and pointing.grip.corner is None
    for corner in (0, 1, 2, 3, 0):
        hand.key(Qt.Key_C)
        assert pointing.grip.corner == corner
    hand.key(Qt.Key_Right, Qt.ShiftModifier)
    assert area.corners[0] == (110.0, 100.0)
    hand.key(Qt.Key_Delete)
    assert area.corners == SQUARE[1:]
    hand.key(Qt.Key_N)
    assert pointing.grip.item is held


def test_an_edge_in_the_middle_gets_another_corner(closer, hand):
    column, row = middle(closer)
    area = Item([(column, row - 50), (column + 50, row + 50), (column, row + 50)], "knot")
    closer.pointing.areas = [area]
    hand.key(Qt.Key_Insert)
    assert len(area.corners) == 4
    assert area.corners[3] == pytest.approx((column, row), abs=1.0)


def test_the_middle_is_told_as_the_pointer_would_be(closer, window, hand):
    hand.key(Qt.Key_Down, Qt.ControlModifier)
    column, row = middle(closer)
    assert f"{column:.1f}" in window.form.place.text() and f"{row:.1f}" in window.form.place.text()

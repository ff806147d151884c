# SPDX-License-Identifier: LGPL-2.1-or-later
"""Marks and areas on a photograph: the mouse and the keys, as the widget gets them."""

import numpy as np
import pytest
from PySide import QtCore, QtGui

from veneerwb.gui.photos.items import Item, mark

Qt = QtCore.Qt
ROWS = 900
"""Of the picture in the window."""


def heard(view):
    """What the view tells its owner, as it comes."""
    told = []
    view.pointing.changed = lambda item: told.append(("changed", item))
    view.pointing.chosen = lambda item: told.append(("chosen", item))
    return told


def area(corners, kind="knot", **more):
    return Item(list(corners), kind, **more)


SQUARE = [(100.0, 100.0), (300.0, 100.0), (300.0, 300.0), (100.0, 300.0)]


# --- marks --------------------------------------------------------------------------------------


def test_clicks_place_marks_with_letters_and_no_more_than_wanted(window, hand):
    view, told = window.view, heard(window.view)
    view.pointing.most, view.pointing.letters = 3, "ABC"
    places = [(100.0, 100.0), (500.0, 120.0), (480.0, 800.0)]
    for place in places:
        hand.click(place)
    hand.click((300.0, 500.0))
    assert [one.text for one in view.pointing.marks] == ["A", "B", "C"]
    for one, place in zip(view.pointing.marks, places):
        assert one.place == pytest.approx(place, abs=1 / view.frame.zoom)
    assert len([what for what, _ in told if what == "changed"]) == 3


def test_a_mark_lands_where_the_button_comes_up(window, hand):
    view = window.view
    view.pointing.most = 1
    hand.drag((100.0, 100.0), (140.0, 90.0))
    assert view.pointing.marks[0].place == pytest.approx((140.0, 90.0), abs=1 / view.frame.zoom)


def test_a_mark_is_dragged_and_nudged_and_taken_away(window, hand):
    view, told = window.view, heard(window.view)
    view.pointing.marks = [mark((100.0, 100.0), "A"), mark((400.0, 400.0), "B")]
    view.pointing.most, view.pointing.letters = 2, "AB"
    hand.drag((100.0, 100.0), (250.0, 180.0))
    moved = view.pointing.marks[0]
    assert moved.place == pytest.approx((250.0, 180.0), abs=1 / view.frame.zoom)
    column, row = moved.place
    hand.key(Qt.Key_Right)
    hand.key(Qt.Key_Down, Qt.ShiftModifier)
    hand.key(Qt.Key_Up)
    assert moved.place == pytest.approx((column + 1, row + 9))
    hand.key(Qt.Key_Delete)
    assert [one.text for one in view.pointing.marks] == ["B"]
    assert told[-1] == ("changed", moved)
    hand.click((50.0, 50.0))
    assert [one.text for one in view.pointing.marks] == ["B", "A"]


def test_a_mark_stays_on_the_picture(window, hand):
    view = window.view
    view.pointing.marks = [mark((10.0, 10.0))]
    hand.drag((10.0, 10.0), (-40.0, 1000.0))
    assert view.pointing.marks[0].place == (0.0, ROWS)
    hand.key(Qt.Key_Left)
    assert view.pointing.marks[0].place == (0.0, ROWS)


def test_a_held_mark_is_only_looked_at(window, hand):
    view = window.view
    view.pointing.marks = [mark((100.0, 100.0), held=True)]
    hand.drag((100.0, 100.0), (200.0, 200.0))
    hand.key(Qt.Key_Delete)
    assert [one.place for one in view.pointing.marks] == [(100.0, 100.0)]


def test_escape_while_dragging_puts_back(window, hand):
    view = window.view
    view.pointing.marks = [mark((100.0, 100.0))]
    kept = view.pointing.marks[0].corners
    hand.press((100.0, 100.0))
    hand.move((200.0, 200.0), Qt.LeftButton)
    hand.key(Qt.Key_Escape)
    hand.release((200.0, 200.0))
    assert view.pointing.marks[0].place == (100.0, 100.0)
    assert kept == [(100.0, 100.0)], "whoever keeps the list sees it put back too"
    view.pointing.most = 2
    hand.press((400.0, 400.0))
    hand.key(Qt.Key_Escape)
    hand.release((400.0, 400.0))
    assert len(view.pointing.marks) == 1


# --- areas --------------------------------------------------------------------------------------


@pytest.mark.parametrize("end", ["first corner", "enter", "double click"])
def test_an_area_is_drawn_corner_by_corner(window, hand, end):
    view, told = window.view, heard(window.view)
    view.pointing.kind = "split"
    for corner in SQUARE[:3]:
        hand.click(corner)
    if end == "enter":
        hand.click(SQUARE[3])
        hand.key(Qt.Key_Return)
    elif end == "double click":
        hand.double_click(SQUARE[3])
    else:
        hand.click(SQUARE[3])
        hand.click(SQUARE[0])
    (made,) = view.pointing.areas
    assert made.kind == "split" and view.pointing.drawn is None
    assert np.allclose(made.corners, SQUARE, atol=1 / view.frame.zoom)
    assert ("changed", made) in told
    assert view.pointing.grip is None and told[-2:] == [("chosen", None), ("changed", made)]


def test_escape_and_undo_take_the_corners_back_one_by_one(window, hand):
    view = window.view
    escaped = []
    view.escaped = lambda: escaped.append(1)
    view.pointing.kind = "knot"
    hand.click((100.0, 100.0))
    hand.click((200.0, 100.0))
    hand.key(Qt.Key_Return)  # two corners are no area
    assert view.pointing.areas == [] and len(view.pointing.drawn.corners) == 2
    hand.key(Qt.Key_Z, Qt.ControlModifier)
    assert len(view.pointing.drawn.corners) == 1
    hand.key(Qt.Key_Escape)
    assert view.pointing.drawn is None and not escaped
    hand.key(Qt.Key_Escape)
    assert escaped


def test_a_corner_of_the_chosen_area_is_dragged(window, hand):
    view, told = window.view, heard(window.view)
    made = area(SQUARE)
    view.pointing.areas = [made]
    hand.click((200.0, 200.0))
    assert told == [("chosen", made)]
    hand.drag(SQUARE[2], (350.0, 420.0))
    assert made.corners[2] == pytest.approx((350.0, 420.0), abs=1 / view.frame.zoom)
    assert told[-1] == ("changed", made)
    hand.key(Qt.Key_Left, Qt.ShiftModifier)
    assert made.corners[2][0] == pytest.approx(340.0, abs=1 / view.frame.zoom)


def test_an_edge_takes_another_corner_by_double_click(window, hand):
    view = window.view
    made = area(SQUARE)
    view.pointing.areas = [made]
    hand.double_click((200.0, 100.0))
    assert len(made.corners) == 5
    assert made.corners[1] == pytest.approx((200.0, 100.0), abs=1 / view.frame.zoom)
    hand.double_click(made.corners[1])
    assert len(made.corners) == 5  # a corner is no edge


def test_delete_takes_a_corner_while_three_are_left_and_then_the_area(window, hand):
    view = window.view
    made = area(SQUARE)
    view.pointing.areas = [made]
    hand.click((200.0, 200.0))
    hand.click(SQUARE[1])
    hand.key(Qt.Key_Delete)
    assert made.corners == [SQUARE[0], *SQUARE[2:]]
    hand.click(SQUARE[0])
    hand.key(Qt.Key_Backspace)
    assert view.pointing.areas == []


def test_the_smallest_area_under_the_pointer_is_chosen(window, hand):
    view, told = window.view, heard(window.view)
    small = area([(150.0, 150.0), (250.0, 150.0), (200.0, 250.0)])
    large = area([(50.0, 50.0), (500.0, 50.0), (500.0, 800.0), (50.0, 800.0)], "usable")
    view.pointing.areas = [small, large]
    hand.click((200.0, 180.0))
    hand.click((400.0, 600.0))
    hand.click((580.0, 880.0))
    assert told == [("chosen", small), ("chosen", large), ("chosen", None)]


def test_a_held_area_is_chosen_but_not_changed(window, hand):
    view = window.view
    made = area(SQUARE, "suggested", held=True)
    view.pointing.areas = [made]
    hand.click((200.0, 200.0))
    assert view.pointing.grip.item is made
    hand.drag(SQUARE[0], (10.0, 10.0))
    hand.double_click((200.0, 100.0))
    hand.key(Qt.Key_Delete)
    assert view.pointing.areas == [made] and made.corners == SQUARE


# --- what keeps its shape -----------------------------------------------------------------------


def wedge():
    """A wedge with its tip first: moved by the tip or anywhere within, turned by the second corner
    about the tip."""

    def follow(corner, start, end):
        at = np.array(made.corners)
        if corner == 1:
            ways = [np.subtract(one, at[0]) for one in (start, end)]
            turn = np.subtract(*(np.arctan2(way[1], way[0]) for way in ways[::-1]))
            c, s = np.cos(turn), np.sin(turn)
            return [tuple(one) for one in (at - at[0]) @ np.array([(c, s), (-s, c)]) + at[0]]
        return [tuple(one) for one in at + np.subtract(end, start)]

    corners = [(300.0, 400.0), (300.0, 200.0), (380.0, 220.0)]
    made = area(corners, "frame", follow=follow, grips=(0, 1))
    return made


def test_what_keeps_its_shape_is_moved_by_its_grips_anywhere_within_and_by_keys(window, hand):
    view, told, moving = window.view, heard(window.view), []
    made = wedge()
    view.pointing.areas, view.pointing.moving = [made], lambda item: moving.append(item)
    sides = lambda: np.linalg.norm(np.diff(made.corners, axis=0), axis=1)  # noqa: E731
    before, near = sides(), {"abs": 2 / view.frame.zoom}
    hand.drag((300.0, 400.0), (250.0, 500.0))  # by the tip, though nothing was chosen
    assert np.allclose(made.corners, [(250, 500), (250, 300), (330, 320)], atol=2 / view.frame.zoom)
    assert len(moving) == 4 and [what for what, _ in told] == ["chosen", "changed"]
    hand.drag(made.corners[1], (450.0, 500.0))  # a quarter turn about the tip
    assert made.corners[0] == pytest.approx((250, 500), **near)
    assert made.corners[1] == pytest.approx((450, 500), **near)
    hand.drag((400.0, 510.0), (410.0, 550.0))  # within
    assert made.corners[1] == pytest.approx((460, 540), **near)
    tip = made.corners[0]
    hand.key(Qt.Key_Right, Qt.ShiftModifier)
    hand.key(Qt.Key_Up)
    assert made.corners[0] == pytest.approx((tip[0] + 10, tip[1] - 1))
    assert sides() == pytest.approx(before)
    hand.double_click((np.array(made.corners[0]) + made.corners[1]) / 2)
    assert len(made.corners) == 3  # an edge of it takes no corner


def test_escape_puts_back_what_keeps_its_shape(window, hand):
    made = wedge()
    before = list(made.corners)
    window.view.pointing.areas = [made]
    hand.press((300.0, 400.0))
    hand.move((200.0, 300.0), Qt.LeftButton)
    assert made.corners != before
    hand.key(Qt.Key_Escape)
    hand.release((200.0, 300.0))
    assert made.corners == before


def test_a_drag_paints_no_photograph_again(window, hand, painted, monkeypatch):
    view, drawn = window.view, []
    view.pointing.areas = [wedge()]
    painted(view)
    draw = view.picture.draw
    monkeypatch.setattr(view.picture, "draw", lambda *args: drawn.append(1) or draw(*args))
    hand.press((300.0, 400.0))
    seen = []
    for step in range(3):
        hand.move((300.0 + 20 * step, 400.0), Qt.LeftButton)
        view._magnified = None
        seen.append(painted(view).copy())
    hand.release((340.0, 400.0))
    assert drawn == [] and (seen[0] != seen[2]).any()
    hand.wheel((50.0, 50.0), 1)
    painted(view)
    assert drawn


def test_the_hosts_shortcuts_do_not_take_the_keys(window):
    for key in (Qt.Key_Delete, Qt.Key_Space, Qt.Key_Escape, Qt.Key_Left, Qt.Key_1):
        event = QtGui.QKeyEvent(QtCore.QEvent.ShortcutOverride, key, Qt.NoModifier)
        event.ignore()
        QtGui.QApplication.sendEvent(window.view.canvas, event)
        assert event.isAccepted()
    for key, ours in ((Qt.Key_Z, True), (Qt.Key_S, False)):
        event = QtGui.QKeyEvent(QtCore.QEvent.ShortcutOverride, key, Qt.ControlModifier)
        event.ignore()
        QtGui.QApplication.sendEvent(window.view.canvas, event)
        assert event.isAccepted() == ours

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The window of a sequence, with the mouse and the keys as its widgets get them."""

import numpy as np
import pytest
from PySide import QtCore, QtGui

from veneerwb.core import sawn_bundle
from veneerwb.gui.sequence.state import Stack, State
from veneerwb.gui.sequence.window import SequenceWindow, Told
from veneerwb.paint import ink
from veneerwb.paint.drift import Plot

Qt = QtCore.Qt
DELETE = int(getattr(QtCore.QEvent.DeferredDelete, "value", QtCore.QEvent.DeferredDelete))


class Mouse:
    """The mouse and the keys on one of the window's pictures."""

    def __init__(self, label):
        self.label = label

    def _mouse(self, kind, at, button, held):
        point = QtCore.QPointF(*at)
        everywhere = QtCore.QPointF(self.label.mapToGlobal(point.toPoint()))
        event = QtGui.QMouseEvent(kind, point, everywhere, button, held, Qt.NoModifier)
        QtGui.QApplication.sendEvent(self.label, event)

    def move(self, at, held=Qt.NoButton):
        self._mouse(QtCore.QEvent.MouseMove, at, Qt.NoButton, held)

    def press(self, at):
        self._mouse(QtCore.QEvent.MouseButtonPress, at, Qt.LeftButton, Qt.LeftButton)

    def release(self, at):
        self._mouse(QtCore.QEvent.MouseButtonRelease, at, Qt.LeftButton, Qt.NoButton)

    def click(self, at):
        self.press(at)
        self.release(at)

    def drag(self, start, end):
        self.press(start)
        for step in range(1, 5):
            at = tuple(a + (b - a) * step / 4 for a, b in zip(start, end))
            self.move(at, Qt.LeftButton)
        self.release(end)

    def wheel(self, notches, at=(50, 50), keys=Qt.NoModifier):
        point = QtCore.QPointF(*at)
        event = QtGui.QWheelEvent(
            point, QtCore.QPointF(self.label.mapToGlobal(point.toPoint())), QtCore.QPoint(),
            QtCore.QPoint(0, round(120 * notches)), Qt.NoButton, keys, Qt.NoScrollPhase, False,
        )  # fmt: skip
        QtGui.QApplication.sendEvent(self.label, event)

    def key(self, key, keys=Qt.NoModifier):
        """A key, offered first to the shortcuts as Qt does."""
        claim = QtGui.QKeyEvent(QtCore.QEvent.ShortcutOverride, key, keys)
        claim.ignore()
        QtGui.QApplication.sendEvent(self.label, claim)
        event = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, key, keys)
        QtGui.QApplication.sendEvent(self.label, event)
        return claim.isAccepted()

    def leave(self):
        QtGui.QApplication.sendEvent(self.label, QtCore.QEvent(QtCore.QEvent.Leave))


@pytest.fixture(scope="session")
def lying():
    """Six leaves, each shifted and turned under the camera."""
    return sawn_bundle(
        leaves=6, width=120, length=300, mm_per_px=1.0, figure="cathedral", seed=5, knots=0,
        disturb={"shift": 9.0, "turn": 1.5, "exposure": 0.0},
    )  # fmt: skip


@pytest.fixture
def window(user, fresh, lying):
    views = {leaf.number: leaf.face.view for leaf in lying.leaves}
    layings = {"registered": views, "photographed": Stack.photographed(lying)}
    stack = Stack(lying, lying.numbers, layings, "registered")
    heard, closed = [], []
    made = SequenceWindow(
        State.of(stack), "Sequence", lambda: heard.append(made.state.up),
        lambda: closed.append(True),
    )
    made.heard_of, made.closed_of = heard, closed
    made.to_front()
    user.wait_for(lambda: made.form.picture.width() > 200, "the window takes its size")
    for _ in range(5):
        QtGui.QApplication.processEvents()
    yield made
    made.close()
    QtGui.QApplication.processEvents()


@pytest.fixture
def mouse(window):
    return Mouse(window.form.picture)


def shown(label):
    """What a label shows, rows x columns x RGB, whatever its screen scales by."""
    image = QtGui.QImage(label.size(), QtGui.QImage.Format_RGB32)
    label.render(image, QtCore.QPoint())
    data = bytes(image.constBits())
    rows = np.frombuffer(data, np.uint8).reshape(image.height(), -1, 4)
    return rows[:, : image.width(), 2::-1].astype(int)


def crossed(label):
    """Where a cross is seen, (x, y), or None."""
    found = np.argwhere((np.abs(shown(label) - ink.MARK) < 40).all(axis=2))
    return None if not len(found) else tuple(found.mean(axis=0)[::-1] + 0.5)


def told_of(count=6):
    apart = np.abs(np.subtract.outer(np.arange(count), np.arange(count)))
    return Told(np.exp(-apart / 3.0), {3: "out of place"}, {5: "one missing?"})


# --- paging --------------------------------------------------------------------------------------


def test_the_wheel_the_keys_the_slider_and_the_buttons_page(window, mouse):
    for notches, leaf in ((-2, 3), (1, 2), (-0.5, 2), (-0.5, 3)):
        mouse.wheel(notches, keys=Qt.ControlModifier)
        assert window.state.leaf == leaf and window.form.leaf.value() == leaf - 1
    assert window.state.viewport is None
    for key, leaf in ((Qt.Key_Right, 4), (Qt.Key_Left, 3), (Qt.Key_End, 6), (Qt.Key_Home, 1),
                      (Qt.Key_PageDown, 2), (Qt.Key_Up, 1), (Qt.Key_PageDown, 2),
                      (Qt.Key_PageUp, 1)):  # fmt: skip
        assert mouse.key(key)
        assert window.state.leaf == leaf
    window.form.leaf.setValue(1)
    assert window.state.leaf == 2
    window.form.on.click()
    window.form.back.click()
    window.form.back.click()
    window.form.back.click()
    assert window.state.leaf == 1 and "1 of 6" in window.form.where.text()
    assert window.heard_of[-1] == 1 and len(window.heard_of) > 10


def test_keys_that_are_not_ours_are_left_to_the_host(window, mouse):
    assert not mouse.key(Qt.Key_F5) and not mouse.key(Qt.Key_F, Qt.ControlModifier)
    assert mouse.key(Qt.Key_Space)
    window.form.play.setChecked(False)


def test_zoom_and_place_are_kept_while_paging(window, mouse):
    size = window.canvases[0].size
    at = (size[0] * 0.5 + 12, size[1] * 0.4)
    under = window.state.seen(size).to_mm(at)
    mouse.wheel(3, at)
    assert window.state.leaf == 1
    zoomed = window.state.viewport
    assert zoomed.to_mm(at) == pytest.approx(under)
    mouse.drag((100, 100), (160, 80))
    moved = window.state.viewport
    assert moved.to_mm((160, 80)) == pytest.approx(zoomed.to_mm((100, 100)))
    assert window.state.way is None  # a drag picks nothing
    mouse.wheel(-1, keys=Qt.ControlModifier)
    assert window.state.viewport == moved and window.state.leaf == 2
    mouse.key(Qt.Key_Plus)
    assert window.state.viewport.px_per_mm > moved.px_per_mm
    mouse.key(Qt.Key_1)
    assert window.state.viewport.px_per_mm == pytest.approx(1.0)  # its photographs' own
    mouse.key(Qt.Key_F)
    assert window.state.viewport is None
    mouse.key(Qt.Key_Minus)
    window.form.fit.click()
    assert window.state.viewport is None


def test_the_leaves_are_paged_there_and_back_by_themselves(user, window, mouse):
    window.form.speed.setValue(30)
    mouse.key(Qt.Key_Space)
    user.wait_for(lambda: 6 in window.heard_of, "the last leaf is reached")
    user.wait_for(lambda: window.heard_of[-1] == 1, "it comes back")
    assert set(np.abs(np.diff(window.heard_of))) == {1}
    window.form.play.setChecked(False)
    count = len(window.heard_of)
    for _ in range(20):
        QtGui.QApplication.processEvents()
    assert len(window.heard_of) == count and not window.timer.isActive()


# --- two leaves ----------------------------------------------------------------------------------


def test_two_leaves_are_shown_by_turns(user, window):
    window.form.speed.setValue(30)
    window.form.other.setCurrentIndex(window.form.other.findData(5))
    window.form.show_as.setCurrentIndex(window.form.show_as.findData("blink"))
    user.wait_for(lambda: window.heard_of[-4:] == [5, 1, 5, 1], "they take turns")
    first = shown(window.form.picture)
    user.wait_for(lambda: window.state.up == 5, "the other is up")
    assert np.abs(shown(window.form.picture) - first).max() > 20
    window.form.show_as.setCurrentIndex(0)
    assert not window.timer.isActive() and window.state.up == 1


def test_halves_and_difference_are_of_the_two_leaves_chosen(window):
    alone = shown(window.form.picture)
    window.form.other.setCurrentIndex(window.form.other.findData(4))
    window.form.show_as.setCurrentIndex(window.form.show_as.findData("halves"))
    halves = shown(window.form.picture)
    middle = halves.shape[1] // 2
    assert (halves[:, : middle - 3] == alone[:, : middle - 3]).all()
    assert (halves[:, middle + 3 :] != alone[:, middle + 3 :]).any()
    window.form.show_as.setCurrentIndex(window.form.show_as.findData("difference"))
    grey = shown(window.form.picture)
    assert (np.ptp(grey, axis=2) <= 1).mean() > 0.99


# --- the point -----------------------------------------------------------------------------------


def test_a_point_is_followed_through_the_stack_with_a_cross(window, mouse):
    size = window.canvases[0].size
    at = (size[0] // 2 + 10, size[1] // 2 - 20)
    mouse.click(at)
    assert crossed(window.form.picture) == pytest.approx(at, abs=2.0)
    mouse.key(Qt.Key_End)
    assert crossed(window.form.picture) == pytest.approx(at, abs=2.0)  # the leaves lie in register
    window.form.laid.setCurrentIndex(window.form.laid.findData("photographed"))
    leaf = window.state.stack.bundle.leaf(6)
    place = leaf.face.view.apply(window.state.point)
    assert window.state.crossed(6) == pytest.approx(tuple(place))
    assert window.state.crossed(6) != pytest.approx(window.state.point, abs=0.5)
    assert "Leaf 6" in window.form.point.text() and "mm along" in window.form.point.text()


def test_the_drift_is_plotted_and_a_click_on_it_pages(window, mouse):
    before = shown(window.form.drift)
    size = window.canvases[0].size
    mouse.click((size[0] // 2, size[1] // 2))
    assert (shown(window.form.drift) != before).any()
    plot = Plot(window.canvases[2].size, window.state.way.numbers)
    Mouse(window.form.drift).click((plot.x_of(4), 60))
    assert window.state.leaf == 4
    columns = np.argwhere((np.abs(shown(window.form.drift) - ink.MARK) < 60).all(axis=2))[:, 1]
    assert plot.x_of(3) < columns.mean() < plot.x_of(5)


def test_a_point_picked_on_another_leaf_lies_there_under_the_pointer(window, mouse):
    window.form.laid.setCurrentIndex(window.form.laid.findData("photographed"))
    window.page(3)
    size = window.canvases[0].size
    at = (size[0] // 2 + 8, size[1] // 2 + 15)
    mouse.click(at)
    place = window.state.seen(size).to_mm(at)
    row = window.state.way.numbers.index(4)
    assert window.state.way.places[row] == pytest.approx(place)


def test_leaves_without_registers_say_that_the_point_only_stays(window, mouse, lying):
    stack = Stack(lying, lying.numbers, {"registered": Stack.photographed(lying)}, "registered")
    window.stand_on(stack)
    mouse.click((window.canvases[0].size[0] // 2, 100))
    assert "not registered" in window.form.point.text()


# --- what a proof tells --------------------------------------------------------------------------


def test_a_pair_is_named_under_the_pointer_and_shown_by_turns_on_a_click(user, window):
    window.stand_on(window.state.stack, told_of())
    board = window.hands[1].board(window.canvases[1].size)
    x, y, width, height = board.box(1, 4)
    pointer = Mouse(window.form.likeness)
    pointer.move((x + width / 2, y + height / 2))
    assert "2 and 5" in window.form.pair.text() and "0.37" in window.form.pair.text()
    pointer.leave()
    assert "2 and 5" not in window.form.pair.text()
    pointer.click((x + width / 2, y + height / 2))
    assert (window.state.leaf, window.state.other, window.state.show) == (2, 5, "blink")
    assert window.timer.isActive()
    pointer.click((2, 2))
    assert (window.state.leaf, window.state.other) == (2, 5)


def test_before_a_proof_the_pairs_say_what_to_do_and_take_no_click(window):
    pointer = Mouse(window.form.likeness)
    pointer.move((80, 80))
    pointer.click((80, 80))
    assert window.state.show == "one" and window.pair is None


def test_the_row_shows_the_leaves_in_the_proven_order_and_a_click_pages(user, window):
    stack = window.state.stack
    window.stand_on(
        Stack(stack.bundle, (1, 2, 4, 3, 5, 6), stack.layings, stack.figure), told_of()
    )
    user.wait_for(lambda: len(window.hands[3].pictures) == 6, "the small pictures are made")
    row = window.hands[3].row()
    assert row.numbers == (1, 2, 4, 3, 5, 6) and window.form.strip.width() == row.width
    left, wide = row.place(3)
    Mouse(window.form.strip).click((left + wide / 2, 40))
    assert window.state.leaf == 3 and window.form.leaf.value() == 3
    window.page(-1)
    assert window.state.leaf == 4


def test_the_leaf_that_is_shown_stays_in_sight_in_the_row(window, mouse):
    window.form.strip_area.setFixedWidth(110)
    QtGui.QApplication.processEvents()
    bar = window.form.strip_area.horizontalScrollBar()
    assert bar.value() == 0 < bar.maximum()
    mouse.key(Qt.Key_End)
    assert bar.value() > bar.maximum() / 2
    Mouse(window.form.strip).wheel(4)
    assert bar.value() == 0 and window.state.leaf == 6  # the wheel there only moves the row


def test_zoom_leaf_and_point_outlast_a_proof(window, mouse, lying):
    size = window.canvases[0].size
    mouse.wheel(2, (100, 100))
    window.page(2)
    mouse.click((size[0] // 2, size[1] // 2))
    viewport, place = window.state.viewport, window.state.way.places[0]
    stack = window.state.stack
    layings = {**stack.layings, "figure": dict(stack.layings["registered"])}
    window.stand_on(Stack(lying, lying.numbers, layings, "figure"), told_of())
    assert window.state.viewport == viewport and window.state.leaf == 3
    assert window.state.way.places[0] == pytest.approx(place)


# --- marks ---------------------------------------------------------------------------------------


def test_two_marks_are_picked_on_every_leaf_one_leaf_after_the_other(window, mouse):
    from dataclasses import replace

    window.change(replace(window.state, marks={}))
    width, height = window.canvases[0].size
    upper, lower = (width // 2, height // 3), (width // 2, 2 * height // 3)
    for leaf in lying_numbers(window):
        assert window.state.leaf == leaf
        mouse.click(upper)
        mouse.click(lower)
    assert window.state.lacking == [] and window.state.way is None
    seen = window.state.seen((width, height))
    on_photo = window.state.stack.layings["registered"][6].apply(seen.to_mm(upper))
    assert window.state.marks[6][0] == pytest.approx(tuple(on_photo))
    mouse.click((upper[0] + 9, upper[1]))  # all are there: the nearer one moves
    moved = window.state.stack.layings["registered"][6].apply(
        seen.to_mm((upper[0] + 9, upper[1]))
    )
    assert window.state.marks[6][0] == pytest.approx(tuple(moved))
    assert len(window.state.marks[6]) == 2 and crossed(window.form.picture) is not None


def lying_numbers(window):
    return list(window.state.stack.order)


# --- the end -------------------------------------------------------------------------------------


def test_a_window_that_the_user_closes_tells_and_forgets_its_widgets(user, window):
    window._frame.close()
    QtCore.QCoreApplication.sendPostedEvents(None, DELETE)  # as the event loop does
    user.wait_for(lambda: window.closed_of, "it is told")
    assert window.form is None and not window.timer.isActive()
    window.close()  # does nothing


def test_windows_open_again_and_again(user, fresh, lying):
    views = {leaf.number: leaf.face.view for leaf in lying.leaves}
    for turn in range(6):
        stack = Stack(lying, lying.numbers, {"registered": views}, "registered")
        made = SequenceWindow(State.of(stack), "Sequence", lambda: None, lambda: None)
        made.to_front()
        made.form.play.setChecked(turn % 2 == 0)
        for _ in range(10):
            QtGui.QApplication.processEvents()
        made.close()
        QtGui.QApplication.processEvents()
    assert not user.visible(QtGui.QWidget, "likeness")

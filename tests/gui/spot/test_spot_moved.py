# SPDX-License-Identifier: LGPL-2.1-or-later
"""The wedge is moved on the leaf: the top follows at once, the document when the hand rests."""

import math

import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.core import Motion, Placement
from veneerwb.gui.panels import spot as spot_panel
from veneerwb.host.photos import _read

Qt = QtCore.Qt


def settled(user, spot):
    """The document has what the hand has."""
    user.wait_for(lambda: not spot.state.differing(), "the document follows")
    spot.settle()


def pixel(spot):
    """mm of a pixel of the widget: no mouse is more exact."""
    return spot.window.view.picture.mm_per_px / spot.window.view.frame.zoom


def corner_of(spot, number):
    return spot.window.view._wedge.corners[spot.window.view._wedge.grips[number]]


def test_it_shows_where_the_match_lies(spot, match):
    from veneerwb.host.objects import layout

    place = layout(match).recipe.placement
    assert spot.state.placement == place
    assert spot.value("TipX") == pytest.approx(place.x)
    assert spot.value("Diameter") == 300.0
    assert not match.Document.UndoNames


def test_a_drag_moves_it_by_as_much_and_is_one_undo_step(
    user, spot, match, hand, on_picture, tip
):
    x, y = spot.state.placement.x, spot.state.placement.y
    hand.drag(on_picture(spot, x, y + 80), on_picture(spot, x + 20, y + 110))
    assert tip(match)[:2] == pytest.approx((x + 20, y + 30), abs=pixel(spot))
    assert not match.AutoPlacement
    assert list(match.Document.UndoNames) == ["Choose spot"]
    assert spot.value("TipX") == pytest.approx(tip(match)[0], abs=0.01)


def test_two_drags_are_two_steps_and_undo_goes_through_them(
    user, spot, match, hand, on_picture, tip
):
    x, y = spot.state.placement.x, spot.state.placement.y
    for _ in range(2):
        hand.drag(on_picture(spot, x, y), on_picture(spot, x + 10, y))
        x = spot.state.placement.x
    assert len(match.Document.UndoNames) == 2
    hand.key(Qt.Key_Z, Qt.ControlModifier)
    user.wait_for(lambda: spot.state.placement.x < x - 5, "the wedge is back")
    assert tip(match)[0] == spot.state.placement.x
    assert tip(match)[0] == pytest.approx(x - 10, abs=pixel(spot))
    hand.key(Qt.Key_Y, Qt.ControlModifier)
    user.wait_for(lambda: spot.state.placement.x == x, "the wedge is on again")
    assert tip(match)[0] == x


def test_the_top_follows_while_the_button_is_down_and_the_document_when_the_hand_rests(
    user, spot, match, hand, on_picture, tip
):
    x, y = spot.state.placement.x, spot.state.placement.y
    before, painted = tip(match), spot.window.top.painted
    hand.press(on_picture(spot, x, y + 80))
    hand.move(on_picture(spot, x + 15, y + 80), held=Qt.LeftButton)
    QtGui.QApplication.processEvents()
    assert spot.window.top.painted > painted
    assert tip(match) == before
    user.wait_for(lambda: tip(match)[0] == spot.state.placement.x, "the document follows")
    assert match.Revision == spot.state.layout().revision
    hand.move(on_picture(spot, x + 25, y + 80), held=Qt.LeftButton)
    hand.release(on_picture(spot, x + 25, y + 80))
    assert tip(match)[0] == pytest.approx(x + 25, abs=pixel(spot))
    assert len(match.Document.UndoNames) == 1


@pytest.mark.parametrize("given_up", [False, True])
def test_a_drag_is_one_step_however_long_the_hand_holds_still(
    user, spot, match, hand, on_picture, tip, monkeypatch, given_up
):
    monkeypatch.setattr(spot_panel, "RUN", 1)
    here, before = spot.state.placement, tip(match)
    x, y = here.x, here.y
    hand.press(on_picture(spot, x, y + 80))
    hand.move(on_picture(spot, x + 15, y + 80), held=Qt.LeftButton)
    user.wait_for(lambda: tip(match) != before, "the document follows")
    still = QtCore.QElapsedTimer()
    still.start()
    user.wait_for(lambda: still.elapsed() > 50, "it has held still")
    hand.move(on_picture(spot, x + 25, y + 80), held=Qt.LeftButton)
    if given_up:
        hand.key(Qt.Key_Escape)
        assert tip(match) == before and not match.Document.UndoNames
    hand.release(on_picture(spot, x + 25, y + 80))
    assert len(match.Document.UndoNames) == (0 if given_up else 1)
    hand.key(Qt.Key_Right)  # and a run of keys ends as ever
    user.wait_for(lambda: spot.steps._open is None and not spot.state.differing(), "the run ends")
    assert len(match.Document.UndoNames) == (1 if given_up else 2)


def test_escape_puts_back_what_is_dragged(user, spot, match, hand, on_picture, tip):
    here, before = spot.state.placement, tip(match)
    hand.press(on_picture(spot, here.x, here.y + 80))
    hand.move(on_picture(spot, here.x + 15, here.y + 80), held=Qt.LeftButton)
    user.wait_for(lambda: tip(match) != before, "the document follows")
    hand.key(Qt.Key_Escape)
    assert spot.state.placement == here
    assert tip(match) == before and match.AutoPlacement
    assert not match.Document.UndoNames
    assert spot.form is not None


def test_a_corner_of_the_rim_turns_it_about_its_tip(spot, match, hand, on_picture, tip):
    here = spot.state.placement
    corner = corner_of(spot, 1)
    back = spot.window.view.onto_picture.inverted()[0]
    end = Motion.turn_about(here.x, here.y, 20.0).apply(back.map(*corner))
    hand.drag(corner, on_picture(spot, *end))
    assert tip(match)[:2] == (here.x, here.y)
    degrees = math.degrees(pixel(spot) / spot.state.top.reach)
    assert tip(match)[2] == pytest.approx(here.angle + 20.0, abs=1.5 * degrees)


def test_the_middle_of_the_rim_makes_it_larger(spot, match, hand, on_picture, tip):
    here = spot.state.placement
    hand.drag(corner_of(spot, 2), on_picture(spot, here.x, here.y + 180.0))
    assert match.Diameter.Value == pytest.approx(360.0, abs=2 * pixel(spot))
    assert tip(match)[:2] == pytest.approx((here.x, here.y))


def test_a_wedge_that_is_grabbed_at_its_tip_stays_of_a_size(spot):
    view, here = spot.window.view, spot.state.placement
    at, end = (view.onto_picture.map(here.x, here.y + far) for far in (0.0, 10.0))
    view._follow(view._wedge.grips[2], at, end)
    assert spot.state.size <= 300.0


@pytest.mark.parametrize(
    "key, keys, moved",
    [
        (Qt.Key_Right, Qt.NoModifier, (1, 0, 0)),
        (Qt.Key_Up, Qt.NoModifier, (0, 1, 0)),
        (Qt.Key_Down, Qt.ShiftModifier, (0, -0.1, 0)),
        (Qt.Key_Left, Qt.AltModifier, (0, 0, 0.5)),
        (Qt.Key_Right, Qt.AltModifier | Qt.ShiftModifier, (0, 0, -0.05)),
        (Qt.Key_BracketRight, Qt.NoModifier, (0, 0, -0.5)),
        (Qt.Key_BraceLeft, Qt.ShiftModifier, (0, 0, 0.05)),
    ],
)
def test_keys_nudge_it(user, spot, match, hand, tip, key, keys, moved):
    here = spot.state.placement
    hand.key(key, keys)
    settled(user, spot)
    wanted = [a + b for a, b in zip((here.x, here.y, here.angle), moved)]
    assert tip(match) == pytest.approx(wanted, abs=1e-6)


def test_ctrl_and_an_arrow_move_the_picture_and_not_the_wedge(spot, hand):
    view, here = spot.window.view, spot.state.placement
    hand.key(Qt.Key_1)
    before = view.frame.to_picture((0.0, 0.0))
    hand.key(Qt.Key_Down, Qt.ControlModifier)
    assert view.frame.to_picture((0.0, 0.0))[1] > before[1] + 10
    assert spot.state.placement == here


def test_a_run_of_nudges_is_one_step(user, spot, match, hand):
    here = spot.state.placement
    for _ in range(5):
        hand.key(Qt.Key_Right)
    user.wait_for(lambda: not spot.state.differing(), "the document follows")
    hand.key(Qt.Key_Right)
    settled(user, spot)
    assert match.TipX.Value == pytest.approx(here.x + 6.0)
    assert len(match.Document.UndoNames) == 1
    hand.key(Qt.Key_Left)
    settled(user, spot)
    assert len(match.Document.UndoNames) == 2


def test_going_somewhere_is_a_step_of_its_own(spot, match, tip):
    spot.state.go(Placement(100.0, 200.0, 80.0), run=True)
    spot.state.go(Placement(110.0, 210.0, 85.0), ways=6)
    assert tip(match) == (110.0, 210.0, 85.0)
    assert len(match.Document.UndoNames) == 2


def test_the_wheel_over_the_top_and_keys_change_the_ways(user, spot, match, hand):
    top = user.hand(spot.window.top)
    spot.window.top.canvas = spot.window.top.events.widget
    middle = [side / 2 for side in spot.window.top.events.size]
    top.wheel(middle, -1)
    assert spot.state.recipe.ways == 6  # a book ring has even ways
    spot.state.go(turn="slip")
    top.wheel(middle, 1)
    hand.key(Qt.Key_Period)
    hand.key(Qt.Key_Comma)
    settled(user, spot)
    assert (match.Ways, match.Turn) == (7, "slip")
    assert spot.value("Ways") == 7


def test_the_boxes_move_it(user, spot, match, tip):
    user.fill("TipX", "100 mm")
    user.fill("Axis", "80 deg")
    user.fill("Diameter", "200 mm")
    user.fill("Order", "spread")
    user.fill("Turn", "slip")
    settled(user, spot)
    assert tip(match)[0] == 100.0 and tip(match)[2] == 80.0
    assert (match.Diameter.Value, match.Order, match.Turn) == (200.0, "spread", "slip")
    assert spot.state.placement.x == 100.0


def test_no_photograph_is_decoded_again_while_it_is_dragged(spot, hand, on_picture):
    x, y = spot.state.placement.x, spot.state.placement.y
    before = _read.cache_info().misses
    painted = spot.window.top.painted
    hand.press(on_picture(spot, x, y + 80))
    for k in range(1, 6):
        hand.move(on_picture(spot, x + 3 * k, y + 80), held=Qt.LeftButton)
        QtGui.QApplication.processEvents()
    hand.release(on_picture(spot, x + 15, y + 80))
    assert spot.window.top.painted >= painted + 5
    assert _read.cache_info().misses == before


def test_the_3_d_view_shows_what_was_chosen_and_what_was_undone(user, spot, match, hand):
    view = match.ViewObject.Proxy
    spot.state.go(Placement(100.0, 200.0, 80.0))
    assert view.laid.recipe.placement == Placement(100.0, 200.0, 80.0)
    hand.key(Qt.Key_Z, Qt.ControlModifier)
    assert match.AutoPlacement
    assert view.laid.revision == match.Revision
    assert view.laid.recipe.placement != Placement(100.0, 200.0, 80.0)
    FreeCADGui.Selection.clearSelection()

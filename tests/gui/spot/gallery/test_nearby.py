# SPDX-License-Identifier: LGPL-2.1-or-later
"""The neighbours of a spot: what they are, and how one goes to them."""

import numpy as np
import pytest

from veneerwb.core import Placement
from veneerwb.paint.qt import to_pixels

HERE = Placement(110.0, 150.0, 60.0)
STEPS = {
    (0, 1, 0): (3.0, 5.196, 0.0), (0, -1, 0): (-3.0, -5.196, 0.0),  # 6 mm along 60 degrees
    (-1, 0, 0): (-5.196, 3.0, 0.0), (1, 0, 0): (5.196, -3.0, 0.0),  # left: counter-clockwise
    (0, 0, 1): (0.0, 0.0, 2.0), (0, 0, -1): (0.0, 0.0, -2.0),
}  # fmt: skip


@pytest.fixture
def nearby(user, spot, tabs):
    spot.state.go(HERE)
    tab = tabs.open(tabs.nearby)
    rested(user, tab)
    return tab


def rested(user, tab):
    """Waits until the hand rests, and has what is due painted."""
    user.wait_for(lambda: not tab.resting.isActive(), "the hand rests")
    tab.canvases[0].widget.grab()


@pytest.fixture
def press(nearby, click):
    def made(cell):
        click(nearby.canvases[0], nearby.hand.boxes(nearby.canvases[0].size)[cell].middle)

    return made


@pytest.mark.parametrize("cell", STEPS)
def test_a_click_goes_to_the_neighbour(spot, match, press, tip, cell):
    press(cell)
    went = np.subtract(tip(match), (HERE.x, HERE.y, HERE.angle))
    assert went == pytest.approx(STEPS[cell], abs=2e-3)
    assert len(match.Document.UndoNames) == 2  # to where it began, and this step


def test_the_middle_stays_where_it_is(match, press, tip):
    press((0, 0, 0))
    assert tip(match) == pytest.approx((HERE.x, HERE.y, HERE.angle))


def test_the_pictures_are_those_of_the_tops_they_lead_to(user, nearby, press):
    def seen(cell):
        return to_pixels(nearby.hand.tiles[cell].picture(90)).astype(int)

    here, there = seen((0, 0, 0)), seen((1, 0, 0))
    assert np.abs(here - there).mean() > 1.0
    press((1, 0, 0))
    rested(user, nearby)
    assert np.array_equal(seen((0, 0, 0)), there)


def test_the_steps_can_be_chosen(user, match, nearby, press, tip):
    user.fill("shift", "11 mm")
    user.fill("turn", "5 deg")
    rested(user, nearby)
    assert nearby.hand.tiles[0, 1, 0].title == "on 11 mm"
    press((0, 1, 0))
    assert tip(match) == pytest.approx((HERE.x + 5.5, HERE.y + 9.526, HERE.angle), abs=2e-3)


def test_neighbours_that_do_not_fit_are_told(user, spot, nearby):
    spot.state.go(Placement(120.0, 3.0, 90.0))  # 3 mm from the end of the leaf
    rested(user, nearby)
    tiles = nearby.hand.tiles
    assert tiles[0, -1, 0].trouble == "does not fit"
    assert not tiles[0, 0, 0].trouble and not tiles[0, 1, 0].trouble


def test_lengths_are_in_the_users_unit(user, nearby, in_inches):
    rested(user, nearby)
    assert nearby.hand.tiles[0, 1, 0].title == "on 0.24 in"


def test_nothing_is_painted_while_the_hand_moves(spot, nearby):
    before = nearby.hand.tiles
    spot.state.go(Placement(112.0, 150.0, 60.0), run=True)
    nearby.canvases[0].widget.grab()
    assert nearby.hand.tiles is before


def test_too_few_leaves_are_told_once(user, spot, nearby, press, match):
    spot.state.go(ways=12)
    rested(user, nearby)
    assert not nearby.hand.tiles
    before = user.state(match.Document)
    press((1, 0, 0))
    assert user.state(match.Document) == before
    spot.state.go(ways=8)
    rested(user, nearby)
    assert nearby.hand.tiles[1, 0, 0].layout is not None

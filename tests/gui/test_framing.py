# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the 3-D view looks at when a match is made: the first from above, clear of the panel; later
the view is the user's."""

import time

import FreeCADGui
import pytest
from pivy import coin

from veneerwb.gui import framing
from veneerwb.gui.framing import camera_of, in_sight
from veneerwb.host.objects import add_match

ABOVE = (0.0, 0.0, 1.0)
"""From where a view from straight above looks."""


@pytest.fixture
def view(fresh, bundle):
    """The view of a document with a bundle, at a slant, as the host's own *New* leaves it on some
    versions."""
    (found,) = FreeCADGui.getDocument(fresh.Name).mdiViewsOfType("Gui::View3DInventor")
    found.getCameraNode().orientation = coin.SbRotation(0.42, 0.18, 0.34, 0.82)
    return found


def looks_from(view):
    turned = view.getCameraNode().orientation.getValue()
    return tuple(turned.multVec(coin.SbVec3f(0, 0, 1)).getValue())


def a_while(user, looks=3):
    until = time.monotonic() + looks * framing.OFTEN / 1000
    user.wait_for(lambda: time.monotonic() > until, "a few looks")


def test_the_first_match_is_seen_whole_and_from_above(user, fresh, view):
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    match = user.only(fresh, "Match")
    assert looks_from(view) == pytest.approx(ABOVE, abs=1e-6) and in_sight(view, match)
    seen = view.getCameraNode().height.getValue()
    assert match.Diameter.Value < seen < 2 * match.Diameter.Value


def test_a_top_that_outgrows_the_first_look_is_stepped_back_from(user, fresh, view):
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    match = user.only(fresh, "Match")
    user.fill("Diameter", "2400 mm")
    user.wait_for(lambda: match.Shape.BoundBox.XLength > 2300, "the match follows")
    user.wait_for(lambda: in_sight(view, match), "the view follows")


def test_a_view_that_was_moved_by_hand_is_left_alone(user, fresh, view):
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    view.getCameraNode().position = (5000.0, 0.0, 900.0)
    moved = camera_of(view)
    a_while(user)
    assert camera_of(view) == moved


def test_a_panel_that_comes_over_the_view_is_made_room_for(user, fresh, view, monkeypatch):
    """As newer hosts do; here it comes over the right third."""
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    match = user.only(fresh, "Match")
    third = view.graphicsView().width() // 3
    monkeypatch.setattr(framing, "beside_panel", lambda widget: (4, third))
    a_while(user)
    assert in_sight(view, match)
    assert view.getCameraNode().position.getValue()[0] > 0  # so that the top is left of the middle


def test_a_later_match_takes_no_view_away(user, fresh, bundle, view):
    add_match(fresh, bundle, Diameter=300.0, Ways=6)
    fresh.recompute()
    view.fitAll()
    view.getCameraNode().height = 2000.0
    before = camera_of(view)
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    assert camera_of(view) == before
    user.cancel()
    user.wait_closed()
    view.getCameraNode().position = (90000.0, 0.0, 900.0)
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    user.wait_for(lambda: camera_of(view)[0] < 9000, "what is out of sight is stepped back for")
    assert looks_from(view) != pytest.approx(ABOVE, abs=1e-3)


def test_what_was_there_before_keeps_its_view(user, fresh, view):
    fresh.addObject("Part::Box", "Carcass")
    fresh.recompute()
    before = looks_from(view)
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    a_while(user)
    assert looks_from(view) == pytest.approx(before)


def test_a_first_match_that_was_cancelled_gives_the_view_back(user, fresh, view):
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    user.cancel()
    user.wait_closed()
    view.getCameraNode().orientation = coin.SbRotation(0.42, 0.18, 0.34, 0.82)
    before = looks_from(view)
    user.open_panel("Veneer_NewRadialMatch", "Ways")
    a_while(user)
    assert looks_from(view) == pytest.approx(before)


@pytest.mark.parametrize("tall", [False, True])
def test_a_top_is_in_sight_where_the_camera_shows_more_than_it_measures(
    user, fresh, bundle, view, tall
):
    """What the camera calls height is the smaller side of the view, which was looked at."""
    match = add_match(fresh, bundle, Diameter=300.0, Ways=6)
    fresh.recompute()
    shown, camera = view.graphicsView(), view.getCameraNode()
    if tall:
        shown.setFixedWidth(shown.height() // 2)
    camera.orientation = coin.SbRotation(0, 0, 0, 1)
    camera.position = (0.0, 0.0, 900.0)
    for height, seen in ((100.0, False), (290.0, False), (330.0, True), (900.0, True)):
        camera.height = height
        assert in_sight(view, match) == seen, height

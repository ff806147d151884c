# SPDX-License-Identifier: LGPL-2.1-or-later
"""Spots kept from the window: named, compared, gone back to, taken out, taken back."""

import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.core import Placement
from veneerwb.host import spots
from veneerwb.host.objects.base import kind_of

FIRST, SECOND = Placement(110.0, 100.0, 90.0), Placement(130.0, 220.0, 100.0)


@pytest.fixture
def kept(tabs):
    return tabs.open(tabs.kept)


@pytest.fixture
def two(user, spot, kept):
    """Two spots kept by the button; the wedge lies on the second."""
    spot.state.go(FIRST)
    user.box("keep").click()
    spot.state.go(SECOND, ways=6, turn="slip")
    user.box("keep").click()
    return kept


def labels(match):
    return [obj.Label for obj in spots.kept(match)]


def test_kept_spots_are_shown_and_hang_below_the_match(two, match):
    assert labels(match) == ["Spot 1", "Spot 2"]
    assert [tile.title for tile in two.hand.tiles] == ["Spot 1", "Spot 2"]
    assert [tile.words.split(",")[0].replace("\xa0", " ") for tile in two.hand.tiles] == [
        "8 ways", "6 ways",
    ]  # fmt: skip
    assert match.ViewObject.Proxy.claimChildren() == spots.kept(match)


def test_a_double_click_goes_back(two, match, tile, tip):
    tile(two.hand, 0, twice=True)
    assert tip(match) == (FIRST.x, FIRST.y, FIRST.angle)
    assert (match.Ways, match.Turn) == (8, "book")
    assert two.state.recipe == spots.recipe(spots.kept(match)[0])


def test_the_button_goes_back_too(user, two, match, tile, tip):
    tile(two.hand, 0)
    assert tip(match) == (SECOND.x, SECOND.y, SECOND.angle)  # a click alone only chooses
    user.box("go").click()
    assert tip(match) == (FIRST.x, FIRST.y, FIRST.angle)


def test_a_name_that_is_typed_is_kept(user, two, match, tile):
    tile(two.hand, 0)
    user.fill("name", "Crown of feathers")
    assert labels(match) == ["Crown of feathers", "Spot 2"]
    assert two.hand.tiles[0].title == "Crown of feathers"
    user.box("keep").click()
    assert labels(match)[2] == "Spot 1"


def test_a_kept_spot_is_deleted_and_comes_back_by_undo(user, two, match, tile):
    tile(two.hand, 0)
    user.box("drop").click()
    assert labels(match) == ["Spot 2"]
    match.Document.undo()
    user.wait_for(lambda: len(two.hand.tiles) == 2, "it is shown again")
    assert labels(match) == ["Spot 1", "Spot 2"]


def test_cancel_takes_back_what_was_kept(user, two, match):
    user.cancel()
    user.wait_closed()
    assert spots.kept(match) == []
    assert match.AutoPlacement and match.Ways == 8


def test_ok_leaves_what_was_kept(user, two, match):
    user.ok()
    user.wait_closed()
    assert labels(match) == ["Spot 1", "Spot 2"]


def test_an_old_picture_is_told_and_made_anew(user, two, match, tile):
    leaf = next(one for one in match.Bundle.Leaves if one.Number == 2)
    leaf.RegisterX = 7.0
    match.Document.recompute()
    user.wait_for(lambda: two.hand.tiles[0].trouble, "it is told")
    assert two.hand.tiles[0].trouble.startswith("Old picture")
    tile(two.hand, 0)
    user.box("anew").click()
    assert [bool(one.trouble) for one in two.hand.tiles] == [False, True]


def test_two_that_are_ticked_are_compared_and_a_click_goes_there(
    user, spot, two, match, tile, click, tip
):
    assert not user.box("compare").isEnabled()
    tile(two.hand, 0, tick=True)
    tile(two.hand, 1, tick=True)
    user.box("compare").click()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "tops"), "the tops are side by side")
    hand = two._window.hand
    assert [one.title for one in hand.tiles] == ["Spot 1", "Spot 2"]
    boxes = [one for k in range(2) for one in [hand.at(_place(hand, k))]]
    assert boxes == [0, 1]
    click(hand.canvas, _place(hand, 0))
    user.wait_for(lambda: not user.visible(QtGui.QLabel, "tops"), "they close")
    assert tip(match) == (FIRST.x, FIRST.y, FIRST.angle)
    assert FreeCADGui.Control.activeDialog() and two.form is not None


def _place(hand, k):
    from veneerwb.gui.canvas import Place
    from veneerwb.paint.gallery import filling

    return Place(*filling(len(hand.tiles), hand.canvas.size, 3)[k].middle)


def test_seven_are_too_many_to_compare(user, spot, two, tile):
    for _ in range(5):
        user.box("keep").click()
    for k in range(7):
        tile(two.hand, k, tick=True)
    user.box("compare").click()
    assert "7 are ticked" in two.form.trouble.text() and two._window is None


def test_the_keys_go_through_the_tiles(user, two, match, tip):
    widget = two.hand.canvas.widget
    for key in (QtCore.Qt.Key_Left, QtCore.Qt.Key_Left, QtCore.Qt.Key_Return):
        event = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, key, QtCore.Qt.NoModifier)
        QtGui.QApplication.sendEvent(widget, event)
    assert tip(match) == (FIRST.x, FIRST.y, FIRST.angle)


def test_the_window_closes_with_what_is_compared(user, two, tile):
    tile(two.hand, 0, tick=True)
    tile(two.hand, 1, tick=True)
    user.box("compare").click()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "tops"), "the tops are side by side")
    user.ok()
    user.wait_closed()
    assert not user.visible(QtGui.QLabel, "tops")


def test_a_double_click_in_the_tree_goes_there_in_the_panel(user, two, match, tip):
    first, second = spots.kept(match)
    first.ViewObject.Proxy.doubleClicked(first.ViewObject)
    user.wait_for(lambda: tip(match) == (FIRST.x, FIRST.y, FIRST.angle), "it is gone to")
    user.ok()
    user.wait_closed()
    second.ViewObject.Proxy.doubleClicked(second.ViewObject)  # opens the panel
    user.wait_for(lambda: tip(match) == (SECOND.x, SECOND.y, SECOND.angle), "it is gone to")
    user.wait_for(lambda: user.visible(QtGui.QDialogButtonBox), "the panel is open")
    user.cancel()
    user.wait_closed()
    assert tip(match) == (FIRST.x, FIRST.y, FIRST.angle)


def test_a_deleted_match_takes_its_kept_spots_with_it(user, two, match):
    doc = match.Document
    user.ok()
    user.wait_closed()
    doc.openTransaction("Delete")
    assert match.ViewObject.Proxy.onDelete(match.ViewObject, ())
    doc.removeObject(match.Name)
    doc.commitTransaction()
    assert "Spot" not in {kind_of(obj) for obj in doc.Objects}
    doc.undo()
    assert labels(doc.getObject("Match")) == ["Spot 1", "Spot 2"]


def test_cancel_brings_kept_spots_back_when_the_host_has_forgotten_the_steps(
    user, two, match, panel
):
    user.ok()
    user.wait_closed()
    before = sorted(spots.noted(match).values(), key=lambda one: one.label)
    assert all(one.picture for one in before)
    first, second = spots.kept(match)
    user.open_panel("Veneer_ChooseSpot", "TipX")
    spots.drop([first])
    spots.rename(second, "Crown")
    spots.keep(match, panel().state.layout(), "Later")
    for k in range(25):
        panel().state.go(Placement(100.0 + k, 200.0, 80.0))
    user.cancel()
    user.wait_closed()
    assert sorted(spots.noted(match).values(), key=lambda one: one.label) == before
    assert not any(one.Old or one.Message for one in spots.kept(match))
    match.Document.undo()  # it is one step
    assert sorted(labels(match)) == ["Crown", "Later"]


def test_going_back_turns_the_same_leaves_over(user, spot, kept, match, tile):
    match.Turned = "even"
    match.Document.recompute()
    user.wait_for(lambda: spot.state.recipe.turned == "even", "the panel follows")
    user.box("keep").click()
    (one,) = spots.kept(match)
    for other in ({"Turned": "odd"}, {"Turned": "auto", "Turn": "slip"}):
        for name, value in other.items():
            setattr(match, name, value)
        match.Document.recompute()
        user.wait_for(lambda: spot.state.recipe.turned != "even", "the panel follows")
        tile(kept.hand, 0, twice=True)
        assert (match.Turn, match.Turned) == ("book", "even")
        assert spot.state.recipe == spots.recipe(one)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""How what differs is cut, chosen in the panel of a match and in the window that compares."""

import FreeCADGui
import numpy as np
import pytest
from PySide import QtGui

from veneerwb.host import kinds
from veneerwb.host.objects import add_match, layout
from veneerwb.paint import ground, ink

WAYS = tuple(kinds.CUTS.values())
ROW = ("CutAs", "CutAs_label", "cuts_said", "show_cuts")


@pytest.fixture
def match(fresh, bundle):
    """An oval in eight ways: four lots of two, but two of four with seams on both axes."""
    made = add_match(fresh, bundle, Top="Oval", Length=500.0, Width=300.0, Ways=8)
    fresh.recompute()
    fresh.clearUndos()
    FreeCADGui.Selection.clearSelection()
    return made


@pytest.fixture
def opened(user, match):
    user.double_click(match, "Kind")
    user.wait_for(lambda: user.box("cuts_said").text(), "it is told")
    yield match
    if FreeCADGui.Control.activeDialog():
        user.cancel()
        user.wait_closed()


def seen(user):
    return [name for name in ROW if user.visible(QtGui.QWidget, name)]


def compare(user):
    """Opens the window; its form."""
    user.box("show_cuts").click()
    user.wait_for(lambda: user.visible(QtGui.QWidget, "VeneerCuts"), "the window opens")
    user.wait_for(lambda: user.box("picture_stack").width() > 130, "it takes its size")
    for _ in range(5):
        QtGui.QApplication.processEvents()


def close_to(label, rgb, near=30):
    """How many pixels of a label have a colour."""
    image = QtGui.QImage(label.size(), QtGui.QImage.Format_RGB32)
    label.render(image)
    data = np.frombuffer(bytes(image.constBits()), np.uint8).reshape(image.height(), -1, 4)
    return int((np.abs(data[:, : image.width(), 2::-1].astype(int) - rgb) < near).all(axis=2).sum())


def test_the_choice_is_asked_only_where_pieces_differ(user, opened):
    assert seen(user) == list(ROW)
    pieces = [piece.area for piece in layout(opened).pieces]
    share = round(100.0 * sum(pieces) / (8.0 * max(pieces)))  # the largest holds all others
    assert user.box("cuts_said").text().split("\n") == [
        f"One stack: 1 set-out, {share} % used", "By shape: 4 set-outs, 100 % used"
    ]  # fmt: skip
    user.fill("Width", "500 mm")
    user.wait_for(lambda: not seen(user), "an oval as wide as long is a circle")
    user.fill("Width", "300 mm")
    user.wait_for(lambda: seen(user) == list(ROW), "it is asked again")
    user.fill("CutAs", "single pieces")
    user.fill("Top", "Round")
    user.fill("Diameter", "300 mm")
    user.wait_for(lambda: seen(user) == list(ROW[:3]), "what was chosen can be taken back")
    assert "alike" in user.box("cuts_said").text()
    user.fill("CutAs", "one stack")
    user.wait_for(lambda: not seen(user), "then there is nothing to choose")


def test_what_is_chosen_makes_the_cuts_and_one_undo_takes_it_back(user, fresh, opened):
    user.fill("CutAs", "lots by shape")
    user.wait_for(lambda: opened.CutAs == "lots by shape", "it is taken")
    assert len(layout(opened).cuts) == 4
    user.wait_for(lambda: any("each set out by itself" in one for one in user.lines()), "told")
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1 and opened.CutAs == "lots by shape"
    fresh.undo()
    assert opened.CutAs == "one stack" and len(layout(opened).cuts) == 1
    fresh.redo()
    assert len(layout(opened).cuts) == 4


def test_cancel_takes_the_choice_back(user, fresh, opened):
    before = user.state(fresh)
    user.fill("CutAs", "single pieces")
    user.wait_for(lambda: len(layout(opened).cuts) == 8, "eight cuts")
    user.cancel()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


def test_all_ways_are_shown_on_the_leaves_and_the_chosen_one_is_marked(user, opened):
    compare(user)
    marked = {how: close_to(user.box(f"picture_{how}"), ink.MARK) > 400 for how in WAYS}
    assert marked == {"stack": True, "shape": False, "own": False}
    # Four lots in four colours, of which one stack has only the first.
    for k, rgb in enumerate(ground.CUT[:4]):
        assert close_to(user.box("picture_shape"), rgb) > 20, k
    assert close_to(user.box("picture_stack"), ground.CUT[1]) == 0
    assert "1 lot of 8 leaves, set out once; cuts along seams: 2." in said(user, "stack")
    assert "4 lots of 2 leaves, each set out once; cuts along seams: 8." in said(user, "shape")
    assert "8 lots of 1 leaf" in said(user, "own")
    assert "the pieces need 0.118 m2, 100 % of that" in said(user, "own")


def said(user, how):
    return user.box(f"text_{how}").toPlainText()


def test_the_window_chooses_follows_and_goes_with_the_panel(user, fresh, opened):
    compare(user)
    assert not user.box("take_stack").isEnabled()
    user.box("take_shape").click()
    user.wait_for(lambda: opened.CutAs == "lots by shape", "it is taken")
    user.wait_for(lambda: not user.box("take_shape").isEnabled(), "the window says so")
    assert "chosen" in user.box("title_shape").text()
    assert "chosen" not in user.box("title_stack").text()
    assert close_to(user.box("picture_shape"), ink.MARK) > 400
    user.fill("Start", "67.5 deg")  # a seam on both axes
    user.wait_for(lambda: "2 lots of 4 leaves" in said(user, "shape"), "it follows the match")
    user.fill("Width", "500 mm")
    user.wait_for(lambda: not user.visible(QtGui.QWidget, "VeneerCuts"), "nothing to compare")
    user.fill("Width", "300 mm")
    user.wait_for(lambda: user.visible(QtGui.QWidget, "show_cuts"), "there is again")
    compare(user)
    user.ok()
    user.wait_closed()
    user.wait_for(lambda: not user.visible(QtGui.QWidget, "VeneerCuts"), "it goes too")
    assert fresh.UndoCount == 1


def test_the_window_may_be_closed_by_itself(user, opened, panel):
    compare(user)
    area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
    area.closeActiveSubWindow()
    user.wait_for(lambda: panel().cuts.window is None, "the panel hears of it")
    user.fill("CutAs", "single pieces")
    user.wait_for(lambda: opened.CutAs == "single pieces", "and goes on")
    compare(user)
    assert "chosen" in user.box("title_own").text()


def test_what_does_not_fit_is_told_in_the_users_unit(user, opened):
    compare(user)
    assert "Every outline lies on its leaves." in said(user, "stack")
    user.fill("AutoPlacement", False)
    user.wait_for(lambda: not opened.AutoPlacement, "it is cut where it was")
    user.fill("TipY", "10 mm")
    user.fill("Width", "150 mm")
    user.fill("Length", "1100 mm")  # a reach of 550 mm on leaves of 500 mm, at either end alone
    user.wait_for(lambda: "Reaches up to 60.0 mm" in said(user, "stack"), "it does not fit")
    assert "off the usable area of leaves 1-8." in said(user, "stack")
    assert "off the usable area of leaves 3, 7." in said(user, "own")


def test_a_value_that_an_expression_sets_is_shown_and_not_offered(user, fresh, match):
    match.setExpression("CutAs", "<<lots by shape>>")
    fresh.recompute()
    user.double_click(match, "Kind")
    user.wait_for(lambda: user.box("cuts_said").text(), "it is told")
    compare(user)
    assert not user.box("CutAs").isEnabled()
    assert not any(user.box(f"take_{how}").isEnabled() for how in WAYS)
    user.cancel()
    user.wait_closed()

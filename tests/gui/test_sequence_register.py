# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a sequence: what the stack follows, compared, chosen and applied."""

from dataclasses import replace

import FreeCAD
import numpy as np
import pytest
from PySide import QtCore, QtGui

from veneerwb.core import Motion, sawn_bundle
from veneerwb.core.plane import IDENTITY
from veneerwb.core.sequence import registered
from veneerwb.gui.sequence.work import _stuck
from veneerwb.host.objects import add_match, core_bundle

OPEN = ("Veneer_Sequence", "prove")


def test_leaves_are_registered_on_their_figure_in_one_step(
    user, fresh, mixed, swapped, panel, corners_apart
):
    lying = swapped[1]
    loose = corners_apart(mixed, lying, range(1, 9))
    before = user.state(fresh)
    user.open_panel(*OPEN)
    user.box("prove").click()
    user.box("renumber").click()
    user.box("register").click()
    assert "mm of length" in user.box("cost").text()
    assert panel().window.state.laid == "registered" and panel().window.state.stack.registered
    user.ok()
    user.wait_closed()
    right = {n: lying[{3: 6, 6: 3}.get(n, n)] for n in lying}
    assert corners_apart(mixed, right, range(1, 9)) < 1.0 < loose
    assert mixed.Follows == "figure" and fresh.UndoCount == 1
    fresh.undo()
    fresh.recompute()
    assert user.state(fresh) == before


def test_registers_are_taken_away_again(user, fresh, swapped, in_document):
    obj = in_document(fresh, registered(swapped[0], swapped[1]))
    user.open_panel(*OPEN)
    user.fill("follow", "photographs")
    user.box("register").click()
    user.ok()
    user.wait_closed()
    assert all(leaf.register == IDENTITY for leaf in core_bundle(obj).leaves)
    assert obj.Follows == "as photographed"


def test_a_stack_follows_two_marks_picked_in_the_window(
    user, fresh, mixed, swapped, panel, corners_apart
):
    """Marks put exactly where the log's own points lie give back how the leaves lay."""
    lying = swapped[1]
    user.open_panel(*OPEN)
    user.fill("follow", "marks")
    assert "Without: 1-8" in user.box("cost").text()
    window = panel().window
    for number in range(1, 9):
        for place in ((100.0, 80.0), (110.0, 430.0)):
            assert window.state.leaf == number
            on_photo = lying[number].apply(place)
            laid = window.state.stack.layings[window.state.laid][number]
            window.change(window.state.marked(tuple(laid.inverse().apply(on_photo))))
    assert "Every leaf has" in user.box("cost").text()
    user.box("register").click()
    assert corners_apart(mixed, lying, range(1, 9)) < 1e-6
    assert mixed.Follows == "marks"
    user.fill("follow", "figure")
    assert panel().window.state.marks is None
    picked = dict(panel().work.marks)
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1
    user.open_panel(*OPEN)
    assert kept_alike(panel().work.marks, picked), "the marks are kept on the leaves"
    user.cancel()
    user.wait_closed()
    fresh.undo()
    assert all(leaf.Picked == [] for leaf in mixed.Leaves) and mixed.Follows != "marks"


def kept_alike(found, wanted):
    return found.keys() == wanted.keys() and all(
        np.allclose(found[n], wanted[n], atol=1e-9) for n in wanted
    )


def test_marks_that_were_only_picked_are_kept_too(user, fresh, mixed, panel):
    """One leaf's marks, and no register by them: one undo step all the same."""
    user.open_panel(*OPEN)
    user.fill("follow", "marks")
    window = panel().window
    for place in ((100.0, 80.0), (110.0, 430.0)):
        window.change(window.state.marked(place))
    picked = dict(panel().work.marks)
    assert len(picked) == 1
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1
    user.open_panel(*OPEN)
    assert kept_alike(panel().work.marks, picked)
    user.ok()  # nothing has changed
    user.wait_closed()
    assert fresh.UndoCount == 1


def test_paper_marks_part_the_figure_from_the_photograph(
    user, fresh, mixed, swapped, panel, corners_apart
):
    """Marks stuck by one template tell how each leaf lay, exactly, whatever the figure does."""
    for leaf in mixed.Leaves:
        lay = swapped[1][leaf.Number]
        places = [lay.apply(place) for place in ((30.0, 40.0), (170.0, 450.0))]
        leaf.Marks = [FreeCAD.Vector(x, y, k) for k, (x, y) in enumerate(places)]
    fresh.recompute()
    user.open_panel(*OPEN)
    user.box("prove").click()
    window = panel().window
    window.change(window.state.picked((100.0, 250.0)))
    way = window.state.way
    assert way.parted and "by its marks" in window.hands[2]._words().figure
    assert "The figure alone" in user.box("point").text()
    still = way.places[0]
    lay = [swapped[1][n].apply(still) - still for n in way.numbers]
    assert way.shift == pytest.approx(np.array(lay), abs=1e-3)
    assert np.abs(way.combined - way.shift).max() > 0.05
    user.fill("follow", "log")
    user.box("register").click()
    assert corners_apart(mixed, swapped[1], range(1, 9)) < 1e-3
    assert mixed.Follows == "log"
    user.cancel()
    user.wait_closed()


def test_a_point_on_leaves_registered_by_the_log_is_not_called_the_figures(
    user, fresh, swapped, panel, in_document
):
    obj = in_document(fresh, registered(swapped[0], swapped[1]))
    obj.Follows = "log"
    fresh.recompute()
    user.open_panel(*OPEN)
    window = panel().window
    window.change(window.state.picked((100.0, 250.0)))
    assert "prove to follow the figure" in user.box("point").text()
    assert "drift of the log" in window.hands[2]._words().combined
    user.box("prove").click()
    assert "prove to follow" not in user.box("point").text()
    assert "together" in window.hands[2]._words().combined


def test_marks_that_are_missing_are_asked_for(user, mixed):
    user.open_panel(*OPEN)
    user.fill("follow", "marks")
    user.box("register").click()
    assert "two on every leaf" in user.box("trouble").text()


def test_the_choices_are_seen_side_by_side_and_one_is_taken(user, fresh, mixed, grabbed):
    user.open_panel(*OPEN)
    user.box("compare").click()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "title_log"), "the choices are shown")
    for what in ("figure", "log", "photographs"):
        assert "mm of length" in user.box(f"title_{what}").text()
        assert user.box(f"text_{what}").toPlainText()
    assert not user.visible(QtGui.QLabel, "title_marks")  # none were picked
    pictures = [grabbed(user.box(f"picture_{what}")) for what in ("figure", "photographs")]
    assert np.abs(pictures[0] - pictures[1]).max() > 20
    user.box("take_log").click()
    assert user.box("follow").currentData() == "log"
    user.ok()
    user.wait_closed()
    assert not user.visible(QtGui.QLabel, "title_log") and fresh.UndoCount == 0


def test_the_choices_are_seen_on_the_match_of_the_document(user, fresh, mixed, panel):
    match = add_match(fresh, mixed, Diameter=150.0, Ways=8)
    fresh.recompute()
    assert match.Message == ""
    user.open_panel(*OPEN)
    user.box("compare").click()
    hand = panel().choices.canvases[0].hand
    assert len(hand.layout.pieces) == 8
    assert hand.layout.top.polygon_mm.bounds == pytest.approx((-75, -75, 75, 75), abs=0.1)


# --- what takes its time -------------------------------------------------------------------------


@pytest.fixture
def meanwhile():
    """Does something, once, while a button is at work."""
    timer = QtCore.QTimer()

    def asked(button, action):
        def look():
            if button.text().startswith("Stop (") and "(0 %" not in button.text():
                timer.stop()
                action()

        timer.timeout.connect(look)
        timer.start(0)

    yield asked
    timer.stop()


@pytest.mark.parametrize("name", ["register", "compare"])
def test_what_compares_the_leaves_shows_how_far_it_is_and_can_be_stopped(
    user, fresh, mixed, panel, name, meanwhile
):
    before = user.state(fresh)
    user.open_panel(*OPEN)
    button, said = user.box(name), []
    text = button.text()

    def stop():
        said.append((button.text(), user.box("prove").isEnabled(), button.isEnabled()))
        button.click()

    meanwhile(button, stop)
    button.click()
    assert said and said[0][0].startswith("Stop (") and said[0][1:] == (False, True)
    assert "Stopped" in user.box("trouble").text() and button.text() == text
    assert panel().work.chain is None and panel().step is None
    assert user.state(fresh) == before and user.box("prove").isEnabled()
    user.cancel()
    user.wait_closed()
    assert fresh.UndoCount == 0


def test_a_panel_that_is_closed_while_it_registers_changes_nothing(
    user, fresh, mixed, meanwhile
):
    before = user.state(fresh)
    user.open_panel(*OPEN)
    meanwhile(user.box("register"), user.cancel)
    user.box("register").click()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


@pytest.mark.parametrize("name", ["prove", "register"])
def test_what_was_found_of_leaves_that_changed_meanwhile_is_not_used(
    user, fresh, mixed, panel, name, meanwhile
):
    user.open_panel(*OPEN)

    def change():
        mixed.Leaves[4].RegisterX = 12.0
        fresh.recompute()

    meanwhile(user.box(name), change)
    user.box(name).click()
    assert "changed while they were compared" in user.box("trouble").text()
    assert panel().work.proof is None and panel().work.chain is None
    assert mixed.Follows == "as photographed"


def test_registers_are_taken_off_again(user, fresh, swapped, panel, in_document):
    obj = in_document(fresh, registered(swapped[0], swapped[1]))
    obj.Follows = "figure"
    fresh.recompute()
    fresh.clearUndos()
    before = user.state(fresh)
    user.open_panel(*OPEN)
    assert user.box("unregister").isEnabled()
    user.box("unregister").click()
    assert not user.box("unregister").isEnabled()
    assert not panel().window.state.stack.registered
    user.ok()
    user.wait_closed()
    assert all(leaf.register == IDENTITY for leaf in core_bundle(obj).leaves)
    assert obj.Follows == "as photographed" and fresh.UndoCount == 1
    fresh.undo()
    fresh.recompute()
    assert user.state(fresh) == before


def test_marks_stuck_on_meanwhile_are_seen_and_the_comparison_holds(
    user, fresh, mixed, panel
):
    """The leaves' own frames rest on the paper marks; their figure does not."""
    user.open_panel(*OPEN)
    user.box("register").click()
    work = panel().work
    chain = work.chain
    assert chain is not None and work.frames() is None
    for leaf in mixed.Leaves:
        leaf.Marks = [FreeCAD.Vector(30.0, 40.0, 1), FreeCAD.Vector(170.0, 460.0, 2)]
    fresh.recompute()
    assert work.frames().by == "marks" and work.chain is chain


def test_marks_of_a_leaf_are_followed_on_its_photograph():
    """A leaf may have been photographed in another frame than that it is cut in."""
    bundle = sawn_bundle(leaves=2, width=60, length=90, mm_per_px=2.0, figure="burl", seed=1)
    first, second = bundle.leaves
    aside = replace(second.face, register=Motion(dx=3.0), view=Motion(dx=3.0, dy=-7.0))
    bundle = replace(bundle, leaves=(first, replace(second, face=aside)))

    class Stuck:
        def __init__(self, number):
            self.Number, self.Marks = number, [FreeCAD.Vector(10.0, 20.0, 5.0)]

    found = _stuck(bundle, [Stuck(1), Stuck(2)])
    assert found[1]["5"] == pytest.approx((10.0, 20.0))
    assert found[2]["5"] == pytest.approx((10.0, 13.0))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a sequence: what the stack follows, compared, chosen and applied."""

import FreeCAD
import numpy as np
import pytest
from PySide import QtGui

from veneerwb.core.plane import IDENTITY
from veneerwb.core.sequence import registered
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
    assert np.abs(way.combined - way.shift).max() > 0.1
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

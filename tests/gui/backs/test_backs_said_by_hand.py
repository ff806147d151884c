# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the maker added, tied and said of backs stays what it was said of, and nothing is shown that
is not kept."""

import FreeCADGui
import pytest
from PySide import QtGui

from veneerwb.gui.books.back_words import wander_told
from veneerwb.host.backs import kept_ties
from veneerwb.host.sequence import renumber

POINT = (60.0, 70.0)


def pass_time():
    for _ in range(20):
        QtGui.QApplication.processEvents()


def test_backs_and_points_go_with_their_leaf_when_a_renumbering_is_undone(
    user, fresh, bundle, shots, opened
):
    renumber(bundle, {1: 2, 2: 1})
    fresh.recompute()
    first = next(leaf for leaf in bundle.Leaves if leaf.Number == 2)
    backs = opened()
    user.fill("leaf", 2)
    backs.choose("add_one", shots.backs[1])
    user.box("outline").click()
    user.fill("side", "face")
    backs.click(POINT)
    fresh.undo()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "it is told")
    (said,) = user.lines("backs")
    assert said.startswith("1: by outline")
    assert len(backs.panel.book.points[1, "face"]) == 1
    user.ok()
    user.wait_closed()
    assert first.Number == 1 and [leaf.Name for leaf in bundle.Leaves if leaf.BackPhoto] == [
        first.Name
    ]
    assert sorted(kept_ties(bundle)) == [1]


def test_a_wander_is_shown_no_longer_than_it_would_be_kept(user, bundle, shots, backs):
    backs.choose("add", *shots.backs.values())
    user.box("outline").click()
    backs.tell()
    user.box("measure").click()
    book = backs.panel.book
    assert book.wander.known and book.kept
    book.turn(1)
    assert book.kept == tuple(bundle.Wander) == () and "Measured before" not in wander_told(book)


def test_a_sense_that_was_changed_elsewhere_is_left_alone(user, fresh, bundle, opened):
    backs = opened()
    bundle.Back = "previous"
    fresh.recompute()
    assert not backs.panel.unsaved()
    user.ok()
    user.wait_closed()
    assert bundle.Back == "previous"


def test_outlines_take_no_ties_from_marks_and_none_that_was_taken(
    user, bundle, shots, opened
):
    backs = opened()
    backs.choose("add", shots.backs[1])
    user.box("outline").click()
    user.ok()
    user.wait_closed()
    next(leaf for leaf in bundle.Leaves if leaf.Number == 1).BackTie = "marks"
    backs = opened()
    backs.choose("add", shots.backs[2], shots.backs[3])
    user.box("outline").click()
    assert user.lines("backs")[0].startswith("1: by marks")
    assert user.lines("backs")[1].startswith("2: by outline")
    assert user.box("trouble").text() == "Left as tied by marks or by hand: 1."
    book = backs.panel.book
    taken = book.ties[3]
    book.taken.add(3)
    user.box("outline").click()
    assert book.ties[3] is taken


def test_points_that_tie_nothing_yet_outlive_another_workbench(
    user, bundle, shots, opened
):
    backs = opened()
    backs.choose("add", shots.backs[1])
    user.box("outline").click()
    user.ok()
    user.wait_closed()
    backs = opened()
    assert not backs.panel.unsaved()
    user.fill("side", "face")
    backs.click(POINT)
    FreeCADGui.activateWorkbench("PartWorkbench")
    pass_time()
    assert FreeCADGui.Control.activeDialog()
    assert len(backs.panel.book.points[1, "face"]) == 1


@pytest.mark.parametrize("button", ["add", "outline"])
def test_what_takes_its_time_says_how_far_it_is_and_can_be_stopped(
    user, bundle, shots, backs, button
):
    if button == "outline":
        backs.choose("add", *shots.backs.values())
    before, text = user.lines("backs"), user.box(button).text()
    told, progressed = [], backs.panel._progressed

    def hear(name, share):
        if share > 0.0:
            told.append(user.box(name).text())
            user.box(name).click()
        progressed(name, share)

    backs.panel._progressed = hear
    do = {
        "add": lambda: backs.choose("add", *shots.backs.values()),
        "outline": user.box("outline").click,
    }[button]
    do()
    assert told == ["Stop (0 %)"] and "Stopped" in user.box("trouble").text()
    assert user.lines("backs") == before and user.box(button).text() == text
    del backs.panel._progressed
    do()
    assert len(user.lines("backs")) == 3 and not user.visible(QtGui.QLabel, "trouble")
    assert user.box(button).text() == text and backs.panel.form.prove.isEnabled()

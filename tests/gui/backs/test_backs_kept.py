# SPDX-License-Identifier: LGPL-2.1-or-later
"""Backs that were added and tied and are not in the document yet are not lost by what happens to
it, and Delete takes those alone away."""

import os

import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from veneerwb.host.backs import kept_ties
from veneerwb.host.objects import core_bundle

POINT = (60.0, 70.0)


@pytest.fixture
def stepped(fresh, bundle):
    """The bundle with a step that can be undone."""
    fresh.openTransaction("Elsewhere")
    bundle.Leaves[0].RegisterX = 7.0
    fresh.commitTransaction()
    return bundle


@pytest.fixture
def press_delete(user):
    return lambda: user.presses(user.box("backs"), QtCore.Qt.Key_Delete)


def undone(user, doc):
    doc.undo()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "it is told")
    assert "kept" in user.box("trouble").text()


def test_an_undo_elsewhere_keeps_what_was_added_tied_and_said(
    user, fresh, stepped, shots, opened
):
    backs = opened()
    backs.choose("add", shots.backs[1], shots.backs[3])
    user.box("outline").click()
    user.fill("side", "face")
    backs.click(POINT)
    backs.tell()
    user.box("prove").click()
    user.box("say_so").click()
    user.box("tabs").setCurrentIndex(0)
    said, folder = user.lines("backs"), backs.panel.book._folder.name
    undone(user, fresh)
    book = backs.panel.book
    assert user.lines("backs") == said and all("by outline" in line for line in said)
    assert book.bundle.back == "previous" and [one.which for one in book.points[1, "face"]] == [0]
    assert book.bundle.leaf(1).register == stepped_register(stepped) and book.sense is None
    user.ok()
    user.wait_closed()
    assert sorted(kept_ties(stepped)) == [1, 3] and stepped.Back == "previous"
    assert core_bundle(stepped).leaf(3).back.source == "photo"
    assert fresh.UndoCount == 1 and not os.path.exists(folder)


def stepped_register(bundle):
    """That of leaf 1 as the document has it."""
    register = core_bundle(bundle).leaf(1).register
    assert register.dx != 7.0
    return register


def test_what_belongs_to_a_leaf_that_an_undo_takes_goes_with_it(
    user, fresh, bundle, shots, opened
):
    four = list(bundle.Leaves)
    bundle.Leaves = four[:2]
    fresh.clearUndos()
    fresh.openTransaction("Elsewhere")
    bundle.Leaves = four
    fresh.commitTransaction()
    backs = opened()
    backs.choose("add", shots.backs[1], shots.backs[3])
    undone(user, fresh)
    assert user.lines("backs") == ["1: not tied"]


def test_delete_takes_the_back_of_its_row_that_was_added_here(
    user, fresh, bundle, shots, backs, press_delete
):
    backs.choose("add", *shots.backs.values())
    user.box("outline").click()
    FreeCADGui.Selection.addSelection(bundle)
    user.box("backs").setCurrentRow(1)  # as an arrow key does
    press_delete()
    assert [line[0] for line in user.lines("backs")] == ["1", "3"]
    assert all("by outline" in line for line in user.lines("backs"))
    assert fresh.getObject(bundle.Name) is not None
    user.ok()
    user.wait_closed()
    assert sorted(kept_ties(bundle)) == [1, 3]


def test_delete_never_takes_a_back_of_the_document(
    user, fresh, bundle, shots, opened, press_delete
):
    backs = opened()
    backs.choose("add", shots.backs[1])
    user.box("outline").click()
    user.ok()
    user.wait_closed()
    backs, kept = opened(), user.lines("backs")
    press_delete()
    assert "in the document already" in user.box("trouble").text()
    assert user.lines("backs") == kept
    backs.choose("add", shots.backs[1])  # another photograph in its place
    assert user.lines("backs") == ["1: not tied"]
    press_delete()
    assert user.lines("backs") == kept and not backs.panel.book.changed()

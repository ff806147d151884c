# SPDX-License-Identifier: LGPL-2.1-or-later
"""Faults that were drawn stay on the leaf that they were drawn on."""

from dataclasses import replace

from PySide import QtCore, QtGui
from shapely.geometry import box

from veneerwb.core import Bundle
from veneerwb.core.photos.reading import Photo
from veneerwb.gui.books.faults import Entry, FaultBook
from veneerwb.gui.photos.items import mark
from veneerwb.host import values
from veneerwb.host.sequence import renumber

KNOT = box(20, 20, 60, 80)


def test_a_fault_goes_with_its_leaf_when_a_renumbering_is_undone(
    user, fresh, bundle, open_faults
):
    renumber(bundle, {1: 2, 2: 1})
    fresh.recompute()
    fresh.clearUndos()
    fresh.openTransaction("Back")
    renumber(bundle, {1: 2, 2: 1})
    fresh.commitTransaction()
    fresh.recompute()
    named = {leaf.Number: leaf.Name for leaf in bundle.Leaves}
    faults = open_faults()
    was = {leaf.Name: len(values.core_leaf(leaf).faults) for leaf in bundle.Leaves}
    faults.panel.book.entries.append(Entry(KNOT, "knot", 2))
    faults.panel.book.set_outline(box(5, 5, 90, 90), 1)
    fresh.undo()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "it is told")
    user.ok()
    user.wait_closed()
    now = {leaf.Name: len(values.core_leaf(leaf).faults) for leaf in bundle.Leaves}
    assert now == was | {named[2]: was[named[2]] + 1}
    usable = {leaf.Name: values.core_leaf(leaf).usable.bounds for leaf in bundle.Leaves}
    assert [name for name, one in usable.items() if one == (5, 5, 90, 90)] == [named[1]]


def test_what_was_drawn_on_a_photograph_that_is_no_more_goes_with_it_and_is_named(plain_leaf):
    leaves = plain_leaf(1), plain_leaf(2)
    old = FaultBook(Bundle(leaves, 0.6), ())
    old.entries.append(Entry(KNOT, "knot", 2))
    old.entries.append(Entry(KNOT, "knot", 1, suggested=True))
    other = replace(leaves[1].face, image=Photo.of(leaves[1].photo.copy(), leaves[1].mm_per_px))
    new = FaultBook(Bundle((leaves[0], replace(leaves[1], face=other)), 0.6), ())
    assert new.take_over(old) == [2]
    assert [(one.leaf, one.suggested) for one in new.entries] == [(1, True)]


def test_the_middle_button_leaves_what_is_dragged_alone(user, bundle, faults):
    view, told = faults.panel.window.view, []
    view.pointing.marks = [mark((60.0, 60.0), "A")]
    view.pointing.changed = lambda item: told.append(item.place)
    hand, middle, left = user.hand(view), QtCore.Qt.MiddleButton, QtCore.Qt.LeftButton
    hand.press((60.0, 60.0))
    hand.move((90.0, 90.0), left)
    hand.press((90.0, 90.0), middle)
    hand.release((90.0, 90.0), middle)
    assert told == []
    hand.release((90.0, 90.0), left)
    assert len(told) == 1 and told[0] == view.pointing.marks[0].place != (60.0, 60.0)

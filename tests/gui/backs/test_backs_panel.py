# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of backs: photographs added, tied to their faces, and what they tell taken over."""

import os
from pathlib import Path

import FreeCAD
import numpy as np
import pytest
from PIL import Image
from PySide import QtGui

from veneerwb.core.log.sawn import TABLE
from veneerwb.gui.books.backs import BANDS
from veneerwb.host.areas import set_marks
from veneerwb.host.backs import kept_ties
from veneerwb.host.objects import core_bundle

CORNERS = np.array([(45.0, 45.0), (155.0, 45.0), (45.0, 345.0), (155.0, 345.0)])
POINTS = ((60.0, 70.0), (140.0, 80.0), (70.0, 310.0))
"""Places on the photographs of faces (mm)."""


def off(leaf, true):
    """mm by which a back lies off its true place on a leaf's face, at the worst corner."""
    back = leaf.back
    laid = back.view @ back.register.inverse()
    return np.hypot(*(laid.apply(CORNERS) - true.apply(CORNERS)).T).max()


def miss(pixels):
    """How unlike the leaf's edges are where strips of face and back meet."""
    strips = np.arange(len(pixels)) * BANDS // len(pixels)
    steps = np.abs(np.diff(pixels.astype(int), axis=0)).mean(axis=2)[np.diff(strips) > 0]
    return np.median(np.sort(steps, axis=1)[:, -5:])


# --- the whole way ------------------------------------------------------------------------------


def test_backs_are_added_tied_and_asked_in_one_step(user, fresh, bundle, shots, opened, backs):
    before = user.state(fresh)
    assert "0 of 4" in user.box("counted").text() and not user.box("outline").isEnabled()
    backs.choose("add", *shots.backs.values())
    assert user.lines("backs") == ["1: not tied", "2: not tied", "3: not tied"]
    user.box("outline").click()
    assert all("by outline, 0." in line and " mm" in line for line in user.lines("backs"))
    backs.tell()
    user.box("prove").click()
    assert "Leaf 2 lay over leaf 1" in user.box("sense").text()
    assert "says the opposite" in user.box("sense").text()
    user.box("say_so").click()
    assert "as the bundle says" in user.box("sense").text()
    assert not user.visible(QtGui.QWidget, "say_so")
    user.box("measure").click()
    assert "Measured on the backs of 3 leaves" in user.box("wander").text()
    user.fill("pin", "figure")
    assert user.state(fresh) == before, "until OK it is the panel's"
    user.ok()
    user.wait_closed()
    laid = core_bundle(bundle)
    assert all(off(laid.leaf(n), true) < 0.5 for n, true in shots.ties.items())
    assert {tie.by for tie in kept_ties(bundle).values()} == {"outline"}
    # t / tan a (plane geometry), upwards here, since the log's surfaces run the other way; streaks
    # stay where they are and hold it back.
    assert bundle.Back == "previous" and bundle.Wander[1] == pytest.approx(4.27, abs=0.6)
    assert laid.leaf(4).back.source == "wander" and laid.wander() < 0.6
    assert laid.leaf(4).back.register.dy - laid.leaf(4).register.dy == pytest.approx(4.27, abs=0.7)
    assert fresh.UndoCount == 1 and not user.visible(QtGui.QWidget, "canvas")
    fresh.undo()
    fresh.recompute()
    assert user.state(fresh) == before
    fresh.redo()
    fresh.recompute()
    assert core_bundle(bundle).leaf(2).back.source == "photo" and len(bundle.Wander) == 3
    again = opened()
    assert all("by outline" in line for line in user.lines("backs"))
    again.tell()
    assert "Measured before" in user.box("wander").text()
    user.fill("pin", "face")
    user.ok()
    user.wait_closed()
    laid = core_bundle(bundle)
    assert bundle.PinBacks == "face" and fresh.UndoCount == 2
    assert all(leaf.back.register == leaf.register for leaf in laid.leaves)


@pytest.mark.parametrize("way_out", ["cancel", "escape"])
def test_cancel_leaves_all_as_it_was(user, fresh, bundle, shots, backs, way_out):
    before, folder = user.state(fresh), backs.panel.book._folder.name
    backs.choose("add", shots.backs[3])
    user.box("outline").click()
    backs.tell()
    user.box("measure").click()
    assert os.path.isdir(folder)
    user.cancel() if way_out == "cancel" else user.escape(user.box("look"))
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0
    assert not os.path.exists(folder), "nothing is left of the photographs"


def test_nothing_done_writes_nothing(user, fresh, bundle, backs):
    user.box("outline")
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 0


# --- what is said -------------------------------------------------------------------------------


def test_without_backs_the_wander_is_unknown_and_what_seams_may_miss_by_is_said(user, backs):
    backs.tell()
    said = user.box("wander").text()
    assert "unknown" in said and "may miss by 6.86 mm" in said and "assumed" in said
    assert not user.visible(QtGui.QWidget, "pin")


def test_lengths_are_in_the_users_unit(user, shots, backs):
    FreeCAD.Units.setSchema(3)
    try:
        backs.choose("add", shots.backs[1])
        user.box("outline").click()
        said = user.box("told").text() + "".join(user.lines("backs"))
        assert "mm" not in said and "thou" not in said and " in" in said
        backs.tell()
        assert "may miss by 0.27" in user.box("wander").text()
    finally:
        FreeCAD.Units.setSchema(0)


def test_untied_backs_do_not_measure_the_wander(user, shots, backs):
    backs.choose("add", shots.backs[1])
    backs.tell()
    user.box("measure").click()
    assert "Tie the backs to their faces first" in user.box("trouble").text()


@pytest.mark.parametrize("button", ["prove", "measure"])
def test_what_backs_are_asked_can_be_stopped(user, shots, backs, button):
    backs.choose("add", *shots.backs.values())
    user.box("outline").click()
    backs.tell()
    told, texts = backs.panel._progressed, []

    def heard(name, share):
        told(name, share)
        texts.append(user.box(button).text())
        backs.panel._stopped = share > 0.3

    backs.panel._progressed = heard
    user.box(button).click()
    assert "Stop (33 %)" in texts and user.box("trouble").text().startswith("Stopped")
    assert backs.panel.book.sense is None and backs.panel.book.wander is None
    assert user.box(button).isEnabled() and "Stop" not in user.box(button).text()


def test_a_doubtful_tie_is_not_kept_unless_it_is_taken(user, bundle, shots, backs, tmp_path):
    other = np.asarray(Image.open(shots.backs[3])).copy()
    other[:150] = other[250:] = TABLE  # a short piece of it
    path = tmp_path / "other.png"
    Image.fromarray(other).save(path)
    user.fill("leaf", 2)
    backs.choose("add_one", path)
    assert user.lines("backs") == ["2: not tied"]
    user.box("outline").click()
    assert user.lines("backs")[0].startswith("2: in doubt")
    assert "OK does not keep it" in user.box("told").text()
    assert backs.panel.book.changed() and not backs.panel.book._new_ties()
    user.box("take").click()
    assert "in doubt" not in user.lines("backs")[0]
    user.ok()
    user.wait_closed()
    assert kept_ties(bundle)[2].by == "outline"


@pytest.mark.parametrize("name, said", [
    ("behind 9.png", "leaf 9, which the bundle does not have"),
    ("behind 2.png", "not a picture that can be read"),
])
def test_photographs_that_will_not_do_are_refused_in_a_sentence(
    user, backs, tmp_path, name, said
):
    path = tmp_path / name
    path.write_bytes(b"no picture")
    backs.choose("add", path)
    assert said in user.box("trouble").text() and "\n" not in user.box("trouble").text()
    assert "0 of 4" in user.box("counted").text()


def test_a_scale_that_is_none_is_refused(user, shots, backs):
    user.fill("scale", "pixel")
    user.fill("per_pixel", "0 mm")
    backs.choose("add", shots.backs[1])
    assert "size of a pixel" in user.box("trouble").text()
    user.fill("per_pixel", "1 mm")
    backs.choose("add", shots.backs[1])
    assert user.lines("backs") == ["1: not tied"]


# --- on the photographs -------------------------------------------------------------------------


def test_points_clicked_on_both_sides_tie_a_back(user, fresh, bundle, shots, backs):
    backs.choose("add", shots.backs[2])
    true = shots.ties[2]
    user.box("by_marks").click()
    assert "shares two marks" in user.box("trouble").text()
    for side, places in (("face", POINTS), ("back", true.apply(POINTS))):
        user.fill("side", side)
        for mm in places:
            backs.click(tuple(map(float, mm)))
    user.box("by_marks").click()
    assert user.lines("backs")[0].startswith("2: by marks, 0.")
    user.ok()
    user.wait_closed()
    assert off(core_bundle(bundle).leaf(2), true) < 0.5


def test_paper_marks_of_the_face_stand_and_lettered_alike_tie_the_back(
    user, fresh, bundle, shots, opened
):
    set_marks(bundle.Leaves[0], [None, *POINTS[1:]])
    fresh.recompute()
    backs = opened()
    backs.choose("add", shots.backs[1])
    assert "click B" in user.box("hint").text(), "the letters that the face has"
    for mm in shots.ties[1].apply(POINTS[1:]):
        backs.click(tuple(map(float, mm)))
    user.box("by_marks").click()
    assert "by marks" in user.lines("backs")[0]
    user.ok()
    user.wait_closed()
    assert off(core_bundle(bundle).leaf(1), shots.ties[1]) < 0.5
    assert len(bundle.Leaves[0].Marks) == 2, "only Paper Marks changes those"


def test_the_other_end_can_be_put_up_and_both_sides_seen_on_each_other(user, shots, backs):
    backs.choose("add", shots.backs[1])
    user.box("outline").click()
    user.fill("side", "both")
    meeting = miss(backs.panel.picture.pixels)
    user.box("turn").click()
    assert miss(backs.panel.picture.pixels) > 1.3 * meeting, "a back that lies wrong does not meet"
    assert "the way round that was said" in user.box("told").text()
    assert not user.visible(QtGui.QWidget, "take") or "doubt" in user.lines("backs")[0]


def test_a_leaf_that_goes_meanwhile_refuses(user, fresh, bundle, shots, backs):
    backs.choose("add", shots.backs[1])
    bundle.Leaves = bundle.Leaves[1:]
    user.ok()
    assert "Leaf 1 is gone" in user.box("trouble").text()
    assert Path(shots.backs[1]).exists()

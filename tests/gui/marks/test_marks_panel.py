# SPDX-License-Identifier: LGPL-2.1-or-later
"""Paper marks: printed for a bundle, clicked on its photographs, and measured from."""

import math
import re
import subprocess

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from PySide import QtCore, QtGui

from veneerwb.core import Bundle, Leaf, Motion, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.host.areas import marks_of, set_marks
from veneerwb.host.objects import add_bundle, add_match, layout
from veneerwb.host.objects.base import kind_of

Qt = QtCore.Qt
SCALE = 0.75
"""mm per pixel."""
PLACES = {
    1: ((30.3, 40.2), (170.6, 60.1), (35.2, 350.4)),
    2: ((33.3, 45.2), (173.6, 65.1), (38.2, 355.4)),
}
"""Where A, B and C are stuck (leaf mm), as in conftest."""
REGISTER = Motion(1.5, 4.0, -3.0)
"""Where the bundle's figure lies on leaf 2."""
NEAR = 0.1
"""mm: what a centre may be off."""


def near(found, wanted, far=NEAR):
    return len(found) == len(wanted) and all(math.dist(found[k], wanted[k]) < far for k in wanted)


# --- clicking -----------------------------------------------------------------------------------


def test_a_rough_click_finds_the_centre_and_ok_keeps_it_in_one_step(user, fresh, bundle, marks):
    for k, mm in enumerate(PLACES[1]):
        assert f"mark {'ABC'[k]}" in user.box("hint").text()
        marks.click(mm)
    assert all("\u00b1 0.0" in text and " mm" in text for text in marks.texts())
    assert marks.texts() == user.lines("marks") and [t[:2] for t in marks.texts()] == [
        "A ", "B ", "C "]
    user.fill("leaf", 2)
    for mm in PLACES[2]:
        marks.click(mm)
    assert marks_of(bundle.Leaves[0]) == {}, "until OK it is the panel's"
    user.ok()
    user.wait_closed()
    for number in (1, 2):
        assert near(marks_of(bundle.Leaves[number - 1]), dict(enumerate(PLACES[number])))
    assert marks_of(bundle.Leaves[2]) == {} and fresh.UndoCount == 1
    assert not user.visible(QtGui.QWidget, "canvas")
    fresh.undo()
    assert all(leaf.Marks == [] for leaf in bundle.Leaves)
    fresh.redo()
    assert near(marks_of(bundle.Leaves[1]), dict(enumerate(PLACES[2])))


def test_cancel_leaves_nothing(user, fresh, bundle, marks):
    before = user.state(fresh)
    marks.click(PLACES[1][0])
    assert len(marks.texts()) == 1
    user.cancel()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


def test_ok_without_a_change_makes_no_step(user, fresh, bundle, marks):
    marks.click(PLACES[1][0])
    user.box("remove").click()
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 0


def test_a_click_where_no_mark_is_says_so_and_places_none(user, marks):
    marks.click((110.0, 200.0))
    said = user.box("trouble").text()
    assert "no whole mark" in said and "leaf 1" in said and marks.texts() == []
    marks.click(PLACES[1][0])
    assert not user.visible(QtGui.QLabel, "trouble") and len(marks.texts()) == 1


def test_a_mark_that_was_clicked_is_not_placed_twice(user, marks):
    marks.click(PLACES[1][0])
    marks.click(PLACES[1][0], (-5.0, -5.0))
    assert len(user.lines("marks")) == 1 and marks.texts()[0].startswith("A")
    marks.click(PLACES[1][1])
    assert [text[0] for text in user.lines("marks")] == ["A", "B"]


def test_a_mark_is_dragged_onto_another_or_goes_back(user, bundle, marks):
    marks.click(PLACES[1][0])
    view = marks.panel.window.view
    view.fit()
    marks.hand.drag(marks.px(PLACES[1][0]), marks.px((PLACES[1][1][0] - 4, PLACES[1][1][1] + 3)))
    assert near(marks.panel.book.places(1), {0: PLACES[1][1]})
    marks.hand.drag(marks.px(PLACES[1][1]), marks.px((110.0, 250.0)))
    assert "no whole mark" in user.box("trouble").text()
    assert near(marks.panel.book.places(1), {0: PLACES[1][1]})
    assert math.dist(view.pointing.marks[0].place, marks.px(PLACES[1][1])) < 0.2
    marks.click(PLACES[1][0])
    marks.hand.drag(marks.px(PLACES[1][0]), marks.px(PLACES[1][1]))
    assert "already" in user.box("trouble").text()
    assert near(marks.panel.book.places(1), {0: PLACES[1][1], 1: PLACES[1][0]})


def test_an_arrow_key_centres_the_mark_again(user, marks):
    marks.click(PLACES[1][0])
    marks.hand.key(Qt.Key_Right)
    assert near(marks.panel.book.places(1), {0: PLACES[1][0]})


def test_marks_off_the_photographs_own_frame_lie_on_the_leaf(user, fresh, sawn, stuck, opened):
    """Leaf mm, not photo mm: the photograph was taken in another frame than the leaf's."""
    view, register = Motion(2.0, 5.0, 1.0), Motion(0.5, -1.0, 2.0)
    image = Photo.of(stuck(sawn.leaves[0].photo, PLACES[1]), SCALE)
    made = add_bundle(fresh, Bundle((Leaf(1, Side(image, register, view)),), 0.6))
    fresh.recompute()
    marks = opened()
    on_leaf = register @ view.inverse()
    wanted = on_leaf.apply(PLACES[1][:2])
    marks.click(tuple(wanted[0]))
    marks.click(tuple(wanted[1]))
    user.ok()
    user.wait_closed()
    assert math.dist(wanted[0], PLACES[1][0]) > 2.0
    assert near(marks_of(made.Leaves[0]), dict(enumerate(map(tuple, wanted))))


# --- letters ------------------------------------------------------------------------------------


def test_marks_exchange_their_letters(user, bundle, marks):
    marks.click(PLACES[1][0])
    marks.click(PLACES[1][1])
    user.fill("letter", 0)
    assert [text[0] for text in user.lines("marks")] == ["A", "B"]
    user.ok()
    user.wait_closed()
    assert near(marks_of(bundle.Leaves[0]), {0: PLACES[1][1], 1: PLACES[1][0]})


def test_the_next_click_takes_the_letter_that_is_wanted_and_goes_on_from_there(user, bundle, marks):
    user.fill("letter", 1)
    marks.click(PLACES[1][1])
    marks.click(PLACES[1][2])
    assert [text[0] for text in marks.texts()] == ["B", "C"]
    user.fill("letter", 4)  # C becomes E
    assert "mark F" in user.box("hint").text()
    user.ok()
    user.wait_closed()
    assert near(marks_of(bundle.Leaves[0]), {1: PLACES[1][1], 4: PLACES[1][2]})


@pytest.mark.parametrize("how", ["key", "button"])
def test_a_mark_is_removed_and_its_letter_free(user, fresh, bundle, opened, how):
    set_marks(bundle.Leaves[0], PLACES[1])
    fresh.recompute()
    marks = opened()
    user.click(user.box("marks"), 1)
    assert user.box("letter").currentText() == "B"
    if how == "key":
        marks.hand.key(Qt.Key_Delete)
    else:
        user.box("remove").click()
    assert [text[0] for text in user.lines("marks")] == ["A", "C"]
    assert "mark B" in user.box("hint").text()
    user.ok()
    user.wait_closed()
    left = {0: PLACES[1][0], 2: PLACES[1][2]}
    assert marks_of(bundle.Leaves[0]) == left, "what nobody touched stays exactly"


# --- what they tell -----------------------------------------------------------------------------


def test_the_leaves_tell_what_they_have_and_how_alike_they_lie(user, fresh, bundle, opened):
    set_marks(bundle.Leaves[0], PLACES[1])
    # Rigidly as on leaf 1, but C a millimetre further along: that leaves 0.4 mm over.
    moved = [*PLACES[2][:2], (PLACES[2][2][0], PLACES[2][2][1] + 1.0)]
    set_marks(bundle.Leaves[1], moved)
    fresh.recompute()
    marks = opened()
    first, second, third = user.lines("leaves")
    assert first == "1: ABC" and third == "3: none"
    rms = math.sqrt(np.mean(np.square(_left_over(PLACES[1], moved))))
    assert 0.1 < rms < 1.0 and second == f"2: ABC, {rms:.2f} mm off leaf 1"
    user.click(user.box("leaves"), 1)
    assert marks.panel.number == 2 and user.box("page").currentIndex() == 1


def _left_over(a, b):
    """What the best rigid motion leaves over, by the singular value decomposition (W. Kabsch, Acta
    Crystallographica A32 (1976) 922-923)."""
    a, b = np.array(a) - np.mean(a, axis=0), np.array(b) - np.mean(b, axis=0)
    u, _, v = np.linalg.svd(a.T @ b)
    return np.linalg.norm(a @ (u @ v) - b, axis=1)


def said_from(text):
    """The distances that a text measures from marks, by their letters."""
    return {mark: float(mm) for mm, mark in re.findall(r"([\d.]+) mm from (\w)", text)}


def test_without_a_match_the_middle_of_the_leaf_is_measured(user, bundle, marks):
    assert "two marks" in user.box("measured").text()
    marks.click(PLACES[1][0])
    marks.click(PLACES[1][1])
    middle = (bundle.Leaves[0].Width.Value / 2, bundle.Leaves[0].Length.Value / 2)
    text = user.box("measured").text()
    wanted = {"AB"[k]: math.dist(middle, mm) for k, mm in enumerate(PLACES[1][:2])}
    assert said_from(text) == pytest.approx(wanted, abs=NEAR + 0.05)
    assert text.startswith("The middle of the leaf: ") and "left of the line from A to B" in text


def test_the_tip_of_a_match_is_measured_through_the_register(user, fresh, bundle, opened):
    match = add_match(fresh, bundle, Diameter=300.0, Ways=3, Turn="slip")
    match.AutoPlacement, match.TipX, match.TipY = False, 90.0, 120.0
    for leaf in bundle.Leaves[:2]:
        set_marks(leaf, PLACES[leaf.Number])
    fresh.recompute()
    marks = opened()
    for number, tip in ((1, (90.0, 120.0)), (2, tuple(REGISTER.apply([(90.0, 120.0)])[0]))):
        user.fill("leaf", number)
        text = user.box("measured").text()
        (area,) = marks.panel.window.view.pointing.areas
        assert f"The tip of {match.Label}, by the leaf's register" in text and area.text == "tip"
        seen = np.mean(area.corners, axis=0)
        assert math.dist(seen, marks.px(tip)) < 1e-6
        wanted = {"ABC"[k]: math.dist(tip, mm) for k, mm in enumerate(PLACES[number])}
        said = said_from(text)
        assert len(said) == 2 and said == pytest.approx({k: wanted[k] for k in said}, abs=0.06)


def test_without_registers_the_tip_is_said_to_be_as_photographed(user, fresh, sawn, opened):
    bundle = add_bundle(fresh, sawn)
    match = add_match(fresh, bundle, Diameter=300.0, Ways=3, Turn="slip")
    set_marks(bundle.Leaves[0], PLACES[1])
    fresh.recompute()
    opened()
    text = user.box("measured").text()
    assert f"The tip of {match.Label}, as photographed, with no registers: " in text
    tip = layout(match).recipe.placement
    said = said_from(text)
    wanted = {"ABC"[k]: math.dist((tip.x, tip.y), mm) for k, mm in enumerate(PLACES[1])}
    assert len(said) == 2 and said == pytest.approx({k: wanted[k] for k in said}, abs=0.06)


def test_an_arrow_that_points_elsewhere_is_spoken_of(user, fresh, sawn, stuck, opened):
    pixels = stuck(stuck(sawn.leaves[0].photo, PLACES[1][:1]), PLACES[1][1:2], 180.0)
    add_bundle(fresh, Bundle((Leaf(1, Side(Photo.of(pixels, SCALE))),), 0.6))
    fresh.recompute()
    marks = opened()
    marks.click(PLACES[1][0])
    marks.click(PLACES[1][1])
    up, down = user.lines("marks")
    assert "arrow" not in up and "arrow does not point up" in down


def test_a_ring_of_another_size_than_was_printed_is_spoken_of(user, fresh, sawn, stuck, opened):
    """The photograph's scale is said to be 15 % larger than it is."""
    pixels = stuck(sawn.leaves[0].photo, PLACES[1][:1])
    add_bundle(fresh, Bundle((Leaf(1, Side(Photo.of(pixels, 1.15 * SCALE))),), 0.6))
    fresh.recompute()
    marks = opened()
    marks.click(tuple(1.15 * one for one in PLACES[1][0]))
    (said,) = user.lines("marks")
    assert float(re.search(r"ring seems ([\d.]+) mm", said).group(1)) == pytest.approx(23, abs=0.5)


# --- printing, ways in and out ------------------------------------------------------------------


def told_by(*command):
    return subprocess.run(command, capture_output=True, text=True, check=True).stdout


def test_marks_are_printed_for_the_leaves_numbers(user, marks, tmp_path, monkeypatch):
    path = tmp_path / "marks"
    monkeypatch.setattr(QtGui.QFileDialog, "getSaveFileName", lambda *_: (str(path), ""))
    user.fill("per_leaf", "2")
    user.box("print_marks").click()
    assert user.box("written").text().startswith("Written: marks.pdf, one page")
    words = told_by("pdftotext", f"{path}.pdf", "-").replace(" ", "")
    captions = re.findall(r"^\d[A-F]$", words, re.MULTILINE)
    assert sorted(captions) == ["1A", "1B", "2A", "2B", "3A", "3B"]
    assert "A4" in told_by("pdfinfo", f"{path}.pdf")
    was = (tmp_path / "marks.pdf").read_bytes()
    user.box("print_marks").click()
    assert "there already" in user.box("trouble").text()
    assert (tmp_path / "marks.pdf").read_bytes() == was


def test_a_file_that_cannot_be_written_is_told_of(user, marks, tmp_path, monkeypatch):
    answer = (str(tmp_path / "nowhere" / "marks.pdf"), "")
    monkeypatch.setattr(QtGui.QFileDialog, "getSaveFileName", lambda *_: answer)
    user.box("print_marks").click()
    assert "could not be written" in user.box("trouble").text()
    assert not user.visible(QtGui.QLabel, "written")


def test_marks_are_there_after_saving_and_opening(user, fresh, bundle, opened, marks, tmp_path):
    for mm in PLACES[1]:
        marks.click(mm)
    user.ok()
    user.wait_closed()
    kept = marks_of(bundle.Leaves[0])
    path = str(tmp_path / "marks.FCStd")
    fresh.saveAs(path)
    FreeCAD.closeDocument(fresh.Name)
    again = FreeCAD.openDocument(path)
    (leaf,) = [o for o in again.Objects if kind_of(o) == "Leaf" and o.Number == 1]
    assert near(marks_of(leaf), kept, 1e-9) and near(kept, dict(enumerate(PLACES[1])))
    found = opened()
    assert found.texts() == ["A", "B", "C"]


def test_it_opens_at_the_leaf_that_is_selected(user, fresh, bundle, opened):
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(bundle.Leaves[1])
    assert opened().panel.number == 2


def test_a_leaf_that_is_gone_by_then_refuses_ok(user, fresh, bundle, marks):
    marks.click(PLACES[1][0])
    fresh.removeObject(bundle.Leaves[0].Name)
    steps = fresh.UndoCount
    user.ok()
    assert FreeCADGui.Control.activeDialog() and "Leaf 1 is gone" in user.box("trouble").text()
    assert fresh.UndoCount == steps
    user.cancel()
    user.wait_closed()


def test_all_letters_used_says_so_and_places_no_more(user, fresh, bundle, opened):
    set_marks(bundle.Leaves[0], [(20.0 * k, 300.0) for k in range(6)])
    fresh.recompute()
    marks = opened()
    assert "All letters are used" in user.box("hint").text()
    marks.click(PLACES[1][0])
    assert len(marks.texts()) == 6


def test_the_window_comes_back_with_its_marks(user, marks):
    marks.click(PLACES[1][0])
    marks.panel.window._frame.close()
    user.wait_for(lambda: marks.panel.window is None, "the window is gone")
    user.box("look").click()
    assert len(marks.texts()) == 1

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A photograph of what was pinned confirms the registers, or says which leaf lies how far off."""

import math
import re

import FreeCAD
import numpy as np
import pytest
from PIL import Image
from PySide import QtCore, QtGui

from veneerwb.core import Motion

Qt = QtCore.Qt
OFF = Motion(dx=1.5, dy=-0.8)
"""How leaf 2 lies off its register on some photographs, mm."""
PINS = ((75.0, 30.0), (78.0, 372.0))
ABOVE = "600 mm"


def click_all(confirming, moved=None):
    for number, count in ((1, 4), (2, 2), (3, 2)):
        for k in range(count):
            confirming.click_on(number, k, (moved or {}).get(number))


def stand(confirming, user):
    """Says where the pins stand, and clicks on both."""
    for k, (x, y) in enumerate(PINS):
        confirming.names(f"pin {k + 1}")
        user.fill("pin_x", f"{x} mm")
        user.fill("pin_y", f"{y} mm")
        confirming.click_pin(k)


# --- a stack ------------------------------------------------------------------------------------


def test_a_stack_that_lies_as_registered_is_confirmed(user, fresh, confirming, shot):
    before = user.state(fresh)
    confirming.take(shot(tilt=1.0), tilt=1.0)
    click_all(confirming)
    user.fill("camera", ABOVE)
    (said,) = confirming.said()
    off, turn, known = map(float, re.search(
        r"Leaves 1-3 lie where their registers have them, to ([\d.]+) mm and ([\d.]+) deg, which "
        r"the photograph tells to ([\d.]+) mm", said
    ).groups())
    assert off < 0.1 and turn < 0.05 and known < 0.1
    source = user.box("source").text()
    assert "8 marks centred to 0.0" in source and "squared up by the marks of leaf 1" in source
    # 6 mm deep, 180 mm off the middle, from 600 mm: 1.8 mm.
    depth, shift = map(float, re.search(
        r"Leaf 3 lies ([\d.]+) mm down: a parallax of ([\d.]+) mm", source).groups())
    assert depth == 6.0 and shift == pytest.approx(1.8, abs=0.2)
    user.ok()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0, "nothing of it is written"


def test_the_leaf_that_lies_off_is_named_with_mm_and_way(user, confirming, shot):
    confirming.take(shot({2: OFF}))
    click_all(confirming, {2: OFF})
    user.fill("camera", ABOVE)
    wrong, right = confirming.said()
    across, along = map(float, re.search(
        r"^Leaf 2 lies [\d.]+ mm off its register: ([\d.]+) mm to the right and ([\d.]+) mm down "
        r"the grain\. Do not cut\.", wrong
    ).groups())
    assert math.dist((across, along), (1.5, 0.8)) < 0.1
    assert "move the leaf back" in wrong and "mm to the left and" in wrong
    assert right.startswith("Leaves 1, 3 lie where their registers have them")


def test_a_stack_needs_the_camera_s_height(user, confirming, shot):
    """Without it the lower leaves, seen smaller, would be accused."""
    confirming.take(shot())
    click_all(confirming)
    (said,) = confirming.said()
    assert "say how far above the topmost leaf the camera was" in said
    user.fill("camera", "100 m")  # as good as no parallax
    assert not confirming.said()[-1].startswith("Leaves 1-3 lie")
    user.fill("camera", ABOVE)
    assert confirming.said()[0].startswith("Leaves 1-3 lie")


def test_the_topmost_leaf_decides_how_deep_the_others_lie(user, confirming, shot):
    confirming.take(shot())
    click_all(confirming)
    user.fill("camera", ABOVE)
    user.fill("top", 3)
    assert confirming.page.book.depth(1) == 6.0
    assert not confirming.said()[0].startswith("Leaves 1-3 lie")


# --- one leaf and its pins ----------------------------------------------------------------------


@pytest.mark.parametrize("moved", [Motion(), Motion(dx=-1.2)], ids=["right", "off"])
def test_the_pinned_leaf_is_judged_by_its_pins(user, confirming, shot, moved):
    confirming.take(shot({1: moved}, numbers=(1,), tilt=0.5), tilt=0.5)
    for k in range(4):
        confirming.click_on(1, k, moved)
    assert "click two pins too" in confirming.said()[0]
    assert not user.visible(QtGui.QWidget, "pin_x"), "no pin is asked for yet"
    stand(confirming, user)
    assert user.lines("sightings")[-1] == "pin 2, as clicked"
    (said,) = confirming.said()
    if moved == Motion():
        assert said.startswith("Leaf 1 lies where its register has it")
    else:
        across = re.search(r"Leaf 1 lies [\d.]+ mm off its register: ([\d.]+) mm to the left", said)
        assert float(across.group(1)) == pytest.approx(1.2, abs=0.2)


def test_where_a_pin_stands_is_kept_for_each(user, confirming, shot):
    confirming.take(shot(numbers=(1,)))
    stand(confirming, user)
    np.testing.assert_allclose(confirming.page.book.stand, PINS, atol=1e-9)
    user.click(user.box("sightings"), 0)
    assert user.box("pin_x").property("rawValue") == pytest.approx(75.0)


def test_a_pin_that_is_clicked_from_afar_is_known_less_well(user, confirming, shot):
    confirming.take(shot(numbers=(1,)))
    for k in range(4):
        confirming.click_on(1, k)
    confirming.page.window.view.zoom_to(0.25)
    stand(confirming, user)
    assert "neither confirms nor contradicts" in confirming.said()[0]


# --- clicking -----------------------------------------------------------------------------------


def test_a_rough_click_is_centred_and_the_next_mark_is_asked_for(user, confirming, shot):
    confirming.take(shot())
    assert "mark 1 A" in confirming.page.window.form.hint.text()
    confirming.click_on(1, 0)
    (line,) = user.lines("sightings")
    assert re.fullmatch(r"1 A \u00b1 0\.0\d mm", line)
    mm = Motion().apply([(30.0, 60.0)])[0]
    assert math.dist(confirming.page.book.sightings[0].place, confirming.camera.sees(mm)) < 0.2
    assert "mark 1 B" in confirming.page.window.form.hint.text()
    confirming.names("2 B")
    assert "mark 2 B" in confirming.page.window.form.hint.text()
    confirming.click_on(2, 1)
    assert [line[:3] for line in user.lines("sightings")] == ["1 A", "2 B"]


def test_a_click_where_no_mark_is_says_so_and_places_none(user, confirming, shot):
    confirming.take(shot())
    confirming.click_at((184.0, 448.0))
    assert "no whole mark" in user.box("trouble").text() and user.lines("sightings") == []


def test_a_mark_gets_another_name_or_goes(user, confirming, shot):
    confirming.take(shot())
    confirming.click_on(1, 0)
    confirming.click_on(1, 1)
    user.click(user.box("sightings"), 0)
    confirming.names("1 B")  # exchanged
    assert [line[:3] for line in user.lines("sightings")] == ["1 B", "1 A"]
    user.box("drop").click()
    assert [line[:3] for line in user.lines("sightings")] == ["1 A"]
    user.click(user.box("sightings"), 0)
    confirming.hand.key(Qt.Key_Delete)
    assert user.lines("sightings") == [] and "mark 1 A" in confirming.page.window.form.hint.text()


def test_delete_in_the_list_takes_what_its_row_is_of(user, confirming, shot):
    confirming.take(shot())
    for k in (0, 1):
        confirming.click_on(1, k)
    chosen, rows = confirming.panel.chosen, user.box("sightings")
    rows.setCurrentRow(1)  # as an arrow key does
    user.presses(rows, Qt.Key_Delete)
    assert [line[:3] for line in user.lines("sightings")] == ["1 A"]
    assert confirming.panel.chosen is chosen, "nothing happens on the page of the leaves' own marks"


def test_a_mark_is_not_clicked_twice(user, confirming, shot):
    confirming.take(shot())
    confirming.click_on(1, 0)
    confirming.click_on(1, 0, off=(-6.0, 5.0))
    assert len(user.lines("sightings")) == 1
    confirming.click_on(1, 1)
    hand, camera = confirming.hand, confirming.camera
    confirming.page.window.view.fit()
    hand.drag(camera.sees((30.0, 60.0)), camera.sees((120.0, 62.0)))
    assert "already" in user.box("trouble").text()


# --- ways in and out ----------------------------------------------------------------------------


def test_what_was_clicked_outlives_an_undo(user, fresh, pinned, confirming, shot):
    """The document's last step is undone while the panel is open with something to keep."""
    user.box("tasks").setCurrentIndex(0)
    user.click(user.box("marks"), 3)
    user.box("remove").click()
    user.box("tasks").setCurrentIndex(1)
    fresh.openTransaction("Something")
    pinned.Label = "Renamed"
    fresh.commitTransaction()
    confirming.take(shot())
    confirming.click_on(1, 0)
    fresh.undo()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "trouble"), "the panel reads again")
    assert [line[:3] for line in user.lines("sightings")] == ["1 A"]
    assert [one.text for one in confirming.page.window.view.pointing.marks] == ["1 A"]


def test_the_photograph_is_asked_for(user, confirming, shot, monkeypatch, tmp_path):
    answer = [""]
    monkeypatch.setattr(QtGui.QFileDialog, "getOpenFileName", lambda *_: (answer[0], ""))
    assert not user.box("see").isEnabled()
    user.box("photograph").click()
    assert confirming.page.window is None
    answer[0] = str(tmp_path / "broken.jpg")
    (tmp_path / "broken.jpg").write_bytes(b"no picture")
    user.box("photograph").click()
    assert "broken.jpg" in user.box("trouble").text()
    answer[0] = shot()
    user.box("photograph").click()
    assert user.box("file").text() == "stack.png" and confirming.page.window is not None


def test_marks_located_in_this_panel_count_before_they_are_kept(user, confirming, shot):
    user.box("tasks").setCurrentIndex(0)
    user.click(user.box("marks"), 3)
    user.box("remove").click()
    user.box("tasks").setCurrentIndex(1)
    confirming.take(shot())
    names = [name.text for name in confirming.page.book.names()]
    assert names == ["1 A", "1 B", "1 C", "2 A", "2 B", "3 A", "3 B", "pin 1", "pin 2"]


def test_the_window_comes_back_with_what_was_clicked(user, confirming, shot):
    confirming.take(shot())
    confirming.click_on(1, 0)
    confirming.page.window._frame.close()
    user.wait_for(lambda: confirming.page.window is None, "the window is gone")
    user.box("see").click()
    assert [one.text for one in confirming.page.window.view.pointing.marks] == ["1 A"]
    user.cancel()
    user.wait_closed()
    assert not user.visible(QtGui.QWidget, "canvas")


def test_the_user_s_units_are_spoken(user, confirming, shot):
    was = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Units").GetInt("UserSchema", 0)
    FreeCAD.Units.setSchema(3)
    try:
        confirming.take(shot({2: OFF}))
        click_all(confirming, {2: OFF})
        user.fill("camera", ABOVE)
        wrong = confirming.said()[0]
        assert re.search(r"Leaf 2 lies 0\.06\d* in off its register: 0\.0(59|60)\d* in to", wrong)
        assert " mm" not in "".join(confirming.said()) + user.box("source").text()
        assert " in" in user.lines("sightings")[0]
    finally:
        FreeCAD.Units.setSchema(was)


def test_a_photograph_that_is_too_plain_is_none_the_worse(user, confirming, tmp_path):
    path = tmp_path / "white.png"
    Image.fromarray(np.full((400, 300, 3), 255, np.uint8)).save(path)
    confirming.take(str(path))
    confirming.click_at((150.0, 200.0))
    assert "burnt out" in user.box("trouble").text() and confirming.said() == []

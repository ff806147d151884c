# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs as people take them, brought in by the panel: clicked corners and points, leaves
found on a table, light evened, backs."""

import numpy as np
import pytest
from PIL import Image
from PySide import QtCore, QtGui
from shapely.geometry import box

from veneerwb.gui.panels import base
from veneerwb.host.objects import core_bundle

Qt = QtCore.Qt
WIDTH, LENGTH = 100, 240
"""mm and pixels of the leaf."""
LEFT, TOP = 30, 20
"""Where it lies on its photograph."""


def corners(slant=0):
    """Of the leaf on its photograph."""
    right, low = LEFT + WIDTH, TOP + LENGTH
    return [(LEFT, low), (right, low), (right + slant, TOP), (LEFT + slant, TOP)]


@pytest.fixture
def panel(bring_in):
    return bring_in


def bundle_of(user, doc):
    made = user.only(doc, "Bundle")
    assert made.Message == ""
    return core_bundle(made)


def done(user):
    """The first OK brings in and reports, the second keeps."""
    user.ok()
    assert user.visible(QtGui.QListWidget, "report"), base._shown[0].form.trouble.text()
    said = user.lines("report")
    user.ok()
    user.wait_closed()
    assert not user.visible(QtGui.QWidget, "canvas")
    return said


# --- scale and squaring -------------------------------------------------------------------------


def test_two_points_give_the_scale_of_all_photographs(user, fresh, panel, three):
    panel(three, scale="points", known="480 mm")
    hand = panel.window("click_scale")
    for place in ((LEFT, TOP), (LEFT, TOP + LENGTH)):
        hand.click(place)
    assert "All are clicked on. The first is 3" in user.box("summary").text()
    done(user)
    leaf = bundle_of(user, fresh).leaf(2)

    assert leaf.mm_per_px == pytest.approx(2.0, rel=0.01)
    assert fresh.UndoCount == 1
    fresh.undo()
    assert fresh.Objects == []


def test_a_scale_ten_times_wrong_is_said_before_ok_and_refused(user, fresh, panel, three):
    panel(three, known="30 m")
    said = user.box("trouble").text()
    assert "The first photograph would show a leaf 16 m across and 30 m along" in said
    user.ok()
    assert user.box("trouble").text() == said and fresh.Objects == []
    user.fill("known", "300 mm")
    assert not user.visible(QtGui.QLabel, "trouble")


def test_four_corners_of_each_leaf_square_it_up(user, fresh, panel, three):
    made = panel(three, scale="corners", rect_width="200 mm", rect_length="480 mm", each=True)
    hand = panel.window("click_scale")
    for k, slant in enumerate((0, 6, 12)):
        made.photographs.window.turn_to(k)
        made.photographs.window.view.zoom_to(2.0)
        for place in corners(slant)[::-1]:
            made.photographs.window.view.show_place(place)
            hand.click(place)
    done(user)
    bundle = bundle_of(user, fresh)
    for number in (1, 2, 3):
        leaf = bundle.leaf(number)
        assert leaf.size == pytest.approx((200.0, 480.0), abs=2.0)
        edge = leaf.photo[20:-20, :6].reshape(-1, 3).mean(axis=0)
        assert edge[0] > 110 and edge[2] < 110, "no table is left at the edge"


def test_clicks_that_are_missing_are_asked_for_by_name(user, fresh, panel, three):
    panel(three, scale="points", known="480 mm", each=True)
    hand = panel.window("click_scale")
    for place in ((LEFT, TOP), (LEFT, TOP + LENGTH)):
        hand.click(place)
    user.ok()
    said = user.box("trouble").text()
    assert "leaf 2" in said and "leaf 3" in said and "leaf 1" not in said
    assert fresh.Objects == [] and fresh.UndoCount == 0


def test_clicks_do_not_hold_for_photographs_of_another_folder(
    user, panel, three, tmp_path, photograph
):
    other = tmp_path / "other"
    other.mkdir()
    Image.fromarray(photograph(5)).save(other / "leaf 1.png")
    made = panel(three, scale="points", known="480 mm")
    hand = panel.window("click_scale")
    for place in ((LEFT, TOP), (LEFT, TOP + LENGTH)):
        hand.click(place)
    user.fill("folder", str(other))
    assert "One is still to be clicked on" in user.box("summary").text()
    assert made.photographs is None and not user.visible(QtGui.QWidget, "canvas")
    user.ok()
    assert "missing" in user.box("trouble").text()


def test_corners_on_a_line_are_refused_as_soon_as_they_are_clicked(user, panel, three):
    panel(three, scale="corners", rect_width="200 mm", rect_length="480 mm")
    hand = panel.window("click_scale")
    for place in ((20, 50), (60, 50), (100, 50), (130, 52)):
        hand.click(place)
    assert "line" in user.box("trouble").text()
    hand.drag((60, 50), (20, 280))
    hand.drag((100, 50), (128, 280))
    assert not user.visible(QtGui.QLabel, "trouble")


def test_another_choice_of_scale_shows_its_own_clicks(user, panel, three):
    made = panel(three, scale="points", known="480 mm")
    hand = panel.window("click_scale")
    hand.click((LEFT, TOP))
    pointing = made.photographs.window.view.pointing
    user.fill("scale", "corners")
    assert pointing.marks == [] and pointing.most == 4
    user.fill("scale", "points")
    assert len(pointing.marks) == 1 and pointing.most == 2


# --- the leaf and its light ---------------------------------------------------------------------


def test_leaves_are_found_and_the_light_is_evened(user, fresh, panel, three):
    made = panel(three, scale="pixel", per_pixel="1 mm", leaf="cut", light="background")
    assert made is base._shown[0]
    said = " ".join(done(user))
    assert "evened from the background" in said
    bundle = bundle_of(user, fresh)
    # Leaves that lean have boxes of other sizes: what counts is what may be used.
    for number in (1, 2, 3):
        assert bundle.leaf(number).usable.area == pytest.approx(WIDTH * LENGTH, rel=0.03)
    inside = [leaf.photo[60:-60, 40:-40].mean() for leaf in bundle.leaves]
    assert np.ptp(inside) < 5.0
    made = user.only(fresh, "Bundle")
    assert made.Leaves[1].Gains == pytest.approx([1.2] * 3, rel=0.06)


def test_a_photograph_that_keeps_its_surroundings_keeps_the_leaf_in_its_place(
    user, fresh, panel, three
):
    panel(three, scale="pixel", per_pixel="1 mm", leaf="keep")
    done(user)
    leaf = bundle_of(user, fresh).leaf(1)
    assert leaf.size == pytest.approx((160.0, 300.0))
    wanted = box(LEFT, 300 - TOP - LENGTH, LEFT + WIDTH, 300 - TOP)
    assert leaf.usable.symmetric_difference(wanted).area < 0.03 * wanted.area


def test_a_found_outline_is_changed_by_hand(user, fresh, panel, three):
    made = panel(three, scale="pixel", per_pixel="1 mm", leaf="keep")
    hand = panel.window("outlines")
    pointing = made.photographs.window.view.pointing
    (found,) = pointing.areas
    at = max(found.corners, key=lambda p: p[0] - p[1])  # the upper right corner
    assert at == pytest.approx((LEFT + WIDTH, TOP), abs=3.0)
    hand.drag(at, (LEFT + WIDTH - 40.0, TOP))
    done(user)
    bundle = bundle_of(user, fresh)
    lost = WIDTH * LENGTH - bundle.leaf(1).usable.area
    assert 0.3 * 20 * LENGTH < lost < 1.2 * 20 * LENGTH
    assert bundle.leaf(2).usable.area == pytest.approx(WIDTH * LENGTH, rel=0.03)


def test_an_outline_that_is_deleted_is_found_anew(user, panel, three):
    made = panel(three, scale="pixel", per_pixel="1 mm", leaf="cut")
    hand = panel.window("outlines")
    pointing = made.photographs.window.view.pointing
    before = list(pointing.areas[0].corners)
    hand.drag(before[0], (80.0, 150.0))
    assert pointing.areas[0].corners != before
    hand.click((LEFT + 20.0, TOP + 20.0))
    hand.key(Qt.Key_Delete)
    assert pointing.areas[0].corners == before


def test_where_no_leaf_is_found_it_is_drawn(user, fresh, panel, save):
    noise = np.random.default_rng(3).integers(40, 220, (300, 160, 3)).astype(np.uint8)
    noise[TOP : TOP + LENGTH, LEFT : LEFT + WIDTH] //= 2
    panel(save(leaf_1=noise), scale="pixel", per_pixel="1 mm", leaf="keep")
    hand = panel.window("outlines")
    assert "plain background" in user.box("hint").text()
    for place in corners():
        hand.click(place)
    hand.key(Qt.Key_Return)
    done(user)
    area = bundle_of(user, fresh).leaf(1).usable.area
    assert area == pytest.approx(WIDTH * LENGTH, rel=0.03)


def test_a_grey_card_evens_the_light(user, fresh, panel, save, photograph):
    shots = {}
    for k, light in ((1, 1.0), (2, 0.7), (3, 1.3)):
        pixels = photograph(k, light)
        card = np.clip(((120 / 255) ** 2.2 * light) ** (1 / 2.2) * 255, 0, 255)
        pixels[270:295, 60:110] = card
        shots[f"leaf_{k}"] = pixels
    made = panel(save(**shots), scale="pixel", per_pixel="1 mm", light="grey patch")
    hand = panel.window("click_patch")
    for place in ((62, 272), (108, 272), (108, 293), (62, 293)):
        hand.click(place)
    hand.key(Qt.Key_Return)
    (patch,) = made.photographs.window.view.pointing.areas
    assert patch.text == "grey card"
    assert "grey patch" in " ".join(done(user))
    inside = [leaf.photo[60:-60, 40:-40].mean() for leaf in bundle_of(user, fresh).leaves]
    assert np.ptp(inside) < 5.0


def test_photographs_are_turned(user, fresh, panel, save, photograph):
    lying = np.rot90(photograph(1), -1)  # the top to the right
    panel(save(leaf_1=lying), known="300 mm", turn=90)
    assert "160.00 mm across, 300.00 mm along" in base._shown[0].form.summary.text()
    done(user)
    leaf = bundle_of(user, fresh).leaf(1)
    assert leaf.size == pytest.approx((160.0, 300.0))
    upright = photograph(1)
    assert np.abs(leaf.photo.astype(int) - upright).mean() < 4.0


# --- sides --------------------------------------------------------------------------------------


def test_files_whose_names_say_back_are_backs(user, fresh, panel, save, photograph):
    folder = save(leaf_1=photograph(1), leaf_2=photograph(2), leaf_2_back=photograph(7)[:, ::-1])
    panel(folder, known="300 mm")
    assert "2 photographs, leaves 1 to 2. Backs: 1." in user.box("summary").text()
    user.ok()
    user.wait_closed()
    bundle = bundle_of(user, fresh)
    assert bundle.leaf(1).back.source != "photo" and bundle.leaf(2).back.source == "photo"
    assert np.abs(bundle.leaf(2).back.photo.astype(int) - photograph(7)).mean() < 4.0


def test_backs_come_from_a_second_folder(user, fresh, panel, save, tmp_path, photograph):
    behind = tmp_path / "rear"
    behind.mkdir()
    Image.fromarray(photograph(8)).save(behind / "IMG 2.png")
    panel(save(leaf_1=photograph(1), leaf_2=photograph(2)), known="300 mm", backs=str(behind))
    user.ok()
    user.wait_closed()
    assert bundle_of(user, fresh).leaf(2).back.source == "photo"


def test_a_back_without_its_face_is_refused(user, fresh, panel, save, photograph):
    folder = save(leaf_1=photograph(1), leaf_9_back=photograph(7))
    panel(folder, known="300 mm")
    user.ok()
    assert "leaf 9" in user.box("trouble").text() and fresh.Objects == []


def test_the_side_photographed_becomes_the_face(user, fresh, panel, save, photograph):
    """Nothing is assumed of how the leaves lay, or of the side, where the user does not say it."""
    folder = save(leaf_1=photograph(1)[::4, ::4], leaf_2=photograph(2)[::4, ::4])
    made = panel(folder, known="300 mm")
    assert made._sense() == "own" and not user.visible(QtGui.QComboBox, "side")
    assert user.visible(QtGui.QLabel, "sense_hint")
    for stack, side, sense in (
        ("next", "not known", "own"), ("next", "face", "next"), ("previous", "face", "previous"),
        ("previous", "back", "next"), ("next", "back", "previous"),
    ):
        user.fill("back", stack)
        user.fill("side", side)
        assert made._sense() == sense
        assert bool(user.visible(QtGui.QLabel, "sense_hint")) == (sense == "own")
    user.ok()
    user.wait_closed()
    assert user.only(fresh, "Bundle").Back == "previous"


def test_the_window_can_be_closed_and_opened_again(user, panel, three):
    made = panel(three, scale="points", known="480 mm")
    hand = panel.window("click_scale")
    hand.click((LEFT, TOP))
    made.photographs.window._frame.close()
    user.wait_for(lambda: made.photographs.window is None, "the panel hears of it")
    user.fill("known", "240 mm")
    panel.window("click_scale")
    assert len(made.photographs.window.view.pointing.marks) == 1

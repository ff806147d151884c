# SPDX-License-Identifier: LGPL-2.1-or-later
"""Faults and usable areas, drawn and changed on the photographs of a bundle's leaves."""

from dataclasses import replace

import FreeCADGui
import numpy as np
import pytest
from PySide import QtCore, QtGui
from shapely.geometry import Polygon, box

from veneerwb.core import Bundle, Leaf, Motion, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.host.objects import add_bundle, core_bundle

Qt = QtCore.Qt
WIDTH, LENGTH = 200.0, 400.0
REGISTER = Motion(2.0, 6.0, -4.0)
"""Where the bundle's figure lies on leaf 2."""
SQUARE = [(20.0, 20.0), (60.0, 20.0), (60.0, 80.0), (20.0, 80.0)]
"""Leaf mm."""


@pytest.fixture
def panel(faults):
    return faults.panel


@pytest.fixture
def hand(faults):
    return faults.hand


# --- drawing ------------------------------------------------------------------------------------


def test_a_knot_is_drawn_through_all_leaves(user, fresh, bundle, panel, faults):
    user.fill("kind", "knot")
    faults.draw(SQUARE)
    assert user.lines("faults") == ["patch, leaf 1", "knot, all leaves"]
    assert bundle.FaultOutlines == [], "until OK it is the panel's"
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1 and bundle.FaultKinds == ["knot"]
    found = [fault for fault in faults.on(bundle, 1) if fault.kind == "knot"]
    assert len(found) == 1 and faults.near(found[0].outline, Polygon(SQUARE))
    (carried,) = faults.on(bundle, 2)
    assert faults.near(carried.outline, REGISTER.apply_to(Polygon(SQUARE)))
    assert not user.visible(QtGui.QWidget, "canvas")
    fresh.undo()
    fresh.recompute()
    assert bundle.FaultOutlines == [] and len(faults.on(bundle, 1)) == 1
    fresh.redo()
    fresh.recompute()
    assert len(faults.on(bundle, 1)) == 2


def test_a_fault_drawn_on_another_leaf_lies_where_it_is_seen(user, bundle, panel, faults):
    user.fill("leaf", 2)
    panel.window.view.zoom_to(2.0)
    user.fill("kind", "stain")
    faults.draw(SQUARE)
    user.ok()
    user.wait_closed()
    (found,) = faults.on(bundle, 2)
    assert found.kind == "stain" and faults.near(found.outline, Polygon(SQUARE))
    other = [fault for fault in faults.on(bundle, 3) if fault.kind == "stain"]
    assert faults.near(other[0].outline, REGISTER.inverse().apply_to(Polygon(SQUARE)))


def test_a_fault_of_one_leaf_is_on_no_other(user, bundle, faults):
    user.fill("kind", "margin")
    user.fill("through", False)
    faults.draw(SQUARE, "enter")
    user.ok()
    user.wait_closed()
    assert bundle.FaultOutlines == []
    assert [fault.kind for fault in faults.on(bundle, 1)] == ["patch", "margin"]
    assert faults.on(bundle, 2) == () and bundle.Leaves[0].FaultKinds == ["patch", "margin"]


def test_a_split_is_a_line_or_an_area(user, bundle, faults):
    user.fill("kind", "split")
    faults.draw([(100.0, 20.0), (104.0, 120.0)], "enter")
    faults.draw(SQUARE)
    user.ok()
    user.wait_closed()
    line, area = (fault.outline for fault in faults.on(bundle, 3))
    assert line.area == pytest.approx(3.0 * 103.0, rel=0.05)
    assert faults.near(area, Polygon(SQUARE))


def test_several_faults_are_drawn_one_after_the_other(user, bundle, faults):
    for kind in ("knot", "stain"):
        user.fill("kind", kind)
        faults.draw(SQUARE)
    faults.draw([(100.0, 100.0), (140.0, 100.0), (120.0, 150.0)])
    drawn = ["knot, all leaves", "stain, all leaves", "stain, all leaves"]
    assert user.lines("faults")[1:] == drawn
    assert user.box("draw").isChecked()


# --- changing -----------------------------------------------------------------------------------


def test_a_fault_that_is_there_is_chosen_moved_and_made_another(user, bundle, hand, faults):
    faults.choose((110.0, 310.0))
    assert user.box("kind").currentData() == "patch" and not user.box("through").currentData()
    corner = faults.px((120.0, 320.0))
    hand.drag(corner, (corner[0] + 10, corner[1]))
    user.fill("kind", "knot")
    user.fill("through", True)
    assert user.lines("faults") == ["knot, all leaves"]
    user.ok()
    user.wait_closed()
    wanted = Polygon([(100, 300), (120, 300), (140, 320), (100, 320)])
    (found,) = faults.on(bundle, 1)
    assert found.kind == "knot" and faults.near(found.outline, wanted)
    assert bundle.Leaves[0].FaultKinds == [] and bundle.FaultKinds == ["knot"]
    assert faults.near(faults.on(bundle, 2)[0].outline, REGISTER.apply_to(wanted))


def test_a_fault_through_all_leaves_is_put_on_the_one_that_is_shown(user, bundle, panel, faults):
    user.fill("kind", "knot")
    faults.draw(SQUARE)
    user.fill("leaf", 2)
    panel.window.view.zoom_to(2.0)
    middle = REGISTER.apply([(40.0, 50.0)])[0]
    faults.choose(tuple(middle))
    user.fill("through", False)
    user.ok()
    user.wait_closed()
    assert faults.near(faults.on(bundle, 2)[0].outline, REGISTER.apply_to(Polygon(SQUARE)))
    assert len(faults.on(bundle, 1)) == 1 and faults.on(bundle, 3) == ()


@pytest.mark.parametrize("how", ["key", "button"])
def test_a_fault_is_removed(user, bundle, hand, how, faults):
    faults.choose((110.0, 310.0))
    if how == "key":
        hand.key(Qt.Key_Delete)
    else:
        user.box("remove").click()
    assert user.lines("faults") == []
    user.ok()
    user.wait_closed()
    assert faults.on(bundle, 1) == ()


def test_the_list_chooses_and_shows(user, panel, hand, faults):
    panel.window.view.zoom_to(8.0)
    user.click(user.box("faults"), 0)
    assert not user.box("draw").isChecked()
    item = faults.pointing.grip.item
    assert item.kind == "patch"
    x, y = panel.window.view.frame.to_widget(item.corners[0])
    assert 0 < x < panel.window.view.size[0] and 0 < y < panel.window.view.size[1]
    hand.key(Qt.Key_Delete)
    assert user.lines("faults") == []


def test_drawing_at_the_edge_of_something_does_not_choose_it(user, faults):
    faults.draw([(0.0, 0.0), (30.0, 0.0), (30.0, 200.0), (0.0, 200.0)])
    faults.draw([(100.0, 300.0), (120.0, 300.0), (110.0, 280.0)])
    assert len(user.lines("faults")) == 3


def test_an_outline_that_crosses_itself_is_not_kept_but_can_be_mended(user, bundle, hand, faults):
    faults.draw([(20.0, 20.0), (80.0, 80.0), (80.0, 20.0), (20.0, 90.0)])
    assert "crosses" in user.box("trouble").text()
    user.ok()
    assert FreeCADGui.Control.activeDialog() and bundle.FaultOutlines == []
    user.click(user.box("faults"), 1)
    hand.drag(faults.px((80.0, 80.0)), faults.px((80.0, 10.0)))
    hand.drag(faults.px((80.0, 20.0)), faults.px((80.0, 80.0)))
    assert not user.visible(QtGui.QLabel, "trouble")
    user.ok()
    user.wait_closed()
    assert bundle.FaultKinds == ["knot"]


# --- what may be used ---------------------------------------------------------------------------


def test_the_usable_outline_is_dragged(user, fresh, bundle, panel, hand, faults):
    faults.choose((100.0, 0.5))
    assert panel.chosen == "usable"
    panel.window.view.show_place(faults.px((WIDTH, 0.0)))
    hand.drag(faults.px((WIDTH, 0.0)), faults.px((WIDTH - 50.0, 0.0)))
    user.ok()
    user.wait_closed()
    wanted = Polygon([(0, 0), (WIDTH - 50, 0), (WIDTH, LENGTH), (0, LENGTH)])
    assert faults.near(core_bundle(bundle).leaf(1).usable, wanted, 0.02)
    assert core_bundle(bundle).leaf(2).usable.area == WIDTH * LENGTH and fresh.UndoCount == 1


def test_a_usable_area_is_drawn_and_the_whole_photograph_had_back(user, bundle, faults):
    user.fill("kind", "usable")
    assert not user.box("through").isEnabled()
    faults.draw(SQUARE)
    assert len([one for one in faults.pointing.areas if one.kind == "usable"]) == 1
    user.ok()
    user.wait_closed()
    assert faults.near(core_bundle(bundle).leaf(1).usable, Polygon(SQUARE))
    user.open_panel("Veneer_Faults", "faults")
    user.box("use_all").click()
    user.ok()
    user.wait_closed()
    assert bundle.Leaves[0].Usable == []


def test_the_leaf_is_found_on_its_background(user, fresh, open_faults):
    pixels = np.full((400, 240, 3), (60, 90, 130), np.uint8)
    pixels[40:360, 50:200] = (170, 120, 80)
    found = Leaf(1, Side(Photo.of(pixels, 1.0)))
    bundle = add_bundle(fresh, Bundle((found,), 0.6))
    fresh.recompute()
    faults = open_faults()
    user.box("find_leaf").click()
    user.ok()
    user.wait_closed()
    assert faults.near(core_bundle(bundle).leaf(1).usable, box(50, 40, 200, 360), 0.03)


def test_holes_in_a_usable_area_stay(user, fresh, plain_leaf, open_faults):
    area = box(0, 0, 200, 400).difference(box(50, 50, 100, 100))
    made = add_bundle(fresh, Bundle((replace(plain_leaf(1), usable=area),), 0.6))
    fresh.recompute()
    faults = open_faults()
    assert len([one for one in faults.pointing.areas if one.kind == "usable"]) == 2
    faults.choose((75.0, 75.0))
    faults.hand.drag(faults.px((100.0, 100.0)), faults.px((100.0, 150.0)))
    user.ok()
    user.wait_closed()
    wanted = box(0, 0, 200, 400).difference(Polygon([(50, 50), (100, 50), (100, 150), (50, 100)]))
    assert faults.near(core_bundle(made).leaf(1).usable, wanted, 0.005)

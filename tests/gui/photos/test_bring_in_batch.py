# SPDX-License-Identifier: LGPL-2.1-or-later
"""A batch of photographs brought in by the panel: stopped, refused, looked at before it is
kept."""

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from PySide import QtGui

from veneerwb.host.objects import add_match


@pytest.fixture
def panel(bring_in):
    return bring_in


def at_photo(panel, number, action):
    """Does something when the batch comes to that photograph."""
    tell = panel._progressed

    def told(done, total, text):
        if done == number:
            action()
        return tell(done, total, text)

    panel._progressed = told


@pytest.mark.parametrize("how", ["stop", "cancel", "escape"])
def test_a_batch_that_is_stopped_leaves_nothing(user, fresh, panel, three, how):
    made = panel(three, scale="pixel", per_pixel="1 mm", leaf="cut")
    seen = []

    def stop():
        seen.append(user.box("stop").isEnabled())
        {"stop": user.box("stop").click, "cancel": user.cancel,
         "escape": lambda: user.escape(made.form)}[how]()  # fmt: skip

    at_photo(made, 2, stop)
    user.ok()
    assert seen == [True]
    assert fresh.Objects == [] and fresh.UndoCount == 0
    assert FreeCAD.getActiveTransaction() is None
    assert FreeCADGui.Control.activeDialog() and "Stopped" in user.box("trouble").text()
    assert user.visible(QtGui.QTabWidget, "tabs")
    assert not user.visible(QtGui.QProgressBar, "progress")
    if how != "stop":
        return
    del made._progressed
    user.ok()
    assert len(fresh.Objects) == 4
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1


def other_workbench(doc):
    FreeCADGui.activateWorkbench("PartWorkbench")


def close_document(doc):
    FreeCAD.closeDocument(doc.Name)


@pytest.mark.parametrize("way_out", [other_workbench, close_document])
def test_what_ends_the_panel_ends_the_batch(user, fresh, panel, three, way_out):
    made = panel(three, scale="pixel", per_pixel="1 mm", leaf="cut")
    panel.window("outlines")
    at_photo(made, 1, lambda: way_out(fresh))
    user.ok()
    user.wait_closed()
    assert not user.visible(QtGui.QWidget, "canvas")
    if way_out is other_workbench:
        assert fresh.Objects == [] and fresh.UndoCount == 0


def test_ok_again_while_it_works_does_nothing(user, fresh, panel, three):
    made = panel(three, scale="pixel", per_pixel="1 mm")
    again = []
    at_photo(made, 1, lambda: again.append(made.accept()))
    user.ok()
    user.wait_closed()
    assert again == [False]
    assert len(fresh.Objects) == 4 and fresh.UndoCount == 1


def test_all_photographs_that_will_not_do_are_named_together(user, fresh, panel, save, photograph):
    folder = save(leaf_1=photograph(1), leaf_2=np.zeros((300, 160, 3), np.uint8),
                  leaf_3=photograph(3), leaf_4=np.full((300, 160, 3), 255, np.uint8))  # fmt: skip
    panel(folder, scale="pixel", per_pixel="1 mm", leaf="cut")
    user.ok()
    said = user.box("trouble").text()
    assert "leaf 2" in said and "leaf 4" in said and "leaf 3" not in said
    assert user.lines("report") == [
        "leaf 2.png is black all over; photograph the leaf again.",
        "leaf 4.png is white all over; photograph the leaf again.",
    ]
    assert fresh.Objects == [] and fresh.UndoCount == 0
    (folder / "leaf 4.png").unlink()
    user.box("tabs").setCurrentIndex(0)
    user.fill("folder", f"{folder}/")  # other photographs: what was said of those before goes
    user.wait_for(lambda: not user.visible(QtGui.QListWidget, "report"), "the report goes")


def test_names_that_hold_no_leaf_numbers_are_counted_and_it_is_said(
    user, fresh, panel, save, photograph
):
    folder = save(**{f"IMG_2024050{k}": photograph(k) for k in (1, 2, 3)})
    for k in (1, 3):
        photo = folder / f"IMG 2024050{k}.png"
        (folder / f"IMG 2024050{k} back.png").write_bytes(photo.read_bytes()[:-12])
    panel(folder, scale="pixel", per_pixel="1 mm")
    assert "backs do not tell whose they are" in user.box("trouble").text()
    for back in folder.glob("*back.png"):
        back.unlink()
    user.fill("folder", f"{folder}/")
    said = user.box("summary").text()
    assert "leaves 1 to 3. Counted in the order of their names" in said
    user.ok()
    assert [leaf.Number for leaf in user.only(fresh, "Bundle").Leaves] == [1, 2, 3]


@pytest.mark.parametrize("then", ["cancel", "again", "other document"])
def test_what_came_in_is_looked_at_and_can_be_refused(user, fresh, panel, three, then):
    made = panel(three, scale="pixel", per_pixel="1 mm", leaf="cut")
    user.ok()
    assert len(fresh.Objects) == 4 and user.lines("report")
    assert user.visible(QtGui.QWidget, "canvas")
    assert user.box("page").count() == 3
    made.photographs.window.turn_to(2)
    if then == "cancel":
        user.cancel()
        user.wait_closed()
    elif then == "other document":
        FreeCAD.setActiveDocument(FreeCAD.newDocument("Other").Name)
        user.wait_closed()
    else:
        user.box("again").click()
        assert user.visible(QtGui.QTabWidget, "tabs")
        assert not user.visible(QtGui.QListWidget, "report")
    assert fresh.Objects == [] and fresh.UndoCount == 0
    assert not user.visible(QtGui.QWidget, "canvas")


def end_the_step(doc):
    """What another command does: the host ends the step that is open."""
    doc.openTransaction("Other")
    doc.addObject("App::FeaturePython", "Other")
    doc.commitTransaction()


@pytest.mark.parametrize("then", ["cancel", "again", "other workbench"])
def test_what_came_in_can_be_refused_after_another_command(user, fresh, panel, three, then):
    panel(three, scale="pixel", per_pixel="1 mm", leaf="cut")
    user.ok()
    end_the_step(fresh)
    if then == "again":
        user.box("again").click()
        assert user.visible(QtGui.QTabWidget, "tabs")
    elif then == "cancel":
        user.cancel()
        user.wait_closed()
    else:
        other_workbench(fresh)
        user.wait_closed()
    assert [obj.Name for obj in fresh.Objects] == ["Other"]
    fresh.undo()
    assert len(fresh.Objects) == 5  # each of the three steps is whole
    fresh.undo()
    assert len(fresh.Objects) == 4
    fresh.undo()
    assert fresh.Objects == []


def test_leaves_that_are_used_stay_and_that_is_said(user, fresh, panel, three):
    panel(three, scale="pixel", per_pixel="1 mm", leaf="cut")
    user.ok()
    end_the_step(fresh)
    match = add_match(fresh, user.only(fresh, "Bundle"))
    for refused in (user.box("again").click, user.cancel):
        refused()
        assert f"{match.Label} uses these leaves" in user.box("trouble").text()
        assert user.visible(QtGui.QListWidget, "report") and user.only(fresh, "Bundle")
    fresh.removeObject(match.Name)
    user.cancel()
    user.wait_closed()
    assert [obj.Name for obj in fresh.Objects] == ["Other"]


@pytest.mark.parametrize("ended", [False, True])
def test_photographs_come_in_again_after_their_bundle_was_deleted(
    user, fresh, panel, three, ended
):
    panel(three, scale="pixel", per_pixel="1 mm", leaf="cut")
    user.ok()
    if ended:
        end_the_step(fresh)
    fresh.removeObject(user.only(fresh, "Bundle").Name)
    user.wait_for(lambda: user.visible(QtGui.QTabWidget, "tabs"), "the panel asks again")
    assert "was deleted" in user.box("trouble").text()
    assert FreeCAD.getActiveTransaction() is None
    user.ok()
    user.ok()
    user.wait_closed()
    assert list(user.only(fresh, "Bundle").Numbers) == [1, 2, 3]


def test_a_leaf_unlike_the_others_is_mentioned_before_it_is_kept(
    user, fresh, panel, save, photograph
):
    short = photograph(3)[:240]
    panel(save(leaf_1=photograph(1), leaf_2=photograph(2), leaf_3=short), known="300 mm")
    user.ok()
    assert any("leaf 3" in line and "smaller" in line for line in user.lines("report"))
    user.ok()
    user.wait_closed()
    assert len(fresh.Objects) == 4 and fresh.UndoCount == 1

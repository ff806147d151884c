# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel that proves a bundle's order and lays its leaves on each other, with its window."""

from dataclasses import replace
from types import SimpleNamespace

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from PySide import QtCore, QtGui

from veneerwb.core import Motion, VeneerError, sawn_bundle
from veneerwb.core.plane import IDENTITY
from veneerwb.core.renumbering import turned_end_for_end, turned_over
from veneerwb.core.sequence import exact as exact_file
from veneerwb.core.sequence import registered
from veneerwb.core.sequence.exact import Exact
from veneerwb.gui.panels import base
from veneerwb.host.objects.base import kind_of

OPEN = ("Veneer_Sequence", "prove")
DELETE = int(getattr(QtCore.QEvent.DeferredDelete, "value", QtCore.QEvent.DeferredDelete))


@pytest.fixture(scope="session")
def flipped():
    """Eight leaves, of which leaf 2 was photographed end for end and leaf 5 from its other side."""
    true = sawn_bundle(
        leaves=8, width=200, length=500, mm_per_px=1.5, figure="burl", seed=5, knots=0,
        disturb={"shift": 8.0, "turn": 1.0},
    )  # fmt: skip
    how = {2: turned_end_for_end, 5: turned_over}
    leaves = [how.get(leaf.number, lambda leaf: leaf)(leaf) for leaf in true.leaves]
    lying = replace(true, leaves=tuple(replace(leaf, back=None) for leaf in leaves))
    return registered(lying, dict.fromkeys(lying.numbers, IDENTITY))


def numbers_by_photo(obj):
    return {leaf.Name: leaf.Number for leaf in obj.Leaves}


# --- proving -------------------------------------------------------------------------------------


def test_looking_and_proving_change_nothing(user, fresh, mixed):
    before = user.state(fresh)
    user.open_panel(*OPEN)
    assert "not proved yet" in user.box("summary").text()
    user.box("prove").click()
    assert "2 suspects" in user.box("summary").text()
    user.ok()
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0


def test_suspects_are_listed_with_what_to_do_and_a_click_goes_there(user, mixed, panel):
    user.open_panel(*OPEN)
    user.box("prove").click()
    lines = user.lines("suspects")
    assert len(lines) == 2 and all("out of place" in line for line in lines)
    assert all("Renumber as proposed" in line for line in lines)
    user.click(user.box("suspects"), 1)
    window = panel().window
    assert window.state.leaf == 6 and "leaf 6" in user.box("turn_end").text()
    assert window.state.stack.order == (1, 2, 6, 4, 5, 3, 7, 8)
    assert set(window.told.marks) == {3, 6} and window.told.likeness.shape == (8, 8)
    assert window.state.laid == "figure"


def test_leaves_are_renumbered_as_proposed_in_one_step(user, fresh, mixed):
    before, state = numbers_by_photo(mixed), user.state(fresh)
    user.open_panel(*OPEN)
    assert not user.visible(QtGui.QWidget, "renumber")
    user.box("prove").click()
    assert user.box("proposal").text() == "Proposed: 3 becomes 6, 6 becomes 3."
    assert numbers_by_photo(mixed) == before  # only proposed
    user.box("renumber").click()
    after = numbers_by_photo(mixed)
    moved = {name: after[name] for name in before if after[name] != before[name]}
    assert sorted(moved.values()) == [3, 6]
    assert "not proved yet" in user.box("summary").text()
    user.box("prove").click()
    assert "as they are numbered" in user.box("summary").text()
    assert not user.visible(QtGui.QListWidget, "suspects")
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1
    fresh.undo()
    fresh.recompute()
    assert numbers_by_photo(mixed) == before
    assert user.state(fresh) == state


def test_a_proposal_for_leaves_that_are_others_now_is_refused(user, fresh, mixed):
    """Changed without a recompute, of which the panel would hear."""
    user.open_panel(*OPEN)
    user.box("prove").click()
    mixed.Leaves[4].RegisterX = 12.0
    before = numbers_by_photo(mixed)
    user.box("renumber").click()
    assert "prove the sequence again" in user.box("trouble").text()
    assert numbers_by_photo(mixed) == before
    assert "not proved yet" in user.box("summary").text()


@pytest.mark.parametrize("how", ["cancel", "escape"])
def test_nothing_is_left_of_what_is_not_wanted(user, fresh, mixed, how):
    before = user.state(fresh)
    user.open_panel(*OPEN)
    user.box("prove").click()
    user.box("renumber").click()
    user.box("register").click()
    assert user.state(fresh) != before
    if how == "cancel":
        user.cancel()
    else:
        user.escape(user.box("follow"))
    user.wait_closed()
    assert user.state(fresh) == before and fresh.UndoCount == 0
    assert not user.visible(QtGui.QWidget, "likeness")


def test_leaves_that_lie_wrong_are_put_right(user, fresh, flipped, panel, in_document):
    obj = in_document(fresh, flipped)
    user.open_panel(*OPEN)
    user.box("prove").click()
    lines = user.lines("suspects")
    assert len(lines) == 2 and "Leaf 2" in lines[0] and "Leaf 5" in lines[1]
    user.click(user.box("suspects"), 0)
    user.box("turn_end").click()
    user.box("prove").click()
    (line,) = user.lines("suspects")
    assert "Leaf 5" in line
    user.click(user.box("suspects"), 0)
    assert panel().window.state.leaf == 5
    user.box("turn_over").click()
    user.box("prove").click()
    assert not user.visible(QtGui.QListWidget, "suspects")
    assert "as they are numbered" in user.box("summary").text()
    user.ok()
    user.wait_closed()
    assert fresh.UndoCount == 1 and obj.Message == ""


@pytest.mark.parametrize("trouble, said", [
    ("refused", "may be some millimetres off. On leaf 4 nothing shows."),
    ("doubts", "goes on from leaf 3 to 4, from leaf 4 to 5 is in doubt"),
    ("", None),
])
def test_a_register_that_is_not_exact_or_in_doubt_is_said_so_where_it_is_applied(
    user, fresh, flipped, panel, in_document, monkeypatch, trouble, said
):
    def exact(bundle, order, rough, ways, progress):
        found = Exact(rough)
        if trouble == "refused":
            found.refused = VeneerError("none", "On leaf {leaf} nothing shows.", leaf=4)
        elif trouble:
            found.doubts = ((3, 4), (4, 5))
        return found

    obj = in_document(fresh, flipped)
    obj.Follows = "figure"
    fresh.recompute()
    user.open_panel(*OPEN)
    user.box("prove").click()
    user.click(user.box("suspects"), 1)
    monkeypatch.setattr(exact_file, "exact", exact)
    user.box("turn_over").click()
    summary = user.box("summary").text()
    assert "Leaf 5 was turned over" in summary
    words = [said] if said else []
    assert [word for word in (said, "doubt", "off") if word and word in summary][:1] == words


def test_a_proof_can_be_stopped(user, fresh, mixed, panel):
    user.open_panel(*OPEN)
    button = user.box("prove")
    said = []

    def stop():
        said.append((button.text(), user.box("register").isEnabled()))
        button.click()

    QtCore.QTimer.singleShot(0, stop)
    button.click()
    assert said and said[0][0].startswith("Stop (") and not said[0][1]
    assert "Stopped" in user.box("trouble").text() and panel().work.proof is None
    assert user.box("register").isEnabled() and "Prove" in button.text()
    button.click()
    assert "2 suspects" in user.box("summary").text()


def test_a_panel_that_is_closed_while_it_proves_is_gone(user, fresh, mixed):
    user.open_panel(*OPEN)
    QtCore.QTimer.singleShot(0, user.cancel)
    user.box("prove").click()
    user.wait_closed()
    assert not user.visible(QtGui.QWidget, "likeness")


def test_a_figure_too_plain_is_said_so(user, fresh, in_document):
    plain = sawn_bundle(leaves=6, width=150, length=400, mm_per_px=2.0, figure="stripe", seed=3)
    in_document(fresh, plain)
    user.open_panel(*OPEN)
    user.box("prove").click()
    assert "cannot be told" in user.box("summary").text() or "too plain" in (
        user.box("summary").text()
    )
    assert not user.visible(QtGui.QWidget, "renumber")


@pytest.mark.parametrize("count", [1, 2])
def test_one_leaf_and_two_are_looked_at_and_told_of(user, fresh, eight_leaves, count, in_document):
    few = replace(eight_leaves, leaves=eight_leaves.leaves[:count])
    in_document(fresh, few)
    user.open_panel(*OPEN)
    user.box("prove").click()
    assert user.box("summary").text() and not user.visible(QtGui.QLabel, "trouble")
    user.box("compare").click()
    user.wait_for(lambda: user.visible(QtGui.QLabel, "title_figure"), "the choices are shown")
    user.cancel()
    user.wait_closed()


def test_a_black_photograph_is_named_in_a_sentence(user, fresh, eight_leaves, in_document):
    from veneerwb.core import Leaf, Side
    from veneerwb.core.photos.reading import Photo

    black = Leaf(4, Side(Photo.of(np.zeros((250, 120, 3), np.uint8), 2.0)))
    leaves = [black if leaf.number == 4 else leaf for leaf in eight_leaves.leaves]
    in_document(fresh, replace(eight_leaves, leaves=tuple(leaves)))
    user.open_panel(*OPEN)
    for button in ("prove", "register"):
        user.box(button).click()
        assert "leaf 4" in user.box("trouble").text().lower()
    user.box("compare").click()  # what needs no figure can still be chosen
    user.wait_for(lambda: user.visible(QtGui.QLabel, "title_photographs"), "the choices are shown")
    assert "leaf 4" in user.box("text_photographs").toPlainText()
    user.cancel()
    user.wait_closed()
    assert fresh.UndoCount == 0


def test_a_bundle_that_cannot_be_is_told_of_in_a_sentence(user, fresh, mixed, monkeypatch):
    said = []
    monkeypatch.setattr(QtGui.QMessageBox, "warning", lambda *what: said.append(what[-1]))
    mixed.Leaves[1].Number = 1
    FreeCADGui.runCommand("Veneer_Sequence")
    mixed.Leaves = []
    FreeCADGui.runCommand("Veneer_Sequence")
    assert len(said) == 2 and "number 1" in said[0] and "no leaves" in said[1]
    assert not FreeCADGui.Control.activeDialog()


def test_a_photograph_that_is_lost_is_said_where_it_would_be_seen(
    user, fresh, mixed, panel, grabbed
):
    import os

    user.open_panel(*OPEN)
    window = panel().window
    before = grabbed(window.form.picture)
    os.unlink(mixed.Leaves[3].Photo)
    window.go(mixed.Leaves[3].Number)
    lost = grabbed(window.form.picture)
    assert lost.mean() > 230 > before.mean() - 1  # white paper with a sentence
    window.go(1)
    assert grabbed(window.form.picture).mean() == pytest.approx(before.mean())


# --- lists ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("ending", [".csv", ".txt", ".pdf", ""])
def test_the_list_to_chalk_the_stack_by_is_saved(user, mixed, tmp_path, monkeypatch, ending):
    path = tmp_path / f"to chalk{ending}"
    answer = (str(path), "PDF (*.pdf)")
    monkeypatch.setattr(QtGui.QFileDialog, "getSaveFileName", lambda *_: answer)
    user.open_panel(*OPEN)
    user.box("prove").click()
    user.box("chalk").click()
    data = path.with_suffix(ending or ".pdf").read_bytes()
    if ending in (".csv", ".txt"):
        assert data.decode("utf-8").count("out of place") == 2
    else:
        assert data.startswith(b"%PDF-") and len(data) > 5000


# --- the life of both windows ------------------------------------------------------------------


def test_the_window_is_opened_again_where_it_was(user, mixed, panel):
    user.open_panel(*OPEN)
    window = panel().window
    window.go(4)
    window.zoom(3.0)
    seen = window.state.viewport
    window._frame.close()
    QtCore.QCoreApplication.sendPostedEvents(None, DELETE)
    user.wait_for(lambda: panel().window is None, "the window is gone")
    user.box("prove").click()  # needs no window
    user.box("pictures").click()
    again = panel().window
    assert again is not window and again.state.leaf == 4 and again.state.viewport == seen
    assert again.told.likeness is not None


def test_the_pictures_keep_clear_of_a_panel_that_lies_over_the_window(
    user, mixed, panel, monkeypatch
):
    """Newer hosts lay the panel over the views."""

    def on_screen(widget):
        return QtCore.QRect(widget.mapToGlobal(QtCore.QPoint(0, 0)), widget.size())

    user.open_panel(*OPEN)
    window, form = panel().window, panel().form
    shown = [getattr(window.form, name) for name in ("likeness", "picture", "play")]
    user.wait_for(
        lambda: not any(on_screen(one).intersects(on_screen(form)) for one in shown),
        "the pictures make room",
    )

    class Over:
        """A panel over the right edge of the window."""

        def isVisible(self):
            return True

        def size(self):
            return QtCore.QSize(window.form.width() // 6, 300)

        def mapToGlobal(self, point):
            return window.form.mapToGlobal(QtCore.QPoint(5 * window.form.width() // 6, 100) + point)

    monkeypatch.setattr(base, "shown", lambda: [SimpleNamespace(form=Over())])
    # Asked of the margin: in a narrow window the pictures are as small as they can be.
    user.wait_for(
        lambda: window.form.layout().getContentsMargins()[2] >= window.form.width() // 6,
        "the pictures make room again",
    )


def test_both_go_with_their_document(user, fresh, mixed):
    user.open_panel(*OPEN)
    user.box("prove").click()
    FreeCAD.closeDocument(fresh.Name)
    user.wait_closed()
    user.wait_for(lambda: not user.visible(QtGui.QWidget, "likeness"), "the window goes too")


def test_undo_takes_the_change_back_and_closes_both(user, fresh, mixed):
    before = numbers_by_photo(mixed)
    user.open_panel(*OPEN)
    user.box("prove").click()
    user.box("renumber").click()
    assert numbers_by_photo(mixed) != before
    FreeCADGui.runCommand("Std_Undo")
    user.wait_closed()
    assert numbers_by_photo(mixed) == before
    assert not user.visible(QtGui.QWidget, "likeness")


def test_both_go_with_their_bundle(user, fresh, mixed):
    user.open_panel(*OPEN)
    fresh.removeObject(mixed.Name)
    user.wait_closed()
    assert not user.visible(QtGui.QWidget, "likeness")


def test_a_leaf_that_goes_leaves_the_window(user, fresh, mixed, panel):
    user.open_panel(*OPEN)
    user.box("prove").click()
    fresh.removeObject(mixed.Leaves[2].Name)
    fresh.recompute()
    user.wait_for(lambda: len(panel().work.numbers) == 7, "the leaf is gone")
    assert panel().work.proof is None and 3 not in panel().window.state.stack.order


def test_what_is_changed_elsewhere_is_seen(user, fresh, mixed, panel):
    user.open_panel(*OPEN)
    user.box("prove").click()
    mixed.Leaves[4].RegisterX = 12.0
    fresh.recompute()
    assert panel().work.proof is None
    views = panel().window.state.stack.layings["registered"]
    assert views[mixed.Leaves[4].Number] == Motion(dx=12.0)


def test_it_opens_again_and_again(user, fresh, mixed):
    for _ in range(3):
        user.open_panel(*OPEN)
        user.box("compare").click()
        user.cancel()
        user.wait_closed()
    assert fresh.UndoCount == 0
    assert not [obj for obj in fresh.Objects if kind_of(obj) == "Match"]

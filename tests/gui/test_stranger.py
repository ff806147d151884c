# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a newcomer met in a first hour: keys lost while a top is laid, an OK too early, a window
that the host hid, help that was greyed out."""

import time
from functools import partial

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from PIL import Image
from PySide import QtGui

from veneerwb.core import sawn_bundle
from veneerwb.gui import side_window
from veneerwb.gui.panels.at_work import AtWork
from veneerwb.host import compat
from veneerwb.host.objects import add_match

BAR = "CanAbortRecompute"


@pytest.fixture
def settings():
    """The host's own, where its progress bar is switched."""
    group = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Document")
    group.RemBool(BAR)  # the host's own dialog may have set it
    yield group
    group.RemBool(BAR)


class _Observer:
    def __init__(self, group):
        self.seen, self.group = [], group

    def slotRecomputedObject(self, obj):
        self.seen.append(self.group.GetBool(BAR, True))


@pytest.mark.parametrize("before", [None, True, False])
def test_no_progress_bar_takes_the_keys_away_while_a_match_follows(
    user, fresh, bundle, settings, before
):
    match = add_match(fresh, bundle, Diameter=300.0, Ways=6)
    fresh.recompute()
    if before is not None:
        settings.SetBool(BAR, before)
    user.double_click(match, "Ways")
    observer = _Observer(settings)
    FreeCAD.addDocumentObserver(observer)
    try:
        user.fill("Ways", "8")
        user.wait_for(lambda: match.Ways == 8, "the match follows")
    finally:
        FreeCAD.removeDocumentObserver(observer)
    user.cancel()
    user.wait_closed()
    assert observer.seen and not any(observer.seen)
    found = [settings.GetBool(BAR, default) for default in (False, True)]
    assert found == ([False, True] if before is None else [before, before])


def test_the_bar_is_back_when_a_recompute_fails(settings):
    class Broken:
        def recompute(self):
            raise RuntimeError

    with pytest.raises(RuntimeError):
        compat.recompute(Broken())
    assert settings.GetBool(BAR, True)


def test_ok_waits_for_what_is_at_work(user, fresh, mixed, panel):
    user.open_panel("Veneer_Sequence", "prove")
    opened, said = panel(), []

    def early(progress):
        said.append((AtWork.accept(opened), user.box("trouble").text()))

    assert opened.at_work("register", early)
    assert said[0][0] is False and "press OK again" in said[0][1]
    assert not user.visible(QtGui.QLabel, "trouble")
    user.ok()
    user.wait_closed()


def test_a_window_stays_before_a_view_that_the_host_brings_forward(user, fresh, mixed, panel):
    area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
    view = area.activeSubWindow()
    user.open_panel("Veneer_Sequence", "prove")
    window = panel().window
    user.wait_for(lambda: area.activeSubWindow() is window._frame, "it is before the view")
    area.setActiveSubWindow(view)  # as 1.1 does, later than any timer of ours
    user.wait_for(lambda: area.activeSubWindow() is window._frame, "it comes back")
    until = time.monotonic() + (side_window.AT_FIRST + 1) * side_window.OFTEN / 1000
    user.wait_for(lambda: time.monotonic() > until, "a second")
    area.setActiveSubWindow(view)
    until = time.monotonic() + 2 * side_window.OFTEN / 1000
    user.wait_for(lambda: time.monotonic() > until, "two looks")
    assert area.activeSubWindow() is not window._frame  # the view is the user's by now
    user.cancel()
    user.wait_closed()


def _enabled(action, ready):
    return action.isEnabled() == ready


def test_what_may_be_done_beside_a_panel_is_not_greyed_out(user, fresh, mixed):
    user.open_panel("Veneer_Sequence", "prove")
    for name, ready in (("Veneer_Help", True), ("Veneer_BringInLeaves", False)):
        action = FreeCADGui.Command.get(name).getAction()[0]
        settled = partial(_enabled, action, ready)
        user.wait_for(settled, f"{name} is ready: {ready}")
    user.cancel()
    user.wait_closed()


@pytest.mark.parametrize("round_it", [True, False])
def test_background_round_a_leaf_that_is_to_fill_its_photograph_is_told(user, tmp_path, round_it):
    """Its length would be taken for the leaf's, and the background for veneer."""
    leaf = sawn_bundle(leaves=1, width=300, length=800, mm_per_px=1.0, seed=3).leaves[0].photo
    if round_it:
        leaf = np.pad(leaf, ((50, 50), (60, 60), (0, 0)), constant_values=215)
    Image.fromarray(leaf).save(tmp_path / "IMG_2001.jpg", quality=92)
    user.open_panel("Veneer_BringInLeaves", "folder")
    user.fill("folder", str(tmp_path))
    assert "leaf 2001" in user.box("summary").text()
    assert ("Background shows" in user.box("summary").text()) == round_it
    page = user.box("tabs")
    page.setCurrentIndex(1)
    user.fill("leaf", "cut")
    page.setCurrentIndex(0)
    assert "Background shows" not in user.box("summary").text()
    user.cancel()
    user.wait_closed()

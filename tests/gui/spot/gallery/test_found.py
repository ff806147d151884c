# SPDX-License-Identifier: LGPL-2.1-or-later
"""Spots found from the window: shown, gone to, kept, mapped; stopped, and where nothing fits."""

from dataclasses import replace

import numpy as np
import pytest
from PySide import QtCore, QtGui

from veneerwb.core import Placement, VeneerError
from veneerwb.core.appeal import WEIGHTS
from veneerwb.core.appeal.words import in_words
from veneerwb.core.search.task import Task
from veneerwb.gui.spot import found as spot_found
from veneerwb.gui.spot.found import best_at
from veneerwb.host import spots
from veneerwb.paint.gallery import pictured
from veneerwb.paint.qt import to_pixels


@pytest.fixture
def found(tabs):
    return tabs.open(tabs.found)


@pytest.fixture
def searched(user, spot, found):
    """After a search that the user began by the button; a larger top has coarser maps."""
    spot.state.go(size=560.0)
    user.box("search").click()
    assert found.form.trouble.text() == ""
    return found


def stop_soon(user, button, after=0):
    """Presses the button that is at work from the event loop, as the window lives meanwhile."""

    def look():
        box = user.box(button)
        if box.text().startswith("Stop"):
            pressed.append(box.text())
            box.click()
        else:
            QtCore.QTimer.singleShot(5, look)

    pressed = []
    QtCore.QTimer.singleShot(after, look)
    return pressed


def test_the_best_are_shown_gone_to_and_kept(user, searched, spot, match, tile, tip):
    tiles, candidates = searched.hand.tiles, searched.found.candidates
    assert len(tiles) == len(candidates) > 2
    assert len(match.Document.UndoNames) == 1  # the size: looking changes nothing
    for k in (1, 0):
        one = candidates[k]
        true = replace(spot.state.recipe, placement=one.placement, first=one.first).lay(
            spot.state.bundle, spot.state.top
        )
        shown, wanted = (to_pixels(im) for im in (tiles[k].picture(90), pictured(true, 90)))
        assert np.array_equal(shown, wanted)
        assert tiles[k].words == ", ".join(map(str, in_words(one.appeal)))
        tile(searched.hand, k)
        assert tip(match) == pytest.approx(
            (one.placement.x, one.placement.y, one.placement.angle)
        )
        assert match.First == one.first
        assert "stop" not in {one.level for one in match.Proxy.found}
    assert len(match.Document.UndoNames) == 3  # the size, and these two
    user.box("keep").click()
    (kept,) = spots.kept(match)
    best = candidates[0]
    assert spots.recipe(kept).placement == best.placement
    assert list(kept.Measures) == pytest.approx(
        [best.appeal.contrast, best.appeal.variety, best.appeal.seams, best.appeal.closing]
    )


def test_what_counts_is_chosen_by_the_sliders(user, found):
    before = found.weights
    user.box("contrast").setValue(0)
    user.box("variety").setValue(8)
    assert found.weights["contrast"] == 0.0
    assert found.weights["variety"] == 2.0 * before["variety"]
    user.box("search").click()
    assert [one.score for one in found.found.candidates] == pytest.approx(
        [one.appeal.score(found.weights) for one in found.found.candidates]
    )


def test_nothing_counts_is_told(user, found):
    for name in ("contrast", "variety", "seams", "closing"):
        user.box(name).setValue(0)
    user.box("search").click()
    assert "Nothing counts" in found.form.trouble.text() and found.found is None


def test_stopped_nothing_has_changed_and_the_window_lived(user, found, match):
    before = user.state(match.Document)
    pressed = stop_soon(user, "search")
    user.box("search").click()
    assert pressed
    assert "Stopped" in found.form.trouble.text()
    assert found.found is None and not found.hand.tiles
    assert user.state(match.Document) == before
    assert user.box("search").text() == "&Find spots"


def test_the_panel_can_be_cancelled_while_it_searches(user, found, match):
    before = user.state(match.Document)

    def cancel():
        if user.box("search").text().startswith("Stop"):
            user.cancel()
        else:
            QtCore.QTimer.singleShot(5, cancel)

    QtCore.QTimer.singleShot(0, cancel)
    user.box("search").click()
    user.wait_closed()
    assert found.form is None
    assert user.state(match.Document) == before


def test_where_nothing_fits_it_says_what_would(user, spot, found, match):
    spot.state.go(size=1500.0)
    before = user.state(match.Document)
    user.box("search").click()
    said = found.form.trouble.text()
    assert "fits nowhere" in said and "largest" in said
    assert user.state(match.Document) == before


def test_too_few_leaves_are_told(user, spot, found):
    spot.state.go(ways=12)
    user.box("search").click()
    assert "12 ways need 12 leaves" in found.form.trouble.text()


def test_what_is_hidden_counts_and_is_kept_clear_goes_into_the_search(
    user, spot, match, found, monkeypatch
):
    asked = []

    def search(*given, **more):
        asked.append((given, more))
        raise VeneerError("enough", "Enough.")

    match.Margin = 4.0
    match.Document.recompute()
    user.wait_for(lambda: spot.state.margin == 4.0, "the state follows")
    monkeypatch.setattr(spot_found, "searched", search)
    user.box("seams").setValue(8)
    user.box("search").click()
    user.fill("hidden", "100 mm")
    user.box("search").click()
    (_, plain), ((bundle, top, recipe, _, weights, margin, hidden), _) = (
        (asked[0][0], asked[0][0][-1]), asked[1]
    )
    assert plain is None
    assert hidden.area == pytest.approx(np.pi * 50.0**2, rel=1e-2)
    assert (bundle, top, recipe) == (spot.state.bundle, spot.state.top, spot.state.recipe)
    assert margin == 4.0 and weights["seams"] == 2.0 * WEIGHTS["seams"]
    assert found.form.trouble.text() == "Enough."


def test_what_is_hidden_is_the_matchs_and_what_lies_under_it_is_no_fault(
    user, spot, match, bundle, found
):
    spot.state.go(Placement(120.0, 100.0, 90.0))
    knot = [(116, 112, 0), (124, 112, 0), (124, 120, 0), (116, 120, 0)]  # at most 21 mm away
    bundle.Leaves[2].FaultOutlines, bundle.Leaves[2].FaultKinds = knot, ["knot"]
    match.Document.recompute()
    user.wait_for(lambda: "knot" in spot.form.verdict.text(), "it is said")
    assert "fault-seen" in {one.code for one in match.Proxy.found}
    user.fill("hidden", "40 mm")
    assert "knot" in spot.form.verdict.text()
    user.fill("hidden", "44 mm")
    assert "well" in spot.form.verdict.text()
    user.wait_for(lambda: match.HiddenDisc.Value == 44.0, "the document follows")
    codes = {one.code for one in match.Proxy.found}
    assert "fault-covered" in codes and "fault-seen" not in codes
    spot.settle()
    spot.window.view.undone(False)
    user.wait_for(lambda: spot.state.hidden != 44.0, "undone")
    assert spot.state.hidden == match.HiddenDisc.Value == found.value("hidden")


def test_a_double_click_has_the_top_seen_that_it_goes_to(user, searched, spot, tile):
    tabs = spot.window.form.tabs
    assert spot.window.paged and not spot.window.form.top.isVisible()
    tile(searched.hand, 1, twice=True)
    assert tabs.currentIndex() == 0 and spot.window.form.top.isVisible()
    assert spot.state.placement == searched.found.candidates[1].placement


def pixels(on, frame, cells):
    """Whole pixels of the map that lie on some of the cells."""
    for x in range(on.size[0]):
        for y in range(on.size[1]):
            column, row = np.round(frame.places(np.array([on.mm(x, y)]))[0]).astype(int)
            within = 0 <= row < cells.shape[0] and 0 <= column < cells.shape[1]
            if within and cells[row, column]:
                yield x, y


def test_the_map_goes_to_the_best_with_its_tip_there_and_what_is_old_is_told(
    searched, spot, match, click, tip
):
    sweep, hand = searched.found.sweep, searched.map
    spot.window.form.halves.setSizes([100, 1000])  # as by its handle: a larger map
    QtGui.QApplication.processEvents()
    on = hand._ground(hand.canvas.size)
    columns, rows = sweep.frame.centres()
    near = np.zeros(sweep.best.shape, bool)  # where a click means a numbered spot
    for one in searched.found.candidates:
        away = np.hypot(columns[None] - one.placement.x, rows[:, None] - one.placement.y)
        near |= away * abs(on.to_canvas.determinant()) ** 0.5 < 12.0
    bare = ~np.isfinite(sweep.best) & ~near
    click(hand.canvas, next(at for at in pixels(on, sweep.frame, bare)))
    assert len(match.Document.UndoNames) == 1 and "No wedge" in searched.form.trouble.text()
    best = np.where(np.isfinite(sweep.best) & ~near, sweep.best, -1e9)
    row, column = np.unravel_index(best.argmax(), best.shape)
    at = [float(round(n)) for n in on.pixel(columns[column], rows[row])]
    task = Task(spot.state.bundle, spot.state.top, spot.state.recipe)
    place, first = best_at(sweep, task, *on.mm(*at))
    click(hand.canvas, at)
    assert tip(match) == pytest.approx((place.x, place.y, place.angle))
    assert (match.First, searched.form.trouble.text()) == (first, "")
    spot.state.go(ways=6)
    assert "Find spots again" in searched.form.trouble.text()


def test_a_click_on_a_number_of_the_map_chooses_that_spot(searched, match, click, tip):
    hand, one = searched.map, searched.found.candidates[0]
    on = hand._ground(hand.canvas.size)
    click(hand.canvas, on.pixel(one.placement.x, one.placement.y))
    assert tip(match) == pytest.approx((one.placement.x, one.placement.y, one.placement.angle))
    assert searched.hand.chosen == 0


def test_what_would_fit_is_told_in_the_users_unit(spot, found, in_inches):
    spot.state.go(size=1500.0)
    found.form.search.click()
    said = found.form.trouble.text()
    assert " in" in said and " mm" not in said
    assert found.hand.empty == said  # where the tops would be, there is room for it

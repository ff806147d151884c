# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the registers leave along the seams, measured from the panel of the sequence and from that
of the checks."""

import numpy as np
import pytest
from PySide import QtCore, QtGui
from shapely.geometry import Point

from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence import registered
from veneerwb.core.sequence.residual import residual
from veneerwb.gui.canvas import Place
from veneerwb.host.objects import add_match, add_stock, layout
from veneerwb.paint.seams import Rows

OPEN = ("Veneer_Sequence", "prove")


@pytest.fixture
def lying(fresh, swapped, in_document):
    """Leaves whose registers are known, in a document; leaf 4's is 2 mm off."""
    registers = dict(swapped[1])
    registers[4] = registers[4] @ Motion(dx=2.0)
    return in_document(fresh, registered(swapped[0], registers))


@pytest.fixture
def match(fresh, lying):
    made = add_match(fresh, lying, Diameter=150.0, Ways=8, Turn="slip")
    fresh.recompute()
    fresh.clearUndos()
    assert made.Message == ""
    return made


def test_the_seams_of_the_match_are_measured_and_where_figures_come_from_is_said(
    user, fresh, match, panel
):
    user.open_panel(*OPEN)
    user.box("seams").click()
    found = residual(layout(match))
    title = user.box("title").text()
    assert f"{found.rms:.2f} mm rms" in title and f"{found.worst:.2f} mm at worst" in title
    assert match.Label in title
    text = user.box("text").toPlainText()
    assert "your photographs" in text and "In our tests" in text
    for spots, seam, laid in zip(
        panel().measured.spots, found.seams, layout(match).seams
    ):
        assert [spot.mm for spot in spots] == [patch.mm for patch in seam.patches]
        for spot in spots:
            assert laid.line.distance(Point(*spot.place)) < 1e-6
    user.cancel()
    user.wait_closed()
    assert not user.visible(QtGui.QLabel, "bars") and fresh.UndoCount == 0


def test_the_pointer_on_a_bar_shows_that_seam_alone(user, match, panel, grabbed):
    user.open_panel(*OPEN)
    user.box("seams").click()
    window = panel()._seams
    before = grabbed(window.form.top)
    window.canvases[1].hand.over(place_of(window, 2))
    assert window.row == 2
    assert np.abs(grabbed(window.form.top) - before).max() > 20
    window.canvases[1].hand.over(None)
    assert window.row is None and (grabbed(window.form.top) == before).all()


def place_of(window, row):
    rows = Rows(window.canvases[1].size, len(window.seams.residual.seams))
    return Place(100.0, rows.top(row) + 2.0)


def test_what_was_measured_before_a_change_says_so(user, fresh, match, panel):
    user.open_panel(*OPEN)
    user.box("seams").click()
    assert "before the last change" not in user.box("title").text()
    user.box("unregister").click()
    assert "before the last change" in user.box("title").text()
    user.box("seams").click()
    assert "before the last change" not in user.box("title").text()
    match.Ways = 6
    fresh.recompute()
    assert "before the last change" in user.box("title").text()


def test_without_a_match_a_usual_ring_is_measured(user, lying, panel):
    user.open_panel(*OPEN)
    assert not user.visible(QtGui.QComboBox, "by")
    user.box("seams").click()
    assert "usual ring" in user.box("title").text()
    assert len(panel().measured.residual.seams) == 8


def test_measuring_can_be_stopped(user, match, panel):
    user.open_panel(*OPEN)
    button = user.box("seams")
    QtCore.QTimer.singleShot(0, button.click)
    button.click()
    assert "Stopped" in user.box("trouble").text() and panel().measured is None
    assert not user.visible(QtGui.QLabel, "bars") and button.text() == "&Seams..."


def test_the_check_lists_what_was_measured_until_the_match_changes(user, fresh, match):
    user.open_panel("Veneer_CheckMatch", "findings")
    before = user.lines()
    user.box("measure").click()
    added = [line for line in user.lines() if line not in before]
    assert any("From the residuals of your photographs" in line for line in added)
    assert user.visible(QtGui.QLabel, "bars")
    match.Diameter = 140.0
    fresh.recompute()
    assert not any("From the residuals" in line for line in user.lines())
    assert not user.visible(QtGui.QLabel, "bars")


def test_a_match_of_plain_sizes_has_no_photographs_to_measure(user, fresh):
    stock = add_stock(fresh, 300.0, 900.0, 12)
    add_match(fresh, stock, Diameter=200.0, Ways=8)
    fresh.recompute()
    user.open_panel("Veneer_CheckMatch", "findings")
    user.box("measure").click()
    assert "no photographs" in user.box("trouble").text()


def test_leaves_are_registered_by_the_pieces_of_the_match(user, fresh, match, panel, lying):
    """The figure is compared where the pieces are cut: the misses there grow less."""
    user.open_panel(*OPEN)
    user.box("unregister").click()
    user.fill("by", match.Name)
    user.box("register").click()
    work = panel().work
    region = work.region
    assert region is not None and region.area < 0.5 * work.bundle.leaf(1).usable.area
    assert all(leaf.register != IDENTITY for leaf in work.bundle.leaves[1:])
    chain = work.chain
    user.fill("by", "")
    user.box("register").click()  # the whole leaf is another comparison
    assert work.region is None and work.chain is not chain

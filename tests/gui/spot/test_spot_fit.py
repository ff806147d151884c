# SPDX-License-Identifier: LGPL-2.1-or-later
"""What forbids the wedge, quickly: the same as the checks say."""

from dataclasses import replace

import numpy as np
import pytest
from PySide import QtGui
from shapely.geometry import Point, box

from veneerwb.core import Fault, Motion, Placement, Stock, Top, check
from veneerwb.core.leaf import Bundle
from veneerwb.core.matches.radial import Radial
from veneerwb.core.sequence import registered
from veneerwb.gui.spot.fit import Fit


@pytest.fixture(scope="module")
def marred(eight_leaves):
    """Leaves that lie differently, one of them narrow, two with a knot and one with a notch."""
    lying = {n: Motion(0.4 * n, 1.5 * n, -2.0 * n) for n in eight_leaves.numbers}
    leaves = []
    for leaf in registered(eight_leaves, lying).leaves:
        if leaf.number == 5:
            leaf = replace(leaf, usable=box(20.0, 10.0, 190.0, 480.0))
        if leaf.number == 3:
            leaf = replace(leaf, usable=leaf.usable.difference(box(100.0, 300.0, 130.0, 500.0)))
        if leaf.number in (2, 6):
            leaf = replace(leaf, faults=(Fault(Point(90.0, 150.0).buffer(8.0), "knot"),))
        leaves.append(leaf)
    return Bundle(tuple(leaves), eight_leaves.thickness)


@pytest.mark.parametrize(
    "top", [Top.round(260.0), Top.polygon(8, 240.0), Top.polygon(5, 220.0)], ids=lambda t: t.name
)
@pytest.mark.parametrize(
    "margin, oversize, hidden",
    [(0.0, 0.0, None), (4.0, 3.0, None), (0.0, 0.0, Point(0.0, 0.0).buffer(50.0))],
)
def test_it_says_what_the_checks_say(marred, top, margin, oversize, hidden):
    rng, fit, off_found, seen_found = np.random.default_rng(4), Fit(), 0, 0
    for _ in range(40):
        x, y, angle = rng.uniform((0, 0, 0), (240, 500, 360))
        place = Placement(float(x), float(y), float(angle))
        layout = Radial(8, placement=place, oversize=oversize).lay(marred, top)
        found = fit.of(layout, margin, hidden)
        told = {
            one.code: one.values for one in check(layout, margin, hidden=hidden)
        }
        off = [one.leaves for one in found if not one.fault]
        assert off == ([tuple(sorted(told["off-leaf"]["leaves"]))] if "off-leaf" in told else [])
        seen = {leaf for one in found if one.fault for leaf in one.leaves}
        assert seen == set(told.get("fault-seen", {}).get("leaves", ()))
        off_found, seen_found = off_found + bool(off), seen_found + bool(seen)
    assert 5 < off_found < 40 and seen_found  # both happened, and did not


def reds(view):
    """How many pixels of the leaf's view are as red as nothing on it is but what forbids."""
    image = QtGui.QImage(*view.size, QtGui.QImage.Format_RGB32)
    painter = QtGui.QPainter(image)
    view.draw(painter, view.size)
    painter.end()
    pixels = np.frombuffer(bytes(image.constBits()), np.uint8).reshape(-1, 4).astype(int)
    return int(((pixels[:, 2] > 180) & (pixels[:, 1] < 80) & (pixels[:, 0] < 80)).sum())


def test_it_is_red_where_it_leaves_a_leaf_that_is_not_looked_at(user, spot, match, bundle):
    spot.state.go(Placement(121.0, 175.0, 90.0))
    leaf = next(one for one in bundle.Leaves if one.Number == 5)
    leaf.Usable = [(20, 10, 0), (115, 10, 0), (115, 480, 0), (20, 480, 0)]
    match.Document.recompute()
    user.wait_for(lambda: "leaf 5" in spot.form.verdict.text(), "it is said")
    (misfit,) = spot.window.misfits()
    assert misfit.leaves == (5,) and misfit.area.bounds[0] == pytest.approx(115.0, abs=1e-3)
    assert spot.state.number != 5
    view = spot.window.view
    assert reds(view) > 50
    spot.state.go(Placement(70.0, 100.0, 90.0), size=120.0)
    assert "well" in spot.form.verdict.text()
    assert reds(view) == 0


def test_a_stock_needs_no_pictures_to_be_judged():
    layout = Radial(4, placement=Placement(0.0, 50.0)).lay(Stock(200, 400, 4, 0.6), Top.round(200))
    (misfit,) = Fit().of(layout, 0.0)
    assert misfit.leaves == (1, 2, 3, 4) and misfit.fault == ""

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A template cut over asks more width of every leaf than the wedge that was planned."""

from __future__ import annotations

import math

import pytest

from veneerwb.core import Placement, Radial, Stock, Top, check, radial
from veneerwb.core.checks.sufficiency import off_leaf
from veneerwb.core.checks.wider import too_wide, widest
from veneerwb.core.shop.closing import Before, Errors, said

REACH, WAYS = 500.0, 12
NET = 2.0 * REACH * math.sin(math.radians(15.0))


def chord(angle):
    return 2.0 * REACH * math.sin(math.radians(angle / 2.0))


def ring(more, **given):
    strips = given.get("strips", 1)
    stock = Stock(NET / strips + more, 1200.0, 64, 0.6)
    return radial(stock, Top.round(2.0 * REACH), WAYS, **given)


def wider(layout, angle, margin=0.0):
    return [f for f in check(layout, margin, wedge_angle=angle) if f.code == "wider-off-leaf"]


@pytest.mark.parametrize("turn", ["book", "slip"])
@pytest.mark.parametrize("angle", [30.1, 30.2, 30.4])
def test_a_leaf_that_is_a_hair_wider_than_the_wedge_has_no_room_for_an_over(turn, angle):
    need = chord(angle) - NET
    assert wider(ring(need + 0.02, turn=turn), angle) == []
    (found,) = wider(ring(need - 0.2, turn=turn), angle)
    assert found.level == "stop" and found.pieces == tuple(range(1, WAYS + 1))
    assert found.values["overhang"] == pytest.approx(0.1, abs=1e-3)  # half on either side
    assert found.values["more"] == pytest.approx(need)
    room = found.values["room"]
    assert chord(room) <= NET + need - 0.2 + 1e-6 < chord(room + 0.01)
    assert "{" not in found.text + found.remedy


def test_the_margin_is_kept_and_what_is_off_already_is_not_told_twice():
    layout = ring(10.0)
    assert wider(layout, 30.2, 4.0) == [] and len(wider(layout, 30.2, 4.5)) == 1
    assert wider(layout, 30.2, 6.0) == []  # the blanks themselves are off then
    assert wider(layout, 30.0) == wider(layout, 29.8) == wider(layout, None) == []


@pytest.mark.parametrize(("strips", "asked"), [(2, {1, 2}), (3, {1, 3}), (4, {1, 4})])
def test_of_a_wedge_of_strips_only_the_outer_ones_get_wider(strips, asked):
    layout = ring(0.2, strips=strips, turn="slip")
    assert not list(off_leaf(layout, 0.0))
    off = {piece.position for piece, _ in too_wide(layout, 30.4) if piece.position <= strips}
    assert off == asked


@pytest.mark.parametrize("centre", [(0.0, 0.0), (40.0, -15.0)])
def test_the_wider_wedge_turns_about_its_tip_wherever_the_centre_is(centre):
    """A wedge of the wider angle laid at the same place is what is asked for."""
    layout = radial(Stock(1200.0, 1600.0, 12, 0.6), Top.oval(1100.0, 900.0), WAYS, centre=centre)
    x, y = layout.recipe.placement.x, layout.recipe.placement.y
    far = max(piece.blank.bounds[2] for piece in layout.pieces)
    assert far > 0.0 and too_wide(layout, 31.0) == []
    spans = []
    for piece in layout.pieces:
        points = piece.onto_bundle.apply(list(piece.blank.exterior.coords)) - (x, y)
        radius = [math.hypot(*p) for p in points]
        turn = [math.degrees(math.atan2(*p)) for p in points]  # from the grain
        spans += [r * math.sin(math.radians(abs(t) + 0.5)) for r, t in zip(radius, turn)]
    half = max(spans) - 0.25
    again = Radial(WAYS, centre=centre, placement=Placement(half, y))
    again = again.lay(Stock(2.0 * half, 1600.0, 12, 0.6), layout.top)
    assert not list(off_leaf(again, 0.0))
    assert max(over for _, over in too_wide(again, 31.0)) == pytest.approx(0.25, abs=0.01)
    assert widest(again, 31.0) < 31.0


def test_before_cutting_it_is_said_whether_the_leaves_have_room_for_the_advised_over():
    errors = Errors(0.03, 0.05)
    roomy, narrow = (Before(ring(more), errors) for more in (5.0, 0.5))
    assert roomy.no_room == () and "has room for" in " ".join(said.price(roomy, "{:.1f} mm".format))
    assert narrow.no_room == tuple(range(1, 13))
    text = said.price(narrow, "{:.1f} mm".format)[0]
    assert "1 to 12 have no room" in text and f"{narrow.room:.2f} deg" in text
    assert 30.0 < narrow.room < narrow.advised.over.cut

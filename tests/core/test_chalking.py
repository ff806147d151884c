# SPDX-License-Identifier: LGPL-2.1-or-later
"""Chalk: inside every piece, near its rim, on the side that was asked, off before glue."""

from __future__ import annotations

import math

import pytest
from shapely.geometry import Point

from veneerwb.core import Stock, Top, VeneerError, quarters, radial
from veneerwb.core.checks.sufficiency import onto_leaf
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.shop.pinning.chalking import ROOM, chalking

STOCK = Stock(420.0, 1400.0, 24, 0.6)


@pytest.mark.parametrize("match", MATCHES, ids=lambda m: m.key)
def test_every_piece_has_its_mark_within_its_outline_on_its_own_leaf(match):
    layout = match.sample(STOCK, Top.oval(1000.0, 700.0))
    marks = chalking(layout).marks
    assert [m.position for m in marks] == [p.position for p in layout.pieces]
    for mark, piece in zip(marks, layout.pieces):
        assert piece.outline.contains(Point(mark.at))
        assert mark.room == pytest.approx(piece.outline.exterior.distance(Point(mark.at)))
        assert mark.leaf == piece.leaf
        cut = onto_leaf(piece, STOCK).apply_to(piece.outline)
        assert cut.contains(Point(mark.on_leaf))
        assert mark.text == f"{piece.position} {'B' if piece.turned else 'F'}"


@pytest.mark.parametrize("ways", [3, 12, 24, 64])
def test_in_a_ring_it_stands_near_the_rim_and_its_arrow_points_at_the_tip(ways):
    stock = Stock(900.0, 1400.0, ways, 0.6)
    layout = radial(stock, Top.round(800.0), ways, "slip")
    told = chalking(layout)
    assert told.tip
    for mark, piece in zip(told.marks, layout.pieces):
        far = math.hypot(*mark.at)
        assert far > 0.85 * 400.0
        there = far * math.cos(math.radians(mark.arrow)), far * math.sin(math.radians(mark.arrow))
        assert (mark.at[0] + there[0], mark.at[1] + there[1]) == pytest.approx((0.0, 0.0), abs=1e-6)
        assert mark.room <= ROOM + 1e-6
        tip = onto_leaf(piece, stock).point((0.0, 0.0))
        turn = math.degrees(math.atan2(tip[1] - mark.on_leaf[1], tip[0] - mark.on_leaf[0]))
        assert math.remainder(turn - mark.arrow_on_leaf, 360.0) == pytest.approx(0.0, abs=1e-6)


def test_on_the_side_that_shows_or_on_the_one_that_is_glued():
    layout = radial(STOCK, Top.round(800.0), 12)
    for asked, turned_on in (("show", "back"), ("glue", "face")):
        told = chalking(layout, asked)
        other = {"back": "face", "face": "back"}[turned_on]
        assert all(m.side == (turned_on if m.turned else other) for m in told.marks)
        notes = " ".join(map(str, told.notes))
        assert "comes off before glue" in notes and f"on the {turned_on} of leaves" in notes
    with pytest.raises(VeneerError, match="choose one of: show, glue"):
        chalking(layout, "edge")


def test_other_matches_have_an_arrow_up_the_grain():
    told = chalking(quarters(STOCK, Top.rectangle(800.0, 500.0), "diamond"))
    assert not told.tip
    assert all(math.remainder(m.arrow_on_leaf - 90.0, 360.0) == pytest.approx(0.0, abs=1e-6)
               for m in told.marks)


def test_seen_on_the_back_it_is_the_mirror_image():
    mark = chalking(radial(STOCK, Top.round(800.0), 12)).marks[0]
    off = chalking(radial(STOCK, Top.round(800.0), 12, placement=(150.0, 300.0))).marks[0]
    assert off.beside == pytest.approx(270.0) and off.on_leaf[0] == pytest.approx(150.0)
    assert mark.side == "back" and mark.arrow_seen == 180.0 - mark.arrow_on_leaf
    assert (mark.beside, mark.above) == pytest.approx((420.0 - mark.on_leaf[0], mark.on_leaf[1]))
    face = chalking(radial(STOCK, Top.round(800.0), 12)).marks[1]
    assert (face.beside, face.above) == pytest.approx(face.on_leaf)


def test_spares_say_that_they_are_and_their_leaf():
    marks = chalking(radial(STOCK, Top.round(800.0), 12), spares=2).marks
    assert [m.text for m in marks if not m.position] == ["spare 13", "spare 14"]
    layout = radial(STOCK, Top.round(800.0), 12)
    assert all(layout.cuts[0].outline.contains(Point(m.on_leaf)) for m in marks)

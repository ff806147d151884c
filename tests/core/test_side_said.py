# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the check says of side matches."""

from __future__ import annotations

from dataclasses import replace

import pytest

from veneerwb.core import Placement, Stock, Top, check
from veneerwb.core.matches.side import FACES, TURNS, side

STOCK = Stock(260.0, 2400.0, 64, 0.6)
SQUARE = Top.polygon(4, 800.0)
COMBINED = [
    (turn, face) for turn in TURNS for face in FACES
    if face != "slip-centre-book" or turn in ("book", "slip")
]  # fmt: skip


def find(layout, code, **asked):
    return next((f for f in check(layout, **asked) if f.code == code), None)


def test_no_text_of_a_side_match_speaks_of_wedges_or_ways():
    place = Placement(10.0, 10.0)
    for turn, face in COMBINED:
        layout = side(STOCK, SQUARE, turn, face, width=230.0, placement=place)
        for finding in check(layout, spares=61, wedge_angle=44.0):
            said = f"{finding.text} {finding.remedy}"
            assert not {"wedge", "ways", "closing", "ring"} & set(said.replace(",", " ").split())
            assert "{" not in said and "None" not in said


def test_what_lies_off_the_leaves_is_told_how_to_be_moved():
    layout = side(STOCK, SQUARE, count=4, placement=Placement(90.0, -30.0))
    found = find(layout, "off-leaf", margin=5.0)
    assert (found.values["across"], found.values["along"]) == pytest.approx((15.0, 35.0))
    there = side(STOCK, SQUARE, count=4, placement=Placement(105.0, 5.0))
    assert find(there, "off-leaf", margin=5.0) is None
    assert "15 mm across" in found.remedy and "35 mm along" in found.remedy
    beyond = find(side(STOCK, SQUARE, count=4, placement=Placement(190.0, 1610.0)), "off-leaf")
    assert (beyond.values["across"], beyond.values["along"]) == pytest.approx((-30.0, -10.0))


def test_what_is_too_large_for_the_leaves_is_told_by_how_much():
    stock = Stock(190.0, 750.0, 9, 0.6)
    found = find(side(stock, SQUARE, "slip", count=4, oversize=3.0), "off-leaf")
    assert (found.values["narrower"], found.values["shorter"]) == pytest.approx((16.0, 56.0))
    assert "16 mm too wide" in found.remedy and "56 mm too long" in found.remedy
    assert "end to end" in found.remedy
    fits = Stock(206.0, 806.0, 9, 0.6)
    assert find(side(fits, SQUARE, "slip", count=4, oversize=3.0), "off-leaf") is None


def test_parity_speaks_of_book_joints_only():
    for turn, face in COMBINED:
        layout = side(STOCK, SQUARE, turn, face, width=200.0)
        assert find(layout, "parity") is None
    layout = side(STOCK, SQUARE, count=4)
    pieces = tuple(replace(p, turned=False) if p.position == 3 else p for p in layout.pieces)
    assert "second piece" in find(replace(layout, pieces=pieces), "parity").remedy


def test_bars_are_said_of_alternate_sides_alone():
    assert "in bars" in find(side(STOCK, SQUARE, count=4), "loose-faces").text
    halves = find(side(STOCK, SQUARE, face="slip-centre-book", count=4), "loose-faces")
    assert "in bars" not in halves.text and "Positions 1-2 " in halves.text

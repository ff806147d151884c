# SPDX-License-Identifier: LGPL-2.1-or-later
"""Regions cut by straights that run through corners: every part is a sound outline of its own; and
what comes of what is cut: crumbs, lots and closing seams."""

from __future__ import annotations

import math

import pytest
from shapely.geometry import Polygon

from veneerwb.core import Stock, Top, check, cuts_by_shape, quarters, radial, side
from veneerwb.core.outlines.region import Half

STOCK = Stock(900.0, 3000.0, 30, 0.6)
NOTCHED = [(-100, -100), (100, -100), (100, 100), (-100, 100), (-100, 50), (0, 0), (-100, -50)]
SQUARE = [(-200, -200), (200, -200), (200, 200), (-200, 200)]
DIAMOND = [(0, 0), (50, 40), (100, 0), (50, -40)]
LEFT, RIGHT, UP_TO_100 = Half(0.0, 0.0), Half(180.0, 0.0), Half(0.0, 100.0)


def cut(outline, *halves, holes=()):
    region = Top.outline(Polygon(outline, holes)).region
    parts = region.cut(halves)
    assert all(part.polygon.is_valid for part in parts)
    left = Polygon(outline, holes)
    for half in halves:
        x = half.offset if half.normal == 0.0 else -1000.0
        x, far = (x, -1000.0) if half.normal == 0.0 else (0.0, 1000.0)
        left &= Polygon([(x, -1000), (far, -1000), (far, 1000), (x, 1000)])
    assert math.fsum(part.area for part in parts) == pytest.approx(left.area, rel=1e-12)
    return parts


def test_a_straight_through_a_hollow_corner_parts_what_lies_behind_it():
    assert [part.area for part in cut(NOTCHED, LEFT)] == pytest.approx([7500.0, 7500.0])
    assert [part.area for part in cut(NOTCHED, RIGHT)] == pytest.approx([20000.0])


def test_an_opening_that_touches_a_straight_at_a_corner_stays_an_opening():
    (one,) = cut(SQUARE, RIGHT, holes=[DIAMOND])
    assert len(one.holes) == 1
    (other,) = cut(SQUARE, LEFT, holes=[DIAMOND])
    assert not other.holes


def test_an_opening_that_reaches_from_straight_to_straight_parts_what_lies_between():
    parts = cut(SQUARE, RIGHT, UP_TO_100, holes=[DIAMOND])
    assert [part.area for part in parts] == pytest.approx([18000.0, 18000.0])
    assert not any(part.holes for part in parts)


def test_pieces_that_meet_at_a_hollow_corner_are_two():
    layout = quarters(STOCK, Top.outline(Polygon(NOTCHED)))
    assert len(layout.pieces) == 4 and all(piece.outline.is_valid for piece in layout.pieces)
    slanted = quarters(STOCK, Top.outline(Polygon(SQUARE, [DIAMOND])), "box")
    assert all(piece.outline.is_valid for piece in slanted.pieces)


def test_the_least_crumb_of_a_top_is_a_piece_and_the_check_warns_of_it():
    top = Top.outline(Polygon([(-300, -200), (-5, -200), (0.1, 100), (-5, 200), (-300, 200)]))
    layout = quarters(STOCK, top)
    areas = [piece.area for piece in layout.pieces]
    assert len(areas) == 3 and min(areas) < 1.0
    assert math.fsum(areas) == pytest.approx(top.area, rel=1e-9)
    (found,) = (finding for finding in check(layout) if finding.code == "crumbs")
    assert found.pieces == (areas.index(min(areas)) + 1,) and "broken" in found.text
    whole = quarters(STOCK, Top.square(400.0))
    assert "crumbs" not in {finding.code for finding in check(whole)}


@pytest.mark.parametrize("of", [{"centre": (30.0, 20.0)}, {"strips": 3}, {"strips": 2, "ways": 4}])
def test_the_seams_that_close_a_ring_of_cells_come_last(of):
    layout = radial(STOCK, Top.round(900.0), **{"ways": 8, **of})
    count = len(layout.pieces)
    assert (layout.seams[-1].a, layout.seams[-1].b) == (count, 1)
    backwards = [seam.a > seam.b for seam in layout.seams]
    assert backwards == sorted(backwards) and sum(backwards) < len(backwards) / 2
    wedge = {p.position: (p.position - 1) // (count // layout.recipe.ways) for p in layout.pieces}
    for seam in layout.seams:
        assert (wedge[seam.b] - wedge[seam.a]) % layout.recipe.ways in (0, 1)
    (steps,) = (finding for finding in check(layout) if finding.code == "steps")
    assert steps.values["closing"] == steps.values["largest"] == count - 2
    assert f"the closing seam has {count - 2}" in steps.text


def test_a_fan_that_does_not_close_has_no_closing_seam():
    layout = radial(STOCK, Top.rectangle(900.0, 300.0), 12, centre=(0.0, -600.0), start=0.0)
    (steps,) = (finding for finding in check(layout) if finding.code == "steps")
    assert "closing" not in steps.text


def test_pieces_that_differ_by_rounding_alone_share_a_lot():
    for diameter, count in ((617.0, 8), (650.0, 16), (333.0, 24)):
        layout = side(STOCK, Top.round(diameter), count=count, grain=30.0)
        lots = cuts_by_shape(layout.pieces)  # the strips left of the middle and their mirrors
        assert [len(lot.pieces) for lot in lots] == [2] * (count // 2)

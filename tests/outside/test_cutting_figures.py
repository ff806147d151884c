# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cutting plan against plain geometry that was worked out apart from it."""

from __future__ import annotations

import math

import pytest

from veneerwb.core import Stock, Top, radial
from veneerwb.core.shop.cutting.methods import method
from veneerwb.core.shop.cutting.plan import cutting_plan


def test_24_leaves_of_0_6_mm_are_14_4_mm_and_two_degrees_move_the_lowest_by_0_5_mm():
    # Plain geometry: 14.4 mm x tan 2 deg = 0.503 mm.
    stock = Stock(300.0, 1200.0, 24, 0.6)
    plan = cutting_plan(radial(stock, Top.round(1000.0), 24), method("saw", lean=2.0))
    assert plan.stacks[0].high == pytest.approx(14.4)
    assert plan.leaning[0].lowest == pytest.approx(14.4 * 0.0349208, abs=1e-4)
    assert round(plan.leaning[0].lowest, 1) == 0.5


def test_edges_out_alike_slide_the_piece_by_the_width_over_the_sine_of_half_its_angle():
    # Plain geometry: 3 mm at 16 ways 15.4 mm, at 24 ways 23.0 mm.
    for ways, slid in ((16, 15.4), (24, 23.0)):
        stock = Stock(400.0, 1200.0, ways, 1.0)
        lean = math.degrees(math.atan(3.0 / ways))
        plan = cutting_plan(
            radial(stock, Top.round(1000.0), ways), method("saw", lean=lean, most=40.0)
        )
        assert plan.leaning[0].lowest == pytest.approx(3.0)
        assert plan.leaning[0].slide == pytest.approx(slid, abs=0.05)


def test_a_ring_whose_wedges_are_each_off_opens_by_the_sum_of_them():
    # n wedges each off by e give n e, and 2 R sin(n e / 2) at the rim (plane geometry). One leaf
    # at a time, the same e on every wedge: 0.1 deg, R = 500, n = 8 -> 6.981, 12 -> 10.472 mm.
    for ways, gap in ((8, 6.981), (12, 10.472)):
        thick, seam = 4.0, 500.0
        lean = math.degrees(math.atan(math.radians(0.1) / 2.0 * seam / thick))
        plan = cutting_plan(
            radial(Stock(500.0, 1200.0, ways, thick), Top.round(1000.0), ways),
            method("knife", most=thick, lean=lean),
        )
        assert plan.leaning[0].opens == pytest.approx(ways * 0.1)
        assert plan.leaning[0].gap == pytest.approx(gap, abs=1e-3)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Template angles, truing and closure against published values and plain geometry."""

from __future__ import annotations

import pytest

from veneerwb.core import Stock, Top, check, closure, radial

INCH = 25.4


def template_finding(ways, angle, reach, code):
    stock = Stock(width=2.0 * reach, length=4.0 * reach, leaves=ways, thickness=0.6)
    findings = check(radial(stock, Top.round(2.0 * reach), ways), wedge_angle=angle)
    return next(f for f in findings if f.code == code)


# A trade knowledge-base article on cutting veneer wedges for a round top: 12 pieces of 30 degrees
# cut
# at 30.2, a half of 181.2 trued on a straightedge through the tip.
def test_template_cut_over_makes_halves_of_181_2():
    found = template_finding(12, 30.2, 500.0, "closure-over")
    assert found.level == "warn"
    assert found.values["total"] / 2.0 == pytest.approx(181.2, abs=1e-9)
    assert found.values["trim"] == pytest.approx(0.6, abs=1e-9)
    assert "never under" in found.remedy


# Plain geometry: the seams of that half lie at 30.2, 60.4, 90.6 .. less 0.6, so 29.6, 59.8, 90.0,
# 120.2
# and 150.4 instead of 30, 60 ..: up to 0.4 degrees, 3.5 mm at 500 mm, off.
def test_template_cut_over_moves_the_inner_seams():
    found = template_finding(12, 30.2, 500.0, "closure-over")
    trim = found.values["trim"]
    inner = [k * found.values["angle"] - trim for k in range(1, 6)]
    assert inner == pytest.approx([29.6, 59.8, 90.0, 120.2, 150.4], abs=1e-9)
    assert found.values["seam_shift"] == pytest.approx(3.5, abs=0.05)


# Plain geometry: a half under 180 by d costs R sin(d/2) of every tip.
def test_template_cut_under_costs_the_tips_when_the_halves_are_trued():
    found = template_finding(12, 30.0 - 0.2, 500.0, "closure-under")  # halves of 178.8: d = 1.2
    assert found.level == "stop"
    assert found.values["tip_lost"] == pytest.approx(5.24, abs=0.005)


# Plain geometry: n wedges each off by e open the rim by 2 R sin(n e / 2).
@pytest.mark.parametrize(("ways", "gap"), [(8, 6.981), (12, 10.472), (16, 13.962)])
def test_a_tenth_of_a_degree_at_every_wedge_opens_or_overlaps_the_rim(ways, gap):
    short = closure([360.0 / ways - 0.1] * ways, reach=500.0)
    assert short.rim_gap == pytest.approx(gap, abs=5e-4)
    assert short.error == pytest.approx(-0.1 * ways, abs=1e-9)
    over = closure([360.0 / ways + 0.1] * ways, reach=500.0)
    assert over.rim_gap == pytest.approx(-gap, abs=5e-4)
    found = template_finding(ways, 360.0 / ways - 0.1, 500.0, "closure-under")
    assert found.values["rim_gap"] == pytest.approx(gap, abs=5e-4)


# Plain geometry; a magazine prints 1/8 in for it. Four pieces of 12 in mitred at 45.1 instead of 45
# are
# four wedges of 90.2 about the middle of the square, whose corners lie 6 sqrt(2) in from there.
def test_four_pieces_mitred_a_tenth_of_a_degree_off():
    closed = closure([2.0 * 45.1] * 4, reach=6.0 * 2.0**0.5 * INCH)
    assert closed.error == pytest.approx(0.8, abs=1e-9)
    assert abs(closed.rim_gap) / INCH == pytest.approx(0.118, abs=5e-4)

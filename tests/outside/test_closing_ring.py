# SPDX-License-Identifier: LGPL-2.1-or-later
"""Closing a ring against published values, plain geometry, and a simulation of every wedge."""

from __future__ import annotations

import math

import numpy as np
import pytest
from shapely.geometry import Polygon

from veneerwb.core import Stock, Top, radial
from veneerwb.core.shop.closing import (
    Angle,
    Errors,
    Expected,
    Gap,
    Measured,
    Moisture,
    Ring,
    as_trued,
    costs,
    least_over,
    places,
    replayed,
    tips_move,
)  # fmt: skip
from veneerwb.core.shop.closing.over import differences, drawn, hows
from veneerwb.core.wood import coefficients

RUNS = 10_000


def ring(ways, reach=500.0, turn="slip"):
    return Ring.of(radial(Stock(2000.0, 4000.0, ways, 0.6), Top.round(2.0 * reach), ways, turn))


def measured(ways, angle, reach=500.0, **given):
    return Measured(ring(ways, reach), (Angle(angle),) * ways, **given)


# Plain geometry: n wedges each off by e sum to n e off, and the rim opens 2 R sin(n e / 2).
@pytest.mark.parametrize(("ways", "gap"), [(8, 6.981), (12, 10.472), (16, 13.962)])
def test_a_tenth_of_a_degree_at_every_wedge(ways, gap):
    short, over = (measured(ways, 360.0 / ways + e) for e in (-0.1, 0.1))
    assert short.error == pytest.approx(-0.1 * ways, abs=1e-9)
    assert short.rim_gap == pytest.approx(gap, abs=5e-4)
    assert over.rim_gap == pytest.approx(-gap, abs=5e-4)


# A trade knowledge-base article on cutting veneer wedges for a round top: 12 pieces of 30 degrees
# cut at 30.2, so halves of 181.2, trued on a straightedge through the tip.
def test_halves_of_twelve_at_30_2():
    best = measured(12, 30.2).best
    assert [half.value for half in best.halves] == pytest.approx([181.2, 181.2], abs=1e-9)
    for part in best.at.parts:
        assert part.trims == pytest.approx((0.6, 0.6), abs=1e-9)
        for tip, rim in part.offsets:
            assert tip == 0.0 and rim == pytest.approx(500.0 * math.sin(math.radians(0.6)))


# Plain geometry: the inner seams of such a half, which lay at 30.2, 60.4 .., lie at 29.6, 59.8, 90,
# 120.2 and 150.4 when 0.6 is trimmed at both ends: up to 3.5 mm off at 500 mm.
def test_the_inner_seams_of_that_half_when_it_is_trued_at_both_ends():
    at = places(ring(12), [30.2] * 12, "both ends")
    zero = at.ring.direction(0)
    inner = [at.pieces[k].last - zero for k in range(5)]
    assert inner == pytest.approx([29.6, 59.8, 90.0, 120.2, 150.4], abs=1e-9)
    assert costs(at).shift == pytest.approx(3.5, abs=0.05)
    laid = as_trued(radial(Stock(900.0, 2000.0, 12, 0.6), Top.round(1000.0), 12), at)
    ends = [max(seam.line.coords, key=lambda p: math.hypot(*p)) for seam in laid.seams[:5]]
    seen = [(math.degrees(math.atan2(y, x)) - zero) % 360.0 for x, y in ends]
    assert seen == pytest.approx(inner, abs=1e-9)


# Plain geometry: a half under 180 by d costs R sin(d/2) of every tip when it is trued: 500 mm,
# 1.2 degrees: 5.24 mm.
def test_a_half_of_178_8_loses_its_tips():
    under = measured(12, 29.8)
    assert under.best.costs.tips == pytest.approx(5.24, abs=0.005)
    for part in under.best.at.parts:
        for tip, rim in part.offsets:
            assert tip == pytest.approx(5.24, abs=0.005) and rim == pytest.approx(0.0, abs=1e-6)


# Plain geometry: edges out alike by 3 mm: pieces slide 15.4 mm at 16 ways, 23.0 at 24.
@pytest.mark.parametrize(("ways", "slides"), [(16, 15.4), (24, 23.0)])
def test_edges_all_out_by_the_same_width(ways, slides):
    assert tips_move(ways, 3.0) == pytest.approx(slides, abs=0.05)


# Plain geometry with the Wood Handbook's coefficient (FPL-GTR-190, 2010, Table 13-5) of walnut,
# .00274: 1 % drier, a ring opens about 0.95 degrees whatever n, 10 mm at R 600.
@pytest.mark.parametrize("ways", [8, 12, 16, 24, 48])
def test_a_ring_that_dries_by_one_per_cent(ways):
    walnut = coefficients("walnut, black").tangential
    wet = Moisture(9.0, 9.0, 8.0, walnut)
    expected = Expected(ways, 360.0 / ways, Errors(0.0, 0.0, wet))
    by_hand = ways * 2.0 * math.degrees(
        math.atan(math.tan(math.pi / ways) * (1.0 - 0.00274))
    )
    assert expected.ring.mean == pytest.approx(by_hand, abs=1e-9)
    assert expected.error == pytest.approx(-0.95, abs=0.07)
    dried = measured(ways, expected.angle, reach=600.0)
    assert dried.rim_gap == pytest.approx(10.0, abs=0.75)


# Plain geometry; a magazine prints 1/8 in for it: four pieces of 12 in mitred at 45.1 are wedges of
# 90.2 about the middle of the square, whose corners lie 6 sqrt(2) in from there.
def test_four_pieces_mitred_a_tenth_of_a_degree_off():
    square = Ring.of(radial(Stock(900.0, 900.0, 4, 0.6), Top.square(12.0 * 25.4), 4, start=0.0))
    found = Measured(square, (Angle(2.0 * 45.1),) * 4)
    assert found.error == pytest.approx(0.8, abs=1e-9)
    assert abs(found.rim_gap) / 25.4 == pytest.approx(0.118, abs=5e-4)


# Plain geometry: one template is common to all wedges, n e; each piece's own error is chance, root
# n sigma: 16 ways, 0.1 degrees: 1.6 against 0.4.
def test_sixteen_ways_off_by_a_tenth_in_common_and_each_for_itself():
    expected = Expected(16, 22.5, Errors(0.1, 0.1))
    assert expected.ring.common == pytest.approx(1.6)
    assert expected.ring.own == pytest.approx(0.4)


# The simulation draws every wedge; theory sums variances. Standard errors: of a mean s / root N, of
# a standard deviation s / root 2N, of a correlation (1 - r^2) / root N (sampling theory).
@pytest.mark.parametrize("ways", [8, 12, 24])
@pytest.mark.parametrize(
    "errors",
    [
        Errors(0.05, 0.1),
        Errors(0.1, 0.02),
        Errors(0.0, 0.08),
        Errors(0.03, 0.05, Moisture(9.0, 9.0, 7.5, 0.00369, 0.4)),
        Errors(0.03, 0.05, Moisture(9.0, 8.0, 9.0, 0.00369, 0.4, grain=45.0)),
    ],
)
def test_the_simulation_agrees_with_theory(ways, errors):
    expected = Expected(ways, 360.0 / ways, errors)
    angles = drawn(expected, RUNS, seed=ways)
    for count in (ways, ways // 2):
        sums, theory = angles[:, :count].sum(axis=1), expected.sum(count)
        assert sums.mean() == pytest.approx(theory.mean, abs=3.0 * theory.spread / RUNS**0.5)
        assert sums.std() == pytest.approx(theory.spread, abs=3.0 * theory.spread / (2 * RUNS)**0.5)
    halves = angles.reshape(RUNS, 2, -1).sum(axis=2)
    alike = np.corrcoef(halves.T)[0, 1]
    r = expected.half.alike
    assert alike == pytest.approx(r, abs=3.0 * (1.0 - r * r) / RUNS**0.5)


# What is claimed of an over is tried 10,000 times: within the standard error of a share, root
# p (1 - p) / N, as chance has it (each within 3 of them, all together as often as they should).
def test_an_advised_over_trues_as_often_as_it_claims():
    misses = []
    for ways in (4, 7, 12, 16, 24):
        for errors in (
            Errors(0.04, 0.1),
            Errors(0.1, 0.03),
            Errors(0.03, 0.05, Moisture(9.0, 9.0, 8.0, 0.00274, 0.3)),
        ):
            for how in hows(ways):
                for known in (None, 0.05):
                    for sure in (0.95, 0.99):
                        over = least_over(ways, errors, sure, how, known)
                        assert over.claimed >= sure
                        trued = replayed(over, RUNS, seed=len(misses))
                        spread = math.sqrt(RUNS * over.claimed * (1.0 - over.claimed))
                        misses.append((trued - RUNS * over.claimed) / spread)
    assert max(map(abs, misses)) <= 3.3  # of 156, one in a thousand is expected beyond
    assert np.mean(misses) == pytest.approx(0.0, abs=3.0 / len(misses) ** 0.5)
    assert np.std(misses) == pytest.approx(1.0, abs=0.2)


# Plain geometry: a straightedge on both ends of a hollow edge, 500 mm from the tip, gap g there:
# each side falls asin(g / 500) below it.
def test_a_gap_under_a_straightedge_is_an_angle():
    hollow = Gap(5.235, 500.0, "tip", uncertainty=0.1).half
    assert hollow.value == pytest.approx(181.2, abs=5e-4)
    assert hollow.uncertainty == pytest.approx(math.degrees(2 * 0.1 / 500.0), rel=1e-3)
    rocking = Gap(10.471, 500.0, "end", uncertainty=0.1).half
    assert rocking.value == pytest.approx(178.8, abs=5e-4)
    assert rocking.uncertainty == pytest.approx(math.degrees(0.1 / 500.0), rel=1e-3)


def half_of(angles, reach):
    """A half as a polygon, its first edge along x, and its angle."""
    turns = np.radians(np.linspace(0.0, math.fsum(angles), 4000))
    rim = [(reach * math.cos(t), reach * math.sin(t)) for t in turns]
    return Polygon([(0.0, 0.0), *rim]), math.fsum(angles)


def taken(angles, reach):
    """What truing a half to a straight takes: the area, and how far the line passes its tip."""
    fan, total = half_of(angles, reach)
    far = 3.0 * reach
    if total >= 180.0:  # through the tip, along its bisector's normal
        turn, lost = total / 2.0 - 90.0, 0.0
    else:  # through the ends of both outer seams
        turn, lost = total / 2.0 - 90.0, reach * math.sin(math.radians((180.0 - total) / 2.0))
    c, s = math.cos(math.radians(turn)), math.sin(math.radians(turn))
    foot = (-s * lost, c * lost)
    corners = [(-far, 0.0), (far, 0.0), (far, far), (-far, far)]
    keeps = Polygon([(foot[0] + c * x - s * y, foot[1] + s * x + c * y) for x, y in corners])
    return fan.area - fan.intersection(keeps).area, lost


# Exhaustive, with polygons of its own: of all n/2 diameters none takes less.
@pytest.mark.parametrize("ways", [4, 8, 12, 24])
def test_the_diameter_left_open_is_the_best_of_all(ways):
    chance = np.random.default_rng(ways)
    for over in (-0.02, 0.0, 0.03, 0.1):
        angles = 360.0 / ways + over + chance.normal(0.0, 0.08, ways)
        found = Measured(ring(ways), tuple(map(Angle, angles)))
        assert len(found.diameters) == ways // 2
        all_of_them = {}
        for first in range(1, ways // 2 + 1):
            around = np.roll(angles, 1 - first)
            halves = around[: ways // 2], around[ways // 2 :]
            area, lost = (sum(v) for v in zip(*(taken(half, 500.0) for half in halves)))
            all_of_them[first] = (round(lost, 3), round(area, 0), abs(float(np.diff(
                [half.sum() for half in halves])[0])))  # fmt: skip
        best = all_of_them[found.best.first]
        least_lost = min(lost for lost, _, _ in all_of_them.values())
        assert best[0] <= least_lost + 0.002
        rivals = [v for v in all_of_them.values() if v[0] <= least_lost + 0.002]
        assert best[1] <= min(area for _, area, _ in rivals) + 2.0
        rivals = [v for v in rivals if v[1] <= best[1] + 2.0]
        assert best[2] <= min(uneven for _, _, uneven in rivals) + 1e-6
        quick = np.abs(differences(angles[None, :]))[0]
        assert quick == pytest.approx([all_of_them[k + 1][2] for k in range(ways // 2)])

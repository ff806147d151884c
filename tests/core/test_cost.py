# SPDX-License-Identifier: LGPL-2.1-or-later
"""Yield and cost of a top, and what to buy before there is a bundle."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from veneerwb.core import (
    Bundle,
    End,
    Placement,
    Radial,
    Rings,
    SideMatch,
    Stock,
    Top,
    VeneerError,
    check,
    radial,
    sawn_bundle,
    side,
)
from veneerwb.core.inventory import SQUARE_FOOT, Particulars
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.shop.cost import PER, Price, cost, yields
from veneerwb.core.shop.planning import planned, planned_for
from veneerwb.core.shop.room import ROOM

STOCK = Stock(400.0, 900.0, 24, 0.6)
ROUND = Top.round(1200.0)


# --- yields ------------------------------------------------------------------------------------


@pytest.mark.parametrize("match", MATCHES, ids=lambda match: match.key)
def test_what_is_bought_is_used_or_trimmed_or_left(match):
    top = Top.round(800.0)
    layout = match.sample(Stock(900.0, 2000.0, 30, 0.6), top)
    found = yields(layout)
    assert found.used == pytest.approx(layout.top.area * 1e-6) == pytest.approx(found.top)
    assert found.bought == pytest.approx(30 * 0.9 * 2.0)
    assert found.cut + found.offcuts + found.left == pytest.approx(found.bought)
    assert found.used <= found.cut + 1e-9 <= found.opened_area
    assert sorted(p for one in found.leaves for p in one.positions) == [
        piece.position for piece in layout.pieces
    ]
    used = {piece.leaf for piece in layout.pieces}
    assert set(found.whole_leaves) == set(range(1, 31)) - used
    for factors in (found.of_opened, found.of_bundle):
        assert factors.used_of_bought * factors.bought_to_used == pytest.approx(1.0)
        assert factors.waste == pytest.approx(1.0 - factors.used / factors.bought)


def test_yields_of_a_leaf():
    found = yields(radial(STOCK, ROUND, 12, oversize=10.0))
    one = found.leaves[3]
    assert one.positions == (4,) and one.full == pytest.approx(0.36)
    assert one.used == pytest.approx(math.pi * 0.36 / 12)
    assert one.cut == pytest.approx(math.pi * 0.61**2 / 12)
    assert one.factors.used_of_bought == pytest.approx(math.pi / 12)
    assert found.leaves[20].positions == () and found.leaves[20].used == 0.0
    assert found.of_opened.bought == pytest.approx(12 * 0.36)


def test_a_leaf_is_bought_by_the_rectangle_round_it():
    bundle = sawn_bundle(leaves=4, width=300.0, length=500.0, mm_per_px=2.0, seed=1)
    found = yields(radial(bundle, Top.round(400.0), 4))
    assert found.bought == pytest.approx(4 * 0.3 * 0.5, rel=0.01)
    assert isinstance(bundle, Bundle)


# --- cost --------------------------------------------------------------------------------------


def test_the_same_price_said_four_ways_costs_the_same():
    found = yields(radial(STOCK, ROUND, 12))
    area = 24 * 0.36
    amounts = {"bundle": 480.0, "leaf": 20.0, "m2": 480.0 / area, "sq ft": 480.0 / area *
               SQUARE_FOOT}  # fmt: skip
    assert set(amounts) == set(PER)
    for per, amount in amounts.items():
        what = cost(found, Price(amount, per, "EUR"), tops=2)
        assert what.bundle == pytest.approx(480.0) and what.opened == pytest.approx(240.0)
        assert what.per_top == pytest.approx(240.0)
        assert what.per_m2(what.per_top) == pytest.approx(240.0 / (math.pi * 0.36))
        assert what.per_sq_ft(what.opened) == pytest.approx(
            what.per_m2(what.opened) * SQUARE_FOOT
        )


def test_the_price_comes_from_the_particulars():
    assert Price.of(Particulars()) is None
    assert Price.of(Particulars(cost=300.0, currency="EUR")) == Price(300.0, "bundle", "EUR")


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: Price(-1.0), lambda: Price(5.0, "log"), lambda: Price(math.inf),
        lambda: cost(yields(radial(STOCK, ROUND, 4)), Price(1.0), tops=0),
        lambda: planned(Radial(12), ROUND, spares=-1),
        lambda: planned(Radial(12), ROUND, margin=-1.0),
        lambda: planned(Radial(12), ROUND, tops=2, per_leaf=3),
    ],
)  # fmt: skip
def test_what_cannot_be_is_refused(wrong):
    with pytest.raises(VeneerError):
        wrong()


# --- planning ----------------------------------------------------------------------------------

RECIPES = [
    Radial(12, oversize=10.0), Radial(7, "slip"), Radial(8, strips=3, oversize=5.0),
    Radial(16, rim="straight", oversize=8.0), Rings(8, Radial(16, first=9), 500.0),
    SideMatch(count=6, oversize=10.0), End(count=8),
]  # fmt: skip


@pytest.mark.parametrize("recipe", RECIPES, ids=lambda recipe: type(recipe).__name__)
@pytest.mark.parametrize("top", [Top.round(1000.0), Top.rectangle(1200.0, 700.0)],
                         ids=lambda top: top.name)  # fmt: skip
def test_leaves_of_the_least_size_do_and_smaller_ones_do_not(recipe, top):
    found = planned(recipe, top, margin=10.0)

    placed = recipe
    if found.place:
        placed = replace(recipe, placement=Placement(*found.place))

    def off(width, length):
        layout = placed.lay(Stock(width, length, found.needed, 0.6), top)
        return any(f.code == "off-leaf" for f in check(layout, margin=10.0))

    assert not off(found.width + 0.01, found.length + 0.01)
    if found.place:  # each of two rings lies in the middle of its own leaves
        assert off(found.width - 0.1, found.length + 5.0)
        assert off(found.width + 5.0, found.length - 0.1)


@given(st.integers(1, 20), st.integers(1, 3), st.integers(0, 6), st.integers(0, 40))
def test_several_tops_and_spares(tops, per_leaf, spares, margin):
    per_leaf = min(per_leaf, tops)
    found = planned(Radial(8, oversize=10.0), ROUND, spares, margin, tops, per_leaf)
    assert found.each == 8 and found.needed == 8 * math.ceil(tops / per_leaf)
    assert found.leaves == found.needed + spares
    assert found.length == pytest.approx(610 * per_leaf + ROOM * (per_leaf - 1) + 2 * margin)
    assert found.area == pytest.approx(found.leaves * found.width * found.length * 1e-6)
    for size in (24, 32):
        runs, each = found.needed // 8, size // 8
        assert found.bundles(size) * each >= runs and found.bundles(size) * size >= found.leaves
        fewer = found.bundles(size) - 1
        assert fewer * each < runs or fewer * size < found.leaves
        assert found.left_over(size) == found.bundles(size) * size - found.leaves
    assert found.bundles(7) is None and found.left_over(7) is None


def test_a_match_whose_count_follows_from_the_leaves_asks_for_their_width():
    top = Top.rectangle(900.0, 600.0)
    with pytest.raises(VeneerError, match="give the width"):
        planned(SideMatch(), top)
    found = planned(SideMatch(), top, margin=0.0, leaf_width=220.0)
    assert found.needed == 5 and found.cut == pytest.approx((180.0, 600.0))
    with pytest.raises(VeneerError, match="wider leaves"):
        planned(Radial(4), Top.round(1000.0), leaf_width=300.0)


def test_a_layout_that_is_there_can_be_planned_too():
    layout = side(STOCK, Top.rectangle(900.0, 600.0), count=5)
    assert planned_for(layout).cut == pytest.approx((180.0, 600.0))
    assert planned_for(layout).blanks == pytest.approx(0.54)

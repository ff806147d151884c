# SPDX-License-Identifier: LGPL-2.1-or-later
"""Ways of cutting: lifts, lean, and the maker's own figures."""

from __future__ import annotations

import hypothesis.strategies as st
import pytest
from hypothesis import given

from veneerwb.core import VeneerError
from veneerwb.core.shop.cutting.methods import KNIFE, MACHINE, METHODS, SAW, method


def test_24_leaves_of_0_6_mm_are_no_single_knife_cut_but_one_in_the_saws_boards():
    leaves = tuple(range(1, 25))
    assert [len(lift) for lift in KNIFE.lifts(leaves, 0.6)] == [4] * 6
    assert SAW.lifts(leaves, 0.6) == (leaves,)
    assert MACHINE.lifts(leaves, 0.6) == tuple((n,) for n in leaves)


@given(st.integers(1, 200), st.floats(0.3, 3.0), st.floats(3.0, 60.0))
def test_lifts_keep_all_leaves_in_order_and_none_is_higher_than_allowed(count, thick, most):
    leaves = tuple(range(7, 7 + count))
    lifts = method("saw", most=most).lifts(leaves, thick)
    assert tuple(n for lift in lifts for n in lift) == leaves
    heights = [len(lift) * thick for lift in lifts]
    assert max(heights) <= most * (1.0 + 1e-9)
    assert max(map(len, lifts)) - min(map(len, lifts)) <= 1
    # No fewer lifts would do.
    assert (len(lifts) - 1) * int(most / thick + 1e-9) < count


def test_a_height_of_exactly_so_many_leaves_is_allowed_in_spite_of_rounding():
    assert method("knife", most=1.8).at_once(0.6) == 3
    assert method("knife", most=0.7 * 3).at_once(0.7) == 3


def test_a_leaf_thicker_than_the_limit_is_refused_with_what_would_do():
    with pytest.raises(VeneerError, match="thicker than the 2.4 mm .* machine"):
        KNIFE.at_once(2.5)


def test_own_figures_are_taken_and_slips_of_the_keyboard_refused():
    assert method("saw", kerf=3.2, lean=0.5).kerf == 3.2
    assert method("saw", kerf=None) == SAW
    for wrong in ({"kerf": -1.0}, {"lean": 90.0}, {"most": float("nan")}, {"around": 1e6}):
        with pytest.raises(VeneerError):
            method("saw", **wrong)
    with pytest.raises(VeneerError, match="choose one of: knife, saw, machine"):
        method("axe")
    assert set(METHODS) == {"knife", "saw", "machine"}


def test_lean_moves_what_lies_deeper_further():
    leaning = method("knife", lean=2.0)
    assert leaning.displaced(0.0) == 0.0
    assert leaning.displaced(2.4) == pytest.approx(4 * leaning.displaced(0.6))

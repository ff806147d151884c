# SPDX-License-Identifier: LGPL-2.1-or-later
"""Runs of panels: each is tiled, leaves run on, and what meets across a gap is true."""

from __future__ import annotations

import itertools
import math

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon, box

from veneerwb.core import (
    End,
    Placement,
    Quarters,
    Radial,
    Rings,
    SideMatch,
    Stock,
    Top,
    VeneerError,
)
from veneerwb.core.outlines.edge import Arc
from veneerwb.core.plane import Motion
from veneerwb.core.runs import GAPS, MODES, Run, elevation, joined, run_findings
from veneerwb.core.runs.grain import grain_of, grain_on

STOCK = Stock(260.0, 2600.0, 200, 0.6)


def tiled(laid):
    """Whether the pieces of every panel tile it."""
    for panel, layout in zip(laid.panels, laid.layouts):
        assert layout.top is panel.top
        assert math.fsum(p.area for p in layout.pieces) == pytest.approx(panel.top.area, rel=1e-9)
        for a, b in itertools.combinations([p.outline for p in layout.pieces], 2):
            assert a.intersection(b).area <= 1e-6
        assert [p.position for p in layout.pieces] == list(range(1, len(layout.pieces) + 1))
        assert all(p.turned == p.onto_bundle.mirrored for p in layout.pieces)


# --- numbers -----------------------------------------------------------------------------------


def order(*boxes):
    """In which order boxes (left, low, right, high) are numbered."""
    return [panel.source for panel in elevation([Top.outline(box(*one)) for one in boxes])]


def test_a_grid_is_numbered_from_the_upper_left_row_by_row(wall):
    panels = wall(4, 2)
    assert [panel.number for panel in panels] == list(range(1, 9))
    places = [panel.place for panel in panels]
    assert places == sorted(places, key=lambda place: (-place[1], place[0]))
    assert places[0] == (250.0, 1053.0) and places[7] == (1759.0, 350.0)


def test_doors_of_unlike_height_on_one_base_are_one_row():
    assert order((0, 0, 400, 700), (410, 0, 800, 720), (810, 0, 1200, 690)) == [0, 1, 2]


@pytest.mark.parametrize("down", [0.0, 2.0, -2.0])
def test_the_highest_of_a_stack_makes_a_row_with_a_tall_door_beside_it(down):
    stack = [(410, 1500, 800, 1997 - down), (410, 1000, 800, 1497), (410, 0, 800, 997)]
    assert order(stack[2], stack[1], (0, 0, 400, 1997), stack[0]) == [2, 3, 1, 0]


def test_a_panel_lies_about_its_own_middle_with_its_true_curves_and_holes():
    arch = Top.of_edges(
        Top.racetrack(700.0, 400.0).region.moved(Motion(dx=900.0, dy=80.0)).outer,
        [(Arc((850.0, 80.0), 30.0, 0.0, -360.0),)],
    )
    panel = elevation([arch])[0]
    assert panel.place == pytest.approx((900.0, 80.0)) and panel.size == pytest.approx((700, 400))
    assert sum(isinstance(s, Arc) for s in panel.top.edge) == 2 and len(panel.top.holes) == 1
    assert panel.region.area == pytest.approx(arch.area, rel=1e-12)
    assert panel.region.polygon.symmetric_difference(arch.polygon_mm).area < 1e-6
    for mode in MODES:
        tiled(Run(SideMatch(count=4), mode).lay(STOCK, [panel]))


def test_panels_over_each_other_and_none_at_all_are_refused():
    with pytest.raises(VeneerError, match="Panels 1 and 2 lie over each other by 7000 mm2"):
        order((0, 0, 400, 700), (390, 0, 800, 700))
    with pytest.raises(VeneerError, match="1 to 500 panels, and these are 0"):
        elevation([])
    with pytest.raises(VeneerError, match="no panels"):
        Run().lay(STOCK, [])


# --- in sequence -------------------------------------------------------------------------------

RECIPES = {
    "side": (SideMatch(count=3, first=5, oversize=4.0), 3),
    "end": (End("panel", count=6, first=5), 6),
    "four": (Quarters("diamond", first=5), 4),
    "radial": (Radial(8, first=5, order="spread"), 8),
}


@pytest.mark.parametrize("name", RECIPES)
def test_each_panel_takes_the_next_leaves_and_is_the_same_match(doors, name):
    recipe, count = RECIPES[name]
    laid = Run(recipe).lay(STOCK, doors)
    tiled(laid)
    first = laid.layouts[0]
    for k, (layout, taken) in enumerate(zip(laid.layouts, laid.each)):
        begin = 5 + k * count
        assert taken == tuple(range(begin, begin + count))
        assert [p.leaf - k * count for p in layout.pieces] == [p.leaf for p in first.pieces]
        for piece, same in zip(layout.pieces, first.pieces):
            assert piece.turned == same.turned
            corners = np.array(same.outline.exterior.coords)
            assert np.array(piece.outline.exterior.coords) == pytest.approx(corners, abs=1e-9)
            assert piece.onto_bundle.apply(corners) == pytest.approx(
                same.onto_bundle.apply(corners), abs=1e-9
            )
    assert laid.leaves == tuple(range(5, 5 + 5 * count))


def test_leaves_that_the_bundle_lacks_are_stepped_over(doors, leaves):
    stock = joined(Stock(260.0, 2600.0, 4, 0.6), STOCK, missing=5)
    laid = Run(SideMatch(count=3)).lay(stock, doors)
    assert leaves(laid)[:3] == [[1, 2, 3], [4, 10, 11], [12, 13, 14]]


def test_all_panels_are_cut_from_one_place_that_all_their_leaves_have(doors):
    """The last leaves are shorter: the middle is that of what all have."""
    stock = joined(Stock(260.0, 2600.0, 9, 0.6), Stock(240.0, 2000.0, 9, 0.6))
    laid = Run(SideMatch(count=2)).lay(stock, doors)
    places = {(one.recipe.placement.x, one.recipe.placement.y) for one in laid.layouts}
    assert places == {(120.0, (2000.0 - 700.0) / 2.0)}
    assert laid.run.recipe.placement == laid.layouts[4].recipe.placement
    given = Run(SideMatch(count=2, placement=Placement(130.0, 40.0, 88.0))).lay(stock, doors)
    assert {one.recipe.placement for one in given.layouts} == {Placement(130.0, 40.0, 88.0)}


@pytest.mark.parametrize(
    ("wide", "high", "words"),
    [
        (502.5, 700.0, "panel 3 is 2.5 mm wider than panel 1 (500 by 700 mm)"),
        (500.0, 690.0, "panel 3 is 10 mm lower than"),
        (499.0, 701.0, "panel 3 is 1 mm narrower and 1 mm higher than"),
    ],
)
def test_panels_of_unlike_size_are_named_with_their_difference(wide, high, words):
    boxes = [(0, 0, 500, 700), (510, 0, 1010, 700), (1020, 0, 1020 + wide, high)]
    panels = elevation([Top.outline(box(*one)) for one in boxes])
    with pytest.raises(VeneerError) as refused:
        Run(SideMatch(count=2)).lay(STOCK, panels)
    assert words in str(refused.value) and refused.value.code == "unlike-size"
    tiled(Run(SideMatch(count=4), "blueprint").lay(STOCK, panels))


@pytest.mark.parametrize("mode", MODES)
def test_too_few_leaves_say_how_many_panels_can_be_laid(doors, mode):
    """At 250 mm a strip each door takes two leaves."""
    for have in (2, 3, 7, 9):
        with pytest.raises(VeneerError) as refused:
            Run(SideMatch(width=250.0), mode).lay(Stock(260.0, 2600.0, have, 0.6), doors)
        assert refused.value.code == "too-few-leaves"
        words = f"take 10 leaves, and from leaf 1 on there are {have}, {10 - have} missing"
        assert words in str(refused.value)
        fits = refused.value.values["fits"]
        assert fits == have // 2 and f"enough for {fits} of 5" in str(refused.value)
        stock = Stock(260.0, 2600.0, have, 0.6)
        tiled(Run(SideMatch(width=250.0), mode).lay(stock, doors[:fits]))
    tiled(Run(SideMatch(width=250.0), mode).lay(Stock(260.0, 2600.0, 10, 0.6), doors))


# --- as a blueprint ----------------------------------------------------------------------------


def across(laid, a, b):
    """Of panels a and b side by side: the last piece of one and the first of the other at the
    middle height, what takes a's place on the bundle to b's (run's plane), and the gap between
    them (left, right)."""
    found = []
    for number, pick in ((a, max), (b, min)):
        panel, layout = laid.panels[number - 1], laid.layouts[number - 1]
        here = Motion(dx=-panel.place[0], dy=-panel.place[1])
        piece = pick(layout.pieces, key=lambda one: one.outline.centroid.x)
        found.append((piece, piece.onto_bundle @ here))
    (one, first), (other, second) = found
    gap = laid.panels[a - 1].box[2], laid.panels[b - 1].box[0]
    return one, other, second.inverse() @ first, gap


def true_across(laid, turn):
    """Whether each gap between neighbours is crossed as it should be: by the same leaf as if there
    were no gap (closed: the gap shut), or by the next one, mirrored in or moved over the seam."""
    closed = laid.run.gaps == "closed"
    for a, b in itertools.pairwise(range(1, len(laid.panels) + 1)):
        one, other, motion, (left, right) = across(laid, a, b)
        shut = right - left if closed else 0.0
        here = Motion(dx=-shut) @ motion  # with the gap shut
        if one.leaf == other.leaf:
            assert not here.mirrored
            assert here.apply([(left, 0.0), (left, 9.0)]) == pytest.approx(
                np.array([(left, 0.0), (left, 9.0)]), abs=1e-6
            )
        elif turn == "book":
            seam = np.array([(left, 0.0), (left, 9.0)])
            assert other.leaf == one.leaf + 1 and here.mirrored
            if closed:
                assert here.apply(seam) == pytest.approx(seam, abs=1e-6)
            else:  # the seam lies somewhere in the gap
                at = here.apply(seam)[0][0] / 2.0 + left / 2.0
                assert left - 1e-6 <= at <= right + 1e-6
        else:
            moved = here.apply([(0.0, 0.0), (1.0, 0.0), (0.0, 1.0)])
            assert moved - moved[0] == pytest.approx(np.array([(0, 0), (1, 0), (0, 1)]), abs=1e-9)
            assert moved[0][1] == pytest.approx(0.0, abs=1e-6)


@settings(max_examples=25)
@given(
    columns=st.integers(1, 5),
    rows=st.integers(1, 3),
    gap=st.sampled_from([0.0, 0.4, 3.0, 10.0, 61.7]),
    level=st.sampled_from([0.0, 3.0, 24.5]),
    count=st.integers(1, 17),
    turn=st.sampled_from(["book", "slip", "reverse slip", "random"]),
    gaps=st.sampled_from(GAPS),
)
@example(columns=2, rows=1, gap=0.4, level=0.0, count=1, turn="book", gaps="closed")
def test_a_field_tiles_its_panels_and_its_leaves_run_on(
    wall, leaves, columns, rows, gap, level, count, turn, gaps
):
    panels = wall(columns, rows, 300.0, 400.0, gap, level)
    laid = Run(SideMatch(turn, count=count), "blueprint", gaps).lay(STOCK, panels)
    tiled(laid)
    for row in range(rows):
        shown = leaves(laid)[row * columns : (row + 1) * columns]
        if turn != "random":
            run_on = [leaf for panel in shown for leaf in panel]
            assert run_on == sorted(run_on) and run_on[-1] == count
            if gap < 300.0 * columns / count:
                assert set(run_on) == set(range(1, count + 1))
        assert shown == leaves(laid)[:columns]
    if rows == 1 and turn in ("book", "slip"):
        true_across(laid, turn)


def test_a_closed_gap_takes_nothing_of_the_leaves_and_one_laid_through_its_width(wall):
    """What the panels show of each leaf: closed, the pieces of a strip touch on the leaf."""
    for gaps, between in zip(GAPS, (0.0, 60.0)):
        panels = wall(2, 1, 300.0, 400.0, gap=60.0)
        laid = Run(SideMatch("slip", count=1), "blueprint", gaps).lay(
            Stock(700.0, 500.0, 1, 0.6), panels
        )
        (a,), (b,) = (layout.pieces for layout in laid.layouts)
        spans = [one.onto_bundle.apply_to(one.outline).bounds for one in (a, b)]
        assert spans[1][0] - spans[0][2] == pytest.approx(between, abs=1e-9)
        assert laid.field.width == 600.0 + between and laid.field.gaps == (60.0,)
        assert (spans[0][0] + spans[1][2]) / 2.0 == pytest.approx(350.0)  # in the leaf's middle


def test_gaps_between_rows_are_closed_too(wall):
    for gaps, between in zip(GAPS, (0.0, 24.0)):
        laid = Run(SideMatch("slip", count=1), "blueprint", gaps).lay(
            Stock(700.0, 1500.0, 1, 0.6), wall(1, 2, 300.0, 400.0, level=24.0)
        )
        upper, lower = (
            p.onto_bundle.apply_to(p.outline).bounds
            for (p,) in (layout.pieces for layout in laid.layouts)
        )
        assert upper[1] - lower[3] == pytest.approx(between, abs=1e-9)


@pytest.mark.parametrize("recipe", [End("panel", count=8), Quarters("centre and butt"), Radial(8)])
@pytest.mark.parametrize("gaps", GAPS)
def test_other_matches_lie_over_the_whole_run_too(wall, recipe, gaps):
    laid = Run(recipe, "blueprint", gaps).lay(STOCK, wall(4, 2, gap=10.0, level=10.0))
    tiled(laid)
    count = {End: 8, Quarters: 4, Radial: 8}[type(recipe)]
    assert laid.leaves == tuple(range(1, count + 1)) == laid.each[3]
    middle = laid.layouts[1], laid.layouts[2]
    assert sorted({p.leaf for layout in middle for p in layout.pieces}) != list(range(1, count + 1))


@pytest.mark.parametrize("gaps", GAPS)
@pytest.mark.parametrize("grain", [0.0, 30.0, 90.0, 135.0])
def test_grain_in_any_direction_tiles_the_panels_and_is_told_of_each(wall, grain, gaps):
    panels = wall(3, 2, 300.0, 400.0, gap=9.0, level=9.0)
    laid = Run(SideMatch("reverse slip", count=7, grain=grain), "blueprint", gaps).lay(
        STOCK, panels
    )
    tiled(laid)
    assert [grain_of(layout) for layout in laid.layouts] == pytest.approx([grain] * 6)
    across = Run(Quarters("diamond", slant=30.0)).lay(STOCK, panels)
    assert {grain_of(layout) for layout in across.layouts} == {None}
    turns = [grain_on(piece) for piece in across.layouts[0].pieces]
    assert turns == pytest.approx([150.0, 30.0, 150.0, 30.0])


def test_blanks_reach_over_the_panel_s_edge_and_not_over_the_seams(wall):
    laid = Run(SideMatch(count=7, oversize=5.0), "blueprint").lay(STOCK, wall(3))
    for layout in laid.layouts:
        whole = np.array([p.blank.bounds for p in layout.pieces])
        assert [*whole[:, :2].min(0), *whole[:, 2:].max(0)] == pytest.approx(
            [-255.0, -355.0, 255.0, 355.0]
        )
        for a, b in itertools.combinations([p.blank for p in layout.pieces], 2):
            assert a.intersection(b).area <= 1e-6


# --- what cannot be ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("asked", "code"),
    [
        ({"mode": "wild"}, "unknown-choice"),
        ({"gaps": "filled"}, "unknown-choice"),
        ({"recipe": Rings(Radial(8), Radial(8), 200.0)}, "run-unfit"),
        ({"recipe": SideMatch(order=(1, 2, 3))}, "run-order"),
        ({"recipe": Radial(8, disc=50.0), "mode": "blueprint"}, "blueprint-unfit"),
        ({"recipe": Radial(8, rim="straight"), "mode": "blueprint"}, "blueprint-unfit"),
    ],
)
def test_what_cannot_be_laid_over_a_run_is_refused(asked, code):
    with pytest.raises(VeneerError) as refused:
        Run(**asked)
    assert refused.value.code == code


def test_the_same_run_is_the_same_again(doors, leaves):
    bent = Top.outline(Polygon([(2600, 0), (3100, 0), (3100, 600), (2850, 700), (2600, 600)]))
    given = [*(panel.region.polygon for panel in doors)]
    for mode in MODES:
        marks = []
        for shuffled in (given, given[::-1], given[2:] + given[:2]):
            tops = [Top.outline(one) for one in shuffled] + [bent] * (mode == "blueprint")
            laid = Run(SideMatch("random", count=4, seed=7), mode).lay(STOCK, elevation(tops))
            marks.append(
                [(leaves(laid)), [layout.revision for layout in laid.layouts],
                 list(map(str, run_findings(laid)))]
            )  # fmt: skip
        assert marks[0] == marks[1] == marks[2]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The taping plan: whatever the match, each piece and each seam has its turn once, and assemblies
meet along straights."""

from __future__ import annotations

import math
from collections import Counter
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon

from veneerwb.core import Bundle, Leaf, Radial, Side, Stock, Top, VeneerError, radial, rings, side
from veneerwb.core.appeal.maps import maps_of
from veneerwb.core.appeal.measures import across_seams, appraised
from veneerwb.core.log.sawn import sawn_bundle
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.photos.reading import Photo
from veneerwb.core.shop.taping.plan import ASKED, CLOSE, LAY, ONLY, TAPE, TRUE, named, taping
from veneerwb.core.shop.taping.said import closing_reason, instructions, running
from veneerwb.core.shop.taping.seen import (
    ALIKE,
    COLOURS,
    SURFACES,
    by_colours,
    by_surfaces,
    seen_of,
)
from veneerwb.core.shop.taping.tree import BENT, CURVED, STRAIGHT

STOCK = Stock(900.0, 3000.0, 70, 0.6)
TOPS = {
    "round": Top.round(800.0),
    "rectangle": Top.rectangle(900.0, 600.0),
    "with a hollow": Top.outline(
        Polygon([(-450, -300), (450, -300), (450, 320), (150, 320), (150, 110), (-150, 110),
                 (-150, 300), (-450, 300)])
    ),
}  # fmt: skip


def follow(plan):
    """Does the plan step by step, as a pair of hands would, and returns what lies there at last."""
    layout = plan.layout
    lying = {(piece.position,) for piece in layout.pieces}
    met = Counter()
    for step in plan.steps:
        if step.kind == LAY:
            assert step.number == 1 and not step.made and not step.closes
        if step.kind == TRUE:
            assert {part.positions for one in step.made for part in one.parts} <= lying
            continue
        for one in step.made:
            parts = [part.positions for part in one.parts]
            assert lying.issuperset(parts), "a part is not there yet"
            lying -= set(parts)
            home = {p: k for k, part in enumerate(parts) for p in part}
            for k in one.seams:
                seam = layout.seams[k]
                assert len(parts) == 1 or home[seam.a] != home[seam.b]
            lying.add(one.positions)
        met.update(step.closes)
        assert lying.issuperset(step.groups)
    assert met == Counter(range(len(layout.seams))), "a seam is left open, or closed twice"
    assert sorted(p for group in lying for p in group) == [p.position for p in layout.pieces]
    return lying


def straight_joints_part(plan):
    """Both sides of a straight joint lie on their own side of it, by their outlines."""
    layout = plan.layout
    outlines = {p.position: np.asarray(p.outline.exterior.coords) for p in layout.pieces}
    odd = [root.parts[0] for root in plan.roots if len(root.parts) == 1]
    for one in (a for root in plan.roots for a in root.every()):
        if one.joint != STRAIGHT or len(one.parts) != 2 or one in odd:
            continue  # the two runs of an odd ring meet on two straights
        (ax, ay), (bx, by) = np.asarray(layout.seams[one.seams[0]].line.coords)[[0, -1]]
        normal = np.array((ay - by, bx - ax)) / math.hypot(bx - ax, by - ay)
        spans = []
        for part in one.parts:
            away = np.concatenate([outlines[p] for p in part.positions]) @ normal
            spans.append((away.min(), away.max()))
        offset = normal @ (ax, ay)
        (low, _), (_, high) = max(spans), min(spans)
        assert low >= offset - 0.06 and high <= offset + 0.06


@pytest.mark.parametrize("name", TOPS)
@pytest.mark.parametrize("match", MATCHES, ids=lambda match: match.key)
def test_every_match_is_taped_piece_by_piece_and_seam_by_seam(match, name):
    plan = taping(match.sample(STOCK, TOPS[name]))
    assert len(follow(plan)) == 1
    straight_joints_part(plan)
    assert [step.number for step in plan.steps] == list(range(1, len(plan.steps) + 1))
    assert plan.tape == pytest.approx(sum(s.line.length for s in plan.layout.seams))
    for step in plan.steps:
        assert all(word and word[-1] in ".;" for word in instructions(plan, step))


@pytest.mark.parametrize("ways", range(3, 65))
def test_rings_grow_by_pairs_quarters_and_halves(ways):
    layout = radial(STOCK, TOPS["round"], ways, "slip")
    plan = taping(layout)
    (root,) = plan.roots
    assert len(follow(plan)) == 1
    straight_joints_part(plan)
    assert root.height <= math.ceil(math.log2(ways)) + 1
    sizes = [sorted(map(len, step.groups)) for step in plan.steps]
    if ways % 2 == 0:
        assert sizes[-2] == [ways // 2] * 2
        assert [step.kind for step in plan.steps[-2:]] == [TRUE, CLOSE]
        assert root.joint == STRAIGHT and root.pairs == 2
        upright = [p for part in root.parts for p in part.positions]
        assert upright == [(upright[0] - 1 + k) % ways + 1 for k in range(ways)]
    if ways % 4 == 0:
        assert [ways // 4] * 4 in sizes
    if ways % 2:
        assert len(root.parts) == 1 and len(root.seams) == 1
        runs = sorted(len(part.positions) for part in root.parts[0].parts)
        assert runs == [ways // 2, ways // 2 + 1]
    single = sum(len(group) == 1 for group in plan.steps[1].groups)
    quarters = 4 if ways % 4 == 0 else 2 if ways % 2 == 0 else 1
    assert single <= quarters, "pieces that could be in pairs lie alone"


def test_no_assembly_of_an_even_ring_crosses_the_last_joint():
    for ways in (4, 6, 10, 12, 24):
        plan = taping(radial(STOCK, TOPS["rectangle"], ways))
        (root,) = plan.roots
        first, second = (set(part.positions) for part in root.parts)
        for one in list(root.every())[:-1]:
            assert set(one.positions) <= first or set(one.positions) <= second


@pytest.mark.parametrize("ways", [4, 6, 8, 12, 16, 22, 64])
@pytest.mark.parametrize("order", ["sequence", "spread"])
def test_the_last_joint_is_the_diameter_that_is_broken_most(ways, order):
    """At leaf n to leaf 1 of a ring in sequence: no mirror is trued where something else can be."""
    layout = radial(STOCK, TOPS["round"], ways, order=order)
    closing = taping(layout).closings[0]
    half, steps = ways // 2, [seam.step for seam in layout.seams]
    means = [(steps[k] + steps[k + half]) / 2.0 for k in range(half)]
    best = means.index(max(means))
    assert closing.count == half and closing.broken == pytest.approx((max(means),))
    assert set(closing.seams) == {best, best + half}
    rest = sorted(means)[:-1]
    assert closing.others[0] == pytest.approx((rest[0], rest[-1]))
    assert closing.why == (SURFACES if rest[0] < max(means) else ALIKE)
    if order == "sequence" and ways > 4:
        assert (ways, 1) in closing.pairs and closing.why == SURFACES
        assert f"{closing.broken[0]:.1f}" in closing_reason(closing)
        assert "mirror" in closing_reason(closing)


def test_mirrored_mates_are_taped_to_each_other_first():
    """Four ways: leaves 1 and 2 show one surface, so do 3 and 4; truing lies between the pairs."""
    plan = taping(radial(STOCK, TOPS["round"], 4))
    assert {part.positions for part in plan.roots[0].parts} == {(1, 2), (3, 4)}


@pytest.mark.parametrize("ways", [3, 5, 13])
def test_the_last_seam_of_an_odd_ring_is_the_one_that_is_broken_most(ways):
    order = [5, 1, *range(6, 64)][:ways]
    layout = radial(STOCK, TOPS["round"], ways, "slip", order=order)
    closing = taping(layout).closings[0]
    steps = [seam.step for seam in layout.seams]
    assert closing.seams == (steps.index(max(steps)),) and closing.broken == (max(steps),)


def test_the_measured_closure_says_which_diameter():
    layout = radial(STOCK, TOPS["round"], 12)
    for k in range(12):
        a, b = k + 1, (k + 1) % 12 + 1
        plan = taping(layout, close=(b, a))
        closing = plan.closings[0]
        assert closing.why == ASKED and set(closing.seams) == {k, (k + 6) % 12}
        assert {part.positions[0] for part in plan.roots[0].parts} == {b, (b + 5) % 12 + 1}
        follow(plan)
    with pytest.raises(VeneerError, match="cannot have the seam of positions 1 and 5") as caught:
        taping(layout, close=(1, 5))
    assert "12 and 1" in str(caught.value)


def test_strips_are_wedges_before_wedges_are_joined():
    plan = taping(radial(STOCK, TOPS["round"], 7, "slip", strips=3))
    wedge = {p: (p - 1) // 3 for p in range(1, 22)}
    for one in (a for root in plan.roots for a in root.every()):
        inside = Counter(wedge[p] for p in one.positions)
        assert len(inside) == 1 or set(inside.values()) == {3}
    assert [s.title for s in plan.steps[:4]] == ["Lay out", "Strips", "Wedges from strips", "Pairs"]
    follow(plan)


def test_rows_of_an_end_match_before_the_cross_joint():
    (match,) = (m for m in MATCHES if m.key == "architectural")
    plan = taping(match.sample(STOCK, TOPS["rectangle"]))
    assert [step.title for step in plan.steps] == [
        "Lay out", "Pairs", "Rows", "True the rows", "Cross joint",
    ]  # fmt: skip
    assert plan.roots[0].pairs == 4 and plan.closings[0].why == ONLY
    assert set(plan.steps[2].groups) == {(1, 2, 3, 4), (5, 6, 7, 8)}


def test_two_rings_are_whole_before_one_goes_into_the_other():
    layout = rings(STOCK, TOPS["round"], 8, 16, 400.0)
    plan = taping(layout)
    (root,) = plan.roots
    assert root.joint == CURVED and [len(part.positions) for part in root.parts] == [8, 16]
    assert len(plan.closings) == 2 and plan.steps[-1].title == "Both rings"
    assert sum(step.kind == TRUE for step in plan.steps) == 2
    follow(plan)


def test_two_odd_rings_each_have_a_last_seam():
    layout = rings(STOCK, TOPS["round"], Radial(7, "slip"), Radial(9, "slip", first=8), 300.0)
    plan = taping(layout)
    follow(plan)
    assert [len(closing.seams) for closing in plan.closings] == [1, 1]
    assert [s.title for s in plan.steps].count("Inner field: last seam") == 1


def test_a_box_of_unequal_sides_has_a_bent_last_joint():
    (match,) = (m for m in MATCHES if m.key == "box")
    assert taping(match.sample(STOCK, TOPS["rectangle"])).roots[0].joint == BENT
    square = taping(match.sample(STOCK, Top.square(600.0))).roots[0]
    assert square.joint == STRAIGHT and square.trued


@settings(max_examples=30)
@given(
    st.integers(2, 12), st.integers(0, 1799), st.sampled_from(list(TOPS)),
    st.tuples(st.integers(-260, 260), st.integers(-200, 200)), st.integers(1, 2),
)  # fmt: skip
def test_any_ring_anywhere_on_any_top(half, tenths, name, centre, strips):
    layout = radial(
        STOCK, TOPS[name], 2 * half, start=tenths / 10.0, centre=centre, strips=strips
    )
    plan = taping(layout)
    assert len(follow(plan)) == 1
    straight_joints_part(plan)


def test_one_piece_has_nothing_to_tape():
    plan = taping(side(STOCK, TOPS["rectangle"], face="balance", count=1))
    assert [step.kind for step in plan.steps] == [LAY] and plan.closings == () and plan.tape == 0.0


# --- face down ---------------------------------------------------------------------------------


def test_face_down_the_other_side_is_up_and_it_is_said():
    layout = radial(STOCK, TOPS["round"], 8)
    up, down = taping(layout), taping(layout, face_down=True)
    turned = {piece.position: piece.turned for piece in layout.pieces}
    for a, b in zip(up.pieces, down.pieces):
        assert (a.position, a.leaf) == (b.position, b.leaf)
        assert a.side_up == ("back" if turned[a.position] else "face") != b.side_up
    assert running(layout, True).startswith("Mirror image")
    assert up.steps == down.steps


# --- what shows --------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def plain_but_one():
    """Six leaves of one grey, the third much darker."""
    greys = [120, 120, 60, 120, 120, 120]
    pictures = [Photo.of(np.full((350, 150, 3), grey, np.uint8), 2.0) for grey in greys]
    return Bundle(tuple(Leaf(k, Side(p)) for k, p in enumerate(pictures, 1)), 0.6, "own")


def test_of_joints_with_as_many_surfaces_the_one_whose_colours_differ_most_is_last(plain_but_one):
    slip = radial(plain_but_one, Top.round(500.0), 6, "slip")
    seen = replace(seen_of(slip), steps=(1.0,) * 6)
    assert [value > 10.0 for value in seen.colours] == [k in (1, 2) for k in range(6)]
    closing = taping(slip, seen).closings[0]
    assert closing.pairs == ((2, 3), (5, 6)) and closing.why == COLOURS
    assert closing.broken[1] == pytest.approx(seen.colours[1] / 2.0, abs=1e-3)
    assert "CIEDE2000" in closing_reason(closing)
    # Leaf 6 beside leaf 1 is broken more than any colour.
    assert (6, 1) in taping(slip, seen_of(slip)).closings[0].pairs


def test_what_a_seam_shows_is_the_measure_of_the_appeal():
    bundle = sawn_bundle(leaves=5, width=260.0, length=420.0, mm_per_px=2.0, seed=4)
    layout = radial(bundle, Top.round(500.0), 5, "slip")
    maps = maps_of(bundle, 4.0)
    alone = [appraised(replace(layout, seams=(seam,)), maps).closing for seam in layout.seams]
    assert across_seams(layout, maps) == pytest.approx(alone, abs=1e-4)
    assert by_colours(layout, maps).colours == pytest.approx(alone, abs=1e-4)
    assert min(alone) > 0.0


def test_a_stock_shows_steps_and_no_colours():
    layout = radial(STOCK, TOPS["round"], 8)
    assert seen_of(layout) == by_surfaces(layout)
    with pytest.raises(VeneerError, match="no photographs"):
        by_colours(layout)


# --- words -------------------------------------------------------------------------------------


def test_runs_are_named_the_short_way():
    assert named([1, 2, 3]) == "1-3" and named([5]) == "5" and named([11, 12, 1, 2]) == "11-2"
    assert named([1, 3, 5]) == "1, 3, 5"


def test_steps_say_what_goes_to_what():
    plan = taping(radial(STOCK, TOPS["round"], 12), close=(12, 1))
    said = [step.joins for step in plan.steps]
    assert said[1] == ("1 + 2", "4 + 5", "7 + 8", "10 + 11")
    assert said[2] == ("1-2 + 3", "4-5 + 6", "7-8 + 9", "10-11 + 12")
    assert said[3] == ("1-3 + 4-6", "7-9 + 10-12")
    assert all(step.kind in (LAY, TAPE, TRUE, CLOSE) for step in plan.steps)


# --- by quarters -------------------------------------------------------------------------------


@pytest.mark.parametrize("ways", [8, 12, 24, 64])
def test_a_ring_can_be_trued_by_quarters(ways):
    layout = radial(STOCK, TOPS["round"], ways)
    plan, halves = taping(layout, quarters=True), taping(layout)
    follow(plan)
    titles = [step.title for step in plan.steps]
    assert "True the quarters" in titles and "True the halves" not in titles
    step = next(step for step in plan.steps if step.kind == TRUE)
    assert sorted(map(len, step.groups)) == [ways // 4] * 4
    square = {0, ways // 4, ways // 2, 3 * ways // 4}
    assert set(step.closes) == {(k + plan.closings[0].seams[0]) % ways for k in square}
    assert "square" in instructions(plan, step)[0]
    assert plan.roots == halves.roots


def test_where_there_are_no_quarters_halves_are_trued():
    for layout in (radial(STOCK, TOPS["round"], 10), radial(STOCK, TOPS["round"], 4)):
        titles = [step.title for step in taping(layout, quarters=True).steps]
        assert ("True the halves" in titles) == (len(layout.pieces) == 10)


def test_the_position_after_a_seam_names_it_too():
    layout = radial(STOCK, TOPS["round"], 12)
    for p in range(1, 13):
        before = (p - 2) % 12 + 1
        assert taping(layout, close=p) == taping(layout, close=(before, p))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cutting plan: stacks, order of cuts, what holds at each, several tops from one bundle."""

from __future__ import annotations

import math
from functools import cache

import pytest
from shapely.geometry import LineString, Point, box
from shapely.ops import unary_union

from veneerwb.core import Stock, Top, VeneerError, end, quarters, radial, side, tops_from
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.shop.cutting.methods import KNIFE, METHODS, SAW, method
from veneerwb.core.shop.cutting.order import with_grain
from veneerwb.core.shop.cutting.parts import is_left
from veneerwb.core.shop.cutting.piles import piles, tops_laid
from veneerwb.core.shop.cutting.plan import cutting_plan
from veneerwb.core.shop.cutting.sides import OVER, Side

STOCK = Stock(420.0, 1400.0, 24, 0.6)
TOPS = (Top.round(800.0), Top.oval(1000.0, 700.0))


@cache
def laid():
    chosen = [(match, TOPS[k % 2]) for k, match in enumerate(MATCHES)]
    chosen.append((next(m for m in MATCHES if m.key == "radial book"), TOPS[0]))
    return tuple((f"{match.key}, {top.name}", match.sample(STOCK, top)) for match, top in chosen)


@cache
def every(how=KNIFE):
    return tuple((key, layout, cutting_plan(layout, how)) for key, layout in laid())


def bladed(plan):
    return [(stack, step) for stack in plan.stacks for step in stack.steps if step.at_blade]


# --- what holds -----------------------------------------------------------------------------------


@pytest.mark.parametrize("how", METHODS.values(), ids=METHODS)
def test_no_step_at_a_blade_is_without_something_that_holds_piece_and_waste(how):
    for key, _, plan in every(how):
        for _, step in bladed(plan):
            assert step.piece and step.held, (key, step.what)
            if step.falls is not None:
                assert step.waste and step.waste_held, (key, step.what)
            assert step.caution


@pytest.mark.parametrize("how", METHODS.values(), ids=METHODS)
def test_pins_and_screws_that_are_said_to_hold_lie_in_what_they_hold_clear_of_the_blade(how):
    for key, _, plan in every(how):
        for _, step in bladed(plan):
            line = LineString(step.line)
            for hold in step.piece:
                for place in hold.places:
                    assert step.kept.buffer(1e-6).covers(Point(place)), key
            for hold in step.waste:
                for place in hold.places:
                    assert step.falls.buffer(1e-6).covers(Point(place)), key
                    assert line.distance(Point(place)) >= how.clear - 1e-6, (key, step.what)


def test_what_a_saw_cuts_is_kept_or_falls_and_the_last_thing_kept_holds_the_piece():
    for key, _, plan in every(SAW):
        for stack in plan.stacks:
            before = stack.board
            cuts = [step for step in stack.steps if step.kind in ("seam", "rim")]
            for step in cuts:
                parts = step.kept.area + (step.falls.area if step.falls is not None else 0.0)
                assert parts == pytest.approx(before.area, rel=1e-6), key
                before = step.kept
            outline = stack.pile.cuts[0].outline
            assert before.buffer(0.05).covers(outline.intersection(stack.board)), key


@pytest.mark.parametrize("key", ["panel", "diamond", "box", "book", "herringbone"])
def test_on_a_top_of_straights_a_saw_leaves_just_the_piece(key):
    match = next(m for m in MATCHES if m.key == key)
    layout = match.sample(STOCK, Top.rectangle(600.0, 500.0))
    for stack in cutting_plan(layout, SAW).stacks:
        last = [step for step in stack.steps if step.kind in ("seam", "rim")][-1]
        outline = stack.pile.cuts[0].outline
        if abs(outline.convex_hull.area - outline.area) < 1.0:
            assert last.kept.area == pytest.approx(outline.area, rel=1e-4), key


@pytest.mark.parametrize("ways", [3, 4, 6, 12, 24])
def test_straights_round_a_rim_touch_it_and_leave_little_over_it(ways):
    stock = Stock(1100.0, 1400.0, 24, 0.6)
    cut = piles(radial(stock, Top.round(1200.0), ways, "slip"))[0].cuts[0]
    rim = next(side for side in cut.sides if side.kind == "rim")
    found = rim.straights(cut.outline)
    for line in found:
        assert LineString(line).distance(cut.outline) == pytest.approx(0.0, abs=1e-6)
        assert is_left(line, cut.outline, 1e-6)
    # 600 mm (1 - cos 15 deg) = 20.4 mm at 12 ways, with one straight.
    assert len(found) == {3: 4, 4: 4, 6: 2, 12: 1, 24: 1}[ways]
    plan = cutting_plan(radial(stock, Top.round(1200.0), ways, "slip"), SAW)
    last = [step for step in plan.stacks[0].steps if step.at_blade][-1]
    far = max(Point(p).distance(cut.outline) for p in last.kept.exterior.coords)
    assert far <= 1.2 * OVER


def test_a_saw_keeps_its_pins_on_the_side_of_the_piece_as_long_as_any_order_does():
    layout = radial(STOCK, Top.round(800.0), 12)
    plan = cutting_plan(layout, SAW)
    kept = [
        sum(step.kept.covers(Point(pin)) for pin in stack.pins)
        for stack, step in bladed(plan)
    ]
    assert kept == sorted(kept, reverse=True)
    # By hand: one pin stands beyond each seam or beyond the rim, so two cuts at most leave one.
    assert kept[0] >= 1 and sum(kept) >= 2


def test_a_knife_cuts_the_seams_first_while_the_piece_hangs_in_the_pinned_waste_and_frees_it_last():
    for key, _, plan in every(KNIFE):
        for stack in plan.stacks:
            kinds = [step.kind for step in stack.steps if step.kind in ("seam", "rim")]
            assert kinds == sorted(kinds, key=lambda kind: kind == "rim"), key
            cuts = [step for step in stack.steps if step.at_blade]
            freed = [step for step in cuts if step.falls is not None]
            assert len(freed) == len(stack.pile.cuts) and cuts[-1] is freed[-1], key
            assert all(any(h.by == "pin" for h in step.piece)
                       for step in cuts if step not in freed), key
            left = stack.board
            for cut, last in zip(stack.pile.cuts, [s for s in cuts if s.falls is not None]):
                assert last.kept.equals(cut.outline), key
                assert last.falls.area == pytest.approx(left.difference(cut.outline).area), key
                left = left.difference(cut.outline)


def test_a_knife_that_follows_the_grain_runs_into_the_waste():
    # A wedge upwards from its tip: both seams are cut from the rim to the tip.
    layout = radial(STOCK, Top.round(800.0), 12)
    plan = cutting_plan(layout, KNIFE)
    seams = [step for _, step in bladed(plan) if step.kind == "seam"]
    for step in seams:
        assert step.line[0][1] > step.line[-1][1]
    # A seam that falls to the right with the piece on its left is cut as it runs.
    falling = Side("seam", ((0.0, 10.0), (5.0, 0.0)))
    assert with_grain(falling) == falling.points
    rising = Side("seam", ((0.0, 0.0), (5.0, 10.0)))
    assert with_grain(rising) == rising.points[::-1]
    said = {name: [str(step.what) for _, step in bladed(cutting_plan(one, KNIFE))]
            for name, one in (("wedge", layout),
                              ("strip", end(STOCK, Top.rectangle(900.0, 600.0), "panel", 8)))}
    assert all("arrow's direction" in text for text in said["wedge"][:2])
    assert any("along the grain" in text for text in said["strip"])
    assert any("across the grain" in text for text in said["strip"])


# --- stacks ---------------------------------------------------------------------------------------


def test_every_piece_is_in_one_cut_and_every_leaf_in_its_stack():
    for key, layout in laid():
        for by_shape in (None, False, True):
            found = piles(layout, 0, by_shape)
            positions = [p for pile in found for cut in pile.cuts for p in cut.positions]
            assert sorted(positions) == [p.position for p in layout.pieces], key
            leaves = [n for pile in found for n in pile.leaves]
            assert sorted(leaves) == sorted({p.leaf for p in layout.pieces}), key


def test_sides_go_once_round_the_outline_seams_as_the_pieces_have_them():
    for key, layout in laid():
        for pile in piles(layout):
            for cut in pile.cuts:
                length = sum(side.length for side in cut.sides)
                assert length == pytest.approx(cut.outline.exterior.length, abs=1.0), key
                assert unary_union([LineString(s.points) for s in cut.sides]).buffer(0.1).covers(
                    cut.outline.exterior), key
    kinds = [side.kind for side in piles(radial(STOCK, TOPS[0], 12))[0].cuts[0].sides]
    assert sorted(kinds) == ["rim", "seam", "seam"]


def test_a_box_of_two_shapes_is_the_stacks_that_the_layout_is_cut_in():
    one, parted = (
        quarters(STOCK, Top.rectangle(900.0, 600.0), "box", cuts=how) for how in ("stack", "shape")
    )
    (whole,) = piles(one)
    assert whole.cuts[0].again  # a seam of theirs lies within the common outline
    assert [pile.leaves for pile in piles(parted)] == [(1, 3), (2, 4)]
    assert piles(one, by_shape=True) == piles(parted)
    assert piles(parted, by_shape=False) == piles(one)


def test_an_oval_is_one_stack_whose_shorter_rims_are_trimmed_or_a_stack_for_each_shape():
    layout = radial(STOCK, Top.oval(1000.0, 700.0), 24, oversize=5.0)
    (pile,) = piles(layout)
    assert pile.cuts[0].trimmed and not pile.cuts[0].again
    longest = max(layout.pieces, key=lambda p: p.blank.area)
    assert longest.position not in pile.cuts[0].trimmed
    parted = piles(layout, by_shape=True)
    assert len(parted) > 1 and not any(cut.trimmed for one in parted for cut in one.cuts)


def test_spares_are_the_nearest_leaves_that_are_left_and_never_more_than_there_are():
    layout = radial(STOCK, TOPS[0], 12, first=3)
    assert piles(layout, 3)[0].spares == (1, 2, 15)
    plan = cutting_plan(layout, SAW, spares=3)
    assert plan.stacks[0].order == tuple(range(1, 16))
    assert plan.stacks[0].high == pytest.approx(9.0)
    with pytest.raises(VeneerError, match="12 are left over"):
        piles(layout, 13)


def test_the_stack_lies_as_it_came_off_the_log_faces_up():
    for back, first in (("next", 1), ("own", 1), ("previous", 12)):
        stock = Stock(420.0, 1400.0, 12, 0.6, back)
        assert cutting_plan(radial(stock, TOPS[0], 12), SAW).stacks[0].order[0] == first


def test_height_with_boards_and_the_lifts_it_is_cut_in():
    layout = radial(STOCK, TOPS[0], 24)
    saw = cutting_plan(layout, method("saw", board=10.0)).stacks[0]
    assert (saw.high, saw.total, len(saw.lifts)) == (pytest.approx(14.4), pytest.approx(34.4), 1)
    knife = cutting_plan(layout, KNIFE)
    assert len(knife.stacks[0].lifts) == 6
    assert any("6 lifts" in str(note) for note in knife.notes)


def test_limits_without_a_published_source_say_so():
    assert "no published source" in str(cutting_plan(radial(STOCK, TOPS[0], 12)).notes[0])


# --- several tops ---------------------------------------------------------------------------------


def test_tops_side_by_side_share_stacks_and_a_saw_parts_them_first():
    top = Top.round(560.0)
    found = tops_from(STOCK, top, 12)
    positions = found[:6] + found[-2:]
    layouts = tops_laid(STOCK, top, 12, positions)
    plan = cutting_plan(layouts, SAW)
    firsts = {one.first for one in positions}
    assert len(plan.stacks) == len(firsts) == 2
    assert sorted(len(stack.pile.cuts) for stack in plan.stacks) == [2, 6]
    for stack in plan.stacks:
        partings = [step for step in stack.steps if step.kind == "part"]
        assert len(partings) == len(stack.pile.cuts) - 1
        screws = {p for step in stack.steps for hold in step.waste if hold.by == "screw"
                  for p in hold.places}
        for step in partings:
            held = {p for hold in step.piece for p in hold.places}
            assert held == {p for p in (*stack.pins, *screws) if step.kept.covers(Point(p))}
            gap = min(LineString(step.line).distance(cut.outline) for cut in stack.pile.cuts
                      if step.kept.buffer(1.0).covers(cut.outline))
            assert gap >= SAW.kerf
    assert len(plan.leaning) == len(layouts)
    assert any("no leaf can slip" in str(note) for note in plan.notes)  # 6 lie close together
    alone = cutting_plan(layouts[0], SAW)
    assert not any("no leaf can slip" in str(note) for note in alone.notes)


def test_cuts_nearer_than_the_kerf_are_refused():
    place = radial(STOCK, Top.round(560.0), 12).recipe.placement
    beside = (place.x + 2.0 * 280.0 * math.sin(math.radians(15.0)) + 1.0, place.y)
    layouts = [radial(STOCK, Top.round(560.0), 12, placement=p)
               for p in ((place.x, place.y), beside)]
    with pytest.raises(VeneerError, match="the blade takes 2 mm"):
        cutting_plan(layouts, SAW)
    assert len(cutting_plan(layouts, KNIFE).stacks) == 1


def test_what_lies_between_cuts_is_told_and_what_cutting_by_shape_would_spare():
    layouts = [radial(STOCK, Top.round(560.0), 12, placement=(210.0, y)) for y in (50.0, 600.0)]
    notes = " ".join(map(str, cutting_plan(layouts, SAW).notes))
    assert "lie 270 mm apart" in notes and "takes 4 mm" in notes
    oval = cutting_plan(radial(STOCK, Top.oval(1000.0, 700.0), 24, oversize=5.0))
    (note,) = [str(n) for n in oval.notes if "Cut by shape" in str(n)]
    one, parted = (piles(radial(STOCK, Top.oval(1000.0, 700.0), 24, oversize=5.0), by_shape=b)
                   for b in (False, True))
    areas = [sum(len(pile.leaves) * pile.cuts[0].outline.area for pile in found)
             for found in (one, parted)]
    assert f"{len(parted)} stacks" in note
    assert f"{round(100 * (1 - areas[1] / areas[0]))} % less" in note
    assert not any("Cut by shape" in str(n)
                   for n in cutting_plan(radial(STOCK, TOPS[0], 12)).notes)


def test_parts_of_one_cut_that_lie_apart_are_cuts_of_their_own():
    u_shape = Top.outline(box(-300, -200, 300, 200).difference(box(-150, -100, 150, 201)))
    layout = side(STOCK, u_shape, "slip", "balance", 1)
    assert len(layout.pieces) >= 1
    two = Top.outline(box(-300, -200, 300, 200).difference(box(-301, -100, 0, 60)))
    for top in (u_shape, two):
        for count in (1, 2, 3):
            laid_on = side(Stock(700.0, 1400.0, 24, 0.6), top, "book", "balance", count)
            found = piles(laid_on)
            positions = sorted(p for pile in found for cut in pile.cuts for p in cut.positions)
            assert positions == [p.position for p in laid_on.pieces]
            assert cutting_plan(laid_on, KNIFE).stacks


def test_a_cut_that_reaches_off_its_leaves_is_planned_or_refused_in_a_sentence():
    for x in range(-200, 700, 90):
        for how in (KNIFE, SAW):
            try:
                plan = cutting_plan(radial(STOCK, TOPS[0], 12, placement=(float(x), 300.0)), how)
            except VeneerError as refused:
                assert str(refused).endswith(".")
            else:
                assert all(step.piece for _, step in bladed(plan))


def test_tops_of_two_bundles_are_refused():
    other = Stock(420.0, 1400.0, 24, 0.7)
    with pytest.raises(VeneerError, match="several bundles"):
        cutting_plan([radial(STOCK, TOPS[0], 12), radial(other, TOPS[0], 12)])


# --- lean -----------------------------------------------------------------------------------------


def test_lifts_make_less_of_a_lean_than_the_whole_stack():
    layout = radial(STOCK, TOPS[0], 24)
    whole = cutting_plan(layout, method("saw", lean=2.0)).leaning[0]
    lifted = cutting_plan(layout, method("knife", lean=2.0)).leaning[0]
    assert lifted.lowest < whole.lowest / 5 and lifted.gap < whole.gap / 4


def test_matches_that_are_no_ring_are_told_the_displacement_only():
    told = cutting_plan(end(STOCK, Top.rectangle(900.0, 600.0), "panel", 8)).leaning[0]
    assert told.lowest > 0.0 and told.slide is None and told.gap is None

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pinning: two places in the waste of every leaf, its holes there, and how well they are found."""

from __future__ import annotations

import math
from dataclasses import replace

import hypothesis.strategies as st
import numpy as np
import pytest
from hypothesis import given, settings
from shapely.geometry import Point, Polygon, box

from veneerwb.core import Bundle, Fault, Leaf, Motion, Side, Stock, Top, VeneerError, end, radial
from veneerwb.core.fitting import rigid
from veneerwb.core.photos.reading import Photo
from veneerwb.core.shop.cutting.methods import KNIFE, METHODS, SAW, method
from veneerwb.core.shop.cutting.piles import piles
from veneerwb.core.shop.pinning.marks import Reference, hole, laid_off, references
from veneerwb.core.shop.pinning.places import blade_lines
from veneerwb.core.shop.pinning.plan import pinning
from veneerwb.core.sides.wander import kept_wander

PHOTO = Photo.of(np.zeros((140, 48, 3), np.uint8), 10.0)  # 480 x 1400 mm
STOCK = Stock(420.0, 1400.0, 24, 0.6)
TOP = Top.round(800.0)
MARKS = [(30.0, 40.0), (450.0, 1360.0), (40.0, 1350.0)]


def bundle_of(registers, faults=()):
    area = box(0.0, 0.0, *PHOTO.size)
    leaves = tuple(
        Leaf(k, Side(PHOTO, r, r), usable=r.apply_to(box(20.0, 20.0, 460.0, 1380.0)
                                                     ).intersection(area),
             faults=tuple(Fault(r.apply_to(f)) for f in faults))
        for k, r in enumerate(registers, start=1)
    )
    return Bundle(leaves, 0.6)


def shaken(seed, count=12):
    rng = np.random.default_rng(seed)
    shifts = rng.uniform(-12.0, 12.0, (count, 2))
    return [Motion(a, x, y) for a, (x, y) in zip(rng.uniform(-1.0, 1.0, count), shifts)]


# --- where ----------------------------------------------------------------------------------------


@settings(max_examples=15)
@given(st.integers(0, 10**6), st.sampled_from([8, 12]), st.sampled_from(sorted(METHODS)),
       st.floats(-25.0, 25.0), st.floats(250.0, 500.0))
def test_pins_are_never_in_a_cut_or_a_fault_and_on_every_leaf(seed, ways, key, aside, up):
    how = METHODS[key]
    registers, place = shaken(seed), (240.0 + aside, up)
    free = pinning(radial(bundle_of(registers), Top.round(700.0), ways, placement=place), how=how)
    # Faults stand just where the pins would: they must move.
    bundle = bundle_of(registers, [Point(p).buffer(15.0) for p in free.stacks[0].places])
    layout = radial(bundle, Top.round(700.0), ways, placement=place, oversize=8.0)
    (stack,) = pinning(layout, how=how, margin=9.0).stacks
    for piece in layout.pieces:
        blank = piece.onto_bundle.apply_to(piece.blank)
        for place in stack.places:
            assert blank.distance(Point(place)) >= how.clear - 0.1
    for leaf in (bundle.leaf(n) for n in stack.pile.stacked):
        for place in stack.places:
            here = Point(leaf.register.point(place))
            assert leaf.usable.exterior.distance(here) >= 9.0 - 0.01 and leaf.usable.contains(here)
            assert all(f.outline.distance(here) >= 9.0 - 0.3 for f in leaf.faults)
    for line in blade_lines(bundle, stack.pile, how):
        assert min(line.distance(Point(p)) for p in stack.places) >= how.clear - 0.1
    assert stack.free >= how.clear - 0.1


def test_pins_stand_as_far_apart_as_boards_margin_and_cut_allow():
    layout = radial(STOCK, TOP, 12)
    (stack,) = pinning(layout, margin=10.0).stacks
    x0, y0, x1, y1 = layout.cuts[0].outline.bounds
    corner = (STOCK.width - 20.0, y1 - y0 + 2 * KNIFE.around - 20.0)
    assert stack.apart == pytest.approx(math.hypot(*corner), abs=0.01)


def test_where_two_pins_find_no_room_it_says_what_would_do_and_that_does():
    narrow = Stock(2.0 * 400.0 * math.sin(math.radians(15.0)) + 20.0, 424.0, 12, 0.6)
    layout = radial(narrow, TOP, 12, placement=(narrow.width / 2.0, 12.0))
    how = method("knife", clear=130.0)
    with pytest.raises(VeneerError) as refused:
        pinning(layout, how=how)
    assert "glue tabs" in str(refused.value)
    less = refused.value.values["less"]
    assert 10.0 < less < 130.0
    assert pinning(layout, how=method("knife", clear=less)).stacks
    with pytest.raises(VeneerError):
        pinning(layout, how=method("knife", clear=less + 1.0))


def test_leaves_that_do_not_lie_over_each_other_are_refused():
    apart = bundle_of([Motion(), Motion(dx=2000.0)])
    layout = end(apart, Top.rectangle(300.0, 300.0), "continuous", 2)
    with pytest.raises(VeneerError, match="do not lie over each other"):
        pinning(layout)


# --- on each leaf ---------------------------------------------------------------------------------


def test_hung_on_the_pins_by_its_holes_every_leaf_lies_as_its_register_has_it():
    bundle = bundle_of(shaken(3))
    layout = radial(bundle, Top.round(700.0), 12, placement=(240.0, 400.0))
    (stack,) = pinning(layout, dict.fromkeys(bundle.numbers, MARKS)).stacks
    for one in stack.leaves:
        holes = np.array([h.place for h in one.holes])
        found, _ = rigid(np.array(stack.places), holes)
        register = bundle.register(one.leaf, one.back)
        corners = np.array([(0.0, 0.0), (400.0, 0.0), (0.0, 1300.0)])
        assert np.abs(found.apply(corners) - register.apply(corners)).max() < 1e-6
        assert math.dist(*holes) == pytest.approx(stack.apart)


def test_the_figures_lead_to_the_hole():
    # By two circles, and by along and square: worked out anew from what is said.
    for place in ((100.0, 200.0), (420.0, 60.0), (30.0, 1300.0)):
        found = hole(place, references(None, MARKS))
        a, b = (np.array(r.place) for r in (found.a, found.b))
        line = (b - a) / np.linalg.norm(b - a)
        left = np.array((-line[1], line[0]))
        assert a + found.along * line + found.beside * left == pytest.approx(np.array(place))
        along = (found.near**2 - found.far**2 + math.dist(a, b) ** 2) / (2 * math.dist(a, b))
        off = math.copysign(math.sqrt(found.near**2 - along**2), found.beside)
        assert a + along * line + off * left == pytest.approx(np.array(place))
        assert found.near <= found.far


def test_paper_marks_come_before_picked_points_and_corners_of_the_outline_last():
    area = Polygon([(0, 5), (200, 0), (210, 990), (4, 1000)])
    assert {r.kind for r in references(area, MARKS, [(1, 1), (50, 90)])} == {"paper mark"}
    assert [r.name for r in references(area, {0: (9, 9), 3: (400, 9)})] == ["A", "D"]
    picked = references(area, [(5, 5)], [(1, 1), (50, 90)])
    assert [r.name for r in picked] == ["point 1", "point 2"]
    corners = references(area, [(5, 5), (6, 6)])  # too near each other to be measured from
    assert [(r.name, r.place) for r in corners] == [
        ("lower left", (0.0, 5.0)), ("lower right", (200.0, 0.0)),
        ("upper right", (210.0, 990.0)), ("upper left", (4.0, 1000.0)),
    ]


@pytest.mark.parametrize("place", [(60.0, 1000.0), (300.0, 700.0), (42.0, 45.0)])
def test_the_error_told_is_what_a_thousand_measurings_come_to(place):
    marked = tuple(replace(r, known=0.4) for r in references(None, MARKS))
    found = hole(place, marked, 0.5)
    rng = np.random.default_rng(7)
    off = []
    for _ in range(4000):
        a, b = (np.array(r.place) + rng.normal(0.0, 0.4 / math.sqrt(2.0), 2)
                for r in (found.a, found.b))
        line = (b - a) / np.linalg.norm(b - a)
        left = np.array((-line[1], line[0]))
        one, two = rng.normal(0.0, 0.5, 2)
        if found.by_distances:
            near, far, long = found.near + one, found.far + two, math.dist(a, b)
            along = (near**2 - far**2 + long**2) / (2 * long)
            beside = math.copysign(math.sqrt(max(near**2 - along**2, 0.0)), found.beside)
        else:
            along, beside = found.along + one, found.beside + two
        off.append(math.dist(a + along * line + beside * left, place))
    # The standard error of a root mean square of 4000 is about a hundredth of it.
    assert math.sqrt(np.mean(np.square(off))) == pytest.approx(found.error, rel=0.04)


def test_of_all_pairs_of_marks_that_one_is_taken_that_finds_the_hole_best():
    rng = np.random.default_rng(2)
    marked = [Reference(str(k), "paper mark", tuple(p), 0.1 + 0.1 * k)
              for k, p in enumerate(rng.uniform(0.0, 900.0, (6, 2)).tolist())]
    for place in rng.uniform(0.0, 900.0, (20, 2)).tolist():
        pairs = [hole(tuple(place), [a, b]) for a in marked for b in marked if a is not b]
        best = hole(tuple(place), marked)
        assert best.error == pytest.approx(min(pair.error for pair in pairs), abs=1e-3)
        assert max(pair.error for pair in pairs) > 1.2 * best.error
    with pytest.raises(VeneerError, match="too near"):
        hole((0.0, 0.0), [marked[0], replace(marked[0], name="Z")])


def test_what_holes_that_are_off_do_at_the_cut():
    pins = ((0.0, 0.0), (0.0, 1000.0))
    assert laid_off((0.0, 500.0), pins, (0.6, 0.6)) == pytest.approx(0.6 / math.sqrt(2.0))
    assert laid_off((0.0, 0.0), pins, (0.3, 0.9)) == pytest.approx(0.3)
    rng = np.random.default_rng(1)
    place, off = (400.0, 300.0), []
    for _ in range(4000):
        holes = np.array(pins) + rng.normal(0.0, 0.5 / math.sqrt(2.0), (2, 2))
        motion, _ = rigid(holes, np.array(pins))
        off.append(math.dist(motion.point(place), place))
    told = laid_off(place, pins, (0.5, 0.5))
    # The pins cannot stretch a leaf: what the holes' distance is off by counts in full here.
    assert 0.6 * told <= math.sqrt(np.mean(np.square(off))) <= told


def test_pins_nearer_to_each_other_leave_more_error_at_the_cut():
    layout = radial(STOCK, TOP, 12)
    far = pinning(layout).stacks[0].worst.at_cut
    near = pinning(layout, how=method("knife", around=30.0)).stacks[0].worst.at_cut
    assert near > far > 0.0


# --- backs ----------------------------------------------------------------------------------------


def test_turned_leaves_are_pinned_where_the_register_of_their_backs_says():
    registered = bundle_of(shaken(5))
    bundle = kept_wander(registered, (1.0, 6.0), 0.2, "figure", "figure")
    layout = radial(bundle, Top.round(700.0), 12, placement=(240.0, 400.0))
    (stack,) = pinning(layout, spares=0).stacks
    turned = {p.leaf for p in layout.pieces if p.turned}
    assert {one.leaf for one in stack.leaves if one.back} == turned
    for one in stack.leaves:
        assert one.moved == pytest.approx(math.hypot(1.0, 6.0) if one.back else 0.0)
        for h, place in zip(one.holes, stack.places):
            assert h.place == pytest.approx(bundle.register(one.leaf, one.back).point(place))
    assert any("back" in str(note) for note in stack.notes)
    plain = pinning(radial(registered, Top.round(700.0), 12, placement=(240.0, 400.0))).stacks[0]
    assert not any(one.back for one in plain.leaves)


def test_spares_are_pinned_too():
    (stack,) = pinning(radial(STOCK, TOP, 12), spares=2).stacks
    assert [one.leaf for one in stack.leaves if one.spare] == [13, 14]
    assert len(stack.leaves) == 14


def test_every_stack_of_a_job_has_its_own_pins():
    layout = radial(STOCK, TOP, 8, strips=3)
    found = pinning(layout, how=SAW)
    assert [stack.pile.name for stack in found.stacks] == ["A", "B", "C"]
    for stack in found.stacks:
        outline = stack.pile.cuts[0].outline
        assert all(outline.distance(Point(p)) >= SAW.clear - 0.1 for p in stack.places)


def test_a_cut_far_off_the_leaves_is_refused_in_a_sentence():
    with pytest.raises(VeneerError, match="move the cut"):
        pinning(radial(STOCK, TOP, 12, placement=(9000.0, 9000.0)))


def test_the_pins_of_a_saw_keep_clear_of_where_its_blade_runs_on_beyond_the_cut():
    layout = radial(STOCK, TOP, 8, placement=(210.0, 300.0))
    pile = piles(layout)[0]
    lines = blade_lines(STOCK, pile, SAW)
    # Two seams, and two straights for a rim that rises 400 mm (1 - cos 22.5 deg) = 30 mm.
    assert len(lines) == 4 and not blade_lines(STOCK, pile, KNIFE)
    tip = (210.0, 300.0)
    beyond = [line for line in lines if line.distance(Point(tip)) < 1e-6
              and line.intersects(box(0.0, 0.0, 420.0, 290.0))]
    assert len(beyond) == 2  # both seams run on below the tip
    for place in pinning(layout, how=SAW).stacks[0].places:
        assert min(line.distance(Point(place)) for line in lines) >= SAW.clear - 0.1

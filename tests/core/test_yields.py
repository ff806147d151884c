# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a bundle makes: the largest tops by plane geometry and by brute force, and tops side by side
that may all be cut."""

from __future__ import annotations

import itertools
import math
from dataclasses import dataclass, field, replace

import numpy as np
import pytest
from shapely.geometry import Point, Polygon, box
from shapely.ops import unary_union

from veneerwb.core import Fault, Motion, Placement, Stock, Top, VeneerError, radial, sawn_bundle
from veneerwb.core.appeal.maps import Stopped
from veneerwb.core.checks.sufficiency import off_leaf
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.radial import Radial
from veneerwb.core.search import searched
from veneerwb.core.search.task import Task
from veneerwb.core.shop.room import ROOM
from veneerwb.core.yields.largest import largest_tops
from veneerwb.core.yields.packing import tops_from

TOP = Top.round(200.0)
LEAF = box(0.0, 0.0, 300.0, 900.0)
TORN = LEAF.difference(Polygon([(0, 0), (140, 0), (0, 260)]))
HOLED = LEAF.difference(Point(150.0, 500.0).buffer(50.0))


@dataclass(frozen=True)
class Drawn(Leaves):
    """Leaves of any outline, with faults and registers by number."""

    areas: tuple = (LEAF,) * 8
    marks: dict = field(default_factory=dict)
    moves: dict = field(default_factory=dict)
    thickness: float = 0.6
    back: str = "next"

    @property
    def numbers(self):
        return tuple(range(1, len(self.areas) + 1))

    @property
    def size(self):
        return 300.0, 900.0

    def usable(self, number):
        return self.areas[number - 1]

    def faults(self, number):
        return tuple(Fault(mark) for mark in self.marks.get(number, ()))

    def register(self, number, turned):
        return self.moves.get(number, Motion())


def knots(seed, count=3):
    rng = np.random.default_rng(seed)
    x, y, r = (rng.uniform(a, b, count) for a, b in ((20, 280), (20, 880), (5, 20)))
    return [Point(*at).buffer(size) for *at, size in zip(x, y, r)]


def fits(bundle, row, more=0.0, **recipe):
    """Whether the top of a row may be cut at its spot if it reaches `more` mm further."""
    top = row.top.scaled(1.0 + more / row.top.reach)
    recipe = {"turn": "book"} | recipe
    task = Task(bundle, top, Radial(row.ways, placement=row.placement, first=row.first, **recipe))
    return task.fits(task.layout(row.placement, row.first))


# --- the largest tops ---------------------------------------------------------------------------


@pytest.mark.parametrize("ways", [8, 11, 12, 24, 64])
def test_on_a_long_rectangle_a_wedge_lies_with_one_side_along_the_edge(ways):
    # Plane geometry: a sector is narrowest, R sin(360/n), with one side along the leaf; with its
    # axis along the grain it needs 2 R sin(180/n) (an 8 in leaf serves 8 ways up to R 10.453 in).
    (row,) = largest_tops(Stock(200.0, 2400.0, 64, 0.6), TOP, "slip", ways=ways)
    across = 200.0 / math.sin(2.0 * math.pi / ways)
    assert row.reach == pytest.approx(min(2400.0, across), abs=0.11) or across > 2000.0
    assert row.reach >= min(2400.0, 200.0 / (2.0 * math.sin(math.pi / ways))) - 0.1
    if ways == 8:
        assert row.reach >= 200.0 / 8.0 * 10.453 - 0.1


def test_each_of_the_table_fits_and_none_could_be_larger_there():
    stock = Stock(300.0, 700.0, 12, 0.6)
    rows = largest_tops(stock, TOP)
    assert [row.ways for row in rows] == [4, 6, 8, 10, 12]
    for row in rows:
        assert row.reach >= min(700.0, 300.0 / (2.0 * math.sin(math.pi / row.ways))) - 0.1
        assert fits(stock, row) and not fits(stock, row, more=0.5)


def test_polygons_are_told_across_their_flats():
    (row,) = largest_tops(Stock(300.0, 900.0, 4, 0.6), Top.polygon(4, 100.0), ways=4, start=90.0)
    # A square in four ways is four triangles with a right angle at the tip; the hypotenuse s and
    # the height s / 2 lie in 300 x 900 if s / 2 <= 300, s <= 900.
    assert row.size == pytest.approx(600.0, abs=0.1)
    assert row.top.name == "4-sided, 600 mm across flats"


def test_oversize_and_margin_take_of_the_room():
    stock = Stock(200.0, 2400.0, 8, 0.6)
    (plain,), (over,), (inner,) = (
        largest_tops(stock, TOP, ways=8, **more)
        for more in ({}, {"oversize": 10.0}, {"margin": 10.0})
    )
    assert over.reach == pytest.approx(plain.reach - 10.0, abs=0.1)
    assert inner.reach == pytest.approx(plain.reach * 0.9, abs=0.1)


def test_registers_move_the_leaves_over_each_other():
    moves = {2: Motion(dx=40.0), 3: Motion(dx=-20.0)}
    (moved,) = largest_tops(Drawn(moves=moves), TOP, ways=8)
    (still,) = largest_tops(Drawn(), TOP, ways=8)  # no registers
    assert still.reach == pytest.approx(300.0 / math.sin(math.pi / 4.0), abs=0.1)
    assert moved.reach == pytest.approx(240.0 / math.sin(math.pi / 4.0), abs=0.1)
    assert fits(Drawn(moves=moves), moved)


def brute(area, faults, ways):
    """The largest reach of tips 20 mm and directions 6 degrees apart: the nearest of points 2 mm
    apart on all outlines, within the wedge's angle."""
    rings = [ring for part in (area, *faults) for ring in (part.exterior, *part.interiors)]
    points = np.array([
        ring.interpolate(s).coords[0] for ring in rings for s in np.arange(0.0, ring.length, 2.0)
    ])
    best, free = 0.0, area.difference(unary_union(faults)).buffer(-5.0)
    for x, y in itertools.product(np.arange(5.5, 300, 20), np.arange(5.5, 900, 20)):
        if not free.contains(Point(x, y)):
            continue
        away = np.hypot(*(points - (x, y)).T)
        turns = np.degrees(np.arctan2(points[:, 1] - y, points[:, 0] - x))
        for angle in np.arange(0.0, 360.0, 6.0):
            off = np.abs((turns - angle + 180.0) % 360.0 - 180.0)
            best = max(best, away[off <= 180.0 / ways].min(initial=np.inf))
    return best


@pytest.mark.parametrize("ways", [6, 12])
@pytest.mark.parametrize("area, seed", [(HOLED, None), (TORN, None), (LEAF, 1), (TORN, 5)])
def test_holes_torn_corners_and_faults_are_avoided_by_as_large_a_top_as_brute_force_finds(
    area, seed, ways
):
    faults = [] if seed is None else knots(seed)
    bundle = Drawn((area,) * 12, {2: faults[:1], 5: faults[1:]})
    (row,) = largest_tops(bundle, TOP, ways=ways)
    assert fits(bundle, row) and not fits(bundle, row, more=2.0)
    assert row.reach >= brute(area, faults, ways) - 2.0


def test_the_first_leaf_is_chosen():
    small = box(0.0, 0.0, 100.0, 200.0)
    (row,) = largest_tops(Drawn((small, *[LEAF] * 8, small)), TOP, ways=8)
    assert row.first == 2
    assert row.reach > 300.0


def test_what_covers_the_top_may_hide_a_knot():
    # Both ends of the leaf are bad, and wedges of 15 degrees are as long as the leaf allows.
    ends = (box(0.0, 0.0, 300.0, 60.0), box(0.0, 840.0, 300.0, 900.0))
    bundle = Drawn((LEAF,) * 24, {7: ends})
    (bare,) = largest_tops(bundle, Top.round(1600.0), ways=24)
    disc = Point(0, 0).buffer(110.0)
    (covered,) = largest_tops(bundle, Top.round(1600.0), ways=24, hidden=disc)
    assert 780.0 <= bare.reach <= 836.0  # the diagonal of what is good
    assert covered.reach > bare.reach + 40.0


def test_faults_everywhere_leave_no_top():
    area = box(0.0, 0.0, 60.0, 90.0)
    marks = [Point(x, y).buffer(4.0, 4) for x in range(0, 61, 9) for y in range(0, 91, 9)]
    bundle = Drawn((area,) * 4, {3: [unary_union(marks)]})
    (row,) = largest_tops(bundle, TOP)
    assert (row.ways, row.top, row.placement, row.first, row.size) == (4, None, None, None, 0.0)
    assert tops_from(bundle, TOP, 4) == []


def test_fewer_leaves_than_ways_are_told():
    stock = Stock(300.0, 900.0, 3, 0.6)
    assert [row.ways for row in largest_tops(stock, TOP, "slip")] == [3]
    for work in (
        lambda: largest_tops(stock, TOP, "slip", ways=5), lambda: tops_from(stock, TOP, 4),
    ):
        with pytest.raises(VeneerError, match="ways need") as caught:
            work()
        assert caught.value.code == "too-few-leaves"
    with pytest.raises(VeneerError, match="needs 4 leaves or more and there are 3"):
        largest_tops(stock, TOP)


def test_it_can_be_stopped():
    told = []
    largest_tops(Drawn((HOLED,) * 8), TOP, progress=lambda *step: told.append(step))
    assert told[-1][0] == told[-1][1] and len(told) > 5
    for last in (1, len(told) // 2):
        count = itertools.count(1)
        with pytest.raises(Stopped):
            largest_tops(
                Drawn((HOLED,) * 8), TOP, progress=lambda *_, n=last, c=count: next(c) < n
            )
    count = itertools.count(1)
    with pytest.raises(Stopped):
        tops_from(Drawn(), TOP, 8, progress=lambda *_: next(count) < 5)


# --- tops side by side --------------------------------------------------------------------------


def cuts(bundle, top, ways, positions, **recipe):
    for position in positions:
        layout = radial(
            bundle, top, ways, placement=position.placement, first=position.first, **recipe
        )
        assert next(off_leaf(layout, 0.0), None) is None
        yield position.first, layout.cuts[0].outline


def test_triangles_nest_in_a_row_as_often_as_plane_geometry_has_it():
    # Triangles of base b and the height of the strip, tips up and down: k of them are
    # (k + 1) b / 2 long. Twelve sides in twelve ways.
    top = Top.polygon(12, 600.0)
    base = 600.0 * math.tan(math.pi / 12.0)
    for length, expected in ((4.01 * base, 7), (3.99 * base, 6)):
        stock = Stock(length, 300.0, 30, 0.6)
        found = tops_from(stock, top, 12, room=0.0)
        assert len(found) == 2 * expected  # two sub-stacks; six leaves stay over
        assert {p.first for p in found} == {1, 13}


@pytest.mark.parametrize("top, ways", [(Top.round(400.0), 8), (Top.polygon(5, 300.0), 6)])
def test_cuts_keep_room_between_them_and_from_faults(top, ways):
    marks = {n: knots(n, 1) for n in range(1, 13)}
    bundle = Drawn((HOLED,) * 6 + (TORN,) * 6, marks, {4: Motion(1.0, 6.0, -9.0)})
    found = tops_from(bundle, top, ways, oversize=3.0)
    by_first = {}
    for first, cut in cuts(bundle, top, ways, found, oversize=3.0):
        by_first.setdefault(first, []).append(cut)
    assert set(by_first) == ({1} if ways == 8 else {1, 7})
    for outlines in by_first.values():
        assert len(outlines) >= 2
        assert all(
            a.distance(b) >= ROOM - 1e-6 for a, b in itertools.combinations(outlines, 2)
        )
    for position in found:
        task = Task(bundle, top, Radial(ways, oversize=3.0))
        assert task.fits(task.layout(position.placement, position.first))


def test_more_room_makes_fewer_tops():
    stock = Stock(300.0, 600.0, 8, 0.6)
    counts = [len(tops_from(stock, Top.round(300.0), 8, room=room)) for room in (0, ROOM, 60)]
    assert counts[0] > counts[1] > counts[2] > 0


def test_a_wedge_that_only_just_fits_is_one_top():
    reach = 299.9999 / math.sin(math.radians(360.0 / 7.0))
    stock = Stock(300.0, 900.0, 7, 0.6)
    found = tops_from(stock, Top.round(2.0 * reach), 7, "slip")
    assert len(found) >= 1
    assert tops_from(stock, Top.round(2.0 * reach + 1.0), 7, "slip") == []


# --- the search ---------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def bundle():
    return sawn_bundle(8, 120.0, 400.0, mm_per_px=2.0, figure="stripe", knots=0)


def test_a_wedge_with_less_room_than_the_searchs_steps_is_found(bundle):
    reach = 119.99 / math.sin(math.radians(360.0 / 7.0))
    top = Top.round(2.0 * reach)
    found = searched(bundle, top, Radial(7, "slip"))
    best = found.candidates[0]
    assert not np.isfinite(found.sweep.scores).any()  # the sweep missed it
    layout = radial(bundle, top, 7, "slip", best.placement, best.first)
    assert next(off_leaf(layout, 0.0), None) is None


def test_a_wedge_that_fits_nowhere_says_what_would(bundle):
    with pytest.raises(VeneerError) as caught:
        searched(bundle, Top.round(300.0), Radial(6))
    error = caught.value
    # 120 / sin 60 = 138.56, 120 / sin 45 = 169.7: it fits in eight ways.
    assert error.code == "fits-nowhere"
    assert error.values["size"] == pytest.approx(2.0 * 120.0 / math.sin(math.pi / 3.0), abs=0.1)
    assert error.values["fitting"] == (8,)
    assert str(error) == (
        "This top (round, 300 mm) fits nowhere on the leaves in 6 ways; the largest that would is "
        "round, 277.1 mm (reach 138.55 mm), and this one would fit in 8 ways."
    )
    with pytest.raises(VeneerError, match="and in no number of ways would this one fit"):
        searched(bundle, Top.round(1000.0), Radial(6))


def test_faults_everywhere_are_told(bundle):
    faults = (Fault(box(-1.0, -1.0, 121.0, 401.0)),)
    barred = replace(bundle, leaves=tuple(replace(n, faults=faults) for n in bundle.leaves))
    with pytest.raises(VeneerError, match="Between the faults, the edges and the margin no top"):
        searched(barred, Top.round(100.0), Radial(6))


def test_positions_are_placements():
    (one, *_) = tops_from(Stock(300.0, 900.0, 8, 0.6), Top.round(400.0), 8)
    assert isinstance(one.placement, Placement)
    assert one.first == 1

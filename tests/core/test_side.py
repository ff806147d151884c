# SPDX-License-Identifier: LGPL-2.1-or-later
"""Side matches: strips tile the top, and each joint is the mirror, shift or half turn it is to
be."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon

from veneerwb.core import Placement, Stock, Top, VeneerError, check
from veneerwb.core.matches.rows import LEAST_STRIP
from veneerwb.core.matches.side import FACE_KINDS, FACES, TURN_KINDS, TURNED, TURNS, shuffled, side
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc

STOCK = Stock(260.0, 2400.0, 64, 0.6)
SQUARE = Top.polygon(4, 800.0)
PLACE = Placement(130.0, 40.0, 88.0)
HOLED = replace(
    Top.round(900.0),
    holes=((Arc((20.0, 30.0), 45.0, 20.0, -360.0),), (Arc((-200.0, 0.0), 20.0, 0.0, -360.0),)),
)
"""One opening lies across a joint of four strips, the other within a strip."""
NOTCHED = Polygon(
    [(-400, -300), (500, -300), (500, 200), (100, 200), (100, -50), (-150, -50), (-150, 300),
     (-400, 300)],
    [[(200, -200), (300, -200), (300, -100), (200, -100)]],
)  # fmt: skip
TOPS = {"round": Top.round(900.0), "square": SQUARE, "5 sides": Top.polygon(5, 700.0),
        "3 sides": Top.polygon(3, 600.0), "holed": HOLED, "oval": Top.oval(900.0, 600.0),
        "boat": Top.boat(1000.0, 700.0, 450.0), "notched": Top.outline(NOTCHED)}  # fmt: skip


def tiles(layout, region, pieces):
    """Whether outlines tile a region: exact areas sum to its own, and none overlaps another."""
    total = math.fsum(region_area for region_area, _ in pieces)
    assert total == pytest.approx(region.area, rel=1e-9)
    for (_, a), (_, b) in itertools.combinations(pieces, 2):
        assert a.intersection(b).area <= 1e-6


def joint(layout, seam):
    """What takes piece a's place on the bundle to piece b's, on the top."""
    a, b = (layout.pieces[n - 1].onto_bundle for n in (seam.a, seam.b))
    return b.inverse() @ a


def is_mirror(layout, seam):
    motion, line = joint(layout, seam), np.asarray(seam.line.coords)
    return motion.mirrored and float(np.abs(motion.apply(line) - line).max()) < 1e-6


def is_shift(layout, seam):
    motion = joint(layout, seam)
    return not motion.mirrored and abs(math.remainder(motion.angle, 360.0)) < 1e-9


def is_half_turn(layout, seam):
    motion = joint(layout, seam)
    return not motion.mirrored and abs(abs(math.remainder(motion.angle, 360.0)) - 180.0) < 1e-9


def lies(layout, grain=90.0):
    """(least, most) of each finished piece across the grain."""
    return [edges.extent(piece.edge, grain - 90.0) for piece in layout.pieces]


def widths(layout, grain=90.0):
    return [high - low for low, high in lies(layout, grain)]


def leaves(layout):
    return [piece.leaf for piece in layout.pieces]


# --- the pieces tile the top -------------------------------------------------------------------

COMBINED = [
    (turn, face) for turn in TURNS for face in FACES
    if face != "slip-centre-book" or turn in ("book", "slip")
]  # fmt: skip


@settings(max_examples=80)
@given(
    st.sampled_from(sorted(TOPS)), st.sampled_from(COMBINED), st.floats(90.0, 900.0),
    st.floats(-400.0, 400.0), st.sampled_from([0.0, 6.0]),
)  # fmt: skip
def test_pieces_tile_the_top_and_blanks_the_grown_top(name, match, width, grain, oversize):
    top, (turn, face) = TOPS[name], match
    try:
        layout = side(
            STOCK, top, turn, face, width=width, placement=PLACE, grain=grain, oversize=oversize
        )
    except VeneerError as error:
        assert error.code == "slivers"
        return
    tiles(layout, top.region, [(p.area, p.outline) for p in layout.pieces])
    blanks = [(edges.area(p.blank_edge), p.blank) for p in layout.pieces]
    if name != "notched" and (oversize or not top.holes):
        tiles(layout, top.blank_region(oversize), blanks)
    assert all(p.turned == p.onto_bundle.mirrored for p in layout.pieces)
    assert max(widths(layout, grain)) <= width + 1e-6


def test_a_notch_parts_strips_into_pieces_of_one_leaf():
    layout = side(STOCK, TOPS["notched"], width=50.0)
    assert len(layout.pieces) > len({p.leaf for p in layout.pieces}) == 18
    assert all(is_mirror(layout, seam) for seam in layout.seams)


def test_an_opening_across_a_joint_parts_the_joint():
    layout = side(STOCK, HOLED, count=4)
    assert [(s.a, s.b) for s in layout.seams] == [(1, 2), (2, 3), (2, 3), (3, 4)]
    assert sum(len(piece.holes) for piece in layout.pieces) == 1
    assert all(is_mirror(layout, seam) for seam in layout.seams)


@pytest.mark.parametrize("grain", [90.0, 0.0, 33.0, -120.0])
def test_positions_run_left_to_right_with_the_grain_upright(grain):
    layout = side(STOCK, TOPS["round"], count=5, grain=grain)
    at = lies(layout, grain)
    assert [p.position for p in layout.pieces] == [1, 2, 3, 4, 5]
    assert at[0][0] == pytest.approx(-450.0) and at[-1][1] == pytest.approx(450.0)
    for (_, end), (start, _) in zip(at, at[1:]):
        assert start == pytest.approx(end, abs=1e-9)
    for seam in layout.seams:
        (x0, y0), (x1, y1) = seam.line.coords
        turn = math.degrees(math.atan2(y1 - y0, x1 - x0)) - grain
        assert math.remainder(turn, 180.0) == pytest.approx(0.0, abs=1e-9)


# --- each match's motions ----------------------------------------------------------------------


@pytest.mark.parametrize("face", ["balance", "running", "centre balance"])
@pytest.mark.parametrize(("turn", "holds"), [
    ("book", is_mirror), ("slip", is_shift), ("reverse slip", is_half_turn), ("random", is_shift),
])  # fmt: skip
def test_every_joint_is_what_the_match_says(turn, holds, face):
    for top, grain in itertools.product((TOPS["round"], TOPS["5 sides"]), (90.0, 20.0)):
        layout = side(STOCK, top, turn, face, width=170.0, grain=grain, placement=PLACE)
        assert len(layout.seams) == len(layout.pieces) - 1 >= 3
        assert all(holds(layout, seam) for seam in layout.seams)


def test_slip_centre_book_mirrors_at_the_centre_alone():
    layout = side(STOCK, SQUARE, face="slip-centre-book", count=6)
    assert [is_mirror(layout, s) for s in layout.seams] == [False, False, True, False, False]
    assert [is_shift(layout, s) for s in layout.seams] == [True, True, False, True, True]
    assert [p.turned for p in layout.pieces] == [True] * 3 + [False] * 3
    right = side(STOCK, SQUARE, face="slip-centre-book", count=6, turned="right")
    assert [p.turned for p in right.pieces] == [False] * 3 + [True] * 3


def test_which_strips_are_turned_can_be_chosen():
    def turned(**chosen):
        return [p.turned for p in side(STOCK, SQUARE, count=4, **chosen).pieces]

    assert turned() == turned(turned="odd") == [True, False, True, False]
    assert turned(turned="even") == [False, True, False, True]
    assert turned(turn="slip") == [False] * 4
    assert turned(turn="slip", turned="all") == [True] * 4
    mixed = turned(turn="random", turned="random", seed=4)
    assert set(mixed) == {True, False} and mixed == turned(turn="random", turned="random", seed=4)


def test_a_reverse_slip_turns_end_for_end_and_never_over():
    for which, ended in (("even", (False, True)), ("odd", (True, False))):
        layout = side(STOCK, SQUARE, "reverse slip", count=4, turned=which, placement=PLACE)
        assert not any(p.turned for p in layout.pieces)
        angles = [p.onto_bundle.angle - PLACE.angle + 90.0 for p in layout.pieces]
        assert [abs(math.remainder(a, 360.0)) > 90.0 for a in angles] == [*ended, *ended]


@pytest.mark.parametrize("turn", TURNS)
def test_all_strips_of_a_rectangle_are_cut_from_one_field(turn):
    layout = side(STOCK, SQUARE, turn, count=4, placement=Placement(130.0, 40.0))
    assert len(layout.cuts) == 1 and layout.cuts[0].pieces == (1, 2, 3, 4)
    assert layout.cuts[0].outline.bounds == pytest.approx((30.0, 40.0, 230.0, 840.0))


def test_the_placement_is_the_middle_of_a_strips_foot():
    layout = side(STOCK, SQUARE, "slip", count=4, placement=PLACE)
    drawn = layout.pieces[1].onto_bundle.apply((-100.0, -400.0))
    assert drawn == pytest.approx((PLACE.x, PLACE.y))
    head = layout.pieces[1].onto_bundle.apply((-100.0, 400.0)) - drawn
    assert math.degrees(math.atan2(head[1], head[0])) == pytest.approx(PLACE.angle)


def test_unplaced_strips_lie_in_the_middle_of_the_leaves():
    x0, y0, x1, y1 = side(STOCK, SQUARE, "slip", count=4, oversize=5.0).cuts[0].outline.bounds
    assert (x0 + x1, y0 + y1) == pytest.approx((260.0, 2400.0))
    assert (x1 - x0, y1 - y0) == pytest.approx((210.0, 810.0))


# --- counts and widths -------------------------------------------------------------------------


@pytest.mark.parametrize("width", [100.0, 133.0, 200.0, 266.7, 799.0, 801.0])
def test_a_width_gives_the_least_count_that_no_strip_is_wider(width):
    balance = side(STOCK, SQUARE, width=width)
    least = next(n for n in range(1, 65) if 800.0 / n <= width)
    assert widths(balance) == pytest.approx([800.0 / least] * least)
    centred = side(STOCK, SQUARE, face="centre balance", width=width)
    assert len(centred.pieces) == least + least % 2
    booked = side(STOCK, SQUARE, face="slip-centre-book", width=width)
    assert len(booked.pieces) == max(4, least + least % 2)


def test_without_count_or_width_strips_are_as_wide_as_the_leaves_have_room_for():
    layout = side(STOCK, SQUARE, oversize=10.0)
    assert len(layout.pieces) == 4
    assert len(side(STOCK, SQUARE, oversize=31.0).pieces) == 5  # 260 - 62 < 200
    assert not [f for f in check(layout) if f.code == "off-leaf"]
    assert widths(side(STOCK, SQUARE, face="running")) == pytest.approx([260.0] * 3 + [20.0])


def test_a_running_face_cuts_only_its_last_strip_narrower():
    layout = side(STOCK, SQUARE, face="running", width=230.0)
    assert widths(layout) == pytest.approx([230.0, 230.0, 230.0, 110.0])
    assert widths(side(STOCK, SQUARE, face="running", width=200.0)) == pytest.approx([200.0] * 4)


def test_centre_balance_has_a_joint_on_the_centre_line():
    layout = side(STOCK, TOPS["5 sides"], face="centre balance", count=6)
    at = [seam.line.coords[0][0] for seam in layout.seams]
    left, right = edges.extent(TOPS["5 sides"].edge, 0.0)
    assert at[2] == pytest.approx((left + right) / 2.0, abs=1e-9)


@pytest.mark.parametrize(("face", "count", "takes"), [
    ("centre balance", 5, "4 or 6"), ("centre balance", 1, "take 2"),
    ("slip-centre-book", 2, "take 4"), ("slip-centre-book", 3, "take 4"),
    ("slip-centre-book", 7, "6 or 8"),
])  # fmt: skip
def test_a_count_that_the_face_cannot_have_names_the_nearest(face, count, takes):
    with pytest.raises(VeneerError, match=takes) as caught:
        side(STOCK, SQUARE, face=face, count=count)
    assert caught.value.code == "wrong-count" and str(caught.value).count(".") == 1
    for near in map(int, takes.replace("take ", "").split(" or ")):
        assert len(side(STOCK, SQUARE, face=face, count=near).pieces) == near


@pytest.mark.parametrize("width", [198.0, 265.0, 399.0, 114.0, 799.5])
def test_slivers_of_a_running_face_are_refused_with_the_widths_that_do(width):
    for turn in ("book", "slip"):
        with pytest.raises(VeneerError, match="sliver") as caught:
            side(STOCK, SQUARE, turn, "running", width=width)
        values = caught.value.values
        assert values["narrower"] < width < values["wider"]
        for other, more in ((values["narrower"], 0), (values["wider"], -1)):
            layout = side(STOCK, SQUARE, turn, "running", width=other)
            assert len(layout.pieces) == math.ceil(800.0 / width) + more
            assert min(widths(layout)) >= LEAST_STRIP - 1e-6


def test_too_many_strips_are_slivers_and_the_most_is_named():
    top = Top.polygon(4, 605.0)
    with pytest.raises(VeneerError, match="60 or fewer"):
        side(STOCK, top, count=61)
    assert len(side(STOCK, top, count=60).pieces) == 60


@pytest.mark.parametrize(("chosen", "code"), [
    ({"turn": "twist"}, "unknown-choice"), ({"face": "half"}, "unknown-choice"),
    ({"count": 0}, "out-of-range"), ({"count": 2.5}, "out-of-range"),
    ({"count": 4, "width": 200.0}, "count-and-width"), ({"width": 5.0}, "slivers"),
    ({"face": "running", "count": 4}, "running-count"), ({"width": float("nan")}, "not-a-number"),
    ({"turn": "reverse slip", "face": "slip-centre-book"}, "turn-unfit"),
    ({"turned": "left"}, "turned-unfit"), ({"turn": "slip", "turned": "odd"}, "turned-unfit"),
    ({"turned": 3}, "turned-unfit"), ({"oversize": -1.0}, "out-of-range"),
    ({"oversize": 126.0}, "leaves-too-narrow"), ({"grain": "up"}, "not-a-number"),
    ({"order": "spread"}, "not-a-list"), ({"order": [1, 2, 2]}, "wrong-order"),
    ({"order": [1, 2, 99]}, "no-such-leaf"), ({"order": [1, 2], "count": 3}, "wrong-order"),
    ({"order": 7}, "not-a-list"), ({"first": 0}, "out-of-range"), ({"seed": -1}, "out-of-range"),
    ({"first": 62, "count": 4}, "too-few-leaves"), ({"placement": 3}, "not-a-list"),
])  # fmt: skip
def test_what_cannot_be_is_refused_in_one_sentence(chosen, code):
    with pytest.raises(VeneerError) as caught:
        side(STOCK, SQUARE, **chosen)
    assert caught.value.code == code
    assert str(caught.value).endswith(".") and "{" not in str(caught.value)


def test_a_top_narrower_than_a_sliver_is_refused():
    with pytest.raises(VeneerError, match="make it wider"):
        side(STOCK, Top.polygon(4, 9.0))


# --- leaves ------------------------------------------------------------------------------------


def test_leaves_are_taken_in_order_from_the_first_or_as_listed():
    assert leaves(side(STOCK, SQUARE, count=4)) == [1, 2, 3, 4]
    assert leaves(side(STOCK, SQUARE, count=4, first=7)) == [7, 8, 9, 10]
    assert leaves(side(STOCK, SQUARE, order=(9, 2, 5, 4))) == [9, 2, 5, 4]
    listed = side(STOCK, SQUARE, "random", order=(9, 2, 5, 4), seed=8)
    assert leaves(listed) == [9, 2, 5, 4]


def test_steps_between_surfaces_are_those_of_the_match():
    def steps(**chosen):
        return [seam.step for seam in side(STOCK, SQUARE, count=6, **chosen).seams]

    assert steps() == [0, 2, 0, 2, 0]
    assert steps(turned="even") == [2, 0, 2, 0, 2]
    assert steps(turn="slip") == steps(turn="reverse slip") == [1] * 5
    assert steps(face="slip-centre-book") == [1, 1, 0, 1, 1]


@pytest.mark.parametrize("count", [4, 5, 9, 32])
def test_a_random_match_keeps_neighbours_apart_and_is_the_same_for_its_seed(count):
    orders = [shuffled(count, seed) for seed in range(40)]
    for order in orders:
        assert sorted(order) == list(range(count))
        assert all(abs(a - b) > 1 for a, b in zip(order, order[1:]))
    assert orders == [shuffled(count, seed) for seed in range(40)]
    assert len(set(map(tuple, orders))) > 1  # of four leaves there are but two such orders
    top = Top.polygon(4, 100.0 * count)
    layout = side(STOCK, top, "random", count=count, seed=5, first=3, placement=PLACE)
    assert leaves(layout) == [k + 3 for k in orders[5]]


def test_random_orders_stay_what_they_are_on_every_host():
    assert shuffled(8, 1) == [1, 4, 7, 2, 6, 0, 5, 3]
    assert shuffled(1, 1) == [0] and shuffled(2, 1) == [1, 0]
    assert all(shuffled(3, seed) != [0, 1, 2] for seed in range(20))


# --- the tables, and what the checks say -------------------------------------------------------


def test_tables_name_every_match_once_with_its_least_count_and_parity():
    for kinds in (TURN_KINDS, FACE_KINDS):
        assert len({kind.key for kind in kinds}) == len({kind.title for kind in kinds}) == 4
        assert all(kind.line.endswith(".") for kind in kinds)
    for kind in FACE_KINDS:
        for count in range(1, 7):
            if kind.key == "running":
                continue
            allowed = count >= kind.least and (kind.parity == "any" or count % 2 == 0)
            if allowed:
                assert len(side(STOCK, SQUARE, face=kind.key, count=count).pieces) == count
            else:
                with pytest.raises(VeneerError):
                    side(STOCK, SQUARE, face=kind.key, count=count)
    assert set(TURNED) == {*TURNS, "slip-centre-book"}

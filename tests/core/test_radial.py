# SPDX-License-Identifier: LGPL-2.1-or-later
"""Radial matches: the pieces tile the top, and each is cut from the wedge that was placed."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Point
from shapely.ops import unary_union

from veneerwb.core import Motion, Placement, Stock, Top, VeneerError, radial
from veneerwb.core.outlines import edge as edges

STOCK = Stock(400.0, 2400.0, 64, 0.6)
PLACE = Placement(210.0, 320.0, 80.0)
TOPS = {"round": (Top.round(1000.0), math.pi * 500.0**2)} | {
    f"{n} sides": (Top.polygon(n, 1000.0), n * 500.0**2 * math.tan(math.pi / n))
    for n in (3, 4, 5, 7, 12, 31, 64)
}


def layouts_of(ways=(3, 4, 5, 8, 13, 24)):
    for top, _ in (TOPS["round"], TOPS["5 sides"], TOPS["12 sides"]):
        for n in ways:
            for turn in ("slip", "book")[: 2 - n % 2]:
                yield radial(STOCK, top, n, turn=turn, placement=PLACE, start=33.0, oversize=7.0)


def angle_between(a, b):
    return abs(math.remainder(a - b, 360.0))


# --- the pieces tile the top -------------------------------------------------------------------


@pytest.mark.parametrize("name", TOPS)
def test_exact_areas_of_the_pieces_sum_to_the_tops(name):
    top, expected = TOPS[name]
    for ways in range(3, 65):
        layout = radial(STOCK, top, ways, turn="slip", placement=PLACE)
        total = math.fsum(piece.area for piece in layout.pieces)
        assert total == pytest.approx(expected, rel=1e-12)


@settings(max_examples=60)
@given(st.sampled_from(sorted(TOPS)), st.integers(3, 64), st.floats(-1e4, 1e4))
def test_they_do_from_any_start(name, ways, start):
    top, expected = TOPS[name]
    layout = radial(STOCK, top, ways, turn="slip", placement=PLACE, start=start)
    assert math.fsum(p.area for p in layout.pieces) == pytest.approx(expected, rel=1e-12)
    assert all(p.area > 0.0 for p in layout.pieces)


@pytest.mark.parametrize("name", ["round", "3 sides", "5 sides", "12 sides"])
@pytest.mark.parametrize("ways", [3, 8, 11, 24])
@pytest.mark.parametrize("start", [90.0, 12.3])
def test_outlines_overlap_nowhere_and_cover_the_top(name, ways, start):
    top, _ = TOPS[name]
    layout = radial(STOCK, top, ways, turn="slip", placement=PLACE, start=start)
    outlines = [piece.outline for piece in layout.pieces]
    assert all(outline.is_valid and outline.exterior.is_ccw for outline in outlines)
    for i, one in enumerate(outlines):
        assert sum(one.intersection(other).area for other in outlines[i + 1 :]) < 1e-6
    # Both are inscribed in the same true edge, with other corners: they differ by chords' depths.
    missed = unary_union([o.buffer(1e-9) for o in outlines]).symmetric_difference(top.polygon_mm)
    assert missed.area < 0.01 * math.pi * 1100.0


def test_positions_run_counter_clockwise_from_the_start():
    layout = radial(STOCK, Top.round(1000.0), 8, placement=PLACE, start=20.0)
    for piece, expected in zip(layout.pieces, range(20, 380, 45)):
        x, y = piece.outline.centroid.coords[0]
        assert angle_between(math.degrees(math.atan2(y, x)), expected) < 1e-6
    assert [p.position for p in layout.pieces] == list(range(1, 9))


def test_seams_run_from_the_centre_to_the_rim_between_neighbours():
    layout = radial(STOCK, Top.round(1000.0), 6, placement=PLACE)
    assert [(s.a, s.b) for s in layout.seams] == [(1, 2), (2, 3), (3, 4), (4, 5), (5, 6), (6, 1)]
    for seam, direction in zip(layout.seams, range(120, 480, 60)):
        (x0, y0), (x1, y1) = seam.line.coords
        assert (x0, y0) == (0.0, 0.0)
        assert angle_between(math.degrees(math.atan2(y1, x1)), direction) < 1e-9
        assert math.hypot(x1, y1) == pytest.approx(500.0)
    roles = [[segment.role for segment in piece.edge] for piece in layout.pieces]
    assert roles == [["seam", "rim", "seam"]] * 6


@pytest.mark.parametrize("start", [1e300, -1e300, 90.0 + 360.0 * 10**6])
def test_a_start_of_many_turns_costs_no_accuracy(start):
    layout = radial(STOCK, Top.round(1000.0), 8, placement=PLACE, start=start)
    angles = [p.edge[1].sweep for p in layout.pieces]
    assert angles == pytest.approx([45.0] * 8, abs=1e-9)


# --- drawn back into the bundle ----------------------------------------------------------------


def in_wedge(points):
    """Points of the bundle as (along the placed axis, to its left), from the tip."""
    c, s = math.cos(math.radians(PLACE.angle)), math.sin(math.radians(PLACE.angle))
    away = np.asarray(points) - (PLACE.x, PLACE.y)
    return away @ np.array([[c, -s], [s, c]])


@pytest.mark.parametrize("layout", layouts_of())
def test_every_piece_lies_on_the_placed_wedge(layout):
    half = math.tan(math.pi / len(layout.pieces))
    for piece in layout.pieces:
        drawn = in_wedge(piece.onto_bundle.apply(piece.edge[0].start))
        assert drawn == pytest.approx((0.0, 0.0), abs=1e-9)
        points = in_wedge(piece.onto_bundle.apply([s.start for s in piece.edge[1:]]))
        assert (points[:, 0] > 0.0).all()
        assert (np.abs(points[:, 1]) <= half * points[:, 0] + 1e-6).all()
        assert abs(points[0, 1]) == pytest.approx(half * points[0, 0], abs=1e-6)
        first_seam_is_right = points[0, 1] < 0.0
        assert first_seam_is_right != piece.turned
        assert piece.onto_bundle.mirrored == piece.turned


@pytest.mark.parametrize("layout", layouts_of())
def test_book_joints_are_cut_along_one_line_and_slip_joints_are_not(layout):
    for a, b in zip(layout.pieces, [*layout.pieces[1:], layout.pieces[0]]):
        seam = [(0.0, 0.0), a.edge[-1].start]
        apart = np.abs(a.onto_bundle.apply(seam) - b.onto_bundle.apply(seam)).max()
        if a.turned != b.turned:
            assert apart < 1e-9
        else:
            assert apart > 1.0


@pytest.mark.parametrize("layout", layouts_of((4, 7, 12)))
def test_slip_pieces_are_rotations_of_one_another(layout):
    ways = len(layout.pieces)
    for a, b in zip(layout.pieces, layout.pieces[1:]):
        over = b.onto_bundle.inverse() @ a.onto_bundle
        assert over.apply((0.0, 0.0)) == pytest.approx((0.0, 0.0), abs=1e-9)
        if a.turned == b.turned:
            assert not over.mirrored
            assert angle_between(over.angle, 360.0 / ways) < 1e-9
        else:
            assert over.mirrored
            assert over.apply(a.edge[-1].start) == pytest.approx(a.edge[-1].start, abs=1e-9)


def test_slip_laid_all_turned_mirrors_every_piece():
    layout = radial(STOCK, Top.round(1000.0), 5, turn="slip", turned="all", placement=PLACE)
    assert all(p.turned and p.onto_bundle.mirrored for p in layout.pieces)


def test_the_wedge_lies_in_the_middle_unless_placed():
    layout = radial(STOCK, Top.round(1000.0), 8, oversize=10.0)
    tip = layout.pieces[2].onto_bundle.apply((0.0, 0.0))
    assert tip == pytest.approx((200.0, (2400.0 - 510.0) / 2.0))
    axis = layout.pieces[0].onto_bundle.apply((0.0, 100.0)) - tip
    assert axis == pytest.approx((0.0, 100.0))


def test_a_placement_may_be_three_numbers():
    layout = radial(STOCK, Top.round(1000.0), 8, placement=(10, 20, 30))
    assert layout.pieces[0].onto_bundle.apply((0.0, 0.0)) == pytest.approx((10.0, 20.0))


# --- blanks and cuts ---------------------------------------------------------------------------


def test_a_blank_on_the_arc_is_a_larger_sector():
    layout = radial(STOCK, Top.round(1000.0), 12, oversize=15.0, placement=PLACE)
    for piece in layout.pieces:
        assert edges.area(piece.blank_edge) == pytest.approx(math.pi * 515.0**2 / 12.0, rel=1e-12)
        assert piece.area == pytest.approx(math.pi * 500.0**2 / 12.0, rel=1e-12)
        assert piece.blank.buffer(1e-6).covers(piece.outline)


def test_a_straight_rim_touches_the_arc_from_outside():
    layout = radial(STOCK, Top.round(1000.0), 12, rim="straight", oversize=15.0, placement=PLACE)
    for piece in layout.pieces:
        triangle = 515.0**2 * math.tan(math.pi / 12.0)
        assert edges.area(piece.blank_edge) == pytest.approx(triangle, rel=1e-12)
        assert len(piece.blank_edge) == 3


@pytest.mark.parametrize("rim", ["arc", "straight"])
@pytest.mark.parametrize("name", TOPS)
def test_every_blank_covers_its_piece_and_the_oversize(name, rim):
    top, _ = TOPS[name]
    layout = radial(STOCK, top, 8, rim=rim, oversize=5.0, start=11.0, placement=PLACE)
    grown = edges.polygon(top.grown(5.0))
    for piece in layout.pieces:
        tip, *rim_points = piece.blank.exterior.coords
        wedge = piece.outline.union(piece.blank).buffer(1e-3)
        assert piece.blank.buffer(0.02).covers(piece.outline)
        assert grown.buffer(0.02).covers(piece.blank) or rim == "straight"
        assert wedge.covers(piece.blank)
        assert Point(tip).distance(Point(0.0, 0.0)) == 0.0


def test_without_oversize_the_blank_is_the_piece():
    for piece in radial(STOCK, Top.polygon(5, 800.0), 8, placement=PLACE).pieces:
        assert piece.blank_edge == piece.edge


@pytest.mark.parametrize("turn", ["slip", "book"])
@pytest.mark.parametrize("ways", [4, 6, 24, 64])
def test_one_outline_serves_every_piece_of_a_round_ring(turn, ways):
    layout = radial(STOCK, Top.round(1000.0), ways, turn=turn, placement=PLACE, start=7.7)
    (cut,) = layout.cuts
    assert cut.pieces == tuple(range(1, ways + 1))
    first = layout.pieces[0]
    expected = first.onto_bundle.apply_to(first.blank)
    assert cut.outline.equals_exact(expected, 1e-6)  # its own corners, not those of a union


@pytest.mark.parametrize("layout", layouts_of())
def test_the_cut_covers_every_blank_drawn_into_the_bundle(layout):
    (cut,) = layout.cuts
    for piece in layout.pieces:
        drawn = piece.onto_bundle.apply_to(piece.blank)
        assert cut.outline.buffer(0.02).covers(drawn)
        assert cut.outline.area >= drawn.area - 1e-6


def test_unlike_pieces_make_a_cut_larger_than_each():
    layout = radial(STOCK, Top.polygon(5, 1000.0), 8, placement=PLACE)
    (cut,) = layout.cuts
    assert cut.outline.area > 1.01 * max(piece.blank.area for piece in layout.pieces)
    assert cut.outline.geom_type == "Polygon"


# --- the revision ------------------------------------------------------------------------------


class Shifted(Stock):
    """A stock whose leaf 3 was photographed 2 mm to the side."""

    def register(self, number, turned):
        return Motion(dx=2.0 if number == 3 else 0.0)


def test_the_revision_stays_while_nothing_changes():
    one = radial(STOCK, Top.round(1000.0), 8, placement=PLACE)
    same = radial(Stock(400, 2400, 64.0, 0.6), Top.round(1000), 8.0, placement=(210, 320, 80))
    assert one.revision == same.revision == one.revision
    assert len(one.revision) == 6 and one.revision == one.revision.upper()


def test_the_revision_changes_with_everything_that_matters():
    top, plain = Top.round(1000.0), {"ways": 8, "placement": PLACE}
    marks = [radial(STOCK, top, **plain).revision]
    changes = [
        {"ways": 10},
        {"turn": "slip"},
        {"turned": "even"},
        {"first": 2},
        {"order": "spread"},
        {"start": 91.0},
        {"rim": "straight"},
        {"oversize": 1.0},
        {"placement": replace(PLACE, x=210.1)},
        {"placement": replace(PLACE, y=320.1)},
        {"placement": replace(PLACE, angle=80.1)},
    ]
    marks += [radial(STOCK, top, **{**plain, **change}).revision for change in changes]
    for other in (Top.round(1000.1), Top.polygon(8, 1000.0)):
        marks.append(radial(STOCK, other, **plain).revision)
    for stock in (
        replace(STOCK, thickness=0.7),
        replace(STOCK, back="previous"),
        Shifted(400.0, 2400.0, 64, 0.6),
    ):
        marks.append(radial(stock, top, **plain).revision)
    assert len(set(marks)) == len(marks)


# --- what is refused ---------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("settings", "code"),
    [
        *(({"ways": bad}, "out-of-range") for bad in (0, 1, 2, -8, 65, 10**9, 3.5, 1e300)),
        *(({"ways": bad}, "not-a-number") for bad in (math.nan, math.inf, "x", None, 10**400)),
        ({"ways": 7}, "odd-book"),
        ({"turn": "random"}, "unknown-choice"),
        ({"turned": "some"}, "unknown-choice"),
        ({"turned": "all"}, "turned-unfit"),
        ({"turn": "slip", "turned": "odd"}, "turned-unfit"),
        ({"rim": "wavy"}, "unknown-choice"),
        *(({"oversize": bad}, "out-of-range") for bad in (-1, 1e300, 1000.1)),
        ({"oversize": math.nan}, "not-a-number"),
        ({"start": math.inf}, "not-a-number"),
        *(({"placement": (bad, 0.0)}, "not-a-number") for bad in (math.nan, "x", None)),
        *(({"placement": (0.0, bad)}, "out-of-range") for bad in (1e300, -1e6)),
    ],
)
def test_what_cannot_be_is_refused_with_one_sentence(settings, code):
    with pytest.raises(VeneerError) as caught:
        radial(STOCK, Top.round(1000.0), **{"ways": 8, **settings})
    text = str(caught.value)
    assert caught.value.code == code
    assert text[0].isupper() and text.endswith(".") and text.count(". ") == 0
    assert len(text) < 160 and "\n" not in text and "{" not in text


@pytest.mark.parametrize(("ways", "instead"), [(3, "take 4"), (7, "6 or 8"), (63, "62 or 64")])
def test_an_odd_book_ring_is_answered_with_even_ones(ways, instead):
    with pytest.raises(VeneerError, match=instead):
        radial(STOCK, Top.round(1000.0), ways)


def test_a_wedge_that_does_not_fit_is_laid_all_the_same():
    assert len(radial(Stock(20.0, 30.0, 8, 0.6), Top.round(5000.0), 8).pieces) == 8


@pytest.mark.parametrize("off", [0.0, 3e-10, -3e-10, 5e-8])
def test_seams_keep_their_directions_where_the_circle_closes(off):
    layout = radial(Stock(900, 900, 8, 0.6), Top.round(800), ways=4, start=-45.0 + off)
    for k, piece in enumerate(layout.pieces):
        x, y = piece.edge[0].end
        turn = math.radians(-90.0 + off + 90.0 * k)
        assert math.hypot(x - 400 * math.cos(turn), y - 400 * math.sin(turn)) < 1e-10


@pytest.mark.parametrize("options", [{"order": 5}, {"placement": "x"}, {"placement": (1, 2, 3, 4)}])
def test_lists_that_are_none_are_refused(options):
    with pytest.raises(VeneerError):
        radial(Stock(900, 900, 8, 0.6), Top.round(800), ways=4, **options)

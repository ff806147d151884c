# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pieces, seams and cuts of the radial match."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.ops import unary_union

from veneerwb.core import Placement, Stock, Top, radial
from veneerwb.core import edge as edges
from veneerwb.core.edge import Arc

STOCK = Stock(1500.0, 1500.0, 64, 0.6)
TOPS = st.one_of(
    st.floats(50, 3000).map(Top.round),
    st.tuples(st.integers(3, 24), st.floats(50, 3000)).map(lambda p: Top.polygon(*p)),
)


def rings(most: int = 64):
    return st.one_of(
        st.tuples(st.integers(3, most), st.just("slip"), st.sampled_from(["none", "all"])),
        st.tuples(
            st.integers(2, most // 2).map(lambda n: 2 * n),
            st.just("book"),
            st.sampled_from(["odd", "even"]),
        ),
    )


def exact_area(top: Top) -> float:
    """Of a round top pi d^2 / 4; of a polygon n a^2 tan(180/n): plane geometry."""
    if isinstance(top.edge[0], Arc):
        return math.pi * top.reach**2
    sides = len(top.edge)
    return sides * (top.reach * math.cos(math.pi / sides)) ** 2 * math.tan(math.pi / sides)


@settings(deadline=None, max_examples=60)
@given(TOPS, rings(), st.floats(-720, 720))
def test_pieces_tile_the_top(top, ring, start):
    ways, turn, turned = ring
    layout = radial(STOCK, top, ways=ways, turn=turn, turned=turned, start=start)
    assert [piece.position for piece in layout.pieces] == list(range(1, ways + 1))
    assert sum(p.area for p in layout.pieces) == pytest.approx(exact_area(top), rel=1e-11)
    for piece in layout.pieces:
        assert edges.area(piece.edge) > 0
        for one, following in zip(piece.edge, [*piece.edge[1:], piece.edge[0]]):
            assert math.dist(one.end, following.start) < 1e-7
    for a, b in zip(layout.pieces, [*layout.pieces[1:], layout.pieces[0]]):
        assert a.outline.intersection(b.outline).area < 1e-6 * top.area
        assert math.dist(a.edge[-1].start, b.edge[0].end) < 1e-7
    whole = unary_union([p.outline.buffer(1e-6) for p in layout.pieces])
    assert whole.symmetric_difference(top.polygon_mm).area < 1e-3 * top.area / ways + 1.0


@settings(deadline=None, max_examples=60)
@given(
    rings(24),
    st.floats(0, 360),
    st.tuples(st.floats(-500, 500), st.floats(-500, 500), st.floats(-360, 360)),
)
def test_every_piece_is_cut_from_the_same_wedge_of_the_bundle(ring, start, place):
    ways, turn, turned = ring
    where = Placement(*place)
    layout = radial(
        STOCK, Top.round(800), ways=ways, turn=turn, turned=turned, start=start, placement=where
    )
    half = math.radians(180 / ways)
    axis = math.radians(where.angle)
    corners = [
        (where.x + 400 * math.cos(axis + s), where.y + 400 * math.sin(axis + s))
        for s in (-half, half)
    ]
    for piece in layout.pieces:
        assert piece.onto_bundle.mirrored == piece.turned
        tip, first, last = (segment.start for segment in piece.edge)
        drawn = piece.onto_bundle.apply([tip, first, last])
        right, left = corners[::-1] if piece.turned else corners
        np.testing.assert_allclose(drawn, [(where.x, where.y), right, left], atol=1e-9)


def test_positions_run_counter_clockwise_from_the_start():
    layout = radial(STOCK, Top.round(800), ways=8, start=90.0)
    turns = [math.degrees(math.atan2(*p.outline.centroid.coords[0][::-1])) for p in layout.pieces]
    assert [round(turn) % 360 for turn in turns] == [90, 135, 180, 225, 270, 315, 0, 45]


@pytest.mark.parametrize("turned", ["odd", "even"])
def test_both_sides_of_a_book_joint_come_from_one_line_of_the_bundle(turned):
    layout = radial(STOCK, Top.polygon(8, 900), ways=12, turned=turned, start=13.0)
    for seam in layout.seams:
        a, b = (layout.pieces[n - 1] for n in (seam.a, seam.b))
        line = np.array(seam.line.coords)
        np.testing.assert_allclose(a.onto_bundle.apply(line), b.onto_bundle.apply(line), atol=1e-9)
        assert a.turned != b.turned


def test_pieces_of_a_slip_ring_are_rotations_of_one_another():
    layout = radial(STOCK, Top.round(900), ways=5, turn="slip")
    for a, b in zip(layout.pieces, layout.pieces[1:]):
        between = b.onto_bundle.inverse() @ a.onto_bundle
        assert not between.mirrored
        assert between.angle == pytest.approx(72.0) and abs(between.dx) < 1e-9


def test_oversize_moves_the_rim_out_and_leaves_the_seams():
    layout = radial(STOCK, Top.round(1000), ways=12, oversize=15.0)
    for piece in layout.pieces:
        assert max(math.hypot(*s.start) for s in piece.blank_edge) == pytest.approx(515.0)
        assert edges.area(piece.blank_edge) == pytest.approx(math.pi * 515**2 / 12)
        assert piece.area == pytest.approx(math.pi * 500**2 / 12)


def test_a_straight_rim_touches_the_oversize_from_outside():
    layout = radial(STOCK, Top.round(1000), ways=6, rim="straight", oversize=10.0)
    for piece in layout.pieces:
        assert [type(s).__name__ for s in piece.blank_edge] == ["Line"] * 3
        # an equilateral triangle of height 510: area h^2 / sqrt 3
        assert edges.area(piece.blank_edge) == pytest.approx(510.0**2 / math.sqrt(3))
        assert piece.blank.buffer(1e-6).covers(piece.outline)


def test_one_cut_serves_a_round_ring():
    layout = radial(STOCK, Top.round(1000), ways=12, placement=Placement(700, 300, 80))
    (cut,) = layout.cuts
    assert cut.pieces == tuple(range(1, 13))
    assert cut.outline.area == pytest.approx(layout.pieces[0].blank.area)
    for piece in layout.pieces:
        drawn = piece.onto_bundle.apply_to(piece.blank)
        assert cut.outline.symmetric_difference(drawn).area < 1.0


def test_where_pieces_differ_the_cut_holds_every_blank():
    layout = radial(STOCK, Top.polygon(5, 900), ways=12, oversize=8.0)
    (cut,) = layout.cuts
    drawn = [p.onto_bundle.apply_to(p.blank) for p in layout.pieces]
    assert all(cut.outline.buffer(1e-6).covers(blank) for blank in drawn)
    assert cut.outline.area > max(blank.area for blank in drawn) + 1.0
    assert cut.outline.area == pytest.approx(unary_union(drawn).area)


def test_without_a_placement_the_wedge_lies_in_the_middle_along_the_grain():
    layout = radial(Stock(400, 1000, 12, 0.6), Top.round(1200), ways=12, oversize=20.0)
    assert layout.recipe.placement == Placement(200.0, 190.0, 90.0)


def test_the_revision_changes_with_the_layout_and_with_nothing_else():
    options = {"ways": 8, "placement": Placement(700, 300, 90), "oversize": 5.0}
    top = Top.round(800)
    first = radial(STOCK, top, **options).revision
    assert first == radial(Stock(1500, 1500, 64, 0.6), Top.round(800), **options).revision
    others = [
        radial(STOCK, Top.round(801), **options),
        radial(STOCK, top, **{**options, "ways": 10}),
        radial(STOCK, top, **{**options, "placement": Placement(700, 300.1, 90)}),
        radial(STOCK, top, **{**options, "placement": Placement(700, 300, 90.1)}),
        radial(STOCK, top, **{**options, "oversize": 5.1}),
        radial(STOCK, top, **options, first=2),
        radial(STOCK, top, **options, order="spread"),
        radial(STOCK, top, **options, turned="even"),
        radial(STOCK, top, **options, rim="straight"),
        radial(STOCK, top, **options, start=91),
        radial(Stock(1500, 1500, 64, 0.7), top, **options),
    ]
    marks = [layout.revision for layout in others]
    assert len({first, *marks}) == len(others) + 1
    assert all(len(mark) == 6 for mark in marks)

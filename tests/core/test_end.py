# SPDX-License-Identifier: LGPL-2.1-or-later
"""End matches: rows of pieces tile the top, and every joint is a mirror."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from veneerwb.core import Placement, Stock, Top, VeneerError, check
from veneerwb.core.matches.end import END_KINDS, KINDS, end
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc

STOCK = Stock(260.0, 2400.0, 64, 0.6)
SQUARE = Top.polygon(4, 800.0)
PLACE = Placement(130.0, 40.0, 88.0)
HOLED = replace(Top.round(900.0), holes=((Arc((0.0, 10.0), 45.0, 20.0, -360.0),),))
"""The opening lies over the joints' crossing."""
TOPS = {"round": Top.round(900.0), "square": SQUARE, "5 sides": Top.polygon(5, 700.0),
        "holed": HOLED, "oval": Top.oval(900.0, 600.0),
        "boat": Top.boat(1000.0, 700.0, 450.0)}  # fmt: skip


def leaves(layout):
    return [piece.leaf for piece in layout.pieces]


def is_mirror(layout, seam):
    """Whether the two pieces of a joint lie over the bundle as mirror images in it."""
    a, b = (layout.pieces[n - 1].onto_bundle for n in (seam.a, seam.b))
    motion, line = b.inverse() @ a, np.asarray(seam.line.coords)
    return motion.mirrored and float(np.abs(motion.apply(line) - line).max()) < 1e-6


def overlap(a, b):
    """Of two outlines, mm2. Some versions of the library take neighbours along one seam for each
    other now and then, but not when one is smaller by a hair; that areas add up is held above."""
    shared = a.intersection(b).area
    return min(shared, a.buffer(-1e-6).intersection(b).area) if shared > 1e-6 else shared


@settings(max_examples=60)
@given(
    st.sampled_from(sorted(TOPS)), st.sampled_from(KINDS), st.integers(1, 7), st.integers(2, 4),
    st.floats(-400.0, 400.0), st.sampled_from([0.0, 6.0]),
)  # fmt: skip
def test_pieces_tile_the_top_and_blanks_the_grown_top(name, kind, columns, rows, grain, oversize):
    top, rows = TOPS[name], rows if kind == "continuous" else 2
    layout = end(
        STOCK, top, kind, rows * columns, rows=rows, grain=grain, oversize=oversize, placement=PLACE
    )
    # Where a corner's field only just meets a round top, a chip under 1 mm2 is no piece.
    total = math.fsum(p.area for p in layout.pieces)
    assert total == pytest.approx(top.area, rel=1e-9, abs=1e-9 if rows == 2 else 4.0)
    for a, b in itertools.combinations(layout.pieces, 2):
        assert overlap(a.outline, b.outline) <= 1e-6
    if oversize and rows == 2:
        grown = top.blank_region(oversize).area
        assert math.fsum(edges.area(p.blank_edge) for p in layout.pieces) == pytest.approx(grown)
    assert all(p.turned == p.onto_bundle.mirrored for p in layout.pieces)
    assert all(is_mirror(layout, seam) for seam in layout.seams)


@pytest.mark.parametrize("kind", KINDS)
def test_joints_at_the_ends_lie_on_one_straight_across_the_grain(kind):
    layout = end(STOCK, SQUARE, kind, 8, placement=PLACE)
    level = [s.line for s in layout.seams if s.line.coords[0][1] == s.line.coords[1][1]]
    assert len(level) == 4 and {line.coords[0][1] for line in level} == {0.0}
    assert len(layout.seams) == 4 + 2 * 3


def test_a_piece_is_turned_over_where_row_and_column_make_an_odd_sum():
    layout = end(STOCK, SQUARE, count=8)
    assert [p.turned for p in layout.pieces] == [False, True] * 2 + [True, False] * 2
    even = end(STOCK, SQUARE, count=8, turned="even")
    assert [p.turned for p in even.pieces] == [True, False] * 2 + [False, True] * 2
    assert all(is_mirror(even, seam) for seam in even.seams)


def test_positions_run_row_by_row_from_the_first_row():
    def middles(kind, **chosen):
        pieces = end(STOCK, SQUARE, kind, **chosen).pieces
        return [tuple(round(v) for v in p.outline.centroid.coords[0]) for p in pieces]

    upper, lower = [(-200, 200), (200, 200)], [(-200, -200), (200, -200)]
    assert middles("architectural", count=4) == middles("panel", count=4) == upper + lower
    assert middles("continuous", count=4) == lower + upper
    assert middles("continuous", count=4, rows=4) == [(0, y) for y in (-300, -100, 100, 300)]


def test_a_continuous_match_goes_in_order_up_the_wall():
    layout = end(STOCK, SQUARE, "continuous", 12, rows=3, first=5)
    assert leaves(layout) == list(range(5, 17))


def test_all_pieces_of_a_rectangle_are_cut_from_one_field():
    layout = end(STOCK, SQUARE, "panel", 8, placement=Placement(130.0, 40.0))
    assert len(layout.cuts) == 1 and len(layout.cuts[0].pieces) == 8
    assert layout.cuts[0].outline.bounds == pytest.approx((30.0, 40.0, 230.0, 440.0))


def test_columns_follow_from_a_width_or_from_the_leaves():
    assert len(end(STOCK, SQUARE, width=200.0).pieces) == 8
    assert len(end(STOCK, SQUARE, width=199.0).pieces) == 10
    assert len(end(STOCK, SQUARE).pieces) == 8
    assert len(end(STOCK, SQUARE, "continuous", rows=3, width=400.0).pieces) == 6


def test_leaves_can_be_listed_as_they_lie():
    listed = [4, 9, 1, 30]
    for kind in KINDS:
        assert leaves(end(STOCK, SQUARE, kind, order=listed)) == listed


def test_surfaces_meet_at_the_joints_as_the_numbers_say():
    steps = {(s.a, s.b): s.step for s in end(STOCK, SQUARE, count=4, turned="even").seams}
    # Leaf 1 turned shows surface 1, leaf 3 beside it 2, leaf 2 below it 1, leaf 4 turned 4.
    assert steps == {(1, 2): 1, (1, 3): 0, (2, 4): 2, (3, 4): 3}


@pytest.mark.parametrize(("chosen", "code", "says"), [
    ({"count": 7}, "wrong-count", "6 or 8"), ({"count": 1}, "wrong-count", "take 2"),
    ({"kind": "continuous", "count": 8, "rows": 3}, "wrong-count", "6 or 9"),
    ({"kind": "panel", "rows": 3}, "rows-unfit", "take 2"),
    ({"kind": "butt"}, "unknown-choice", "architectural"),
    ({"turned": "none"}, "unknown-choice", "odd"), ({"rows": 1}, "out-of-range", "2"),
    ({"count": 200}, "slivers", "80 or fewer"), ({"order": [1, 2, 3]}, "wrong-count", "2 or 4"),
    ({"count": 8, "width": 90.0}, "count-and-width", "not both"),
    ({"first": 60}, "too-few-leaves", "3 missing"),
])  # fmt: skip
def test_what_cannot_be_is_refused_in_one_sentence(chosen, code, says):
    with pytest.raises(VeneerError, match=says) as caught:
        end(STOCK, SQUARE, **chosen)
    assert caught.value.code == code
    assert str(caught.value).endswith(".") and "{" not in str(caught.value)


def test_the_table_names_every_kind_once():
    assert len({kind.title for kind in END_KINDS}) == len(KINDS) == 3
    for kind in END_KINDS:
        assert len(end(STOCK, SQUARE, kind.key, kind.least).pieces) == kind.least
        with pytest.raises(VeneerError):
            end(STOCK, SQUARE, kind.key, kind.least + 1)


def test_no_finding_on_an_end_match_speaks_of_wedges_ways_or_parity():
    for kind in KINDS:
        layout = end(STOCK, SQUARE, kind, 8, placement=Placement(10.0, 10.0))
        found = check(layout, spares=61, wedge_angle=44.0)
        assert {"off-leaf", "spares-missing", "steps", "loose-faces"} <= {f.code for f in found}
        assert "parity" not in {f.code for f in found}
        for finding in found:
            said = f"{finding.text} {finding.remedy}".replace(",", " ").split()
            assert not {"wedge", "ways", "closing", "ring"} & set(said)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Four-piece matches, boxes, diamonds and herringbone: they tile every top, and their joints are
mirrors or moves."""

from __future__ import annotations

import math

import numpy as np
import pytest
from shapely.geometry import Polygon

from veneerwb.core import Placement, Stock, Top, VeneerError, check
from veneerwb.core.matches.quarters import BOXES, KINDS, QUARTER_KINDS, quarters

STOCK = Stock(900.0, 3000.0, 64, 0.6)
PLACE = Placement(450.0, 1500.0, 80.0)
FOURS = [kind for kind in KINDS if kind != "herringbone"]
QUADRANTS = [kind for kind in FOURS if kind not in BOXES]
WINDOWED = Polygon(
    [(-400, -300), (420, -300), (350, 310), (60, 80), (-380, 300)],
    [[(-60, -50), (-60, 30), (20, 30), (20, -50)], [(100, -200), (150, -100), (160, -210)]],
)
TOPS = {
    "round": Top.round(800.0),
    "square": Top.square(700.0),
    "rectangle": Top.rectangle(1000.0, 600.0),
    "upright rectangle": Top.rectangle(600.0, 900.0),
    "five sides": Top.polygon(5, 700.0),
    "oval": Top.oval(1000.0, 640.0),
    "boat": Top.boat(1200.0, 600.0, 300.0),
    "dented, with openings": Top.outline(WINDOWED),
}


def across(layout):
    """(seam's direction, what takes piece a's place in the bundle to piece b's, points on it)."""
    pieces = {piece.position: piece for piece in layout.pieces}
    for seam in layout.seams:
        (x0, y0), (x1, y1) = seam.line.coords[0], seam.line.coords[-1]
        a, b = pieces[seam.a], pieces[seam.b]
        yield a, b, np.array([(x0, y0), (x1, y1)]), b.onto_bundle.inverse() @ a.onto_bundle


def is_mirror(points, over):
    """Whether a motion is the mirror in the line through two points."""
    return over.mirrored and np.abs(over.apply(points) - points).max() < 1e-9


def grain_of(piece):
    """The direction on the top of the leaf's grain, 0 to 180 degrees."""
    foot, head = piece.onto_bundle.inverse().apply([(0.0, 0.0), (0.0, 1.0)])
    return math.degrees(math.atan2(*(head - foot)[::-1])) % 180.0


# --- they tile ---------------------------------------------------------------------------------


@pytest.mark.parametrize("name", TOPS)
@pytest.mark.parametrize("kind", KINDS)
def test_pieces_tile_every_top(kind, name):
    for turn, corners in (("book", "mitre"), ("slip", "diagonal")):
        layout = quarters(
            STOCK, TOPS[name], kind, turn, corners=corners, oversize=6.0, placement=PLACE
        )
        total = math.fsum(piece.area for piece in layout.pieces)
        assert total == pytest.approx(TOPS[name].area, rel=1e-9)
        outlines = [piece.outline for piece in layout.pieces]
        for i, one in enumerate(outlines):
            assert sum(one.intersection(two).area for two in outlines[i + 1 :]) < 1e-6
        for piece in layout.pieces:
            assert piece.turned == piece.onto_bundle.mirrored
            assert piece.blank.buffer(0.03).covers(piece.outline)


def test_they_do_at_any_slant_and_strip():
    chance = np.random.default_rng(6)
    tops = list(TOPS.values())
    for _ in range(12):
        slant, strip = chance.uniform(5.0, 85.0), chance.uniform(70.0, 250.0)
        top = tops[chance.integers(len(tops))]
        kind = ("diamond", "reverse diamond", "herringbone")[chance.integers(3)]
        layout = quarters(
            STOCK, top, kind, slant=slant, strip=strip, oversize=3.0, placement=PLACE
        )  # fmt: skip
        total = math.fsum(piece.area for piece in layout.pieces)
        assert total == pytest.approx(top.area, rel=1e-9)


# --- joints ------------------------------------------------------------------------------------


@pytest.mark.parametrize("turned", ["even", "odd"])
@pytest.mark.parametrize("name", ["round", "square", "five sides", "oval"])
@pytest.mark.parametrize("kind", QUADRANTS)
def test_book_quadrants_mirror_across_all_four_joints(kind, name, turned):
    layout = quarters(STOCK, TOPS[name], kind, turned=turned, slant=37.0)
    assert {(s.a, s.b) for s in layout.seams} == {(1, 2), (2, 3), (3, 4), (1, 4)}
    for _, _, points, over in across(layout):
        assert is_mirror(points, over)
    assert [p.turned for p in layout.pieces] == [turned == "odd", turned == "even"] * 2


@pytest.mark.parametrize("name", ["round", "square"])
@pytest.mark.parametrize("kind", BOXES)
def test_a_square_box_mirrors_in_all_four_mitres(kind, name):
    for corners in ("mitre", "diagonal"):
        layout = quarters(STOCK, TOPS[name], kind, corners=corners)
        seams = list(across(layout))
        assert len(seams) == 4 and all(is_mirror(points, over) for _, _, points, over in seams)
    assert "box-mirrors" not in {finding.code for finding in check(layout)}


@pytest.mark.parametrize("name", ["rectangle", "upright rectangle"])
@pytest.mark.parametrize("kind", BOXES)
def test_a_box_of_unequal_sides_mirrors_in_two_mitres_and_says_so(kind, name):
    layout = quarters(STOCK, TOPS[name], kind)
    true = {(a.position, b.position) for a, b, points, over in across(layout)
            if is_mirror(points, over)}  # fmt: skip
    assert true == {(1, 4), (2, 3)}
    (width, depth) = np.ptp([segment.start for segment in TOPS[name].edge], axis=0)
    for a, b, points, over in across(layout):
        if a.turned != b.turned:  # at the others it is a mirror moved by the sides' difference
            shift = over.apply(points) - points
            along = abs(width - depth) if (a.position, b.position) not in true else 0.0
            assert np.hypot(*shift.T) == pytest.approx([along] * 2, abs=1e-9)
    (found,) = [finding for finding in check(layout) if finding.code == "box-mirrors"]
    assert found.values["shift"] == pytest.approx(abs(width - depth))


@pytest.mark.parametrize("name", ["rectangle", "upright rectangle"])
def test_mitres_of_a_box_lie_at_45_degrees_and_diagonals_in_the_corners(name):
    top = TOPS[name]
    corners = {tuple(np.round(s.start, 6)) for s in top.edge}
    for option, meets in (("mitre", 2), ("diagonal", 1)):
        layout = quarters(STOCK, top, "box", corners=option)
        ends = [tuple(np.round(p, 6)) for s in layout.seams for p in s.line.coords]
        assert corners <= set(ends)
        assert len(set(ends) - corners) == meets
        for seam in layout.seams:
            (x0, y0), (x1, y1) = seam.line.coords
            lean = math.degrees(math.atan2(y1 - y0, x1 - x0)) % 90.0
            if option == "mitre":
                assert min(abs(lean - 45.0), lean, 90.0 - lean) < 1e-9


@pytest.mark.parametrize("name", TOPS)
@pytest.mark.parametrize("turn", ["book", "slip"])
def test_grain_of_a_box_runs_along_its_sides_and_of_a_reverse_box_square_to_them(turn, name):
    for kind, grains in (("box", [0, 90, 0, 90]), ("reverse box", [90, 0, 90, 0])):
        for corners in ("mitre", "diagonal"):
            layout = quarters(STOCK, TOPS[name], kind, turn, corners=corners)
            at = {}
            for piece in layout.pieces:
                at.setdefault(piece.leaf, math.remainder(grain_of(piece), 180.0))
            for leaf, grain in zip((1, 2, 3, 4), grains):
                assert abs(math.remainder(at[leaf] - grain, 180.0)) < 1e-9


@pytest.mark.parametrize("turn", ["book", "slip"])
@pytest.mark.parametrize("slant", [20.0, 45.0, 70.0])
def test_diamonds_slant_round_the_centre_and_reverse_diamonds_away_from_it(slant, turn):
    for kind, first in (("diamond", 180.0 - slant), ("reverse diamond", slant)):
        layout = quarters(STOCK, TOPS["round"], kind, turn, slant=slant)
        expected = [first, 180.0 - first] * 2
        assert [grain_of(p) for p in layout.pieces] == pytest.approx(expected)


def test_a_slipped_centre_and_butt_shows_the_same_quarter_four_times():
    layout = quarters(STOCK, TOPS["rectangle"], "centre and butt", "slip")
    (cut,) = layout.cuts
    assert cut.outline.area == pytest.approx(500.0 * 300.0)
    for a, b, _, over in across(layout):
        assert not (a.turned or b.turned or over.mirrored) and abs(over.angle) < 1e-12
        assert sorted(abs(over.apply((0.0, 0.0)))) in ([0.0, 500.0], [0.0, 300.0])


@pytest.mark.parametrize("kind", [*BOXES, "diamond", "reverse diamond"])
def test_without_turning_fields_are_turned_about_the_centre(kind):
    layout = quarters(STOCK, TOPS["square"], kind, "slip")
    assert not any(p.turned for p in layout.pieces)
    for piece in layout.pieces[1:]:
        over = piece.onto_bundle.inverse() @ layout.pieces[0].onto_bundle
        assert not over.mirrored and np.abs(over.apply((0.0, 0.0))).max() < 1e-9


@pytest.mark.parametrize("turn", ["book", "slip"])
@pytest.mark.parametrize("slant", [30.0, 45.0, 62.0])
def test_herringbone_strips_slip_along_a_side_and_mirror_at_the_centre_line(slant, turn):
    top = TOPS["rectangle"]
    layout = quarters(STOCK, top, "herringbone", turn, slant=slant, strip=90.0)
    mirrored = moved = 0
    for a, b, points, over in across(layout):
        if abs(a.position - b.position) == 1:  # a pair, right and left
            assert np.abs(points[:, 0]).max() < 1e-9
            assert is_mirror(points, over) == (turn == "book")
            mirrored += 1
        else:
            assert not over.mirrored and abs(over.angle) < 1e-9
            assert math.hypot(*over.apply((0.0, 0.0))) == pytest.approx(
                90.0 / math.cos(math.radians(slant))
            )
            moved += 1
    assert mirrored > 2 and moved > 4
    for piece in layout.pieces:
        right = piece.position % 2 == 1
        assert grain_of(piece) == pytest.approx(slant if right else 180.0 - slant)
        x0, _, x1, _ = piece.outline.bounds
        assert x0 > -1e-9 if right else x1 < 1e-9


def test_what_is_left_over_is_shared_by_the_end_strips():
    layout = quarters(STOCK, TOPS["square"], "herringbone", strip=100.0)
    right = [p for p in layout.pieces if p.position % 2]
    across_strip = (-math.sqrt(0.5), math.sqrt(0.5))
    spans = [np.ptp(np.asarray(p.outline.exterior.coords) @ across_strip) for p in right]
    assert spans[1:-1] == pytest.approx([100.0] * (len(right) - 2))
    assert spans[0] == pytest.approx(spans[-1]) and 50.0 <= spans[0] <= 100.0


# --- leaves, counts, refusals ------------------------------------------------------------------


def test_the_table_names_every_kind_once():
    assert len(set(KINDS)) == len(KINDS) == 6
    for kind in QUARTER_KINDS:
        bundle = Stock(900.0, 3000.0, 40, 0.6)
        assert len(quarters(bundle, TOPS["round"], kind.key).pieces) >= kind.least
        if kind.parity == "four":
            with pytest.raises(VeneerError, match="1 missing"):
                quarters(Stock(900.0, 3000.0, 3, 0.6), TOPS["round"], kind.key)


@pytest.mark.parametrize("kind", KINDS)
def test_leaves_are_taken_in_order_or_as_listed(kind):
    layout = quarters(STOCK, TOPS["square"], kind, first=5)
    count = len(layout.pieces)
    assert [p.leaf for p in layout.pieces] == list(range(5, 5 + count))
    order = list(range(count, 0, -1))
    layout = quarters(STOCK, TOPS["square"], kind, order=order)
    assert [p.leaf for p in layout.pieces] == order


def test_a_piece_for_every_quarter_lies_in_the_middle_unless_placed():
    layout = quarters(STOCK, TOPS["square"], "centre and butt", oversize=10.0)
    x0, y0, x1, y1 = layout.cuts[0].outline.bounds
    assert (x0 + x1, y0 + y1) == pytest.approx((900.0, 3000.0))
    placed = quarters(STOCK, TOPS["square"], "diamond", placement=(300, 500, 90))
    assert placed.pieces[2].onto_bundle.apply((0.0, 0.0)) == pytest.approx((300.0, 500.0))


@pytest.mark.parametrize(
    ("settings", "code"),
    [
        ({"kind": "star"}, "unknown-choice"),
        ({"turn": "random"}, "unknown-choice"),
        ({"corners": "round"}, "unknown-choice"),
        ({"turned": "all"}, "turned-unfit"),
        ({"turned": "some"}, "unknown-choice"),
        *(({"slant": bad}, "out-of-range") for bad in (0.0, 90.0, -45.0, 1e300)),
        ({"slant": math.nan}, "not-a-number"),
        ({"strip": 0.0}, "out-of-range"),
        ({"strip": 9.0}, "slivers"),
        ({"oversize": -1.0}, "out-of-range"),
        ({"order": [1, 2, 3]}, "wrong-order"),
        ({"order": [1, 2, 3, 3]}, "wrong-order"),
        ({"order": [1, 2, 3, 99]}, "no-such-leaf"),
        ({"order": "spread"}, "not-a-list"),
        ({"order": 7}, "not-a-list"),
        ({"first": 63}, "too-few-leaves"),
        ({"placement": (1,)}, "not-a-list"),
        ({"kind": "herringbone", "strip": 12.0}, "too-few-leaves"),
    ],
)
def test_what_cannot_be_is_refused_with_one_sentence(settings, code):
    with pytest.raises(VeneerError) as caught:
        quarters(STOCK, TOPS["square"], **settings)
    text = str(caught.value)
    assert caught.value.code == code
    assert (text[0].isupper() or text[0].isdigit()) and text.endswith(".") and text.count(". ") == 0
    assert len(text) < 180 and "{" not in text


def test_four_that_are_too_wide_are_not_told_to_be_more():
    laid = quarters(Stock(300.0, 1000.0, 8, 0.6), Top.square(700.0), "diamond")
    (found,) = [f for f in check(laid) if f.code == "off-leaf"]
    assert "take wider leaves" in found.remedy and "more pieces" not in found.remedy

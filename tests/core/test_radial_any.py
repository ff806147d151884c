# SPDX-License-Identifier: LGPL-2.1-or-later
"""Radial matches on any top: strips in a wedge, a centre off the middle, a disc, openings."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import Point, Polygon, box

from veneerwb.core import (
    Bundle,
    Fault,
    Leaf,
    Placement,
    Side,
    Stock,
    Top,
    VeneerError,
    check,
    radial,
)
from veneerwb.core.checks.ring import ring_findings
from veneerwb.core.layout import cuts_by_shape
from veneerwb.core.matches.cells import pieces_of
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc
from veneerwb.core.photos.reading import Photo

STOCK = Stock(900.0, 3000.0, 200, 0.6)
PLACE = Placement(450.0, 700.0, 80.0)
DENTED = Polygon([(-400, -300), (420, -300), (350, 310), (40, 60), (-380, 300)])
OPENINGS = [
    [(-160, -50), (-160, 30), (-90, 30), (-90, -50)],
    [(100, -200), (150, -90), (160, -210)],
]
TOPS = {
    "round": Top.round(900.0),
    "five sides": Top.polygon(5, 800.0),
    "rectangle": Top.rectangle(1000.0, 600.0),
    "oval": Top.oval(1000.0, 640.0),
    "racetrack": Top.racetrack(1100.0, 500.0),
    "boat": Top.boat(1200.0, 600.0, 300.0),
    "dented": Top.outline(DENTED),
    "with openings": Top.outline(Polygon(DENTED.exterior.coords, OPENINGS)),
}


def holds(layout):
    """The pieces tile the top, and only turned ones are mirrored."""
    total = math.fsum(piece.area for piece in layout.pieces)
    assert total == pytest.approx(layout.top.area, rel=1e-9)
    outlines = [piece.outline for piece in layout.pieces]
    for i, one in enumerate(outlines):
        assert sum(one.intersection(two).area for two in outlines[i + 1 :]) < 1e-6
    for piece in layout.pieces:
        assert piece.turned == piece.onto_bundle.mirrored
        assert piece.blank.buffer(0.03).covers(piece.outline)


def over(layout, seam):
    """What takes piece a's place in the bundle to piece b's, on the top."""
    pieces = {piece.position: piece for piece in layout.pieces}
    a, b = pieces[seam.a], pieces[seam.b]
    return a, b, b.onto_bundle.inverse() @ a.onto_bundle


# --- tops that need no cells -------------------------------------------------------------------


@pytest.mark.parametrize("name", ["round", "five sides"])
@pytest.mark.parametrize("ways", [3, 8, 13])
def test_round_and_many_sided_tops_are_laid_as_by_cells(name, ways):
    chance = np.random.default_rng(ways)
    for start in (90.0, *chance.uniform(-180.0, 180.0, 3)):
        layout = radial(STOCK, TOPS[name], ways, "slip", PLACE, start=start, oversize=4.0)
        top = layout.top
        pieces = pieces_of(layout.recipe, STOCK, top.region, top.blank_region(4.0))
        for one, two in zip(layout.pieces, pieces):
            assert (one.position, one.leaf, one.turned) == (two.position, two.leaf, two.turned)
            assert one.area == pytest.approx(two.area, rel=1e-12)
            assert one.blank.symmetric_difference(two.blank).area < 1e-6
            points = [(0.0, 0.0), (100.0, 50.0)]
            assert (
                np.abs(one.onto_bundle.apply(points) - two.onto_bundle.apply(points)).max() < 1e-9
            )


def test_their_segments_keep_the_order_tip_rim_tip():
    for piece in radial(STOCK, TOPS["round"], 8, placement=PLACE).pieces:
        assert piece.edge[0].start == piece.edge[-1].end == (0.0, 0.0)
        assert isinstance(piece.edge[1], Arc) and len(piece.edge) == 3


@pytest.mark.parametrize(
    ("settings", "mark"),
    [
        ({}, "round"),
        ({"turn": "slip", "start": 33.0}, "five sides"),
        ({"order": "spread", "oversize": 6.0}, "five sides"),
    ],
)
def test_plain_options_change_no_layout(settings, mark):
    plain = radial(STOCK, TOPS[mark], 8, placement=PLACE, **settings)
    same = radial(
        STOCK, TOPS[mark], 8, placement=PLACE, strips=1, centre=(0, 0), disc=0, **settings
    )
    assert plain == same and plain.revision == same.revision


# --- any top -----------------------------------------------------------------------------------


@pytest.mark.parametrize("name", TOPS)
def test_pieces_tile_any_top_from_any_centre(name):
    chance = np.random.default_rng(len(name))
    for _ in range(3):
        ways, strips = 2 * int(chance.integers(2, 9)), int(chance.integers(1, 4))
        layout = radial(
            STOCK, TOPS[name], ways, ("book", "slip")[chance.integers(2)], PLACE,
            start=chance.uniform(0.0, 360.0), oversize=5.0, strips=strips,
            centre=tuple(chance.uniform(-60.0, 60.0, 2)),
        )  # fmt: skip
        holds(layout)


@pytest.mark.parametrize("name", ["rectangle", "oval", "racetrack", "boat"])
def test_book_joints_mirror_on_any_top(name):
    layout = radial(STOCK, TOPS[name], 12, placement=PLACE, centre=(30.0, -20.0), start=11.0)
    assert len(layout.seams) == 12
    for seam in layout.seams:
        _, _, motion = over(layout, seam)
        points = np.asarray(seam.line.coords)
        assert motion.mirrored and np.abs(motion.apply(points) - points).max() < 1e-9


def test_the_tips_meet_at_the_centre_and_the_middle_is_the_default_place():
    layout = radial(STOCK, TOPS["oval"], 8, centre=(120.0, 40.0))
    tips = [piece.onto_bundle.apply((120.0, 40.0)) for piece in layout.pieces]
    assert np.ptp(tips, axis=0).max() < 1e-9
    x0, y0, x1, y1 = layout.cuts[0].outline.bounds
    assert (x0 + x1, y0 + y1) == pytest.approx((900.0, 3000.0), abs=0.05)


def test_unlike_pieces_share_one_cut_or_are_parted_by_shape():
    layout = radial(STOCK, TOPS["oval"], 8, placement=PLACE)
    (union,) = layout.cuts
    lots = cuts_by_shape(layout.pieces)
    # Two pieces on each axis, and four between of which neighbours are each other's mirror image
    # but lie the same side up.
    assert sorted(len(lot.pieces) for lot in lots) == [2, 2, 2, 2]
    assert union.outline.area > max(lot.outline.area for lot in lots) - 1e-3  # all lie in one lot
    (found,) = [f for f in check(layout) if f.code == "unequal-cuts"]
    apart = layout.top.area / 1e6  # with no oversize nothing is lost
    together = 8e-6 * max(piece.area for piece in layout.pieces)
    assert found.values["lots"] == 4
    assert found.values["apart"] == pytest.approx(apart, rel=1e-9)
    assert found.values["together"] == pytest.approx(together, rel=1e-6)
    assert found.values["saved"] == pytest.approx(100.0 * (1.0 - apart / together), rel=1e-5)
    assert "unequal-cuts" not in {f.code for f in check(radial(STOCK, TOPS["round"], 8))}


def test_a_wedge_that_a_dent_parts_is_two_pieces_of_one_leaf():
    top = Top.outline(Polygon([(-400, -300), (400, -300), (400, 300), (60, 300), (0, -100),
                               (-60, 300), (-400, 300)]))  # fmt: skip
    layout = radial(STOCK, top, 4, placement=PLACE, centre=(0.0, -200.0))
    assert [p.leaf for p in layout.pieces].count(1) == 1  # the centre joins it there
    layout = radial(STOCK, top, 4, "slip", placement=PLACE, centre=(0.0, -500.0))
    holds(layout)


# --- strips ------------------------------------------------------------------------------------


@pytest.mark.parametrize("turn", ["book", "slip"])
@pytest.mark.parametrize("strips", [2, 3, 5])
def test_strips_are_equally_wide_and_slip_along_each_other(strips, turn):
    layout = radial(STOCK, TOPS["round"], 8, turn, PLACE, strips=strips)
    width = 900.0 * math.sin(math.pi / 8.0) / strips
    assert len(layout.pieces) == 8 * strips
    for seam in layout.seams:
        a, b, motion = over(layout, seam)
        points = np.asarray(seam.line.coords)
        if (a.position - 1) // strips == (b.position - 1) // strips:
            assert not motion.mirrored and abs(motion.angle) < 1e-9
            shift = motion.apply((0.0, 0.0))
            assert np.hypot(*shift) == pytest.approx(width)
            along = (points[1] - points[0]) / np.hypot(*(points[1] - points[0]))
            assert abs(shift @ along) < 1e-9  # square to the seam
        elif turn == "book":
            assert motion.mirrored and np.abs(motion.apply(points) - points).max() < 1e-9
        else:
            assert not motion.mirrored and abs(abs(motion.angle) - 45.0) < 1e-9


def test_each_strip_is_a_cut_on_the_middle_of_its_leaf():
    place = Placement(450.0, 700.0, 90.0)
    layout = radial(STOCK, TOPS["round"], 8, placement=place, strips=3)
    assert [len(cut.pieces) for cut in layout.cuts] == [8, 8, 8]
    width = 900.0 * math.sin(math.pi / 8.0) / 3.0
    for cut in layout.cuts:
        x0, _, x1, _ = cut.outline.bounds
        assert (x0, x1) == pytest.approx((450.0 - width / 2.0, 450.0 + width / 2.0), abs=0.01)


@pytest.mark.parametrize("turn", ["book", "slip"])
def test_leaves_of_strips_run_round_in_sequence_or_stay_together_spread(turn):
    ring = radial(STOCK, TOPS["round"], 8, turn, PLACE, strips=3, first=5)
    assert [p.leaf for p in ring.pieces] == list(range(5, 29))
    spread = [p.leaf for p in radial(STOCK, TOPS["round"], 8, turn, PLACE, strips=3,
                                     order="spread").pieces]  # fmt: skip
    assert sorted(spread) == list(range(1, 25))
    wedges = [spread[k : k + 3] for k in range(0, 24, 3)]
    assert all(max(w) - min(w) == 2 and abs(w[1] - w[0]) == 1 for w in wedges)
    assert max(abs(a - b) for a, b in zip(spread, [*spread[1:], spread[0]])) == 4
    listed = list(range(24, 0, -1))
    ring = radial(STOCK, TOPS["round"], 8, turn, PLACE, strips=3, order=listed)
    assert [p.leaf for p in ring.pieces] == listed


# --- rims, discs, openings ---------------------------------------------------------------------


@pytest.mark.parametrize("settings", [{"centre": (60.0, 25.0)}, {"disc": 90.0}])
@pytest.mark.parametrize("name", ["round", "oval", "rectangle"])
def test_a_straight_rim_holds_its_wedge(name, settings):
    layout = radial(STOCK, TOPS[name], 8, placement=PLACE, rim="straight", oversize=5.0, **settings)
    tip = settings.get("centre", (0.0, 0.0))
    for piece in layout.pieces:
        assert len(piece.blank_edge) == 3
        assert piece.blank_edge[0].start == pytest.approx(tip)
        assert piece.blank.buffer(0.02).covers(piece.outline)
        rim = piece.blank_edge[1]
        assert math.dist(rim.start, tip) == pytest.approx(math.dist(rim.end, tip))


@pytest.mark.parametrize("settings", [{"strips": 2}, {"centre": (-200.0, 220.0)}])
def test_a_straight_rim_is_refused_where_a_wedge_is_not_one_piece(settings):
    top = TOPS["with openings"]
    with pytest.raises(VeneerError) as caught:
        radial(STOCK, top, 24, placement=PLACE, rim="straight", **settings)
    assert caught.value.code == "rim-unfit"


def test_a_disc_takes_the_tips_and_blanks_keep_them():
    layout = radial(STOCK, TOPS["round"], 12, placement=PLACE, disc=120.0, oversize=8.0)
    holds(layout)
    sector = math.pi * (450.0**2 - 60.0**2) / 12.0
    for piece in layout.pieces:
        assert piece.area == pytest.approx(sector, rel=1e-12)
        assert edges.area(piece.blank_edge) == pytest.approx(math.pi * 458.0**2 / 12.0, rel=1e-12)
        assert piece.blank.distance(Point(0.0, 0.0)) < 1e-9
        assert piece.outline.distance(Point(0.0, 0.0)) == pytest.approx(60.0, abs=0.02)
        assert [s.role for s in piece.edge].count("disc") == 1
    again = layout.recipe.lay(STOCK, layout.top)  # the disc is not cut twice
    assert again == replace(layout, top=again.top) and len(again.top.holes) == 1


def test_a_fault_under_the_disc_is_not_seen():
    photo = Photo.of(np.zeros((1200, 600, 3), np.uint8), 1.0)
    tip = Fault(box(295.0, 300.0, 305.0, 315.0))
    leaves = [Leaf(k, Side(photo), faults=(tip,) if k == 3 else ()) for k in range(1, 9)]
    bundle = Bundle(tuple(leaves), 0.6)
    place = Placement(300.0, 300.0)
    seen = {f.code for f in check(radial(bundle, TOPS["round"], 8, placement=place))}
    hidden = {f.code for f in check(radial(bundle, TOPS["round"], 8, placement=place, disc=60.0))}
    assert "fault-seen" in seen and "fault-seen" not in hidden
    assert "fault-in-trim" in hidden


def test_a_disc_that_hides_fine_tips_ends_the_warning():
    fine = radial(STOCK, TOPS["round"], 48, placement=PLACE)
    hidden = radial(STOCK, TOPS["round"], 48, placement=PLACE, disc=60.0)
    assert "fine-tips" in {f.code for f in check(fine)}
    assert "fine-tips" not in {f.code for f in check(hidden)}
    covered = check(fine, hidden=Point(0.0, 0.0).buffer(30.0))
    assert "fine-tips" not in {f.code for f in covered}
    aside = radial(STOCK, TOPS["round"], 48, placement=PLACE, centre=(50.0, 0.0))
    assert "fine-tips" in {f.code for f in check(aside, hidden=Point(0.0, 0.0).buffer(30.0))}


def test_an_opening_within_a_piece_is_a_hole_of_it_and_not_of_its_blank():
    layout = radial(STOCK, TOPS["with openings"], 4, placement=PLACE, start=0.0)
    holes = [hole for piece in layout.pieces for hole in piece.holes]
    assert holes and all(edges.area(hole) < 0.0 for hole in holes)
    for piece in layout.pieces:
        assert edges.area(piece.blank_edge) >= piece.area


# --- findings and refusals ---------------------------------------------------------------------


@pytest.mark.parametrize("name", ["oval", "rectangle", "racetrack"])
def test_one_axis_without_a_seam_is_said_on_long_tops(name):
    def found(ways, start):
        layout = radial(STOCK, TOPS[name], ways, placement=PLACE, start=start)
        return [f for f in ring_findings(layout) if f.code == "oval-axes"]

    for ways in (6, 10, 14):
        (finding,) = found(ways, 90.0)
        assert finding.values["nearest"] == (ways - 2, ways + 2)
        assert not found(ways, 90.0 + 7.0)  # no axis has one, so none is missed
    for ways in (4, 8, 12):
        assert not found(ways, 90.0) and not found(ways, 90.0 + 180.0 / ways)


def test_on_a_round_top_axes_do_not_matter():
    for ways in (6, 10):
        codes = {f.code for f in check(radial(STOCK, TOPS["round"], ways, placement=PLACE))}
        assert "oval-axes" not in codes


@pytest.mark.parametrize(
    ("settings", "code"),
    [
        *(({"strips": bad}, "out-of-range") for bad in (0, -1, 13, 1.5)),
        ({"strips": "x"}, "not-a-number"),
        ({"strips": 12, "ways": 64}, "slivers"),
        ({"ways": 64, "strips": 4}, "too-few-leaves"),
        ({"strips": 2, "order": [1, 2, 3]}, "wrong-order"),
        ({"centre": (0.0,)}, "not-a-list"),
        ({"centre": 5}, "not-a-list"),
        ({"centre": (math.nan, 0.0)}, "not-a-number"),
        ({"centre": (5000.0, 0.0), "disc": 10.0}, "disc-too-large"),
        ({"disc": -1.0}, "out-of-range"),
        ({"disc": math.inf}, "not-a-number"),
        ({"disc": 900.0}, "disc-too-large"),
        ({"disc": 700.0, "centre": (200.0, 0.0)}, "disc-too-large"),
    ],
)
def test_what_cannot_be_is_refused_with_one_sentence(settings, code):
    bundle = Stock(900.0, 3000.0, 200 if code != "slivers" else 768, 0.6)
    with pytest.raises(VeneerError) as caught:
        radial(bundle, TOPS["round"], **{"ways": 8, "placement": PLACE, **settings})
    text = str(caught.value)
    assert caught.value.code == code
    assert text.endswith(".") and text.count(". ") == 0 and len(text) < 180 and "{" not in text


@pytest.mark.parametrize("name, centre", [("x", (1e9, 0.0)), ("y", (0.0, -1e6))])
def test_a_centre_far_away_is_refused_by_its_own_name(name, centre):
    with pytest.raises(VeneerError, match=f"centre's {name} cannot be"):
        radial(STOCK, TOPS["oval"], 8, centre=centre)

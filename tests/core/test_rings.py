# SPDX-License-Identifier: LGPL-2.1-or-later
"""Radial matches in two rings: both tile their part, and the line between is a seam."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import Polygon

from veneerwb.core import Placement, Stock, Top, VeneerError, check
from veneerwb.core.checks.ring import ring_findings
from veneerwb.core.matches.radial import Radial
from veneerwb.core.matches.rings import RING_KINDS, Rings, rings
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Line
from veneerwb.core.outlines.joints import joints

STOCK = Stock(900.0, 3000.0, 120, 0.6)
LOW, HIGH = Placement(450.0, 300.0), Placement(450.0, 1500.0)
INNER = Radial(8, placement=LOW)
OUTER = Radial(12, placement=HIGH, first=9, oversize=7.0)
WINDOWED = Polygon(
    [(-500, -350), (500, -350), (420, 340), (-450, 330)], [[(300, 0), (360, 0), (360, 40)]]
)
TOPS = {
    "round": Top.round(900.0),
    "rectangle": Top.rectangle(1100.0, 700.0),
    "oval": Top.oval(1100.0, 700.0),
    "boat": Top.boat(1300.0, 700.0, 450.0),
    "with an opening": Top.outline(WINDOWED),
}
LINES = {
    "circle": 400.0,
    "polygon": Top.polygon(8, 380.0),
    "oval": Top.oval(420.0, 300.0),
    "racetrack": Top.racetrack(420.0, 260.0),
}


@pytest.mark.parametrize("line", LINES)
@pytest.mark.parametrize("name", TOPS)
def test_pieces_of_both_rings_tile_the_top(name, line):
    top = TOPS[name]
    layout = rings(STOCK, top, INNER, OUTER, LINES[line])
    inner, outer = layout.pieces[:8], layout.pieces[8:]
    field = math.pi * 200.0**2 if line == "circle" else getattr(LINES[line], "area", None)
    assert math.fsum(p.area for p in inner) == pytest.approx(field, rel=1e-9)
    assert math.fsum(p.area for p in layout.pieces) == pytest.approx(top.area, rel=1e-9)
    outlines = [piece.outline for piece in layout.pieces]
    for i, one in enumerate(outlines):
        assert sum(one.intersection(two).area for two in outlines[i + 1 :]) < 1e-6
    assert [p.position for p in layout.pieces] == list(range(1, len(outlines) + 1))
    assert len(outer) >= 12
    for piece in layout.pieces:
        assert piece.turned == piece.onto_bundle.mirrored
        assert piece.blank.buffer(0.03).covers(piece.outline)


def test_they_do_in_any_ways_off_the_middle_and_in_strips():
    chance = np.random.default_rng(5)
    for _ in range(4):
        ways = [2 * int(n) for n in chance.integers(2, 8, 2)]
        strips = [int(n) for n in chance.integers(1, 3, 2)]
        centres = [tuple(c) for c in chance.uniform(-40.0, 40.0, (2, 2))]
        first = Radial(ways[0], placement=LOW, strips=strips[0], centre=centres[0],
                       start=chance.uniform(0.0, 360.0), disc=50.0)  # fmt: skip
        second = Radial(ways[1], "slip", HIGH, strips=strips[1], centre=centres[1], first=40,
                        start=chance.uniform(0.0, 360.0))  # fmt: skip
        layout = rings(STOCK, TOPS["rectangle"], first, second, chance.uniform(200.0, 500.0))
        total = math.fsum(p.area for p in layout.pieces)
        assert total == pytest.approx(1100.0 * 700.0 - math.pi * 625.0, rel=1e-9)
        outlines = [piece.outline for piece in layout.pieces]
        for i, one in enumerate(outlines):
            assert sum(one.intersection(two).area for two in outlines[i + 1 :]) < 1e-6


# --- the line between --------------------------------------------------------------------------


def bent(layout):
    return [s for s in layout.seams if s.a <= 8 < s.b]


@pytest.mark.parametrize("line", LINES)
def test_the_line_between_is_a_seam_along_its_whole_length(line):
    layout = rings(STOCK, TOPS["round"], INNER, OUTER, LINES[line])
    top = LINES[line] if line != "circle" else Top.round(400.0)
    whole = edges.polygon(top.edge, 0.001).exterior
    assert sum(s.line.length for s in bent(layout)) == pytest.approx(whole.length, rel=1e-4)
    for seam in bent(layout):
        assert max(whole.distance(seam.line.interpolate(q, True)) for q in (0, 0.3, 0.8, 1)) < 0.03
    # Eight and twelve ways that start alike share no seam's direction: 8 + 12 corners.
    if line in ("circle", "oval"):
        assert len(bent(layout)) == 20


def test_no_oversize_is_cut_along_the_line_between():
    layout = rings(STOCK, TOPS["round"], INNER, OUTER, 400.0)
    for piece in layout.pieces[:8]:
        assert piece.blank_edge == piece.edge
    for piece in layout.pieces[8:]:
        band = math.pi * (457.0**2 - 200.0**2) / 12.0
        assert edges.area(piece.blank_edge) == pytest.approx(band, rel=1e-12)
        roles = [s.role for s in piece.edge if not isinstance(s, Line)]
        assert roles.count("rim") == 1 and set(roles) == {"rim", "seam"}


def test_arcs_of_different_circles_are_no_joint():
    def sector(radius, out):
        field = Top.round(2.0 * radius).edge
        first = edges.run_between(field, 0.0, 90.0)
        arc = replace(first[0], role="seam")
        arc = arc if out else arc.reversed()
        far = (0.0, 0.0) if out else (900.0, 900.0)
        return arc, Line(arc.end, far), Line(far, arc.start)

    assert len(joints([sector(200.0, True), sector(200.0, False)])) == 1
    assert not joints([sector(200.0, True), sector(200.01, False)])
    assert not joints([sector(200.0, True), sector(200.0, True)])  # both on one side of it


def test_mirrors_hold_within_each_ring():
    layout = rings(STOCK, TOPS["round"], INNER, OUTER, 400.0)
    pieces = {p.position: p for p in layout.pieces}
    straight = [s for s in layout.seams if s not in bent(layout)]
    assert len(straight) == 8 + 12
    for seam in straight:
        a, b = pieces[seam.a], pieces[seam.b]
        over = b.onto_bundle.inverse() @ a.onto_bundle
        points = np.asarray(seam.line.coords)
        assert over.mirrored and np.abs(over.apply(points) - points).max() < 1e-9


# --- leaves, cuts, places ----------------------------------------------------------------------


def test_inner_pieces_come_first_and_mere_ways_follow_on():
    layout = rings(STOCK, TOPS["round"], 8, 16, 400.0)
    assert [p.leaf for p in layout.pieces] == list(range(1, 25))
    assert [len(cut.pieces) for cut in layout.cuts] == [8, 16]
    for cut in layout.cuts:
        x0, y0, x1, y1 = cut.outline.bounds
        assert (x0 + x1, y0 + y1) == pytest.approx((900.0, 3000.0), abs=0.05)
    with pytest.raises(VeneerError, match="missing"):
        rings(Stock(900.0, 3000.0, 20, 0.6), TOPS["round"], 8, 16, 400.0)


def test_each_ring_has_its_own_place_on_the_bundle():
    layout = rings(STOCK, TOPS["round"], INNER, OUTER, 400.0)
    for piece in layout.pieces:
        place = LOW if piece.position <= 8 else HIGH
        assert piece.onto_bundle.apply((0.0, 0.0)) == pytest.approx((place.x, place.y))
    assert layout.recipe.lay(STOCK, layout.top) == layout


def test_one_leaf_may_serve_both_rings_where_the_cuts_do_not_overlap():
    apart = rings(STOCK, TOPS["round"], INNER, replace(OUTER, first=1), 400.0)
    assert not [f for f in ring_findings(apart) if f.code == "cut-twice"]
    over = replace(OUTER, first=1, placement=replace(LOW, y=250.0))
    (found,) = [f for f in ring_findings(rings(STOCK, TOPS["round"], INNER, over, 400.0))
                if f.code == "cut-twice"]  # fmt: skip
    assert found.level == "stop" and found.values["leaves"] == tuple(range(1, 9))
    assert found.pieces == tuple(range(1, 17))


def test_findings_of_two_rings_can_be_asked():
    far = replace(OUTER, placement=Placement(450.0, 2900.0))
    codes = {f.code for f in check(rings(STOCK, TOPS["oval"], INNER, far, 300.0))}
    assert {"off-leaf", "unequal-cuts"} <= codes


def test_the_table_of_rings():
    assert [kind.key for kind in RING_KINDS] == ["radial", "radial in strips", "rings"]


@pytest.mark.parametrize(
    ("settings", "code"),
    [
        ({"within": 1200.0}, "field-too-large"),
        ({"within": Top.rectangle(950.0, 100.0)}, "field-too-large"),
        ({"within": 0.0}, "out-of-range"),
        ({"within": math.nan}, "not-a-number"),
        ({"inner": 7}, "odd-book"),
        ({"outer": 2}, "out-of-range"),
        ({"outer": Radial(8, disc=30.0)}, "disc-unfit"),
        ({"inner": Radial(8, oversize=5.0)}, "oversize-unfit"),
        ({"inner": Radial(8, rim="straight")}, "rim-unfit"),
        ({"outer": Radial(8, rim="straight")}, "rim-unfit"),
        ({"inner": Radial(8, disc=400.0)}, "opening-crossed"),
        ({"inner": Radial(8, centre=(400.0, 0.0))}, "field-too-large"),
    ],
)
def test_what_cannot_be_is_refused_with_one_sentence(settings, code):
    with pytest.raises(VeneerError) as caught:
        rings(STOCK, TOPS["round"], **{"inner": INNER, "outer": OUTER, "within": 400.0, **settings})
    text = str(caught.value)
    assert caught.value.code == code
    assert text.endswith(".") and text.count(". ") == 0 and len(text) < 180 and "{" not in text


def test_an_opening_across_the_line_between_is_refused():
    with pytest.raises(VeneerError) as caught:
        Rings(INNER, OUTER, 640.0).lay(STOCK, TOPS["with an opening"])
    assert caught.value.code == "opening-crossed"


def test_steps_are_told_of_the_seams_at_which_figure_is_to_meet():
    """Not of the line between the rings, across which leaf 1 meets leaf 9 and others."""
    laid = rings(Stock(300, 900, 24, 0.6), Top.round(1000), 8, 16)
    (told,) = [f for f in check(laid) if f.code == "steps"]
    assert max(s.step for s in laid.seams) > 14
    assert told.values["largest"] == 14 and len(told.values["steps"].split()) == 24

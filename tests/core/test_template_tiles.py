# SPDX-License-Identifier: LGPL-2.1-or-later
"""A template on sheets of paper: the sheets hold all of it, share their strips and can be read."""

from __future__ import annotations

import math

import pytest
from shapely.geometry import LineString, Point, box
from shapely.ops import unary_union

from veneerwb.core import Stock, Top, VeneerError, radial
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.outlines import edge as edges
from veneerwb.core.shop.drawing.drawn import Letters, Stroke
from veneerwb.core.shop.drawing.legible import troubles
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.drawing.paper import PAPERS, Box
from veneerwb.core.shop.pages.template import pages
from veneerwb.core.shop.templates.make import StackCut, templates
from veneerwb.core.shop.templates.over import Over
from veneerwb.core.shop.templates.template import Pin
from veneerwb.core.shop.templates.tiles import MARGIN, OVERLAP, clipped, row_name, tiled

STOCK = Stock(900.0, 3000.0, 64, 0.6)
A4 = PAPERS["A4 upright"]
TOPS = (
    Top.round(560.0), Top.oval(640.0, 440.0), Top.boat(760.0, 400.0, 220.0),
    Top.polygon(7, 560.0), Top.rectangle(640.0, 420.0),
)  # fmt: skip


def ring(ways, top=None, **more):
    layout = radial(STOCK, top or Top.round(1200.0), ways, oversize=10.0,
                    turn="slip" if ways % 2 else "book")
    return templates(layout, **more)[0]


def shown(tile):
    return box(tile.shown.x, tile.shown.y, tile.shown.right, tile.shown.top)


LAID = {
    "12 ways on A4": (ring(12), A4),
    "12 ways on ANSI A": (ring(12), PAPERS["ANSI A upright"]),
    "3 ways on A3": (ring(3), PAPERS["A3"]),
    "64 ways on A4 lying": (ring(64, overs=Over(width=2.0)), PAPERS["A4"]),
    "oval on ANSI D": (ring(24, Top.oval(1500.0, 900.0), tool=6.0), PAPERS["ANSI D"]),
    "small on A4": (ring(6, Top.round(200.0)), A4),
    "with pins": (ring(12, cuts=[StackCut(tuple(range(1, 13)), "", (
        Pin((450.0, 100.0), "A"), Pin((700.0, 1500.0), "B")))]), A4),
}
every = pytest.mark.parametrize("name", LAID)


@every
def test_every_part_of_a_template_is_on_a_sheet_and_no_sheet_is_empty(name):
    template, paper = LAID[name]
    tiling = tiled(template, paper)
    sheets = [shown(tile) for tile in tiling.tiles]
    outer = tiling.turned.apply_to(edges.polygon(template.tool_line or template.cut))
    pins = [tiling.turned.apply_to(Point(p.at).buffer(p.diameter / 2.0)) for p in template.pins]
    assert unary_union(sheets).buffer(1e-6).contains(unary_union([outer, *pins]))
    drawn = unary_union([outer, *pins]).buffer(3.0)
    for tile in tiling.tiles:
        cell = box(tile.cell.x, tile.cell.y, tile.cell.right, tile.cell.top)
        assert cell.intersects(drawn) or template.pins
        assert (tile.shown.wide, tile.shown.high) == pytest.approx(
            (tiling.field.wide, tiling.field.high))
        assert tile.name == row_name(tile.row) + str(tile.column + 1)
    assert len({tile.name for tile in tiling.tiles}) == len(tiling.tiles)


@every
def test_neighbours_share_a_strip_with_two_marks_in_its_middle(name):
    tiling = tiled(*LAID[name])
    by_place = {(tile.row, tile.column): tile for tile in tiling.tiles}
    for (row, column), tile in by_place.items():
        for other in (by_place.get((row, column + 1)), by_place.get((row + 1, column))):
            if other is None:
                continue
            strip = shown(tile).intersection(shown(other))
            x0, y0, x1, y1 = strip.bounds
            assert min(x1 - x0, y1 - y0) == pytest.approx(OVERLAP)
            both = [m for m in tiling.registers if set(m.tiles) == {tile.name, other.name}]
            assert len(both) == 2
            across = 0 if x1 - x0 < y1 - y0 else 1
            middle = ((x0 + x1) / 2.0, (y0 + y1) / 2.0)[across]
            assert [mark.at[across] for mark in both] == pytest.approx([middle] * 2, abs=1e-6)
            assert all(strip.contains(Point(mark.at)) for mark in both)
            assert math.dist(both[0].at, both[1].at) > 50.0
    names = [mark.name for mark in tiling.registers]
    assert len(set(names)) == len(names)
    for mark in tiling.registers:
        assert [mark in tiling.marks_on(tile) for tile in tiling.tiles].count(True) == 2


def test_a_template_is_turned_so_that_it_takes_few_sheets():
    """A wedge of 12 ways and R 600 fills six cells of A4 as it stands, five along its seam."""
    assert len(tiled(ring(12), A4).tiles) == 5
    assert len(tiled(ring(6, Top.round(200.0)), A4).tiles) == 1


@pytest.mark.parametrize("far", [0.0, 1500.0])
def test_sheets_hang_together_even_where_a_pin_stands_far_off(far):
    pins = (Pin((450.0, 100.0 + far), "A"),)
    for ways in (12, 24, 64):
        template = ring(ways, cuts=[StackCut(tuple(range(1, ways + 1)), "", pins)])
        places = {(t.row, t.column) for t in tiled(template, A4).tiles}
        joined = [min(places)]
        for row, column in joined:
            sides = ((row + 1, column), (row - 1, column), (row, column + 1), (row, column - 1))
            joined += [near for near in sides if near in places and near not in joined]
        assert set(joined) == places


def test_more_sheets_than_anyone_joins_are_refused():
    with pytest.raises(VeneerError) as caught:
        tiled(templates(radial(Stock(9e4, 9e4, 12, 0.6), Top.round(30000.0), 4))[0], A4)
    assert caught.value.code == "too-many-sheets" and "larger paper" in str(caught.value)


@pytest.mark.parametrize("name", ["12 ways on A4", "oval on ANSI D", "3 ways on A3"])
def test_clipping_keeps_true_segments_and_loses_nothing(name):
    template, paper = LAID[name]
    tiling = tiled(template, paper)
    cut = tuple(segment.moved(tiling.turned) for segment in template.cut)
    for tile in tiling.tiles:
        runs = clipped(cut, tile.shown)
        kinds = {type(s) for run in runs for s in run}
        assert kinds <= {type(s) for s in cut}
        field = shown(tile)
        inside = LineString([*edges.points(cut, 0.001), cut[0].start]).intersection(field).length
        assert sum(s.length for run in runs for s in run) == pytest.approx(inside, abs=0.01)
        for run in runs:
            for a, b in zip(run, run[1:]):
                assert math.dist(a.end, b.start) < 1e-5
            assert all(field.buffer(1e-6).contains(Point(s.at(share)))
                       for s in run for share in (0.0, 0.3, 0.7, 1.0))


def test_a_loop_that_lies_within_is_one_run():
    whole = Top.oval(100.0, 60.0).edge + ()
    assert clipped(whole, Box(-60.0, -60.0, 120.0, 120.0)) == [whole]
    (half,) = clipped(whole, Box(-60.0, 0.0, 120.0, 120.0))
    assert sum(s.length for s in half) == pytest.approx(whole[0].length / 2.0)


def read(found, paper):
    """What is in the way of reading the pages, the sheets within the printer's margin."""
    within = Box(MARGIN, MARGIN, paper.wide - 2.0 * MARGIN, paper.high - 2.0 * MARGIN)
    words = [page.code.endswith(("-map", "-words")) for page in found]
    return [
        (page.code, text) for page, plain in zip(found, words)
        for text in troubles(page, None if plain else within)
    ]


NAME = 'The long table of the house by the river, "north" <2> & more'


@pytest.mark.parametrize(
    ("ways", "paper"),
    [(3, "A4 upright"), (12, "ANSI A upright"), (24, "A4"), (64, "A3"), (64, "ANSI A")],
)
def test_pages_of_any_number_of_ways_can_be_read(ways, paper):
    over = Over(angle=0.4) if ways > 3 else Over()
    template = ring(ways, overs=over, tool=3.0, name=NAME, rests="Rests on the figure of 7 leaves.")
    look = Look(paper=PAPERS[paper], title=NAME, lengths=Lengths("both"), revision="ABC123")
    assert read(pages(template, look), PAPERS[paper]) == []


@pytest.mark.parametrize("k", range(len(MATCHES)))
def test_pages_of_every_match_can_be_read(k):
    layout = MATCHES[k].sample(STOCK, TOPS[k % len(TOPS)])
    found = templates(layout, Over(width=1.0))
    for template in (found[0], templates(layout, singly=True)[-1]):
        assert read(pages(template, Look(paper=A4, title="Top")), A4) == []


def test_pages_with_pins_name_them_and_can_be_read():
    found = pages(LAID["with pins"][0], Look(paper=A4))
    assert read(found, A4) == []
    texts = [m.text for page in found for m in page.drawing.marks if isinstance(m, Letters)]
    assert "A" in texts and "B" in texts
    holes = [m for m in found[0].drawing.marks if isinstance(m, Stroke)
             and isinstance(m.edge[0], edges.Arc) and m.edge[0].sweep == 360.0]
    assert len(holes) == 2 and any("circles: holes for the pins" in text for text in texts)


@every
def test_every_sheet_says_what_it_is_and_carries_its_bars(name):
    template, paper = LAID[name]
    found = pages(template, Look(paper=paper, title="Top"))
    tiling = tiled(template, paper)
    map_page, *sheets = found
    assert [page.code for page in sheets] == [f"cut-1-{tile.name}" for tile in tiling.tiles]
    for k, page in enumerate(found, start=1):
        texts = [m.text for m in page.drawing.marks if isinstance(m, Letters)]
        said = " ".join(texts)
        assert template.revision in said and template.name in said
        lines = [m.edge[0] for m in page.drawing.marks if isinstance(m, Stroke)]
        spans = [(abs(s.end[0] - s.start[0]), abs(s.end[1] - s.start[1])) for s in lines]
        assert any(s == pytest.approx((100.0, 0.0), abs=1e-9) for s in spans)
        assert any(s == pytest.approx((0.0, 100.0), abs=1e-9) for s in spans)
        assert "it to page shrinks a sheet" in said and "100 mm" in texts
        if page is map_page:
            assert all(tile.name in texts for tile in tiling.tiles)
            assert "Dry-lay before glue" in said and "FACES up" in said
            assert f"{k}/{len(found)}" in texts
        else:
            assert f"page {k} of {len(found)}" in said
    faces = [m.text for page in sheets for m in page.drawing.marks if isinstance(m, Letters)]
    assert "FACE UP" in faces and "GRAIN" in faces
    assert "TIP" in faces


def test_words_that_find_no_room_beside_the_map_have_a_page_of_their_own():
    rests = "A sentence on what the registers rest, which is a very long one. " * 25
    template = ring(12, rests=rests.strip())
    first, second, *_ = pages(template, Look(paper=A4))
    assert (first.code, second.code) == ("cut-1-map", "cut-1-words")
    said = " ".join(m.text for page in (first, second) for m in page.drawing.marks
                    if isinstance(m, Letters))
    assert said.count("which is a very long one.") == 25 and "..." not in said
    assert "Local codes and the makers' sheets come first." in said

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The taping plan on paper: it can be read, shows what is apart and what is taped, and is mirrored
where it is to be."""

from __future__ import annotations

import math

import pytest
from shapely.geometry import Polygon
from shapely.ops import unary_union

from veneerwb.core import Radial, Stock, Top, radial
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.shop.drawing.drawn import RED, Drawing, Letters, Stroke
from veneerwb.core.shop.drawing.legible import troubles, troubles_of
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.drawing.paper import PAPERS, Box
from veneerwb.core.shop.pages import taping as taping_pages
from veneerwb.core.shop.pages.taping_figures import BAND, TAPE, draw_step
from veneerwb.core.shop.taping.plan import CLOSE, TRUE, taping

STOCK = Stock(900.0, 3000.0, 70, 0.6)
RESTS = "Registered on the figure of the photographs; the backs take the register of their faces."
FIELD = Box(0.0, 0.0, 100.0, 80.0)


def look(paper="A3"):
    return Look(PAPERS[paper], title="Top <&>", revision="AB12CD", rests=RESTS)


def pages_of(layout, paper="A3", **how):
    return taping_pages.pages(taping(layout, **how), look(paper))


def words(page):
    return " ".join(mark.text for mark in page.drawing.marks if isinstance(mark, Letters))


def readable(pages):
    assert [found for page in pages for found in troubles(page)] == []


@pytest.mark.parametrize("paper", ["A3", "A4", "A4 upright", "A1", "ANSI A"])
@pytest.mark.parametrize("ways", [3, 12, 24, 64])
def test_rings_can_be_read_on_any_paper(ways, paper):
    turn = "slip" if ways % 2 else "book"
    pages = pages_of(radial(STOCK, Top.round(1200.0), ways, turn), paper)
    readable(pages)
    assert len({page.code for page in pages}) == len(pages)
    assert all(page.drawing.wide == PAPERS[paper].wide for page in pages)
    assert all(RESTS in words(page) and "Dry-lay before glue" in words(page) for page in pages)


@pytest.mark.parametrize("match", MATCHES, ids=lambda match: match.key)
def test_every_match_can_be_read(match):
    layout = match.sample(STOCK, Top.rectangle(1200.0, 800.0))
    pages = pages_of(layout, face_down=match.key.startswith("r"))
    readable(pages)
    plan = taping(layout)
    said = " ".join(map(words, pages))
    for step in plan.steps:
        assert f"{step.number}  {step.title}" in said or f"{step.number} {step.title}" in said
    for piece in layout.pieces:
        assert f"L{piece.leaf}" in said or "has its number" in said


def test_where_there_is_room_every_piece_has_its_number_in_every_step():
    plan = taping(radial(STOCK, Top.round(1200.0), 24))
    for step in plan.steps:
        drawing = Drawing(100.0, 80.0)
        draw_step(drawing, FIELD, plan, step)
        numbers = [mark.text for mark in drawing.marks if isinstance(mark, Letters)]
        assert sorted(n for n in numbers if n.isdecimal()) == sorted(map(str, range(1, 25)))


def fills(drawing):
    """The pieces as they lie on the paper."""
    return [
        Polygon([p for segment in mark.edge for p in segment.points()])
        for mark in drawing.marks
        if isinstance(mark, Stroke) and mark.weight == 0.0 and mark.fill
    ]


@pytest.mark.parametrize("key", ["radial book", "radial slip", "panel", "herringbone", "diamond",
                                 "radial in strips", "slip"])  # fmt: skip
def test_what_lies_apart_is_drawn_apart_and_what_is_taped_together(key):
    (match,) = (m for m in MATCHES if m.key == key)
    plan = taping(match.sample(STOCK, Top.round(900.0)))
    for step in plan.steps:
        drawing = Drawing(100.0, 80.0)
        draw_step(drawing, FIELD, plan, step)
        assert troubles_of(drawing.marks, FIELD) == []
        shown = sorted(p for group in step.groups for p in group)
        pieces = dict(zip(shown, fills(drawing)))
        groups = [unary_union([pieces[p].buffer(0.02) for p in g]) for g in step.groups]
        assert all(group.geom_type == "Polygon" for group in groups)
        for k, one in enumerate(groups):
            assert all(one.distance(other) > 0.5 for other in groups[:k])


def test_tape_lies_on_the_seams_that_a_step_closes_and_red_on_those_that_are_trued():
    plan = taping(radial(STOCK, Top.round(900.0), 12))
    for step in plan.steps:
        drawing = Drawing(100.0, 80.0)
        draw_step(drawing, FIELD, plan, step)
        strokes = [mark for mark in drawing.marks if isinstance(mark, Stroke)]
        taped = [m for m in strokes if m.colour == TAPE]
        red = [m for m in strokes if m.colour == RED]
        assert len(taped) == (0 if step.kind == TRUE else len(step.closes))
        assert all(m.weight == BAND for m in taped)
        assert len(red) == (2 * len(step.closes) if step.kind == TRUE else 0)
        if step.kind == CLOSE:
            ways = {round(_direction(m) % 180.0, 3) for m in taped}
            assert len(ways) == 1  # one diameter


def _direction(stroke):
    (ax, ay), (bx, by) = stroke.edge[0].start, stroke.edge[-1].end
    return math.degrees(math.atan2(by - ay, bx - ax))


def test_an_odd_ring_shows_the_seam_that_is_still_open():
    plan = taping(radial(STOCK, Top.round(900.0), 13, "slip"))
    drawings = []
    for step in plan.steps[-2:]:
        drawings.append(Drawing(100.0, 80.0))
        draw_step(drawings[-1], FIELD, plan, step)
    dashed = [[m for m in d.marks if isinstance(m, Stroke) and m.dashes] for d in drawings]
    assert [len(found) for found in dashed] == [1, 0] and dashed[0][0].colour == RED


def test_face_down_is_the_mirror_image_and_every_picture_says_so():
    layout = radial(STOCK, Top.round(1200.0), 12)
    up, down = taping(layout), taping(layout, face_down=True)
    for step in up.steps:
        one, other = Drawing(100.0, 80.0), Drawing(100.0, 80.0)
        draw_step(one, FIELD, up, step)
        draw_step(other, FIELD, down, step)
        for a, b in zip(fills(one), fills(other)):
            assert a.centroid.x - 50.0 == pytest.approx(50.0 - b.centroid.x, abs=1e-6)
            assert a.centroid.y == pytest.approx(b.centroid.y, abs=1e-6)
    pages = taping_pages.pages(down, look())
    readable(pages)
    assert sum(words(p).count("mirrored: show face down") for p in pages) == len(down.steps)
    assert all("Mirror image" in words(page) for page in pages)
    assert "mirrored: show" not in " ".join(words(p) for p in taping_pages.pages(up, look()))


def test_the_leaf_with_its_back_up_is_underlined():
    layout = radial(STOCK, Top.round(1200.0), 12)
    for face_down, backs in ((False, range(1, 13, 2)), (True, range(2, 13, 2))):
        plan = taping(layout, face_down=face_down)
        assert {p.position for p in plan.pieces if p.side_up == "back"} == set(backs)
        drawing = Drawing(200.0, 200.0)
        draw_step(drawing, Box(0.0, 0.0, 200.0, 200.0), plan, plan.steps[0])
        labels = {m.text: m for m in drawing.marks if isinstance(m, Letters)}
        lines = [
            m for m in drawing.marks
            if isinstance(m, Stroke) and len(m.edge) == 1 and 1.0 < m.edge[0].length < 12.0
        ]  # fmt: skip
        marked = {
            text for text, m in labels.items() for line in lines
            if math.dist(m.at, line.edge[0].at(0.5)) < 3.0 and text.isdecimal()
        }
        assert marked == set(map(str, backs))


def test_assemblies_are_named_outside_where_numbers_have_no_room():
    plan = taping(radial(STOCK, Top.round(1200.0), 64))
    drawing = Drawing(80.0, 80.0)
    draw_step(drawing, Box(0.0, 0.0, 80.0, 80.0), plan, plan.steps[2])
    names = {m.text for m in drawing.marks if isinstance(m, Letters)}
    assert len(names) == 16 and "1-4" in names and "61-64" in names
    assert troubles_of(drawing.marks, Box(0.0, 0.0, 80.0, 80.0)) == []


def test_the_recipe_of_a_ring_speaks_of_tips_and_rows_do_not():
    ring = words(pages_of(Radial(8).lay(STOCK, Top.round(900.0)))[-1])
    assert "tips must lie on it" in ring and "tip to tip" in ring
    (match,) = (m for m in MATCHES if m.key == "panel")
    rows = words(pages_of(match.sample(STOCK, Top.rectangle(1200.0, 800.0)))[-1])
    assert "True the rows" in rows and "tips must" not in rows

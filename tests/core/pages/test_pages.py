# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages of a layout can be read: for every match, top, paper and unit."""

from __future__ import annotations

from dataclasses import replace

import pytest
from shapely.geometry import Polygon

from veneerwb.core import Stock, Top, check, radial
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.shop.drawing.drawn import Drawing, Letters
from veneerwb.core.shop.drawing.legible import troubles
from veneerwb.core.shop.drawing.lengths import UNITS
from veneerwb.core.shop.drawing.page import blank_page, numbered
from veneerwb.core.shop.drawing.paper import PAPERS, Box
from veneerwb.core.shop.pages.gather import sheet_pages

STOCK = Stock(900.0, 3000.0, 64, 0.6)
TOPS = {
    "round": Top.round(800.0),
    "six sides": Top.polygon(6, 700.0),
    "oval": Top.oval(900.0, 620.0),
    "square": Top.square(700.0),
    "rectangle": Top.rectangle(900.0, 600.0),
    "racetrack": Top.racetrack(1000.0, 500.0),
    "boat": Top.boat(1100.0, 560.0, 320.0),
    "outline with an opening": Top.outline(
        Polygon(
            [(-450, -300), (470, -280), (430, 300), (-400, 320)],
            [[(140, 90), (140, 170), (260, 170), (260, 90)]],
        )
    ),
}
BY_KEY = {match.key: match for match in MATCHES}
NAMES, PAPER_NAMES = list(TOPS), list(PAPERS)


@pytest.mark.parametrize("key", BY_KEY)
def test_every_match_can_be_read(key, look, sound):
    """Tops, papers and units go round with the matches."""
    at = list(BY_KEY).index(key)
    for k in (at, at + 3):
        layout = BY_KEY[key].sample(STOCK, TOPS[NAMES[k % len(NAMES)]])
        paper = PAPER_NAMES[(3 * at + k) % len(PAPER_NAMES)]
        one = look(paper, UNITS[(at + k) % 3], top=layout.top.name, revision=layout.revision)
        made = sheet_pages(layout, one)
        sound(made)
        assert {"notes", "plan", "pieces", "stack", "cut-list"} == {page.code for page in made}


@pytest.mark.parametrize("paper", PAPERS)
def test_every_paper_and_unit_can_be_read(paper, look, sound):
    layout = radial(STOCK, TOPS["oval"], 12, oversize=10.0)
    for unit in UNITS:
        sound(numbered(sheet_pages(layout, look(paper, unit), None, check(layout))))


@pytest.mark.parametrize("ways", [3, 7, 12, 24, 64])
def test_all_counts_of_ways_can_be_read(ways, look, sound):
    turn = "slip" if ways % 2 else "book"
    for paper, top in (("A4 upright", Top.round(1200.0)), ("A3", Top.polygon(6, 900.0))):
        sound(sheet_pages(radial(STOCK, top, ways, turn, oversize=8.0), look(paper, "both")))


@pytest.mark.parametrize("name", ["oval", "skewed", "bare"])
@pytest.mark.parametrize(
    ("paper", "unit"),
    [("A4 upright", "both"), ("A4", "mm"), ("A3", "mm"), ("A1", "inch"), ("ANSI A upright", "mm")],
)
def test_a_panel_built_up_can_be_read(name, paper, unit, look, sound, panels):
    built = panels[name]
    layout = radial(STOCK, built.build_up.field(built.top), 24, oversize=10.0)
    made = sheet_pages(layout, look(paper, unit), built)
    sound(made)
    assert {page.code for page in made} == {
        "notes", "plan", "pieces", "stack", "section", "cut-list", "bill"
    }  # fmt: skip


def test_troubles_are_seen(look):
    """The measure that the tests above rest on."""
    page, field = blank_page(look(), "x", "X")
    assert troubles(page) == []
    x, y = field.x + 20.0, field.y + 20.0
    for spoilt in (
        [Letters((x, y), "one"), Letters((x + 1.0, y + 1.0), "two")],
        [Letters((2.0, 2.0), "off the frame")],
        [Letters((x, y), "tiny", 1.0)],
        [Letters((x, y), "crossed"), *_line((x - 5.0, y + 1.0), (x + 5.0, y + 1.0))],
        _line((x, y), (x, 1e4)),
    ):
        copy = Drawing(page.drawing.wide, page.drawing.high)
        copy.marks = [*page.drawing.marks, *spoilt]
        assert troubles(replace(page, drawing=copy))
    hidden = Drawing(page.drawing.wide, page.drawing.high)
    hidden.marks = list(page.drawing.marks)
    hidden.line((x - 9.0, y + 1.0), (x + 9.0, y + 1.0))
    hidden.rectangle(Box(x - 12.0, y - 2.0, 24.0, 8.0), fill="#ffffff")
    hidden.text((x, y), "on white")
    assert troubles(replace(page, drawing=hidden)) == []


def _line(a, b):
    drawing = Drawing(1.0, 1.0)
    drawing.line(a, b)
    return drawing.marks



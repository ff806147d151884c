# SPDX-License-Identifier: LGPL-2.1-or-later
"""Press day, yield and planning on paper: they can be read, and say what the values hold."""

from __future__ import annotations

import pytest

from veneerwb.core import Radial, Stock, Top, radial
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.shop.cost import Price, cost, yields
from veneerwb.core.shop.drawing.drawn import Drawing, Letters
from veneerwb.core.shop.drawing.legible import troubles
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.drawing.paper import PAPERS
from veneerwb.core.shop.pages import cost as cost_pages
from veneerwb.core.shop.pages import press as press_pages
from veneerwb.core.shop.pages.flowing import Picture, Section, Table, flowed
from veneerwb.core.shop.planning import planned
from veneerwb.core.shop.press.day import Adhesive, Bag, Platen, press_day

STOCK = Stock(900.0, 3000.0, 70, 0.6)
ROUND = Top.round(1200.0)
PAPER = ["A3", "A4", "A4 upright", "ANSI A upright", "A1"]


def look(paper="A3", unit="both"):
    return Look(PAPERS[paper], Lengths(unit), title="Top", rests="Registered by hand.")


def words(pages):
    return " ".join(
        mark.text for page in pages for mark in page.drawing.marks if isinstance(mark, Letters)
    )


def readable(pages):
    assert [found for page in pages for found in troubles(page)] == []
    assert len({page.code for page in pages}) == len(pages)


@pytest.mark.parametrize("paper", PAPER)
@pytest.mark.parametrize("ways", [3, 12, 64])
def test_press_day_can_be_read(ways, paper):
    layout = radial(STOCK, ROUND, ways, "slip", oversize=10.0)
    day = press_day(layout, Adhesive("urea", 84.0, 20.0, 240.0, 150.0), Bag(1400.0, 2500.0))
    pages = press_pages.pages(day, look(paper), "inHg", "Walnut, black")
    readable(pages)
    said = words(pages)
    for part in ("24.8 inHg", "Yes: it goes in", "walnut, black", "formaldehyde", "351 g",
                 "trammel of 600.0"):  # fmt: skip
        assert part in said
    assert said.count("610.0 (24 1/32 in)") >= 8


@pytest.mark.parametrize("match", MATCHES, ids=lambda match: match.key)
def test_press_day_of_every_match_can_be_read(match):
    layout = match.sample(STOCK, Top.rectangle(1400.0, 800.0))
    day = press_day(layout, press=Platen(1300.0, 1300.0), backer=False)
    pages = press_pages.pages(day, look(unit="mm"))
    readable(pages)
    said = words(pages)
    assert "No: it does not go in; 150.0 are missing" in said
    assert "maker's sheet" in said and "Still to be looked up" in said


@pytest.mark.parametrize("paper", PAPER)
def test_yield_and_cost_can_be_read(paper):
    found = yields(radial(Stock(400.0, 900.0, 24, 0.6), ROUND, 12, oversize=10.0))
    pages = cost_pages.pages(found, look(paper), cost(found, Price(480.0, currency="EUR"), 2))
    readable(pages)
    said = words(pages)
    for part in ("73.8 %", "240.00 EUR", "212.21 EUR", "19.71 EUR", "13 to 24"):
        assert part in said
    assert "of the bundle by 2 tops" in said and "0.262" in said
    assert "No price" in words(cost_pages.pages(found, look(paper)))


@pytest.mark.parametrize("match", MATCHES, ids=lambda match: match.key)
def test_yields_of_every_match_can_be_read(match):
    readable(cost_pages.pages(yields(match.sample(STOCK, Top.round(800.0))), look("A4")))


@pytest.mark.parametrize("paper", PAPER)
def test_planning_can_be_read(paper):
    found = planned(Radial(12, oversize=10.0), ROUND, 2, 10.0, 3, 2)
    pages = cost_pages.planning_pages(found, look(paper))
    readable(pages)
    said = words(pages)
    assert "26 in all" in said and "1255.0" in said and "Registered" not in said
    assert "15.0 (19/32 in) apart" in said


# --- columns -----------------------------------------------------------------------------------


@pytest.mark.parametrize("paper", PAPER)
def test_nothing_is_lost_when_it_flows(paper):
    rows = [(f"row {k}", "x" * 10) for k in range(130)]
    drawn = []
    sections = [
        Section("Words", [f"paragraph {k} and more" for k in range(60)]),
        Section("Rows", [Table(("a", "b"), rows)]),
        Section("Picture", [Picture(30.0, lambda drawing, box: drawn.append(box))]),
    ]
    pages = flowed(look(paper), "x", "X", sections)
    readable(pages)
    said = words(pages)
    assert all(f"paragraph {k} and" in said for k in range(60))
    assert all(f"row {k} " in said for k in range(130))
    assert drawn and all(box.high == pytest.approx(30.0) for box in drawn)
    frame = PAPERS[paper].frame
    assert all(frame.holds(box) for box in drawn)


def test_columns_are_about_equally_long():
    pages = flowed(look("A3"), "x", "X", [Section("W", ["some words"] * 30)])
    (page,) = pages
    marks = [m for m in page.drawing.marks if isinstance(m, Letters) and m.text == "some words"]
    counts = [sum(m.at[0] == x for m in marks) for x in sorted({m.at[0] for m in marks})]
    assert len(counts) == 3 and max(counts) - min(counts) <= 3
    assert isinstance(page.drawing, Drawing)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a stranger may ask of a match or a top that cannot be: one sentence each, and what it names
as near to that does work."""

from __future__ import annotations

import math

import pytest
from shapely.geometry import LineString, Polygon

from veneerwb.core import (
    Border,
    BuildUp,
    Bundle,
    Core,
    Disc,
    Radial,
    Rings,
    Show,
    Stock,
    Top,
    VeneerError,
    end,
    quarters,
    radial,
    rings,
    side,
)
from veneerwb.core.matches.end import KINDS as ENDS
from veneerwb.core.matches.quarters import KINDS as QUARTERS
from veneerwb.core.outlines.edge import Line

STOCK = Stock(400.0, 2000.0, 24, 0.6)
ROUND, SQUARE = Top.round(800.0), Top.square(800.0)
FOURS = [kind for kind in QUARTERS if kind != "herringbone"]


def refused(ask):
    with pytest.raises(VeneerError) as caught:
        ask()
    text = str(caught.value)
    assert (text[0].isupper() or text[0].isdigit()) and text.endswith(".") and len(text) < 190
    assert text.count(". ") == 0 and "{" not in text and "\n" not in text
    return caught.value


def panel(top, **parts):
    return BuildUp(Show(0.6), Core(18.0), **parts).parts(top)


# --- outlines ----------------------------------------------------------------------------------


def test_an_open_outline_is_told_where_and_by_how_much():
    run = [Line((0, 0), (100, 0)), Line((100, 0), (100, 100)), Line((100, 100), (0, 5))]
    found = refused(lambda: Top.of_edges(run))
    assert (found.code, found.values["gap"]) == ("open-outline", pytest.approx(5.0))
    assert refused(lambda: Top.outline(LineString([(0, 0), (1, 1)]))).code == "no-outline"
    Top.of_edges([*run, Line((0, 5), (0, 0))])


def test_an_outline_that_crosses_itself_is_told_where():
    found = refused(lambda: Top.outline(Polygon([(0, 0), (100, 100), (100, 0), (0, 100)])))
    assert found.code == "crosses-itself"
    assert (found.values["x"], found.values["y"]) == (50.0, 50.0)


def test_an_outline_smaller_than_the_inlay_is_told_which_inlay_it_takes():
    top = Top.outline(Polygon([(-100, -100), (100, -100), (100, 100), (-100, 100)]))
    most = refused(lambda: panel(top, inlay=Disc(300.0))).values["most"]
    assert most == pytest.approx(200.0)
    assert panel(top, inlay=Disc(most - 1.0))
    most = refused(lambda: radial(STOCK, top, 8, disc=300.0)).values["most"]
    assert radial(STOCK, top, 8, disc=most).pieces


@pytest.mark.parametrize("top", [ROUND, SQUARE, Top.boat(1200.0, 500.0, 300.0)])
def test_a_border_wider_than_the_top_is_told_the_widest(top):
    most = refused(lambda: panel(top, border=Border(600.0, kind="following"))).values["most"]
    assert panel(top, border=Border(most, kind="following"))


@pytest.mark.parametrize("top", [ROUND, Top.oval(900.0, 500.0)])
def test_an_inner_field_larger_than_the_top_is_told_the_largest(top):
    found = refused(lambda: rings(STOCK, top, 8, 16, 900.0))
    assert found.code == "field-too-large" and "mm or less" in str(found)
    assert rings(STOCK, top, 8, 16, found.values["most"]).pieces
    with pytest.raises(VeneerError, match="smaller, or move its centre"):
        Rings(Radial(8, centre=(900.0, 0.0)), Radial(16), 100.0).lay(STOCK, top)


# --- slivers -----------------------------------------------------------------------------------


def test_strips_that_leave_slivers_are_told_what_would_not():
    top = Top.square(100.0)
    most = refused(lambda: side(STOCK, top, count=12)).values["most"]
    assert len(side(STOCK, top, count=most).pieces) == most == 10
    found = refused(lambda: side(STOCK, SQUARE, face="running", width=399.0))
    for width in (found.values["narrower"], found.values["wider"]):
        assert side(STOCK, SQUARE, face="running", width=width).pieces
    least = refused(lambda: quarters(STOCK, SQUARE, "herringbone", strip=5.0)).values["least"]
    assert quarters(Stock(400.0, 2000.0, 200, 0.6), SQUARE, "herringbone", strip=least).pieces
    many = Stock(400.0, 2000.0, 800, 0.6)
    most = refused(lambda: end(many, top, "continuous", rows=12)).values["most"]
    assert len(end(many, top, "continuous", rows=most).pieces) == most == 10
    assert "longer" in str(refused(lambda: end(many, Top.rectangle(200.0, 15.0), "panel", 4)))
    most = refused(lambda: radial(many, Top.round(500.0), 64, strips=12)).values["most"]
    assert radial(many, Top.round(500.0), 64, strips=most).pieces


# --- counts ------------------------------------------------------------------------------------


@pytest.mark.parametrize("ask", [
    lambda: Stock(400.0, 2000.0, 0, 0.6), lambda: Bundle((), 0.6),
    lambda: Bundle.from_photos([], 1.0, 0.6), lambda: side(STOCK, SQUARE, count=0),
    lambda: side(STOCK, SQUARE, order=[]), lambda: end(STOCK, SQUARE, count=0),
    lambda: end(STOCK, SQUARE, order=[]), lambda: quarters(STOCK, SQUARE, order=[]),
    lambda: radial(STOCK, ROUND, 0), lambda: radial(STOCK, ROUND, 8, order=[]),
    lambda: rings(STOCK, ROUND, 0, 8),
])  # fmt: skip
def test_no_leaves_at_all_are_refused(ask):
    text = str(refused(ask))
    assert "joint on its centre" not in text


@pytest.mark.parametrize(("kind", "count"), [(k, n) for k in ENDS for n in (1, 7, 26)])
def test_an_end_match_is_told_the_nearest_count(kind, count):
    near = refused(lambda: end(STOCK, SQUARE, kind, count)).values
    for n in map(int, str(near.get("nearest", near.get("most"))).split(" or ")):
        assert len(end(STOCK, SQUARE, kind, n).pieces) == n


@pytest.mark.parametrize("face", ["balance", "centre balance", "slip-centre-book"])
def test_too_many_strips_are_told_how_many_there_are_leaves_for(face):
    bundle = Stock(400.0, 2000.0, 23, 0.6)
    most = refused(lambda: side(bundle, SQUARE, face=face, count=26)).values["most"]
    assert most == (23 if face == "balance" else 22)
    assert len(side(bundle, SQUARE, face=face, count=most).pieces) == most


@pytest.mark.parametrize(
    ("turn", "strips", "most"), [("book", 1, 22), ("slip", 1, 23), ("book", 3, 18), ("slip", 3, 21)]
)
def test_too_many_ways_are_told_how_many_there_are_leaves_for(turn, strips, most):
    bundle = Stock(400.0, 2000.0, 23, 0.6)
    found = refused(lambda: radial(bundle, ROUND, 24, turn, strips=strips))
    assert found.values["most"] == most and f"take {most} leaves or fewer" in str(found)
    assert radial(bundle, ROUND, most // strips, turn, strips=strips).pieces


@pytest.mark.parametrize("kind", FOURS)
def test_four_fields_take_four_leaves_and_no_fewer(kind):
    text = str(refused(lambda: quarters(Stock(400.0, 2000.0, 3, 0.6), SQUARE, kind)))
    assert text.startswith("4 fields need 4 leaves") and "fewer" not in text


@pytest.mark.parametrize("leaves", [2, 7, 12, 24])
def test_a_herringbone_of_too_many_strips_is_told_a_width(leaves):
    bundle = Stock(400.0, 2000.0, leaves, 0.6)
    found = refused(lambda: quarters(bundle, SQUARE, "herringbone", strip=20.0))
    wider = found.values["wider"]
    assert len(quarters(bundle, SQUARE, "herringbone", strip=wider).pieces) <= leaves
    with pytest.raises(VeneerError, match="need"):  # and that is not far from the least
        quarters(bundle, SQUARE, "herringbone", strip=0.7 * wider)


@pytest.mark.parametrize("width", [0.0, -1.0, math.nan, "wide"])
def test_a_border_of_no_width_is_refused(width):
    refused(lambda: Border(width))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages of pinning and marking: all can be read, strips are true, figures are the model's."""

from __future__ import annotations

import math

import numpy as np
import pytest

from veneerwb.core import Bundle, Leaf, Motion, Side, Stock, Top, radial
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.outlines.edge import Arc
from veneerwb.core.photos.reading import Photo
from veneerwb.core.shop.cutting.methods import KNIFE, METHODS, SAW
from veneerwb.core.shop.drawing.drawn import Drawing, Letters, Stroke
from veneerwb.core.shop.drawing.legible import troubles
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.drawing.paper import PAPERS
from veneerwb.core.shop.pages.pinning import marking_pages, pages
from veneerwb.core.shop.pages.pinning_strips import draw, strips_of
from veneerwb.core.shop.pinning.chalking import chalking
from veneerwb.core.shop.pinning.plan import pinning

STOCK = Stock(420.0, 1400.0, 24, 0.6)
PHOTO = Photo.of(np.zeros((140, 42, 3), np.uint8), 10.0)
REGISTERS = [Motion(0.1 * k, 2.0 * k, -k) for k in range(-6, 6)]
BUNDLE = Bundle(tuple(Leaf(k, Side(PHOTO, r, r)) for k, r in enumerate(REGISTERS, start=1)), 0.6)


def look(paper="A3", unit="mm"):
    return Look(paper=PAPERS[paper], lengths=Lengths(unit), title="A top <&>", revision="AB12CD",
                rests="This sheet rests on the figure in the photographs.")


def marks_near(bundle, places):
    return {leaf.number: leaf.register.apply(np.array(places)) + (0.4 * leaf.number, 0.0)
            for leaf in bundle.leaves}


def words(found):
    return " ".join(m.text for page in found for m in page.drawing.marks if isinstance(m, Letters))


@pytest.mark.parametrize("match", MATCHES, ids=lambda m: m.key)
def test_every_match_can_be_read(match):
    layout = match.sample(STOCK, Top.oval(1000.0, 700.0))
    found = pages(pinning(layout), look())
    found += marking_pages(chalking(layout), [layout], look())
    assert [t for page in found for t in troubles(page)] == []


@pytest.mark.parametrize(
    ("ways", "key", "paper", "unit"),
    [(3, "knife", "A4", "mm"), (12, "saw", "A4 upright", "both"), (24, "knife", "ANSI B", "inch"),
     (64, "machine", "A2", "both")],
)  # fmt: skip
def test_any_ways_on_any_paper_in_any_unit_can_be_read(ways, key, paper, unit):
    stock = Stock(900.0, 1400.0, ways + 2, 0.6)
    layout = radial(stock, Top.round(900.0), ways, "slip")
    shown = look(paper, unit)
    found = pages(pinning(layout, how=METHODS[key], spares=2), shown)
    found += marking_pages(chalking(layout, spares=2), [layout], shown)
    assert [t for page in found for t in troubles(page)] == []
    codes = [page.code for page in found]
    assert {"pinning", "pin-strips", "marking"} == set(codes)


def crosses(marks):
    """Middles of the strokes of equal halves that cross square, and of rings."""
    rings = [m.edge[0].centre for m in marks
             if isinstance(m, Stroke) and isinstance(m.edge[0], Arc)]
    level = [m.edge[0] for m in marks if isinstance(m, Stroke) and not isinstance(m.edge[0], Arc)
             and len(m.edge) == 1 and abs(m.edge[0].length - 10.0) < 1e-6
             and m.edge[0].a[1] == m.edge[0].b[1]]
    return [s.at(0.5) for s in level], rings


@pytest.mark.parametrize("unit", ["mm", "inch"])
def test_on_a_strip_the_ring_stands_as_far_from_the_cross_as_on_the_leaf(unit):
    layout = radial(BUNDLE, Top.round(700.0), 12)
    marks = marks_near(BUNDLE, [(30.0, 330.0), (400.0, 1080.0), (35.0, 900.0)])
    (stack,) = pinning(layout, marks).stacks
    far = pinning(layout).stacks[0]
    for one in (*stack.leaves, *far.leaves):
        for strip in strips_of(one, "", look(unit=unit), 0.5, 150.0):
            drawing = Drawing(400.0, 400.0)
            draw(drawing, strip, 10.0, 380.0)
            (cross,), (ring,) = crosses(drawing.marks)
            h = strip.hole
            a, b = np.array(h.a.place), np.array(h.b.place)
            line = (b - a) / math.dist(a, b)
            start = a + strip.base * line
            left = np.array((-line[1], line[0]))
            told = (np.array(h.place) - start) @ np.column_stack([line, left])
            assert np.array(ring) - cross == pytest.approx(told, abs=1e-9)
            assert abs(strip.hole.along - strip.base) <= 150.0
            step = 50.8 if unit == "inch" else 50.0
            assert abs(strip.base / step - round(strip.base / step)) < 1e-9


def test_strips_lie_on_their_pages_at_true_size_with_bars_of_100_mm():
    layout = radial(STOCK, Top.round(700.0), 12)
    (stack,) = pinning(layout).stacks
    found = [p for p in pages(pinning(layout), look()) if p.code == "pin-strips"]
    total = 0
    for page in found:
        marks = page.drawing.marks
        total += len(crosses(marks)[1])
        bars = [m.edge[0].length for m in marks if isinstance(m, Stroke) and len(m.edge) == 1
                and not isinstance(m.edge[0], Arc) and m.edge[0].length == pytest.approx(100.0)]
        assert len(bars) >= 2
        assert any(isinstance(m, Letters) and m.text == "1:1" for m in marks)
    assert total == 2 * len(stack.leaves)


def test_the_table_holds_the_figures_of_the_model():
    layout = radial(BUNDLE, Top.round(700.0), 12)
    found = pages(pinning(layout, how=SAW), look())
    said = words(found)
    (stack,) = pinning(layout, how=SAW).stacks
    for one in stack.leaves:
        for h in one.holes:
            for value in (h.near, h.far, h.along):
                assert f"{round(value, 1) + 0.0:.1f}" in said
            assert f"{abs(h.beside):.1f} {h.side}" in said
    assert f"{stack.apart:.1f} mm" in said and "Dry-lay before glue" in said


def test_holes_too_tall_for_a_strip_are_named():
    layout = radial(BUNDLE, Top.round(700.0), 12)
    marks = {n: [(200.0, 20.0), (240.0, 25.0)] for n in BUNDLE.numbers}  # an oblique short line
    told = words(pages(pinning(layout, marks, how=KNIFE), look("A4")))
    assert "by figures only" in told and "leaf 1, hole" in told


def test_marks_say_what_to_chalk_where_and_that_it_comes_off():
    layout = radial(BUNDLE, Top.round(700.0), 12)
    told = chalking(layout)
    said = words(marking_pages(told, [layout], look()))
    for mark in told.marks:
        assert mark.text in said and f"{mark.beside:.1f}" in said and f"{mark.above:.1f}" in said
    assert "comes off before glue" in said and "down" in said

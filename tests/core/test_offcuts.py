# SPDX-License-Identifier: LGPL-2.1-or-later
"""Offcuts: with cuts and kerf they are the usable area, and what is kept of them truly fits."""

from __future__ import annotations

import hypothesis.strategies as st
import numpy as np
import pytest
from hypothesis import given, settings
from shapely.geometry import Point, Polygon, box

from veneerwb.core import Bundle, Fault, Leaf, Side, Stock, Top, radial
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.photos.reading import Photo
from veneerwb.core.shop.cutting.methods import KNIFE, SAW, method
from veneerwb.core.shop.cutting.offcuts import WORTH, Worth, largest_rectangle, offcuts

STOCK = Stock(420.0, 1400.0, 24, 0.6)


@settings(max_examples=25)
@given(st.sampled_from(MATCHES), st.floats(0.0, 6.0), st.booleans())
def test_offcuts_cuts_and_kerf_together_are_the_usable_area(match, kerf, by_shape):
    layout = match.sample(STOCK, Top.oval(900.0, 700.0))
    rests = offcuts(layout, method("saw", kerf=kerf), by_shape=by_shape or None, worth=())
    assert {rest.leaf for rest in rests} == {piece.leaf for piece in layout.pieces}
    for rest in rests:
        assert rest.usable == pytest.approx(420.0 * 1400.0)
        assert rest.cuts + rest.kerf + rest.left == pytest.approx(rest.usable, rel=1e-9)


def test_of_one_wedge_the_kerf_is_its_outline_times_the_blade():
    layout = radial(STOCK, Top.round(800.0), 12)
    rest = offcuts(layout, SAW)[0]
    outline = layout.cuts[0].outline
    assert rest.cuts == pytest.approx(outline.area)
    # Square corners add a little to length times width.
    assert rest.kerf == pytest.approx(SAW.kerf * outline.exterior.length, rel=0.02)
    assert offcuts(layout, KNIFE)[0].kerf == pytest.approx(0.0, abs=1e-6)


def test_no_offcut_touches_a_cut_and_what_is_kept_lies_within_it_apart():
    for match in MATCHES:
        layout = match.sample(STOCK, Top.round(800.0))
        for rest in offcuts(layout, SAW)[:2]:
            for one in rest.offcuts:
                kept = [box(*k.rectangle) for k in one.kept]
                for k, area in enumerate(kept):
                    assert one.area.buffer(1e-3, join_style=2).covers(area), match.key
                    assert all(area.intersection(b).area < 0.1 for b in kept[k + 1 :])
                    short, long = sorted(one.kept[k].size)
                    assert any(short >= w.short - 1e-6 and long >= w.long - 1e-6 for w in WORTH)


@given(st.floats(5.0, 300.0), st.floats(5.0, 300.0), st.floats(-500.0, 500.0))
def test_the_largest_rectangle_in_a_rectangle_is_itself(wide, high, at):
    x0, y0, x1, y1 = largest_rectangle(box(at, -at, at + wide, high - at))
    assert (x1 - x0) * (y1 - y0) >= 0.95 * wide * high
    assert x0 >= at - 1e-3 and x1 <= at + wide + 1e-3


def test_the_largest_rectangle_in_a_triangle_is_half_of_it():
    # Plane geometry: of a right triangle, half its legs each way.
    x0, y0, x1, y1 = largest_rectangle(Polygon([(0, 0), (200, 0), (0, 100)]))
    assert (x1 - x0) * (y1 - y0) >= 0.95 * 100.0 * 50.0
    frame = box(0, 0, 100, 100).difference(box(20, 20, 90, 90))
    x0, y0, x1, y1 = largest_rectangle(frame)
    assert (x1 - x0) * (y1 - y0) == pytest.approx(2000.0, rel=0.05)


def test_what_is_kept_is_clear_of_faults():
    photo = Photo.of(np.zeros((140, 42, 3), np.uint8), 10.0)
    knot = Point(200.0, 150.0).buffer(30.0)
    bundle = Bundle(tuple(Leaf(k, Side(photo), faults=(Fault(knot),)) for k in range(1, 13)), 0.6)
    rest = offcuts(radial(bundle, Top.round(800.0), 12), SAW)[0]
    assert rest.cuts + rest.kerf + rest.left == pytest.approx(rest.usable)
    kept = [box(*k.rectangle) for one in rest.offcuts for k in one.kept]
    assert kept and all(area.intersection(knot).area < 1.0 for area in kept)
    clean = offcuts(radial(STOCK, Top.round(800.0), 12), SAW)[0]
    assert any(box(*k.rectangle).intersects(knot) for one in clean.offcuts for k in one.kept)


def test_what_an_offcut_serves_is_the_makers_to_say():
    layout = radial(STOCK, Top.round(800.0), 12)
    plain = offcuts(layout, KNIFE)[0].offcuts[0].kept[0]
    assert plain.uses and set(plain.uses) <= {w.use for w in WORTH}
    own = offcuts(layout, KNIFE, worth=[Worth("kindling", 1.0, 1.0)])[0].offcuts[0].kept[0]
    assert own.uses == ("kindling",)
    none = offcuts(layout, KNIFE, worth=[Worth("a door", 900.0, 2000.0)])[0].offcuts[0]
    assert not none.kept


def test_leaves_that_no_cut_touches_stay_whole_and_spares_are_cut():
    layout = radial(STOCK, Top.round(800.0), 12)
    assert [rest.leaf for rest in offcuts(layout, KNIFE)] == list(range(1, 13))
    with_spares = offcuts(layout, KNIFE, spares=2)
    assert [rest.leaf for rest in with_spares] == list(range(1, 15))
    assert [rest.leaf for rest in with_spares if rest.spare] == [13, 14]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages on closing the ring: all can be read, and what they say is what was reckoned."""

from __future__ import annotations

import math

import numpy as np
import pytest

from veneerwb.core import Stock, Top, radial
from veneerwb.core.shop.closing import (
    Angle,
    Before,
    Closing,
    Errors,
    Measured,
    Moisture,
    Ring,
    broken_of,
    said,
)
from veneerwb.core.shop.drawing.drawn import RED, Letters, Stroke
from veneerwb.core.shop.drawing.legible import troubles
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.drawing.paper import PAPERS
from veneerwb.core.shop.pages.closing import pages
from veneerwb.core.shop.pages.closing_figures import times

STOCK = Stock(1600.0, 4000.0, 64, 0.6)
WET = Moisture(9.0, 9.0, 8.0, 0.00274, 0.3)
RESTS = "Registered on the figure of the photographs; the backs take the register of their faces."


def closing(ways, top, over=0.1, spread=0.1, shifted=0.0, wet=WET):
    layout = radial(STOCK, top, ways, "slip" if ways % 2 else "book", oversize=10.0)
    angles = 360.0 / ways + over + np.random.default_rng(ways).normal(0.0, spread, ways)
    wedges = tuple(Angle(round(float(a), 2), 0.05) for a in angles)
    after = Measured(Ring.of(layout), wedges, common=0.01, broken=broken_of(layout))
    return Closing(Before(layout, Errors(0.03, 0.05, wet)), after, shifted)


def words(found):
    lines = [m.text for page in found for m in page.drawing.marks if isinstance(m, Letters)]
    return " ".join(lines)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize(
    ("ways", "top", "over"),
    [
        (3, Top.round(900.0), 0.1),
        (7, Top.round(900.0), -0.1),
        (12, Top.polygon(12, 1000.0), -0.1),
        (24, Top.oval(1500.0, 1000.0), 0.1),
        (64, Top.round(1200.0), 0.02),
    ],
)
def test_nothing_on_a_page_is_in_the_way_of_reading_it(paper, ways, top, over):
    one = closing(ways, top, over, shifted=3.0)
    for unit in ("mm", "both"):
        look = Look(paper=PAPERS[paper], lengths=Lengths(unit), title="Table <&>", rests=RESTS)
        found = pages(one, look)
        assert [t for page in found for t in troubles(page)] == []
        assert {page.code.split("-")[0] for page in found} == {"closing"}
        assert words(found).count(RESTS) == len(found)


def test_before_it_is_measured_there_is_no_page_as_cut():
    one = closing(12, Top.round(1000.0))
    assert [p.code for p in pages(Closing(one.before), Look())] == ["closing"]
    assert [p.code for p in pages(one, Look())] == ["closing", "closing-cut"]


def test_the_page_says_what_was_reckoned():
    one = closing(12, Top.round(1000.0))
    text = words(pages(one, Look()))
    offer, best = one.before.advised, one.after.best
    assert f"{offer.over.degrees:.2f} deg over, never" in text
    assert f"reach 180 deg in {100.0 * offer.over.claimed:.1f}" in text
    assert f"{one.before.set_out.offset:.2f} mm" in text
    assert f"{one.after.total.value:.2f} deg" in text
    assert all(f"{half.value:.2f} deg" in text for half in best.halves)
    heads, rows = said.ends(one.at, lambda mm: f"{mm:.3f}")
    assert heads[0] == "end" and [row[0] for row in rows] == list("abcd")
    pieces = {row[1] for row in rows}
    first, half = best.first, (best.first + 5) % 12 + 1
    assert pieces == {
        str(p) for at in (first, half) for p in (at, (at - 2) % 12 + 1)
    }
    for row, offset in zip(rows, [o for part in one.at.parts for o in part.offsets]):
        assert (float(row[3]), float(row[4])) == pytest.approx(offset, abs=5e-4)


def test_edges_out_alike_are_said_to_close():
    text = words(pages(closing(16, Top.round(1000.0), shifted=-3.0), Look()))
    assert "3.0 mm in alike: the ring closes" in text and "15.4 mm" in text


def test_a_ring_under_and_an_odd_ring_are_told_plainly():
    under = words(pages(closing(12, Top.round(1000.0), over=-0.2), Look()))
    assert "no longer meet" in under and "All tips still meet" not in under
    odd = words(pages(closing(7, Top.round(1000.0), over=0.1), Look()))
    assert "odd number" in odd and "diameter open" not in odd


def test_swelling_and_a_dry_shop_are_told():
    texts = [
        " ".join(said.expect(Before(radial(STOCK, Top.round(1000.0), 12), Errors(0.02, 0.02, wet)),
                             lambda mm: f"{mm:.1f} mm"))
        for wet in (Moisture(8.0, 8.0, 9.0, 0.00274), Moisture(9.0, 7.0, 5.0, 0.00274))
    ]  # fmt: skip
    assert "overlap by" in texts[0] and "6 to 14" not in texts[0]
    assert "open by" in texts[1] and "6 to 14" in texts[1] and "inside than on" in texts[1]


@pytest.mark.parametrize(("ways", "over"), [(12, 0.15), (12, -0.15), (24, 0.1), (64, 0.02)])
def test_the_enlarged_figure_enlarges_what_is_off_and_no_end_piece_is_drawn_away(ways, over):
    one = closing(ways, Top.round(1000.0), over, spread=0.02)
    factor = times(one.at)
    assert factor > 1
    for part in one.at.parts:
        assert abs(part.over) * factor <= 14.0 + 1e-9
        assert max(map(abs, part.trims)) * factor <= 0.6 * 360.0 / ways + 1e-9
    drawing = pages(one, Look())[-1].drawing if ways < 64 else pages(one, Look())[1].drawing
    red = [m for m in drawing.marks if isinstance(m, Stroke) and m.colour == RED]
    turns = [math.degrees(math.atan2(s.edge[0].b[1] - s.edge[0].a[1],
                                     s.edge[0].b[0] - s.edge[0].a[0])) for s in red]  # fmt: skip
    level = [t for t in turns if min(abs(math.remainder(t, 180.0)), 1.0) < 1e-6]
    assert len(level) >= 4 and len(red) == 6  # two joints to scale, four lines enlarged

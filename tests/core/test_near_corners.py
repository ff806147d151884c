# SPDX-License-Identifier: LGPL-2.1-or-later
"""Seams that pass a corner or a rim by a hair: pieces still tile the top, and none is lost or
laid twice."""

from __future__ import annotations

import itertools
import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from veneerwb.core import Stock, Top, check, radial
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.outlines.curves import Curve
from veneerwb.core.outlines.edge import Line, straights

STOCK = Stock(900.0, 3000.0, 64, 0.6)
TOPS = {
    "eight sides": Top.polygon(8, 1000.0),
    "racetrack": Top.racetrack(1000.0, 500.0),
    "boat": Top.boat(1100.0, 560.0, 320.0),
}
HAIR = st.sampled_from([0.0, 1e-9, -1e-8, 5e-8, -1e-7, 4e-7])
"""mm: what a sketch's solver and a rounded centroid leave."""


def tiles(layout):
    assert math.fsum(p.area for p in layout.pieces) == pytest.approx(layout.top.area, rel=1e-9)
    for a, b in itertools.combinations([piece.outline for piece in layout.pieces], 2):
        over = a.intersection(b).area  # GEOS 3.11 now and then gives one of the two
        assert over <= 1e-6 or a.area + b.area - a.union(b).area <= 1e-6


@pytest.mark.parametrize("past", [-1.2e-6, -9.9e-7, 3e-8, 8e-7, 9.9e-7])
@pytest.mark.parametrize("more", [{"strips": 2}, {"centre": (7.0, 0.0)}], ids=["strips", "aside"])
@pytest.mark.parametrize("name", TOPS)
def test_a_seam_may_pass_any_corner_by_a_hair(name, more, past):
    top = TOPS[name]
    for x, y in (segment.start for segment in top.edge):
        x -= more.get("centre", (0.0, 0.0))[0]
        seam = math.degrees(math.atan2(y, x) + past / math.hypot(x, y))
        tiles(radial(STOCK, top, 8, start=seam + 22.5, oversize=5.0, **more))


@settings(max_examples=40)
@given(st.sampled_from(MATCHES), st.lists(HAIR, min_size=11, max_size=11))
def test_corners_may_lie_beside_any_straight_by_a_hair(match, off):
    """An outline and an opening whose corners are a hair off the axes of the match."""
    a, b = (-400.0 + off[0], off[1]), (400.0 + off[2], off[3])
    upper, lower = (off[4], 300.0 + off[5]), (off[6], -300.0 + off[7])
    edge = (
        Line(b, upper), Curve(upper, (-150.0, 310.0), (-380.0, 200.0), a), Line(a, lower),
        Curve(lower, (200.0, -290.0), (390.0, -150.0), b),
    )  # fmt: skip
    opening = straights([(off[8], 100.0 + off[9]), (60.0, 130.0), (off[10], 180.0)])
    tiles(match.sample(STOCK, Top.of_edges(edge, [opening])))


@pytest.mark.parametrize("depth", [0.02, 0.009, 0.001])
def test_what_is_cut_off_between_a_flat_rim_and_a_seam_is_a_piece_that_is_warned_of(depth):
    """The seam of a ring whose centre lies outside cuts a round top so far within its rim."""
    seam = 180.0 - math.degrees(math.asin((400.0 - depth) / 500.0))
    layout = radial(STOCK, Top.round(800.0), 12, start=seam + 15.0, centre=(500.0, 0.0))
    tiles(layout)
    lens = 4.0 / 3.0 * depth * math.sqrt(2.0 * 400.0 * depth)  # of a flat segment of a circle
    assert min(piece.area for piece in layout.pieces) == pytest.approx(lens, rel=1e-3)
    assert "crumbs" in [finding.code for finding in check(layout)]

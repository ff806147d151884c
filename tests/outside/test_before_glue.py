# SPDX-License-Identifier: LGPL-2.1-or-later
"""Errors of cutting that add up or do not, and what a standard says of joints: the figures that a
maker reads a layout against, reproduced from layouts."""

from __future__ import annotations

import math

import numpy as np
import pytest

from veneerwb.core import Stock, Top, closure, radial, side
from veneerwb.core.outlines import edge as edges

STOCK = Stock(1000.0, 3000.0, 24, 0.6)
TOP = Top.round(1000.0)


# Plain geometry: both edges of a wedge moved out alike by the same width: it slides along its axis
# by w / sin(180/n) until it fits, and the ring still closes; 3 mm: 15.4 mm at 16 ways, 23.0 at 24.
@pytest.mark.parametrize(("ways", "slides"), [(16, 15.4), (24, 23.0)])
def test_edges_that_are_all_off_alike_make_pieces_slide_and_the_ring_still_closes(ways, slides):
    piece = radial(STOCK, TOP, ways, start=90.0).pieces[0]
    first, last = piece.edge[0], piece.edge[-1]

    def straight(line, out):
        """Point and direction of an edge moved to the right by 3 mm (out of the piece)."""
        way = np.subtract(line.end, line.start) / line.length
        return np.asarray(line.start) + out * np.array([way[1], -way[0]]), way

    (p, u), (q, v) = straight(first, 3.0), straight(last, 3.0)
    share = np.linalg.solve(np.array([u, -v]).T, q - p)[0]
    assert np.hypot(*(p + share * u)) == pytest.approx(slides, abs=0.05)
    turned = math.degrees(math.acos(float(np.clip(-u @ v, -1.0, 1.0))))
    assert closure([turned] * ways, reach=500.0).error == pytest.approx(0.0, abs=1e-9)


# Plain geometry: what one template is off is common to all wedges and adds up, n e; what each piece
# is off for itself adds by chance, root n sigma: 16 ways, 0.1 degrees: 1.6 against 0.4.
def test_the_template_is_off_sixteen_times_and_each_knife_only_four():
    common = closure([22.5 + 0.1] * 16, reach=500.0).error
    assert common == pytest.approx(1.6, abs=1e-9)
    chance = np.random.default_rng(1)
    found = [closure(22.5 + chance.normal(0.0, 0.1, 16), reach=500.0).error for _ in range(2000)]
    assert np.std(found) == pytest.approx(0.4, abs=0.02)


# Architectural Woodwork Standards, 1st ed. (2009, superseded), p. 202: no opening at a leaf joint;
# joints plumb within 5 mm in 2440 mm.
def test_joints_as_laid_have_no_opening_and_are_plumb():
    layout = side(STOCK, Top.rectangle(2400.0, 2440.0), count=6)
    spans = [edges.extent(piece.edge, 0.0) for piece in layout.pieces]
    assert max(abs(b[0] - a[1]) for a, b in zip(spans, spans[1:])) < 1e-9
    for seam in layout.seams:
        (x0, y0), (x1, y1) = seam.line.coords
        assert abs(y1 - y0) == pytest.approx(2440.0) and abs(x1 - x0) < 5.0 * 1e-6


# Trade lexicons (secondary): bundles of 24 or 32 consecutive leaves, sliced 0.5 to 0.7 mm. Plain
# arithmetic: they serve rings of as many ways, the last leaf 24 t deep in the log.
@pytest.mark.parametrize("leaves", [24, 32])
def test_usual_bundles_serve_rings_of_as_many_ways(leaves):
    bundle = Stock(400.0, 2000.0, leaves, 0.6)
    layout = radial(bundle, TOP, leaves)
    assert sorted(piece.leaf for piece in layout.pieces) == list(range(1, leaves + 1))
    assert bundle.surface(leaves, True) - bundle.surface(1, False) == leaves  # no kerf between

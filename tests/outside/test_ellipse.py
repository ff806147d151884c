# SPDX-License-Identifier: LGPL-2.1-or-later
"""The ellipse against published values."""

from __future__ import annotations

import math

import pytest

from veneerwb.core import Top


# Abramowitz and Stegun, Handbook of Mathematical Functions, table 17.1: E(m = 0.5) = 1.35064 38810.
# Plain geometry: an ellipse with the semi-axes a and b is 4 a E(1 - b2 / a2) round, pi a b in area.
def test_the_way_round_an_ellipse():
    (ellipse,) = Top.oval(2000.0, 2000.0 * math.sqrt(0.5)).edge
    assert ellipse.length == pytest.approx(4000.0 * 1.3506438810, rel=1e-10)
    assert ellipse.swept == pytest.approx(math.pi * 1000.0 * 1000.0 * math.sqrt(0.5), rel=1e-14)

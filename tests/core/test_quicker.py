# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is done so that a version of shapely is no slower than others."""

from __future__ import annotations

import inspect

import pytest
import shapely.geometry

from veneerwb.core.outlines.quicker import carry_signatures


def test_no_signature_is_read_when_shapely_is_called(monkeypatch):
    """Reading one takes longer than much of what is computed (shapely 2.1.0)."""
    carry_signatures()
    read = []
    real = inspect._signature_from_function
    monkeypatch.setattr(
        inspect, "_signature_from_function", lambda *a, **k: read.append(a) or real(*a, **k)
    )
    one, other = shapely.geometry.box(0, 0, 2, 2), shapely.geometry.box(1, 1, 3, 3)
    assert one.intersection(other).area == pytest.approx(1.0)
    assert one.union(other).buffer(0.5).intersects(one.difference(other))
    assert one.simplify(0.1).is_valid and read == []

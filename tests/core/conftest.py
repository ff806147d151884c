# SPDX-License-Identifier: LGPL-2.1-or-later
"""What tests of runs share: panels of a wall, and the leaves that they took."""

from __future__ import annotations

import pytest
from shapely.geometry import box

from veneerwb.core import Top
from veneerwb.core.runs import elevation


def _wall(columns, rows=1, wide=500.0, high=700.0, gap=3.0, level=3.0):
    boxes = [
        box(c * (wide + gap), r * (high + level), c * (wide + gap) + wide,
            r * (high + level) + high)
        for r in range(rows)
        for c in reversed(range(columns))
    ]  # fmt: skip
    return elevation([Top.outline(one) for one in boxes])


@pytest.fixture(scope="session")
def wall():
    """Makes panels in a grid, given from the lower right one on."""
    return _wall


@pytest.fixture(scope="session")
def doors():
    """Five panels of 500 x 700 mm side by side."""
    return _wall(5)


@pytest.fixture(scope="session")
def leaves():
    """Tells the leaves of each panel of a laid run."""
    return lambda laid: [[piece.leaf for piece in layout.pieces] for layout in laid.layouts]

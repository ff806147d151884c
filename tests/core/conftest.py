# SPDX-License-Identifier: LGPL-2.1-or-later
"""What tests of the core share: refusals; panels of a wall and the leaves that they took; PNGs."""

from __future__ import annotations

import struct
import zlib

import pytest
from shapely.geometry import box

from veneerwb.core import Top, VeneerError
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


@pytest.fixture(scope="session")
def refused():
    """Asserts that a call is refused by that code, in one sentence with nothing left unfilled; the
    sentence."""

    def refused(code, call, *args, **more):
        with pytest.raises(VeneerError) as caught:
            call(*args, **more)
        text = str(caught.value)
        assert caught.value.code == code, text
        assert text.endswith(".") and "\n" not in text and "{" not in text
        return text

    return refused


def _chunk(kind, data):
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def _png(columns, rows, depth, kind, data):
    head = _chunk(b"IHDR", struct.pack(">IIBBBBB", columns, rows, depth, kind, 0, 0, 0))
    body = _chunk(b"IDAT", zlib.compress(data)) + _chunk(b"IEND", b"")
    return b"\x89PNG\r\n\x1a\n" + head + body


@pytest.fixture(scope="session")
def png():
    """Makes a PNG file by hand from its unfiltered data: columns, rows, depth, kind, data."""
    return _png

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the tests of the pages of a layout share."""

from __future__ import annotations

import pytest
from shapely.geometry import Polygon

from veneerwb.core import (
    Backer,
    Border,
    BuildUp,
    Core,
    Crossband,
    Disc,
    Lipping,
    Show,
    Star,
    Stringing,
    Top,
)
from veneerwb.core.shop.built import Built
from veneerwb.core.shop.drawing.drawn import Letters
from veneerwb.core.shop.drawing.legible import troubles
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.drawing.paper import PAPERS

CABLE = [(140, 90), (140, 170), (260, 170), (260, 90)]
SKEWED = Top.outline(Polygon([(-450, -300), (470, -280), (430, 300), (-400, 320)], [CABLE]))


def _look(paper="A3", unit="mm", **more):
    return Look(
        PAPERS[paper], Lengths(unit),
        **{
            "title": 'Hall <table> & "desk"', "number": "T-17", "owner": "Workshop",
            "drawn_by": "N. N.", "date": "2026-11-26", "revision": "3F09AC",
            "bundle": "Walnut & <oak>", "rests": "Registers rest on the figure, within 0.3 mm.",
        } | more,
    )  # fmt: skip


def _texts(pages):
    return [m.text for p in pages for m in p.drawing.marks if isinstance(m, Letters)]


def _sound(pages):
    assert [(page.title, trouble) for page in pages for trouble in troubles(page)] == []
    assert not [text for text in _texts(pages) if text.endswith("...")]


@pytest.fixture(scope="session")
def look():
    """How pages look on a paper, by name, in a unit; labels that would break a markup."""
    return _look


@pytest.fixture(scope="session")
def texts():
    """All that is written on pages."""
    return _texts


@pytest.fixture(scope="session")
def sound():
    """Asserts that nothing on pages is in the way of being read, nor cut off."""
    return _sound


@pytest.fixture(scope="session")
def skewed():
    """A top of four unlike sides with an opening."""
    return SKEWED


@pytest.fixture(scope="session")
def panels():
    """Panels built up: everything in it round an oval, a star in a skewed top, and a bare one."""
    return {
        "oval": _panel(Top.oval(1500.0, 1000.0)),
        "skewed": _panel(
            SKEWED, border=Border(40.0, "oak", kind="mitred"), inlay=Star(8, 90.0, 40.0, "maple"),
            lipping=Lipping(8.0, "oak", when="after veneering"), stringing=None, backer=None,
        ),
        "bare": Built(BuildUp(Show(0.6), Core(18.0, kind="solid wood")), Top.square(700.0)),
    }  # fmt: skip


def _panel(top, **parts):
    band = Crossband(1.5, "poplar")
    of = {
        "show": Show(0.6, "walnut, black"), "core": Core(18.0, "birch ply"),
        "backer": Backer(0.6, "walnut, black"), "crossband_above": band, "crossband_below": band,
        "lipping": Lipping(12.0, 'holly & "box" <pale>'), "stringing": Stringing(2.0, "maple"),
        "border": Border(60.0, "walnut, black", 8, "following"), "inlay": Disc(80.0, "ebony"),
    }  # fmt: skip
    return Built(BuildUp(**of | parts), top)

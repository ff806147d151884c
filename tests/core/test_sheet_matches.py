# SPDX-License-Identifier: LGPL-2.1-or-later
"""The sheet and the cut list of matches that are no ring of wedges: what is said is true."""

import csv
import io
import re

import pytest
from shapely.geometry import Polygon

from veneerwb.core import Stock, Top, radial
from veneerwb.core.checks.sufficiency import onto_leaf
from veneerwb.core.matches.end import end
from veneerwb.core.matches.quarters import quarters
from veneerwb.core.matches.radial import Radial
from veneerwb.core.matches.rings import Rings
from veneerwb.core.matches.side import side
from veneerwb.core.shop import cutlist
from veneerwb.core.shop.one_sheet.sheet import FIGURES, TEXTS, Facts, sheet
from veneerwb.core.shop.wedge import is_ring

STOCK = Stock(900.0, 2200.0, 40, 0.6)
HOLED = Top.outline(
    Polygon([(-700, -400), (700, -400), (700, 400), (-700, 400)],
            [[(100, 100), (300, 100), (300, 200)]])
)  # fmt: skip
LAID = {
    "side": (side(STOCK, HOLED, count=4), "left to right"),
    "end": (end(STOCK, Top.square(900.0), count=4), "row by row from the upper one down"),
    "continuous": (end(STOCK, Top.square(900.0), "continuous", count=4), "from the lowest up"),
    "box": (quarters(STOCK, Top.oval(1400.0, 900.0), "box"), "from the upper field"),
    "diamond": (quarters(STOCK, Top.square(900.0), "diamond"), "from the upper right quarter"),
    "herringbone": (
        quarters(STOCK, Top.boat(1500.0, 800.0, 500.0), "herringbone", strip=160.0), "in pairs",
    ),
    "rings": (Rings(Radial(8), Radial(16, first=9), 400.0).lay(STOCK, Top.round(900.0)),
              "the inner field first"),
    "off the middle": (radial(STOCK, Top.round(900.0), 6, centre=(60.0, 30.0)),
                       "run counter-clockwise."),
}  # fmt: skip


@pytest.mark.parametrize("name", LAID)
def test_the_sheet_of_any_match_says_what_is_true(name):
    layout, run = LAID[name]
    made = sheet(layout, Facts("Top", match=name))
    assert set(made.figures) == set(FIGURES) and set(made.texts) == set(TEXTS)
    said = " ".join(line for text in made.texts.values() for line in text.lines)
    assert run in said
    assert not re.search("wedge|ways|tip", said, re.IGNORECASE)
    assert (made.wedge_scale, made.set_out, made.kinds) == (None, None, [])
    assert f"{len(layout.pieces)} pieces" in said
    plan = made.figures["plan"].svg
    for piece in layout.pieces:
        assert f">{piece.position}</text>" in plan


@pytest.mark.parametrize("name", LAID)
def test_the_cut_list_of_any_match_names_the_corner_whose_place_it_gives(name):
    layout, run = LAID[name]
    text = cutlist.as_csv(layout)
    table = list(csv.reader(io.StringIO(text)))
    heads = table[table.index([]) + 1]
    assert heads[-2:] == ["lowest corner on leaf x mm", "lowest corner on leaf y mm"]
    assert run.replace("run ", "").rstrip(".") in text
    for piece, row in zip(layout.pieces, cutlist.rows(layout)):
        corners = onto_leaf(piece, layout.bundle).apply([s.start for s in piece.edge])
        assert row.tip_y == pytest.approx(min(y for _, y in corners), abs=1e-3)
        assert min(abs(row.tip_x - x) + abs(row.tip_y - y) for x, y in corners) < 1e-9


def test_a_box_has_fields_and_no_wedges():
    """On a square its four fields look like wedges."""
    layout = quarters(STOCK, Top.square(700.0), "box")
    assert not is_ring(layout)
    assert sheet(layout, Facts("Top")).texts["heading"].lines == ("4 pieces",)
    assert cutlist.headings(layout)[-1] == "lowest corner on leaf y mm"


LONG = "boat shape, 1200 by 700 mm, 450 mm at the ends, less 43 mm all round"


@pytest.mark.parametrize("kind", ["strips", "rings", "box"])
def test_the_title_block_tells_all_of_a_long_tops_sizes_and_the_ways(kind):
    boat = Top.boat(1200.0, 700.0, 450.0).inset(43.0)
    assert boat.name == LONG
    layout, ways = {
        "strips": lambda: (radial(STOCK, boat, 8, strips=3), "8"),
        "rings": lambda: (Rings(Radial(8), Radial(16, first=9), 400.0).lay(STOCK, boat), "8 + 16"),
        "box": lambda: (quarters(STOCK, boat, "box"), None),
    }[kind]()
    svg = sheet(layout, Facts()).figures["title block"].svg
    written = re.findall(">([^<]+)</text>", svg)
    assert sorted(LONG.split()) == sorted(" ".join(written[:2]).split())
    assert (written[2] == ways) == (ways is not None)


def test_a_ring_keeps_its_wedge_and_its_tip():
    layout = radial(STOCK, Top.oval(1400.0, 900.0), 8)
    assert is_ring(layout)
    assert cutlist.headings(layout) == cutlist.HEADINGS
    made = sheet(layout, Facts("Top"))
    assert made.wedge_scale and made.set_out.angle == pytest.approx(45.0)
    assert "Wedge" in made.texts["wedge heading"].lines[0]


def test_curves_are_drawn_as_such():
    plan = sheet(LAID["box"][0], Facts("Top")).figures["plan"].svg
    assert re.search(r"A\d+\.\d+ \d+\.\d+ -?0\.0000 0 0 ", plan)

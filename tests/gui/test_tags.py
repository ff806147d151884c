# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is written on the pieces in the 3-D view: positions as on the printed sheet, and leaves."""

import FreeCAD
import numpy as np
import pytest

from veneerwb.core.shop.cutlist import rows as cut_rows
from veneerwb.gui import scene
from veneerwb.host.objects import add_match, add_run, add_stock, layout, run_of
from veneerwb.paint.label import HEIGHT, label


@pytest.fixture
def written(monkeypatch):
    """(text, whether underlined, the small line below) of each tag that is made."""
    found, real = [], scene.tag

    def tag(text, place, high, z, underlined=False, below=""):
        found.append((text, underlined, below))
        return real(text, place, high, z, underlined, below)

    monkeypatch.setattr(scene, "tag", tag)
    return found


@pytest.fixture
def stock(fresh):
    made = add_stock(fresh, 300.0, 900.0, 16, 0.6)
    fresh.recompute()
    return made


@pytest.mark.parametrize("how", [
    {"Kind": "End match", "Top": "Rectangle", "Length": 600.0, "Width": 800.0},
    {"Kind": "Side by side", "Turn": "random", "Top": "Rectangle", "Length": 900.0, "Width": 400.0},
    {"Ways": 8, "Diameter": 500.0, "Order": "spread"},
    {"Kind": "Diamond", "Top": "Square", "Length": 300.0, "First": 5},
])  # fmt: skip
def test_positions_have_their_leaves_where_the_two_differ(fresh, stock, written, how):
    match = add_match(fresh, stock, **how)
    fresh.recompute()
    rows = cut_rows(layout(match))
    assert match.Message == "" and [row.leaf for row in rows] != [row.position for row in rows]
    wanted = [(str(row.position), row.side_up == "back", f"leaf {row.leaf}") for row in rows]
    assert written[-len(rows) :] == wanted


def test_a_position_stands_alone_where_it_is_its_leaf(fresh, stock, written):
    match = add_match(fresh, stock, Ways=8, Diameter=500.0)
    fresh.recompute()
    assert match.LeafOrder == list(range(1, 9))
    assert written[-8:] == [(str(k), k % 2 == 1, "") for k in range(1, 9)]


@pytest.mark.parametrize("how", [{}, {"Grain": 0.0}, {"Kind": "Box"}, {"Kind": "Diamond"}])
def test_a_run_shows_the_numbers_of_panels_and_leaves(fresh, stock, written, how):
    doors = []
    for k in range(2):
        one = fresh.addObject("Part::Box", "Door")
        one.Length, one.Width, one.Height = 240.0, 18.0, 400.0
        one.Placement.Base = FreeCAD.Vector(k * 243.0, 0.0, 0.0)
        doors.append((one, "Face3"))
    fresh.recompute()
    run = add_run(fresh, stock, doors, First=3, **{"Count": 0 if "Kind" in how else 2, **how})
    fresh.recompute()
    wanted = []
    for panel in run_of(run).laid.layouts:
        wanted += [("panel", panel), *((piece.leaf, piece.turned) for piece in panel.pieces)]
    assert run.Message == "" and len(wanted) >= 6
    told = written[-len(wanted) :]
    assert [text for text, _, below in told if below == "panel"] == ["1", "2"]
    leaves = [(int(text), under) for text, under, below in told if below == "leaf"]
    assert leaves == [one for one in wanted if one[0] != "panel"]


def test_a_second_line_is_below_the_first_and_leaves_it_as_it_is(user):
    one, two = label("7"), label("7", False, "leaf 12")
    assert len(two) > len(one) == HEIGHT and two.shape[1] > one.shape[1]
    upper = [(np.asarray(image)[6 : HEIGHT - 8, 6:-6] < 128).sum() for image in (one, two)]
    assert upper[0] == pytest.approx(upper[1], rel=0.02)  # the same figure
    assert (two[HEIGHT:-6, 6:-6] < 128).any() and two[10:-10, 2].max() < 60  # framed

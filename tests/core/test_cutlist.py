# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cut list: a row for each piece, true sizes, its revision, a file others read."""

from __future__ import annotations

import csv
import io

import numpy as np
import pytest

from veneerwb.core import Bundle, Leaf, Motion, Side, Stock, Top, VeneerError, radial
from veneerwb.core.photos.reading import Photo
from veneerwb.core.shop import cutlist

STOCK = Stock(300.0, 1000.0, 10, 0.6)
TOP = Top.round(600.0)


def listed(**settings):
    return radial(STOCK, TOP, 8, **{"placement": (150.0, 100.0), **settings})


def read(layout):
    """(head as a dictionary, rows as dictionaries) of the list, by the csv module."""
    table = list(csv.reader(io.StringIO(cutlist.as_csv(layout))))
    gap = table.index([])
    headings, *body = table[gap + 1 :]
    return dict(table[:gap]), [dict(zip(headings, row, strict=True)) for row in body]


def test_a_row_for_each_piece_in_the_order_of_positions():
    rows = cutlist.rows(listed(order=[3, 1, 4, 2, 10, 5, 9, 6]))
    assert [row.position for row in rows] == list(range(1, 9))
    assert [row.leaf for row in rows] == [3, 1, 4, 2, 10, 5, 9, 6]
    assert [row.side_up for row in rows] == ["back", "face"] * 4


def test_sizes_of_a_sector_and_its_blank():
    for row in cutlist.rows(listed(oversize=10.0)):
        # 2 x 300 sin 22.5 = 229.610; 2 x 310 sin 22.5 = 237.264.
        assert (row.net_across, row.net_along) == pytest.approx((229.610, 300.0), abs=5e-4)
        assert (row.blank_across, row.blank_along) == pytest.approx((237.264, 310.0), abs=5e-4)


def test_sizes_of_a_straight_blank():
    for row in cutlist.rows(listed(oversize=10.0, rim="straight")):
        # 2 x 310 tan 22.5 = 256.812.
        assert (row.blank_across, row.blank_along) == pytest.approx((256.812, 310.0), abs=5e-4)


def test_a_wedge_across_the_leaf_is_measured_across_the_leaf():
    for row in cutlist.rows(listed(placement=(0.0, 500.0, 0.0))):
        assert (row.net_across, row.net_along) == pytest.approx((300.0, 229.610), abs=5e-4)


def test_the_tip_lies_where_the_wedge_was_placed():
    assert {(round(r.tip_x, 9), round(r.tip_y, 9)) for r in cutlist.rows(listed())} == {
        (150.0, 100.0)
    }


def test_the_tip_is_given_on_each_pieces_own_leaf():
    photo = Photo.of(np.zeros((100, 30, 3), np.uint8), 10.0)
    leaves = tuple(
        Leaf(n, Side(photo, Motion(dx=float(n))), Side(photo, Motion(dy=float(n))))
        for n in range(1, 5)
    )
    rows = cutlist.rows(radial(Bundle(leaves, 0.6), TOP, 4, placement=(150.0, 100.0)))
    tips = [(row.tip_x, row.tip_y) for row in rows]  # 1 and 3 turned: by their backs
    expected = [(150.0, 101.0), (152.0, 100.0), (150.0, 103.0), (154.0, 100.0)]
    assert np.allclose(tips, expected, atol=1e-9)


def test_the_csv_reads_back():
    layout = listed(oversize=10.0)
    head, rows = read(layout)
    assert head["cut list, revision"] == layout.revision
    assert head["top"] == "round, 600 mm"
    assert (head["pieces"], head["leaf thickness mm"]) == ("8", "0.6")
    assert head["positions run"] == "counter-clockwise, seen from the show face"
    assert len(rows) == 8
    assert rows[1] == {
        "position": "2",
        "leaf": "2",
        "side up": "face",
        "net across the leaf mm": "229.61",
        "net along the grain mm": "300",
        "blank across the leaf mm": "237.264",
        "blank along the grain mm": "310",
        "tip on leaf x mm": "150",
        "tip on leaf y mm": "100",
    }


def test_the_caution_stands_in_the_head():
    head, _ = read(listed())
    assert "Dry-lay before glue" in head["caution"]


def test_a_changed_layout_has_another_revision_on_paper():
    assert (
        read(listed())[0]["cut list, revision"]
        != read(listed(oversize=1.0))[0]["cut list, revision"]
    )
    assert cutlist.as_csv(listed()) == cutlist.as_csv(listed())


@pytest.mark.parametrize("name", ["list.csv", "Liste für 'Tisch' à 8.csv"])
def test_the_file_holds_the_list(tmp_path, name):
    layout = listed()
    cutlist.write_csv(layout, tmp_path / name)
    assert (tmp_path / name).read_bytes() == cutlist.as_csv(layout).encode("utf-8")
    assert [p.name for p in tmp_path.iterdir()] == [name]


def test_a_folder_that_is_not_there_is_told(tmp_path):
    with pytest.raises(VeneerError) as caught:
        cutlist.write_csv(listed(), tmp_path / "nowhere" / "list.csv")
    assert caught.value.code == "cannot-write"
    assert not list(tmp_path.iterdir())


def test_an_old_list_stays_when_the_new_one_cannot_be_written(tmp_path):
    (tmp_path / "list.csv").mkdir()  # a folder stands in the way, whoever writes
    with pytest.raises(VeneerError):
        cutlist.write_csv(listed(), tmp_path / "list.csv")
    assert [p.name for p in tmp_path.iterdir()] == ["list.csv"]

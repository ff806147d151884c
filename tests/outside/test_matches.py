# SPDX-License-Identifier: LGPL-2.1-or-later
"""Matches of adjacent leaves and of a panel face against the published text: Architectural Woodwork
Standards, 1st ed. (2009, superseded), 1.2.19 to 1.2.22, pp. 73-76, and p. 84 for widths."""

from __future__ import annotations

import math

import pytest

from veneerwb.core import Placement, Stock, Top, VeneerError, check
from veneerwb.core.matches.end import end
from veneerwb.core.matches.side import FACES, side
from veneerwb.core.outlines import edge as edges

STOCK = Stock(width=400.0, length=3000.0, leaves=64, thickness=0.6)
FACE = Top.polygon(4, 1200.0)
PLACE = Placement(200.0, 100.0)


def leaves(layout):
    return [piece.leaf for piece in layout.pieces]


def widths(layout):
    spans = [edges.extent(piece.edge, 0.0) for piece in layout.pieces]
    return [high - low for low, high in spans]


def rows(layout):
    """The leaves as one reads them off the finished face, the upper row first."""
    seen: dict[int, list[tuple[float, int]]] = {}
    for piece in layout.pieces:
        x, y = piece.outline.centroid.coords[0]
        seen.setdefault(round(y), []).append((x, piece.leaf))
    return [[leaf for _, leaf in sorted(row)] for _, row in sorted(seen.items(), reverse=True)]


def inner(layout):
    return next((f for f in check(layout) if f.code == "inner-piece"), None)


# --- matches of adjacent leaves, pp. 73-74 -----------------------------------------------------


def test_slip_leaves_lie_side_by_side_in_order_and_none_is_turned():
    layout = side(STOCK, FACE, "slip", count=6)
    assert leaves(layout) == [1, 2, 3, 4, 5, 6]
    assert not any(piece.turned for piece in layout.pieces)


def test_of_booked_leaves_every_second_one_is_turned_over():
    layout = side(STOCK, FACE, "book", count=6)
    assert leaves(layout) == [1, 2, 3, 4, 5, 6]
    turned = [piece.turned for piece in layout.pieces]
    assert all(a != b for a, b in zip(turned, turned[1:]))
    barber_pole = next(f for f in check(layout) if f.code == "loose-faces")
    assert barber_pole.level == "note" and "not a defect" in barber_pole.text


def test_random_leaves_are_joined_out_of_order_on_purpose():
    layout = side(STOCK, FACE, "random", count=6)
    assert sorted(leaves(layout)) == [1, 2, 3, 4, 5, 6]
    assert not any(abs(a - b) == 1 for a, b in zip(leaves(layout), leaves(layout)[1:]))


# --- matches within a panel face, p. 74 --------------------------------------------------------


def test_a_running_face_has_as_many_leaves_as_it_takes_and_unequal_widths():
    layout = side(STOCK, FACE, face="running", width=350.0)
    assert len(layout.pieces) == math.ceil(1200.0 / 350.0)
    assert widths(layout) == pytest.approx([350.0, 350.0, 350.0, 150.0])


@pytest.mark.parametrize("count", [3, 4, 5, 6])
def test_a_balance_face_has_leaves_of_one_width_odd_or_even_in_number(count):
    assert widths(side(STOCK, FACE, count=count)) == pytest.approx([1200.0 / count] * count)


def test_a_centre_balance_face_has_an_even_number_and_a_joint_on_the_centre():
    for count in (2, 4, 6, 8):
        layout = side(STOCK, FACE, face="centre balance", count=count)
        assert widths(layout) == pytest.approx([1200.0 / count] * count)
        assert 0.0 in [round(seam.line.coords[0][0], 9) for seam in layout.seams]
    for count in (1, 3, 5):
        with pytest.raises(VeneerError, match="even"):
            side(STOCK, FACE, face="centre balance", count=count)


def test_a_slip_centre_book_face_has_an_even_number_of_four_or_more():
    for count in (1, 2, 3, 5, 7):
        with pytest.raises(VeneerError, match="even number of leaves, 4 or more"):
            side(STOCK, FACE, face="slip-centre-book", count=count)
    for count in (4, 6, 8):
        turned = [p.turned for p in side(STOCK, FACE, face="slip-centre-book", count=count).pieces]
        assert len(set(turned[: count // 2])) == len(set(turned[count // 2 :])) == 1
        assert turned[0] != turned[-1]


def test_nothing_that_a_face_is_found_to_be_is_said_to_comply():
    for face in FACES:
        layout = side(STOCK, FACE, face=face, width=300.0, placement=PLACE)
        assert not any("compl" in f"{f.text} {f.remedy}".lower() for f in check(layout))


# --- end matches, p. 75 ------------------------------------------------------------------------


def test_architectural_end_match_of_eight():
    assert rows(end(STOCK, FACE, "architectural", 8)) == [[1, 3, 5, 7], [2, 4, 6, 8]]


def test_panel_end_match_of_eight():
    assert rows(end(STOCK, FACE, "panel", 8)) == [[1, 2, 3, 4], [8, 7, 6, 5]]


def test_continuous_end_match_goes_in_order_end_to_end_up_the_wall():
    assert rows(end(STOCK, FACE, "continuous", 4, rows=4)) == [[4], [3], [2], [1]]
    assert rows(end(STOCK, FACE, "continuous", 6, rows=2)) == [[4, 5, 6], [1, 2, 3]]


# --- widths of inner pieces in face grade AA, p. 84: 6 in plain sliced, 3 in quartered or rift ---


@pytest.mark.parametrize(("inches", "reads"), [
    (6.0, "not under either"), (5.99, "under the first, not under the second"),
    (3.0, "under the first, not under the second"), (2.99, "under both"),
])  # fmt: skip
def test_the_narrowest_inner_piece_is_compared_with_the_text_as_information(inches, reads):
    count = 6
    layout = side(STOCK, Top.polygon(4, count * inches * 25.4), count=count)
    found = inner(layout)
    assert found.level == "note" and f"that is {reads}." in found.text
    assert found.values["width"] == pytest.approx(inches * 25.4)
    assert "2009" in found.text and "p. 84" in found.text


def test_outer_pieces_are_exempt():
    top = Top.polygon(4, 1200.0)
    layout = side(STOCK, top, face="running", width=395.0)  # the last one is 15 mm wide
    assert widths(layout)[-1] == pytest.approx(15.0)
    assert inner(layout).values["width"] == pytest.approx(395.0)
    assert inner(side(STOCK, top, count=2)) is None
    upper = end(STOCK, top, "panel", 6)
    assert (inner(upper).values["a"], inner(upper).values["width"]) == (2, pytest.approx(400.0))


# --- where the end match's joints lie (plain geometry) -------------------------------------------


@pytest.mark.parametrize("kind", ["architectural", "panel"])
def test_the_four_pieces_about_a_crossing_are_mirrored_both_ways(kind):
    layout = end(STOCK, FACE, kind, 8, placement=PLACE)
    at = (100.0, 70.0)  # about the crossing of the middle joint and the end joint
    seen = []
    for piece, sign in zip((2, 3, 6, 7), ((-1, 1), (1, 1), (-1, -1), (1, -1))):
        point = (sign[0] * at[0], sign[1] * at[1])
        seen.append(tuple(layout.pieces[piece - 1].onto_bundle.apply(point).round(6)))
    assert len(set(seen)) == 1

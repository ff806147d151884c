# SPDX-License-Identifier: LGPL-2.1-or-later
"""Ways of cutting pieces that differ: what each takes of the leaves, its work, and what is said."""

from __future__ import annotations

import csv
import io
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon

from veneerwb.core import (
    Bundle,
    Cut,
    Leaf,
    Motion,
    Radial,
    Run,
    Side,
    SideMatch,
    Stock,
    Top,
    VeneerError,
    check,
    elevation,
    end,
    quarters,
    radial,
    rings,
    side,
)
from veneerwb.core.layout import CUTS, cuts_of
from veneerwb.core.lots import cutting, cuttings, pieces_differ
from veneerwb.core.outlines import edge as edges
from veneerwb.core.photos.reading import Photo
from veneerwb.core.shop.cutlist import as_csv
from veneerwb.core.shop.lot_lines import lot_line
from veneerwb.core.shop.one_sheet.sheet import Facts, sheet

STOCK = Stock(900.0, 3000.0, 64, 0.6)
PLACE = (450.0, 300.0)
OVAL, BOAT = Top.oval(1200.0, 700.0), Top.boat(1200.0, 700.0, 400.0)
RECTANGLE, ROUND = Top.rectangle(1200.0, 700.0), Top.round(900.0)

LAID = {
    "oval": lambda cuts: radial(STOCK, OVAL, 12, placement=PLACE, cuts=cuts),
    "seams on both axes": lambda cuts: radial(
        STOCK, OVAL, 12, placement=PLACE, start=75.0, cuts=cuts
    ),
    "boat": lambda cuts: radial(STOCK, BOAT, 8, "slip", PLACE, oversize=6.0, cuts=cuts),
    "rectangle": lambda cuts: radial(STOCK, RECTANGLE, 8, placement=PLACE, cuts=cuts),
    "off-centre": lambda cuts: radial(
        STOCK, ROUND, 12, placement=PLACE, centre=(60.0, 25.0), cuts=cuts
    ),
    "strips": lambda cuts: radial(STOCK, OVAL, 8, placement=PLACE, strips=3, cuts=cuts),
    "rings": lambda cuts: rings(STOCK, OVAL, 8, 16, 300.0, cuts=cuts),
    "box": lambda cuts: quarters(STOCK, RECTANGLE, "box", cuts=cuts),
    "side": lambda cuts: side(STOCK, OVAL, count=8, cuts=cuts),
    "end": lambda cuts: end(STOCK, BOAT, count=8, cuts=cuts),
}


def drawn(piece):
    """A blank as it lies in the bundle."""
    return piece.onto_bundle.apply_to(piece.blank)


def blanks(layout):
    """The exact area of all blanks, mm2."""
    return math.fsum(edges.area(piece.blank_edge) for piece in layout.pieces)


# --- the choice ---------------------------------------------------------------------------------


@pytest.mark.parametrize("name", LAID)
@pytest.mark.parametrize("how", CUTS)
def test_the_choice_makes_the_cuts_and_every_piece_lies_in_its_own(name, how):
    layout = LAID[name](how)
    assert layout.cut_as == how and pieces_differ(layout)
    assert layout.recipe.lay(STOCK, layout.top).cuts == layout.cuts
    served = [position for cut in layout.cuts for position in cut.pieces]
    assert sorted(served) == [piece.position for piece in layout.pieces]
    for cut in layout.cuts:
        pieces = [layout.pieces[n - 1] for n in cut.pieces]
        for piece in pieces:
            assert drawn(piece).difference(cut.outline).area < 1e-3 * drawn(piece).length
            if how != "stack":
                assert cut.outline.difference(drawn(piece)).area < 1e-3 * drawn(piece).length
        if how == "own":
            assert len({piece.leaf for piece in pieces}) == 1


def test_one_stack_is_what_nobody_chose_and_changes_no_mark():
    plain, chosen = radial(STOCK, OVAL, 12, placement=PLACE), LAID["oval"]("stack")
    assert plain == chosen and plain.revision == chosen.revision
    marks = {LAID["oval"](how).revision for how in CUTS}
    assert len(marks) == 3, "paper made for another way of cutting is stale"


def test_another_way_of_cutting_moves_no_piece():
    stack, shape = LAID["boat"]("stack"), LAID["boat"]("shape")
    assert stack.pieces == shape.pieces and stack.seams == shape.seams


@pytest.mark.parametrize("how", ["", "union", None, 1])
def test_ways_that_there_are_not_are_refused(how):
    with pytest.raises(VeneerError, match="way of cutting cannot be .* one of: stack, shape"):
        radial(STOCK, OVAL, 12, cuts=how)


def test_panels_of_a_run_are_cut_as_their_recipe_says():
    diamond = [(0, 250), (150, 0), (300, 250), (150, 500)]
    panels = elevation(
        [Top.outline(Polygon([(x + 320 * k, y) for x, y in diamond])) for k in range(2)]
    )
    for mode in ("sequence", "blueprint"):
        run = Run(SideMatch(count=8, cuts="shape"), mode).lay(STOCK, panels)
        assert [layout.cut_as for layout in run.layouts] == ["shape", "shape"]
        assert all(len(layout.cuts) > 1 for layout in run.layouts)


# --- lots ---------------------------------------------------------------------------------------


def test_mirror_images_share_a_lot_where_one_of_them_is_turned():
    lots = [lot.pieces for lot in LAID["seams on both axes"]("shape").cuts]
    # The mirror in the upright axis takes position 1 to 2, 3 to 12, and one of each pair is turned;
    # half a turn about the centre takes k to k + 6.
    assert sorted(lots) == [(1, 2, 7, 8), (3, 6, 9, 12), (4, 5, 10, 11)]
    # Where wedges lie on the axes it takes k to 14 - k, the same side up: they share no lot.
    assert sorted(lot.pieces for lot in LAID["oval"]("shape").cuts) == [
        (1, 7), (2, 8), (3, 9), (4, 10), (5, 11), (6, 12)
    ]  # fmt: skip


def test_slipped_mirror_images_never_share_a_lot():
    book, slip = (side(STOCK, OVAL, turn, count=8, cuts="shape") for turn in ("book", "slip"))
    assert sorted(cut.pieces for cut in book.cuts) == [(1, 8), (2, 7), (3, 6), (4, 5)]
    assert sorted(cut.pieces for cut in slip.cuts) == [(k,) for k in range(1, 9)]


def test_strips_of_a_wedge_stay_cuts_of_their_own():
    layout = LAID["strips"]("stack")
    assert [len(cut.pieces) for cut in layout.cuts] == [8, 8, 8]
    for cut in LAID["strips"]("shape").cuts:
        assert len({layout.pieces[n - 1].cut for n in cut.pieces}) == 1


def test_parts_of_one_piece_in_an_opening_are_cut_once():
    slot = Polygon([(-300, -200), (300, -200), (300, 200), (-300, 200)],
                   [[(-150, -20), (150, -20), (150, 20), (-150, 20)]])  # fmt: skip
    layout = quarters(STOCK, Top.outline(slot), cuts="own")
    assert len(layout.cuts) == len({piece.leaf for piece in layout.pieces}) == 4


# --- what they take -----------------------------------------------------------------------------


@pytest.mark.parametrize("name", LAID)
def test_lots_take_exactly_the_blanks_and_a_stack_never_less(name):
    layout = LAID[name]("stack")
    stack, shape, own = cuttings(layout)
    assert [way.how for way in (stack, shape, own)] == list(CUTS)
    assert shape.area == pytest.approx(blanks(layout), rel=1e-9)
    assert own.area == pytest.approx(shape.area, rel=1e-12)
    assert stack.area > shape.area * 1.01
    assert shape.net == pytest.approx(layout.top.area, rel=1e-9)
    assert shape.used == pytest.approx(layout.top.area / blanks(layout), rel=1e-9)
    used = len({piece.leaf for piece in layout.pieces})
    assert stack.taken == pytest.approx(stack.area / (used * 900.0 * 3000.0), rel=1e-12)
    assert sum(own.leaves) == sum(shape.leaves) == sum(stack.leaves) == used
    assert len(own.lots) >= len(shape.lots) > len(stack.lots)


def test_the_stack_of_a_rectangle_takes_what_plane_geometry_says():
    # Eight wedges of 45 degrees, the first one's axis upright: half a turn makes four kinds.
    a, b, t = 600.0, 350.0, math.tan(math.radians(22.5))
    layout = radial(STOCK, RECTANGLE, 8, "slip", PLACE)
    union = Polygon()
    for axis in (90.0, 135.0, 180.0, 225.0):
        turn = math.radians(90.0 - axis)
        corners = [(x, y) for x, y in _wedge_of(a, b, axis)]
        spun = [(x * math.cos(turn) - y * math.sin(turn), x * math.sin(turn) + y * math.cos(turn))
                for x, y in corners]  # fmt: skip
        union = union.union(Polygon(spun))
    assert union.area > a * a * t  # the widest reaches along the long axis
    (lot,) = cutting(layout).lots
    assert lot.area == pytest.approx(union.area, rel=1e-9)
    assert cutting(layout).area == pytest.approx(8.0 * union.area, rel=1e-9)


def test_the_stack_of_an_oval_takes_what_its_furthest_rims_enclose():
    # Drawn back, every rim is r(t) about the tip, t from the wedges' axis, and the union reaches as
    # far as the furthest: half the integral of its square, by midpoints.
    t = np.radians((np.arange(200_000) + 0.5) / 200_000 * 30.0 - 15.0)
    furthest = np.zeros(t.shape)
    for piece in LAID["oval"]("stack").pieces:
        axis = math.radians(90.0 + 30.0 * (piece.position - 1))
        turn = axis + (-t if piece.turned else t)
        rim = 1.0 / np.hypot(np.cos(turn) / 600.0, np.sin(turn) / 350.0)
        furthest = np.maximum(furthest, rim)
    expected = 0.5 * float((furthest**2).mean()) * math.radians(30.0)
    (lot,) = cutting(LAID["oval"]("stack")).lots
    assert lot.area == pytest.approx(expected, rel=1e-6)


def _wedge_of(a, b, axis):
    """The corners of what a wedge of 45 degrees about the origin has of a rectangle."""
    edge = []
    for turn in (axis - 22.5, axis + 22.5):
        c, s = math.cos(math.radians(turn)), math.sin(math.radians(turn))
        reach = min(a / abs(c) if abs(c) > 1e-12 else math.inf,
                    b / abs(s) if abs(s) > 1e-12 else math.inf)  # fmt: skip
        edge.append((reach * c, reach * s))
    between = [
        (x, y) for x in (a, -a) for y in (b, -b)
        if abs(math.remainder(math.degrees(math.atan2(y, x)) - axis, 360.0)) < 22.5
    ]  # fmt: skip
    return [(0.0, 0.0), edge[0], *between, edge[1]]


# A hair off the middle, pieces that differ by it are one lot: hence whole tenths of a mm.
OFF = st.integers(-500, 500).map(lambda tenths: tenths / 10.0)


@settings(max_examples=15)
@given(
    st.integers(2, 8), OFF, OFF, st.floats(0.0, 12.0),
    st.sampled_from(["book", "slip"]), st.floats(0.0, 90.0),
)  # fmt: skip
def test_any_ring_is_cut_without_less_than_it_needs(half, x, y, oversize, turn, start):
    layout = radial(
        STOCK, OVAL, 2 * half, turn, PLACE, centre=(x, y), oversize=oversize, start=start
    )
    stack, shape, own = cuttings(layout)
    assert shape.area == pytest.approx(blanks(layout), rel=1e-9)
    assert stack.area >= shape.area * (1.0 - 1e-6)
    assert len(own.lots) == 2 * half and stack.strokes == 2
    assert shape.strokes == 2 * len(shape.lots)


# --- work ---------------------------------------------------------------------------------------


def test_seams_are_cut_once_through_a_stack_and_once_for_each_lot():
    stack, shape, own = cuttings(LAID["oval"]("stack"))
    assert (stack.strokes, shape.strokes, own.strokes) == (2, 12, 24)
    assert [lot.within for lot in stack.lots] == [0]


def test_seams_within_a_common_outline_are_cut_piece_by_piece():
    layout = LAID["box"]("stack")  # trapeziums of three seams and triangles of two
    stack, shape, own = cuttings(layout)
    assert (own.strokes, shape.strokes) == (10, 5)
    (lot,) = stack.lots
    # The triangles share one mitre with the trapeziums' outline; their other one lies within it.
    assert (lot.within, lot.strokes) == (2, 5)
    assert "cut to its own seams" in lot_line(layout)
    assert "cut back when the top is taped" in lot_line(LAID["oval"]("stack"))


# --- leaves -------------------------------------------------------------------------------------


def bundle(short=()):
    """Twelve leaves of 420 x 1300, those of the numbers in `short` with less at their heads."""
    photo = Photo.of(np.zeros((130, 42, 3), np.uint8), 10.0)
    low = Polygon([(0, 0), (420, 0), (420, 800), (0, 800)])
    leaves = [Leaf(n, Side(photo, Motion()), None, low if n in short else None)
              for n in range(1, 13)]  # fmt: skip
    return Bundle(tuple(leaves), 0.6)


def test_a_stack_that_reaches_off_a_leaf_is_told_with_what_would_do():
    # Leaf 1 is at the short axis: it needs 350 of the 600 mm that the outline has.
    leaves = bundle(short=(1, 7))
    stack = radial(leaves, OVAL, 12, placement=(210.0, 300.0))
    found = {f.code: f for f in check(stack)}
    assert "off-leaf" not in found
    off = found["stack-off-leaf"]
    assert (off.level, off.values["leaves"], off.pieces) == ("warn", (1, 7), (1, 7))
    assert off.values["overhang"] == pytest.approx(100.0, abs=0.01)
    assert "6" in off.remedy and "by shape" in off.remedy
    ways = cuttings(stack)
    assert [way.fits for way in ways] == [False, True, True]
    assert ways[0].over == pytest.approx({1: 100.0, 7: 100.0}, abs=0.01)
    for how in ("shape", "own"):
        laid = radial(leaves, OVAL, 12, placement=(210.0, 300.0), cuts=how)
        assert "stack-off-leaf" not in {f.code for f in check(laid)}
    assert not cutting(stack, "shape", margin=200.0).fits


def test_a_margin_counts_for_the_common_outline_too():
    layout = radial(bundle(short=(1,)), OVAL, 12, placement=(210.0, 190.0))
    assert "stack-off-leaf" not in {f.code for f in check(layout)}
    (off,) = [f for f in check(layout, margin=30.0) if f.code == "stack-off-leaf"]
    assert off.values["overhang"] == pytest.approx(20.0, abs=0.01)


# --- what is said -------------------------------------------------------------------------------


@pytest.mark.parametrize("name", LAID)
def test_the_finding_speaks_of_the_choice_and_of_the_other(name):
    said = {}
    for how in CUTS:
        layout = LAID[name](how)
        (found,) = [f for f in check(layout) if f.code == "unequal-cuts"]
        stack, shape, own = cuttings(layout)
        assert found.values["together"] == pytest.approx(stack.area / 1e6)
        assert found.values["apart"] == pytest.approx(shape.area / 1e6)
        assert (found.values["lots"], found.values["single"]) == (len(shape.lots), len(own.lots))
        said[how] = found
    assert "cut as one stack" in said["stack"].text and "by shape" in said["stack"].remedy
    assert "are cut in" in said["shape"].text and "are cut as single" in said["own"].text


def test_nothing_is_said_where_all_pieces_are_alike():
    for how in CUTS:
        layout = radial(STOCK, ROUND, 12, cuts=how)
        assert not pieces_differ(layout) and lot_line(layout) == ""
        assert "unequal-cuts" not in {f.code for f in check(layout)}
        assert "lot 1" not in as_csv(layout)
    assert len(radial(STOCK, ROUND, 12, cuts="own").cuts) == 12


def test_a_trued_book_ring_is_told_what_its_mirrors_need():
    for turn, told in (("book", True), ("slip", False)):
        laid = radial(STOCK, ROUND, 12, turn)
        (over,) = [f for f in check(laid, wedge_angle=30.2) if f.code == "closure-over"]
        assert ("mirror only where both" in over.text) == told
        assert "single pieces" in over.remedy
    laid = radial(STOCK, ROUND, 12, cuts="own")
    (over,) = [f for f in check(laid, wedge_angle=30.2) if f.code == "closure-over"]
    assert "fit each piece" in over.remedy


def listed(layout):
    table = list(csv.reader(io.StringIO(as_csv(layout))))
    return {row[0]: row[1] for row in table[: table.index([])]}


def test_the_cut_list_has_a_line_for_each_lot():
    stack, shape = listed(LAID["oval"]("stack")), listed(LAID["oval"]("shape"))
    assert stack["cut as"] == "one stack" and "lot 2" not in stack
    # 2 x 600 sin 15 = 310.58 wide at a rim of 600; an oval's rim is less wide.
    assert "positions 1-12; leaves 1-12" in stack["lot 1"]
    assert shape["cut as"] == "lots by shape" and "lot 7" not in shape
    (first,) = [lot for lot in LAID["oval"]("shape").cuts if 1 in lot.pieces]
    x0, y0, x1, y1 = first.outline.bounds
    assert shape["lot 1"].startswith(f"{x1 - x0:.1f} x {y1 - y0:.0f} mm")
    assert shape["lot 1"].endswith("positions 1, 7; leaves 1, 7")


def test_the_sheet_says_how_it_is_cut():
    notes = {
        how: " ".join(sheet(LAID["oval"](how), Facts()).texts["notes"].lines) for how in CUTS
    }
    assert "Cut as one stack to an outline of" in notes["stack"]
    assert "Cut in 6 lots by shape, each set out by itself: 1, 7; 2, 8;" in notes["shape"]
    assert "Cut as single pieces, set out 12 times." in notes["own"]
    wedge = {how: sheet(LAID["oval"](how), Facts()).texts["wedge note"].lines[0] for how in CUTS}
    assert "As trimmed" in wedge["stack"] and "As cut" in wedge["shape"]


def test_a_layout_without_a_recipe_is_one_stack():
    layout = LAID["oval"]("shape")
    bare = type(layout)(layout.pieces, layout.seams, (), layout.top, layout.bundle)
    assert bare.cut_as == "stack" and isinstance(cuts_of(bare.pieces)[0], Cut)
    assert Radial(8).cuts == "stack"

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages of a layout say what the model holds: plan, pieces, stack, section, lists, words."""

from __future__ import annotations

import math
import re
from dataclasses import replace

import pytest

from veneerwb.core import Stock, Top, bill, check, quarters, radial, side
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.outlines import edge as edges
from veneerwb.core.shop.cutlist import rows
from veneerwb.core.shop.drawing.drawn import Image, Letters, Stroke
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages import finished, lists, notes, pieces, plan, section, stack
from veneerwb.core.shop.pages.gather import sheet_pages
from veneerwb.core.shop.pages.pictures import Pictured, Pictures
from veneerwb.core.shop.shapes import shapes
from veneerwb.core.shop.stack import cuts_on_leaf

STOCK = Stock(900.0, 3000.0, 64, 0.6)
TOPS = {
    "round": Top.round(800.0),
    "six sides": Top.polygon(6, 700.0),
    "oval": Top.oval(900.0, 620.0),
    "square": Top.square(700.0),
    "rectangle": Top.rectangle(900.0, 600.0),
    "racetrack": Top.racetrack(1000.0, 500.0),
    "boat": Top.boat(1100.0, 560.0, 320.0),
}
BY_KEY = {match.key: match for match in MATCHES}


# --- the plan -------------------------------------------------------------------------------------


def test_the_plan_names_every_position_once_and_every_leaf(look, texts):
    layout = radial(STOCK, TOPS["round"], 16, order="spread")
    said = texts(plan.pages(layout, look("A1")))
    for piece in layout.pieces:
        assert said.count(str(piece.position)) >= 1
        assert f"L{piece.leaf}" in said
    assert any("Underlined: the leaf is turned over" in text for text in said)


def test_a_turned_piece_is_underlined_in_its_place(look):
    layout = radial(STOCK, TOPS["round"], 12)
    (page,) = plan.pages(layout, look("A1"))
    marks = page.drawing.marks
    short = [m for m in marks if isinstance(m, Stroke) and len(m.edge) == 1
             and m.edge[0].length < 8.0]  # fmt: skip
    for piece in layout.pieces:
        at = [m for m in marks if isinstance(m, Letters) and m.text == str(piece.position)
              and m.height > 3.0 and m.anchor == "middle"]  # fmt: skip
        assert len(at) == 1
        x, y = at[0].at
        under = [s for s in short if abs(s.edge[0].start[1] - s.edge[0].end[1]) < 1e-9
                 and 0.0 < y - s.edge[0].start[1] < 1.5
                 and abs((s.edge[0].start[0] + s.edge[0].end[0]) / 2.0 - x) < 0.01]  # fmt: skip
        assert bool(under) == piece.turned


@pytest.mark.parametrize(("paper", "ways"), [("A4 upright", 64), ("A4", 48), ("A3", 24)])
def test_numbers_that_find_no_room_stand_outside_and_none_is_lost(paper, ways, look, texts):
    layout = radial(STOCK, Top.round(2400.0), ways)
    said = texts(plan.pages(layout, look(paper)))
    assert {str(k) for k in range(1, ways + 1)} <= {text.split(" ")[0] for text in said}


@pytest.mark.parametrize("paper", ["A4 upright", "A3"])
def test_pieces_too_small_for_their_numbers_are_drawn_larger_in_parts(paper, look, sound, texts):
    layout = radial(Stock(900.0, 3000.0, 200, 0.6), Top.round(1200.0), 48, strips=4)
    made = plan.pages(layout, look(paper))
    assert len(made) > 2
    sound(made)
    said = set(texts(made[1:]))
    assert {str(k) for k in range(1, 193)} <= said
    assert any("column 1 of" in text for text in said)


def test_sizes_that_do_not_fit_between_their_arrows_stand_clear(look, sound):
    layout = side(STOCK, Top.rectangle(6000.0, 200.0), "book", "balance", 8)
    sound(plan.pages(layout, look("A4 upright", "both")))


def test_the_plan_gives_the_whole_tops_size_and_the_fields(look, texts, panels):
    built = panels["oval"]
    field = built.build_up.field(built.top)
    said = texts(plan.pages(radial(STOCK, field, 24), look("A3"), built))
    assert "1500.0" in said and "1000.0" in said
    assert "field 1376.0" in said and "field 876.0" in said
    words = " ".join(said)
    for part in ("border, walnut, black, 60.0 wide", "stringing line, maple, 2.0 wide",
                 "inlay, ebony, 80.0 x 80.0", "12.0 wide, in one, under the veneer"):  # fmt: skip
        assert part in words


def test_an_opening_is_placed_from_the_centre_of_the_match(look, texts, skewed):
    layout = quarters(STOCK, skewed, "diamond")
    words = " ".join(texts(plan.pages(layout, look("A3"))))
    assert "opening 120.0 x 80.0, its middle 200.0 right of and 130.0 above the match's" in words


def test_the_plans_lines_lie_where_the_model_says(look, texts):
    """Every seam of the model is on the paper at the scale that the title block names."""
    layout = quarters(STOCK, TOPS["square"], "diamond")
    (page,) = plan.pages(layout, look("A3"))
    scale = next(t for t in texts([page]) if re.fullmatch(r"1:\d+", t))
    factor = 1.0 / int(scale.split(":")[1])
    drawn = {round(m.edge[0].length, 3) for m in page.drawing.marks
             if isinstance(m, Stroke) and len(m.edge) == 1}  # fmt: skip
    for seam in layout.seams:
        assert round(seam.line.length * factor, 3) in drawn


# --- pieces ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("key", BY_KEY)
def test_every_position_has_its_shape_once(key):
    for top in TOPS.values():
        layout = BY_KEY[key].sample(STOCK, top)
        found = shapes(layout)
        assert sorted(p for s in found for p in s.positions) == list(
            range(1, len(layout.pieces) + 1)
        )
        for shape in found:
            for position in shape.positions:
                piece = layout.pieces[position - 1]
                assert edges.area(shape.net) == pytest.approx(edges.area(piece.edge), rel=1e-9)


def test_a_shapes_sizes_are_those_of_the_cut_list():
    layout = BY_KEY["herringbone"].sample(STOCK, TOPS["racetrack"])
    listed = rows(layout)
    for shape in shapes(layout):
        for position in shape.positions:
            row = listed[position - 1]
            assert shape.size == pytest.approx((row.net_across, row.net_along), abs=1e-3)
            assert shape.blank_size == pytest.approx((row.blank_across, row.blank_along), abs=1e-3)


def test_corners_are_measured_from_the_left_and_lower_ends():
    (shape,) = shapes(quarters(STOCK, Top.square(1000.0), "diamond"))
    half = 1000.0 / math.sqrt(2.0)
    corners = {(round(c.x, 6) + 0.0, round(c.y, 6) + 0.0) for c in shape.corners}
    assert corners == {
        (round(x, 6), round(y, 6))
        for x, y in ((half / 2, 0.0), (half, half / 2), (half / 2, half), (0.0, half / 2))
    }
    assert all(c.angle == pytest.approx(90.0) for c in shape.corners)
    assert all(c.side.chord == pytest.approx(500.0) for c in shape.corners)


def test_a_hollow_corner_and_an_opening_have_their_true_angles(look, texts, panels):
    panel = panels["skewed"]
    layout = quarters(STOCK, panel.build_up.field(panel.top), "diamond")
    for shape in shapes(layout):
        total = sum(c.angle for c in shape.corners if c.side)
        straight = all(c.side.form == "straight" for c in shape.corners if c.side)
        assert straight and total == pytest.approx(180.0 * (len(shape.net) - 2), abs=1e-6)
    said = texts(pieces.pages(layout, look("A1")))
    assert any(text.startswith("Opening, cut after pressing") for text in said)


def test_a_wedges_figures_are_the_models(look, texts):
    layout = radial(STOCK, Top.round(1200.0), 16, oversize=10.0)
    said = texts(pieces.pages(layout, look("A3")))
    half = math.pi / 16.0
    chord, rise = 1200.0 * math.sin(half), 600.0 * (1.0 - math.cos(half))
    expected = {"600.0", f"{chord:.1f}", f"rise {rise:.1f}", "oversize 10.0", "22.5°", "grain"}
    assert expected <= set(said)
    assert f"{1000.0 * math.tan(half):.1f}" in said and "base 1000.0" in said
    assert any("arc of radius 600.0" in text for text in said)


def test_a_set_out_takes_the_base_that_is_given(look, texts):
    layout = radial(STOCK, Top.round(1200.0), 12)
    said = texts(pieces.pages(layout, look("A3"), 800.0))
    assert "base 800.0" in said and f"{800.0 * math.tan(math.pi / 12.0):.1f}" in said


@pytest.mark.parametrize("unit", ["mm", "both"])
@pytest.mark.parametrize("paper", ["A4 upright", "A3"])
def test_no_row_of_a_pieces_corners_is_lost(paper, unit, look, texts, panels):
    panel = panels["oval"]
    layout = radial(STOCK, panel.build_up.field(panel.top), 24, oversize=10.0)
    one = look(paper, unit)
    said = texts(pieces.pages(layout, one))
    for shape in shapes(layout):
        for corner in (*shape.corners, *shape.blank_corners):
            assert one.lengths.cell(corner.x).split("\n")[0] in said
    curved = sum(
        c.side is None for s in shapes(layout) for c in (*s.corners, *s.blank_corners)
    )
    assert " ".join(said).count("on the curve") + said.count("on the") >= curved


# --- the stack ------------------------------------------------------------------------------------


def test_tip_and_axis_are_measured_along_the_leaf_and_square_off_it(look, texts):
    layout = radial(STOCK, Top.round(1200.0), 12, oversize=10.0)
    (cut,) = cuts_on_leaf(layout)
    tip, end = cut.places
    row = rows(layout)[cut.positions[0] - 1]
    assert (abs(tip.beside), tip.along) == pytest.approx((row.tip_x, row.tip_y), abs=1e-6)
    assert math.dist(tip.at, end.at) == pytest.approx(610.0, abs=0.02)
    assert cut.turn == pytest.approx(0.0, abs=1e-6)
    said = texts(stack.pages(layout, look("A3")))
    for place in cut.places:
        assert f"{place.along:.1f}" in said and f"{abs(place.beside):.1f}" in said


def test_the_marks_on_the_leaf_are_taken_where_there_are_some(look, sound):
    layout = radial(STOCK, Top.round(1200.0), 12)
    marks = {k: [(50.0, 60.0), (850.0, 70.0), (60.0, 2900.0)] for k in range(1, 65)}
    (cut,) = cuts_on_leaf(layout, marks)
    assert [m.kind for m in cut.marks] == ["paper mark"] * 2
    a, b = (complex(*m.place) for m in cut.marks)
    for place in cut.places:
        back = a + (b - a) / abs(b - a) * complex(place.along, place.beside)
        assert (back.real, back.imag) == pytest.approx(place.at, abs=1e-6)
        assert place.near == pytest.approx(abs(complex(*place.at) - a))
    sound(stack.pages(layout, look("A4 upright", "both"), None, marks))


def test_the_leaf_on_its_side_measures_the_same():
    layout = radial(STOCK, Top.round(1200.0), 12)
    (cut,) = cuts_on_leaf(layout)
    laid = cut.laid
    assert laid.size == cut.size[::-1]
    assert laid.outline.area == pytest.approx(cut.outline.area)
    for before, after in zip((*cut.marks, *cut.places), (*laid.marks, *laid.places)):
        x, y = getattr(before, "place", None) or before.at
        assert (getattr(after, "place", None) or after.at) == pytest.approx((y, cut.size[0] - x))


@pytest.mark.parametrize("key", ["radial in strips", "rings", "herringbone"])
def test_there_is_a_page_for_each_cut(key, look):
    layout = BY_KEY[key].sample(STOCK, TOPS["round"])
    assert len(stack.pages(layout, look("A3"))) == len(layout.cuts)


# --- section and lists ----------------------------------------------------------------------------


def test_the_section_names_every_layer_with_its_thickness(look, texts, panels):
    built = panels["oval"]
    said = texts(section.pages(built, look("A3")))
    for name, thick in (("backer", "0.6"), ("crossband below", "1.5"), ("core", "18"),
                        ("crossband above", "1.5"), ("show face: field", "0.6")):  # fmt: skip
        assert name in said and thick in said
    assert {"12.0", "60.0", "2.0"} <= set(said)
    assert any("not to scale" in text for text in said)
    assert section.pages(None, look()) == []


@pytest.mark.parametrize(("paper", "unit"), [("A4 upright", "mm"), ("A3", "both"), ("A1", "inch")])
def test_the_cut_list_holds_every_row_once(paper, unit, look, sound, texts):
    layout = radial(STOCK, TOPS["oval"], 64, oversize=10.0)
    one = look(paper, unit)
    made = lists.cut_list(layout, one)
    sound(made)
    said = " ".join(texts(made))
    for row in rows(layout):
        size = one.lengths.cell_size(row.net_across, row.net_along).replace("\n", " ")
        assert size in said
    sides = [text for text in texts(made) if text in ("face", "back")]
    assert sides.count("face") == sides.count("back") == 32
    headings = [text for text in texts(made) if text == "pos."]
    assert len(headings) >= len(made)


def test_the_bill_on_paper_is_the_bill(look, texts, panels):
    built = panels["oval"]
    said = texts(lists.bill_pages(built, look("A3")))
    for row in bill(built.parts):
        assert row.item in said and f"{row.length:.1f}" in said and f"{row.area_m2:.3f} m2" in said


# --- words ----------------------------------------------------------------------------------------


def test_findings_stand_with_their_remedy_the_gravest_first(look, sound, texts):
    layout = side(Stock(100.0, 300.0, 3, 0.6), TOPS["round"], "book", "balance", 3)
    found = check(layout)
    assert any(finding.level == "stop" for finding in found)
    made = notes.pages(layout, look("A3"), found)
    said = " ".join(texts(made))
    sound(made)
    for finding in (notes.in_lengths(one, look("A3").lengths) for one in found):
        assert finding.text in said and finding.remedy in said
    assert said.index("STOP") < min(said.index(f" {word} ") for word in ("note", "caution"))


def test_every_page_carries_the_mark_and_on_what_it_rests(look, texts):
    layout = radial(STOCK, TOPS["round"], 12)
    one = look("A3", revision=layout.revision)
    for page in sheet_pages(layout, one):
        said = texts([page])
        assert layout.revision in said and one.rests in " ".join(said)
        assert any("Dry-lay" in text or "cut away from the hand" in text for text in said)


def test_labels_do_no_harm_in_an_svg(look):
    from xml.etree import ElementTree

    for page in sheet_pages(radial(STOCK, TOPS["round"], 12), look("A3")):
        root = ElementTree.fromstring(page.drawing.svg())
        assert 'Hall <table> & "desk"' in [element.text for element in root.iter()]


def test_the_picture_lies_to_scale_on_its_page(look):
    layout = radial(STOCK, TOPS["oval"], 12)
    picture = Pictured(Box(-450.0, -310.0, 900.0, 620.0), b"\xff\xd8")
    (page,) = finished.pages(_photographed(layout), look("A3"), Pictures(picture))
    (image,) = [m for m in page.drawing.marks if isinstance(m, Image)]
    assert image.box.wide / image.box.high == pytest.approx(900.0 / 620.0)
    assert page.paper.frame.holds(image.box)
    assert finished.pages(layout, look("A3")) == []


def _photographed(layout):
    """The layout on leaves that have sides, as a bundle's have."""

    class Seen(Stock):
        def leaf(self, number):
            class One:
                def side(self, turned):
                    class Shown:
                        source = "neighbour"

                    return Shown()

            return One()

    return replace(layout, bundle=Seen(900.0, 3000.0, 64, 0.6))

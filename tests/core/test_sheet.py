# SPDX-License-Identifier: LGPL-2.1-or-later
"""The sheet of a layout: scales, set-out, kinds of wedge, and what is written where."""

import math
from itertools import combinations
from pathlib import Path

import pytest

from veneerwb.core import Stock, Top, VeneerError, radial
from veneerwb.core.shop.cutlist import CAUTION, rows
from veneerwb.core.shop.drawing.lettering import degrees, fitted, length, runs, width, wrapped
from veneerwb.core.shop.drawing.scales import SCALES, scale_for
from veneerwb.core.shop.one_sheet import frame
from veneerwb.core.shop.one_sheet.sheet import FIGURES, TEXTS, Facts, sheet, stale
from veneerwb.core.shop.setout import set_out
from veneerwb.core.shop.wedge import kinds, wedge_of

ROOT = Path(__file__).parents[2]
STOCK = Stock(4000.0, 4000.0, 64, 0.6)
FACTS = Facts("Top", "N. N.", "2026-01-31", "Bundle", "book, sequence")


def laid(ways, top, **options):
    return radial(STOCK, top, ways, turn=options.pop("turn", "slip"), **options)


TOPS = {
    "300": Top.round(300.0),
    "1200": Top.round(1200.0),
    "3000": Top.round(3000.0),
    "hexagon": Top.polygon(6, 900.0),
    "triangle": Top.polygon(3, 400.0),
    "octagon": Top.polygon(8, 2400.0),
}
ALL = [(name, ways) for name in TOPS for ways in (3, 4, 7, 12, 16, 24, 64)]

# --- scales -------------------------------------------------------------------------------------

ISO_5455 = """50:1 20:1 10:1 5:1 2:1 1:1 1:2 1:5 1:10 1:20 1:50 1:100 1:200 1:500 1:1000 1:2000
1:5000 1:10000"""
"""ISO 5455:1979, Technical drawings - Scales, table in clause 4: enlargement, full size,
reduction."""


def test_the_scales_are_those_of_the_standard():
    assert [str(scale) for scale in SCALES] == ISO_5455.split()


@pytest.mark.parametrize("size", [1.0, 3.0, 7.4, 7.6, 75.0, 76.0, 150.0, 300.0, 1200.0, 3000.0])
def test_the_largest_scale_that_fits_is_taken(size):
    scale = scale_for((size, size / 2.0), (150.0, 150.0))
    assert size * scale.factor <= 150.0
    larger = SCALES[: SCALES.index(scale)]
    assert all(size * other.factor > 150.0 for other in larger)


@pytest.mark.parametrize(("top", "scale"), [("300", "1:2"), ("1200", "1:10"), ("3000", "1:20")])
def test_small_and_large_tops_choose_a_sensible_scale(top, scale):
    assert str(sheet(laid(16, TOPS[top]), FACTS).scale) == scale


# --- set-out ------------------------------------------------------------------------------------


@pytest.mark.parametrize("ways", [3, 7, 12, 16, 24, 64])
def test_the_offset_is_the_base_times_the_tangent_of_half_the_angle(ways):
    one = set_out(360.0 / ways, 600.0)
    assert one.base == 1000.0
    assert one.offset == pytest.approx(1000.0 * math.tan(math.pi / ways), rel=1e-12)


@pytest.mark.parametrize(
    ("side", "base"), [(150.0, 500.0), (500.0, 500.0), (500.1, 1000.0), (1500.0, 1500.0)]
)
def test_the_base_is_round_and_reaches_the_rim(side, base):
    assert set_out(30.0, side).base == base
    assert set_out(30.0, side, 800.0).base == 800.0


@pytest.mark.parametrize("base", [-1.0, 1e9, 1e-9])
def test_a_base_that_cannot_be_is_refused(base):
    with pytest.raises(VeneerError, match="base"):
        set_out(30.0, 600.0, base)


# --- wedges -------------------------------------------------------------------------------------


@pytest.mark.parametrize("turn", ["slip", "book"])
def test_all_wedges_of_a_round_top_are_cut_alike(turn):
    (one,) = kinds(laid(12, TOPS["1200"], turn=turn, oversize=10.0).pieces)
    assert one.positions == tuple(range(1, 13))
    assert one.angle == pytest.approx(30.0, abs=1e-9)
    assert one.sides == pytest.approx((600.0, 600.0), abs=1e-9)
    assert one.chord == pytest.approx(1200.0 * math.sin(math.radians(15.0)), abs=1e-9)
    assert one.rise == pytest.approx(600.0 * (1.0 - math.cos(math.radians(15.0))), abs=1e-9)
    assert one.oversize == pytest.approx(10.0, abs=1e-9)
    assert one.grain == pytest.approx(0.0, abs=1e-9)


def test_halves_of_a_flat_are_one_kind_only_if_every_second_leaf_is_turned():
    hexagon = TOPS["hexagon"]
    assert [k.positions for k in kinds(laid(12, hexagon, start=75.0, turn="book").pieces)] == [
        tuple(range(1, 13))
    ]
    slip = kinds(laid(12, hexagon, start=75.0).pieces)
    assert sorted(k.positions for k in slip) == [tuple(range(1, 12, 2)), tuple(range(2, 13, 2))]


def test_kinds_cover_every_position_once_and_the_longest_is_drawn():
    found = kinds(laid(16, TOPS["hexagon"], oversize=8.0).pieces)
    assert sorted(p for one in found for p in one.positions) == list(range(1, 17))
    assert max(found[0].sides) == pytest.approx(max(max(one.sides) for one in found))
    assert all(one.oversize == pytest.approx(8.0, abs=1e-9) for one in found)


def test_the_grain_is_shown_as_it_lies_on_the_leaf():
    pieces = laid(12, TOPS["300"], placement=(500.0, 500.0, 80.0), turn="book").pieces
    assert {round(wedge_of(piece).grain, 9) for piece in pieces} == {10.0}


# --- words --------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("value", "text"), [(22.5, "22.5"), (5.625, "5.625"), (360.0 / 7.0, "51.43"), (120.0, "120")]
)
def test_angles_are_exact_or_to_a_hundredth(value, text):
    assert degrees(value) == text + "\N{DEGREE SIGN}"


def test_lengths_and_runs_are_written_plainly():
    assert [length(v) for v in (600.0, 11.5255, -0.01)] == ["600.0", "11.5", "0.0"]
    assert runs([1, 2, 3, 4, 7, 9, 10]) == "1 to 4, 7, 9, 10"


def test_text_is_broken_and_shortened_to_its_room():
    lines = wrapped("dry-lay before glue and look at every seam", 30.0, 2.5)
    assert len(lines) > 1 and all(width(line, 2.5) <= 30.0 for line in lines)
    assert fitted("short", 60.0, 3.5) == ("short", 3.5)
    line, height = fitted("a title that is much too long for the field that it has", 60.0, 3.5)
    assert line.endswith("...") and width(line, height) <= 60.0


# --- the sheet ----------------------------------------------------------------------------------


@pytest.mark.parametrize(("top", "ways"), ALL)
def test_everything_lies_in_the_frame_and_apart(top, ways):
    made = sheet(laid(ways, TOPS[top], oversize=10.0), FACTS)
    texts = {role: text.box for role, text in made.texts.items()}
    figures = {role: figure.box for role, figure in made.figures.items() if role != "table"}
    for role, box in {**texts, **figures, "picture": made.picture}.items():
        assert frame.FRAME.holds(box), role
    boxes = {**texts, **figures, "picture": made.picture, "stale": stale("x " * 400).box}
    for (a, one), (b, other) in combinations(boxes.items(), 2):
        assert not one.meets(other), (a, b)


@pytest.mark.parametrize(("top", "ways"), ALL)
def test_texts_can_be_centred_on_the_common_axis(top, ways):
    for text in sheet(laid(ways, TOPS[top]), FACTS).texts.values():
        assert text.x + text.box.wide <= frame.AXIS + (frame.AXIS - text.x)


@pytest.mark.parametrize("ways", [16, 12, 24])
def test_the_list_holds_the_cut_lists_numbers(ways):
    layout = laid(ways, TOPS["1200"], turn="book", oversize=10.0)
    texts = sheet(layout, FACTS).texts

    def column(role):
        return [line for k in (1, 2) for line in texts[f"{role} {k}"].lines[2:]]

    listed = rows(layout)
    assert column("position") == [str(k) for k in range(1, ways + 1)]
    assert column("leaf") == [str(row.leaf) for row in listed]
    assert column("side") == ["back" if k % 2 else "face" for k in range(1, ways + 1)]
    assert column("net") == [f"{r.net_across:.1f} x {r.net_along:.1f}" for r in listed]
    assert column("blank") == [f"{r.blank_across:.1f} x {r.blank_along:.1f}" for r in listed]


def test_what_must_be_read_is_written():
    made = sheet(laid(16, TOPS["1200"], turn="book"), FACTS)
    assert made.texts["heading"].lines == ("16 ways",)
    notes = " ".join(made.texts["notes"].lines)
    for words in (
        "scale 1:10",
        "Seen from the show face",
        "run counter-clockwise",
        "Underlined: the leaf is turned over",
        CAUTION,
    ):
        assert words in notes
    assert "1000.0" in " ".join(made.texts["set-out note"].lines)
    assert f"{1000.0 * math.tan(math.pi / 16.0):.1f}" in " ".join(made.texts["set-out note"].lines)


def test_the_findings_are_on_the_sheet_and_do_not_run_out_of_it():
    said = ("stop: the leaf is too short.", *["warn: words " * 40] * 9)
    text = sheet(laid(16, TOPS["1200"]), Facts(findings=said)).texts["notes"]
    assert "stop: the leaf is too" in " ".join(text.lines)
    assert text.lines[-1] == "More in the model."
    assert frame.FRAME.holds(text.box) and not text.box.meets(frame.TITLE_BLOCK)


def test_every_kind_is_named_where_there_is_room_and_whole_ones_where_there_is_not():
    few = sheet(laid(16, TOPS["hexagon"]), FACTS)
    said = " ".join(few.texts["wedge note"].lines)
    for one in few.kinds:
        assert f" at {runs(one.positions)}: {length(one.sides[0])}, " in said
    many = sheet(laid(64, Top.polygon(7, 2000.0)), FACTS)
    said = " ".join(many.texts["wedge note"].lines)
    shown = said.count(" at ")
    assert 0 < shown < len(many.kinds)
    assert said.endswith(f"; {len(many.kinds) - shown} more, see the cut list.")


def test_every_role_is_there_for_every_layout():
    made = sheet(laid(3, TOPS["300"]), FACTS)
    assert list(made.figures) == FIGURES
    assert sorted(made.texts) == sorted(TEXTS)


def test_the_template_is_the_form_that_the_sheet_is_laid_out_on():
    saved = (ROOT / "resources" / "templates" / "a3-landscape.svg").read_text("utf-8")
    assert saved == frame.template()


@pytest.mark.parametrize(("ways", "name"), [(4, "octagon"), (3, "hexagon")])
def test_a_rim_with_corners_is_written_out(ways, name):
    made = laid(ways, TOPS[name])
    said = " ".join(sheet(made, FACTS).texts["wedge note"].lines)
    flats = wedge_of(made.pieces[0]).flats
    assert len(flats) > 1 and "Rim from the lower seam: " + " + ".join(map(length, flats)) in said


def test_a_rim_of_one_piece_is_not_written_twice():
    said = " ".join(sheet(laid(6, TOPS["hexagon"]), FACTS).texts["wedge note"].lines)
    assert "Rim from" not in said


def test_letters_that_nobody_sees_stay_off_the_sheet():
    assert fitted("Hall\x01 table", 100.0, 2.5)[0] == "Hall table"
    assert wrapped("Hall\x01 \x0btable", 100.0, 2.5) == ["Hall table"]


def test_no_line_begins_with_a_sign_that_french_sets_apart():
    text = "Tenir la feuille à plat ; un bout libre se fend : voir 12 % et plus"
    for room in range(8, 90, 2):
        lines = wrapped(text, float(room), 2.5)
        assert " ".join(lines) == text and not [line for line in lines if line[0] in ";:!?%"]

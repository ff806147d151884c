# SPDX-License-Identifier: LGPL-2.1-or-later
"""Particulars of bundles, as CSV out and in; areas; the list to chalk the stack by."""

import csv
import io
from types import SimpleNamespace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import box

from veneerwb.core import Bundle, Fault, Leaf, Side, VeneerError
from veneerwb.core import chalk as chalks
from veneerwb.core.chalk import chalk_list
from veneerwb.core.inventory import (
    COLUMNS,
    SQUARE_FOOT,
    Entry,
    Extent,
    Particulars,
    as_csv,
    entry,
    extent,
    from_csv,
    leaf_areas,
    read_csv,
    square_feet,
    write_csv,
)
from veneerwb.core.photos.reading import Photo
from veneerwb.core.sequence import suspects

KNOWN = Particulars(
    name="Bundle 7", species="Oak", cut="quarter sliced", thickness=0.6, tight_side="back",
    flitch="F 12", lot="L-3", moisture=9.5, cost=1250.5, currency="EUR",
    origin="own wood,\nwith a felling note; see \"papers\"",
)


def leaf(number, size=(200, 500), usable=None, faults=()):
    width, length = size
    photo = Photo.of(np.full((length // 10, width // 10, 3), 99, np.uint8), 10.0, f"p{number}.jpg")
    return Leaf(number, Side(photo), None, usable, faults)


@pytest.fixture
def bundle():
    knot = Fault(box(40, 40, 60, 60))
    leaves = (leaf(1), leaf(2, usable=box(10, 10, 190, 490)), leaf(3, faults=(knot,)))
    return Bundle(leaves, 0.6)


# --- areas -------------------------------------------------------------------------------------


def test_a_square_foot_is_the_international_one():
    # NIST Special Publication 811 (2008), appendix B.8: 1 square foot = 9.290 304 E-02 m2, exact
    assert SQUARE_FOOT == 0.3048**2 == pytest.approx(0.09290304, rel=1e-15)
    assert square_feet(1.0) == pytest.approx(10.76391, abs=1e-5)  # the same, turned over


def test_full_and_usable_areas(bundle):
    assert leaf_areas(bundle.leaf(1)) == pytest.approx((0.1, 0.1))
    assert leaf_areas(bundle.leaf(2)) == pytest.approx((0.18 * 0.48, 0.18 * 0.48))
    assert leaf_areas(bundle.leaf(3)) == pytest.approx((0.1, 0.1 - 0.0004))
    found = extent(bundle)
    assert (found.leaves, found.width, found.length) == (3, 180.0, 480.0)
    assert found.full_m2 == pytest.approx(0.2864)
    assert found.usable_m2 == pytest.approx(0.2860)
    assert found.usable_sq_ft == pytest.approx(0.2860 / 0.09290304)


def test_a_slanting_leaf_is_measured_round_its_outline():
    slim = leaf(1, usable=box(50, 50, 150, 450).intersection(box(0, 0, 300, 250)))
    ragged = leaf(2, usable=box(0, 0, 100, 100).union(box(0, 100, 50, 200)))
    assert leaf_areas(slim) == pytest.approx((0.02, 0.02))
    assert leaf_areas(ragged) == pytest.approx((0.02, 0.015))


# --- particulars -------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("moisture", 41.0), ("moisture", -0.1), ("moisture", float("nan")), ("cost", -1.0),
        ("thickness", 0.0), ("thickness", 25.0), ("tight_side", "loose"), ("species", 3),
        ("cost", "much"), ("origin", "x" * 5001),
    ],
)
def test_particulars_that_cannot_be_are_refused(name, value):
    with pytest.raises(VeneerError) as caught:
        Particulars(**{name: value})
    assert str(caught.value).endswith(".")


def test_nothing_need_be_known():
    (row,) = from_csv(as_csv([Entry()]) + "\n").entries or (Entry(),)
    assert row == Entry()


# --- CSV ---------------------------------------------------------------------------------------


def test_bundles_come_back_as_they_went_out(bundle, tmp_path):
    entries = [entry(bundle, KNOWN), Entry(Particulars(name="Only a name", tight_side="face"))]
    write_csv(entries, tmp_path / "list.csv")
    found = read_csv(tmp_path / "list.csv")
    assert found.unknown_columns == ()
    first, second = found.entries
    assert first.particulars == KNOWN and second == entries[1]
    assert first.extent == Extent(3, 180.0, 480.0, 0.286, 0.286)  # to a thousandth


def test_the_file_is_plain(bundle):
    text = as_csv([entry(bundle, KNOWN)])
    header, row = list(csv.reader(io.StringIO(text)))
    assert header == [heading for heading, *_ in COLUMNS]
    cells = dict(zip(header, row))
    assert cells["thickness mm"] == "0.6" and cells["leaves"] == "3"
    assert cells["full area m2"] == "0.286" and cells["full area sq ft"] == "3.08"
    assert cells["moisture when photographed %"] == "9.5" and cells["cost"] == "1250.5"


@pytest.mark.parametrize(
    "text", ["=1+1", "+49", "-3", "@here", "\t=1", "'=1", "''@", "'plain", "a'"]
)
def test_no_cell_runs_as_a_formula_and_all_come_back(text):
    wanted = Particulars(name="n", origin=text)
    written = as_csv([Entry(wanted)])
    for cell in list(csv.reader(io.StringIO(written)))[1]:
        assert not cell.startswith(("=", "+", "-", "@", "\t"))
    assert from_csv(written).entries[0].particulars == wanted


@given(st.text(max_size=40), st.text(max_size=40))
def test_any_text_comes_back(name, origin):
    wanted = Particulars(name="x" + name, origin=origin)
    (found,) = from_csv(as_csv([Entry(wanted)])).entries
    assert found.particulars == wanted


def test_other_peoples_spreadsheets_are_read():
    first = "\ufeffColour;Thickness MM ;Moisture when photographed %;bundle;leaves"
    found = from_csv(f"{first}\nred;0,6;9,5;A;24\n;;;;\n")
    assert found.unknown_columns == ("Colour",)
    (one,) = found.entries
    assert (one.particulars.thickness, one.particulars.moisture) == (0.6, 9.5)
    assert (one.particulars.name, one.extent.leaves) == ("A", 24)
    assert from_csv("bundle\tcost\nA\t12.5\n").entries[0].particulars.cost == 12.5
    assert from_csv("bundle\nA\n").entries[0].particulars.name == "A"
    assert from_csv('bundle,cost\nA,"12,5"\n').entries[0].particulars.cost == 12.5


@pytest.mark.parametrize(
    ("rows", "cost"),
    [
        ("bundle;cost\nA;2.450,5", 2450.5), ("bundle;cost\nA;1'250.50", 1250.5),
        ("bundle;cost\nA;1\u202f234 567,25", 1234567.25), ('bundle,cost\nA,"2,450.5"', 2450.5),
        ("bundle;cost\nA;0,600", 0.6), ("bundle\tcost\nA\t1.234.567", 1234567.0),
        ("bundle,cost\nA,1.25E+03", 1250.0),
        # What another number shows tells what a lone mark before three figures means.
        ("bundle;cost;thickness mm\nA;2.450;0,6", 2450.0),
        ("bundle;cost;thickness mm\nA;2,450;0,6", 2.45),
        ("bundle;cost;full area sq ft\nA;2,450;0.5", 2450.0),
        ("bundle,cost\nA,2.450", 2.45),  # as we write it ourselves
    ],
)
def test_numbers_of_other_countries_are_read_rightly(rows, cost):
    assert from_csv(rows + "\n").entries[0].particulars.cost == pytest.approx(cost, rel=1e-12)


@pytest.mark.parametrize(
    ("text", "code", "said"),
    [
        ("bundle;cost\nA;2,450\n", "bad-cell", "2,450 may mean 2450 or 2.45; write 2450"),
        ("bundle;cost\nA;2.450\n", "bad-cell", "and 2.4500 for the second"),
        ('bundle,cost\nA,"2,450"\n', "bad-cell", "may mean"),
        ('bundle,cost,thickness mm\nA,"2,450","0,6"\nB,1,0.5\n', "bad-cell", "may mean"),
        ("bundle;cost\nA;1.234.56\n", "bad-cell", "not a number"),
        ("bundle;cost\nA;1_000\n", "bad-cell", "not a number"),
        ("bundle,cost\nA,2,450\n", "more-cells", "Row 2 has more cells"),
        ("bundle,cost,currency,origin\nA,2,450,EUR\n", "number-for-currency", "450"),
        ('bundle,species\nA,Oak\nB,"Ash\nC,Elm\n', "open-quotes", "line 3"),
        ('bundle,species\nA,"Oak" old\n', "open-quotes", "line 2"),
    ],
)
def test_what_may_be_read_in_two_ways_is_refused(text, code, said):
    with pytest.raises(VeneerError, match=said) as caught:
        from_csv(text)
    assert caught.value.code == code


@given(st.floats(0, 1e6).map(lambda value: round(value, 2)), st.floats(0, 1e5))
def test_a_number_of_our_own_comes_back(cost, area):
    wanted = Entry(Particulars(cost=cost), Extent(full_m2=round(area, 3)))
    (found,) = from_csv(as_csv([wanted])).entries
    assert found == wanted


def test_square_feet_follow_from_square_metres():
    one = from_csv("bundle,full area sq ft,full area m2\nA,99,1\n").entries[0]
    assert one.extent.full_sq_ft == pytest.approx(10.764, abs=1e-3)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("bundle,cost\nA,1\nB,much\n", "Row 3, column cost: "),
        ("bundle,moisture when photographed %\nA,77\n", "from 0 to 40"),
        ("bundle,leaves\nA,2.5\n", "Row 2, column leaves: "),
        ("bundle,leaves\nA,0\n", "Row 2, column leaves: "),
        ("bundle,tight side\nA,left\n", "not known, face, back"),
        ("bundle,thickness mm\nA,1e999\n", "Row 2, column thickness mm: "),
        ("bundle,cost,COST\nA,1,2\n", "column cost twice"),
        ("a,b\n1,2\n", "none of the columns"),
        ("", "none of the columns"),
        ("\n\n", "none of the columns"),
    ],
)
def test_what_is_wrong_is_said_with_its_place(text, said):
    with pytest.raises(VeneerError) as caught:
        from_csv(text)
    assert said in str(caught.value) and str(caught.value).endswith(".")


def test_a_first_line_with_a_text_longer_than_any_is_refused():
    with pytest.raises(VeneerError) as caught:
        from_csv('"' + "a" * (csv.field_size_limit() + 1))
    assert caught.value.code == "not-an-inventory"


def test_files_that_are_no_text_are_refused(tmp_path):
    (tmp_path / "x.csv").write_bytes(b"bundle\n\xff\xfe\n")
    for path in (tmp_path / "x.csv", tmp_path / "none.csv", tmp_path):
        with pytest.raises(VeneerError):
            read_csv(path)


def test_a_file_that_cannot_be_written_leaves_the_old_one(tmp_path):
    with pytest.raises(VeneerError):
        write_csv([Entry()], tmp_path / "no" / "list.csv")
    write_csv([Entry(KNOWN)], tmp_path / "list.csv")
    assert [one.name for one in tmp_path.iterdir()] == ["list.csv"]


# --- chalk -------------------------------------------------------------------------------------


def test_the_chalk_list_says_number_end_and_side(bundle):
    marks = chalk_list(bundle, names={1: "IMG_1.jpg"}, tight_side="back")
    assert [mark.chalk for mark in marks] == [1, 2, 3]
    assert marks[0].photograph == "IMG_1.jpg" and marks[1].photograph == "p2.jpg"
    assert {mark.top_end for mark in marks} == {"the upper end of the picture"}
    assert {mark.side_up for mark in marks} == {"face, loose side"}
    assert {mark.side_up for mark in chalk_list(bundle, tight_side="face")} == {"face, tight side"}
    assert {mark.side_up for mark in chalk_list(bundle)} == {"face"}


def test_a_proof_gives_the_numbers_to_chalk(bundle):
    wrong = [
        suspects.lying(2, "end for end"), suspects.lying(3, "turned"),
    ]
    proof = SimpleNamespace(suspects=wrong, proposal={1: 3, 3: 1})
    marks = chalk_list(bundle, proof, tight_side="face")
    assert [(mark.chalk, mark.now) for mark in marks] == [(1, 3), (2, 2), (3, 1)]
    assert marks[1].top_end == "the lower end of the picture"
    assert marks[0].side_up == "back, loose side" and marks[1].side_up == "face, tight side"
    assert marks[0].to_do.startswith("Leaf 3 is turned over:")
    text = chalks.as_text(marks)
    top = "top is the upper end of the picture"
    assert f"   1 (now 3)  p3.jpg: {top}; back, loose side up." in text
    assert text.splitlines()[0] == chalks.HOW


def test_the_chalk_list_is_written_as_csv(bundle, tmp_path):
    chalks.write_csv(chalk_list(bundle, names={1: "=evil.jpg"}), tmp_path / "chalk.csv")
    table = list(csv.reader(io.StringIO((tmp_path / "chalk.csv").read_text("utf-8"))))
    assert tuple(table[2]) == chalks.HEADINGS and len(table) == 6
    assert table[3][1] == "'=evil.jpg"

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What `check` finds, and that what it says would do does."""

from __future__ import annotations

import csv
import io
from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import Point, box

from veneerwb.core import (
    Bundle,
    Fault,
    Leaf,
    Motion,
    Placement,
    Side,
    Stock,
    Top,
    VeneerError,
    check,
    radial,
)
from veneerwb.core.checks.sufficiency import off_leaf
from veneerwb.core.photos import Photo
from veneerwb.core.shop.cutlist import HEADINGS, as_csv

PHOTO = Photo.of(np.full((1000, 400, 3), 90, np.uint8), 1.0)
PLACE = Placement(200, 100, 90)


def bundle(changed: dict[int, dict] | None = None, leaves: int = 12, **options) -> Bundle:
    """Plain leaves of 400 x 1000 mm, some of them with another field."""
    plain = [Leaf(k, Side(PHOTO)) for k in range(1, leaves + 1)]
    return Bundle(
        tuple(replace(leaf, **(changed or {}).get(leaf.number, {})) for leaf in plain),
        0.6,
        **options,
    )


def codes(layout, **options) -> list[str]:
    return [finding.code for finding in check(layout, **options)]


def found(layout, code: str, **options):
    (finding,) = [f for f in check(layout, **options) if f.code == code]
    return finding


def test_a_wedge_that_fits_is_not_stopped():
    layout = radial(Stock(400, 1000, 12, 0.6), Top.round(1200), ways=12)
    assert [f.level for f in check(layout)] == ["note"] * 3
    assert codes(layout) == ["leaves-used", "loose-faces", "steps"]


def test_the_overhang_and_the_pieces_are_named():
    # R = 600 from y = 500 reaches 100 mm beyond a leaf of 1000
    layout = radial(
        Stock(400, 1000, 12, 0.6), Top.round(1200), ways=12, placement=Placement(200, 500, 90)
    )
    finding = found(layout, "off-leaf")
    assert finding.level == "stop" and finding.pieces == tuple(range(1, 13))
    assert finding.values["overhang"] == pytest.approx(100.0, abs=0.02)
    assert found(layout, "off-leaf", margin=7.0).values["overhang"] == pytest.approx(107, abs=0.02)


@pytest.mark.parametrize("turn", ["book", "slip"])
@pytest.mark.parametrize("angle", [90.0, 78.0])
def test_what_would_do_does(turn, angle):
    stock = Stock(300, 900, 20, 0.6)
    place, margin = Placement(150, 60, angle), 4.0
    options = {"turn": turn, "placement": place, "oversize": 6.0}
    layout = radial(stock, Top.round(1500), ways=10, **options)
    finding = found(layout, "off-leaf", margin=margin)
    reach = finding.values["reach"]
    assert not list(off_leaf(radial(stock, Top.round(2 * reach), ways=10, **options), margin))
    wider = radial(stock, Top.round(2 * (reach + 0.2)), ways=10, **options)
    assert list(off_leaf(wider, margin))
    smaller = radial(stock, Top.round(1000), ways=6, **options)
    fitting = found(smaller, "off-leaf", margin=margin).values["ways"]
    for ways in range(3, 21):
        if turn == "book" and ways % 2:
            assert ways not in fitting
            continue
        other = radial(stock, Top.round(1000), ways=ways, **options)
        assert (not list(off_leaf(other, margin))) == (ways in fitting)
    assert fitting or angle != 90.0


def test_a_leaf_that_is_shifted_off_is_named_alone():
    shifted = Side(PHOTO, Motion(dx=150.0), Motion(dx=150.0))
    layout = radial(bundle({5: {"face": shifted}}), Top.round(1200), ways=12, placement=PLACE)
    finding = found(layout, "off-leaf")
    assert finding.pieces == (5,) and finding.values["leaves"] == (5,)


def test_a_turned_piece_is_held_against_the_register_of_its_back():
    back = Side(PHOTO, Motion(dx=150.0), Motion(dx=150.0), "photo")
    leaves = bundle({4: {"back": back}, 5: {"back": back}})
    layout = radial(leaves, Top.round(1200), ways=12, placement=PLACE)
    assert found(layout, "off-leaf").pieces == (5,)  # position 4 shows its face
    even = radial(leaves, Top.round(1200), ways=12, placement=PLACE, turned="even")
    assert found(even, "off-leaf").pieces == (4,)


def test_a_usable_area_smaller_than_the_leaf_counts():
    torn = box(0, 0, 400, 1000).difference(box(180, 600, 400, 1000))
    layout = radial(bundle({3: {"usable": torn}}), Top.round(1200), ways=12, placement=PLACE)
    assert found(layout, "off-leaf").pieces == (3,)


def test_faults_seen_in_the_trim_and_elsewhere():
    top = Top.round(1200)
    seen = Fault(Point(200, 400).buffer(8), "knot")
    trim = Fault(Point(200, 708).buffer(6), "split")
    away = Fault(Point(30, 60).buffer(10), "knot")
    leaves = bundle({2: {"faults": (seen,)}, 7: {"faults": (trim,)}, 9: {"faults": (away,)}})
    layout = radial(leaves, top, ways=12, placement=PLACE, oversize=20.0)
    stop, note = found(layout, "fault-seen"), found(layout, "fault-in-trim")
    assert (stop.level, stop.pieces, stop.values["kinds"]) == ("stop", (2,), "knot")
    assert (note.level, note.pieces, note.values["kinds"]) == ("note", (7,), "split")
    assert not {"fault-seen", "fault-in-trim"} & set(
        codes(radial(bundle({9: {"faults": (away,)}}), top, ways=12, placement=PLACE))
    )


def test_spares_asked_for_and_missing():
    layout = radial(Stock(400, 1000, 14, 0.6), Top.round(1200), ways=12)
    assert "spares-missing" not in codes(layout, spares=2)
    finding = found(layout, "spares-missing", spares=5)
    assert finding.values["missing"] == 3 and finding.level == "warn"


def test_a_ring_whose_neighbours_show_the_same_side_has_no_book_joints():
    layout = radial(Stock(400, 1000, 12, 0.6), Top.round(1200), ways=8)
    assert "parity" not in codes(layout)
    pieces = (*layout.pieces[:3], replace(layout.pieces[3], turned=True), *layout.pieces[4:])
    finding = found(replace(layout, pieces=pieces), "parity")
    assert finding.level == "stop" and finding.pieces == (3, 4, 5)


@pytest.mark.parametrize(("ways", "fine"), [(8, False), (24, False), (32, True), (64, True)])
def test_fine_tips_are_told(ways, fine):
    layout = radial(Stock(1000, 1000, 64, 0.6), Top.round(1200), ways=ways)
    assert ("fine-tips" in codes(layout)) == fine


def test_sides_that_show():
    stock, top = Stock(400, 1000, 12, 0.6), Top.round(1200)
    assert found(radial(stock, top, ways=12), "loose-faces").pieces == (1, 3, 5, 7, 9, 11)
    upright = codes(radial(stock, top, ways=12, turn="slip"))
    assert not {"loose-faces", "backs-show"} & set(upright)
    assert "backs-show" in codes(radial(stock, top, ways=12, turn="slip", turned="all"))


@pytest.mark.parametrize(
    ("back", "number", "source", "shown"),
    [
        ("next", 3, "neighbour", 4),
        ("next", 12, "own face", 12),
        ("previous", 3, "neighbour", 2),
        ("previous", 1, "own face", 1),
        ("own", 3, "own face", 3),
    ],
)
def test_a_back_without_a_photo_is_pictured_as_the_stack_allows(back, number, source, shown):
    photos = {k: Photo.of(np.full((1000, 400, 3), k, np.uint8), 1.0) for k in range(1, 13)}
    faces = {
        k: {"face": Side(photo, Motion(dx=float(k)), Motion(dx=float(k)))}
        for k, photo in photos.items()
    }
    side = bundle(faces, back=back).leaf(number).side(True)
    assert side.source == source
    assert side.photo[0, 0, 0] == shown
    assert side.view == Motion(dx=float(shown))
    assert side.register == Motion(dx=float(number))  # where to cut: as on its own face


def test_backs_are_said_to_be_assumed_only_where_they_are():
    own = {k: {"back": Side(PHOTO)} for k in range(1, 13)}
    top = Top.round(1200)
    assert "backs-assumed" not in codes(radial(bundle(own), top, ways=12))
    assert "backs-assumed" not in codes(radial(bundle(), top, ways=12, turn="slip"))
    del own[7]
    assert found(radial(bundle(own), top, ways=12), "backs-assumed").pieces == (7,)


def test_findings_come_gravest_first_and_as_sentences():
    layout = radial(Stock(300, 1000, 12, 0.6), Top.round(1200), ways=4)
    findings = check(layout, spares=20, wedge_angle=90.2)
    levels = [f.level for f in findings]
    assert levels == sorted(levels, key=("stop", "warn", "note").index)
    assert {"off-leaf", "spares-missing", "closure-over", "not-sunburst"} <= {
        f.code for f in findings
    }
    for finding in findings:
        assert finding.text.endswith(".") and "{" not in finding.text + finding.remedy


@pytest.mark.parametrize("options", [{"margin": -1}, {"spares": -1}, {"margin": float("nan")}])
def test_absurd_wishes_are_refused(options):
    with pytest.raises(VeneerError):
        check(radial(Stock(400, 1000, 12, 0.6), Top.round(600), ways=4), **options)


def test_the_cut_list_says_what_to_cut_from_which_leaf():
    moved = Side(PHOTO, Motion(dx=3.0, dy=-2.0), Motion(dx=3.0, dy=-2.0))
    layout = radial(
        bundle({3: {"face": moved}}), Top.round(1200), ways=12, placement=PLACE, oversize=10.0
    )
    lines = list(csv.reader(io.StringIO(as_csv(layout))))
    assert lines[0] == ["cut list, revision", layout.revision]
    rows = lines[lines.index(list(HEADINGS)) + 1 :]
    assert [row[0] for row in rows] == [str(k) for k in range(1, 13)]
    assert [row[2] for row in rows] == ["back", "face"] * 6
    # chords 2 R sin 15 deg of R = 600 and 610 (plane geometry)
    assert rows[0] == ["1", "1", "back", "310.583", "600", "315.759", "610", "200", "100"]
    assert rows[2][-2:] == ["203", "98"]

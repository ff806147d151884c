# SPDX-License-Identifier: LGPL-2.1-or-later
"""Checks: every finding where it belongs and nowhere else, and remedies that hold."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import Point, Polygon, box

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
from veneerwb.core.checks.finding import Finding
from veneerwb.core.photos.reading import Photo

TOP = Top.round(600.0)
PLACE = Placement(150.0, 100.0)
PHOTO = Photo.of(np.zeros((100, 30, 3), np.uint8), 10.0)  # 300 x 1000 mm
STOCK = Stock(300.0, 1000.0, 8, 0.6)


def plain_leaf(number, **settings):
    return Leaf(number, Side(PHOTO), **settings)


def bundle_of(*special, count=8, slope=0.0, back="next"):
    """`count` blank leaves of 300 x 1000 mm, with the special ones in their places."""
    leaves = {n: plain_leaf(n) for n in range(1, count + 1)}
    leaves.update({leaf.number: leaf for leaf in special})
    return Bundle(tuple(leaves.values()), 0.6, back, slope)


def eight(bundle=STOCK, **settings):
    return radial(bundle, TOP, 8, **{"placement": PLACE, **settings})


def codes(layout, **asked):
    return {finding.code for finding in check(layout, **asked)}


def find(layout, code, **asked):
    return next((f for f in check(layout, **asked) if f.code == code), None)


def test_a_sound_layout_has_notes_only():
    findings = check(eight())
    assert {f.level for f in findings} == {"note"}
    assert {f.code for f in findings} == {"leaves-used", "loose-faces", "steps"}


def test_the_gravest_findings_come_first():
    layout = radial(bundle_of(slope=None), Top.round(900.0), 4)
    levels = [f.level for f in check(layout, spares=9)]
    assert levels == sorted(levels, key=("stop", "warn", "note").index)
    assert set(levels) == {"stop", "warn", "note"}


def test_findings_read_as_sentences():
    layout = radial(bundle_of(slope=None), Top.round(900.0), 4, oversize=3.0)
    for finding in check(layout, margin=5.0, spares=9, wedge_angle=89.0):
        for text in filter(None, (finding.text, finding.remedy)):
            assert (text[0].isupper() or text[0].isdigit()) and text.endswith(".")
            assert "{" not in text and "None" not in text and "nan" not in text
        assert str(finding).startswith(f"{finding.level}: {finding.text}")


def test_a_level_that_is_none_is_refused():
    with pytest.raises(VeneerError):
        Finding("code", "grave", "Text.")


@pytest.mark.parametrize(
    "asked",
    [
        {"margin": -1.0}, {"margin": float("nan")}, {"margin": "x"},
        {"spares": -1}, {"spares": 1.5}, {"spares": 10**9},
    ],
)  # fmt: skip
def test_what_cannot_be_asked_is_refused(asked):
    with pytest.raises(VeneerError):
        check(eight(), **asked)


# --- enough leaves -----------------------------------------------------------------------------


def test_leaves_used_and_left_are_counted():
    found = find(eight(Stock(300.0, 1000.0, 11, 0.6), first=2), "leaves-used", spares=3)
    assert (found.values["used"], found.values["left"]) == (8, 3)
    assert found.values["leaves_left"] == (1, 10, 11)


def test_missing_spares_are_a_warning():
    layout = eight(Stock(300.0, 1000.0, 10, 0.6))
    found = find(layout, "spares-missing", spares=5)
    assert (found.level, found.values["missing"]) == ("warn", 3)
    assert find(layout, "spares-missing", spares=2) is None
    assert find(layout, "leaves-used", spares=5) is None


# --- large enough ------------------------------------------------------------------------------

CASES = {
    "too wide": (Stock(200.0, 1000.0, 24, 0.6), Top.round(600.0), {"ways": 8}, 0.0),
    "too long": (
        Stock(300.0, 500.0, 24, 0.6),
        Top.round(600.0),
        {"ways": 8, "placement": (150, 250)},
        0.0,
    ),
    "with a margin": (STOCK, Top.round(600.0), {"ways": 8, "placement": (150, 60)}, 45.0),
    "straight, oversize": (
        Stock(240.0, 1000.0, 16, 0.6),
        Top.round(600.0),
        {"ways": 8, "rim": "straight", "oversize": 12.0, "placement": (120, 100)},
        2.0,
    ),
    "polygon": (
        Stock(220.0, 900.0, 30, 0.6),
        Top.polygon(5, 560.0),
        {"ways": 9, "turn": "slip"},
        0.0,
    ),
    "aslant": (
        Stock(300.0, 420.0, 20, 0.6),
        Top.polygon(6, 560.0),
        {"ways": 10, "placement": (60, 60, 60), "start": 5.0},
        4.0,
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_the_largest_reach_fits_and_a_little_more_does_not(name):
    stock, top, settings, margin = CASES[name]
    layout = radial(stock, top, **settings)
    found = find(layout, "off-leaf", margin=margin)
    reach, place = found.values["reach"], layout.recipe.placement
    settings = {**settings, "placement": place}
    for factor, fits in ((reach / top.reach, True), ((reach + 0.2) / top.reach, False)):
        other = radial(stock, top.scaled(factor), **settings)
        assert ("off-leaf" not in codes(other, margin=margin)) == fits


@pytest.mark.parametrize("name", CASES)
def test_the_ways_that_fit_fit_and_no_others_do(name):
    stock, top, settings, margin = CASES[name]
    layout = radial(stock, top, **settings)
    settings = {**settings, "placement": layout.recipe.placement}
    fitting = []
    for ways in range(3, 65):
        if ways > stock.leaves or (ways % 2 and settings.get("turn") != "slip"):
            continue
        other = radial(stock, top, **{**settings, "ways": ways})
        if "off-leaf" not in codes(other, margin=margin):
            fitting.append(ways)
    assert find(layout, "off-leaf", margin=margin).values["ways"] == tuple(fitting)


def test_the_largest_reach_by_hand():
    # Too wide: 200 = 2 R sin 22.5, R = 261.3. Too long: the tip lies 250 under the end of the leaf.
    stock, top, settings, _ = CASES["too wide"]
    assert find(radial(stock, top, **settings), "off-leaf").values["reach"] == pytest.approx(261.3)
    stock, top, settings, _ = CASES["too long"]
    found = find(radial(stock, top, **settings), "off-leaf")
    assert found.values["reach"] == pytest.approx(250.0)
    assert found.values["overhang"] == pytest.approx(50.0, abs=0.02)
    # More ways are narrower but as long.
    assert found.values["ways"] == () and "no number of ways" in found.remedy


def test_the_ways_by_hand():
    # 2 x 300 sin(180/n) <= 200 from 9.24 ways on, and 24 leaves: even numbers from 10 to 24.
    stock, top, settings, _ = CASES["too wide"]
    found = find(radial(stock, top, **settings), "off-leaf")
    assert found.values["ways"] == tuple(range(10, 25, 2))
    assert found.pieces == tuple(range(1, 9))


def test_a_tip_off_the_leaf_fits_at_no_size():
    found = find(eight(placement=(-10.0, 100.0)), "off-leaf")
    assert found.values["reach"] == 0.0
    assert "no size of this top fits" in found.remedy


def test_a_blank_that_just_touches_the_edge_fits():
    layout = radial(Stock(300.0, 300.0, 8, 0.6), TOP, 8, placement=(150.0, 0.0))
    assert find(layout, "off-leaf") is None
    assert find(layout, "off-leaf", margin=0.01) is not None


def test_the_blank_must_fit_and_not_only_the_piece():
    layout = radial(Stock(300.0, 310.0, 8, 0.6), TOP, 8, placement=(150.0, 0.0), oversize=11.0)
    assert find(layout, "off-leaf").values["overhang"] == pytest.approx(1.0, abs=0.02)


def test_a_margin_larger_than_the_leaf_leaves_no_room():
    found = find(eight(), "off-leaf", margin=1e6)
    assert found.values["reach"] == 0.0 and found.values["ways"] == ()


def test_a_leaf_with_less_usable_area_is_named_alone():
    short = plain_leaf(6, usable=box(0.0, 0.0, 300.0, 390.0))
    found = find(eight(bundle_of(short)), "off-leaf")
    assert found.values["leaves"] == (6,)
    assert found.values["overhang"] == pytest.approx(10.0, abs=0.02)


def test_a_hole_in_the_usable_area_is_off_the_leaf_too():
    holed = plain_leaf(4, usable=box(0, 0, 300, 1000).difference(box(140, 250, 160, 270)))
    found = find(eight(bundle_of(holed)), "off-leaf")
    assert found.values["leaves"] == (4,)
    assert 0.0 < found.values["overhang"] <= 10.0


def test_a_register_that_shifts_a_leaf_off_names_it():
    shifted = Leaf(5, Side(PHOTO, Motion(dx=100.0), Motion(dx=100.0)))
    found = find(eight(bundle_of(shifted)), "off-leaf")
    assert found.values["leaves"] == (5,)
    # Half of the wedge is 300 sin 22.5 = 114.8 wide, and 50 mm are left on that side.
    assert found.values["overhang"] == pytest.approx(64.8, abs=0.02)


def test_turned_pieces_go_by_the_register_of_the_back():
    back = Side(PHOTO, Motion(dy=-150.0), Motion(dy=-150.0))
    leaves = [plain_leaf(n, back=back) for n in (3, 4)]
    layout = eight(bundle_of(*leaves), turned="odd")
    assert find(layout, "off-leaf").values["leaves"] == (3,)
    layout = eight(bundle_of(*leaves), turned="even")
    assert find(layout, "off-leaf").values["leaves"] == (4,)


def test_the_usable_area_may_have_any_outline():
    triangle = Polygon([(150.0, 90.0), (320.0, 420.0), (-20.0, 420.0)])
    layout = eight(bundle_of(*(plain_leaf(n, usable=triangle) for n in range(1, 9))))
    assert find(layout, "off-leaf") is None
    assert find(layout, "off-leaf", margin=10.0) is not None


# --- faults ------------------------------------------------------------------------------------


def with_fault(outline, number=3, kind="knot"):
    return bundle_of(plain_leaf(number, faults=(Fault(outline, kind),)))


def test_a_fault_on_a_piece_will_be_seen():
    found = find(eight(with_fault(box(145, 250, 155, 260))), "fault-seen")
    assert (found.level, found.pieces) == ("stop", (3,))
    assert found.values["leaves"] == (3,) and found.values["kinds"] == "knot"


def test_a_fault_in_the_oversize_goes_with_the_trim():
    # The finished rim lies at 400 on the axis, the blank's at 410.
    layout = eight(with_fault(box(149, 402, 151, 406)), oversize=10.0)
    assert find(layout, "fault-in-trim").pieces == (3,)
    assert find(layout, "fault-seen") is None


def test_what_a_disc_covers_may_hold_a_fault():
    # The tip lies at 100 on the axis; the fault's far corners are 16.03 mm from it.
    layout, both = eight(with_fault(box(149, 106, 151, 116))), {"fault-seen", "fault-covered"}
    for reach, told in ((0.0, "fault-seen"), (15.9, "fault-seen"), (16.3, "fault-covered")):
        assert codes(layout, hidden=Point(0.0, 0.0).buffer(reach, 64)) & both == {told}


def test_a_fault_beside_the_piece_says_nothing():
    layout = eight(with_fault(box(5, 5, 15, 15)), oversize=10.0)
    assert not codes(layout) & {"fault-seen", "fault-in-trim"}


def test_a_fault_on_a_leaf_that_is_not_used_says_nothing():
    bundle = bundle_of(plain_leaf(9, faults=(Fault(box(145, 250, 155, 260)),)), count=9)
    assert "fault-seen" not in codes(eight(bundle))
    assert "fault-seen" in codes(eight(bundle, first=2))


def test_faults_go_by_the_register():
    # 40 mm right of the tip: clear of the wedge, but on the one leaf photographed shifted.
    outline = box(185, 115, 195, 125)
    assert "fault-seen" not in codes(eight(with_fault(outline)))
    moved = Leaf(4, Side(PHOTO, Motion(dx=40.0), Motion(dx=40.0)), faults=(Fault(outline),))
    assert find(eight(bundle_of(moved)), "fault-seen").values["leaves"] == (4,)


# --- the ring ----------------------------------------------------------------------------------


def test_two_pieces_of_one_side_up_are_no_book_joint():
    layout = eight()
    pieces = list(layout.pieces)
    pieces[4] = replace(pieces[4], turned=False)
    found = find(replace(layout, pieces=tuple(pieces)), "parity")
    assert (found.level, found.values["count"], found.pieces) == ("stop", 2, (4, 5, 6))
    assert find(layout, "parity") is None


def test_slip_rings_have_no_parity():
    for turned in ("none", "all"):
        assert find(radial(STOCK, TOP, 7, turn="slip", turned=turned), "parity") is None


@pytest.mark.parametrize(("ways", "fine"), [(30, False), (31, False), (32, True), (64, True)])
def test_tips_narrower_than_2_mm_at_10_mm_are_fine(ways, fine):
    # 20 tan(180/31) = 2.034; 20 tan(180/32) = 1.970.
    layout = radial(Stock(300.0, 1000.0, 64, 0.6), TOP, ways, turn="slip")
    assert (find(layout, "fine-tips") is not None) == fine


def test_under_six_ways_is_no_sunburst():
    stock = Stock(600.0, 1000.0, 8, 0.6)
    assert find(radial(stock, TOP, 5, turn="slip"), "not-sunburst").level == "note"
    assert find(radial(stock, TOP, 6), "not-sunburst") is None


def test_a_template_that_closes_or_not_is_told_only_when_asked():
    closing = {"closes", "closure-under", "closure-over"}
    assert not codes(eight()) & closing
    assert codes(eight(), wedge_angle=45.0) & closing == {"closes"}
    assert codes(eight(), wedge_angle=44.9) & closing == {"closure-under"}
    assert codes(eight(), wedge_angle=45.1) & closing == {"closure-over"}


# --- faces -------------------------------------------------------------------------------------


def test_steps_tell_the_largest_and_the_closing_one():
    found = find(eight(), "steps")
    assert (found.values["largest"], found.values["closing"]) == (6, 6)
    assert (found.values["a"], found.values["b"]) == (8, 1)
    assert found.values["steps"] == "0 2 0 2 0 2 0 6"
    assert "largest step is 2" in found.remedy


def test_spread_is_proposed_only_where_it_helps():
    assert find(eight(order="spread"), "steps").remedy == ""
    assert find(eight(order=[1, 2, 3, 6, 7, 8, 5, 4]), "steps").remedy == ""


def test_a_book_ring_alternates_its_faces():
    assert find(eight(), "loose-faces").pieces == (1, 3, 5, 7)
    assert find(eight(turned="even"), "loose-faces").pieces == (2, 4, 6, 8)
    assert find(eight(), "backs-show") is None


def test_a_slip_ring_shows_one_side():
    faces, backs = (codes(eight(turn="slip", turned=turned)) for turned in ("none", "all"))
    assert not faces & {"loose-faces", "backs-show"}
    assert backs & {"loose-faces", "backs-show"} == {"backs-show"}


def test_backs_that_were_not_photographed_are_assumed():
    # 0.6 mm / tan 10 = 3.403 mm from surface to surface.
    found = find(eight(bundle_of(slope=10.0)), "backs-assumed")
    assert (found.level, found.pieces) == ("warn", (1, 3, 5, 7))
    assert found.values["may_miss"] == pytest.approx(3.403, abs=5e-4)
    assert "nobody measured" not in found.text and "slope" in found.remedy


def test_an_unknown_slope_is_taken_as_5_degrees_and_said_to_be():
    # 0.6 mm / tan 5 = 6.858 mm.
    found = find(eight(bundle_of(slope=None)), "backs-assumed")
    assert found.values["may_miss"] == pytest.approx(6.858, abs=5e-4)
    assert "nobody measured" in found.text


def test_how_the_neighbour_was_photographed_is_no_miss():
    shifted = Leaf(4, Side(PHOTO, Motion(dx=3.0, dy=4.0), Motion(dx=3.0, dy=4.0)))
    found = find(eight(bundle_of(shifted, slope=10.0)), "backs-assumed")  # back of 3 from face of 4
    assert found.values["may_miss"] == pytest.approx(3.403, abs=5e-4)
    upright = find(eight(bundle_of(shifted, slope=10.0), turned="even"), "backs-assumed")
    assert upright.values["may_miss"] == pytest.approx(3.403, abs=5e-4)  # its own back, from 5
    own = find(eight(bundle_of(shifted, slope=10.0, back="own")), "backs-assumed")
    assert own.values["may_miss"] == pytest.approx(3.403, abs=5e-4)


def test_photographed_backs_are_not_assumed():
    leaves = [plain_leaf(n, back=Side(PHOTO)) for n in (1, 3, 5, 7)]
    assert find(eight(bundle_of(*leaves, slope=None)), "backs-assumed") is None
    found = find(eight(bundle_of(*leaves[1:], slope=None)), "backs-assumed")
    assert found.pieces == (1,)


def test_upright_pieces_and_plain_stock_assume_nothing():
    assert find(eight(bundle_of(slope=None), turn="slip"), "backs-assumed") is None
    assert find(eight(), "backs-assumed") is None

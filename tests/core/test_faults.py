# SPDX-License-Identifier: LGPL-2.1-or-later
"""Faults are checked when drawn, follow the registers through the bundle, and what is left of a
leaf is true."""

from dataclasses import replace

import numpy as np
import pytest
from shapely.geometry import LineString, MultiPolygon, Point, Polygon, box

from veneerwb.core.errors import VeneerError
from veneerwb.core.faults import (
    along,
    carried,
    checked,
    leaf_outline,
    outlined,
    remains,
    trimmed,
    with_faults,
)
from veneerwb.core.leaf import Bundle, Fault, Leaf, Side
from veneerwb.core.log.sawn import sawn_bundle
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY, Motion

SIZE = (200.0, 500.0)
SQUARE = box(20, 30, 60, 80)


def leaf(number=1, register=IDENTITY):
    photo = Photo.of(np.full((500, 200, 3), 120, np.uint8), 1.0)
    return Leaf(number, Side(photo, register, register))


def bundle():
    """Leaf 2 lies 12 mm to the right and 7 mm down, leaf 3 is turned by 2 degrees."""
    return Bundle((
        leaf(1), leaf(2, Motion(dx=12.0, dy=-7.0)), leaf(3, Motion.turn_about(100, 250, 2.0)),
    ), 0.6)


def same(one, other):
    return one.symmetric_difference(other).area < 1e-6


def refused(code, act, *args, **values):
    with pytest.raises(VeneerError) as caught:
        act(*args)
    assert caught.value.code == code
    for name, value in values.items():
        assert caught.value.values[name] == pytest.approx(value)
    return str(caught.value)


# --- drawing -----------------------------------------------------------------------------------


def test_an_outline_that_crosses_itself_is_refused_and_says_where():
    crossed = Fault(Polygon([(0, 0), (40, 40), (40, 0), (0, 40)]), "knot")
    said = refused("outline-crosses", checked, crossed, x=20.0, y=20.0)
    assert said.startswith("The outline of the knot crosses or touches itself near x 20, y 20 mm")


@pytest.mark.parametrize("fault, code", [
    (Fault(Polygon([(0, 0), (10, 10), (20, 20)])), "outline-crosses"),
    (Fault(Polygon([(0, 0), (0.01, 0), (0.01, 0.01)])), "no-outline"),
    (Fault(Polygon([(0, 0), (np.inf, 10), (20, 0)])), "not-a-number"),
    (Fault(SQUARE, "worm"), "unknown-choice"),
    (Fault(LineString([(0, 0), (9, 9)])), "no-outline"),
    (Fault(Polygon()), "no-outline"),
    (Fault(None), "no-outline"),
    (Fault(box(300, 0, 340, 40), "knot"), "fault-off-leaf"),
])
def test_what_is_no_fault_is_refused(fault, code):
    refused(code, checked, fault, leaf(7))


def test_a_fault_over_the_edge_is_cut_there():
    assert checked(Fault(box(180, 480, 260, 600)), leaf()).outline.equals(box(180, 480, 200, 500))


def test_a_split_is_drawn_as_a_line():
    fault = along([(50, 100), (50, 300)], 4.0)
    assert fault.kind == "split" and fault.outline.bounds == pytest.approx((48, 98, 52, 302))
    refused("line-too-short", along, [(50, 100), (50, 100)])
    for wrong in ([(0, 0), (10, np.nan), (20, 0)], "circle"):
        refused("not-a-number", along, wrong)


def test_a_fault_is_added_once():
    once = with_faults(leaf(), [Fault(SQUARE), Fault(SQUARE)])
    assert len(with_faults(once, [Fault(SQUARE)]).faults) == 1
    assert len(with_faults(once, [Fault(SQUARE, "stain")]).faults) == 2


# --- carrying ----------------------------------------------------------------------------------


def test_a_fault_is_carried_to_every_leaf_by_its_register():
    done = carried(bundle(), [Fault(SQUARE, "stain")])
    assert same(done.faults(1)[0].outline, SQUARE)
    assert same(done.faults(2)[0].outline, box(32, 23, 72, 73))
    turned = Motion.turn_about(100, 250, 2.0).apply_to(SQUARE)
    assert same(done.faults(3)[0].outline, turned)
    assert {f.kind for n in (1, 2, 3) for f in done.faults(n)} == {"stain"}


def test_a_fault_is_carried_to_the_chosen_leaves_only():
    done = carried(bundle(), [Fault(SQUARE)], [1, 3])
    assert [len(done.faults(n)) for n in (1, 2, 3)] == [1, 0, 1]
    refused("no-such-leaf", carried, bundle(), [Fault(SQUARE)], [4])


def test_where_a_fault_falls_off_a_leaf_it_has_none():
    done = carried(bundle(), [Fault(box(190, 100, 199, 110))])
    assert [len(done.faults(n)) for n in (1, 2, 3)] == [1, 0, 1]


def test_one_that_runs_over_an_edge_is_cut_on_that_leaf_alone_and_two_alike_are_one():
    done = carried(bundle(), [Fault(box(150, 100, 195, 120)), Fault(box(150, 100, 195, 120))])
    assert [len(done.faults(n)) for n in (1, 2, 3)] == [1, 1, 1]
    assert done.faults(1)[0].outline.equals(box(150, 100, 195, 120))
    assert same(done.faults(2)[0].outline, box(162, 93, 200, 113))
    assert carried(done, [Fault(box(150, 100, 195, 120))], [1]) == done


def test_a_knot_carried_through_a_generated_bundle_covers_the_knots_there():
    sawn = sawn_bundle(3, 240, 600, 0.6, 1.0, "plain", 4, disturb={"shift": 15.0}, knots=2)
    one = sawn.faults(1)[0]
    knot = replace(one, outline=sawn.leaf(1).register.inverse().apply_to(one.outline))
    bare = replace(sawn, leaves=tuple(replace(leaf, faults=()) for leaf in sawn.leaves))
    for n, carried_on in ((k, carried(bare, [knot]).faults(k)[0].outline) for k in (1, 2, 3)):
        there = sawn.faults(n)[0].outline
        assert carried_on.intersection(there).area > 0.6 * there.area


def test_backs_and_what_else_a_bundle_knows_stay():
    sawn = sawn_bundle(3, 200, 400, 0.6, 2.0, "burl", 1, 5.0, backs=[2])
    done = trimmed(carried(sawn, [Fault(SQUARE)]), box(5, 5, 195, 395))
    assert done.leaf(2).back.image is sawn.leaf(2).back.image
    assert (done.slope, done.back, done.thickness) == (5.0, "next", 0.6)
    assert done.leaf(1).back.source == "neighbour"


# --- usable area -------------------------------------------------------------------------------


def test_leaves_are_trimmed_in_the_bundles_frame():
    done = trimmed(bundle(), box(50, 50, 150, 400))
    assert same(done.usable(2), box(62, 43, 162, 393))
    assert same(done.common_area([1, 2, 3]), box(50, 50, 150, 400))
    said = refused("nothing-left", trimmed, bundle(), box(900, 0, 950, 50), leaf=1)
    assert said == (
        "That leaves nothing of leaf 1, whose usable area is 200 x 500 mm; take off less."
    )
    refused("outline-crosses", trimmed, bundle(), Polygon([(0, 0), (9, 9), (9, 0), (0, 9)]))


@pytest.mark.parametrize("outline", [Polygon(), box(300, 0, 400, 100), Point(3, 3)])
def test_an_outline_that_is_none_is_refused(outline):
    refused("no-usable-area", outlined, leaf(5), outline, leaf=5)


def test_the_outline_is_found_in_mm_on_a_plain_background():
    pixels = np.full((600, 260, 3), 214, np.uint8)
    pixels[40:560, 30:220] = (150, 100, 60)
    photo = Photo.of(pixels, 0.5)
    found = leaf_outline(photo)
    assert found.bounds == pytest.approx((15, 20, 110, 280), abs=0.3)
    assert outlined(Leaf(1, Side(photo))).usable.equals(found)


def test_what_remains_is_usable_and_free_of_faults():
    one = with_faults(outlined(leaf(), box(0, 0, 100, 500)), [Fault(box(0, 200, 100, 240))])
    assert remains(one).equals(MultiPolygon([box(0, 0, 100, 200), box(0, 240, 100, 500)]))

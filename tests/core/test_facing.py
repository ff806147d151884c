# SPDX-License-Identifier: LGPL-2.1-or-later
"""Planes in space and a leaf on them: frames, faces of one plane, motions, findings."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import box

from veneerwb.core import Fault, Leaf, Motion, Side, VeneerError
from veneerwb.core.facing import Face, Faced, Frame, Lie, planes
from veneerwb.core.photos.reading import Photo
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.pages.notes import in_lengths

PHOTO = Photo.of(np.zeros((400, 200, 3), np.uint8), 1.0)


def square(x, y, z, size=10.0, name="Face6", owner="Box"):
    """An upward square whose lower left corner is (x, y, z)."""
    corners = [(x, y, z), (x + size, y, z), (x + size, y + size, z), (x, y + size, z)]
    return Face(name, owner, (0, 0, 1), [np.array(corners, float)])


FRAMES = {
    "top": ((0, 0, 1), (1, 0, 0), (0, 1, 0)),
    "bottom": ((0, 0, -1), (-1, 0, 0), (0, 1, 0)),
    "front": ((0, -1, 0), (1, 0, 0), (0, 0, 1)),
    "back": ((0, 1, 0), (-1, 0, 0), (0, 0, 1)),
    "right": ((1, 0, 0), (0, 1, 0), (0, 0, 1)),
    "ramp": ((0, -0.6, 0.8), (1, 0, 0), (0, 0.8, 0.6)),
    "overhang": ((0, -0.6, -0.8), (1, 0, 0), (0, -0.8, 0.6)),
    "nearly level": ((1e-6, 0, 1), (1, 0, 0), (0, 1, 0)),
}


@pytest.mark.parametrize("name", FRAMES)
def test_up_is_z_laid_into_the_plane_or_y_where_it_is_level(name):
    normal, right, up = FRAMES[name]
    frame = Frame.facing(normal, (3, 4, 5))
    assert frame.right == pytest.approx(np.array(right), abs=1e-5)
    assert frame.up == pytest.approx(np.array(up), abs=1e-5)


directions = st.tuples(*[st.floats(-1, 1)] * 3).filter(lambda v: np.linalg.norm(v) > 0.1)


@given(directions, st.tuples(*[st.floats(-1e3, 1e3)] * 3))
def test_frames_are_right_handed_and_keep_lengths(normal, point):
    frame = Frame.facing(normal, point)
    axes = np.array((frame.right, frame.up, frame.normal))
    assert axes @ axes.T == pytest.approx(np.eye(3), abs=1e-9)
    assert np.cross(frame.right, frame.up) == pytest.approx(frame.normal, abs=1e-9)
    assert frame.off([point]) == pytest.approx([0.0], abs=1e-6)
    in_space = frame.origin + 3 * frame.right - 7 * frame.up
    assert frame.flat([in_space]) == pytest.approx(np.array([(3.0, -7.0)]), abs=1e-6)


def test_faces_of_one_plane_are_found_and_others_are_not():
    faces = [
        square(0, 0, 5),
        square(0, 0, 6),
        square(30, 0, 5.001, name="Face2"),
        Face("Face5", "Lid", (0, 0, -1), square(0, 0, 5).rings),
        square(50, 0, 5, owner="Shelf"),
    ]
    found = planes(faces)
    assert [plane.numbers for plane in found] == [(1, 3, 5), (2,), (4,)]
    assert found[0].words == "Face6 and Face2 of Box and Face6 of Shelf"
    assert found[0].middle == pytest.approx((30.0, 5.0))


def test_the_largest_ring_is_the_rim():
    hole = square(4, 4, 0, size=2).rings[0]
    face = Face("Face6", "Box", (0, 0, 1), [hole, square(0, 0, 0).rings[0]])
    assert planes([face])[0].outlines[0].area == pytest.approx(96.0)


def on(faces, lie=None, leaf=None):
    leaf = leaf or Leaf(7, Side(PHOTO))
    lie = lie or Lie()
    return Faced(leaf, leaf.side(lie.turned), lie, planes(faces))


def test_the_leaf_moves_across_and_along_as_it_is_seen():
    faces = [square(-5, -5, 0)]
    for turned, x in ((False, 100.0 - 8.0), (True, 100.0 + 8.0)):
        faced = on(faces, Lie(across=8.0, along=3.0, turned=turned))
        motion = faced.onto_leaf(faced.planes[0])
        assert motion.apply((0, 0)) == pytest.approx((x, 197.0))
        assert motion.mirrored is turned


def test_grain_is_counter_clockwise_from_up():
    faced = on([square(-5, -5, 0)], Lie(grain=90.0))
    # The leaf's length runs to the left: what lies 3 to the left is 3 further along.
    assert faced.onto_leaf(faced.planes[0]).apply((-3, 0)) == pytest.approx((100.0, 203.0))
    assert faced.onto_leaf(faced.planes[0]).apply((0, 3)) == pytest.approx((103.0, 200.0))


def test_the_photograph_is_reached_through_the_bundle():
    register, view = Motion(3.0, 4.0, 5.0), Motion(-2.0, 1.0, 9.0)
    leaf = Leaf(7, Side(PHOTO, register, view))
    faced = on([square(-5, -5, 0)], Lie(grain=30.0), leaf)
    (plane,) = faced.planes
    on_bundle = register.inverse().apply(faced.onto_leaf(plane).apply((4.0, 2.0)))
    assert faced.onto_photo(plane).apply((4.0, 2.0)) == pytest.approx(view.apply(on_bundle))


def test_what_fits_is_only_told_its_size():
    (note,) = on([square(0, 0, 0, size=150.0)], Lie(grain=90.0, across=20.0)).findings
    assert (note.code, note.level, note.pieces) == ("leaf-taken", "note", (1,))
    assert note.text == (
        "Face6 of Box takes 150 mm across and 150 mm along the grain of leaf 7."
    )


def test_a_hole_in_the_usable_area_counts_though_no_corner_lies_in_it():
    usable = box(0, 0, 200, 400).difference(box(95, 190, 105, 210))
    stop, _ = on([square(0, 0, 0, size=50.0)], leaf=Leaf(7, Side(PHOTO), usable=usable)).findings
    assert stop.code == "off-leaf" and stop.values["overhang"] == pytest.approx(5.0, abs=1e-3)
    assert stop.text == (
        f"Face6 of Box reaches up to {stop.values['overhang']:.3g} mm beyond the usable area of "
        "leaf 7."
    )


def test_edges_that_just_touch_are_inside():
    assert [one.code for one in on([square(0, 0, 0, size=200.0)]).findings] == ["leaf-taken"]
    over = on([square(0, 0, 0, size=200.0)], Lie(across=0.5)).findings[0]
    assert over.code == "off-leaf" and "(0.5 mm left); off the photograph" in over.text
    inches = in_lengths(over, Lengths("inch")).text
    assert "(1/32 in left); off" in inches and " mm" not in inches


@pytest.mark.parametrize("turned", [False, True])
def test_faults_follow_the_leaf(turned):
    knot = Fault(box(10, 190, 20, 200))
    leaf = Leaf(7, Side(PHOTO), faults=(knot,))
    near, far = (85.0, -85.0) if not turned else (-85.0, 85.0)
    for across, seen in ((near, True), (far, False)):
        codes = [f.code for f in on([square(0, 0, 0)], Lie(0, across, 5.0, turned), leaf).findings]
        assert ("fault-seen" in codes) is seen


def test_a_back_that_was_not_photographed_is_said():
    faced = on([square(0, 0, 0)], Lie(turned=True))
    assert "mirrored" in faced.findings[-1].text


def test_numbers_that_are_none_and_a_leaf_with_nothing_usable_are_refused():
    with pytest.raises(VeneerError):
        Lie(grain=float("nan"))
    with pytest.raises(VeneerError, match="Nothing of leaf 7 may be used"):
        on([square(0, 0, 0)], leaf=Leaf(7, Side(PHOTO), usable=box(0, 0, 0, 0).buffer(0)))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A leaf on faces that are not ours: where each corner of a face lies on the leaf, in mm."""

import FreeCAD
import numpy as np
import Part
import pytest
from FreeCAD import Placement, Rotation, Vector
from shapely.geometry import box

from veneerwb.core import Bundle, Fault, Leaf, Motion, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.host.objects import add_bundle, add_facing, add_leaf, faced, set_faces

WIDTH, LENGTH = 200.0, 400.0
"""The leaf; its middle is (100, 200)."""


def photo(shade: int = 90) -> Photo:
    pixels = np.full((200, 100, 3), shade, np.uint8)
    pixels[:20, :20] = (255, 0, 0)
    return Photo.of(pixels, 2.0)


@pytest.fixture
def leaf(doc):
    return add_leaf(doc, Leaf(1, Side(photo())))


def on_leaf(facing, points) -> np.ndarray:
    """Points of the world, in any plane of the facing, in mm on the leaf as seen from its face."""
    laid = faced(facing)
    found = []
    for point in points:
        plane = next(p for p in laid.planes if abs(p.frame.off([point])[0]) < 0.01)
        found.append(laid.onto_leaf(plane).apply(plane.frame.flat([point]))[0])
    return np.array(found)


def facing_of(doc, leaf, *faces, **properties):
    made = add_facing(doc, leaf, faces, **properties)
    doc.recompute()
    return made


def test_a_level_face_has_the_grain_along_y_and_the_middles_together(doc, leaf, crate):
    top = facing_of(doc, leaf, (crate, "Face6"))
    assert top.Message == ""
    corners = [(0, 0, 100), (60, 0, 100), (60, 80, 100), (0, 80, 100)]
    assert on_leaf(top, corners) == pytest.approx(
        np.array([(70, 160), (130, 160), (130, 240), (70, 240)])
    )


def test_a_level_face_seen_from_below_is_no_mirror_image(doc, leaf, crate):
    bottom = facing_of(doc, leaf, (crate, "Face5"))
    # From below with y up, the world's x runs to the left.
    assert on_leaf(bottom, [(0, 0, 0), (60, 0, 0), (0, 80, 0)]) == pytest.approx(
        np.array([(130, 160), (70, 160), (130, 240)])
    )


UPRIGHT = {
    "Face3": [(0, 0, 0), (60, 0, 0), (0, 0, 100)],  # the front, y = 0
    "Face4": [(60, 80, 0), (0, 80, 0), (60, 80, 100)],  # the back: x runs to the left
    "Face1": [(0, 80, 0), (0, 0, 0), (0, 80, 100)],  # x = 0: y runs to the left
    "Face2": [(60, 0, 0), (60, 80, 0), (60, 0, 100)],
}
"""Of each upright face: its lower left corner, lower right and upper left, seen from outside."""


@pytest.mark.parametrize("name", UPRIGHT)
def test_an_upright_face_has_the_grain_upright(doc, leaf, crate, name):
    side = facing_of(doc, leaf, (crate, name))
    wide = 80.0 if name in ("Face1", "Face2") else 60.0
    left, low = 100 - wide / 2, 150
    assert on_leaf(side, UPRIGHT[name]) == pytest.approx(
        np.array([(left, low), (left + wide, low), (left, low + 100)])
    )


def test_grain_turns_counter_clockwise_and_the_leaf_is_moved_across_and_along(doc, leaf, crate):
    # Grain at 90: the leaf's length runs to the left, so its width runs upwards (+z).
    front = facing_of(doc, leaf, (crate, "Face3"), Grain=90.0, Across=7.0, Along=11.0)
    middle = (30, 0, 50)
    # Moved 7 towards +z and 11 towards -x: the middle of the face lies 7 and 11 short of it.
    assert on_leaf(front, [middle]) == pytest.approx(np.array([(93, 189)]))
    assert on_leaf(front, [(0, 0, 50), (30, 0, 100)]) == pytest.approx(
        np.array([(93, 219), (143, 189)])
    )


def wedge(doc):
    """A ramp that rises along y at 3 : 4: 100 mm wide, 80 deep, 60 high; its slope is 100 long."""
    made = doc.addObject("Part::Feature", "Ramp")
    side = Part.makePolygon([Vector(0, y, z) for y, z in ((0, 0), (80, 0), (80, 60), (0, 0))])
    made.Shape = Part.Face(side).extrude(Vector(100, 0, 0))
    doc.recompute()
    slope = next(
        k
        for k, face in enumerate(made.Shape.Faces, 1)
        if abs(abs(face.normalAt(0, 0).z) - 0.8) < 1e-9
    )
    return made, f"Face{slope}"


def test_a_tilted_face_has_the_grain_up_the_slope_at_true_length(doc, leaf):
    ramp = facing_of(doc, leaf, wedge(doc))
    assert on_leaf(ramp, [(0, 0, 0), (100, 0, 0), (0, 80, 60)]) == pytest.approx(
        np.array([(50, 150), (150, 150), (50, 250)])
    )


def test_a_turned_leaf_is_mirrored_and_moves_as_it_is_seen(doc, leaf, crate):
    top = facing_of(doc, leaf, (crate, "Face6"), Turned=True, Across=5.0)
    # Seen with its back up the leaf's left is at the right; moved 5 to the right.
    assert on_leaf(top, [(0, 0, 100), (60, 0, 100), (0, 80, 100)]) == pytest.approx(
        np.array([(135, 160), (75, 160), (135, 240)])
    )
    assert any("mirrored" in line for line in top.Findings)


def test_a_solid_turned_inside_out_is_still_seen_from_outside(doc, leaf, crate):
    inside_out = doc.addObject("Part::Feature", "InsideOut")
    inside_out.Shape = crate.Shape.reversed()
    assert inside_out.Shape.Volume < 0
    top = facing_of(doc, leaf, (inside_out, "Face6"))
    assert on_leaf(top, [(0, 0, 100), (60, 0, 100)]) == pytest.approx(
        np.array([(70, 160), (130, 160)])
    )
    assert top.Shape.Faces[0].normalAt(0, 0).z == pytest.approx(1)


def test_faces_of_one_plane_share_the_figure_across_their_gap(doc, leaf, crate):
    other = doc.addObject("Part::Box", "Other")
    other.Length, other.Width, other.Height = 30.0, 80.0, 100.0
    other.Placement.Base = Vector(70, 0, 0)
    doc.recompute()
    both = facing_of(doc, leaf, (crate, "Face6"), (other, "Face6"), (crate, "Face3"))
    assert [plane.numbers for plane in faced(both).planes] == [(1, 2), (3,)]
    # Together 100 wide: from 50 to 150 on the leaf, with the gap of 10 mm kept.
    assert on_leaf(both, [(0, 0, 100), (60, 40, 100), (70, 40, 100), (100, 80, 100)]) == (
        pytest.approx(np.array([(50, 160), (110, 200), (120, 200), (150, 240)]))
    )


def test_planes_that_look_away_from_each_other_are_two(doc, leaf, crate):
    lid = doc.addObject("Part::Box", "Lid")
    lid.Placement.Base = Vector(0, 0, 100)
    doc.recompute()
    both = facing_of(doc, leaf, (crate, "Face6"), (lid, "Face5"))
    assert [plane.numbers for plane in faced(both).planes] == [(1,), (2,)]


def test_faces_are_where_parts_and_bodies_put_them(doc, leaf):
    inner = doc.addObject("PartDesign::Body", "Body")
    block = inner.newObject("PartDesign::AdditiveBox", "Block")
    block.Length, block.Width, block.Height = 60.0, 80.0, 100.0
    inner.Placement = Placement(Vector(0, 0, 10), Rotation())
    outer = doc.addObject("App::Part", "Carcase")
    outer.addObject(inner)
    # The part lies on its back: what was up, z, looks along -y.
    outer.Placement = Placement(Vector(1000, 0, 0), Rotation(Vector(1, 0, 0), 90))
    doc.recompute()
    front = facing_of(doc, leaf, (inner, "Face6"))
    assert front.Message == ""
    assert front.Shape.BoundBox.Center.isEqual(Vector(1030, -110, 40), 1e-9)
    assert on_leaf(front, [(1000, -110, 0), (1060, -110, 0), (1000, -110, 80)]) == (
        pytest.approx(np.array([(70, 160), (130, 160), (70, 240)]))
    )
    by_feature = facing_of(doc, leaf, (block, "Face6"))
    assert by_feature.Shape.BoundBox.Center.isEqual(front.Shape.BoundBox.Center, 1e-9)
    outer.Placement = Placement(Vector(0, 0, 0), Rotation())
    doc.recompute()
    assert by_feature.Shape.BoundBox.Center.isEqual(Vector(30, 40, 110), 1e-9)
    assert front.Shape.BoundBox.Center.isEqual(Vector(30, 40, 110), 1e-9)
    inner.Placement = Placement(Vector(0, 0, 20), Rotation())
    doc.recompute()
    assert front.Shape.BoundBox.Center.isEqual(Vector(30, 40, 120), 1e-9)


def test_a_facing_that_is_put_into_a_part_stays_on_its_faces(doc, leaf, crate):
    top = facing_of(doc, leaf, (crate, "Face6"))
    part = doc.addObject("App::Part", "Carcase")
    part.Placement = Placement(Vector(0, 0, 500), Rotation(Vector(1, 0, 0), 90))
    part.addObjects([crate, top])
    doc.recompute()
    assert top.Message == "" and top.Shape.BoundBox.Center.isEqual(Vector(30, 40, 100), 1e-9)
    # In the world the face now looks along -y, from y = -100.
    assert on_leaf(top, [(0, -100, 500), (60, -100, 500), (0, -100, 580)]) == pytest.approx(
        np.array([(70, 160), (130, 160), (70, 240)])
    )


def test_it_follows_a_part_that_its_solid_is_put_into_later(doc, leaf, crate):
    top = facing_of(doc, leaf, (crate, "Face6"))
    part = doc.addObject("App::Part", "Carcase")
    part.addObject(crate)
    doc.recompute()
    part.Placement.Base = Vector(0, 0, 40)
    doc.recompute()
    assert top.Shape.BoundBox.ZMax == pytest.approx(140)
    part.removeObject(crate)
    doc.recompute()
    assert top.Shape.BoundBox.ZMax == pytest.approx(100)
    part.addObject(top)
    doc.recompute()
    assert top.Shape.BoundBox.ZMax == pytest.approx(60)  # 100 in the world
    part.Placement.Base = Vector(0, 0, 10)
    doc.recompute()
    assert top.Shape.BoundBox.ZMax == pytest.approx(90)
    assert faced(top).planes[0].frame.origin[2] == pytest.approx(100)


def test_a_link_is_shown_where_the_link_is(doc, leaf, crate):
    link = doc.addObject("App::Link", "Copy")
    link.LinkedObject = crate
    link.Placement.Base = Vector(500, 0, 0)
    doc.recompute()
    top = facing_of(doc, leaf, (link, "Face6"))
    assert top.Message == "" and top.Shape.BoundBox.Center.isEqual(Vector(530, 40, 100), 1e-9)
    assert on_leaf(top, [(500, 0, 100)]) == pytest.approx(np.array([(70, 160)]))


def test_a_link_to_a_part_follows_what_lies_in_the_part(doc, leaf, crate):
    part = doc.addObject("App::Part", "Carcase")
    part.addObject(crate)
    link = doc.addObject("App::Link", "Copy")
    link.LinkedObject = part
    link.Placement.Base = Vector(0, 0, 500)
    doc.recompute()
    top = facing_of(doc, leaf, (link, "Crate.Face6"))
    assert top.Message == "" and top.Shape.BoundBox.ZMax == pytest.approx(600)
    raised = Placement(Vector(0, 0, 7), Rotation())
    for change, value, z in (("Height", 50.0, 550), ("Placement", raised, 557)):
        setattr(crate, change, value)
        doc.recompute()
        assert top.Shape.BoundBox.ZMax == pytest.approx(z)


def test_holes_and_curves_keep_their_size(doc, leaf, crate):
    drill = doc.addObject("Part::Cylinder", "Drill")
    drill.Radius, drill.Height = 10.0, 200.0
    drill.Placement.Base = Vector(30, 40, -50)
    bored = doc.addObject("Part::Cut", "Bored")
    bored.Base, bored.Tool = crate, drill
    doc.recompute()
    name = next(
        f"Face{k}" for k, f in enumerate(bored.Shape.Faces, 1) if f.CenterOfMass.z > 99.9
    )
    outline = faced(facing_of(doc, leaf, (bored, name))).planes[0].outlines[0]
    assert len(outline.interiors) == 1
    assert outline.area == pytest.approx(60 * 80 - np.pi * 100, abs=0.7)
    round_end = facing_of(doc, leaf, (drill, "Face2"))
    assert faced(round_end).planes[0].outlines[0].area == pytest.approx(np.pi * 100, abs=0.7)


def test_it_follows_its_solid(doc, leaf, crate):
    top = facing_of(doc, leaf, (crate, "Face6"))
    before = top.Revision
    crate.Length, crate.Height = 160.0, 20.0
    doc.recompute()
    assert top.Shape.BoundBox.ZMax == pytest.approx(20)
    assert on_leaf(top, [(0, 0, 20), (160, 80, 20)]) == pytest.approx(
        np.array([(20, 160), (180, 240)])
    )
    crate.Placement = Placement(Vector(0, 0, 5), Rotation())
    doc.recompute()
    assert top.Shape.BoundBox.ZMax == pytest.approx(25)
    assert top.Revision == before
    top.Grain = 10
    doc.recompute()
    assert top.Revision != before


def test_a_facing_that_is_moved_comes_back_to_its_faces(doc, leaf, crate):
    top = facing_of(doc, leaf, (crate, "Face6"))
    top.Placement.Base = Vector(5, 5, 5)
    doc.recompute()
    assert top.Placement.isIdentity() and top.Shape.BoundBox.ZMax == pytest.approx(100)


def test_a_flat_face_by_another_name_is_taken(doc, leaf):
    spline = doc.addObject("Part::Feature", "Spline")
    spline.Shape = Part.makePlane(60, 80).toNurbs()
    top = facing_of(doc, leaf, (spline, "Face1"))
    assert top.Message == ""
    corners = on_leaf(top, [(0, 0, 0), (60, 80, 0)])
    assert corners == pytest.approx(np.array([(70, 160), (130, 240)]))


def test_faces_that_reach_off_the_leaf_are_told_with_sides_and_sizes(doc, leaf, crate):
    crate.Length = 260.0
    top = facing_of(doc, leaf, (crate, "Face6"), Across=-10.0)
    # From -30 - ... 260 wide on 200: 30 mm off each side, the leaf moved 10 to the left.
    (off, *rest) = top.Findings
    assert off.startswith("stop: Face6 of Crate reaches up to 40 mm beyond the usable area of leaf")
    assert "20 mm left, 40 mm right" in off and "its edge is repeated" in off
    assert "260 mm across and 80 mm along the grain" in rest[-1]
    top.Turned = True
    doc.recompute()
    assert "20 mm left, 40 mm right" in top.Findings[0]  # as it is seen


def test_faults_and_the_usable_area_count(doc, crate):
    leaf = add_leaf(
        doc,
        Leaf(
            4,
            Side(photo()),
            usable=box(0, 0, 100, 400),
            faults=(Fault(box(40, 190, 45, 195)), Fault(box(0, 0, 9, 9), "bark")),
        ),
    )
    top = facing_of(doc, leaf, (crate, "Face6"))
    assert on_leaf(top, [(30, 40, 100)]) == pytest.approx(np.array([(50, 200)]))
    assert any("Faults (knot) of leaf 4 will be seen on Face6 of Crate" in f for f in top.Findings)
    assert not any("bark" in line or "beyond" in line for line in top.Findings)
    top.Across = -25.0
    doc.recompute()
    assert "5 mm right" in top.Findings[0] and "repeated" not in top.Findings[0]


def test_a_turned_leaf_shows_its_neighbours_photograph(doc, crate):
    leaves = (
        Leaf(1, Side(photo(90), Motion(2.0, 3.0, 4.0), Motion(2.0, 3.0, 4.0))),
        Leaf(2, Side(photo(180), Motion(-1.0, 6.0, 5.0), Motion(-1.0, 6.0, 5.0))),
    )
    bundle = add_bundle(doc, Bundle(leaves, 0.6))
    top = facing_of(doc, bundle.Leaves[0], (crate, "Face6"), Turned=True)
    assert top.Message == "" and not any("mirrored" in line for line in top.Findings)
    laid = faced(top)
    assert laid.side.source == "neighbour" and int(laid.side.photo[100, 50, 0]) in range(177, 184)
    (plane,) = laid.planes
    # The same point of the figure: leaf 1 -> bundle -> photo of leaf 2.
    point = plane.frame.flat([(0, 0, 100)])
    on_bundle = Motion(2.0, 3.0, 4.0).inverse().apply(laid.onto_leaf(plane).apply(point))
    expected = Motion(-1.0, 6.0, 5.0).apply(on_bundle)
    assert laid.onto_photo(plane).apply(point) == pytest.approx(expected)
    before = top.Revision
    bundle.Back = "own"
    doc.recompute()
    assert top.Revision != before and faced(top).side.source == "own face"


def test_undo_and_redo(doc, leaf, crate):
    top = facing_of(doc, leaf, (crate, "Face6"))
    doc.openTransaction("lie")
    top.Grain, top.Across = 90.0, 12.0
    set_faces(top, [(crate, "Face6"), (crate, "Face3")])
    doc.recompute()
    doc.commitTransaction()
    for step, count, grain in ((doc.undo, 1, 0.0), (doc.redo, 2, 90.0)):
        step()
        doc.recompute()
        assert len(top.Shape.Faces) == count and top.Grain.Value == grain
        assert top.Message == "" and len(faced(top).planes) == count


def test_save_and_reopen(doc, leaf, crate, tmp_path):
    top = facing_of(doc, leaf, (crate, "Face6"), wedge(doc), Grain=30.0, Across=4.0, Along=-6.0)
    corners = [(0, 0, 100), (60, 80, 100), (100, 0, 0), (0, 80, 60)]
    before, revision = on_leaf(top, corners), top.Revision
    doc.saveAs(str(tmp_path / "faced.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "faced.FCStd"))
    top = again.getObject("Facing")
    assert top.Message == "" and on_leaf(top, corners) == pytest.approx(before)
    again.recompute(None, True)
    assert top.Message == "" and top.Revision == revision
    again.getObject("Crate").Height = 50.0
    again.recompute()
    assert on_leaf(top, [(0, 0, 50)]) == pytest.approx(before[:1])


def test_a_facing_in_a_part_with_what_it_lies_on_makes_no_circle(doc, leaf, crate):
    part = doc.addObject("App::Part", "Carcase")
    part.addObject(crate)
    doc.recompute()
    top = facing_of(doc, leaf, (crate, "Face6"))
    assert part in top.Watched
    part.addObject(top)
    assert part not in top.Watched
    doc.recompute()
    assert top.Message == "" and part not in top.Watched
    crate.Length = 90.0
    doc.recompute()
    assert top.Shape.BoundBox.XLength == pytest.approx(90)

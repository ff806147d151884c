# SPDX-License-Identifier: LGPL-2.1-or-later
"""A run of panels on faces that are not ours: numbered, laid where they are, followed, refused."""

import FreeCAD
import Part
import pytest
from FreeCAD import Placement, Rotation, Vector

from veneerwb.core.outlines.edge import Arc
from veneerwb.host.objects import add_bundle, add_run, add_stock, run_of, set_faces

WIDE, HIGH, THICK, GAP = 400.0, 700.0, 19.0, 3.0
FRONT = "Face3"
"""A box's face at y = 0, seen from -y: x runs to the right, z up."""


def door(doc, name, x=0.0, z=0.0, wide=WIDE, high=HIGH):
    made = doc.addObject("Part::Box", name)
    made.Length, made.Width, made.Height = wide, THICK, high
    made.Placement.Base = Vector(x, 0.0, z)
    return made


@pytest.fixture
def doors(doc):
    """Five doors side by side, made from the right one on."""
    made = [door(doc, f"Door{k}", k * (WIDE + GAP)) for k in (5, 4, 3, 2, 1)]
    doc.recompute()
    return made


@pytest.fixture
def leaves(doc):
    """Twenty leaves of 260 x 1600 mm, 0.5 mm thick."""
    return add_stock(doc, 260.0, 1600.0, 20, 0.5)


def run_on(doc, bundle, *panels, face=FRONT, **properties):
    made = add_run(doc, bundle, [(one, face) for one in panels], **properties)
    doc.recompute()
    return made


def shown(run):
    """The leaves of each panel, by its number."""
    return [[piece.leaf for piece in layout.pieces] for layout in run_of(run).laid.layouts]


def boxes(run):
    """The bounds of the veneer on each panel: x and z from and to, rounded."""
    found = run_of(run)
    out = []
    for panel in found.laid.panels:
        whole = FreeCAD.BoundBox()
        for k in found.solids_of(panel.number):
            whole.add(run.Shape.Solids[k - 1].BoundBox)
        out.append(tuple(round(v, 6) for v in (whole.XMin, whole.XMax, whole.ZMin, whole.ZMax)))
    return out


def test_doors_are_numbered_and_veneered_where_they_are(doc, doors, leaves):
    run = run_on(doc, leaves, *doors, Count=2)
    assert run.Message == ""
    assert list(run.PanelNumbers) == [5, 4, 3, 2, 1]
    assert shown(run) == [[1, 2], [3, 4], [5, 6], [7, 8], [9, 10]]
    lefts = [k * (WIDE + GAP) for k in (1, 2, 3, 4, 5)]
    assert boxes(run) == [(x, x + WIDE, 0.0, HIGH) for x in lefts]
    assert run.Panels[0] == "1: Face3 of Door1, leaves 1-2, grain upright"
    solids = run.Shape.Solids
    assert len(solids) == 10 and all(one.isValid() for one in solids)
    assert sum(one.Volume for one in solids) == pytest.approx(5 * WIDE * HIGH * 0.5, rel=1e-9)
    # The back lies on the door, the show face outside.
    assert (run.Shape.BoundBox.YMin, run.Shape.BoundBox.YMax) == pytest.approx((-0.5, 0.0))
    assert run.Findings[0].startswith("note: The 5 panels take 10 leaves, 2 each; 10 stay over.")


def test_a_wall_is_numbered_from_its_upper_left_as_it_is_seen(doc, leaves):
    """Seen from +y the world's x runs to the left."""
    panels = [door(doc, f"P{r}{c}", c * 403.0, r * 704.0) for r in (0, 1) for c in range(4)]
    doc.recompute()
    run = run_on(doc, leaves, *panels, face="Face4", Count=1)
    assert run.Message == "" and list(run.PanelNumbers) == [8, 7, 6, 5, 4, 3, 2, 1]
    assert run.Shape.BoundBox.YMax == pytest.approx(THICK + 0.5)


@pytest.mark.parametrize(("gaps", "width"), [("closed", 2000.0), ("laid through", 2012.0)])
def test_one_field_is_laid_over_all_doors(doc, doors, leaves, gaps, width):
    run = run_on(doc, leaves, *doors, Mode="blueprint", Gaps=gaps, Count=9)
    assert run.Message == ""
    laid = run_of(run).laid
    assert laid.field.width == pytest.approx(width)
    strips = shown(run)
    assert strips[0][0] == 1 and strips[0][-1] == strips[1][0] and strips[4][-1] == 9
    # What the doors show of one strip that lies across a gap: the gap is in it, or it is not.
    one, other = laid.layouts[0].pieces[-1], laid.layouts[1].pieces[0]
    spans = [p.onto_bundle.apply_to(p.outline).bounds for p in (one, other)]
    wide = max(s[2] for s in spans) - min(s[0] for s in spans)
    assert wide == pytest.approx(width / 9)
    assert sum(s[2] - s[0] for s in spans) == pytest.approx(wide - (width - 2000.0) / 4)


def test_doors_of_all_shapes_keep_their_true_curves(doc, leaves):
    """An arched door with a round cut-out, tilted in space."""
    arch = Part.Wire(
        [
            Part.makeLine(Vector(0, 0, 0), Vector(400, 0, 0)),
            Part.makeLine(Vector(400, 0, 0), Vector(400, 600, 0)),
            Part.Arc(Vector(400, 600, 0), Vector(200, 680, 0), Vector(0, 600, 0)).toShape(),
            Part.makeLine(Vector(0, 600, 0), Vector(0, 0, 0)),
        ]
    )
    hole = Part.Wire(Part.makeCircle(60, Vector(200, 400, 0)))
    made = doc.addObject("Part::Feature", "Arched")
    made.Shape = Part.Face(arch).cut(Part.Face(hole)).Faces[0].extrude(Vector(0, 0, 19))
    made.Placement = Placement(Vector(300, -200, 50), Rotation(Vector(1, 2, 3), 40))
    doc.recompute()
    face = max(range(1, 8), key=lambda k: made.Shape.Faces[k - 1].Area)
    run = run_on(doc, leaves, made, face=f"Face{face}", Count=2)
    assert run.Message == ""
    area = made.Shape.Faces[face - 1].Area
    assert run.Shape.Volume == pytest.approx(area * 0.5, rel=1e-9)
    top = run_of(run).laid.panels[0].top
    assert any(isinstance(s, Arc) for s in top.edge) and len(top.holes) == 1
    assert all(one.isValid() for one in run.Shape.Solids)
    for solid in run.Shape.Solids:
        assert made.Shape.distToShape(solid)[0] == pytest.approx(0.0, abs=1e-6)
        assert solid.common(made.Shape).Volume == pytest.approx(0.0, abs=1e-3)


def test_the_run_follows_when_a_door_is_moved_and_when_all_are(doc, doors, leaves):
    run = run_on(doc, leaves, *doors, Count=2)
    before = run.Revision
    doors[0].Placement.Base.x += 40.0  # the last one on the right
    doc.recompute()
    assert boxes(run)[4][0] == pytest.approx(5 * (WIDE + GAP) + 40.0) and run.Revision != before
    doors[0].Placement.Base = Vector(-1000.0, 0.0, 0.0)  # now it is the first one
    doc.recompute()
    assert list(run.PanelNumbers) == [1, 5, 4, 3, 2] and boxes(run)[0][0] == -1000.0
    group = doc.addObject("App::Part", "Cabinet")
    group.addObjects(doors)
    group.Placement = Placement(Vector(0, 0, 5000), Rotation(Vector(0, 0, 1), 90))
    doc.recompute()
    assert run.Message == ""
    assert run.Shape.BoundBox.ZMin == pytest.approx(5000.0)
    assert run.Shape.BoundBox.XMax == pytest.approx(0.5)
    run.Placement.Base.x = 77.0  # moved by hand, which would leave the doors behind
    doc.recompute()
    assert run.Shape.BoundBox.XMax == pytest.approx(0.5)


def test_a_larger_door_is_named_with_its_difference_and_the_last_state_stays(doc, doors, leaves):
    run = run_on(doc, leaves, *doors, Count=2)
    doors[2].Height = HIGH + 25.0  # Door3
    doc.recompute()
    assert "panel 3 is 25 mm higher than panel 1 (400 by 700 mm)" in run.Message
    assert len(run.Shape.Solids) == 10
    run.Mode = "blueprint"
    doc.recompute()
    assert run.Message == "" and boxes(run)[2][3] == pytest.approx(HIGH + 25.0)


@pytest.mark.parametrize(
    ("move", "words"),
    [
        (Placement(Vector(2015, 4.0, 0), Rotation()), "lies 4 mm off the plane of Face3 of Door4"),
        (
            Placement(Vector(2015, 0, 0), Rotation(Vector(0, 0, 1), 2.0)),
            "is tilted by 2 degrees against Face3 of Door4",
        ),
        (
            Placement(Vector(2415, THICK, 0), Rotation(Vector(0, 0, 1), 180.0)),
            "tilted by 180 degrees|looks the other way than Face3 of Door4",
        ),
    ],
)
def test_a_door_out_of_the_plane_is_refused_by_name(doc, doors, leaves, move, words):
    run = run_on(doc, leaves, *doors[1:], doors[0], Count=2)
    doors[0].Placement = move
    doc.recompute()
    assert run.Message.startswith("Face3 of Door5 ")
    assert any(word in run.Message for word in words.split("|"))
    assert "choose faces of one plane and one side" in run.Message
    assert len(run.Shape.Solids) == 10 and "Traceback" not in run.Message


def test_what_is_no_flat_face_or_is_gone_is_refused(doc, doors, leaves):
    post = doc.addObject("Part::Cylinder", "Post")
    doc.recompute()
    run = run_on(doc, leaves, post, face="Face1")
    assert run.Message == "Face1 of Post is not flat; choose flat faces."
    assert run_on(doc, leaves).Message == "It has no faces; choose flat faces."
    run = run_on(doc, leaves, *doors, Count=2)
    doc.removeObject("Door3")
    doc.recompute()
    assert "Face3 of Door3 is gone" in run.Message and len(run.Shape.Solids) == 10
    set_faces(run, [(doc.getObject(f"Door{k}"), FRONT) for k in (1, 2)])
    doc.recompute()
    assert run.Message == "" and len(run.Shape.Solids) == 4


def test_too_few_leaves_and_no_leaves_are_refused(doc, doors):
    few = add_stock(doc, 260.0, 1600.0, 7, 0.5)
    run = run_on(doc, few, *doors, Count=2)
    assert "take 10 leaves" in run.Message and "enough for 3 of 5" in run.Message
    run.Bundle = None
    doc.recompute()
    assert run.Message.startswith("The run has no bundle")


def test_two_bundles_meet_where_it_is_told(doc, doors, leaves):
    few = add_stock(doc, 260.0, 1600.0, 5, 0.5)
    run = run_on(doc, few, *doors, Count=2, Second=leaves, Missing=3)
    assert run.Message == "" and shown(run)[2] == [5, 9]
    (met,) = [f for f in run.Proxy.found if f.code == "bundle-joint"]
    assert met.pieces == (3,) and "counted as 3 missing leaves" in met.text
    run.Second = few
    doc.recompute()
    assert "Both bundles of the run are the same" in run.Message


def test_a_leaf_that_has_gone_is_not_replaced_without_a_word(doc, doors, sawn):
    bundle = add_bundle(doc, sawn)
    run = run_on(doc, bundle, *doors[3:], Count=2)
    assert run.Message == "" and list(run.Leaves) == [1, 2, 3, 4]
    bundle.Leaves = [leaf for leaf in bundle.Leaves if leaf.Number != 2]
    doc.recompute()
    assert run.Message.startswith("Leaf 2 is missing from the bundle")
    run.First = 3
    doc.recompute()
    assert run.Message == "" and list(run.Leaves) == [3, 4, 5, 6]


@pytest.mark.parametrize(
    ("kind", "pieces"),
    [("End match", 4), ("Box", 4), ("Diamond", 4), ("Herringbone", 0), ("Radial", 8)],
)
def test_panels_are_laid_in_any_match(doc, doors, kind, pieces):
    wide = add_stock(doc, 900.0, 1600.0, 200, 0.5)
    run = run_on(doc, wide, *doors[:2], Kind=kind, Count=4, Ways=8, StripWidth=0.0)
    assert run.Message == ""
    if pieces:
        assert [len(one) for one in shown(run)] == [pieces, pieces]
    assert run.Shape.Volume == pytest.approx(2 * WIDE * HIGH * 0.5, rel=1e-9)


def test_another_match_takes_back_what_it_cannot_have(doc, doors, leaves):
    run = run_on(doc, leaves, *doors[:2], Turn="reverse slip", Turned="even", Count=2)
    run.Kind = "End match"
    assert (run.Turn, run.Turned) == ("book", "auto")
    doc.recompute()
    assert run.Message == "" and "Hidden" in run.getEditorMode("Ways")
    assert "Hidden" not in run.getEditorMode("EndKind")


def test_nothing_is_made_anew_where_nothing_has_changed(doc, doors, leaves):
    run = run_on(doc, leaves, *doors, Count=2)
    shape, mark = run.Shape, run.Revision
    run.Margin = 1.0
    doc.recompute()
    assert run.Shape.isSame(shape) and run.Revision == mark


def test_undo_takes_a_run_back_in_one_step(doc, doors, leaves):
    doc.openTransaction("Lay a run")
    run_on(doc, leaves, *doors, Count=2)
    doc.commitTransaction()
    doc.undo()
    assert doc.getObject("Run") is None
    doc.redo()
    doc.recompute()
    run = doc.getObject("Run")
    assert run.Message == "" and len(run.Shape.Solids) == 10


def test_a_saved_run_opens_as_it_was_and_still_follows(doc, doors, sawn, tmp_path):
    bundle = add_bundle(doc, sawn)
    doc.recompute()
    run = run_on(doc, bundle, *doors[3:], Count=2, Oversize=2.0, Mode="blueprint")
    before = (run.Message, run.Revision, list(run.Findings), list(run.Panels))
    doc.saveAs(str(tmp_path / "run.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "run.FCStd"))
    run = again.getObject("Run")
    assert (type(run.Proxy).__module__, type(run.Proxy).__name__) == (
        "veneerwb.host.objects.run", "Run",
    )  # fmt: skip
    assert (run.Message, run.Revision, list(run.Findings), list(run.Panels)) == before
    assert run_of(run).revision == run.Revision
    again.getObject("Door1").Placement.Base.z = 12.0
    again.recompute()
    assert run.Message == "" and boxes(run)[0][2] == pytest.approx(12.0)

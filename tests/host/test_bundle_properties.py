# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a Bundle says beside its leaves: faults through all, an outline, its inventory."""

import FreeCAD
import numpy as np
import Part
import pytest
from FreeCAD import Placement, Rotation, Vector
from shapely.geometry import box

from veneerwb.core import Bundle, Fault, Leaf, Motion, Side, VeneerError
from veneerwb.core.inventory import Entry, extent, from_csv
from veneerwb.core.inventory import as_csv as inventory_csv
from veneerwb.core.photos.reading import Photo
from veneerwb.host import areas, values
from veneerwb.host.objects import add_bundle, add_match, core_bundle
from veneerwb.host.outlines import area_of, kind_of_label


def leaf(number, register=None):
    register = register or Motion()
    photo = Photo.of(np.full((60, 40, 3), 30 * number, np.uint8), 5.0)  # 200 x 300 mm
    return Leaf(number, Side(photo, register, register))


@pytest.fixture
def bundle(doc):
    made = add_bundle(doc, Bundle((leaf(1), leaf(2, Motion(0.0, 10.0, 20.0)), leaf(3)), 0.6, "own"))
    doc.recompute()
    return made


def wire(doc, points, label, closed=True, at=None):
    obj = doc.addObject("Part::Feature", "Wire")
    points = [Vector(*p, *[0.0] * (3 - len(p))) for p in points]
    obj.Shape = Part.makePolygon([*points, points[0]] if closed else points)
    obj.Label = label
    obj.Placement = at or Placement()
    return obj


SQUARE = [(50, 50), (70, 50), (70, 80), (50, 80)]


def on_leaves(bundle):
    return {one.number: [(f.kind, f.outline.bounds) for f in one.faults]
            for one in core_bundle(bundle).leaves}


# --- faults through the bundle -----------------------------------------------------------------


def test_faults_through_the_bundle_are_on_every_leaf_by_its_register(doc, bundle):
    areas.set_through_faults(bundle, [Fault(box(50, 50, 70, 80), "split")])
    doc.recompute()
    assert bundle.Message == ""
    assert on_leaves(bundle) == {
        1: [("split", (50, 50, 70, 80))],
        2: [("split", (60, 70, 80, 100))],
        3: [("split", (50, 50, 70, 80))],
    }
    assert all(not one.FaultKinds for one in bundle.Leaves)  # carried, not written


def test_what_is_drawn_is_a_fault_of_the_kind_that_its_name_says(doc, bundle):
    circle = doc.addObject("Part::Feature", "Circle")
    circle.Shape, circle.Label = Part.makeCircle(10.0, Vector(100, 200, 0)), "Stain at the top"
    bundle.FaultShapes = [wire(doc, SQUARE, "knot 4"), circle]
    doc.recompute()
    found = core_bundle(bundle).leaf(3).faults
    assert [f.kind for f in found] == ["knot", "stain"]
    assert found[0].outline.bounds == (50, 50, 70, 80)
    assert found[1].outline.area == pytest.approx(np.pi * 100, rel=2e-3)
    circle.Shape = Part.makeCircle(5.0, Vector(100, 200, 0))
    doc.recompute()
    assert core_bundle(bundle).leaf(3).faults[1].outline.area == pytest.approx(78.5, rel=1e-2)


def test_sketches_and_faces_count_where_they_lie(doc, bundle):
    sketch = doc.addObject("Sketcher::SketchObject", "Sketch")
    for a, b in zip(SQUARE, [*SQUARE[1:], SQUARE[0]]):
        sketch.addGeometry(Part.LineSegment(Vector(*a, 0), Vector(*b, 0)), False)
    sketch.addGeometry(Part.LineSegment(Vector(0, 0, 0), Vector(9, 9, 0)), True)  # construction
    sketch.Label = "Margin"
    sketch.Placement.Base = Vector(5, 0, 30)
    face = doc.addObject("Part::Feature", "Face")
    around = Part.makePolygon([Vector(*point, 0) for point in (*SQUARE, SQUARE[0])])
    face.Shape, face.Label = Part.Face(around), "patch"
    holder = doc.addObject("App::Part", "Part")
    holder.Placement.Base = Vector(0, 100, 0)
    holder.addObject(face)
    bundle.FaultShapes = [sketch, face]
    doc.recompute()
    assert bundle.Message == ""
    assert on_leaves(bundle)[1] == [
        ("margin", (55, 50, 75, 80)), ("patch", (50, 150, 70, 180)),
    ]


def test_a_part_that_is_moved_takes_its_outlines_along(doc, bundle):
    drawn, holder = wire(doc, SQUARE, "knot"), doc.addObject("App::Part", "Part")
    bundle.FaultShapes = [drawn]
    doc.recompute()
    holder.Placement.Base = Vector(10, 0, 0)
    holder.addObject(drawn)
    doc.recompute()
    usable = bundle.UsableM2
    assert "Touched" not in bundle.State and on_leaves(bundle)[1] == [("knot", (60, 50, 80, 80))]
    holder.Placement.Base = Vector(190 - 50, 0, 0)  # half off the leaf
    assert "Touched" in bundle.State
    doc.recompute()
    assert bundle.UsableM2 == pytest.approx(usable + (10 + 20 + 10) * 30e-6)  # what is off
    holder.removeObject(drawn)
    doc.recompute()
    assert on_leaves(bundle)[1] == [("knot", (50, 50, 70, 80))] and bundle.UsableM2 == usable


def test_another_name_makes_it_another_kind_of_fault(doc, bundle):
    drawn = wire(doc, [(80, 130), (120, 130), (120, 180), (80, 180)], "knot")
    bundle.FaultShapes = [drawn]
    match = add_match(doc, bundle, Ways=3, Turn="slip", Diameter=100.0)
    doc.recompute()
    assert any("knot" in finding for finding in match.Findings)
    drawn.Label = "Split at the side"
    doc.recompute()
    assert any("split" in finding for finding in match.Findings)


@pytest.mark.parametrize(
    ("label", "kind"),
    [("Split", "split"), (" KNOT_3", "knot"), ("stain left", "stain"), ("Sketch001", "knot")],
)
def test_kinds_by_label(label, kind):
    assert kind_of_label(label) == kind


@pytest.mark.parametrize(
    ("shape", "said"),
    [
        (lambda: Part.makePolygon([Vector(*p, 0) for p in SQUARE]), "not closed"),
        (lambda: Part.makeLine(Vector(), Vector(9, 9, 0)), "not closed"),
        (lambda: Part.makePolygon(
            [Vector(0, 0, 0), Vector(50, 0, 0), Vector(50, 50, 30), Vector(0, 50, 0), Vector()]
        ), "one plane"),
        (lambda: Part.makePolygon(
            [Vector(0, 0, 0), Vector(50, 0, 0), Vector(50, 0, 30), Vector()]
        ), "encloses nothing"),
        (lambda: Part.makePolygon(
            [Vector(0, 0, 0), Vector(50, 50, 0), Vector(50, 0, 0), Vector(0, 50, 0), Vector()]
        ), "crosses itself"),
        (lambda: Part.makeBox(9, 9, 9), "is a solid"),
        (lambda: Part.Shape(), "shows no outline"),
    ],
)
@pytest.mark.parametrize("name", ["FaultShapes", "UsableShape"])
def test_what_is_no_flat_outline_is_refused_by_name(doc, bundle, shape, said, name):
    obj = doc.addObject("Part::Feature", "Odd")
    obj.Shape, obj.Label = shape(), "Knot oddly drawn"
    match = add_match(doc, bundle, Ways=3, Turn="slip", Diameter=60.0)
    doc.recompute()
    revision = match.Revision
    setattr(bundle, name, [obj] if name == "FaultShapes" else obj)
    doc.recompute()
    assert "Knot oddly drawn" in bundle.Message and said in bundle.Message
    assert match.Message == bundle.Message and match.Revision == revision
    setattr(bundle, name, [] if name == "FaultShapes" else None)
    doc.recompute()
    assert (bundle.Message, match.Message) == ("", "")


def test_a_deleted_outline_is_no_fault_any_more(doc, bundle):
    drawn = wire(doc, SQUARE, "knot")
    bundle.FaultShapes = [drawn]
    doc.recompute()
    doc.removeObject(drawn.Name)
    doc.recompute()
    assert bundle.Message == "" and on_leaves(bundle)[1] == []


def test_a_fault_is_seen_by_the_checks_of_a_match(doc, bundle):
    match = add_match(doc, bundle, Ways=3, Turn="slip", Diameter=100.0)
    doc.recompute()
    before = list(match.Findings)
    areas.set_through_faults(bundle, [Fault(box(80, 130, 120, 180), "knot")])
    doc.recompute()
    assert len(match.Findings) > len(before) and any("knot" in f for f in match.Findings)


# --- the outline for all -----------------------------------------------------------------------


def test_an_outline_narrows_every_leaf(doc, bundle):
    bundle.UsableShape = wire(doc, [(20, 20), (180, 20), (180, 280), (20, 280)], "Use this")
    doc.recompute()
    core = core_bundle(bundle)
    assert core.leaf(1).usable.bounds == (20, 20, 180, 280)
    assert core.leaf(2).usable.bounds == (30, 40, 190, 300)
    assert bundle.UsableM2 == pytest.approx(3 * 160 * 260e-6)
    assert bundle.FullM2 == pytest.approx(3 * 200 * 300e-6)


def test_an_outline_in_an_outline_is_a_hole(doc):
    inner = wire(doc, SQUARE, "x")
    outer = wire(doc, [(0, 0), (100, 0), (100, 100), (0, 100)], "y")
    both = doc.addObject("Part::Feature", "Both")
    both.Shape = Part.Compound([inner.Shape, outer.Shape])
    assert area_of(both).area == pytest.approx(100 * 100 - 20 * 30)
    tilted = wire(doc, SQUARE, "z", at=Placement(Vector(), Rotation(Vector(1, 0, 0), 60)))
    assert area_of(tilted).area == pytest.approx(20 * 15)  # as seen from above


def test_an_outline_that_leaves_nothing_is_refused(doc, bundle):
    bundle.UsableShape = wire(doc, [(900, 900), (910, 900), (910, 910)], "Far off")
    doc.recompute()
    assert "nothing of leaf 1" in bundle.Message


# --- inventory ---------------------------------------------------------------------------------


def test_the_inventory_stands_on_the_bundle(doc, bundle):
    bundle.Label, bundle.Species, bundle.TightSide = "Bundle 7", "Oak", "back"
    bundle.Moisture, bundle.Cost, bundle.Currency = 9.5, 100.0, "EUR"
    bundle.Flitch, bundle.LotMark, bundle.Origin, bundle.Cut = "F", "L", "own wood", "sliced"
    doc.recompute()
    assert (bundle.Message, bundle.Count) == ("", 3)
    assert (bundle.FullM2, bundle.FullSqFt) == pytest.approx((0.18, 1.9375), rel=1e-4)
    particulars = values.particulars(bundle)
    written = inventory_csv([Entry(particulars, extent(core_bundle(bundle)))])
    (found,) = from_csv(written).entries
    assert found.particulars == particulars and found.extent.leaves == 3
    assert (particulars.name, particulars.moisture, particulars.thickness) == ("Bundle 7", 9.5, 0.6)


@pytest.mark.parametrize(("name", "value"), [("Moisture", 55.0), ("Cost", -1.0)])
def test_particulars_that_cannot_be_are_refused(doc, bundle, name, value):
    setattr(bundle, name, value)
    doc.recompute()
    assert bundle.Message.endswith(".")
    assert core_bundle(bundle).numbers == (1, 2, 3)  # what is laid up does not hang on it


def test_how_the_leaves_lie_is_said(doc, bundle):
    assert "it is not said what they follow" in bundle.Registers
    bundle.Follows = "figure"
    doc.recompute()
    assert "follow the figure" in bundle.Registers
    for one in bundle.Leaves:
        one.RegisterX = one.RegisterY = 0.0
    bundle.Follows = "as photographed"
    doc.recompute()
    assert "lie as photographed" in bundle.Registers


# --- the document ------------------------------------------------------------------------------


def test_all_of_it_survives_saving_undo_and_copying(doc, bundle, tmp_path):
    doc.openTransaction("Draw")
    drawn, outline = wire(doc, SQUARE, "Split"), wire(doc, [(0, 0), (150, 0), (150, 290)], "Use")
    bundle.FaultShapes, bundle.UsableShape = [drawn], outline
    bundle.Species, bundle.Follows, bundle.EvenLight = "Ash", "log", False
    bundle.FaultOutlines = [Vector(1, 1, 0), Vector(9, 1, 0), Vector(9, 9, 0)]
    bundle.FaultKinds = ["stain"]
    doc.recompute()
    doc.commitTransaction()
    before = on_leaves(bundle)
    assert [kind for kind, _ in before[1]] == ["stain", "split"]
    doc.undo()
    doc.recompute()
    assert on_leaves(bundle)[1] == [] and (bundle.Species, bundle.EvenLight) == ("", True)
    assert bundle.UsableShape is None
    doc.redo()
    doc.recompute()
    assert on_leaves(bundle) == before and bundle.Message == ""
    copy = doc.copyObject(bundle, True)
    copy = copy if not isinstance(copy, (list, tuple)) else copy[-1]
    doc.recompute()
    assert copy.Species == "Ash" and on_leaves(copy) == before
    doc.saveAs(str(tmp_path / "b.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "b.FCStd")).getObject("Bundle")
    assert (again.Species, again.Follows, again.EvenLight) == ("Ash", "log", False)
    assert on_leaves(again) == before
    again.touch()
    again.Document.recompute()
    assert again.Message == ""


def test_faults_of_a_leaf_are_set_and_refused_whole(doc, bundle):
    one = bundle.Leaves[0]
    knot, edge = Fault(box(10, 10, 20, 20), "knot"), Fault(box(190, 0, 260, 9), "margin")
    areas.set_faults(one, [knot, edge])
    assert [f.outline.bounds for f in values.core_leaf(one).faults] == [
        (10, 10, 20, 20), (190, 0, 200, 9),
    ]
    for wrong in (Fault(box(900, 900, 910, 910)), Fault(box(1, 1, 2, 2), "hole")):
        with pytest.raises(VeneerError):
            areas.set_faults(one, [wrong])
    assert list(one.FaultKinds) == ["knot", "margin"]
    areas.set_usable(one, box(5, 5, 100, 300))
    assert values.core_leaf(one).usable.bounds == (5, 5, 100, 300)
    assert list(one.FaultKinds) == ["knot", "margin"]
    areas.set_usable(one)
    assert values.core_leaf(one).usable.bounds == (0, 0, 200, 300)
    doc.undo()
    assert values.core_leaf(one).usable.bounds == (5, 5, 100, 300)

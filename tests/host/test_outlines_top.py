# SPDX-License-Identifier: LGPL-2.1-or-later
"""Sketches, wires and planar faces as tops: read true, followed, or refused in a sentence."""

import math

import FreeCAD
import Part
import pytest
from FreeCAD import Vector

from veneerwb.core.outlines.curves import Curve, EllipseArc
from veneerwb.core.outlines.edge import Arc, Line
from veneerwb.host import values
from veneerwb.host.objects import add_match

UP = Vector(0.0, 0.0, 1.0)


def run(*corners):
    points = [Vector(x, y, 0.0) for x, y in corners]
    return [Part.LineSegment(a, b) for a, b in zip(points, points[1:])]


def hole(x, y, radius):
    return Part.Circle(Vector(x, y, 0.0), UP, radius)


OBLONG = run((0, 0), (800, 0), (800, 400), (0, 400), (0, 0))
LONG = Part.Ellipse(Vector(300, 0, 0), Vector(0, 150, 0), Vector())
BEZIER = Part.BezierCurve()
BEZIER.setPoles([Vector(0, 0, 0), Vector(200, -200, 0), Vector(600, -200, 0), Vector(800, 0, 0)])
FIFTH = Part.BezierCurve()
FIFTH.setPoles([Vector(100.0 * k, -90.0 * (k % 2), 0) for k in range(6)])
WAVE = Part.BSplineCurve()
WAVE.interpolate([Vector(0, 0, 0), Vector(500, -90, 0), Vector(700, 300, 0), Vector(90, 350, 0)],
                 PeriodicFlag=True)  # fmt: skip
ROUND = Part.Circle(Vector(), UP, 300.0).toBSpline()


def closed(curve, far):
    a, b = curve.value(curve.FirstParameter), curve.value(curve.LastParameter)
    return [curve, Part.LineSegment(b, Vector(*far, 0)), Part.LineSegment(Vector(*far, 0), a)]


OUTLINES = {
    "straights": (OBLONG, {Line}, 800.0 * 400.0),
    "with an opening": ([*OBLONG, hole(200, 100, 50)], {Line}, 320000.0 - math.pi * 2500.0),
    "circle": ([hole(10, 20, 300)], {Arc}, math.pi * 90000.0),
    "arc": ([*run((0, 0), (600, 0)), Part.Arc(Vector(600, 0, 0), Vector(300, 300, 0), Vector())],
            {Line, Arc}, math.pi * 45000.0),
    "ellipse": ([LONG], {EllipseArc}, math.pi * 300.0 * 150.0),
    "half an ellipse": ([Part.ArcOfEllipse(LONG, 0.0, math.pi), *run((-300, 0), (300, 0))],
                        {Line, EllipseArc}, math.pi * 300.0 * 75.0),
    "cubic": (closed(BEZIER, (400, 500)), {Line, Curve}, None),
    "of the fifth degree": (closed(FIFTH, (250, 400)), {Line, Curve}, None),
    "periodic spline": ([WAVE], {Curve}, None),
    "rational spline": ([ROUND], {Curve}, math.pi * 90000.0),
}  # fmt: skip
PLACES = {
    "flat": FreeCAD.Placement(),
    "anywhere": FreeCAD.Placement(Vector(70, 80, 90), FreeCAD.Rotation(Vector(1, 2, 3), 110)),
}


def laid_on(doc, stock, **properties):
    match = add_match(
        doc, stock, Kind="Side by side", Top="Outline", StripWidth=400.0, **properties
    )
    doc.recompute()
    return match


def wire(doc, parts, place=None):
    feature = doc.addObject("Part::Feature", "Wire")
    edges = [part.toShape() for part in parts]
    feature.Shape = Part.Compound(edges)
    feature.Placement = place or FreeCAD.Placement()
    return feature


def shoelace(parts):
    """The area within closed edges by points close to each other; the host's own is off by 1e-4 for
    a periodic spline."""
    points = []
    for edge in Part.sortEdges([part.toShape() for part in parts])[0]:
        ring = edge.discretize(Number=5000)
        points += ring if edge.Orientation == "Forward" else ring[::-1]
    pairs = zip(points, [*points[1:], points[0]])
    return abs(math.fsum(a.x * b.y - a.y * b.x for a, b in pairs)) / 2.0


@pytest.mark.parametrize("place", PLACES.values(), ids=PLACES)
@pytest.mark.parametrize("name", OUTLINES)
def test_an_outline_is_read_as_it_is_drawn_wherever_it_lies(doc, stock, name, place):
    parts, types, area = OUTLINES[name]
    match = laid_on(doc, stock, OutlineOf=wire(doc, parts[::-1], place))
    assert match.Message == ""
    top = values.top(match)
    assert {type(segment) for segment in top.edge} == types
    near = 1e-9 if area and name != "rational spline" else 1e-6
    assert top.area == pytest.approx(area or shoelace(parts), rel=near)
    assert match.Shape.Volume == pytest.approx(top.area * 0.5, rel=1e-9)
    there = match.Shape.copy()  # laid back into the plane it was drawn in
    there.Placement = place.inverse().multiply(there.Placement)
    edges = Part.Compound([part.toShape() for part in parts])
    box, drawn = there.optimalBoundingBox(False), edges.optimalBoundingBox(False)
    for side in ("XMin", "XMax", "YMin", "YMax"):
        assert getattr(box, side) == pytest.approx(getattr(drawn, side), abs=2e-3), side
    assert (box.ZMin, box.ZMax) == pytest.approx((0.0, 0.5), abs=1e-3)


def test_a_sketch_is_followed_when_it_changes(doc, stock):
    sketch = doc.addObject("Sketcher::SketchObject", "Sketch")
    for part in OBLONG:
        sketch.addGeometry(part)
    match = laid_on(doc, stock, OutlineOf=sketch)
    assert match.Shape.Volume == pytest.approx(160000.0, rel=1e-9)
    sketch.addGeometry(hole(300, 200, 40))
    doc.recompute()
    assert match.Message == ""
    assert match.Shape.Volume == pytest.approx(160000.0 - 800.0 * math.pi, rel=1e-9)
    sketch.Placement.Base = Vector(0.0, 0.0, 55.0)
    doc.recompute()
    assert match.Shape.BoundBox.ZMin == pytest.approx(55.0)


def test_its_centre_is_the_middle_of_the_edge_or_the_origin(doc, stock):
    feature = wire(doc, [*OBLONG, hole(200, 100, 50)])
    match = laid_on(doc, stock, OutlineOf=feature)
    assert tuple(match.Placement.Base) == pytest.approx((400.0, 200.0, 0.0), abs=1e-6)
    assert values.top(match).region.extent(0.0) == pytest.approx((-400.0, 400.0), abs=1e-6)
    match.OutlineCentre = "origin"
    doc.recompute()
    assert match.Placement.isIdentity()
    assert values.top(match).region.extent(0.0) == pytest.approx((0.0, 800.0), abs=1e-9)
    assert match.Shape.BoundBox.XMax == pytest.approx(800.0)


def test_it_lies_where_it_is_put_if_it_is_not_to_follow(doc, stock):
    match = laid_on(doc, stock, OutlineOf=wire(doc, OBLONG), OnOutline=False)
    match.Placement.Base = Vector(1.0, 2.0, 3.0)
    doc.recompute()
    assert tuple(match.Placement.Base) == (1.0, 2.0, 3.0)


@pytest.mark.parametrize("number", range(1, 7))
def test_a_face_of_a_solid_is_laid_on_its_outside(doc, stock, number):
    box = doc.addObject("Part::Box", "Box")
    box.Length, box.Width, box.Height = 800.0, 500.0, 700.0
    doc.recompute()
    match = laid_on(doc, stock, OutlineOf=(box, [f"Face{number}"]))
    assert match.Message == ""
    face = box.Shape.Faces[number - 1]
    assert match.Shape.Volume == pytest.approx(face.Area * 0.5, rel=1e-9)
    assert match.Shape.common(box.Shape).Volume < 1e-6
    assert match.Shape.distToShape(face)[0] < 1e-9
    grown = box.Shape.BoundBox
    grown.add(match.Shape.BoundBox)
    assert grown.XLength + grown.YLength + grown.ZLength == pytest.approx(2000.5)


BROKEN = {
    "open": (OBLONG[:3], "open by 400 mm near"),
    "crossing": (run((0, 0), (800, 400), (800, 0), (0, 400), (0, 0)), "crosses or touches itself"),
    "two": ([*OBLONG, hole(1500, 0, 90)], "two outlines"),
    "opening over the edge": ([*OBLONG, hole(800, 200, 90)], "opening near"),
    "bent": ([*OBLONG[:3], Part.LineSegment(Vector(0, 400, 0), Vector(0, 200, 50)),
              Part.LineSegment(Vector(0, 200, 50), Vector())], "one plane"),
    "line": (OBLONG[:1], "straight line"),
    "tiny": ([hole(0, 0, 0.3)], "at least 1 mm2"),
}  # fmt: skip


@pytest.mark.parametrize("name", BROKEN)
def test_what_is_no_outline_is_refused_with_a_sentence(doc, stock, name):
    parts, word = BROKEN[name]
    match = laid_on(doc, stock, OutlineOf=wire(doc, OBLONG))
    before = match.Revision, match.Shape.Volume
    match.OutlineOf = wire(doc, parts)
    doc.recompute()
    refused(match, word, before)


def test_a_link_to_nothing_and_to_too_much_is_refused_with_a_sentence(doc, stock):
    box = doc.addObject("Part::Box", "Box")
    doc.recompute()
    match = laid_on(doc, stock, OutlineOf=wire(doc, OBLONG))
    before = match.Revision, match.Shape.Volume
    empty = doc.addObject("Sketcher::SketchObject", "Empty")
    for link, word in (
        (None, "choose a sketch"), (empty, "has no lines"), (box, "6 faces"), (stock, "no lines"),
        ((box, ["Face1", "Face2"]), "one face"), ((box, ["Face9"]), "no Face9"),
    ):  # fmt: skip
        match.OutlineOf = link
        doc.recompute()
        refused(match, word, before)


def test_a_top_is_not_laid_on_itself(doc, stock):
    match = laid_on(doc, stock, OutlineOf=wire(doc, OBLONG))
    before = match.Revision, match.Shape.Volume
    on_it = doc.addObject("Part::Compound", "OnIt")
    on_it.Links = [match]
    doc.recompute()
    for source in (match, on_it):
        match.OutlineOf = (source, ["Face1"])
        doc.recompute()
        refused(match, "follow itself", before)


def refused(match, word, before):
    assert word in match.Message, match.Message
    assert match.Message.endswith(".") and "\n" not in match.Message
    assert "Error" not in match.Message and len(match.Message) < 300
    assert (match.Revision, match.Shape.Volume) == before

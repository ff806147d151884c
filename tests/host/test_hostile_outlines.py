# SPDX-License-Identifier: LGPL-2.1-or-later
"""Sketches, wires and faces that are no outline, or hardly one: laid, or refused in one sentence,
wherever the product takes them."""

import math
import time
from types import SimpleNamespace

import FreeCAD
import Part
import pytest
import Sketcher
from FreeCAD import Vector

from veneerwb.host.objects import add_bundle, add_facing, add_match, add_run, add_stock, set_faces

Z = Vector(0, 0, 1)


def polygon(*points, closed=True):
    corners = [Vector(*point) for point in points]
    return Part.makePolygon(corners + corners[:1] if closed else corners)


def square(size, at=0.0):
    return polygon((at, at), (at + size, at), (at + size, at + size), (at, at + size))


def spline(*points, **how):
    curve = Part.BSplineCurve()
    curve.interpolate([Vector(*point) for point in points], **how)
    return Part.Wire(curve.toShape())


def rational():
    curve = Part.Circle(Vector(), Z, 150).toBSpline()
    return Part.Wire(curve.toShape())


def many(count):
    turns = [2 * math.pi * k / count for k in range(count)]
    return polygon(*[(200 * math.cos(t), 200 * math.sin(t)) for t in turns])


def arc(curve, first, last):
    edge = curve.toShape(first, last)
    ends = [vertex.Point for vertex in edge.Vertexes]
    return Part.Wire([edge, Part.makeLine(ends[1], ends[0])])


SHAPES = {
    "nothing": Part.Shape,
    "an empty compound": lambda: Part.Compound([]),
    "a point": lambda: Part.Vertex(1, 2, 3),
    "a line": lambda: Part.makeLine(Vector(), Vector(100, 0, 0)),
    "a line without ends": lambda: Part.Line(Vector(), Vector(1, 0, 0)).toShape(),
    "a plane without ends": lambda: Part.Plane().toShape(),
    "an open line": lambda: polygon((0, 0), (300, 0), (300, 300), closed=False),
    "an almost closed line": lambda: polygon(
        (0, 0), (300, 0), (300, 300), (0, 1e-5), closed=False),
    "a crossing": lambda: polygon((0, 0), (300, 300), (300, 0), (0, 300)),
    "there and back": lambda: polygon((0, 0), (300, 0), (300, 300), (300, 0)),
    "flat": lambda: polygon((0, 0), (300, 0), (600, 0)),
    "a sliver": lambda: polygon((0, 0), (300, 0), (300, 1e-5), (0, 1e-5)),
    "a speck": lambda: square(1e-5),
    "a small square": lambda: square(0.01),
    "a field": lambda: square(1e9),
    "a country": lambda: square(1e12),
    "far away": lambda: square(300, 1e9),
    "a dot": lambda: Part.Wire(Part.makeCircle(1e-5)),
    "a great circle": lambda: Part.Wire(Part.makeCircle(1e8)),
    "a slim ellipse": lambda: Part.Wire(Part.Ellipse(Vector(), 300, 1e-4).toShape()),
    "a circle and its rest": lambda: Part.Compound(
        [Part.makeCircle(100, Vector(), Z, 0, 1e-4), Part.makeCircle(100, Vector(), Z, 1e-4, 360)]),
    "a spline": lambda: spline((0, 0), (300, 0), (300, 300), (0, 300), PeriodicFlag=True),
    "an open spline": lambda: spline((0, 0), (300, 0), (300, 300), (0, 300)),
    "a spline that crosses itself": lambda: spline(
        (0, 0), (300, 300), (300, 0), (0, 300), PeriodicFlag=True),
    "a wild spline": lambda: spline(
        *[(300 * math.cos(7 * k), 300 * math.sin(5 * k)) for k in range(40)], PeriodicFlag=True),
    "a rational spline": rational,
    "a parabola": lambda: arc(Part.Parabola(Vector(0, 10), Vector(), Z), -200, 200),
    "a hyperbola": lambda: arc(Part.Hyperbola(Vector(), 50, 60), -2, 2),
    "two beside each other": lambda: Part.Compound([square(100), square(100, 300)]),
    "one in the other twice": lambda: Part.Compound([square(400), square(200, 50), square(50, 90)]),
    "an opening that crosses": lambda: Part.Compound([square(300), square(300, 150)]),
    "an opening that touches": lambda: Part.Compound([square(300), square(100)]),
    "the same twice": lambda: Part.Compound([square(300), square(300)]),
    "bent": lambda: polygon((0, 0, 0), (300, 0, 0), (300, 300, 50), (0, 300, 0)),
    "upright": lambda: polygon((0, 0, 0), (300, 0, 0), (300, 0, 300), (0, 0, 300)),
    "a face": lambda: Part.Face(square(300)),
    "a face with many holes": lambda: Part.Face(
        [square(300), *(square(4, 10 + 11 * k).reversed() for k in range(25))]),
    "a round face": lambda: Part.makeCylinder(100, 100).Faces[0],
    "a ball": lambda: Part.makeSphere(100),
    "a box": lambda: Part.makeBox(100, 100, 100),
    "hundreds of corners": lambda: many(400),
}  # fmt: skip
STILL_LAID = {"a spline", "a rational spline", "a face", "a parabola", "a hyperbola"}
TIME = 10.0


@pytest.fixture(scope="module")
def world(sawn):
    """A document with what may follow an outline: a match of a stock, a bundle with a match, a leaf
    and a run on faces."""
    doc = FreeCAD.newDocument("World")
    stock, bundle = add_stock(doc, 900.0, 1200.0, 64, 0.5), add_bundle(doc, sawn)
    yield SimpleNamespace(
        doc=doc, bundle=bundle, drawn=doc.addObject("Part::Feature", "Drawn"),
        top=add_match(doc, stock, Ways=4), of_bundle=add_match(doc, bundle, Ways=4, Diameter=150.0),
        facing=add_facing(doc, bundle.Leaves[0]), run=add_run(doc, stock),
    )
    if "World" in FreeCAD.listDocuments():  # some test may have closed all
        FreeCAD.closeDocument(doc.Name)


@pytest.fixture
def said(capfd):
    """Recomputes, and tells what an object says: nothing, or one foreseen sentence."""

    def said(*objects):
        capfd.readouterr()
        began = time.monotonic()
        objects[0].Document.recompute()
        assert time.monotonic() - began < TIME
        shown = "".join(capfd.readouterr())
        assert "Traceback" not in shown, shown[-1500:]
        for obj in objects:
            text = obj.Message
            assert "\n" not in text and "could not be recomputed" not in text, text
            assert text == "" or text.endswith("."), text
        return objects[0].Message

    return said


@pytest.mark.parametrize("what", SHAPES)
def test_anything_as_a_top(what, world, said):
    world.drawn.Shape, match = SHAPES[what](), world.top
    match.Kind, match.Top, match.OutlineOf = "Radial", "Outline", (world.drawn, [""])
    text = said(match)
    if what in STILL_LAID:
        assert text == ""
    if not text:
        assert match.Shape.isValid() and len(match.Shape.Solids) >= 4
    match.Kind = "Side by side"
    said(match)
    match.Kind, match.Top, match.OutlineOf = "Radial", "Round", None
    assert said(match) == ""


@pytest.mark.parametrize("what", SHAPES)
def test_anything_drawn_on_a_bundle(what, world, said):
    world.drawn.Shape, bundle = SHAPES[what](), world.bundle
    for name, value in (("UsableShape", world.drawn), ("FaultShapes", [world.drawn])):
        setattr(bundle, name, value)
        said(bundle, world.of_bundle)
        setattr(bundle, name, None if name == "UsableShape" else [])
    assert said(bundle, world.of_bundle) == ""


@pytest.mark.parametrize("what", SHAPES)
def test_anything_to_lie_on(what, world, said):
    world.drawn.Shape = SHAPES[what]()
    for name in ("Face1", "Edge1", "", "Face99", "../x"):
        try:
            set_faces(world.facing, [(world.drawn, name)])
            set_faces(world.run, [(world.drawn, name)])
        except (ValueError, TypeError, IndexError):  # the host itself takes no such name
            continue
        said(world.facing, world.run)


SKETCHES = {
    "nothing": lambda sketch: None,
    "points": lambda sketch: sketch.addGeometry(Part.Point(Vector(1, 1, 0)), False),
    "lines to help": lambda sketch: outlined(sketch, True),
    "an outline": lambda sketch: outlined(sketch, False),
    "an outline and lines to help": lambda sketch: (
        outlined(sketch, False), outlined(sketch, True, 900)),
    "an outline and a point": lambda sketch: (
        outlined(sketch, False), sketch.addGeometry(Part.Point(Vector(50, 50, 0)), False)),
    "an outline that branches": lambda sketch: (
        outlined(sketch, False),
        sketch.addGeometry(Part.LineSegment(Vector(), Vector(300, 300, 0)), False)),
    "constraints against each other": lambda sketch: (
        outlined(sketch, False),
        [sketch.addConstraint(Sketcher.Constraint("DistanceX", 0, 1, 0, 2, wide))
         for wide in (100.0, 200.0)]),
}  # fmt: skip


def outlined(sketch, helping, size=300):
    corners = [Vector(*one, 0) for one in ((0, 0), (size, 0), (size, size), (0, size))]
    for a, b in zip(corners, corners[1:] + corners[:1]):
        sketch.addGeometry(Part.LineSegment(a, b), helping)


@pytest.mark.parametrize("what", SKETCHES)
def test_sketches_as_tops_and_faults(what, doc, stock, sawn, said):
    sketch = doc.addObject("Sketcher::SketchObject", "Drawn")
    SKETCHES[what](sketch)
    match = add_match(doc, stock, Ways=4, Top="Outline", OutlineOf=(sketch, [""]))
    bundle = add_bundle(doc, sawn)
    bundle.FaultShapes = [sketch]
    text = said(match, bundle)
    sound = {"an outline", "an outline and lines to help", "an outline and a point"}
    assert (text == "") == (what in sound) or what.startswith("constraints"), text
    if what in sound:
        assert match.Shape.BoundBox.XLength == pytest.approx(300.0)


def test_what_was_drawn_and_is_deleted_is_told(doc, stock, said):
    drawn = doc.addObject("Part::Feature", "Drawn")
    drawn.Shape = Part.Face(square(300))
    match = add_match(doc, stock, Ways=4, Top="Outline", OutlineOf=(drawn, ["Face1"]))
    assert said(match) == ""
    doc.removeObject(drawn.Name)
    match.touch()
    assert said(match) != "" and FreeCAD.ActiveDocument is not None

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Every match on every top as solids, measured on the shape itself; changed in place, saved,
undone."""

import math

import FreeCAD
import Part
import pytest
from FreeCAD import Vector

from veneerwb.core import VeneerError
from veneerwb.host import kinds, solids, spots, values
from veneerwb.host.objects import add_drawing, add_match, layout

THICK = 0.5
SMALL = {"InnerDiameter": 300.0, "StripWidth": 400.0}


def drawn(doc, *parts):
    sketch = doc.addObject("Sketcher::SketchObject", "Sketch")
    for part in parts:
        sketch.addGeometry(part)
    return sketch


def run(*corners):
    points = [Vector(x, y, 0.0) for x, y in corners]
    return [Part.LineSegment(a, b) for a, b in zip(points, points[1:])]


@pytest.fixture
def sketch(doc):
    """1000 by 600 mm with an opening of 120 mm, away from its middle."""
    sides = run((0, 0), (1000, 0), (1000, 600), (0, 600), (0, 0))
    return drawn(doc, *sides, Part.Circle(Vector(720.0, 420.0, 0.0), Vector(0, 0, 1), 60.0))


@pytest.fixture
def match(doc, stock, sketch):
    return add_match(doc, stock, OutlineOf=sketch, Ways=4, InnerWays=4, **SMALL)


def ellipse(a, b):
    return math.pi * a * b / 4.0


def boat(length, width, ends):
    """Two segments of a circle and the rectangle between them (plane geometry)."""
    rise = (width - ends) / 2.0
    radius = (length**2 / 4.0 + rise**2) / (2.0 * rise)
    half = math.asin(length / 2.0 / radius)
    return length * ends + radius**2 * (2.0 * half - math.sin(2.0 * half))


AREAS = {
    "Round": ellipse(1200.0, 1200.0),
    "Polygon": 8 * 600.0**2 * math.tan(math.pi / 8),
    "Oval": ellipse(1800.0, 900.0),
    "Square": 1800.0**2,
    "Rectangle": 1800.0 * 900.0,
    "Racetrack": 900.0 * 900.0 + ellipse(900.0, 900.0),
    "Boat": boat(1800.0, 900.0, 600.0),
    "Outline": 1000.0 * 600.0 - ellipse(120.0, 120.0),
}


@pytest.mark.parametrize("kind", kinds.KINDS)
def test_every_match_tiles_every_top_with_sound_solids(doc, match, kind):
    match.Kind = kind
    for top, area in AREAS.items():
        match.Top = top
        doc.recompute()
        assert match.Message == "", (kind, top)
        pieces = match.Shape.Solids
        assert len(pieces) == len(match.LeafOrder) > 1
        assert all(piece.isValid() and piece.isClosed() for piece in pieces)
        shown = math.fsum(piece.Faces[solids.SHOW_FACE].Area for piece in pieces)
        assert shown == pytest.approx(area, rel=1e-9), (kind, top)
        volume = math.fsum(piece.Volume for piece in pieces)
        assert volume == pytest.approx(area * THICK, rel=1e-9)
    for a, b in list(zip(pieces, pieces[1:]))[:3]:
        assert a.common(b).Volume < 1e-6


def test_the_tops_and_kinds_are_those_of_the_choice(match):
    assert match.getEnumerationsOfProperty("Kind") == list(kinds.KINDS)
    assert match.getEnumerationsOfProperty("Top") == list(AREAS)
    assert (match.Kind, match.Top) == ("Radial", "Round")


def test_faces_of_any_piece_come_in_the_documented_order(doc, match):
    match.Kind, match.Top, match.StripWidth, match.Count = "Side by side", "Outline", 0.0, 2
    match.OnOutline = False
    doc.recompute()
    assert any(piece.holes for piece in layout(match).pieces)
    for piece, solid in zip(layout(match).pieces, match.Shape.Solids):
        loops = (piece.edge, *piece.holes)
        sides = [segment for loop in loops for segment in loop]
        assert len(solid.Faces) == len(sides) + 2
        for face, segment in zip(solid.Faces, piece.edge):
            middle = face.CenterOfMass
            expected = [(a + b) / 2.0 for a, b in zip(segment.start, segment.end)]
            assert (middle.x, middle.y) == pytest.approx(expected, abs=1e-6)
        for place, z in ((solids.SHOW_FACE, THICK), (solids.BACK, 0.0)):
            assert solid.Faces[place].CenterOfMass.z == pytest.approx(z, abs=1e-12)
        assert solid.Faces[solids.SHOW_FACE].Area == pytest.approx(piece.area, rel=1e-9)


def test_edges_stay_true_curves(doc, match):
    match.Kind, match.Top = "Box", "Oval"
    doc.recompute()
    curves = [edge.Curve for edge in match.Shape.Edges if isinstance(edge.Curve, Part.Ellipse)]
    assert len(curves) >= 4
    assert {(round(c.MajorRadius, 9), round(c.MinorRadius, 9)) for c in curves} == {(900.0, 450.0)}


def test_another_kind_keeps_bundle_place_and_top_and_takes_back_what_it_cannot_have(doc, match):
    place = {"AutoPlacement": False, "TipX": 410.0, "TipY": 333.0, "Axis": 80.0}
    for name, value in {**place, "Top": "Boat", "Kind": "Side by side"}.items():
        setattr(match, name, value)
    match.Turn, match.Turned, match.Order = "reverse slip", "odd", "5, 2, 3, 4, 1"
    doc.recompute()
    assert match.Message == "" and match.LeafOrder == [5, 2, 3, 4, 1]
    bundle = match.Bundle
    for kind in reversed(kinds.KINDS):
        match.Kind = kind
        doc.recompute()
        assert match.Message == ""
        assert (match.Bundle, match.Top, match.Length.Value) == (bundle, "Boat", 1800.0)
        found = values.place_of(layout(match).recipe)
        assert (found.x, found.y, found.angle) == (410.0, 333.0, 80.0)
        assert (match.Turned, match.Order) == ("auto", "sequence")
        assert match.Turn == "book"


def test_another_kind_takes_back_numbers_that_it_cannot_have(doc, match):
    match.Kind, match.Top, match.StripWidth = "Side by side", "Square", 0.0
    match.Count, match.Turn, match.Ways = 5, "random", 7
    for kind, turn in (("Radial", "slip"), ("End match", "slip"), ("Box", "slip")):
        match.Kind = kind
        doc.recompute()
        assert (match.Message, match.Turn, match.Ways) == ("", turn, 7)
    assert match.Count == 0


def test_the_same_point_of_the_bundle_is_what_every_match_is_cut_at(doc, match):
    """The wedge's tip, the foot of a strip, the middle of a box: each lies on it."""
    match.AutoPlacement, match.TipX, match.TipY, match.Top = False, 400.0, 500.0, "Square"
    for kind, on_top in (("Radial", (0.0, 0.0)), ("Diamond", (0.0, 0.0)), ("Box", (0.0, 0.0))):
        match.Kind = kind
        doc.recompute()
        for piece in layout(match).pieces:
            assert piece.onto_bundle.apply(on_top) == pytest.approx((400.0, 500.0), abs=1e-6)


def test_undo_brings_back_another_kind_whole(doc, match):
    match.Kind, match.Turn = "Side by side", "random"
    doc.recompute()
    before = (match.Kind, match.Turn, match.Revision, match.Shape.Volume)
    doc.openTransaction("Change")
    match.Kind, match.Top = "Herringbone", "Oval"
    doc.recompute()
    doc.commitTransaction()
    after = (match.Kind, match.Turn, match.Revision, match.Shape.Volume)
    assert after[:2] == ("Herringbone", "book")
    doc.undo()
    assert (match.Kind, match.Turn, match.Revision, match.Shape.Volume) == before
    doc.redo()
    assert (match.Kind, match.Turn, match.Revision, match.Shape.Volume) == after


def test_saved_and_reopened_every_kind_is_the_same_and_alive(doc, stock, sketch, tmp_path):
    laid = {}
    for kind in kinds.KINDS:
        top = "Outline" if kind in ("Box", "Side by side") else "Rectangle"
        one = add_match(doc, stock, Kind=kind, Top=top, OutlineOf=sketch, Ways=4, **SMALL)
        laid[one.Name] = one
    doc.recompute()
    before = {name: (one.Kind, one.Revision, one.ShapeMark) for name, one in laid.items()}
    doc.saveAs(str(tmp_path / "kinds.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "kinds.FCStd"))
    for obj in again.Objects:
        obj.touch()
    again.recompute()
    now = {name: again.getObject(name) for name in before}
    assert {n: (one.Kind, one.Revision, one.ShapeMark) for n, one in now.items()} == before
    assert [one.Message for one in now.values()] == [""] * len(now)
    assert [one.ChangedPieces for one in now.values()] == [[]] * len(now)


def shown(obj):
    return {
        name for name in obj.PropertiesList if "Hidden" not in obj.getEditorMode(name)
    }  # fmt: skip


def test_the_property_editor_shows_what_the_kind_and_the_top_need(match):
    for kind, needed in kinds.KINDS.items():
        match.Kind = kind
        for top, sizes in kinds.TOPS.items():
            match.Top = top
            every = {n for names in (*kinds.KINDS.values(), *kinds.TOPS.values()) for n in names}
            assert shown(match) & every == {*needed, *sizes}
            assert {"Kind", "Top", "Bundle", "TipX", "Oversize", "Findings"} <= shown(match)


BAD = [
    ("Side by side", {"Count": 3, "Face": "centre balance", "StripWidth": 0.0}, "even"),
    ("Side by side", {"Count": 4, "StripWidth": 100.0}, "not both"),
    ("Side by side", {"StripWidth": 1.0}, "slivers"),
    ("Side by side", {"Face": "running", "StripWidth": 149.5}, "sliver"),
    ("End match", {"StripWidth": 0.0, "Count": 5}, "take 4 or 6"),
    ("Two rings", {"InnerDiameter": 5000.0}, "or less"),
    ("Two rings", {"InnerWays": 5}, "even"),
    ("Radial", {"DiscDiameter": 5000.0}, "largest"),
    ("Radial", {"Strips": 12, "Ways": 8}, "leaves"),
    ("Herringbone", {"StripWidth": 5.0}, "slivers"),
    ("Herringbone", {"Slant": 89.0}, "slant"),
    ("Box", {"First": 63}, "missing"),
    ("Box", {"Order": "1, 2, 3"}, "4"),
    ("Diamond", {"Turn": "random"}, "book"),
]


@pytest.mark.parametrize(("kind", "bad", "word"), BAD)
def test_what_cannot_be_laid_is_refused_with_a_sentence(doc, match, kind, bad, word):
    match.Kind = kind
    doc.recompute()
    before = match.Revision, match.Shape.Volume
    for name, value in bad.items():
        setattr(match, name, value)
    doc.recompute()
    assert word in match.Message and match.Message.endswith(".") and "\n" not in match.Message
    assert "Error" not in match.Message and len(match.Message) < 300
    assert (match.Revision, match.Shape.Volume) == before


def test_spots_of_other_matches_are_refused_with_a_sentence(doc, match):
    doc.recompute()
    spot = spots.keep(match, layout(match), "One")
    match.Kind = "Box"
    doc.recompute()
    with pytest.raises(VeneerError, match="radial matches, and Match is another") as caught:
        spots.laid(spot)
    assert str(caught.value).endswith(".")
    match.Kind, match.Top = "Radial", "Oval"
    with pytest.raises(VeneerError, match="plain round"):
        spots.laid(spot)


def test_a_drawing_follows_any_kind_of_match(doc, match):
    drawing = add_drawing(doc, match)
    for kind, top in (("Radial", "Round"), ("Box", "Oval"), ("Side by side", "Outline")):
        match.Kind, match.Top = kind, top
        doc.recompute()
        assert (drawing.Message, drawing.Revision) == ("", match.Revision)
        assert bool(drawing.WedgeScale) == bool(drawing.SetOutBase.Value) == (kind == "Radial")


def test_two_rings_are_told_of_one_list_for_both(doc, match):
    match.Kind, match.Strips = "Two rings", 3
    match.Order = "1, 2, 3, 4"
    doc.recompute()
    assert "Two rings of 4 and 12 leaves need a list of 16," in match.Message
    match.Order = ", ".join(map(str, range(20, 4, -1)))
    doc.recompute()
    assert (match.Message, list(match.LeafOrder)) == ("", list(range(20, 4, -1)))

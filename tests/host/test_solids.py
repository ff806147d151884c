# SPDX-License-Identifier: LGPL-2.1-or-later
"""The solids of a match, measured on the shape itself and never by the core."""

import math

import Part
import pytest

from veneerwb.core import Stock, Top, radial
from veneerwb.host import solids
from veneerwb.host.objects import add_match

TOPS = {
    "round": {"Top": "Round", "Diameter": 1100.0},
    "octagon": {"Top": "Polygon", "Sides": 8, "AcrossFlats": 1000.0},
    "triangle": {"Top": "Polygon", "Sides": 3, "AcrossFlats": 500.0},
    "pentagon": {"Top": "Polygon", "Sides": 5, "AcrossFlats": 700.0},
}
RINGS = [(ways, "book") for ways in (4, 6, 8, 12, 16, 24, 32, 64)] + [
    (3, "slip"),
    (5, "slip"),
    (7, "slip"),
]


def exact_area(top):
    """pi R^2 of a circle, n a^2 tan(180/n) of a regular polygon (plane geometry)."""
    if top["Top"] == "Round":
        return math.pi * (top["Diameter"] / 2.0) ** 2
    n, apothem = top["Sides"], top["AcrossFlats"] / 2.0
    return n * apothem**2 * math.tan(math.pi / n)


def seam_angles(solid):
    """Directions in degrees of the two long edges of a show face that end at the axis of the
    ring."""
    found = []
    for edge in solid.Faces[solids.SHOW_FACE].Edges:
        ends = [vertex.Point for vertex in edge.Vertexes]
        for tip, rim in (ends, ends[::-1]):
            if math.hypot(tip.x, tip.y) < 1e-9:
                found.append(math.degrees(math.atan2(rim.y, rim.x)))
    assert len(found) == 2
    return found


def wedge_angle(solid):
    a, b = seam_angles(solid)
    return abs((b - a + 180.0) % 360.0 - 180.0)


@pytest.mark.parametrize("top", TOPS.values(), ids=TOPS)
@pytest.mark.parametrize(("ways", "turn"), RINGS)
def test_solids_are_sound_and_make_up_the_top_exactly(doc, stock, ways, turn, top):
    match = add_match(doc, stock, Ways=ways, Turn=turn, **top)
    doc.recompute()
    assert match.Message == ""
    pieces = match.Shape.Solids
    assert len(pieces) == ways
    assert all(piece.isValid() and piece.isClosed() for piece in pieces)
    angles = [wedge_angle(piece) for piece in pieces]
    assert angles == pytest.approx([360.0 / ways] * ways, abs=1e-9)
    assert math.fsum(angles) == pytest.approx(360.0, abs=1e-9)
    area, thickness = exact_area(top), 0.5
    shown = math.fsum(piece.Faces[solids.SHOW_FACE].Area for piece in pieces)
    assert shown == pytest.approx(area, rel=1e-9)
    assert math.fsum(piece.Volume for piece in pieces) == pytest.approx(area * thickness, rel=1e-9)
    neighbours = list(zip(pieces, [*pieces[1:], pieces[0]]))
    for a, b in neighbours[:: max(1, ways // 8)]:
        assert a.common(b).Volume < 1e-6


@pytest.mark.parametrize("top", TOPS.values(), ids=TOPS)
def test_pieces_follow_each_other_round_the_ring_and_none_overlap(doc, stock, top):
    match = add_match(doc, stock, Ways=6, Start=17.0, **top)
    doc.recompute()
    pieces = match.Shape.Solids
    for k, piece in enumerate(pieces):
        first, last = (17.0 + (2 * k + side) * 30.0 for side in (-1, 1))
        seams = sorted(angle % 360.0 for angle in seam_angles(piece))
        assert seams == pytest.approx(sorted((first % 360.0, last % 360.0)), abs=1e-9)
    for k, a in enumerate(pieces):
        for b in pieces[k + 1 :]:
            assert a.common(b).Volume < 1e-6


@pytest.mark.parametrize("ways", [4, 5, 12])
def test_faces_come_in_the_documented_order(ways):
    laid = radial(Stock(900.0, 1200.0, 12, 0.5), Top.polygon(8, 1000.0), ways, "slip")
    for piece in laid.pieces:
        faces = solids.wedge_solid(piece, 0.5).Faces
        assert len(faces) == len(piece.edge) + 2
        for face, segment in zip(faces, piece.edge):
            middle = face.CenterOfMass
            expected = [(a + b) / 2.0 for a, b in zip(segment.start, segment.end)]
            assert (middle.x, middle.y) == pytest.approx(expected, abs=1e-6)
        assert piece.edge[solids.FIRST_SEAM].role == "seam"
        assert solids.LAST_SEAM == -3 and piece.edge[-1].role == "seam"
        assert faces[solids.SHOW_FACE].CenterOfMass.z == pytest.approx(0.5, abs=1e-12)
        assert faces[solids.BACK].CenterOfMass.z == pytest.approx(0.0, abs=1e-12)
        assert faces[solids.SHOW_FACE].normalAt(0, 0).z == pytest.approx(1.0)


def test_rim_of_a_round_top_is_a_true_arc():
    laid = radial(Stock(900.0, 1200.0, 12, 0.5), Top.round(1000.0), 12)
    rim = solids.wedge_solid(laid.pieces[4], 0.5).Faces[1]
    assert isinstance(rim.Surface, Part.Cylinder)
    assert rim.Surface.Radius == pytest.approx(500.0, abs=1e-9)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The leaves' pictures in the 3-D view against `picture`."""

import time
from pathlib import Path

import FreeCAD
import FreeCADGui
import numpy as np
import Part
import pytest
from PIL import Image
from PySide import QtGui

from veneerwb.core import Disturbance, sawn_bundle
from veneerwb.gui import scene
from veneerwb.gui import view as views
from veneerwb.gui.plain import BARE
from veneerwb.host.objects import add_bundle, add_match, layout
from veneerwb.paint import picture

SIZE = 500
PX_PER_MM = 1.0


@pytest.fixture
def doc():
    views.register()
    made = FreeCAD.newDocument("View")
    yield made
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)


@pytest.fixture(scope="module")
def leaves():
    return sawn_bundle(
        leaves=12,
        width=260,
        length=460,
        thickness=0.6,
        mm_per_px=0.8,
        figure="burl",
        seed=7,
        disturb=Disturbance(shift=5.0, turn=1.0, exposure=0.3),
        backs=[1, 2, 5, 8],
        knots=0,
    )


def seen(doc, path: Path) -> np.ndarray:
    """The view from the top, rows x columns x 3, SIZE pixels for SIZE / PX_PER_MM mm."""
    view = FreeCADGui.getDocument(doc.Name).ActiveView
    view.viewTop()
    camera = view.getCameraNode()
    camera.height = SIZE / PX_PER_MM
    camera.position = (0.0, 0.0, 500.0)
    camera.nearDistance, camera.farDistance = 1.0, 1000.0
    QtGui.QApplication.processEvents()
    view.saveImage(str(path), SIZE, SIZE, "White")
    return np.asarray(Image.open(path).convert("RGB")).astype(float)


def expected(match) -> tuple[np.ndarray, np.ndarray]:
    """`picture` in the same frame, and where it is solid."""
    small = picture(layout(match), px_per_mm=PX_PER_MM)
    frame = np.zeros((SIZE, SIZE, 4))
    top, left = (SIZE - small.shape[0]) // 2, (SIZE - small.shape[1]) // 2
    frame[top : top + small.shape[0], left : left + small.shape[1]] = small
    return frame[..., :3], frame[..., 3] == 255


def difference(doc, match, path: Path) -> float:
    """The mean difference in levels of 255, waited for."""
    colours, inside = expected(match)
    until, found = time.monotonic() + 20.0, 255.0
    while found > 8.0 and time.monotonic() < until:
        found = float(np.abs(seen(doc, path) - colours)[inside].mean())
    return found


RINGS = [
    {"Ways": 12, "Order": "spread"},
    {"Ways": 8, "Turned": "even", "Top": "Polygon", "Sides": 6, "AcrossFlats": 380.0},
    {"Ways": 7, "Turn": "slip", "Turned": "all", "Start": 20.0},
]


@pytest.mark.parametrize("options", RINGS, ids=str)
def test_the_view_from_the_top_agrees_with_the_picture(doc, leaves, tmp_path, options):
    match = add_match(doc, add_bundle(doc, leaves), Diameter=400.0, **options)
    doc.recompute()
    assert match.Message == "" and match.ViewObject.DisplayMode == views.PICTURES
    match.ViewObject.Seams = match.ViewObject.Numbers = False
    found = difference(doc, match, tmp_path / "top.png")
    print(f"mean difference {found:.2f} levels of 255")
    assert found < 8.0


def test_hollow_and_pierced_pieces_are_drawn_as_the_picture_has_them(doc, leaves, tmp_path):
    corners = [(-200, -150), (200, -150), (200, 150), (60, 150), (60, 20), (-60, 20), (-60, 150)]
    face = Part.Face(Part.makePolygon([FreeCAD.Vector(x, y) for x, y in (*corners, (-200, 150),
                                                                       corners[0])]))
    hole = Part.Face(Part.Wire(Part.makeCircle(45.0, FreeCAD.Vector(60.0, -70.0))))
    notched = doc.addObject("Part::Feature", "Notched")
    notched.Shape = face.cut(hole).Faces[0]
    notched.ViewObject.Visibility = False
    match = add_match(
        doc, add_bundle(doc, leaves), Kind="Side by side", Top="Outline", OutlineOf=notched,
        OutlineCentre="origin", StripWidth=220.0,
    )  # fmt: skip
    doc.recompute()
    assert match.Message == ""
    match.ViewObject.Seams = match.ViewObject.Numbers = False
    path = tmp_path / "pierced.png"
    assert difference(doc, match, path) < 8.0
    shown = seen(doc, path)
    for x, y in ((60, -70), (0, 100)):  # the opening, the notch
        assert shown[SIZE // 2 - y, SIZE // 2 + x].min() > 250
    match.Kind, match.Top, match.Ways, match.InnerWays = "Two rings", "Round", 6, 4
    match.Diameter, match.InnerDiameter = 400.0, 200.0
    doc.recompute()
    assert match.Message == ""
    assert difference(doc, match, path) < 8.0


def test_the_view_follows_a_change_and_survives_saving(doc, leaves, tmp_path):
    match = add_match(doc, add_bundle(doc, leaves), Diameter=400.0, Ways=12)
    doc.recompute()
    match.ViewObject.Seams = match.ViewObject.Numbers = False
    before = seen(doc, tmp_path / "before.png")
    match.Ways = 6
    doc.recompute()
    assert difference(doc, match, tmp_path / "after.png") < 8.0
    assert np.abs(seen(doc, tmp_path / "after.png") - before).mean() > 4.0
    doc.saveAs(str(tmp_path / "kept.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "kept.FCStd"))
    match = again.getObject("Match")
    assert match.ViewObject.DisplayMode == views.PICTURES and not match.ViewObject.Seams
    assert difference(again, match, tmp_path / "again.png") < 8.0


def test_seams_are_drawn_and_can_be_switched_off(doc, leaves, tmp_path):
    match = add_match(doc, add_bundle(doc, leaves), Diameter=400.0, Ways=4, Start=45.0)
    doc.recompute()
    match.ViewObject.Seams = match.ViewObject.Numbers = False
    assert difference(doc, match, tmp_path / "off.png") < 8.0
    off = seen(doc, tmp_path / "off.png")
    match.ViewObject.Seams = True
    on = seen(doc, tmp_path / "on.png")
    middle = SIZE // 2
    axis = slice(middle - 1, middle + 2)
    darker = (off - on)[axis, middle + 20 : middle + 180].mean(axis=2).max(axis=0)
    assert (darker > 25).mean() > 0.9
    assert np.abs(off - on)[middle - 60 : middle - 20, middle + 80 : middle + 160].max() < 12


@pytest.mark.parametrize("position", [1, 4, 8])
def test_a_piece_is_picked_by_its_show_face(doc, leaves, tmp_path, position):
    match = add_match(doc, add_bundle(doc, leaves), Diameter=400.0, Ways=8)
    doc.recompute()
    difference(doc, match, tmp_path / "seen.png")
    view = FreeCADGui.getDocument(doc.Name).ActiveView
    where = layout(match).pieces[position - 1].outline.centroid
    columns, rows = view.getSize()
    scale = min(columns, rows) * PX_PER_MM / SIZE
    info = view.getObjectInfo((int(columns / 2 + where.x * scale), int(rows / 2 + where.y * scale)))
    assert info["Object"] == match.Name
    face = match.Shape.getElement(info["Component"])
    assert face.CenterOfMass.z == pytest.approx(0.6)
    assert face.CenterOfMass.distanceToPoint(FreeCAD.Vector(where.x, where.y, 0.6)) < 0.1


def test_selected_pieces_are_outlined_and_let_go_again(doc, leaves, tmp_path):
    match = add_match(doc, add_bundle(doc, leaves), Diameter=400.0, Ways=8)
    doc.recompute()
    match.ViewObject.Seams = match.ViewObject.Numbers = False
    assert difference(doc, match, tmp_path / "plain.png") < 8.0

    def outlined() -> np.ndarray:
        red, green, blue = np.moveaxis(seen(doc, tmp_path / "marked.png"), -1, 0)
        return (green > red + 60) & (green > blue + 60)

    assert not outlined().any()
    # piece 1 points up: its show face is the last of the five of its solid
    FreeCADGui.Selection.addSelection(doc.Name, match.Name, "Face5")
    marked = outlined()
    middle = SIZE // 2
    assert marked[:middle].sum() > 300 and marked[middle + 20 :].sum() == 0
    FreeCADGui.Selection.addSelection(doc.Name, match.Name, "Face25")
    assert outlined()[middle + 20 :].sum() > 300
    FreeCADGui.Selection.clearSelection()
    assert not outlined().any()


def test_the_view_follows_undo_and_redo(doc, leaves, tmp_path):
    match = add_match(doc, add_bundle(doc, leaves), Diameter=400.0, Ways=8)
    doc.recompute()
    match.ViewObject.Seams = match.ViewObject.Numbers = False
    doc.UndoMode = 1
    doc.openTransaction("ways")
    match.Ways = 12
    doc.recompute()
    doc.commitTransaction()
    for step, ways in ((doc.undo, 8), (doc.redo, 12), (doc.undo, 8)):
        step()
        doc.recompute()
        assert match.Ways == len(match.Shape.Solids) == ways
        assert len(match.ViewObject.Proxy.laid.pieces) == ways
        assert difference(doc, match, tmp_path / f"{ways}.png") < 8.0


@pytest.mark.parametrize("ways", [12, 8])  # 8: other leaves could be laid, but were not asked for
def test_a_match_that_cannot_be_laid_is_still_seen(doc, leaves, tmp_path, ways):
    bundle = add_bundle(doc, leaves)
    match = add_match(doc, bundle, Diameter=400.0, Ways=ways)
    doc.recompute()
    doc.removeObject(bundle.Leaves[4].Name)
    doc.recompute()
    assert "missing" in match.Message
    doc.saveAs(str(tmp_path / "torn.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "torn.FCStd"))
    match = again.getObject("Match")
    middle = slice(SIZE // 2 - 100, SIZE // 2 + 100)
    until, found = time.monotonic() + 20.0, 255.0
    while found > 8.0 and time.monotonic() < until:
        colours = seen(again, tmp_path / "torn.png")[middle, middle]
        found = float(np.abs(colours - 255 * np.array(BARE)).mean())
    assert found < 8.0
    assert len(match.Shape.Solids) == ways


def test_a_change_is_drawn_once(doc, leaves, monkeypatch):
    match = add_match(doc, add_bundle(doc, leaves), Diameter=400.0, Ways=6)
    doc.recompute()
    drawn = []
    once = scene.drawn
    monkeypatch.setattr(scene, "drawn", lambda *given: drawn.append(1) or once(*given))
    match.Ways = 8
    doc.recompute()
    assert len(drawn) == 1 and len(match.ViewObject.Proxy.laid.pieces) == 8

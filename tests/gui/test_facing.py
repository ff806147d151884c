# SPDX-License-Identifier: LGPL-2.1-or-later
"""A leaf with painted spots on faces of other people's solids: the spots' places measured in the
picture of the 3-D view, looking straight at the faces, against where they belong in the world."""

import os
import subprocess
import time
from pathlib import Path

import FreeCAD
import FreeCADGui
import numpy as np
import Part
import pytest
from FreeCAD import Placement, Rotation, Vector
from PIL import Image
from PySide import QtGui

from veneerwb.core import Leaf, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.gui import view as views
from veneerwb.gui.facing import selected_faces
from veneerwb.gui.plain import BARE
from veneerwb.host.objects import add_facing, add_leaf

SIZE, PX_PER_MM = 640, 2.0
NEAR = 1.0
"""Pixels that a spot's middle may lie off: half a millimetre."""
SPOTS = {"red": (40.0, 110.0), "blue": (165.0, 130.0), "green": (70.0, 300.0)}
"""Middles of spots of 8 mm radius on a leaf of 200 x 400 mm, lopsided every way."""
WIDTH, LENGTH = 200, 400


def spotted() -> Photo:
    """1 mm a pixel; row 0 is the leaf's far end."""
    pixels = np.full((LENGTH, WIDTH, 3), (150, 140, 120), np.uint8)
    y, x = LENGTH - np.arange(LENGTH)[:, None] - 0.5, np.arange(WIDTH)[None, :] + 0.5
    for k, colour in enumerate(("red", "green", "blue")):
        there = np.hypot(x - SPOTS[colour][0], y - SPOTS[colour][1]) < 8.0
        pixels[there] = np.eye(3, dtype=np.uint8)[k] * 230
    return Photo.of(pixels, 1.0)


@pytest.fixture
def doc():
    views.register()
    made = FreeCAD.newDocument("Faces")
    made.UndoMode = 1
    FreeCADGui.getDocument(made.Name).ActiveView.setCameraType("Orthographic")
    yield made
    FreeCADGui.Selection.clearSelection()
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)


@pytest.fixture
def leaf(doc):
    return add_leaf(doc, Leaf(3, Side(spotted())))


def block(doc, name, x, y, z, at=(0, 0, 0)):
    made = doc.addObject("Part::Box", name)
    made.Length, made.Width, made.Height = x, y, z
    made.Placement.Base = Vector(*at)
    return made


class Look:
    """Looking straight at a plane: the world's point in the middle of the picture, and what runs to
    the right and upwards in it."""

    def __init__(self, middle, right, up):
        self.middle = Vector(*middle)
        self.right, self.up = Vector(*right), Vector(*up)

    def seen(self, doc, path: Path) -> np.ndarray:
        """The picture, rows x columns x 3."""
        view = FreeCADGui.getDocument(doc.Name).ActiveView
        camera = view.getCameraNode()
        out = self.right.cross(self.up)
        turn = Placement(
            FreeCAD.Matrix(
                self.right.x, self.up.x, out.x, 0, self.right.y, self.up.y, out.y, 0,
                self.right.z, self.up.z, out.z, 0, 0, 0, 0, 1,
            )
        ).Rotation  # fmt: skip
        camera.orientation = turn.Q
        camera.position = tuple(self.middle + out * 500.0)
        camera.height = SIZE / PX_PER_MM
        camera.nearDistance, camera.farDistance = 1.0, 1000.0
        QtGui.QApplication.processEvents()
        view.saveImage(str(path), SIZE, SIZE, "White")
        return np.asarray(Image.open(path).convert("RGB")).astype(int)

    def spots(self, doc, path: Path) -> dict[str, tuple[float, float]]:
        """The middles of the spots in the picture, in mm to the right of and over its middle."""
        picture = self.seen(doc, path)
        found = {}
        for k, colour in enumerate(("red", "green", "blue")):
            others = np.delete(picture, k, axis=2).max(axis=2)
            rows, columns = np.nonzero(picture[..., k] > others + 110)
            if len(rows):
                x, y = columns.mean() + 0.5 - SIZE / 2, SIZE / 2 - rows.mean() - 0.5
                found[colour] = (x / PX_PER_MM, y / PX_PER_MM)
                area = len(rows) / PX_PER_MM**2
                assert area == pytest.approx(np.pi * 64.0, rel=0.15), colour  # the scale
        return found

    def agrees(self, doc, path: Path, expected: dict[str, tuple[float, float]]) -> None:
        """Waits until the spots are where they belong, and says where they are if they are not."""
        until, found = time.monotonic() + 10.0, {}
        while time.monotonic() < until:
            found = self.spots(doc, path)
            off = [
                np.hypot(*np.subtract(found.get(colour, (1e9, 1e9)), place)) * PX_PER_MM
                for colour, place in expected.items()
            ]
            if max(off) < NEAR and set(found) == set(expected):
                print(f"spots off by at most {max(off):.2f} px")
                return
        raise AssertionError(f"{path.stem}: spots at {found}, not at {expected}")


    def is_bare(self, doc, path: Path) -> None:
        """Waits until the faces are shown in one colour."""
        until, found = time.monotonic() + 10.0, 255.0
        while found > 8.0 and time.monotonic() < until:
            patch = self.seen(doc, path)[200:400, 200:300]
            found = float(np.abs(patch - 255 * np.array(BARE)).mean())
        assert found < 8.0


def laid(faces=(0.0, 0.0), grain=0.0, across=0.0, along=0.0, turned=False):
    """Where the spots belong, seen from outside, for faces whose middle is `faces` in the picture:
    by hand, from the leaf's middle outwards."""
    c, s = np.cos(np.radians(grain)), np.sin(np.radians(grain))
    places = {}
    for colour, (x, y) in SPOTS.items():
        right = (WIDTH / 2 - x if turned else x - WIDTH / 2) + across
        ahead = y - LENGTH / 2 + along
        places[colour] = (faces[0] + c * right - s * ahead, faces[1] + s * right + c * ahead)
    return places


TOP = Look((0, 0, 50), (1, 0, 0), (0, 1, 0))


@pytest.fixture
def pair(doc, leaf):
    """Two boxes, 10 mm apart, whose tops lie in one plane: together 210 x 300 mm about x = y = 0.
    The blue spot lies on the right one, the others on the left."""
    left = block(doc, "LeftBox", 130, 300, 50, (-105, -150, 0))
    right = block(doc, "RightBox", 70, 300, 40, (35, -150, 10))
    doc.recompute()
    facing = add_facing(doc, leaf, [(left, "Face6"), (right, "Face6")])
    doc.recompute()
    assert facing.Message == "" and facing.ViewObject.DisplayMode == views.PICTURES
    return facing


def test_the_figure_runs_across_two_faces_of_one_plane(doc, pair, tmp_path):
    TOP.agrees(doc, tmp_path / "straight.png", laid())
    # The gap shows the white ground, and no picture.
    gap = TOP.seen(doc, tmp_path / "gap.png")[:, int(SIZE / 2 + 26 * PX_PER_MM) : int(
        SIZE / 2 + 34 * PX_PER_MM
    )]
    assert (gap > 245).mean() > 0.95


OFFSETS = [
    {"Grain": 20.0},
    {"Grain": -15.0, "Across": 6.0, "Along": -9.0},
    {"Turned": True, "Across": -15.0},
]


@pytest.mark.parametrize("options", OFFSETS, ids=str)
def test_grain_offsets_and_the_turned_side(doc, pair, tmp_path, options):
    for name, value in options.items():
        setattr(pair, name, value)
    doc.recompute()
    TOP.agrees(doc, tmp_path / "moved.png", laid(**{k.lower(): v for k, v in options.items()}))


def ramp(doc, width=210.0):
    """A ramp rising along y at 3 : 4, its slope 300 mm long; and how to look at it."""
    made = doc.addObject("Part::Feature", "Ramp")
    made.Shape = ramp_shape(width)
    return made, Look((width / 2, 120, 90), (1, 0, 0), (0, 0.8, 0.6))


def ramp_shape(width):
    side = Part.makePolygon([Vector(0, y, z) for y, z in ((0, 0), (240, 0), (240, 180), (0, 0))])
    return Part.Face(side).extrude(Vector(width, 0, 0))


def slope_of(solid) -> str:
    return next(
        f"Face{k}" for k, face in enumerate(solid.Shape.Faces, 1)
        if abs(abs(face.normalAt(0, 0).z) - 0.8) < 1e-9
    )  # fmt: skip


def test_a_tilted_face_saved_reopened_and_changed(doc, leaf, tmp_path):
    solid, look = ramp(doc)
    facing = add_facing(doc, leaf, [(solid, slope_of(solid))], Grain=12.0, Along=5.0)
    doc.recompute()
    look.agrees(doc, tmp_path / "tilted.png", laid(grain=12.0, along=5.0))
    doc.saveAs(str(tmp_path / "tilted.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    doc = FreeCAD.openDocument(str(tmp_path / "tilted.FCStd"))
    look.agrees(doc, tmp_path / "again.png", laid(grain=12.0, along=5.0))
    facing, solid = doc.getObject("Facing"), doc.getObject("Ramp")
    assert facing.ViewObject.DisplayMode == views.PICTURES
    # 30 mm wider: the middle of the face goes 15 mm to the right, and the leaf with it.
    solid.Shape = ramp_shape(240.0)
    doc.recompute()
    look.agrees(doc, tmp_path / "wider.png", laid((15.0, 0.0), grain=12.0, along=5.0))
    # Turned about z and moved: looked at from where it now faces.
    solid.Placement = Placement(Vector(7, 8, 9), Rotation(Vector(0, 0, 1), 90))
    doc.recompute()
    turned = Look((7 - 120, 8 + 105, 9 + 90), (0, 1, 0), (-0.8, 0, 0.6))
    turned.agrees(doc, tmp_path / "round.png", laid((15.0, 0.0), grain=12.0, along=5.0))
    facing.Turned = True
    doc.recompute()
    turned.agrees(doc, tmp_path / "back.png", laid((15, 0), grain=12.0, along=5.0, turned=True))


HEADLESS = """
import FreeCAD, Part
from veneerwb.core import Leaf, Side
from veneerwb.core.photos import Photo
from veneerwb.host.objects import add_facing, add_leaf

doc = FreeCAD.newDocument("Headless")
box = doc.addObject("Part::Box", "Box")
box.Length, box.Width, box.Height = 210, 300, 50
box.Placement.Base = FreeCAD.Vector(-105, -150, 0)
doc.recompute()
leaf = add_leaf(doc, Leaf(1, Side(Photo.read({photo!r}, 1.0))))
facing = add_facing(doc, leaf, [(box, "Face6")], Grain=-8.0)
doc.recompute()
assert facing.Message == "", facing.Message
doc.saveAs({saved!r})
"""


def test_a_document_saved_without_a_window_is_seen_in_one(doc, tmp_path):
    photo, saved, script = (tmp_path / n for n in ("leaf.png", "headless.FCStd", "make.py"))
    Image.fromarray(spotted().pixels).save(photo)
    script.write_text(HEADLESS.format(photo=str(photo), saved=str(saved)))
    host = Path(views.__file__).parents[2] / "resources" / "in_host.py"
    surroundings = {
        **os.environ,
        "QT_QPA_PLATFORM": "offscreen",
        "VENEERWB_RUN": str(script),
        "VENEERWB_RESULT": str(tmp_path / "result"),
    }
    subprocess.run(
        ["freecadcmd", str(host)], env=surroundings, stdin=subprocess.DEVNULL,
        capture_output=True, timeout=120, check=True,
    )  # fmt: skip
    for name in ("first", "again"):
        shown = FreeCAD.openDocument(str(saved))
        facing = shown.getObject("Facing")
        assert facing.ViewObject.Visibility
        assert facing.ViewObject.DisplayMode == views.PICTURES
        FreeCADGui.getDocument(shown.Name).ActiveView.setCameraType("Orthographic")
        shown.getObject("Box").ViewObject.Visibility = False
        TOP.agrees(shown, tmp_path / f"{name}.png", laid(grain=-8.0))
        shown.save()
        FreeCAD.closeDocument(shown.Name)


def test_it_follows_parts_undo_and_redo(doc, pair, tmp_path):
    part = doc.addObject("App::Part", "Carcase")
    part.addObjects([doc.LeftBox, doc.RightBox])
    doc.recompute()
    doc.openTransaction("move")
    part.Placement.Base = Vector(20, -10, 0)
    pair.Grain = 10.0
    doc.recompute()
    doc.commitTransaction()
    moved = laid((20.0, -10.0), grain=10.0)
    TOP.agrees(doc, tmp_path / "moved.png", moved)
    doc.undo()
    doc.recompute()
    TOP.agrees(doc, tmp_path / "undone.png", laid())
    doc.redo()
    doc.recompute()
    TOP.agrees(doc, tmp_path / "redone.png", moved)


def test_a_facing_inside_a_placed_part_is_drawn_where_its_faces_are(doc, pair, tmp_path):
    part = doc.addObject("App::Part", "Carcase")
    part.Placement = Placement(Vector(12, 6, 0), Rotation(Vector(0, 0, 1), 0))
    part.addObjects([doc.LeftBox, doc.RightBox, pair])
    doc.recompute()
    assert pair.Message == ""
    TOP.agrees(doc, tmp_path / "inside.png", laid((12.0, 6.0)))


def test_a_face_that_is_gone_keeps_its_picture_and_says_so(doc, leaf, tmp_path):
    solid, look = ramp(doc)
    facing = add_facing(doc, leaf, [(solid, slope_of(solid))])
    doc.recompute()
    solid.Shape = Part.makeSphere(5)
    solid.Visibility = False
    doc.recompute()
    assert "Ramp is gone; choose the faces again" in facing.Message
    look.agrees(doc, tmp_path / "gone.png", laid())
    doc.saveAs(str(tmp_path / "gone.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    doc = FreeCAD.openDocument(str(tmp_path / "gone.FCStd"))
    assert "is gone" in doc.Facing.Message
    look.agrees(doc, tmp_path / "reopened.png", laid())
    # Refused, a change is not shown; reopened, what was shown can no longer be known.
    doc.Facing.Grain = 45.0
    doc.recompute()
    look.agrees(doc, tmp_path / "refused.png", laid())
    doc.save()
    FreeCAD.closeDocument(doc.Name)
    doc = FreeCAD.openDocument(str(tmp_path / "gone.FCStd"))
    look.is_bare(doc, tmp_path / "bare.png")


def test_without_its_leaf_it_keeps_its_picture_and_reopens_in_one_colour(doc, pair, tmp_path):
    doc.removeObject(pair.Leaf.Name)
    doc.recompute()
    assert "leaf is gone" in pair.Message
    TOP.agrees(doc, tmp_path / "kept.png", laid())
    doc.saveAs(str(tmp_path / "bare.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    doc = FreeCAD.openDocument(str(tmp_path / "bare.FCStd"))
    TOP.is_bare(doc, tmp_path / "bare.png")


def test_holes_show_the_solid_behind(doc, leaf, tmp_path):
    plate = block(doc, "Plate", 210, 300, 50, (-105, -150, 0))
    drill = doc.addObject("Part::Cylinder", "Drill")
    drill.Radius, drill.Height = 30.0, 50.0
    bored = doc.addObject("Part::Cut", "Bored")
    bored.Base, bored.Tool = plate, drill
    doc.recompute()
    name = next(
        f"Face{k}" for k, f in enumerate(bored.Shape.Faces, 1) if f.CenterOfMass.z > 49.9
    )
    add_facing(doc, leaf, [(bored, name)])
    doc.recompute()
    TOP.agrees(doc, tmp_path / "bored.png", laid())
    picture = TOP.seen(doc, tmp_path / "bored.png")
    rows, columns = np.nonzero((picture > 240).all(axis=2))
    middle = np.hypot(rows + 0.5 - SIZE / 2, columns + 0.5 - SIZE / 2) < 100
    assert middle.sum() / PX_PER_MM**2 == pytest.approx(np.pi * 900, rel=0.05)


def test_faces_are_picked_and_marked(doc, pair, tmp_path):
    TOP.agrees(doc, tmp_path / "plain.png", laid())
    view = FreeCADGui.getDocument(doc.Name).ActiveView
    columns, rows = view.getSize()
    scale = min(columns, rows) * PX_PER_MM / SIZE
    info = view.getObjectInfo((int(columns / 2 + 70 * scale), int(rows / 2 + 40 * scale)))
    assert (info["Object"], info["Component"]) == (pair.Name, "Face2")

    def marked() -> np.ndarray:
        red, green, blue = np.moveaxis(TOP.seen(doc, tmp_path / "marked.png"), -1, 0)
        there = (green > red + 60) & (green > blue + 60)
        there[:, : SIZE // 2 - 20] &= False  # the green spot lies there
        return there

    assert not marked().any()
    FreeCADGui.Selection.addSelection(doc.Name, pair.Name, "Face2")
    there = marked()
    assert there.sum() > 1000
    where = np.nonzero(there)[1].min() + 0.5 - SIZE / 2
    assert where / PX_PER_MM == pytest.approx(35.0, abs=1.5)
    assert selected_faces(doc.Name) == [(doc.RightBox, "Face6")]
    FreeCADGui.Selection.clearSelection()
    assert not marked().any()

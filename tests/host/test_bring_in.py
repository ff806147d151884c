# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs as people take them, brought into a document as a bundle."""

import os
from dataclasses import replace

import FreeCAD
import numpy as np
import pytest
from PIL import Image
from shapely.geometry import box

from veneerwb.core import VeneerError
from veneerwb.core.photos.preparing import Cancelled, Preparation, Troubles
from veneerwb.host import areas, light
from veneerwb.host.bringing_in import bring_in, take_out
from veneerwb.host.objects import add_bundle, add_bundle_from_photos, add_match, core_bundle
from veneerwb.host.objects.base import Refused

WIDTH, LENGTH = 100, 240  # mm and pixels of the leaf
TABLE = (60, 90, 130)
HOW = Preparation(mm_per_px=1.0, find=True, margin=10.0, light="background")


def photograph(k, strength=1.0, mirrored=False):
    """Leaf k on a blue table, 160 x 300 pixels of 1 mm, its lower left at (30, 40)."""
    x, y = np.meshgrid(np.arange(WIDTH) + 0.5, np.arange(LENGTH)[::-1] + 0.5)
    rings = 150 + 30 * np.sin(x / 5 + np.sin(y / 50 + k) * 2) + x / 4
    picture = np.empty((300, 160, 3))
    picture[:] = TABLE
    picture[20:260, 30:130] = np.stack([rings, rings * 0.8, rings * 0.55], axis=-1)
    linear = ((picture / 255) ** 2.2) * strength
    pixels = np.clip(linear ** (1 / 2.2) * 255, 0, 255).astype(np.uint8)
    return pixels[:, ::-1] if mirrored else pixels


@pytest.fixture
def shoot(tmp_path):
    def saved(name, *pictures):
        paths = []
        for k, pixels in enumerate(pictures, start=1):
            paths.append(tmp_path / f"{name} {k}.png")
            Image.fromarray(np.ascontiguousarray(pixels)).save(paths[-1])
        return paths

    return saved


@pytest.fixture
def paths(shoot):
    return shoot("leaf", photograph(1), photograph(2, 0.8), photograph(3, 1.2))


def test_a_batch_becomes_a_bundle_that_is_recomputed(doc, paths):
    bundle = bring_in(doc, paths, HOW, 0.7, "previous")
    assert (bundle.Message, bundle.Numbers, bundle.Count) == ("", [1, 2, 3], 3)
    assert (bundle.Thickness.Value, bundle.Back) == (0.7, "previous")
    assert bundle.LeastWidth.Value == pytest.approx(WIDTH, abs=1.5)
    assert bundle.FullM2 == pytest.approx(3 * WIDTH * LENGTH * 1e-6, rel=0.03)
    leaf = bundle.Leaves[1]
    assert (leaf.Number, leaf.Label, leaf.Message) == (2, "Leaf 2", "")
    assert leaf.Width.Value == pytest.approx(WIDTH + 20, abs=1.5)
    assert leaf.OriginalName == "leaf 2.png" and len(leaf.OriginalSha256) == 64
    assert os.path.dirname(leaf.Photo) != str(paths[0].parent)
    usable = core_bundle(bundle).leaf(2).usable
    wanted = box(10, 10, WIDTH + 10, LENGTH + 10)
    assert usable.symmetric_difference(wanted).area < 0.02 * wanted.area
    assert "3 photographs" in bundle.Report[0] and "evened" in " ".join(bundle.Report)


def brightness(bundle):
    return [leaf.photo[10:-10, 10:-10].mean() for leaf in core_bundle(bundle).leaves]


def test_light_is_evened_and_can_be_had_back(doc, paths):
    bundle = bring_in(doc, paths, HOW, 0.6)
    assert np.ptp(brightness(bundle)) < 4.0
    assert bundle.Leaves[1].Gains == pytest.approx([1.2] * 3, rel=0.05)
    match = add_match(doc, bundle, Ways=3, Turn="slip", Diameter=60.0)
    doc.recompute()
    marks, revision = list(match.PieceMarks), match.Revision
    bundle.EvenLight = False
    doc.recompute()
    assert np.ptp(brightness(bundle)) > 15.0
    assert match.Message == "" and match.Revision == revision
    assert len(set(marks) & set(match.PieceMarks)) == 0  # the pictures are drawn anew
    bundle.EvenLight = True
    doc.recompute()
    assert match.PieceMarks == marks and np.ptp(brightness(bundle)) < 4.0


def test_a_leaf_shown_by_itself_follows_its_bundles_light(doc, paths):
    from veneerwb.host.objects import add_facing

    bundle = bring_in(doc, paths, HOW, 0.6)
    solid = doc.addObject("Part::Box", "Box")
    facing = add_facing(doc, bundle.Leaves[1], [(solid, "Face6")])
    doc.recompute()
    even = facing.Revision
    bundle.EvenLight = False
    doc.recompute()
    assert facing.Revision != even and facing.Message == ""
    bundle.EvenLight = True
    doc.recompute()
    assert facing.Revision == even


def test_what_is_brought_in_survives_saving(doc, paths, tmp_path):
    bundle = bring_in(doc, paths, HOW, 0.6)
    bundle.EvenLight = False
    areas.set_marks(bundle.Leaves[0], [(5.0, 6.0), None, (7.0, 8.5)])
    doc.recompute()
    pixels = [leaf.photo for leaf in core_bundle(bundle).leaves]
    gains, report = list(bundle.Leaves[2].Gains), list(bundle.Report)
    doc.saveAs(str(tmp_path / "brought in.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "brought in.FCStd")).getObject("Bundle")
    assert again.EvenLight is False and list(again.Report) == report
    assert again.Leaves[2].Gains == pytest.approx(gains)
    assert areas.marks_of(again.Leaves[0]) == {0: (5.0, 6.0), 2: (7.0, 8.5)}
    for leaf, was in zip(core_bundle(again).leaves, pixels):
        assert np.array_equal(leaf.photo, was)


def test_a_core_bundle_with_gains_keeps_its_pictures_as_photographed(doc, paths):
    from veneerwb.core.photos.preparing import prepared

    batch = prepared(paths, HOW)
    bundle = add_bundle(doc, batch.bundle(0.6))
    batch.discard()
    doc.recompute()
    assert np.ptp(brightness(bundle)) < 4.0
    bundle.EvenLight = False
    doc.recompute()
    assert np.ptp(brightness(bundle)) > 15.0


def test_the_light_of_a_bundle_can_be_evened_later(doc, shoot, paths):
    (behind,) = shoot("back", photograph(5, 0.7, mirrored=True))
    how = replace(HOW, light="as photographed", margin=25.0)
    bundle = bring_in(doc, paths, how, 0.6, backs={3: behind})
    assert np.ptp(brightness(bundle)) > 15.0 and list(bundle.Leaves[0].Gains) == []
    said = light.even_light(bundle)
    assert "Light evened from the background" in said[0]
    assert doc.UndoCount == 2 and np.ptp(brightness(bundle)) < 4.0
    told = light.told(bundle)
    assert [line.split(" was")[0] for line in told if "lighter" in line] == [
        "Leaf 2", "The back of leaf 3",
    ]
    assert "darker" in told[2] and len(told) == 4
    core = core_bundle(bundle)
    sides = core.leaf(1).face, core.leaf(3).back
    face, back = (side.photo[40:-40, 40:-40].mean() for side in sides)
    assert abs(face - back) < 8.0
    doc.undo()
    assert np.ptp(brightness(bundle)) > 15.0


def test_a_patch_evens_the_light_and_troubles_are_named_together(doc, paths):
    bundle = bring_in(doc, paths, replace(HOW, light="as photographed", margin=None), 0.6)
    said = light.even_light(bundle, box(2.0, 50.0, 20.0, 250.0), grey=True)
    assert "the grey patch" in said[0]
    pixels = core_bundle(bundle).leaf(2).photo[60:240, 4:18].mean(axis=(0, 1))
    assert np.ptp(pixels) < 2.0  # the table, taken for grey
    gains = [list(leaf.Gains) for leaf in bundle.Leaves]
    with pytest.raises(Troubles) as caught:
        light.even_light(bundle, box(60.0, 80.0, 100.0, 220.0))  # figured wood
    assert len(caught.value.each) == 3 and "Leaf 2 is not plain" in caught.value.each[1][1]
    assert [list(leaf.Gains) for leaf in bundle.Leaves] == gains


def test_it_is_one_undo_step(doc, paths):
    bundle = bring_in(doc, paths, HOW, 0.6)
    assert doc.UndoCount == 1
    doc.undo()
    assert doc.Objects == []
    doc.redo()
    bundle = doc.getObject("Bundle")
    doc.recompute()
    assert (bundle.Message, bundle.Numbers) == ("", [1, 2, 3])
    assert np.ptp(brightness(bundle)) < 4.0


def test_numbers_and_backs_are_taken(doc, shoot, paths):
    (behind,) = shoot("back", photograph(5, 0.9, mirrored=True))
    bundle = bring_in(doc, paths, HOW, 0.6, "own", numbers=[7, 3, 9], backs={3: behind}, slope=3.0)
    assert bundle.Numbers == [3, 7, 9] and [leaf.Number for leaf in bundle.Leaves] == [7, 3, 9]
    core = core_bundle(bundle)
    assert (core.slope, core.leaf(3).back.source, core.leaf(7).back.source) == (
        3.0, "photo", "own face",
    )
    leaf = bundle.Leaves[1]
    assert leaf.BackOriginalName == "back 1.png" and len(leaf.BackGains) == 3
    # As seen from the face: lighter towards the right again, as photograph() draws it.
    middle = core.leaf(3).back.photo[60:-60]
    assert middle[:, 80:100].mean() > middle[:, 20:40].mean() + 5.0


@pytest.mark.parametrize("stop", [0, 2, 3])
def test_a_cancelled_batch_leaves_nothing(doc, paths, stop):
    with pytest.raises(Cancelled):
        bring_in(doc, paths, HOW, 0.6, progress=lambda done, *_: done < stop)
    assert doc.Objects == [] and doc.UndoCount == 0


def test_bad_photographs_leave_nothing_and_are_named_together(doc, shoot):
    blank = np.full((300, 160, 3), TABLE, np.uint8)
    paths = shoot("leaf", photograph(1), blank, photograph(2), blank // 2)
    with pytest.raises(Troubles) as caught:
        bring_in(doc, paths, HOW, 0.6)
    assert [name for name, _ in caught.value.each] == ["leaf 2.png", "leaf 4.png"]
    assert doc.Objects == [] and doc.UndoCount == 0


@pytest.mark.parametrize(
    "wrong",
    [
        {"thickness": 0.0}, {"back": "up"}, {"numbers": [1, 2]}, {"numbers": [1, 1, 2]},
        {"numbers": [0, 1, 2]}, {"backs": {5: "x.png"}},
    ],
)
def test_values_that_cannot_be_are_refused_before_photographs_are_read(doc, paths, wrong):
    told = []
    with pytest.raises(VeneerError):
        bring_in(doc, paths, HOW, **{"thickness": 0.6, **wrong}, progress=lambda *a: told.append(a))
    assert told == [] and doc.Objects == []


def test_a_bundle_is_taken_out_unless_it_is_used(doc, paths):
    bundle = bring_in(doc, paths, HOW, 0.6)
    doc.addObject("App::DocumentObjectGroup", "Shelf").addObject(bundle)
    match = add_match(doc, bundle)
    with pytest.raises(Refused, match=f"{match.Label} uses these leaves"):
        take_out(bundle)
    doc.removeObject(match.Name)
    doc.clearUndos()
    take_out(bundle)
    assert [obj.Name for obj in doc.Objects] == ["Shelf"] and doc.UndoCount == 1


def test_backs_and_faces_of_one_name_keep_it_and_are_told_apart(doc, paths, tmp_path):
    (tmp_path / "rear").mkdir()
    behind = tmp_path / "rear" / "leaf 2.png"
    Image.fromarray(photograph(5, 0.9, mirrored=True)).save(behind)
    bundle = bring_in(doc, paths, HOW, 0.6, backs={2: behind})
    leaf = bundle.Leaves[1]
    assert (leaf.OriginalName, leaf.BackOriginalName) == ("leaf 2.png", "leaf 2.png")
    behind.write_bytes(paths[0].read_bytes())
    with pytest.raises(Troubles, match=r"rear/leaf 2.png is the same photograph as leaf 1.png"):
        bring_in(doc, paths, HOW, 0.6, backs={2: behind})


def test_a_script_too_is_told_of_a_scale_ten_times_wrong(doc, shoot):
    paths = shoot("leaf", np.full((700, 500, 3), 120, np.uint8))
    with pytest.raises(VeneerError, match="would show a leaf 5 m across and 7 m along"):
        add_bundle_from_photos(doc, paths, mm_per_px=10.0, thickness=0.6)
    assert doc.Objects == []


def test_it_joins_a_step_that_is_open(doc, paths):
    doc.openTransaction("Panel")
    doc.addObject("App::FeaturePython", "Other")
    bring_in(doc, paths, HOW, 0.6)
    doc.commitTransaction()
    assert doc.UndoCount == 1
    doc.undo()
    assert doc.Objects == []

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Leaves and bundles in a document: pictures inside it, registers, areas, faults."""

import hashlib
import os
from pathlib import Path

import FreeCAD
import numpy as np
import pytest
from PIL import Image, ImageFile
from shapely.geometry import Point, box

from veneerwb.core import Bundle, Fault, Leaf, Motion, Side, VeneerError
from veneerwb.core.photos.reading import Photo
from veneerwb.host.objects import (
    add_bundle,
    add_bundle_from_photos,
    add_leaf,
    add_match,
    core_bundle,
)


def picture(seed, rows=60, columns=40):
    """A smooth picture, so that a JPEG of it is nearly itself."""
    y, x = np.mgrid[0:rows, 0:columns]
    base = 120 + 60 * np.sin(x / 7.0 + seed) + 40 * np.cos(y / 9.0 - seed)
    return np.clip(np.stack([base, base * 0.8, base * 0.6], axis=-1), 0, 255).astype(np.uint8)


@pytest.fixture
def files(tmp_path):
    paths = []
    for k in range(1, 5):
        paths.append(tmp_path / f'Blätter "Eiche" {k}.png')
        Image.fromarray(picture(k)).save(paths[-1])
    return paths


def test_a_leaf_keeps_a_copy_and_tells_its_original(doc, files):
    leaf = add_leaf(doc, files[0], 7, 0.5)
    doc.recompute()
    assert (leaf.Number, leaf.MmPerPx) == (7, 0.5)
    assert (leaf.Width.Value, leaf.Length.Value) == (20.0, 30.0)
    assert leaf.OriginalName == files[0].name
    assert leaf.OriginalSha256 == hashlib.sha256(files[0].read_bytes()).hexdigest()
    assert leaf.Message == ""
    assert os.path.dirname(leaf.Photo) != str(files[0].parent)


def test_a_large_photograph_is_shrunk_and_keeps_its_size_in_mm(doc, tmp_path):
    Image.fromarray(picture(1, 3000, 1500)).save(tmp_path / "large.jpg", quality=90)
    leaf = add_leaf(doc, tmp_path / "large.jpg", 1, 0.4)
    doc.recompute()
    with Image.open(leaf.Photo) as copy:
        columns, rows = copy.size
    assert columns * rows <= 3_000_000
    assert leaf.OriginalMmPerPx == 0.4
    assert leaf.Width.Value == pytest.approx(600.0, abs=1e-9)
    assert leaf.Length.Value == pytest.approx(1200.0, abs=leaf.MmPerPx)


def test_what_happens_to_the_original_later_changes_nothing(doc, files):
    bundle = add_bundle_from_photos(doc, files, 0.5, 0.6)
    doc.recompute()
    before = core_bundle(bundle).leaf(1).photo.copy()
    Image.fromarray(picture(9, 30, 30)).save(files[0])
    files[1].unlink()
    bundle.Leaves[0].touch()
    doc.recompute()
    assert bundle.Message == ""
    assert np.array_equal(core_bundle(bundle).leaf(1).photo, before)


def test_the_picture_inside_is_nearly_the_photograph(doc, files):
    bundle = add_bundle_from_photos(doc, files, 0.5, 0.6)
    for k, leaf in enumerate(core_bundle(bundle).leaves, start=1):
        off = np.abs(leaf.photo.astype(int) - picture(k))
        assert off.mean() < 2.0


def test_a_core_bundle_comes_back_as_it_was(doc, sawn):
    bundle = add_bundle(doc, sawn)
    doc.recompute()
    back = core_bundle(bundle)
    assert (back.thickness, back.back, back.slope) == (sawn.thickness, sawn.back, sawn.slope)
    for was, found in zip(sawn.leaves, back.leaves):
        assert (found.number, found.size, found.register) == (was.number, was.size, was.register)
        assert found.face.view == was.face.view
        assert (found.back.source, found.back.register) == (was.back.source, was.back.register)
        assert found.back.view == was.back.view
        assert found.usable.symmetric_difference(was.usable).area < 1e-9
        assert [f.kind for f in found.faults] == [f.kind for f in was.faults]
        assert found.back.photo.shape == was.back.photo.shape
        assert np.abs(found.back.photo.astype(int) - was.back.photo).mean() < 6.0


@pytest.mark.parametrize("slope", [None, 0.0, 7.0])
def test_a_slope_that_is_not_known_differs_from_none(doc, slope):
    leaf = Leaf(1, Side(Photo.of(picture(1), 1.0)))
    bundle = add_bundle(doc, Bundle((leaf,), 0.6, "own", slope))
    assert core_bundle(bundle).slope == slope


def test_areas_with_holes_and_faults_are_kept(doc):
    area = box(0.0, 0.0, 30.0, 50.0).difference(Point(15.0, 25.0).buffer(5.0))
    faults = (Fault(box(1.0, 1.0, 3.0, 3.0), "knot"), Fault(box(5.0, 5.0, 9.0, 9.0), "split"))
    register = Motion(2.0, 3.0, -4.0)
    made = add_leaf(
        doc, Leaf(3, Side(Photo.of(picture(1), 1.0), register, register), None, area, faults)
    )
    leaf = core_bundle(_bundle_of(doc, made)).leaf(3)
    assert leaf.register == register
    assert leaf.usable.symmetric_difference(area).area < 1e-9
    assert [(f.kind, f.outline.area) for f in leaf.faults] == [("knot", 4.0), ("split", 16.0)]


def _bundle_of(doc, *leaves):
    from veneerwb.host.objects.bundle import Bundle as Proxy

    obj = doc.addObject("App::FeaturePython", "Bundle")
    Proxy(obj)
    obj.Leaves = list(leaves)
    return obj


def test_changing_the_ways_decodes_no_photograph(doc, files, monkeypatch):
    bundle = add_bundle_from_photos(doc, files, 5.0, 0.6)
    match = add_match(doc, bundle, Ways=4, Diameter=150.0)
    refuse_decoding(monkeypatch)
    doc.recompute()
    match.Ways, match.Turn = 3, "slip"
    doc.recompute()
    assert (match.Message, len(match.Shape.Solids)) == ("", 3)
    with pytest.raises(VeneerError):
        core_bundle(bundle).leaf(1).photo  # noqa: B018


def refuse_decoding(monkeypatch):
    def fails(image):
        raise OSError("decoded")

    monkeypatch.setattr(ImageFile.ImageFile, "load", fails)


def test_a_picture_is_decoded_once_however_often_the_bundle_is_read(doc, files, monkeypatch):
    bundle = add_bundle_from_photos(doc, files, 5.0, 0.6)
    first = core_bundle(bundle).leaf(2)
    pixels = first.photo
    refuse_decoding(monkeypatch)
    again = core_bundle(bundle).leaf(2)
    assert again.face.image is first.face.image
    assert again.photo is pixels


def test_another_picture_given_to_a_leaf_is_seen(doc, files, tmp_path):
    bundle = add_bundle_from_photos(doc, files, 0.5, 0.6)
    doc.recompute()
    Image.fromarray(picture(5, 80, 50)).save(tmp_path / "other.png")
    bundle.Leaves[0].Photo = str(tmp_path / "other.png")
    doc.recompute()
    assert bundle.Leaves[0].Width.Value == 25.0
    assert core_bundle(bundle).leaf(1).photo.shape == (80, 50, 3)


def bad_file(folder, kind):
    path = folder / f"{kind}.png"
    if kind == "text":
        path.write_text("not a picture")
    elif kind == "cut short":
        Image.fromarray(picture(1, 300, 300)).save(path)
        path.write_bytes(path.read_bytes()[:2000])
    elif kind == "empty":
        path.touch()
    return path


@pytest.mark.parametrize("kind", ["text", "cut short", "empty", "missing"])
def test_a_bad_photograph_leaves_the_document_as_it_was(doc, files, tmp_path, kind):
    with pytest.raises(VeneerError, match=kind):
        add_bundle_from_photos(doc, [*files, bad_file(tmp_path, kind)], 0.5, 0.6)
    assert doc.Objects == []


@pytest.mark.parametrize(
    ("scale", "thickness", "back"),
    [
        (0.0, 0.6, "next"),
        (0.5, 0.0, "next"),
        (0.5, 0.6, "up"),
        (-1.0, 0.6, "next"),
        (1e300, 0.6, "next"),
    ],
)
def test_bad_values_leave_the_document_as_it_was(doc, files, scale, thickness, back):
    with pytest.raises(VeneerError):
        add_bundle_from_photos(doc, files, scale, thickness, back)
    assert doc.Objects == []


def test_no_photographs_are_refused(doc):
    with pytest.raises(VeneerError):
        add_bundle_from_photos(doc, [], 0.5, 0.6)


def test_two_leaves_with_one_number_are_refused_by_the_bundle(doc, files):
    bundle = add_bundle_from_photos(doc, files, 0.5, 0.6)
    bundle.Leaves[1].Number = 1
    doc.recompute()
    assert bundle.Message == "Two leaves carry the number 1; give each its own."


@pytest.mark.parametrize(("name", "value"), [("MmPerPx", 0.0), ("MmPerPx", -1.0), ("MmPerPx", 1e9)])
def test_a_leaf_refuses_a_scale_that_cannot_be(doc, files, name, value):
    leaf = add_leaf(doc, files[0], 1, 0.5)
    doc.recompute()
    setattr(leaf, name, value)
    doc.recompute()
    assert leaf.Message.endswith(".")
    assert leaf.Width.Value == 20.0


def test_pictures_survive_saving_and_reopening_twice(doc, sawn, tmp_path):
    add_bundle(doc, sawn)
    doc.recompute()
    seen = [(leaf.photo, leaf.back.photo) for leaf in core_bundle(doc.getObject("Bundle")).leaves]
    name = doc.Name
    for k in (1, 2):
        path = str(tmp_path / f"save {k}.FCStd")
        FreeCAD.getDocument(name).saveAs(path)
        FreeCAD.closeDocument(name)
        name = FreeCAD.openDocument(path).Name
    again = core_bundle(FreeCAD.getDocument(name).getObject("Bundle"))
    for (face, back), leaf in zip(seen, again.leaves):
        assert np.array_equal(leaf.photo, face)
        assert np.array_equal(leaf.back.photo, back)


@pytest.mark.parametrize("undo", [0, 1])
@pytest.mark.parametrize("removed", [0, 1])
def test_a_copied_leaf_has_its_own_pictures(doc, sawn, tmp_path, undo, removed):
    doc.UndoMode = undo
    leaf = add_leaf(doc, sawn.leaves[0])
    copy = doc.copyObject(leaf)
    assert copy.Photo != leaf.Photo and copy.BackPhoto != leaf.BackPhoto
    for name in ("Photo", "BackPhoto"):
        files = [Path(getattr(one, name)).read_bytes() for one in (leaf, copy)]
        assert files[0] == files[1]
    doc.removeObject((leaf, copy)[removed].Name)
    assert_saves_with_pictures(doc, tmp_path)


def test_undoing_a_copy_leaves_the_original_its_pictures(doc, sawn, tmp_path):
    doc.UndoMode = 1
    leaf = add_leaf(doc, sawn.leaves[0])
    doc.openTransaction("Copy")
    doc.copyObject(leaf)
    doc.commitTransaction()
    doc.undo()
    assert len(doc.Objects) == 1
    assert os.path.getsize(leaf.Photo) > 0
    doc.redo()
    doc.undo()
    assert_saves_with_pictures(doc, tmp_path)


def assert_saves_with_pictures(doc, tmp_path):
    doc.saveAs(str(tmp_path / "copy.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    (again,) = FreeCAD.openDocument(str(tmp_path / "copy.FCStd")).Objects
    assert os.path.getsize(again.Photo) > 0 and os.path.getsize(again.BackPhoto) > 0

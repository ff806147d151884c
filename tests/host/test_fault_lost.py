# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs that are lost: the original after the import, the working copy of an open document,
and one that was cut out of a saved one. Each says which; all else stays, and can be saved."""

import os
import shutil
import zipfile

import FreeCAD
import pytest
from PIL import Image

from veneerwb.core.photos.reading import sha256_of
from veneerwb.host import keeping
from veneerwb.host.objects import add_bundle, add_bundle_from_photos, add_match

SAID = "Leaf 2 has no photograph; choose one in its property Photo"


@pytest.fixture
def match(doc, sawn, tmp_path):
    made = add_match(doc, add_bundle(doc, sawn), Ways=4, Diameter=300.0)
    doc.recompute()
    assert made.Message == ""
    doc.saveAs(str(tmp_path / "saved.FCStd"))
    return made


def leaf(doc, number):
    return next(one for one in doc.getObject("Bundle").Leaves if one.Number == number)


def digests(doc):
    return {
        (one.Name, name): sha256_of(getattr(one, name))
        for one in doc.getObject("Bundle").Leaves for name in ("Photo", "BackPhoto")
        if getattr(one, name) and not keeping.gone(one, name)
    }  # fmt: skip


def messages(doc):
    return {one.Name: one.Message for one in doc.Objects if getattr(one, "Message", "")}


def again(doc):
    for one in doc.Objects:
        one.touch()
    doc.recompute()


def without(path, *names):
    """The document without some of its files, beside it."""
    cut = path.parent / "cut.FCStd"
    with zipfile.ZipFile(path) as archive, zipfile.ZipFile(cut, "w") as other:
        for name in archive.namelist():
            if name not in names:
                other.writestr(name, archive.read(name))
    return cut


def test_the_original_may_go_after_the_import(doc, tmp_path):
    folder = tmp_path / "photographs"
    folder.mkdir()
    paths = [folder / f"leaf {k}.png" for k in (1, 2, 3, 4)]
    for k, path in enumerate(paths):
        Image.new("RGB", (60, 120), (90 + k, 80, 70)).save(path)
    add_bundle_from_photos(doc, paths, 2.0, 0.6)
    doc.recompute()
    kept = digests(doc)
    shutil.rmtree(folder)
    again(doc)
    doc.saveAs(str(tmp_path / "saved.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    opened = FreeCAD.openDocument(str(tmp_path / "saved.FCStd"))
    again(opened)
    assert messages(opened) == {} and digests(opened) == kept and len(kept) == 4


def test_a_working_copy_that_went_is_taken_out_of_the_saved_document(doc, match, capfd):
    kept = digests(doc)
    os.unlink(leaf(doc, 2).Photo)
    os.unlink(leaf(doc, 3).BackPhoto)
    match.Diameter = 260.0
    again(doc)
    assert messages(doc) == {} and digests(doc) == kept
    assert "Leaf 2: the picture leaf-002.jpg had gone" in capfd.readouterr().err


def test_a_folder_that_a_tidy_system_removed_comes_back(doc, match):
    kept = digests(doc)
    shutil.rmtree(doc.TransientDir)
    doc.save()
    assert digests(doc) == kept
    again(doc)
    assert messages(doc) == {}


def test_what_was_never_saved_is_said_and_all_else_stays(doc, sawn, tmp_path):
    match = add_match(doc, add_bundle(doc, sawn), Ways=4, Diameter=300.0)
    doc.recompute()
    volume, kept = match.Shape.Volume, digests(doc)
    os.unlink(leaf(doc, 2).Photo)
    match.Diameter = 260.0
    again(doc)
    assert set(messages(doc)) == {"Leaf001", "Bundle", "Match"}
    assert all(said.startswith(SAID) for said in messages(doc).values())
    assert match.Shape.Volume == volume
    doc.saveAs(str(tmp_path / "saved.FCStd"))  # the host alone would refuse it
    FreeCAD.closeDocument(doc.Name)
    opened = FreeCAD.openDocument(str(tmp_path / "saved.FCStd"))
    del kept["Leaf001", "Photo"]
    assert digests(opened) == kept and opened.getObject("Match").Shape.Volume == volume
    assert leaf(opened, 2).Message.startswith(SAID)  # at once, without a recompute


def test_a_picture_cut_out_of_the_document_is_said_and_can_be_given_again(match, tmp_path):
    doc = match.Document
    volume, kept = match.Shape.Volume, digests(doc)
    photo = shutil.copy(leaf(doc, 2).Photo, tmp_path / "again.jpg")
    cut = without(tmp_path / "saved.FCStd", "leaf-002.jpg")
    opened = FreeCAD.openDocument(str(cut))
    assert messages(opened) == {"Leaf001": leaf(opened, 2).Message}
    assert leaf(opened, 2).Message.startswith(SAID)
    again(opened)
    match = opened.getObject("Match")
    assert match.Message.startswith(SAID) and match.Shape.Volume == pytest.approx(volume)
    lost = kept.pop(("Leaf001", "Photo"))
    assert digests(opened) == kept
    opened.save()
    leaf(opened, 2).Photo = str(photo)
    opened.recompute()
    again(opened)
    assert messages(opened) == {} and digests(opened)["Leaf001", "Photo"] == lost
    opened.save()
    FreeCAD.closeDocument(opened.Name)
    opened = FreeCAD.openDocument(str(cut))
    again(opened)
    assert messages(opened) == {} and len(digests(opened)) == 8


def test_a_lost_back_is_named_too(match, tmp_path):
    opened = FreeCAD.openDocument(str(without(tmp_path / "saved.FCStd", "leaf-003-back.jpg")))
    again(opened)
    assert opened.getObject("Match").Message.startswith(
        "Leaf 3 has no photograph; choose one in its property BackPhoto"
    )


def test_another_picture_under_another_name_is_not_taken_for_it(doc, match, tmp_path):
    Image.new("RGB", (100, 200), (9, 9, 9)).save(tmp_path / "new.png")
    leaf(doc, 2).Photo = str(tmp_path / "new.png")
    os.unlink(leaf(doc, 2).Photo)
    again(doc)
    assert leaf(doc, 2).Message.startswith(SAID)

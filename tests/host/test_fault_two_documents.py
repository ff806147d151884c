# SPDX-License-Identifier: LGPL-2.1-or-later
"""One bundle copied from one open document to another: each has its own leaves and photographs,
whichever is changed, saved or closed first."""

import os

import FreeCAD
import pytest
from PIL import Image

from veneerwb.core.photos.reading import sha256_of
from veneerwb.host.objects import add_bundle, add_match, core_bundle


@pytest.fixture
def match(doc, sawn):
    made = add_match(doc, add_bundle(doc, sawn), Ways=4, Diameter=300.0)
    doc.recompute()
    return made


@pytest.fixture
def other(doc):
    made = FreeCAD.newDocument("Other")
    made.UndoMode = 1
    return made


def photographs(doc):
    """By leaf and side: the digest of every photograph of a document."""
    return {
        (one.Number, name): sha256_of(getattr(one, name))
        for one in doc.findObjects("App::FeaturePython") if one.Name.startswith("Leaf")
        for name in ("Photo", "BackPhoto") if getattr(one, name)
    }  # fmt: skip


def whole(doc, kept):
    """A document recomputes from the photographs that it had, all of them its own files."""
    for one in doc.Objects:
        one.touch()
    doc.recompute()
    assert [one.Message for one in doc.Objects if one.Message] == []
    assert photographs(doc) == kept
    leaves = [one for one in doc.Objects if one.Name.startswith("Leaf")]
    files = [one.Photo for one in leaves] + [one.BackPhoto for one in leaves if one.BackPhoto]
    assert len(set(files)) == len(kept)
    for file in files:
        assert os.path.dirname(file) == doc.TransientDir
    bundle = core_bundle(doc.getObject("Bundle"))
    assert [leaf.face.photo.shape for leaf in bundle.leaves] == [(200, 100, 3)] * 6


@pytest.mark.parametrize("first", ["from", "into"])
def test_each_keeps_its_photographs_when_the_other_is_closed(doc, other, match, tmp_path, first):
    kept = photographs(doc)
    other.copyObject(match, True)
    other.recompute()
    assert len(kept) == 8
    whole(other, kept)
    whole(doc, kept)
    left, closed = (other, doc) if first == "from" else (doc, other)
    FreeCAD.closeDocument(closed.Name)
    whole(left, kept)
    left.saveAs(str(tmp_path / "left.FCStd"))
    FreeCAD.closeDocument(left.Name)
    whole(FreeCAD.openDocument(str(tmp_path / "left.FCStd")), kept)


def test_what_is_changed_in_one_stays_as_it_was_in_the_other(doc, other, match, tmp_path):
    kept = photographs(doc)
    other.copyObject(match, True)
    other.recompute()
    copy = other.getObject("Match")
    revision, leaves = match.Revision, other.getObject("Bundle").Leaves
    assert copy.Revision == revision
    copy.Ways = 6
    Image.new("RGB", (100, 200), (9, 9, 9)).save(tmp_path / "new.png")
    leaves[0].Photo = str(tmp_path / "new.png")
    leaves[2].RegisterX = 5.0
    other.recompute()
    other.removeObject(leaves[5].Name)
    whole(doc, kept)
    assert match.Revision == revision and copy.Revision != revision and match.Ways == 4
    doc.getObject("Bundle").Thickness = 1.2
    doc.recompute()
    assert other.getObject("Bundle").Thickness.Value == pytest.approx(0.6)


def test_copied_there_and_back_and_undone(doc, other, match, tmp_path):
    kept = photographs(doc)
    other.copyObject(match, True)
    other.recompute()
    doc.openTransaction("copy back")
    back = doc.copyObject(other.getObject("Match"), True)
    doc.recompute()
    doc.commitTransaction()
    assert back.Document is doc and len(doc.Objects) == 16
    assert len({one.Photo for one in doc.Objects if one.Name.startswith("Leaf")}) == 12
    doc.undo()
    doc.recompute()
    assert len(doc.Objects) == 8
    whole(doc, kept)
    doc.redo()
    doc.recompute()
    assert len(doc.Objects) == 16
    for one in (doc, other):
        one.saveAs(str(tmp_path / f"{one.Name}.FCStd"))
    names = [doc.FileName, other.FileName]
    for one in (doc, other):
        FreeCAD.closeDocument(one.Name)
    for name, count in zip(names, (16, 8)):
        opened = FreeCAD.openDocument(name)
        for one in opened.Objects:
            one.touch()
        opened.recompute()
        assert len(opened.Objects) == count
        assert [one.Message for one in opened.Objects if one.Message] == []
        files = [one.Photo for one in opened.Objects if one.Name.startswith("Leaf")]
        assert len(set(files)) == len(files) and set(map(sha256_of, files)) <= set(kept.values())

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Registers, renumbering and turning leaves in a document."""

import os

import FreeCAD
import numpy as np
import pytest
from FreeCAD import Vector
from PIL import Image
from shapely.geometry import box

from veneerwb.core import Bundle, Fault, Leaf, Motion, Side, VeneerError
from veneerwb.core.photos.reading import Photo
from veneerwb.core.renumbering import end_for_end, mirrored, turned_end_for_end, turned_over
from veneerwb.core.sequence import registered
from veneerwb.host import sequence, turning
from veneerwb.host.objects import add_bundle, add_match, core_bundle
from veneerwb.host.values import core_leaf


def close(one, other):
    """Whether two motions are one, as far as a document keeps numbers."""
    points = np.array([(0.0, 0.0), (500.0, 0.0), (0.0, 900.0)])
    return one.mirrored == other.mirrored and np.allclose(one.apply(points), other.apply(points))


REGISTERS = {k: Motion(0.3 * (k - 1), 2.0 * (k - 1), -1.0 * (k - 1)) for k in range(1, 7)}


# --- registers ---------------------------------------------------------------------------------


def test_registers_are_applied_as_the_core_does(doc, sawn, bundle):
    match = add_match(doc, bundle, Ways=4, Diameter=120.0)
    doc.recompute()
    revision = match.Revision
    sequence.apply_registers(bundle, REGISTERS, "figure")
    doc.recompute()
    assert bundle.Follows == "figure" and "follow the figure" in bundle.Registers
    wanted, found = registered(sawn, REGISTERS), core_bundle(bundle)
    for leaf in wanted.leaves:
        for turned in (False, True):
            here, there = found.leaf(leaf.number).side(turned), leaf.side(turned)
            assert close(here.register, there.register) and close(here.view, there.view)
    assert match.Message == "" and match.Revision != revision


def test_registers_are_one_undo_step(doc, bundle):
    before = [core_leaf(leaf).register for leaf in bundle.Leaves]
    sequence.apply_registers(bundle, REGISTERS, "log")
    assert doc.UndoCount == 1
    doc.undo()
    doc.recompute()
    assert [core_leaf(leaf).register for leaf in bundle.Leaves] == before
    assert bundle.Follows == "as photographed"
    doc.redo()
    doc.recompute()
    assert close(core_leaf(bundle.Leaves[3]).register, REGISTERS[4]) and bundle.Follows == "log"
    sequence.unregister(bundle)
    doc.recompute()
    assert "as photographed" in bundle.Registers
    assert all(core_leaf(leaf).register == Motion() for leaf in bundle.Leaves)


@pytest.mark.parametrize(
    ("registers", "follows"),
    [
        ({1: Motion()}, "figure"),
        ({**REGISTERS, 3: Motion(mirrored=True)}, "figure"),
        (REGISTERS, "the moon"),
    ],
)
def test_registers_that_cannot_be_change_nothing(doc, bundle, registers, follows):
    before = [core_leaf(leaf).register for leaf in bundle.Leaves]
    with pytest.raises(VeneerError):
        sequence.apply_registers(bundle, registers, follows)
    assert [core_leaf(leaf).register for leaf in bundle.Leaves] == before
    assert doc.UndoCount == 0


# --- numbers -----------------------------------------------------------------------------------


def test_leaves_change_places_in_one_step(doc, bundle):
    first, second = bundle.Leaves[1], bundle.Leaves[3]
    first.Label = "My best leaf"
    sequence.unregister(bundle)  # so that nothing but the photographs tells the leaves apart
    match = add_match(doc, bundle, Ways=4, Diameter=120.0)
    doc.recompute()
    doc.clearUndos()
    marks = list(match.PieceMarks)
    pixels = first.Photo, second.Photo
    sequence.renumber(bundle, {2: 4, 4: 2})
    doc.recompute()
    assert (first.Number, first.Label, second.Number, second.Label) == (
        4, "My best leaf", 2, "Leaf 2",
    )
    assert (first.Photo, second.Photo) == pixels and bundle.Message == ""
    assert bundle.Numbers == [1, 2, 3, 4, 5, 6] and match.Message == ""
    assert match.PieceMarks[1] != marks[1]  # it shows another photograph now
    doc.undo()
    doc.recompute()
    assert (first.Number, second.Number, second.Label) == (2, 4, "Leaf 4")
    assert match.PieceMarks == marks


def test_leaves_move_up_into_a_gap(doc, bundle):
    sequence.renumber(bundle, {3: 9, 4: 3, 5: 4})
    sequence.renumber(bundle, {1: 2, 2: 1})
    doc.recompute()
    assert bundle.Leaves[0].Label == "Leaf 2"
    assert bundle.Numbers == [1, 2, 3, 4, 6, 9]
    assert sorted(leaf.Label for leaf in bundle.Leaves) == [f"Leaf {k}" for k in (1, 2, 3, 4, 6, 9)]


def test_numbers_that_clash_change_nothing(doc, bundle):
    for proposal in ({1: 2}, {12: 1}, {1: 0}):
        with pytest.raises(VeneerError):
            sequence.renumber(bundle, proposal)
    assert [leaf.Number for leaf in bundle.Leaves] == [1, 2, 3, 4, 5, 6] and doc.UndoCount == 0


def test_paper_made_before_leaves_changed_places_or_were_turned_is_stale(doc, bundle):
    sequence.unregister(bundle)  # so that nothing but the numbers tells the leaves apart
    match = add_match(doc, bundle, Ways=4, Diameter=120.0)
    doc.recompute()
    marks = [match.Revision]
    for change in (
        lambda: sequence.renumber(bundle, {1: 2, 2: 1}),
        lambda: sequence.turn_end(bundle.Leaves[0]),
        lambda: sequence.turn_over(bundle.Leaves[1]),
    ):
        change()
        doc.recompute()
        marks.append(match.Revision)
    assert match.Message == "" and len(set(marks)) == 4
    for _ in range(3):
        doc.undo()
    doc.recompute()
    assert match.Revision == marks[0]


# --- turning -----------------------------------------------------------------------------------


def pixels(seed, rows=60, columns=40):
    y, x = np.mgrid[0:rows, 0:columns]
    base = 120 + 60 * np.sin(x / 7.0 + seed) + 40 * np.cos(y / 9.0 - seed) + x
    return np.clip(np.stack([base, base * 0.8, base * 0.6], axis=-1), 0, 255).astype(np.uint8)


@pytest.fixture
def plain(doc):
    """Two leaves without registers, the back of leaf 2 photographed too."""
    photos = [Photo.of(pixels(k), 2.0, f"photo {k}.jpg") for k in (1, 2)]
    behind = Side(Photo.of(pixels(9, 64, 44), 2.0, "behind 2.jpg"))
    areas = box(4, 4, 70, 110), (Fault(box(10, 20, 20, 40)),)
    leaves = (
        Leaf(1, Side(photos[0]), None, *areas),
        Leaf(2, Side(photos[1]), behind, *areas),
    )
    made = add_bundle(doc, Bundle(leaves, 0.6, "own"))
    for leaf in made.Leaves:
        leaf.Marks = [Vector(5, 6, 0), Vector(30, 90, 2)]
    doc.recompute()
    doc.clearUndos()
    return made


def same_leaf(found, wanted):
    assert np.array_equal(found.photo, wanted.photo) and close(found.register, wanted.register)
    assert close(found.face.view, wanted.face.view)
    assert found.usable.symmetric_difference(wanted.usable).area < 1e-6
    assert found.faults[0].outline.symmetric_difference(wanted.faults[0].outline).area < 1e-6
    if wanted.back is not None:
        assert np.array_equal(found.back.photo, wanted.back.photo)
        assert close(found.back.register, wanted.back.register)
        assert close(found.back.view, wanted.back.view)


@pytest.mark.parametrize("k", [0, 1])
def test_a_leaf_is_turned_end_for_end_without_loss(doc, plain, k):
    leaf = plain.Leaves[k]
    before = core_leaf(leaf)
    wanted = turned_end_for_end(before, carry=False)
    sequence.turn_end(leaf)
    doc.recompute()
    same_leaf(core_leaf(leaf), wanted)
    assert [tuple(mark) for mark in leaf.Marks] == [(75, 114, 0), (50, 30, 2)]
    assert leaf.OriginalName == f"photo {k + 1}.jpg" and leaf.Message == ""
    assert doc.UndoCount == 1
    doc.undo()
    doc.recompute()
    same_leaf(core_leaf(leaf), before)
    doc.redo()
    doc.recompute()
    same_leaf(core_leaf(leaf), wanted)
    sequence.turn_end(leaf)
    doc.recompute()
    same_leaf(core_leaf(leaf), before)


def test_a_register_is_carried_round(doc, bundle):
    leaf = bundle.Leaves[2]
    before = core_leaf(leaf)
    assert before.back is not None and before.register != Motion()
    wanted = turned_end_for_end(before)
    sequence.turn_end(leaf)
    doc.recompute()
    found = core_leaf(leaf)
    assert close(found.register, wanted.register) and close(found.face.view, wanted.face.view)
    assert close(found.back.view, wanted.back.view)
    assert abs(found.register.angle) > 170


def test_the_first_leaf_of_a_registered_bundle_is_carried_round_too(doc, bundle):
    sequence.apply_registers(bundle, {**REGISTERS, 1: Motion()}, "figure")
    sequence.turn_end(bundle.Leaves[0])
    assert abs(core_leaf(bundle.Leaves[0]).register.angle) == 180.0


def test_a_leaf_without_another_photograph_is_turned_over(doc, plain):
    leaf = plain.Leaves[0]
    before = core_leaf(leaf)
    wanted = turned_over(before)
    leaf.Gains = [1.1, 1.0, 0.9]
    said = sequence.turn_over(leaf)
    doc.recompute()
    assert "Its face was not photographed" in said and leaf.Notes[-1] == said
    found = core_leaf(leaf, even=False)
    same_leaf(found, wanted)
    assert np.array_equal(found.back.photo, found.photo)
    assert leaf.Photo != leaf.BackPhoto and leaf.BackGains == leaf.Gains
    assert leaf.BackOriginalName == leaf.OriginalName == "photo 1.jpg"
    assert [tuple(mark) for mark in leaf.Marks] == [(75, 6, 0), (50, 90, 2)]
    assert plain.Message == "" and core_bundle(plain).leaf(1).back.source == "photo"
    doc.undo()
    doc.recompute()
    same_leaf(core_leaf(leaf, even=False), before)
    assert leaf.BackPhoto == "" and list(leaf.Notes) == []


def test_both_photographs_change_places(doc, plain):
    leaf = plain.Leaves[1]
    leaf.BackGains = [1.2, 1.2, 1.2]
    doc.clearUndos()
    before = core_leaf(leaf, even=False)
    wanted = turned_over(before)
    said = sequence.turn_over(leaf)
    doc.recompute()
    assert "changed places" in said
    same_leaf(core_leaf(leaf, even=False), wanted)
    assert (leaf.OriginalName, leaf.BackOriginalName) == ("behind 2.jpg", "photo 2.jpg")
    assert list(leaf.Gains) == [1.2, 1.2, 1.2] and list(leaf.BackGains) == []
    assert leaf.Width.Value == 88.0
    doc.undo()
    doc.recompute()
    same_leaf(core_leaf(leaf, even=False), before)


def test_a_register_of_the_other_side_is_taken_as_a_proof_finds_it(doc, plain):
    leaf = plain.Leaves[0]
    found = Motion(1.0, 79.0, 2.0, mirrored=True)
    with pytest.raises(VeneerError):
        sequence.turn_over(leaf, Motion(1.0, 2.0, 3.0))
    before = core_leaf(leaf)
    sequence.turn_over(leaf, found)
    register = core_leaf(leaf).register
    flipped = found.apply((20.0, 30.0)) * (-1, 1) + (before.size[0], 0)
    assert register.apply((20.0, 30.0)) == pytest.approx(flipped)


@pytest.mark.parametrize("over", [False, True])
def test_turned_leaves_survive_saving_and_copying(doc, plain, tmp_path, over):
    for leaf in plain.Leaves:
        (sequence.turn_over if over else sequence.turn_end)(leaf)
    doc.recompute()
    wanted = [core_leaf(leaf) for leaf in plain.Leaves]
    kept = [(leaf.photo.copy(), leaf.back and leaf.back.photo.copy()) for leaf in wanted]
    copy = doc.copyObject(plain.Leaves[1])
    same_leaf(core_leaf(copy), wanted[1])
    doc.saveAs(str(tmp_path / "turned.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "turned.FCStd")).getObject("Bundle")
    for leaf, (face, back) in zip(again.Leaves, kept):
        assert np.array_equal(core_leaf(leaf).photo, face)
        assert back is None or np.array_equal(core_leaf(leaf).back.photo, back)


def test_a_photograph_that_is_gone_is_not_taken_for_the_one_in_its_place(doc, plain):
    leaf = plain.Leaves[0]
    before = core_leaf(leaf)
    sequence.turn_end(leaf)
    with pytest.raises(VeneerError, match="another photograph"):
        before.photo  # noqa: B018
    turned = core_leaf(leaf).photo
    doc.undo()
    assert np.array_equal(core_leaf(leaf).photo, turned[::-1, ::-1])


# --- files -------------------------------------------------------------------------------------


@pytest.mark.parametrize("change", [end_for_end, mirrored])
@pytest.mark.parametrize("orientation", range(1, 9))
def test_a_jpeg_is_turned_by_its_mark_alone(tmp_path, change, orientation):
    exif = Image.Exif()
    exif[0x0112] = orientation
    path = str(tmp_path / "a.jpg")
    Image.fromarray(pixels(1)).save(path, quality=90, exif=exif)
    there = turning.changed_copy(path, change, str(tmp_path), "b")
    assert there.endswith("b.jpg")
    assert abs(os.path.getsize(there) - os.path.getsize(path)) < 200
    seen = Photo.read(path, 1.0).pixels
    assert np.array_equal(Photo.read(there, 1.0).pixels, change(seen))


@pytest.mark.parametrize("kind", ["png", "bmp", "tif"])
def test_other_pictures_are_saved_without_loss(tmp_path, kind):
    path = str(tmp_path / f"a.{kind}")
    Image.fromarray(pixels(1)).save(path)
    there = turning.changed_copy(path, mirrored, str(tmp_path), "b")
    assert there.endswith("b.png")
    assert np.array_equal(Photo.read(there, 1.0).pixels, pixels(1)[:, ::-1])

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Spots of a match that are kept: undone, saved, copied, deleted, known for old."""

import os
from pathlib import Path

import FreeCAD
import numpy as np
import pytest
from PIL import Image

from veneerwb.core import Placement
from veneerwb.host import compat, spots
from veneerwb.host.objects import add_bundle, add_match, layout
from veneerwb.paint import picture

HERE = Placement(100.0, 120.0, 75.0)


@pytest.fixture
def match(doc, sawn):
    made = add_match(doc, add_bundle(doc, sawn), Ways=4, Diameter=200.0)
    doc.recompute()
    doc.clearUndos()
    return made


@pytest.fixture
def moved(doc, match):
    """The match with its wedge where it can be told apart."""
    match.AutoPlacement, match.TipX, match.TipY, match.Axis = False, HERE.x, HERE.y, HERE.angle
    match.Turned = "even"  # leaves 2 and 4, whose backs were not photographed
    doc.recompute()
    doc.clearUndos()
    return match


def keep(match, name="Flame"):
    return spots.keep(match, layout(match), name)


def shown(spot):
    """The kept picture, rows x columns x 3."""
    return np.asarray(Image.open(spot.Picture).convert("RGB")).astype(float)


def test_a_spot_is_kept_with_its_name_and_its_picture(moved):
    spot = keep(moved)
    assert spot.Label == "Flame"
    assert spots.recipe(spot) == layout(moved).recipe
    assert spots.kept(moved) == [spot]
    assert (spot.Message, spot.Old) == ("", False)
    kept, true = shown(spot), picture(layout(moved), 1.0)[..., :3].astype(float)
    n = true.shape[0]  # the top's square in the middle of the picture, at the same scale
    side = round(len(kept) * 2 * 0.485)
    low = (len(kept) - side) // 2
    inner = Image.fromarray(kept[low : low + side, low : low + side].astype(np.uint8))
    inner = np.asarray(inner.resize((n, n), Image.BOX)).astype(float)
    middle = slice(n // 4, 3 * n // 4)
    assert np.abs(inner - true)[middle, middle].mean() < 6.0


def test_keeping_is_one_step_that_can_be_undone_and_done_again(doc, moved):
    names = {obj.Name for obj in doc.Objects}
    spot = keep(moved)
    assert doc.UndoNames == ["Keep spot"]
    before = shown(spot)
    doc.undo()
    assert {obj.Name for obj in doc.Objects} == names
    doc.redo()
    (again,) = spots.kept(moved)
    assert (again.Label, again.TipX.Value) == ("Flame", HERE.x)
    assert np.array_equal(shown(again), before)


def test_saved_and_reopened_a_kept_spot_is_the_same(doc, moved, tmp_path):
    spot = keep(moved)
    how, before = spots.recipe(spot), shown(spot)
    doc.saveAs(str(tmp_path / "kept.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "kept.FCStd"))
    (spot,) = spots.kept(again.getObject("Match"))
    assert spots.recipe(spot) == how
    assert np.array_equal(shown(spot), before)
    for obj in again.Objects:
        obj.touch()
    again.recompute()
    assert (spot.Message, spot.Old) == ("", False)


def test_a_copied_spot_has_a_picture_of_its_own(doc, moved):
    spot = keep(moved)
    copy = doc.copyObject(spot, False)
    doc.recompute()
    assert spots.kept(moved) == [spot, copy]
    assert os.path.abspath(copy.Picture) != os.path.abspath(spot.Picture)
    assert np.array_equal(shown(copy), shown(spot))
    doc.removeObject(spot.Name)
    assert os.path.exists(copy.Picture)


def test_a_deleted_spot_comes_back_by_undo_with_its_picture(doc, moved):
    first, second = keep(moved), keep(moved, "Other")
    before = shown(first)
    spots.drop([first])
    assert spots.kept(moved) == [second]
    doc.undo()
    first, second = spots.kept(moved)
    assert (first.Label, second.Label) == ("Flame", "Other")
    assert np.array_equal(shown(first), before)


def test_going_elsewhere_leaves_a_kept_spot_as_it_is(doc, moved):
    spot = keep(moved)
    how = spots.recipe(spot)
    moved.TipX, moved.Ways, moved.First = 60.0, 6, 1
    doc.recompute()
    assert spots.recipe(spot) == how
    assert not spot.Old


CHANGES = {
    "a register": lambda match: setattr(match.Bundle.Leaves[0], "RegisterX", 4.0),
    "the size": lambda match: setattr(match, "Diameter", 180.0),
    "the light": lambda match: setattr(match.Bundle.Leaves[0], "Gains", [1.2, 1.0, 0.9]),
    "the stack's sense": lambda match: setattr(match.Bundle, "Back", "own"),
}


@pytest.mark.parametrize("what", CHANGES)
def test_a_picture_is_known_for_old_when_what_it_shows_has_changed(doc, moved, what):
    spot = keep(moved)
    CHANGES[what](moved)
    doc.recompute()
    assert spot.Old
    spots.picture_anew(spot)
    assert not spot.Old
    doc.undo()
    assert spot.Old


def test_what_is_not_seen_makes_no_picture_old(doc, moved):
    spot = keep(moved)
    leaf = moved.Bundle.Leaves[5]  # four ways from leaf 1 on: it is not used
    assert leaf.Number == 6
    leaf.RegisterX, moved.Oversize = 5.0, 3.0
    doc.recompute()
    assert not spot.Old


def test_a_spot_that_can_no_longer_be_laid_says_why(doc, moved):
    spot = keep(moved)
    before = shown(spot)
    moved.Bundle.Leaves = moved.Bundle.Leaves[:3]
    doc.recompute()
    assert "4 ways need 4 leaves" in spot.Message
    assert np.array_equal(shown(spot), before)


def test_a_spot_without_its_match_says_so(doc, moved):
    spot = keep(moved)
    doc.removeObject(moved.Name)
    doc.recompute()
    assert "belongs to no match" in spot.Message


def test_a_renamed_spot_is_renamed_in_one_step(doc, moved):
    spot = keep(moved)
    spots.rename(spot, "Crown")
    assert spot.Label == "Crown"
    doc.undo()
    assert spot.Label == "Flame"


def test_a_failure_keeps_nothing(doc, moved, monkeypatch):
    names = {obj.Name for obj in doc.Objects}

    def fails(*_):
        raise RuntimeError("no room on the disk")

    monkeypatch.setattr(spots, "save_jpeg", fails)
    with pytest.raises(RuntimeError):
        keep(moved)
    assert {obj.Name for obj in doc.Objects} == names
    assert doc.UndoNames == []


def test_spots_of_a_stock_are_kept_without_a_picture(doc, stock):
    match = add_match(doc, stock, Ways=8, Diameter=600.0)
    doc.recompute()
    spot = keep(match)
    assert (spot.Picture, spot.Old, spot.Message) == ("", False, "")


# --- documents that hold kept spots ------------------------------------------------------------

SAVED = sorted((Path(__file__).parents[1] / "fixtures").glob("spots2-*.FCStd"))


@pytest.mark.parametrize("path", SAVED, ids=lambda path: path.stem)
def test_spots_kept_by_an_older_version_are_the_same_and_alive(path, tmp_path):
    if tuple(int(part) for part in path.stem.split("-")[1].split(".")) > compat.version():
        pytest.skip("saved by a newer host")
    copy = tmp_path / path.name
    copy.write_bytes(path.read_bytes())
    doc = FreeCAD.openDocument(str(copy))
    try:
        match = doc.getObject("Match")
        first, second = spots.kept(match)
        assert all(spot.SchemaVersion == spot.Proxy.version for spot in (first, second))
        before = [shown(spot) for spot in (first, second)]
        assert [picture.shape for picture in before] == [(512, 512, 3)] * 2
        for obj in doc.Objects:
            obj.touch()
        doc.recompute()
        assert [obj.Message for obj in (match, first, second)] == [""] * 3
        assert (first.Label, second.Label) == ("Flame", "Second")
        assert list(first.Measures) == [4.5, 0.25, 1.5, 2.0] and list(second.Measures) == []
        assert (first.Old, second.Old) == (False, True)
        assert spots.recipe(first) == layout(match).recipe
        how = spots.recipe(second)
        assert (how.placement, how.turn, how.ways) == (Placement(100.0, 320.0, 75.0), "slip", 4)
        assert [np.array_equal(shown(s), was) for s, was in zip((first, second), before)] == [
            True, True,
        ]  # fmt: skip
        assert match.HiddenDisc.Value == 60.0
        assert {one.code for one in match.Proxy.found} & {"fault-seen", "fault-covered"} == {
            "fault-covered"
        }
        spots.picture_anew(second)
        assert not second.Old
        match.Bundle.Leaves[1].RegisterX = 4.0
        doc.recompute()
        assert first.Old and second.Old
    finally:
        FreeCAD.closeDocument(doc.Name)


def test_a_picture_that_went_is_taken_out_of_the_saved_document(doc, match, tmp_path):
    spot = keep(match)
    doc.saveAs(str(tmp_path / "Spots.FCStd"))
    before = shown(spot)
    os.unlink(spot.Picture)
    doc.save()
    assert np.array_equal(shown(spot), before)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Backs in a document: added, tied, what they tell kept and used."""

import os
from dataclasses import replace
from pathlib import Path

import FreeCAD
import numpy as np
import pytest
from PIL import Image

from veneerwb.core import Motion, VeneerError
from veneerwb.core.leaf import Bundle
from veneerwb.core.sides import measured_wander, tied
from veneerwb.core.sides.lying import tie_of
from veneerwb.core.sides.wander import pinned
from veneerwb.host import backs, imports, values
from veneerwb.host.objects import add_bundle, add_match, core_bundle
from veneerwb.host.sequence import apply_registers, apply_ties

TIE = Motion(2.0, 7.0, -4.0)
MARKS = np.array([(20.0, 30.0), (180.0, 35.0), (100.0, 370.0)])
FIXTURES = Path(__file__).parents[1] / "fixtures"


def refused(code, act, *args):
    with pytest.raises(VeneerError) as caught:
        act(*args)
    assert caught.value.code == code


def settle(doc):
    doc.recompute()
    doc.clearUndos()


@pytest.fixture
def plain(doc, sawn):
    """A bundle that follows its figure, no back photographed."""
    bare = tuple(replace(leaf, back=None) for leaf in sawn.leaves)
    made = add_bundle(doc, replace(sawn, leaves=bare))
    made.Follows = "figure"
    settle(doc)
    return made


@pytest.fixture
def bundle(doc, sawn):
    """The same with the backs of leaves 1 and 3, in place."""
    made = add_bundle(doc, sawn)
    made.Follows = "figure"
    settle(doc)
    return made


@pytest.fixture
def photograph(tmp_path, sawn):
    """A photograph of leaf 2's back as the camera sees it, and its pixels."""
    pixels = np.ascontiguousarray(sawn.leaf(3).photo)
    path = tmp_path / "back 2.png"
    Image.fromarray(pixels[:, ::-1]).save(path)
    return path, pixels


def measured(obj):
    return measured_wander(values.plain_bundle(obj))


# --- photographs --------------------------------------------------------------------------------


def test_a_back_is_added_as_seen_from_the_face_at_the_faces_scale(
    doc, plain, photograph, tmp_path
):
    path, pixels = photograph
    ready = backs.made_ready(plain, {2: path}, str(tmp_path))
    assert core_bundle(plain).leaf(2).back.source == "neighbour", "nothing is touched before"
    backs.add_backs(plain, ready)
    doc.recompute()
    back = core_bundle(plain).leaf(2).back
    assert (back.source, back.mm_per_px) == ("photo", pytest.approx(2.0))
    assert np.abs(back.photo.astype(int) - pixels).mean() < 3.0, "flipped, and a JPEG"
    assert plain.Leaves[1].BackOriginalName == "back 2.png" and doc.UndoCount == 1
    doc.undo()
    assert core_bundle(plain).leaf(2).back.source == "neighbour"


def test_the_scale_of_a_back_can_be_said(plain, photograph, tmp_path):
    ready = backs.made_ready(plain, {2: photograph[0]}, str(tmp_path), 1.25)
    assert ready[2].mm_per_px == pytest.approx(1.25)


def test_backs_of_one_name_in_two_folders_are_called_by_their_names(
    doc, sawn, plain, tmp_path
):
    paths = {}
    for number in (2, 3):
        paths[number] = tmp_path / str(number) / "back.png"
        paths[number].parent.mkdir()
        Image.fromarray(sawn.leaf(number).photo[:, ::-1]).save(paths[number])
    backs.add_backs(plain, backs.made_ready(plain, paths, str(tmp_path)))
    assert [plain.Leaves[k].BackOriginalName for k in (1, 2)] == ["back.png", "back.png"]


def test_backs_are_numbered_by_their_names(plain):
    numbers = core_bundle(plain).numbers
    found = backs.numbered([Path("b 03.jpg"), Path("b 1.jpg")], numbers)
    assert found == {1: Path("b 1.jpg"), 3: Path("b 03.jpg")}
    refused("back-of-no-leaf", backs.numbered, [Path("b 9.jpg")], numbers)


def test_another_photograph_forgets_what_tied_the_first(doc, bundle, photograph, tmp_path):
    leaf = core_bundle(bundle).leaf(1)
    apply_ties(bundle, {1: tied(leaf, (MARKS, TIE.apply(MARKS)))})
    backs.add_backs(bundle, backs.made_ready(bundle, {1: photograph[0]}, str(tmp_path)))
    doc.recompute()
    assert 1 not in backs.kept_ties(bundle)
    back = core_bundle(bundle).leaf(1).back
    assert back.register == back.view == leaf.register


# --- ties ---------------------------------------------------------------------------------------


def test_a_tie_lays_the_back_and_the_document_keeps_how(doc, bundle, tmp_path):
    leaf = core_bundle(bundle).leaf(3)
    tie = tied(leaf, (MARKS, TIE.apply(MARKS) + [(0.3, 0), (-0.3, 0), (0, 0)]))
    apply_ties(bundle, {3: tie})
    doc.recompute()
    assert doc.UndoCount == 1
    path = str(tmp_path / "tied.FCStd")
    doc.saveAs(path)
    FreeCAD.closeDocument(doc.Name)
    obj = FreeCAD.openDocument(path).getObject("Bundle")
    kept = backs.kept_ties(obj)[3]
    assert (kept.by, kept.rms, kept.error_mm) == (
        "marks", pytest.approx(tie.rms), pytest.approx(tie.error_mm))
    back = core_bundle(obj).leaf(3).back
    assert back.register == leaf.register
    assert np.allclose(back.view.apply(MARKS), (tie.motion @ leaf.register).apply(MARKS))


def test_where_a_back_was_laid_by_a_script_that_is_said(bundle):
    ties = backs.kept_ties(bundle)
    assert {number: tie.by for number, tie in ties.items()} == {1: "placed", 3: "placed"}


# --- wander -------------------------------------------------------------------------------------


def test_a_wander_that_is_kept_shows_turned_leaves_where_it_puts_them(doc, bundle):
    before, found = core_bundle(bundle), measured(bundle)
    assert found.known and abs(found.along) > 5.0, "or the test tells nothing"
    backs.keep_wander(bundle, found)
    doc.recompute()
    after, shift = core_bundle(bundle), Motion(dx=found.across, dy=found.along)
    assert [leaf.back.source for leaf in after.leaves] == [
        "photo", "wander", "photo", "wander", "wander", "own face"]
    for number, shown in ((2, after.leaf(3).face.view), (6, after.leaf(6).face.view)):
        back = after.leaf(number).back
        assert back.register == after.leaf(number).register
        assert np.allclose((back.view @ shift).apply(MARKS), shown.apply(MARKS))
    assert after.wander() == pytest.approx(found.left) and found.left < before.wander()
    doc.undo()
    doc.recompute()
    assert core_bundle(bundle).leaf(2).back.source == "neighbour" and list(bundle.Wander) == []


def test_checks_say_by_how_much_seams_may_miss_once_the_wander_is_known(doc, bundle):
    match = add_match(doc, bundle, Ways=4, Diameter=160.0, Turned="even")

    def said():
        doc.recompute()
        assert match.Message == ""
        return next(text for text in match.Findings if "may miss by" in text)

    assert "measured" not in said()
    found = measured(bundle)
    backs.keep_wander(bundle, found)
    assert f"{round(found.left, 3):g} mm by the wander measured on photographed backs" in said()
    assert "give the bundle's slope" not in said(), "it is not asked for any more"


def test_pinned_by_the_figure_every_back_is_cut_the_wander_further_on(doc, bundle):
    found = measured(bundle)
    before = core_bundle(bundle)
    backs.keep_wander(bundle, found, "figure")
    doc.recompute()
    after, shift = core_bundle(bundle), Motion(dx=found.across, dy=found.along)
    own = {p.leaf: p.motion for p in found.passages}
    for leaf in before.leaves:
        wanted = own[leaf.number] @ leaf.register if leaf.number in own else leaf.register @ shift
        assert np.allclose(
            after.leaf(leaf.number).back.register.apply(MARKS), wanted.apply(MARKS), atol=1e-6)
    # The photographed back is seen at the same place of the leaf as before.
    for number in own:
        ties = [b.leaf(number).back.view @ b.leaf(number).back.register.inverse()
                for b in (before, after)]
        assert np.allclose(ties[0].apply(MARKS), ties[1].apply(MARKS))
    backs.set_pin(bundle, "face")
    doc.recompute()
    for leaf in core_bundle(bundle).leaves:
        assert np.allclose(leaf.back.register.apply(MARKS), leaf.register.apply(MARKS))


@pytest.mark.parametrize("follows, source", [("log", "wander"), ("as photographed", "neighbour")])
def test_what_the_stack_follows_decides_what_a_wander_is_good_for(doc, bundle, follows, source):
    found = measured(bundle)
    backs.keep_wander(bundle, found, "figure")
    here = core_bundle(bundle)
    apply_registers(bundle, {leaf.number: leaf.register for leaf in here.leaves}, follows)
    doc.recompute()
    laid = core_bundle(bundle)
    two, three = laid.leaf(2), laid.leaf(3)
    assert (two.back.source, two.back.view) == (source, three.face.view)
    assert two.back.register == two.register
    if follows == "log":
        assert laid.wander() == pytest.approx(found.left)
        assert np.allclose(three.back.register.apply(MARKS), three.register.apply(MARKS))
    else:
        assert laid.wander() == pytest.approx(found.length + found.left)


def lying(obj, number):
    """How a leaf's back is tied to it, and how far on the leaf it is pinned off its face (mm)."""
    leaf = values.plain_bundle(obj).leaf(number)
    onto = leaf.back.register @ leaf.register.inverse()
    return tie_of(leaf), np.hypot(onto.dx, onto.dy)


def test_backs_stay_tied_and_keep_their_passages_however_often_leaves_are_registered(doc, bundle):
    """What a wander adds to a back is never written down with it, and so not added again."""
    found = measured(bundle)
    apply_ties(bundle, {n: tied(core_bundle(bundle).leaf(n), (MARKS, TIE.apply(MARKS)))
                        for n in (1, 3)})
    # Leaf 1 follows its own passage, that of leaf 3 is not known: its BackRegister stays empty.
    own = Motion(0.2, 0.5, 8.0)
    bundle.Wander, bundle.PinBacks = [found.across, found.along, found.left], "figure"
    leaf = values.core_leaf(bundle.Leaves[0])
    imports.place_registers(bundle.Leaves[0], pinned(leaf, (0.0, 0.0), "figure", own))
    doc.recompute()
    assert list(bundle.Leaves[2].BackRegister) == [], "or the test tells nothing"
    before = {n: lying(bundle, n) for n in (1, 3)}
    assert before[1][1] == pytest.approx(np.hypot(0.5, 8.0))
    assert before[3][1] == pytest.approx(found.length)
    rng = np.random.default_rng(1)
    for follows in (
        "figure", "log", "figure", "figure", "marks", "as photographed", "figure", "figure",
    ):
        registers = {n: Motion(0.0, *rng.normal(0, 3, 2)) for n in core_bundle(bundle).numbers}
        apply_registers(bundle, registers, follows)
        doc.recompute()
        for number, (tie, off) in before.items():
            here, now = lying(bundle, number)
            assert np.allclose(here.apply(MARKS), TIE.apply(MARKS), atol=1e-6), (follows, number)
            assert np.allclose(here.apply(MARKS), tie.apply(MARKS), atol=1e-6)
            if follows in ("figure", "marks"):
                assert now == pytest.approx(off, abs=1e-6), (follows, number)


def test_pinned_by_the_figure_again_a_back_that_has_its_own_place_keeps_it(doc, bundle):
    found = measured(bundle)
    backs.keep_wander(bundle, found, "figure")
    places = [list(bundle.Leaves[k].BackRegister) for k in (0, 2)]
    assert places[0] and places[0] != places[1]
    backs.set_pin(bundle, "figure")
    assert [list(bundle.Leaves[k].BackRegister) for k in (0, 2)] == places
    registers = {n: core_bundle(bundle).leaf(n).register for n in core_bundle(bundle).numbers}
    apply_registers(bundle, registers, "log")
    backs.set_pin(bundle, "figure")
    assert np.allclose(bundle.Leaves[0].BackRegister, places[0]), "nor does the log lose it"
    apply_registers(bundle, registers, "figure")
    backs.set_pin(bundle, "face")
    backs.set_pin(bundle, "figure")
    doc.recompute()
    for number in (1, 3):
        assert lying(bundle, number)[1] == pytest.approx(found.length), "the bundle's now"


@pytest.mark.parametrize("written", [[1.0], [1.0, 2.0], [1.0, 2.0, 3.0, 4.0]])
def test_what_is_written_by_hand_and_is_no_wander_is_none(doc, bundle, written):
    bundle.Wander = written
    doc.recompute()
    assert bundle.Message == "" and type(core_bundle(bundle)) is Bundle
    backs.set_pin(bundle, "figure")
    assert type(core_bundle(bundle)) is Bundle


def test_a_wander_that_is_not_known_is_not_kept_and_none_forgets_it(doc, bundle, plain):
    unknown = measured(plain)
    refused("wander-unknown", backs.keep_wander, plain, unknown)
    backs.keep_wander(bundle, measured(bundle))
    backs.keep_wander(bundle, None)
    assert type(core_bundle(bundle)) is Bundle


def test_the_sense_is_said_in_one_step(doc, plain):
    backs.set_sense(plain, "previous")
    doc.recompute()
    assert core_bundle(plain).back == "previous" and doc.UndoCount == 1
    refused("unknown-choice", backs.set_sense, plain, "sideways")


def test_a_document_of_an_older_version_knows_no_wander(doc):
    opened = FreeCAD.openDocument(os.fspath(FIXTURES / "schema1-0.20.2.FCStd"))
    obj = opened.getObject("Bundle")
    assert (list(obj.Wander), obj.PinBacks) == ([], "face")
    assert type(core_bundle(obj)) is Bundle and obj.Leaves[0].BackTie == ""

# SPDX-License-Identifier: LGPL-2.1-or-later
"""How what differs is cut, as a property of a match: it makes the cuts, and older documents open
with one stack."""

import FreeCAD
import pytest

from veneerwb.core.shop.cutlist import as_csv
from veneerwb.host import compat, kinds
from veneerwb.host.objects import add_drawing, add_match, layout

RINGS = {"InnerWays": 4, "InnerDiameter": 300.0, "StripWidth": 400.0, "Ways": 8}

QUARTERS = ("Centre and butt", "Diamond", "Reverse diamond")


@pytest.fixture
def match(doc, stock):
    made = add_match(doc, stock, Top="Oval", Length=1000.0, Width=700.0, **RINGS)
    doc.recompute()
    return made


def test_the_choices_are_the_cores_and_one_stack_is_the_first(match):
    from veneerwb.core.layout import CUTS

    assert tuple(kinds.CUTS.values()) == CUTS
    assert match.getEnumerationsOfProperty("CutAs") == list(kinds.CUTS)
    assert match.CutAs == "one stack" and "Hidden" not in match.getEditorMode("CutAs")


@pytest.mark.parametrize("kind", kinds.KINDS)
def test_the_property_makes_the_cuts_of_every_kind(doc, match, kind):
    match.Kind = kind
    counts, marks = [], []
    for name, how in kinds.CUTS.items():
        match.CutAs = name
        doc.recompute()
        laid = layout(match)
        assert (match.Message, laid.cut_as, match.CutAs) == ("", how, name)
        counts.append(len(laid.cuts))
        marks.append(match.Revision)
    stack, shape, own = counts
    assert own == len(set(match.LeafOrder)) >= shape >= stack
    assert (shape > stack) == (kind not in QUARTERS), "else an oval's pieces differ"
    assert len(set(marks)) == 3


def test_another_way_of_cutting_makes_no_new_shape_and_chooses_no_leaf(doc, match):
    before = match.ShapeMark, match.LeafOrder, match.ChosenBy
    match.CutAs = "lots by shape"
    doc.recompute()
    assert (match.ShapeMark, match.LeafOrder, match.ChosenBy) == before
    assert match.ChangedPieces == []


def test_findings_list_and_drawing_follow_the_choice(doc, match):
    drawing = add_drawing(doc, match)
    doc.recompute()
    first = drawing.Revision
    assert any("cut as one stack" in line for line in match.Findings)
    assert "cut as,one stack" in as_csv(layout(match))
    match.CutAs = "lots by shape"
    doc.recompute()
    assert any("lots by shape, each set out" in line for line in match.Findings)
    assert not any("cut as one stack" in line for line in match.Findings)
    assert "cut as,lots by shape" in as_csv(layout(match))
    assert drawing.Revision == match.Revision != first


def test_undo_and_a_saved_document_bring_the_choice_back(doc, match, tmp_path):
    doc.openTransaction("Cut")
    match.CutAs = "single pieces"
    doc.recompute()
    doc.commitTransaction()
    after, name = match.Revision, match.Name
    doc.undo()
    assert match.CutAs == "one stack" and match.Revision != after
    doc.redo()
    assert (match.CutAs, match.Revision) == ("single pieces", after)
    doc.saveAs(str(tmp_path / "cuts.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "cuts.FCStd"))
    found = again.getObject(name)
    found.touch()
    again.recompute()
    assert (found.CutAs, found.Revision, len(layout(found).cuts)) == ("single pieces", after, 8)


def test_a_match_that_lacks_the_choice_is_one_stack_and_gets_it(doc, match):
    """As a document from before there was one."""
    revision = match.Revision
    try:
        match.setPropertyStatus("CutAs", "-LockDynamic")
    except (ValueError, TypeError, RuntimeError):
        compat.log("this host cannot lock")
    assert match.removeProperty("CutAs") and not hasattr(match, "CutAs")
    assert layout(match).cut_as == "stack", "views ask before it is brought up to date"
    match.Proxy.onDocumentRestored(match)
    match.touch()
    doc.recompute()
    assert (match.CutAs, match.Revision, match.Message) == ("one stack", revision, "")


def test_an_expression_may_set_it(doc, match):
    sheet = doc.addObject("Spreadsheet::Sheet", "Cells")
    sheet.set("A1", "lots by shape")
    doc.recompute()
    match.setExpression("CutAs", "Cells.A1")
    doc.recompute()
    assert match.CutAs == "lots by shape" and layout(match).cut_as == "shape"

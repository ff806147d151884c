# SPDX-License-Identifier: LGPL-2.1-or-later
"""The drawing of a match in a document without a window: it follows, refuses, and goes."""

import math
import re

import FreeCAD
import pytest

from veneerwb import words as spoken
from veneerwb.core.shop.cutlist import rows
from veneerwb.host import compat, sheets
from veneerwb.host.objects import add_bundle, add_drawing, add_match, layout
from veneerwb.host.objects.drawing import page_of


@pytest.fixture
def drawing(doc, match):
    made = add_drawing(doc, match, Title="Top", DrawnBy="N. N.")
    doc.recompute()
    return made


@pytest.fixture
def said(monkeypatch):
    lines = []
    monkeypatch.setattr(compat, "say", lines.append)
    return lines


def text(drawing, role):
    return list(sheets.views_of(drawing)[f"text {role}"].Text)


def figure(drawing, role):
    return sheets.views_of(drawing)[f"figure {role}"].Symbol


def words(drawing, role):
    return re.findall(r">([^<>]+)</text>", figure(drawing, role))


def state(drawing):
    """All that the page shows."""
    views = sheets.views_of(drawing)
    return {r: v.Symbol if "Symbol" in v.PropertiesList else list(v.Text) for r, v in views.items()}


def check_numbers(drawing, match):
    laid = layout(match)
    ways, half = len(laid.pieces), math.pi / len(laid.pieces)
    radius = match.Diameter.Value / 2.0
    assert drawing.Message == "" and drawing.Revision == match.Revision == laid.revision
    assert text(drawing, "heading") == [f"{ways} ways"]
    assert f"Plan, scale {drawing.Scale}." in text(drawing, "notes")
    net = [
        line for k in (1, 2) for line in text(drawing, f"net {k}")[2:]
    ]
    assert net == [f"{r.net_across:.1f} x {r.net_along:.1f}" for r in rows(laid)]
    wedge = words(drawing, "wedge")
    assert {
        f"{radius:.1f}",
        f"{2.0 * radius * math.sin(half):.1f}",
        f"rise {radius * (1.0 - math.cos(half)):.1f}",
        f"{360.0 / ways:g}\N{DEGREE SIGN}",
    } <= set(wedge)
    base = drawing.SetOutBase.Value
    assert drawing.SetOutOffset.Value == pytest.approx(base * math.tan(half), rel=1e-12)
    assert words(drawing, "set-out").count(f"{base * math.tan(half):.1f}") == 2
    block = words(drawing, "title block")
    assert {str(ways), drawing.Scale, drawing.WedgeScale, match.Revision, "Top"} <= set(block)


def test_the_numbers_are_the_models_while_the_match_changes(doc, match, drawing):
    check_numbers(drawing, match)
    for name, value in (("Ways", 12), ("Ways", 24), ("Diameter", 300.0), ("Diameter", 3000.0)):
        setattr(match, name, value)
        doc.recompute()
        check_numbers(drawing, match)
        assert not [obj.Name for obj in doc.Objects if "Touched" in obj.State]


def test_what_stands_against_cutting_is_on_the_page_in_every_language(doc, match, drawing):
    levels = {"stop": "Halt", "warn": "Warnung"}
    try:
        spoken.speak(lambda text: levels.get(text, text))
        match.Diameter = 4000.0
        doc.recompute()
        notes = " ".join(text(drawing, "notes"))
    finally:
        spoken.speak()
    assert any(one.startswith("Halt:") for one in match.Findings)
    assert "Halt: " in notes and "note: " not in notes


def test_undo_and_redo_bring_the_page_with_them(doc, match, drawing):
    before = state(drawing)
    doc.openTransaction("ways")
    match.Ways = 12
    doc.recompute()
    doc.commitTransaction()
    after = state(drawing)
    assert after != before
    for step, expected in ((doc.undo, before), (doc.redo, after), (doc.undo, before)):
        step()
        doc.recompute()
        assert state(drawing) == expected
        check_numbers(drawing, match)


def test_making_a_drawing_is_one_step(doc, match):
    names = {obj.Name for obj in doc.Objects}
    doc.openTransaction("drawing")
    drawing = add_drawing(doc, match)
    doc.recompute()
    doc.commitTransaction()
    shown = state(drawing)
    doc.undo()
    assert {obj.Name for obj in doc.Objects} == names
    doc.redo()
    doc.recompute()
    assert state(doc.getObject("Drawing")) == shown


def test_a_saved_drawing_opens_and_goes_on_following(doc, match, drawing, tmp_path):
    shown = state(drawing)
    doc.saveAs(str(tmp_path / "drawn.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "drawn.FCStd"))
    drawing, match = again.getObject("Drawing"), again.getObject("Match")
    assert state(drawing) == shown
    match.Ways = 24
    again.recompute()
    check_numbers(drawing, match)


def test_a_page_laid_out_by_another_host_is_laid_out_anew(doc, drawing, tmp_path, monkeypatch):
    doc.saveAs(str(tmp_path / "drawn.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    monkeypatch.setattr(compat, "symbol_scale", lambda: 0.5)
    again = FreeCAD.openDocument(str(tmp_path / "drawn.FCStd"))
    views = sheets.views_of(again.getObject("Drawing"))
    assert views["figure plan"].Scale == 0.5


def test_a_refused_match_leaves_the_page_and_says_so_on_it(doc, match, drawing, said):
    before = state(drawing)
    match.Ways = 7
    doc.recompute()
    assert match.Message in drawing.Message and said[-1] == f"Drawing: {drawing.Message}"
    after = state(drawing)
    assert after.pop("text stale")[0].startswith("NOT UP TO DATE: Match was refused")
    assert before.pop("text stale") == [""]
    assert after == before
    match.Ways = 8
    doc.recompute()
    assert text(drawing, "stale") == [""]
    check_numbers(drawing, match)


def test_a_match_that_was_never_laid_is_not_said_to_be_shown(doc, match):
    other = add_match(doc, match.Bundle, Ways=5)
    doc.recompute()
    made = add_drawing(doc, other)
    doc.recompute()
    assert "no layout of it stands yet" in made.Message and "last good" not in made.Message


def test_a_deleted_match_is_missed_in_one_sentence(doc, match, drawing, said):
    doc.removeObject(match.Name)
    doc.recompute()
    assert said == [f"Drawing: {drawing.Message}"]
    assert drawing.Message == "The drawing has no match; link it to one, or delete it."
    assert "no match" in " ".join(text(drawing, "stale"))
    assert text(drawing, "heading") == ["16 ways"]


def test_a_bad_base_is_refused(doc, match, drawing):
    drawing.Base = 800.0
    doc.recompute()
    assert drawing.SetOutBase.Value == 800.0
    drawing.Base = 1e9
    doc.recompute()
    assert "base of the set-out" in drawing.Message and drawing.SetOutBase.Value == 800.0


def test_a_drawing_whose_page_is_gone_says_so(doc, drawing):
    for view in [*sheets.views_of(drawing).values()]:
        doc.removeObject(view.Name)
    drawing.touch()
    doc.recompute()
    assert drawing.Message.startswith("Its page is gone")


def test_a_view_that_was_taken_away_is_not_missed(doc, match, drawing):
    doc.removeObject(sheets.views_of(drawing)["figure set-out"].Name)
    match.Ways = 12
    doc.recompute()
    assert drawing.Message == "" and text(drawing, "heading") == ["12 ways"]


def test_a_drawing_goes_with_its_page_and_comes_back_with_it(doc, match, drawing):
    count, shown = len(doc.Objects), state(drawing)
    doc.openTransaction("remove")
    sheets.remove_page(drawing)
    doc.removeObject(drawing.Name)
    doc.commitTransaction()
    doc.recompute()
    assert [obj.Name for obj in doc.Objects] == ["Stock", "Match"]
    doc.undo()
    doc.recompute()
    drawing = doc.getObject("Drawing")
    assert len(doc.Objects) == count and state(drawing) == shown
    assert page_of(drawing).Template is not None


def test_a_page_outlives_its_drawing(doc, match, drawing):
    page, view = page_of(drawing), sheets.views_of(drawing)["text heading"]
    doc.removeObject(drawing.Name)
    match.Ways = 12
    doc.recompute()
    assert page.isValid() and view.isValid() and view.Text == ["16 ways"]


def test_two_drawings_of_one_match_do_not_disturb_each_other(doc, match, drawing):
    other = add_drawing(doc, match, Title="Other")
    match.Ways = 12
    doc.recompute()
    assert page_of(other) is not page_of(drawing)
    assert "Other" in words(other, "title block") and "Top" in words(drawing, "title block")


def test_nothing_is_made_if_making_it_fails(doc, match, monkeypatch):
    names = [obj.Name for obj in doc.Objects]
    monkeypatch.setattr(sheets, "_name", lambda role: 1 / (role != sheets.STALE) and "View")
    with pytest.raises(ZeroDivisionError):
        add_drawing(doc, match)
    assert [obj.Name for obj in doc.Objects] == names


def test_only_what_changed_is_touched(doc, match, drawing, monkeypatch):
    written = []
    monkeypatch.setattr(sheets, "setattr", lambda *a: written.append(a[1]), raising=False)
    drawing.touch()
    doc.recompute()
    assert written == []
    drawing.Title = "Another"
    doc.recompute()
    assert written == ["Symbol"]


def test_the_picture_is_remade_only_for_another_layout(doc, sawn, monkeypatch):
    match = add_match(doc, add_bundle(doc, sawn), Ways=4, Diameter=300.0)
    drawing = add_drawing(doc, match)
    doc.recompute()
    assert "data:image/jpeg" in figure(drawing, "picture")
    made = []
    true = sheets._preview
    monkeypatch.setattr(sheets, "_preview", lambda laid: made.append(1) or true(laid))
    drawing.Title = "Another"
    doc.recompute()
    assert made == []
    before = figure(drawing, "picture")
    match.Ways = 6
    doc.recompute()
    assert made == [1] and figure(drawing, "picture") != before


def test_a_stock_has_no_picture_and_all_else(drawing, match):
    assert "image" not in figure(drawing, "picture").replace('xmlns:xlink="', "")
    check_numbers(drawing, match)


def test_an_order_list_fits_the_title_block(doc, match, drawing):
    match.Order = ", ".join(map(str, range(16, 0, -1)))
    doc.recompute()
    assert "book, as listed" in words(drawing, "title block")
    assert text(drawing, "leaf 1")[2:] == [str(n) for n in range(16, 8, -1)]


def test_all_views_share_one_axis_so_that_no_host_shifts_them(drawing):
    assert len({view.X.Value for view in sheets.views_of(drawing).values()}) == 1

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The core's pages on the host's: made, refreshed, told to be old, and taken away again."""

import re

import FreeCAD
import pytest

from veneerwb.core.shop.drawing.drawn import Letters
from veneerwb.core.shop.drawing.page import blank_page, numbered, table
from veneerwb.host import bench as benches
from veneerwb.host import compat, shop_pages
from veneerwb.host.objects import add_bundle, add_match
from veneerwb.host.objects.bench import add_bench
from veneerwb.host.objects.closing import add_closing


@pytest.fixture
def codes(monkeypatch):
    """The sheets that a bench gets, by their codes; each lists its layout's leaves."""
    wanted = ["plan", "list"]

    def sheets(there):
        pages = []
        for code in wanted:
            page, free = blank_page(there.look, code, f"The {code}")
            rows = [(str(p.position), f"leaf {p.leaf}") for p in there.layout.pieces]
            table(page.drawing, free, ("pos", "what it is cut from"), rows)
            pages.append(page)
        return numbered(pages)

    monkeypatch.setattr(benches, "sheets", sheets)
    return wanted


@pytest.fixture
def bench(doc, match, codes):
    made = add_bench(doc, match, Title="Top <&>", Owner="The shop")
    doc.recompute()
    refresh(made)
    return made


def refresh(bench):
    benches.refresh(bench)
    bench.Document.recompute()


def words(page):
    """All that a page says, in its views and its figure."""
    views = page.Views
    said = [line for v in views if "Text" in v.PropertiesList for line in v.Text]
    for view in views:
        if "Symbol" in view.PropertiesList:
            said += re.findall(r">([^<>]+)</text>", view.Symbol)
    return [one.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&") for one in said]


def stale(bench):
    return [
        line
        for page in shop_pages.pages_of(bench).values()
        for view in page.Views
        if view.SheetRole == "stale"
        for line in view.Text
    ]


def test_every_letter_of_the_sheets_is_on_the_pages(bench, match):
    pages = benches.sheets(benches.at_bench(bench))
    made = shop_pages.pages_of(bench)
    assert list(made) == ["plan", "list"]
    for page in pages:
        wanted = sorted(m.text for m in page.drawing.marks if isinstance(m, Letters) and m.text)
        assert sorted(word for word in words(made[page.code]) if word) == wanted
    assert bench.Revision == match.Revision and bench.State == "" and bench.Date
    assert stale(bench) == ["", ""]
    assert not [one.Name for one in bench.Document.Objects if "Touched" in one.State]


def test_pages_say_that_they_are_old_until_they_are_refreshed(doc, bench, match):
    old = words(shop_pages.pages_of(bench)["plan"])
    match.Ways = 12
    doc.recompute()
    assert match.Revision in bench.State
    said = stale(bench)
    assert len(said) == 2 and all(line.startswith("NOT UP TO DATE") for line in said)
    now = words(shop_pages.pages_of(bench)["plan"])
    assert [w for w in now if w not in said] == [w for w in old if w]
    refresh(bench)
    assert bench.State == "" and set(stale(bench)) == {""}
    said = words(shop_pages.pages_of(bench)["plan"])
    assert "leaf 12" in said and "leaf 13" not in said
    assert not [one.Name for one in doc.Objects if "Touched" in one.State]


def test_what_the_title_block_says_makes_them_old_too(doc, bench):
    bench.Owner = "Another"
    doc.recompute()
    assert "refresh" in bench.State
    refresh(bench)
    assert "Another" in words(shop_pages.pages_of(bench)["list"]) and bench.State == ""


def test_sheets_come_and_go_with_a_refresh(doc, bench, codes):
    codes[:] = ["list", "section"]
    kept = shop_pages.pages_of(bench)["list"].Name
    refresh(bench)
    pages = shop_pages.pages_of(bench)
    assert sorted(pages) == ["list", "section"] and pages["list"].Name == kept
    assert len(doc.findObjects("TechDraw::DrawPage")) == 2
    assert len(doc.findObjects("TechDraw::DrawSVGTemplate")) == 2
    views = sum(len(page.Views) for page in pages.values())
    found = doc.findObjects("TechDraw::DrawView")
    assert len(found) == views


def test_another_paper_is_taken(doc, bench):
    bench.Paper = "A4 upright"
    refresh(bench)
    for page in shop_pages.pages_of(bench).values():
        assert (page.Template.Width.Value, page.Template.Height.Value) == pytest.approx((210, 297))


def test_all_views_of_a_page_share_one_axis_so_that_no_host_shifts_them(bench):
    for page in shop_pages.pages_of(bench).values():
        assert len({view.X.Value for view in page.Views}) == 1


def test_a_refused_match_is_told_on_every_page_and_makes_no_sheets(doc, bench, match):
    match.Ways = 7
    doc.recompute()
    assert match.Message and all(match.Message[:40] in line for line in stale(bench)[:1])
    with pytest.raises(Exception, match="nothing can be cut by it"):
        benches.refresh(bench)


def test_undo_takes_a_refresh_back(doc, bench, match):
    match.Ways = 12
    doc.recompute()
    before = words(shop_pages.pages_of(bench)["plan"])
    doc.openTransaction("refresh")
    benches.refresh(bench)
    doc.commitTransaction()
    doc.recompute()
    assert words(shop_pages.pages_of(bench)["plan"]) != before
    doc.undo()
    doc.recompute()
    assert sorted(words(shop_pages.pages_of(bench)["plan"])) == sorted(before)
    assert match.Revision in bench.State


def test_sheets_are_saved_and_go_on(doc, bench, tmp_path):
    shown = words(shop_pages.pages_of(bench)["plan"])
    doc.saveAs(str(tmp_path / "bench.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "bench.FCStd"))
    bench = again.getObject("Bench")
    assert words(shop_pages.pages_of(bench)["plan"]) == shown
    again.getObject("Match").Ways = 12
    again.recompute()
    refresh(bench)
    assert "leaf 12" in words(shop_pages.pages_of(bench)["plan"])


def test_all_goes_with_the_bench_that_is_taken_away(doc, bench):
    shop_pages.remove_pages(bench)
    doc.removeObject(bench.Name)
    assert [one.Name for one in doc.Objects] == ["Stock", "Match", "CutList"]


def test_pages_outlive_a_match_and_say_so(doc, bench, match):
    doc.removeObject(match.Name)
    doc.recompute()
    assert bench.Message == "The bench has no match; link it to one, or delete it."
    assert all("no match" in line for line in stale(bench) if line)


def test_nothing_is_written_twice(doc, bench, monkeypatch):
    written = []
    monkeypatch.setattr(shop_pages, "setattr", lambda *a: written.append(a[1]), raising=False)
    refresh(bench)
    assert written == []


def test_a_copy_that_shows_the_views_of_its_original_takes_nothing_away(doc, bench):
    page = shop_pages.pages_of(bench)["plan"]
    kept = [view.Name for view in page.Views]
    copy = doc.copyObject(page, False).Name
    doc.recompute()
    bench.Owner = "Another"
    doc.recompute()
    assert all("NOT UP TO DATE" in line and "copy" not in line for line in stale(bench))
    refresh(bench)
    assert doc.getObject(copy) is None
    assert shop_pages.pages_of(bench)["plan"] is page and page.Template is not None
    assert set(kept) <= {view.Name for view in page.Views}
    assert "Another" in words(page)


def test_what_was_taken_off_a_page_by_hand_comes_back_with_a_refresh(doc, bench):
    page = shop_pages.pages_of(bench)["plan"]
    shown = sorted(words(page))
    for view in page.Views:
        doc.removeObject(view.Name)
    doc.recompute()
    refresh(bench)
    assert sorted(words(page)) == shown


def test_two_benches_of_one_match_keep_their_own_sheets(doc, bench, match):
    other = add_bench(doc, match, Title="The other")
    doc.recompute()
    refresh(other)
    mine, theirs = shop_pages.pages_of(bench), shop_pages.pages_of(other)
    assert not {p.Name for p in mine.values()} & {p.Name for p in theirs.values()}
    assert "The other" in words(theirs["plan"]) and "The other" not in words(mine["plan"])
    shop_pages.remove_pages(other)
    doc.removeObject(other.Name)
    doc.recompute()
    assert shop_pages.pages_of(bench) == mine and benches.bench_of_match(match) is bench


def test_a_bench_that_is_copied_has_no_sheets_of_its_own_until_it_is_refreshed(doc, bench):
    copy = doc.copyObject(bench, False)
    doc.recompute()
    assert copy.Message == "" and copy.Match is bench.Match and not shop_pages.pages_of(copy)
    refresh(copy)
    assert sorted(shop_pages.pages_of(copy)) == sorted(shop_pages.pages_of(bench))


def test_a_new_name_makes_the_sheets_old(doc, bench, match):
    match.Bundle.Label = "Walnut, flitch 7"
    doc.recompute()
    assert "refresh" in bench.State
    refresh(bench)
    assert bench.State == "" and "Walnut, flitch 7" in words(shop_pages.pages_of(bench)["plan"])


def test_how_the_ring_closes_makes_them_old_where_it_changes_the_taping(doc, bench, match):
    closing = add_closing(doc, match, TemplateError=0.05)
    doc.recompute()
    assert bench.State == ""
    closing.How = "quarters"
    doc.recompute()
    assert "refresh" in bench.State
    refresh(bench)
    doc.removeObject(closing.Name)
    doc.recompute()
    assert "refresh" in bench.State


def test_paper_marks_make_them_old(doc, codes, sawn):
    match = add_match(doc, add_bundle(doc, sawn), Ways=4, Diameter=150.0)
    bench = add_bench(doc, match)
    doc.recompute()
    refresh(bench)
    leaf = match.Bundle.Leaves[0]
    leaf.Marks = [FreeCAD.Vector(10.0, 10.0, 0.0), FreeCAD.Vector(180.0, 10.0, 1.0)]
    doc.recompute()
    assert "refresh" in bench.State


def test_sheets_laid_out_by_another_host_say_so(doc, bench, tmp_path, monkeypatch):
    doc.saveAs(str(tmp_path / "bench.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    monkeypatch.setattr(compat, "symbol_scale", lambda: 0.5)
    again = FreeCAD.openDocument(str(tmp_path / "bench.FCStd"))
    bench = again.getObject("Bench")
    assert "another version of FreeCAD" in bench.State
    assert all("another version" in line for line in stale(bench))
    refresh(bench)
    assert bench.State == "" and set(stale(bench)) == {""}

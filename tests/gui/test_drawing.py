# SPDX-License-Identifier: LGPL-2.1-or-later
"""The drawing as a PDF, read and looked at: what is text in it, and where everything lies."""

import html
import re
import subprocess
from dataclasses import replace

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from PIL import Image
from PySide import QtGui

from veneerwb.core import VeneerError, sawn_bundle
from veneerwb.core.shop.one_sheet.frame import FRAME, PAPER, TITLE_BLOCK
from veneerwb.gui.drawing import open_page, save_pdf
from veneerwb.host import sheets
from veneerwb.host.objects import add_bundle, add_drawing, add_match, add_stock, layout
from veneerwb.host.objects.drawing import page_of

DPI = 100
MM = 25.4 / DPI
POINT = 25.4 / 72.0


@pytest.fixture
def doc():
    made = FreeCAD.newDocument("Drawn")
    made.UndoMode = 1
    yield made
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)


@pytest.fixture
def match(doc):
    made = add_match(doc, add_stock(doc, 900.0, 1700.0, 64), Ways=16, Oversize=10.0)
    doc.recompute()
    return made


@pytest.fixture
def drawing(doc, match):
    made = add_drawing(doc, match, Title="TOP")
    doc.recompute()
    return made


def words_of(path):
    """(word, left, top, bottom) of all text of a PDF, mm from the paper's upper left."""
    ran = subprocess.run(["pdftotext", "-bbox", path, "-"], capture_output=True, text=True)
    found = re.findall(
        r'xMin="([\d.]+)" yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">(.*?)</word>', ran.stdout
    )
    return [(html.unescape(w), *(float(n) * POINT for n in (x, y0, y1))) for x, y0, y1, w in found]


def text_of(path):
    return " ".join(word[0] for word in words_of(path))


def looked_at(path):
    """The page as rows x columns of grey."""
    stem = path.with_suffix("")
    subprocess.run(["pdftoppm", "-r", str(DPI), "-gray", "-singlefile", path, stem], check=True)
    with Image.open(stem.with_suffix(".pgm")) as image:
        return np.asarray(image).astype(int)


def ink(page, x0, y0, x1, y1):
    """The extent of what is dark in a field, mm from the paper's lower left: left, low, right,
    top."""
    high = page.shape[0]
    across, down = (round(x0 / MM), round(x1 / MM)), (high - round(y1 / MM), high - round(y0 / MM))
    part = page[slice(*down), slice(*across)] < 128
    rows, columns = np.flatnonzero(part.any(axis=1)), np.flatnonzero(part.any(axis=0))
    return (
        x0 + columns[0] * MM,
        y1 - (rows[-1] + 1) * MM,
        x0 + (columns[-1] + 1) * MM,
        y1 - rows[0] * MM,
    )


def saved(drawing, tmp_path, name="page.pdf"):
    path = tmp_path / name
    save_pdf(page_of(drawing), path)
    assert [one.name for one in tmp_path.iterdir() if one.name.startswith(".")] == []
    return path


def sheet_of(drawing):
    from veneerwb.core.shop.one_sheet.sheet import sheet
    from veneerwb.host.objects.drawing import _facts

    laid = layout(drawing.Match)
    return sheet(laid, _facts(drawing, laid, drawing.Date), pictured=False)


def test_what_must_be_read_is_text_and_follows_the_match(doc, match, drawing, tmp_path):
    for ways in (16, 12, 24):
        match.Ways = ways
        doc.recompute()
        text = text_of(saved(drawing, tmp_path))
        for words in (
            f"{ways} ways",
            f"scale {drawing.Scale}.",
            f"scale {drawing.WedgeScale}",
            "show face.",
            "counter-clockwise.",
            "Dry-lay before glue.",
            "makers' sheets",
        ):
            assert words in text, words


def test_a_text_stands_there_as_it_was_written(drawing, tmp_path):
    """Whatever a host reads into it: HTML, and escapes."""
    written, made = "1<2&lt;b&gt;R&D\N{DEGREE SIGN}\\\\host\\x41.png\\n", sheet_of(drawing)
    texts = {"notes": replace(made.texts["notes"], lines=(written,))}
    sheets.fill(sheets.views_of(drawing), replace(made, texts=texts))
    found = text_of(saved(drawing, tmp_path))
    assert written in found.replace(" ", "")  # where a word ends is guessed from the gaps


def test_every_text_stands_where_it_belongs(doc, match, drawing, tmp_path):
    match.Ways = 64
    doc.recompute()
    words = words_of(saved(drawing, tmp_path))
    for role, text in sheet_of(drawing).texts.items():
        last = len(text.lines) - 1
        for k in {0, last} if text.lines[0] else {last}:
            word = text.lines[k].split()[0]
            wanted = PAPER.high - text.top + k * text.pitch + text.height / 2.0
            off = min(
                abs(x - text.x) + 0.5 * abs((y0 + y1) / 2.0 - wanted)
                for found, x, y0, y1 in words
                if found == word
            )
            assert off < 1.2, (role, word, off)


@pytest.mark.parametrize(("ways", "diameter"), [(3, 300.0), (12, 1200.0), (64, 3000.0)])
def test_the_page_is_white_framed_and_to_scale(doc, match, drawing, tmp_path, ways, diameter):
    match.Turn = "slip"
    match.Ways, match.Diameter = ways, diameter
    doc.recompute()
    page = looked_at(saved(drawing, tmp_path))
    assert page.shape == pytest.approx((PAPER.high / MM, PAPER.wide / MM), abs=2)
    assert (page[:20, :20] == 255).all() and np.median(page) == 255
    outer = ink(page, 14.0, 30.0, 415.0, 120.0)
    assert outer[0] == pytest.approx(FRAME.x, abs=0.8)
    assert outer[2] == pytest.approx(FRAME.right, abs=0.8)
    plan = sheet_of(drawing).figures["plan"].box
    x0, y0, x1, y1 = ink(page, plan.x, plan.y, plan.right, plan.top + 0.5)
    paper = eval(drawing.Scale.replace(":", "/")) * diameter
    assert x1 - x0 == pytest.approx(paper, abs=1.0)
    assert (x0 + x1) / 2.0 == pytest.approx(plan.centre[0], abs=0.5)
    assert y1 == pytest.approx(plan.top - 3.0, abs=0.6)
    x, y = TITLE_BLOCK.x, TITLE_BLOCK.y + 24.0
    assert ink(page, x + 1.0, y + 1.0, x + 60.0, y + 8.5)[1] == pytest.approx(y + 2.2, abs=0.6)


def test_the_picture_is_on_the_page(doc, tmp_path):
    leaves = sawn_bundle(leaves=8, width=200, length=400, mm_per_px=2.0, seed=3, knots=0)
    match = add_match(doc, add_bundle(doc, leaves), Ways=8, Diameter=300.0)
    drawing = add_drawing(doc, match)
    doc.recompute()
    page = looked_at(saved(drawing, tmp_path))
    high, left = page.shape[0], round((FRAME.x + 180.0) / MM)
    field = page[high - round(110.0 / MM) : high - round(56.0 / MM), left : round(408.0 / MM)]
    grey = (field > 40) & (field < 235)
    columns = (left + np.flatnonzero(grey.mean(axis=0) > 0.5)) * MM
    assert 50.0 < columns[-1] - columns[0] < 121.0
    assert (columns[0] + columns[-1]) / 2.0 == pytest.approx(327.0, abs=1.5)


def test_a_page_of_a_refused_match_says_so(doc, match, drawing, tmp_path):
    match.Ways = 7
    doc.recompute()
    text = text_of(saved(drawing, tmp_path))
    assert "NOT UP TO DATE: Match was refused" in text and "16 ways" in text


def test_the_page_is_the_same_after_saving_and_reopening(doc, match, drawing, tmp_path):
    before = looked_at(saved(drawing, tmp_path, "before.pdf"))
    doc.saveAs(str(tmp_path / "drawn.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "drawn.FCStd"))
    after = looked_at(saved(again.getObject("Drawing"), tmp_path, "after.pdf"))
    assert before.shape == after.shape and np.abs(before - after).mean() < 0.05


def test_the_open_page_follows_undo_and_redo(doc, match, drawing, tmp_path):
    open_page(page_of(drawing))
    doc.openTransaction("ways")
    match.Ways = 12
    doc.recompute()
    doc.commitTransaction()
    for step, ways in ((doc.undo, 16), (doc.redo, 12)):
        step()
        doc.recompute()
        assert f"{ways} ways" in text_of(saved(drawing, tmp_path))


def test_a_pdf_that_cannot_be_written_is_refused_and_leaves_nothing(drawing, tmp_path):
    with pytest.raises(VeneerError, match="could not be written"):
        save_pdf(page_of(drawing), tmp_path / "no folder" / "page.pdf")
    (tmp_path / "taken.pdf").mkdir()
    with pytest.raises(VeneerError, match="could not be written"):
        save_pdf(page_of(drawing), tmp_path / "taken.pdf")
    assert [one.name for one in tmp_path.iterdir()] == ["taken.pdf"]


def test_a_pdf_replaces_the_older_one_whole(drawing, tmp_path):
    (tmp_path / "page.pdf").write_text("old")
    assert saved(drawing, tmp_path).read_bytes().startswith(b"%PDF")


def test_the_host_leaves_every_view_where_it_was_put(doc, match, drawing):
    from veneerwb.host import sheets

    def places():
        views = sheets.views_of(drawing).values()
        return {view.Name: (view.X.Value, view.Y.Value) for view in views}

    before = places()
    open_page(page_of(drawing))
    doc.recompute()
    assert places() == before
    assert [obj.Name for obj in doc.Objects if "Touched" in obj.State] == []


def test_nothing_is_reported_while_all_is_well(doc, match, tmp_path):
    (report,) = FreeCADGui.getMainWindow().findChildren(QtGui.QTextEdit, "Report view")
    before = report.toPlainText()
    drawing = add_drawing(doc, match)
    doc.recompute()
    saved(drawing, tmp_path)
    match.Ways = 12
    doc.recompute()
    QtGui.QApplication.processEvents()
    assert report.toPlainText() == before

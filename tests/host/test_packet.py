# SPDX-License-Identifier: LGPL-2.1-or-later
"""The packet: every file there, whole, named and marked, or one sentence and nothing."""

import csv
import io
import re
import subprocess
import xml.etree.ElementTree as ElementTree

import FreeCAD
import pytest

from veneerwb.core import sawn_bundle
from veneerwb.host import bench as benches
from veneerwb.host import packet
from veneerwb.host.objects import add_bundle, add_match, add_stock
from veneerwb.host.objects.bench import add_bench
from veneerwb.host.objects.buildup import add_build_up
from veneerwb.host.objects.closing import add_closing

ROUND = [
    "01 Contents.pdf", "02 Sheets.pdf", "03 Pinning.pdf", "04 Marking.pdf", "05 Cutting plan.pdf",
    "06 Template of the cut.pdf", "07 Template of the cut.dxf", "08 Template of the cut.svg",
    "09 Closing the ring.pdf", "10 Press day.pdf", "11 Yield and cost.pdf", "12 Cut list.csv",
    "13 Picture of the top.jpg",
]  # fmt: skip
HARMFUL = '=1+1 <b> & "x" / \\ \n' + "y" * 300
DRY = "dry-lay before glue"


def one_line(text):
    return " ".join(text.split())


@pytest.fixture(scope="module")
def small():
    """Twelve leaves of 160 x 300 mm with photographs."""
    return sawn_bundle(leaves=12, width=160.0, length=300.0, mm_per_px=2.0, seed=4)


@pytest.fixture(scope="module")
def round_top(written, small, tmp_path_factory):
    """The packet of a ring in 12 ways with a closing, from a bundle with photographs, and its
    revision mark."""
    doc = FreeCAD.newDocument("Round")
    match = add_match(doc, add_bundle(doc, small), Ways=12, Diameter=360.0, Oversize=6.0)
    add_closing(doc, match)
    bench = add_bench(doc, match, Title="Hall <table> & co", Unit="both", Price=90.0)
    made = written(bench, tmp_path_factory.mktemp("round"))
    mark = match.Revision
    FreeCAD.closeDocument(doc.Name)
    return made, mark


@pytest.fixture(scope="module")
def read(round_top):
    """The pages of its PDFs as text, by file."""
    made = round_top[0]
    return {name: made.pages(name) for name in made.names if name.endswith(".pdf")}


# --- what is in it ------------------------------------------------------------------------------


def test_every_file_is_there_and_named(round_top):
    made, mark = round_top
    assert made.left_out == () and made.names == ROUND
    assert made.folder.name == f"Hall -table- & co {mark}"


def test_the_contents_page_lists_every_file(read):
    text = " ".join(read["01 Contents.pdf"])
    assert all(name in text for name in ROUND[1:]) and "left out" not in text


def test_the_contents_page_tells_where_templates_are_not_as_advised(doc, bench, written, tmp_path):
    closing = add_closing(doc, bench.Match)
    assert f"advises to cut every wedge {over_of(closing)} degrees over; the templates of this " \
        "packet are cut 0.00" in written(bench, tmp_path).contents
    bench.SeamsCut, bench.SeamAngle = "over by an angle", closing.Over
    assert "advises" not in written(bench, tmp_path).contents


def test_a_ring_of_which_no_closing_was_reckoned_is_told(doc, bench):
    def warned():
        return " ".join(packet.Packet(benches.at_bench(bench)).warnings)

    assert "no sheet on closing the ring" in warned()
    add_closing(doc, bench.Match)
    doc.recompute()
    assert "no sheet" not in warned()
    bench.Match.Kind = "End match"
    doc.recompute()
    assert "no sheet" not in warned()


def over_of(closing):
    closing.Document.recompute()
    assert closing.Over > 0.01
    return f"{closing.Over:.2f}"


def test_every_page_carries_name_and_mark_and_says_to_dry_lay(round_top, read):
    mark = round_top[1]
    for name, pages in read.items():
        for k, page in enumerate(pages, start=1):
            where = f"{name}, page {k}"
            assert mark in page, where
            assert "Hall <table> & co" in page or name.startswith("06"), where
        assert DRY in " ".join(pages).lower() or "Yield" in name, name


def test_sheets_that_rest_on_registers_say_on_what(read):
    for name, pages in read.items():
        if "Template" not in name and "Yield" not in name:  # tiles say so on their first sheet
            assert all("rests on" in page for page in pages), name
        assert "rests on" in " ".join(pages), name


def test_text_is_text_and_fonts_are_embedded(round_top):
    for pdf in round_top[0].folder.glob("*.pdf"):
        fonts = subprocess.run(["pdffonts", str(pdf)], capture_output=True, check=True, text=True)
        rows = fonts.stdout.splitlines()[2:]
        assert rows and all(re.search(r"\s(yes|no)\s+(yes|no)\s+(yes|no)\s", row) for row in rows)
        embedded = [re.search(r"\s(yes|no)\s+(yes|no)\s+(yes|no)\s", row)[1] for row in rows]
        assert set(embedded) == {"yes"}, pdf.name


def test_files_for_machines_carry_name_mark_and_what_they_rest_on(round_top):
    made, mark = round_top
    dxf = (made.folder / ROUND[6]).read_text("utf-8", "replace")
    svg = ElementTree.parse(made.folder / ROUND[7])
    said = one_line(" ".join(text for text in svg.getroot().itertext()))
    for text in (one_line(dxf), said):
        assert mark in text and "Hall <table> & co" in text
        assert DRY in text.lower() and "rests on" in text


def test_lists_carry_name_mark_and_what_they_rest_on(round_top):
    made, mark = round_top
    rows = list(csv.reader(io.StringIO((made.folder / ROUND[11]).read_text("utf-8"))))
    head = {row[0]: row[1] for row in rows if len(row) == 2}
    assert head["cut list, revision"] == mark and head["layout"] == "Hall <table> & co"
    assert "rests on" in head["rests on"] and DRY in head["caution"].lower()
    assert len(rows) - rows.index([]) - 2 == 12


def test_the_picture_has_a_caption_below_the_top(round_top):
    from PIL import Image

    with Image.open(round_top[0].folder / ROUND[12]) as image:
        assert image.height > 1.02 * image.width
        foot = image.convert("L").crop((0, int(0.96 * image.height), image.width, image.height))
        assert foot.getextrema()[0] < 100


# --- all kinds ----------------------------------------------------------------------------------


def test_an_oval_with_border_line_and_inlay_by_the_saw(doc, written, tmp_path):
    bundle = add_bundle(doc, sawn_bundle(leaves=26, width=200.0, length=500.0, mm_per_px=4.0))
    match = add_match(doc, bundle, Top="Oval", Length=700.0, Width=500.0, Ways=24, Oversize=6.0)
    add_build_up(
        doc, match, BorderWidth=40.0, BorderKind="following", BorderMaterial="=walnut",
        LineWidth=2.0, Inlay="disc", InlayDiameter=60.0, CoreMaterial="ply",
    )  # fmt: skip
    bench = add_bench(doc, match, CutBy="saw", Kerf=2.0, Boards=12.0, AtOnce=40.0, Unit="inch",
                      Press="vacuum bag", PressWidth=1200.0, PressLength=1500.0)  # fmt: skip
    made = written(bench, tmp_path)
    assert made.left_out == ()
    (bill,) = made.folder.glob("*Bill of materials.csv")
    text = bill.read_text("utf-8")
    assert match.Revision in text and "'=walnut" in text and "\n=walnut" not in text
    assert list(made.folder.glob("*Picture of the top.jpg"))
    sheets = made.text("Sheets.pdf")
    assert "border" in sheets.lower() and "inlay" in sheets.lower() and " in" in sheets


@pytest.mark.parametrize(
    ("kind", "asked"),
    [
        ("Diamond", {"Top": "Rectangle", "Length": 400.0, "Width": 300.0}),
        ("End match", {"Top": "Rectangle", "Length": 500.0, "Width": 300.0, "Count": 4}),
        ("Radial", {"Diameter": 300.0, "Ways": 6, "Strips": 3}),
    ],
)
def test_other_matches_by_the_machine_face_down(doc, written, tmp_path, kind, asked):
    match = add_match(doc, add_stock(doc, 400.0, 500.0, 40), Kind=kind, Oversize=5.0, **asked)
    bench = add_bench(doc, match, CutBy="machine", Kerf=0.5, AtOnce=0.0, Lean=0.0, FaceDown=True,
                      Tool=0.5, FileUnit="inch")  # fmt: skip
    made = written(bench, tmp_path)
    assert made.left_out == ()
    templates = [name for name in made.names if name.endswith(".dxf")]
    assert templates and not [name for name in made.names if "Picture" in name]
    for pdf in made.folder.glob("*.pdf"):
        assert all(match.Revision in page for page in made.pages(pdf.name)), pdf.name
    for name in templates:  # by which the tool is set
        text = (made.folder / name).read_text("utf-8", "replace")
        assert len(re.findall(r"\nCIRCLE\s", text)) == 2, name
    dxf = (made.folder / templates[0]).read_text("utf-8", "replace")
    assert re.search(r"\$INSUNITS\s+70\s+1\s", dxf)


@pytest.mark.parametrize("paper", ["A4 upright", "A4", "A2", "A1", "ANSI B", "ANSI A",
                                   "ANSI A upright", "ANSI C", "ANSI D"])  # fmt: skip
def test_every_paper_is_taken(bench, written, tmp_path, paper):
    from veneerwb.core.shop.drawing.paper import paper_of

    bench.Paper = bench.TilePaper = paper
    made = written(bench, tmp_path)
    assert made.left_out == ()
    size = paper_of(paper)
    for pdf in made.folder.glob("*.pdf"):
        info = subprocess.run(["pdfinfo", str(pdf)], capture_output=True, check=True, text=True)
        wide, high = map(float, re.search(r"size:\s+([\d.]+) x ([\d.]+)", info.stdout).groups())
        assert (wide, high) == pytest.approx((size.wide / 25.4 * 72, size.high / 25.4 * 72), abs=1)


def test_names_that_could_do_harm_do_none(doc, written, tmp_path):
    stock = add_stock(doc, 300.0, 400.0, 8)
    match = add_match(doc, stock, Ways=4, Diameter=200.0)
    stock.Label, match.Label = HARMFUL, HARMFUL
    bench = add_bench(doc, match, Title=HARMFUL, Owner=HARMFUL, Number="@x", Currency="-1")
    benches.refresh(bench)
    made = written(bench, tmp_path)
    assert made.left_out == () and [tmp_path / made.folder.name] == list(tmp_path.iterdir())
    assert all(re.fullmatch(r"\d\d [\w :-]+\.\w+", name) for name in made.names)
    (svg,) = made.folder.glob("*.svg")
    said = " ".join(ElementTree.parse(svg).getroot().itertext())
    assert "<b> &" in said
    (listed,) = made.folder.glob("*Cut list.csv")
    for row in csv.reader(io.StringIO(listed.read_text("utf-8"))):
        assert not [c for c in row if c[:1] in "=+@" and c or re.match(r"-\D", c)], row
    for pdf in made.folder.glob("*.pdf"):
        assert all(match.Revision in page for page in made.pages(pdf.name)), pdf.name

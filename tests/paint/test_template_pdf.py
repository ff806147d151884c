# SPDX-License-Identifier: LGPL-2.1-or-later
"""Templates on paper: the PDF file's own coordinates, read by general libraries, are the
template's."""

from __future__ import annotations

import io
import math
import re
import subprocess
from collections import defaultdict
from pathlib import Path

import numpy as np
import pytest
from shapely.geometry import LineString, MultiLineString, Point

from veneerwb.core import Stock, Top, radial
from veneerwb.core.matches.quarters import quarters
from veneerwb.core.outlines import edge as edges
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.drawing.paper import PAPERS
from veneerwb.core.shop.pages.template import FINE, pages
from veneerwb.core.shop.templates.make import templates
from veneerwb.core.shop.templates.over import Over
from veneerwb.core.shop.templates.tiles import tiled
from veneerwb.paint.pdf import pdf

pypdf = pytest.importorskip("pypdf")

STOCK = Stock(900.0, 3000.0, 64, 0.6)
MM = 25.4 / 72.0
"""Plain arithmetic: a point of PDF is 1/72 in; 1 mm = 2.834645669 pt."""
NAME = 'Table <1> & "best"'
LAID = {
    "round on A4": (radial(STOCK, Top.round(1200.0), 12, oversize=10.0), "A4 upright"),
    "round on ANSI A": (radial(STOCK, Top.round(1200.0), 12, oversize=10.0), "ANSI A upright"),
    "oval on A3": (radial(STOCK, Top.oval(1500.0, 900.0), 24, oversize=10.0), "A3"),
    "diamond on A4": (quarters(STOCK, Top.rectangle(1000.0, 700.0), "diamond"), "A4"),
}


class Read:
    """A page's lines in mm from its upper left corner, y down: `lines` (points, weight, dashed)."""

    def __init__(self, reader, page) -> None:
        self.high = float(page.mediabox.height)
        self.size = float(page.mediabox.width) * MM, self.high * MM
        self.lines: list[tuple[np.ndarray, float, bool]] = []
        matrix, kept = np.eye(3), []
        run: list[tuple[float, float]] = []
        runs: list[list[tuple[float, float]]] = []
        weight, dashed = 1.0, False
        stream = pypdf.generic.ContentStream(page["/Contents"].get_object(), reader)
        for operands, operator in stream.operations:
            name = operator.decode()
            values = [float(v) for v in operands] if name in ("m", "l", "c", "cm", "w") else []
            if name == "q":
                kept.append((matrix, weight, dashed))
            elif name == "Q":
                matrix, weight, dashed = kept.pop()
            elif name == "cm":
                a, b, c, d, e, f = values
                matrix = np.array([[a, b, 0], [c, d, 0], [e, f, 1]]) @ matrix
            elif name == "w":
                weight = values[0] * math.sqrt(abs(np.linalg.det(matrix[:2, :2]))) * MM
            elif name == "d":
                dashed = len(operands[0]) > 0
            elif name == "m":
                run = [self._place(values, matrix)]
                runs.append(run)
            elif name == "l":
                run.append(self._place(values, matrix))
            elif name == "c":
                run += self._curve(run[-1], values, matrix)
            elif name == "h":
                run.append(run[0])
            elif name in ("S", "s"):
                self.lines += ((np.array(r), weight, dashed) for r in runs if len(r) > 1)
                runs = []
            elif name in ("f", "f*", "n", "B"):
                runs = []

    def _place(self, values, matrix) -> tuple[float, float]:
        x, y, _ = np.array([*values[:2], 1.0]) @ matrix
        return x * MM, (self.high - y) * MM

    def _curve(self, start, values, matrix) -> list[tuple[float, float]]:
        a, c, d, b = (np.array(p) for p in (start, *(
            self._place(values[k : k + 2], matrix) for k in (0, 2, 4))))
        return [
            tuple((1 - t) ** 3 * a + 3 * t * (1 - t) ** 2 * c + 3 * t * t * (1 - t) * d + t**3 * b)
            for t in np.linspace(0.0, 1.0, 65)[1:]
        ]

    @property
    def solid(self) -> MultiLineString:
        """The lines that are to be cut along (and the crosses of register marks)."""
        return MultiLineString([
            r.tolist() for r, weight, dashed in self.lines
            if not dashed and weight == pytest.approx(FINE, abs=1e-6)
        ])

    @property
    def rings(self) -> list[tuple[float, float]]:
        """The middles of register marks: circles of radius 2 mm."""
        found = []
        for points, _, _ in self.lines:
            low, high = points.min(axis=0), points.max(axis=0)
            middle = (low + high) / 2.0
            if high - low == pytest.approx((4.0, 4.0), abs=1e-3) and np.hypot(
                *(points - middle).T
            ) == pytest.approx(2.0, abs=1e-3):
                found.append((float(middle[0]), float(middle[1])))
        return found


@pytest.fixture(scope="module", params=list(LAID))
def printed(request, tmp_path_factory):
    """(the file, its pages read, the tiling, the template)."""
    layout, name = LAID[request.param]
    over = Over(angle=0.4) if "round" in request.param else Over()
    template = templates(layout, over, name=NAME)[0]
    look = Look(paper=PAPERS[name], title=NAME, revision=template.revision, top=layout.top.name)
    file = tmp_path_factory.mktemp("template") / "template.pdf"
    file.write_bytes(pdf(pages(template, look), template.title))
    reader = pypdf.PdfReader(file)
    found = [Read(reader, page) for page in reader.pages]
    return file, found, tiled(template, look.paper), template


def test_every_page_carries_bars_of_100_mm_in_both_directions(printed):
    _, found, _, _ = printed
    for page in found:
        spans = [np.ptp(points, axis=0) for points, _, _ in page.lines]
        for size in ((100.0, 0.0), (0.0, 100.0)):
            assert sum(span == pytest.approx(size, abs=1e-4) for span in spans) == 1


def test_a_rule_laid_to_the_outer_edges_of_the_bars_reads_100_mm(printed):
    """The end strokes' outer edges, half a line's weight beyond their middles."""
    _, found, _, _ = printed
    for page in found:
        bar, weight, _ = next(one for one in page.lines
                              if np.ptp(one[0], axis=0) == pytest.approx((100.0, 0.0), abs=1e-4))
        strokes = sorted(
            points[0, 0] for points, _, _ in page.lines
            if np.ptp(points, axis=0) == pytest.approx((0.0, 4.0), abs=1e-4)
            and abs(points[:, 1].mean() - bar[0, 1]) < 1e-4
        )
        assert len(strokes) == 2
        assert strokes[1] - strokes[0] + weight == pytest.approx(100.0, abs=1e-4)


def test_pages_have_the_size_of_their_paper(printed):
    _, found, tiling, _ = printed
    for page in found:  # to a point: some writers round the sheet, not what is on it
        assert page.size == pytest.approx((tiling.paper.wide, tiling.paper.high), abs=0.36)


def marks_of(file: Path, number: int, page: Read) -> dict[str, tuple[float, float]]:
    """Register marks by the number that is printed beside each, both as the file has them."""
    said = subprocess.run(
        ["pdftotext", "-bbox", "-f", str(number), "-l", str(number), file, "-"],
        capture_output=True, text=True, check=True,
    ).stdout  # fmt: skip
    words = re.findall(
        r'xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(\d+)<', said)
    places = [(tuple(float(v) * MM for v in word[:4]), word[4]) for word in words]
    found = {}
    for x, y in page.rings:
        near = min(places, key=lambda one: math.hypot(one[0][0] - x - 2.4, one[0][3] - y + 0.5))
        found[near[1]] = (x, y)
    assert len(found) == len(page.rings)
    return found


def test_sheets_joined_by_their_marks_are_the_template(printed):
    """Joined by what is printed alone: marks of the same number are laid on each other."""
    file, found, tiling, template = printed
    sheets = found[-len(tiling.tiles):]
    first = len(found) - len(sheets)
    marks = [marks_of(file, first + k + 1, page) for k, page in enumerate(sheets)]
    shifts = {0: np.zeros(2)}
    ahead = [0]
    for k in ahead:
        for j in range(len(sheets)):
            common = sorted(set(marks[k]) & set(marks[j]))
            if j in shifts or j == k or not common:
                continue
            apart = [np.subtract(marks[k][name], marks[j][name]) for name in common]
            assert len(apart) == 2 and np.abs(apart[0] - apart[1]).max() < 0.01
            shifts[j] = shifts[k] + np.mean(apart, axis=0)
            ahead.append(j)
    assert len(shifts) == len(sheets)
    lines = MultiLineString([
        (np.asarray(line.coords) + shifts[k]).tolist()
        for k, page in enumerate(sheets) for line in page.solid.geoms
    ])
    # The first sheet lies where the tiling has it; all others by their marks.
    onto = tiling.onto(tiling.tiles[0])
    places = [segment.at(s) for segment in template.cut for s in np.linspace(0.0, 1.0, 60)]
    high = tiling.paper.high
    off = [lines.distance(Point(x, high - y)) for x, y in onto.apply(places).tolist()]
    assert max(off) < 0.05
    # And nothing else is drawn as the cut: what lies far from it belongs to marks and bars.
    cut = LineString(onto.apply(edges.points(template.cut, 0.001) * 2).tolist())
    for line in lines.geoms:
        long = line.length > 14.0
        if long:
            middle = line.interpolate(0.5, normalized=True)
            assert cut.distance(Point(middle.x, high - middle.y)) < 0.05


def test_every_page_shows_what_of_the_template_lies_on_it(printed):
    _, found, tiling, template = printed
    for tile, page in zip(tiling.tiles, found[-len(tiling.tiles):]):
        onto, high = tiling.onto(tile), tiling.paper.high
        lines = page.solid
        for segment in template.cut:
            for x, y in onto.apply([segment.at(s) for s in np.linspace(0, 1, 50)]).tolist():
                field = tiling.field
                if field.x <= x <= field.right and field.y <= y <= field.top:
                    assert lines.distance(Point(x, high - y)) < 0.005


def test_fonts_are_embedded_and_text_is_text(printed):
    file, found, tiling, template = printed
    listed = subprocess.run(["pdffonts", file], capture_output=True, text=True, check=True).stdout
    rows = [line.split() for line in listed.splitlines()[2:]]
    assert rows and all(row[-5:-2][0] == "yes" for row in rows)
    said = subprocess.run(["pdftotext", "-layout", file, "-"], capture_output=True, text=True,
                          check=True).stdout
    by_page = said.split("\f")[: len(found)]
    names = [tile.name for tile in tiling.tiles]
    for text, name in zip(by_page[-len(names):], names):
        for part in (NAME, template.revision, f"Sheet {name}", "100 mm", "Print at 100 %"):
            assert part in text
    for part in ("Map of the sheets", "TIP", "Dry-lay before glue", *names):
        assert part in by_page[0]


def test_arcs_are_drawn_as_fine_as_they_are_cut():
    """Every point of a large arc in the file lies within 0.002 mm of its circle."""
    template = templates(radial(STOCK, Top.round(3000.0), 4, "slip"))[0]
    look = Look(paper=PAPERS["A1"])
    tiling = tiled(template, look.paper)
    reader = pypdf.PdfReader(io.BytesIO(pdf(pages(template, look), "Arcs")))
    counted = defaultdict(int)
    for tile, page in zip(tiling.tiles, list(reader.pages)[-len(tiling.tiles):]):
        x, y = tiling.onto(tile).point((0.0, 0.0))
        for line in Read(reader, page).solid.geoms:
            away = np.hypot(*(np.asarray(line.coords) - (x, tiling.paper.high - y)).T)
            if len(away) > 60 and line.length > 20.0:  # no register mark
                rim = away[away > 1499.0]  # a run may go on along a seam
                assert np.abs(rim - 1500.0).max() < 0.002
                assert len(rim) > 60
                counted[tile.name] += 1
    assert counted

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The sheet of marks: measured on the page that a PDF reader renders."""

from __future__ import annotations

import math
import re
import subprocess
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from veneerwb.core.errors import VeneerError
from veneerwb.core.targets import MARK, located
from veneerwb.core.targets.sheet import MARGIN, PAPERS, Page, sheet
from veneerwb.paint.paper import targets_sheet

DPI = 300
MM = DPI / 25.4
"""Pixels to the millimetre of the rendered page."""


def rendered(pdf: Path, page: int = 1) -> np.ndarray:
    """Grey levels of a page, at DPI, by poppler."""
    stem = pdf.with_suffix("")
    subprocess.run(
        ["pdftoppm", "-r", str(DPI), "-gray", "-singlefile", "-f", str(page), pdf, stem], check=True
    )
    return np.asarray(Image.open(stem.with_suffix(".pgm")))


def words_of(pdf: Path) -> str:
    return subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, text=True,
                          check=True).stdout


@pytest.fixture(scope="module", params=list(PAPERS))
def printed(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> tuple:
    """(the PDF, its first page as data, its share of ink)."""
    pdf = tmp_path_factory.mktemp("sheet") / f"{request.param}.pdf"
    numbers = range(1, 13)
    pages = sheet(numbers, 3, request.param)
    assert targets_sheet(pdf, numbers, 3, request.param) == len(pages) == 2
    return pdf, pages[0], 1.0 - rendered(pdf) / 255.0


def around(ink: np.ndarray, page: Page, x: float, y: float, half: float) -> tuple:
    """The ink within `half` mm of a place of the page, and its pixels' places from there, mm."""
    column, row = x * MM, (page.height - y) * MM
    left, top, far = round(column - half * MM), round(row - half * MM), round(2 * half * MM)
    part = ink[top : top + far, left : left + far]
    down, across = np.mgrid[:far, :far] + 0.5
    return part, (left + across - column) / MM, (row - top - down) / MM


def test_every_ring_is_where_and_as_large_as_it_was_designed(printed: tuple) -> None:
    _, page, ink = printed
    assert len(page.marks) in (20, 25)
    for mark in page.marks:
        part, x, y = around(ink, page, mark.x, mark.y, 12.0)
        total = part.sum()
        assert abs((part * x).sum() / total) < 0.02  # mm
        assert abs((part * y).sum() / total) < 0.02
        # A line at 7 mm above the centre meets the ring alone, one at 3.5 mm its hole but no cross.
        seven, hole = (int(np.abs(y[:, 0] - above).argmin()) for above in (7.0, 3.5))
        outer = 2 * math.hypot(part[seven].sum() / MM / 2, y[seven, 0])
        white = 2 * math.sqrt(outer**2 / 4 - y[hole, 0] ** 2) - part[hole].sum() / MM
        inner = 2 * math.hypot(white / 2, y[hole, 0])
        assert outer == pytest.approx(MARK.outer, abs=0.05)
        assert inner == pytest.approx(MARK.inner, abs=0.05)


def test_a_mark_of_the_sheet_is_what_the_finder_finds(printed: tuple) -> None:
    _, page, ink = printed
    pixels = np.repeat((255 * (1 - ink)).astype(np.uint8)[:, :, None], 3, axis=2)
    for mark in page.marks[::6]:
        true = mark.x * MM, (page.height - mark.y) * MM
        found = located(pixels, (true[0] + 120, true[1] - 150))
        assert math.dist(found.centre, true) / MM < 0.02
        assert found.mm_per_px * MM == pytest.approx(1.0, abs=0.01)
        assert found.up == pytest.approx((0.0, -1.0), abs=0.05)


def test_the_bars_measure_100_mm_from_end_to_end(printed: tuple) -> None:
    _, page, ink = printed
    across, upwards = page.bars
    half = 0.3
    band = ink[round((page.height - across[1] - half) * MM) :][: round(2 * half * MM)]
    band = band[:, round((across[0] - 2) * MM) : round((across[2] + 2) * MM)]
    assert band.sum(axis=1).max() / MM == pytest.approx(100.0, abs=0.1)
    band = ink[:, round((upwards[0] - half) * MM) :][:, : round(2 * half * MM)]
    band = band[round((page.height - upwards[3] - 2) * MM) : round(
        (page.height - upwards[1] + 2) * MM)]
    assert band.sum(axis=0).max() / MM == pytest.approx(100.0, abs=0.1)
    for x in (across[0] + 0.1, across[2] - 0.1):  # strokes that a rule is laid to
        assert ink[round((page.height - across[1] - 2.0) * MM), round(x * MM)] > 0.5
    for y in (upwards[1] + 0.1, upwards[3] - 0.1):
        assert ink[round((page.height - y) * MM), round((upwards[0] + 2.0) * MM)] > 0.5


def test_nothing_is_printed_where_printers_leave_a_margin(printed: tuple) -> None:
    _, page, ink = printed
    inside = np.zeros(ink.shape, bool)
    edge = round((MARGIN - 1.0) * MM)
    inside[edge:-edge, edge:-edge] = True
    assert ink[~inside].max() == 0.0
    assert ink[inside].max() == 1.0


def test_nothing_but_the_arrow_stands_near_a_ring(printed: tuple) -> None:
    """The finder reads the arrow there, and the ring must stand on white."""
    _, page, ink = printed
    for mark in page.marks:
        part, x, y = around(ink, page, mark.x, mark.y, MARK.around / 2)
        r = np.hypot(x, y)
        outside = (r > MARK.outer / 2 + 0.1) & (r < MARK.around / 2)
        above = (y > MARK.clear / 2 - 0.1) & (np.abs(x) < 3.7)
        assert part[outside & ~above].max() == 0.0
        assert part[outside & above].max() == 1.0


def test_no_text_reaches_into_a_ring_or_off_the_page(printed: tuple) -> None:
    """By each word's own box, as the PDF has it (the arrow's surroundings are tested above)."""
    pdf, page, _ = printed
    said = subprocess.run(["pdftotext", "-f", "1", "-l", "1", "-bbox", pdf, "-"],
                          capture_output=True, text=True, check=True).stdout
    boxes = [
        [float(value) * 25.4 / 72 for value in re.findall(r'"([\d.]+)"', line)]
        for line in said.splitlines() if line.strip().startswith("<word ")
    ]
    assert len(boxes) > 60
    for left, top, right, low in boxes:
        assert MARGIN - 1 <= left < right <= page.width - MARGIN + 1
        for mark in page.marks:
            y = page.height - mark.y
            across = max(left - mark.x, mark.x - right, 0)
            assert math.hypot(across, max(top - y, y - low, 0)) > MARK.outer / 2


def test_the_text_can_be_read_and_says_what_must_be_said(printed: tuple) -> None:
    pdf, page, _ = printed
    said = words_of(pdf)
    assert "Print at 100 %, do not fit to page." in said
    assert "Page 1 of 2" in said and "100 mm across" in said
    for word in ("waste", "show face", "low-tack", "residue", "knife", "steel rule", "A to C"):
        assert word in said
    first = said.split("\f")[0].replace(" ", "")
    for mark in page.marks:
        assert f"{mark.leaf}{mark.letter}" in first


def test_every_leaf_has_its_marks_once_and_papers_do_not_overlap() -> None:
    for paper, size in PAPERS.items():
        pages = sheet([3, 1, 112], 6, paper)
        marks = [mark for page in pages for mark in page.marks]
        assert [m.caption for m in marks[:7]] == ["3 A", "3 B", "3 C", "3 D", "3 E", "3 F", "1 A"]
        assert len({m.caption for m in marks}) == 18
        left, lower, right, upper = MARK.paper
        for page in pages:
            assert (page.width, page.height) == size
            for one in page.marks:
                assert one.x + left >= MARGIN and one.x + right <= page.width - MARGIN + 0.01
                assert one.y + lower >= MARGIN and one.y + upper <= page.height - MARGIN
                for other in page.marks:
                    apart = abs(one.x - other.x) >= right - left or (
                        abs(one.y - other.y) >= upper - lower)
                    assert one is other or apart


@pytest.mark.parametrize("count", [1, 4, 5, 6, 24, 25])
def test_every_paper_is_cut_free_by_lines_drawn_once(count: int) -> None:
    (page,) = sheet(range(1, count + 1), 1)
    left, lower, right, upper = MARK.paper

    def sides(x: float, y: float) -> list[tuple]:
        a, b, c, d = x + left, y + lower, x + right, y + upper
        return [(a, b, c, b), (a, d, c, d), (a, b, a, d), (c, b, c, d)]

    def covered(side: tuple) -> int:
        return sum(
            abs(line[0] - line[2]) * abs(side[1] - side[3]) < 1e-6
            and abs(line[1] - line[3]) * abs(side[0] - side[2]) < 1e-6
            and min(line[0], line[2]) <= side[0] + 1e-6 and max(line[0], line[2]) >= side[2] - 1e-6
            and min(line[1], line[3]) <= side[1] + 1e-6 and max(line[1], line[3]) >= side[3] - 1e-6
            for line in page.cuts
        )

    for mark in page.marks:
        assert [covered(side) for side in sides(mark.x, mark.y)] == [1, 1, 1, 1]
    drawn = sum(line[2] - line[0] + line[3] - line[1] for line in page.cuts)
    needed = {tuple(round(at, 6) for at in side) for m in page.marks for side in sides(m.x, m.y)}
    assert drawn == pytest.approx(sum(side[2] - side[0] + side[3] - side[1] for side in needed))


@pytest.mark.parametrize(
    ("code", "numbers", "more"),
    [
        ("no-leaves", [], {}),
        ("leaf-twice", [1, 2, 2], {}),
        ("out-of-range", [0], {}),
        ("out-of-range", [1], {"per_leaf": 7}),
        ("unknown-choice", [1], {"paper": "A5"}),
    ],
)
def test_what_cannot_be_printed_is_said_and_nothing_is_written(
    code: str, numbers: list[int], more: dict, tmp_path: Path
) -> None:
    with pytest.raises(VeneerError) as caught:
        targets_sheet(tmp_path / "marks.pdf", numbers, **more)
    assert caught.value.code == code
    assert list(tmp_path.iterdir()) == []


def test_a_folder_that_is_missing_is_said(tmp_path: Path) -> None:
    with pytest.raises(VeneerError) as caught:
        targets_sheet(tmp_path / "nowhere" / "marks.pdf", [1])
    assert caught.value.code == "cannot-write"

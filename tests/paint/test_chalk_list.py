# SPDX-License-Identifier: LGPL-2.1-or-later
"""The list by which the real stack is chalked, on paper."""

from __future__ import annotations

import shutil
import subprocess
from pathlib import Path

import pytest

from veneerwb.core import VeneerError, sawn_bundle
from veneerwb.core.chalk import Mark, chalk_list

pytest.importorskip("veneerwb.paint.qt", reason="no Qt for this Python")
from veneerwb.paint.chalk import as_html, write_pdf  # noqa: E402

NAMES = {k: f"oak <é> & ash {k}.jpg" for k in range(1, 31)}


@pytest.fixture(scope="module")
def marks() -> tuple[Mark, ...]:
    bundle = sawn_bundle(leaves=30, width=40, length=80, mm_per_px=4.0)
    return chalk_list(bundle, names=NAMES, tight_side="back")


@pytest.mark.skipif(not shutil.which("pdftotext"), reason="no pdftotext")
def test_every_leaf_is_on_the_paper_as_text(marks: tuple[Mark, ...], tmp_path: Path) -> None:
    path = tmp_path / "list é.pdf"
    write_pdf(marks, "Bundle <7>: what to chalk", path)
    done = subprocess.run(
        ["pdftotext", "-layout", str(path), "-"], capture_output=True, check=True, text=True
    )
    text = " ".join(done.stdout.split())
    assert "Bundle <7>: what to chalk" in text and "Chalk the number near the top end" in text
    assert all(f"ash {k}.jpg" in text for k in NAMES) and "<é> &" in text
    assert text.count("loose side") == 30
    assert done.stdout.count("\f") >= 2  # thirty leaves need two pages
    boxes = subprocess.run(["pdfinfo", str(path)], capture_output=True, check=True, text=True)
    assert "A4" in boxes.stdout


def test_names_cannot_break_the_page(marks: tuple[Mark, ...]) -> None:
    page = as_html(marks, "</h2><b>")
    assert "<é>" not in page and "&lt;é&gt; &amp; ash 7.jpg" in page and "</h2><b>" not in page


def test_a_list_that_cannot_be_written_is_refused(marks: tuple[Mark, ...], tmp_path: Path) -> None:
    with pytest.raises(VeneerError):
        write_pdf(marks, "List", tmp_path / "nowhere" / "list.pdf")

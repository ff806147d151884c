# SPDX-License-Identifier: LGPL-2.1-or-later
"""Findings on paper: their lengths in the shop's units, no finer than a rule can tell."""

import pytest

from veneerwb.core import Finding, Stock, Top, check, radial
from veneerwb.core.shop.drawing.drawn import Letters
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.page import Look
from veneerwb.core.shop.pages import notes
from veneerwb.core.shop.pages.notes import in_lengths

FOUND = Finding(
    "wide", "stop", "{wide} x {long} mm of {count} leaves.", "Take {least} mm, {turn} deg over.",
    {"wide": 145.6849, "long": 600.0, "count": 3, "least": 0.05, "turn": 0.123},
)  # fmt: skip


@pytest.mark.parametrize(
    ("unit", "text", "remedy"),
    [
        ("mm", "145.7 x 600 mm of 3 leaves.", "Take 0.05 mm, 0.123 deg over."),
        ("inch", "5 47/64 x 23 5/8 in of 3 leaves.", "Take 0 in, 0.123 deg over."),
        ("both", "145.7 x 600 mm (5 47/64 x 23 5/8 in) of 3 leaves.",
         "Take 0.05 mm (0 in), 0.123 deg over."),
    ],
)  # fmt: skip
def test_lengths_of_findings_are_as_the_shop_writes_them(unit, text, remedy):
    said = in_lengths(FOUND, Lengths(unit, 64))
    assert (said.text, said.remedy) == (text, remedy)


def test_the_page_of_notes_speaks_inches_where_the_shop_does():
    layout = radial(Stock(150.0, 700.0, 12, 0.6), Top.round(1200.0), 12)
    found = check(layout)
    assert any(" mm" in one.text for one in found)
    (page,) = notes.pages(layout, Look(lengths=Lengths("inch")), found)
    words = [mark.text for mark in page.drawing.marks if isinstance(mark, Letters)]
    assert not any(" mm" in text for text in words) and any(" in" in text for text in words)

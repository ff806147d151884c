# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the checks found, and what must not be forgotten at the bench."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import replace

from veneerwb.core.checks.finding import LENGTHS, LEVELS, Finding
from veneerwb.core.layout import Layout
from veneerwb.core.shop.counted import counted
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.lettering import PLAIN, SMALL, runs
from veneerwb.core.shop.drawing.page import DRY_LAY, Look, Page
from veneerwb.core.shop.pages.tables import table_pages
from veneerwb.words import figure, filled, marked, word

CODE, TITLE = "notes", marked("Notes, findings, cautions")
NOTES = (
    marked(
        "Before you cut, compare the revision mark in the title block with the model's: paper "
        "with another mark is stale."
    ),
    marked(
        "All sheets are seen from the show face, and positions run {counted}, unless a sheet says "
        "that it shows a leaf."
    ),
    marked(
        "Prove the order of the leaves by following one mark of the figure through the stack, "
        "number every leaf on the face near its lower end, and register the leaves on the figure "
        "and not on their edges."
    ),
    marked(
        "Chalk number, side and tip into every piece before it is cut: the end of the leaf goes "
        "with the waste. Chalk comes off before glue."
    ),
    marked(
        "Cut a test piece of the template and lay it together as often as there are ways before "
        "the stack is cut."
    ),
    marked(
        "Lay all positions out dry, in order, show face up, and judge every seam in raking light "
        "before glue is mixed."
    ),
)
CAUTIONS = (
    marked(
        "Knives and saws: cut away from the hand, with the stack held between boards and never "
        "loose at a blade; guards on, eyes covered."
    ),
    marked(
        "Dust: that of many woods irritates or sensitises; draw it off at its source and wear a "
        "mask that fits. Local limits count."
    ),
    marked(
        "Adhesives and finishes: the maker's sheet says what hands, skin, eyes and lungs must be "
        "kept from, at what temperature and for how long; it wins over any paper of ours."
    ),
    marked(
        "Presses and bags: keep within the rating of press, bag, hoses and pump. A pressure "
        "vessel is for those who are licensed for it."
    ),
    marked(
        "Electric, gas and pressure work that asks for a licence is for those who hold it. Local "
        "rules come before this sheet."
    ),
)
WIDEST = 190.0
"""mm: longer lines are hard to follow."""
NAME = re.compile(r"\{(\w+)\}")
SAID = {
    "stop": marked("STOP: do not cut"), "warn": marked("warning"), "note": marked("note")
}


def pages(layout: Layout, look: Look, findings: Sequence[Finding] = ()) -> list[Page]:
    """Findings, the gravest first, then notes and cautions."""
    ordered = sorted(findings, key=lambda finding: LEVELS.index(finding.level))
    rows = [_found(finding, look.lengths) for finding in ordered]
    if not rows:
        rows = [(word("note"), word("The checks found nothing that speaks against cutting."), "")]
    rows += [(word("note"), filled(word(text), {"counted": counted(layout)}), "") for text in NOTES]
    rows += [(word("caution"), word(text), "") for text in CAUTIONS]
    headings, large = ("", marked("what"), marked("positions")), look.paper.wide > 400.0
    return table_pages(
        look, CODE, TITLE, headings, rows, (), (DRY_LAY,), PLAIN if large else SMALL, WIDEST
    )  # fmt: skip


def _found(finding: Finding, lengths: Lengths) -> tuple[str, str, str]:
    said = in_lengths(finding, lengths)
    words = " ".join(part for part in (said.text, said.remedy) if part)
    return word(SAID[finding.level]), words, runs(finding.pieces)


def in_lengths(finding: Finding, lengths: Lengths) -> Finding:
    """The same finding with its lengths as the shop writes them, to a tenth of a mm where they are
    longer than one."""

    def told(found: re.Match[str]) -> str:
        def by(write: Callable[[float], str]) -> str:
            return NAME.sub(lambda name: write(float(finding.values[name[1]])), found[1])

        plain, inches = f"{by(_plain)} mm", f"{by(lengths.inches)} in"
        return {"mm": plain, "inch": inches, "both": f"{plain} ({inches})"}[lengths.unit]

    texts = (LENGTHS.sub(told, word(text)) for text in (finding.template, finding.remedy_template))
    return replace(finding, **dict(zip(("template", "remedy_template"), texts)))


def _plain(mm: float) -> str:
    return figure(round(mm, 1) if abs(mm) >= 1.0 else mm)

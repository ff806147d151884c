# SPDX-License-Identifier: LGPL-2.1-or-later
"""All pages of a layout itself, in the order in which they are read."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from veneerwb.core.checks.finding import Finding
from veneerwb.core.layout import Layout
from veneerwb.core.progress import Progress, unheard
from veneerwb.core.shop.built import Built
from veneerwb.core.shop.drawing.page import Look, Page
from veneerwb.core.shop.pages import finished, lists, notes, pieces, plan, section, stack
from veneerwb.core.shop.pages.pictures import Pictures


def sheet_pages(
    layout: Layout, look: Look, panel: Built | None = None, findings: Sequence[Finding] = (),
    pictures: Pictures | None = None, base: float = 0.0, marks: Mapping[int, Any] | None = None,
    progress: Progress = unheard,
) -> list[Page]:  # fmt: skip
    """Notes, plan, pieces, stack, section, lists and picture, not numbered yet (`page.numbered`).

    panel:    the build-up on its finished top, whose field the layout covers.
    pictures: what `paint.sheet_pictures` makes of a bundle.
    base:     length over which a ring's angle is set out, mm; 0: as long as it takes.
    marks:    by leaf, its paper marks in leaf mm, in the order of their letters or by number.
    progress: is told before each subject.
    """
    subjects = (
        lambda: notes.pages(layout, look, findings),
        lambda: plan.pages(layout, look, panel),
        lambda: pieces.pages(layout, look, base),
        lambda: stack.pages(layout, look, pictures, marks),
        lambda: section.pages(panel, look),
        lambda: lists.pages(layout, look, panel),
        lambda: finished.pages(layout, look, pictures, panel),
    )
    found: list[Page] = []
    for done, made in enumerate(subjects):
        progress(done / len(subjects))
        found += made()
    return found

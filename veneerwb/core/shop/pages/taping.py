# SPDX-License-Identifier: LGPL-2.1-or-later
"""The taping plan on paper: how the pieces are laid out, and a small picture for every step."""

from __future__ import annotations

import math
from collections.abc import Sequence

from veneerwb.core.outlines import edge as edges
from veneerwb.core.shop.drawing.drawn import Drawing
from veneerwb.core.shop.drawing.lettering import PITCH, PLAIN, SMALL, fitted
from veneerwb.core.shop.drawing.page import DRY_LAY, Look, Page, blank_page, text_block, text_height
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages.kit import free, heading, partings
from veneerwb.core.shop.pages.taping_figures import draw_step
from veneerwb.core.shop.taping import said as words
from veneerwb.core.shop.taping.plan import Step, TapingPlan
from veneerwb.words import word

CODE = "taping"
SMALLEST, BETWEEN = 78.0, 8.0
"""mm: the least width of a step's cell, and what lies between two."""
LEAST_PICTURE = 52.0
LEAST_SHARE = 0.6
"""Of the field: words that leave less of it to the picture go on a page of their own."""
HEAD = PLAIN + PITCH * SMALL


def pages(plan: TapingPlan, look: Look) -> list[Page]:
    """The laid-out pieces with what is to be known, then the steps."""
    code = f"{CODE}-face-down" if plan.face_down else CODE
    title = (
        word("Taping plan, face down (mirrored)") if plan.face_down else word("Taping plan")
    )
    standing = (seen(plan), DRY_LAY)
    found, left = _laid_out(plan, look, code, title, standing)
    cells = _parted(plan, free(look, standing))
    for some, (columns, rows) in cells:
        page, field = blank_page(look, f"{code}-{len(found) + 1}", title, standing=standing)
        boxes = [b for row in field.rows(rows, BETWEEN) for b in row.columns(columns, BETWEEN)]
        for step, box in zip(some, boxes):
            _cell(page.drawing, box, plan, step)
        found.append(page)
    if left:
        page, field = blank_page(look, f"{code}-{len(found) + 1}", title, standing=standing)
        text_block(page.drawing, heading(page.drawing, field, word("How it is taped")), left)
        found.append(page)
    return found


def seen(plan: TapingPlan) -> str:
    """From which side all pictures are seen."""
    return words.running(plan.layout, plan.face_down)


def _laid_out(
    plan: TapingPlan, look: Look, code: str, title: str, standing: Sequence[str]
) -> tuple[list[Page], list[str]]:
    """The page of the first step, and the words that are left for a page of their own where they
    would take the room of the picture."""
    step = plan.steps[0]
    texts, left = [*_on_it(plan, step), *_on_taping(plan)], []
    page, field = blank_page(look, code, title, standing=standing)
    parted = partings(field, texts, extra=HEAD)[0]
    if min(parted.figure.wide, parted.figure.high) < LEAST_SHARE * min(field.wide, field.high):
        texts, left = _on_it(plan, step), _on_taping(plan)
        parted = partings(field, texts, extra=HEAD)[0]
    box = heading(page.drawing, parted.words, f"{step.number}  {step.title}")
    text_block(page.drawing, box, texts, parted.height, parted.beside)
    draw_step(page.drawing, _mirror_said(page.drawing, parted.figure, plan), plan, step)
    return [page], left


def _on_it(plan: TapingPlan, step: Step) -> list[str]:
    backs = any(one.side_up == "back" for one in plan.pieces)
    return [
        *words.instructions(plan, step),
        word("Underlined: the leaf lies with its back up.")
        if backs
        else word("All leaves lie face up."),
        words.leaves(plan),
    ]


def _on_taping(plan: TapingPlan) -> list[str]:
    return [
        *(words.closing_reason(closing) for closing in plan.closings),
        word(words.FACE_DOWN if plan.face_down else words.FACE_UP),
        *map(word, words.TECHNIQUE),
        word(words.CHALK),
        word(words.CAUTION),
    ]


# --- the steps ----------------------------------------------------------------------------------

_Grid = tuple[int, int]


def _parted(plan: TapingPlan, field: Box) -> list[tuple[list[Step], _Grid]]:
    """The steps of each page with the columns and rows of its cells: on as few pages as their
    pictures allow, those as large as can be."""
    left, found = list(plan.steps[1:]), []
    while left:
        count, grid = _most(plan, left, field)
        pages = math.ceil(len(left) / count)
        if pages > 1:
            count = math.ceil(len(left) / pages)
            grid = _best(plan, left[:count], field) or grid
        found.append((left[:count], grid))
        left = left[count:]
    return found


def _most(plan: TapingPlan, steps: Sequence[Step], field: Box) -> tuple[int, _Grid]:
    """How many of the steps go on one page, at least one."""
    for count in range(len(steps), 1, -1):
        grid = _best(plan, steps[:count], field)
        if grid:
            return count, grid
    return 1, (1, 1)


def _best(plan: TapingPlan, steps: Sequence[Step], field: Box) -> _Grid | None:
    """The grid that gives so many steps the largest pictures; None where they would be too
    small."""
    found: list[tuple[float, int, int]] = []
    wide, high = (most - least for least, most in (
        edges.extent(plan.layout.top.edge, way) for way in (0.0, 90.0)))  # fmt: skip
    for columns in range(1, len(steps) + 1):
        rows = math.ceil(len(steps) / columns)
        room = _picture_room(plan, steps, field, (columns, rows))
        if room[0] >= SMALLEST and room[1] >= LEAST_PICTURE:
            found.append((min(room[0] / wide, room[1] / high), -columns * rows, columns))
    if not found:
        return None
    _, cells, columns = max(found)
    return columns, -cells // columns


def _picture_room(
    plan: TapingPlan, steps: Sequence[Step], field: Box, grid: _Grid
) -> tuple[float, float]:
    columns, rows = grid
    wide = (field.wide - (columns - 1) * BETWEEN) / columns
    if wide < SMALLEST:
        return 0.0, 0.0
    most = max(_words_high(plan, step, wide) for step in steps)
    return wide, (field.high - (rows - 1) * BETWEEN) / rows - HEAD - most


def _words_high(plan: TapingPlan, step: Step, wide: float) -> float:
    return text_height(words.instructions(plan, step), wide, between=False) + 3.0


def _cell(drawing: Drawing, box: Box, plan: TapingPlan, step: Step) -> None:
    """Number and title, what is done, and the picture."""
    title, height = fitted(f"{step.number}  {step.title}", box.wide, PLAIN)
    drawing.text((box.x, box.top - PLAIN), title, height, "start")
    below = box.below(box.top - HEAD)
    low = text_block(drawing, below, words.instructions(plan, step), between=False)
    draw_step(drawing, _mirror_said(drawing, below.below(low - 3.0), plan), plan, step)


def _mirror_said(drawing: Drawing, field: Box, plan: TapingPlan) -> Box:
    """Says under a picture that it is mirrored, where it is; what is left for the picture."""
    if not plan.face_down:
        return field
    drawing.text((field.centre[0], field.y + 0.5), word("mirrored: show face down"), SMALL)
    return field.above(field.y + PITCH * SMALL + 1.0)

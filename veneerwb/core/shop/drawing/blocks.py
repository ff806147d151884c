# SPDX-License-Identifier: LGPL-2.1-or-later
"""A page parted into lines of letters that stand below each other, and all else.

A host's page keeps the first as text where it is given them as such, and makes outlines of letters
in a figure. So what reads as text (paragraphs, columns of a list, fields of the title block) is
taken out of the figure; the numbers of dimensions stay in it.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

from veneerwb.core.shop.drawing.drawn import BLACK, Drawing, Letters
from veneerwb.core.shop.drawing.lettering import width

MOST_LINES = 16
"""In a block: hosts round the distance of lines, and many of them would wander off their rules."""
SAME = 0.02
"""mm: distances that differ by less are one."""


@dataclass(frozen=True)
class Block:
    """Lines of letters `height` mm high, flush left from `x`; the first stands on `foot`, the next
    ones `pitch` mm further down each."""

    x: float
    foot: float
    lines: tuple[str, ...]
    height: float
    pitch: float

    @property
    def middle(self) -> float:
        """Where the middle of the longest line lies at most, mm."""
        return self.x + max(width(line, self.height) for line in self.lines) / 2.0 + 1.0

    @property
    def letters(self) -> int:
        return sum(map(len, self.lines))


def parted(drawing: Drawing, most: int, right: float) -> tuple[Drawing, list[Block]]:
    """The drawing without the blocks, and at most `most` blocks whose middles lie left of `right`
    mm, those with the most letters, from the upper left on."""
    columns: dict[tuple[float, float], list[Letters]] = defaultdict(list)
    for mark in drawing.marks:
        if isinstance(mark, Letters) and _is_plain(mark):
            columns[(round(mark.at[0], 2), mark.height)].append(mark)
    runs = [run for column in columns.values() for run in _runs(column)]
    runs = [run for run in runs if _block(run).middle <= right]
    runs.sort(key=lambda run: -sum(len(one.text) for one in run))
    taken = {id(one) for run in runs[:most] for one in run}
    rest = Drawing(drawing.wide, drawing.high)
    rest.marks = [mark for mark in drawing.marks if id(mark) not in taken]
    blocks = [_block(run) for run in runs[:most]]
    return rest, sorted(blocks, key=lambda block: (-round(block.foot, 1), block.x))


def _is_plain(mark: Letters) -> bool:
    plain = mark.anchor == "start" and mark.turn == 0.0 and mark.colour == BLACK
    return plain and bool(mark.text.strip())


def _runs(column: Sequence[Letters]) -> list[list[Letters]]:
    """Letters that start at one x, parted where their distance changes."""
    runs: list[list[Letters]] = []
    for one in sorted(column, key=lambda mark: -mark.at[1]):
        run = runs[-1] if runs else []
        if run and len(run) < MOST_LINES and _goes_on(run, one):
            run.append(one)
        else:
            runs.append([one])
    return runs


def _goes_on(run: Sequence[Letters], one: Letters) -> bool:
    step = run[-1].at[1] - one.at[1]
    if len(run) == 1:
        return 1.2 * one.height <= step <= 3.0 * one.height
    return abs(step - (run[0].at[1] - run[1].at[1])) < SAME


def _block(run: Sequence[Letters]) -> Block:
    first, last = run[0], run[-1]
    pitch = (first.at[1] - last.at[1]) / (len(run) - 1) if len(run) > 1 else 1.6 * first.height
    return Block(first.at[0], first.at[1], tuple(one.text for one in run), first.height, pitch)

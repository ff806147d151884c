# SPDX-License-Identifier: LGPL-2.1-or-later
"""The sheet of paper marks: what stands where on each page, as plain data.

Millimetres on the page, origin at its lower left, x right, y up. `paint.paper` makes the PDF.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import ranges
from veneerwb.core.photos.reading import MOST_NUMBER
from veneerwb.core.plane import choice, whole
from veneerwb.core.targets.mark import LETTERS, MARK, letter
from veneerwb.words import filled, marked, say, word

PAPERS = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}
"""Width and height: ISO 216, and ANSI/ASME Y14.1 size A."""
MARGIN = 10.0
"""mm: printers leave up to some 6 mm blank."""
BAR = 100.0
"""mm: the length of the bars by which a print is checked."""
_LEFT, _FOOT = 25.0, 11.0  # where the marks begin
_TITLE, _PLAIN = 4.0, 2.5  # heights of capitals
_PITCH = 4.7
_FIRST = marked(
    "Print at 100 %, do not fit to page. Lay a rule on both bars: {bar} mm, or print again."
)
_NOTES = (
    (True, marked(
        "Cut along the lines, away from your hand: a knife slips on paper and on thin wood.")),
    (True, marked(
        "Stick {count} on each leaf before it is photographed: far apart, flat, arrow up along "
        "the")),
    (False, marked(
        "grain, in the waste only. What a mark covers must not become a part of the show face.")),
    (True, marked(
        "Use low-tack tape and try it on an offcut: paste and strong tape leave residue, lift "
        "fibre.")),
    (True, marked(
        "Measure from cross to cross by a steel rule. One distance gives a photo its scale; four")),
    (False, marked(
        "sides and two diagonals between four marks square it up. Photograph without glare.")),
    (True, marked("Leave the marks on until the leaf is pinned and cut.")),
)
"""Lines, and whether each begins a note: a translation of one may break elsewhere than it does."""
_INDENT = 3.0  # mm: a note's text stands so far right of its dash


@dataclass(frozen=True)
class Placed:
    """A mark: its centre, its leaf and its letter."""

    x: float
    y: float
    leaf: int
    letter: str

    @property
    def caption(self) -> str:
        return f"{self.leaf} {self.letter}"


@dataclass(frozen=True)
class Words:
    """A line of text from (x, y), the foot of its capitals of `height` mm, no wider than `wide`."""

    x: float
    y: float
    height: float
    text: str
    wide: float
    bold: bool = False
    upright: bool = False  # reads upwards


@dataclass(frozen=True)
class Page:
    """A page: `bars` and `cuts` are lines (x, y, x, y)."""

    width: float
    height: float
    marks: tuple[Placed, ...]
    bars: tuple[tuple[float, float, float, float], ...]
    cuts: tuple[tuple[float, float, float, float], ...]
    words: tuple[Words, ...]


def sheet(numbers: Sequence[int], per_leaf: int = 3, paper: str = "A4") -> list[Page]:
    """The pages of `per_leaf` marks for each leaf of `numbers`, in that order, on A4 or Letter.

    Raises VeneerError for no leaves, for a number given twice and for other papers.
    """
    width, height = PAPERS[choice("paper", paper, tuple(PAPERS))]
    each = whole("number of marks on a leaf", per_leaf, 1, len(LETTERS))
    leaves = [whole("number of a leaf", number, 1, MOST_NUMBER) for number in numbers]
    if not leaves:
        raise VeneerError("no-leaves", "There are no leaves to print for; give their numbers.")
    twice = sorted({leaf for leaf in leaves if leaves.count(leaf) > 1})
    if twice:
        raise VeneerError(
            "leaf-twice",
            "The leaves {numbers} are given twice; give each number once.", numbers=ranges(twice),
        )
    across, down = MARK.size
    columns = int((width - MARGIN - _LEFT) // across)
    rows = int((height - MARGIN - _FOOT - _header()) // down)
    wanted = [(leaf, letter(k)) for leaf in leaves for k in range(each)]
    one = rows * columns
    parts = [wanted[k : k + one] for k in range(0, len(wanted), one)]
    return [
        _page(part, width, height, columns, rows, each, which)
        for part, which in zip(parts, _numbered(len(parts)))
    ]


def _numbered(count: int) -> list[str]:
    return [say("Page {page} of {pages}", page=k, pages=count) for k in range(1, count + 1)]


def _header() -> float:
    """mm that title, notes and the bar take."""
    return _TITLE + 4.0 + _PITCH * (len(_NOTES) + 1) + 7.0


def _page(
    wanted: list[tuple[int, str]], width: float, height: float, columns: int, rows: int,
    each: int, which: str,
) -> Page:
    across, down = MARK.size
    top = _FOOT + rows * down
    marks = tuple(
        Placed(_LEFT + k % columns * across - MARK.paper[0],
               top - (k // columns + 1) * down - MARK.paper[1], *one)
        for k, one in enumerate(wanted)
    )
    bars = (
        (_LEFT, top + 4.0, _LEFT + BAR, top + 4.0),
        (MARGIN + 6.0, top - BAR, MARGIN + 6.0, top),
    )
    words = [*_heading(wanted, width, height, each, which), *_measures(bars)]
    return Page(width, height, marks, bars, _cuts(len(wanted), columns, top), tuple(words))


def _heading(
    wanted: list[tuple[int, str]], width: float, height: float, each: int, which: str
) -> list[Words]:
    wide = width - 2 * MARGIN
    leaves = sorted({leaf for leaf, _ in wanted})
    title = say("Marks for leaves {leaves}", leaves=ranges(leaves))
    if len(leaves) == 1:
        title = say("Marks for leaf {leaf}", leaf=leaves[0])
    y = height - MARGIN - _TITLE
    words = [
        Words(MARGIN, y, _TITLE, title, wide - 35.0, bold=True),
        Words(width - MARGIN - 25.0, y, _PLAIN, which, 25.0),
    ]
    y -= 4.0 + _PLAIN
    words.append(Words(MARGIN, y, _PLAIN, say(_FIRST, bar=round(BAR)), wide, bold=True))
    count = say("one mark")
    if each > 1:
        count = say("{count} marks, A to {last},", count=each, last=letter(each - 1))
    for dash, text in _NOTES:
        y -= _PITCH
        words += [Words(MARGIN, y, _PLAIN, "-", _INDENT)] if dash else []
        text = filled(word(text), {"count": count})
        words.append(Words(MARGIN + _INDENT, y, _PLAIN, text, wide - _INDENT))
    return words


def _measures(bars: tuple) -> list[Words]:
    (left, across, right, _), (up, low, _, _) = bars
    return [
        Words(right + 3.0, across - _PLAIN / 2, _PLAIN, say("{bar} mm across", bar=BAR), 40.0),
        Words(up - 3.0, low + 3.0, _PLAIN, say("{bar} mm upwards", bar=BAR), 90.0, upright=True),
    ]


def _cuts(count: int, columns: int, top: float) -> tuple:
    """The lines round `count` papers, each drawn once."""
    across, down = MARK.size
    full, rest = divmod(count, columns)
    rows = full + bool(rest)
    lines = []
    for row in range(rows + 1):
        # The line under a row that is not full, and the one above it, end where papers do.
        wide = columns if row <= full and full else rest
        lines.append((_LEFT, top - row * down, _LEFT + wide * across, top - row * down))
    for column in range(columns + 1):
        low = rows if column <= rest or not rest else full
        if low:
            x = _LEFT + column * across
            lines.append((x, top - low * down, x, top))
    return tuple(lines)

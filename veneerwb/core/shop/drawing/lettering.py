# SPDX-License-Identifier: LGPL-2.1-or-later
"""Lettering: how wide a text is, how it is broken, how numbers are written.

Widths are those of the drawing font that the host brings along (a single-stroke letter as in
ISO 3098), as shares of the height of a capital; letters not listed count as wide ones.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache

from veneerwb.words import figure, say

FONT = "osifont"
SMALL, PLAIN, LARGE = 2.5, 3.5, 5.0
"""mm: heights of capitals, from the series of ISO 3098-1."""
PITCH = 1.6
"""Distance of two lines as a share of the letters' height."""

_WIDTHS = {
    0.3: "ij I!:|'.îïÎÏ·",
    0.37: ",();l[]1t’",
    0.6: "crJfç²³",
    0.66: "02svxyz*+-<=>?_~37aCEFku/Läàâÿ×±",
    0.7: "56enobdghpq49éèêëöôüùûÉÈÊËÇ–",
    0.8: "8STZKPRBGßÖÔÜÙÛ«»µ§",
    0.85: "DHNOUQwAVXY#&\N{DEGREE SIGN}ÄÀÂŸ½",
    1.1: "œ",
}
_WIDTH = {letter: width for width, letters in _WIDTHS.items() for letter in letters} | {" ": 0.63}
_WIDEST = 1.05
_LACKING = str.maketrans({"„": '"', "“": '"', "”": '"', "‘": "'", "…": "...", "\u066b": ","})
"""Letters that the font has not, and what stands for them."""
_BLANKS = re.compile(r"\s+(?![;:!?%](?:\s|$))")


def width(text: str, height: float) -> float:
    """How wide `text` is at most, mm, in letters of `height` mm."""
    return height * _share(text)


@lru_cache(maxsize=1 << 14)
def _share(text: str) -> float:
    """The width as a share of the height; what is laid out is asked over and over."""
    return sum(_WIDTH.get(letter, _WIDEST) for letter in text)


def clean(text: str) -> str:
    """Without characters that nobody sees and no page can hold, and without those that the font
    has not."""
    if not text.isprintable():
        text = "".join(letter if letter.isprintable() else " " for letter in text)
    return text if text.isascii() else text.translate(_LACKING)


def unbroken(text: str) -> list[str]:
    """`text` in what stands on one line: its words, each with a sign that a blank sets apart from
    it, as French writes and as a per cent is written."""
    return _BLANKS.split(text.strip()) if text.strip() else []


def wrapped(text: str, room: float, height: float) -> list[str]:
    """`text` in lines that are no wider than `room` mm, broken at blanks between words."""
    lines: list[str] = []
    line = ""
    for word in unbroken(clean(text)):
        longer = f"{line} {word}" if line else word
        if line and width(longer, height) > room:
            lines.append(line)
            longer = word
        line = longer
    return [*lines, line] if line else lines


def paragraphs(texts: Iterable[str], room: float, height: float) -> list[str]:
    """The lines of all `texts`, each beginning on a line of its own."""
    return [line for text in texts for line in wrapped(text, room, height)]


def fitted(text: str, room: float, height: float) -> tuple[str, float]:
    """`text` on one line of `room` mm and its letters' height: smaller letters where it is too
    long, then its end left off."""
    line = " ".join(clean(text).split())
    if width(line, height) <= room:
        return line, height
    if width(line, SMALL) <= room:
        return line, SMALL
    while line and width(line + "...", SMALL) > room:
        line = line[:-1].rstrip()
    return line + "...", SMALL


def length(value: float) -> str:
    """A length to 0.1 mm: 600.0, 11.5."""
    return figure(round(value, 1) + 0.0, ".1f")


def degrees(value: float) -> str:
    """An angle to 0.01 degrees, or exactly where three decimals are exact, without trailing
    noughts: 22.5, 5.625, 51.43, 120."""
    exact = abs(value - round(value, 3)) < 1e-9
    return figure(round(value, 3 if exact else 2)) + "\N{DEGREE SIGN}"


def runs(numbers: Iterable[int]) -> str:
    """Whole numbers in order, runs of three and more joined: 1 to 4, 7, 9."""
    groups: list[list[int]] = []
    for number in sorted(numbers):
        if groups and number == groups[-1][-1] + 1:
            groups[-1].append(number)
        else:
            groups.append([number])
    return ", ".join(
        say("{first} to {last}", first=g[0], last=g[-1]) if len(g) > 2
        else ", ".join(map(str, g))
        for g in groups
    )  # fmt: skip

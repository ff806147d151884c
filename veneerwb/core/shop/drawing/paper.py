# SPDX-License-Identifier: LGPL-2.1-or-later
"""Papers, and fields on them. Places are in mm from the lower left corner of the paper, y up."""

from __future__ import annotations

from dataclasses import dataclass

from veneerwb.core.plane import choice
from veneerwb.words import marked, word


@dataclass(frozen=True)
class Box:
    """A field of the paper: its lower left corner and its size, mm."""

    x: float
    y: float
    wide: float
    high: float

    @property
    def right(self) -> float:
        return self.x + self.wide

    @property
    def top(self) -> float:
        return self.y + self.high

    @property
    def centre(self) -> tuple[float, float]:
        return self.x + self.wide / 2.0, self.y + self.high / 2.0

    def holds(self, other: Box) -> bool:
        """Whether `other` lies inside."""
        return (
            self.x <= other.x
            and self.y <= other.y
            and other.right <= self.right
            and other.top <= self.top
        )

    def meets(self, other: Box) -> bool:
        """Whether the two overlap."""
        return (
            self.x < other.right
            and other.x < self.right
            and self.y < other.top
            and other.y < self.top
        )

    def inset(self, by: float) -> Box:
        """The field `by` mm inside all round."""
        return Box(self.x + by, self.y + by, self.wide - 2.0 * by, self.high - 2.0 * by)

    def above(self, y: float) -> Box:
        """The part above a height of the paper."""
        return Box(self.x, y, self.wide, self.top - y)

    def below(self, y: float) -> Box:
        """The part below a height of the paper."""
        return Box(self.x, self.y, self.wide, y - self.y)

    def columns(self, count: int, between: float = 4.0) -> list[Box]:
        """It in so many columns of one width, `between` mm apart, from the left."""
        wide = (self.wide - (count - 1) * between) / count
        return [Box(self.x + k * (wide + between), self.y, wide, self.high) for k in range(count)]

    def rows(self, count: int, between: float = 4.0) -> list[Box]:
        """It in so many rows of one height, `between` mm apart, from the top."""
        high = (self.high - (count - 1) * between) / count
        return [
            Box(self.x, self.top - (k + 1) * high - k * between, self.wide, high)
            for k in range(count)
        ]


BINDING, EDGE = 20.0, 10.0
"""mm: what the frame leaves free on the left, and elsewhere (ISO 5457)."""


@dataclass(frozen=True)
class Paper:
    """A sheet of paper as it lies before one, mm."""

    name: str
    wide: float
    high: float

    @property
    def called(self) -> str:
        """Its name as people read it."""
        return word(self.name)

    @property
    def frame(self) -> Box:
        return Box(BINDING, EDGE, self.wide - BINDING - EDGE, self.high - 2.0 * EDGE)


_INCH = 25.4
_SHORT_LONG = {
    "A4": (210.0, 297.0),
    "A3": (297.0, 420.0),
    "A2": (420.0, 594.0),
    "A1": (594.0, 841.0),
    "ANSI A": (8.5 * _INCH, 11.0 * _INCH),
    "ANSI B": (11.0 * _INCH, 17.0 * _INCH),
    "ANSI C": (17.0 * _INCH, 22.0 * _INCH),
    "ANSI D": (22.0 * _INCH, 34.0 * _INCH),
}
"""ISO 216, and ANSI/ASME Y14.1."""
UPRIGHT = "upright"
PAPERS = {
    **{name: Paper(name, long, short) for name, (short, long) in _SHORT_LONG.items()},
    **{
        name: Paper(name, *_SHORT_LONG[name.removesuffix(f" {UPRIGHT}")])
        for name in (marked("A4 upright"), marked("ANSI A upright"))
    },
}
"""By name: lying, and the small ones upright too."""


def paper_of(name: str) -> Paper:
    """The paper of that name. VeneerError for another."""
    return PAPERS[choice("paper", name, tuple(PAPERS))]


def form(paper: Paper) -> str:
    """An empty sheet of that paper as an SVG file, white, or a host shows its own grey through: as
    it lies in resources/templates."""
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        "<!-- SPDX-License-Identifier: LGPL-2.1-or-later -->\n"
        '<svg xmlns="http://www.w3.org/2000/svg" version="1.1" '
        'xmlns:freecad="http://www.freecadweb.org/wiki/index.php?title=Svg_Namespace" '
        f'width="{paper.wide:g}mm" height="{paper.high:g}mm" '
        f'viewBox="0 0 {paper.wide:g} {paper.high:g}">\n'
        f'<rect x="0" y="0" width="{paper.wide:g}" height="{paper.high:g}" fill="#ffffff" '
        'stroke="none"/>\n</svg>\n'
    )


def form_name(paper: Paper) -> str:
    """The name of its file."""
    return f"sheet-{paper.name.lower().replace(' ', '-')}.svg"

# SPDX-License-Identifier: LGPL-2.1-or-later
"""How the maker cuts a stack: by knife in lifts, by saw in boards, or leaf by leaf on a machine.

Every figure here is the maker's own to set. None has a published source: the defaults are common
practice and are said to be so wherever they are shown.

A blade that leans by a degrees off square leaves the lower face of what lies h mm deep off its
line by h tan a (plane geometry): 24 leaves of 0.6 mm at 2 degrees, 0.503 mm.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import choice, finite, positive, tand
from veneerwb.words import marked, word

KEYS = ("knife", "saw", "machine")
MOST_LEAN = 15.0
"""Degrees: a blade that leans more is set wrongly."""

WORDS = {
    "kerf": marked("kerf"),
    "lean": marked("lean of the blade"),
    "most": marked("height of leaves cut at once"),
    "board": marked("thickness of the sandwich boards"),
    "around": marked("reach of the boards beyond the cuts"),
    "clear": marked("distance of pins from a cut"),
}


def _upto(name: str, value: float, most: float) -> float:
    number = finite(name, value)
    if not 0.0 <= number <= most:
        raise VeneerError(
            "out-of-range",
            "The {name} cannot be {value}; give a number from 0 to {most}.",
            name=word(name), value=number, most=most,
        )
    return number


@dataclass(frozen=True)
class Method:
    """A way of cutting.

    `key`: one of KEYS. `kerf`: mm of wood that the blade takes, on the waste side of the line.
    `lean`: degrees that it may stand off square. `most`: mm of leaves cut at once; 0 for one leaf.
    `board`: thickness of each sandwich board, mm, 0 for none; `around`: mm that boards, and with
    them the stack, reach beyond the cuts along the grain (across it they are as wide as the
    leaves). `clear`: mm that pins and screws keep from every line of
    the blade. `through`: it cuts boards from edge to edge.
    """

    key: str
    kerf: float
    lean: float
    most: float
    board: float = 0.0
    around: float = 100.0
    clear: float = 15.0
    through: bool = False

    def __post_init__(self) -> None:
        choice(marked("way of cutting"), self.key, KEYS)
        limits = {"kerf": 20.0, "most": 500.0, "board": 100.0, "around": 5000.0, "clear": 200.0}
        for name, most in limits.items():
            object.__setattr__(self, name, _upto(WORDS[name], getattr(self, name), most))
        object.__setattr__(self, "lean", _upto(WORDS["lean"], self.lean, MOST_LEAN))

    @property
    def name(self) -> str:
        return word(NAMES[self.key])

    def at_once(self, thickness: float) -> int:
        """How many leaves of that thickness are cut at once. VeneerError where not even one is."""
        t = positive(marked("leaf thickness"), thickness)
        if not self.most:
            return 1
        count = math.floor(self.most / t + 1e-9)
        if count < 1:
            raise VeneerError(
                "leaf-over-limit",
                "One leaf of {thickness} mm is thicker than the {most} mm that you cut at once; "
                "set a higher limit, or cut leaf by leaf on a machine.",
                thickness=t, most=self.most,
            )
        return count

    def lifts(self, leaves: Sequence[int], thickness: float) -> tuple[tuple[int, ...], ...]:
        """The leaves parted into as few lifts as the limit allows, as even as can be, in order."""
        count = math.ceil(len(leaves) / self.at_once(thickness))
        least, more = divmod(len(leaves), max(count, 1))
        found, at = [], 0
        for k in range(count):
            size = least + (k < more)
            found.append(tuple(leaves[at : at + size]))
            at += size
        return tuple(found)

    def displaced(self, deep: float) -> float:
        """mm off its line of what lies `deep` mm below the top of a stack."""
        return deep * tand(self.lean)


NAMES = {"knife": marked("knife, in lifts"), "saw": marked("saw, in boards on a sled"),
         "machine": marked("machine, leaf by leaf")}

KNIFE = Method("knife", 0.0, 2.0, 2.4)
SAW = Method("saw", 2.0, 0.2, 40.0, board=12.0, through=True)
MACHINE = Method("machine", 0.5, 0.0, 0.0)
METHODS = {one.key: one for one in (KNIFE, SAW, MACHINE)}
"""The defaults: common practice, no published source. The maker sets his own."""


def method(key: str = "knife", **own: float | None) -> Method:
    """The method of that key with the maker's `own` figures; None for the default."""
    said = {name: value for name, value in own.items() if value is not None}
    return replace(METHODS[choice(marked("way of cutting"), key, KEYS)], **said)

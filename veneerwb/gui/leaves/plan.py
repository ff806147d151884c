# SPDX-License-Identifier: LGPL-2.1-or-later
"""What was chosen and clicked about a batch of photographs, and the core's Preparation of each.

Clicks are places on a photograph held upright, (column, row).
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from veneerwb.core import VeneerError
from veneerwb.core.photos.preparation import check_leaf_size
from veneerwb.core.photos.preparing import LIGHTS, Preparation
from veneerwb.core.photos.reading import by_number_or_name, names_apart, number_in, photo_files
from veneerwb.core.plane import positive
from veneerwb.gui.photos.frame import Place
from veneerwb.words import marked, say

MARKED = ("rings", "two marks", "four marks")
"""Scales by paper marks: as their rings are printed, a distance, six distances."""
SCALES = ("length", "width", "pixel", "points", "corners", *MARKED)
RIM = 5.0
"""mm of background round a leaf that is cut out: its outline is found on that again, to tie its two
sides."""
WANTED = {"points": 2, "corners": 4, "rings": 2, "two marks": 2, "four marks": 4}
"""How many clicks a scale takes."""
MOST = WANTED | {"rings": 6}
"""And how many it may."""
SENSES = {
    ("next", "face"): "next", ("next", "back"): "previous",
    ("previous", "face"): "previous", ("previous", "back"): "next",
}  # fmt: skip
"""How the leaves lay in the log and which side is seen: whose photograph shows a leaf's back. Where
either is not known, and between sawn leaves, it is nobody's."""
_BACK = re.compile(r"(?<![^\W\d_])backs?(?![^\W\d_])", re.IGNORECASE)


def found(files: list[Path], folder: str, behind: str) -> tuple[dict[int, Path], dict[int, Path]]:
    """The photographs of faces and of backs by their leaves' numbers: the `files`, or if there are
    none those of the `folder`, and those of backs in the folder `behind`. Raises VeneerError."""
    if not files and not folder:
        raise VeneerError(
            "nothing-chosen", "Choose the folder that holds the photographs of the leaves."
        )
    more = photo_files(Path(behind).expanduser()) if behind else []
    return sorted_out(files or photo_files(Path(folder).expanduser()), more)


def sorted_out(
    paths: Iterable[Path], behind: Iterable[Path] = ()
) -> tuple[dict[int, Path], dict[int, Path]]:
    """The photographs of faces and those of backs, whose names say back or which are `behind`, by
    the leaves' numbers. Raises VeneerError."""
    faces, backs = [], []
    for path in paths:
        (backs if _BACK.search(path.stem) else faces).append(path)
    if not faces:
        raise VeneerError(
            "only-backs", "The names of all photographs say back; those of the faces are missing."
        )
    numbered = by_number_or_name(faces)
    return numbered, _behind([*backs, *behind], list(numbered))


def counted(photos: Mapping[int, Path]) -> bool:
    """Whether photographs were numbered in the order of their names, not by numbers in these."""
    return any(number_in(path) != number for number, path in photos.items())


def _behind(backs: list[Path], leaves: list[int]) -> dict[int, Path]:
    """Photographs of backs by their leaves' numbers. In the order of their names they are those of
    all leaves, or of none that could be told."""
    numbered = by_number_or_name(backs)
    if not counted(numbered):
        return numbered
    if len(numbered) != len(leaves):
        raise VeneerError(
            "backs-not-numbered",
            "The names of the {backs} photographs of backs do not tell whose they are; put the "
            "number of its leaf last in each name.",
            backs=len(numbered),
        )
    return dict(zip(leaves, numbered.values()))


@dataclass
class Clicks:
    """What was clicked, by photograph; under None what holds for all of them."""

    points: dict[Path | None, list[Place]] = field(default_factory=dict)
    corners: dict[Path | None, list[Place]] = field(default_factory=dict)
    marks: dict[Path | None, list[Place]] = field(default_factory=dict)
    patch: dict[Path | None, list[Place]] = field(default_factory=dict)
    outline: dict[Path | None, list[Place]] = field(default_factory=dict)


@dataclass
class Plan:
    """What the panel's boxes say: the scale and how it is known (`apart`: the six distances between
    four paper marks), whether clicks hold for `each`
    photograph by itself, where the `leaf` is ("whole": it fills the photograph; "cut": it is found
    and cut out; "keep": found, and all is kept), where the `light` is measured, the `turn`."""

    scale: str = "length"
    known: float = 0.0
    per_pixel: float = 0.0
    rectangle: tuple[float, float] = (0.0, 0.0)
    apart: tuple[float, ...] = ()
    beside: bool = False
    each: bool = False
    leaf: str = "whole"
    light: str = LIGHTS[0]
    turn: int = 0
    clicks: Clicks = field(default_factory=Clicks)

    @property
    def plain(self) -> bool:
        """Whether photographs are taken as they are, at one scale."""
        simple = self.scale not in WANTED and self.leaf == "whole" and not self.turn
        return simple and self.light == LIGHTS[0]

    def mm_per_px(self, first: tuple[int, int]) -> float:
        """By the size of the first photograph (rows, columns), where no clicks tell. Raises
        VeneerError, also for a scale at which its leaf is larger than any."""
        rows, columns = first if self.turn % 180 == 0 else reversed(first)
        if self.scale == "pixel":
            scale = positive("size of a pixel", self.per_pixel)
        else:
            across = marked("width of the first photograph")
            along = marked("length of the first photograph")
            known = positive(along if self.scale == "length" else across, self.known)
            scale = known / (rows if self.scale == "length" else columns)
        if self.leaf == "whole":
            size = (0.0, 0.0, columns * scale, rows * scale)
            check_leaf_size(size, name=say("The first photograph"))
        return scale

    def key(self, path: Path) -> Path | None:
        """Under what the clicks on a photograph are kept."""
        return path if self.each else None

    def clicked(self, path: Path) -> list[Place]:
        """The clicks that give a photograph its scale."""
        return self.scale_clicks.get(self.key(path), [])[: MOST.get(self.scale, 0)]

    @property
    def scale_clicks(self) -> dict[Path | None, list[Place]]:
        """Of all photographs, the clicks that give them their scale."""
        if self.scale in MARKED:
            return self.clicks.marks
        return self.clicks.corners if self.scale == "corners" else self.clicks.points

    @property
    def distances(self) -> tuple[float, ...]:
        """Those between the paper marks that were clicked."""
        return {"two marks": (self.known,), "four marks": self.apart}.get(self.scale, ())

    def missing(self, paths: Iterable[Path]) -> list[Path]:
        """The photographs on which clicks are still wanted."""
        return [path for path in paths if self._lacks(path)]

    def _lacks(self, path: Path) -> bool:
        if len(self.clicked(path)) < WANTED.get(self.scale, 0):
            return True
        return "patch" in self.light and not self.clicks.patch.get(self.key(path))

    def preparations(
        self, paths: list[Path], first: Callable[[], tuple[int, int]]
    ) -> list[Preparation]:
        """How each photograph becomes a leaf; `first` gives the size of the first. Raises
        VeneerError."""
        lacking = self.missing(paths)
        if lacking:
            raise VeneerError(
                "clicks-missing",
                "Click what is still missing {where}.",
                where=_on(lacking, paths) if self.each else say("on the photograph"),
            )
        scale = None if self.scale in WANTED else self.mm_per_px(first())
        return [self._preparation(path, scale) for path in paths]

    def _preparation(self, path: Path, scale: float | None) -> Preparation:
        how: dict[str, Any] = {"turn": self.turn, "light": self.light, "margin": 0.0}
        if self.scale == "points":
            how |= {"points": self.clicked(path), "distance": self.known}
        elif self.scale == "corners":
            how |= {
                "corners": self.clicked(path), "rectangle": self.rectangle, "beside": self.beside,
            }  # fmt: skip
        elif self.scale in MARKED:
            how |= {"marks": self.clicked(path), "distances": self.distances}
        else:
            how["mm_per_px"] = scale
        if self.leaf != "whole":
            drawn = self.clicks.outline.get(path)
            how |= {"outline": drawn} if drawn else {"find": True}
            how["margin"] = None if self.leaf == "keep" else RIM
        if "patch" in self.light:
            how["patch"] = self.clicks.patch[self.key(path)]
        return Preparation(**how)


def _on(lacking: list[Path], paths: list[Path]) -> str:
    """Which photographs of all, in a few words."""
    if len(lacking) == len(paths):
        return say("on each photograph")
    called = names_apart(paths)
    names = [called[path] for path in lacking[:3]]
    more = len(lacking) - len(names)
    if more:
        return say("on {names} and {more} more", names=", ".join(names), more=more)
    return say("on {names}", names=", ".join(names))

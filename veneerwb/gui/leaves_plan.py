# SPDX-License-Identifier: LGPL-2.1-or-later
"""What was chosen and clicked about a batch of photographs, and the core's Preparation of each.

Clicks are places on a photograph held upright, (column, row).
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from veneerwb.core import VeneerError
from veneerwb.core.files import shown_name
from veneerwb.core.photos import by_number
from veneerwb.core.plane import positive
from veneerwb.core.preparing import LIGHTS, Preparation
from veneerwb.gui.photo_frame import Place

SCALES = ("length", "width", "pixel", "points", "corners")
WANTED = {"points": 2, "corners": 4}
"""How many clicks a scale takes."""
LEAVES = ("whole", "cut", "keep")
"""The leaf fills the photograph; it is found and cut out; it is found, and all is kept."""
_BACK = re.compile(r"(?<![^\W\d_])backs?(?![^\W\d_])", re.IGNORECASE)


def sorted_out(paths: Iterable[Path]) -> tuple[dict[int, Path], dict[int, Path]]:
    """The photographs of faces and those of backs, whose names say back, by the leaves' numbers.
    Raises VeneerError."""
    faces, backs = [], []
    for path in paths:
        (backs if _BACK.search(path.stem) else faces).append(path)
    if not faces:
        raise VeneerError(
            "only-backs", "The names of all photographs say back; those of the faces are missing."
        )
    return by_number(faces), by_number(backs)


@dataclass
class Clicks:
    """What was clicked, by photograph; under None what holds for all of them."""

    points: dict[Path | None, list[Place]] = field(default_factory=dict)
    corners: dict[Path | None, list[Place]] = field(default_factory=dict)
    patch: dict[Path | None, list[Place]] = field(default_factory=dict)
    outline: dict[Path | None, list[Place]] = field(default_factory=dict)


@dataclass
class Plan:
    """What the panel's boxes say: the scale and how it is known, whether clicks hold for `each`
    photograph by itself, where the `leaf` is, where the `light` is measured, the `turn`."""

    scale: str = "length"
    known: float = 0.0
    per_pixel: float = 0.0
    rectangle: tuple[float, float] = (0.0, 0.0)
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
        """By the size of the first photograph (rows, columns), where no clicks tell."""
        if self.scale == "pixel":
            return positive("size of a pixel", self.per_pixel)
        known = positive(f"{self.scale} of the first photograph", self.known)
        rows, columns = first if self.turn % 180 == 0 else reversed(first)
        return known / (rows if self.scale == "length" else columns)

    def key(self, path: Path) -> Path | None:
        """Under what the clicks on a photograph are kept."""
        return path if self.each else None

    def clicked(self, path: Path) -> list[Place]:
        """The clicks that give a photograph its scale."""
        return self._scale_clicks.get(self.key(path), [])

    @property
    def _scale_clicks(self) -> dict[Path | None, list[Place]]:
        return self.clicks.corners if self.scale == "corners" else self.clicks.points

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
                where=_on(lacking, len(paths)) if self.each else "on the photograph",
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
        else:
            how["mm_per_px"] = scale
        if self.leaf != "whole":
            drawn = self.clicks.outline.get(path)
            how |= {"outline": drawn} if drawn else {"find": True}
        if self.leaf == "keep":
            how["margin"] = None
        if "patch" in self.light:
            how["patch"] = self.clicks.patch[self.key(path)]
        return Preparation(**how)


def _on(paths: list[Path], total: int) -> str:
    """Which photographs, in a few words."""
    if len(paths) == total:
        return "on each photograph"
    names = [shown_name(path) for path in paths[:3]]
    more = len(paths) - len(names)
    return "on " + ", ".join(names) + (f" and {more} more" if more else "")

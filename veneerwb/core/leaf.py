# SPDX-License-Identifier: LGPL-2.1-or-later
"""Leaves: their sides, faults and usable area, the bundle they make, and a stock of plain sizes.

n leaves sliced without kerf have n + 1 surfaces S0 .. Sn. Where leaf k + 1 lay under leaf k
(`back="next"`) leaf k shows S(k-1) on its face and S(k) on its back; where it lay over it
(`"previous"`) the other way about. `"own"` is for sawn leaves or an unknown sense: surfaces are
then counted as for "next", and a back that was not photographed is pictured by its own face.

Leaf coordinates are mm as seen from the face, origin at the lower left of the face's photo, x
across the leaf, y along the grain.
"""

from __future__ import annotations

import math
import os
from abc import ABC, abstractmethod
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property
from typing import Any

import numpy as np
from shapely.geometry import box

from veneerwb.core.errors import VeneerError
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY, Motion, choice, positive, tand, whole

BACKS = ("next", "previous", "own")
MOST_LEAVES = 1000
STEEPEST = 89.0
"""Degrees between figure and leaf: beyond it lies end grain, which is no veneer."""
THICKEST = 20.0
ASSUMED_SLOPE = 5.0
"""Degrees between figure and leaf taken where nobody said: common practice, no source."""


@dataclass(frozen=True)
class Fault:
    """A place on a leaf that must not be seen: `outline` (shapely, leaf mm) and what it is."""

    outline: Any
    kind: str = "knot"


@dataclass(frozen=True)
class Side:
    """One side of a leaf: its picture, and where the bundle's figure lies on it.

    `register` takes bundle mm to mm on this leaf: where to cut and pin. `view` takes bundle mm to
    mm on `photo` (for a side with its own photo the two agree, unless it was photographed in
    another frame). `source` is "photo", "neighbour" (the neighbour's photo of the same surface) or
    "own face".
    """

    image: Photo
    register: Motion = IDENTITY
    view: Motion = IDENTITY
    source: str = "photo"

    @property
    def photo(self) -> np.ndarray:
        """uint8, rows x columns x 3, as seen from the face."""
        return self.image.pixels

    @property
    def mm_per_px(self) -> float:
        return self.image.mm_per_px


@dataclass(frozen=True)
class Leaf:
    """One leaf: `number`, its face, its back (None: pictured as the bundle's sense allows), the
    area that may be used (shapely, leaf mm; the whole photo where not given) and its faults."""

    number: int
    face: Side
    back: Side | None = None
    usable: Any = None
    faults: tuple[Fault, ...] = ()

    def __post_init__(self) -> None:
        if self.usable is None:
            object.__setattr__(self, "usable", box(0.0, 0.0, *self.size))
        object.__setattr__(self, "faults", tuple(self.faults))

    @property
    def size(self) -> tuple[float, float]:
        """(width, length) in mm."""
        return self.face.image.size

    def side(self, turned: bool) -> Side:
        """The side that a piece shows: the back if it is turned over, else the face."""
        return (self.back or replace(self.face, source="own face")) if turned else self.face

    @property
    def photo(self) -> np.ndarray:
        return self.face.photo

    @property
    def mm_per_px(self) -> float:
        return self.face.mm_per_px

    @property
    def register(self) -> Motion:
        return self.face.register


class Leaves(ABC):
    """What layouts and checks ask of a bundle or a stock: sizes, areas and registers, no
    pictures."""

    back: str
    thickness: float

    @property
    @abstractmethod
    def numbers(self) -> tuple[int, ...]:
        """The leaf numbers, rising."""

    @property
    @abstractmethod
    def size(self) -> tuple[float, float]:
        """(width, length) in mm that every leaf has."""

    @abstractmethod
    def usable(self, number: int) -> Any:
        """The usable area of a leaf (shapely, leaf mm)."""

    @abstractmethod
    def faults(self, number: int) -> tuple[Fault, ...]:
        """The faults of a leaf."""

    @abstractmethod
    def register(self, number: int, turned: bool) -> Motion:
        """Bundle mm to mm on that leaf, for the side that a piece shows."""

    def common_area(self, numbers: Sequence[int]) -> Any:
        """Where the usable areas of those leaves lie over each other (shapely, bundle mm)."""
        area = None
        for n in numbers:
            here = self.register(n, False).inverse().apply_to(self.usable(n))
            area = here if area is None else area.intersection(here)
        return area

    def surface(self, number: int, turned: bool) -> int:
        """The surface S that leaf `number` shows."""
        return number - 1 if turned == (self.back == "previous") else number


@dataclass(frozen=True)
class Bundle(Leaves):
    """Consecutive leaves with their photographs, thickness in mm, and the stack's sense.

    `slope` is the angle in degrees between figure and leaf, if known: figure wanders thickness /
    tan(slope) from surface to surface. `edition` counts how often leaves got other numbers or were
    turned, so that paper made before is known to be stale. Backs that were not photographed are
    filled in here.
    """

    leaves: tuple[Leaf, ...]
    thickness: float
    back: str = "next"
    slope: float | None = None
    edition: int = 0
    _by_number: dict[int, Leaf] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        choice("back", self.back, BACKS)
        thickness = positive("leaf thickness", self.thickness, THICKEST)
        object.__setattr__(self, "thickness", thickness)
        if self.slope is not None and not abs(self.slope) <= STEEPEST:
            raise VeneerError(
                "no-such-slope",
                "The angle between figure and leaf cannot be {slope} degrees; give one from 0 to "
                "{most}.",
                slope=float(self.slope), most=STEEPEST,
            )
        ordered = sorted(self.leaves, key=lambda leaf: leaf.number)
        if not ordered:
            raise VeneerError("no-leaves", "The bundle has no leaves; add at least one photograph.")
        known = {leaf.number: leaf for leaf in ordered}
        if len(known) < len(ordered):
            numbers = [leaf.number for leaf in ordered]
            twice = next(n for n in numbers if numbers.count(n) > 1)
            raise VeneerError(
                "same-number", "Two leaves carry the number {leaf}; give each its own.", leaf=twice
            )
        filled = tuple(self._with_back(leaf, known) for leaf in ordered)
        object.__setattr__(self, "leaves", filled)
        object.__setattr__(self, "_by_number", {leaf.number: leaf for leaf in filled})

    def _with_back(self, leaf: Leaf, known: dict[int, Leaf]) -> Leaf:
        if leaf.back is not None and leaf.back.source == "photo":
            return leaf
        step = {"next": 1, "previous": -1, "own": 0}[self.back]
        neighbour = known.get(leaf.number + step) if step else None
        if neighbour is None:
            return replace(leaf, back=replace(leaf.face, source="own face"))
        seen = neighbour.face
        return replace(leaf, back=Side(seen.image, leaf.register, seen.view, "neighbour"))

    @staticmethod
    def from_photos(
        paths: Sequence[str | os.PathLike[str]],
        mm_per_px: float,
        thickness: float,
        back: str = "next",
        backs: Sequence[str | os.PathLike[str] | None] = (),
        slope: float | None = None,
    ) -> Bundle:
        """A bundle whose leaf k is photographed in paths[k-1] (and its back in backs[k-1], if
        given).

        `mm_per_px` in mm, `thickness` in mm. Photos of backs are mirrored on reading. Raises
        VeneerError for a photo that cannot be read, naming it.
        """
        if isinstance(paths, (str, os.PathLike)):
            raise VeneerError(
                "not-a-list", "Give the photos as a list of files, one for each leaf, in order."
            )
        faces = [Photo.read(path, mm_per_px) for path in paths]
        rear = [None if p is None else Photo.read(p, mm_per_px, mirrored=True) for p in backs]
        if len(rear) > len(faces):
            raise VeneerError(
                "too-many-backs",
                "There are {backs} photos of backs for {faces} leaves; give at most one for each.",
                backs=len(rear),
                faces=len(faces),
            )
        rear += [None] * (len(faces) - len(rear))
        leaves = [
            Leaf(k, Side(face), None if behind is None else Side(behind))
            for k, (face, behind) in enumerate(zip(faces, rear), start=1)
        ]
        return Bundle(tuple(leaves), thickness, back, slope)

    @property
    def numbers(self) -> tuple[int, ...]:
        return tuple(self._by_number)

    @property
    def size(self) -> tuple[float, float]:
        widths, lengths = zip(*(leaf.size for leaf in self.leaves))
        return min(widths), min(lengths)

    def leaf(self, number: int) -> Leaf:
        """The leaf of that number; VeneerError if the bundle has none."""
        if number not in self._by_number:
            raise VeneerError(
                "no-such-leaf",
                "The bundle has no leaf {leaf}; it has {numbers}.",
                leaf=number,
                numbers=ranges(self.numbers),
            )
        return self._by_number[number]

    def usable(self, number: int) -> Any:
        return self.leaf(number).usable

    def faults(self, number: int) -> tuple[Fault, ...]:
        return self.leaf(number).faults

    def register(self, number: int, turned: bool) -> Motion:
        return self.leaf(number).side(turned).register

    def wander(self) -> float:
        """mm that the figure may wander from one surface to the next: t / tan(slope) (plane
        geometry); with the slope unknown, at ASSUMED_SLOPE; with a slope of 0 there is none."""
        slope = ASSUMED_SLOPE if self.slope is None else abs(self.slope)
        return self.thickness / tand(slope) if slope else 0.0


@dataclass(frozen=True)
class Stock(Leaves):
    """Leaves known by their size alone: `width` and `length` in mm, how many, `thickness` in mm."""

    width: float
    length: float
    leaves: int
    thickness: float
    back: str = "next"

    def __post_init__(self) -> None:
        choice("back", self.back, BACKS)
        settled = {
            "width": positive("leaf width", self.width),
            "length": positive("leaf length", self.length),
            "leaves": whole("number of leaves", self.leaves, 1, MOST_LEAVES),
            "thickness": positive("leaf thickness", self.thickness, THICKEST),
        }
        for name, value in settled.items():
            object.__setattr__(self, name, value)

    @property
    def numbers(self) -> tuple[int, ...]:
        return tuple(range(1, self.leaves + 1))

    @property
    def size(self) -> tuple[float, float]:
        return self.width, self.length

    @cached_property
    def _area(self) -> Any:
        return box(0.0, 0.0, self.width, self.length)

    def usable(self, number: int) -> Any:
        return self._area

    def common_area(self, numbers: Sequence[int]) -> Any:
        return self._area

    def faults(self, number: int) -> tuple[Fault, ...]:
        return ()

    def register(self, number: int, turned: bool) -> Motion:
        return IDENTITY


def measures(area: Any) -> tuple[float, float]:
    """(width, length) in mm of the least rectangle round an outline, however it lay under the
    camera; the width is the side nearer to x."""
    ring = np.asarray(area.minimum_rotated_rectangle.exterior.coords)
    (ax, ay), (bx, by) = np.diff(ring[:3], axis=0)
    a, b = math.hypot(ax, ay), math.hypot(bx, by)
    return (b, a) if abs(ay) > abs(ax) else (a, b)


def ranges(numbers: Sequence[int]) -> str:
    """Whole numbers as a person writes them: 1-4, 7, 9-12."""
    runs: list[list[int]] = []
    for n in sorted(numbers):
        if runs and n == runs[-1][-1] + 1:
            runs[-1].append(n)
        else:
            runs.append([n])
    return ", ".join(str(r[0]) if len(r) == 1 else f"{r[0]}-{r[-1]}" for r in runs)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A photograph of a pinned leaf or of a whole stack: what was clicked on it, and what it tells.

Places are (column, row) on that photograph. Nothing here writes to a document.
"""

from __future__ import annotations

import math
import os
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, NamedTuple

import FreeCAD

from veneerwb.core import Bundle, VeneerError
from veneerwb.core.photos.reading import Photo
from veneerwb.core.renumbering import numbers_now
from veneerwb.core.targets import Pins, Seen, confirm, located
from veneerwb.core.targets.mark import LETTERS, MARK
from veneerwb.gui.panels import fields
from veneerwb.gui.photos.frame import Picture, Place
from veneerwb.gui.photos.items import Item, mark

translate = FreeCAD.Qt.translate
HERE = "VeneerMarksPanel"
PIN = 0.5
"""Widget pixels: one deviation of a pin that is clicked by hand; how well people point is our
guess."""
SHARPEST = 0.3
"""px: however large it is seen, no click is better."""
PINS = 2


class Name(NamedTuple):
    """What was clicked: a leaf's mark (0 for A), or a pin (leaf 0; 0 for the first)."""

    leaf: int
    which: int

    @property
    def is_pin(self) -> bool:
        return self.leaf == 0

    @property
    def text(self) -> str:
        if self.is_pin:
            return translate(HERE, "pin {number}").format(number=self.which + 1)
        return f"{self.leaf} {LETTERS[self.which]}"


@dataclass(eq=False)
class Sighting:
    """Something clicked: what, where, one deviation of its place (px) and, of a mark, the radius of
    its ring (px)."""

    name: Name
    place: Place
    error: float
    radius: float = 0.0

    @property
    def mm_per_px(self) -> float:
        """By the ring, as printed."""
        return MARK.outer / 2 / self.radius

    def told(self) -> str:
        if self.name.is_pin:
            return translate(HERE, "{name}, as clicked").format(name=self.name.text)
        error = fields.length(max(self.error * self.mm_per_px, 0.01), 2)
        return f"{self.name.text} \u00b1 {error}"


class StackBook:
    """`places` gives the marks of a leaf (leaf mm, by number) as they are known now.

    `top` is the topmost leaf, `camera` how many mm the camera was above it (0: unknown), `stand`
    where the pins stand in the bundle (mm)."""

    def __init__(self, bundle: Bundle, places: Callable[[int], Mapping[int, Place]]) -> None:
        self.bundle, self._places = bundle, places
        self.picture: Picture | None = None
        self.file = ""
        self.sightings: list[Sighting] = []
        self.top, self.camera = bundle.numbers[0], 0.0
        width, length = bundle.leaf(self.top).size
        self.stand = [(width / 2, length / 10), (width / 2, length - length / 10)]

    def read_again(self, bundle: Bundle, places: Callable[[int], Mapping[int, Place]]) -> None:
        """The bundle as it is now; what was clicked stays, but for leaves that are gone."""
        now = {0: 0, **numbers_now(self.bundle, bundle)}
        self.bundle, self._places = bundle, places
        self.sightings = [one for one in self.sightings if one.name.leaf in now]
        for one in self.sightings:
            one.name = one.name._replace(leaf=now[one.name.leaf])
        self.top = now.get(self.top, bundle.numbers[0])

    def read(self, path: str) -> None:
        """Takes another photograph, on which nothing is clicked yet. Raises VeneerError."""
        photo = Photo.read(path, 1.0)
        self.picture, self.file = Picture(photo.pixels), os.path.basename(path)
        self.sightings = []

    # --- names --------------------------------------------------------------------------------

    def names(self) -> list[Name]:
        """What can be clicked: the marks that are known of every leaf, and the pins."""
        marks = [Name(leaf, k) for leaf in self.bundle.numbers for k in sorted(self._places(leaf))]
        return marks + [Name(0, k) for k in range(PINS)]

    def on(self, name: Name | None) -> Sighting | None:
        return next((one for one in self.sightings if one.name == name), None)

    def following(self, name: Name | None) -> Name | None:
        """The first from `name` on that was not clicked."""
        names = self.names()
        first = names.index(name) if name in names else 0
        free = (one for one in names[first:] + names[:first] if self.on(one) is None)
        return next(free, None)

    # --- on the photograph --------------------------------------------------------------------

    def items(self) -> list[Item]:
        return [mark(one.place, one.name.text, meant=one) for one in self.sightings]

    def click(
        self, rough: Place, name: Name, entry: Sighting | None = None, zoom: float = 1.0
    ) -> Sighting:
        """What is near a click: `entry` moved there, or a new one of that name; or the mark that is
        known there already, centred anew. A pin stays where it was clicked, as exact as a photo
        seen with that `zoom` lets it be.

        Raises VeneerError where there is no mark that can be centred, or another one is known.
        """
        if name.is_pin:
            entry = entry or self._new(name)
            entry.place, entry.error = rough, max(SHARPEST, PIN / zoom)
            return entry
        rings = [one.mm_per_px for one in self.sightings if one.radius]
        found = located(self.picture.pixels, rough, rings[0] if rings else None, self.file)
        there = next((one for one in self.sightings if one.radius
                      and math.dist(one.place, found.centre) < found.radius), None)
        if entry is not None and there not in (None, entry):
            raise VeneerError(
                "mark-twice", "That is mark {there} already; drag {moved} to another mark.",
                there=there.name.text, moved=entry.name.text,
            )
        entry = there or entry or self._new(name)
        entry.place, entry.error, entry.radius = found.centre, found.error, found.radius
        return entry

    def _new(self, name: Name) -> Sighting:
        self.sightings.append(Sighting(name, (0.0, 0.0), 0.0))
        return self.sightings[-1]

    def rename(self, entry: Sighting, name: Name) -> None:
        """Gives a mark another name; the one that has it takes the old one in exchange."""
        other = self.on(name)
        if other is not None:
            other.name = entry.name
        entry.name = name

    # --- what it tells ------------------------------------------------------------------------

    def depth(self, leaf: int) -> float:
        """mm that a leaf lies below the topmost."""
        numbers = list(self.bundle.numbers)
        return abs(numbers.index(leaf) - numbers.index(self.top)) * self.bundle.thickness

    def _seen(self) -> list[Seen]:
        """The leaves that marks were clicked of, the topmost first."""
        found = []
        for leaf in sorted({one.name.leaf for one in self.sightings} - {0}, key=self.depth):
            known = self._places(leaf)
            ours = [one for one in self.sightings
                    if one.name.leaf == leaf and one.name.which in known]
            if ours:
                found.append(Seen(
                    leaf, [one.place for one in ours], [known[one.name.which] for one in ours],
                    self.bundle.leaf(leaf).register, self.depth(leaf),
                ))
        return found

    def verdict(self) -> list[Any]:
        """The core's findings. Raises VeneerError where there is too little to compare."""
        pins = [one for one in self.sightings if one.name.is_pin]
        standing = Pins(
            [one.place for one in pins], [self.stand[one.name.which] for one in pins],
            max((one.error for one in pins), default=0.0),
        )
        rings = [one.error for one in self.sightings if one.radius]
        columns, rows = self.picture.size
        return confirm(
            self._seen(), standing if pins else None, error=max(rings, default=0.0),
            camera=self.camera or None, middle=(columns / 2, rows / 2),
        )

    def source(self, findings: list[Any]) -> str:
        """Where the figures of the findings come from."""
        rings = [one.error * one.mm_per_px for one in self.sightings if one.radius]
        said = [translate(
            HERE, "From this photograph, {count} marks centred to {error} or better."
        ).format(count=len(rings), error=fields.length(max([*rings, 0.01]), 2))]
        if findings[0].values["squared"]:
            said.append(translate(HERE, "It is squared up by the marks of leaf {leaf}.").format(
                leaf=self._seen()[0].leaf))
        else:
            said.append(translate(HERE, "It is taken to be square on."))
        deepest = max(findings, key=lambda one: one.values["parallax"]).values
        if deepest["parallax"]:
            said.append(translate(
                HERE, "Leaf {leaf} lies {depth} down: a parallax of {shift} is set right."
            ).format(leaf=deepest["leaf"], depth=fields.length(self.depth(deepest["leaf"]), 1),
                     shift=fields.length(deepest["parallax"], 1)))
        said.append(translate(HERE, "The limits are our choice. Up the grain is where the arrows "
                                    "point, seen from the face."))
        return " ".join(said)

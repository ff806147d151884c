# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is pointed at on a picture: marks and areas, how they are changed, and nothing of widgets.

All places are (column, row) on the picture.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from typing import Any

from veneerwb.gui.photos.frame import Place

FEWEST = 3
"""Corners of an area."""


@dataclass(eq=False)
class Item:
    """`corners` of an area of that `kind` (see looks.py), or the one place of a mark; `text` is
    written beside it, `meant` is whatever its owner needs to know it by. One that is not `held`
    can be dragged; one that is no `ring` is a line that was ended, not closed.

    What keeps its shape says by `follow` where its corners lie when the corner of a number (None:
    all of it, dragged anywhere within) goes from one place to another; `grips` are the numbers of
    the corners that it can be held by, which are always shown.
    """

    corners: list[Place]
    kind: str = "mark"
    text: str = ""
    held: bool = False
    meant: Any = None
    ring: bool = True
    follow: Callable[[int | None, Place, Place], list[Place]] | None = None
    grips: tuple[int, ...] = ()

    def take(self, corner: int | None, start: Place, end: Place) -> None:
        """The corner, or all of it, goes from one place to another."""
        if self.follow is not None:
            self.corners[:] = self.follow(corner, start, end)
        elif corner is not None:
            self.corners[corner] = end

    @property
    def is_mark(self) -> bool:
        return self.kind == "mark"

    @property
    def place(self) -> Place:
        """Where a mark is."""
        return self.corners[0]


def mark(place: Place, text: str = "", **more: Any) -> Item:
    """A mark at a place."""
    return Item([place], "mark", text, **more)


@dataclass(frozen=True)
class Grip:
    """What is held: an item, and the number of its corner (None: all of it)."""

    item: Item
    corner: int | None = None


@dataclass
class Pointing:
    """The items on a picture and what the user does to them.

    `most` marks may be placed, lettered by `letters`; while `kind` is not "", areas of it are
    drawn. Both can be nought: then the items that are there can be changed, and no more. Kinds in
    `lines` may also be lines: ended by Enter, not closed on their first corner.
    `changed` is called after each change by the user, with the item, and `moving` while one is
    dragged; `chosen` when another one is chosen (None: none); `within` brings a place back onto the
    picture.
    """

    marks: list[Item] = field(default_factory=list)
    areas: list[Item] = field(default_factory=list)
    most: int = 0
    letters: str = ""
    kind: str = ""
    lines: tuple[str, ...] = ()
    drawn: Item | None = None
    """The area that is being drawn."""
    grip: Grip | None = None
    """What is chosen."""
    changed: Callable[[Item], None] = lambda item: None
    moving: Callable[[Item], None] = lambda item: None
    chosen: Callable[[Item | None], None] = lambda item: None
    within: Callable[[Place], Place] = lambda place: place
    _before: list[Place] | None = None  # where what is dragged was
    _last: Place = (0.0, 0.0)  # where the pointer held it last

    # --- what is where ------------------------------------------------------------------------

    @property
    def places_more(self) -> bool:
        """Whether a click places a mark or a corner."""
        return bool(self.kind) or len(self.marks) < self.most

    def at(self, place: Place, reach: float) -> Grip | None:
        """The mark, or corner of the chosen area, within `reach` of a place, the nearest; where a
        click places nothing else, the edge or the area that it lies on, the smallest."""
        near = [
            (math.dist(corner, place), Grip(item, number))
            for item in self._loose()
            for number, corner in enumerate(item.corners)
            if item.follow is None or number in item.grips
        ]
        found = min(near, key=lambda one: one[0], default=(math.inf, None))
        if found[0] <= reach:
            return found[1]
        if self.places_more or self.drawn is not None:
            return None
        edges = [(apart, Grip(area)) for area, _, apart in self._edges(place) if apart <= reach]
        if edges:
            return min(edges, key=lambda one: one[0])[1]
        held = [m for m in self.marks if m.held and math.dist(m.place, place) <= reach]
        if held:
            return Grip(held[0])
        on = [area for area in self.areas if _covers(area.corners, place)]
        return Grip(min(on, key=lambda one: abs(_area(one.corners)))) if on else None

    def _loose(self) -> Iterator[Item]:
        """What has corners that can be dragged now."""
        yield from (one for one in self.marks if not one.held)
        if self.drawn is not None:
            yield self.drawn
            return
        yield from (one for one in self.areas if one.grips and not one.held)
        if self.grip is not None and not (self.grip.item.is_mark or self.grip.item.held):
            yield self.grip.item

    def _edges(self, place: Place) -> Iterator[tuple[Item, int, float]]:
        """Every edge: its area, the number of its first corner, how far it is from a place."""
        for area in self.areas:
            for number, corner in enumerate(area.corners):
                following = area.corners[(number + 1) % len(area.corners)]
                yield area, number, _apart(place, corner, following)

    # --- changes ------------------------------------------------------------------------------

    def press(self, place: Place, reach: float) -> bool:
        """The button goes down at a place; whether something now follows the pointer."""
        place, grip = self.within(place), self.at(place, reach)
        if self.drawn is not None:
            corners = self.drawn.corners
            if len(corners) >= FEWEST and math.dist(corners[0], place) <= reach:
                self.close(ring=True)
                return False
        if grip is not None and (grip.corner is None or grip.item is not self.drawn):
            self.choose(grip)
            if grip.corner is None and (grip.item.follow is None or grip.item.held):
                return False
            self._before = list(grip.item.corners)
            self._last = place if grip.corner is None else grip.item.corners[grip.corner]
            return True
        if self.drawn is None and not self.places_more:
            self.choose(None)
            return False
        self._place(place)
        return True

    def _place(self, place: Place) -> None:
        if self.drawn is not None:
            self.drawn.corners.append(place)
            grip = Grip(self.drawn, len(self.drawn.corners) - 1)
        elif self.kind:
            self.drawn = Item([place], self.kind)
            grip = Grip(self.drawn, 0)
        else:
            item = mark(place, self._letter())
            self.marks.append(item)
            grip = Grip(item, 0)
        self._before = None
        self.choose(grip)

    def _letter(self) -> str:
        """The first letter that no mark has."""
        taken = {one.text for one in self.marks}
        return next((letter for letter in self.letters if letter not in taken), "")

    def drag(self, place: Place) -> None:
        """What is held follows the pointer."""
        grip = self.grip
        if grip is not None:
            start, self._last = self._last, self.within(place)
            grip.item.take(grip.corner, start, self._last)
            self.moving(grip.item)

    def release(self) -> None:
        """The button comes up."""
        grip, before, self._before = self.grip, self._before, None
        if grip is not None and grip.item is not self.drawn and before != grip.item.corners:
            self.changed(grip.item)

    def put_back(self) -> None:
        """What is dragged goes back to where it was; what has just been placed goes."""
        grip, before, self._before = self.grip, self._before, None
        if grip is None:
            return
        if before is not None:
            grip.item.corners[:] = before  # its owner may keep that list
            self.moving(grip.item)
        elif grip.item is self.drawn:
            self.step_back()
        elif grip.item.is_mark:
            self.marks.remove(grip.item)
            self.choose(None)

    def choose(self, grip: Grip | None) -> None:
        """Makes that what is chosen."""
        before, self.grip = self.grip, grip
        item = grip.item if grip else None
        if item is not (before.item if before else None):
            self.chosen(item)

    def choose_next(self) -> None:
        """Goes on to the next mark or area."""
        items = [*self.marks, *self.areas]
        if self.drawn is None and items:
            now = items.index(self.grip.item) if self.grip is not None else -1
            item = items[(now + 1) % len(items)]
            self.choose(Grip(item, 0 if item.is_mark and not item.held else None))

    def choose_next_corner(self) -> None:
        """Goes on to the next corner of the area that is chosen, of those that it is held by."""
        item = self.grip.item if self.grip is not None else None
        if item is None or item.is_mark or item.held:
            return
        now = -1 if self.grip.corner is None else self.grip.corner
        numbers = item.grips if item.follow is not None else range(len(item.corners))
        if numbers:
            self.choose(Grip(item, next((one for one in numbers if one > now), numbers[0])))

    def close(self, ring: bool = False) -> bool:
        """Ends the drawing of an area, if it has corners enough; whether it has. `ring`: by a click
        on its first corner, which makes a ring of what could be a line too."""
        area = self.drawn
        if area is None:
            return False
        area.ring = ring or area.kind not in self.lines
        if len(area.corners) < (FEWEST if area.ring else 2):
            return False
        self.drawn = None
        self.areas.append(area)
        self.choose(None)
        self.changed(area)
        return True

    def step_back(self) -> bool:
        """Takes back the last corner of what is being drawn; whether there was one."""
        if self.drawn is None:
            return False
        self.drawn.corners.pop()
        if not self.drawn.corners:
            self.drawn = None
            self.choose(None)
        else:
            self.choose(Grip(self.drawn, len(self.drawn.corners) - 1))
        return True

    def insert(self, place: Place, reach: float) -> bool:
        """Gives the edge at a place another corner there; whether there is an edge."""
        edges = [one for one in self._edges(place) if one[2] <= reach and not one[0].held]
        edges = [one for one in edges if one[0].follow is None]
        if not edges:
            return False
        area, number, _ = min(edges, key=lambda one: one[2])
        area.corners.insert(number + 1, self.within(place))
        self.choose(Grip(area, number + 1))
        self.changed(area)
        return True

    def nudge(self, across: float, down: float) -> bool:
        """Moves what is chosen by so many pixels: a corner, or all of what keeps its shape; whether
        there is such a thing."""
        grip = self.grip
        if grip is None or grip.item.held or (grip.corner is None and grip.item.follow is None):
            return False
        column, row = grip.item.corners[grip.corner or 0]
        end = self.within((column + across, row + down))
        grip.item.take(grip.corner, (column, row), end)
        if grip.item is not self.drawn:
            self.changed(grip.item)
        return True

    def delete(self) -> bool:
        """Takes the chosen corner, mark or area away; whether there was one to take."""
        grip = self.grip
        if grip is None or grip.item.held:
            return False
        item = grip.item
        if item is self.drawn:
            return self.step_back()
        if item.is_mark:
            self.marks.remove(item)
        elif item.follow is None and grip.corner is not None and len(item.corners) > FEWEST:
            del item.corners[grip.corner]
            self.choose(Grip(item))
            self.changed(item)
            return True
        else:
            self.areas.remove(item)
        self.choose(None)
        self.changed(item)
        return True


def _apart(place: Place, a: Place, b: Place) -> float:
    """How far a place lies from the line between two."""
    along = (b[0] - a[0], b[1] - a[1])
    length = along[0] ** 2 + along[1] ** 2
    share = ((place[0] - a[0]) * along[0] + (place[1] - a[1]) * along[1]) / length if length else 0
    share = min(max(share, 0.0), 1.0)
    return math.dist(place, (a[0] + share * along[0], a[1] + share * along[1]))


def _area(corners: list[Place]) -> float:
    """Twice the area within corners, with a sign."""
    ahead = [*corners[1:], corners[0]]
    return sum(x * t - y * s for (x, y), (s, t) in zip(corners, ahead))


def _covers(corners: list[Place], place: Place) -> bool:
    """Whether a place lies within: a line to the right of it crosses the edge an odd number of
    times."""
    inside = False
    for (x, y), (s, t) in zip(corners, [*corners[1:], corners[0]]):
        if (y > place[1]) != (t > place[1]) and place[0] < x + (place[1] - y) / (t - y) * (s - x):
            inside = not inside
    return inside

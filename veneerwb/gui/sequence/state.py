# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the window of a sequence shows: which leaf, how, laid where, and the point that is followed.
No widget."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace

from PySide import QtGui

from veneerwb.core.leaf import Bundle
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence.frames import Frames
from veneerwb.core.sequence.point import PointDrift, point_drift
from veneerwb.paint import page
from veneerwb.paint.page import Sheet, Viewport

ONE, BLINK, HALVES, DIFFERENCE = "one", "blink", "halves", "difference"
MARKS = 2
"""Marks that are picked on each leaf: two hold a place and a turn."""
SHOWS = (ONE, BLINK, HALVES, DIFFERENCE)
Views = Mapping[int, Motion]


@dataclass(frozen=True)
class Stack:
    """The leaves and what is known of them.

    `order`: the numbers as they are paged through. `layings`: by a name, where each leaf is laid
    (mm of the stack to mm on its photograph). `figure`: the laying by which a point is followed,
    and `follows` what that laying rests on: "figure", or "log" or "marks" where nothing better is
    known. `frames` gives the leaves' own frames, where they are known, when a
    point is followed.
    """

    bundle: Bundle
    order: tuple[int, ...]
    layings: Mapping[str, Views]
    figure: str
    follows: str = "figure"
    frames: Callable[[], Frames | None] = lambda: None

    @staticmethod
    def photographed(bundle: Bundle) -> Views:
        """Simply laid on each other as they were photographed."""
        return dict.fromkeys(bundle.numbers, IDENTITY)

    @property
    def bounds(self) -> tuple[float, float, float, float]:
        """mm of the stack that the first leaf takes."""
        width, length = self.bundle.leaf(self.bundle.numbers[0]).size
        return 0.0, 0.0, width, length

    @property
    def registered(self) -> bool:
        """Whether anything is known of where the figure lies on the leaves."""
        views = self.layings[self.figure]
        return len(views) < 2 or any(view != IDENTITY for view in views.values())


@dataclass(frozen=True)
class State:
    """What is seen of a stack. Places on it are mm of the stack under the laying `laid`."""

    stack: Stack
    leaf: int
    other: int
    laid: str
    show: str = ONE
    second: bool = False
    """Whether the other of two leaves shown by turns is up now."""
    viewport: Viewport | None = None
    point: tuple[float, float] | None = None
    """The point that is followed: bundle mm, under the laying of the figure."""
    way: PointDrift | None = field(default=None, compare=False)
    marks: Mapping[int, tuple[tuple[float, float], ...]] | None = None
    """While marks are picked: those of each leaf, mm on its photograph."""

    @staticmethod
    def of(stack: Stack) -> State:
        """The first leaf, alone, laid on the figure."""
        first, *rest = stack.order
        return State(stack, first, rest[0] if rest else first, stack.figure)

    def on(self, stack: Stack) -> State:
        """The same of another stack, as far as that has it: zoom, leaf, way of showing and the
        point that is followed are kept, and leaves that were laid on the figure still are."""
        numbers = stack.order
        leaf = self.leaf if self.leaf in numbers else numbers[0]
        other = self.other if self.other in numbers else leaf
        on_figure = self.laid == self.stack.figure or self.laid not in stack.layings
        laid = stack.figure if on_figure else self.laid
        kept = replace(self, stack=stack, leaf=leaf, other=other, laid=laid, way=None)
        if self.point is None:
            return kept
        place = self._views(self.stack.figure)[self.stack.bundle.numbers[0]].apply(self.point)
        first = stack.bundle.numbers[0]
        return kept.following(tuple(stack.layings[stack.figure][first].inverse().apply(place)))

    # --- moving about -------------------------------------------------------------------------

    @property
    def up(self) -> int:
        """The leaf that lies on top now."""
        return self.other if self.show == BLINK and self.second else self.leaf

    @property
    def place(self) -> int:
        """The leaf's place among those that are paged through, from 0."""
        return self.stack.order.index(self.leaf)

    def paged(self, steps: int) -> State:
        """So many leaves on; the first and the last stop it."""
        order = self.stack.order
        return replace(self, leaf=order[min(len(order) - 1, max(0, self.place + steps))])

    def seen(self, size: tuple[int, int]) -> Viewport:
        """The viewport in a window of that size; the whole leaf where nobody has zoomed yet."""
        if self.viewport is None:
            return Viewport.fitting(self.stack.bounds, size)
        return self.viewport.resized(size)

    # --- the point ----------------------------------------------------------------------------

    def _views(self, name: str) -> Views:
        return self.stack.layings[name]

    def picked(self, place: tuple[float, float]) -> State:
        """Follows the figure that lies at `place`, mm of the stack, on the leaf on top."""
        on_photo = self._views(self.laid)[self.up].apply(place)
        x, y = self._views(self.stack.figure)[self.up].inverse().apply(on_photo)
        return self.following((float(x), float(y)))

    def following(self, point: tuple[float, float] | None) -> State:
        """Follows a point (bundle mm), or none."""
        if point is None:
            return replace(self, point=None, way=None)
        frames, views = self.stack.frames(), self._views(self.stack.figure)
        way = point_drift(point, views, None if frames is None else frames.on(views))
        return replace(self, point=(float(point[0]), float(point[1])), way=way)

    def crossed(self, number: int) -> tuple[float, float] | None:
        """Where the point lies on a leaf, mm of the stack."""
        if self.way is None:
            return None
        place = self.way.places[self.way.numbers.index(number)]
        x, y = self._views(self.laid)[number].inverse().apply(place)
        return float(x), float(y)

    # --- marks picked by hand -----------------------------------------------------------------

    def marked(self, place: tuple[float, float]) -> State:
        """Puts the next mark of the leaf on top at a place (mm of the stack), or moves the nearest
        where all are there; a leaf that has all its marks gives way to the next that lacks some."""
        x, y = self._views(self.laid)[self.leaf].apply(place)
        here = list((self.marks or {}).get(self.leaf, ()))
        if len(here) < MARKS:
            here.append((float(x), float(y)))
        else:
            nearest = min(range(MARKS), key=lambda k: math.dist(here[k], (x, y)))
            here[nearest] = (float(x), float(y))
        marks = {**(self.marks or {}), self.leaf: tuple(here)}
        state = replace(self, marks=marks)
        lacking = state.lacking
        if len(here) < MARKS or not lacking:
            return state
        order = self.stack.order
        behind = [n for n in order[self.place + 1 :] if n in lacking]
        return replace(state, leaf=(behind or lacking)[0])

    @property
    def lacking(self) -> list[int]:
        """The leaves that lack marks, in the order of paging."""
        marks = self.marks or {}
        return [n for n in self.stack.order if len(marks.get(n, ())) < MARKS]

    # --- the picture --------------------------------------------------------------------------

    def sheet(self, number: int) -> Sheet:
        return Sheet(self.stack.bundle.leaf(number).face, self._views(self.laid)[number])

    def draw(
        self, painter: QtGui.QPainter, size: tuple[int, int], split: float = 0.5
    ) -> None:
        """What the window shows. Raises VeneerError for a photograph that cannot be read."""
        seen = self.seen(size)
        if self.show == HALVES:
            page.draw_halves(painter, self.sheet(self.leaf), self.sheet(self.other), seen, split)
        elif self.show == DIFFERENCE:
            page.draw_difference(painter, self.sheet(self.leaf), self.sheet(self.other), seen)
        else:
            page.draw_page(painter, self.sheet(self.up), seen)
        if self.marks is not None:
            self._draw_marks(painter, seen)
        elif self.way is not None:
            crosses = [self.crossed(number) for number in self.way.numbers]
            page.trail(painter, [seen.to_px(place) for place in crosses])
            page.cross(painter, seen.to_px(self.crossed(self.up)))

    def _draw_marks(self, painter: QtGui.QPainter, seen: Viewport) -> None:
        here = (self.marks or {}).get(self.up, ())
        onto_stack = self._views(self.laid)[self.up].inverse()
        for letter, mark in zip("AB", here):
            at = seen.to_px(onto_stack.apply(mark))
            page.cross(painter, at)
            page.name(painter, at, letter)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a small shift of the wedge does: the tops of its neighbours round the one it makes now."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import FreeCAD
from PySide import QtCore, QtGui

from veneerwb.core import Placement, VeneerError
from veneerwb.core.plane import cosd, sind
from veneerwb.core.search.task import Task
from veneerwb.gui.canvas import Hand, Place
from veneerwb.gui.panels import fields
from veneerwb.gui.spot.tab import Tab, told
from veneerwb.paint import ink
from veneerwb.paint.gallery import AIR, Box, Tile, box_at, draw_tile, picture_side, words_height
from veneerwb.words import figure

translate = FreeCAD.Qt.translate
HERE = "VeneerSpotNearby"
SHIFT, TURN = 6.0, 2.0
"""mm and degrees between neighbours, to begin with."""
REST = 120
"""Milliseconds without a change after which the neighbours are painted."""
COLUMNS, ROWS = 5, 3
WIDE, MOST = 182, 16777215
"""Pixels across that the boxes take at the left, and the most that Qt lets a widget have."""
IN_A_ROW = ((0, 0, 1), (-1, 0, 0), (0, -1, 0), (0, 0, 0), (0, 1, 0), (1, 0, 0), (0, 0, -1))
"""Neighbours, the diagonal ones left out, where a place is too low for all round the wedge."""
WORTH = 0.7
"""Of the size of the pictures in a row, how large they must be to stand all round it."""
LEAST = 100
"""Pixels across that a neighbour round the wedge needs for its words."""
LINES = 1
"""Of words below a picture, beside its title."""
Cell = tuple[int, int, int]
"""Steps to the right of the axis, forward along it, and counter-clockwise."""


def cells() -> Iterator[Cell]:
    """The wedge itself and its neighbours."""
    for forward in (1, 0, -1):
        for right in (-1, 0, 1):
            yield right, forward, 0
    yield 0, 0, 1
    yield 0, 0, -1


def neighbour(place: Placement, cell: Cell, shift: float, turn: float) -> Placement:
    """The placement so many steps away, seen along the wedge's axis."""
    right, forward, turned = cell
    along, across = (cosd(place.angle), sind(place.angle)), (sind(place.angle), -cosd(place.angle))
    x, y = (
        at + shift * (forward * a + right * b)
        for at, a, b in zip((place.x, place.y), along, across)
    )
    return Placement(round(x, 4), round(y, 4), round(place.angle + turned * turn, 4))


class NearbyTab(Tab):
    """The tab: the boxes of the steps, and the tops."""

    drawn = "spot_nearby"

    def __init__(self, state: Any) -> None:
        super().__init__(state)
        for name, first in (("shift", SHIFT), ("turn", TURN)):
            self.fill(name, first)
            fields.watch(getattr(self.form, name), lambda *_: self._soon())
        self.hand = NearbyHand(self)
        self._canvas = self.canvas("nearby", self.hand)
        self.resting = QtCore.QTimer()
        self.resting.setSingleShot(True)
        self.resting.timeout.connect(self._canvas.refresh)
        state.changed(self._soon)
        state.rested(self._soon)

    def arrange(self, tall: bool) -> None:
        """The boxes above the pictures where the place is high, else at their left."""
        form, box = self.form, QtGui.QBoxLayout
        form.all.setDirection(box.TopToBottom if tall else box.LeftToRight)
        form.column.setDirection(box.LeftToRight if tall else box.TopToBottom)
        low = form.steps.sizeHint().height() + AIR if tall else MOST
        form.controls.setMaximumSize(MOST if tall else WIDE, low)

    def _soon(self) -> None:
        """Paints when the hand rests."""
        if self.form is not None:
            self.resting.start(REST)

    @property
    def steps(self) -> tuple[float, float]:
        return self.value("shift"), self.value("turn")

    def go(self, cell: Cell) -> None:
        place = self.hand.places.get(cell)
        if place is not None and any(cell):
            self.state.go(placement=place)

    def let_go(self) -> None:
        self.resting.stop()
        self.resting.timeout.disconnect()
        self.hand.tab = None
        super().let_go()


class NearbyHand(Hand):
    """Paints the tops where their wedges lie, as seen along the axis: forward is up."""

    def __init__(self, tab: NearbyTab) -> None:
        self.tab = tab
        self.places: dict[Cell, Placement] = {}
        self.tiles: dict[Cell, Tile] = {}
        self._of: tuple[Any, ...] = ()

    def _made_anew(self, shown: tuple[Cell, ...]) -> None:
        """The tiles that are shown, for the state as it is now, unless they are that already."""
        state, steps = self.tab.state, self.tab.steps
        now = (
            state.bundle, state.recipe, state.size, state.margin, state.hidden, steps,
            fields.unit(), shown,
        )  # fmt: skip
        if self._of == now:
            return
        self.places = {cell: neighbour(state.placement, cell, *steps) for cell in shown}
        task = Task(state.bundle, state.top, state.recipe, state.margin, state.covered)
        self.tiles = {c: self._tile(task, c, place, steps) for c, place in self.places.items()}
        self._of = now

    def _tile(
        self, task: Task, cell: Cell, place: Placement, steps: tuple[float, float]
    ) -> Tile:
        title, laid = called(cell, *steps), task.layout(place, task.recipe.first)
        return Tile(laid, title, trouble="" if task.fits(laid) else translate(HERE, "does not fit"))

    def boxes(self, size: tuple[int, int]) -> dict[Cell, Box]:
        """Where each neighbour stands."""
        width, height = size
        row = (width - AIR) / len(IN_A_ROW), float(height - AIR)
        each = (width - AIR) / COLUMNS, (height - AIR) / ROWS
        side = picture_side(row[0] - AIR, row[1] - AIR, LINES)
        if each[0] < LEAST or picture_side(each[0] - AIR, each[1] - AIR, LINES) < WORTH * side:
            high = side + 2 * AIR + words_height(LINES)
            return {
                cell: Box(AIR + k * row[0], (height - high) / 2, row[0] - AIR, high)
                for k, cell in enumerate(IN_A_ROW)
            }
        return {
            (right, forward, turned): Box(
                AIR + (2 + right - 2 * turned) * each[0], AIR + (1 - forward) * each[1],
                each[0] - AIR, each[1] - AIR,
            )
            for right, forward, turned in cells()
        }

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        if self.tab is None:
            return
        boxes = self.boxes(size)
        if not (self.tab.resting.isActive() and boxes.keys() <= self.tiles.keys()):
            try:
                self._made_anew(tuple(boxes))
            except VeneerError as error:  # too few leaves: so it is everywhere
                self.places, self.tiles, self._of = {}, {}, ()
                ink.say(painter, size, told(error))
                return
        ink.begin(painter, size)
        for cell, box in boxes.items():
            tile = self.tiles[cell]
            draw_tile(painter, box, tile, chosen=not any(cell), lines=LINES)

    def at(self, at: Place) -> Cell | None:
        boxes = self.boxes(self.tab._canvas.size)
        k = box_at(list(boxes.values()), at.x, at.y)
        return None if k is None else list(boxes)[k]

    def clicked(self, at: Place) -> None:
        cell = self.at(at)
        if cell is not None:
            self.tab.go(cell)

    def cursor(self, at: Place) -> Any:
        cell = self.at(at)
        there = cell is not None and any(cell)
        return QtCore.Qt.PointingHandCursor if there else QtCore.Qt.ArrowCursor


def called(cell: Cell, shift: float, turn: float) -> str:
    """What a neighbour is called."""
    right, forward, turned = cell
    if turned:
        text = translate(HERE, "turned left {by}") if turned > 0 else translate(
            HERE, "turned right {by}")
        return text.format(by=figure(turn, "g") + "\N{DEGREE SIGN}")
    names = {
        (0, 0): translate(HERE, "here"),
        (0, 1): translate(HERE, "on {by}"), (0, -1): translate(HERE, "back {by}"),
        (-1, 0): translate(HERE, "left {by}"), (1, 0): translate(HERE, "right {by}"),
        (-1, 1): translate(HERE, "on and left"), (1, 1): translate(HERE, "on and right"),
        (-1, -1): translate(HERE, "back and left"), (1, -1): translate(HERE, "back and right"),
    }  # fmt: skip
    return names[right, forward].format(
        by=fields.length(shift, 0 if shift == round(shift) else 1)
    )

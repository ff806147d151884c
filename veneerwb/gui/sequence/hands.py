# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the mouse does on the four pictures of a sequence's window, and how each is painted."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

import FreeCAD
from PySide import QtGui

from veneerwb.gui.canvas import Action, Hand, Looking, Place
from veneerwb.gui.later import later
from veneerwb.gui.panels import fields
from veneerwb.paint import ink, strip
from veneerwb.paint.drift import Plot, Words, draw_drift
from veneerwb.paint.likeness import Board, draw_likeness

translate = FreeCAD.Qt.translate
HERE = "VeneerSequenceWindow"


class WindowHand(Hand):
    """Knows the window; takes the keys to it. `moves`: whether what it paints is another with each
    leaf."""

    moves = True

    def __init__(self, window: Any) -> None:
        self.window = window

    @property
    def keys(self) -> Mapping[Any, Action]:
        return {**super().keys, **self.window.keys}


class PictureHand(WindowHand, Looking):
    """The leaves laid on each other: a click picks the point that is followed."""

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        self.window.state.draw(painter, size)

    def zoom(self, factor: float, at: Place | None = None) -> None:
        self.window.zoom(factor, at)

    def fit(self) -> None:
        self.window.fit()

    def plain(self) -> None:
        state = self.window.state
        seen = state.seen(self.window.canvases[0].size)
        self.zoom(1.0 / (seen.px_per_mm * state.sheet(state.up).side.mm_per_px))

    def page(self, steps: int) -> None:
        self.window.page(steps)

    def pan(self, across: float, down: float) -> None:
        window = self.window
        seen = window.state.seen(window.canvases[0].size)
        window.change(replace(window.state, viewport=seen.panned(across, down)))

    def clicked(self, at: Place) -> None:
        window = self.window
        seen = window.state.seen(window.canvases[0].size)
        place = seen.to_mm((at.x, at.y))
        state = window.state
        window.change(state.picked(place) if state.marks is None else state.marked(place))


class BoardHand(WindowHand):
    """The likeness of all pairs: the mouse over a pair says which, a click shows it by turns."""

    moves = False

    def board(self, size: tuple[int, int]) -> Board:
        return Board(size, tuple(self.window.state.stack.bundle.numbers))

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        told = self.window.told
        if told.likeness is None:
            ink.say(painter, size, translate(HERE, "Prove the sequence: how alike all pairs are."))
            return
        words = translate(HERE, "unlike"), translate(HERE, "alike")
        suspects = tuple(told.marks)
        board = self.board(size)
        draw_likeness(painter, told.likeness, board, self.window.pair, suspects, words)

    def over(self, at: Place | None) -> None:
        window = self.window
        if window.told.likeness is None:
            return
        pair = None if at is None else self.board(window.canvases[1].size).pair_at(at.x, at.y)
        if pair != window.pair:
            window.point_at(pair)

    def clicked(self, at: Place) -> None:
        if self.window.told.likeness is not None:
            pair = self.board(self.window.canvases[1].size).pair_at(at.x, at.y)
            if pair is not None:
                self.window.blink(*pair)


class PlotHand(WindowHand):
    """The drift of the point: a click shows the leaf there."""

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        state = self.window.state
        if state.way is None:
            ink.say(painter, size, translate(HERE, "Click the picture to see how a point drifts."))
        else:
            user = fields.unit()
            draw_drift(painter, state.way, size, state.up, self._words(user.name), user.mm)

    def _words(self, unit: str = "mm") -> Words:
        frames = self.window.state.stack.frames() if self.window.state.way.parted else None
        figure = translate(HERE, "figure on the leaf")
        if frames is not None:
            figure = {
                "marks": translate(HERE, "figure on the leaf, by its marks"),
                "outline": translate(HERE, "figure on the leaf, by its outline"),
                "backs": translate(HERE, "figure on the leaf, by the backs"),
            }[frames.by]
        combined = {
            "log": translate(HERE, "drift of the log on the photographs"),
            "marks": translate(HERE, "drift of the picked marks on the photographs"),
        }.get(self.window.state.stack.follows)
        return Words(
            combined or translate(HERE, "drift: figure and photograph together"), figure,
            translate(HERE, "photograph"), translate(HERE, "across, {unit}").format(unit=unit),
            translate(HERE, "along, {unit}").format(unit=unit), translate(HERE, "leaf"),
        )

    def clicked(self, at: Place) -> None:
        state = self.window.state
        if state.way is not None:
            self.window.go(Plot(self.window.canvases[2].size, state.way.numbers).leaf_at(at.x))


class StripHand(WindowHand):
    """The row of leaves: a click shows one. Its pictures are made one by one."""

    def __init__(self, window: Any) -> None:
        super().__init__(window)
        self.pictures: dict[tuple[int, int], QtGui.QImage] = {}
        self._busy = False

    def row(self) -> strip.Row:
        window = self.window
        order, told = window.state.stack.order, window.told
        _, _, width, length = window.state.stack.bounds
        marked = {*told.marks, *told.gaps}
        after = {b for a, b in zip(order, order[1:]) if a in told.gaps}
        return strip.Row(order, 108, width / length, frozenset(marked | after))

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        window, row = self.window, self.row()
        bundle = window.state.stack.bundle
        made = {n: self.pictures.get(self._key(bundle, n)) for n in row.numbers}
        # A picture that Qt compares with None is read from a file without a name.
        if any(one is None for one in made.values()) and not self._busy:
            self._busy = True
            later(self._make_one)
        told, there = window.told, {n: p for n, p in made.items() if p}
        strip.draw_strip(painter, row, there, window.state.up, told.marks, told.gaps)

    def fit(self) -> None:
        """Gives the row the room that it needs."""
        row = self.row()
        self.window.form.strip.resize(row.width, row.height)

    def reveal(self) -> None:
        """Moves the row so that the leaf that is shown is in sight."""
        left, wide = self.row().place(self.window.state.up)
        self.window.form.strip_area.ensureVisible(left + wide // 2, 0, wide, 0)

    def _key(self, bundle: Any, number: int) -> tuple[int, int]:
        return number, id(bundle.leaf(number).face.image)

    def _make_one(self) -> None:
        """One more small picture; those that cannot be read stay empty."""
        self._busy = False
        if self.window is None:
            return
        row, bundle = self.row(), self.window.state.stack.bundle
        ratio = self.window.form.devicePixelRatioF()
        pixels = tuple(round(side * ratio) for side in row.picture)
        for number in row.numbers:
            key = self._key(bundle, number)
            if key not in self.pictures:
                try:
                    self.pictures[key] = strip.small(bundle.leaf(number).face.image, pixels)
                except ValueError:
                    self.pictures[key] = QtGui.QImage()
                self.window.canvases[3].refresh()
                return

    def wheel(self, steps: float, at: Place) -> bool:
        bar = self.window.form.strip_area.horizontalScrollBar()
        bar.setValue(bar.value() - round(60 * steps))
        return True

    def clicked(self, at: Place) -> None:
        leaf = self.row().leaf_at(at.x)
        if leaf is not None:
            self.window.go(leaf)


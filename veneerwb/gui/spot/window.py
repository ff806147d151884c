# SPDX-License-Identifier: LGPL-2.1-or-later
"""The window in which a spot is chosen: the leaf with the wedge on it, the top, tabs below.

What a tab (Nearby, Found, Kept) may lean on:

`SpotState` (state), one for the window and its panel, without widgets:
    .match .bundle .recipe .top .size .margin .placement   the object; the core's values as they are
    .layout()                    the top from the true leaves; VeneerError where it cannot be laid
    .go(placement, first=, ways=, turn=, order=, size=)    goes there: an undo step of its own
    .changed(f)  .rested(f)      f() after each change (many a second); when the document followed
    .settle()                    the document follows now: before you write to it yourself
    .number .mirrored .look(number=, mirrored=)            what is looked at
    .onto_leaf(number)           Motion, bundle mm to mm on that leaf
`SpotWindow`:
    .state                       that object
    .view                        the leaf: see leaf.py
    .add_tab(title, widget)      puts a widget of the host's making below
    .show_pictures()             has leaf and top seen, where a tab hides them
    .when_closed(f)              f() when the window closes: drop every name for its widgets

A tab that is to be in every window has a line in TABS. What its module's `add` returns has
`arrange(paged)`, called when leaf and top come to stand above the tabs or go among them.
"""

from __future__ import annotations

from collections.abc import Callable
from importlib import import_module
from typing import Any

import FreeCAD
from PySide import QtGui

from veneerwb.core import Piece, VeneerError
from veneerwb.gui.later import later
from veneerwb.gui.panels import fields
from veneerwb.gui.photos.frame import Picture, Place
from veneerwb.gui.photos.items import Item
from veneerwb.gui.photos.window import ViewWindow
from veneerwb.gui.spot.fit import Fit, Misfit
from veneerwb.gui.spot.leaf import SpotView
from veneerwb.gui.spot.looks import said
from veneerwb.gui.spot.state import SpotState
from veneerwb.gui.spot.top import TopView
from veneerwb.words import word

translate = FreeCAD.Qt.translate
HERE = "VeneerSpot"

TABS: tuple[str, ...] = ("spot.tabs",)
"""Modules of the screens whose `add(window)` adds a tab."""
ACROSS, DOWN = (2, 3), (7, 4)
"""Shares of the leaf and the top, and of these and the tabs."""
ROOM = 800, 720
"""Pixels across and down that leaf and top above the tabs need."""


class SpotWindow(ViewWindow):
    """Shows a state; it opens at once. `view` is the leaf, `top` the top."""

    def __init__(self, state: SpotState, title: str, closed: Callable[[], None]) -> None:
        super().__init__("spot_window", title, "veneer-spot", closed)
        self.state = state
        self.fit = Fit()
        self._misfits: tuple[Any, list[Misfit]] | None = None
        self._shown: Any = None
        self._closing: list[Callable[[], None]] = []
        self.view, self.top = SpotView(self.form.canvas, state), TopView(self.form.top, state)
        self.canvases = [self.view.events, self.top.events]
        self.view.misfits = self.misfits
        self.paged = True  # as the form is drawn, but for the pictures' place
        self.form.leaf_and_top.layout().addWidget(self.form.pictures)
        self.form.hint.setText(translate(
            HERE, "Drag the wedge, or the handles at its rim. Wheel over the top: ways."
        ))
        self._listen()
        state.changed(self.follow)
        self.added = [import_module(f"veneerwb.gui.{module}").add(self) for module in TABS]
        for tabs in self.added:
            tabs.arrange(self.paged)
        self.to_front()
        self._share_out()
        later(self.keep_clear)  # the host makes it as large as it can only then
        self.follow()

    def keep_clear(self) -> None:
        super().keep_clear()
        self._arrange()

    def _arrange(self) -> None:
        """Where there is room, leaf and top stand above the tabs; else they are the first of these,
        and each has all the room there is."""
        form = self.form
        if form is None:
            return
        paged = form.halves.width() < ROOM[0] or form.halves.height() < ROOM[1]
        if paged == self.paged:
            return
        self.paged = paged
        held = QtGui.QApplication.focusWidget()  # what moves loses the keyboard
        held = held if held is not None and form.pictures.isAncestorOf(held) else None
        if paged:
            form.leaf_and_top.layout().addWidget(form.pictures)
            form.tabs.insertTab(0, form.leaf_and_top, translate(HERE, "Leaf and Top"))
        else:
            form.halves.insertWidget(0, form.pictures)
            form.tabs.removeTab(0)
        for tabs in self.added:
            tabs.arrange(paged)
        self._share_out()
        if held is not None:
            held.setFocus()

    def show_pictures(self) -> None:
        """Has leaf and top seen."""
        if self.form is not None and self.paged:
            self.form.tabs.setCurrentIndex(0)

    def _share_out(self) -> None:
        """Gives each part its share of the room."""
        if self.form is not None:
            for splitter, shares in ((self.form.pictures, ACROSS), (self.form.halves, DOWN)):
                splitter.setSizes([1000 * share for share in shares])

    def _listen(self) -> None:
        super()._listen()
        self.form.leaf.currentIndexChanged.connect(self._turned)
        self.view.paged = self.top.paged = self.turn
        self.view.hovered, self.top.hovered = self._tell, self._tell_piece

    def add_tab(self, title: str, widget: Any) -> None:
        """Puts a widget below, under a tab of that title."""
        self.form.tabs.addTab(widget, title)

    def when_closed(self, heard: Callable[[], None]) -> None:
        """`heard` is called when the window closes, however it is closed."""
        self._closing.append(heard)

    # --- what is shown ------------------------------------------------------------------------

    def follow(self) -> None:
        """Shows the state as it is now."""
        if self.form is None:
            return
        self._misfits = None
        self._offer_leaves()
        self._show_leaf()
        self.view.follow()
        self.top.refresh()

    def misfits(self) -> list[Misfit]:
        """What forbids the wedge where it lies; nothing where the top cannot be laid at all."""
        try:
            layout = self.state.layout()
        except VeneerError:
            return []
        if self._misfits is None or self._misfits[0] is not layout:
            fit = self.fit.of(layout, self.state.margin, self.state.covered)
            self._misfits = layout, fit
        return self._misfits[1]

    def _offer_leaves(self) -> None:
        """The leaves in the box; those that the top does not need are marked."""
        form, state = self.form, self.state
        used = set(state.used)
        texts = [_leaf(number, number in used) for number in state.bundle.numbers]
        there = [form.leaf.itemText(row) for row in range(form.leaf.count())]
        row = state.bundle.numbers.index(state.number)
        if texts == there and form.leaf.currentIndex() == row:
            return
        form.leaf.blockSignals(True)
        if texts != there:
            form.leaf.clear()
            fields.offer(form.leaf, state.bundle.numbers, texts)
        form.leaf.setCurrentIndex(row)
        form.leaf.blockSignals(False)
        form.before.setEnabled(row > 0)
        form.after.setEnabled(row < len(texts) - 1)

    def _show_leaf(self) -> None:
        """The photograph of the leaf that is looked at, unless it is there already."""
        leaf = self.state.bundle.leaf(self.state.number)
        if self._shown is leaf:
            return
        self._shown = leaf
        picture = Picture(leaf.face.photo, leaf.face.mm_per_px)
        self.view.show_leaf(picture, _areas(leaf, picture))

    def turn(self, steps: int) -> None:
        last = self.form.leaf.count() - 1
        row = self.form.leaf.currentIndex() + steps
        self.form.leaf.setCurrentIndex(min(last, max(0, row)))

    def _turned(self, row: int) -> None:
        if row >= 0:
            self.state.look(number=self.form.leaf.itemData(row))

    # --- what is said -------------------------------------------------------------------------

    def _tell(self, place: Place | None) -> None:
        """Where the pointer is on the leaf, in the user's lengths."""
        leaf = "" if place is None else translate(HERE, "Leaf {number}: {where}").format(
            number=self.state.number, where=self.where(place)
        )
        self._tell_place(leaf)

    def _tell_piece(self, piece: Piece | None) -> None:
        """What is under the pointer on the top."""
        if self.form is None:
            return
        text = ""
        if piece is not None:
            leaf = self.state.number if self.state.mirrored else piece.leaf
            text = translate(HERE, "Position {position}: leaf {leaf}").format(
                position=piece.position, leaf=leaf
            )
            if piece.turned:
                turned = translate(HERE, "mirrored") if self.state.mirrored else translate(
                    HERE, "turned over")
                text += f", {turned}"
        self.form.place.setText(text)

    def let_go(self) -> None:
        for heard in self._closing:
            heard()
        self._closing = []
        super().let_go()
        self.view.let_go()
        self.top.let_go()
        self._shown = self._misfits = None


def verdict(misfits: list[Misfit]) -> str:
    """In a line what forbids the wedge."""
    if not misfits:
        return translate(HERE, "It lies well on all leaves that it needs.")
    return translate(HERE, "Not here: {reasons}.").format(reasons="; ".join(map(said, misfits)))


def _leaf(number: int, used: bool) -> str:
    text = translate(HERE, "Leaf {number}") if used else translate(HERE, "Leaf {number}, not used")
    return text.format(number=number)


def _areas(leaf: Any, picture: Picture) -> list[Item]:
    """What may be used of a leaf and its faults, on its picture."""
    made = [Item(_ring(ring, picture), "usable", held=True) for ring in _rings(leaf.usable)]
    for fault in leaf.faults:
        made += [
            Item(_ring(ring, picture), fault.kind, word(fault.kind), held=True)
            for ring in _rings(fault.outline)
        ]
    return made


def _rings(area: Any) -> list[Any]:
    return [
        ring
        for part in getattr(area, "geoms", [area])
        if part.geom_type == "Polygon"
        for ring in (part.exterior, *part.interiors)
    ]


def _ring(ring: Any, picture: Picture) -> list[Place]:
    return [picture.place((x, y)) for x, y in list(ring.coords)[:-1]]

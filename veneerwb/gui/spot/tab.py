# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the tabs below the leaf share: a form of the host's, canvases, work that can be stopped."""

from __future__ import annotations

import math
import os
import re
from collections.abc import Callable, Sequence
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.gui import resources
from veneerwb.gui.canvas import Action, Canvas, Hand, Place
from veneerwb.gui.panels import fields
from veneerwb.host import compat
from veneerwb.host.objects.base import Refused, sentence
from veneerwb.paint import ink
from veneerwb.paint.gallery import Box, Tile, box_at, draw_tile, rows_of, tick_of

translate = FreeCAD.Qt.translate
HERE = "VeneerSpotTab"
Progress = Callable[[int, int, str], bool]

_at_work: list[Any] = []
"""The tab whose work is being done, for only one is at a time."""


class Tab:
    """A tab of the window in which a spot is chosen; `state` is the window's (see window.py).

    `form` is the host's: when the window closes, `let_go` drops every name for a widget, and `form`
    is None from then on. Its label `trouble`, where there is one, says what is wrong.
    """

    drawn = ""

    def __init__(self, state: Any) -> None:
        self.state = state
        self.form = FreeCADGui.UiLoader().load(os.path.join(resources("ui"), f"{self.drawn}.ui"))
        self.canvases: list[Canvas] = []
        self._filled: dict[str, tuple[Any, Any]] = {}
        self._button = ""
        self._stopped = False

    def fill(self, name: str, meant: Any) -> None:
        """Shows a value in the box of that name."""
        box = getattr(self.form, name)
        fields.fill(box, meant)
        self._filled[name] = fields.value(box), meant

    def value(self, name: str) -> Any:
        """What the box of that name holds; exactly what it was filled with while it shows it still:
        a box rounds."""
        shown = fields.value(getattr(self.form, name))
        first, meant = self._filled.get(name, (None, None))
        return meant if name in self._filled and shown == first else shown

    def canvas(self, name: str, hand: Hand) -> Canvas:
        """Has a hand paint the widget of that name."""
        made = Canvas(getattr(self.form, name), hand)
        self.canvases.append(made)
        return made

    def let_go(self) -> None:
        """Stops work and forgets every widget."""
        self._stopped = True
        for canvas in self.canvases:
            canvas.forget()
        form, self.form, self.canvases = self.form, None, []
        if form is not None:
            compat.forget(form)

    def say(self, text: str) -> None:
        """Shows what is wrong, or that nothing is."""
        if self.form is not None:
            self.form.trouble.setText(text)
            self.form.trouble.setVisible(bool(text))

    def attempt(self, action: Action) -> bool:
        """Whether `action` went well; if not, the tab says why."""
        try:
            action()
        except Exception as error:
            self.say(told(error))
            return False
        self.say("")
        return True

    # --- what takes its time ------------------------------------------------------------------

    def works(self, name: str, action: Callable[[Progress], Any]) -> None:
        """The button of that name does `action`, says meanwhile how far it is, and stops it."""
        text = getattr(self.form, name).text()

        def pressed(*_: Any) -> None:
            if self._button == name:
                self._stopped = True
            else:
                self.attempt(lambda: self._work(name, text, action))

        getattr(self.form, name).clicked.connect(pressed)

    def _work(self, name: str, text: str, action: Callable[[Progress], Any]) -> None:
        if _at_work:
            raise Refused(translate(HERE, "Something else is being worked out; stop that first."))
        _at_work.append(self)
        self._button, self._stopped = name, False
        self.say("")
        try:
            self._progress(0, 1, "")
            action(self._progress)
        finally:
            _at_work.clear()
            self._button = ""
            if self.form is not None:
                getattr(self.form, name).setText(text)

    def _progress(self, done: int, total: int, text: str) -> bool:
        """Tells how far the work is, and lets the window live; false when it is to stop."""
        if self.form is not None and not self._stopped:
            stop = translate(HERE, "Stop ({percent} %)")
            percent = round(100 * done / max(1, total))
            getattr(self.form, self._button).setText(stop.format(percent=percent))
            QtGui.QApplication.processEvents()
        return self.form is not None and not self._stopped


NAMED = re.compile(r"(\d+(?:[.,]\d+)?) mm\b")
"""A length in the name of a top."""


def told(error: Exception) -> str:
    """What to tell the user of an error, lengths in his unit."""
    if not hasattr(error, "template"):
        return sentence(error)
    from veneerwb.core import Finding

    values = {
        name: NAMED.sub(lambda found: fields.length(float(found[1].replace(",", "."))), value)
        if isinstance(value, str) and fields.unit().mm != 1.0 else value
        for name, value in error.values.items()
    }
    return fields.in_units(Finding(error.code, "stop", error.template, "", values)).text


class GalleryHand(Hand):
    """Tiles in rows, in a place that is as high as they need: a click chooses, on a tick it ticks;
    the arrows and Enter do the same."""

    LEAST = 116.0
    """Pixels of the smallest picture."""

    def __init__(self, lines: int = 2) -> None:
        self.tiles: Sequence[Tile] = ()
        self.chosen: int | None = None
        self.empty = ""
        """What is said where there are no tiles."""
        self.lines = lines
        self.canvas: Canvas | None = None
        self.seen: Callable[[], float] = lambda: math.inf
        """Pixels of the height that is seen of the tiles."""
        self.chose: Callable[[int], Any] = lambda k: None
        self.ticked: Callable[[int], Any] = lambda k: None
        self.took: Callable[[int], Any] = lambda k: None

    def show(self, tiles: Sequence[Tile], chosen: int | None = None) -> None:
        self.tiles, self.chosen = tiles, chosen
        self.resized()
        self.canvas.refresh()

    def boxes(self, size: tuple[int, int]) -> list[Box]:
        return rows_of(len(self.tiles), size[0], self.LEAST, self.lines, self.seen())

    def resized(self) -> None:
        """Asks for the height that the tiles need."""
        boxes = self.boxes(self.canvas.size)
        needed = round(max((box.y + box.height + 6 for box in boxes), default=0))
        if self.canvas.widget.minimumHeight() != needed:
            self.canvas.widget.setMinimumHeight(needed)

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        if not self.tiles:
            ink.say(painter, size, self.empty)
            return
        ink.begin(painter, size)
        for k, (box, tile) in enumerate(zip(self.boxes(size), self.tiles)):
            draw_tile(painter, box, tile, k == self.chosen, self.lines)

    def at(self, at: Place) -> int | None:
        return box_at(self.boxes(self.canvas.size), at.x, at.y)

    def clicked(self, at: Place) -> None:
        k = self.at(at)
        if k is None:
            return
        tick = tick_of(self.boxes(self.canvas.size)[k])
        if self.tiles[k].ticked is not None and tick.holds(at.x, at.y):
            self.tiles[k].ticked = not self.tiles[k].ticked
            self.ticked(k)
        else:
            self.choose(k)

    def doubled(self, at: Place) -> None:
        k = self.at(at)
        if k is not None:
            self.took(k)

    def choose(self, k: int) -> None:
        self.chosen = k
        self.chose(k)
        if self.canvas is not None:
            self.canvas.refresh()

    def cursor(self, at: Place) -> Any:
        return QtCore.Qt.ArrowCursor if self.at(at) is None else QtCore.Qt.PointingHandCursor

    @property
    def keys(self) -> dict[Any, Action]:
        enter = (QtCore.Qt.Key_Return, QtCore.Qt.Key_Enter)
        return dict.fromkeys(enter, self._take) if self.tiles else {}

    def _take(self) -> None:
        if self.chosen is not None:
            self.took(self.chosen)

    def arrow(self, across: int, down: int, steps: int) -> None:
        """To the next tile, or to that in the next row."""
        if not self.tiles:
            return
        boxes = self.boxes(self.canvas.size)
        columns = sum(box.y == boxes[0].y for box in boxes)
        now = -1 if self.chosen is None else self.chosen
        self.choose(min(len(boxes) - 1, max(0, now + across + down * columns)))

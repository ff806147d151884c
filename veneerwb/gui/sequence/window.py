# SPDX-License-Identifier: LGPL-2.1-or-later
"""The window beside the panel of a sequence: leaves paged through, and what is known of them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from typing import Any

import FreeCAD
import numpy as np
from PySide import QtCore

from veneerwb.gui.canvas import NOTCH, Canvas
from veneerwb.gui.panels import fields
from veneerwb.gui.sequence.hands import BoardHand, PictureHand, PlotHand, StripHand
from veneerwb.gui.sequence.state import BLINK, ONE, SHOWS, Stack, State
from veneerwb.gui.sequence.words import laid_as
from veneerwb.gui.side_window import Window
from veneerwb.words import figure

translate = FreeCAD.Qt.translate
HERE = "VeneerSequenceWindow"


@dataclass(frozen=True)
class Told:
    """What a proof says, as the window shows it.

    `likeness`: n x n in the order of the bundle's numbers; `marks`: a word or two for each suspect;
    `gaps`: for the leaves after which one may be missing.
    """

    likeness: np.ndarray | None = None
    marks: Mapping[int, str] = field(default_factory=dict)
    gaps: Mapping[int, str] = field(default_factory=dict)


class SequenceWindow(Window):
    """Pages, blinks and follows. `heard` is called when another leaf is up."""

    def __init__(
        self, state: State, title: str, heard: Callable[[], None], closed: Callable[[], None]
    ) -> None:
        super().__init__("sequence_window", title, "veneer-sequence", closed)
        self.state, self.told, self.heard = state, Told(), heard
        self.pair: tuple[int, int] | None = None
        self._onward = 1
        self.timer = QtCore.QTimer()
        self.timer.timeout.connect(self._tick)
        self.hands = (PictureHand(self), BoardHand(self), PlotHand(self), StripHand(self))
        labels = (self.form.picture, self.form.likeness, self.form.drift, self.form.strip)
        self.canvases = [Canvas(label, hand) for label, hand in zip(labels, self.hands)]
        self.form.halves.setStretchFactor(0, 3)
        self.form.halves.setStretchFactor(1, 2)
        fields.offer(self.form.show_as, SHOWS)
        self._connect()
        self._fill()

    def to_front(self) -> None:
        super().to_front()
        self.paint()

    def let_go(self) -> None:
        self.timer.stop()
        self.timer.timeout.disconnect(self._tick)
        for hand in self.hands:
            hand.window = None
        self.hands, self.heard = (), lambda: None
        super().let_go()

    # --- the boxes ----------------------------------------------------------------------------

    def _connect(self) -> None:
        form = self.form
        form.back.clicked.connect(lambda: self.page(-1))
        form.on.clicked.connect(lambda: self.page(1))
        form.leaf.valueChanged.connect(self._slid)
        form.play.toggled.connect(self._play)
        form.speed.valueChanged.connect(self._pace)
        form.show_as.currentIndexChanged.connect(self._chosen)
        form.other.currentIndexChanged.connect(self._chosen)
        form.laid.currentIndexChanged.connect(self._chosen)
        form.larger.clicked.connect(lambda: self.zoom(NOTCH))
        form.smaller.clicked.connect(lambda: self.zoom(1 / NOTCH))
        form.fit.clicked.connect(self.fit)

    def _fill(self) -> None:
        """Gives the boxes what the stack offers, and shows where the state is."""
        form, state = self.form, self.state
        boxes = (form.leaf, form.other, form.laid, form.show_as)
        for box in boxes:
            box.blockSignals(True)
        form.leaf.setRange(0, len(state.stack.order) - 1)
        layings = list(state.stack.layings)
        for box, data, texts in (
            (form.other, state.stack.order, map(str, state.stack.order)),
            (form.laid, layings, map(laid_as, layings)),
        ):
            box.clear()
            fields.offer(box, data, texts)
        for box in boxes:
            box.blockSignals(False)
        self.hands[3].fit()
        self._tell()

    def _tell(self) -> None:
        """The boxes and the words say what the picture shows."""
        form, state = self.form, self.state
        boxes = (form.leaf, form.other, form.laid, form.show_as)
        for box in boxes:
            box.blockSignals(True)
        form.leaf.setValue(state.place)
        fields.fill(form.other, state.other)
        fields.fill(form.laid, state.laid)
        fields.fill(form.show_as, state.show)
        for box in boxes:
            box.blockSignals(False)
        two = state.show != ONE
        form.other.setEnabled(two)
        form.where.setText(self._where())
        form.point.setText(self._on_the_point())
        form.pair.setText(self._on_the_pair())
        form.hint.setText(self._hint())

    def _hint(self) -> str:
        if self.state.marks is None:
            click = translate(HERE, "Click: follow that point through the stack.")
        else:
            click = translate(HERE, "Click: mark A, then mark B, the same points on every leaf.")
        mouse = translate(HERE, "Wheel: zoom. Ctrl and wheel: page. Drag: move.")
        return f"{mouse} {click} " + translate(HERE, "Space: play. Arrows: page. F: fit.")

    def _where(self) -> str:
        state = self.state
        count = len(state.stack.order)
        if state.show == BLINK:
            return translate(HERE, "Leaf {leaf}").format(leaf=state.up)
        return translate(HERE, "Leaf {leaf} ({place} of {count})").format(
            leaf=state.leaf, place=state.place + 1, count=count
        )

    def _on_the_point(self) -> str:
        state = self.state
        if state.way is None:
            return translate(HERE, "Click the picture to follow a point through the stack.")
        row = state.way.numbers.index(state.up)
        across, along = state.way.combined[row]
        text = translate(HERE, "Leaf {leaf}: {across} across, {along} along.").format(
            leaf=state.up, across=fields.length(across, signed=True),
            along=fields.length(along, signed=True),
        )
        if state.way.figure is not None:
            across, along = (fields.length(v, signed=True) for v in state.way.figure[row])
            figure = translate(HERE, "The figure alone: {across}, {along}.")
            text += " " + figure.format(across=across, along=along)
        if not state.stack.registered:
            text += " " + translate(
                HERE, "The leaves are not registered, so it stays where it is: prove or register."
            )
        elif state.stack.follows != "figure":
            text += " " + translate(
                HERE, "It goes with what the leaves are registered on; prove to follow the figure."
            )
        return text

    def _on_the_pair(self) -> str:
        likeness = self.told.likeness
        if likeness is None:
            return ""
        if self.pair is None:
            return translate(HERE, "Likeness of all pairs. Click one to see the two by turns.")
        numbers = self.state.stack.bundle.numbers
        a, b = self.pair
        value = likeness[numbers.index(a), numbers.index(b)]
        return translate(HERE, "Leaves {a} and {b}: likeness {value}").format(
            a=a, b=b, value=figure(float(value), ".2f")
        )

    # --- what others ask for ------------------------------------------------------------------

    def stand_on(self, stack: Stack, told: Told | None = None) -> None:
        """Shows another stack, as after a proof or a change of the document."""
        self.state = self.state.on(stack)
        if told is not None:
            self.told = told
        self.pair = None
        self._fill()
        self.paint()

    def go(self, leaf: int) -> None:
        """Shows that leaf, alone if two were shown by turns."""
        if leaf in self.state.stack.order:
            show = ONE if self.state.show == BLINK else self.state.show
            self.change(replace(self.state, leaf=leaf, show=show))

    def blink(self, a: int, b: int) -> None:
        """Shows two leaves by turns."""
        self.point_at((a, b))
        self.change(replace(self.state, leaf=a, other=b, show=BLINK, second=False))

    def point_at(self, pair: tuple[int, int] | None) -> None:
        """Frames a pair and says how alike its leaves are."""
        self.pair = pair
        self.form.pair.setText(self._on_the_pair())
        self.canvases[1].refresh()

    def page(self, steps: int) -> None:
        self.change(self.state.paged(steps))

    def fit(self) -> None:
        self.change(replace(self.state, viewport=None))

    def zoom(self, factor: float, at: tuple[float, float] | None = None) -> None:
        size = self.canvases[0].size
        seen = self.state.seen(size)
        where = at if at is not None else (size[0] / 2, size[1] / 2)
        self.change(replace(self.state, viewport=seen.zoomed(factor, where)))

    def change(self, state: State) -> None:
        """Shows another state."""
        before, self.state = self.state, state
        self.keep_clear()
        self._pace()
        self._tell()
        for canvas, hand in zip(self.canvases, self.hands):
            if hand.moves:
                canvas.refresh()
        if state.up != before.up:
            self.hands[3].reveal()
        if state.up != before.up or state.marks is not before.marks:
            self.heard()

    def paint(self) -> None:
        for canvas in self.canvases:
            canvas.refresh()

    # --- what the boxes say -------------------------------------------------------------------

    def _slid(self, place: int) -> None:
        self.change(replace(self.state, leaf=self.state.stack.order[place]))

    def _chosen(self, *_: Any) -> None:
        form = self.form
        self.change(replace(
            self.state, show=fields.value(form.show_as), other=fields.value(form.other),
            laid=fields.value(form.laid), second=False,
        ))

    # --- by itself ----------------------------------------------------------------------------

    def _play(self, *_: Any) -> None:
        playing = self.form.play.isChecked()
        word = translate(HERE, "&Stop") if playing else translate(HERE, "&Play")
        self.form.play.setText(word)
        self._pace()

    def _pace(self, *_: Any) -> None:
        """The timer runs while leaves are paged or shown by turns."""
        wanted = self.form.play.isChecked() or self.state.show == BLINK
        self.timer.setInterval(round(1000 / self.form.speed.value()))
        if wanted and not self.timer.isActive():
            self.timer.start()
        elif not wanted:
            self.timer.stop()

    def _tick(self) -> None:
        """The next leaf, there and back; the other of two."""
        if self.form is None or not self.form.isVisible():
            return
        state = self.state
        if state.show == BLINK:
            self.change(replace(state, second=not state.second))
            return
        last = len(state.stack.order) - 1
        if not 0 <= state.place + self._onward <= last:
            self._onward = -self._onward
        self.change(state.paged(self._onward))

    @property
    def keys(self) -> dict[Any, Callable[[], None]]:
        """What keys do over all pictures."""
        key = QtCore.Qt
        return {
            key.Key_Left: lambda: self.page(-1), key.Key_Right: lambda: self.page(1),
            key.Key_Up: lambda: self.page(-1), key.Key_Down: lambda: self.page(1),
            key.Key_PageUp: lambda: self.page(-1), key.Key_PageDown: lambda: self.page(1),
            key.Key_Home: lambda: self.page(-len(self.state.stack.order)),
            key.Key_End: lambda: self.page(len(self.state.stack.order)),
            key.Key_Space: self.form.play.toggle, key.Key_F: self.fit,
        }  # fmt: skip

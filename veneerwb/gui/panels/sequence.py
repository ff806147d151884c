# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel that proves a bundle's order and lays its leaves on each other, with its window."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from functools import partial
from typing import Any

import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import Panel, translate
from veneerwb.gui.panels.step import Step
from veneerwb.gui.sequence_state import State
from veneerwb.gui.sequence_window import SequenceWindow
from veneerwb.gui.sequence_words import REGISTERED, remedy, renumbering
from veneerwb.gui.sequence_work import FOLLOWS, Work
from veneerwb.host.objects.base import Refused, sentence

HERE = "VeneerSequencePanel"
LEAF = QtCore.Qt.UserRole
MOST, BESIDE = 240, 84
"""Pixels that the list of suspects takes at most, and that it gives to all but its text."""
WRAP = getattr(QtCore.Qt.TextWordWrap, "value", QtCore.Qt.TextWordWrap)  # Qt 6: an enumeration


def look(doc: Any, bundle: Any) -> SequencePanel | None:
    """Opens the panel on a Bundle object, and its window; None, and the user told, for a bundle
    that cannot be."""
    try:
        work = Work(bundle)
    except Exception as error:
        title = translate(HERE, "Sequence")
        QtGui.QMessageBox.warning(FreeCADGui.getMainWindow(), title, sentence(error))
        return None
    panel = SequencePanel(doc, work)
    panel.show()
    panel.open_window()
    panel.soon(panel.open_window)  # newer hosts bring the 3-D view to the front with a panel
    return panel


class SequencePanel(Panel):
    """OK keeps what was done to the leaves as one undo step; looking and proving change nothing."""

    def __init__(self, doc: Any, work: Work) -> None:
        super().__init__(doc, "sequence", "veneer-sequence")
        self.work = work
        self.window: SequenceWindow | None = None
        self.choices: Any = None
        self.seen: State | None = None
        self._busy = self._proving = self._stopped = False
        form = self.form
        fields.offer(form.follow, FOLLOWS)
        for name, action in (
            ("prove", self._prove), ("renumber", self._renumber), ("turn_end", self._turn_end),
            ("turn_over", self._turn_over), ("compare", self._compare),
            ("register", self._register), ("chalk", self._chalk), ("pictures", self.open_window),
        ):  # fmt: skip
            getattr(form, name).clicked.connect(lambda *_, action=action: action())
        form.suspects.clicked.connect(self._go_to)
        form.suspects.activated.connect(self._go_to)
        fields.watch(form.follow, self._follow_chosen)
        self._tell()

    # --- life ---------------------------------------------------------------------------------

    def let_go(self) -> None:
        for window in (self.window, self.choices):
            if window is not None:
                window.close()
        self.window = self.choices = None
        super().let_go()

    def slotRecomputedDocument(self, doc: Any) -> None:
        """Something else changed the leaves: what was proved of them may no longer be so."""
        if self._open and doc == self.doc and not self._busy:
            self._look_again()

    def slotDeletedObject(self, obj: Any) -> None:
        if self._open and obj.Document == self.doc and not self._busy:
            self.soon(self._look_again)

    def _look_again(self) -> None:
        """The panel goes with its bundle; a leaf that goes leaves it."""
        if self.doc.getObject(self.work.name) is None:
            self.take_back()
            self.close()
            return
        changed: list[bool] = []
        if self.attempt(lambda: changed.append(self.work.read_again())) and changed[0]:
            self._tell()
            self._show_stack()

    # --- the window ---------------------------------------------------------------------------

    def open_window(self) -> None:
        """Opens the window with the pictures, or brings it before the others."""
        if self.window is None:
            stack = self.work.stack()
            state = State.of(stack) if self.seen is None else self.seen.on(stack)
            title = translate(HERE, "Sequence of {name}").format(name=self.work.obj.Label)
            self.window = SequenceWindow(state, title, self._heard, self._window_closed)
            self.window.stand_on(stack, self.work.told())
        self.window.show(self.form)

    def _window_closed(self) -> None:
        """What was seen is kept for the next time."""
        self.seen, self.window = self.window.state, None

    def _heard(self) -> None:
        """Another leaf is up, or another mark was picked."""
        if self.form is None or self.window is None:
            return
        self.seen = self.window.state
        if self.seen.marks is not None:
            self.work.marks = dict(self.seen.marks)
            self._tell_follow()
        self._tell_turning()

    def _show_stack(self) -> None:
        if self.window is not None:
            self.window.stand_on(self.work.stack(), self.work.told())
            self.window.keep_clear()
            if self.window.state.marks is not None:
                marks = dict(self.work.marks)
                self.window.change(replace(self.window.state, marks=marks))
            self.seen = self.window.state

    @property
    def up(self) -> int:
        """The leaf that is shown."""
        return self.seen.leaf if self.seen is not None else self.work.numbers[0]

    def _go_to(self, index: Any) -> None:
        self.open_window()
        self.window.go(int(index.data(LEAF)))

    # --- what is said -------------------------------------------------------------------------

    def _tell(self) -> None:
        form, proof = self.form, self.work.proof
        form.summary.setText(self.work.summary())
        self._list(proof.suspects if proof is not None else ())
        changes = renumbering(proof.proposal) if proof is not None else ""
        form.proposal.setText(translate(HERE, "Proposed: {changes}.").format(changes=changes))
        for box in (form.proposal, form.renumber):
            box.setVisible(bool(changes))
        self._tell_turning()
        self._tell_follow()

    def _list(self, suspects: Any) -> None:
        box = self.form.suspects
        box.clear()
        model = box.model()  # Qt deletes items behind Python's back: none is named here
        looks = box.style().standardIcon(QtGui.QStyle.SP_MessageBoxWarning)
        for row, suspect in enumerate(suspects):
            text = f"{suspect.text} {remedy(suspect.kind)}"
            box.addItem(text)
            for what, role in (
                (looks, QtCore.Qt.DecorationRole), (suspect.leaf, LEAF),
                (self._room(text), QtCore.Qt.SizeHintRole),
            ):  # fmt: skip
                model.setData(model.index(row, 0), what, role)
        box.setVisible(bool(suspects))
        heights = [model.index(row, 0).data(QtCore.Qt.SizeHintRole).height() + 4
                   for row in range(len(suspects))]  # fmt: skip
        box.setFixedHeight(min(MOST, sum(heights) + 8))

    def _room(self, text: str) -> QtCore.QSize:
        """What a text takes in the list; left to itself, the list cuts off a last line."""
        box = self.form.suspects
        wide = QtCore.QRect(0, 0, max(80, self.form.prove.width() - BESIDE), 2000)
        lines = box.fontMetrics().boundingRect(wide, int(WRAP), text)
        return QtCore.QSize(80, max(36, lines.height() + 6))

    def _tell_turning(self) -> None:
        end = translate(HERE, "Turn leaf {leaf} &end for end")
        over = translate(HERE, "Turn leaf {leaf} &over")
        self.form.turn_end.setText(end.format(leaf=self.up))
        self.form.turn_over.setText(over.format(leaf=self.up))

    def _tell_follow(self) -> None:
        what = fields.value(self.form.follow)
        self.form.cost.setText(self.work.on_following(what))

    # --- proving ------------------------------------------------------------------------------

    def _prove(self) -> None:
        """Compares all photographs; pressed again meanwhile, it stops."""
        if self._proving:
            self._stopped = True
            return
        self._proving, self._stopped = True, False
        self._offer_work(False)
        went_well = self.attempt(lambda: self.work.prove(self._progress))
        self._proving = False
        if self.form is None:  # closed meanwhile
            return
        self._offer_work(True)
        self.form.prove.setText(translate(HERE, "&Prove the sequence"))
        if went_well:
            self._tell()
            self._show_stack()

    def _progress(self, share: float) -> None:
        """Says how far the proof is, and lets the user stop it."""
        stop = translate(HERE, "Stop ({percent} %)").format(percent=round(100 * share))
        self.form.prove.setText(stop)
        QtGui.QApplication.processEvents()
        if self._stopped or self.form is None:
            raise Refused(translate(HERE, "The proof was stopped."))

    def _offer_work(self, offered: bool) -> None:
        """While the photographs are compared, nothing else is done to the leaves."""
        for name in ("renumber", "turn_end", "turn_over", "compare", "register", "chalk"):
            getattr(self.form, name).setEnabled(offered)

    # --- changes of the leaves ----------------------------------------------------------------

    def _change(self, action: Callable[[], None]) -> bool:
        """Does something to the leaves as part of the panel's one undo step."""
        fresh = self.step is None or not self.step.goes_on
        if fresh:
            self.step = Step(self.doc, translate(HERE, "Order and register leaves"))
        self._busy = True
        try:
            went_well = self.attempt(partial(self._changed, action))
        finally:
            self._busy = False
        if fresh and not went_well:  # nothing is left of it
            self.step.drop()
            self.step = None
        self._tell()
        self._show_stack()
        return went_well

    def _changed(self, action: Callable[[], None]) -> None:
        action()
        self.doc.recompute()
        self.work.read_again()

    def _renumber(self) -> None:
        self._change(self.work.renumber)

    def _turn_end(self) -> None:
        self._change(partial(self.work.turn_end, self.up))

    def _turn_over(self) -> None:
        if self._change(partial(self.work.turn_over, self.up)):
            self.form.summary.setText(f"{self.work.said} {self.form.summary.text()}")

    # --- registering --------------------------------------------------------------------------

    def _follow_chosen(self, *_: Any) -> None:
        """Marks are picked in the window while that is what the stack is to follow."""
        picking = fields.value(self.form.follow) == "marks"
        if picking:
            self.open_window()
        if self.window is not None:
            marks = dict(self.work.marks) if picking else None
            self.window.change(replace(self.window.state, marks=marks))
        self._tell_follow()

    def _register(self) -> None:
        """Lays the leaves on each other as chosen, and shows them so."""
        what = fields.value(self.form.follow)
        with self._at_work("register"):
            went_well = self._change(partial(self.work.register, what))
        if went_well and self.window is not None:
            self.window.change(replace(self.window.state, laid=REGISTERED))

    def _compare(self) -> None:
        """Opens the window with the choices side by side."""
        with self._at_work("compare"):
            self.attempt(self._open_choices)

    @contextmanager
    def _at_work(self, name: str) -> Iterator[None]:
        """A button says that it is at work: comparing neighbours takes its time."""
        button = getattr(self.form, name)
        text = button.text()
        button.setText(translate(HERE, "At work..."))
        QtGui.QApplication.processEvents(QtCore.QEventLoop.ExcludeUserInputEvents)
        yield
        if self.form is not None:
            getattr(self.form, name).setText(text)

    def _open_choices(self) -> None:
        from veneerwb.gui.choices_window import ChoicesWindow

        found = self.work.compared()
        if self.choices is not None:
            self.choices.close()
        self.choices = ChoicesWindow(found, self._choice_taken, self._choices_closed)
        self.choices.show(self.form)

    def _choice_taken(self, what: str) -> None:
        fields.fill(self.form.follow, what)

    def _choices_closed(self) -> None:
        self.choices = None

    # --- lists --------------------------------------------------------------------------------

    def _chalk(self) -> None:
        """Asks for a file and writes the list to chalk the real stack by."""
        from veneerwb.gui import chalk

        work = self.work
        self.attempt(lambda: chalk.save_list(work.obj, work.bundle, work.proof))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel that proves a bundle's order and lays its leaves on each other, with its window."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from typing import Any

from PySide import QtCore, QtGui

from veneerwb.gui.panels import fields
from veneerwb.gui.panels.at_work import Progress
from veneerwb.gui.panels.base import translate
from veneerwb.gui.panels.seams import MeasuresSeams
from veneerwb.gui.sequence.state import State
from veneerwb.gui.sequence.window import SequenceWindow
from veneerwb.gui.sequence.words import REGISTERED, remedy, renumbering
from veneerwb.gui.sequence.work import FOLLOWS, Work
from veneerwb.gui.told import show_box
from veneerwb.host import compat
from veneerwb.host.objects.base import Refused
from veneerwb.host.steps import Step

HERE = "VeneerSequencePanel"
LEAF = QtCore.Qt.UserRole
MOST, BESIDE = 240, 84
"""Pixels that the list of suspects takes at most, and that it gives to all but its text."""


def look(doc: Any, bundle: Any) -> SequencePanel | None:
    """Opens the panel on a Bundle object, and its window; None, and the user told, for a bundle
    that cannot be."""
    try:
        work = Work(bundle)
    except Exception as error:
        title = translate(HERE, "Sequence")
        show_box(title, fields.told(error))
        return None
    panel = SequencePanel(doc, work)
    panel.show()
    panel.open_window()
    panel.soon(panel.stay_in_front)  # newer hosts bring the 3-D view there with a panel
    return panel


class SequencePanel(MeasuresSeams):
    """OK keeps what was done to the leaves as one undo step; looking and proving change nothing."""

    locked = (
        "prove", "renumber", "turn_end", "turn_over", "follow", "by", "compare", "register",
        "unregister", "seams", "chalk",
    )  # fmt: skip

    def __init__(self, doc: Any, work: Work) -> None:
        super().__init__(doc, "sequence", "veneer-sequence")
        self.work = work
        self.window: SequenceWindow | None = None
        self.choices: Any = None
        self.seen: State | None = None
        self._busy = False
        form = self.form
        fields.offer(form.follow, FOLLOWS)
        for name, action in (
            ("prove", self._prove), ("renumber", self._renumber), ("turn_end", self._turn_end),
            ("turn_over", self._turn_over), ("compare", self._compare),
            ("register", self._register), ("unregister", self._unregister),
            ("seams", self._measure_seams), ("chalk", self._chalk),
        ):  # fmt: skip
            self.connect(name, action)
        form.pictures.clicked.connect(lambda *_: self.open_window())
        form.suspects.clicked.connect(self._go_to)
        form.suspects.activated.connect(self._go_to)
        fields.watch(form.follow, self._follow_chosen)
        self._offer_matches()
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

    def unsaved(self) -> bool:
        """What was done to the leaves is in a step that closing would take back."""
        return self.work.marks_differ or (self.step is not None and self.step.goes_on)

    def renew(self) -> None:
        self._look_again()
        if self.form is not None:
            self.say(translate(HERE, "Something was undone or redone. The marks that you picked "
                                     "are kept here; see that they still fit, then OK."))

    def _look_again(self) -> None:
        """The panel goes with its bundle; a leaf that goes leaves it."""
        if self.doc.getObject(self.work.name) is None:
            self.take_back()
            self.close()
            return
        changed: list[bool] = []
        if not self.attempt(lambda: changed.append(self.work.read_again())):
            return
        self._offer_matches()
        if changed[0]:
            self._tell()
            self._show_stack()
            self._close_choices()
        self.date_seams()

    def _lock(self, locked: bool) -> None:
        super()._lock(locked)
        if not locked:
            self._tell_turning()
            self._tell_follow()

    # --- the window ---------------------------------------------------------------------------

    def open_window(self) -> None:
        """Opens the window with the pictures, or brings it before the others."""
        if self.window is None:
            stack = self.work.stack()
            state = State.of(stack) if self.seen is None else self.seen.on(stack)
            title = translate(HERE, "Sequence of {name}").format(name=self.work.obj.Label)
            self.window = SequenceWindow(state, title, self._heard, self._window_closed)
            self.window.stand_on(stack, self.work.told())
        self.window.to_front()

    def stay_in_front(self) -> None:
        """Brings the window before the others again, unless it is closed."""
        if self.window is not None:
            self.window.stay_in_front()

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
            text = f"{fields.in_words(suspect)} {remedy(suspect.kind)}"
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
        lines = box.fontMetrics().boundingRect(wide, compat.whole(QtCore.Qt.TextWordWrap), text)
        return QtCore.QSize(80, max(36, lines.height() + 6))

    def _tell_turning(self) -> None:
        end = translate(HERE, "Turn leaf {leaf} &end for end")
        over = translate(HERE, "Turn leaf {leaf} &over")
        self.form.turn_end.setText(end.format(leaf=self.up))
        self.form.turn_over.setText(over.format(leaf=self.up))

    def _tell_follow(self) -> None:
        what, work = fields.value(self.form.follow), self.work
        self.form.cost.setText(work.on_following(what))
        by_figure = what in ("figure", "log") and self.form.by.count() > 1
        self.show_row(self.form.by, by_figure)
        self.form.unregister.setEnabled(work.registered and not self.working)

    def _offer_matches(self) -> None:
        """The figure may be weighted to the pieces of a match of these leaves."""
        matches = self.work.matches()
        names = [match.Name for match in matches]
        by = self.form.by
        if [by.itemData(row) for row in range(1, by.count())] == names:
            return
        chosen = fields.value(by)
        by.clear()
        pieces = translate(HERE, "The pieces of {name}")
        labels = [pieces.format(name=match.Label) for match in matches]
        fields.offer(by, ["", *names], [translate(HERE, "The whole leaf"), *labels])
        fields.fill(by, chosen if chosen in names else "")
        self._tell_follow()

    @property
    def match(self) -> Any:
        """The match to whose pieces the figure is weighted; None for the whole leaf."""
        return self.doc.getObject(fields.value(self.form.by) or "")

    # --- proving ------------------------------------------------------------------------------

    def _prove(self) -> None:
        """Compares all photographs."""
        if self.at_work("prove", self.work.prove):
            self._tell()
            self._show_stack()

    # --- changes of the leaves ----------------------------------------------------------------

    def finish(self) -> None:
        """Marks that were picked are kept, whether or not the leaves were laid by them."""
        if self.work.marks_differ and not self._change(self.work.keep_marks):
            raise Refused(self.form.trouble.text())

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
        self.date_seams()
        return went_well

    def _changed(self, action: Callable[[], None]) -> None:
        action()
        compat.recompute(self.doc)
        if self.work.read_again():
            self._close_choices()

    def _renumber(self) -> None:
        self._change(self.work.renumber)

    def _turn_end(self) -> None:
        self._change(partial(self.work.turn_end, self.up))

    def _turn_over(self) -> None:
        leaf, behind = self.up, []

        def look(progress: Progress) -> None:
            behind.append(self.work.register_behind(leaf, progress))

        if self.at_work("turn_over", look) and self._change(
            partial(self.work.turn_over, leaf, *behind)
        ):
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
        what, match, found = fields.value(self.form.follow), self.match, []

        def look(progress: Progress) -> None:
            found.append(self.work.found(what, progress, match))

        if self.at_work("register", look) and self._change(partial(self.work.register, *found)):
            self._show_registered()

    def _unregister(self) -> None:
        """Takes the registers off again."""
        if self._change(self.work.unregister):
            self._show_registered()

    def _show_registered(self) -> None:
        if self.window is not None:
            self.window.change(replace(self.window.state, laid=REGISTERED))

    def _compare(self) -> None:
        """Opens the window with the choices side by side."""
        match = self.match
        self.at_work("compare", lambda told: self._open_choices(self.work.compared(told, match)))

    def _open_choices(self, found: Any) -> None:
        from veneerwb.gui.choices_window import ChoicesWindow

        self._close_choices()
        self.choices = ChoicesWindow(found, self._choice_taken, self._choices_closed)
        self.choices.to_front()

    def _close_choices(self) -> None:
        """As when they are of leaves that are no more."""
        if self.choices is not None:
            self.choices.close()
            self.choices = None

    def _choice_taken(self, what: str) -> None:
        fields.fill(self.form.follow, what)

    def _choices_closed(self) -> None:
        self.choices = None

    # --- seams --------------------------------------------------------------------------------

    def _measure_seams(self) -> None:
        """Opens the window that says what the registers leave along the seams."""
        self.measure("seams", *self.work.top(self.match))

    # --- lists --------------------------------------------------------------------------------

    def _chalk(self) -> None:
        """Asks for a file and writes the list to chalk the real stack by."""
        from veneerwb.gui.books import chalk

        work = self.work

        def save() -> None:
            work.read_again()
            chalk.save_list(work.obj, work.bundle, work.proof)

        self.attempt(save)

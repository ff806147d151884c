# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel in which the spot of a match is chosen: the wedge is moved on a leaf, the top follows
at once, the document when the hand rests."""

from __future__ import annotations

from functools import partial
from typing import Any

from PySide import QtCore

from veneerwb.core import Placement, VeneerError
from veneerwb.core.checks.faces import unregistered
from veneerwb.gui import themes
from veneerwb.gui.ahead import read_ahead
from veneerwb.gui.chosen import selected
from veneerwb.gui.later import later
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import Panel, translate
from veneerwb.gui.panels.findings import Findings, found_on, select
from veneerwb.gui.spot.state import TIP, SpotState
from veneerwb.gui.spot.steps import SpotSteps
from veneerwb.gui.spot.window import SpotWindow, verdict
from veneerwb.gui.told import show_box
from veneerwb.host import compat, settings, values
from veneerwb.host.objects.base import Refused, set_if_new, told_elsewhere

HERE = "VeneerSpotPanel"
LEFT = 200
"""ms: how often it is looked whether a box is left."""

REST, RUN = 250, 1000
"""Milliseconds without a change after which the document follows, and the undo step is closed."""
BOXES = (*TIP, "Diameter", "AcrossFlats", "Ways", "Turn", "Order", "First")
GRAVE = ("stop", "warn")


def choose(matches: list[Any]) -> SpotPanel | None:
    """Opens the panel on the first of the matches if it, or a kept spot of it, is selected, or if
    it is the only one; None where that cannot be, and the user is told."""
    name = translate(HERE, "Choose Spot")
    try:
        meant = [getattr(one, "Match", one) for one in selected()]
        if len(matches) > 1 and matches[0] not in meant:
            raise Refused(translate(
                HERE, "There are several matches; select the one that you choose a spot for."
            ))
        read_ahead(name, SpotState(matches[0]).layout)
        panel = SpotPanel(matches[0])
    except Exception as error:
        show_box(name, fields.told(error))
        return None
    panel.show()
    panel.look()
    return panel


class SpotPanel(Panel):
    """Every drag, and every run of keys or boxes, is an undo step of its own, so that undo goes
    through them while the panel is open; Cancel takes all of them back. The panel stays when
    something is undone, and keeps what was done when the host closes it."""

    def __init__(self, match: Any) -> None:
        self.state = SpotState(match)  # refuses before there is a form
        super().__init__(match.Document, "spot", "veneer-spot")
        self.match = match.Name
        self.steps = SpotSteps(match, translate(HERE, "Choose spot"))
        self.window: SpotWindow | None = None
        self._busy = self._filling = self._held = False
        self.rest, self.run = QtCore.QTimer(), QtCore.QTimer()
        for timer, action in ((self.rest, self.write), (self.run, self.steps.end)):
            timer.setSingleShot(True)
            timer.timeout.connect(action)
        self._offer(match)
        self.state.settle = self.settle
        self.state.changed(self._changed)
        self.findings = Findings(self.form.findings, self._found, self._choose)
        self.tell()

    def _offer(self, match: Any) -> None:
        form = self.form
        fields.offer(form.Turn, ("book", "slip"))
        fields.offer(form.Order, ("sequence", "spread"))
        fields.offer(form.Mirrored, (False, True))
        for name in BOXES:
            box = getattr(form, name)
            box.setToolTip(fields.purpose(match, name))
            if name in self.state.locked:
                box.setEnabled(False)
                box.setToolTip(translate("VeneerPanel", "An expression sets this value"))
                continue
            fields.watch(box, partial(self._edited_box, name))
            if fields.is_quantity(box):
                self.take_mixed_numbers(name)
        fields.watch(form.Mirrored, self._switched)
        for name in ("Diameter", "AcrossFlats"):
            self.show_row(getattr(form, name), name == self.state.size_name)

    def look(self) -> None:
        """Opens the window."""
        title = translate(HERE, "Spot of {match}").format(match=self.state.match.Label)
        if self.attempt(lambda: self._open_window(title)):
            self.tell()
            self.soon(self._come_forward)

    def _come_forward(self) -> None:
        """The host brings its view forward when a panel opens, after the window has opened."""
        if self.window is not None:
            self.window.stay_in_front()

    def _open_window(self, title: str) -> None:
        self.window = SpotWindow(self.state, title, lambda: self.soon(self._window_closed))
        view, top = self.window.view, self.window.top
        view.began, view.ended, view.put_off = self._began, self._ended, self.put_off
        for hand in (view, top):
            hand.undone, hand.refused = self._undo, self._refused

    # --- the boxes ----------------------------------------------------------------------------

    def _edited_box(self, name: str, *_: Any) -> None:
        """A box was changed by hand; what cannot be goes back to what is."""
        if self.form is None or self._filling:
            return
        try:
            self.state.go(**self._meant(name), run=True)
            self.say("")
        except Exception as error:
            self.say(fields.told(error))
            self.soon(partial(self._fill_when_left, name))

    def _fill_when_left(self, name: str) -> None:
        """Shows what is once the box is left, and not under the hand that types in it."""
        if self.form is None:
            return
        if getattr(self.form, name).hasFocus():
            QtCore.QTimer.singleShot(LEFT, partial(self._fill_when_left, name))
        else:
            self._fill()

    def _meant(self, name: str) -> dict[str, Any]:
        """What the box of that name asks for."""
        value = self.value(name)
        if name in TIP:
            here = self.state.placement
            place = dict(zip(TIP, (here.x, here.y, here.angle)))
            return {"placement": Placement(*{**place, name: value}.values())}
        if name == "Order":
            return {"order": values.order_of(value)}
        if name in ("Ways", "Turn", "First"):
            return {name.lower(): value}
        return {"size": value}

    def _switched(self, *_: Any) -> None:
        if self.form is not None and not self._filling:
            self.state.look(mirrored=self.value("Mirrored"))

    def _fill(self) -> None:
        """Shows in the boxes what is."""
        state, recipe = self.state, self.state.recipe
        place, order = state.placement, recipe.order
        shown = {
            "TipX": place.x, "TipY": place.y, "Axis": place.angle, state.size_name: state.size,
            "Ways": recipe.ways, "Turn": recipe.turn, "First": recipe.first,
            "Order": order if isinstance(order, str) else ", ".join(map(str, order)),
            "Mirrored": state.mirrored,
        }  # fmt: skip
        self._filling = True
        try:
            self.form.Ways.setSingleStep(2 if recipe.turn == "book" else 1)
            for name, value in shown.items():
                if self.value(name) != value:  # what is being typed stays as it is typed
                    self.fill(name, value)
        finally:
            self._filling = False

    # --- following ----------------------------------------------------------------------------

    def _changed(self) -> None:
        """The state is another. Boxes and verdict follow at once, for painting them later would be
        painting the window twice."""
        if self.form is None:
            return
        if not self._busy:
            self.rest.start(REST)
        self._fill()
        self._tell_verdict()

    def write(self) -> None:
        """The document follows what the hand has, in the step that is open or a new one."""
        if self.form is None or self.doc is None or self._busy:
            return
        self._busy = True
        try:
            self._write()
        except Exception as error:
            self.say(fields.told(error))
            self.findings.tell()
        finally:
            self._busy = False
        if not self._held:  # a drag is one step, however long the hand holds still
            self.run.start(RUN)

    def _write(self) -> None:
        wanted = self.state.differing()
        if not wanted:
            self.tell()
            return
        self.state.layout()  # what cannot be laid is not written
        self.steps.begin()
        set_if_new(self.state.match, **wanted)
        with told_elsewhere():
            compat.recompute(self.doc)
        self.state.follow()
        self.tell()

    def settle(self) -> None:
        """The document follows now, and its undo step is closed."""
        self.rest.stop()
        self.run.stop()
        self.write()
        self.run.stop()
        self.steps.end()

    def _began(self) -> None:
        """The mouse has taken hold of the wedge."""
        self.settle()
        self._held = True

    def _ended(self) -> None:
        """The mouse has let it go."""
        self._held = False
        self.settle()

    def put_off(self) -> None:
        """What the hand does is as if it had not been done."""
        self._held = False
        self.rest.stop()
        self._busy = True
        try:
            self.steps.drop()
        finally:
            self._busy = False
        self._follow()

    def _follow(self) -> None:
        """Takes over what the document holds."""
        if self.form is None:
            return
        self.rest.stop()
        self._busy = True
        try:
            self.state.follow()
            self.tell()
        except Exception as error:
            self.say(fields.told(error))
        finally:
            self._busy = False

    # --- what is said -------------------------------------------------------------------------

    def tell(self) -> None:
        """All that the panel says, after the document has followed."""
        self._fill()
        self._tell_verdict()
        refused = fields.refusal(self.state.match)
        self.say(refused or self._not_laid())
        missing = unregistered(self.state.bundle, self.state.used)
        self.form.registers.setText(translate(
            HERE, "Not registered: the leaves lie on each other as they were photographed.",
        ) if missing else "")
        self.form.registers.setVisible(missing is not None)
        self.findings.tell()

    def _not_laid(self) -> str:
        try:
            self.state.layout()
        except VeneerError as error:
            return fields.in_words(error)
        return ""

    def _tell_verdict(self) -> None:
        """In a line whether the wedge can lie where it does, while it is moved."""
        text, on = "", ""
        if self.window is not None and not self._not_laid():
            misfits = self.window.misfits()
            text = verdict(misfits)
            on = themes.badge(settings.colour("MisfitColour")) if misfits else ""
        label, style = self.form.verdict, f"{on}font-weight: bold"
        label.setVisible(bool(text))
        label.setText(text)
        if label.styleSheet() != style:
            label.setStyleSheet(style)

    def _found(self) -> list[Any]:
        """What stands against cutting where the wedge lies; notes are left to Check Match."""
        match = self.state.match
        try:
            layout = self.state.layout()
            same = not self.state.differing() and not match.Message
            found = found_on(match) if same else values.findings(match, layout)
        except VeneerError:  # also what the document has lost since, such as the bundle
            return []
        return [one for one in found if one.level in GRAVE]

    def _choose(self, positions: list[int], leaves: list[int]) -> None:
        select(self.state.match, positions, leaves)
        if leaves and leaves[0] in self.state.bundle.numbers:
            self.state.look(number=leaves[0])

    def _refused(self, error: Exception) -> None:
        self.say(fields.told(error))

    # --- what happens to the document ---------------------------------------------------------

    def _undo(self, again: bool) -> None:
        """Undoes (or redoes) a step that was made here."""
        self.settle()
        self.steps.redo() if again else self.steps.undo()

    def slotUndoDocument(self, doc: Any) -> None:
        """The wedge goes to where the document has it now."""
        if doc == self.doc and not self._busy:
            self.soon(self._stepped)

    slotRedoDocument = slotUndoDocument

    def _stepped(self) -> None:
        if self.doc.getObject(self.match) is None:
            self.close()
        else:
            self.steps.stepped()
            self._follow()

    def slotRecomputedDocument(self, doc: Any) -> None:
        """Others have changed something; what the hand is about to write goes before."""
        if doc == self.doc and not self._busy:
            self.soon(lambda: None if self.rest.isActive() else self._follow())

    def slotDeletedObject(self, obj: Any) -> None:
        """There is nothing left to choose for."""
        if self.doc is not None and obj.Document == self.doc and obj.Name == self.match:
            self.rest.stop()
            self.steps.end()
            later(self.close)

    def slotDeletedDocument(self, doc: Any) -> None:
        if doc == self.doc:
            self.rest.stop()
            self.steps.let_go()
        super().slotDeletedDocument(doc)

    def slotActivateDocument(self, doc: Any) -> None:
        """Another document's changes would go into the step."""
        if doc != self.doc:
            self.steps.end()
            self.soon(self.settle)

    # --- the end ------------------------------------------------------------------------------

    def finish(self) -> None:
        self.settle()
        if self.state.differing():
            self.state.layout()  # says why it could not be written

    def reject(self) -> bool:
        """The host's Cancel, and Escape: the document as it was when the panel opened."""
        self.rest.stop()
        self._busy = True
        if self.doc is not None:
            self.steps.take_back()
        self._forget()
        return True

    def take_back(self) -> None:
        """What was chosen is in steps of its own, which can be undone: it stays."""
        if self.doc is not None:
            self.settle()

    def _window_closed(self) -> None:
        """The user has closed the window: as OK does, but nothing is refused."""
        self.window = None
        self.take_back()
        self.close()

    def let_go(self) -> None:
        window, self.window = self.window, None
        for timer in (self.rest, self.run):
            timer.stop()
            timer.timeout.disconnect()
        self.state.let_go()
        self.findings = None
        super().let_go()
        if window is not None:
            window.close()

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A panel whose boxes are the properties of one document object, which follows them at once."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, ClassVar

import FreeCAD
import FreeCADGui

from veneerwb.gui.later import later
from veneerwb.gui.panels import fields
from veneerwb.gui.panels.base import Panel, translate
from veneerwb.gui.told import show_box
from veneerwb.host import compat
from veneerwb.host.objects.base import Refused, set_if_new, told_elsewhere
from veneerwb.host.steps import Step

HERE = "VeneerPanel"
SPOT = ("TipX", "TipY", "Axis")


def edit(panel: type[LivePanel], obj: Any) -> None:
    """Opens a panel on an object that is there, once the host has done with the double click (it
    closes transactions of its own after it)."""
    document, name = obj.Document.Name, obj.Name
    later(lambda: _edit(panel, document, name))


def _edit(panel: type[LivePanel], document: str, name: str) -> None:
    doc = FreeCAD.listDocuments().get(document)
    obj = doc.getObject(name) if doc else None
    if obj is not None and not FreeCADGui.Control.activeDialog():
        start(panel, doc, translate(HERE, "Edit {name}").format(name=obj.Label), lambda: obj)


def start(
    panel: type[LivePanel], doc: Any, name: str, make: Callable[[], Any], fresh: bool = False
) -> LivePanel | None:
    """Opens a panel on the object that `make` gives, or makes as part of the step (`fresh`: it has
    never been computed). None, the document as it was and the user told, where that fails."""
    step = Step(doc, name)
    try:
        made = panel(make(), step)
    except Exception as error:
        step.drop()
        show_box(name, fields.told(error))
        return None
    made.show()
    if fresh:
        made.lay()
    else:
        made.tell_safely()
    return made


class LivePanel(Panel):
    """`names` are properties, each with a box of that name in the form. A value that an expression
    sets is shown and not offered; a box that nobody touched changes nothing."""

    names: ClassVar[Sequence[str]] = ()
    drawn: ClassVar[str] = ""
    picture: ClassVar[str] = ""

    def __init__(self, obj: Any, step: Step) -> None:
        super().__init__(obj.Document, self.drawn, self.picture, step)
        self.obj, self.due = obj, False
        self.offer()
        driven = {path.lstrip(".") for path, _ in obj.ExpressionEngine}
        self.offered = []
        for name in self.names:
            box = getattr(self.form, name)
            box.setToolTip(fields.purpose(obj, name))
            self.fill(name, self.held(name))
            if name in driven:
                box.setEnabled(False)
                box.setToolTip(translate(HERE, "An expression sets this value"))
            else:
                self.offered.append(name)
                fields.watch(box, self.changed)
                if fields.is_quantity(box):
                    self.take_mixed_numbers(name)
        self.arrange()

    def offer(self) -> None:
        """Gives the boxes their choices, before they are filled."""

    def arrange(self) -> None:
        """Shows the rows that the present choices need."""

    def held(self, name: str) -> Any:
        """What a property holds, as its box shows it."""
        found = getattr(self.obj, name)
        return found.Name if hasattr(found, "Name") else getattr(found, "Value", found)

    def wanted(self, name: str, shown: Any) -> Any:
        """What a property should hold when its box holds `shown`."""
        return shown

    # --- changes ------------------------------------------------------------------------------

    def changed(self, *_: Any) -> None:
        """Lays anew once the events at hand are through, however many boxes changed."""
        if self.form is not None:
            self.arrange()
            if not self.due:
                self.due = True
                self.soon(self._lay_if_due)

    def _lay_if_due(self) -> None:
        """Not in the midst of a recompute, whose progress bar lets events through."""
        if self.due and self.doc is not None and self.doc.Recomputing:
            self.soon(self._lay_if_due)
        elif self.due:
            self.lay()

    def lay(self) -> None:
        """Gives the object what the boxes hold, and says what came of it."""
        self.due = False
        if self.form is not None and self.doc is not None and self.attempt(self._lay):
            self.tell_safely()

    def after(self, change: Callable[[], None]) -> None:
        """Lays anew after a change that no box shows."""
        if self.attempt(change):
            self.lay()

    def _lay(self) -> None:
        if not self.step.goes_on:  # another command ended it
            self.step.begin()
        for name in self.offered:
            shown = self.value(name)
            if shown != self.held(name):
                set_if_new(self.obj, **{name: self.wanted(name, shown)})
        with told_elsewhere():
            compat.recompute(self.doc)

    def tell_safely(self) -> None:
        """What came of it, or why that cannot be told."""
        try:
            self.tell()
        except Exception as error:
            self.say(fields.told(error))

    def tell(self) -> None:
        """Shows why the object refuses, if it does."""
        self.say(fields.refusal(self.obj))

    def works_on(self) -> tuple[Any, ...]:
        """The objects without which there is nothing to edit."""
        return (self.obj,)

    def slotDeletedObject(self, obj: Any) -> None:
        """Later, for what is taken back goes as well, and its panel with it."""
        if self._open and obj in self.works_on():
            self.soon(lambda name=obj.Name: self._close_if_gone(name))

    def _close_if_gone(self, name: str) -> None:
        """There is nothing left to edit; what was done up to then, the deletion too, can be
        undone."""
        if self.doc is not None and self.doc.getObject(name) is None:
            self.step.keep()
            self.close()

    # --- the end ------------------------------------------------------------------------------

    def finish(self) -> None:
        self.due = False
        self._lay()
        self.tell()
        if self.obj.Message:
            raise Refused(fields.refusal(self.obj))

    def take_back(self) -> None:
        self.due = False
        super().take_back()


class PlacedPanel(LivePanel):
    """One of a match whose spot is its leaves' middle, or is given by SPOT."""

    def middle(self) -> Any:
        """Where it is laid now, a Placement."""
        raise NotImplementedError

    def changed(self, *what: Any) -> None:
        """What is taken out of the middle starts from there."""
        middle = self.obj.AutoPlacement and not self.obj.Message
        if self.form is not None and middle and not self.form.AutoPlacement.isChecked():
            self.attempt(self._start_from_middle)
        super().changed(*what)

    def _start_from_middle(self) -> None:
        place = self.middle()
        for name, middle in zip(SPOT, (place.x, place.y, place.angle)):
            if name in self.offered:
                self.fill(name, middle)

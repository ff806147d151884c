# SPDX-License-Identifier: LGPL-2.1-or-later
"""The undo steps made while a spot is chosen: one for each drag or run of small changes, and Cancel
takes all of them back."""

from __future__ import annotations

from typing import Any

from veneerwb.host import compat
from veneerwb.host.objects.base import set_if_new
from veneerwb.host.spots import STEPS, bring_back, noted
from veneerwb.host.steps import Step
from veneerwb.words import word

NAMES = (
    "TipX", "TipY", "Axis", "AutoPlacement", "Ways", "Turn", "Turned", "First", "Order", "Diameter",
    "AcrossFlats",
)  # fmt: skip
"""The properties of a Match that choosing a spot may change."""


class SpotSteps:
    """`begin` a step before writing, `end` it (`drop`: as if it had not been begun)."""

    def __init__(self, match: Any, name: str) -> None:
        self.doc, self._match, self.name = match.Document, match.Name, name
        self._ours = {name, *map(word, STEPS)}
        self._open: Step | None = None
        self.base()

    def base(self) -> None:
        """What Cancel brings back is what is there now."""
        self._before = list(self.doc.UndoNames)
        match = self.doc.getObject(self._match)
        self._values = {name: getattr(match, name) for name in NAMES}
        self._spots = noted(match)
        self._touched = {obj.Name for obj in self.doc.Objects if "Touched" in obj.State}

    def begin(self) -> None:
        """From now on what is written is one step, which goes on until it is ended."""
        if self._open is None or not self._open.goes_on:
            self._open = Step(self.doc, self.name)

    def end(self) -> None:
        """What was written can be undone."""
        step, self._open = self._open, None
        if step is not None:
            step.keep()

    def drop(self) -> bool:
        """What was written since `begin` is taken back; whether there was anything."""
        step, self._open = self._open, None
        if step is None or not step.goes_on:
            return False
        step.drop()
        self._rest()
        return True

    def undo(self) -> None:
        """Undoes the last step, if it is one of these."""
        if self.doc.UndoNames and self.doc.UndoNames[0] in self._ours:
            self.doc.undo()

    def redo(self) -> None:
        """Redoes what was undone last, if it is one of these."""
        if self.doc.RedoNames and self.doc.RedoNames[0] in self._ours:
            self.doc.redo()

    def stepped(self) -> None:
        """Something was undone or redone from elsewhere, perhaps more than was done here."""
        if len(self.doc.UndoNames) < len(self._before):
            self.base()

    def take_back(self) -> None:
        """The match and its kept spots as they were when the first step began.

        Steps that the host still has are undone. What it has forgotten, or what lies under the
        steps of others, is written back as a step of its own.
        """
        self.drop()
        names = list(self.doc.UndoNames)  # the last first
        ours = len(names) - len(self._before)
        if ours > 0 and names[ours:] == self._before and set(names[:ours]) <= self._ours:
            for _ in range(ours):
                self.doc.undo()
            self._rest()
        match = self.doc.getObject(self._match)
        if match is not None and (
            any(getattr(match, name) != value for name, value in self._values.items())
            or noted(match) != self._spots
        ):
            self.begin()
            set_if_new(match, **self._values)
            bring_back(match, self._spots)
            compat.recompute(self.doc)
            self.end()

    def _rest(self) -> None:
        """All values are back, results too: recomputing would only note a change anew."""
        for obj in self.doc.Objects:
            if "Touched" in obj.State and obj.Name not in self._touched:
                obj.purgeTouched()

    def let_go(self) -> None:
        """The document is going."""
        if self._open is not None:
            self._open.drop()
        self._open = self.doc = None

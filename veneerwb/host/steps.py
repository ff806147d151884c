# SPDX-License-Identifier: LGPL-2.1-or-later
"""Undo steps for what is done to a document outside a panel."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

import FreeCAD

from veneerwb.host import compat


@contextmanager
def one_step(doc: Any, name: str) -> Iterator[None]:
    """What is done within is one undo step, or a part of the step that is open already; if it
    fails, a step of its own is taken back."""
    if FreeCAD.getActiveTransaction() or doc.HasPendingTransaction:
        yield
        return
    step = Step(doc, name)
    try:
        yield
    except BaseException:
        step.drop()
        compat.recompute(doc)  # or what was taken back would stay touched
        raise
    step.keep()


class Step:
    """An undo step that is begun and ended by hand: the host's active transaction, known by its
    number, for another command may have ended it and begun one of its own. It is ended even if
    nothing was changed in it, or the host would go on counting later changes to it."""

    def __init__(self, doc: Any, name: str) -> None:
        self.doc, self.name = doc, name
        self.begin()

    def begin(self) -> None:
        self.doc.openTransaction(self.name)
        active = FreeCAD.getActiveTransaction()
        self.number = active[1] if active else 0

    @property
    def goes_on(self) -> bool:
        active = FreeCAD.getActiveTransaction()
        return bool(active) and active[1] == self.number

    def keep(self) -> None:
        """Ends the step; what changed can be undone."""
        if self.goes_on:
            FreeCAD.closeActiveTransaction(False)

    def drop(self) -> None:
        """Ends the step; what changed is taken back. What another command has ended stays."""
        if self.goes_on:
            FreeCAD.closeActiveTransaction(True)

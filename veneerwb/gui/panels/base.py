# SPDX-License-Identifier: LGPL-2.1-or-later
"""The life of a panel: one transaction long."""

from __future__ import annotations

import gc
import os
from collections.abc import Callable
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from veneerwb.gui import resources
from veneerwb.gui.later import later
from veneerwb.gui.panels import fields
from veneerwb.host import compat
from veneerwb.host.objects.base import sentence

translate = FreeCAD.Qt.translate

_shown: list[Panel] = []
"""The panel that is open, if it is ours."""


def close_any() -> None:
    """Cancels the panel that is open, if it is ours."""
    for panel in list(_shown):
        panel.take_back()
        panel.close()


class Panel:
    """A task panel with OK and Cancel: what it does to the document is one undo step, and Cancel
    takes it back.

    `form` is drawn in resources/ui and made by the host, so that no widget is Python's to delete.
    They die without Python's knowledge, and a name still kept for one would be given to the next
    widget at that place in memory, which crashes: so `let_go` drops every name when the panel
    closes, and `form` is None from then on. Its label `trouble` says what is wrong: nothing ends
    in a traceback.
    """

    def __init__(self, doc: Any, drawn: str, picture: str, step: str = "") -> None:
        """`drawn` is the form's file, `picture` its icon, `step` the undo step (if it has any)."""
        self.doc, self.step = doc, step
        self._open = False  # the host would call a plain `open`
        self.begun = False
        self._touched = {obj.Name for obj in doc.Objects if "Touched" in obj.State} if doc else ()
        self.form = FreeCADGui.UiLoader().load(os.path.join(resources("ui"), f"{drawn}.ui"))
        self._made = self.form  # the host sets the other to None when it closes of its own accord
        self.form.setWindowIcon(FreeCADGui.getIcon(picture))
        self.say("")

    # --- life ---------------------------------------------------------------------------------

    def show(self) -> None:
        """Opens the panel."""
        FreeCAD.addDocumentObserver(self)
        self.form.destroyed.connect(self._forget)
        self._open = True
        _shown.append(self)
        FreeCADGui.Control.showDialog(self)

    def close(self) -> None:
        """Closes the panel, unless that has been done from elsewhere (another may be open now)."""
        if self._open:
            self._forget()
            FreeCADGui.Control.closeDialog()

    def _forget(self, *_: Any) -> None:
        """The host has no more to do with the panel, nor the panel with its document."""
        if self._open:
            self._open = False
            _shown.remove(self)
            FreeCAD.removeDocumentObserver(self)
            self.let_go()

    def soon(self, action: Callable[[], None]) -> None:
        """Does something when the events at hand are through, if the panel is still there then."""
        later(lambda: action() if self.form is not None else None)

    def let_go(self) -> None:
        """Forgets every widget; those whose signals were heard hang in circles."""
        form, self.form, self._made = self._made, None, None
        compat.forget(form)
        gc.collect()

    def accept(self) -> bool:
        """The host's OK: the host closes the panel, unless `finish` refuses."""
        if not self.attempt(self.finish):
            return False
        if self.begun and self.doc is not None:
            self.doc.commitTransaction()
        self._forget()
        return True

    def reject(self) -> bool:
        """The host's Cancel, and Escape."""
        self.take_back()
        self._forget()
        return True

    def begin(self) -> None:
        """From now on what changes in the document is the panel's step."""
        self.doc.openTransaction(self.step)
        self.begun = True

    def take_back(self) -> None:
        """Leaves the document as it was when the panel opened."""
        if self.begun and self.doc is not None and self.doc.HasPendingTransaction:
            self.doc.abortTransaction()
            # All values are back, results too; recomputing would only note a change anew.
            for obj in self.doc.Objects:
                if "Touched" in obj.State and obj.Name not in self._touched:
                    obj.purgeTouched()

    def slotDeletedDocument(self, doc: Any) -> None:
        """The host is closing a document: the panel goes with its own, touching nothing."""
        if doc is self.doc or doc == self.doc:
            self.doc = None
            later(self.close)

    def finish(self) -> None:
        """What OK does; an error refuses."""

    # --- what is wrong ------------------------------------------------------------------------

    def attempt(self, action: Callable[[], Any]) -> bool:
        """Whether `action` went well; if not, the panel says why."""
        QtGui.QApplication.setOverrideCursor(QtCore.Qt.WaitCursor)
        try:
            action()
        except Exception as error:
            self.say(sentence(error))
            return False
        finally:
            QtGui.QApplication.restoreOverrideCursor()
        self.say("")
        return True

    def say(self, text: str) -> None:
        """Shows what is wrong, or that nothing is."""
        if self.form is None:
            return
        self.form.trouble.setText(text)
        self.form.trouble.setVisible(bool(text))

    def take_mixed_numbers(self, name: str) -> None:
        """Lets the box of that name take mixed numbers of inches."""
        line = getattr(self.form, name).findChild(QtGui.QLineEdit)
        line.textEdited.connect(lambda text: self._edited(name, text))

    def _edited(self, name: str, text: str) -> None:
        plain = fields.one_fraction(text)
        if plain != text:  # later: the box is still about to read what was typed
            self.soon(lambda: self._rewrite(name, plain))

    def _rewrite(self, name: str, text: str) -> None:
        getattr(self.form, name).findChild(QtGui.QLineEdit).setText(text)

    def show_row(self, box: Any, shown: bool) -> None:
        """Shows or hides a box with its label."""
        for one in (box, self.form.layout().labelForField(box)):
            one.setVisible(shown)

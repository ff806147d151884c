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
from veneerwb.gui.keys import Keys
from veneerwb.gui.later import later
from veneerwb.gui.panels import fields
from veneerwb.host import compat
from veneerwb.host.steps import Step

translate = FreeCAD.Qt.translate

_shown: list[Panel] = []
"""The panel that is open, if it is ours."""


_listening: list[bool] = []


def _listen() -> None:
    """From the first panel on, choosing another workbench cancels whatever panel is open, and
    What's This is answered: a double click in the tree may come before our workbench is chosen."""
    from veneerwb.gui import help as pages

    pages.answer_whats_this()
    if not _listening:
        FreeCADGui.getMainWindow().workbenchActivated.connect(close_any)
        _listening.append(True)


def shown() -> list[Panel]:
    """The panel that is open, if it is ours."""
    return list(_shown)


def close_any(*_: Any) -> None:
    """Cancels the panel that is open, if it is ours and nothing would be lost with it."""
    for panel in shown():
        if not panel.unsaved():
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

    def __init__(self, doc: Any, drawn: str, picture: str, step: Step | None = None) -> None:
        """`drawn` is the form's file, `picture` its icon, `step` the undo step, if it has begun."""
        self.doc, self.step = doc, step
        self._open = False  # the host would call a plain `open`
        self._failed = False  # the attempt that was made last
        self._filled: dict[str, tuple[Any, Any]] = {}
        self._touched = {obj.Name for obj in doc.Objects if "Touched" in obj.State} if doc else ()
        self.form = FreeCADGui.UiLoader().load(os.path.join(resources("ui"), f"{drawn}.ui"))
        self._made = self.form  # the host sets the other to None when it closes of its own accord
        self.form.setWindowIcon(FreeCADGui.getIcon(picture))
        self._keys = Keys.without_delete(self.form, self.delete)
        self.say("")

    # --- life ---------------------------------------------------------------------------------

    def show(self) -> None:
        """Opens the panel."""
        _listen()
        FreeCAD.addDocumentObserver(self)
        self.form.destroyed.connect(self._forget)
        self._open = True
        _shown.append(self)
        FreeCADGui.Control.showDialog(self)
        self.soon(lambda: fields.from_the_start(self.form))

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
        self._keys.forget()
        compat.forget(form)
        gc.collect()

    def accept(self) -> bool:
        """The host's OK: the host closes the panel, unless `finish` refuses."""
        if not self.attempt(self.finish):
            return False
        if self.step is not None:
            self.step.keep()
        self._forget()
        return True

    def reject(self) -> bool:
        """The host's Cancel, and Escape."""
        self.take_back()
        self._forget()
        return True

    def take_back(self) -> None:
        """Leaves the document as it was when the panel opened."""
        if self.step is None:
            return
        changed = self.doc is not None and self.doc.HasPendingTransaction and self.step.goes_on
        self.step.drop()
        if changed:
            # All values are back, results too; recomputing would only note a change anew.
            for obj in self.doc.Objects:
                if "Touched" in obj.State and obj.Name not in self._touched:
                    obj.purgeTouched()

    def slotDeletedDocument(self, doc: Any) -> None:
        """The host is closing a document: the panel goes with its own, touching nothing."""
        if doc is self.doc or doc == self.doc:
            self.doc = None
            if self.step is not None:
                self.step.keep()  # nothing is taken back of what is going: a host died of it
            later(self.close)

    def slotUndoDocument(self, doc: Any) -> None:
        """Undo takes back what the panel did, so that the panel is through; work that is in no step
        stays, and with it the panel."""
        if doc == self.doc:
            self.soon(lambda: self.renew() if self.unsaved() else self.close())

    slotRedoDocument = slotUndoDocument

    def renew(self) -> None:
        """Reads the document again, under work that is not in it yet."""

    def slotActivateDocument(self, doc: Any) -> None:
        """Another document's changes would go into this one's step: the panel is cancelled."""
        if self.step is not None and doc != self.doc:
            self.take_back()
            later(self.close)

    def delete(self) -> None:
        """What Delete does in the form: never what the host does, which would take what is selected
        in the tree."""

    def finish(self) -> None:
        """What OK does; an error refuses."""

    def unsaved(self) -> bool:
        """Whether the panel holds work that would be lost with it, and that nobody was asked of."""
        return False

    # --- what is wrong ------------------------------------------------------------------------

    def attempt(self, action: Callable[[], Any]) -> bool:
        """Whether `action` went well; if not, the panel says why."""
        QtGui.QApplication.setOverrideCursor(QtCore.Qt.WaitCursor)
        self._failed = False
        try:
            action()
        except Exception as error:
            self._failed = True
            self.say(fields.told(error))
            return False
        finally:
            QtGui.QApplication.restoreOverrideCursor()
        if not self._failed:  # within another attempt, which is to leave what was said
            self.say("")
        return True

    def say(self, text: str) -> None:
        """Shows what is wrong, or that nothing is."""
        if self.form is None:
            return
        self.form.trouble.setText(text)
        self.form.trouble.setVisible(bool(text))

    def take_mixed_numbers(self, name: str) -> None:
        """Lets the box of that name take mixed numbers of inches. It has read a text before we do;
        what is written anew must not wait, or it would come after what is typed next."""
        line = getattr(self.form, name).findChild(QtGui.QLineEdit)
        line.textChanged.connect(lambda text: self._rewrite(name, text))

    def _rewrite(self, name: str, text: str) -> None:
        plain = fields.one_fraction(text)
        if plain != text and self.form is not None:
            getattr(self.form, name).findChild(QtGui.QLineEdit).setText(plain)

    def fill(self, name: str, meant: Any) -> None:
        """Shows a value in the box of that name."""
        box = getattr(self.form, name)
        fields.fill(box, meant)
        self._filled[name] = (fields.value(box), meant)

    def value(self, name: str) -> Any:
        """What the box of that name holds; while it shows what it was filled with, exactly that: a
        box rounds, and shows nothing of what is none of its choices."""
        shown = fields.value(getattr(self.form, name))
        first, meant = self._filled.get(name, (None, None))
        return meant if name in self._filled and shown == first else shown

    def show_row(self, box: Any, shown: bool) -> None:
        """Shows or hides a box with its label, if it has one. In a grid, which leaves no gaps where
        rows are hidden as a layout of rows does, the label is known by the box's name."""
        rows = self.form.layout()
        if hasattr(rows, "labelForField"):
            label = rows.labelForField(box)
        else:
            label = getattr(self.form, f"{box.objectName()}_label", None)
        for one in filter(None, (box, label)):
            one.setVisible(shown)


def close_document(name: str) -> None:
    """Closes the document of that name, if it is still open."""
    if name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A panel some of whose buttons do what takes its time: it is told how far, and can be stopped."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any

from PySide import QtGui

from veneerwb.gui.panels.base import Panel, translate
from veneerwb.host.objects.base import Refused

HERE = "VeneerAtWork"
Progress = Callable[[float], None]


class AtWork(Panel):
    """While it is at work the button that began it says how far it is and stops it, and all in
    `locked`, names of other boxes, wait."""

    locked: tuple[str, ...] = ()
    working = ""
    """The name of the button that is at work."""
    _stopped = False

    def connect(self, name: str, action: Callable[[], Any]) -> None:
        """Does `action` when the button of that name is pressed; if it is at work, stops it."""

        def pressed(*_: Any) -> None:
            if self.working == name:
                self._stopped = True
            elif not self.working:
                action()

        getattr(self.form, name).clicked.connect(pressed)

    def accept(self) -> bool:
        """OK waits: closing would drop what the work is about to bring."""
        if self.working:
            self.say(translate(HERE, "Still at work. When it is through, press OK again."))
            return False
        return super().accept()

    def at_work(self, name: str, action: Callable[[Progress], Any]) -> bool:
        """Whether `action`, which tells its progress, came to its end; if not, the panel says why,
        unless it was closed meanwhile."""
        text = getattr(self.form, name).text()
        self.working, self._stopped = name, False
        self._lock(True)
        try:
            went_well = self.attempt(lambda: self._told(name, action))
        finally:
            self.working = ""
        if self.form is None:
            return False
        getattr(self.form, name).setText(text)
        self._lock(False)
        return went_well

    def _told(self, name: str, action: Callable[[Progress], Any]) -> None:
        progress = partial(self._progressed, name)
        progress(0.0)
        action(progress)

    def _progressed(self, name: str, share: float) -> None:
        if self.form is not None:
            stop = translate(HERE, "Stop ({percent} %)").format(percent=round(100 * share))
            getattr(self.form, name).setText(stop)
            QtGui.QApplication.processEvents()
        if self._stopped or self.form is None:
            raise Refused(translate(HERE, "Stopped; nothing was changed."))

    def _lock(self, locked: bool) -> None:
        for name in self.locked:
            if name != self.working:
                getattr(self.form, name).setEnabled(not locked)

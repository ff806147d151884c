# SPDX-License-Identifier: LGPL-2.1-or-later
"""A panel that measures what the registers leave along the seams of a top, and shows it."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from veneerwb.gui.panels.at_work import AtWork


class MeasuresSeams(AtWork):
    """Has one window of seams at a time, which goes with the panel; `measured` is what it shows."""

    measured: Any = None
    _seams: Any = None
    _laid: Callable[[], Any]

    def measure(self, button: str, laid: Callable[[], Any], name: str) -> bool:
        """Whether the seams of a top were measured: `laid` gives its layout as it is now, `name` is
        said of it; `button` is at work meanwhile."""
        from veneerwb.gui.seams import seams_of

        def look(progress: Callable[[float], None]) -> None:
            found = seams_of(laid, name, progress)
            self.forget_seams()
            self.measured, self._laid = found, laid
            self._show_seams()

        return self.at_work(button, look)

    def _show_seams(self) -> None:
        from veneerwb.gui.seams import SeamsWindow

        self._seams = SeamsWindow(self.measured, self._seams_closed)
        self._seams.to_front()

    def _seams_closed(self) -> None:
        self._seams = None

    def date_seams(self) -> bool:
        """Whether the top is as it was measured; if not, the window says so."""
        if self.measured is None:
            return False
        try:
            fits = self.measured.fits(self._laid())
        except Exception:  # it is gone, or can no longer be laid
            fits = False
        if self._seams is not None:
            self._seams.tell(fits)
        return fits

    def forget_seams(self) -> None:
        """Closes the window."""
        window, self._seams, self.measured = self._seams, None, None
        if window is not None:
            window.close()

    def let_go(self) -> None:
        self.forget_seams()
        super().let_go()

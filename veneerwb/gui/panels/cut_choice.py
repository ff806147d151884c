# SPDX-License-Identifier: LGPL-2.1-or-later
"""How what differs is cut, as the panel of a match asks for it: shown where there is a choice."""

from __future__ import annotations

from typing import Any

from veneerwb.gui import cuts_words as words
from veneerwb.gui.cuts_window import CutsWindow
from veneerwb.gui.panels import fields
from veneerwb.host import kinds

ROW = ("CutAs_label", "CutAs", "cuts_said", "show_cuts")


class CutChoice:
    """The box `CutAs` of a panel's form, what is said below it, and the window that its button
    opens."""

    def __init__(self, panel: Any) -> None:
        self.panel, self.window = panel, None
        panel.form.show_cuts.clicked.connect(lambda: panel.attempt(self._open))
        self._show(False)

    def _show(self, shown: bool, compared: bool = False) -> None:
        for name in ROW:
            part = getattr(self.panel.form, name)
            part.setVisible(shown and (compared or name != "show_cuts"))

    def tell(self) -> None:
        """Says what the match as it is laid takes; while it is refused all stays."""
        from veneerwb.core.lots import cuttings, pieces_differ
        from veneerwb.host.objects import layout

        obj, form = self.panel.obj, self.panel.form
        if obj.Message:
            return
        laid = layout(obj)
        differ = pieces_differ(laid)
        self._show(differ or laid.cut_as == "own", differ)
        if not differ:
            form.cuts_said.setText(words.alike())
            self._close()
            return
        ways = cuttings(laid, obj.Margin.Value)
        form.cuts_said.setText(words.in_short(ways))
        if self.window is not None:
            self.window.show(laid, ways)

    # --- the window ---------------------------------------------------------------------------

    def _open(self) -> None:
        if self.window is None:
            may = "CutAs" in self.panel.offered
            self.window = CutsWindow(self._take if may else None, self._closed)
        self.tell()
        if self.window is not None:
            self.window.to_front()

    def _take(self, how: str) -> None:
        """The box hears of it as if it had been chosen there."""
        fields.fill(
            self.panel.form.CutAs, next(name for name, one in kinds.CUTS.items() if one == how)
        )

    def _closed(self) -> None:
        self.window = None

    def _close(self) -> None:
        window, self.window = self.window, None
        if window is not None:
            window.close()

    def let_go(self) -> None:
        self._close()
        self.panel = None

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the stack may follow, side by side: the same top laid by each choice, and what it costs."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any

import FreeCAD

from veneerwb.gui.canvas import Canvas
from veneerwb.gui.panels import fields
from veneerwb.gui.ring import RingHand
from veneerwb.gui.sequence.words import followed_as
from veneerwb.gui.side_window import Window

translate = FreeCAD.Qt.translate
HERE = "VeneerChoices"


class ChoicesWindow(Window):
    """A picture, words and a button for each choice."""

    def __init__(
        self, choices: Any, taken: Callable[[str], None], closed: Callable[[], None]
    ) -> None:
        title = translate(HERE, "What the stack follows")
        super().__init__("choices", title, "veneer-sequence", closed)
        self.taken = taken
        there = {choice.what: choice for choice in choices}
        for what in ("figure", "log", "marks", "photographs"):
            part = partial(self._part, what)
            part("choice").setVisible(what in there)
            if what in there:
                self._fill(part, there[what])

    def _part(self, what: str, kind: str) -> Any:
        return getattr(self.form, f"{kind}_{what}")

    def _fill(self, part: Callable[[str], Any], choice: Any) -> None:
        across, along = (fields.length(round(mm), 0) for mm in choice.followed.cost.lost)
        cost = translate(HERE, "{name}: costs {along} of length, {across} of width")
        name = followed_as(choice.what)
        part("title").setText(cost.format(name=name, along=along, across=across))
        said = map(fields.in_units, choice.followed.findings)
        part("text").setPlainText(
            "\n\n".join(" ".join(filter(None, (one.text, one.remedy))) for one in said)
        )
        part("take").clicked.connect(lambda *_: self.taken(choice.what))
        self.canvases.append(Canvas(part("picture"), RingHand(choice.layout)))

    def let_go(self) -> None:
        self.taken = lambda what: None
        super().let_go()

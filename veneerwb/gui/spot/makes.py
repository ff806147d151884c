# SPDX-License-Identifier: LGPL-2.1-or-later
"""What this bundle makes: the largest top for every number of ways, and how many of this size."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import FreeCAD
from PySide import QtCore, QtGui

from veneerwb.core.appeal import Stopped
from veneerwb.gui.canvas import Canvas, Hand
from veneerwb.gui.panels import fields
from veneerwb.gui.spot.tab import Progress, Tab
from veneerwb.host.objects.base import Refused
from veneerwb.paint import ground, ink

translate = FreeCAD.Qt.translate
HERE = "VeneerSpotMakes"
RIGHT = int(QtCore.Qt.AlignRight | QtCore.Qt.AlignVCenter)
WIDTHS = (44, 100)
"""Pixels of all columns of the table but the last."""
ABOVE = 22


class MakesTab(Tab):
    """The tab: the table at the left, the cuts on the leaf at the right."""

    drawn = "spot_makes"

    def __init__(self, state: Any) -> None:
        super().__init__(state)
        self.rows: list[Any] = []
        """What the table shows: ways, top, placement, first."""
        self._rows_of: tuple[Any, ...] = ()
        self._order = ""
        """The order of the leaves that the table was made for: a list is of so many ways."""
        self.counted: Any = None
        """The layouts of the tops that were counted."""
        self._counted_of: tuple[Any, ...] = ()
        self.hand = CutsHand(self)
        self.hand.canvas = self.canvas("cuts", self.hand)
        self.works("largest", self._largest)
        self.works("count", self._count)
        for column, width in enumerate(WIDTHS):
            self.form.ways.setColumnWidth(column, width)
        self.form.ways.clicked.connect(lambda index: self.attempt(lambda: self._go(index.row())))
        self.form.ways.activated.connect(lambda index: self.attempt(lambda: self._go(index.row())))
        state.changed(self._date)

    # --- working it out -----------------------------------------------------------------------

    def _asked(self) -> tuple[Any, ...]:
        """What both depend on, the bundle first."""
        state = self.state
        return state.bundle, state.recipe.turn, state.margin, state.hidden, *self._more().values()

    def _asked_of_count(self) -> tuple[Any, ...]:
        """What the tops that are counted depend on, their size last."""
        how = self.state.recipe
        return *self._asked(), how.order, how.ways, self.state.size

    def _more(self) -> dict[str, Any]:
        """How the top is laid, beside ways and turn."""
        how = self.state.recipe
        order = how.order if isinstance(how.order, str) else "sequence"
        return {"turned": how.turned, "rim": how.rim, "start": how.start,
                "oversize": how.oversize, "order": order}  # fmt: skip

    def _largest(self, progress: Progress) -> None:
        from veneerwb.core.yields.largest import largest_tops

        state, asked, more = self.state, self._asked(), self._more()
        rows = self._worked(lambda: largest_tops(
            state.bundle, state.top, state.recipe.turn, state.margin, state.covered,
            progress=progress, **more,
        ))
        if rows is not None:
            self.rows, self._rows_of, self._order = rows, asked, more["order"]
            self._fill()

    def _count(self, progress: Progress) -> None:
        from veneerwb.core.yields.packing import tops_from

        state, how = self.state, self.state.recipe
        bundle, top, asked = state.bundle, state.top, self._asked_of_count()
        found = self._worked(lambda: tops_from(
            bundle, top, how.ways, how.turn, margin=state.margin, hidden=state.covered,
            progress=progress,
            **{**self._more(), "order": how.order},
        ))
        if found is not None:
            self.counted = [
                replace(how, placement=one.placement, first=one.first).lay(bundle, top)
                for one in found
            ]
            self._counted_of = asked
            self.hand.canvas.refresh()

    def _worked(self, work: Any) -> Any:
        """What `work` gives; None if the window was closed meanwhile."""
        try:
            found = work()
        except Stopped:
            if self.form is None:
                return None
            raise Refused(translate(HERE, "Stopped; nothing was changed.")) from None
        return found if self.form is not None else None

    # --- the table ----------------------------------------------------------------------------

    def _fill(self) -> None:
        table = self.form.ways
        table.setRowCount(0)
        table.setRowCount(len(self.rows))
        model = table.model()
        for k, row in enumerate(self.rows):
            texts = [str(row.ways), translate(HERE, "none fits"), ""]
            if row.top is not None:
                texts[1:] = fields.length(row.size), str(row.first)
            for column, text in enumerate(texts):
                index = model.index(k, column)
                model.setData(index, text)
                model.setData(index, RIGHT, QtCore.Qt.TextAlignmentRole)

    def _go(self, k: int) -> None:
        """Goes to where the largest top in so many ways lies."""
        row = self.rows[k] if 0 <= k < len(self.rows) else None
        if row is None:
            return
        if row.placement is None:
            raise Refused(translate(HERE, "No top of this shape fits in {ways} ways.").format(
                ways=row.ways))
        size = row.size if self.form.sized.isChecked() else None
        self.state.go(
            placement=row.placement, first=row.first, ways=row.ways, order=self._order, size=size,
        )  # fmt: skip

    # --- what it was worked out for -----------------------------------------------------------

    @property
    def fits(self) -> bool:
        """Whether the tops that were counted would be counted so still."""
        now = self._asked_of_count()
        return bool(self._counted_of) and now[0] is self._counted_of[0] and (
            now[1:] == self._counted_of[1:]
        )

    def _date(self) -> None:
        if self.form is None:
            return
        now = self._asked()
        stale = self.rows and (now[0] is not self._rows_of[0] or now[1:] != self._rows_of[1:])
        self.say(translate(
            HERE, "The table was made before the last change; make it again."
        ) if stale else "")
        self.hand.canvas.refresh()

    def let_go(self) -> None:
        self.hand.tab = None
        super().let_go()


class CutsHand(Hand):
    """The leaf with all cuts on it, and how many tops they are."""

    def __init__(self, tab: MakesTab) -> None:
        self.tab = tab
        self.canvas: Canvas | None = None

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        tab = self.tab
        if tab is None or tab.counted is None:
            ink.say(painter, size, translate(
                HERE, "How many works out how many tops of this size the leaves give, with room "
                "between the cuts, and draws the cuts here."
            ))
            return
        ink.begin(painter, size)
        painter.setFont(ink.font(12, bold=True))
        ink.write(painter, self.said(), (6, 2, size[0] - 12, ABOVE), "left")
        if not tab.fits:
            painter.setFont(ink.font())
            painter.setPen(ink.colour(ink.FAINT))
            ink.write(painter, translate(HERE, "counted before the last change"),
                      (6, size[1] - 18, size[0] - 12, 16), "left")
        bundle = tab._counted_of[0]
        on = ground.ground_of(bundle, size, (6.0, ABOVE + 4.0, 6.0, 22.0))
        ground.draw_leaf(painter, on, bundle, bundle.numbers[0])
        firsts = sorted({laid.recipe.first for laid in tab.counted})
        cuts, groups, names = [], [], []
        for k, laid in enumerate(tab.counted, start=1):
            for cut in laid.cuts:
                cuts.append(cut.outline)
                groups.append(firsts.index(laid.recipe.first))
                names.append(str(k))
        ground.draw_cuts(painter, on, cuts, groups, names)

    def said(self) -> str:
        counted = self.tab.counted
        if not counted:
            return translate(HERE, "No top of this size fits.")
        stacks = len({laid.recipe.first for laid in counted})
        text = translate(HERE, "At least {count} tops of {size} in {ways} ways")
        if stacks > 1:
            text = translate(
                HERE, "At least {count} tops of {size} in {ways} ways, a colour for each stack"
            )
        return text.format(
            count=len(counted), size=fields.length(self.tab._counted_of[-1]),
            ways=counted[0].recipe.ways,
        )

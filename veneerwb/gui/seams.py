# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the registers leave along the seams of a top, in figures and pictures."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, NamedTuple

import FreeCAD
from PySide import QtGui

from veneerwb.gui.canvas import Canvas, Hand, Place
from veneerwb.gui.panels import fields
from veneerwb.gui.ring import RingHand
from veneerwb.gui.side_window import Window
from veneerwb.host.objects.base import Refused
from veneerwb.paint.seams import VISIBLE, Rows, Spot, Words, draw_bars, draw_spots, spot_legend

translate = FreeCAD.Qt.translate
HERE = "VeneerSeams"


class Seams(NamedTuple):
    """What was measured: the `layout` of a top, its `name`, and the core's `residual`."""

    layout: Any
    name: str
    residual: Any

    def fits(self, layout: Any) -> bool:
        """Whether it would still be measured so."""
        return layout is not None and layout.revision == self.layout.revision

    @property
    def text(self) -> str:
        """The figures, in the user's units, and where they come from."""
        from veneerwb.core.sequence.trust import TESTED

        said = map(fields.in_units, (*self.residual.findings, TESTED))
        return "\n\n".join(" ".join(filter(None, (one.text, one.remedy))) for one in said)

    @property
    def spots(self) -> list[list[Spot]]:
        """Where on the top each seam was measured."""
        from shapely.geometry import Point

        pieces = {piece.position: piece for piece in self.layout.pieces}

        def on_top(seam: Any, place: Any) -> tuple[float, float]:
            """Of a slip match a place is of one of the two pieces: that on whose seam it lies."""
            both = [pieces[n].onto_bundle.inverse().apply(place) for n in (seam.a, seam.b)]
            x, y = min(both, key=lambda at: seam.line.distance(Point(*at)))
            return float(x), float(y)

        return [
            [Spot(on_top(seam, patch.place), patch.mm) for patch in found.patches]
            for seam, found in zip(self.layout.seams, self.residual.seams)
        ]


def seams_of(laid: Callable[[], Any], name: str, progress: Callable[[float], None]) -> Seams:
    """Measures the seams of the top that `laid` gives. Raises VeneerError, what `progress` raises,
    and Refused where the top is no longer as it was."""
    from veneerwb.core.sequence.residual import residual

    layout = laid()
    if layout is None:
        raise Refused(translate(HERE, "Too few leaves for a ring, so there is no seam."))
    found = Seams(layout, name, residual(layout, progress=progress))
    if not found.fits(laid()):
        raise Refused(translate(
            HERE, "The top was changed while its seams were measured; measure them again."
        ))
    return found


class SeamsWindow(Window):
    """The top with spots where its seams were measured, a bar for each seam, and what is said."""

    def __init__(self, seams: Seams, closed: Callable[[], None]) -> None:
        title = translate(HERE, "Seams of {name}").format(name=seams.name)
        super().__init__("seams", title, "veneer-sequence", closed)
        self.seams, self.row = seams, None
        self.tell()
        self.form.text.setPlainText(seams.text)
        self.canvases = [
            Canvas(self.form.top, TopHand(self)), Canvas(self.form.bars, BarsHand(self)),
        ]  # fmt: skip

    def tell(self, fits: bool = True) -> None:
        """Says what was measured, and if the top is no longer so."""
        text = self._title()
        if not fits:
            text = translate(HERE, "Measured before the last change. {title}").format(title=text)
        self.form.title.setText(text)

    def _title(self) -> str:
        found = self.seams.residual
        if not found.measured:
            text = translate(HERE, "{name}: nothing could be measured along its seams")
            return text.format(name=self.seams.name)
        return translate(
            HERE, "{name}: the figure meets to {rms} rms, {worst} at worst, by {measured} of "
            "{tried} places on your photographs"
        ).format(
            name=self.seams.name, rms=fields.length(found.rms, 2),
            worst=fields.length(found.worst, 2), measured=found.measured, tried=found.tried,
        )

    def point_at(self, row: int | None) -> None:
        """Shows one seam alone, or all."""
        if row != self.row:
            self.row = row
            for canvas in self.canvases:
                canvas.refresh()

    def let_go(self) -> None:
        for canvas in self.canvases:
            canvas.hand.window = None
        super().let_go()


class TopHand(RingHand):
    """The top, veiled, with its spots."""

    def __init__(self, window: SeamsWindow) -> None:
        super().__init__(window.seams.layout)
        self.window, self.spots = window, window.seams.spots

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        super().draw(painter, size)
        scale = self.scale(size)
        painter.fillRect(0, 0, *size, QtGui.QColor(255, 255, 255, 90))
        draw_spots(
            painter, self.spots,
            lambda at: (size[0] / 2 + at[0] * scale, size[1] / 2 - at[1] * scale),
            self.window.row,
        )
        most = fields.length(VISIBLE)
        words = translate(HERE, "up to {most}").format(most=most), translate(HERE, "more: it shows")
        spot_legend(painter, size, words)


class BarsHand(Hand):
    """The bars; the mouse over one shows where that seam was measured."""

    def __init__(self, window: SeamsWindow) -> None:
        self.window = window

    def draw(self, painter: QtGui.QPainter, size: tuple[int, int]) -> None:
        user = fields.unit()
        words = Words(
            translate(HERE, "rms"), translate(HERE, "worst place"),
            translate(HERE, "from here on it shows"),
            translate(HERE, "pictured by one photograph"), translate(HERE, "cannot be told"),
            user.name,
        )  # fmt: skip
        draw_bars(painter, self.window.seams.residual, size, user.mm, self.window.row, words)

    def over(self, at: Place | None) -> None:
        window = self.window
        rows = Rows(window.canvases[1].size, len(window.seams.residual.seams))
        window.point_at(None if at is None else rows.row_at(at.y))

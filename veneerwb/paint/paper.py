# SPDX-License-Identifier: LGPL-2.1-or-later
"""Paper at 1:1, as PDF: the sheet of marks.

Lines and discs are drawn as such, so that a page is exact at any magnification, and text stays
text.
"""

from __future__ import annotations

import os
from collections.abc import Sequence

from veneerwb.core.errors import VeneerError
from veneerwb.core.files import write_beside
from veneerwb.core.targets.mark import MARK
from veneerwb.core.targets.sheet import Page, Placed, Words, sheet
from veneerwb.paint.qt import QtCore, QtGui, application, can_write_text
from veneerwb.words import say

DPI = 1200
_MM = DPI / 25.4  # dots to the millimetre
BLACK, GREY = QtGui.QColor(0, 0, 0), QtGui.QColor(130, 130, 130)


def targets_sheet(
    path: str | os.PathLike[str], numbers: Sequence[int], per_leaf: int = 3, paper: str = "A4"
) -> int:
    """Writes the marks for the leaves `numbers` as a PDF, `per_leaf` for each, on "A4" or
    "Letter"; returns how many pages. Whole or not at all; raises VeneerError."""
    pages = sheet(numbers, per_leaf, paper)
    data = _pdf(pages, paper)
    write_beside(path, lambda stream: stream.write(data))
    return len(pages)


def _pdf(pages: list[Page], paper: str) -> bytes:
    application()
    if not can_write_text():
        raise VeneerError(
            "no-fonts", "Text cannot be drawn in this session; print the marks from the window."
        )
    held = QtCore.QByteArray()
    buffer = QtCore.QBuffer(held)
    buffer.open(QtCore.QIODevice.WriteOnly)
    writer = QtGui.QPdfWriter(buffer)
    writer.setTitle(say("Marks for leaves"))
    writer.setCreator("Veneer Layup")
    writer.setResolution(DPI)
    size = QtGui.QPageSize(getattr(QtGui.QPageSize, paper))
    writer.setPageLayout(
        QtGui.QPageLayout(size, QtGui.QPageLayout.Portrait, QtCore.QMarginsF(0, 0, 0, 0))
    )
    painter = QtGui.QPainter(writer)
    for k, page in enumerate(pages):
        if k:
            writer.newPage()
        _draw(painter, page)
    painter.end()
    buffer.close()
    return bytes(held.data())


def _draw(painter: QtGui.QPainter, page: Page) -> None:
    pen = QtGui.QPen(GREY, 0.12 * _MM)
    for line in page.cuts:
        _line(painter, page, line, pen)
    for bar in page.bars:
        _bar(painter, page, bar)
    for mark in page.marks:
        _mark(painter, page, mark)
    for words in page.words:
        _write(painter, page, words)


def _dots(page: Page, x: float, y: float) -> QtCore.QPointF:
    return QtCore.QPointF(x * _MM, (page.height - y) * _MM)


def _line(painter: QtGui.QPainter, page: Page, line: tuple, pen: QtGui.QPen) -> None:
    pen.setCapStyle(QtCore.Qt.FlatCap)
    painter.setPen(pen)
    painter.drawLine(_dots(page, *line[:2]), _dots(page, *line[2:]))


def _bar(painter: QtGui.QPainter, page: Page, bar: tuple) -> None:
    """A line whose end strokes' outer edges are what a rule is laid to, with strokes each 10 mm."""
    x, y, right, upper = bar
    flat = y == upper
    thin, length = 0.2, (right - x) + (upper - y)
    pen = QtGui.QPen(BLACK, thin * _MM)
    _line(painter, page, bar, pen)
    for at in range(0, round(length) + 1, 10):
        # The end strokes lie within the length: its outer edges are exactly `length` apart.
        place = min(max(float(at), thin / 2), length - thin / 2)
        high = 2.5 if at in (0, round(length)) else 1.0
        stroke = (x + place, y - high, x + place, y + high) if flat else (
            x - high, y + place, x + high, y + place)
        _line(painter, page, stroke, pen)


def _mark(painter: QtGui.QPainter, page: Page, mark: Placed) -> None:
    middle = _dots(page, mark.x, mark.y)
    ring = QtGui.QPainterPath()  # filled by odd and even: the inner disc is a hole
    for diameter in (MARK.outer, MARK.inner):
        ring.addEllipse(middle, diameter / 2 * _MM, diameter / 2 * _MM)
    painter.fillPath(ring, BLACK)
    arrow = QtGui.QPainterPath()
    corners = [_dots(page, mark.x + x, mark.y + y) for x, y in MARK.arrow]
    arrow.addPolygon(QtGui.QPolygonF([*corners, corners[0]]))
    painter.fillPath(arrow, BLACK)
    half, pen = MARK.cross / 2, QtGui.QPen(BLACK, MARK.line * _MM)
    _line(painter, page, (mark.x - half, mark.y, mark.x + half, mark.y), pen)
    _line(painter, page, (mark.x, mark.y - half, mark.x, mark.y + half), pen)
    left, lower, right, upper = MARK.caption
    font, width = _font(0.7 * (upper - lower), True, mark.caption, right - left)
    start = _dots(page, mark.x, mark.y + lower + 0.15 * (upper - lower))
    _letters(painter, font, start - QtCore.QPointF(width / 2, 0), mark.caption)


def _write(painter: QtGui.QPainter, page: Page, words: Words) -> None:
    font, _ = _font(words.height, words.bold, words.text, words.wide)
    painter.save()
    painter.translate(_dots(page, words.x, words.y))
    if words.upright:
        painter.rotate(-90)
    _letters(painter, font, QtCore.QPointF(0, 0), words.text)
    painter.restore()


def _letters(
    painter: QtGui.QPainter, font: QtGui.QFont, start: QtCore.QPointF, text: str
) -> None:
    painter.setPen(BLACK)
    painter.setFont(font)
    painter.drawText(start, text)


def _font(height: float, bold: bool, text: str, wide: float) -> tuple[QtGui.QFont, float]:
    """Letters with capitals of `height` mm, or smaller so that `text` is at most `wide` mm wide;
    and its width in dots."""
    font = QtGui.QFont("sans-serif")
    font.setBold(bold)
    font.setLetterSpacing(QtGui.QFont.AbsoluteSpacing, 0.05)  # no ligatures: they are not found
    font.setPixelSize(1000)
    metrics = QtGui.QFontMetricsF(font)
    capitals = metrics.tightBoundingRect("H").height()
    size = min(1000 * height / capitals, 1000 * wide / metrics.horizontalAdvance(text)) * _MM
    font.setPixelSize(max(1, int(size)))
    return font, QtGui.QFontMetricsF(font).horizontalAdvance(text)

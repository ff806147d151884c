# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pages as a PDF file, at 1:1: lines are lines and text is text. No window is needed."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.outlines.curves import Curve, EllipseArc
from veneerwb.core.outlines.edge import Arc, Line
from veneerwb.core.shop.drawing.drawn import Drawing, Image, Letters, Mark, Stroke
from veneerwb.core.shop.drawing.lettering import clean, width
from veneerwb.core.shop.drawing.page import Page
from veneerwb.paint.qt import QtCore, QtGui, application, can_write_text

DPI = 1200
WIDEST = 30.0
"""Degrees of an arc that one cubic curve stands for: it lies within 4e-7 of the radius."""
CREATOR = "Veneer Layup"


def pdf(pages: Sequence[Page], title: str) -> bytes:
    """The pages as the bytes of a PDF file, each on its own paper. VeneerError where text cannot
    be drawn."""
    return drawings_pdf([page.drawing for page in pages], title)


def drawings_pdf(drawings: Sequence[Drawing], title: str) -> bytes:
    """Drawings as a PDF file, each on a page of its own size."""
    application()
    if not can_write_text():
        raise VeneerError(
            "no-fonts", "Text cannot be drawn in this session; write the pages from the window."
        )
    held = QtCore.QByteArray()
    buffer = QtCore.QBuffer(held)
    buffer.open(QtCore.QIODevice.WriteOnly)
    writer = QtGui.QPdfWriter(buffer)
    writer.setTitle(clean(title))
    writer.setCreator(CREATOR)
    writer.setResolution(DPI)
    painter = QtGui.QPainter()
    for k, drawing in enumerate(drawings):
        writer.setPageLayout(_layout(drawing))  # holds for the page that is begun next
        if k:
            writer.newPage()
        else:
            painter.begin(writer)
        _draw(painter, drawing)
    painter.end()
    buffer.close()
    return bytes(held.data())


def _layout(drawing: Drawing) -> QtGui.QPageLayout:
    wide, high = drawing.wide, drawing.high
    lying = wide > high
    size = QtGui.QPageSize(
        QtCore.QSizeF(min(wide, high), max(wide, high)),
        QtGui.QPageSize.Millimeter, "", QtGui.QPageSize.ExactMatch,
    )  # fmt: skip
    turn = QtGui.QPageLayout.Landscape if lying else QtGui.QPageLayout.Portrait
    layout = QtGui.QPageLayout(size, turn, QtCore.QMarginsF(0, 0, 0, 0))
    layout.setMode(QtGui.QPageLayout.FullPageMode)
    return layout


def _draw(painter: QtGui.QPainter, drawing: Drawing) -> None:
    draw(painter, drawing, DPI / 25.4)


def draw(painter: QtGui.QPainter, drawing: Drawing, per_mm: float) -> None:
    """A drawing at so many of the painter's units a mm, y down from the top of the paper."""
    painter.save()
    painter.scale(per_mm, per_mm)
    for mark in drawing.marks:
        _mark(painter, mark, drawing.high)
    painter.restore()


def _mark(painter: QtGui.QPainter, mark: Mark, high: float) -> None:
    if isinstance(mark, Stroke):
        _stroke(painter, mark, high)
    elif isinstance(mark, Letters):
        _letters(painter, mark, high)
    else:
        _image(painter, mark, high)


def path_of(mark: Stroke, high: float) -> QtGui.QPainterPath:
    """The path of a stroke, y down from `high`."""
    path = QtGui.QPainterPath(_at(mark.edge[0].start, high))
    for segment in mark.edge:
        if isinstance(segment, Line):
            path.lineTo(_at(segment.end, high))
        elif isinstance(segment, Curve):
            path.cubicTo(*(_at(p, high) for p in (segment.c, segment.d, segment.b)))
        else:
            for points in _cubics(segment):
                path.cubicTo(*(_at(p, high) for p in points))
    if math.dist(mark.edge[0].start, mark.edge[-1].end) < 1e-6:
        path.closeSubpath()
    return path


def _cubics(segment: Arc | EllipseArc) -> Iterator[list[tuple[float, float]]]:
    """The two handles and the end of each cubic curve that stands for a part of an arc. Qt's own
    are good to some 3e-4 of the radius only, which at 1:1 would be tenths of a mm."""
    if isinstance(segment, Arc):
        r = segment.radius
        segment = EllipseArc(segment.centre, r, r, 0.0, segment.begin, segment.sweep)
    count = math.ceil(abs(segment.sweep) / WIDEST)
    places, slopes = segment.path(np.linspace(0.0, 1.0, count + 1))
    sweep = math.radians(segment.sweep)
    handles = slopes / sweep * (4.0 / 3.0 * math.tan(sweep / count / 4.0))
    for k in range(count):
        points = (places[k] + handles[k], places[k + 1] - handles[k + 1], places[k + 1])
        yield [(float(x), float(y)) for x, y in points]


def _at(p: tuple[float, float], high: float) -> QtCore.QPointF:
    return QtCore.QPointF(p[0], high - p[1])


def _stroke(painter: QtGui.QPainter, mark: Stroke, high: float) -> None:
    path = path_of(mark, high)
    if mark.fill:
        painter.fillPath(path, QtGui.QColor(mark.fill))
    if mark.weight:
        pen = QtGui.QPen(QtGui.QColor(mark.colour), mark.weight)
        pen.setCapStyle(QtCore.Qt.FlatCap)
        pen.setJoinStyle(QtCore.Qt.RoundJoin if len(mark.edge) > 1 else QtCore.Qt.MiterJoin)
        if mark.dashes:
            pen.setDashPattern([d / mark.weight for d in mark.dashes])
        painter.strokePath(path, pen)


def _letters(painter: QtGui.QPainter, mark: Letters, high: float) -> None:
    """Letters of the wanted height, squeezed where the font is wider than the drawing reckons."""
    text = clean(mark.text)
    font, capital, advance = _font(text)
    scale = mark.height / capital
    room = max(width(text, mark.height), _LEAST * advance * scale)
    wide = min(advance * scale, room) if text.strip() else 0.0
    painter.save()
    painter.translate(_at(mark.at, high))
    painter.rotate(-mark.turn)
    painter.translate({"start": 0.0, "middle": -wide / 2.0, "end": -wide}[mark.anchor], 0.0)
    painter.scale(wide / advance if advance else scale, scale)
    painter.setFont(font)
    painter.setPen(QtGui.QColor(mark.colour))
    painter.drawText(QtCore.QPointF(0.0, 0.0), text)
    painter.restore()


_LEAST = 0.75
"""How much letters are squeezed at most; then they get wider than the drawing reckons."""
_LARGE = 100
"""Pixels of the font that letters are drawn in before they are scaled: whole ones are too coarse
for letters of 2.5 mm."""


_family = ["sans-serif"]


def use_font(path: str) -> None:
    """Draws letters from now on in the font of that file (the host's drawing font, for which the
    widths are reckoned); where it cannot be read, in what was used before."""
    application()
    if not can_write_text():
        return
    families = QtGui.QFontDatabase.applicationFontFamilies(
        QtGui.QFontDatabase.addApplicationFont(path)
    )
    if families and families[0] != _family[-1]:
        _family.append(families[0])


def _font(text: str) -> tuple[QtGui.QFont, float, float]:
    """The font, the height of its capitals, and how wide `text` is in it."""
    font = QtGui.QFont(_family[-1])
    font.setPixelSize(_LARGE)
    font.setLetterSpacing(QtGui.QFont.AbsoluteSpacing, 0.05)  # no ligatures: they are not found
    metrics = QtGui.QFontMetricsF(font)
    return font, metrics.tightBoundingRect("H").height(), metrics.horizontalAdvance(text)


def _image(painter: QtGui.QPainter, mark: Image, high: float) -> None:
    image = QtGui.QImage.fromData(mark.data)
    box = mark.box
    painter.setRenderHint(QtGui.QPainter.SmoothPixmapTransform)
    painter.drawImage(QtCore.QRectF(box.x, high - box.top, box.wide, box.high), image)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""How what is pointed at looks on a picture: every kind differs by its lines and by a word, not by
its colour alone, and is seen on light and dark wood alike."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Any

from PySide import QtCore, QtGui

from veneerwb.gui.photos.frame import Frame, Picture, Place
from veneerwb.gui.photos.items import Grip, Item
from veneerwb.host.settings import COLOURS, colour

Colour = tuple[int, int, int]

CASING, INK = (255, 255, 255), (30, 30, 30)
HATCH = 14
"""Widget pixels from line to line."""
ARM = 11
"""Widget pixels from the middle of a mark's cross to its end."""
HANDLE = 4
"""Half a corner's handle."""
PLAIN = 4.0
"""Widget pixels of one of the picture from which on nothing needs a magnifier."""
FINEST = 40
"""Widget pixels that lines of the grid are apart at least."""


@dataclass(frozen=True)
class Look:
    """`lines` are the directions of the hatching in degrees; `dots` instead of lines; `dashed` is
    the outline."""

    colour: Colour
    lines: tuple[int, ...] = ()
    dots: bool = False
    dashed: bool = False


LOOKS = {
    "mark": Look((0, 60, 160)),
    "usable": Look(COLOURS["UsableColour"]),
    "frame": Look((0, 90, 200)),
    "light": Look((90, 90, 90), dots=True, dashed=True),
    "margin": Look(COLOURS["MarginColour"], lines=(45,)),
    "split": Look(COLOURS["SplitColour"], lines=(90,)),
    "knot": Look(COLOURS["KnotColour"], lines=(45, 135)),
    "patch": Look(COLOURS["PatchColour"], lines=(0, 90)),
    "stain": Look(COLOURS["StainColour"], dots=True),
    "suggested": Look((30, 30, 30), dashed=True),
}
OTHER = Look((60, 60, 60), lines=(0,))
"""What a kind that is not known looks like."""


OWN = {
    kind: f"{kind.capitalize()}Colour"
    for kind in ("usable", "margin", "split", "knot", "patch", "stain")
}
"""The kinds whose colour the user may set, and the name of the setting."""


def look_of(item: Item) -> Look:
    look = LOOKS.get(item.kind, OTHER)
    return replace(look, colour=colour(OWN[item.kind])) if item.kind in OWN else look


# --- areas --------------------------------------------------------------------------------------


def draw_area(
    painter: QtGui.QPainter, frame: Frame, area: Item, grip: Grip | None, closed: bool = True
) -> None:
    """An area with its hatching, its outline, its word, and handles if it is chosen."""
    look, chosen = look_of(area), grip is not None and grip.item is area
    points = QtGui.QPolygonF([QtCore.QPointF(*frame.to_widget(one)) for one in area.corners])
    path = QtGui.QPainterPath()
    path.addPolygon(points)
    if closed:
        path.closeSubpath()
        hatch(painter, path, look)
    cased(painter, path, look, 3.0 if chosen else 2.0)
    shown = range(len(points)) if (chosen and not area.held) or not closed else ()
    for number in area.grips if area.follow and not area.held else shown:
        _handle(painter, points[number], look, chosen and grip.corner == number)
    if area.text and closed:
        write(painter, _beside(painter, points.boundingRect(), area.text, look), area.text, look)


def draw_next(painter: QtGui.QPainter, frame: Frame, area: Item, place: Place) -> None:
    """The edge that a click at a place would add to an area that is being drawn."""
    path = QtGui.QPainterPath()
    path.moveTo(*frame.to_widget(area.corners[-1]))
    path.lineTo(*frame.to_widget(place))
    cased(painter, path, replace(look_of(area), dashed=True), 1.2)


def _beside(
    painter: QtGui.QPainter, box: QtCore.QRectF, text: str, look: Look
) -> QtCore.QPointF:
    """Where the middle of an area's label is: on it if it is large, at the upper edge if it is
    only outlined, else beside it."""
    label = painter.fontMetrics().boundingRect(text)
    width, height = label.width() + 10, label.height() + 4
    if not (look.lines or look.dots or look.dashed):
        return QtCore.QPointF(box.center().x(), max(box.top(), 0.0) + height)
    if width < 0.7 * box.width() and height < 0.5 * box.height():
        return box.center()
    right, left = box.right() + 6 + width / 2, box.left() - 6 - width / 2
    seen = painter.viewport().width()
    near_left = box.center().x() < seen / 2  # to the nearer side, away from what lies in the middle
    aside = left if near_left and left >= width / 2 or right + width / 2 > seen else right
    return QtCore.QPointF(aside, box.center().y())


def hatch(painter: QtGui.QPainter, path: QtGui.QPainterPath, look: Look) -> None:
    """The lines or dots of a look over an area; nothing for one that is only outlined."""
    if not (look.lines or look.dots):
        return
    painter.save()
    painter.setClipPath(path, QtCore.Qt.IntersectClip)
    seen = path.boundingRect().intersected(QtCore.QRectF(painter.viewport()))
    painter.fillRect(seen, QtGui.QColor(*look.colour, 30))
    for degrees in look.lines:
        for line in _lines(seen, degrees):
            stroke(painter, line, CASING, 2.5, 90)
            stroke(painter, line, look.colour, 1.2)
    if look.dots:
        painter.setPen(QtCore.Qt.NoPen)
        painter.setBrush(QtGui.QColor(*look.colour))
        for across in range(math.floor(seen.left() / HATCH), math.ceil(seen.right() / HATCH) + 1):
            for down in range(math.floor(seen.top() / HATCH), math.ceil(seen.bottom() / HATCH) + 1):
                at = QtCore.QPointF((across + 0.5 * (down % 2)) * HATCH, down * HATCH)
                painter.drawEllipse(at, 1.7, 1.7)
    painter.restore()


def _lines(seen: QtCore.QRectF, degrees: int) -> list[QtCore.QLineF]:
    """Parallel lines over a rectangle, where they would be over the whole widget."""
    across, down = math.cos(math.radians(degrees)), -math.sin(math.radians(degrees))
    reach = math.hypot(seen.width(), seen.height())
    middle = seen.center()
    aside = middle.x() * -down + middle.y() * across
    along = middle.x() * across + middle.y() * down
    made = []
    for number in range(
        math.floor((aside - reach / 2) / HATCH), math.ceil((aside + reach / 2) / HATCH) + 1
    ):
        x, y = -down * number * HATCH, across * number * HATCH
        ends = [
            QtCore.QPointF(x + across * t, y + down * t) for t in (along - reach, along + reach)
        ]
        made.append(QtCore.QLineF(*ends))
    return made


def stroke(
    painter: QtGui.QPainter, drawn: Any, colour: Colour, width: float, solid: int = 255,
    dashed: bool = False,
) -> None:  # fmt: skip
    """A line or a path; `solid` is how much of what lies below it hides, to 255."""
    pen = QtGui.QPen(QtGui.QColor(*colour, solid), width)
    pen.setJoinStyle(QtCore.Qt.RoundJoin)
    pen.setCapStyle(QtCore.Qt.FlatCap)
    if dashed:
        pen.setDashPattern([4.0, 3.0])
    painter.setPen(pen)
    if isinstance(drawn, QtCore.QLineF):
        painter.drawLine(drawn)
    else:
        painter.setBrush(QtCore.Qt.NoBrush)
        painter.drawPath(drawn)


def cased(
    painter: QtGui.QPainter, path: QtGui.QPainterPath, look: Look, width: float
) -> None:
    """A path in the colour of a look on a pale one, seen on light and dark wood alike."""
    stroke(painter, path, CASING, width + 2.0, 210)
    stroke(painter, path, look.colour, width, dashed=look.dashed)


def _handle(
    painter: QtGui.QPainter, point: QtCore.QPointF, look: Look, filled: bool
) -> None:
    square = QtCore.QRectF(point.x() - HANDLE, point.y() - HANDLE, 2 * HANDLE, 2 * HANDLE)
    painter.setPen(QtGui.QPen(QtGui.QColor(*look.colour), 1.5))
    painter.setBrush(QtGui.QColor(*(look.colour if filled else CASING)))
    painter.drawRect(square)


# --- marks and words ----------------------------------------------------------------------------


def draw_mark(painter: QtGui.QPainter, frame: Frame, item: Item, chosen: bool) -> None:
    """A small cross, open in the middle so that the pixel meant is seen, and its letter."""
    x, y = frame.to_widget(item.place)
    look = look_of(item)
    path = QtGui.QPainterPath()
    for across, down in ((1, 0), (-1, 0), (0, 1), (0, -1)):
        path.moveTo(x + 3 * across, y + 3 * down)
        path.lineTo(x + ARM * across, y + ARM * down)
    if chosen:
        path.addEllipse(QtCore.QPointF(x, y), ARM + 3.0, ARM + 3.0)
    stroke(painter, path, CASING, 4.6)
    stroke(painter, path, look.colour, 2.0)
    if item.text:
        write(painter, QtCore.QPointF(x + 18, y - 16), item.text, look)


def write(painter: QtGui.QPainter, middle: QtCore.QPointF, text: str, look: Look) -> None:
    """A word on a small label round a point of the widget."""
    box = QtCore.QRectF(painter.fontMetrics().boundingRect(text)).adjusted(-5, -2, 5, 2)
    box.moveCenter(middle)
    painter.setPen(QtGui.QPen(QtGui.QColor(*look.colour), 1.2))
    painter.setBrush(QtGui.QColor(255, 255, 255, 225))
    painter.drawRoundedRect(box, 3.0, 3.0)
    painter.setPen(QtGui.QColor(*INK))
    painter.drawText(box, QtCore.Qt.AlignCenter, text)


# --- the grid -----------------------------------------------------------------------------------


def grid_step(zoom: float, mm_per_px: float) -> float:
    """mm from line to line: 1, 2 or 5 and noughts, at least FINEST on the widget."""
    least = FINEST / zoom * mm_per_px
    ten = 10.0 ** math.floor(math.log10(least))
    return next(step * ten for step in (1.0, 2.0, 5.0, 10.0) if step * ten >= least * (1 - 1e-9))


def draw_grid(
    painter: QtGui.QPainter, frame: Frame, picture: Picture, width: float, height: float
) -> None:
    """Lines of whole mm from the picture's lower left; nothing where its scale is not known."""
    if picture.mm_per_px is None:
        return
    step = grid_step(frame.zoom, picture.mm_per_px)
    most = [side * picture.mm_per_px for side in picture.size]
    left, upper = (
        max(0.0, at) for at in picture.mm(frame.to_picture((0.0, height)))
    )  # what the widget's lower left shows is the least of both
    right, top = picture.mm(frame.to_picture((width, 0.0)))
    for k in range(math.ceil(left / step), math.floor(min(right, most[0]) / step) + 1):
        x = frame.to_widget(picture.place((k * step, 0.0)))[0]
        ends = [frame.to_widget(picture.place((k * step, y)))[1] for y in (0.0, most[1])]
        _grid_line(painter, QtCore.QLineF(x, ends[0], x, ends[1]))
    for k in range(math.ceil(upper / step), math.floor(min(top, most[1]) / step) + 1):
        y = frame.to_widget(picture.place((0.0, k * step)))[1]
        ends = [frame.to_widget(picture.place((x, k * step)))[0] for x in (0.0, most[0])]
        _grid_line(painter, QtCore.QLineF(ends[0], y, ends[1], y))


def _grid_line(painter: QtGui.QPainter, line: QtCore.QLineF) -> None:
    stroke(painter, line, CASING, 2.0, 70)
    stroke(painter, line, INK, 0.8, 130)


# --- the magnifier ------------------------------------------------------------------------------


def draw_magnifier(
    painter: QtGui.QPainter, picture: Picture, frame: Frame, place: Place, widget: Place
) -> None:
    """The picture round a place, larger, beside it."""
    side, gap = 150.0, 26.0
    x, y = frame.to_widget(place)
    left = x + gap if x + gap + side < widget[0] else x - gap - side
    top = y - gap - side if y - gap - side > 0 else y + gap
    zoom = min(max(4.0 * frame.zoom, 2.0), 16.0)
    inner = Frame(zoom, place[0] - side / 2 / zoom, place[1] - side / 2 / zoom)
    painter.save()
    painter.translate(left, top)
    box = QtCore.QRectF(0.0, 0.0, side, side)
    painter.setClipRect(box)
    painter.fillRect(box, QtGui.QColor(70, 70, 70))
    picture.draw(painter, inner, side, side)
    path = QtGui.QPainterPath()
    for across, down in ((1, 0), (-1, 0), (0, 1), (0, -1)):
        path.moveTo(side / 2 + 4 * across, side / 2 + 4 * down)
        path.lineTo(side / 2 + side / 2 * across, side / 2 + side / 2 * down)
    cased(painter, path, LOOKS["mark"], 1.0)
    painter.setBrush(QtCore.Qt.NoBrush)
    painter.setPen(QtGui.QPen(QtGui.QColor(*INK), 2))
    painter.drawRect(box)
    painter.restore()

# SPDX-License-Identifier: LGPL-2.1-or-later
"""How the wedge looks on a leaf: its outline, its axis, its handles, and in red what forbids it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import FreeCAD
import numpy as np
from PySide import QtCore, QtGui

from veneerwb.core.leaf import ranges
from veneerwb.core.outlines.edge import Edge
from veneerwb.gui.photos import looks
from veneerwb.gui.photos.frame import Place
from veneerwb.gui.spot.fit import Misfit
from veneerwb.host.settings import colour
from veneerwb.words import word

translate = FreeCAD.Qt.translate
HERE = "VeneerSpot"

HANDLE = 6.0
"""Half a handle's width in pixels of the widget."""
MOST_WORDS = 4
"""Labels at once; more would hide the leaf."""
ASIDE = 12.0
"""Pixels between the wedge and a label."""
COARSE = 0.1
"""mm: how far a drawn arc may lie off."""


def good() -> looks.Look:
    """How a wedge looks that can be cut."""
    return looks.Look(colour("WedgeColour"))


def bad() -> looks.Look:
    """And one that cannot, with what forbids it."""
    return looks.Look(colour("MisfitColour"), lines=(45,))


def outline(edge: Edge, axis: float) -> tuple[np.ndarray, int]:
    """A wedge's outline, N x 2 in top mm, from its tip on, and the number of the corner in the
    middle of its rim, which lies in direction `axis` (degrees)."""
    points: list[Place] = []
    middle = 0
    for segment in edge:
        share = segment.hit(axis) if segment.role == "rim" and not middle else None
        if share is None or not 0.0 < share < 1.0:
            if share == 0.0:
                middle = len(points)
            points += segment.points(COARSE)
            continue
        points += segment.part(0.0, share).points(COARSE)
        middle = len(points)
        points += segment.part(share, 1.0).points(COARSE)
    return np.array(points), middle


def draw(
    painter: QtGui.QPainter, corners: Sequence[Place], grips: Sequence[int],
    misfits: Sequence[Misfit], onto_widget: QtGui.QTransform,
) -> None:  # fmt: skip
    """The wedge with these corners (pixels of the widget): `grips` are its tip, a corner of its
    rim, the rim's middle and the other corner."""
    red = bad()
    look = red if misfits else good()
    points = QtGui.QPolygonF([QtCore.QPointF(*corner) for corner in corners])
    path = QtGui.QPainterPath()
    path.addPolygon(points)
    path.closeSubpath()
    areas = [onto_widget.map(_path(misfit.area)) for misfit in misfits]
    for area in areas:
        looks.hatch(painter, area, red)
    looks.cased(painter, path, look, 2.0)
    tip, first, middle, last = (points[number] for number in grips)
    axis = QtCore.QLineF(tip, middle)
    looks.stroke(painter, axis, looks.CASING, 2.5, 150)
    looks.stroke(painter, axis, look.colour, 1.2, dashed=True)
    for area in areas:
        looks.cased(painter, area, looks.Look(red.colour), 1.5)
    _handles(painter, look, tip, middle, (first, last))
    _words(painter, misfits, areas, path.boundingRect())


def _handles(
    painter: QtGui.QPainter, look: looks.Look, tip: Any, middle: Any, ends: Sequence[Any]
) -> None:
    """Tip and corners are round, the size's handle is square; the tip shows the point meant."""
    painter.setPen(QtGui.QPen(QtGui.QColor(*look.colour), 2.0))
    painter.setBrush(QtGui.QColor(*looks.CASING))
    for end in ends:
        painter.drawEllipse(end, HANDLE, HANDLE)
    painter.drawRect(
        QtCore.QRectF(middle.x() - HANDLE, middle.y() - HANDLE, 2 * HANDLE, 2 * HANDLE)
    )
    painter.setBrush(QtCore.Qt.NoBrush)
    painter.setPen(QtGui.QPen(QtGui.QColor(*looks.CASING), 5.0))
    painter.drawEllipse(tip, HANDLE + 2.0, HANDLE + 2.0)
    painter.setPen(QtGui.QPen(QtGui.QColor(*look.colour), 2.0))
    painter.drawEllipse(tip, HANDLE + 2.0, HANDLE + 2.0)


def _path(area: Any) -> QtGui.QPainterPath:
    """A shapely area as a path."""
    path = QtGui.QPainterPath()
    for part in getattr(area, "geoms", [area]):
        if part.geom_type != "Polygon":
            continue
        for ring in (part.exterior, *part.interiors):
            path.addPolygon(QtGui.QPolygonF([QtCore.QPointF(x, y) for x, y in ring.coords]))
    return path


def said(misfit: Misfit) -> str:
    """What forbids, and on which leaves: "knot on leaves 3-5"."""
    one = len(misfit.leaves) == 1
    if misfit.fault:
        text = translate(HERE, "{fault} on leaf {leaves}") if one else translate(
            HERE, "{fault} on leaves {leaves}")
    else:
        text = translate(HERE, "off leaf {leaves}") if one else translate(
            HERE, "off leaves {leaves}")
    return text.format(fault=word(misfit.fault), leaves=ranges(misfit.leaves))


def _words(
    painter: QtGui.QPainter, misfits: Sequence[Misfit], areas: Sequence[QtGui.QPainterPath],
    wedge: QtCore.QRectF,
) -> None:  # fmt: skip
    """A label beside the wedge for each place that forbids, at its height, one below the other
    where they would meet."""
    taken: list[QtCore.QRectF] = []
    look = bad()
    sheet = QtCore.QRectF(painter.viewport()).adjusted(4, 4, -4, -4)
    for misfit, area in list(zip(misfits, areas))[:MOST_WORDS]:
        text = said(misfit)
        box = QtCore.QRectF(painter.fontMetrics().boundingRect(text)).adjusted(-6, -3, 6, 3)
        box.moveCenter(area.boundingRect().center())
        aside = wedge.right() + ASIDE
        fits = aside + box.width() <= sheet.right()
        box.moveLeft(aside if fits else wedge.left() - ASIDE - box.width())
        box.moveLeft(min(max(box.left(), sheet.left()), sheet.right() - box.width()))
        box.moveTop(min(max(box.top(), sheet.top()), sheet.bottom() - box.height()))
        while any(box.intersects(other) for other in taken):
            box.translate(0.0, box.height() + 1.0)
        taken.append(box)
        looks.write(painter, box.center(), text, look)

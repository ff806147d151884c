# SPDX-License-Identifier: LGPL-2.1-or-later
"""The top painted as fast as a hand moves the wedge: from copies of the photographs scaled to the
screen, with what does not change from one placement to the next kept."""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import Any

import numpy as np

from veneerwb.core.layout import Layout, Piece
from veneerwb.core.leaf import Side
from veneerwb.core.outlines.edge import Edge, points
from veneerwb.paint import texture as textures
from veneerwb.paint.picture import qt_polygon, qt_transform
from veneerwb.paint.qt import QtCore, QtGui
from veneerwb.paint.texture import texture

MOST_PATHS = 512
SHARE = 0.75
"""Of the memory for textures, what one top may take: the others are for smaller pictures of it."""


class LivePicture:
    """Paints layouts into one image, centred on the top's origin, `px_per_mm` to the millimetre.

    `paint` may be called for every move: outlines on the top are kept from call to call, and of a
    photograph only the copy that suits the scale is read.
    """

    def __init__(self, width: int, height: int, px_per_mm: float) -> None:
        self.image = QtGui.QImage(width, height, QtGui.QImage.Format_RGB32)
        self._scale = px_per_mm
        self._to_canvas = QtGui.QTransform(
            px_per_mm, 0.0, 0.0, -px_per_mm, width / 2.0, height / 2.0
        )
        self._paths: dict[tuple[Edge, ...], tuple[QtGui.QPainterPath, np.ndarray]] = {}

    def paint(self, layout: Layout, ground: Any = QtCore.Qt.white) -> QtGui.QImage:
        """The image with the top on it, on plain ground. The layout's bundle has photographs."""
        self.image.fill(ground)
        painter = QtGui.QPainter(self.image)
        try:
            painter.setRenderHint(QtGui.QPainter.SmoothPixmapTransform)
            sides = [layout.bundle.leaf(p.leaf).side(p.turned) for p in layout.pieces]
            least = _least_factor(sides)
            for piece, side in zip(layout.pieces, sides):
                self._piece(painter, piece, side, least)
        finally:
            painter.end()
        return self.image

    def _piece(self, painter: QtGui.QPainter, piece: Piece, side: Side, least: int) -> None:
        path, corners = self._outline(piece)
        factor = max(least, int(1.0 / (self._scale * side.mm_per_px)))
        texel, height = side.mm_per_px * factor, side.image.size[1]
        onto_photo = side.view @ piece.onto_bundle
        at = onto_photo.apply(corners)
        low, high = at.min(axis=0), at.max(axis=0)
        window, left, top = texture(side.image, factor).covering(
            math.floor(low[0] / texel), math.floor((height - high[1]) / texel),
            math.ceil(high[0] / texel), math.ceil((height - low[1]) / texel),
        )
        to_mm = QtGui.QTransform(texel, 0.0, 0.0, -texel, left * texel, height - top * texel)
        painter.setClipPath(path)
        painter.setTransform(to_mm * qt_transform(onto_photo.inverse()) * self._to_canvas)
        painter.drawImage(0, 0, window.image)
        painter.resetTransform()

    def _outline(self, piece: Piece) -> tuple[QtGui.QPainterPath, np.ndarray]:
        """A piece's outline on the image, and its corners in top mm."""
        key = (piece.edge, *piece.holes)
        found = self._paths.get(key)
        if found is None:
            loops = [points(loop) for loop in key]  # quicker than by way of piece.outline
            path = QtGui.QPainterPath()
            for loop in loops:
                path.addPolygon(qt_polygon(loop, self._to_canvas))
            if len(self._paths) >= MOST_PATHS:
                self._paths.clear()
            found = self._paths[key] = path, np.asarray(loops[0])
        return found


def _least_factor(sides: Iterable[Side]) -> int:
    """By how much photographs are shrunk at least, so that those of one top can all be kept: else
    every painting would make each of them anew."""
    photos = {id(side.image): side.image.shape for side in sides}
    pixels = sum(rows * columns for rows, columns in photos.values())
    return max(1, math.ceil(math.sqrt(4 * pixels / (SHARE * textures.MOST_BYTES))))

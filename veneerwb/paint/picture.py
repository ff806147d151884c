# SPDX-License-Identifier: LGPL-2.1-or-later
"""The picture of a layout: every piece filled with the photo of the side that it shows."""

from __future__ import annotations

import math
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout, Piece
from veneerwb.core.leaf import Bundle, Side
from veneerwb.core.outlines.inside import number_places
from veneerwb.core.plane import Motion, positive
from veneerwb.core.progress import Progress, unheard
from veneerwb.paint.qt import QtCore, QtGui, application, can_write_text, to_pixels
from veneerwb.paint.texture import texture

MOST_PIXELS = 200_000_000
SEAM_SHARE = 0.0015
"""Width of a drawn seam as a share of the picture's shorter side, at least one pixel."""
TEXT_SHARE = 0.028
"""Height of a drawn number, likewise."""
BORDER = 2.0
"""Pixels: of the line round each piece that colours what its border grazes, which reaches no more
than 0.71 of a pixel from it."""


def picture(
    layout: Layout, px_per_mm: float, seams: bool = False, numbers: bool = False,
    progress: Progress = unheard,
) -> np.ndarray:
    """The finished top as uint8, rows x columns x RGBA, straight alpha, clear outside the top.

    The picture is centred on the top's origin; the pixel (row r, column c) of a picture with R
    rows and C columns lies at x = (c + 0.5 - C/2) / px_per_mm, y = (R/2 - r - 0.5) / px_per_mm.
    The photos' own colours, bilinear; a photo finer than the picture is first averaged by a whole
    factor. Off a leaf its edge pixel is repeated. `seams` draws the joints, `numbers` the
    positions (underlined: turned). `progress` is told before each piece.

    Raises VeneerError for a layout without photographs, and for a picture over MOST_PIXELS.
    """
    if not isinstance(layout.bundle, Bundle):
        raise VeneerError(
            "no-pictures", "A stock of plain sizes has no photographs; lay the top from a bundle."
        )
    scale = positive("scale of the picture", px_per_mm, 1000.0)
    canvas = _canvas(layout, scale)
    painter = QtGui.QPainter(canvas)
    try:
        painter.setRenderHint(QtGui.QPainter.SmoothPixmapTransform)
        to_canvas = _to_canvas(canvas, scale)
        for done, piece in enumerate(layout.pieces):
            progress(done / len(layout.pieces))
            _paint(
                painter, piece, layout.bundle.leaf(piece.leaf).side(piece.turned), to_canvas, scale
            )
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        if seams:
            _draw_seams(painter, layout, to_canvas)
        if numbers:
            _draw_numbers(painter, layout, to_canvas)
        _clear_outside(painter, layout, to_canvas)
    finally:
        painter.end()
    return to_pixels(canvas)


def _canvas(layout: Layout, scale: float) -> QtGui.QImage:
    x0, y0, x1, y1 = layout.top.polygon_mm.bounds
    # A polygon inscribed in a true curve ends a hair inside it; a hundredth of a pixel is no pixel.
    half_width, half_height = (
        max(1, math.ceil(max(-low, high) * scale - 0.01)) for low, high in ((x0, x1), (y0, y1))
    )
    if 4 * half_width * half_height > MOST_PIXELS:
        raise VeneerError(
            "picture-too-large",
            "The picture would have {megapixels} megapixels; take fewer pixels per mm (at most "
            "{most} "
            "megapixels).",
            megapixels=4e-6 * half_width * half_height,
            most=MOST_PIXELS / 1e6,
        )
    canvas = QtGui.QImage(2 * half_width, 2 * half_height, QtGui.QImage.Format_ARGB32_Premultiplied)
    canvas.fill(0)
    return canvas


def _to_canvas(canvas: QtGui.QImage, scale: float) -> QtGui.QTransform:
    """Top mm to canvas pixels (down)."""
    return QtGui.QTransform(scale, 0.0, 0.0, -scale, canvas.width() / 2.0, canvas.height() / 2.0)


def _paint(
    painter: QtGui.QPainter, piece: Piece, side: Side, to_canvas: QtGui.QTransform, scale: float
) -> None:
    factor = max(1, int(1.0 / (scale * side.mm_per_px)))
    texel = side.mm_per_px * factor
    height = side.image.size[1]
    onto_photo = side.view @ piece.onto_bundle
    corners = onto_photo.apply(np.asarray(piece.outline.exterior.coords))
    columns, rows = corners[:, 0] / texel, (height - corners[:, 1]) / texel
    window, left, top = texture(side.image, factor).covering(
        math.floor(columns.min()),
        math.floor(rows.min()),
        math.ceil(columns.max()),
        math.ceil(rows.max()),
    )
    to_mm = QtGui.QTransform(texel, 0.0, 0.0, -texel, left * texel, height - top * texel)
    place = to_mm * qt_transform(onto_photo.inverse()) * to_canvas
    outline = qt_path(piece.outline, to_canvas)
    # An image drawn under a clip is filled more than twice as fast as the same shape with a
    # textured brush.
    painter.setClipPath(outline)
    painter.setTransform(place)
    painter.drawImage(0, 0, window.image)
    painter.resetTransform()
    painter.setClipping(False)
    _paint_border(painter, outline, window.image, place)


def _paint_border(
    painter: QtGui.QPainter,
    outline: QtGui.QPainterPath,
    image: QtGui.QImage,
    place: QtGui.QTransform,
) -> None:
    """A pixel that the border only grazes has its centre outside: give it colour too, it is cleared
    in part. Under what is painted, so that no piece reaches into its neighbour."""
    brush = QtGui.QBrush(image)
    brush.setTransform(place)
    painter.setCompositionMode(QtGui.QPainter.CompositionMode_DestinationOver)
    painter.strokePath(outline, QtGui.QPen(brush, BORDER))
    painter.setCompositionMode(QtGui.QPainter.CompositionMode_SourceOver)


def qt_transform(motion: Motion) -> QtGui.QTransform:
    a, b, d, e = motion.matrix
    return QtGui.QTransform(a, d, b, e, motion.dx, motion.dy)


def qt_polygon(points: Any, to_canvas: QtGui.QTransform) -> QtGui.QPolygonF:
    return to_canvas.map(QtGui.QPolygonF([QtCore.QPointF(x, y) for x, y in points]))


def qt_path(outline: Any, to_canvas: QtGui.QTransform) -> QtGui.QPainterPath:
    """A shapely polygon on the canvas, its openings left out."""
    path = QtGui.QPainterPath()
    for ring in (outline.exterior, *outline.interiors):
        path.addPolygon(qt_polygon(ring.coords, to_canvas))
    return path


def _clear_outside(painter: QtGui.QPainter, layout: Layout, to_canvas: QtGui.QTransform) -> None:
    path = QtGui.QPainterPath()
    path.addRect(QtCore.QRectF(painter.viewport()))
    path.addPath(qt_path(layout.top.polygon_mm, to_canvas))
    painter.setCompositionMode(QtGui.QPainter.CompositionMode_Clear)
    painter.fillPath(path, QtGui.QColor(0, 0, 0))


def _shorter(painter: QtGui.QPainter) -> int:
    return min(painter.viewport().width(), painter.viewport().height())


def _draw_seams(painter: QtGui.QPainter, layout: Layout, to_canvas: QtGui.QTransform) -> None:
    width = max(1.0, SEAM_SHARE * _shorter(painter))
    painter.setPen(QtGui.QPen(QtGui.QColor(20, 20, 20), width))
    for seam in layout.seams:
        painter.drawPolyline(qt_polygon(seam.line.coords, to_canvas))


def _draw_numbers(painter: QtGui.QPainter, layout: Layout, to_canvas: QtGui.QTransform) -> None:
    application()
    if not can_write_text():
        raise VeneerError(
            "no-fonts", "Numbers cannot be drawn in this session; ask for the picture without them."
        )
    font = QtGui.QFont("sans-serif")
    font.setPixelSize(max(8, round(TEXT_SHARE * _shorter(painter))))
    for piece, (x, y) in zip(layout.pieces, number_places(layout)):
        font.setUnderline(piece.turned)
        path = QtGui.QPainterPath()
        path.addText(QtCore.QPointF(0.0, 0.0), font, str(piece.position))
        path.translate(to_canvas.map(QtCore.QPointF(x, y)) - path.boundingRect().center())
        painter.strokePath(path, QtGui.QPen(QtGui.QColor(255, 255, 255), 3.0))
        painter.fillPath(path, QtGui.QColor(20, 20, 20))

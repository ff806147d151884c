# SPDX-License-Identifier: LGPL-2.1-or-later
"""A drawing as a picture file. No window is needed."""

from __future__ import annotations

import io

import numpy as np
from PIL import Image

from veneerwb.core.errors import VeneerError
from veneerwb.core.shop.drawing.drawn import Drawing
from veneerwb.paint.pdf import draw
from veneerwb.paint.qt import QtGui, application, can_write_text, to_pixels

PIXELS = 1800
"""Of the longer side."""


def jpeg(drawing: Drawing, pixels: int = PIXELS) -> bytes:
    """A drawing on white as the bytes of a JPEG file. VeneerError where text cannot be drawn."""
    application()
    if not can_write_text():
        raise VeneerError(
            "no-fonts", "Text cannot be drawn in this session; write the picture from the window."
        )
    per_mm = pixels / max(drawing.wide, drawing.high)
    image = QtGui.QImage(
        round(drawing.wide * per_mm), round(drawing.high * per_mm), QtGui.QImage.Format_RGB32
    )
    image.fill(QtGui.QColor(255, 255, 255))
    painter = QtGui.QPainter(image)
    for hint in ("Antialiasing", "TextAntialiasing", "SmoothPixmapTransform"):
        painter.setRenderHint(getattr(QtGui.QPainter, hint))
    draw(painter, drawing, per_mm)
    painter.end()
    out = io.BytesIO()
    Image.fromarray(np.ascontiguousarray(to_pixels(image)[..., :3])).save(out, "JPEG", quality=90)
    return out.getvalue()

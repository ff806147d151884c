# SPDX-License-Identifier: LGPL-2.1-or-later
"""The one place that finds Qt for Python, inside the host and outside it."""

from __future__ import annotations

import os
import sys

import numpy as np

try:
    from PySide import QtCore, QtGui  # the host's own alias, the same on every version of it
except ImportError:
    try:
        from PySide6 import QtCore, QtGui
    except ImportError:
        from PySide2 import QtCore, QtGui

__all__ = ["QtCore", "QtGui", "application", "can_write_text", "from_pixels", "to_pixels"]

_kept: list[object] = []


def application() -> object:
    """The application object, without which Qt cannot paint text; made, off screen, if there is
    none."""
    running = QtCore.QCoreApplication.instance()
    if running is None:
        if not os.environ.get("DISPLAY") and sys.platform.startswith("linux"):
            os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
        running = QtGui.QGuiApplication(["veneerwb"])
        _kept.append(running)
    return running


def can_write_text() -> bool:
    """Whether the application is one that has fonts."""
    return isinstance(application(), QtGui.QGuiApplication)


def from_pixels(pixels: np.ndarray) -> QtGui.QImage:
    """An image on a C-contiguous uint8 array, rows x columns x 4 (blue, green, red, 255), which the
    caller keeps."""
    rows, columns = pixels.shape[:2]
    return QtGui.QImage(pixels.data, columns, rows, 4 * columns, QtGui.QImage.Format_RGB32)


def to_pixels(image: QtGui.QImage) -> np.ndarray:
    """uint8, rows x columns x RGBA, straight alpha: a copy of `image`."""
    out = np.empty((image.height(), image.width(), 4), dtype=np.uint8)
    straight = QtGui.QImage(
        out.data, image.width(), image.height(), out.strides[0], QtGui.QImage.Format_RGBA8888
    )
    painter = QtGui.QPainter(straight)  # converts into the array's own memory: no second copy
    painter.setCompositionMode(QtGui.QPainter.CompositionMode_Source)
    painter.drawImage(0, 0, image)
    painter.end()
    return out

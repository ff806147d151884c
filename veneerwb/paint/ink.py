# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the small charts share: their colours, letters and ticks."""

from __future__ import annotations

import math
from collections.abc import Callable

from veneerwb.paint.qt import QtCore, QtGui, application

PAPER, INK, FAINT, RULE = (255, 255, 255), (30, 30, 30), (110, 110, 110), (224, 224, 222)
MARK, SUSPECT = (200, 20, 120), (255, 214, 64)
"""What is pointed at; leaves that the proof suspects. Both can be the user's own."""
TEXT = 11
"""Pixels of the letters."""


_own: list[Callable[[str], tuple[int, int, int]]] = [
    {"PointedColour": MARK, "SuspectColour": SUSPECT}.__getitem__
]


def use(own: Callable[[str], tuple[int, int, int]]) -> None:
    """From now on the user's own colours are asked of `own`."""
    _own[0] = own


def mark() -> tuple[int, int, int]:
    """The colour of what is pointed at."""
    return _own[0]("PointedColour")


def suspect() -> tuple[int, int, int]:
    """The colour of the sign on leaves that the proof suspects."""
    return _own[0]("SuspectColour")


def lightness(rgb: tuple[int, int, int]) -> float:
    """How light a colour is to the eye, 0 to 255 (the luma of ITU-R BT.601)."""
    return 0.299 * rgb[0] + 0.587 * rgb[1] + 0.114 * rgb[2]


def colour(rgb: tuple[int, int, int]) -> QtGui.QColor:
    return QtGui.QColor(*rgb)


def image_of(size: tuple[int, int], draw: Callable[[QtGui.QPainter], None]) -> QtGui.QImage:
    """A picture of `size` pixels that `draw` paints."""
    application()
    image = QtGui.QImage(max(1, size[0]), max(1, size[1]), QtGui.QImage.Format_RGB32)
    painter = QtGui.QPainter(image)
    try:
        draw(painter)
    finally:
        painter.end()
    return image


def ratio_of(painter: QtGui.QPainter) -> float:
    """Pixels of the screen for each that is painted. Not asked of painter.device(), which ends the
    widget's name in Python."""
    return painter.deviceTransform().m11() / max(painter.transform().m11(), 1e-9)


def begin(painter: QtGui.QPainter, size: tuple[int, int]) -> None:
    """White paper, ready to write on."""
    painter.fillRect(QtCore.QRectF(0, 0, *size), colour(PAPER))
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    painter.setFont(font())
    painter.setPen(colour(INK))


def say(painter: QtGui.QPainter, size: tuple[int, int], text: str) -> None:
    """A sentence in the middle of white paper."""
    begin(painter, size)
    painter.setPen(colour(FAINT))
    painter.setFont(font(12))
    write(painter, text, (12, 0, size[0] - 24, size[1]), wrap=True)


def font(pixels: int = TEXT, bold: bool = False) -> QtGui.QFont:
    made = QtGui.QFont("sans-serif")
    made.setPixelSize(pixels)
    made.setBold(bold)
    return made


def write(
    painter: QtGui.QPainter, text: str, box: tuple[float, float, float, float], where: str = "",
    wrap: bool = False,
) -> None:
    """`text` in a box (x, y, width, height), in its middle or against a side: any of "left",
    "right", "top", "bottom"."""
    flags = QtCore.Qt.AlignVCenter if "top" not in where else QtCore.Qt.AlignTop
    if "bottom" in where:
        flags = QtCore.Qt.AlignBottom
    across = QtCore.Qt.AlignHCenter
    if "left" in where:
        across = QtCore.Qt.AlignLeft
    elif "right" in where:
        across = QtCore.Qt.AlignRight
    how = QtGui.QTextOption(flags | across)
    how.setWrapMode(QtGui.QTextOption.WordWrap if wrap else QtGui.QTextOption.NoWrap)
    painter.drawText(QtCore.QRectF(*box), text, how)


def width_of(painter: QtGui.QPainter, text: str) -> float:
    return QtGui.QFontMetricsF(painter.font()).boundingRect(text).width()


def ticks(low: float, high: float, most: int) -> list[float]:
    """Values of a ruler from `low` to `high`, 1, 2 or 5 times a power of ten apart: at most `most`
    of them, but two at least."""
    span = max(high - low, 1e-9)
    power = 10.0 ** (math.floor(math.log10(span)) + 1)
    found: list[float] = []
    for share in (1.0, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01):
        step = power * share
        first, last = math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9)
        if last - first + 1 > most and len(found) > 1:
            break
        found = [k * step for k in range(first, last + 1)]
        if len(found) > most:
            break
    return found


def thinned(count: int, room: float) -> int:
    """Every how many of `count` labels, `room` pixels apart, one is written: 1, 2, 5, 10, 20 ..."""
    every, power = 1, 1
    while every * room < 1.0 and every < count:
        for m in (2, 5, 10):
            every = m * power
            if every * room >= 1.0:
                return every
        power *= 10
    return every

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Windows that can be read under any of the host's style sheets.

Most of these colour the text of every widget, but the ground only of the host's own windows: what
is put among its views would be written on nothing.
"""

from __future__ import annotations

from typing import Any

from PySide import QtGui

READABLE = 4.5
"""The contrast that text needs at least: WCAG 2.1, success criterion 1.4.3."""


def luminance(colour: QtGui.QColor) -> float:
    """Relative luminance, 0 to 1, as WCAG 2.1 defines it."""
    parts = (colour.redF(), colour.greenF(), colour.blueF())
    red, green, blue = (p / 12.92 if p <= 0.03928 else ((p + 0.055) / 1.055) ** 2.4 for p in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: QtGui.QColor, other: QtGui.QColor) -> float:
    """The contrast ratio of two colours, 1 to 21, as WCAG 2.1 defines it."""
    dark, light = sorted((luminance(one), luminance(other)))
    return (light + 0.05) / (dark + 0.05)


def ground(text: QtGui.QColor, wanted: QtGui.QColor) -> QtGui.QColor:
    """`wanted`, or where `text` is hard to read on that, the nearer to it of what is lighter or
    darker and can be read on."""
    if contrast(text, wanted) >= READABLE:
        return wanted
    towards = QtGui.QColor(0, 0, 0) if luminance(text) > 0.18 else QtGui.QColor(255, 255, 255)
    for share in range(1, 11):
        mixed = _mixed(wanted, towards, share / 10.0)
        if contrast(text, mixed) >= READABLE:
            return mixed
    return towards


def _mixed(one: QtGui.QColor, other: QtGui.QColor, share: float) -> QtGui.QColor:
    pairs = zip(one.getRgb()[:3], other.getRgb()[:3])
    return QtGui.QColor(*(round(a + share * (b - a)) for a, b in pairs))


def fill(form: Any, window: Any) -> None:
    """Gives a form a ground of its own, that of the host's window if it can be read on."""
    palette, role = form.palette(), QtGui.QPalette
    label = form.findChild(QtGui.QLabel) or form
    label.ensurePolished()
    text, wanted = label.palette().color(role.WindowText), window.palette().color(role.Window)
    palette.setColor(role.Window, ground(text, wanted))
    form.setAutoFillBackground(True)
    form.setPalette(palette)


def badge(rgb: tuple[int, int, int]) -> str:
    """The style of a label that stands out on any ground: letters on a ground of that colour."""
    on, black, white = QtGui.QColor(*rgb), QtGui.QColor(0, 0, 0), QtGui.QColor(255, 255, 255)
    text = max((black, white), key=lambda one: contrast(one, on))
    return f"background: {on.name()}; color: {text.name()}; padding: 2px; "

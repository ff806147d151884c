# SPDX-License-Identifier: LGPL-2.1-or-later
"""The host's language for all that the addon says; run at start, so nothing heavy is imported."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
from PySide import QtCore

from veneerwb import words
from veneerwb.gui import resources

SHARED = "Veneer"
"""The context of what is said below the screens."""


def begin() -> None:
    """Makes the translations known to the host and has every layer speak its language."""
    FreeCADGui.addLanguagePath(resources("translations"))
    FreeCADGui.updateLocale()  # its language was chosen before the folder was known
    words.speak(_translated, _decimal_sign, _length)


def _translated(text: str) -> str:
    return FreeCAD.Qt.translate(SHARED, text)


def _length(mm: float) -> str:
    from veneerwb.gui.panels import fields

    return fields.as_exact(mm)


def _decimal_sign() -> str:
    """As the host's boxes write numbers, whatever the language."""
    sign = QtCore.QLocale().decimalPoint()
    return sign if isinstance(sign, str) else chr(sign.unicode())

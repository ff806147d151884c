# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is said in a window of its own: what goes wrong where no panel is open to say it, and no
traceback may be."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import wraps
from html import escape
from typing import Any


def as_written(text: str) -> str:
    """A text for a tool tip or a box. Qt takes what looks like markup for it, and a name that came
    with a document could have a picture fetched from anywhere."""
    if "<" not in text and "&lt;" not in text:
        return text
    return f"<p style='white-space: pre-wrap'>{escape(text, quote=False)}</p>"


def show_box(title: str, text: str, kind: str = "warning") -> Any:
    """Says it in a box of a kind that Qt has ("question"); the button that was pressed."""
    import FreeCADGui
    from PySide import QtGui

    ask = getattr(QtGui.QMessageBox, kind)
    return ask(FreeCADGui.getMainWindow(), title, as_written(text))


@contextmanager
def in_a_box(title: str) -> Iterator[None]:
    """Says what goes wrong within, a package that is missing among it, and goes on after it."""
    try:
        yield
    except Exception as error:
        from veneerwb.gui.panels import fields

        show_box(title, fields.told(error))


def opens(double_clicked: Callable[[Any, Any], bool]) -> Callable[[Any, Any], bool]:
    """A view provider's doubleClicked that says what goes wrong; the host then does nothing of its
    own."""

    @wraps(double_clicked)
    def said(self: Any, view: Any) -> bool:
        with in_a_box(view.Object.Label):
            return double_clicked(self, view)
        return True

    return said

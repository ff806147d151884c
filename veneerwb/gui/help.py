# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages of docs in a window of their own, which needs no network; What's This; the example.

The host asks for help on a widget by its `whatsThis`, a page's name, and on some versions has
nothing to show it in. Our commands and forms carry a command's name there; the page is named alike.
"""

from __future__ import annotations

import os
import re
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtCore

from veneerwb.gui import resources
from veneerwb.gui.side_window import Window
from veneerwb.gui.told import show_box
from veneerwb.host import compat

translate = FreeCAD.Qt.translate
HERE = "VeneerHelp"

DOCS = os.path.join(os.path.dirname(os.path.dirname(resources("ui"))), "docs")
CONTENTS = "README.md"
EXAMPLE = os.path.join(resources("examples"), "round-top.FCStd")
MARK = "Veneer_"
"""What the names of our commands begin with."""


def page_of(command: str) -> str:
    """The page of a command, within docs: Veneer_NewMatch is in commands/new-match.md."""
    words = re.findall(r"[A-Z][a-z]*", command.removeprefix(MARK))
    return f"commands/{'-'.join(words).lower()}.md"


class HelpWindow(Window):
    """A page of docs, its links, and the way back."""

    def __init__(self) -> None:
        title = translate(HERE, "Veneer Help")
        super().__init__("help", title, "veneer-help", _shown.clear)
        form = self.form
        form.text.setOpenExternalLinks(True)
        form.back.clicked.connect(form.text.backward)
        form.contents.clicked.connect(lambda *_: self.turn_to(CONTENTS))
        form.text.backwardAvailable.connect(form.back.setEnabled)
        form.back.setEnabled(False)

    def turn_to(self, page: str) -> None:
        """Shows a page within docs; the contents for one that is not there."""
        paths = (os.path.join(DOCS, name) for name in (page, CONTENTS))
        path = next(filter(os.path.isfile, paths), None)
        if path is not None:
            self.form.text.setSource(QtCore.QUrl.fromLocalFile(path))
            return
        text = translate(
            HERE, "The pages of help are missing ({folder}); install the workbench again."
        )
        self.form.text.setPlainText(text.format(folder=DOCS))


_shown: list[HelpWindow] = []
"""The window, while it is open."""


def show(page: str = CONTENTS) -> None:
    """Opens the help at a page within docs, or turns to it."""
    if not _shown:
        _shown.append(HelpWindow())
    _shown[0].turn_to(page)
    _shown[0].to_front()


# --- What's This --------------------------------------------------------------------------------


class _Asked(QtCore.QObject):
    """Hears what the host's window is asked for by What's This, and answers for our own."""

    def eventFilter(self, watched: Any, event: Any) -> bool:
        if event.type() != QtCore.QEvent.WhatsThisClicked:
            return False
        name = event.href()
        if name.startswith(MARK):
            show(page_of(name))
        return name.startswith(MARK)


_asked: list[_Asked] = []


def answer_whats_this() -> None:
    """From now on What's This on our commands and forms opens our pages."""
    if not _asked:
        _asked.append(_Asked())
        FreeCADGui.getMainWindow().installEventFilter(_asked[0])


# --- the example --------------------------------------------------------------------------------


def open_example() -> Any:
    """A new document with what the example holds. It has no file, so that saving asks for one and
    the example stays as it is. None, and the user told, where it is not there or not whole."""
    if not os.path.isfile(EXAMPLE):
        text = translate(HERE, "The example is missing ({file}); install the workbench again.")
        return _without_example(text)
    doc = FreeCAD.newDocument("Example")
    try:
        doc.load(EXAMPLE)
        whole = bool(doc.Objects)
    except Exception as error:  # hosts raise what they like
        compat.log(str(error))
        whole = False
    if not whole:
        FreeCAD.closeDocument(doc.Name)
        text = translate(HERE, "The example is damaged ({file}); install the workbench again.")
        return _without_example(text)
    doc.FileName = ""
    doc.Label = translate(HERE, "Example")
    compat.recompute(doc)  # newer hosts open what older ones saved as touched
    FreeCADGui.SendMsgToActiveView("ViewFit")
    return doc


def _without_example(why: str) -> None:
    show_box(translate(HERE, "Open Example"), why.format(file=EXAMPLE))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The list by which the real stack is chalked, as a PDF to print."""

from __future__ import annotations

import os
from collections.abc import Sequence
from html import escape

from veneerwb.core.chalk import HEADINGS, HOW, Mark
from veneerwb.core.files import write_beside
from veneerwb.paint.qt import QtCore, QtGui, application
from veneerwb.words import word

_DPI = 96
_STYLE = (
    "body { font-family: sans-serif; font-size: 10pt; color: black; }"
    "th { text-align: left; background-color: #e8e8e6; }"
    ".number { font-size: 16pt; font-weight: bold; }"
)


def as_html(marks: Sequence[Mark], title: str) -> str:
    """The list as a page: a line for each leaf, an empty box to tick."""
    rows = "".join(
        "<tr>"
        f"<td>&#9744;</td><td class='number'>{mark.chalk}</td><td>{escape(mark.photograph)}</td>"
        f"<td>{mark.now}</td><td>{escape(mark.top_end)}</td><td>{escape(mark.side_up)}</td>"
        f"<td>{escape(mark.to_do)}</td></tr>"
        for mark in marks
    )
    heads = "".join(f"<th>{escape(word(name))}</th>" for name in ("", *HEADINGS))
    return (
        f"<html><head><style>{_STYLE}</style></head><body><h2>{escape(title)}</h2>"
        f"<p>{escape(word(HOW))}</p><table border='1' cellspacing='0' cellpadding='4' width='100%'>"
        f"<thead><tr>{heads}</tr></thead>{rows}</table></body></html>"
    )


def write_pdf(marks: Sequence[Mark], title: str, path: str | os.PathLike[str]) -> None:
    """Writes the list as PDF, A4, whole or not at all. Raises VeneerError."""
    application()
    held = QtCore.QByteArray()
    buffer = QtCore.QBuffer(held)
    buffer.open(QtCore.QIODevice.WriteOnly)
    writer = QtGui.QPdfWriter(buffer)
    writer.setPageLayout(QtGui.QPageLayout(
        QtGui.QPageSize(QtGui.QPageSize.A4), QtGui.QPageLayout.Portrait,
        QtCore.QMarginsF(15, 15, 15, 15), QtGui.QPageLayout.Millimeter,
    ))
    writer.setResolution(_DPI)
    writer.setTitle(title)
    page = QtGui.QTextDocument()
    page.setPageSize(QtCore.QSizeF(writer.width(), writer.height()))
    page.setHtml(as_html(marks, title))
    page.print_(writer)
    del writer
    buffer.close()
    pdf = bytes(held.data())
    write_beside(path, lambda stream: stream.write(pdf))

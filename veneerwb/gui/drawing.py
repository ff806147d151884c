# SPDX-License-Identifier: LGPL-2.1-or-later
"""A drawing's page in the window: opened, and printed to PDF."""

from __future__ import annotations

import os
import time
from pathlib import Path
from typing import Any

import FreeCADGui

from veneerwb.core.errors import VeneerError
from veneerwb.core.files import scratch, write_beside
from veneerwb.host import compat
from veneerwb.paint.qt import QtCore

SETTLE = 0.15
"""Seconds that a page is given to draw itself after it was opened."""


def open_page(page: Any) -> None:
    """Shows `page` in its own window as it will be printed, and waits until it is drawn."""
    compat.hide_frames(page)
    page.ViewObject.show()
    _settle()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    _settle()


def _settle() -> None:
    until = time.monotonic() + SETTLE
    while time.monotonic() < until:
        FreeCADGui.updateGui()
        QtCore.QCoreApplication.processEvents()


def save_pdf(page: Any, path: str | os.PathLike[str]) -> None:
    """Writes `page` as PDF to `path`, whole or not at all. It is opened first: some hosts leave out
    the form of a page that was never shown. Raises VeneerError."""
    import TechDrawGui

    with scratch("page") as folder:
        made = Path(folder) / "page.pdf"
        open_page(page)
        TechDrawGui.exportPageAsPdf(page, str(made))
        pdf = made.read_bytes() if made.exists() else b""
    if not pdf.startswith(b"%PDF-") or b"%%EOF" not in pdf[-64:]:  # or the disk was full
        raise VeneerError(
            "no-pdf",
            "FreeCAD wrote no whole PDF of the page {page}; make room on the disk, recompute the "
            "document and try again.",
            page=page.Label,
        )
    write_beside(path, lambda stream: stream.write(pdf))

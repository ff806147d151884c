# SPDX-License-Identifier: LGPL-2.1-or-later
"""A drawing's page in the window: opened, and printed to PDF."""

from __future__ import annotations

import os
import secrets
import time
from pathlib import Path
from typing import Any

import FreeCADGui

from veneerwb.core.errors import VeneerError
from veneerwb.core.files import reason, shown_name
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
    """Writes `page` as PDF to `path`. It is opened first: some hosts leave out the form of a page
    that was never shown. The file is written beside and then renamed. VeneerError if that cannot
    be done; what was at `path` is then as it was."""
    import TechDrawGui

    target = Path(os.path.realpath(path))
    beside = target.with_name(f".{secrets.token_hex(8)}.pdf")
    try:
        with open(beside, "xb"):  # what the system refuses is known here, the host does not say
            pass
        open_page(page)
        TechDrawGui.exportPageAsPdf(page, str(beside))
        if not beside.read_bytes()[:5] == b"%PDF-":
            raise VeneerError(
                "no-pdf",
                "FreeCAD wrote no PDF of the page {page}; recompute the document and try again.",
                page=page.Label,
            )
        os.replace(beside, target)
    except OSError as error:
        raise VeneerError(
            "cannot-write",
            "The file {file} could not be written ({reason}); "
            "choose a folder that you may write to and that has room.",
            file=shown_name(path),
            reason=reason(error),
        ) from error
    finally:
        if os.path.lexists(beside):
            os.unlink(beside)

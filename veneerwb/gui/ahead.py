# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs read before they are shown, so that it is told how far that is and can be stopped."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress

from veneerwb.core import Bundle, Layout, VeneerError
from veneerwb.gui.progress import stoppable


def read_ahead(title: str, laid: Callable[[], Layout]) -> None:
    """Reads the photographs that a layout shows, which takes its time in a document just opened.
    Refused where the user stops it; what cannot be laid or read is for others to say."""
    with suppress(VeneerError), stoppable(title) as progress:
        layout = laid()
        if not isinstance(layout.bundle, Bundle):
            return
        sides = [layout.bundle.leaf(piece.leaf).side(piece.turned) for piece in layout.pieces]
        photos = list({id(side.image): side.image for side in sides}.values())
        for done, photo in enumerate(photos):
            progress(done / len(photos))
            _ = photo.pixels

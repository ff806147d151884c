# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a face is by the sizes of its pieces: crumbs, and the widths of strips compared with a
published text."""

from __future__ import annotations

from collections.abc import Iterator

from veneerwb.core.checks.finding import Finding
from veneerwb.core.layout import Layout, Piece
from veneerwb.core.outlines import edge as edges
from veneerwb.core.plane import TOUCH
from veneerwb.words import word

PLAIN, QUARTERED = 152.4, 76.2
"""mm: least widths of inner pieces in face grade AA, plain sliced, and quartered or rift:
Architectural Woodwork Standards, 1st ed. (2009, superseded), p. 84; outer pieces are exempt."""


CRUMB = 100.0
"""mm2: a smaller piece is lost or broken in cutting (common practice, no source)."""


def panel_findings(layout: Layout) -> Iterator[Finding]:
    """What is said of the pieces by their sizes."""
    yield from _crumbs(layout)
    yield from _inner(layout)


def _crumbs(layout: Layout) -> Iterator[Finding]:
    small = [piece for piece in layout.pieces if piece.area < CRUMB]
    if small:
        least = min(small, key=lambda piece: piece.area)
        positions = tuple(piece.position for piece in small)
        yield Finding(
            "crumbs",
            "warn",
            "Pieces at positions {pieces} are smaller than {limit} mm2, the one at {a} has only "
            "{area} mm2: such crumbs are lost or broken in cutting.",
            "Move the seams or the centre a little, or take other numbers or widths.",
            {"pieces": positions, "limit": CRUMB, "a": least.position, "area": least.area},
            positions,
        )


def _inner(layout: Layout) -> Iterator[Finding]:
    """How wide the narrowest inner piece is (nothing for matches that have no strips)."""
    inner = _inner_widths(layout)
    if not inner:
        return
    width, piece = min(inner, key=lambda one: (round(one[0], 6), one[1].position))
    narrow = tuple(p.position for w, p in inner if w < PLAIN - TOUCH)
    values = {
        "width": width,
        "a": piece.position,
        "plain": PLAIN,
        "quartered": QUARTERED,
        "narrow": narrow,
    }
    if width >= PLAIN - TOUCH:
        values["reads"] = word("not under either")
    elif width >= QUARTERED - TOUCH:
        values["reads"] = word("under the first, not under the second")
    else:
        values["reads"] = word("under both")
    yield Finding(
        "inner-piece",
        "note",
        "The narrowest inner piece, at position {a}, is {width} mm wide. Compared with the least "
        "widths of face grade AA in the Architectural Woodwork Standards, 1st ed. (2009, "
        "superseded), p. 84, {plain} mm plain sliced and {quartered} mm quartered or rift, outer "
        "pieces exempt, that is {reads}.",
        "",
        values,
        (piece.position,),
    )


def _inner_widths(layout: Layout) -> list[tuple[float, Piece]]:
    """The widths in mm across the grain of the pieces that reach neither side of the top."""
    grain = getattr(layout.recipe, "grain", None)
    if grain is None:
        return []
    across = grain - 90.0
    left, right = edges.extent(layout.top.edge, across)
    spans = [(*edges.extent(piece.edge, across), piece) for piece in layout.pieces]
    return [
        (high - low, piece)
        for low, high, piece in spans
        if low > left + TOUCH and high < right - TOUCH
    ]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The picture of the finished top by itself, with its name and revision mark below it."""

from __future__ import annotations

from veneerwb.core.layout import Layout
from veneerwb.core.outlines import edge as edges
from veneerwb.core.shop.built import Built
from veneerwb.core.shop.drawing.drawn import Drawing
from veneerwb.core.shop.drawing.lettering import PITCH, SMALL
from veneerwb.core.shop.drawing.page import Look, text_block, text_height
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages.finished import draw_top, tinted
from veneerwb.core.shop.pages.pictures import Pictured
from veneerwb.words import say

LONG, LEAST, AROUND = 240.0, 100.0, 5.0
"""mm of the drawing that the longer side of the top takes and the shorter one at least has, and
what is left free round it."""


def captioned(layout: Layout, look: Look, shown: Pictured, built: Built | None) -> Drawing:
    """The top and its caption. What lies round or in the field has no photograph: it is drawn in
    plain tints, and the caption says so."""
    whole = built.top if built else layout.top
    (x0, x1), (y0, y1) = (edges.extent(whole.edge, turn) for turn in (0.0, 90.0))
    f = LONG / max(x1 - x0, y1 - y0)
    wide = max(f * (x1 - x0), LEAST) + 2.0 * AROUND
    said = [
        say(
            "{title}, revision {revision}. {top}, {size} over all.", title=look.title,
            revision=look.revision, top=look.top, size=look.lengths.size(x1 - x0, y1 - y0),
        ),
        *tinted(built),
    ]  # fmt: skip
    said.append(look.rests)
    words = Box(AROUND, AROUND, wide - 2.0 * AROUND, 0.0)
    high = text_height(said, words.wide, between=False) + PITCH * SMALL
    foot = AROUND + high
    drawing = Drawing(wide, foot + f * (y1 - y0) + AROUND)
    origin = (wide / 2.0 - f * (x0 + x1) / 2.0, foot - f * y0)
    draw_top(drawing, layout, built, shown, f, origin)
    text_block(drawing, Box(words.x, words.y, words.wide, high), said, between=False)
    return drawing

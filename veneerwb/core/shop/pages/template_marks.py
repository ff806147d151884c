# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a template's sheets and their map both draw: the bars of 100 mm, an edge's corners."""

from __future__ import annotations

from veneerwb.core.outlines.edge import Edge, Point
from veneerwb.core.shop.drawing.drawn import (
    THIN,
    Drawing,
)
from veneerwb.core.shop.drawing.lettering import SMALL
from veneerwb.core.shop.templates.words import BAR

_STROKE = 2.0
"""mm: half of a stroke across a bar."""


def bars(drawing: Drawing, level: Point, upright: Point) -> None:
    """A bar of 100 mm to the right of one point and another upwards from a second; a rule is laid
    to the outer edges of their end strokes, which are exactly that far apart."""
    text, half = f"{BAR:g} mm", THIN / 2.0
    for (x, y), ux, uy in ((level, 1.0, 0.0), (upright, 0.0, 1.0)):
        drawing.line((x, y), (x + BAR * ux, y + BAR * uy), THIN)
        for k in range(11):
            at = min(max(10.0 * k, half), BAR - half)
            high = _STROKE if k in (0, 10) else _STROKE / 2.5
            cx, cy = x + at * ux, y + at * uy
            drawing.line((cx - high * uy, cy - high * ux), (cx + high * uy, cy + high * ux), THIN)
    drawing.text((level[0] + BAR + 2.0, level[1] - SMALL / 2.0), text, SMALL, "start")
    drawing.text((upright[0] - _STROKE - 0.3, upright[1] + BAR / 2.0), text, SMALL, turn=90.0)


def corners(edge: Edge) -> list[Point]:
    return [*(p for s in edge for p in s.points()), edge[-1].end]

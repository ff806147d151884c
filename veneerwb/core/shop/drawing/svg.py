# SPDX-License-Identifier: LGPL-2.1-or-later
"""A drawing as SVG.

Only what every reader of SVG Tiny 1.2 draws alike is used: no markers, no styles, no underline.
What is drawn is in hundredths of a mm, because some readers round letters to whole units.
"""

from __future__ import annotations

import base64
import math
from typing import TYPE_CHECKING
from xml.sax.saxutils import escape

from veneerwb.core.outlines.curves import Curve
from veneerwb.core.outlines.edge import Arc, Line, Point, Segment
from veneerwb.core.shop.drawing.lettering import FONT, clean

if TYPE_CHECKING:
    from veneerwb.core.shop.drawing.drawn import Drawing, Image, Letters, Mark, Stroke

CAPITAL = 0.738
"""Height of the font's capitals as a share of its size."""


def svg(drawing: Drawing, wide: float = 0.0, shift: float = 0.0) -> str:
    """The drawing as a file of exactly its size in mm; or `wide` mm wide, `shift` mm from its
    left."""
    wide = wide or drawing.wide
    return (
        '<svg xmlns="http://www.w3.org/2000/svg" '
        'xmlns:xlink="http://www.w3.org/1999/xlink" version="1.1" '
        f'width="{wide:.4f}mm" height="{drawing.high:.4f}mm" '
        f'viewBox="0 0 {wide:.4f} {drawing.high:.4f}">'
        f'<g transform="translate({shift:.4f} 0) scale(0.01)">'
        + "".join(element(mark, drawing.high) for mark in drawing.marks)
        + "</g></svg>"
    )


def element(mark: Mark, high: float) -> str:
    """A mark as an element, in hundredths of a mm down from `high` mm."""
    kind = type(mark).__name__
    return {"Stroke": _stroke, "Letters": _letters, "Image": _image}[kind](mark, high)


def _at(p: Point, high: float) -> str:
    return f"{100 * p[0]:.1f} {100 * (high - p[1]):.1f}"


def _stroke(mark: Stroke, high: float) -> str:
    path = f"M{_at(mark.edge[0].start, high)} " + " ".join(_segment(s, high) for s in mark.edge)
    closed = math.dist(mark.edge[0].start, mark.edge[-1].end) < 1e-6
    if closed and (mark.fill or len(mark.edge) > 1):
        path += " Z"
    dash = ",".join(f"{100 * d:g}" for d in mark.dashes)
    line = (
        f' stroke="{mark.colour}" stroke-width="{100 * mark.weight:g}"'
        + (f' stroke-dasharray="{dash}"' if dash else "")
        + ' stroke-linecap="butt" stroke-linejoin="round"'
    )
    return f'<path d="{path}" fill="{mark.fill or "none"}"{line if mark.weight else ""}/>'


def _segment(segment: Segment, high: float) -> str:
    if isinstance(segment, Line):
        return f"L{_at(segment.end, high)}"
    if isinstance(segment, Curve):
        return f"C{' '.join(_at(p, high) for p in (segment.c, segment.d, segment.b))}"
    if abs(segment.sweep) > 180.0:  # an SVG arc cannot close on itself
        halves = (segment.part(0, 0.5), segment.part(0.5, 1))
        return " ".join(_segment(half, high) for half in halves)
    turn, end = 0 if segment.sweep > 0.0 else 1, _at(segment.end, high)
    if isinstance(segment, Arc):
        r = 100 * segment.radius
        return f"A{r:.2f} {r:.2f} 0 0 {turn} {end}"
    axes = f"{100 * segment.along:.2f} {100 * segment.across:.2f}"
    return f"A{axes} {-segment.tilt:.4f} 0 {turn} {end}"  # on paper y points down


def _letters(mark: Letters, high: float) -> str:
    x, y = _at(mark.at, high).split()
    return (
        f'<text x="{x}" y="{y}" font-family="{FONT}" fill="{mark.colour}" '
        f'font-size="{100 * mark.height / CAPITAL:.0f}" text-anchor="{mark.anchor}"'
        + (f' transform="rotate({-mark.turn:.3f} {x} {y})"' if mark.turn else "")
        + f">{escape(clean(mark.text))}</text>"
    )


def _image(mark: Image, high: float) -> str:
    box = mark.box
    kind = "png" if mark.data.startswith(b"\x89PNG") else "jpeg"
    held = base64.b64encode(mark.data).decode("ascii")
    return (
        f'<image x="{100 * box.x:.1f}" y="{100 * (high - box.top):.1f}" '
        f'width="{100 * box.wide:.1f}" height="{100 * box.high:.1f}" '
        f'xlink:href="data:image/{kind};base64,{held}"/>'
    )

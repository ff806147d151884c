# SPDX-License-Identifier: LGPL-2.1-or-later
"""A template as SVG at true size, for a laser or a knife.

Width and height are in mm and one unit of the drawing is one mm; arcs are true arcs (A), of
ellipses too, and cubic curves are C. One group for each layer of `marks.LAYERS`.
"""

from __future__ import annotations

import math
import os
from collections.abc import Sequence
from xml.sax.saxutils import escape, quoteattr

from shapely import affinity

from veneerwb.core.files import write_beside
from veneerwb.core.outlines.curves import Curve
from veneerwb.core.outlines.edge import Arc, Line, Point, Segment
from veneerwb.core.shop.drawing.drawn import Letters
from veneerwb.core.shop.drawing.legible import area
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.lettering import clean
from veneerwb.core.shop.templates.marks import CUT, HIDDEN, LAYERS, NET, TEXT, TOOL, Lines, marks
from veneerwb.core.shop.templates.template import Template
from veneerwb.core.shop.templates.words import heading
from veneerwb.words import word

MARGIN = 10.0
"""mm round what is drawn."""
FONT = "sans-serif"
CAPITAL = 0.72
"""Height of capitals as a share of the letters' size, about."""
HAIRLINE = 0.1
_DASHES = {NET: "3 1.5", TOOL: "8 1.5 0.7 1.5"}
_WIDER = 1.35  # than the drawing font's letters those of another may be
_WIDEST = 120.0  # degrees: longer arcs are told in parts, or where their middle lies is unsure


def svg(template: Template, lengths: Lengths | None = None) -> str:
    """The file. `lengths`: how its words give lengths, in mm if not said."""
    drawn = marks(template, lengths or Lengths())
    x0, y0, x1, y1 = _extents(template, drawn)
    wide, high, upper = x1 - x0, y1 - y0, y1
    size = f'width="{wide:.4f}mm" height="{high:.4f}mm" viewBox="0 0 {wide:.4f} {high:.4f}"'
    parts = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        f'<svg xmlns="http://www.w3.org/2000/svg" version="1.1" {size}>',
        f"<title>{escape(heading(template))}</title>",
    ]
    for layer, purpose in LAYERS.items():
        of_layer = [mark for mark in drawn if _layer(mark) == layer]
        if of_layer:
            said = escape(word(purpose))
            parts.append(f"<g id={quoteattr(layer)} {_look(layer)}><desc>{said}</desc>")
            parts += (_element(mark, x0, upper) for mark in of_layer)
            parts.append("</g>")
    return "\n".join([*parts, "</svg>", ""])


def write_svg(
    template: Template, path: str | os.PathLike[str], lengths: Lengths | None = None
) -> None:
    """Writes the file to `path`, whole or not at all; VeneerError."""
    data = svg(template, lengths).encode("utf-8")
    write_beside(path, lambda stream: stream.write(data))


def _extents(
    template: Template, drawn: Sequence[Lines | Letters]
) -> tuple[float, float, float, float]:
    """Least x, least y, most x, most y of what is drawn, with a margin."""
    x0, y0, x1, y1 = template.extents
    places = [(x0, y0), (x1, y1)]
    for mark in drawn:
        if isinstance(mark, Letters):
            room = affinity.scale(area(mark), _WIDER, _WIDER, origin=mark.at)
            places += room.exterior.coords
        else:
            places += (p for s in mark.edge for p in (s.start, s.end))
    xs, ys = zip(*places)
    return min(xs) - MARGIN, min(ys) - MARGIN, max(xs) + MARGIN, max(ys) + MARGIN


def _layer(mark: Lines | Letters) -> str:
    return TEXT if isinstance(mark, Letters) else mark.layer


def _look(layer: str) -> str:
    if layer == TEXT:
        return f'fill="#000000" stroke="none" font-family="{FONT}"'
    weight = 2.0 * HAIRLINE if layer == CUT else HAIRLINE
    dashes = f' stroke-dasharray="{_DASHES[layer]}"' if layer in _DASHES else ""
    hidden = ' display="none"' if layer in HIDDEN else ""
    return f'fill="none" stroke="#000000" stroke-width="{weight:g}"{dashes}{hidden}'


def _element(mark: Lines | Letters, left: float, upper: float) -> str:
    def at(p: Point) -> str:
        return f"{p[0] - left:.8f} {upper - p[1]:.8f}"

    if isinstance(mark, Letters):
        place = at(mark.at)
        x, y = place.split()
        turned = f' transform="rotate({-mark.turn:g} {place})"' if mark.turn else ""
        size = f'font-size="{mark.height / CAPITAL:.3f}" text-anchor="{mark.anchor}"'
        return f'<text x="{x}" y="{y}" {size}{turned}>{escape(clean(mark.text))}</text>'
    path = " ".join([f"M{at(mark.edge[0].start)}", *(_segment(s, at) for s in mark.edge)])
    return f'<path d="{path}{" Z" if mark.closed else ""}"/>'


def _segment(segment: Segment, at: object) -> str:
    if isinstance(segment, Line):
        return f"L{at(segment.end)}"
    if isinstance(segment, Curve):
        return f"C{at(segment.c)} {at(segment.d)} {at(segment.b)}"
    if abs(segment.sweep) > _WIDEST:
        count = math.ceil(abs(segment.sweep) / _WIDEST)
        parts = (segment.part(k / count, (k + 1) / count) for k in range(count))
        return " ".join(_segment(part, at) for part in parts)
    turn = 0 if segment.sweep > 0.0 else 1  # on paper y points down
    if isinstance(segment, Arc):
        return f"A{segment.radius:.8f} {segment.radius:.8f} 0 0 {turn} {at(segment.end)}"
    axes = f"{segment.along:.8f} {segment.across:.8f} {-segment.tilt:.10f}"
    return f"A{axes} 0 {turn} {at(segment.end)}"

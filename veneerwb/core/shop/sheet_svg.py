# SPDX-License-Identifier: LGPL-2.1-or-later
"""A small drawing as SVG: lines, edges, letters and dimensions in mm of the paper, y up.

Only what every reader of SVG Tiny 1.2 draws alike is used: no markers, no styles, no underline.
What is drawn is in hundredths of a mm, because some readers round letters to whole units. Lines are
as in ISO 128, dimensions as in ISO 129-1: text above its line, to be read from below or from the
right; where there is no room between the arrows, they point inwards and the text stands outside.
"""

from __future__ import annotations

import math
from xml.sax.saxutils import escape

from veneerwb.core.curves import Curve
from veneerwb.core.edge import Arc, Edge, Line, Point, Segment
from veneerwb.core.plane import Motion, polar
from veneerwb.core.shop.sheet_text import FONT, SMALL, width

THIN, MEDIUM, THICK = 0.25, 0.35, 0.5
DASHED, CHAIN = (3.0, 1.5), (8.0, 1.5, 0.7, 1.5)
ARROW, ARROW_HALF = 3.0, 0.5
BEYOND, GAP = 1.5, 1.0
"""mm: how far extension lines reach beyond the dimension line, and start off the thing."""
CAPITAL = 0.738
"""Height of the font's capitals as a share of its size."""


class Drawing:
    """Collects elements; the lower left corner is (0, 0)."""

    def __init__(self, wide: float, high: float) -> None:
        self.wide, self.high = wide, high
        self.parts: list[str] = []

    def svg(self, wide: float = 0.0, shift: float = 0.0) -> str:
        """The whole as a file of exactly its size in mm; or `wide` mm wide, `shift` mm from its
        left."""
        wide = wide or self.wide
        return (
            '<svg xmlns="http://www.w3.org/2000/svg" '
            'xmlns:xlink="http://www.w3.org/1999/xlink" version="1.1" '
            f'width="{wide:.4f}mm" height="{self.high:.4f}mm" '
            f'viewBox="0 0 {wide:.4f} {self.high:.4f}">'
            f'<g transform="translate({shift:.4f} 0) scale(0.01)">'
            + "".join(self.parts)
            + "</g></svg>"
        )

    def _at(self, p: Point) -> str:
        return f"{100 * p[0]:.1f} {100 * (self.high - p[1]):.1f}"

    def stroke(self, path: str, weight: float, dashes: tuple[float, ...] = ()) -> None:
        dash = ",".join(f"{100 * d:g}" for d in dashes)
        self.parts.append(
            f'<path d="{path}" fill="none" stroke="#000000" stroke-width="{100 * weight:g}"'
            + (f' stroke-dasharray="{dash}"' if dash else "")
            + ' stroke-linecap="butt" stroke-linejoin="round"/>'
        )

    def line(
        self, a: Point, b: Point, weight: float = THIN, dashes: tuple[float, ...] = ()
    ) -> None:
        self.stroke(f"M{self._at(a)} L{self._at(b)}", weight, dashes)

    def edge(self, edge: Edge, weight: float, dashes: tuple[float, ...] = ()) -> None:
        """A run of true segments, already in mm of the paper."""
        self.stroke(
            f"M{self._at(edge[0].start)} " + " ".join(self._segment(s) for s in edge),
            weight,
            dashes,
        )

    def _segment(self, segment: Segment) -> str:
        if isinstance(segment, Line):
            return f"L{self._at(segment.end)}"
        if isinstance(segment, Curve):
            return f"C{self._at(segment.c)} {self._at(segment.d)} {self._at(segment.b)}"
        if abs(segment.sweep) > 180.0:  # an SVG arc cannot close on itself
            return f"{self._segment(segment.part(0, 0.5))} {self._segment(segment.part(0.5, 1))}"
        turn, end = 0 if segment.sweep > 0.0 else 1, self._at(segment.end)
        if isinstance(segment, Arc):
            r = 100 * segment.radius
            return f"A{r:.2f} {r:.2f} 0 0 {turn} {end}"
        axes = f"{100 * segment.along:.2f} {100 * segment.across:.2f}"
        return f"A{axes} {-segment.tilt:.4f} 0 {turn} {end}"  # on paper y points down

    def text(
        self,
        at: Point,
        text: str,
        height: float = SMALL,
        anchor: str = "middle",
        turn: float = 0.0,
        underlined: bool = False,
    ) -> None:
        """Letters of `height` mm standing on `at`, turned by `turn` degrees."""
        x, y = self._at(at).split()
        self.parts.append(
            f'<text x="{x}" y="{y}" font-family="{FONT}" fill="#000000" '
            f'font-size="{100 * height / CAPITAL:.0f}" text-anchor="{anchor}"'
            + (f' transform="rotate({-turn:.3f} {x} {y})"' if turn else "")
            + f">{escape(text)}</text>"
        )
        if underlined:
            half, low = 0.5 * width(text, height), at[1] - 0.25 * height
            self.line((at[0] - half, low), (at[0] + half, low))

    def arrow(self, tip: Point, degrees: float) -> None:
        """A filled arrowhead at `tip`, pointing in that direction."""
        back = _moved(tip, polar(-ARROW, degrees))
        side = polar(ARROW_HALF, degrees + 90.0)
        a, b = _moved(back, side), _moved(back, side, -1.0)
        self.parts.append(
            f'<path d="M{self._at(tip)} L{self._at(a)} L{self._at(b)} Z" fill="#000000"/>'
        )

    def picture(self, data: str) -> None:
        """A picture (a data address) that fills the whole drawing."""
        self.parts.append(
            f'<image x="0" y="0" width="{100 * self.wide:g}" height="{100 * self.high:g}" '
            f'xlink:href="{data}"/>'
        )

    def distance(self, a: Point, b: Point, text: str, off: float, start: float = 0.0) -> None:
        """A dimension from `a` to `b`, its line `off` mm to the left of the way from a to b
        (negative: to the right); extension lines begin `start` mm further off than usual."""
        way = math.degrees(math.atan2(b[1] - a[1], b[0] - a[0]))
        out = polar(math.copysign(1.0, off), way + 90.0)
        foot_a, foot_b = _moved(a, out, abs(off)), _moved(b, out, abs(off))
        for p in (a, b):
            self.line(_moved(p, out, GAP + start), _moved(p, out, abs(off) + BEYOND))
        self._measured(foot_a, foot_b, way, text)

    def _measured(self, a: Point, b: Point, way: float, text: str) -> None:
        gap, wide = math.dist(a, b), width(text, SMALL)
        u = polar(1.0, way)
        inside = gap >= 2.0 * ARROW + 2.0
        self.line(a if inside else _moved(a, u, -ARROW - 2.0), b)
        self.arrow(a, way + (180.0 if inside else 0.0))
        self.arrow(b, way + (0.0 if inside else 180.0))
        middle = ((a[0] + b[0]) / 2.0, (a[1] + b[1]) / 2.0)
        if gap >= wide + 2.0:
            self._above(middle, way, text)
        elif abs(u[1]) > 0.9:  # beside its line, level
            if not inside:
                self.line(b, _moved(b, u, ARROW + 2.0))
            self.text((middle[0] + 2.0, middle[1] - SMALL / 2.0), text, anchor="start")
        else:  # beyond its end
            self.line(b, _moved(b, u, ARROW + 2.0 + wide))
            self._above(_moved(b, u, ARROW + 1.0 + wide / 2.0), way, text)

    def leader(self, tip: Point, shelf: Point, text: str) -> None:
        """A text that stands on a shelf from which an arrow points at `tip`."""
        way = math.degrees(math.atan2(tip[1] - shelf[1], tip[0] - shelf[0]))
        self.line(tip, shelf)
        self.line(shelf, (shelf[0] + width(text, SMALL) + 1.0, shelf[1]))
        self.arrow(tip, way)
        self.text((shelf[0] + 1.0, shelf[1] + 0.8), text, anchor="start")

    def _above(self, middle: Point, way: float, text: str) -> None:
        """A text along a line, readable from below or from the right."""
        turn = math.remainder(way, 180.0)
        turn = turn + 180.0 if turn <= -90.0 + 1e-6 else turn
        self.text(_moved(middle, polar(0.8, turn + 90.0)), text, turn=turn)


def _moved(p: Point, by: Point, times: float = 1.0) -> Point:
    return p[0] + times * by[0], p[1] + times * by[1]


def placed(edge: Edge, factor: float, at: Point) -> Edge:
    """An edge in true mm, `factor` times as large, its origin at a point of the paper."""
    shift = Motion(dx=at[0], dy=at[1])
    return tuple(segment.scaled(factor).moved(shift) for segment in edge)

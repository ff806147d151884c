# SPDX-License-Identifier: LGPL-2.1-or-later
"""Drawings of the trade's words, for docs/words.md: tops are laid by the core, and all is drawn as
the sheets are. Runs inside FreeCAD without a window (`bash resources/demo/run.sh pictures`) and
writes docs/pictures/word-*.png.
"""

from __future__ import annotations

import math
import sys
from collections.abc import Callable, Sequence
from pathlib import Path

import numpy as np
from PIL import Image
from shapely.geometry import LineString, Polygon, box

from veneerwb.core import Layout, Stock, Top, radial, side
from veneerwb.core.layout import Piece
from veneerwb.core.outlines.edge import Arc, Line, Point
from veneerwb.core.plane import Motion, polar
from veneerwb.core.shop.drawing.drawn import DASHED, MEDIUM, RED, THICK, THIN, Drawing, placed
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.paint.pdf import draw
from veneerwb.paint.qt import QtGui, application, can_write_text, to_pixels

OUT = Path(__file__).resolve().parents[2] / "docs/pictures"
PX_PER_MM = 4.0
COLOURS = 64
UP, OVER, PALE, INK, GRAIN = "#e8bd85", "#c9935a", "#f6ead6", "#4a2c12", "#8a5a2c"
BOARD, METAL = "#d9d2c4", "#9aa0a6"
WIDE = 170.0
LETTERS = 2.9
STOCK = Stock(320.0, 900.0, 24, 0.6)
ARCHES = [
    [(0.08, 0.0), (0.12, 0.45), (0.24, 0.72), (0.38, 0.82), (0.52, 0.72), (0.64, 0.45),
     (0.68, 0.0)],
    [(0.20, 0.0), (0.24, 0.35), (0.31, 0.54), (0.38, 0.60), (0.45, 0.54), (0.53, 0.35),
     (0.56, 0.0)],
    [(0.31, 0.0), (0.34, 0.25), (0.38, 0.36), (0.42, 0.25), (0.45, 0.0)],
    [(0.80, 0.0), (0.77, 0.5), (0.75, 1.0)], [(0.92, 0.0), (0.90, 0.5), (0.89, 1.0)],
]  # fmt: skip
"""A leaf's figure, lopsided so that it shows how a leaf is put: shares of its width and length."""


def main() -> None:
    application()
    if not can_write_text():
        sys.exit("Words cannot be written in this session, so there are no drawings.")
    OUT.mkdir(exist_ok=True)
    for name, (high, made) in DRAWINGS.items():
        drawing = Drawing(WIDE, high)
        drawing.rectangle(Box(0.0, 0.0, WIDE, high), 0.0, "#ffffff")
        made(drawing)
        write(OUT / f"word-{name}.png", drawing)
    print(f"{len(DRAWINGS)} drawings of words, docs/pictures")


def write(path: Path, drawing: Drawing) -> None:
    """As a PNG of few colours."""
    size = (round(drawing.wide * PX_PER_MM), round(drawing.high * PX_PER_MM))
    image = QtGui.QImage(*size, QtGui.QImage.Format_RGB32)
    image.fill(QtGui.QColor(255, 255, 255))
    painter = QtGui.QPainter(image)
    for hint in ("Antialiasing", "TextAntialiasing"):
        painter.setRenderHint(getattr(QtGui.QPainter, hint))
    draw(painter, drawing, PX_PER_MM)
    painter.end()
    pixels = Image.fromarray(np.ascontiguousarray(to_pixels(image)[..., :3]))
    pixels.quantize(COLOURS, dither=Image.Dither.NONE).save(path, optimize=True)


# --- parts of drawings --------------------------------------------------------------------------


def say(d: Drawing, at: Point, text: str, anchor: str = "middle", colour: str = "#000000") -> None:
    d.text(at, text, LETTERS, anchor, colour=colour)


def name(d: Drawing, tip: Point, foot: Point, text: str) -> None:
    """A word at `foot`, with an arrow from it to `tip`."""
    right = tip[0] > foot[0]
    start = (foot[0] + (1.0 if right else -1.0), foot[1] + 1.1)
    d.line(start, tip)
    d.arrow(tip, math.degrees(math.atan2(tip[1] - start[1], tip[0] - start[0])))
    say(d, foot, text, "end" if right else "start")


def polygon(d: Drawing, points: Sequence[Point], fill: str, weight: float = MEDIUM) -> None:
    d.area(points, fill)
    run(d, [*points, points[0]], weight)


def bar(d: Drawing, x0: float, y0: float, x1: float, y1: float, fill: str) -> None:
    """An upright rectangle with a line round it."""
    polygon(d, [(x0, y0), (x1, y0), (x1, y1), (x0, y1)], fill, THIN)


def run(
    d: Drawing, points: Sequence[Point], weight: float = THIN, colour: str = INK,
    dashes: tuple[float, ...] = (),
) -> None:  # fmt: skip
    """Straights through points."""
    d.edge([Line(a, b) for a, b in zip(points, points[1:])], weight, dashes, colour)


def smooth(points: Sequence[Point]) -> list[Point]:
    """A line with its corners cut three times."""
    found = list(points)
    for _ in range(3 if len(found) > 2 else 0):
        cut = [found[0]]
        for (ax, ay), (bx, by) in zip(found, found[1:]):
            cut += [(0.75 * ax + 0.25 * bx, 0.75 * ay + 0.25 * by),
                    (0.25 * ax + 0.75 * bx, 0.25 * ay + 0.75 * by)]  # fmt: skip
        found = [*cut, found[-1]]
    return found


def figure(bounds: Sequence[float]) -> list[list[Point]]:
    """The figure within bounds."""
    x0, y0, x1, y1 = bounds
    return [
        smooth([(x0 + u * (x1 - x0), y0 + v * (y1 - y0)) for u, v in line]) for line in ARCHES
    ]


def leaf(d: Drawing, at: Box, fill: str = UP, within: Polygon | None = None) -> None:
    """A leaf with its figure."""
    bar(d, at.x, at.y, at.right, at.top, fill)
    for line in figure((at.x + 1.0, at.y, at.right - 1.0, at.top)):
        run(d, line, THIN, GRAIN)


def lay(d: Drawing, layout: Layout, factor: float, at: Point, numbers: bool = True) -> None:
    """A top as the core lays it, with the figure of its leaves where each is cut."""
    bounds = layout.cuts[0].outline.bounds
    for piece in layout.pieces:
        d.edge(placed(piece.edge, factor, at), MEDIUM, (), INK, OVER if piece.turned else UP)
        back = piece.onto_bundle.inverse()
        room = piece.outline.buffer(-0.8 / factor)
        for line in figure(bounds):
            cut = LineString(back.apply(line)).intersection(room)
            for part in getattr(cut, "geoms", [cut]):
                if part.length > 4.0 / factor:
                    run(d, [_on(p, factor, at) for p in part.coords], THIN, GRAIN)
        if numbers:
            _number(d, piece, factor, at)


def _number(d: Drawing, piece: Piece, factor: float, at: Point) -> None:
    x, y = _on(piece.outline.centroid.coords[0], factor, at)
    d.area([polar_from((x, y), 3.0, a) for a in range(0, 360, 15)], PALE)
    d.text((x, y - 1.3), str(piece.leaf), LETTERS, underlined=piece.turned)


def _on(p: Sequence[float], factor: float, at: Point) -> Point:
    return at[0] + factor * p[0], at[1] + factor * p[1]


def polar_from(at: Point, radius: float, degrees: float) -> Point:
    x, y = polar(radius, degrees)
    return at[0] + x, at[1] + y


def wedge(d: Drawing, tip: Point, radius: float, first: float, last: float, fill: str) -> None:
    """A wedge of a ring from one direction to another."""
    arc = Arc(tip, radius, first, last - first)
    d.edge([Line(tip, arc.start), arc, Line(arc.end, tip)], MEDIUM, (), INK, fill)


# --- the drawings -------------------------------------------------------------------------------


def flitch(d: Drawing) -> None:
    """A flitch, the knife, and the bundle that comes of it."""
    x, y, w, h, s = 12.0, 8.0, 40.0, 26.0, 12.0
    bar(d, x, y, x + w, y + h, UP)
    polygon(d, [(x, y + h), (x + w, y + h), (x + w + s, y + h + s), (x + s, y + h + s)], PALE)
    polygon(d, [(x + w, y), (x + w + s, y + s), (x + w + s, y + h + s), (x + w, y + h)], OVER)
    for k in range(1, 6):
        run(d, [(x, y + h - 2.2 * k), (x + w, y + h - 2.2 * k)], THIN, GRAIN)
        run(d, [(x + w, y + h - 2.2 * k), (x + w + s, y + h + s - 2.2 * k)], THIN, GRAIN)
    say(d, (x + w / 2, y + 7.0), "flitch")
    name(d, (x + w + 3.0, y + h - 1.2), (x + w + s + 8.0, y + 9.0), "cuts: leaf by leaf")
    d.line((84.0, 26.0), (96.0, 26.0), THICK)
    d.arrow((97.5, 26.0), 0.0)
    for k in range(5, 0, -1):
        leaf(d, Box(104.0 + 6.0 * k, 5.0 + 3.2 * k, 22.0, 32.0), OVER if k % 2 == 0 else UP)
    for k in range(1, 6):
        say(d, (123.5 + 6.0 * k, 33.5 + 3.2 * k), str(k))
    say(d, (108.0, 10.0), "bundle", "end")
    d.line((109.0, 11.0), (113.0, 13.0))


def sides(d: Drawing) -> None:
    """Two leaves from the edge: tight and loose sides, the surfaces that they share."""
    for k, y in ((1, 27.0), (2, 9.0)):
        bar(d, 30.0, y, 108.0, y + 9.0, UP)
        for x in range(34, 107, 5):
            run(d, [(x, y), (x + 1.6, y + 3.4)], THIN, INK)
        say(d, (69.0, y + 4.6), f"leaf {k}")
        say(d, (27.0, y + 6.3), "tight side", "end")
        say(d, (27.0, y + 0.6), "loose side", "end")
    name(d, (108.5, 36.0), (116.0, 38.5), "face of leaf 1")
    name(d, (108.5, 27.0), (116.0, 27.8), "back of leaf 1")
    name(d, (108.5, 18.0), (116.0, 19.5), "face of leaf 2: the same cut")
    say(d, (76.0, 2.0), "seen from the edge, much enlarged; checks of the knife on the loose side")


def on_the_leaf(d: Drawing) -> None:
    """A wedge on a leaf, and its words."""
    at = Box(58.0, 4.0, 44.0, 88.0)
    leaf(d, at)
    usable = [(61.0, 7.0), (99.0, 7.0), (99.0, 89.0), (61.0, 89.0), (61.0, 7.0)]
    run(d, usable, THIN, INK, DASHED)
    tip, half, long = (80.0, 16.0), 15.0, 62.0
    arc = Arc(tip, long, 90.0 - half, 2.0 * half)
    over = Arc(tip, long + 4.0, 90.0 - half, 2.0 * half)
    d.edge([Line(tip, over.start), over, Line(over.end, tip)], THIN, DASHED, INK)
    d.edge([Line(tip, arc.start), arc, Line(arc.end, tip)], THICK)
    run(d, [(80.0, 10.0), (80.0, 86.5)], THIN, RED, (8.0, 1.5, 0.7, 1.5))
    d.area([polar_from((94.0, 20.0), 2.2, a) for a in range(0, 360, 20)], INK)
    name(d, tip, (48.0, 14.0), "tip")
    name(d, polar_from(tip, 45.0, 90.0 + half), (48.0, 52.0), "seam")
    name(d, polar_from(tip, long, 100.0), (48.0, 74.0), "rim")
    name(d, polar_from(tip, long + 4.0, 96.0), (48.0, 84.0), "blank: with oversize")
    name(d, (80.0, 50.0), (112.0, 50.0), "axis")
    name(d, (96.0, 20.0), (112.0, 18.0), "fault: a knot")
    name(d, (99.0, 66.0), (112.0, 68.0), "usable area")
    name(d, (101.0, 84.0), (112.0, 84.0), "margin")
    name(d, (91.5, 32.0), (112.0, 34.0), "figure")


def turns(d: Drawing) -> None:
    """Book and slip, laid by the core."""
    top = Top.square(600.0)
    for x, turn, words in ((33.0, "book", "book: every second leaf is turned"),
                           (128.0, "slip", "slip: no leaf is turned")):  # fmt: skip
        lay(d, side(STOCK, top, turn, "balance", 4), 48.0 / 600.0, (x + 4.0, 34.0))
        say(d, (x + 4.0, 3.0), words)
    say(d, (85.0, 33.0), "darker, and")
    say(d, (85.0, 28.0), "number underlined:")
    say(d, (85.0, 23.0), "turned")


def ways(d: Drawing) -> None:
    """A top in 12 ways."""
    at, factor = (80.0, 48.0), 72.0 / 900.0
    lay(d, radial(STOCK, Top.round(900.0), 12), factor, at)
    name(d, at, (34.0, 50.0), "all tips meet")
    name(d, polar_from(at, 25.0, 165.0), (34.0, 66.0), "seam")
    name(d, polar_from(at, 33.0, 92.0), (116.0, 83.0), "position 1")
    name(d, polar_from(at, 31.0, 75.0), (120.0, 70.0), "closing seam: 12 and 1")
    name(d, polar_from(at, 36.0, 0.0), (122.0, 47.0), "rim")
    name(d, polar_from(at, 31.0, 214.0), (34.0, 20.0), "a turned leaf")
    say(d, (80.0, 3.0), "12 ways, book match, seen from the show face")


def gap(d: Drawing) -> None:
    """A ring that is a little short of a full turn, and the halves that are trued."""
    at, radius, short = (45.0, 41.0), 28.0, 1.2
    step = 30.0 - short
    for k in range(12):
        wedge(d, at, radius, 90.0 + k * step, 90.0 + (k + 1) * step, OVER if k % 2 else UP)
    name(d, polar_from(at, radius - 1.0, 90.0 - 6.0 * short), (78.0, 68.0), "gap at the rim")
    say(d, (45.0, 1.5), "each wedge a little too narrow")
    for x, turned in ((125.0, 0.0), (125.0, 180.0)):
        middle = (x, 40.0 + (3.0 if turned == 0.0 else -3.0))
        for k in range(6):
            first = turned + k * 30.4 - 1.2
            wedge(d, middle, radius, first, first + 30.4, OVER if k % 2 else UP)
    name(d, (98.0, 43.0), (92.0, 47.0), "truing")
    run(d, [(94.0, 43.0), (156.0, 43.0)], MEDIUM, RED, DASHED)
    run(d, [(94.0, 37.0), (156.0, 37.0)], MEDIUM, RED, DASHED)
    say(d, (125.0, 1.5), "cut a little over, trued in halves")


def layers(d: Drawing) -> None:
    """A panel in section."""
    x0, x1, edge = 30.0, 104.0, 8.0
    layers_ = (
        (42.0, 4.0, UP, "show veneer"), (37.0, 5.0, PALE, "crossband, its grain across"),
        (15.0, 22.0, BOARD, "core"), (10.0, 5.0, PALE, "crossband"), (6.0, 4.0, UP, "backer"),
    )  # fmt: skip
    for y, high, fill, words in layers_:
        left = x0 if high < 20.0 and fill == UP else x0 + edge
        bar(d, left, y, x1, y + high, fill)
        name(d, (x1, y + high / 2.0), (112.0, y + high / 2.0 - 1.1), words)
    bar(d, x0, 10.0, x0 + edge, 42.0, OVER)
    name(d, (x0 + 1.0, 26.0), (24.0, 25.0), "lipping")
    name(d, (x0 + 20.0, 46.0), (38.0, 51.0), "show face")
    say(d, (73.0, 1.0), "section, enlarged; this lipping lies under the veneer")


def round_the_field(d: Drawing) -> None:
    """Border, line, field, inlay."""
    x, y, w, h = 40.0, 4.0, 70.0, 52.0
    outer, line, field = (box(x + a, y + a, x + w - a, y + h - a) for a in (0.0, 9.0, 10.6))
    polygon(d, list(outer.exterior.coords)[:-1], OVER)
    corners = list(zip(outer.exterior.coords, line.exterior.coords))[:-1]
    for a, b in corners:
        run(d, [a, b], MEDIUM)
    polygon(d, list(line.exterior.coords)[:-1], INK)
    polygon(d, list(field.exterior.coords)[:-1], UP)
    for u in np.linspace(field.bounds[0] + 4.0, field.bounds[2] - 4.0, 9):
        run(d, [(u, field.bounds[1]), (u, field.bounds[3])], THIN, GRAIN)
    radii = (9.0, 3.8) * 8
    star = [polar_from((75.0, 30.0), r, 90.0 + 22.5 * k) for k, r in enumerate(radii)]
    polygon(d, star, OVER)
    name(d, (43.0, 44.0), (32.0, 46.0), "border")
    name(d, (45.0, 9.0), (32.0, 8.0), "mitre")
    name(d, (49.8, 26.0), (32.0, 26.0), "stringing line")
    name(d, (92.0, 44.0), (116.0, 46.0), "field: the match lies here")
    name(d, (82.5, 30.0), (116.0, 29.0), "inlay: a star")


def stack(d: Drawing) -> None:
    """The stack between boards, pinned."""
    x0, x1 = 40.0, 112.0
    bar(d, x0, 8.0, x1, 15.0, BOARD)
    for k in range(8):
        y = 15.0 + 2.2 * k
        leaf_fill = OVER if k % 2 else UP
        bar(d, x0 + 6.0, y, x1 - 6.0, y + 2.2, leaf_fill)
    bar(d, x0, 32.6, x1, 39.6, BOARD)
    for x in (54.0, 102.0):
        bar(d, x - 0.9, 5.0, x + 0.9, 45.0, METAL)
    run(d, [(84.0, 3.0), (84.0, 48.0)], MEDIUM, RED)
    name(d, (54.0, 43.0), (34.0, 45.0), "pin")
    name(d, (40.0, 36.0), (34.0, 34.0), "sandwich board")
    name(d, (46.0, 24.0), (34.0, 22.0), "stack of leaves")
    name(d, (84.0, 47.0), (120.0, 46.5), "cut: the kerf is waste")
    for at, turn in ((84.0, 180.0), (101.0, 0.0)):
        d.arrow((at, 42.5), turn)
    d.line((84.0, 42.5), (101.0, 42.5))
    name(d, (93.0, 42.5), (120.0, 36.0), "pins keep clear of it")


def taped(d: Drawing) -> None:
    """Tapes on a half, and what is closed last."""
    at, radius = (76.0, 5.0), 44.0
    for k in range(6):
        wedge(d, at, radius, 30.0 * k, 30.0 * (k + 1), OVER if k % 2 else UP)
    for k in range(1, 6):
        for r in (19.0, 29.0, 39.0):
            middle = polar_from(at, r, 30.0 * k)
            turned = Motion(angle=30.0 * k, dx=middle[0], dy=middle[1])
            corners = [(-1.1, -4.0), (1.1, -4.0), (1.1, 4.0), (-1.1, 4.0)]
            polygon(d, [turned.point(one) for one in corners], PALE, THIN)
        run(d, [polar_from(at, 4.0, 30.0 * k), polar_from(at, radius, 30.0 * k)], THIN, INK)
    name(d, polar_from(at, 39.0, 150.0), (38.0, 40.0), "tape")
    name(d, polar_from(at, 24.0, 120.0), (38.0, 48.0), "seam")
    name(d, polar_from(at, 36.0, 0.0), (126.0, 9.0), "diameter: closed last")
    say(d, (124.0, 42.0), "a half of the ring,", "start")
    say(d, (124.0, 37.5), "taped on the show face", "start")


def wander(d: Drawing) -> None:
    """Grain that runs at a slant through the leaves, so that the figure lies elsewhere on each."""
    x0, x1 = 28.0, 112.0
    for k in range(5):
        y = 38.0 - 7.0 * k
        polygon(d, [(x0, y), (x1, y), (x1, y + 6.0), (x0, y + 6.0)], OVER if k % 2 else UP)
        say(d, (x0 - 3.0, y + 2.0), f"leaf {k + 1}", "end")
    for x in (48.0, 62.0, 76.0):
        run(d, [(x, 44.0), (x + 34.0, 10.0)], MEDIUM, GRAIN)
    run(d, [(62.0, 44.0), (62.0, 6.0)], THIN, RED, DASHED)
    name(d, (73.0, 33.0), (119.0, 33.0), "grain, seen from the edge")
    name(d, (94.0, 12.0), (119.0, 11.0), "the same figure, further on")
    say(d, (62.0, 2.0), "straight down", colour=RED)


DRAWINGS: dict[str, tuple[float, Callable[[Drawing], None]]] = {
    "flitch": (57.0, flitch), "sides": (44.0, sides), "leaf": (96.0, on_the_leaf),
    "turns": (64.0, turns), "ways": (88.0, ways), "gap": (74.0, gap), "layers": (55.0, layers),
    "border": (60.0, round_the_field), "stack": (52.0, stack), "taping": (53.0, taped),
    "wander": (48.0, wander),
}  # fmt: skip
"""By their names: how high, mm, and what draws them."""


if __name__ == "__main__":
    main()

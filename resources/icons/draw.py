# SPDX-License-Identifier: LGPL-2.1-or-later
"""Draws the pictures of all matches and tops that the match's panel shows beside their names.

`/usr/bin/python3 resources/icons/draw.py` writes resources/icons/matches/*.svg. Each match is laid
by the core itself and drawn twice: plainly, for a line of a list (24 px), and with the leaves'
numbers (48 px and more, `-large`). A turned leaf is darker; lines in a leaf are its figure,
lopsided so that it shows how the leaf is put. Needs no host.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import NamedTuple

from shapely.geometry import LineString, Polygon

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from veneerwb.core import Layout, Motion, Stock, Top, end, quarters, radial, rings, side
from veneerwb.core.layout import Piece
from veneerwb.core.matches.radial import Radial

OUT = Path(__file__).resolve().parent / "matches"
UP, OVER, LINE, GRAIN = "#e8bd85", "#c08448", "#4a2c12", "#7a4a1e"
SIZE, EDGE = 48.0, 1.0
"""Of a drawing and of the air round it, in its own units."""
TOP = 600.0
SQUARE, ROUND = Top.square(TOP), Top.round(TOP)
LEAVES = Stock(640.0, 1300.0, 24, 0.6)

Lines = list[list[tuple[float, float]]]
Place = Callable[[Sequence[float]], tuple[float, float]]
"""Where on a drawing a point of the top lies."""
ARCH = [
    [(-0.40, 0.0), (-0.36, 0.45), (-0.12, 0.85), (0.10, 0.45), (0.14, 0.0)],
    [(-0.24, 0.0), (-0.20, 0.30), (-0.12, 0.45), (-0.03, 0.30), (0.0, 0.0)],
    [(0.32, 0.0), (0.32, 1.0)],
]
ONE_ARCH = [[(-0.38, 0.04), (-0.30, 0.50), (-0.02, 0.85), (0.22, 0.50), (0.28, 0.04)]]
SLANT = [[(-0.28, 0.08), (0.28, 0.92)]]
"""Figures of a strip: across from -0.5 to 0.5, along from 0 to 1."""


class Drawn(NamedTuple):
    """A drawing: a layout, the figure of each leaf (its lines, or how many lines of grain), and the
    size of its numbers (0: none)."""

    layout: Layout
    figure: Lines | int = 0
    number: float = 0.0


def drawings() -> dict[str, Drawn]:
    """All drawings by the names of their files."""
    return {**_sides(), **_ends(), **_quarters(), **_rings(), **_tops()}


def _side(turn: str, face: str, count: int | None, width: float | None = None) -> Layout:
    return side(LEAVES, SQUARE, turn, face, count, width, seed=2)


def _sides() -> dict[str, Drawn]:
    found = {}
    for turn, few, many in (("book", 2, 4), ("slip", 2, 4), ("reverse slip", 2, 4)):
        found[turn] = Drawn(_side(turn, "balance", few), ONE_ARCH)
        found[f"{turn}-large"] = Drawn(_side(turn, "balance", many), ONE_ARCH, 8.5)
    found["random"] = Drawn(_side("random", "balance", 3), 0, 13.0)
    found["random-large"] = Drawn(_side("random", "balance", 4), ONE_ARCH, 8.5)
    faces = (
        ("balance", "book", 3, 5, None), ("running", "book", None, None, 0.38 * TOP),
        ("centre balance", "book", 4, 6, None), ("slip-centre-book", "slip", 4, 6, None),
    )  # fmt: skip
    for face, turn, few, many, width in faces:
        found[face] = Drawn(_side(turn, face, few, width), SLANT)
        found[f"{face}-large"] = Drawn(_side(turn, face, many, width), SLANT, 7.5)
    return found


def _ends() -> dict[str, Drawn]:
    found = {}
    for kind in ("architectural", "panel", "continuous"):
        found[kind] = Drawn(end(LEAVES, SQUARE, kind, 4), 0, 17.0)
        found[f"{kind}-large"] = Drawn(end(LEAVES, SQUARE, kind, 8), ONE_ARCH, 8.5)
    return found


def _quarters() -> dict[str, Drawn]:
    found = {
        "centre and butt": Drawn(quarters(LEAVES, SQUARE, "centre and butt"), ONE_ARCH),
        "centre and butt-large": Drawn(quarters(LEAVES, SQUARE, "centre and butt"), ARCH, 9.0),
    }
    for kind in ("box", "reverse box", "diamond", "reverse diamond"):
        laid = quarters(LEAVES, SQUARE, kind)
        found[kind] = Drawn(laid, 5)
        found[f"{kind}-large"] = Drawn(laid, 7, 9.0)
    for name, strip, number in (("herringbone", 170.0, 0.0), ("herringbone-large", 150.0, 8.0)):
        found[name] = Drawn(quarters(LEAVES, SQUARE, "herringbone", strip=strip), 0, number)
    return found


def _rings() -> dict[str, Drawn]:
    centre = (0.14 * TOP, 0.12 * TOP)
    found = {}
    for large, ways, number in (("", 6, 0.0), ("-large", 8, 8.0)):
        lines = ONE_ARCH if large else 0
        wedges = {
            "radial book": (radial(LEAVES, ROUND, ways), lines, number),
            "radial slip": (radial(LEAVES, ROUND, ways, "slip"), ONE_ARCH, number),
            "radial round a disc": (radial(LEAVES, ROUND, ways, disc=0.36 * TOP), 0, number),
            "radial off the middle": (radial(LEAVES, ROUND, ways, centre=centre), 0, number),
            "radial in strips": (radial(LEAVES, ROUND, 4, strips=3), 0, 0.8 * number),
            "rings": (
                rings(LEAVES, ROUND, Radial(4), Radial(8, first=5), 0.5 * TOP), 0, 0.8 * number
            ),
        }
        found |= {f"{name}{large}": Drawn(*drawn) for name, drawn in wedges.items()}
    return found


def _tops() -> dict[str, Drawn]:
    odd = Polygon(
        [(-300, -180), (220, -230), (300, 40), (120, 230), (-80, 130), (-280, 200)],
        [[(-60, -60), (60, -60), (60, 20), (-60, 20)]],
    )
    tops = {
        "Round": ROUND, "Polygon": Top.polygon(8, TOP), "Oval": Top.oval(TOP, 0.62 * TOP),
        "Square": SQUARE, "Rectangle": Top.rectangle(TOP, 0.6 * TOP),
        "Racetrack": Top.racetrack(TOP, 0.5 * TOP), "Boat": Top.boat(TOP, 0.5 * TOP, 0.28 * TOP),
        "Outline": Top.outline(odd),
    }  # fmt: skip
    plain = Stock(2000.0, 2000.0, 1, 0.6)
    return {f"top {key}": Drawn(side(plain, top, "slip", count=1)) for key, top in tops.items()}


# --- how one is drawn ---------------------------------------------------------------------------


def svg(title: str, drawn: Drawn) -> str:
    """The text of a drawing."""
    x0, y0, x1, y1 = drawn.layout.top.polygon_mm.bounds
    scale = (SIZE - 2.0 * EDGE) / max(x1 - x0, y1 - y0)
    middle = ((x0 + x1) / 2.0, (y0 + y1) / 2.0)

    def on(point: Sequence[float]) -> tuple[float, float]:
        x, y = ((value - centre) * scale for value, centre in zip(point, middle))
        return SIZE / 2.0 + x, SIZE / 2.0 - y

    pieces = drawn.layout.pieces
    body = [_filled(piece, on) for piece in pieces]
    for piece in pieces:
        body += [_path(line, on, GRAIN, 1.4) for line in _figure(piece, drawn)]
    for piece in pieces if drawn.number else ():
        body += _number(piece, on, scale, drawn.number)
    return "\n".join([
        f'<svg xmlns="http://www.w3.org/2000/svg" width="96" height="96" '
        f'viewBox="0 0 {SIZE:g} {SIZE:g}">',
        f"  <title>{title}</title>", *(f"  {line}" for line in body), "</svg>", "",
    ])  # fmt: skip


def _filled(piece: Piece, on: Place) -> str:
    ring = piece.outline.simplify(1.0)
    loops = [ring.exterior, *ring.interiors]
    data = " ".join(f"M {_points(list(loop.coords)[:-1], on)} Z" for loop in loops)
    fill = OVER if piece.turned else UP
    return (f'<path d="{data}" fill="{fill}" fill-rule="evenodd" stroke="{LINE}" '
            'stroke-width="1.5" stroke-linejoin="round"/>')  # fmt: skip


def _points(points: Sequence[Sequence[float]], on: Place) -> str:
    return " L ".join("{:.1f} {:.1f}".format(*on(point)) for point in points)


def _path(line: LineString, on: Place, colour: str, width: float) -> str:
    return (f'<path d="M {_points(line.coords, on)}" fill="none" stroke="{colour}" '
            f'stroke-width="{width}" stroke-linecap="round" stroke-linejoin="round"/>')  # fmt: skip


def _figure(piece: Piece, drawn: Drawn) -> list[LineString]:
    """The lines in a piece: those of a leaf at the place where the piece is cut from it."""
    x0, y0, x1, y1 = _span(drawn.layout, piece)
    width, length = x1 - x0, y1 - y0
    if isinstance(drawn.figure, int):
        step = width / max(drawn.figure, 1)
        lines = [[(x0 + (k + 0.5) * step, y0), (x0 + (k + 0.5) * step, y1)]
                 for k in range(drawn.figure)]  # fmt: skip
    else:
        lines = [
            [((x0 + x1) / 2.0 + u * width, y0 + v * length) for u, v in line]
            for line in map(_rounded, drawn.figure)
        ]
    back: Motion = piece.onto_bundle.inverse()
    room = piece.outline.buffer(-8.0)
    found = []
    for line in lines:
        cut = LineString(back.apply(line)).intersection(room)
        found += [one for one in getattr(cut, "geoms", [cut]) if one.length > 12.0]
    return found


def _span(layout: Layout, piece: Piece) -> tuple[float, float, float, float]:
    """Where on the bundle the pieces lie that are cut where this one is, so that the same figure is
    at the same place in all."""
    bounds = [
        Polygon(one.onto_bundle.apply(list(one.outline.exterior.coords))).bounds
        for one in layout.pieces
        if one.cut == piece.cut
    ]
    low, high = zip(*((b[:2], b[2:]) for b in bounds))
    return (*map(min, zip(*low)), *map(max, zip(*high)))


def _rounded(line: Sequence[tuple[float, float]]) -> list[tuple[float, float]]:
    """A line with its corners cut twice."""
    points = list(line)
    for _ in range(2 if len(points) > 2 else 0):
        cut = [points[0]]
        for (ax, ay), (bx, by) in zip(points, points[1:]):
            cut += [(0.75 * ax + 0.25 * bx, 0.75 * ay + 0.25 * by),
                    (0.25 * ax + 0.75 * bx, 0.25 * ay + 0.75 * by)]  # fmt: skip
        points = [*cut, points[-1]]
    return points


def _number(piece: Piece, on: Place, scale: float, size: float) -> list[str]:
    """The leaf's number in a rim of the piece's colour; nothing where it has no room."""
    middle = piece.outline.centroid
    if not piece.outline.buffer(-0.34 * size / scale).contains(middle):
        return []
    x, y = on(middle.coords[0])
    place = (f'<text x="{x:.1f}" y="{y + 0.36 * size:.1f}" font-family="sans-serif" '
             f'font-weight="bold" font-size="{size:g}" text-anchor="middle"')  # fmt: skip
    fill = OVER if piece.turned else UP
    rim = f'fill="{fill}" stroke="{fill}" stroke-width="2.4" stroke-linejoin="round"'
    return [f"{place} {looks}>{piece.leaf}</text>" for looks in (rim, 'fill="#1d1008"')]


def main() -> None:
    OUT.mkdir(exist_ok=True)
    for name, drawn in drawings().items():
        title = name.removesuffix("-large").removeprefix("top ")
        (OUT / f"{name.replace(' ', '-').lower()}.svg").write_text(svg(title, drawn))


if __name__ == "__main__":
    main()

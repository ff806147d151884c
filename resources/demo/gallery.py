# SPDX-License-Identifier: LGPL-2.1-or-later
"""All matches, and a radial match on all tops, as two sheets of pictures from generated bundles.

Runs inside FreeCAD without a window (`bash resources/demo/run.sh gallery`) and writes
out/gallery.png and out/tops.png. Numbers are those of the leaves, underlined where one is turned
over. The README's picture is a copy of out/gallery.png.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import NamedTuple

import numpy as np
from PIL import Image
from shapely.geometry import Point, Polygon, box
from shapely.ops import polylabel

from veneerwb.core import (
    Border,
    Bundle,
    Layout,
    Leaf,
    Motion,
    PanelPart,
    Side,
    Stringing,
    Top,
    VeneerError,
    radial,
    sawn_bundle,
)
from veneerwb.core.buildup import BuildUp, Core, Show
from veneerwb.core.files import write_beside
from veneerwb.core.layout import Piece
from veneerwb.core.matches.kinds import MATCHES
from veneerwb.core.photos.reading import Photo
from veneerwb.paint import ink, picture
from veneerwb.paint.qt import QtCore, QtGui, can_write_text, to_pixels

OUT = Path(__file__).resolve().parents[2] / "out"
WORDS, AIR = 36, 11
"""Pixels: the height of the words beneath a picture, and the air round a cell."""
NUMBER = 11
"""Pixels of the numbers' letters."""
GROUND = (246, 245, 242)
FINE = 2
"""Pixels painted for each that is kept, either way."""
COLOURS = 256
"""Of the sheets: woods have few, and a picture for a page should load at once."""
TOP = 600.0
"""mm: the tops of the first sheet."""
THICKNESS = 1.5
"""mm: sawn leaves, which change from one to the next so that it shows on small pictures."""
LEGEND = (
    "Numbers are those of the leaves, in the order in which they were sliced; an underlined one is "
    "turned over. Names differ by region: go by the pictures."
)


class Grid(NamedTuple):
    """A sheet of so many pictures across, each of so many pixels."""

    across: int
    width: int
    height: int

    def corner(self, k: int) -> tuple[float, float]:
        """The upper left corner of a cell."""
        row, column = divmod(k, self.across)
        return AIR + column * (self.width + AIR), AIR + row * (self.height + WORDS + AIR)

    def size(self, count: int) -> tuple[int, int]:
        """Pixels of a sheet of so many cells."""
        x, y = self.corner(-(-count // self.across) * self.across)
        return x + self.across * (self.width + AIR), y


class Shown(NamedTuple):
    """A cell of a sheet: the layouts that make the picture, the later upon the earlier, and the
    words beneath."""

    layouts: tuple[Layout, ...]
    words: str


def main() -> None:
    """Draws both sheets."""
    OUT.mkdir(exist_ok=True)
    if not can_write_text():
        sys.exit("Names cannot be written in this session, so there is no gallery.")
    sheets = (
        ("gallery", matches(), Grid(5, 200, 200), LEGEND),
        ("tops", tops(), Grid(4, 252, 168), ""),
    )
    for name, cells, grid, legend in sheets:
        write(OUT / f"{name}.png", sheet(cells, grid, legend))
        print(f"{name}: {len(cells)} pictures, out/{name}.png")


# --- what is shown ------------------------------------------------------------------------------


def matches() -> list[Shown]:
    """A sample of every match: radial ones on round tops, the others on square ones."""
    strips = slit(sawn(8, 420, 720, "cathedral", 21), 118.0, 230.0)
    wedges = sawn(24, 240, 420, "crotch", 4)
    fields = sawn(4, 680, 620, "stripe", 5)
    by_key = {
        "centre and butt": sawn(4, 310, 310, "crotch", 4),
        "herringbone": sawn(14, 160, 660, "stripe", 5),
    }
    by_family = {
        "side": (strips, Top.square(TOP)), "end": (strips, Top.square(TOP)),
        "quarters": (fields, Top.square(TOP)), "radial": (wedges, Top.round(TOP)),
        "rings": (wedges, Top.round(TOP)),
    }  # fmt: skip
    found = []
    for match in MATCHES:
        bundle, top = by_family[match.family]
        layout = match.sample(by_key.get(match.key, bundle), top)
        found.append(Shown((layout,), match.title))
    return found


def tops() -> list[Shown]:
    """A radial match on each kind of top, and a boat shape with a border and a stringing line."""
    bundle = sawn(12, 330, 620, "crotch", 6)
    cable = Polygon(box(-400, -260, 400, 260).exterior.coords, [_rounded(90, 130, 250, 190)])
    kinds = (
        ("Oval", Top.oval(900, 600), 12),
        ("Square", Top.square(640), 8),
        ("Rectangle", Top.rectangle(900, 560), 12),
        ("Polygon of six sides", Top.polygon(6, 640), 12),
        ("Racetrack", Top.racetrack(900, 500), 12),
        ("Boat shape", Top.boat(1000, 560, 340), 12),
        ("Any outline, with an opening for cables", Top.outline(cable), 12),
    )
    plain = [Shown((radial(bundle, top, ways),), words) for words, top, ways in kinds]
    return [*plain, bordered(bundle, Top.boat(1000, 560, 340))]


def bordered(bundle: Bundle, top: Top) -> Shown:
    """The field of a radial match within a light line and a border, its grain along the edge."""
    build = BuildUp(
        Show(bundle.thickness), Core(18.0), border=Border(55.0, kind="following", segments=4),
        stringing=Stringing(6.0),
    )  # fmt: skip
    parts = build.parts(top)
    dark, light = sawn(1, 120, 620, "cathedral", 9), sawn(1, 120, 620, "plain", 3)
    border = strips_of([part for part in parts if part.item == "border"], dark, top)
    line = strips_of([part for part in parts if part.item == "stringing line"], light, top)
    field = radial(bundle, build.field(top), 12)
    return Shown((border, line, field), "Boat shape with border and line")


def strips_of(parts: Sequence[PanelPart], bundle: Bundle, top: Top) -> Layout:
    """Parts of a panel, each from the middle of the same leaf, the grain along it."""
    width, length = bundle.size
    pieces = []
    for position, part in enumerate(parts, 1):
        middle = part.region.polygon.centroid
        grain = part.grain if part.grain is not None else 0.0
        onto = Motion(90.0 - grain) @ Motion(dx=-middle.x, dy=-middle.y)
        onto = Motion(dx=width / 2.0, dy=length / 2.0) @ onto
        edge = part.region.outer
        pieces.append(Piece(position, 1, False, edge, edge, onto, part.region.holes))
    return Layout(tuple(pieces), (), (), top, bundle)


def sawn(leaves: int, width: float, length: float, figure: str, seed: int) -> Bundle:
    """Small leaves without knots."""
    return sawn_bundle(
        leaves=leaves, width=width, length=length, thickness=THICKNESS, mm_per_px=1.25,
        figure=figure, seed=seed, knots=0,
    )  # fmt: skip


def slit(bundle: Bundle, left: float, width: float) -> Bundle:
    """What is left of leaves slit along the grain: with the heart off their middle, they do not
    look alike both ways up."""
    leaves = []
    for leaf in bundle.leaves:
        first, last = (round(x / leaf.mm_per_px) for x in (left, left + width))
        photo = Photo.of(np.ascontiguousarray(leaf.photo[:, first:last]), leaf.mm_per_px)
        leaves.append(Leaf(leaf.number, Side(photo)))
    return Bundle(tuple(leaves), bundle.thickness)


def _rounded(x0: float, y0: float, x1: float, y1: float) -> list[tuple[float, float]]:
    """An opening with round corners."""
    return list(box(x0 + 20, y0 + 20, x1 - 20, y1 - 20).buffer(20.0).exterior.coords)


# --- how it is drawn ----------------------------------------------------------------------------


def sheet(cells: Sequence[Shown], grid: Grid, legend: str) -> np.ndarray:
    """The sheet, rows x columns x RGBA: equal cells row by row, a legend in what is left of the
    last row."""
    size = grid.size(len(cells))

    def draw(painter: QtGui.QPainter) -> None:
        ink.begin(painter, size)
        painter.fillRect(QtCore.QRectF(0, 0, *size), ink.colour(GROUND))
        for k, cell in enumerate(cells):
            draw_cell(painter, cell, grid, *grid.corner(k))
        if legend:
            x, y = grid.corner(len(cells))
            painter.setFont(ink.font(13))
            painter.setPen(ink.colour(ink.FAINT))
            ink.write(painter, legend, (x, y, size[0] - AIR - x, grid.height), "left", wrap=True)

    return to_pixels(ink.image_of(size, draw))


def draw_cell(painter: QtGui.QPainter, cell: Shown, grid: Grid, x: float, y: float) -> None:
    """The picture with its leaves' numbers, and the words beneath."""
    x0, y0, x1, y1 = cell.layouts[0].top.polygon_mm.bounds
    scale = 0.5 * min(grid.width / max(-x0, x1), grid.height / max(-y0, y1))
    middle = QtCore.QPointF(x + grid.width / 2.0, y + grid.height / 2.0)
    for layout in cell.layouts:
        image = painted(layout, scale)
        painter.drawImage(middle - QtCore.QPointF(image.width() / 2, image.height() / 2), image)
    for piece in cell.layouts[-1].pieces:
        place = widest(piece.outline, 0.7 * NUMBER / scale)
        at = QtCore.QPointF(middle.x() + scale * place.x, middle.y() - scale * place.y)
        draw_number(painter, str(piece.leaf), piece.turned, at)
    painter.setFont(ink.font(13))
    painter.setPen(ink.colour(ink.INK))
    beneath = (x, y + grid.height + 5, grid.width, WORDS - 5)
    ink.write(painter, cell.words, beneath, "top", wrap=True)


def painted(layout: Layout, scale: float) -> QtGui.QImage:
    """A layout's true picture at so many pixels per mm, its seams drawn fine."""
    pixels = np.ascontiguousarray(picture(layout, px_per_mm=FINE * scale, seams=True))
    size = tuple(max(1, round(n / FINE)) for n in pixels.shape[1::-1])
    small = np.asarray(Image.fromarray(pixels).resize(size, Image.Resampling.BOX))
    small = np.ascontiguousarray(small)
    image = QtGui.QImage(small.data, *size, 4 * size[0], QtGui.QImage.Format_RGBA8888)
    return image.copy()  # which keeps pixels of its own


def widest(outline: Polygon, room: float) -> Point:
    """Where a piece's number stands: in its middle, or where there is not so much room (mm) where
    it is widest."""
    middle = outline.centroid
    if outline.buffer(-room).contains(middle):
        return middle
    return polylabel(outline.simplify(1.0), 1.0)


def draw_number(painter: QtGui.QPainter, text: str, turned: bool, at: QtCore.QPointF) -> None:
    """A number in a light rim, so that it reads on any wood."""
    font = ink.font(NUMBER)
    font.setUnderline(turned)
    path = QtGui.QPainterPath()
    path.addText(QtCore.QPointF(0.0, 0.0), font, text)
    path.translate(at - path.boundingRect().center())
    painter.strokePath(path, QtGui.QPen(QtGui.QColor(255, 255, 255, 200), 2.5))
    painter.fillPath(path, ink.colour(ink.INK))


def write(path: Path, pixels: np.ndarray) -> None:
    """A PNG of few colours."""
    image = Image.fromarray(np.ascontiguousarray(pixels[:, :, :3]))
    image = image.quantize(COLOURS, dither=Image.Dither.NONE)
    write_beside(path, lambda stream: image.save(stream, format="PNG", optimize=True))


if __name__ == "__main__":
    try:
        main()
    except VeneerError as refused:
        sys.exit(str(refused))

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The leaves' pictures in the 3-D view: Coin nodes of our own, one polygon a piece.

No host draws a picture on a face, so a layout is drawn as textured polygons just over the show
faces, with its seams as lines. Photographs are shrunk to a common budget of texture memory.
"""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator
from concurrent.futures import ThreadPoolExecutor
from functools import lru_cache
from typing import Any
from weakref import WeakKeyDictionary

import FreeCAD
import numpy as np
from pivy import coin

from veneerwb.core.layout import Layout, Piece
from veneerwb.core.leaf import Bundle, Leaves, Side
from veneerwb.core.outlines.inside import number_places, room_at
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import Point
from veneerwb.gui.facets import facets
from veneerwb.gui.plain import BARE
from veneerwb.host import settings
from veneerwb.paint.label import SMALL, label

translate = FreeCAD.Qt.translate
HERE = "VeneerScene"
BUDGET = 96_000_000
"""Bytes of all textures of one layout together: what a modest graphics card holds with ease."""
LONGEST_SIDE = 2048
MOST_THREADS = 4
"""That decode photographs at once."""
LIFT = 0.02
"""mm that the pictures lie over the show faces, and the seams over the pictures."""


Rgb = tuple[float, float, float]
INK, PAPER = (0.08, 0.08, 0.08), (1.0, 1.0, 1.0)
NUMBER_SHARE = 0.05
"""Most height of a number as a share of the top's reach; less where a wedge is narrow."""


def drawn(
    layout: Layout, thickness: float, seams: bool = True, numbers: bool = True
) -> coin.SoSeparator:
    """The nodes that draw a layout in the plane z = thickness (top mm).

    `numbers` are the positions, underlined where the leaf is turned over, as on the printed sheet;
    where not every position has the leaf of its own number, the leaves stand below them.
    """
    root = coin.SoSeparator()
    light = coin.SoLightModel()
    light.model = coin.SoLightModel.BASE_COLOR
    root.addChild(light)
    root.addChild(material(PAPER))
    hints = coin.SoShapeHints()
    hints.vertexOrdering = coin.SoShapeHints.COUNTERCLOCKWISE
    hints.faceType = coin.SoShapeHints.CONVEX
    root.addChild(hints)
    for node in _pieces(layout, thickness + LIFT):
        root.addChild(node)
    if seams:
        root.addChild(_seams(layout, thickness + 2 * LIFT))
    if numbers:
        named = any(piece.leaf != piece.position for piece in layout.pieces)
        most = NUMBER_SHARE * layout.top.reach
        for piece, place in zip(layout.pieces, number_places(layout)):
            root.addChild(_number(piece, place, most, thickness + 3 * LIFT, named))
    return root


def material(rgb: Rgb) -> coin.SoMaterial:
    node = coin.SoMaterial()
    node.diffuseColor = rgb
    return node


def _pieces(layout: Layout, z: float) -> Iterable[coin.SoSeparator]:
    bundle = layout.bundle
    if not isinstance(bundle, Bundle):
        for piece in layout.pieces:
            yield _face(piece, z, [material(BARE)])
        return
    share = BUDGET // len(_photos(bundle))
    sides = [bundle.leaf(piece.leaf).side(piece.turned) for piece in layout.pieces]
    _make({id(side.image): side.image for side in sides}.values(), share)
    for piece, side in zip(layout.pieces, sides):
        yield _piece(piece, side, texture_of(side.image, share), z)


def _photos(bundle: Bundle) -> list[Photo]:
    """All photos of a bundle, each once. Shares of memory hang on them and not on the pieces, so
    that a change of the ways makes no texture anew."""
    sides = [side for leaf in bundle.leaves for side in (leaf.face, leaf.side(True))]
    return list({id(side.image): side.image for side in sides}.values())


def textures(bundle: Leaves) -> Iterator[coin.SoTexture2]:
    """Makes the textures of a bundle one by one, used or not, to have them at hand."""
    photos = _photos(bundle) if isinstance(bundle, Bundle) else []
    for photo in photos:
        yield texture_of(photo, BUDGET // len(photos))


def _piece(piece: Piece, side: Side, texture: coin.SoTexture2, z: float) -> coin.SoSeparator:
    corners, indices = facets(piece.outline)
    width, length = side.image.size
    on_photo = (side.view @ piece.onto_bundle).apply(corners) / (width, length)
    on_texture = coin.SoTextureCoordinate2()
    on_texture.point.setValues(0, len(corners), on_photo.tolist())
    return _face(piece, z, [texture, on_texture], (corners, indices))


def _face(
    piece: Piece, z: float, dress: list[Any], shape: tuple[np.ndarray, list[int]] | None = None
) -> coin.SoSeparator:
    """The piece's polygon at height z, dressed by the nodes given."""
    corners, indices = shape or facets(piece.outline)
    node = coin.SoSeparator()
    node.setName(f"piece_{piece.position}")
    face = coin.SoIndexedFaceSet()
    face.coordIndex.setValues(0, len(indices), indices)
    for child in (*dress, points_at(corners.tolist(), z), face):
        node.addChild(child)
    return node


def points_at(points: Iterable[Any], z: float) -> coin.SoCoordinate3:
    places = coin.SoCoordinate3()
    raised = [(x, y, z) for x, y in points]
    places.point.setValues(0, len(raised), raised)
    return places


_kept: WeakKeyDictionary[Photo, tuple[int, coin.SoTexture2]] = WeakKeyDictionary()


def texture_of(photo: Photo, budget: int) -> coin.SoTexture2:
    """The texture of a photo, made once for as long as the photo is in use."""
    found = _kept.get(photo)
    if found is None or found[0] != budget:
        found = _kept[photo] = (budget, _texture(photo, budget))
    return found[1]


def _make(photos: Iterable[Photo], budget: int) -> None:
    """Makes the textures of photos that have none yet, several photos being decoded at once."""
    lacking = [photo for photo in photos if _kept.get(photo, (0,))[0] != budget]
    if len(lacking) > 1:
        with ThreadPoolExecutor(min(MOST_THREADS, os.cpu_count() or 1)) as pool:
            ready = pool.map(_shrunk, lacking, [budget] * len(lacking))
            for photo, pixels in zip(lacking, ready):
                _kept[photo] = (budget, as_texture(pixels))


def _texture(photo: Photo, budget: int) -> coin.SoTexture2:
    """The photo as a texture of at most `budget` bytes."""
    return as_texture(_shrunk(photo, budget))


def _shrunk(photo: Photo, budget: int) -> np.ndarray:
    """The pixels of a texture: the photo's own, or shrunk to sides that are powers of two, or Coin
    would stretch them once more. The coarser side is as fine as the budget allows."""
    rows, columns = photo.shape
    if max(rows, columns) <= LONGEST_SIDE and 3 * rows * columns <= budget:
        return photo.pixels
    sides = [2**k for k in range(LONGEST_SIDE.bit_length())]
    fitting = [
        (min(across / columns, along / rows), across + along, across, along)
        for across in sides for along in sides
        if 3 * across * along <= budget and across < 2 * columns and along < 2 * rows
    ]  # fmt: skip
    return photo.small(*max(fitting, default=(0.0, 0, 1, 1))[2:])


def as_texture(pixels: np.ndarray) -> coin.SoTexture2:
    """uint8 rows x columns x 3 as a texture; off it its edge pixel is repeated."""
    rows, columns = pixels.shape[:2]
    node = coin.SoTexture2()
    upwards = pixels[::-1].copy().tobytes()  # Coin's first row is the lowest; quicker than without
    node.image.setValue(coin.SbVec2s(columns, rows), 3, upwards)
    node.wrapS = node.wrapT = coin.SoTexture2.CLAMP
    node.model = coin.SoTexture2.MODULATE
    return node


def outlined(pieces: Iterable[Piece], thickness: float) -> coin.SoSeparator:
    """Bright outlines of chosen pieces, over all else."""
    node = coin.SoSeparator()
    for piece in pieces:
        points, counts = _rings(piece.outline)
        node.addChild(chosen_lines(points, counts, thickness + 5 * LIFT))
    return node


def chosen_lines(points: list[Any], counts: list[int], z: float) -> coin.SoSeparator:
    """The outlines of what is selected."""
    return lines_at(points, counts, z, settings.shade("ChosenColour"), 4.0)


def _seams(layout: Layout, z: float) -> coin.SoSeparator:
    lines = [[*seam.line.coords] for seam in layout.seams]
    points, counts = _rings(layout.top.polygon_mm)
    seams = [point for line in lines for point in line]
    counts = [*map(len, lines), *counts]
    return lines_at([*seams, *points], counts, z, settings.shade("SeamColour"))


def _rings(polygon: Any) -> tuple[list[Any], list[int]]:
    """The points of a polygon's edge and openings, ring after ring, and how many each has."""
    rings = [[*ring.coords] for ring in (polygon.exterior, *polygon.interiors)]
    return [point for ring in rings for point in ring], [len(ring) for ring in rings]


def lines_at(
    points: list[Any], counts: list[int], z: float, colour: Rgb = INK, width: float = 1.5
) -> coin.SoSeparator:
    """Lines of so many points each, which the mouse passes through."""
    node = coin.SoSeparator()
    style = coin.SoDrawStyle()
    style.lineWidth = width
    lines = coin.SoLineSet()
    lines.numVertices.setValues(0, len(counts), counts)
    for child in (_unpickable(), material(colour), style, points_at(points, z), lines):
        node.addChild(child)
    return node


def _unpickable() -> coin.SoPickStyle:
    pick = coin.SoPickStyle()
    pick.style = coin.SoPickStyle.UNPICKABLE
    return pick


def _number(piece: Piece, place: Point, most: float, z: float, named: bool) -> coin.SoSeparator:
    """The position on a light tag, with its leaf if that is `named`, as large as the piece has room
    for."""
    below = translate(HERE, "leaf {number}").format(number=piece.leaf) if named else ""
    high = min(most * (1.0 + SMALL if named else 1.0), room_at(piece, place)) * 0.65
    return tag(str(piece.position), place, high, z, piece.turned, below)


def tag(
    text: str, place: Point, high: float, z: float, underlined: bool = False, below: str = ""
) -> coin.SoSeparator:
    """A text on a light tag about a place, a smaller one below it, `high` mm from its middle up,
    which the mouse passes through."""
    texture, shape = _tag(text, underlined, below, settings.colour("NumberColour"))
    (x, y), wide = place, high * shape
    around = [(0, 0), (1, 0), (1, 1), (0, 1)]
    corners = [(x + (2 * u - 1) * wide, y + (2 * v - 1) * high) for u, v in around]
    node, on_texture, face = (
        coin.SoSeparator(), coin.SoTextureCoordinate2(), coin.SoIndexedFaceSet(),
    )  # fmt: skip
    on_texture.point.setValues(0, 4, around)
    face.coordIndex.setValues(0, 5, [0, 1, 2, 3, -1])
    for child in (_unpickable(), texture, on_texture, points_at(corners, z), face):
        node.addChild(child)
    return node


@lru_cache(maxsize=256)
def _tag(
    text: str, underlined: bool, below: str, rgb: settings.Rgb
) -> tuple[coin.SoTexture2, float]:
    """A tag's texture, and its width divided by its height."""
    pixels = label(text, underlined, below, rgb)
    return as_texture(pixels), pixels.shape[1] / pixels.shape[0]


def position_picked(path: Any) -> int:
    """The position of the piece on a picked path; 0 if there is none."""
    for k in range(path.getLength() - 1, -1, -1):
        name = path.getNode(k).getName().getString()
        if name.startswith("piece_"):
            return int(name.removeprefix("piece_"))
    return 0

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The leaves' pictures in the 3-D view: Coin nodes of our own, one polygon a piece.

No host draws a picture on a face, so a layout is drawn as textured polygons just over the show faces,
with its seams as lines. Photographs are shrunk to a common budget of texture memory.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import Any

import numpy as np
from PIL import Image
from pivy import coin

from veneerwb.core.layout import Layout, Piece
from veneerwb.core.leaf import Bundle, Side
from veneerwb.core.photos import Photo

BUDGET = 96_000_000
"""Bytes of all textures of one layout together: what a modest graphics card holds with ease."""
LONGEST_SIDE = 2048
LIFT = 0.02
"""mm that the pictures lie over the show faces, and the seams over the pictures."""


def drawn(layout: Layout, thickness: float, seams: bool) -> coin.SoSeparator:
    """The nodes that draw a layout in the plane z = thickness (top mm)."""
    root = coin.SoSeparator()
    light = coin.SoLightModel()
    light.model = coin.SoLightModel.BASE_COLOR
    root.addChild(light)
    root.addChild(_white())
    hints = coin.SoShapeHints()
    hints.vertexOrdering = coin.SoShapeHints.COUNTERCLOCKWISE
    hints.faceType = coin.SoShapeHints.CONVEX
    root.addChild(hints)
    if isinstance(layout.bundle, Bundle):
        for node in _pieces(layout, layout.bundle, thickness + LIFT):
            root.addChild(node)
    if seams:
        root.addChild(_seams(layout, thickness + 2 * LIFT))
    return root


def _white() -> coin.SoMaterial:
    material = coin.SoMaterial()
    material.diffuseColor = (1.0, 1.0, 1.0)
    return material


def _pieces(layout: Layout, bundle: Bundle, z: float) -> Iterable[coin.SoSeparator]:
    sides = [bundle.leaf(piece.leaf).side(piece.turned) for piece in layout.pieces]
    photos = {id(side.image): side.image for side in sides}
    textures = {key: _texture(photo, BUDGET // len(photos)) for key, photo in photos.items()}
    for piece, side in zip(layout.pieces, sides):
        yield _piece(piece, side, textures[id(side.image)], z)


def _piece(piece: Piece, side: Side, texture: coin.SoTexture2, z: float) -> coin.SoSeparator:
    corners = np.asarray(piece.outline.exterior.coords)[:-1]
    width, length = side.image.size
    on_photo = (side.view @ piece.onto_bundle).apply(corners) / (width, length)
    node = coin.SoSeparator()
    node.setName(f"piece_{piece.position}")
    places = coin.SoCoordinate3()
    places.point.setValues(0, len(corners), [(x, y, z) for x, y in corners.tolist()])
    on_texture = coin.SoTextureCoordinate2()
    on_texture.point.setValues(0, len(corners), on_photo.tolist())
    face = coin.SoIndexedFaceSet()
    indices = [*range(len(corners)), -1]
    face.coordIndex.setValues(0, len(indices), indices)
    for child in (texture, places, on_texture, face):
        node.addChild(child)
    return node


def _texture(photo: Photo, budget: int) -> coin.SoTexture2:
    """The photo as a texture of at most `budget` bytes; its bottom row is Coin's first. Off the photo
    its edge pixel is repeated."""
    pixels = photo.pixels
    rows, columns = pixels.shape[:2]
    share = min(1.0, LONGEST_SIDE / max(rows, columns), math.sqrt(budget / (3.0 * rows * columns)))
    if share < 1.0:
        size = (max(1, int(columns * share)), max(1, int(rows * share)))
        pixels = np.asarray(Image.fromarray(pixels).resize(size, Image.BOX))
    rows, columns = pixels.shape[:2]
    node = coin.SoTexture2()
    node.image.setValue(coin.SbVec2s(columns, rows), 3, pixels[::-1].tobytes())
    node.wrapS = node.wrapT = coin.SoTexture2.CLAMP
    node.model = coin.SoTexture2.MODULATE
    return node


def _seams(layout: Layout, z: float) -> coin.SoSeparator:
    ends = [point for seam in layout.seams for point in seam.line.coords]
    rim = [*layout.top.polygon_mm.exterior.coords]
    node = coin.SoSeparator()
    colour = coin.SoMaterial()
    colour.diffuseColor = (0.08, 0.08, 0.08)
    style = coin.SoDrawStyle()
    style.lineWidth = 1.0
    places = coin.SoCoordinate3()
    points = [(x, y, z) for x, y in [*ends, *rim]]
    places.point.setValues(0, len(points), points)
    lines = coin.SoLineSet()
    counts = [2] * len(layout.seams) + [len(rim)]
    lines.numVertices.setValues(0, len(counts), counts)
    pick = coin.SoPickStyle()
    pick.style = coin.SoPickStyle.UNPICKABLE
    for child in (pick, colour, style, places, lines):
        node.addChild(child)
    return node


def position_picked(path: Any) -> int:
    """The position of the piece on a picked path; 0 if there is none."""
    for k in range(path.getLength() - 1, -1, -1):
        name = path.getNode(k).getName().getString()
        if name.startswith("piece_"):
            return int(name.removeprefix("piece_"))
    return 0

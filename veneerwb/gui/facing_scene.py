# SPDX-License-Identifier: LGPL-2.1-or-later
"""A leaf on faces in the 3-D view: Coin nodes, drawn in each plane's own coordinates."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import numpy as np
from pivy import coin

from veneerwb.core.facing import Faced, Plane
from veneerwb.gui import scene
from veneerwb.host import faces

FINENESS = 0.05
"""mm: how far the triangles may lie off a curved rim."""
TEXTURE = 3 * scene.LONGEST_SIDE**2
"""Bytes that the texture of a leaf may take."""


def drawn(obj: Any, faced: Faced) -> coin.SoSeparator:
    """The nodes that draw the leaf on the faces of a Facing, a hair over them."""
    root, light = coin.SoSeparator(), coin.SoLightModel()
    light.model = coin.SoLightModel.BASE_COLOR
    photo = faced.side.image
    for node in (light, scene.material(scene.PAPER), scene.texture_of(photo, TEXTURE)):
        root.addChild(node)
    meshes = [face.tessellate(FINENESS) for face in faces.in_world(obj)]
    for plane, here in _planes(root, obj, faced):
        onto_photo = faced.onto_photo(plane)
        for number in plane.numbers:
            points, triangles = meshes[number - 1]
            flat = plane.frame.flat([tuple(point) for point in points])
            here.addChild(_face(number, flat, onto_photo.apply(flat) / photo.size, triangles))
    return root


def outlined(obj: Any, faced: Faced, numbers: set[int]) -> coin.SoSeparator:
    """Bright outlines of the faces of those numbers, of all if there are none."""
    root = coin.SoSeparator()
    for plane, here in _planes(root, obj, faced):
        for number, outline in zip(plane.numbers, plane.outlines):
            if numbers and number not in numbers:
                continue
            for part in getattr(outline, "geoms", [outline]):
                for ring in (part.exterior, *part.interiors):
                    rim = list(ring.coords)
                    lines = scene.chosen_lines(rim, [len(rim)], 5 * scene.LIFT)
                    here.addChild(lines)
    return root


def _planes(
    root: coin.SoSeparator, obj: Any, faced: Faced
) -> Iterator[tuple[Plane, coin.SoSeparator]]:
    """Each plane with a separator under `root` in which its coordinates are x and y."""
    for plane in faced.planes:
        place = faces.place_of(obj, plane.frame)
        here, move = coin.SoSeparator(), coin.SoTransform()
        move.translation = tuple(place.Base)
        move.rotation = tuple(place.Rotation.Q)
        here.addChild(move)
        root.addChild(here)
        yield plane, here


def _face(
    number: int, flat: np.ndarray, on_texture: np.ndarray, triangles: Any
) -> coin.SoSeparator:
    node, corners = coin.SoSeparator(), coin.SoTextureCoordinate2()
    node.setName(f"face_{number}")
    corners.point.setValues(0, len(on_texture), on_texture.tolist())
    mesh = coin.SoIndexedFaceSet()
    indices = [k for triangle in triangles for k in (*triangle, -1)]
    mesh.coordIndex.setValues(0, len(indices), indices)
    for child in (corners, scene.points_at(flat.tolist(), scene.LIFT), mesh):
        node.addChild(child)
    return node


def number_picked(path: Any) -> int:
    """The number of the face on a picked path; 0 if there is none."""
    for k in range(path.getLength() - 1, -1, -1):
        name = path.getNode(k).getName().getString()
        if name.startswith("face_"):
            return int(name.removeprefix("face_"))
    return 0

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A shape in one colour, for a match that cannot be laid: needs none of the core's packages."""

from __future__ import annotations

from typing import Any

from pivy import coin

BARE = (0.85, 0.74, 0.58)
"""Colour of leaves without photographs."""
FINENESS = 0.5
"""mm: how far the triangles may lie off a curved rim."""


def drawn(shape: Any) -> coin.SoSeparator:
    """The nodes that draw `shape` without its placement, which the host adds."""
    here = shape.copy()
    here.Placement = type(here.Placement)()
    points, triangles = here.tessellate(FINENESS)
    node = coin.SoSeparator()
    colour, light = coin.SoMaterial(), coin.SoLightModel()
    colour.diffuseColor = BARE
    light.model = coin.SoLightModel.BASE_COLOR
    places, faces = coin.SoCoordinate3(), coin.SoIndexedFaceSet()
    places.point.setValues(0, len(points), [tuple(point) for point in points])
    indices = [number for triangle in triangles for number in (*triangle, -1)]
    faces.coordIndex.setValues(0, len(indices), indices)
    for child in (light, colour, places, faces):
        node.addChild(child)
    return node

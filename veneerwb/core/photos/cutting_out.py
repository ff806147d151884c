# SPDX-License-Identifier: LGPL-2.1-or-later
"""A leaf's outline and its picture as they are cut out of a photograph: bounds grown, outlines
moved and kept within the picture, both turned."""

from __future__ import annotations

from typing import Any

import numpy as np
from shapely.geometry import Polygon, box

from veneerwb.core.photos.squaring import Box


def valid(area: Any) -> Any:
    """The largest polygon of an outline that may cross itself."""
    parts = [area] if area.is_valid else getattr(area.buffer(0), "geoms", [area.buffer(0)])
    return max(parts, key=lambda part: part.area)


def grown(bounds: Box, margin: float, whole: Box) -> Box:
    """Bounds with a margin, not beyond the whole."""
    left, low, right, high = bounds
    return (
        max(left - margin, whole[0]), max(low - margin, whole[1]),
        min(right + margin, whole[2]), min(high + margin, whole[3]),
    )


def moved(area: Any, dx: float, dy: float) -> Any:
    return Polygon(np.asarray(area.exterior.coords) + (dx, dy))


def turned(
    picture: np.ndarray, outline: Any, scale: float, turn: int, mirrored: bool
) -> tuple[np.ndarray, Any]:
    """The picture and the outline turned by so many degrees (0, 90, 180, 270) counter-clockwise,
    then `mirrored`: flipped left-right."""
    corners = None if outline is None else np.asarray(outline.exterior.coords)
    for _ in range(turn // 90):
        length = picture.shape[0] * scale
        picture = np.rot90(picture)
        if corners is not None:  # counter-clockwise: what was at the top is now at the left
            corners = np.column_stack([length - corners[:, 1], corners[:, 0]])
    if mirrored:
        picture = picture[:, ::-1]
        if corners is not None:
            corners = corners * (-1.0, 1.0) + (picture.shape[1] * scale, 0.0)
    return np.ascontiguousarray(picture), None if corners is None else Polygon(corners)


def within(outline: Any, picture: np.ndarray, scale: float) -> Any:
    """What of the outline lies on the picture; None where that is all of it."""
    if outline is None:
        return None
    rows, columns = picture.shape[:2]
    whole = box(0.0, 0.0, columns * scale, rows * scale)
    kept = outline.intersection(whole)
    kept = max(getattr(kept, "geoms", [kept]), key=lambda part: part.area)
    rounding = 0.5 * (rows + columns) * scale**2  # half a pixel on two of its sides
    return None if whole.area - kept.area <= rounding else kept

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A back's photograph laid on its leaf: the same picture in the leaf's own mm."""

from __future__ import annotations

from typing import Any

import numpy as np
from PIL import Image
from shapely.geometry import box

from veneerwb.core.leaf import Leaf, Side
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY, Motion

FINEST = 0.5
"""mm per pixel: no finer than that is anything compared."""


def tie_of(leaf: Leaf) -> Motion:
    """The motion from leaf mm to mm on the back's photo, as the sides' registers and views have
    it."""
    return leaf.back.view @ leaf.back.register.inverse()


def laid(photo: Photo, tie: Motion, leaf: Leaf, area: Any = None) -> Leaf:
    """A leaf whose face is `photo`, seen where `tie` (leaf mm to mm on the photo) puts it; of it
    only `area` (leaf mm; the leaf's usable area by default) is used, where the photo shows it.
    """
    frame = Motion(tie.angle, tie.dx, tie.dy)
    area = leaf.usable if area is None else area
    shown = frame.inverse().apply_to(box(0.0, 0.0, *photo.size))
    picture = photo if frame == IDENTITY and photo.size == leaf.size else _moved(photo, frame, leaf)
    return Leaf(leaf.number, Side(picture), None, area.intersection(shown))


def _moved(photo: Photo, frame: Motion, leaf: Leaf) -> Photo:
    fewer = max(1, int(FINEST / photo.mm_per_px + 1e-9))
    image = Image.fromarray(photo.pixels).reduce(fewer)
    there = photo.mm_per_px * fewer
    here = max(there, min(FINEST, leaf.mm_per_px))
    columns, rows = (max(2, round(size / here)) for size in leaf.size)
    a, b, d, e = frame.matrix
    # From a pixel here (centres at half-integers, row 0 at the top) to mm, by the frame, to a pixel
    # there; rows run against y.
    length, low = rows * here, photo.shape[0] * photo.mm_per_px
    x0, y0 = frame.apply((0.0, length))
    ratio = here / there
    coefficients = (
        a * ratio, -b * ratio, x0 / there, -d * ratio, e * ratio, (low - y0) / there,
    )
    moved = image.transform((columns, rows), Image.AFFINE, coefficients, Image.BICUBIC)
    return Photo.of(np.asarray(moved), here)

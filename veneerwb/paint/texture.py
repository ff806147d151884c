# SPDX-License-Identifier: LGPL-2.1-or-later
"""Photographs as Qt textures: shrunk by whole factors, kept for the next picture."""

from __future__ import annotations

import weakref
from collections import OrderedDict
from dataclasses import dataclass

import numpy as np
from PIL import Image

from veneerwb.core.photos.reading import Photo
from veneerwb.paint.qt import QtGui, from_pixels

MOST_BYTES = 400_000_000
"""Bytes of textures kept; the longest unused go first."""
BORDER = 2
"""Texture pixels that a piece must stay away from the edge, so that Qt's tiling is never seen."""


@dataclass(frozen=True)
class Texture:
    """A photo shrunk by `factor`: `image` is painted, `pixels` (BGR and 255) is the memory behind
    it."""

    image: QtGui.QImage
    pixels: np.ndarray
    factor: int

    def covering(self, left: int, top: int, right: int, bottom: int) -> tuple[Texture, int, int]:
        """This texture, or a copy of the window asked for (texture pixels) in which the pixels off
        the photo repeat its edge; and the column and row where it begins."""
        rows, columns = self.pixels.shape[:2]
        if (
            left >= BORDER
            and top >= BORDER
            and right <= columns - BORDER
            and bottom <= rows - BORDER
        ):
            return self, 0, 0
        left, top = left - BORDER, top - BORDER
        down = np.clip(np.arange(top, bottom + BORDER), 0, rows - 1)
        across = np.clip(np.arange(left, right + BORDER), 0, columns - 1)
        window = np.ascontiguousarray(self.pixels[down[:, None], across])
        return Texture(from_pixels(window), window, self.factor), left, top


class _Shelf:
    """Textures by photo and factor, bounded by bytes."""

    def __init__(self) -> None:
        self._kept: OrderedDict[tuple[int, int], tuple[weakref.ref, Texture]] = OrderedDict()
        self._bytes = 0

    def get(self, photo: Photo, factor: int) -> Texture:
        key = (id(photo), factor)
        found = self._kept.get(key)
        if found is not None and found[0]() is photo:
            self._kept.move_to_end(key)
            return found[1]
        texture = _made(photo.pixels, factor)
        if found is not None:
            self._bytes -= found[1].pixels.nbytes
        self._kept[key] = (weakref.ref(photo), texture)
        self._kept.move_to_end(key)
        self._bytes += texture.pixels.nbytes
        while self._bytes > MOST_BYTES and len(self._kept) > 1:
            _, (_, dropped) = self._kept.popitem(last=False)
            self._bytes -= dropped.pixels.nbytes
        return texture


def _made(photo: np.ndarray, factor: int) -> Texture:
    image = Image.fromarray(photo)
    if factor > 1:
        image = image.reduce(factor)
    red, green, blue = image.split()
    solid = Image.new("L", image.size, 255)
    pixels = np.array(Image.merge("RGBX", (blue, green, red, solid)))
    return Texture(from_pixels(pixels), pixels, factor)


_shelf = _Shelf()


def texture(photo: Photo, factor: int) -> Texture:
    """The photo as a texture, shrunk `factor` times by averaging."""
    return _shelf.get(photo, factor)

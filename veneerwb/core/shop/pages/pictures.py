# SPDX-License-Identifier: LGPL-2.1-or-later
"""The photographs that pages show, as they are handed over: file bytes and where they lie."""

from __future__ import annotations

import io
from collections.abc import Mapping
from dataclasses import dataclass, field

from PIL import Image

from veneerwb.core.shop.drawing.paper import Box


@dataclass(frozen=True)
class Pictured:
    """A picture (the bytes of a JPEG file) that fills `box`, in mm of what it shows: of the top for
    the finished one, of the leaf for a leaf's."""

    box: Box
    data: bytes

    def laid(self, wide: float) -> Pictured:
        """The picture of a leaf `wide` mm wide that lies on its side, its lower end to the left."""
        stream = io.BytesIO()
        with Image.open(io.BytesIO(self.data)) as image:
            image.transpose(Image.Transpose.ROTATE_270).save(stream, "JPEG", quality=90)
        box = self.box
        return Pictured(Box(box.y, wide - box.right, box.high, box.wide), stream.getvalue())


@dataclass(frozen=True)
class Pictures:
    """The finished top, and leaves by number; what is missing is drawn without a photograph."""

    finished: Pictured | None = None
    leaves: Mapping[int, Pictured] = field(default_factory=dict)

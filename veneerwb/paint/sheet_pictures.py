# SPDX-License-Identifier: LGPL-2.1-or-later
"""The photographs for the pages of a layout, as JPEG files: the finished top, and of every cut the
leaf that lies on top of its stack. No window is needed."""

from __future__ import annotations

import io

import numpy as np
from PIL import Image

from veneerwb.core.layout import Layout
from veneerwb.core.leaf import Bundle
from veneerwb.core.progress import Progress, part, unheard
from veneerwb.core.shop.drawing.paper import Box
from veneerwb.core.shop.pages.pictures import Pictured, Pictures
from veneerwb.core.shop.stack import top_piece
from veneerwb.paint.picture import picture

TOP_PIXELS, LEAF_PIXELS = 1600, 1400
"""Of a picture's longer side at most."""
PALE = 0.45
"""How much white is laid over a leaf's photograph, so that lines on it can be read."""
QUALITY = 88
SHARE = 0.8
"""About what of the work the finished top is."""


def sheet_pictures(layout: Layout, progress: Progress = unheard) -> Pictures | None:
    """The pictures of a layout; None for a stock, which has no photographs."""
    bundle = layout.bundle
    if not isinstance(bundle, Bundle):
        return None
    numbers = {top_piece(layout, cut).leaf for cut in layout.cuts}
    finished = _finished(layout, part(progress, 0.0, SHARE))
    leaves = {}
    for done, number in enumerate(sorted(numbers)):
        progress(SHARE + (1.0 - SHARE) * done / len(numbers))
        leaves[number] = _leaf(bundle, number)
    return Pictures(finished, leaves)


def _finished(layout: Layout, progress: Progress) -> Pictured:
    scale = TOP_PIXELS / (2.0 * layout.top.reach)
    pixels = picture(layout, px_per_mm=scale, progress=progress)
    image = Image.fromarray(pixels, "RGBA")
    paper = Image.new("RGB", image.size, (255, 255, 255))
    paper.paste(image, mask=image.getchannel("A"))
    wide, high = (side / scale for side in image.size)
    return Pictured(Box(-wide / 2.0, -high / 2.0, wide, high), _jpeg(paper))


def _leaf(bundle: Bundle, number: int) -> Pictured:
    leaf = bundle.leaf(number)
    image = Image.fromarray(np.ascontiguousarray(leaf.photo), "RGB")
    image.thumbnail((LEAF_PIXELS, LEAF_PIXELS), Image.Resampling.BOX)
    pale = Image.blend(image, Image.new("RGB", image.size, (255, 255, 255)), PALE)
    return Pictured(Box(0.0, 0.0, *leaf.size), _jpeg(pale))


def _jpeg(image: Image.Image) -> bytes:
    stream = io.BytesIO()
    image.save(stream, "JPEG", quality=QUALITY, subsampling=0)
    return stream.getvalue()

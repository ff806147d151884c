# SPDX-License-Identifier: LGPL-2.1-or-later
"""The registers that a proof found on coarse grids, made exact along the chain of the order proved.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.photos import Photo, shrunk
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence.chain import chained
from veneerwb.core.sequence.picture import FLIPS, unflipped

MEGAPIXELS = 6.0
"""Of a photograph that is flipped, at most: all of those are in memory together."""


def exact(
    bundle: Bundle, order: Sequence[int], rough: Mapping[int, Motion], ways: Mapping[int, str]
) -> dict[int, Motion]:
    """Bundle mm to mm on the photograph of each leaf of `rough`, that leaf the identity which is so
    there.

    The leaves are laid right as `ways` (by number, picture.FLIPS) says and registered in `order`;
    where their figure does not allow that the rough ones stand.
    """
    path = [number for number in order if number in rough]
    first = next((number for number in path if rough[number] == IDENTITY), None)
    if first is None or len(path) < 2:
        return dict(rough)
    laid = [_laid(bundle.leaf(n), k, ways.get(n, "")) for k, n in enumerate(path, start=1)]
    try:
        found = chained(replace(bundle, leaves=tuple(laid))).registers
    except VeneerError:
        return dict(rough)
    back = found[path.index(first) + 1].inverse()
    placed = {
        number: unflipped(ways.get(number, ""), *bundle.leaf(number).size) @ found[k] @ back
        for k, number in enumerate(path, start=1)
    }
    return dict(sorted({**rough, **placed, first: IDENTITY}.items()))


def _laid(leaf: Leaf, number: int, way: str) -> Leaf:
    """The face of a leaf under another number, its photograph flipped as FLIPS has it."""
    if not way:
        return replace(leaf, number=number, back=None)
    along, across = FLIPS[way]
    pixels, factor = shrunk(np.ascontiguousarray(leaf.photo[::along, ::across]), MEGAPIXELS)
    onto = unflipped(way, *leaf.size).inverse()
    faults = tuple(replace(f, outline=onto.apply_to(f.outline)) for f in leaf.faults)
    face = Side(Photo.of(pixels, leaf.mm_per_px * factor))
    return Leaf(number, face, None, onto.apply_to(leaf.usable), faults)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The registers that a proof found on coarse grids, made exact along the chain of the order proved.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.leaf import Bundle, Leaf, Side
from veneerwb.core.photos.reading import Photo, shrunk
from veneerwb.core.plane import IDENTITY, Motion
from veneerwb.core.sequence.chain import chained
from veneerwb.core.sequence.picture import FLIPS, unflipped

MEGAPIXELS = 6.0
"""Of a photograph that is flipped, at most: all of those are in memory together."""


class Exact(dict[int, Motion]):
    """Registers by leaf number. `refused` says why they are no better than the rough ones, if so;
    `doubts` are the neighbours (leaf numbers) between which the chain is not sure."""

    refused: VeneerError | None = None
    doubts: tuple[tuple[int, int], ...] = ()


def exact(
    bundle: Bundle, order: Sequence[int], rough: Mapping[int, Motion], ways: Mapping[int, str],
    progress: Callable[[float], None] | None = None,
) -> Exact:
    """Bundle mm to mm on the photograph of each leaf of `rough`, that leaf the identity which is so
    there.

    The leaves are laid right as `ways` (by number, picture.FLIPS) says and registered in `order`;
    where their figure does not allow that the rough ones stand, and `refused` says so. `progress`:
    as for `chained`.
    """
    path = [number for number in order if number in rough]
    first = next((number for number in path if rough[number] == IDENTITY), None)
    out = Exact(sorted(rough.items()))
    if first is None or len(path) < 2:
        return out
    laid = [_laid(bundle.leaf(n), k, ways.get(n, "")) for k, n in enumerate(path, start=1)]
    try:
        chain = chained(replace(bundle, leaves=tuple(laid)), progress=progress)
    except VeneerError as error:
        if error.code == "cancelled":  # by its progress: that is no fault of the figure
            raise
        out.refused = _renamed(error, path)
        return out
    found, back = chain.registers, chain.registers[path.index(first) + 1].inverse()
    for k, number in enumerate(path, start=1):
        flip = unflipped(ways.get(number, ""), *bundle.leaf(number).size)
        out[number] = flip @ found[k] @ back
    out[first] = IDENTITY
    out.doubts = tuple((path[s.first - 1], path[s.second - 1]) for s in chain.doubts)
    return out


def _renamed(error: VeneerError, path: Sequence[int]) -> VeneerError:
    """The leaf by its own number, not by its place in the chain."""
    values = dict(error.values)
    if "leaf" in values:
        values["leaf"] = path[values["leaf"] - 1]
    return VeneerError(error.code, error.template, **values)


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

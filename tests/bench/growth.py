# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the core's work on photographs costs with more leaves, and with larger photographs. (Growth
with ways is in `bench`, of opening documents in `open`.)

    bash tests/bench/run.sh growth
"""

from __future__ import annotations

import tempfile
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
from PIL import Image
from table import Growth, give, seconds

from veneerwb.core import Bundle, Disturbance, Top, prove_sequence, radial, sawn_bundle
from veneerwb.core.appeal import maps_of
from veneerwb.core.leaf import Leaf, Side
from veneerwb.core.matches.radial import Radial
from veneerwb.core.photos.preparation import Preparation
from veneerwb.core.photos.preparing import prepared
from veneerwb.core.photos.reading import Photo, save_jpeg
from veneerwb.core.search import searched
from veneerwb.core.sequence.chain import chained
from veneerwb.paint import picture

LEAVES, MEGAPIXELS = (12, 24, 48), (1, 3, 12)
WIDTH, LENGTH = 300.0, 900.0
OFF = Disturbance(shift=15, turn=2, exposure=0.15, noise=0.01)
Work = Callable[[Any], Any]


def grown(what: str, by: str, things: dict[int, Any], work: Work, rounds: int = 1) -> None:
    costs = tuple(seconds(lambda one=one: work(one), rounds) for one in things.values())
    small = costs[0] < 0.1
    costs = tuple(1e3 * cost for cost in costs) if small else costs
    give(Growth("growth", what, by, tuple(things), costs, "ms" if small else "s"))


def by_leaves() -> None:
    """Bundles of 300 x 900 mm at 1 mm/px, each the first leaves of the largest."""
    large = sawn_bundle(
        leaves=LEAVES[-1], width=WIDTH, length=LENGTH, thickness=0.6, mm_per_px=1.0, figure="burl",
        seed=3, disturb=OFF,
    )  # fmt: skip
    bundles = {count: replace(large, leaves=large.leaves[:count]) for count in LEAVES}
    top, recipe = Top.round(500.0), Radial(12)
    maps = {count: (bundle, maps_of(bundle)) for count, bundle in bundles.items()}
    grown("order proved", "leaves", bundles, prove_sequence)
    grown("registered, neighbour to neighbour", "leaves", bundles, chained)
    grown("maps for the search", "leaves", bundles, maps_of)
    grown(
        "search in 12 ways, maps made", "leaves", maps,
        lambda one: searched(one[0], top, recipe, maps=one[1]),
    )  # fmt: skip


def enlarged(sawn: Bundle, megapixels: int) -> Bundle:
    """The bundle as if photographed with so many pixels a leaf."""
    scale = (WIDTH * LENGTH / (megapixels * 1e6)) ** 0.5
    size = round(WIDTH / scale), round(LENGTH / scale)

    def photo(leaf: Leaf) -> Photo:
        large = Image.fromarray(leaf.photo).resize(size, Image.Resampling.BICUBIC)
        return Photo.of(np.asarray(large), scale)

    leaves = tuple(Leaf(leaf.number, Side(photo(leaf))) for leaf in sawn.leaves)
    return Bundle(leaves, sawn.thickness)


def by_pixels(folder: Path) -> None:
    """4 leaves, whose photographs are a sawn one enlarged: pixels cost the same, whatever they
    show."""
    sawn = sawn_bundle(
        leaves=4, width=WIDTH, length=LENGTH, thickness=0.6, mm_per_px=0.5, figure="burl", seed=3
    )
    bundles = {count: enlarged(sawn, count) for count in MEGAPIXELS}
    files = {}
    for count, bundle in bundles.items():
        leaf = bundle.leaves[0]
        save_jpeg(folder / f"leaf {count}.jpg", leaf.photo)
        files[count] = folder / f"leaf {count}.jpg", Preparation(mm_per_px=leaf.mm_per_px)
    layouts = {count: radial(one, Top.round(500.0), ways=4) for count, one in bundles.items()}
    pixels = "MP"
    grown(
        "one photograph brought in, read and made ready", pixels, files,
        lambda one: prepared([one[0]], one[1]), 3,
    )  # fmt: skip
    grown("4 leaves registered", pixels, bundles, chained)
    grown("maps of 4 leaves", pixels, bundles, maps_of)
    grown(
        "picture in 4 ways, 1000 x 1000", pixels, layouts,
        lambda one: picture(one, px_per_mm=2.0), 7,
    )  # fmt: skip


def main() -> None:
    by_leaves()
    with tempfile.TemporaryDirectory(prefix="growth-") as folder:
        by_pixels(Path(folder))


if __name__ == "__main__":
    main()

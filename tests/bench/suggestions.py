# SPDX-License-Identifier: LGPL-2.1-or-later
"""What leaves suggest: false suggestions on clean leaves, knots and splits found, by figure.

    bash tests/bench/run.sh suggestions [seeds, as 3,4 [figures, as burl,ripple]]

Generated leaves of 400 x 1200 mm at 0.5 mm/px with a camera's noise. Splits are drawn: dark and
light, 0.5 to 2 mm wide, 30 to 300 mm long, up to 4 degrees off the grain.
"""

from __future__ import annotations

import sys
import time
from dataclasses import replace
from pathlib import Path

import numpy as np
from PIL import Image, ImageDraw
from shapely.geometry import LineString

sys.path.insert(0, str(Path(__file__).parents[2]))

from table import Row, give

from veneerwb.core.leaf import Leaf, Side
from veneerwb.core.log.figures import FIGURES
from veneerwb.core.log.sawn import Log
from veneerwb.core.photos.reading import Photo
from veneerwb.core.spots import suggested

WIDTH, LENGTH, SCALE = 400.0, 1200.0, 0.5
SEEDS, FULL = "3,4,5,6", "bash tests/bench/run.sh suggestions"
COLOURS = {"dark": (38, 28, 20), "light": (250, 246, 236)}


def photographed(figure: str, seed: int, knots: int) -> Leaf:
    log = Log(WIDTH, LENGTH, 0.6, figure, seed, 0.0, knots)
    picture = log.picture(0, SCALE)
    noise = np.random.default_rng(seed).normal(0, 2, picture.shape)
    pixels = np.clip(picture + noise, 0, 255).astype(np.uint8)
    return Leaf(1, Side(Photo.of(pixels, SCALE)), faults=tuple(log.faults(0)))


def with_splits(leaf: Leaf, shade: str, width: float, seed: int) -> tuple[Leaf, list[LineString]]:
    """The leaf with three splits painted on it, 30, 80 and 300 mm long."""
    rng, lines = np.random.default_rng(seed), []
    rows, columns = leaf.photo.shape[:2]
    paint = Image.new("L", (4 * columns, 4 * rows))
    t = np.linspace(0, 1, 40)
    for k, length in enumerate((30, 80, 300)):
        turn = np.radians(rng.uniform(-4, 4))
        x = 60 + 130 * k + rng.uniform(0, 40) + length * t * np.sin(turn)
        x = x + np.cumsum(rng.normal(0, 0.1, 40))
        y = rng.uniform(50, 800) + length * t * np.cos(turn)
        half = width / 2 * np.minimum(1, 6 * np.minimum(t, 1 - t) + 0.25)
        ring = np.column_stack([np.append(x - half, (x + half)[::-1]), np.append(y, y[::-1])])
        corners = [(4 * u / SCALE, 4 * (rows - v / SCALE)) for u, v in ring]
        ImageDraw.Draw(paint).polygon(corners, fill=255)
        lines.append(LineString(np.column_stack([x, y])))
    share = np.asarray(paint.resize((columns, rows), Image.Resampling.BOX))[..., None] / 255
    pixels = leaf.photo * (1 - share) + np.array(COLOURS[shade]) * share
    return replace(leaf, face=Side(Photo.of(pixels.astype(np.uint8), SCALE))), lines


def main(seeds: list[int], figures: tuple[str, ...]) -> None:
    print(f"leaves of {WIDTH:g} x {LENGTH:g} mm at {SCALE:g} mm/px, {len(seeds)} of each figure")
    print("figure      false a clean leaf   knots found   dark splits 0.5/1/2 mm   light   s/leaf")
    for figure in figures:
        false, knots, seen, slowest = 0, 0, 0, 0.0
        splits = {(shade, width): 0 for shade in COLOURS for width in (0.5, 1.0, 2.0)}
        for seed in seeds:
            clean, knotty = photographed(figure, seed, 0), photographed(figure, seed, 4)
            start = time.process_time()
            false += len(suggested(clean))
            slowest = max(slowest, time.process_time() - start)
            found = suggested(replace(knotty, faults=()))
            knots += len(knotty.faults)
            seen += sum(
                any(s.outline.intersects(f.outline.centroid.buffer(2)) for s in found)
                for f in knotty.faults
            )
            for shade, width in splits:
                split, lines = with_splits(clean, shade, width, seed)
                areas = [s.outline.buffer(1) for s in suggested(split) if s.kind == "split"]
                splits[shade, width] += sum(
                    any(a.intersection(line).length > 0.5 * line.length for a in areas)
                    for line in lines
                )
        counts = [f"{n}/{3 * len(seeds)}" for n in splits.values()]
        print(
            f"{figure:10s} {false / len(seeds):12.2f} {seen:10d}/{knots:<3d}"
            f"       {' '.join(counts[:3]):22s} {' '.join(counts[3:])}   {slowest:.2f}", flush=True,
        )

        on_table(figure, len(seeds), false, (seen, knots), tuple(splits.values()), slowest)


def on_table(
    figure: str, leaves: int, false: int, knots: tuple[int, int], splits: tuple[int, ...],
    slowest: float,
) -> None:
    what, drawn = f"suggested on {figure}", 3 * leaves * len(splits)
    more = {"peer": "the truth", "reduced": FULL if leaves < SEEDS.count(",") + 1 else ""}
    for of, value in (
        (f"share of {knots[1]} knots found", knots[0] / max(knots[1], 1)),
        (f"share of {drawn} drawn splits found", sum(splits) / drawn),
        ("false ones a clean leaf", false / leaves),
    ):
        give(Row("suggestions", f"{what}: {of}", value, "", **more))
    size = f"a leaf of {WIDTH:g} x {LENGTH:g} mm at {SCALE:g} mm/px"
    give(Row("suggestions", f"{what}: {size}, processor time", slowest, "s"))


if __name__ == "__main__":
    asked = dict(enumerate(sys.argv[1:]))
    main(
        [int(seed) for seed in asked.get(0, SEEDS).split(",")],
        tuple(asked.get(1, ",".join(FIGURES)).split(",")),
    )

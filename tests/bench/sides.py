# SPDX-License-Identifier: LGPL-2.1-or-later
"""How well backs are tied to their faces, how often one back proves the stack's sense, and how near
the measured wander comes to the plane geometry of the rings.

    bash tests/bench/run.sh sides [--logs 5] [--seed 1] [--scale 1.0] [FIGURE...]

Every log gives a bundle of 4 leaves of 300 x 900 mm with ragged edges, both sides photographed on a
grey table, each moved by up to 15 mm and 2 degrees (every other back end for end), exposed 15 %
wrongly at most, with noise, saved as JPEG 80. Ties: mm at the worst corner of the leaf. Sense: by
the tied back of leaf 2 alone, numbered one way and the other; of a back that shows another log
nothing may be proved. Wander: of three backs, less that of the same surfaces undisturbed (the error
of measuring), and less t / tan a, which is how far rings go; bars, eyes and streaks mostly stay.
"""

from __future__ import annotations

import argparse
import io
import math
import sys
from collections import Counter
from dataclasses import replace
from pathlib import Path

import numpy as np
from PIL import Image, ImageDraw
from shapely.geometry import Polygon

from veneerwb.core import Bundle, Leaf, Motion, Side, VeneerError
from veneerwb.core.log.sawn import TABLE, Log
from veneerwb.core.photos.reading import Photo
from veneerwb.core.sequence import aligned, grids
from veneerwb.core.sides import measured_wander, proved_sense, tied, with_tie

sys.path.insert(0, str(Path(__file__).parent))
from table import Row, give

FIGURES = ("cathedral", "ripple", "crotch", "burl", "stripe")
SLOPES = (0.0, 5.0, 10.0)
WIDTH, LENGTH, AROUND, THICKNESS = 300.0, 900.0, 60.0, 0.6
LEAVES, RAGGED = 4, 2.5
CORNERS = np.array([(0, 0), (WIDTH, 0), (0, LENGTH), (WIDTH, LENGTH)])
OTHER = 100_000
"""Added to the seed of another log."""
LOGS, FULL = 5, "bash tests/bench/run.sh sides"


def outline(rng: np.random.Generator) -> Polygon:
    y = np.linspace(8, LENGTH - 8, 14)
    left, right = (np.column_stack([x + rng.normal(0, RAGGED, 14), y]) for x in (10, WIDTH - 10))
    return Polygon([*left, *right[::-1]])


def photographed(
    surface: np.ndarray, shape: Polygon, frame: Motion, scale: float, rng: np.random.Generator
) -> Photo:
    """A surface cut to `shape`, moved by `frame` (mm on it to mm on the photograph)."""
    size = tuple(round((v + 2 * AROUND) / scale) for v in (WIDTH, LENGTH))
    edge = round(AROUND / scale)
    leaf = Image.new("RGB", size, TABLE)
    leaf.paste(Image.fromarray(surface), (edge, edge))
    mask = Image.new("L", (2 * size[0], 2 * size[1]))
    low = edge + surface.shape[0]
    ImageDraw.Draw(mask).polygon(
        [(2 * (edge + x / scale), 2 * (low - y / scale)) for x, y in shape.exterior.coords],
        fill=255,
    )
    lying = Image.composite(
        leaf, Image.new("RGB", size, TABLE), mask.resize(size, Image.Resampling.BOX)
    )
    back = frame.inverse()
    a, b, d, e = back.matrix
    x, y = back.apply((0.0, size[1] * scale)) / scale
    coefficients = (a, -b, x + edge, -d, e, low - y)
    moved = lying.transform(size, Image.AFFINE, coefficients, Image.BICUBIC, fillcolor=TABLE)
    linear = (np.asarray(moved, float) / 255) ** 2.2 * (1 + rng.uniform(-0.15, 0.15))
    pixels = 255 * np.clip(linear, 0, 1) ** (1 / 2.2) + rng.normal(0, 2.5, linear.shape)
    file = io.BytesIO()
    Image.fromarray(np.clip(pixels, 0, 255).astype(np.uint8)).save(file, "JPEG", quality=80)
    return Photo.of(np.asarray(Image.open(file)), scale)


def lying(rng: np.random.Generator, turned: bool = False) -> Motion:
    dx, dy = rng.uniform(-15, 15, 2)
    turn = rng.uniform(-2, 2) + 180 * turned
    about = Motion.turn_about(WIDTH / 2, LENGTH / 2, turn)
    return Motion(dx=AROUND + dx, dy=AROUND + dy) @ about


def both_sides(log: Log, number: int, scale: float, rng: np.random.Generator) -> tuple:
    """A leaf with its two sides, and the true tie."""
    shape, face, back = outline(rng), lying(rng), lying(rng, number % 2 == 0)
    front, rear = (
        photographed(log.picture(surface, scale), shape, frame, scale, rng)
        for surface, frame in ((number - 1, face), (number, back))
    )
    register = Side(front, face, face)
    return Leaf(number, register, Side(rear), face.apply_to(shape)), back @ face.inverse(), face


def still(log: Log, numbers: list[int], scale: float) -> float:
    """mm along by which the figure of undisturbed surfaces wanders through those leaves, their
    median."""
    middle, found = np.array((WIDTH / 2, LENGTH / 2)), []
    for number in numbers:
        face, back = (
            grids(Leaf(number, Side(Photo.of(log.picture(surface, scale), scale))))
            for surface in (number - 1, number)
        )
        found.append(float((aligned(face, back).motion.apply(middle) - middle)[1]))
    return float(np.median(found))


class Tally:
    """What was found over all logs of a figure."""

    def __init__(self) -> None:
        self.corners: list[float] = []
        self.told: list[float] = []
        self.counts: Counter[str] = Counter()
        self.wander: dict[float, list[tuple[float, float]]] = {slope: [] for slope in SLOPES}

    def add(self, log: Log, other: Log, slope: float, scale: float, seed: int) -> None:
        rng = np.random.default_rng(seed)
        leaves, ties = [], {}
        for number in range(1, LEAVES + 1):
            leaf, true, face = both_sides(log, number, scale, rng)
            self.counts["ties"] += 1
            try:
                tie = tied(leaf)
            except VeneerError:
                self.counts["refused"] += 1
                continue
            self.counts["doubted"] += not tie.sure
            places = face.apply(CORNERS)
            off = np.hypot(*(tie.motion.apply(places) - true.apply(places)).T).max()
            self.counts["wrong end"] += bool(tie.sure and off > WIDTH / 2)
            if tie.sure and off <= WIDTH / 2:
                self.corners.append(float(off))
                self.told.append(tie.error_mm)
            leaves.append(with_tie(leaf, tie))
            ties[number] = tie
        bundle = Bundle(tuple(leaves), THICKNESS)
        self._sense(bundle, other, scale, rng)
        backs = [number for number in ties if number < LEAVES and ties[number].sure]
        found = measured_wander(bundle, ties, backs)
        if found.known:
            true = -THICKNESS / math.tan(math.radians(slope)) if slope else 0.0
            here = found.along - still(log, backs, scale)
            self.wander[slope].append((here, found.along - true))
        else:
            self.counts["wander unknown"] += 1

    def _sense(self, bundle: Bundle, other: Log, scale: float, rng: np.random.Generator) -> None:
        last = len(bundle.leaves) + 1
        over = Bundle(
            tuple(replace(leaf, number=last - leaf.number) for leaf in bundle.leaves), THICKNESS
        )
        foreign = both_sides(other, 2, scale, rng)[0].back
        mixed = replace(bundle, leaves=tuple(
            replace(leaf, back=foreign) if leaf.number == 2 else leaf for leaf in bundle.leaves
        ))
        for told, wanted in (
            (proved_sense(bundle, [2]).back, "next"),
            (proved_sense(over, [last - 2]).back, "previous"),
        ):
            word = "right" if told == wanted else "untold" if told is None else "wrong"
            self.counts[f"sense {word}"] += 1
        self.counts["foreign back, nothing proved"] += proved_sense(mixed, [2]).back is None

    def report(self, figure: str, logs: int, scale: float) -> None:
        c, off = self.counts, np.array(self.corners or [math.nan])
        print(
            f"{figure:10} ties {c['ties']}, doubted {c['doubted']}, refused {c['refused']}, sure "
            f"and end for end {c['wrong end']}; worst corner rms {np.sqrt(np.mean(off**2)):.2f}, "
            f"95 % {np.quantile(off, 0.95):.2f}, most {off.max():.2f} mm; standard error told "
            f"{np.mean(self.told or [math.nan]):.2f} mm"
        )
        print(
            f"{'':10} sense right {c['sense right']}, untold {c['sense untold']}, wrong "
            f"{c['sense wrong']}; a foreign back proves nothing in "
            f"{c['foreign back, nothing proved']} of {logs * len(SLOPES)}"
        )
        for slope, each in self.wander.items():
            true = THICKNESS / math.tan(math.radians(slope)) if slope else 0.0
            errors = "; ".join(f"{a:+.2f} and {b:+.2f}" for a, b in each)
            print(
                f"{'':10} wander at {slope:g} deg: off the undisturbed and off t / tan a "
                f"({true:.2f} mm) by {errors or 'unknown'}"
            )

        self._on_table(figure, logs, scale)

    def _on_table(self, figure: str, logs: int, scale: float) -> None:
        c, off = self.counts, np.array(self.corners or [math.nan])
        more = {"peer": "the truth", "reduced": FULL if logs < LOGS else ""}
        ends = [abs(off) for each in self.wander.values() for off, _ in each]
        for what, value, unit, aim in (
            (f"{c['ties']} backs tied at {scale:g} mm/px, {figure}: worst corner, rms",
             float(np.sqrt(np.mean(off**2))), "mm", "ours <= 0.5"),
            (f"share of {2 * logs * len(SLOPES)} stacks whose sense one back proves, {figure}",
             c["sense right"] / (2 * logs * len(SLOPES)), "", ""),
            (f"wander of {figure} measured from {LEAVES - 1} backs: furthest off",
             max(ends, default=math.nan), "mm", ""),
        ):  # fmt: skip
            give(Row("sides", what, value, unit, aim=aim, **more))


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("figures", nargs="*", default=FIGURES)
    parser.add_argument("--logs", type=int, default=LOGS)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--scale", type=float, default=1.0)
    args = parser.parse_args()
    for figure in args.figures:
        tally = Tally()
        for seed in range(args.seed, args.seed + args.logs):
            for slope in SLOPES:
                log, other = (
                    Log(WIDTH, LENGTH, THICKNESS, figure, s, slope) for s in (seed, seed + OTHER)
                )
                tally.add(log, other, slope, args.scale, seed)
        tally.report(figure, args.logs, args.scale)
        sys.stdout.flush()  # a figure takes minutes


if __name__ == "__main__":
    main()

# SPDX-License-Identifier: LGPL-2.1-or-later
"""Prints how far registers can be trusted, and how fast they come, beside OpenCV's enhanced
correlation coefficient from the same start on the same neighbours.

    bash tests/bench/run.sh registers [--spoilt | --plain] [FIGURE...]

Repeatable: mm at the leaf's corners between the registers of the disturbed photographs (saved as
JPEG) and those of the undisturbed ones carried through the known disturbance. True: mm to the known
disturbance, on leaves so thin that the figure does not change; grown: the same on the leaves of the
first column, whose figure changes but, on a stem without slope, stays where it is. Seconds are of
one processor.

The second table is of photographs that are spoilt further, each in one way: repeatable as above,
and within the region where that is what is followed. Figures of a lens and of a buckle hold what no
rigid motion can mend: flatten leaves first, and photograph them under glass.
"""

from __future__ import annotations

import argparse
import io
import math
import resource
import sys
import time
from dataclasses import dataclass, replace
from pathlib import Path

import cv2
import numpy as np
from PIL import Image
from shapely.geometry import Polygon, box

from veneerwb.core import Bundle, Disturbance, Leaf, Motion, sawn_bundle
from veneerwb.core.photos.reading import Photo
from veneerwb.core.plane import IDENTITY, cosd, sind
from veneerwb.core.sequence.align import WORKING_SCALE, grids, refine, start
from veneerwb.core.sequence.chain import chained

sys.path.insert(0, str(Path(__file__).parent))
from table import Row, give

FIGURES = ("cathedral", "ripple", "crotch", "burl")
OFF = Disturbance(shift=15, turn=2, exposure=0.15, noise=0.01)
LEAVES = 24
UNCHANGING = 0.001
"""mm: leaves so thin that neighbours show the same figure."""
FULL = "bash tests/bench/run.sh registers"
Registers = dict[int, Motion]


@dataclass(frozen=True)
class Misses:
    """mm at the four corners of every leaf but the first."""

    values: np.ndarray

    def __str__(self) -> str:
        top = np.percentile(self.values, 95)
        return f"{self.rms:6.3f} {top:6.3f} {self.values.max():6.3f}"

    @property
    def rms(self) -> float:
        return float(np.sqrt(np.mean(self.values**2)))


def misses(bundle: Bundle, found: Registers, wanted: Registers, at: object = None) -> Misses:
    """At the leaf's corners, or those of an area `at` (bundle mm)."""
    width, length = bundle.size
    corners = np.asarray((box(0, 0, width, length) if at is None else at).exterior.coords)[:-1]
    gone = [
        np.hypot(*(found[n].apply(corners) - wanted[n].apply(corners)).T)
        for n in bundle.numbers[1:]
    ]
    return Misses(np.concatenate(gone))


def as_jpeg(bundle: Bundle, quality: int) -> Bundle:
    """The bundle with every face saved and read again."""

    def saved(photo: Photo) -> Photo:
        stream = io.BytesIO()
        Image.fromarray(photo.pixels).save(stream, "JPEG", quality=quality)
        return Photo.of(np.asarray(Image.open(stream)), photo.mm_per_px)

    return replace(bundle, leaves=tuple(
        replace(leaf, face=replace(leaf.face, image=saved(leaf.face.image)), back=None)
        for leaf in bundle.leaves
    ))


def disturbances(bundle: Bundle) -> Registers:
    return {leaf.number: leaf.register for leaf in bundle.leaves}


def carried(shaken: Bundle, calm: Registers) -> Registers:
    return {n: motion @ calm[n] for n, motion in disturbances(shaken).items()}


# --- both from the same start ------------------------------------------------------------------


@dataclass
class Peers:
    """Registers by our refinement and by OpenCV's, seconds of each, and how often the latter gave
    up."""

    ours: Registers
    theirs: Registers
    our_seconds: float = 0.0
    their_seconds: float = 0.0
    given_up: int = 0


def peers(bundle: Bundle) -> Peers:
    """Neighbours refined from the same coarse start, by both; the start is not timed."""
    first = bundle.numbers[0]
    out = Peers({first: IDENTITY}, {first: IDENTITY})
    last = grids(bundle.leaf(first)), grey(bundle.leaf(first))
    for before, n in zip(bundle.numbers, bundle.numbers[1:]):
        here = grids(bundle.leaf(n)), grey(bundle.leaf(n))
        begin = start(last[0][0], here[0][0])
        clock = time.process_time()
        motion = begin
        for a, b in zip(last[0], here[0]):
            motion = refine(a, b, motion).motion
        out.our_seconds += time.process_time() - clock
        clock = time.process_time()
        theirs, held = by_opencv(last[1], here[1], begin)
        out.their_seconds += time.process_time() - clock
        out.given_up += not held
        out.ours[n], out.theirs[n] = motion @ out.ours[before], theirs @ out.theirs[before]
        last = here
    return out


def grey(leaf: object) -> tuple[np.ndarray, np.ndarray]:
    """Luminance at the working scale, row 0 at the bottom, and where the leaf is usable."""
    size = tuple(int(mm / WORKING_SCALE) for mm in leaf.size)
    light = cv2.resize(cv2.cvtColor(leaf.photo, cv2.COLOR_RGB2GRAY), size, None, 0, 0,
                       cv2.INTER_AREA)
    usable = (grids(leaf)[-1].weight > 0).astype(np.uint8)
    return np.ascontiguousarray(light[::-1]).astype(np.float32), usable


def by_opencv(
    first: tuple[np.ndarray, np.ndarray], second: tuple[np.ndarray, np.ndarray], begin: Motion
) -> tuple[Motion, bool]:
    """OpenCV's motion from the first to the second, and whether it converged."""
    half = WORKING_SCALE / 2
    c, s = cosd(begin.angle), sind(begin.angle)
    dx, dy = begin.apply((half, half)) / WORKING_SCALE - 0.5
    warp = np.array([[c, -s, dx], [s, c, dy]], np.float32)
    rule = (cv2.TERM_CRITERIA_EPS | cv2.TERM_CRITERIA_COUNT, 100, 1e-6)
    try:
        _, warp = cv2.findTransformECC(
            first[0], second[0], warp, cv2.MOTION_EUCLIDEAN, rule, second[1], 5
        )
    except cv2.error:
        return begin, False
    angle = math.degrees(math.atan2(warp[1, 0], warp[0, 0]))
    at = (warp.astype(float) @ (-half / WORKING_SCALE, -half / WORKING_SCALE, 1.0) + 0.5)
    return Motion(angle, *(float(v) * WORKING_SCALE for v in at)), True


# --- the table ---------------------------------------------------------------------------------


def row(figure: str, args: argparse.Namespace) -> str:
    size = {"leaves": args.leaves, "width": args.width, "length": args.length,
            "mm_per_px": args.scale, "figure": figure, "seed": args.seed}
    calm, shaken = sawn_bundle(**size), as_jpeg(sawn_bundle(**size, disturb=OFF), args.quality)
    still = as_jpeg(
        sawn_bundle(**size, thickness=UNCHANGING, disturb=OFF), args.quality
    )
    calm_registers = chained(calm).registers
    wall, clock = time.perf_counter(), time.process_time()
    done = chained(shaken)
    wall, clock = time.perf_counter() - wall, time.process_time() - clock
    wanted = carried(shaken, calm_registers)
    ours = misses(shaken, done.registers, wanted)
    grown = misses(shaken, done.registers, disturbances(shaken))
    true = misses(still, chained(still).registers, disturbances(still))
    beside = peers(shaken)
    theirs = misses(shaken, beside.theirs, carried(shaken, peers(calm).theirs))
    on_table(figure, args, (ours, grown, theirs), clock, beside)
    return (
        f"{figure:10} {ours}  {true}  {grown}  {len(done.doubts):3}  {clock:5.1f} "
        f"{wall:5.1f}  {beside.our_seconds / beside.their_seconds:5.2f} "
        f"{ours.rms / theirs.rms:5.2f} {theirs.rms:7.3f} {beside.given_up:3}"
    )


def on_table(
    figure: str, args: argparse.Namespace, errors: tuple[Misses, Misses, Misses], clock: float,
    beside: Peers,
) -> None:
    """The rows of a figure; `errors`: ours when repeated, ours off the truth, the peer's."""
    ours, grown, theirs = errors
    what = f"registers, {figure}, {args.leaves} leaves of {args.width:g} x {args.length:g} mm"
    ecc = "OpenCV's enhanced correlation (ECC), same start"
    more = {"reduced": FULL if args.leaves < LEAVES else ""}
    known = figure == FIGURES[0]

    def say(of: str, own: float, unit: str, peer: str, its: float | None, aim: str,
            chosen: bool = False) -> None:
        give(Row("registers", f"{what}: {of}", own, unit, peer, its, aim, chosen=chosen, **more))

    say("error when repeated, rms", ours.rms, "mm", ecc, theirs.rms, "ratio <= 1", known)
    top = [float(np.percentile(one.values, 95)) for one in (ours, theirs)]
    say("the same, 95 %", top[0], "mm", ecc, top[1], "ours <= 1")
    say("distance from the truth, rms", grown.rms, "mm", "the truth", None, "ours <= 0.5")
    say("processor time of refining", beside.our_seconds, "s", ecc, beside.their_seconds,
        "ratio <= 1", known)
    say("processor time of all", clock, "s", "", None, "" if more["reduced"] else "ours <= 15")


# --- spoilt further ----------------------------------------------------------------------------


def dirty(leaf: Leaf, rng: np.random.Generator) -> Leaf:
    """A leaf with spots of dirt of 3 to 12 mm, on 2 % of it."""
    pixels = leaf.photo.copy()
    rows, columns = pixels.shape[:2]
    left = 0.02 * rows * columns
    while left > 0:
        size = int(rng.uniform(3, 12) / leaf.mm_per_px)
        row, column = rng.integers(0, rows - size), rng.integers(0, columns - size)
        pixels[row : row + size, column : column + size] = rng.uniform(20, 230)
        left -= size * size
    return with_pixels(leaf, pixels)


def torn(leaf: Leaf, rng: np.random.Generator) -> Leaf:
    """A leaf that lacks a corner, a third of its width and a fifth of its length, unremarked."""
    pixels = leaf.photo.copy()
    rows, columns = pixels.shape[:2]
    down, right = np.arange(rows)[:, None] / (rows / 5), np.arange(columns) / (columns / 3)
    gone = down + right < 1
    if rng.integers(2):
        gone = gone[::-1]
    if rng.integers(2):
        gone = gone[:, ::-1]
    pixels[gone] = (214, 214, 212)
    return with_pixels(leaf, pixels)


def with_pixels(leaf: Leaf, pixels: np.ndarray) -> Leaf:
    photo = Photo.of(pixels, leaf.mm_per_px)
    return replace(leaf, face=replace(leaf.face, image=photo), back=None)


def wedge(bundle: Bundle) -> Polygon:
    """A wedge of eight ways, as long as the leaf is wide, in the middle of the leaf."""
    (width, length), high = bundle.size, bundle.size[0]
    x, y, half = width / 2, (length - high) / 2, high * math.tan(math.radians(22.5))
    return Polygon([(x, y), (x + half, y + high), (x - half, y + high)])


SPOILT = {
    "as above": (OFF, None),
    "lens 0.2 %": (replace(OFF, lens=0.002), None),
    "buckle 5 mm": (replace(OFF, buckle=5.0), None),
    "dirt 2 %": (OFF, dirty),
    "torn corners": (OFF, torn),
}


def spoilt_rows(figure: str, args: argparse.Namespace) -> list[str]:
    size = {"leaves": args.leaves, "width": args.width, "length": args.length,
            "mm_per_px": args.scale, "figure": figure, "seed": args.seed}
    calm = sawn_bundle(**size)
    region = wedge(calm)
    whole, weighted = chained(calm).registers, chained(calm, region).registers
    rows = []
    for name, (off, worn) in SPOILT.items():
        bundle = sawn_bundle(**size, disturb=off)
        if worn:
            rng = np.random.default_rng(args.seed)
            leaves = tuple(worn(leaf, rng) for leaf in bundle.leaves)
            bundle = replace(bundle, leaves=leaves)
        bundle = as_jpeg(bundle, args.quality)
        done = chained(bundle)
        of_leaf = misses(bundle, done.registers, carried(bundle, whole))
        close = chained(bundle, region).registers
        of_wedge = misses(bundle, close, carried(bundle, weighted), region)
        rows.append(f"{figure:10} {name:12}  {of_leaf}  {of_wedge}  {len(done.doubts):3}")
    return rows


def spoilt(args: argparse.Namespace) -> None:
    print(f"{'':23}  {'repeatable, leaf':^20}  {'of a wedge':^20}  {'in':>3}")
    ends = f"{'rms':>6} {'95 %':>6} {'worst':>6}"
    print(f"{'figure':10} {'spoilt by':12}  {ends}  {ends}  {'doubt':>3}")
    for figure in args.figures:
        print("\n".join(spoilt_rows(figure, args)), flush=True)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("figures", nargs="*", default=FIGURES)
    only = parser.add_mutually_exclusive_group()
    only.add_argument("--spoilt", action="store_true", help="the second table only")
    only.add_argument("--plain", action="store_true", help="the first table only")
    for name, default in (("leaves", LEAVES), ("seed", 1), ("quality", 80)):
        parser.add_argument(f"--{name}", type=int, default=default)
    for name, default in (("width", 400.0), ("length", 1200.0), ("scale", 0.5)):
        parser.add_argument(f"--{name}", type=float, default=default)
    args = parser.parse_args()
    cv2.setNumThreads(1)
    print(f"{args.leaves} leaves of {args.width:g} x {args.length:g} mm at {args.scale:g} mm/px; "
          f"{OFF}; JPEG {args.quality}; mm at the corners")
    if not args.spoilt:
        plain(args)
    if not args.plain:
        spoilt(args)
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024**2
    print(f"largest memory of the whole run, up to three bundles with it: {peak:.2f} GB")


def plain(args: argparse.Namespace) -> None:
    print(f"{'':10} {'repeatable':^20}  {'true, unchanging':^20}  {'grown':^20}  {'in':>3}  "
          f"{'seconds':^11}  {'beside OpenCV':^24}")
    print(f"{'figure':10} {'rms':>6} {'95 %':>6} {'worst':>6}  {'rms':>6} {'95 %':>6} {'worst':>6}"
          f"  {'rms':>6} {'95 %':>6} {'worst':>6}  {'doubt':>3} {'cpu':>5} {'wall':>5}  "
          f"{'time':>5} {'rms':>5} "
          f"{'its rms':>7} {'gave up':>3}")
    for figure in args.figures:
        print(row(figure, args), flush=True)


if __name__ == "__main__":
    main()

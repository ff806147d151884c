# SPDX-License-Identifier: LGPL-2.1-or-later
"""How fast and how true the search for spots is, on 24 leaves of 600 x 2400 mm at 0.5 mm per pixel,
12 ways, reach 600:

times    reading, maps and search: wall, and processor time of the main thread and of all threads
plain    the plain way in the same run: candidates rendered at 256 px with OpenCV and scored one by
         one
truth    rank agreement with the measures at full resolution, reckoned by OpenCV and scikit-image
force    on a small bundle, the best found against every spot of the refinement step

    search.py [--figure NAME] [--seed N] [--candidates N] [--spots N] [--keep FOLDER]
              [--force FIGURE...]
"""

from __future__ import annotations

import argparse
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import cv2
import numpy as np
from scipy.stats import spearmanr
from skimage.color import deltaE_ciede2000

from veneerwb.core import Bundle, Placement, Top, radial, sawn_bundle
from veneerwb.core.appeal import UNITS, WEIGHTS, maps_of, weighed
from veneerwb.core.appeal.maps import CHANCE, FAINT, FINE, GRAIN_REACH, SEEN_AS_ONE
from veneerwb.core.log.sawn import Log
from veneerwb.core.matches.radial import Radial
from veneerwb.core.photos.reading import save_jpeg
from veneerwb.core.search import searched
from veneerwb.core.search.refine import STEPS, Judge
from veneerwb.core.search.task import Task

sys.path.insert(0, str(Path(__file__).parent))
from table import Row, give

LEAVES, WIDTH, LENGTH, SCALE = 24, 600.0, 2400.0, 0.5
TOP, RECIPE, FIRST = Top.round(1200.0), Radial(12), 7
SIZE = 256
CANDIDATES, SPOTS, FORCED, FULL = 2000, 500, ("crotch", "burl"), "bash tests/bench/run.sh search"
BUNDLE = f"{LEAVES} leaves of {WIDTH:g} x {LENGTH:g} mm at {SCALE:g} mm/px"


def timed(what: str, work: Callable[[], Any]) -> Any:
    wall, own, all_threads = time.perf_counter(), time.thread_time(), time.process_time()
    found = work()
    wall, own = time.perf_counter() - wall, time.thread_time() - own
    every = time.process_time() - all_threads
    print(
        f"{what}: {wall:.2f} s by the clock; processor {own:.2f} s in the main thread, "
        f"{every - own:.2f} s in others",
        flush=True,
    )
    return found, every, wall


def photographs(folder: Path, figure: str, seed: int) -> list[Path]:
    paths = [folder / f"{figure}-{seed}-{k:02}.jpg" for k in range(1, LEAVES + 1)]
    if not all(path.exists() for path in paths):
        log = Log(WIDTH, LENGTH, 0.6, figure, seed)
        for k, path in enumerate(paths):
            save_jpeg(path, log.picture(k, SCALE))
    return paths


# --- the plain way -----------------------------------------------------------------------------


class Plain:
    """A candidate rendered from copies scaled to its picture, and scored in it."""

    def __init__(self, bundle: Bundle) -> None:
        self.texel = 4.0
        size = (round(WIDTH / self.texel), round(LENGTH / self.texel))
        self.copies = {
            leaf.number: cv2.resize(leaf.photo, size, interpolation=cv2.INTER_AREA)
            for leaf in bundle.leaves
        }
        self.px = 2.0 * TOP.reach / SIZE
        far = (np.arange(SIZE, dtype=np.float32) + 0.5 - SIZE / 2) * self.px
        self.x, self.y = far[None, :], -far[:, None]
        self.inside = np.hypot(self.x, self.y) < TOP.reach

    def score(self, bundle: Bundle, place: Placement) -> float:
        layout = radial(bundle, TOP, RECIPE.ways, placement=place, first=FIRST)
        shown = self.rendered(layout)
        light = cv2.GaussianBlur(_linear(shown), (0, 0), SEEN_AS_ONE / self.px)
        lab = cv2.cvtColor(light, cv2.COLOR_LRGB2Lab)
        contrast = np.sqrt(lab[self.inside].var(axis=0).sum())
        grain = grain_of(cv2.cvtColor(shown, cv2.COLOR_RGB2GRAY), self.px)[self.inside].mean(axis=0)
        seams = [self.across(lab, seam) for seam in layout.seams]
        return scored(contrast, variety_of(grain), np.mean(seams[:-1]), seams[-1])

    def rendered(self, layout: Any) -> np.ndarray:
        out = np.zeros((SIZE, SIZE, 3), np.uint8)
        for piece in layout.pieces:
            corners = np.asarray(piece.outline.exterior.coords)
            pixels = np.column_stack((corners[:, 0], -corners[:, 1])) / self.px + SIZE / 2
            low = np.maximum(np.floor(pixels.min(0)).astype(int), 0)
            high = np.minimum(np.ceil(pixels.max(0)).astype(int), SIZE)
            x, y = self.x[:, low[0] : high[0]], self.y[low[1] : high[1]]
            motion = piece.onto_bundle
            a, b, d, e = motion.matrix
            photo = self.copies[piece.leaf + piece.turned]
            column = (a * x + b * y + motion.dx) / self.texel - 0.5
            row = len(photo) - (d * x + e * y + motion.dy) / self.texel - 0.5
            warped = cv2.remap(
                photo, column.astype(np.float32), row.astype(np.float32), cv2.INTER_LINEAR,
                borderMode=cv2.BORDER_REPLICATE,
            )
            mask = np.zeros(warped.shape[:2], np.uint8)
            cv2.fillPoly(mask, [np.round(pixels - low - 0.5).astype(np.int32)], 255)
            cv2.copyTo(warped, mask, out[low[1] : high[1], low[0] : high[0]])
        return out

    def across(self, lab: np.ndarray, seam: Any) -> float:
        """Mean difference between the two sides of a seam, a pixel off it each."""
        (x0, y0), (x1, y1) = seam.line.coords
        share = np.linspace(0.02, 0.98, 40)
        line = np.column_stack([x0 + share * (x1 - x0), -(y0 + share * (y1 - y0))]) / self.px
        off = np.array([-(y1 - y0), -(x1 - x0)]) / np.hypot(x1 - x0, y1 - y0)
        ends = (np.clip(line + s * off + SIZE / 2, 0, SIZE - 1).astype(int) for s in (-1.0, 1.0))
        return float(deltaE_ciede2000(*(lab[p[:, 1], p[:, 0]] for p in ends)).mean())


def _linear(rgb: np.ndarray) -> np.ndarray:
    v = np.arange(256) / 255.0
    table = np.where(v <= 0.04045, v / 12.92, ((v + 0.055) / 1.055) ** 2.4).astype(np.float32)
    return table[rgb]


def grain_of(grey: np.ndarray, mm_per_px: float) -> np.ndarray:
    """rows x columns x 3: clarity, and that times cosine and sine of the doubled direction."""
    grey = grey.astype(np.float32)
    dx = cv2.Sobel(grey, cv2.CV_32F, 1, 0, ksize=1) / (2.0 * mm_per_px)
    dy = -cv2.Sobel(grey, cv2.CV_32F, 0, 1, ksize=1) / (2.0 * mm_per_px)
    spread = GRAIN_REACH / mm_per_px
    xx, yy, xy = (cv2.GaussianBlur(part, (0, 0), spread) for part in (dx * dx, dy * dy, dx * dy))
    root = np.sqrt((xx - yy) ** 2 + 4.0 * xy * xy)
    clarity = np.maximum(root / (xx + yy + FAINT**2) - CHANCE, 0.0) / (1.0 - CHANCE)
    angle = np.arctan2(2.0 * xy, xx - yy)
    return np.stack([clarity, clarity * np.cos(angle), clarity * np.sin(angle)], axis=-1)


def variety_of(grain: np.ndarray) -> float:
    clarity, common = grain[0], np.hypot(grain[1], grain[2])
    if clarity <= 0.0:
        return 0.0
    return float(np.degrees(clarity * np.sqrt(max(0.0, 2.0 * (1.0 - common / clarity))) / 2.0))


def scored(contrast: float, variety: float, seams: float, closing: float) -> float:
    found = {"contrast": contrast, "variety": variety, "seams": seams, "closing": closing}
    return sum(WEIGHTS[name] * found[name] / UNITS[name] for name in found)


# --- full resolution ---------------------------------------------------------------------------


class Full:
    """The measures of a book ring that starts with leaf FIRST, from maps at the photographs' own
    resolution (grain, which is looked for at FINE, at that)."""

    def __init__(self, paths: list[Path]) -> None:
        # Without a register the back of a leaf is the next one's photograph: turned pieces are odd.
        shown = [FIRST + k + (k % 2 == 0) for k in range(RECIPE.ways)]
        self.colour, self.grain, self.labs = 0.0, 0.0, {}
        for number in sorted(set(shown)):
            rgb = cv2.cvtColor(cv2.imread(str(paths[number - 1])), cv2.COLOR_BGR2RGB)
            light = cv2.GaussianBlur(_linear(rgb), (0, 0), SEEN_AS_ONE / SCALE)
            lab = cv2.cvtColor(light, cv2.COLOR_LRGB2Lab)
            share = shown.count(number) / len(shown)
            square = (lab * lab).sum(axis=-1, keepdims=True)
            self.colour = self.colour + share * np.concatenate([lab, square], axis=-1)
            size = (round(WIDTH / FINE), round(LENGTH / FINE))
            grey = cv2.resize(rgb, size, interpolation=cv2.INTER_AREA) @ np.array(
                (0.299, 0.587, 0.114)
            )
            self.grain = self.grain + share * grain_of(grey, FINE)
            self.labs[number] = cv2.resize(lab, size, interpolation=cv2.INTER_AREA)
        self.pairs = list(zip(shown, [*shown[1:], shown[0]]))

    def measures(self, place: Placement) -> tuple[float, float, float, float]:
        half = 180.0 / RECIPE.ways
        turns = np.radians(place.angle + np.linspace(-half, half, 60))
        rim = np.column_stack([np.cos(turns), np.sin(turns)]) * TOP.reach
        outline = np.concatenate([[(0.0, 0.0)], rim]) + (place.x, place.y)
        colour = within(self.colour, outline, SCALE)
        contrast = np.sqrt(max(0.0, colour[3] - (colour[:3] ** 2).sum()))
        variety = variety_of(within(self.grain, outline, FINE))
        share = np.linspace(0.0, 1.0, 601)[:, None]
        edges = [outline[0] + share * (outline[k] - outline[0]) for k in (1, -1)]
        # An upright piece begins with the edge that lies clockwise of its axis.
        seams = [
            deltaE_ciede2000(
                *(self.sampled(self.labs[n], edges[k % 2]) for n in pair)
            ).mean()
            for k, pair in enumerate(self.pairs)
        ]
        return contrast, variety, float(np.mean(seams[:-1])), float(seams[-1])

    def sampled(self, lab: np.ndarray, points: np.ndarray) -> np.ndarray:
        x = (points[:, 0] / FINE - 0.5).astype(np.float32)
        y = (len(lab) - points[:, 1] / FINE - 0.5).astype(np.float32)
        return cv2.remap(lab, x, y, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)[:, 0]


def within(values: np.ndarray, outline: np.ndarray, scale: float) -> np.ndarray:
    """Mean of each channel over the pixels of an outline in mm."""
    pixels = np.column_stack([outline[:, 0] / scale, len(values) - outline[:, 1] / scale]) - 0.5
    low = np.maximum(np.floor(pixels.min(0)).astype(int), 0)
    high = np.ceil(pixels.max(0)).astype(int) + 1
    window = values[low[1] : high[1], low[0] : high[0]]
    mask = np.zeros(window.shape[:2], np.uint8)
    cv2.fillPoly(mask, [np.round((pixels - low) * 16).astype(np.int32)], 1, shift=4)
    return window[mask > 0].mean(axis=0, dtype=float)


# --- the figures -------------------------------------------------------------------------------


def spots(sweep: Any, count: int, seed: int) -> Iterator[tuple[Placement, float]]:
    """Random spots that fit, with the search's scores."""
    free = np.flatnonzero(np.isfinite(sweep.scores))
    x, y = sweep.frame.centres()
    for place in np.random.default_rng(seed).choice(free, count, replace=False):
        k, row, column = np.unravel_index(place, sweep.scores.shape)
        at = Placement(float(x[column]), float(y[row]), float(sweep.angles[k]))
        yield at, float(sweep.scores[k, row, column])


def force(figure: str, seed: int) -> None:
    """Every spot at the steps of the refinement, on leaves hardly larger than the wedge."""
    width, length = 86.0, 87.0
    bundle = sawn_bundle(6, width, length, 0.6, 0.5, figure, seed, knots=0)
    task, maps = Task(bundle, Top.round(170.0), Radial(6)), maps_of(bundle, 2.0)
    found = searched(bundle, task.top, task.recipe, maps=maps).candidates[0]
    shift, turn, _ = STEPS[-1]
    corners = np.asarray(task.shapes[1].exterior.coords)
    x, y = (np.arange(0.0, size + 1e-9, shift) for size in (width, length))
    places = []
    for angle in np.arange(0.0, 360.0, turn):
        c, s = np.cos(np.radians(angle)), np.sin(np.radians(angle))
        at = corners @ np.array([[c, s], [-s, c]])
        low, high = at.min(axis=0) - 1e-6, at.max(axis=0) + 1e-6
        across = x[(x + low[0] >= -2e-6) & (x + high[0] <= width + 2e-6)]
        along = y[(y + low[1] >= -2e-6) & (y + high[1] <= length + 2e-6)]
        places += [Placement(a, b, angle) for a in across for b in along]
    judged = Judge(task, maps, weighed(None)).spots(places, (1,))
    best = max((tops[0] for tops in judged), key=lambda spot: spot.score)
    print(
        f"force, {figure} {seed}: {len(places)} spots, best {best.score:.4f} at {best.placement}; "
        f"found {found.score:.4f} at {found.placement}",
        flush=True,
    )
    give(Row(
        "search", f"best spot found on a small {figure} bundle ({seed}), its score less the best",
        found.score - best.score, "", f"brute force, {len(places)} spots", aim="ours >= -0.0001",
    ))  # fmt: skip


def say(what: str, ours: float, unit: str, peer: str = "", theirs: float | None = None,
        aim: str = "", **more: Any) -> None:
    give(Row("search", f"{BUNDLE}, {RECIPE.ways} ways: {what}", ours, unit, peer, theirs, aim,
             **more))


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--figure", default="cathedral")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--candidates", type=int, default=CANDIDATES)
    parser.add_argument("--spots", type=int, default=SPOTS)
    parser.add_argument("--keep", type=Path, help="a folder for the photographs")
    parser.add_argument("--force", nargs="*", default=FORCED)
    asked = parser.parse_args()
    cv2.setNumThreads(1)
    with tempfile.TemporaryDirectory() as folder:
        paths = photographs(asked.keep or Path(folder), asked.figure, asked.seed)
        bundle, _, reading = timed(
            "reading 24 photographs", lambda: Bundle.from_photos(paths, SCALE, 0.6)
        )
        maps, _, mapping = timed("maps", lambda: maps_of(bundle))
        found, ours, wall = timed("search", lambda: searched(bundle, TOP, RECIPE, maps=maps))
        say("all spots and directions searched, maps made", wall, "s", aim="ours <= 2", chosen=True)
        say("with reading and maps", reading + mapping + wall, "s", aim="ours <= 7")
        count = int(np.isfinite(found.sweep.scores).sum())
        print(f"spots and directions scored: {count}", flush=True)

        plain = Plain(bundle)
        some = [place for place, _ in spots(found.sweep, asked.candidates, 5)]
        begun = time.process_time()
        for place in some:
            plain.score(bundle, place)
        theirs = (time.process_time() - begun) / len(some)
        print(
            f"plain way: {1e3 * theirs:.2f} ms of processor a candidate ({len(some)} of them), the "
            f"search {1e6 * ours / count:.2f} us: {theirs / (ours / count):.0f} times as many",
            flush=True,
        )
        short = FULL if len(some) < CANDIDATES else ""
        say(f"a candidate of {count}, processor time", 1e6 * ours / count, "us",
            f"the plain way with OpenCV, {len(some)} candidates", 1e6 * theirs, "ratio <= 0.001",
            reduced=short, chosen=True)  # fmt: skip
        judge = Judge(Task(bundle, TOP, RECIPE), maps, weighed(None))
        full = Full(paths)
        chosen = list(spots(found.sweep, asked.spots, 6))
        truth = np.array([full.measures(place) for place, _ in chosen])
        tops = [tops[0] for tops in judge.spots([place for place, _ in chosen], (FIRST,))]
        figure = [scored(c, v, 0.0, 0.0) for c, v, _, _ in truth]
        swept = spearmanr([score for _, score in chosen], figure)[0]
        judged = spearmanr([t.score for t in tops], [scored(*row) for row in truth])[0]
        print(
            f"truth: Spearman on {len(chosen)} random spots: sweep {swept:.4f}, judged with seams "
            f"{judged:.4f}"
        )
        say(f"rank agreement (Spearman) of {len(chosen)} random spots", float(judged), "",
            "measures at full resolution", aim="ours >= 0.95",
            reduced=FULL if len(chosen) < SPOTS else "")  # fmt: skip
        for k, name in enumerate(UNITS):
            own = [getattr(t.appeal, name) for t in tops]
            print(f"  {name}: {spearmanr(own, truth[:, k])[0]:.4f}, mean {np.mean(own):.3f} "
                  f"against {truth[:, k].mean():.3f}")
    for kind in asked.force:
        for seed in (1, 2):
            force(kind, seed)


if __name__ == "__main__":
    main()

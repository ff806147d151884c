# SPDX-License-Identifier: LGPL-2.1-or-later
"""Counts how often the proof of order names a fault rightly, and how often it accuses a clean
bundle.

    bash tests/bench/run.sh proof [--logs 25] [--clean 3] [--seed 1] [FIGURE...]

Every log gives one random case of each fault and some clean bundles: 12 leaves (13 where one is
repeated) of its surfaces, each photographed anew, moved by up to 15 mm and 2 degrees, exposed 15 %
wrongly at most, with noise, and saved as JPEG; nothing but the pictures and their scale is told.
The log is sawn into leaves of half the thickness, and every other surface is used, so that leaves
one and a half or twice as thick are real ones too. Rightly named: the right suspect, and none of
another kind or leaf. Of two neighbours that changed places, and of two photographs of one leaf,
either may be named. On the stripe figure a proof must not be false: what is named must be right.
"""

from __future__ import annotations

import argparse
import io
import sys
import time
from collections import Counter, defaultdict
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from PIL import Image

from veneerwb.core import Bundle, Disturbance, Leaf, Side, sawn_bundle
from veneerwb.core.photos.reading import Photo
from veneerwb.core.sequence.proof import prove_sequence

sys.path.insert(0, str(Path(__file__).parent))
from table import Row, give

FIGURES = ("cathedral", "ripple", "crotch", "burl")
PLAIN = "stripe"
FAULTS = (
    "out of place", "missing", "thickness", "turned", "end for end", "duplicate", "same photograph",
    "foreign",
)
OFF = Disturbance(shift=15, turn=2, exposure=0.15, noise=0.01)
COUNT = 12
LOGS, CLEAN = 25, 3
SURFACES = 44
OTHER = 100_000
"""Added to the seed of the log that a foreign leaf is from."""


@dataclass(frozen=True)
class Case:
    """A bundle, and the one suspect it must give: its kind ("" for none), and the leaves of which
    either may be named."""

    bundle: Bundle
    kind: str = ""
    leaves: frozenset[int] = frozenset()


class Sawn:
    """A log's surfaces, half a thickness from each other, each photographed twice."""

    def __init__(self, figure: str, seed: int, surfaces: int, args: argparse.Namespace) -> None:
        self.scale, self.thickness, self.quality = args.scale, args.thickness, args.quality
        sawn = sawn_bundle(
            leaves=surfaces, width=args.width, length=args.length, thickness=args.thickness / 2,
            mm_per_px=args.scale, figure=figure, seed=seed, disturb=OFF, backs=True,
        )
        # The back of a leaf shows the face of the next.
        self._photos = {
            j: (sawn.leaf(j + 1).photo, sawn.leaf(j).back.photo) for j in range(1, surfaces)
        }

    def photo(self, surface: int, take: int = 0, flip: str = "") -> Photo:
        """One of two takes of a surface, as it is or as a leaf that lies wrong shows it."""
        pixels = self._photos[surface][take]
        pixels = {"": pixels, "turned": pixels[:, ::-1], "end for end": pixels[::-1, ::-1]}[flip]
        stream = io.BytesIO()
        Image.fromarray(np.ascontiguousarray(pixels)).save(stream, "JPEG", quality=self.quality)
        return Photo.of(np.asarray(Image.open(stream)), self.scale)

    def bundle(self, photos: list[Photo]) -> Bundle:
        leaves = tuple(Leaf(k, Side(photo)) for k, photo in enumerate(photos, start=1))
        return Bundle(leaves, self.thickness)


def clean(log: Sawn, rng: np.random.Generator) -> Case:
    return Case(log.bundle([log.photo(j, int(rng.integers(2))) for j in _surfaces(rng)]))


def _surfaces(rng: np.random.Generator, count: int = COUNT) -> list[int]:
    first = int(rng.integers(1, SURFACES - 2 * count - 2))
    return [first + 2 * k for k in range(count)]


def faulty(kind: str, log: Sawn, other: Sawn, rng: np.random.Generator) -> Case:
    """A random case of one of FAULTS; `other`: the log that a foreign leaf is from."""
    at = _surfaces(rng)
    takes = [int(rng.integers(2)) for _ in at]
    photos = [log.photo(j, take) for j, take in zip(at, takes)]
    k = int(rng.integers(COUNT))
    found = {k + 1}
    if kind == "out of place":
        place = int(rng.choice([n for n in range(COUNT) if n != k]))
        photos.insert(place, photos.pop(k))
        found = {place + 1} if abs(place - k) > 1 else {place + 1, k + 1}
    elif kind == "missing":
        k = int(rng.integers(1, COUNT))
        photos = [*photos[:k], *photos[k + 1 :], log.photo(at[-1] + 2, takes[k])]
        found = {k} if k < COUNT else set()
    elif kind == "thickness":
        k, half = int(rng.integers(3, COUNT - 2)), int(rng.integers(3, 5))
        at = [1 + 2 * n + (half - 2) * max(0, n - k + 1) for n in range(COUNT)]
        photos, found = [log.photo(j, take) for j, take in zip(at, takes)], {k}
    elif kind == "turned":
        photos[k] = log.photo(at[k] + 2, takes[k], kind)
    elif kind == "end for end":
        photos[k] = log.photo(at[k], takes[k], kind)
    elif kind in ("duplicate", "same photograph"):
        same = kind == "same photograph"
        again = photos[k] if same else log.photo(at[k], 1 - takes[k])
        place = int(rng.choice([k, k + 1, int(rng.integers(COUNT + 1))]))
        photos.insert(place, again)
        first = k + 1 + (place <= k)
        found = {place + 1} if abs(place + 1 - first) > 1 else {place + 1, first}
        kind = "duplicate"
    else:
        photos[k] = other.photo(1 + takes[k])
    return Case(log.bundle(photos), kind, frozenset(found))


def right(case: Case) -> tuple[bool, str, float]:
    """Whether the proof names what is wrong and nothing else; what it names; seconds of processor
    time."""
    clock = time.process_time()
    proof = prove_sequence(case.bundle)
    clock = time.process_time() - clock
    named = {(s.kind, s.leaf) for s in proof.suspects}
    if case.kind:
        good = bool(named) and all(k == case.kind and n in case.leaves for k, n in named)
    else:
        good = not named
    told = ", ".join(s.text for s in proof.suspects) or "nothing"
    return good, f"{'sure' if proof.sure else 'not sure'}: {told}", clock


def count(figure: str, args: argparse.Namespace, good: Counter, of: Counter,
          seconds: dict[str, list[float]]) -> None:
    def judge(kind: str, seed: int, case: Case) -> None:
        fine, told, clock = right(case)
        seconds[kind].append(clock)
        of[figure, kind] += 1
        silent = figure == PLAIN and told == "not sure: nothing"
        good[figure, kind] += fine or silent
        if not (fine or silent):
            print(f"  {figure}, log {seed}, {kind} {sorted(case.leaves)}: {told}", flush=True)

    for seed in range(args.seed, args.seed + args.logs):
        rng = np.random.default_rng([seed, *figure.encode()])
        log, other = Sawn(figure, seed, SURFACES, args), Sawn(figure, seed + OTHER, 3, args)
        for _ in range(args.clean):
            judge("clean", seed, clean(log, rng))
        for kind in FAULTS:
            judge(kind, seed, faulty(kind, log, other, rng))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("figures", nargs="*", default=[*FIGURES, PLAIN])
    for name, default in (("logs", LOGS), ("clean", CLEAN), ("seed", 1), ("quality", 80)):
        parser.add_argument(f"--{name}", type=int, default=default)
    for name, default in (
        ("width", 300.0), ("length", 900.0), ("scale", 1.0), ("thickness", 0.6)
    ):
        parser.add_argument(f"--{name}", type=float, default=default)
    args = parser.parse_args()
    print(f"{COUNT} leaves of {args.width:g} x {args.length:g} mm, {args.thickness:g} mm thick, at "
          f"{args.scale:g} mm/px; {OFF}; JPEG {args.quality}")
    good, of, seconds = Counter(), Counter(), defaultdict(list)
    for figure in args.figures:
        count(figure, args, good, of, seconds)
    print(f"{'rightly named':16}" + "".join(f"{f:>12}" for f in args.figures) + f"{'all':>12}"
          f"{'seconds':>12}{'longest':>12}")
    for kind in (*FAULTS, "clean"):
        cells = [(good[f, kind], of[f, kind]) for f in args.figures]
        cells.append(tuple(map(sum, zip(*(c for c, f in zip(cells, args.figures) if f != PLAIN)))))
        print(f"{kind:16}" + "".join(f"{'{}/{}'.format(*c) if c else '':>12}" for c in cells)
              + f"{np.median(seconds[kind]):12.2f}{max(seconds[kind]):12.2f}")
    print(f"'all' is without {PLAIN}, where silence is right as well. Seconds of processor time a "
          "proof: the median and the longest.")
    on_table(good, of, seconds, args)


def on_table(
    good: Counter, of: Counter, seconds: dict[str, list[float]], args: argparse.Namespace
) -> None:
    def total(counts: Counter, clean: bool) -> int:
        return sum(n for (_, kind), n in counts.items() if (kind == "clean") == clean)

    faults, cleans = total(of, False), total(of, True)
    full = args.logs >= LOGS and args.clean >= CLEAN and {*FIGURES} <= {*args.figures}
    more = {"peer": "the truth", "reduced": "" if full else "bash tests/bench/run.sh proof"}
    figures = ", ".join(args.figures)
    give(Row(
        "proof", f"{faults} faults of 8 kinds named rightly, kind and leaf, {figures}",
        total(good, False) / faults, "", aim="ours >= 0.99", chosen=True, **more,
    ))  # fmt: skip
    give(Row(
        "proof", f"{cleans} clean bundles accused", 1 - total(good, True) / cleans, "",
        aim="ours <= 0.01", **more,
    ))  # fmt: skip
    every = [each for kind in seconds.values() for each in kind]
    what = f"proof of the order of {COUNT} leaves of {args.width:g} x {args.length:g} mm"
    for name, value in (("median", np.median(every)), ("longest", max(every))):
        give(Row(
            "proof", f"{what}, processor time: {name}", float(value), "s", aim="ours <= 1",
            reduced=more["reduced"],
        ))  # fmt: skip


if __name__ == "__main__":
    main()

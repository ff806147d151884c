# SPDX-License-Identifier: LGPL-2.1-or-later
"""How much over to cut every wedge, so that truing will suffice.

Truing suffices where every part of the ring that is trued reaches its share of 360 degrees: both
halves 180, all quarters 90, or, where only the last joint is trued, the whole ring 360. What is
claimed is the chance that all parts of one ring do so together, under the normal errors that
`expected` names, with the diameter fixed beforehand or chosen after the wedges are measured. Truing
itself is taken to be straight.

Diameter fixed, p parts of g wedges: with Z the common error and S_i the parts' own, all reach when
Z + min S_i >= 360/p - g a, so that the chance is the integral of the density of one times the
distribution of the other (the one that spreads more is integrated over).

Diameter chosen: with T the sum of all and D the difference of the two halves, the smaller half is
(T - |D|) / 2, and all D have nothing to do with T (their covariance is 0). So the diameter with the
least |D| is taken, as far as the measured wedges tell it, and the chance is the mean over that |D|
of P(T >= 360 + |D|). The distribution of |D| depends on nothing but n and how well is measured; it
is drawn once, with a seed.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np
from scipy.special import ndtr

from veneerwb.core.errors import VeneerError
from veneerwb.core.matches.asked import between
from veneerwb.core.plane import choice
from veneerwb.core.shop.closing.expected import Errors, Expected
from veneerwb.core.shop.closing.ring import check_parts
from veneerwb.words import marked

HOWS = {"both ends": 2, "one end": 2, "quarters": 4, "last joint": 1}
"""How the ring is trued, and into how many parts it is for that."""
STEP = 0.01
"""Degrees: an over that is advised is rounded up to this."""
FURTHEST = 1.5
"""Times 360/n: no wedge is cut to more."""
DRAWS = 40_000
RUNS = 10_000
NONE = 1e-9
"""Degrees: an error that is smaller is none."""
_ENDS = 9.0  # standard deviations: beyond them lies less than 1e-18
_GRID = 2001


def hows(ways: int) -> tuple[str, ...]:
    """The ways of truing that a ring of so many has."""
    if ways % 2:
        return ("last joint",)
    return tuple(how for how, parts in HOWS.items() if parts > 1 and ways % parts == 0)


def parts_of(ways: int, how: str) -> int:
    """Into how many parts it is trued; VeneerError where that cannot be."""
    count = HOWS[choice(marked("way of truing"), how, tuple(HOWS))]
    check_parts(ways, count)
    return count


def chance(expected: Expected, how: str, measured: float | None = None) -> float:
    """That all parts of the ring reach their share, 0 to 1. `measured`: the standard error in
    degrees of each wedge's measured angle, by which the diameter is chosen; None: it is fixed
    beforehand."""
    parts = parts_of(expected.ways, how)
    part = expected.sum(expected.ways // parts)
    short = 360.0 / parts - part.mean
    if parts == 1 or part.own <= NONE:
        return _reaches(short, part.spread)
    if parts == 2 and measured is not None:
        return _chosen(expected, measured)
    return _fixed(short, part.common, part.own, parts)


def _reaches(short: float, spread: float) -> float:
    """That a normal of that spread is `short` or more."""
    return float(ndtr(-short / spread)) if spread else float(short <= 1e-12)


def _fixed(short: float, common: float, own: float, parts: int) -> float:
    z = np.linspace(-_ENDS, _ENDS, _GRID)
    density = np.exp(-0.5 * z * z) / math.sqrt(2.0 * math.pi)
    if common <= NONE:
        return float(ndtr(-short / own) ** parts)
    if common <= own:  # over the least of the own sums: its density is p f (1 - F)^(p - 1)
        reach = parts * ndtr(-z) ** (parts - 1) * ndtr((own * z - short) / common)
    else:
        reach = ndtr((common * z - short) / own) ** parts
    return float((density * reach).sum() * (z[1] - z[0]))


def _chosen(expected: Expected, measured: float) -> float:
    apart = expected.errors.piece * _apart(expected.ways, measured / expected.errors.piece)
    ring = expected.ring
    return float(ndtr((ring.mean - 360.0 - apart) / ring.spread).mean())


@lru_cache(maxsize=32)
def _apart(ways: int, measured: float) -> np.ndarray:
    """Draws of |D| of the chosen diameter, for pieces of the standard error 1 that are measured to
    `measured`."""
    rng = np.random.default_rng(ways)
    half = ways // 2
    own = rng.normal(size=(DRAWS, ways))
    seen = own + measured * rng.normal(size=own.shape)
    picked = np.abs(differences(seen)).argmin(axis=1)
    return np.abs(differences(own))[np.arange(DRAWS), picked % half]


def differences(angles: np.ndarray) -> np.ndarray:
    """The first half less the other for every diameter: N x n wedges give N x n/2."""
    half = angles.shape[1] // 2
    across = angles[:, :half] - angles[:, half:]
    total = across.sum(axis=1, keepdims=True)
    before = np.concatenate(
        [np.zeros_like(total), np.cumsum(across, axis=1)[:, :-1]], axis=1
    )
    return total - 2.0 * before


@dataclass(frozen=True)
class Over:
    """Cut every wedge `degrees` over 360/n: the ring then trues `how` with the chance `claimed`,
    which is at least the `confidence` asked for. `expected` has the sums that go with it."""

    degrees: float
    confidence: float
    how: str
    measured: float | None
    expected: Expected
    claimed: float

    @property
    def cut(self) -> float:
        """The angle that the template gets, degrees."""
        return self.expected.cut


def least_over(
    ways: int, errors: Errors, confidence: float, how: str, measured: float | None = None
) -> Over:
    """The least over, to STEP and never under 0, that trues a ring with that confidence (0.5 to
    0.9999)."""
    sure = between(marked("confidence"), confidence, 0.5, 0.9999)
    true = 360.0 / ways
    at = Expected(ways, true, errors)

    def met(steps: int) -> bool:
        return chance(replace(at, cut=true + steps * STEP), how, measured) >= sure

    least, most = -1, math.floor((min(FURTHEST * true, 175.0) - true) / STEP)
    if not met(most):
        raise VeneerError(
            "too-wild",
            "With errors like these no over that can be cut is sure to true {ways} wedges; make a "
            "better template, or cut fewer ways.",
            ways=ways,
        )
    while most - least > 1:
        middle = (least + most) // 2
        least, most = (least, middle) if met(middle) else (middle, most)
    over = most * STEP
    expected = replace(at, cut=true + over)
    return Over(over, sure, how, measured, expected, chance(expected, how, measured))


def replayed(over: Over, runs: int = RUNS, seed: int = 1) -> int:
    """In how many of `runs` rings, each wedge drawn for itself, every part reached its share: what
    `over.claimed` says is tried out and not worked out."""
    angles = drawn(over.expected, runs, seed)
    ways, parts = over.expected.ways, parts_of(over.expected.ways, over.how)
    if parts == 2 and over.measured is not None:
        rng = np.random.default_rng(seed + 1)
        seen = angles + rng.normal(0.0, over.measured, angles.shape)
        first = np.abs(differences(seen)).argmin(axis=1)
        turned = (first[:, None] + np.arange(ways)) % ways
        angles = np.take_along_axis(angles, turned, axis=1)
    sums = angles.reshape(runs, parts, ways // parts).sum(axis=2)
    return int((sums >= 360.0 / parts - 1e-12).all(axis=1).sum())


def drawn(expected: Expected, runs: int, seed: int) -> np.ndarray:
    """`runs` rings of wedges as they come off the blade and dry, runs x n degrees at taping."""
    rng = np.random.default_rng(seed)
    errors = expected.errors
    template = rng.normal(0.0, errors.template, (runs, 1))
    angles = expected.cut + template + rng.normal(0.0, errors.piece, (runs, expected.ways))
    wet = errors.moisture
    if wet is None:
        return angles
    factor = 1.0 + wet.coefficient * (
        wet.change + rng.normal(0.0, wet.uncertainty, (runs, 1))
    )
    ends = [np.radians(side * angles / 2.0 - wet.grain) for side in (-1.0, 1.0)]
    first, last = (np.degrees(np.arctan2(factor * np.sin(t), np.cos(t))) for t in ends)
    return (last - first) % 360.0

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The largest wedge of a convex place, and the largest round a spot of any other.

A wedge is convex, so it is clear of an edge of an area or a fault just if a line parts the two. For
lines that are given the largest wedge is a linear programme (`program`), in many directions at
once; lines square to a side of the wedge turn with it. So a wedge grows by turns: the lines that
part it best from every edge, then the largest wedge that keeps to them. It never shrinks, and is
clear of all edges at any moment.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from veneerwb.core.yields.places import Place
from veneerwb.core.yields.program import largest
from veneerwb.core.yields.wedge import Wedge

STEP = 2.0
"""Degrees between the directions that are tried first."""
FINEST = 0.01
"""Degrees to which a direction is known."""
SPREAD = np.linspace(-1.0, 1.0, 11)
MOST_ROUNDS = 40
ENOUGH = 0.02
"""mm that a round must gain, else directions are looked at more closely."""
STARTS = (1.0, 0.85, 0.6)
"""Shares of the reach that a spot promises from which a wedge is grown."""
MOST_PEAKS = 60
"""Directions of places that are looked at more closely."""


@dataclass(frozen=True)
class Grown:
    """A wedge: its tip, its direction (degrees), how far it reaches, on the place of which leaf."""

    x: float
    y: float
    angle: float
    reach: float
    first: int

    @property
    def rank(self) -> tuple[float, ...]:
        """Largest first; of those alike the earliest leaf, then the nearest to along the grain."""
        off = abs((self.angle - 90.0 + 180.0) % 360.0 - 180.0)
        return (-round(self.reach, 3), self.first, round(off, 3), self.angle, self.x, self.y)


def in_convex(wedge: Wedge, places: Sequence[Place]) -> list[Grown]:
    """The largest wedge on convex places, in any direction, and some that are nearly as large."""
    if not places:
        return []
    fields = [_Field(wedge, place) for place in places]
    angles = np.arange(0.0, 360.0, STEP)
    most = max(len(field.limits) for field in fields)
    normals, limits = (np.array(part) for part in zip(*(f.padded(most) for f in fields)))
    field, turns = np.repeat(np.arange(len(fields)), len(angles)), np.tile(angles, len(fields))

    def sizes() -> tuple[np.ndarray, np.ndarray]:
        lines = wedge.lines(normals[field], turns, limits[field], np.zeros(most, bool))
        return largest(normals[field], *lines)

    tips, reaches = sizes()
    high = _peaks(reaches.reshape(len(fields), -1)).ravel()
    span, kept = STEP, MOST_PEAKS
    while True:
        high = high[np.argsort(-np.round(reaches[high], 6), kind="stable")][:kept]
        tips, reaches, field, turns = tips[high], reaches[high], field[high], turns[high]
        if span < FINEST:
            break
        field = np.repeat(field, len(SPREAD))
        turns = (turns[:, None] + span * SPREAD).ravel()
        tips, reaches = sizes()
        count = len(high)
        high = np.arange(count) * len(SPREAD) + reaches.reshape(count, -1).argmax(axis=1)
        span, kept = span / 4.0, max(6, kept // 3)
    return [
        Grown(float(x), float(y), float(turn) % 360.0, float(reach), fields[k].place.first)
        for (x, y), turn, reach, k in zip(tips, turns, reaches, field) if reach > 0.0
    ]


def _peaks(sizes: np.ndarray) -> np.ndarray:
    """Flat indices of those whose neighbours in direction (last axis) are no larger."""
    high = (sizes >= np.roll(sizes, 1, axis=1)) & (sizes >= np.roll(sizes, -1, axis=1))
    return np.flatnonzero(high)


class _Field:
    """A convex place as the lines of its edges."""

    def __init__(self, wedge: Wedge, place: Place) -> None:
        self.wedge, self.place = wedge, place
        ring = np.asarray(place.area.convex_hull.exterior.coords)[:, :2]
        x, y = ring[:-1].T
        if np.dot(x, np.roll(y, -1)) < np.dot(y, np.roll(x, -1)):
            ring = ring[::-1]
        edges = np.diff(ring, axis=0)
        lengths = np.hypot(*edges.T)
        kept = lengths > 1e-6
        self.normals = np.column_stack([edges[:, 1], -edges[:, 0]])[kept] / lengths[kept, None]
        self.limits = np.einsum("mi,mi->m", self.normals, ring[:-1][kept])

    def padded(self, count: int) -> tuple[np.ndarray, np.ndarray]:
        more = count - len(self.limits)
        return (
            np.concatenate([self.normals, np.repeat(self.normals[:1], more, 0)]),
            np.concatenate([self.limits, np.repeat(self.limits[:1], more)]),
        )


def grown_from(seed: Grown, wedge: Wedge, place: Place, rounds: int = MOST_ROUNDS) -> Grown | None:
    """The wedge grown about a spot; None where nothing stands there.

    At the spot it may still cross edges: what it is shifted and shrunk to at first is clear.
    """
    parting = _Parting(wedge, *place.lines)
    starts = [replace(seed, reach=seed.reach * share) for share in STARTS]
    begun = [g for g in parting.grown(starts, 4.0) if g]
    if not begun:
        return None
    here, span = min(begun, key=lambda g: g.rank), 4.0
    for _ in range(rounds):
        (better,) = parting.grown([here], span)
        gain = better.reach - here.reach if better else 0.0
        if gain > 0.0:
            here = better
        if gain < max(ENOUGH, 1e-4 * here.reach):
            span /= 3.0
            if span < FINEST:
                break
    return here


class _Parting:
    """Lines between a wedge and edges."""

    def __init__(
        self, wedge: Wedge, starts: np.ndarray, ends: np.ndarray, faults: np.ndarray
    ) -> None:
        self._wedge, self._starts, self._ends, self._faults = wedge, starts, ends, faults
        along = ends - starts
        self._across = np.degrees(np.arctan2(-along[:, 0], along[:, 1]))
        self._sides = wedge.sides

    def _gaps(
        self, x: float, y: float, angle: float, reach: float, near: np.ndarray
    ) -> tuple[np.ndarray, np.ndarray]:
        """Directions and gaps (K x M): the sides of the wedge first, then across every edge."""
        across, faults = self._across[near], self._faults[near]
        sides = np.repeat((self._sides + angle)[:, None], len(across), axis=1)
        turns = np.concatenate([sides, [across, across + 180.0]])
        normals = _unit(turns)
        limits = _nearest(normals, self._starts[near], self._ends[near])
        rises, limits = self._wedge.lines(normals, np.full(len(turns), angle), limits, faults)
        return turns, limits - normals @ (x, y) - reach * rises

    def grown(self, starts: Sequence[Grown], span: float) -> list[Grown | None]:
        """For wedges at one spot, the widest first: the largest that keeps to the lines that part
        it best from all edges, turned by up to `span` degrees; None if there is none."""
        here = starts[0]
        away = self._away(here.x, here.y)
        longer = self._wedge.longer
        size = here.reach * longer + self._wedge.oversize
        for limit in (1.3 * size + 20.0, np.inf):
            found = self._within(starts, span, away < limit)
            # What lies further off than a wedge now reaches was rightly left out.
            if not any(g is None or limit <= self._wedge.oversize + g.reach * longer + np.hypot(
                g.x - here.x, g.y - here.y
            ) for g in found):
                break
        return found

    def _within(
        self, starts: Sequence[Grown], span: float, near: np.ndarray
    ) -> list[Grown | None]:
        """The largest wedges kept from the edges `near`; None where there is none."""
        by = span * SPREAD
        parts = [self._lines(here, by, near) for here in starts]
        tips, reaches = largest(*map(np.concatenate, zip(*parts)))
        found: list[Grown | None] = []
        for here, spots, sizes in zip(starts, *(np.split(n, len(starts)) for n in (tips, reaches))):
            k = int(np.argmax(np.round(sizes, 6)))
            angle = float(here.angle + by[k]) % 360.0
            at = Grown(*map(float, spots[k]), angle, float(sizes[k]), here.first)
            found.append(at if sizes[k] > 1.0 else None)
        return found

    def _lines(
        self, here: Grown, by: np.ndarray, near: np.ndarray
    ) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Normals, rises and limits of the lines that part a wedge best from the edges `near`,
        turned with it by so many degrees."""
        turns, gaps = self._gaps(here.x, here.y, here.angle, here.reach, near)
        chosen = gaps.argmax(axis=0)
        turns, turning = turns[chosen, np.arange(gaps.shape[1])], chosen < len(self._sides)
        normals = _unit(np.where(turning, turns + by[:, None], turns))
        limits = _nearest(normals, self._starts[near], self._ends[near])
        return normals, *self._wedge.lines(normals, here.angle + by, limits, self._faults[near])

    def _away(self, x: float, y: float) -> np.ndarray:
        """How far every edge lies from a point."""
        along, to = self._ends - self._starts, (x, y) - self._starts
        share = np.clip((to * along).sum(axis=1) / (along * along).sum(axis=1), 0.0, 1.0)
        return np.hypot(*(to - share[:, None] * along).T)


def _unit(turns: np.ndarray) -> np.ndarray:
    return np.stack([np.cos(np.radians(turns)), np.sin(np.radians(turns))], axis=-1)


def _nearest(normals: np.ndarray, starts: np.ndarray, ends: np.ndarray) -> np.ndarray:
    """How far along each normal edges lie at least."""
    return np.minimum(
        np.einsum("kmi,mi->km", normals, starts), np.einsum("kmi,mi->km", normals, ends)
    )

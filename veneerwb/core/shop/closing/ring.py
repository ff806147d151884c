# SPDX-License-Identifier: LGPL-2.1-or-later
"""The ring that is to be closed: its seams and how long they are, its parts.

Seam k ends piece k and begins piece k + 1; seam 0 begins piece 1 and is seam n too. An even ring of
n pieces has n/2 diameters; the one that is named by its `first` piece, 1 to n/2, runs along the
seams that begin that piece and the one n/2 further.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.matches.radial import Radial
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Edge, Line
from veneerwb.core.plane import Motion, Point

CORNER = 0.05
"""mm: a seam that ends nearer to a corner of the top was meant to end in it."""
BEND = 1.0
"""Degrees: straights that turn by more make a corner."""


@dataclass(frozen=True)
class Ring:
    """`ways` pieces about a centre; seam k runs in direction `start` + (2k - 1) 180/n to the
    finished `edge` (mm, about the ring's centre)."""

    ways: int
    start: float
    edge: Edge

    @staticmethod
    def of(layout: Layout, over: float = 0.0) -> Ring:
        """That of a radial layout, its edge `over` mm out; VeneerError for others, and where a seam
        leads nowhere."""
        recipe = layout.recipe
        if not isinstance(recipe, Radial):
            raise VeneerError(
                "no-ring",
                "Only a radial match is a ring that closes; choose one, or see its joints in the "
                "checks.",
            )
        x, y = recipe.centre
        edge = layout.top.grown(over) if over else layout.top.edge
        ring = Ring(recipe.ways, recipe.start, edges.moved(edge, Motion(dx=-x, dy=-y)))
        for k in range(ring.ways):
            if not ring.length(k):
                raise VeneerError(
                    "no-ring",
                    "Seam {seam} of this ring never meets the top's edge, so that its closing "
                    "cannot be told; move the ring's centre into the top.",
                    seam=k or ring.ways,
                )
        return ring

    @property
    def angle(self) -> float:
        """What each wedge should have, degrees."""
        return 360.0 / self.ways

    @property
    def reach(self) -> float:
        """The longest seam, mm."""
        return max(self.length(k) for k in range(self.ways))

    def direction(self, k: float) -> float:
        """Where seam k should run, degrees."""
        return self.start + (2.0 * k - 1.0) * 180.0 / self.ways

    @cached_property
    def ends(self) -> tuple[Point | None, ...]:
        """Where seams 0 to n - 1 should meet the finished edge."""
        return tuple(self.meets((0.0, 0.0), self.direction(k)) for k in range(self.ways))

    def length(self, k: int) -> float:
        """Of seam k from the centre to the finished edge, mm; 0 where it leads nowhere."""
        end = self.ends[k % self.ways]
        return math.hypot(*end) if end else 0.0

    def straightedge(self, first: int, at: str) -> float:
        """How far from the tip a gap is seen under a straightedge on the half that `first` begins,
        mm: at an "end" as far as that end; at the "tip" the harmonic mean of both ends, so that
        180 + 2 asin(g / r) holds to the second order where they are unlike too."""
        one, other = self.length(first - 1), self.length(first - 1 + self.ways // 2)
        return max(one, other) if at == "end" else 2.0 * one * other / (one + other)

    def meets(self, point: Point, direction: float) -> Point | None:
        """Where the ray from a point meets the edge (the furthest place)."""
        away = Motion(dx=-point[0], dy=-point[1])
        hits = []
        for segment in self.edge:
            moved = segment.moved(away)
            share = moved.hit(direction)
            if share is not None:
                hits.append((math.hypot(*moved.at(share)), segment.at(share)))
        return max(hits)[1] if hits else None

    def corner(self, k: int) -> Point | None:
        """The corner of the top that seam k should end in, if there is one."""
        end = self.ends[k % self.ways]
        for a, b in zip(self.edge, [*self.edge[1:], self.edge[0]]):
            bend = isinstance(a, Line) and isinstance(b, Line) and _bend(a, b) > BEND
            if bend and end and math.dist(a.end, end) <= CORNER:
                return a.end
        return None

    @property
    def diameters(self) -> tuple[int, ...]:
        """Their first pieces; none of an odd ring."""
        return () if self.ways % 2 else tuple(range(1, self.ways // 2 + 1))

    def parts(self, first: int, count: int) -> tuple[tuple[int, ...], ...]:
        """The positions in each of `count` equal parts of the ring, the one that `first` begins
        first; VeneerError where there are no such parts."""
        check_parts(self.ways, count)
        each = self.ways // count
        return tuple(
            tuple((first - 1 + p * each + k) % self.ways + 1 for k in range(each))
            for p in range(count)
        )


def check_parts(ways: int, count: int) -> None:
    """VeneerError where a ring has no such parts."""
    if ways % count == 0:
        return
    if count == 2:
        raise VeneerError(
            "no-halves",
            "{ways} pieces make no two halves, for their number is odd: true the last joint alone.",
            ways=ways,
        )
    raise VeneerError(
        "no-quarters",
        "{ways} pieces make no four quarters; true by halves, or take a number of ways that is "
        "divisible by 4.",
        ways=ways,
    )


def _bend(a: Line, b: Line) -> float:
    (ux, uy), (vx, vy) = a.slope(0.0), b.slope(0.0)
    return abs(math.degrees(math.atan2(ux * vy - uy * vx, ux * vx + uy * vy)))

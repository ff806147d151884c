# SPDX-License-Identifier: LGPL-2.1-or-later
"""The ring as it is cut and trued: where every seam comes to lie, and what is lost by it.

A part of the ring (half, quarter) whose wedges sum to H is trued to its share P. Over by d = H - P
it loses d in lines through its tip: at both ends alike, d / 2 each, or all of it at its last end.
Its other seams keep the angles that were cut, and so leave their places. Under by d it can be trued
only further out: its sides run through the ends of its outer seams (of length R), and its tip is
lost: it would lie R sin(d / 2) / sin(P / 2) behind the centre, which for a half (P = 180) is
R sin(d / 2). Where only the last joint is trued (odd rings), the excess is taken from its two
pieces alike, and what is missing stays open.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout, cuts_of
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches import wedges
from veneerwb.core.matches.cells import Cell, pieces_of, seams_of
from veneerwb.core.matches.radial import Radial
from veneerwb.core.outlines.region import Half, Region
from veneerwb.core.plane import Motion, Point, cosd, polar, positive, sind
from veneerwb.core.shop.closing.over import parts_of
from veneerwb.core.shop.closing.ring import Ring
from veneerwb.core.top import Top
from veneerwb.words import marked

LEAST_MISS = 0.0005
"""mm: a seam that ends nearer to its corner does not miss it."""


@dataclass(frozen=True)
class Placed:
    """Where one piece comes to lie: between the directions `first` and `last` (degrees, after
    truing) from its `tip` (mm from the ring's centre), its own axis in direction `axis`."""

    first: float
    last: float
    axis: float
    tip: Point = (0.0, 0.0)


@dataclass(frozen=True)
class Part:
    """A part that is trued: its `positions`, the directions `begin` and `end` between which it is
    to lie, the `sum` of its angles, what is trued off at its two ends (degrees; under: less than
    0), and the longest of its outer seams (mm)."""

    positions: tuple[int, ...]
    begin: float
    end: float
    sum: float
    trims: tuple[float, float]
    lengths: tuple[float, float]

    @property
    def over(self) -> float:
        """Degrees over its share (under: less than 0)."""
        return self.sum - (self.end - self.begin)

    @property
    def sides(self) -> tuple[float, float]:
        """The directions of its outer edges as they were cut, degrees."""
        return self.begin - self.trims[0], self.end + self.trims[1]

    @property
    def tip_lost(self) -> float:
        """How far behind the centre its tip would lie, mm; 0 where it is not under, or is all of
        the ring."""
        if self.over >= 0.0 or not self.trued:
            return 0.0
        return max(self.lengths) * sind(-self.over / 2.0) / sind((self.end - self.begin) / 2.0)

    @property
    def trued(self) -> bool:
        """Whether it can be: all of a ring that is under stays open."""
        return self.over >= 0.0 or self.end - self.begin < 360.0

    @property
    def open(self) -> float:
        """What stays open at the rim where it cannot, mm: 2 R sin(d / 2)."""
        return 0.0 if self.trued else 2.0 * max(self.lengths) * sind(min(180.0, -self.over / 2.0))

    @property
    def area(self) -> float:
        """What is trued off, mm2: 1/2 L^2 d at each end."""
        if not self.trued:
            return 0.0
        ends = zip(self.trims, self.lengths)
        return math.fsum(0.5 * length**2 * math.radians(abs(trim)) for trim, length in ends)

    @property
    def offsets(self) -> tuple[tuple[float, float], tuple[float, float]]:
        """The line to true each end along: mm from the piece's edge, square to it, at tip and at
        rim. With h the tip's distance from the line and b the angle to it: (h - r sin b) / cos b.
        """
        if not self.trued:
            return (0.0, 0.0), (0.0, 0.0)
        height = self.tip_lost * sind((self.end - self.begin) / 2.0)
        found = []
        for trim, length in zip(self.trims, self.lengths):
            turn = cosd(trim)
            if trim >= 0.0:
                found.append((0.0, length * sind(trim)))
            else:
                rim = (height - length * sind(-trim)) / turn
                found.append((height / turn, 0.0 if abs(rim) < 1e-9 else rim))
        return found[0], found[1]


@dataclass(frozen=True)
class Places:
    """All pieces of a trued ring in the order of their positions, and its parts."""

    ring: Ring
    how: str
    first: int
    pieces: tuple[Placed, ...]
    parts: tuple[Part, ...]

    def joints(self) -> tuple[int, ...]:
        """The seams that are trued."""
        return tuple((part.positions[0] - 1) % self.ring.ways for part in self.parts)

    def shift(self, k: int) -> float:
        """How far seam k, seen from the piece that it ends, lies from its place along the rim, mm:
        2 L sin(shift / 2) of a round top; for others measured on the edge."""
        piece = self.pieces[(k - 1) % self.ring.ways]
        end = self.ring.meets(piece.tip, piece.last)
        true = self.ring.ends[k % self.ring.ways]
        return math.dist(end, true) if end and true else math.inf

    def turned(self, k: int) -> float:
        """The same in degrees, with its sign."""
        last = self.pieces[(k - 1) % self.ring.ways].last
        return math.remainder(last - self.ring.direction(k), 360.0)


def places(ring: Ring, angles: Sequence[float], how: str, first: int = 1) -> Places:
    """Where the pieces lie when wedges of these angles (by position, degrees at taping) are
    assembled in parts from position `first` on and trued."""
    if len(angles) != ring.ways:
        raise VeneerError(
            "wrong-count",
            "A ring of {ways} pieces needs {ways} angles; these are {count}.",
            ways=ring.ways, count=len(angles),
        )  # fmt: skip
    values = [positive(marked("wedge angle"), angle, 360.0) for angle in angles]
    share = 360.0 / parts_of(ring.ways, how)
    placed: dict[int, Placed] = {}
    parts = []
    for positions in ring.parts(first, round(360.0 / share)):
        part = _part(ring, positions, [values[p - 1] for p in positions], share, how)
        placed.update(_laid(part, [values[p - 1] for p in positions]))
        parts.append(part)
    pieces = tuple(placed[p] for p in range(1, ring.ways + 1))
    return Places(ring, how, first, pieces, tuple(parts))


def _part(
    ring: Ring, positions: tuple[int, ...], angles: Sequence[float], share: float, how: str
) -> Part:
    total = math.fsum(angles)
    over = total - share
    begin = ring.direction(positions[0] - 1)
    once = how == "one end" and over >= 0.0
    trims = (0.0, over) if once else (over / 2.0, over / 2.0)
    for trim, angle, at in zip(trims, (angles[0], angles[-1]), (positions[0], positions[-1])):
        if trim >= angle:
            raise VeneerError(
                "wedge-lost",
                "Truing would take {trim} deg and the piece at position {at} has {angle}; true by "
                "quarters, or cut anew nearer to {true} deg.",
                trim=trim, at=at, angle=angle, true=ring.angle,
            )  # fmt: skip
    lengths = ring.length(positions[0] - 1), ring.length(positions[-1] % ring.ways)
    return Part(positions, begin, begin + share, total, trims, lengths)


def _laid(part: Part, angles: Sequence[float]) -> dict[int, Placed]:
    tip = polar(-part.tip_lost, (part.begin + part.end) / 2.0)
    at, found = part.begin - part.trims[0], {}
    for position, angle in zip(part.positions, angles):
        first, last = at, at + angle
        if part.over >= 0.0:  # what lies beyond the part's ends is trued off
            first, last = max(first, part.begin), min(last, part.end)
        found[position] = Placed(first, last, at + angle / 2.0, tip)
        at += angle
    return found


# --- what it costs ------------------------------------------------------------------------------


@dataclass(frozen=True)
class Costs:
    """What truing takes: `seam`, the seam that leaves its place furthest, by `shift` mm at the rim;
    `lost`, the most that one piece loses at its rim (mm) and `turn` the same in degrees; `area`
    trued off, mm2, as 1/2 L^2 d at every end; `mirror_off`, the most by which the two pieces of a
    trued joint lose unequally at the rim (mm): so far a book joint misses there; `tips`, the most
    that a tip lies behind the centre (mm); `open`, what stays open at the rim of a last joint (mm);
    `corners`, seams with the mm by which they miss the corner of the top that they should end in;
    `ends`, how many ends of parts are trued."""

    seam: int
    shift: float
    lost: float
    turn: float
    area: float
    mirror_off: float
    tips: float
    open: float
    corners: tuple[tuple[int, float], ...]
    ends: int


def costs(at: Places) -> Costs:
    """Those of a trued ring."""
    ring, ways = at.ring, at.ring.ways
    seams = range(1, ways + 1)
    seam = max(seams, key=lambda k: (round(at.shift(k), 6), -k))
    ends = [(t, length) for p in at.parts if p.trued for t, length in zip(p.trims, p.lengths)]
    corners = ((k, at.shift(k)) for k in seams if ring.corner(k))
    return Costs(
        seam,
        at.shift(seam),
        max((length * sind(max(trim, 0.0)) for trim, length in ends), default=0.0),
        max((max(trim, 0.0) for trim, _ in ends), default=0.0),
        math.fsum(part.area for part in at.parts),
        max(_unlike(at)),
        max(part.tip_lost for part in at.parts),
        max(part.open for part in at.parts),
        tuple((k, miss) for k, miss in corners if miss > LEAST_MISS),
        sum(1 for trim, _ in ends if abs(trim) > 1e-9),
    )


def _unlike(at: Places) -> list[float]:
    """At every trued joint, by how much the two pieces lose unequally at the rim."""
    found = []
    for before, after in zip(at.parts, [*at.parts[1:], at.parts[0]]):
        one, other = max(before.trims[1], 0.0), max(after.trims[0], 0.0)
        found.append(before.lengths[1] * abs(sind(one) - sind(other)))
    return found


@dataclass(frozen=True)
class Bent:
    """Halves that together reach 360, of which one is under: that one (`kept`) stays as it is, the
    `other` is trued to what is left of 360 (`to`, degrees) by `trim` degrees at each end, mm `offs`
    at the rim and nothing at the tip. No tip is lost then, and the joint bends at the tips by
    `bend` degrees."""

    kept: Part
    other: Part
    to: float
    trim: float
    offs: tuple[float, float]

    @property
    def bend(self) -> float:
        return self.to - 180.0


def bent(at: Places) -> Bent | None:
    """That of a ring that is trued by halves; None where no half is under, or both together are."""
    if len(at.parts) != 2:
        return None
    kept, other = sorted(at.parts, key=lambda part: part.over)
    spare = kept.sum + other.sum - 360.0
    if kept.over >= 0.0 or spare < -1e-9:
        return None
    trim = max(spare, 0.0) / 2.0
    offs = (other.lengths[0] * sind(trim), other.lengths[1] * sind(trim))
    return Bent(kept, other, 360.0 - kept.sum, trim, offs)


# --- the layout of it ---------------------------------------------------------------------------


@dataclass(frozen=True)
class Trued(Radial):
    """A radial recipe whose pieces lie as they were cut and trued. Its layout is for pictures and
    seams; the cuts are those of the layout that was planned."""

    at: Places | None = None

    def direction(self, k: int) -> float:
        return self.at.pieces[(k - 1) % self.ways].last

    def axis(self, position: int) -> float:
        return self.at.pieces[position - 1].axis

    def cells(self, bundle: Leaves, region: Region) -> list[Cell]:
        found = wedges.wedge_cells(self, self.leaf_numbers(bundle), region)
        return [self._moved(cell, k // self.strips) for k, cell in enumerate(found)]

    def _moved(self, cell: Cell, k: int) -> Cell:
        """A cell of the k-th piece with the sides and the tip that it really has."""
        piece = self.at.pieces[k]
        (cx, cy), (tx, ty) = self.centre, piece.tip
        tip = (cx + tx, cy + ty)
        sides = [Half.left_of(tip, piece.first), Half.left_of(tip, piece.last).other]
        if piece.tip != (0.0, 0.0):
            part = next(p for p in self.at.parts if k + 1 in p.positions)
            sides += [
                Half.left_of(self.centre, part.begin), Half.left_of(self.centre, part.end).other,
            ]  # fmt: skip
        frame = cell.frame @ Motion(dx=-tx, dy=-ty)
        return replace(cell, halves=(*sides, *cell.halves[2:]), frame=frame)

    def lay(self, bundle: Leaves, top: Top) -> Layout:
        top = wedges.with_disc(top, self.disc, self.centre)
        pieces = pieces_of(self, bundle, top.region, top.blank_region(self.oversize))
        seams = wedges.in_ring_order(seams_of(pieces, bundle), len(pieces))
        return Layout(pieces, seams, cuts_of(pieces), top, bundle, self)


def as_trued(layout: Layout, at: Places) -> Layout:
    """A radial layout with its pieces where truing really puts them: what `picture` paints."""
    recipe = layout.recipe
    kept = {name: getattr(recipe, name) for name in Radial.__dataclass_fields__}
    return Trued(**{**kept, "rim": "arc"}, at=at).lay(layout.bundle, layout.top)

# SPDX-License-Identifier: LGPL-2.1-or-later
"""A wedge as it is cut: its measures, and which pieces are alike.

A wedge is looked at from the face of its leaf, tip at the origin, axis to the right. A turned piece
appears as it lies on the leaf, which is the mirror image of how it lies on the top.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout, Piece
from veneerwb.core.matches.radial import Radial
from veneerwb.core.outlines import edge as edges
from veneerwb.core.outlines.edge import Arc, Edge, Line
from veneerwb.core.plane import TOUCH, Motion


@dataclass(frozen=True)
class Wedge:
    """A wedge: its finished `net` edge and the `blank` that is cut, the direction of the `grain`
    (degrees from the axis), and the `positions` of the pieces that are cut like it."""

    net: Edge
    blank: Edge
    grain: float
    positions: tuple[int, ...]

    @property
    def angle(self) -> float:
        """The tip's angle, degrees."""
        first, last = (_direction(self.net[k], k) for k in (0, -1))
        return (last - first) % 360.0

    @property
    def sides(self) -> tuple[float, float]:
        """The lengths of the lower and the upper seam, mm."""
        return self.net[0].length, self.net[-1].length

    @property
    def rim(self) -> Edge:
        return self.net[1:-1]

    @property
    def chord(self) -> float:
        """From the one seam's outer end to the other's, mm."""
        return math.dist(self.net[0].end, self.net[-1].start)

    @property
    def rise(self) -> float:
        """How far a single arc rises above its chord, mm; 0 for straights."""
        if len(self.rim) != 1 or not isinstance(self.rim[0], Arc):
            return 0.0
        arc = self.rim[0]
        return arc.radius * (1.0 - math.cos(math.radians(arc.sweep) / 2.0))

    @property
    def oversize(self) -> float:
        """How far the blank reaches beyond the finished rim, square to the rim's longest part,
        mm."""
        longest = max(self.rim, key=lambda segment: segment.length)
        turn = 0.0
        if isinstance(longest, Line):
            (ax, ay), (bx, by) = longest.a, longest.b
            turn = math.degrees(math.atan2(by - ay, bx - ax)) - 90.0
        return edges.extent(self.blank, turn)[1] - edges.extent(self.net, turn)[1]

    @property
    def flats(self) -> tuple[float, ...]:
        """The lengths of the rim's straights from the lower seam on, mm."""
        return tuple(s.length for s in self.rim if isinstance(s, Line))

    @property
    def extents(self) -> tuple[float, float, float, float]:
        """Least x, least y, most x, most y of the blank, mm."""
        (x0, x1), (y0, y1) = (edges.extent(self.blank, turn) for turn in (0.0, 90.0))
        return x0, y0, x1, y1


def _direction(segment: Line, end: int) -> float:
    """The direction from the tip along the seam that begins (0) or ends (-1) an edge."""
    x, y = segment.end if end == 0 else segment.start
    return math.degrees(math.atan2(y, x))


def is_ring(layout: Layout) -> bool:
    """Whether the pieces of a layout are the wedges of a ring about the top's centre, from their
    tips to the edge."""
    return isinstance(layout.recipe, Radial) and all(
        math.hypot(*piece.edge[0].start) <= 1000.0 * TOUCH
        and not piece.holes
        and all(isinstance(s, Line) and s.role == "seam" for s in (piece.edge[0], piece.edge[-1]))
        for piece in layout.pieces
    )


def wedge_of(piece: Piece) -> Wedge:
    """The wedge of one piece. VeneerError for a piece that is none."""
    net, blank = (edges.moved(e, piece.onto_bundle) for e in (piece.edge, piece.blank_edge))
    ends = (net[0], net[-1])
    if any(not isinstance(s, Line) or s.role != "seam" for s in ends):
        raise VeneerError(
            "no-wedge",
            "Piece {position} does not run to a tip between two straight seams; there is no "
            "drawing of such a piece yet.",
            position=piece.position,
        )
    x, y = net[0].start
    to_tip = Motion(dx=-x, dy=-y)
    first, last = (_direction(s.moved(to_tip), k) for k, s in zip((0, -1), ends))
    axis = first + ((last - first) % 360.0) / 2.0
    level = Motion(-axis) @ to_tip
    return Wedge(edges.moved(net, level), edges.moved(blank, level), 90.0 - axis, (piece.position,))


def kinds(pieces: Sequence[Piece]) -> list[Wedge]:
    """The wedges that differ, the one with the longest seams first; each with all positions that
    are cut alike."""
    found: list[Wedge] = []
    for piece in pieces:
        wedge = wedge_of(piece)
        for k, known in enumerate(found):
            if _alike(known, wedge):
                found[k] = Wedge(
                    known.net, known.blank, known.grain, (*known.positions, piece.position)
                )
                break
        else:
            found.append(wedge)
    return sorted(found, key=lambda w: (-round(max(w.sides), 3), w.positions))


def _alike(a: Wedge, b: Wedge) -> bool:
    return abs(a.grain - b.grain) < 1e-6 and all(
        len(one) == len(other)
        and all(
            type(s) is type(t)
            and all(math.dist(s.at(share), t.at(share)) <= 100.0 * TOUCH for share in (0.0, 0.5))
            for s, t in zip(one, other)
        )
        for one, other in ((a.net, b.net), (a.blank, b.blank))
    )

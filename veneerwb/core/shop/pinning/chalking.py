# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is chalked on each leaf inside its cut, before it is pinned: position, side and arrow.

The number that a leaf carries at its end goes with the waste; what stands inside the cut stays with
the piece. It stands near the rim, where a wedge is wide.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from shapely.geometry import Point as ShapelyPoint
from shapely.ops import nearest_points

from veneerwb.core.checks.sufficiency import onto_leaf
from veneerwb.core.layout import Layout, Piece
from veneerwb.core.leaf import ranges
from veneerwb.core.outlines.inside import number_places
from veneerwb.core.plane import Point, choice
from veneerwb.core.shop.cutting.piles import as_layouts, piles
from veneerwb.core.shop.cutting.said import Said
from veneerwb.core.shop.wedge import is_ring
from veneerwb.words import marked, say

SIDES = ("show", "glue")
ROOM, LEAST = 18.0, 3.0
"""mm from the mark's middle to the piece's edge, and the least where a piece is narrow."""
NARROWER = 0.8


@dataclass(frozen=True)
class Chalked:
    """One mark: the `position` it is for (0 for a spare), its `leaf`, whether that is `turned`,
    on which `side` of the leaf it is chalked ("face" or "back"), and its `text`. `at`: where, on
    the top, and `on_leaf`, leaf mm seen from the face. `arrow` and `arrow_on_leaf`: which way the
    arrow points (degrees). `room`: mm round it within the piece. `beside` and `above`: mm from the
    leaf's left edge, as seen on the side that is chalked, and from its lower end."""

    top: int
    position: int
    leaf: int
    turned: bool
    side: str
    text: str
    at: Point
    on_leaf: Point
    arrow: float
    arrow_on_leaf: float
    room: float
    beside: float
    above: float

    @property
    def arrow_seen(self) -> float:
        """Which way the arrow points as seen on the side that is chalked (degrees)."""
        return self.arrow_on_leaf if self.side == "face" else 180.0 - self.arrow_on_leaf


@dataclass(frozen=True)
class Chalking:
    """All marks, whether their arrows point at a `tip` (else up the grain), and what is to be said
    of them."""

    marks: tuple[Chalked, ...]
    tip: bool
    side: str

    @property
    def notes(self) -> tuple[Said, ...]:
        glued = self.side == "glue"
        return (
            Said(
                marked(
                    "Before a leaf is pinned, chalk on it, inside the outline near the rim: "
                    "position, F or B for the side that will show, and an arrow towards the tip. "
                    "The number at the leaf's end goes with the waste."
                )
                if self.tip
                else marked(
                    "Before a leaf is pinned, chalk on it, inside the outline near the rim: "
                    "position, F or B for the side that will show, and an arrow up the grain, to "
                    "the leaf's upper end. The number at the leaf's end goes with the waste."
                )
            ),
            self._where(),
            Said(GLUE if glued else SHOW),
        )

    def _where(self) -> Said:
        """On which side of which leaves it is chalked, and what that is for."""
        faces, backs = ({m.leaf for m in self.marks if m.side == s} for s in ("face", "back"))
        which = "both" if faces and backs else "face" if faces else "back"
        return Said(WHERE[self.side, which], {"faces": ranges(faces), "backs": ranges(backs)})


WHERE = {
    ("show", "face"): marked(
        "Chalk on the face of leaves {faces}: the side that will show, so that the marks are read "
        "while the top is laid out."
    ),
    ("show", "back"): marked(
        "Chalk on the back of leaves {backs}: the side that will show, so that the marks are read "
        "while the top is laid out."
    ),
    ("show", "both"): marked(
        "Chalk on the face of leaves {faces} and on the back of leaves {backs}: the side that will "
        "show, so that the marks are read while the top is laid out."
    ),
    ("glue", "face"): marked(
        "Chalk on the face of leaves {faces}: the side that will be glued, so that the show side "
        "stays clean."
    ),
    ("glue", "back"): marked(
        "Chalk on the back of leaves {backs}: the side that will be glued, so that the show side "
        "stays clean."
    ),
    ("glue", "both"): marked(
        "Chalk on the face of leaves {faces} and on the back of leaves {backs}: the side that will "
        "be glued, so that the show side stays clean."
    ),
}
SHOW = marked(
    "Use soft white chalk, no crayon, ink or wax. All chalk comes off before glue: brush and wipe "
    "it from the show side before tape goes over it, and see that none has come through to the "
    "glue side."
)
GLUE = marked(
    "Use soft white chalk, no crayon, ink or wax. All chalk comes off before glue: brush and wipe "
    "it from the glue side when the taped top is checked, before glue is mixed; neither tape nor "
    "glue holds on chalk."
)


def chalking(
    layouts: Layout | Sequence[Layout], side: str = "show", spares: int = 0,
    by_shape: bool | None = None,
) -> Chalking:
    """The marks of all pieces of a layout, or of several from one bundle, and of the spares.

    `side`: which side of each piece is chalked, "show" or "glue". `spares`, `by_shape`: see
    `piles`.
    """
    choice(marked("side that is chalked"), side, SIDES)
    given = as_layouts(layouts)
    marks = []
    for top, layout in enumerate(given, start=1):
        middles = number_places(layout)
        marks += [_mark(layout, top, piece, middle, side)
                  for piece, middle in zip(layout.pieces, middles)]
    tip = all(map(is_ring, given))
    for pile in piles(given, spares, by_shape):
        first = pile.cuts[0].positions[0]
        like = next(m for m in marks if m.top == pile.cuts[0].top and m.position == first)
        marks += [_spare(given[0], like, leaf) for leaf in pile.spares]
    return Chalking(tuple(marks), tip, side)


def _mark(layout: Layout, top: int, piece: Piece, middle: Point, side: str) -> Chalked:
    at = _place(piece, middle)
    arrow = _arrow(layout, piece, at)
    motion = onto_leaf(piece, layout.bundle)
    shown = "back" if piece.turned else "face"
    other = {"face": "back", "back": "face"}[shown]
    room = piece.outline.exterior.distance(ShapelyPoint(at))
    chalked, on_leaf = shown if side == "show" else other, motion.point(at)
    return Chalked(
        top, piece.position, piece.leaf, piece.turned, chalked,
        say(TURNED if piece.turned else UPRIGHT, position=piece.position), at, on_leaf, arrow,
        _direction(motion, at, arrow), room, *_from_edges(layout, piece.leaf, on_leaf, chalked),
    )


UPRIGHT = marked("{position} F")
TURNED = marked("{position} B")
"""What is chalked on a piece that shows its face, and on one that shows its back."""


def _from_edges(layout: Layout, leaf: int, at: Point, side: str) -> tuple[float, float]:
    """mm from the leaf's left edge, seen on that side, and from its lower end."""
    x0, y0, x1, _ = layout.bundle.usable(leaf).bounds
    return (at[0] - x0 if side == "face" else x1 - at[0]), at[1] - y0


def _place(piece: Piece, middle: Point) -> Point:
    """The place nearest to the middle of the longest rim that has ROOM round it, or as much as a
    narrow piece gives; that of its number where it has no rim."""
    rims = [s for s in piece.edge if s.role == "rim"]
    if not rims:
        return middle
    longest = max(rims, key=lambda s: math.dist(s.start, s.end) or s.length)
    room = ROOM
    while room > LEAST:
        inner = piece.outline.buffer(-room)
        if not inner.is_empty:
            at, _ = nearest_points(inner, ShapelyPoint(longest.at(0.5)))
            return at.x, at.y
        room *= NARROWER
    return middle


def _arrow(layout: Layout, piece: Piece, at: Point) -> float:
    """Towards the tip of a wedge, else up the grain (degrees on the top)."""
    if is_ring(layout):
        tip = piece.edge[0].start
        return math.degrees(math.atan2(tip[1] - at[1], tip[0] - at[0]))
    back = onto_leaf(piece, layout.bundle).inverse()
    (ax, ay), (bx, by) = (back.point(p) for p in ((0.0, 0.0), (0.0, 1.0)))
    return math.degrees(math.atan2(by - ay, bx - ax))


def _direction(motion: Any, at: Point, degrees: float) -> float:
    ahead = at[0] + math.cos(math.radians(degrees)), at[1] + math.sin(math.radians(degrees))
    (ax, ay), (bx, by) = motion.point(at), motion.point(ahead)
    return math.degrees(math.atan2(by - ay, bx - ax))


def _spare(layout: Layout, like: Chalked, leaf: int) -> Chalked:
    """The mark on a spare, where the first piece of its stack has its own."""
    bundle = layout.bundle
    onto = bundle.register(leaf, False) @ bundle.register(like.leaf, like.turned).inverse()
    at = onto.point(like.on_leaf)
    return Chalked(
        like.top, 0, leaf, False, "face", say("spare {leaf}", leaf=leaf), like.at, at, like.arrow,
        _direction(onto, like.on_leaf, like.arrow_on_leaf), like.room,
        *_from_edges(layout, leaf, at, "face"),
    )

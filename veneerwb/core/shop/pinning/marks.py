# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a pin hole is measured from on a leaf, and how well it is found.

Best are the paper marks, then points of the figure that were picked, then the corners of the
leaf's outline. Of all pairs that one is taken from which the hole is found best. Lengths are taken
to be read to some r mm and each mark to be known to some m mm (root mean square of its distance).
Plane geometry, with z = (along + i beside) / length of the line between the marks:

    by two distances, seen under the angle t    (2 r^2 + (m_a^2 + m_b^2) / 2) / sin^2 t
    along and square off the line               2 r^2 + m_a^2 (1 - Re z) + |z|^2 (m_a^2 + m_b^2) / 2
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from veneerwb.core.errors import VeneerError
from veneerwb.core.plane import Point
from veneerwb.core.shop.cutting.said import Said
from veneerwb.core.targets.bench import FLAT
from veneerwb.core.targets.mark import letter
from veneerwb.core.targets.measuring import NEAREST, numbered
from veneerwb.words import marked, say, word

READ = 0.5
"""mm to which a length is read with a rule or beam compass: common practice, no source."""
KNOWN = {"paper mark": 0.2, "picked point": 0.5, "corner": 1.0}
"""mm to which each kind of mark is known on the photograph: common practice, no source; of paper
marks the document may know better."""
CORNERS = {
    "lower left": (marked("the lower left corner"), marked("lower left")),
    "lower right": (marked("the lower right corner"), marked("lower right")),
    "upper right": (marked("the upper right corner"), marked("upper right")),
    "upper left": (marked("the upper left corner"), marked("upper left")),
}
"""What each is called, and where there is little room."""


@dataclass(frozen=True)
class Reference:
    """A mark that a person can find on a leaf: its `name` ("A", "point 3", one of CORNERS), its
    `kind` (one of KNOWN), its `place` (leaf mm) and to how many mm that is known."""

    name: str
    kind: str
    place: Point
    known: float

    @property
    def said(self) -> str:
        """What it is called."""
        return word(CORNERS[self.name][0]) if self.kind == "corner" else self.brief

    @property
    def brief(self) -> str:
        """The same where there is little room."""
        if self.kind == "corner":
            return word(CORNERS[self.name][1])
        if self.kind == "picked point":
            return say("point {number}", number=self.name.rpartition(" ")[2])
        return self.name


@dataclass(frozen=True)
class Hole:
    """A pin hole on a leaf: its `place` (leaf mm, seen from the face), and how it is measured from
    marks `a` and `b`. `near` and `far`: mm from each. `along` and `beside`: from a along the line
    to b, then square off it (above 0: to the left, a behind and b ahead). `error`: how far it may
    be off, mm (root mean square), in the better of the two ways."""

    place: Point
    a: Reference
    b: Reference
    near: float
    far: float
    along: float
    beside: float
    by_distances: bool
    error: float

    @property
    def side(self) -> str:
        return "left" if self.beside >= 0.0 else "right"

    @property
    def said(self) -> Said:
        """How to come to it."""
        if self.by_distances:
            return Said(
                CROSSED[self.side],
                {"a": self.a.said, "b": self.b.said, "near": self.near, "far": self.far},
            )
        return self.square

    @property
    def square(self) -> Said:
        """How to come to it along and square off the line, as the strip does."""
        return Said(
            SQUARE[self.along >= 0.0, self.side],
            {"a": self.a.said, "b": self.b.said, "along": abs(self.along),
             "square": abs(self.beside)},
        )


CROSSED = {
    "left": marked("{near} from {a} and {far} from {b}, left of the line from {a} to {b}"),
    "right": marked("{near} from {a} and {far} from {b}, right of the line from {a} to {b}"),
}
SQUARE = {
    (True, "left"): marked("{along} from {a} along the line to {b}, then {square} square to the "
                           "left"),
    (True, "right"): marked("{along} from {a} along the line to {b}, then {square} square to the "
                            "right"),
    (False, "left"): marked("{along} from {a} away from {b}, then {square} square to the left"),
    (False, "right"): marked("{along} from {a} away from {b}, then {square} square to the right"),
}  # fmt: skip


def references(
    outline: Any, marks: Any = (), picked: Any = (), known: Mapping[str, float] | None = None
) -> tuple[Reference, ...]:
    """What can be found on a leaf: its paper marks (in the order of their letters, or by number),
    else the points picked on its figure, else the corners of its `outline` (leaf mm); two at least
    of a kind, NEAREST mm apart. `known`: to how many mm each kind is known, where not KNOWN."""
    said = {**KNOWN, **(known or {})}
    kinds = (
        ("paper mark", {letter(k): p for k, p in numbered(marks).items()}),
        ("picked point", {f"point {k + 1}": p for k, p in numbered(picked).items()}),
    )
    for kind, places in kinds:
        spread = np.ptp(np.array(list(places.values())), axis=0).max() if places else 0.0
        if len(places) >= 2 and spread >= NEAREST:
            return tuple(Reference(name, kind, p, said[kind]) for name, p in places.items())
    return _corners(outline, said["corner"])


def _corners(outline: Any, known: float) -> tuple[Reference, ...]:
    """The points of the outline furthest towards the corners of the rectangle round it."""
    points = np.concatenate([np.asarray(p.exterior.coords)[:-1]
                             for p in getattr(outline, "geoms", [outline])])
    middle, half = (points.max(axis=0) + points.min(axis=0)) / 2.0, np.ptp(points, axis=0) / 2.0
    scaled = (points - middle) / half
    found = []
    for name, way in zip(CORNERS, ((-1, -1), (1, -1), (1, 1), (-1, 1))):
        x, y = points[int(np.round(scaled @ way, 9).argmax())].tolist()
        found.append(Reference(name, "corner", (x, y), known))
    return tuple(found)


def hole(
    place: Point, found: Sequence[Reference], read: float = READ, beside: float = math.inf
) -> Hole:
    """The hole at a place of a leaf, measured from the two of its marks that find it best, the
    nearer one first; of pairs whose line runs no further than `beside` mm from it, if there are
    any, else of those whose line comes nearest. Raises VeneerError where no two stand apart."""
    pairs = [(a, b) for a in found for b in found
             if a is not b and math.dist(a.place, b.place) >= NEAREST
             and (math.dist(a.place, place), a.name) <= (math.dist(b.place, place), b.name)]
    if not pairs:
        raise VeneerError(
            "marks-too-near",
            "The marks lie less than {least} mm apart, too near to tell a turn; use marks far "
            "apart.",
            least=NEAREST,
        )
    holes = [_measured(place, a, b, read) for a, b in pairs]
    near = max(beside, min(abs(h.beside) for h in holes))
    holes = [h for h in holes if abs(h.beside) <= near]
    return min(holes, key=lambda h: (round(h.error, 3), h.near + h.far, h.a.name, h.b.name))


def _measured(place: Point, a: Reference, b: Reference, read: float) -> Hole:
    line = complex(b.place[0] - a.place[0], b.place[1] - a.place[1])
    off = complex(place[0] - a.place[0], place[1] - a.place[1])
    z = off / line
    near, far = abs(off), abs(off - line)
    length = abs(line)
    along, beside = z.real * length, z.imag * length
    both = (a.known**2 + b.known**2) / 2.0
    sine = abs(z.imag) * length**2 / (near * far) if min(near, far) > 1e-9 else 0.0
    square = 2.0 * read**2 + a.known**2 * (1.0 - z.real) + abs(z) ** 2 * both
    crossed = (2.0 * read**2 + both) / sine**2 if sine >= FLAT else math.inf
    error = math.sqrt(max(min(square, crossed), 0.0))
    return Hole(place, a, b, near, far, along, beside, crossed <= square, error)


def laid_off(place: Point, pins: tuple[Point, Point], errors: tuple[float, float]) -> float:
    """How far (mm, root mean square) what lies at a place is off on a leaf that is hung on two pins
    by holes that are off by so much: |1 - z|^2 e_1^2 + |z|^2 e_2^2 with z the place along and
    beside the line from pin to pin (plane geometry)."""
    (ax, ay), (bx, by) = pins
    z = complex(place[0] - ax, place[1] - ay) / complex(bx - ax, by - ay)
    return math.hypot(abs(1.0 - z) * errors[0], abs(z) * errors[1])

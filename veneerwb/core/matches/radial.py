# SPDX-License-Identifier: LGPL-2.1-or-later
"""Radial match: n wedges ("ways") that meet at a point, from n leaves.

Piece i lies between the directions start + (2i - 3) 180/n and start + (2i - 1) 180/n. Every piece
is cut from the same wedge of the bundle: an upright one by the rotation that lays its axis on the
wedge's axis, a turned one by the mirror image of that about the axis.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Any

from shapely.geometry import LineString

from veneerwb.core import edge as edges
from veneerwb.core.edge import Edge, Line
from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout, Piece, Seam, cuts_of
from veneerwb.core.leaf import Leaves, ranges
from veneerwb.core.matches.order import paired_zigzag, zigzag
from veneerwb.core.plane import LONGEST, Motion, choice, cosd, finite, polar, whole
from veneerwb.core.top import Top

LEAST_WAYS, MOST_WAYS = 3, 64
MOST_OVERSIZE = 1000.0
TURNS = ("book", "slip")
RIMS = ("arc", "straight")
TURNED = {"book": ("odd", "even"), "slip": ("none", "all")}
ORDERS = ("sequence", "spread")


@dataclass(frozen=True)
class Placement:
    """Where on the bundle a wedge's tip lies (`x`, `y` in mm) and which way its axis points
    (`angle` in degrees; 90 is along the grain)."""

    x: float
    y: float
    angle: float = 90.0

    def __post_init__(self) -> None:
        for name in ("x", "y", "angle"):
            value = finite(f"placement's {name}", getattr(self, name))
            if name != "angle" and abs(value) > LONGEST:
                raise VeneerError(
                    "out-of-range",
                    "The placement's {name} cannot be {value}; give a number from -{most} to "
                    "{most}.",
                    name=name,
                    value=value,
                    most=LONGEST,
                )
            # Whole turns go, for they cost decimals.
            object.__setattr__(self, name, math.fmod(value, 360.0) if name == "angle" else value)


@dataclass(frozen=True)
class Radial:
    """The recipe of a radial match; see `radial`. `lay` makes the layout."""

    ways: int
    turn: str = "book"
    placement: Placement | None = None
    first: int = 1
    order: str | tuple[int, ...] = "sequence"
    turned: str | None = None
    rim: str = "arc"
    start: float = 90.0
    oversize: float = 0.0

    def __post_init__(self) -> None:
        ways = whole("number of ways", self.ways, LEAST_WAYS, MOST_WAYS)
        choice("turn", self.turn, TURNS)
        if self.turn == "book" and ways % 2:
            raise VeneerError(
                "odd-book",
                "A book ring turns every second piece, so it needs an even number of ways; {ways} "
                "is odd: "
                "take {nearest}, or a slip ring.",
                ways=ways,
                nearest=f"{ways - 1} or {ways + 1}" if ways > 3 else "4",
            )
        turned = TURNED[self.turn][0] if self.turned is None else self.turned
        if choice("turned", turned, ("odd", "even", "none", "all")) not in TURNED[self.turn]:
            raise VeneerError(
                "turned-unfit",
                "In a {turn} ring the turned pieces cannot be {turned!r}; choose {allowed}.",
                turn=self.turn,
                turned=turned,
                allowed=" or ".join(TURNED[self.turn]),
            )
        choice("rim", self.rim, RIMS)
        oversize = finite("oversize", self.oversize)
        if not 0.0 <= oversize <= MOST_OVERSIZE:
            raise VeneerError(
                "out-of-range",
                "The oversize cannot be {value}; give a number from 0 to {most}.",
                value=oversize,
                most=MOST_OVERSIZE,
            )
        if self.placement is not None and not isinstance(self.placement, Placement):
            place = _listed("placement", self.placement, "x, y and the axis's angle", (2, 3))
            object.__setattr__(self, "placement", Placement(*place))
        order = self.order
        if not isinstance(order, str):
            order = _listed("order", order, "the leaf of each position")
        settled = {
            "ways": ways,
            "turned": turned,
            "oversize": oversize,
            "order": order,
            "start": math.fmod(finite("start direction", self.start), 360.0),
        }
        for name, value in settled.items():
            object.__setattr__(self, name, value)

    def with_ways(self, ways: int) -> Radial:
        """The same with another number of ways (a list of leaves then counts as in sequence)."""
        order = self.order if isinstance(self.order, str) else "sequence"
        return replace(self, ways=ways, order=order)

    def direction(self, k: int) -> float:
        """The direction in degrees of the seam that ends piece k (k = 0 begins piece 1)."""
        return self.start + (2 * k - 1) * 180.0 / self.ways

    def axis(self, position: int) -> float:
        """The direction in degrees of a piece's axis on the top."""
        return self.start + (position - 1) * 360.0 / self.ways

    def is_turned(self, position: int) -> bool:
        """Whether the piece at `position` shows its leaf's back."""
        return self.turned == "all" or self.turned == ("odd" if position % 2 else "even")

    def leaf_numbers(self, bundle: Leaves) -> list[int]:
        """The leaf of each position."""
        if not isinstance(self.order, str):
            return self._listed(bundle)
        choice("order", self.order, ORDERS)
        chosen = self._from_first(bundle)
        if self.order == "sequence":
            return chosen
        if self.turn == "slip":
            ring = zigzag(self.ways)
        else:
            ring = paired_zigzag(self.ways)
            above = bundle.surface(1, self.is_turned(1)) == 0
            if above:
                ring = [ring[1], ring[0], *reversed(ring[2:])]
        return [chosen[k] for k in ring]

    def _from_first(self, bundle: Leaves) -> list[int]:
        first = whole("first leaf", self.first, 1, max(bundle.numbers))
        chosen = [n for n in bundle.numbers if n >= first][: self.ways]
        if len(chosen) < self.ways:
            raise VeneerError(
                "too-few-leaves",
                "{ways} ways need {ways} leaves and from leaf {first} on there are {have}: "
                "{missing} missing; "
                "take fewer ways, an earlier first leaf, or a larger bundle.",
                ways=self.ways,
                first=first,
                have=len(chosen),
                missing=self.ways - len(chosen),
            )
        return chosen

    def _listed(self, bundle: Leaves) -> list[int]:
        listed = [whole("listed leaf", n, 1, 10**6) for n in self.order]
        if len(listed) != self.ways or len(set(listed)) != len(listed):
            raise VeneerError(
                "wrong-order",
                "{ways} ways need a list of {ways} different leaves; this one has {count}, "
                "{different} of "
                "them different.",
                ways=self.ways,
                count=len(listed),
                different=len(set(listed)),
            )
        unknown = sorted(set(listed) - set(bundle.numbers))
        if unknown:
            raise VeneerError(
                "no-such-leaf",
                "The bundle has no leaf {leaf}; it has {numbers}.",
                leaf=unknown[0],
                numbers=ranges(bundle.numbers),
            )
        return listed

    def lay(self, bundle: Leaves, top: Top) -> Layout:
        """The layout of `top` from `bundle`."""
        leaves = self.leaf_numbers(bundle)
        recipe = (
            self if self.placement else replace(self, placement=self._middle(bundle, top, leaves))
        )
        grown = top.grown(self.oversize)
        pieces = tuple(
            recipe._piece(position, leaf, top.edge, grown)
            for position, leaf in enumerate(leaves, start=1)
        )
        return Layout(pieces, _seams(pieces, bundle), cuts_of(pieces), top, bundle, recipe)

    def _middle(self, bundle: Leaves, top: Top, leaves: Sequence[int]) -> Placement:
        """The wedge along the grain in the middle of what the leaves have in common."""
        area = bundle.common_area(leaves)
        x0, y0, x1, y1 = (0.0, 0.0, *bundle.size) if area.is_empty else area.bounds
        reach = top.reach + self.oversize
        return Placement((x0 + x1) / 2.0, (y0 + y1 - reach) / 2.0, 90.0)

    def _piece(self, position: int, leaf: int, rim: Edge, grown: Edge) -> Piece:
        first, last = self.direction(position - 1), self.direction(position)
        turned = self.is_turned(position)
        net = edges.run_between(rim, first, last)
        outer = edges.run_between(grown, first, last)
        if self.rim == "straight":
            outer = self._straight_rim(outer, position)
        return Piece(
            position, leaf, turned, _wedge(net), _wedge(outer), self._onto_bundle(position, turned)
        )

    def _straight_rim(self, run: Edge, position: int) -> Edge:
        """The straight square to the axis that touches `run` from outside, from seam to seam."""
        _, far = edges.extent(run, self.axis(position))
        corner = far / cosd(180.0 / self.ways)
        first, last = self.direction(position - 1), self.direction(position)
        return (Line(polar(corner, first), polar(corner, last)),)

    def _onto_bundle(self, position: int, turned: bool) -> Motion:
        place, axis = self.placement, self.axis(position)
        if turned:
            return Motion(place.angle + axis - 180.0, place.x, place.y, True)
        return Motion(place.angle - axis, place.x, place.y)


def _listed(name: str, values: Any, what: str, counts: Sequence[int] = ()) -> tuple[Any, ...]:
    """`values` as a tuple, of as many as `counts` allows if given; else VeneerError."""
    found = tuple(values) if isinstance(values, Iterable) else None
    if found is None or (counts and len(found) not in counts):
        raise VeneerError(
            "not-a-list",
            "The {name} cannot be {value!r}; give {what}.",
            name=name,
            value=values,
            what=what,
        )
    return found


def _wedge(rim: Edge) -> Edge:
    """Tip to rim, along it, and back to the tip."""
    tip = (0.0, 0.0)
    return (Line(tip, rim[0].start, "seam"), *rim, Line(rim[-1].end, tip, "seam"))


def _seams(pieces: Sequence[Piece], bundle: Leaves) -> tuple[Seam, ...]:
    seams = []
    for a, b in zip(pieces, [*pieces[1:], pieces[0]]):
        step = abs(bundle.surface(a.leaf, a.turned) - bundle.surface(b.leaf, b.turned))
        joint = a.edge[-1]
        seams.append(Seam(a.position, b.position, LineString([joint.end, joint.start]), step))
    return tuple(seams)


def radial(
    bundle: Leaves,
    top: Top,
    ways: int,
    turn: str = "book",
    placement: Placement | None = None,
    first: int = 1,
    order: str | Sequence[int] = "sequence",
    turned: str | None = None,
    rim: str = "arc",
    start: float = 90.0,
    oversize: float = 0.0,
) -> Layout:
    """A radial match of `ways` wedges (3 to 64, even for book) on `top`.

    bundle:    a Bundle, or a Stock where no picture is needed.
    turn:      "book" (every second leaf turned over) or "slip" (none, or all).
    placement: where on the bundle the wedge lies; in the middle of the leaves if not given.
    first:     the first leaf; ways leaves from it on are used.
    order:     "sequence", "spread" (the order whose largest step between the surfaces that meet is
               least; with gaps in the numbers, near the least), or the leaf number of each
               position.
    turned:    which positions are turned: "odd" or "even" (book), "none" or "all" (slip).
    rim:       the blank's rim parallel to the finished edge ("arc") or one straight ("straight").
    start:     direction in degrees of the first wedge's axis on the top.
    oversize:  mm that the blank reaches beyond the finished edge.

    Raises VeneerError for counts and choices that cannot be; a wedge that does not fit its leaf is
    left to `check`.
    """
    recipe = Radial(ways, turn, placement, first, order, turned, rim, start, oversize)
    return recipe.lay(bundle, top)

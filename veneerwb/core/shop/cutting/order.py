# SPDX-License-Identifier: LGPL-2.1-or-later
"""In which order the sides of a cut are cut, what falls at each, and what holds it.

A blade that runs from edge to edge parts the boards at every side. Of all orders that one is taken
which keeps the pins longest on the side of the piece, then one with rims before seams. What falls
holds together by a pin, else by a screw in it, else, where it is too narrow for a screw, by tape
round it. The piece itself lies under the clamps of the sled from the first cut to the last.

A knife stops, and frees the piece only with the last side: seams are cut first, while the piece
still hangs in the pinned waste, and a rim last. A machine runs round the piece in one way.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from shapely.geometry import LineString
from shapely.geometry import Point as ShapelyPoint
from shapely.ops import polylabel, substring

from veneerwb.core.plane import Point
from veneerwb.core.shop.cutting.methods import Method
from veneerwb.core.shop.cutting.parts import Straight, across, is_left, left_of, right_of
from veneerwb.core.shop.cutting.piles import PileCut
from veneerwb.core.shop.cutting.sides import ON, Side

MOST_CUTS = 5
"""Of more, rims are cut first and only the seams tried in every order."""
STRAIGHT = 1.0
"""Degrees: nearer to the grain, or to square across it, a knife is led neither way."""
FINE = 10.0
"""mm: how finely the widest place of what falls is sought, for a screw."""
SLIVER = 1.0
"""mm2: what falls and is smaller is dust."""
STANDS_OFF = 0.5
"""mm: an outline that stands over a seam's straight by more is not cut right through along it."""


@dataclass(frozen=True)
class Hold:
    """What holds: `by` "pin", "screw", "tape", "clamps", "straightedge", "bed" or "waste" (the
    uncut sides), `places` (bundle mm) of pins and screws."""

    by: str
    places: tuple[Point, ...] = ()


@dataclass(frozen=True)
class Bite:
    """One cut along a side: the `side` (its place among the cut's sides), `line` (bundle mm, in the
    direction of the cut), what is `kept` of the stack and what `falls` (shapely; None: nothing),
    and what holds the piece and what falls. `stops`: the blade must stop before the stack's edge.
    `nth`: which of the straights that cut this side, and of how many. `exact`: it runs along the
    side itself, and not outside its curve."""

    side: int
    line: tuple[Point, ...]
    kept: Any
    falls: Any
    piece: tuple[Hold, ...]
    waste: tuple[Hold, ...]
    stops: bool = False
    nth: tuple[int, int] = (1, 1)
    exact: bool = True


def bites(
    cut: PileCut, area: Any, pins: Sequence[Point], how: Method
) -> tuple[Bite, ...]:
    """The cuts round one outline in the stack's `area` (bundle mm), in order."""
    if how.key == "machine":
        return (_round(cut, area, pins),)
    cuts: list[_Straight] = []
    if how.through:
        for k, side in enumerate(cut.sides):
            found = [] if side.closed else side.straights(cut.outline)
            if found and all(is_left(line, cut.outline, STANDS_OFF) for line in found):
                cuts += [_Straight(k, line, (n, len(found))) for n, line in enumerate(found, 1)]
    rest = [k for k in range(len(cut.sides)) if k not in {one.side for one in cuts}]
    made, kept = _through(cut, area, pins, how, cuts) if cuts else ([], area)
    return (*made, *_stopped(cut, kept, pins, how, rest))


# --- a blade from edge to edge --------------------------------------------------------------------


@dataclass(frozen=True)
class _Straight:
    """A cut from edge to edge: for which side, along which line, and the how manyth of it."""

    side: int
    line: Straight
    nth: tuple[int, int]


def _through(
    cut: PileCut, area: Any, pins: Sequence[Point], how: Method, cuts: Sequence[_Straight]
) -> tuple[list[Bite], Any]:
    known: dict[frozenset[_Straight], Any] = {frozenset(): area}
    tried = [_run(order, known) for order in _orders(cut, cuts)]
    held = {id(kept): sum(kept.covers(ShapelyPoint(p)) for p in pins) for kept in known.values()}
    best = min(tried, key=lambda run: _rank(cut, cuts, run, held))
    found = []
    for one, before, kept in best:
        line, falls = across(one.line, before), right_of(one.line, before)
        falls = falls if falls.area > SLIVER else None
        inside = tuple(p for p in pins if kept.covers(ShapelyPoint(p)))
        piece = (*([Hold("pin", inside)] if inside else []), Hold("clamps"))
        waste = _waste(falls, pins, how)
        exact = _exact(one, cut)
        found.append(Bite(one.side, line, kept, falls, piece, waste, False, one.nth, exact))
    return found, best[-1][2]


def _exact(one: _Straight, cut: PileCut) -> bool:
    return all(cut.outline.exterior.distance(ShapelyPoint(p)) <= ON for p in one.line)


def _orders(cut: PileCut, cuts: Sequence[_Straight]) -> Iterator[tuple[_Straight, ...]]:
    if len(cuts) <= MOST_CUTS:
        yield from itertools.permutations(cuts)
        return
    rims = tuple(one for one in cuts if cut.sides[one.side].kind == "rim")
    seams = [one for one in cuts if one not in rims]
    orders = itertools.permutations(seams) if len(seams) <= MOST_CUTS else [tuple(seams)]
    yield from ((*rims, *order) for order in orders)


def _run(
    order: Sequence[_Straight], known: dict[frozenset[_Straight], Any]
) -> list[tuple[_Straight, Any, Any]]:
    """The cuts in an order, each with what there is before and after it. `known`: what is left
    after some of them, in whichever order, for what a straight leaves of a stack is convex."""
    found, done = [], frozenset()
    for one in order:
        area = known[done]
        done |= {one}
        if done not in known:
            known[done] = left_of(one.line, area)
        found.append((one, area, known[done]))
    return found


def _rank(
    cut: PileCut, cuts: Sequence[_Straight], run: Sequence[Any], pins: Mapping[int, int]
) -> tuple[Any, ...]:
    """Least for the best: pins lost early and rims late count against it. `pins`: how many there
    are in what is left, by its id."""
    held = sum(pins[id(kept)] for _, _, kept in run)
    late = sum(at for at, (one, *_) in enumerate(run) if cut.sides[one.side].kind == "rim")
    return -held, late, [cuts.index(one) for one, *_ in run]


def _waste(falls: Any, pins: Sequence[Point], how: Method) -> tuple[Hold, ...]:
    """What holds a part that falls together: tape round it always, and a pin or a screw where it
    has room for one."""
    if falls is None:
        return ()
    held = [Hold("tape")]
    for part in getattr(falls, "geoms", [falls]):
        if part.area <= SLIVER:
            continue
        inside = tuple(p for p in pins if part.covers(ShapelyPoint(p)))
        if inside:
            held.append(Hold("pin", inside))
            continue
        room = part.buffer(-how.clear)
        if not room.is_empty:
            widest = max(getattr(room, "geoms", [room]), key=lambda one: one.area)
            at = polylabel(widest, FINE) if widest.area > SLIVER else widest.representative_point()
            held.append(Hold("screw", ((at.x, at.y),)))
    return tuple(held)


# --- a blade that stops ---------------------------------------------------------------------------


def _stopped(
    cut: PileCut, area: Any, pins: Sequence[Point], how: Method, sides: Sequence[int]
) -> list[Bite]:
    order = sorted(sides, key=lambda k: (cut.sides[k].kind == "rim", -round(cut.sides[k].length, 3),
                                         k))
    inside = tuple(p for p in pins if area.covers(ShapelyPoint(p)))
    found = []
    for k in order:
        last = k == order[-1]
        kept = cut.outline if last else area
        falls = area.difference(cut.outline) if last else None
        piece = [_over(how), *([] if last else [Hold("waste")]),
                 *([Hold("pin", inside)] if inside and not last else [])]
        waste = (Hold("tape"), *([Hold("pin", inside)] if inside else [])) if last else ()
        line = with_grain(cut.sides[k]) if how.key == "knife" else cut.sides[k].points
        found.append(Bite(k, line, kept, falls, tuple(piece), waste, True))
    return found


def _round(cut: PileCut, area: Any, pins: Sequence[Point]) -> Bite:
    """The tool's way round an outline, the piece on its left, from the middle of the longest rim,
    or else of the longest side: where it begins and ends shows least there."""
    side = max(cut.sides, key=lambda side: (side.kind == "rim", round(side.length, 3)))
    ring = LineString(cut.outline.exterior.coords if cut.outline.exterior.is_ccw
                      else cut.outline.exterior.coords[::-1])
    start = ring.project(LineString(side.points).interpolate(0.5, normalized=True))
    line = (*substring(ring, start, ring.length).coords, *substring(ring, 0.0, start).coords[1:])
    inside = tuple(p for p in pins if area.covers(ShapelyPoint(p)))
    held = (Hold("pin", inside),) if inside else ()
    return Bite(cut.sides.index(side), line, cut.outline, area.difference(cut.outline),
                (Hold("bed"),), (Hold("tape"), *held), True)


def _over(how: Method) -> Hold:
    return Hold("straightedge" if how.key == "knife" else "clamps")


def lies(side: Side) -> str:
    """How a side lies to the grain (the bundle's y): "with" it, "across" it, or "aslant"."""
    (ax, ay), (bx, by) = side.ends
    turn = math.degrees(math.atan2(abs(bx - ax), abs(by - ay)))
    return "with" if turn < STRAIGHT else "across" if turn > 90.0 - STRAIGHT else "aslant"


def with_grain(side: Side) -> tuple[Point, ...]:
    """A side in the direction in which a knife that runs off along the grain runs into the waste
    and not into the piece; as it is where it does not lie aslant."""
    (ax, ay), (bx, by) = side.ends
    # The piece lies on the left of a -> b. The grain's direction that goes with the cut is
    # (0, sign dy); it leads to the left, into the piece, where dx sign dy > 0.
    if side.kind == "rim" or lies(side) != "aslant":
        return side.points
    return side.points if (bx - ax) * (by - ay) < 0.0 else side.points[::-1]

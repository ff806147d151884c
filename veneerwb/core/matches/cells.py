# SPDX-License-Identifier: LGPL-2.1-or-later
"""Cells: what a match says of each piece before it is cut to the top.

A match lays cells over the plane: convex fields between straights, each with its leaf, whether that
leaf is turned over, and how the field lies over its own cut. What of the top lies in a cell is a
piece (more than one where the top is not convex there). So a new match is a list of cells, and it
does not know which top it is laid on.

The cut's own frame: its origin lies on the placement's point of the bundle and its y axis along the
placement's angle, so that with an angle of 90 its y axis runs along the grain.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Any, Protocol

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout, Piece, Seam, cuts_of
from veneerwb.core.leaf import Leaves
from veneerwb.core.matches.placement import Placement
from veneerwb.core.outlines.joints import joints
from veneerwb.core.outlines.region import Half, Region
from veneerwb.core.plane import Motion
from veneerwb.core.top import Top
from veneerwb.words import marked

DUST = 1e-10
"""Share of the top: what is smaller is what rounding leaves of a cut and no piece."""
MOST_PIECES = 1000


@dataclass(frozen=True)
class Cell:
    """The field between `halves` (top mm), the `leaf` it is cut from, whether that is `turned`
    over, and `frame`: top mm to mm in the cut's own frame, mirrored where it is turned. `cut` is
    the place among the cuts of a leaf where pieces come from different ones (strips of a wedge).
    """

    halves: tuple[Half, ...]
    leaf: int
    turned: bool
    frame: Motion
    cut: int = 0


class Cells(Protocol):
    """A recipe that lays cells. `placement` is where its cuts lie on the bundle; None: in the
    middle of what its leaves have in common."""

    placement: Placement | None
    oversize: float
    cuts: str

    def cells(self, bundle: Leaves, region: Region) -> Sequence[Cell]: ...


def placed(placement: Placement) -> Motion:
    """What takes the cut's own frame to the bundle."""
    return Motion(placement.angle - 90.0, placement.x, placement.y)


def laid(recipe: Any, bundle: Leaves, top: Top) -> Layout:
    """The layout of `top` by a recipe of cells."""
    if recipe.placement is None:
        recipe = replace(recipe, placement=middle(recipe, bundle, top))
    pieces = pieces_of(recipe, bundle, top.region, top.blank_region(recipe.oversize))
    cuts = cuts_of(pieces, recipe.cuts)
    return Layout(pieces, seams_of(pieces, bundle), cuts, top, bundle, recipe)


def pieces_of(
    recipe: Cells, bundle: Leaves, region: Region, grown: Region
) -> tuple[Piece, ...]:
    """What of a region lies in each cell, numbered in the order of the cells, their blanks cut to
    the region `grown`; VeneerError where nothing does, or where there are more than MOST_PIECES."""
    cells = recipe.cells(bundle, region)
    if len(cells) > MOST_PIECES:
        raise VeneerError(
            "too-many-pieces",
            "This match would have {count} pieces; the most is {most}: take wider strips or fewer "
            "ways.",
            count=len(cells),
            most=MOST_PIECES,
        )
    onto = placed(recipe.placement or Placement(0.0, 0.0))
    found: list[Piece] = []
    least = DUST * region.area
    for cell in cells:
        nets = [part for part in region.cut(cell.halves) if part.area >= least]
        blanks = nets if grown is region else _blanks(nets, grown.cut(cell.halves))
        for net, blank in zip(nets, blanks):
            found.append(Piece(
                len(found) + 1, cell.leaf, cell.turned, net.outer, blank.outer,
                onto @ cell.frame, net.holes, cell.cut,
            ))  # fmt: skip
    if not found:
        raise VeneerError("no-pieces", "No piece of this match lies on the top; make it larger.")
    return tuple(found)


def _blanks(nets: Sequence[Region], grown: Sequence[Region]) -> list[Region]:
    """To each finished part the part of the grown top that holds it."""
    if len(nets) == len(grown) == 1:
        return list(grown)
    areas = [part.polygon for part in grown]
    blanks = []
    for net in nets:
        inside = net.polygon.representative_point()
        home = [k for k, area in enumerate(areas) if area.covers(inside)]
        blanks.append(grown[home[0]] if home else net)
    return blanks


def seams_of(pieces: Sequence[Piece], bundle: Leaves) -> tuple[Seam, ...]:
    """Where two pieces meet along a straight, in the order of their positions."""
    shown = [bundle.surface(piece.leaf, piece.turned) for piece in pieces]
    return tuple(
        Seam(pieces[i].position, pieces[j].position, line, abs(shown[i] - shown[j]))
        for i, j, line in joints([piece.edge for piece in pieces])
    )


def middle(recipe: Any, bundle: Leaves, top: Top) -> Placement:
    """The placement along the grain that puts what is cut into the middle of what the leaves have
    in common."""
    return middle_of(recipe, bundle, top.region, top.blank_region(recipe.oversize))


def middle_of(recipe: Any, bundle: Leaves, region: Region, grown: Region) -> Placement:
    """The same for a region of the top."""
    at_start = replace(recipe, placement=Placement(0.0, 0.0, 90.0))
    pieces = pieces_of(at_start, bundle, region, grown)
    boxes = [p.onto_bundle.apply_to(p.blank).bounds for p in pieces]
    left, low, right, high = _round_all(boxes)
    area = bundle.common_area(sorted({p.leaf for p in pieces}))
    x0, y0, x1, y1 = (0.0, 0.0, *bundle.size) if area.is_empty else area.bounds
    return Placement((x0 + x1 - left - right) / 2.0, (y0 + y1 - low - high) / 2.0, 90.0)


def _round_all(boxes: Iterable[tuple[float, float, float, float]]) -> tuple[float, ...]:
    left, low, right, high = zip(*boxes)
    return min(left), min(low), max(right), max(high)


def from_first(
    bundle: Leaves, first: int, count: int, what: str, step: int = 1, least: int = 1
) -> list[int]:
    """The `count` leaves from number `first` on; VeneerError says how many are missing, and how
    many would do: a multiple of `step`, at least `least`. `what` is what needs them, in words:
    "8 ways"."""
    chosen = [n for n in bundle.numbers if n >= first][:count]
    if len(chosen) < count:
        most = len(chosen) // step * step
        told = marked(
            "{what} need {count} leaves and from leaf {first} on there are {have}: {missing} "
            "missing; take an earlier first leaf, or a larger bundle."
        )
        if most >= least:
            told = marked(
                "{what} need {count} leaves and from leaf {first} on there are {have}: {missing} "
                "missing; take {most} leaves or fewer, an earlier first leaf, or a larger bundle."
            )
        raise VeneerError(
            "too-few-leaves",
            told,
            most=most,
            what=what,
            count=count,
            first=first,
            have=len(chosen),
            missing=count - len(chosen),
        )
    return chosen


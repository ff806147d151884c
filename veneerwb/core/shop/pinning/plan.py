# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pinning: where two pins stand in each stack, and where their holes go on every leaf, so that the
real stack repeats the registers on the screen.

All leaves are pricked face up, and lie so in a stack, those that will be turned over as well: they
are turned after the cut (for a machine before it: the same two holes then lie mirrored). Where the
figure of backs is followed, the register of a leaf's back says where its holes go. Every register
is a rigid motion, so that the two holes of every leaf are as far apart as the pins: the first check
at the bench.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from veneerwb.core.layout import Layout
from veneerwb.core.leaf import Leaves
from veneerwb.core.plane import Point, finite, positive
from veneerwb.core.shop.cutting.methods import KNIFE, Method
from veneerwb.core.shop.cutting.piles import Pile, as_layouts, piles
from veneerwb.core.shop.cutting.said import Said
from veneerwb.core.shop.pinning.marks import READ, Hole, Reference, hole, laid_off, references
from veneerwb.core.shop.pinning.places import blade_lines, from_cuts, two_places
from veneerwb.core.shop.templates.over import EXACT, Over
from veneerwb.words import marked

MARGIN = 10.0
"""mm from a pin to the leaf's edge and to a fault: common practice, no source."""


@dataclass(frozen=True)
class PinnedLeaf:
    """The holes of a leaf. `back`: they are where its back's register has them. `marks`: all that
    they can be measured from. `moved`: how far they are from where the face's register has them,
    mm. `at_cut`: how far the cut may be off on it by the holes' errors, where it is worst, mm (root
    mean square)."""

    leaf: int
    back: bool
    spare: bool
    holes: tuple[Hole, Hole]
    marks: tuple[Reference, ...]
    moved: float
    at_cut: float


@dataclass(frozen=True)
class PinnedStack:
    """The pins of a stack: their `places` (bundle mm), how far they are `apart`, how far from the
    nearest cut (`free`), and the leaves in their order."""

    pile: Pile
    places: tuple[Point, Point]
    free: float
    leaves: tuple[PinnedLeaf, ...]
    notes: tuple[Said, ...] = ()

    @property
    def apart(self) -> float:
        return math.dist(*self.places)

    @property
    def worst(self) -> PinnedLeaf:
        return max(self.leaves, key=lambda one: one.at_cut)


@dataclass(frozen=True)
class Pinning:
    """All stacks of a job, and what was asked: `margin` and `clear`, mm; `read`, mm to which
    lengths are read."""

    stacks: tuple[PinnedStack, ...]
    margin: float
    clear: float
    read: float


def pinning(
    layouts: Layout | Sequence[Layout], marks: Mapping[int, Any] | None = None,
    picked: Mapping[int, Any] | None = None, how: Method = KNIFE, margin: float = MARGIN,
    read: float = READ, known: Mapping[str, float] | None = None, spares: int = 0,
    by_shape: bool | None = None, over: Over = EXACT,
) -> Pinning:
    """Where the stacks of a layout, or of several from one bundle, are pinned.

    `marks`, `picked`: by leaf number its paper marks (leaf mm, in the order of their letters or by
    number, see `targets.numbered`) and the points picked on its figure; leaves without are measured
    from the corners of their outline. `how`: the way of cutting, whose `clear` the pins keep from
    cuts. `margin`: mm that they keep from edges and faults. `read`, `known`: see `pinning.marks`.
    `spares`, `by_shape`, `over`: see `piles`. Raises VeneerError where no two pins find room.
    """
    given = as_layouts(layouts)
    margin = max(0.0, finite(marked("margin of the pins"), margin))
    read = positive(marked("length that can be read"), read, 10.0)
    bundle = given[0].bundle
    found = []
    for pile in piles(given, spares, by_shape, over):
        pins = two_places(bundle, pile, how, margin, how.clear)
        lines = blade_lines(bundle, pile, how)
        free = min(from_cuts(p, pile, lines) for p in pins)
        leaves = tuple(
            _leaf(bundle, pile, pins, n, back, (marks or {}).get(n, ()), (picked or {}).get(n, ()),
                  read, known)
            for n, back in pile.laid
        )
        found.append(PinnedStack(pile, pins, free, leaves, _notes(bundle, pile, leaves)))
    return Pinning(tuple(found), margin, how.clear, read)


def _leaf(
    bundle: Leaves, pile: Pile, pins: tuple[Point, Point], number: int, back: bool, marks: Any,
    picked: Any, read: float, known: Mapping[str, float] | None,
) -> PinnedLeaf:
    marked = references(bundle.usable(number), marks, picked, known)
    register, face = bundle.register(number, back), bundle.register(number, False)
    holes = tuple(hole(register.point(p), marked, read) for p in pins)
    corners = np.concatenate([np.asarray(c.outline.convex_hull.exterior.coords) for c in pile.cuts])
    errors = holes[0].error, holes[1].error
    return PinnedLeaf(
        number, back, number in pile.spares, holes, marked,
        max(math.dist(register.point(p), face.point(p)) for p in pins),
        max(laid_off(tuple(corner), pins, errors) for corner in corners.tolist()),
    )


def _notes(bundle: Leaves, pile: Pile, leaves: Sequence[PinnedLeaf]) -> tuple[Said, ...]:
    notes = []
    backs = [one for one in leaves if one.back]
    if backs:
        notes.append(Said(
            marked(
                'Leaves marked "back" are pinned where the figure of their backs lies, up to '
                "{moved} from where their faces would be; they are pricked face up like the "
                "others."
            ),
            {"moved": max(one.moved for one in backs)},
        ))
    twice = sorted({n for n in pile.stacked if sum(one.leaf == n for one in leaves) > 1})
    if twice:
        notes.append(Said(
            marked(
                "Pieces of both sides come from leaf {leaves}, and its sides lie otherwise: cut "
                "the upright pieces on the first pair of holes, pin again on the second for the "
                "turned ones."
            ),
            {"leaves": ", ".join(map(str, twice))},
        ))
    kinds = {h.a.kind for one in leaves for h in one.holes}
    if "corner" in kinds:
        notes.append(Said(
            marked(
                "Where holes are measured from a leaf's corners, they are the corners of its "
                "outline on the photograph: see that the real leaf still has them, uncut since it "
                "was photographed. Paper marks do better."
            ),
        ))
    return tuple(notes)

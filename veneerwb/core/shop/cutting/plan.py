# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cutting plan: stacks with their boards, lifts and steps, and what the blade's lean does.

Lean. What lies z mm below the top of a lift is off its line by d = z tan a (plane geometry). Where
the blade leans alike all along both seams, they keep their angle: the pieces slide along their axes
by d / sin(180 / n) and the ring still closes. Where the lean comes up from nothing to a along a
seam of length L, every wedge is off by 2 d / L radians, and the ring by their sum, which opens or
overlaps by 2 R sin(sum / 2) at the rim. Both are told, the second as the most there may be.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from veneerwb.core.errors import VeneerError
from veneerwb.core.layout import Layout
from veneerwb.core.leaf import Leaves
from veneerwb.core.plane import TOUCH, sind
from veneerwb.core.shop.cutting.cautions import LOCAL
from veneerwb.core.shop.cutting.methods import KNIFE, Method
from veneerwb.core.shop.cutting.piles import Pile, as_layouts, piles
from veneerwb.core.shop.cutting.said import Said
from veneerwb.core.shop.cutting.steps import Step, loose_parts, steps
from veneerwb.core.shop.pinning.places import board_of
from veneerwb.core.shop.pinning.plan import Pinning, pinning
from veneerwb.core.shop.templates.over import EXACT, Over
from veneerwb.core.shop.wedge import is_ring
from veneerwb.words import figure, marked, word

LEAST_CLAMPED = 25.0
"""mm: a piece narrower than this is not held by a clamp on it: common practice, no source."""


@dataclass(frozen=True)
class StackPlan:
    """How one stack is cut. `order`: its leaves from the top down, all faces up (those that will be
    turned over are turned after the cut). `lifts`: which leaves are cut at once. `high`: mm of all
    leaves; `lift_high`: of the highest lift; `total`: of that with its boards. `board`: the boards
    (shapely, bundle mm). `pins`: bundle mm. `room`: mm across the widest place of the narrowest
    piece."""

    pile: Pile
    order: tuple[int, ...]
    lifts: tuple[tuple[int, ...], ...]
    high: float
    lift_high: float
    total: float
    board: Any
    pins: tuple[tuple[float, float], tuple[float, float]]
    steps: tuple[Step, ...]
    room: float

    @property
    def board_size(self) -> tuple[float, float]:
        """(across the leaf, along the grain), mm."""
        x0, y0, x1, y1 = self.board.bounds
        return x1 - x0, y1 - y0


@dataclass(frozen=True)
class Leaning:
    """What the lean does to one top: `lowest`, mm that the lowest leaf of the highest lift is off
    its line. Of a ring also `slide`, mm that its tip moves along its axis by a lean that is the
    same all along; `opens`, degrees, and `gap`, mm at the rim, by one that comes up along every
    seam. None for other matches."""

    top: int
    lowest: float
    slide: float | None = None
    opens: float | None = None
    gap: float | None = None


@dataclass(frozen=True)
class CuttingPlan:
    """The whole plan: how it is cut, its pins, stacks, what the lean does and what else is to be
    said."""

    how: Method
    pinning: Pinning
    stacks: tuple[StackPlan, ...]
    leaning: tuple[Leaning, ...]
    notes: tuple[Said, ...]

    @property
    def caution(self) -> str:
        """The standing one."""
        return word(LOCAL)


def cutting_plan(
    layouts: Layout | Sequence[Layout], how: Method = KNIFE, spares: int = 0,
    by_shape: bool | None = None, pins: Pinning | None = None, over: Over = EXACT,
) -> CuttingPlan:
    """The plan for a layout, or for several tops from one bundle.

    `how`: the maker's way of cutting with its own figures. `spares`, `by_shape`, `over`: see
    `piles`. `pins`: where the stacks are pinned, if that is planned already for the same arguments.
    Raises VeneerError where pins find no room, where cuts lie nearer to each other than the kerf,
    and where a saw cannot part them.
    """
    given = as_layouts(layouts)
    bundle = given[0].bundle
    gap = min(_apart(pile, how) for pile in piles(given, spares, by_shape, over))
    pins = pins or pinning(given, how=how, spares=spares, by_shape=by_shape, over=over)
    stacks = [_stack(bundle, one.pile, one.places, how, one is pins.stacks[0])
              for one in pins.stacks]
    leaning = tuple(_leaning(layout, k, stacks, how) for k, layout in enumerate(given, start=1))
    return CuttingPlan(how, pins, tuple(stacks), leaning, _notes(given, stacks, how, gap, over))


def _apart(pile: Pile, how: Method) -> float:
    """How far the cuts on one leaf lie apart at least, mm."""
    least = math.inf
    for k, a in enumerate(pile.cuts):
        for b in pile.cuts[k + 1 :]:
            gap = a.outline.distance(b.outline)
            if gap < how.kerf - TOUCH or a.outline.intersection(b.outline).area > TOUCH:
                raise VeneerError(
                    "cuts-within-kerf",
                    "Two cuts on the leaves of stack {stack} lie {gap} mm apart, and the blade "
                    "takes {kerf} mm; move them further apart.",
                    stack=pile.name, gap=gap, kerf=how.kerf,
                )
            least = min(least, gap)
    return least


def _stack(
    bundle: Leaves, pile: Pile, pins: tuple[tuple[float, float], tuple[float, float]], how: Method,
    first: bool,
) -> StackPlan:
    order = pile.stacked[::-1] if bundle.back == "previous" else pile.stacked
    lifts = how.lifts(order, bundle.thickness)
    board = board_of(bundle, pile, how)
    most = max(map(len, lifts)) * bundle.thickness
    x0, y0, x1, y1 = board.bounds
    common = bundle.common_area(pile.stacked).bounds
    long = common[0] < x0 - TOUCH or common[1] < y0 - TOUCH or (
        common[2] > x1 + TOUCH or common[3] > y1 + TOUCH)
    made = steps(pile, board, pins, how, lifts, long, first)
    room = min(_room(cut.outline) for cut in pile.cuts)
    high = len(order) * bundle.thickness
    return StackPlan(
        pile, order, lifts, high, most, most + 2.0 * how.board, board, pins, made, room
    )


def _room(outline: Any) -> float:
    """mm across the largest circle in an outline, to 1 mm."""
    low, high = 0.0, 0.5 * math.sqrt(outline.area)
    while high - low > 0.5:
        middle = (low + high) / 2.0
        low, high = (low, middle) if outline.buffer(-middle).is_empty else (middle, high)
    return 2.0 * low


# --- lean -----------------------------------------------------------------------------------------


def _leaning(layout: Layout, top: int, stacks: Sequence[StackPlan], how: Method) -> Leaning:
    deep = _depths(layout, top, stacks)
    lowest = how.displaced(max(deep.values()))
    if not is_ring(layout):
        return Leaning(top, lowest)
    n = len(layout.pieces)
    total = 0.0
    for piece in layout.pieces:
        seam = max(piece.edge[0].length, piece.edge[-1].length)
        total += 2.0 * math.degrees(how.displaced(deep[piece.leaf]) / seam)
    gap = 2.0 * layout.top.reach * sind(min(180.0, total / 2.0))
    return Leaning(top, lowest, lowest / sind(180.0 / n), total, gap)


def _depths(layout: Layout, top: int, stacks: Sequence[StackPlan]) -> Mapping[int, float]:
    """How deep the lower face of each leaf lies in its lift, mm."""
    found: dict[int, float] = {}
    for stack in stacks:
        if not any(cut.top == top for cut in stack.pile.cuts):
            continue
        for lift in stack.lifts:
            for k, leaf in enumerate(lift, start=1):
                found[leaf] = k * layout.bundle.thickness
    return {piece.leaf: found[piece.leaf] for piece in layout.pieces}


# --- what else is to be said ----------------------------------------------------------------------


def _notes(
    layouts: Sequence[Layout], stacks: Sequence[StackPlan], how: Method, gap: float, over: Over
) -> tuple[Said, ...]:
    notes = [Said(
        marked(
            "Kerf {kerf}, lean {lean} deg, at most {most} of leaves at once, boards {around} "
            "beyond the cuts, pins {clear} from them: common practice, no published source: set "
            "your own."
        ),
        {"kerf": how.kerf, "lean": figure(how.lean, "g"),
         "most": how.most or layouts[0].bundle.thickness, "around": how.around,
         "clear": how.clear},
    )]
    high = max(stack.high for stack in stacks)
    lifts = max(len(stack.lifts) for stack in stacks)
    if lifts > 1 and how.most:
        notes.append(Said(
            marked(
                "{high} of leaves is more than the {most} that are cut at once, so they are cut "
                "in {lifts} lifts."
            ), {"high": high, "most": how.most, "lifts": lifts},
        ))
    if math.isfinite(gap):
        notes.append(Said(
            marked(
                "Cuts on one leaf lie {gap} apart at least; the kerf takes {both} of it where "
                "both run there."
            ), {"gap": gap, "both": 2.0 * how.kerf},
        ))
    if not over.exact:
        notes.append(
            Said(
                marked(
                    "Seams are cut over, {angle} deg in all, as the templates have them; pins, "
                    "lines and offcuts here reckon with it."
                ), {"angle": figure(over.angle)},
            )
            if over.angle
            else Said(
                marked(
                    "Seams are cut over, {width} on each, as the templates have them; pins, lines "
                    "and offcuts here reckon with it."
                ), {"width": over.width},
            )
        )  # fmt: skip
    notes += _by_shape(layouts, stacks, how, over)
    loose = [s.pile.name for s in stacks if loose_parts(s.pile, s.board, s.pins, how)]
    if loose:
        notes.append(Said(
            marked(
                "Some parts of stack {stacks} have room for neither a pin nor a screw: before it "
                "is closed, stick boards and leaves together there with removable double-sided "
                "tape in the waste, so that no leaf can slip."
            ), {"stacks": ", ".join(loose)},
        ))
    narrow = [stack.pile.name for stack in stacks if stack.room < LEAST_CLAMPED]
    if narrow and how.key != "machine":
        notes.append(Said(
            marked(
                "The pieces of stack {stacks} are less than {least} wide at their widest: stick "
                "board and leaves together with removable double-sided tape in the waste, and "
                "clamp on a bridge that bears on both sides of the blade's line."
            ),
            {"stacks": ", ".join(narrow), "least": LEAST_CLAMPED},
        ))
    if len(stacks) > 1:
        notes.append(Said(
            marked("There are {count} stacks: leaves of one are never laid in another."),
            {"count": len(stacks)},
        ))
    if any(stack.pile.spares for stack in stacks):
        notes.append(
            Said(marked(
                "Spare leaves are cut like the others and kept: a piece that breaks at the press "
                "or the trimming has its neighbour in the sequence."
            ))
            if how.key == "machine"
            else Said(marked(
                "Spare leaves are cut with the others and kept: a piece that breaks at the press "
                "or the trimming has its neighbour in the sequence."
            ))
        )  # fmt: skip
    return tuple(notes)


def _by_shape(
    layouts: Sequence[Layout], stacks: Sequence[StackPlan], how: Method, over: Over
) -> list[Said]:
    """What cutting by shape would spare, where one cut serves pieces of several; on a machine each
    piece has an outline of its own."""
    if how.key == "machine":
        return [Said(
            marked(
                "Each piece is cut to its own outline; those shown here are of all pieces of a "
                "stack together, and pins stand outside all of them."
            ),
        )] if any(cut.trimmed or cut.again for s in stacks for cut in s.pile.cuts) else []
    if not any(cut.trimmed for stack in stacks for cut in stack.pile.cuts):
        return []
    parted = piles(layouts, by_shape=True, over=over)

    def area(found: Sequence[Pile]) -> float:
        return sum(len(pile.leaves) * cut.outline.area for pile in found for cut in pile.cuts)

    spared = 1.0 - area(parted) / area([stack.pile for stack in stacks])
    if len(parted) <= len(stacks) or spared < 0.005:
        return []
    return [Said(
        marked(
            "One outline serves pieces of several shapes. Cut by shape they would be {count} "
            "stacks with a template each, and take {share} % less of the leaves."
        ),
        {"count": len(parted), "share": round(100.0 * spared)},
    )]

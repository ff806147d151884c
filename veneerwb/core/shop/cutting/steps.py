# SPDX-License-Identifier: LGPL-2.1-or-later
"""The steps of cutting one stack, from marking to the free piece, each with what holds and its
caution."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Any

from shapely.geometry import Point as ShapelyPoint

from veneerwb.core.leaf import ranges
from veneerwb.core.plane import Point
from veneerwb.core.shop.cutting.cautions import caution
from veneerwb.core.shop.cutting.methods import Method
from veneerwb.core.shop.cutting.order import Bite, Hold, bites, lies
from veneerwb.core.shop.cutting.parts import Part, Parting, across, parted
from veneerwb.core.shop.cutting.piles import Pile, PileCut
from veneerwb.core.shop.cutting.said import Said
from veneerwb.core.shop.cutting.sides import Side
from veneerwb.words import filled, marked, say, word

HELD = {
    "pin": (marked("{count} pin through boards and leaves"),
            marked("{count} pins through boards and leaves")),
    "screw": (marked("a screw through both boards"), marked("{count} screws through both boards")),
    "tape": (marked("tape round the boards"),),
    "clamps": (marked("the sled's clamps on the upper board over the piece"),),
    "straightedge": (marked("the straightedge clamped over the piece at both ends"),),
    "bed": (marked("tape, film or suction under the piece"),),
    "waste": (marked("the sides not cut yet, by which it hangs in the waste"),),
}  # fmt: skip
"""What holds, one of them and several."""
STOPS = {
    "tape": (marked("tape across the cuts"),),
    "pin": (marked("{count} pin in the board"), marked("{count} pins in the board")),
}
"""Said instead for a blade that stops, where there are no boards above."""
TAPED = marked("tape over the line, down to the board")
SEAM = {
    "": marked("Cut {side}."),
    "with": marked(
        "Cut {side} along the grain, which leads the knife: hold it against the straightedge."
    ),
    "across": marked(
        "Cut {side} across the grain: tape over the line first, or the veneer breaks out."
    ),
    "aslant": marked(
        "Cut {side} in the arrow's direction, in which a knife that follows the grain runs off "
        "into the waste and not into the piece."
    ),
    "stops": marked(
        "Cut {side} no further than its ends, for the piece reaches beyond it: on a band saw, or "
        "by knife in lifts."
    ),
}
"""How a seam is cut: by a saw, by a knife as it lies to the grain, or where the cut must stop."""
RIM = {
    "": marked("Cut the {side}."),
    "straight": marked(
        "Cut the {side} by a straight outside its curve, to which it is trimmed later."
    ),
    "template": marked("Cut the {side} along the template."),
    "stops": marked(
        "Cut the {side} no further than its ends, for the piece reaches beyond it: on a band saw, "
        "or by knife in lifts."
    ),
}
KERF = marked("The kerf of {kerf} lies in the waste.")
HANGS = marked("Nothing falls yet: the piece still hangs in the waste.")
DUST = marked("Only dust falls.")
TRIAL = {
    "knife": marked(
        "Cut a trial stack of plain veneer, as high as a lift, by the steps below. Lay its top and "
        "bottom pieces on each other: they show kerf and lean."
    ),
    "saw": marked(
        "Cut a trial stack of plain veneer, as high as a lift, by the steps below, in boards of "
        "its own. Lay its top and bottom pieces on each other: they show kerf and lean."
    ),
    "machine": marked(
        "Cut a trial leaf of plain veneer by the steps below and measure it: what it is smaller "
        "all round than the template, the tool has taken inside the line."
    ),
}


@dataclass(frozen=True)
class Step:
    """A step: its `number`, the letter of its `stack`, its `kind` ("test", "mark", "prick",
    "shorten", "lay", "close", "part", "seam", "rim", "round", "free", "again"), what to do, and the
    caution.

    Of a step at a blade also `line` (bundle mm, in the direction of the cut), the area `kept` and
    what `falls` (bundle mm, None: nothing), and what holds the one and the other, as values and as
    words.
    """

    number: int
    stack: str
    kind: str
    what: Said
    caution: str
    line: tuple[Point, ...] = ()
    kept: Any = None
    falls: Any = None
    piece: tuple[Hold, ...] = ()
    waste: tuple[Hold, ...] = ()
    held: str = ""
    waste_held: str = ""

    @property
    def at_blade(self) -> bool:
        return self.kind in ("part", "seam", "rim", "round")


def steps(
    pile: Pile, board: Any, pins: Sequence[Point], how: Method, lifts: Sequence[Sequence[int]],
    long: bool, first: bool,
) -> tuple[Step, ...]:
    """The steps of a stack; those from laying to freeing are done for each of its `lifts`. `long`:
    its leaves reach beyond the `board`. `first`: it is the first, before which the cut is tried."""
    made = [*_before(pile, how, long, first), *_laying(pile, how, lifts),
            *_cutting(pile, board, pins, how), *_after(pile, how, len(lifts))]
    return tuple(replace(one, number=k) for k, one in enumerate(made, start=1))


def _step(pile: Pile, how: Method, kind: str, what: Said, **more: Any) -> Step:
    return Step(0, pile.name, kind, what, caution(kind, how.key), **more)


def _before(pile: Pile, how: Method, long: bool, first: bool) -> Iterator[Step]:
    if first:
        yield _step(pile, how, "test", Said(TRIAL[how.key]))
    yield _step(pile, how, "mark", Said(
        marked(
            "Chalk number, side and arrow on each leaf inside the outline, as the marking sheet "
            "shows."
        ),
    ))
    yield _step(pile, how, "prick", Said(
        marked("Prick the two holes of each leaf as the pinning sheet gives them."),
    ))
    again = _again(pile, how)
    if again:
        yield _step(pile, how, "outline", Said(
            marked(
                "On the leaves of positions {again} mark their own outline too, fine, each with "
                "its own template by the two holes."
            ), {"again": ranges(again)},
        ))
    if long:
        yield _step(pile, how, "shorten", Said(
            marked(
                "Where leaves reach more than {around} beyond the cuts and are in the way, cut "
                "them off there; keep what comes off, with its leaf's number."
            ), {"around": how.around},
        ))


def _laying(pile: Pile, how: Method, lifts: Sequence[Sequence[int]]) -> Iterator[Step]:
    turned = turned_said(pile)
    if how.key == "machine":
        words = ONE_BY_ONE_TURNED if turned else ONE_BY_ONE
    else:
        words = BY_LIFTS if len(lifts) > 1 else AT_ONCE
    yield _step(pile, how, "lay", Said(words, {
        "first": ranges(lifts[0]), "top": lifts[0][0], "turned": turned,
    }))
    yield _step(pile, how, "close", Said(HOLDING[how.key], {"board": how.board}))


ONE_BY_ONE = marked(
    "One leaf after another, leaf {top} first: put it on the two pins, the side up that the file "
    "of its position names, its face."
)
ONE_BY_ONE_TURNED = marked(
    "One leaf after another, leaf {top} first: put it on the two pins, the side up that the file "
    "of its position names; the backs of positions {turned} are up."
)
BY_LIFTS = marked(
    "Lift by lift, leaves {first} first: put them on the two pins, all faces up, in their order, "
    "leaf {top} uppermost."
)
AT_ONCE = marked(
    "Put leaves {first} on the two pins, all faces up, in their order, leaf {top} uppermost."
)
HOLDING = {
    "knife": marked(
        "Put the template on the two pins over the leaves, tape the lift to the board in the "
        "waste, clamp the straightedge over the piece."
    ),
    "saw": marked(
        "Put the upper board, {board} thick, on the pins and the template over it; score the "
        "template's outline into the board, which is the line. Take the template off, drive the "
        "screws in the places shown, wrap tape round the sandwich, clamp it on the sled."
    ),
    "machine": marked(
        "Hold the leaf down round the outline and under the piece. Take the file of its position "
        "and side; set the tool so that the file's two pins lie on the bed's."
    ),
}


def _cutting(pile: Pile, board: Any, pins: Sequence[Point], how: Method) -> Iterator[Step]:
    areas, left = [], board
    for k, cut in enumerate(pile.cuts):  # what was cut out before is there no more
        areas.append(Part(left, k))
        left = left.difference(cut.outline)
    partings: Sequence[Parting] = ()
    if how.through:
        partings, parts = parted(board, [cut.outline for cut in pile.cuts], how.kerf)
        areas = sorted(parts, key=lambda part: part.cut)
    bitten = [(part, bites(pile.cuts[part.cut], part.area, pins, how)) for part in areas]
    screws = [p for _, found in bitten for bite in found for hold in bite.waste
              if hold.by == "screw" for p in hold.places]
    for one in partings:
        yield _parting(pile, how, one, pins, screws)
    for part, found in bitten:
        cut = pile.cuts[part.cut]
        named = side_names(cut)
        which = part.cut + 1 if len(pile.cuts) > 1 else 0
        for bite in found:
            if how.key == "machine":
                yield _rounded(pile, how, bite, which)
                continue
            nth, of = bite.nth
            name = named[bite.side]
            if of > 1:
                name = say("{side} ({nth} of {count})", side=name, nth=nth, count=of)
            if which:
                name = say("{side} of cut {number}", side=name, number=which)
            yield _bitten(pile, how, bite, cut.sides[bite.side], name)


def side_names(cut: PileCut) -> list[str]:
    """The sides' names: seam 1, seam 2, rim."""
    kinds = [side.kind for side in cut.sides]
    named = []
    for k, kind in enumerate(kinds):
        if kinds.count(kind) > 1:
            named.append(say(NUMBERED[kind], number=kinds[:k].count(kind) + 1))
        else:
            named.append(word(kind))
    return named


NUMBERED = {"seam": marked("seam {number}"), "rim": marked("rim {number}")}


def _parting(
    pile: Pile, how: Method, one: Parting, pins: Sequence[Point], screws: Sequence[Point]
) -> Step:
    """What holds are the pins and the screws that are driven already."""
    inside = {by: tuple(p for p in places if one.area.covers(ShapelyPoint(p)))
              for by, places in (("pin", pins), ("screw", screws))}
    there = (Hold(by, places) for by, places in inside.items() if places)
    piece = (*there, Hold("tape"), Hold("clamps"))
    return _step(
        pile, how, "part", Said(marked(
            "Part the stack between the cuts; tape the fresh edges at once."
        )),
        line=across(one.line, one.area), kept=one.area, piece=piece, held=held(piece, how),
    )


def loose_parts(pile: Pile, board: Any, pins: Sequence[Point], how: Method) -> int:
    """How many of the parts that a saw makes of a stack have neither pin nor screw in them."""
    if not how.through or len(pile.cuts) == 1:  # the pins stand in the whole
        return 0
    _, parts = parted(board, [cut.outline for cut in pile.cuts], how.kerf)
    return sum(
        not any(hold.places for bite in bites(pile.cuts[part.cut], part.area, pins, how)
                for hold in (*bite.piece, *bite.waste))
        for part in parts
    )


def _bitten(pile: Pile, how: Method, bite: Bite, side: Side, name: str) -> Step:
    how_cut = _how_cut(how, bite, side)
    words = [RIM[how_cut] if side.kind == "rim" else SEAM[how_cut]]
    if how.kerf:
        words.append(KERF)
    if bite.falls is None:
        words.append(HANGS if bite.stops else DUST)
    return _step(
        pile, how, side.kind, Said(tuple(words), {"side": name, "kerf": how.kerf}), line=bite.line,
        kept=bite.kept, falls=bite.falls, piece=bite.piece, waste=bite.waste,
        held=held(bite.piece, how), waste_held=held(bite.waste, how),
    )


def _how_cut(how: Method, bite: Bite, side: Side) -> str:
    """One of the keys of RIM or SEAM."""
    if how.through and bite.stops:
        return "stops"
    if side.kind != "rim":
        return lies(side) if how.key == "knife" else ""
    if how.through:
        return "" if bite.exact else "straight"
    return "template" if how.key == "knife" else ""


def turned_said(pile: Pile) -> str:
    """The positions that show the back, top by top where there are several."""
    tops = sorted({cut.top for cut in pile.cuts})
    found = [(top, {p for cut in pile.cuts if cut.top == top for p in cut.turned}) for top in tops]
    return "; ".join(
        say("{positions} of top {top}", positions=ranges(some), top=top) if len(tops) > 1
        else ranges(some)
        for top, some in found if some
    )  # fmt: skip


def _rounded(pile: Pile, how: Method, bite: Bite, which: int) -> Step:
    words = [ROUND_CUT if which else ROUND, *([KERF] if how.kerf else ())]
    return _step(
        pile, how, "round", Said(tuple(words), {"kerf": how.kerf, "number": which}),
        line=bite.line, kept=bite.kept, falls=bite.falls, piece=bite.piece, waste=bite.waste,
        held=held(bite.piece, how), waste_held=held(bite.waste, how),
    )


ROUND = marked(
    "Run the tool round the outline, as the file of its position has it, outside the line: "
    "counter-clockwise as seen, the tool on the right; begin and end in the arrow's place."
)
ROUND_CUT = marked(
    "Run the tool round the outline of cut {number}, as the file of its position has it, outside "
    "the line: counter-clockwise as seen, the tool on the right; begin and end in the arrow's "
    "place."
)


def _again(pile: Pile, how: Method) -> list[int]:
    """The positions that are cut from a common outline to their own; none on a machine, which cuts
    each to its own at once."""
    if how.key == "machine":
        return []
    return sorted({p for cut in pile.cuts for p in cut.again})


def _after(pile: Pile, how: Method, lifts: int) -> Iterator[Step]:
    trimmed = sorted({p for cut in pile.cuts for p in cut.trimmed})
    if how.key == "machine":
        words = [LIFT_ONE]
    else:
        words = [LIFT_ALL]
        if lifts > 1:
            words.append(NEW_BOARDS if how.through else SAME_PINS)
        if trimmed:
            words.append(TOO_LONG)
    yield _step(pile, how, "free", Said(tuple(words), {"trimmed": ranges(trimmed)}))
    again = _again(pile, how)
    if again:
        under = (Hold("straightedge"),)
        yield _step(pile, how, "again", Said(
            marked(
                "Cut positions {again} along their own outlines, which are marked on them: one "
                "piece at a time, by knife, on a board under its own template."
            ), {"again": ranges(again)},
        ), piece=under, held=held(under, how), waste=(Hold("tape"),), waste_held=word(TAPED))


LIFT_ONE = marked(
    "Lift the piece off and lay it aside in its order; put the next leaf on the pins."
)
LIFT_ALL = marked("Lift the pieces off in their order; the edge of the lowest shows the lean.")
NEW_BOARDS = marked(
    "The next lift takes two new boards, with pins in the same places: these are sawn up."
)
SAME_PINS = marked("Lay the next lift on the same pins, under the same template.")
TOO_LONG = marked(
    "The rims of positions {trimmed} are too long: cut them back to their own when the top is "
    "taped, before the press."
)


def held(holds: Sequence[Hold], how: Method) -> str:
    """What holds, in words; empty for nothing."""
    said = []
    words = HELD if how.through else {**HELD, **STOPS}
    for by in dict.fromkeys(hold.by for hold in holds):
        count = sum(len(hold.places) for hold in holds if hold.by == by)
        one_or_many = words[by]
        said.append(filled(word(one_or_many[-1 if count > 1 else 0]), {"count": count}))
    return ", ".join(said)

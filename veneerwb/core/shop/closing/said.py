# SPDX-License-Identifier: LGPL-2.1-or-later
"""The closing of a ring in words and tables, for a page and for a screen. `length` writes mm as the
shop reads them. What is told before cutting is in `said_before`."""

from __future__ import annotations

from veneerwb.core.listing import all_of
from veneerwb.core.shop.closing.advice import Closing
from veneerwb.core.shop.closing.measured import SURE, point_moves
from veneerwb.core.shop.closing.said_before import claim, expect, offers, price, steps_before
from veneerwb.core.shop.closing.said_words import Length, Table, caution, deg, share
from veneerwb.core.shop.closing.trued import Part, Places, bent
from veneerwb.core.shop.drawing.lettering import runs
from veneerwb.words import figure, filled, marked, say, word

__all__ = [
    "NAMES", "Length", "Table", "caution", "claim", "deg", "diameters", "ends", "expect",
    "found_after", "meet", "offers", "price", "share", "steps_after", "steps_before", "wedges",
]  # fmt: skip

NAMES = "abcdefgh"
"""The ends of the parts, in their order."""
NO_SHUFFLE = marked("Pieces keep their places: a matched ring is not reshuffled.")
LEAST_TIP = 0.005
"""mm: a tip that moves by less stays where it is."""
LEAST_TRIM = 0.0005
"""Degrees: less is not trued off."""
LEAST_GAP = 0.05
"""mm: a rim that opens less closes."""


def found_after(closing: Closing, length: Length) -> list[str]:
    """What was measured, in words."""
    after = closing.after
    off = after.error
    gap = abs(after.rim_gap)
    values = {
        "sum": deg(after.total.value), "sure": deg(after.total.uncertainty),
        "reach": length(after.ring.reach), "gap": length(gap),
        "rim": length(after.rim_gap_uncertainty),
    }  # fmt: skip
    how = "closes" if gap < LEAST_GAP else "overlaps" if off > 0.0 else "open"
    texts = [filled(word(FOUND[how]), values)]
    if closing.shifted:
        texts.append(_slid(closing, length))
    return texts


FOUND = {
    "closes": marked(
        "The pieces sum to {sum} (sure to {sure}, one standard deviation): {reach} from the tips "
        "the ring closes, give or take {rim}."
    ),
    "overlaps": marked(
        "The pieces sum to {sum} (sure to {sure}, one standard deviation): {reach} from the tips "
        "the ring overlaps by {gap}, give or take {rim}."
    ),
    "open": marked(
        "The pieces sum to {sum} (sure to {sure}, one standard deviation): {reach} from the tips "
        "the ring stays open by {gap}, give or take {rim}."
    ),
}


def _slid(closing: Closing, length: Length) -> str:
    """What edges that are all out by one width do."""
    left = closing.oversize_left
    text = say(
        OUT if closing.shifted > 0.0 else IN, shifted=length(abs(closing.shifted)),
        moved=length(abs(closing.slides)),
    )
    rim = (
        say("The rim then ends {short} short of the finished edge.", short=length(-left))
        if left < 0.0
        else say("Of the oversize {left} are left at the rim.", left=length(left))
    )
    return f"{text} {rim}"


OUT = marked(
    "All edges lie {shifted} out alike: the ring closes all the same, each piece {moved} further "
    "out along its axis, and its figure with it."
)
IN = marked(
    "All edges lie {shifted} in alike: the ring closes all the same, each piece {moved} further in "
    "along its axis, and its figure with it."
)


def steps_after(closing: Closing, length: Length) -> list[str]:
    """Which joint to leave open, and the lines to true along, numbered."""
    after, at = closing.after, closing.at
    if after.ring.ways % 2:
        return _odd(closing, length)
    best = after.best
    one, two = at.parts[0], at.parts[len(at.parts) // 2]
    values = {"one": _joint(one), "two": _joint(two), "count": len(after.diameters)}
    steps = [
        say("Leave the diameter open between {one} on one side and {two} on the other: of {count} "
            "it does best.", **values) + f" {_why(closing)}"
        if len(after.diameters) > 1
        else say("Leave the diameter open between {one} on one side and {two} on the other, as "
                 "measured.", **values),
        say(
            "The halves are {one} with {first} and {two} with {second}, each sure to {sure}. The "
            "chance that both reach 180 deg is {chance}.",
            one=_half(one.positions), first=deg(best.halves[0].value), two=_half(two.positions),
            second=deg(best.halves[1].value), sure=deg(best.halves[0].uncertainty),
            chance=share(best.sure),
        ),
        word(
            "True each half: at each end mark what comes off at tip and rim, square to the "
            "piece's edge, and cut along a straight from mark to mark."
        ),
        _together(meet(at, length, closing.layout.recipe.disc), _bent(at, length)),
        _together(word(NO_SHUFFLE), _swapped(closing)),
    ]  # fmt: skip
    return [f"{k}. {step}" for k, step in enumerate(steps, start=1)]


def _together(*sentences: str) -> str:
    """Those that are not empty, one after another."""
    return " ".join(filter(None, sentences))


def _odd(closing: Closing, length: Length) -> list[str]:
    part = closing.at.parts[0]
    texts = [
        say(
            "{count} pieces are an odd number: no diameter runs through the ring, only the last "
            "joint, between pieces {part}, is left to true.",
            count=len(part.positions), part=_joint(part),
        )
    ]
    if part.over > 0.0:
        texts.append(
            say(
                "Take {offsets} at the rim, nothing at the tip, off both its pieces.",
                offsets=length(part.offsets[0][1]),
            )
        )
    elif not part.trued:
        texts.append(
            say(
                "It stays {open} open at the rim: nothing is left to true off. Cut one piece anew "
                "from a spare leaf, wider by that.",
                open=length(part.open),
            )
        )
    return [f"{k}. {text}" for k, text in enumerate([*texts, word(NO_SHUFFLE)], start=1)]


def _why(closing: Closing) -> str:
    """By what the diameter was chosen."""
    best = closing.after.best
    if best.sure >= SURE and closing.after.broken:
        return say(
            "No tip is lost if that can be, then as little trued off as can be; of those that are "
            "sure, truing shows least there, where most surfaces lie between the leaves that meet "
            "({broken:.1f} on the mean); else the most even halves.", broken=best.broken,
        )  # fmt: skip
    return word(
        "No tip is lost if that can be, then as little trued off as can be, then the most even "
        "halves."
    )


def _bent(at: Places, length: Length) -> str:
    """How the tips are kept where one half is under and the other makes up for it."""
    found = bent(at)
    if found is None:
        return ""
    values = {"kept": _half(found.kept.positions), "other": _half(found.other.positions),
              "bend": deg(found.bend)}  # fmt: skip
    if found.trim > LEAST_TRIM:
        return say(
            "To keep the tips instead: {kept} stays as it is, and {other} is trued to {to} only, "
            "each edge by itself, from nothing at the tip to {offs} at the rim; the joint then "
            "bends by {bend} at the tips.",
            to=deg(found.to), offs=all_of(list(dict.fromkeys(map(length, found.offs)))), **values,
        )  # fmt: skip
    return say(
        "To keep the tips instead: {kept} stays as it is, and {other} too: they fit into each "
        "other untrued; the joint then bends by {bend} at the tips.", **values,
    )  # fmt: skip


def meet(at: Places, length: Length, disc: float = 0.0) -> str:
    """Whether the tips still meet; `disc`: the diameter of one that covers them, mm."""
    moved = point_moves(at.parts)
    if moved < LEAST_TIP:
        return word("All tips still meet in one point.")
    lost = max(part.tip_lost for part in at.parts)
    apart = say(
        "A part that is under is trued {lost} beyond its tip, which goes with the waste: the tips "
        "no longer meet, their figure comes to lie {moved} apart.",
        lost=length(lost), moved=length(moved),
    )
    helps = (
        word("The disc over the centre hides it.")
        if disc > 2.0 * moved
        else word("A disc over the centre hides it; a new wedge cut wider makes it good.")
    )
    return f"{apart} {helps}"


def _swapped(closing: Closing) -> str:
    if not closing.swaps or closing.after.best.sure >= SURE:
        return ""
    one = closing.swaps[0]
    values = {
        "one": one.a, "other": one.b, "now": deg(one.uneven_now), "then": deg(one.uneven),
        "steps": _listed(one.steps), "instead": _listed(one.steps_now), "broken": one.broken,
    }  # fmt: skip
    if one.broken:
        return say(
            "To swap {one} and {other} would even the halves from {now} to {then}, and put {steps} "
            "instead of {instead} surfaces between the pieces about them; {broken} seams would be "
            "no book joints.", **values,
        )  # fmt: skip
    return say(
        "To swap {one} and {other} would even the halves from {now} to {then}, and put {steps} "
        "instead of {instead} surfaces between the pieces about them.", **values,
    )  # fmt: skip


def _listed(steps: tuple[int, ...]) -> str:
    return ", ".join(map(str, steps))


def _joint(part: Part) -> str:
    """The two pieces at the joint where a part begins: the one before it and its first."""
    return all_of([_before(part), str(part.positions[0])])


def _before(part: Part) -> str:
    ways = round(360.0 / (part.end - part.begin)) * len(part.positions)
    return str((part.positions[0] - 2) % ways + 1)


def _half(positions: tuple[int, ...]) -> str:
    return say("{first} to {last}", first=positions[0], last=positions[-1])


ENDS = (
    marked("end"), marked("piece"), marked("its edge to"), marked("off at tip"),
    marked("off at rim"), marked("tip to rim"),
)


def ends(at: Places, length: Length) -> Table:
    """The line of every end: what to mark at tip and rim, square to the piece's edge."""
    heads = tuple(map(word, ENDS))
    ways = at.ring.ways
    rows = []
    for k, part in enumerate(at.parts):
        last = part.positions[-1]
        neighbours = (_before(part), str(last % ways + 1))
        for side, (tip, rim) in enumerate(part.offsets):
            piece = part.positions[0] if side == 0 else last
            rows.append((
                NAMES[2 * k + side], str(piece), neighbours[side], length(tip), length(rim),
                length(part.lengths[side]),
            ))  # fmt: skip
    return heads, rows


def diameters(closing: Closing, length: Length, most: int = 4) -> Table:
    """The best diameters against each other; `between`: the surfaces between the leaves that meet
    there, on the mean."""
    hides = closing.after.broken
    heads = (
        word("diameter before"), word("halves"), word("between") if hides else word("uneven"),
        word("tips lost"), word("sure"),
    )  # fmt: skip
    rows = []
    for one in closing.after.diameters[:most]:
        half = closing.ring.ways // 2
        other = (one.first - 1 + half) % closing.ring.ways + 1
        values = " / ".join(figure(h.value, ".2f") for h in one.halves)
        rows.append((
            all_of([str(one.first), str(other)]), values,
            figure(one.broken, ".1f") if hides else deg(one.uneven), length(one.costs.tips),
            share(one.sure),
        ))  # fmt: skip
    return heads, rows


def wedges(closing: Closing) -> Table:
    """What was measured, pieces of one angle together."""
    after = closing.after
    heads = word("pieces"), word("measured"), word("sure to")
    if not after.wedges:
        both = after.ring.parts(after.first, 2)
        return heads, [
            (_half(p), deg(a.value), deg(a.uncertainty)) for p, a in zip(both, after.halves)
        ]
    alike: dict[tuple[str, str], list[int]] = {}
    for position, angle in enumerate(after.wedges, start=1):
        alike.setdefault((deg(angle.value), deg(angle.uncertainty)), []).append(position)
    return heads, [(runs(found), *key) for key, found in alike.items()]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""The closing of a ring in words and tables, for a page and for a screen. `length` writes mm as the
shop reads them. What is told before cutting is in `said_before`."""

from __future__ import annotations

from veneerwb.core.shop.closing.advice import Closing
from veneerwb.core.shop.closing.measured import SURE, point_moves
from veneerwb.core.shop.closing.said_before import claim, expect, offers, price, steps_before
from veneerwb.core.shop.closing.said_words import CAUTION, Length, Table, deg, share
from veneerwb.core.shop.closing.trued import Part, Places, bent
from veneerwb.core.shop.lettering import runs

__all__ = [
    "CAUTION", "NAMES", "Length", "Table", "claim", "deg", "diameters", "ends", "expect",
    "found_after", "meet", "offers", "price", "share", "steps_after", "steps_before", "wedges",
]  # fmt: skip

NAMES = "abcdefgh"
"""The ends of the parts, in their order."""
NO_SHUFFLE = "Pieces keep their places: a matched ring is not reshuffled."
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
    how = "overlaps" if off > 0.0 else "stays open"
    found = "closes" if gap < LEAST_GAP else f"{how} by {length(gap)}"
    texts = [
        f"The pieces sum to {deg(after.total.value)} (sure to {deg(after.total.uncertainty)}, one "
        f"standard deviation): {length(after.ring.reach)} from the tips the ring {found}, give or "
        f"take {length(after.rim_gap_uncertainty)}."
    ]
    if closing.shifted:
        texts.append(_slid(closing, length))
    return texts


def _slid(closing: Closing, length: Length) -> str:
    """What edges that are all out by one width do."""
    way = "out" if closing.shifted > 0.0 else "in"
    moved, left = length(abs(closing.slides)), closing.oversize_left
    text = (
        f"All edges lie {length(abs(closing.shifted))} {way} alike: the ring closes all the same, "
        f"each piece {moved} further {way} along its axis, and its figure with it. "
    )
    if left < 0.0:
        return text + f"The rim then ends {length(-left)} short of the finished edge."
    return text + f"Of the oversize {length(left)} are left at the rim."


def steps_after(closing: Closing, length: Length) -> list[str]:
    """Which joint to leave open, and the lines to true along, numbered."""
    after, at = closing.after, closing.at
    if after.ring.ways % 2:
        return _odd(closing, length)
    best = after.best
    one, two = at.parts[0], at.parts[len(at.parts) // 2]
    steps = [
        f"Leave the diameter open between {_joint(one)} on one side and {_joint(two)} on the other"
        + (
            f": of {len(after.diameters)} it does best. {_why(closing)}"
            if len(after.diameters) > 1
            else ", as measured."
        ),
        f"The halves are {_half(one.positions)} with {deg(best.halves[0].value)} and "
        f"{_half(two.positions)} with {deg(best.halves[1].value)}, each sure to "
        f"{deg(best.halves[0].uncertainty)}. The chance that both reach 180 deg is "
        f"{share(best.sure)}.",
        "True each half: at each end mark what comes off at tip and rim, square to the piece's "
        "edge, and cut along a straight from mark to mark.",
        meet(at, length, closing.layout.recipe.disc) + _bent(at, length),
        NO_SHUFFLE + _swapped(closing),
    ]
    return [f"{k}. {step}" for k, step in enumerate(steps, start=1)]


def _odd(closing: Closing, length: Length) -> list[str]:
    part = closing.at.parts[0]
    texts = [
        f"{len(part.positions)} pieces are an odd number: no diameter runs through the ring, only "
        f"the last joint, between pieces {_joint(part)}, is left to true."
    ]
    if part.over > 0.0:
        texts.append(
            f"Take {length(part.offsets[0][1])} at the rim, nothing at the tip, off both its "
            "pieces."
        )
    elif not part.trued:
        texts.append(
            f"It stays {length(part.open)} open at the rim: nothing is left to true off. Cut one "
            "piece anew from a spare leaf, wider by that."
        )
    return [f"{k}. {text}" for k, text in enumerate([*texts, NO_SHUFFLE], start=1)]


def _why(closing: Closing) -> str:
    """By what the diameter was chosen."""
    best = closing.after.best
    text = "No tip is lost if that can be, then as little trued off as can be"
    if best.sure >= SURE and closing.after.broken:
        return (
            f"{text}; of those that are sure, truing shows least there, where most surfaces lie "
            f"between the leaves that meet ({best.broken:.1f} on the mean); else the most even "
            "halves."
        )
    return f"{text}, then the most even halves."


def _bent(at: Places, length: Length) -> str:
    """How the tips are kept where one half is under and the other makes up for it."""
    found = bent(at)
    if found is None:
        return ""
    off = (
        f"is trued to {deg(found.to)} only, each edge by itself, from nothing at the tip to "
        f"{' and '.join(dict.fromkeys(map(length, found.offs)))} at the rim"
        if found.trim > LEAST_TRIM
        else "too: they fit into each other untrued"
    )
    return (
        f" To keep the tips instead: {_half(found.kept.positions)} stays as it is, and "
        f"{_half(found.other.positions)} {off}; the joint then bends by {deg(found.bend)} at the "
        "tips."
    )


def meet(at: Places, length: Length, disc: float = 0.0) -> str:
    """Whether the tips still meet; `disc`: the diameter of one that covers them, mm."""
    moved = point_moves(at.parts)
    if moved < LEAST_TIP:
        return "All tips still meet in one point."
    lost = max(part.tip_lost for part in at.parts)
    helps = (
        "The disc over the centre hides it."
        if disc > 2.0 * moved
        else "A disc over the centre hides it; a new wedge cut wider makes it good."
    )
    return (
        f"A part that is under is trued {length(lost)} beyond its tip, which goes with the waste: "
        f"the tips no longer meet, their figure comes to lie {length(moved)} apart. {helps}"
    )


def _swapped(closing: Closing) -> str:
    if not closing.swaps or closing.after.best.sure >= SURE:
        return ""
    one = closing.swaps[0]
    text = (
        f" To swap {one.a} and {one.b} would even the halves from {deg(one.uneven_now)} to "
        f"{deg(one.uneven)}, and put {_listed(one.steps)} instead of {_listed(one.steps_now)} "
        "surfaces between the pieces about them"
    )
    return text + (f"; {one.broken} seams would be no book joints." if one.broken else ".")


def _listed(steps: tuple[int, ...]) -> str:
    return ", ".join(map(str, steps))


def _joint(part: Part) -> str:
    """The two pieces at the joint where a part begins: the one before it and its first."""
    first = part.positions[0]
    return f"{_before(part)} and {first}"


def _before(part: Part) -> str:
    ways = round(360.0 / (part.end - part.begin)) * len(part.positions)
    return str((part.positions[0] - 2) % ways + 1)


def _half(positions: tuple[int, ...]) -> str:
    return f"{positions[0]} to {positions[-1]}"


def ends(at: Places, length: Length) -> Table:
    """The line of every end: what to mark at tip and rim, square to the piece's edge."""
    heads = ("end", "piece", "its edge to", "off at tip", "off at rim", "tip to rim")
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
    heads = ("diameter before", "halves", "between" if hides else "uneven", "tips lost", "sure")
    rows = []
    for one in closing.after.diameters[:most]:
        half = closing.ring.ways // 2
        other = (one.first - 1 + half) % closing.ring.ways + 1
        values = " / ".join(f"{h.value:.2f}" for h in one.halves)
        rows.append((
            f"{one.first} and {other}", values,
            f"{one.broken:.1f}" if hides else deg(one.uneven), length(one.costs.tips),
            share(one.sure),
        ))  # fmt: skip
    return heads, rows


def wedges(closing: Closing) -> Table:
    """What was measured, pieces of one angle together."""
    after = closing.after
    heads = ("pieces", "measured", "sure to")
    if not after.wedges:
        both = after.ring.parts(after.first, 2)
        return heads, [
            (_half(p), deg(a.value), deg(a.uncertainty)) for p, a in zip(both, after.halves)
        ]
    alike: dict[tuple[str, str], list[int]] = {}
    for position, angle in enumerate(after.wedges, start=1):
        alike.setdefault((deg(angle.value), deg(angle.uncertainty)), []).append(position)
    return heads, [(runs(found), *key) for key, found in alike.items()]

# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is told before cutting: what to expect, how much over to cut, what that costs."""

from __future__ import annotations

from veneerwb.core.shop.closing.advice import Before
from veneerwb.core.shop.closing.over import Over
from veneerwb.core.shop.closing.said_words import CALLED, TRUE, Length, Table, deg, hundred, reach
from veneerwb.core.shop.lettering import runs


def claim(over: Over) -> str:
    """What is claimed of an over, exactly."""
    text = f"Of 100 rings cut so, {reach(over.how)} in {hundred(over.claimed)}"
    if over.how == "last joint":
        return text + "."
    if over.measured is None:
        return text + ", the diameter fixed beforehand."
    if over.how == "quarters":
        return text + ", the quarters fixed beforehand."
    return text + f", the diameter chosen by wedges measured to {deg(over.measured)}."


def expect(before: Before, length: Length) -> list[str]:
    """What to expect of wedges that are cut to 360/n."""
    exact, errors = before.exact, before.settled
    ways = exact.ways
    by = ", by the test cut" if before.trial else ""
    found = [
        f"To be expected of {ways} wedges cut to {deg(before.ring.angle, 3)}: the template's error "
        f"({deg(errors.template, 3)} standard{by}) is common to one stack and counts {ways} times, "
        f"each piece's own ({deg(errors.piece)}) by the root of {ways}: the ring's sum spreads by "
        f"{deg(exact.ring.spread)} ({length(before.spread_at_rim)} at the rim)."
    ]
    if ways % 2 == 0:
        half = exact.half
        found[0] = found[0][:-1] + (
            f", each half by {deg(half.spread)}; the two halves go {100.0 * half.alike:.0f} % "
            "together."
        )
    wet = errors.moisture
    if wet:
        found.append(
            f"Moisture {wet.photograph:g} % when photographed, {wet.cut:g} % when cut, "
            f"{wet.taping:g} % when taped ({wet.uncertainty:g} % unsure): without any over the "
            f"ring would {_moved(before.opens, length)}; the over allows for it."
        )
        if abs(before.figure_moves) > 0.05:
            way = "outside" if before.figure_moves > 0.0 else "inside"
            by = length(abs(before.figure_moves))
            found.append(
                f"At the rim the figure beside a wedge's edge lies {by} further {way} than on the "
                "photograph."
            )
        if wet.beyond:
            found.append("The coefficients of movement hold from 6 to 14 % of moisture only.")
    return found


def _moved(opens: float, length: Length) -> str:
    if abs(opens) < 0.05:
        return "close on the mean"
    return f"{'open' if opens > 0.0 else 'overlap'} by {length(abs(opens))} at the rim"


def steps_before(before: Before, length: Length) -> list[str]:
    """The steps up to the taped parts, numbered."""
    offer = before.advised
    how = offer.over.how
    steps = [
        *(_tried(before, length) if before.trial else _to_set(before, length)),
        "Cut all wedges of the stack by this one template, number and side marked.",
        f"Tape up to the {_plural(how)}; dry-lay before glue, measure, and true "
        f"{TRUE[how]}: on the mean {length(offer.costs.lost)} at the rim running out to "
        "nothing at the tip.",
    ]
    return [f"{k}. {step}" for k, step in enumerate(steps, start=1)]


def _to_set(before: Before, length: Length) -> list[str]:
    over, base, count = before.advised.over, before.set_out, before.trial_count
    first = (
        f"Set the template to {deg(over.cut, 3)}, {deg(over.degrees)} over, never under: from the "
        f"tip mark {length(base.base)} on the axis and square off {_exact(base.offset, length)} to "
        f"both sides. Read to {before.reading:g} mm that is sure to "
        f"{deg(before.set_out_error, 3)}."
    )
    if before.base_wanted:
        first += (
            f" That is less sure than the {deg(before.errors.template, 3)} that were reckoned "
            f"with: take a base of {length(before.base_wanted)} or more, or let the test cut "
            "decide."
        )
    return [
        first,
        f"Test cut: {count} wedges of waste laid tip to tip should make {deg(count * over.cut)}. "
        f"What they make, parted by {count}, is the template's angle, sure to "
        f"{deg(before.trial_error, 3)}: the template's error is then no larger than that. Enter "
        "it, and the advice goes by it.",
    ]


def _tried(before: Before, length: Length) -> list[str]:
    """What the test cut found, and whether the template may stay."""
    trial, now, least = before.trial, before.as_tried.over, before.least.over
    sure = trial.angle.uncertainty
    found = (
        f"Test cut: {trial.count} wedges made {deg(trial.sum.value)}, so that the template cuts "
        f"{deg(now.cut, 3)}, sure to {deg(sure, 3)}: {deg(abs(now.degrees), 3)} "
        f"{'over' if now.degrees >= 0.0 else 'under'}, and {deg(least.degrees)} over are wanted."
    )
    turn = least.cut - now.cut
    if before.stays:
        spare = f" {deg(-turn, 3)} less would do." if -turn > 2.0 * sure else ""
        return [f"{found} It may stay as it is.{spare}"]
    return [
        f"{found} Do not cut with it yet: {reach(now.how)} in {hundred(now.claimed)} of 100 "
        f"rings only. Open it by {deg(turn, 3)}: {length(before.set_out.base)} from the tip each "
        f"mark goes {before.mark_moves:.2f} mm out. Then make another test cut."
    ]


def _exact(mm: float, length: Length) -> str:
    """A length that a template is set by: a hundredth of a mm is not too fine for it."""
    exact, shown = f"{mm:.2f} mm", length(mm)
    return exact if shown.endswith("mm") else f"{shown}, exactly {exact},"


def _plural(how: str) -> str:
    return {"quarters": "four quarters", "last joint": "whole ring"}.get(how, "two halves")


def price(before: Before, length: Length) -> list[str]:
    """What the advised over costs."""
    offer, layout = before.advised, before.layout
    costs = offer.costs
    text = (
        f"That over costs: seams up to {length(costs.shift)} off their places at the rim (most at "
        f"the end of piece {costs.seam}), {length(costs.lost)} of figure at the rim on each side "
        f"of a trued joint, {100.0 * costs.area / layout.top.area:.2f} % of the top's area, and "
        f"every wedge {length(offer.wider)} wider at the rim,"
    )
    text += " which its leaf must have." if before.no_room else " which its leaf has room for."
    found = [*_no_room(before, length), claim(offer.over), text]
    if costs.corners:
        most = max(miss for _, miss in costs.corners)
        found.append(
            f"{len(costs.corners)} seams miss their corner of the top, by up to {length(most)}."
        )
    if costs.mirror_off > 0.05 and getattr(layout.recipe, "turn", "") == "book":
        found.append(
            f"At the trued joints the mirror is off by {length(costs.mirror_off)} at the rim."
        )
    if before.ring.ways % 2:
        found.append(
            "An odd number of pieces has no straight diameter: only the last joint can be trued, "
            "from both its pieces alike."
        )
    return found


def _no_room(before: Before, length: Length) -> list[str]:
    """What stands against the over where leaves are too narrow for it."""
    if not before.no_room:
        return []
    some = before.no_room
    leaves = f"Leaf {some[0]} has" if len(some) == 1 else f"Leaves {runs(some)} have"
    return [
        f"{leaves} no room for it: at this spot a wedge can be cut to {deg(before.room)} at most. "
        "Move the wedge on the bundle, take less oversize or wider leaves, or prove the template "
        "by a test cut, so that less over will do."
    ]


def offers(before: Before, length: Length) -> Table:
    """All ways of truing against each other; the advised one with a star."""
    heads = ("true by (* advised)", "sure", "over, deg", "seams off", "lost", "corners off")
    rows = []
    for offer in before.offers:
        over, costs = offer.over, offer.costs
        star = " *" if offer == before.least else ""
        rows.append((
            CALLED[over.how] + star, f"{100.0 * over.claimed:.1f} %", f"{over.degrees:.2f}",
            length(costs.shift), length(costs.lost),
            length(max((miss for _, miss in costs.corners), default=0.0)),
        ))  # fmt: skip
    if not any(before.ring.corner(k) for k in range(before.ring.ways)):
        heads, rows = heads[:-1], [row[:-1] for row in rows]
    return heads, rows

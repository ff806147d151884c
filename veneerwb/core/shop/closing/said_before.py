# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is told before cutting: what to expect, how much over to cut, what that costs."""

from __future__ import annotations

from veneerwb.core.shop.closing.advice import Before
from veneerwb.core.shop.closing.over import Over
from veneerwb.core.shop.closing.said_words import CALLED, TRUE, Length, Table, deg, hundred, reach
from veneerwb.core.shop.drawing.lettering import runs
from veneerwb.words import figure, filled, marked, say, word


def claim(over: Over) -> str:
    """What is claimed of an over, exactly."""
    values = {"reach": reach(over.how), "count": hundred(over.claimed)}
    if over.how == "last joint":
        return say("Of 100 rings cut so, {reach} in {count}.", **values)
    if over.measured is None:
        return say(
            "Of 100 rings cut so, {reach} in {count}, the diameter fixed beforehand.", **values
        )
    if over.how == "quarters":
        return say(
            "Of 100 rings cut so, {reach} in {count}, the quarters fixed beforehand.", **values
        )
    return say(
        "Of 100 rings cut so, {reach} in {count}, the diameter chosen by wedges measured to "
        "{measured}.", measured=deg(over.measured), **values,
    )  # fmt: skip


def expect(before: Before, length: Length) -> list[str]:
    """What to expect of wedges that are cut to 360/n."""
    exact, errors = before.exact, before.settled
    ways = exact.ways
    half = exact.half if ways % 2 == 0 else None
    values = {
        "ways": ways, "angle": deg(before.ring.angle, 3), "template": deg(errors.template, 3),
        "piece": deg(errors.piece), "spread": deg(exact.ring.spread),
        "rim": length(before.spread_at_rim), "half": deg(half.spread) if half else "",
        "alike": f"{100.0 * half.alike:.0f}" if half else "",
    }  # fmt: skip
    found = [filled(word(EXPECTED[half is not None, bool(before.trial)]), values)]
    wet = errors.moisture
    if wet:
        found.append(filled(word(_moved(before.opens)), {
            "photograph": figure(wet.photograph, "g"), "cut": figure(wet.cut, "g"),
            "taping": figure(wet.taping, "g"), "unsure": figure(wet.uncertainty, "g"),
            "gap": length(abs(before.opens)),
        }))  # fmt: skip
        if abs(before.figure_moves) > 0.05:
            moved = length(abs(before.figure_moves))
            found.append(
                say("At the rim the figure beside a wedge's edge lies {moved} further outside than "
                    "on the photograph.", moved=moved)
                if before.figure_moves > 0.0
                else say("At the rim the figure beside a wedge's edge lies {moved} further inside "
                         "than on the photograph.", moved=moved)
            )  # fmt: skip
        if wet.beyond:
            found.append(word("The coefficients of movement hold from 6 to 14 % of moisture only."))
    return found


EXPECTED = {
    (False, False): marked(
        "To be expected of {ways} wedges cut to {angle}: the template's error ({template} "
        "standard) is common to one stack and counts {ways} times, each piece's own ({piece}) by "
        "the root of {ways}: the ring's sum spreads by {spread} ({rim} at the rim)."
    ),
    (False, True): marked(
        "To be expected of {ways} wedges cut to {angle}: the template's error ({template} "
        "standard, by the test cut) is common to one stack and counts {ways} times, each piece's "
        "own ({piece}) by the root of {ways}: the ring's sum spreads by {spread} ({rim} at the "
        "rim)."
    ),
    (True, False): marked(
        "To be expected of {ways} wedges cut to {angle}: the template's error ({template} "
        "standard) is common to one stack and counts {ways} times, each piece's own ({piece}) by "
        "the root of {ways}: the ring's sum spreads by {spread} ({rim} at the rim), each half by "
        "{half}; the two halves go {alike} % together."
    ),
    (True, True): marked(
        "To be expected of {ways} wedges cut to {angle}: the template's error ({template} "
        "standard, by the test cut) is common to one stack and counts {ways} times, each piece's "
        "own ({piece}) by the root of {ways}: the ring's sum spreads by {spread} ({rim} at the "
        "rim), each half by {half}; the two halves go {alike} % together."
    ),
}
"""By whether the ring has halves, and whether a test cut was made."""


def _moved(opens: float) -> str:
    if abs(opens) < 0.05:
        return STILL
    return OPENS if opens > 0.0 else OVERLAPS


STILL = marked(
    "Moisture {photograph} % when photographed, {cut} % when cut, {taping} % when taped ({unsure} "
    "% unsure): without any over the ring would close on the mean; the over allows for it."
)
OPENS = marked(
    "Moisture {photograph} % when photographed, {cut} % when cut, {taping} % when taped ({unsure} "
    "% unsure): without any over the ring would open by {gap} at the rim; the over allows for it."
)
OVERLAPS = marked(
    "Moisture {photograph} % when photographed, {cut} % when cut, {taping} % when taped ({unsure} "
    "% unsure): without any over the ring would overlap by {gap} at the rim; the over allows for "
    "it."
)


def steps_before(before: Before, length: Length) -> list[str]:
    """The steps up to the taped parts, numbered."""
    offer = before.advised
    how = offer.over.how
    steps = [
        *(_tried(before, length) if before.trial else _to_set(before, length)),
        word("Cut all wedges of the stack by this one template, number and side marked."),
        say(TRUE[how], lost=length(offer.costs.lost)),
    ]
    return [f"{k}. {step}" for k, step in enumerate(steps, start=1)]


def _to_set(before: Before, length: Length) -> list[str]:
    over, base, count = before.advised.over, before.set_out, before.trial_count
    first = say(
        "Set the template to {angle}, {over} over, never under: from the tip mark {base} on the "
        "axis and square off {offset} to both sides. Read to {reading} mm that is sure to {sure}.",
        angle=deg(over.cut, 3), over=deg(over.degrees), base=length(base.base),
        offset=_exact(base.offset, length), reading=figure(before.reading, "g"),
        sure=deg(before.set_out_error, 3),
    )
    if before.base_wanted:
        less = say(
            "That is less sure than the {error} that were reckoned with: take a base of {base} "
            "or more, or let the test cut decide.",
            error=deg(before.errors.template, 3), base=length(before.base_wanted),
        )
        first = f"{first} {less}"
    return [
        first,
        say(
            "Test cut: {count} wedges of waste laid tip to tip should make {sum}. What they make, "
            "parted by {count}, is the template's angle, sure to {sure}: the template's error is "
            "then no larger than that. Enter it, and the advice goes by it.",
            count=count, sum=deg(count * over.cut), sure=deg(before.trial_error, 3),
        ),
    ]


def _tried(before: Before, length: Length) -> list[str]:
    """What the test cut found, and whether the template may stay."""
    trial, now, least = before.trial, before.as_tried.over, before.least.over
    sure = trial.angle.uncertainty
    found = say(
        OVER if now.degrees >= 0.0 else UNDER, count=trial.count, sum=deg(trial.sum.value),
        angle=deg(now.cut, 3), sure=deg(sure, 3), off=deg(abs(now.degrees), 3),
        wanted=deg(least.degrees),
    )
    turn = least.cut - now.cut
    if before.stays:
        said = [found, word("It may stay as it is.")]
        if -turn > 2.0 * sure:
            said.append(say("{angle} less would do.", angle=deg(-turn, 3)))
        return [" ".join(said)]
    not_yet = say(
        "Do not cut with it yet: {reach} in {count} of 100 rings only. Open it by {turn}: {base} "
        "from the tip each mark goes {moves} mm out. Then make another test cut.",
        reach=reach(now.how), count=hundred(now.claimed), turn=deg(turn, 3),
        base=length(before.set_out.base), moves=figure(before.mark_moves, ".2f"),
    )
    return [f"{found} {not_yet}"]


OVER = marked(
    "Test cut: {count} wedges made {sum}, so that the template cuts {angle}, sure to {sure}: {off} "
    "over, and {wanted} over are wanted."
)
UNDER = marked(
    "Test cut: {count} wedges made {sum}, so that the template cuts {angle}, sure to {sure}: {off} "
    "under, and {wanted} over are wanted."
)


def _exact(mm: float, length: Length) -> str:
    """A length that a template is set by: a hundredth of a mm is not too fine for it."""
    exact, shown = f"{figure(mm, '.2f')} mm", length(mm)
    return exact if shown.endswith("mm") else say(
        "{length}, exactly {exact},", length=shown, exact=exact
    )  # fmt: skip


def price(before: Before, length: Length) -> list[str]:
    """What the advised over costs."""
    offer, layout = before.advised, before.layout
    costs = offer.costs
    text = say(
        TIGHT if before.no_room else ROOMY, shift=length(costs.shift), piece=costs.seam,
        lost=length(costs.lost), share=figure(100.0 * costs.area / layout.top.area, ".2f"),
        wider=length(offer.wider),
    )
    found = [*_no_room(before, length), claim(offer.over), text]
    if costs.corners:
        most = max(miss for _, miss in costs.corners)
        found.append(
            say(
                "{count} seams miss their corner of the top, by up to {most}.",
                count=len(costs.corners), most=length(most),
            )
        )
    if costs.mirror_off > 0.05 and getattr(layout.recipe, "turn", "") == "book":
        found.append(
            say(
                "At the trued joints the mirror is off by {mirror_off} at the rim.",
                mirror_off=length(costs.mirror_off),
            )
        )
    if before.ring.ways % 2:
        found.append(
            word(
                "An odd number of pieces has no straight diameter: only the last joint can be "
                "trued, from both its pieces alike."
            )
        )
    return found


def _no_room(before: Before, length: Length) -> list[str]:
    """What stands against the over where leaves are too narrow for it."""
    if not before.no_room:
        return []
    some = before.no_room
    return [say(NO_ROOM[len(some) > 1], leaves=runs(some), angle=deg(before.room))]


TIGHT = marked(
    "That over costs: seams up to {shift} off their places at the rim (most at the end of piece "
    "{piece}), {lost} of figure at the rim on each side of a trued joint, {share} % of the top's "
    "area, and every wedge {wider} wider at the rim, which its leaf must have."
)
ROOMY = marked(
    "That over costs: seams up to {shift} off their places at the rim (most at the end of piece "
    "{piece}), {lost} of figure at the rim on each side of a trued joint, {share} % of the top's "
    "area, and every wedge {wider} wider at the rim, which its leaf has room for."
)
NO_ROOM = (
    marked(
        "Leaf {leaves} has no room for it: at this spot a wedge can be cut to {angle} at most. "
        "Move the wedge on the bundle, take less oversize or wider leaves, or prove the template "
        "by a test cut, so that less over will do."
    ),
    marked(
        "Leaves {leaves} have no room for it: at this spot a wedge can be cut to {angle} at most. "
        "Move the wedge on the bundle, take less oversize or wider leaves, or prove the template "
        "by a test cut, so that less over will do."
    ),
)
"""Of one leaf, and of several."""


OFFERED = (
    marked("true by (* advised)"), marked("sure"), marked("over, deg"), marked("seams off"),
    marked("lost"), marked("corners off"),
)


def offers(before: Before, length: Length) -> Table:
    """All ways of truing against each other; the advised one with a star."""
    heads = tuple(map(word, OFFERED))
    rows = []
    for offer in before.offers:
        over, costs = offer.over, offer.costs
        star = " *" if offer == before.least else ""
        rows.append((
            word(CALLED[over.how]) + star, f"{figure(100.0 * over.claimed, '.1f')} %",
            figure(over.degrees, ".2f"),
            length(costs.shift), length(costs.lost),
            length(max((miss for _, miss in costs.corners), default=0.0)),
        ))  # fmt: skip
    if not any(before.ring.corner(k) for k in range(before.ring.ways)):
        heads, rows = heads[:-1], [row[:-1] for row in rows]
    return heads, rows

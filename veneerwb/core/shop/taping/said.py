# SPDX-License-Identifier: LGPL-2.1-or-later
"""The taping plan in words: what is done in each step, why the last joint lies where it does, and
how the tape is laid. Common practice of the trade, no source."""

from __future__ import annotations

from veneerwb.core.layout import Layout
from veneerwb.core.listing import all_of
from veneerwb.core.matches.radial import Radial
from veneerwb.core.matches.rings import Rings
from veneerwb.core.shop.counted import counted
from veneerwb.core.shop.shown import lettered
from veneerwb.core.shop.taping.plan import ASKED, CLOSE, LAY, ONLY, TRUE, Closing, Step, TapingPlan
from veneerwb.core.shop.taping.seen import ALIKE, COLOURS, SURFACES
from veneerwb.core.shop.taping.tree import BENT, CURVED
from veneerwb.words import figure, filled, marked, say, word

TECHNIQUE = (
    marked(
        "Gum tape goes on the show face: short pieces across the seam first, drawn tight, then "
        "one along it. It shrinks as it dries and pulls the seam shut. Wet it sparingly; let it "
        "dry under a board before the next step."
    ),
    marked("Pieces keep their places: a matched face is not reshuffled to make it close."),
    marked(
        "Before each piece of tape look at the side up and at the tip, and at the figure across "
        "the seam."
    ),
)
FACE_DOWN = marked(
    "Taped face down: this plan is the mirror image of the top, seen from its back, and each "
    "piece shows the side that is glued. Tape on that side only holds for the moment; turn the "
    "whole over, gum-tape the show face, and take every strip off the glue side before glue."
)
FACE_UP = marked("Taped face up: the plan is seen from the show face.")
FEW = 8
"""Joins that are named one by one."""
WHY = marked(
    "Truing takes figure from both its sides: that shows least where the figure is broken "
    "already, most where two leaves mirror each other."
)
CHALK = marked("Chalk marks guide the taping; they come off before glue.")
CAUTION = marked(
    "Truing takes a knife along a straightedge: hold that down on its whole length, keep fingers "
    "behind it, cut away from the body in several light strokes. Follow local rules."
)


def running(layout: Layout, face_down: bool) -> str:
    """Which way positions run in the plan."""
    way = counted(layout)
    if not face_down:
        return say("Positions run {way}, seen from the show face.", way=way)
    return say("Mirror image. Seen from the show face positions run {way}.", way=way)


def leaves(plan: TapingPlan) -> str:
    """Which leaf lies where."""
    ordered = sorted(plan.pieces, key=lambda piece: piece.position)
    listed = ", ".join(
        f"{piece.position} {lettered(piece.leaf)}" for piece in ordered
    )
    if all(piece.position == piece.leaf for piece in ordered):
        return word("The leaf at each position has its number.")
    return say("Position and leaf: {listed}.", listed=listed)


def instructions(plan: TapingPlan, step: Step) -> list[str]:
    """What is done in a step, as sentences."""
    if step.kind == LAY:
        return [word(
            "Lay all pieces in their places, the side up as marked, and prove the order by one "
            "mark of the figure that goes through all of them."
        )]  # fmt: skip
    if step.kind == TRUE:
        if len(step.made) > 1:
            return [say(
                "True both edges of {step} along a straightedge and prove the corner with a "
                "square, a right angle at the tip.",
                step=_parts(step),
            )]  # fmt: skip
        said = say(
            "Lay the open edges of {parts} along one straightedge and take off as little as makes "
            "them straight.", parts=_parts(step),
        )  # fmt: skip
        return [f"{said} {word('The tips must lie on it.')}" if _is_ring(plan) else said]
    said = [f"{_joined(step)}."] if step.joins else []
    if step.trues:
        said.append(word(
            "These edges run over several pieces: true each along a straightedge first."
        ))
    if step.kind == CLOSE:
        said.append(_closing_words(step, _is_ring(plan)))
    return said


def _joined(step: Step) -> str:
    """What is put to what; of many alike the first two and the last."""
    sizes = {tuple(len(part.positions) for part in one.parts) for one in step.made}
    if len(step.joins) > FEW and len(sizes) == 1:
        return say(
            "{first}; {second}; and so on to {last}", first=step.joins[0], second=step.joins[1],
            last=step.joins[-1],
        )
    return "; ".join(step.joins)


def _parts(step: Step) -> str:
    """The assemblies that are trued, by their first and last piece."""
    said = [
        say("{first} to {last}", first=one.positions[0], last=one.positions[-1])
        if len(one.positions) > 1 else str(one.positions[0])
        for whole in step.made for one in whole.parts
    ]  # fmt: skip
    return all_of(said)


def _is_ring(plan: TapingPlan) -> bool:
    return isinstance(plan.layout.recipe, Radial | Rings)


def _closing_words(step: Step, ring: bool) -> str:
    root = step.made[0]
    if len(root.parts) == 1:
        return word(
            "Where the edges overlap, cut through both along a straightedge from the tip to the "
            "rim; where they gape, nothing is left to true off: cut one of the two anew, wider by "
            "the gap. Tape it last."
        )
    if root.joint == CURVED:
        return word(
            "Lay the field into the band dry; fit its line until no light shows, then tape."
        )
    if root.joint == BENT:
        return word("The joint is bent: fit it piece by piece from the middle outwards, then tape.")
    if root.trued:
        return (
            word("Bring the trued edges together tip to tip, tape the middle first, then outwards.")
            if ring
            else word("Bring the trued edges together, tape the middle first, then outwards.")
        )
    return word("Tape the middle of the seam first, then outwards.")


def closing_reason(closing: Closing) -> str:
    """Where the last joint lies, and why there."""
    values: dict[str, object] = {"seams": _listed(closing.pairs), "count": closing.count}
    why = closing.why
    if why not in (SURFACES, COLOURS):
        return filled(word(PLAIN_REASONS[why][len(closing.pairs) > 1]), values)
    kind = (SURFACES, COLOURS).index(why)
    least, most = closing.others[kind]
    here, least, most = (figure(one, ".1f") for one in (closing.broken[kind], least, most))
    values |= {"here": here, "least": least, "most": most}
    said = filled(word(REASONS[why][len(closing.pairs) > 1]), values)
    return f"{said} {word(WHY)}"


PLAIN_REASONS = {
    ONLY: (
        marked("The last joint is that of seam {seams}: no other parts the face evenly."),
        marked("The last joint is that of seams {seams}: no other parts the face evenly."),
    ),
    ASKED: (
        marked("The last joint is that of seam {seams}, as it was asked for."),
        marked("The last joint is that of seams {seams}, as it was asked for."),
    ),
    ALIKE: (
        marked("The last joint is that of seam {seams}: of {count} none hides it better."),
        marked("The last joint is that of seams {seams}: of {count} none hides it better."),
    ),
}
REASONS = {
    SURFACES: (
        marked(
            "The last joint is that of seam {seams}: of {count} it hides best, for there most "
            "surfaces lie between those that meet ({here} on the mean; the others {least} to "
            "{most})."
        ),
        marked(
            "The last joint is that of seams {seams}: of {count} it hides best, for there most "
            "surfaces lie between those that meet ({here} on the mean; the others {least} to "
            "{most})."
        ),
    ),
    COLOURS: (
        marked(
            "The last joint is that of seam {seams}: of {count} it hides best, for of those with "
            "as many surfaces between, the colours differ most there ({here} CIEDE2000; the others "
            "{least} to {most})."
        ),
        marked(
            "The last joint is that of seams {seams}: of {count} it hides best, for of those with "
            "as many surfaces between, the colours differ most there ({here} CIEDE2000; the others "
            "{least} to {most})."
        ),
    ),
}
"""Of one seam and of several."""


def _listed(pairs: tuple[tuple[int, int], ...]) -> str:
    said = ", ".join(f"{a} | {b}" for a, b in pairs[:4])
    if len(pairs) > 4:
        return say("{some} and {count} more", some=said, count=len(pairs) - 4)
    return said

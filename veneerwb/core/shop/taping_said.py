# SPDX-License-Identifier: LGPL-2.1-or-later
"""The taping plan in words: what is done in each step, why the last joint lies where it does, and
how the tape is laid. Common practice of the trade, no source."""

from __future__ import annotations

from veneerwb.core.layout import Layout
from veneerwb.core.matches.radial import Radial
from veneerwb.core.matches.rings import Rings
from veneerwb.core.shop.counted import counted
from veneerwb.core.shop.taping import ASKED, CLOSE, LAY, ONLY, TRUE, Closing, Step, TapingPlan
from veneerwb.core.shop.taping_seen import ALIKE, COLOURS, SURFACES
from veneerwb.core.shop.taping_tree import BENT, CURVED

TECHNIQUE = (
    "Gum tape goes on the show face: short pieces across the seam first, drawn tight, then one "
    "along it. It shrinks as it dries and pulls the seam shut. Wet it sparingly; let it dry under "
    "a board before the next step.",
    "Pieces keep their places: a matched face is not reshuffled to make it close.",
    "Before each piece of tape look at the side up and at the tip, and at the figure across the "
    "seam.",
)
FACE_DOWN = (
    "Taped face down: this plan is the mirror image of the top, seen from its back, and each piece "
    "shows the side that is glued. Tape on that side only holds for the moment; turn the whole "
    "over, gum-tape the show face, and take every strip off the glue side before glue."
)
FACE_UP = "Taped face up: the plan is seen from the show face."
FEW = 8
"""Joins that are named one by one."""
WHY = (
    "Truing takes figure from both its sides: that shows least where the figure is broken already, "
    "most where two leaves mirror each other."
)
CHALK = "Chalk marks guide the taping; they come off before glue."
CAUTION = (
    "Truing takes a knife along a straightedge: hold that down on its whole length, keep fingers "
    "behind it, cut away from the body in several light strokes. Follow local rules."
)


def running(layout: Layout, face_down: bool) -> str:
    """Which way positions run in the plan."""
    if not face_down:
        return f"Positions run {counted(layout)}, seen from the show face."
    return f"Mirror image. Seen from the show face positions run {counted(layout)}."


def leaves(plan: TapingPlan) -> str:
    """Which leaf lies where."""
    ordered = sorted(plan.pieces, key=lambda piece: piece.position)
    listed = ", ".join(f"{piece.position} L{piece.leaf}" for piece in ordered)
    if all(piece.position == piece.leaf for piece in ordered):
        return "The leaf at each position has its number."
    return f"Position and leaf: {listed}."


def instructions(plan: TapingPlan, step: Step) -> list[str]:
    """What is done in a step, as sentences."""
    if step.kind == LAY:
        return ["Lay all pieces in their places, the side up as marked, and prove the order by one "
                "mark of the figure that goes through all of them."]  # fmt: skip
    if step.kind == TRUE:
        if len(step.made) > 1:
            return [f"True both edges of {_parts(step)} along a straightedge and prove the corner "
                    "with a square, a right angle at the tip."]  # fmt: skip
        tips = " The tips must lie on it." if _is_ring(plan) else ""
        return [f"Lay the open edges of {_parts(step)} along one straightedge and take off as "
                f"little as makes them straight.{tips}"]  # fmt: skip
    said = [f"{_joined(step)}."] if step.joins else []
    if step.trues:
        said.append("These edges run over several pieces: true each along a straightedge first.")
    if step.kind == CLOSE:
        said.append(_closing_words(step, _is_ring(plan)))
    return said


def _joined(step: Step) -> str:
    """What is put to what; of many alike the first two and the last."""
    sizes = {tuple(len(part.positions) for part in one.parts) for one in step.made}
    if len(step.joins) > FEW and len(sizes) == 1:
        return f"{'; '.join(step.joins[:2])}; and so on to {step.joins[-1]}"
    return "; ".join(step.joins)


def _parts(step: Step) -> str:
    """The assemblies that are trued, by their first and last piece."""
    said = [
        f"{one.positions[0]} to {one.positions[-1]}" if len(one.positions) > 1 else
        str(one.positions[0])
        for whole in step.made for one in whole.parts
    ]  # fmt: skip
    return f"{', '.join(said[:-1])} and {said[-1]}"


def _is_ring(plan: TapingPlan) -> bool:
    return isinstance(plan.layout.recipe, Radial | Rings)


def _closing_words(step: Step, ring: bool) -> str:
    root = step.made[0]
    if len(root.parts) == 1:
        return (
            "Where the edges overlap, cut through both along a straightedge from the tip to the "
            "rim; where they gape, nothing is left to true off: cut one of the two anew, wider by "
            "the gap. Tape it last."
        )
    if root.joint == CURVED:
        return "Lay the field into the band dry; fit its line until no light shows, then tape."
    if root.joint == BENT:
        return "The joint is bent: fit it piece by piece from the middle outwards, then tape."
    if root.trued:
        tips = " tip to tip" if ring else ""
        return f"Bring the trued edges together{tips}, tape the middle first, then outwards."
    return "Tape the middle of the seam first, then outwards."


def closing_reason(closing: Closing) -> str:
    """Where the last joint lies, and why there."""
    seams = _listed(closing.pairs)
    if closing.why == ONLY:
        return f"The last joint is that of {seams}: no other parts the face evenly."
    if closing.why == ASKED:
        return f"The last joint is that of {seams}, as it was asked for."
    if closing.why == ALIKE:
        return f"The last joint is that of {seams}: of {closing.count} none hides it better."
    kind = (SURFACES, COLOURS).index(closing.why)
    here, (least, most) = closing.broken[kind], closing.others[kind]
    reason = (
        f"there most surfaces lie between those that meet ({here:.1f} on the mean; the others "
        f"{least:.1f} to {most:.1f})"
        if closing.why == SURFACES
        else f"of those with as many surfaces between, the colours differ most there ({here:.1f} "
        f"CIEDE2000; the others {least:.1f} to {most:.1f})"
    )
    return (
        f"The last joint is that of {seams}: of {closing.count} it hides best, for {reason}. {WHY}"
    )


def _listed(pairs: tuple[tuple[int, int], ...]) -> str:
    said = [f"{a} | {b}" for a, b in pairs[:4]]
    more = f" and {len(pairs) - 4} more" if len(pairs) > 4 else ""
    return f"seam{'s' if len(pairs) > 1 else ''} {', '.join(said)}{more}"

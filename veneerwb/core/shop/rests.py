# SPDX-License-Identifier: LGPL-2.1-or-later
"""On what the registers of a layout rest, said on every sheet that shows them."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from typing import Any

from veneerwb.core.leaf import Bundle, Leaves
from veneerwb.core.plane import IDENTITY, choice
from veneerwb.core.shop.drawing.lengths import Lengths
from veneerwb.core.shop.drawing.thickness import thickness
from veneerwb.words import marked, say, word

FOLLOWS = ("", "figure", "log", "marks", "typed", "generated", "as photographed")
"""What registers may follow; "": nobody said."""
BY = {
    "figure": marked("This sheet rests on the figure in the photographs."),
    "log": marked("This sheet rests on the log's own shape, as the photographs show it."),
    "marks": marked("This sheet rests on marks."),
    "typed": marked(
        "This sheet rests on figures that were typed in, which no photograph bears out."
    ),
    "generated": marked("This sheet rests on the generated log, not on photographs of wood."),
    "": marked("This sheet rests on registers of which nobody said what they follow."),
}
MM = Lengths()
LAIN = marked(
    "This sheet rests on how the leaves lay under the camera: they are not registered, and a "
    "photograph that is shifted against the others shifts its piece."
)


def rests(
    bundle: Leaves, follows: str = "", error_mm: float | None = None,
    doubtful: Collection[int] = (), used: Sequence[Any] = (), lengths: Lengths = MM,
) -> str:
    """In a sentence or some; empty for a stock, which has no pictures.

    `follows`: one of FOLLOWS, as the document knows it. `error_mm`: the largest standard error of
    the registers at a leaf's corner (of `sequence.trust`), None where nobody has measured it.
    `doubtful`: leaves whose register is in doubt. `used`: the pieces of a layout, to speak of its
    own leaves and of its turned ones' backs; without, all leaves are meant. `lengths`: how the
    sheet writes them.
    """
    if not isinstance(bundle, Bundle):
        return ""
    choice(marked("what registers follow"), follows, FOLLOWS)
    numbers = sorted({piece.leaf for piece in used} or bundle.numbers)
    lain = all(bundle.register(n, False) == IDENTITY for n in numbers)
    if follows == "as photographed" and not lain:
        follows = ""  # somebody gave them registers, and did not say by what
    if lain and follows in ("", "as photographed"):
        return " ".join([word(LAIN), *_backs(bundle, used, lengths)])
    said = [word(BY[follows])]
    if error_mm is not None and follows != "typed":
        said.append(say(
            "Standard error at a leaf's corner up to {error}.", error=thickness(lengths, error_mm)
        ))
    elif follows in ("figure", "log", "marks"):
        said.append(word("How well was not kept."))
    wrong = sorted(set(doubtful) & set(numbers))
    if len(wrong) == 1:
        said.append(say("It is in doubt how leaf {leaf} and those after lie.", leaf=wrong[0]))
    elif wrong:
        leaves = ", ".join(map(str, wrong))
        said.append(say("It is in doubt how leaves {leaves} and those after lie.", leaves=leaves))
    return " ".join([*said, *_backs(bundle, used, lengths)])


def _backs(bundle: Bundle, used: Sequence[Any], lengths: Lengths) -> list[str]:
    """What turned leaves rest on whose backs were not photographed."""
    assumed = {p.leaf for p in used
               if p.turned and bundle.leaf(p.leaf).side(True).source != "photo"}
    if not assumed:
        return []
    template = (
        marked("The back of {count} turned leaf was not photographed: seams there may miss by "
               "{miss}.")
        if len(assumed) == 1
        else marked("The backs of {count} turned leaves were not photographed: seams there may "
                    "miss by {miss}.")
    )  # fmt: skip
    return [say(template, count=len(assumed), miss=thickness(lengths, round(bundle.wander(), 1)))]

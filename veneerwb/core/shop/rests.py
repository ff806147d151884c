# SPDX-License-Identifier: LGPL-2.1-or-later
"""On what the registers of a layout rest, in one sentence for every sheet that shows them."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from typing import Any

from veneerwb.core.errors import number
from veneerwb.core.leaf import Bundle, Leaves
from veneerwb.core.plane import IDENTITY, choice

FOLLOWS = ("", "figure", "log", "marks", "typed", "generated", "as photographed")
"""What registers may follow; "": nobody said."""
BY = {
    "figure": "on the figure in the photographs",
    "log": "on the log's own shape, as the photographs show it",
    "marks": "on marks",
    "typed": "on figures that were typed in, which no photograph bears out",
    "generated": "on the generated log, not on photographs of wood",
    "": "on registers of which nobody said what they follow",
}


def rests(
    bundle: Leaves, follows: str = "", error_mm: float | None = None,
    doubtful: Collection[int] = (), used: Sequence[Any] = (),
) -> str:
    """One sentence; empty for a stock, which has no pictures.

    `follows`: one of FOLLOWS, as the document knows it. `error_mm`: the largest standard error of
    the registers at a leaf's corner (of `sequence.trust`), None where nobody has measured it.
    `doubtful`: leaves whose register is in doubt. `used`: the pieces of a layout, to speak of its
    own leaves and of its turned ones' backs; without, all leaves are meant.
    """
    if not isinstance(bundle, Bundle):
        return ""
    choice("what registers follow", follows, FOLLOWS)
    numbers = sorted({piece.leaf for piece in used} or bundle.numbers)
    lain = all(bundle.register(n, False) == IDENTITY for n in numbers)
    if follows == "as photographed" and not lain:
        follows = ""  # somebody gave them registers, and did not say by what
    if lain and follows in ("", "as photographed"):
        said = (
            "This sheet rests on how the leaves lay under the camera: they are not registered, and "
            "a photograph that is shifted against the others shifts its piece"
        )
        return said + _backs(bundle, used) + "."
    said = f"This sheet rests {BY[follows]}"
    if error_mm is not None and follows != "typed":
        said += f" (standard error at a leaf's corner up to {number(round(error_mm, 2))} mm)"
    elif follows in ("figure", "log", "marks"):
        said += " (how well, was not kept)"
    wrong = sorted(set(doubtful) & set(numbers))
    if wrong:
        leaves = "leaf" if len(wrong) == 1 else "leaves"
        said += f"; it is in doubt how {leaves} {', '.join(map(str, wrong))} and those after lie"
    return said + _backs(bundle, used) + "."


def _backs(bundle: Bundle, used: Sequence[Any]) -> str:
    """What turned leaves rest on whose backs were not photographed."""
    assumed = {p.leaf for p in used
               if p.turned and bundle.leaf(p.leaf).side(True).source != "photo"}
    if not assumed:
        return ""
    shown = "leaf's back was" if len(assumed) == 1 else "leaves' backs were"
    miss = number(round(bundle.wander(), 1))
    return f"; {len(assumed)} turned {shown} not photographed: seams there may miss by {miss} mm"

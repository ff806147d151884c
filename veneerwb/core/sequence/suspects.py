# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a proof of order finds wrong with a bundle: kinds of suspect, and how each is put."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from veneerwb.core.errors import sentence
from veneerwb.words import marked, word

KINDS = (
    marked("out of place"), marked("missing"), marked("thickness"), marked("turned"),
    marked("end for end"), marked("duplicate"), marked("foreign"),
)


@dataclass(frozen=True)
class Suspect:
    """`leaf`: its number now; `kind`: one of KINDS. `template` filled with `values` is the text,
    so that a screen can translate it.

    A leaf is "missing" after leaf `leaf`, the thickness changes with leaf `leaf`, and of two that
    show one leaf `leaf` is the one that fits less well, or else the later.
    """

    leaf: int
    kind: str
    template: str
    values: dict[str, Any] = field(default_factory=dict)

    @property
    def text(self) -> str:
        return sentence(self.template, self.values)


def out_of_place(leaf: int, before: int | None, after: int | None) -> Suspect:
    """`before` and `after`: the leaves it belongs between; None at an end."""
    if before is None:
        text = marked("Leaf {leaf} is out of place: it belongs before leaf {after}, at the end.")
    elif after is None:
        text = marked("Leaf {leaf} is out of place: it belongs after leaf {before}, at the end.")
    else:
        text = marked(
            "Leaf {leaf} is out of place: it belongs between leaves {before} and {after}."
        )
    values = {"leaf": leaf, "before": before, "after": after}
    return Suspect(leaf, "out of place", text, values)


def swapped(leaf: int, other: int, before: int | None, after: int | None) -> Suspect:
    """Two neighbours in each other's place: which of them was moved cannot be told."""
    values = {"leaf": leaf, "other": other, "before": before, "after": after}
    text = marked("Leaves {leaf} and {other} have changed places.")
    return Suspect(leaf, "out of place", text, values)


def missing(leaf: int, after: int, steps: float) -> Suspect:
    values = {"leaf": leaf, "after": after, "steps": round(steps, 1)}
    text = marked(
        "From leaf {leaf} to leaf {after} the figure changes {steps} times as much as from leaf to "
        "leaf elsewhere: a gap, or one thicker leaf."
    )
    return Suspect(leaf, "missing", text, values)


def thickness(leaf: int, times: float) -> Suspect:
    values = {"leaf": leaf, "times": round(times, 1)}
    if times > 1:
        text = marked(
            "From leaf {leaf} on the figure changes {times} times as much from leaf to leaf, and "
            "goes on so: a change of thickness."
        )
        return Suspect(leaf, "thickness", text, values)
    values["times"] = round(1 / times, 1)
    text = marked(
        "From leaf {leaf} on the figure changes {times} times less from leaf to leaf, and goes on "
        "so: a change of thickness."
    )
    return Suspect(leaf, "thickness", text, values)


def lying(leaf: int, how: str, unsure: bool = False) -> Suspect:
    """A leaf that lies in one of picture.FLIPS; `unsure`: turned over or end for end."""
    if unsure:
        text = marked(
            "Leaf {leaf} is turned over or lies end for end, which look alike in this figure: look "
            "at the leaf itself."
        )
    elif how == "end for end":
        text = marked("Leaf {leaf} lies end for end: turn its photograph by 180 degrees.")
    elif how == "turned":
        text = marked(
            "Leaf {leaf} is turned over: its figure is that of the others mirrored left-right."
        )
    else:
        text = marked(
            "Leaf {leaf} is turned over end over end: its figure is that of the others upside down."
        )
    return Suspect(leaf, "end for end" if how == "end for end" else "turned", text,
                   {"leaf": leaf, "how": how})


def duplicate(leaf: int, other: int, same: bool, gap: bool = False) -> Suspect:
    """`same`: one and the same photograph; `gap`: and the leaf that belongs there is missing."""
    text = word("Leaves {leaf} and {other} are the same photograph.") if same else word(
        "Leaves {leaf} and {other} are one leaf photographed twice."
    )
    return Suspect(leaf, "duplicate", _with_gap(text, gap),
                   {"leaf": leaf, "other": other, "same": same})


def foreign(leaf: int, gap: bool = False) -> Suspect:
    text = word(
        "Leaf {leaf} shows nothing of the others' figure, whichever way it lies: it does not "
        "belong to this bundle."
    )
    return Suspect(leaf, "foreign", _with_gap(text, gap), {"leaf": leaf})


def _with_gap(text: str, gap: bool) -> str:
    return f"{text} {word('A leaf is missing in its place.')}" if gap else text

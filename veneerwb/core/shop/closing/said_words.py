# SPDX-License-Identifier: LGPL-2.1-or-later
"""Words that both sides of the closing, before cutting and after, are told in."""

from __future__ import annotations

from collections.abc import Callable

from veneerwb.words import figure, marked, say, word

Length = Callable[[float], str]
Table = tuple[tuple[str, ...], list[tuple[str, ...]]]
CALLED = {
    "both ends": marked("halves, both ends"),
    "one end": marked("halves, one end"),
    "quarters": marked("quarters"),
    "last joint": marked("last joint"),
}
TRUE = {
    "both ends": marked(
        "Tape up to the two halves; dry-lay before glue, measure, and true each half at both ends "
        "alike: on the mean {lost} at the rim running out to nothing at the tip."
    ),
    "one end": marked(
        "Tape up to the two halves; dry-lay before glue, measure, and true each half at its last "
        "end: on the mean {lost} at the rim running out to nothing at the tip."
    ),
    "quarters": marked(
        "Tape up to the four quarters; dry-lay before glue, measure, and true each quarter at both "
        "ends alike: on the mean {lost} at the rim running out to nothing at the tip."
    ),
    "last joint": marked(
        "Tape up to the whole ring; dry-lay before glue, measure, and true the last joint on both "
        "its pieces alike: on the mean {lost} at the rim running out to nothing at the tip."
    ),
}
CAUTION = marked(
    "A knife along a straightedge slips: the other hand stays behind the blade's way, the "
    "straightedge is clamped, the offcut is cleared with the knife laid down."
)


def deg(value: float, places: int = 2) -> str:
    """Degrees: 30.16 deg."""
    return say("{angle} deg", angle=figure(value, f".{places}f"))


def share(chance: float) -> str:
    """A chance as a share of a hundred that never claims certainty."""
    if chance > 0.995:
        return word("over 99 %")
    return word("under 1 %") if chance < 0.005 else f"{100.0 * chance:.0f} %"


def hundred(chance: float) -> str:
    """The same to a tenth: 95.5, over 99.9."""
    if chance > 0.9995:
        return word("over 99.9")
    return word("under 0.1") if chance < 0.0005 else figure(100.0 * chance, ".1f")


def reach(how: str) -> str:
    """What a ring that is trued so must do."""
    return word(REACH.get(how, HALVES))


HALVES = marked("both halves reach 180 deg")
REACH = {
    "quarters": marked("all four quarters reach 90 deg"),
    "last joint": marked("the ring reaches 360 deg"),
}


def caution() -> str:
    """What must be said of every truing."""
    return word(CAUTION)

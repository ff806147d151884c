# SPDX-License-Identifier: LGPL-2.1-or-later
"""Words that both sides of the closing, before cutting and after, are told in."""

from __future__ import annotations

from collections.abc import Callable

Length = Callable[[float], str]
Table = tuple[tuple[str, ...], list[tuple[str, ...]]]
CALLED = {
    "both ends": "halves, both ends",
    "one end": "halves, one end",
    "quarters": "quarters",
    "last joint": "last joint",
}
TRUE = {
    "both ends": "each half at both ends alike",
    "one end": "each half at its last end",
    "quarters": "each quarter at both ends alike",
    "last joint": "the last joint on both its pieces alike",
}
CAUTION = (
    "A knife along a straightedge slips: the other hand stays behind the blade's way, the "
    "straightedge is clamped, the offcut is cleared with the knife laid down."
)


def deg(value: float, places: int = 2) -> str:
    """Degrees: 30.16 deg."""
    return f"{value:.{places}f} deg"


def share(chance: float) -> str:
    """A chance as a share of a hundred that never claims certainty."""
    if chance > 0.995:
        return "over 99 %"
    return "under 1 %" if chance < 0.005 else f"{100.0 * chance:.0f} %"


def hundred(chance: float) -> str:
    """The same to a tenth: 95.5, over 99.9."""
    if chance > 0.9995:
        return "over 99.9"
    return "under 0.1" if chance < 0.0005 else f"{100.0 * chance:.1f}"


def reach(how: str) -> str:
    return {
        "quarters": "all four quarters reach 90 deg",
        "last joint": "the ring reaches 360 deg",
    }.get(how, "both halves reach 180 deg")

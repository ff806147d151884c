# SPDX-License-Identifier: LGPL-2.1-or-later
"""A sentence of the shop that holds lengths, so that a page can write them in its own units."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any

from veneerwb.core.shop.drawing.lengths import INCH, Lengths
from veneerwb.words import figure, filled, word

FINE, ERROR, TINY = 1.0, 50.0, 0.05
"""mm: smaller lengths, and errors smaller than that, are not told by fractions of an inch; those
below the last take a figure more."""


def plain(mm: float) -> str:
    """A length as core writes it: "12.5 mm", to 0.1 mm, or to 0.01 below 1 mm."""
    return f"{figure(round(mm, 1 if abs(mm) >= 1.0 else 2))} mm"


@dataclass(frozen=True)
class Said:
    """`template` with {names}, or one for each of several sentences, filled with `values`: floats
    are lengths in mm and are written by `text`, which translates the template; all else as it
    is."""

    template: str | tuple[str, ...]
    values: Mapping[str, Any] = field(default_factory=dict)

    def text(self, length: Callable[[float], str] = plain) -> str:
        values = {
            name: length(value) if isinstance(value, float) else value
            for name, value in self.values.items()
        }
        several = (self.template,) if isinstance(self.template, str) else self.template
        return " ".join(filled(word(template), values) for template in several)

    def __str__(self) -> str:
        return self.text()


def in_units(lengths: Lengths, fine: float = FINE) -> Callable[[float], str]:
    """How a page writes the lengths of its sentences: with their unit, and those below `fine` mm in
    hundredths of a mm or thousandths of an inch, or finer."""

    def written(mm: float) -> str:
        if 0.0 < abs(mm) < fine:
            plain = f"{figure(round(mm, 2 if abs(mm) >= TINY else 3))} mm"
            inches = f"{figure(mm / INCH, '.3f' if abs(mm) >= TINY else '.4f')} in"
            both = f"{plain} ({inches})"
            return {"mm": plain, "inch": inches, "both": both}[lengths.unit]
        text = lengths.length(mm)
        first, _, rest = text.partition(" ")
        return text if lengths.unit == "inch" else f"{first} mm {rest}".rstrip()

    return written
